// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const metalIn = (metal: string, salt: string, waters: string, name: string, assay?: "98 %"): PlanRequest => ({
  equation: `${metal} + H2SO4 + ${waters} H2O -> ${salt}·${waters}H2O + H2`,
  product: `${salt}·${waters}H2O`,
  materials: [
    { name, form: metal, excess: "10 %", ...(assay === undefined ? {} : { assay }) },
    { name: "battery acid", form: "H2SO4", strength: "20 %" },
  ],
  scale: { product: "50 g" },
});

const steel = metalIn("Fe", "FeSO4", "7", "steel wool", "98 %");
const zinc = metalIn("Zn", "ZnSO4", "7", "zinc scrap");
const magnesium = metalIn("Mg", "MgSO4", "7", "magnesium turnings");

const cautionsAsAdded = (request: PlanRequest, name: string): string =>
  planPreparation(request)
    .steps.filter(({ text }) => text.startsWith("Add the") && text.includes(name))
    .flatMap(({ cautions }) => cautions.map(({ text }) => text))
    .join(" ");

describe("a metal that is kept warm in its acid", () => {
  it("has what steams off made up with hot water, to a mark", () => {
    const step = planPreparation(steel).steps.find(({ text }) => text.includes("until no more gas rises"))!;
    expect(step.text).toMatch(
      /^Mark on the vessel where the liquor stands, and keep it at 60 to 70 °C, .*; what steams off is made up with hot water, to the mark\.$/,
    );
    const strong: PlanRequest = {
      ...zinc,
      materials: [zinc.materials[0]!, { name: "battery acid", form: "H2SO4", strength: "37 %" }],
    };
    const warm = planPreparation(strong).steps.find(({ text }) => text.includes("until no more gas rises"))!;
    expect(warm.text).toMatch(/to the mark\.$/);
  });

  it("has no such word where it is not kept warm, nor in lye", () => {
    const alum = planPreparation({
      equation: "2 Al + 2 NaOH + 6 H2O -> 2 NaAl(OH)4 + 3 H2",
      product: "NaAl(OH)4",
      materials: [
        { name: "foil", form: "Al" },
        { name: "lye", form: "NaOH", excess: "5 %" },
      ],
      acknowledge: ["does-not-go"],
      scale: { material: "foil", portion: "5 g" },
    });
    expect(alum.steps.map(({ text }) => text).join(" ")).not.toContain("to the mark");
  });
});

describe("hydrogen from a metal in acid", () => {
  it("carries a mist of acid", () => {
    for (const [request, name] of [
      [steel, "steel wool"],
      [zinc, "zinc scrap"],
      [magnesium, "magnesium turnings"],
    ] as const)
      expect(cautionsAsAdded(request, name)).toContain("the gas carries a mist of acid");
  });

  it("smells of what steel, zinc or a technical metal has besides", () => {
    expect(cautionsAsAdded(steel, "steel wool")).toMatch(
      /steel and iron smell in acid, of what their phosphorus, sulfur and carbon give beside the hydrogen: under a hood or outdoors/,
    );
    expect(cautionsAsAdded(zinc, "zinc scrap")).toMatch(/of technical metal the hydrogen may bring traces of arsine/);
    expect(cautionsAsAdded(steel, "steel wool")).not.toContain("of technical metal");
    // of a metal that is sold pure, and no assay says otherwise
    expect(cautionsAsAdded(magnesium, "magnesium turnings")).not.toMatch(/technical metal|smell in acid/);
    expect(cautionsAsAdded(metalIn("Mg", "MgSO4", "7", "magnesium turnings", "98 %"), "magnesium turnings")).toContain(
      "of technical metal",
    );
  });
});

// What an independent reader of fourteen more sheets objected to, as rules; the preparations are theirs, chosen before any sheet was
// printed. Facts of the bench are common practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const words = (request: PlanRequest): string =>
  planPreparation(request)
    .steps.map(({ text }) => text)
    .join("\n");
const cautionsOf = (request: PlanRequest): string =>
  planPreparation(request)
    .steps.flatMap(({ cautions }) => cautions.map(({ text }) => text))
    .join("\n");

const CHLORATE: PlanRequest = {
  equation: "NaClO3 + KCl -> KClO3 + NaCl",
  product: "KClO3",
  materials: [
    { name: "sodium chlorate", form: "NaClO3", assay: "99 %" },
    { name: "potassium chloride", form: "KCl", assay: "99 %" },
  ],
  scale: { material: "sodium chlorate", portion: "20 g" },
};

describe("a salt that heat may set off", () => {
  it("dries in the air of a room, is never ground, and its liquor is not boiled for the rest", () => {
    expect(words(CHLORATE)).toMatch(/Dry at no more than 25 °C \(heat may set it off: dry in the air of a room\)/);
    expect(words(CHLORATE)).toMatch(/two weighings three hours apart/);
    expect(words(CHLORATE)).not.toMatch(/second crop|Boil/);
    expect(cautionsOf(CHLORATE)).toMatch(/never crushed or ground: loosen it with a clean plastic spatula/);
    expect(cautionsOf(CHLORATE)).not.toMatch(/crush and bottle it/);
    expect(benchSheet(planPreparation(CHLORATE))).not.toMatch(/oven or warm place|do not warm above/);
  });

  it("is kept from ammonium salts, and not from the chloride that it is made with", () => {
    expect(cautionsOf(CHLORATE)).toMatch(/no ammonium salt, acid or metal powder nearby/);
    expect(cautionsOf(CHLORATE)).not.toMatch(/no chloride/);
  });
});

describe("a hydroxide of which a basic salt comes first", () => {
  const made = (salt: "CuSO4·5H2O" | "FeCl3·6H2O", product: "Cu(OH)2" | "Fe(OH)3"): PlanRequest => ({
    equation: `${salt} + NaOH -> ${product} + ${salt === "CuSO4·5H2O" ? "Na2SO4" : "NaCl"} + H2O`,
    product,
    materials: [
      { name: "salt", form: salt },
      { name: "caustic soda solution", form: "NaOH", strength: "10 %" },
    ],
    scale: { material: "salt", portion: "25 g" },
  });

  // Cu4(OH)6SO4: all copper is out with 1.5 of the 2 hydroxides
  it("is complete where the liquor stays alkaline: a drop of lye gives no cloud long before", () => {
    expect(words(made("CuSO4·5H2O", "Cu(OH)2"))).toMatch(/stays alkaline, pH 9 and more on paper, ten minutes after/);
    expect(words(made("CuSO4·5H2O", "Cu(OH)2"))).not.toMatch(/a cloud means/);
    expect(words(made("FeCl3·6H2O", "Fe(OH)3"))).toMatch(/a cloud means/);
  });

  it("pours nothing off a sludge that fills nearly all of its liquor, and is stirred up in a vessel with room", () => {
    const { steps } = planPreparation(made("CuSO4·5H2O", "Cu(OH)2"));
    expect(steps.map(({ text }) => text).join("\n")).toMatch(/it fills the space of nearly all the liquor/);
    const wash = steps.find(({ operation }) => operation === "wash")!;
    const liquid = wash.before.volume!.toNumber("mL") + wash.amounts[0]!.toNumber("mL");
    expect(wash.largerVessel!.toNumber("mL")).toBeGreaterThan(1.1 * liquid);
  });
});

describe("powder of a metal", () => {
  const copper = (name: string, excess: "0 %" | "10 %"): PlanRequest => ({
    equation: "CuSO4 + Zn -> Cu + ZnSO4",
    product: "Cu",
    materials: [
      { name: "blue vitriol", form: "CuSO4·5H2O" },
      { name, form: "Zn", excess },
    ],
    scale: { material: "blue vitriol", portion: "25 g" },
  });

  it("is neither shaken nor lifted out in pieces", () => {
    expect(words(copper("zinc powder", "10 %"))).toMatch(/What is left of the zinc powder dissolves/);
    expect(words(copper("zinc powder", "10 %"))).not.toMatch(/in pieces/);
    expect(words(copper("zinc granules", "10 %"))).toMatch(/Lift out what is left of zinc granules in pieces/);
  });

  it("is in proportion where only rounding brings some more of it", () => {
    const plan = planPreparation(copper("zinc powder", "0 %"));
    const text = plan.steps.map((one) => one.text).join("\n");
    expect(text).toMatch(/until the added metal is gone; .* a little more of the metal is needed/);
    expect(text).not.toMatch(/dilute sulfuric acid/);
    expect(plan.checks.map((one) => one.text).join("\n")).toMatch(
      /it is done when the last of the zinc powder is gone/,
    );
  });
});

describe("small things of nine sheets", () => {
  it("permanganate is not looked through, and its oxide is not ignited for water", () => {
    const text = words({
      equation: "KMnO4 + MnSO4·H2O -> MnO2 + K2SO4 + H2SO4",
      product: "MnO2",
      materials: [
        { name: "permanganate", form: "KMnO4", assay: "99 %" },
        { name: "manganese sulfate", form: "MnSO4·H2O", assay: "98 %" },
      ],
      scale: { material: "permanganate", portion: "10 g" },
    });
    const dissolving = text.split("\n").find((one) => one.startsWith("Dissolve the permanganate"))!;
    expect(dissolving).not.toMatch(/filter/);
    expect(text).toMatch(/a gel keeps up to 20 % of water/);
    expect(text).not.toMatch(/which the ignition/);
  });

  it("a mixture of liquids is given as one volume, and the liquor with the alcohol is said to burn", () => {
    const plan = planPreparation({
      equation: "CuSO4·5H2O + NH3 -> [Cu(NH3)4]SO4·H2O + H2O",
      product: "[Cu(NH3)4]SO4·H2O",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "ammonia water", form: "NH3", strength: "25 %", excess: "50 %" },
      ],
      scale: { material: "blue vitriol", portion: "10 g" },
    });
    expect(plan.steps.map(({ text }) => text).join("\n")).toMatch(
      /with [\d.]+ mL of a mixture of alcohol and strong ammonia, half and half/,
    );
    expect(plan.waste.notes.join("\n")).toMatch(/with the alcohol in it the liquor burns/);
  });

  it("a firing that changes no mass is not said to end by one", () => {
    const text = words({
      equation: "CoO + Al2O3 -> CoAl2O4",
      product: "CoAl2O4",
      materials: [
        { name: "cobalt oxide", form: "CoO", assay: "98 %" },
        { name: "calcined alumina", form: "Al2O3", assay: "99 %" },
      ],
      scale: { product: "20 g" },
    });
    expect(text).toMatch(/keep it there for one to three hours\. Nothing leaves it, so the mass does not tell/);
    expect(text).not.toMatch(/stands still/);
  });

  it("a hot liquor of unknown solubility is looked through before it cools", () => {
    const double: PlanRequest = {
      // of the copper salt a printed preparation gives the solubility; of the zinc salt no table has it
      equation: "K2SO4 + ZnSO4·7H2O -> K2Zn(SO4)2·6H2O + H2O",
      product: "K2Zn(SO4)2·6H2O",
      materials: [
        { name: "potassium sulfate", form: "K2SO4" },
        { name: "white vitriol", form: "ZnSO4·7H2O" },
      ],
      scale: { material: "white vitriol", portion: "25 g" },
    };
    const text = words(double);
    // 50 % alcohol dissolves some of a double salt: as much of it as the crystals keep of their liquor, and no millilitre a gram
    const { steps, product } = planPreparation(double);
    const rinse = steps.find(({ operation }) => operation === "rinse")!;
    expect(rinse.amounts[0]!.toNumber("g")).toBeLessThan(0.3 * product.theoreticalYield.toNumber("g"));
    expect(text.indexOf("Look through the hot liquor")).toBeGreaterThan(0);
    expect(text.indexOf("Look through the hot liquor")).toBeLessThan(text.indexOf("Let it cool"));
  });

  it("ammonia that is in excess by the plan is put to a liquor that is acid all the same", () => {
    const text = words({
      equation: "NH3 + H2SO4 -> (NH4)2SO4",
      product: "(NH4)2SO4",
      materials: [
        { name: "ammonia water", form: "NH3", strength: "25 %", excess: "5 %" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { product: "20 g" },
    });
    expect(text).toMatch(/note the pH; where it is acid a little more of the ammonia water is needed/);
  });
});

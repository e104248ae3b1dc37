// What a sheet says it assumes: a planning value is listed where the request leaves it open and the work needs it, and only there.
import { fromJSON, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { PLANNING } from "../../src/preparation/data/planning";

/** A carbonate from a salt and soda: gas, a precipitate, washes. */
const zinc: PlanRequest = {
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + CO2 + Na2SO4",
  product: "Zn5(CO3)2(OH)6",
  materials: [
    { name: "zinc", form: "ZnSO4·7H2O" },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { material: "zinc", portion: "50 g" },
};
/** By fire: no vessel, no wash, no gas in a room. */
const lime: PlanRequest = {
  equation: "CaCO3 -> CaO + CO2",
  product: "CaO",
  materials: [{ name: "chalk", form: "CaCO3" }],
  scale: { material: "chalk", portion: "50 g" },
};
const assumed = (request: PlanRequest): readonly string[] =>
  planPreparation(request).assumptions.map(({ what }) => what);
const lists = (request: PlanRequest, name: keyof typeof PLANNING): boolean =>
  assumed(request).includes(PLANNING[name].what);

describe("a planning value", () => {
  it.each([
    ["temperature", { temperature: "15 °C" }],
    ["pressure", { pressure: "98 kPa" }],
    ["massStep", { readability: { mass: "0.01 g" } }],
    ["roomVolume", { room: { volume: "50 m^3" } }],
    ["airChanges", { room: { airChanges: "3 1/h" } }],
    ["feedStrength", { waterFactor: 1.5 }],
    ["coldWaterFactor", { waterFactor: 1.5 }],
    ["foamWithGas", { vesselFactor: 2.5 }],
    ["washesOf", { washing: { washVolume: "200 mL" } }],
    ["residue", { washing: { residue: "0.5 %" } }],
  ] as const)("%s is assumed unless it is given", (name, given) => {
    expect(lists(zinc, name)).toBe(true);
    expect(lists({ ...zinc, ...given } as PlanRequest, name)).toBe(false);
  });

  it.each([
    "foamWithGas",
    "foamWithoutGas",
    "foamIntoAcid",
    "washesOf",
    "residue",
    "feedStrength",
    "hot",
    "roomVolume",
    "airChanges",
    "leastPortions",
  ] as const)("%s is not assumed where no vessel of liquid is used", (name) => {
    expect(lists(lime, name)).toBe(false);
  });

  it("is listed with its source, and none twice", () => {
    for (const request of [zinc, lime]) {
      const { assumptions } = planPreparation(request);
      expect(new Set(assumptions.map(({ what }) => what)).size).toBe(assumptions.length);
      for (const { citation } of assumptions) expect(citation).not.toBe("");
    }
  });
});

describe("the figures of a record", () => {
  const record = () => JSON.parse(JSON.stringify(planPreparation(zinc)));

  it("are read back as they were", () => {
    expect(() => fromJSON(record())).not.toThrow();
    expect(record().figures.length).toBeGreaterThan(5);
  });

  it.each([
    ["no list", () => ({ length: 1 })],
    ["a text", () => "figures"],
    [
      "more than a thousand",
      () => Array.from({ length: 1001 }, () => ({ what: "a", text: "b", value: "1", unit: "g" })),
    ],
    ["one without a unit", () => [{ what: "a", text: "b", value: "1" }]],
    ["a number for a text", () => [{ what: "a", text: "b", value: 1, unit: "g" }]],
    ["a good one and a bad one", () => [record().figures[0], { what: "a" }]],
    ["nothing in it", () => [null]],
  ])("are refused: %s", (_, figures) => {
    expect(() => fromJSON({ ...record(), figures: figures() })).toThrow(expect.objectContaining({ code: "plan.json" }));
  });
});

// Calls which once ended in an error of the runtime, in a wrong answer or in an endless wait, each with the code it is
// refused with now.

import * as preparative from "preparative";
import { isPreparativeError } from "preparative";
import { describe, expect, it } from "vitest";
import { expectDimension } from "../src/quantity/internal";

// Callers without types.
// biome-ignore lint/suspicious/noExplicitAny: every call here is one that the types forbid
const p = preparative as any;

const codeOf = (run: () => unknown): string => {
  try {
    return `answered ${String(run())}`;
  } catch (error) {
    return isPreparativeError(error) ? error.code : `not coded: ${String(error)}`;
  }
};

const table = (name: string, rows: readonly (readonly [call: string, run: () => unknown, code: string])[]) =>
  describe(name, () => {
    it.each(rows)("%s", (_, run, code) => expect(codeOf(run)).toBe(code));
  });

const q = preparative.quantity("12.5(2) g");

const HOLED: unknown[] = ["1 g"];
HOLED[2] = "2 g";

table("sources", [
  ["source of no key", () => p.source("nope"), "source.unknown"],
  ["source of what objects inherit", () => p.source("constructor"), "source.unknown"],
  ["source __proto__", () => p.source("__proto__"), "source.unknown"],
  ["cite of no key", () => p.cite("nope"), "source.unknown"],
  ["cite of what objects inherit", () => p.cite("toString"), "source.unknown"],
  ["cite of nothing", () => p.cite(undefined), "source.unknown"],
]);

table("quantities", [
  ["a lone superscript minus", () => p.quantity("1 g⁻"), "quantity.unknown-unit"],
  [
    "a misspelt uncertainty",
    () => p.quantity({ value: 1, unit: "g", standardUncertanty: 1 }),
    "quantity.unknown-option",
  ],
  ["an inherited distribution", () => p.quantity("1 ± 1 g", { distribution: "toString" }), "quantity.bad-option"],
  [
    "a distribution of no kind",
    () => p.quantity({ value: 1, unit: "g", halfWidth: 1, distribution: "flat" }),
    "quantity.bad-option",
  ],
  ["a misspelt label", () => p.quantity("1 g", { lable: "x" }), "quantity.unknown-option"],
  ["a label that is not text", () => p.quantity("1 g", { label: 5 }), "quantity.bad-option"],
  ["a name that is not an object", () => q.named("m" as never), "quantity.bad-option"],
  ["no unit to show in", () => p.quantity("1 g").in(undefined), "quantity.unknown-unit"],
  ["no unit to turn into", () => p.quantity("1 g").to(null), "quantity.unknown-unit"],
  ["null for a format", () => p.quantity("1 g").format(null), "quantity.bad-option"],
  ["text for a format", () => p.quantity("1 g").format("g"), "quantity.bad-option"],
  ["a misspelt format", () => p.quantity("1 g").format({ decimls: 1 }), "quantity.unknown-option"],
  ["figures by another word", () => p.quantity("1 g").format({ digits: 2 }), "quantity.unknown-option"],
  ["an inherited rounding", () => q.format({ decimals: 1, rounding: "toString" as never }), "quantity.bad-option"],
  ["an inherited uncertainty", () => q.format({ uncertainty: "__proto__" as never }), "quantity.bad-option"],
  ["an uncertainty of false", () => q.format({ uncertainty: false as never }), "quantity.bad-option"],
  ["a locale of no language", () => q.format({ locale: "not a locale" }), "quantity.bad-option"],
  ["a prefix of no kind", () => q.format({ prefix: "SI" as never }), "quantity.bad-option"],
  ["an inherited operation", () => p.withSignificantFigures("__proto__", ["1", "2"]), "quantity.bad-option"],
  ["an operation that objects have", () => p.withSignificantFigures("toString", ["1", "2"]), "quantity.bad-option"],
  ["a misspelt level", () => p.expandedUncertainty("1(1) g", { levl: 0.99 }), "quantity.unknown-option"],
  ["a list with a hole", () => p.sum(HOLED), "quantity.bad-option"],
  ["the smallest with a hole", () => p.minimum(HOLED), "quantity.bad-option"],
  ["the largest with a hole", () => p.maximum(HOLED), "quantity.bad-option"],
  ["readings with a hole", () => p.meanOfReadings(HOLED), "quantity.bad-option"],
  ["compared with <", () => (q as never) < (preparative.quantity("2 g") as never), "quantity.not-a-number"],
  ["added with +", () => (q as never) + 1, "quantity.not-a-number"],
  ["an unknown dimension", () => expectDimension("1 g", {} as never, "mass"), "quantity.wrong-dimension"],
  [
    "a record with an uncertainty below zero",
    () => p.quantityFromJSON({ ...q.toJSON(), standardUncertainty: "-0.2" }),
    "quantity.json",
  ],
  ["a record with endless decimals", () => p.quantityFromJSON({ ...q.toJSON(), decimals: 1e9 }), "quantity.json"],
]);

const carbon = "C + O2 -> CO + CO2";
const formula = preparative.parseFormula("CuSO4·5H2O");
const equation = preparative.parseEquation("H2 + O2 -> H2O");
const balanced = preparative.balance("H2 + O2 -> H2O");

table("elements and formulas", [
  ["a misspelt convention", () => p.molarMass("Cu", { convension: "midpoint" }), "formula.unknown-option"],
  ["a convention that objects have", () => p.molarMass("Cu", { convention: "toString" }), "formula.bad-option"],
  [
    "weights by the name of an element",
    () => p.molarMass("Cu", { weights: { copper: "63 g/mol" } }),
    "formula.bad-option",
  ],
  ["null for options", () => p.molarMass("Cu", null), "formula.bad-option"],
  ["text for options", () => p.atomicWeight("Cu", "midpoint"), "element.bad-option"],
  ["a sign rule of no kind", () => p.parseFormula("Fe3+", { digitsBeforeSign: "both" }), "formula.bad-option"],
  ["equal to nothing", () => p.parseFormula("NaCl").equals(undefined), "formula.not-text"],
  ["composition of text", () => formula.hasSameComposition("NaCl" as never), "formula.not-text"],
  ["parts of nothing", () => formula.hasSameParts(undefined as never), "formula.not-text"],
  ["plus nothing", () => formula.plus(undefined as never), "formula.not-text"],
  ["minus nothing", () => formula.minus(null as never), "formula.not-text"],
  ["times nothing", () => formula.times(undefined as never), "formula.bad-factor"],
  ["times an object without prototype", () => formula.times(Object.create(null)), "formula.bad-factor"],
]);

table("equations", [
  ["conditions of null", () => p.balance(carbon, { conditions: null }), "equation.bad-option"],
  ["conditions of text", () => p.balance(carbon, { conditions: " " }), "equation.bad-option"],
  ["a condition of null", () => p.balance(carbon, { conditions: [null] }), "equation.bad-option"],
  ["a condition without species", () => p.balance(carbon, { conditions: [{ ratio: {} }] }), "equation.bad-ratio"],
  [
    "a misspelt ratio",
    () => p.balance(carbon, { conditions: [{ species: ["CO", "CO2"], ration: "1:1" }] }),
    "equation.unknown-option",
  ],
  ["a word for coefficients that is none", () => p.balance(carbon, { coefficients: "ignor" }), "equation.bad-option"],
  ["spectators of no kind", () => p.parseEquation(carbon, { spectators: "leave" }), "equation.bad-option"],
  [
    "a misspelt medium",
    () => p.halfReactions("MnO4- + Fe^2+ -> Mn^2+ + Fe^3+", { medum: "base" }),
    "equation.unknown-option",
  ],
  ["a list for options", () => p.halfReactions(carbon, []), "equation.bad-option"],
  ["options of a balanced equation", () => p.netIonic(balanced, { conditons: [] }), "equation.unknown-option"],
  [
    "lists with a third side",
    () => p.balance({ reactants: ["H2"], products: ["H2"], arrows: "->" }),
    "equation.unknown-option",
  ],
  ["a matrix with nothing in it", () => p.integerNullspace([[2, undefined]]), "equation.bad-matrix"],
  ["a matrix with an object", () => p.integerNullspace([[{}]]), "equation.bad-matrix"],
  ["a matrix with NaN", () => p.integerNullspace([[Number.NaN]]), "equation.bad-matrix"],
  ["a matrix with a hole for a row", () => p.integerNullspace([[1], ...new Array(2)]), "equation.bad-matrix"],
  [
    "a record with an object for a coefficient",
    () =>
      p.equationFromJSON({ ...equation.toJSON(), reactants: [{ formula: "H2", coefficient: Object.create(null) }] }),
    "equation.not-a-record",
  ],
  ["equal to nothing", () => equation.equals(undefined as never), "equation.not-an-equation"],
  ["balanced, equal to nothing", () => balanced.equals(undefined as never), "equation.not-an-equation"],
]);

const bare = (fields: object): unknown => Object.assign(Object.create(null), fields);

table("amounts", [
  ["text for the conditions of a gas", () => p.gasDensity("CO2", "100 °C"), "amount.bad-option"],
  ["a number for the conditions", () => p.gasDensity("CO2", 5), "amount.bad-option"],
  ["true for the conditions", () => p.gasVolume("1 mol", true), "amount.bad-option"],
  ["a list for the conditions", () => p.gasVolume("1 mol", []), "amount.bad-option"],
  ["null for a purity", () => p.amountOf("1 g", "NaCl", null), "amount.bad-option"],
  ["a list for a purity", () => p.percentYield("1 g", "2 g", ["x"]), "amount.bad-option"],
  [
    "a misspelt condition inside a change",
    () => p.gasVolumeAt("1 L", { from: { temprature: "10 °C" } }),
    "amount.unknown-option",
  ],
  [
    "a misspelt detail of a feed",
    () => p.feedAmount("HCl", { volume: "1 mL", strength: "1 mol/L", strengthOptions: { bassis: "w/w" } }),
    "amount.unknown-option",
  ],
  [
    "a misspelt detail of a titrant",
    () => p.titrate({ titrant: { strength: "1 mol/L", optoins: {} }, titre: "1 mL" }),
    "amount.unknown-option",
  ],
  [
    "a titre with a hole",
    () => p.titrate({ titrant: { strength: "1 mol/L" }, titre: HOLED, titrantPerAnalyte: 1 }),
    "amount.missing-input",
  ],
  ["ware without prototype", () => p.measuredVolume("10 mL", { with: bare({}) }), "amount.glassware"],
  ["ware of an object", () => p.measuredVolume("10 mL", { with: {} }), "amount.glassware"],
  [
    "a part of a mixture with a slip",
    () => p.mixSolutions([{ strength: "5 % w/w", potion: "1 g" }, {}]),
    "amount.unknown-option",
  ],
]);

it("a strength without prototype is one with value and unit", () => {
  const strength = bare({ value: 5, unit: "% w/w" });
  expect(p.convertStrength(strength, { of: "NaCl", to: "g/L" }).format({ decimals: 0 })).toBe("52 g/L");
});

table("hydrates", [
  ["per of an object", () => p.equivalentMass("1 g", { from: "Na2CO3", to: "NaHCO3", per: {} }), "hydrate.bad-option"],
  [
    "per of an object without prototype",
    () => p.equivalentMass("1 g", { from: "Na2CO3", to: "NaHCO3", per: bare({}) }),
    "hydrate.bad-option",
  ],
  [
    "a misspelt purity",
    () => p.equivalentMass("1 g", { from: "Na2CO3", to: "NaHCO3", fromPurity: { asay: "5 %" } }),
    "hydrate.unknown-option",
  ],
]);

const candidate = preparative.shopMaterial("Epsom salt").candidates[0]!;

table("substances", [
  ["a misspelt limit", () => p.search("copper", { max: 2 }), "substance.unknown-option"],
  ["an altered good: assay", () => p.usualStrength({ ...candidate, assay: true }), "substance.bad-input"],
  [
    "an altered good: range",
    () => p.usualStrength({ ...candidate, assay: { lower: "x", upper: "y" } }),
    "substance.bad-input",
  ],
  ["an altered good: formula", () => p.shelfMaterialOf({ ...candidate, formula: Number.NaN }), "substance.bad-input"],
  ["an altered good: source", () => p.shelfMaterialOf({ ...candidate, source: "nope" }), "source.unknown"],
  ["a caution of a hole", () => p.cautions(new Array(3)), "substance.bad-input"],
  [
    "a caution with a misspelt strength",
    () => p.cautions([{ material: "vinegar", strenght: "5 %" }]),
    "substance.unknown-option",
  ],
  [
    "a pack at less than nothing",
    () => p.pricePerMole({ formula: "NaCl", price: "-1 EUR", size: "1 kg" }),
    "substance.bad-input",
  ],
]);

table("solubility and heat", [
  [
    "a misspelt water",
    () => p.crystallise({ formula: "KNO3", mass: "1 g", hot: "80 °C", cold: "10 °C", wter: "1 g" }),
    "solubility.unknown-option",
  ],
  [
    "a misspelt formula in a list",
    () => p.waterForSolution({ salts: [{ formual: "KNO3" }], temperature: "20 °C" }),
    "solubility.unknown-option",
  ],
  [
    "ions with a hole",
    () => p.willPrecipitate({ solid: "BaSO4", solutions: [{ volume: "1 mL", ions: HOLED }] }),
    "solubility.missing-option",
  ],
  [
    "a misspelt start",
    () => p.temperatureRise({ heat: "1 kJ", mass: "1 kg", strat: "20 °C" }),
    "thermochemistry.unknown-option",
  ],
]);

const recipe = { equation: "Zn + S -> ZnS", product: "ZnS", materials: [{ form: "Zn", amount: "1 g" }] };

table("recipes", [
  ["a material of null", () => p.checkRecipe({ ...recipe, materials: [null] }), "plan.request"],
  ["stated molar masses as text", () => p.checkRecipe({ ...recipe, stated: { molarMasses: "x" } }), "plan.request"],
  ["a misspelt yield", () => p.checkRecipe({ ...recipe, stated: { percentYeild: "90 %" } }), "plan.unknown-option"],
  [
    "a misspelt amount",
    () => p.checkRecipe({ ...recipe, materials: [{ form: "Zn", amout: "1 g" }] }),
    "plan.unknown-option",
  ],
  ["washed as text", () => p.checkRecipe({ ...recipe, washed: "no" }), "plan.request"],
]);

table("identity by loss", [
  [
    "candidates with a hole",
    () => p.identifyByMassLoss({ before: "2 g", after: "1 g", candidates: new Array(2) }),
    "plan.request",
  ],
]);

describe("a hundred million holes", () => {
  it.each(["sum", "minimum", "maximum", "meanOfReadings", "replicateStatistics"])("%s refuses them at once", (name) => {
    const holes = new Array(1e8);
    const start = performance.now();
    expect(codeOf(() => p[name](holes))).toMatch(/^(quantity|amount)\./);
    expect(performance.now() - start).toBeLessThan(500);
  });
});

describe("a quantity for programs", () => {
  it("gives a plain number, in its own unit or another", () => {
    expect([q.toNumber(), q.toNumber("mg")]).toEqual([12.5, 12500]);
  });

  it("is read from its own record", () => {
    expect(p.quantity(JSON.parse(JSON.stringify(q))).equals(q)).toBe(true);
  });

  it("is text where text is wanted", () => expect(`${preparative.quantity("12.50 g")}`).toBe("12.50 g"));
});

// Two weighings of temperature: 20 °C and 22 °C lie 2 K apart, s = √2 K.
describe("replicates of temperatures", () => {
  it("have a spread in degrees and a mean on the scale", () => {
    const { mean, range, standardDeviation } = preparative.replicateStatistics(["20.0 °C", "22.0 °C"]);
    expect([range.toString(), range.dimension]).toEqual(["2 Δ°C", "temperature difference"]);
    expect(standardDeviation!.format({ decimals: 3 })).toBe("1.414 Δ°C");
    expect(mean.in("°C").toString()).toBe("21");
  });

  it("take the uncertainty of the thermometer into the mean", () => {
    const { mean } = preparative.replicateStatistics(["20.0(1) °C", "22.0(1) °C"]);
    // s/√2 = 1 °C, and 0.1 °C that both share: √1.01
    expect(mean.standardUncertainty!.toFixed(4)).toBe("1.0050");
  });
});

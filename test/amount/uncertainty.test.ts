// The uncertainty a result carries, against the plain way of getting it: the question asked again with the reading a little
// larger and a little smaller, and the rest of the doubt, tables and atomic weights, from the question with an exact reading.
import { describe, expect, test } from "vitest";
import {
  amountOf,
  backTitrate,
  convertStrength,
  densityOfSolution,
  dilute,
  gasAmount,
  gasDensity,
  gasVolume,
  gasVolumeAt,
  massFractionFromDensity,
  mixSolutions,
  mixToStrength,
  molarMassOfGas,
  percentYield,
  reactionAmounts,
  theoreticalYield,
} from "../../src/amount";
import { equivalentMass, hydrationNumber, meanHydration } from "../../src/hydrate";
import { type Quantity, quantity } from "../../src/quantity";

type Row = readonly [name: string, ask: (reading: Quantity) => Quantity, value: number, u: number, unit: string];

const THERMITE = "Fe2O3 + Al -> Al2O3 + Fe";

const rows: readonly Row[] = [
  ["concentration from % w/w", (q) => convertStrength(q, { of: "HCl", to: "mol/L" }), 30.3, 0.2, "% w/w"],
  ["% w/w from concentration", (q) => convertStrength(q, { of: "NaOH", to: "% w/w" }), 7.1, 0.05, "mol/L"],
  ["molality from concentration", (q) => convertStrength(q, { of: "NaCl", to: "mol/kg" }), 2.1, 0.05, "mol/L"],
  ["% w/w from % v/v", (q) => convertStrength(q, { of: "C2H5OH", to: "% w/w" }), 40, 0.3, "% v/v"],
  [
    "strength from density, warm",
    (q) => massFractionFromDensity("H2SO4", q, { temperature: "25 °C" }),
    1.2345,
    5e-4,
    "g/mL",
  ],
  ["density from temperature", (q) => densityOfSolution("H2SO4", "30.5 %", { temperature: q }), 24, 0.5, "°C"],
  [
    "stock for a dilution",
    (q) => dilute({ of: "HCl", from: q, to: "1 mol/L", makeUpTo: "500 mL" }).answer,
    36.5,
    0.3,
    "% w/w",
  ],
  [
    "volume of a mixture",
    (q) =>
      mixSolutions(
        [
          { strength: q, portion: "100 mL" },
          { strength: "10 % w/w", portion: "50 mL" },
        ],
        { of: "H2SO4" },
      ).volume!,
    60.3,
    0.3,
    "% w/w",
  ],
  [
    "the stronger of two",
    (q) => mixToStrength({ of: "H2SO4", strong: q, weak: "0 % w/w", wanted: "20 % w/w", mass: "1 L" }).strong,
    60.3,
    0.3,
    "% w/w",
  ],
  [
    "gas over water from its temperature",
    (q) => gasAmount("1 L", { temperature: q, pressure: "99 kPa", collectedOver: "water" }),
    23,
    0.5,
    "°C",
  ],
  [
    "a real gas from its temperature",
    (q) => gasVolume("1 mol", { temperature: q, gas: "SO2", model: "second virial" }),
    30,
    0.5,
    "°C",
  ],
  ["a real gas from its pressure", (q) => gasDensity("CO2", { pressure: q, model: "second virial" }), 99, 0.5, "kPa"],
  [
    "molar mass of a vapour",
    (q) => molarMassOfGas(q, { temperature: "22 °C", collectedOver: "water" }),
    2.3,
    0.02,
    "g/L",
  ],
  [
    "a gas brought to other conditions",
    (q) => gasVolumeAt("1 L", { from: { temperature: q, collectedOver: "water" }, to: { temperature: "0 °C" } }),
    20,
    0.3,
    "°C",
  ],
  [
    "back titration from the reagent",
    (q) =>
      backTitrate({
        reagent: { strength: q },
        reagentVolume: "50 mL",
        titrant: { strength: "0.1 mol/L" },
        titre: "20 mL",
        titrantPerReagent: 1,
        reagentPerAnalyte: 2,
        analyte: "CaCO3",
        sample: "0.2 g",
      }).massFraction!,
    0.1,
    0.0003,
    "mol/L",
  ],
  ["what is left", (q) => reactionAmounts(THERMITE, { Fe2O3: q, Al: "2 g" }).of("Fe2O3").left!, 10, 0.01, "g"],
  ["an excess", (q) => reactionAmounts(THERMITE, { Fe2O3: "10 g", Al: q }).of("Fe2O3").excess!, 2, 0.01, "g"],
  [
    "a yield",
    (q) => percentYield("2 g", theoreticalYield("ZnO + H2SO4 -> ZnSO4 + H2O", "ZnSO4·7H2O", { ZnO: q })),
    1,
    0.01,
    "g",
  ],
  ["moist and impure", (q) => amountOf("10 g", "NaCl", { moisture: q, assay: "99 %" }), 5, 0.5, "%"],
  [
    "waters from heating",
    (q) => hydrationNumber({ before: "25.482 g", after: q, vessel: "22.932 g", anhydrous: "CuSO4" }).waters,
    24.56,
    0.001,
    "g",
  ],
  ["waters from an assay", (q) => meanHydration({ salt: "Na2CO3", assay: q }).waters, 58, 0.5, "%"],
  ["share of the heavier form", (q) => meanHydration({ salt: "Na2CO3", assay: q }).between!.shareOfMore, 58, 0.5, "%"],
  [
    "equivalent mass from an assay",
    (q) => equivalentMass("10 g", { from: "MgSO4·7H2O", to: "MgSO4", fromPurity: { assay: q } }),
    98,
    0.5,
    "%",
  ],
];

describe("the uncertainty of a reading goes into the result", () => {
  test.each(rows)("%s", (_, ask, value, u, unit) => {
    const exactly = (x: number): Quantity => ask(quantity({ value: x.toPrecision(12), unit }));
    const answer = ask(quantity({ value, unit, standardUncertainty: u }));
    const [above, below] = [exactly(value + u / 50), exactly(value - u / 50)];
    const slope = above.in(answer.unit).minus(below.in(answer.unit)).toNumber() / (u / 25);
    const rest = exactly(value).standardUncertainty?.toNumber() ?? 0;
    // the difference is over a fiftieth of u, in which no slope here bends by more than one in a thousand
    expect(answer.standardUncertainty!.toNumber() / Math.hypot(slope * u, rest)).toBeCloseTo(1, 3);
  });
});

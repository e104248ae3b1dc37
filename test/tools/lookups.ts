// What every public function looks up: for those that look something up a call, where its facts go, and own rows that must
// change the answer; for all others a call that is good. All own figures are invented.

import type { FactRows } from "preparative";
import * as preparative from "preparative";

/** A call, the argument that takes `facts`, and rows that change the answer. */
export interface Lookup {
  readonly name: string;
  readonly args: readonly unknown[];
  readonly at: number;
  readonly rows: FactRows;
}

const source = "studio notebook, page 12 (invented)";
const HEAVY: FactRows = {
  source,
  weights: [
    { element: "H", weight: "1.1 g/mol" },
    { element: "O", weight: "17 g/mol" },
    { element: "Na", weight: "24 g/mol" },
    { element: "Cl", weight: "37 g/mol" },
    { element: "Cu", weight: "65 g/mol" },
    { element: "Ca", weight: "41 g/mol" },
    { element: "S", weight: "33 g/mol" },
    { element: "Fe", weight: "57 g/mol" },
    { element: "Zn", weight: "67 g/mol" },
  ],
};
const HOT: FactRows = { source, enthalpies: [{ formula: "Na2CO3(s)", enthalpy: "-1100(3) kJ/mol" }] };
const names: FactRows = {
  source,
  substances: [{ formula: "CoCO3", name: "kiln blush", otherNames: ["studio pink"], density: "3.9 g/cm3" }],
  names: [{ name: "studio green", formula: "Cr2O3" }],
};
const solubility = (...formulas: readonly string[]): FactRows => ({
  source,
  solubilities: formulas.map((formula) => ({
    formula,
    points: [
      ["5 °C", "11 g"],
      ["25 °C", "30 g"],
      ["100 °C", "90 g"],
    ],
  })),
});
const dense = (solute: string): FactRows => ({
  source,
  densities: [
    {
      solute,
      points: [
        ["1 %", "1.02 g/mL"],
        ["40 %", "1.5 g/mL"],
      ],
    },
  ],
});
const constants = (...rows: NonNullable<FactRows["constants"]>): FactRows => ({ source, constants: rows });
const vinegar: FactRows = {
  source,
  materials: [{ name: "vinegar", formula: "CH2O2", assay: "7 %", solution: true }],
};
const noted: FactRows = { source, hazards: [{ formula: "CaCO3", codes: ["H302"] }] };

const beaker = { water: "1 kg", dissolved: [{ formula: "CH3COOH", amount: "0.1 mol" }] };
const soda = { formula: "NaOH", concentration: "0.1 mol/L" };
const acetic = constants({ kind: "pKa", of: "CH3COOH", value: "4.0" });
const plan = {
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "a", form: "CaCl2·2H2O" },
    { name: "b", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "20 g" },
};
const titration = {
  titrant: { strength: "0.1 mol/L", of: "NaOH" },
  titre: { initial: "0.1 mL", final: "10.2 mL" },
  analyte: "HCl",
  sample: "0.1 g",
};
const washed = {
  dryCakeMass: "25 g",
  kindOfSolid: "hydroxide gel",
  saltMassInLiquor: "10 g",
  liquorVolume: "100 mL",
  washVolume: "900 mL",
  targetResidue: "0.2 %",
  product: { formula: "CaCO3", temperature: "20 °C" },
};

const [copper] = preparative.shopMaterial("copper fungicide, oxychloride").candidates;

const run = preparative.evaluateRun(preparative.planPreparation(plan as never), { dried: "19 g" });
const stock = preparative.receive(preparative.openStock(), { name: "salt", form: "NaCl", amount: "1 kg" });
/** A ledger that somebody wrote by hand, in a unit of their own. */
const inScoops = {
  ...stock,
  entries: plan.materials.map(({ name, form }) => ({ kind: "received", name, lot: "1", form, amount: "300 scoop" })),
} as preparative.Stock;
const scoop: FactRows = { source, units: [{ symbol: "scoop", is: "4.2 g" }] };

/** Functions that look something up, each with rows of every kind that its answer can rest on. */
export const LOOKUPS: readonly Lookup[] = (
  [
    ["acidConstant", ["CH3COOH"], 1, acetic],
    ["amountOf", ["1 g", "NaCl"], 2, HEAVY],
    ["aqueousComposition", [beaker], 0, acetic],
    ["atomEconomy", ["Zn + HCl -> ZnCl2 + H2", "H2"], 2, HEAVY],
    ["atomicWeight", ["Cu"], 1, HEAVY],
    [
      "backTitrate",
      [
        {
          titrant: { strength: "0.1 mol/L" },
          titre: { initial: "0.1 mL", final: "10.2 mL" },
          reagent: { strength: "0.1 mol/L" },
          reagentVolume: "25 mL",
          analyte: "CaCO3",
          sample: "0.1 g",
          titrantPerReagent: 1,
          reagentPerAnalyte: "2",
        },
      ],
      0,
      HEAVY,
    ],
    ["bottleLabel", ["CoCO3"], 1, names],
    ["bottleLabel", ["CaCO3"], 1, noted],
    [
      "bufferRecipe",
      [{ pH: "4.7", volume: "1 L", concentration: "0.1 mol/L", pair: ["CH3COOH", "CH3COONa"] }],
      0,
      acetic,
    ],
    ["cautions", [["CaCO3"]], 1, noted],
    ["cautionsForFormulas", [["CaCO3"]], 1, noted],
    [
      "checkRecipe",
      [
        {
          equation: plan.equation,
          product: "CaCO3",
          materials: [
            { form: "CaCl2", amount: "10 g" },
            { form: "Na2CO3", inExcess: true },
          ],
        },
      ],
      0,
      HEAVY,
    ],
    ["convertStrength", ["5 % w/w", { of: "NaCl", to: "mol/L" }], 1, dense("NaCl")],
    ["convertStrength", ["5 % w/w", { of: "NaCl", to: "mol/kg" }], 1, HEAVY],
    ["crystallise", [{ formula: "KNO3", mass: "100 g", hot: "80 °C", cold: "10 °C" }], 0, solubility("KNO3")],
    ["crystalWaterIn", ["10 g", "CuSO4·5H2O"], 2, HEAVY],
    ["densityOfSolution", ["NaCl", "10 %"], 2, dense("NaCl")],
    ["dilute", [{ from: "20 % w/w", take: "10 mL", makeUpTo: "100 mL", of: "NaCl" }], 0, dense("NaCl")],
    [
      "dissolvedOverExcess",
      [
        {
          ion: "Zn^2+",
          water: "100 g",
          dissolved: [{ formula: "ZnSO4", amount: "0.01 mol" }],
          add: soda,
          amount: "0.02 mol",
          steps: 2,
        },
      ],
      0,
      constants({ kind: "pKsp", of: "Zn(OH)2", value: "18" }),
    ],
    ["distinguishMaterials", [["CuSO4·5H2O", "CuSO4"]], 1, HEAVY],
    ["doesItGo", [plan], 0, constants({ kind: "pKsp", of: "CaCO3", value: "6" })],
    ["doseToPH", [{ solution: beaker, with: soda, to: "7" }], 0, acetic],
    ["empiricalFormula", [{ Cu: "79.9 %", O: "20.1 %" }], 1, HEAVY],
    ["equivalentMass", ["30.0 g", { from: "FeSO4·7H2O", to: "FeSO4·H2O" }], 1, HEAVY],
    ["feedAmount", ["NaCl", "1 g"], 2, HEAVY],
    ["findRoutes", [{ target: "CaCO3", shelf: plan.materials.map(({ name, form }) => ({ name, form })) }], 0, HEAVY],
    ["formationEnthalpy", ["Na2CO3"], 1, HOT],
    ["reactionEnthalpy", ["Na2CO3 -> Na2CO3(aq)"], 1, HOT],
    ["solutionEnthalpy", ["Na2CO3"], 1, HOT],
    ["formulaOf", ["vinegar"], 1, vinegar],
    [
      "fractionalCrystallization",
      [
        {
          wanted: "KNO3",
          other: "NaCl",
          from: [
            { formula: "NaNO3", mass: "85 g" },
            { formula: "KCl", mass: "74.6 g" },
          ],
          water: "100 g",
          hot: "100 °C",
          cold: "10 °C",
        },
      ],
      0,
      solubility("KNO3"),
    ],
    ["gasDensity", ["H2O", { temperature: "120 °C" }], 1, HEAVY],
    ["hydrateMixUps", [{ observed: "15.6 g", expected: "10 g", of: ["ZnSO4"], relativeUncertainty: 0.02 }], 0, HEAVY],
    ["hydrationNumber", [{ before: "5.000 g", after: "3.196 g", anhydrous: "CuSO4" }], 0, HEAVY],
    [
      "hydroxidePrecipitationRange",
      [{ metal: "Mg^2+", concentration: "0.1 mol/L" }],
      0,
      constants({ kind: "pKsp", of: "Mg(OH)2", value: "9" }),
    ],
    ["identify", ["studio green"], 1, names],
    ["identifyByMassLoss", [{ before: "2.000 g", after: "1.439 g", candidates: ["Cu2(OH)2CO3", "CuCO3"] }], 0, HEAVY],
    ["ion", ["CO3^2-"], 1, { source, names: [{ name: "carbonic acid", formula: "H2CO3·H2O" }] }],
    ["ions", [], 0, { source, names: [{ name: "carbonic acid", formula: "H2CO3·H2O" }] }],
    ["issue", [stock, { name: "salt", amount: "3 scoop" }], 2, scoop],
    ["issueForRun", [inScoops, run], 2, scoop],
    ["limitingReagents", ["Zn + HCl -> ZnCl2 + H2", { Zn: "65.0 g", HCl: "72.92 g" }], 2, HEAVY],
    ["lossToLiquor", [{ formula: "KNO3", water: "200 g", temperature: "10 °C" }], 0, solubility("KNO3")],
    ["massAs", ["1 g", "ZnCO3", "ZnO", {}], 3, HEAVY],
    ["massFractionFromDensity", ["NaCl", "1.1 g/mL"], 2, dense("NaCl")],
    ["massFractionOf", ["Cu", "CuSO4"], 2, HEAVY],
    ["massOf", ["1 mol", "NaCl"], 2, HEAVY],
    ["meanHydration", [{ salt: "Na2CO3", assay: "50 %" }], 0, HEAVY],
    [
      "mixSolutions",
      [
        [
          { strength: "5 % w/w", portion: "10 mL" },
          { strength: "10 % w/w", portion: "10 mL" },
        ],
        { of: "NaCl" },
      ],
      1,
      dense("NaCl"),
    ],
    [
      "mixToStrength",
      [{ strong: "20 % w/w", weak: "5 % w/w", wanted: "10 % w/w", mass: "100 mL", of: "NaCl" }],
      0,
      dense("NaCl"),
    ],
    ["molarMass", ["NaCl"], 1, HEAVY],
    ["molarSolubility", [{ solid: "AgCl" }], 0, constants({ kind: "pKsp", of: "AgCl", value: "9" })],
    ["nameOf", ["CoCO3", "oxidation-numbers"], 2, names],
    ["namesOf", ["CoCO3"], 1, names],
    ["onHand", [inScoops], 1, scoop],
    ["oxideEquivalents", ["CaCO3"], 1, HEAVY],
    ["pHOf", [beaker], 0, acetic],
    ["percentComposition", ["NaCl"], 1, HEAVY],
    ["planPreparation", [plan], 0, HEAVY],
    ["planPreparation", [plan], 0, noted],
    [
      "planSequence",
      [{ steps: [{ equation: plan.equation, product: "CaCO3", materials: plan.materials }], wanted: "1 g" }],
      0,
      HEAVY,
    ],
    [
      "precipitatedCarbonate",
      [{ metal: "Ca^2+", precipitant: "soda", concentration: "0.1 mol/L" }],
      0,
      constants({ kind: "pKsp", of: "CaCO3", value: "6" }),
    ],
    [
      "precipitationOrder",
      [
        {
          precipitant: "CrO4^2-",
          solids: [
            { solid: "BaCrO4", concentration: "0.01 mol/L" },
            { solid: "SrCrO4", concentration: "0.01 mol/L" },
          ],
        },
      ],
      0,
      constants({ kind: "pKsp", of: "BaCrO4", value: "8" }),
    ],
    ["pricePerMole", [{ formula: "NaCl", price: "1 EUR", size: "1 kg" }], 0, HEAVY],
    ["quantity", ["1 scoop"], 1, { source, units: [{ symbol: "scoop", is: "4.2 g" }] }],
    ["reactionAmounts", ["Zn + HCl -> ZnCl2 + H2", { Zn: "1 g" }], 2, HEAVY],
    ["readingsOf", ["studio green"], 1, names],
    ["receive", [stock, { name: "soda", form: "Na2CO3", amount: "3 scoop" }], 2, scoop],
    ["receiveProduct", [inScoops, run], 2, scoop],
    [
      "redissolving",
      [
        {
          solid: "AgCl",
          amountOfSolid: "0.01 mol",
          with: { formula: "NH3", concentration: "2 mol/L" },
          water: "1 kg",
          dissolved: [],
        },
      ],
      0,
      constants({ kind: "pKsp", of: "AgCl", value: "9" }),
    ],
    [
      "remainsInSolution",
      [{ substances: [{ formula: "NaCl", mass: "10 g" }], water: "30 g", temperature: "20 °C" }],
      0,
      solubility("NaCl"),
    ],
    ["requiredAmount", ["HCl + NaOH -> NaCl + H2O", { NaOH: "1 g" }, "HCl"], 3, HEAVY],
    ["runsOutFirst", [inScoops, [run.plan]], 2, scoop],
    ["saltConversion", [{ from: "SrSO4", to: "SrCO3" }], 0, constants({ kind: "pKsp", of: "SrCO3", value: "5" })],
    ["saturatedSolution", [{ formula: "NaCl", temperature: "20 °C" }], 0, solubility("NaCl")],
    ["search", ["kiln blush"], 1, names],
    ["search", ["studio green"], 1, names],
    ["shelfMaterialOf", [copper], 1, HEAVY],
    ["shoppingList", [inScoops, [run.plan]], 2, scoop],
    ["shopMaterial", ["vinegar"], 1, vinegar],
    [
      "solidsAlongAddition",
      [{ water: "1 kg", dissolved: [{ formula: "MgCl2", amount: "0.1 mol" }], add: soda, amount: "0.1 mol", steps: 2 }],
      0,
      constants({ kind: "pKsp", of: "Mg(OH)2", value: "9" }),
    ],
    [
      "solidsOverPH",
      [{ ions: [{ formula: "MgCl2", concentration: "0.1 mol/L" }], from: 8, to: 11, step: 1 }],
      0,
      constants({ kind: "pKsp", of: "Mg(OH)2", value: "9" }),
    ],
    ["solidTransitions", ["Na2SO4"], 1, solubility("Na2SO4")],
    ["solubilityDiagram", [{ formulas: ["KNO3"] }], 0, solubility("KNO3")],
    ["solubilityOf", ["NaCl", "20 °C"], 2, solubility("NaCl")],
    ["solubilityProduct", ["AgCl", undefined], 2, constants({ kind: "pKsp", of: "AgCl", value: "9" })],
    [
      "stabilityConstants",
      [{ metal: "Ag+", ligand: "NH3" }],
      0,
      constants({ kind: "logBeta", of: "[Ag(NH3)2]^+", value: "8" }),
    ],
    ["stagedDehydration", ["CuSO4·5H2O", "10 g"], 2, HEAVY],
    [
      "standardise",
      [{ of: "HCl", standard: "Na2CO3", portions: [{ mass: "0.2 g", titre: "20 mL" }], titrantPerAnalyte: 2 }],
      0,
      HEAVY,
    ],
    ["stockFromJSON", [JSON.parse(JSON.stringify(inScoops))], 1, scoop],
    ["stocktake", [stock, { name: "salt", found: "3 scoop" }], 2, scoop],
    ["stockSolution", [{ of: "NaCl", strength: "0.1 mol/L", volume: "250 mL" }], 0, HEAVY],
    ["strengthPrepared", ["1 g", { of: "NaCl", volume: "250 mL" }], 1, HEAVY],
    ["substance", ["CoCO3"], 1, names],
    ["tabulatedSolutes", [], 0, dense("CoCl2")],
    [
      "distinguishPowders",
      [{ candidates: ["NaCl", "KNO3", "CaCO3"] }],
      0,
      { source, substances: [{ formula: "NaCl", name: "rock", density: "3.9 g/cm3" }] },
    ],
    [
      "temperatureRise",
      [{ enthalpy: "-42 kJ/mol", amount: "1 mol", mass: "100 g", start: "20 °C", hydrates: ["Na2SO4·10H2O"] }],
      0,
      solubility("Na2SO4"),
    ],
    ["theoreticalYield", ["Zn + HCl -> ZnCl2 + H2", "ZnCl2", { Zn: "1 g" }], 3, HEAVY],
    ["titrate", [{ ...titration, equation: "HCl + NaOH -> NaCl + H2O" }], 0, HEAVY],
    [
      "titrationCurve",
      [{ flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] }, burette: soda }],
      0,
      acetic,
    ],
    ["usualStrength", [copper], 1, HEAVY],
    ["washAdvice", [{ product: "CaCO3", washedOut: ["Na2SO4"], temperature: "20 °C" }], 0, solubility("CaCO3")],
    ["washPlan", [washed], 0, solubility("CaCO3")],
    ["waterCarriedByGas", [{ gas: "1 mol", temperature: "25 °C" }], 0, HEAVY],
    ["waterContent", ["CuSO4·5H2O"], 1, HEAVY],
    ["waterForSolution", [{ salts: [{ formula: "KNO3", mass: "10 g" }], temperature: "20 °C" }], 0, solubility("KNO3")],
    ["waterToDissolve", [{ formula: "KNO3", mass: "10 g", temperature: "20 °C" }], 0, solubility("KNO3")],
    [
      "willPrecipitate",
      [
        {
          solid: "BaSO4",
          solutions: [
            {
              volume: "10 mL",
              ions: [
                { ion: "Ba^2+", concentration: "1e-4 mol/L" },
                { ion: "SO4^2-", concentration: "1e-4 mol/L" },
              ],
            },
          ],
        },
      ],
      0,
      constants({ kind: "pKsp", of: "BaSO4", value: "6" }),
    ],
  ] as const
).map(([name, args, at, rows]) => ({ name, args, at, rows }));

const chain = preparative.planSequence({
  steps: [{ equation: plan.equation, product: "CaCO3", materials: plan.materials }],
  wanted: "1 g",
} as never);
const overPH = preparative.solidsOverPH({
  ions: [{ formula: "ZnSO4", concentration: "0.01 mol/L" }],
  from: 6,
  to: 9,
  step: 1,
});
const overExcess = preparative.dissolvedOverExcess({
  ion: "Al^3+",
  water: "1 kg",
  dissolved: [{ formula: "AlCl3", amount: "0.01 mol" }],
  add: "NaOH",
  amount: "0.03 mol",
  steps: 4,
});
const [route] = preparative.findRoutes({
  target: "CaCO3",
  shelf: plan.materials.map(({ name, form }) => ({ name, form })),
}).routes;
const curve = preparative.titrationCurve({
  flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
  burette: soda,
} as never);
const redox = "MnO4- + Fe^2+ + H+ -> Mn^2+ + Fe^3+ + H2O";
const json = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

/** Functions that look nothing up that a caller can have rows of, or that have the facts of the plan they are given. */
export const PLAIN: Readonly<Record<string, readonly unknown[]>> = {
  amountOfEntities: ["6e23"],
  anhydrousOf: ["CuSO4·5H2O"],
  applyFunction: [["1 g"], { name: "f", unit: "g", value: () => 1, partials: () => [1] }],
  avogadroConstant: [],
  balance: ["H2 + O2 -> H2O"],
  balancedEquationFromJSON: [json(preparative.balance("H2 + O2 -> H2O"))],
  benchSheet: [run.plan],
  bufferCapacity: [preparative.aqueousComposition(beaker as never)],
  canonicalFormula: ["NaCl"],
  chainFromJSON: [json(chain)],
  cite: ["memory"],
  completeIonic: ["AgNO3 + NaCl -> AgCl + NaNO3"],
  constitutionOf: ["CuSO4·5H2O"],
  correlationCoefficient: ["1.0(1) g", "2.0(1) g"],
  crystalWater: ["CuSO4·5H2O"],
  decimalLogarithm: ["10"],
  densityOfWater: ["20 °C"],
  effectiveDegreesOfFreedom: ["1.0(1) g"],
  element: ["Cu"],
  elements: [],
  endPoints: [curve],
  entitiesOf: ["1 mol"],
  equationFromJSON: [json(preparative.parseEquation("H2 + O2 -> H2O"))],
  equivalenceOptions: [{ from: "CuSO4·5H2O", to: "CuSO4" }],
  equivalentsIn: ["HCl + NaOH -> NaCl + H2O", "HCl"],
  evaluateRun: [run.plan, { dried: "19 g" }],
  expandedUncertainty: ["1.0(1) g"],
  explain: ["1 g"],
  exponential: ["1"],
  facts: [{}],
  factsFromJSON: [json(preparative.facts({}))],
  formulaFromJSON: [json(preparative.parseFormula("NaCl"))],
  fromJSON: [json(preparative.parseFormula("NaCl"))],
  gasAmount: ["1 L"],
  gasPressure: [["1 mol"], { volume: "10 L" }],
  gasSolubility: ["CO2", "20 °C"],
  gasVolume: ["1 mol"],
  gasVolumeAt: ["1 L", { from: { temperature: "20 °C" } }],
  halfReactions: [redox, { medium: "acid" }],
  hasIon: ["CuSO4", "SO4^2-"],
  hydrateOf: ["CuSO4", 5],
  imbalance: ["H2 + O2 -> H2O"],
  indicatorFor: [preparative.endPoints(curve)[0]],
  integerNullspace: [
    [
      [2, 0, -2],
      [0, 2, -1],
    ],
  ],
  ionicEquationFromJSON: [json(preparative.netIonic("AgNO3 + NaCl -> AgCl + NaNO3"))],
  knownHydrates: ["CuSO4"],
  learnFromRuns: [[run]],
  lotAsMaterial: [preparative.onHand(stock)[0]],
  meanOfReadings: [["1 g", "2 g"]],
  meansOfPairedReadings: [{ a: ["1 g", "2 g"], b: ["1 g", "3 g"] }],
  measuredVolume: ["25 mL", { with: "pipette" }],
  molarGasConstant: [],
  molarMassOfGas: ["1.2 g/L"],
  molarVolumeOfGas: [],
  monoisotopicMass: ["NaCl"],
  naturalLogarithm: ["2"],
  netIonic: ["AgNO3 + NaCl -> AgCl + NaNO3"],
  nuclide: ["13C"],
  nuclidesOf: ["C"],
  openStock: [],
  overExcessDiagram: [overExcess],
  overPHDiagram: [overPH],
  overallEquation: [["CaCO3 -> CaO + CO2", "CaO + H2O -> Ca(OH)2"]],
  overallEquationFromJSON: [json(preparative.overallEquation(["CaCO3 -> CaO + CO2", "CaO + H2O -> Ca(OH)2"]))],
  oxidationStates: ["CuSO4"],
  parseEquation: ["H2 + O2 -> H2O"],
  parseFormula: ["NaCl"],
  percentYield: ["1 g", "2 g"],
  planFromJSON: [json(run.plan)],
  quantityFromJSON: [json(preparative.quantity("1 g"))],
  reactionSpace: ["C + O2 -> CO + CO2"],
  redoxAnalysis: [redox],
  replicateStatistics: [["10.1 mL", "10.2 mL"]],
  retainedLiquor: ["hydroxide gel"],
  routeFromJSON: [json(route)],
  runFromJSON: [json(run)],
  sameSubstance: ["NaCl", "ClNa"],
  secondVirialCoefficient: ["CO2", "25 °C"],
  significantFigures: ["1.20"],
  soldHydrates: ["CuSO4"],
  solubilityFromJSON: [json(preparative.solubilityOf("NaCl", "20 °C"))],
  solubilityRule: ["AgCl"],
  source: ["memory"],
  sourceKeys: [],
  squareRoot: ["4"],
  stableHydrate: ["CuSO4", "20 °C"],
  statementOf: ["H302"],
  substanceFromJSON: [json(preparative.substance("NaCl"))],
  sulfuricAcidDilution: ["10"],
  sum: [["1 g", "2 g"]],
  titrationDiagram: [curve],
  uncertaintyBudget: ["1.0(1) g"],
  vapourPressureOfWater: ["20 °C"],
  whatToMeasureNext: ["1.0(1) g"],
  withCorrelation: [{ a: "1.0(1) g", b: "1.0(1) g" }, [["a", "b", "0.5"]]],
  withLearned: [{ ...plan, facts: preparative.facts({}) }, preparative.learnFromRuns([run])],
  withSignificantFigures: ["add", ["1.20", "2.1"]],
  workingOfComposition: [preparative.aqueousComposition(beaker as never)],
  workingOfEquation: [preparative.balance("H2 + O2 -> H2O")],
  workingOfHalfReactions: [preparative.halfReactions(redox, { medium: "acid" })],
  workingOfVerdict: [run],
  minimum: [["1 g", "2 g"]],
  maximum: [["1 g", "2 g"]],
};

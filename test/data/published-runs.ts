// Runs that were published with their figures and with what their authors say of them: student reports, worksheets and a textbook.
// The place stands beside each. Where a report gives percents only, the batch is of any size. What went wrong is the report's word;
// the codes are those that say it.
import type { FindingCode, Observations, PlanRequest } from "preparative";

export interface PublishedRun {
  readonly id: string;
  readonly source: string;
  readonly says: string;
  readonly request: PlanRequest;
  /** Theory of the report in grams, where it gives one that is right. */
  readonly theory?: number;
  readonly observations: Observations;
  readonly first: readonly FindingCode[];
  readonly good: boolean;
}

const MILLIGRAM = { mass: "0.0001 g", volume: "0.1 mL" } as const;
const CENTIGRAM = { mass: "0.01 g", volume: "0.1 mL" } as const;
const GOOD = ["consistent", "loss-explained"] as const;

const chalk = (materials: PlanRequest["materials"], more: Pick<PlanRequest, "scale" | "readability">): PlanRequest => ({
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials,
  ...more,
});

const copper = (iron: string, vitriol: string): PlanRequest => ({
  equation: "Fe + CuSO4 -> Cu + FeSO4",
  product: "Cu",
  materials: [
    { name: "iron", form: "Fe" },
    { name: "blue vitriol", form: "CuSO4·5H2O", portion: vitriol as "1 g" },
  ],
  scale: { material: "iron", portion: iron as "1 g" },
  readability: CENTIGRAM,
});

/** Copper from its sulfate and zinc, the last step of a cycle that starts with so much copper. */
const recovered = (mass: string): PlanRequest => ({
  equation: "Zn + CuSO4 -> Cu + ZnSO4",
  product: "Cu",
  materials: [
    { name: "zinc", form: "Zn", excess: "50 %" },
    { name: "blue vitriol", form: "CuSO4·5H2O" },
  ],
  scale: { product: mass as "1 g" },
  readability: MILLIGRAM,
});

const chromate: PlanRequest = {
  equation: "AgNO3 + K2CrO4 -> Ag2CrO4 + KNO3",
  product: "Ag2CrO4",
  materials: [
    { name: "silver nitrate", form: "AgNO3" },
    { name: "chromate", form: "K2CrO4", excess: "10 %" },
  ],
  scale: { product: "2.07 g" },
  readability: { mass: "0.001 g", volume: "0.1 mL" },
};
const CHROMATE = "Petrucci, General Chemistry, on Example 4-10, as quoted by wizedu.com, question 1069092";

export const PUBLISHED_RUNS: readonly PublishedRun[] = [
  {
    id: "chalk at 117 %",
    source: "student report, studymode.com, Stoichiometry of a Precipitation Reaction",
    says: "water was left on the precipitate",
    request: chalk(
      [
        { name: "calcium chloride", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3", excess: "0 %" },
      ],
      { scale: { material: "calcium chloride", portion: "1.00 g" }, readability: CENTIGRAM },
    ),
    theory: 0.6804,
    observations: { dried: "0.80 g" },
    first: ["wet"],
    good: false,
  },
  {
    id: "chalk dried three times",
    source: "worksheet, allnswers.com, chemistry question 21120400: 10.0 mL of 1.00 mol/L and 25.0 mL of 0.500 mol/L",
    says: "the solid is dry: the last two weighings are the same",
    request: {
      equation: "CaCl2 + K2CO3 -> CaCO3 + KCl",
      product: "CaCO3",
      materials: [
        { name: "calcium chloride", form: "CaCl2", strength: "1.00 mol/L" },
        { name: "potash", form: "K2CO3", strength: "0.500 mol/L", portion: "25.0 mL" },
      ],
      scale: { material: "calcium chloride", portion: "10.0 mL" },
      readability: MILLIGRAM,
    },
    theory: 1.0009,
    observations: { dried: ["1.0250 g", "0.9723 g", "0.9719 g"] },
    first: GOOD,
    good: true,
  },
  {
    id: "alum from a can at 107 %",
    source: "student report, scribd.com 628178701, The Preparation of Alum",
    says: "a lack of drying time",
    request: {
      equation: "Al + KOH + H2SO4 + H2O -> KAl(SO4)2·12H2O + H2",
      product: "KAl(SO4)2·12H2O",
      materials: [
        { name: "can", form: "Al" },
        { name: "potassium hydroxide", form: "KOH", strength: "3.0 mol/L", portion: "10.0 mL" },
        { name: "sulfuric acid", form: "H2SO4", strength: "6.0 mol/L", portion: "10.0 mL" },
      ],
      scale: { material: "can", portion: "0.4199 g" },
      readability: MILLIGRAM,
      acknowledge: [],
    },
    theory: 7.3827,
    observations: { dried: "7.9283 g" },
    first: ["wet"],
    good: false,
  },
  {
    id: "copper oxide at 100 %",
    source:
      "worksheet, socratic.org, how would your results have been affected if you had removed the crucible too soon",
    says: "10.000 g leave 7.195 g, as the theory has it",
    request: {
      equation: "Cu2(OH)2CO3 -> 2 CuO + CO2 + H2O",
      product: "CuO",
      materials: [{ name: "malachite", form: "Cu2(OH)2CO3" }],
      scale: { material: "malachite", portion: "10.000 g" },
      readability: { mass: "0.001 g" },
    },
    theory: 7.195,
    observations: { dried: { gross: "95.195 g", tare: "88.000 g" } },
    first: GOOD,
    good: true,
  },
  {
    id: "lead iodide evaporated to dryness, 144 %",
    source: "student report, bartleby.com, Solid Lead Iodide Lab Report",
    says: "the potassium nitrate was left in the dish",
    request: {
      equation: "Pb(NO3)2 + KI -> PbI2 + KNO3",
      product: "PbI2",
      materials: [
        { name: "lead nitrate", form: "Pb(NO3)2" },
        { name: "potassium iodide", form: "KI", excess: "0 %" },
      ],
      scale: { product: "10.00 g" },
      readability: CENTIGRAM,
    },
    theory: 10,
    observations: { dried: "14.40 g", washes: 0 },
    first: ["too-heavy", "unwashed"],
    good: false,
  },
  {
    id: "copper by iron, splashed",
    source:
      "student report, studymode.com, Limiting Reactant Lab Report (theory worked out anew: 1.49 g / 55.845 × 63.546)",
    says: "iron stayed in its cup and on the wall, and some splashed",
    request: copper("1.49 g", "12.53 g"),
    theory: 1.695,
    observations: { dried: { gross: "3.57 g", tare: "2.23 g" } },
    first: ["lighter-than-losses-explain", "reagent-short"],
    good: false,
  },
  {
    id: "copper by iron, flakes decanted",
    source: "student report, coursehero.com, 25.3 mL of water was filled into the beaker",
    says: "flakes were lost in decanting",
    request: copper("1.10 g", "8.01 g"),
    theory: 1.252,
    observations: { dried: "1.05 g" },
    first: ["lighter-than-losses-explain"],
    good: false,
  },
  {
    id: "copper by iron at 95.2 %",
    source: "laboratory notebook, bookstack.owen-andersen.com, pages 20 and 21",
    says: "95.2 %, a little stuck to beaker and rod",
    request: copper("2.00 g", "8.00 g"),
    theory: 2.28,
    observations: { dried: { gross: "119.42 g", tare: "117.25 g" } },
    first: GOOD,
    good: true,
  },
  {
    id: "copper cycle at 90 %",
    source: "student report, scribd.com 486547699, Conservation of Mass",
    says: "0.05 g lost over five reactions",
    request: recovered("0.505 g"),
    theory: 0.505,
    observations: { dried: "0.455 g" },
    first: GOOD,
    good: true,
  },
  {
    id: "copper cycle at 80 %, not settled",
    source: "student report, coursehero.com 5805175: 0.0856 g of wire, 0.0688 g after the third drying",
    says: "copper was lost during the procedure",
    request: recovered("0.0856 g"),
    theory: 0.0856,
    observations: { dried: "0.0688 g" },
    first: ["lighter-than-losses-explain"],
    good: false,
  },
  {
    id: "copper cycle at 69 %",
    source: "student report, studytiger.com, Copper Cycle (percent alone)",
    says: "copper lost in decanting and in transfer; no less than 90 % was to be expected",
    request: recovered("1.000 g"),
    theory: 1,
    observations: { dried: "0.690 g" },
    first: ["lighter-than-losses-explain"],
    good: false,
  },
  {
    id: "copper cycle at 309 %",
    source: "student report, studymode.com, Conclusion Zinc and Synthesis Copper (percent alone)",
    says: "water that had not evaporated, and zinc that was not removed",
    request: recovered("1.000 g"),
    theory: 1,
    observations: { dried: "3.090 g" },
    first: ["too-heavy", "wet", "unreacted"],
    good: false,
  },
  {
    id: "silver chromate, 2.058 of 2.07 g",
    source: CHROMATE,
    says: "nearly pure",
    request: chromate,
    theory: 2.07,
    observations: { dried: "2.058 g" },
    first: GOOD,
    good: true,
  },
  {
    id: "silver chromate, 2.112 of 2.07 g",
    source: CHROMATE,
    says: "not pure: the precipitate was not thoroughly dried",
    request: chromate,
    theory: 2.07,
    observations: { dried: "2.112 g" },
    first: ["wet", "unwashed"],
    good: false,
  },
  {
    id: "calcium sulfate at 64.5 %",
    source: "student report, antiessays.com, Creating a Precipitate (2.00 g aimed at, air-dried)",
    says: "some was spilled, stuck to the flask or went through the paper",
    request: {
      equation: "CaCl2 + MgSO4 + H2O -> CaSO4·2H2O + MgCl2",
      product: "CaSO4·2H2O",
      materials: [
        { name: "calcium chloride", form: "CaCl2" },
        { name: "Epsom salt", form: "MgSO4·7H2O", excess: "0 %" },
      ],
      scale: { product: "2.00 g" },
      readability: CENTIGRAM,
    },
    theory: 2,
    observations: { dried: "1.29 g" },
    first: ["lighter-than-losses-explain"],
    good: false,
  },
];

/** Samples that were heated to constant mass, with what they are by their label. */
export const PUBLISHED_SAMPLES = [
  {
    source: "bartleby.com, Preparation of Alum from Aluminum Metal",
    product: "KAl(SO4)2·12H2O",
    before: "0.5000 g",
    after: "0.2721 g",
  },
  {
    source: "salve.digication.com, Determine the Percent Water in a Sample",
    product: "CuSO4·5H2O",
    before: "1.761 ± 0.02 g",
    after: "1.111 ± 0.02 g",
  },
  {
    source: "bartleby.com, Percentage of Water in 1.5 Grams of Copper Sulfate",
    product: "CuSO4·5H2O",
    before: "1.50 ± 0.02 g",
    after: "0.94 ± 0.02 g",
  },
] as const;

// Tests that tell powders apart at a bench: what is done, how long it takes, what it resolves.
import type { SourceKey } from "./sources";

/** A test of a powder. */
export interface PowderTestRow {
  readonly does: string;
  readonly takes: string;
  /** What two powders must differ by to be told apart, for a test that gives a figure. */
  readonly resolves?: string;
  readonly source: SourceKey;
}

export const POWDER_TESTS = {
  water: { does: "stir a gram into 10 mL of water", takes: "3 min", source: "commonPractice" },
  pH: { does: "hold pH paper into a slurry of a gram in 100 mL of water", takes: "3 min", resolves: "1", source: "commonPractice" },
  acid: { does: "put half a gram into 100 mL of hydrochloric acid, 0.5 mol/L", takes: "3 min", source: "commonPractice" },
  lye: { does: "put half a gram into 100 mL of sodium hydroxide, 0.5 mol/L", takes: "3 min", source: "commonPractice" },
  flame: { does: "put a grain, moist with hydrochloric acid, on a clean wire into a gas flame; a blue cobalt glass filters the yellow out", takes: "5 min", source: "columbiaFlameTest" },
  loss: { does: "heat a weighed sample to constant mass", takes: "60 min", resolves: "2 %", source: "commonPractice" },
  density: { does: "weigh it under oil in a measuring flask", takes: "20 min", resolves: "0.1 g/cm3", source: "commonPractice" },
} as const satisfies Readonly<Record<string, PowderTestRow>>;

/** What a powder shows in dilute acid or lye, where an equilibrium of ions says nothing or says it wrong. */
interface SeenRow {
  readonly formula: string;
  readonly acid: string;
  readonly lye: string;
  readonly source: SourceKey;
}

/** Elements, higher oxides and what acid takes apart: general chemistry, from memory. */
export const SEEN_IN_GLASSES: readonly SeenRow[] = [
  { formula: "Mg", acid: "bubbles, dissolves", lye: "stays", source: "memory" },
  { formula: "Zn", acid: "bubbles, dissolves", lye: "bubbles, dissolves", source: "memory" },
  { formula: "Al", acid: "bubbles, dissolves", lye: "bubbles, dissolves", source: "memory" },
  { formula: "Fe", acid: "bubbles, dissolves", lye: "stays", source: "memory" },
  { formula: "Cu", acid: "stays", lye: "stays", source: "memory" },
  { formula: "Ag", acid: "stays", lye: "stays", source: "memory" },
  { formula: "C", acid: "stays", lye: "stays", source: "memory" },
  { formula: "S", acid: "stays", lye: "stays", source: "memory" },
  { formula: "MnO2", acid: "stays", lye: "stays", source: "memory" },
  { formula: "PbO2", acid: "stays", lye: "stays", source: "memory" },
  { formula: "Pb3O4", acid: "stays", lye: "stays", source: "memory" },
  { formula: "Na2S2O3", acid: "clouds, smells of burnt sulfur", lye: "dissolves", source: "memory" },
  { formula: "K2S2O3", acid: "clouds, smells of burnt sulfur", lye: "dissolves", source: "memory" },
];

/** A metal that colours a gas flame. */
interface FlameRow {
  readonly metal: string;
  /** As an eye names it: crimson and scarlet are both red. */
  readonly colour: string;
  /** Colours that it outshines. */
  readonly masks: readonly string[];
  readonly source: SourceKey;
}

/** Metals of which no colour is listed here are not known to give none. */
export const FLAMES: readonly FlameRow[] = [
  { metal: "Na", colour: "yellow", masks: ["violet", "orange-red", "red"], source: "columbiaFlameTest" },
  { metal: "Ba", colour: "yellow-green", masks: ["orange-red", "red"], source: "columbiaFlameTest" },
  { metal: "Ca", colour: "orange-red", masks: [], source: "columbiaFlameTest" },
  { metal: "Li", colour: "red", masks: [], source: "columbiaFlameTest" },
  { metal: "Sr", colour: "red", masks: [], source: "columbiaFlameTest" },
  { metal: "K", colour: "violet", masks: [], source: "columbiaFlameTest" },
  { metal: "Rb", colour: "violet", masks: [], source: "columbiaFlameTest" },
  { metal: "Cs", colour: "violet", masks: [], source: "columbiaFlameTest" },
  { metal: "Cu", colour: "green to blue-green", masks: [], source: "columbiaFlameTest" },
];

/** A reagent dropped into the clear solution of a powder, and the excess that may dissolve what precipitates. */
export const PRECIPITATION_TESTS = [
  { test: "barium chloride", reagent: "BaCl2", excess: "0.02", source: "commonPractice" },
  { test: "silver nitrate", reagent: "AgNO3", excess: "0.02", source: "commonPractice" },
  { test: "soda", reagent: "Na2CO3", excess: "0.02", source: "commonPractice" },
  { test: "ammonia", reagent: "NH3", excess: "0.2", source: "commonPractice" },
  { test: "lye by drops", reagent: "NaOH", excess: "0.05", source: "commonPractice" },
  { test: "oxalate", reagent: "Na2C2O4", excess: "0.02", source: "commonPractice" },
  { test: "Epsom salt", reagent: "MgSO4", excess: "0.02", source: "commonPractice" },
] as const satisfies readonly PrecipitationRow[];

/** A precipitation test. */
interface PrecipitationRow {
  readonly test: string;
  readonly reagent: string;
  /** Moles of the reagent that are an excess in 100 mL. */
  readonly excess: string;
  readonly source: SourceKey;
}

/** Time of a precipitation test with its solution and its excess. */
export const PRECIPITATION_TAKES = "5 min";

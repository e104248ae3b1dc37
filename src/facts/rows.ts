// The rows of the caller's own, as they are written: texts, so that they stand in a file of JSON as they are.

/** What every row says. */
interface Sourced {
  /** Where the figure comes from, in words; may be left out where the whole set has one source. */
  readonly source?: string;
}

/** A substance: what is said of it comes before what the registry says. */
export interface SubstanceFact extends Sourced {
  /** Crystal water included, in any spelling. */
  readonly formula: string;
  readonly name: string;
  readonly otherNames?: readonly string[];
  readonly appearance?: string;
  readonly note?: string;
  /** Of the solid, such as "2.28 g/cm3". */
  readonly density?: string;
}

/** A name that means one substance. */
export interface NameFact extends Sourced {
  readonly name: string;
  readonly formula: string;
}

/** How much of a solute dissolves: a measured point or a curve. */
export interface SolubilityFact extends Sourced {
  readonly formula: string;
  /** The solid in contact with the solution; the formula itself where it has crystal water. */
  readonly solid?: string;
  /** Temperature, and the mass of anhydrous solute with 100 g of water, all water counted. */
  readonly points: readonly (readonly [temperature: string, mass: string])[];
}

/** How dense a solution in water is. */
export interface DensityFact extends Sourced {
  /** What the mass fraction counts, a hydrate included. */
  readonly solute: string;
  /** 20 °C unless given. */
  readonly temperature?: string;
  /** Mass fraction and density, two points or more. */
  readonly points: readonly (readonly [massFraction: string, density: string])[];
}

/** A good as a shop sells it. */
export interface MaterialFact extends Sourced {
  readonly name: string;
  /** What is in it, crystal water included; for a solution the dissolved substance. */
  readonly formula: string;
  /** Mass fraction of the formula, or the lowest and the highest. */
  readonly assay?: string | readonly [lowest: string, highest: string];
  /** Is it a solution in water? */
  readonly solution?: boolean;
  readonly density?: string;
  readonly impurities?: readonly string[];
  /** What to know before it is used. */
  readonly trap?: string;
}

/** What the safety data sheet of a pack says of a substance: added to what is said of it anyway. */
export interface HazardFact extends Sourced {
  readonly formula: string;
  /** Statements, such as "H302". */
  readonly codes?: readonly string[];
  readonly cautions?: readonly string[];
  readonly disposal?: string;
}

/** Two substances, or kinds of substance, that must not meet: added to the rules of the library. */
export interface IncompatibilityFact extends Sourced {
  /** A code of its own, by which a plan may acknowledge it. */
  readonly code: string;
  /** Formulas, or classes of the rules of the library such as "acid". */
  readonly a: readonly string[];
  readonly b: readonly string[];
  readonly what: string;
  readonly severity: "forbid" | "warn";
  /** Formulas of what forms. */
  readonly products?: readonly string[];
}

/** A constant of a reaction in water, as a decimal logarithm at 25 °C and zero ionic strength. */
export interface ConstantFact extends Sourced {
  readonly kind: "pKa" | "pKsp" | "logBeta" | "pKH";
  /** The acid, the solid, the complex or the gas. */
  readonly of: string;
  /** One figure; for an acid one for each hydron, the first one first. */
  readonly value: string | readonly string[];
}

/** A unit, such as the scoop of a tin. */
export interface UnitFact extends Sourced {
  readonly symbol: string;
  /** One of it, such as "0.36 g". */
  readonly is: string;
}

/** The atomic weight of an element in the caller's material. */
export interface WeightFact extends Sourced {
  readonly element: string;
  readonly weight: string;
}

/** Facts of the caller's own, table by table. */
export interface FactRows {
  /** The source of all rows that name none. */
  readonly source?: string;
  readonly substances?: readonly SubstanceFact[];
  readonly names?: readonly NameFact[];
  readonly solubilities?: readonly SolubilityFact[];
  readonly densities?: readonly DensityFact[];
  readonly materials?: readonly MaterialFact[];
  readonly hazards?: readonly HazardFact[];
  readonly incompatibilities?: readonly IncompatibilityFact[];
  readonly constants?: readonly ConstantFact[];
  readonly units?: readonly UnitFact[];
  readonly weights?: readonly WeightFact[];
}

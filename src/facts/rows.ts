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
  /** What it is called in print. */
  readonly name: string;
  /** Further names that mean it. */
  readonly otherNames?: readonly string[];
  /** Looks, in words. */
  readonly appearance?: string;
  /** What to know about it, in words. */
  readonly note?: string;
  /** Of the solid, such as "2.28 g/cm3". */
  readonly density?: string;
}

/** A name that means one substance. */
export interface NameFact extends Sourced {
  /** The name as it will be typed. */
  readonly name: string;
  /** What it means, crystal water included. */
  readonly formula: string;
}

/** How much of a solute dissolves: a measured point or a curve. */
export interface SolubilityFact extends Sourced {
  /** The solute; masses count it without crystal water. */
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
  /** What the shop calls it. */
  readonly name: string;
  /** What is in it, crystal water included; for a solution the dissolved substance. */
  readonly formula: string;
  /** Mass fraction of the formula, or the lowest and the highest. */
  readonly assay?: string | readonly [lowest: string, highest: string];
  /** Is it a solution in water? */
  readonly solution?: boolean;
  /** Of a liquid, such as "1.19 g/mL". */
  readonly density?: string;
  /** What a pack may contain beside it, in words. */
  readonly impurities?: readonly string[];
  /** What to know before it is used. */
  readonly trap?: string;
}

/** What the safety data sheet of a pack says of a substance: added to what is said of it anyway. */
export interface HazardFact extends Sourced {
  /** The substance that it is said of. */
  readonly formula: string;
  /** Statements, such as "H302". */
  readonly codes?: readonly string[];
  /** Sentences, printed as given. */
  readonly cautions?: readonly string[];
  /** How to get rid of it, printed as given. */
  readonly disposal?: string;
}

/** Two substances, or kinds of substance, that must not meet: added to the rules of the library. */
export interface IncompatibilityFact extends Sourced {
  /** A code of its own, by which a plan may acknowledge it. */
  readonly code: string;
  /** Formulas, or classes of the rules of the library such as "acid". */
  readonly a: readonly string[];
  /** What the ones of `a` must not meet; formulas or classes. */
  readonly b: readonly string[];
  /** What happens, in words. */
  readonly what: string;
  /** `forbid`: not to be planned; `warn`: may be what is wanted. */
  readonly severity: "forbid" | "warn";
  /** Formulas of what forms. */
  readonly products?: readonly string[];
}

/** A constant of a reaction in water, as a decimal logarithm at 25 °C and zero ionic strength. */
export interface ConstantFact extends Sourced {
  /** Which constant it is, with its sign convention. */
  readonly kind: "pKa" | "pKsp" | "logBeta" | "pKH";
  /** The acid, the solid, the complex or the gas. */
  readonly of: string;
  /** One figure; for an acid one for each hydron, the first one first. */
  readonly value: string | readonly string[];
}

/** An enthalpy of formation at 25 °C and 1 bar. */
export interface EnthalpyFact extends Sourced {
  /** With its state at the end: "C6H8O7(s)", "Cu^2+(aq)"; dissolved ones at great dilution. */
  readonly formula: string;
  /** Such as "-1543.8 kJ/mol", an uncertainty allowed. */
  readonly enthalpy: string;
}

/** A unit, such as the scoop of a tin. */
export interface UnitFact extends Sourced {
  /** How the unit is written after a number. */
  readonly symbol: string;
  /** One of it, such as "0.36 g". */
  readonly is: string;
}

/** The atomic weight of an element in the caller's material. */
export interface WeightFact extends Sourced {
  /** Symbol of the element. */
  readonly element: string;
  /** Molar mass as text, an uncertainty allowed: "66.0(1) g/mol". */
  readonly weight: string;
}

/** Facts of the caller's own, table by table. */
export interface FactRows {
  /** The source of all rows that name none. */
  readonly source?: string;
  /** Looked up before the registry. */
  readonly substances?: readonly SubstanceFact[];
  /** Looked up before the tables of names. */
  readonly names?: readonly NameFact[];
  /** Looked up before the tables of solubility. */
  readonly solubilities?: readonly SolubilityFact[];
  /** Of solutions in water; looked up before the tables of density. */
  readonly densities?: readonly DensityFact[];
  /** Goods as a shop sells them. */
  readonly materials?: readonly MaterialFact[];
  /** Added to what is said of a substance anyway. */
  readonly hazards?: readonly HazardFact[];
  /** Added to the rules of what must not meet. */
  readonly incompatibilities?: readonly IncompatibilityFact[];
  /** Of reactions in water, at 25 °C and zero ionic strength. */
  readonly constants?: readonly ConstantFact[];
  /** Of formation; looked up before the tables of heats. */
  readonly enthalpies?: readonly EnthalpyFact[];
  /** Units of your own. */
  readonly units?: readonly UnitFact[];
  /** Atomic weights in your material. */
  readonly weights?: readonly WeightFact[];
}

// What the answer of a beaker is made of.

import type { Quantity } from "../../quantity";

/** A dissolved species. */
export interface DissolvedSpecies {
  /** With its charge, as it is in solution: a free ion, an ion pair, a complex. */
  readonly formula: string;
  /** In elementary charges; 0 for a molecule. */
  readonly charge: number;
  /** In mol for each kg of water. */
  readonly molality: Quantity<"molality">;
  /** In the whole of the solution. */
  readonly amount: Quantity<"amount of substance">;
}

/** A solid that stands. */
export interface StandingSolid {
  /** Crystal water included. */
  readonly formula: string;
  /** From the table of solids; the formula where that has none. */
  readonly name: string;
  /** Mineral name, age or polymorph. */
  readonly form: string | undefined;
  /** Formula units of the solid, in mol. */
  readonly amount: Quantity<"amount of substance">;
  /** Of the dry solid, crystal water included. */
  readonly mass: Quantity<"mass">;
  /** The constants leave open whether it stands: moved by their standard uncertainties, they would let it dissolve. */
  readonly either: boolean;
}

/** A gas that has left, or, with a negative amount, come in. */
export interface EscapedGas {
  /** Of the gas, such as `CO2`. */
  readonly formula: string;
  /** Positive for what has left, negative for what has come in. */
  readonly amount: Quantity<"amount of substance">;
}

/** How a solid or gas that was considered stands. */
export interface Saturation {
  /** Of the solid or the gas. */
  readonly formula: string;
  /** Mineral name, age or polymorph of a solid; undefined where the table names none. */
  readonly form: string | undefined;
  /** log10(Q/K): 0 where it stands; its uncertainty tells how sure that is. Undefined for excluded solids. */
  readonly index: Quantity<"number"> | undefined;
  /** `either` where the constants leave open whether it stands; `excluded` where it was not allowed to form. */
  readonly state: "stands" | "under-saturated" | "either" | "excluded";
  /** Reason of the state in words, where there is something to say. */
  readonly why: string | undefined;
}

/** An ion or molecule that passes the filter, whatever it is bound to. */
export interface FiltrateIon {
  /** With its charge; none for a molecule. H+ is all hydrons bound and free, as of an acid that is not spent: it is not the pH. */
  readonly formula: string;
  /** In all the forms it is bound in. */
  readonly concentration: Quantity<"concentration">;
  /** In the whole filtrate, in all its forms. */
  readonly amount: Quantity<"amount of substance">;
  /** Of what was put in: 1 for all. Undefined for hydrons. */
  readonly share: Quantity<"number"> | undefined;
}

/** Another answer that the doubt of the constants allows. */
export interface OtherAnswer {
  /** Formulas of the solids that stand in it, most first. */
  readonly solids: readonly string[];
  /** The constant that leads to it, and how far it is moved. */
  readonly when: string;
  /** The whole of it. */
  readonly composition: AqueousComposition;
}

/** What is in the beaker. */
export interface AqueousComposition {
  /** Minus log10 of the activity of H+ at equilibrium. */
  readonly pH: Quantity<"number">;
  /** In mol/kg: half the sum of molality times squared charge over all ions. */
  readonly ionicStrength: Quantity<"molality">;
  /** Most abundant first. */
  readonly species: readonly DissolvedSpecies[];
  /** Solids at equilibrium; empty where everything dissolves. */
  readonly solids: readonly StandingSolid[];
  /** Gases that leave or come in until equilibrium. */
  readonly gas: readonly EscapedGas[];
  /** Hydrons or hydroxide that hold the pH; empty where it is not held. */
  readonly dose: { readonly "H+"?: Quantity<"amount of substance">; readonly "OH-"?: Quantity<"amount of substance"> };
  /** What passes the filter; as `dissolved` of another request it gives the same solution again. */
  readonly filtrate: readonly FiltrateIon[];
  /**
   * Where the doubt of the constants leaves open which solids stand it is this answer or one of these, one for each other set
   * of solids. Empty where there is no doubt.
   */
  readonly either: readonly OtherAnswer[];
  /** Every solid and gas considered, nearest to saturation first. */
  readonly saturation: readonly Saturation[];
  /** Water at equilibrium: given, brought and made or taken by the reactions. */
  readonly water: Quantity<"mass">;
  /** Temperature of the answer in °C. */
  readonly celsius: number;
  /** What this answer cannot know; figures that depend on it are doubtful. */
  readonly unknown: readonly string[];
  /** What was assumed to get the answer, in words. */
  readonly assumptions: readonly string[];
  /** What to mind when using the figures, in words. */
  readonly warnings: readonly string[];
  /** The proof: relative residuals of mass, charge and ionic strength, largest over-saturation as log10(Q/K). */
  readonly balance: {
    readonly mass: number;
    readonly charge: number;
    readonly ionicStrength: number;
    readonly saturation: number;
  };
}

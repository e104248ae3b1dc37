// A recipe as it comes to be checked, and what the check says of it.

import type { BalancedEquation } from "../../equation";
import type { LookupOptions } from "../../foundation/facts";
import type { Quantity, QuantityLike } from "../../quantity";
import type { Account, Formed } from "../reaction/account";
import type { ShelfMaterial } from "../request/request";

/** One material as the recipe names it. */
export interface RecipeMaterial {
  /** What the recipe calls it; its form unless given. */
  readonly name?: string | undefined;
  /** What it is, crystal water included. A recipe that does not say which: list the readings; the first is used. */
  readonly form: string | readonly string[];
  /** The formula the recipe writes, where it is not what is really in the jar. */
  readonly writtenAs?: string | undefined;
  /**
   * Mass, volume or amount, units of old books included ("16 oz", "2 pint"). Copies that disagree: list the readings; the
   * first is used. Left out: as much as it takes.
   */
  readonly amount?: string | Quantity | readonly string[] | undefined;
  /** Of a solution, as the shelf has it. */
  readonly strength?: ShelfMaterial["strength"];
  /** Mass fraction of the form in what is weighed. */
  readonly assay?: ShelfMaterial["assay"];
  /** Of a liquid that is measured by volume. */
  readonly density?: ShelfMaterial["density"];
  /** Amount of substance the recipe states beside the mass. */
  readonly statedAmount?: QuantityLike<"amount of substance"> | undefined;
  /** In excess on purpose, or of a strength only assumed: never the limiting reagent. */
  readonly inExcess?: boolean | undefined;
  /** Takes no part in the equation: a solvent, alcohol to bring the product down. */
  readonly aside?: boolean | undefined;
  /** Remark for whoever reads the recipe. */
  readonly note?: string | undefined;
}

/** A recipe, as it is printed. */
export interface Recipe extends LookupOptions {
  /** The equation; or one for each step, where the product of one is used up in the next. */
  readonly equation: string | readonly string[];
  /** Formula of what is made, crystal water included. */
  readonly product: string;
  /** Forms the product may have been weighed in, where the recipe does not say; the first is used. */
  readonly productForms?: readonly string[] | undefined;
  /** In the order of the recipe. */
  readonly materials: readonly RecipeMaterial[];
  /** Water the product is finally in contact with; copies that disagree as a list. */
  readonly water?: string | readonly string[] | undefined;
  /** Whether the product was washed; nothing is said of washing unless this is `false`. */
  readonly washed?: boolean | undefined;
  /** How the recipe says the product comes out. */
  readonly isolation?: "precipitate" | "crystallise" | "evaporate" | undefined;
  /** Product found, as masses or percent yields. */
  readonly found?: string | Quantity | readonly (string | Quantity)[] | undefined;
  /** Figures the recipe itself states. */
  readonly stated?:
    | {
        readonly percentYield?: string | undefined;
        readonly theory?: string | undefined;
        readonly molarMasses?: readonly { readonly of: string; readonly value: string }[] | undefined;
        readonly massFractions?: readonly { readonly of: string; readonly value: string }[] | undefined;
      }
    | undefined;
  /** What was found in the product. */
  readonly analysis?:
    | {
        /** Waters of crystallization found, per formula unit. */
        readonly waters?: string | undefined;
        /** Mass fractions found, by element or group: `{ K: "19.43 %", C2O4: "43.45 %" }`. */
        readonly parts?: Readonly<Record<string, string>> | undefined;
        /** Mass before and after ignition, and what is left. */
        readonly ignition?: { readonly before: string; readonly after: string; readonly residue: string } | undefined;
      }
    | undefined;
}

/** What can be odd about a recipe, as a stable code. */
export type RecipeFindingCode =
  | "recipe.precipitant-short"
  | "recipe.reagent-short"
  | "recipe.large-excess"
  | "recipe.ambiguous-unit"
  | "recipe.form-not-stated"
  | "recipe.name-contradicts-form"
  | "recipe.readings-differ"
  | "recipe.amount-impossible"
  | "recipe.assay-not-counted"
  | "recipe.carbonate-is-basic"
  | "recipe.carbonate-turns-basic"
  | "recipe.unwashed"
  | "recipe.stays-dissolved"
  | "recipe.product-dissolves"
  | "recipe.filtrate-impure"
  | "recipe.variable-water"
  | "recipe.impossible-yield"
  | "recipe.hydrate-mix-up"
  | "recipe.stated-yield-differs"
  | "recipe.yield-basis"
  | "recipe.wrong-basis"
  | "recipe.figures-contradict"
  | "recipe.yield-is-theory"
  | "recipe.molar-mass"
  | "recipe.factor-outdated"
  | "recipe.damp"
  | "recipe.analysis-misfit"
  | "recipe.ignition-misfit"
  | "recipe.mass-loss-misfit"
  | "recipe.dangerous-pair"
  | "recipe.dangerous-product";

/** One thing that is odd about a recipe. */
export interface RecipeFinding {
  /** What the finding is about, for programs. */
  readonly code: RecipeFindingCode;
  /** One sentence for a person to read. */
  readonly text: string;
  /** The material it is about. */
  readonly material: string | undefined;
  /** The figure behind it: a ratio, a mass, a percentage. */
  readonly figure: Quantity | undefined;
}

/** A gas that is given off or absorbed, at 25 °C and 101.325 kPa. */
export interface RecipeGas {
  /** As printed. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** At the full extent of the reaction. */
  readonly amount: Quantity<"amount of substance">;
  /** At 25 °C and 101.325 kPa. */
  readonly volume: Quantity<"volume">;
}

/** A yield that was found. */
export interface RecipeYield {
  /** Found, or calculated from the percent yield. */
  readonly mass: Quantity<"mass">;
  /** Mass over the theoretical yield, in %. */
  readonly percentYield: Quantity<"number">;
  /** What of the two the recipe gives. */
  readonly given: "mass" | "percent yield";
}

/** What a recipe comes to. */
export interface RecipeCheck {
  /** As balanced; that of the first step where there are several. */
  readonly equation: BalancedEquation;
  /** Formula that the yields are calculated for. */
  readonly product: string;
  /** Molar mass of the product. */
  readonly molarMass: Quantity<"molar mass">;
  /** The sums; undefined where no material has an amount that could run out. */
  readonly account: Account | undefined;
  /** Name of the material that runs out first; undefined where none can. */
  readonly limiting: string | undefined;
  /** Moles of `equation`, whose coefficients are the smallest whole numbers. */
  readonly extent: Quantity<"amount of substance"> | undefined;
  /** At the full extent; undefined where nothing limits it. */
  readonly theoreticalYield: Quantity<"mass"> | undefined;
  /** Given off. */
  readonly gases: readonly RecipeGas[];
  /** Absorbed, such as oxygen from the air. */
  readonly gasesTaken: readonly RecipeGas[];
  /** Products beside the wanted one, gas and water. */
  readonly byProducts: readonly Formed[];
  /** One for each product found that the recipe gives. */
  readonly yields: readonly RecipeYield[];
  /** What is odd about the recipe; empty where nothing is. */
  readonly findings: readonly RecipeFinding[];
  /** What could not be calculated, and what is missing for it. */
  readonly unknown: readonly string[];
}

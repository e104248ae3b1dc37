// Checking a recipe somebody else wrote: what its amounts come to, what is short, and what cannot be right. The recipe is
// taken as it stands; what it leaves unsaid is reported, never filled in.

import { gasVolume } from "../../amount";
import type { BalancedEquation } from "../../equation";
import { molarMass } from "../../formula";
import { isWater } from "../../formula/internal";
import { attempt, type Result } from "../../foundation/error";
import { frozen } from "../../foundation/frozen";
import type { Quantity, QuantityLike } from "../../quantity";
import { type Account, accountOfAmounts, type Formed, massFor } from "../account";
import type { ShelfMaterial } from "../request";
import { isGas } from "../vessel";
import { dangerFindings } from "./dangers";
import { takenRecipe } from "./door";
import { ratioFindings } from "./ratios";
import { type ReadRecipe, readRecipe } from "./read";
import { yieldFindings } from "./yields";

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
  readonly strength?: ShelfMaterial["strength"];
  readonly assay?: ShelfMaterial["assay"];
  readonly density?: ShelfMaterial["density"];
  /** Amount of substance the recipe states beside the mass. */
  readonly statedAmount?: QuantityLike<"amount of substance"> | undefined;
  /** In excess on purpose, or of a strength only assumed: never the limiting reagent. */
  readonly inExcess?: boolean | undefined;
  /** Takes no part in the equation: a solvent, alcohol to bring the product down. */
  readonly aside?: boolean | undefined;
  readonly note?: string | undefined;
}

/** A recipe, as it is printed. */
export interface Recipe {
  /** The equation; or one for each step, where the product of one is used up in the next. */
  readonly equation: string | readonly string[];
  readonly product: string;
  /** Forms the product may have been weighed in, where the recipe does not say; the first is used. */
  readonly productForms?: readonly string[] | undefined;
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
  readonly code: RecipeFindingCode;
  readonly text: string;
  /** The material it is about. */
  readonly material: string | undefined;
  /** The figure behind it: a ratio, a mass, a percentage. */
  readonly figure: Quantity | undefined;
}

/** A gas that is given off or absorbed, at 25 °C and 101.325 kPa. */
export interface RecipeGas {
  readonly formula: string;
  readonly amount: Quantity<"amount of substance">;
  readonly volume: Quantity<"volume">;
}

/** A yield that was found. */
export interface RecipeYield {
  readonly mass: Quantity<"mass">;
  readonly percentYield: Quantity;
  /** What of the two the recipe gives. */
  readonly given: "mass" | "percent yield";
}

/** What a recipe comes to. */
export interface RecipeCheck {
  readonly equation: BalancedEquation;
  readonly product: string;
  /** Molar mass of the product. */
  readonly molarMass: Quantity<"molar mass">;
  /** The sums; undefined where no material has an amount that could run out. */
  readonly account: Account | undefined;
  readonly limiting: string | undefined;
  /** Moles of `equation`, whose coefficients are the smallest whole numbers. */
  readonly extent: Quantity<"amount of substance"> | undefined;
  readonly theoreticalYield: Quantity<"mass"> | undefined;
  readonly gases: readonly RecipeGas[];
  readonly gasesTaken: readonly RecipeGas[];
  /** Products beside the wanted one, gas and water. */
  readonly byProducts: readonly Formed[];
  readonly yields: readonly RecipeYield[];
  readonly findings: readonly RecipeFinding[];
  /** What could not be calculated, and what is missing for it. */
  readonly unknown: readonly string[];
}

/** What the findings are made from. */
export interface RecipeFigures {
  readonly read: ReadRecipe;
  readonly account: Account | undefined;
  readonly theoreticalYield: Quantity | undefined;
  readonly yields: readonly RecipeYield[];
}

/** Amount of the product: of the first equation, or through the steps. */
function amountOfProduct(read: ReadRecipe, account: Account): Quantity {
  if (read.carriers.length === 0) return account.formed[read.products.indexOf(read.product)]!.amount;
  return read.carriers.reduce(
    (amount, { used, formed, name }) =>
      amount
        .times(formed)
        .dividedBy(used)
        .named({ symbol: `n(${name})`, rule: "amount = amount of what it is made from × coefficients" }),
    account.formed[read.products.findIndex((s) => s.formula.equals(read.firstCarrier!.formula))]!.amount,
  );
}

function yieldsOf(read: ReadRecipe, theory: Quantity | undefined): RecipeYield[] {
  if (theory === undefined) return [];
  return read.found.map((found): RecipeYield => {
    if (found.dimension === "mass") {
      const percentYield = found
        .dividedBy(theory)
        .to("%")
        .named({ symbol: "yield", label: "percent yield", rule: "percent yield = mass found / theoretical yield" });
      return { mass: found, percentYield, given: "mass" };
    }
    const mass = theory
      .times(found)
      .to("g")
      .named({ symbol: "m(found)", label: "mass found", rule: "mass = theoretical yield × percent yield" });
    return { mass, percentYield: found.to("%"), given: "percent yield" };
  });
}

function gasOf({ formula, amount }: Formed): RecipeGas {
  return { formula, amount, volume: gasVolume(amount, { temperature: "25 °C", pressure: "101.325 kPa" }) };
}

/**
 * Check a recipe: its ratios to stoichiometric, what runs out, what it can yield, and what cannot be right in it.
 *
 * @param given - equation, product, materials as named (several readings where the recipe leaves it open), what was found
 * @returns the account, theory, gases (ideal, 25 °C and 101.325 kPa), by-products, yields; `findings` with a code and a
 *   figure each; `unknown` with what the recipe does not say
 * @throws {PlanError} `plan.request`, `plan.unknown-option`, `plan.no-such-product`, `plan.unmatched-material`, `plan.strength`,
 *   `plan.not-positive`; and the codes of `balance`, `parseFormula` and `quantity`
 * @category Planning
 * @example
 * const check = checkRecipe({
 *   equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
 *   product: "Cu2(OH)2CO3",
 *   materials: [{ form: "CuSO4·5H2O", amount: "64 g" }, { form: "Na2CO3", amount: "24 g" }],
 * });
 * check.theoreticalYield!.format({ decimals: 1 }) // => "25.0 g"
 * check.findings.map((f) => f.code) // => ["recipe.precipitant-short"]
 */
export function checkRecipe(given: Recipe): RecipeCheck {
  const recipe = takenRecipe(given);
  const read = readRecipe(recipe);
  const counted = read.materials.filter((m) => m.amount !== undefined);
  const canRunOut = counted.some((m) => m.given.inExcess !== true);
  const account = canRunOut
    ? accountOfAmounts(
        counted.map((m) => m.material),
        counted.map((m) => m.portion!),
        counted.map((m) => m.amount!),
        read.reactants,
        read.products,
      )
    : undefined;
  const theoreticalYield =
    account === undefined
      ? undefined
      : massFor(amountOfProduct(read, account), read.product.formula, {
          symbol: `m_th(${read.product.name})`,
          label: `theoretical yield of ${read.product.name}`,
        });
  const yields = yieldsOf(read, theoreticalYield);
  const figures: RecipeFigures = { read, account, theoreticalYield, yields };
  const formed = account?.formed ?? [];
  const gas = (formula: (typeof read.products)[number]["formula"]): boolean => isGas(formula, read.wet);
  const isProduct = (i: number): boolean => read.products[i] === read.product;
  return frozen({
    equation: read.equation,
    product: read.product.name,
    molarMass: molarMass(read.product.formula),
    account,
    limiting: account?.limiting,
    extent: account?.extent,
    theoreticalYield,
    gases: formed.filter((_, i) => gas(read.products[i]!.formula) && !isProduct(i)).map(gasOf),
    gasesTaken:
      account === undefined
        ? []
        : account.taken
            .filter(({ formula }) => gas(read.reactants.find((s) => s.name === formula)!.formula))
            .map(gasOf),
    byProducts: formed.filter(
      (_, i) => !isProduct(i) && !gas(read.products[i]!.formula) && !isWater(read.products[i]!.formula),
    ),
    yields,
    findings: [
      ...dangerFindings(recipe, read),
      ...read.findings,
      ...ratioFindings(figures),
      ...yieldFindings(recipe, figures),
    ],
    unknown: [
      ...read.unknown,
      ...(account === undefined ? ["the amount of a material that could run out, for a theoretical yield"] : []),
    ],
  });
}

/**
 * As `checkRecipe`, but gives the refusal back as data.
 *
 * @category Planning
 * @example
 * tryCheckRecipe({ equation: "Zn + S -> ZnS", product: "ZnO", materials: [] }).ok // => false
 */
export const tryCheckRecipe = (recipe: Recipe): Result<RecipeCheck> => attempt(() => checkRecipe(recipe));

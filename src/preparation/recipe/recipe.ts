// Checking a recipe somebody else wrote: what its amounts come to, what is short, and what cannot be right. The recipe is
// taken as it stands; what it leaves unsaid is reported, never filled in.

import { gasVolume } from "../../amount";
import { molarMass } from "../../formula";
import { isWater } from "../../formula/internal";
import { attempt, type Result } from "../../foundation/error";
import { bringsFacts, withItsFacts } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { readable } from "../../foundation/readable";
import type { Quantity } from "../../quantity";
import type { PlanRefusal } from "../error";
import { type Account, accountOfAmounts, type Formed, massFor } from "../reaction/account";
import { isGas } from "../reaction/fluids";
import { guard } from "../request/argument";
import { dangerFindings } from "./dangers";
import { takenRecipe } from "./door";
import type { RecipeFigures } from "./figures";
import { ratioFindings } from "./ratios";
import { type ReadRecipe, readRecipe } from "./read";
import type { Recipe, RecipeCheck, RecipeGas, RecipeYield } from "./types";
import { yieldFindings } from "./yields";

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

function gasOf({ formula, key, amount }: Formed): RecipeGas {
  return { formula, key, amount, volume: gasVolume(amount, {}) };
}

/**
 * Check a recipe: its ratios to stoichiometric, what runs out, what it can yield, and what cannot be right in it.
 *
 * @param recipe - equation, product, materials as named (several readings where the recipe leaves it open), what was found
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
export function checkRecipe(recipe: Recipe): RecipeCheck {
  if (bringsFacts(recipe)) return withItsFacts(recipe, guard, checkRecipe);
  const taken = takenRecipe(recipe);
  const read = readRecipe(taken);
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
  return frozen(
    readable({
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
        ...dangerFindings(taken, read),
        ...read.findings,
        ...ratioFindings(figures),
        ...yieldFindings(taken, figures),
      ],
      unknown: [
        ...read.unknown,
        ...(account === undefined ? ["the amount of a material that could run out, for a theoretical yield"] : []),
      ],
    }),
  );
}

/**
 * As `checkRecipe`, but gives the refusal back as data.
 *
 * @category Planning
 * @example
 * tryCheckRecipe({ equation: "Zn + S -> ZnS", product: "ZnO", materials: [] }).ok // => false
 */
export const tryCheckRecipe = (recipe: Recipe): Result<RecipeCheck, PlanRefusal> => attempt(() => checkRecipe(recipe));

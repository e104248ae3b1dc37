// Double salts whose own solubility no table has: the water of their liquor by that of a salt built alike, or by all their feeds.

import { type Formula, molarMass, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import type { DissolvingWater } from "../../solubility";
import { ISOMORPHOUS } from "../../solubility/internal";
import { exact, planned } from "../planning/exact";
import type { Account } from "../reaction/account";
import { doubleSaltOf } from "../reaction/double-salt";
import type { Setting } from "../request/setting";
import { waterBelowTurning } from "./double-salt";
import { leastWater } from "./feed-dissolved";
import { kindOf } from "./kind";
import { notWarmOf } from "./not-warm";

/** Water that just dissolves an amount of a salt hot; undefined where no figure tells. */
const dissolvedHot = (salt: Formula, amount: Quantity): DissolvingWater | undefined =>
  leastWater(salt, amount.times(molarMass(salt)).to("g"), planned("hot") as Quantity<"temperature">);

const remembered = /* @__PURE__ */ remembering<Formula | undefined>(200);

/**
 * The salt by whose solubility the hot water of a double salt is measured: of those built alike the one in the middle, of two that
 * which takes more; undefined for any other product, for what is not made hot, and where none has a figure.
 */
const alikeTo = (product: Formula): Formula | undefined => remembered(product.toString(), () => middle(product));

function middle(product: Formula): Formula | undefined {
  const row = ISOMORPHOUS().find(({ solids }) => isOneOf(product, ...solids));
  if (row === undefined || notWarmOf(product) !== undefined || doubleSaltOf(product)?.turns !== undefined)
    return undefined;
  const known = row.solids
    .map((text) => parseFormula(text))
    .flatMap((salt) => {
      const water = isOneOf(product, salt.toString()) ? undefined : dissolvedHot(salt, exact("1 mol"))?.totalWater;
      return water === undefined ? [] : [{ salt, water }];
    })
    .sort((one, other) => other.water.compare(one.water));
  return known[Math.floor((known.length - 1) / 2)]?.salt;
}

/** Water in which the feeds of a double salt dissolve one beside the other; undefined for any other product, or where no figure tells. */
function waterOfFeeds(setting: Setting, { supplied }: Account): Quantity | undefined {
  if (kindOf(setting) !== "double salt") return undefined;
  const own = setting.materials.flatMap(({ species, isSolution }, i) =>
    isSolution ? [] : [dissolvedHot(species.formula, supplied[i]!.amount)?.totalWater],
  );
  const known = own.filter((water) => water !== undefined);
  return known.length < own.length || known.length < 2 ? undefined : sum(known);
}

/**
 * All the water that the liquor of a product of unknown solubility is to have, and as much of the salt built alike that it is measured
 * by; neither for what is no double salt.
 */
export function waterOfDouble(
  setting: Setting,
  account: Account,
  isUnknown: boolean,
): { readonly target?: Quantity | undefined; readonly alike?: DissolvingWater | undefined } {
  if (!isUnknown) return {};
  const below = waterBelowTurning(setting, account);
  if (below !== undefined || setting.request.waterFactor !== undefined) return { target: below };
  const { product } = setting;
  const salt = alikeTo(product.formula);
  const alike = salt && dissolvedHot(salt, account.extent.times(product.coefficient));
  return { target: alike?.totalWater ?? waterOfFeeds(setting, account), alike };
}

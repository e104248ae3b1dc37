// A target that is a gas: lye sets ammonia free from a salt of ammonium. How a gas is caught no route plans, so it is answered
// with the figures and no way.

import { balance } from "../equation";
import { attempt } from "../foundation/error";
import { saltFormula } from "../ion/internal";
import { ammoniaLeaves } from "./bars";
import { type Compound, falls, formulaFrom, keyOf } from "./compound";
import { AMMONIA, AMMONIUM, SLAKES } from "./kinds";
import type { RefusedRoute } from "./reason";
import { isRefused } from "./safety";
import type { Index } from "./shelf";

/** Explained at most. */
const MOST = 3;
const HYDROXIDE = "OH-";

/** A lye, or milk of lime. */
const isLye = (one: Compound): boolean =>
  one.anion === HYDROXIDE && one.cation !== undefined && (falls(one) !== true || SLAKES.has(one.cation));

/** Reactions of jars that set the target free as a gas. */
export function freedGas(target: Compound, { all, jars }: Index): RefusedRoute[] {
  if (target.key !== keyOf(AMMONIA)) return [];
  const onShelf = [...jars.keys()].flatMap((key) => all.byKey.get(key) ?? []);
  const salts = onShelf.filter((one) => one.cation === AMMONIUM && one.anion !== undefined && !isRefused(one));
  const pairs = salts.flatMap((salt) => onShelf.filter(isLye).map((lye) => [salt, lye] as const));
  return pairs.slice(0, MOST).flatMap(([salt, lye]) => {
    const equation = attempt(() =>
      String(
        balance(`${salt.forms[0]} + ${lye.forms[0]} -> ${AMMONIA} + ${saltFormula(lye.cation!, salt.anion!)} + H2O`),
      ),
    );
    if (!equation.ok) return [];
    const { text, numbers, source } = ammoniaLeaves();
    return {
      code: "gas-set-free",
      text: `${formulaFrom(AMMONIA).toUnicode()} is a gas that leaves the liquor, and how a gas is caught no route plans; ${text}`,
      numbers,
      source,
      equation: equation.value,
      instead: [],
      unknown: false,
    };
  });
}

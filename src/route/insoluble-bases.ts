// An oxide that somebody might take as a base for the salt of another metal: an oxide that water does not dissolve precipitates
// nothing worth filtering, and what the equilibrium makes of it is given with its figures.

import { balance } from "../equation";
import { attempt } from "../foundation/error";
import { saltFormula } from "../ion/internal";
import { doesItGo, type Feasibility } from "../preparation";
import { saltConversion } from "../solubility";
import { type Compound, falls, formulaFrom } from "./compound";
import { isSource } from "./kinds";
import type { RefusedRoute } from "./reason";
import type { Index } from "./shelf";

/** Explained at most. */
const MOST = 3;
const HYDROXIDE = "OH-";
const OXIDES = new Set([HYDROXIDE, "O^2-"]);

const isInsolubleBase = (one: Compound): boolean =>
  one.cation !== undefined && OXIDES.has(one.anion ?? "") && falls(one) === true;

/** Pairs of jars, an insoluble base and a salt of another metal, that would make the target by their ions. */
function* pairs(target: Compound, { all, jars }: Index): Generator<readonly [base: Compound, salt: Compound]> {
  const onShelf = [...jars.keys()].flatMap((key) => all.byKey.get(key) ?? []);
  for (const base of onShelf.filter(isInsolubleBase))
    for (const salt of onShelf.filter(isSource)) {
      if (salt.cation === undefined || salt.cation === base.cation) continue;
      const makesBase = target.anion === HYDROXIDE && target.cation === salt.cation && falls(target) === true;
      const makesSalt = target.cation === base.cation && target.anion === salt.anion && !OXIDES.has(target.anion ?? "");
      if (makesBase || makesSalt) yield [base, salt];
    }
}

/** Constant of the exchange of one hydroxide for the other, where both have one. */
function exchangeOf(from: string, to: string): RefusedRoute["numbers"] {
  const found = attempt(() => saltConversion({ from, to }));
  return found.ok ? [found.value.equilibriumRatio] : [];
}

function refusalOf(base: Compound, salt: Compound, equation: string, { verdict, reasons }: Feasibility): RefusedRoute {
  const [hydroxide, other] = [saltFormula(base.cation!, HYDROXIDE), saltFormula(salt.cation!, HYDROXIDE)];
  const K = exchangeOf(hydroxide, other);
  const [name, own] = [base.forms[0]!, other].map((one) => formulaFrom(one).toUnicode());
  const told = reasons.filter(({ code }) => code === "stays" || code === "equilibrium");
  const stops =
    K[0] === undefined
      ? ""
      : `; ${formulaFrom(hydroxide).toUnicode()} into ${own} stops at K = ${K[0].format({ significant: 1, uncertainty: "none" })}`;
  return {
    code: "insoluble-base",
    text:
      verdict === "goes"
        ? `${name} does not dissolve: what it precipitates forms a coat on its grains, and the cake contains both`
        : `${name} is no base for ${salt.cation}: ${told.map(({ text }) => text).join("; ")}${stops}`,
    numbers: [...told.flatMap(({ numbers }) => numbers), ...K],
    source: reasons[0]?.source ?? "common practice, no source",
    equation,
    instead: [],
    unknown: false,
  };
}

/** Oxides on the shelf that are no base for a salt on the shelf. */
export function insolubleBases(target: Compound, index: Index): RefusedRoute[] {
  const found: RefusedRoute[] = [];
  for (const [base, salt] of pairs(target, index)) {
    const read = attempt(() => {
      const made = [saltFormula(salt.cation!, HYDROXIDE), saltFormula(base.cation!, salt.anion!)];
      const product = target.anion === HYDROXIDE ? made[0]! : made[1]!;
      const text = `${base.forms[0]} + ${saltFormula(salt.cation!, salt.anion!)} + H2O -> ${made.join(" + ")}`;
      const equation = String(balance(text));
      return { equation, feasibility: doesItGo({ equation, product }) };
    });
    if (!read.ok) continue;
    found.push(refusalOf(base, salt, read.value.equation, read.value.feasibility));
    if (found.length === MOST) break;
  }
  return found;
}

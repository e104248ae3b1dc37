// What an analysis found, read: the amount and the share of each constituent, and how far its figure may be off.

import { isRecord, kindOf } from "../../foundation/argument";
import { type Quantity, type QuantityLike, quantity } from "../../quantity";
import { nodeOf } from "../../quantity/internal";
import { FormulaError } from "../error";
import { parseFormula } from "../formula";
import type { Constituent } from "./empirical-rank";
import { molarMass } from "./molar-mass";
import type { MolarMassOptions } from "./options";

/** What was found, by element or by compound: all as percentages, or all as masses and amounts of one sample. */
export type FoundComposition = Readonly<Record<string, QuantityLike | number>>;

const MAX_CONSTITUENTS = 30;

/** How what was found is read. */
interface Reading {
  readonly remainder?: string | undefined;
  readonly weights?: MolarMassOptions | undefined;
}

/** What was found as constituents, with notes on how it was read. */
export function readComposition(found: FoundComposition, options: Reading): { parts: Constituent[]; notes: string[] } {
  if (!isRecord(found)) {
    throw new FormulaError("formula.no-composition", `what was found is an object, not ${kindOf(found)}`, {
      hint: 'such as { C: "40.0 %", H: "6.71 %", O: "53.28 %" }',
    });
  }
  const entries: [string, Quantity][] = Object.entries(found).map(([name, like]) => [
    name,
    typeof like === "number" ? quantity({ value: like, unit: "" }) : quantity(like),
  ]);
  const notes: string[] = [];
  if (entries.length === 0)
    throw new FormulaError("formula.no-composition", "nothing was found, and nothing has no formula");
  if (entries.length > MAX_CONSTITUENTS) {
    throw new FormulaError("formula.no-composition", `more than ${MAX_CONSTITUENTS} constituents`);
  }
  const first = entries[0]![1];
  const plain = isFraction(first);
  for (const [name, q] of entries) {
    const known = isFraction(q) || q.dimension === "mass" || q.dimension === "amount of substance";
    if (!known || isFraction(q) !== plain) {
      throw new FormulaError(
        "formula.mixed-composition",
        `${name} is of another kind (${q.dimension}) than the first (${first.dimension})`,
        {
          hint: "give all as percentages, or all as masses and amounts",
        },
      );
    }
    if (!q.isPositive()) {
      throw new FormulaError("formula.not-positive", `${name} must be above zero, not ${q}`, {
        details: { constituent: name },
      });
    }
  }
  let remainderRoom = 0;
  const percent = plain && entries.some(([, q]) => q.unit.startsWith("%"));
  if (options.remainder !== undefined) {
    if (!plain) {
      throw new FormulaError("formula.mixed-composition", "a remainder can only make up percentages", {
        hint: "give the composition in per cent",
      });
    }
    const rest = entries.reduce((left, [, q]) => left.minus(q), quantity("100 %"));
    if (!rest.isPositive()) {
      throw new FormulaError("formula.over-hundred", "the percentages leave no remainder", {
        details: { remainder: options.remainder },
      });
    }
    remainderRoom = entries.reduce((total, [name, q]) => total + roomOf(q, found[name]), 0);
    entries.push([options.remainder, rest]);
    notes.push(`${options.remainder} is taken as the remainder to 100 %: ${rest.to("%").format({ significant: 4 })}`);
  }
  const parts = entries.map(([name, given]): Omit<Constituent, "share" | "room"> & Weighed => {
    const formula = parseFormula(name);
    const M = molarMass(formula, options.weights);
    const byAmount = given.dimension === "amount of substance";
    const amount = byAmount ? given : given.dividedBy(M);
    const mass = byAmount ? given.toNumber("mol") * M.toNumber("g/mol") : given.toNumber(plain ? "%" : "g");
    const own = name === options.remainder && found[name] === undefined ? remainderRoom : roomOf(given, found[name]);
    const relative = own / given.toNumber();
    return { name, formula, given, amount, mass, slack: mass * relative };
  });
  const slack = parts.reduce((sum, part) => sum + part.slack, 0);
  const whole = parts.reduce((sum, { mass }) => sum + mass, 0);
  if (percent) {
    const sum = entries.reduce((total, [, q]) => total + q.toNumber("%"), 0);
    if (sum > 102) {
      throw new FormulaError("formula.over-hundred", `the percentages sum to ${sum.toPrecision(5)} %`, {
        hint: "a composition sums to 100 %",
        details: { sum },
      });
    }
    if (sum < 98) notes.push(`the percentages sum to ${sum.toPrecision(4)} % only: a constituent may be missing`);
  }
  const shares = parts.map(({ mass, slack: own, ...rest }): Constituent => {
    const share = (100 * mass) / whole;
    return { ...rest, share, room: OTHER_WEIGHTS + (100 * own + share * slack) / whole };
  });
  return { parts: shares, notes };
}

/** What was found of one constituent in one scale of masses, and half of its last printed digit. */
interface Weighed {
  readonly mass: number;
  readonly slack: number;
}

/** Percentages are computed with atomic weights of other years and roundings: 0.01 of the whole covers what that moves. */
export const OTHER_WEIGHTS = 0.01;

/** Half of the last printed digit, or two standard uncertainties, in the unit as given; nothing for a computed value. */
export function roomOf(q: Quantity, like: QuantityLike | number | undefined): number {
  const u = q.standardUncertainty;
  if (u !== undefined) return u.toNumber() * 2;
  const decimals = typeof like === "number" ? (/\.(\d+)$/.exec(String(like))?.[1]?.length ?? 0) : nodeOf(q).decimals;
  return decimals === undefined ? 0 : 0.5 * 10 ** -decimals;
}

function isFraction(q: Quantity): boolean {
  return q.dimension === "number" || q.dimension.endsWith("fraction") || q.unit === "%";
}

// Which reactions might make a compound: feeds by their ions, from the rows of the families. Nothing is judged here; an
// equation is written when somebody asks for it.
import { barOf } from "./bars";
import { type Compound, keyOf } from "./compound";
import { FAMILIES, type FamilyRow, LISTED } from "./data/families";
import { feedsFor } from "./feeds";
import { isRefused } from "./safety";
import type { Universe } from "./universe";
import type { Why } from "./why";

/** A reaction that might make a compound. */
export interface Candidate {
  readonly id: string;
  readonly family: FamilyRow;
  readonly product: Compound;
  readonly feeds: readonly Compound[];
  /** Why it is no way although its ions fit; such a reaction is only explained. */
  readonly bar?: Why | undefined;
  /** What comes beside the product where a row lists it; else it follows from the ions. */
  readonly beside?: readonly string[] | undefined;
}

function ofListed(product: Compound, all: Universe): Candidate[] {
  const family = FAMILIES().find(({ code }) => code === "listed")!;
  return LISTED()
    .filter((row) => keyOf(row.product) === product.key)
    .flatMap((row) => {
      const feeds = row.feeds.map((one) => all.byKey.get(keyOf(one)!));
      if (feeds.includes(undefined)) return [];
      return [candidate(family, product, feeds as Compound[], row.beside)];
    });
}

const candidate = (
  family: FamilyRow,
  product: Compound,
  feeds: readonly Compound[],
  beside?: readonly string[],
): Candidate => ({
  id: `${family.code} ${product.key} < ${feeds.map(({ key }) => key).join(" | ")}`,
  family,
  product,
  feeds,
  ...(beside === undefined ? {} : { beside }),
});

/** From one hydrate to another: heat where water goes, crystals where it comes. */
export const changeOfWater = (product: Compound, more: boolean): Candidate =>
  candidate(FAMILIES().find(({ code }) => code === (more ? "recrystallise" : "drive-water-off"))!, product, [product]);

const kept = new WeakMap<Universe, Map<string, readonly Candidate[]>>();

/** Every reaction whose ions fit, in the order of the families; the same list every time. */
function allFor(product: Compound, all: Universe): readonly Candidate[] {
  const known = kept.get(all) ?? new Map<string, readonly Candidate[]>();
  kept.set(all, known);
  const before = known.get(product.key);
  if (before !== undefined) return before;
  const found = isRefused(product)
    ? []
    : [
        ...FAMILIES().flatMap((family) =>
          feedsFor(family, product, all)
            .filter((feeds) => feeds.every(({ key }) => key !== product.key))
            .map((feeds) => {
              const bar = barOf(family, product, feeds);
              const one = candidate(family, product, feeds);
              return bar === undefined ? one : { ...one, bar };
            }),
        ),
        ...ofListed(product, all),
      ];
  known.set(product.key, found);
  return found;
}

const fit = new WeakMap<readonly Candidate[], readonly Candidate[]>();

/** Reactions that might make a compound. */
export function candidatesFor(product: Compound, all: Universe): readonly Candidate[] {
  const every = allFor(product, all);
  let some = fit.get(every);
  if (some === undefined) {
    some = every.filter(({ bar }) => bar === undefined);
    fit.set(every, some);
  }
  return some;
}

/** Reactions that somebody might try, and that are none. */
export const barredFor = (product: Compound, all: Universe): readonly Candidate[] =>
  allFor(product, all).filter(({ bar }) => bar !== undefined);

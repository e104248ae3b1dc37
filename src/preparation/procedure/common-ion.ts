// How much less of a salt a liquor keeps for the ions that other salts bring: it is saturated when the product of its ions, all that
// is dissolved counted, reaches that of its own saturated solution.

import { keptBeside, once } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { saltIons } from "../../solubility/internal";
import type { Matter } from "../contents/matter";
import { planned } from "../planning/exact";

/** One salt of a liquor in plain grams. */
interface Sharer {
  readonly matter: Matter;
  /** Without crystal water. */
  readonly dry: number;
}

/** A trace of an ion from elsewhere makes no pair of salts: less than this of what the salt itself brings. */
const TRACE = 0.05;
/** What a step of a search may still move a share by, and how often it is tried. */
const STILL = 1e-9;
const OFTEN = 50;

/** An ion of a salt: how many in its smallest whole unit, and mol of it in a gram of the anhydrous salt. */
interface Brought {
  readonly ion: string;
  readonly count: number;
  readonly perGram: number;
}

/** Ions of a salt; none where they are not known, or it is none. */
const ionsOf = /* @__PURE__ */ keptBeside(({ core }: Matter): readonly Brought[] => {
  const whole = constitutionOf(core.formula).inWater;
  const mass = core.molarMass.toNumber("g/mol");
  return (saltIons(core.formula) ?? []).map(({ formula, count }, i) => ({
    ion: formula,
    count,
    perGram: whole[i]!.count / mass,
  }));
});

/** One ion of a salt: how many, the mol that the salt itself brings, and those of all others. */
interface Shared {
  readonly count: number;
  readonly own: number;
  readonly others: number;
}

/** What is over from rounding to the balance takes nothing out. */
const asGoodAsNone = /* @__PURE__ */ once(() => planned("asGoodAsNone").toNumber(""));

/** Does an ion come from more than one of them? */
function shareIons(salts: readonly Sharer[]): boolean {
  const seen = new Set<string>();
  return salts.some(({ matter }) => {
    const ions = ionsOf(matter);
    const isShared = ions.some(({ ion }) => seen.has(ion));
    for (const { ion } of ions) seen.add(ion);
    return isShared;
  });
}

/**
 * The ions of one of several salts, where others bring one of them. Undefined where none does, or where all are shared: salts that swap
 * their ions are not judged by one of them.
 */
function sharedBy(salts: readonly Sharer[], which: number): readonly Shared[] | undefined {
  const { matter, dry } = salts[which]!;
  const shared = ionsOf(matter).map(({ ion, count, perGram }) => {
    let others = 0;
    salts.forEach((salt, i) => {
      if (i === which) return;
      for (const one of ionsOf(salt.matter)) if (one.ion === ion) others += one.perGram * salt.dry;
    });
    return { count, own: perGram * dry, others };
  });
  const none = asGoodAsNone();
  if (shared.every(({ own, others }) => others <= none * own)) return undefined;
  return shared.every(({ own, others }) => others > TRACE * own) ? undefined : shared;
}

/**
 * How many times the water that just keeps a salt by itself keeps it beside the others, all of them dissolved: with n mol of an ion, m of
 * them its own, the product of all n / m to the powers of its formula, by the root of the number of its ions.
 */
export function timesTheWater(salts: readonly Sharer[], which: number): number {
  const shared = sharedBy(salts, which) ?? [];
  const ions = shared.reduce((all, { count }) => all + count, 0);
  const log = shared.reduce((sum, { count, own, others }) => sum + count * Math.log(1 + others / own), 0);
  return ions === 0 ? 1 : Math.exp(log / ions);
}

/** The share that is kept of what water keeps of a salt alone, `s` mol of its smallest unit. */
function shareKept(shared: readonly Shared[], s: number): number {
  // from below each step stays below: the logarithm of the product is bent downwards
  const [scarce, ...rest] = [...shared].sort((a, b) => a.others / a.count - b.others / b.count) as [
    Shared,
    ...Shared[],
  ];
  const most = rest.reduce((sum, { count, others }) => sum + count * Math.log(1 + others / (count * s)), 0);
  let x = Math.max(0, s * Math.exp(-most / scarce.count) - scarce.others / scarce.count);
  for (let k = 0; k < OFTEN; k += 1) {
    let [over, slope] = [0, 0];
    for (const { count, others } of shared) {
      over += count * Math.log((count * x + others) / (count * s));
      slope += (count * count) / (count * x + others);
    }
    const step = -over / slope;
    if (!(step > STILL * s)) break;
    x += step;
  }
  return Math.min(1, x / s);
}

/**
 * The share that is kept of what so much water keeps of the first of several salts alone, all the others dissolved: the least there is,
 * for the ions of a liquor as strong as that count for less than their number. 1 where none is shared.
 */
export function leastKept(salts: readonly Sharer[], perGram: number, water: number): number {
  const shared = sharedBy(salts, 0);
  if (shared === undefined) return 1;
  const [{ own, count }] = shared as [Shared, ...Shared[]];
  return shareKept(shared, (own / count / salts[0]!.dry) * perGram * water);
}

/** One salt of a liquor with what water keeps of it alone. */
interface Kept extends Sharer {
  /** Grams of it that a gram of water keeps, without crystal water; unlimited where no figure is known. */
  readonly perGram: number;
}

/**
 * Shares of their own solubilities that so much water keeps of the salts beside a product, where others bring their ions: 1 where none
 * does, and for the product, which keeps its own.
 */
export function sharesKept(salts: readonly Kept[], product: Matter, water: number): readonly number[] {
  const shares = salts.map(() => 1);
  if (!shareIons(salts)) return shares;
  const dissolved = salts.map(({ matter, dry, perGram }) => ({ matter, dry: Math.min(dry, perGram * water) }));
  for (let k = 0, moved = 1; k < OFTEN && moved > STILL; k += 1) {
    moved = 0;
    salts.forEach(({ matter, dry, perGram }, i) => {
      if (matter.core.key === product.core.key || !(dry > 0) || !(perGram > 0) || perGram === Number.POSITIVE_INFINITY)
        return;
      const shared = sharedBy(
        dissolved.map((salt, j) => (j === i ? { matter, dry } : salt)),
        i,
      );
      if (shared === undefined) return;
      const [{ own, count }] = shared as [Shared, ...Shared[]];
      const share = shareKept(shared, (own / count / dry) * perGram * water);
      moved = Math.max(moved, Math.abs(share - shares[i]!));
      shares[i] = share;
      dissolved[i] = { matter, dry: Math.min(dry, share * perGram * water) };
    });
  }
  return shares;
}

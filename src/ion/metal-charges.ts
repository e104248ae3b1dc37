// The charges of the metals that are left when the anions of a salt are taken off: usual ones first, and all together what the
// anions ask for.
import type { ElementCharges } from "./data/element-words";
import { elementCharges, type Ion } from "./ion-index";

/** A cation and how many of it. */
export interface CationUse {
  readonly count: number;
  /** Charge of one; for mixed valence the mean. */
  readonly charge: number;
  readonly element?: ElementCharges;
  readonly ion?: Ion;
  /** The charges of a mixed-valence metal, lower first. */
  readonly mixed?: readonly [number, number];
  /** The charge could also be split another way: names must not state it. */
  readonly undecided?: true;
}

/** Is a count a whole number, but for the noise of division? */
export const whole = (n: number): boolean => Math.abs(n - Math.round(n)) < 1e-9;

/** Metals left over, given the charge they must carry together; `undefined` when they cannot. */
export function metals(
  rest: ReadonlyMap<string, number>,
  charge: number,
): { uses: CationUse[]; strain: number } | undefined {
  const uses: CationUse[] = [];
  const open: { word: ElementCharges; count: number }[] = [];
  let needed = charge;
  for (const [symbol, count] of rest) {
    const word = elementCharges().get(symbol);
    if (word?.charges === undefined) return undefined;
    if (word.charges.length === 1) {
      uses.push({ element: word, count, charge: word.charges[0]! });
      needed -= count * word.charges[0]!;
    } else open.push({ word, count });
  }
  if (open.length === 0) return Math.abs(needed) < 1e-9 ? { uses, strain: 0 } : undefined;
  if (open.length === 1) return oneMetal(open[0]!, needed, uses);
  return severalMetals(open, needed, uses);
}

function oneMetal(
  { word, count }: { word: ElementCharges; count: number },
  needed: number,
  uses: CationUse[],
): { uses: CationUse[]; strain: number } | undefined {
  const each = needed / count;
  const usual = word.charges!;
  if (whole(each)) {
    const charge = Math.round(each);
    const rank = usual.indexOf(charge);
    return rank < 0 ? undefined : { uses: [...uses, { element: word, count, charge }], strain: rank };
  }
  const sorted = [...usual].sort((a, b) => a - b);
  const above = sorted.find((charge) => charge > each);
  const below = sorted.filter((charge) => charge < each).at(-1);
  if (above === undefined || below === undefined) return undefined;
  return { uses: [...uses, { element: word, count, charge: each, mixed: [below, above] }], strain: 9 };
}

function severalMetals(
  open: readonly { word: ElementCharges; count: number }[],
  needed: number,
  uses: CationUse[],
): { uses: CationUse[]; strain: number } | undefined {
  let best: { charges: number[]; strain: number } | undefined;
  let ways = 0;
  const walk = (i: number, left: number, charges: number[], strain: number): void => {
    if (i === open.length) {
      if (Math.abs(left) > 1e-9) return;
      ways += 1;
      if (best === undefined || strain < best.strain) best = { charges: [...charges], strain };
      return;
    }
    const { word, count } = open[i]!;
    for (const [rank, charge] of word.charges!.entries())
      if (left - count * charge > -1e-9) walk(i + 1, left - count * charge, [...charges, charge], strain + rank);
  };
  walk(0, needed, [], 0);
  if (best === undefined) return undefined;
  const { charges, strain } = best;
  const undecided = ways > 1 ? { undecided: true as const } : {};
  return {
    uses: [...uses, ...open.map(({ word, count }, i) => ({ element: word, count, charge: charges[i]!, ...undecided }))],
    strain,
  };
}

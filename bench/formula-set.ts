// The set the formula benchmark runs on: distinct formulas from a seeded generator, with charges, phases, hydrates,
// decimals, nested brackets and real ones among them, and an exact reference reading in BigInt.
import { ATOMIC_WEIGHTS } from "../src/element/data/atomic-weights";
import { seeded } from "../test/tools/random";

/** One formula with what it holds: counts by symbol in units of 1/1000, worked out while it was made. */
export interface Made {
  readonly text: string;
  readonly thousandths: Map<string, bigint>;
  readonly charge: number;
}

const SYMBOLS = ATOMIC_WEIGHTS()
  .filter(({ kind }) => kind !== "none")
  .map(({ symbol }) => symbol);
const EVERYDAY = "H C N O F Na Mg Al Si P S Cl K Ca Ti Cr Mn Fe Co Ni Cu Zn Br Sr Ag Sn I Ba Pb".split(" ");

type Counts = Map<string, bigint>;

/** `size` distinct formulas. About 1 in 6 is a hydrate, 1 in 12 an ion, 1 in 50 has a decimal subscript. */
export function makeFormulas(size: number, seed = 20_240_824): Made[] {
  const random = seeded(seed);
  const below = (n: number): number => Math.floor(random() * n);
  const symbol = (): string => (random() < 0.85 ? EVERYDAY[below(EVERYDAY.length)]! : SYMBOLS[below(SYMBOLS.length)]!);
  const put = (counts: Counts, name: string, n: bigint): void => {
    counts.set(name, (counts.get(name) ?? 0n) + n);
  };
  const run = (counts: Counts, times: bigint, length: number, depth: number): string => {
    let text = "";
    for (let i = 0; i < length; i += 1) {
      if (depth < 2 && random() < 0.15) {
        const inside: Counts = new Map();
        const n = below(5) + 2;
        const body = run(inside, 1n, below(2) + 1, depth + 1);
        text += depth === 0 && random() < 0.2 ? `[${body}]${n}` : `(${body})${n}`;
        for (const [name, k] of inside) put(counts, name, k * BigInt(n) * times);
        continue;
      }
      const name = symbol();
      const n = random() < 0.4 ? 1 : below(12) + 2;
      text += name + (n === 1 ? "" : n);
      put(counts, name, BigInt(n) * 1000n * times);
    }
    return text;
  };
  const made = new Map<string, Made>();
  while (made.size < size) {
    const counts: Counts = new Map();
    let text = run(counts, 1n, below(3) + 1, 0);
    let charge = 0;
    const kind = random();
    if (kind < 0.16) {
      const n = below(11) + 2;
      text += `${["·", ".", "*"][below(3)]}${n}H2O`;
      put(counts, "H", BigInt(2 * n) * 1000n);
      put(counts, "O", BigInt(n) * 1000n);
    } else if (kind < 0.24) {
      const n = below(3) + 1;
      const negative = random() < 0.5;
      text += `^${n === 1 ? "" : n}${negative ? "-" : "+"}`;
      charge = negative ? -n : n;
    } else if (kind < 0.26) {
      const n = below(900) + 50;
      const name = symbol();
      text += `${name}0.${String(n).padStart(3, "0")}`;
      put(counts, name, BigInt(n));
    } else if (kind < 0.3) text += "(aq)";
    made.set(text, { text, thousandths: counts, charge });
  }
  return [...made.values()];
}

/** Exact mass in 1e-12 Da, in BigInt, straight from the published texts. */
export function referenceMass({ thousandths }: Made, weights: ReadonlyMap<string, bigint>): bigint {
  let sum = 0n;
  for (const [name, n] of thousandths) sum += weights.get(name)! * n;
  return sum;
}

/** Default weights in 1e-9 Da from their published texts. */
export function referenceWeights(): Map<string, bigint> {
  return new Map(
    ATOMIC_WEIGHTS().flatMap((row) => {
      if (row.kind === "none") return [];
      const [whole = "", places = ""] = (row.kind === "value" ? row.value : row.conventional).split(".");
      return [[row.symbol, BigInt(whole + places.padEnd(9, "0"))] as const];
    }),
  );
}

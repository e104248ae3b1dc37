// How much a test tells: the entropy of its outcomes, where each hypothesis has one outcome (Shannon's measure, in bits).

/** Bits that a test is expected to give: hypotheses with their shares (any scale), and the outcome each one would show. */
export function informationOf(shares: readonly number[], outcomes: readonly string[]): number {
  const total = shares.reduce((a, b) => a + b, 0);
  const byOutcome = new Map<string, number>();
  for (const [i, outcome] of outcomes.entries())
    byOutcome.set(outcome, (byOutcome.get(outcome) ?? 0) + shares[i]! / total);
  return [...byOutcome.values()].reduce((bits, p) => (p > 0 ? bits - p * Math.log2(p) : bits), 0);
}

// Narrowing two places between which something changes, by halving what lies between them.

/**
 * The two places, narrowed: `isBefore` is true at `low` and false at `high`, whichever of the two is the larger number. Ends
 * after `turns` halvings, or sooner where they are as near as `tolerance` times the second.
 */
export function bisected(
  isBefore: (x: number) => boolean,
  [low, high]: readonly [low: number, high: number],
  turns: number,
  tolerance = 0,
): [low: number, high: number] {
  for (let turn = 0; turn < turns && Math.abs(high - low) > tolerance * Math.abs(high); turn += 1) {
    const middle = (low + high) / 2;
    if (isBefore(middle)) low = middle;
    else high = middle;
  }
  return [low, high];
}

// The zero of a function between two points of opposite sign: regula falsi with halved ends (Illinois), and bisection where
// that stalls.

/** @returns where `f` changes sign between two places, to a relative `tolerance` of the larger of them; `known` are its values there */
export function crossing(
  f: (x: number) => number,
  [low, high]: readonly [low: number, high: number],
  known?: readonly [atLow: number, atHigh: number],
  tolerance = 1e-12,
): number {
  let [a, b] = [low, high];
  let [fa, fb] = known ?? [f(a), f(b)];
  if (fa === 0) return a;
  if (fb === 0) return b;
  let side = 0;
  for (let turn = 0; turn < 200; turn += 1) {
    const x = turn % 4 === 3 ? (a + b) / 2 : (a * fb - b * fa) / (fb - fa);
    if (Math.abs(b - a) <= tolerance * Math.max(Math.abs(a), Math.abs(b))) return x;
    const y = f(x);
    if (y === 0) return x;
    if (y > 0 === fa > 0) {
      [a, fa] = [x, y];
      if (side === 1) fb /= 2;
      side = 1;
    } else {
      [b, fb] = [x, y];
      if (side === -1) fa /= 2;
      side = -1;
    }
  }
  return (a + b) / 2;
}

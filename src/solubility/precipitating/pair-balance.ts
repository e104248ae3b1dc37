// One pairing of ions against one constant, in liquors too strong for the activity model, where the measured solubility of the
// salt stands for its product. One unknown, and no other reaction.

/** More than the search ever needs. */
const STEPS = 100;

/** An ion of a solid that precipitates: how much is over when the scarcest ion is gone, and its count per scarce ion. */
interface Remaining {
  readonly count: number;
  /** What is over of it, mol/L; 0 for the scarcest ion. */
  readonly over: number;
  readonly perScarce: number;
}

/**
 * @internal ln of what stays of the scarcest ion: sum of count × ln(over + perScarce × residue) = ln K. Written in the
 * logarithm it rises and is convex, so Newton's steps from above converge on it without overshooting, however small it is.
 */
export function solveResidue(ions: readonly Remaining[], lnK: number, lnStart: number): number {
  let at = lnStart;
  for (let i = 0; i < STEPS; i += 1) {
    let [value, slope] = [0, 0];
    for (const { count, over, perScarce } of ions) {
      const own = perScarce * Math.exp(at);
      value += count * (over > 0 ? Math.log(over + own) : Math.log(perScarce) + at);
      slope += over > 0 ? (count * own) / (over + own) : count;
    }
    const step = (value - lnK) / slope;
    at -= step;
    if (Math.abs(step) <= 1e-15 * Math.max(1, Math.abs(at))) break;
  }
  return at;
}

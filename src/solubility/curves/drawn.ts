// A curve of the table as points to draw, branch by branch.
import type { Formula } from "../../formula";
import { branchesOf, onBranch } from "./branch";
import { rowOf, soluteOf } from "./solute";

/** A point of a curve: grams of anhydrous salt per 100 g of water. */
export interface DrawnPoint {
  readonly celsius: number;
  readonly grams: number;
}

/** Points of one branch: as many as make a smooth line at the width of a hand. */
const STEPS = 40;

/** Branches of the curve of a salt; none where the table has no row for it. */
export function drawnCurve(formula: string | Formula): readonly (readonly DrawnPoint[])[] {
  const row = rowOf(soluteOf(formula));
  if (row === undefined) return [];
  return branchesOf(row).flatMap((branch) => {
    const [first, last] = [branch.knots[0], branch.knots.at(-1)];
    if (first === undefined || last === undefined || first === last) return [];
    const span = last.celsius - first.celsius;
    const at = Array.from({ length: STEPS + 1 }, (_, i) => first.celsius + (span * i) / STEPS);
    return [at.map((celsius) => ({ celsius, grams: onBranch(branch, celsius).value }))];
  });
}

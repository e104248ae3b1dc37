// A sparingly soluble solid in a solution of ligands, all balances counted: what binds the metal is taken off what is free.
// Unknown are ln of each free ion and ligand, and s, the formula units dissolved. With the solid there, the sum of all
// species less the amounts put in is a convex function on the plane where the ion product is Ksp; its least is the answer.
import { KW } from "./ion-balance";

/** One ion or ligand: how much of it the solid sets free per formula unit, and what was put in besides, mol/L. */
export interface Component {
  readonly perUnit: number;
  readonly start: number;
  /** Hydroxide: the hydrogen ions of water stand against it. */
  readonly isHydroxide: boolean;
}

/** A complex of the metal (the first component) with n of another component. */
export interface BoundForm {
  readonly component: number;
  readonly n: number;
  readonly lnBeta: number;
}

/** The solution over the solid. */
export interface BoundSolution {
  /** Formula units dissolved, mol/L; below zero when the solution was over-saturated. */
  readonly dissolved: number;
  /** Free concentration of each component, mol/L. */
  readonly free: readonly number[];
  /** d(dissolved) / d(ln Ksp), / d(start of each component), / d(ln beta of each form). */
  readonly slopes: {
    readonly lnK: number;
    readonly start: readonly number[];
    readonly lnBeta: readonly number[];
  };
}

/** A species: its stoichiometry in the components. */
interface Species {
  readonly nu: readonly number[];
  readonly ln: number;
}

/** Solve a small linear system by elimination with pivots. */
function eliminate(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  const n = rows.length;
  for (let k = 0; k < n; k += 1) {
    let pivot = k;
    for (let i = k + 1; i < n; i += 1) if (Math.abs(rows[i]![k]!) > Math.abs(rows[pivot]![k]!)) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!];
    for (let i = k + 1; i < n; i += 1) {
      const factor = rows[i]![k]! / rows[k]![k]!;
      if (factor === 0) continue;
      for (let j = k; j <= n; j += 1) rows[i]![j]! -= factor * rows[k]![j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i -= 1) {
    let sum = rows[i]![n]!;
    for (let j = i + 1; j < n; j += 1) sum -= rows[i]![j]! * x[j]!;
    x[i] = sum / rows[i]![i]!;
  }
  return x;
}

const STEPS = 400;
/** Least amount a first guess starts from, mol/L. */
const FAINT = 1e-12;

/**
 * What dissolves with all balances. Each step lowers the convex function: damped by how far any species would move, as
 * sums of exponentials allow.
 */
export function solveBound(
  components: readonly Component[],
  forms: readonly BoundForm[],
  lnK: number,
): BoundSolution | undefined {
  const n = components.length;
  const unit = (k: number, times = 1): number[] => components.map((_, i) => (i === k ? times : 0));
  const species: Species[] = [
    ...components.map((_, k) => ({ nu: unit(k), ln: 0 })),
    ...forms.map(({ component, n: count, lnBeta }) => ({
      nu: components.map((_, i) => (i === 0 ? 1 : 0) + (i === component ? count : 0)),
      ln: lnBeta,
    })),
    ...components.flatMap(({ isHydroxide }, k) => (isHydroxide ? [{ nu: unit(k, -1), ln: Math.log(KW) }] : [])),
  ];
  const perUnit = components.map((c) => c.perUnit);
  // a point on the plane: every component at what was put in, the metal set by the product
  const x = components.map(({ start }) => Math.log(Math.max(start, FAINT)));
  const others = perUnit.reduce((all, count, k) => (k === 0 ? all : all + count * x[k]!), 0);
  x[0] = (lnK - others) / perUnit[0]!;
  const bordered = (concentrations: readonly number[]): number[][] => {
    const matrix = components.map((_, i) => [
      ...components.map((__, j) => species.reduce((all, s, k) => all + s.nu[i]! * s.nu[j]! * concentrations[k]!, 0)),
      -perUnit[i]!,
    ]);
    matrix.push([...perUnit, 0]);
    return matrix;
  };
  const all = () =>
    species.map(({ nu, ln }) =>
      Math.exp(
        Math.min(
          600,
          nu.reduce((sum, v, i) => sum + v * x[i]!, ln),
        ),
      ),
    );
  for (let step = 0; step < STEPS; step += 1) {
    const c = all();
    const gradient = components.map(({ start }, i) => species.reduce((sum, s, k) => sum + s.nu[i]! * c[k]!, -start));
    const found = scaled(bordered(c), [...gradient.map((g) => -g), 0]);
    const dx = found.slice(0, n);
    if (found.some((value) => !Number.isFinite(value))) return undefined;
    const furthest = Math.max(...species.map(({ nu }) => Math.abs(nu.reduce((sum, v, i) => sum + v * dx[i]!, 0))));
    const damping = furthest > 1e-2 ? Math.log1p(furthest) / furthest : 1;
    for (let i = 0; i < n; i += 1) x[i]! += damping * dx[i]!;
    if (furthest < 1e-13) break;
    if (step === STEPS - 1) return undefined;
  }
  const c = all();
  const matrix = bordered(c);
  const dissolvedPer = (right: readonly number[]): number => scaled(matrix, right)[n]!;
  const solved = scaled(matrix, [
    ...components.map(({ start }, i) => start - species.reduce((sum, s, k) => sum + s.nu[i]! * c[k]!, 0)),
    0,
  ]);
  return {
    dissolved: solved[n]!,
    free: x.map(Math.exp),
    slopes: {
      lnK: dissolvedPer([...components.map(() => 0), 1]),
      start: components.map((_, k) => dissolvedPer([...unit(k), 0])),
      lnBeta: forms.map((_, f) => {
        const { nu } = species[n + f]!;
        return dissolvedPer([...nu.map((v) => -v * c[n + f]!), 0]);
      }),
    },
  };
}

/** The same system with each unknown measured by its own size: concentrations span thirty powers of ten. */
function scaled(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const size = matrix.map((row, i) => (row[i]! > 0 ? 1 / Math.sqrt(row[i]!) : 1));
  const whole = Math.max(...matrix.slice(0, -1).map((row, i) => Math.abs(row.at(-1)! * size[i]!))) || 1;
  size[size.length - 1] = 1 / whole;
  const found = eliminate(
    matrix.map((row, i) => row.map((value, j) => value * size[i]! * size[j]!)),
    right.map((value, i) => value * size[i]!),
  );
  return found.map((value, i) => value * size[i]!);
}

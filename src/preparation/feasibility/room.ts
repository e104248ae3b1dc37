// How far a solid is from not standing: in its constant, and in the lye it takes.
import type { Phase } from "../../aqueous/internal";
import { parseFormula } from "../../formula";
import { once } from "../../foundation/memo";
import { type Beaker, type Pour, settle } from "./beaker";
import type { Basis, Feasibility } from "./feasibility";

/** How far a solid is from not standing. */
export interface Room {
  /**
   * Powers of ten that its solubility product may be greater before less than the least share stands: log10(Q/K) against whatever
   * stands or stays in its place.
   */
  readonly logarithm: number;
  /** It is as far as was looked. */
  readonly more: boolean;
  readonly pH: number;
  /** pH above which lye leaves less than the least share; undefined where as much lye as was looked at does not. */
  readonly redissolvesFrom: number | undefined;
}

/** Powers of ten looked at, and how finely. */
const FARTHEST = 8;
const STEPS = 5;
/** mol of lye for each mole of product looked at. */
const DOSES = [0.3, 1.5, 5] as const;
const DOSE_STEPS = 4;

const lye = /* @__PURE__ */ once(() => parseFormula("NaOH"));

const bases = new WeakMap<Feasibility, Basis>();

/** Keep the beaker that a feasibility rests on. */
export function restsOn(feasibility: Feasibility, basis: Basis | undefined): Feasibility {
  if (basis !== undefined) bases.set(feasibility, basis);
  return feasibility;
}

/** How far the product is from not standing; undefined where no solid of the tables stands, or less of it than the least share. */
export function roomOf(feasibility: Feasibility, least: number): Room | undefined {
  const basis = bases.get(feasibility);
  if (basis === undefined || basis.units.size === 0) return undefined;
  const pours = basis.pours.map(({ formula, moles }): Pour => ({ formula: parseFormula(formula), moles }));
  const isIt = ({ formula }: Phase): boolean => basis.units.has(formula);
  const at = (by: number, added: readonly Pour[], near?: Beaker): Beaker | undefined =>
    settle([...pours, ...added], basis.water, basis.celsius, {
      carbonDioxide: basis.carbonDioxide,
      solids: basis.solids,
      ...(by === 0 ? {} : { lower: { by, which: isIt } }),
      near,
    });
  const stands = (beaker: Beaker | undefined): boolean =>
    beaker !== undefined &&
    beaker.solids.reduce((n, { phase, moles }) => n + moles * (basis.units.get(phase.formula) ?? 0), 0) >= least;
  const plain = at(0, []);
  if (plain === undefined || !stands(plain)) return undefined;
  const more = stands(at(-FARTHEST, [], plain));
  const logarithm = more
    ? FARTHEST
    : between(0, FARTHEST, STEPS, (by) => stands(at(-by, [], plain))).reduce((sum, one) => sum + one, 0) / 2;
  const dosed = (moles: number): Beaker | undefined => at(0, [{ formula: lye(), moles }], plain);
  const i = DOSES.findIndex((moles) => !stands(dosed(moles)));
  const last =
    i < 0 ? undefined : between(DOSES[i - 1] ?? 0, DOSES[i]!, DOSE_STEPS, (moles) => stands(dosed(moles)))[0];
  return { logarithm, more, pH: plain.pH, redissolvesFrom: last === undefined ? undefined : dosed(last)?.pH };
}

/** Halve a stretch on whose left something holds, on whose right it does not. */
function between(left: number, right: number, steps: number, holds: (at: number) => boolean): [number, number] {
  let [a, b] = [left, right];
  for (let i = 0; i < steps; i += 1) {
    const middle = (a + b) / 2;
    if (holds(middle)) a = middle;
    else b = middle;
  }
  return [a, b];
}

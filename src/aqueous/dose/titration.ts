// Titration curves and their end points, by the equilibrium of the whole mixture.
import { readable } from "../../foundation/readable";
import { type MassText, type Quantity, type QuantityLike, quantity, type VolumeText } from "../../quantity";
import { expectDimension, solvedFigure } from "../../quantity/internal";
import { guard, positive } from "../argument";
import { AqueousError } from "../error";
import type { Dissolved } from "../mixture/material";
import { WATER_MOLAR_MASS } from "../mixture/mixture";
import { gradientOf, solutionOf } from "../solve/sensitivity";
import {
  ADDITION_FIELDS,
  type Addition,
  type AdditionOptions,
  molesToPH,
  pHAdded,
  pHFigure,
  readAddition,
  solveAdded,
  solvedWith,
} from "./addition";
import { waterOfSolution } from "./dose";
import type { Reagent } from "./reagent";

/** What is titrated with what. */
export interface TitrationCurveRequest extends AdditionOptions {
  /** What is in the flask before the first drop. */
  readonly flask: {
    readonly volume?: QuantityLike<"volume", VolumeText>;
    readonly water?: QuantityLike<"mass" | "volume", MassText | VolumeText>;
    readonly dissolved: readonly Dissolved[];
  };
  /** What is added: a solution of some strength. */
  readonly burette: Reagent;
  /** Volumes to give the pH at; default 200 even steps. */
  readonly at?: readonly QuantityLike<"volume", VolumeText>[];
  /** Last volume; default somewhat past the last end point. */
  readonly to?: QuantityLike<"volume", VolumeText>;
}

/** pH after a volume of the burette's solution. */
export interface CurvePoint {
  /** Added from the burette so far. */
  readonly volume: Quantity<"volume">;
  /** Of the mixture in the flask. */
  readonly pH: Quantity<"number">;
}

/** A titration curve. */
export interface TitrationCurve {
  /** One for each volume, in the order of `at` where that was given. */
  readonly points: readonly CurvePoint[];
  /** Last volume of the curve. */
  readonly to: Quantity<"volume">;
  /** pH at any volume. */
  at(volume: QuantityLike<"volume", VolumeText>): Quantity<"number">;
}

/** What a curve was calculated from. */
interface Origin {
  readonly addition: Addition;
  readonly request: TitrationCurveRequest;
  readonly litres: number;
  readonly strength: number;
}

const origins = new WeakMap<TitrationCurve, Origin>();
const curveOf = new WeakMap<EndPoint, { readonly origin: Origin; readonly litres: number }>();

/** The curve that an end point lies on, and its litres; undefined for what `endPoints` did not give. */
export const curveThrough = (endPoint: EndPoint): { readonly origin: Origin; readonly litres: number } | undefined =>
  curveOf.get(endPoint);

const CURVE_FIELDS = {
  flask: { volume: true, water: true, dissolved: true },
  burette: true,
  at: true,
  to: true,
  ...ADDITION_FIELDS,
} as const;

const STEPS = 200;

function additionOf(request: TitrationCurveRequest): Addition {
  const water = waterOfSolution(request.flask, "flask");
  const addition = readAddition({ water, dissolved: request.flask.dissolved }, request.burette, request, "burette");
  if (addition.concentration !== undefined) return addition;
  throw new AqueousError("aqueous.missing-option", "burette: what concentration has the solution in it?", {
    details: { argument: "burette.concentration" },
  });
}

/** Somewhat past the last end point: where the pH has come near that of the burette. */
function usualEnd(addition: Addition): number {
  const start = pHAdded(addition, 0, false);
  const far = pHAdded(addition, 100 * addition.baseWater * 0.018 * addition.concentration!.toNumber("mol/L"), false);
  for (const share of [0.9, 0.85, 0.8, 0.7, 0.5]) {
    try {
      return 1.05 * molesToPH(addition, start + share * (far - start));
    } catch (error) {
      if (!(error instanceof AqueousError)) throw error;
    }
  }
  return addition.baseWater * 0.018;
}

/** A pH as a quantity; its inputs are worked out by solving again, when asked for. */
function pHQuantity(addition: Addition, moles: number, value: number): Quantity {
  return solvedFigure(value.toPrecision(12), "", "equilibrium", { symbol: "pH", label: "pH" }, () => {
    const { maker } = solvedWith(addition, moles);
    return [{ input: maker.make(value, "", pHFigure(addition.model), 1 / Math.LN10, { symbol: "pH" }), partial: 1 }];
  });
}

/**
 * Titration curve: pH in the flask over the volume from the burette, with solids, gases and dilution counted.
 *
 * @param request - flask (volume and contents), burette (formula and concentration), volumes to answer at or the last one
 * @returns points, and the pH `at` any volume
 * @throws {AqueousError} as `aqueousComposition`; `aqueous.missing-option`
 * @category In the beaker
 * @example
 * const curve = titrationCurve({
 *   flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
 *   burette: { formula: "NaOH", concentration: "0.1 mol/L" },
 * });
 * curve.at("12.5 mL").format({ decimals: 1, uncertainty: "none" }) // => "4.7"
 */
export function titrationCurve(request: TitrationCurveRequest): TitrationCurve {
  guard.fields(request, CURVE_FIELDS, "request");
  guard.record(request.flask, "flask");
  guard.record(request.burette, "burette");
  const addition = additionOf(request);
  const strength = addition.concentration!.toNumber("mol/L");
  const volumeOf = (like: QuantityLike, place: string): Quantity<"volume"> => {
    const volume = expectDimension(like, "volume", place, { symbol: "V" });
    if (volume.isZero() || volume.isPositive()) return volume;
    throw new AqueousError("aqueous.not-positive", `${place} must not be negative: ${volume}`);
  };
  let litres: number;
  let volumes: Quantity<"volume">[];
  if (request.at !== undefined) {
    guard.list(request.at, "at");
    volumes = request.at.map((like, i) => volumeOf(like, `at[${i}]`));
    litres = Math.max(0, ...volumes.map((v) => v.toNumber("L")));
  } else {
    litres =
      request.to === undefined ? usualEnd(addition) / strength : positive(request.to, "volume", "to").toNumber("L");
    volumes = Array.from({ length: STEPS + 1 }, (_, i) =>
      quantity({ value: ((1000 * litres * i) / STEPS).toPrecision(6), unit: "mL" }, { symbol: "V" }),
    ) as Quantity<"volume">[];
  }
  const points = volumes.map((volume, i): CurvePoint => {
    const moles = volume.toNumber("L") * strength;
    return { volume, pH: pHQuantity(addition, moles, pHAdded(addition, moles, i > 0)) };
  });
  const curve: TitrationCurve = {
    points,
    to: quantity({ value: (1000 * litres).toPrecision(6), unit: "mL" }) as Quantity<"volume">,
    at: (volume) => {
      const moles = volumeOf(volume, "volume").toNumber("L") * strength;
      return pHQuantity(addition, moles, pHAdded(addition, moles, false));
    },
  };
  origins.set(curve, { addition, request, litres, strength });
  return Object.freeze(readable(curve));
}

/** Where a curve is steepest. */
export interface EndPoint {
  /** Added from the burette up to the end point. */
  readonly volume: Quantity<"volume">;
  /** Of the mixture at the end point. */
  readonly pH: Quantity<"number">;
  /** d(pH)/dV there, per mL: how sharp it is. */
  readonly steepness: number;
}

/** Slope of a curve, pH per mol of reagent. */
function slopeAt(addition: Addition, moles: number, warm: boolean): number {
  const { kilograms, totals } = solveAdded(addition, moles, warm);
  const solution = solutionOf(addition.model.equilibrium.tableau);
  const gradient = gradientOf(solution, pHFigure(addition.model));
  let sum = 0;
  for (let j = 0; j < totals.length; j += 1) {
    const change = addition.reagentMoles[j]! - totals[j]! * addition.reagentWater * WATER_MOLAR_MASS;
    sum += (gradient.totals[j]! * change) / kilograms;
  }
  return sum / Math.LN10;
}

/** A steepest place counts if it is this many times steeper than the flattest beside it. */
const SHARP = 2.5;

/** Moles of reagent at the end points. */
function endsOf({ addition, litres, strength }: Origin): number[] {
  const most = litres * strength;
  // even steps in the pH find a sharp end that even steps in the volume would jump over
  const marks = new Set<number>();
  for (let i = 0; i <= STEPS; i += 1) marks.add((most * i) / STEPS);
  let sorted = [...marks].sort((a, b) => a - b);
  for (let turn = 0; turn < 6; turn += 1) {
    const pHs = sorted.map((x, i) => pHAdded(addition, x, i > 0));
    const more: number[] = [];
    for (let i = 1; i < sorted.length; i += 1)
      if (Math.abs(pHs[i]! - pHs[i - 1]!) > 0.25)
        for (let k = 1; k < 4; k += 1) more.push(sorted[i - 1]! + ((sorted[i]! - sorted[i - 1]!) * k) / 4);
    if (more.length === 0) break;
    sorted = [...sorted, ...more].sort((a, b) => a - b);
  }
  const slopes = sorted.map((x, i) => Math.abs(slopeAt(addition, x, i > 0)));
  const peaks: number[] = [];
  let valley = slopes[0]!;
  for (let i = 1; i < slopes.length - 1; i += 1) {
    valley = Math.min(valley, slopes[i]!);
    if (!(slopes[i]! > slopes[i - 1]! && slopes[i]! >= slopes[i + 1]!)) continue;
    let after = slopes[i]!;
    for (let k = i + 1; k < slopes.length && slopes[k]! <= slopes[i]!; k += 1) after = Math.min(after, slopes[k]!);
    if (slopes[i]! > SHARP * valley && slopes[i]! > SHARP * after) {
      peaks.push(steepest(addition, sorted[i - 1]!, sorted[i + 1]!));
      valley = slopes[i]!;
    }
  }
  return peaks;
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;

/** The steepest place between two others, by golden section on the logarithm of the slope. */
function steepest(addition: Addition, low: number, high: number): number {
  let [a, b] = [low, high];
  const slope = (x: number): number => Math.abs(slopeAt(addition, x, true));
  let [c, d] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [fc, fd] = [slope(c), slope(d)];
  while (b - a > 1e-9 * b) {
    if (fc > fd) {
      [b, d, fd] = [d, c, fc];
      c = b - GOLDEN * (b - a);
      fc = slope(c);
    } else {
      [a, c, fc] = [c, d, fd];
      d = a + GOLDEN * (b - a);
      fd = slope(d);
    }
  }
  return (a + b) / 2;
}

/**
 * End points of a titration: the places where the pH changes fastest.
 *
 * @param curve - from `titrationCurve`
 * @returns volume and pH of each, in order; none where no step is sharp enough to be seen
 * @throws {AqueousError} `aqueous.bad-option`
 * @category In the beaker
 * @example
 * const curve = titrationCurve({
 *   flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
 *   burette: { formula: "NaOH", concentration: "0.1 mol/L" },
 * });
 * endPoints(curve).map((end) => end.volume.format({ decimals: 2, uncertainty: "none" })) // => ["25.00 mL"]
 */
export function endPoints(curve: TitrationCurve): readonly EndPoint[] {
  const origin = origins.get(curve);
  if (origin === undefined) throw new AqueousError("aqueous.bad-option", "expected what titrationCurve gave");
  const { addition, strength } = origin;
  return endsOf(origin).map((moles) => {
    const litres = moles / strength;
    const steepness = (Math.abs(slopeAt(addition, moles, false)) * strength) / 1000;
    const pH = pHAdded(addition, moles, false);
    const point: EndPoint = Object.freeze({
      volume: volumeQuantity(addition, moles, litres),
      pH: pHQuantity(addition, moles, pH),
      steepness,
    });
    curveOf.set(point, { origin, litres });
    return point;
  });
}

/**
 * Volume of an end point. It moves with what is in the flask, each amount by what it takes of the reagent to keep the slope
 * where it is; taken here as the volume at the pH of the end point, which differs in the third decimal.
 */
function volumeQuantity(addition: Addition, moles: number, litres: number): Quantity<"volume"> {
  return solvedFigure(
    (1000 * litres).toPrecision(9),
    "mL",
    "end point",
    { symbol: "V(end)", label: "volume at the end point", rule: "where d(pH)/dV is largest" },
    () => {
      const { doseMaker, slopeOf } = solvedWith(addition, moles);
      const figure = pHFigure(addition.model);
      const amount = doseMaker.make(moles, "mol", figure, -1 / slopeOf(figure), {
        symbol: "n",
        label: "reagent at the end point",
      });
      const volume = amount.dividedBy(addition.concentration!).to("mL");
      return [{ input: volume, partial: 1 }];
    },
  ) as Quantity<"volume">;
}

// The indicators for an end point, by the error that each makes.
import { type Quantity, quantity } from "../../quantity";
import { solvedFigure } from "../../quantity/internal";
import { INDICATORS } from "../data/indicators";
import { AqueousError } from "../error";
import { crossing } from "../solve/root";
import { pHAdded, pHFigure, solvedWith } from "./addition";
import { curveThrough, type EndPoint } from "./titration";

/** An indicator for an end point. */
export interface IndicatorChoice {
  /** Name of the indicator in the trade. */
  readonly name: string;
  /** pH between which it changes. */
  readonly from: Quantity<"number">;
  /** pH at which its change is complete, on the basic side. */
  readonly to: Quantity<"number">;
  /** Colour on the acid side, then on the basic side. */
  readonly colours: readonly [acid: string, base: string];
  /** The larger of the two errors, with its sign, in % of the titre. */
  readonly error: Quantity<"number">;
  /** Error if the titration stops where the change begins, and where it is complete, in % of the titre. */
  readonly errors: readonly [first: Quantity<"number">, last: Quantity<"number">];
  /** Both errors within 1 %. */
  readonly fits: boolean;
}

const FITS = 1;

/**
 * Indicators for an end point, best first, with the error each makes: the volume at the pH where its colour begins to change
 * and where it has changed, against the volume of the end point.
 *
 * @param endPoint - from `endPoints`
 * @returns all indicators whose change lies on the curve
 * @throws {AqueousError} `aqueous.bad-option`
 * @category In the beaker
 * @example
 * const curve = titrationCurve({
 *   flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
 *   burette: { formula: "NaOH", concentration: "0.1 mol/L" },
 * });
 * indicatorFor(endPoints(curve)[0]!).filter((one) => one.fits).map((one) => one.name).includes("phenolphthalein") // => true
 */
export function indicatorFor(endPoint: EndPoint): readonly IndicatorChoice[] {
  const known = curveThrough(endPoint);
  if (known === undefined) throw new AqueousError("aqueous.bad-option", "expected an end point that endPoints gave");
  const { origin, litres } = known;
  const { addition, strength } = origin;
  const most = 1.5 * origin.litres * strength;
  const [first, last] = [pHAdded(addition, 0, false), pHAdded(addition, most, false)];
  const percentAt = (pH: number): number | undefined => {
    if ((pH - first) * (pH - last) > 0) return undefined;
    const moles = crossing((x) => pHAdded(addition, x) - pH, [0, most], undefined, 1e-10);
    return (moles / strength / litres - 1) * 100;
  };
  const amountAt = (moles: number): Quantity => {
    const { doseMaker, slopeOf } = solvedWith(addition, moles);
    const figure = pHFigure(addition.model);
    return doseMaker.make(moles, "mol", figure, -1 / slopeOf(figure), { symbol: "n", label: "reagent at a pH" });
  };
  const asPercent = (value: number, label: string): Quantity =>
    solvedFigure(
      value.toPrecision(4),
      "%",
      "indicator error",
      { symbol: "δ", label, rule: "volume at the colour change / volume at the end point − 1" },
      () => {
        const end = litres * strength;
        const ratio = amountAt(end * (1 + value / 100)).dividedBy(amountAt(end));
        return [{ input: ratio, partial: 100 }];
      },
    );
  const choices: (IndicatorChoice & { readonly size: number })[] = [];
  for (const { name, from, to, acid, base } of INDICATORS) {
    const ends = first < last ? [from, to] : [to, from];
    const errors = ends.map((pH) => percentAt(Number(pH)));
    if (errors[0] === undefined || errors[1] === undefined) continue;
    const [begin, end] = errors as [number, number];
    const worst = Math.abs(begin) > Math.abs(end) ? begin : end;
    choices.push({
      name,
      from: quantity({ value: from, unit: "" }, { symbol: "pH" }),
      to: quantity({ value: to, unit: "" }, { symbol: "pH" }),
      colours: [acid, base],
      error: asPercent(worst, `error with ${name}`),
      errors: [asPercent(begin, "where the change begins"), asPercent(end, "where the change is complete")],
      fits: Math.abs(worst) <= FITS,
      size: Math.abs(begin) + Math.abs(end),
    });
  }
  choices.sort((a, b) => a.size - b.size);
  return choices.map(({ size: _, ...choice }) => choice);
}

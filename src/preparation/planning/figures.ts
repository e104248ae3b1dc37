// The figures of a plan or run as plain data: what a record keeps beside the request, so that a program without the library
// can show them, and a later release can tell which of them it computes otherwise.
import type { Quantity } from "../../quantity";
import { PlanError } from "../error";
import type { Batch } from "./batch";

/** One figure as plain data. */
export interface Figure {
  /** What the figure is of, in words. */
  readonly what: string;
  /** As printed, with its standard uncertainty. */
  readonly text: string;
  /** Decimal text, to 12 significant digits. */
  readonly value: string;
  /** Symbol of the unit of `value`; empty for a plain number. */
  readonly unit: string;
  /** In the same unit, to 4 significant digits; absent when nothing is known of it. */
  readonly standardUncertainty?: string;
}

/** A figure of a record that is computed otherwise today. */
export interface MovedFigure {
  /** What the figure is of, in words. */
  readonly what: string;
  /** As printed when the record was written; undefined for one that was not in it. */
  readonly was: string | undefined;
  /** As printed now; undefined for one that is no longer there. */
  readonly now: string | undefined;
}

const VALUE_DIGITS = 12;
const UNCERTAINTY_DIGITS = 4;

export function figure(what: string, q: Quantity): Figure {
  const u = q.standardUncertainty;
  return {
    what,
    text: q.toString(),
    value: q.value.toSignificantDigits(VALUE_DIGITS).toString(),
    unit: q.unit,
    ...(u === undefined ? {} : { standardUncertainty: u.toSignificantDigits(UNCERTAINTY_DIGITS).toString() }),
  };
}

/** What a person takes off a batch. */
export function figuresOf(batch: Batch): Figure[] {
  const { product, materialBalance, feeds, gas, vessel, heat, washing, candidates, cost } = batch;
  const wash = washing !== undefined && "plan" in washing ? washing.plan : undefined;
  const some = (what: string, q: Quantity | undefined): Figure[] => (q === undefined ? [] : [figure(what, q)]);
  return [
    ...materialBalance.supplied.flatMap((s) => some(`${s.material}: portion`, s.portion)),
    figure(`${product.name}: amount`, product.amount),
    figure(`${product.name}: theoretical yield`, product.theoreticalYield),
    ...candidates.filter((c) => !c.wanted).map((c) => figure(`theoretical yield as ${c.formula}`, c.theoreticalYield)),
    ...feeds.flatMap((f) => (f.how === "dissolve" ? some(`${f.material}: water to dissolve`, f.dissolving.water) : [])),
    ...gas.map((g) => figure(`${g.formula}: volume evolved`, g.volume)),
    ...some("vessel", vessel?.needed),
    ...("rise" in heat ? [figure("temperature rise", heat.rise.rise)] : []),
    ...(wash === undefined
      ? []
      : [
          { what: "number of washes", text: String(wash.washes), value: String(wash.washes), unit: "" },
          figure("volume of one wash", wash.washVolume),
        ]),
    ...some("cost", cost.total),
  ];
}

/** Which of the figures of a record are printed otherwise today. */
export function movedSince(stored: readonly Figure[] | undefined, now: () => readonly Figure[]): MovedFigure[] {
  if (stored === undefined) return [];
  const [before, after] = [stored, now()].map((list) => new Map(list.map(({ what, text }) => [what, text] as const)));
  return [...new Set([...before!.keys(), ...after!.keys()])]
    .map((what) => ({ what, was: before!.get(what), now: after!.get(what) }))
    .filter(({ was, now: is }) => was !== is);
}

const MOST_FIGURES = 1000;

/** The figures of a record, checked. */
export function readFigures(data: unknown): readonly Figure[] | undefined {
  if (data === undefined) return undefined;
  const isFigure = (one: unknown): one is Figure =>
    typeof one === "object" &&
    one !== null &&
    (["what", "text", "value", "unit"] as const).every((key) => typeof (one as Partial<Figure>)[key] === "string");
  if (Array.isArray(data) && data.length <= MOST_FIGURES && data.every(isFigure)) return data;
  throw new PlanError("plan.json", "the figures of the record are not a list of { what, text, value, unit }");
}

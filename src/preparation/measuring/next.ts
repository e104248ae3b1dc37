// What to measure next: the inputs of a figure ranked by what a better measurement takes off its uncertainty for the time
// it needs; and the tests that decide between the findings of a verdict, by what they tell for theirs.

import {
  type BudgetLine,
  type Decimal,
  isQuantity,
  type Quantity,
  type QuantityLike,
  quantity,
  uncertaintyBudget,
} from "../../quantity";
import { DECIDING, EACH, MEASURING, type MeasuringWay } from "../data/measuring";
import { PlanError } from "../error";
import { exact } from "../planning/exact";
import { guard } from "../request/argument";
import type { Finding, FindingCode } from "../verdict/finding";
import { informationOf } from "./information";

/** One input of a figure, and what a better measurement of it would do. */
export interface BetterMeasurement {
  /** The input as its budget line calls it. */
  readonly input: string;
  /** Part of the variance of the figure that comes from it; the shares of all inputs sum to 1. */
  readonly share: number;
  /** The better measurement; undefined where there is none at a bench: a constant of a table, or one that is as good already. */
  readonly does: string | undefined;
  /** Time it takes, for the measurement alone. */
  readonly takes: Quantity<"time"> | undefined;
  /** Standard uncertainty of the figure as it is, in the unit of the figure. */
  readonly now: Decimal;
  /** The same after the better measurement; as it is where there is none. */
  readonly then: Decimal;
  /** In words, with both uncertainties. */
  readonly text: string;
}

/** A test that decides between the findings of a verdict. */
export interface DecidingTest {
  /** What to do, in words. */
  readonly does: string;
  /** Time of the test at the bench. */
  readonly takes: Quantity<"time">;
  /** What it tells on average, in bits: 1 halves what is possible. */
  readonly bits: number;
  /** What it shows, and which findings that leaves. */
  readonly outcomes: readonly { readonly shows: string; readonly leaves: readonly FindingCode[] }[];
  /** One sentence for a person to read. */
  readonly text: string;
}

/** What the person has for measuring: the standard uncertainty it reaches (a share of the value in %, or in its unit), and the time. */
export type MeasuringMeans = Readonly<
  Partial<
    Record<
      MeasuringWay,
      { readonly reaches?: QuantityLike | undefined; readonly takes?: QuantityLike<"time"> | undefined }
    >
  >
>;

/** Below this part of the variance an input is not worth a line. */
const LEAST_SHARE = 1e-3;
/** Findings of less than this part of the best one's weight compete with nothing. */
const COMPETES = 0.5;
/** Less than this takes nothing off. */
const LEAST_BETTER = 0.999;

const MINUTE = "min";

/** What measures an input: by its dimension and unit, for what is no constant of a table. */
function wayOf({ quantity: input, source }: BudgetLine): MeasuringWay | undefined {
  if (source !== undefined) return undefined;
  const { dimension, unit, symbol } = input;
  // A spill is an estimate of what is gone, and a limit that was set is no reading.
  if (symbol?.endsWith("(lost)") === true) return undefined;
  if (symbol === "pH") return "meter";
  switch (dimension) {
    case "mass":
      return "balance";
    case "volume":
      return "glassware";
    case "temperature":
      return "thermometer";
    case "specific volume":
      return "cake";
    case "density":
      // A mass in a volume is the density of a liquid or the strength of a solution; a strength says so.
      return input.label?.startsWith("strength") === true ? "titration" : "density";
    case "concentration":
    case "mass fraction":
      return "titration";
    default:
      return unit.startsWith("%") ? "titration" : undefined;
  }
}

const shown = (u: Decimal): string => u.toSignificantDigits(2).toString();

/** Standard uncertainty of an input after the better measurement, in the unit of the input. */
function reached(input: Quantity, reaches: QuantityLike): Decimal {
  const limit = isQuantity(reaches) ? reaches : quantity(reaches);
  if (limit.dimension === "number" && input.symbol !== "pH") return input.value.abs().times(limit.in("").abs());
  // A difference of temperature counts in the degrees of the scale.
  if (input.dimension === "temperature") return limit.in("ΔK");
  return limit.in(input.unit).abs();
}

function inputsOf(figure: Quantity, means: MeasuringMeans): BetterMeasurement[] {
  const now = figure.standardUncertainty;
  if (now === undefined || now.isZero())
    throw new PlanError("plan.request", `${figure} carries no uncertainty, so that no measurement makes it better`, {
      hint: "give the inputs with their uncertainty: '96 ± 2 %', '12.5(2) g'",
    });
  const what = figure.label ?? figure.symbol ?? "the figure";
  const lines = uncertaintyBudget(figure).filter(({ share }) => share >= LEAST_SHARE);
  const found = lines.map((line) => {
    const { input, share, standardUncertainty } = line;
    const way = wayOf(line);
    const row = way === undefined ? undefined : { ...MEASURING[way], ...means[way] };
    const least = row === undefined ? standardUncertainty : reached(line.quantity, row.reaches as QuantityLike);
    const part = least.div(standardUncertainty).toNumber();
    const isBetter = row !== undefined && part < LEAST_BETTER;
    const takenOff = isBetter ? share * (1 - part * part) : 0;
    const then = isBetter ? now.times(Math.sqrt(Math.max(0, 1 - takenOff))) : now;
    const takes = isBetter ? (quantity(row.takes as QuantityLike) as Quantity<"time">) : undefined;
    const does = isBetter ? row.does.replace("{it}", input) : undefined;
    const unit = figure.unit === "" ? "" : ` ${figure.unit}`;
    const percent = `${quantity({ value: String(100 * share), unit: "%" }).format({ significant: 2 })} of the variance`;
    const gain = `u of ${what} from ${shown(now)} to ${shown(then)}${unit}`;
    const why =
      way === undefined
        ? line.source === undefined
          ? "no better way is known here"
          : "a figure of a table"
        : "as good as it gets here";
    return {
      better: {
        input,
        share,
        does,
        takes,
        now,
        then,
        text: does === undefined ? `${input} (${percent}): ${why}` : `${does}: ${gain} (${percent})`,
      },
      rank: takes === undefined ? 0 : takenOff / Math.max(takes.toNumber(MINUTE), 1e-6),
    };
  });
  return found.sort((a, b) => b.rank - a.rank || b.better.share - a.better.share).map(({ better }) => better);
}

function testsOf(findings: readonly Finding[]): DecidingTest[] {
  const most = Math.max(...findings.map(({ weight }) => weight));
  const competing = findings.filter(({ weight }) => weight >= COMPETES * most);
  const shares = competing.map(({ weight }) => weight);
  const without = new Set(findings.flatMap((one) => one.without ?? []));
  const rows = DECIDING.filter(({ needs }) => needs === undefined || !without.has(needs));
  const tests = rows.map(({ does, takes, shows, else: otherwise }) => {
    const outcomes = competing.map(({ code }, i) => {
      const outcome = shows[code] ?? otherwise;
      return outcome === EACH ? `${outcome} (${i})` : outcome;
    });
    const distinct = [...new Set(outcomes)].map((outcome) => ({
      shows: outcome.startsWith(EACH) ? EACH : outcome,
      leaves: competing.filter((_, i) => outcomes[i] === outcome).map(({ code }) => code),
    }));
    const bits = informationOf(shares, outcomes);
    const words = distinct.map((one) => `${one.shows}: ${[...new Set(one.leaves)].join(", ")}`).join("; ");
    return {
      does,
      takes: exact(takes) as Quantity<"time">,
      bits,
      outcomes: distinct,
      text: `${does} (${takes}) - ${words}`,
    };
  });
  const perMinute = ({ bits, takes }: DecidingTest): number => bits / takes.toNumber(MINUTE);
  return tests.filter(({ bits }) => bits > 1e-9).sort((a, b) => perMinute(b) - perMinute(a));
}

const isVerdict = (of: QuantityLike | readonly Finding[]): of is readonly Finding[] => Array.isArray(of);

const MEAN = { reaches: true, takes: true } as const;

const MEANS = {
  titration: true,
  balance: true,
  glassware: true,
  density: true,
  thermometer: true,
  cake: true,
  meter: true,
} as const satisfies Record<MeasuringWay, true>;

/**
 * What to measure next for a verdict: the tests that decide between its findings, by what they tell for their time.
 *
 * @param of - the verdict of a run
 * @returns the most for the least time first; none where one finding competes
 * @throws {PlanError} `plan.request` for what is no verdict
 * @source information: Shannon's entropy; what measurements reach and take: common practice
 * @category Yield
 */
export function whatToMeasureNext(of: readonly Finding[]): DecidingTest[];
/**
 * What to measure next for a figure: its inputs, by what a better measurement takes off the variance for its time.
 *
 * @param of - a quantity with uncertainty
 * @param means - what your own balance, titration, glassware, thermometer or meter reaches, and the time
 * @returns the most for the least time first; inputs below 0.1 % of the variance are left out, table constants come last without
 *   a measurement
 * @throws {PlanError} `plan.request` for a figure without uncertainty; codes of `quantity`
 * @source variances: JCGM 100:2008, 5.1; what measurements reach and take: common practice
 * @category Yield
 * @example
 * const soda = quantity("48.0 ± 0.1 g", { label: "soda taken" }).times(quantity("96 ± 4 %", { label: "assay of soda" }));
 * whatToMeasureNext(soda.to("g").named({ label: "pure soda" }))[0]!.text // => "titrate for the assay of soda, three times: u of pure soda from 1.9 to 0.29 g (100 % of the variance)"
 */
export function whatToMeasureNext(of: QuantityLike, means?: MeasuringMeans): BetterMeasurement[];
export function whatToMeasureNext(
  of: QuantityLike | readonly Finding[],
  means: MeasuringMeans = {},
): DecidingTest[] | BetterMeasurement[] {
  if (isVerdict(of)) {
    guard.list(of, "of");
    for (const [i, one] of of.entries()) {
      guard.record(one, `of[${i}]`);
      guard.text(one.code, `of[${i}].code`);
      guard.number(one.weight, `of[${i}].weight`);
    }
    return of.length === 0 ? [] : testsOf(of);
  }
  guard.fields(means, MEANS);
  for (const [way, one] of Object.entries(means)) guard.fields(one, MEAN, way);
  return inputsOf(isQuantity(of) ? of : quantity(of), means);
}

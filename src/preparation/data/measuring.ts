// What a better measurement reaches and what it costs in time: rules of thumb of the bench, to be overridden by whoever
// knows better.
import type { FindingCode, TestNeed } from "../verdict/finding";
import type { SourceKey } from "./sources";

/** A way to measure an input of a figure better. */
interface MeasuringRow {
  /** What is done; `{it}` is the input. */
  readonly does: string;
  /** Standard uncertainty it reaches: of the value itself, or a share of it. */
  readonly reaches: string;
  /** Time it takes. */
  readonly takes: string;
  readonly source: SourceKey;
}

/** Name of a way to measure. */
export type MeasuringWay = "titration" | "balance" | "glassware" | "density" | "thermometer" | "cake" | "meter";

export const MEASURING = {
  titration: { does: "titrate for the {it}, three times", reaches: "0.6 %", takes: "45 min", source: "commonPractice" },
  balance: { does: "weigh the {it} on a balance that shows 0.01 g", reaches: "0.0041 g", takes: "3 min", source: "commonPractice" },
  glassware: { does: "measure the {it} in a flask or pipette with a ring mark", reaches: "0.2 %", takes: "5 min", source: "commonPractice" },
  density: { does: "weigh a full measuring flask for the {it}", reaches: "0.2 %", takes: "10 min", source: "commonPractice" },
  thermometer: { does: "read the {it} on a thermometer with tenths", reaches: "0.1 ΔK", takes: "2 min", source: "commonPractice" },
  cake: { does: "weigh the cake wet and dry for the {it}", reaches: "3 %", takes: "5 min", source: "commonPractice" },
  meter: { does: "read the {it} with a meter set by two buffers", reaches: "0.03", takes: "10 min", source: "commonPractice" },
} as const satisfies Readonly<Record<MeasuringWay, MeasuringRow>>;

/** A test that decides between findings of a verdict. */
interface DecidingRow {
  readonly does: string;
  readonly takes: string;
  /** What it takes, where not every run has it. */
  readonly needs?: TestNeed;
  /** What it shows where a finding is true; `each` is another outcome for each such finding. */
  readonly shows: Partial<Readonly<Record<FindingCode, string>>>;
  /** What it shows where any other finding is true. */
  readonly else: string;
  readonly source: SourceKey;
}

/** What it shows where a finding is true and each such finding has its own outcome. */
export const EACH = "each its own";

export const DECIDING: readonly DecidingRow[] = [
  { does: "dry it again to constant mass, and weigh", takes: "60 min", shows: { wet: "lighter", "still-drying": "lighter" }, else: "the same", source: "commonPractice" },
  { does: "test the last wash", takes: "5 min", needs: "liquor", shows: { unwashed: "positive" }, else: "negative", source: "commonPractice" },
  { does: "wash one half again, dry it, and compare", takes: "120 min", needs: "liquor", shows: { unwashed: "lighter", wet: "lighter", "still-drying": "lighter" }, else: "the same", source: "commonPractice" },
  { does: "put a drop of the precipitant into a little filtrate", takes: "5 min", needs: "precipitant", shows: { "reagent-short": "cloudy" }, else: "clear", source: "commonPractice" },
  { does: "boil down the mother liquor for a second crop", takes: "90 min", needs: "mother liquor", shows: { "loss-explained": "crystals", wet: "crystals", "lighter-than-losses-explain": "fewer crystals", spilled: "fewer crystals" }, else: "fewer crystals", source: "commonPractice" },
  { does: "ignite a weighed sample to constant mass", takes: "90 min", needs: "product in fire", shows: { "other-hydrate-fits": EACH, "other-formula-fits": EACH, wet: "more loss", "still-drying": "more loss", unwashed: "less loss", unreacted: "another loss", "second-solid": "another loss", impure: "another loss", "mixture-fits": "a loss between" }, else: "the loss of the formula", source: "commonPractice" },
  { does: "titrate a weighed sample of the product", takes: "45 min", shows: { "other-hydrate-fits": EACH, "other-formula-fits": EACH, wet: "less than pure", "still-drying": "less than pure", unwashed: "less than pure", "second-solid": "less than pure", impure: "less than pure", unreacted: "another share", "mixture-fits": "another share" }, else: "pure", source: "commonPractice" },
  { does: "heat a weighed sample of the starting material", takes: "60 min", needs: "materials in fire", shows: { "hydrate-mix-up": EACH }, else: "the loss of its form", source: "commonPractice" },
  { does: "titrate the materials", takes: "45 min", shows: { "reagent-short": EACH, "hydrate-mix-up": EACH }, else: "as taken", source: "commonPractice" },
  { does: "weigh it on a finer balance", takes: "3 min", shows: { "balance-too-coarse": "another mass" }, else: "the same", source: "commonPractice" },
  { does: "read the pH of the liquor again with a meter", takes: "10 min", needs: "liquor", shows: { "liquor-ph": "as read", "reagent-short": "acid" }, else: "as planned", source: "commonPractice" },
];

// A sample that is no single candidate: candidate with something inert, half fired already, fire not done yet, two candidates
// together. Each has one unknown share, determined by loss and acid together, with its uncertainty.
import type { Formula } from "../../formula";
import { type Quantity, quantity } from "../../quantity";
import { COVERAGE } from "../verdict/difference";
import { acidPerGramOf } from "./ignition";

/** What a sample of two parts may be. */
export type SampleMixtureKind = "with something inert" | "fired in part already" | "fire not done yet" | "two solids";

/** A sample of two parts, with the share that fits the tests. */
export interface SampleMixture {
  /** What the two parts are. */
  readonly kind: SampleMixtureKind;
  /** The candidate; for two solids both, the share is that of the first. */
  readonly formulas: readonly string[];
  /** Part of the sample that is the first formula; for a fire that is not done, the part of it that is done. */
  readonly share: Quantity<"number">;
  /** Standard uncertainties by which loss and acid disagree about the share; undefined with one test. */
  readonly off: number | undefined;
  /** Part of the likelihood of all mixtures, every share equally likely beforehand; 0 to 1. */
  readonly likelihood: number;
  /** One sentence for a person to read. */
  readonly text: string;
}

/** A candidate with its figures. */
interface Component {
  readonly name: string;
  readonly residue: Formula;
  readonly loss: Quantity;
  /** Acid per gram; undefined where it cannot be calculated. */
  readonly acid: Quantity | undefined;
}

/** A test of the sample. */
interface Found {
  readonly value: Quantity;
  /** Standard uncertainty in the unit of the value. */
  readonly u: number;
}

/** What both ends of a mixture would show in one test. */
interface Ends {
  readonly found: Found;
  readonly first: Quantity;
  readonly second: Quantity;
}

/** A share of this little, either way, is no second part. */
const LEAST_PART = 0.005;

interface Fit {
  readonly share: number;
  readonly spread: number;
  readonly square: number;
  readonly parts: readonly { readonly test: Ends; readonly weight: number }[];
}

/** The share that fits all tests best: each test is linear in it. */
function fitted(tests: readonly Ends[], constant: number): Fit | undefined {
  const read = tests.map((test) => {
    const { unit } = test.found.value;
    const [found, first, second] = [test.found.value, test.first, test.second].map((q) => q.toNumber(unit));
    return { test, found: found!, second: second!, slope: first! - second!, u: test.found.u };
  });
  const information = read.reduce((s, { slope, u }) => s + (slope / u) ** 2, 0);
  if (information === 0) return undefined;
  const share =
    read.reduce((s, { found, second, slope, u }) => s + (slope * (found - second)) / u ** 2, 0) / information;
  const square = read.reduce(
    (s, { found, second, slope, u }) => s + ((found - second - slope * share) / u) ** 2,
    constant,
  );
  const parts = read.map(({ test, slope, u }) => ({ test, weight: (slope / u) ** 2 / information }));
  return { share, spread: 1 / Math.sqrt(information), square, parts };
}

/** The fitted share as a quantity, made from the tests it rests on. */
function shareOf({ parts }: Fit, symbol: string): Quantity<"number"> {
  const used = parts.filter(({ weight }) => weight > 0);
  return used
    .map(({ test: { found, first, second }, weight }) =>
      found.value
        .minus(second)
        .dividedBy(first.minus(second))
        .times(quantity(String(weight))),
    )
    .reduce((a, b) => a.plus(b))
    .to("%")
    .named({
      symbol: `w(${symbol})`,
      label: `share of ${symbol}`,
      rule: "(found - other) / (one - other), weighted by what each test shows",
    }) as Quantity<"number">;
}

interface Judged {
  readonly kind: SampleMixtureKind;
  readonly formulas: readonly string[];
  readonly fit: Fit;
  readonly tests: number;
}

const words = ({ kind, formulas: [one, other] }: Judged, share: string): string =>
  ({
    "with something inert": `${share} of ${one}, the rest loses nothing and neutralises no acid`,
    "fired in part already": `${share} of ${one}, the rest is what fire leaves of it`,
    "fire not done yet": `all of it ${one}, of which ${share} is fired so far`,
    "two solids": `${share} of ${one} with ${other}`,
  })[kind];

/** Every mixture that the tests allow, the likeliest first. */
export function mixturesOf(
  components: readonly Component[],
  loss: Found | undefined,
  acid: Found | undefined,
): SampleMixture[] {
  const nothing = (like: Quantity): Quantity => quantity({ value: "0", unit: like.unit });
  /** Tests of a mixture; undefined where acid was measured and one part has an acid nobody can calculate. */
  const testsOf = (first: Component, second: { loss: Quantity; acid: Quantity | undefined }): Ends[] | undefined => {
    const byLoss = loss === undefined ? [] : [{ found: loss, first: first.loss, second: second.loss }];
    if (acid === undefined) return byLoss;
    if (first.acid === undefined || second.acid === undefined) return undefined;
    return [...byLoss, { found: acid, first: first.acid, second: second.acid }];
  };
  const judged: Judged[] = [];
  const judge = (
    kind: SampleMixtureKind,
    formulas: readonly string[],
    tests: readonly Ends[] | undefined,
    constant = 0,
  ): void => {
    const fit = tests === undefined ? undefined : fitted(tests, constant);
    if (fit === undefined || tests === undefined) return;
    // Nothing of one part within the uncertainty is a single solid.
    const least = LEAST_PART;
    if (fit.share < least || fit.share > 1 - least) return;
    const count = tests.length + (constant > 0 ? 1 : 0);
    if (count > 1 && Math.sqrt(fit.square) > COVERAGE) return;
    judged.push({ kind, formulas, fit, tests: count });
  };
  components.forEach((one, i) => {
    const none = { loss: nothing(one.loss), acid: quantity("0 mmol/g") };
    judge("with something inert", [one.name], testsOf(one, none));
    const left = acidPerGramOf(one.residue) ?? (acid === undefined ? none.acid : undefined);
    judge("fired in part already", [one.name], testsOf(one, { loss: none.loss, acid: left }));
    if (loss !== undefined) {
      // The sample was all there when it was titrated: acid tells whether it was.
      const asIs =
        acid === undefined || one.acid === undefined
          ? undefined
          : acid.value.minus(one.acid).toNumber(acid.value.unit) / acid.u;
      if (acid === undefined || asIs !== undefined)
        judge("fire not done yet", [one.name], [{ found: loss, first: one.loss, second: none.loss }], (asIs ?? 0) ** 2);
    }
    for (const other of components.slice(i + 1)) judge("two solids", [one.name, other.name], testsOf(one, other));
  });
  const weights = judged.map(({ fit }) => Math.exp(-fit.square / 2) * fit.spread);
  const total = weights.reduce((a, b) => a + b, 0);
  return judged
    .map((one, i): SampleMixture => {
      const share = shareOf(one.fit, one.formulas[0]!);
      return {
        kind: one.kind,
        formulas: one.formulas,
        share,
        off: one.tests > 1 ? Math.sqrt(one.fit.square) : undefined,
        likelihood: weights[i]! / total,
        text: words(one, String(share)),
      };
    })
    .sort((a, b) => b.likelihood - a.likelihood);
}

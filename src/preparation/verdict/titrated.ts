// What a titration of the product says: how pure it is, and how likely another form of the same metal.

import type { Quantity } from "../../quantity";
import type { Batch } from "../planning/batch";
import { exact, lessThanAll, planned } from "../planning/exact";
import { belief, clearlyAbove, likelihoodOf, likelihoodWithin, percent } from "./difference";
import type { Evidence } from "./evidence";
import type { Finding } from "./finding";
import type { Observed } from "./observations";
import type { Standing } from "./seen";

/** Pure product in the dry mass; undefined where it was not titrated. */
export function pureIn({ product }: Batch, { dry, assay }: Observed): Quantity<"mass"> | undefined {
  if (dry === undefined || assay === undefined) return undefined;
  const pure = dry.times(assay).to("g");
  const label = `pure ${product.name}`;
  return pure.named({ symbol: "m(pure)", label, rule: "dry mass × assay" }) as Quantity<"mass">;
}

/** Likelihood of what a titration of the product found, if all of it were another form of the same metal. */
export const assayLikelihood = ({ batch, observed: { assay } }: Evidence, theory: Quantity): number | undefined =>
  assay === undefined ? undefined : likelihoodOf(assay, batch.product.theoreticalYield.dividedBy(theory));

/** Does the titration contradict a pure product? */
export const isOffPure = ({ observed: { assay } }: Evidence): boolean =>
  assay !== undefined && (clearlyAbove(exact("1"), assay) || clearlyAbove(assay, exact("1")));

/** Is what a titration found so far from pure that it is worth a word, sure or not? */
export const isApart = (assay: Quantity): boolean =>
  assay.compare(lessThanAll(planned("impure"))) <= 0 || assay.compare(exact("1").plus(planned("impure"))) >= 0;

/** A product that a titration finds not to be pure. */
export function impure(evidence: Evidence, standing: Standing): Finding[] {
  const { batch, dry, expected, grams, observed } = evidence;
  const { assay } = observed;
  if (assay === undefined || !isApart(assay)) return [];
  // A titration that pure product would give as well accuses nobody.
  const sure = isOffPure(evidence) ? 1 : belief("inPart");
  const { formula, theoreticalYield } = batch.product;
  const rest = lessThanAll(assay);
  if (!rest.isPositive())
    return [
      {
        code: "impure",
        text: `titration finds ${percent(assay)} of ${formula}, more than pure: a form with less water, or the titration is off`,
        mass: undefined,
        figure: assay.to("%"),
        likelihood: undefined,
        weight: sure * belief("overPure"),
        next: "heat a weighed sample, and titrate again",
      },
    ];
  const pure = dry.times(assay).to("g");
  const other = dry.minus(pure).to("g");
  return [
    {
      code: "impure",
      text: `by titration ${percent(assay)} is ${formula}: ${grams(pure)} of it, ${percent(pure.dividedBy(theoreticalYield))} of the theory; ${grams(other)} is something else`,
      mass: other,
      figure: assay.to("%"),
      likelihood: likelihoodWithin(pure, exact("0 g"), expected),
      weight:
        sure *
        belief(
          standing === "fits"
            ? "seen"
            : standing === "light"
              ? "impure"
              : clearlyAbove(pure, expected)
                ? "impureHeavyElse"
                : "impureHeavy",
        ),
      next: "dry to constant mass and test the last wash: it is water or salts as a rule",
    },
  ];
}

// Reading a dry mass: which formula it fits, and if it fits none, whether it is too heavy or too light and by how much.
// The trade's order of causes above theory: wet, unwashed, another formula or hydrate (bench practice, own arithmetic).
import { type Quantity, quantity } from "../quantity";
import type { batchOf } from "./plan";

type Batch = ReturnType<typeof batchOf>;

/** What a verdict says, as a stable code. */
export type FindingCode =
  | "consistent"
  | "other-formula-fits"
  | "too-heavy"
  | "wet"
  | "unwashed"
  | "lighter-than-losses-explain"
  | "loss-explained"
  | "balance-too-coarse";

/** One explanation with its numbers; findings are ordered by how well they fit. */
export interface Finding {
  readonly code: FindingCode;
  readonly text: string;
  /** The mass the finding is about: water, salt, loss; undefined when none is. */
  readonly mass: Quantity<"mass"> | undefined;
  /** What to do next to decide. */
  readonly next: string;
}

/** A yield against one formula. */
export interface Yield {
  readonly formula: string;
  readonly wanted: boolean;
  readonly theoreticalYield: Quantity<"mass">;
  /** Mass found over mass expected, with its uncertainty. */
  readonly percentYield: Quantity;
}

/** Standard uncertainties a difference must exceed to be called one (coverage factor 2, JCGM 100:2008, 6.3.3). */
const COVERAGE = 2;

const grams = (q: Quantity): string => q.to("g").format({ significant: 3 });

/** Is a above b by more than twice the uncertainty of their difference? */
function clearlyAbove(a: Quantity, b: Quantity): boolean {
  const difference = a.minus(b);
  return difference.value.greaterThan(difference.standardUncertainty?.times(COVERAGE) ?? 0);
}

export function yieldsOf(batch: Batch, dry: Quantity): Yield[] {
  return batch.candidates.map(({ formula, wanted, theoreticalYield }) => ({
    formula,
    wanted,
    theoreticalYield,
    percentYield: dry
      .dividedBy(theoreticalYield)
      .to("%")
      .named({
        symbol: `yield(${formula})`,
        label: `yield if it is ${formula}`,
        rule: "percent yield = dry mass / theoretical yield",
      }),
  }));
}

/** The least dry mass that solubility and handling explain. */
export function leastExplained(
  batch: Batch,
  handlingLoss: Quantity,
): { least: Quantity; dissolved: Quantity | undefined } {
  const { theoreticalYield } = batch.product;
  const lost = batch.washing !== undefined && "plan" in batch.washing ? batch.washing.plan.productLost : undefined;
  const afterHandling = theoreticalYield.minus(theoreticalYield.times(handlingLoss));
  return { least: lost === undefined ? afterHandling : afterHandling.minus(lost), dissolved: lost };
}

export function findingsFor(batch: Batch, dry: Quantity, handlingLoss: Quantity): Finding[] {
  const { theoreticalYield, formula } = batch.product;
  const findings: Finding[] = [];
  const u = dry.standardUncertainty;
  if (u?.times(COVERAGE).greaterThan(dry.value.times("0.05"))) {
    findings.push({
      code: "balance-too-coarse",
      text: `the balance is too coarse for ${grams(dry)}: its uncertainty alone is ${u.times(100).div(dry.value).toFixed(0)} %`,
      mass: u.isZero() ? undefined : (quantity({ value: u, unit: dry.unit }) as Quantity<"mass">),
      next: "weigh on a finer balance, or make a larger batch",
    });
  }
  const { least, dissolved } = leastExplained(batch, handlingLoss);
  const heavy = clearlyAbove(dry, theoreticalYield);
  const light = clearlyAbove(least, dry);
  const heaviest = batch.candidates.reduce((a, b) => (b.theoreticalYield.compare(a.theoreticalYield) > 0 ? b : a));
  if (heavy) {
    const over = dry.minus(theoreticalYield).to("g");
    for (const candidate of batch.candidates) {
      if (candidate.wanted || clearlyAbove(dry, candidate.theoreticalYield)) continue;
      const ratio = dry.dividedBy(candidate.theoreticalYield).to("%");
      if (ratio.compare(quantity("1").minus(handlingLoss)) < 0) continue;
      findings.push({
        code: "other-formula-fits",
        text: `${grams(dry)} is ${ratio.format({ significant: 3 })} of the theory for ${candidate.formula}, and more than ${formula} can give`,
        mass: undefined,
        next: "ignite a weighed sample: the loss tells the formulas apart",
      });
    }
    if (clearlyAbove(dry, heaviest.theoreticalYield)) {
      const beyond = dry.minus(heaviest.theoreticalYield).to("g");
      findings.unshift({
        code: "too-heavy",
        text: `${grams(dry)} is too heavy for any formula considered: ${grams(over)} more than ${formula} can give${heaviest.wanted ? "" : ` and ${grams(beyond)} more than ${heaviest.formula}`}`,
        mass: over,
        next: "dry again to constant mass; if it stays, wash one half again and dry that",
      });
    }
    findings.push({
      code: "wet",
      text: `${grams(over)} of water left in it would explain the mass`,
      mass: over,
      next: "dry again to constant mass",
    });
    if (batch.washing !== undefined && "plan" in batch.washing) {
      const { residueUnwashed } = batch.washing.plan;
      const share = over.dividedBy(residueUnwashed);
      const washedWell = share.compare("1") > 0;
      findings.push({
        code: "unwashed",
        text: washedWell
          ? `salts explain at most ${grams(residueUnwashed)} of the ${grams(over)} too much, even in an unwashed cake`
          : `${grams(over)} of ${batch.washing.salts.join(" and ")} would explain it: ${share.to("%").format({ significant: 2 })} of what an unwashed cake holds`,
        mass: washedWell ? residueUnwashed : over,
        next: "wash one half again, dry it, and compare",
      });
    }
    return findings;
  }
  if (light) {
    const missing = least.minus(dry).to("g");
    findings.push({
      code: "lighter-than-losses-explain",
      text: `${grams(dry)} is ${grams(missing)} less than ${dissolved === undefined ? "handling explains" : "handling and washing explain"} (at least ${grams(least)} expected)`,
      mass: missing,
      next: "test the filtrate for more product, and the limiting material for its assay",
    });
    return findings;
  }
  const lost = theoreticalYield.minus(dry).to("g");
  findings.push({
    code: "consistent",
    text: `${grams(dry)} is what ${formula} should give, allowing for handling`,
    mass: undefined,
    next: "ignite a sample if the formula matters",
  });
  if (lost.isPositive() && clearlyAbove(theoreticalYield, dry)) {
    findings.push({
      code: "loss-explained",
      text: `${grams(lost)} stayed behind, within the ${handlingLoss.to("%").format({ significant: 2 })} allowed for handling`,
      mass: lost,
      next: "rinse filter and vessel into the next batch",
    });
  }
  return findings;
}

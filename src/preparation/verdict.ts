// Reading a dry mass: every explanation that the numbers allow, with its figure, ordered by how well it fits, and what to
// do next to decide. The trade's order of causes stands behind the weights (bench practice; common practice, no source).
import { type Quantity, quantity } from "../quantity";
import type { Batch } from "./batch";
import type { Dryness } from "./dryness";
import { asMassOfWater, asVolumeOfWater, exact, lessThanAll, planned } from "./exact";
import { explanationsOfMixUp } from "./explanations";
import { keptByWater } from "./fate";
import type { Identity } from "./identity";
import type { Observed } from "./observations";

/** What a verdict says, as a stable code. */
export type FindingCode =
  | "consistent"
  | "still-drying"
  | "wet"
  | "unwashed"
  | "other-hydrate-fits"
  | "other-formula-fits"
  | "hydrate-mix-up"
  | "reagent-short"
  | "too-heavy"
  | "loss-explained"
  | "lighter-than-losses-explain"
  | "balance-too-coarse";

/** One explanation with its numbers; findings are ordered by how well they fit. */
export interface Finding {
  readonly code: FindingCode;
  readonly text: string;
  /** The mass the finding is about: water, salt, loss; undefined when none is. */
  readonly mass: Quantity<"mass"> | undefined;
  /** Another figure behind it: a ratio, a yield. */
  readonly figure: Quantity | undefined;
  /** How well it fits, 0 to 1: what findings are ordered by. Not a probability. */
  readonly weight: number;
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

/** What the verdict is made from. */
export interface Evidence {
  readonly batch: Batch;
  readonly observed: Observed;
  readonly dry: Quantity;
  readonly dryness: Dryness;
  readonly identity: Identity | undefined;
  readonly handlingLoss: Quantity;
  /** Material the plan expected to run out. */
  readonly plannedLimiting: string;
}

/** Standard uncertainties a difference must exceed to be called one (coverage factor 2, JCGM 100:2008, 6.3.3). */
const COVERAGE = 2;

const grams = (q: Quantity): string => q.to("g").format({ significant: 3, uncertainty: "none" });
const percent = (q: Quantity, figures = 3): string => q.to("%").format({ significant: figures, uncertainty: "none" });

/** Is a above b by more than twice the uncertainty of their difference? */
function clearlyAbove(a: Quantity, b: Quantity): boolean {
  const difference = a.minus(b);
  if (!difference.isPositive()) return false;
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

/** What stays in the liquor: from the filtrate that was measured, else from the washing as planned. */
function keptByLiquor({ batch, observed }: Evidence): Quantity | undefined {
  const { product, temperature } = observed.setting;
  const volume = observed.filtrateVolume;
  if (volume !== undefined) {
    return keptByWater(product.formula, asMassOfWater(volume), temperature);
  }
  const washed = batch.washing !== undefined && "plan" in batch.washing ? batch.washing.plan.productLost : undefined;
  const completeness = batch.completeness;
  const inLiquor = completeness !== undefined && "dissolved" in completeness ? completeness.dissolved : undefined;
  if (washed === undefined || inLiquor === undefined) return washed ?? inLiquor;
  return washed.plus(inLiquor);
}

/** The least dry mass that solubility and handling explain. */
function leastExplained(evidence: Evidence): { least: Quantity; kept: Quantity | undefined } {
  const { theoreticalYield } = evidence.batch.product;
  const kept = keptByLiquor(evidence);
  const afterHandling = theoreticalYield.minus(theoreticalYield.times(evidence.handlingLoss));
  return { least: kept === undefined ? afterHandling : afterHandling.minus(kept), kept };
}

function coarse({ dry }: Evidence): Finding[] {
  const u = dry.standardUncertainty;
  if (!u?.times(COVERAGE).greaterThan(dry.value.times("0.05"))) return [];
  return [
    {
      code: "balance-too-coarse",
      text: `the balance is too coarse for ${grams(dry)}: its uncertainty alone is ${u.times(100).div(dry.value).toFixed(0)} %`,
      mass: quantity({ value: u, unit: dry.unit }) as Quantity<"mass">,
      figure: undefined,
      weight: 0.55,
      next: "weigh on a finer balance, or make a larger batch",
    },
  ];
}

function drying({ dryness, dry }: Evidence): Finding[] {
  if (dryness.state !== "still drying") return [];
  const goes =
    dryness.endsAt === undefined
      ? ""
      : `; it goes to about ${grams(dryness.endsAt)}, ${grams(dryness.nextExpected!)} at the next weighing`;
  return [
    {
      code: "still-drying",
      text: `${grams(dry)} is not constant: the last drying took ${grams(dryness.lastLoss!)}, more than ${grams(dryness.criterion!)}${goes}`,
      mass: dryness.waterLeft ?? dryness.lastLoss,
      figure: undefined,
      weight: 0.98,
      next: "dry on to constant mass before anything is read from the yield",
    },
  ];
}

/** A mass this much over a theory is over it, where the balance is good to a few percent. */
const FAR_ABOVE = "130 %";
const isCoarse = (dry: Quantity): boolean => dry.standardUncertainty?.greaterThan(dry.value.times("0.05")) ?? false;

/** Other formulas for the same metal whose theory covers the mass, handling allowed for. */
function formulas(evidence: Evidence): Finding[] {
  const { batch, dry, handlingLoss, identity, observed } = evidence;
  const wantedSolid = observed.setting.product.formula;
  return batch.candidates.flatMap((candidate): Finding[] => {
    if (candidate.wanted) return [];
    const ratio = dry.dividedBy(candidate.theoreticalYield).to("%");
    // Far above in round figures is clearly above: uncertainties are worked out only near the line.
    if (ratio.compare(exact(FAR_ABOVE)) > 0 && !isCoarse(dry)) return [];
    if (clearlyAbove(dry, candidate.theoreticalYield)) return [];
    if (ratio.compare(lessThanAll(handlingLoss)) < 0) return [];
    const share = identity?.candidates.find((c) => c.formula === candidate.formula)?.share;
    const hydrate = candidate.formula.split("·")[0] === wantedSolid.toUnicode().split("·")[0];
    const byLoss = share === undefined ? "" : `; by ignition ${(100 * share).toFixed(0)} % likely`;
    return [
      {
        code: hydrate ? "other-hydrate-fits" : "other-formula-fits",
        text: `${grams(dry)} is ${percent(ratio)} of the theory for ${candidate.formula}${byLoss}`,
        mass: candidate.theoreticalYield,
        figure: ratio,
        weight: share === undefined ? 0.8 : identity?.verdict === "none fits" ? 0.3 : 0.1 + 0.9 * share,
        next:
          identity === undefined
            ? "ignite a weighed sample: the loss tells the formulas apart"
            : "titrate a weighed sample with acid to confirm it",
      },
    ];
  });
}

/** Water or salt that would make up what is too much. */
function tooMuch({ batch, dry, dryness, observed, identity }: Evidence): Finding[] {
  const { theoreticalYield, formula } = batch.product;
  const over = dry
    .minus(theoreticalYield)
    .to("g")
    .named({ symbol: "m(over)", label: `mass over the theory of ${formula}` });
  const share = over.dividedBy(theoreticalYield);
  const inBand = share.compare(exact("2 %")) >= 0 && share.compare(exact("25 %")) <= 0;
  const findings: Finding[] = [];
  const heaviest = batch.candidates.reduce((a, b) => (b.theoreticalYield.compare(a.theoreticalYield) > 0 ? b : a));
  if (clearlyAbove(dry, heaviest.theoreticalYield)) {
    const beyond = dry.minus(heaviest.theoreticalYield).to("g");
    findings.push({
      code: "too-heavy",
      text: `${grams(dry)} is too heavy for any formula considered: ${grams(over)} more than ${formula} can give${heaviest.wanted ? "" : ` and ${grams(beyond)} more than ${heaviest.formula}`}`,
      mass: over,
      figure: dry.dividedBy(theoreticalYield).to("%"),
      weight: 0.95,
      next: "dry again to constant mass; if it stays, wash one half again and dry that",
    });
  }
  // Ignition that allows the formula tells the water beside it: the two must agree.
  const own = identity?.candidates.find((c) => c.formula === formula && c.fits);
  const water = own?.water.minus(over.dividedBy(dry)).in("%").abs();
  const found = water?.lessThan(planned("sameWater").in("%"))
    ? `; ignition finds ${percent(own!.water, 2)} of water, as this asks for`
    : "";
  findings.push({
    code: "wet",
    text: `${grams(over)} of water left in it would explain the mass${dryness.constant === true ? ", but it is at constant mass" : ""}${found}`,
    mass: over,
    figure: over.dividedBy(dry).to("%"),
    weight: found !== "" ? 0.9 : dryness.constant === true ? 0.2 : inBand ? 0.6 : 0.4,
    next: "dry again to constant mass",
  });
  const { washing } = batch;
  if (washing !== undefined && "plan" in washing) {
    const { plan, salts } = washing;
    const done = observed.washes ?? 0;
    // Unwashed unless the washes are recorded; the cake's own liquor where it was weighed wet.
    const measured = wetCakeSalt(observed, washing, dry);
    const most = (
      done === 0
        ? (measured ?? plan.residueUnwashed)
        : (plan.residueAfter[Math.min(done, plan.residueAfter.length) - 1] ?? plan.residueUnwashed)
    ) as Quantity;
    const part = over.dividedBy(most);
    const enough = part.compare(exact("1")) <= 0;
    const state = done === 0 ? "an unwashed cake" : `a cake washed ${done} times`;
    findings.push({
      code: "unwashed",
      text: enough
        ? `${grams(over)} of ${salts.join(" and ")} would explain it: ${percent(part, 2)} of what ${state} holds`
        : `salts explain at most ${grams(most)} of the ${grams(over)} too much, even in ${state}`,
      mass: enough ? over : most,
      figure: part.to("%"),
      weight: enough ? (inBand ? 0.6 : 0.45) : 0.15,
      next: "wash one half again, dry it, and compare",
    });
  }
  return findings;
}

/** Salt in the liquor that the wet cake really held. */
function wetCakeSalt(
  observed: Observed,
  washing: Extract<Batch["washing"], { plan: unknown }>,
  dry: Quantity,
): Quantity | undefined {
  const { wetCake } = observed;
  if (wetCake === undefined || wetCake.compare(dry) <= 0) return undefined;
  const { plan } = washing;
  const volume = asVolumeOfWater(wetCake.minus(dry));
  return plan.residueUnwashed.times(volume).dividedBy(plan.retainedVolume).to("g");
}

function tooLittle(evidence: Evidence, least: Quantity, kept: Quantity | undefined): Finding[] {
  const { batch, dry, plannedLimiting } = evidence;
  const { account, product } = batch;
  const missing = least.minus(dry).to("g");
  const ratio = dry.dividedBy(product.theoreticalYield);
  const findings: Finding[] = [
    {
      code: "lighter-than-losses-explain",
      text: `${grams(dry)} is ${grams(missing)} less than ${kept === undefined ? "handling explains" : "handling, liquor and washing explain"} (at least ${grams(least)} expected)`,
      mass: missing,
      figure: ratio.to("%"),
      weight: 0.85,
      next: "test the filtrate for more product, and the limiting material for its assay",
    },
  ];
  for (const supplied of account.supplied) {
    // What of this material would have to be active for the mass found, all else being right.
    const active = ratio.dividedBy(supplied.timesStoichiometric).to("%");
    const out = account.limiting === supplied.material;
    findings.push({
      code: "reagent-short",
      text: `it would fit if only ${percent(active, 2)} of the ${supplied.material} was active${out && out !== (plannedLimiting === supplied.material) ? ": it ran out first, not as planned" : ""}`,
      mass: undefined,
      figure: active,
      weight: supplied.limiting ? 0.5 : 0.35,
      next: `titrate the ${supplied.material}, or test the filtrate with a drop of it`,
    });
  }
  return findings;
}

function fits(evidence: Evidence, kept: Quantity | undefined): Finding[] {
  const { batch, dry, handlingLoss, identity } = evidence;
  const { theoreticalYield, formula } = batch.product;
  const lost = theoreticalYield.minus(dry).to("g");
  const told = identity?.verdict === "told" ? identity.remaining[0] : undefined;
  const byLoss = told === undefined ? "" : told === formula ? ", and ignition agrees" : `, but ignition says ${told}`;
  const findings: Finding[] = [
    {
      code: "consistent",
      text: `${grams(dry)} is what ${formula} should give, allowing for handling${byLoss}`,
      mass: undefined,
      figure: dry.dividedBy(theoreticalYield).to("%"),
      weight: told === undefined || told === formula ? 1 : 0.3,
      next: identity === undefined ? "ignite a sample if the formula matters" : "nothing more is needed",
    },
  ];
  if (lost.isPositive() && clearlyAbove(theoreticalYield, dry)) {
    const liquor = kept === undefined ? "" : `; liquor and washing keep at most ${grams(kept)} of it`;
    findings.push({
      code: "loss-explained",
      text: `${grams(lost)} stayed behind, within the ${percent(handlingLoss, 2)} allowed for handling${liquor}`,
      mass: lost,
      figure: lost.dividedBy(theoreticalYield).to("%"),
      weight: 0.7,
      next: "rinse filter and vessel into the next batch",
    });
  }
  return findings;
}

export function findingsFor(evidence: Evidence): Finding[] {
  const { batch, dry } = evidence;
  const { theoreticalYield } = batch.product;
  const { least, kept } = leastExplained(evidence);
  const heavy = clearlyAbove(dry, theoreticalYield);
  const light = clearlyAbove(least, dry);
  const findings = [...coarse(evidence), ...drying(evidence)];
  if (heavy) findings.push(...formulas(evidence), ...explanationsOfMixUp(evidence), ...tooMuch(evidence));
  else if (light) {
    findings.push(...tooLittle(evidence, least, kept), ...formulas(evidence), ...explanationsOfMixUp(evidence));
  } else {
    findings.push(...fits(evidence, kept));
    // Ignition that says otherwise brings the other formulas back.
    if (evidence.identity?.verdict === "told" && evidence.identity.remaining[0] !== batch.product.formula)
      findings.push(...formulas(evidence));
  }
  return findings.sort((a, b) => b.weight - a.weight);
}

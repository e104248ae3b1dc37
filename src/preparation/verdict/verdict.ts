// Reading a dry mass: every explanation that the numbers allow, with its figure, ordered by how well it fits, and what to
// do next to decide. A weight is the likelihood of the figures, from their uncertainties, times the belief of the table.

import { list } from "../../foundation/wording";
import { type Quantity, quantity } from "../../quantity";
import { mayIgnite } from "../identity/by-ignition";
import { residueOf } from "../identity/ignition";
import type { Identity } from "../identity/types";
import type { Batch } from "../planning/batch";
import { exact, lessThanAll, planned } from "../planning/exact";
import { gainOf } from "../planning/gain";
import { mayLeaveCrucible, standsBesideInCrucible, staysInCrucible, usuallyWater } from "../planning/in-the-crucible";
import { handOf, type Instruments } from "../procedure/words";
import { saltsOfWork } from "./along";
import { belief, clearlyAbove, isTooCoarse } from "./difference";
import { type Evidence, leastExplained, mostExplained, othersByFire } from "./evidence";
import { explanationsOfMixUp } from "./explanations";
import type { Finding, FindingCode, TestNeed, Yield } from "./finding";
import { tooMuch } from "./heavy";
import { fits, ranShort, tooLittle } from "./light";
import { liquorOff } from "./liquor-ph";
import { mixturesThatFit } from "./mixtures";
import { unreacted } from "./not-reacted";
import { exactHits, lostInDrying, otherFormulas } from "./other-forms";
import { overheated } from "./overheated";
import { onlyWithoutWater } from "./rest-of-pack";
import { isRich, tooRich } from "./rich";
import { knownUnwashed, type Standing, shortBySight, spilled } from "./seen";
import { impure, isApart } from "./titrated";

export function yieldsOf(batch: Batch, dry: Quantity): Yield[] {
  const beside = standsBesideInCrucible(batch);
  const rule = "percent yield = dry mass / theoretical yield";
  const [own, by] = !beside.isPositive()
    ? [dry, rule]
    : [
        dry.compare(beside) > 0 ? dry.minus(beside) : exact("0 g"),
        "percent yield = (dry mass - what stands beside it) / theoretical yield",
      ];
  return batch.candidates.map(({ formula, key, wanted, theoreticalYield }) => ({
    formula,
    key,
    wanted,
    theoreticalYield,
    percentYield: own
      .dividedBy(theoreticalYield)
      .to("%")
      .named({
        symbol: `yield(${formula})`,
        label: `yield if it is ${formula}`,
        rule: by,
      }),
  }));
}

function coarse({ dry, grams }: Evidence): Finding[] {
  const u = dry.standardUncertainty;
  if (u === undefined || !isTooCoarse(dry)) return [];
  return [
    {
      code: "balance-too-coarse",
      text: `the balance is too coarse for ${grams(dry)}: its uncertainty alone is ${u.times(100).div(dry.value).toFixed(0)} %`,
      mass: quantity({ value: u, unit: dry.unit }) as Quantity<"mass">,
      figure: undefined,
      likelihood: undefined,
      weight: belief("coarse"),
      next: "weigh on a finer balance, or make a larger batch",
    },
  ];
}

function drying({ batch, dryness, dry, grams, handlingLoss }: Evidence, standing: Standing): Finding[] {
  const isGaining = dryness.state === "gaining" && gainOf(batch, handlingLoss) !== undefined;
  if (isGaining)
    return [
      {
        code: "still-drying",
        text: `${grams(dry)} is not constant: the last firing added ${grams(dryness.lastLoss!.negated())}, more than ${grams(dryness.criterion!)}`,
        mass: undefined,
        figure: undefined,
        likelihood: undefined,
        weight: belief("stillFalling"),
        next: "fire again to constant mass before anything is read from the yield",
      },
    ];
  if (dryness.state !== "still drying") return [];
  // Less water than dry powders hold, in a mass that is too small already: what is missing has another cause.
  const isLittle = standing === "light" && dryness.lastLoss!.compare(dry.times(planned("dryHolds"))) <= 0;
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
      likelihood: undefined,
      weight: belief(isLittle ? "nearlyDry" : "stillFalling"),
      next: "dry on to constant mass before anything is read from the yield",
    },
  ];
}

/** Nothing was weighed dry yet: what is to be expected, and what else was found. */
export function notWeighed(
  batch: Batch,
  identity: Identity | undefined,
  handlingLoss: Quantity,
  expected: Quantity,
  steps: Instruments,
): Finding[] {
  const { formula } = batch.product;
  const { grams } = handOf(steps, batch.isolation.how === "residue");
  const all = expected.plus(staysInCrucible(batch));
  const least = all.minus(mayLeaveCrucible(batch)).times(lessThanAll(handlingLoss));
  const most = all.minus(usuallyWater(batch));
  const byLoss =
    identity === undefined
      ? ""
      : identity.remaining.length === 0
        ? "; ignition fits none of the formulas considered"
        : `; ignition leaves ${list(identity.remaining, "or")}`;
  return [
    {
      code: "not-weighed",
      text: `no dry mass is recorded: ${grams(least)} to ${grams(most)} of ${formula} is to be expected${byLoss}`,
      mass: expected as Quantity<"mass">,
      figure: undefined,
      likelihood: undefined,
      weight: 1,
      next: "dry to constant mass and weigh",
    },
  ];
}

export function findingsFor(evidence: Evidence): Finding[] {
  const { dry, expected, identity } = evidence;
  // All of it was lost, by the record: no share of nothing is worked out.
  if (!expected.isPositive()) return spilled(evidence, "heavy", false);
  const { least, kept, isLight } = leastExplained(evidence);
  const most = mostExplained(evidence);
  const standing = clearlyAbove(dry, most) ? "heavy" : isLight ? "light" : "fits";
  const gone = evidence.losses.reduce<Quantity>((all, { atMost }) => all.plus(atMost), exact("0 g"));
  const wouldBeLight = dry.compare(least.plus(gone)) < 0;
  const seen = [
    ...spilled(evidence, standing, wouldBeLight),
    ...knownUnwashed(evidence, standing),
    ...shortBySight(evidence, standing),
    ...impure(evidence, standing),
    ...liquorOff(evidence, standing),
    ...saltsOfWork(evidence),
  ];
  const findings = [...coarse(evidence), ...drying(evidence, standing), ...seen];
  if (standing === "heavy")
    findings.push(...otherFormulas(evidence), ...explanationsOfMixUp(evidence), ...tooMuch(evidence));
  else if (standing === "light") {
    findings.push(...tooLittle(evidence, least, kept), ...otherFormulas(evidence), ...explanationsOfMixUp(evidence));
  } else if (isRich(evidence)) {
    findings.push(...tooRich(evidence), ...ranShort(evidence), ...otherFormulas(evidence));
    findings.push(...explanationsOfMixUp(evidence));
  } else {
    findings.push(...fits(evidence, least, kept, seen));
    const doubtful = onlyWithoutWater(evidence);
    if (doubtful !== undefined) findings.push(...unreacted(evidence, doubtful));
    const isOther = othersByFire(evidence).length > 0;
    // Ignition, a titration or a drying that may say otherwise brings the other formulas back.
    const { assay } = evidence.observed;
    const isTested =
      isOther || identity?.verdict === "none fits" || lostInDrying(evidence) || (assay !== undefined && isApart(assay));
    if (isOther || identity?.verdict === "none fits") findings.push(...overheated(evidence));
    findings.push(...(isTested ? otherFormulas(evidence) : exactHits(evidence)));
  }
  findings.push(...mixturesThatFit(evidence, standing));
  // Of like weights the first stays first: what was seen, then the nearer of two forms.
  return marked(evidence, withCausesFirst(findings)).sort((a, b) => b.weight - a.weight);
}

/** With what no test of this run can take. */
function marked({ batch, observed: { setting } }: Evidence, findings: readonly Finding[]): Finding[] {
  const { product, materials } = setting;
  const { how } = batch.isolation;
  const tells = mayIgnite(product.formula) && residueOf(product.formula, undefined)?.residue !== undefined;
  const has: readonly (readonly [need: TestNeed, isThere: boolean])[] = [
    ["liquor", how !== "residue"],
    ["precipitant", how === "precipitate"],
    ["mother liquor", how === "crystallise" || how === "unknown"],
    ["product in fire", tells],
    ["materials in fire", materials.every(({ form }) => mayIgnite(form))],
  ];
  const without = has.filter(([, isThere]) => !isThere).map(([need]) => need);
  return findings.map((finding) => ({ ...finding, without }));
}

/** What only states that a mass is off. */
const STATEMENTS: readonly FindingCode[] = ["too-heavy", "lighter-than-losses-explain"];
/** From this weight on an explanation covers the mass. */
const COVERS = 0.5;
const CAUSES: readonly FindingCode[] = [
  "wet",
  "boiled-further",
  "unwashed",
  "unreacted",
  "second-solid",
  "other-hydrate-fits",
  "other-formula-fits",
  "mixture-fits",
  "hydrate-mix-up",
  "loss-explained",
  "impure",
  "spilled",
];

/** That a mass is off comes first only where nothing explains it. */
function withCausesFirst(findings: readonly Finding[]): Finding[] {
  const best = Math.max(...findings.filter((f) => CAUSES.includes(f.code)).map((f) => f.weight));
  if (best < COVERS) return [...findings];
  return findings.map((f) => (STATEMENTS.includes(f.code) && f.weight > best ? { ...f, weight: best - 0.05 } : f));
}

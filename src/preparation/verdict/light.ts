// Explanations of a mass that fits, and of one that is too small: the liquor, handling, a reagent that ran short.

import { parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { ignitionDecides } from "../identity/by-ignition";
import { asVolumeOfWater, exact, lessThanAll, planned } from "../planning/exact";
import { goneByItselfIn } from "../planning/in-the-crucible";
import { atMost } from "../procedure/words";
import { belief, clearlyAbove, isTooCoarse, likelihoodWithin, percent } from "./difference";
import {
  atTheFilter,
  besidesOf,
  type Evidence,
  keptAtTheFilter,
  mostExplained,
  onHotFilter,
  othersByFire,
  standsBesideInFire,
  staysInFire,
} from "./evidence";
import type { Finding } from "./finding";
import { belowCharge, hiddenGain, notFiredThrough } from "./gained";
import { isAcidMissing, isBaseMissing } from "./liquor-ph";
import { overheated } from "./overheated";
import { leftAsWater, onlyWithoutWater } from "./rest-of-pack";
import { isIncomplete, isPrecipitant, isSeen } from "./seen";

/** The mother liquor of a crystallisation keeps what its water dissolves: how much of it would keep what is missing. */
function motherLiquor(evidence: Evidence): Finding[] {
  const { batch, dry, expected, grams, handlingLoss, observed } = evidence;
  const { isolation, liquor } = batch;
  if (isolation.how !== "crystallise" || observed.filtrateVolume !== undefined) return [];
  const filtered = onHotFilter(evidence);
  const all = expected.minus(dry).to("g");
  const isOnFilter = filtered.compare(observed.setting.steps.mass) >= 0 && filtered.compare(all) < 0;
  const missing = isOnFilter ? all.minus(filtered).to("g") : all;
  const retained = keptAtTheFilter(evidence, isolation);
  const asked = missing.dividedBy(retained).times(exact("100 g")).to("g");
  const isCapped = liquor.water !== undefined && asked.compare(liquor.water) > 0;
  const water = isCapped ? liquor.water : asked;
  const volume = asVolumeOfWater(water).named({
    symbol: "V(mother liquor)",
    label: "water of a mother liquor that would keep what is missing",
    rule: "volume = missing mass / solubility, no more than the water there was",
  });
  const kept = isCapped ? retained.times(water).dividedBy(exact("100 g")).to("g") : missing;
  const covers = missing.minus(expected.times(handlingLoss)).compare(kept) <= 0;
  const at = atTheFilter(evidence).format({ decimals: 0, uncertainty: "none" });
  const about = volume.format({ significant: 2, uncertainty: "none" });
  const filter = isOnFilter ? `${grams(filtered)} stays with what is on the hot filter, and ` : "";
  const most = `all ${about} of water there was keeps no more than ${grams(kept)} at ${at}, of ${grams(missing)} that is missing`;
  return [
    {
      code: "loss-explained",
      text: !isCapped
        ? `${filter}${grams(missing)} is what about ${about} of mother liquor keeps at ${at}`
        : covers
          ? `${filter}${most}: the rest is handling, if hardly any water was boiled off`
          : `${filter}${most}`,
      mass: kept,
      figure: volume,
      likelihood: likelihoodWithin(dry, expected.times(lessThanAll(handlingLoss)).minus(kept), expected),
      weight: belief("motherLiquor") * (covers ? 1 : belief("inPart")),
      next: "measure the mother liquor (filtrateVolume), and boil it down for a second crop",
    },
  ];
}

/** What was seen of a precipitant, in words and as a weight; undefined where nothing was. */
function sightOf(
  evidence: Evidence,
  index: number,
): { readonly words: string; readonly weight: number; readonly next?: string } | undefined {
  if (isAcidMissing(evidence, index))
    return {
      words: "; the liquor has no acid left",
      weight: belief("cloudsFiltrate"),
      next: "add more of it while anything still dissolves",
    };
  if (!isPrecipitant(evidence, index)) return undefined;
  const incomplete = isIncomplete(evidence);
  const more = "add it to the filtrate until a drop more stays clear";
  if (incomplete === true)
    return { words: "; a drop of it still clouds the filtrate", weight: belief("cloudsFiltrate"), next: more };
  if (isBaseMissing(evidence)) return { words: "; the liquor is acid", weight: belief("cloudsFiltrate"), next: more };
  return incomplete === false
    ? { words: "; but the filtrate stays clear", weight: belief("clearFiltrate") }
    : undefined;
}

/** Share of a material that would have to be driven out: of its feed, and of what its pack has besides. */
function drivenOutOf({ observed }: Evidence, i: number, active: Quantity, ofRest: Quantity): Quantity {
  const portion = observed.portions[i]!;
  const ofFeed = lessThanAll(active);
  return (portion.dimension === "mass" ? ofFeed.plus(ofRest.dividedBy(portion)) : ofFeed).to("%");
}

export function tooLittle(evidence: Evidence, least: Quantity, kept: Quantity | undefined): Finding[] {
  const { batch, dry, expected, grams, plannedLimiting } = evidence;
  const { materialBalance } = batch;
  const missing = least.minus(dry).to("g");
  // What was fired has no filtrate; what the pack has besides may have been water, and the rest of what is missing the feed.
  const isFired = batch.isolation.how === "residue";
  const stays = staysInFire(evidence);
  const gone = expected.plus(stays).minus(dry);
  const ofRest = gone.compare(stays) < 0 ? gone : stays;
  const ratio = dry.minus(stays.minus(ofRest)).dividedBy(expected);
  const liquor = motherLiquor(evidence);
  const findings: Finding[] = [
    ...liquor,
    {
      code: "lighter-than-losses-explain",
      text:
        belowCharge(evidence) ??
        `${grams(dry)} is ${grams(missing)} less than ${kept === undefined ? "handling explains" : "handling, liquor and washing explain"} (at least ${grams(least)} expected)`,
      mass: missing,
      figure: ratio.to("%"),
      likelihood: undefined,
      // A mother liquor that nobody measured may hold all of it.
      weight: belief(
        liquor.some(({ weight }) => weight === belief("motherLiquor")) ? "tooLightWithLiquor" : "tooLight",
      ),
      next: isFired
        ? `look for what was spilled, blown out or left in the dish, and for the assay of ${materialBalance.limiting}: a weighed sample of it is dried, then heated`
        : "test the filtrate for more product, and the limiting material for its assay",
    },
  ];
  findings.push(...overheated(evidence), ...notFiredThrough(evidence));
  // What a liquor keeps explains the rest of a run whose record says what ran out.
  if (liquor.some(({ weight }) => weight === belief("motherLiquor"))) findings.push(...ranShort(evidence));
  // What has not reacted, or is inert, stays in a crucible: only what the fire drives out of a single feed makes lighter.
  const drivenOut = !isFired || materialBalance.supplied.length === 1;
  for (const [i, supplied] of (drivenOut ? materialBalance.supplied : []).entries()) {
    const sight = sightOf(evidence, i);
    // What of this material would have to be active for the mass found, all else being right.
    const active = ratio.dividedBy(supplied.timesStoichiometric).to("%");
    const out = materialBalance.limiting === supplied.material;
    findings.push({
      code: "reagent-short",
      text: `it would fit if ${isFired ? `${percent(drivenOutOf(evidence, i, active, ofRest), 2)} of the ${supplied.material} was water or something else that heat drives out` : `only ${percent(active, 2)} of the ${supplied.material} was active`}${out && out !== (plannedLimiting === supplied.material) ? ": it ran out first, not as planned" : ""}${sight?.words ?? ""}`,
      mass: undefined,
      figure: active,
      likelihood: undefined,
      weight: sight?.weight ?? belief(supplied.limiting ? "limitingShort" : "otherShort"),
      next:
        sight?.next === undefined
          ? `titrate the ${supplied.material}${isFired ? ", or dry a weighed sample of it and heat it to constant mass" : batch.isolation.how === "precipitate" ? ", or test the filtrate with a drop of it" : ""}`
          : `${sight.next}, and titrate the ${supplied.material}`,
    });
  }
  return findings;
}

/** A material that ran out although another was planned to, and took theory with it: the mass fits what is left. */
export function ranShort({ batch, grams, handlingLoss, plannedLimiting }: Evidence): Finding[] {
  const { limiting, supplied } = batch.materialBalance;
  const meant = supplied.find((one) => one.material === plannedLimiting);
  if (limiting === plannedLimiting || meant === undefined) return [];
  // Of what the material that was to run out would have given.
  const kept = exact("1").dividedBy(meant.timesStoichiometric);
  if (kept.compare(lessThanAll(planned("shortage"))) >= 0) return [];
  const share = kept.to("%");
  return [
    {
      code: "reagent-short",
      text: `the ${limiting} ran out first, not as planned: ${percent(share)} of what the ${plannedLimiting} needs, and the theory is now ${grams(batch.product.theoreticalYield)}`,
      mass: batch.product.theoreticalYield,
      figure: share,
      likelihood: undefined,
      // More than any handling takes is the news of the run, whatever became of the rest.
      weight: belief(kept.compare(lessThanAll(handlingLoss)) < 0 ? "seen" : "ranShort"),
      next: `the liquor still contains ${plannedLimiting}: add the missing ${limiting} to it for a second crop`,
    },
  ];
}

export function fits(
  evidence: Evidence,
  least: Quantity,
  kept: Quantity | undefined,
  seen: readonly Finding[],
): Finding[] {
  const { batch, dry, dryness, expected, grams, handlingLoss, identity, losses, observed } = evidence;
  const { theoreticalYield, formula } = batch.product;
  const others = othersByFire(evidence);
  const isStated = identity?.verdict === "identified";
  const lost = expected.plus(staysInFire(evidence)).minus(dry).to("g");
  const beside = standsBesideInFire(evidence);
  const own = expected.plus(beside);
  const besides = besidesOf(evidence).minus(beside);
  const byMass = likelihoodWithin(dry, least, mostExplained(evidence));
  const along =
    (beside.isPositive() ? ` with ${grams(beside)} of what was over the need` : "") +
    (besides.isPositive() && clearlyAbove(dry, own)
      ? `${beside.isPositive() ? " and" : " with"} ${grams(dry.minus(own))} of the up to ${grams(besides)} that the pack contains besides`
      : "");
  const doubt = onlyWithoutWater(evidence);
  const ifDry =
    doubt === undefined
      ? ""
      : `; but only if ${grams(doubt)} of what the pack has besides is not water, which it usually is`;
  const isOther = identity?.verdict === "none fits" || others.length > 0;
  const after = losses.length === 0 ? "handling" : "handling and what was lost on the way";
  const byLoss =
    others.length > 0
      ? `, but ignition says ${list(others, "or")}`
      : isOther
        ? ", but ignition fits no single formula"
        : isStated
          ? ", and ignition agrees"
          : "";
  // Less than handling alone explains is there because the liquor keeps the rest, as planned.
  const byLiquor = (clearlyAbove(expected.times(lessThanAll(handlingLoss)), dry) ? motherLiquor(evidence) : []).map(
    // a liquor explains the mass of a form that ignition excludes as little as handling does
    (one) => (isOther ? { ...one, weight: one.weight * belief("otherwiseByFire") } : one),
  );
  const short = ranShort(evidence);
  // Too little for handling alone: it fits only because of what liquor and washing keep.
  const isByLiquor = byLiquor.length === 0 && clearlyAbove(expected.times(lessThanAll(handlingLoss)), dry);
  // A sample is ignited where that tells the formulas apart that the product may have.
  const listed = evidence.candidates.filter((candidate) => !evidence.onlyByTest.has(candidate.formula));
  const isOpen = identity === undefined && ignitionDecides(parseFormula(batch.product.formula), listed);
  const hidden = hiddenGain(evidence);
  const gone = goneByItselfIn(batch);
  const untold =
    gone === undefined
      ? ""
      : gone.length === 0
        ? "; but nothing leaves the charge, and the mass does not tell that it has reacted"
        : `; but the mass tells only that ${list(gone)} left, not that the rest has reacted`;
  const asked = observed.setting.product.name;
  const instead = formula === asked ? "" : ` where ${asked} was asked for`;
  const findings: Finding[] = [
    ...byLiquor,
    ...(hidden === undefined ? [] : notFiredThrough(evidence)),
    {
      code: "consistent",
      text: `${grams(dry)} is what ${formula} should give${along}${instead}, allowing for ${after}${byLoss}${hidden ?? ""}${ifDry}${untold}`,
      mass: undefined,
      figure: dry.dividedBy(theoreticalYield).to("%"),
      likelihood: byMass,
      // A mass that still falls, or that is not known well, proves nothing by being where it should be.
      weight:
        byMass *
        belief(
          isTooCoarse(dry)
            ? "coarseFits"
            : dryness.state === "still drying"
              ? "fallingFits"
              : isOther
                ? "otherwiseByFire"
                : // What was seen goes before what the mass alone allows.
                  byLiquor.length > 0 ||
                    isByLiquor ||
                    hidden !== undefined ||
                    doubt !== undefined ||
                    [...seen, ...short].some(isSeen)
                  ? "besideSeen"
                  : "fits",
        ),
      next:
        hidden !== undefined
          ? "heat again until it gains no more"
          : gone !== undefined || doubt !== undefined
            ? "crush it and look for what has not reacted; fire it again until mass and colour no longer change"
            : isOpen
              ? "ignite a sample if the formula matters"
              : "nothing more is needed",
    },
  ];
  findings.push(...short);
  const asWater = leftAsWater(evidence, lost);
  if (asWater !== undefined) findings.push({ ...asWater, weight: byMass * asWater.weight });
  else if (byLiquor.length === 0 && lost.compare(observed.setting.steps.mass) >= 0) {
    const liquor = kept === undefined ? "" : `; liquor and washing keep ${atMost(kept, grams)} of it`;
    findings.push({
      code: "loss-explained",
      text: isByLiquor
        ? `${grams(lost)} is missing: liquor and washing keep ${atMost(kept!, grams)} of it, handling the rest`
        : `${grams(lost)} was lost, within the ${percent(handlingLoss, 2)} allowed for handling${liquor}`,
      mass: lost,
      figure: lost.dividedBy(theoreticalYield).to("%"),
      likelihood: byMass,
      weight:
        byMass *
        belief(isByLiquor ? "motherLiquor" : "handling") *
        belief(isTooCoarse(dry) ? "coarseFits" : isOther ? "otherwiseByFire" : "fits"),
      next: isByLiquor
        ? "the rest of the product is in liquor and washings: boil them down, or precipitate it"
        : batch.isolation.how === "residue"
          ? "brush dish and lid out into the next batch"
          : "rinse filter and vessel into the next batch",
    });
  }
  return findings;
}

// The pH of the liquor as it was read, against what the plan expects: base or acid that is missing, acid that is left.

import type { Quantity } from "../../quantity";
import { exact, lessThanAll } from "../planning/exact";
import { isAcid } from "../reaction/acids";
import { belief, clearlyAbove, percent } from "./difference";
import type { Evidence } from "./evidence";
import type { Finding } from "./finding";
import type { Standing } from "./seen";

/** pH of a liquor that is clearly acid, neutral, clearly basic; and how far apart two are on paper. */
const [ACID, NEUTRAL, BASIC, APART] = ["6", "7", "8", "1.5"] as const;

/** Units of pH that nobody misreads on paper, and that no carbon dioxide makes. */
const FAR = 4;

/** Chalk in water that is saturated with carbon dioxide is at pH 6, from memory; half a unit is what paper shows. */
const FIZZED = "5.5";

/** The pH to be expected where the work asks for one, else of the filtrate; undefined where none was read. */
function expectedPH({ batch, observed: { pH } }: Evidence): Quantity | undefined {
  if (pH === undefined) return undefined;
  const tested = batch.steps.find(({ blank }) => blank === "pH");
  return (tested?.target as Quantity<"number"> | undefined) ?? tested?.after.pH ?? batch.filtrate?.pH;
}

/** Is the liquor acid where base was to be in excess? */
export function isBaseMissing(evidence: Evidence): boolean {
  const { pH } = evidence.observed;
  const expected = expectedPH(evidence);
  if (pH === undefined || expected === undefined) return false;
  // Over a carbonate that is left a liquor is next to neutral as long as carbon dioxide is in it.
  const fizzed = evidence.batch.gas.some(({ formula }) => formula === "CO₂");
  const isOverSolid = (evidence.batch.steps.find(({ blank }) => blank === "pH")?.after.solids.length ?? 0) > 0;
  if (fizzed && isOverSolid && pH.compare(exact(FIZZED)) >= 0) return false;
  return expected.compare(exact(BASIC)) > 0 && pH.compare(exact(NEUTRAL)) < 0;
}

/** Is the liquor next to neutral where acid was to be in excess, so that it took all acid there was? */
export function isAcidMissing(evidence: Evidence, index: number): boolean {
  const { pH, setting } = evidence.observed;
  const expected = expectedPH(evidence);
  if (pH === undefined || expected === undefined || !isAcid(setting.materials[index]!.form)) return false;
  return (
    expected.compare(exact(ACID)) < 0 && pH.compare(exact(ACID)) > 0 && pH.minus(expected).compare(exact(APART)) >= 0
  );
}

/** Free strong acid: a hundredth of a mole in a litre and more. */
const STRONG = "2";

/** Acid is left although a solid of the plan, an oxide, a carbonate or a metal, is there to take all of it: which solid did not react. */
function acidLeftBy({ batch, observed: { pH, setting } }: Evidence): string | undefined {
  const { feeds, filtrate, materialBalance } = batch;
  const expected = filtrate?.pH;
  if (pH === undefined || expected === undefined || pH.compare(exact(STRONG)) >= 0) return undefined;
  if (expected.minus(pH).compare(exact(APART)) < 0) return undefined;
  const isAcidUsedUp = materialBalance.supplied.some(
    ({ limiting }, i) => limiting && isAcid(setting.materials[i]!.form),
  );
  const solid = setting.materials.find(
    ({ form }, i) => feeds[i]!.how === "solid" && !isAcid(form) && materialBalance.supplied[i]!.left.isPositive(),
  );
  return isAcidUsedUp ? solid?.shelf.name : undefined;
}

/** Crystals of which handling takes less than is missing: their liquor keeps the rest, if nothing else is the matter. */
const isExplainedByLiquor = ({ batch, dry, expected, handlingLoss }: Evidence): boolean =>
  batch.isolation.how === "crystallise" && clearlyAbove(expected.times(lessThanAll(handlingLoss)), dry);

/** An acid that ran out by the pH, where a liquor that keeps crystals would explain the mass as well. */
function acidGone(evidence: Evidence): Finding[] {
  const { dry, expected, observed } = evidence;
  const { materials } = observed.setting;
  return materials.flatMap(({ shelf }, i): Finding[] => {
    if (!isAcidMissing(evidence, i)) return [];
    const { timesStoichiometric } = evidence.batch.materialBalance.supplied[i]!;
    const active = dry.dividedBy(expected).dividedBy(timesStoichiometric).to("%");
    return [
      {
        code: "reagent-short",
        text: `the liquor has no acid left: the ${shelf.name} ran out before all was dissolved; ${percent(active, 2)} of it active would give this mass`,
        mass: undefined,
        figure: active,
        likelihood: undefined,
        weight: belief("acidGone"),
        next: `add more of it while anything still dissolves, and titrate the ${shelf.name}`,
      },
    ];
  });
}

/** A liquor on the other side of neutral than the plan's; carbon dioxide alone moves a pH on its side by two. */
export function liquorOff(evidence: Evidence, standing: Standing): Finding[] {
  const { pH } = evidence.observed;
  const expected = expectedPH(evidence);
  if (pH === undefined || expected === undefined) return [];
  const of = (q: Quantity): string => q.format({ decimals: 1, uncertainty: "none" });
  const solid = acidLeftBy(evidence);
  if (solid !== undefined)
    return [
      {
        code: "liquor-ph",
        text: `the liquor was at pH ${of(pH)}, where pH ${of(evidence.batch.filtrate!.pH!)} is expected: acid is left that the ${solid} was to take, so part of it did not react`,
        mass: undefined,
        figure: pH.minus(evidence.batch.filtrate!.pH!),
        likelihood: undefined,
        weight: belief(standing === "heavy" ? "liquorPH" : "acidLeft"),
        next: `heat the liquor with more ${solid} until it takes no more, and let it crystallise again`,
      },
    ];
  const gone = standing === "fits" && isExplainedByLiquor(evidence) ? acidGone(evidence) : [];
  if (gone.length > 0) return gone;
  const isBasic = expected.compare(exact(ACID)) < 0 && pH.compare(exact(BASIC)) > 0;
  if (!isBasic && !isBaseMissing(evidence)) return [];
  // A mass that fits proves little where the liquor is far on the other side: what was left in it dries with the rest.
  const far = pH.minus(expected).toNumber("");
  const isFar = standing === "fits" && Math.abs(far) >= FAR;
  return [
    {
      code: "liquor-ph",
      text: `the liquor was at pH ${of(pH)}, where pH ${of(expected)} is expected: ${isBasic ? "base is in excess, or acid was left out" : "base is missing, or acid is in excess"}`,
      mass: undefined,
      figure: pH.minus(expected),
      likelihood: undefined,
      weight: belief(isFar ? "seen" : "liquorPH"),
      next: `add ${isBasic ? "the missing acid" : "base"} by drops, and look for more product`,
    },
  ];
}

// What of the materials is in a product that is too heavy: solids that did not react, and what fire leaves as it is.

import { type Formula, molarMass } from "../../formula";
import type { Quantity } from "../../quantity";
import type { BeliefName } from "../data/beliefs";
import { exact, lessThanAll, planned } from "../planning/exact";
import { mayStayInCake } from "../planning/in-the-cake";
import { isGas } from "../reaction/fluids";
import { likelihoodByFire } from "./by-fire";
import { belief, likelihoodWithin, percent } from "./difference";
import { afterLosses, besidesOf, type Evidence } from "./evidence";
import type { Finding } from "./finding";

/** Starting material that is solid and stays with the product: what is left by the calculation, and what did not react. */
export function unreacted(evidence: Evidence, over: Quantity): Finding[] {
  const { batch, dry, grams, observed } = evidence;
  const { materials, wet } = observed.setting;
  if (batch.isolation.how === "crystallise") return [];
  return materials.flatMap(({ form, formName, shelf }, i): Finding[] => {
    const supplied = batch.materialBalance.supplied[i]!;
    const feed = batch.feeds[i]!;
    if (feed.how !== "solid" || feed.dissolves || isGas(form, false)) return [];
    const M = molarMass(form);
    const next = wet
      ? `treat a weighed part with what dissolves ${formName} and not the product, and weigh again`
      : "heat again to constant mass: what has not reacted yet goes on losing mass";
    // what the fire leaves of it is expected already
    if (supplied.left.isPositive() && batch.isolation.how === "residue") return [];
    if (supplied.left.isPositive()) {
      const left = supplied.left.times(M).to("g");
      const part = over.dividedBy(left);
      const enough = part.compare(exact("1")) <= 0;
      const byFire = burntAs(evidence, form, (enough ? over : left).dividedBy(dry));
      return [
        {
          code: "unreacted",
          text: `${grams(left)} of ${shelf.name} is left by the calculation and ${isTakenOut(batch, formName) ? "was to be taken out" : "stays with the product"}${enough ? `: ${percent(part, 2)} of it would explain the mass` : ", which is not enough to explain the mass"}`,
          mass: left,
          figure: part.to("%"),
          likelihood: likelihoodWithin(over, exact("0 g"), left) * (byFire ?? 1),
          weight: weightByFire("leftOver", byFire) * (enough ? 1 : belief("inPart")),
          next,
        },
      ];
    }
    // Each gram that did not react weighs more than the product it would have given: the rest left, or went into the liquor.
    const whole = supplied.amount.times(M).to("g").minus(batch.product.theoreticalYield);
    if (!supplied.limiting || !whole.isPositive()) return [];
    const part = over.dividedBy(whole);
    if (part.compare(exact("1")) > 0) return [];
    const mass = supplied.amount.times(M).times(part).to("g");
    const byFire = burntAs(evidence, form, mass.dividedBy(dry));
    return [
      {
        code: "unreacted",
        text: `${grams(mass)} of ${shelf.name} that did not react would explain the mass: ${percent(part, 2)} of it`,
        mass,
        figure: part.to("%"),
        likelihood: byFire ?? 1,
        weight: weightByFire(wet ? "notDoneInWater" : "notDone", byFire),
        next,
      },
    ];
  });
}

/** Is what is left of a solid taken out of the vessel by a step? */
const isTakenOut = ({ steps }: Evidence["batch"], name: string): boolean =>
  steps.some(({ left }) =>
    left.some(({ what, contents }) => what === "residue" && contents.solids.some(({ formula }) => formula === name)),
  );

/** What fire leaves as it is: each gram of it in the pack weighs more than the product of a gram of feed. */
export function inertMatter(evidence: Evidence, over: Quantity): Finding[] {
  const { batch, dry, dryness, grams, observed } = evidence;
  const { materials, product } = observed.setting;
  // A titration of the product says it better.
  if (batch.isolation.how !== "residue" || materials.length > 1 || observed.assay !== undefined) return [];
  const material = materials[0]!;
  const supplied = batch.materialBalance.supplied[0]!;
  const feed = supplied.amount.times(molarMass(material.form)).to("g");
  const gone = feed.minus(batch.product.theoreticalYield);
  if (!gone.isPositive()) return [];
  const inert = over.times(feed).dividedBy(gone).to("g");
  const share = inert.plus(besidesOf(evidence)).dividedBy(observed.portions[0]!).to("%");
  if (observed.portions[0]!.dimension !== "mass" || share.compare(planned("mostInert")) > 0) return [];
  const byFire = likelihoodByFire(evidence, [{ formula: product.formula, share: lessThanAll(inert.dividedBy(dry)) }]);
  return [
    {
      code: "impure",
      text: `${grams(inert)} of what fire leaves as it is would explain the mass: ${percent(share, 2)} of the ${material.shelf.name}`,
      mass: inert as Quantity<"mass">,
      figure: share,
      likelihood: byFire ?? 1,
      weight:
        byFire === undefined
          ? belief(dryness.constant === true ? "inertAtConstantMass" : "inertInFire")
          : Math.max(byFire * belief("inertByFire"), belief("inertInFire") * belief("leastByFire")),
      next: `titrate a weighed sample, or dissolve one in acid and weigh what stays: it gives the assay of the ${material.shelf.name}`,
    },
  ];
}

/** What packs that were stirred in have besides and did not dissolve: it is in the cake. */
export function undissolved(evidence: Evidence, over: Quantity): Finding[] {
  const { batch, grams, observed } = evidence;
  const most = afterLosses(evidence, mayStayInCake(batch));
  // a titration of the product says it better
  if (!most.isPositive() || observed.assay !== undefined) return [];
  return [
    {
      code: "impure",
      text: `the packs that were stirred in have ${grams(most)} of something else: ${over.compare(most) > 0 ? "even all of it, undissolved, does not explain the mass" : `${percent(over.dividedBy(most), 2)} of it, undissolved, would explain the mass`}`,
      mass: most as Quantity<"mass">,
      figure: over.dividedBy(most).to("%"),
      likelihood: likelihoodWithin(over, exact("0 g"), most),
      weight: likelihoodWithin(over, exact("0 g"), most) * belief("inertInCake"),
      next: "titrate a weighed sample of the product: it gives its assay",
    },
  ];
}

/** Likelihood of what ignition found, if this share of the mass were starting material and the rest product. */
const burntAs = (evidence: Evidence, form: Formula, share: Quantity): number | undefined =>
  likelihoodByFire(evidence, [
    { formula: form, share },
    { formula: evidence.observed.setting.product.formula, share: lessThanAll(share) },
  ]);

/** A belief where nothing was ignited; where ignition was to tell, what it says. */
const weightByFire = (usual: BeliefName, byFire: number | undefined): number =>
  byFire === undefined
    ? belief(usual)
    : Math.max(byFire * belief("notDoneByFire"), belief(usual) * belief("leastByFire"));

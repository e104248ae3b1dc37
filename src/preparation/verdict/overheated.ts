// What heat leaves of a product, where that is what the mass would be: dried too hot.
import { type Formula, molarMass, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { anhydrousOf, crystalWater } from "../../hydrate";
import type { Quantity } from "../../quantity";
import { thermalStepsOf } from "../../substance/internal";
import { residueOf } from "../identity/ignition";
import { exact, lessThanAll, planned } from "../planning/exact";
import { celsius } from "../procedure/words";
import { keyElement } from "../reaction/candidates";
import { nameOfFormula } from "../reaction/species";
import { spelledLike } from "../reaction/spelling";
import { likelihoodByFire, nextByFire } from "./by-fire";
import { belief, EXCLUDED, likelihoodWithin, percent } from "./difference";
import { afterLosses, type Evidence, leastExplained, mayLeaveFire, staysInFire } from "./evidence";
import type { Finding } from "./finding";
import { isWideAndLight, withRest } from "./other-forms";

/** A solid that heat makes of the product. */
interface Left {
  readonly formula: Formula;
  /** Does an oven for drying do it, by the table? */
  readonly isInOven: boolean;
  /** Where heat begins on what it is made of; undefined where no step is tabulated. */
  readonly from: Quantity | undefined;
}

export function overheated(evidence: Evidence): Finding[] {
  const { batch, dry, grams, handlingLoss, observed } = evidence;
  const { formula } = observed.setting.product;
  const key = keyElement(formula);
  if (key === undefined) return [];
  const { product } = batch;
  const isFired = batch.isolation.how === "residue";
  return afterHeating(formula, key, isFired).flatMap((left): Finding[] => {
    const name = nameOfFormula(left.formula);
    if (evidence.candidates.some((candidate) => candidate.formula === name)) return [];
    const byFire = likelihoodByFire(evidence, [{ formula: left.formula, share: exact("1") }]);
    const isFound = byFire !== undefined && byFire >= EXCLUDED;
    const theory = product.amount
      .times(formula.count(key))
      .dividedBy(left.formula.count(key))
      .times(molarMass(left.formula))
      .to("g")
      .named({ symbol: `m(${name})`, label: `the same ${key} as ${name}`, rule: "mass = amount × molar mass" });
    const most = afterLosses(evidence, theory).plus(staysInFire(evidence));
    // The liquor kept its part before anything was heated.
    const { kept } = leastExplained(evidence);
    const inLiquor = isFound && kept !== undefined ? kept.dividedBy(product.theoreticalYield) : exact("0");
    const least = most.minus(mayLeaveFire(evidence)).times(lessThanAll(handlingLoss).minus(inLiquor));
    const byMass = likelihoodWithin(dry, least, most);
    if (byMass < EXCLUDED) return [];
    const ratio = dry.dividedBy(most).to("%");
    const notFired = isFired && observed.setting.materials.some(({ form }) => form.hasSameComposition(left.formula));
    const isByChance = (isWideAndLight(evidence) && !left.isInOven) || isOutOfReach(evidence, left);
    const usual = belief(isByChance ? "otherFormOfLight" : "driedTooHot");
    return [
      {
        code: isDried(left.formula, formula) ? "other-hydrate-fits" : "other-formula-fits",
        text: `${grams(dry)} is ${percent(ratio)} of the theory for ${name}${withRest(evidence, most)}, which heat leaves of ${product.formula}${left.from === undefined || !isFired ? "" : ` from ${celsius(left.from)} on`}: ${notFired ? "not fired through, or " : ""}${isFired ? "fired" : "dried"} too hot${isFound ? ", and ignition agrees" : ""}`,
        mass: theory,
        figure: ratio,
        likelihood: byMass * (byFire ?? 1),
        weight:
          byMass *
          (byFire === undefined ? usual : Math.max(byFire * belief("otherFormByFire"), usual * belief("leastByFire"))),
        next: isFound
          ? "titrate a weighed sample to confirm it"
          : nextByFire(evidence, "ignite a weighed sample: what heat has already changed loses less, or nothing"),
      },
    ];
  });
}

/** No slip of a kiln that was set for its firing comes near the heat of this one. */
function isOutOfReach({ batch }: Evidence, { from }: Left): boolean {
  const set = batch.steps.find(({ operation }) => operation === "fire")?.target;
  return from !== undefined && set?.dimension === "temperature" && from.minus(set).compare(planned("kilnSlip")) > 0;
}

/** The same salt with less water. */
const isDried = (left: Formula, product: Formula): boolean =>
  crystalWater(product).waters.n !== 0n && anhydrousOf(left).hasSameComposition(anhydrousOf(product));

const rememberedSolids = /* @__PURE__ */ remembering<readonly Left[]>(200);

/** Solids that heat makes of a product and that still hold all of its key element; where it was only dried, what an oven can do. */
const afterHeating = (formula: Formula, key: string, isFired: boolean): readonly Left[] =>
  rememberedSolids(`${formula} ${isFired}`, () => {
    const all = thermalStepsOf(formula);
    const met = isFired ? all : all.filter(({ from }) => from.compare(planned("overheated")) <= 0);
    const steps = met.flatMap(({ from, remains: [left, another] }) =>
      left === undefined || another !== undefined
        ? []
        : [
            {
              formula: spelledLike(parseFormula(left.formula), formula),
              isInOven: from.compare(planned("oven")) <= 0,
              from,
            },
          ],
    );
    // A residue of the table counts where heat begins on the product within reach, or where no step is tabulated.
    const residue = met.length === 0 && all.length > 0 ? undefined : residueOf(formula, undefined)?.residue;
    const solids: readonly Left[] = [
      ...steps,
      ...(residue === undefined ? [] : [{ formula: spelledLike(residue, formula), isInOven: false, from: undefined }]),
    ];
    return solids.filter(
      (solid, i) =>
        solid.formula.count(key).n !== 0n &&
        !solid.formula.hasSameComposition(formula) &&
        solids.findIndex((other) => other.formula.hasSameComposition(solid.formula)) === i,
    );
  });

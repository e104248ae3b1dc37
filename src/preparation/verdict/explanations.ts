// A hydrate taken for another: the batch calculated again with each form the jar may have held.

import { type Formula, molarMass, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import { anhydrousOf, type HydrateForm, knownHydrates } from "../../hydrate";
import { isTraded } from "../../hydrate/internal";
import type { Quantity } from "../../quantity";
import type { BeliefName } from "../data/beliefs";
import { DELIQUESCENT } from "../data/drying";
import { exact, lessThanAll, planned } from "../planning/exact";
import { extentOf, formedBy } from "../reaction/account";
import { nameOfFormula } from "../reaction/species";
import { readMaterial } from "../shelf/material";
import { belief, clearlyAbove, EXCLUDED, isFarBelow, likelihoodWithin } from "./difference";
import { afterLosses, type Evidence, leastExplained } from "./evidence";
import type { Finding } from "./finding";
import { isIncomplete, isPrecipitant } from "./seen";

/** Wider than any uncertainty of a weighing that could matter. */
const FAR_OVER = 1.2;
const FAR_UNDER = 0.8;

/** Theory if one material had been another form: its amount is calculated again, the others' stay. */
function theoryWith({ batch, observed: { setting, portions } }: Evidence, index: number, form: Formula): Quantity {
  const { reactants, product, materials } = setting;
  const amounts = batch.materialBalance.supplied.map((s) => s.amount);
  amounts[index] = readMaterial({ ...materials[index]!.shelf, form }, reactants).amountIn(portions[index]!);
  const { amount, mass } = formedBy(extentOf(materials, amounts).extent, product);
  // a solid that stands in place of the product has a theory of its own
  return batch.product.formula === product.name
    ? mass
    : batch.product.theoreticalYield.times(amount.dividedBy(batch.product.amount)).to("g");
}

/**
 * How another form came into a jar: a pack holds one that shops sell or that is in trade, by the table of forms; a stock that lost water
 * may have become any form with less, one that runs in air what stands beside its solution in the room. Undefined where none.
 */
function howItCame(form: HydrateForm, own: Quantity, { observed }: Evidence): BeliefName | undefined {
  if (form.sold) return "soldHydrate";
  if (isTraded(form)) return "tradedHydrate";
  const { temperature } = observed.setting;
  const isWeathered = molarMass(form.formula).compare(own) < 0;
  return isWeathered || (isDeliquescent(form.formula) && isStableAt(form, temperature))
    ? "weatheredHydrate"
    : undefined;
}

const isDeliquescent = (formula: Formula): boolean => {
  const salt = anhydrousOf(formula);
  return DELIQUESCENT.some((row) => parseFormula(row.formula).hasSameComposition(salt));
};

const isStableAt = ({ range }: HydrateForm, temperature: Quantity): boolean =>
  range !== undefined &&
  (range.from === undefined || temperature.compare(range.from) >= 0) &&
  (range.to === undefined || temperature.compare(range.to) <= 0);

/** The same in round figures: how the theory changes if one material holds `factor` times as much. */
function roughRatio({ batch: { materialBalance } }: Evidence, index: number, factor: number): number {
  const times = materialBalance.supplied.map((s, i) => s.timesStoichiometric.toNumber("") * (i === index ? factor : 1));
  return Math.min(...times);
}

/** Does ignition find the product, and nothing else? */
const isOwnByFire = ({ batch, identity }: Evidence): boolean =>
  identity?.verdict === "identified" && identity.remaining[0] === batch.product.formula;

export function explanationsOfMixUp(evidence: Evidence): Finding[] {
  const { dry, handlingLoss, batch, observed, grams } = evidence;
  const { kept } = leastExplained(evidence);
  // The liquor keeps as much, whatever the jar contained.
  const inLiquor = kept ?? exact("0 g");
  const keptShare = inLiquor.dividedBy(evidence.expected).toNumber("");
  const found = dry.dividedBy(evidence.expected).toNumber("");
  // A crucible loses so little that a mass hits the theory of a jar by accident hardly ever; feed that is left explains any mass.
  const isFired = batch.isolation.how === "residue" && handlingLoss.compare(planned("crucibleLoss")) <= 0;
  const loss = handlingLoss.toNumber("");
  const all = observed.setting.materials.flatMap((material, index) => {
    if (material.shelf.strength !== undefined || isWater(material.form)) return [];
    const own = molarMass(material.form);
    const others = knownHydrates(material.form).flatMap((form) => {
      const how = form.formula.hasSameComposition(material.form) ? undefined : howItCame(form, own, evidence);
      return how === undefined ? [] : [{ formula: form.formula, how }];
    });
    return others.flatMap(({ formula, how }): { readonly finding: Finding; readonly off: number }[] => {
      // A form that is far off in round figures is not calculated exactly.
      const rough = roughRatio(evidence, index, own.dividedBy(molarMass(formula)).toNumber(""));
      if (found > rough * FAR_OVER || found < (rough * (1 - loss) - keptShare) * FAR_UNDER) return [];
      const theory = theoryWith(evidence, index, formula);
      // Expected: all of it, down to what handling may take.
      const most = afterLosses(evidence, theory);
      const least = most.times(lessThanAll(handlingLoss));
      if (isFarBelow(dry, least, inLiquor)) return [];
      const likelihood = likelihoodWithin(dry, least.minus(inLiquor), most);
      if (likelihood < EXCLUDED || theory.compare(batch.product.theoreticalYield) === 0) return [];
      // A precipitant of which there was less than planned leaves product in the liquor: a drop of it tells.
      const isLess = theory.compare(batch.product.theoreticalYield) < 0;
      const sight = isLess && isPrecipitant(evidence, index) ? isIncomplete(evidence) : undefined;
      // Within so much that the liquor may keep, a small mass meets some jar by accident.
      const isWide = inLiquor.compare(most.times(handlingLoss)) > 0;
      const isByLiquor = isWide && clearlyAbove(least, dry) && clearlyAbove(evidence.expected, dry);
      const usual = isFired
        ? belief(isOwnByFire(evidence) ? "jarByFire" : "jarInFire")
        : Math.min(belief(how), isByLiquor ? belief("otherFormOfLight") : 1);
      const expects =
        sight === false
          ? belief("clearFiltrate")
          : sight === true
            ? belief(how === "soldHydrate" ? "cloudsFiltrateSold" : "cloudsFiltrateMixUp")
            : usual;
      const middle = most.times(lessThanAll(handlingLoss.dividedBy(2)));
      const off = Math.abs(dry.minus(middle).toNumber("g"));
      const factor = theory.dividedBy(batch.product.theoreticalYield).to("%");
      const [was, taken] = [nameOfFormula(formula), material.formName];
      const finding: Finding = {
        code: "hydrate-mix-up",
        text: `if the ${material.shelf.name} was ${was} and not ${taken}, ${grams(theory)} was to be expected (${factor.format({ significant: 3, uncertainty: "none" })} of the theory)`,
        mass: theory,
        figure: factor,
        likelihood,
        weight: likelihood * expects,
        next: `heat a weighed sample of the ${material.shelf.name}: its loss identifies the hydrate`,
      };
      return [{ finding, off }];
    });
  });
  return all.sort((a, b) => a.off - b.off).map(({ finding }) => finding);
}

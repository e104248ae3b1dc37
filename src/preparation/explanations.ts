// A hydrate taken for another: the batch reckoned again with each form the jar may have held.
import { knownForms } from "../hydrate";
import { type Quantity, quantity } from "../quantity";
import { accountFor } from "./account";
import { nameOfFormula, readMaterial } from "./material";
import type { Evidence, Finding } from "./verdict";

/** Farther than this from the middle of what is expected, in half-widths, a form explains nothing. */
const COVERS = 1;

/** Theory if one material had been another form; undefined where the sums cannot be made. */
function theoryWith(
  evidence: Evidence,
  index: number,
  form: ReturnType<typeof knownForms>[number]["formula"],
): Quantity {
  const { setting, portions } = evidence.observed;
  const { reactants, products, product } = setting;
  const materials = setting.materials.map((m, i) => (i === index ? readMaterial({ ...m.shelf, form }, reactants) : m));
  return accountFor(materials, portions, reactants, products).formed[products.indexOf(product)]!.mass;
}

export function explanationsOfMixUp(evidence: Evidence): Finding[] {
  const { dry, handlingLoss, batch, observed } = evidence;
  return observed.setting.materials.flatMap((material, index) => {
    if (material.shelf.strength !== undefined || material.form.toHill() === "H2O") return [];
    const others = knownForms(material.form).filter((f) => f.sold && !f.formula.hasSameComposition(material.form));
    return others.flatMap(({ formula }): Finding[] => {
      const theory = theoryWith(evidence, index, formula);
      // Expected: all of it, down to what handling may take.
      const middle = theory.times(quantity("1").minus(handlingLoss.dividedBy(2)));
      const half = theory.times(handlingLoss).dividedBy(2);
      const u = dry.minus(theory).standardUncertainty?.toNumber() ?? 0;
      const off = Math.abs(dry.minus(middle).in("g").toNumber()) / (half.in("g").toNumber() + 2 * u);
      if (!(off <= COVERS) || theory.compare(batch.product.theoreticalYield) === 0) return [];
      const factor = theory.dividedBy(batch.product.theoreticalYield).to("%");
      const [was, taken] = [nameOfFormula(formula), material.formName];
      return [
        {
          code: "hydrate-mix-up",
          text: `if the ${material.shelf.name} was ${was} and not ${taken}, ${theory.format({ significant: 3, uncertainty: "none" })} was to be expected (${factor.format({ significant: 3, uncertainty: "none" })} of the theory)`,
          mass: theory,
          figure: factor,
          weight: 0.75 - 0.1 * off,
          next: `heat a weighed sample of the ${material.shelf.name}: its loss tells the hydrate`,
        },
      ];
    });
  });
}

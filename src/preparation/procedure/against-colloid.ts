// The salt that keeps a slime together in its wash water, and what it must not meet there.
import { type Formula, parseFormula } from "../../formula";
import { constitutionOf } from "../../ion";
import { cautionsOfFormulas } from "../../substance/internal";
import { settled } from "../contents/equilibrium";
import type { Pot } from "../contents/pot";
import { AGAINST_COLLOID, SALT_OF_A_WASH } from "../data/gels";
import { componentsOf, unitsIn } from "../feasibility/beaker";
import { exact } from "../planning/exact";
import { gelRow } from "../reaction/gel";
import { dryingOf } from "./drying";

/** Does the salt that keeps a slime together leave it alone? Hydroxides of magnesium, zinc, copper and their like it dissolves. */
export function standsAmmonium(product: Formula): boolean {
  if (gelRow(product)?.standsAmmonium === true) return true;
  const { attacks, moles, besides, dissolves } = SALT_OF_A_WASH;
  if (!constitutionOf(product).anions.some(({ formula }) => attacks.some((one) => one === formula))) return true;
  const of = componentsOf(product);
  if (of === undefined) return false;
  const pours = [
    { formula: product, moles: besides },
    { formula: parseFormula(AGAINST_COLLOID[0]!.salt), moles },
  ];
  const beaker = settled(pours, 25, { keeping: "kept", left: 0 });
  return beaker !== undefined && unitsIn(beaker, of) > besides * (1 - dissolves);
}

/** Does the salt, or what it gives, make something dangerous of what the sludge keeps? */
function isDangerousIn(put: readonly string[], { books, volume }: Pot): boolean {
  const strong = exact(SALT_OF_A_WASH.strong);
  const present = [
    ...books.solids.map(({ matter }) => ({ formula: matter.core.formula.toString(), isStrong: true })),
    ...books.dissolved.map(({ matter, amount }) => ({
      formula: matter.core.formula.toString(),
      isStrong: volume.isPositive() && amount.dividedBy(volume).compare(strong) >= 0,
    })),
  ];
  const cautions = cautionsOfFormulas([...put, ...present.map(({ formula }) => formula)], []);
  return cautions.incompatibilities.some(
    ({ severity, condition, materials }) =>
      condition === undefined &&
      materials.some((one) => put.includes(one)) &&
      present.some(({ formula, isStrong }) => materials.includes(formula) && (isStrong || severity === "forbid")),
  );
}

/** Does the salt leave as the product is dried? */
function leaves({ leavesAt }: (typeof AGAINST_COLLOID)[number], product: Formula): boolean {
  const { upTo } = dryingOf(product);
  return leavesAt !== undefined && upTo !== undefined && upTo.compare(exact(leavesAt)) >= 0;
}

/** What is done where the sludge goes colloidal, as the end of a sentence about its washing. */
export function againstColloid(product: Formula, sludge: Pot, tested: readonly string[]): string {
  const fit = AGAINST_COLLOID.filter(
    ({ salt, gives, stays }) =>
      !isDangerousIn(gives === undefined ? [salt] : [salt, gives], sludge) &&
      stays?.precipitates.some((symbol) => product.symbols.includes(symbol)) !== true,
  );
  const row = fit.find(({ stays }) => stays === undefined || !tested.includes(stays.ion)) ?? fit[0];
  if (row === undefined) return "";
  const after = leaves(row, product) ? "" : ", and wash once more without it before the test";
  return ` If it stops settling, or the water stays coloured or cloudy, it is going colloidal for want of salt: put ${SALT_OF_A_WASH.each} of ${row.called} into each ${SALT_OF_A_WASH.water} of the water${after}.`;
}

// Metals that leave a hot crucible as poisonous fume.
import { FUMING_METALS, REDUCED_IN_FIRE } from "../data/firing";
import type { Setting } from "../request/setting";

/** Is something fired whose metal leaves as fume? */
export const fumesFired = ({ wet, reactants, products }: Setting): boolean =>
  !wet &&
  [...reactants, ...products].some(({ formula }) =>
    FUMING_METALS.metals.some((metal) => formula.count(metal).n !== 0n),
  );

/** Is an oxide made of solids alone that a fire short of air would take apart? Where carbon or hydrogen is to do that it is no fault. */
export const isReducedInFire = ({ wet, materials, product }: Setting): boolean =>
  !wet &&
  materials.length > 1 &&
  product.formula.count("O").n !== 0n &&
  materials.every(({ form }) => form.count("O").n !== 0n) &&
  REDUCED_IN_FIRE.metals.some((metal) => product.formula.count(metal).n !== 0n);

// Metals that leave a hot crucible as poisonous fume.
import { FUMING_METALS } from "../data/firing";
import type { Setting } from "../request/setting";

/** Is something fired whose metal leaves as fume? */
export const fumesFired = ({ wet, reactants, products }: Setting): boolean =>
  !wet &&
  [...reactants, ...products].some(({ formula }) =>
    FUMING_METALS.metals.some((metal) => formula.count(metal).n !== 0n),
  );

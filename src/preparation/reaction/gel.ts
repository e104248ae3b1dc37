// Is a solid a slime where it precipitates, by the table?
import { GELS } from "../data/gels";
import { bySubstance } from "./by-substance";

/** The row of a solid that is a gel beside the hydroxides; undefined for all others. */
export const gelRow = /* @__PURE__ */ bySubstance(GELS);

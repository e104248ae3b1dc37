// Is a solid a slime where it precipitates, by the table?
import type { Formula } from "../../formula";
import { GELS, type GelRow } from "../data/gels";
import { bySubstance } from "./by-substance";

/** The row of a solid that is a gel beside the hydroxides; undefined for all others. */
export const gelRow: (formula: Formula) => GelRow | undefined = /* @__PURE__ */ bySubstance(GELS);

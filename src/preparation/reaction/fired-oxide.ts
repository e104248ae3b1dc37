// Oxides that acids leave alone once they have been fired.
import type { Formula } from "../../formula";
import { FIRED_OXIDES, type FiredOxideRow } from "../data/unwilling-solids";
import { bySubstance } from "./by-substance";

export const firedOxide: (formula: Formula) => FiredOxideRow | undefined = /* @__PURE__ */ bySubstance(FIRED_OXIDES);

// Aqueous equilibrium: what is in the beaker.
export type { AqueousErrorCode } from "./error";
export { AqueousError } from "./error";

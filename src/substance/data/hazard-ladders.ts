// Statements of one hazard class, the graver category first: of two of them on one substance the graver stands. Regulation (EC)
// No 1272/2008 (CLP), Annex I (categories of each class); Annex VI, 1.1.1.5, of lead oxalate, which two group entries cover: its
// label has the classification of both, and of one hazard the graver. Recalled.
import type { HazardSourceKey } from "./sources";

/** Codes by their bare number; a suffix (`H360Df`) goes with it. */
export const HAZARD_LADDERS = {
  ladders: [
    ["H271", "H272"],
    ["H300", "H301", "H302"],
    ["H310", "H311", "H312"],
    ["H330", "H331", "H332"],
    ["H314", "H318", "H319"],
    ["H314", "H315"],
    ["H340", "H341"],
    ["H350", "H351"],
    ["H360", "H361"],
    ["H370", "H371"],
    ["H372", "H373"],
    ["H410", "H400"],
    ["H410", "H411", "H412", "H413"],
    ["EUH032", "EUH031"],
  ],
  source: "clpRecalled",
} as const satisfies { readonly ladders: readonly (readonly string[])[]; readonly source: HazardSourceKey };

// Sources of the published preparations that a step may be one of; what the tables of this layer share with lower layers
// stands there.
import { citation, type Sources } from "../../foundation/source";
import type { SourceKey as LowerKey } from "../../preparation/internal";
import { cite as citeLower } from "../../preparation/internal";

export const routeSources = {
  blanchardPhelanDavis: { title: "Synthetic Inorganic Chemistry, A. A. Blanchard, J. W. Phelan and A. R. Davis", edition: "5th", year: 1936 },
  biltzBiltz: { title: "Laboratory Methods of Inorganic Chemistry, H. and W. Biltz, transl. W. T. Hall and A. A. Blanchard", edition: "2nd English", year: 1928 },
  cooleyCyclopaedia: { title: "Cooley's Cyclopaedia of Practical Receipts", edition: "6th", year: 1880 },
  minerManual: { title: "Laboratory manual of inorganic and pharmaceutical preparations, O. Miner", year: 1911, access: "second-hand summary" },
  schlessingerPreparations: { title: "Inorganic Laboratory Preparations, G. G. Schlessinger", year: 1962, access: "second-hand summary" },
  johnsonTrioxalatoferrate: { title: "A convenient procedure for the preparation of potassium trioxalatoferrate(III), R. C. Johnson, J. Chem. Educ., about 1970" },
  britishPharmacopoeia: { title: "recipes of the British and US pharmacopoeias of the 19th century, as reprinted in manuals of the time" },
  practicalSheets: { title: "practical sheets of schools and universities, and web articles on single preparations", access: "each read; none of them refereed" },
  explosivesPrecursors: { title: "Regulation (EU) 2019/1148 on the marketing and use of explosives precursors, Annexes I and II", year: 2019, fromMemory: "all" },
  drugPrecursors: { title: "Regulation (EC) No 273/2004 on drug precursors, Annex I, and lists of other states", year: 2004, fromMemory: "all" },
  chemicalWeaponsConvention: { title: "Chemical Weapons Convention, Annex on Chemicals, schedules 2 and 3 (Organisation for the Prohibition of Chemical Weapons)", year: 1993, fromMemory: "all" },
} as const satisfies Sources;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof routeSources | LowerKey;

/** A source on one line, as it is printed under a reason. */
export const cite = (key: SourceKey): string =>
  key in routeSources ? citation(key, [routeSources]) : citeLower(key as LowerKey);

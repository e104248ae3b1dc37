// What a person does who has already brought together what no plan makes. It defers to those who are called.
import type { DangerousProduct } from "../../substance/internal";
import type { SourceKey } from "./sources";

interface IfMixedRow {
  readonly code: DangerousProduct["code"];
  readonly text: string;
  readonly source: SourceKey;
}

const CHROMIUM_SOLD =
  "chromium(VI) causes cancer, and in the European Union its salts are used with an authorisation only (Regulation (EC) No 1907/2006, Annex XIV): take a chromium(III) salt that is sold, chrome alum or basic chromium sulfate, and crystallise chrome alum from it at no more than 40 °C, for hotter it turns green";

/** What is taken in place of a combination that is refused, where a shop sells what it would make. */
export const INSTEAD_OF: readonly { readonly code: string; readonly element: string; readonly text: string; readonly source: SourceKey }[] = [
  { code: "chromate-organic", element: "Cr", text: CHROMIUM_SOLD, source: "memory" },
  { code: "chromate-sulfite", element: "Cr", text: CHROMIUM_SOLD, source: "memory" },
];

export const IF_MIXED: readonly IfMixedRow[] = [
  { code: "explosive", text: "if it is there already, do not warm, dry, scratch, make sour or close it, nor carry it about; keep everybody away and call the fire brigade", source: "commonPractice" },
  { code: "deadly-gas", text: "if it is there already, leave at once, close the door, warn the others and call the fire brigade from outside; whoever has breathed it needs a doctor, also without complaints", source: "commonPractice" },
];

// What a person does who has already brought together what no plan makes. It defers to those who are called.
import type { DangerousProduct } from "../../substance/internal";
import type { SourceKey } from "./sources";

interface IfMixedRow {
  readonly code: DangerousProduct["code"];
  readonly text: string;
  readonly source: SourceKey;
}

export const IF_MIXED: readonly IfMixedRow[] = [
  { code: "explosive", text: "if it is there already, do not warm, dry, scratch, make sour or close it, nor carry it about; keep everybody away and call the fire brigade", source: "commonPractice" },
  { code: "deadly-gas", text: "if it is there already, leave at once, close the door, warn the others and call the fire brigade from outside; whoever has breathed it needs a doctor, also without complaints", source: "commonPractice" },
];

// Words for the form of a solid, where its forms are different dangers: goods of shops and stockrooms.
import type { SolidForm } from "./hazards";
import type { HazardSourceKey } from "./sources";

/** Words that say the same of a solid. */
interface SolidFormRow {
  readonly state: SolidForm;
  /** Whole words, in the singular; a plural by s is read too. */
  readonly words: readonly string[];
  readonly source: HazardSourceKey;
}

export const SOLID_FORMS: readonly SolidFormRow[] = [
  { state: "powder", words: ["powder", "powdered", "dust", "filing", "flake"], source: "commonPractice" },
  { state: "massive", words: ["foil", "sheet", "plate", "wire", "rod", "stick", "bar", "nail", "shot", "granule", "granulated", "granular", "pellet", "piece", "lump", "ingot", "turning", "chip", "cutting", "ribbon", "strip", "can", "coin", "pipe", "tube", "mesh", "gauze", "scrap", "massive"], source: "commonPractice" },
  { state: "crystalline", words: ["quartz", "sand", "flint", "cristobalite", "tridymite", "crystalline"], source: "commonPractice" },
  { state: "amorphous", words: ["gel", "precipitated", "fumed", "colloidal", "amorphous"], source: "commonPractice" },
];

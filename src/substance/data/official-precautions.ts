// Precautionary statements as a label prints them: the English text of GHS Annex 3, section 2, read in two public copies of
// the annex that agree; which statement goes with which hazard from memory of its tables. In the order in which a small label takes
// them. Words between strokes are for whoever prints the label to choose from; a "…" for the label to fill in is left out.
import { once } from "../../foundation/memo";
import type { HazardSourceKey } from "./sources";

/** A precautionary statement and the hazards that ask for it. */
export interface OfficialPrecaution {
  readonly code: string;
  readonly text: string;
  /** Hazard statements without their letters at the end (H360FD is H360). */
  readonly hazards: readonly string[];
  readonly source: HazardSourceKey;
}

export const OFFICIAL_PRECAUTIONS = /* @__PURE__ */ once((): readonly OfficialPrecaution[] => [
  { code: "P201", text: "Obtain special instructions before use", hazards: ["H340", "H341", "H350", "H351", "H360", "H361", "H362"], source: "ghsPrecautions" },
  { code: "P222", text: "Do not allow contact with air", hazards: ["H250"], source: "ghsPrecautions" },
  { code: "P223", text: "Do not allow contact with water", hazards: ["H260", "H261"], source: "ghsPrecautions" },
  { code: "P210", text: "Keep away from heat, hot surfaces, sparks, open flames and other ignition sources. No smoking", hazards: ["H201", "H220", "H221", "H222", "H224", "H225", "H226", "H228", "H240", "H242", "H250", "H270", "H271", "H272"], source: "ghsPrecautions" },
  { code: "P220", text: "Keep away from clothing and other combustible materials", hazards: ["H270", "H271", "H272"], source: "ghsPrecautions" },
  { code: "P260", text: "Do not breathe dust/fume/gas/mist/vapours/spray", hazards: ["H330", "H314", "H370", "H371", "H372", "H373"], source: "ghsPrecautions" },
  { code: "P280", text: "Wear protective gloves/protective clothing/eye protection/face protection", hazards: ["H310", "H311", "H312", "H314", "H315", "H317", "H340", "H341", "H350", "H351", "H360", "H361"], source: "ghsPrecautions" },
  { code: "P280", text: "Wear eye protection/face protection", hazards: ["H318", "H319"], source: "ghsPrecautions" },
  { code: "P305+P351+P338", text: "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact lenses, if present and easy to do. Continue rinsing", hazards: ["H314", "H318", "H319"], source: "ghsPrecautions" },
  { code: "P301+P310", text: "IF SWALLOWED: Immediately call a POISON CENTER/doctor", hazards: ["H300", "H301", "H304"], source: "ghsPrecautions" },
  { code: "P301+P330+P331", text: "IF SWALLOWED: Rinse mouth. Do NOT induce vomiting", hazards: ["H314"], source: "ghsPrecautions" },
  { code: "P303+P361+P353", text: "IF ON SKIN (or hair): Take off immediately all contaminated clothing. Rinse skin with water", hazards: ["H224", "H225", "H226", "H314"], source: "ghsPrecautions" },
  { code: "P261", text: "Avoid breathing dust/fume/gas/mist/vapours/spray", hazards: ["H317", "H331", "H332", "H334", "H335", "H336"], source: "ghsPrecautions" },
  { code: "P273", text: "Avoid release to the environment", hazards: ["H400", "H410", "H411", "H412", "H413"], source: "ghsPrecautions" },
  { code: "P304+P340", text: "IF INHALED: Remove person to fresh air and keep comfortable for breathing", hazards: ["H314", "H330", "H331", "H332", "H334", "H335", "H336"], source: "ghsPrecautions" },
  { code: "P302+P352", text: "IF ON SKIN: Wash with plenty of water", hazards: ["H310", "H311", "H312", "H315", "H317"], source: "ghsPrecautions" },
  { code: "P301+P312", text: "IF SWALLOWED: Call a POISON CENTER/doctor if you feel unwell", hazards: ["H302"], source: "ghsPrecautions" },
  { code: "P308+P313", text: "IF exposed or concerned: Get medical advice/attention", hazards: ["H340", "H341", "H350", "H351", "H360", "H361", "H362"], source: "ghsPrecautions" },
  { code: "P270", text: "Do not eat, drink or smoke when using this product", hazards: ["H300", "H301", "H302", "H310", "H370", "H371", "H372"], source: "ghsPrecautions" },
  { code: "P264", text: "Wash hands thoroughly after handling", hazards: ["H300", "H301", "H302", "H310", "H314", "H315", "H319", "H370", "H371", "H372"], source: "ghsPrecautions" },
  { code: "P410+P403", text: "Protect from sunlight. Store in a well-ventilated place", hazards: ["H280"], source: "ghsPrecautions" },
  { code: "P390", text: "Absorb spillage to prevent material damage", hazards: ["H290"], source: "ghsPrecautions" },
  { code: "P391", text: "Collect spillage", hazards: ["H400", "H410", "H411"], source: "ghsPrecautions" },
  { code: "P405", text: "Store locked up", hazards: ["H300", "H301", "H310", "H311", "H314", "H330", "H331", "H340", "H341", "H350", "H351", "H360", "H361", "H370"], source: "ghsPrecautions" },
]);

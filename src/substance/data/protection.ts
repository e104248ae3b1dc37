// Protection by hazard statement, in our own words after the precautionary statements of the GHS (United Nations, Annex 3,
// prevention: P201, P210, P220, P222, P223, P231, P234, P260 to P264, P270, P271, P273, P280, P284).
import { once } from "../../foundation/memo";
import type { HazardSourceKey } from "./sources";

/** What kind of protection it is; a sheet has one box for each. */
export type ProtectionKind = "goggles" | "gloves" | "apron" | "hood" | "air" | "flame" | "dust" | "dry" | "fuel" | "unborn" | "mask" | "mouth" | "rinse" | "pack";

interface ProtectionRow {
  readonly kind: ProtectionKind;
  /** Statement codes that ask for it; a suffix (`H360FD`) is left out. */
  readonly codes: readonly string[];
  readonly does: string;
  readonly source: HazardSourceKey;
}

export const PROTECTION_BY_CODE = /* @__PURE__ */ once((): readonly ProtectionRow[] => [
  { kind: "goggles", codes: ["H314", "H315", "H318", "H319"], does: "goggles that close all round", source: "unGhs" },
  { kind: "gloves", codes: ["H310", "H311", "H312", "H313", "H314", "H315", "H316", "H317", "H340", "H341", "H350", "H351", "H360", "H361"], does: "gloves that this substance does not pass", source: "unGhs" },
  { kind: "gloves", codes: ["H300", "H301", "H318", "H372", "H373"], does: "gloves that this substance does not pass", source: "commonPractice" },
  { kind: "apron", codes: ["H314"], does: "apron or old long clothes, closed shoes", source: "unGhs" },
  { kind: "hood", codes: ["H330", "H331", "EUH029", "EUH031", "EUH032"], does: "only under a hood that works", source: "unGhs" },
  { kind: "air", codes: ["H332", "H333", "H334", "H335", "H336"], does: "outdoors or in moving air, nothing breathed in", source: "unGhs" },
  { kind: "dust", codes: ["H334", "H341", "H350", "H372"], does: "no dust: work wet, wipe up wet, no sweeping", source: "unGhs" },
  { kind: "mask", codes: ["H373"], does: "a dust mask where it is weighed and bottled dry", source: "commonPractice" },
  { kind: "flame", codes: ["H220", "H221", "H222", "H223", "H224", "H225", "H226", "H227", "H228", "H260", "H261", "H270", "H271", "H272"], does: "no flame, spark or hot plate near", source: "unGhs" },
  { kind: "fuel", codes: ["H270", "H271", "H272"], does: "nothing near that burns: no paper, sawdust, sugar, oil or cloth", source: "unGhs" },
  { kind: "dry", codes: ["H250", "H260", "H261", "EUH014"], does: "keep it dry and closed; dry sand at hand, no water on it", source: "unGhs" },
  { kind: "unborn", codes: ["H360", "H361", "H362"], does: "not for anybody who is, or may become, pregnant, or who nurses", source: "unGhs" },
  { kind: "mouth", codes: ["H300", "H301", "H302", "H304", "H340", "H350", "H351", "H370", "H371", "H373"], does: "nothing to eat or drink near it; wash the hands after it", source: "unGhs" },
  { kind: "rinse", codes: ["H400", "H410", "H411", "H412"], does: "catch the rinse and the spills: not into the drain", source: "unGhs" },
  { kind: "pack", codes: ["H290"], does: "keep it in its own bottle, never in a tin", source: "unGhs" },
]);

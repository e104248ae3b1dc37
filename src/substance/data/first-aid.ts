// First aid by hazard statement, in our own words after the precautionary statements of the GHS (United Nations, Annex 3,
// response). The first lines a person needs at a bench; the safety data sheet and the emergency number decide.
import { once } from "../../foundation/memo";
import type { HazardSourceKey } from "./sources";

interface FirstAidRow {
  /** Statement codes that ask for it. */
  readonly codes: readonly string[];
  readonly when: "in the eyes" | "on the skin" | "swallowed" | "breathed in" | "fire";
  readonly does: string;
  readonly source: HazardSourceKey;
}

export const FIRST_AID = /* @__PURE__ */ once((): readonly FirstAidRow[] => [
  { codes: ["H314", "H318"], when: "in the eyes", does: "rinse at once with running water for 15 minutes, lids held open, lenses out; call for help while rinsing", source: "unGhs" },
  { codes: ["H319", "H320"], when: "in the eyes", does: "rinse with running water for several minutes, lenses out; see a doctor if it goes on hurting", source: "unGhs" },
  { codes: ["H314"], when: "on the skin", does: "take wet clothes off at once, rinse under running water for 15 minutes; a doctor looks at it", source: "unGhs" },
  { codes: ["H310", "H311", "H312"], when: "on the skin", does: "take wet clothes off, wash with much water and soap; call the poison centre", source: "unGhs" },
  { codes: ["H315", "H317"], when: "on the skin", does: "wash with water and soap; see a doctor for a rash", source: "unGhs" },
  { codes: ["H314"], when: "swallowed", does: "rinse the mouth, drink a few sips of water, do not make it come up; call for help", source: "unGhs" },
  { codes: ["H300", "H301", "H302"], when: "swallowed", does: "rinse the mouth and call the poison centre with the label in hand", source: "unGhs" },
  { codes: ["H304"], when: "swallowed", does: "do not make it come up; call the poison centre at once", source: "unGhs" },
  { codes: ["H330", "H331", "H332", "H334", "H335", "H336"], when: "breathed in", does: "fresh air and rest; call for help if breathing stays hard", source: "unGhs" },
  { codes: ["H350", "H351", "H340", "H341", "H360", "H361", "H370", "H372"], when: "swallowed", does: "get medical advice, also without symptoms", source: "unGhs" },
  // an oxidiser beside what burns: a lid, powder or a blanket keeps no air from it
  { codes: ["H270", "H271", "H272"], when: "fire", does: "what oxidises feeds it without air: much water, no lid, powder or blanket; take flames and what burns away, wet what it fell on, burn nothing with it on", source: "unGhs" },
  { codes: ["H220", "H221", "H224", "H225", "H226", "H228"], when: "fire", does: "take flames away, let it burn out or smother it; do not carry burning vessels", source: "unGhs" },
]);

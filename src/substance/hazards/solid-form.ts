// Which forms of a solid a name says: foil is no powder.
import { once } from "../../foundation/memo";
import type { SolidForm } from "../data/hazards";
import { SOLID_FORMS } from "../data/solid-forms";

const patterns = /* @__PURE__ */ once(() =>
  SOLID_FORMS.map(({ state, words }) => ({ state, pattern: new RegExp(`\\b(?:${words.join("|")})s?\\b`, "i") })),
);

/** The forms of a solid that a text says; none where it says nothing of them. */
export const solidFormsIn = (text: string): readonly SolidForm[] =>
  patterns()
    .filter(({ pattern }) => pattern.test(text))
    .map(({ state }) => state);

// Families of the periodic table that rules of chemistry are written for.

/** Metals of group 1: with few exceptions their salts dissolve. */
export const ALKALI_METALS: ReadonlySet<string> = /* @__PURE__ */ new Set(["Li", "Na", "K", "Rb", "Cs"]);

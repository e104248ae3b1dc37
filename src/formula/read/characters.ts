// Characters that mean something in a formula: dots, super- and subscripts, signs, vulgar fractions, and look-alikes.

/** What a formula can end with in brackets. */
export const PHASES: ReadonlySet<string> = /* @__PURE__ */ new Set(["s", "l", "g", "aq", "cr"]);

/** Adduct dots other than the full stop; the multiplication sign stands on many labels. */
export const DOTS = "·•⋅*∙‧×˙・･●\u0387∗⋆";
/** After a formula, gas that escapes and what precipitates. */
export const GAS_ARROW = "↑";
export const PRECIPITATE_ARROW = "↓";
export const PLUS = "+＋";
/** Hyphen-minus, minus sign, and the dashes that word processors put in its place. */
export const MINUS = "-−–‐‑";

export const FRACTIONS: Readonly<Record<string, readonly [number, number]>> = {
  "½": [1, 2],
  "⅓": [1, 3],
  "⅔": [2, 3],
  "¼": [1, 4],
  "¾": [3, 4],
  "⅕": [1, 5],
  "⅖": [2, 5],
  "⅗": [3, 5],
  "⅘": [4, 5],
  "⅙": [1, 6],
  "⅚": [5, 6],
  "⅛": [1, 8],
  "⅜": [3, 8],
  "⅝": [5, 8],
  "⅞": [7, 8],
};

// Letters of other scripts, and the Latin ones that print like them.
const LOOK_ALIKES = "АВСЕНІЈКМОРЅТУХасеіорѕухгпΑΒΕΖΗΙΚΜΝΟΡΤΥΧαονι";
const LATIN = "ABCEHIJKMOPSTYXaceiopsyxrnABEZHIKMNOPTYXaovi";

/** The ASCII character that a Cyrillic, Greek or full-width one passes for, with the name of its script. */
export function lookAlike(character: string): { ascii: string; script: string } | undefined {
  const code = character.codePointAt(0)!;
  if (code >= 0xff01 && code <= 0xff5e) return { ascii: String.fromCharCode(code - 0xfee0), script: "full-width" };
  const at = LOOK_ALIKES.indexOf(character);
  return at < 0 ? undefined : { ascii: LATIN[at]!, script: code >= 0x400 ? "Cyrillic" : "Greek" };
}

export function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

export function isUpper(code: number): boolean {
  return code >= 65 && code <= 90;
}

export function isLower(code: number): boolean {
  return code >= 97 && code <= 122;
}

/** The counterpart of a bracket, either way. */
export const PARTNER: Readonly<Record<string, string>> = { "(": ")", "[": "]", "{": "}", ")": "(", "]": "[", "}": "{" };

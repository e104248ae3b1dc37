// Characters that mean something in a formula: dots, super- and subscripts, signs, vulgar fractions, and look-alikes.

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

// Letters of other scripts that print like a Latin one.
const LOOK_ALIKES: Readonly<Record<string, string>> = {
  А: "A",
  В: "B",
  С: "C",
  Е: "E",
  Н: "H",
  І: "I",
  Ј: "J",
  К: "K",
  М: "M",
  О: "O",
  Р: "P",
  Ѕ: "S",
  Т: "T",
  У: "Y",
  Х: "X",
  а: "a",
  с: "c",
  е: "e",
  і: "i",
  о: "o",
  р: "p",
  ѕ: "s",
  у: "y",
  х: "x",
  г: "r",
  п: "n",
  Α: "A",
  Β: "B",
  Ε: "E",
  Ζ: "Z",
  Η: "H",
  Ι: "I",
  Κ: "K",
  Μ: "M",
  Ν: "N",
  Ο: "O",
  Ρ: "P",
  Τ: "T",
  Υ: "Y",
  Χ: "X",
  α: "a",
  ο: "o",
  ν: "v",
  ι: "i",
};

/** The ASCII character that a Cyrillic, Greek or full-width one passes for, with the name of its script. */
export function lookAlike(character: string): { ascii: string; script: string } | undefined {
  const code = character.codePointAt(0)!;
  if (code >= 0xff01 && code <= 0xff5e) return { ascii: String.fromCharCode(code - 0xfee0), script: "full-width" };
  const ascii = LOOK_ALIKES[character];
  if (ascii === undefined) return undefined;
  return { ascii, script: code >= 0x400 ? "Cyrillic" : "Greek" };
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

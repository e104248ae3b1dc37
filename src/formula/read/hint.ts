// "Did you mean": the nearest sensible reading of letters that are no element symbol. Bounded: a run of at most 40 letters,
// a text of at most MAX_HINT_LENGTH characters, one dynamic programme over the run.
import { elementIndexOf } from "../../element/internal";
import { codePointName } from "../../foundation/error";
import { FormulaError } from "../error";
import { isLower, isUpper, lookAlike } from "./characters";
import { MAX_HINT_LENGTH } from "./limits";

const MAX_RUN = 40;

// How ready a chemist is to read a symbol into mistyped letters: the everyday elements first.
const EVERYDAY = /* @__PURE__ */ new Set(
  /* @__PURE__ */ "H C N O S P F Cl Br I Na K Li Mg Ca Ba Sr Al Si Zn Cu Fe Mn Ag Pb Sn Cr Ni Hg".split(" "),
);
const USUAL = /* @__PURE__ */ new Set(
  /* @__PURE__ */ "B As Sb Bi Co Cd Ti V Mo W Au Pt Be Rb Cs Se Zr Ce La U Th Te Ga Ge".split(" "),
);

function cost(symbol: string): number {
  if (EVERYDAY.has(symbol)) return symbol.length > 1 ? 1.1 : 1;
  return USUAL.has(symbol) ? 3 : 6;
}

const ABBREVIATIONS: Readonly<Record<string, string>> = {
  Me: "CH3",
  Et: "C2H5",
  Ph: "C6H5",
  Bu: "C4H9",
  Ac: "CH3CO",
  en: "C2H8N2",
  py: "C5H5N",
  acac: "C5H7O2",
  edta: "C10H12N2O8",
  phen: "C12H8N2",
  bpy: "C10H8N2",
  ox: "C2O4",
};

/** The cheapest split of letters into symbols, whatever their case; undefined if there is none. */
function respell(letters: string): string | undefined {
  const best: ({ cost: number; text: string } | undefined)[] = [{ cost: 0, text: "" }];
  for (let i = 1; i <= letters.length; i += 1) {
    for (const length of [1, 2]) {
      const from = best[i - length];
      if (from === undefined) continue;
      const piece = letters.slice(i - length, i);
      const symbol = piece[0]!.toUpperCase() + piece.slice(1).toLowerCase();
      if (elementIndexOf(symbol) < 0) continue;
      // Letters that already stand as the symbol are kept more readily than respelt ones.
      const total = from.cost + cost(symbol) + (piece === symbol ? 0 : 0.05);
      if (best[i] === undefined || total < best[i]!.cost) best[i] = { cost: total, text: from.text + symbol };
    }
  }
  return best[letters.length]?.text;
}

function isLetter(code: number): boolean {
  return isUpper(code) || isLower(code);
}

/** Every run of letters in the text respelt; undefined if one cannot be. */
function respellAll(text: string): string | undefined {
  let out = "";
  for (let i = 0; i < text.length; ) {
    if (!isLetter(text.charCodeAt(i))) {
      out += text[i++];
      continue;
    }
    let to = i;
    while (to < text.length && isLetter(text.charCodeAt(to))) to += 1;
    if (to - i > MAX_RUN) return undefined;
    const run = text.slice(i, to);
    const phase = text[i - 1] === "(" && text[to] === ")" && /^(?:s|l|g|aq|cr)$/.test(run);
    const spelt = phase ? run : respell(run);
    if (spelt === undefined) return undefined;
    out += spelt;
    i = to;
  }
  return out;
}

/** Letters at `position` that begin no element symbol. */
export function unknownSymbolError(text: string, position: number): FormulaError {
  const second = text[position + 1] ?? " ";
  const alike = lookAlike(second);
  const written = /.[a-z]*/s.exec(text.slice(position, position + MAX_RUN))![0];
  let hint: string | undefined;
  const prefix = /^[a-z]{1,5}-(?=[A-Z[(])/.exec(text)?.[0];
  const metastable = /^(\[?\d{1,3})m([A-Z][a-z]?)/.exec(text.slice(Math.max(0, position - 4), position + 3));
  const abbreviation = Object.keys(ABBREVIATIONS).find((name) => name === written);
  if (text === "e" || /^\d+e$/.test(text)) hint = "the electron is written e-";
  else if (/^(?:kJ|kcal|cal|heat|energy)\b/.test(text.slice(position, position + 8))) {
    hint = "heat is not a species; leave it out";
  } else if (abbreviation !== undefined) {
    hint = `abbreviations of groups are not read; write ${abbreviation} as ${ABBREVIATIONS[abbreviation]}`;
  } else if (prefix !== undefined) {
    hint = `leave the prefix out: ${text.slice(prefix.length, 60)}`;
  } else if (metastable !== null) {
    hint = `metastable states are not distinguished; write [${metastable[1]!.replace("[", "")}${metastable[2]}]`;
  } else if (alike !== undefined) {
    hint = `${codePointName(second)} is ${alike.script}; type "${alike.ascii}"`;
  } else if (text.length <= MAX_HINT_LENGTH) {
    const meant = respellAll(text);
    if (meant !== undefined && meant !== text) hint = `did you mean ${meant}?`;
    else if (/^[AELMQRX]$/.test(written)) hint = `${written} is not the symbol of an element; write what is meant`;
  }
  return new FormulaError("formula.unknown-symbol", `"${written}" is not an element`, {
    input: text,
    position,
    hint,
    details: { written, ...(hint === undefined ? {} : { hint }) },
  });
}

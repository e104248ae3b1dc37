// Characters that look like another one, as a written table: what is folded silently, and what is refused by name.
import { codePointName } from "../../foundation/error";
import { QuantityError } from "../error";

/** Folded to the plain character: the meaning is beyond doubt. */
const FOLDED: Readonly<Record<string, string>> = {
  "\u00a0": " ", // no-break space
  "\u2002": " ", // en space
  "\u2003": " ", // em space
  "\u2007": " ", // figure space
  "\u2009": " ", // thin space
  "\u200a": " ", // hair space
  "\u202f": " ", // narrow no-break space
  "\u3000": " ", // ideographic space
  "\t": " ",
  "\u2212": "-", // minus sign
  "\u2010": "-", // hyphen
  "\u2011": "-", // non-breaking hyphen
  "\u2012": "-", // figure dash
  "\u2013": "-", // en dash
  "\uff0d": "-", // full-width hyphen-minus
  "\ufe63": "-", // small hyphen-minus
  "\u03bc": "µ", // Greek mu for the micro sign
  "\u2206": "Δ", // increment for Greek capital delta
  "\u2126": "Ω", // ohm sign for Greek capital omega
  "\u212a": "K", // kelvin sign
  "\u00ba": "°", // masculine ordinal for the degree sign
  "\u02da": "°", // ring above for the degree sign
  "\u2022": "·", // bullet
  "\u22c5": "·", // dot operator
  "\u2215": "/", // division slash
  "\u2044": "/", // fraction slash
  "\uff05": "%", // full-width percent
};

/** Scripts whose letters pass for Latin ones. */
const FOREIGN =
  /[\u0370-\u0393\u0395-\u03a8\u03aa-\u03bb\u03bd-\u03ff\u0400-\u04ff\u2100-\u2125\u2127-\u2129\u212b-\u214f\uff01-\uff04\uff06-\uff0c\uff0e-\uff5e\u0660-\u0669\u06f0-\u06f9]/;

/** Characters that may stand in a quantity after folding. */
const PLAIN = /^[ -~°µ·±Δ⁻⁰¹²³⁴⁵⁶⁷⁸⁹×Ω€£℃℉‰…⋅]*$/;

const NEEDS_FOLDING = /[^ -~°µ±]/;

/**
 * The text with look-alikes folded, same length as before (so that positions stay true).
 * @throws {QuantityError} `quantity.look-alike` naming the code point of a character that cannot be folded
 */
export function fold(text: string): string {
  if (!NEEDS_FOLDING.test(text)) return text;
  let folded = "";
  for (const c of text) folded += FOLDED[c] ?? c;
  if (PLAIN.test(folded)) return folded;
  const position = [...folded].findIndex((c) => !PLAIN.test(c));
  const c = [...folded][position]!;
  throw new QuantityError(
    "quantity.look-alike",
    `the character '${c}' (${codePointName(c)}) is not part of a quantity`,
    {
      input: text,
      position: [...folded].slice(0, position).join("").length,
      hint: FOREIGN.test(c) ? "it looks like a plain letter or digit; type it again in ASCII" : hintFor(c),
      details: { codePoint: codePointName(c) },
    },
  );
}

function hintFor(c: string): string {
  if (/[¼-¾⅐-⅞]/.test(c)) return "write it with a decimal point";
  return /[\p{C}\p{Z}]/u.test(c)
    ? "remove it"
    : "it means nothing in a quantity; leave it out or write the unit in letters";
}

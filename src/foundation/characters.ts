// Digits above and below the line, in the order of their values: formulas, units, powers of ten and symbols read and print them.
export const SUBSCRIPTS = "₀₁₂₃₄₅₆₇₈₉";
export const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
/** The minus sign above the line. */
const SUPERSCRIPT_MINUS = "⁻";

/** A whole number below the line. */
export const subscript = (digits: number): string =>
  [...String(digits)].map((digit) => SUBSCRIPTS[Number(digit)]).join("");

/** Digits and minus signs above the line as plain ones; other characters stay. */
export const lowered = (text: string): string =>
  [...text]
    .map((one) => (one === SUPERSCRIPT_MINUS ? "-" : SUPERSCRIPTS.includes(one) ? SUPERSCRIPTS.indexOf(one) : one))
    .join("");

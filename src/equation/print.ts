// Equations as text: ASCII that reads back, Unicode, HTML and LaTeX.
import type { Formula } from "../formula";
import type { Arrow } from "./read/split";

export type Notation = "ascii" | "unicode" | "html" | "latex";

const ARROWS: Readonly<Record<Notation, Readonly<Record<Arrow, string>>>> = {
  ascii: { forward: "->", equilibrium: "<=>", equality: "=" },
  unicode: { forward: "→", equilibrium: "⇌", equality: "=" },
  html: { forward: "&rarr;", equilibrium: "&#8652;", equality: "=" },
  latex: { forward: "\\longrightarrow", equilibrium: "\\rightleftharpoons", equality: "=" },
};

function formulaText(formula: Formula, notation: Notation): string {
  if (notation === "ascii") return formula.toString();
  if (notation === "unicode") return formula.toUnicode();
  return notation === "html" ? formula.toHTML() : formula.toLaTeX();
}

/** What the printer needs of an equation. */
interface Printable {
  readonly formulas: readonly Formula[];
  readonly reactantCount: number;
  readonly arrow: Arrow;
}

/**
 * @param coefficients - text before each formula, empty for none; undefined when no species has one
 */
export function printEquation(
  { formulas, reactantCount, arrow }: Printable,
  coefficients: readonly string[] | undefined,
  notation: Notation,
): string {
  const space = notation === "latex" ? "\\," : " ";
  const terms = formulas.map((formula, at) => {
    const text = formulaText(formula, notation);
    const coefficient = coefficients?.[at] ?? "";
    if (coefficient === "") return text;
    // 2 of 3CdSO4·8H2O: brackets keep the two numbers apart
    return /^\d/.test(text) ? `${coefficient}${space}(${text})` : `${coefficient}${space}${text}`;
  });
  const left = terms.slice(0, reactantCount).join(" + ");
  const right = terms.slice(reactantCount).join(" + ");
  return `${left} ${ARROWS[notation][arrow]} ${right}`;
}

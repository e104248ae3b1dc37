// Formulas as text: canonical ASCII, Unicode, HTML, LaTeX and Hill. Structure is printed as written. What ASCII could
// misread (a decimal that looks like an adduct dot) is read back before it is given out, and written unmistakably if need be.
import { ELEMENT_COUNT, symbolAt } from "../../element/internal";
import { SUBSCRIPTS, SUPERSCRIPTS } from "../../foundation/characters";
import { FRACTIONS, PARTNER } from "../read/characters";
import type { Bracket, FormulaNode, Reading } from "../read/nodes";
import { type Ratio, ratio, ratioText } from "../read/ratio";
import { readFormula } from "../read/read";
import { hillOrder } from "./order";

/**
 * Where a charge stands: `inside` a run, so that only braces end it; `last`; or `bare`, last and without digits before it
 * that a lone sign could be taken together with.
 */
type ChargePlace = "inside" | "last" | "bare";

interface Style {
  readonly dot: string;
  subscript(count: Ratio): string;
  multiplier(number: Ratio): string;
  charge(charge: number, place: ChargePlace): string;
  nuclide(massNumber: string, symbol: string, count: string): string;
  bracket(bracket: string): string;
  oxidation(roman: string): string;
}

function isOne({ n, d }: Ratio): boolean {
  return n === 1 && d === 1;
}

function signed(charge: number, minus: string): string {
  const magnitude = Math.abs(charge);
  return `${magnitude === 1 ? "" : magnitude}${charge < 0 ? minus : "+"}`;
}

/** `dot` and `braced` are raised step by step until the text reads back. */
function ascii(dot: string, braced: boolean): Style {
  return {
    dot,
    subscript: (count) => {
      const text = ratioText(count);
      return text.includes("/") || (braced && text.includes(".")) ? `_{${text}}` : text;
    },
    multiplier: ratioText,
    charge: (charge, place) => {
      const text = signed(charge, "-");
      if (place === "inside") return `^{${text}}`;
      return place === "bare" && Math.abs(charge) === 1 ? text : `^${text}`;
    },
    nuclide: (massNumber, symbol, count) => `[${massNumber}${symbol}]${count}`,
    bracket: (bracket) => bracket,
    oxidation: (roman) => `^{${roman}}`,
  };
}

const raised = (text: string): string =>
  text
    .replace(/[0-9]/g, (digit) => SUPERSCRIPTS[Number(digit)]!)
    .replace("+", "⁺")
    .replace("-", "⁻");
const lowered = (text: string): string => text.replace(/[0-9]/g, (digit) => SUBSCRIPTS[Number(digit)]!);

/** `½`, `1½`, `5¾` where Unicode has the fraction and halves, thirds or quarters are meant. */
function vulgar(number: Ratio): string {
  const { n, d } = number;
  const whole = Math.floor(n / d);
  if (d < 2 || d > 4) return ratioText(number);
  const part = Object.keys(FRACTIONS).find((key) => FRACTIONS[key]![0] === n % d && FRACTIONS[key]![1] === d)!;
  return `${whole === 0 ? "" : whole}${part}`;
}

const UNICODE: Style = {
  dot: "·",
  subscript: (count) => {
    const text = ratioText(count);
    return text.includes("/") ? `_{${text}}` : lowered(text);
  },
  multiplier: vulgar,
  charge: (charge) => raised(signed(charge, "-")),
  nuclide: (massNumber, symbol, count) => `${raised(massNumber)}${symbol}${count}`,
  bracket: (bracket) => bracket,
  oxidation: (roman) => `^{${roman}}`,
};

const HTML: Style = {
  dot: "·",
  subscript: (count) => `<sub>${ratioText(count)}</sub>`,
  multiplier: vulgar,
  charge: (charge) => `<sup>${signed(charge, "−")}</sup>`,
  nuclide: (massNumber, symbol, count) => `<sup>${massNumber}</sup>${symbol}${count}`,
  bracket: (bracket) => bracket,
  oxidation: (roman) => `<sup>${roman}</sup>`,
};

const LATEX: Style = {
  dot: "\\cdot ",
  subscript: (count) => `_{${ratioText(count)}}`,
  multiplier: (number) => {
    const { n, d } = number;
    return d === 1 || (d !== 2 && d !== 3 && d !== 4) ? ratioText(number) : `\\tfrac{${n}}{${d}}`;
  },
  charge: (charge) => `^{${signed(charge, "-")}}`,
  nuclide: (massNumber, symbol, count) => `{}^{${massNumber}}${symbol}${count}`,
  bracket: (bracket) => (bracket === "{" || bracket === "}" ? `\\${bracket}` : bracket),
  oxidation: (roman) => `^{${roman}}`,
};

function chargePlace(before: FormulaNode, next: FormulaNode["kind"] | undefined): ChargePlace {
  if (next !== undefined && next !== "part" && next !== "close") return "inside";
  // `[Ag(NH3)2]2+` and `SO42-` would be taken for charges of two.
  if (before.kind === "close" && before.bracket === "[" && !isOne(before.count)) return "last";
  const many = (before.kind === "close" || before.kind === "atom") && before.count.d === 1 && before.count.n >= 20;
  return many ? "last" : "bare";
}

function isInSquareBracket(before: FormulaNode | undefined): boolean {
  return before?.kind === "open" && before.bracket === "[";
}

function closes(next: FormulaNode | undefined): boolean {
  return next?.kind === "close" && next.bracket === "[";
}

/** Nodes in a style, without the phase. */
function printNodes(nodes: readonly FormulaNode[], style: Style): string {
  let text = "";
  for (let i = 0; i < nodes.length; i += 1) {
    const node = nodes[i]!;
    switch (node.kind) {
      case "part":
        text += (node.dot ? style.dot : "") + (isOne(node.number) ? "" : style.multiplier(node.number));
        // [2H2] would be deuterium
        if (isInSquareBracket(nodes[i - 1]) && !isOne(node.number)) text += " ";
        break;
      case "atom": {
        const count = isOne(node.count) ? "" : style.subscript(node.count);
        const name = symbolAt(node.atom);
        const next = nodes[i + 1];
        const oxidation = next?.kind === "oxidation" ? style.oxidation(next.roman) : "";
        if (node.atom < ELEMENT_COUNT || node.short) text += name + oxidation + count;
        else {
          const element = symbolAt(Math.floor(node.atom / 1000) - 1);
          const nuclide = style.nuclide(String(node.atom % 1000), element, oxidation + count);
          // alone in square brackets the nuclide keeps its own pair: [¹³C] would be the bare nuclide again
          const alone = isInSquareBracket(nodes[i - 1]) && closes(nodes[oxidation === "" ? i + 1 : i + 2]);
          text += alone && nuclide[0] !== "[" ? `[${nuclide}]` : nuclide;
        }
        break;
      }
      case "oxidation":
        break; // printed with its atom
      case "open":
        text += style.bracket(node.bracket);
        break;
      case "close":
        text +=
          style.bracket(PARTNER[node.bracket] as Bracket) + (isOne(node.count) ? "" : style.subscript(node.count));
        break;
      case "charge": {
        text += style.charge(node.charge, chargePlace(nodes[i - 1]!, nodes[i + 1]?.kind));
        break;
      }
      case "electron":
        text += `e${style.charge(-1, "bare")}`;
        break;
    }
  }
  return text;
}

function withPhase(text: string, phase: string | undefined): string {
  return phase === undefined ? text : `${text}(${phase})`;
}

/** Nodes as a text that can be read in one way only: no dot of it is a decimal point where that matters. */
const plainly = (nodes: readonly FormulaNode[]): string => printNodes(nodes, ascii("*", true));

function readsBack(text: string, nodes: readonly FormulaNode[]): boolean {
  try {
    return plainly(readFormula(text).nodes) === plainly(nodes);
  } catch {
    return false;
  }
}

/** Canonical ASCII of nodes: the full stop as adduct dot where that reads back, `*` where it does not. */
export function asciiNodes(nodes: readonly FormulaNode[]): string {
  const plain = printNodes(nodes, ascii(".", false));
  if (!plain.includes(".") || readsBack(plain, nodes)) return plain;
  const starred = printNodes(nodes, ascii("*", false));
  if (readsBack(starred, nodes)) return starred;
  return plainly(nodes);
}

export function asciiText({ nodes, phase }: Reading): string {
  return withPhase(asciiNodes(nodes), phase);
}

export function unicodeText({ nodes, phase }: Reading): string {
  return withPhase(printNodes(nodes, UNICODE), phase);
}

export function htmlText({ nodes, phase }: Reading): string {
  return withPhase(printNodes(nodes, HTML), phase);
}

export function latexText({ nodes, phase }: Reading): string {
  return `\\mathrm{${withPhase(printNodes(nodes, LATEX), phase)}}`;
}

/** What the Hill form is made from. */
interface Counted {
  readonly elementIndices: readonly number[];
  readonly numerators: readonly number[];
  readonly denominator: number;
  readonly charge: number;
  readonly phase: string | undefined;
}

/** Hill form: carbon, hydrogen, the rest by alphabet. */
export function hillText({ elementIndices, numerators, denominator, charge, phase }: Counted): string {
  const nodes: FormulaNode[] = [];
  for (const position of hillOrder(elementIndices)) {
    const atom = elementIndices[position]!;
    const short = atom === 1002 || atom === 1003;
    nodes.push({ kind: "atom", atom, count: ratio(numerators[position]!, denominator), short });
  }
  if (elementIndices.length === 0) {
    nodes.push({ kind: "part", dot: false, number: { n: -charge, d: 1 } }, { kind: "electron" });
  } else if (charge !== 0) nodes.push({ kind: "charge", charge });
  return withPhase(asciiNodes(nodes), phase);
}

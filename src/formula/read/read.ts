// The full reader: every notation, every error. Left to right, no recursion, no backtracking; output is a flat node list.
// (The usual plain formulas never come here, see scan.ts; both must agree, and a test holds them to it.)
//
// The grammar, by example
//   H2O  CH3COOH  (CH3)2CO           elements, groups, condensed organic formulas; repeated elements add up
//   K4[Fe(CN)6]  {[Cu(en)2]}         brackets () [] {} of any nesting, each closed by its own kind
//   H₂O  H_2O  H_{2}O  H_{8/3}O      subscripts: digits, Unicode, LaTeX text, ratios in braces
//   Fe0.95O  YBa2Cu3O6.93            non-stoichiometric counts (dots.ts tells decimal point and adduct dot apart)
//   CuSO4·5H2O  •  ⋅  *  .  ×  x     adduct dots; parts take a leading number
//   CaSO4·½H2O  ·0.5H2O  ·.5H2O  ·1/2H2O  ·(1/2)H2O   half a water (and ·1½H2O)
//   3CdSO4·8H2O  Fe·(2H2O)           numbers in front of any part, and in front of what a bracket holds
//   CuSO4·nH2O  CuxS  (C2H4)n  Fe1-xO  YBa2Cu3O7-x   with the caller's values for n and x only
//   LiNi1/3Mn1/3Co1/3O2              fractional subscripts
//   SO4^2-  SO4^{2-}  SO₄²⁻  SO4²-  SO₄2-  SO4 2-  SO4-2  SO4(2-)  SO4{2-}  Ca++   charge, at the end of a part or bracket
//   [PCl4]+[PCl6]-                   a sign after a square bracket, before the next
//   NH4+  NO3-  I3-  O2-  Hg2+       a bare sign is one unit and the digit before it is a subscript: Hg2+ is [Hg2]+
//   SO42-  PO43-                     refused: a flattened superscript, or 42 atoms
//   [Fe(CN)6]4-                      digits after a square bracket and before a sign are the charge
//   [13C]O2  ¹³CO2  ^{13}CO2  [18O2] D2O  T2   labelled nuclides; D and T are hydrogen-2 and -3
//   ^{235}_{92}UF6  ²³⁵₉₂UF6          with the atomic number, which must be right
//   C-14  U-235                      refused: no atom has such a charge
//   13CO2  Fe203  NaCI  NaOAc        read as they stand, with a remark (remarks.ts)
//   Cu2[(OH)2|CO3]                   the bar of mineral formulas, inside square brackets
//   Pb^II2Pb^IVO4  Pb^{II}           oxidation numbers, kept in the notation; Fe(III) is refused, as it reads FeI3
//   e-  e⁻  2e-                      electron
//   NaCl(aq)  (s) (l) (g) (cr)  NaCl_{(aq)}  CO2↑  AgCl↓   phase, last
//   H<sub>2</sub>O  \mathrm{H_{2}O}  our own HTML and LaTeX (markup.ts)
import { ELEMENT_COUNT, symbolAt, symbolTable } from "../../element/internal";
import { SUBSCRIPTS, SUPERSCRIPTS } from "../../foundation/characters";
import { codePointName } from "../../foundation/error";
import { FormulaError } from "../error";
import {
  DOTS,
  FRACTIONS,
  GAS_ARROW,
  isDigit,
  isLower,
  isUpper,
  lookAlike,
  MINUS,
  PARTNER,
  PHASES,
  PLUS,
  PRECIPITATE_ARROW,
} from "./characters";
import { ChargeReader } from "./charges";
import { type Code, isSeparator, isSpace, plainDigits, type ReadOptions } from "./cursor";
import { unknownSymbolError } from "./hint";
import { MAX_COUNT, MAX_DEPTH, MAX_LENGTH } from "./limits";
import { hasMarkup, plainText } from "./markup";
import type { Bracket, FormulaNode, Reading } from "./nodes";
import { commaAdvice } from "./numbers";
import { ONE, ratio } from "./ratio";

export type { ReadOptions } from "./cursor";

const ADVICE: Readonly<Record<string, string>> = {
  "=": "bonds are left out: CH2CH2",
  "≡": "bonds are left out: CHCH",
  "#": "bonds are left out: CHCH",
  ":": "write an adduct dot: CuSO4·5H2O",
  "/": "a shared site needs its shares: (Mg0.9Fe0.1)2SiO4; ions of a mineral are parted by |, inside square brackets",
  '"': "leave the quotation marks out",
  "'": "leave the quotation marks out",
  "“": "leave the quotation marks out",
  ";": "one formula at a time, and nothing after it",
};

class Reader extends ChargeReader {
  private phase: string | undefined;
  private readonly frames: { members: number; decimals: boolean }[] = [];

  read(): Reading {
    const { text } = this;
    if (text.length > MAX_LENGTH) {
      throw new FormulaError("formula.too-long", `a formula of ${text.length} characters; the limit is ${MAX_LENGTH}`, {
        details: { length: text.length, limit: MAX_LENGTH },
      });
    }
    while (this.at < this.end && isSpace(text[this.at]!)) this.at += 1;
    while (this.end > this.at && isSpace(text[this.end - 1]!)) this.end -= 1;
    if (this.at === this.end) this.fail("formula.empty", "nothing to read", this.at);
    this.readPhase();
    if (this.end < text.length) this.text = text.slice(0, this.end);
    this.beginPart(false);
    while (this.at < this.end) this.step();
    this.endPart();
    const unclosed = this.open.at(-1);
    if (unclosed !== undefined) this.unclosed(unclosed);
    return { nodes: this.nodes, phase: this.phase };
  }

  /** `NaCl(aq)`: the phase is cut off first. A bracket that holds only lower-case letters can be nothing else. */
  private readPhase(): void {
    const { text } = this;
    const arrow = text[this.end - 1];
    if (arrow === GAS_ARROW || arrow === PRECIPITATE_ARROW) {
      this.end -= 1;
      this.phase = arrow === GAS_ARROW ? "g" : "s";
      this.trimEnd();
    }
    const lowered = /_\{\((s|l|g|aq|cr)\)\}$/.exec(text.slice(this.at, this.end));
    if (lowered !== null) {
      this.phase = lowered[1];
      this.end -= lowered[0].length;
      this.trimEnd();
      return;
    }
    const { end } = this;
    if (text[end - 1] !== ")") return;
    let from = end - 2;
    while (end - from < 12 && isLower(text.charCodeAt(from))) from -= 1;
    if (text[from] !== "(" || from === end - 2) return;
    const phase = text.slice(from + 1, end - 1);
    if (!PHASES.has(phase)) {
      if (phase === "n" || phase === "x") return;
      this.fail("formula.unknown-phase", `"(${phase})" is not a phase`, from, {
        hint: "phases are (s) (l) (g) (aq) (cr)",
      });
    }
    this.phase = phase;
    this.end = text[from - 1] === "_" ? from - 1 : from;
    this.trimEnd();
  }

  /** Blanks before a phase. */
  private trimEnd(): void {
    const from = this.end;
    while (this.end > this.at && isSpace(this.text[this.end - 1]!)) this.end -= 1;
    if (this.end === this.at) this.fail("formula.empty", "a phase without a formula", from);
  }

  // -- parts ----------------------------------------------------------------------------------------------------------

  /** After a dot, at the start, or after an opening bracket: `·½H2O`, `2Na2CO3`, `·nH2O`. */
  private beginPart(dot: boolean): void {
    this.skipSpaces();
    const number = this.readNumber("multiplier");
    this.skipSpaces();
    this.members = 0;
    this.decimals = false;
    this.charged = false;
    if (dot || number !== undefined || this.open.length === 0) {
      this.nodes.push({ kind: "part", dot, number: number ?? ONE });
    }
  }

  private endPart(): void {
    if (this.label !== 0) this.danglingLabel();
    if (this.members > 0) return;
    const at = this.at;
    const unclosed = this.open.at(-1);
    if (unclosed !== undefined && at >= this.end) this.unclosed(unclosed);
    const before = this.nodes.at(-1);
    if (before?.kind === "part" && !(before.number.n === 1 && before.number.d === 1)) {
      this.fail("formula.misplaced-number", "a number with nothing after it", Math.max(0, at - 1));
    }
    this.fail("formula.empty-part", "a dot with nothing beside it", Math.max(0, at - 1), {
      hint: "write what is added, as in CuSO4·5H2O; the dot of a radical is left out",
    });
  }

  // -- one step -------------------------------------------------------------------------------------------------------

  private step(): void {
    const { text, at } = this;
    const code = text.charCodeAt(at);
    const character = text[at]!;
    if (isUpper(code) && !(character === "X" && this.isTimes())) {
      this.readAtom();
      return;
    }
    if (character === "(" || character === "[" || character === "{") {
      this.readOpen(character);
      return;
    }
    if (character === ")" || character === "]" || character === "}") {
      this.readClose(character);
      return;
    }
    if (DOTS.includes(character) || character === "." || this.isTimes()) {
      this.readDot();
      return;
    }
    if (character === "^" || SUPERSCRIPTS.includes(character) || character === "⁺" || character === "⁻") {
      this.readSuperscript();
      return;
    }
    if (PLUS.includes(character) || MINUS.includes(character)) {
      this.readBareSign();
      return;
    }
    if (isSpace(character)) {
      this.readSpace();
      return;
    }
    if (character === "|" && this.members > 0 && this.open.at(-1)?.bracket === "[" && at + 1 < this.end) {
      this.at += 1;
      return;
    }
    if (isDigit(code) && this.readDigitsBehindSubscript()) return;
    if (character === "e" && this.members === 0 && /^e(?:[-−⁻]|\^|\{[-−])/.test(text.slice(at, at + 3))) {
      this.at += 1;
      this.members += 1;
      this.nodes.push({ kind: "electron" });
      // e-, e⁻, e^-: the sign belongs to the electron and is its charge.
      const sign = /^\^?(?:\{[-−]\}|[-−⁻])/.exec(text.slice(this.at, this.at + 4));
      this.at += sign?.[0].length ?? 0;
      if (this.at < this.end && this.open.length === 0 && !isSeparator(text[this.at]!)) {
        this.fail("formula.unexpected-character", "an electron stands alone", this.at);
      }
      return;
    }
    this.unexpected(character);
  }

  private readDot(): void {
    this.endPart();
    this.at += 1;
    this.beginPart(true);
  }

  private readSpace(): void {
    const { text } = this;
    const from = this.at;
    this.skipSpaces();
    const next = text[this.at] ?? "";
    if (isSeparator(next) || this.isTimes()) return;
    // `Fe 3+`, `SO4 2-`: after a space, digits and a sign are the charge.
    if (/^[-−–]\s?\d{0,3}\s?e/.test(text.slice(this.at, this.at + 8))) {
      this.fail("formula.unexpected-space", "something taken away", from, {
        hint: "in an equation write what is given off on the other side: Zn -> Zn^2+ + 2 e-",
      });
    }
    const charge = /^(\d{0,5})([-+−–⁻⁺])(\d{0,5})/.exec(text.slice(this.at, this.at + 12));
    if (charge !== null) {
      const [whole, before = "", sign = "", after = ""] = charge;
      if ((before === "" || after === "") && this.isPartEnd(this.at + whole.length)) {
        this.at += whole.length;
        this.pushCharge(this.chargeNumber(before + after, from + 1), sign, from);
        return;
      }
    }
    this.fail("formula.unexpected-space", "a formula has no spaces inside", from, {
      hint: "remove the space, or write an adduct dot: CuSO4·5H2O",
    });
  }

  /** `Na2CO3 x 10 H2O`, `Na2CO3 X 10 H2O`: the letter in place of the multiplication sign, before a number. */
  private isTimes(): boolean {
    const { text, at } = this;
    if (this.members === 0 || (text[at] !== "x" && text[at] !== "X")) return false;
    if (text[at] === "X" && !isSpace(text[at - 1]!)) return false;
    return /^x\s{0,4}\d/i.test(text.slice(at, at + 6));
  }

  // -- atoms and groups -----------------------------------------------------------------------------------------------

  private readAtom(): void {
    const { text, at } = this;
    if (this.charged) this.afterCharge(at);
    const table = symbolTable();
    const first = (text.charCodeAt(at) - 65) * 32;
    const second = text.charCodeAt(at + 1);
    let atom = -1;
    let short = false;
    let length = 1;
    if (isLower(second)) {
      atom = table[first + second - 96]!;
      length = 2;
      // `Cux`, `Nax`: x is never the second letter of a symbol.
      if (atom < 0 && (second === 120 || second === 110) && !isLower(text.charCodeAt(at + 2))) length = 1;
      if (atom < 0 && length === 2) this.unknownSymbol(at);
    }
    if (length === 1) {
      atom = table[first]!;
      if (atom < 0 && (text[at] === "D" || text[at] === "T")) {
        atom = text[at] === "D" ? 1002 : 1003;
        short = true;
      }
      if (atom < 0) this.unknownSymbol(at);
    }
    this.at += length;
    if (this.label !== 0) {
      if (short) this.fail("formula.ambiguous-label", `${text[at]} already names a nuclide`, this.labelAt);
      atom = this.labelled(atom, this.label, this.labelAt);
      this.label = 0;
    }
    this.members += 1;
    const name = atom < ELEMENT_COUNT ? text.slice(at, this.at) : symbolAt(atom);
    const oxidation = this.readOxidation();
    const count = this.readNumber("subscript", short ? "H" : name) ?? ONE;
    this.nodes.push({ kind: "atom", atom, count, short });
    if (oxidation !== undefined) this.nodes.push({ kind: "oxidation", roman: oxidation });
  }

  private unclosed({ bracket, position }: FormulaNode & { kind: "open" }): never {
    this.fail("formula.unclosed-bracket", `"${bracket}" is never closed`, position, {
      hint: `close it with "${PARTNER[bracket]}"`,
    });
  }

  private readOpen(bracket: Bracket): void {
    const { at } = this;
    // `[PCl4]+[PCl6]-`: the square brackets say whose charge it is
    const ion = this.charged ? this.nodes.at(-2) : undefined;
    if (ion?.kind === "close" && ion.bracket === "[" && bracket === "[") this.charged = false;
    if (this.charged) this.afterCharge(at);
    if (this.label !== 0) this.danglingLabel();
    if (this.readBracketedCharge(bracket)) return;
    if (this.readNuclideBracket()) return;
    if (this.isOxidationNumber()) return;
    if (this.open.length >= MAX_DEPTH) {
      this.fail("formula.too-deep", `brackets nested more than ${MAX_DEPTH} deep`, at, {
        details: { limit: MAX_DEPTH },
      });
    }
    const node = { kind: "open" as const, bracket, position: at, count: ONE };
    this.open.push(node);
    this.nodes.push(node);
    this.frames.push({ members: this.members, decimals: this.decimals });
    this.at += 1;
    this.beginPart(false);
  }

  /** `[13C]`, `[18O2]`: a mass number and one element alone in square brackets. */
  private readNuclideBracket(): boolean {
    const { text, at } = this;
    const ahead = text.slice(at, at + 24);
    const match = /^\[([0-9]{1,3}|[⁰¹²³⁴⁵⁶⁷⁸⁹]{1,3})([A-Z][a-z]?)(\d{0,9}|[₀₁₂₃₄₅₆₇₈₉]{0,9})\]/.exec(ahead);
    if (match === null) {
      const label = /^\[(\d{1,3})([A-Z][a-z]?)/.exec(ahead);
      if (label !== null && !ahead.includes(".")) {
        this.fail("formula.ambiguous-label", "a mass number labels one element alone in its bracket", at + 1, {
          hint: `write [${label[1]}${label[2]}] for the nuclide, or [${label[1]} ${label[2]}...] with a space for a number of them`,
        });
      }
      return false;
    }
    const [whole, label, symbol, inside] = match;
    const first = (symbol!.charCodeAt(0) - 65) * 32;
    const atom = symbolTable()[first + (symbol!.length > 1 ? symbol!.charCodeAt(1) - 96 : 0)]!;
    if (atom < 0) this.unknownSymbol(at + 1 + label!.length);
    const nuclide = this.labelled(atom, Number(plainDigits(label!)), at + 1);
    this.at += whole.length;
    const insideCount = inside === "" ? 1 : Number(plainDigits(inside!));
    if (insideCount === 0) this.fail("formula.zero-count", "a count of zero", at + whole.length - 2);
    const outside = this.readNumber("subscript", symbol!) ?? ONE;
    this.members += 1;
    const n = outside.n * insideCount;
    if (n > MAX_COUNT) this.tooLarge(at);
    this.nodes.push({ kind: "atom", atom: nuclide, count: ratio(n, outside.d), short: false });
    return true;
  }

  private readClose(character: ")" | "]" | "}"): void {
    const { at } = this;
    const node = this.open.pop();
    if (node === undefined) this.fail("formula.unmatched-bracket", `"${character}" closes nothing`, at);
    if (PARTNER[node.bracket] !== character) {
      this.fail("formula.mismatched-bracket", `"${node.bracket}" closed by "${character}"`, at, {
        hint: `close it with "${PARTNER[node.bracket]}"`,
        details: { opened: node.position },
      });
    }
    if (this.members === 0) {
      this.fail("formula.empty-group", "a bracket with nothing in it", node.position);
    }
    if (this.label !== 0) this.danglingLabel();
    this.at += 1;
    const frame = this.frames.pop()!;
    this.members = frame.members + 2;
    this.decimals ||= frame.decimals;
    this.charged = false;
    const count = this.readNumber("subscript", character === "]" ? "]" : ")") ?? ONE;
    node.count = count;
    this.nodes.push({ kind: "close", bracket: node.bracket, count });
  }

  // -- errors that look around ----------------------------------------------------------------------------------------

  private unexpected(character: string): never {
    const { text, at } = this;
    const whole = String.fromCodePoint(text.codePointAt(at)!);
    const alike = lookAlike(whole);
    if (at === 0 && text[whole.length] === "-") {
      this.fail("formula.unexpected-character", `${whole}- is the name of a form, not of atoms`, at, {
        hint: `leave the prefix out: ${text.slice(whole.length + 1, 60)}`,
      });
    }
    if (alike !== undefined) {
      this.fail("formula.look-alike", `${codePointName(whole)} is ${alike.script}, not the ASCII ${alike.ascii}`, at, {
        hint: `type "${alike.ascii}" from the Latin keyboard`,
        details: { codePoint: codePointName(whole), ascii: alike.ascii },
      });
    }
    const code = text.charCodeAt(at);
    if (isLower(code)) throw unknownSymbolError(this.input, at);
    if (isDigit(code) || SUBSCRIPTS.includes(character) || character === "_" || FRACTIONS[character] !== undefined) {
      this.fail("formula.misplaced-number", "a number that belongs to nothing", at);
    }
    const shown = code < 32 || code > 126 ? codePointName(whole) : `"${whole}"`;
    this.fail("formula.unexpected-character", `${shown} means nothing in a formula`, at, {
      hint: whole === "," ? commaAdvice(text, at) : ADVICE[whole],
    });
  }
}

/** Read a text in full. Throws `FormulaError`. */
export function readFormula(text: string, options: ReadOptions = {}): Reading {
  if (text.length > MAX_LENGTH || !hasMarkup(text)) return new Reader(text, options).read();
  const plain = plainText(text);
  try {
    return new Reader(plain.text, options).read();
  } catch (error) {
    if (!(error instanceof FormulaError)) throw error;
    // Point into the text that was given, not into the plain one.
    throw new FormulaError(error.code as Code, error.problem, {
      input: text,
      position: plain.positions[error.position ?? 0],
      hint: error.hint,
      details: error.details,
    });
  }
}

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
//   [PCl4]+[PCl6]-                   a sign behind a square bracket, before the next
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
import { kindOf } from "../element/argument";
import { ELEMENT_COUNT, NUCLIDE_BASE, symbolAt, symbolTable } from "../element/symbols";
import { codePointName } from "../foundation/error";
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
  PLUS,
  PRECIPITATE_ARROW,
  SUBSCRIPTS,
  SUPERSCRIPTS,
} from "./characters";
import { isDecimalPoint } from "./dots";
import { FormulaError } from "./error";
import { unknownSymbolError } from "./hint";
import { MAX_CHARGE, MAX_COUNT, MAX_DEPTH, MAX_DIGITS, MAX_LENGTH } from "./limits";
import { hasMarkup, plainText } from "./markup";
import type { Bracket, FormulaNode, Reading } from "./nodes";
import { add, ONE, type Ratio, ratio } from "./ratio";

/** How the reader is to take what the text alone does not settle. */
export interface ReadOptions {
  /** Value of `n` in `CuSO4·nH2O` or `(C2H4)n`: a whole number, or decimal or fraction text. */
  readonly n?: number | bigint | string | undefined;
  /** Value of `x` in `CuxS` or `·xH2O`. */
  readonly x?: number | bigint | string | undefined;
  /**
   * What digits between a lone element and a bare sign are. `"subscript"` (default): `Hg2+` is a pair of atoms with one
   * charge, as `I3-` is. `"charge"`: `Hg2+`, `Fe3+` are single atoms with two and three charges.
   */
  readonly digitsBeforeSign?: "subscript" | "charge" | undefined;
}

const PHASES = new Set(["s", "l", "g", "aq", "cr"]);
/** Elements that end the formulas of common anions. */
const FLATTENED = new Set("O F Cl Br I S N".split(" "));
const ROMAN = /^(?:VIII|VII|VI|IV|IX|V|III|II|I)(?![a-z])/;

const ADVICE: Readonly<Record<string, string>> = {
  "=": "bonds are left out: CH2CH2",
  "≡": "bonds are left out: CHCH",
  "#": "bonds are left out: CHCH",
  ":": "write an adduct dot: CuSO4·5H2O",
  "/": "a shared site needs its shares: (Mg0.9Fe0.1)2SiO4; ions of a mineral are parted by |, inside square brackets",
  '"': "leave the quotation marks out",
  "'": "leave the quotation marks out",
  "“": "leave the quotation marks out",
  ";": "one formula at a time, and nothing behind it",
};

/** What a comma in a formula stands for. */
function commaAdvice(text: string, at: number): string {
  const water = /^,\s?(\d{0,3}\s?(?:H2O|H₂O))/.exec(text.slice(at, at + 12))?.[1];
  if (water !== undefined) return `write an adduct dot: ${text.slice(Math.max(0, at - 40), at)}·${water}`;
  return at + 1 === text.length
    ? "one formula at a time, and nothing behind it"
    : "a shared site needs its shares: (Mg0.9Fe0.1)2SiO4";
}

type Code = `formula.${string}`;

class Reader {
  private at = 0;
  private end: number;
  private phase: string | undefined;
  private variables = false;
  private readonly nodes: FormulaNode[] = [];
  private readonly open: (FormulaNode & { kind: "open" })[] = [];
  /** Members, decimals and charge of the part being read, one frame per open bracket. */
  private members = 0;
  private decimals = false;
  private charged = false;
  private readonly frames: { members: number; decimals: boolean }[] = [];
  /** Label waiting for its element (`¹³` in `¹³C`). */
  private label = 0;
  private labelAt = 0;

  /** The text up to the phase; `input` is all of it, for messages. */
  private text: string;

  constructor(
    private readonly input: string,
    private readonly options: ReadOptions,
  ) {
    this.text = input;
    this.end = input.length;
  }

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
    return { nodes: this.nodes, phase: this.phase, variables: this.variables };
  }

  fail(
    code: Code,
    problem: string,
    position: number,
    more: { hint?: string | undefined; details?: object } = {},
  ): never {
    throw new FormulaError(code, problem, {
      input: this.input,
      position,
      hint: more.hint,
      details: { ...more.details },
    });
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
    const lowered = /_\{\((s|l|g|aq|cr)\)\}$/.exec(text.slice(Math.max(this.at, this.end - 8), this.end));
    if (lowered !== null) {
      this.phase = lowered[1];
      this.end -= lowered[0].length;
      this.trimEnd();
      return;
    }
    const { end } = this;
    if (text[end - 1] !== ")") return;
    let from = end - 2;
    while (from > this.at && end - from < 12 && isLower(text.charCodeAt(from))) from -= 1;
    if (text[from] !== "(" || from === end - 2) return;
    const phase = text.slice(from + 1, end - 1);
    if (!PHASES.has(phase)) {
      if (phase === "n" || phase === "x") return;
      this.fail("formula.unknown-phase", `"(${phase})" is no phase`, from, {
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

  /** Behind a dot, at the start, or behind an opening bracket: `·½H2O`, `2Na2CO3`, `·nH2O`. */
  private beginPart(dot: boolean): void {
    this.skipSpaces();
    const number = this.readNumber("multiplier");
    if (number !== undefined) this.skipSpaces();
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
      this.fail("formula.misplaced-number", "a number with nothing behind it", Math.max(0, at - 1));
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
      if (/^(?:\^?\{[-−]\}|\^?[-−⁻])/.test(text.slice(this.at, this.at + 4))) {
        this.at += /^(?:\^?\{[-−]\}|\^?[-−⁻])/.exec(text.slice(this.at, this.at + 4))![0].length;
      }
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
    const charge = /^(\d{0,5})([-+−–⁻⁺])(\d{0,5})/.exec(text.slice(this.at, Math.min(this.end, this.at + 12)));
    if (charge !== null && this.members > 0) {
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

  /** Does a part, a bracket or the text end here? */
  private isPartEnd(at: number): boolean {
    const next = at >= this.end ? "" : this.text[at]!;
    return next === "" || ")]}(".includes(next) || isSeparator(next) || isSpace(next);
  }

  /** Digits of a charge; none is one. */
  private chargeNumber(digits: string, position: number): number {
    if (digits[0] === "0") this.fail("formula.leading-zero", "a charge number does not begin with zero", position);
    return digits === "" ? 1 : Number(digits);
  }

  /** `SO₄2-`, `SO_42-`: digits behind a subscript that is marked as one are the charge. */
  private readDigitsBehindSubscript(): boolean {
    const { text, at } = this;
    const last = this.nodes.at(-1);
    if (last?.kind !== "atom" && last?.kind !== "close") return false;
    if (!SUBSCRIPTS.includes(text[at - 1]!) && text[at - 1] !== "}" && text[at - 2] !== "_") return false;
    const charge = /^(\d{1,4})([-+−–])/.exec(text.slice(at, at + 6));
    if (charge === null || !this.isPartEnd(at + charge[0].length)) return false;
    this.at += charge[0].length;
    this.pushCharge(this.chargeNumber(charge[1]!, at), charge[2]!, at);
    return true;
  }

  private skipSpaces(): void {
    while (this.at < this.end && isSpace(this.text[this.at]!)) this.at += 1;
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

  private labelled(element: number, massNumber: number, position: number): number {
    const z = element + 1;
    if (massNumber < z || massNumber > 3 * z + 4) {
      this.fail("formula.impossible-mass-number", `no nuclide ${massNumber}${symbolAt(element)} can exist`, position, {
        hint: `a mass number of ${symbolAt(element)} lies between ${z} and ${3 * z + 4}`,
      });
    }
    return z * NUCLIDE_BASE + massNumber;
  }

  private unclosed({ bracket, position }: FormulaNode & { kind: "open" }): never {
    this.fail("formula.unclosed-bracket", `"${bracket}" is never closed`, position, {
      hint: `close it with "${PARTNER[bracket]}"`,
    });
  }

  private danglingLabel(): never {
    this.fail("formula.misplaced-charge", "a superscript number without a sign or an element after it", this.labelAt, {
      hint: "a charge needs its sign (²⁺), a mass number its element (¹³C)",
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
    if (bracket === "[" && this.readNuclideBracket()) return;
    if (bracket === "(" && this.isOxidationNumber()) return;
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

  /** `Fe(3+)`, `SO4(2-)`, `SO4{2-}`, `SO4[2-]`, `Fe(+3)`. */
  private readBracketedCharge(bracket: Bracket): boolean {
    const { text, at } = this;
    if (this.members === 0) return false;
    const match = /^.(\d{0,4})([-+−–])(\d{0,4})([)\]}])/.exec(text.slice(at, at + 11));
    if (match === null || match[4] !== PARTNER[bracket]) return false;
    if (match[1] !== "" && match[3] !== "") return false;
    this.at += match[0].length;
    this.explicitCharge = true;
    this.pushCharge(this.chargeNumber(match[1]! + match[3]!, at + 1), match[2]!, at);
    return true;
  }

  /** `Fe(III)` would silently be three atoms of iodine. */
  private isOxidationNumber(): false {
    const { text, at } = this;
    const roman = /^\((VIII|VII|VI|IV|IX|V|III|II|I)\)(?![\d₀-₉_])/.exec(text.slice(at, at + 8))?.[1];
    const before = this.nodes.at(-1);
    if (roman !== undefined && before?.kind === "atom") {
      const element = symbolAt(before.atom);
      this.fail("formula.roman-numeral", `"(${roman})" behind ${element} reads as an oxidation number`, at, {
        hint: `write ${element}^{${roman}} for the oxidation number; for the atoms leave the brackets out`,
      });
    }
    return false;
  }

  /** `[13C]`, `[18O2]`: a mass number and one element alone in square brackets. */
  private readNuclideBracket(): boolean {
    const { text, at } = this;
    if (!isDigit(text.charCodeAt(at + 1)) && !SUPERSCRIPTS.includes(text[at + 1] ?? " ")) return false;
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

  // -- charges --------------------------------------------------------------------------------------------------------

  private pushCharge(magnitude: number, sign: string, position: number): void {
    if (this.charged) this.fail("formula.misplaced-charge", "a second charge on the same part", position);
    if (this.members === 0) this.fail("formula.misplaced-charge", "a charge with nothing in front of it", position);
    if (magnitude === 0) this.fail("formula.zero-count", "a charge of zero is not written", position);
    if (magnitude > MAX_CHARGE) {
      this.fail("formula.count-too-large", `a charge above ${MAX_CHARGE}`, position, {
        details: { limit: MAX_CHARGE },
      });
    }
    this.charged = true;
    const negative = MINUS.includes(sign) || sign === "⁻";
    this.nodes.push({ kind: "charge", charge: negative ? -magnitude : magnitude });
  }

  /** Text goes on behind a charge: only `^`, braces or Unicode say where it ends, so only those may be followed. */
  private afterCharge(position: number): void {
    this.charged = false;
    const last = this.nodes.at(-1);
    if (last?.kind === "charge" && this.explicitCharge) return;
    const bond = last?.kind === "charge" && last.charge === -1 ? "bonds are left out: HOOCCOOH; " : "";
    const water = this.text.startsWith("H2O", position);
    this.fail("formula.misplaced-charge", "a charge stands at the end of a formula or bracket", position - 1, {
      hint: water
        ? "write an adduct dot: CuSO4·5H2O"
        : `${bond}put the ion in brackets or mark its charge with ^, as in Na^{+}Cl^{-}`,
    });
  }

  private explicitCharge = false;

  /** `+`, `-`, `++`, `+2`, and `]4-`, whose digits the number reader left alone. */
  private readBareSign(): void {
    const { text, at } = this;
    const sign = text[at]!;
    let to = at + 1;
    while (to < this.end && text[to] === sign && to - at < 10) to += 1;
    let magnitude = to - at;
    let digits = to;
    while (digits < this.end && isDigit(text.charCodeAt(digits))) digits += 1;
    if (digits > to && magnitude === 1) {
      if (digits - to > 4) this.fail("formula.count-too-large", `a charge above ${MAX_CHARGE}`, to);
      magnitude = Number(text.slice(to, digits));
      this.checkNuclideName(at, sign, magnitude);
      if (text[to] === "0") this.fail("formula.leading-zero", "a charge number does not begin with zero", to);
      to = digits;
    } else if (magnitude === 1) {
      const last = this.nodes.at(-1);
      const lone = this.members === 1 && this.open.length === 0;
      if (last?.kind === "close" && last.bracket === "[" && this.pendingCharge > 0) {
        magnitude = this.pendingCharge;
      } else if (this.options.digitsBeforeSign === "charge" && lone && last?.kind === "atom" && last.count.d === 1) {
        magnitude = last.count.n;
        last.count = ONE;
      }
    }
    if (magnitude === 1 && to === at + 1 && this.pendingCharge === 0) this.checkFlattened(at, sign);
    this.pendingCharge = 0;
    this.at = to;
    this.explicitCharge = false;
    this.pushCharge(magnitude, sign, at);
  }

  /** `C-14`, `U-235`: an element's name with a mass number, not the charge of a lone atom. */
  private checkNuclideName(at: number, sign: string, number: number): void {
    const last = this.nodes.at(-1);
    if (last?.kind !== "atom" || last.count.n !== 1 || this.members !== 1 || this.open.length > 0) return;
    if (!MINUS.includes(sign) || last.atom >= ELEMENT_COUNT) return;
    if (number < 10) return;
    const element = symbolAt(last.atom);
    this.fail("formula.ambiguous-charge", `no atom has the charge -${number}; a mass number?`, at, {
      hint: `write [${number}${element}] for the nuclide`,
    });
  }

  /** `SO42-`, `PO43-`, `Fe(CN)64-`: superscripts lost on the way. Two digits and a sign are not taken for 42 atoms. */
  private checkFlattened(at: number, sign: string): void {
    const { text } = this;
    const last = this.nodes.at(-1);
    if (last?.kind !== "atom" && last?.kind !== "close") return;
    const { n, d } = last.count;
    if (this.members < 2 || d !== 1 || n < 20 || n % 10 < 2 || n % 10 > 6 || !isDigit(text.charCodeAt(at - 2))) return;
    if (last.kind === "atom" && !FLATTENED.has(symbolAt(last.atom))) return;
    const [front, digits] = [text.slice(Math.max(0, at - 60), at - 1), text.slice(at - 1, at)];
    this.fail("formula.ambiguous-charge", `${n} atoms and one charge, or a charge of ${digits}?`, at, {
      hint: `write ${front}^${digits}${sign}, or ${front}${digits}^${sign}`,
    });
  }

  /** Digits found between `]` and a bare sign. */
  private pendingCharge = 0;

  /** `^2+`, `^{2-}`, `^+2`, `²⁺`, or a mass number `¹³`, `^{13}` before an element. */
  private readSuperscript(): void {
    const { text, at } = this;
    const ahead = text.slice(at, Math.min(this.end, at + 16));
    const match =
      /^\^\{(\d{0,5})([-+−–]?)(\d{0,5})\}/.exec(ahead) ??
      /^\^\((\d{0,5})([-+−–])(\d{0,5})\)/.exec(ahead) ??
      /^\^(\d{0,5})([-+−–]?)(\d{0,5})/.exec(ahead) ??
      /^([⁰¹²³⁴⁵⁶⁷⁸⁹]{1,5})([-+−–])()/.exec(ahead) ??
      /^([⁰¹²³⁴⁵⁶⁷⁸⁹]{0,5})([⁺⁻]?)([⁰¹²³⁴⁵⁶⁷⁸⁹]{0,5})/.exec(ahead);
    let [whole = "", before = "", sign = "", after = ""] = match ?? [];
    if (sign !== "" && before !== "" && after !== "") {
      // `^2-3...`: digits on both sides of the sign
      this.fail("formula.misplaced-charge", "digits on both sides of the sign", at);
    }
    if (sign === "") {
      // A number alone: the mass number of the element that follows.
      before = before + after;
      if (before === "") {
        this.fail("formula.misplaced-charge", "a superscript without number or sign", at, {
          hint: "charges are written ^2+, ^{2-} or ²⁺",
        });
      }
      if (this.label !== 0) this.danglingLabel();
      if (this.charged) this.afterCharge(at + 1);
      this.label = Number(plainDigits(before));
      this.labelAt = at;
      this.at += whole.length;
      const atomicNumber = this.readAtomicNumber();
      if (!isUpper(text.charCodeAt(this.at))) this.danglingLabel();
      if (atomicNumber !== undefined) this.checkAtomicNumber(atomicNumber);
      return;
    }
    if (after !== "" && whole[0] !== "^") {
      // ²⁻³...: superscript digits after the sign label the next element (O²⁻ ... ¹⁸O); only ⁻² at the end is a charge
      if (before !== "" || isUpper(text.charCodeAt(at + whole.length))) {
        whole = whole.slice(0, whole.length - after.length);
        after = "";
      }
    }
    const digits = plainDigits(before === "" ? after : before);
    if (digits[0] === "0") this.fail("formula.leading-zero", "a charge number does not begin with zero", at);
    this.at += whole.length;
    let magnitude = digits === "" ? 1 : Number(digits);
    if (digits === "") {
      while (text[this.at] === sign && magnitude < 10) {
        this.at += 1;
        magnitude += 1;
      }
    }
    this.explicitCharge = true;
    this.pushCharge(magnitude, sign, at);
  }

  /** `^{235}_{92}U`, `²³⁵₉₂U`: the atomic number below the mass number. */
  private readAtomicNumber(): number | undefined {
    const match = /^(?:_\{?(\d{1,3})\}?|([₀₁₂₃₄₅₆₇₈₉]{1,3}))(?=[A-Z])/.exec(this.text.slice(this.at, this.at + 8));
    if (match === null) return undefined;
    this.at += match[0].length;
    return Number(match[1] ?? plainDigits(match[2]!));
  }

  private checkAtomicNumber(given: number): void {
    const { text, at } = this;
    const two = isLower(text.charCodeAt(at + 1));
    const index = symbolTable()[(text.charCodeAt(at) - 65) * 32 + (two ? text.charCodeAt(at + 1) - 96 : 0)]!;
    if (index < 0) this.unknownSymbol(at);
    if (index + 1 === given) return;
    this.fail(
      "formula.wrong-atomic-number",
      `${symbolAt(index)} has the atomic number ${index + 1}, not ${given}`,
      at,
      {
        hint: `write ^{${this.label}}${symbolAt(index)}; the atomic number may be left out`,
      },
    );
  }

  /** `Pb^II`, `Pb^{IV}`: Roman numerals right behind an element. */
  private readOxidation(): string | undefined {
    const { text, at } = this;
    if (text[at] !== "^") return undefined;
    const braced = text[at + 1] === "{";
    const from = at + (braced ? 2 : 1);
    const negative = MINUS.includes(text[from] ?? " ") ? 1 : 0;
    const match = ROMAN.exec(text.slice(from + negative, from + negative + 6));
    if (match === null) return undefined;
    const to = from + negative + match[0].length;
    if (braced && text[to] !== "}") return undefined;
    this.at = to + (braced ? 1 : 0);
    return (negative === 1 ? "-" : "") + match[0];
  }

  // -- numbers --------------------------------------------------------------------------------------------------------

  /**
   * A count at the reading point: `2`, `0.95`, `₂`, `₀.₉₅`, `_2`, `_{8/3}`, `½`, `1½`, `n`. As a multiplier also `1/2`.
   * `before` is what a subscript stands behind: a symbol, `)` or `]`.
   */
  private readNumber(role: "subscript" | "multiplier", before = ""): Ratio | undefined {
    const { text, at } = this;
    if (at >= this.end) return undefined;
    const character = text[at]!;
    if (isDigit(text.charCodeAt(at))) return this.readDigits(role, before);
    if (role === "multiplier" && (character === "(" || character === ".")) return this.readSetOffMultiplier();
    if (role === "subscript" && SUBSCRIPTS.includes(character)) return this.readSubscriptDigits();
    if (character === "_") return this.readUnderscore(before);
    if (FRACTIONS[character] !== undefined) {
      this.at += 1;
      this.decimals = true;
      const [n, d] = FRACTIONS[character]!;
      return { n, d };
    }
    if ((character === "n" || character === "x") && this.isVariable(role, before)) return this.readVariable(character);
    return undefined;
  }

  /** `·(1/2)H2O`, `·(½)H2O`, `·.5H2O`: a multiplier in brackets, or without its zero. */
  private readSetOffMultiplier(): Ratio | undefined {
    const { text, at } = this;
    const match = /^(?:\((\d{1,12}(?:\.\d{1,12})?(?:\/\d{1,12})?|[½⅓⅔¼¾])\)|(\.\d{1,12}))(?=\s?[A-Z([{])/.exec(
      text.slice(at, at + 42),
    );
    if (match === null) return undefined;
    const vulgar = FRACTIONS[match[1] ?? ""];
    const value = vulgar === undefined ? ratioFromText(match[1] ?? `0${match[2]}`) : ratio(...vulgar);
    if (value === undefined) this.tooLarge(at);
    if (value.n === 0) this.fail("formula.zero-count", "a count of zero", at);
    this.at += match[0].length;
    return value;
  }

  private isVariable(role: string, before: string): boolean {
    const { text, at } = this;
    const next = text.charCodeAt(at + 1);
    if (isLower(next)) return false;
    if (role === "subscript") return before !== "" && !isDigit(next);
    return isUpper(next) || text[at + 1] === "(" || text[at + 1] === "[" || isSpace(text[at + 1] ?? "");
  }

  /** `1-x`, `2+x` behind a symbol or bracket, or all of `_{1-x}`: undefined if it is none. */
  private readOffset(whole: Ratio, to: number, closed: boolean): Ratio | undefined {
    const { text } = this;
    const match = /^([-+−–])([nxyzδ])(?![a-z])/.exec(text.slice(to, to + 3));
    if (match === null) return undefined;
    const after = text[to + 2] ?? "";
    if (closed ? after !== "}" : !this.isPartEnd(to + 2) && !isUpper(after.charCodeAt(0)) && !"[{".includes(after)) {
      return undefined;
    }
    const name = match[2]!;
    if (name !== "n" && name !== "x") {
      this.fail("formula.unknown-number", `the number ${name} is not known`, to + 1, {
        hint: "call it x and give its value: parseFormula(text, { x: 0.05 })",
        details: { variable: name },
      });
    }
    this.at = to + 1;
    const value = this.readVariable(name);
    const sum = add(whole, match[1] === "+" ? value : { n: -value.n, d: value.d });
    if (sum === undefined) this.tooLarge(to);
    if (sum.n <= 0) {
      this.fail("formula.unknown-number", `${name} is too large for this count`, to + 1, {
        details: { variable: name },
      });
    }
    return sum;
  }

  private readVariable(name: "n" | "x"): Ratio {
    const { at } = this;
    const given = this.options[name];
    if (given === undefined) {
      this.fail("formula.unknown-number", `the number ${name} is not known`, at, {
        hint: `give it: parseFormula(text, { ${name}: 3 })`,
        details: { variable: name },
      });
    }
    const written = typeof given === "object" ? kindOf(given) : String(given);
    const value = ratioFromText(written.trim());
    if (value === undefined || value.n <= 0) {
      this.fail("formula.unknown-number", `${name} = ${written.slice(0, 40)} is not a positive number`, at, {
        details: { variable: name },
      });
    }
    this.at += 1;
    this.variables = true;
    return value;
  }

  private readDigits(role: "subscript" | "multiplier", before: string): Ratio | undefined {
    const { text, at } = this;
    let to = at;
    while (isDigit(text.charCodeAt(to)) && to < this.end) to += 1;
    let digits = text.slice(at, to);
    let places = 0;
    const next = text[to] ?? "";
    if (before === "]" && to < this.end && (PLUS.includes(next) || MINUS.includes(next))) {
      // `[Fe(CN)6]4-`: the digits are the charge
      if (digits.length > 4) this.fail("formula.count-too-large", `a charge above ${MAX_CHARGE}`, at);
      if (digits[0] === "0") this.fail("formula.leading-zero", "a charge number does not begin with zero", at);
      const after = text.charCodeAt(to + 1);
      if (!isDigit(after)) {
        this.pendingCharge = Number(digits);
        this.at = to;
        return undefined;
      }
    }
    if (next === "," && isDigit(text.charCodeAt(to + 1))) {
      const adduct = role === "subscript" && /^,\d{1,3}H/.test(text.slice(to, to + 5));
      const hint = adduct ? commaAdvice(text, to) : "write a decimal point";
      this.fail("formula.decimal-comma", "a comma inside a number", to, { hint });
    }
    if (next === "." && to + 1 < this.end && isDigit(text.charCodeAt(to + 1))) {
      const context = { start: at, before, members: this.members, decimals: this.decimals };
      if (role === "multiplier" || isDecimalPoint(text, to, context)) {
        const from = to + 1;
        to = from;
        while (isDigit(text.charCodeAt(to)) && to < this.end) to += 1;
        places = to - from;
        digits += text.slice(from, to);
        this.decimals = true;
      }
    }
    if (digits.length > MAX_DIGITS) this.tooLarge(at);
    if (digits[0] === "0" && places === 0 && digits !== "0") {
      this.fail("formula.leading-zero", "a count does not begin with zero", at, { hint: this.zeroHint(at) });
    }
    if (digits[0] === "0" && digits[1] === "0" && places < digits.length - 1) {
      this.fail("formula.leading-zero", "a count does not begin with two zeros", at);
    }
    this.at = to;
    const n = Number(digits);
    if (n === 0) this.fail("formula.zero-count", "a count of zero", at, { hint: this.zeroHint(at) });
    let value = places === 0 ? { n, d: 1 } : ratio(n, 10 ** places);
    if (role === "subscript" && to < this.end) {
      const offset = this.readOffset(value, to, false);
      if (offset !== undefined) return offset;
    }
    if (places === 0) {
      const vulgar = FRACTIONS[text[to] ?? ""];
      if (vulgar !== undefined && to < this.end) {
        this.at += 1;
        value = ratio(n * vulgar[1] + vulgar[0], vulgar[1]);
      } else if (text[to] === "/" && isDigit(text.charCodeAt(to + 1))) {
        value = this.readDenominator(n, to + 1);
      }
    }
    return value;
  }

  private readDenominator(n: number, from: number): Ratio {
    const { text } = this;
    let to = from;
    while (isDigit(text.charCodeAt(to)) && to < this.end) to += 1;
    if (to - from > MAX_DIGITS) this.tooLarge(from);
    const d = Number(text.slice(from, to));
    if (d === 0) this.fail("formula.zero-count", "a fraction over zero", from);
    this.at = to;
    return ratio(n, d);
  }

  private readSubscriptDigits(): Ratio {
    const { text, at } = this;
    let to = at;
    let digits = "";
    let places = 0;
    while (to < this.end && SUBSCRIPTS.includes(text[to]!)) digits += SUBSCRIPTS.indexOf(text[to++]!);
    if (text[to] === "." && to + 1 < this.end && SUBSCRIPTS.includes(text[to + 1]!)) {
      to += 1;
      const whole = digits.length;
      while (to < this.end && SUBSCRIPTS.includes(text[to]!)) digits += SUBSCRIPTS.indexOf(text[to++]!);
      places = digits.length - whole;
      this.decimals = true;
    }
    if (digits.length > MAX_DIGITS) this.tooLarge(at);
    if (digits[0] === "0" && places === 0 && digits.length > 1) {
      this.fail("formula.leading-zero", "a count does not begin with zero", at);
    }
    const n = Number(digits);
    if (n === 0) this.fail("formula.zero-count", "a count of zero", at);
    this.at = to;
    return places === 0 ? { n, d: 1 } : ratio(n, 10 ** places);
  }

  /** `_2`, `_{12}`, `_{0.95}`, `_{8/3}`. */
  private readUnderscore(before: string): Ratio {
    const { text, at } = this;
    const offset = /^_\{(\d{1,12}(?:\.\d{1,12})?)(?=[-+−–][a-zδ])/.exec(text.slice(at, at + 32));
    if (offset !== null && before !== "") {
      const value = this.readOffset(ratioFromText(offset[1]!)!, at + offset[0].length, true);
      if (value !== undefined) {
        this.at += 1;
        return value;
      }
    }
    const match = /^_(?:(\d)|\{(\d{1,13}(?:\.\d{1,13})?(?:\/\d{1,13})?|[nx])\})/.exec(text.slice(at, at + 44));
    if (match === null || before === "") {
      this.fail("formula.misplaced-number", "an underscore without a subscript", at, { hint: "write H_2O or H_{12}" });
    }
    const inside = match[1] ?? match[2]!;
    if (inside === "n" || inside === "x") {
      this.at += 2;
      const value = this.readVariable(inside);
      this.at += 1;
      return value;
    }
    const value = ratioFromText(inside);
    if (value === undefined) this.tooLarge(at);
    if (value.n === 0) this.fail("formula.zero-count", "a count of zero", at);
    this.at += match[0].length;
    if (value.d !== 1) this.decimals = true;
    return value;
  }

  private tooLarge(position: number): never {
    this.fail("formula.count-too-large", `a number of more than ${MAX_DIGITS} digits`, position, {
      details: { limit: MAX_DIGITS },
    });
  }

  // -- errors that look around ----------------------------------------------------------------------------------------

  /** `CuS04`, `Na0H`: zero for the letter O. */
  private zeroHint(position: number): string | undefined {
    const fixed = `${this.text.slice(0, position)}O${this.text.slice(position + 1)}`;
    return this.text.length <= 80 ? `a zero for the letter O? ${fixed}` : "a zero for the letter O?";
  }

  private unknownSymbol(position: number): never {
    throw unknownSymbolError(this.input, position);
  }

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

function isSpace(character: string): boolean {
  return (
    character === " " ||
    character === "\u00a0" ||
    character === "\u202f" ||
    character === "\u2009" ||
    character === "\t" ||
    character === "\n" ||
    character === "\r"
  );
}

function isSeparator(character: string): boolean {
  return character === "." || (character !== "" && DOTS.includes(character));
}

/** Superscript and subscript digits as ASCII. */
function plainDigits(text: string): string {
  let digits = "";
  for (const character of text) {
    const sup = SUPERSCRIPTS.indexOf(character);
    const sub = SUBSCRIPTS.indexOf(character);
    digits += sup >= 0 ? sup : sub >= 0 ? sub : character;
  }
  return digits;
}

/** `5`, `0.5`, `8/3` exactly; undefined if it is no such number or too long. */
export function ratioFromText(text: string): Ratio | undefined {
  const match = /^(\d{1,12})(?:\.(\d{1,12}))?(?:\/(\d{1,12}))?$/.exec(text);
  if (match === null) return undefined;
  const [, whole = "", places = "", below = "1"] = match;
  const digits = whole + places;
  if (digits.length > MAX_DIGITS || Number(below) === 0) return undefined;
  const d = 10 ** places.length * Number(below);
  return d > MAX_COUNT ? undefined : ratio(Number(digits), d);
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
    const problem = error.message.slice(0, error.message.indexOf("\n") < 0 ? undefined : error.message.indexOf("\n"));
    throw new FormulaError(error.code as Code, problem, {
      input: text,
      position: plain.positions[error.position ?? 0],
      hint: error.hint,
      details: error.details,
    });
  }
}

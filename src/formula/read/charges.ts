// Charges, labels of nuclides and oxidation numbers in a formula: whatever is raised, and what stands for it in plain text.
import { ELEMENT_COUNT, NUCLIDE_BASE, symbolAt, symbolTable } from "../../element/internal";
import { SUBSCRIPTS } from "../../foundation/characters";
import { isDigit, isLower, isUpper, MINUS, PARTNER } from "./characters";
import { plainDigits } from "./cursor";
import { MAX_CHARGE } from "./limits";
import type { Bracket, FormulaNode } from "./nodes";
import { NumberReader } from "./numbers";
import { ONE } from "./ratio";

/** Elements that end the formulas of common anions. */
const FLATTENED = /* @__PURE__ */ new Set(/* @__PURE__ */ "O F Cl Br I S N".split(" "));
const ROMAN = /^(?:VIII|VII|VI|IV|IX|V|III|II|I)(?![a-z])/;

/** Reads charges, mass numbers and oxidation numbers. */
export class ChargeReader extends NumberReader {
  /** Is the end of the last charge marked, so that text may follow it? */
  protected explicitCharge = false;
  /** Label waiting for its element (`¹³` in `¹³C`). */
  protected label = 0;
  protected labelAt = 0;

  protected pushCharge(magnitude: number, sign: string, position: number): void {
    if (this.charged || this.nodes.at(-1)!.kind === "charge") {
      this.fail("formula.misplaced-charge", "a second charge on the same part", position);
    }
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

  /** Text goes on after a charge: only `^`, braces or Unicode say where it ends, so only those may be followed. */
  protected afterCharge(position: number): void {
    this.charged = false;
    if (this.explicitCharge) return;
    const { charge } = this.nodes.at(-1) as FormulaNode & { kind: "charge" };
    const bond = charge === -1 ? "bonds are left out: HOOCCOOH; " : "";
    const water = this.text.startsWith("H2O", position);
    this.fail("formula.misplaced-charge", "a charge is written at the end of a formula or bracket", position - 1, {
      hint: water
        ? "write an adduct dot: CuSO4·5H2O"
        : `${bond}put the ion in brackets or mark its charge with ^, as in Na^{+}Cl^{-}`,
    });
  }

  /** Digits of a charge; none is one. */
  protected chargeNumber(digits: string, position: number): number {
    if (digits[0] === "0") this.fail("formula.leading-zero", "a charge number does not begin with zero", position);
    return digits === "" ? 1 : Number(digits);
  }

  /** `+`, `-`, `++`, `+2`, and `]4-`, whose digits the number reader left alone. */
  protected readBareSign(): void {
    const { text, at } = this;
    const sign = text[at]!;
    let to = at + 1;
    while (text[to] === sign && to - at < 10) to += 1;
    let magnitude = to - at;
    let digits = to;
    while (isDigit(text.charCodeAt(digits))) digits += 1;
    if (digits > to && magnitude === 1) {
      if (digits - to > 4) this.fail("formula.count-too-large", `a charge above ${MAX_CHARGE}`, to);
      const number = text.slice(to, digits);
      this.checkNuclideName(at, sign, Number(number));
      magnitude = this.chargeNumber(number, to);
      to = digits;
    } else if (magnitude === 1) {
      const last = this.nodes.at(-1)!;
      const lone = this.members === 1 && this.open.length === 0;
      if (last.kind === "close" && last.bracket === "[" && this.pendingCharge > 0) {
        magnitude = this.pendingCharge;
      } else if (this.options.digitsBeforeSign === "charge" && lone && last.kind === "atom" && last.count.d === 1) {
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
  protected checkNuclideName(at: number, sign: string, number: number): void {
    const last = this.nodes.at(-1)!;
    if (last.kind !== "atom" || last.count.n !== 1 || this.members !== 1 || this.open.length > 0) return;
    if (!MINUS.includes(sign) || last.atom >= ELEMENT_COUNT) return;
    if (number < 10) return;
    const element = symbolAt(last.atom);
    this.fail("formula.ambiguous-charge", `no atom has the charge -${number}; a mass number?`, at, {
      hint: `write [${number}${element}] for the nuclide`,
    });
  }

  /** `SO42-`, `PO43-`, `Fe(CN)64-`: superscripts lost on the way. Two digits and a sign are not taken for 42 atoms. */
  protected checkFlattened(at: number, sign: string): void {
    const { text } = this;
    const last = this.nodes.at(-1)!;
    if (last.kind !== "atom" && last.kind !== "close") return;
    const { n, d } = last.count;
    if (this.members < 2 || d !== 1 || n < 22 || n % 10 < 2 || n % 10 > 6 || !text.slice(0, at).endsWith(String(n)))
      return;
    if (last.kind === "atom" && !FLATTENED.has(symbolAt(last.atom))) return;
    const [front, digits] = [text.slice(Math.max(0, at - 60), at - 1), text.slice(at - 1, at)];
    this.fail("formula.ambiguous-charge", `${n} atoms and one charge, or a charge of ${digits}?`, at, {
      hint: `write ${front}^${digits}${sign}, or ${front}${digits}^${sign}`,
    });
  }

  /** `^2+`, `^{2-}`, `^+2`, `²⁺`, or a mass number `¹³`, `^{13}` before an element. */
  protected readSuperscript(): void {
    const { text, at } = this;
    const ahead = text.slice(at, at + 16);
    const match =
      /^\^\{(\d{0,5})([-+−–]?)(\d{0,5})\}/.exec(ahead) ??
      /^\^\((\d{0,5})([-+−–])(\d{0,5})\)/.exec(ahead) ??
      /^\^(\d{0,5})([-+−–]?)(\d{0,5})/.exec(ahead) ??
      /^([⁰¹²³⁴⁵⁶⁷⁸⁹]{1,5})([-+−–])()/.exec(ahead) ??
      /^([⁰¹²³⁴⁵⁶⁷⁸⁹]{0,5})([⁺⁻]?)([⁰¹²³⁴⁵⁶⁷⁸⁹]{0,5})/.exec(ahead);
    let [whole = "", before = "", sign = "", after = ""] = match!;
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
    // ²⁻³...: superscript digits after the sign label the next element (O²⁻ ... ¹⁸O); only ⁻² at the end is a charge
    if (whole[0] !== "^" && isUpper(text.charCodeAt(at + whole.length))) {
      whole = whole.slice(0, whole.length - after.length);
      after = "";
    }
    const digits = plainDigits(before === "" ? after : before);
    let magnitude = this.chargeNumber(digits, at);
    this.at += whole.length;
    if (digits === "") {
      while (text[this.at] === sign && magnitude < 10) {
        this.at += 1;
        magnitude += 1;
      }
    }
    this.explicitCharge = true;
    this.pushCharge(magnitude, sign, at);
  }

  /** `Fe(3+)`, `SO4(2-)`, `SO4{2-}`, `SO4[2-]`, `Fe(+3)`. */
  protected readBracketedCharge(bracket: Bracket): boolean {
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

  /** `SO₄2-`, `SO_42-`: digits after a subscript that is marked as one are the charge. */
  protected readDigitsBehindSubscript(): boolean {
    const { text, at } = this;
    const last = this.nodes.at(-1)!;
    if (last.kind !== "atom" && last.kind !== "close") return false;
    if (!SUBSCRIPTS.includes(text[at - 1]!) && text[at - 1] !== "}" && text[at - 2] !== "_") return false;
    const charge = /^(\d{1,4})([-+−–])/.exec(text.slice(at, at + 6));
    if (charge === null || !this.isPartEnd(at + charge[0].length)) return false;
    this.at += charge[0].length;
    this.pushCharge(this.chargeNumber(charge[1]!, at), charge[2]!, at);
    return true;
  }

  /** `^{235}_{92}U`, `²³⁵₉₂U`: the atomic number below the mass number. */
  protected readAtomicNumber(): number | undefined {
    const match = /^(?:_\{?(\d{1,3})\}?|([₀₁₂₃₄₅₆₇₈₉]{1,3}))(?=[A-Z])/.exec(this.text.slice(this.at, this.at + 8));
    if (match === null) return undefined;
    this.at += match[0].length;
    return Number(match[1] ?? plainDigits(match[2]!));
  }

  protected checkAtomicNumber(given: number): void {
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

  /** `Pb^II`, `Pb^{IV}`: Roman numerals right after an element. */
  protected readOxidation(): string | undefined {
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

  /** `Fe(III)` would silently be three atoms of iodine. */
  protected isOxidationNumber(): false {
    const { text, at } = this;
    const roman = /^\((VIII|VII|VI|IV|IX|V|III|II|I)\)(?![\d₀-₉_])/.exec(text.slice(at, at + 8))?.[1];
    const before = this.nodes.at(-1)!;
    if (roman !== undefined && before.kind === "atom") {
      const element = symbolAt(before.atom);
      this.fail("formula.roman-numeral", `"(${roman})" after ${element} reads as an oxidation number`, at, {
        hint: `write ${element}^{${roman}} for the oxidation number; for the atoms leave the brackets out`,
      });
    }
    return false;
  }

  protected danglingLabel(): never {
    this.fail("formula.misplaced-charge", "a superscript number without a sign or an element after it", this.labelAt, {
      hint: "a charge needs its sign (²⁺), a mass number its element (¹³C)",
    });
  }

  protected labelled(element: number, massNumber: number, position: number): number {
    const z = element + 1;
    if (massNumber < z || massNumber > 3 * z + 4) {
      this.fail("formula.impossible-mass-number", `no nuclide ${massNumber}${symbolAt(element)} can exist`, position, {
        hint: `a mass number of ${symbolAt(element)} lies between ${z} and ${3 * z + 4}`,
      });
    }
    return z * NUCLIDE_BASE + massNumber;
  }
}

// Where the reader stands in a formula text, what it has read so far, and how it says what is wrong. The readers of numbers
// (numbers.ts), of charges and labels (charges.ts) and of all the rest (read.ts) build on one another.

import { SUBSCRIPTS, SUPERSCRIPTS } from "../../foundation/characters";
import { FormulaError, type FormulaErrorCode } from "../error";
import { DOTS } from "./characters";
import { unknownSymbolError } from "./hint";
import { MAX_DIGITS } from "./limits";
import type { FormulaNode } from "./nodes";

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

export type Code = FormulaErrorCode;

/** The reading point, and the nodes so far. */
export class Cursor {
  protected at = 0;
  protected end: number;
  protected readonly nodes: FormulaNode[] = [];
  protected readonly open: (FormulaNode & { kind: "open" })[] = [];
  /** Members, decimals and charge of the part being read, one frame per open bracket. */
  protected members = 0;
  protected decimals = false;
  protected charged = false;

  /** The text up to the phase; `input` is all of it, for messages. */
  protected text: string;

  constructor(
    protected readonly input: string,
    protected readonly options: ReadOptions,
  ) {
    this.text = input;
    this.end = input.length;
  }

  protected fail(
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

  protected unknownSymbol(position: number): never {
    throw unknownSymbolError(this.input, position);
  }

  protected tooLarge(position: number): never {
    this.fail("formula.count-too-large", `a number of more than ${MAX_DIGITS} digits`, position, {
      details: { limit: MAX_DIGITS },
    });
  }

  protected skipSpaces(): void {
    while (this.at < this.end && isSpace(this.text[this.at]!)) this.at += 1;
  }

  /** Does a part, a bracket or the text end here? */
  protected isPartEnd(at: number): boolean {
    const next = at >= this.end ? "" : this.text[at]!;
    return next === "" || ")]}(".includes(next) || isSeparator(next) || isSpace(next);
  }
}

export function isSpace(character: string): boolean {
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

export function isSeparator(character: string): boolean {
  return character === "." || DOTS.includes(character);
}

/** Superscript and subscript digits as ASCII. */
export function plainDigits(text: string): string {
  let digits = "";
  for (const character of text) {
    const sup = SUPERSCRIPTS.indexOf(character);
    const sub = SUBSCRIPTS.indexOf(character);
    digits += sup >= 0 ? sup : sub >= 0 ? sub : character;
  }
  return digits;
}

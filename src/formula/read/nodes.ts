// What a formula looks like once read: a flat list of nodes in written order. Brackets point nowhere; an `open` node
// carries the count of its closing bracket, so one pass from left to right knows every multiplier.
import type { Ratio } from "./ratio";

export type Bracket = "(" | "[" | "{";

export type FormulaNode =
  /** A part begins: the whole formula, or what follows an adduct dot, with its leading number. */
  | { readonly kind: "part"; readonly dot: boolean; readonly number: Ratio }
  /** An element (index < 118) or a nuclide (1000 Z + A); `short` for the letters D and T. */
  | { readonly kind: "atom"; readonly atom: number; count: Ratio; readonly short: boolean }
  | { readonly kind: "open"; readonly bracket: Bracket; readonly position: number; count: Ratio }
  | { readonly kind: "close"; readonly bracket: Bracket; count: Ratio }
  | { readonly kind: "charge"; readonly charge: number }
  /** Oxidation number written as a Roman numeral; it changes nothing in the composition. */
  | { readonly kind: "oxidation"; readonly roman: string }
  | { readonly kind: "electron" };

/** A formula text as read. */
export interface Reading {
  readonly nodes: FormulaNode[];
  readonly phase: string | undefined;
}

// What a formula or one part of it adds up to, in ions, molecules and hydrogen.
import { parseFormula } from "../formula";
import { memoised } from "../foundation/memo";
import { HYDROGEN, type Ion, ionText, isCationElement, listedAs, without } from "./ion-index";
import { chargedText } from "./ion-text";

/** One kind of ion and how many of it. */
export interface ConstituentIon {
  /** With its charge, as tables write it: `Fe^3+`, `SO4^2-`, `CH3COO-`. */
  readonly formula: string;
  /** In elementary charges, with its sign. */
  readonly charge: number;
  /** In the formula as written. */
  readonly count: number;
  /** The element of a monatomic ion. */
  readonly element?: string;
}

/** One kind of neutral molecule and how many of it. */
export interface Constituent {
  /** Of the molecule. */
  readonly formula: string;
  /** In the formula as written. */
  readonly count: number;
}

/** The hydrogen an acid gives. */
export interface AcidHydrogen {
  /** Hydrons a base takes. */
  readonly protons: number;
  /** What is left when they have gone. */
  readonly anion: string;
  /** Completely dissociated in dilute water. */
  readonly strong: boolean;
  /** As weak as boric or hydrocyanic acid: pKa above 6. */
  readonly veryWeak: boolean;
}

/** What a formula is: a salt (oxides and hydroxides with it), an acid, a molecule, an element, water, an ion, or open. */
export type ConstitutionKind = "salt" | "acid" | "molecule" | "element" | "water" | "ion" | "open";

/** What one part of an adduct, or the whole, adds up to. */
export interface Content {
  readonly kind: ConstitutionKind;
  readonly cations: readonly ConstituentIon[];
  readonly anions: readonly ConstituentIon[];
  readonly waters: number;
  readonly ammines: number;
  readonly aquas: number;
  readonly molecule?: string;
  readonly acid?: AcidHydrogen;
  readonly groups: readonly string[];
  readonly readings: readonly string[];
}

export const EMPTY: Omit<Content, "kind"> = {
  cations: [],
  anions: [],
  waters: 0,
  ammines: 0,
  aquas: 0,
  groups: [],
  readings: [],
};

/** As the formula layer prints it. */
export const canonical = /* @__PURE__ */ memoised(1000, (text) => parseFormula(text).toString());

export const rounded = (n: number): number => (Number.isInteger(n) ? n : Number(n.toFixed(6)));

/** `Fe^3+`, `[Fe(CN)6]^4-` for a row of the ion table. */
export const ionFormula = (ion: Ion): string => canonical(chargedText(ionText(ion.row), ion.charge));

/** The anion without its hydrogen, by names: hydrogencarbonate belongs to the carbonates. */
export function rootNames(ion: Ion): string[] {
  const names = [ion.row.name];
  // ammonium is no amide that has taken up hydrons
  const hydrogens = ion.charge > 0 ? 0 : (ion.counts.get("H") ?? 0);
  for (let n = 1; n <= hydrogens; n += 1) {
    const root = listedAs(without(ion.counts, HYDROGEN, n), ion.charge - n);
    if (root !== undefined) names.push(root.row.name);
  }
  return names;
}

export const hasMetal = (counts: ReadonlyMap<string, number>): boolean => [...counts.keys()].some(isCationElement);

export const scaled = <T extends { readonly count: number }>(list: readonly T[], times: number): T[] =>
  times === 1 ? [...list] : list.map((one) => ({ ...one, count: rounded(one.count * times) }));

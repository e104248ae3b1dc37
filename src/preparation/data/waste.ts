// Metals in a waste: how they are precipitated as hydroxide or carbonate, and which need not be. pH figures from memory.
import type { SourceKey } from "./sources";

/** How a metal is precipitated. */
export interface WasteMetalRow {
  readonly metal: string;
  /** Charge of the ion that is precipitated. */
  readonly charge: bigint;
  readonly pH: string;
  /** What precipitates it, where that is not soda: one formula unit for each atom. */
  readonly precipitant?: string;
  readonly note?: string;
  readonly source: SourceKey;
}

export const WASTE_METALS: readonly WasteMetalRow[] = [
  { metal: "Fe", charge: 2n, pH: "4 to 7 as Fe(III); let Fe(II) oxidise in air first", source: "memory" },
  { metal: "Al", charge: 3n, pH: "6 to 7", source: "memory" },
  { metal: "Cr", charge: 3n, pH: "8 to 9 as Cr(III)", note: "chromium(VI) must be reduced first", source: "memory" },
  { metal: "Cu", charge: 2n, pH: "8 to 9.5", source: "memory" },
  { metal: "Zn", charge: 2n, pH: "9 to 9.5", source: "memory" },
  { metal: "Pb", charge: 2n, pH: "9 to 9.5, or as sulfate", source: "memory" },
  { metal: "Co", charge: 2n, pH: "9.5 to 10", source: "memory" },
  { metal: "Ni", charge: 2n, pH: "10 to 10.5", source: "memory" },
  { metal: "Mn", charge: 2n, pH: "10 and above", source: "memory" },
  { metal: "Ba", charge: 2n, pH: "any, as sulfate with sodium sulfate", precipitant: "Na2SO4", note: "barium is precipitated with sulfate, not soda alone", source: "memory" },
  { metal: "Ag", charge: 1n, pH: "any, as chloride", precipitant: "NaCl", note: "silver is precipitated as chloride and kept", source: "memory" },
  { metal: "Cd", charge: 2n, pH: "9.5 to 10", source: "memory" },
  { metal: "Sn", charge: 2n, pH: "4 to 8", source: "memory" },
  { metal: "Bi", charge: 3n, pH: "4 to 8", source: "memory" },
];

/** Metals that every liquor contains and nobody precipitates. */
export const LEFT_IN_WASTE: readonly { readonly metals: readonly string[]; readonly source: SourceKey }[] = [
  { metals: ["Na", "K", "Li", "Mg", "Ca"], source: "commonPractice" },
];

// Precipitates that keep much liquor.
import type { SourceKey } from "./sources";

/** A solid that precipitates as a slime. */
export interface GelRow {
  /** Without crystal water, as the registry spells it. */
  readonly formula: string;
  /** The whole liquor stiffens to a jelly. */
  readonly sets?: true;
  /** Ammonium leaves it alone, of which the equilibrium knows nothing. */
  readonly standsAmmonium?: true;
  readonly source: SourceKey;
}

/** The salt that keeps a slime from going colloidal in its wash water, in mol for each kilogram, beside so much of the slime. */
export const AGAINST_COLLOID = {
  salt: "NH4CH3COO",
  moles: 0.13,
  text: "1 g of ammonium acetate into each 100 mL of the water",
  besides: 0.1,
  /** Anions that take the hydrogen of ammonium: of their salts the equilibrium says whether it leaves them alone. */
  attacks: ["OH-", "O^2-", "CO3^2-", "PO4^3-", "S^2-"],
  /** Less of the slime in the water than this share is none. */
  dissolves: 0.02,
  source: "talbot",
} as const satisfies Readonly<Record<string, unknown>> & { readonly source: SourceKey };

/** Anions whose salts with metals are soaps that water does not dissolve, by the names of their groups: they come in bulky flakes. */
export const SOAPS = { groups: ["stearate", "palmitate", "oleate"], source: "commonPractice" } as const satisfies Readonly<
  Record<string, unknown>
> & { readonly source: SourceKey };

/** Beside hydroxides and cyanidoferrates; none of them dissolves in water. */
export const GELS: readonly GelRow[] = [
  { formula: "MnO2", standsAmmonium: true, source: "commonPractice" },
  { formula: "FeO(OH)", standsAmmonium: true, source: "commonPractice" },
  { formula: "AlO(OH)", source: "commonPractice" },
  { formula: "SiO2", sets: true, source: "commonPractice" },
  { formula: "H2SiO3", sets: true, source: "commonPractice" },
  { formula: "H4SiO4", sets: true, source: "commonPractice" },
  { formula: "H2WO4", source: "commonPractice" },
  { formula: "SnO2", standsAmmonium: true, source: "commonPractice" },
];

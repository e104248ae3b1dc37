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

/** A salt that keeps a slime from going colloidal in its wash water. */
interface AgainstColloidRow {
  readonly salt: string;
  readonly called: string;
  /** What meets the liquor beside the salt itself: ammonium gives ammonia. */
  readonly gives?: string;
  /** From so warm a drying on it leaves with the water: from memory. */
  readonly leavesAt?: string;
  /** It stays behind when the product is dried. */
  readonly stays?: { readonly ion: string; readonly precipitates: readonly string[] };
  readonly source: SourceKey;
}

/** The first that neither is dangerous beside the liquor, nor precipitates with the product, nor is tested for in the last wash; else the first without the last. */
export const AGAINST_COLLOID: readonly AgainstColloidRow[] = [
  { salt: "NH4CH3COO", called: "ammonium acetate", gives: "NH3", leavesAt: "100 °C", source: "talbot" },
  { salt: "Na2SO4", called: "sodium sulfate", stays: { ion: "SO4^2-", precipitates: ["Ca", "Sr", "Ba", "Ra", "Pb"] }, source: "commonPractice" },
  { salt: "NaCl", called: "common salt", stays: { ion: "Cl-", precipitates: ["Ag", "Pb", "Tl", "Hg"] }, source: "commonPractice" },
];

/** How the salt is put in. */
export const SALT_OF_A_WASH = {
  each: "1 g",
  water: "100 mL",
  /** Of its ammonium, in mol for each kilogram, beside so much of the slime. */
  moles: 0.13,
  besides: 0.1,
  /** Anions that take the hydrogen of ammonium: of their salts the equilibrium says whether it leaves them alone. */
  attacks: ["OH-", "O^2-", "CO3^2-", "PO4^3-", "S^2-"],
  /** Less of the slime in the water than this share is none. */
  dissolves: 0.02,
  /** What is only a nuisance beside the salt, as ammonia from lye, counts from this strength of the liquor. */
  strong: "0.1 mol/L",
  source: "commonPractice",
} as const satisfies Readonly<Record<string, unknown>> & { readonly source: SourceKey };

/** How long a slime takes to settle. */
export const SLIME_SETTLES: { readonly time: string; readonly source: SourceKey } = {
  time: "an hour or two at first, overnight once little salt is left",
  source: "commonPractice",
};

/** Slimes that stand warm water are washed with it. */
export const WARM_WASH: { readonly text: string; readonly source: SourceKey } = {
  text: ", warm (50 to 60 °C: it settles faster and closer)",
  source: "commonPractice",
};

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

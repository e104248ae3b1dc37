// What the salt rules do not speak of: oxides that water dissolves, ions of cyanidoferrates that keep them dissolved, and
// precipitates that an excess of their precipitant takes back.
import type { SourceKey } from "./sources";

/** Elements whose oxides water dissolves or decomposes, or that are no metals; the oxides of all others stay. */
export const SOLUBLE_OXIDES: readonly { readonly elements: readonly string[]; readonly source: SourceKey }[] = [
  { elements: ["Li", "Na", "K", "Rb", "Cs", "Ca", "Sr", "Ba"], source: "commonPractice" },
  { elements: ["H", "B", "C", "N", "P", "S", "Cl", "As"], source: "commonPractice" },
];

/** Elements beside the metals that water leaves alone. */
export const INSOLUBLE_NONMETALS: readonly { readonly elements: readonly string[]; readonly source: SourceKey }[] = [
  { elements: ["B", "C", "Si", "P", "S", "Se", "Te", "As", "Sb"], source: "commonPractice" },
];

/** A molecule of carbon, hydrogen and oxygen alone with so many carbon atoms for each oxygen is an oil, a fat or a wax. */
export const OILY = { carbonsPerOxygen: 8, source: "commonPractice" } as const satisfies {
  readonly carbonsPerOxygen: number;
  readonly source: SourceKey;
};

/** Metals whose cyanidoferrates dissolve, beside ammonium and the acids; those of all others stay. */
export const SOLUBLE_CYANIDOFERRATES: readonly { readonly metals: readonly string[]; readonly source: SourceKey }[] = [
  { metals: ["Li", "Na", "K", "Rb", "Cs", "Mg", "Ca", "Sr", "Ba"], source: "commonPractice" },
];

/** Anions that close rings around a metal and take it out of water, by the names of their groups. */
export const RING_CLOSING: readonly { readonly group: string; readonly metals: readonly string[]; readonly source: SourceKey }[] = [
  { group: "dimethylglyoximate", metals: ["Ni", "Pd"], source: "commonPractice" },
  { group: "acetylacetonate", metals: ["Cu", "Fe", "Cr", "Al", "Co", "Mn"], source: "commonPractice" },
];

/** Precipitants of which any excess takes the product back into solution. */
interface TakesBackRow {
  /** Name of the anion of the precipitant, or ammonia. */
  readonly group: string;
  /** Metals whose product goes back. */
  readonly metals: readonly string[];
  readonly source: SourceKey;
}

export const TAKES_BACK: readonly TakesBackRow[] = [
  { group: "iodide", metals: ["Pb", "Hg", "Cu", "Ag", "Bi"], source: "commonPractice" },
  { group: "hydroxide", metals: ["Al", "Zn", "Pb", "Sn", "Cr", "Be"], source: "commonPractice" },
  { group: "ammonia", metals: ["Cu", "Ni", "Co", "Zn", "Ag", "Cd"], source: "commonPractice" },
  { group: "oxalate", metals: ["Cr", "Al"], source: "commonPractice" },
];

// Usual sizes of vessels: beakers up to 5 L, jars and buckets above.
import type { SourceKey } from "./sources";

/** A kind of vessel with its sizes. */
interface VesselRow {
  readonly kind: string;
  /** mL, smallest first. */
  readonly sizes: readonly number[];
  readonly source: SourceKey;
}

/** Salts whose hot liquor eats metals of the kitchen, and what it is worked in instead. */
export const EATS_METAL = {
  cation: "NH4+",
  groups: ["chloride"],
  vessel: "of glass or sound enamel, for it eats copper, brass, aluminium and iron",
  source: "commonPractice",
} as const satisfies { cation: string; groups: readonly string[]; vessel: string; source: SourceKey };

export const VESSELS: readonly VesselRow[] = [
  { kind: "beaker", sizes: [50, 100, 250, 400, 600, 800, 1000, 2000, 3000, 5000], source: "commonPractice" },
  { kind: "jar or bucket", sizes: [10_000, 15_000, 20_000, 30_000, 50_000, 100_000], source: "commonPractice" },
];

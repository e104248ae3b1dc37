// Substances that laws on precursors keep from the general public, and that no route makes. Which lists they stand in is recalled,
// not copied; the lists themselves are longer.
import type { SourceKey } from "./sources";

/** A precursor that is not made. */
interface PrecursorRow {
  readonly formula: string;
  readonly class: "explosives precursor" | "drug precursor" | "chemical weapons precursor" | "poison-gas" | "hydrazine";
  readonly source: SourceKey;
}

export const PRECURSORS: readonly PrecursorRow[] = [
  { formula: "HNO3", class: "explosives precursor", source: "explosivesPrecursors" },
  { formula: "H2O2", class: "explosives precursor", source: "explosivesPrecursors" },
  { formula: "CH3NO2", class: "explosives precursor", source: "explosivesPrecursors" },
  { formula: "C6H12N4", class: "explosives precursor", source: "explosivesPrecursors" },
  { formula: "HI", class: "drug precursor", source: "drugPrecursors" },
  { formula: "P4", class: "drug precursor", source: "drugPrecursors" },
  { formula: "P", class: "drug precursor", source: "drugPrecursors" },
  { formula: "(CH3CO)2O", class: "drug precursor", source: "drugPrecursors" },
  { formula: "PCl3", class: "chemical weapons precursor", source: "chemicalWeaponsConvention" },
  { formula: "PCl5", class: "chemical weapons precursor", source: "chemicalWeaponsConvention" },
  { formula: "POCl3", class: "chemical weapons precursor", source: "chemicalWeaponsConvention" },
  { formula: "SOCl2", class: "chemical weapons precursor", source: "chemicalWeaponsConvention" },
  { formula: "N2H4", class: "hydrazine", source: "commonPractice" },
  { formula: "N2O3", class: "poison-gas", source: "commonPractice" },
  { formula: "N2O5", class: "explosives precursor", source: "commonPractice" },
  { formula: "SO3", class: "poison-gas", source: "commonPractice" },
  { formula: "SCl2", class: "chemical weapons precursor", source: "chemicalWeaponsConvention" },
  { formula: "S2Cl2", class: "chemical weapons precursor", source: "chemicalWeaponsConvention" },
];

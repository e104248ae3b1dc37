// Normal boiling points of liquids and volatile solids that a bench may call a gas, read in handbooks or recalled. They
// only tell a vapour from a liquid, so that a degree does not matter.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

interface VolatilityRow {
  /** As it is written; an organic formula by its groups, because isomers boil apart. */
  readonly formula: string;
  /** °C at 101.325 kPa; where a solid sublimes, the temperature at which its vapour has that pressure. */
  readonly boils: string;
  readonly source: SourceKey;
}

export const VOLATILITY = /* @__PURE__ */ once((): readonly VolatilityRow[] => [
  { formula: "CH3OH", boils: "64.7", source: "langeSolvents" },
  { formula: "C2H5OH", boils: "78.3", source: "langeSolvents" },
  { formula: "CH3CH2OH", boils: "78.3", source: "langeSolvents" },
  { formula: "(CH3)2CO", boils: "56.2", source: "langeSolvents" },
  { formula: "CH3COCH3", boils: "56.2", source: "langeSolvents" },
  { formula: "CH3COOH", boils: "117.9", source: "langeSolvents" },
  { formula: "HCOOH", boils: "100.8", source: "langeSolvents" },
  { formula: "(C2H5)2O", boils: "34.6", source: "langeSolvents" },
  { formula: "C6H6", boils: "80.1", source: "memory" },
  { formula: "C6H14", boils: "68.7", source: "langeSolvents" },
  { formula: "C7H16", boils: "98.4", source: "langeSolvents" },
  { formula: "C8H18", boils: "125.6", source: "memory" },
  { formula: "CHCl3", boils: "61.2", source: "langeSolvents" },
  { formula: "CH2Cl2", boils: "39.8", source: "langeSolvents" },
  { formula: "CCl4", boils: "76.7", source: "langeSolvents" },
  { formula: "CS2", boils: "46.2", source: "crcBoilingPressure" },
  { formula: "Br2", boils: "58.8", source: "pubchemElements" },
  { formula: "I2", boils: "184.4", source: "pubchemElements" },
  { formula: "S8", boils: "444.6", source: "pubchemElements" },
  { formula: "S", boils: "444.6", source: "pubchemElements" },
  { formula: "C", boils: "3825", source: "pubchemElements" },
  { formula: "Si", boils: "3265", source: "pubchemElements" },
  { formula: "SiO2", boils: "2230", source: "memory" },
  { formula: "P4O10", boils: "360", source: "memory" },
  { formula: "P2O5", boils: "360", source: "memory" },
  { formula: "P4", boils: "280.5", source: "pubchemElements" },
  { formula: "Hg", boils: "356.7", source: "pubchemElements" },
  { formula: "SO3", boils: "44.8", source: "memory" },
  { formula: "HNO3", boils: "83", source: "memory" },
  { formula: "H2SO4", boils: "337", source: "memory" },
  { formula: "H2O2", boils: "150.2", source: "memory" },
  { formula: "N2H4", boils: "113.5", source: "memory" },
  { formula: "PCl3", boils: "76.1", source: "memory" },
  { formula: "POCl3", boils: "105.5", source: "memory" },
  { formula: "SiCl4", boils: "57.6", source: "memory" },
  { formula: "TiCl4", boils: "136.4", source: "memory" },
  { formula: "SnCl4", boils: "114", source: "memory" },
  { formula: "Ni(CO)4", boils: "43", source: "memory" },
]);

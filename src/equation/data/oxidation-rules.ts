// The order in which oxidation states are assigned inside one unit, until a single element is left to take the balance.
// Rules of the Red Book, section IR-5.4.2.2 and the electronegativity sequence of its table VI; hydrogen and oxygen have
// their own rules in rules.ts. States of single metals stand in a published table where it
// has one alone, are recalled where it has several, and are named as assumptions when used.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One assignment: the element and the state it takes. */
interface StateRow {
  readonly symbol: string;
  readonly state: number;
  readonly source: SourceKey;
}

/** Before hydrogen and oxygen: states that do not vary in compounds. */
export const FIXED_STATES: readonly StateRow[] = [
  { symbol: "F", state: -1, source: "redBook2005" },
  { symbol: "Li", state: 1, source: "redBook2005" },
  { symbol: "Na", state: 1, source: "redBook2005" },
  { symbol: "K", state: 1, source: "redBook2005" },
  { symbol: "Rb", state: 1, source: "redBook2005" },
  { symbol: "Cs", state: 1, source: "redBook2005" },
  { symbol: "Fr", state: 1, source: "redBook2005" },
  { symbol: "Be", state: 2, source: "redBook2005" },
  { symbol: "Mg", state: 2, source: "redBook2005" },
  { symbol: "Ca", state: 2, source: "redBook2005" },
  { symbol: "Sr", state: 2, source: "redBook2005" },
  { symbol: "Ba", state: 2, source: "redBook2005" },
  { symbol: "Ra", state: 2, source: "redBook2005" },
  { symbol: "Al", state: 3, source: "pubchemElements" },
  { symbol: "Sc", state: 3, source: "pubchemElements" },
  { symbol: "Y", state: 3, source: "pubchemElements" },
  { symbol: "La", state: 3, source: "pubchemElements" },
  { symbol: "Zn", state: 2, source: "pubchemElements" },
  { symbol: "Cd", state: 2, source: "pubchemElements" },
];

/** After oxygen: the more electronegative non-metal takes the state of its simple anion. */
export const ANION_STATES: readonly StateRow[] = [
  { symbol: "Cl", state: -1, source: "redBook2005" },
  { symbol: "N", state: -3, source: "redBook2005" },
  { symbol: "Br", state: -1, source: "redBook2005" },
  { symbol: "I", state: -1, source: "redBook2005" },
  { symbol: "S", state: -2, source: "redBook2005" },
  { symbol: "Se", state: -2, source: "redBook2005" },
  { symbol: "Te", state: -2, source: "redBook2005" },
  { symbol: "As", state: -3, source: "redBook2005" },
  { symbol: "P", state: -3, source: "redBook2005" },
  { symbol: "Sb", state: -3, source: "redBook2005" },
  { symbol: "C", state: -4, source: "redBook2005" },
  { symbol: "Si", state: -4, source: "redBook2005" },
];

/** Last, and only beside oxygen or a more electronegative partner: the commonest state, an assumption that is reported. */
export const COMMON_STATES = /* @__PURE__ */ once((): readonly StateRow[] => [
  { symbol: "C", state: 4, source: "memory" },
  { symbol: "Si", state: 4, source: "memory" },
  { symbol: "B", state: 3, source: "pubchemElements" },
  { symbol: "P", state: 5, source: "memory" },
  { symbol: "S", state: 6, source: "memory" },
  { symbol: "Ag", state: 1, source: "pubchemElements" },
  { symbol: "Nd", state: 3, source: "pubchemElements" },
  { symbol: "Sm", state: 3, source: "memory" },
  { symbol: "Gd", state: 3, source: "pubchemElements" },
  { symbol: "Dy", state: 3, source: "pubchemElements" },
  { symbol: "Ho", state: 3, source: "pubchemElements" },
  { symbol: "Er", state: 3, source: "pubchemElements" },
  { symbol: "Tm", state: 3, source: "pubchemElements" },
  { symbol: "Yb", state: 3, source: "memory" },
  { symbol: "Lu", state: 3, source: "pubchemElements" },
  { symbol: "Pr", state: 3, source: "pubchemElements" },
  { symbol: "Tb", state: 3, source: "pubchemElements" },
  { symbol: "Eu", state: 3, source: "memory" },
  { symbol: "In", state: 3, source: "pubchemElements" },
  { symbol: "Th", state: 4, source: "pubchemElements" },
  { symbol: "Zr", state: 4, source: "pubchemElements" },
  { symbol: "Hf", state: 4, source: "pubchemElements" },
  { symbol: "Ti", state: 4, source: "memory" },
  { symbol: "Nb", state: 5, source: "memory" },
  { symbol: "Ta", state: 5, source: "pubchemElements" },
  { symbol: "Mo", state: 6, source: "pubchemElements" },
  { symbol: "W", state: 6, source: "pubchemElements" },
  { symbol: "V", state: 5, source: "memory" },
  { symbol: "As", state: 5, source: "memory" },
  { symbol: "U", state: 6, source: "memory" },
  { symbol: "Ge", state: 4, source: "memory" },
  { symbol: "Ce", state: 4, source: "memory" },
  { symbol: "Bi", state: 3, source: "memory" },
  { symbol: "Cr", state: 3, source: "memory" },
  { symbol: "Ni", state: 2, source: "memory" },
  { symbol: "Pb", state: 2, source: "memory" },
  { symbol: "Co", state: 2, source: "memory" },
  { symbol: "Cu", state: 2, source: "memory" },
  { symbol: "Sn", state: 4, source: "memory" },
  { symbol: "Mn", state: 2, source: "memory" },
]);

/** Compounds that the rules misjudge, with the states their structures show; several in equal shares of the atoms. */
export interface StructureRow {
  readonly formula: string;
  readonly states: Readonly<Record<string, string>>;
  readonly source: SourceKey;
}

export const KNOWN_STRUCTURES: readonly StructureRow[] = [
  { formula: "Fe3O4", states: { Fe: "2 3 3", O: "-2" }, source: "memory" },
  { formula: "Mn3O4", states: { Mn: "2 3 3", O: "-2" }, source: "memory" },
  { formula: "Co3O4", states: { Co: "2 3 3", O: "-2" }, source: "memory" },
  { formula: "Pb3O4", states: { Pb: "2 2 4", O: "-2" }, source: "memory" },
  { formula: "FeS2", states: { Fe: "2", S: "-1" }, source: "memory" },
  { formula: "CoS2", states: { Co: "2", S: "-1" }, source: "memory" },
  { formula: "NiS2", states: { Ni: "2", S: "-1" }, source: "memory" },
  { formula: "MnS2", states: { Mn: "2", S: "-1" }, source: "memory" },
  { formula: "CuFeS2", states: { Cu: "1", Fe: "3", S: "-2" }, source: "memory" },
  { formula: "Cu5FeS4", states: { Cu: "1", Fe: "3", S: "-2" }, source: "memory" },
  { formula: "CuFeO2", states: { Cu: "1", Fe: "3", O: "-2" }, source: "memory" },
  { formula: "FeAsS", states: { Fe: "3", As: "-1", S: "-2" }, source: "memory" },
  { formula: "FeAs2", states: { Fe: "2", As: "-1" }, source: "memory" },
  { formula: "CuSCN", states: { Cu: "1", S: "-2", C: "4", N: "-3" }, source: "memory" },
];

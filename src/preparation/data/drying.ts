// Highest temperatures at which a product is dried without losing more than moisture. From memory of bench practice, to be
// checked against the substance's own data: the rows say so.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** How far a product may be warmed. */
export interface DryingRow {
  readonly formula: string;
  /** °C; room temperature where it loses crystal water or ammonia in warm air. */
  readonly upTo: string;
  readonly why?: string;
  readonly source: SourceKey;
}

const room = (formula: string, why: string): DryingRow => ({ formula, upTo: "25", why, source: "memory" });
const upTo = (celsius: string, ...formulas: readonly string[]): DryingRow[] =>
  formulas.map((formula) => ({ formula, upTo: celsius, source: "memory" }));

export const DRYING = /* @__PURE__ */ once((): readonly DryingRow[] => [
  room("(NH4)2Fe(SO4)2·6H2O", "warm air oxidises it and takes its water"),
  room("KCr(SO4)2·12H2O", "it effloresces"),
  room("I2", "it sublimes: press it between paper and let it dry in a closed vessel over calcium chloride"),
  room("NH4NO3", "it must not be heated dry"),
  room("Na2S2O3·5H2O", "it melts in its water at 48 °C"),
  room("NH4Fe(SO4)2·12H2O", "it melts in its water at 39 °C"),
  room("KFe(SO4)2·12H2O", "it melts in its water at 33 °C"),
  room("Ca(NO3)2·4H2O", "it melts in its water at 43 °C"),
  room("MnSO4·4H2O", "it melts in its water at 38 °C"),
  room("Mn(NO3)2·4H2O", "it melts in its water at 37 °C"),
  room("FeCl3·6H2O", "it melts in its water at 37 °C"),
  room("Zn(NO3)2·6H2O", "it melts in its water at 36 °C"),
  room("SnCl2·2H2O", "it melts in its water at 38 °C"),
  ...["K2S2O5", "Na2S2O5"].map((formula): DryingRow => ({ formula, upTo: "40", why: "damp and warm it gives off sulfur dioxide, and air makes sulfate of it: bottle it tightly", source: "commonPractice" })),
  { formula: "KHCO3", upTo: "50", why: "damp it gives off carbon dioxide", source: "commonPractice" },
  { formula: "Cu2O", upTo: "60", why: "warmer, air oxidises it", source: "commonPractice" },
  { formula: "K2[Cu(C2O4)2]·2H2O", upTo: "70", why: "dried at 70 °C it kept its two waters", source: "oxalatocuprateThesis" },
  { formula: "SiO2", upTo: "110", why: "the gel keeps some water at any constant mass: only red heat drives it all out", source: "commonPractice" },
  room("H2SiO3", "it has no fixed share of water: it loses some in any air, and is SiO2 after red heat"),
  room("H4SiO4", "it has no fixed share of water: it loses some in any air, and is SiO2 after red heat"),
  ...upTo("35", "CuSO4·5H2O", "NiSO4·6H2O"),
  { formula: "FeSO4·7H2O", upTo: "25", why: "warm or dry air takes its water", source: "commonPractice" },
  ...upTo("40", "Ni3(OH)4CO3·4H2O", "H2C2O4·2H2O"),
  ...upTo("50", "KAl(SO4)2·12H2O", "NH4Al(SO4)2·12H2O", "K3[Fe(C2O4)3]·3H2O"),
  ...upTo("60", "H3BO3", "Cu(CH3COO)2·H2O", "Na3C6H5O7·2H2O", "K3C6H5O7·H2O"),
  ...upTo("100", "Cu2(OH)2CO3", "Zn5(OH)6(CO3)2", "Mg5(CO3)4(OH)2·4H2O", "Mg4(CO3)3(OH)2·3H2O", "FeC2O4·2H2O", "CaC2O4·H2O"),
  ...upTo("110", "CaCO3", "KNO3", "KCl", "NaCl", "BaCO3", "SrCO3", "Na2CO3", "BaSO4"),
]);

/** What bears the warmth of a drying oven without crystal water, ammonia and hydrogen in it, and far above: salts of these anions, of these metals or of any, and precious metals. */
export const BEARS_OVEN: {
  readonly salts: readonly { readonly groups: readonly string[]; readonly metals?: readonly string[] }[];
  readonly metals: readonly string[];
  readonly source: SourceKey;
} = {
  salts: [
    { groups: ["sulfate", "tungstate", "molybdate", "chromate"] },
    { groups: ["nitrate"], metals: ["Na", "K", "Rb", "Cs", "Sr", "Ba", "Pb"] },
  ],
  metals: ["Ag", "Au", "Pt", "Pd"],
  source: "memory",
};

/** A salt that the water of usual air changes, one way or the other. */
interface InAirRow {
  readonly formula: string;
  readonly source: SourceKey;
}

/** What leaves an open dish as vapour: it dries in a closed vessel. */
export const DRIED_CLOSED = { formulas: ["I2"], source: "commonPractice" } as const;

/** Hydrates whose vapour pressure is above that of the water in usual air. */
export const EFFLORESCENT: readonly InAirRow[] = [
  { formula: "Na2CO3·10H2O", source: "britannicaEfflorescence" },
  { formula: "Na2SO4·10H2O", source: "britannicaEfflorescence" },
  { formula: "Na2HPO4·12H2O", source: "commonPractice" },
];

/** Salts that absorb water from the air until they run: the air over their saturated solution is drier than usual air. */
export const DELIQUESCENT: readonly InAirRow[] = [
  { formula: "ZnCl2", source: "bruntonZinc" },
  { formula: "CaCl2", source: "crcHumidity" },
  { formula: "CuCl2", source: "memory" },
  { formula: "FeCl3", source: "bruntonZinc" },
  { formula: "MnCl2", source: "memory" },
  { formula: "MgCl2", source: "crcHumidity" },
  { formula: "K2CO3", source: "memory" },
  { formula: "NaOH", source: "crcHumidity" },
  { formula: "KOH", source: "crcHumidity" },
  { formula: "Ca(NO3)2", source: "crcHumidity" },
  { formula: "Mg(NO3)2", source: "crcHumidity" },
  { formula: "Zn(NO3)2", source: "memory" },
  { formula: "Cu(NO3)2", source: "memory" },
  { formula: "Co(NO3)2", source: "memory" },
  { formula: "Ni(NO3)2", source: "memory" },
  { formula: "Mn(NO3)2", source: "memory" },
  { formula: "Fe(NO3)3", source: "memory" },
  { formula: "Al(NO3)3", source: "memory" },
  { formula: "LiNO3", source: "memory" },
  { formula: "LiCl", source: "crcHumidity" },
  { formula: "LiBr", source: "crcHumidity" },
  { formula: "CaBr2", source: "crcHumidity" },
  { formula: "MgBr2", source: "memory" },
  { formula: "ZnBr2", source: "crcHumidity" },
  { formula: "LiI", source: "crcHumidity" },
  { formula: "NaI", source: "crcHumidity" },
  { formula: "ZnI2", source: "bruntonZinc" },
  { formula: "AlCl3", source: "memory" },
  { formula: "KCH3COO", source: "memory" },
  { formula: "KF", source: "memory" },
];

/** Oxides that take water and carbon dioxide from the air. */
export const SLAKES = {
  formulas: ["CaO", "SrO", "BaO", "Na2O", "K2O", "Li2O", "MgO"],
  source: "commonPractice",
} as const satisfies { readonly formulas: readonly string[]; readonly source: SourceKey };

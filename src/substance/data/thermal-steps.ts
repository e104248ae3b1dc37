// What heat takes from a substance and what it leaves, step by step: each step starts from what the one before left, the
// first from one formula unit of the substance. Typical of open crucibles in air, moving by tens of degrees with heating
// rate, grain, depth and moisture: which product at what kind of heat, never how long.
import { columns } from "../../foundation/columns";
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** A formula with its coefficient, a whole number or a fraction such as `1/2`. */
export interface ThermalAmount {
  /** As the table of heating writes it. */
  readonly formula: string;
  /** Whole number or fraction, as text. */
  readonly coefficient: string;
}

/** One step. Before it plus `takes` equals `leaves` plus `remains`, atom for atom. */
export interface ThermalStepRow {
  /** Temperature in °C at which it begins, as decimal text. */
  readonly from: string;
  /** Temperature in °C by which it is over, where one is given. */
  readonly to?: string;
  /** The temperatures are about so. */
  readonly approx?: true;
  /** Absorbed from the air. */
  readonly takes?: readonly ThermalAmount[];
  /** Gases and vapours given off. */
  readonly leaves: readonly ThermalAmount[];
  /** Solids (or melt) left; empty when nothing is. */
  readonly remains: readonly ThermalAmount[];
}

/** The steps of one substance. */
interface ThermalRow {
  readonly formula: string;
  readonly steps: readonly ThermalStepRow[];
  /** What happens besides, in words; temperatures in °C. */
  readonly note?: string;
  /** What steps, temperatures and note rest on. */
  readonly source: SourceKey;
}

export const THERMAL = /* @__PURE__ */ once((): readonly ThermalRow[] => [
  { formula: "NH4Cl", steps: [{ from: "338", approx: true, leaves: [{ formula: "NH3", coefficient: "1" }, { formula: "HCl", coefficient: "1" }], remains: [] }], note: "sublimes; the gases recombine on cooling", source: "memory" },
  { formula: "(NH4)2SO4", steps: [{ from: "235", to: "280", leaves: [{ formula: "NH3", coefficient: "1" }], remains: [{ formula: "NH4HSO4", coefficient: "1" }] }], source: "schoolChemicals" },
  { formula: "NH4NO3", steps: [{ from: "210", approx: true, leaves: [{ formula: "N2O", coefficient: "1" }, { formula: "H2O", coefficient: "2" }], remains: [] }], note: "runs away and can detonate: no bench operation", source: "safetySummaries" },
  { formula: "(NH4)2CO3", steps: [{ from: "58", leaves: [{ formula: "NH3", coefficient: "2" }, { formula: "CO2", coefficient: "1" }, { formula: "H2O", coefficient: "1" }], remains: [] }], source: "schoolChemicals" },
  { formula: "NH4HCO3", steps: [{ from: "35", to: "60", leaves: [{ formula: "NH3", coefficient: "1" }, { formula: "CO2", coefficient: "1" }, { formula: "H2O", coefficient: "1" }], remains: [] }], source: "safetyCards" },
  { formula: "(NH4)2HPO4", steps: [{ from: "70", to: "155", leaves: [{ formula: "NH3", coefficient: "1" }], remains: [{ formula: "NH4H2PO4", coefficient: "1" }] }], source: "supplierHeating" },
  { formula: "(NH4)2S2O8", steps: [{ from: "120", leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "(NH4)2S2O7", coefficient: "1" }] }], source: "safetySummaries" },
  { formula: "(NH4)2C2O4·H2O", steps: [{ from: "70", to: "100", approx: true, leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "(NH4)2C2O4", coefficient: "1" }] }], source: "memory" },
  { formula: "(NH4)2CrO4", steps: [{ from: "185", leaves: [{ formula: "N2", coefficient: "1/2" }, { formula: "NH3", coefficient: "1" }, { formula: "H2O", coefficient: "5/2" }], remains: [{ formula: "Cr2O3", coefficient: "1/2" }] }], source: "memory" },
  { formula: "(NH4)2Cr2O7", steps: [{ from: "180", approx: true, leaves: [{ formula: "N2", coefficient: "1" }, { formula: "H2O", coefficient: "4" }], remains: [{ formula: "Cr2O3", coefficient: "1" }] }], note: "keeps going by itself from about 225, or once lit", source: "safetySummaries" },
  { formula: "(NH4)6Mo7O24·4H2O", steps: [
    { from: "90", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "(NH4)6Mo7O24", coefficient: "1" }] },
    { from: "300", leaves: [{ formula: "NH3", coefficient: "6" }, { formula: "H2O", coefficient: "3" }], remains: [{ formula: "MoO3", coefficient: "7" }] },
  ], source: "memory" },
  { formula: "NH4VO3", steps: [{ from: "225", to: "450", leaves: [{ formula: "NH3", coefficient: "1" }, { formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "V2O5", coefficient: "1/2" }] }], note: "by way of (NH4)2V6O16, from 335 to the oxide", source: "vanadateHeatingFirst" },
  { formula: "NH4Al(SO4)2·12H2O", steps: [
    { from: "120", approx: true, leaves: [{ formula: "H2O", coefficient: "10" }], remains: [{ formula: "NH4Al(SO4)2·2H2O", coefficient: "1" }] },
    { from: "250", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "NH4Al(SO4)2", coefficient: "1" }] },
  ], note: "melts in its water at 93.5", source: "aluminiumSaltsFirst" },
  { formula: "NH4Al(SO4)2", steps: [{ from: "500", to: "600", approx: true, leaves: [{ formula: "NH3", coefficient: "1" }, { formula: "SO3", coefficient: "1/2" }, { formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Al2(SO4)3", coefficient: "1/2" }] }], source: "memory" },
  { formula: "NH4Fe(SO4)2·12H2O", steps: [{ from: "230", leaves: [{ formula: "H2O", coefficient: "12" }], remains: [{ formula: "NH4Fe(SO4)2", coefficient: "1" }] }], note: "melts in its water at 39", source: "memory" },
  { formula: "(NH4)2Fe(SO4)2·6H2O", steps: [{ from: "57", to: "100", leaves: [{ formula: "H2O", coefficient: "6" }], remains: [{ formula: "(NH4)2Fe(SO4)2", coefficient: "1" }] }], note: "partly decomposes as it dries", source: "mohrHeatingFirst" },
  { formula: "(NH4)2Ni(SO4)2·6H2O", steps: [{ from: "130", approx: true, leaves: [{ formula: "H2O", coefficient: "6" }], remains: [{ formula: "(NH4)2Ni(SO4)2", coefficient: "1" }] }], source: "memory" },
  { formula: "(NH4)2Cu(SO4)2·6H2O", steps: [
    { from: "66", to: "120", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "(NH4)2Cu(SO4)2·2H2O", coefficient: "1" }] },
    { from: "120", approx: true, leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "(NH4)2Cu(SO4)2", coefficient: "1" }] },
  ], source: "ammoniumCopper1995First" },
  { formula: "NH4MgPO4·6H2O", steps: [
    { from: "100", to: "200", approx: true, leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "NH4MgPO4·H2O", coefficient: "1" }] },
    { from: "250", to: "300", approx: true, leaves: [{ formula: "NH3", coefficient: "1" }, { formula: "H2O", coefficient: "3/2" }], remains: [{ formula: "Mg2P2O7", coefficient: "1/2" }] },
  ], note: "loses water and ammonia slowly above 55; the pyrophosphate crystallises only near 600", source: "ramloganRouff2016" },
  { formula: "NH4Cr(SO4)2·12H2O", steps: [{ from: "100", leaves: [{ formula: "H2O", coefficient: "9" }], remains: [{ formula: "NH4Cr(SO4)2·3H2O", coefficient: "1" }] }], note: "melts as it dries", source: "friendChromium" },
  { formula: "LiOH·H2O", steps: [{ from: "40", to: "109", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "LiOH", coefficient: "1" }] }], source: "chemicalEncyclopedia" },
  { formula: "Li2CO3", steps: [{ from: "1300", approx: true, leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "Li2O", coefficient: "1" }] }], source: "memory" },
  { formula: "LiCl·H2O", steps: [{ from: "98", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "LiCl", coefficient: "1" }] }], source: "memory" },
  { formula: "Li2SO4·H2O", steps: [{ from: "80", to: "130", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "Li2SO4", coefficient: "1" }] }], source: "lithiumSulfate1997First" },
  { formula: "Na2CO3·H2O", steps: [{ from: "100", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "Na2CO3", coefficient: "1" }] }], note: "effloresces in dry air above 50", source: "pharmacopoeiaDrying" },
  { formula: "Na2CO3·7H2O", steps: [{ from: "35", leaves: [{ formula: "H2O", coefficient: "6" }], remains: [{ formula: "Na2CO3·H2O", coefficient: "1" }] }], note: "stable only between about 32 and 35", source: "memory" },
  { formula: "Na2CO3·10H2O", steps: [
    { from: "32", to: "34", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "Na2CO3·7H2O", coefficient: "1" }] },
    { from: "35", leaves: [{ formula: "H2O", coefficient: "6" }], remains: [{ formula: "Na2CO3·H2O", coefficient: "1" }] },
    { from: "100", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "Na2CO3", coefficient: "1" }] },
  ], note: "loses water to the monohydrate in the open", source: "oxfordChemistryFirst" },
  { formula: "NaHCO3", steps: [{ from: "50", to: "200", leaves: [{ formula: "CO2", coefficient: "1/2" }, { formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Na2CO3", coefficient: "1/2" }] }], note: "fast from 100", source: "frostburgSodaFirst" },
  { formula: "Na3H(CO3)2·2H2O", steps: [{ from: "57", to: "160", approx: true, leaves: [{ formula: "CO2", coefficient: "1/2" }, { formula: "H2O", coefficient: "5/2" }], remains: [{ formula: "Na2CO3", coefficient: "3/2" }] }], source: "sesquicarbonateFirst" },
  { formula: "2Na2CO3·3H2O2", steps: [{ from: "50", approx: true, leaves: [{ formula: "O2", coefficient: "3/2" }, { formula: "H2O", coefficient: "3" }], remains: [{ formula: "Na2CO3", coefficient: "2" }] }], note: "can run away in bulk", source: "memory" },
  { formula: "Na2SO4·10H2O", steps: [{ from: "32.38", to: "100", leaves: [{ formula: "H2O", coefficient: "10" }], remains: [{ formula: "Na2SO4", coefficient: "1" }] }], note: "melts at 32.38 leaving anhydrous salt; loses water in dry air", source: "richardsKelley1911First" },
  { formula: "NaHSO4", steps: [
    { from: "315", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Na2S2O7", coefficient: "1/2" }] },
    { from: "460", leaves: [{ formula: "SO3", coefficient: "1/2" }], remains: [{ formula: "Na2SO4", coefficient: "1/2" }] },
  ], source: "memory" },
  { formula: "NaHSO4·H2O", steps: [{ from: "58", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "NaHSO4", coefficient: "1" }] }], note: "melts as it dries", source: "memory" },
  { formula: "Na2S2O7", steps: [{ from: "460", leaves: [{ formula: "SO3", coefficient: "1" }], remains: [{ formula: "Na2SO4", coefficient: "1" }] }], source: "memory" },
  { formula: "Na2SO3", steps: [], note: "slowly oxidised to sulfate in air", source: "memory" },
  { formula: "Na2SO3·7H2O", steps: [{ from: "150", leaves: [{ formula: "H2O", coefficient: "7" }], remains: [{ formula: "Na2SO3", coefficient: "1" }] }], note: "loses water in dry air", source: "chemicalEncyclopediaFirst" },
  { formula: "Na2S2O5", steps: [{ from: "150", leaves: [{ formula: "SO2", coefficient: "1" }], remains: [{ formula: "Na2SO3", coefficient: "1" }] }], source: "safetySummaries" },
  { formula: "Na2S2O3·5H2O", steps: [{ from: "100", approx: true, leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "Na2S2O3", coefficient: "1" }] }], note: "melts in its water at 48", source: "chemicalEncyclopediaFirst" },
  { formula: "NaNO3", steps: [{ from: "380", to: "500", approx: true, leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "NaNO2", coefficient: "1" }] }], source: "memory" },
  { formula: "Na3PO4·12H2O", steps: [{ from: "100", leaves: [{ formula: "H2O", coefficient: "11" }], remains: [{ formula: "Na3PO4·H2O", coefficient: "1" }] }], note: "melts at 75; the last water stays even at moderate red heat, though handbooks also print the loss of all 12", source: "merckIndexFirst" },
  { formula: "Na2HPO4", steps: [{ from: "240", to: "300", approx: true, leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Na4P2O7", coefficient: "1/2" }] }], source: "memory" },
  { formula: "Na2HPO4·2H2O", steps: [{ from: "95", to: "105", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "Na2HPO4", coefficient: "1" }] }], source: "foodAdditiveDryingFirst" },
  { formula: "Na2HPO4·7H2O", steps: [{ from: "48", leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "Na2HPO4·2H2O", coefficient: "1" }] }], source: "memory" },
  { formula: "Na2HPO4·12H2O", steps: [
    { from: "35", leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "Na2HPO4·7H2O", coefficient: "1" }] },
    { from: "100", to: "105", leaves: [{ formula: "H2O", coefficient: "7" }], remains: [{ formula: "Na2HPO4", coefficient: "1" }] },
  ], note: "melts and loses water in the open", source: "foodAdditiveDryingFirst" },
  { formula: "NaH2PO4", steps: [
    { from: "212", to: "224", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Na2H2P2O7", coefficient: "1/2" }] },
    { from: "260", to: "360", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "NaPO3", coefficient: "1" }] },
  ], source: "thermoRaman" },
  { formula: "NaH2PO4·H2O", steps: [{ from: "100", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "NaH2PO4", coefficient: "1" }] }], source: "merckIndex" },
  { formula: "NaH2PO4·2H2O", steps: [{ from: "100", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "NaH2PO4", coefficient: "1" }] }], note: "melts at 60", source: "merckIndex" },
  { formula: "Na4P2O7·10H2O", steps: [{ from: "94", leaves: [{ formula: "H2O", coefficient: "10" }], remains: [{ formula: "Na4P2O7", coefficient: "1" }] }], source: "compoundPages" },
  { formula: "Na2H2P2O7", steps: [{ from: "220", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "NaPO3", coefficient: "2" }] }], source: "foodAdditivesBook" },
  { formula: "Na2B4O7·5H2O", steps: [{ from: "120", to: "320", leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "Na2B4O7", coefficient: "1" }] }], source: "merckIndexFirst" },
  { formula: "Na2B4O7·10H2O", steps: [
    { from: "60", to: "100", leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "Na2B4O7·5H2O", coefficient: "1" }] },
    { from: "120", to: "320", approx: true, leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "Na2B4O7", coefficient: "1" }] },
  ], note: "loses water to the pentahydrate in the open; melts to a glass at 743", source: "merckIndexFirst" },
  { formula: "NaClO3", steps: [{ from: "300", leaves: [{ formula: "O2", coefficient: "3/2" }], remains: [{ formula: "NaCl", coefficient: "1" }] }], source: "memory" },
  { formula: "NaCH3COO", steps: [{ from: "330", to: "440", approx: true, leaves: [{ formula: "CH3COCH3", coefficient: "1/2" }], remains: [{ formula: "Na2CO3", coefficient: "1/2" }] }], source: "memory" },
  { formula: "NaCH3COO·3H2O", steps: [{ from: "120", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "NaCH3COO", coefficient: "1" }] }], note: "melts in its water at 58", source: "pharmacopoeiaDrying" },
  { formula: "Na2C2O4", steps: [{ from: "500", approx: true, leaves: [{ formula: "CO", coefficient: "1" }], remains: [{ formula: "Na2CO3", coefficient: "1" }] }], source: "memory" },
  { formula: "Na3C6H5O7·2H2O", steps: [{ from: "150", to: "180", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "Na3C6H5O7", coefficient: "1" }] }], note: "decomposes at about 300", source: "pharmacopoeiaDryingFirst" },
  { formula: "Na2SnO3·3H2O", steps: [{ from: "140", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "Na2SnO3", coefficient: "1" }] }], source: "memory" },
  { formula: "Na2Cr2O7·2H2O", steps: [{ from: "83", to: "100", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "Na2Cr2O7", coefficient: "1" }] }], note: "the anhydrous salt melts at 357 and decomposes at 400", source: "memory" },
  { formula: "Na2MoO4·2H2O", steps: [{ from: "100", to: "140", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "Na2MoO4", coefficient: "1" }] }], note: "the anhydrous salt melts at 687", source: "pharmacopoeiaDryingFirst" },
  { formula: "Na2WO4·2H2O", steps: [{ from: "100", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "Na2WO4", coefficient: "1" }] }], note: "the anhydrous salt melts at 698", source: "tungstateHeating" },
  { formula: "NaN3", steps: [{ from: "300", leaves: [{ formula: "N2", coefficient: "3/2" }], remains: [{ formula: "Na", coefficient: "1" }] }], source: "memory" },
  { formula: "Na4[Fe(CN)6]·10H2O", steps: [{ from: "50", to: "82", leaves: [{ formula: "H2O", coefficient: "10" }], remains: [{ formula: "Na4[Fe(CN)6]", coefficient: "1" }] }], note: "decomposes above 435", source: "compoundPagesFirst" },
  { formula: "KNaC4H4O6·4H2O", steps: [
    { from: "100", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "KNaC4H4O6·H2O", coefficient: "1" }] },
    { from: "130", to: "140", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "KNaC4H4O6", coefficient: "1" }] },
  ], note: "melts at 70 to 80", source: "foodAdditivesBook" },
  { formula: "K2CO3·1.5H2O", steps: [{ from: "150", to: "160", leaves: [{ formula: "H2O", coefficient: "3/2" }], remains: [{ formula: "K2CO3", coefficient: "1" }] }], source: "chemicalEncyclopedia" },
  { formula: "KHCO3", steps: [{ from: "100", to: "200", leaves: [{ formula: "CO2", coefficient: "1/2" }, { formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "K2CO3", coefficient: "1/2" }] }], source: "memory" },
  { formula: "KHSO4", steps: [
    { from: "200", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "K2S2O7", coefficient: "1/2" }] },
    { from: "600", leaves: [{ formula: "SO3", coefficient: "1/2" }], remains: [{ formula: "K2SO4", coefficient: "1/2" }] },
  ], source: "memory" },
  { formula: "KNO3", steps: [{ from: "400", leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "KNO2", coefficient: "1" }] }], source: "memory" },
  { formula: "KClO3", steps: [{ from: "400", leaves: [{ formula: "O2", coefficient: "3/2" }], remains: [{ formula: "KCl", coefficient: "1" }] }], note: "by way of the perchlorate; manganese dioxide lowers the temperature", source: "oxfordChemistryFirst" },
  { formula: "KClO4", steps: [{ from: "525", to: "600", leaves: [{ formula: "O2", coefficient: "2" }], remains: [{ formula: "KCl", coefficient: "1" }] }], source: "memory" },
  { formula: "KIO3", steps: [{ from: "560", leaves: [{ formula: "O2", coefficient: "3/2" }], remains: [{ formula: "KI", coefficient: "1" }] }], source: "memory" },
  { formula: "KMnO4", steps: [{ from: "240", approx: true, leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "K2MnO4", coefficient: "1/2" }, { formula: "MnO2", coefficient: "1/2" }] }], source: "safetySummaries" },
  { formula: "K2Cr2O7", steps: [{ from: "500", leaves: [{ formula: "O2", coefficient: "3/4" }], remains: [{ formula: "K2CrO4", coefficient: "1" }, { formula: "Cr2O3", coefficient: "1/2" }] }], source: "memory" },
  { formula: "KAl(SO4)2·12H2O", steps: [
    { from: "60", to: "65", leaves: [{ formula: "H2O", coefficient: "9" }], remains: [{ formula: "KAl(SO4)2·3H2O", coefficient: "1" }] },
    { from: "200", approx: true, leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "KAl(SO4)2", coefficient: "1" }] },
    { from: "600", to: "800", approx: true, leaves: [{ formula: "SO3", coefficient: "3/2" }], remains: [{ formula: "K2SO4", coefficient: "1/2" }, { formula: "Al2O3", coefficient: "1/2" }] },
  ], note: "melts in its water at 92.5; the first step in dry air", source: "merckIndexFirst" },
  { formula: "KCr(SO4)2·12H2O", steps: [
    { from: "100", leaves: [{ formula: "H2O", coefficient: "10" }], remains: [{ formula: "KCr(SO4)2·2H2O", coefficient: "1" }] },
    { from: "400", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "KCr(SO4)2", coefficient: "1" }] },
  ], source: "oxfordChemistry" },
  { formula: "K4[Fe(CN)6]·3H2O", steps: [
    { from: "60", to: "100", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "K4[Fe(CN)6]", coefficient: "1" }] },
    { from: "400", leaves: [{ formula: "N2", coefficient: "1" }], remains: [{ formula: "KCN", coefficient: "4" }, { formula: "FeC2", coefficient: "1" }] },
  ], source: "memory" },
  { formula: "K3[Fe(C2O4)3]·3H2O", steps: [{ from: "113", approx: true, leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "K3[Fe(C2O4)3]", coefficient: "1" }] }], note: "decomposes at 230; light turns it to iron(II) oxalate", source: "memory" },
  { formula: "K2[Cu(C2O4)2]·2H2O", steps: [{ from: "150", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "K2[Cu(C2O4)2]", coefficient: "1" }] }], note: "decomposes at 260", source: "memory" },
  { formula: "K2C2O4·H2O", steps: [
    { from: "100", to: "160", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "K2C2O4", coefficient: "1" }] },
    { from: "500", to: "600", approx: true, leaves: [{ formula: "CO", coefficient: "1" }], remains: [{ formula: "K2CO3", coefficient: "1" }] },
  ], source: "rajeOxalateFirst" },
  { formula: "K3C6H5O7·H2O", steps: [{ from: "180", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "K3C6H5O7", coefficient: "1" }] }], source: "pharmacopoeiaDrying" },
  { formula: "KH2PO4", steps: [{ from: "253", to: "400", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "KPO3", coefficient: "1" }] }], source: "memory" },
  { formula: "K2HPO4", steps: [{ from: "280", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "K4P2O7", coefficient: "1/2" }] }], source: "memory" },
  { formula: "K2S2O5", steps: [{ from: "150", to: "190", leaves: [{ formula: "SO2", coefficient: "1" }], remains: [{ formula: "K2SO3", coefficient: "1" }] }], source: "memory" },
  { formula: "Mg(OH)2", steps: [{ from: "350", approx: true, leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "MgO", coefficient: "1" }] }], source: "pimminger2016" },
  { formula: "MgCO3", steps: [{ from: "350", to: "600", leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "MgO", coefficient: "1" }] }], source: "memory" },
  { formula: "MgCO3·3H2O", steps: [
    { from: "100", approx: true, leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "MgCO3", coefficient: "1" }] },
    { from: "350", to: "450", leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "MgO", coefficient: "1" }] },
  ], source: "memory" },
  { formula: "Mg5(CO3)4(OH)2·4H2O", steps: [
    { from: "135", to: "330", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "Mg5(CO3)4(OH)2", coefficient: "1" }] },
    { from: "380", to: "520", leaves: [{ formula: "CO2", coefficient: "4" }, { formula: "H2O", coefficient: "1" }], remains: [{ formula: "MgO", coefficient: "5" }] },
  ], note: "the water of the hydroxide goes towards the end of the first step", source: "hydromagnesiteFirst" },
  { formula: "MgSO4", steps: [{ from: "1124", leaves: [{ formula: "SO3", coefficient: "1" }], remains: [{ formula: "MgO", coefficient: "1" }] }], source: "memory" },
  { formula: "MgSO4·H2O", steps: [{ from: "250", to: "350", approx: true, leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "MgSO4", coefficient: "1" }] }], source: "merckIndexFirst" },
  { formula: "MgSO4·6H2O", steps: [
    { from: "70", to: "120", leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "MgSO4·H2O", coefficient: "1" }] },
    { from: "250", to: "350", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "MgSO4", coefficient: "1" }] },
  ], source: "merckIndexFirst" },
  { formula: "MgSO4·7H2O", steps: [
    { from: "48", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "MgSO4·6H2O", coefficient: "1" }] },
    { from: "70", to: "120", leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "MgSO4·H2O", coefficient: "1" }] },
    { from: "250", to: "350", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "MgSO4", coefficient: "1" }] },
  ], note: "loses water to the hexahydrate in dry air", source: "merckIndexFirst" },
  { formula: "MgCl2·6H2O", steps: [
    { from: "100", to: "190", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "MgCl2·2H2O", coefficient: "1" }] },
    { from: "500", leaves: [{ formula: "HCl", coefficient: "2" }, { formula: "H2O", coefficient: "1" }], remains: [{ formula: "MgO", coefficient: "1" }] },
  ], note: "melts at 117; above 190 it loses acid too, so heat never makes the anhydrous chloride", source: "memory" },
  { formula: "Mg(NO3)2·6H2O", steps: [{ from: "90", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "Mg(NO3)2·2H2O", coefficient: "1" }] }], note: "melts at 90; gives the oxide above 300", source: "chemicalEncyclopedia" },
  { formula: "MgHPO4·3H2O", steps: [
    { from: "205", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "MgHPO4", coefficient: "1" }] },
    { from: "550", to: "650", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Mg2P2O7", coefficient: "1/2" }] },
  ], source: "newberyite2023First" },
  { formula: "MgC2O4·2H2O", steps: [
    { from: "150", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "MgC2O4", coefficient: "1" }] },
    { from: "430", to: "500", leaves: [{ formula: "CO", coefficient: "1" }, { formula: "CO2", coefficient: "1" }], remains: [{ formula: "MgO", coefficient: "1" }] },
  ], source: "memory" },
  { formula: "Mg3Si4O10(OH)2", steps: [{ from: "800", to: "900", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "MgSiO3", coefficient: "3" }, { formula: "SiO2", coefficient: "1" }] }], source: "memory" },
  { formula: "CaMg(CO3)2", steps: [
    { from: "730", to: "790", approx: true, leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "CaCO3", coefficient: "1" }, { formula: "MgO", coefficient: "1" }] },
    { from: "900", approx: true, leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "CaO", coefficient: "1" }, { formula: "MgO", coefficient: "1" }] },
  ], source: "memory" },
  { formula: "CaCO3", steps: [{ from: "700", to: "900", approx: true, leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "CaO", coefficient: "1" }] }], note: "near 900 under carbon dioxide of one atmosphere", source: "memory" },
  { formula: "Ca(OH)2", steps: [{ from: "450", to: "580", approx: true, leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CaO", coefficient: "1" }] }], note: "absorbs carbon dioxide in humid air", source: "memory" },
  { formula: "CaO", steps: [], note: "absorbs water with great heat", source: "memory" },
  { formula: "CaO2", steps: [{ from: "200", to: "350", leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "CaO", coefficient: "1" }] }], source: "memory" },
  { formula: "CaSO4", steps: [{ from: "1250", leaves: [{ formula: "SO2", coefficient: "1" }, { formula: "O2", coefficient: "1/2" }], remains: [{ formula: "CaO", coefficient: "1" }] }], source: "calciumSulfateNote" },
  { formula: "CaSO4·0.5H2O", steps: [{ from: "163", to: "200", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "CaSO4", coefficient: "1" }] }], note: "sets to gypsum with water", source: "merckIndexFirst" },
  { formula: "CaSO4·2H2O", steps: [
    { from: "110", to: "150", approx: true, leaves: [{ formula: "H2O", coefficient: "3/2" }], remains: [{ formula: "CaSO4·0.5H2O", coefficient: "1" }] },
    { from: "163", to: "200", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "CaSO4", coefficient: "1" }] },
  ], note: "slowly from 60 to 70 in the open; above 360 it no longer absorbs water", source: "memory" },
  { formula: "CaCl2·2H2O", steps: [{ from: "175", to: "200", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "CaCl2", coefficient: "1" }] }], source: "merckIndexFirst" },
  { formula: "CaCl2·6H2O", steps: [
    { from: "30", to: "45", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "CaCl2·4H2O", coefficient: "1" }] },
    { from: "45.3", to: "175", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "CaCl2·2H2O", coefficient: "1" }] },
    { from: "175", to: "200", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "CaCl2", coefficient: "1" }] },
  ], note: "melts in its water at 29.9", source: "merckIndexFirst" },
  { formula: "Ca(NO3)2·4H2O", steps: [{ from: "132", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "Ca(NO3)2", coefficient: "1" }] }], note: "melts in its water at 42.7", source: "chemicalEncyclopediaFirst" },
  { formula: "CaHPO4", steps: [{ from: "400", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Ca2P2O7", coefficient: "1/2" }] }], source: "memory" },
  { formula: "CaHPO4·2H2O", steps: [
    { from: "100", to: "190", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "CaHPO4", coefficient: "1" }] },
    { from: "400", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Ca2P2O7", coefficient: "1/2" }] },
  ], source: "frostPalmer2011First" },
  { formula: "Ca(H2PO4)2·H2O", steps: [{ from: "100", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "Ca(H2PO4)2", coefficient: "1" }] }], note: "decomposes at 200", source: "inorganicHandbook" },
  { formula: "CaC2O4·H2O", steps: [
    { from: "100", to: "220", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CaC2O4", coefficient: "1" }] },
    { from: "400", to: "500", leaves: [{ formula: "CO", coefficient: "1" }], remains: [{ formula: "CaCO3", coefficient: "1" }] },
    { from: "650", to: "850", leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "CaO", coefficient: "1" }] },
  ], source: "frostWeier2004" },
  { formula: "Ca(CH3COO)2·H2O", steps: [
    { from: "100", to: "150", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "Ca(CH3COO)2", coefficient: "1" }] },
    { from: "380", to: "450", leaves: [{ formula: "CH3COCH3", coefficient: "1" }], remains: [{ formula: "CaCO3", coefficient: "1" }] },
  ], source: "memory" },
  { formula: "Ca3(C6H5O7)2·4H2O", steps: [{ from: "120", to: "150", approx: true, leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "Ca3(C6H5O7)2", coefficient: "1" }] }], source: "foodAdditiveDryingFirst" },
  { formula: "Ca(ClO)2", steps: [{ from: "100", to: "175", leaves: [{ formula: "O2", coefficient: "1" }], remains: [{ formula: "CaCl2", coefficient: "1" }] }], note: "can run away", source: "memory" },
  { formula: "SrCO3", steps: [{ from: "1100", to: "1290", approx: true, leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "SrO", coefficient: "1" }] }], source: "memory" },
  { formula: "Sr(OH)2", steps: [{ from: "710", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "SrO", coefficient: "1" }] }], source: "memory" },
  { formula: "Sr(OH)2·8H2O", steps: [{ from: "100", leaves: [{ formula: "H2O", coefficient: "8" }], remains: [{ formula: "Sr(OH)2", coefficient: "1" }] }], source: "memory" },
  { formula: "SrCl2·6H2O", steps: [
    { from: "61.4", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "SrCl2·2H2O", coefficient: "1" }] },
    { from: "100", to: "250", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "SrCl2", coefficient: "1" }] },
  ], source: "saltMakerFirst" },
  { formula: "Sr(NO3)2·4H2O", steps: [{ from: "100", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "Sr(NO3)2", coefficient: "1" }] }], source: "chemicalEncyclopedia" },
  { formula: "Sr(CH3COO)2", steps: [{ from: "350", leaves: [{ formula: "CH3COCH3", coefficient: "1" }], remains: [{ formula: "SrCO3", coefficient: "1" }] }], source: "memory" },
  { formula: "BaCO3", steps: [{ from: "1300", to: "1450", approx: true, leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "BaO", coefficient: "1" }] }], source: "memory" },
  { formula: "BaO2", steps: [{ from: "670", to: "843", leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "BaO", coefficient: "1" }] }], source: "bariumPeroxide1971" },
  { formula: "Ba(OH)2·8H2O", steps: [{ from: "78", to: "130", leaves: [{ formula: "H2O", coefficient: "8" }], remains: [{ formula: "Ba(OH)2", coefficient: "1" }] }], note: "melts in its water at 78", source: "chemicalEncyclopedia" },
  { formula: "BaSO4", steps: [{ from: "1580", leaves: [{ formula: "SO3", coefficient: "1" }], remains: [{ formula: "BaO", coefficient: "1" }] }], source: "memory" },
  { formula: "BaCl2·2H2O", steps: [{ from: "55", to: "121", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "BaCl2", coefficient: "1" }] }], note: "120 in an oven", source: "sulz1888" },
  { formula: "Ba(CH3COO)2", steps: [{ from: "400", leaves: [{ formula: "CH3COCH3", coefficient: "1" }], remains: [{ formula: "BaCO3", coefficient: "1" }] }], source: "memory" },
  { formula: "BaC2O4", steps: [{ from: "400", leaves: [{ formula: "CO", coefficient: "1" }], remains: [{ formula: "BaCO3", coefficient: "1" }] }], source: "memory" },
  { formula: "Al(OH)3", steps: [
    { from: "200", to: "300", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "AlO(OH)", coefficient: "1" }] },
    { from: "450", to: "550", approx: true, leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Al2O3", coefficient: "1/2" }] },
  ], source: "memory" },
  { formula: "AlO(OH)", steps: [{ from: "450", to: "550", approx: true, leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Al2O3", coefficient: "1/2" }] }], source: "memory" },
  { formula: "Al2(SO4)3", steps: [{ from: "635", to: "770", leaves: [{ formula: "SO3", coefficient: "3" }], remains: [{ formula: "Al2O3", coefficient: "1" }] }], source: "aluminiumSulfateHeating" },
  { formula: "Al2(SO4)3·18H2O", steps: [
    { from: "50", to: "430", leaves: [{ formula: "H2O", coefficient: "18" }], remains: [{ formula: "Al2(SO4)3", coefficient: "1" }] },
    { from: "635", to: "770", leaves: [{ formula: "SO3", coefficient: "3" }], remains: [{ formula: "Al2O3", coefficient: "1" }] },
  ], note: "in four stages; melts at 86", source: "aluminiumSulfateHeating" },
  { formula: "FeCl3·6H2O", steps: [{ from: "100", to: "350", leaves: [{ formula: "HCl", coefficient: "3" }, { formula: "H2O", coefficient: "9/2" }], remains: [{ formula: "Fe2O3", coefficient: "1/2" }] }], note: "melts at 37; heat never makes the anhydrous chloride", source: "memory" },
  { formula: "AlCl3·6H2O", steps: [{ from: "100", to: "300", leaves: [{ formula: "HCl", coefficient: "3" }, { formula: "H2O", coefficient: "9/2" }], remains: [{ formula: "Al2O3", coefficient: "1/2" }] }], note: "heat never makes the anhydrous chloride", source: "memory" },
  { formula: "Al2Si2O5(OH)4", steps: [{ from: "450", to: "650", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "Al2Si2O7", coefficient: "1" }] }], note: "to spinel at 980, mullite above 1100", source: "kaoliniteHeatingFirst" },
  { formula: "Cr(OH)3", steps: [{ from: "300", to: "400", leaves: [{ formula: "H2O", coefficient: "3/2" }], remains: [{ formula: "Cr2O3", coefficient: "1/2" }] }], source: "memory" },
  { formula: "CrO3", steps: [{ from: "250", leaves: [{ formula: "O2", coefficient: "3/4" }], remains: [{ formula: "Cr2O3", coefficient: "1/2" }] }], source: "memory" },
  { formula: "Cr2(SO4)3", steps: [{ from: "700", leaves: [{ formula: "SO3", coefficient: "3" }], remains: [{ formula: "Cr2O3", coefficient: "1" }] }], source: "memory" },
  { formula: "Mn2O3", steps: [{ from: "990", approx: true, leaves: [{ formula: "O2", coefficient: "1/6" }], remains: [{ formula: "Mn3O4", coefficient: "2/3" }] }], source: "manganeseOxides1981" },
  { formula: "MnO2", steps: [{ from: "535", to: "570", approx: true, leaves: [{ formula: "O2", coefficient: "1/4" }], remains: [{ formula: "Mn2O3", coefficient: "1/2" }] }], source: "manganeseOxides1981" },
  { formula: "MnCO3", steps: [{ from: "350", to: "400", leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "MnO", coefficient: "1" }] }], note: "under nitrogen or carbon dioxide; in air above 200 to higher oxides", source: "memory" },
  { formula: "MnSO4·H2O", steps: [{ from: "200", to: "280", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "MnSO4", coefficient: "1" }] }], source: "chemicalEncyclopedia" },
  { formula: "MnSO4·5H2O", steps: [{ from: "26", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "MnSO4·4H2O", coefficient: "1" }] }], source: "memory" },
  { formula: "MnCl2·4H2O", steps: [
    { from: "58", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "MnCl2·2H2O", coefficient: "1" }] },
    { from: "106", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "MnCl2·H2O", coefficient: "1" }] },
    { from: "198", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "MnCl2", coefficient: "1" }] },
  ], source: "richardsKelley1911First" },
  { formula: "Mn(NO3)2·4H2O", steps: [{ from: "150", leaves: [{ formula: "H2O", coefficient: "4" }, { formula: "NO2", coefficient: "2" }], remains: [{ formula: "MnO2", coefficient: "1" }] }], source: "memory" },
  { formula: "MnC2O4·2H2O", steps: [
    { from: "100", to: "150", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "MnC2O4", coefficient: "1" }] },
    { from: "215", to: "300", leaves: [{ formula: "CO", coefficient: "1" }, { formula: "CO2", coefficient: "1" }], remains: [{ formula: "MnO", coefficient: "1" }] },
  ], note: "the second step without air", source: "memory" },
  { formula: "FeO(OH)", steps: [{ from: "250", to: "350", approx: true, leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "Fe2O3", coefficient: "1/2" }] }], source: "memory" },
  { formula: "Fe(OH)3", steps: [{ from: "350", to: "400", leaves: [{ formula: "H2O", coefficient: "3/2" }], remains: [{ formula: "Fe2O3", coefficient: "1/2" }] }], note: "loses water from room temperature on", source: "memory" },
  { formula: "FeCO3", steps: [{ from: "350", to: "500", approx: true, takes: [{ formula: "O2", coefficient: "1/4" }], leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "Fe2O3", coefficient: "1/2" }] }], note: "moist precipitate oxidises cold", source: "memory" },
  { formula: "FeSO4", steps: [{ from: "480", to: "680", leaves: [{ formula: "SO2", coefficient: "1/2" }, { formula: "SO3", coefficient: "1/2" }], remains: [{ formula: "Fe2O3", coefficient: "1/2" }] }], source: "memory" },
  { formula: "FeSO4·H2O", steps: [{ from: "250", to: "300", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "FeSO4", coefficient: "1" }] }], source: "merckIndex" },
  { formula: "FeSO4·4H2O", steps: [{ from: "65", to: "90", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "FeSO4·H2O", coefficient: "1" }] }], source: "merckIndex" },
  { formula: "FeSO4·7H2O", steps: [
    { from: "56.6", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "FeSO4·4H2O", coefficient: "1" }] },
    { from: "65", to: "90", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "FeSO4·H2O", coefficient: "1" }] },
    { from: "250", to: "300", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "FeSO4", coefficient: "1" }] },
  ], note: "browns in humid air", source: "merckIndex" },
  { formula: "FeCl2·4H2O", steps: [{ from: "105", to: "115", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "FeCl2·2H2O", coefficient: "1" }] }], source: "memory" },
  { formula: "FeS2", steps: [{ from: "602", leaves: [{ formula: "S", coefficient: "1" }], remains: [{ formula: "FeS", coefficient: "1" }] }], note: "without air", source: "memory" },
  { formula: "Fe2(SO4)3", steps: [{ from: "537", to: "687", leaves: [{ formula: "SO3", coefficient: "3" }], remains: [{ formula: "Fe2O3", coefficient: "1" }] }], source: "ironSulfateHeating" },
  { formula: "FePO4·2H2O", steps: [{ from: "140", to: "250", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "FePO4", coefficient: "1" }] }], source: "memory" },
  { formula: "FeC2O4·2H2O", steps: [{ from: "170", to: "218", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "FeC2O4", coefficient: "1" }] }], note: "above 240 it gives iron oxides, without air a powder that glows in air", source: "oxalates2014" },
  { formula: "Co3O4", steps: [{ from: "900", to: "950", leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "CoO", coefficient: "3" }] }], source: "memory" },
  { formula: "Co(OH)2", steps: [{ from: "160", to: "170", approx: true, leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CoO", coefficient: "1" }] }], note: "without air; in air to Co3O4", source: "memory" },
  { formula: "CoCO3", steps: [{ from: "280", leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "CoO", coefficient: "1" }] }], note: "in air to Co3O4", source: "safetySummaries" },
  { formula: "CoSO4", steps: [{ from: "708", leaves: [{ formula: "SO3", coefficient: "1" }], remains: [{ formula: "CoO", coefficient: "1" }] }], source: "merckIndex" },
  { formula: "CoSO4·7H2O", steps: [
    { from: "41.5", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CoSO4·6H2O", coefficient: "1" }] },
    { from: "71", leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "CoSO4·H2O", coefficient: "1" }] },
    { from: "250", to: "420", approx: true, leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CoSO4", coefficient: "1" }] },
  ], source: "merckIndexFirst" },
  { formula: "CoCl2·6H2O", steps: [
    { from: "52", to: "56", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "CoCl2·2H2O", coefficient: "1" }] },
    { from: "100", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CoCl2·H2O", coefficient: "1" }] },
    { from: "120", to: "140", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CoCl2", coefficient: "1" }] },
  ], note: "blue at the end", source: "merckIndexFirst" },
  { formula: "Co(NO3)2·6H2O", steps: [{ from: "55", to: "74", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "Co(NO3)2·3H2O", coefficient: "1" }] }], note: "to oxides above 100", source: "inorganicHandbook" },
  { formula: "Co(CH3COO)2·4H2O", steps: [{ from: "100", to: "140", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "Co(CH3COO)2", coefficient: "1" }] }], source: "supplierHeatingFirst" },
  { formula: "Co3(PO4)2·8H2O", steps: [{ from: "200", leaves: [{ formula: "H2O", coefficient: "8" }], remains: [{ formula: "Co3(PO4)2", coefficient: "1" }] }], source: "memory" },
  { formula: "CoC2O4·2H2O", steps: [
    { from: "170", to: "232", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "CoC2O4", coefficient: "1" }] },
    { from: "250", to: "400", leaves: [{ formula: "CO2", coefficient: "2" }], remains: [{ formula: "Co", coefficient: "1" }] },
  ], note: "the second step without air; in air to Co3O4", source: "oxalates2014First" },
  { formula: "Ni(OH)2", steps: [{ from: "250", approx: true, leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "NiO", coefficient: "1" }] }], source: "delahaye1994" },
  { formula: "Ni3(OH)4CO3·4H2O", steps: [
    { from: "100", to: "200", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "Ni3(OH)4CO3", coefficient: "1" }] },
    { from: "250", to: "400", leaves: [{ formula: "CO2", coefficient: "1" }, { formula: "H2O", coefficient: "2" }], remains: [{ formula: "NiO", coefficient: "3" }] },
  ], source: "memory" },
  { formula: "NiSO4", steps: [{ from: "840", leaves: [{ formula: "SO3", coefficient: "1" }], remains: [{ formula: "NiO", coefficient: "1" }] }], source: "safetySummaries" },
  { formula: "NiSO4·6H2O", steps: [
    { from: "100", to: "150", approx: true, leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "NiSO4·H2O", coefficient: "1" }] },
    { from: "280", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "NiSO4", coefficient: "1" }] },
  ], source: "chemicalEncyclopediaFirst" },
  { formula: "NiSO4·7H2O", steps: [
    { from: "31.5", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "NiSO4·6H2O", coefficient: "1" }] },
    { from: "103", leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "NiSO4·H2O", coefficient: "1" }] },
    { from: "280", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "NiSO4", coefficient: "1" }] },
  ], source: "chemicalEncyclopediaFirst" },
  { formula: "NiCl2·6H2O", steps: [{ from: "66", to: "140", leaves: [{ formula: "H2O", coefficient: "6" }], remains: [{ formula: "NiCl2", coefficient: "1" }] }], note: "in steps", source: "ward1972First" },
  { formula: "Ni(CH3COO)2·4H2O", steps: [{ from: "100", to: "160", leaves: [{ formula: "H2O", coefficient: "4" }], remains: [{ formula: "Ni(CH3COO)2", coefficient: "1" }] }], note: "to nickel and its oxide at 330 to 373", source: "nickelAcetate1994First" },
  { formula: "NiC2O4·2H2O", steps: [
    { from: "210", to: "285", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "NiC2O4", coefficient: "1" }] },
    { from: "300", to: "380", leaves: [{ formula: "CO2", coefficient: "2" }], remains: [{ formula: "Ni", coefficient: "1" }] },
  ], note: "the second step without air; in air to the oxide", source: "oxalates2014First" },
  { formula: "CuO", steps: [{ from: "1026", to: "1050", approx: true, leaves: [{ formula: "O2", coefficient: "1/4" }], remains: [{ formula: "Cu2O", coefficient: "1/2" }] }], source: "memory" },
  { formula: "Cu(OH)2", steps: [{ from: "80", to: "150", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CuO", coefficient: "1" }] }], note: "at 80 when wet; in alkaline water it turns into the oxide even cold", source: "copperHydroxide2003First" },
  { formula: "Cu2(OH)2CO3", steps: [{ from: "250", to: "375", leaves: [{ formula: "CO2", coefficient: "1" }, { formula: "H2O", coefficient: "1" }], remains: [{ formula: "CuO", coefficient: "2" }] }], note: "a part of the water can leave from 195 on; heated fast it is not over before 430", source: "malachiteHeating" },
  { formula: "Cu3(OH)2(CO3)2", steps: [{ from: "282", to: "384", leaves: [{ formula: "CO2", coefficient: "2" }, { formula: "H2O", coefficient: "1" }], remains: [{ formula: "CuO", coefficient: "3" }] }], source: "malachiteHeating" },
  { formula: "Cu(NO3)2·3H2O", steps: [{ from: "170", to: "300", approx: true, leaves: [{ formula: "NO2", coefficient: "2" }, { formula: "O2", coefficient: "1/2" }, { formula: "H2O", coefficient: "3" }], remains: [{ formula: "CuO", coefficient: "1" }] }], note: "melts in its water first, and goes by way of a basic nitrate", source: "memory" },
  { formula: "CuSO4", steps: [{ from: "560", to: "650", approx: true, leaves: [{ formula: "SO3", coefficient: "1" }], remains: [{ formula: "CuO", coefficient: "1" }] }], note: "by way of Cu2O(SO4)", source: "memory" },
  { formula: "CuSO4·H2O", steps: [{ from: "200", to: "250", approx: true, leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CuSO4", coefficient: "1" }] }], source: "copperSulfateHeating" },
  { formula: "CuSO4·3H2O", steps: [
    { from: "109", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "CuSO4·H2O", coefficient: "1" }] },
    { from: "200", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CuSO4", coefficient: "1" }] },
  ], source: "copperSulfateHeating" },
  { formula: "CuSO4·5H2O", steps: [
    { from: "63", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "CuSO4·3H2O", coefficient: "1" }] },
    { from: "109", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "CuSO4·H2O", coefficient: "1" }] },
    { from: "200", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "CuSO4", coefficient: "1" }] },
    { from: "650", leaves: [{ formula: "SO3", coefficient: "1" }], remains: [{ formula: "CuO", coefficient: "1" }] },
  ], note: "the steps move with the heating rate", source: "copperSulfateHeating" },
  { formula: "Cu4(OH)6SO4", steps: [
    { from: "300", to: "400", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "CuO", coefficient: "3" }, { formula: "CuSO4", coefficient: "1" }] },
    { from: "650", leaves: [{ formula: "SO3", coefficient: "1" }], remains: [{ formula: "CuO", coefficient: "4" }] },
  ], source: "memory" },
  { formula: "CuCl2", steps: [{ from: "500", to: "600", approx: true, leaves: [{ formula: "Cl2", coefficient: "1/2" }], remains: [{ formula: "CuCl", coefficient: "1" }] }], source: "memory" },
  { formula: "CuCl2·2H2O", steps: [{ from: "70", to: "120", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "CuCl2", coefficient: "1" }] }], source: "oxfordChemistryFirst" },
  { formula: "Cu2(OH)3Cl", steps: [{ from: "200", to: "300", leaves: [{ formula: "H2O", coefficient: "3/2" }], remains: [{ formula: "CuO", coefficient: "3/2" }, { formula: "CuCl2", coefficient: "1/2" }] }], source: "memory" },
  { formula: "Cu(NO3)2·6H2O", steps: [{ from: "26", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "Cu(NO3)2·3H2O", coefficient: "1" }] }], source: "memory" },
  { formula: "Cu(CH3COO)2·H2O", steps: [{ from: "100", to: "168", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "Cu(CH3COO)2", coefficient: "1" }] }], note: "to copper and its oxides at 240", source: "linHanLi2012First" },
  { formula: "CuC2O4", steps: [{ from: "272", to: "360", leaves: [{ formula: "CO2", coefficient: "2" }], remains: [{ formula: "Cu", coefficient: "1" }] }], note: "sudden, without air; in air to the oxide", source: "oxalates2014" },
  { formula: "Zn(OH)2", steps: [{ from: "125", approx: true, leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "ZnO", coefficient: "1" }] }], source: "memory" },
  { formula: "ZnCO3", steps: [{ from: "140", to: "300", leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "ZnO", coefficient: "1" }] }], source: "zincCarbonateHeating" },
  { formula: "Zn5(OH)6(CO3)2", steps: [{ from: "150", to: "280", leaves: [{ formula: "CO2", coefficient: "2" }, { formula: "H2O", coefficient: "3" }], remains: [{ formula: "ZnO", coefficient: "5" }] }], note: "fast above 200", source: "kanari2004First" },
  { formula: "ZnSO4", steps: [{ from: "680", to: "740", leaves: [{ formula: "SO3", coefficient: "1" }], remains: [{ formula: "ZnO", coefficient: "1" }] }], note: "by way of Zn3O(SO4)2", source: "memory" },
  { formula: "ZnSO4·H2O", steps: [{ from: "238", to: "280", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "ZnSO4", coefficient: "1" }] }], source: "oxfordChemistryFirst" },
  { formula: "ZnSO4·6H2O", steps: [{ from: "70", approx: true, leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "ZnSO4·H2O", coefficient: "1" }] }], source: "oxfordChemistryFirst" },
  { formula: "ZnSO4·7H2O", steps: [
    { from: "39", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "ZnSO4·6H2O", coefficient: "1" }] },
    { from: "70", to: "100", approx: true, leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "ZnSO4·H2O", coefficient: "1" }] },
    { from: "238", to: "280", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "ZnSO4", coefficient: "1" }] },
  ], source: "oxfordChemistryFirst" },
  { formula: "Zn(NO3)2·6H2O", steps: [{ from: "105", to: "131", leaves: [{ formula: "H2O", coefficient: "6" }], remains: [{ formula: "Zn(NO3)2", coefficient: "1" }] }], note: "melts at 36", source: "memory" },
  { formula: "Zn(CH3COO)2·2H2O", steps: [{ from: "100", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "Zn(CH3COO)2", coefficient: "1" }] }], note: "melts with decomposition at 237", source: "compoundPages" },
  { formula: "ZnS", steps: [{ from: "600", to: "800", takes: [{ formula: "O2", coefficient: "3/2" }], leaves: [{ formula: "SO2", coefficient: "1" }], remains: [{ formula: "ZnO", coefficient: "1" }] }], note: "in air", source: "memory" },
  { formula: "Zn3(PO4)2·4H2O", steps: [
    { from: "52", to: "100", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "Zn3(PO4)2·2H2O", coefficient: "1" }] },
    { from: "190", to: "227", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "Zn3(PO4)2·H2O", coefficient: "1" }] },
    { from: "250", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "Zn3(PO4)2", coefficient: "1" }] },
  ], source: "hopeite2007First" },
  { formula: "ZnC2O4·2H2O", steps: [
    { from: "132", to: "198", leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "ZnC2O4", coefficient: "1" }] },
    { from: "385", to: "445", leaves: [{ formula: "CO", coefficient: "1" }, { formula: "CO2", coefficient: "1" }], remains: [{ formula: "ZnO", coefficient: "1" }] },
  ], source: "oxalates2014" },
  { formula: "AgNO3", steps: [{ from: "440", leaves: [{ formula: "NO2", coefficient: "1" }, { formula: "O2", coefficient: "1/2" }], remains: [{ formula: "Ag", coefficient: "1" }] }], source: "memory" },
  { formula: "Ag2O", steps: [{ from: "300", to: "350", leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "Ag", coefficient: "2" }] }], note: "a twentieth of its oxygen leaves between 100 and 200 already", source: "allen1960" },
  { formula: "Ag2CO3", steps: [
    { from: "120", to: "218", leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "Ag2O", coefficient: "1" }] },
    { from: "218", to: "280", leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "Ag", coefficient: "2" }] },
  ], source: "supplierHeatingFirst" },
  { formula: "Ag2C2O4", steps: [{ from: "140", leaves: [{ formula: "CO2", coefficient: "2" }], remains: [{ formula: "Ag", coefficient: "2" }] }], note: "explodes", source: "memory" },
  { formula: "CdCO3", steps: [{ from: "350", to: "500", approx: true, leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "CdO", coefficient: "1" }] }], source: "memory" },
  { formula: "SnSO4", steps: [{ from: "378", leaves: [{ formula: "SO2", coefficient: "1" }], remains: [{ formula: "SnO2", coefficient: "1" }] }], source: "memory" },
  { formula: "PbO2", steps: [{ from: "290", leaves: [{ formula: "O2", coefficient: "1/3" }], remains: [{ formula: "Pb3O4", coefficient: "1/3" }] }], source: "webElements" },
  { formula: "Pb3O4", steps: [{ from: "500", to: "550", approx: true, leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "PbO", coefficient: "3" }] }], source: "merckIndexFirst" },
  { formula: "PbCO3", steps: [{ from: "315", leaves: [{ formula: "CO2", coefficient: "1" }], remains: [{ formula: "PbO", coefficient: "1" }] }], source: "memory" },
  { formula: "Pb3(OH)2(CO3)2", steps: [{ from: "150", to: "400", leaves: [{ formula: "CO2", coefficient: "2" }, { formula: "H2O", coefficient: "1" }], remains: [{ formula: "PbO", coefficient: "3" }] }], source: "merckIndexFirst" },
  { formula: "Pb(NO3)2", steps: [{ from: "470", leaves: [{ formula: "NO2", coefficient: "2" }, { formula: "O2", coefficient: "1/2" }], remains: [{ formula: "PbO", coefficient: "1" }] }], source: "memory" },
  { formula: "Pb(CH3COO)2·3H2O", steps: [{ from: "75", to: "100", leaves: [{ formula: "H2O", coefficient: "3" }], remains: [{ formula: "Pb(CH3COO)2", coefficient: "1" }] }], note: "melts in its water at 75; loses acetic acid from a little above 100, decomposes above 200", source: "merckIndexFirst" },
  { formula: "HgO", steps: [{ from: "500", leaves: [{ formula: "O2", coefficient: "1/2" }], remains: [{ formula: "Hg", coefficient: "1" }] }], source: "memory" },
  { formula: "H3BO3", steps: [
    { from: "100", to: "170", approx: true, leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "HBO2", coefficient: "1" }] },
    { from: "300", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "B2O3", coefficient: "1/2" }] },
  ], source: "memory" },
  { formula: "H2C2O4·2H2O", steps: [{ from: "100", approx: true, leaves: [{ formula: "H2O", coefficient: "2" }], remains: [{ formula: "H2C2O4", coefficient: "1" }] }], note: "melts in its water at 101", source: "cohenOrganic" },
  { formula: "H2C2O4", steps: [{ from: "189", leaves: [{ formula: "CO", coefficient: "1" }, { formula: "CO2", coefficient: "1" }, { formula: "H2O", coefficient: "1" }], remains: [] }], source: "memory" },
  { formula: "C6H8O7·H2O", steps: [{ from: "70", to: "75", leaves: [{ formula: "H2O", coefficient: "1" }], remains: [{ formula: "C6H8O7", coefficient: "1" }] }], source: "memory" },
  { formula: "H3PO4", steps: [
    { from: "150", to: "200", approx: true, leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "H4P2O7", coefficient: "1/2" }] },
    { from: "300", leaves: [{ formula: "H2O", coefficient: "1/2" }], remains: [{ formula: "HPO3", coefficient: "1" }] },
  ], source: "memory" },
  { formula: "NH2COONH4", steps: [{ from: "60", approx: true, leaves: [{ formula: "NH3", coefficient: "2" }, { formula: "CO2", coefficient: "1" }], remains: [] }], source: "memory" },
  { formula: "3CdSO4·8H2O", steps: [{ from: "40", to: "80", leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "CdSO4·H2O", coefficient: "3" }] }], source: "merckIndex" },
  { formula: "[Cu(NH3)4]SO4·H2O", steps: [
    { from: "30", to: "150", leaves: [{ formula: "H2O", coefficient: "1" }, { formula: "NH3", coefficient: "2" }], remains: [{ formula: "Cu(NH3)2SO4", coefficient: "1" }] },
    { from: "200", to: "260", leaves: [{ formula: "NH3", coefficient: "2" }], remains: [{ formula: "CuSO4", coefficient: "1" }] },
  ], source: "memory" },
  { formula: "[Ni(NH3)6]Cl2", steps: [{ from: "80", to: "180", approx: true, leaves: [{ formula: "NH3", coefficient: "4" }], remains: [{ formula: "Ni(NH3)2Cl2", coefficient: "1" }] }], source: "memory" },
  { formula: "H2O2", steps: [], note: "gives off oxygen on keeping, faster with metals", source: "memory" },
  { formula: "NaClO", steps: [], note: "turns to chlorate and chloride and gives off oxygen on keeping", source: "memory" },
  { formula: "NaOH", steps: [], note: "absorbs water and carbon dioxide from the air", source: "memory" },
  { formula: "Na2CO3", steps: [], note: "absorbs water to the monohydrate in humid air", source: "memory" },
  { formula: "Fe(OH)2", steps: [], note: "oxidises in air", source: "memory" },
  { formula: "Mn(OH)2", steps: [], note: "oxidises in air at once", source: "memory" },
  { formula: "SnCl2·2H2O", steps: [], note: "oxidises and hydrolyses in air and in water; melts at 38", source: "memory" },
  { formula: "ZnCl2", steps: [], note: "the wet salt loses acid on heating", source: "memory" },
  { formula: "CO(NH2)2", steps: [], note: "melts at 133, gives off ammonia above 150", source: "memory" },
  { formula: "NH4H2PO4", steps: [], note: "gives off ammonia from 153 on", source: "pardo2017" },
  { formula: "CuS", steps: [{ from: "220", to: "500", leaves: [{ formula: "S", coefficient: "1/2" }], remains: [{ formula: "Cu2S", coefficient: "1/2" }] }], note: "without air", source: "memory" },
  { formula: "Ca2B6O11·5H2O", steps: [{ from: "350", to: "400", approx: true, leaves: [{ formula: "H2O", coefficient: "5" }], remains: [{ formula: "Ca2B6O11", coefficient: "1" }] }], note: "crackles", source: "memory" },
]);

/** Without what happens besides, in words. */
export const THERMAL_STEPS = /* @__PURE__ */ columns(THERMAL, ["formula", "steps", "source"]);

/** What heat does, step by step, and what that rests on. */
export type ThermalSteps = Omit<ThermalRow, "note">;

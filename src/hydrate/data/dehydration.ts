// Staged dehydration in an open crucible in air: which form is reached at what kind of temperature. Recalled from the usual
// handbooks where a row says `memory`; the others were read, in whole or in their first steps. Temperatures move by tens of degrees with
// heating rate, grain, bed depth and moisture: they say which product at which kind of temperature, never when it is done.
import { once } from "../../foundation/memo";
import type { HeatingSourceKey } from "./sources";

/** One stage: what is left, and where it is reached. */
interface DehydrationStage {
  readonly to: string;
  /** °C from which the stage runs; absent when only an upper figure is known. */
  readonly from: string;
  /** °C by which it is over; absent when only one figure is known. */
  readonly until?: string;
  /** The element that stays, where the stage is more than loss of water. */
  readonly per?: string;
}

interface DehydrationRow {
  readonly form: string;
  readonly stages: readonly DehydrationStage[];
  readonly source: HeatingSourceKey;
  readonly note?: string;
}

export const DEHYDRATION = /* @__PURE__ */ once((): readonly DehydrationRow[] => [
  { form: "LiOH·H2O", source: "chemicalEncyclopedia", stages: [{ to: "LiOH", from: "40", until: "109" }] },
  { form: "LiCl·H2O", source: "memory", stages: [{ to: "LiCl", from: "98" }] },
  { form: "Li2SO4·H2O", source: "memory", stages: [{ to: "Li2SO4", from: "130" }] },
  { form: "Na2CO3·H2O", source: "memory", stages: [{ to: "Na2CO3", from: "100" }] },
  { form: "Na2CO3·7H2O", source: "memory", stages: [{ to: "Na2CO3·H2O", from: "35" }, { to: "Na2CO3", from: "100" }] },
  { form: "Na2CO3·10H2O", source: "oxfordChemistryFirst", note: "melts in its water at 33 °C; effloresces to the monohydrate at room temperature",
    stages: [{ to: "Na2CO3·7H2O", from: "32", until: "34" }, { to: "Na2CO3·H2O", from: "35" }, { to: "Na2CO3", from: "100" }] },
  { form: "Na3H(CO3)2·2H2O", source: "sesquicarbonateFirst", stages: [{ to: "Na2CO3", from: "57", until: "160", per: "Na" }] },
  { form: "Na2SO4·10H2O", source: "richardsKelley1911First", note: "melts in its water at 32.4 °C", stages: [{ to: "Na2SO4", from: "32.38", until: "100" }] },
  { form: "Na2SO3·7H2O", source: "chemicalEncyclopediaFirst", stages: [{ to: "Na2SO3", from: "33", until: "150" }] },
  { form: "Na2S2O3·5H2O", source: "chemicalEncyclopediaFirst", note: "melts in its water at 48 °C", stages: [{ to: "Na2S2O3", from: "48", until: "100" }] },
  { form: "Na2HPO4·2H2O", source: "foodAdditiveDryingFirst", stages: [{ to: "Na2HPO4", from: "95", until: "105" }] },
  { form: "Na2HPO4·7H2O", source: "foodAdditiveDryingFirst", stages: [{ to: "Na2HPO4·2H2O", from: "48" }, { to: "Na2HPO4", from: "95", until: "105" }] },
  { form: "Na2HPO4·12H2O", source: "foodAdditiveDryingFirst", note: "melts in its water at 35 °C", stages: [{ to: "Na2HPO4·7H2O", from: "35" }, { to: "Na2HPO4·2H2O", from: "48" }, { to: "Na2HPO4", from: "95", until: "105" }] },
  { form: "Na3PO4·12H2O", source: "merckIndexFirst", note: "melts in its water at 75 °C; the last water stays even at moderate red heat, though a handbook has it go at 100 °C too", stages: [{ to: "Na3PO4·H2O", from: "100" }] },
  { form: "NaH2PO4·H2O", source: "merckIndex", stages: [{ to: "NaH2PO4", from: "100" }] },
  { form: "NaH2PO4·2H2O", source: "merckIndex", stages: [{ to: "NaH2PO4", from: "60", until: "100" }] },
  { form: "Na4P2O7·10H2O", source: "memory", stages: [{ to: "Na4P2O7", from: "94" }] },
  { form: "Na2B4O7·5H2O", source: "merckIndexFirst", stages: [{ to: "Na2B4O7", from: "120", until: "320" }] },
  { form: "Na2B4O7·10H2O", source: "merckIndexFirst", stages: [{ to: "Na2B4O7·5H2O", from: "60", until: "100" }, { to: "Na2B4O7", from: "120", until: "320" }] },
  { form: "NaCH3COO·3H2O", source: "pharmacopoeiaDryingFirst", note: "melts in its water at 58 °C", stages: [{ to: "NaCH3COO", from: "58", until: "120" }] },
  { form: "Na3C6H5O7·2H2O", source: "pharmacopoeiaDryingFirst", stages: [{ to: "Na3C6H5O7", from: "150", until: "180" }] },
  { form: "Na2MoO4·2H2O", source: "pharmacopoeiaDryingFirst", stages: [{ to: "Na2MoO4", from: "100", until: "140" }] },
  { form: "Na2WO4·2H2O", source: "tungstateHeating", stages: [{ to: "Na2WO4", from: "100" }] },
  { form: "Na2SnO3·3H2O", source: "memory", stages: [{ to: "Na2SnO3", from: "140" }] },
  { form: "Na2Cr2O7·2H2O", source: "memory", stages: [{ to: "Na2Cr2O7", from: "83", until: "100" }] },
  { form: "Na4[Fe(CN)6]·10H2O", source: "memory", stages: [{ to: "Na4[Fe(CN)6]", from: "80" }] },
  { form: "KNaC4H4O6·4H2O", source: "foodAdditivesBook", note: "melts in its water at 70 °C to 80 °C", stages: [{ to: "KNaC4H4O6·H2O", from: "100" }, { to: "KNaC4H4O6", from: "130", until: "140" }] },
  { form: "K2CO3·1.5H2O", source: "chemicalEncyclopedia", stages: [{ to: "K2CO3", from: "150", until: "160" }] },
  { form: "KAl(SO4)2·12H2O", source: "merckIndex", note: "melts in its water at 92.5 °C", stages: [{ to: "KAl(SO4)2·3H2O", from: "60", until: "92" }, { to: "KAl(SO4)2", from: "200" }] },
  { form: "NH4Al(SO4)2·12H2O", source: "aluminiumSaltsFirst", note: "melts in its water at 93.5 °C", stages: [{ to: "NH4Al(SO4)2·2H2O", from: "120" }, { to: "NH4Al(SO4)2", from: "250" }] },
  { form: "KCr(SO4)2·12H2O", source: "memory", note: "melts in its water at 89 °C", stages: [{ to: "KCr(SO4)2·2H2O", from: "100" }, { to: "KCr(SO4)2", from: "400" }] },
  { form: "NH4Fe(SO4)2·12H2O", source: "memory", stages: [{ to: "NH4Fe(SO4)2", from: "230" }] },
  { form: "(NH4)2Fe(SO4)2·6H2O", source: "mohrHeatingFirst", note: "decomposes in part", stages: [{ to: "(NH4)2Fe(SO4)2", from: "57", until: "100" }] },
  { form: "(NH4)2Ni(SO4)2·6H2O", source: "memory", stages: [{ to: "(NH4)2Ni(SO4)2", from: "130" }] },
  { form: "(NH4)2Cu(SO4)2·6H2O", source: "ammoniumCopper1995First", stages: [{ to: "(NH4)2Cu(SO4)2·2H2O", from: "66", until: "120" }, { to: "(NH4)2Cu(SO4)2", from: "120" }] },
  ...["Mg", "Co", "Cu"].map((metal): DehydrationRow => ({ form: `K2${metal}(SO4)2·6H2O`, source: "tuttonHeating2015", stages: [{ to: `K2${metal}(SO4)2`, from: "70", until: "200" }] })),
  { form: "K4[Fe(CN)6]·3H2O", source: "memory", stages: [{ to: "K4[Fe(CN)6]", from: "60", until: "100" }] },
  { form: "K3[Fe(C2O4)3]·3H2O", source: "memory", note: "decomposes from 230 °C and in light", stages: [{ to: "K3[Fe(C2O4)3]", from: "113" }] },
  { form: "K2[Cu(C2O4)2]·2H2O", source: "memory", note: "decomposes at 260 °C", stages: [{ to: "K2[Cu(C2O4)2]", from: "150" }] },
  { form: "K2C2O4·H2O", source: "rajeOxalateFirst", stages: [{ to: "K2C2O4", from: "100", until: "160" }, { to: "K2CO3", from: "500", until: "600", per: "K" }] },
  { form: "K3C6H5O7·H2O", source: "pharmacopoeiaDrying", stages: [{ to: "K3C6H5O7", from: "180" }] },
  { form: "(NH4)2C2O4·H2O", source: "memory", note: "decomposes to gases above 130 °C", stages: [{ to: "(NH4)2C2O4", from: "70", until: "100" }] },
  { form: "MgCO3·3H2O", source: "memory", stages: [{ to: "MgCO3", from: "100" }, { to: "MgO", from: "350", until: "450", per: "Mg" }] },
  { form: "Mg5(CO3)4(OH)2·4H2O", source: "hydromagnesiteFirst", stages: [{ to: "Mg5(CO3)4(OH)2", from: "135", until: "330" }, { to: "MgO", from: "380", until: "520", per: "Mg" }] },
  { form: "MgSO4·H2O", source: "merckIndexFirst", stages: [{ to: "MgSO4", from: "250", until: "350" }] },
  { form: "MgSO4·6H2O", source: "merckIndexFirst", stages: [{ to: "MgSO4·H2O", from: "70", until: "120" }, { to: "MgSO4", from: "250", until: "350" }] },
  { form: "MgSO4·7H2O", source: "merckIndexFirst", stages: [{ to: "MgSO4·6H2O", from: "48" }, { to: "MgSO4·H2O", from: "70", until: "120" }, { to: "MgSO4", from: "250", until: "350" }] },
  { form: "MgCl2·6H2O", source: "memory", note: "above 190 °C it hydrolyses: the anhydrous chloride is not reached in air", stages: [{ to: "MgCl2·2H2O", from: "100", until: "190" }] },
  { form: "MgC2O4·2H2O", source: "memory", stages: [{ to: "MgC2O4", from: "150" }, { to: "MgO", from: "430", until: "500", per: "Mg" }] },
  { form: "Mg(NO3)2·6H2O", source: "chemicalEncyclopedia", note: "melts in its water at 90 °C; the last water takes nitric acid along", stages: [{ to: "Mg(NO3)2·2H2O", from: "90" }, { to: "MgO", from: "300", per: "Mg" }] },
  { form: "MgHPO4·3H2O", source: "newberyite2023First", stages: [{ to: "MgHPO4", from: "205" }, { to: "Mg2P2O7", from: "550", until: "650", per: "Mg" }] },
  { form: "CaSO4·0.5H2O", source: "merckIndexFirst", stages: [{ to: "CaSO4", from: "163", until: "200" }] },
  { form: "CaSO4·2H2O", source: "calciumSulfateNoteFirst", stages: [{ to: "CaSO4·0.5H2O", from: "110", until: "150" }, { to: "CaSO4", from: "163", until: "200" }] },
  { form: "CaCl2·2H2O", source: "merckIndexFirst", stages: [{ to: "CaCl2", from: "175", until: "200" }] },
  { form: "CaCl2·6H2O", source: "merckIndexFirst", note: "melts in its water at 29.9 °C", stages: [{ to: "CaCl2·4H2O", from: "30", until: "45" }, { to: "CaCl2·2H2O", from: "45.3", until: "175" }, { to: "CaCl2", from: "175", until: "200" }] },
  { form: "Ca(NO3)2·4H2O", source: "chemicalEncyclopediaFirst", note: "melts in its water at 42.7 °C", stages: [{ to: "Ca(NO3)2", from: "42.7", until: "132" }] },
  { form: "CaHPO4·2H2O", source: "frostPalmer2011First", stages: [{ to: "CaHPO4", from: "100", until: "190" }, { to: "Ca2P2O7", from: "400", per: "Ca" }] },
  { form: "Ca(H2PO4)2·H2O", source: "memory", note: "decomposes at 203 °C", stages: [{ to: "Ca(H2PO4)2", from: "109" }] },
  { form: "Ca3(C6H5O7)2·4H2O", source: "foodAdditiveDryingFirst", stages: [{ to: "Ca3(C6H5O7)2", from: "120", until: "150" }] },
  { form: "CaC2O4·H2O", source: "frostWeier2004", note: "the usual standard of thermogravimetry",
    stages: [{ to: "CaC2O4", from: "100", until: "220" }, { to: "CaCO3", from: "400", until: "500", per: "Ca" }, { to: "CaO", from: "650", until: "850", per: "Ca" }] },
  { form: "Ca(CH3COO)2·H2O", source: "memory", stages: [{ to: "Ca(CH3COO)2", from: "100", until: "150" }, { to: "CaCO3", from: "380", until: "450", per: "Ca" }] },
  { form: "SrCl2·6H2O", source: "saltMakerFirst", note: "melts in its water at 61.4 °C", stages: [{ to: "SrCl2·2H2O", from: "61.4" }, { to: "SrCl2", from: "100", until: "250" }] },
  { form: "Sr(NO3)2·4H2O", source: "chemicalEncyclopedia", stages: [{ to: "Sr(NO3)2", from: "29", until: "100" }] },
  { form: "BaCl2·2H2O", source: "sulz1888", stages: [{ to: "BaCl2", from: "55", until: "121" }] },
  { form: "Ba(OH)2·8H2O", source: "chemicalEncyclopedia", note: "melts in its water at 78 °C; absorbs carbon dioxide", stages: [{ to: "Ba(OH)2", from: "78", until: "130" }] },
  { form: "Al2(SO4)3·18H2O", source: "aluminiumSulfateHeating", stages: [{ to: "Al2(SO4)3", from: "50", until: "430" }, { to: "Al2O3", from: "635", until: "770", per: "Al" }] },
  { form: "MnSO4·H2O", source: "chemicalEncyclopedia", stages: [{ to: "MnSO4", from: "200", until: "280" }] },
  { form: "MnCl2·4H2O", source: "richardsKelley1911First", stages: [{ to: "MnCl2·2H2O", from: "58" }, { to: "MnCl2·H2O", from: "106" }, { to: "MnCl2", from: "198" }] },
  { form: "MnC2O4·2H2O", source: "memory", stages: [{ to: "MnC2O4", from: "100", until: "150" }] },
  { form: "FeSO4·H2O", source: "merckIndex", stages: [{ to: "FeSO4", from: "250", until: "300" }] },
  { form: "FeSO4·4H2O", source: "merckIndex", stages: [{ to: "FeSO4·H2O", from: "65", until: "90" }, { to: "FeSO4", from: "250", until: "300" }] },
  { form: "FeCl2·4H2O", source: "memory", stages: [{ to: "FeCl2·2H2O", from: "105", until: "115" }] },
  { form: "FeSO4·7H2O", source: "merckIndex", note: "oxidises in humid air",
    stages: [{ to: "FeSO4·4H2O", from: "56.6" }, { to: "FeSO4·H2O", from: "65", until: "90" }, { to: "FeSO4", from: "250", until: "300" }] },
  { form: "FeC2O4·2H2O", source: "oxalates2014First", note: "the residue beyond is Fe2O3 in air only", stages: [{ to: "FeC2O4", from: "170", until: "218" }, { to: "Fe2O3", from: "242", until: "330", per: "Fe" }] },
  { form: "FePO4·2H2O", source: "memory", stages: [{ to: "FePO4", from: "140", until: "250" }] },
  { form: "CoSO4·7H2O", source: "merckIndexFirst", stages: [{ to: "CoSO4·6H2O", from: "41.5" }, { to: "CoSO4·H2O", from: "71" }, { to: "CoSO4", from: "250", until: "420" }] },
  { form: "CoCl2·6H2O", source: "merckIndexFirst", stages: [{ to: "CoCl2·2H2O", from: "52", until: "56" }, { to: "CoCl2·H2O", from: "100" }, { to: "CoCl2", from: "120", until: "140" }] },
  { form: "Co(NO3)2·6H2O", source: "memory", note: "melts in its water at 55 °C; decomposes above 100 °C", stages: [{ to: "Co(NO3)2·3H2O", from: "55", until: "74" }] },
  { form: "Co(CH3COO)2·4H2O", source: "memory", stages: [{ to: "Co(CH3COO)2", from: "140" }] },
  { form: "Co3(PO4)2·8H2O", source: "memory", stages: [{ to: "Co3(PO4)2", from: "200" }] },
  { form: "CoC2O4·2H2O", source: "oxalates2014First", note: "the residue beyond is Co3O4 in air only", stages: [{ to: "CoC2O4", from: "170", until: "232" }, { to: "Co3O4", from: "250", until: "400", per: "Co" }] },
  { form: "NiSO4·6H2O", source: "chemicalEncyclopediaFirst", stages: [{ to: "NiSO4·H2O", from: "100", until: "150" }, { to: "NiSO4", from: "280" }] },
  { form: "NiSO4·7H2O", source: "chemicalEncyclopediaFirst", stages: [{ to: "NiSO4·6H2O", from: "31.5" }, { to: "NiSO4·H2O", from: "103" }, { to: "NiSO4", from: "280" }] },
  { form: "NiCl2·6H2O", source: "ward1972First", stages: [{ to: "NiCl2·2H2O", from: "66", until: "133" }, { to: "NiCl2", from: "140" }] },
  { form: "Ni(CH3COO)2·4H2O", source: "nickelAcetate1994First", note: "decomposes from 330 °C", stages: [{ to: "Ni(CH3COO)2", from: "100", until: "160" }] },
  { form: "NiC2O4·2H2O", source: "oxalates2014", note: "the residue beyond is NiO in air only", stages: [{ to: "NiC2O4", from: "210", until: "285" }, { to: "NiO", from: "370", until: "434", per: "Ni" }] },
  { form: "Ni3(OH)4CO3·4H2O", source: "memory", stages: [{ to: "Ni3(OH)4CO3", from: "100", until: "200" }, { to: "NiO", from: "250", until: "400", per: "Ni" }] },
  { form: "CuSO4·H2O", source: "copperSulfateHeating", stages: [{ to: "CuSO4", from: "200", until: "250" }] },
  { form: "CuSO4·3H2O", source: "copperSulfateHeating", stages: [{ to: "CuSO4·H2O", from: "109" }, { to: "CuSO4", from: "200", until: "250" }] },
  { form: "CuSO4·5H2O", source: "copperSulfateHeating", note: "the top step is really two",
    stages: [{ to: "CuSO4·3H2O", from: "63" }, { to: "CuSO4·H2O", from: "109" }, { to: "CuSO4", from: "200" }, { to: "CuO", from: "650", per: "Cu" }] },
  { form: "CuCl2·2H2O", source: "oxfordChemistryFirst", stages: [{ to: "CuCl2", from: "70", until: "120" }] },
  { form: "Cu(NO3)2·6H2O", source: "memory", stages: [{ to: "Cu(NO3)2·3H2O", from: "26" }] },
  { form: "Cu(CH3COO)2·H2O", source: "linHanLi2012First", stages: [{ to: "Cu(CH3COO)2", from: "100", until: "168" }] },
  { form: "ZnSO4·H2O", source: "oxfordChemistryFirst", stages: [{ to: "ZnSO4", from: "238", until: "280" }] },
  { form: "ZnSO4·6H2O", source: "oxfordChemistryFirst", stages: [{ to: "ZnSO4·H2O", from: "70", until: "100" }, { to: "ZnSO4", from: "238", until: "280" }] },
  { form: "Zn(NO3)2·6H2O", source: "memory", note: "melts in its water at 36 °C", stages: [{ to: "Zn(NO3)2", from: "105", until: "131" }, { to: "ZnO", from: "200", until: "350", per: "Zn" }] },
  { form: "ZnSO4·7H2O", source: "oxfordChemistryFirst", stages: [{ to: "ZnSO4·6H2O", from: "39" }, { to: "ZnSO4·H2O", from: "70", until: "100" }, { to: "ZnSO4", from: "238", until: "280" }] },
  { form: "Zn(CH3COO)2·2H2O", source: "compoundPages", stages: [{ to: "Zn(CH3COO)2", from: "100" }, { to: "ZnO", from: "300", until: "370", per: "Zn" }] },
  { form: "Zn3(PO4)2·4H2O", source: "hopeite2007First", stages: [{ to: "Zn3(PO4)2·2H2O", from: "52", until: "100" }, { to: "Zn3(PO4)2·H2O", from: "190", until: "227" }, { to: "Zn3(PO4)2", from: "250" }] },
  { form: "ZnC2O4·2H2O", source: "oxalates2014", stages: [{ to: "ZnC2O4", from: "132", until: "198" }, { to: "ZnO", from: "385", until: "445", per: "Zn" }] },
  { form: "3CdSO4·8H2O", source: "memory", stages: [{ to: "CdSO4·H2O", from: "40", until: "43.6" }] },
  { form: "Pb(CH3COO)2·3H2O", source: "merckIndexFirst", stages: [{ to: "Pb(CH3COO)2", from: "75", until: "100" }] },
  { form: "H2C2O4·2H2O", source: "cohenOrganic", note: "melts in its water at 101 °C; sublimes from about 157 °C", stages: [{ to: "H2C2O4", from: "100" }] },
  { form: "C6H8O7·H2O", source: "memory", stages: [{ to: "C6H8O7", from: "70", until: "75" }] },
]);

// Equations with known answers, carried over from the project's collected worked examples; the source stands on each row.
// Rows from memory are textbook commonplaces whose coefficients the collectors recomputed with two other exact methods.
// Where a printed equation was defective, the recomputed answer stands here.

/** Equations with one answer: coefficients of the reactants, then of the products. */
export interface UniqueCase {
  readonly equation: string;
  readonly coefficients: readonly number[];
  readonly source: string;
}

export const UNIQUE: readonly UniqueCase[] = [
  {
    equation: "[Cr(N2H4CO)6]4[Cr(CN)6]3 + KMnO4 + H2SO4 -> K2Cr2O7 + MnSO4 + CO2 + KNO3 + K2SO4 + H2O",
    coefficients: [10, 1176, 1399, 35, 1176, 420, 660, 223, 1879],
    source:
      "Journal of Chemical Education, 1995, 72, 1125 (Stout, Redox Challenges); coefficients in 1997, 74, 1256 (Nelson, letter) and 1997, 74, 1368 (Glaister), third challenge",
  },
  {
    equation: "MnS + As2Cr10O35 + H2SO4 -> HMnO4 + AsH3 + CrS3O12 + H2O",
    coefficients: [16, 13, 374, 16, 26, 130, 327],
    source: "Linear Algebra and Its Applications (Lay, Lay, McDonald), 5th, 1.6, exercise 10",
  },
  {
    equation: "PbN6 + CrMn2O8 -> Pb3O4 + Cr2O3 + MnO2 + NO",
    coefficients: [15, 44, 5, 22, 88, 90],
    source: "Linear Algebra and Its Applications (Lay, Lay, McDonald), 5th, 1.6, exercise 9",
  },
  {
    equation: "KMnO4 + MnSO4 + H2O -> MnO2 + K2SO4 + H2SO4",
    coefficients: [2, 3, 2, 5, 1, 2],
    source: "Linear Algebra and Its Applications (Lay, Lay, McDonald), 5th, 1.6, exercise 8",
  },
  {
    equation: "K4Fe(CN)6 + H2SO4 + H2O -> K2SO4 + FeSO4 + (NH4)2SO4 + CO",
    coefficients: [1, 6, 6, 2, 1, 3, 6],
    source: "memory",
  },
  {
    equation: "CuSCN + KIO3 + HCl -> CuSO4 + KCl + HCN + ICl + H2O",
    coefficients: [4, 7, 14, 4, 7, 4, 7, 5],
    source: "memory",
  },
  {
    equation:
      "H2 + Ca(CN)2 + NaAlF4 + FeSO4 + MgSiO3 + KI + H3PO4 + PbCrO4 + BrCl + CF2Cl2 + SO2 -> PbBr2 + CrCl3 + MgCO3 + KAl(OH)4 + Fe(SCN)3 + PI3 + Na2SiO3 + CaF2 + H2O",
    coefficients: [88, 15, 6, 10, 3, 6, 2, 6, 12, 3, 20, 6, 6, 3, 6, 10, 2, 3, 15, 79],
    source: "unattributed puzzle equation",
  },
  {
    equation:
      "C2952H4664N812O832S8Fe4 + Na2C4H3O4SAu + Fe(SCN)2 + Fe(NH4)2(SO4)2.6H2O + C4H8Cl2S + C8H12MgN2O8 -> C55H72MgN4O5 + Na3.99Fe(CN)6 + Au0.987SC6H11O5 + HClO4 + H2S",
    coefficients: [
      16258291, 5831282856, 2120505999, 737409637, 2463141325, 689935382, 689935382, 2922948800, 5908088000, 4926282650,
      8232233781,
    ],
    source: "unattributed puzzle equation",
  },
  {
    equation: "Fe36Si5 + H3PO4 + K2Cr2O7 -> FePO4 + SiO2 + K3PO4 + CrPO4 + H2O",
    coefficients: [9, 836, 192, 324, 45, 128, 384, 1254],
    source: "memory",
  },
  { equation: "As2S3 + HNO3 + H2O -> H3AsO4 + H2SO4 + NO", coefficients: [3, 28, 4, 6, 9, 28], source: "memory" },
  {
    equation: "Ag3AsO4 + Zn + H2SO4 -> AsH3 + Ag + ZnSO4 + H2O",
    coefficients: [2, 11, 11, 2, 6, 11, 8],
    source: "memory",
  },
  { equation: "Al + NaNO3 + NaOH + H2O -> NaAlO2 + NH3", coefficients: [8, 3, 5, 2, 8, 3], source: "memory" },
  { equation: "C3H8O3 + KMnO4 -> K2CO3 + Mn2O3 + CO2 + H2O", coefficients: [4, 14, 7, 7, 5, 16], source: "memory" },
  {
    equation: "K2Cr2O7 + FeSO4 + H2SO4 -> K2SO4 + Cr2(SO4)3 + Fe2(SO4)3 + H2O",
    coefficients: [1, 6, 7, 1, 1, 3, 7],
    source: "memory",
  },
  {
    equation: "KMnO4 + FeSO4 + H2SO4 -> K2SO4 + MnSO4 + Fe2(SO4)3 + H2O",
    coefficients: [2, 10, 8, 1, 2, 5, 8],
    source: "memory",
  },
  { equation: "Bi(OH)3 + SnO2^2- -> Bi + SnO3^2- + H2O", coefficients: [2, 3, 2, 3, 3], source: "memory" },
  { equation: "Br2 + OH- -> BrO3- + Br- + H2O", coefficients: [3, 6, 1, 5, 3], source: "memory" },
  { equation: "P4 + OH- + H2O -> H2PO2- + PH3", coefficients: [1, 3, 3, 3, 1], source: "memory" },
  {
    equation: "Fe(CN)6^4- + MnO4- + H+ -> Fe^3+ + CO2 + NO3- + Mn^2+ + H2O",
    coefficients: [5, 61, 188, 5, 30, 30, 61, 94],
    source: "memory",
  },
  {
    equation: "As2S3 + ClO3- + H2O -> Cl- + H2AsO4- + SO4^2- + H+",
    coefficients: [3, 14, 18, 14, 6, 9, 24],
    source: "memory",
  },
  { equation: "CN- + MnO4- + H2O -> CNO- + MnO2 + OH-", coefficients: [3, 2, 1, 3, 2, 2], source: "memory" },
  { equation: "ClO2 + OH- -> ClO2- + ClO3- + H2O", coefficients: [2, 2, 1, 1, 1], source: "memory" },
  { equation: "Au + HCl + HNO3 -> HAuCl4 + NO + H2O", coefficients: [1, 4, 1, 1, 1, 2], source: "memory" },
  { equation: "Pt + HNO3 + HCl -> H2PtCl6 + NO + H2O", coefficients: [3, 4, 18, 3, 4, 8], source: "memory" },
  { equation: "Na2CO3.10H2O -> Na2CO3.H2O + H2O", coefficients: [1, 1, 9], source: "memory" },
  { equation: "CaSO4.2H2O -> CaSO4.0.5H2O + H2O", coefficients: [2, 2, 3], source: "memory" },
  {
    equation: "CoCl2.6H2O + NH4Cl + NH3 + H2O2 -> [Co(NH3)6]Cl3 + H2O",
    coefficients: [2, 2, 10, 1, 2, 14],
    source: "memory",
  },
  {
    equation: "FeCl3.6H2O + K2C2O4.H2O -> K3[Fe(C2O4)3].3H2O + KCl + H2O",
    coefficients: [1, 3, 1, 3, 6],
    source: "memory",
  },
  { equation: "Fe^3+ + Fe(CN)6^4- -> Fe4[Fe(CN)6]3", coefficients: [4, 3, 1], source: "memory" },
  { equation: "(NH4)6Mo7O24.4H2O -> MoO3 + NH3 + H2O", coefficients: [1, 7, 6, 7], source: "memory" },
  { equation: "2PbCO3.Pb(OH)2 + H2S -> PbS + CO2 + H2O", coefficients: [1, 3, 3, 2, 4], source: "memory" },
  { equation: "CuSO4·5H2O + Al -> Cu + Al2(SO4)3 + H2O", coefficients: [3, 2, 3, 1, 15], source: "memory" },
  { equation: "Cr2O7^2- + H+ + e- -> Cr^3+ + H2O", coefficients: [1, 14, 6, 2, 7], source: "memory" },
  { equation: "ClO4- + H+ + e- -> Cl- + H2O", coefficients: [1, 8, 8, 1, 4], source: "memory" },
  { equation: "C6H12O6 + H2O -> CO2 + H+ + e-", coefficients: [1, 6, 6, 24, 24], source: "memory" },
  {
    equation: "CCl2F2 + H2 -> CH2F2 + HCl",
    coefficients: [1, 2, 1, 2],
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 9.3, end-of-chapter exercise on CCl2F2 and hydrogen",
  },
  {
    equation: "C8H18 + O2 -> CO2 + H2O",
    coefficients: [2, 25, 16, 18],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 4.3, balanced equation printed in the section or its exercises",
  },
  {
    equation: "C6H14 + O2 -> H2O + CO2",
    coefficients: [2, 19, 14, 12],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 16.2, balanced equation printed in the section or its exercises",
  },
  {
    equation: "MnO4- + H2C2O4 + H+ -> CO2 + Mn^2+ + H2O",
    coefficients: [2, 5, 6, 10, 2, 8],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 4.5, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Al + NH4ClO4 -> Al2O3 + AlCl3 + H2O + N2",
    coefficients: [10, 6, 4, 2, 12, 3],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 4.2, balanced equation printed in the section or its exercises",
  },
  {
    equation: "H2O + IO3- + e- -> I2 + OH-",
    coefficients: [6, 2, 10, 1, 12],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 4.2, balanced equation printed in the section or its exercises",
  },
  {
    equation: "MnO4- + H+ + e- -> Mn^2+ + H2O",
    coefficients: [1, 8, 5, 1, 4],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 17.3, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Cu + H+ + HNO3 -> Cu^2+ + NO + H2O",
    coefficients: [3, 6, 2, 3, 2, 4],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 17.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "MnO2 + Cl- + H3O+ -> Mn^2+ + Cl2 + H2O",
    coefficients: [1, 2, 4, 1, 1, 6],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 18.11, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Ag2S + CN- + O2 + H2O -> [Ag(CN)2]- + S + OH-",
    coefficients: [2, 8, 1, 2, 4, 2, 4],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 19.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "C4H10 + O2 -> CO2 + H2O",
    coefficients: [2, 13, 8, 10],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 4.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Ba(OH)2·8H2O + NH4SCN -> Ba(SCN)2 + NH3 + H2O",
    coefficients: [1, 2, 1, 2, 10],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 5.2, balanced equation printed in the section or its exercises",
  },
  {
    equation: "S + HNO3 -> H3O+ + SO4^2- + NO2",
    coefficients: [1, 6, 2, 1, 6],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 18.10, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Fe^2+ + O2 + HNO3 -> Fe^3+ + H2O + NO3-",
    coefficients: [4, 1, 4, 4, 2, 4],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 19.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "SiO3^2- + H2O + e- -> Si + OH-",
    coefficients: [1, 3, 4, 1, 6],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, appendix, Standard Electrode (Half-Cell) Potentials, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Mn2O3 + H3O+ + Cl- -> MnCl3 + H2O",
    coefficients: [1, 6, 6, 2, 9],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 19.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "I2 + e- -> I-",
    coefficients: [1, 2, 2],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 17.3, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Cu + S -> Cu2S",
    coefficients: [2, 1, 1],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 16.3, balanced equation printed in the section or its exercises",
  },
  {
    equation: "H+ + e- -> H2",
    coefficients: [2, 2, 1],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 17.3, balanced equation printed in the section or its exercises",
  },
  {
    equation: "H2 + O2 -> H2O",
    coefficients: [2, 1, 2],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 13.2, balanced equation printed in the section or its exercises",
  },
  {
    equation: "H2 + N2 -> NH3",
    coefficients: [3, 1, 2],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 18.5, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Pb(NO3)2 + H2SO4 -> PbSO4 + HNO3",
    coefficients: [1, 1, 1, 2],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 4.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Zn + HF -> ZnF2 + H2",
    coefficients: [1, 2, 1, 1],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 18.11, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Co + HCl -> H2 + CoCl2",
    coefficients: [1, 2, 1, 1],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 19.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Se + H+ + e- -> H2Se",
    coefficients: [1, 2, 2, 1],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, appendix, Standard Electrode (Half-Cell) Potentials, balanced equation printed in the section or its exercises",
  },
  {
    equation: "KOH + H3PO4 -> K3PO4 + H2O",
    coefficients: [3, 1, 1, 3],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 4.2, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Pb^2+ + I- -> PbI2",
    coefficients: [1, 2, 1],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 4.2, balanced equation printed in the section or its exercises",
  },
  {
    equation: "MgF2 -> Mg^2+ + F-",
    coefficients: [1, 1, 2],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 15.3, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Mg3(PO4)2 -> Mg^2+ + PO4^3-",
    coefficients: [1, 3, 2],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 15.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Sm^3+ + e- -> Sm",
    coefficients: [1, 3, 1],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, appendix, Standard Electrode (Half-Cell) Potentials, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Fe(NO3)3 -> Fe^3+ + NO3-",
    coefficients: [1, 1, 3],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 11.2, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Sc + HBr -> ScBr3 + H2",
    coefficients: [2, 6, 2, 3],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 19.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "[Ag(CN)2]- + Zn -> Ag + [Zn(CN)4]^2-",
    coefficients: [2, 1, 2, 1],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 19.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Br- + BrO3- + H+ -> Br2 + H2O",
    coefficients: [5, 1, 6, 3, 3],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 12.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Cl2 + OH- -> Cl- + ClO3- + H2O",
    coefficients: [3, 6, 5, 1, 3],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 4.2, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Co^2+ + NH3 -> [Co(NH3)6]^2+",
    coefficients: [1, 6, 1],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, appendix, Formation Constants for Complex Ions, balanced equation printed in the section or its exercises",
  },
  {
    equation: "Cu + H+ + HNO3 -> Cu^2+ + NO2 + H2O",
    coefficients: [1, 2, 2, 1, 2, 2],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, section 17.1, balanced equation printed in the section or its exercises",
  },
  {
    equation: "[Ni(NH3)6]^2+ + e- -> Ni + NH3",
    coefficients: [1, 2, 1, 6],
    source:
      "Chemistry 2e (OpenStax), 2e, 2019, web revision, appendix, Standard Electrode (Half-Cell) Potentials, balanced equation printed in the section or its exercises",
  },
];

/** Equations that several reactions fit: every elementary one, as text and as vector over the species in order. */
export interface SeveralCase {
  readonly equation: string;
  readonly dimension: number;
  readonly elementary: readonly { readonly text: string; readonly vector: readonly number[] }[];
  readonly source: string;
}

export const SEVERAL: readonly SeveralCase[] = [
  {
    equation: "KClO3 + HCl -> KCl + H2O + Cl2 + ClO2",
    dimension: 2,
    elementary: [
      { text: "KClO3 + 6 HCl -> KCl + 3 H2O + 3 Cl2", vector: [1, 6, 1, 3, 3, 0] },
      { text: "5 KClO3 + 6 HCl -> 5 KCl + 3 H2O + 6 ClO2", vector: [5, 6, 5, 3, 0, 6] },
    ],
    source:
      "Journal of Chemical Education, 1996, 73, 1129 (Ferguson); 1997, 74, 1256 (Freeman et al., letter, corrects two table lines), KClO3 + HCl",
  },
  {
    equation: "KMnO4 + H2O2 + H2SO4 -> K2SO4 + MnSO4 + O2 + H2O",
    dimension: 2,
    elementary: [
      { text: "2 H2O2 -> O2 + 2 H2O", vector: [0, 2, 0, 0, 0, 1, 2] },
      { text: "4 KMnO4 + 6 H2SO4 -> 2 K2SO4 + 4 MnSO4 + 5 O2 + 6 H2O", vector: [4, 0, 6, 2, 4, 5, 6] },
    ],
    source: "memory",
  },
  {
    equation: "MnO4- + H2O2 + H+ -> Mn^2+ + O2 + H2O",
    dimension: 2,
    elementary: [
      { text: "2 H2O2 -> O2 + 2 H2O", vector: [0, 2, 0, 0, 1, 2] },
      { text: "4 MnO4- + 12 H+ -> 4 Mn^2+ + 5 O2 + 6 H2O", vector: [4, 0, 12, 4, 5, 6] },
    ],
    source: "memory",
  },
  {
    equation: "FeS2 + HNO3 -> Fe(NO3)3 + H2SO4 + NO + NO2 + H2O",
    dimension: 2,
    elementary: [
      { text: "FeS2 + 8 HNO3 -> Fe(NO3)3 + 2 H2SO4 + 5 NO + 2 H2O", vector: [1, 8, 1, 2, 5, 0, 2] },
      { text: "FeS2 + 18 HNO3 -> Fe(NO3)3 + 2 H2SO4 + 15 NO2 + 7 H2O", vector: [1, 18, 1, 2, 0, 15, 7] },
    ],
    source: "memory",
  },
  {
    equation: "HClO3 -> HClO4 + Cl2 + O2 + H2O",
    dimension: 2,
    elementary: [
      { text: "7 HClO3 -> 5 HClO4 + Cl2 + H2O", vector: [7, 5, 1, 0, 1] },
      { text: "4 HClO3 -> 2 Cl2 + 5 O2 + 2 H2O", vector: [4, 0, 2, 5, 2] },
    ],
    source: "memory",
  },
  {
    equation: "C + O2 -> CO + CO2",
    dimension: 2,
    elementary: [
      { text: "2 C + O2 -> 2 CO", vector: [2, 1, 2, 0] },
      { text: "C + O2 -> CO2", vector: [1, 1, 0, 1] },
    ],
    source: "memory",
  },
  {
    equation: "NH3 + O2 -> NO + N2 + H2O",
    dimension: 2,
    elementary: [
      { text: "4 NH3 + 5 O2 -> 4 NO + 6 H2O", vector: [4, 5, 4, 0, 6] },
      { text: "4 NH3 + 3 O2 -> 2 N2 + 6 H2O", vector: [4, 3, 0, 2, 6] },
    ],
    source: "memory",
  },
  {
    equation: "K2Cr2O7 + H2O2 + H2SO4 -> Cr2(SO4)3 + K2SO4 + O2 + H2O",
    dimension: 2,
    elementary: [
      { text: "2 H2O2 -> O2 + 2 H2O", vector: [0, 2, 0, 0, 0, 1, 2] },
      { text: "2 K2Cr2O7 + 8 H2SO4 -> 2 Cr2(SO4)3 + 2 K2SO4 + 3 O2 + 8 H2O", vector: [2, 0, 8, 2, 2, 3, 8] },
    ],
    source: "memory",
  },
  {
    equation: "CO + CO2 + H2 -> CH4 + H2O",
    dimension: 2,
    elementary: [
      { text: "CO + 3 H2 -> CH4 + H2O", vector: [1, 0, 3, 1, 1] },
      { text: "CO2 + 4 H2 -> CH4 + 2 H2O", vector: [0, 1, 4, 1, 2] },
    ],
    source: "memory",
  },
  {
    equation: "Cl2 + OH- -> Cl- + ClO- + ClO3- + H2O",
    dimension: 2,
    elementary: [
      { text: "Cl2 + 2 OH- -> Cl- + ClO- + H2O", vector: [1, 2, 1, 1, 0, 1] },
      { text: "3 Cl2 + 6 OH- -> 5 Cl- + ClO3- + 3 H2O", vector: [3, 6, 5, 0, 1, 3] },
    ],
    source: "memory",
  },
  {
    equation: "KMnO4 + K2MnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O",
    dimension: 2,
    elementary: [
      { text: "2 KMnO4 + 16 HCl -> 2 KCl + 2 MnCl2 + 5 Cl2 + 8 H2O", vector: [2, 0, 16, 2, 2, 5, 8] },
      { text: "K2MnO4 + 8 HCl -> 2 KCl + MnCl2 + 2 Cl2 + 4 H2O", vector: [0, 1, 8, 2, 1, 2, 4] },
    ],
    source: "memory",
  },
  {
    equation: "Na2S2O4 + O2 + H2O -> NaHSO3 + NaHSO4",
    dimension: 2,
    elementary: [
      { text: "2 Na2S2O4 + O2 + 2 H2O -> 4 NaHSO3", vector: [2, 1, 2, 4, 0] },
      { text: "2 Na2S2O4 + 3 O2 + 2 H2O -> 4 NaHSO4", vector: [2, 3, 2, 0, 4] },
    ],
    source: "memory",
  },
  {
    equation: "XeF4 + H2O -> Xe + XeO3 + O2 + HF",
    dimension: 2,
    elementary: [
      { text: "3 XeF4 + 6 H2O -> Xe + 2 XeO3 + 12 HF", vector: [3, 6, 1, 2, 0, 12] },
      { text: "XeF4 + 2 H2O -> Xe + O2 + 4 HF", vector: [1, 2, 1, 0, 1, 4] },
    ],
    source: "memory",
  },
];

/** Equations that cannot be balanced, and why; the terms are those of `ImpossibleDetails`. */
export interface ImpossibleCase {
  readonly equation: string;
  readonly dimension: number;
  readonly elementsOnOneSideOnly: readonly string[];
  readonly balancesThatBlock: readonly string[];
  readonly forcedZero: readonly string[];
  readonly onTheWrongSide: readonly string[];
  readonly source: string;
}

export const IMPOSSIBLE: readonly ImpossibleCase[] = [
  {
    equation: "KClO3 + H2SO4 + FeSO4 -> K2SO4 + KCl + Fe2(SO4)3 + H2O",
    elementsOnOneSideOnly: [],
    balancesThatBlock: ["Cl", "K"],
    forcedZero: ["K2SO4"],
    onTheWrongSide: [],
    dimension: 1,
    source: "memory",
  },
  {
    equation: "NaCl -> Na2O + Cl2",
    elementsOnOneSideOnly: ["O"],
    balancesThatBlock: ["O"],
    forcedZero: [],
    onTheWrongSide: [],
    dimension: 0,
    source: "memory",
  },
  {
    equation: "KMnO4 + HCl -> KCl + MnCl2 + Cl2",
    elementsOnOneSideOnly: ["H", "O"],
    balancesThatBlock: [],
    forcedZero: [],
    onTheWrongSide: [],
    dimension: 0,
    source: "memory",
  },
  {
    equation: "Cr2O7^2- + H+ -> Cr^3+ + H2O",
    elementsOnOneSideOnly: [],
    balancesThatBlock: ["Cr", "H", "O", "charge"],
    forcedZero: [],
    onTheWrongSide: [],
    dimension: 0,
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 4.2, half-reaction before electrons are added",
  },
  {
    equation: "CaCO3 + CO2 -> CaO",
    elementsOnOneSideOnly: ["C"],
    balancesThatBlock: [],
    forcedZero: [],
    onTheWrongSide: ["CO2"],
    dimension: 1,
    source: "memory",
  },
  {
    equation: "Zn + H2SO4 -> ZnSO4 + H2 + H2O",
    elementsOnOneSideOnly: [],
    balancesThatBlock: ["O", "S"],
    forcedZero: ["H2O"],
    onTheWrongSide: [],
    dimension: 1,
    source: "memory",
  },
  {
    equation: "MnO4- + N2H4 + OH- -> MnO2 + N2 + H2O",
    elementsOnOneSideOnly: [],
    balancesThatBlock: ["charge"],
    forcedZero: [],
    onTheWrongSide: ["OH-"],
    dimension: 1,
    source: "memory",
  },
  {
    equation: "Fe2O3 + CO -> Fe + CO",
    elementsOnOneSideOnly: [],
    balancesThatBlock: ["C", "O"],
    forcedZero: ["Fe2O3", "Fe"],
    onTheWrongSide: [],
    dimension: 1,
    source: "memory",
  },
  {
    equation: "GeS2 + HNO3 + H2O -> GeO2 + H2SO4 + NO",
    elementsOnOneSideOnly: [],
    balancesThatBlock: ["H", "N", "O"],
    forcedZero: [],
    onTheWrongSide: ["H2O"],
    dimension: 1,
    source: "memory",
  },
  {
    equation: "C3H8 + O2 -> CO2",
    elementsOnOneSideOnly: ["H"],
    balancesThatBlock: ["H"],
    forcedZero: [],
    onTheWrongSide: [],
    dimension: 0,
    source: "memory",
  },
  {
    equation: "CuSO4 + NH3 -> [Cu(NH3)4]SO4.H2O",
    elementsOnOneSideOnly: [],
    balancesThatBlock: [],
    forcedZero: [],
    onTheWrongSide: [],
    dimension: 0,
    source: "memory",
  },
  {
    equation: "Cl2 -> Cl- + ClO-",
    elementsOnOneSideOnly: ["O"],
    balancesThatBlock: [],
    forcedZero: [],
    onTheWrongSide: [],
    dimension: 0,
    source: "memory",
  },
  {
    equation: "[Ag(NH3)2]+ -> Ag + NH3",
    elementsOnOneSideOnly: [],
    balancesThatBlock: ["charge"],
    forcedZero: [],
    onTheWrongSide: [],
    dimension: 0,
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 4.2, half-reaction skeleton before the electron is added",
  },
];

/** Oxidation states, exact; a fraction is an average. */
export interface OxidationCase {
  readonly formula: string;
  readonly states: Readonly<Record<string, string>>;
  readonly source: string;
}

export const OXIDATION: readonly OxidationCase[] = [
  {
    formula: "Na2SO4",
    states: { Na: "1", S: "6", O: "-2" },
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 4.2, worked example 4.5",
  },
  {
    formula: "KNO3",
    states: { K: "1", N: "5", O: "-2" },
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 4.2, worked example 4.5, follow-up",
  },
  {
    formula: "AlH3",
    states: { Al: "3", H: "-1" },
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 4.2, worked example 4.5, follow-up",
  },
  {
    formula: "H2PO4-",
    states: { H: "1", P: "5", O: "-2" },
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 4.2, worked example 4.5, follow-up",
  },
  {
    formula: "H3PO4",
    states: { H: "1", P: "5", O: "-2" },
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 4.2, section exercise 6",
  },
  {
    formula: "Al(OH)3",
    states: { Al: "3", H: "1", O: "-2" },
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 4.2, section exercise 6",
  },
  {
    formula: "KNO2",
    states: { K: "1", N: "3", O: "-2" },
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 4.2, section exercise 6",
  },
  {
    formula: "P4O6",
    states: { P: "3", O: "-2" },
    source: "Chemistry 2e (OpenStax), 2e, 2019, web revision, 4.2, section exercise 6",
  },
  { formula: "K2Cr2O7", states: { K: "1", Cr: "6", O: "-2" }, source: "memory" },
  { formula: "KMnO4", states: { K: "1", Mn: "7", O: "-2" }, source: "memory" },
  { formula: "H2O2", states: { H: "1", O: "-1" }, source: "memory" },
  { formula: "NaH", states: { Na: "1", H: "-1" }, source: "memory" },
  { formula: "Fe3O4", states: { Fe: "8/3", O: "-2" }, source: "memory" },
];

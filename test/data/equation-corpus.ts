// A corpus of 778 skeleton equations from all parts of chemistry, collected for the project; one a line, no coefficients.
// It carries no answers: each answer is checked by arithmetic that shares no code with the library.

export const CORPUS: readonly string[] = `
S8 + O2 -> SO2
CuSO4 + KI -> CuI + I2 + K2SO4
PH3 + O2 -> P4O10 + H2O
Na2SO3 + S + H2O -> Na2S2O3.5H2O
TiCl4 + H2O -> TiO2 + HCl
CCl4 + SbF3 -> CCl2F2 + SbCl3
NaH2PO2 -> Na2HPO4 + PH3
H3O+ + Al(H2O)3(OH)3 -> Al(H2O)6^3+ + H2O
SiO2 + Na2CO3 -> Na2SiO3 + CO2
HBrO + H2O -> H3O+ + Br- + O2
BaCl2 + K2SO4 -> BaSO4 + KCl
KI + KIO3 + H2SO4 -> I2 + K2SO4 + H2O
MnO4- + H2S + H+ -> Mn^2+ + S + H2O
FeS2 + O2 + H2O -> FeSO4 + H2SO4
Cl2 + IO3- + OH- -> IO4- + Cl- + H2O
Ag + HNO3 -> AgNO3 + NO + H2O
PBr3 + H2O -> H3PO3 + HBr
SeO2 + SO2 -> Se + SO3
Mg(OH)2 + HCl -> MgCl2 + H2O
PbCl(OH) + H+ -> Pb^2+ + Cl- + H2O
Zn + HNO3 -> Zn(NO3)2 + N2O + H2O
SCN- + MnO4- + H+ -> SO4^2- + CO2 + NO3- + Mn^2+ + H2O
Fe3(PO4)2.8H2O + H+ -> HPO4^2- + Fe^2+ + H2O
Pb^2+ + I- -> [PbI4]^2-
CuSO4.5H2O + K2SO4 + H2O -> K2Cu(SO4)2.6H2O
FeSO4 + HNO3 + H2SO4 -> Fe2(SO4)3 + NO + H2O
CN- + Cu^2+ -> [Cu(CN)4]^3- + (CN)2
CH4 + H2O -> CO + H2
CuS + HNO3 -> CuSO4 + NO2 + H2O
Na2Cr2O7 + H2SO4 -> CrO3 + Na2SO4 + H2O
Be^2+ + e- -> Be
CaF2 + H2SO4 -> CaSO4 + HF
CN- + ClO- + OH- -> CO3^2- + N2 + Cl- + H2O
FeCr2O4 + Na2CO3 + O2 -> Na2CrO4 + Fe2O3 + CO2
Cu^2+ + I- -> CuI + I2
FeS2 + HNO3 -> Fe(NO3)3 + H2SO4 + NO2 + H2O
P4O10 + H2O -> H3PO4
Cu + NO3- + H+ -> Cu^2+ + NO2 + H2O
Al2(SO4)3 + NH3 + H2O -> Al(OH)3 + (NH4)2SO4
Na2CO3.H2O + H+ -> H2O + HCO3- + Na+
H2S + H2O2 -> H2SO4 + H2O
CH3COOH + CaCO3 + H2O -> Ca(CH3COO)2.H2O + CO2
Ca(OH)2 + Cl2 -> CaCl2 + Ca(ClO3)2 + H2O
SF4 + H2O -> SO2 + HF
MgSiO3 + H+ -> H2O + Mg^2+ + SiO2
H2SO4 + KOH -> K2SO4 + H2O
Pb0.5Fe3(SO4)2(OH)6 + H+ -> Fe^3+ + Pb^2+ + SO4^2- + H2O
P4 + NaOH + H2O -> NaH2PO2 + PH3
C6H5CHO + KOH -> C6H5CH2OH + C6H5COOK
Fe2O3 + CO -> Fe3O4 + CO2
NO3- + H+ + e- -> HNO2 + H2O
Sr(NO3)2 + Mg -> SrO + N2 + MgO
KClO3 -> KClO4 + KCl
Na2B4O7.10H2O + HCl -> H3BO3 + NaCl + H2O
KMnO4 + KI + H2SO4 -> MnSO4 + I2 + K2SO4 + H2O
H2SO4 + C -> CO2 + SO2 + H2O
Na2S2O4 + O2 + H2O -> NaHSO3 + NaHSO4
Cr2(SO4)3 + KClO3 + KOH -> K2CrO4 + KCl + K2SO4 + H2O
KMnO4 + C2H4 + H2O -> C2H6O2 + MnO2 + KOH
[PtCl4]^2- + e- -> Pt + Cl-
Co^2+ + NH3 + H2O2 -> Co(NH3)6^3+ + OH-
SnS + e- -> Sn + S^2-
U(OH)2SO4 + H+ -> SO4^2- + U^4+ + H2O
Zn^2+ + OH- -> Zn(OH)2
Mg + O2 -> MgO
S + H+ + e- -> H2S
Zn + H2SO4 -> ZnSO4 + H2S + H2O
NaIO3 + NaHSO3 -> I2 + NaHSO4 + Na2SO4 + H2O
NO3- + H+ + e- -> NH4+ + H2O
BrO3- + Br- + H+ -> Br2 + H2O
CoCl2.6H2O + NH4Cl + NH3 + H2O2 -> [Co(NH3)6]Cl3 + H2O
MnO2 + PbO2 + HNO3 -> Pb(NO3)2 + HMnO4 + H2O
H2S + Cl2 + H2O -> H2SO4 + HCl
Al + H2SO4 -> Al2(SO4)3 + SO2 + H2O
H2 + Ca(CN)2 + NaAlF4 + FeSO4 + MgSiO3 + KI + H3PO4 + PbCrO4 + BrCl + CF2Cl2 + SO2 -> PbBr2 + CrCl3 + MgCO3 + KAl(OH)4 + Fe(SCN)3 + PI3 + Na2SiO3 + CaF2 + H2O
S + NaOH -> Na2S + Na2SO3 + H2O
NiO2 + H2O + e- -> Ni(OH)2 + OH-
Os + O2 -> OsO4
NaClO + Na2S2O3 + NaOH -> NaCl + Na2SO4 + H2O
Cr2O7^2- + I- -> Cr^3+ + I2
Sn + NaOH + NaNO3 -> Na2SnO3 + NH3 + H2O
Ni^2+ + NH3 -> [Ni(NH3)6]^2+
NiO2 + H+ + e- -> Ni^2+ + H2O
K2MnO4 + H2O -> KMnO4 + MnO2 + KOH
Ag + HNO3 -> AgNO3 + H2O
Ag2SO4 -> Ag+ + SO4^2-
KHC4H4O6 -> K2CO3 + C + CO + H2O
FeOOH -> Fe2O3 + H2O
KMnO4 + Ti2(SO4)3 + H2O -> TiOSO4 + K2SO4 + MnSO4 + H2SO4
CH3CH2CH2CH2CH3 + O2 -> CO2 + H2O
MgSO4 + Na2CO3 + H2O -> Mg5(CO3)4(OH)2.4H2O + Na2SO4 + CO2
FeCl3.6H2O + K2C2O4.H2O -> K3[Fe(C2O4)3].3H2O + KCl + H2O
CaC2 + H2O -> Ca(OH)2 + C2H2
CH4 + Cl2 -> CCl4 + HCl
Cr2O7^2- + C2H5OH + H+ -> Cr^3+ + CH3COOH + H2O
Cu + CH3COOH + H2O2 -> Cu(CH3COO)2.H2O + H2O
CH4 + O2 -> CO2 + H2O
V2O5 + SO2 + H2SO4 -> VOSO4 + H2O
CH3OH + H2O -> CO2 + H+ + e-
Mg + CO2 -> MgO + C
Fe + NO3- + H2O -> Fe3O4 + NH4+ + OH-
NaNO2 + H2SO4 -> HNO3 + NO + Na2SO4 + H2O
Ca5(PO4)3OH -> Ca^2+ + PO4^3- + OH-
[PtBr4]^2- + e- -> Pt + Br-
Na + H+ + O2 -> H2O + Na+
K2C2O4 + Ba(OH)2 -> KOH + BaC2O4
MgSO4.7H2O -> MgSO4.H2O + H2O
S8 + AsF5 -> S16(AsF6)2 + AsF3
FeS + H3O+ -> Fe^2+ + H2S + H2O
Na2CO3.10H2O -> Na2CO3.H2O + H2O
CuS + H+ -> Cu^2+ + HS-
V2O5 + HCl -> VOCl2 + Cl2 + H2O
CCl4 + HF -> CF2Cl2 + HCl
P4 + HClO + H2O -> H3PO4 + HCl
Zn + HBr -> ZnBr2 + H2
NiSO4 + C4H8N2O2 + NH3 -> Ni(C4H7N2O2)2 + (NH4)2SO4
C + H2 + O2 -> CH3CO2H
NaBr + Cl2 -> NaCl + Br2
ClO3- + Cl- + H+ -> Cl2 + H2O
FeSO4 + H2O + O2 -> Fe(OH)SO4
C2H5OH + O2 -> CH3COOH + H2O
C12H22O11 + O2 -> CO2 + H2O
F2 + NaOH -> OF2 + NaF + H2O
Mg^2+ + NH4+ + HPO4^2- + OH- + H2O -> MgNH4PO4.6H2O
Zn + NaOH + H2O -> Na2[Zn(OH)4] + H2
Ca3(PO4)2 + H+ -> HPO4^2- + Ca^2+
S + NaOH -> Na2S2O3 + Na2S + H2O
MnSO4 + KMnO4 + H2O -> MnO2 + K2SO4 + H2SO4
K2Cr2O7 + C -> Cr2O3 + K2CO3 + CO
Ca10(PO4)6(OH)2 + HCl -> CaCl2 + H3PO4 + H2O
CaCO3 + NaCl -> Na2CO3 + CaCl2
CH4 + NH3 + O2 -> HCN + H2O
Ca(ClO)2 + HCl -> CaCl2 + Cl2 + H2O
KMnO4 + H2C2O4 + H2SO4 -> K2SO4 + MnSO4 + CO2 + H2O
(NH4)2S2O8 + H2O -> NH4HSO4 + H2O2
Cr2O3 + Al -> Cr + Al2O3
FeCl3 + H2S -> FeCl2 + S + HCl
Cd^2+ + e- -> Cd
Fe2O3 + H+ -> Fe^3+ + H2O
C6H5C2H5 + KMnO4 + H2SO4 -> C6H5COOH + CO2 + K2SO4 + MnSO4 + H2O
AlCl3.6H2O -> Al2O3 + HCl + H2O
CuCl + HCl + O2 -> CuCl2 + H2O
CH3COOH + ZnO + H2O -> Zn(CH3COO)2.2H2O
Zr(HPO4)2 + H+ -> H2PO4- + Zr^4+
Cl2 + H2O -> HOCl + H3O+ + Cl-
Cr2O3 + KNO3 + K2CO3 -> K2CrO4 + KNO2 + CO2
Ca3P2 + H2O -> Ca(OH)2 + PH3
As2S3 + ClO3- + H2O -> Cl- + H2AsO4- + SO4^2- + H+
La2(C2O4)3.10H2O -> La2O3 + CO + CO2 + H2O
HI -> H2 + I2
[Zn(CN)4]^2- + e- -> Zn + CN-
Cu2S + Cu2O -> Cu + SO2
I2O5 + CO -> I2 + CO2
Cr^2+ + e- -> Cr
Fe3O4 + HCl -> FeCl2 + FeCl3 + H2O
NH4NO3 + Zn -> ZnO + N2 + H2O
CuO + H2SO4 -> CuSO4 + H2O
KMnO4 + HCOOH + H2SO4 -> K2SO4 + MnSO4 + CO2 + H2O
Zn + HNO3 -> Zn(NO3)2 + N2 + H2O
Nb + H2O -> H+ + Nb(OH)6- + e-
Ba^2+ + e- -> Ba
CrO4^2- + S^2- + H2O -> Cr(OH)3 + S + OH-
Si + Cl2 -> SiCl4
Zn3Sb2 + H2O -> Zn(OH)2 + SbH3
SeO3 + H2O -> SeO4^2- + H+
VO3- + SO2 + H+ -> VO^2+ + SO4^2- + H2O
NO3- + H+ + e- -> NO + H2O
KMnO4 + CH3CH2OH + H2SO4 -> CH3COOH + MnSO4 + K2SO4 + H2O
H2O2 + CrO4^2- + H2O -> Cr(OH)3 + O2 + OH-
Au + HCl + HNO3 -> HAuCl4 + NO2 + H2O
Ca3(PO4)2 + H2SO4 -> Ca(H2PO4)2 + CaSO4
Zn + NaNO3 + NaOH -> Na2ZnO2 + NH3 + H2O
K4[Fe(CN)6] + H2SO4 + H2O -> K2SO4 + FeSO4 + (NH4)2SO4 + CO
Pb(N3)2 + Co(MnO4)3 -> CoO + MnO2 + Pb3O4 + NO
Sc2O3 + HCl -> ScCl3 + H2O
C7H5N3O6 -> N2 + CO + H2O + C
BF3 + H2O -> B(OH)3 + HF
Sn + Cl2 -> SnCl4
CuSO4.5H2O -> CuSO4
CH3COOH + MgO + H2O -> Mg(CH3COO)2.4H2O
O2 + H2O + e- -> OH-
HgCl2 + SnCl2 -> Hg2Cl2 + SnCl4
CoCl2.6H2O -> CoCl2 + H2O
Na2CO3 + Ba(NO3)2 -> NaNO3 + BaCO3
UOF2 + H+ -> H2O + U^4+ + F-
O2 + H+ + e- -> H2O2
Cl2O7 + H2O2 + OH- -> ClO2- + O2 + H2O
Cu2(OH)2CO3 + CH3COOH + H2O -> Cu(CH3COO)2.H2O + CO2
UO2(AsO3)2 + H2O -> UO2^2+ + H2AsO4-
C2O4H2 + NaOH -> Na2C2O4 + H2O
Al(NO3)3 + H2O -> Al(H2O)6^3+ + NO3-
NaHCO3 + C6H8O7 -> Na3C6H5O7 + CO2 + H2O
NH3 + Cl2 -> NH4Cl + N2
Fe(CN)6^4- + Ce^4+ + H2O -> Ce(OH)3 + Fe(OH)3 + CO3^2- + NO3- + H+
IO3- + HSO3- -> I- + SO4^2- + H+
B2O3 + Mg -> B + MgO
Al + C -> Al4C3
H2O2 + H3O+ + e- -> H2O
MgCl2 + NaOH -> Mg(OH)2 + NaCl
CaAl2Si2O7(OH)2.H2O + H+ -> Ca^2+ + Al^3+ + SiO2 + H2O
SO2 + Fe^3+ + H2O -> SO4^2- + Fe^2+ + H+
LiAlH4 + BCl3 -> B2H6 + LiCl + AlCl3
CuSO4 + NaOH + C6H12O6 -> Cu2O + C6H12O7 + Na2SO4 + H2O
ClO- + CrO2- + OH- -> Cl- + CrO4^2- + H2O
GeS2 + HNO3 + H2O -> GeO2 + H2SO4 + NO
Na2S2O5 + NaOH -> Na2SO3 + H2O
BH4- + OH- -> BO2- + H2O + e-
ClO2 + OH- -> ClO2- + ClO3- + H2O
BaSO4 + C -> BaS + CO
OsO4 + HCl + FeCl2 -> H2OsCl6 + FeCl3 + H2O
MnCO3 + O2 -> Mn3O4 + CO2
CaCO3 + HCl -> CaCl2 + H2O
FeCO3 + O2 + H2O -> FeOOH + CO2
Na2S2O3 + Cl2 + H2O -> NaHSO4 + HCl
NH2OH + FeCl3 -> N2O + FeCl2 + HCl + H2O
Mn2O7 -> MnO2 + O2
C6H12O6 -> C2H5OH + CO2
Na2(UO2)2(PO4)2 -> UO2^2+ + Na+ + PO4^3-
KCN + Au + O2 + H2O -> K[Au(CN)2] + KOH
CrCl3 + NaOH + Br2 -> Na2CrO4 + NaBr + NaCl + H2O
NH4Cl + Ca(OH)2 -> CaCl2 + NH3 + H2O
XeF6 + SiO2 -> XeOF4 + SiF4
BrO3- + F2 + OH- -> BrO4- + F- + H2O
K2Cr2O7 + H2S + H2SO4 -> Cr2(SO4)3 + S + K2SO4 + H2O
C6H8O7.H2O + Na2CO3 -> Na3C6H5O7.2H2O + CO2 + H2O
Ag+ + AsH3 + H2O -> Ag + H3AsO3 + H+
AlP + H3O+ -> PH3 + Al^3+ + H2O
Co3O4 + Al -> Co + Al2O3
Np^3+ + e- -> Np
N2H4 + HNO3 -> N2 + H2O
CH3COCH3 + I2 + NaOH -> CHI3 + CH3COONa + NaI + H2O
Al + Fe2O3 -> Al2O3 + Fe
Ti3O5 + H2O + O2 -> Ti(OH)4
NH3 + O2 -> NO + H2O
XeF2 + H2O -> Xe + O2 + HF
C57H110O6 + O2 -> CO2 + H2O
Y2O3 + BaCO3 + CuO + O2 -> YBa2Cu3O7 + CO2
Al + F2 -> AlF3
HO2- + H2O + e- -> OH-
LiFePO4 + C6 -> FePO4 + LiC6
Ba2U2O7 + H+ -> Ba^2+ + UO2+ + H2O
Zr + H2O -> ZrO2 + H2
C6H12N4 + HNO3 -> C3H6N6O6 + HCHO + NH4NO3 + H2O
C2Cl6 + Zn -> ZnCl2 + C
Ca(OH)2 + H2S -> CaS + H2O
Si + N2 -> Si3N4
Ag3(PO4) + H+ -> Ag+ + H2PO4-
[SnF6]^2- + e- -> Sn + F-
CaSO4.2H2O -> CaSO4.0.5H2O + H2O
Cu + HCl + H2O2 -> CuCl2 + H2O
AsH3 + AgNO3 -> Ag3As + HNO3
Sc^3+ + e- -> Sc
Al2O3 + NaOH + HF -> Na3AlF6 + H2O
[HgBr4]^2- + e- -> Hg + Br-
HClO + H3O+ + e- -> Cl- + H2O
Zn5(PO4)3Cl + H+ -> Cl- + H2PO4- + Zn^2+
I- + H2O2 -> I2 + H2O
NaSb + H2O -> Na+ + Sb(OH)3 + H+ + e-
NH3 -> N2 + H2
PCl5 + NH4Cl -> (NPCl2)3 + HCl
PbS + H2O2 -> PbSO4 + H2O
NO3- + Al + OH- + H2O -> NH3 + Al(OH)4-
ClO4- + H+ + e- -> Cl- + H2O
PCl5 + H2O -> POCl3 + HCl
As2O3 + I2 + H2O -> As2O5 + HI
KNO3 + CO(NH2)2 -> K2CO3 + CO2 + N2 + H2O
Ag+ + Ni -> Ni^2+ + Ag
NaBH4 + BF3 -> NaBF4 + B2H6
CuFeS2 + FeCl3 -> CuCl2 + FeCl2 + S
MoS2 + O2 -> MoO3 + SO2
H2S + O2 -> H2O + SO2
KMnO4 + C6H5CH3 -> C6H5COOK + MnO2 + KOH + H2O
Al2O3 + NaOH + H2O -> NaAl(OH)4
CuFeS2 + HNO3 -> Cu(NO3)2 + Fe(NO3)3 + H2SO4 + NO + H2O
NaH2PO2 + NiCl2 + H2O -> Ni + NaH2PO3 + HCl
S2O3^2- + OCl- + OH- -> SO4^2- + Cl- + H2O
H2O -> H3O+ + OH-
C6H5NO2 + Fe + H2O -> C6H5NH2 + Fe3O4
CrBr3 + H2O -> Cr(OH)2+ + Br- + H+
PbSO4(NH3)2 -> Pb^2+ + SO4^2- + NH3
(NH4)2V6O16 -> V2O5 + NH3 + H2O
Ce2(CO3)3.8H2O + H+ -> Ce^3+ + HCO3- + H2O
IF5 + H2O -> HIO3 + HF
Zn^2+ + CN- -> [Zn(CN)4]^2-
C2H6 + O2 -> CO2 + H2O
Co(OH)2 + HBr -> CoBr2 + H2O
KI + H2O2 + H2SO4 -> I2 + K2SO4 + H2O
H2SeO3 + SO2 + H2O -> Se + H2SO4
Eu + H+ + O2 -> Eu^3+ + H2O
FeCr2O4 + NaOH + O2 -> Na2CrO4 + NaFeO2 + H2O
CrO4^2- + H2O + e- -> Cr(OH)3 + OH-
Fe(OH)2 -> Fe3O4 + H2 + H2O
Ca3ZrSi2O9 + H+ -> Ca^2+ + H4SiO4 + Zr^4+ + H2O
[HgI4]^2- + e- -> Hg + I-
FeAs2 + H+ + H2O -> AsH3 + Fe^2+ + O2
Pb^2+ + e- -> Pb
MnO2 + H2O2 + H2SO4 -> MnSO4 + O2 + H2O
Mn3O4 + Al -> Mn + Al2O3
Fe^3+ + SCN- -> [Fe(SCN)6]^3-
ZnSO4 + NaHCO3 -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2 + H2O
MnO4- + H2O + e- -> MnO2 + OH-
K2Cr2O7 + SO2 + H2SO4 -> KCr(SO4)2 + H2O
Hg^2+ + e- -> Hg
Cu(SeO3).2H2O -> Cu^2+ + SeO3^2- + H2O
NCl3 + H2O -> NH3 + HClO
KAl(SO4)2.12H2O + NaHCO3 -> Al(OH)3 + Na2SO4 + K2SO4 + CO2 + H2O
Ca(HCO3)2 -> CaCO3 + CO2 + H2O
MnO2 + FeSO4 + H2SO4 -> MnSO4 + Fe2(SO4)3 + H2O
CH4 + S8 -> CS2 + H2S
MnSO4 + PbO2 + H2SO4 -> HMnO4 + PbSO4 + H2O
H3BO3 -> B2O3 + H2O
CeO2 + H+ -> Ce^4+ + H2O
ClO4- + H3O+ + e- -> ClO3- + H2O
Co(FeO2)2 + H+ -> Co^2+ + Fe^3+ + H2O
Ag2CrO4 + e- -> Ag + CrO4^2-
Au + H2SeO4 -> Au2(SeO4)3 + H2SeO3 + H2O
NH4NO3 -> N2O + NH3
Al^3+ + OH- -> Al(OH)3
Mg(OH)2 -> MgO + H2
I2 + OH- -> IO3- + I- + H2O
Fe^2+ + CN- -> [Fe(CN)6]^4-
H2O -> O2 + H+ + e-
CaF2 + H2SO4 + SiO2 -> CaSO4 + SiF4 + H2O
ZnO*2ZnSO4 + H+ -> Zn^2+ + SO4^2- + H2O
XeO3 + Mn^2+ + H2O -> Xe + MnO4- + H+
Fe3O4 + O2 -> Fe2O3
Mg(OH)2 -> Mg^2+ + OH-
NaClO + HCl -> NaCl + Cl2 + H2O
Ag+ + SCN- -> [Ag(SCN)4]^3-
Al + NaOH + H2O -> Na[Al(OH)4] + H2
Ru + H+ + O2 -> H2O + Ru^2+
FeS + e- -> Fe + S^2-
Ca^2+ + HCO3- -> CaCO3 + CO2 + H2O
(CH3COO)2Ca -> CH3COCH3 + CaCO3
Mg + SiO2 -> Mg2Si + MgO
ClO- + H2O + e- -> Cl- + OH-
Ca(OH)2 -> Ca^2+ + OH-
Na2K6(SO4)4 -> K+ + Na+ + SO4^2-
CH3COOH + Mn + H2O -> Mn(CH3COO)2.4H2O + H2
ZnS + O2 -> ZnO + SO2
CaSi2 + NaOH + H2O -> Ca(OH)2 + Na2SiO3 + H2
Ca3Si2O7 + H+ -> SiO2 + Ca^2+ + H2O
NH4ClO4 + C10H16O + Al -> Al2O3 + CO2 + N2 + HCl + H2O
Na2S2O3 + HCl -> NaCl + S + SO2 + H2O
NaN3 -> Na + N2
Ni^2+ + e- -> Ni
Ni(OH)2 + NaClO + H2O -> Ni(OH)3 + NaCl
FeTiO3 + H2SO4 -> FeSO4 + TiOSO4 + H2O
HgCl2 + NH3 -> HgNH2Cl + NH4Cl
KO2 + H2O -> KOH + H2O2 + O2
B2O3 + H2O -> B(OH)3
Fe2O3 + CO -> Fe + CO2
NaAlSi3O8 + CO2 + H2O -> NaHCO3 + Al2Si2O5(OH)4 + H4SiO4
Ho + H+ + O2 -> Ho^3+ + H2O
Au + HNO3 + HCl -> HAuCl4 + NO + H2O
KMnO4 + PH3 + H2SO4 -> K2SO4 + MnSO4 + H3PO4 + H2O
NH3 + F2 -> NF3 + NH4F
NO2 + HCl -> NO + Cl2 + H2O
Mn(OH)2 + O2 + H2O -> Mn(OH)3
Li2O + H2O -> LiOH
MgO + Si -> Mg + SiO2
ZnHPO4 + H+ -> H2PO4- + Zn^2+
H2 + I2 -> HI
Ca2Fe2O5 + H+ -> Ca^2+ + Fe^3+ + H2O
O3 + I- + H2O -> I3- + O2 + OH-
Zn^2+ + e- -> Zn
KMnO4 + KOH -> K2MnO4 + O2 + H2O
CrO3 -> Cr2O3 + O2
AgNO3 + H3PO2 + H2O -> Ag + H3PO4 + HNO3
C6H12O6 + H2O -> CO2 + H+ + e-
[SiF6]^2- + e- -> Si + F-
Co + HNO3 -> Co(NO3)2 + NO + H2O
(NH4)10W12O41.5H2O -> WO3 + NH3 + H2O
ZrF2 -> e- + F- + Zr^4+
Cu(OH)2 + H+ -> Cu^2+ + H2O
MoS2 + HNO3 -> H2MoO4 + H2SO4 + NO + H2O
Cu2(OH)2(CO3) + H+ -> HCO3- + Cu^2+ + H2O
Cl2 + I2 + H2O -> HIO3 + HCl
Cu + H2SO4 -> CuSO4 + SO2 + H2O
K2Cr2O7 -> K+ + Cr2O7^2-
KMnO4 + Na2S2O3 + H2SO4 -> MnSO4 + K2SO4 + Na2SO4 + H2O
Mn(NO3)2 + NaBiO3 + HNO3 -> HMnO4 + Bi(NO3)3 + NaNO3 + H2O
NO3- + H2O + e- -> NO2- + OH-
CuSiO2(OH)2 + H+ -> Cu^2+ + SiO2 + H2O
C3H5N3O9 -> CO2 + N2 + H2O + O2
Cu^2+ + CN- -> [Cu(CN)4]^2-
FeC2O4 -> FeO + CO + CO2
Al2(OH)(PO4)2 + H+ + e- -> Al^3+ + H2PO4- + H2O
C2H4(OH)2 + KMnO4 -> K2CO3 + MnO2 + CO2 + H2O
KOH + I2 -> KI + KIO3 + H2O
Cs2CO3 + HF -> CsF + CO2 + H2O
S2Cl2 + H2O -> SO2 + HCl + S
MgHPO4 + H+ -> Mg^2+ + H2PO4-
Ca(ClO)2 + CO2 + H2O -> CaCO3 + HClO
Ag2S + HNO3 -> AgNO3 + S + NO + H2O
Na2B4O7 + CaF2 + H2SO4 -> BF3 + CaSO4 + Na2SO4 + H2O
(NH4)6Mo7O24.4H2O -> MoO3 + NH3 + H2O
Mg + NH4Cl -> MgCl2 + NH3 + H2
Si + F2 -> SiF4
Cl2 + Li -> Li+ + Cl-
C4H6O6 + KHCO3 -> KHC4H4O6 + CO2 + H2O
K2Cr2O7 + KI + H2SO4 -> Cr2(SO4)3 + I2 + K2SO4 + H2O
Na2O2 + H2O -> NaOH + O2
Al + HNO3 -> Al(NO3)3 + N2O + H2O
Ag2O + H2O2 -> Ag + O2 + H2O
Al4C3 + H2O -> Al(OH)3 + CH4
Ba(OH)2.8H2O + H+ -> Ba^2+ + H2O
Sn + Cu^2+ -> Sn^2+ + Cu+
SrCO3 + HNO3 -> Sr(NO3)2 + CO2 + H2O
Fe(OH)2 + O2 + H2O -> Fe(OH)3
La^3+ + e- -> La
MgAl2O4 + H+ -> Mg^2+ + Al^3+ + H2O
Fe^3+ + Fe(CN)6^4- -> Fe4[Fe(CN)6]3
K2MnO4 + CO2 -> KMnO4 + MnO2 + K2CO3
Pb2(SiO4) + H+ -> Pb^2+ + H4SiO4
2PbCO3.Pb(OH)2 + H2S -> PbS + CO2 + H2O
Pt^2+ + e- -> Pt
CdSiO3 + H+ -> Cd^2+ + H2O + SiO2
Al^3+ + F- -> [AlF6]^3-
MgO + HCl -> MgCl2 + H2O
USe2 + O2 + H2O -> H+ + U^3+ + SeO3^2-
Ga^3+ + e- -> Ga
As2S3 + H2O2 + NH3 -> (NH4)3AsO4 + (NH4)2SO4 + H2O
HNO3 -> NO2 + O2 + H2O
K2HgI4 + NH3 + KOH -> Hg2NI.H2O + KI + H2O
(NH4)2CO3 -> NH3 + CO2 + H2O
B10H18 + O2 -> B2O3 + H2O
Sb2S3 + HNO3 -> Sb2O5 + NO2 + S + H2O
Fe36Si5 + H3PO4 + K2Cr2O7 -> FePO4 + SiO2 + K3PO4 + CrPO4 + H2O
Cl- + OH- -> ClO3- + H2O + e-
C2H5OH + O2 -> CO2 + H2O
Li2Se + O2 -> SeO3^2- + Li+
Fe + H2O -> Fe3O4 + H2
Na2ZrSi3O9.2H2O + H+ + H2O -> Na+ + H4SiO4 + Zr^4+
Ca3(PO4)2 + H2SO4 -> H3PO4 + CaSO4
Sb2S3 + Fe -> Sb + FeS
Cl2 + F2 -> ClF3
Zn3(PO4)2.4H2O -> Zn3(PO4)2 + H2O
ZnS + HNO3 -> ZnSO4 + NO2 + H2O
Cu + CuCl2 -> CuCl
NaBH4 + I2 -> B2H6 + NaI + H2
Ca12Al14O33 + H+ -> Ca^2+ + Al^3+ + H2O
Hg2Cl2 + e- -> Hg + Cl-
MnO2 + SO2 -> MnSO4
CO2 + NaOH -> Na2CO3 + H2O
MnO4- + N2H4 + OH- -> MnO2 + N2 + H2O
NaN3 + KNO3 + SiO2 -> Na2SiO3 + K2SiO3 + N2
Mg + HNO3 -> Mg(NO3)2 + NH4NO3 + H2O
Am^3+ + e- -> Am
CaH2 + H2O -> Ca(OH)2 + H2
CaSO4.0.5H2O + H2O -> CaSO4.2H2O
NaNO3 + Pb -> NaNO2 + PbO
KClO3 + C12H22O11 -> KCl + CO2 + H2O
Sn^4+ + e- -> Sn^2+
MnO4- + VO^2+ + H2O -> Mn^2+ + VO2+ + H+
H2O2 + ClO- -> Cl- + O2 + H2O
NaOCl + NH3 -> N2H4 + NaCl + H2O
K + H+ + O2 -> H2O + K+
Hg(SCN)2 -> HgS + CS2 + C3N4
Pb + CH3COOH + O2 -> Pb(CH3COO)2 + H2O
Fe(CN)6^4- + MnO4- + H+ -> Fe^3+ + CO2 + NO3- + Mn^2+ + H2O
S + KClO3 -> KCl + SO2
C3H5(OOCC17H35)3 + NaOH -> C17H35COONa + C3H5(OH)3
Na + H2O -> NaOH + H2
P4 + Cl2 -> PCl3
Pb + PbO2 + H2SO4 -> PbSO4 + H2O
Na[Au(CN)2] + Zn -> Na2[Zn(CN)4] + Au
Mn^2+ + e- -> Mn
CuSO4 + NH3 + H2O -> [Cu(NH3)4]SO4.H2O
P4S3 + O2 -> P4O10 + SO2
Mg^2+ + e- -> Mg
BCl3 + H2O -> B(OH)3 + HCl
Cu^2+ + HCO3- -> Cu2(OH)2CO3 + CO2 + H2O
U3Se5 + O2 + H2O -> H+ + U^3+ + SeO3^2-
Cu(NO3)2 + KI -> CuI + I2 + KNO3
P4O6 + O2 -> P4O10
Mn(OH)2 + H2O2 -> MnO2 + H2O
Na2S + Na2CO3 + SO2 -> Na2S2O3 + CO2
Au^3+ + Sn^2+ -> Au + Sn^4+
Er2(CO3)3 + H+ -> Er^3+ + HCO3-
KMnO4 + C3H8O3 -> K2CO3 + Mn2O3 + CO2 + H2O
Ni(OH)2 + OH- -> NiOOH + H2O + e-
Fe2O3 + H2 -> Fe + H2O
Co^2+ + OH- -> Co(OH)2
Cr + HCl -> CrCl2 + H2
Al + CuBr2 -> Cu + AlBr3
PbS + HNO3 -> PbSO4 + NO2 + H2O
S2O4^2- + Ag2O + OH- -> SO3^2- + Ag + H2O
Tb2O3 + H+ -> Tb^3+ + H2O
B2H6 + O2 -> B2O3 + H2O
NO + Cl2 -> NOCl
UBrCl3 -> Br- + U^4+ + Cl-
C10H8 + O2 -> C8H4O3 + CO2 + H2O
As2S5 + HNO3 -> H3AsO4 + S + NO2 + H2O
Sb2O5 + H2O -> O2 + Sb(OH)3
Ca2V2O7.2H2O + H+ -> Ca^2+ + VO2+ + H2O
Al + HCl -> AlCl3 + H2
AgNO3 + AsH3 + H2O -> Ag + H3AsO3 + HNO3
CaSO4 + C -> CaS + CO2
Fe5Al(AlSi3)O10(OH)8 + H+ -> Al^3+ + Fe^2+ + H4SiO4 + H2O
WO3 + H2 -> W + H2O
Zn + Ag+ -> Zn^2+ + Ag+
Fe(CN)6^3- + Cr2O3 + OH- -> Fe(CN)6^4- + CrO4^2- + H2O
SrCl2.6H2O -> Sr^2+ + Cl- + H2O
Mg3Fe2Al2Si3O10(OH)8 + H+ -> Al^3+ + Fe^2+ + Mg^2+ + SiO2 + H2O
[Cr(OH)4]- + e- -> Cr + OH-
HCOOH + CuCO3 + H2O -> Cu(HCOO)2.4H2O + CO2
Co^2+ + e- -> Co
Sr + O2 -> SrO
Sm(OH)3 + H+ -> Sm^3+ + H2O
Fe^3+ + CO3^2- + H2O -> Fe(OH)3 + CO2
Ca2FeAl2Si3O12(OH) + H+ -> Al^3+ + Ca^2+ + Fe^3+ + H4SiO4 + H2O
CS2 + Cl2 -> CCl4 + S2Cl2
BrO3- + N2H4 -> Br- + N2 + H2O
CO2 + C -> CO
Sr(OH)2.8H2O -> SrO + H2O
Sb2O3 + HNO3 -> Sb2O5 + NO2 + H2O
P4 + HNO3 + H2O -> H3PO4 + NO
Cu^2+ + e- -> Cu
C6H5CH3 + O2 -> C6H5CO2H + H2O
HXeO4- + OH- -> XeO6^4- + Xe + O2 + H2O
Na2SiO3 + H+ -> H2O + SiO2 + Na+
As2S3 + NaNO3 + Na2CO3 -> Na3AsO4 + Na2SO4 + NaNO2 + CO2
MnO4- + As4O6 + H2O + H+ -> Mn^2+ + H3AsO4
CrI3 + H2O2 + NaOH -> Na2CrO4 + NaIO4 + H2O
Mn^2+ + IO4- + H2O -> MnO4- + IO3- + H+
Pt^2+ + Cl- -> [PtCl4]^2-
HCHO + NH3 -> C6H12N4 + H2O
Ga + HCl -> GaCl3 + H2
CaCO3 + H3PO4 -> Ca(H2PO4)2 + CO2 + H2O
Ag2S + H+ -> HS- + Ag+
Ba(OH)2.8H2O + NH4SCN -> Ba(SCN)2 + NH3 + H2O
Pb3O2SO4 + H+ -> Pb^2+ + SO4^2- + H2O
KHC8H4O4 + NaOH -> KNaC8H4O4 + H2O
AlHO2 + H+ -> Al^3+ + H2O
UO2 + MnO4- + H+ -> UO2^2+ + Mn^2+ + H2O
Hg^2+ + Cl- -> [HgCl4]^2-
KI + Pb(NO3)2 -> PbI2 + KNO3
FeS2 + FeCl3 + H2O -> FeCl2 + H2SO4 + HCl
SO2 + O2 -> SO3
Fe(OH)2 + e- -> Fe + OH-
2PbCO3.Pb(OH)2 -> PbO + CO2 + H2O
P4O10 + CaO -> Ca3(PO4)2
Al2O3 + N2 + C -> AlN + CO
CuSCN + KIO3 + HCl -> CuSO4 + KCl + HCN + ICl + H2O
Cr + H3PO4 -> CrPO4 + H2
Ag+ + Cl- -> [AgCl2]-
SeCl4 + H2O -> SeO3^2- + Cl- + H+
NiS + e- -> Ni + S^2-
U3Sb4 + H+ + O2 + H2O -> U^3+ + Sb(OH)3
Zn5(OH)6(CO3)2 + HCl -> ZnCl2 + CO2 + H2O
MnO2 + H2O + e- -> MnOOH + OH-
NaCN + Ag2S + O2 + H2O -> Na[Ag(CN)2] + S + NaOH
AgCl + Na2CO3 -> Ag + NaCl + CO2 + O2
N2O5 -> NO2 + O2
NiCO3 + HF -> NiF2 + H2O + CO2
KMnO4 + Na2C2O4 + H2SO4 -> K2SO4 + Na2SO4 + MnSO4 + CO2 + H2O
Ni(SeO3).2H2O -> Ni^2+ + SeO3^2- + H2O
F2 + Ca -> F- + Ca^2+
FeCO3 + O2 -> Fe2O3 + CO2
(Co(NH3)6)(NO3)3 + H+ -> Co^3+ + NH4+ + NO3-
FeCl3 + FeCl2 + NaOH -> Fe3O4 + NaCl + H2O
Cu(NO3)2.3H2O -> CuO + NO2 + O2 + H2O
HNO3 + P2O5 -> N2O5 + HPO3
MnSO4 + (NH4)2S2O8 + H2O -> HMnO4 + (NH4)2SO4 + H2SO4
MgSO4.7H2O + K2SO4 -> K2Mg(SO4)2.6H2O + H2O
Ag + HNO3 -> AgNO3 + NO2 + H2O
Na2HPO4 -> Na4P2O7 + H2O
Pt + HNO3 + HCl -> H2PtCl6 + NO + H2O
K3P + O2 -> K3PO4
Cu(OH)2 + NH3 -> [Cu(NH3)4](OH)2
Al2(SO4)3 + K2SO4 + H2O -> KAl(SO4)2.12H2O
CaCO3 + CO2 + H2O -> Ca^2+ + HCO3-
Zn + NH4+ + MnO2 -> Zn^2+ + Mn2O3 + NH3 + H2O
Al + NH4ClO4 -> Al2O3 + AlCl3 + NO + H2O
Se2O5 + H2O -> SeO3^2- + SeO4^2- + H+
CaCN2 + H2O -> CaCO3 + NH3
Tm2O3 + H+ -> Tm^3+ + H2O
Si + OH- -> SiO4^4- + H2
BaCl2 + K2CrO4 -> BaCrO4 + KCl
S2O3^2- + Cl2 + H2O -> SO4^2- + Cl- + H+
KClO3 -> KCl + O2
Na[Al(OH)4] + H3O+ -> Al(OH)3 + Na+ + H2O
K2Cr2O7 + S -> Cr2O3 + K2SO4
(NH4)2Cr2O7 -> Cr2O3 + H2O + N2
NaCl + H2SO4 -> Na2SO4 + Cl2
(NH4)2SO4 -> NH3 + N2 + SO2 + H2O
Cu(NH3)4^2+ + CN- + H2O -> Cu(CN)3^2- + CNO- + NH3 + NH4+
V^2+ + e- -> V
MnO2 + HCl -> MnCl2 + Cl2
MnO2 + Al -> Mn + Al2O3
Fe + Cl2 -> FeCl3
Cu2S + O2 -> Cu2O + SO2
Al2Si2O5(OH)4 -> Al2O3 + SiO2 + H2O
(NH4)2SO4 + Ca(OH)2 -> NH3 + CaSO4 + H2O
KI + KNO2 + H2SO4 -> I2 + NO + K2SO4 + H2O
NaHCO3 -> Na2CO3 + CO2 + H2O
KO2 + CO2 -> K2CO3 + O2
K2S2O3 + I2 -> K2S4O6 + KI
S + e- -> S^2-
CaAl2O4.10H2O + H+ -> Ca^2+ + Al^3+ + H2O
KMnO4 + FeSO4 + H2SO4 -> K2SO4 + MnSO4 + Fe2(SO4)3 + H2O
Mg2SiO4 + H2O + CO2 -> Mg3Si2O5(OH)4 + MgCO3
HClO -> HCl + O2
ClO3- + H3O+ + e- -> HClO2 + H2O
Ca + H+ + O2 -> Ca^2+ + H2O
H2 + Cl2 -> HCl
Cr2O3 + NaOH + NaNO3 -> Na2CrO4 + NaNO2 + H2O
Sn + HNO3 -> Sn(NO3)2 + NH4NO3 + H2O
(UO2)2P2O7 + H2O -> HPO4^2- + UO2^2+
CrO4^2- + Fe(OH)2 + H2O -> Cr(OH)3 + Fe(OH)3 + OH-
CaAl(AlSi)O6 + H+ -> Al^3+ + Ca^2+ + H4SiO4 + H2O
KMnO4 + H2C2O4 -> MnSO4 + CO2 + H2O + K2SO4
FeSe2 + H2O -> O2 + Fe^3+ + H+ + Se^2-
Pb3O4 + HNO3 -> Pb(NO3)2 + PbO2 + H2O
Cl2 + Na2CO3 + H2O -> NaCl + NaClO + NaHCO3
KAl3(SO4)2(OH)6 -> K2SO4 + Al2O3 + SO3 + H2O
Pb3(VO4)2 + H+ -> Pb^2+ + VO2+ + H2O
Ba(ClO2)2 + H2SO4 -> BaSO4 + HClO2
CO(NH2)2 + HNO2 -> CO2 + N2 + H2O
UCl3F -> F- + U^4+ + Cl-
P4O10 + HNO3 -> N2O5 + HPO3
Zn(OH)2 + e- -> Zn + OH-
MnO2 + H2O + e- -> Mn(OH)2 + OH-
ZrN + H+ + O2 -> H2O + NH3 + Zr^4+
CH3OH + Na2Cr2O7 + H2SO4 -> HCOOH + Cr2(SO4)3 + Na2SO4 + H2O
CaAl2Si2O8 + H2O -> Ca^2+ + Al(OH)4- + H4SiO4
As2S3 + HNO3 + H2O -> H3AsO4 + H2SO4 + NO
Mg2Cl(OH)3.4H2O + H+ -> Cl- + Mg^2+ + H2O
CuSO4.5H2O + Al -> Cu + Al2(SO4)3 + H2O
CrCl3 + H2O2 + NaOH -> Na2CrO4 + NaCl + H2O
HClO3 -> HClO4 + ClO2 + H2O
Mg + HNO3 -> Mg(NO3)2 + N2O + H2O
CaFe(SiO3)2 + H+ -> Ca^2+ + Fe^2+ + H2O + SiO2
FeSe + H+ -> Fe^2+ + HSe-
Zn + Ag3AsO4 + H2SO4 -> AsH3 + Ag + ZnSO4 + H2O
HgS + e- -> Hg + S^2-
ZnO + NaOH + H2O -> Na2[Zn(OH)4]
CaCO3 + SiO2 -> Ca3SiO5 + CO2
[PdCl4]^2- + e- -> Pd + Cl-
PCl3 + H2O -> H3PO3 + HCl
Sr + HBr -> SrBr2 + H2
ReCl5 + H2O -> HReO4 + ReO2 + HCl
C2H2 + O2 -> CO2 + H2O
KClO3 -> KCl
FeTiO3 + HCl + Cl2 -> FeCl3 + TiO2 + H2O
F2 + e- -> F-
Al2(SO4)3 + NaHCO3 -> Al(OH)3 + Na2SO4 + CO2
Na2O + H2O -> NaOH
Cr(OH)3 + H2O2 + OH- -> CrO4^2- + H2O
SiO2 + HF -> H2SiF6 + H2O
MnO4- + H+ + Ag -> Ag+ + MnO2 + H2O
SiCl4 + H2O -> H4SiO4 + HCl
Al2Si2O5(OH)4 -> Al6Si2O13 + SiO2 + H2O
I2 + HClO + H2O -> HIO3 + HCl
NaFe3(SO4)2(OH)6 + H+ -> Na+ + SO4^2- + Fe^3+ + H2O
KMg3AlSi3O10(OH)2 + H+ -> K+ + Mg^2+ + Al^3+ + H4SiO4
NaCl + NH3 + CO2 + H2O -> NaHCO3 + NH4Cl
Cu3(CO3)2(OH)2 -> CuO + CO2 + H2O
Na2SO4.10H2O + CaCl2 -> CaSO4.2H2O + NaCl + H2O
Sb2S3 + O2 -> Sb2O4 + SO2
C6H12 + O2 -> CO2 + H2O
Fe^2+ + O2 + H2O -> FeOOH + H+
PCl5 + H2O -> H3PO4 + HCl
UCl2 + O2 -> UO2^2+ + Cl-
H3O+ + OH- -> H2O
Fe + O2 -> Fe2O3
Bi(OH)3 + SnO2^2- -> Bi + SnO3^2- + H2O
AgCl + CN- -> [Ag(CN)2]- + Cl-
TiC + H2O + O2 -> H+ + HCO3- + Ti(OH)4
UBr + O2 -> Br- + UO2+
Ca^2+ + PO4^3- + H2O -> Ca5(PO4)3OH + H+
CrO5 + H2SO4 -> Cr2(SO4)3 + O2 + H2O
Pb2O(N3)2 + H+ -> H2O + N3- + Pb^2+
UCl5 + H2O -> UO2+ + H+ + Cl-
LiOH + CO2 -> Li2CO3 + H2O
KClO3 + I2 + H2O -> KIO3 + HCl + HIO3
Th^4+ + e- -> Th
AgNO3 + NH3 + H2O -> [Ag(NH3)2]OH + NH4NO3
H5IO6 + Mn^2+ -> MnO4- + IO3- + H+ + H2O
MgHPO4.3H2O -> Mg^2+ + H+ + PO4^3- + H2O
Fe5AlAlSi3O10(OH)8 + H+ -> Al^3+ + SiO2 + Fe^2+ + H2O
MnO4- + HSO3- + H+ -> Mn^2+ + SO4^2- + H2O
Fe^3+ + S2O3^2- -> Fe^2+ + S4O6^2-
Ag + H2S + O2 -> Ag2S + H2O
AgVO3 + H+ -> Ag+ + VO2+ + H2O
H3PO4 + H+ + e- -> P4 + H2O
CaSiO3 + HF -> CaF2 + SiF4 + H2O
MoO2 + H2O -> H+ + e- + MoO4^2-
B2H6 + H2O -> B(OH)3 + H2
SiH4 + O2 -> SiO2 + H2O
NaHCO3 + Ca(H2PO4)2 -> Ca3(PO4)2 + Na2HPO4 + CO2 + H2O
Al + NaNO3 + NaOH + H2O -> NaAlO2 + NH3
Na2SiF6 + K -> KF + NaF + Si
Ti^2+ + e- -> Ti
CH3COONa + NaOH -> CH4 + Na2CO3
CaCl2 + Na3PO4 -> Ca3(PO4)2 + NaCl
PbS + PbSO4 -> Pb + SO2
KBrO3 + KBr + HCl -> Br2 + KCl + H2O
Br2 + e- -> Br-
H2S + I2 -> HI + S
BaCO3 + C -> BaO + CO
NaH2PO4 -> (NaPO3)3 + H2O
NaClO -> NaCl + NaClO3
NH3 + O2 -> N2O + H2O
Al + Fe2O3 -> Al2O3 + FeO
Cd^2+ + NH3 -> [Cd(NH3)4]^2+
UO4Na2 + H+ -> Na+ + UO2^2+ + H2O
CO2 + H+ + e- -> C2H5OH + H2O
I2 + H2O2 -> HIO3 + H2O
MnO4- + CN- + H2O -> MnO2 + CNO- + OH-
Na3(CO3)(HCO3)(H2O)2 -> Na2CO3 + H2O + CO2
NaHCO3 + Na2H2P2O7 -> Na4P2O7 + CO2 + H2O
CoSO4.7H2O + NaHCO3 -> Co(OH)2.CoCO3 + Na2SO4 + CO2 + H2O
NaHCO3 + NaH2PO4 -> Na3PO4 + CO2 + H2O
Ba(OH)2 + HNO3 -> Ba(NO3)2 + H2O
C6H8O7 + CaCO3 + H2O -> Ca3(C6H5O7)2.4H2O + CO2
FeS + HNO3 -> Fe(NO3)3 + S + NO2 + H2O
Hf^4+ + e- -> Hf
Na2S2O3.5H2O -> Na2S2O3 + H2O
CS2 + NaOH -> Na2CS3 + Na2CO3 + H2O
Cr -> Cr^3+ + e-
Fe(NO3)3.9H2O -> Fe2O3 + NO2 + O2 + H2O
F2 + H2O -> HF + O2
C2H5OH + CrO3 + H2SO4 -> CH3CHO + Cr2(SO4)3 + H2O
P4 + OH- + H2O -> H2PO2- + PH3
Zn + O2 -> ZnO
MoSe2 + H2O + O2 -> MoO4^2- + Se^2- + H+
Al2S3 + H2O -> Al(OH)3 + H2S
Br2 + OH- -> BrO3- + Br- + H2O
Na3VO4 + H+ -> Na+ + VO2+ + H2O
KOH + O3 -> KO3 + O2 + H2O
Sr + H2O -> Sr(OH)2 + H2
Al2(SO4)3 + Ca(OH)2 -> Al(OH)3 + CaSO4
H2S + SO2 -> S + H2O
CO + O2 -> CO2
P4O6 + H2O -> H3PO3
H2C2O4.2H2O + NaOH -> Na2C2O4 + H2O
C6H8O7 + MgCO3 + H2O -> Mg3(C6H5O7)2.9H2O + CO2
Mn^2+ + S2O8^2- + H2O -> MnO4- + SO4^2- + H+
K2Cr2O7 + KOH -> K2CrO4 + H2O
CaCl2 + AgNO3 -> Ca(NO3)2 + AgCl
LiAlSi2O6 + H+ -> Al^3+ + Li+ + H2O + SiO2
Au^3+ + e- -> Au
HgO -> Hg + O2
[PtCl6]^2- + e- -> [PtCl4]^2- + Cl-
H3PO4 + KOH -> K2HPO4 + H2O
FeS2 + HNO3 + HCl -> FeCl3 + H2SO4 + NO + H2O
KClO3 + H2C2O4 -> K2CO3 + CO2 + ClO2 + H2O
Bi2S3 + O2 -> Bi2O3 + SO2
Al(OH)3 + H+ -> Al^3+ + H2O
O^2- + H2O -> OH-
Cl2 + H2O -> O2 + Cl- + H+
K[Ag(CN)2] + Zn -> Ag + Zn(CN)2 + KCN
K2Cr2O7 + SnCl2 + HCl -> CrCl3 + SnCl4 + KCl + H2O
NH4+ + OH- -> NH3 + H2O
Fe^2+ + e- -> Fe
Fe3O4 + Al -> Fe + Al2O3
RuO4 + HCl -> RuCl3 + Cl2 + H2O
P4 + NaOH -> NaH2PO2 + PH3
Na2S2O3 + I2 -> Na2S4O6 + KI
SCN- + IO3- + H+ -> SO4^2- + HCN + I2 + H2O
NO2 + NaOH -> NaNO3 + NaNO2 + H2O
Cu^2+ + NH3 -> [Cu(NH3)4]^2+
CrO4^2- + H+ -> Cr2O7^2- + H2O
C2H4 + O2 -> CO2 + H2O
NaF + SiF4 -> Na2SiF6
SOCl2 + H2O -> SO2 + HCl
CaCO3 + CH3COOH -> Ca(CH3COO)2 + CO2 + H2O
CuO + CO2 + H2O -> Cu2CO3(OH)2
FeS + O2 -> Fe2O3 + SO2
SrCl2.6H2O + Na2CO3 -> SrCO3 + NaCl + H2O
Fe3(OH)8 + H+ -> Fe^3+ + Fe^2+ + H2O
MnO2 + KOH + O2 -> K2MnO4 + H2O
H3BO3 + CH3OH -> B(OCH3)3 + H2O
XeF4 + H2O -> Xe + XeO3 + O2 + HF
H2 + F2 -> HF
NH4NO3 -> N2 + O2 + H2O
`
  .trim()
  .split("\n");

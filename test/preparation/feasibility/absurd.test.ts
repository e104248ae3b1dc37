// Reactions that a generator writes and no bench does: none may be said to go. Reasons from memory: the series of metals,
// solubility products, acid strengths, what does not exist in water. The first list is refused by the plan.
import { doesItGo, tryPlanPreparation } from "preparative";
import { describe, expect, it } from "vitest";

type Row = readonly [equation: string, product: string];

/** Nothing of it forms. */
const REFUSED: readonly Row[] = [
  // noble metals and hydrogen
  ["Cu + HCl -> CuCl2 + H2", "CuCl2"],
  ["Cu + H2SO4 -> CuSO4 + H2", "CuSO4"],
  ["Cu + CH3COOH -> Cu(CH3COO)2 + H2", "Cu(CH3COO)2"],
  ["Ag + HCl -> AgCl + H2", "AgCl"],
  ["Ag + H2SO4 -> Ag2SO4 + H2", "Ag2SO4"],
  ["Bi + HCl -> BiCl3 + H2", "BiCl3"],
  ["Cu + HNO3 -> Cu(NO3)2 + H2", "Cu(NO3)2"],
  ["Zn + HNO3 -> Zn(NO3)2 + H2", "Zn(NO3)2"],
  ["Al + HNO3 -> Al(NO3)3 + H2", "Al(NO3)3"],
  ["Cu + H2O -> CuO + H2", "CuO"],
  // displacement uphill
  ["Cu + FeSO4 -> CuSO4 + Fe", "CuSO4"],
  ["Cu + ZnSO4 -> CuSO4 + Zn", "CuSO4"],
  ["Ag + CuSO4 -> Ag2SO4 + Cu", "Ag2SO4"],
  ["Fe + ZnSO4 -> FeSO4 + Zn", "FeSO4"],
  ["Zn + MgSO4 -> ZnSO4 + Mg", "ZnSO4"],
  ["Cu + NiCl2 -> CuCl2 + Ni", "CuCl2"],
  ["Pb + ZnCl2 -> PbCl2 + Zn", "PbCl2"],
  ["Zn + Na2SO4 -> ZnSO4 + Na", "ZnSO4"],
  // compounds that water does not let be
  ["FeCl3 + Na2CO3 -> Fe2(CO3)3 + NaCl", "Fe2(CO3)3"],
  ["AlCl3 + Na2CO3 -> Al2(CO3)3 + NaCl", "Al2(CO3)3"],
  ["Al2(SO4)3 + NaHCO3 -> Al2(CO3)3 + Na2SO4 + CO2 + H2O", "Al2(CO3)3"],
  ["CrCl3 + Na2CO3 -> Cr2(CO3)3 + NaCl", "Cr2(CO3)3"],
  ["KAl(SO4)2 + K2CO3 -> Al2(CO3)3 + K2SO4", "Al2(CO3)3"],
  ["SnCl4 + Na2CO3 -> Sn(CO3)2 + NaCl", "Sn(CO3)2"],
  ["SnCl2 + Na2CO3 -> SnCO3 + NaCl", "SnCO3"],
  ["CrCl3 + Na2S -> Cr2S3 + NaCl", "Cr2S3"],
  ["AlCl3 + Na2SO3 -> Al2(SO3)3 + NaCl", "Al2(SO3)3"],
  ["FeCl3 + Na2S -> Fe2S3 + NaCl", "Fe2S3"],
  ["CuSO4 + KI -> CuI2 + K2SO4", "CuI2"],
  ["FeCl3 + KI -> FeI3 + KCl", "FeI3"],
  ["MgSO4 + Na2S -> MgS + Na2SO4", "MgS"],
  ["ZnSO4 + Na2SO4 + H2O -> Na2Zn(SO4)2·6H2O", "Na2Zn(SO4)2·6H2O"],
  ["FeSO4 + Na2SO4 + H2O -> Na2Fe(SO4)2·6H2O", "Na2Fe(SO4)2·6H2O"],
  // insoluble oxides and hydroxides as precipitants
  ["NiO + MgCl2 + H2O -> Mg(OH)2 + NiCl2", "Mg(OH)2"],
  ["CuO + MgSO4 + H2O -> Mg(OH)2 + CuSO4", "Mg(OH)2"],
  ["Fe2O3 + CuSO4 + H2O -> Cu(OH)2 + Fe2(SO4)3", "Cu(OH)2"],
  ["NiO + CaCl2 + H2O -> Ca(OH)2 + NiCl2", "Ca(OH)2"],
  ["CuO + NaCl + H2O -> CuCl2 + NaOH", "CuCl2"],
  ["Fe(OH)3 + NaCl -> FeCl3 + NaOH", "FeCl3"],
  // a solid stays what it is
  ["CaCO3 + Na2SO4 -> CaSO4 + Na2CO3", "CaSO4"],
  ["CaCO3 + NaCl -> CaCl2 + Na2CO3", "CaCl2"],
  ["CaCO3 + NaOH -> Ca(OH)2 + Na2CO3", "Ca(OH)2"],
  ["BaSO4 + HCl -> BaCl2 + H2SO4", "BaCl2"],
  ["BaSO4 + NaCl -> BaCl2 + Na2SO4", "BaCl2"],
  ["BaSO4 + HNO3 -> Ba(NO3)2 + H2SO4", "Ba(NO3)2"],
  ["AgCl + HNO3 -> AgNO3 + HCl", "AgNO3"],
  ["AgCl + NaNO3 -> AgNO3 + NaCl", "AgNO3"],
  ["CaC2O4 + CH3COOH -> Ca(CH3COO)2 + H2C2O4", "Ca(CH3COO)2"],
  ["CaCO3 + NH4Cl -> CaCl2 + (NH4)2CO3", "CaCl2"],
  ["MgCO3 + Na2SO4 -> MgSO4 + Na2CO3", "MgSO4"],
  // the acid set free dissolves it
  ["CaCl2 + CO2 + H2O -> CaCO3 + HCl", "CaCO3"],
  ["CuSO4 + CO2 + H2O -> CuCO3 + H2SO4", "CuCO3"],
  ["MgCl2 + CO2 + H2O -> MgCO3 + HCl", "MgCO3"],
  ["BaCl2 + CO2 + H2O -> BaCO3 + HCl", "BaCO3"],
  ["CaCl2 + H3PO4 -> Ca3(PO4)2 + HCl", "Ca3(PO4)2"],
  ["CaCl2 + H3PO4 -> CaHPO4 + HCl", "CaHPO4"],
  ["MgSO4 + H3PO4 -> Mg3(PO4)2 + H2SO4", "Mg3(PO4)2"],
  ["FeSO4 + H2S -> FeS + H2SO4", "FeS"],
  // a weak acid from the salt of a strong one
  ["CuSO4 + CH3COOH -> Cu(CH3COO)2 + H2SO4", "Cu(CH3COO)2"],
  ["NaCl + CH3COOH -> CH3COONa + HCl", "CH3COONa"],
  ["Na2SO4 + CH3COOH -> CH3COONa + H2SO4", "CH3COONa"],
  ["KNO3 + H3BO3 -> KH2BO3 + HNO3", "KH2BO3"],
  ["NaCl + H2C2O4 -> Na2C2O4 + HCl", "Na2C2O4"],
  ["NaCl + CO2 + H2O -> NaHCO3 + HCl", "NaHCO3"],
  // the same of an acid salt, and a strong acid from another where both salts stay dissolved; sodium and potassium chloride and
  // sulfuric acid stop at the acid sulfate below red heat (the first step of the salt cake process)
  ["NaHCO3 + NaCl -> Na2CO3 + HCl", "Na2CO3"],
  ["NaHCO3 + NaNO3 -> Na2CO3 + HNO3", "Na2CO3"],
  ["NaH2PO4 + NaCl -> Na2HPO4 + HCl", "Na2HPO4"],
  ["NaCl + H2SO4 -> Na2SO4 + HCl", "Na2SO4"],
  ["KNO3 + H2SO4 -> K2SO4 + HNO3", "K2SO4"],
  ["NaNO3 + HCl -> NaCl + HNO3", "HNO3"],
  // a sparing solid dissolves a little, as in water by itself, and nothing else comes of it
  ["CaSO4 + NaCl -> CaCl2 + Na2SO4", "CaCl2"],
  ["CaSO4 + NH4Cl -> CaCl2 + (NH4)2SO4", "(NH4)2SO4"],
  ["MgCO3 + NaCl -> MgCl2 + Na2CO3", "MgCl2"],
  ["Ca(OH)2 + NaCl -> CaCl2 + NaOH", "NaOH"],
  // fired oxides in acids that do not take them
  ["SiO2 + HCl -> SiCl4 + H2O", "SiCl4"],
  ["TiO2 + HCl -> TiCl4 + H2O", "TiCl4"],
  ["SnO2 + HCl -> SnCl4 + H2O", "SnCl4"],
  ["Cr2O3 + CH3COOH -> Cr(CH3COO)3 + H2O", "Cr(CH3COO)3"],
  ["Fe2O3 + CH3COOH -> Fe(CH3COO)3 + H2O", "Fe(CH3COO)3"],
  ["Al2O3 + CH3COOH -> Al(CH3COO)3 + H2O", "Al(CH3COO)3"],
  ["NiO + CH3COOH -> Ni(CH3COO)2 + H2O", "Ni(CH3COO)2"],
  // too little hydroxide for a strong base
  ["CaCl2 + NH3 + H2O -> Ca(OH)2 + NH4Cl", "Ca(OH)2"],
  ["MgSO4 + NH4Cl + H2O -> Mg(OH)2 + (NH4)2SO4 + HCl", "Mg(OH)2"],
];

/** Something else forms, or little of it. */
const NOT_AS_WRITTEN: readonly Row[] = [
  ["KNO3 + NaCl -> NaNO3 + KCl", "NaNO3"],
  ["KNO3 + NaCl -> NaNO3 + KCl", "KCl"],
  ["K2SO4 + NaCl -> Na2SO4 + KCl", "Na2SO4"],
  ["CuSO4 + NaHCO3 -> CuCO3 + Na2SO4 + CO2 + H2O", "CuCO3"],
  ["CuSO4 + Na2CO3 -> CuCO3 + Na2SO4", "CuCO3"],
  ["ZnSO4 + Na2CO3 -> ZnCO3 + Na2SO4", "ZnCO3"],
  ["NiSO4 + Na2CO3 -> NiCO3 + Na2SO4", "NiCO3"],
  ["CuO + ZnSO4 + H2O -> Zn(OH)2 + CuSO4", "Zn(OH)2"],
  ["AgNO3 + NaF -> AgF + NaNO3", "AgF"],
  ["Al(NO3)3 + NaF -> AlF3 + NaNO3", "AlF3"],
  ["Al(OH)3 + CuSO4 -> Cu(OH)2 + Al2(SO4)3", "Cu(OH)2"],
  ["ZnO + CaCl2 + H2O -> Ca(OH)2 + ZnCl2", "Ca(OH)2"],
  ["PbO + NaCl + H2O -> PbCl2 + NaOH", "PbCl2"],
  // two solids in one powder
  ["Pb + CuSO4 -> PbSO4 + Cu", "Cu"],
  // a film of hydroxide
  ["Mg + H2O -> Mg(OH)2 + H2", "Mg(OH)2"],
  ["Al(OH)3 + CH3COOH -> Al(CH3COO)3 + H2O", "Al(CH3COO)3"],
];

describe("what no bench does", () => {
  it.each(REFUSED)("%s is refused", (equation, product) => {
    const f = doesItGo({ equation, product });
    expect(f.verdict).toBe("does not go");
    expect(f.reasons[0]!.text).not.toBe("");
    const materials = equation
      .split(" -> ")[0]!
      .split(" + ")
      .filter((form) => form !== "H2O" && form !== "CO2" && form !== "H2S")
      .map((form) => ({ name: form, form }));
    const plan = tryPlanPreparation({ equation, product, materials, scale: { product: "0.05 mol" } });
    expect(!plan.ok && plan.error.code).toBe("plan.does-not-go");
  });

  it.each(NOT_AS_WRITTEN)("%s does not simply go (%s)", (equation, product) => {
    expect(doesItGo({ equation, product }).verdict).toMatch(/another solid forms|goes in part/);
  });
});

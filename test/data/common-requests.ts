// Preparations that several tests read.
import type { PlanRequest } from "../../src/preparation";

/** Potash alum from foil: lye in excess first, then acid. */
export const FOIL_ALUM: PlanRequest = {
  equation: "Al + KOH + H2SO4 + H2O -> KAl(SO4)2·12H2O + H2",
  product: "KAl(SO4)2·12H2O",
  materials: [
    { name: "aluminium foil", form: "Al" },
    { name: "caustic potash", form: "KOH", assay: "85 %", excess: "20 %" },
    { name: "sulfuric acid", form: "H2SO4", strength: "96 %" },
  ],
  scale: { material: "aluminium foil", portion: "5.00 g" },
};

/** Prussian blue: a gel, a cyanide, and water that no formula fixes. */
export const PRUSSIAN_BLUE: PlanRequest = {
  equation: "FeCl3 + K4[Fe(CN)6] -> Fe4[Fe(CN)6]3 + KCl",
  product: "Fe4[Fe(CN)6]3",
  materials: [
    { name: "ferric chloride", form: "FeCl3·6H2O" },
    { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O" },
  ],
  scale: { material: "ferric chloride", portion: "21.6 g" },
};

/** A precipitate that light changes, from a thin solution. */
export const SILVER_CHLORIDE: PlanRequest = {
  equation: "AgNO3 + NaCl -> AgCl + NaNO3",
  product: "AgCl",
  materials: [
    { name: "silver nitrate solution", form: "AgNO3", strength: "0.100 mol/L" },
    { name: "table salt", form: "NaCl", excess: "10 %" },
  ],
  scale: { material: "silver nitrate solution", portion: "250 mL" },
};

/** A metal that starts late in its acid, and a salt of several hydrates. */
export const COPPER_NITRATE: PlanRequest = {
  equation: "Cu + HNO3 -> Cu(NO3)2 + NO + H2O",
  product: "Cu(NO3)2·3H2O",
  materials: [
    { name: "copper turnings", form: "Cu" },
    { name: "nitric acid", form: "HNO3", strength: "30 %", excess: "5 %" },
  ],
  scale: { material: "copper turnings", portion: "6.35 g" },
};

/** An ammine, that heat takes apart. */
export const AMMINE: PlanRequest = {
  equation: "NiCl2 + NH3 -> [Ni(NH3)6]Cl2",
  product: "[Ni(NH3)6]Cl2",
  materials: [
    { name: "nickel chloride", form: "NiCl2·6H2O" },
    { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
  ],
  scale: { product: "20 g" },
};

/** A complex whose plain salt hardly dissolves. */
export const BLUE_COMPLEX: PlanRequest = {
  equation: "CuSO4 + K2C2O4 + H2O -> K2[Cu(C2O4)2]·2H2O + K2SO4",
  product: "K2[Cu(C2O4)2]·2H2O",
  materials: [
    { name: "blue vitriol", form: "CuSO4·5H2O" },
    { name: "potassium oxalate", form: "K2C2O4·H2O" },
  ],
  scale: { product: "15 g" },
};

/** A metal that only warm strong acid takes, and a salt that water makes basic. */
export const TIN_SALT: PlanRequest = {
  equation: "Sn + HCl + H2O -> SnCl2·2H2O + H2",
  product: "SnCl2·2H2O",
  materials: [
    { name: "granulated tin", form: "Sn", excess: "10 %" },
    { name: "hydrochloric acid", form: "HCl", strength: "30 %" },
  ],
  scale: { product: "30 g" },
};

/** A salt that loses its acid as it is boiled down. */
export const ZINC_ACETATE: PlanRequest = {
  equation: "ZnO + CH3COOH + H2O -> Zn(CH3COO)2·2H2O",
  product: "Zn(CH3COO)2·2H2O",
  materials: [
    { name: "zinc white", form: "ZnO" },
    { name: "acetic acid", form: "CH3COOH", strength: "60 %", excess: "5 %" },
  ],
  scale: { product: "40 g" },
};

/** A nitrate that takes water from the air, and of which nearly all crystallises. */
export const CALCIUM_NITRATE: PlanRequest = {
  equation: "CaCO3 + HNO3 + H2O -> Ca(NO3)2·4H2O + CO2",
  product: "Ca(NO3)2·4H2O",
  materials: [
    { name: "chalk", form: "CaCO3", excess: "5 %" },
    { name: "nitric acid", form: "HNO3", strength: "30 %" },
  ],
  scale: { product: "50 g" },
};

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

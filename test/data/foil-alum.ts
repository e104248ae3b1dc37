// Potash alum from foil: lye in excess first, then acid. Read by several tests.
import type { PlanRequest } from "../../src/preparation";

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

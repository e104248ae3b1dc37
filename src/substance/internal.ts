// What the layers above use of this one and callers do not see.
export { HOLDS_CYANIDE } from "./data/hazard-classes";
export { type HazardClass, INCOMPATIBILITIES } from "./data/incompatibilities";
export type { OfficialPrecaution } from "./data/official-precautions";
export { cite, substanceSources } from "./data/sources";
export { cautionsWhere } from "./hazards/cautions";
export { classesOf } from "./hazards/classes";
export { protectionFor } from "./hazards/entries";
export { madeOf } from "./hazards/make-up";
export { type DangerousProduct, dangerOf } from "./hazards/never-made";
export { officialPrecautions, officialText } from "./names/official-text";
export { formulasMeant } from "./names/readings";
export { registryFormulas } from "./registry/registry-index";
export { thermalOf, thermalRows, thermalStepsOf } from "./registry/thermal";
export { formulasSoldAs } from "./shop/shop";

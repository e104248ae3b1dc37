// What the layers above use of this one and callers do not see.
export { HOLDS_CYANIDE } from "./data/hazard-classes";
export { INCOMPATIBILITIES } from "./data/incompatibilities";
export { substanceSources } from "./data/sources";
export { cautionsWhere } from "./hazards/cautions";
export { makeUpOf } from "./hazards/make-up";
export { type DangerousProduct, dangerOf } from "./hazards/never-made";
export { thermalOf } from "./registry/thermal";
export { formulasSoldAs } from "./shop/shop";

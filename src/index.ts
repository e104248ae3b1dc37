// The whole library, re-exported layer by layer, lowest first. Each layer is also a subpath of the package.
export * from "./amount";
export * from "./aqueous";
export * from "./element";
export * from "./equation";
export * from "./formula";
export * from "./foundation";
export * from "./hydrate";
export * from "./ion";
export type { Recorded } from "./json";
export { fromJSON, tryFromJSON } from "./json";
export * from "./preparation";
export * from "./quantity";
export * from "./sheet";
export * from "./solubility";
export type { SourceKey } from "./sources";
export { cite, source, sourceKeys } from "./sources";
export * from "./substance";
export * from "./thermochemistry";

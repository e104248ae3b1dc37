// The whole library, re-exported layer by layer, lowest first. Each layer is also a subpath of the package.

export * from "./equation";
export * from "./formula";
export * from "./foundation";
export * from "./quantity";
export * from "./substance";

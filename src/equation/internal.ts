// What the layers above use of this one and callers do not see.
export { sealed } from "./equation";
export { inWater } from "./ionic/ions";
export { isNonmetal, signed } from "./oxidation/rules";
export { isHalfReactions } from "./working";
export { asWritten, type Written } from "./written";

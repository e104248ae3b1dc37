// What the layers above use of this one and callers do not see.
export { byDryRatio, byElements, elementsIn, symbolsIn } from "./by-elements";
export { isWater, joined, numberText, splitWater } from "./crystal-water";
export { asFormula, parseFormulaAt, withRemarks } from "./formula";
export { withoutPhase } from "./phase";
export { DOTS, FRACTIONS } from "./read/characters";
export { hasMarkup, plainText } from "./read/markup";
export { plainAtoms } from "./read/plain";
export type { Ratio } from "./read/ratio";
export { hasDigitsBeforeSign } from "./read/remarks";

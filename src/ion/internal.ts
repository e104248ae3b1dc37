// What the layers above use of this one and callers do not see.
export { ACID_STEPS, type AcidStepRow, WATER_IONIZATION } from "./data/acid-steps";
export { ELEMENT_WORDS, type ElementCharges, type ElementWord } from "./data/element-words";
export { ANIONS, CATIONS, ION_FIELD_SOURCES, MONATOMIC_COLOURS } from "./data/ions";
export type { SolubilityClass } from "./data/rules";
export { ionSources } from "./data/sources";
export { acidOfAnion, acidText, isHydrogenAnion } from "./hydrogen";
export { allIons, elementCharges, HYDROGENS, type Ion, ionsAs, ionText, isCationElement } from "./ion-index";
export { bareIon, chargedText, chargeOfIon, elementOfIon, isComplexIon, isMetalCation, saltFormula } from "./ion-text";
export { anhydrousKey, formulaKey, isOneOf } from "./keys";
export type { CationUse } from "./metal-charges";
export {
  atomsIn,
  compositionKey,
  countsOf,
  elementOfAtom,
  isWater,
  type Notation,
  type Part,
  readNotation,
  showsAcidGroup,
  textOf,
  tryReadNotation,
  type Unit,
  unitsText,
} from "./notation";
export { ALKALI, REACTS_WITH_WATER, ruleFor } from "./rules";
export { acidOf, type Salt, saltOf } from "./salt-readings";

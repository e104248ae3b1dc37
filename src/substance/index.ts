// Substance: names, forms on the shelf, what heat does, cautions.
export type { CautionOptions, Cautions, MaterialOfStrength, NotRead, Statement, SubstanceCautions } from "./cautions";
export { cautions, tryCautions } from "./cautions";
export type { Circumstance, Condition as MeetingCondition } from "./data/incompatibilities";
export type { StatedAssay } from "./data/shop-materials";
export type { StatementRow } from "./data/statements";
export type { ThermalAmount } from "./data/thermal-steps";
export type { SubstanceErrorCode } from "./error";
export { SubstanceError } from "./error";
export { formulaOf, tryFormulaOf } from "./formula-of";
export type { Incompatibility } from "./incompatibility";
export type { IonEntry } from "./ion";
export { ion, ions, tryIon } from "./ion";
export { nameOf, namesOf, tryNameOf, tryNamesOf } from "./name-of";
export type { NameReading, ReadingOptions } from "./readings";
export { readingsOf, tryReadingsOf } from "./readings";
export type { NameStyle } from "./salt-name";
export type { SearchHit, SearchOptions } from "./search";
export { search, trySearch } from "./search";
export type { ShopCandidate, ShopMaterial, TextRange } from "./shop";
export { shopMaterial, tryShopMaterial } from "./shop";
export type { StatementEntry } from "./statement";
export { statementOf, tryStatementOf } from "./statement";
export type { PhaseChange, SubstanceRecord, SubstanceSources } from "./substance";
export { Substance, substance, substanceFromJSON, trySubstance, trySubstanceFromJSON } from "./substance";
export type { FormMarks, PricedPack, ShelfForm } from "./tell-apart";
export {
  asShelfMaterial,
  pricePerMole,
  tellApart,
  tryAsShelfMaterial,
  tryPricePerMole,
  tryTellApart,
  usualStrength,
} from "./tell-apart";
export type { ThermalStep } from "./thermal";

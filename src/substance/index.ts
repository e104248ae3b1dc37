// Substance: names, forms on the shelf, what heat does, cautions.

export type { Circumstance, Condition as MeetingCondition } from "./data/incompatibilities";
export type { StatedAssay } from "./data/shop-materials";
export type { StatementRow } from "./data/statements";
export type { ThermalAmount } from "./data/thermal-steps";
export type { SubstanceErrorCode } from "./error";
export { SubstanceError } from "./error";
export type { MaterialOfStrength } from "./hazards/cautions";
export { cautions, tryCautions } from "./hazards/cautions";
export type { CautionOptions, Cautions, NotRead, Statement, SubstanceCautions } from "./hazards/entries";
export type { FormulaOfStrength } from "./hazards/formula-cautions";
export { cautionsForFormulas, tryCautionsForFormulas } from "./hazards/formula-cautions";
export type { Incompatibility } from "./hazards/incompatibility";
export type { StatementEntry } from "./hazards/statement";
export { statementOf, tryStatementOf } from "./hazards/statement";
export { formulaOf, tryFormulaOf } from "./names/formula-of";
export type { IonEntry } from "./names/ion";
export { ion, ions, tryIon } from "./names/ion";
export { nameOf, namesOf, tryNameOf, tryNamesOf } from "./names/name-of";
export type { NameReading, ReadingOptions } from "./names/readings";
export { readingsOf, tryReadingsOf } from "./names/readings";
export type { NameStyle } from "./names/salt-name";
export type { PhaseChange, SubstanceRecord, SubstanceSources } from "./registry/substance";
export { Substance, substance, substanceFromJSON, trySubstance, trySubstanceFromJSON } from "./registry/substance";
export type { ThermalStep } from "./registry/thermal";
export type { SearchHit, SearchOptions } from "./search/search";
export { search, trySearch } from "./search/search";
export type { ShopCandidate, ShopMaterial, TextRange } from "./shop/shop";
export { shopMaterial, tryShopMaterial } from "./shop/shop";
export type { FormMarks, PricedPack, ShelfForm } from "./shop/tell-apart";
export {
  asShelfMaterial,
  pricePerMole,
  tellApart,
  tryAsShelfMaterial,
  tryPricePerMole,
  tryTellApart,
  usualStrength,
} from "./shop/tell-apart";

// What the layers above use of this one and callers do not see.
export { CONVENTIONS } from "./argument";
export { weightConstant } from "./atomic-weight";
export { periodicTableSources } from "./data/sources";
export { ALKALI_METALS } from "./families";
export { mostAbundant } from "./nuclide";
export { nuclideMass } from "./nuclide-mass";
export {
  ELEMENT_COUNT,
  elementIndexOf,
  elementOf,
  NUCLIDE_BASE,
  nanoWeightTable,
  symbolAt,
  symbolTable,
} from "./symbols";

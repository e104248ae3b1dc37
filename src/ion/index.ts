// Ion: which ions, acids and groups a formula is made of, the same for every way of writing it.
export type { Constitution } from "./constitution";
export { constitutionOf, hasIon, sameSubstance, tryConstitutionOf } from "./constitution";
export type { AcidHydrogen, Constituent, ConstituentIon, ConstitutionKind } from "./content";

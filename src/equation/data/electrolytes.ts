// What falls apart into ions in water: strong acids and bases, and the solubility rules for salts. The rules are the
// classroom rules (common practice, no single source); measured solubilities belong to the solubility room.
import type { SourceKey } from "../../foundation/bibliography";

/** An acid that is fully dissociated in dilute water. */
export interface StrongAcidRow {
  readonly formula: string;
  /** The anion left when all its hydrogen has gone as H+. */
  readonly anion: string;
  readonly hydrogens: number;
  readonly source: SourceKey;
}

export const STRONG_ACIDS: readonly StrongAcidRow[] = [
  { formula: "HCl", anion: "Cl-", hydrogens: 1, source: "commonPractice" },
  { formula: "HBr", anion: "Br-", hydrogens: 1, source: "commonPractice" },
  { formula: "HI", anion: "I-", hydrogens: 1, source: "commonPractice" },
  { formula: "HNO3", anion: "NO3-", hydrogens: 1, source: "commonPractice" },
  { formula: "H2SO4", anion: "SO4^2-", hydrogens: 2, source: "commonPractice" },
  { formula: "HClO3", anion: "ClO3-", hydrogens: 1, source: "commonPractice" },
  { formula: "HClO4", anion: "ClO4-", hydrogens: 1, source: "commonPractice" },
  { formula: "HBrO3", anion: "BrO3-", hydrogens: 1, source: "commonPractice" },
  { formula: "HMnO4", anion: "MnO4-", hydrogens: 1, source: "commonPractice" },
  { formula: "H2CrO4", anion: "CrO4^2-", hydrogens: 2, source: "commonPractice" },
  { formula: "H2Cr2O7", anion: "Cr2O7^2-", hydrogens: 2, source: "commonPractice" },
  { formula: "H2SeO4", anion: "SeO4^2-", hydrogens: 2, source: "commonPractice" },
  { formula: "HBF4", anion: "BF4-", hydrogens: 1, source: "commonPractice" },
  { formula: "H2SiF6", anion: "SiF6^2-", hydrogens: 2, source: "commonPractice" },
  { formula: "HAuCl4", anion: "AuCl4-", hydrogens: 1, source: "commonPractice" },
  { formula: "H2PtCl6", anion: "PtCl6^2-", hydrogens: 2, source: "commonPractice" },
];

/** One solubility rule: an anion, and whether its salts dissolve, with the cations that are otherwise. */
export interface SolubilityRuleRow {
  readonly anions: readonly string[];
  readonly soluble: boolean;
  /** Cations for which the rule is reversed. */
  readonly except: readonly string[];
  readonly source: SourceKey;
}

/** Cations whose salts all dissolve, whatever the anion. */
export const ALWAYS_SOLUBLE: readonly string[] = ["Li+", "Na+", "K+", "Rb+", "Cs+", "NH4+", "N2H5+", "NH3OH+", "H3O+"];

/** Anions that water does not leave as they are: their salts react with it rather than dissolve, and are kept whole. */
export const NOT_IN_WATER: readonly string[] = ["O^2-", "O2^2-", "O2^-", "O3^-", "N^3-", "P^3-", "H-"];

export const SOLUBILITY_RULES: readonly SolubilityRuleRow[] = [
  {
    anions: ["NO3-", "NO2-", "ClO3-", "ClO4-", "BrO3-", "MnO4-", "ClO-", "ClO2-", "BF4-", "SCN-", "CH3COO-", "HCOO-"],
    soluble: true,
    except: ["SCN- Ag+", "SCN- Cu+", "SCN- Pb^2+", "SCN- Hg^2+", "SCN- Hg2^2+", "NO2- Ag+", "BrO3- Ag+", "BrO3- Ba^2+"],
    source: "commonPractice",
  },
  {
    anions: [
      "HCO3-",
      "HSO4-",
      "HSO3-",
      "H2PO4-",
      "HC2O4-",
      "H2PO2-",
      "SiF6^2-",
      "PtCl6^2-",
      "AuCl4-",
      "S2O8^2-",
      "S2O6^2-",
      "S4O6^2-",
    ],
    soluble: true,
    except: ["SiF6^2- Ba^2+"],
    source: "commonPractice",
  },
  {
    anions: ["Cl-", "Br-"],
    soluble: true,
    except: ["Ag+", "Pb^2+", "Hg2^2+", "Cu+", "Tl+", "Au+"],
    source: "commonPractice",
  },
  {
    anions: ["I-"],
    soluble: true,
    except: ["Ag+", "Pb^2+", "Hg2^2+", "Hg^2+", "Cu+", "Tl+", "Bi^3+", "Pd^2+"],
    source: "commonPractice",
  },
  {
    anions: ["SO4^2-", "SeO4^2-"],
    soluble: true,
    except: ["Ba^2+", "Sr^2+", "Pb^2+", "Ca^2+", "Hg2^2+", "Ag+", "Ra^2+"],
    source: "commonPractice",
  },
  {
    anions: ["S2O3^2-"],
    soluble: true,
    except: ["Ag+", "Pb^2+", "Ba^2+"],
    source: "commonPractice",
  },
  {
    anions: ["OH-"],
    soluble: false,
    except: ["Ba^2+", "Sr^2+", "Ca^2+", "Tl+"],
    source: "commonPractice",
  },
  {
    anions: ["S^2-", "HS-"],
    soluble: false,
    except: ["Ba^2+", "Sr^2+", "Ca^2+", "Mg^2+"],
    source: "commonPractice",
  },
  {
    anions: ["F-"],
    soluble: false,
    except: ["Ag+", "Hg^2+", "Sn^2+", "Al^3+", "Ni^2+", "Zn^2+"],
    source: "commonPractice",
  },
  {
    anions: ["CrO4^2-"],
    soluble: false,
    except: ["Mg^2+", "Ca^2+"],
    source: "commonPractice",
  },
  {
    anions: [
      "CO3^2-",
      "PO4^3-",
      "HPO4^2-",
      "SO3^2-",
      "C2O4^2-",
      "SiO3^2-",
      "AsO4^3-",
      "AsO3^3-",
      "BO2-",
      "BO3^3-",
      "B4O7^2-",
      "CN-",
      "MoO4^2-",
      "WO4^2-",
      "VO3-",
      "Fe(CN)6^4-",
      "Fe(CN)6^3-",
      "IO3-",
      "C4H4O6^2-",
      "C6H5O7^3-",
    ],
    soluble: false,
    except: ["CN- Hg^2+", "CN- Ba^2+", "CN- Ca^2+", "CN- Sr^2+"],
    source: "commonPractice",
  },
];

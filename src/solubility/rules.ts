// Solubility rules, for salts the table does not hold: rough classes every bench knows, named as rules and never mistaken
// for figures. Common practice, no source; checked by test against the table wherever both speak.
import type { Formula } from "../formula";
import { attempt, type Result } from "../foundation/error";
import { type SaltIons, saltIons } from "./ions";
import { type Solute, soluteOf } from "./solute";

/** Rough solubility near room temperature: over 1, 0.1 to 1, below 0.1 g per 100 g water. */
export type SolubilityClass = "soluble" | "slightly soluble" | "insoluble";

/** What a rule says of a salt. */
export interface SolubilityRule {
  readonly class: SolubilityClass;
  /** The rule in words. */
  readonly rule: string;
  readonly source: "commonPractice";
}

interface Entry {
  readonly anions: readonly string[];
  readonly rule: string;
  readonly class: SolubilityClass;
  readonly except: Readonly<Partial<Record<SolubilityClass, readonly string[]>>>;
}

const ALKALI = ["Li+", "Na+", "K+", "Rb+", "Cs+", "NH4+"];

const RULES: readonly Entry[] = [
  {
    anions: ["NO3-", "NO2-", "ClO3-", "ClO4-", "MnO4-"],
    rule: "nitrates, nitrites, chlorates, perchlorates and permanganates dissolve",
    class: "soluble",
    except: { "slightly soluble": ["Ag+ NO2-"] },
  },
  {
    anions: ["C2H3O2-", "HCO2-"],
    rule: "acetates and formates dissolve, that of silver slightly",
    class: "soluble",
    except: {},
  },
  {
    anions: ["Cl-", "Br-"],
    rule: "chlorides and bromides dissolve, but not those of silver, copper(I), mercury(I) and thallium(I); lead's slightly",
    class: "soluble",
    except: { insoluble: ["Ag+", "Cu+", "Hg2^2+"], "slightly soluble": ["Pb^2+", "Tl+", "Hg^2+ Br-"] },
  },
  {
    anions: ["I-", "SCN-"],
    rule: "iodides and thiocyanates dissolve, but not those of silver, copper(I), lead, mercury and thallium(I)",
    class: "soluble",
    except: { insoluble: ["Ag+", "Cu+", "Hg2^2+", "Hg^2+", "Pb^2+", "Tl+"] },
  },
  {
    anions: ["F-"],
    rule: "fluorides of the alkalis, ammonium, silver and tin(II) dissolve; those of calcium, strontium, barium, magnesium and lead do not",
    class: "slightly soluble",
    except: {
      soluble: ["Na+", "K+", "Rb+", "Cs+", "NH4+", "Ag+", "Sn^2+", "Be^2+"],
      insoluble: ["Ca^2+", "Mg^2+", "Sr^2+", "Pb^2+"],
    },
  },
  {
    anions: ["SO4^2-", "S2O3^2-", "HSO4-", "S2O8^2-", "Cr2O7^2-"],
    rule: "sulfates dissolve, but not those of barium, strontium and lead; those of calcium, silver and mercury(I) slightly",
    class: "soluble",
    except: { insoluble: ["Ba^2+", "Sr^2+", "Pb^2+", "Hg2^2+"], "slightly soluble": ["Ca^2+", "Ag+"] },
  },
  {
    anions: ["CO3^2-", "PO4^3-", "HPO4^2-", "SO3^2-", "AsO4^3-", "SiO3^2-", "P2O7^4-"],
    rule: "carbonates, phosphates, sulfites, arsenates and silicates do not dissolve, except those of the alkalis and ammonium; lithium's slightly",
    class: "insoluble",
    except: {
      soluble: ["Na+", "K+", "Rb+", "Cs+", "NH4+", "Li+ CO3^2-", "Li+ SO3^2-"],
      "slightly soluble": ["Mg^2+ SO3^2-"],
    },
  },
  {
    anions: ["C2O4^2-"],
    rule: "oxalates do not dissolve, except those of the alkalis, ammonium and iron(III)",
    class: "insoluble",
    except: { soluble: [...ALKALI, "Fe^3+", "Al^3+", "Cr^3+"] },
  },
  {
    anions: ["CrO4^2-"],
    rule: "chromates dissolve only with the alkalis, ammonium, magnesium and calcium; strontium's slightly",
    class: "insoluble",
    except: { soluble: [...ALKALI, "Mg^2+", "Ca^2+"], "slightly soluble": ["Sr^2+"] },
  },
  {
    anions: ["OH-", "O^2-"],
    rule: "hydroxides and oxides do not dissolve, except those of the alkalis, barium and strontium; calcium's slightly",
    class: "insoluble",
    except: { soluble: [...ALKALI, "Ba^2+", "Tl+"], "slightly soluble": ["Ca^2+", "Sr^2+"] },
  },
  {
    anions: ["S^2-"],
    rule: "sulfides do not dissolve, except those of the alkalis, ammonium and the alkaline earths",
    class: "insoluble",
    except: { soluble: [...ALKALI, "Ba^2+", "Sr^2+", "Ca^2+", "Mg^2+"] },
  },
  {
    anions: ["HCO3-", "HSO3-", "H2PO4-", "HC2O4-", "HS-"],
    rule: "acid salts dissolve",
    class: "soluble",
    except: {},
  },
];

const ALKALI_RULE: SolubilityRule = {
  class: "soluble",
  rule: "salts of sodium, potassium and ammonium dissolve",
  source: "commonPractice",
};
/** Alkali salts the general rule gets wrong. */
const ALKALI_MISFITS = ["SiF6^2-", "ClO4-", "IO4-", "HC4H4O6-", "F-", "PO4^3-"];

function matches(list: readonly string[] | undefined, cation: string, anion: string): boolean {
  return list !== undefined && (list.includes(cation) || list.includes(`${cation} ${anion}`));
}

function ruleOfIons({ cations, anion }: SaltIons): SolubilityRule | undefined {
  const [first] = cations;
  if (first === undefined) return undefined;
  const alkali = cations.every((ion) => ["Na+", "K+", "NH4+"].includes(ion.formula));
  if (alkali && !ALKALI_MISFITS.includes(anion.formula)) return ALKALI_RULE;
  const entry = RULES.find(({ anions }) => anions.includes(anion.formula));
  if (entry === undefined) return undefined;
  const verdicts = cations.map(({ formula }): SolubilityClass => {
    for (const kind of ["soluble", "slightly soluble", "insoluble"] as const) {
      if (matches(entry.except[kind], formula, anion.formula)) return kind;
    }
    return entry.class;
  });
  // a double salt is as soluble as its less soluble half
  const worst = (["insoluble", "slightly soluble", "soluble"] as const).find((kind) => verdicts.includes(kind))!;
  return { class: worst, rule: entry.rule, source: "commonPractice" };
}

/** @internal The rule for a solute already read. */
export function ruleFor(solute: Solute): SolubilityRule | undefined {
  const ions = saltIons(solute.anhydrous);
  return ions === undefined ? undefined : ruleOfIons(ions);
}

/**
 * What the solubility rules say of a salt near room temperature; use `solubilityOf` first, this only where it has no figure.
 *
 * @param formula - a salt, crystal water allowed
 * @returns class and the rule in words, or undefined when no rule speaks of it
 * @throws {SolubilityError} `solubility.not-a-salt`
 * @source common practice, no source
 * @category Solubility
 * @example
 * solubilityRule("BaSO4")?.class // => "insoluble"
 * solubilityRule("Fe(CH3COO)2")?.class // => "soluble"
 */
export function solubilityRule(formula: string | Formula): SolubilityRule | undefined {
  return ruleFor(soluteOf(formula));
}

/**
 * As `solubilityRule`, but gives the refusal back as data.
 *
 * @category Solubility
 * @example
 * trySolubilityRule("SO4^2-").ok // => false
 */
export function trySolubilityRule(formula: string | Formula): Result<SolubilityRule | undefined> {
  return attempt(() => solubilityRule(formula));
}

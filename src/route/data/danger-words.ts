// Words of names that no reader of names knows and that say a class all the same: whatever stands beside them, nothing of it is
// made. A part of a word is enough, so that salts and their phrasings are found; the class is the one that the formula gets.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** A part of a name that puts it in a class. */
interface DangerWordRow {
  readonly word: string;
  /** Only as a word of its own: its letters stand in harmless words as well. */
  readonly whole?: true;
  readonly class: string;
  readonly source: SourceKey;
}

/** The first that fits decides, as explosives come before elements and elements before ions for formulas. */
export const DANGER_WORDS = /* @__PURE__ */ once((): readonly DangerWordRow[] => [
  { word: "tatp", whole: true, class: "explosive", source: "commonPractice" },
  { word: "hmtd", whole: true, class: "explosive", source: "commonPractice" },
  { word: "tnt", whole: true, class: "explosive", source: "commonPractice" },
  { word: "petn", whole: true, class: "explosive", source: "commonPractice" },
  { word: "rdx", whole: true, class: "explosive", source: "commonPractice" },
  { word: "hmx", whole: true, class: "explosive", source: "commonPractice" },
  { word: "anfo", whole: true, class: "explosive", source: "commonPractice" },
  { word: "acetone peroxide", class: "explosive", source: "commonPractice" },
  { word: "triperoxide", class: "explosive", source: "commonPractice" },
  { word: "organic peroxide", class: "explosive", source: "commonPractice" },
  { word: "ketone peroxide", class: "explosive", source: "commonPractice" },
  { word: "fulminat", class: "explosive", source: "commonPractice" },
  { word: "acetylide", class: "explosive", source: "commonPractice" },
  { word: "picrat", class: "explosive", source: "commonPractice" },
  { word: "picric", class: "explosive", source: "commonPractice" },
  { word: "styphn", class: "explosive", source: "commonPractice" },
  { word: "dinitro", class: "explosive", source: "commonPractice" },
  { word: "trinitro", class: "explosive", source: "commonPractice" },
  { word: "tetranitro", class: "explosive", source: "commonPractice" },
  { word: "nitroglycerin", class: "explosive", source: "commonPractice" },
  { word: "nitroglycol", class: "explosive", source: "commonPractice" },
  { word: "nitrocellulose", class: "explosive", source: "commonPractice" },
  { word: "guncotton", class: "explosive", source: "commonPractice" },
  { word: "gunpowder", class: "explosive", source: "commonPractice" },
  { word: "gun powder", class: "explosive", source: "commonPractice" },
  { word: "black powder", class: "explosive", source: "commonPractice" },
  { word: "flash powder", class: "explosive", source: "commonPractice" },
  { word: "thermite", class: "explosive", source: "commonPractice" },
  { word: "explosive", class: "explosive", source: "commonPractice" },
  { word: "fulminating", class: "explosive", source: "commonPractice" },
  { word: "phosgene", class: "deadly-gas", source: "commonPractice" },
  { word: "phosphine", class: "deadly-gas", source: "commonPractice" },
  { word: "arsine", class: "deadly-gas", source: "commonPractice" },
  { word: "sarin", whole: true, class: "chemical weapon", source: "chemicalWeaponsConvention" },
  { word: "soman", whole: true, class: "chemical weapon", source: "chemicalWeaponsConvention" },
  { word: "tabun", whole: true, class: "chemical weapon", source: "chemicalWeaponsConvention" },
  { word: "lewisite", class: "chemical weapon", source: "chemicalWeaponsConvention" },
  { word: "mustard gas", class: "chemical weapon", source: "chemicalWeaponsConvention" },
  { word: "nerve agent", class: "chemical weapon", source: "chemicalWeaponsConvention" },
  { word: "acetic anhydride", class: "drug precursor", source: "drugPrecursors" },
  { word: "hydrazin", class: "hydrazine", source: "commonPractice" },
  { word: "thalli", class: "toxic element", source: "commonPractice" },
  { word: "thallous", class: "toxic element", source: "commonPractice" },
  { word: "beryll", class: "toxic element", source: "commonPractice" },
  { word: "lead", whole: true, class: "toxic element", source: "commonPractice" },
  { word: "plumb", class: "toxic element", source: "commonPractice" },
  { word: "mercur", class: "toxic element", source: "commonPractice" },
  { word: "cadmi", class: "toxic element", source: "commonPractice" },
  { word: "arsen", class: "toxic element", source: "commonPractice" },
  { word: "osmium", class: "toxic element", source: "commonPractice" },
  { word: "uran", class: "toxic element", source: "commonPractice" },
  { word: "thorium", class: "toxic element", source: "commonPractice" },
  { word: "plutoni", class: "toxic element", source: "commonPractice" },
  { word: "radium", whole: true, class: "toxic element", source: "commonPractice" },
  { word: "azide", class: "azide", source: "commonPractice" },
  { word: "perchlorat", class: "perchlorate", source: "commonPractice" },
  { word: "hypochlorit", class: "hypochlorite", source: "commonPractice" },
  { word: "chlorat", class: "chlorate", source: "commonPractice" },
  { word: "chlorite", whole: true, class: "chlorite", source: "commonPractice" },
  { word: "bromat", class: "bromate", source: "commonPractice" },
  { word: "chromat", class: "chromium(VI)", source: "commonPractice" },
  { word: "permangan", class: "permanganate", source: "commonPractice" },
  { word: "persulf", class: "persulfate", source: "commonPractice" },
  { word: "peroxodisulf", class: "persulfate", source: "commonPractice" },
  { word: "peroxide", class: "peroxide salt", source: "commonPractice" },
  { word: "cyanide", class: "cyanide", source: "commonPractice" },
  { word: "prussic", class: "cyanide", source: "commonPractice" },
  { word: "phosphide", class: "phosphide", source: "commonPractice" },
  { word: "selenide", class: "selenide", source: "commonPractice" },
  { word: "hydride", whole: true, class: "hydride", source: "commonPractice" },
  { word: "chlorine", class: "poison-gas", source: "commonPractice" },
  { word: "bromine", class: "poison-gas", source: "commonPractice" },
  { word: "fluorine", class: "deadly-gas", source: "commonPractice" },
]);

/** Words that say how a substance stands, and not what it is. */
export const STATE_WORDS: ReadonlySet<string> = /* @__PURE__ */ new Set(
  "a an the gas gaseous vapour vapor solution solutions dissolved aqueous liquid solid crystal crystals crystalline powder powdered pure dry anhydrous concentrated dilute conc dil salt flakes granules pellets some of in water".split(
    " ",
  ),
);

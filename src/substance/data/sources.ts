// Sources of the tables of names, labels and hazards; what they share with lower layers stands there.
import { generalSources } from "../../foundation/data/sources";
import { citation, type Sources } from "../../foundation/source";
import { hydrateSources } from "../../hydrate/internal";
import { ionSources } from "../../ion/internal";

export const substanceSources = {
  clpAnnexVI: { title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP), harmonised classifications", year: 2021, where: "Annex VI, Table 3, consolidated with the 17th adaptation", access: "read row by row from the agency's own spreadsheet; later adaptations may differ" },
  clpRecalled: { title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP), entries and concentration limits", where: "Annex I, general limits of mixtures; Annex VI, Table 3", fromMemory: "all" },
  euCourtTitaniumDioxide: { title: "General Court of the European Union, cases T-279/20, T-283/20 and T-288/20: classification of titanium dioxide annulled", year: 2022, access: "upheld on appeal in 2025; several reports read, the judgments themselves from memory", fromMemory: "partly" },
  echaDossiers: { title: "European Chemicals Agency, registration dossiers, section 2.1 (what the joint registrants notify)", access: "pages of single dossiers read", fromMemory: "partly" },
  clpRegulation: { title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP)", where: "Annexes II to V", access: "codes and pictograms; the wording here is our own" },
  unGhs: { title: "Globally Harmonized System of Classification and Labelling of Chemicals (GHS), United Nations", edition: "9th and 10th revised", where: "Annexes 1 and 3", access: "codes; the wording here is our own, revision notes from memory", fromMemory: "partly" },
  safeWorkAustralia: { title: "Hazardous Chemical Information System, Safe Work Australia", year: 2022, access: "export; it leaves out physical and most environmental classes" },
  incompatibilityLists: { title: "incompatibility lists of the CRC Handbook of Chemistry and Physics and of Safety in Academic Chemistry Laboratories", access: "excerpts read; what forms is from memory", fromMemory: "partly" },
  prudentPractices: { title: "Prudent Practices in the Laboratory, National Research Council", access: "recalled from memory, not confirmed in a source", fromMemory: "all" },
  reactiveHazards: { title: "Bretherick's Handbook of Reactive Chemical Hazards", access: "recalled from memory, not confirmed in a source", fromMemory: "all" },
  kncis: { title: "National Chemicals Information System, Republic of Korea", year: 2022, where: "list of May 2022", access: "matched by listed name" },
  usgsMolarVolumes: { title: "Molar volumes of solids, United States Geological Survey", access: "from four of the survey's public data files, compared by program" },
  copperSulfateHeating: { title: "text on copper(II) sulfate (unsigned), steps of heating at 63, 109, 200 and 650 °C", access: "stored page; a thermal analysis shows that the last step is really two" },
  tradeSheets: { title: "published safety data sheets and trade labels, typical ranges", access: "recalled from memory, not confirmed in a source", fromMemory: "all" },
  foodAdditivePurity: { title: "Commission Regulation (EU) No 231/2012, food additive purity rules; Food Chemicals Codex", access: "recalled from memory, not confirmed in a source", fromMemory: "all" },
  pharmacopoeiaLimits: { title: "monograph limits of the United States and European pharmacopoeias", access: "recalled from memory, not confirmed in a source", fromMemory: "all" },
  hydrochloricSheet: { title: "safety data sheet for 31.45 % hydrochloric acid, relative density 1.16 at 15.6 °C", access: "the point read, the range from memory", fromMemory: "partly" },
  jecfaCitric: { title: "JECFA-based test sheet for citric acid: monohydrate assay 99.5 to 100.5 %, water 7.5 to 8.8 %", access: "anhydrous limits from memory", fromMemory: "partly" },
  astmC206: { title: "ASTM C206, finishing hydrated lime", access: "extract: oxides 95 % at least, carbon dioxide 5 or 7 % at most; assay range from memory", fromMemory: "partly" },
  bleachStrength: { title: "bleach production notes: 120 g/L available chlorine is relative density 1.160", access: "point and formulas read, ranges from memory", fromMemory: "partly" },
} as const satisfies Sources;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof substanceSources | keyof typeof ionSources | keyof typeof hydrateSources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [substanceSources, ionSources, hydrateSources, generalSources]);

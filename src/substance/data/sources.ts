// Sources of the tables of names, labels and hazards; what they share with lower layers stands there.
import { periodicTableSources } from "../../element/internal";
import { generalSources } from "../../foundation/data/sources";
import { type Access, citation, type Sources } from "../../foundation/source";
import { heatingSources, hydrateSources } from "../../hydrate/internal";
import { ionSources } from "../../ion/internal";

export const substanceSources = {
  kncis: { title: "National Chemicals Information System, Republic of Korea", year: 2022, where: "list of May 2022" },
  usgsMolarVolumes: { title: "Molar volumes of solids, United States Geological Survey" },
  foodAdditivePurity: { title: "Commission Regulation (EU) No 231/2012, food additive purity rules; Food Chemicals Codex", fromMemory: "all" },
  pharmacopoeiaLimits: { title: "monograph limits of the United States and European pharmacopoeias", fromMemory: "all" },
  columbiaFlameTest: { title: "The Columbia Electronic Encyclopedia, 6th ed., Columbia University Press, flame test" },
  hydrochloricSheet: { title: "safety data sheet for 31.45 % hydrochloric acid, relative density 1.16 at 15.6 °C", fromMemory: "partly" },
  jecfaCitric: { title: "JECFA-based test sheet for citric acid: monohydrate assay 99.5 to 100.5 %, water 7.5 to 8.8 %", fromMemory: "partly" },
  astmC206: { title: "ASTM C206, finishing hydrated lime", fromMemory: "partly" },
  bleachStrength: { title: "bleach production notes: 120 g/L available chlorine is relative density 1.160", fromMemory: "partly" },
  webElements: { title: "WebElements, compounds (University of Sheffield and WebElements Ltd)" },
  encyclopediaCompounds: { title: "Wikipedia, pages of single compounds" },
} as const satisfies Sources;

/** Hazards and what must not meet: cautions carry these alone. */
export const hazardSources = {
  clpAnnexVI: { title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP), harmonised classifications", year: 2021, where: "Annex VI, Table 3, consolidated with the 17th adaptation" },
  clpLater: { title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP), harmonised classifications", year: 2025, where: "Annex VI, Table 3, with the 23rd adaptation", fromMemory: "partly" },
  clp2026: { title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP), harmonised classifications", year: 2026, where: "Annex VI, Table 3, consolidated text of 1 May 2026" },
  clpRecalled: { title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP), entries and concentration limits", where: "Annex I, general limits of mixtures; Annex VI, Table 3", fromMemory: "all" },
  clpExtremePh: { title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP), mixtures of extreme pH", where: "Annex I, 3.2.3.1.2; Table 3.2.4", fromMemory: "partly" },
  euCourtTitaniumDioxide: { title: "General Court of the European Union, cases T-279/20, T-283/20 and T-288/20: classification of titanium dioxide annulled", year: 2022, fromMemory: "partly" },
  supplierHazards: { title: "safety data sheets of suppliers" },
  supplierRiskPhrases: { title: "safety data sheets of suppliers with risk phrases, put into hazard statements as Annex VII of Regulation (EC) No 1272/2008 does", fromMemory: "partly" },
  clNotifications: { title: "European Chemicals Agency, Classification and Labelling Inventory, notified classifications (what most suppliers notify)" },
  echaDossiers: { title: "European Chemicals Agency, registration dossiers, section 2.1 (what the joint registrants notify)", fromMemory: "partly" },
  encyclopediaHazards: { title: "Wikipedia, pages of single compounds, hazards of the box" },
  oxalicAcidSheets: { title: "safety data sheet of a supplier of oxalic acid dihydrate, 2018; International Chemical Safety Card 0707, oxalic acid dihydrate" },
  clpRegulation: { title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP)", where: "Annexes II to V" },
  clpStatements: { title: "Regulation (EC) No 1272/2008 on classification, labelling and packaging (CLP), hazard statements in English", where: "Annexes II and III", fromMemory: "partly" },
  unGhs: { title: "Globally Harmonized System of Classification and Labelling of Chemicals (GHS), United Nations", edition: "9th and 10th revised", where: "Annexes 1 and 3", fromMemory: "partly" },
  ghsPrecautions: { title: "Globally Harmonized System of Classification and Labelling of Chemicals (GHS), United Nations, precautionary statements in English", where: "Annex 3, section 2", fromMemory: "partly" },
  spiritFlashPoints: { title: "The Engineering ToolBox, ethanol and water, flash points by concentration; flammable liquids by flash point: Regulation (EC) No 1272/2008 (CLP), Annex I, 2.6.2, Table 2.6.1", fromMemory: "partly" },
  safeWorkAustralia: { title: "Hazardous Chemical Information System, Safe Work Australia", year: 2022 },
  incompatibilityLists: { title: "incompatibility lists of the CRC Handbook of Chemistry and Physics and of Safety in Academic Chemistry Laboratories", fromMemory: "partly" },
  reactionSummaries: { title: "Laboratory Chemical Safety Summaries, PubChem, National Library of Medicine (United States), chemical dangers and reactivity" },
  reactionSummariesFirst: { title: "Laboratory Chemical Safety Summaries, PubChem, National Library of Medicine (United States), chemical dangers and reactivity; the gas or single classes recalled", fromMemory: "partly" },
  melbourneGases: { title: "School of Chemistry, University of Melbourne, Reactions producing toxic gases" },
  nioshIdlh: { title: "National Institute for Occupational Safety and Health (United States), Immediately Dangerous to Life or Health (IDLH) values", where: "documentation of 1994; value profiles of nitrogen dioxide, 2017, and hydrogen chloride, 2025" },
  nfpaHousehold: { title: "National Fire Protection Association (United States), The Dangers of Mixing Household Chemicals", year: 2020 },
  firePoolGoods: { title: "Fire Engineering, Swimming pool disinfectants: incompatible mixtures of calcium hypochlorite and chlorinated isocyanurates" },
  prudentPractices: { title: "Prudent Practices in the Laboratory, National Research Council", fromMemory: "all" },
  reactiveHazards: { title: "Bretherick's Handbook of Reactive Chemical Hazards", fromMemory: "all" },
  tradeSheets: { title: "published safety data sheets and trade labels, typical ranges", fromMemory: "all" },
  zverkv1998: { title: "Ordinance on requirements for food additives (Zusatzstoff-Verkehrsverordnung), Germany, 29 January 1998, as of 28 March 2011", year: 2011, where: "Annex 2, List B, additives with E numbers" },
} as const satisfies Sources;

/** How the figures reached us, where they were not read in the source itself. */
export const substanceAccess = {
  clpAnnexVI: "read row by row from the agency's own spreadsheet; entries 001 to 092 compared with the consolidated text of 1 May 2026",
  clp2026: "public copy of index numbers, classes and statements, without supplemental statements (EUH) and concentration limits; a few index numbers are missing in it",
  clpLater: "public copy of index numbers, names, oral toxicity, skin, eye, cancer, genes and reproduction; other classes recalled",
  euCourtTitaniumDioxide: "upheld on appeal in 2025; several reports read, the judgments themselves from memory",
  supplierHazards: "section 2 read: sodium nitrate (two alike), potassium nitrate (a list of accident insurers adds H319, which the test in the registration dossier does not bear out), calcium ammonium nitrate, strontium carbonate, tin(II) chloride (two more say burns as well; the Japanese list has eyes, airways and H410 only), calcium nitrate tetrahydrate (without H272, which the anhydrous salt has), silver carbonate, lithium fluoride, bismuth nitrate (solution), potassium peroxomonosulfate, sodium aluminate, edetate, tartaric acid (the international safety card alike), potassium iodide (two alike), ammonium iron(II) sulfate (another supplier does not classify it), ammonium carbonate and hydrogencarbonate; not classified: sodium hydrogencarbonate, magnesium sulfate and chloride, ammonium sulfate, sodium thiosulfate, urea, potassium hexacyanidoferrate(III), potash alum (a dyer's sheet has H302 H315 H319 H335)",
  supplierRiskPhrases: "sheets read: iron(III) and chromium(III) nitrate, silver acetate, strontium nitrate; the table of the annex from memory",
  clNotifications: "pages read: iron(III) oxide (2047 notifiers: not classified), aluminium sulfate (346: H290 H318)",
  echaDossiers: "pages of single dossiers read; of barium and strontium nitrate and iron(III) sulfate the tests on eyes and skin and, of the first, the oxidising property",
  encyclopediaHazards: "public copies; who notifies the classes is not said there",
  oxalicAcidSheets: "public copies: the sheet has H318, the card burns of the eyes; other suppliers have the harmonised classes alone",
  clpRegulation: "codes and pictograms; the wording here is our own",
  clpStatements: "H200 to H319 read as two public bodies print them, the others from memory",
  unGhs: "codes; the wording here is our own, revision notes from memory",
  ghsPrecautions: "texts read in two public copies of the annex; which hazard asks for which from memory",
  spiritFlashPoints: "page read: eleven flash points from 5 to 96 %; it says mass, other copies say volume; the classes from memory",
  safeWorkAustralia: "export; it leaves out physical and most environmental classes",
  incompatibilityLists: "excerpts read, also as the American Chemical Society and universities print them, down to H and in part to Z; not every member of a class is named there; what forms is from memory",
  reactionSummaries: "public copy: texts of the international safety cards, CAMEO and the Hazardous Substances Data Bank on single substances; each stands here for its class",
  reactionSummariesFirst: "public copy of the same texts, which name one pair of the rule; what else the rule covers or what forms is from memory",
  melbourneGases: "page read: eleven pairs with the gas of each",
  nioshIdlh: "chlorine, phosphine, chlorine dioxide, hydrogen selenide and nitric oxide in their sheets, arsine and stibine in the agency's pocket guide, bromine, sulfur dioxide and ozone in sheets of the Occupational Safety and Health Administration, phosgene on a page of the National Library of Medicine, hydrogen fluoride in a table of an article, carbon monoxide on a page of a university, ammonia on a page of a maker, nitrogen dioxide in the abstract of its profile, hydrogen cyanide in a report of the National Academies (2008), hydrogen sulfide in a quotation of its sheet, hydrogen chloride in the announcement of its profile by the American Industrial Hygiene Association (July 2025)",
  nfpaHousehold: "page read: bleach with rubbing alcohol, ammonia and vinegar",
  firePoolGoods: "page read; the pairs, not what forms",
  prudentPractices: "recalled from memory, not confirmed in a source",
  reactiveHazards: "recalled from memory, not confirmed in a source",
  kncis: "matched by listed name",
  usgsMolarVolumes: "from four of the survey's public data files, compared by program",
  tradeSheets: "recalled from memory, not confirmed in a source",
  zverkv1998: "text of the law read; the numbers are those of Regulation (EC) No 1333/2008",
  foodAdditivePurity: "recalled from memory, not confirmed in a source",
  pharmacopoeiaLimits: "recalled from memory, not confirmed in a source",
  columbiaFlameTest: "entry read as a public reference site prints it; seven metals and what masks what",
  hydrochloricSheet: "the point read, the range from memory",
  jecfaCitric: "anhydrous limits from memory",
  astmC206: "extract: oxides 95 % at least, carbon dioxide 5 or 7 % at most; assay range from memory",
  bleachStrength: "point and formulas read, ranges from memory",
  webElements: "page of the compound, from the handbooks that it lists",
  encyclopediaCompounds: "boxes of properties in public copies, in part from the CRC Handbook",
} as const satisfies Access<typeof substanceSources & typeof hazardSources>;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof substanceSources | keyof typeof hazardSources | keyof typeof heatingSources | keyof typeof ionSources | keyof typeof hydrateSources | keyof typeof periodicTableSources | keyof typeof generalSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [substanceSources, hazardSources, ionSources, hydrateSources, heatingSources, periodicTableSources, generalSources]);

/** What a row on hazards may name, and the same for it. */
export type HazardSourceKey = keyof typeof hazardSources | keyof typeof hydrateSources | keyof typeof generalSources;
export const citeHazard = (key: HazardSourceKey): string => citation(key, [hazardSources, hydrateSources, generalSources]);

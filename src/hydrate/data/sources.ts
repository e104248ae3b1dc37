// Sources of the tables of hydrates; what they share with lower layers stands there.
import { generalSources } from "../../foundation/data/sources";
import { type Access, citation, type Sources } from "../../foundation/source";

export const hydrateSources = {
  niteGhs: { title: "GHS classification results by the Japanese government, National Institute of Technology and Evaluation" },
  aiic: { title: "Australian Inventory of Industrial Chemicals", year: 2022, where: "list of 10 February 2022" },
  nzioc: { title: "New Zealand Inventory of Chemicals", year: 2021, where: "list of December 2021" },
  canadaDsl: { title: "Domestic Substances List, Canada" },
  sds73: { title: "IUPAC-NIST Solubility Data Series 73, Metal and Ammonium Formate Systems, J. Phys. Chem. Ref. Data 30, 1", year: 2001 },
  densityTable: { title: "recalled; agrees with an unsigned table of densities", fromMemory: "partly" },
  safetySummaries: { title: "Laboratory Chemical Safety Summaries, PubChem, National Library of Medicine (United States)" },
  blanchard: { title: "Blanchard et al., Synthetic Inorganic Chemistry, Table of Solubilities" },
  sshade: { title: "SSHADE, database of the spectroscopy of solids (Observatory of Grenoble and partners), data of the solids" },
  tutton1890: { title: "Tutton, work of 1890 to 1915 on the monoclinic double sulfates R2M(SO4)2·6H2O, Royal Society of London", year: 1915 },
  richardsKelley1911: { title: "Richards and Kelley, The Transition Temperatures of Sodium Chromate, Proc. Am. Acad. Arts Sci.", year: 1911 },
  heatStorage2023: { title: "Freeman, Additive Manufacturing for Phase Change Thermal Energy Storage and Management, dissertation, Embry-Riddle Aeronautical University", year: 2023, where: "Tables 1.4 and 1.5" },
  chemicalEncyclopedia: { title: "Chemical Encyclopedia, Moscow", year: 1998 },
  polishPhases: { title: "Polish handbook table of solubilities", where: "table 04-26" },
  britannicaEfflorescence: { title: "Encyclopædia Britannica, efflorescence" },
  hydrateThesis: { title: "thesis on changes of phase of hydrates (unsigned), appendix 14.1" },
} as const satisfies Sources;

/** What heat and the water of the air do to substances, which only their own tables carry. */
export const heatingSources = {
  merckIndex: { title: "The Merck Index, monographs" },
  merckIndexFirst: { title: "The Merck Index, monographs; some limits of the steps recalled", fromMemory: "partly" },
  oxfordChemistry: { title: "A Dictionary of Chemistry, Oxford University Press" },
  oxfordChemistryFirst: { title: "A Dictionary of Chemistry, Oxford University Press; where a step ends recalled", fromMemory: "partly" },
  richardsKelley1911First: { title: "Richards and Kelley, The Transition Temperatures of Sodium Chromate, Proc. Am. Acad. Arts Sci.; drying above recalled", year: 1911, fromMemory: "partly" },
  ward1972First: { title: "Ward, Anhydrous Nickel(II) Halides, Inorganic Syntheses 13, 154; the last step of heating recalled", year: 1972, fromMemory: "partly" },
  chemicalEncyclopediaFirst: { title: "Chemical Encyclopedia, Moscow; some limits recalled", year: 1998, fromMemory: "partly" },
  tuttonHeating2015: { title: "Synthesis, characterization and thermal analysis of K2M(SO4)2·6H2O (M = Mg, Co, Cu)", year: 2015 },
  tungstateHeating: { title: "text on sodium tungstate (unsigned), complete dehydration of its hydrates at 100 °C" },
  saltMakerFirst: { title: "page of a maker of salts on strontium chloride; where the last step begins recalled", fromMemory: "partly" },
  sulz1888: { title: "Sulz, A Treatise on Beverages, Barium Chloride", year: 1888 },
  columbiaSulfates: { title: "The Columbia Electronic Encyclopedia, 6th ed., Columbia University Press, cupric sulfate, ferrous sulfate" },
  copperSulfateHeating: { title: "text on copper(II) sulfate (unsigned), steps of heating at 63, 109, 200 and 650 °C" },
  frostWeier2004: { title: "Frost and Weier, Thermal treatment of whewellite, Thermochim. Acta 409, 79", year: 2004 },
  oxalates2014: { title: "Divalent metal oxalates from Averrhoa carambola, Journal of Applied Chemistry, article 767695", year: 2014, where: "Table 3" },
  oxalates2014First: { title: "Divalent metal oxalates from Averrhoa carambola, Journal of Applied Chemistry, article 767695; the second step recalled", year: 2014, where: "Table 3", fromMemory: "partly" },
  linHanLi2012First: { title: "Lin, Han and Li, Study on thermal decomposition of copper(II) acetate monohydrate in air, J. Therm. Anal. Calorim. 107, 471; where it begins recalled", year: 2012, fromMemory: "partly" },
  cohenOrganic: { title: "Cohen, Practical Organic Chemistry, Oxalic Acid" },
  pharmacopoeiaDrying: { title: "United States Pharmacopeia 28 to 32, loss on drying" },
  pharmacopoeiaDryingFirst: { title: "United States Pharmacopeia 28 to 32 and British Pharmacopoeia, loss on drying; where it begins recalled", fromMemory: "partly" },
  foodAdditiveDryingFirst: { title: "Food additive specifications, Joint FAO/WHO Expert Committee on Food Additives (JECFA), loss on drying; where it begins recalled", fromMemory: "partly" },
  foodAdditivesBook: { title: "Smith and Hong-Shum, Food Additives Data Book, Sequestrants", year: 2003 },
  aluminiumSulfateHeating: { title: "Chou and Soong, Kinetics of the multistage dehydration of aluminum sulfate hydrate, Thermochim. Acta, 1984; Kinetics of the decomposition of freeze-dried aluminum sulfate and ammonium aluminum sulfate (635 to 770 °C)", year: 1984 },
  schoolChemicals: { title: "lexicon of chemicals for schools (unsigned)" },
  compoundPages: { title: "pages of single compounds in a directory of chemicals (unsigned)" },
  supplierHeatingFirst: { title: "data sheets of suppliers, silver carbonate; where it begins recalled", fromMemory: "partly" },
  rajeOxalateFirst: { title: "Raje, Kalekar and Ghonge, thermal decomposition of potassium tetraoxalate, J. Anal. Appl. Pyrolysis; where the steps begin recalled", fromMemory: "partly" },
  ramloganRouff2016: { title: "Ramlogan and Rouff, An investigation of the thermal behavior of magnesium ammonium phosphate hexahydrate, J. Therm. Anal. Calorim. 123, 145", year: 2016 },
  vanadateHeatingFirst: { title: "Thermal decomposition of ammonium metavanadate supported on Al2O3, by DTA, TG and X-ray diffraction; where it ends recalled", fromMemory: "partly" },
  manganeseOxides1981: { title: "temperatures and heats of decomposition of MnO2 and Mn2O3, Trans. Japan Inst. Met. 22, 253", year: 1981 },
  kanari2004First: { title: "Kanari, Mishra, Gaballah and Dupré, Thermal decomposition of zinc carbonate hydroxide, Thermochim. Acta 410, 93; where it ends recalled", year: 2004, doi: "10.1016/S0040-6031(03)00396-4", fromMemory: "partly" },
  egyptianBlueFirst: { title: "Pigments through the Ages (webexhibits.org), Egyptian blue; what spoils it recalled", fromMemory: "partly" },
  crcHumidity: { title: "CRC Handbook of Chemistry and Physics, Constant Humidity Solutions" },
  calciumSulfateNote: { title: "application note of a maker of thermal balances, calcium sulfate dihydrate" },
  frostburgSodaFirst: { title: "Senese, General Chemistry Online, Frostburg State University, What happens when sodium bicarbonate is heated?; where it begins recalled", fromMemory: "partly" },
} as const satisfies Sources;

/** How the figures reached us, where they were not read in the source itself. */
export const hydrateAccess = {
  niteGhs: "categories mapped to statement codes by program; often stricter than suppliers' sheets",
  aiic: "registry numbers found with formula or listed name; the ratio test ignores H and O",
  nzioc: "matched by listed name",
  canadaDsl: "matched by listed name",
  densityTable: "public copy without author or licence, some 2,000 compounds and minerals with their hydrates; no figure was taken from it: ours were recalled first, and each agrees with it within 1 %",
  safetySummaries: "public copy with the origin of each figure: the Hazardous Substances Data Bank, else the international safety cards, NIOSH, CAMEO or the Department of Energy; where these differ, the figure that fits what else is known",
  blanchard: "stored page, whole numbers at 0, 25 and 100 °C",
  merckIndex: "monographs as a public page reproduces them",
  merckIndexFirst: "monographs as public pages reproduce them; where a step begins, or the first or the last one, from memory",
  oxfordChemistry: "entries as two public pages reproduce them",
  oxfordChemistryFirst: "entry as a public page reproduces it; the ends of the steps from memory",
  sshade: "pages of single solids",
  tutton1890: "abstract of the last communication: of the 32 salts of potassium, rubidium, caesium and ammonium with magnesium, zinc, iron, nickel, cobalt, manganese, copper and cadmium all but two were obtained as crystals",
  chemicalEncyclopedia: "Khimicheskaya entsiklopediya, volumes 1 to 5, 1988 to 1998: entries as public pages reproduce them: lithium hydroxide, magnesium, calcium, strontium and nickel nitrate, nickel and manganese sulfate, barium hydroxide, potassium carbonate, sodium sulfite and thiosulfate",
  polishPhases: "stored page: solid inorganic compounds in water, every 20 °C; the solid is named by its water",
  richardsKelley1911: "first page (title shortened): 32.383 °C for the sulfate, 50.674 °C for the bromide of sodium, 58.089 °C for manganese chloride",
  richardsKelley1911First: "first page; what stands above the transition from memory",
  chemicalEncyclopediaFirst: "entries as public pages reproduce them: where the last water goes (calcium nitrate, sodium sulfite and thiosulfate) or nickel sulfate becomes the monohydrate, from memory",
  tuttonHeating2015: "abstract: all water leaves between 70 and 200 °C",
  tungstateHeating: "stored page",
  saltMakerFirst: "page read: melts at 61.4 °C, fully dry above 250 °C",
  ward1972First: "as an encyclopedia quotes it: hexahydrate to dihydrate at 66 to 133 °C; the last step from memory",
  sulz1888: "page read: half the water above 55 °C, all at 121 °C",
  columbiaSulfates: "entries read as a public reference site prints them",
  copperSulfateHeating: "stored page; a thermal analysis shows that the last step is really two",
  heatStorage2023: "public copy; melting points of salts and hydrates, gathered from articles on heat storage",
  hydrateThesis: "stored page, transition points with their literature: magnesium sulfate 48.1, zinc sulfate 39.0, calcium chloride 45.3, borax 60.8 °C",
  frostWeier2004: "abstract: steps at 162, 479 and 684 °C, inside the ranges given",
  oxalates2014: "table read: losses by thermogravimetry",
  oxalates2014First: "table read; the second step, or what it leaves in air, from memory",
  linHanLi2012First: "abstract: dry by 168 °C; the beginning from memory",
  cohenOrganic: "scanned page read: the crystals lose their water at 100 °C and melt at 101.5 °C",
  pharmacopoeiaDrying: "monographs as public pages reproduce them: sodium acetate dried at 120 °C loses 38 to 41 %, potassium citrate at 180 °C for 4 h 3 to 6 %",
  pharmacopoeiaDryingFirst: "monographs as public pages reproduce them: sodium citrate dried at 180 °C for 18 h loses 10 to 13 %, sodium molybdate at 140 °C for 3 h 14 to 16 %; the beginnings from memory",
  foodAdditiveDryingFirst: "specifications as public pages reproduce them: disodium phosphates at 40 and then 105 °C for 5 h, tricalcium citrate at 150 °C for 4 h lose all their water; the beginnings from memory",
  foodAdditivesBook: "pages read: potassium sodium tartrate, disodium pyrophosphate",
  aluminiumSulfateHeating: "two abstracts: water leaves in four stages from 50 to 230 and 250 to 430 °C; the sulfate measured from 635 to 770 °C, which the Agency's dossier prints as its melting point with decomposition",
  schoolChemicals: "translated copies of pages: ammonium sulfate 235 and 280 °C, ammonium carbonate 58 °C",
  compoundPages: "pages read: zinc acetate loses its water at 100 °C",
  supplierHeatingFirst: "sheet read: to the oxide at 218 °C",
  rajeOxalateFirst: "abstract: carbonate by 600 °C; a directory of chemicals has the monohydrate dry at about 160 °C",
  ramloganRouff2016: "abstract: monohydrate at 100 to 200 °C, all that is volatile gone at 250 to 300 °C",
  vanadateHeatingFirst: "abstract: 225 to 250 and 335 to 360 °C",
  manganeseOxides1981: "abstract: 843 and 1263 K in air",
  kanari2004First: "abstract: begins at about 150 °C, fast above 200 °C, one step to the oxide",
  egyptianBlueFirst: "page read: 900 °C, then 800 °C for 10 to 100 hours; an article on its making has 850 to 950 °C",
  crcHumidity: "two public copies of the table: air over the saturated solution at 25 °C from 6 % of saturation (sodium hydroxide) to 53 % (magnesium nitrate)",
  calciumSulfateNote: "page read: sulfate to oxide above 1250 °C",
  frostburgSodaFirst: "page read: water and carbon dioxide from around 100 °C, all of it by 200 °C; the slow beginning from memory",
} as const satisfies Access<typeof hydrateSources & typeof heatingSources>;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof hydrateSources | keyof typeof generalSources;

/** What a row on heating may name. */
export type HeatingSourceKey = SourceKey | keyof typeof heatingSources;

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, [hydrateSources, generalSources]);
export const citeHeating = (key: HeatingSourceKey): string => citation(key, [hydrateSources, heatingSources, generalSources]);

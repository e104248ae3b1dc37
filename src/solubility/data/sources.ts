// Sources of the tables of solubilities; what they share with lower layers stands there.

import { aqueousSources } from "../../aqueous/internal";
import { generalSources } from "../../foundation/data/sources";
import { OWN_FIGURE } from "../../foundation/facts";
import { type Access, citation, type Sources } from "../../foundation/source";
import { hydrateSources } from "../../hydrate/internal";
import { ionSources } from "../../ion/internal";

export const solubilitySources = {
  crcSolubility98: { title: "CRC Handbook of Chemistry and Physics, Aqueous Solubility of Inorganic Compounds at Various Temperatures", edition: "98th", year: 2017 },
  encyclopediaSolubility: { title: "Wikipedia, Solubility table", year: 2019 },
  encyclopediaTartrate: { title: "Wikipedia, Calcium tartrate", year: 2016 },
  supplierSolubility: { title: "Merck (Sigma-Aldrich), Solubility Table of Compounds in Water at Temperature" },
  mohos2010: { title: "Mohos, Confectionery and Chocolate Engineering, saturated solutions of sucrose", year: 2010, where: "Appendix 2, Tables A2.2 and A2.3" },
  dalman1937: { title: "Dalman, The Solubility of Citric and Tartaric Acids in Water, J. Am. Chem. Soc. 59, 2547", year: 1937 },
  perry: { title: "Perry's Chemical Engineers' Handbook, Solubilities of Inorganic Compounds in Water at Various Temperatures", where: "Table 2-122", fromMemory: "partly" },
  langeSolubility: { title: "Lange's Handbook of Chemistry, solubilities", edition: "16th", year: 2005 },
  supplierSheets: { title: "safety data sheets of three suppliers of sodium citrate" },
  oldPharmacopoeia: { title: "Pharmacopoeia of the United States of America, early 20th century, monograph on potassium and sodium tartrate" },
  browneStewart1883: { title: "Browne and Stewart, Reports of Trials for Murder by Poisoning, measurement of Bernays in 1879", year: 1883 },
  makerGluconate: { title: "data sheet of a maker of gluconates, solubility of sodium gluconate" },
  pharmacyPages: { title: "lexicon of pharmaceutical substances (unsigned), potassium sorbate" },
  echaSolubility: { title: "European Chemicals Agency, registration dossiers, section 4.8 (water solubility)" },
  moissanNickel: { title: "Moissan and Ouvrard, Le nickel" },
  ladenburgZinc: { title: "Ladenburg, Handwörterbuch der Chemie, Zink", where: "p. 493" },
  polishSolubility: { title: "Polish handbook table of inorganic solubilities" },
  encyclopediaIronAlum: { title: "Wikipedia, Ammonium iron(III) sulfate" },
  encyclopediaBenzoicAcid: { title: "Wikipedia, Benzoic acid" },
  encyclopediaCopperGlycinate: { title: "Wikipedia, Copper(II) glycinate" },
  encyclopediaCitricAcid: { title: "Wikipedia, Citric acid" },
  encyclopediaChromeAlum: { title: "Great Soviet Encyclopedia, Chrome Alums (20 °C); encyclopedia infobox (25 °C)" },
  encyclopediaCalciumLactate: { title: "Wikipedia, Calcium lactate" },
  encyclopediaPerborate: { title: "Wikipedia, Sodium perborate, in English (18 °C) and German (20 °C)" },
  encyclopediaTrisodiumCitrate: { title: "Wikipedia, Trisodium citrate" },
  oxalateRecovery: { title: "research abstract on oxalate recovery of metals (unsigned)" },
  teachingRochelle: { title: "teaching page on Rochelle salt (unsigned)" },
  blanchardPreparations: { title: "Blanchard, Phelan and Davis, Synthetic Inorganic Chemistry, Wiley, New York, preparation 4, potassium copper sulfate", edition: "5th", year: 1936 },
  talbot: { title: "Talbot, An Introductory Course of Quantitative Chemical Analysis, precipitation, and phosphate as magnesium ammonium phosphate", fromMemory: "partly" },
  simmondsAlcohol: { title: "Simmonds, Alcohol: its production, properties, chemistry, and industrial applications, alcohol as a solvent, with figures of Turner and Bissett", year: 1919, fromMemory: "partly" },
  pharmacopoeiaTin: { title: "European Pharmacopoeia, monograph on stannous chloride dihydrate, characters" },
  bruntonZinc: { title: "Brunton, A Text-book of Pharmacology, Therapeutics and Materia Medica, zinc chloride and iodide, ferric chloride" },
  cyclopaediaCopper: { title: "The American Cyclopædia, nitrates, nitrate of copper", year: 1879, where: "vol. XII, p. 464" },
  picromerite2010: { title: "Solid-liquid phase equilibria in the system K2SO4-MgSO4-H2O at 318 K, Fluid Phase Equilibria 291, 151-153, abstract", year: 2010 },
  magnesiumSulfates: { title: "text on the sulfates of magnesium, blödite and its change into löweite (unsigned)" },
  cooleyCopper: { title: "Cooley's Cyclopaedia of Practical Receipts, 6th edition, volume I, neutral acetate of copper", year: 1880 },
} as const satisfies Sources;

/** How the figures reached us, where they were not read in the source itself. */
export const solubilityAccess = {
  crcSolubility98: "public copy, compared with a second copy of the 91st ed.; mass % converted to g per 100 g water",
  encyclopediaTartrate: "public copy; an unreviewed page, after a patent of 1963",
  encyclopediaSolubility: "public copy; an unreviewed collection, largely from older handbooks",
  supplierSolubility: "page read in part; a teaching table of the supplier, which names no sources",
  mohos2010: "stored pages; of the two tables the figure at 30 °C is that of the second, at 90 °C that of the first: the others do not lie on the curve",
  dalman1937: "mass fractions at 10, 20 and 30 °C as safety data sheets quote them, converted",
  perry: "figures at 0, 10 and 20 °C read, of the first 24 rows at every temperature, others recalled",
  langeSolubility: "as a directory of chemicals quotes it: g of anhydrous salt in 100 g of water",
  supplierSheets: "72 g of dihydrate per 100 g of water at 25 °C, converted",
  oldPharmacopoeia: "one part in 1.4 of water, converted",
  browneStewart1883: "stored page: 6.67 g of crystals in 100 cm3 of water at 58 °F, converted",
  makerGluconate: "g in 100 g of water between 0 and 80 °C",
  pharmacyPages: "stored page; it has both figures",
  echaSolubility: "stored pages of the dossiers: thiourea 137 g/L at 20 °C, calcium tartrate 0.412 g/L at 20 °C and pH 7",
  moissanNickel: "transcribed; measurements of Tobler",
  ladenburgZinc: "full text of the scanned page, goobi.tib.eu/viewer/fulltext/1663754802/504; measurements of Tobler, anhydrous salt as about 140 g/L at 25 °C (recalled) bears out; the figure at 60 °C cannot be read",
  polishSolubility: "stored page for 0, 20, 40 and 60 °C, joined with an encyclopedia table",
  encyclopediaCopperGlycinate: "public copies: 0.18 g in 100 g at 0 °C and 0.52 g at 25 °C, of which form and in 100 g of what is not said",
  encyclopediaIronAlum: "1240 g dodecahydrate per litre of water at 25 °C, taken as per kg of water and converted",
  encyclopediaBenzoicAcid: "g/L, converted with the density of water",
  encyclopediaCitricAcid: "g per 100 mL water",
  encyclopediaPerborate: "g of tetrahydrate in 100 mL and in a litre, taken as in 100 g of water and converted",
  encyclopediaChromeAlum: "18.3 % dodecahydrate at 20 °C, converted",
  teachingRochelle: "66 g tetrahydrate per 100 mL at 26 °C, converted as per 100 g water",
  blanchardPreparations: "page of a stored copy read: grams of anhydrous salt in 100 g of water at 25 °C; which edition the copy is of, the page does not say",
  talbot: "two pages of a stored copy read: colloids are washed with a volatile salt in the water, magnesium ammonium phosphate stands some hours and is washed with dilute ammonia; its 2.5 % from memory",
  simmondsAlcohol: "page of a public copy: grams of eight alkali halides in 100 g of ethanol at 25 °C; hydroxides of the alkali metals dissolve, their carbonates and the sulfates do not; author, title and year of the book from memory",
  pharmacopoeiaTin: "characters as a maker prints them: freely soluble in ethanol (96 per cent)",
  bruntonZinc: "pages of a public copy: soluble almost entirely or freely in water, alcohol and ether (the iodide: water and alcohol); very deliquescent",
  cyclopaediaCopper: "transcribed page: very soluble in alcohol",
  picromerite2010: "abstract on a stored page: picromerite and leonite between 314.15 and 320.65 K, both at 318 K beside 0.618 mol/kg of K2SO4 and 3.030 mol/kg of MgSO4",
  magnesiumSulfates: "stored page: blödite between 22 and 71 °C, 59 °C beside magnesium sulfate",
  cooleyCopper: "stored page: crystals dissolve in 14 parts of cold and 5 parts of boiling water, converted; a homoeopathic pharmacopoeia has the same for cold water",
} as const satisfies Access<typeof solubilitySources>;

/** What a row of this layer may name. */
export type SourceKey = keyof typeof solubilitySources | keyof typeof ionSources | keyof typeof hydrateSources | keyof typeof aqueousSources | keyof typeof generalSources;

const tables = () => [solubilitySources, ionSources, hydrateSources, aqueousSources, generalSources];

/** A source on one line, as it is printed under a working. */
export const cite = (key: SourceKey): string => citation(key, tables());

/** Whether a text is one of the keys. */
export const isSourceKey = (text: string): text is SourceKey => text.startsWith(OWN_FIGURE) || tables().some((table) => Object.hasOwn(table, text));

// What kind of thing a material is, worked out from its ions and elements: the ground for incompatibilities.

import { isCationElement } from "../ion/ion-index";
import { formulaKey, isWater, type Notation, type Part, readNotation } from "../ion/notation";
import { acidOf, saltOf } from "../ion/salt-readings";
import type { HazardClass } from "./data/incompatibilities";

/** Anion names and the classes they put a salt in. */
const BY_ANION: Readonly<Record<string, readonly HazardClass[]>> = {
  hypochlorite: ["hypochlorite", "pool chlorine", "oxidiser"],
  chlorite: ["chlorite", "oxidiser"],
  chlorate: ["chlorate", "oxidiser"],
  perchlorate: ["perchlorate", "oxidiser"],
  bromate: ["oxidiser"],
  iodate: ["oxidiser"],
  peroxodisulfate: ["persulfate", "oxidiser"],
  peroxosulfate: ["persulfate", "oxidiser", "pool chlorine"],
  hydrogenperoxosulfate: ["persulfate", "oxidiser", "pool chlorine", "acid"],
  nitrate: ["nitrate", "oxidiser"],
  nitrite: ["nitrite"],
  permanganate: ["permanganate", "oxidiser"],
  peroxide: ["peroxide salt", "oxidiser"],
  peroxoborate: ["percarbonate", "oxidiser"],
  cyanide: ["cyanide"],
  sulfide: ["sulfide"],
  hydrogensulfide: ["sulfide"],
  "disulfide(2-)": ["sulfide"],
  "trisulfide(2-)": ["polysulfide", "sulfide"],
  "tetrasulfide(2-)": ["polysulfide", "sulfide"],
  "pentasulfide(2-)": ["polysulfide", "sulfide"],
  sulfite: ["sulfite"],
  hydrogensulfite: ["sulfite"],
  disulfite: ["sulfite"],
  dithionite: ["sulfite"],
  thiosulfate: ["thiosulfate"],
  azide: ["azide"],
  thiocyanate: ["thiocyanate"],
  carbonate: ["carbonate"],
  hydrogencarbonate: ["carbonate"],
  fluoride: ["fluoride"],
  hydrogendifluoride: ["fluoride"],
  hexafluoridosilicate: ["fluoride"],
  phosphide: ["phosphide"],
  carbide: ["carbide"],
  acetylide: ["carbide"],
  chloride: ["chloride"],
  bromide: ["bromide"],
  iodide: ["iodide"],
  "triiodide(1-)": ["iodide"],
  superoxide: ["peroxide salt", "oxidiser"],
  oxalate: ["oxalate"],
  hydrogenoxalate: ["oxalate", "acid"],
  formate: ["formate"],
  hydrogensulfate: ["acid"],
  hydrogentartrate: ["acid"],
  chromate: ["chromium(VI)", "oxidiser"],
  dichromate: ["chromium(VI)", "oxidiser"],
  hydrogenchromate: ["chromium(VI)", "oxidiser"],
};

/** Molecules, acids, elements and goods by formula. */
const BY_FORMULA: Readonly<Record<string, readonly HazardClass[]>> = {
  H2O: ["water"],
  H2O2: ["peroxide", "oxidiser"],
  NH3: ["ammonia"],
  HCl: ["acid", "hydrochloric acid"],
  HBr: ["acid"],
  HI: ["acid", "iodide"],
  HF: ["acid", "fluoride", "hydrofluoric acid"],
  HCN: ["cyanide"],
  H2S: ["hydrogen sulfide"],
  "CO(NH2)2": ["urea", "amine"],
  H3NSO3: ["acid", "amine"],
  CH3NO2: ["nitromethane"],
  CHCl3: ["chloroform"],
  C2H5OH: ["alcohol"],
  CH3OH: ["alcohol"],
  C3H8O: ["alcohol"],
  CH3COCH3: ["ketone"],
  C12H22O11: ["sugar"],
  C6H12O6: ["sugar"],
  C3H8O3: ["glycerol", "glycol", "alcohol"],
  C2H6O2: ["glycol", "alcohol"],
  C2H2: ["acetylene"],
  C: ["carbon"],
  S: ["sulfur"],
  S8: ["sulfur"],
  P: ["phosphorus"],
  P4: ["phosphorus"],
  I2: ["iodine"],
  Br2: ["bromine"],
  Cl2: ["chlorine"],
  H2: ["hydrogen"],
  O2: ["oxygen"],
  CO2: ["carbon dioxide"],
  SO2: ["sulfur dioxide"],
  SO3: ["hydrolysing chloride"],
  AlCl3: ["hydrolysing chloride"],
  SnCl4: ["hydrolysing chloride"],
  TiCl4: ["hydrolysing chloride"],
  SiCl4: ["hydrolysing chloride"],
  BCl3: ["hydrolysing chloride"],
  PCl3: ["hydrolysing chloride"],
  PCl5: ["hydrolysing chloride"],
  POCl3: ["hydrolysing chloride"],
  SOCl2: ["hydrolysing chloride"],
  SO2Cl2: ["hydrolysing chloride"],
  HSO3Cl: ["hydrolysing chloride", "acid"],
  LiH: ["hydride"],
  NaH: ["hydride"],
  KH: ["hydride"],
  MgH2: ["hydride"],
  CaH2: ["hydride"],
  LiAlH4: ["hydride"],
  NaBH4: ["hydride"],
  KBH4: ["hydride"],
  Na2O2: ["alkali peroxide"],
  K2O2: ["alkali peroxide"],
  KO2: ["alkali peroxide"],
  SiO2: ["silica"],
  CrO3: ["chromium(VI)", "oxidiser"],
  NaOH: ["lye", "strong base"],
  KOH: ["lye", "strong base"],
  LiOH: ["lye", "strong base"],
  "Ca(OH)2": ["lime", "strong base"],
  CaO: ["lime", "quicklime", "strong base"],
  "Ba(OH)2": ["strong base"],
  "Sr(OH)2": ["strong base"],
  Mg: ["magnesium powder", "metal powder", "active metal"],
  Al: ["aluminium", "metal powder", "active metal"],
  Zn: ["zinc", "metal powder", "active metal"],
  Fe: ["metal powder", "active metal", "decay metal"],
  Sn: ["tin"],
  Cu: ["copper metal", "copper", "decay metal"],
  Ca: ["active metal", "alkali metal"],
  Li: ["active metal", "alkali metal"],
  Na: ["active metal", "alkali metal"],
  K: ["active metal", "alkali metal"],
  Ag: ["silver"],
  Ag2O: ["silver oxide"],
  C3N3O3Cl3: ["chloroisocyanurate", "pool chlorine", "oxidiser"],
  C3N3O3Cl2Na: ["chloroisocyanurate", "pool chlorine", "oxidiser"],
  "2Na2CO3·3H2O2": ["percarbonate", "oxidiser"],
};

/** Acids by their traditional names, beyond being an acid. Very weak ones are none here. */
const BY_ACID: Readonly<Record<string, readonly HazardClass[]>> = {
  "sulfuric acid": ["sulfuric acid"],
  "nitric acid": ["nitric acid", "oxidiser"],
  "perchloric acid": ["perchlorate", "oxidiser"],
  "acetic acid": ["acetic acid"],
  "formic acid": ["formate"],
  "chromic acid": ["chromium(VI)", "oxidiser"],
  "dichromic acid": ["chromium(VI)", "oxidiser"],
  "oxalic acid": ["oxalate", "oxalic acid"],
  "hydrazoic acid": ["azide"],
};
const TOO_WEAK: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "boric acid",
  "hydrocyanic acid",
  "metasilicic acid",
  "silicic acid",
  "metaboric acid",
]);

/** Metals whose presence alone matters. */
const BY_ELEMENT: Readonly<Record<string, readonly HazardClass[]>> = {
  Pb: ["lead"],
  Hg: ["mercury"],
  Cd: ["cadmium"],
  As: ["arsenic"],
  Cu: ["copper", "decay metal"],
  Fe: ["decay metal"],
  Co: ["decay metal"],
  Ni: ["decay metal"],
  Mn: ["manganese"],
};

const THERMITE_METALS: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "Fe",
  "Cu",
  "Mn",
  "Cr",
  "Pb",
  "Sn",
  "Co",
  "Ni",
  "V",
  "Mo",
  "W",
  "Ag",
  "Bi",
  "Hg",
]);

let byKey: ReadonlyMap<string, readonly HazardClass[]> | undefined;

function listed(key: string): readonly HazardClass[] {
  byKey ??= new Map(
    Object.entries(BY_FORMULA).map(([formula, classes]) => [formulaKey(readNotation(formula)), classes] as const),
  );
  return byKey.get(key) ?? [];
}

/** Carbon and hydrogen, no metal, no ammonium: burns with an oxidiser. Acids too weak in carbon count as acids only. */
function isOrganicFuel(part: Part): boolean {
  if (!part.counts.has("C") || !part.counts.has("H") || part.text.includes("NH4")) return false;
  if (["CO(NH2)2", "HCN", "H2C2O4", "HCOOH"].includes(part.text)) return false;
  return ![...part.counts.keys()].some(isCationElement);
}

function addAll(into: Set<HazardClass>, classes: readonly HazardClass[] | undefined): void {
  for (const one of classes ?? []) into.add(one);
}

function ofPart(part: Part, into: Set<HazardClass>): void {
  addAll(into, listed(formulaKey({ parts: [{ ...part, multiplier: 1 }], charge: 0 })));
  if (isWater(part)) return;
  const compound = part.counts.size > 1;
  for (const symbol of part.counts.keys())
    if (compound || ["Pb", "Hg", "Cd", "As"].includes(symbol)) addAll(into, BY_ELEMENT[symbol]);
  if (compound && part.counts.has("Ag")) into.add("silver salt");
  if (/\(CN\)/.test(part.text)) into.add("cyanido complex");
  if (/NH3/.test(part.text) && compound && [...part.counts.keys()].some(isCationElement)) into.add("ammonia");
  if (isOrganicFuel(part)) into.add("organic");
  const acid = acidOf(part)?.ion.row.acid;
  if (acid !== undefined && !TOO_WEAK.has(acid)) {
    into.add("acid");
    addAll(into, BY_ACID[acid]);
  }
  const salt = saltOf(part);
  if (salt === undefined) return;
  for (const { ion } of salt.anions) addAll(into, BY_ANION[ion.row.name]);
  if (into.has("cyanido complex")) into.delete("cyanide");
  const ammonium = salt.cations.some((use) => use.ion?.row.name === "ammonium");
  if (ammonium) into.add("ammonium");
  if (ammonium && into.has("nitrate")) into.add("ammonium nitrate");
  if (ammonium && into.has("oxalate")) into.add("ammonium oxalate");
  if (into.has("hypochlorite") && part.counts.has("Ca")) into.add("calcium hypochlorite");
  for (const use of salt.cations) {
    if (use.element?.symbol === "Cr" && use.charge === 3) into.add("chromium(III)");
    const oxideOnly = salt.anions.length === 1 && salt.anions[0]!.ion.row.name === "oxide";
    if (oxideOnly && use.element !== undefined && THERMITE_METALS.has(use.element.symbol)) into.add("metal oxide");
  }
}

/** Classes of a material. Crystal water does not make it water. */
export function classesOf(notation: Notation): ReadonlySet<HazardClass> {
  const classes = new Set<HazardClass>(listed(formulaKey(notation)));
  const dry = notation.parts.filter((part) => !isWater(part));
  for (const part of dry.length > 0 ? dry : notation.parts) ofPart(part, classes);
  return classes;
}

/** Materials whose use in a kitchen or from food vessels poisons. */
const TOXIC_METALS = ["Pb", "Hg", "Cd", "As", "Ba", "Co", "Ni", "Cr", "Tl", "Sb", "V", "Cu"];

/** Not to be brought near food. */
export function isToxicWork(notation: Notation): boolean {
  const classes = classesOf(notation);
  if (classes.has("cyanide") || classes.has("azide") || classes.has("fluoride") || classes.has("nitrite")) return true;
  return notation.parts.some((part) => TOXIC_METALS.some((symbol) => part.counts.has(symbol)));
}

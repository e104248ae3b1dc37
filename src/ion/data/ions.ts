// Polyatomic ions by name: formula, charge, the acid an anion comes from, older names, colour in water.
// A row's `source` holds for name, charge and acid (Red Book 2005: tables IR-8.1, IR-8.2 and IX, table numbers from memory).
import { columns } from "../../foundation/columns";
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One polyatomic ion. */
interface IonRow {
  readonly formula: string;
  readonly charge: number;
  readonly name: string;
  /** Name of the acid with all its hydrogen, for anions named after an acid. */
  readonly acid?: string;
  /** Older and other names. */
  readonly also?: readonly string[];
  /** Other ways the ion is written in a salt; the first is used when a formula is built. */
  readonly written?: readonly string[];
  /** Colour of its dilute solution; absent for colourless. */
  readonly colour?: string;
  /** Only taken when nothing commoner fits the composition. */
  readonly rare?: true;
  /** Rare, but not with these metals where it is written out. */
  readonly commonWith?: readonly string[];
  /** A metal with its ligands, which stays together in water and takes the metal out of a salt's cations. */
  readonly complex?: true;
  /** Named so only by itself: salts are named by their metal and oxide (vanadium(IV) oxide sulfate). */
  readonly alone?: true;
  readonly source: SourceKey;
}

/** What the fields rest on that a row's own source does not cover. */
export const ION_FIELD_SOURCES = { also: "memory", colour: "memory" } as const satisfies Record<string, SourceKey>;

/** Colour of the dilute solution of a monatomic ion. */
interface IonColour {
  /** With its charge: `Cu^2+`. */
  readonly ion: string;
  readonly colour: string;
  readonly source: SourceKey;
}

/** Monatomic ions that are not colourless. */
export const MONATOMIC_COLOURS: readonly IonColour[] = [
  { ion: "Cu^2+", colour: "blue", source: "memory" },
  { ion: "Fe^2+", colour: "pale green", source: "memory" },
  { ion: "Fe^3+", colour: "yellow-brown (pale violet as the pure aqua ion)", source: "memory" },
  { ion: "Co^2+", colour: "pink", source: "memory" },
  { ion: "Ni^2+", colour: "green", source: "memory" },
  { ion: "Cr^3+", colour: "violet or green", source: "memory" },
  { ion: "Cr^2+", colour: "blue", source: "memory" },
  { ion: "Mn^2+", colour: "very pale pink", source: "memory" },
  { ion: "V^2+", colour: "violet", source: "memory" },
  { ion: "V^3+", colour: "green", source: "memory" },
  { ion: "Ti^3+", colour: "violet", source: "memory" },
  { ion: "U^4+", colour: "green", source: "memory" },
];

export const ANIONS = /* @__PURE__ */ once((): readonly IonRow[] => [
  // -- hydroxide, peroxide and other diatomics
  { formula: "OH", charge: -1, name: "hydroxide", written: ["OH", "HO"], source: "redBook2005" },
  { formula: "O2", charge: -2, name: "peroxide", also: ["dioxide(2-)"], rare: true, source: "redBook2005" },
  { formula: "O2", charge: -1, name: "superoxide", also: ["dioxide(1-)", "hyperoxide"], rare: true, source: "redBook2005" },
  { formula: "O3", charge: -1, name: "ozonide", also: ["trioxide(1-)"], rare: true, source: "redBook2005" },
  { formula: "HO2", charge: -1, name: "hydrogenperoxide", also: ["hydroperoxide"], rare: true, source: "redBook2005" },
  { formula: "CN", charge: -1, name: "cyanide", acid: "hydrocyanic acid", source: "redBook2005" },
  { formula: "SCN", charge: -1, name: "thiocyanate", acid: "thiocyanic acid", also: ["rhodanide", "sulfocyanide"], written: ["SCN", "NCS", "CNS"], source: "redBook2005" },
  { formula: "SeCN", charge: -1, name: "selenocyanate", written: ["SeCN", "NCSe"], source: "redBook2005" },
  { formula: "OCN", charge: -1, name: "cyanate", acid: "cyanic acid", written: ["OCN", "NCO"], source: "redBook2005" },
  { formula: "CNO", charge: -1, name: "fulminate", acid: "fulminic acid", written: ["CNO", "ONC"], rare: true, commonWith: ["Ag", "Hg"], source: "redBook2005" },
  { formula: "N3", charge: -1, name: "azide", acid: "hydrazoic acid", source: "redBook2005" },
  { formula: "NH2", charge: -1, name: "amide", also: ["azanide"], source: "redBook2005" },
  { formula: "NH", charge: -2, name: "imide", also: ["azanediide"], rare: true, source: "redBook2005" },
  { formula: "C2", charge: -2, name: "acetylide", also: ["dicarbide(2-)"], source: "redBook2005" },
  { formula: "HS", charge: -1, name: "hydrogensulfide", also: ["sulfanide", "hydrosulfide", "bisulfide", "sulfhydrate"], written: ["HS", "SH"], source: "redBook2005" },
  { formula: "HSe", charge: -1, name: "hydrogenselenide", source: "redBook2005" },
  { formula: "S2", charge: -2, name: "disulfide(2-)", also: ["persulfide"], rare: true, source: "redBook2005" },
  { formula: "S3", charge: -2, name: "trisulfide(2-)", rare: true, source: "redBook2005" },
  { formula: "S4", charge: -2, name: "tetrasulfide(2-)", rare: true, source: "redBook2005" },
  { formula: "S5", charge: -2, name: "pentasulfide(2-)", rare: true, source: "redBook2005" },
  { formula: "I3", charge: -1, name: "triiodide(1-)", also: ["triiodide"], colour: "brown", rare: true, source: "redBook2005" },
  { formula: "HF2", charge: -1, name: "hydrogendifluoride", also: ["bifluoride", "hydrogenfluoride"], source: "redBook2005" },
  // -- oxoanions of the halogens
  { formula: "ClO", charge: -1, name: "hypochlorite", acid: "hypochlorous acid", written: ["ClO", "OCl"], source: "redBook2005" },
  { formula: "ClO2", charge: -1, name: "chlorite", acid: "chlorous acid", source: "redBook2005" },
  { formula: "ClO3", charge: -1, name: "chlorate", acid: "chloric acid", source: "redBook2005" },
  { formula: "ClO4", charge: -1, name: "perchlorate", acid: "perchloric acid", source: "redBook2005" },
  { formula: "BrO", charge: -1, name: "hypobromite", acid: "hypobromous acid", written: ["BrO", "OBr"], source: "redBook2005" },
  { formula: "BrO2", charge: -1, name: "bromite", acid: "bromous acid", source: "redBook2005" },
  { formula: "BrO3", charge: -1, name: "bromate", acid: "bromic acid", source: "redBook2005" },
  { formula: "BrO4", charge: -1, name: "perbromate", acid: "perbromic acid", source: "redBook2005" },
  { formula: "IO", charge: -1, name: "hypoiodite", acid: "hypoiodous acid", written: ["IO", "OI"], source: "redBook2005" },
  { formula: "IO2", charge: -1, name: "iodite", acid: "iodous acid", source: "redBook2005" },
  { formula: "IO3", charge: -1, name: "iodate", acid: "iodic acid", source: "redBook2005" },
  { formula: "IO4", charge: -1, name: "periodate", acid: "periodic acid", also: ["metaperiodate"], source: "redBook2005" },
  { formula: "IO6", charge: -5, name: "orthoperiodate", acid: "orthoperiodic acid", source: "redBook2005" },
  { formula: "FO", charge: -1, name: "hypofluorite", acid: "hypofluorous acid", written: ["OF", "FO"], source: "redBook2005" },
  // -- sulfur, selenium, tellurium
  { formula: "SO4", charge: -2, name: "sulfate", acid: "sulfuric acid", source: "redBook2005" },
  { formula: "HSO4", charge: -1, name: "hydrogensulfate", also: ["bisulfate", "acid sulfate"], source: "redBook2005" },
  { formula: "SO3", charge: -2, name: "sulfite", acid: "sulfurous acid", source: "redBook2005" },
  { formula: "HSO3", charge: -1, name: "hydrogensulfite", also: ["bisulfite", "acid sulfite"], source: "redBook2005" },
  { formula: "S2O3", charge: -2, name: "thiosulfate", acid: "thiosulfuric acid", also: ["hyposulfite"], source: "redBook2005" },
  { formula: "S2O4", charge: -2, name: "dithionite", acid: "dithionous acid", also: ["hydrosulfite"], source: "redBook2005" },
  { formula: "S2O5", charge: -2, name: "disulfite", acid: "disulfurous acid", also: ["metabisulfite", "pyrosulfite"], source: "redBook2005" },
  { formula: "S2O6", charge: -2, name: "dithionate", acid: "dithionic acid", source: "redBook2005" },
  { formula: "S2O7", charge: -2, name: "disulfate", acid: "disulfuric acid", also: ["pyrosulfate"], source: "redBook2005" },
  { formula: "S2O8", charge: -2, name: "peroxodisulfate", acid: "peroxodisulfuric acid", also: ["persulfate"], source: "redBook2005" },
  { formula: "SO5", charge: -2, name: "peroxosulfate", acid: "peroxosulfuric acid", also: ["peroxomonosulfate"], rare: true, source: "redBook2005" },
  { formula: "HSO5", charge: -1, name: "hydrogenperoxosulfate", also: ["peroxomonosulfate", "monopersulfate"], source: "redBook2005" },
  { formula: "S4O6", charge: -2, name: "tetrathionate", acid: "tetrathionic acid", source: "redBook2005" },
  { formula: "NH2SO3", charge: -1, name: "sulfamate", acid: "sulfamic acid", also: ["amidosulfate"], written: ["NH2SO3", "SO3NH2", "H2NSO3"], source: "redBook2005" },
  { formula: "SO3F", charge: -1, name: "fluorosulfate", acid: "fluorosulfuric acid", also: ["fluorosulfonate"], source: "redBook2005" },
  { formula: "SO3Cl", charge: -1, name: "chlorosulfate", acid: "chlorosulfuric acid", also: ["chlorosulfonate"], source: "redBook2005" },
  { formula: "SeO4", charge: -2, name: "selenate", acid: "selenic acid", source: "redBook2005" },
  { formula: "HSeO4", charge: -1, name: "hydrogenselenate", source: "redBook2005" },
  { formula: "SeO3", charge: -2, name: "selenite", acid: "selenous acid", source: "redBook2005" },
  { formula: "HSeO3", charge: -1, name: "hydrogenselenite", source: "redBook2005" },
  { formula: "TeO4", charge: -2, name: "tellurate", acid: "telluric acid", source: "redBook2005" },
  { formula: "TeO3", charge: -2, name: "tellurite", acid: "tellurous acid", source: "redBook2005" },
  { formula: "TeO6", charge: -6, name: "orthotellurate", acid: "orthotelluric acid", source: "redBook2005" },
  // -- nitrogen
  { formula: "NO3", charge: -1, name: "nitrate", acid: "nitric acid", source: "redBook2005" },
  { formula: "NO2", charge: -1, name: "nitrite", acid: "nitrous acid", source: "redBook2005" },
  { formula: "N2O2", charge: -2, name: "hyponitrite", acid: "hyponitrous acid", also: ["diazenediolate"], rare: true, source: "redBook2005" },
  // -- phosphorus, arsenic, antimony
  { formula: "PO4", charge: -3, name: "phosphate", acid: "phosphoric acid", also: ["orthophosphate"], source: "redBook2005" },
  { formula: "HPO4", charge: -2, name: "hydrogenphosphate", also: ["monohydrogenphosphate", "biphosphate"], source: "redBook2005" },
  { formula: "H2PO4", charge: -1, name: "dihydrogenphosphate", also: ["biphosphate"], source: "redBook2005" },
  { formula: "PO3", charge: -3, name: "phosphite", acid: "phosphorous acid", also: ["orthophosphite"], rare: true, source: "redBook2005" },
  { formula: "PO3", charge: -1, name: "metaphosphate", acid: "metaphosphoric acid", also: ["trioxidophosphate"], source: "redBook2005" },
  { formula: "HPO3", charge: -2, name: "phosphonate", acid: "phosphonic acid", also: ["hydrogenphosphite", "phosphite"], written: ["HPO3", "PHO3"], source: "redBook2005" },
  { formula: "H2PO3", charge: -1, name: "hydrogenphosphonate", also: ["dihydrogenphosphite"], source: "redBook2005" },
  { formula: "H2PO2", charge: -1, name: "phosphinate", acid: "phosphinic acid", also: ["hypophosphite"], written: ["H2PO2", "PH2O2"], source: "redBook2005" },
  { formula: "P2O7", charge: -4, name: "diphosphate", acid: "diphosphoric acid", also: ["pyrophosphate"], source: "redBook2005" },
  { formula: "HP2O7", charge: -3, name: "hydrogendiphosphate", source: "redBook2005" },
  { formula: "H2P2O7", charge: -2, name: "dihydrogendiphosphate", also: ["acid pyrophosphate"], source: "redBook2005" },
  { formula: "H3P2O7", charge: -1, name: "trihydrogendiphosphate", source: "redBook2005" },
  { formula: "P3O10", charge: -5, name: "triphosphate", acid: "triphosphoric acid", also: ["tripolyphosphate"], source: "redBook2005" },
  { formula: "P3O9", charge: -3, name: "cyclo-triphosphate", also: ["trimetaphosphate"], source: "redBook2005" },
  { formula: "P4O12", charge: -4, name: "cyclo-tetraphosphate", also: ["tetrametaphosphate"], source: "redBook2005" },
  { formula: "P6O18", charge: -6, name: "cyclo-hexaphosphate", also: ["hexametaphosphate"], source: "redBook2005" },
  { formula: "AsO4", charge: -3, name: "arsenate", acid: "arsenic acid", source: "redBook2005" },
  { formula: "HAsO4", charge: -2, name: "hydrogenarsenate", source: "redBook2005" },
  { formula: "H2AsO4", charge: -1, name: "dihydrogenarsenate", source: "redBook2005" },
  { formula: "AsO3", charge: -3, name: "arsenite", acid: "arsenous acid", source: "redBook2005" },
  { formula: "HAsO3", charge: -2, name: "hydrogenarsenite", source: "redBook2005" },
  { formula: "H2AsO3", charge: -1, name: "dihydrogenarsenite", source: "redBook2005" },
  { formula: "AsO2", charge: -1, name: "metaarsenite", rare: true, source: "redBook2005" },
  { formula: "SbO4", charge: -3, name: "antimonate", acid: "antimonic acid", rare: true, source: "redBook2005" },
  { formula: "SbO3", charge: -3, name: "antimonite", rare: true, source: "redBook2005" },
  { formula: "PF6", charge: -1, name: "hexafluoridophosphate", also: ["hexafluorophosphate"], source: "redBook2005" },
  { formula: "AsF6", charge: -1, name: "hexafluoridoarsenate", also: ["hexafluoroarsenate"], source: "redBook2005" },
  { formula: "SbF6", charge: -1, name: "hexafluoridoantimonate", also: ["hexafluoroantimonate"], source: "redBook2005" },
  // -- carbon and organic acids
  { formula: "CO3", charge: -2, name: "carbonate", acid: "carbonic acid", source: "redBook2005" },
  { formula: "HCO3", charge: -1, name: "hydrogencarbonate", also: ["bicarbonate", "acid carbonate"], source: "redBook2005" },
  { formula: "CS3", charge: -2, name: "trithiocarbonate", acid: "trithiocarbonic acid", source: "redBook2005" },
  { formula: "C2O4", charge: -2, name: "oxalate", acid: "oxalic acid", also: ["ethanedioate"], written: ["C2O4", "COOCOO"], source: "redBook2005" },
  { formula: "HC2O4", charge: -1, name: "hydrogenoxalate", also: ["binoxalate", "bioxalate"], source: "redBook2005" },
  { formula: "HCOO", charge: -1, name: "formate", acid: "formic acid", also: ["methanoate"], written: ["HCOO", "HCO2", "CHO2", "CHOO", "OOCH", "O2CH"], source: "memory" },
  { formula: "CH3COO", charge: -1, name: "acetate", acid: "acetic acid", also: ["ethanoate"], written: ["CH3COO", "CH3CO2", "C2H3O2", "OOCCH3", "O2CCH3"], source: "memory" },
  { formula: "C2H5COO", charge: -1, name: "propionate", acid: "propionic acid", also: ["propanoate"], written: ["C2H5COO", "C3H5O2", "CH3CH2COO", "C2H5CO2"], source: "memory" },
  { formula: "C3H7COO", charge: -1, name: "butyrate", acid: "butyric acid", also: ["butanoate"], written: ["C3H7COO", "C4H7O2"], source: "memory" },
  { formula: "C3H5O3", charge: -1, name: "lactate", acid: "lactic acid", written: ["C3H5O3", "CH3CHOHCOO"], source: "memory" },
  { formula: "C2H3O3", charge: -1, name: "glycolate", acid: "glycolic acid", source: "memory" },
  { formula: "NH2CH2COO", charge: -1, name: "glycinate", acid: "glycine", written: ["NH2CH2COO", "C2H4NO2", "H2NCH2COO"], source: "memory" },
  { formula: "C4H4O6", charge: -2, name: "tartrate", acid: "tartaric acid", source: "memory" },
  { formula: "HC4H4O6", charge: -1, name: "hydrogentartrate", also: ["bitartrate", "acid tartrate"], written: ["HC4H4O6", "C4H5O6"], source: "memory" },
  { formula: "C4H4O5", charge: -2, name: "malate", acid: "malic acid", source: "memory" },
  { formula: "C4H4O4", charge: -2, name: "succinate", acid: "succinic acid", source: "memory" },
  { formula: "C3H2O4", charge: -2, name: "malonate", acid: "malonic acid", source: "memory" },
  { formula: "C6H5O7", charge: -3, name: "citrate", acid: "citric acid", source: "memory" },
  { formula: "HC6H5O7", charge: -2, name: "hydrogencitrate", written: ["HC6H5O7", "C6H6O7"], source: "memory" },
  { formula: "H2C6H5O7", charge: -1, name: "dihydrogencitrate", written: ["H2C6H5O7", "C6H7O7"], source: "memory" },
  { formula: "C6H7O6", charge: -1, name: "ascorbate", acid: "ascorbic acid", source: "memory" },
  { formula: "C6H7O2", charge: -1, name: "sorbate", acid: "sorbic acid", source: "memory" },
  { formula: "C5H8NO4", charge: -1, name: "glutamate", acid: "glutamic acid", source: "memory" },
  { formula: "C6H11O7", charge: -1, name: "gluconate", acid: "gluconic acid", source: "memory" },
  { formula: "C6H5COO", charge: -1, name: "benzoate", acid: "benzoic acid", written: ["C6H5COO", "C7H5O2"], source: "memory" },
  { formula: "C7H5O3", charge: -1, name: "salicylate", acid: "salicylic acid", source: "memory" },
  { formula: "C8H4O4", charge: -2, name: "phthalate", acid: "phthalic acid", source: "memory" },
  { formula: "HC8H4O4", charge: -1, name: "hydrogenphthalate", also: ["biphthalate", "acid phthalate"], written: ["HC8H4O4", "C8H5O4"], source: "memory" },
  { formula: "C17H35COO", charge: -1, name: "stearate", acid: "stearic acid", also: ["octadecanoate"], written: ["C17H35COO", "C18H35O2"], source: "memory" },
  { formula: "C15H31COO", charge: -1, name: "palmitate", acid: "palmitic acid", written: ["C15H31COO", "C16H31O2"], source: "memory" },
  { formula: "C17H33COO", charge: -1, name: "oleate", acid: "oleic acid", written: ["C17H33COO", "C18H33O2"], source: "memory" },
  { formula: "C6H2N3O7", charge: -1, name: "picrate", acid: "picric acid", colour: "yellow", source: "memory" },
  { formula: "NH2COO", charge: -1, name: "carbamate", acid: "carbamic acid", written: ["NH2COO", "NH2CO2", "CO2NH2"], source: "memory" },
  { formula: "C2H5O", charge: -1, name: "ethoxide", also: ["ethanolate"], rare: true, written: ["OC2H5", "C2H5O"], source: "memory" },
  { formula: "CH3O", charge: -1, name: "methoxide", also: ["methanolate"], rare: true, written: ["OCH3", "CH3O"], source: "memory" },
  { formula: "C10H12N2O8", charge: -4, name: "ethylenediaminetetraacetate", also: ["edetate"], acid: "ethylenediaminetetraacetic acid", source: "memory" },
  { formula: "C10H14N2O8", charge: -2, name: "dihydrogenethylenediaminetetraacetate", written: ["C10H14N2O8", "H2C10H12N2O8"], source: "memory" },
  { formula: "C5H7O2", charge: -1, name: "acetylacetonate", also: ["pentane-2,4-dionate"], source: "memory" },
  { formula: "CN2", charge: -2, name: "cyanamide", source: "memory" },
  { formula: "PO3F", charge: -2, name: "fluorophosphate", acid: "fluorophosphoric acid", also: ["monofluorophosphate", "phosphorofluoridate"], source: "memory" },
  { formula: "CrO3Cl", charge: -1, name: "chlorochromate", colour: "orange", source: "memory" },
  // -- boron, silicon
  { formula: "BO3", charge: -3, name: "borate", acid: "boric acid", also: ["orthoborate"], source: "redBook2005" },
  { formula: "BO3", charge: -1, name: "peroxoborate", also: ["perborate"], source: "redBook2005" },
  { formula: "BO2", charge: -1, name: "metaborate", acid: "metaboric acid", source: "redBook2005" },
  { formula: "B4O7", charge: -2, name: "tetraborate", acid: "tetraboric acid", also: ["pyroborate", "biborate"], source: "redBook2005" },
  { formula: "B6O11", charge: -4, name: "hexaborate", rare: true, source: "redBook2005" },
  { formula: "BF4", charge: -1, name: "tetrafluoridoborate", acid: "tetrafluoridoboric acid", also: ["tetrafluoroborate", "fluoroborate", "fluoborate"], source: "redBook2005" },
  { formula: "BH4", charge: -1, name: "tetrahydridoborate", also: ["borohydride", "tetrahydroborate", "boranuide"], source: "redBook2005" },
  { formula: "SiO3", charge: -2, name: "metasilicate", acid: "metasilicic acid", also: ["silicate", "trioxidosilicate"], source: "redBook2005" },
  { formula: "SiO4", charge: -4, name: "silicate", acid: "silicic acid", also: ["orthosilicate"], source: "redBook2005" },
  { formula: "Si2O7", charge: -6, name: "disilicate", acid: "disilicic acid", source: "redBook2005" },
  { formula: "Si2O5", charge: -2, name: "pentaoxidodisilicate", rare: true, source: "redBook2005" },
  { formula: "Si3O8", charge: -4, name: "octaoxidotrisilicate", rare: true, source: "redBook2005" },
  { formula: "Si3O7", charge: -2, name: "trisilicate", rare: true, source: "redBook2005" },
  { formula: "Si4O10", charge: -4, name: "decaoxidotetrasilicate", rare: true, source: "redBook2005" },
  { formula: "SiF6", charge: -2, name: "hexafluoridosilicate", acid: "hexafluoridosilicic acid", also: ["hexafluorosilicate", "fluorosilicate", "fluosilicate", "silicofluoride"], source: "redBook2005" },
  // -- metals in the anion
  { formula: "AlO2", charge: -1, name: "aluminate", also: ["dioxidoaluminate"], rare: true, source: "redBook2005" },
  { formula: "Al(OH)4", charge: -1, name: "tetrahydroxidoaluminate", also: ["tetrahydroxoaluminate"], source: "redBook2005" },
  { formula: "AlF6", charge: -3, name: "hexafluoridoaluminate", also: ["hexafluoroaluminate"], source: "redBook2005" },
  { formula: "AlH4", charge: -1, name: "tetrahydridoaluminate", also: ["aluminium hydride", "alanate"], source: "redBook2005" },
  { formula: "CrO4", charge: -2, name: "chromate", acid: "chromic acid", colour: "yellow", source: "redBook2005" },
  { formula: "HCrO4", charge: -1, name: "hydrogenchromate", colour: "orange", source: "redBook2005" },
  { formula: "Cr2O7", charge: -2, name: "dichromate", acid: "dichromic acid", also: ["bichromate"], colour: "orange", source: "redBook2005" },
  { formula: "CrO2", charge: -1, name: "chromite", rare: true, source: "redBook2005" },
  { formula: "MnO4", charge: -1, name: "permanganate", acid: "permanganic acid", colour: "purple", source: "redBook2005" },
  { formula: "MnO4", charge: -2, name: "manganate", acid: "manganic acid", colour: "green", source: "redBook2005" },
  { formula: "FeO4", charge: -2, name: "tetraoxidoferrate(VI)", also: ["ferrate"], colour: "purple", source: "redBook2005" },
  { formula: "MoO4", charge: -2, name: "molybdate", acid: "molybdic acid", source: "redBook2005" },
  { formula: "Mo7O24", charge: -6, name: "heptamolybdate", also: ["paramolybdate"], source: "redBook2005" },
  { formula: "WO4", charge: -2, name: "tungstate", acid: "tungstic acid", also: ["wolframate"], source: "redBook2005" },
  { formula: "VO3", charge: -1, name: "trioxidovanadate(V)", also: ["metavanadate"], source: "redBook2005" },
  { formula: "VO4", charge: -3, name: "vanadate", also: ["orthovanadate", "tetraoxidovanadate(V)"], source: "redBook2005" },
  { formula: "ReO4", charge: -1, name: "perrhenate", acid: "perrhenic acid", source: "redBook2005" },
  { formula: "TcO4", charge: -1, name: "pertechnetate", acid: "pertechnetic acid", source: "redBook2005" },
  { formula: "RuO4", charge: -1, name: "perruthenate", source: "redBook2005" },
  { formula: "TiO3", charge: -2, name: "titanate", also: ["metatitanate"], rare: true, source: "redBook2005" },
  { formula: "ZrO3", charge: -2, name: "zirconate", rare: true, source: "redBook2005" },
  { formula: "NbO3", charge: -1, name: "niobate", rare: true, source: "redBook2005" },
  { formula: "TaO3", charge: -1, name: "tantalate", rare: true, source: "redBook2005" },
  { formula: "SnO3", charge: -2, name: "stannate", also: ["metastannate"], source: "redBook2005" },
  { formula: "Sn(OH)6", charge: -2, name: "hexahydroxidostannate(IV)", also: ["hexahydroxostannate(IV)"], source: "redBook2005" },
  { formula: "Zn(OH)4", charge: -2, name: "tetrahydroxidozincate", also: ["tetrahydroxozincate", "zincate"], source: "redBook2005" },
  { formula: "PbO3", charge: -2, name: "plumbate", rare: true, source: "redBook2005" },
  { formula: "UO4", charge: -2, name: "uranate", rare: true, source: "redBook2005" },
  { formula: "U2O7", charge: -2, name: "diuranate", rare: true, source: "redBook2005" },
  { formula: "Fe(CN)6", complex: true, charge: -3, name: "hexacyanidoferrate(III)", also: ["ferricyanide", "hexacyanoferrate(III)"], colour: "yellow", source: "redBook2005" },
  { formula: "Fe(CN)6", complex: true, charge: -4, name: "hexacyanidoferrate(II)", also: ["ferrocyanide", "hexacyanoferrate(II)"], colour: "pale yellow", source: "redBook2005" },
  { formula: "Fe(CN)5NO", complex: true, charge: -2, name: "pentacyanidonitrosylferrate(2-)", also: ["nitroprusside", "nitroferricyanide", "pentacyanidonitrosylferrate"], colour: "red", source: "redBook2005" },
  { formula: "AuCl4", charge: -1, name: "tetrachloridoaurate(III)", also: ["chloroaurate", "tetrachloroaurate(III)"], colour: "yellow", source: "redBook2005" },
  { formula: "PtCl6", charge: -2, name: "hexachloridoplatinate(IV)", also: ["chloroplatinate", "hexachloroplatinate(IV)"], colour: "orange", source: "redBook2005" },
  { formula: "C4H7N2O2", charge: -1, name: "dimethylglyoximate", rare: true, source: "memory" },
]);

export const CATIONS = /* @__PURE__ */ once((): readonly IonRow[] => [
  { formula: "NH4", charge: 1, name: "ammonium", also: ["azanium"], source: "redBook2005" },
  { formula: "H3O", charge: 1, name: "oxidanium", also: ["oxonium", "hydronium", "hydroxonium"], rare: true, source: "redBook2005" },
  { formula: "PH4", charge: 1, name: "phosphanium", also: ["phosphonium"], source: "redBook2005" },
  { formula: "N2H5", charge: 1, name: "hydrazinium", also: ["hydrazinium(1+)", "diazanium"], source: "redBook2005" },
  { formula: "N2H6", charge: 2, name: "hydrazinium(2+)", also: ["diazanediium"], source: "redBook2005" },
  { formula: "NH3OH", charge: 1, name: "hydroxylammonium", written: ["NH3OH", "NH4O"], source: "redBook2005" },
  { formula: "CH3NH3", charge: 1, name: "methylammonium", also: ["methylazanium"], written: ["CH3NH3", "CNH6"], source: "memory" },
  { formula: "N(CH3)4", charge: 1, name: "tetramethylammonium", also: ["tetramethylazanium"], written: ["N(CH3)4", "(CH3)4N"], source: "memory" },
  { formula: "NO", charge: 1, name: "nitrosyl", also: ["oxidonitrogen(1+)", "nitrosonium"], rare: true, source: "redBook2005" },
  { formula: "NO2", charge: 1, name: "nitryl", also: ["dioxidonitrogen(1+)", "nitronium"], rare: true, source: "redBook2005" },
  { formula: "Hg2", charge: 2, name: "dimercury(2+)", also: ["mercury(I)", "mercurous", "dimercury"], source: "redBook2005" },
  { formula: "UO2", charge: 2, name: "dioxidouranium(VI)", also: ["uranyl", "uranyl(VI)", "uranyl(2+)"], colour: "yellow", source: "redBook2005" },
  { formula: "VO", charge: 2, name: "oxidovanadium(IV)", also: ["vanadyl", "vanadyl(IV)", "vanadyl(2+)"], colour: "blue", alone: true, source: "redBook2005" },
  { formula: "VO2", charge: 1, name: "dioxidovanadium(V)", also: ["pervanadyl"], colour: "yellow", alone: true, source: "redBook2005" },
  { formula: "ZrO", charge: 2, name: "oxidozirconium(IV)", also: ["zirconyl"], alone: true, source: "redBook2005" },
  { formula: "TiO", charge: 2, name: "oxidotitanium(IV)", also: ["titanyl"], alone: true, source: "redBook2005" },
]);

/** Without other names and colours: what a formula is read with. */
export const READ_ANIONS = /* @__PURE__ */ columns(ANIONS, ["formula", "charge", "name", "acid", "written", "rare", "commonWith", "complex", "source"]);

/** As {@link READ_ANIONS}. */
export const READ_CATIONS = /* @__PURE__ */ columns(CATIONS, ["formula", "charge", "name", "written", "rare", "alone", "source"]);

/** An ion as the reader of formulas knows it. */
export type ReadIonRow = Omit<IonRow, "also" | "colour">;

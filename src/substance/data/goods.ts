// Goods, minerals and old remedies that are no single substance: what the word means, and which substances are in it, so that
// no danger of them is passed over in silence. No amount can be calculated from these names: the pack or a test decides.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

interface GoodRow {
  readonly names: readonly string[];
  /** What it is, in one line that goes on after the name. */
  readonly what: string;
  /** Formulas of what is in it, the graver first; empty where nothing with a formula is. */
  readonly contains: readonly string[];
  readonly source: SourceKey;
}

export const GOODS = /* @__PURE__ */ once((): readonly GoodRow[] => [
  { names: ["gelatin", "gelatine", "bone glue", "hide glue"], what: "protein of skins and bones, a food", contains: [], source: "commonPractice" },
  { names: ["lactose", "milk sugar", "sugar of milk"], what: "the sugar of milk, C12H22O11 with one water: the composition of sucrose, but another sugar, a sixth as soluble", contains: [], source: "commonPractice" },
  { names: ["fructose", "fruit sugar"], what: "the sugar of fruit, C6H12O6: the composition of glucose, but another sugar", contains: [], source: "commonPractice" },
  { names: ["turpentine", "oil of turpentine", "turps", "gum turpentine"], what: "oil of pine resin, chiefly pinene", contains: ["C10H16"], source: "commonPractice" },
  { names: ["paraffin", "paraffin wax", "candle wax"], what: "mixed alkanes; the wax is meant here, in some countries paraffin is lamp oil, which burns and must not be swallowed", contains: [], source: "commonPractice" },
  { names: ["curing salt", "pink curing salt", "nitrite curing salt", "prague powder"], what: "table salt with 0.5 to 6.25 % sodium nitrite, some with nitrate", contains: ["NaNO2", "NaCl"], source: "commonPractice" },
  { names: ["universal indicator"], what: "several indicator dyes in alcohol and water", contains: ["C2H5OH"], source: "commonPractice" },
  { names: ["litmus", "litmus tincture"], what: "dyes of lichens, red below pH 4.5 and blue above pH 8.3", contains: [], source: "commonPractice" },
  { names: ["nepheline syenite"], what: "rock of feldspars and nepheline; the supplier's oxide analysis counts", contains: ["NaAlSi3O8", "KAlSi3O8"], source: "commonPractice" },
  { names: ["lepidolite"], what: "lithium mica with fluorine, of changing composition; it gives off fluorides in the kiln", contains: ["KLi2AlSi4O10F2"], source: "commonPractice" },
  { names: ["ulexite"], what: "borate of sodium and calcium, NaCaB5O9 with 8 waters", contains: ["NaCaB5O9·8H2O"], source: "commonPractice" },
  { names: ["gerstley borate"], what: "rock of ulexite and colemanite with clay, of changing composition", contains: ["NaCaB5O9·8H2O", "Ca2B6O11·5H2O"], source: "commonPractice" },
  { names: ["bentonite"], what: "clay that swells, chiefly montmorillonite; its dust contains quartz", contains: ["SiO2"], source: "commonPractice" },
  { names: ["ball clay", "fireclay"], what: "kaolinite with quartz and mica; the supplier's oxide analysis counts", contains: ["Al2Si2O5(OH)4", "SiO2"], source: "commonPractice" },
  { names: ["frit", "glaze frit", "borax frit"], what: "ground glass by the maker's recipe; old ones and some today contain lead: ask for the analysis", contains: [], source: "commonPractice" },
  { names: ["lead frit", "lead bisilicate"], what: "ground lead glass, about 65 % PbO", contains: ["PbO"], source: "commonPractice" },
  { names: ["rock phosphate", "phosphate rock"], what: "ground fluorapatite with lime and clay; hydrofluoric acid with strong acids", contains: ["Ca5(PO4)3F"], source: "commonPractice" },
  { names: ["nesslers reagent", "nessler's reagent", "nessler reagent"], what: "potassium tetraiodidomercurate in strong lye", contains: ["K2HgI4", "KOH"], source: "commonPractice" },
  { names: ["liver of sulfur", "liver of sulphur", "hepar sulfuris"], what: "potassium polysulfides with thiosulfate and sulfate, by melting potash with sulfur", contains: ["K2S", "K2S2O3"], source: "commonPractice" },
  { names: ["lithopone"], what: "zinc sulfide precipitated with barium sulfate", contains: ["ZnS", "BaSO4"], source: "commonPractice" },
  { names: ["ultramarine", "ultramarine blue"], what: "sodium aluminosilicate with caged polysulfide; hydrogen sulfide with acid", contains: [], source: "commonPractice" },
  { names: ["naples yellow"], what: "lead antimonate; modern paint of this name is often made of other pigments", contains: ["Pb2Sb2O7"], source: "commonPractice" },
  { names: ["paris green", "emerald green pigment", "schweinfurt green"], what: "copper acetate arsenite, a deadly old pigment and insect poison", contains: ["Cu(CH3COO)2·3Cu(AsO2)2"], source: "commonPractice" },
  { names: ["venetian red"], what: "iron(III) oxide with calcium sulfate", contains: ["Fe2O3", "CaSO4"], source: "commonPractice" },
  { names: ["aqua regia"], what: "three volumes of strong hydrochloric acid and one of strong nitric acid, mixed when used and never kept closed: it gives off chlorine", contains: ["HNO3", "HCl"], source: "commonPractice" },
  { names: ["soda lime"], what: "slaked lime with some sodium hydroxide, often with an indicator dye", contains: ["NaOH", "Ca(OH)2"], source: "commonPractice" },
  { names: ["milk of lime", "lime milk"], what: "slaked lime stirred up in water", contains: ["Ca(OH)2"], source: "commonPractice" },
  { names: ["bauxite"], what: "rock of aluminium hydroxides with iron oxide and clay", contains: ["AlO(OH)", "Al(OH)3", "Fe2O3"], source: "commonPractice" },
  { names: ["catechol", "pyrocatechol"], what: "benzene-1,2-diol, C6H6O2: the composition of hydroquinone, but more poisonous", contains: ["C6H6O2"], source: "commonPractice" },
  { names: ["resorcinol"], what: "benzene-1,3-diol, C6H6O2: the composition of hydroquinone", contains: ["C6H6O2"], source: "commonPractice" },
  { names: ["malachite green"], what: "a dye, as oxalate or chloride, poisonous when swallowed; no food fish is treated with it", contains: [], source: "commonPractice" },
  { names: ["black powder", "gunpowder"], what: "saltpetre, charcoal and sulfur: an explosive", contains: ["KNO3", "S", "C"], source: "commonPractice" },
  { names: ["thermite"], what: "iron oxide and aluminium powder: burns at 2500 °C and cannot be put out", contains: ["Fe2O3", "Al"], source: "commonPractice" },
  { names: ["fowlers solution", "fowler's solution"], what: "potassium arsenite, an old remedy", contains: ["KAsO2"], source: "commonPractice" },
  { names: ["bronze"], what: "alloy of copper and tin", contains: ["Cu", "Sn"], source: "commonPractice" },
  { names: ["salts of lemon", "salts of sorrel", "salt of sorrel", "essential salt of lemon"], what: "potassium hydrogenoxalate, often with oxalic acid: poisonous, whatever the name promises", contains: ["KHC2O4", "H2C2O4·2H2O"], source: "commonPractice" },
  { names: ["kainite"], what: "potassium chloride with magnesium sulfate and about three waters; sold for its potassium, 11 % K2O", contains: ["KCl", "MgSO4"], source: "commonPractice" },
  { names: ["hydrazine sulfate"], what: "hydrazine with sulfuric acid, 1 : 1, poisonous", contains: ["N2H4·H2SO4"], source: "commonPractice" },
  { names: ["tartar emetic"], what: "antimony(III) potassium tartrate with half a water, poisonous", contains: ["KSbC4H4O7·0.5H2O"], source: "commonPractice" },
  { names: ["methylated spirit", "methylated spirits", "denatured alcohol"], what: "ethanol of 90 to 96 % by volume made unfit to drink, some with methanol", contains: ["CH3OH", "C2H5OH"], source: "commonPractice" },
  { names: ["silica gel"], what: "amorphous silicon dioxide with water; orange and blue beads contain an indicator, the blue one cobalt", contains: [], source: "commonPractice" },
  { names: ["sienna", "raw sienna", "burnt sienna", "umber"], what: "clay coloured by iron, umber by manganese as well", contains: ["FeO(OH)", "Al2Si2O5(OH)4"], source: "commonPractice" },
]);

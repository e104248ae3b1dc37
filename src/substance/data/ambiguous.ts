// Names that stand for several substances, and what on the pack or at the balance decides between them.
// Formulas as in the registry.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One thing an ambiguous name may mean. */
interface AmbiguousReading {
  readonly formula: string;
  /** What speaks for this reading. */
  readonly decides: string;
}

/** A name, or several with the same readings. */
interface AmbiguousRow {
  readonly names: readonly string[];
  readonly readings: readonly AmbiguousReading[];
  readonly source: SourceKey;
}

export const AMBIGUOUS = /* @__PURE__ */ once((): readonly AmbiguousRow[] => [
  { names: ["copper acetate", "acetate of copper"], readings: [
    { formula: "Cu(CH3COO)2·H2O", decides: "dark blue-green crystals as sold: the neutral acetate with one water" },
    { formula: "Cu(CH3COO)2", decides: "labelled anhydrous" },
    { formula: "CuCH3COO", decides: "labelled copper(I): pale solid, never from water" },
    { formula: "Cu2(OH)(CH3COO)3·5H2O", decides: "pale blue-green pigment: one of the basic acetates, read the Cu figure" },
  ], source: "commonPractice" },
  { names: ["verdigris"], readings: [
    { formula: "Cu(CH3COO)2·H2O", decides: "neutral verdigris: dark crystals, soluble in water" },
    { formula: "Cu2(OH)(CH3COO)3·5H2O", decides: "pigment verdigris: one of the basic acetates, smells of vinegar with acid" },
    { formula: "Cu2(OH)2CO3", decides: "the green crust of roofs, loosely so called: fizzes with acid" },
    { formula: "Cu2(OH)3Cl", decides: "the green crust near the sea: does not fizz" },
  ], source: "commonPractice" },
  { names: ["zinc carbonate", "precipitated zinc carbonate"], readings: [
    { formula: "ZnCO3", decides: "the mineral, or precipitated under pressure of CO2: 52.1 % Zn" },
    { formula: "Zn5(OH)6(CO3)2", decides: "precipitated from hot or soda solutions, as sold: 59.5 % Zn, loses 25.9 % on heating" },
  ], source: "commonPractice" },
  { names: ["magnesium carbonate", "carbonate of magnesia"], readings: [
    { formula: "MgCO3", decides: "the mineral magnesite: dense, loses 52.2 % on heating" },
    { formula: "Mg5(CO3)4(OH)2·4H2O", decides: "light powder or gym chalk: 43 % MgO, loses 56.9 % on heating" },
    { formula: "MgCO3·3H2O", decides: "needles from cold solutions: loses 70.9 % on heating" },
  ], source: "commonPractice" },
  { names: ["soda"], readings: [
    { formula: "Na2CO3", decides: "soda ash: dense white powder, no loss at 150 °C" },
    { formula: "Na2CO3·10H2O", decides: "clear crystals (washing soda): loses 63 % on drying" },
    { formula: "Na2CO3·H2O", decides: "powder that loses 14.5 % on drying" },
    { formula: "NaHCO3", decides: "baking soda: loses 36.9 % at 250 °C, fizzes with vinegar at once" },
    { formula: "NaOH", decides: "caustic soda: beads or flakes that absorb water from the air" },
  ], source: "commonPractice" },
  { names: ["washing soda"], readings: [
    { formula: "Na2CO3·10H2O", decides: "clear crystals: loses 63 % on drying at 110 °C or above" },
    { formula: "Na2CO3·H2O", decides: "powder that loses 14.5 %" },
    { formula: "Na2CO3", decides: "dense powder that loses nothing" },
  ], source: "commonPractice" },
  { names: ["copper carbonate", "carbonate of copper"], readings: [
    { formula: "Cu2(OH)2CO3", decides: "what is sold: green powder, 57.5 % Cu" },
    { formula: "Cu3(OH)2(CO3)2", decides: "blue (azurite), 55.3 % Cu" },
    { formula: "CuCO3", decides: "the neutral salt: not obtained from water, 51.4 % Cu" },
  ], source: "commonPractice" },
  { names: ["cobalt carbonate"], readings: [
    { formula: "CoCO3", decides: "49.5 % Co by formula" },
    { formula: "Co5(OH)6(CO3)2", decides: "pottery grade, the basic salt: about 57 % Co when dry" },
  ], source: "commonPractice" },
  { names: ["nickel carbonate"], readings: [
    { formula: "NiCO3", decides: "49.4 % Ni by formula" },
    { formula: "Ni3(OH)4CO3·4H2O", decides: "pottery grade, the basic salt: about 47 % Ni, loses water from 100 °C" },
  ], source: "commonPractice" },
  { names: ["lead carbonate"], readings: [{ formula: "PbCO3", decides: "the neutral salt" }, { formula: "Pb3(OH)2(CO3)2", decides: "white lead, the basic salt" }], source: "commonPractice" },
  { names: ["sal volatile", "hartshorn", "hartshorn salt"], readings: [
    { formula: "(NH4)2CO3", decides: "labelled as the pure salt" },
    { formula: "NH4HCO3", decides: "baking ammonia" },
    { formula: "NH2COONH4", decides: "the carbamate: trade lumps mix it with the hydrogencarbonate; go by the NH3 figure (30 to 34 %)" },
  ], source: "commonPractice" },
  { names: ["lime"], readings: [
    { formula: "CaO", decides: "quicklime: gets hot with water" },
    { formula: "Ca(OH)2", decides: "slaked or hydrated lime: no heat with water, little fizz with acid" },
    { formula: "CaCO3", decides: "garden lime: fizzes with acid" },
    { formula: "CaMg(CO3)2", decides: "dolomitic garden lime: the pack gives magnesium" },
  ], source: "commonPractice" },
  { names: ["garden lime"], readings: [
    { formula: "CaCO3", decides: "ground limestone: no magnesium on the pack" },
    { formula: "CaMg(CO3)2", decides: "dolomitic: the pack gives magnesium" },
    { formula: "Ca(OH)2", decides: "hydrated: caustic, warns of eye damage" },
  ], source: "commonPractice" },
  { names: ["alum", "pickling alum"], readings: [
    { formula: "KAl(SO4)2·12H2O", decides: "potash alum: no smell with lime" },
    { formula: "NH4Al(SO4)2·12H2O", decides: "ammonium alum: smells of ammonia with lime" },
    { formula: "NaAl(SO4)2·12H2O", decides: "soda alum, from the baking trade" },
  ], source: "commonPractice" },
  { names: ["vitriol"], readings: [
    { formula: "CuSO4·5H2O", decides: "blue" },
    { formula: "FeSO4·7H2O", decides: "green" },
    { formula: "ZnSO4·7H2O", decides: "white" },
    { formula: "H2SO4", decides: "oil of vitriol: a heavy liquid" },
  ], source: "commonPractice" },
  { names: ["potash"], readings: [
    { formula: "K2CO3", decides: "baking and glaze potash, pearl ash" },
    { formula: "K2CO3·1.5H2O", decides: "the same after it absorbed water: loses 16.4 % at 200 °C" },
    { formula: "KOH", decides: "caustic potash" },
    { formula: "KCl", decides: "muriate of potash, a fertiliser (0-0-60)" },
    { formula: "K2SO4", decides: "sulfate of potash, a fertiliser (0-0-50)" },
  ], source: "commonPractice" },
  { names: ["saltpetre", "saltpeter", "nitre", "niter"], readings: [
    { formula: "KNO3", decides: "the usual one" },
    { formula: "NaNO3", decides: "Chile saltpetre, soda nitre" },
    { formula: "Ca(NO3)2·4H2O", decides: "lime saltpetre" },
  ], source: "commonPractice" },
  { names: ["hypo", "sodium hyposulfite"], readings: [
    { formula: "Na2S2O3·5H2O", decides: "clear crystals (photography): loses 36.3 % on drying" },
    { formula: "Na2S2O3", decides: "anhydrous powder, 1.57 times as strong" },
  ], source: "commonPractice" },
  { names: ["borax"], readings: [
    { formula: "Na2B4O7·10H2O", decides: "laundry borax: loses 47.2 % when fused" },
    { formula: "Na2B4O7·5H2O", decides: "labelled 5 mol or pentahydrate: loses 30.9 %" },
    { formula: "Na2B4O7", decides: "fused or anhydrous borax: glassy, slow to dissolve" },
  ], source: "commonPractice" },
  { names: ["plaster", "gypsum plaster"], readings: [
    { formula: "CaSO4·0.5H2O", decides: "sets with water" },
    { formula: "CaSO4·2H2O", decides: "set plaster or gypsum: loses 20.9 % at 200 °C" },
    { formula: "CaSO4", decides: "overburnt: does not set" },
  ], source: "commonPractice" },
  { names: ["glauber salt", "glauber's salt"], readings: [
    { formula: "Na2SO4·10H2O", decides: "clear crystals: loses 55.9 % on drying" },
    { formula: "Na2SO4", decides: "powder from the dye shop: loses nothing" },
  ], source: "commonPractice" },
  { names: ["bone ash", "phosphate of lime"], readings: [
    { formula: "Ca3(PO4)2", decides: "tricalcium phosphate, synthetic bone ash" },
    { formula: "Ca5(PO4)3OH", decides: "real bone ash: hydroxyapatite" },
    { formula: "CaHPO4·2H2O", decides: "dicalcium phosphate" },
    { formula: "Ca(H2PO4)2·H2O", decides: "monocalcium phosphate: acid, soluble" },
  ], source: "commonPractice" },
  { names: ["ammonium phosphate"], readings: [
    { formula: "NH4H2PO4", decides: "MAP, grade 12-61-0: acid solution" },
    { formula: "(NH4)2HPO4", decides: "DAP, grade 18-46-0: alkaline solution" },
    { formula: "(NH4)3PO4", decides: "the triammonium salt, named literally: loses ammonia, not sold" },
  ], source: "commonPractice" },
  { names: ["sodium silicate", "silicate of soda"], readings: [
    { formula: "Na2SiO3", decides: "sodium metasilicate, a solid" },
    { formula: "Na2SiO3·5H2O", decides: "the pentahydrate, beads for cleaning" },
    { formula: "Na2Si3O7", decides: "water glass: a syrup, its ratio of oxides on the label" },
    { formula: "Na4SiO4", decides: "labelled orthosilicate: strongly alkaline grains" },
  ], source: "commonPractice" },
  { names: ["calcium silicate", "silicate of lime"], readings: [
    { formula: "CaSiO3", decides: "wollastonite, for glazes and fillers: 48 % CaO" },
    { formula: "Ca2SiO4", decides: "the orthosilicate of cement clinker: 65 % CaO" },
  ], source: "commonPractice" },
  { names: ["potassium silicate", "silicate of potash"], readings: [
    { formula: "K2SiO3", decides: "potash water glass, its ratio of oxides on the label" },
    { formula: "K4SiO4", decides: "the orthosilicate, named literally: not sold" },
  ], source: "commonPractice" },
  { names: ["sodium perborate"], readings: [{ formula: "NaBO3·H2O", decides: "16 % active oxygen" }, { formula: "NaBO3·4H2O", decides: "10.4 % active oxygen" }], source: "commonPractice" },
  { names: ["ammonium molybdate"], readings: [{ formula: "(NH4)6Mo7O24·4H2O", decides: "what is sold: 54.3 % Mo" }, { formula: "(NH4)2MoO4", decides: "the simple molybdate: 48.9 % Mo" }], source: "commonPractice" },
  { names: ["chromic acid"], readings: [{ formula: "CrO3", decides: "dark red crystals of the trade" }, { formula: "H2CrO4", decides: "the acid in solution" }], source: "commonPractice" },
  { names: ["manganese oxide", "oxide of manganese"], readings: [
    { formula: "MnO2", decides: "black (pottery, batteries)" },
    { formula: "Mn3O4", decides: "brown, fired above 940 °C" },
    { formula: "Mn2O3", decides: "black-brown, fired below 900 °C" },
    { formula: "MnO", decides: "green" },
  ], source: "commonPractice" },
  { names: ["iron oxide", "oxide of iron"], readings: [
    { formula: "Fe2O3", decides: "red" },
    { formula: "Fe3O4", decides: "black, magnetic" },
    { formula: "FeO(OH)", decides: "yellow" },
    { formula: "FeO", decides: "black, not magnetic, rare" },
  ], source: "commonPractice" },
  { names: ["cobalt oxide"], readings: [{ formula: "Co3O4", decides: "black: 73.4 % Co" }, { formula: "CoO", decides: "grey: 78.6 % Co" }], source: "commonPractice" },
  { names: ["nickel oxide"], readings: [{ formula: "NiO", decides: "green: 78.6 % Ni" }, { formula: "Ni2O3", decides: "black: contains nickel(III), no fixed formula" }], source: "commonPractice" },
  { names: ["copper oxide"], readings: [{ formula: "CuO", decides: "black" }, { formula: "Cu2O", decides: "red" }], source: "commonPractice" },
  { names: ["lead oxide"], readings: [
    { formula: "PbO", decides: "yellow or orange (litharge)" },
    { formula: "Pb3O4", decides: "bright red (minium)" },
    { formula: "PbO2", decides: "dark brown" },
  ], source: "commonPractice" },
  { names: ["chromium oxide", "chrome oxide"], readings: [{ formula: "Cr2O3", decides: "green powder" }, { formula: "CrO3", decides: "dark red crystals, carcinogen" }], source: "commonPractice" },
  { names: ["iron sulfate", "sulfate of iron"], readings: [
    { formula: "FeSO4·7H2O", decides: "pale green crystals: 20 % Fe" },
    { formula: "FeSO4·H2O", decides: "off-white powder: 30 to 33 % Fe" },
    { formula: "Fe2(SO4)3", decides: "yellow-grey, labelled ferric or iron(III)" },
  ], source: "commonPractice" },
  { names: ["bleaching powder"], readings: [
    { formula: "Ca(ClO)2", decides: "pool grade, 65 to 73 % available chlorine" },
    { formula: "CaCl2O", decides: "old bleaching powder, 35 % available chlorine, no single compound" },
  ], source: "commonPractice" },
  { names: ["stump remover"], readings: [
    { formula: "KNO3", decides: "no smell with acid; makes a smouldering paper flare" },
    { formula: "Na2S2O5", decides: "chokes (SO2) with acid; sodium on the pack" },
    { formula: "K2S2O5", decides: "chokes (SO2) with acid; potassium on the pack" },
  ], source: "commonPractice" },
  { names: ["moss killer"], readings: [
    { formula: "FeSO4·7H2O", decides: "green crystals, 20 % Fe on the pack" },
    { formula: "FeSO4·H2O", decides: "grey powder, 30 % Fe on the pack" },
    { formula: "ZnSO4·H2O", decides: "white powder, 35.5 % Zn on the pack" },
    { formula: "ZnSO4·7H2O", decides: "white crystals, 22 % Zn on the pack" },
    { formula: "ZnCl2", decides: "sold against roof moss, a strong solution or lumps that draw water: chloride on the pack" },
  ], source: "commonPractice" },
  { names: ["descaler"], readings: [
    { formula: "C6H8O7", decides: "citric acid on the pack: white grains, no smell" },
    { formula: "H3NSO3", decides: "sulfamic or amidosulfuric acid on the pack" },
    { formula: "HCOOH", decides: "a liquid that smells sharply: formic acid" },
  ], source: "commonPractice" },
  { names: ["caustic"], readings: [{ formula: "NaOH", decides: "caustic soda" }, { formula: "KOH", decides: "caustic potash" }, { formula: "AgNO3", decides: "lunar caustic" }], source: "commonPractice" },
  { names: ["magnesia"], readings: [
    { formula: "MgO", decides: "calcined magnesia" },
    { formula: "Mg(OH)2", decides: "milk of magnesia" },
    { formula: "Mg5(CO3)4(OH)2·4H2O", decides: "magnesia alba, the light carbonate" },
  ], source: "commonPractice" },
  { names: ["chalk"], readings: [{ formula: "CaCO3", decides: "fizzes with acid" }, { formula: "CaSO4·2H2O", decides: "blackboard chalk that does not fizz" }], source: "commonPractice" },
  { names: ["rust"], readings: [{ formula: "FeO(OH)", decides: "loses about 10 % on heating" }, { formula: "Fe2O3", decides: "dry and red: loses nothing" }], source: "commonPractice" },
  { names: ["prussiate of potash", "potassium prussiate"], readings: [
    { formula: "K4[Fe(CN)6]·3H2O", decides: "yellow crystals: the cyanidoferrate(II), no simple cyanide" },
    { formula: "K3[Fe(CN)6]", decides: "ruby red crystals: the cyanidoferrate(III), no simple cyanide" },
  ], source: "commonPractice" },
  { names: ["prussiate of soda", "sodium prussiate"], readings: [
    { formula: "Na4[Fe(CN)6]·10H2O", decides: "yellow crystals: the cyanidoferrate(II), no simple cyanide" },
    { formula: "Na3[Fe(CN)6]", decides: "ruby red crystals: the cyanidoferrate(III), no simple cyanide" },
  ], source: "commonPractice" },
  { names: ["chloride of lime"], readings: [
    { formula: "Ca(ClO)2", decides: "pool grade, smells of chlorine: bleaching powder, 65 to 73 % available chlorine" },
    { formula: "CaCl2O", decides: "smells of chlorine: old bleaching powder, 35 % available chlorine, no single compound" },
    { formula: "CaCl2", decides: "no smell, absorbs water: the salt that old books call muriate of lime" },
  ], source: "commonPractice" },
  { names: ["sodium borate", "borate of soda"], readings: [
    { formula: "Na2B4O7·10H2O", decides: "borax, what the trade and the pharmacy mean: loses 47.2 % when fused" },
    { formula: "Na2B4O7·5H2O", decides: "labelled 5 mol or pentahydrate: loses 30.9 %" },
    { formula: "Na2B4O7", decides: "labelled fused or anhydrous" },
    { formula: "NaBO2·4H2O", decides: "labelled metaborate" },
    { formula: "Na3BO3", decides: "the orthoborate, named literally: not sold" },
  ], source: "commonPractice" },
  { names: ["magnesium oxychloride"], readings: [
    { formula: "Mg3(OH)5Cl·4H2O", decides: "set magnesia cement with little chloride: 5 Mg(OH)2 to 1 MgCl2" },
    { formula: "Mg2(OH)3Cl·4H2O", decides: "set magnesia cement with more chloride: 3 Mg(OH)2 to 1 MgCl2" },
  ], source: "commonPractice" },
  { names: ["zinc oxychloride", "zinc hydroxychloride"], readings: [
    { formula: "Zn5(OH)8Cl2·H2O", decides: "the white crust from zinc chloride solution and zinc oxide: 59 % Zn" },
    { formula: "Zn(OH)Cl", decides: "from concentrated zinc chloride: 55.5 % Zn" },
  ], source: "commonPractice" },
  { names: ["persulfate of iron", "iron persulfate"], readings: [
    { formula: "Fe2(SO4)3", decides: "pharmacies and dyers of old: the sulfate of the higher oxide, now iron(III) sulfate" },
    { formula: "Fe2(S2O8)3", decides: "taken literally, an iron(III) peroxodisulfate: not sold" },
  ], source: "commonPractice" },
  { names: ["ammonium carbonate", "carbonate of ammonia"], readings: [
    { formula: "NH4HCO3", decides: "sold for baking; also what lumps turn into in the air" },
    { formula: "NH2COONH4", decides: "the trade's lumps are mixed with this, the carbamate: go by the NH3 figure (30 to 34 %)" },
    { formula: "(NH4)2CO3", decides: "the pure salt, seldom sold: labelled so, with its water" },
  ], source: "commonPractice" },
  { names: ["sodium phosphate"], readings: [
    { formula: "Na3PO4·12H2O", decides: "trisodium, TSP: strongly alkaline crystals" },
    { formula: "Na3PO4", decides: "trisodium, labelled anhydrous: strongly alkaline" },
    { formula: "Na2HPO4·12H2O", decides: "disodium, the phosphate of soda of pharmacies: weakly alkaline" },
    { formula: "Na2HPO4", decides: "disodium, labelled anhydrous" },
    { formula: "NaH2PO4·H2O", decides: "monosodium: acid" },
  ], source: "commonPractice" },
  { names: ["potassium phosphate"], readings: [
    { formula: "KH2PO4", decides: "MKP, a fertiliser (0-52-34): acid" },
    { formula: "K2HPO4", decides: "dipotassium: weakly alkaline" },
    { formula: "K3PO4", decides: "tripotassium: strongly alkaline" },
  ], source: "commonPractice" },
  { names: ["chrome green"], readings: [
    { formula: "Cr2O3", decides: "pottery, enamel and artists' oxide: withstands red heat, contains no lead" },
    { formula: "PbCrO4", decides: "paint and printing: chrome yellow mixed with Prussian blue, so it contains lead and chromium(VI); turns brown with alkali" },
  ], source: "commonPractice" },
  { names: ["apatite"], readings: [
    { formula: "Ca5(PO4)3F", decides: "the rock, as mined" },
    { formula: "Ca5(PO4)3OH", decides: "bones, teeth and bone ash" },
  ], source: "commonPractice" },
  { names: ["patina", "green patina"], readings: [
    { formula: "Cu4(OH)6SO4", decides: "of roofs in town air: no fizz with acid, sulfate test positive" },
    { formula: "Cu2(OH)3Cl", decides: "near the sea: no fizz with acid" },
    { formula: "Cu2(OH)2CO3", decides: "in clean air: fizzes with acid" },
  ], source: "commonPractice" },
  { names: ["pink salt"], readings: [
    { formula: "NaCl", decides: "of the kitchen: rock salt with a trace of iron; if it is for curing meat it contains sodium nitrite" },
    { formula: "(NH4)2SnCl6", decides: "of old dye works: white crystals that gave pink with madder" },
  ], source: "commonPractice" },
  { names: ["potassa"], readings: [
    { formula: "KOH", decides: "caustic potassa, hydrate of potassa: the hydroxide" },
    { formula: "K2O", decides: "in old analyses: the oxide" },
  ], source: "commonPractice" },
]);

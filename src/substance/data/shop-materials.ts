// What shops sell under which name: the formula as sold, the other forms sold under the same name, the usual strength and the
// trap in the name. Assays are usual ranges, to be replaced by the figure on the user's own pack or by a titration.
import { columns } from "../../foundation/columns";
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** A range of strength as packs state it: percent by mass, or grams per 100 mL for a mass concentration. */
export interface StatedAssay {
  /** Lower end of the range, a number as text. */
  readonly lower: string;
  /** Upper end of the range, a number as text. */
  readonly upper: string;
  /** What the figure counts, when it is not the row's own formula: `Na2CO3`, `Cu`, `Cl2` ... */
  readonly of?: string;
  /** What to mind about the figure, in words. */
  readonly note?: string;
}

/** One good on the shelf. Densities in g/mL near 20 °C. */
export interface ShopMaterialRow {
  readonly name: string;
  readonly alsoCalled?: readonly string[];
  readonly formula: string;
  /** Formulas that are sold under the same name. */
  readonly alternatives?: readonly string[];
  /** Other goods under the same name that no formula describes. */
  readonly otherGoods?: readonly string[];
  readonly assays: readonly StatedAssay[];
  readonly form: "solid" | "mass fraction" | "mass concentration";
  readonly density?: { readonly lower: string; readonly upper: string };
  readonly impurities?: readonly string[];
  readonly trap?: string;
  readonly source: SourceKey;
}

export const SHOP_MATERIALS = /* @__PURE__ */ once((): readonly ShopMaterialRow[] => [
  { name: "washing soda crystals", alsoCalled: ["washing soda", "soda crystals", "sal soda"], formula: "Na2CO3·10H2O", alternatives: ["Na2CO3·H2O", "Na2CO3"], assays: [
    { lower: "97", upper: "100" },
    { lower: "37", upper: "37", of: "Na2CO3" },
  ], form: "solid", impurities: ["NaCl", "Na2SO4"], trap: "loses water in the opened bag towards the monohydrate: counted as Na2CO3 the assay climbs from 37 to 85 %; dry at 110 to 250 °C before weighing, or titrate", source: "tradeSheets" },
  { name: "washing soda powder (box)", alsoCalled: ["washing soda", "washing soda powder"], formula: "Na2CO3·H2O", alternatives: ["Na2CO3", "Na2CO3·10H2O"], assays: [
    { lower: "97", upper: "100" },
    { lower: "85", upper: "85", of: "Na2CO3" },
  ], form: "solid", impurities: ["NaCl"], trap: "same name as the crystals, 2.3 times the carbonate in a gram", source: "tradeSheets" },
  { name: "soda ash (dye fixer, glaze)", alsoCalled: ["soda ash", "washing soda", "anhydrous soda", "dense soda", "light soda"], formula: "Na2CO3", alternatives: ["Na2CO3·H2O"], assays: [{ lower: "99.0", upper: "99.9" }], form: "solid", impurities: ["NaCl 0.1-0.5", "Na2SO4", "Fe"], trap: "absorbs water to the monohydrate, and carbon dioxide to hydrogencarbonate, in damp air", source: "tradeSheets" },
  { name: "pool pH raiser", alsoCalled: ["pH plus"], formula: "Na2CO3", alternatives: ["NaHCO3"], assays: [{ lower: "98", upper: "100" }], form: "solid", impurities: ["NaCl"], trap: "some goods of this name are sodium hydrogencarbonate or a blend", source: "tradeSheets" },
  { name: "baking soda", alsoCalled: ["bicarbonate of soda", "bread soda"], formula: "NaHCO3", assays: [{ lower: "99.0", upper: "100.5", note: "of the dried material" }], form: "solid", impurities: ["Na2CO3 on ageing"], trap: "loses carbon dioxide when warm or damp and then contains Na2CO3; an hour at 250 °C turns it into sodium carbonate", source: "foodAdditivePurity" },
  { name: "swimming-pool bicarbonate (alkalinity up)", formula: "NaHCO3", assays: [{ lower: "98", upper: "100" }], form: "solid", impurities: ["Na2CO3"], trap: "do not confuse with pH raiser", source: "tradeSheets" },
  { name: "natron or trona (raw)", formula: "Na3H(CO3)2·2H2O", alternatives: ["Na2CO3·10H2O"], assays: [{ lower: "50", upper: "95" }], form: "solid", impurities: ["NaCl", "Na2SO4", "clay"], trap: "natural mixture; no fixed formula", source: "memory" },
  { name: "baking ammonia", formula: "NH4HCO3", otherGoods: ["NH4HCO3 mixed with NH2COONH4"], assays: [{ lower: "98", upper: "100.5" }], form: "solid", impurities: ["carbamate", "water"], trap: "evaporates wholly in an open jar; carbonate grade is sold by NH3 content 30-34 %", source: "foodAdditivePurity" },
  { name: "baking powder", formula: "NaHCO3", alternatives: ["Na2H2P2O7", "Ca(H2PO4)2·H2O", "NaAl(SO4)2", "KHC4H4O6"], otherGoods: ["starch"], assays: [{ lower: "25", upper: "33" }], form: "solid", impurities: ["starch", "acid salt"], trap: "mixture: never a source of pure bicarbonate", source: "memory" },
  { name: "drain opener, lye crystals", alsoCalled: ["lye", "caustic soda", "drain opener", "lye crystals"], formula: "NaOH", assays: [{ lower: "95", upper: "100" }], form: "solid", impurities: ["Na2CO3 0.5-3", "NaCl"], trap: "absorbs water and CO2 fast; old lye is part carbonate", source: "tradeSheets" },
  { name: "drain opener, granules with metal chips", alsoCalled: ["drain opener"], formula: "NaOH", otherGoods: ["NaOH with NaNO3, Al and NaCl"], assays: [{ lower: "30", upper: "60" }], form: "solid", impurities: ["Al", "NaNO3", "NaCl", "dye"], trap: "not lye: chips make hydrogen, nitrate makes ammonia; read the sheet", source: "tradeSheets" },
  { name: "drain opener, liquid alkali", alsoCalled: ["drain opener"], formula: "NaOH", alternatives: ["KOH"], otherGoods: ["with NaClO in it"], assays: [{ lower: "2", upper: "30" }], form: "mass fraction", density: { lower: "1.02", upper: "1.33" }, impurities: ["NaClO", "silicate", "surfactant"], trap: "often contains bleach: never acid on it", source: "tradeSheets" },
  { name: "drain opener, sulfuric", alsoCalled: ["drain opener", "sulfuric drain opener"], formula: "H2SO4", assays: [{ lower: "90", upper: "98" }], form: "mass fraction", density: { lower: "1.81", upper: "1.84" }, impurities: ["dye", "inhibitors", "Fe"], trap: "absorbs water from air; some grades are half-strength; sale limited in places", source: "tradeSheets" },
  { name: "oven cleaner lye", formula: "NaOH", alternatives: ["KOH"], assays: [{ lower: "3", upper: "10" }], form: "mass fraction", density: { lower: "1.0", upper: "1.1" }, impurities: ["surfactants", "glycols"], trap: "foam: not a reagent", source: "tradeSheets" },
  { name: "caustic potash flakes", alsoCalled: ["caustic potash"], formula: "KOH", otherGoods: ["KOH with 0.2 to 0.5 H2O"], assays: [{ lower: "85", upper: "92" }], form: "solid", impurities: ["H2O 8-15", "K2CO3 0.5-2"], trap: "85-90 % is normal dry goods: the rest is water; plus carbonate with age", source: "pharmacopoeiaLimits" },
  { name: "muriatic acid (full)", alsoCalled: ["muriatic acid"], formula: "HCl", assays: [{ lower: "28", upper: "33", note: "31.45 % is 20 degrees Baumé" }], form: "mass fraction", density: { lower: "1.14", upper: "1.165" }, impurities: ["Fe (yellow)", "Cl2"], trap: "fumes off strength when open; metal parts add iron", source: "hydrochloricSheet" },
  { name: "muriatic acid (reduced-fume)", alsoCalled: ["muriatic acid"], formula: "HCl", assays: [{ lower: "14", upper: "15" }], form: "mass fraction", density: { lower: "1.07", upper: "1.07" }, impurities: ["inhibitor", "urea hydrochloride"], trap: "half strength under the same name", source: "tradeSheets" },
  { name: "toilet or limescale cleaner acid", formula: "HCl", alternatives: ["H3NSO3", "HCOOH", "H3PO4", "C6H8O7"], assays: [{ lower: "5", upper: "15" }], form: "mass fraction", density: { lower: "1.02", upper: "1.07" }, impurities: ["surfactant", "dye"], trap: "mixture; acid kind differs by shelf", source: "tradeSheets" },
  { name: "pool pH lowerer, dry", alsoCalled: ["pH minus", "dry acid"], formula: "NaHSO4", assays: [{ lower: "91", upper: "95" }], form: "solid", impurities: ["Na2SO4 5-8", "H2O", "silica"], trap: "cakes with damp, becomes the monohydrate", source: "tradeSheets" },
  { name: "pool pH lowerer, liquid", formula: "HCl", alternatives: ["H2SO4"], assays: [{ lower: "15", upper: "33" }], form: "mass fraction", density: { lower: "1.07", upper: "1.24" }, impurities: ["inhibitor"], trap: "the acid differs by country: hydrochloric here, 38 % sulfuric there", source: "tradeSheets" },
  { name: "battery acid", formula: "H2SO4", assays: [{ lower: "33", upper: "38", note: "relative density 1.265 to 1.285" }], form: "mass fraction", density: { lower: "1.24", upper: "1.285" }, impurities: ["Fe", "Pb traces"], trap: "sold by relative density, not by percent; the density falls by about 0.0007 per °C", source: "tradeSheets" },
  { name: "pH down for plant feed", formula: "H3PO4", alternatives: ["HNO3", "H2SO4", "C6H8O7"], assays: [{ lower: "15", upper: "81" }], form: "mass fraction", density: { lower: "1.08", upper: "1.65" }, impurities: ["dye"], trap: "acid kind not shown on the front", source: "tradeSheets" },
  { name: "pH up for plant feed", formula: "KOH", alternatives: ["K2CO3", "K2SiO3"], assays: [{ lower: "10", upper: "50" }], form: "mass fraction", density: { lower: "1.08", upper: "1.5" }, trap: "hydroxide or carbonate or mix", source: "tradeSheets" },
  { name: "rust remover, phosphoric", formula: "H3PO4", alternatives: ["H2C2O4·2H2O", "HCl", "NH4HF2"], assays: [{ lower: "10", upper: "45" }], form: "mass fraction", density: { lower: "1.05", upper: "1.3" }, impurities: ["surfactant", "zinc salts"], trap: "check for fluoride (forbidden) and for tannin converters", source: "tradeSheets" },
  { name: "food phosphoric acid (75 %)", alsoCalled: ["food phosphoric acid"], formula: "H3PO4", assays: [{ lower: "75", upper: "75" }], form: "mass fraction", density: { lower: "1.57", upper: "1.58" }, impurities: ["As", "F traces"], trap: "75 and 85 % share a name", source: "pharmacopoeiaLimits" },
  { name: "food phosphoric acid (85 %)", alsoCalled: ["food phosphoric acid"], formula: "H3PO4", assays: [{ lower: "85", upper: "85" }], form: "mass fraction", density: { lower: "1.68", upper: "1.69" }, impurities: ["As", "F traces"], trap: "75 and 85 % share a name", source: "pharmacopoeiaLimits" },
  { name: "rust converter", formula: "H3PO4", otherGoods: ["tannic acid in polymer latex"], assays: [{ lower: "10", upper: "30" }], form: "mass fraction", density: { lower: "1.05", upper: "1.2" }, impurities: ["latex", "glycol ethers"], trap: "polymer types are useless as acid", source: "tradeSheets" },
  { name: "distilled (white) vinegar", alsoCalled: ["vinegar", "white vinegar", "distilled vinegar"], formula: "CH3COOH", assays: [{ lower: "4", upper: "6" }], form: "mass concentration", density: { lower: "1.005", upper: "1.005" }, trap: "the label means grams per 100 mL (a tenth of the grain strength); in some countries percent by mass", source: "tradeSheets" },
  { name: "cleaning vinegar", alsoCalled: ["vinegar"], formula: "CH3COOH", assays: [{ lower: "6", upper: "14" }], form: "mass concentration", density: { lower: "1.008", upper: "1.018" }, trap: "strength from the label only; scents added", source: "tradeSheets" },
  { name: "vinegar essence", formula: "CH3COOH", assays: [{ lower: "20", upper: "25" }], form: "mass fraction", density: { lower: "1.026", upper: "1.033" }, trap: "5 times ordinary vinegar", source: "tradeSheets" },
  { name: "glacial acetic acid (stop bath)", alsoCalled: ["glacial acetic acid", "acetic acid"], formula: "CH3COOH", otherGoods: ["28 % stop bath"], assays: [{ lower: "98", upper: "100" }], form: "mass fraction", density: { lower: "1.049", upper: "1.049" }, impurities: ["H2O"], trap: "28 % grade shares the shelf; freezes at 16 °C", source: "pharmacopoeiaLimits" },
  { name: "household ammonia", alsoCalled: ["ammonia", "ammonia water", "aqueous ammonia"], formula: "NH3", assays: [{ lower: "3", upper: "10" }], form: "mass fraction", density: { lower: "0.96", upper: "0.98" }, impurities: ["surfactant", "scent (cloudy type)"], trap: "'ammonium hydroxide 10 %' contains 4.9 % NH3; loses gas; titrate", source: "tradeSheets" },
  { name: "strong ammonia (25-30 %)", formula: "NH3", assays: [{ lower: "25", upper: "30" }], form: "mass fraction", density: { lower: "0.89", upper: "0.91" }, impurities: ["carbonate"], trap: "label as NH4OH multiplies the figure by 2.06", source: "pharmacopoeiaLimits" },
  { name: "citric acid powder", alsoCalled: ["citric acid"], formula: "C6H8O7", alternatives: ["C6H8O7·H2O"], assays: [{ lower: "99.5", upper: "100.5", note: "of the anhydrous acid" }], form: "solid", impurities: ["H2O up to 0.5 (7.5-8.8 in monohydrate)"], trap: "anhydrous and monohydrate share the bag: 8.6 % less acid; dry monohydrate at 70 °C first", source: "jecfaCitric" },
  { name: "tartaric acid", formula: "C4H6O6", assays: [{ lower: "99", upper: "100.5" }], form: "solid", trap: "DL-acid hydrate differs", source: "foodAdditivePurity" },
  { name: "cream of tartar", formula: "KHC4H4O6", assays: [{ lower: "98", upper: "101" }], form: "solid", impurities: ["CaC4H4O6", "starch in cut goods"], trap: "purity up to the shop; poorly soluble cold", source: "foodAdditivePurity" },
  { name: "ascorbic acid", formula: "C6H8O6", alternatives: ["NaC6H7O6"], otherGoods: ["calcium ascorbate"], assays: [{ lower: "99", upper: "100.5" }], form: "solid", trap: "buffered kinds are salts; tablets contain binders", source: "pharmacopoeiaLimits" },
  { name: "oxalic acid wood bleach", formula: "H2C2O4·2H2O", alternatives: ["H2C2O4"], assays: [{ lower: "99", upper: "99.8" }], form: "solid", trap: "warm drying drives off water to the anhydrous acid (28.6 %)", source: "tradeSheets" },
  { name: "sulfamic acid descaler", alsoCalled: ["descaler", "sulfamic acid"], formula: "H3NSO3", assays: [{ lower: "90", upper: "100" }], form: "solid", impurities: ["dye", "NaHSO4", "inhibitor"], trap: "dyed blends contain salts; hydrolyses to NH4HSO4 in hot water", source: "tradeSheets" },
  { name: "formic acid (bee, lime scale)", formula: "HCOOH", assays: [{ lower: "60", upper: "85" }], form: "mass fraction", density: { lower: "1.14", upper: "1.19" }, source: "tradeSheets" },
  { name: "boric acid powder", formula: "H3BO3", assays: [{ lower: "99", upper: "100", note: "baits contain 5 to 50 %" }], form: "solid", impurities: ["anticaking"], trap: "slow loss of water above 100 °C; baits contain sugar; sale limited in EU", source: "tradeSheets" },
  { name: "borax (laundry)", alsoCalled: ["borax"], formula: "Na2B4O7·10H2O", alternatives: ["Na2B4O7·5H2O"], assays: [{ lower: "99", upper: "101" }], form: "solid", trap: "effloresces to ·5H2O (overstrength to 131 %); 'borax substitute' is sesquicarbonate: no boron", source: "tradeSheets" },
  { name: "borax substitute", formula: "Na3H(CO3)2·2H2O", alternatives: ["Na2CO3"], otherGoods: ["blends"], assays: [{ lower: "95", upper: "100" }], form: "solid", trap: "no boron at all", source: "tradeSheets" },
  { name: "anhydrous borax (welding flux)", formula: "Na2B4O7", alternatives: ["H3BO3"], otherGoods: ["mixed with boric acid"], assays: [{ lower: "95", upper: "100" }], form: "solid", trap: "fused glass: slow to dissolve", source: "memory" },
  { name: "sodium perborate", formula: "NaBO3·H2O", alternatives: ["NaBO3·4H2O"], assays: [{ lower: "95", upper: "100" }], form: "solid", trap: "tetrahydrate has 10.4 % active oxygen, monohydrate 16 %", source: "memory" },
  { name: "TSP (trisodium phosphate)", alsoCalled: ["TSP", "trisodium phosphate"], formula: "Na3PO4·12H2O", alternatives: ["Na3PO4", "Na3PO4·12H2O·0.25NaOH"], assays: [{ lower: "97", upper: "100", note: "75 to 80 % when blended with soda" }], form: "solid", impurities: ["NaOH", "Na2CO3"], trap: "crystals contain about 1/4 mol NaOH; boxes with soda; anhydrous is 2.3 times stronger", source: "tradeSheets" },
  { name: "TSP substitute", formula: "Na2CO3", alternatives: ["Na2SiO3·5H2O", "Na3H(CO3)2·2H2O"], assays: [{ lower: "10", upper: "70" }], form: "solid", trap: "no phosphate: silicate or carbonate", source: "tradeSheets" },
  { name: "water-softener phosphate", formula: "Na5P3O10", otherGoods: ["sodium polyphosphate glass"], assays: [{ lower: "85", upper: "95" }], form: "solid", impurities: ["Na4P2O7", "Na3PO4"], trap: "mixed polyphosphate", source: "memory" },
  { name: "MKP fertiliser (0-52-34)", formula: "KH2PO4", assays: [{ lower: "98", upper: "99.5" }], form: "solid", trap: "grade numbers are P2O5 and K2O, not P and K", source: "tradeSheets" },
  { name: "MAP fertiliser (12-61-0)", formula: "NH4H2PO4", alternatives: ["(NH4)2HPO4"], assays: [{ lower: "98", upper: "99" }], form: "solid", impurities: ["field-grade: Fe", "Al", "sulfate"], trap: "field-grade is 11-52 brown and impure; grade = N-P2O5-K2O", source: "tradeSheets" },
  { name: "DAP fertiliser (18-46-0)", formula: "(NH4)2HPO4", assays: [{ lower: "90", upper: "98" }], form: "solid", impurities: ["NH4H2PO4", "Fe", "Mg"], trap: "loses ammonia to MAP on storage", source: "tradeSheets" },
  { name: "superphosphate", formula: "Ca(H2PO4)2·H2O", otherGoods: ["mixed with CaSO4·2H2O"], assays: [{ lower: "25", upper: "45" }], form: "solid", impurities: ["CaSO4", "F", "Fe"], trap: "half gypsum; contains fluoride", source: "memory" },
  { name: "bone meal or bone ash", formula: "Ca5(PO4)3OH", assays: [{ lower: "70", upper: "90" }], form: "solid", impurities: ["CaCO3", "organics"], trap: "synthetic bone ash is Ca3(PO4)2", source: "memory" },
  { name: "hydrated lime (builder's, type N)", alsoCalled: ["hydrated lime", "slaked lime", "builder's lime"], formula: "Ca(OH)2", otherGoods: ["Ca(OH)2 with Mg(OH)2 or MgO (dolomitic)"], assays: [{ lower: "85", upper: "96" }], form: "solid", impurities: ["CaCO3 2-10", "MgO", "SiO2"], trap: "type S is dolomitic: part MgO/Mg(OH)2; CaO+MgO at least 95 % on the non-volatile basis, CO2 at most 5 % at the works or 7 % elsewhere", source: "astmC206" },
  { name: "pickling lime", formula: "Ca(OH)2", assays: [{ lower: "92", upper: "100" }], form: "solid", impurities: ["CaCO3"], trap: "carbonates from the first opening", source: "foodAdditivePurity" },
  { name: "quicklime", alsoCalled: ["burnt lime"], formula: "CaO", alternatives: ["Ca(OH)2"], assays: [{ lower: "80", upper: "97" }], form: "solid", impurities: ["CaCO3", "MgO", "SiO2"], trap: "slakes in air to Ca(OH)2 and CaCO3", source: "memory" },
  { name: "garden lime", formula: "CaCO3", alternatives: ["CaMg(CO3)2", "Ca(OH)2"], assays: [{ lower: "80", upper: "98" }], form: "solid", impurities: ["clay", "Mg", "Fe"], trap: "name covers limestone, dolomite and hydrated lime", source: "memory" },
  { name: "dolomitic lime", formula: "CaMg(CO3)2", otherGoods: ["mixed with CaCO3"], assays: [{ lower: "85", upper: "98" }], form: "solid", impurities: ["SiO2", "Fe"], trap: "Ca:Mg not exactly 1:1", source: "memory" },
  { name: "chalk (whiting)", alsoCalled: ["whiting", "chalk"], formula: "CaCO3", assays: [{ lower: "95", upper: "99" }], form: "solid", impurities: ["SiO2", "Mg", "Fe"], trap: "natural chalk: silica and clay remain in acid", source: "memory" },
  { name: "blackboard chalk", formula: "CaSO4·2H2O", alternatives: ["CaCO3"], assays: [{ lower: "80", upper: "98" }], form: "solid", impurities: ["binder", "clay"], trap: "sulfate or carbonate: test with acid", source: "memory" },
  { name: "antacid tablet", formula: "CaCO3", alternatives: ["Mg(OH)2", "Al(OH)3", "NaHCO3"], assays: [{ lower: "40", upper: "90" }], form: "solid", impurities: ["sugar", "starch", "talc"], trap: "strength given in mg per tablet", source: "memory" },
  { name: "eggshell", formula: "CaCO3", assays: [{ lower: "93", upper: "97" }], form: "solid", impurities: ["protein", "Mg", "phosphate"], trap: "boil or heat to remove the skin", source: "memory" },
  { name: "gym chalk", formula: "Mg5(CO3)4(OH)2·4H2O", alternatives: ["MgCO3"], otherGoods: ["blended with CaCO3"], assays: [{ lower: "90", upper: "99" }], form: "solid", impurities: ["CaCO3", "drying agent"], trap: "magnesium carbonate of the trade is the basic salt: 40 to 43 % MgO", source: "tradeSheets" },
  { name: "plaster of Paris", formula: "CaSO4·0.5H2O", alternatives: ["CaSO4"], assays: [{ lower: "75", upper: "97" }], form: "solid", impurities: ["CaSO4·2H2O", "CaCO3", "retarder"], trap: "wet or old plaster is part gypsum; fillers in wall plaster", source: "memory" },
  { name: "gypsum (garden)", alsoCalled: ["gypsum", "garden gypsum"], formula: "CaSO4·2H2O", alternatives: ["CaSO4"], assays: [{ lower: "70", upper: "97" }], form: "solid", impurities: ["CaCO3", "clay"], source: "memory" },
  { name: "gypsum (brewing, terra alba)", alsoCalled: ["gypsum", "terra alba", "brewer's gypsum"], formula: "CaSO4·2H2O", assays: [{ lower: "98", upper: "100" }], form: "solid", trap: "may be the hemihydrate by mistake; weigh-loss at 200 °C is 20.9 %", source: "foodAdditivePurity" },
  { name: "calcium chloride flakes", alsoCalled: ["calcium chloride", "ice melt flake"], formula: "CaCl2·2H2O", alternatives: ["CaCl2"], assays: [{ lower: "77", upper: "80", of: "CaCl2" }], form: "solid", impurities: ["NaCl", "KCl", "MgCl2", "Ca(OH)2"], trap: "77 to 80 % counts CaCl2 (the pure dihydrate is 75.5 %): read the basis on the label", source: "tradeSheets" },
  { name: "calcium chloride pellets or prills", alsoCalled: ["calcium chloride"], formula: "CaCl2", alternatives: ["CaCl2·2H2O"], assays: [{ lower: "94", upper: "97" }], form: "solid", impurities: ["NaCl", "KCl"], trap: "melts in its own water in damp air", source: "tradeSheets" },
  { name: "calcium chloride (cheese, brewing)", alsoCalled: ["calcium chloride"], formula: "CaCl2·2H2O", alternatives: ["CaCl2"], otherGoods: ["sold as a solution too"], assays: [{ lower: "96", upper: "102" }], form: "solid", trap: "liquid sold at 30-33 % w/w (1.28-1.32 g/mL)", source: "foodAdditivePurity" },
  { name: "moisture absorber", formula: "CaCl2", alternatives: ["CaCl2·2H2O"], otherGoods: ["silica gel"], assays: [{ lower: "90", upper: "97" }], form: "solid", impurities: ["NaCl"], trap: "half-used bags contain brine", source: "tradeSheets" },
  { name: "ice melt, magnesium", formula: "MgCl2·6H2O", assays: [
    { lower: "95", upper: "100" },
    { lower: "46", upper: "47", of: "MgCl2" },
  ], form: "solid", impurities: ["NaCl", "MgSO4"], trap: "label 46-47 % is MgCl2", source: "tradeSheets" },
  { name: "ice melt, rock salt", formula: "NaCl", assays: [{ lower: "94", upper: "99" }], form: "solid", impurities: ["CaSO4", "clay", "ferrocyanide anticake"], source: "tradeSheets" },
  { name: "ice melt, urea", formula: "CO(NH2)2", assays: [{ lower: "97", upper: "99.5" }], form: "solid", impurities: ["biuret"], trap: "46-0-0 fertiliser is the same stuff", source: "tradeSheets" },
  { name: "ice melt, acetate", formula: "CaMg(CH3COO)4", alternatives: ["KCH3COO"], assays: [{ lower: "91", upper: "98" }], form: "solid", trap: "mixed Ca/Mg ratio", source: "memory" },
  { name: "Epsom salt", alsoCalled: ["epsom salts", "bath salts (magnesium)"], formula: "MgSO4·7H2O", alternatives: ["MgSO4·H2O"], assays: [{ lower: "98", upper: "101" }], form: "solid", impurities: ["NaCl", "Fe"], trap: "loses water to the hexahydrate in dry rooms: overstrength by up to 8 %; heat above 250 °C to check", source: "pharmacopoeiaLimits" },
  { name: "kieserite fertiliser", formula: "MgSO4·H2O", assays: [{ lower: "75", upper: "92" }], form: "solid", impurities: ["NaCl", "clay"], trap: "MgO 25-27 % on the label", source: "memory" },
  { name: "magnesium oxide", formula: "MgO", alternatives: ["Mg(OH)2"], assays: [{ lower: "94", upper: "99" }], form: "solid", impurities: ["CaO", "SiO2"], trap: "calcined grade absorbs H2O and CO2", source: "memory" },
  { name: "milk of magnesia", formula: "Mg(OH)2", assays: [{ lower: "7", upper: "8.5" }], form: "mass concentration", density: { lower: "1.04", upper: "1.06" }, impurities: ["flavour", "NaClO"], trap: "suspension: shake; 80 mg/mL typical", source: "pharmacopoeiaLimits" },
  { name: "magnesium firestarter", formula: "Mg", otherGoods: ["alloy with Al and Zn"], assays: [{ lower: "85", upper: "99" }], form: "solid", impurities: ["Al 3-9", "Zn 1", "Mn", "glue"], trap: "often an Al-bearing alloy; spark rod is ferrocerium", source: "tradeSheets" },
  { name: "magnesium ribbon", formula: "Mg", assays: [{ lower: "99", upper: "99.9" }], form: "solid", impurities: ["MgO skin"], trap: "scrape oxide before use", source: "memory" },
  { name: "aluminium foil", formula: "Al", assays: [{ lower: "98.5", upper: "99.4" }], form: "solid", impurities: ["Fe 0.4-1.3", "Si 0.1-0.9"], trap: "alloy; dull film of oxide", source: "memory" },
  { name: "drink can body", formula: "Al", assays: [{ lower: "95", upper: "97.5" }], form: "solid", impurities: ["Mg 1", "Mn 1", "Fe", "lacquer inside"], trap: "lacquer and Mn, Mg: not pure", source: "memory" },
  { name: "aluminium sulfate (hydrangea blueing)", formula: "Al2(SO4)3·18H2O", alternatives: ["Al2(SO4)3·16H2O", "Al2(SO4)3·14H2O"], assays: [
    { lower: "90", upper: "105" },
    { lower: "15.5", upper: "17.5", of: "Al2O3" },
  ], form: "solid", impurities: ["Fe", "free acid"], trap: "hydrate number varies (14-18): use the Al2O3 figure", source: "tradeSheets" },
  { name: "pickling alum", formula: "KAl(SO4)2·12H2O", alternatives: ["NH4Al(SO4)2·12H2O"], assays: [{ lower: "99", upper: "101" }], form: "solid", trap: "K or NH4 salt not stated; smell ammonia with lime tells", source: "foodAdditivePurity" },
  { name: "styptic or crystal deodorant", formula: "KAl(SO4)2·12H2O", alternatives: ["NH4Al(SO4)2·12H2O"], assays: [{ lower: "97", upper: "100" }], form: "solid", trap: "melts at 92 °C in own water", source: "memory" },
  { name: "alum, burnt", formula: "KAl(SO4)2", otherGoods: ["partly hydrated"], assays: [{ lower: "90", upper: "97" }], form: "solid", impurities: ["H2O"], trap: "hydration unknown", source: "memory" },
  { name: "sodium alum (baking acid)", formula: "NaAl(SO4)2", alternatives: ["NaAl(SO4)2·12H2O"], assays: [{ lower: "97", upper: "99" }], form: "solid", source: "foodAdditivePurity" },
  { name: "aluminium acetate mordant", formula: "Al(OH)(CH3COO)2", alternatives: ["Al(CH3COO)3"], assays: [{ lower: "80", upper: "100" }], form: "solid", impurities: ["boric acid stabiliser"], trap: "no fixed formula", source: "memory" },
  { name: "papermaker's alum", alsoCalled: ["aluminium sulfate, 17 %"], formula: "Al2(SO4)3·14H2O", alternatives: ["Al2(SO4)3·16H2O", "Al2(SO4)3·18H2O"], assays: [
    { lower: "97", upper: "102" },
    { lower: "16.5", upper: "17.3", of: "Al2O3" },
  ], form: "solid", impurities: ["Fe"], trap: "no alum: 17 % Al2O3 means about 14 waters, not the 18 of the label's formula", source: "tradeSheets" },
  { name: "sodium sulfide flakes", formula: "Na2S·3H2O", alternatives: ["Na2S·9H2O"], assays: [
    { lower: "97", upper: "105" },
    { lower: "58", upper: "62", of: "Na2S" },
  ], form: "solid", impurities: ["Na2S2O3", "Na2CO3"], trap: "the yellow flakes contain 60 % Na2S, the crystals 32 %: read the figure", source: "tradeSheets" },
  { name: "ferric sulfate (hydrated)", formula: "Fe2(SO4)3·5H2O", alternatives: ["Fe2(SO4)3·9H2O", "Fe2(SO4)3"], assays: [{ lower: "19.5", upper: "22.9", of: "Fe" }], form: "solid", impurities: ["H2SO4"], trap: "the water is not fixed (xH2O): 22.8 % Fe is about 5 waters, 19.9 % about 9; go by the Fe figure", source: "tradeSheets" },
  { name: "pool flocculant", formula: "Al2(SO4)3·16H2O", otherGoods: ["polyaluminium chloride", "liquid of 1.2 to 1.37 g/mL"], assays: [{ lower: "45", upper: "100" }], form: "solid", trap: "polyaluminium chloride is Aln(OH)mCl: not alum", source: "tradeSheets" },
  { name: "moss killer (iron sulfate)", alsoCalled: ["moss killer", "iron sulfate", "green vitriol"], formula: "FeSO4·7H2O", alternatives: ["FeSO4·H2O"], assays: [
    { lower: "90", upper: "99" },
    { lower: "19", upper: "20", of: "Fe" },
  ], form: "solid", impurities: ["Fe(III)", "H2SO4", "Mn", "Ti (by-product goods)"], trap: "the heptahydrate is 20 % Fe, the monohydrate 30 %: read the Fe figure; browns and dries on keeping", source: "tradeSheets" },
  { name: "lawn sand or weed-and-feed", formula: "FeSO4·H2O", assays: [{ lower: "5", upper: "20" }], form: "solid", impurities: ["sand", "ammonium sulfate", "herbicide"], trap: "not a reagent", source: "tradeSheets" },
  { name: "iron tonic (chelate)", formula: "NaFeC10H12N2O8", otherGoods: ["iron(III) salts of other chelating acids"], assays: [{ lower: "6", upper: "13", of: "Fe" }], form: "solid", trap: "no free iron", source: "memory" },
  { name: "ferric chloride etchant", formula: "FeCl3", alternatives: ["FeCl3·6H2O"], assays: [{ lower: "35", upper: "42" }], form: "mass fraction", density: { lower: "1.35", upper: "1.45" }, impurities: ["free HCl", "Cu after use"], trap: "solid hexahydrate is 60 % FeCl3", source: "tradeSheets" },
  { name: "persulfate etchant", formula: "Na2S2O8", alternatives: ["(NH4)2S2O8"], assays: [{ lower: "98", upper: "99.5" }], form: "solid", impurities: ["sulfate"], trap: "sodium and ammonium swap; loses strength damp", source: "tradeSheets" },
  { name: "steel wool", formula: "Fe", assays: [{ lower: "98", upper: "99.7" }], form: "solid", impurities: ["C", "Mn", "oil"], trap: "rinse oil with solvent; stainless kind is Cr-Ni", source: "memory" },
  { name: "nails or screws", formula: "Fe", assays: [{ lower: "97", upper: "99" }], form: "solid", impurities: ["Zn coat", "Mn", "C"], trap: "galvanised, chromated, brass or stainless look-alikes", source: "memory" },
  { name: "rust", formula: "FeO(OH)", alternatives: ["Fe2O3"], assays: [{ lower: "60", upper: "95" }], form: "solid", impurities: ["water", "Fe3O4"], trap: "no fixed formula", source: "memory" },
  { name: "red iron oxide", formula: "Fe2O3", assays: [{ lower: "75", upper: "99" }], form: "solid", impurities: ["SiO2", "clay"], trap: "natural kinds 70-85 %", source: "tradeSheets" },
  { name: "yellow iron oxide or ochre", formula: "FeO(OH)", otherGoods: ["mixed with clay"], assays: [{ lower: "20", upper: "95" }], form: "solid", impurities: ["clay"], trap: "synthetic 95; ochre far less", source: "memory" },
  { name: "black iron oxide", formula: "Fe3O4", assays: [{ lower: "90", upper: "98" }], form: "solid", impurities: ["Fe2O3"], trap: "slowly reddens", source: "memory" },
  { name: "root killer (copper sulfate)", alsoCalled: ["root killer", "copper sulfate"], formula: "CuSO4·5H2O", otherGoods: ["foaming herbicide without copper"], assays: [
    { lower: "98", upper: "100" },
    { lower: "25.4", upper: "25.4", of: "Cu" },
  ], form: "solid", impurities: ["Fe", "Zn"], trap: "foaming kinds contain no copper; sale limited in places", source: "tradeSheets" },
  { name: "bluestone (farm, pond)", alsoCalled: ["bluestone", "copper sulfate"], formula: "CuSO4·5H2O", alternatives: ["CuSO4·H2O"], assays: [{ lower: "97", upper: "100" }], form: "solid", impurities: ["Fe", "Ni", "Zn", "acid"], trap: "monohydrate feed grade 35 % Cu; lightens on dry storage", source: "tradeSheets" },
  { name: "copper fungicide, oxychloride", formula: "Cu2(OH)3Cl", alternatives: ["Cu(OH)2", "Cu2O", "Cu4(OH)6SO4"], assays: [{ lower: "50", upper: "50", of: "Cu" }], form: "solid", impurities: ["clay", "wetting agent", "dye"], trap: "label gives Cu; fillers 15-50 %", source: "tradeSheets" },
  { name: "Bordeaux mixture", formula: "Cu4(OH)6SO4", otherGoods: ["CaSO4 with Cu(OH)2 gel"], assays: [{ lower: "18", upper: "20", of: "Cu" }], form: "solid", impurities: ["CaSO4", "lime"], trap: "not one compound", source: "tradeSheets" },
  { name: "copper pipe", formula: "Cu", assays: [{ lower: "99.9", upper: "99.9" }], form: "solid", impurities: ["P 0.015-0.04"], trap: "phosphorus-deoxidised; solder and flux on joints", source: "tradeSheets" },
  { name: "copper wire", alsoCalled: ["wire"], formula: "Cu", assays: [{ lower: "99.9", upper: "99.99" }], form: "solid", impurities: ["O 0.02-0.04", "enamel", "tin"], trap: "tinned or enamelled wire", source: "memory" },
  { name: "brass fittings", formula: "Cu", otherGoods: ["alloy with Zn"], assays: [{ lower: "58", upper: "70" }], form: "solid", impurities: ["Zn 30-40", "Pb 1-3"], trap: "contains lead: avoid", source: "memory" },
  { name: "verdigris", formula: "Cu(CH3COO)2·H2O", alternatives: ["Cu2(OH)3Cl"], otherGoods: ["basic copper acetates"], assays: [{ lower: "70", upper: "95" }], form: "solid", trap: "name covers several greens", source: "memory" },
  { name: "pottery copper carbonate", alsoCalled: ["copper carbonate"], formula: "Cu2(OH)2CO3", otherGoods: ["labelled CuCO3"], assays: [
    { lower: "95", upper: "99" },
    { lower: "55", upper: "57", of: "Cu" },
  ], form: "solid", impurities: ["Na2SO4", "Na2CO3"], trap: "CuCO3 on the bag is the basic salt: 57.5 % Cu, not 51.4 %", source: "tradeSheets" },
  { name: "pottery copper oxide", alsoCalled: ["copper oxide"], formula: "CuO", alternatives: ["Cu2O"], assays: [{ lower: "97", upper: "99" }], form: "solid", impurities: ["Fe", "Cu metal"], trap: "red and black on one shelf", source: "tradeSheets" },
  { name: "pottery cobalt carbonate", alsoCalled: ["cobalt carbonate"], formula: "Co5(OH)6(CO3)2", alternatives: ["CoCO3"], assays: [{ lower: "44", upper: "55", of: "Co" }], form: "solid", impurities: ["Na", "Ni", "moisture"], trap: "basic salt of floating make-up: use the Co figure", source: "tradeSheets" },
  { name: "pottery cobalt oxide", alsoCalled: ["cobalt oxide"], formula: "Co3O4", alternatives: ["CoO"], assays: [{ lower: "71", upper: "74", of: "Co" }], form: "solid", impurities: ["Ni", "Fe"], trap: "black = Co3O4; grey = CoO 76-78 % Co", source: "tradeSheets" },
  { name: "pottery nickel carbonate", alsoCalled: ["nickel carbonate"], formula: "Ni3(OH)4CO3·4H2O", alternatives: ["NiCO3"], assays: [{ lower: "40", upper: "50", of: "Ni" }], form: "solid", impurities: ["Co", "Na", "water"], trap: "hydration varies: use the Ni figure", source: "tradeSheets" },
  { name: "pottery nickel oxide", alsoCalled: ["nickel oxide"], formula: "NiO", otherGoods: ["black oxide holding Ni(III)"], assays: [{ lower: "75", upper: "78", of: "Ni" }], form: "solid", impurities: ["Co"], trap: "green NiO, black contains Ni(III)", source: "memory" },
  { name: "pottery manganese carbonate", alsoCalled: ["manganese carbonate"], formula: "MnCO3", assays: [
    { lower: "90", upper: "97" },
    { lower: "43", upper: "46", of: "Mn" },
  ], form: "solid", impurities: ["MnO2", "SiO2", "Fe"], trap: "slowly browns", source: "tradeSheets" },
  { name: "pottery manganese dioxide", alsoCalled: ["manganese dioxide"], formula: "MnO2", assays: [{ lower: "70", upper: "91" }], form: "solid", impurities: ["Fe2O3", "SiO2", "Ba"], trap: "ore grade", source: "tradeSheets" },
  { name: "battery black (zinc-carbon)", formula: "MnO2", assays: [{ lower: "50", upper: "65" }], form: "solid", impurities: ["C", "NH4Cl or ZnCl2", "MnO(OH)"], trap: "used cells contain MnO(OH): wash and test", source: "memory" },
  { name: "battery black (alkaline)", formula: "MnO2", alternatives: ["MnO(OH)"], assays: [{ lower: "60", upper: "85" }], form: "solid", impurities: ["KOH", "graphite", "ZnO"], trap: "caustic paste; never open lithium cells", source: "memory" },
  { name: "pottery barium carbonate", alsoCalled: ["barium carbonate"], formula: "BaCO3", assays: [{ lower: "98", upper: "99.7" }], form: "solid", impurities: ["SrCO3", "S", "Na"], source: "tradeSheets" },
  { name: "pottery strontium carbonate", alsoCalled: ["strontium carbonate"], formula: "SrCO3", assays: [{ lower: "97", upper: "99" }], form: "solid", impurities: ["BaCO3 0.5-3", "CaCO3", "Na"], source: "tradeSheets" },
  { name: "pottery lithium carbonate", alsoCalled: ["lithium carbonate"], formula: "Li2CO3", otherGoods: ["petalite or spodumene"], assays: [{ lower: "98.5", upper: "99.5" }], form: "solid", impurities: ["Na", "Ca"], source: "tradeSheets" },
  { name: "pottery zinc oxide", alsoCalled: ["zinc oxide"], formula: "ZnO", assays: [{ lower: "98.5", upper: "99.9" }], form: "solid", impurities: ["Pb", "Cd traces", "ZnCO3"], trap: "calcined and uncalcined; absorbs CO2", source: "tradeSheets" },
  { name: "pottery tin oxide", alsoCalled: ["tin oxide"], formula: "SnO2", assays: [{ lower: "98", upper: "99.9" }], form: "solid", impurities: ["Pb", "SiO2"], source: "memory" },
  { name: "pottery chrome oxide", alsoCalled: ["chrome oxide"], formula: "Cr2O3", assays: [{ lower: "98", upper: "99.7" }], form: "solid", impurities: ["Cr(VI) traces"], source: "tradeSheets" },
  { name: "pottery magnesium carbonate, light", alsoCalled: ["magnesium carbonate", "magnesium carbonate, light"], formula: "Mg5(CO3)4(OH)2·4H2O", alternatives: ["MgCO3"], assays: [{ lower: "95", upper: "100" }], form: "solid", impurities: ["Ca"], trap: "the basic carbonate: 40 to 44 % MgO", source: "tradeSheets" },
  { name: "pottery rutile or titanium dioxide", formula: "TiO2", assays: [{ lower: "90", upper: "99" }], form: "solid", impurities: ["Fe", "Nb", "coatings"], trap: "pigment is coated with Al2O3/SiO2", source: "memory" },
  { name: "silica flour", formula: "SiO2", assays: [{ lower: "97", upper: "99.8" }], form: "solid", impurities: ["Al2O3", "Fe"], trap: "breathing danger", source: "memory" },
  { name: "kaolin", formula: "Al2Si2O5(OH)4", assays: [{ lower: "75", upper: "98" }], form: "solid", impurities: ["quartz", "mica"], source: "memory" },
  { name: "colemanite-type glaze borate", formula: "Ca2B6O11·5H2O", otherGoods: ["mixed with ulexite"], assays: [{ lower: "60", upper: "95" }], form: "solid", impurities: ["clay", "ulexite"], trap: "natural mixture of varied boron", source: "memory" },
  { name: "cryolite", formula: "Na3AlF6", assays: [{ lower: "90", upper: "98" }], form: "solid", impurities: ["Al2O3", "fluorite"], trap: "fluoride", source: "memory" },
  { name: "garden zinc sulfate", alsoCalled: ["zinc sulfate"], formula: "ZnSO4·H2O", alternatives: ["ZnSO4·7H2O"], assays: [
    { lower: "95", upper: "99" },
    { lower: "35", upper: "36", of: "Zn" },
  ], form: "solid", impurities: ["Cd", "Pb", "Fe", "Mn"], trap: "the monohydrate is 35.5 % Zn, the heptahydrate 22 %: read the Zn figure", source: "tradeSheets" },
  { name: "moss strip or liquid (zinc)", alsoCalled: ["moss killer (zinc sulfate)", "moss killer"], formula: "ZnSO4·H2O", alternatives: ["ZnSO4·7H2O", "ZnCl2"], otherGoods: ["liquid of 1.1 to 1.5 g/mL"], assays: [{ lower: "10", upper: "99" }], form: "solid", trap: "sold as mono- or heptahydrate or as chloride: read the Zn figure", source: "tradeSheets" },
  { name: "manganese sulfate (garden)", alsoCalled: ["manganese sulfate"], formula: "MnSO4·H2O", alternatives: ["MnSO4·4H2O"], assays: [
    { lower: "96", upper: "99" },
    { lower: "31", upper: "32", of: "Mn" },
  ], form: "solid", impurities: ["Ca", "Mg"], source: "tradeSheets" },
  { name: "dry-cell zinc cans", formula: "Zn", assays: [{ lower: "99", upper: "99.7" }], form: "solid", impurities: ["Pb", "Mn", "Mg", "paste"], trap: "strip paste and label; not alkaline cells (powder gel)", source: "memory" },
  { name: "galvanised sheet (zinc coat)", formula: "Zn", assays: [{ lower: "1", upper: "5", note: "of the mass of the coated part" }], form: "solid", impurities: ["Fe", "Al 0.2", "chromate"], trap: "acid takes off zinc first, iron follows when bubbling slows", source: "memory" },
  { name: "zinc sacrificial anode", formula: "Zn", otherGoods: ["look-alikes of Al or Mg"], assays: [{ lower: "99", upper: "99.5" }], form: "solid", impurities: ["Al 0.1-0.5", "Cd 0.02-0.07"], trap: "contains cadmium; look-alikes are Al or Mg", source: "memory" },
  { name: "soldering flux (killed spirits)", formula: "ZnCl2", otherGoods: ["ZnCl2 with NH4Cl"], assays: [{ lower: "20", upper: "45" }], form: "mass fraction", density: { lower: "1.2", upper: "1.5" }, impurities: ["HCl", "NH4Cl"], source: "tradeSheets" },
  { name: "sal ammoniac block", alsoCalled: ["sal ammoniac"], formula: "NH4Cl", assays: [{ lower: "98", upper: "99.8" }], form: "solid", impurities: ["Fe"], source: "tradeSheets" },
  { name: "ammonium sulfate fertiliser (21-0-0)", formula: "(NH4)2SO4", assays: [{ lower: "97", upper: "99.5" }], form: "solid", impurities: ["free acid", "Fe"], source: "tradeSheets" },
  { name: "ammonium nitrate cold pack", formula: "NH4NO3", alternatives: ["CO(NH2)2"], otherGoods: ["blends with Ca(NO3)2"], assays: [{ lower: "95", upper: "99" }], form: "solid", impurities: ["coatings"], trap: "modern packs are urea; regulated", source: "memory" },
  { name: "calcium nitrate fertiliser (15.5-0-0)", formula: "5Ca(NO3)2·NH4NO3·10H2O", alternatives: ["Ca(NO3)2·4H2O"], assays: [{ lower: "95", upper: "99" }], form: "solid", impurities: ["Mg", "Sr"], trap: "double salt: 19 % Ca, 1.1 % N as ammonium; damp prills gain water", source: "tradeSheets" },
  { name: "saltpetre stump remover", alsoCalled: ["stump remover"], formula: "KNO3", alternatives: ["Na2S2O5", "K2S2O5"], assays: [{ lower: "97", upper: "100" }], form: "solid", impurities: ["NaCl", "NaNO3"], trap: "some stump removers are metabisulfite: test with acid", source: "tradeSheets" },
  { name: "potassium nitrate fertiliser (13-0-46)", alsoCalled: ["saltpetre"], formula: "KNO3", assays: [{ lower: "98", upper: "99.8" }], form: "solid", impurities: ["NaCl", "NaNO3"], trap: "regulated in places", source: "tradeSheets" },
  { name: "soda nitre (16-0-0)", formula: "NaNO3", assays: [{ lower: "97", upper: "98" }], form: "solid", impurities: ["NaCl", "Na2SO4", "iodate"], source: "memory" },
  { name: "muriate of potash (0-0-60)", formula: "KCl", assays: [{ lower: "95", upper: "99" }], form: "solid", impurities: ["NaCl", "Fe (red)", "amine"], trap: "red fertiliser grade has clay, iron", source: "tradeSheets" },
  { name: "sulfate of potash (0-0-50)", formula: "K2SO4", assays: [{ lower: "92", upper: "99" }], form: "solid", impurities: ["KCl", "MgSO4"], source: "tradeSheets" },
  { name: "potassium magnesium fertiliser", formula: "K2Mg2(SO4)3", alternatives: ["K2Mg(SO4)2·6H2O"], otherGoods: ["MgSO4·H2O mixed with K2SO4"], assays: [{ lower: "90", upper: "98" }], form: "solid", impurities: ["KCl"], trap: "langbeinite vs schoenite vs mixes", source: "memory" },
  { name: "salt substitute", formula: "KCl", otherGoods: ["KCl mixed with NaCl", "with fumarate or silica"], assays: [{ lower: "50", upper: "99.7" }], form: "solid", impurities: ["silica", "bitartrate"], trap: "half-salt kinds are 1:1", source: "memory" },
  { name: "table salt", alsoCalled: ["salt", "common salt"], formula: "NaCl", assays: [{ lower: "97", upper: "99.9" }], form: "solid", impurities: ["KI/KIO3", "ferrocyanide", "MgCO3", "silica"], trap: "iodine and anticaking: use pickling salt", source: "foodAdditivePurity" },
  { name: "pickling or pool salt", formula: "NaCl", assays: [{ lower: "99", upper: "99.9" }], form: "solid", impurities: ["CaSO4"], source: "foodAdditivePurity" },
  { name: "softener potassium", formula: "KCl", assays: [{ lower: "99", upper: "99.9" }], form: "solid", impurities: ["NaCl"], source: "tradeSheets" },
  { name: "potash (baking)", alsoCalled: ["potash", "pearl ash"], formula: "K2CO3", alternatives: ["K2CO3·1.5H2O"], assays: [{ lower: "98", upper: "100" }], form: "solid", impurities: ["KHCO3"], trap: "deliquescent; hydrate contains 16 % water", source: "foodAdditivePurity" },
  { name: "potassium bicarbonate", formula: "KHCO3", assays: [{ lower: "98", upper: "101" }], form: "solid", impurities: ["K2CO3"], source: "foodAdditivePurity" },
  { name: "bleach (household)", alsoCalled: ["bleach", "household bleach", "chlorine bleach", "eau de Javel", "Javel water"], formula: "NaClO", assays: [{ lower: "2.5", upper: "8.3" }], form: "mass fraction", density: { lower: "1.04", upper: "1.12" }, impurities: ["NaCl (equal mol)", "NaOH", "Na2CO3", "chlorate"], trap: "percent may be w/w NaClO, w/w or w/v available chlorine; fades 1 %/day warm; thick kinds contain surfactant", source: "tradeSheets" },
  { name: "pool chlorine, liquid", formula: "NaClO", assays: [{ lower: "10", upper: "12.5", of: "Cl2", note: "available chlorine" }], form: "mass concentration", density: { lower: "1.13", upper: "1.17" }, impurities: ["NaCl", "NaOH", "chlorate"], trap: "'trade percent' = g available chlorine per 100 mL: 12 % trade = 10.9 % w/w NaClO at 1.16", source: "bleachStrength" },
  { name: "pool shock, calcium", formula: "Ca(ClO)2", alternatives: ["Ca(ClO)2·3H2O"], assays: [{ lower: "47", upper: "73", of: "Cl2", note: "available chlorine" }], form: "solid", impurities: ["NaCl", "CaCO3", "Ca(OH)2", "H2O 5-16"], trap: "percentage is available chlorine; hydrated kind has 5-16 % water", source: "tradeSheets" },
  { name: "pool shock, non-chlorine", formula: "KHSO5", alternatives: ["2KHSO5·KHSO4·K2SO4"], assays: [{ lower: "42", upper: "47" }], form: "solid", impurities: ["K2SO4", "KHSO4", "MgCO3"], trap: "triple salt: 42-47 % active; acid", source: "tradeSheets" },
  { name: "pool tablets", formula: "C3N3O3Cl3", assays: [{ lower: "89", upper: "99" }], form: "solid", impurities: ["NaCl", "alum blends"], trap: "leaves cyanurate; dangerous with cal-hypo", source: "tradeSheets" },
  { name: "pool granules, dichlor", formula: "C3N3O3Cl2Na·2H2O", alternatives: ["C3N3O3Cl2Na"], assays: [{ lower: "95", upper: "99" }], form: "solid", impurities: ["NaCl"], trap: "dihydrate 56 % and anhydrous 62 % available chlorine", source: "tradeSheets" },
  { name: "pool stabiliser", formula: "C3H3N3O3", assays: [{ lower: "98", upper: "100" }], form: "solid", source: "tradeSheets" },
  { name: "peroxide, pharmacy", alsoCalled: ["hydrogen peroxide", "peroxide", "oxygenated water"], formula: "H2O2", assays: [{ lower: "2.5", upper: "3.5", note: "3 on the label" }], form: "mass concentration", density: { lower: "1.01", upper: "1.01" }, impurities: ["stabiliser"], trap: "'10 volume' = 3 % w/v; falls with age", source: "pharmacopoeiaLimits" },
  { name: "peroxide, hair developer", alsoCalled: ["hydrogen peroxide", "peroxide"], formula: "H2O2", assays: [{ lower: "6", upper: "12" }], form: "mass concentration", density: { lower: "1.02", upper: "1.05" }, impurities: ["surfactant", "acid"], trap: "20/30/40 volume = 6/9/12 %; cream kinds useless", source: "tradeSheets" },
  { name: "peroxide, pool or food", alsoCalled: ["hydrogen peroxide", "peroxide"], formula: "H2O2", assays: [{ lower: "27", upper: "35" }], form: "mass fraction", density: { lower: "1.10", upper: "1.13" }, impurities: ["stabiliser"], trap: "sale limited above 12 % in EU", source: "tradeSheets" },
  { name: "oxygen bleach", alsoCalled: ["sodium percarbonate"], formula: "2Na2CO3·3H2O2", otherGoods: ["blended with Na2CO3, surfactant and bleach activator"], assays: [{ lower: "30", upper: "99", note: "10 to 14 % active oxygen when unblended" }], form: "solid", impurities: ["Na2CO3", "silicate"], trap: "blends; loses oxygen damp", source: "tradeSheets" },
  { name: "potassium permanganate", formula: "KMnO4", assays: [{ lower: "97", upper: "99.5" }], form: "solid", impurities: ["MnO2"], trap: "regulated; decomposes slowly in water", source: "tradeSheets" },
  { name: "metabisulfite powder", alsoCalled: ["metabisulfite", "campden powder"], formula: "Na2S2O5", alternatives: ["K2S2O5"], assays: [{ lower: "95", upper: "100" }], form: "solid", impurities: ["Na2SO3", "Na2SO4"], trap: "SO2 yield 67 % (Na) or 57 % (K); ages to sulfate", source: "foodAdditivePurity" },
  { name: "sulfite wine tablets", alsoCalled: ["campden tablets"], formula: "K2S2O5", alternatives: ["Na2S2O5"], assays: [{ lower: "45", upper: "98" }], form: "solid", impurities: ["filler"], trap: "fillers; K and Na swapped by land", source: "memory" },
  { name: "dechlorinator (hypo)", alsoCalled: ["hypo", "dechlorinator"], formula: "Na2S2O3·5H2O", alternatives: ["Na2S2O3"], assays: [{ lower: "99", upper: "101" }], form: "solid", impurities: ["Na2SO3", "sulfate"], trap: "anhydrous is 1.57 times stronger; effloresces in warm dry air", source: "tradeSheets" },
  { name: "rapid fixer concentrate", formula: "(NH4)2S2O3", alternatives: ["Na2S2O3"], assays: [{ lower: "40", upper: "60" }], form: "mass fraction", density: { lower: "1.3", upper: "1.33" }, impurities: ["acetic acid", "sulfite"], trap: "acid, aged kinds drop sulfur", source: "tradeSheets" },
  { name: "sodium sulfite", formula: "Na2SO3", alternatives: ["Na2SO3·7H2O"], assays: [{ lower: "97", upper: "99" }], form: "solid", impurities: ["Na2SO4"], trap: "oxidises in damp air to sulfate", source: "tradeSheets" },
  { name: "colour-run remover", formula: "Na2S2O4", otherGoods: ["blended with Na2CO3 and Na2SO3"], assays: [{ lower: "20", upper: "60" }], form: "solid", impurities: ["Na2CO3", "Na2S2O5"], trap: "blend; spoils in damp with heat", source: "tradeSheets" },
  { name: "sulfur (garden)", formula: "S", assays: [{ lower: "80", upper: "99.9" }], form: "solid", impurities: ["bentonite (pelleted)", "dispersant"], trap: "wettable 80 % contains lignosulfonate; pelleted contains 10 % clay", source: "tradeSheets" },
  { name: "lime sulfur", formula: "CaS5", alternatives: ["CaS4"], otherGoods: ["mixture of polysulfides"], assays: [{ lower: "20", upper: "30", note: "polysulfide in all" }], form: "mass fraction", density: { lower: "1.25", upper: "1.32" }, impurities: ["thiosulfate"], trap: "polysulfides: H2S with acid", source: "tradeSheets" },
  { name: "Glauber's salt (dye)", alsoCalled: ["Glauber's salt"], formula: "Na2SO4", alternatives: ["Na2SO4·10H2O"], assays: [{ lower: "98", upper: "99.7" }], form: "solid", impurities: ["NaCl"], trap: "anhydrous and decahydrate under one name: 56 % water", source: "tradeSheets" },
  { name: "water glass", alsoCalled: ["liquid glass"], formula: "Na2Si3O7", alternatives: ["Na2SiO3·5H2O"], assays: [{ lower: "36", upper: "40" }], form: "mass fraction", density: { lower: "1.35", upper: "1.42" }, trap: "ratio SiO2:Na2O 2.0-3.3 differs", source: "tradeSheets" },
  { name: "sodium acetate heat pack", formula: "NaCH3COO·3H2O", alternatives: ["NaCH3COO"], assays: [{ lower: "85", upper: "100" }], form: "solid", impurities: ["water 5-15"], trap: "extra water for handling", source: "memory" },
  { name: "sodium citrate", alsoCalled: ["citrate of soda"], formula: "Na3C6H5O7·2H2O", alternatives: ["Na3C6H5O7·5.5H2O"], assays: [{ lower: "99", upper: "101" }], form: "solid", source: "foodAdditivePurity" },
  { name: "Rochelle salt", formula: "KNaC4H4O6·4H2O", assays: [{ lower: "98", upper: "101" }], form: "solid", trap: "effloresces slightly", source: "memory" },
  { name: "iodine tincture", formula: "I2", assays: [{ lower: "2", upper: "7" }], form: "mass concentration", density: { lower: "0.95", upper: "1.0" }, impurities: ["KI", "NaI", "ethanol"], trap: "much iodide; alcohol", source: "pharmacopoeiaLimits" },
  { name: "potassium iodide", formula: "KI", assays: [{ lower: "99", upper: "101" }], form: "solid", impurities: ["K2CO3", "iodate"], trap: "yellows", source: "pharmacopoeiaLimits" },
  { name: "silver nitrate", formula: "AgNO3", assays: [{ lower: "99.5", upper: "100.5" }], form: "solid", trap: "stick kinds contain KNO3", source: "pharmacopoeiaLimits" },
  { name: "silver scrap (sterling)", formula: "Ag", assays: [{ lower: "92.5", upper: "92.5" }], form: "solid", impurities: ["Cu 7.5"], trap: "copper goes with it", source: "memory" },
  { name: "lead-free solder", formula: "Sn", otherGoods: ["alloys with Ag and Cu"], assays: [{ lower: "95", upper: "99.3" }], form: "solid", impurities: ["Ag 0-4", "Cu 0.5-3", "rosin", "some Bi/Sb"], trap: "older solder is 37-40 % lead", source: "memory" },
  { name: "nickel strip or coin", formula: "Ni", otherGoods: ["cupronickel", "nickel-plated steel"], assays: [{ lower: "25", upper: "99.5" }], form: "solid", impurities: ["Cu", "Fe"], trap: "magnet test: plated steel; many coins 75 Cu", source: "memory" },
  { name: "tin can", formula: "Fe", assays: [{ lower: "95", upper: "99" }], form: "solid", impurities: ["Sn coat <1", "lacquer"], trap: "tin layer is microns", source: "memory" },
  { name: "graphite (pencil, electrode)", formula: "C", assays: [{ lower: "30", upper: "99.9" }], form: "solid", impurities: ["clay (pencil)"], trap: "pencil lead is 30-70 % clay", source: "memory" },
  { name: "activated carbon", formula: "C", assays: [{ lower: "85", upper: "95" }], form: "solid", impurities: ["ash", "KOH or H3PO4 residue"], trap: "wash first", source: "memory" },
  { name: "potassium ferricyanide", formula: "K3[Fe(CN)6]", assays: [{ lower: "99", upper: "100" }], form: "solid", impurities: ["ferrocyanide"], source: "tradeSheets" },
  { name: "potassium ferrocyanide", formula: "K4[Fe(CN)6]·3H2O", alternatives: ["Na4[Fe(CN)6]·10H2O"], assays: [{ lower: "98", upper: "100" }], form: "solid", source: "tradeSheets" },
  { name: "ferric ammonium citrate (green)", alsoCalled: ["ferric ammonium citrate"], formula: "(NH4)3[Fe(C6H5O7)2]", otherGoods: ["brown kind"], assays: [{ lower: "14", upper: "22", of: "Fe" }], form: "solid", trap: "no formula: green 14-16 %, brown 16.5-22 %", source: "memory" },
  { name: "Mohr's salt", formula: "(NH4)2Fe(SO4)2·6H2O", assays: [{ lower: "98", upper: "100" }], form: "solid", impurities: ["Fe(III)"], source: "memory" },
  { name: "chrome alum", formula: "KCr(SO4)2·12H2O", assays: [{ lower: "97", upper: "100" }], form: "solid", trap: "violet; heated turns green", source: "memory" },
  { name: "stannous chloride mordant", formula: "SnCl2·2H2O", alternatives: ["SnCl2"], assays: [{ lower: "95", upper: "98" }], form: "solid", impurities: ["Sn(IV)"], trap: "oxidises and hydrolyses in air", source: "memory" },
  { name: "calcium carbide", formula: "CaC2", assays: [{ lower: "70", upper: "85" }], form: "solid", impurities: ["CaO", "Ca3P2 (phosphine)", "C"], trap: "gas contains phosphine; grade by L gas per kg", source: "memory" },
  { name: "isopropyl alcohol", formula: "C3H8O", assays: [{ lower: "62.7", upper: "99.7", note: "70 to 99.8 % by volume" }], form: "mass fraction", density: { lower: "0.785", upper: "0.878" }, impurities: ["water"], trap: "70 % is by volume (62-65 % w/w)", source: "tradeSheets" },
  { name: "denatured ethanol", formula: "C2H5OH", assays: [{ lower: "79", upper: "94", note: "85 to 96 % by volume" }], form: "mass fraction", density: { lower: "0.80", upper: "0.83" }, impurities: ["methanol", "ketones", "bitter"], trap: "denaturant differs by land", source: "tradeSheets" },
  { name: "acetone", alsoCalled: ["propanone", "nail polish remover"], formula: "CH3COCH3", assays: [{ lower: "98", upper: "99.8" }], form: "mass fraction", density: { lower: "0.79", upper: "0.79" }, impurities: ["water"], source: "tradeSheets" },
  { name: "distilled or deionised water", alsoCalled: ["distilled water", "deionised water", "water"], formula: "H2O", assays: [{ lower: "99.99", upper: "99.99" }], form: "mass fraction", density: { lower: "0.998", upper: "0.998" }, impurities: ["CO2", "trace salts"], trap: "'purified', 'battery top-up' and 'spring' differ", source: "tradeSheets" },
  { name: "lemon juice", formula: "C6H8O7", assays: [{ lower: "4.5", upper: "6" }], form: "mass concentration", impurities: ["sugars", "malic acid"], trap: "varies with the fruit: titrate", source: "memory" },
  { name: "smelling salts", alternatives: ["NH4HCO3"], formula: "(NH4)2CO3", assays: [{ lower: "90", upper: "100" }], form: "solid", impurities: ["ammonium carbamate", "perfume"], trap: "liquid kinds are ammonia in alcohol", source: "memory" },
  { name: "magnesium chloride flakes", alsoCalled: ["magnesium flakes", "bath flakes"], formula: "MgCl2·6H2O", assays: [
    { lower: "95", upper: "100" },
    { lower: "45", upper: "47", of: "MgCl2" },
  ], form: "solid", impurities: ["CaCl2", "NaCl", "MgSO4"], trap: "absorbs water and deliquesces; counted as MgCl2 it is less than half", source: "tradeSheets" },
  { name: "limewater", alsoCalled: ["lime water", "kalkwasser"], formula: "Ca(OH)2", assays: [{ lower: "0.14", upper: "0.17" }], form: "mass fraction", density: { lower: "1.0", upper: "1.002" }, trap: "clouds with the carbon dioxide of the air; kalkwasser is also the name of the powder", source: "tradeSheets" },
]);

/** What a name is looked up in: what is sold under it, and how strong. */
export const SHOP_NAMES = /* @__PURE__ */ columns(SHOP_MATERIALS, ["name", "alsoCalled", "formula", "alternatives", "assays", "form", "density"]);

export type SoldRow = ReturnType<typeof SHOP_NAMES>[number];

/** What else is to be known of a good, in the same order. Nobody asks yet by which shops it is sold. */
export const SHOP_FACTS = /* @__PURE__ */ columns(SHOP_MATERIALS, ["otherGoods", "impurities", "trap", "source"]);

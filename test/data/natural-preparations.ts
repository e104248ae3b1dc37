// Sixty preparations as a teacher or a studio writes them down: textbook equations with anhydrous formulas, goods of the shop by
// name and strength, household acids, excesses in the wrong place, cold and warm rooms. The requests, names and packs are invented;
// what a sheet must and must not say is chemistry, with the ground beside it.
import type { PlanRequest } from "../../src/preparation";

/** One preparation with what its sheet must say and must not. */
export interface NaturalPreparation {
  readonly id: string;
  readonly request: PlanRequest;
  /** In a step, a check, a remark on what is left, or the reason of the verdict. */
  readonly says?: readonly RegExp[];
  readonly never?: readonly RegExp[];
}

export const NATURAL_PREPARATIONS: readonly NaturalPreparation[] = [
  {
    id: "plaster from calcium chloride and Glauber salt",
    request: {
      equation: "CaCl2 + Na2SO4 -> CaSO4 + NaCl",
      product: "CaSO4",
      materials: [
        { name: "road salt flakes", form: "CaCl2·2H2O", assay: "77 %" },
        { name: "Glauber salt", form: "Na2SO4·10H2O", excess: "5 %" },
      ],
      scale: { product: "100 g" },
    },
  },
  {
    id: "oxalic acid from calcium oxalate",
    request: {
      equation: "CaC2O4 + H2SO4 -> CaSO4 + H2C2O4",
      product: "H2C2O4",
      materials: [
        { name: "calcium oxalate", form: "CaC2O4·H2O" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { material: "calcium oxalate", portion: "50 g" },
    },
    // gypsum is the solid below 42 °C in any liquor: 0.3422 mol × 172.17 = 58.9 g
    says: [
      /from the .*CaSO₄·2H₂O/,
      /CaSO₄·2H₂O 58\.9 g/,
      /from the CaC₂O₄·H₂O and CaSO₄·2H₂O/,
      // 1.1 g of H2C2O4 stays in the washed cake, as dihydrate (126.07/90.03) 1.5 g of the 18.7 g that all of the liquor would give
      /1\.2 g of H₂C₂O₄ is left in it then/,
      /16\.9 g of H₂C₂O₄·2H₂O crystallises/,
      // three portions of ice water take 0.5 g of them, and leave 0.2 g of the acid in which they grew
      /about 16\.5 g expected, 43\.1 g at 100 % yield, and with it 0\.3 g of H₂SO₄/,
      /it goes before the crystals/,
    ],
    // by the equilibrium half of the oxalate stays: pK(CaC2O4) 8.6 against pK(gypsum) 4.6 and the steps of oxalic acid, in 25 % acid
    never: [/39\.8 g of H₂C₂O₄/],
  },
  {
    id: "tartaric acid from calcium tartrate",
    request: {
      equation: "CaC4H4O6 + H2SO4 -> CaSO4 + C4H6O6",
      product: "C4H6O6",
      materials: [
        { name: "wine stone lime", form: "CaC4H4O6·4H2O" },
        { name: "dilute sulfuric acid", form: "H2SO4", strength: "20 %" },
      ],
      scale: { material: "wine stone lime", portion: "52 g" },
    },
    // 52.0 g / 260.21 = 0.1998 mol of gypsum, 34.4 g; it binds 7.2 of the 83 g of water; 50 mL washes the cake, which
    // keeps some 24 g of water: 75 + 50 - 24 = 101 to boil off
    says: [/from the CaSO₄·2H₂O/, /CaSO₄·2H₂O 34\.4 g/, /10[12] mL of water boiled off/],
  },
  {
    id: "copper sulfate from oxide",
    request: {
      equation: "CuO + H2SO4 -> CuSO4 + H2O",
      product: "CuSO4",
      materials: [
        { name: "copper oxide", form: "CuO", excess: "5 %" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { product: "50 g" },
    },
  },
  {
    id: "green vitriol from steel wool",
    request: {
      equation: "Fe + H2SO4 -> FeSO4 + H2",
      product: "FeSO4",
      materials: [
        { name: "steel wool", form: "Fe", excess: "10 %" },
        { name: "sulfuric acid", form: "H2SO4", strength: "10 %" },
      ],
      scale: { material: "sulfuric acid", portion: "500 mL" },
    },
  },
  {
    id: "Epsom salt from magnesium carbonate, warm room",
    request: {
      equation: "MgCO3 + H2SO4 -> MgSO4 + CO2 + H2O",
      product: "MgSO4",
      materials: [
        { name: "magnesite", form: "MgCO3", assay: "92 %", excess: "5 %" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { product: "100 g" },
      temperature: "30 °C",
    },
    // no oven is cooler than the room
    says: [/Dry at no more than 30 °C/, /pH 6 to 7 while carbon dioxide is in it/],
    never: [/28 °C/, /about pH 10 is expected/],
    // what has just fizzed is saturated with carbon dioxide
  },
  {
    id: "Glauber salt from soda and battery acid, cold room",
    request: {
      equation: "Na2CO3 + H2SO4 -> Na2SO4 + CO2 + H2O",
      product: "Na2SO4",
      materials: [
        { name: "washing soda", form: "Na2CO3·10H2O" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { material: "washing soda", portion: "143 g" },
      temperature: "5 °C",
    },
    // soda dissolves: no filter takes an excess of it off
    says: [/to neutral by the paper/],
    never: [/filtered off at the end/],
  },
  {
    id: "sodium sulfate from soda, warm room",
    request: {
      equation: "Na2CO3 + H2SO4 -> Na2SO4 + CO2 + H2O",
      product: "Na2SO4",
      materials: [
        { name: "soda ash", form: "Na2CO3" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { material: "soda ash", portion: "53 g" },
      temperature: "35 °C",
    },
    // soda dissolves: no filter takes an excess of it off
    says: [/to neutral by the paper/],
    never: [/filtered off at the end/],
  },
  {
    id: "washing soda from baking soda in water",
    request: {
      equation: "NaHCO3 -> Na2CO3 + CO2 + H2O",
      product: "Na2CO3",
      materials: [{ name: "baking soda", form: "NaHCO3" }],
      scale: { material: "baking soda", portion: "500 g" },
    },
  },
  {
    id: "sodium acetate from vinegar",
    request: {
      equation: "NaHCO3 + CH3COOH -> CH3COONa + CO2 + H2O",
      product: "CH3COONa",
      materials: [
        { name: "baking soda", form: "NaHCO3" },
        { name: "vinegar", form: "CH3COOH", strength: "5 %", excess: "3 %" },
      ],
      scale: { material: "baking soda", portion: "84 g" },
    },
    // what is free is acid, not vinegar: 3 % of 1 mol
    says: [/1\.80 g of CH₃COOH is left free/],
  },
  {
    id: "potassium citrate from potash and lemon acid",
    request: {
      equation: "K2CO3 + C6H8O7 -> K3C6H5O7 + CO2 + H2O",
      product: "K3C6H5O7",
      materials: [
        { name: "potash", form: "K2CO3" },
        { name: "citric acid", form: "C6H8O7·H2O" },
      ],
      scale: { material: "citric acid", portion: "70 g" },
    },
    // soda dissolves: no filter takes an excess of it off
    says: [/to neutral by the paper/],
    never: [/filtered off at the end/],
  },
  {
    id: "calcium lactate",
    request: {
      equation: "CaCO3 + CH3CH(OH)COOH -> Ca(CH3CH(OH)COO)2 + CO2 + H2O",
      product: "Ca(CH3CH(OH)COO)2",
      materials: [
        { name: "chalk", form: "CaCO3", excess: "5 %" },
        { name: "lactic acid", form: "CH3CH(OH)COOH", strength: "80 %" },
      ],
      scale: { material: "lactic acid", portion: "100 mL" },
    },
    // over chalk in air (0.00042 atm) with 0.6 mol/L of calcium: K = Ksp K1 KH / K2 = 10^(-8.48 - 6.35 - 1.47 + 10.33), activity
    // coefficients 0.3 and 0.7: bicarbonate 7e-5, pH 6.35 + 1.47 + 3.38 - 4.15 = 7.1
    says: [/about pH 7 is expected/],
  },
  {
    id: "cuprammonium sulfate",
    request: {
      equation: "CuSO4 + NH3 + H2O -> [Cu(NH3)4]SO4·H2O",
      product: "[Cu(NH3)4]SO4·H2O",
      materials: [
        { name: "bluestone", form: "CuSO4·5H2O" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
        { name: "spirit", form: "C2H5OH", strength: "96 %", aside: true, portion: "100 mL" },
      ],
      scale: { material: "bluestone", portion: "25 g" },
    },
    // the spirit that was asked for brings it out, and no other is offered beside it
    says: [
      /Add the 100 mL of spirit slowly, stirring, once it is cold: it brings the product out/,
      /a little more ammonia/,
    ],
    // 4 % stands as hydroxide by the equilibrium until more ammonia takes it
  },
  {
    id: "hexaamminenickel chloride",
    request: {
      equation: "NiCl2 + NH3 -> [Ni(NH3)6]Cl2",
      product: "[Ni(NH3)6]Cl2",
      materials: [
        { name: "nickel chloride", form: "NiCl2·6H2O" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
      ],
      scale: { material: "nickel chloride", portion: "12 g" },
    },
  },
  {
    id: "Chile saltpetre from soda and nitric acid",
    request: {
      equation: "Na2CO3 + HNO3 -> NaNO3 + CO2 + H2O",
      product: "NaNO3",
      materials: [
        { name: "soda ash", form: "Na2CO3", excess: "2 %" },
        { name: "nitric acid", form: "HNO3", strength: "53 %" },
      ],
      scale: { product: "85 g" },
    },
    says: [/soda ash is left free: add acid until the paper shows neutral/],
    never: [/filter 1\.10 g of soda ash off/],
  },
  {
    id: "table salt from hydrochloric acid and lye",
    request: {
      equation: "NaOH + HCl -> NaCl + H2O",
      product: "NaCl",
      materials: [
        { name: "drain cleaner", form: "NaOH", assay: "98 %" },
        { name: "pool acid", form: "HCl", strength: "31 %" },
      ],
      scale: { material: "drain cleaner", portion: "40 g" },
    },
    // an excess of lye would dry into the salt, an excess of hydrochloric acid leaves
    says: [/acid that is left leaves with the steam/],
    never: [/excess of drain cleaner is usual/],
  },
  {
    id: "saltpetre from fertiliser and potassium chloride",
    request: {
      equation: "NaNO3 + KCl -> KNO3 + NaCl",
      product: "KNO3",
      materials: [
        { name: "Chile saltpetre", form: "NaNO3" },
        { name: "diet salt", form: "KCl" },
      ],
      scale: { material: "Chile saltpetre", portion: "85 g" },
      temperature: "5 °C",
    },
  },
  {
    id: "alum recrystallised",
    request: {
      equation: "KAl(SO4)2·12H2O -> KAl(SO4)2·12H2O",
      product: "KAl(SO4)2·12H2O",
      materials: [{ name: "pickling alum", form: "KAl(SO4)2·12H2O", assay: "97 %" }],
      scale: { material: "pickling alum", portion: "100 g" },
    },
  },
  {
    id: "bluestone recrystallised, own water",
    request: {
      equation: "CuSO4·5H2O -> CuSO4·5H2O",
      product: "CuSO4·5H2O",
      materials: [
        { name: "root killer", form: "CuSO4·5H2O", assay: "95 %", dissolve: { water: "100 mL", temperature: "90 °C" } },
      ],
      scale: { material: "root killer", portion: "100 g" },
    },
  },
  {
    id: "potash alum from the two sulfates",
    request: {
      equation: "K2SO4 + Al2(SO4)3 -> KAl(SO4)2",
      product: "KAl(SO4)2",
      materials: [
        { name: "sulfate of potash", form: "K2SO4" },
        { name: "aluminium sulfate", form: "Al2(SO4)3·18H2O" },
      ],
      scale: { material: "sulfate of potash", portion: "17.4 g" },
    },
  },
  {
    id: "Mohr's salt",
    request: {
      equation: "FeSO4 + (NH4)2SO4 + H2O -> (NH4)2Fe(SO4)2·6H2O",
      product: "(NH4)2Fe(SO4)2·6H2O",
      materials: [
        { name: "green vitriol", form: "FeSO4·7H2O" },
        { name: "ammonium sulfate fertiliser", form: "(NH4)2SO4", assay: "99 %" },
        { name: "sulfuric acid", form: "H2SO4", strength: "10 %", aside: true, portion: "5 mL" },
      ],
      scale: { material: "green vitriol", portion: "27.8 g" },
    },
    // 5 mL of acid is no water for 41 g of salts: 43.7 g of water in the pot less 12.6 from the vitriol and 4.8 of the acid
    says: [/^Stir the ammonium sulfate fertiliser into 26 mL of water/],
  },
  {
    id: "carnallite-like wish: potassium magnesium sulfate",
    request: {
      equation: "K2SO4 + MgSO4 + H2O -> K2Mg(SO4)2·6H2O",
      product: "K2Mg(SO4)2·6H2O",
      materials: [
        { name: "sulfate of potash", form: "K2SO4" },
        { name: "Epsom salt", form: "MgSO4·7H2O" },
      ],
      scale: { product: "80 g" },
    },
  },
  {
    id: "copper from bluestone and nails",
    request: {
      equation: "Fe + CuSO4 -> FeSO4 + Cu",
      product: "Cu",
      materials: [
        { name: "iron powder", form: "Fe" },
        { name: "bluestone", form: "CuSO4·5H2O", excess: "10 %" },
      ],
      scale: { material: "iron powder", portion: "5.6 g" },
    },
  },
  {
    id: "silver from silver nitrate and copper",
    request: {
      equation: "Cu + AgNO3 -> Cu(NO3)2 + Ag",
      product: "Ag",
      materials: [
        { name: "copper wire", form: "Cu", excess: "50 %" },
        { name: "silver nitrate", form: "AgNO3" },
      ],
      scale: { material: "silver nitrate", portion: "5 g" },
    },
  },
  {
    id: "copper nitrate from copper and dilute nitric acid",
    request: {
      equation: "Cu + HNO3 -> Cu(NO3)2 + NO + H2O",
      product: "Cu(NO3)2",
      materials: [
        { name: "copper wire", form: "Cu" },
        { name: "nitric acid", form: "HNO3", strength: "30 %", excess: "10 %" },
      ],
      scale: { material: "copper wire", portion: "19 g" },
    },
  },
  {
    id: "copper nitrate from copper and strong nitric acid",
    request: {
      equation: "Cu + HNO3 -> Cu(NO3)2 + NO2 + H2O",
      product: "Cu(NO3)2",
      materials: [
        { name: "copper wire", form: "Cu" },
        { name: "nitric acid", form: "HNO3", strength: "65 %" },
      ],
      scale: { material: "copper wire", portion: "6.4 g" },
    },
  },
  {
    id: "zinc chloride from zinc and pool acid",
    request: {
      equation: "Zn + HCl -> ZnCl2 + H2",
      product: "ZnCl2",
      isolate: true,
      materials: [
        { name: "zinc granules", form: "Zn", excess: "5 %" },
        { name: "pool acid", form: "HCl", strength: "31 %" },
      ],
      scale: { material: "pool acid", portion: "200 mL" },
    },
    says: [/below 40 °C again, in a bath of cold water/, /basic chloride is left/],
    never: [/over at least 5\.9 min/],
  },
  {
    id: "aluminium chloride from foil",
    request: {
      equation: "Al + HCl -> AlCl3 + H2",
      product: "AlCl3",
      isolate: true,
      materials: [
        { name: "kitchen foil", form: "Al" },
        { name: "pool acid", form: "HCl", strength: "31 %" },
      ],
      scale: { material: "kitchen foil", portion: "5 g" },
    },
    // aluminium in hydrochloric acid gives 531 kJ/mol: 290 K in so little water. Its solubility hardly changes with heat: 15 % of it stays, not 90.
    // Crystals are 60 % of what is in the vessel and no more: of 24.7 g of AlCl3 and 29.5 g of water 32.5 g (common practice)
    says: [
      /below 40 °C again, in a bath of cold water/,
      /keep it acid with a little hydrochloric acid/,
      /: 32\.5 g of AlCl₃·6H₂O crystallises/,
    ],
    never: [/over at least 1\.7 min/, /4\.7 g of AlCl₃·6H₂O crystallises/],
  },
  {
    id: "magnesium acetate from ribbon and vinegar",
    request: {
      equation: "Mg + CH3COOH -> Mg(CH3COO)2 + H2",
      product: "Mg(CH3COO)2",
      materials: [
        { name: "magnesium ribbon", form: "Mg" },
        { name: "vinegar", form: "CH3COOH", strength: "5 %" },
      ],
      scale: { material: "magnesium ribbon", portion: "2.4 g" },
    },
  },
  {
    id: "zinc sulfide by fire",
    request: {
      equation: "Zn + S -> ZnS",
      product: "ZnS",
      materials: [
        { name: "zinc powder", form: "Zn" },
        { name: "flowers of sulfur", form: "S" },
      ],
      scale: { material: "zinc powder", portion: "6.5 g" },
    },
    // sulfur powder in water does nothing to zinc; dry the mixture flashes
    says: [/do not react with each other/],
    never: [/into enough water/],
  },
  {
    id: "iron oxide red from green vitriol",
    request: {
      equation: "FeSO4·7H2O -> Fe2O3 + SO2 + SO3 + H2O",
      product: "Fe2O3",
      materials: [{ name: "green vitriol", form: "FeSO4·7H2O" }],
      scale: { material: "green vitriol", portion: "100 g" },
    },
    says: [/under a hood that works, or outdoors with nobody downwind.*no kiln catches it/],
  },
  {
    id: "copper oxide from bluestone in the kiln",
    request: {
      equation: "CuSO4·5H2O -> CuO + SO3 + H2O",
      product: "CuO",
      materials: [{ name: "bluestone", form: "CuSO4·5H2O" }],
      scale: { material: "bluestone", portion: "50 g" },
    },
    says: [/under a hood that works, or outdoors with nobody downwind.*no kiln catches it/],
  },
  {
    id: "copper oxide from copper nitrate in the kiln",
    request: {
      equation: "Cu(NO3)2 -> CuO + NO2 + O2",
      product: "CuO",
      materials: [{ name: "copper nitrate", form: "Cu(NO3)2·3H2O" }],
      scale: { material: "copper nitrate", portion: "24 g" },
    },
    says: [/under a hood that works, or outdoors with nobody downwind.*no kiln catches it/],
  },
  {
    id: "chrome green from ammonium dichromate",
    request: {
      equation: "(NH4)2Cr2O7 -> Cr2O3 + N2 + H2O",
      product: "Cr2O3",
      materials: [{ name: "ammonium dichromate", form: "(NH4)2Cr2O7" }],
      scale: { material: "ammonium dichromate", portion: "10 g" },
    },
    // the volcano of the schools
    says: [/goes on by itself/, /no more than a tenth/],
    never: [/no more than half full/],
  },
  {
    id: "alumina from ammonium alum",
    request: {
      equation: "NH4Al(SO4)2·12H2O -> Al2O3 + NH3 + SO3 + H2O",
      product: "Al2O3",
      materials: [{ name: "ammonium alum", form: "NH4Al(SO4)2·12H2O" }],
      scale: { material: "ammonium alum", portion: "90 g" },
    },
  },
  {
    id: "plaster of Paris from gypsum",
    request: {
      equation: "CaSO4·2H2O -> CaSO4·0.5H2O + H2O",
      product: "CaSO4·0.5H2O",
      materials: [{ name: "gypsum", form: "CaSO4·2H2O" }],
      scale: { product: "500 g" },
    },
    says: [/to 150 °C, and not to 163 °C, where it changes again, and keep it there/],
  },
  {
    id: "barium titanate by fire",
    request: {
      equation: "BaCO3 + TiO2 -> BaTiO3 + CO2",
      product: "BaTiO3",
      materials: [
        { name: "barium carbonate", form: "BaCO3" },
        { name: "titania", form: "TiO2" },
      ],
      scale: { product: "50 g" },
    },
  },
  {
    id: "zinc phosphate from superphosphate idea",
    request: {
      equation: "ZnSO4 + Na2HPO4 -> Zn3(PO4)2 + Na2SO4 + NaH2PO4",
      product: "Zn3(PO4)2",
      materials: [
        { name: "moss killer", form: "ZnSO4·H2O", assay: "97 %" },
        { name: "disodium phosphate", form: "Na2HPO4·2H2O" },
      ],
      scale: { material: "moss killer", portion: "50 g" },
    },
    never: [/1\d\d % of other salts/],
  },
  {
    id: "magnesium ammonium phosphate",
    request: {
      equation: "MgSO4 + (NH4)2HPO4 + NH3 -> NH4MgPO4 + (NH4)2SO4",
      product: "NH4MgPO4",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "diammonium phosphate", form: "(NH4)2HPO4" },
        { name: "household ammonia", form: "NH3", strength: "9.5 %", excess: "100 %" },
      ],
      scale: { material: "Epsom salt", portion: "24.6 g" },
    },
  },
  {
    id: "calcium oxalate textbook",
    request: {
      equation: "CaCl2 + H2C2O4 -> CaC2O4 + HCl",
      product: "CaC2O4",
      materials: [
        { name: "damp absorber", form: "CaCl2", assay: "94 %" },
        { name: "wood bleach", form: "H2C2O4·2H2O" },
      ],
      scale: { material: "wood bleach", portion: "25 g" },
    },
  },
  {
    id: "iron oxalate textbook",
    request: {
      equation: "FeSO4 + H2C2O4 -> FeC2O4 + H2SO4",
      product: "FeC2O4",
      materials: [
        { name: "green vitriol", form: "FeSO4·7H2O" },
        { name: "wood bleach", form: "H2C2O4·2H2O", excess: "10 %" },
      ],
      scale: { material: "green vitriol", portion: "27.8 g" },
    },
  },
  {
    id: "iron hydroxide from etchant with also",
    request: {
      equation: "FeCl3 + NaOH -> Fe(OH)3 + NaCl",
      product: "Fe(OH)3",
      materials: [
        {
          name: "spent etchant",
          form: "FeCl3",
          strength: "30 %",
          density: "1.3 g/mL",
          also: [{ form: "HCl", share: "2 %" }],
        },
        { name: "lye", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "spent etchant", portion: "100 mL" },
    },
    // five washes of 0.75 L on 0.5 L of sludge go into the 2 L of the batch (four of 1.5 L, which did not, before)
    says: [/Wash 5 times with 800 mL/],
    never: [/in a vessel of/],
  },
  {
    id: "barium carbonate from chloride, cold",
    request: {
      equation: "BaCl2 + (NH4)2CO3 -> BaCO3 + NH4Cl",
      product: "BaCO3",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "ammonium carbonate", form: "(NH4)2CO3", excess: "10 %" },
      ],
      scale: { material: "barium chloride", portion: "24.4 g" },
      temperature: "5 °C",
    },
  },
  {
    id: "nickel carbonate textbook",
    request: {
      equation: "NiSO4 + Na2CO3 -> NiCO3 + Na2SO4",
      product: "NiCO3",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·6H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "10 %" },
      ],
      scale: { material: "nickel sulfate", portion: "26.3 g" },
    },
  },
  {
    id: "manganese carbonate",
    request: {
      equation: "MnSO4 + NaHCO3 -> MnCO3 + Na2SO4 + CO2 + H2O",
      product: "MnCO3",
      materials: [
        { name: "manganese sulfate", form: "MnSO4·H2O" },
        { name: "baking soda", form: "NaHCO3", excess: "10 %" },
      ],
      scale: { material: "manganese sulfate", portion: "50 g" },
    },
  },
  {
    id: "cream of tartar from Seignette salt",
    request: {
      equation: "KNaC4H4O6 + CH3COOH -> KHC4H4O6 + CH3COONa",
      product: "KHC4H4O6",
      materials: [
        { name: "Rochelle salt", form: "KNaC4H4O6·4H2O" },
        { name: "vinegar essence", form: "CH3COOH", strength: "25 %", excess: "50 %" },
      ],
      scale: { material: "Rochelle salt", portion: "28 g" },
    },
  },
  {
    id: "Rochelle salt from cream of tartar",
    request: {
      equation: "KHC4H4O6 + Na2CO3 -> KNaC4H4O6 + CO2 + H2O",
      product: "KNaC4H4O6",
      materials: [
        { name: "cream of tartar", form: "KHC4H4O6" },
        { name: "washing soda", form: "Na2CO3·10H2O" },
      ],
      scale: { material: "cream of tartar", portion: "188 g" },
    },
    // an acid salt is neutralised: the soda decides, not a ratio of salts
    never: [/ratio of the double salt/],
  },
  {
    id: "sodium bisulfate from salt and acid",
    request: {
      equation: "Na2SO4 + H2SO4 -> NaHSO4",
      product: "NaHSO4",
      materials: [
        { name: "Glauber salt", form: "Na2SO4·10H2O" },
        { name: "sulfuric acid", form: "H2SO4", strength: "96 %" },
      ],
      scale: { material: "Glauber salt", portion: "32.2 g" },
    },
  },
  {
    id: "potassium bicarbonate from potash and fizz",
    request: {
      equation: "K2CO3 + CO2 + H2O -> KHCO3",
      product: "KHCO3",
      materials: [
        { name: "potash", form: "K2CO3" },
        { name: "cylinder gas", form: "CO2", inExcess: true, excess: "50 %" },
      ],
      scale: { material: "potash", portion: "69 g" },
    },
  },
  {
    id: "copper iodide",
    request: {
      equation: "CuSO4 + KI -> CuI + I2 + K2SO4",
      product: "CuI",
      materials: [
        { name: "bluestone", form: "CuSO4·5H2O" },
        { name: "potassium iodide", form: "KI", excess: "5 %" },
      ],
      scale: { material: "bluestone", portion: "25 g" },
    },
    never: [/1\.5 K if all came at once/, /ΔK/, /and with it 12\.6 g of I₂/],
    // 0.05 mol of iodine stands with the iodide and goes with sulfite: 0.05 × 126.04 × 1.1 g
    says: [/6\.9 g of sodium sulfite/, /^Weigh the dry CuI: 19\.1 g at 100 % yield\. /],
  },
  {
    id: "iodine from iodide and peroxide",
    request: {
      equation: "KI + H2O2 + H2SO4 -> I2 + K2SO4 + H2O",
      product: "I2",
      materials: [
        { name: "potassium iodide", form: "KI" },
        { name: "pharmacy peroxide", form: "H2O2", strength: "3 %", excess: "20 %" },
        { name: "battery acid", form: "H2SO4", strength: "37 %", excess: "20 %" },
      ],
      scale: { material: "potassium iodide", portion: "16.6 g" },
    },
    // iodide that is left shows with the oxidiser; iodide dissolves iodine
    says: [/with a drop of pharmacy peroxide/, /sublimes/],
    never: [/a drop of potassium iodide solution/],
  },
  {
    id: "manganese dioxide from permanganate",
    request: {
      equation: "KMnO4 + MnSO4 + H2O -> MnO2 + K2SO4 + H2SO4",
      product: "MnO2",
      materials: [
        { name: "permanganate", form: "KMnO4" },
        { name: "manganese sulfate", form: "MnSO4·H2O" },
      ],
      scale: { material: "permanganate", portion: "15.8 g" },
    },
    // 1.3 L of wash water on 0.4 L of sludge is no 0.8 L
    says: [/in a vessel of 2 L or larger/],
  },
  {
    id: "sodium thiosulfate from sulfite and sulfur",
    request: {
      equation: "Na2SO3 + S -> Na2S2O3",
      product: "Na2S2O3",
      materials: [
        { name: "sulfite", form: "Na2SO3" },
        { name: "flowers of sulfur", form: "S", excess: "20 %" },
      ],
      scale: { material: "sulfite", portion: "63 g" },
    },
    // it is kept near the boil for hours: nothing is to be cooled
    never: [/and cool$/],
  },
  {
    id: "borax from boric acid",
    request: {
      equation: "H3BO3 + Na2CO3 -> Na2B4O7 + CO2 + H2O",
      product: "Na2B4O7",
      materials: [
        { name: "boric acid", form: "H3BO3" },
        { name: "washing soda", form: "Na2CO3·10H2O" },
      ],
      scale: { material: "boric acid", portion: "62 g" },
    },
  },
  {
    id: "boric acid from borax",
    request: {
      equation: "Na2B4O7 + HCl + H2O -> H3BO3 + NaCl",
      product: "H3BO3",
      materials: [
        { name: "borax", form: "Na2B4O7·10H2O" },
        { name: "pool acid", form: "HCl", strength: "31 %", excess: "5 %" },
      ],
      scale: { material: "borax", portion: "100 g" },
      temperature: "5 °C",
    },
  },
  {
    id: "caustic soda from lime",
    request: {
      equation: "Na2CO3 + Ca(OH)2 -> NaOH + CaCO3",
      product: "CaCO3",
      materials: [
        { name: "washing soda", form: "Na2CO3·10H2O" },
        { name: "builder's lime", form: "Ca(OH)2", assay: "90 %", excess: "5 %" },
      ],
      scale: { material: "washing soda", portion: "286 g" },
    },
    // lime over the need is a solid and stays with the chalk
    says: [/stays undissolved, with the product/],
  },
  {
    id: "magnesium hydroxide from Epsom salt and household ammonia",
    request: {
      equation: "MgSO4 + NH3 + H2O -> Mg(OH)2 + (NH4)2SO4",
      product: "Mg(OH)2",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "household ammonia", form: "NH3", strength: "9.5 %", excess: "20 %" },
      ],
      scale: { material: "Epsom salt", portion: "123 g" },
    },
  },
  {
    id: "lead sulfate from acetate",
    request: {
      equation: "Pb(CH3COO)2 + Na2SO4 -> PbSO4 + CH3COONa",
      product: "PbSO4",
      materials: [
        { name: "lead acetate", form: "Pb(CH3COO)2·3H2O" },
        { name: "Glauber salt", form: "Na2SO4·10H2O", excess: "5 %" },
      ],
      scale: { material: "lead acetate", portion: "38 g" },
    },
  },
  {
    id: "Prussian blue",
    request: {
      equation: "FeCl3 + K4[Fe(CN)6] -> Fe4[Fe(CN)6]3 + KCl",
      product: "Fe4[Fe(CN)6]3",
      materials: [
        { name: "etchant", form: "FeCl3·6H2O" },
        { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O" },
      ],
      scale: { material: "yellow prussiate", portion: "21 g" },
    },
    says: [/in a vessel of 600 mL or larger/],
  },
  {
    id: "cobalt carbonate dissolved in vinegar",
    request: {
      equation: "CoCO3 + CH3COOH -> Co(CH3COO)2 + CO2 + H2O",
      product: "Co(CH3COO)2",
      materials: [
        { name: "cobalt carbonate", form: "CoCO3", assay: "95 %", excess: "5 %" },
        { name: "vinegar", form: "CH3COOH", strength: "5 %" },
      ],
      scale: { product: "50 g" },
    },
    // from water cobalt acetate is the tetrahydrate
    says: [/^Weigh the dry Co\(CH₃COO\)₂·4H₂O/],
    never: [/^Weigh the dry Co\(CH₃COO\)₂:/],
  },
];

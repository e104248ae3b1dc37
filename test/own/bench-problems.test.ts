// Problems as textbooks and laboratory manuals put them, composed here by somebody who had not seen the other tests, and
// calculated by hand beside each: the formula stands in the row, on abridged atomic weights. Tolerance 2 in 10 000, which is
// what five-figure weights are good to; rows that need a density take a handbook figure of three to five digits, and their
// tolerance is the half unit of its last digit, as the row says.
import { describe } from "vitest";
import {
  amountOf,
  amountOfEntities,
  atomEconomy,
  backTitrate,
  convertStrength,
  dilute,
  entitiesOf,
  feedAmount,
  gasAmount,
  gasDensity,
  gasPressure,
  gasVolume,
  gasVolumeAt,
  massFractionFromDensity,
  massOf,
  mixSolutions,
  mixToStrength,
  molarMassOfGas,
  percentYield,
  reactionAmounts,
  replicateStatistics,
  requiredAmount,
  stockSolution,
  theoreticalYield,
  titrate,
} from "../../src/amount";
import { quantity } from "../../src/quantity";
import { ABRIDGED, check, M, R } from "./hand";

/** Vapour pressure of water in kPa at 18, 20 and 22 °C: CRC Handbook, 73rd ed. (memory). */
const VAPOUR = { 18: 2.0647, 20: 2.3388, 22: 2.6447 } as const;
const ATM = 101.325;
const TORR = ATM / 760;
const VITRIOL = M("Cu S O4", 5);

describe("mass, amount, entities", () => {
  check([
    [
      "molecules in 18.02 g of water",
      (18.02 / M("H2 O")) * 6.02214e23,
      "",
      () => entitiesOf(amountOf("18.02 g", "H2O")),
    ],
    ["moles in 1e20 atoms", 1e20 / 6.02214e23, "mol", () => amountOfEntities("1e20")],
    [
      "50 g of moist lye, 10 % water, 95 % of the dry rest",
      (50 * 0.9 * 0.95) / M("Na O H"),
      "mol",
      () => amountOf("50 g", "NaOH", { assay: "95 %", moisture: "10 %" }),
    ],
    ["potash with one and a half waters", 165.2 / M("K2 C O3", 1.5), "mol", () => amountOf("165.2 g", "K2CO3·1.5H2O")],
  ]);
});

describe("what runs out, and what comes of it", () => {
  check([
    [
      "silver chloride from 50.0 mL of 0.200 mol/L and 30.0 mL of 0.250 mol/L: salt runs out, 7.5 mmol",
      0.0075 * M("Ag Cl"),
      "g",
      () =>
        theoreticalYield("AgNO3 + NaCl -> AgCl + NaNO3", "AgCl", {
          AgNO3: { volume: "50.0 mL", strength: "0.200 mol/L" },
          NaCl: { volume: "30.0 mL", strength: "0.250 mol/L" },
        }),
    ],
    [
      "lead iodide from 100 mL of 5 % w/v lead nitrate and 4.00 g of potassium iodide: the iodide runs out",
      (4 / M("K I") / 2) * M("Pb I2"),
      "g",
      () =>
        theoreticalYield("Pb(NO3)2 + KI -> PbI2 + KNO3", "PbI2", {
          "Pb(NO3)2": { volume: "100 mL", strength: "5 % w/v" },
          KI: "4.00 g",
        }),
    ],
    [
      "sal ammoniac from 2.00 L of ammonia and 3.00 L of hydrogen chloride",
      ((2 * ATM) / R / 298.15) * M("N H4 Cl"),
      "g",
      () =>
        theoreticalYield("NH3 + HCl -> NH4Cl", "NH4Cl", {
          NH3: { volume: "2.00 L", gas: {} },
          HCl: { volume: "3.00 L", gas: {} },
        }),
    ],
    [
      "hydrogen left when 10 g meet 50 g of oxygen",
      10 / M("H2") - (2 * 50) / M("O2"),
      "mol",
      () => reactionAmounts("H2 + O2 -> H2O", { H2: "10 g", O2: "50 g" }).of("H2").left!,
    ],
    [
      "excess of iron oxide over 2 g of aluminium",
      100 * (10 / M("Fe2 O3") / (1 / M("Al")) - 1),
      "%",
      () => reactionAmounts("Fe2O3 + Al -> Al2O3 + Fe", { Fe2O3: "10 g", Al: "2 g" }).of("Fe2O3").excess!,
    ],
    [
      "aspirin from 2.00 g of salicylic acid, the equation written without a number",
      (2 / M("C7 H6 O3")) * M("C9 H8 O4"),
      "g",
      () => theoreticalYield("C7H6O3 + C4H6O3 -> C9H8O4 + C2H4O2", "C9H8O4", { C7H6O3: "2.00 g" }),
    ],
    [
      "alum from a gram of foil",
      M("K Al S2 O8", 12) / M("Al"),
      "g",
      () => theoreticalYield("Al + KOH + H2SO4 + H2O -> KAl(SO4)2·12H2O + H2", "KAl(SO4)2·12H2O", { Al: "1.00 g" }),
    ],
    [
      "barium sulfate from 5.00 g each of the two crystals: Glauber's salt runs out",
      (5 / M("Na2 S O4", 10)) * M("Ba S O4"),
      "g",
      () =>
        theoreticalYield("BaCl2 + Na2SO4 -> BaSO4 + NaCl", "BaSO4", { BaCl2·2H2O: "5.00 g", Na2SO4·10H2O: "5.00 g" }),
    ],
    [
      "white vitriol crystals from 8.14 g of zinc oxide",
      (8.14 / M("Zn O")) * M("Zn S O4", 7),
      "g",
      () => theoreticalYield("ZnO + H2SO4 -> ZnSO4 + H2O", "ZnSO4·7H2O", { ZnO: "8.14 g" }),
    ],
    [
      "hypo crystals from 12.6 g of sodium sulfite",
      (12.6 / M("Na2 S O3")) * M("Na2 S2 O3", 5),
      "g",
      () => theoreticalYield("Na2SO3 + S -> Na2S2O3", "Na2S2O3·5H2O", { Na2SO3: "12.6 g" }),
    ],
    [
      "light magnesium carbonate from 24.6 g of Epsom salt",
      (24.6 / M("Mg S O4", 7) / 5) * M("Mg5 C4 O14 H2", 4),
      "g",
      () =>
        theoreticalYield("MgSO4 + Na2CO3 + H2O -> Mg5(CO3)4(OH)2·4H2O + Na2SO4 + CO2", "Mg5(CO3)4(OH)2·4H2O", {
          MgSO4·7H2O: "24.6 g",
        }),
    ],
    [
      "iron(II) sulfate for 1.58 g of permanganate, one to five",
      (1.58 / M("K Mn O4")) * 5 * M("Fe S O4"),
      "g",
      () =>
        reactionAmounts("KMnO4 + FeSO4 + H2SO4 -> K2SO4 + MnSO4 + Fe2(SO4)3 + H2O", { KMnO4: "1.58 g" }).of("FeSO4")
          .mass,
    ],
    [
      "potassium chlorate behind 250 mL of oxygen over water at 22 °C and 755 torr",
      ((((755 * TORR - VAPOUR[22]) * 0.25) / R / 295.15) * 2 * M("K Cl O3")) / 3,
      "g",
      () =>
        reactionAmounts("KClO3 -> KCl + O2", {
          O2: { volume: "250 mL", gas: { temperature: "22 °C", pressure: "755 torr", collectedOver: "water" } },
        }).of("KClO3").mass,
    ],
    [
      "ammonia yield: 500 kg from 1000 kg of nitrogen and 120 kg of hydrogen",
      (100 * 500) / (((120 / M("H2")) * 2 * M("N H3")) / 3),
      "%",
      () => percentYield("500 kg", theoreticalYield("N2 + H2 -> NH3", "NH3", { N2: "1000 kg", H2: "120 kg" })),
    ],
    [
      "atom economy of soda from salt and limestone",
      (100 * M("Na2 C O3")) / (2 * M("Na Cl") + M("Ca C O3")),
      "%",
      () => atomEconomy("NaCl + CaCO3 -> Na2CO3 + CaCl2", "Na2CO3"),
    ],
    [
      "atom economy of fermentation",
      (100 * 2 * M("C2 H6 O")) / M("C6 H12 O6"),
      "%",
      () => atomEconomy("C6H12O6 -> C2H5OH + CO2", "C2H5OH"),
    ],
    [
      "vinegar of 5 % by weight for 10 g of basic zinc carbonate, ten to one",
      ((10 / M("Zn5 C2 O12 H6")) * 10 * M("C2 H4 O2")) / 0.05,
      "g",
      () =>
        requiredAmount("Zn5(CO3)2(OH)6 + CH3COOH -> Zn(CH3COO)2 + CO2 + H2O", { "Zn5(CO3)2(OH)6": "10 g" }, "CH3COOH", {
          strength: "5 % w/w",
        }).mass!,
    ],
    [
      "2 mol/L acid with a tenth more for 4.0 g of black copper oxide",
      ((4 / M("Cu O")) * 1.1 * 1000) / 2,
      "mL",
      () =>
        requiredAmount("CuO + H2SO4 -> CuSO4 + H2O", { CuO: "4.0 g" }, "H2SO4", { strength: "2 mol/L", excess: "10 %" })
          .volume!,
    ],
    [
      "10-volume peroxide that oxidises 27.8 g of green vitriol, one to two; 22.414 L/mol",
      (27.8 / M("Fe S O4", 7) / 2 / (20 / 22.414)) * 1000,
      "mL",
      () =>
        requiredAmount("FeSO4 + H2O2 + H2SO4 -> Fe2(SO4)3 + H2O", { FeSO4·7H2O: "27.8 g" }, "H2O2", {
          strength: "10 volumes",
        }).volume!,
    ],
  ]);
});

describe("strengths", () => {
  const halfDigit = (printed: number, digits: number): number => 0.5 / 10 ** digits / printed + ABRIDGED;
  check([
    [
      "36 % hydrochloric acid of 1.18 g/mL",
      (360 * 1.18) / M("H Cl"),
      "mol/L",
      () => convertStrength("36 % w/w", { of: "HCl", to: "mol/L", density: "1.18 g/mL" }),
    ],
    [
      "98 % sulfuric acid of 1.84 g/mL",
      (980 * 1.84) / M("H2 S O4"),
      "mol/L",
      () => convertStrength("98 % w/w", { of: "H2SO4", to: "mol/L", density: "1.84 g/mL" }),
    ],
    [
      "85 % phosphoric acid of 1.685 g/mL, all three protons",
      (3 * 850 * 1.685) / M("H3 P O4"),
      "mol/L",
      () => convertStrength("85 % w/w", { of: "H3PO4", to: "N", equivalents: 3, density: "1.685 g/mL" }),
    ],
    [
      "20-volume peroxide in g/L: 22.414 L/mol, two of peroxide for one of oxygen",
      ((2 * 20) / 22.414) * M("H2 O2"),
      "g/L",
      () => convertStrength("20 volumes", { of: "H2O2", to: "g/L" }),
    ],
    [
      "10 % brine in mol/kg",
      100 / M("Na Cl") / 0.9,
      "mol/kg",
      () => convertStrength("10 % w/w", { of: "NaCl", to: "mol/kg" }),
    ],
    [
      "mole fraction of 95 % spirit by weight",
      95 / M("C2 H6 O") / (95 / M("C2 H6 O") + 5 / M("H2 O")),
      "",
      () => convertStrength("95 % w/w", { of: "C2H5OH", to: "mol/mol" }),
    ],
    [
      "spirit of 40 % vol; ethanol 0.7892 g/mL at 20 °C (OIML R 22)",
      400 * 0.7892,
      "g/L",
      () => convertStrength("40 % vol", { of: "C2H5OH", to: "g/L" }),
    ],
    [
      "0.1 N permanganate in acid",
      0.02,
      "mol/L",
      () => convertStrength("0.1 eq/L", { of: "KMnO4", to: "mol/L", equivalents: 5, reaction: "to Mn^2+ in acid" }),
    ],
    [
      "water of 300 mg/L lime",
      300 / M("Ca C O3"),
      "mmol/L",
      () => convertStrength("300 mg/L", { of: "CaCO3", to: "mmol/L" }),
    ],
    [
      "40 ppm by weight of lime in water of 1.00 g/mL",
      0.04 / M("Ca C O3"),
      "mol/L",
      () => convertStrength("40 ppm w/w", { of: "CaCO3", to: "mol/L", density: "1.00 g/mL" }),
    ],
    [
      "glucose of 900 mg/L",
      (0.9 / M("C6 H12 O6")) * 1000,
      "mmol/L",
      () => convertStrength("900 mg/L", { of: "C6H12O6", to: "mmol/L" }),
    ],
    [
      "50 % lye, 1.525 g/mL in every table (memory)",
      (500 * 1.525) / M("Na O H"),
      "mol/L",
      () => convertStrength("50 % w/w", { of: "NaOH", to: "mol/L" }),
      halfDigit(1.525, 3),
    ],
    [
      "69 % nitric acid, 1.409 g/mL (memory)",
      (690 * 1.409) / M("H N O3"),
      "mol/L",
      () => convertStrength("69 % w/w", { of: "HNO3", to: "mol/L" }),
      // the printed half digit, and the 0.0003 that sources differ by
      halfDigit(1.409, 3) + 0.0003,
    ],
    [
      "glacial acetic acid, 1.049 g/mL (memory)",
      (1000 * 1.049) / M("C2 H4 O2"),
      "mol/L",
      () => convertStrength("100 % w/w", { of: "CH3COOH", to: "mol/L" }),
      // the printed half digit, and the 0.0021 that sources differ by
      halfDigit(1.049, 3) + 0.002,
    ],
    [
      "accumulator acid of 1.28 g/mL at 20 °C is 37.4 % (memory of service manuals)",
      37.4,
      "%",
      () => massFractionFromDensity("H2SO4", "1.28 g/mL", { temperature: "20 °C" }),
      // half a unit of 37.4 and twice the stated uncertainty of 0.04
      (0.05 + 0.08) / 37.4,
    ],
  ]);
});

describe("stock solutions, dilutions, mixtures", () => {
  check([
    [
      "potassium dichromate, sixtieth molar, in a 1 L flask",
      M("K2 Cr2 O7") / 60,
      "g",
      () =>
        stockSolution({
          of: "K2Cr2O7",
          strength: quantity("1 mol/L").dividedBy(60n),
          volume: "1 L",
          glassware: { with: "volumetric flask", class: "A" },
        }).mass,
    ],
    [
      "two litres of 0.02 mol/L permanganate in one flask",
      0.04 * M("K Mn O4"),
      "g",
      () =>
        stockSolution({ of: "KMnO4", strength: "0.02 mol/L", volume: "2 L", glassware: { with: "volumetric flask" } })
          .mass,
    ],
    [
      "0.1 N baryta water from the octahydrate",
      M("Ba O2 H2", 8) / 20,
      "g",
      () => stockSolution({ of: "Ba(OH)2·8H2O", strength: "0.1 N", volume: "1 L", equivalents: 2 }).mass,
    ],
    [
      "lye pellets of 97 % for 500 mL of 0.1 mol/L",
      (0.05 * M("Na O H")) / 0.97,
      "g",
      () => stockSolution({ of: "NaOH", strength: "0.1 mol/L", volume: "500 mL", assay: "97 %" }).mass,
    ],
    [
      "a litre of decimolar from 12.1 mol/L",
      100 / 12.1,
      "mL",
      () => dilute({ from: "12.1 mol/L", to: "0.1 mol/L", makeUpTo: "1 L" }).answer,
    ],
    [
      "36 N to 2 N: the equivalents cancel",
      2000 / 36,
      "mL",
      () => dilute({ from: "36 N", to: "2 N", makeUpTo: "1 L" }).answer,
    ],
    [
      "a kilogram of 10 % acid from 37 %",
      10000 / 37,
      "g",
      () => dilute({ of: "HCl", from: "37 % w/w", to: "10 % w/w", makeUpTo: "1 kg" }).answer,
    ],
    [
      "and the water for it",
      1000 - 10000 / 37,
      "g",
      () => dilute({ of: "HCl", from: "37 % w/w", to: "10 % w/w", makeUpTo: "1 kg" }).water!,
    ],
    [
      "96 % to 70 % by volume, half a litre",
      (500 * 70) / 96,
      "mL",
      () => dilute({ of: "C2H5OH", from: "96 % v/v", to: "70 % v/v", makeUpTo: "500 mL" }).answer,
    ],
    [
      "a litre of 30 % acid, 1.2185 g/mL, from 96 %, 1.8355 g/mL (memory)",
      (1218.5 * 0.3) / 0.96 / 1.8355,
      "mL",
      () => dilute({ of: "H2SO4", from: "96 % w/w", to: "30 % w/w", makeUpTo: "1 L" }).answer,
      // 0.0006 g/mL between sources, in each density
      0.001,
    ],
    [
      "60 % and 10 % to half a kilogram of 25 %: fifteen parts of fifty",
      150,
      "g",
      () => mixToStrength({ strong: "60 % w/w", weak: "10 % w/w", wanted: "25 % w/w", mass: "500 g" }).strong,
    ],
    [
      "2 and 0.5 mol/L, one part and three, volumes taken to add up",
      0.875,
      "mol/L",
      () =>
        mixSolutions(
          [
            { strength: "2 mol/L", portion: "100 mL" },
            { strength: "0.5 mol/L", portion: "300 mL" },
          ],
          { additiveVolumes: true },
        ).concentration!,
    ],
    [
      "grams and moles in one mixture",
      (1 + 100 / M("K Cl")) / 2,
      "mol/L",
      () =>
        mixSolutions(
          [
            { strength: "1 mol/L", portion: "1 L" },
            { strength: "100 g/L", portion: "1 L" },
          ],
          { of: "KCl", additiveVolumes: true },
        ).concentration!,
    ],
  ]);
});

describe("titrations", () => {
  const copper = M("Cu S O4", 5);
  check([
    [
      "25.00 mL of sulfuric acid take 32.40 mL of decimolar lye",
      (0.0324 * 0.1) / 2 / 0.025,
      "mol/L",
      () =>
        titrate({
          titrant: { strength: "0.1000 mol/L", of: "NaOH" },
          titre: "32.40 mL",
          analyte: "H2SO4",
          equation: "H2SO4 + NaOH -> Na2SO4 + H2O",
          sample: "25.00 mL",
        }).concentration!,
    ],
    [
      "iron by permanganate, one to five",
      (100 * 0.0225 * 0.02 * 5 * M("Fe")) / 0.75,
      "%",
      () =>
        titrate({
          titrant: { strength: "0.02000 mol/L", of: "MnO4^-" },
          titre: "22.50 mL",
          analyte: "Fe^2+",
          equation: "MnO4^- + Fe^2+ + H^+ -> Mn^2+ + Fe^3+ + H2O",
          sample: "0.7500 g",
        }).massFraction!,
    ],
    [
      "peroxide by permanganate, an equation that several reactions could follow, with its numbers",
      ((0.018 * 0.02 * 5) / 2) * 1000,
      "mol/L",
      () =>
        titrate({
          titrant: { strength: "0.0200 mol/L", of: "KMnO4" },
          titre: "18.00 mL",
          analyte: "H2O2",
          equation: "2 KMnO4 + 5 H2O2 + 3 H2SO4 -> K2SO4 + 2 MnSO4 + 8 H2O + 5 O2",
          sample: "1.000 mL",
        }).concentration!,
    ],
    [
      "blue vitriol by thiosulfate",
      (100 * 0.002135 * copper) / 0.54,
      "%",
      () =>
        titrate({
          titrant: { strength: "0.1000 mol/L" },
          titre: "21.35 mL",
          analyte: "CuSO4·5H2O",
          titrantPerAnalyte: 1,
          sample: "0.5400 g",
        }).massFraction!,
    ],
    [
      "an aliquot: 1.060 g of soda in 250.0 mL, of which 25.00 mL take 19.90 mL",
      (100 * (0.00199 / 2) * M("Na2 C O3")) / 0.106,
      "%",
      () =>
        titrate({
          titrant: { strength: "0.1000 mol/L", of: "HCl" },
          titre: "19.90 mL",
          analyte: "Na2CO3",
          equation: "Na2CO3 + HCl -> NaCl + CO2 + H2O",
          sample: quantity("1.060 g").times("25.00 mL").dividedBy("250.0 mL"),
        }).massFraction!,
    ],
    [
      "chloride by silver, with a blank",
      0.15,
      "mol/L",
      () =>
        titrate({
          titrant: { strength: "0.1000 mol/L", of: "AgNO3" },
          titre: "15.20 mL",
          blank: "0.20 mL",
          analyte: "NaCl",
          equation: "AgNO3 + NaCl -> AgCl + NaNO3",
          sample: "10.00 mL",
        }).concentration!,
    ],
    [
      "limestone by back titration",
      (100 * ((25 - 6.25) / 2) * M("Ca C O3")) / 1000,
      "%",
      () =>
        backTitrate({
          reagent: { strength: "0.500 mol/L" },
          reagentVolume: "50.0 mL",
          titrant: { strength: "0.500 mol/L" },
          titre: "12.5 mL",
          titrantPerReagent: 1,
          reagentPerAnalyte: 2,
          analyte: "CaCO3",
          sample: "1.000 g",
        }).massFraction!,
    ],
    [
      "nitrogen by distillation into 50.00 mL of decimolar sulfuric acid",
      (100 * (5 - 1.5) * 2 * M("N")) / 1000,
      "%",
      () =>
        backTitrate({
          reagent: { strength: "0.1000 mol/L" },
          reagentVolume: "50.00 mL",
          titrant: { strength: "0.1000 mol/L" },
          titre: "30.00 mL",
          titrantPerReagent: 2,
          reagentPerAnalyte: "1/2",
          analyte: "N",
          sample: "1.000 g",
        }).massFraction!,
    ],
    [
      "lye against 0.5105 g of potassium hydrogen phthalate, 25.10 mL",
      0.5105 / M("K H5 C8 O4") / 0.0251,
      "mol/L",
      () =>
        requiredAmount("KHC8H4O4 + NaOH -> KNaC8H4O4 + H2O", { KHC8H4O4: "0.5105 g" }, "NaOH").amount.dividedBy(
          "25.10 mL",
        ),
    ],
    [
      "standard deviation of 10.12, 10.15 and 10.13 mL",
      Math.sqrt((0.0133333 ** 2 + 0.0166667 ** 2 + 0.0033333 ** 2) / 2),
      "mL",
      () => replicateStatistics(["10.12 mL", "10.15 mL", "10.13 mL"]).standardDeviation!,
    ],
    [
      "98 % acid of 1.84 g/mL, 10 mL, both protons, by 2 mol/L lye",
      ((10 * 1.84 * 0.98) / M("H2 S O4")) * 1000,
      "mL",
      () =>
        requiredAmount(
          "H2SO4 + NaOH -> Na2SO4 + H2O",
          { H2SO4: { volume: "10 mL", strength: "98 % w/w", density: "1.84 g/mL" } },
          "NaOH",
          { strength: "2 mol/L" },
        ).volume!,
    ],
  ]);
});

describe("gases", () => {
  check([
    [
      "hydrogen from 0.0454 g of magnesium, over water at 18 °C and 752 mmHg",
      ((0.0454 / M("Mg")) * R * 291.15 * 1000) / (752 * TORR - VAPOUR[18]),
      "mL",
      () =>
        gasVolume(amountOf("0.0454 g", "Mg"), { temperature: "18 °C", pressure: "752 mmHg", collectedOver: "water" }),
    ],
    [
      "50.0 mL over water at 20 °C and 750 mmHg, dry at 0 °C and 1 atm",
      (50 * (750 * TORR - VAPOUR[20]) * 273.15) / ATM / 293.15,
      "mL",
      () =>
        gasVolumeAt("50.0 mL", {
          from: { temperature: "20 °C", pressure: "750 mmHg", collectedOver: "water" },
          to: { temperature: "0 °C", pressure: "1 atm" },
        }),
    ],
    [
      "a lighter's gas: 0.21 g in 90 mL over water at 22 °C and 101.0 kPa",
      ((0.21 / 0.09) * R * 295.15) / (101 - VAPOUR[22]),
      "g/mol",
      () =>
        molarMassOfGas(quantity("0.21 g").dividedBy("90 mL"), {
          temperature: "22 °C",
          pressure: "101.0 kPa",
          collectedOver: "water",
        }),
    ],
    [
      "a vapour: 0.580 g in 250 mL at 100 °C and 100 kPa",
      ((0.58 / 0.25) * R * 373.15) / 100,
      "g/mol",
      () => molarMassOfGas(quantity("0.580 g").dividedBy("250 mL"), { temperature: "100 °C", pressure: "100 kPa" }),
    ],
    ["chlorine at 20 °C", (M("Cl2") * ATM) / R / 293.15, "g/L", () => gasDensity("Cl2", { temperature: "20 °C" })],
    [
      "two gases in 10 L at 300 K",
      (0.75 * R * 300) / 10,
      "kPa",
      () => gasPressure(["0.5 mol", "0.25 mol"], { volume: "10 L", temperature: "300 K" }),
    ],
    [
      "a litre at 20 °C and 14.7 psi",
      (14.7 * 6.894757) / R / 293.15,
      "mol",
      () => gasAmount("1 L", { temperature: "20 °C", pressure: "14.7 psi" }),
    ],
    [
      "carbon dioxide from 10.0 g of marble of 92 % at 20 °C",
      ((9.2 / M("Ca C O3")) * R * 293.15) / ATM,
      "L",
      () =>
        gasVolume(
          reactionAmounts("CaCO3 + HCl -> CaCl2 + H2O + CO2", { CaCO3: { mass: "10.0 g", assay: "92 %" } }).of("CO2")
            .amount,
          { temperature: "20 °C" },
        ),
    ],
    [
      "sulfur dioxide with B = -430 cm3/mol at 25 °C (memory)",
      (R * 298.15) / ATM - 0.43,
      "L",
      () => gasVolume("1 mol", { gas: "SO2", model: "second virial" }),
    ],
    [
      "nitrogen from 65.0 g of sodium azide",
      ((65 / M("Na N3")) * 1.5 * R * 298.15) / ATM,
      "L",
      () => gasVolume(reactionAmounts("NaN3 -> Na + N2", { NaN3: "65.0 g" }).of("N2").amount),
    ],
  ]);
});

describe("feeds", () => {
  check([
    [
      "anhydrous salt in 100 g of blue vitriol",
      (100 * M("Cu S O4")) / VITRIOL,
      "g",
      () => massOf(feedAmount("CuSO4", { mass: "100 g", as: "CuSO4·5H2O" }), "CuSO4"),
    ],
    [
      "acid of 98 % by weight on zinc: 20 g",
      19.6 / M("H2 S O4"),
      "mol",
      () => reactionAmounts("Zn + H2SO4 -> ZnSO4 + H2", { H2SO4: { mass: "20 g", strength: "98 % w/w" } }).extent,
    ],
  ]);
});

// Runs with one planted fault each and good runs, written from the guide and the list of codes by two who had not seen the code and
// did not run it; masses by hand from standard atomic weights. Everything in them is invented.
import type { FindingCode, Observations, PlanRequest } from "preparative";

interface BlindRun {
  readonly id: string;
  readonly request: PlanRequest;
  readonly observations: Observations;
  readonly fault: string;
  /** Codes that may come first. */
  readonly accept: readonly FindingCode[];
}

export const BLIND_RUNS: readonly BlindRun[] = [
  {
    id: "f01-zn-jar-hepta",
    request: {
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc sulfate", form: "ZnSO4·H2O" },
        { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
      ],
      scale: { material: "zinc sulfate", portion: "50.0 g" },
    },
    observations: {
      weighed: { "zinc sulfate": "50.0 g" },
      dried: ["18.4 g", "18.3 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault: "The jar labelled ZnSO4·H2O held the heptahydrate, so only 62 % of the planned zinc was there.",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "f02-cu-soda-decahydrate",
    request: {
      equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
      product: "Cu2(OH)2CO3",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "blue vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "blue vitriol": "50.0 g", soda: "22.3 g" },
      dried: ["8.4 g", "8.3 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault:
      "The soda taken as anhydrous was washing soda Na2CO3·10H2O, so the carbonate reached for only 39 % of the copper.",
    accept: ["hydrate-mix-up", "reagent-short"],
  } as BlindRun,
  {
    id: "f03-ca-still-wet",
    request: {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "de-icer", portion: "60.0 g" },
    },
    observations: {
      weighed: { "de-icer": "60.0 g" },
      dried: ["52.4 g", "44.1 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault: "The chalk still holds 12 % water; the two weighings are still falling.",
    accept: ["still-drying", "wet"],
  } as BlindRun,
  {
    id: "f04-mg-wet-one-weighing",
    request: {
      equation: "MgSO4 + Na2CO3 + H2O -> Mg5(CO3)4(OH)2·4H2O + Na2SO4 + CO2",
      product: "Mg5(CO3)4(OH)2·4H2O",
      materials: [
        { name: "epsom salt", form: "MgSO4·7H2O" },
        { name: "soda", form: "Na2CO3", excess: "10 %" },
      ],
      scale: { material: "epsom salt", portion: "100.0 g" },
    },
    observations: { weighed: { "epsom salt": "100.0 g" }, dried: "43.4 g", washes: 4, tests: { lastWash: "negative" } },
    fault: "Weighed once only, the well-washed magnesia alba still held 17 % water.",
    accept: ["wet", "still-drying"],
  } as BlindRun,
  {
    id: "f05-ba-unwashed",
    request: {
      equation: "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
      product: "BaSO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
      ],
      scale: { material: "barium chloride", portion: "50.0 g" },
    },
    observations: {
      weighed: { "barium chloride": "50.0 g" },
      washes: 0,
      wetCake: "82.0 g",
      dried: ["48.87 g", "48.85 g"],
    },
    fault: "The cake was not washed: about 2 g NaCl and Na2SO4 of 35 g retained liquor dried in it.",
    accept: ["unwashed"],
  } as BlindRun,
  {
    id: "f06-zn-unwashed",
    request: {
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc vitriol", form: "ZnSO4·7H2O" },
        { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
      ],
      scale: { material: "zinc vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "zinc vitriol": "50.0 g" },
      washes: 0,
      wetCake: "76.0 g",
      dried: ["22.4 g", "22.4 g"],
      tests: { lastWash: "positive" },
    },
    fault: "No washing: the sodium sulfate (3.9 g) of 57 g retained liquor is in the product.",
    accept: ["unwashed"],
  } as BlindRun,
  {
    id: "f07-cu-lastwash-positive",
    request: {
      equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
      product: "Cu2(OH)2CO3",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "blue vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "blue vitriol": "50.0 g" },
      washes: 1,
      dried: ["23.7 g", "23.7 g"],
      tests: { filtrate: "clear", lastWash: "positive" },
    },
    fault: "Washed once only and the last wash still gave a sulfate test: 2.4 g sodium sulfate in the product.",
    accept: ["unwashed"],
  } as BlindRun,
  {
    id: "f08-malachite-for-cuco3",
    request: {
      equation: "CuSO4 + Na2CO3 -> CuCO3 + Na2SO4",
      product: "CuCO3",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "blue vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "blue vitriol": "50.0 g" },
      dried: ["21.5 g", "21.5 g"],
      ignition: { before: "1.000 g", after: "0.719 g" },
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault: "The plan counts on normal CuCO3; what precipitates is the basic carbonate Cu2(OH)2CO3 (ignition 0.7195).",
    accept: ["other-formula-fits"],
  } as BlindRun,
  {
    id: "f09-nesquehonite",
    request: {
      equation: "MgSO4 + Na2CO3 + H2O -> Mg5(CO3)4(OH)2·4H2O + Na2SO4 + CO2",
      product: "Mg5(CO3)4(OH)2·4H2O",
      materials: [
        { name: "epsom salt", form: "MgSO4·7H2O" },
        { name: "soda", form: "Na2CO3", excess: "10 %" },
      ],
      scale: { material: "epsom salt", portion: "100.0 g" },
    },
    observations: {
      weighed: { "epsom salt": "100.0 g" },
      dried: ["52.9 g", "52.8 g"],
      ignition: { before: "1.000 g", after: "0.291 g" },
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault: "Precipitated cold and dried at room temperature, it is MgCO3·3H2O, not the basic carbonate.",
    accept: ["other-formula-fits", "other-hydrate-fits"],
  } as BlindRun,
  {
    id: "f10-vitriol-dried-hot",
    request: {
      equation: "CuO + H2SO4 + H2O -> CuSO4·5H2O",
      product: "CuSO4·5H2O",
      materials: [
        { name: "copper oxide", form: "CuO" },
        { name: "sulfuric acid", form: "H2SO4", strength: "96 %" },
      ],
      scale: { material: "copper oxide", portion: "40.0 g" },
    },
    observations: {
      weighed: { "copper oxide": "40.0 g" },
      dried: ["91.4 g", "91.3 g"],
      ignition: { before: "1.000 g", after: "0.747 g", residue: "CuSO4" },
    },
    fault: "Dried too hot: the crystals went to the trihydrate (residue CuSO4 0.747 of it).",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  } as BlindRun,
  {
    id: "f11-lime-underburnt",
    request: {
      equation: "CaCO3 -> CaO + CO2",
      product: "CaO",
      materials: [{ name: "chalk", form: "CaCO3" }],
      scale: { material: "chalk", portion: "50.0 g" },
    },
    observations: { weighed: { chalk: "50.0 g" }, dried: "32.4 g" },
    fault: "Fired too short: 20 % of the CaCO3 is still there.",
    accept: ["unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "f12-malachite-underfired",
    request: {
      equation: "Cu2(OH)2CO3 -> CuO + H2O + CO2",
      product: "CuO",
      materials: [{ name: "malachite", form: "Cu2(OH)2CO3" }],
      scale: { material: "malachite", portion: "40.0 g" },
    },
    observations: { weighed: { malachite: "40.0 g" }, dried: "32.1 g" },
    fault: "Not fired through: 30 % of the basic carbonate is still undecomposed.",
    accept: ["unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "f13-ca-product-dropped",
    request: {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "de-icer", portion: "60.0 g" },
    },
    observations: {
      weighed: { "de-icer": "60.0 g" },
      lost: [{ of: "product", mass: "9 g" }],
      dried: ["30.2 g", "30.2 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault: "About 9 g of the dry product was dropped (recorded as lost).",
    accept: ["spilled"],
  } as BlindRun,
  {
    id: "f14-epsom-still-drying",
    request: {
      equation: "MgO + H2SO4 + H2O -> MgSO4·7H2O",
      product: "MgSO4·7H2O",
      materials: [
        { name: "oil of vitriol", form: "H2SO4", strength: "96 %" },
        { name: "magnesia", form: "MgO", excess: "5 %" },
      ],
      scale: { material: "oil of vitriol", portion: "50.0 g" },
    },
    observations: { weighed: { "oil of vitriol": "50.0 g" }, dried: ["134.8 g", "123.6 g", "115.5 g"] },
    fault: "The crystals still carry adhering water: three weighings, each 6-8 % lower, no constant mass.",
    accept: ["still-drying"],
  } as BlindRun,
  {
    id: "f15-ca-soda-short-weighed",
    request: {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "de-icer", portion: "60.0 g" },
    },
    observations: {
      weighed: { "de-icer": "60.0 g", soda: "27.3 g" },
      dried: ["24.7 g", "24.7 g"],
      tests: { filtrate: "cloudy", lastWash: "negative" },
      washes: 4,
    },
    fault:
      "Only 60 % of the planned soda was weighed out (recorded), so the soda runs out and calcium stays in the filtrate.",
    accept: ["reagent-short"],
  } as BlindRun,
  {
    id: "f16-ba-handling-loss",
    request: {
      equation: "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
      product: "BaSO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
      ],
      scale: { material: "barium chloride", portion: "50.0 g" },
    },
    observations: {
      weighed: { "barium chloride": "50.0 g" },
      dried: ["35.11 g", "35.10 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "A quarter of the product was lost in handling (ran through the filter), and nobody recorded it.",
    accept: ["lighter-than-losses-explain", "reagent-short"],
  } as BlindRun,
  {
    id: "f17-gypsum-to-hemihydrate",
    request: {
      equation: "CaCl2 + Na2SO4 + H2O -> CaSO4·2H2O + NaCl",
      product: "CaSO4·2H2O",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
      ],
      scale: { material: "de-icer", portion: "50.0 g" },
    },
    observations: {
      weighed: { "de-icer": "50.0 g" },
      dried: ["46.9 g", "46.9 g"],
      ignition: { before: "1.000 g", after: "0.938 g", residue: "CaSO4" },
      washes: 3,
    },
    fault: "Dried at 130 °C: plaster CaSO4·0.5H2O instead of the dihydrate.",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  } as BlindRun,
  {
    id: "f18-ba-impossible-mass",
    request: {
      equation: "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
      product: "BaSO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
      ],
      scale: { material: "barium chloride", portion: "50.0 g" },
    },
    observations: {
      weighed: { "barium chloride": "50.0 g" },
      dried: ["71.34 g", "71.33 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault: "The tare of the dish was read 25 g too low: 149 % of theory at constant mass, which no formula gives.",
    accept: ["too-heavy"],
  } as BlindRun,
  {
    id: "f19-mg-old-naoh",
    request: {
      equation: "MgSO4 + NaOH -> Mg(OH)2 + Na2SO4",
      product: "Mg(OH)2",
      materials: [
        { name: "epsom salt", form: "MgSO4·7H2O" },
        { name: "caustic soda", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "epsom salt", portion: "100.0 g" },
    },
    observations: {
      weighed: { "epsom salt": "100.0 g" },
      dried: ["17.8 g", "17.7 g"],
      washes: 5,
      tests: { filtrate: "cloudy", lastWash: "negative" },
    },
    fault:
      "The caustic soda was old and had drawn water and carbonic acid, 75 % active; fresh lye still clouds the filtrate.",
    accept: ["reagent-short"],
  } as BlindRun,
  {
    id: "f20-zn-weak-soda-acid-liquor",
    request: {
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc vitriol", form: "ZnSO4·7H2O" },
        { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
      ],
      scale: { material: "zinc vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "zinc vitriol": "50.0 g" },
      pH: 5.6,
      dried: ["15.4 g", "15.4 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault:
      "The washing soda was only 80 % pure: carbonate for 84 % of the zinc, and the liquor stayed slightly acid (pH 5.6).",
    accept: ["reagent-short", "liquor-ph"],
  } as BlindRun,
  {
    id: "g01-ca",
    request: {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "de-icer", portion: "60.0 g" },
    },
    observations: {
      weighed: { "de-icer": "60.0 g" },
      dried: ["39.7 g", "38.8 g", "38.8 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "g02-cu-underweighed-recorded",
    request: {
      equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
      product: "Cu2(OH)2CO3",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "blue vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "blue vitriol": "44.0 g" },
      dried: ["18.5 g", "18.5 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault:
      "none for the yield: the limiting blue vitriol was underweighed (44.0 g) and recorded; 95 % of what that gives.",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "g03-zn",
    request: {
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc vitriol", form: "ZnSO4·7H2O" },
        { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
      ],
      scale: { material: "zinc vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "zinc vitriol": "50.0 g" },
      dried: ["18.93 g", "18.34 g", "18.33 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "g04-ba",
    request: {
      equation: "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
      product: "BaSO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
      ],
      scale: { material: "barium chloride", portion: "50.0 g" },
    },
    observations: {
      weighed: { "barium chloride": "50.0 g" },
      dried: ["46.82 g", "46.81 g"],
      washes: 5,
      tests: { filtrate: "clear", lastWash: "negative" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "g05-mg",
    request: {
      equation: "MgSO4 + Na2CO3 + H2O -> Mg5(CO3)4(OH)2·4H2O + Na2SO4 + CO2",
      product: "Mg5(CO3)4(OH)2·4H2O",
      materials: [
        { name: "epsom salt", form: "MgSO4·7H2O" },
        { name: "soda", form: "Na2CO3", excess: "10 %" },
      ],
      scale: { material: "epsom salt", portion: "100.0 g" },
    },
    observations: {
      weighed: { "epsom salt": "100.0 g" },
      dried: ["35.4 g", "35.3 g"],
      washes: 4,
      tests: { lastWash: "negative" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "g06-kno3",
    request: {
      equation: "NaNO3 + KCl -> KNO3 + NaCl",
      product: "KNO3",
      materials: [
        { name: "Chile saltpetre", form: "NaNO3" },
        { name: "muriate of potash", form: "KCl" },
      ],
      scale: { material: "Chile saltpetre", portion: "170.0 g" },
    },
    observations: { weighed: { "Chile saltpetre": "170.0 g" }, dried: ["158.6 g", "158.5 g"] },
    fault: "none: good crystallisation, the missing 22 % (44 g) is what the mother liquor holds at 20 °C.",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "g07-lime",
    request: {
      equation: "CaCO3 -> CaO + CO2",
      product: "CaO",
      materials: [{ name: "chalk", form: "CaCO3" }],
      scale: { material: "chalk", portion: "50.0 g" },
    },
    observations: { weighed: { chalk: "50.0 g" }, dried: ["27.59 g", "27.59 g"] },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "g08-vitriol-crystals",
    request: {
      equation: "CuO + H2SO4 + H2O -> CuSO4·5H2O",
      product: "CuSO4·5H2O",
      materials: [
        { name: "copper oxide", form: "CuO" },
        { name: "sulfuric acid", form: "H2SO4", strength: "96 %" },
      ],
      scale: { material: "copper oxide", portion: "40.0 g" },
    },
    observations: { weighed: { "copper oxide": "40.0 g" }, dried: ["106.8 g", "106.7 g"] },
    fault: "none: good crystallisation, 15 % (19 g) stays in about 60 g of mother-liquor water at 20 °C.",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "af01",
    request: {
      equation: "MgCl2 + NaOH -> Mg(OH)2 + NaCl",
      product: "Mg(OH)2",
      materials: [
        { name: "magnesium chloride", form: "MgCl2" },
        { name: "lye flakes", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "magnesium chloride", portion: "80.0 g" },
    },
    observations: {
      weighed: { "magnesium chloride": "80.0 g" },
      dried: ["22.7 g", "22.0 g", "22.0 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "jar labelled MgCl2 anhydrous held MgCl2·6H2O: 47 % of the magnesium",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "af02",
    request: {
      equation: "NiSO4 + NaOH -> Ni(OH)2 + Na2SO4",
      product: "Ni(OH)2",
      materials: [
        { name: "nickel sulfate", form: "NiSO4" },
        { name: "lye flakes", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "nickel sulfate", portion: "60.0 g" },
    },
    observations: {
      weighed: { "nickel sulfate": "60.0 g" },
      dried: ["19.6 g", "19.0 g", "19.0 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "jar labelled NiSO4 anhydrous held NiSO4·7H2O: 55 % of the nickel",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "af03",
    request: {
      equation: "CoCl2 + NaOH -> Co(OH)2 + NaCl",
      product: "Co(OH)2",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "lye flakes", form: "NaOH", excess: "100 %" },
      ],
      scale: { material: "cobalt chloride", portion: "60.0 g" },
    },
    observations: {
      weighed: { "cobalt chloride": "60.0 g" },
      dried: ["42.5 g", "41.2 g", "41.2 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "jar labelled CoCl2·6H2O held anhydrous CoCl2: 183 % of the cobalt, lye twice what was needed",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "af04",
    request: {
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc sulfate", form: "ZnSO4·7H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "80 %" },
      ],
      scale: { material: "zinc sulfate", portion: "70.0 g" },
    },
    observations: {
      weighed: { "zinc sulfate": "70.0 g" },
      dried: ["41.9 g", "40.7 g", "40.7 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "jar labelled ZnSO4·7H2O held ZnSO4·H2O: 160 % of the zinc, soda 80 % in excess",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "af05",
    request: {
      equation: "Ba(OH)2 + H2SO4 -> BaSO4 + H2O",
      product: "BaSO4",
      materials: [
        { name: "baryta", form: "Ba(OH)2" },
        { name: "dilute sulfuric acid", form: "H2SO4", excess: "5 %", strength: "20 %" },
      ],
      scale: { material: "baryta", portion: "40.0 g" },
    },
    observations: {
      weighed: { baryta: "40.0 g" },
      dried: ["29.6 g", "28.7 g", "28.7 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "jar labelled Ba(OH)2 held Ba(OH)2·8H2O: 54 % of the barium",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "af06",
    request: {
      equation: "NiSO4 + NaOH -> Ni(OH)2 + Na2SO4",
      product: "Ni(OH)2",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·6H2O" },
        { name: "lye flakes", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "nickel sulfate", portion: "80.0 g" },
    },
    observations: {
      weighed: { "nickel sulfate": "80.0 g" },
      dried: ["46.9 g", "38.9 g", "33.5 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "nickel hydroxide gel still drying, 20 % water over the last weighing",
    accept: ["still-drying", "wet"],
  } as BlindRun,
  {
    id: "af07",
    request: {
      equation: "Cu(NO3)2 + NaOH -> Cu(OH)2 + NaNO3",
      product: "Cu(OH)2",
      materials: [
        { name: "copper nitrate", form: "Cu(NO3)2·3H2O" },
        { name: "lye flakes", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "copper nitrate", portion: "75.0 g" },
    },
    observations: {
      weighed: { "copper nitrate": "75.0 g" },
      dried: ["46.0 g", "41.4 g", "37.4 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "still drying: three weighings falling by 10 %",
    accept: ["still-drying", "wet"],
  } as BlindRun,
  {
    id: "af08",
    request: {
      equation: "Sr(NO3)2 + Na2SO4 -> SrSO4 + NaNO3",
      product: "SrSO4",
      materials: [
        { name: "strontium nitrate", form: "Sr(NO3)2" },
        { name: "Glauber's salt", form: "Na2SO4·10H2O", excess: "5 %" },
      ],
      scale: { material: "strontium nitrate", portion: "55.0 g" },
    },
    observations: {
      weighed: { "strontium nitrate": "55.0 g" },
      dried: ["63.5 g", "58.0 g", "53.5 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "still drying, last weighing 15 % water on the solid",
    accept: ["still-drying", "wet"],
  } as BlindRun,
  {
    id: "af09",
    request: {
      equation: "SrCl2 + Na2CO3 -> SrCO3 + NaCl",
      product: "SrCO3",
      materials: [
        { name: "strontium chloride", form: "SrCl2·6H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "strontium chloride", portion: "90.0 g" },
    },
    observations: {
      weighed: { "strontium chloride": "90.0 g" },
      wetCake: "215.3 g",
      washes: 0,
      dried: ["58.6 g", "57.5 g", "57.5 g"],
      tests: { filtrate: "clear", lastWash: "cloudy" },
    },
    fault: "not washed: sodium chloride of the liquor in the cake dried in",
    accept: ["unwashed"],
  } as BlindRun,
  {
    id: "af10",
    request: {
      equation: "CoCl2 + NaOH -> Co(OH)2 + NaCl",
      product: "Co(OH)2",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "lye flakes", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "cobalt chloride", portion: "75.0 g" },
    },
    observations: {
      weighed: { "cobalt chloride": "75.0 g" },
      wetCake: "168.8 g",
      washes: 0,
      dried: ["34.2 g", "33.6 g", "33.6 g"],
      tests: { filtrate: "clear", lastWash: "cloudy" },
    },
    fault: "not washed: the gelatinous cake kept five times its mass of salt liquor",
    accept: ["unwashed"],
  } as BlindRun,
  {
    id: "af11",
    request: {
      equation: "MnCl2 + Na2CO3 -> MnCO3 + NaCl",
      product: "MnCO3",
      materials: [
        { name: "manganese chloride", form: "MnCl2·4H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "manganese chloride", portion: "85.0 g" },
    },
    observations: {
      weighed: { "manganese chloride": "85.0 g" },
      wetCake: "237.0 g",
      washes: 0,
      dried: ["59.5 g", "58.3 g", "58.3 g"],
      tests: { filtrate: "clear", lastWash: "cloudy" },
    },
    fault: "not washed: sodium chloride of the liquor in the cake dried in",
    accept: ["unwashed"],
  } as BlindRun,
  {
    id: "af12",
    request: {
      equation: "ZnSO4 + NaHCO3 -> ZnCO3 + Na2SO4 + CO2 + H2O",
      product: "ZnCO3",
      materials: [
        { name: "zinc sulfate", form: "ZnSO4·7H2O" },
        { name: "baking soda", form: "NaHCO3", excess: "5 %" },
      ],
      scale: { material: "zinc sulfate", portion: "80.0 g" },
    },
    observations: {
      weighed: { "zinc sulfate": "80.0 g" },
      dried: ["29.9 g", "29.0 g", "29.0 g"],
      ignition: { before: "2.000 g", after: "1.482 g" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "basic zinc carbonate instead of the normal one (ignition leaves 74 % and not 65 %)",
    accept: ["other-formula-fits"],
  } as BlindRun,
  {
    id: "af13",
    request: {
      equation: "ZnCl2 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + NaCl + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc chloride", form: "ZnCl2" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "zinc chloride", portion: "50.0 g" },
    },
    observations: {
      weighed: { "zinc chloride": "50.0 g" },
      dried: ["45.0 g", "43.7 g", "43.7 g"],
      ignition: { before: "2.000 g", after: "1.298 g" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "normal ZnCO3 instead of the basic carbonate (ignition leaves 65 % and not 74 %)",
    accept: ["other-formula-fits"],
  } as BlindRun,
  {
    id: "af14",
    request: {
      equation: "MgCl2 + Na2CO3 + H2O -> MgCO3·3H2O + NaCl",
      product: "MgCO3·3H2O",
      materials: [
        { name: "magnesium chloride", form: "MgCl2·6H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "magnesium chloride", portion: "90.0 g" },
    },
    observations: {
      weighed: { "magnesium chloride": "90.0 g" },
      dried: ["40.5 g", "39.3 g", "39.3 g"],
      ignition: { before: "2.000 g", after: "0.862 g" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "precipitated hot: hydromagnesite instead of MgCO3·3H2O (ignition leaves 43 % and not 29 %)",
    accept: ["other-formula-fits"],
  } as BlindRun,
  {
    id: "af15",
    request: {
      equation: "Ca(NO3)2 + Na2SO4 + H2O -> CaSO4·2H2O + NaNO3",
      product: "CaSO4·2H2O",
      materials: [
        { name: "calcium nitrate", form: "Ca(NO3)2·4H2O" },
        { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
      ],
      scale: { material: "calcium nitrate", portion: "90.0 g" },
    },
    observations: {
      weighed: { "calcium nitrate": "90.0 g" },
      dried: ["50.2 g", "48.8 g", "48.8 g"],
      ignition: { before: "2.000 g", after: "2.000 g", residue: "CaSO4" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "gypsum dried at 250 °C to the anhydrite: ignition loses nothing",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  } as BlindRun,
  {
    id: "af16",
    request: {
      equation: "MgCl2 + Na2CO3 + H2O -> Mg5(CO3)4(OH)2·4H2O + NaCl + CO2",
      product: "Mg5(CO3)4(OH)2·4H2O",
      materials: [
        { name: "magnesium chloride", form: "MgCl2·6H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "magnesium chloride", portion: "120.0 g" },
    },
    observations: {
      weighed: { "magnesium chloride": "120.0 g" },
      dried: ["45.7 g", "44.4 g", "44.4 g"],
      ignition: { before: "2.000 g", after: "1.019 g" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "hydromagnesite dried too hot: its crystal water is gone (ignition leaves 51 % and not 43 %)",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  } as BlindRun,
  {
    id: "af17",
    request: {
      equation: "Mg(OH)2 -> MgO + H2O",
      product: "MgO",
      materials: [{ name: "milk of magnesia, dried", form: "Mg(OH)2" }],
      scale: { material: "milk of magnesia, dried", portion: "60.0 g" },
    },
    observations: { weighed: { "milk of magnesia, dried": "60.0 g" }, dried: "48.64 g" },
    fault: "fired too short: 40 % of the hydroxide is left",
    accept: ["unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "af18",
    request: {
      equation: "ZnCO3 -> ZnO + CO2",
      product: "ZnO",
      materials: [{ name: "zinc carbonate", form: "ZnCO3" }],
      scale: { material: "zinc carbonate", portion: "70.0 g" },
    },
    observations: { weighed: { "zinc carbonate": "70.0 g" }, dried: "53.76 g" },
    fault: "fired too short: 35 % of the carbonate is left",
    accept: ["unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "af19",
    request: {
      equation: "Ba(NO3)2 + K2CO3 -> BaCO3 + KNO3",
      product: "BaCO3",
      materials: [
        { name: "barium nitrate", form: "Ba(NO3)2" },
        { name: "potash", form: "K2CO3", excess: "5 %" },
      ],
      scale: { material: "barium nitrate", portion: "65.0 g" },
    },
    observations: {
      weighed: { "barium nitrate": "65.0 g" },
      lost: [{ of: "product", mass: "13 g" }],
      dried: ["35.6 g", "34.6 g", "34.6 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "recorded spill: 13 g of the dry product dropped",
    accept: ["spilled"],
  } as BlindRun,
  {
    id: "af20",
    request: {
      equation: "Cu(NO3)2 + NaOH -> Cu(OH)2 + NaNO3",
      product: "Cu(OH)2",
      materials: [
        { name: "copper nitrate", form: "Cu(NO3)2·3H2O" },
        { name: "lye flakes", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "copper nitrate", portion: "75.0 g" },
    },
    observations: {
      weighed: { "copper nitrate": "75.0 g", "lye flakes": "15.6 g" },
      dried: ["18.9 g", "18.3 g", "18.3 g"],
      washes: 4,
      tests: { filtrate: "cloudy", lastWash: "clear" },
    },
    fault: "lye underweighed as recorded, 60 % of the plan; copper left in the filtrate",
    accept: ["reagent-short"],
  } as BlindRun,
  {
    id: "af21",
    request: {
      equation: "MnCl2 + Na2CO3 -> MnCO3 + NaCl",
      product: "MnCO3",
      materials: [
        { name: "manganese chloride", form: "MnCl2·4H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "manganese chloride", portion: "85.0 g" },
    },
    observations: {
      weighed: { "manganese chloride": "85.0 g" },
      dried: ["33.3 g", "32.3 g", "32.3 g"],
      washes: 4,
      tests: { filtrate: "cloudy", lastWash: "clear" },
    },
    fault: "soda only 65 % active, not known: manganese left in the filtrate, which clouds with more soda",
    accept: ["reagent-short"],
  } as BlindRun,
  {
    id: "af22",
    request: {
      equation: "Ba(NO3)2 + K2CO3 -> BaCO3 + KNO3",
      product: "BaCO3",
      materials: [
        { name: "barium nitrate", form: "Ba(NO3)2" },
        { name: "potash", form: "K2CO3", excess: "5 %" },
      ],
      scale: { material: "barium nitrate", portion: "65.0 g" },
    },
    observations: {
      weighed: { "barium nitrate": "65.0 g" },
      dried: ["36.9 g", "35.8 g", "35.8 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "25 % of the product lost unrecorded; filtrate clear",
    accept: ["lighter-than-losses-explain"],
  } as BlindRun,
  {
    id: "af23",
    request: {
      equation: "Sr(NO3)2 + Na2SO4 -> SrSO4 + NaNO3",
      product: "SrSO4",
      materials: [
        { name: "strontium nitrate", form: "Sr(NO3)2" },
        { name: "Glauber's salt", form: "Na2SO4·10H2O", excess: "5 %" },
      ],
      scale: { material: "strontium nitrate", portion: "55.0 g" },
    },
    observations: {
      weighed: { "strontium nitrate": "55.0 g" },
      dried: ["96.6 g", "93.8 g", "93.8 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "tare of the dish forgotten: 48 g too much, > 190 % of theory",
    accept: ["too-heavy"],
  } as BlindRun,
  {
    id: "ag01",
    request: {
      equation: "SrCl2 + Na2CO3 -> SrCO3 + NaCl",
      product: "SrCO3",
      materials: [
        { name: "strontium chloride", form: "SrCl2·6H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "strontium chloride", portion: "70.0 g" },
    },
    observations: {
      weighed: { "strontium chloride": "70.0 g" },
      dried: ["38.3 g", "37.2 g", "37.2 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "ag02",
    request: {
      equation: "Sr(NO3)2 + Na2SO4 -> SrSO4 + NaNO3",
      product: "SrSO4",
      materials: [
        { name: "strontium nitrate", form: "Sr(NO3)2" },
        { name: "Glauber's salt", form: "Na2SO4·10H2O", excess: "5 %" },
      ],
      scale: { material: "strontium nitrate", portion: "60.0 g" },
    },
    observations: {
      weighed: { "strontium nitrate": "60.0 g" },
      dried: ["51.0 g", "49.5 g", "49.5 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "ag03",
    request: {
      equation: "Ba(NO3)2 + K2CO3 -> BaCO3 + KNO3",
      product: "BaCO3",
      materials: [
        { name: "barium nitrate", form: "Ba(NO3)2" },
        { name: "potash", form: "K2CO3", excess: "5 %" },
      ],
      scale: { material: "barium nitrate", portion: "50.0 g" },
    },
    observations: {
      weighed: { "barium nitrate": "50.0 g" },
      dried: ["37.7 g", "36.6 g", "36.6 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "ag04",
    request: {
      equation: "NiSO4 + NaOH -> Ni(OH)2 + Na2SO4",
      product: "Ni(OH)2",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·6H2O" },
        { name: "lye flakes", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "nickel sulfate", portion: "65.0 g" },
    },
    observations: {
      weighed: { "nickel sulfate": "65.0 g" },
      dried: ["22.2 g", "21.6 g", "21.6 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "ag05",
    request: {
      equation: "CoCl2 + NaOH -> Co(OH)2 + NaCl",
      product: "Co(OH)2",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "lye flakes", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "cobalt chloride", portion: "50.0 g" },
    },
    observations: {
      weighed: { "cobalt chloride": "50.0 g" },
      dried: ["18.7 g", "18.2 g", "18.2 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "ag06",
    request: {
      equation: "MnCl2 + Na2CO3 -> MnCO3 + NaCl",
      product: "MnCO3",
      materials: [
        { name: "manganese chloride", form: "MnCl2·4H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "manganese chloride", portion: "95.0 g" },
    },
    observations: {
      weighed: { "manganese chloride": "95.0 g" },
      dried: ["54.0 g", "52.4 g", "52.4 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "ag07",
    request: {
      equation: "ZnCl2 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + NaCl + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc chloride", form: "ZnCl2" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "zinc chloride", portion: "45.0 g" },
    },
    observations: {
      weighed: { "zinc chloride": "45.0 g" },
      dried: ["35.8 g", "34.8 g", "34.8 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "ag08",
    request: {
      equation: "Ca(NO3)2 + K2CO3 -> CaCO3 + KNO3",
      product: "CaCO3",
      materials: [
        { name: "calcium nitrate", form: "Ca(NO3)2·4H2O" },
        { name: "potash", form: "K2CO3", excess: "5 %" },
      ],
      scale: { material: "calcium nitrate", portion: "110.0 g" },
    },
    observations: {
      weighed: { "calcium nitrate": "110.0 g" },
      dried: ["46.6 g", "45.2 g", "45.2 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "ag09",
    request: {
      equation: "Cu(NO3)2 + NaOH -> Cu(OH)2 + NaNO3",
      product: "Cu(OH)2",
      materials: [
        { name: "copper nitrate", form: "Cu(NO3)2·3H2O" },
        { name: "lye flakes", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "copper nitrate", portion: "80.0 g" },
    },
    observations: {
      weighed: { "copper nitrate": "72.0 g" },
      dried: ["28.4 g", "27.6 g", "27.6 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: copper nitrate underweighed as recorded (72.0 of 80.0 g), 95 % of what that gives",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
];

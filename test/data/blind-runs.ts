// Runs with one planted fault each and good runs, written in four sets from the guide and the list of codes by chemists who had not seen
// the code and did not run it; masses by hand from standard atomic weights. Everything in them is invented.
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
    // the plan has come to count on the basic carbonate itself, and its sheet says to weigh that: now it is as expected
    accept: ["consistent"],
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
  {
    id: "bf01-ca-jar-hexahydrate",
    request: {
      equation: "CaCl2 + Na2C2O4 + H2O -> CaC2O4·H2O + NaCl",
      product: "CaC2O4·H2O",
      materials: [
        { name: "calcium chloride", form: "CaCl2" },
        { name: "sodium oxalate", form: "Na2C2O4", excess: "5 %" },
      ],
      scale: { material: "calcium chloride", portion: "30.0 g" },
    },
    observations: {
      weighed: { "calcium chloride": "30.0 g" },
      dried: ["19.3 g", "19.2 g", "19.2 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "The jar labelled anhydrous CaCl2 held the hexahydrate: 51 % of the planned calcium.",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "bf02-cu-jar-anhydrous",
    request: {
      equation: "CuSO4 + NaOH -> CuO + Na2SO4 + H2O",
      product: "CuO",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "caustic soda", form: "NaOH", excess: "80 %" },
      ],
      scale: { material: "blue vitriol", portion: "40.0 g" },
    },
    observations: {
      weighed: { "blue vitriol": "40.0 g" },
      dried: ["19.2 g", "19.1 g", "19.1 g"],
      ignition: { before: "1.000 g", after: "0.999 g", residue: "CuO" },
      washes: 5,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault:
      "The jar of blue vitriol held anhydrous CuSO4: 156 % of the planned copper, for which the lye still sufficed; the product is pure CuO by ignition.",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "bf03-ni-oxalic-dihydrate",
    request: {
      equation: "NiCl2 + H2C2O4 + H2O -> NiC2O4·2H2O + HCl",
      product: "NiC2O4·2H2O",
      materials: [
        { name: "nickel chloride", form: "NiCl2·6H2O" },
        { name: "oxalic acid", form: "H2C2O4", excess: "5 %" },
      ],
      scale: { material: "nickel chloride", portion: "50.0 g" },
    },
    observations: {
      weighed: { "nickel chloride": "50.0 g", "oxalic acid": "19.9 g" },
      dried: ["27.5 g", "27.4 g", "27.4 g"],
      washes: 4,
      tests: { filtrate: "cloudy", lastWash: "clear" },
    },
    fault:
      "The oxalic acid counted as anhydrous was the dihydrate: oxalate for 75 % of the nickel, the filtrate clouds with more.",
    accept: ["hydrate-mix-up", "reagent-short"],
  } as BlindRun,
  {
    id: "bf04-zn-phosphate-dodecahydrate",
    request: {
      equation: "ZnSO4 + Na3PO4 + H2O -> Zn3(PO4)2·4H2O + Na2SO4",
      product: "Zn3(PO4)2·4H2O",
      materials: [
        { name: "white vitriol", form: "ZnSO4·7H2O" },
        { name: "trisodium phosphate", form: "Na3PO4", excess: "5 %" },
      ],
      scale: { material: "white vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "white vitriol": "50.0 g", "trisodium phosphate": "20.0 g" },
      dried: ["11.6 g", "11.5 g", "11.5 g"],
      washes: 4,
      tests: { filtrate: "cloudy", lastWash: "clear" },
    },
    fault: "The phosphate counted as anhydrous was the dodecahydrate: phosphate for 45 % of the zinc.",
    accept: ["hydrate-mix-up", "reagent-short"],
  } as BlindRun,
  {
    id: "bf05-alum-jar-already-burnt",
    request: {
      equation: "KAl(SO4)2·12H2O -> KAl(SO4)2 + H2O",
      product: "KAl(SO4)2",
      materials: [{ name: "alum", form: "KAl(SO4)2·12H2O" }],
      scale: { material: "alum", portion: "50.0 g" },
    },
    observations: {
      weighed: { alum: "50.0 g" },
      dried: ["49.5 g", "49.4 g", "49.4 g"],
      ignition: { before: "1.000 g", after: "0.999 g", residue: "KAl(SO4)2" },
    },
    fault: "The alum jar held burnt (anhydrous) alum: 182 % of the theory, and nothing more is lost on heating.",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "bf06-ca-oxalate-still-wet",
    request: {
      equation: "CaCl2 + Na2C2O4 + H2O -> CaC2O4·H2O + NaCl",
      product: "CaC2O4·H2O",
      materials: [
        { name: "calcium chloride", form: "CaCl2·2H2O" },
        { name: "sodium oxalate", form: "Na2C2O4", excess: "5 %" },
      ],
      scale: { material: "calcium chloride", portion: "40.0 g" },
    },
    observations: {
      weighed: { "calcium chloride": "40.0 g" },
      dried: ["58.5 g", "51.4 g", "45.7 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "The well-washed oxalate still holds 21 % water over dry; the weighings fall by 11 % each.",
    accept: ["still-drying", "wet"],
  } as BlindRun,
  {
    id: "bf07-co-hydroxide-still-wet",
    request: {
      equation: "CoCl2 + NaOH -> Co(OH)2 + NaCl",
      product: "Co(OH)2",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "caustic soda", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "cobalt chloride", portion: "50.0 g" },
    },
    observations: {
      weighed: { "cobalt chloride": "50.0 g" },
      dried: ["31.5 g", "23.8 g"],
      washes: 5,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "The hydroxide cake is still drying: 28 % too heavy in the second weighing, 25 % less than in the first.",
    accept: ["still-drying", "wet"],
  } as BlindRun,
  {
    id: "bf08-zn-phosphate-unwashed",
    request: {
      equation: "ZnSO4 + Na3PO4 + H2O -> Zn3(PO4)2·4H2O + Na2SO4",
      product: "Zn3(PO4)2·4H2O",
      materials: [
        { name: "white vitriol", form: "ZnSO4·7H2O" },
        { name: "trisodium phosphate", form: "Na3PO4·12H2O", excess: "5 %" },
      ],
      scale: { material: "white vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "white vitriol": "50.0 g" },
      washes: 0,
      wetCake: "105.0 g",
      dried: ["31.4 g", "31.3 g", "31.3 g"],
    },
    fault: "No washing: the sodium sulfate of the liquor that the cake held dried into the product.",
    accept: ["unwashed"],
  } as BlindRun,
  {
    id: "bf09-prussian-blue-unwashed",
    request: {
      equation: "FeCl3 + K4[Fe(CN)6] -> Fe4[Fe(CN)6]3 + KCl",
      product: "Fe4[Fe(CN)6]3",
      materials: [
        { name: "ferric chloride", form: "FeCl3·6H2O" },
        { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O", excess: "5 %" },
      ],
      scale: { material: "ferric chloride", portion: "54.0 g" },
    },
    observations: {
      weighed: { "ferric chloride": "54.0 g" },
      washes: 0,
      wetCake: "150.0 g",
      dried: ["53.6 g", "53.5 g", "53.5 g"],
      tests: { filtrate: "clear", lastWash: "cloudy" },
    },
    fault:
      "The slimy blue was not washed; potassium chloride from the liquor in the cake dried in it, and what drains still clouds with silver.",
    accept: ["unwashed"],
  } as BlindRun,
  {
    id: "bf10-lime-forgotten-tare",
    request: {
      equation: "CaCO3 -> CaO + CO2",
      product: "CaO",
      materials: [{ name: "limestone", form: "CaCO3" }],
      scale: { material: "limestone", portion: "50.0 g" },
    },
    observations: { weighed: { limestone: "50.0 g" }, dried: ["65.6 g", "65.5 g", "65.5 g"] },
    fault: "The crucible (38 g) was not taken off: 234 % of theory and more than the feed.",
    accept: ["too-heavy"],
  } as BlindRun,
  {
    id: "bf11-zn-basic-for-normal",
    request: {
      equation: "ZnSO4 + NaHCO3 -> ZnCO3 + Na2SO4 + H2O + CO2",
      product: "ZnCO3",
      materials: [
        { name: "white vitriol", form: "ZnSO4·7H2O" },
        { name: "bicarbonate", form: "NaHCO3", excess: "5 %" },
      ],
      scale: { material: "white vitriol", portion: "60.0 g" },
    },
    observations: {
      weighed: { "white vitriol": "60.0 g" },
      dried: ["22.3 g", "22.2 g", "22.2 g"],
      ignition: { before: "1.000 g", after: "0.741 g", residue: "ZnO" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "Boiled, so that basic zinc carbonate came instead of ZnCO3 (ignition 0.741, not 0.649).",
    accept: ["other-formula-fits"],
  } as BlindRun,
  {
    id: "bf12-zn-normal-for-basic",
    request: {
      equation: "ZnSO4 + NaHCO3 -> Zn5(CO3)2(OH)6 + Na2SO4 + H2O + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "white vitriol", form: "ZnSO4·7H2O" },
        { name: "bicarbonate", form: "NaHCO3", excess: "5 %" },
      ],
      scale: { material: "white vitriol", portion: "60.0 g" },
    },
    observations: {
      weighed: { "white vitriol": "60.0 g" },
      dried: ["25.5 g", "25.4 g", "25.4 g"],
      ignition: { before: "1.000 g", after: "0.649 g", residue: "ZnO" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "Precipitated cold with bicarbonate it is ZnCO3 and not the basic carbonate (ignition 0.649, not 0.741).",
    accept: ["other-formula-fits"],
  } as BlindRun,
  {
    id: "bf13-anhydrite-stopped-at-plaster",
    request: {
      equation: "CaSO4·2H2O -> CaSO4 + H2O",
      product: "CaSO4",
      materials: [{ name: "gypsum", form: "CaSO4·2H2O" }],
      scale: { material: "gypsum", portion: "50.0 g" },
    },
    observations: {
      weighed: { gypsum: "50.0 g" },
      dried: ["41.83 g", "41.73 g", "41.73 g"],
      ignition: { before: "1.000 g", after: "0.938 g", residue: "CaSO4" },
    },
    fault: "Not hot enough: the burn stopped at the hemihydrate, which loses 6.2 % more in a small crucible.",
    accept: ["other-hydrate-fits", "other-formula-fits", "unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "bf14-plaster-dead-burnt",
    request: {
      equation: "CaSO4·2H2O -> CaSO4·0.5H2O + H2O",
      product: "CaSO4·0.5H2O",
      materials: [{ name: "gypsum", form: "CaSO4·2H2O" }],
      scale: { material: "gypsum", portion: "50.0 g" },
    },
    observations: {
      weighed: { gypsum: "50.0 g" },
      dried: ["39.04 g", "38.94 g", "38.94 g"],
      ignition: { before: "1.000 g", after: "0.999 g", residue: "CaSO4" },
    },
    fault: "Burnt too hot: anhydrous CaSO4 instead of plaster, nothing is lost on ignition.",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  } as BlindRun,
  {
    id: "bf15-zn-phosphate-dihydrate",
    request: {
      equation: "ZnSO4 + Na3PO4 + H2O -> Zn3(PO4)2·4H2O + Na2SO4",
      product: "Zn3(PO4)2·4H2O",
      materials: [
        { name: "white vitriol", form: "ZnSO4·7H2O" },
        { name: "trisodium phosphate", form: "Na3PO4·12H2O", excess: "5 %" },
      ],
      scale: { material: "white vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "white vitriol": "50.0 g" },
      dried: ["23.8 g", "23.7 g", "23.7 g"],
      ignition: { before: "1.000 g", after: "0.915 g", residue: "Zn3(PO4)2" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "Dried at 120 C: the dihydrate instead of hopeite (ignition 0.915, not 0.843).",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  } as BlindRun,
  {
    id: "bf16-ca-oxalate-anhydrous",
    request: {
      equation: "CaCl2 + Na2C2O4 + H2O -> CaC2O4·H2O + NaCl",
      product: "CaC2O4·H2O",
      materials: [
        { name: "calcium chloride", form: "CaCl2·2H2O" },
        { name: "sodium oxalate", form: "Na2C2O4", excess: "5 %" },
      ],
      scale: { material: "calcium chloride", portion: "40.0 g" },
    },
    observations: {
      weighed: { "calcium chloride": "40.0 g" },
      dried: ["33.6 g", "33.5 g", "33.5 g"],
      ignition: { before: "1.000 g", after: "0.438 g", residue: "CaO" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "Dried at 220 C: anhydrous oxalate instead of the monohydrate (ignition to CaO 0.438, not 0.384).",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  } as BlindRun,
  {
    id: "bf17-soda-unfired",
    request: {
      equation: "NaHCO3 -> Na2CO3 + CO2 + H2O",
      product: "Na2CO3",
      materials: [{ name: "baking soda", form: "NaHCO3" }],
      scale: { material: "baking soda", portion: "60.0 g" },
    },
    observations: { weighed: { "baking soda": "60.0 g" }, dried: "44.5 g" },
    fault: "Taken from the oven too soon: 30 % of the bicarbonate is still there.",
    accept: ["unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "bf18-cu-oxalate-unfired",
    request: {
      equation: "CuC2O4 + O2 -> CuO + CO2",
      product: "CuO",
      materials: [{ name: "copper oxalate", form: "CuC2O4" }],
      scale: { material: "copper oxalate", portion: "40.0 g" },
    },
    observations: { weighed: { "copper oxalate": "40.0 g" }, dried: "27.6 g" },
    fault: "Not fired through: 35 % of the oxalate is left in the oxide.",
    accept: ["unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "bf19-zn-basic-unfired",
    request: {
      equation: "Zn5(CO3)2(OH)6 -> ZnO + CO2 + H2O",
      product: "ZnO",
      materials: [{ name: "basic zinc carbonate", form: "Zn5(CO3)2(OH)6" }],
      scale: { material: "basic zinc carbonate", portion: "50.0 g" },
    },
    observations: {
      weighed: { "basic zinc carbonate": "50.0 g" },
      dried: "42.2 g",
      ignition: { before: "1.000 g", after: "0.877 g", residue: "ZnO" },
    },
    fault: "40 % of the basic carbonate is not decomposed; a second firing of a sample takes off what is missing.",
    accept: ["unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "bf20-cu-oxide-dropped",
    request: {
      equation: "Cu(OH)2 -> CuO + H2O",
      product: "CuO",
      materials: [{ name: "copper hydroxide", form: "Cu(OH)2" }],
      scale: { material: "copper hydroxide", portion: "50.0 g" },
    },
    observations: {
      weighed: { "copper hydroxide": "50.0 g" },
      lost: [{ of: "product", mass: "9 g" }],
      dried: ["31.3 g", "31.2 g", "31.2 g"],
    },
    fault: "About 9 g of the oxide fell from the dish (recorded).",
    accept: ["spilled"],
  } as BlindRun,
  {
    id: "bf21-prussiate-underweighed",
    request: {
      equation: "FeCl3 + K4[Fe(CN)6] -> Fe4[Fe(CN)6]3 + KCl",
      product: "Fe4[Fe(CN)6]3",
      materials: [
        { name: "ferric chloride", form: "FeCl3·6H2O" },
        { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O", excess: "5 %" },
      ],
      scale: { material: "ferric chloride", portion: "54.0 g" },
    },
    observations: {
      weighed: { "ferric chloride": "54.0 g", "yellow prussiate": "39.9 g" },
      dried: ["26.1 g", "26.0 g", "26.0 g"],
      washes: 5,
      tests: { filtrate: "cloudy", lastWash: "clear" },
    },
    fault: "Only 60 % of the planned prussiate was weighed (recorded): it runs out, iron stays in the filtrate.",
    accept: ["reagent-short"],
  } as BlindRun,
  {
    id: "bf22-ni-lye-weak",
    request: {
      equation: "NiSO4 + NaOH -> Ni(OH)2 + Na2SO4",
      product: "Ni(OH)2",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·6H2O" },
        { name: "caustic soda", form: "NaOH", excess: "5 %" },
      ],
      scale: { material: "nickel sulfate", portion: "50.0 g" },
    },
    observations: {
      weighed: { "nickel sulfate": "50.0 g" },
      dried: ["12.9 g", "12.8 g", "12.8 g"],
      washes: 5,
      tests: { filtrate: "cloudy", lastWash: "clear" },
    },
    fault: "The caustic soda was only 72 % active; fresh lye clouds the green filtrate.",
    accept: ["reagent-short"],
  } as BlindRun,
  {
    id: "bf23-co-oxalate-unrecorded-loss",
    request: {
      equation: "CoCl2 + Na2C2O4 + H2O -> CoC2O4·2H2O + NaCl",
      product: "CoC2O4·2H2O",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "sodium oxalate", form: "Na2C2O4", excess: "5 %" },
      ],
      scale: { material: "cobalt chloride", portion: "50.0 g" },
    },
    observations: {
      weighed: { "cobalt chloride": "50.0 g" },
      dried: ["27.8 g", "27.7 g", "27.7 g"],
      ignition: { before: "1.000 g", after: "0.439 g", residue: "Co3O4" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault:
      "A quarter of the product was lost and not recorded; the filtrate is clear and ignition is that of the dihydrate.",
    accept: ["lighter-than-losses-explain", "reagent-short"],
  } as BlindRun,
  {
    id: "bg01-lime",
    request: {
      equation: "CaCO3 -> CaO + CO2",
      product: "CaO",
      materials: [{ name: "limestone", form: "CaCO3" }],
      scale: { material: "limestone", portion: "80.0 g" },
    },
    observations: { weighed: { limestone: "80.0 g" }, dried: ["44.03 g", "43.93 g", "43.93 g"] },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "bg02-soda",
    request: {
      equation: "NaHCO3 -> Na2CO3 + CO2 + H2O",
      product: "Na2CO3",
      materials: [{ name: "baking soda", form: "NaHCO3" }],
      scale: { material: "baking soda", portion: "60.0 g" },
    },
    observations: { weighed: { "baking soda": "60.0 g" }, dried: ["37.19 g", "37.09 g", "37.09 g"] },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "bg03-burnt-alum",
    request: {
      equation: "KAl(SO4)2·12H2O -> KAl(SO4)2 + H2O",
      product: "KAl(SO4)2",
      materials: [{ name: "alum", form: "KAl(SO4)2·12H2O" }],
      scale: { material: "alum", portion: "50.0 g" },
    },
    observations: { weighed: { alum: "50.0 g" }, dried: ["31.2 g", "26.69 g", "26.67 g"] },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "bg04-magnesia",
    request: {
      equation: "Mg5(CO3)4(OH)2·4H2O -> MgO + CO2 + H2O",
      product: "MgO",
      materials: [{ name: "magnesia alba", form: "Mg5(CO3)4(OH)2·4H2O" }],
      scale: { material: "magnesia alba", portion: "50.0 g" },
    },
    observations: {
      weighed: { "magnesia alba": "50.0 g" },
      dried: ["21.22 g", "21.12 g", "21.12 g"],
      ignition: { before: "1.000 g", after: "0.999 g", residue: "MgO" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "bg05-zn-phosphate",
    request: {
      equation: "ZnSO4 + Na3PO4 + H2O -> Zn3(PO4)2·4H2O + Na2SO4",
      product: "Zn3(PO4)2·4H2O",
      materials: [
        { name: "white vitriol", form: "ZnSO4·7H2O" },
        { name: "trisodium phosphate", form: "Na3PO4·12H2O", excess: "5 %" },
      ],
      scale: { material: "white vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "white vitriol": "50.0 g" },
      dried: ["25.6 g", "25.5 g", "25.5 g"],
      ignition: { before: "1.000 g", after: "0.843 g", residue: "Zn3(PO4)2" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "bg06-prussian-blue",
    request: {
      equation: "FeCl3 + K4[Fe(CN)6] -> Fe4[Fe(CN)6]3 + KCl",
      product: "Fe4[Fe(CN)6]3",
      materials: [
        { name: "ferric chloride", form: "FeCl3·6H2O" },
        { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O", excess: "5 %" },
      ],
      scale: { material: "ferric chloride", portion: "54.0 g" },
    },
    observations: {
      weighed: { "ferric chloride": "54.0 g" },
      dried: ["40.4 g", "40.3 g", "40.3 g"],
      washes: 6,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "bg07-ca-oxalate",
    request: {
      equation: "CaCl2 + Na2C2O4 + H2O -> CaC2O4·H2O + NaCl",
      product: "CaC2O4·H2O",
      materials: [
        { name: "calcium chloride", form: "CaCl2·2H2O" },
        { name: "sodium oxalate", form: "Na2C2O4", excess: "5 %" },
      ],
      scale: { material: "calcium chloride", portion: "40.0 g" },
    },
    observations: {
      weighed: { "calcium chloride": "40.0 g" },
      dried: ["38.7 g", "38.6 g", "38.6 g"],
      ignition: { before: "1.000 g", after: "0.384 g", residue: "CaO" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "bg08-nickel-oxide",
    request: {
      equation: "Ni(OH)2 -> NiO + H2O",
      product: "NiO",
      materials: [{ name: "nickel hydroxide", form: "Ni(OH)2" }],
      scale: { material: "nickel hydroxide", portion: "40.0 g" },
    },
    observations: { weighed: { "nickel hydroxide": "40.0 g" }, dried: ["31.68 g", "31.58 g", "31.58 g"] },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "bg09-co-oxalate",
    request: {
      equation: "CoCl2 + Na2C2O4 + H2O -> CoC2O4·2H2O + NaCl",
      product: "CoC2O4·2H2O",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "sodium oxalate", form: "Na2C2O4", excess: "5 %" },
      ],
      scale: { material: "cobalt chloride", portion: "50.0 g" },
    },
    observations: {
      weighed: { "cobalt chloride": "50.0 g" },
      dried: ["36.6 g", "36.5 g", "36.5 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "df01-mn-jar-tetrahydrate",
    request: {
      equation: "MnSO4 + Na2CO3 -> MnCO3 + Na2SO4",
      product: "MnCO3",
      materials: [
        { name: "manganese sulfate", form: "MnSO4·H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "10 %" },
      ],
      scale: { material: "manganese sulfate", portion: "40.0 g" },
    },
    observations: {
      weighed: { "manganese sulfate": "40.0 g", "soda ash": "27.6 g" },
      dried: ["20.1 g", "20.0 g", "20.0 g"],
      ignition: { before: "1.000 g", after: "0.664 g", residue: "Mn3O4" },
      washes: 5,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault:
      "The jar labelled as the monohydrate held the pink tetrahydrate: 76 % of the planned manganese, of which 97 % came out; the product is pure MnCO3 by ignition.",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "df02-ba-jar-anhydrous",
    request: {
      equation: "BaCl2 + Na2CO3 -> BaCO3 + NaCl",
      product: "BaCO3",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "30 %" },
      ],
      scale: { material: "barium chloride", portion: "25.0 g" },
    },
    observations: {
      weighed: { "barium chloride": "25.0 g", "soda ash": "14.1 g" },
      dried: ["23.11 g", "23.10 g", "23.10 g"],
      acidPerGram: "10.12 mmol/g",
      washes: 6,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault:
      "The jar labelled dihydrate held anhydrous barium chloride: 117 % of the planned barium, which the soda in excess still covered; acid per gram is that of pure BaCO3, so it is neither water nor salt.",
    accept: ["hydrate-mix-up"],
  } as BlindRun,
  {
    id: "df03-sulfate-jar-decahydrate",
    request: {
      equation: "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
      product: "BaSO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "sodium sulfate", form: "Na2SO4", excess: "5 %" },
      ],
      scale: { material: "barium chloride", portion: "24.4 g" },
    },
    observations: {
      weighed: { "barium chloride": "24.4 g", "sodium sulfate": "14.9 g" },
      dried: ["10.7 g", "10.6 g", "10.6 g"],
      washes: 5,
      tests: { filtrate: "cloudy", lastWash: "clear" },
    },
    fault:
      "The sodium sulfate counted on as anhydrous was Glauber's salt: sulfate for 46 % of the barium, the filtrate clouds with more sulfate.",
    accept: ["hydrate-mix-up", "reagent-short"],
  } as BlindRun,
  {
    id: "df04-agcl-salt-short",
    request: {
      equation: "AgNO3 + NaCl -> AgCl + NaNO3",
      product: "AgCl",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "table salt", form: "NaCl", excess: "5 %" },
      ],
      scale: { material: "silver nitrate", portion: "8.50 g" },
    },
    observations: {
      weighed: { "silver nitrate": "8.50 g", "table salt": "2.04 g" },
      dried: ["4.91 g", "4.90 g", "4.90 g"],
      washes: 4,
      tests: { filtrate: "cloudy", lastWash: "clear" },
    },
    fault:
      "Salt was weighed as 2.04 g in place of 3.07 g (recorded): 30 % of the silver is left in the filtrate, which clouds with more salt.",
    accept: ["reagent-short"],
  } as BlindRun,
  {
    id: "df05-bi-subcarbonate-still-wet",
    request: {
      equation: "Bi(NO3)3 + Na2CO3 -> (BiO)2CO3 + NaNO3 + CO2",
      product: "(BiO)2CO3",
      materials: [
        { name: "bismuth nitrate", form: "Bi(NO3)3·5H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "10 %" },
      ],
      scale: { material: "bismuth nitrate", portion: "48.5 g" },
    },
    observations: {
      weighed: { "bismuth nitrate": "48.5 g" },
      dried: ["41.3 g", "34.6 g", "30.4 g"],
      washes: 5,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault:
      "Well washed, but taken from the oven too soon: 25 g of solid with 5 g of water, each weighing 12 to 16 % less than the one before.",
    accept: ["still-drying", "wet"],
  } as BlindRun,
  {
    id: "df06-al-hydroxide-unwashed",
    request: {
      equation: "KAl(SO4)2 + Na2CO3 + H2O -> Al(OH)3 + K2SO4 + Na2SO4 + CO2",
      product: "Al(OH)3",
      materials: [
        { name: "alum", form: "KAl(SO4)2·12H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "alum", portion: "47.4 g" },
    },
    observations: {
      weighed: { alum: "47.4 g" },
      washes: 0,
      wetCake: "78.0 g",
      dried: ["14.7 g", "14.6 g", "14.6 g"],
      tests: { filtrate: "clear", lastWash: "positive" },
    },
    fault:
      "The jelly was not washed: 70 g of liquor with 10 % of sulfates dried in it; what drains still clouds with barium.",
    accept: ["unwashed"],
  } as BlindRun,
  {
    id: "df07-bi-hydroxide-boiled-to-oxide",
    request: {
      equation: "Bi(NO3)3 + NaOH -> Bi(OH)3 + NaNO3",
      product: "Bi(OH)3",
      materials: [
        { name: "bismuth nitrate", form: "Bi(NO3)3·5H2O" },
        { name: "caustic soda", form: "NaOH", excess: "10 %" },
      ],
      scale: { material: "bismuth nitrate", portion: "48.5 g" },
    },
    observations: {
      weighed: { "bismuth nitrate": "48.5 g" },
      dried: ["22.7 g", "22.6 g", "22.6 g"],
      ignition: { before: "1.000 g", after: "0.998 g", residue: "Bi2O3" },
      washes: 5,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault:
      "Boiled with the lye, so that yellow Bi2O3 came instead of white Bi(OH)3: nothing is lost on ignition (0.998, not 0.896).",
    accept: ["other-formula-fits"],
  } as BlindRun,
  {
    id: "df08-mg-basic-for-normal",
    request: {
      equation: "MgSO4 + Na2CO3 + H2O -> MgCO3·3H2O + Na2SO4",
      product: "MgCO3·3H2O",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "washing soda", form: "Na2CO3·10H2O", excess: "10 %" },
      ],
      scale: { material: "Epsom salt", portion: "50.0 g" },
    },
    observations: {
      weighed: { "Epsom salt": "50.0 g" },
      dried: ["18.3 g", "18.2 g", "18.2 g"],
      ignition: { before: "1.000 g", after: "0.431 g", residue: "MgO" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault:
      "Precipitated boiling hot: basic carbonate (magnesia alba) in place of MgCO3·3H2O; ignition 0.431, not 0.291.",
    accept: ["other-formula-fits"],
  } as BlindRun,
  {
    id: "df09-mn-oxalate-anhydrous",
    request: {
      equation: "MnSO4 + H2C2O4 + H2O -> MnC2O4·2H2O + H2SO4",
      product: "MnC2O4·2H2O",
      materials: [
        { name: "manganese sulfate", form: "MnSO4·H2O" },
        { name: "oxalic acid", form: "H2C2O4·2H2O", excess: "10 %" },
      ],
      scale: { material: "manganese sulfate", portion: "33.8 g" },
    },
    observations: {
      weighed: { "manganese sulfate": "33.8 g" },
      dried: ["27.8 g", "27.7 g", "27.7 g"],
      ignition: { before: "1.000 g", after: "0.534 g", residue: "Mn3O4" },
      washes: 5,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "Dried at 150 °C: anhydrous oxalate in place of the dihydrate; ignition to Mn3O4 0.534, not 0.426.",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  } as BlindRun,
  {
    id: "df10-na-acetate-anhydrous",
    request: {
      equation: "NaHCO3 + CH3COOH + H2O -> CH3COONa·3H2O + CO2",
      product: "CH3COONa·3H2O",
      materials: [
        { name: "baking soda", form: "NaHCO3" },
        { name: "vinegar", form: "CH3COOH", strength: "5 %", excess: "5 %" },
      ],
      scale: { material: "baking soda", portion: "42.0 g" },
    },
    observations: {
      weighed: { "baking soda": "42.0 g" },
      dried: ["40.1 g", "40.0 g", "40.0 g"],
      ignition: { before: "1.000 g", after: "0.646 g", residue: "Na2CO3" },
    },
    fault:
      "Boiled down and dried at 120 °C: anhydrous acetate in place of the trihydrate; ignition to soda 0.646, not 0.389.",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  } as BlindRun,
  {
    id: "df11-sr-carbonate-unfired",
    request: {
      equation: "SrCO3 -> SrO + CO2",
      product: "SrO",
      materials: [{ name: "strontium carbonate", form: "SrCO3" }],
      scale: { material: "strontium carbonate", portion: "40.0 g" },
    },
    observations: {
      weighed: { "strontium carbonate": "40.0 g" },
      dried: "31.56 g",
      ignition: { before: "1.000 g", after: "0.887 g", residue: "SrO" },
    },
    fault: "The kiln was not hot enough: 30 % of the carbonate is left; a sample fired again loses what is missing.",
    accept: ["unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "df12-mg-hydroxide-unfired",
    request: {
      equation: "Mg(OH)2 -> MgO + H2O",
      product: "MgO",
      materials: [{ name: "magnesium hydroxide", form: "Mg(OH)2" }],
      scale: { material: "magnesium hydroxide", portion: "60.0 g" },
    },
    observations: {
      weighed: { "magnesium hydroxide": "60.0 g" },
      dried: "45.9 g",
      ignition: { before: "1.000 g", after: "0.899 g", residue: "MgO" },
    },
    fault: "Fired too short: 25 % of the hydroxide is left; a sample fired again goes to 0.899.",
    accept: ["unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "df13-al-hydroxide-too-much-lye",
    request: {
      equation: "AlCl3 + NaOH -> Al(OH)3 + NaCl",
      product: "Al(OH)3",
      materials: [
        { name: "aluminium chloride", form: "AlCl3·6H2O" },
        { name: "caustic soda", form: "NaOH" },
      ],
      scale: { material: "aluminium chloride", portion: "24.1 g" },
    },
    observations: {
      weighed: { "aluminium chloride": "24.1 g", "caustic soda": "14.8 g" },
      pH: "12.3",
      dried: ["2.29 g", "2.28 g", "2.28 g"],
      washes: 5,
      tests: { lastWash: "clear" },
    },
    fault:
      "Lye of 14.8 g in place of 12.0 g (recorded): the surplus took 71 % of the hydroxide back into the liquor as aluminate.",
    accept: ["loss-explained", "lighter-than-losses-explain"],
  } as BlindRun,
  {
    id: "df14-copper-with-iron-left",
    request: {
      equation: "CuSO4 + Fe -> Cu + FeSO4",
      product: "Cu",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "iron filings", form: "Fe", excess: "30 %" },
      ],
      scale: { material: "blue vitriol", portion: "50.0 g" },
    },
    observations: {
      weighed: { "blue vitriol": "50.0 g", "iron filings": "14.5 g" },
      dried: ["15.9 g", "15.8 g", "15.8 g"],
      washes: 5,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault:
      "The iron in excess (3.3 g) was not taken out with acid before drying: copper with iron in it, washed and of constant mass.",
    accept: ["unreacted", "mixture-fits"],
  } as BlindRun,
  {
    id: "df15-saltpetre-with-salt",
    request: {
      equation: "NaNO3 + KCl -> KNO3 + NaCl",
      product: "KNO3",
      materials: [
        { name: "Chile saltpetre", form: "NaNO3" },
        { name: "muriate of potash", form: "KCl" },
      ],
      scale: { material: "Chile saltpetre", portion: "85.0 g" },
    },
    observations: {
      weighed: { "Chile saltpetre": "85.0 g", "muriate of potash": "74.6 g" },
      dried: ["86.5 g", "86.4 g", "86.4 g"],
      assay: "87 %",
    },
    fault:
      "The hot salt was not filtered off well and the crop was not rinsed: 75 g of KNO3 with 11 g of sodium chloride, 87 % by titration of chloride.",
    accept: ["impure"],
  } as BlindRun,
  {
    id: "df16-sr-chloride-low-assay",
    request: {
      equation: "SrCl2 + Na2CO3 -> SrCO3 + NaCl",
      product: "SrCO3",
      materials: [
        { name: "strontium chloride", form: "SrCl2·6H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "strontium chloride", portion: "53.3 g" },
    },
    observations: {
      weighed: { "strontium chloride": "53.3 g", "soda ash": "22.2 g" },
      dried: ["20.7 g", "20.6 g", "20.6 g"],
      acidPerGram: "13.52 mmol/g",
      washes: 5,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault:
      "A technical pack of strontium chloride, 72 % with table salt for the rest; soda clouds the filtrate no more and the carbonate is pure.",
    accept: ["reagent-short", "lighter-than-losses-explain"],
  } as BlindRun,
  {
    id: "df17-ag-acetate-washed-away",
    request: {
      equation: "AgNO3 + CH3COONa -> CH3COOAg + NaNO3",
      product: "CH3COOAg",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "sodium acetate", form: "CH3COONa·3H2O", excess: "5 %" },
      ],
      scale: { material: "silver nitrate", portion: "17.0 g" },
    },
    observations: {
      weighed: { "silver nitrate": "17.0 g", "sodium acetate": "14.3 g" },
      dried: ["10.41 g", "10.40 g", "10.40 g"],
      washes: 10,
      tests: { lastWash: "negative" },
    },
    fault:
      "Washed ten times with 50 mL of water at 20 °C, each of which dissolves 0.5 g of the acetate; the liquor kept another 0.9 g.",
    accept: ["lighter-than-losses-explain", "loss-explained"],
  } as BlindRun,
  {
    id: "df18-fe-oxide-tare-misread",
    request: {
      equation: "FeC2O4·2H2O + O2 -> Fe2O3 + CO2 + H2O",
      product: "Fe2O3",
      materials: [{ name: "ferrous oxalate", form: "FeC2O4·2H2O" }],
      scale: { material: "ferrous oxalate", portion: "40.0 g" },
    },
    observations: {
      weighed: { "ferrous oxalate": "40.0 g" },
      dried: [
        { gross: "75.7 g", tare: "18.1 g" },
        { gross: "75.6 g", tare: "18.1 g" },
      ],
    },
    fault:
      "The tare of the dish, 58.1 g, was written down as 18.1 g: 57.5 g of oxide from 40.0 g of oxalate, where 17.5 g were there.",
    accept: ["too-heavy"],
  } as BlindRun,
  {
    id: "df19-ag-carbonate-filter-torn",
    request: {
      equation: "AgNO3 + Na2CO3 -> Ag2CO3 + NaNO3",
      product: "Ag2CO3",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "silver nitrate", portion: "17.0 g" },
    },
    observations: {
      weighed: { "silver nitrate": "17.0 g" },
      lost: [{ of: "product", mass: "3.5 g" }],
      dried: ["10.00 g", "9.99 g", "9.99 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "The filter paper tore while the cake was washed; about 3.5 g went into the sink (recorded).",
    accept: ["spilled"],
  } as BlindRun,
  {
    id: "df20-alum-second-crop-forgotten",
    request: {
      equation: "K2SO4 + Al2(SO4)3 + H2O -> KAl(SO4)2·12H2O",
      product: "KAl(SO4)2·12H2O",
      materials: [
        { name: "potassium sulfate", form: "K2SO4" },
        { name: "aluminium sulfate", form: "Al2(SO4)3·18H2O" },
      ],
      scale: { material: "potassium sulfate", portion: "34.9 g" },
    },
    observations: {
      weighed: { "potassium sulfate": "34.9 g", "aluminium sulfate": "133.5 g" },
      temperature: "20 °C",
      filtrateVolume: "420 mL",
      dried: ["138.3 g", "138.2 g", "138.2 g"],
    },
    fault: "The mother liquor (420 mL, with 48 g of alum) was poured away without a second crop.",
    accept: ["loss-explained", "lighter-than-losses-explain"],
  } as BlindRun,
  {
    id: "df21-magnesite-with-quartz",
    request: {
      equation: "MgCO3 -> MgO + CO2",
      product: "MgO",
      materials: [{ name: "magnesite", form: "MgCO3" }],
      scale: { material: "magnesite", portion: "60.0 g" },
    },
    observations: {
      weighed: { magnesite: "60.0 g" },
      dried: ["33.3 g", "33.2 g", "33.2 g"],
      ignition: { before: "1.000 g", after: "0.999 g", residue: "MgO" },
      assay: "73 %",
    },
    fault:
      "The magnesite held 15 % of quartz: fired through (nothing is lost any more), too heavy, and 73 % MgO by titration.",
    accept: ["impure", "mixture-fits"],
  } as BlindRun,
  {
    id: "df22-slaked-lime-carbonated",
    request: {
      equation: "CaO + H2O -> Ca(OH)2",
      product: "Ca(OH)2",
      materials: [{ name: "quicklime", form: "CaO" }],
      scale: { material: "quicklime", portion: "28.0 g" },
    },
    observations: {
      weighed: { quicklime: "28.0 g" },
      dried: ["39.7 g", "39.6 g", "39.6 g"],
      ignition: { before: "1.000 g", after: "0.696 g", residue: "CaO" },
    },
    fault:
      "Dried for days in an open dish: a quarter of the hydroxide took up carbon dioxide; constant mass at 110 °C, ignition 0.696, not 0.757.",
    accept: ["mixture-fits", "impure"],
  } as BlindRun,
  {
    id: "df23-copperas-acid-weak",
    request: {
      equation: "Fe + H2SO4 + H2O -> FeSO4·7H2O + H2",
      product: "FeSO4·7H2O",
      materials: [
        { name: "iron turnings", form: "Fe" },
        { name: "battery acid", form: "H2SO4", strength: "38 %", excess: "10 %" },
      ],
      scale: { material: "iron turnings", portion: "28.0 g" },
    },
    observations: {
      weighed: { "iron turnings": "28.0 g", "battery acid": "142.3 g" },
      strengths: { "battery acid": "28 %" },
      dried: ["101.8 g", "101.7 g", "101.7 g"],
    },
    fault:
      "The battery acid was 28 % by titration and not 38 %: acid for 81 % of the iron, the rest of the turnings stayed.",
    accept: ["reagent-short"],
  } as BlindRun,
  {
    id: "df24-mn-acetate-vinegar-weak",
    request: {
      equation: "MnCO3 + CH3COOH + H2O -> Mn(CH3COO)2·4H2O + CO2",
      product: "Mn(CH3COO)2·4H2O",
      materials: [
        { name: "manganese carbonate", form: "MnCO3" },
        { name: "cleaning vinegar", form: "CH3COOH", strength: "10 %", excess: "5 %" },
      ],
      scale: { material: "manganese carbonate", portion: "23.0 g" },
    },
    observations: {
      weighed: { "manganese carbonate": "23.0 g", "cleaning vinegar": "252.3 g" },
      pH: "6.9",
      dried: ["24.3 g", "24.2 g", "24.2 g"],
    },
    fault:
      "Table vinegar of 5 % was taken for cleaning vinegar of 10 %: acid for 52 % of the carbonate, the liquor is neutral and the rest of the powder did not dissolve.",
    accept: ["reagent-short", "liquor-ph"],
  } as BlindRun,
  {
    id: "df25-struvite-monohydrate",
    request: {
      equation: "MgSO4 + Na2HPO4 + NH3 + H2O -> MgNH4PO4·6H2O + Na2SO4",
      product: "MgNH4PO4·6H2O",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "disodium phosphate", form: "Na2HPO4·12H2O", excess: "5 %" },
        { name: "ammonia", form: "NH3", strength: "10 %", excess: "50 %" },
      ],
      scale: { material: "Epsom salt", portion: "24.6 g" },
    },
    observations: {
      weighed: { "Epsom salt": "24.6 g" },
      dried: ["14.89 g", "14.88 g", "14.88 g"],
      ignition: { before: "1.000 g", after: "0.716 g", residue: "Mg2P2O7" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "Dried at 105 °C: the monohydrate in place of the hexahydrate; ignition to pyrophosphate 0.716, not 0.453.",
    accept: ["other-hydrate-fits", "other-formula-fits"],
  } as BlindRun,
  {
    id: "dg01-mn-carbonate",
    request: {
      equation: "MnSO4 + Na2CO3 -> MnCO3 + Na2SO4",
      product: "MnCO3",
      materials: [
        { name: "manganese sulfate", form: "MnSO4·H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "10 %" },
      ],
      scale: { material: "manganese sulfate", portion: "40.0 g" },
    },
    observations: {
      weighed: { "manganese sulfate": "40.0 g", "soda ash": "27.6 g" },
      dried: ["26.1 g", "26.0 g", "26.0 g"],
      ignition: { before: "1.000 g", after: "0.664 g", residue: "Mn3O4" },
      washes: 5,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "dg02-barium-sulfate",
    request: {
      equation: "BaCl2 + Na2SO4 -> BaSO4 + NaCl",
      product: "BaSO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "Glauber's salt", form: "Na2SO4·10H2O", excess: "5 %" },
      ],
      scale: { material: "barium chloride", portion: "24.4 g" },
    },
    observations: {
      weighed: { "barium chloride": "24.4 g", "Glauber's salt": "33.8 g" },
      dried: ["22.81 g", "22.80 g", "22.80 g"],
      washes: 5,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "dg03-saltpetre",
    request: {
      equation: "NaNO3 + KCl -> KNO3 + NaCl",
      product: "KNO3",
      materials: [
        { name: "Chile saltpetre", form: "NaNO3" },
        { name: "muriate of potash", form: "KCl" },
      ],
      scale: { material: "Chile saltpetre", portion: "85.0 g" },
    },
    observations: {
      weighed: { "Chile saltpetre": "85.0 g", "muriate of potash": "74.6 g" },
      temperature: "20 °C",
      dried: ["77.7 g", "77.6 g", "77.6 g"],
    },
    fault: "none: good run, the crop that cooling brings less what stuck",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "dg04-mohrs-salt",
    request: {
      equation: "FeSO4 + (NH4)2SO4 + H2O -> (NH4)2Fe(SO4)2·6H2O",
      product: "(NH4)2Fe(SO4)2·6H2O",
      materials: [
        { name: "copperas", form: "FeSO4·7H2O" },
        { name: "ammonium sulfate", form: "(NH4)2SO4" },
      ],
      scale: { material: "copperas", portion: "27.8 g" },
    },
    observations: { weighed: { copperas: "27.8 g", "ammonium sulfate": "13.2 g" }, crops: ["25.4 g", "7.1 g"] },
    fault: "none: good run, two crops",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "dg05-copper-by-iron",
    request: {
      equation: "Fe + CuSO4 -> Cu + FeSO4",
      product: "Cu",
      materials: [
        { name: "iron filings", form: "Fe" },
        { name: "blue vitriol", form: "CuSO4·5H2O", excess: "10 %" },
      ],
      scale: { material: "iron filings", portion: "10.0 g" },
    },
    observations: {
      weighed: { "iron filings": "10.0 g", "blue vitriol": "49.2 g" },
      dried: ["10.99 g", "10.98 g", "10.98 g"],
      washes: 5,
      tests: { lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "dg06-tin-dioxide",
    request: {
      equation: "SnC2O4 + O2 -> SnO2 + CO2",
      product: "SnO2",
      materials: [{ name: "stannous oxalate", form: "SnC2O4" }],
      scale: { material: "stannous oxalate", portion: "30.0 g" },
    },
    observations: {
      weighed: { "stannous oxalate": "30.0 g" },
      dried: ["21.53 g", "21.52 g", "21.52 g"],
      ignition: { before: "1.000 g", after: "0.999 g", residue: "SnO2" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "dg07-struvite",
    request: {
      equation: "MgSO4 + Na2HPO4 + NH3 + H2O -> MgNH4PO4·6H2O + Na2SO4",
      product: "MgNH4PO4·6H2O",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "disodium phosphate", form: "Na2HPO4·12H2O", excess: "5 %" },
        { name: "ammonia", form: "NH3", strength: "10 %", excess: "50 %" },
      ],
      scale: { material: "Epsom salt", portion: "24.6 g" },
    },
    observations: {
      weighed: { "Epsom salt": "24.6 g" },
      dried: ["29.60 g", "23.17 g", "23.15 g"],
      ignition: { before: "1.000 g", after: "0.453 g", residue: "Mg2P2O7" },
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "dg08-silver-chloride",
    request: {
      equation: "AgNO3 + NaCl -> AgCl + NaNO3",
      product: "AgCl",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "table salt", form: "NaCl", excess: "5 %" },
      ],
      scale: { material: "silver nitrate", portion: "8.50 g" },
    },
    observations: {
      weighed: { "silver nitrate": "8.50 g", "table salt": "3.07 g" },
      dried: ["6.97 g", "6.96 g", "6.96 g"],
      washes: 4,
      tests: { filtrate: "clear", lastWash: "clear" },
    },
    fault: "none: good run",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
  {
    id: "dg09-alum-two-crops",
    request: {
      equation: "K2SO4 + Al2(SO4)3 + H2O -> KAl(SO4)2·12H2O",
      product: "KAl(SO4)2·12H2O",
      materials: [
        { name: "potassium sulfate", form: "K2SO4" },
        { name: "aluminium sulfate", form: "Al2(SO4)3·18H2O" },
      ],
      scale: { material: "potassium sulfate", portion: "17.4 g" },
    },
    observations: {
      weighed: { "potassium sulfate": "17.4 g", "aluminium sulfate": "66.5 g" },
      temperature: "20 °C",
      crops: ["70.6 g", "15.7 g"],
    },
    fault: "none: good run, two crops, the last 75 mL of liquor keep some 8 g",
    accept: ["consistent", "loss-explained"],
  } as BlindRun,
];

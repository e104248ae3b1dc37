// One good call for each door that takes a request with fields.
import * as preparative from "preparative";

/** Door and the arguments of a request it accepts. */
export const REQUESTS: readonly (readonly [name: string, args: readonly unknown[]])[] = [
  ["atomicWeight", ["Cu", { convention: "midpoint", value: "63 g/mol", massNumberIfNone: true }]],
  [
    "molarMass",
    ["CuSO4", { convention: "midpoint", weights: { Cu: "63 g/mol" }, massNumberIfNone: true, electronMass: true }],
  ],
  ["monoisotopicMass", ["SO4^2-", { electronMass: true }]],
  ["massFractionOf", ["Cu", "CuSO4", { weights: { Cu: "63 g/mol" } }]],
  ["oxideEquivalents", ["FeCO3", { oxides: ["FeO"], convention: "abridged", weights: {} }]],
  ["massAs", ["1 g", "ZnCO3", "ZnO", { element: "Zn", weights: {}, convention: "abridged" }]],
  ["empiricalFormula", [{ C: "92.3 %" }, { molarMass: "78 g/mol", remainder: "H", maxMultiplier: 9, weights: {} }]],
  ["parseFormula", ["CuxSO4·nH2O", { n: 3, x: 2, digitsBeforeSign: "charge" }]],
  ["precipitatedCarbonate", [{ metal: "Cu^2+", precipitant: "soda", concentration: "0.1 mol/L" }]],
  ["saltConversion", [{ from: "SrSO4", to: "SrCO3" }]],
  [
    "crystallise",
    [
      {
        formula: "KNO3",
        mass: "100 g",
        hot: "80 °C",
        cold: "10 °C",
        waterFactor: "1.1",
        hotSolubility: "169 g",
        coldSolubility: "21 g",
        evaporateTo: "0.5",
      },
    ],
  ],
  [
    "crystallise",
    [{ formula: "CuSO4·5H2O", mass: "100 g", hot: "80 °C", cold: "10 °C", water: "100 g", evaporateTo: "0.5" }],
  ],
  [
    "waterForSolution",
    [{ salts: [{ formula: "KNO3", mass: "10 g", solubility: "30 g" }], temperature: "20 °C", waterFactor: "1.2" }],
  ],
  [
    "waterToDissolve",
    [{ formula: "KNO3", mass: "10 g", solubility: "30 g", temperature: "20 °C", waterFactor: "1.2" }],
  ],
  ["hydroxidePrecipitationRange", [{ metal: "Al^3+", concentration: "0.1 mol/L", residual: "1e-5 mol/L", form: "a" }]],
  [
    "remainsInSolution",
    [
      {
        substances: [
          { formula: "Na2SO4", mass: "10 g", solubility: "20 g" },
          { formula: "NaCl", amount: "1 mol" },
        ],
        water: "100 g",
        temperature: "20 °C",
      },
    ],
  ],
  [
    "molarSolubility",
    [
      {
        solid: "AgCl",
        ksp: "1e-10",
        commonIons: [{ ion: "Cl-", concentration: "0.1 mol/L" }],
        freeLigands: [{ ligand: "NH3", concentration: "0.1 mol/L" }],
        ionicStrength: "0.1 mol/L",
      },
    ],
  ],
  ["molarSolubility", [{ solid: "CaCO3", form: "calcite" }]],
  [
    "solubilityDiagram",
    [
      {
        formulas: ["KNO3"],
        points: [
          { celsius: 20, grams: 10, label: "x" },
          { celsius: 30, grams: 10, label: "y" },
        ],
        path: true,
        width: 300,
        height: 300,
      },
    ],
  ],
  [
    "willPrecipitate",
    [
      {
        solid: "BaSO4",
        form: undefined,
        solutions: [
          {
            volume: "10 mL",
            ions: [
              { ion: "Ba^2+", concentration: "0.1 mol/L" },
              { ion: "SO4^2-", concentration: "0.1 mol/L" },
            ],
          },
        ],
        ionicStrength: "0.1 mol/L",
      },
    ],
  ],
  [
    "precipitationOrder",
    [
      {
        precipitant: "CrO4^2-",
        solids: [
          { solid: "BaCrO4", form: undefined, concentration: "0.01 mol/L" },
          { solid: "SrCrO4", concentration: "0.01 mol/L" },
        ],
      },
    ],
  ],
  ["lossToLiquor", [{ formula: "KNO3", water: "200 g", temperature: "10 °C", of: "100 g", solubility: "20 g" }]],
  ["lossToLiquor", [{ formula: "BaSO4", water: "200 g", temperature: "25 °C" }]],
  [
    "fractionalCrystallization",
    [
      {
        wanted: "KNO3",
        other: "NaCl",
        from: [
          { formula: "NaNO3", mass: "85 g" },
          { formula: "KCl", mass: "74.6 g" },
        ],
        water: "100 g",
        hot: "100 °C",
        cold: "10 °C",
      },
    ],
  ],
  ["saturatedSolution", [{ formula: "CuSO4·5H2O", temperature: "20 °C", density: "1.2 g/mL" }]],
  ["solubilityProduct", ["CaCO3", "calcite"]],
  ["gasSolubility", ["CO2", "20 °C", "total"]],
  ["retainedLiquor", ["hydroxide gel", "gravity"]],
  ["solubilityOf", ["NaCl", "20 °C"]],
  ["solubilityFromJSON", [JSON.parse(JSON.stringify(preparative.solubilityOf("NaCl", "20 °C")))]],
  [
    "washPlan",
    [
      {
        dryCakeMass: "25 g",
        kindOfSolid: "hydroxide gel",
        filter: "gravity",
        saltMassInLiquor: "10 g",
        liquorVolume: "100 mL",
        washVolume: "900 mL",
        targetResidue: "0.2 %",
        method: "displacement",
        product: { formula: "CaCO3", temperature: "20 °C" },
      },
    ],
  ],
  [
    "washPlan",
    [
      {
        dryCakeMass: "25 g",
        retainedLiquorPerGram: "2 mL/g",
        saltConcentration: "117 g/L",
        washVolume: "250 mL",
        targetResidue: "0.2 %",
      },
    ],
  ],
  ["washAdvice", [{ product: "CaCO3", washedOut: ["Na2SO4"], temperature: "20 °C" }]],
  ["formationEnthalpy", ["SiO2", { state: "s", form: "quartz" }]],
  ["solutionEnthalpy", ["KNO3"]],
  ["sulfuricAcidDilution", ["10"]],
  [
    "temperatureRise",
    [
      {
        enthalpy: "-42 kJ/mol",
        amount: "1 mol",
        mass: "1 kg",
        heatCapacity: "4.2 J/(g K)",
        start: "20 °C",
        hydrates: ["Na2SO4·10H2O"],
      },
    ],
  ],
  ["temperatureRise", [{ heat: "-42 kJ", mass: "1 kg" }]],
  ["waterCarriedByGas", [{ gas: "1 mol", temperature: "25 °C", pressure: "100 kPa" }]],
  [
    "planPreparation",
    [
      {
        equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
        product: "CaCO3",
        materials: [
          { name: "a", form: "CaCl2·2H2O", assay: "95 %", pack: { size: "1 kg", price: "3 EUR" } },
          { name: "b", form: "Na2CO3", excess: "5 %" },
        ],
        scale: { product: "20 g" },
        temperature: "20 °C",
        pressure: "101 kPa",
        readability: { mass: "0.1 g", volume: "1 mL" },
        washing: { residue: "0.5 %" },
      },
    ],
  ],
  ["balance", [{ reactants: ["H2", "O2"], products: ["H2O"] }, {}]],
  ["balance", ["C + O2 -> CO + CO2", { conditions: [{ species: ["CO", "CO2"], ratio: "1:3" }], n: 1 }]],
  ["halfReactions", ["MnO4- + Fe^2+ -> Mn^2+ + Fe^3+", { medium: "acid", spectators: "keep" }]],
  [
    "overallEquation",
    [["CaCO3 -> CaO + CO2", "CaO + H2O -> Ca(OH)2"], { intermediates: ["CaO"], multipliers: [1, 1] }],
  ],
  ["reactionSpace", ["C + O2 -> CO + CO2", { limit: 10 }]],
  ["integerNullspace", [[[2, 0, -2] as unknown, [0, 2, -1]]]],
  ["dilute", [{ from: "37 % w/w", take: "10 mL", makeUpTo: "100 mL", of: "HCl", fromDensity: "1.18 g/mL" }]],
  [
    "mixSolutions",
    [
      [
        { strength: "5 % w/w", portion: "10 g" },
        { strength: "10 % w/w", portion: "10 g", density: "1.07 g/mL" },
      ],
      { of: "NaCl", additiveVolumes: true },
    ],
  ],
  ["mixToStrength", [{ strong: "20 % w/w", weak: "5 % w/w", wanted: "10 % w/w", mass: "100 g", of: "NaCl" }]],
  [
    "stockSolution",
    [
      {
        of: "NaCl",
        strength: "0.1 mol/L",
        volume: "250 mL",
        assay: "99 %",
        glassware: { with: "volumetric flask", class: "A", temperature: "22 °C" },
      },
    ],
  ],
  [
    "feedAmount",
    ["HCl", { volume: "10 mL", strength: "5 %", strengthOptions: { basis: "w/w" }, density: "1.02 g/mL" }],
  ],
  ["feedAmount", ["H2", { volume: "10 L", gas: { temperature: "20 °C", pressure: "100 kPa" } }]],
  [
    "requiredAmount",
    ["HCl + NaOH -> NaCl + H2O", { NaOH: { mass: "1 g", assay: "98 %" } }, "HCl", { strength: "1 mol/L" }],
  ],
  ["gasVolumeAt", ["1 L", { from: { temperature: "20 °C" }, to: { pressure: "90 kPa", collectedOver: "water" } }]],
  ["gasPressure", [["1 mol", "2 mol"], { volume: "10 L", temperature: "20 °C" }]],
  ["replicateStatistics", [["10.1 mL", "10.2 mL", "10.1 mL"], { concordance: "0.1 mL", level: 0.95, label: "titres" }]],
  [
    "titrate",
    [
      {
        titrant: { strength: "0.1 mol/L", of: "NaOH", options: { density: "1 g/mL" } },
        titre: { initial: "0.1 mL", final: "10.2 mL" },
        leftOut: [],
        blank: "0.1 mL",
        analyte: "HCl",
        sample: "25 mL",
        equation: "HCl + NaOH -> NaCl + H2O",
      },
    ],
  ],
  [
    "backTitrate",
    [
      {
        titrant: { strength: "0.1 mol/L" },
        titre: { initial: "0.1 mL", final: "10.2 mL" },
        reagent: { strength: "0.1 mol/L" },
        reagentVolume: "25 mL",
        analyte: "CaCO3",
        sample: "0.1 g",
        titrantPerReagent: 1,
        reagentPerAnalyte: "2",
      },
    ],
  ],
  [
    "standardise",
    [
      {
        of: "HCl",
        standard: "Na2CO3",
        purity: "99.9 %",
        portions: [{ mass: "0.2 g", titre: { initial: "0.1 mL", final: "20.2 mL" } }],
        blank: "0.1 mL",
        equation: { reactants: ["Na2CO3", "HCl"], products: ["NaCl", "H2O", "CO2"] },
      },
    ],
  ],
  ["meanHydration", [{ salt: "Na2CO3", before: "6 g", after: "5 g", vessel: "1 g" }]],
  ["hydrateMixUps", [{ observed: "15.6 g", expected: "10 g", of: ["ZnSO4"], relativeUncertainty: 0.02 }]],
  ["cautions", [["vinegar", { material: "NaOH", strength: "5 %", inCylinder: false }], { circumstances: ["kitchen"] }]],
  ["search", ["copper", { limit: 3 }]],
  ["shelfMaterialOf", [preparative.shopMaterial("vinegar").candidates[0]]],
  ["pricePerMole", [{ formula: "NaCl", price: "1 EUR", size: "1 kg", assay: "99 %" }]],
  ["reactionEnthalpy", ["H2 + O2 -> H2O", { states: { H2O: "l" }, forms: {} }]],
  [
    "checkRecipe",
    [
      {
        equation: ["CaCl2 + Na2CO3 -> CaCO3 + NaCl"],
        product: "CaCO3",
        productForms: ["CaCO3"],
        materials: [
          { form: ["CaCl2·2H2O", "CaCl2"], amount: ["10 g", "11 g"], assay: "95 %", writtenAs: "CaCl2" },
          { form: "Na2CO3", amount: "10 g", statedAmount: "0.1 mol", inExcess: true },
        ],
        water: ["100 mL"],
        washed: false,
        isolation: "precipitate",
        found: ["6 g"],
        stated: { percentYield: "90 %", theory: "7 g", molarMasses: [{ of: "CaCO3", value: "100 g/mol" }] },
        analysis: { parts: { Ca: "40 %" }, ignition: { before: "1 g", after: "0.56 g", residue: "CaO" } },
      },
    ],
  ],
  ["convertStrength", ["5 % w/w", { of: "CH3COOH", to: "mol/L" }]],
  ["equivalentMass", ["30.0 g", { from: "FeSO4·7H2O", to: "FeSO4·H2O" }]],
  ["hydrationNumber", [{ before: "5.000 g", after: "3.196 g", anhydrous: "CuSO4" }]],
  ["identifyByMassLoss", [{ before: "2.000 g", after: "1.439 g", candidates: ["Cu2(OH)2CO3", "CuCO3"] }]],
  ["withCorrelation", [{ a: "1.0(1) g", b: "1.0(1) g" }, [["a", "b", "0.5"]]]],
  ["meansOfPairedReadings", [{ a: ["1 g", "2 g"], b: ["1 g", "3 g"] }]],
  [
    "quantity",
    [
      { value: "1", unit: "g", standardUncertainty: "0.1", degreesOfFreedom: 3, distribution: "normal" },
      { label: "a", distribution: "normal" },
    ],
  ],
];

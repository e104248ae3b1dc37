// One good call for each door that takes a request with fields.
import * as preparative from "preparative";

/** Door and the arguments of a request it accepts. */
export const REQUESTS: readonly (readonly [name: string, args: readonly unknown[]])[] = [
  ["tryAtomicWeight", ["Cu", { convention: "midpoint", value: "63 g/mol", massNumberIfNone: true }]],
  [
    "tryMolarMass",
    ["CuSO4", { convention: "midpoint", weights: { Cu: "63 g/mol" }, massNumberIfNone: true, electronMass: true }],
  ],
  ["tryMonoisotopicMass", ["SO4^2-", { electronMass: true }]],
  ["tryMassFractionOf", ["Cu", "CuSO4", { weights: { Cu: "63 g/mol" } }]],
  ["tryOxideEquivalents", ["FeCO3", { oxides: ["FeO"], convention: "abridged", weights: {} }]],
  ["tryMassAs", ["1 g", "ZnCO3", "ZnO", { element: "Zn", weights: {}, convention: "abridged" }]],
  ["tryEmpiricalFormula", [{ C: "92.3 %" }, { molarMass: "78 g/mol", remainder: "H", maxMultiplier: 9, weights: {} }]],
  ["tryParseFormula", ["CuxSO4·nH2O", { n: 3, x: 2, digitsBeforeSign: "charge" }]],
  ["tryCarbonateVerdict", [{ metal: "Cu^2+", precipitant: "soda", concentration: "0.1 mol/L" }]],
  ["trySolidConversion", [{ from: "SrSO4", to: "SrCO3" }]],
  [
    "tryCrystallise",
    [
      {
        formula: "KNO3",
        mass: "100 g",
        hot: "80 °C",
        cold: "10 °C",
        headroom: "1.1",
        hotSolubility: "169 g",
        coldSolubility: "21 g",
        evaporateTo: "0.5",
      },
    ],
  ],
  [
    "tryCrystallise",
    [{ formula: "CuSO4·5H2O", mass: "100 g", hot: "80 °C", cold: "10 °C", water: "100 g", evaporateTo: "0.5" }],
  ],
  [
    "tryWaterForLiquor",
    [{ salts: [{ formula: "KNO3", mass: "10 g", solubility: "30 g" }], temperature: "20 °C", headroom: "1.2" }],
  ],
  [
    "tryWaterToDissolve",
    [{ formula: "KNO3", mass: "10 g", solubility: "30 g", temperature: "20 °C", headroom: "1.2" }],
  ],
  ["tryHydroxideWindow", [{ metal: "Al^3+", concentration: "0.1 mol/L", residual: "1e-5 mol/L", form: "a" }]],
  [
    "tryStaysDissolved",
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
    "tryMolarSolubility",
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
  ["tryMolarSolubility", [{ solid: "CaCO3", form: "calcite" }]],
  [
    "tryDrawSolubility",
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
    "tryWillPrecipitate",
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
    "tryPrecipitationOrder",
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
  ["tryResidual", [{ formula: "KNO3", water: "200 g", temperature: "10 °C", of: "100 g", solubility: "20 g" }]],
  ["tryResidual", [{ formula: "BaSO4", water: "200 g", temperature: "25 °C" }]],
  [
    "trySeparateSaltPair",
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
  ["trySaturatedSolution", [{ formula: "CuSO4·5H2O", temperature: "20 °C", density: "1.2 g/mL" }]],
  ["trySolubilityProduct", ["CaCO3", "calcite"]],
  ["tryGasSolubility", ["CO2", "20 °C", "total"]],
  ["tryRetainedLiquor", ["hydroxide gel", "gravity"]],
  ["trySolubilityOf", ["NaCl", "20 °C"]],
  ["trySolubilityFromJSON", [JSON.parse(JSON.stringify(preparative.solubilityOf("NaCl", "20 °C")))]],
  [
    "tryWashPlan",
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
    "tryWashPlan",
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
  ["tryWashAdvice", [{ product: "CaCO3", washedOut: ["Na2SO4"], temperature: "20 °C" }]],
  ["tryFormationEnthalpy", ["SiO2", { state: "s", form: "quartz" }]],
  ["trySolutionEnthalpy", ["KNO3"]],
  ["trySulfuricAcidDilution", ["10"]],
  [
    "tryTemperatureRise",
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
  ["tryTemperatureRise", [{ heat: "-42 kJ", mass: "1 kg" }]],
  ["tryWaterSweptByGas", [{ gas: "1 mol", temperature: "25 °C", pressure: "100 kPa" }]],
  [
    "tryPlanPreparation",
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
  ["tryBalance", [{ reactants: ["H2", "O2"], products: ["H2O"] }, {}]],
  ["tryBalance", ["C + O2 -> CO + CO2", { conditions: [{ species: ["CO", "CO2"], ratio: "1:3" }], n: 1 }]],
  ["tryHalfReactions", ["MnO4- + Fe^2+ -> Mn^2+ + Fe^3+", { medium: "acid", spectators: "keep" }]],
  [
    "tryOverallEquation",
    [["CaCO3 -> CaO + CO2", "CaO + H2O -> Ca(OH)2"], { intermediates: ["CaO"], multipliers: [1, 1] }],
  ],
  ["tryReactionSpace", ["C + O2 -> CO + CO2", { limit: 10 }]],
  ["tryIntegerNullspace", [[[2, 0, -2] as unknown, [0, 2, -1]]]],
  ["tryDilute", [{ from: "37 % w/w", take: "10 mL", makeUpTo: "100 mL", of: "HCl", fromDensity: "1.18 g/mL" }]],
  [
    "tryMixSolutions",
    [
      [
        { strength: "5 % w/w", portion: "10 g" },
        { strength: "10 % w/w", portion: "10 g", density: "1.07 g/mL" },
      ],
      { of: "NaCl", additiveVolumes: true },
    ],
  ],
  ["tryMixToStrength", [{ strong: "20 % w/w", weak: "5 % w/w", wanted: "10 % w/w", mass: "100 g", of: "NaCl" }]],
  [
    "tryStockSolution",
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
    "tryFeedAmount",
    ["HCl", { volume: "10 mL", strength: "5 %", strengthOptions: { basis: "w/w" }, density: "1.02 g/mL" }],
  ],
  ["tryFeedAmount", ["H2", { volume: "10 L", gas: { temperature: "20 °C", pressure: "100 kPa" } }]],
  [
    "tryNeededFor",
    ["HCl + NaOH -> NaCl + H2O", { NaOH: { mass: "1 g", assay: "98 %" } }, "HCl", { strength: "1 mol/L" }],
  ],
  ["tryGasVolumeAt", ["1 L", { from: { temperature: "20 °C" }, to: { pressure: "90 kPa", collectedOver: "water" } }]],
  ["tryGasPressure", [["1 mol", "2 mol"], { volume: "10 L", temperature: "20 °C" }]],
  ["tryReplicates", [["10.1 mL", "10.2 mL", "10.1 mL"], { concordance: "0.1 mL", level: 0.95, label: "titres" }]],
  [
    "tryTitrate",
    [
      {
        titrant: { strength: "0.1 mol/L", of: "NaOH", options: { density: "1 g/mL" } },
        titre: ["10.1 mL", "10.2 mL"],
        blank: "0.1 mL",
        analyte: "HCl",
        sample: "25 mL",
        equation: "HCl + NaOH -> NaCl + H2O",
      },
    ],
  ],
  [
    "tryBackTitrate",
    [
      {
        titrant: { strength: "0.1 mol/L" },
        titre: "10.1 mL",
        reagent: { strength: "0.1 mol/L" },
        reagentVolume: "25 mL",
        analyte: "CaCO3",
        sample: "0.1 g",
        titrantPerReagent: 1,
        reagentPerAnalyte: "2",
      },
    ],
  ],
  ["tryMeanWater", [{ salt: "Na2CO3", before: "6 g", after: "5 g", vessel: "1 g" }]],
  ["tryHydrateMixUps", [{ observed: "15.6 g", expected: "10 g", of: ["ZnSO4"], relativeUncertainty: 0.02 }]],
  [
    "tryCautions",
    [["vinegar", { material: "NaOH", strength: "5 %", inCylinder: false }], { circumstances: ["kitchen"] }],
  ],
  ["trySearch", ["copper", { limit: 3 }]],
  ["tryAsShelfMaterial", [preparative.shopMaterial("vinegar").candidates[0]]],
  ["tryPricePerMole", [{ formula: "NaCl", price: "1 EUR", size: "1 kg", assay: "99 %" }]],
  ["tryReactionEnthalpy", ["H2 + O2 -> H2O", { states: { H2O: "l" }, forms: {} }]],
  [
    "tryCheckRecipe",
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
  ["tryConvertStrength", ["5 % w/w", { of: "CH3COOH", to: "mol/L" }]],
  ["tryEquivalentMass", ["30.0 g", { from: "FeSO4·7H2O", to: "FeSO4·H2O" }]],
  ["tryHydrationNumber", [{ before: "5.000 g", after: "3.196 g", anhydrous: "CuSO4" }]],
  ["tryIdentifyByMassLoss", [{ before: "2.000 g", after: "1.439 g", candidates: ["Cu2(OH)2CO3", "CuCO3"] }]],
  ["tryCorrelated", [{ a: "1.0(1) g", b: "1.0(1) g" }, [["a", "b", "0.5"]]]],
  ["tryJointReadings", [{ a: ["1 g", "2 g"], b: ["1 g", "3 g"] }]],
  [
    "tryQuantity",
    [
      { value: "1", unit: "g", standardUncertainty: "0.1", degreesOfFreedom: 3, distribution: "normal" },
      { label: "a", distribution: "normal" },
    ],
  ],
];

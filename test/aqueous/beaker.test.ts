// Bench questions whose outcome is known. Where a figure is given it is the ligand or proton balance with the constants of
// the tables, worked out beside the case; outcomes are the trade's (from memory where no book is named).
import { describe, expect, it } from "vitest";
import {
  type AqueousRequest,
  aqueousComposition,
  bufferCapacity,
  doseToPH,
  endPoints,
  fromJSON,
  indicatorFor,
  redissolving,
  titrationCurve,
  uncertaintyBudget,
} from "../../src";
import { OXIDANTS, REDUCTANTS } from "../../src/aqueous/data/potentials";
import { SOLUBILITY_PRODUCTS } from "../../src/aqueous/data/products";
import { redoxPartners } from "../../src/aqueous/mixture/coverage";
import { network } from "../../src/aqueous/mixture/given";
import { keyOf } from "../../src/aqueous/mixture/notation";

type Mixture = Readonly<Record<string, number>>;

const litre = (mixture: Mixture, more: Partial<AqueousRequest> = {}) =>
  aqueousComposition({
    water: "1 L",
    dissolved: Object.entries(mixture).map(([formula, moles]) => ({ formula, amount: `${moles} mol` as const })),
    ...more,
  });

const solids = (c: ReturnType<typeof litre>): string[] => c.solids.map(({ formula }) => formula);

const left = (c: ReturnType<typeof litre>, ion: string): number =>
  c.filtrate.find(({ formula }) => formula === ion)!.share!.value.toNumber();

describe("lime and aluminium", () => {
  // by standing: ettringite from lime and sulfate, hydrogarnet from lime and aluminate, which is the stable one above 20 °C
  // (Lothenbach, Pelletier-Chaignat and Winnefeld, Cement and Concrete Research 42, 1621 (2012), abstract)
  it("give ettringite with sulfate, hydrogarnet without, by standing", () => {
    const alum = { "Ca(OH)2": 0.06, "Al2(SO4)3": 0.01 };
    expect(solids(litre(alum, { solids: "aged" }))).toContain("Ca6Al2(SO4)3(OH)12·26H2O");
    expect(solids(litre({ "Ca(OH)2": 0.03, "NaAl(OH)4": 0.02 }, { solids: "aged" }))).toEqual(["Ca3Al2(OH)12"]);
  });

  it("holds the ions that its dissolution gives: three calcium for two aluminium", () => {
    const { species } = litre({ "Ca3Al2(OH)12": 0.002 });
    const total = (element: string): number =>
      species.reduce((all, { formula, molality }) => all + (formula.includes(element) ? molality.toNumber() : 0), 0);
    expect(total("Ca")).toBeCloseTo(0.006, 6);
    expect(total("Al")).toBeCloseTo(0.004, 6);
  });

  // Ca6Al2(SO4)3(OH)12·26H2O -> 6 Ca2+ + 2 Al(OH)4- + 3 SO4^2- + 4 OH- + 26 H2O, log K -44.9, with Al(OH)4- from Al3+ and
  // water -22.88: a thesis of Eawag and Empa on the hydration of cement, table 3.4, which is no source of the table
  it("has a solubility product of ettringite as another laboratory gives it", () => {
    const other = 44.9 + 2 * (4 * 14 - 22.88);
    const own = SOLUBILITY_PRODUCTS().find(({ name }) => name === "ettringite")!;
    expect(Math.abs(Number(own.pKsp) - other)).toBeLessThan(0.5);
  });
});

describe("protons, ligands and activities are in the balance", () => {
  it.each([
    ["oxalate at pH 0: Q = 2e-10", { CaCl2: 0.01, Na2C2O4: 0.01 }, { pH: 0 }],
    ["carbonate at pH 5", { CaCl2: 0.01, Na2CO3: 0.01 }, { pH: 5 }],
    ["barium and carbonate at pH 3", { BaCl2: 0.01, Na2CO3: 0.01 }, { pH: 3 }],
    ["struvite at pH 3", { MgCl2: 0.01, NH4Cl: 0.01, Na3PO4: 0.01 }, { pH: 3 }],
    ["calcium phosphate at pH 2", { CaCl2: 0.01, Na3PO4: 0.0067 }, { pH: 2 }],
    ["copper in 2 M ammonia at pH 11", { CuSO4: 0.05, NH3: 2 }, { pH: 11 }],
    ["silver chloride 0.01 M in 1 M ammonia", { AgNO3: 0.01, NaCl: 0.01, NH3: 1 }, {}],
    ["zinc at pH 14: zincate", { ZnSO4: 0.1 }, { pH: 14 }],
    ["copper oxalate in oxalate", { CuSO4: 0.05, K2C2O4: 0.5 }, {}],
    ["calcium carbonate with EDTA", { CaCl2: 0.01, Na2CO3: 0.01, Na4C10H12N2O8: 0.02 }, {}],
    ["silver chloride in strong chloride", { AgNO3: 0.001, NaCl: 2.5 }, {}],
    ["calcium and sulfate 0.01 M: gypsum dissolves to 0.0151 M", { CaCl2: 0.01, Na2SO4: 0.01 }, {}],
  ] as const)("%s stays clear", (_, mixture, more) => {
    expect(solids(litre(mixture, more))).toEqual([]);
  });

  it("leaves 35 % of zinc in half-molar oxalate and lead in strong iodide", () => {
    expect(left(litre({ ZnSO4: 0.05, K2C2O4: 0.5 }), "Zn^2+")).toBeCloseTo(0.35, 1);
    expect(left(litre({ "Pb(NO3)2": 0.01, KI: 2.5 }), "Pb^2+")).toBeGreaterThan(0.02);
  });
});

describe("what the reaction itself makes holds part back", () => {
  it("keeps magnesium hydrogencarbonate in solution until the carbon dioxide has gone", () => {
    const mixture = { MgSO4·7H2O: 0.3, NaHCO3: 0.6 };
    expect(solids(litre(mixture))).toEqual([]);
    const aired = litre(mixture, { carbonDioxide: "leaves" });
    expect(solids(aired)).toEqual(["MgCO3·3H2O"]);
    expect(left(aired, "Mg^2+")).toBeCloseTo(0.23, 1);
  });

  it("leaves most magnesium in ammonia: the ammonium holds it", () => {
    const mixture = { MgSO4·7H2O: 0.3, NH3: 0.6 };
    expect(left(litre(mixture), "Mg^2+")).toBeGreaterThan(0.8);
    const aged = left(litre(mixture, { solids: "aged" }), "Mg^2+");
    expect(aged).toBeGreaterThan(0.4);
    expect(aged).toBeLessThan(0.6);
  });

  it("drops half of the nickel as hydrated carbonate, all of it as hydroxide once aired", () => {
    const mixture = { NiSO4·6H2O: 0.2, NaHCO3: 0.4 };
    const kept = litre(mixture);
    expect(solids(kept)).toEqual(["NiCO3·5.5H2O"]);
    expect(left(kept, "Ni^2+")).toBeCloseTo(0.54, 1);
    expect(solids(litre(mixture, { carbonDioxide: "leaves" }))).toEqual(["Ni(OH)2"]);
  });

  it("loses 9 % of calcium to the acid that oxalic acid sets free", () => {
    const c = litre({ CaCl2: 0.3, H2C2O4·2H2O: 0.3 });
    expect(left(c, "Ca^2+")).toBeCloseTo(0.09, 2);
    expect(c.pH.value.toNumber()).toBeCloseTo(0.4, 1);
  });

  it("does not take magnesium for nickel", () => {
    expect(solids(litre({ MgCl2: 0.2, NiO: 0.2 }))).toEqual(["Ni(OH)2"]);
  });

  it("dissolves aluminium hydroxide in excess lye: 5 % takes 15 %, 50 % takes all", () => {
    expect(left(litre({ AlCl3: 0.1667, NaOH: 0.525 }), "Al^3+")).toBeCloseTo(0.15, 2);
    const all = litre({ AlCl3: 0.1667, NaOH: 0.75 });
    expect(solids(all)).toEqual([]);
    expect(all.pH.value.toNumber()).toBeCloseTo(12.8, 1);
  });

  it("leaves about 60 % of zinc with lye in 100 % excess", () => {
    expect(1 - left(litre({ ZnSO4: 0.1667, NaOH: 0.667 }), "Zn^2+")).toBeCloseTo(0.61, 1);
  });

  it("does not dissolve chromium hydroxide at pH 12.5", () => {
    expect(left(litre({ CrCl3: 0.05 }, { pH: 12.5 }), "Cr^3+")).toBeLessThan(0.05);
  });

  it("turns strontium sulfate into carbonate, barium sulfate by a twentieth only", () => {
    expect(solids(litre({ SrSO4: 0.1, Na2CO3: 0.105 }))).toEqual(["SrCO3"]);
    const barium = litre({ BaSO4: 0.1, Na2CO3: 0.105 });
    expect(solids(barium)).toEqual(["BaSO4", "BaCO3"]);
    // K = Ksp(BaSO4)/Ksp(BaCO3) = 10^(8.57 - 9.98) = 0.04 = [SO4]/[CO3]
    expect(barium.solids[1]!.amount.value.toNumber()).toBeCloseTo(0.005, 3);
  });
});

describe("carbonates: normal or basic (0.1 M, 5 % excess of soda)", () => {
  const soda = (salt: string, more: Partial<AqueousRequest> = {}) => litre({ [salt]: 0.1, Na2CO3: 0.105 }, more);

  it.each([
    ["CaCl2", "CaCO3"],
    ["SrCl2", "SrCO3"],
    ["BaCl2", "BaCO3"],
    ["MnCl2", "MnCO3"],
    ["CdCl2", "CdCO3"],
    ["CuCl2", "Cu2(OH)2CO3"],
    ["SnCl2", "Sn(OH)2"],
  ])("%s gives %s", (salt, solid) => expect(solids(soda(salt))).toEqual([solid]));

  it.each(["FeCl3", "CrCl3"])("%s gives its hydroxide", (salt) => {
    const c = litre({ [salt]: 0.1, Na2CO3: 0.158 });
    expect(solids(c)).toEqual([`${salt.slice(0, 2)}(OH)3`]);
    expect(c.unknown).toEqual([]);
  });

  it("gives aluminium hydroxide", () => {
    expect(solids(litre({ AlCl3: 0.1, Na2CO3: 0.158 }))[0]).toBe("Al(OH)3");
  });

  it("gives iron(II) and cobalt carbonate with hardly any hydroxide", () => {
    expect(soda("FeCl2").solids[0]!.amount.value.toNumber()).toBeGreaterThan(0.099);
    expect(soda("CoCl2").solids[0]!.amount.value.toNumber()).toBeGreaterThan(0.098);
  });

  it("decides zinc, nickel and lead by whether carbon dioxide leaves", () => {
    expect(solids(soda("ZnSO4"))).toEqual(["ZnCO3·H2O", "Zn5(OH)6(CO3)2"]);
    expect(solids(soda("ZnSO4", { carbonDioxide: "leaves" }))).toEqual(["Zn5(OH)6(CO3)2"]);
    expect(solids(soda("NiCl2"))[0]).toBe("NiCO3·5.5H2O");
    expect(solids(soda("NiCl2", { carbonDioxide: "leaves" }))).toEqual(["Ni(OH)2"]);
    expect(solids(soda("Pb(NO3)2"))[0]).toBe("PbCO3");
    expect(solids(soda("Pb(NO3)2", { carbonDioxide: "leaves" }))).toEqual(["Pb3(OH)2(CO3)2"]);
  });

  it("leaves a good part of magnesium dissolved with soda", () => {
    const c = soda("MgSO4");
    expect(c.solids[0]!.formula).toBe("MgCO3·3H2O");
    expect(left(c, "Mg^2+")).toBeGreaterThan(0.2);
  });

  it("tells the pH of the filtrate", () => {
    for (const salt of ["CaCl2", "SrCl2", "BaCl2", "MnCl2", "CdCl2"])
      expect(soda(salt).pH.value.toNumber()).toBeCloseTo(10.7, 1);
    expect(soda("CuCl2").pH.value.toNumber()).toBeCloseTo(5.7, 1);
    const bicarbonate = litre({ CaCl2: 0.1, NaHCO3: 0.21 });
    expect(left(bicarbonate, "Ca^2+")).toBeCloseTo(0.096, 2);
    expect(bicarbonate.pH.value.toNumber()).toBeCloseTo(6.1, 1);
  });
});

describe("ammonia: complexes and hydroxides", () => {
  it("turns copper from basic sulfate to the deep blue ion", () => {
    expect(solids(litre({ CuSO4: 0.05, NH3: 0.05 }))).toContain("Cu4(OH)6SO4");
    const half = left(litre({ CuSO4: 0.05, NH3: 0.3 }), "Cu^2+");
    expect(half).toBeGreaterThan(0.4);
    expect(half).toBeLessThan(0.7);
    expect(left(litre({ CuSO4: 0.05, NH3: 1 }), "Cu^2+")).toBeGreaterThan(0.9);
  });

  it.each(["ZnSO4", "NiSO4", "CdSO4", "AgNO3"])("takes %s into solution", (salt) => {
    const c = litre({ [salt]: 0.02, NH3: 1 });
    expect(
      Math.max(...c.filtrate.filter((f) => /^(Zn|Ni|Cd|Ag)/.test(f.formula)).map((f) => f.share!.value.toNumber())),
    ).toBeGreaterThan(0.9);
  });

  it.each(["FeCl3", "MnSO4", "CrCl3"])("leaves %s as hydroxide", (salt) => {
    const c = litre({ [salt]: 0.02, NH3: 1 });
    expect(c.solids[0]!.amount.value.toNumber()).toBeGreaterThan(0.0199);
  });
});

describe("figures that are derivatives", () => {
  const pair = { CH3COOH: "0.0500(5) mol", CH3COONa: "0.0500(5) mol" } as const;
  const buffer = () =>
    aqueousComposition({
      water: "1 L",
      dissolved: Object.entries(pair).map(([formula, amount]) => ({ formula, amount })),
    });

  it("a buffer capacity carries the uncertainty of what was weighed", () => {
    // β = ln 10 · c/4 at equal parts: each part of 0.05 mol counts half of it, 1 % of each gives 0.5 %·sqrt 2
    const capacity = bufferCapacity(buffer());
    const relative = capacity.standardUncertainty!.dividedBy(capacity.value).toNumber();
    expect(relative).toBeCloseTo(0.005 * Math.SQRT2, 4);
  });

  it("an indicator's error moves with the constant of the acid", () => {
    const curve = titrationCurve({
      flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
      burette: { formula: "NaOH", concentration: "0.1 mol/L" },
    });
    const red = indicatorFor(endPoints(curve)[0]!).find(({ name }) => name === "methyl red")!;
    // at its first change 1/(1 + 10^(pH − pKa)) of the acid is left: d(error)/d(pKa) = ln 10 · x(1 − x), with x = 0.664 as given
    const x = Math.abs(red.error.in("%").toNumber()) / 100;
    const line = uncertaintyBudget(red.error).find(({ quantity }) => quantity.symbol === "pKa(CH3COOH)")!;
    // within 5 %: dilution by the burette and activities stand aside in this formula
    expect(Math.abs(line.sensitivity.toNumber()) / 100 / (Math.LN10 * x * (1 - x))).toBeCloseTo(1, 1);
    expect(red.error.standardUncertainty!.isZero()).toBe(false);
  });

  it("an answer is plain data whose figures read back one by one", () => {
    const data = JSON.parse(JSON.stringify(buffer()));
    expect(String(fromJSON(data.pH))).toBe(String(buffer().pH));
    expect(() => fromJSON(data)).toThrowError(expect.objectContaining({ code: "json.unknown-record" }));
  });
});

describe("doses", () => {
  it.each([
    [8.3, 0.0988],
    [7, 0.1145],
    [4.5, 0.1994],
  ])("brings 0.1 M soda to pH %d with %d mol of acid, the gas that leaves counted", (to, moles) => {
    const dose = doseToPH({
      solution: { volume: "1 L", dissolved: [{ formula: "Na2CO3", concentration: "0.1 mol/L" }] },
      to,
      with: { formula: "HCl", concentration: "10 mol/L" },
    });
    expect(dose.amount.value.toNumber() / moles).toBeCloseTo(1, 2);
    expect(dose.pH.value.toNumber()).toBeCloseTo(to, 8);
  });

  it("agrees with the multiplier of a held pH", () => {
    const held = litre({ CH3COOH: 0.1 }, { pH: 4.7, activity: "ideal" });
    const dose = doseToPH({
      solution: { volume: "1 L", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
      to: 4.7,
      with: "NaOH",
      activity: "ideal",
    });
    expect(dose.amount.value.toNumber() / held.dose["OH-"]!.value.toNumber()).toBeCloseTo(1, 2);
  });

  it("takes a good of the shop by its name, at its usual strength, and says so", () => {
    const soda = { volume: "1 L", dissolved: [{ formula: "Na2CO3", concentration: "0.1 mol/L" }] } as const;
    const vinegar = doseToPH({ solution: soda, to: 7, with: "vinegar" });
    const acid = doseToPH({ solution: soda, to: 7, with: { formula: "CH3COOH", strength: "50 g/L" } });
    // 50 g/L over 60.05 g/mol is 0.8326 mol/L
    expect(acid.volume!.in("mL").toNumber() / ((1000 * acid.amount.in("mol").toNumber()) / 0.8326)).toBeCloseTo(1, 4);
    expect(vinegar.volume!.in("mL").toNumber()).toBeCloseTo(acid.volume!.in("mL").toNumber(), 6);
    // 40 to 60 g/L: at least 11.5 % of the volume
    expect(vinegar.volume!.standardUncertainty!.dividedBy(vinegar.volume!.value).toNumber()).toBeGreaterThan(0.115);
    expect(vinegar.assumptions.join()).toContain("50.0 ± 5.8 g/L CH3COOH");
    expect(vinegar.assumptions.join()).toContain("cleaning vinegar");
    const crystals = doseToPH({
      solution: { volume: "1 L", dissolved: [{ formula: "HCl", concentration: "0.1 mol/L" }] },
      to: 6,
      with: "washing soda",
    });
    // crystals of 98.5 %: 286.14 g/mol
    const { amount, mass } = crystals;
    expect(mass!.in("g").toNumber() / ((amount.in("mol").toNumber() * 286.14) / 0.985)).toBeCloseTo(1, 3);
    expect(() => doseToPH({ solution: soda, to: 7, with: "moon dust" })).toThrowError(
      expect.objectContaining({ name: "SubstanceError" }),
    );
  });

  it("tells what dissolves a solid again, and what does not", () => {
    const silver = redissolving({ solid: "AgCl", amountOfSolid: "0.01 mol", with: "NH3", water: "1 kg" });
    // s = sqrt(Ksp β2)·[NH3] with the tables' 9.75 and 7.22: 0.0543·[NH3] = 0.01, and 0.02 bound
    expect(silver.needed.value.toNumber()).toBeCloseTo(0.01 / 10 ** ((7.22 - 9.75) / 2) + 0.02, 1);
    expect(() => redissolving({ solid: "BaSO4", amountOfSolid: "0.1 mol", with: "HCl", water: "1 kg" })).toThrowError(
      expect.objectContaining({ code: "aqueous.out-of-reach" }),
    );
  });
});

describe("what it does not know is said", () => {
  it("names a pair without a constant", () => {
    expect(litre({ "Bi(NO3)3": 0.1, Na2CO3: 0.2 }).unknown.join()).toMatch(/Bi\^3\+ with CO3\^2-/);
    expect(litre({ CdCl2: 0.1, Na2MoO4: 0.1 }).unknown.join()).toMatch(/Cd\^2\+ with MoO4/);
    expect(litre({ BaCl2: 0.1, Na3C6H5O7: 0.1 }).unknown.join()).toMatch(/Ba\^2\+ with C6H5O7/);
  });

  it("names redox partners", () => {
    expect(litre({ CuSO4: 0.1, KI: 0.1 }).warnings.join()).toMatch(/Cu\^2\+ oxidises I-/);
    expect(litre({ FeSO4: 0.01, KMnO4: 0.01 }).warnings.join()).toMatch(/MnO4- oxidises Fe\^2\+/);
  });

  it("says nothing of pairs and partners where only the caller's constants count", () => {
    const only = { constants: { only: true, pKw: 14 } } as const;
    const molybdate = { CdCl2: 0.1, Na2MoO4: 0.1 };
    expect(litre(molybdate).unknown).not.toEqual([]);
    expect(litre(molybdate, only).unknown).toEqual([]);
    expect(litre({ CuSO4: 0.1, KI: 0.1 }, only).warnings.join()).not.toContain("oxidises");
    // constants beside the tables leave both said
    const beside = { constants: { pKsp: { AgCl: "9.75" } } } as const;
    expect(litre(molybdate, beside).unknown).toEqual(litre(molybdate).unknown);
    expect(litre({ CuSO4: 0.1, KI: 0.1 }, beside).warnings.join()).toContain("Cu^2+ oxidises I-");
  });

  it("does not take both forms of one metal, or a pair within a tenth of a volt, for partners", () => {
    // Fe3+/Fe2+ 0.77 V is its own half: nothing to win
    expect(litre({ FeCl2: 0.01, FeCl3: 0.01 }).warnings.join()).not.toContain("oxidises");
    for (const [oxidant, up] of OXIDANTS)
      for (const [reductant, down] of REDUCTANTS)
        if (oxidant !== reductant && Math.abs(up - down) > 0.001)
          expect(
            redoxPartners(network(), [keyOf(oxidant), keyOf(reductant)]).length > 0 && up - down < 0.1,
            `${oxidant} and ${reductant}`,
          ).toBe(false);
  });

  it("refuses strong solutions, charges that do not cancel, and unknown options", () => {
    const code = (request: unknown): string => {
      try {
        aqueousComposition(request as AqueousRequest);
      } catch (error) {
        return (error as { code: string }).code;
      }
      return "answered";
    };
    expect(code({ water: "1 kg", dissolved: [{ formula: "NaCl", amount: "4 mol" }] })).toBe("aqueous.too-strong");
    expect(code({ water: "1 kg", dissolved: [{ formula: "Zn^2+", amount: "1 mmol" }] })).toBe("aqueous.charged");
    expect(code({ water: "1 kg", dissolved: [], colour: 1 })).toBe("aqueous.unknown-option");
    expect(code({ water: "1 kg", dissolved: [{ formula: "NaCl" }] })).toBe("aqueous.missing-option");
    expect(code({ water: "1 kg", dissolved: [], temperature: "80 °C" })).toBe("aqueous.outside-range");
    expect(code({ water: "0 kg", dissolved: [] })).toBe("aqueous.not-positive");
  });

  it("names the doubtful constant that carries the doubt of the pH first", () => {
    const { warnings } = litre({ ZnSO4: 0.1, Na2CO3: 0.105 });
    expect(warnings[0]).toMatch(
      /^doubtful: \d\d % of the variance of the pH is that of the pKsp of basic zinc carbonate/,
    );
    // everything known well
    expect(litre({ NaHCO3: 0.025, Na2CO3: 0.025 }).warnings.filter((text) => text.startsWith("doubtful"))).toEqual([]);
  });

  it("calls a solid within the doubt of its constant either", () => {
    const c = litre({ FeCl2: 0.1, Na2CO3: 0.105 });
    expect(c.solids.find(({ formula }) => formula === "Fe(OH)2")?.either).toBe(true);
    expect(c.saturation.find(({ formula }) => formula === "Fe(OH)2")?.state).toBe("either");
  });

  it("gives both answers whole where the doubt leaves open which solids stand", () => {
    // the figure itself says so: 0.00044 ± 0.00063 mol of hydroxide
    const c = litre({ FeCl2: 0.1, Na2CO3: 0.105 });
    expect(solids(c)).toEqual(["FeCO3", "Fe(OH)2"]);
    expect(c.either.map((other) => other.solids)).toEqual([["FeCO3"]]);
    const [{ composition, when }] = c.either as [(typeof c.either)[number]];
    expect(when).toMatch(/^within the standard uncertainty: pKsp\(Fe\(OH\)2\) 0\.64 lower$/);
    expect(composition.assumptions[0]).toBe(when);
    // a whole answer: balances met, all of the iron accounted for, its own pH and filtrate
    expect(composition.balance.mass).toBeLessThan(1e-12);
    expect(composition.solids[0]!.amount.toNumber("mol") + left(composition, "Fe^2+") * 0.1).toBeCloseTo(0.1, 9);
    expect(composition.pH.toNumber()).toBeGreaterThan(c.pH.toNumber());
    expect(composition.either).toEqual([]);
    // asked in between, the answer itself stays what it was
    expect(litre({ FeCl2: 0.1, Na2CO3: 0.105 }).pH.toNumber()).toBe(c.pH.toNumber());
    expect(JSON.parse(JSON.stringify(c)).either).toHaveLength(1);
  });

  it("finds a solid that the likeliest answer does not have: white lead aired may keep some normal carbonate", () => {
    const c = litre({ "Pb(NO3)2": 0.1, Na2CO3: 0.105 }, { carbonDioxide: "leaves" });
    expect(c.either.map((other) => other.solids)).toEqual([["PbCO3", "Pb3(OH)2(CO3)2"]]);
    expect(c.saturation.find(({ formula }) => formula === "PbCO3")?.state).toBe("either");
  });

  it("has one answer where nothing is in doubt", () => {
    expect(litre({ CaCl2: 0.1, Na2CO3: 0.105 }).either).toEqual([]);
    expect(litre({ NaCl: 0.1 }).either).toEqual([]);
  });
});

describe("laws of the answer", () => {
  it("gives the same solution again from its filtrate", () => {
    const c = litre({ ZnSO4: 0.1, Na2CO3: 0.105 });
    const again = aqueousComposition({
      water: c.water.toString() as "1 kg",
      dissolved: c.filtrate.map(({ formula, amount }) => ({ formula, amount })),
      solids: { exclude: solids(c) },
    });
    expect(again.pH.value.toNumber()).toBeCloseTo(c.pH.value.toNumber(), 3);
  });

  it("scales with the amount of water", () => {
    const one = aqueousComposition({ water: "1 kg", dissolved: [{ formula: "Na2CO3", amount: "0.1 mol" }] });
    const ten = aqueousComposition({ water: "10 kg", dissolved: [{ formula: "Na2CO3", amount: "1 mol" }] });
    expect(ten.pH.value.toNumber()).toBeCloseTo(one.pH.value.toNumber(), 10);
    expect(ten.species[0]!.amount.value.toNumber() / one.species[0]!.amount.value.toNumber()).toBeCloseTo(10, 8);
  });

  it("counts crystal water and water of the reaction", () => {
    const hydrate = aqueousComposition({ water: "1 kg", dissolved: [{ formula: "Na2CO3·10H2O", amount: "1 mol" }] });
    // 10 waters in; making hydrogencarbonate and hydroxide of carbonate takes one for each hydroxide
    expect(Math.abs(hydrate.water.in("g").toNumber() - 1180.15)).toBeLessThan(0.4);
    const neutral = aqueousComposition({
      water: "1 kg",
      dissolved: [
        { formula: "NaOH", amount: "1 mol" },
        { formula: "HCl", amount: "1 mol" },
      ],
    });
    expect(neutral.water.in("g").toNumber()).toBeCloseTo(1018.015, 2);
  });

  it("proves every answer, and traces it to amounts, constants and the activity model", async () => {
    const { uncertaintyBudget } = await import("../../src");
    const c = litre({ ZnSO4: 0.1, Na2CO3: 0.105 });
    expect(c.balance.mass).toBeLessThan(1e-12);
    expect(c.balance.charge).toBeLessThan(1e-12);
    const lines = uncertaintyBudget(c.pH);
    expect(lines[0]!.input).toMatch(/basic zinc carbonate/);
    expect(lines.reduce((sum, { share }) => sum + Number(share), 0)).toBeCloseTo(1, 6);
    expect(lines.some(({ input }) => /activity model/.test(input))).toBe(true);
  });
});

describe("what an answer cannot know", () => {
  const salts = (mixture: Readonly<Record<string, number>>) =>
    aqueousComposition({
      water: "1 L",
      dissolved: Object.entries(mixture).map(([formula, moles]) => ({ formula, amount: `${moles} mol` as const })),
    });

  it("names the partners of a redox reaction: copper(II) with iodide", () => {
    expect(salts({ CuSO4: 0.05, KI: 0.1 }).warnings.join()).toContain("Cu^2+ oxidises I-");
    expect(salts({ CuSO4: 0.05, KCl: 0.1 }).warnings.join()).not.toContain("oxidises");
  });

  it("names the pair for which a solid is expected and no constant known: cadmium with molybdate", () => {
    expect(salts({ "Cd(NO3)2": 0.05, Na2MoO4: 0.1 }).unknown.join()).toContain("Cd^2+ with MoO4^2-");
  });

  it("lets all of the cerium fall with soda, of which without a constant nearly half stayed", () => {
    // pKsp 35.1 with 0.02 mol/L of carbonate left: Ce = 10^-15 mol/L, hardly more with its complexes
    const { unknown, filtrate, solids } = salts({ "Ce(NO3)3": 0.05, Na2CO3: 0.1 });
    expect(unknown).toEqual([]);
    expect(solids.map(({ formula }) => formula)).toEqual(["Ce2(CO3)3·8H2O"]);
    expect(filtrate.find(({ formula }) => formula === "Ce^3+")!.share!.toNumber("%")).toBeLessThan(0.01);
  });

  it("lets magnesium sulfite fall above its solubility of 0.05 mol/kg (0.52 g MgSO3 in 100 g water at 25 °C)", () => {
    expect(salts({ MgSO4: 0.2, Na2SO3: 0.2 }).solids.map(({ formula }) => formula)).toEqual(["MgSO3·6H2O"]);
  });

  it("lets calcium citrate fall, which was said to stay clear", () => {
    expect(salts({ CaCl2: 0.05, Na3C6H5O7: 0.03 }).solids.map(({ formula }) => formula)).toEqual(["Ca3(C6H5O7)2·4H2O"]);
  });
});

// Liquors of several salts: what else their ions can fall as, and salt pairs that do not part as asked.

import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { attempt } from "../../src/foundation/error";
import { tryPlanPreparation } from "../../src/preparation";
import { fractionalCrystallization } from "../../src/solubility/crystallising/salt-pair";
import { soluteOf } from "../../src/solubility/curves/solute";
import { SOLUBILITY } from "../../src/solubility/data/curves";
import { DOUBLE_SALTS } from "../../src/solubility/data/double-salts";
import { remainsInSolution } from "../../src/solubility/dissolving/liquor";
import { saltIons } from "../../src/solubility/precipitating/ions";
import { sourceKeys } from "../../src/sources";

type Grams = `${number} g`;
const liquor = (salts: Readonly<Record<string, Grams>>, temperature: `${number} °C` = "20 °C") =>
  remainsInSolution({
    substances: Object.entries(salts).map(([formula, mass]) => ({ formula, mass })),
    water: "100 g",
    temperature,
  });

describe("a liquor of several salts", () => {
  it("sees silver chloride precipitate from silver nitrate and salt: 0.0294 mol less what water keeps", () => {
    const { remainsInSolution: stays, pairings } = liquor({ AgNO3: "5 g", NaCl: "5 g" });
    expect(stays).toBe("no");
    expect(pairings.map(({ formula }) => formula)).toEqual(["AgCl"]);
    // 5 g / 169.87 g/mol × 143.32 g/mol
    expect(pairings[0]!.excess!.in("g").toNumber()).toBeCloseTo(4.2186, 3);
  });

  it("sees gypsum fall, and silver chloride from hydrochloric acid", () => {
    const gypsum = liquor({ CaCl2: "20 g", Na2SO4: "15 g" });
    expect(gypsum.remainsInSolution).toBe("no");
    expect(gypsum.pairings.map(({ solidPhase }) => solidPhase)).toEqual(["CaSO4·2H2O"]);
    expect(liquor({ HCl: "5 g", AgNO3: "5 g" }).remainsInSolution).toBe("no");
  });

  // Oxalic acid precipitates calcium from its chloride, bicarbonate chalk, hydrogen sulfide lead (qualitative analysis, from
  // memory); phosphoric and acetic acid do not: their calcium salts dissolve in acid.
  it.each([
    [{ CaCl2: "5 g", H2C2O4: "5 g" }, "CaC2O4"],
    [{ CaCl2: "5 g", KHC2O4: "1 g" }, "CaC2O4"],
    [{ CaCl2: "5 g", NaHCO3: "5 g" }, "CaCO3"],
    [{ BaCl2: "5 g", NaHCO3: "8 g" }, "BaCO3"],
    [{ CuSO4: "1 g", NaHS: "1 g" }, "CuS"],
    [{ "Pb(NO3)2": "5 g", H2S: "0.2 g" }, "PbS"],
  ] as const)("sees what an acid or acid salt gives up to a metal: %j", (salts, solid) => {
    for (const temperature of ["20 °C", "80 °C"] as const) {
      const check = liquor(salts, temperature);
      expect(check.remainsInSolution).toBe("no");
      expect(check.pairings.map(({ formula }) => formula)).toContain(solid);
    }
  });

  it("sees the hydroxide that bicarbonate precipitates from aluminium and iron(III), as in an extinguisher of foam", () => {
    // Al3+ + 3 HCO3- -> Al(OH)3 + 3 CO2 (general chemistry, from memory): 5 g AlCl3 = 0.0375 mol, and 10 g NaHCO3 are
    // 0.119 mol, more than three times as much; 5 g / 133.34 g/mol × 78.00 g/mol = 2.925 g
    const [all] = liquor({ AlCl3: "5 g", NaHCO3: "10 g" }).pairings;
    expect(all!.formula).toBe("Al(OH)3");
    expect(all!.excess!.in("g").toNumber()).toBeCloseTo(2.925, 2);
    // with too little of it no more than a third of a mole for each mole: 5 g / 84.01 g/mol / 3 × 78.00 g/mol = 1.547 g
    const [some] = liquor({ AlCl3: "5 g", NaHCO3: "5 g" }).pairings;
    expect(some!.formula).toBe("Al(OH)3");
    expect(some!.excess!.in("g").toNumber()).toBeLessThan(1.547);
    expect(liquor({ FeCl3: "5 g", NaHCO3: "8 g" }).pairings.map(({ formula }) => formula)).toEqual(["Fe(OH)3"]);
    expect(liquor({ FeCl3: "5 g", NaHSO4: "8 g" }).remainsInSolution).toBe("yes");
  });

  it("names no solid twice, where the acid ion is there as well as what is left of it", () => {
    for (const [salts, solids] of [
      [{ CaCl2: "5 g", KHC2O4: "1 g", K2C2O4: "1 g" }, ["CaC2O4"]],
      [{ BaCl2: "5 g", NaHCO3: "5 g", Na2SO4: "3 g" }, ["BaSO4", "BaCO3"]],
      // potassium and sodium carbonate and chloride all dissolve, and no acid is there to make a hydrogencarbonate
      [{ KCl: "10 g", Na2CO3: "20 g" }, []],
      // ammonium bicarbonate and salt: the bicarbonate of the Solvay process
      [{ NH4HCO3: "15 g", NaCl: "30 g" }, ["NaHCO3"]],
    ] as const)
      expect(
        liquor(salts).pairings.map(({ formula }) => formula),
        JSON.stringify(salts),
      ).toEqual(solids);
  });

  it("lets what acid keeps dissolved stay", () => {
    for (const salts of [
      { CaCl2: "5 g", H3PO4: "5 g" },
      { CaCl2: "5 g", CH3COOH: "5 g" },
      { MgSO4: "2 g", NaHCO3: "2 g" },
    ] as const)
      expect(liquor(salts).pairings, Object.keys(salts).join()).toEqual([]);
  });

  it("sees potash alum fall from its sulfates: 8.9 g of anhydrous alum against 5.9 g in 100 g of water at 20 °C", () => {
    const { remainsInSolution: stays, pairings } = liquor({ K2SO4: "6 g", "Al2(SO4)3": "12 g" });
    expect(stays).toBe("no");
    expect(pairings.map(({ formula }) => formula)).toEqual(["KAl(SO4)2·12H2O"]);
  });

  it("sees bicarbonate of soda precipitate from ammonium carbonate and salt (the ammonia soda process)", () => {
    const { pairings } = liquor({ "(NH4)2CO3": "10 g", NaCl: "30 g" });
    expect(pairings.find(({ formula }) => formula === "NaHCO3")?.stays).toBe("no");
  });

  it("names double salts of which no figure is known, and does not let them pass for dissolved", () => {
    const tutton = liquor({ CuSO4: "10 g", "(NH4)2SO4": "20 g" });
    expect(tutton.remainsInSolution).toBe("unknown");
    expect(tutton.warnings.join()).toContain("(NH4)2Cu(SO4)2·6H2O may precipitate");
    // far from saturation nothing is said of it
    expect(liquor({ CuSO4: "0.5 g", "(NH4)2SO4": "0.5 g" }).remainsInSolution).toBe("yes");
  });

  it("lets stay what stays: saltpetre with salt, a zinc vitriol with Glauber's salt, one salt alone", () => {
    for (const salts of [
      { KNO3: "10 g", NaCl: "10 g" },
      { Na2SO4: "10 g", ZnSO4: "30 g" },
      { Na2SO4: "10 g", Na2CO3: "2 g" },
      { "(NH4)2CO3": "30 g" },
      { NH4Cl: "10 g", NaOH: "5 g" },
    ] as const) {
      const check = liquor(salts);
      expect(check.remainsInSolution, Object.keys(salts).join()).toBe("yes");
      expect(check.pairings).toEqual([]);
    }
  });

  it("is the same whatever order the salts are named in, and precipitates the more the less water there is", () => {
    const one = liquor({ CaCl2: "2 g", K2SO4: "3 g" });
    const other = liquor({ K2SO4: "3 g", CaCl2: "2 g" });
    expect(one.pairings.map(({ formula }) => formula).sort()).toEqual(
      other.pairings.map(({ formula }) => formula).sort(),
    );
    const excess = (water: Grams) =>
      remainsInSolution({
        substances: [
          { formula: "AgNO3", mass: "1 g" },
          { formula: "K2SO4", mass: "1 g" },
        ],
        water,
        temperature: "20 °C",
      })
        .pairings.find(({ formula }) => formula === "Ag2SO4")
        ?.excess?.in("g")
        .toNumber() ?? 0;
    expect(excess("50 g")).toBeGreaterThan(excess("80 g"));
    expect(excess("400 g")).toBe(0);
  });
});

describe("the list of double salts", () => {
  it("adds up in atoms and charge, names a source, and lists none twice", () => {
    const known = new Set<string>(sourceKeys());
    let tested = 0;
    for (const { solid, ions, source } of DOUBLE_SALTS()) {
      expect(known, solid).toContain(source);
      const { anhydrous } = soluteOf(solid);
      const charge = ions.reduce((all, [ion, count]) => all + count * parseFormula(ion).charge, 0);
      expect(charge, solid).toBe(0);
      for (const symbol of anhydrous.symbols) {
        const held = ions.reduce((all, [ion, count]) => all + count * Number(parseFormula(ion).count(symbol)), 0);
        expect(held, `${solid} ${symbol}`).toBe(Number(anhydrous.count(symbol)));
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(29);
    expect(new Set(DOUBLE_SALTS().map(({ solid }) => soluteOf(solid).key)).size).toBe(DOUBLE_SALTS().length);
  });

  it("has every salt of two cations that the table of solubilities has", () => {
    const listed = new Set(DOUBLE_SALTS().map(({ solid }) => soluteOf(solid).key));
    const missing = SOLUBILITY().filter(({ formula }) => {
      const solute = soluteOf(formula);
      const cations = saltIons(solute.anhydrous)?.filter(({ charge }) => charge > 0);
      return cations?.length === 2 && !listed.has(solute.key);
    });
    expect(missing.map(({ formula }) => formula)).toEqual([]);
  });
});

describe("a salt pair that does not part as asked", () => {
  const pair = (
    wanted: string,
    other: string,
    from: Readonly<Record<string, Grams>>,
    water: Grams,
    hot = 100,
    cold = 10,
  ) =>
    attempt(() =>
      fractionalCrystallization({
        wanted,
        other,
        from: Object.entries(from).map(([formula, mass]) => ({ formula, mass })),
        water,
        hot: `${hot} °C` as "100 °C",
        cold: `${cold} °C` as "10 °C",
      }),
    );
  const solidOf = (outcome: ReturnType<typeof pair>) =>
    outcome.ok ? undefined : [outcome.error.code, (outcome.error.details as { solid?: string }).solid];

  it("is refused where the swap runs the other way: saltpetre is the least soluble in the cold", () => {
    for (const water of ["100 g", "200 g"] as const)
      expect(solidOf(pair("KCl", "NaNO3", { KNO3: "101 g", NaCl: "58 g" }, water))).toEqual([
        "solubility.other-solid",
        "KNO3",
      ]);
  });

  it("is refused where a proton is handed on: bicarbonate precipitates, no soda", () => {
    expect(solidOf(pair("Na2CO3", "NH4Cl", { "(NH4)2CO3": "96 g", NaCl: "116.8 g" }, "200 g", 40))).toEqual([
      "solubility.other-solid",
      "NaHCO3",
    ]);
  });

  it("is refused where a double salt precipitates: glaserite, picromerite (memory: works on potash)", () => {
    expect(solidOf(pair("K2SO4", "NaCl", { KCl: "149 g", Na2SO4: "142 g" }, "400 g", 100, 25))?.[1]).toBe("K3Na(SO4)2");
    expect(solidOf(pair("K2SO4", "MgCl2", { KCl: "149 g", MgSO4: "120 g" }, "400 g", 100, 25))?.[1]).toBe(
      "K2Mg(SO4)2·6H2O",
    );
  });

  it("is not worthwhile at a purity that one more crystallisation does not mend", () => {
    // 0.3 mol of saltpetre in 100 g of water full of salt: 30.3 g less 21 g crystallise, and 39.2 − 35.7 g of salt with them
    const plan = fractionalCrystallization({
      wanted: "KNO3",
      other: "NaCl",
      from: [
        { formula: "NaNO3", mass: "25.5 g" },
        { formula: "KCl", mass: "22.4 g" },
        { formula: "NaCl", mass: "60 g" },
      ],
      water: "100 g",
      hot: "100 °C",
      cold: "10 °C",
    });
    expect(plan.purity.in("%").toNumber()).toBeLessThan(80);
    expect(plan.ratios.wanted.value.toNumber()).toBeGreaterThan(3);
    expect(plan.ratios.other.value.toNumber()).toBeLessThan(1.5);
    expect(plan.worthwhile).toBe(false);
  });

  it("keeps the swap that every works does: saltpetre and potassium chlorate", () => {
    expect(pair("KNO3", "NaCl", { NaNO3: "190 g", KCl: "150 g" }, "200 g").ok).toBe(true);
    expect(pair("KClO3", "NaCl", { NaClO3: "106 g", KCl: "75 g" }, "200 g").ok).toBe(true);
  });

  it("gives a plan no crop of it and says why", () => {
    const planned = tryPlanPreparation({
      equation: "KNO3 + NaCl -> KCl + NaNO3",
      product: "NaNO3",
      materials: [
        { name: "saltpetre", form: "KNO3" },
        { name: "salt", form: "NaCl" },
      ],
      scale: { material: "saltpetre", portion: "10 g" },
    });
    if (!planned.ok) throw planned.error;
    const { crystallising } = planned.value;
    expect(crystallising?.water).toBeUndefined();
    expect(JSON.stringify(crystallising?.cooling)).toContain("KNO3 precipitates from these ions");
  });
});

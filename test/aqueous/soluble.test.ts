// Soluble salts against the solubility curves they were fitted to, and heats against the table they were summed from.
import { describe, expect, it } from "vitest";
import { anhydrousOf, aqueousComposition, solubilityOf } from "../../src";
import { ACID_HEATS, FORMATION_HEATS, MEASURED_HEATS, SOLUTION_HEATS } from "../../src/aqueous/data/heats";
import { SOLUBILITY_PRODUCTS } from "../../src/aqueous/data/products";
import { SOLUBLE } from "../../src/aqueous/data/soluble";
import { dissolutionOf, keyOf, readReaction, type Term } from "../../src/aqueous/mixture/notation";
import { network } from "../../src/aqueous/mixture/tabulated";
import { parseFormula } from "../../src/formula";
import { ACID_STEPS } from "../../src/ion/data/acid-steps";
import { FORMATION } from "../../src/thermochemistry/data/enthalpies";

/** Salts beside which another solid precipitates, so that more of them dissolves. */
const BESIDE: Readonly<Record<string, string>> = {
  "Ca(H2PO4)2·H2O": "falls apart into brushite and acid (known of it)",
  CuSO4·5H2O: "hot, basic sulfate precipitates beside it",
  ZnSO3·2H2O: "sulfite accepts protons and leaves hydroxide: zinc hydroxide beside it",
};

describe("soluble salts", () => {
  it("dissolve at every temperature of their curve as far as it says", () => {
    const off: string[] = [];
    for (const { solid, points } of SOLUBLE()) {
      if (solid in BESIDE) continue;
      for (const [celsius] of points) {
        const dry = anhydrousOf(solid);
        const table = solubilityOf(String(dry), `${celsius} °C`);
        const want = table.perHundredGramsWater.in("g").toNumber();
        // twice what dissolves
        const dryMass = Number(parseFormula(solid).gramsPerMole) - watersOf(solid) * 18.01528;
        const put = ((want * 10) / dryMass) * 2;
        const c = aqueousComposition({
          water: "1 kg",
          dissolved: [{ formula: solid, amount: `${put.toFixed(9)} mol` as "1 mol" }],
          temperature: `${celsius} °C`,
        });
        const left = c.solids.find(({ formula }) => formula === solid);
        if (left === undefined) {
          off.push(`${solid} at ${celsius} °C: ${c.solids.map(({ formula }) => formula).join() || "dissolved"}`);
          continue;
        }
        const units = put - left.amount.in("mol").toNumber();
        // as the table counts: crystal water is water, what borate binds is not taken off
        const perHundred = (units * dryMass) / (1 + units * watersOf(solid) * 0.01801528) / 10;
        if (Math.abs(perHundred / want - 1) > 0.02)
          off.push(`${solid} at ${celsius} °C: ${perHundred.toPrecision(4)} against ${want}`);
      }
    }
    expect(off).toEqual([]);
  });
});

const watersOf = (formula: string): number => {
  const tail = /·(\d*\.?\d*)H2O$/.exec(formula);
  return tail === null ? 0 : tail[1] === "" ? 1 : Number(tail[1]);
};

describe("heats of reaction", () => {
  const dissolved = new Map(
    FORMATION()
      .filter(({ state }) => state === "aq")
      .reverse()
      .map((row) => [keyOf(row.formula), Number(row.enthalpy)]),
  );
  const of = (species: string): number => (species === "H2O" ? -285.83 : (dissolved.get(keyOf(species)) ?? Number.NaN));
  const sum = (terms: readonly Term[]): number => terms.reduce((all, [n, species]) => all + n * of(species), 0);

  it("are sums of the enthalpies of formation", () => {
    for (const { acid, base } of ACID_STEPS()) {
      const listed = ACID_HEATS[acid];
      if (listed === undefined || acid in MEASURED_HEATS) continue;
      const waters: Term[] = acid === "H3BO3" ? [[-1, "H2O"]] : [];
      expect(sum([[1, base], [1, "H+"], [-1, acid], ...waters]), acid).toBeCloseTo(Number(listed), 0);
    }
    const solids = FORMATION().filter(({ state }) => state === "s");
    let tested = 0;
    for (const row of SOLUBILITY_PRODUCTS()) {
      const { solid, form } = row;
      const listed = SOLUTION_HEATS[form === undefined ? solid : `${solid}|${form}`];
      if (listed === undefined) continue;
      const { left, right } = readReaction(dissolutionOf(row));
      const ions = sum([...right, ...left.slice(1).map(([n, species]): Term => [-n, species])]);
      const own = solids.filter((row) => keyOf(row.formula) === keyOf(solid)).map((row) => ions - Number(row.enthalpy));
      expect(Math.min(...own.map((heat) => Math.abs(heat - Number(listed)))), solid).toBeLessThan(0.06);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(110);
    expect(Object.keys(FORMATION_HEATS).filter((key) => !network().isFormed(keyOf(key)))).toEqual([
      "Fe(CN)6^4-",
      "Fe(CN)6^3-",
      // measured at an ionic strength that its source does not tell
      "AlF6^3-",
    ]);
  });
});

describe("heats that were measured", () => {
  it("stand with the figure of their source, each of an acid of the table", () => {
    const acids = new Set(ACID_STEPS().map(({ acid }) => acid));
    expect(Object.entries(MEASURED_HEATS).length, "rows to test").toBeGreaterThan(0);
    for (const [acid, source] of Object.entries(MEASURED_HEATS)) {
      expect(acids.has(acid), acid).toBe(true);
      const printed = Number(/: (-?[\d.]+) /.exec(source)![1]);
      expect(Math.abs(Number(ACID_HEATS[acid]) - printed), acid).toBeLessThan(0.051);
    }
  });

  it("give with the entropy the constant of triethanolammonium (Bates and Allen 1960: 33.450 kJ/mol, -36.4 J/(mol K))", () => {
    const pKa = (33450 + 298.15 * 36.4) / (Math.LN10 * 8.314463 * 298.15);
    expect(ACID_STEPS().find(({ acid }) => acid === "C6H16NO3+")!.pKa).toBe(pKa.toFixed(2));
  });
});

describe("hydrates when hot", () => {
  it("lets calcium oxalate stand as its monohydrate, the one that analysis weighs, at 25 and 60 °C (common practice)", () => {
    for (const temperature of ["25 °C", "60 °C"] as const) {
      const { solids } = aqueousComposition({
        water: "1 kg",
        dissolved: [
          { formula: "CaCl2", amount: "0.01 mol" },
          { formula: "Na2C2O4", amount: "0.01 mol" },
        ],
        temperature,
      });
      expect(solids.map(({ formula }) => formula)).toEqual(["CaC2O4·H2O"]);
    }
  });
});

// Laws that need formulas: every reaction of the tables conserves atoms and charge, and the constants agree with Gibbs
// energies of formation wherever both are at hand.
import Fraction from "fraction.js";
import { describe, expect, it } from "vitest";
import { SOLUTION_DENSITIES } from "../../src/amount/data/solution-densities";
import { COMPLEXES } from "../../src/aqueous/data/complexes";
import { GASES } from "../../src/aqueous/data/gases";
import { SOLUBILITY_PRODUCTS } from "../../src/aqueous/data/products";
import { dissolutionOf } from "../../src/aqueous/mixture/notation";
import { parseFormula } from "../../src/formula";
import { ACID_STEPS } from "../../src/ion/data/acid-steps";
import { FORMATION } from "../../src/thermochemistry/data/enthalpies";

type Side = Map<string, Fraction>;
type Term = readonly [count: string, formula: string];

function add(side: Side, [count, formula]: Term): void {
  const read = parseFormula(formula);
  const bump = (key: string, by: Fraction) => side.set(key, (side.get(key) ?? new Fraction(0)).add(by.mul(count)));
  for (const { symbol, count: atoms } of read.composition) bump(symbol, atoms);
  bump("charge", new Fraction(read.charge));
}

function isBalanced(left: readonly Term[], right: readonly Term[]): boolean {
  const [a, b]: [Side, Side] = [new Map(), new Map()];
  for (const term of left) add(a, term);
  for (const term of right) add(b, term);
  return [...new Set([...a.keys(), ...b.keys()])].every((key) =>
    (a.get(key) ?? new Fraction(0)).equals(b.get(key) ?? new Fraction(0)),
  );
}

const terms = (side: string): Term[] =>
  side.split(" + ").map((text) => {
    const [, count = "1", formula = text] = /^(?:([\d.]+) )?(\S+)$/.exec(text) ?? [];
    return [count, formula];
  });

describe("reactions of the tables", () => {
  it("balances all 310 dissolutions in atoms and charge", () => {
    let tested = 0;
    for (const dissolution of SOLUBILITY_PRODUCTS().map(dissolutionOf)) {
      const [left = "", right = ""] = dissolution.split(" -> ");
      expect(isBalanced(terms(left), terms(right)), dissolution).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(280);
  });

  it("balances every proton step, with water where it is taken up", () => {
    let tested = 0;
    for (const { acid, base } of ACID_STEPS()) {
      const plain = isBalanced(
        [["1", acid]],
        [
          ["1", base],
          ["1", "H+"],
        ],
      );
      const withWater = isBalanced(
        [
          ["1", acid],
          ["1", "H2O"],
        ],
        [
          ["1", base],
          ["1", "H+"],
        ],
      );
      expect(plain || withWater, `${acid} ${base}`).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(100);
  });

  it("balances all 610 complexes", () => {
    let tested = 0;
    for (const { metal, ligand, steps } of COMPLEXES()) {
      for (const { n, complex, protons = 0 } of steps) {
        const left: Term[] = [
          ["1", metal],
          [String(n), ligand],
          [String(protons), "H+"],
        ];
        expect(isBalanced(left, [["1", complex]]), complex).toBe(true);
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(260);
  });

  it("reads every formula of the other tables", () => {
    let tested = 0;
    for (const { formula } of FORMATION()) {
      expect(parseFormula(formula).symbols.length, formula).toBeGreaterThan(0);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(1000);
    let rowsTested = 0;
    for (const { gas } of GASES()) {
      expect(parseFormula(gas).charge).toBe(0);
      rowsTested += 1;
    }
    expect(rowsTested).toBeGreaterThanOrEqual(13);
    for (const { solute } of SOLUTION_DENSITIES()) expect(parseFormula(solute).charge).toBe(0);
  });
});

/** Solids more than one unit off the Gibbs energies, and by less than how much; no reason known means the sources differ. */
const BEYOND_ONE_UNIT: ReadonlyMap<string, number> = new Map([
  // another sample of the mineral than NBS took: sources run from 31.9 to 33.3
  ["Cu2(OH)2CO3 (malachite)", 1.5],
  ["KAl(SO4)2·12H2O", 1.6], // rests on the aluminium ion, which CODATA puts 7.4 kJ/mol lower: 1.3 units
  ["PbF2", 1.4], // rests on the fluoride ion, which CODATA puts 2.7 kJ/mol lower
  ["PbS (galena)", 1.3], // sulfides: the second constant of hydrogen sulfide is not known to a unit
  // NBS has one solid, the table tells fresh from aged
  ["MnS (pink, fresh precipitate)", 3.9],
  ["NiS (alpha, fresh)", 2.6],
  ["NiS (gamma, aged)", 4.8],
  ["ZnS (amorphous, fresh)", 2.7],
]);

describe("solubility products against Gibbs energies", () => {
  it("agrees within one unit for all solids that were not computed from them, but for a list", () => {
    // pKsp = (sum of Gibbs energies of the ions - that of the solid) / (R T ln 10), NBS Tables 1982; R T ln 10 at
    // 298.15 K is 5.7080 kJ/mol (R exact, SI 2019).
    const energies = new Map<string, number>();
    for (const { formula, state, gibbs } of FORMATION()) {
      const key = `${parseFormula(formula).toHill()} ${state}`;
      if (gibbs !== undefined && !energies.has(key)) energies.set(key, Number(gibbs));
    }
    const of = (formula: string, state: string) => energies.get(`${parseFormula(formula).toHill()} ${state}`);
    const differences: { solid: string; difference: number }[] = [];
    for (const row of SOLUBILITY_PRODUCTS()) {
      const { solid, form, pKsp, source, convention, doubtful } = row;
      if (source === "crcSolubilityProducts87" || source === "nbs1982" || convention === "free-sulfide") continue;
      if (doubtful === true) continue;
      const [left = "", right = ""] = dissolutionOf(row).split(" -> ");
      const sum = (side: Term[], solids: boolean): number | undefined =>
        side.reduce<number | undefined>((all, [count, formula]) => {
          const water = formula === "H2O";
          const energy = of(formula, water ? "l" : solids ? "s" : "aq");
          return all === undefined || energy === undefined ? undefined : all + Number(count) * energy;
        }, 0);
      const [reactants, products] = [sum(terms(left), true), sum(terms(right), false)];
      if (reactants === undefined || products === undefined) continue;
      const name = form === undefined ? solid : `${solid} (${form})`;
      differences.push({ solid: name, difference: (products - reactants) / 5.708 - Number(pKsp) });
    }
    const misses = differences.filter(({ difference }) => Math.abs(difference) > 1);
    expect(differences.length).toBeGreaterThan(60);
    expect(misses.map(({ solid }) => solid).sort()).toEqual([...BEYOND_ONE_UNIT.keys()].sort());
    for (const { solid, difference } of misses)
      expect(Math.abs(difference), solid).toBeLessThan(BEYOND_ONE_UNIT.get(solid)!);
  });
});

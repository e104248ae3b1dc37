// Figures that others of the same table foretell: a curve by its neighbours, a density by the volumes of the ions, a step of an
// acid by the step before, a form by the next form. A slip of the pen stands out by far; what stands out and is so in the source
// is listed.
import { Matrix, solve } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { hydrateOf } from "../../src/hydrate";
import { HYDRATE_FORMS } from "../../src/hydrate/data/forms";
import { constitutionOf, sameSubstance } from "../../src/ion";
import { ACID_STEPS } from "../../src/ion/data/acid-steps";
import { SOLUBILITY } from "../../src/solubility/data/curves";
import { PHYSICAL } from "../../src/substance/data/physical";

const half = (text: string): number => 0.5 * 10 ** -(text.split(".")[1]?.length ?? 0);

const median = (numbers: readonly number[]): number => [...numbers].sort((a, b) => a - b)[numbers.length >> 1] ?? 0;

/** Log of a point less that of the cubic through its four nearest neighbours, and what the rounding of all five explains. */
function kinks(points: readonly (readonly [celsius: number, grams: string])[]) {
  const all = points.map(([t, grams]) => ({ t, y: Math.log(Number(grams)), u: half(grams) / Number(grams) }));
  return all.slice(1, -1).map((point) => {
    const near = all
      .filter((one) => one !== point)
      .sort((a, b) => Math.abs(a.t - point.t) - Math.abs(b.t - point.t))
      .slice(0, 4);
    let [foretold, rounding] = [0, point.u];
    for (const one of near) {
      let weight = 1;
      for (const other of near) if (other !== one) weight *= (point.t - other.t) / (one.t - other.t);
      foretold += weight * one.y;
      rounding += Math.abs(weight) * one.u;
    }
    return { celsius: point.t, by: Math.abs(foretold - point.y), rounding };
  });
}

describe("a curve within one solid", () => {
  it("runs on as smoothly at every point as at the others", () => {
    const rough: string[] = [];
    let compared = 0;
    for (const { formula, solids, points } of SOLUBILITY()) {
      let from = Number.NEGATIVE_INFINITY;
      for (const { upTo } of solids) {
        const until = upTo === undefined ? Number.POSITIVE_INFINITY : Number(upTo);
        const own = points.filter(([celsius]) => celsius >= from && celsius <= until);
        from = until;
        if (own.length < 6) continue;
        const found = kinks(own);
        found.forEach(({ celsius, by, rounding }, i) => {
          compared += 1;
          const usual = median(found.flatMap((one, j) => (i === j ? [] : [one.by])));
          if (by > 4 * usual + 2 * rounding + 0.003) rough.push(`${formula} ${celsius}`);
        });
      }
    }
    expect(compared).toBeGreaterThan(1200);
    // as the compilations print them: scatter of old measurements, or a change of solid that the table does not name
    expect(rough.sort()).toEqual([
      "(NH4)2CrO4 60",
      "(NH4)2CrO4 70",
      "AgBrO3 60",
      "AgBrO3 80",
      "Cd(HCOO)2 40",
      "H2C2O4 40",
      "K2S2O3 60",
      "K2S2O3 80",
      "KH2PO4 40",
      "LiBrO3 50",
      "LiCl 40",
      "LiClO3 10",
      "Mg(ClO3)2 50",
      "NH4H2PO4 50",
      "SbCl3 50",
      "Zn(HCOO)2 10",
      "Zn(HCOO)2 30",
    ]);
  });
});

describe("the forms of a salt", () => {
  it("follow each other without a gap: where one ends, the next begins", () => {
    const apart: string[] = [];
    let compared = 0;
    for (const { salt, forms } of HYDRATE_FORMS()) {
      const ranged = forms
        .filter(({ from, upTo }) => from !== undefined || upTo !== undefined)
        .sort((a, b) => Number(a.from ?? -300) - Number(b.from ?? -300));
      for (const [i, { waters, upTo }] of ranged.entries()) {
        const next = ranged[i + 1];
        if (next === undefined) continue;
        compared += 1;
        if (upTo !== next.from) apart.push(`${salt}: ${waters} to ${upTo} °C, ${next.waters} from ${next.from} °C`);
      }
    }
    expect(compared).toBeGreaterThan(60);
    expect(apart).toEqual([]);
  });

  // A hydrate that comes apart under its own solution melts where it does, if it melts.
  it("melt where their range ends, but for those that change below", () => {
    const melts = new Map(PHYSICAL().flatMap((row) => (row.change === "melts" ? [[row.formula, row.celsius!]] : [])));
    const apart: string[] = [];
    let compared = 0;
    for (const { salt, forms } of HYDRATE_FORMS())
      for (const { waters, upTo } of forms) {
        if (waters === "0" || upTo === undefined) continue;
        const form = hydrateOf(salt, waters);
        const melting = [...melts].find(([formula]) => sameSubstance(formula, form))?.[1];
        if (melting === undefined) continue;
        compared += 1;
        if (Math.abs(Number(melting) - Number(upTo)) > 2.1) apart.push(`${form} ${upTo} ${melting}`);
      }
    expect(compared).toBeGreaterThan(20);
    // a lower hydrate forms first where it is open or stirred; in a closed tube the crystals melt later
    expect(apart.sort()).toEqual([
      "CoCl2.6H2O 52 87",
      "Na2B4O7.10H2O 58.2 75",
      "Na3PO4.12H2O 70 75",
      "NaBO2.4H2O 54 57",
      "NaH2PO4.2H2O 40.8 60",
      "NaOH.H2O 62 65",
      "SrCl2.6H2O 61 115",
    ]);
  });
});

describe("the steps of an oxoacid", () => {
  // Pauling's second rule: 5 units from step to step (from memory)
  it("are five units apart", () => {
    const steps = ACID_STEPS();
    const apart: string[] = [];
    let compared = 0;
    for (const first of steps) {
      const next = steps.find(({ acid }) => acid === first.base);
      const formula = parseFormula(first.acid);
      const [centre, ...others] = formula.symbols.filter((symbol) => symbol !== "H" && symbol !== "O");
      if (next === undefined || centre === undefined || others.length > 0) continue;
      if (formula.count("O").equals(0) || !formula.count(centre).equals(1)) continue;
      compared += 1;
      if (Math.abs(Number(next.pKa) - Number(first.pKa) - 5) > 1.7) apart.push(first.acid);
    }
    expect(compared).toBeGreaterThan(10);
    // molybdic acid is Mo(OH)6 and changes its number of neighbours as it gives its protons
    expect(apart).toEqual(["H2MoO4"]);
  });
});

describe("densities of salts", () => {
  // Volumes of ions and of crystal water add up to that of the salt (Jenkins, Roobottom, Passmore and Glasser, Inorg. Chem. 38
  // (1999) 3609; from memory). They are fitted to the table itself, so that one wrong row in hundreds stands out.
  it("agree with the volumes of their ions", () => {
    let salts = PHYSICAL().flatMap(({ formula, density }) => {
      const { kind, cations, anions, ligands, molecules, waters } = constitutionOf(formula);
      if (density === undefined || kind !== "salt") return [];
      const parts = new Map<string, number>(waters > 0 ? [["crystal water", waters]] : []);
      for (const { formula: part, count } of [...cations, ...anions, ...ligands, ...molecules])
        parts.set(part, (parts.get(part) ?? 0) + count);
      return [{ formula, volume: parseFormula(formula).gramsPerMole / Number(density), parts }];
    });
    // an ion that stands in fewer than three salts says nothing of them
    const timesOf = (part: string): number => salts.filter(({ parts }) => parts.has(part)).length;
    for (let before = 0; before !== salts.length; ) {
      before = salts.length;
      const met = new Map([...new Set(salts.flatMap(({ parts }) => [...parts.keys()]))].map((p) => [p, timesOf(p)]));
      salts = salts.filter(({ parts }) => [...parts.keys()].every((part) => met.get(part)! >= 3));
    }
    const kinds = [...new Set(salts.flatMap(({ parts }) => [...parts.keys()]))];
    let off = salts.map(() => 0);
    // relative least squares, those far off counting less in the next round
    for (let round = 0; round < 12; round += 1) {
      const weights = salts.map(({ volume }, i) => 1 / (volume * Math.sqrt(Math.max(Math.abs(off[i]!), 0.02))));
      const rows = salts.map(({ parts }, i) => kinds.map((kind) => (parts.get(kind) ?? 0) * weights[i]!));
      const sides = Matrix.columnVector(salts.map(({ volume }, i) => volume * weights[i]!));
      const volumes = solve(new Matrix(rows), sides, true).to1DArray();
      off = salts.map(
        ({ volume, parts }) =>
          volume / kinds.reduce((sum, kind, j) => sum + (parts.get(kind) ?? 0) * volumes[j]!, 0) - 1,
      );
    }
    const far = salts.filter((_, i) => Math.abs(off[i]!) > 0.2).map(({ formula }) => formula);
    expect(salts.length).toBeGreaterThan(300);
    expect(far.sort()).toEqual(["AlPO4", "BaC2O4", "CdS", "Na2S", "SnCl4"]);
  });
});

// Laws of amounts, gases, strengths and dilution as properties. Masses from milligrams to tonnes and strengths inside every
// table keep the examples on the bench; exact comparisons allow the 40 digits that a table lookup leaves.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  amountOf,
  convertStrength,
  densityOfSolution,
  dilute,
  gasAmount,
  gasVolume,
  massFractionFromDensity,
  massOf,
  mixSolutions,
  reactionAmounts,
} from "../../src/amount";
import { SOLUTION_DENSITIES } from "../../src/amount/data/solution-densities";
import { type Quantity, quantity, sum } from "../../src/quantity";

const FORMULAS = ["NaCl", "CuSO4·5H2O", "KAl(SO4)2·12H2O", "Zn5(OH)6(CO3)2", "Fe0.95O", "3CdSO4·8H2O", "C12H22O11"];
const formula = fc.constantFrom(...FORMULAS);
/** A positive number of up to 6 digits with up to 3 decimals. */
const positive = fc
  .tuple(fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: 0, max: 3 }))
  .map(([units, decimals]) => (units / 10 ** decimals).toFixed(decimals));
const near = (a: Quantity, b: Quantity, unit: string, digits = 12): void => {
  const [x, y] = [a.in(unit), b.in(unit)];
  expect(x.minus(y).abs().toNumber()).toBeLessThanOrEqual(10 ** -digits * Math.max(1e-300, y.abs().toNumber()));
};
const grams = (value: string) => ({ value, unit: "g" }) as const;

describe("mass and amount", () => {
  it("undo each other, whatever the purity", () => {
    fc.assert(
      fc.property(
        formula,
        positive,
        fc.integer({ min: 1, max: 100 }),
        fc.integer({ min: 0, max: 99 }),
        (f, m, w, h) => {
          const purity = { assay: { value: w, unit: "%" }, moisture: { value: h, unit: "%" } } as const;
          near(massOf(amountOf(grams(m), f, purity), f, purity), quantity(grams(m)), "g", 30);
        },
      ),
    );
  });

  it("scale: k times the mass is k times the amount", () => {
    fc.assert(
      fc.property(formula, positive, fc.integer({ min: 2, max: 1000 }), (f, m, k) => {
        near(amountOf(quantity(grams(m)).times(k), f), amountOf(grams(m), f).times(k), "mol", 30);
      }),
    );
  });
});

describe("gases", () => {
  const conditions = fc
    .tuple(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 80, max: 120 }), fc.boolean())
    .map(([t, p, wet]) => ({
      temperature: { value: t, unit: "°C" } as const,
      pressure: { value: wet && t > 60 ? p + 100 : p, unit: "kPa" } as const,
      ...(wet ? { collectedOver: "water" as const } : {}),
    }));

  it("give back the amount that made the volume", () => {
    fc.assert(
      fc.property(positive, conditions, (n, at) => {
        const amount = { value: n, unit: "mol" } as const;
        near(gasAmount(gasVolume(amount, at), at), quantity(amount), "mol", 20);
      }),
    );
  });

  it("swell when warmed and shrink when pressed", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 98 }), fc.integer({ min: 50, max: 200 }), (t, p) => {
        const volume = (celsius: number, kPa: number): Quantity =>
          gasVolume("1 mol", { temperature: { value: celsius, unit: "°C" }, pressure: { value: kPa, unit: "kPa" } });
        expect(volume(t + 1, p).compare(volume(t, p))).toBe(1);
        expect(volume(t, p + 1).compare(volume(t, p))).toBe(-1);
      }),
    );
  });
});

describe("strengths", () => {
  const first = SOLUTION_DENSITIES().filter(
    (row, at) => SOLUTION_DENSITIES().findIndex(({ solute }) => solute === row.solute) === at,
  );
  /** A strength inside a table: the solute and a mass percent with two decimals. */
  const solution = fc.constantFrom(...first).chain((row) => {
    const top = Math.floor(Number(row.points.at(-1)![0]) * 100);
    return fc.tuple(
      fc.constant(row.solute),
      fc.integer({ min: 1, max: Math.min(top, 9999) }).map((n) => (n / 100).toFixed(2)),
    );
  });

  it("come back from every other unit", () => {
    fc.assert(
      fc.property(
        solution,
        fc.constantFrom("g/L", "mol/L", "mol/kg", "mol %", "% w/v", "ppm w/w"),
        ([of, percent], to) => {
          const w = { value: percent, unit: "% w/w" };
          const there = convertStrength(w, { of, to });
          near(convertStrength(there, { of, to: "% w/w" }), convertStrength(w, { of, to: "% w/w" }), "%", 10);
        },
      ),
    );
  });

  it("come back from every other unit at the last point of each table", () => {
    for (const { solute, points } of first) {
      const w = { value: points.at(-1)![0], unit: "% w/w" };
      if (Number(w.value) >= 100) continue;
      for (const to of ["g/L", "mol/L", "mol/kg", "mol %", "% w/v"]) {
        const there = convertStrength(w, { of: solute, to });
        near(
          convertStrength(there, { of: solute, to: "% w/w" }),
          convertStrength(w, { of: solute, to: "% w/w" }),
          "%",
          10,
        );
      }
    }
  });

  it("grow together: more percent is more mol/L and more mol/kg", () => {
    fc.assert(
      fc.property(solution, solution, ([of, a], [, b]) => {
        const top = first.find((row) => row.solute === of)!.points.at(-1)![0];
        if (Number(b) >= Number(top) || Number(a) === Number(b)) return;
        for (const to of ["mol/L", "mol/kg", "g/L", "mol %"]) {
          const [x, y] = [a, b].map((value) => convertStrength({ value, unit: "% w/w" }, { of, to })) as [
            Quantity,
            Quantity,
          ];
          expect(x.compare(y), `${of} ${a} ${b} ${to}`).toBe(Math.sign(Number(a) - Number(b)));
        }
      }),
    );
  });

  it("are found again from the density where it rises all along", () => {
    const rising = first.filter(({ solute }) => !["H2SO4", "CH3COOH", "C2H5OH"].includes(solute));
    fc.assert(
      fc.property(fc.constantFrom(...rising), fc.integer({ min: 1, max: 99 }), ({ solute, points }, part) => {
        const percent = ((Number(points.at(-1)![0]) * part) / 100).toFixed(3);
        const rho = densityOfSolution(solute, { value: percent, unit: "%" });
        expect(massFractionFromDensity(solute, rho).in("%").minus(percent).abs().toNumber()).toBeLessThan(1e-6);
      }),
    );
  });
});

describe("dilution and mixing", () => {
  it("scale: k times the stock makes k times the solution", () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 37 }), positive, fc.integer({ min: 2, max: 100 }), (percent, V, k) => {
        const plan = (factor: number): Quantity =>
          dilute({
            of: "HCl",
            from: { value: percent, unit: "% w/w" },
            to: "0.1 mol/L",
            makeUpTo: { value: (Number(V) * factor).toFixed(3), unit: "mL" },
          }).answer;
        near(plan(k), plan(1).times(k), "mL", 20);
      }),
    );
  });

  it("keep mass and solute, whatever is mixed", () => {
    const part = fc.tuple(fc.integer({ min: 0, max: 40 }), positive).map(([w, m]) => ({
      strength: { value: w, unit: "% w/w" },
      portion: { value: m, unit: "g" } as const,
    }));
    fc.assert(
      fc.property(fc.array(part, { minLength: 2, maxLength: 5 }), (parts) => {
        const mixture = mixSolutions(parts, { of: "NaOH" });
        near(mixture.mass!, sum(parts.map((p) => p.portion)), "g", 30);
        const solute = parts.reduce((s, p) => s + (p.strength.value / 100) * Number(p.portion.value), 0);
        expect(mixture.mass!.times(mixture.massFraction!).in("g").toNumber()).toBeCloseTo(solute, 6);
      }),
    );
  });
});

describe("reactions", () => {
  const EQUATIONS = [
    "2 CuSO4 + 4 NaHCO3 -> Cu2(OH)2CO3 + 2 Na2SO4 + 3 CO2 + H2O",
    "C3H8 + 5 O2 -> 3 CO2 + 4 H2O",
    "KMnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O",
    "ZnSO4·7H2O + Na2CO3·10H2O -> ZnCO3 + Na2SO4 + H2O",
  ];

  it("keep mass: what is used weighs what is formed, and what was given is used or left", () => {
    let tested = 0;
    for (const equation of EQUATIONS) {
      const formulas = equation
        .split("->")[0]!
        .split(" + ")
        .map((term) => term.trim().replace(/^\d+ /, ""));
      fc.assert(
        fc.property(positive, positive, (a, b) => {
          const outcome = reactionAmounts(equation, { [formulas[0]!]: grams(a), [formulas[1]!]: grams(b) });
          const side = (name: string): Quantity =>
            sum(outcome.species.filter((s) => s.side === name).map((s) => s.mass));
          near(side("reactant"), side("product"), "g", 25);
          for (const species of outcome.species) {
            if (species.given === undefined) continue;
            near(species.amount.plus(species.left!), species.given, "mol", 25);
            expect(species.left!.compare("0 mol")).toBeGreaterThanOrEqual(0);
          }
          expect(outcome.limiting.length).toBeGreaterThan(0);
        }),
        { numRuns: 30 },
      );
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(4);
  });

  it("scale: k times the feeds is k times everything", () => {
    fc.assert(
      fc.property(positive, positive, fc.integer({ min: 2, max: 500 }), (a, b, k) => {
        const equation = EQUATIONS[0]!;
        const at = (factor: number): Quantity =>
          reactionAmounts(equation, {
            CuSO4: grams((Number(a) * factor).toFixed(3)),
            NaHCO3: grams((Number(b) * factor).toFixed(3)),
          }).of("Cu2(OH)2CO3").mass;
        near(at(k), at(1).times(k), "g", 25);
      }),
    );
  });
});

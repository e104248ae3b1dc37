// The working of an equation against its own arithmetic: each condition, step and count is worked out anew from its text.
import { describe, expect, it } from "vitest";
import { type BalancedEquation, balance, halfReactions, tryBalance, workingOfEquation } from "../../src/equation";
import { explain } from "../../src/index";
import { CORPUS } from "../data/equation-corpus";

/** Value of "5 × 1 + 2 a - b", the letters as given; fractions are exact enough as doubles for equality within 1e-9. */
function value(text: string, letters: ReadonlyMap<string, number>): number {
  if (text === "0") return 0;
  let sum = 0;
  for (const [, sign, term] of text
    .replace(/^(?!-)/, "+")
    .matchAll(/([+-]) ?([^+-]+|[^(]*\(-[^)]*\)[^+-]*)(?=$| [+-] )/g)) {
    const product = term!
      .trim()
      .split(/ × | /)
      .map((factor) => factor.replace(/[()]/g, ""))
      .map(
        (factor) =>
          letters.get(factor) ??
          factor
            .split("/")
            .map(Number)
            .reduce((n, d) => n / d),
      )
      .reduce((a, b) => a * b);
    sum += sign === "-" ? -product : product;
  }
  return sum;
}

function lettersOf(equation: BalancedEquation): Map<string, number> {
  const species = equation.formulas.length;
  return new Map(
    equation.coefficients.map((n, at) => [species <= 26 ? "abcdefghijklmnopqrstuvwxyz"[at]! : `x${at + 1}`, Number(n)]),
  );
}

const balanced = CORPUS.flatMap((line) => {
  const outcome = tryBalance(line);
  return outcome.ok ? [outcome.value] : [];
});

describe("working of an equation", () => {
  it("is there for the corpus", () => expect(balanced.length).toBeGreaterThan(700));

  it("has conditions that the coefficients meet", () => {
    let met = 0;
    expect(balanced.length, "rows to test").toBeGreaterThan(0);
    for (const equation of balanced) {
      const letters = lettersOf(equation);
      expect(workingOfEquation(equation).conditions.length, "rows to test").toBeGreaterThan(0);
      for (const line of workingOfEquation(equation).conditions) {
        const [left, right] = line.slice(line.indexOf(": ") + 2).split(" = ");
        expect(value(left!, letters), `${equation}: ${line}`).toBeCloseTo(value(right!, letters), 9);
        met++;
      }
    }
    expect(met).toBeGreaterThan(2500);
  });

  it("has steps that hold with the letter they find, and end in the coefficients", () => {
    let checked = 0;
    for (const equation of balanced) {
      const { steps } = workingOfEquation(equation);
      for (const step of steps) {
        const parts = /^\S+: (.*) = (.*), so (\w+) = (.*)\.$/.exec(step);
        if (parts === null) continue;
        const [, left, right, letter, found] = parts;
        const letters = new Map([
          [
            letter!,
            found!
              .split("/")
              .map(Number)
              .reduce((n, d) => n / d),
          ],
        ]);
        expect(value(left!, letters), step).toBeCloseTo(value(right!, letters), 9);
        checked++;
      }
      const last = [...lettersOf(equation)].map(([letter, n]) => `${letter} = ${n}`).join(", ");
      if (equation.coefficients.every((n) => n < 2n ** 53n)) expect(steps.at(-1)).toBe(`${last}.`);
    }
    expect(checked).toBeGreaterThan(1500);
  });

  it("counts every element and the charge the same on both sides", () => {
    let counted = 0;
    expect(balanced.length, "rows to test").toBeGreaterThan(0);
    for (const equation of balanced) {
      expect(workingOfEquation(equation).counts.length, "rows to test").toBeGreaterThan(0);
      for (const { of, left, right, total } of workingOfEquation(equation).counts) {
        const sums = [left, right].map((side) => value(side, new Map()));
        expect(sums, `${equation}: ${of}`).toEqual([total.valueOf(), total.valueOf()]);
        counted++;
      }
    }
    expect(counted).toBeGreaterThan(2500);
  });

  it("reads as a board", () => {
    // worked by hand
    expect(String(explain(balance("Al + O2 -> Al2O3"))).split("\n")).toEqual([
      "a Al + b O2 -> c Al2O3",
      "Conditions",
      "  Al: a = 2 c",
      "  O: 2 b = 3 c",
      "Steps",
      "  1. Take c = 1 for Al2O3, which most conditions contain.",
      "  2. Al: a = 2 × 1, so a = 2.",
      "  3. O: 2 b = 3 × 1, so b = 3/2.",
      "  4. Times 2, so that all are whole numbers without a common divisor.",
      "  5. a = 4, b = 3, c = 2.",
      "Check",
      "  Al  4 × 1 = 2 × 2 = 4",
      "  O   3 × 2 = 2 × 3 = 6",
      "4 Al + 3 O2 -> 2 Al2O3",
    ]);
  });

  it("says where the conditions leave a choice", () => {
    const steps = workingOfEquation(
      balance("C + O2 -> CO + CO2", { conditions: [{ species: ["CO", "CO2"], ratio: "1:1" }] }),
    ).steps;
    expect(steps[1]).toBe("The conditions allow several answers; the one that was chosen has a = 2, b = 3/2, d = 1.");
  });

  it("adds halves up by their electrons", () => {
    const working = explain(halfReactions("MnO4- + Fe^2+ -> Mn^2+ + Fe^3+"));
    expect(working.multipliers.map((line) => /(\d+) electrons/.exec(line)![1])).toEqual(["5", "5"]);
    expect(String(working)).toContain("Sum\n");
  });
});

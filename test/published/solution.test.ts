// Solutions, dilution and strengths against published problems and figures of the trade.
// Chemistry 2e (OpenStax, 2019, web revision), sections 3.3 and 3.4, unless the row says otherwise; tolerance half a unit
// of the last printed place.
import { describe, expect, test } from "vitest";
import {
  amountOf,
  convertStrength,
  densityOfSolution,
  densityOfWater,
  dilute,
  feedAmount,
  massFractionFromDensity,
  massOf,
  mixToStrength,
  strengthPrepared,
} from "../../src/amount";
import { SOLUTION_DENSITIES } from "../../src/amount/data/solution-densities";
import { type CurvePoint, chordBound } from "../../src/amount/density/density-chord";
import { curveOf } from "../../src/amount/density/density-table";
import { type Quantity, quantity } from "../../src/quantity";
import { checkPrinted, type Printed } from "./printed";

const made = (
  mass: Parameters<typeof strengthPrepared>[0],
  of: string,
  volume: "1.00 L" | "0.075 L" | "0.500 L" | "2.50 L" | "2.00 L",
): Quantity => strengthPrepared(mass, { of, volume }).concentration;

const cases: readonly Printed[] = [
  {
    item: "3.3 worked example 3.17",
    question: "NaCl in 0.250 L of 5.30 mol/L",
    result: () => massOf(feedAmount("NaCl", { volume: "0.250 L", strength: "5.30 mol/L" }), "NaCl"),
    unit: "g",
    printed: "77.4",
    within: 0.05,
  },
  {
    item: "3.3 worked example 3.17, follow-up",
    question: "CaCl2 in 250.0 mL of 0.200 mol/L",
    result: () => massOf(feedAmount("CaCl2", { volume: "250.0 mL", strength: "0.200 mol/L" }), "CaCl2"),
    unit: "g",
    printed: "5.55",
    within: 0.005,
  },
  {
    item: "3.3 worked example 3.18, follow-up",
    question: "volume of 1.50 mol/L KBr that holds 66.0 g",
    result: () => amountOf("66.0 g", "KBr").dividedBy("1.50 mol/L"),
    unit: "L",
    printed: "0.370",
    within: 0.0005,
  },
  {
    item: "3.3 section exercise 4b",
    question: "98.0 g H3PO4 in 1.00 L",
    result: () => made("98.0 g", "H3PO4", "1.00 L"),
    unit: "mol/L",
    printed: "1.00",
    within: 0.005,
  },
  {
    item: "3.3 section exercise 4f",
    question: "1.8e4 mg HCl in 0.075 L",
    result: () => made("1.8e4 mg", "HCl", "0.075 L"),
    unit: "mol/L",
    printed: "6.6",
    within: 0.05,
  },
  {
    item: "3.3 section exercise 12b",
    question: "4.25 g NH3 in 0.500 L",
    result: () => made("4.25 g", "NH3", "0.500 L"),
    unit: "mol/L",
    printed: "0.499",
    within: 0.0005,
  },
  {
    item: "3.3 section exercise 12c",
    question: "1.49 kg C3H7OH in 2.50 L",
    result: () => made("1.49 kg", "C3H7OH", "2.50 L"),
    unit: "mol/L",
    printed: "9.92",
    within: 0.005,
  },
  {
    item: "3.3 section exercise 22",
    question: "868.8 g HCl in 2.00 L",
    result: () => made("868.8 g", "HCl", "2.00 L"),
    unit: "mol/L",
    printed: "11.9",
    within: 0.05,
  },
  {
    item: "3.3 section exercise 24",
    question: "volume of 0.20 mol/L K2SO4 that holds 57 g",
    result: () => amountOf("57 g", "K2SO4").dividedBy("0.20 mol/L"),
    unit: "L",
    printed: "1.6",
    within: 0.05,
  },
  {
    item: "3.3 section exercise 6",
    question: "glucose in 0.500 L of 0.30 mol/L",
    result: () => massOf(feedAmount("C6H12O6", { volume: "0.500 L", strength: "0.30 mol/L" }), "C6H12O6"),
    unit: "g",
    printed: "27",
    within: 0.5,
  },
  {
    item: "3.3 section exercise 8a",
    question: "sulfuric acid in 2.00 L of 18.5 mol/L",
    result: () => massOf(feedAmount("H2SO4", { volume: "2.00 L", strength: "18.5 mol/L" }), "H2SO4"),
    unit: "g",
    printed: "3.63e3",
    within: 5,
  },
  {
    item: "3.4 section exercise 5",
    question: "calcium in water of 175 mg CaCO3 per litre",
    result: () => convertStrength("175 mg/L", { of: "CaCO3", to: "mol/L" }),
    unit: "mol/L",
    printed: "1.75e-3",
    within: 0.000005,
  },
  {
    item: "3.4 section exercise 9",
    question: "CuI in 454 g of salt with 0.0100 %",
    result: () => amountOf("454 g", "CuI", { assay: "0.0100 %" }),
    unit: "mol",
    printed: "2.38e-4",
    within: 0.0000005,
  },
  {
    item: "3.3 worked example 3.19",
    question: "0.850 L of 5.00 mol/L made up to 1.80 L",
    result: () => dilute({ from: "5.00 mol/L", take: "0.850 L", makeUpTo: "1.80 L" }).answer,
    unit: "mol/L",
    printed: "2.36",
    within: 0.005,
  },
  {
    item: "3.3 worked example 3.19, follow-up",
    question: "25.0 mL of 2.04 mol/L made up to 500.0 mL",
    result: () => dilute({ from: "2.04 mol/L", take: "25.0 mL", makeUpTo: "500.0 mL" }).answer,
    unit: "mol/L",
    printed: "0.102",
    within: 0.0005,
  },
  {
    item: "3.3 worked example 3.20, follow-up",
    question: "0.125 mol/L from 0.250 L of 1.88 mol/L",
    result: () => dilute({ from: "1.88 mol/L", take: "0.250 L", to: "0.125 mol/L" }).answer,
    unit: "L",
    printed: "3.76",
    within: 0.005,
  },
  {
    item: "3.3 worked example 3.21, follow-up",
    question: "0.575 mol/L from 50.00 mL of 3.00 mol/L",
    result: () => dilute({ from: "3.00 mol/L", take: "50.00 mL", to: "0.575 mol/L" }).answer,
    unit: "L",
    printed: "0.261",
    within: 0.0005,
  },
  {
    item: "3.3 section exercise 20b",
    question: "0.5000 L of 0.1222 mol/L made up to 1.250 L",
    result: () => dilute({ from: "0.1222 mol/L", take: "0.5000 L", makeUpTo: "1.250 L" }).answer,
    unit: "mol/L",
    printed: "0.04888",
    within: 0.000005,
  },
  {
    item: "3.4 worked example 3.23",
    question: "HCl in 0.500 L of 37.2 % acid of 1.19 g/mL",
    result: () => massOf(feedAmount("HCl", { volume: "500 mL", strength: "37.2 % w/w", density: "1.19 g/mL" }), "HCl"),
    unit: "g",
    printed: "221",
    within: 0.5,
  },
  {
    item: "3.4 worked example 3.23, follow-up",
    question: "volume of 37.2 % acid of 1.19 g/mL that holds 125 g HCl",
    result: () => quantity("125 g").dividedBy(convertStrength("37.2 % w/w", { to: "g/L", density: "1.19 g/mL" })),
    unit: "mL",
    printed: "282",
    within: 0.5,
  },
  {
    item: "3.4 section exercise 1",
    question: "68.0 % nitric acid for 400.0 g of 10.0 %",
    result: () =>
      mixToStrength({ strong: "68.0 % w/w", weak: "0 % w/w", wanted: "10.0 % w/w", mass: "400.0 g" }).strong,
    unit: "g",
    printed: "58.8",
    within: 0.05,
  },
  {
    item: "3.4 section exercise 11",
    question: "glucose, 5.0 % by mass, 1.029 g/mL",
    result: () => convertStrength("5.0 % w/w", { of: "C6H12O6", to: "mol/L", density: "1.029 g/mL" }),
    unit: "mol/L",
    printed: "0.29",
    within: 0.005,
  },
  ...(
    [
      ["HCl", "37.0 % w/w", "1.19 g/mL", "12.1"],
      ["HNO3", "70.0 % w/w", "1.42 g/mL", "15.8"],
      ["NH3", "28.0 % w/w", "0.90 g/mL", "14.8"],
      ["H3PO4", "85.0 % w/w", "1.70 g/mL", "14.7"],
    ] as const
  ).map(([of, strength, density, printed]) => ({
    item: "usual laboratory table of concentrated reagents (memory)",
    question: `${of}, ${strength}, ${density}`,
    result: (): Quantity => convertStrength(strength, { of, to: "mol/L", density }),
    unit: "mol/L",
    printed,
    within: 0.05,
  })),
];

describe("published solution problems", () => {
  checkPrinted(cases);
});

describe("strengths the trade prints", () => {
  // Concentrations of bottled reagents, common practice, no source; two or three figures as printed on labels, half a unit of
  // the last for the rounding of the label and twice the standard uncertainty that is stated with the answer.
  test.each([
    ["HCl", "37 % w/w", "12.0"],
    ["HCl", "32 % w/w", "10.2"],
    ["H2SO4", "96 % w/w", "18.0"],
    ["H2SO4", "37 % w/w", "4.8"],
    ["HNO3", "68 % w/w", "15.2"],
    ["NH3", "25 % w/w", "13.3"],
    ["NH3", "10 % w/w", "5.6"],
    ["CH3COOH", "99.8 % w/w", "17.4"],
    ["CH3COOH", "5 % w/w", "0.84"],
    ["CH3COOH", "6 % w/w", "1.0"],
    ["H2O2", "3 % w/w", "0.89"],
  ] as const)("%s of %s is %s mol/L with the density looked up", (of, strength, printed) => {
    const c = convertStrength(strength, { of, to: "mol/L" });
    const half = 10 ** -(printed.length - printed.indexOf(".") - 1) / 2;
    const off = Math.abs(c.in("mol/L").toNumber() - Number(printed));
    expect(off).toBeLessThanOrEqual(half + 2 * c.standardUncertainty!.toNumber());
  });

  // Degrees Baumé against strength in the American acid trade (memory of the trade tables): 20 °Bé muriatic acid is 31.45 %,
  // 22 °Bé 35.21 %, 60 °Bé oil of vitriol 77.67 %, 66 °Bé 93.19 %, 42 °Bé nitric acid 67.18 %.
  test.each([
    ["HCl", "20 °Bé", 31.45],
    ["HCl", "22 °Bé", 35.21],
    ["H2SO4", "60 °Bé", 77.67],
    ["H2SO4", "66 °Bé", 93.19],
    ["HNO3", "42 °Bé", 67.18],
  ] as const)("%s of %s is %d %% within its stated uncertainty", (of, strength, printed) => {
    const w = convertStrength(strength, { of, to: "% w/w" });
    const u = w.standardUncertainty!.toNumber();
    expect(u).toBeLessThan(1);
    expect(Math.abs(w.in("%").toNumber() - printed)).toBeLessThan(2 * u);
  });

  // Safety data sheet for 31.45 % hydrochloric acid: relative density 1.16 at 15.6 °C.
  test("31.45 % hydrochloric acid has the relative density its sheet prints", () => {
    const rho = densityOfSolution("HCl", "31.45 %", { temperature: "60 °F" }).in("g/mL").toNumber();
    expect(Math.abs(rho / densityOfWater("60 °F").in("g/mL").toNumber() - 1.16)).toBeLessThan(0.005);
  });

  // OIML R 22: 40 % by volume is 33.3 % by mass at 20 °C; label figure of spirits (memory).
  test("spirits of 40 % by volume hold 33.3 % by mass", () => {
    expect(convertStrength("40 % v/v", { of: "C2H5OH", to: "% w/w" }).in("%").toFixed(1)).toBe("33.3");
  });

  // Common practice, no source: ten-volume peroxide is sold as 3 % w/v.
  test("ten-volume peroxide is 3 % w/v", () => {
    expect(convertStrength("10 volumes", { of: "H2O2", to: "% w/v" }).in("g/L").toFixed(0)).toBe("30");
  });
});

/** What is read between two points, and the share of the chord's doubt that falls there. */
function between(a: CurvePoint, b: CurvePoint, percent: number): { read: number; share: number } {
  const along = (percent - a.percent) / (b.percent - a.percent);
  return { read: 1 / (1 / a.plain + along * (1 / b.plain - 1 / a.plain)), share: 4 * along * (1 - along) };
}

describe("densities between tabulated points", () => {
  // Every inner point of every printed or recalled table is held out in turn and read from the points around it. What is
  // allowed is the bound of the chord and half the last digit of the prints, and nothing of the stated doubt of a table. The
  // straight line drawn for hypochlorite is left out, and tables too short to show a bend once a point is gone.
  test("held out: how far the points lie from what is read without them, and which lie farther than the bound", () => {
    const parts: number[] = [];
    const missed: string[] = [];
    for (const row of SOLUTION_DENSITIES()) {
      const points = curveOf(row);
      if (row.knownAs === "estimated" || points.length < 4) continue;
      for (let i = 1; i + 1 < points.length; i++) {
        const rest = points.filter((_, at) => at !== i);
        const [a, out, b] = [points[i - 1]!, points[i]!, points[i + 1]!];
        const { read, share } = between(a, b, out.percent);
        const allowed = share * chordBound(rest, i - 1) + Math.max(a.half, b.half) + out.half;
        const part = Math.abs(read - out.plain) / allowed;
        parts.push(part);
        if (part > 1) missed.push(`${row.solute} ${out.percent} %: ${part.toFixed(2)} of what is allowed`);
      }
    }
    parts.sort((x, y) => x - y);
    const quantile = (q: number): string => parts[Math.floor(q * parts.length)]!.toFixed(2);
    // Iron(III) chloride and lye are recalled and uneven there; one percent of acetate is a stray point or a stray print.
    expect(missed).toEqual([
      "FeCl3 20 %: 1.41 of what is allowed",
      "FeCl3 45 %: 1.62 of what is allowed",
      "NaCH3COO 1 %: 1.62 of what is allowed",
      "NaOH 48 %: 1.32 of what is allowed",
    ]);
    expect({ count: parts.length, half: quantile(0.5), nineInTen: quantile(0.9), nearlyAll: quantile(0.99) }).toEqual({
      count: 747,
      half: "0.16",
      nineInTen: "0.55",
      nearlyAll: "0.91",
    });
  });

  // The handbook sets of acetic acid, magnesium and zinc sulfate were taken down apart from the tables that are looked up.
  test("a second set of a solute differs by no more than chord, print and the stated difference of its sources allow", () => {
    const compared = new Map<string, number>();
    for (const row of SOLUTION_DENSITIES()) {
      const first = SOLUTION_DENSITIES().find(({ solute }) => solute === row.solute)!;
      if (first === row || first.knownAs === "estimated") continue;
      const curve = curveOf(first);
      for (const { percent, plain, half } of curveOf(row).slice(1)) {
        const k = curve.findIndex((point) => point.percent >= percent) - 1;
        if (k < 0) continue;
        const [a, b] = [curve[k]!, curve[k + 1]!];
        const { read, share } = between(a, b, percent);
        const printed = Math.max(a.half, b.half) + half;
        const allowed = share * chordBound(curve, k) + printed + Number(first.doubt ?? 0);
        expect(Math.abs(read - plain), `${row.solute} ${percent} %`).toBeLessThanOrEqual(allowed);
        compared.set(row.solute, (compared.get(row.solute) ?? 0) + 1);
      }
    }
    expect(Object.fromEntries(compared)).toEqual({ CH3COOH: 9, MgSO4: 8, ZnSO4: 4 });
  });

  // Hydrochloric acid at 20 °C and 20.39 % has a density of 1.1000 (Küster and Thiel, Rechentafeln, memory).
  test("hydrochloric acid of 1.1000 g/mL is 20.39 %", () => {
    const w = massFractionFromDensity("HCl", "1.1000 g/mL");
    expect(Math.abs(w.in("%").toNumber() - 20.39)).toBeLessThan(2 * w.standardUncertainty!.toNumber());
  });
});

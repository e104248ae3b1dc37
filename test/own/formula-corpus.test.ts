// Every formula of the corpus: read, held against a second reader of another kind (regular expressions, recursion, text
// replacement; fractions of bigints), printed in every form and read back.
import { describe, expect, it } from "vitest";
import { ATOMIC_WEIGHTS } from "../../src/element/data/atomic-weights";
import { parseFormula } from "../../src/formula";
import { FORMULAS } from "../data/formulas";

interface Held {
  readonly counts: Map<string, bigint>;
  readonly charge: number;
}

const SCALE = 10n ** 12n; // counts in units of 1e-12: the corpus has at most four decimals, nested once
const SUP = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const SUB = "₀₁₂₃₄₅₆₇₈₉";

/** Decimal text in units of 1e-12. */
function units(text: string): bigint {
  const [whole = "0", places = ""] = text.split(".");
  return BigInt(whole + places.padEnd(12, "0"));
}

/** Innermost brackets first, each replaced by its contents written out with counts. */
function expand(text: string): string {
  let rest = text;
  for (;;) {
    const next = rest.replace(/[([]([^()[\]]*)[)\]](\d*\.?\d*)/, (_, inner: string, count: string) => {
      const factor = count === "" ? SCALE : units(count);
      return [...inner.matchAll(/([A-Z][a-z]?)(\d*\.?\d*)/g)]
        .map(([, symbol, n]) => {
          const product = ((n === "" ? SCALE : units(n!)) * factor) / SCALE;
          return `${symbol}${product / SCALE}.${(product % SCALE).toString().padStart(12, "0")}`;
        })
        .join("");
    });
    if (next === rest) return rest;
    rest = next;
  }
}

/** Adducts cut apart: after a full stop there is water, a capital letter, or the one carbonate peroxide. */
function partsOf(text: string): string[] {
  return text
    .replace(/(?<![*·]\d*)\.(?=(?:\d+(?:\.\d+)?)?H2O$)/, "*")
    .replace(/\.(?=[A-Z])/g, "*")
    .replace("2Na2CO3.3H2O2", "2Na2CO3*3H2O2")
    .split(/[*·]/);
}

function secondReading(written: string): Held {
  let text = [...written].map((c) => (SUB.includes(c) ? String(SUB.indexOf(c)) : c)).join("");
  let charge = 0;
  text = text.replace(new RegExp(`([${SUP}]*)([⁺⁻])$`), (_, n: string, sign: string) => {
    const digits = [...n].map((c) => SUP.indexOf(c)).join("");
    charge = Number(digits || 1) * (sign === "⁺" ? 1 : -1);
    return "";
  });
  text = text.replace(/(?:\^(\d*))?([+-])$/, (_, n: string | undefined, sign: string) => {
    charge = Number(n || 1) * (sign === "+" ? 1 : -1);
    return "";
  });
  const counts = new Map<string, bigint>();
  for (const part of partsOf(text)) {
    const [, number = "", body = ""] = /^(\d*\.?\d*)(.*)$/.exec(part)!;
    const factor = number === "" ? SCALE : units(number);
    for (const [, symbol, n] of expand(body).matchAll(/([A-Z][a-z]?)(\d*\.?\d*)/g)) {
      const count = ((n === "" ? SCALE : units(n!)) * factor) / SCALE;
      counts.set(symbol!, (counts.get(symbol!) ?? 0n) + count);
    }
  }
  return { counts, charge };
}

/** Default weight in 1e-9 Da, read from the published text. */
const weights = new Map(
  ATOMIC_WEIGHTS().map((row) => {
    const text = row.kind === "value" ? row.value : row.kind === "interval" ? row.conventional : undefined;
    return [row.symbol, text === undefined ? undefined : BigInt((Number(text) * 1e9).toFixed(0))];
  }),
);

const readings = FORMULAS.map((text) => ({ text, formula: parseFormula(text), second: secondReading(text) }));

describe("the formula corpus", () => {
  it("holds more than three thousand formulas, each once", () => {
    expect(FORMULAS.length).toBe(3116);
    expect(new Set(FORMULAS).size).toBe(FORMULAS.length);
  });

  it("is read as a second, independent reader reads it", () => {
    const mine = readings.map(({ text, formula }) => ({
      text,
      charge: formula.charge,
      counts: formula.composition
        .map(({ symbol, count }) => `${symbol === "D" ? "D" : symbol} ${(count.n * SCALE) / count.d}`)
        .sort(),
    }));
    const other = readings.map(({ text, second }) => ({
      text,
      charge: second.charge,
      counts: [...second.counts].map(([symbol, count]) => `${symbol} ${count}`).sort(),
    }));
    expect(mine).toEqual(other);
  });

  it("weighs what an exact sum over the second reading gives", () => {
    let compared = 0;
    for (const { text, formula, second } of readings) {
      let sum = 0n;
      let known = true;
      for (const [symbol, count] of second.counts) {
        const weight = weights.get(symbol);
        if (weight === undefined) known = false;
        else sum += weight * count;
      }
      if (!known) {
        expect(formula.nano, text).toBeNaN();
        continue;
      }
      expect(BigInt(formula.nano) * SCALE, text).toBe(sum * BigInt(formula.denominator));
      compared += 1;
    }
    expect(compared).toBeGreaterThan(3000);
  });

  it("reads back from every printed form", () => {
    expect(readings.length, "rows to test").toBeGreaterThan(0);
    for (const { text, formula } of readings) {
      for (const printed of [formula.toString(), formula.toUnicode(), formula.toHTML(), formula.toLaTeX()]) {
        const again = parseFormula(printed);
        expect(again.toString(), `${text} printed ${printed}`).toBe(formula.toString());
        expect(again.hasSameComposition(formula), `${text} printed ${printed}`).toBe(true);
      }
      expect(parseFormula(formula.toHill()).hasSameComposition(formula), formula.toHill()).toBe(true);
      expect(formula.toString(), text).toMatch(/^[\x20-\x7e]+$/);
    }
  });
});

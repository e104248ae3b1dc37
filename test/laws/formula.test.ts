// Laws that hold for every formula: the fast scanner and the full reader agree; printed forms read back; masses add up;
// nothing but a coded error ever comes out of bad input; a limit is refused at once.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ATOMIC_WEIGHTS } from "../../src/element/data/atomic-weights";
import { FormulaError, formulaFromJSON, molarMass, parseFormula, tryParseFormula } from "../../src/formula";
import { evaluate } from "../../src/formula/evaluate";
import { readFormula } from "../../src/formula/read/read";
import { found, foundCells, scanFormula } from "../../src/formula/read/scan";

const symbols = ATOMIC_WEIGHTS().map(({ symbol }) => symbol);
const weighed = ATOMIC_WEIGHTS()
  .filter(({ kind }) => kind !== "none")
  .map(({ symbol }) => symbol);

const count = fc.oneof(
  { weight: 3, arbitrary: fc.constant("") },
  { weight: 3, arbitrary: fc.integer({ min: 2, max: 40 }).map(String) },
  { weight: 1, arbitrary: fc.constantFrom("0.5", "1.5", "2.25", "0.947", "₂", "₁₂", "_{3}", "_{8/3}", "3.2") },
);
const brackets = fc.constantFrom<[string, string]>(["(", ")"], ["[", "]"], ["{", "}"]);
const { group } = fc.letrec<{ atom: string; group: string; run: string }>((tie) => ({
  atom: fc.tuple(fc.constantFrom(...weighed, "D"), count).map((pair) => pair.join("")),
  run: fc
    .array(fc.oneof({ maxDepth: 3 }, tie("atom"), tie("group")), { minLength: 1, maxLength: 4 })
    .map((a) => a.join("")),
  group: fc
    .oneof({ maxDepth: 3 }, tie("atom"), fc.tuple(brackets, tie("run"), count))
    .map((part) => (typeof part === "string" ? part : `${part[0][0]}${part[1]}${part[0][1]}${part[2]}`)),
}));
// Refused rightly: half an ion, a product beyond 2^53, what looks like SO42- or Fe(III).
const readable = (text: string): boolean => {
  const outcome = tryParseFormula(text);
  return outcome.ok || !/fractional-charge|count-too-large|ambiguous-charge|roman-numeral/.test(outcome.error.code);
};
const run = fc
  .array(group, { minLength: 1, maxLength: 4 })
  .map((list) => list.join(""))
  .filter(readable);
const multiplier = fc.constantFrom("", "", "2", "10", "0.5", "½", "1/3");
const charge = fc.constantFrom("", "", "", "+", "-", "^2+", "^{3-}", "²⁻", "+2");
const phase = fc.constantFrom("", "", "", "(s)", "(aq)", "(cr)");
const written = fc
  .tuple(run, fc.array(fc.tuple(fc.constantFrom("·", "*", " · "), multiplier, run), { maxLength: 2 }), charge, phase)
  .map(([first, rest, sign, state]) => first + rest.map((part) => part.join("")).join("") + sign + state)
  .filter(readable);

describe("laws of formulas", () => {
  it("reads the same by the fast scanner and by the full reader", () => {
    let scanned = 0;
    const agree = (text: string): void => {
      if (!scanFormula(text, 0, text.length)) return;
      scanned += 1;
      const { lists, charge: number, phase: state } = found;
      const cells = [...foundCells].filter((cell) => cell !== 0);
      const reading = readFormula(text);
      const full = evaluate(reading.nodes, text);
      expect(full.denominator, text).toBe(lists?.denominator ?? 1);
      expect(number, text).toBe(full.charge);
      expect(state, text).toBe(reading.phase);
      const mine =
        lists === undefined
          ? cells.map((cell) => `${cell & 0x1ffff}:${cell >> 17}`).sort()
          : lists.elementIndices.map((index, i) => `${index}:${lists.numerators[i]}`).sort();
      expect(mine, text).toEqual(full.elementIndices.map((index, i) => `${index}:${full.numerators[i]}`).sort());
    };
    fc.assert(fc.property(written, agree), { numRuns: 2000, seed: 4 });
    // What nobody would write must not be read by the scanner alone: characters of formulas in any order.
    const soup = fc.string({
      unit: fc.constantFrom(..."HNaClOSCu0123459.·*()[]{}+-^ sgaq.01₂₀²⁺⁻₁"),
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(fc.property(soup, agree), { numRuns: 10_000 });
    const pieces =
      "Fe O Cl Si (OH) (SO4) H2O . . . 0 1 2 3 10 25 05 0.5 · * ] [ ₂ ₀ ² ^2- + - ⁺ (aq) (s) / ½ n D".split(" ");
    const mixed = fc.array(fc.constantFrom(...pieces), { minLength: 1, maxLength: 9 }).map((list) => list.join(""));
    fc.assert(fc.property(mixed, agree), { numRuns: 10_000 });
    // Fractions of water after a full stop, and what may follow them.
    const first = fc.constantFrom("ZnCl2", "Cu(C2O4)", "Na2H", "O16", "Fe3", "K1", "[Cu]2", "Si2");
    const stop = fc.constantFrom(".", "·", "*", "..", ".1.", ".2.");
    const number = fc.constantFrom("0.5", "1.5", "2.25", "5", "12.5", "13.5", "0.0", "10", "1.0", "02.5");
    const last = fc.constantFrom("H2O", "H2O.O", "H2O·NaCl", "H2O2", "D2O", "(H2O)", "O", "Al");
    const watery = fc.tuple(first, stop, number, last).map((list) => list.join(""));
    fc.assert(fc.property(watery, agree), { numRuns: 3000 });
    expect(scanned).toBeGreaterThan(500);
  });

  it("reads every printed form back to an equal formula", () => {
    fc.assert(
      fc.property(written, (text) => {
        const formula = parseFormula(text);
        for (const printed of [formula.toString(), formula.toUnicode(), formula.toHTML(), formula.toLaTeX()]) {
          expect(parseFormula(printed).equals(formula), `${text} -> ${printed}`).toBe(true);
        }
        expect(parseFormula(formula.toHill()).hasSameComposition(formula), formula.toHill()).toBe(true);
        expect(formulaFromJSON(JSON.parse(JSON.stringify(formula))).equals(formula)).toBe(true);
      }),
      { numRuns: 600 },
    );
  });

  it("weighs a whole as the sum of its parts, exactly", () => {
    fc.assert(
      fc.property(written, (text) => {
        const formula = parseFormula(text.replace(/\((?:s|aq|cr)\)$/, ""));
        const parts = formula.parts.map((part) => molarMass(part.formula).times(part.multiplier));
        const total = parts.reduce((sum, mass) => sum.plus(mass));
        expect(total.equals(molarMass(formula)), text).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it("adds, takes away and multiplies without loss", () => {
    fc.assert(
      fc.property(run, run, fc.integer({ min: 1, max: 20 }), (a, b, n) => {
        const [f, g] = [parseFormula(a), parseFormula(b)];
        expect(f.plus(g).minus(g).hasSameComposition(f)).toBe(true);
        expect(f.plus(g).hasSameComposition(g.plus(f))).toBe(true);
        const sum = Array.from({ length: n - 1 }).reduce<typeof f>((total) => total.plus(f), f);
        expect(f.times(n).hasSameComposition(sum), `${n} x ${a}`).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  it("gives the same counts whatever the order of the atoms", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(symbols, { minLength: 1, maxLength: 12 }), (list) => {
        expect(parseFormula(list.join("")).symbols).toEqual(parseFormula([...list].reverse().join("")).symbols);
      }),
      { numRuns: 200 },
    );
  });

  it("answers any text with a formula or a coded error that points into it", () => {
    const text = fc.oneof(
      fc.string({ unit: "binary", maxLength: 40 }),
      fc.string({ unit: fc.constantFrom(..."HNaClOSCuxne0123459.,·*•()[]{}+-−^_ ₂²⁺½/\\<>&;$сОＯ"), maxLength: 24 }),
      fc.tuple(written, fc.nat(40), fc.constantFrom("", "(", ")", ".", "^", "0", "n", "#")).map(([t, at, c]) => {
        const k = Math.min(at, t.length);
        return t.slice(0, k) + c + t.slice(k + 1);
      }),
    );
    fc.assert(
      fc.property(text, (input) => {
        const outcome = tryParseFormula(input);
        if (outcome.ok) {
          expect(parseFormula(outcome.value.toString()).equals(outcome.value), input).toBe(true);
          return;
        }
        const { error } = outcome;
        expect(error).toBeInstanceOf(FormulaError);
        expect(error.code).toMatch(/^formula\.[a-z-]+$/);
        expect(error.input, input).toBe(input);
        expect(error.position, input).toBeGreaterThanOrEqual(0);
        expect(error.position, input).toBeLessThanOrEqual(input.length);
      }),
      { numRuns: 8000 },
    );
  });

  it("leaves nothing behind after an error", () => {
    const water = (): string =>
      parseFormula("H2O")
        .composition.map((e) => `${e.symbol}${e.count}`)
        .join(" ");
    const before = water();
    fc.assert(
      fc.property(written, fc.constantFrom("(", "#", "Qq", "]", "^", "00"), fc.nat(30), (text, bad, at) => {
        tryParseFormula(text.slice(0, at) + bad + text.slice(at));
        scanFormula(text.slice(0, at) + bad, 0, at + bad.length);
        expect(water()).toBe(before);
      }),
      { numRuns: 2000 },
    );
  });
});

// Laws of the naming rules: name and formula undo each other, and no text makes them hang or throw anything untyped.
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { isPreparativeError } from "../../src/foundation";
import { gcd } from "../../src/foundation/gcd";
import { ELEMENT_WORDS } from "../../src/ion/data/element-words";
import { ANIONS } from "../../src/ion/data/ions";
import * as room from "../../src/substance";
import { formulaOf, nameOf, tryFormulaOf, tryNameOf, trySubstance } from "../../src/substance";

// Cations: every metal at each usual charge (some 150), and ammonium.
const cations = [
  { text: "NH4", charge: 1, group: true },
  ...ELEMENT_WORDS.flatMap((word) =>
    (word.charges ?? []).map((charge) => ({ text: word.symbol, charge, group: false })),
  ),
];
// Anions: the polyatomic ones that are read by composition alone, and the halides, oxide and sulfide.
const anions = [
  ...ANIONS.filter((row) => row.rare === undefined && row.alone === undefined && !/[()]/.test(row.formula)).map(
    (row) => ({
      text: row.formula,
      charge: row.charge,
      group: true,
    }),
  ),
  ...(["F", "Cl", "Br", "I"] as const).map((text) => ({ text: text as string, charge: -1, group: false })),
  ...(["O", "S"] as const).map((text) => ({ text: text as string, charge: -2, group: false })),
];

const times = (text: string, n: number, group: boolean) => (n === 1 ? text : group ? `(${text})${n}` : text + n);

// "potassium silicate" and "calcium silicate" are the registry's metasilicates, as in the trade.
const TRADE: ReadonlySet<string> = new Set(["K4SiO4", "Ca2SiO4"]);

const salt = fc
  .tuple(fc.constantFrom(...cations), fc.constantFrom(...anions), fc.constantFrom(0, 0, 0.5, 1, 1.5, 2, 5, 7, 12, 18))
  .map(([cation, anion, water]) => {
    const g = gcd(cation.charge, -anion.charge);
    const core =
      times(cation.text, -anion.charge / g, cation.group) + times(anion.text, cation.charge / g, anion.group);
    return water === 0 ? core : `${core}·${water === 1 ? "" : water}H2O`;
  })
  .filter((formula) => !TRADE.has(formula.split("·")[0]!));

describe("names and formulas", () => {
  it("undo each other for salts of every metal with every common anion", () => {
    fc.assert(
      fc.property(salt, (formula) => {
        const name = nameOf(formula);
        const back = formulaOf(name, { literal: true });
        expect(back.hasSameComposition(parseFormula(formula)), `${formula} -> ${name} -> ${back}`).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  it("undo each other for binary molecules", () => {
    // Atoms from 1 to 10 of each: the range of the simple prefixes in use.
    const nonMetals = ["N", "P", "S", "Se", "Te", "As", "B", "Si", "C", "Xe", "Cl", "Br", "I"];
    const pair = fc.tuple(
      fc.constantFrom(...nonMetals),
      fc.integer({ min: 1, max: 10 }),
      fc.constantFrom("O", "F"),
      fc.integer({ min: 1, max: 10 }),
    );
    fc.assert(
      fc.property(pair, ([first, n, second, m]) => {
        const formula = `${first}${n === 1 ? "" : n}${second}${m === 1 ? "" : m}`;
        const back = formulaOf(nameOf(formula), { literal: true });
        expect(back.hasSameComposition(parseFormula(formula)), `${formula} -> ${nameOf(formula)} -> ${back}`).toBe(
          true,
        );
      }),
      { numRuns: 300 },
    );
  });

  it("answer any text with a value or a typed error", () => {
    const words = fc.constantFrom(
      "sodium",
      "tetra",
      "bis(",
      ")",
      "hydrate",
      "—",
      "(III)",
      "(2/3)",
      "ate",
      "di",
      "sulfate",
      "hydrogen",
      " ",
      "ion",
      "acid",
    );
    const text = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.array(words, { maxLength: 14 }).map((list) => list.join("")),
    );
    fc.assert(
      fc.property(text, (any) => {
        for (const outcome of [tryFormulaOf(any), tryNameOf(any), trySubstance(any)])
          if (!outcome.ok) expect(isPreparativeError(outcome.error)).toBe(true);
      }),
      { numRuns: 200 },
    );
  });

  it("refuse hostile values with a typed error at every entry point", () => {
    const hostile: readonly unknown[] = [
      undefined,
      null,
      7,
      Number.NaN,
      {},
      [],
      [7],
      [null],
      Symbol("x"),
      10n,
      () => 1,
      "",
      "   ",
      "\u0000",
      "a".repeat(501),
      { material: 7 },
      [{ material: "NaCl", strength: "abc" }],
    ];
    let refused = 0;
    for (const [name, entry] of Object.entries(room)) {
      if (typeof entry !== "function" || /^(Substance|SubstanceError|ions)$/.test(name)) continue;
      for (const value of hostile) {
        try {
          (entry as (value: unknown) => unknown)(value);
        } catch (error) {
          refused += 1;
          expect(isPreparativeError(error), `${name}(${String(value)}): ${String(error)}`).toBe(true);
        }
      }
    }
    expect(refused).toBeGreaterThan(200);
    for (const options of [null, 7, { limit: Number.NaN }, { limit: "x" }])
      expect(room.trySearch("salt", options as never).ok).toBe(false);
    expect(room.tryCautions(["NaCl"], { circumstances: 7 } as never).ok).toBe(false);
    expect(room.tryNameOf("NaCl", "roman" as never).ok).toBe(false);
  });

  it("stay quick on formulas and names made to be slow", () => {
    const hostile = [
      "Fe900Cr200O4000H300Cl99N500S200C400",
      "K99Mo99O300H99S50N50P50",
      "(((((((((((((((((((Na)))))))))))))))))))Cl",
      "[Co(NH3)1(NH3)1(NH3)1(NH3)1(NH3)1(NH3)1(NH3)1]Cl3",
    ];
    const started = performance.now();
    for (const formula of hostile) tryNameOf(formula);
    for (const name of [
      "di".repeat(200),
      "tetraammine".repeat(40),
      "hydrogen ".repeat(50),
      "sodium ".repeat(60),
      `${"bis(".repeat(60)}x`,
    ])
      tryFormulaOf(name);
    // two orders of magnitude above the usual time: only a hang fails
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});

// Laws of the naming rules: name and formula undo each other, and no text makes them hang or throw anything untyped.
import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { attempt, isPreparativeError } from "../../src/foundation";
import { gcd } from "../../src/foundation/gcd";
import { ELEMENT_WORDS } from "../../src/ion/data/element-words";
import { ANIONS } from "../../src/ion/data/ions";
import { anhydrousKey } from "../../src/ion/keys";
import { readNotation } from "../../src/ion/notation";
import { saltOf } from "../../src/ion/salt-readings";
import * as room from "../../src/substance";
import { formulaOf, nameOf, readingsOf, tryFormulaOf, tryNameOf, trySubstance } from "../../src/substance";
import { REGISTRY } from "../../src/substance/data/registry";

// Cations: every metal at each usual charge (some 150), and ammonium.
const cations = [
  { text: "NH4", charge: 1, group: true },
  ...ELEMENT_WORDS().flatMap((word) =>
    (word.charges ?? []).map((charge) => ({ text: word.symbol, charge, group: false })),
  ),
];
// Anions: the polyatomic ones that are read by composition alone, and the halides, oxide and sulfide.
const anions = [
  ...ANIONS()
    .filter((row) => row.rare === undefined && row.alone === undefined && !/[()]/.test(row.formula))
    .map((row) => ({
      text: row.formula,
      charge: row.charge,
      group: true,
    })),
  ...(["F", "Cl", "Br", "I"] as const).map((text) => ({ text: text as string, charge: -1, group: false })),
  ...(["O", "S"] as const).map((text) => ({ text: text as string, charge: -2, group: false })),
];

const times = (text: string, n: number, group: boolean) => (n === 1 ? text : group ? `(${text})${n}` : text + n);

const salt = fc
  .tuple(fc.constantFrom(...cations), fc.constantFrom(...anions), fc.constantFrom(0, 0, 0.5, 1, 1.5, 2, 5, 7, 12, 18))
  .map(([cation, anion, water]) => {
    const g = gcd(cation.charge, -anion.charge);
    const core =
      times(cation.text, -anion.charge / g, cation.group) + times(anion.text, cation.charge / g, anion.group);
    return water === 0 ? core : `${core}·${water === 1 ? "" : water}H2O`;
  });

/** The same but for crystal water. */
const sameCore = (a: string, b: string): boolean =>
  anhydrousKey(readNotation(a)).key === anhydrousKey(readNotation(b)).key;

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

  // Ions of the registry: every cation and anion that its salts are read as, crosswise.
  it("undo each other for the registry's ions crosswise, and no two salts share a name", () => {
    const cationTexts = new Map<string, { text: string; charge: number; group: boolean }>();
    const anionTexts = new Map<string, { text: string; charge: number; group: boolean }>();
    for (const { formula } of REGISTRY()) {
      const salt = saltOf(readNotation(formula).parts[0]!);
      for (const { ion, element, charge } of salt?.cations ?? []) {
        const text = ion?.row.formula ?? element!.symbol;
        if (Number.isInteger(charge)) cationTexts.set(`${text} ${charge}`, { text, charge, group: ion !== undefined });
      }
      for (const { ion } of salt?.anions ?? []) {
        const complex = /[()]/.test(ion.row.formula);
        const text = complex ? `[${ion.row.formula}]` : ion.row.formula;
        anionTexts.set(`${text} ${ion.charge}`, {
          text,
          charge: ion.charge,
          group: ion.element === undefined && !complex,
        });
      }
    }
    const named = new Map<string, string>();
    let salts = 0;
    let tested = 0;
    for (const cation of cationTexts.values()) {
      for (const anion of anionTexts.values()) {
        const g = gcd(cation.charge, -anion.charge);
        const formula =
          times(cation.text, -anion.charge / g, cation.group) + times(anion.text, cation.charge / g, anion.group);
        const outcome = tryNameOf(formula);
        if (!outcome.ok) continue;
        salts += 1;
        const own = parseFormula(formula);
        const back = formulaOf(outcome.value, { literal: true });
        expect(back.hasSameComposition(own), `${formula} -> ${outcome.value} -> ${back}`).toBe(true);
        const before = named.get(outcome.value);
        if (before !== undefined)
          expect(parseFormula(before).hasSameComposition(own), `${before} ${formula}`).toBe(true);
        named.set(outcome.value, formula);
        // without `literal` a name of the trade may ask, but never mean only something else
        expect(
          readingsOf(outcome.value).some((one) => sameCore(one.formula, formula)),
          `${formula} -> ${outcome.value}`,
        ).toBe(true);
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(43);
    expect(salts).toBeGreaterThan(1700);
  });

  it("tell compounds of the same elements apart, and never print undefined", () => {
    const family = ["H2S", "H2S2", "H2O", "H2O2", "H2O3", "HO", "H2Se", "H2Se2"];
    const names = family.map((formula) => nameOf(formula));
    expect(new Set(names).size).toBe(family.length);
    let tested = 0;
    for (const [i, formula] of family.entries()) {
      expect(formulaOf(names[i]!).hasSameComposition(parseFormula(formula)), names[i]).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(8);
    for (const odd of ["Fe0.5^2+", "K0.5^+", "Cl0.5^-", "O1.5^2-"]) {
      const outcome = tryNameOf(odd);
      expect(outcome.ok ? outcome.value : "", odd).not.toContain("undefined");
    }
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
    expect(Object.entries(room).length, "rows to test").toBeGreaterThan(0);
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
      expect(attempt(() => room.search("salt", options as never)).ok).toBe(false);
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

// The small parts that all rooms share, each by what it promises: arithmetic by hand, texts as they are meant to be read.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { hasBrand } from "../../src/foundation/brand";
import { lowered, subscript } from "../../src/foundation/characters";
import {
  attempt,
  codePointName,
  isPreparativeError,
  PreparativeError,
  relocated,
  shownValue,
} from "../../src/foundation/error";
import {
  bringsFacts,
  type Facts,
  factsInForce,
  isFacts,
  lookingIn,
  OWN_TABLES,
  ownRow,
  ownRows,
  under,
  withItsFacts,
} from "../../src/foundation/facts";
import { Fraction } from "../../src/foundation/fraction";
import { frozen, frozenUnread } from "../../src/foundation/frozen";
import { bigGcd, gcd } from "../../src/foundation/gcd";
import { keptWith, lazily } from "../../src/foundation/lazy";
import { memoised, once, remembering } from "../../src/foundation/memo";
import { withPlainJSON } from "../../src/foundation/plain-json";
import { inMarkup, onOneLine } from "../../src/foundation/printed";
import { inLowestTerms, nearestNumber, wholeNumbers } from "../../src/foundation/rational";
import { printsItself, readable } from "../../src/foundation/readable";
import { headProblem, recordHead } from "../../src/foundation/record";
import { INSPECT, shownAs } from "../../src/foundation/shown";
import { nearestWord, slips } from "../../src/foundation/slips";
import { citation, entryIn } from "../../src/foundation/source";

describe("divisors", () => {
  it.each([
    [12, 18, 6],
    [-12, 18, 6],
    [12, -18, 6],
    [7, 0, 7],
    [0, -7, 7],
    [0, 0, 0],
    [17, 5, 1],
    [2 ** 52, 2 ** 40, 2 ** 40],
  ])("of %d and %d: %d", (a, b, common) => {
    expect(gcd(a, b)).toBe(common);
    expect(bigGcd(BigInt(a), BigInt(b))).toBe(BigInt(common));
  });
});

describe("ratios", () => {
  it.each([
    [6n, 4n, 3n, 2n],
    [-6n, 4n, -3n, 2n],
    [6n, -4n, -3n, 2n],
    [-6n, -4n, 3n, 2n],
    [3n, -1n, -3n, 1n],
    [0n, 5n, 0n, 1n],
    [5n, 1n, 5n, 1n],
  ])("%s/%s in lowest terms is %s/%s", (n, d, over, under) => {
    expect(inLowestTerms(n, d)).toEqual({ n: over, d: under });
  });

  it("become whole numbers in the same proportions", () => {
    expect(
      wholeNumbers([
        { n: 1n, d: 2n },
        { n: 2n, d: 3n },
        { n: 5n, d: 1n },
      ]),
    ).toEqual([3n, 4n, 30n]);
    expect(
      wholeNumbers([
        { n: 1n, d: 4n },
        { n: 1n, d: 6n },
      ]),
    ).toEqual([3n, 2n]);
    expect(wholeNumbers([])).toEqual([]);
  });

  // the nearest double is what JavaScript reads from the digits of the quotient, whatever the sizes (ECMA-262, StringToNumber)
  it("become the nearest double, near and far", () => {
    expect(nearestNumber({ n: 1n, d: 3n })).toBe(1 / 3);
    expect(nearestNumber({ n: -(10n ** 30n), d: 3n })).toBe(Number(`-${"3".repeat(40)}e-10`));
    expect(nearestNumber({ n: 1n, d: 3n * 10n ** 30n })).toBe(Number(`${"3".repeat(40)}e-70`));
    expect(nearestNumber({ n: 10n ** 400n, d: 10n ** 100n })).toBe(1e300);
    expect(nearestNumber({ n: 10n ** 400n, d: 1n })).toBe(Number.POSITIVE_INFINITY);
    expect(nearestNumber({ n: 1n, d: 10n ** 400n })).toBe(0);
    expect(nearestNumber({ n: 5n, d: 10n ** 324n })).toBe(5e-324);
    // below 2^-1022 a double has fewer digits, and the value is rounded to them once
    for (const text of ["17065771064756649450e-327", "6250711197921026142e-327", "12813932415952948306e-327"]) {
      const [digits, places] = text.split("e-");
      expect(nearestNumber({ n: BigInt(digits!), d: 10n ** BigInt(places!) }), text).toBe(Number(text));
    }
    // half-way between two of the smallest doubles the even one is nearest (IEEE 754-2019, 4.3.1), a hair off the nearer one
    for (const steps of [0n, 1n, 2n, 2n ** 51n + 1n, 2n ** 52n - 1n, 2n ** 52n, 2n ** 53n - 1n])
      for (const hair of [-1n, 0n, 1n]) {
        const half = { n: (2n * steps + 1n) * 10n ** 40n + hair, d: 2n ** 1075n * 10n ** 40n };
        const up = hair > 0n || (hair === 0n && steps % 2n === 1n);
        expect(nearestNumber(half), `${steps} ${hair}`).toBe(Number(up ? steps + 1n : steps) * 2 ** -1074);
      }
    fc.assert(
      fc.property(fc.bigInt({ min: -(10n ** 60n), max: 10n ** 60n }), fc.nat(80), (n, places) => {
        expect(nearestNumber({ n, d: 10n ** BigInt(places) })).toBe(Number(`${n}e-${places}`));
      }),
    );
  });
});

describe("digits above and below the line", () => {
  it("are set and read back", () => {
    expect(subscript(1205)).toBe("₁₂₀₅");
    expect(lowered("10⁻¹²³")).toBe("10-123");
    expect(lowered("x⁰⁴⁵⁶⁷⁸⁹ y")).toBe("x0456789 y");
  });
});

describe("what is handed out", () => {
  it("is frozen all the way down, classes by themselves", () => {
    class Own {
      inner = { n: 1 };
    }
    const value = frozen({ list: [{ n: 1 }], own: new Own(), bytes: new Uint8Array(2), bare: Object.create(null) });
    expect([value, value.list, value.list[0], value.own, value.bare].every(Object.isFrozen)).toBe(true);
    expect(Object.isFrozen(value.own.inner)).toBe(false);
    value.bytes[0] = 7;
    expect(value.bytes[0]).toBe(7);
    for (const plain of [null, undefined, 5, "x", true]) expect(frozen(plain)).toBe(plain);
  });

  it("leaves what is worked out when it is read unread, and the row as it is", () => {
    let asked = 0;
    const row = frozenUnread({
      formula: "H2O",
      get key() {
        asked += 1;
        return "water";
      },
    });
    const list = frozen([row]);
    expect(asked).toBe(0);
    expect(Object.isFrozen(row)).toBe(true);
    expect(list[0]!.key).toBe("water");
    expect(JSON.stringify(list)).toBe('[{"formula":"H2O","key":"water"}]');
    expect(String(row)).toBe("formula: H2O\nkey: water");
  });

  it("is not walked again where it is frozen already", () => {
    const inside = { n: 1 };
    frozen(Object.freeze({ inside }));
    expect(Object.isFrozen(inside)).toBe(false);
  });
});

describe("a brand", () => {
  it("is asked of objects alone, and has to be true", () => {
    const brand = Symbol("brand");
    expect(hasBrand({ [brand]: true }, brand)).toBe(true);
    for (const value of [{ [brand]: 1 }, {}, null, undefined, "x", 5, () => 1])
      expect(hasBrand(value, brand)).toBe(false);
  });
});

describe("a console", () => {
  it("gets one line, also where the value has no text", () => {
    expect(shownAs("Quantity", { toString: () => "12.5 g" })).toBe("Quantity { 12.5 g }");
    const broken = {
      toString: () => {
        throw new Error("no text");
      },
    };
    expect(shownAs("Quantity", broken)).toBe("Quantity {}");
    expect(INSPECT).toBe(Symbol.for("nodejs.util.inspect.custom"));
    expect([shownValue(5n), shownValue(broken), shownValue(Symbol("s"))]).toEqual(["5", "object", "Symbol(s)"]);
    expect([codePointName("\u2009"), codePointName("é"), codePointName("😀")]).toEqual(["U+2009", "U+00E9", "U+1F600"]);
  });
});

describe("text of others", () => {
  it("stands on one line and commands nothing", () => {
    expect(onOneLine("a\r\n\tb\u202Ec\u2028d")).toBe("a b c d");
    expect(onOneLine("x\uD800y")).toBe("x\uFFFDy");
    expect(onOneLine("plain μ ½ 😀")).toBe("plain μ ½ 😀");
    expect(inMarkup(`<a href="x">'&'</a>\n`)).toBe("&lt;a href=&quot;x&quot;&gt;&#39;&amp;&#39;&lt;/a&gt; ");
  });
});

describe("the head of a record", () => {
  const head = recordHead("salt", 2);
  it("says what it is", () => {
    expect(head).toMatchObject({ type: "salt", schema: 2 });
    expect(headProblem(head, "salt", 2)).toBeUndefined();
    expect(headProblem({ type: "salt", schema: 2 }, "salt", 2)).toBeUndefined();
  });

  it.each([
    [null, "no object"],
    ["salt", "no object"],
    [[head], "no object"],
    [{ ...head, type: "acid" }, "type is not 'salt'"],
    [{ ...head, library: 5 }, "library is not text"],
    [{ ...head, schema: 1 }, "schema 1 is not 2"],
    [{ ...head, schema: 2.5 }, "schema 2.5 is not 2"],
    [{ ...head, schema: "3" }, "schema 3 is not 2"],
    [{ type: "salt" }, "schema undefined is not 2"],
    [
      { ...head, schema: 3, library: "9.9.9" },
      `written by a newer library (9.9.9): schema 3, where ${head.library} reads 2`,
    ],
    [{ type: "salt", schema: 3 }, `written by a newer library: schema 3, where ${head.library} reads 2`],
    [{ ...head, schema: "x".repeat(90) }, `schema ${"x".repeat(40)} is not 2`],
  ])("%j: %s", (data, problem) => {
    expect(headProblem(data, "salt", 2)).toBe(problem);
  });
});

describe("answers as text", () => {
  it("print a line for each field that holds something, lists with marks, objects further in", () => {
    const answer = readable({
      perHundredGramsWater: 36,
      pH: 7,
      isRedox: true,
      isOpen: false,
      missing: undefined,
      empty: [],
      blank: "",
      method: () => 1,
      nothing: null,
      short: ["a", "b"],
      fraction: new Fraction("8/3"),
      several: [{ name: "first", grams: 1 }, { name: "second" }],
      inner: { deep: { n: 1 } },
      hollow: { none: undefined },
      lines: { toString: () => "one\ntwo" },
      nested: [["a", "b"], [{ n: 1 }]],
    });
    expect(String(answer).split("\n")).toEqual([
      "per hundred grams water: 36",
      "pH: 7",
      "is redox: yes",
      "is open: no",
      "nothing: null",
      "short: a; b",
      `fraction: ${new Fraction("8/3")}`,
      "several:",
      "  - name: first",
      "    grams: 1",
      "  - name: second",
      "inner:",
      "  deep:",
      "    n: 1",
      "lines:",
      "  one",
      "  two",
      "nested:",
      "  - a; b",
      "  - - n: 1",
    ]);
    expect(Object.keys(answer)).not.toContain("toString");
    expect(String(printsItself({ n: 5 }, ({ n }) => `n is ${n}`))).toBe("n is 5");
  });

  it("write exact numbers as text in JSON, and records as records", () => {
    const answer = withPlainJSON({
      coefficient: 5n,
      ratio: new Fraction("8/3"),
      list: [1n, { n: 2n }, null],
      own: { toJSON: () => "own" },
      method: () => 1,
      text: "x",
    });
    expect(JSON.parse(JSON.stringify(answer))).toEqual({
      coefficient: "5",
      ratio: "8/3",
      list: ["1", { n: "2" }, null],
      own: "own",
      text: "x",
    });
    expect(Object.keys(answer)).not.toContain("toJSON");
    // the record itself is plain, for structured clones too: no method is left in it
    const record = (answer as { toJSON?(): object }).toJSON!();
    expect(structuredClone(record)).toEqual(record);
    expect(Object.keys(record)).not.toContain("method");
  });
});

describe("facts of the caller's own", () => {
  const facts = (rows: Readonly<Record<string, number>>): Facts =>
    ({
      kind: "facts",
      size: 1,
      toJSON: () => ({ type: "facts", schema: 1, parts: [] }),
      [OWN_TABLES]: () => ({ salts: new Map(Object.entries(rows)) }),
    }) as Facts;
  const [mine, yours] = [facts({ a: 1 }), facts({ b: 2 })];

  it("are in force while something is computed, and no longer, however it ends", () => {
    expect([factsInForce(), ownRow("salts", () => "a"), ownRows("salts")]).toEqual([undefined, undefined, []]);
    under(mine, () => {
      expect([factsInForce() === mine, ownRow("salts", () => "a"), ownRows("salts")]).toEqual([true, 1, [1]]);
      expect([ownRow("salts", () => "b"), ownRow("acids", () => "a"), ownRows("acids")]).toEqual([
        undefined,
        undefined,
        [],
      ]);
      under(yours, () => expect(ownRow("salts", () => "b")).toBe(2));
      expect(ownRow("salts", () => "a")).toBe(1);
      under(undefined, () => expect(factsInForce()).toBeUndefined());
    });
    const failing = () =>
      under(mine, () => {
        throw new Error("broken");
      });
    expect(failing).toThrow("broken");
    expect(factsInForce()).toBeUndefined();
  });

  it("are taken as an option, and those in force where none is given", () => {
    const guard = { refused: (_: unknown, argument: string, wanted: string) => new Error(`${argument}: ${wanted}`) };
    expect(lookingIn(mine, guard, factsInForce)).toBe(mine);
    expect(under(yours, () => lookingIn(undefined, guard, factsInForce))).toBe(yours);
    expect(() => lookingIn({}, guard, factsInForce)).toThrow("facts: what facts() gave");
    expect([isFacts(mine), isFacts({}), isFacts(null), isFacts("x")]).toEqual([true, false, false, false]);
  });

  it("are taken out of a request, which is then asked again without them", () => {
    const guard = {
      refused: (_: unknown, argument: string, wanted: string) => new Error(`${argument}: ${wanted}`),
      fields: () => {},
      record: () => {},
    };
    const request = { salt: "a", facts: mine };
    expect([bringsFacts(request), bringsFacts({ salt: "a" }), bringsFacts({ facts: undefined })]).toEqual([
      true,
      false,
      false,
    ]);
    for (const value of [null, undefined, "facts", 5]) expect(bringsFacts(value)).toBe(false);
    expect(withItsFacts(request, guard, (others) => [others, ownRow("salts", () => "a")])).toEqual([{ salt: "a" }, 1]);
    expect(() => withItsFacts({ facts: {} as never }, guard, () => 1)).toThrow("facts: what facts() gave");
  });

  it("have answers of their own, and leave those without them alone", () => {
    const asked: string[] = [];
    const look = () => ownRow<number>("salts", () => "a") ?? 0;
    const byText = memoised(5, (text) => {
      asked.push(text);
      return look();
    });
    const keep = remembering<number>(5);
    for (const ask of [byText, (text: string) => keep(text, look)]) {
      expect([ask("x"), under(mine, () => ask("x")), under(yours, () => ask("x")), ask("x")]).toEqual([0, 1, 0, 0]);
      expect(under(mine, () => ask("x"))).toBe(1);
    }
    expect(asked).toEqual(["x", "x", "x"]);
    // what is made once is made with the facts of its making
    const made = under(mine, () => once(look));
    expect([made(), under(yours, made)]).toEqual([1, 1]);
  });
});

describe("figures worked out when first asked for", () => {
  it("are worked out once, frozen, and only those that are looked at", () => {
    const asked: string[] = [];
    const base = lazily<{ readonly a: { n: number }; readonly b: number }>({
      a: () => {
        asked.push("a");
        return { n: 1 };
      },
      b: () => {
        asked.push("b");
        return 2;
      },
    });
    expect(asked).toEqual([]);
    expect(base.a).toBe(base.a);
    expect([asked, Object.isFrozen(base.a), Object.isFrozen(base)]).toEqual([["a"], true, true]);
    expect(Object.keys(base)).toEqual(["a", "b"]);
    expect(String(base)).toContain("b: 2");
    expect(asked).toEqual(["a", "b"]);
  });

  it("hand on those of another, with methods and what is kept beside them", () => {
    const base = lazily<{ readonly a: number }>({ a: () => 1 });
    const methods = { twice: () => 2 };
    type Whole = { readonly a: number; readonly c: number; twice(): number };
    const whole = lazily<Whole, { readonly a: number }, { twice(): number }>({ c: () => 3 }, base, methods, "beside");
    expect([whole.a, whole.c, whole.twice(), keptWith(whole)]).toEqual([1, 3, 2, "beside"]);
    expect(Object.keys(whole)).toEqual(["a", "c"]);
    expect([keptWith(base), keptWith({})]).toEqual([undefined, undefined]);
  });

  it("use the facts of their making", () => {
    const own = { kind: "facts", [OWN_TABLES]: () => ({ salts: new Map([["a", 1]]) }) } as unknown as Facts;
    const made = under(own, () => lazily<{ readonly n: unknown }>({ n: () => ownRow("salts", () => "a") }));
    expect(made.n).toBe(1);
  });
});

describe("errors", () => {
  it("show the text with a caret below the place, far into a long text too", () => {
    const error = new PreparativeError("test.place", "wrong here", { input: "ab\tcd", position: 3, hint: "mend it" });
    expect(error.message).toBe("wrong here\n  ab cd\n     ^\n  hint: mend it");
    expect(error.problem).toBe("wrong here");
    const long = `${"x".repeat(200)}!${"y".repeat(200)}`;
    const [, line, mark] = new PreparativeError("test.place", "wrong", { input: long, position: 200 }).message.split(
      "\n",
    );
    expect(line).toHaveLength(2 + 76);
    expect(line![mark!.indexOf("^")]).toBe("!");
    const [, first, start] = new PreparativeError("test.place", "wrong", { input: long, position: 0 }).message.split(
      "\n",
    );
    expect([first!.length, start]).toEqual([78, "  ^"]);
    const [, last, end] = new PreparativeError("test.place", "wrong", { input: long, position: 401 }).message.split(
      "\n",
    );
    expect([last!.length, end!.indexOf("^")]).toEqual([78, 78]);
  });

  it("know whether more typing may mend the text", () => {
    const incomplete = (code: string, input: string | undefined, position: number | undefined) =>
      new PreparativeError(code, "", { input, position }).incomplete;
    expect(incomplete("test.x", "abc", 3)).toBe(true);
    expect(incomplete("test.x", "abc  ", 3)).toBe(true);
    expect(incomplete("test.x", "abc", 2)).toBe(false);
    expect(incomplete("formula.unclosed-bracket", "a(bc", 1)).toBe(true);
    expect(incomplete("equation.no-arrow", "a b", 1)).toBe(true);
    expect(incomplete("test.x", undefined, 2)).toBe(false);
    expect(incomplete("test.x", "abc", undefined)).toBe(false);
  });

  it("are plain data in JSON, without what there is not", () => {
    const bare = new PreparativeError("test.bare", "bare");
    expect(bare.toJSON()).toEqual({ name: "PreparativeError", code: "test.bare", message: "bare", details: {} });
    const whole = new PreparativeError("test.whole", "whole", {
      input: "x",
      position: 0,
      hint: "h",
      details: { n: 1n },
    });
    expect(whole.toJSON()).toMatchObject({ input: "x", position: 0, hint: "h", details: { n: "1" } });
    expect(
      Object.keys(new PreparativeError("test.big", "", { details: { own: { toJSON: () => 1 } } }).toJSON()),
    ).toEqual(["name", "code", "message", "details"]);
  });

  it("shorten words and pages of the caller's, and nothing else", () => {
    const word = "w".repeat(200);
    const { message } = new PreparativeError("test.long", `no ${word} here`, { hint: "h ".repeat(1000) });
    expect(message).toContain(`no ${"w".repeat(80)}… here`);
    expect(message.split("hint: ")[1]).toHaveLength(1501);
    const fits = "w".repeat(80);
    expect(new PreparativeError("test.fits", fits).message).toBe(fits);
    expect(new PreparativeError("test.page", "a ".repeat(2000)).message).toHaveLength(1501);
  });

  it("keep their class and code when they are told of a longer text", () => {
    const inner = new PreparativeError("test.inner", "wrong", {
      input: "bc",
      position: 1,
      hint: "h",
      details: { n: 1 },
    });
    const outer = relocated(inner, "a bc", 2);
    expect([outer.code, outer.input, outer.position, outer.hint, outer.details]).toEqual([
      "test.inner",
      "a bc",
      3,
      "h",
      { n: 1 },
    ]);
    expect(outer.problem).toBe("wrong");
    expect(relocated(new PreparativeError("test.x", "p"), "abc", 2).position).toBe(2);
  });

  it("are told from others by their brand, those of another copy too", () => {
    const ours = new PreparativeError("test.x", "x");
    const copy = Object.defineProperty(new Error("copy"), Symbol.for("preparative.error"), { value: true });
    expect([ours, copy].every((error) => error instanceof PreparativeError && isPreparativeError(error))).toBe(true);
    for (const other of [new Error("x"), null, undefined, "x", {}])
      expect([other instanceof PreparativeError, isPreparativeError(other)]).toEqual([false, false]);
    expect(attempt(() => 5)).toEqual({ ok: true, value: 5 });
    expect(
      attempt(() => {
        throw ours;
      }),
    ).toEqual({ ok: false, error: ours });
    expect(() =>
      attempt(() => {
        throw new TypeError("a bug");
      }),
    ).toThrow(TypeError);
  });
});

describe("misspelt words", () => {
  // counted by hand: kitten to sitting changes two letters and adds one
  it.each([
    ["kitten", "sitting", 5, 3],
    ["kitten", "sitting", 2, 3],
    ["abc", "abc", 2, 0],
    ["", "abc", 3, 3],
    ["abc", "", 3, 3],
    ["abcdef", "a", 3, 4],
    ["ab", "ba", 2, 1],
    ["abcd", "acbd", 2, 1],
    ["ca", "abc", 5, 3],
  ])("%j and %j, up to %d: %d slips", (a, b, limit, expected) => {
    expect(slips(a, b, limit)).toBe(expected);
  });

  it("are put right by the nearest, the first of equals, capitals aside", () => {
    expect(nearestWord("MASS", ["moss", "mass", "mess"])).toBe("mass");
    expect(nearestWord("miss", ["moss", "mass", "mess"])).toBe("moss");
    expect(nearestWord("xy", ["ab"])).toBe("ab");
    expect(nearestWord("xyz", ["abc"])).toBeUndefined();
    expect(nearestWord("temperatur", [])).toBeUndefined();
    expect(nearestWord("a".repeat(60), ["a".repeat(61)])).toBe("a".repeat(61));
    expect(nearestWord("a".repeat(61), ["a".repeat(61)])).toBeUndefined();
  });
});

describe("a citation", () => {
  const tables = [
    { plain: { title: "Plain" } },
    {
      full: { title: "Full", edition: "3rd", where: "Table 2", year: 2007, doi: "10.1/x" },
      partly: { title: "Partly", fromMemory: "partly" },
      all: { title: "All", year: 1990, fromMemory: "all" },
    },
  ] as const;

  it("holds what is known of the work, and says what was recalled", () => {
    const cited = ["plain", "full", "partly", "all", "own figure: my balance"].map((key) => citation(key, tables));
    expect(cited).toEqual([
      "Plain",
      "Full, 3rd ed., Table 2, 2007, doi 10.1/x",
      "Partly (partly from memory)",
      "All, 1990 (from memory)",
      "own figure: my balance",
    ]);
  });

  it("of no source is refused with the nearest key", () => {
    const refused = (key: string) => {
      const outcome = attempt(() => entryIn(tables, key));
      return outcome.ok ? undefined : [outcome.error.code, outcome.error.problem, outcome.error.hint];
    };
    expect(refused("fulll")).toEqual(["source.unknown", "no source has the key 'fulll'", "did you mean full?"]);
    expect(refused("zzzzzzzzz")).toEqual([
      "source.unknown",
      "no source has the key 'zzzzzzzzz'",
      "sourceKeys() lists them",
    ]);
    expect(refused("toString")?.[0]).toBe("source.unknown");
    expect(refused(5 as never)).toEqual(["source.unknown", "no source has the key number", "sourceKeys() lists them"]);
  });
});

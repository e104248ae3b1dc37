// The guard of arguments: what it lets through, and how it names what it does not.
import { describe, expect, it } from "vitest";
import { ArgumentGuard, type Fields } from "../../src/foundation/argument";
import { attempt, PreparativeError, type Result } from "../../src/foundation/error";
import { nearestWord, slips } from "../../src/foundation/slips";

interface Options {
  readonly temperature?: string;
  readonly parts?: readonly { readonly form: string; readonly assay?: string }[];
  readonly pack?: { readonly size?: string };
}

const FIELDS = {
  temperature: true,
  parts: [{ form: true, assay: true }],
  pack: { size: true },
} as const satisfies Fields<Options>;

const guard = new ArgumentGuard<string>(PreparativeError, {
  unknown: "test.unknown",
  bad: "test.bad",
  missing: "test.missing",
});

const refusal = (outcome: Result<unknown>): PreparativeError => {
  if (outcome.ok) throw new Error("not refused");
  return outcome.error;
};
const asked = (value: unknown): PreparativeError => refusal(attempt(() => guard.fields(value, FIELDS)));

describe("the guard of arguments", () => {
  it.each([
    [{}],
    [{ temperature: "20 °C", parts: [{ form: "NaCl" }], pack: undefined }],
    [Object.assign(Object.create(null), { temperature: "20 °C" })],
  ])("lets known fields through: %j", (value) => expect(() => guard.fields(value, FIELDS)).not.toThrow());

  it.each([
    [{ temprature: "20 °C" }, "temperature", "there is no option 'temprature'"],
    [{ Temperature: "20 °C" }, "temperature", "there is no option 'Temperature'"],
    [{ parts: [{ form: "A" }, { form: "B", asay: "5 %" }] }, "assay", "there is no option 'asay' in parts[1]"],
    [{ pack: { sise: "1 kg" } }, "size", "there is no option 'sise' in pack"],
  ])("names the nearest known field: %j", (value, nearest, problem) => {
    const error = asked(value);
    expect(error.code).toBe("test.unknown");
    expect(error.details["nearest"]).toBe(nearest);
    expect(error.hint).toContain(`did you mean ${nearest}?`);
    expect(error.message).toContain(problem);
  });

  it("lets what is left out through where it may be, and looks through it where it is not", () => {
    expect(() => guard.options(undefined, FIELDS)).not.toThrow();
    expect(refusal(attempt(() => guard.options({ temprature: 1 }, FIELDS))).code).toBe("test.unknown");
    // a field that every object has is not a known one
    expect(asked(JSON.parse('{"constructor": 1}')).code).toBe("test.unknown");
    expect(asked({ toString: 1 }).code).toBe("test.unknown");
  });

  it.each<[string, (value: unknown) => void, readonly unknown[], readonly unknown[], string]>([
    ["choice", (v) => guard.choice(v, "phase", ["s", "l"]), ["s", "l"], ["g", 5, null], "one of s, l"],
    ["text", (v) => guard.text(v, "phase"), ["", "s"], [5, null, [], new String("s")], "text"],
    ["number", (v) => guard.number(v, "phase"), [0, -1.5, Infinity], ["5", NaN, null, 5n], "a number"],
    ["boolean", (v) => guard.boolean(v, "phase"), [true, false], [0, "true", null], "true or false"],
    ["list", (v) => guard.list(v, "phase"), [[], [1]], ["s", { length: 1 }, null], "a list"],
    ["record", (v) => guard.record(v, "phase"), [{}, Object.create(null)], ["s", [], null, new Map()], "an object"],
  ])("%s lets pass what it asks for, and names the argument of what it refuses", (_, check, good, bad, wanted) => {
    expect(good.length, "rows to test").toBeGreaterThan(0);
    for (const value of good) expect(() => check(value)).not.toThrow();
    expect(bad.length, "rows to test").toBeGreaterThan(0);
    for (const value of bad) {
      const error = refusal(attempt(() => check(value)));
      expect(error.code).toBe("test.bad");
      expect(error.problem).toContain(`phase must be ${wanted}`);
      expect(error.details["argument"]).toBe("phase");
    }
    expect(refusal(attempt(() => check(undefined))).code).toBe("test.missing");
  });

  it("says of a number that it is none, and of an instance whose it is", () => {
    const said = (check: () => void) => refusal(attempt(check)).problem;
    expect(said(() => guard.number(Number.NaN, "n"))).toBe("n must be a number, not NaN");
    expect(said(() => guard.number("5", "n"))).toBe("n must be a number, not '5'");
    class Jar {}
    expect(said(() => guard.record(new Jar(), "pack"))).toContain("an instance of Jar");
    const unnamed = Object.create(Object.create({ constructor: undefined }));
    expect(said(() => guard.record(unnamed, "pack"))).toContain("another object");
    const nameless = Object.create(Object.create({ constructor: { name: "" } }));
    expect(said(() => guard.record(nameless, "pack"))).toContain("another object");
  });

  it("quotes no more than a line of what it was given", () => {
    const long = "ab ".repeat(27);
    expect(asked({ [long]: 1 }).problem).toBe(`there is no option '${long.slice(0, 80)}…'`);
    expect(asked({ [long]: 1 }).details["option"]).toBe(long.slice(0, 80));
    expect(asked({ [long.slice(1)]: 1 }).problem).toBe(`there is no option '${long.slice(1)}'`);
  });

  it("lists the known fields where none is near", () => {
    expect(asked({ zzzzzzzzzz: 1 }).hint).toBe("known: temperature, parts, pack");
  });

  it.each([
    ["100 °C", "options are an object, not '100 °C'"],
    [5, "options are an object, not number"],
    [true, "options are an object, not boolean"],
    [null, "options are an object, not null"],
    [[], "options are an object, not a list"],
    [["x"], "options are an object, not a list"],
    [() => 1, "options are an object, not function"],
    [new Map([["temperature", "20 °C"]]), "options are an object of plain fields, not an instance of Map"],
    [new Date(0), "options are an object of plain fields, not an instance of Date"],
    [Object.create({ temperature: "20 °C" }), "options are an object of plain fields, not an instance of Object"],
    [{ pack: "1 kg" }, "pack must be an object, not '1 kg'"],
    [{ parts: { form: "A" } }, "parts must be a list, not object"],
    [{ parts: ["A"] }, "parts[0] must be an object, not 'A'"],
    [{ parts: [null] }, "parts[0] must be an object, not null"],
  ])("refuses %j in the place of options", (value, problem) => {
    const error = asked(value);
    expect(error.code).toBe("test.bad");
    expect(error.message).toBe(problem);
  });

  it("takes no field from what objects inherit, nor one called like it", () => {
    for (const name of ["constructor", "__proto__", "toString", "hasOwnProperty"]) {
      expect(asked(JSON.parse(`{"${name}": 1}`)).code).toBe("test.unknown");
    }
  });

  it("refuses a hole in a list, the first of a hundred million at once", () => {
    const start = performance.now();
    const error = refusal(attempt(() => guard.list(new Array(1e8), "list")));
    expect(performance.now() - start).toBeLessThan(200);
    expect([error.code, error.message]).toEqual(["test.missing", "list[0] must be given, not a hole in the list"]);
  });

  it("quotes no more than a line of a megabyte", () => {
    const long = "x".repeat(1e6);
    expect(asked({ [long]: 1 }).message.length).toBeLessThan(300);
    expect(asked(long).message.length).toBeLessThan(200);
  });
});

describe("errors", () => {
  it("quote no megabyte, and keep the text that was read", () => {
    const long = "y ".repeat(5e5);
    const error = new PreparativeError("test.long", `no ${long}`, { input: long, position: 5, hint: long });
    expect(error.message.length).toBeLessThan(4000);
    expect(error.input).toBe(long);
  });

  it("hold details that are data", () => {
    const error = new PreparativeError("test.details", "", {
      details: { big: 10n ** 30n, list: [1n, Symbol("x"), () => 1], inner: { n: 2n } },
    });
    expect(JSON.parse(JSON.stringify(error.details))).toEqual({
      big: "1000000000000000000000000000000",
      list: ["1", "symbol", "function"],
      inner: { n: "2" },
    });
  });
});

describe("slips of the pen", () => {
  it("counts letters left out, put in, changed and swapped", () => {
    expect(slips("temprature", "temperature", 3)).toBe(1);
    expect(slips("asasy", "assay", 3)).toBe(1);
    expect(slips("fromat", "format", 3)).toBe(1);
  });

  it("takes the nearest word, and none that is far", () => {
    expect(nearestWord("exces", ["assay", "excess", "exact"])).toBe("excess");
    expect(nearestWord("acknowlege", ["acknowledge"])).toBe("acknowledge");
    expect(nearestWord("x".repeat(1e6), ["x"])).toBeUndefined();
    expect(nearestWord("pressure", ["volume", "room"])).toBeUndefined();
  });
});

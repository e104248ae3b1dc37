// How much of what stands on real shelves gets an answer. Nothing is passed over: a word is a substance, several, or a good
// with what is in it; a substance is classified, food, not listed, or said to be not looked up, with the reason.
import { describe, expect, it } from "vitest";
import { tryReadNotation } from "../../src/ion/internal";
import { cautions, cautionsForFormulas, identify } from "../../src/substance";
import { GOODS } from "../../src/substance/data/goods";
import { SHELF_NAMES } from "../data/shelf-names";

const shelves = Object.entries(SHELF_NAMES);
const meant = (name: string): boolean => {
  const { meanings, what } = identify(name);
  return meanings.length > 0 || what !== undefined;
};

describe("names", () => {
  it.each(shelves)("of the shelf of a %s are read", (_, names) => {
    const unread = names.filter((name) => !meant(name));
    expect(unread.length / names.length, unread.join(", ")).toBeLessThanOrEqual(0.05);
  });

  it("are read to 95 in 100, all shelves together", () => {
    const names = shelves.flatMap(([, of]) => of);
    expect(names.length).toBeGreaterThan(330);
    expect(names.filter(meant).length / names.length).toBeGreaterThanOrEqual(0.95);
  });
});

describe("hazards", () => {
  const formulas = [
    ...new Set(
      shelves.flatMap(([, names]) => names.flatMap((name) => identify(name).meanings.map((one) => one.formula))),
    ),
  ].filter((formula) => tryReadNotation(formula)?.charge === 0);

  it("of 95 in 100 of the formulas behind the names are decided", () => {
    expect(formulas.length).toBeGreaterThan(250);
    const open = formulas.filter((formula) =>
      cautionsForFormulas([formula]).substances.some(({ status }) => status === "not looked up"),
    );
    expect(open.length / formulas.length, open.join(" ")).toBeLessThanOrEqual(0.05);
  });

  it("are never left without a reason", () => {
    let tested = 0;
    for (const name of shelves.flatMap(([, of]) => of)) {
      for (const one of cautions([name]).substances) {
        const reason = [...one.cautions, ...one.notes, ...one.statements.map(({ code }) => code)].join();
        if (meant(name) && !/^(?:classified|not classified)$/.test(one.status)) expect(reason, name).not.toBe("");
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(360);
  });
});

describe("a good without a formula", () => {
  it("carries the dangers of what is in it", () => {
    // chlorine from bleach and any acid; nitric acid and acetone (printed lists of incompatible chemicals, recalled)
    const codes = (...materials: string[]) => cautions(materials).incompatibilities.map(({ code }) => code);
    expect(codes("aqua regia", "bleach")).toContain("hypochlorite-acid");
    expect(codes("aqua regia", "acetone")).not.toEqual([]);
    expect(codes("gunpowder", "sugar")).not.toEqual([]);
    expect(cautions(["Paris green"]).substances[0]!.signalWord).toBe("Danger");
    expect(cautions(["curing salt"]).substances.map(({ formula }) => formula)).toEqual(["NaNO2", "NaCl"]);
  });

  it("says what it is where nothing with a formula is in it", () => {
    const [wax] = cautions(["candle wax"]).substances;
    expect(wax).toMatchObject({ status: "not looked up" });
    expect(wax!.notes[0]).toMatch(/mixed alkanes.*no formula/);
    expect(cautions(["candle wax"]).notRead).toEqual([]);
    expect(`${identify("candle wax")}`).toMatch(/mixed alkanes/);
  });

  it("has each name once, and formulas that are read", () => {
    const names = GOODS().flatMap((row) => row.names);
    expect(new Set(names).size).toBe(names.length);
    let tested = 0;
    for (const { contains } of GOODS()) {
      for (const formula of contains) expect(tryReadNotation(formula)?.parts.length, formula).toBeGreaterThan(0);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(42);
    // a word that the rules read is no good without a formula
    for (const name of names) expect(identify(name).meanings, name).toEqual([]);
  });
});

import { describe, expect, it } from "vitest";
import { columns } from "../../src/foundation/columns";

interface Salt {
  readonly formula: string;
  readonly density?: string;
  readonly colour?: string;
}

const SALTS: readonly Salt[] = [
  { formula: "NaCl", density: "2.16" },
  { formula: "CuSO4·5H2O", density: "2.28", colour: "blue" },
  { formula: "KCl" },
];

describe("some columns of a table", () => {
  it("keeps the order and the absent cells", () => {
    const colours = columns(() => SALTS, ["formula", "colour"]);
    expect(colours()).toEqual([{ formula: "NaCl" }, { formula: "CuSO4·5H2O", colour: "blue" }, { formula: "KCl" }]);
    expect(Object.keys(colours()[0]!)).toEqual(["formula"]);
  });

  it("is made once, and not before it is asked for", () => {
    let asked = 0;
    const formulas = columns(() => {
      asked += 1;
      return SALTS;
    }, ["formula"]);
    expect(asked).toBe(0);
    expect(formulas()).toBe(formulas());
    expect(asked).toBe(1);
  });
});

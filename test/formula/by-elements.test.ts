import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { byDryRatio, byElements, elementsIn } from "../../src/formula/by-elements";
import { tablesOf } from "../tools/tables";

describe("the elements a formula names", () => {
  it("are the same for every form and spelling of a substance", () => {
    for (const text of ["CuSO4", "CuSO4·5H2O", "[Cu(H2O)4]SO4.H2O", "CuO4S", "Cu(HSO4)2"])
      expect(elementsIn(text)).toBe("Cu S");
    expect(elementsIn("Co(CO3)")).toBe("C Co");
    expect(elementsIn("SO4^2-")).toBe("S");
    expect(elementsIn("H2O")).toBe("");
    expect(elementsIn("D2O")).toBe("");
  });

  it("are those that the reader finds, for every formula of the tables", async () => {
    const texts = new Set<string>();
    for (const { rows } of await tablesOf())
      if (Array.isArray(rows))
        for (const row of rows as readonly Readonly<Record<string, unknown>>[])
          for (const name of ["formula", "solid", "salt", "form"]) {
            const text = row?.[name];
            if (typeof text === "string" && /^[A-Z([]/.test(text) && !text.includes(" ")) texts.add(text);
          }
    let read = 0;
    let tested = 0;
    for (const text of texts) {
      let symbols: readonly string[];
      try {
        ({ symbols } = parseFormula(text));
      } catch {
        continue; // "Schweinfurt", "crystals": forms in words
      }
      read += 1;
      expect(elementsIn(text), text).toBe(
        symbols
          .filter((one) => !["H", "D", "T", "O"].includes(one))
          .sort()
          .join(" "),
      );
      expect(elementsIn(parseFormula(text).toHill()), text).toBe(elementsIn(text));
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(1400);
    expect(read).toBeGreaterThan(1500);
  });
});

describe("rows by elements", () => {
  it("makes an index for the elements that are asked for, once, and for no others", () => {
    const made: string[][] = [];
    const find = byElements(
      () => ["NaCl", "NaClO3", undefined, "KCl", "NaCl·2H2O"],
      (formula) => formula,
      (rows) => {
        made.push(rows as string[]);
        return rows.length;
      },
    );
    expect(made).toEqual([]);
    expect(find("NaCl")).toBe(3);
    expect(find("HClO·Na")).toBe(3);
    expect(made).toEqual([["NaCl", "NaClO3", "NaCl·2H2O"]]);
    expect(find("CsCl")).toBe(0);
  });
});

describe("rows that may be of a substance", () => {
  it("are those with its elements in the same ratio, whatever the water, the spelling and the number of units", () => {
    const rowsLike = byDryRatio(
      () => ["Na2CO3", "NaHCO3", "Na2C2O4", "NaCH3COO", "NaHCO2", "CdSO4", "H2O2", "H2SO4", "D2O"],
      (formula) => formula,
    );
    const like = (formula: string) => rowsLike(parseFormula(formula));
    expect(like("CO3Na2·10H2O")).toEqual(["Na2CO3"]);
    expect(like("NaC2H3O2·3H2O")).toEqual(["NaCH3COO"]);
    expect(like("NaHCO3")).toEqual(["NaHCO3"]);
    // the same atoms but for water: which it is, the ions tell
    expect(like("NaHCO2·H2O")).toEqual(["NaHCO2"]);
    expect(like("3CdSO4·8H2O")).toEqual(["CdSO4"]);
    expect(like("H4SO5")).toEqual(["H2SO4"]);
    expect(like("H2O")).toEqual(["D2O"]);
    expect(like("CuSO4")).toEqual([]);
  });
});

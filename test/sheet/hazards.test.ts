// The table of hazards on a sheet: what is known of each substance by its classification, and that nothing was looked up where
// nothing was. Classifications of the European list; foods and what is in no list as the cautions of the library say.
import { benchSheet, cautions, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

/** The rows of the first table of the bench pages, cell by cell. */
function hazardRows(equation: string, product: string, feeds: readonly string[]): Record<string, readonly string[]> {
  const plan = planPreparation({
    equation,
    product,
    materials: feeds.map((form) => ({ name: `jar of ${form}`, form })),
    scale: { product: "10 g" },
  });
  const lines = benchSheet(plan, { parts: ["bench"], format: "markdown" }).split("\n");
  const first = lines.findIndex((line) => line.startsWith("| Material | Pictogram"));
  const rows: Record<string, readonly string[]> = {};
  for (const line of lines.slice(first + 2)) {
    if (!line.startsWith("|")) break;
    const [, name, ...cells] = line.split("|").map((cell) => cell.trim());
    rows[name!] = cells.slice(0, 3);
  }
  return rows;
}

const NOT_LOOKED_UP = "not looked up here: read the safety data sheet";
const NOT_LISTED = "not in the harmonised list of the EU; the supplier's safety data sheet decides";

describe("the table of hazards", () => {
  it("says that nothing was looked up, once, beside what is cared for anyway", () => {
    const rows = hazardRows("CaCl2 + Na2WO4 -> CaWO4 + NaCl", "CaWO4", ["CaCl2", "Na2WO4"]);
    expect(rows["CaWO₄"]).toEqual(["", NOT_LOOKED_UP, "no dust"]);
    expect(rows["jar of Na2WO4, Na₂WO₄"]).toEqual(["", NOT_LISTED, "no dust"]);
    expect(rows["jar of CaCl2, CaCl₂"]![0]).toBe("GHS07");
    expect(rows["jar of CaCl2, CaCl₂"]![1]).toBe("WARNING: Causes serious eye irritation (H319).");
    // salt in the liquor is a food: no line for what is neither handled nor classified
    expect(Object.keys(rows)).toHaveLength(3);
    expect(hazardRows("RbCl -> RbCl", "RbCl", ["RbCl"])["jar of RbCl, RbCl"]).toEqual(["", NOT_LOOKED_UP, ""]);
    expect(hazardRows("CsBr -> CsBr", "CsBr", ["CsBr"])["jar of CsBr, CsBr"]).toEqual([
      "",
      NOT_LOOKED_UP,
      "not to be swallowed: bromides dull the nerves",
    ]);
  });

  it("says of a food that it is one, of a listed substance without a class that this is not the same as safe", () => {
    expect(hazardRows("NaCl -> NaCl", "NaCl", ["NaCl"])["jar of NaCl, NaCl"]).toEqual([
      "",
      "sold as food; no hazard listed",
      "",
    ]);
    expect(hazardRows("KCl -> KCl", "KCl", ["KCl"])["jar of KCl, KCl"]![1]).toBe(
      "food additive E 508; no hazard listed",
    );
    const chalk = hazardRows("FeCl2 + 2 NaHCO3 -> FeCO3 + 2 NaCl + CO2 + H2O", "FeCO3", ["FeCl2", "NaHCO3"]);
    expect(chalk["jar of NaHCO3, NaHCO₃"]).toEqual([
      "",
      "no hazard listed in the source, which is not the same as safe",
      "CO2 on acid or heat: vent",
    ]);
    expect(chalk["FeCO₃"]).toEqual(["", NOT_LISTED, ""]);
    expect(chalk["CO₂"]![1]).toBe("WARNING: May cause drowsiness or dizziness (H336).");
  });

  it("has each statement of the classification with its code, danger before warning", () => {
    const rows = hazardRows("MnCl2 + Na2CO3 -> MnCO3 + 2 NaCl", "MnCO3", ["MnCl2", "Na2CO3"]);
    const [manganese] = cautions(["MnCl2"]).substances;
    const [pictograms, hazard] = rows["jar of MnCl2, MnCl₂"]!;
    expect(pictograms).toBe(manganese!.pictograms.map(({ code }) => code).join(" "));
    expect(hazard).toMatch(/^DANGER: Toxic if swallowed \(H301\)\./);
    expect(manganese!.statements.length, "rows to test").toBeGreaterThan(0);
    for (const { code } of manganese!.statements) expect(hazard).toContain(`(${code})`);
  });
});

describe("cells to write in", () => {
  it("have the unit behind the line where there is one", () => {
    const plan = planPreparation({
      equation: "NaCl -> NaCl",
      product: "NaCl",
      materials: [{ name: "table salt", form: "NaCl" }],
      scale: { product: "10 g" },
    });
    const text = benchSheet(plan, { parts: ["bench"], format: "markdown" }).replaceAll("\\", "");
    expect(text).toMatch(/\| table salt \| NaCl \| [\d.]+ g \| ______ g \|/);
    expect(text).toMatch(/\| 1 \| ________ \| ________ \| ________ \|/);
  });
});

// Every row of this room's tables says what it rests on, and every answer passes it on.
import { describe, expect, it } from "vitest";
import { explain } from "../../src/quantity";
import { cite, source, sourceKeys } from "../../src/sources";
import {
  cautions,
  distinguishMaterials,
  ion,
  ions,
  readingsOf,
  shopMaterial,
  statementOf,
  substance,
  usualStrength,
} from "../../src/substance";
import { REGISTRY } from "../../src/substance/data/registry";
import { tablesOf } from "../tools/tables";

const keys = new Set<string>(sourceKeys());
const tables = (await tablesOf("ion", "substance")).map(({ file, name, rows }): [string, unknown] => [
  `${file} ${name}`,
  rows,
]);

/** Keys of sources anywhere in a row, by the path to them. */
function sourcesIn(value: unknown, path = ""): [string, unknown][] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([field, inner]): [string, unknown][] =>
    /^source$|Source$/.test(field) ? [[`${path}.${field}`, inner]] : sourcesIn(inner, `${path}.${field}`),
  );
}

describe("tables", () => {
  it("are all found", () => {
    expect(tables.filter(([, table]) => Array.isArray(table)).length).toBeGreaterThanOrEqual(15);
  });

  it.each(tables.filter((one): one is [string, object[]] => Array.isArray(one[1])))(
    "%s has a source of the bibliography on every row",
    (_, rows) => {
      expect(rows.length).toBeGreaterThan(0);
      for (const row of rows) {
        expect(keys.has((row as { source: string }).source), JSON.stringify(row)).toBe(true);
        for (const [path, key] of sourcesIn(row)) expect(keys.has(String(key)), `${path} ${String(key)}`).toBe(true);
      }
    },
  );

  it("name known sources for the fields that rest on others", () => {
    const fields = tables.filter(([name]) => name.endsWith("FIELD_SOURCES"));
    expect(fields.length).toBe(2);
    for (const [name, table] of fields)
      for (const key of Object.values(table as object)) expect(keys.has(String(key)), name).toBe(true);
  });
});

describe("a citation", () => {
  it("says so where the figures were recalled", () => {
    expect(cite("tradeSheets")).toBe("published safety data sheets and trade labels, typical ranges (from memory)");
    expect(cite("hydrochloricSheet")).toMatch(/\(partly from memory\)$/);
    expect(cite("clpAnnexVI")).not.toMatch(/memory/);
    let tested = 0;
    for (const key of sourceKeys()) {
      if (/^recalled from memory, not/.test(source(key).access ?? "")) expect(cite(key), key).toMatch(/from memory\)$/);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(160);
  });
});

describe("answers", () => {
  it("tell what each answer about a substance rests on, and no more than there is", () => {
    // as the row says: number in an inventory, density compared with a molar volume, temperature read in a text
    expect(substance("CuSO4·5H2O").sources).toEqual({
      name: "redBook2005",
      otherNames: "memory",
      cas: "aiic",
      appearance: "memory",
      density: "usgsMolarVolumes",
      densityCheck: "memory",
      phaseChange: "copperSulfateHeating",
      thermalSteps: "copperSulfateHeating",
      thermalNote: "copperSulfateHeating",
    });
    expect(substance("LaCl3·7H2O").sources).toEqual({ name: "redBook2005" });
  });

  it("give a key for every answer that the registry has", () => {
    let tested = 0;
    for (const { formula } of REGISTRY()) {
      const found = substance(formula);
      const { sources } = found;
      expect(sources.name !== undefined, formula).toBe(found.name !== found.formula);
      expect(sources.otherNames !== undefined, formula).toBe(found.otherNames.length > 0);
      expect(sources.cas, formula).toBe(found.casSource);
      for (const field of ["appearance", "note", "density", "densityCheck", "phaseChange", "thermalNote"] as const)
        expect(sources[field] !== undefined, `${formula} ${field}`).toBe(found[field] !== undefined);
      expect(sources.thermalSteps !== undefined, formula).toBe(found.thermalSteps.length > 0);
      for (const step of found.thermalSteps) expect(step.source).toBe(sources.thermalSteps);
      for (const key of Object.values(sources)) expect(keys.has(key), key).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(520);
  });

  it("print the source of a figure in its working", () => {
    for (const figure of [
      substance("(NH4)2Cu(SO4)2·6H2O").density!,
      substance("K3[Fe(C2O4)3]·3H2O").thermalSteps[0]!.from,
    ])
      expect(explain(figure).sources).toEqual(["recalled from memory, not confirmed in a source"]);
    const vinegar = usualStrength(shopMaterial("white vinegar").candidates[0]!)!;
    expect(explain(vinegar).sources[0]).toMatch(/from memory/);
  });

  it("tell what ions, readings and forms rest on", () => {
    expect(ion("MnO4^-").sources).toEqual({ name: "redBook2005", colour: "memory" });
    expect(ion("Cu^2+").sources.colour).toBe("memory");
    for (const entry of ions()) {
      expect(entry.sources.colour !== undefined, entry.name).toBe(entry.colour !== undefined);
      expect(entry.sources.otherNames !== undefined, entry.name).toBe(entry.otherNames.length > 0);
    }
    expect(readingsOf("zinc carbonate").map((one) => one.source)).toEqual(["commonPractice", "commonPractice"]);
    expect(readingsOf("green vitriol")[0]?.source).toBe("memory");
    // read by the rules, not from a table
    expect(readingsOf("lanthanum chloride heptahydrate")[0]).not.toHaveProperty("source");
    expect(distinguishMaterials("washing soda")[0]?.sources).toEqual({
      density: "usgsMolarVolumes",
      appearance: "memory",
      dryBy: "oxfordChemistryFirst",
    });
    for (const one of shopMaterial("moss killer").candidates) expect(keys.has(one.source)).toBe(true);
  });

  it("mark codes that were added from memory to a classification", () => {
    // Aluminium powder: the national list leaves physical classes out (see the bibliography), so H228 is recalled.
    const marked = cautions([
      "HF",
      "HCl",
      "Al",
      "I2",
      "KMnO4",
      "Na2S2O4",
      "NaClO",
      "CaO",
      "Ca(OH)2",
      "NaNO2",
    ]).substances;
    for (const entry of marked)
      for (const statement of entry.statements) expect(keys.has(statement.source), statement.code).toBe(true);
    const copper = cautions(["CuSO4·5H2O"]).substances[0]!;
    expect(copper.statements.map((one) => one.source)).toEqual(["clpAnnexVI", "clpAnnexVI", "clpAnnexVI"]);
    expect(copper.adviceSource).toBe("commonPractice");
    expect(statementOf("H302").source).toBe("unGhs");
  });
});

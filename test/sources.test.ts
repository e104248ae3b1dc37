// Citations stand beside the tables of each layer. Held here: every layer's sources are in the whole list, a key means one
// source, and every row of every table names a key of that list; a row that does not is named.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { cite, sourceKeys } from "../src/sources";
import { tablesOf } from "./tools/tables";

const src = fileURLToPath(new URL("../src", import.meta.url));
const files = readdirSync(src, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => /\/data\/[^/]+\.ts$/.test(file));
const tables = await tablesOf();
const keys: ReadonlySet<unknown> = new Set(sourceKeys());

/** Fields that hold a source key, anywhere in a row. */
const SOURCE_FIELD = /^(?:source|sources|\w+Source)$/;

/** `where: key` of every key in a table which the list does not have. */
function unknownKeys(value: unknown, where: string, found: string[] = []): string[] {
  if (typeof value !== "object" || value === null) return found;
  for (const [field, inner] of Object.entries(value)) {
    const place = `${where}.${field}`;
    if (SOURCE_FIELD.test(field)) {
      for (const key of [inner].flat())
        if (typeof key === "string" && !keys.has(key))
          found.push(`${place} = ${key} in ${JSON.stringify(value).slice(0, 200)}`);
    }
    unknownKeys(inner, place, found);
  }
  return found;
}

describe("sources", () => {
  it("are merged from every layer that has some, each key once", async () => {
    const listed: string[] = [];
    for (const file of files.filter((name) => name.endsWith("/data/sources.ts"))) {
      const exported: Record<string, unknown> = await import(/* @vite-ignore */ join(src, file));
      for (const [name, table] of Object.entries(exported))
        if (/Sources$/.test(name)) listed.push(...Object.keys(table as object));
    }
    expect(listed.toSorted()).toEqual(sourceKeys().toSorted());
    expect(new Set(listed).size).toBe(listed.length);
    let tested = 0;
    for (const key of sourceKeys()) {
      expect(cite(key), key).not.toBe("");
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(160);
  });

  it.each(tables)("$layer/data/$file $name names only keys of the list", ({ layer, name, rows }) => {
    expect(unknownKeys(rows, `${layer} ${name}`)).toEqual([]);
  });

  it("names the row that has a key of no source", () => {
    expect(unknownKeys([{ formula: "KCl", source: "nowhere" }], "table")).toEqual([
      'table.0.source = nowhere in {"formula":"KCl","source":"nowhere"}',
    ]);
  });
});

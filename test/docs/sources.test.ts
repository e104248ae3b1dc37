// The printed bibliography says what the library cites. The page is written from the same entries, so it cannot go stale;
// after a change of src/<layer>/data/sources.ts write it anew with `npx vitest run test/docs/sources.test.ts -u`.
import { fileURLToPath } from "node:url";
import { cite, source, sourceKeys } from "preparative";
import { describe, expect, it } from "vitest";

const page = fileURLToPath(new URL("../../docs/guide/sources.md", import.meta.url));

const INTRODUCTION = `---
title: "Sources: where does a figure come from?"
---

# Sources: where does a figure come from?

Every row of every table names its source by a key, and \`cite(key)\` prints the line that stands under a working. This is
the whole list, lowest layer first. The last column says how the figures reached the tables where they were not read in the
source itself. A figure without better ground says so too: \`memory\` was recalled and not confirmed, \`commonPractice\` is a
rule of the trade for which no printed source was found. Check those before something depends on them.

\`\`\`ts
import { cite, source } from "preparative";

cite("jcgm100") // => ${JSON.stringify(cite("jcgm100"))}
source("pac2022v94").doi // => ${JSON.stringify(source("pac2022v94").doi)}
\`\`\`

| key | source | how the figures reached us |
| --- | --- | --- |
`;

const rows = sourceKeys().map((key) => `| \`${key}\` | ${cite(key)} | ${source(key).access ?? ""} |\n`);

describe("the printed bibliography", () => {
  it("holds no citation that would break the table", () => {
    let tested = 0;
    for (const key of sourceKeys()) {
      expect(`${cite(key)}${source(key).access ?? ""}`, key).not.toMatch(/[|\n<]/);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(160);
  });

  it("says so where figures are recalled", () => {
    let tested = 0;
    for (const key of sourceKeys()) {
      if (/memory/.test(source(key).access ?? "")) expect(cite(key), key).toMatch(/from memory\)$/);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(160);
  });

  it("names who publishes a table and what it holds, no data file", () => {
    let tested = 0;
    for (const key of sourceKeys()) {
      expect(`${cite(key)} ${source(key).access ?? ""}`, key).not.toMatch(/\.dat\b|data file,/);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(160);
  });

  it("prints every key with what cite() gives, and nothing else", async () => {
    await expect(INTRODUCTION + rows.join("")).toMatchFileSnapshot(page);
  });
});

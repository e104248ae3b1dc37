// The page that says how far the figures can be trusted, counted from the tables and the tests themselves, so that it cannot
// flatter: `npx vitest run test/docs/trust.test.ts -u` writes it anew.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { cautionsForFormulas, identify } from "../../src/substance";
import { REGISTRY } from "../../src/substance/data/registry";
import { MEASURED } from "../data/measured";
import { SAFETY_FACTS } from "../data/safety-facts";
import { SHELF_NAMES } from "../data/shelf-names";
import { countedTables, type Ground, inWords } from "../tools/table-sources";

const page = fileURLToPath(new URL("../../docs/guide/trust.md", import.meta.url));
const tests = fileURLToPath(new URL("..", import.meta.url));

const tables = await countedTables();
const GROUNDS: readonly Ground[] = ["published", "weak", "memory", "practice"];
const percent = (part: number, whole: number): string => `${Math.round((100 * part) / whole)} %`;

/** Rounded down to two figures, so that a row more is not a page anew: 941 is 940. */
const about = (n: number): number => {
  const step = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(n, 1))) - 1);
  return Math.floor(n / step) * step;
};

/** One line of the first table. */
const tableRow = ({ layer, name, sources, grounds }: (typeof tables)[number]): string =>
  `| ${layer} | ${inWords(name)} | ${about(sources.length)} | ${GROUNDS.map((one) => (grounds[one] === 0 ? "" : percent(grounds[one], sources.length))).join(" | ")} |\n`;

/** Grounds outside the project, and how a test that rests on one names it. */
const GROUNDS_OF_TESTS: readonly (readonly [name: string, pattern: RegExp])[] = [
  ["CRC Handbook of Chemistry and Physics", /CRC Handbook/],
  ["NBS and NIST tables and standards", /\bN(?:BS|IST)\b/],
  ["IUPAC recommendations, reports and atomic weights", /IUPAC|CIAAW|Red Book|Pure Appl/],
  ["Chemistry 2e (OpenStax)", /OpenStax/],
  ["Guide to the expression of uncertainty (JCGM 100), Student's t", /JCGM|\bGUM\b/],
  ["Perry's handbook", /Perry/],
  ["CODATA key values", /CODATA/],
  ["US EPA, USGS and BRGM equilibria", /\bEPA\b|USGS|BRGM|epaEquilibria|brgmEquilibria/],
  ["Regulation (EC) No 1272/2008 and the GHS", /1272\/2008|\bCLP\b|\bGHS\b/],
  ["Prudent Practices, Bretherick: incompatibilities", /Prudent Practices|Bretherick/],
  ["preparation books of 1880 to 1962", /Blanchard|Biltz|Cooley|Schlessinger|Miner\b/],
  ["pharmacopoeias", /[Pp]harmacopoeia|\bUSP\b/],
  ["international standards (ISO, OIML, ASTM, DIN)", /\bISO \d|OIML|ASTM|\bDIN\b/],
  ["hand calculation from first principles", /by hand|first principles|arithmetic/],
];

const files = readdirSync(tests, { recursive: true, encoding: "utf8" })
  .filter((file) => /\.test\.ts$/.test(file))
  .map((file) => readFileSync(`${tests}/${file}`, "utf8"));
const citing = GROUNDS_OF_TESTS.map(
  ([name, pattern]) => [name, files.filter((text) => pattern.test(text)).length] as const,
)
  .filter(([, n]) => n > 0)
  .map(([name, n]) => [name, n < 5 ? 1 : n - (n % 5)] as const)
  .toSorted((a, b) => b[1] - a[1]);

const all = { rows: 0, published: 0, weak: 0, memory: 0, practice: 0 };
for (const { sources, grounds } of tables) {
  all.rows += sources.length;
  for (const one of GROUNDS) all[one] += grounds[one];
}

const statuses = new Map<string, number>();
for (const { formula } of REGISTRY()) {
  const status = cautionsForFormulas([formula]).substances[0]!.status;
  statuses.set(status, (statuses.get(status) ?? 0) + 1);
}
const statusRows = [...statuses]
  .toSorted((a, b) => b[1] - a[1])
  .map(([status, n]) => `| ${status} | ${percent(n, REGISTRY().length)} |\n`);

const names = [...new Set(Object.values(SHELF_NAMES).flat())];
const read = names.filter((name) => identify(name).meanings.length > 0 || identify(name).what !== undefined).length;

const TEXT = `---
title: "Trust: how far can I rely on it?"
---

# Trust: how far can I rely on it?

This page is counted from the tables and the tests; nobody writes it, and a test fails where it no longer fits. Every figure
that you are given says what it rests on (\`source\`, \`cite\`, \`explain\`), so that you need not believe the whole.

## What the tables rest on

Of more than ${about(all.rows)} rows that name a source, ${percent(all.published, all.rows)} are published figures that were read, ${percent(all.weak, all.rows)} are published
but weak (doubtful, single, unsigned, or partly recalled), ${percent(all.memory, all.rows)} are recalled from memory and ${percent(all.practice, all.rows)} are common practice of the
trade. What is recalled says so in every working and on every sheet: check it before something depends on it. An entry of
hazards counts by its list, also where single statements in it are recalled, which are marked one by one.

| layer | table | rows | published | weak | memory | practice |
| --- | --- | --- | --- | --- | --- | --- |
${tables.map(tableRow).join("")}
Numbers of rows are rounded down to two figures; tables of fewer than ten are left out. What each source asks of those who hand its figures on stands in the NOTICE.

## What is known of hazards

Each of the more than ${about(REGISTRY().length - 1)} substances of the registry was looked up. None of these words means safe.

| status | share of the substances |
| --- | --- |
${statusRows.join("")}
Of ${names.length} names of real shelves (home, school, pottery, garden, aquarium, darkroom, old books) ${percent(read, names.length)} are read.
More than ${about(SAFETY_FACTS.length)} facts of safety are written down apart from the tables and asked in every run of the tests.

## What the tests compare with

In so many test files, at least, a ground outside this project is named beside the checks:

| ground | test files |
| --- | --- |
${citing.map(([name, n]) => `| ${name} | ${about(n)} |\n`).join("")}
## What was run besides

| what | result | command | day |
| --- | --- | --- | --- |
${MEASURED.map(({ what, figure, command, date }) => `| ${what} | ${figure} | \`${command}\` | ${date} |\n`).join("")}
`;

describe("the page of trust", () => {
  it("prints what the tables and the tests say today", async () => {
    await expect(TEXT).toMatchFileSnapshot(page);
  });

  it("counts every row of a table once", () => {
    for (const { name, sources, grounds } of tables)
      expect(
        GROUNDS.reduce((sum, one) => sum + grounds[one], 0),
        name,
      ).toBe(sources.length);
    expect(tables.length).toBeGreaterThan(50);
  });

  it("calls no table published that is recalled", () => {
    // densities of solids, thermal steps and names of the registry are from memory where no row was read since, as they say
    for (const [name, least] of [
      ["PHYSICAL", 90],
      ["REGISTRY", 90],
      ["DEHYDRATION", 20],
    ] as const)
      expect(tables.find((one) => one.name === name)!.grounds.memory, name).toBeGreaterThan(least);
    expect(tables.find(({ name }) => name === "FORMATION")!.grounds.published).toBeGreaterThan(900);
  });

  it("tells runs with command and day", () => {
    expect(MEASURED.length, "rows to test").toBeGreaterThan(0);
    for (const { figure, command, date } of MEASURED) {
      expect(figure).toMatch(/\d/);
      expect(command).toMatch(/^(?:npm|npx) /);
      expect(date).toMatch(/^\d{4}-\d{2}-\d{2}$/);
    }
  });
});

// The sheets under docs/examples/sheets: each file is what the library writes today, so that a changed word or figure shows in
// review. `npm run sheets` writes them anew.
import { readdirSync, readFileSync } from "node:fs";
import { type ProcedureStep, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";
import { SHEETS, sheetFiles } from "../../docs/examples/sheets";

/** The reader's words for what a step leaves to write down; dryings have a table of their own. */
const BLANKS: Readonly<Record<string, string>> = {
  temperature: "temperature at the filter ________ °C",
  pH: "pH of the liquor ________",
  "tests.filtrate": "test of the clear liquor [ ] clear [ ] cloudy",
  "tests.lastWash": "test of the last wash [ ] clear [ ] cloudy",
  filtrateVolume: "volume of the filtrate ________ mL",
  wetCake: "wet cake ________ g",
  washes: "washes done ________",
  ignition: "ignition: before ________ g after ________ g",
  dried: "dry mass ________ g",
};
const blanksOf = ({ operation, blank }: ProcedureStep): string[] =>
  blank === undefined ? [] : operation === "dry" ? ["write it in the drying record"] : [BLANKS[blank] ?? "missing"];

const folder = new URL("../../docs/examples/sheets/", import.meta.url);
const files = sheetFiles();

describe("the printed examples", () => {
  it("are all there, and no others", () => {
    expect(readdirSync(folder).sort()).toEqual([...files.keys()].sort());
    expect(files.size).toBe(19);
  });

  it.each([...files])("%s is what is written today", (name, text) => {
    expect(readFileSync(new URL(name, folder), "utf8")).toBe(text);
  });

  it("never part a figure from its unit at the end of a line", () => {
    const plain = [...files].filter(([name]) => name.endsWith(".txt"));
    expect(plain.length).toBeGreaterThan(8);
    for (const [name, text] of plain) expect(text, name).not.toMatch(/\d\n +(?:%|°C|(?:g|kg|mL|L|K|min|mol)\b)/);
  });
});

describe.each(Object.entries(SHEETS))("the sheet of %s", (name, request) => {
  const plan = planPreparation(request);
  const text = files.get(`${name}.txt`)!.replace(/\s+/g, " ");
  const html = files.get(`${name}.html`)!;

  it("has each step in order, with its cautions inside it and the observation it takes", () => {
    let at = 0;
    expect(plan.steps.filter(({ operation }) => operation !== "weigh").length, "rows to test").toBeGreaterThan(0);
    for (const step of plan.steps.filter(({ operation }) => operation !== "weigh")) {
      const here = text.indexOf(step.text.replace(/\s+/g, " "), at);
      expect(here, step.text).toBeGreaterThan(at);
      const own = step.cautions.filter(({ about }) => about === undefined);
      for (const caution of own)
        expect(text.indexOf(caution.text.slice(1).replace(/\s+/g, " "), here), caution.text).toBeGreaterThan(here);
      for (const words of blanksOf(step)) expect(text.indexOf(words, here), words).toBeGreaterThan(here);
      at = here;
    }
    expect(at).toBeGreaterThan(0);
  });

  it("gives every portion as the instrument shows it", () => {
    expect(plan.weighings.length, "rows to test").toBeGreaterThan(0);
    for (const { material, portion } of plan.weighings) {
      const row = new RegExp(`${material} \\S+ ([\\d.]+) (g|mL) _`).exec(text);
      // balance 0.1 g; measuring cylinder 10 mL
      const shown = portion.dimension === "mass" ? portion.in("g").toFixed(1) : portion.in("mL").toFixed(0);
      expect(row?.[1], material).toBe(shown);
    }
  });

  it("is a whole document that asks nothing of anybody", () => {
    expect(html.startsWith('<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">')).toBe(true);
    expect(html).not.toMatch(/<script|<link|<img|url\(|@import|https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
    expect(plan.weighings.length, "rows to test").toBeGreaterThan(0);
    for (const { material } of plan.weighings) expect(html).toContain(material);
  });
});

// A name to everything it can mean: table names, ambiguous trade names, and names read word by word.

import { parseFormula } from "../../formula";
import { splitWater } from "../../formula/internal";
import type { Fields } from "../../foundation/argument";
import { type Facts, lookingIn } from "../../foundation/facts";
import { anhydrousKey, readNotation, tryReadNotation } from "../../ion/internal";
import { guard, readableOptions } from "../argument";
import { AMBIGUOUS } from "../data/ambiguous";
import { readableText } from "../error";
import { ownName, rowOf, rowsNamed } from "../registry/registry-index";
import { remarksOfShop } from "../shop/shop-remarks";
import { formulasSoldAs } from "../shop/sold-goods";
import type { Found } from "./molecule-readings";
import { tryNameOf } from "./name-of";
import type { NameReading } from "./name-reading";
import { componentReadings, type HydrateName, registryWriting, splitHydrate, withWater } from "./rule-readings";
import { baseFirst, nameKey, plainName } from "./words";

const READING = { literal: true, facts: true } as const satisfies Fields<ReadingOptions>;

let ambiguous: ReadonlyMap<string, readonly Found[]> | undefined;

function ambiguousReadings(key: string): readonly Found[] | undefined {
  ambiguous ??= new Map(
    AMBIGUOUS().flatMap(({ names, readings, source }) => {
      const found = readings.map((reading) => ({ ...reading, source }));
      return names.map((name) => [nameKey(name), found] as const);
    }),
  );
  return ambiguous.get(key);
}

/** A component by table or rule. */
function anyReadings(name: string, literal = false): Found[] {
  const rows = systematicRows(name);
  if (rows.length > 0) return [{ formula: rows[0]!, decides: "" }];
  const byRule = componentReadings(name, literal);
  if (byRule.length > 0) return byRule;
  return tableReadings(name);
}

/** Registry rows whose systematic name (or another accepted one) this is. */
function systematicRows(name: string): string[] {
  const key = nameKey(name);
  return rowsNamed(name)
    .filter(({ row }) => nameKey(row.name) === key || (row.systematic ?? []).some((other) => nameKey(other) === key))
    .map(({ row }) => row.formula);
}

/** Registry rows under any of their names. */
function tableReadings(name: string): Found[] {
  const found = new Map<string, Found>();
  for (const { row, remark } of rowsNamed(name))
    if (!found.has(row.formula))
      found.set(row.formula, { formula: row.formula, decides: remark ?? `sold as ${row.name}`, source: row.source });
  return [...found.values()];
}

/** `X—water (1/7)`: components and ratio. */
function adductReadings(name: string): Found[] {
  const match = /^(.*) ?\(([\d/]+)\)$/.exec(name);
  if (match === null || !match[1]!.includes("—")) return [];
  const components = match[1]!.trim().split("—");
  const ratio = match[2]!.split("/").map(Number);
  if (components.length !== ratio.length || ratio.some((n) => !(n > 0))) return [];
  const parts = components.map((component) => anyReadings(component.trim())[0]?.formula);
  if (parts.some((part) => part === undefined)) return [];
  const [first, ...rest] = parts.map((part, i) => (ratio[i] === 1 ? part! : `${ratio[i]}${part}`));
  return [{ formula: registryWriting([first, ...rest].join("·")), decides: "" }];
}

/** What shops sell under just this name. */
const goodsSoldAs = (name: string): Found[] =>
  formulasSoldAs(name).map((formula) => ({ formula, decides: `the label says ${formula}`, source: "commonPractice" }));

/** How the search for readings is narrowed. */
export interface ReadingOptions {
  /** Take the name literally by the rules, trade meanings left out. */
  readonly literal?: boolean;
  /** Facts of the caller's own, looked up before the tables of the library. */
  readonly facts?: Facts | undefined;
}

function tryRow(formula: string) {
  const notation = tryReadNotation(formula);
  return notation === undefined ? undefined : rowOf(notation);
}

/** Table rows that are not just a hydrate of what the name says by rule: ferric nitrate is the nitrate, not its nonahydrate. */
function tableBeside(byTable: readonly Found[], byRule: readonly Found[]): Found[] {
  const cores = new Set(byRule.map(({ formula }) => anhydrousKey(readNotation(formula)).key));
  return byTable.filter(({ formula }) => {
    const { key, water } = anhydrousKey(readNotation(formula));
    return water === 0 || !cores.has(key);
  });
}

/** Neither a hydrate nor an ion. */
const isDry = ({ formula }: Found) => {
  const read = parseFormula(formula);
  return read.charge === 0 && splitWater(read).waters.equals(0);
};

function withWaterOf(cores: readonly Found[], hydrate: HydrateName): Found[] {
  return cores.map((one) => ({ ...one, formula: withWater(one.formula, hydrate) }));
}

/** All meanings, undressed. */
function foundReadings(name: string, literal: boolean): Found[] {
  const own = ownName(name);
  if (own !== undefined) return [{ formula: own.formula, decides: "", source: own.source }];
  const key = nameKey(name);
  if (!literal) {
    const known = ambiguousReadings(key);
    if (known !== undefined) return [...known];
  }
  const systematic = systematicRows(name);
  if (systematic.length > 0) return [{ formula: systematic[0]!, decides: "" }];
  const adduct = adductReadings(name);
  if (adduct.length > 0) return adduct;
  const hydrate = splitHydrate(name);
  if (hydrate?.water !== undefined) {
    const cores = anyReadings(hydrate.core, literal).filter(isDry);
    // of the things an ambiguous name stands for, those that are listed with just this water
    const meant = literal ? [] : (ambiguousReadings(nameKey(hydrate.core)) ?? []).filter(isDry);
    const listed = withWaterOf(meant, hydrate).filter(({ formula }) => tryRow(formula) !== undefined);
    if (listed.length > 0) return listed;
    if (cores.length > 0) return withWaterOf(cores, hydrate);
  }
  const byRule = hydrate === undefined ? componentReadings(name, literal) : [];
  const byTable = literal ? [] : tableBeside(tableReadings(name), byRule);
  const all = new Map(byTable.map((one) => [one.formula, one] as const));
  for (const one of byRule) {
    // a trade name (calcium carbide, copper oxychloride) outweighs a compound that nobody has on the shelf
    if (byTable.length > 0 && (all.has(one.formula) || tryRow(one.formula) === undefined)) continue;
    all.set(one.formula, byTable.length > 0 ? { formula: one.formula, decides: "the name taken literally" } : one);
  }
  if (all.size === 0 && literal) return tableReadings(name);
  if (all.size === 0 && baseFirst(name) !== name) return foundReadings(baseFirst(name), literal);
  // a word of the shop that no rule or table of names knows: white vinegar
  if (all.size === 0) for (const good of literal ? [] : goodsSoldAs(name)) all.set(good.formula, good);
  return [...all.values()];
}

/** @internal The formulas of {@link readingsOf}, without a name for each. */
export const formulasMeant = (name: string): readonly string[] =>
  foundReadings(plainName(readableText(name, "a name")).name, false).map(({ formula }) => formula);

/**
 * Everything a name can mean, each with its systematic name and what decides for it. One reading means the name is clear;
 * none means it is not known.
 *
 * @param name - systematic, older, mineral or trade name
 * @param options - `literal: true` for the rules alone; `facts`: facts of the caller's own, whose names mean what they say there
 * @returns meanings, likeliest first; formulas with their crystal water
 * @throws {SubstanceError} `substance.bad-input`, `substance.too-long`
 * @source the registry and the trade's usage (common practice, no source); names by rule after the Red Book 2005
 * @category Names
 * @example
 * readingsOf("zinc carbonate").map((reading) => reading.formula) // => ["ZnCO3", "Zn5(OH)6(CO3)2"]
 * readingsOf("cupric sulphate")[0]?.name // => "copper(II) sulfate"
 * readingsOf("green vitriol")[0]?.formula // => "FeSO4·7H2O"
 * readingsOf("green vitriol")[0]?.source // => "memory"
 */
export function readingsOf(name: string, options?: ReadingOptions): NameReading[] {
  const { literal = false, facts } = readableOptions(options, READING);
  return lookingIn(facts, guard, () => allReadings(name, literal === true));
}

function allReadings(name: string, literal: boolean): NameReading[] {
  const { name: plain, respelled } = plainName(readableText(name, "a name"));
  const found = foundReadings(plain, literal);
  const remarks = found.length === 1 && !literal ? remarksOfShop(plain, found[0]!.formula) : [];
  return found.map(({ formula, decides, source }) => {
    const named = tryNameOf(formula);
    return {
      formula,
      name: named.ok ? named.value : formula,
      decides: found.length > 1 ? decides : "",
      // what the rules had to assume stays on the answer
      notes: found.length === 1 && source === undefined && decides !== "" ? [...respelled, decides] : respelled,
      remarks,
      ...(source === undefined ? {} : { source }),
    };
  });
}

// A set of facts of the caller's own: rows read once, kept immutable, and passed to whatever looks something up.
import type { GivenConstants } from "../aqueous";
import { isPreparativeError } from "../foundation/error";
import { type Facts, isFacts, OWN_FIGURE, OWN_TABLES, type OwnTables, under } from "../foundation/facts";
import { frozen } from "../foundation/frozen";
import { headProblem, type RecordHead, recordHead } from "../foundation/record";
import { INSPECT, shownAs } from "../foundation/shown";
import type { Quantity } from "../quantity";
import { FactsError, guard } from "./error";
import {
  type Entry,
  ofConstant,
  ofDensity,
  ofEnthalpy,
  ofHazard,
  ofIncompatibility,
  ofMaterial,
  ofName,
  ofSolubility,
  ofSubstance,
  ofUnit,
  ofWeight,
} from "./read";
import type { FactRows } from "./rows";

/** What a field of a row may be: text, a list of texts, pairs of texts, either of the first two, or yes or no. */
type Kind = "text" | "texts" | "pairs" | "text or texts" | "boolean";

/** How the rows of a table are read; a field with a mark may be left out. */
interface Table {
  readonly fields: Readonly<Record<string, Kind | `${Kind}?`>>;
  readonly read: (row: never, source: string) => Entry[];
}

type TableName = Exclude<keyof FactRows, "source">;

/** Units first: the other rows may be written in them. */
const TABLES: Readonly<Record<TableName, Table>> = {
  units: { fields: { symbol: "text", is: "text" }, read: ofUnit },
  weights: { fields: { element: "text", weight: "text" }, read: ofWeight },
  substances: {
    fields: {
      formula: "text",
      name: "text",
      otherNames: "texts?",
      appearance: "text?",
      note: "text?",
      density: "text?",
    },
    read: ofSubstance,
  },
  names: { fields: { name: "text", formula: "text" }, read: ofName },
  solubilities: { fields: { formula: "text", solid: "text?", points: "pairs" }, read: ofSolubility },
  densities: { fields: { solute: "text", temperature: "text?", points: "pairs" }, read: ofDensity },
  materials: {
    fields: {
      name: "text",
      formula: "text",
      assay: "text or texts?",
      solution: "boolean?",
      density: "text?",
      impurities: "texts?",
      trap: "text?",
    },
    read: ofMaterial,
  },
  hazards: { fields: { formula: "text", codes: "texts?", cautions: "texts?", disposal: "text?" }, read: ofHazard },
  incompatibilities: {
    fields: { code: "text", a: "texts", b: "texts", what: "text", severity: "text", products: "texts?" },
    read: ofIncompatibility,
  },
  constants: { fields: { kind: "text", of: "text", value: "text or texts" }, read: ofConstant },
  enthalpies: { fields: { formula: "text", enthalpy: "text" }, read: ofEnthalpy },
};
const NAMES = /* @__PURE__ */ Object.keys(TABLES) as TableName[];

/** Words a field is limited to. */
const CHOICES: Readonly<Record<string, readonly string[]>> = {
  severity: ["forbid", "warn"],
  kind: ["pKa", "pKsp", "logBeta", "pKH"],
};

/** Rows of one table, points of one row, and characters of one text at most. */
const MOST = 2000;
const LONGEST = 2000;

type Row = Readonly<Record<string, unknown>> & { readonly source: string };

function checkText(value: unknown, place: string): void {
  guard.text(value, place);
  const text = value as string;
  if (text.trim() === "") throw new FactsError("facts.bad-row", `${place} is empty`);
  if (text.length > LONGEST)
    throw new FactsError("facts.too-many", `${place} has ${text.length} characters; the most is ${LONGEST}`);
}

function checkList(value: unknown, place: string): readonly unknown[] {
  guard.list(value, place);
  const list = value as readonly unknown[];
  if (list.length > MOST)
    throw new FactsError("facts.too-many", `${place} has ${list.length} entries; the most is ${MOST}`);
  return list;
}

function checkTexts(value: unknown, place: string): void {
  for (const [i, one] of checkList(value, place).entries()) checkText(one, `${place}[${i}]`);
}

function checkPairs(value: unknown, place: string): void {
  for (const [i, pair] of checkList(value, place).entries()) {
    checkTexts(pair, `${place}[${i}]`);
    if ((pair as readonly unknown[]).length !== 2)
      throw guard.refused(pair, `${place}[${i}]`, "a pair of texts", `a list of ${(pair as unknown[]).length}`);
  }
}

function checkField(value: unknown, kind: Kind, place: string): void {
  if (kind === "boolean") guard.boolean(value, place);
  else if (kind === "text" || (kind === "text or texts" && typeof value === "string")) checkText(value, place);
  else if (kind === "pairs") checkPairs(value, place);
  else checkTexts(value, place);
}

/** A row of known fields of the right kinds, copied and frozen, with its source. */
function checkedRow(given: unknown, { fields }: Table, usual: string | undefined, place: string): Row {
  const known = Object.fromEntries([...Object.keys(fields), "source"].map((field) => [field, true as const]));
  guard.fields(given, known, place);
  const row = given as Readonly<Record<string, unknown>>;
  for (const [field, kind] of Object.entries(fields)) {
    const value = row[field];
    if (value === undefined && kind.endsWith("?")) continue;
    checkField(value, kind.replace("?", "") as Kind, `${place}.${field}`);
    if (CHOICES[field] !== undefined) guard.choice(value, `${place}.${field}`, CHOICES[field]);
  }
  const source = row["source"] ?? usual;
  if (source === undefined)
    throw new FactsError("facts.no-source", `${place} names no source`, {
      hint: 'say in words where it comes from, such as source: "weighed by us, March 2026"; one source may serve the whole set',
      details: { place },
    });
  checkText(source, `${place}.source`);
  const kept = Object.entries({ ...row, source }).filter(([, value]) => value !== undefined);
  return frozen(JSON.parse(JSON.stringify(Object.fromEntries(kept)))) as Row;
}

/** The rows of a table as they stand in the tables of the library; what is wrong with one is said with its place. */
function entriesOf(row: Row, { read }: Table, place: string): Entry[] {
  try {
    return read(row as never, OWN_FIGURE + row.source);
  } catch (error) {
    if (!isPreparativeError(error)) throw error;
    const code = error instanceof FactsError ? error.code : "facts.bad-row";
    throw new FactsError(code, `${place}: ${error.problem}`, {
      input: error.input,
      position: error.position,
      hint: error.hint,
      details: { ...error.details, place, cause: error.code },
    });
  }
}

type Rows = Readonly<Partial<Record<TableName, readonly Row[]>>>;

/** The constants as the model of a beaker takes them. */
function givenConstants(rows: ReadonlyMap<string, unknown> | undefined): GivenConstants {
  const given: Record<string, Record<string, readonly Quantity[] | Quantity>> = {};
  for (const row of rows?.values() ?? []) {
    const { kind, of, values } = row as { kind: string; of: string; values: readonly Quantity[] };
    given[kind] = { ...given[kind], [of]: kind === "pKa" ? values : values[0]! };
  }
  return given as GivenConstants;
}

const PARTS: unique symbol = /* @__PURE__ */ Symbol("parts");
const SCHEMA = 1;

class OwnFacts implements Facts {
  /** What consoles call it, whatever a minifier makes of it. */
  static get name(): string {
    return "Facts";
  }

  readonly kind = "facts";
  readonly size: number;
  /** @internal */
  readonly [OWN_TABLES]: () => OwnTables;
  /** @internal */
  readonly [PARTS]: () => readonly Rows[];

  constructor(parts: readonly Rows[], tables: OwnTables) {
    this.size = parts.flatMap((rows) => Object.values(rows).flat()).length;
    this[OWN_TABLES] = () => tables;
    this[PARTS] = () => parts;
    Object.freeze(this);
  }

  get [Symbol.toStringTag](): string {
    return "Facts";
  }

  toString(): string {
    const counts = NAMES.map((name) => [this[PARTS]().flatMap((rows) => rows[name] ?? []).length, name] as const);
    const given = counts.filter(([count]) => count > 0).map(([count, name]) => `${count} ${name}`);
    return given.length === 0 ? "no facts" : `facts: ${given.join(", ")}`;
  }

  [INSPECT](): string {
    return shownAs("Facts", this);
  }

  toJSON(): FactsRecord {
    return { ...recordHead("facts", SCHEMA), parts: JSON.parse(JSON.stringify(this[PARTS]())) };
  }
}

/** A set of facts as plain data: what it was put together from, each row with its source. */
export interface FactsRecord extends RecordHead<"facts"> {
  /** One for each set of rows that was put into it. */
  readonly parts: readonly FactRows[];
}

/** What a part brings, checked. */
function partsOf(part: FactRows | Facts): readonly Rows[] {
  // a set of another copy of the library is read again from its record
  if (isFacts(part)) return part instanceof OwnFacts ? part[PARTS]() : part.toJSON().parts.flatMap(partsOf);
  guard.fields(part, { ...Object.fromEntries(NAMES.map((name) => [name, true as const])), source: true }, "facts");
  const { source } = part;
  if (source !== undefined) checkText(source, "source");
  const given = NAMES.filter((name) => part[name] !== undefined).map((name) => {
    const rows = checkList(part[name], name).map((row, i) => checkedRow(row, TABLES[name], source, `${name}[${i}]`));
    return [name, rows] as const;
  });
  return [frozen(Object.fromEntries(given))];
}

/**
 * Facts of the caller's own: what a pack says, what was measured at the bench, what a safety data sheet adds. The set is
 * immutable and belongs to nobody but the calls it is passed to as `facts`; there its rows are looked up before the tables of
 * the library, and every figure that rests on one says "own figure" with the source that was given. Hazards and
 * incompatibilities are added to those of the library: no row takes one of them away.
 *
 * @param parts - rows by table, each with its `source`, or sets made before; of two rows for one thing the later one counts
 * @returns the set; `toJSON` writes it, `fromJSON` reads it back
 * @throws {FactsError} `facts.bad-row`, `facts.unknown-field`, `facts.missing-field`, `facts.no-source`, `facts.clash`,
 *   `facts.too-many`; the message begins with the place of the row
 * @category Own data
 * @example
 * const studio = facts({
 *   source: "measured in the studio, March 2026",
 *   names: [{ name: "kiln blue", formula: "CoCO3" }],
 *   solubilities: [{ formula: "CuSO4·5H2O", points: [["20 °C", "20.3 g"]] }],
 * });
 * formulaOf("kiln blue", { facts: studio }) // => CoCO3
 * solubilityOf("CuSO4", "20 °C", { facts: studio }).source // => "own figure: measured in the studio, March 2026"
 * facts(studio, { units: [{ symbol: "scoop", is: "4.2 g", source: "weighed" }] }).size // => 3
 */
export function facts(...parts: readonly (FactRows | Facts)[]): Facts {
  return under(undefined, () => made(parts));
}

function made(given: readonly (FactRows | Facts)[]): Facts {
  const parts = given.flatMap(partsOf);
  const tables = new Map<string, Map<string, unknown>>();
  for (const rows of parts) for (const name of NAMES) enter(rows[name] ?? [], name, tables);
  const constants = tables.get("constants");
  if (constants !== undefined) tables.set("constants", new Map([["given", givenConstants(constants)]]));
  return new OwnFacts(Object.freeze(parts), Object.freeze(Object.fromEntries(tables)));
}

/** The rows of one table and part, entered where they are looked up; what is written in own units is read with them. */
function enter(rows: readonly Row[], name: TableName, tables: Map<string, Map<string, unknown>>): void {
  const units = tables.get("units");
  const before = new Map<string, number>();
  for (const [i, row] of rows.entries()) {
    const place = `${name}[${i}]`;
    const read = () => entriesOf(row, TABLES[name], place);
    const entries = units === undefined ? read() : under(new OwnFacts([], { units }), read);
    const [, main] = entries.find(([table]) => table === name)!;
    if (before.has(main))
      throw new FactsError("facts.clash", `${place} and ${name}[${before.get(main)}] are about the same`, {
        hint: "leave one of them out",
        details: { place },
      });
    before.set(main, i);
    for (const [table, key, entry] of entries) {
      const own = tables.get(table) ?? new Map<string, unknown>();
      tables.set(table, own.set(key, entry));
    }
  }
}

/**
 * A set of facts from the record that its `toJSON` wrote.
 *
 * @throws {FactsError} `facts.json` for anything else; and the codes of {@link facts}
 * @category Own data
 * @example
 * const own = facts({ names: [{ name: "kiln blue", formula: "CoCO3", source: "our label" }] });
 * String(factsFromJSON(JSON.parse(JSON.stringify(own)))) // => "facts: 1 names"
 */
export function factsFromJSON(data: unknown): Facts {
  const problem = headProblem(data, "facts", SCHEMA);
  if (problem !== undefined)
    throw new FactsError("facts.json", `not a record of facts: ${problem}`, { hint: "pass what toJSON gave, parsed" });
  const { parts } = data as Partial<FactsRecord>;
  guard.list(parts, "parts");
  return facts(...parts!);
}

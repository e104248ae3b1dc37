// Look-ups over the registry, built on first use: by composition, by name, by composition without crystal water.

import { byElements } from "../../formula/internal";
import { ownRow } from "../../foundation/facts";
import { once } from "../../foundation/memo";
import { anhydrousKey, formulaKey, type Notation, readNotation, textOf } from "../../ion/internal";
import { type NamesRow, REGISTRY_NAMES } from "../data/registry";
import type { SourceKey } from "../data/sources";
import { addTo } from "../names/multimap";
import { nameKey } from "../names/words";

/** A registry row under one of its names. */
interface NamedRow {
  readonly row: NamesRow;
  /** The name as the table writes it. */
  readonly name: string;
  readonly remark?: string;
}

/** All names of a row, with the remark each carries. */
export function namesOfRow(row: NamesRow): NamedRow[] {
  const names: NamedRow[] = [row.name, ...(row.systematic ?? [])].map((name) => ({ row, name }));
  for (const other of row.otherNames ?? [])
    names.push(typeof other === "string" ? { row, name: other } : { row, name: other.name, remark: other.remark });
  return names;
}

/** Rows by composition, and by composition without crystal water. */
const byComposition = /* @__PURE__ */ byElements(
  REGISTRY_NAMES,
  ({ formula }) => formula,
  (rows) => {
    const byFormula = new Map<string, NamesRow>();
    const byCore = new Map<string, NamesRow[]>();
    for (const row of rows) {
      const notation = readNotation(row.formula);
      const key = formulaKey(notation);
      // isomers: the first row keeps the composition (ethanol before dimethyl ether)
      if (!byFormula.has(key)) byFormula.set(key, row);
      addTo(byCore, anhydrousKey(notation).key, row);
    }
    return { byFormula, byCore };
  },
);

const byName = /* @__PURE__ */ once(() => {
  const names = new Map<string, NamedRow[]>();
  for (const row of REGISTRY_NAMES()) for (const named of namesOfRow(row)) addTo(names, nameKey(named.name), named);
  return names;
});

/** Every name of the registry as it is looked up, with its rows. */
export const registryNames = (): ReadonlyMap<string, readonly NamedRow[]> => byName();

/** A name of the caller's own: what it stands for, and the row of the substance where the caller describes it. */
export interface OwnName {
  readonly name: string;
  readonly formula: string;
  readonly source: SourceKey;
  readonly row?: NamesRow;
}

/** What a name of the caller's own stands for. */
export const ownName = (name: string): OwnName | undefined => ownRow("names", () => nameKey(name));

/** Registry row of a formula, whatever the order of its atoms. */
export function rowOf(notation: Notation): NamesRow | undefined {
  const own = ownRow<NamesRow>("substances", () => formulaKey(notation));
  if (own !== undefined) return own;
  return byComposition(textOf(notation)).byFormula.get(formulaKey(notation));
}

/** Registry rows that carry a name, exactly. */
export function rowsNamed(name: string): readonly NamedRow[] {
  const own = ownName(name);
  if (own !== undefined) return own.row === undefined ? [] : [{ row: own.row, name }];
  return byName().get(nameKey(name)) ?? [];
}

/** What the caller's own facts make of the rows that differ by crystal water only. */
export type AddsKin = (known: readonly NamesRow[]) => readonly NamesRow[];

/** Rows that differ from the formula by crystal water only, the formula itself included. */
export function kinOf(notation: Notation): readonly NamesRow[] {
  const { key } = anhydrousKey(notation);
  const known = byComposition(textOf(notation)).byCore.get(key) ?? [];
  return ownRow<AddsKin>("kin", () => key)?.(known) ?? known;
}

/** Formulas of all rows, in the order of the table. */
export const registryFormulas = (): readonly string[] => REGISTRY_NAMES().map(({ formula }) => formula);

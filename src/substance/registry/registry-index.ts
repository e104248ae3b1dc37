// Look-ups over the registry, built on first use: by composition, by name, by composition without crystal water.

import { anhydrousKey, formulaKey } from "../../ion/keys";
import { type Notation, readNotation } from "../../ion/notation";
import { REGISTRY, type RegistryRow } from "../data/registry";
import { addTo } from "../names/multimap";
import { nameKey } from "../names/words";

/** A registry row under one of its names. */
export interface NamedRow {
  readonly row: RegistryRow;
  /** The name as the table writes it. */
  readonly name: string;
  readonly remark?: string;
}

interface RegistryIndex {
  readonly byFormula: ReadonlyMap<string, RegistryRow>;
  readonly byName: ReadonlyMap<string, readonly NamedRow[]>;
  readonly byCore: ReadonlyMap<string, readonly RegistryRow[]>;
}

let built: RegistryIndex | undefined;

/** All names of a row, with the remark each carries. */
export function namesOfRow(row: RegistryRow): NamedRow[] {
  const names: NamedRow[] = [row.name, ...(row.systematic ?? [])].map((name) => ({ row, name }));
  for (const other of row.otherNames ?? [])
    names.push(typeof other === "string" ? { row, name: other } : { row, name: other.name, remark: other.remark });
  return names;
}

/** The index, built once. */
export function registryIndex(): RegistryIndex {
  if (built !== undefined) return built;
  const byFormula = new Map<string, RegistryRow>();
  const byName = new Map<string, NamedRow[]>();
  const byCore = new Map<string, RegistryRow[]>();
  for (const row of REGISTRY()) {
    const notation = readNotation(row.formula);
    const key = formulaKey(notation);
    // isomers: the first row keeps the composition (ethanol before dimethyl ether)
    if (!byFormula.has(key)) byFormula.set(key, row);
    addTo(byCore, anhydrousKey(notation).key, row);
    for (const named of namesOfRow(row)) addTo(byName, nameKey(named.name), named);
  }
  built = { byFormula, byName, byCore };
  return built;
}

/** Registry row of a formula, whatever the order of its atoms. */
export function rowOf(notation: Notation): RegistryRow | undefined {
  return registryIndex().byFormula.get(formulaKey(notation));
}

/** Registry rows that carry a name, exactly. */
export function rowsNamed(name: string): readonly NamedRow[] {
  return registryIndex().byName.get(nameKey(name)) ?? [];
}

/** Rows that differ from the formula by crystal water only, the formula itself included. */
export function kinOf(notation: Notation): readonly RegistryRow[] {
  return registryIndex().byCore.get(anhydrousKey(notation).key) ?? [];
}

let byNumber: ReadonlyMap<string, RegistryRow> | undefined;

/** Registry row of a registry number. */
export function rowWithNumber(number: string): RegistryRow | undefined {
  byNumber ??= new Map(REGISTRY().flatMap((row) => (row.cas === undefined ? [] : [[row.cas, row] as const])));
  return byNumber.get(number);
}

// Ions ready for matching: composition of each, and the hydrogen salts of every polyvalent anion.
import { ELEMENT_CHARGES, type ElementCharges } from "./data/element-words";
import { READ_ANIONS, READ_CATIONS, type ReadIonRow } from "./data/ions";
import { atomsIn, compositionKey } from "./notation";

/** An ion with its composition. */
export interface Ion {
  readonly row: ReadIonRow;
  readonly counts: ReadonlyMap<string, number>;
  readonly atoms: number;
  readonly charge: number;
  /** Polyatomic, or the element of a monatomic ion. */
  readonly element?: ElementCharges;
  /** For a hydrogen salt made by rule: the anion without its hydrogen. */
  readonly parent?: Ion;
}

interface IonIndex {
  /** Polyatomic anions that have a row of their own. */
  readonly listed: readonly Ion[];
  readonly anions: readonly Ion[];
  readonly cations: readonly Ion[];
  readonly elements: ReadonlyMap<string, ElementCharges>;
  /** The listed anion of a composition and charge; of isomers the first. */
  listedAs(counts: ReadonlyMap<string, number>, charge: number): Ion | undefined;
}

/** What a hydron adds. */
export const HYDROGEN: ReadonlyMap<string, number> = /* @__PURE__ */ new Map([["H", 1]]);

/** `dihydrogen` for two. */
export const HYDROGENS = ["", "hydrogen", "dihydrogen", "trihydrogen", "tetrahydrogen"];

const keyOf = (counts: ReadonlyMap<string, number>, charge: number): string => `${compositionKey(counts)} ${charge}`;

function ionOf(row: ReadIonRow, extra: { element?: ElementCharges; parent?: Ion } = {}): Ion {
  const counts = atomsIn(row.formula);
  let atoms = 0;
  for (const n of counts.values()) atoms += n;
  return { row, counts, atoms, charge: row.charge, ...extra };
}

/** Hydrogen salts of an anion that the table does not list by itself. */
function hydrogenKin(ion: Ion, known: ReadonlyMap<string, Ion>): Ion[] {
  const found: Ion[] = [];
  if (ion.charge >= -1 || ion.row.rare || /[()]/.test(ion.row.name) || ion.counts.size < 2) return found;
  for (let n = 1; n < -ion.charge && n < HYDROGENS.length; n += 1) {
    const counts = new Map(ion.counts).set("H", (ion.counts.get("H") ?? 0) + n);
    if (known.has(keyOf(counts, ion.charge + n))) continue;
    const formula = `H${n === 1 ? "" : n}${ion.row.formula}`;
    const name = `${HYDROGENS[n]}${ion.row.name}`;
    const rare = ion.counts.has("Si") ? { rare: true as const } : {};
    const row: ReadIonRow = { formula, charge: ion.charge + n, name, ...rare, source: ion.row.source };
    found.push(ionOf(row, { parent: ion }));
  }
  return found;
}

let built: IonIndex | undefined;

/** The index, built on first use. */
export function ionIndex(): IonIndex {
  if (built !== undefined) return built;
  const elements = new Map(ELEMENT_CHARGES().map((word) => [word.symbol, word] as const));
  const listed = READ_ANIONS().map((row) => ionOf(row));
  const known = new Map<string, Ion>();
  const add = (ion: Ion): void => {
    const key = keyOf(ion.counts, ion.charge);
    if (!known.has(key)) known.set(key, ion);
  };
  listed.forEach(add);
  const byKey = new Map(known);
  const anions = [...listed];
  for (const ion of listed)
    for (const kin of hydrogenKin(ion, known)) {
      anions.push(kin);
      add(kin);
    }
  for (const word of ELEMENT_CHARGES())
    if (word.ide !== undefined) {
      const { symbol, ide, ideCharge, source } = word;
      anions.push(ionOf({ formula: symbol, charge: -ideCharge!, name: ide, source }, { element: word }));
    }
  const cations = READ_CATIONS().map((row) => ionOf(row));
  built = { listed, anions, cations, elements, listedAs: (counts, charge) => byKey.get(keyOf(counts, charge)) };
  return built;
}

/** The ion as a formula writes it: complexes stand in square brackets. */
export function ionText(row: ReadIonRow): string {
  return row.formula.includes("(") || ["AuCl4", "PtCl6"].includes(row.formula) ? `[${row.formula}]` : row.formula;
}

/** Does the metal form cations of its own? */
export function isCationElement(symbol: string): boolean {
  return ionIndex().elements.get(symbol)?.charges !== undefined;
}

/** How often `small` fits into `large`. */
export function timesIn(small: ReadonlyMap<string, number>, large: ReadonlyMap<string, number>): number {
  let times = Number.POSITIVE_INFINITY;
  for (const [symbol, n] of small) {
    const has = large.get(symbol);
    if (has === undefined) return 0;
    times = Math.min(times, Math.floor(has / n + 1e-9));
  }
  return times;
}

/** `large` less `times` of `small`; symbols that reach zero go. */
export function without(
  large: ReadonlyMap<string, number>,
  small: ReadonlyMap<string, number>,
  times: number,
): Map<string, number> {
  const rest = new Map(large);
  for (const [symbol, n] of small) {
    const left = rest.get(symbol)! - n * times;
    if (Math.abs(left) < 1e-9) rest.delete(symbol);
    else rest.set(symbol, left);
  }
  return rest;
}

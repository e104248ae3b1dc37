// Ions ready for matching: composition of each, and the hydrogen salts of every polyvalent anion.
import { keptBeside, memoised, once } from "../foundation/memo";
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

/** Ions in the order of their tables. */
interface Ions {
  /** Polyatomic anions that have a row of their own. */
  readonly listed: readonly Ion[];
  readonly anions: readonly Ion[];
  readonly cations: readonly Ion[];
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

/** Hydrogen salts of an anion, whether or not the table lists one by itself. */
const hydrogenKin = /* @__PURE__ */ keptBeside((ion: Ion): readonly Ion[] => {
  const found: Ion[] = [];
  if (ion.charge >= -1 || ion.row.rare || /[()]/.test(ion.row.name) || ion.counts.size < 2) return found;
  for (let n = 1; n < -ion.charge && n < HYDROGENS.length; n += 1) {
    const formula = `H${n === 1 ? "" : n}${ion.row.formula}`;
    const name = `${HYDROGENS[n]}${ion.row.name}`;
    const rare = ion.counts.has("Si") ? { rare: true as const } : {};
    const row: ReadIonRow = { formula, charge: ion.charge + n, name, ...rare, source: ion.row.source };
    found.push(ionOf(row, { parent: ion }));
  }
  return found;
});

/** Charges and words of the elements, by symbol. */
export const elementCharges = /* @__PURE__ */ once(
  () => new Map(ELEMENT_CHARGES().map((word) => [word.symbol, word] as const)),
);

const ofRow = /* @__PURE__ */ keptBeside((row: ReadIonRow) => ionOf(row));
const ofElement = /* @__PURE__ */ keptBeside((element: ElementCharges) => {
  const { symbol, ide, ideCharge, source } = element;
  return ionOf({ formula: symbol, charge: -ideCharge!, name: ide!, source }, { element });
});

/** The ions whose formulas are among those asked for; the others are not read. */
function ionsAmong(isAmong: (formula: string) => boolean): Ions {
  const listed = READ_ANIONS()
    .filter(({ formula }) => isAmong(formula))
    .map(ofRow);
  const anions = [...listed];
  if (isAmong("H")) {
    const known = new Set(listed.map(({ counts, charge }) => keyOf(counts, charge)));
    for (const kin of listed.flatMap(hydrogenKin)) {
      const key = keyOf(kin.counts, kin.charge);
      if (known.has(key)) continue;
      known.add(key);
      anions.push(kin);
    }
  }
  for (const word of ELEMENT_CHARGES())
    if (word.ide !== undefined && isAmong(word.symbol)) anions.push(ofElement(word));
  const cations = READ_CATIONS()
    .filter(({ formula }) => isAmong(formula))
    .map(ofRow);
  return { listed, anions, cations };
}

/** Every ion of the tables. */
export const allIons = /* @__PURE__ */ once((): Ions => ionsAmong(() => true));

const ionsOf = /* @__PURE__ */ memoised(300, (symbols): Ions => {
  const any = symbols.split(" ").map((symbol) => (symbol.length === 1 ? `${symbol}(?![a-z])` : symbol));
  const only = new RegExp(`^(?:${any.join("|")}|[^A-Z])*$`);
  return ionsAmong((formula) => only.test(formula));
});

/** The ions that have no elements but these: all that can be part of a composition. */
export const ionsWithin = (counts: ReadonlyMap<string, number>): Ions =>
  ionsOf(
    [...counts.keys()]
      .filter((symbol) => elementCharges().has(symbol))
      .sort()
      .join(" "),
  );

/** The listed anion of a composition and charge; of isomers the first. */
export function listedAs(counts: ReadonlyMap<string, number>, charge: number): Ion | undefined {
  const key = keyOf(counts, charge);
  return ionsWithin(counts).listed.find((ion) => keyOf(ion.counts, ion.charge) === key);
}

/** The ions of a composition and charge: of isomers all, in the order of the table. */
export function ionsAs(counts: ReadonlyMap<string, number>, charge: number): Ion[] {
  const key = keyOf(counts, charge);
  const { anions, cations } = ionsWithin(counts);
  return (charge < 0 ? anions : cations).filter((ion) => keyOf(ion.counts, ion.charge) === key);
}

/** The ion as a formula writes it: complexes stand in square brackets. */
export function ionText(row: ReadIonRow): string {
  return row.formula.includes("(") || ["AuCl4", "PtCl6"].includes(row.formula) ? `[${row.formula}]` : row.formula;
}

/** Does the metal form cations of its own? */
export function isCationElement(symbol: string): boolean {
  return elementCharges().get(symbol)?.charges !== undefined;
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

// Coordination entities: a central metal, its ligands, the oxidation number that balances the charge; additive names.
import { compositionKey, countsOf, type ElementWord, readNotation, type Unit, unitsText } from "../../ion/internal";
import { LIGANDS, type LigandRow } from "../data/ligands";
import { wordOf } from "./other-names";
import { multiplePrefix, roman, simplePrefix } from "./prefixes";

/** A ligand and how often it stands in the complex. */
interface LigandUse {
  readonly row: LigandRow;
  readonly count: number;
}

/** A mononuclear complex without its oxidation number. */
export interface Complex {
  readonly metal: ElementWord;
  readonly ligands: readonly LigandUse[];
  /** Charge of all ligands together. */
  readonly ligandCharge: number;
}

interface LigandIndex {
  readonly byText: ReadonlyMap<string, LigandRow>;
  readonly byComposition: ReadonlyMap<string, LigandRow>;
  readonly texts: readonly string[];
}

let built: LigandIndex | undefined;

function ligandIndex(): LigandIndex {
  if (built !== undefined) return built;
  const byText = new Map<string, LigandRow>();
  const byComposition = new Map<string, LigandRow>();
  for (const row of LIGANDS()) {
    for (const text of [row.formula, ...(row.written ?? [])]) byText.set(text, row);
    const key = compositionKey(readNotation(row.formula).parts[0]!.counts);
    if (!byComposition.has(key)) byComposition.set(key, row);
  }
  const texts = [...byText.keys()].sort((a, b) => b.length - a.length);
  built = { byText, byComposition, texts };
  return built;
}

function ligandOfGroup(unit: Unit): LigandRow | undefined {
  const { byText, byComposition } = ligandIndex();
  return byText.get(unit.text) ?? byComposition.get(compositionKey(countsOf(unit.members!)));
}

/** Ligands written without brackets: `Cl2`, `NO`, `SCN`. */
function ligandsOfRun(units: readonly Unit[]): LigandUse[] | undefined {
  const found: LigandUse[] = [];
  let at = 0;
  while (at < units.length) {
    let hit: { row: LigandRow; units: number; count: number } | undefined;
    for (let length = Math.min(6, units.length - at); length >= 1 && hit === undefined; length -= 1) {
      const run = units.slice(at, at + length);
      const row = ligandIndex().byText.get(unitsText(run));
      if (row !== undefined) hit = { row, units: length, count: 1 };
      else if (length === 1) {
        const single = ligandIndex().byText.get(run[0]!.text);
        if (single !== undefined) hit = { row: single, units: 1, count: run[0]!.count };
      }
    }
    if (hit === undefined) return undefined;
    found.push({ row: hit.row, count: hit.count });
    at += hit.units;
  }
  return found;
}

/** The units inside square brackets as a complex: one metal, then or before it ligands. */
export function complexOf(units: readonly Unit[]): Complex | undefined {
  const central = units.findIndex((unit) => {
    const word = unit.members === undefined ? wordOf(unit.text) : undefined;
    return word?.ate !== undefined && (word.charges !== undefined || ["B", "Si", "P", "As"].includes(word.symbol));
  });
  const metal = units[central];
  if (metal === undefined || metal.count !== 1) return undefined;
  const others = [...units.slice(0, central), ...units.slice(central + 1)];
  const uses: LigandUse[] = [];
  let run: Unit[] = [];
  for (const unit of [...others, undefined]) {
    if (unit?.members === undefined && unit !== undefined) {
      run.push(unit);
      continue;
    }
    const loose = ligandsOfRun(run);
    if (loose === undefined) return undefined;
    uses.push(...loose);
    run = [];
    if (unit === undefined) continue;
    const row = ligandOfGroup(unit);
    if (row === undefined) return undefined;
    uses.push({ row, count: unit.count });
  }
  if (uses.length === 0) return undefined;
  const merged = new Map<LigandRow, number>();
  for (const { row, count } of uses) merged.set(row, (merged.get(row) ?? 0) + count);
  const ligands = [...merged].map(([row, count]) => ({ row, count }));
  let ligandCharge = 0;
  for (const { row, count } of ligands) ligandCharge += row.charge * count;
  return { metal: wordOf(metal.text)!, ligands, ligandCharge };
}

/** `tetraammine`, `tris(oxalato)`; the name alone where there is one. */
function ligandText({ row, count }: LigandUse): string {
  const enclosed = row.bis || /[-,]/.test(row.name);
  if (count === 1) return /[-,]/.test(row.name) ? `(${row.name})` : row.name;
  if (enclosed) return `${multiplePrefix(count)}(${row.name})`;
  return `${simplePrefix(count)}${row.name}`;
}

/** Name of a complex with the given charge: oxidation number where the metal has several, charge number with nitrosyl. */
export function complexName(complex: Complex, charge: number): string {
  const ligands = [...complex.ligands]
    .sort((a, b) => (a.row.name.replace(/[^a-z]/g, "") < b.row.name.replace(/[^a-z]/g, "") ? -1 : 1))
    .map(ligandText)
    .join("");
  const { metal } = complex;
  const central = charge < 0 ? metal.ate! : metal.name;
  const oxidation = charge - complex.ligandCharge;
  // nitrosyl hides the oxidation number: the Red Book then gives the charge
  if (complex.ligands.some(({ row }) => row.formula === "NO")) return `${ligands}${central}(${chargeNumber(charge)})`;
  if (metal.fixed || metal.charges === undefined) return ligands + central;
  return `${ligands}${central}(${roman(oxidation)})`;
}

/** `2+`, `1-`: a charge number as it stands after a name. */
export function chargeNumber(charge: number): string {
  return `${Math.abs(charge)}${charge < 0 ? "-" : "+"}`;
}

/** Could the metal have this oxidation number in a complex? */
export function plausibleOxidation(complex: Complex, charge: number): boolean {
  const oxidation = charge - complex.ligandCharge;
  return Number.isInteger(oxidation) && oxidation >= -1 && oxidation <= 8;
}

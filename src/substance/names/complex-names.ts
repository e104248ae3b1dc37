// Coordination entities by their additive names: ligands, centre and oxidation number.

import { type ElementWord, ionsAs, readNotation } from "../../ion/internal";
import type { LigandRow } from "../data/ligands";
import { splitBracket, wordIndex } from "./name-words";
import { leadingPrefixes, roman as romanNumeral } from "./prefixes";
import type { Species } from "./species";

/** Ligands in a run of additive names: `tetraammineaqua`, `tris(oxalato)`. The first full reading wins. */
function ligandsOf(text: string, budget: { left: number }): { row: LigandRow; count: number }[] | undefined {
  budget.left -= 1;
  if (budget.left < 0) return undefined;
  if (text === "") return [];
  const trimmed = text.replace(/^-/, "");
  const tryRest = (row: LigandRow, count: number, rest: string) => {
    const more = ligandsOf(rest, budget);
    return more === undefined ? undefined : [{ row, count }, ...more];
  };
  for (const [name, row] of wordIndex().ligands) {
    if (trimmed.startsWith(`(${name})`)) return tryRest(row, 1, trimmed.slice(name.length + 2));
    if (trimmed.startsWith(name)) {
      const found = tryRest(row, 1, trimmed.slice(name.length));
      if (found !== undefined) return found;
    }
  }
  for (const { n, rest } of leadingPrefixes(trimmed)) {
    const plain = rest.replace(/^-/, "");
    for (const [name, row] of wordIndex().ligands) {
      const form = plain.startsWith(`(${name})`) ? `(${name})` : plain.startsWith(name) ? name : undefined;
      if (form === undefined) continue;
      const found = tryRest(row, n, plain.slice(form.length));
      if (found !== undefined) return found;
    }
  }
  return undefined;
}

function complexText(metal: ElementWord, ligands: readonly { row: LigandRow; count: number }[]): string {
  const parts = [...ligands]
    .sort((a, b) => (a.row.formula < b.row.formula ? -1 : 1))
    .map(({ row, count }) => {
      const single = /^[A-Z][a-z]?$/.test(row.formula);
      return single ? row.formula + (count === 1 ? "" : count) : `(${row.formula})${count === 1 ? "" : count}`;
    });
  return `[${metal.symbol}${parts.join("")}]`;
}

/** Ligands that hold a neutral metal. */
const HOLD_NEUTRAL: ReadonlySet<string> = /* @__PURE__ */ new Set(["CO", "NO", "N2", "P(C6H5)3"]);

/** Is there an ion of this composition and charge in the table? */
function isListed(text: string, charge: number): boolean {
  return charge < 0 && ionsAs(readNotation(text).parts[0]!.counts, charge).length > 0;
}

/** A coordination entity by its additive name; several where the oxidation number is left out. */
export function complexesNamed(word: string): Species[] {
  const { name, roman, charge } = splitBracket(word);
  const found: Species[] = [];
  for (const [ending, metal, isAnion] of wordIndex().centres) {
    if (!name.endsWith(ending) || name.length === ending.length) continue;
    const ligands = ligandsOf(name.slice(0, -ending.length), { left: 2000 });
    if (ligands === undefined || ligands.length === 0) continue;
    let ligandCharge = 0;
    for (const { row, count } of ligands) ligandCharge += row.charge * count;
    const text = complexText(metal, ligands);
    const oxidations =
      roman ?? (charge === undefined ? (metal.charges ?? [metal.ideCharge ?? 0]) : [charge - ligandCharge]);
    const stated = roman !== undefined || charge !== undefined;
    // carbonyls of the neutral metal come with (0) or nothing at all
    const neutral =
      !isAnion && !stated && ligandCharge === 0 && ligands.some(({ row }) => HOLD_NEUTRAL.has(row.formula));
    const possible = oxidations.filter((n) => (isAnion ? n + ligandCharge < 0 : n + ligandCharge >= 0));
    const listed = stated ? [] : possible.filter((n) => isListed(text, n + ligandCharge));
    const fitting = neutral ? [0] : listed.length > 0 ? listed : possible;
    for (const oxidation of fitting) {
      const open = stated || fitting.length === 1 ? {} : { open: `${name}(${romanNumeral(oxidation)})` };
      found.push({ text, group: false, charge: oxidation + ligandCharge, count: undefined, ...open });
    }
    if (found.length > 0) return found;
  }
  return found;
}

/** Neutral complexes: tetracarbonylnickel(0). */
export function neutralComplexes(word: string): Species[] {
  return complexesNamed(word).filter((species) => species.charge === 0);
}

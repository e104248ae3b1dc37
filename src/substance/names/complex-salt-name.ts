// Names of salts and molecules with a coordination entity in them: the complex, its charge from its company, the company.
// Red Book 2005, IR-7 and IR-9 (section numbers: memory).

import {
  allIons,
  type CationUse,
  countsOf,
  elementCharges,
  isCationElement,
  type Part,
  unitsText,
} from "../../ion/internal";
import { type Complex, complexName, complexOf, plausibleOxidation } from "./complex";
import { anionName, byName, cationName, counted } from "./salt-name";

const MOST_WAYS = 64;

/** Ions of one sign only, with their total charge: the company a complex keeps. */
function counterIons(
  counts: ReadonlyMap<string, number>,
  text: string,
): { words: string[]; charge: number; several: boolean }[] {
  const found: { words: string[]; charge: number; several: boolean }[] = [];
  if (counts.size === 1 && counts.has("H")) return [{ words: ["hydrogen"], charge: counts.get("H")!, several: false }];
  const { anions, cations } = allIons();
  // cations: written-out polyatomic ones, then metals at their commonest charge
  const rest = new Map(counts);
  const uses: CationUse[] = [];
  for (const ion of cations) {
    if (!(ion.row.written ?? [ion.row.formula]).some((way) => text.includes(way))) continue;
    let count = 0;
    while ([...ion.counts].every(([symbol, n]) => (rest.get(symbol) ?? 0) >= n)) {
      for (const [symbol, n] of ion.counts) rest.set(symbol, rest.get(symbol)! - n);
      count += 1;
    }
    for (const [symbol, n] of rest) if (n === 0) rest.delete(symbol);
    if (count > 0) uses.push({ ion, count, charge: ion.charge });
  }
  if ([...rest.keys()].every(isCationElement)) {
    let ways: CationUse[][] = [uses];
    for (const [symbol, count] of rest) {
      const word = elementCharges().get(symbol)!;
      ways = ways.flatMap((way) => word.charges!.map((charge) => [...way, { element: word, count, charge }]));
      if (ways.length > MOST_WAYS) return [];
    }
    for (const way of ways) {
      const several = way.length > 1;
      const words = way
        .map((use) => ({ use, name: cationName(use, true) }))
        .sort(byName)
        .map(({ use, name }) => (several ? (counted(use.count, name, true) ?? name) : name));
      found.push({ words, charge: way.reduce((sum, use) => sum + use.count * use.charge, 0), several });
    }
  }
  for (const ion of anions) {
    const times = [...ion.counts].map(([symbol, n]) => (counts.get(symbol) ?? 0) / n);
    if (ion.counts.size === counts.size && times.every((n) => n === times[0] && Number.isInteger(n)) && times[0]! > 0)
      found.push({ words: [anionName(ion)], charge: times[0]! * ion.charge, several: false });
  }
  return found;
}

/** Square brackets in the part, read as complexes; the rest as their counter-ions. */
export function complexSaltName(part: Part, charge: number): string | undefined {
  const inside = part.units.filter((unit) => unit.bracket === "[");
  const outside = part.units.filter((unit) => unit.bracket !== "[");
  if (inside.length === 0 || inside.length > 2) return undefined;
  const complexes = inside.map((unit) => ({ complex: complexOf(unit.members!), count: unit.count }));
  if (complexes.some(({ complex }) => complex === undefined)) return undefined;
  const [one, two] = complexes as { complex: Complex; count: number }[];
  if (two !== undefined) return outside.length > 0 ? undefined : complexPairName(one!, two, charge);
  if (outside.length === 0) return complexName(one!.complex, charge / one!.count);
  const { complex, count } = one!;
  const ways = counterIons(countsOf(outside), unitsText(outside))
    .map(({ words, charge: counter }) => ({ words, counter, own: (charge - counter) / count }))
    .filter(
      ({ counter, own }) => plausibleOxidation(complex, own) && own !== 0 && Math.sign(own) !== Math.sign(counter),
    );
  // a usual charge of the central metal decides between charges of its company: Cu2[HgI4] is copper(I)
  const usual = ways.find(({ own }) => complex.metal.charges?.includes(own - complex.ligandCharge));
  const way = usual ?? ways[0];
  if (way === undefined) return undefined;
  const name = complexName(complex, way.own);
  return way.own > 0 ? `${name} ${way.words.join(" ")}` : `${way.words.join(" ")} ${name}`;
}

/** Complex cation with complex anion: the metals' commonest charges that balance. */
function complexPairName(
  cation: { complex: Complex; count: number },
  anion: { complex: Complex; count: number },
  charge: number,
): string | undefined {
  let best: { name: string; rank: number } | undefined;
  for (const [rank, oxidation] of (cation.complex.metal.charges ?? []).entries()) {
    const own = oxidation + cation.complex.ligandCharge;
    const other = (charge - own * cation.count) / anion.count;
    const otherRank = (anion.complex.metal.charges ?? []).indexOf(other - anion.complex.ligandCharge);
    if (own <= 0 || other >= 0 || otherRank < 0 || rank + otherRank >= (best?.rank ?? Number.POSITIVE_INFINITY))
      continue;
    const name = `${complexName(cation.complex, own)} ${complexName(anion.complex, other)}`;
    best = { name, rank: rank + otherRank };
  }
  return best?.name;
}

/** A complex written without square brackets: Ni(CO)4, Cu(NH3)4SO4. */
export function looseComplexName(part: Part, charge: number): string | undefined {
  const [metal, ligand, ...rest] = part.units;
  if (metal === undefined || ligand === undefined || !isCationElement(metal.text)) return undefined;
  if (!["NH3", "CO"].includes(ligand.text) || ligand.members === undefined || metal.count !== 1) return undefined;
  // fewer ammonias leave open what else is bound: Pt(NH3)2Cl2 is not diammineplatinum(II) chloride
  if (ligand.text === "NH3" && ![4, 6].includes(ligand.count) && !(metal.text === "Ag" && ligand.count === 2))
    return undefined;
  const members = [metal, ligand];
  const entity = { text: unitsText(members), members, bracket: "[" as const, count: 1 };
  return complexSaltName({ ...part, units: [entity, ...rest] }, charge);
}

// The words of a name to ions and complexes: every way each word can be read, prefixes and oxidation numbers included.

import { allIons, type Ion, ionText } from "../../ion/internal";
import { complexesNamed } from "./complex-names";
import { ionsByName } from "./ion-names";
import { counted, splitBracket, wordIndex } from "./name-words";
import { otherNamesOf } from "./other-names";
import type { Species } from "./species";

function ionSpecies(ion: Ion, count: number | undefined): Species {
  if (ion.element !== undefined) return { text: ion.element.symbol, group: false, charge: ion.charge, count, ion };
  const text = ionText(ion.row);
  return { text, group: !text.startsWith("["), charge: ion.charge, count, ion };
}

/** Every way a word names a cation. */
export function cationsNamed(word: string): Species[] {
  const found: Species[] = [];
  const { adjectives, bySymbol, elements } = wordIndex();
  for (const { rest, count } of counted(word)) {
    for (const ion of ionsByName().get(rest) ?? []) if (ion.charge > 0) found.push(ionSpecies(ion, count));
    const { name, roman, charge } = splitBracket(rest);
    // dimercury(2+) is one ion, not two of mercury(2+); tetramethylammonium not four of methylammonium
    if (count === undefined && found.length > 0) return found;
    const adjective = adjectives.get(name);
    // mercury(I) is a pair, and an ion of the table
    if (adjective !== undefined && !(adjective.element.symbol === "Hg" && adjective.charge === 1)) {
      const { element, charge: own } = adjective;
      found.push({ text: element.symbol, group: false, charge: own, count, element });
    }
    // a symbol stands for its name only before a number: Fe(III)
    const element = elements.get(name) ?? (roman === undefined ? undefined : bySymbol.get(name));
    if (element === undefined) continue;
    if (element.symbol === "H") found.push({ text: "H", group: false, charge: 1, count, element });
    else if (roman?.length === 2)
      found.push({
        text: element.symbol,
        group: false,
        charge: undefined,
        count,
        element,
        mixed: [roman[0]!, roman[1]!],
      });
    else {
      const own = roman?.[0] ?? charge ?? (element.fixed ? element.charges![0] : undefined);
      if (element.symbol === "Hg" && own === 1) continue;
      found.push({ text: element.symbol, group: false, charge: own, count, element });
    }
  }
  if (found.length > 0) return found;
  for (const { rest, count } of counted(word))
    for (const species of complexesNamed(rest)) if (species.charge! > 0) found.push({ ...species, count });
  return found;
}

/** Oxidation number of the one element beside oxygen and hydrogen; `undefined` for other ions. */
function centralOxidation(ion: Ion, centre: string): number | undefined {
  const n = ion.counts.get(centre);
  if (n === undefined || [...ion.counts.keys()].some((symbol) => ![centre, "O", "H"].includes(symbol)))
    return undefined;
  const others = 2 * (ion.counts.get("O") ?? 0) - (ion.counts.get("H") ?? 0);
  return /^(hydrogen)?peroxo/.test(ion.row.name) ? undefined : (ion.charge + others) / n;
}

/** The anion of an element by its oxidation number: `sulfate(IV)` is sulfite, `chlorate(I)` hypochlorite. */
function numberedOxoanions(word: string): Species[] {
  const { name, roman } = splitBracket(word);
  if (roman?.length !== 1) return [];
  for (const { rest, count } of counted(name)) {
    const [, hydrogen = "", ate = ""] = /^((?:di|tri)?hydrogen)?(.*)$/.exec(rest)!;
    const [, , stem = ""] = /^(di|per)?(.*)$/.exec(ate)!;
    const centre = wordIndex().oxoCentres.get(ate) ?? wordIndex().oxoCentres.get(stem);
    if (centre === undefined) continue;
    const fitting = allIons().anions.filter((ion) => centralOxidation(ion, centre) === roman[0]);
    const named = fitting.filter((ion) => [ion.row.name, ...otherNamesOf(ion)].includes(rest));
    const hydrogens = hydrogen === "" ? undefined : { hydrogen: 1, dihydrogen: 2, trihydrogen: 3 }[hydrogen];
    const alike = fitting.filter((ion) => ion.counts.get("H") === hydrogens && ion.counts.get(centre) === 1);
    const ions = named.length > 0 ? named : alike.filter((ion) => !ion.row.rare);
    if (ions.length > 0) return ions.map((ion) => ionSpecies(ion, count));
  }
  return [];
}

/** Every way a word names an anion. */
export function anionsNamed(word: string): Species[] {
  const found: Species[] = [];
  for (const { rest, count } of counted(word)) {
    const joined = rest.replace(/^((?:di|tri)?hydrogen) (?=[a-z])/, "$1");
    const direct = ionsByName().get(joined) ?? [];
    const { name, charge } = splitBracket(joined);
    const bare =
      direct.length > 0
        ? direct
        : charge === undefined
          ? []
          : (ionsByName().get(name) ?? []).filter((ion) => ion.charge === charge);
    const own = bare.filter((ion) => ion.charge < 0);
    // an anion by its first name (silicate, disulfate) is not also another one's second name or two of a shorter one
    const first = own.filter((ion) => ion.row.name.toLowerCase() === joined && !ion.row.rare);
    for (const ion of first.length > 0 ? first : own) found.push(ionSpecies(ion, count));
    // and one that tells its charge is no count of a shorter one: disulfide(2-)
    if (count === undefined && (first.length > 0 || (charge !== undefined && own.length > 0))) break;
    // disulfide(2-) by its bare name; dioxide stays two oxides
    for (const n of [-1, -2])
      for (const ion of ionsByName().get(`${joined}(${-n}-)`) ?? [])
        if (ion.row.name === `${joined}(${-n}-)`) found.push(ionSpecies(ion, count));
  }
  for (const species of numberedOxoanions(word)) found.push(species);
  // hexa + chloroplatinate is six of them only where it is not one hexachloroplatinate
  if (found.some((one) => one.count === undefined)) return found;
  for (const { rest, count } of counted(word))
    for (const species of complexesNamed(rest)) if (species.charge! < 0) found.push({ ...species, count });
  return found;
}

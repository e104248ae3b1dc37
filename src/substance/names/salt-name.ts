// Words of compositional nomenclature: cations with oxidation numbers, counted anions, salts, binary molecules, elements.
// Red Book 2005, IR-5 (section number: memory).

import { gcd } from "../../foundation/gcd";
import { type CationUse, elementCharges, type Ion, type Part, type Salt } from "../../ion/internal";
import { ionsByName } from "./ion-names";
import { leadingPrefixes, multiplePrefix, roman, simplePrefix } from "./prefixes";

/**
 * How proportions are stated: `oxidation-numbers` (iron(III) oxide), `prefixes` (diiron trioxide), or `adduct` for an
 * addition compound with its ratio (sodium sulfate—water (1/10)).
 */
export type NameStyle = "oxidation-numbers" | "prefixes" | "adduct";

/** `tetraoxide` to `tetroxide`, as the trade and most textbooks write it; deca keeps its a. */
function withPrefix(prefix: string, name: string): string {
  if (!name.startsWith("oxid")) return prefix + name;
  if (prefix === "mono") return "monoxide";
  return prefix === "deca" ? prefix + name : prefix.replace(/a$/, "") + name;
}

/** Anions that take plain prefixes; others take bis, tris, so that bis(sulfate) is not read as disulfate. */
function takesPlainPrefix(ion: Ion): boolean {
  return (
    ion.element !== undefined || ["hydroxide", "cyanide", "azide", "amide", "nitrate", "nitrite"].includes(ion.row.name)
  );
}

/** Is the name another anion's second name (phosphite of HPO3 2-), or does it read as a count of a shorter one? */
function readsAsAnother(ion: Ion, name: string, count: number): boolean {
  const named = ionsByName();
  if ((named.get(name) ?? []).some((other) => other.charge < 0 && other.charge !== ion.charge)) return true;
  if (count === 1) return false;
  for (const { n, rest } of leadingPrefixes(name))
    if ((named.get(rest) ?? []).some((other) => other.charge < 0 && other.charge * n !== ion.charge)) return true;
  return false;
}

/**
 * Name of an anion inside a salt: its charge number goes where the name is clear without, the oxidation number of its metal
 * stays.
 */
export function anionName(ion: Ion, count = 1): string {
  const bare = ion.row.name.replace(/\(\d[+-]\)$/, "");
  if (ion.element === undefined && ion.row.rare && !/ate\(/.test(ion.row.name) && readsAsAnother(ion, bare, count))
    return `${bare}(${-ion.charge}-)`;
  return /ate\(/.test(ion.row.name) ? ion.row.name : ion.row.name.replace(/\(\d[+-]\)$/, "");
}

export function counted(count: number, name: string, plain: boolean): string | undefined {
  if (count === 1) return name;
  if (plain) {
    const prefix = simplePrefix(count);
    return prefix === undefined ? undefined : withPrefix(prefix, name);
  }
  const prefix = multiplePrefix(count);
  return prefix === undefined ? undefined : `${prefix}(${name})`;
}

/** `iron(III)`, `ammonium`, `sodium`, `mercury(I)`. */
export function cationName(use: CationUse, withNumber: boolean): string {
  if (use.ion !== undefined) {
    if (use.ion.row.formula === "Hg2") return withNumber ? "mercury(I)" : "dimercury";
    return use.ion.row.name;
  }
  const word = use.element!;
  if (!withNumber || word.fixed || use.undecided) return word.name;
  if (use.mixed !== undefined) return `${word.name}(${use.mixed.map(roman).join(",")})`;
  return `${word.name}(${roman(use.charge)})`;
}

/** Alphabetical order. */
export const byName = (a: { name: string }, b: { name: string }) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);

/** Do the charges of one cation and one anion lead back to the counts? Na2Cl2 and V6O13 need prefixes. */
function clearByCharges({ cations, anions }: Salt): boolean {
  const [cation, anion] = [cations[0]!, anions[0]!];
  if (cation.mixed !== undefined) return cation.count === 3 && anion.count === 4;
  return gcd(cation.count, anion.count) === 1;
}

/** Name of a salt; `undefined` where a prefix for a count is missing. */
export function saltName(salt: Salt, style: NameStyle): string | undefined {
  const several = salt.cations.length > 1 || salt.anions.length > 1;
  const prefixes = several || style === "prefixes" || !clearByCharges(salt);
  const anyCount = salt.cations.some((use) => use.count > 1) || salt.anions.some((use) => use.count > 1);
  // prefixes tell the charge of a lone cation by themselves
  const numbers = style !== "prefixes" && (several || !prefixes) && (salt.anions.length === 1 || !anyCount);
  const words: string[] = [];
  const cations = salt.cations.map((use) => ({ use, name: cationName(use, numbers) })).sort(byName);
  for (const { use, name } of cations) {
    const word = prefixes ? counted(use.count, name, use.ion === undefined || use.ion.row.name === "ammonium") : name;
    if (word === undefined) return undefined;
    words.push(word);
  }
  const anions = salt.anions.map((use) => ({ use, name: anionName(use.ion, use.count) })).sort(byName);
  for (const { use, name } of anions) {
    let word = prefixes ? counted(use.count, name, takesPlainPrefix(use.ion)) : name;
    if (word === undefined) return undefined;
    if (prefixes && !several && use.count === 1 && word === "oxide") word = "monoxide";
    words.push(word);
  }
  return words.join(" ");
}

const HALOGENS = /* @__PURE__ */ new Set(["F", "Cl", "Br", "I", "At"]);

export function isHalogen(symbol: string): boolean {
  return HALOGENS.has(symbol);
}

/** Non-metals that have one charge in their compounds with another: names without prefixes are clear (boron nitride). */
export const NON_METAL_CHARGE: Readonly<Record<string, number>> = { B: 3, Si: 4 };

/** Two non-metals, named in the order they are written. */
export function binaryName(part: Part, style: NameStyle): string | undefined {
  const units = part.units;
  if (units.length !== 2 || units.some((unit) => unit.members !== undefined)) return undefined;
  const [first, second] = units as [(typeof units)[0], (typeof units)[0]];
  const elements = elementCharges();
  const one = elements.get(first!.text);
  const other = elements.get(second!.text);
  if (one === undefined || other?.ide === undefined) return undefined;
  // by the bare charges where those are met: hydrogen sulfide is H2S, H2S2 counts its atoms
  if (one.symbol === "H" && second!.count === 1 && first!.count === other.ideCharge) return `hydrogen ${other.ide}`;
  // hydrides of non-metals have names of their own (alkanes, silanes, boranes); counting atoms would name no isomer
  if (other.symbol === "H") return undefined;
  if (style === "oxidation-numbers") {
    // only asked for inside a name that uses oxidation numbers already
    const oxidation = (second!.count * other.ideCharge!) / first!.count;
    return Number.isInteger(oxidation) ? `${one.name}(${roman(oxidation)}) ${other.ide}` : undefined;
  }
  const front = first!.count === 1 ? one.name : counted(first!.count, one.name, true);
  // boron nitride and silicon carbide are clear without; sulfur monochloride is not
  const mono = other.symbol === "O" || (first!.count === 1 && NON_METAL_CHARGE[one.symbol] !== other.ideCharge);
  const back =
    second!.count === 1 ? (mono ? withPrefix("mono", other.ide) : other.ide) : counted(second!.count, other.ide, true);
  return front === undefined || back === undefined ? undefined : `${front} ${back}`;
}

/** A central non-metal with oxygen, sulfur and halogens: sulfur difluoride dioxide. */
export function mixedMoleculeName(part: Part): string | undefined {
  const [first, ...rest] = part.units;
  const elements = elementCharges();
  const central = first === undefined || first.members !== undefined ? undefined : elements.get(first.text);
  if (central === undefined || central.charges !== undefined || central.symbol === "H") return undefined;
  if (rest.length < 2) return undefined;
  const words: { name: string; text: string }[] = [];
  for (const unit of rest) {
    const word = unit.members === undefined ? elements.get(unit.text) : undefined;
    if (word?.ide === undefined || !(HALOGENS.has(word.symbol) || word.symbol === "O" || word.symbol === "S"))
      return undefined;
    const text = counted(unit.count, word.ide, true);
    if (text === undefined) return undefined;
    words.push({ name: word.ide, text });
  }
  if (words.some(({ name }) => name === central.ide)) return undefined;
  const front = counted(first!.count, central.name, true);
  return front === undefined ? undefined : [front, ...words.sort(byName).map(({ text }) => text)].join(" ");
}

/** An element by itself: iron, dioxygen. */
export function elementName(part: Part): string | undefined {
  const unit = part.units[0]!;
  if (part.units.length !== 1 || unit.members !== undefined) return undefined;
  const word = elementCharges().get(unit.text);
  return word === undefined ? undefined : counted(unit.count, word.name, true);
}

/** Metals and one non-metal whose charges do not balance: the bare count, which claims nothing (disilver fluoride). */
export function stoichiometricName(part: Part): string | undefined {
  const elements = elementCharges();
  const words = [...part.counts].map(([symbol, count]) => ({ word: elements.get(symbol), count }));
  const metals = words.filter(({ word }) => word?.charges !== undefined);
  const others = words.filter(({ word }) => word !== undefined && word.charges === undefined);
  if (metals.length === 0 || others.length !== 1 || metals.length + 1 !== words.length) return undefined;
  const anion = others[0]!;
  if (anion.word!.ide === undefined || anion.word!.symbol === "H") return undefined;
  const front = metals
    .map(({ word, count }) => ({ name: word!.name, text: counted(count, word!.name, true) }))
    .sort(byName);
  const back = counted(anion.count, anion.word!.ide, true);
  if (back === undefined || front.some(({ text }) => text === undefined)) return undefined;
  return [...front.map(({ text }) => text), back].join(" ");
}

// From a formula to its name: compositional nomenclature of the Red Book 2005 (IR-5), additive names for coordination
// entities (IR-7, IR-9), addition compounds (IR-5.5), acids by their traditional names (IR-8). Section numbers: memory.

import type { Formula } from "../formula";
import { attempt, type Result } from "../foundation/error";
import { type Complex, chargeNumber, complexName, complexOf, plausibleOxidation } from "./complex";
import { acidOf, type CationUse, type Salt, saltOf, salts } from "./constitution";
import { MOLECULES, type MoleculeRow } from "./data/molecules";
import { readableText, SubstanceError } from "./error";
import { type Ion, ionIndex, isCationElement } from "./ion-index";
import {
  compositionKey,
  countsOf,
  formulaKey,
  isWater,
  type Notation,
  type Part,
  readNotation,
  unitsText,
} from "./notation";
import { hydratePrefix, multiplePrefix, roman, simplePrefix } from "./prefixes";
import { rowOf } from "./registry-index";

/**
 * How proportions are told: `oxidation-numbers` (iron(III) oxide), `prefixes` (diiron trioxide), or `adduct` for an
 * addition compound with its ratio (sodium sulfate—water (1/10)).
 */
export type NameStyle = "oxidation-numbers" | "prefixes" | "adduct";

/** A component's name and what kind of thing it is. */
interface Component {
  readonly name: string;
  readonly kind: "salt" | "acid" | "molecule" | "element" | "complex";
}

let molecules: ReadonlyMap<string, MoleculeRow> | undefined;

/** A small molecule by the way it is written or, without carbon, by composition. */
function moleculeOf(part: Part): MoleculeRow | undefined {
  molecules ??= new Map(MOLECULES.map((row) => [formulaKey(readNotation(row.formula)), row] as const));
  return molecules.get(formulaKey({ parts: [{ ...part, multiplier: 1 }], charge: 0 }));
}

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

/** Name of an anion inside a salt: its charge number goes, the oxidation number of its metal stays. */
function anionName(ion: Ion): string {
  return /ate\(/.test(ion.row.name) ? ion.row.name : ion.row.name.replace(/\(\d[+-]\)$/, "");
}

function counted(count: number, name: string, plain: boolean): string | undefined {
  if (count === 1) return name;
  if (plain) {
    const prefix = simplePrefix(count);
    return prefix === undefined ? undefined : withPrefix(prefix, name);
  }
  const prefix = multiplePrefix(count);
  return prefix === undefined ? undefined : `${prefix}(${name})`;
}

/** `iron(III)`, `ammonium`, `sodium`, `mercury(I)`. */
function cationName(use: CationUse, withNumber: boolean): string {
  if (use.ion !== undefined) {
    if (use.ion.row.formula === "Hg2") return withNumber ? "mercury(I)" : "dimercury";
    return use.ion.row.name;
  }
  const word = use.element!;
  if (!withNumber || word.fixed || use.undecided) return word.name;
  if (use.mixed !== undefined) return `${word.name}(${use.mixed.map(roman).join(",")})`;
  return `${word.name}(${roman(use.charge)})`;
}

const byName = (a: { name: string }, b: { name: string }) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);

/** Name of a salt; `undefined` where a prefix for a count is missing. */
function saltName(salt: Salt, style: NameStyle): string | undefined {
  const several = salt.cations.length > 1 || salt.anions.length > 1;
  const prefixes = several || style === "prefixes";
  const anyCount = salt.cations.some((use) => use.count > 1) || salt.anions.some((use) => use.count > 1);
  // prefixes tell the charge of a lone cation by themselves
  const numbers = style !== "prefixes" && (salt.anions.length === 1 || !anyCount);
  const words: string[] = [];
  const cations = salt.cations.map((use) => ({ use, name: cationName(use, numbers) })).sort(byName);
  for (const { use, name } of cations) {
    const word = prefixes ? counted(use.count, name, use.ion === undefined || use.ion.row.name === "ammonium") : name;
    if (word === undefined) return undefined;
    words.push(word);
  }
  const anions = salt.anions.map((use) => ({ use, name: anionName(use.ion) })).sort(byName);
  for (const { use, name } of anions) {
    let word = prefixes ? counted(use.count, name, takesPlainPrefix(use.ion)) : name;
    if (word === undefined) return undefined;
    if (prefixes && !several && use.count === 1 && word === "oxide") word = "monoxide";
    words.push(word);
  }
  return words.join(" ");
}

const HALOGENS = new Set(["F", "Cl", "Br", "I", "At"]);

/** Two non-metals, named in the order they are written. */
function binaryName(part: Part, style: NameStyle): string | undefined {
  const units = part.units;
  if (units.length !== 2 || units.some((unit) => unit.members !== undefined)) return undefined;
  const [first, second] = units as [(typeof units)[0], (typeof units)[0]];
  const { elements } = ionIndex();
  const one = elements.get(first!.text);
  const other = elements.get(second!.text);
  if (one === undefined || other?.ide === undefined) return undefined;
  if (one.symbol === "H") return `hydrogen ${other.ide}`;
  // hydrides of non-metals have names of their own (alkanes, silanes, boranes); counting atoms would name no isomer
  if (other.symbol === "H") return undefined;
  if (style === "oxidation-numbers") {
    // only asked for inside a name that uses oxidation numbers already
    const oxidation = (second!.count * other.ideCharge!) / first!.count;
    return Number.isInteger(oxidation) ? `${one.name}(${roman(oxidation)}) ${other.ide}` : undefined;
  }
  const front = first!.count === 1 ? one.name : counted(first!.count, one.name, true);
  const mono = other.symbol === "O" || (HALOGENS.has(one.symbol) && HALOGENS.has(other.symbol));
  const back =
    second!.count === 1 ? (mono ? withPrefix("mono", other.ide) : other.ide) : counted(second!.count, other.ide, true);
  return front === undefined || back === undefined ? undefined : `${front} ${back}`;
}

/** A central non-metal with oxygen, sulfur and halogens: sulfur difluoride dioxide. */
function mixedMoleculeName(part: Part): string | undefined {
  const [first, ...rest] = part.units;
  const { elements } = ionIndex();
  const central = first === undefined || first.members !== undefined ? undefined : elements.get(first.text);
  if (central === undefined || central.charges !== undefined || rest.length < 2) return undefined;
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
function elementName(part: Part): string | undefined {
  const unit = part.units[0]!;
  if (part.units.length !== 1 || unit.members !== undefined) return undefined;
  const word = ionIndex().elements.get(unit.text);
  return word === undefined ? undefined : counted(unit.count, word.name, true);
}

/** Ions of one sign only, with their total charge: the company a complex keeps. */
function counterIons(
  counts: ReadonlyMap<string, number>,
  text: string,
): { words: string[]; charge: number; several: boolean }[] {
  const found: { words: string[]; charge: number; several: boolean }[] = [];
  if (counts.size === 1 && counts.has("H")) return [{ words: ["hydrogen"], charge: counts.get("H")!, several: false }];
  const { anions, cations, elements } = ionIndex();
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
    for (const [symbol, count] of rest) {
      const word = elements.get(symbol)!;
      uses.push({ element: word, count, charge: word.charges![0]! });
    }
    const several = uses.length > 1;
    const words = uses
      .map((use) => ({ use, name: cationName(use, true) }))
      .sort(byName)
      .map(({ use, name }) => (several ? (counted(use.count, name, true) ?? name) : name));
    found.push({ words, charge: uses.reduce((sum, use) => sum + use.count * use.charge, 0), several });
  }
  for (const ion of anions) {
    const times = [...ion.counts].map(([symbol, n]) => (counts.get(symbol) ?? 0) / n);
    if (ion.counts.size === counts.size && times.every((n) => n === times[0] && Number.isInteger(n)) && times[0]! > 0)
      found.push({ words: [anionName(ion)], charge: times[0]! * ion.charge, several: false });
  }
  return found;
}

/** Square brackets in the part, read as complexes; the rest as their counter-ions. */
function complexSaltName(part: Part, charge: number): string | undefined {
  const inside = part.units.filter((unit) => unit.bracket === "[");
  const outside = part.units.filter((unit) => unit.bracket !== "[");
  if (inside.length === 0 || inside.length > 2) return undefined;
  const complexes = inside.map((unit) => ({ complex: complexOf(unit.members!), count: unit.count }));
  if (complexes.some(({ complex }) => complex === undefined)) return undefined;
  const [one, two] = complexes as { complex: Complex; count: number }[];
  if (two !== undefined) return outside.length > 0 ? undefined : complexPairName(one!, two, charge);
  if (outside.length === 0) return complexName(one!.complex, charge / one!.count);
  for (const { words, charge: counter } of counterIons(countsOf(outside), unitsText(outside))) {
    const own = (charge - counter) / one!.count;
    if (!plausibleOxidation(one!.complex, own) || own === 0 || Math.sign(own) === Math.sign(counter)) continue;
    const name = complexName(one!.complex, own);
    return own > 0 ? `${name} ${words.join(" ")}` : `${words.join(" ")} ${name}`;
  }
  return undefined;
}

/** Complex cation with complex anion: the metals' commonest charges that balance. */
function complexPairName(
  cation: { complex: Complex; count: number },
  anion: { complex: Complex; count: number },
  charge: number,
): string | undefined {
  for (const oxidation of cation.complex.metal.charges ?? []) {
    const own = oxidation + cation.complex.ligandCharge;
    const other = (charge - own * cation.count) / anion.count;
    if (own > 0 && other < 0 && (anion.complex.metal.charges ?? []).includes(other - anion.complex.ligandCharge))
      return `${complexName(cation.complex, own)} ${complexName(anion.complex, other)}`;
  }
  return undefined;
}

/** A complex written without square brackets: Ni(CO)4, Cu(NH3)4SO4. */
function looseComplexName(part: Part, charge: number): string | undefined {
  const [metal, ligand, ...rest] = part.units;
  if (metal === undefined || ligand === undefined || !isCationElement(metal.text)) return undefined;
  if (!["NH3", "CO"].includes(ligand.text) || ligand.members === undefined || metal.count !== 1) return undefined;
  const members = [metal, ligand];
  const entity = { text: unitsText(members), members, bracket: "[" as const, count: 1 };
  return complexSaltName({ ...part, units: [entity, ...rest] }, charge);
}

/** Acids and the molecules of hydrogen with a halogen or the like. */
function acidName(part: Part): string | undefined {
  const acid = acidOf(part);
  if (acid === undefined) return undefined;
  const { row, counts } = acid.ion;
  if (counts.has("C") && counts.has("H")) {
    const written = (row.written ?? [row.formula]).some((way) => part.text.includes(way));
    if (!written && rowOf({ parts: [part], charge: 0 }) === undefined) return undefined;
  }
  if (row.acid !== undefined) return row.acid;
  // an anion built round a metal, written with its hydrogen first: H4[Fe(CN)6]
  return /^H\d*\[?[A-Z]/.test(part.text) && row.rare === undefined && /[()]/.test(row.formula)
    ? `hydrogen ${anionName(acid.ion)}`
    : undefined;
}

/** The neutral part under one style; what cannot be named by rule is looked up. */
function componentOf(part: Part, style: NameStyle, phase: string | undefined): Component | undefined {
  const molecule = moleculeOf(part);
  if (molecule !== undefined)
    return {
      name: phase === "aq" && molecule.solution !== undefined ? molecule.solution : molecule.name,
      kind: "molecule",
    };
  const element = elementName(part);
  if (element !== undefined) return { name: element, kind: "element" };
  const complex = complexSaltName(part, 0) ?? looseComplexName(part, 0);
  if (complex !== undefined) return { name: complex, kind: "complex" };
  const acid = acidName(part);
  if (acid !== undefined) return { name: acid, kind: "acid" };
  const salt = saltOf(part);
  const named = salt === undefined ? undefined : saltName(salt, style);
  if (named !== undefined) return { name: named, kind: "salt" };
  const binary =
    binaryName(part, style === "adduct" ? "prefixes" : style) ??
    binaryName(part, "prefixes") ??
    mixedMoleculeName(part);
  if (binary !== undefined) return { name: binary, kind: "molecule" };
  const row = rowOf({ parts: [{ ...part, multiplier: 1 }], charge: 0 });
  if (row === undefined) return undefined;
  return { name: row.name, kind: [...part.counts.keys()].some(isCationElement) ? "salt" : "molecule" };
}

/** Smallest whole numbers in the same proportion. */
function wholeRatio(numbers: readonly number[]): number[] | undefined {
  for (let times = 1; times <= 60; times += 1) {
    const scaled = numbers.map((n) => n * times);
    if (scaled.every((n) => Math.abs(n - Math.round(n)) < 1e-6)) return scaled.map(Math.round);
  }
  return undefined;
}

/** Addition compound: components by number, then by name, water last; the ratio behind. */
function adductName(notation: Notation, phase: string | undefined): string | undefined {
  const ratio = wholeRatio(notation.parts.map((part) => part.multiplier));
  if (ratio === undefined) return undefined;
  // molecules are named by prefixes, unless another component already gives an oxidation number (BiCl3·3PCl5)
  const first = notation.parts.map((part) => componentOf(part, "adduct", phase));
  const numbered = first.some((component) => component !== undefined && /\([IV]+\)/.test(component.name));
  const components = notation.parts.map((part, i) => {
    const component =
      numbered && first[i]?.kind === "molecule" && moleculeOf(part) === undefined
        ? binaryName(part, "oxidation-numbers")
        : undefined;
    return { name: component ?? first[i]?.name, n: ratio[i]!, water: isWater(part) };
  });
  if (components.some(({ name }) => name === undefined)) return undefined;
  components.sort((a, b) => Number(a.water) - Number(b.water) || a.n - b.n || (a.name! < b.name! ? -1 : 1));
  return `${components.map(({ name }) => name).join("—")} (${components.map(({ n }) => n).join("/")})`;
}

/** Name of a charged species. */
function ionName(part: Part, charge: number): string | undefined {
  const complex = complexSaltName(part, charge);
  if (complex !== undefined) return complex;
  const { anions, cations } = ionIndex();
  const key = compositionKey(part.counts);
  const listed = [...anions, ...cations].find(
    (ion) => ion.charge === charge && compositionKey(ion.counts) === key && ion.element === undefined,
  );
  if (listed !== undefined) return listed.row.name;
  const unit = part.units[0]!;
  const word = part.units.length === 1 ? ionIndex().elements.get(unit.text) : undefined;
  if (word !== undefined) {
    if (word.symbol === "H" && charge === 1 && unit.count === 1) return "hydron";
    if (charge > 0) return `${counted(unit.count, word.name, true)}(${chargeNumber(charge)})`;
    if (unit.count === 1 && charge === -(word.ideCharge ?? 0)) return word.ide;
    return word.ide === undefined ? undefined : `${counted(unit.count, word.ide, true)}(${chargeNumber(charge)})`;
  }
  const loose = complexOf(part.units);
  return loose !== undefined && plausibleOxidation(loose, charge) ? complexName(loose, charge) : undefined;
}

/** The name under one style, or `undefined`. */
function nameUnder(notation: Notation, style: NameStyle): string | undefined {
  const { parts, charge, phase } = notation;
  if (charge !== 0) return parts.length === 1 ? ionName(parts[0]!, charge) : undefined;
  if (parts.length === 1 && parts[0]!.multiplier === 1) {
    // two non-metals have prefixes as their usual name
    const usual = style === "oxidation-numbers" && saltOf(parts[0]!) === undefined ? "prefixes" : style;
    return componentOf(parts[0]!, usual, phase)?.name;
  }
  const water = parts.filter(isWater);
  const others = parts.filter((part) => !isWater(part));
  if (style !== "adduct" && others.length === 1 && others[0]!.multiplier === 1) {
    const component = componentOf(others[0]!, style, phase);
    const prefix = hydratePrefix(water.reduce((sum, part) => sum + part.multiplier, 0));
    // water on a molecule is no crystal water of a salt: the adduct name is the honest one (BF3·2H2O)
    if (
      component !== undefined &&
      prefix !== undefined &&
      component.kind !== "molecule" &&
      component.kind !== "element"
    )
      return `${component.name} ${prefix}hydrate`;
  }
  return adductName(notation, phase);
}

function notationFor(formula: string | Formula): Notation {
  if (typeof formula === "string") return readNotation(readableText(formula, "a formula"));
  return readNotation(formula);
}

function noName(notation: Notation, formula: string | Formula): SubstanceError {
  return new SubstanceError("substance.no-name", `no rule or table names ${String(formula)}`, {
    input: String(formula),
    hint: "salts, acids, hydrates, binary molecules and simple complexes are named by rule; other molecules only if listed",
    details: { parts: notation.parts.map((part) => part.text) },
  });
}

/**
 * Systematic name of a formula: oxidation numbers where a metal has several, prefixes for molecules and for salts with
 * more than two kinds of ion, hydrate prefixes, additive names for complexes, traditional names for acids.
 *
 * @param formula - neutral or charged; `(aq)` behind a hydrogen halide names the solution
 * @param style - how proportions are told; by default oxidation numbers
 * @throws {SubstanceError} `substance.no-name`, `substance.bad-input`, `substance.too-long`; {@link FormulaError} for an unreadable formula
 * @source Nomenclature of Inorganic Chemistry, IUPAC Recommendations 2005, IR-5, IR-7 to IR-9
 * @category Names
 * @example
 * nameOf("(NH4)2Fe(SO4)2·6H2O") // => "diammonium iron(II) bis(sulfate) hexahydrate"
 * nameOf("Fe2O3") // => "iron(III) oxide"
 * nameOf("Fe2O3", "prefixes") // => "diiron trioxide"
 * nameOf("[Cu(NH3)4]SO4·H2O") // => "tetraamminecopper(II) sulfate monohydrate"
 */
export function nameOf(formula: string | Formula, style: NameStyle = "oxidation-numbers"): string {
  const notation = notationFor(formula);
  const name = nameUnder(notation, style) ?? nameUnder(notation, "oxidation-numbers") ?? rowOf(notation)?.name;
  if (name === undefined) throw noName(notation, formula);
  return name;
}

/**
 * As {@link nameOf}, with the error returned instead of thrown.
 *
 * @category Names
 * @example
 * tryNameOf("C7H16").ok // => false
 */
export function tryNameOf(formula: string | Formula, style?: NameStyle): Result<string> {
  return attempt(() => nameOf(formula, style));
}

/**
 * Every systematic name the rules allow for a formula, the usual one first, then the registry's own.
 *
 * @throws {SubstanceError} as {@link nameOf}
 * @source Nomenclature of Inorganic Chemistry, IUPAC Recommendations 2005, IR-5
 * @category Names
 * @example
 * namesOf("Na2SO4·10H2O") // => ["sodium sulfate decahydrate", "disodium sulfate decahydrate", "sodium sulfate—water (1/10)"]
 */
export function namesOf(formula: string | Formula): string[] {
  const notation = notationFor(formula);
  const names = [
    nameOf(formula),
    ...(["prefixes", "adduct"] as const).map((style) => nameUnder(notation, style)),
    rowOf(notation)?.name,
  ];
  return [...new Set(names.filter((name): name is string => name !== undefined))];
}

/** @internal Every way the formula can be read as a salt, likeliest first; for the hazard classes. */
export function saltsOf(notation: Notation): Salt[] {
  return notation.parts.flatMap((part) => salts(part.counts, part.text).slice(0, 1));
}

/**
 * As {@link namesOf}, with the error returned instead of thrown.
 *
 * @category Names
 * @example
 * tryNamesOf("Fe2O3").ok // => true
 */
export function tryNamesOf(formula: string | Formula): Result<string[]> {
  return attempt(() => namesOf(formula));
}

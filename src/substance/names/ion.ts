// Ions by name or formula: charge, colour, and the kin that differ by one hydron.

import { parseFormula } from "../../formula";
import { type LookupOptions, lookingWith } from "../../foundation/facts";
import { frozen } from "../../foundation/frozen";
import { remembering } from "../../foundation/memo";
import { readable } from "../../foundation/readable";
import {
  allIons,
  chargedText,
  ION_FIELD_SOURCES,
  type Ion,
  ionsAs,
  ionText,
  MONATOMIC_COLOURS,
  readNotation,
  tryReadNotation,
} from "../../ion/internal";
import { guard } from "../argument";
import type { SourceKey } from "../data/sources";
import { readableText, SubstanceError } from "../error";
import { nameOf, nameSourceOf } from "./name-of";
import { colourOf, otherNamesOf } from "./other-names";
import { readingsOf } from "./readings";

/** An ion with its names and kin. */
export interface IonEntry {
  /** With its charge: `HSO4-`, `SO4^2-`. */
  readonly formula: string;
  /** Name of the ion. */
  readonly name: string;
  /** In elementary charges, with its sign. */
  readonly charge: number;
  /** Further names in use; empty where none is listed. */
  readonly otherNames: readonly string[];
  /** Colour of its dilute solution; absent where colourless or not known. */
  readonly colour?: string;
  /** With one hydron more: HCO3- for CO3 2-; the acid itself where that is neutral. */
  readonly conjugateAcid?: string;
  /** With one hydron less. */
  readonly conjugateBase?: string;
  /** Acid whose anion this is, all hydrogen put back. */
  readonly acid?: { readonly formula: string; readonly name: string };
  /** What name (with charge and acid), other names and colour rest on. */
  readonly sources: { readonly name: SourceKey; readonly otherNames?: SourceKey; readonly colour?: SourceKey };
}

/** The listed ion with these atoms and this charge. */
function listedIon(counts: ReadonlyMap<string, number>, charge: number): Ion | undefined {
  return ionsAs(counts, charge)[0];
}

/** Acids and bases that are molecules, for kin with no charge left. */
const NEUTRAL_KIN: Readonly<Record<string, string>> = {
  "OH^-": "H2O",
  "NH4^+": "NH3",
  "H3O^+": "H2O",
  "HS^-": "H2S",
  "CN^-": "HCN",
  "HO2^-": "H2O2",
  "F^-": "HF",
  "Cl^-": "HCl",
  "Br^-": "HBr",
  "I^-": "HI",
  "N3^-": "HN3",
};

/** The anion without its hydrogen, if that is the anion of a named acid. */
function rootOf(ion: Ion): Ion {
  const hydrogen = ion.counts.get("H") ?? 0;
  if (ion.row.acid !== undefined || ion.charge >= 0) return ion;
  for (let n = 1; n <= Math.min(hydrogen, 4); n += 1) {
    const counts = new Map(ion.counts);
    if (hydrogen === n) counts.delete("H");
    else counts.set("H", hydrogen - n);
    const kin = listedIon(counts, ion.charge - n);
    if (kin?.row.acid !== undefined) return kin;
  }
  return ion;
}

function conjugate(ion: Ion, hydrons: 1 | -1): string | undefined {
  const charge = ion.charge + hydrons;
  const own = chargedText(ionText(ion.row), ion.charge);
  if (charge === 0) {
    const neutral = NEUTRAL_KIN[own];
    if (neutral !== undefined) return neutral;
    const root = rootOf(ion);
    return hydrons === 1 && root.row.acid !== undefined ? acidFormula(root) : undefined;
  }
  const counts = new Map(ion.counts);
  const hydrogen = (counts.get("H") ?? 0) + hydrons;
  if (hydrogen < 0) return undefined;
  if (hydrogen === 0) counts.delete("H");
  else counts.set("H", hydrogen);
  const kin = listedIon(counts, charge);
  return kin === undefined ? undefined : chargedText(ionText(kin.row), charge);
}

function acidFormula(ion: Ion): string {
  return (
    readingsOf(ion.row.acid!, { literal: true })[0]?.formula ??
    `H${ion.charge === -1 ? "" : -ion.charge}${ion.row.formula}`
  );
}

/** As the formula layer prints it. */
function canonical(formula: string): string {
  return parseFormula(formula).toString();
}

function entryOf(ion: Ion): IonEntry {
  const formula = canonical(chargedText(ionText(ion.row), ion.charge));
  const colour = colourOf(ion);
  const conjugateAcid = conjugate(ion, 1);
  const conjugateBase = ion.counts.has("H") ? conjugate(ion, -1) : undefined;
  const root = rootOf(ion);
  const otherNames = otherNamesOf(ion);
  return frozen({
    formula,
    name: ion.row.name,
    charge: ion.charge,
    otherNames,
    ...(colour === undefined ? {} : { colour }),
    ...(conjugateAcid === undefined ? {} : { conjugateAcid: canonical(conjugateAcid) }),
    ...(conjugateBase === undefined ? {} : { conjugateBase: canonical(conjugateBase) }),
    ...(root.row.acid === undefined ? {} : { acid: { formula: acidFormula(root), name: root.row.acid } }),
    sources: {
      name: ion.row.source,
      ...(otherNames.length === 0 ? {} : { otherNames: ION_FIELD_SOURCES.also }),
      ...(colour === undefined ? {} : { colour: ION_FIELD_SOURCES.colour }),
    },
  });
}

/**
 * An ion: charge, colour in water, the acid or base it is kin to.
 *
 * @param nameOrFormula - "hydrogencarbonate", "iron(III) ion", "SO4^2-"
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @throws {SubstanceError} `substance.unknown-name`, `substance.bad-input`, `substance.too-long`
 * @source as `sources` of the answer says: names IUPAC Recommendations 2005, colours from memory
 * @category Names
 * @example
 * ion("hydrogencarbonate").conjugateBase // => "CO3^2-"
 * ion("CO3^2-").acid?.name // => "carbonic acid"
 * ion("Cu^2+").colour // => "blue"
 * ion("Cu^2+").sources.colour // => "memory"
 */
export function ion(nameOrFormula: string, options?: LookupOptions): IonEntry {
  if (options !== undefined) return lookingWith(options, guard, () => ion(nameOrFormula));
  const text = readableText(nameOrFormula, "an ion");
  const notation = tryReadNotation(text);
  const formula = notation !== undefined && notation.charge !== 0 ? text : chargedReading(text);
  if (formula === undefined)
    throw new SubstanceError("substance.unknown-name", `"${text}" is not an ion known here`, {
      input: text,
      hint: 'give its charge, such as "Fe^3+", or its name, such as "iron(III) ion"',
      details: { nearest: [] },
    });
  const read = readNotation(formula);
  const listed = read.parts.length === 1 ? listedIon(read.parts[0]!.counts, read.charge) : undefined;
  if (listed !== undefined) return entryOf(listed);
  const own = chargedText(read.parts[0]!.text, read.charge);
  const seen = MONATOMIC_COLOURS.find((row) => row.ion === own);
  return readable({
    formula: canonical(formula),
    name: nameOf(formula),
    charge: read.charge,
    otherNames: [],
    ...(seen === undefined ? {} : { colour: seen.colour }),
    sources: { name: nameSourceOf(read), ...(seen === undefined ? {} : { colour: seen.source }) },
  });
}

function chargedReading(text: string): string | undefined {
  for (const name of [text, `${text} ion`]) {
    const charged = readingsOf(name, { literal: true }).filter((one) => tryReadNotation(one.formula)?.charge !== 0);
    if (charged.length > 0) return charged[0]!.formula;
  }
  return undefined;
}

/**
 * Every polyatomic ion of the table.
 *
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @category Names
 * @example
 * ions().some((entry) => entry.name === "thiosulfate") // => true
 */
export function ions(options?: LookupOptions): readonly IonEntry[] {
  if (options !== undefined) return lookingWith(options, guard, () => ions());
  return every("", () => Object.freeze(everyIon()));
}

const every = /* @__PURE__ */ remembering<readonly IonEntry[]>(1);

function everyIon(): IonEntry[] {
  const { anions, cations } = allIons();
  return [...anions, ...cations].filter((one) => one.parent === undefined).map(entryOf);
}

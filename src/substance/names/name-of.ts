// From a formula to its name: compositional nomenclature of the Red Book 2005 (IR-5), additive names for coordination
// entities (IR-7, IR-9), addition compounds (IR-5.5), acids by their traditional names (IR-8). Section numbers: memory.

import { Formula } from "../../formula";
import { byElements } from "../../formula/internal";
import { attempt, type Result } from "../../foundation/error";
import { LOOKUP, type LookupOptions, lookingIn, lookingWith, ownRow } from "../../foundation/facts";
import { constitutionOf } from "../../ion";
import {
  acidOf,
  elementCharges,
  formulaKey,
  ionsAs,
  ionText,
  isCationElement,
  isComplexIon,
  isWater,
  type Notation,
  type Part,
  readNotation,
  saltOf,
} from "../../ion/internal";
import { guard } from "../argument";
import { MOLECULES, type MoleculeRow } from "../data/molecules";
import type { SourceKey } from "../data/sources";
import { badInput, readableText, SubstanceError, type SubstanceRefusal } from "../error";
import { factsOf } from "../registry/registry-facts";
import { rowOf } from "../registry/registry-index";
import { chargeNumber, complexName, complexOf, plausibleOxidation } from "./complex";
import { complexSaltName, looseComplexName } from "./complex-salt-name";
import { hydratePrefix } from "./prefixes";
import {
  anionName,
  binaryName,
  counted,
  elementName,
  mixedMoleculeName,
  type NameStyle,
  saltName,
  stoichiometricName,
} from "./salt-name";

/** A component's name and what kind of thing it is. */
interface Component {
  readonly name: string;
  readonly kind: "salt" | "acid" | "molecule" | "element" | "complex";
}

const moleculesWith = /* @__PURE__ */ byElements(
  () => MOLECULES(),
  ({ formula }) => formula,
  (rows) => new Map(rows.map((row) => [formulaKey(readNotation(row.formula)), row] as const)),
);

/** Is it written as ions that are those of another substance of the same composition? */
function isIsomerOf(part: Part, row: MoleculeRow): boolean {
  const own = constitutionOf(part.text);
  return own.kind === "salt" && own.identity !== constitutionOf(row.formula).identity;
}

/** A small molecule by the way it is written or, without carbon, by composition; never that of an isomer. */
function moleculeOf(part: Part): MoleculeRow | undefined {
  const row = moleculesWith([...part.counts.keys()].join("")).get(
    formulaKey({ parts: [{ ...part, multiplier: 1 }], charge: 0 }),
  );
  return row === undefined || isIsomerOf(part, row) ? undefined : row;
}

/** Acids and the molecules of hydrogen with a halogen or the like. */
function acidName(part: Part): string | undefined {
  const acid = acidOf(part);
  if (acid === undefined) return undefined;
  const { row, counts } = acid;
  if (counts.has("C") && counts.has("H")) {
    const written = (row.written ?? [row.formula]).some((way) => part.text.includes(way));
    if (!written && rowOf({ parts: [part], charge: 0 }) === undefined) return undefined;
  }
  if (row.acid !== undefined) return row.acid;
  // an anion built round a metal, written with its hydrogen first: H4[Fe(CN)6]
  return part.units[0]!.text === "H" &&
    part.units.length > 1 &&
    row.rare === undefined &&
    (isComplexIon(ionText(row)) || /ate\(/.test(row.name))
    ? `hydrogen ${anionName(acid)}`
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
  const counted = stoichiometricName(part);
  if (counted !== undefined) return { name: counted, kind: "salt" };
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

/** Addition compound: components by number, then by name, water last; the ratio last. */
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
  // a metal of one charge has no number in its salts; alone, the ion needs its charge
  if (complex !== undefined) return complex.endsWith(")") ? complex : `${complex}(${chargeNumber(charge)})`;
  const listed = ionsAs(part.counts, charge).find(({ element }) => element === undefined);
  if (listed !== undefined) return listed.row.name;
  const unit = part.units[0]!;
  const word = part.units.length === 1 ? elementCharges().get(unit.text) : undefined;
  if (word !== undefined) {
    if (word.symbol === "H" && charge === 1 && unit.count === 1) return "hydron";
    const front = charge > 0 ? counted(unit.count, word.name, true) : undefined;
    if (charge > 0) return front === undefined ? undefined : `${front}(${chargeNumber(charge)})`;
    if (unit.count === 1 && charge === -(word.ideCharge ?? 0)) return word.ide;
    const back = word.ide === undefined ? undefined : counted(unit.count, word.ide, true);
    return back === undefined ? undefined : `${back}(${chargeNumber(charge)})`;
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

const RULES: SourceKey = "redBook2005";
const STYLES: readonly NameStyle[] = ["oxidation-numbers", "prefixes", "adduct"];

function notationFor(formula: string | Formula): Notation {
  return readNotation(formula instanceof Formula ? formula : readableText(formula, "a formula"));
}

function noName(notation: Notation, formula: string | Formula): SubstanceError {
  return new SubstanceError("substance.no-name", `no rule or table names ${String(formula)}`, {
    input: String(formula),
    hint: "salts, acids, hydrates, binary molecules and simple complexes are named by rule; other molecules only if listed",
    details: { parts: notation.parts.map((part) => part.text) },
  });
}

/** A bare composition as the registry writes it: Hill order hides which atoms are bound together. */
function asRegistered(notation: Notation): Notation {
  const isBare = notation.parts.every(({ units }) => units.every(({ members }) => members === undefined));
  const row = isBare ? rowOf(notation) : undefined;
  if (row === undefined) return notation;
  const { phase } = notation;
  return { ...readNotation(row.formula), ...(phase === undefined ? {} : { phase }) };
}

/** What the name of a formula rests on: the row of the registry, of the molecule or of the acid, else the rules. */
export function nameSourceOf(notation: Notation): SourceKey {
  const row = rowOf(notation);
  if (row !== undefined) return factsOf(row).nameSource;
  const dry = notation.parts.filter((part) => !isWater(part));
  const [part] = dry;
  if (part === undefined || dry.length > 1 || notation.charge !== 0) return RULES;
  return moleculeOf(part)?.source ?? acidOf(part)?.row.source ?? RULES;
}

/**
 * Systematic name of a formula: oxidation numbers where a metal has several, prefixes for molecules and for salts with
 * more than two kinds of ion, hydrate prefixes, additive names for complexes, traditional names for acids.
 *
 * @param formula - neutral or charged; `(aq)` after a hydrogen halide names the solution
 * @param style - how proportions are stated; by default oxidation numbers
 * @param options - `facts`: facts of the caller's own; a name given there is the usual one
 * @throws {SubstanceError} `substance.no-name`, `substance.bad-input`, `substance.too-long`; {@link FormulaError} for an unreadable formula
 * @source Nomenclature of Inorganic Chemistry, IUPAC Recommendations 2005, IR-5, IR-7 to IR-9
 * @category Names
 * @example
 * nameOf("(NH4)2Fe(SO4)2·6H2O") // => "diammonium iron(II) bis(sulfate) hexahydrate"
 * nameOf("Fe2O3") // => "iron(III) oxide"
 * nameOf("Fe2O3", "prefixes") // => "diiron trioxide"
 * nameOf("[Cu(NH3)4]SO4·H2O") // => "tetraamminecopper(II) sulfate monohydrate"
 */
export function nameOf(
  formula: string | Formula,
  style: NameStyle = "oxidation-numbers",
  options?: LookupOptions,
): string {
  if (!STYLES.includes(style)) throw badInput(`a style out of: ${STYLES.join(", ")}`);
  guard.options(options, LOOKUP);
  return lookingIn(options?.facts, guard, () => named(formula, style));
}

function named(formula: string | Formula, style: NameStyle): string {
  const own = ownRow<{ readonly name: string }>("substances", () => formulaKey(notationFor(formula)));
  if (own !== undefined && style === "oxidation-numbers") return own.name;
  const notation = asRegistered(notationFor(formula));
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
export function tryNameOf(
  formula: string | Formula,
  style?: NameStyle,
  options?: LookupOptions,
): Result<string, SubstanceRefusal> {
  return attempt(() => nameOf(formula, style, options));
}

/**
 * Every systematic name the rules allow for a formula, the usual one first, then the registry's own.
 *
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @throws {SubstanceError} as {@link nameOf}
 * @source Nomenclature of Inorganic Chemistry, IUPAC Recommendations 2005, IR-5
 * @category Names
 * @example
 * namesOf("Na2SO4·10H2O") // => ["sodium sulfate decahydrate", "disodium sulfate decahydrate", "sodium sulfate—water (1/10)"]
 */
export function namesOf(formula: string | Formula, options?: LookupOptions): string[] {
  if (options !== undefined) return lookingWith(options, guard, () => namesOf(formula));
  const notation = notationFor(formula);
  const names = [
    nameOf(formula),
    ...(["prefixes", "adduct"] as const).map((style) => nameUnder(notation, style)),
    rowOf(notation)?.name,
    ...(rowOf(notation)?.systematic ?? []),
  ];
  return [...new Set(names.filter((name): name is string => name !== undefined))];
}

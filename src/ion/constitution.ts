// What a formula is made of: cations, anions, crystal water, ligands, acid hydrogen. Composition decides; how the formula is
// written is asked only where composition leaves a choice (urea or ammonium cyanate), so that Hill order, brackets, CH3COO or
// C2H3O2 and the kind of hydrate dot make no difference.

import { Formula, type FormulaRefusal, parseFormula } from "../formula";
import { attempt, type Result } from "../foundation/error";
import { frozen } from "../foundation/frozen";
import { gcd } from "../foundation/gcd";
import { memoised } from "../foundation/memo";
import { readable } from "../foundation/readable";
import { complexOf, shownLigands, withOxoCation } from "./complexes";
import {
  type AcidHydrogen,
  type Constituent,
  type ConstituentIon,
  type ConstitutionKind,
  type Content,
  canonical,
  hasMetal,
  ionFormula,
  rootNames,
  rounded,
  scaled,
} from "./content";
import { ionsAs } from "./ion-index";
import { chargedText, elementOfIon, isComplexIon } from "./ion-text";
import { isWater, type Part, readNotation } from "./notation";
import { partContent } from "./part-content";

/** What a formula is made of. Made by {@link constitutionOf}. */
export interface Constitution {
  /** What the formula as a whole is; `open` where its composition does not decide. */
  readonly kind: ConstitutionKind;
  /** Counts are for the formula as written, all its parts together. */
  readonly cations: readonly ConstituentIon[];
  /** Counted as the cations are. */
  readonly anions: readonly ConstituentIon[];
  /** Waters of crystallization in the formula. */
  readonly waters: number;
  /** Neutral ligands bound to a metal: ammonia, water inside brackets. */
  readonly ligands: readonly Constituent[];
  /** Molecules that are neither water nor ligand; the formula itself if it is one. */
  readonly molecules: readonly Constituent[];
  /** Hydrogen that it can give up, where it is an acid. */
  readonly acid?: AcidHydrogen;
  /** The metal with its ligands as one ion, where it stays together in water. */
  readonly complex?: ConstituentIon;
  /** The ions it gives when it dissolves, cations first: those above, a complex kept together. */
  readonly inWater: readonly ConstituentIon[];
  /** Names of the anions with those of the acids' anions after hydrogen salts, `ammonium` and `ammine`. */
  readonly groups: readonly string[];
  /** What the formula may be, where only a composition is written that several substances share; else empty. */
  readonly readings: readonly string[];
  /** Equal for the same substance however written; crystal water counts. */
  readonly identity: string;
  /** The same without crystal water, for one anhydrous unit. */
  readonly anhydrousIdentity: string;
}

/** Equal things added up, in order of first appearance. */
function added<T extends { readonly formula: string; readonly count: number }>(list: readonly T[]): T[] {
  const all = new Map<string, T>();
  for (const one of list) {
    const before = all.get(one.formula);
    all.set(one.formula, before === undefined ? one : { ...before, count: rounded(before.count + one.count) });
  }
  return [...all.values()];
}

const byCharge = (ions: readonly ConstituentIon[]): ConstituentIon[] =>
  [...ions].sort((one, other) => Math.sign(other.charge) - Math.sign(one.charge));

/** `2 Na+ + 1 SO4^2-`, sorted; in lowest terms. */
function identityText(things: readonly { readonly formula: string; readonly count: number }[], units: number): string {
  return things
    .filter(({ count }) => count !== 0)
    .map(({ formula, count }) => `${rounded(count / units)} ${formula}`)
    .sort()
    .join(" + ");
}

/** Greatest common divisor of counts; 1 where one is not a whole number. */
function commonFactor(counts: readonly number[]): number {
  if (counts.length === 0 || !counts.every(Number.isInteger)) return 1;
  return counts.reduce(gcd);
}

function ionConstitution(charge: number, part: Part, waters: number): Constitution {
  const [row] = ionsAs(part.counts, charge);
  const shown = shownLigands(part.units, false);
  const text = row === undefined ? canonical(chargedText(part.text || "e", charge)) : ionFormula(row);
  const element = elementOfIon(text);
  const own: ConstituentIon = {
    formula: text,
    charge,
    count: part.multiplier,
    ...(element === undefined ? {} : { element }),
  };
  const ligands = [
    ...(shown.ammines > 0 ? [{ formula: "NH3", count: shown.ammines }] : []),
    ...(shown.aquas > 0 ? [{ formula: "H2O", count: shown.aquas }] : []),
  ];
  return {
    kind: "ion",
    cations: charge > 0 ? [own] : [],
    anions: charge < 0 ? [own] : [],
    waters,
    ligands,
    molecules: [],
    ...(ligands.length > 0 || (isComplexIon(text) && hasMetal(part.counts)) ? { complex: own } : {}),
    inWater: [own],
    groups: row === undefined ? [] : rootNames(row),
    readings: [],
    identity: waters === 0 ? text : identityText([own, { formula: "H2O", count: waters }], own.count),
    anhydrousIdentity: text,
  };
}

function constitutionFor(formula: Formula): Constitution {
  const { parts, charge } = readNotation(formula);
  const [ion, ...others] = charge === 0 ? [] : parts.filter((part) => !isWater(part));
  if (ion !== undefined && others.length === 0)
    return ionConstitution(
      charge / ion.multiplier,
      ion,
      parts.reduce((waters, part) => waters + (part === ion ? 0 : part.multiplier), 0),
    );
  const contents = parts.map((part) => ({
    part,
    times: part.multiplier,
    content: partContent(part, parts.length === 1),
  }));
  const all = <T extends { readonly formula: string; readonly count: number }>(
    of: (content: Content) => readonly T[],
  ) => added(contents.flatMap(({ times, content }) => scaled(of(content), times)));
  const sum = (of: (content: Content) => number): number =>
    rounded(contents.reduce((total, { times, content }) => total + times * of(content), 0));
  const cations = all(({ cations }) => cations);
  const anions = all(({ anions }) => anions);
  const waters = sum((content) => content.waters);
  const ammines = sum((content) => content.ammines);
  const aquas = sum((content) => content.aquas);
  const molecules = all(({ molecule: text }) => (text === undefined ? [] : [{ formula: text, count: 1 }]));
  const dry = contents.filter(({ content }) => content.kind !== "water");
  const kinds = new Set(dry.map(({ content }) => content.kind));
  const kind =
    dry.length === 0
      ? "water"
      : kinds.size === 1
        ? [...kinds][0]!
        : kinds.has("open")
          ? "open"
          : cations.length > 0
            ? "salt"
            : "molecule";
  const [only] = dry;
  const single = dry.length === 1 ? only : undefined;
  const held = single === undefined ? undefined : complexOf(single.part, single.content);
  const things = [...cations, ...anions, ...molecules, { formula: "NH3", count: ammines }];
  const units = commonFactor(
    [...cations, ...anions, ...molecules].map(({ count }) => count).concat(ammines > 0 ? [ammines] : []),
  );
  const perUnit = molecules.length > 0 && single !== undefined ? single.times : units;
  return {
    kind,
    cations,
    anions,
    waters,
    ligands: [
      ...(ammines > 0 ? [{ formula: "NH3", count: ammines }] : []),
      ...(aquas > 0 ? [{ formula: "H2O", count: aquas }] : []),
    ],
    molecules,
    ...(single?.content.acid === undefined ? {} : { acid: single.content.acid }),
    ...(held === undefined ? {} : { complex: scaled([held.complex], single!.times)[0]! }),
    inWater:
      held === undefined
        ? withOxoCation(cations, anions)
        : scaled(byCharge([held.complex, ...held.around]), single!.times),
    groups: [...new Set(contents.flatMap(({ content }) => content.groups))],
    readings: [...new Set(contents.flatMap(({ content }) => content.readings))],
    identity: identityText(
      [...things, { formula: "H2O", count: rounded(waters + aquas) }],
      dry.length === 0 ? 1 : perUnit,
    ),
    anhydrousIdentity: identityText(things, perUnit),
  };
}

const known = /* @__PURE__ */ new WeakMap<Formula, Constitution>();
const byText = /* @__PURE__ */ memoised(4000, (text: string) => frozen(readable(constitutionFor(parseFormula(text)))));

/**
 * What a formula is made of: cations with their charges, anions, crystal water, ligands, the hydrogen of an acid. The same
 * for every way of writing one substance.
 *
 * @param formula - a salt, acid, molecule or ion, crystal water allowed
 * @returns ions for the formula as written; `identity`, equal for the same substance; `readings`, what a bare composition
 * such as CH4N2O may stand for. What the rules do not read is a molecule of its own.
 * @throws {FormulaError} those of `parseFormula`
 * @source charges and ions: IUPAC Recommendations 2005 (see the rows of the ion table); isomers: common practice
 * @category Formulas
 * @example
 * constitutionOf("Zn5C2H6O12").anions.map((ion) => `${ion.count} ${ion.formula}`) // => ["2 CO3^2-", "6 OH-"]
 * constitutionOf("CuHAsO3").cations[0]?.formula // => "Cu^2+"
 * constitutionOf("CuSO4.5H2O").identity === constitutionOf("CuH10O9S").identity // => true
 * constitutionOf("CH4N2S").readings // => ["CS(NH2)2", "NH4SCN"]
 * constitutionOf("C2H2O4·2H2O").acid?.protons // => 2
 */
export function constitutionOf(formula: Formula | string): Constitution {
  if (!(formula instanceof Formula)) return byText(formula);
  let constitution = known.get(formula);
  if (constitution === undefined) {
    constitution = byText(formula.text);
    known.set(formula, constitution);
  }
  return constitution;
}

/**
 * Are two formulas the same substance, however each is written? Isomers are not; crystal water counts.
 *
 * @category Formulas
 * @example
 * sameSubstance("Pb(C2H3O2)2·3H2O", "Pb(CH3COO)2.3H2O") // => true
 * sameSubstance("NH4OCN", "CO(NH2)2") // => false
 */
export function sameSubstance(one: Formula | string, other: Formula | string): boolean {
  return constitutionOf(one).identity === constitutionOf(other).identity;
}

/**
 * Does the formula hold an ion, in whatever numbers?
 *
 * @param ion - with its charge, as `constitutionOf` writes it: `CO3^2-`, `NH4+`
 * @category Formulas
 * @example
 * hasIon("Cu2(OH)2CO3", "OH-") // => true
 * hasIon("CH3OH", "OH-") // => false
 */
export function hasIon(formula: Formula | string, ion: string): boolean {
  const { cations, anions } = constitutionOf(formula);
  return [...cations, ...anions].some((one) => one.formula === ion);
}

/**
 * {@link constitutionOf}, with the outcome as data.
 *
 * @category Formulas
 * @example
 * tryConstitutionOf("NACL").ok // => false
 */
export function tryConstitutionOf(formula: Formula | string): Result<Constitution, FormulaRefusal> {
  return attempt(() => constitutionOf(formula));
}

// What kind of thing a material is, worked out from composition, ions and identity: the ground for incompatibilities. How
// the formula is written decides nothing that its composition can decide.

import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import {
  atomsIn,
  compositionKey,
  formulaKey,
  isCationElement,
  isWater,
  type Notation,
  type Part,
  readNotation,
  showsAcidGroup,
} from "../../ion/internal";
import {
  ACID_CATIONS,
  ALKALI,
  BY_ACID,
  BY_ANION,
  BY_COMPOSITION,
  BY_ELEMENT,
  BY_GOOD,
  STRONG_ACID_ANIONS,
  THERMITE_METALS,
  TOO_WEAK,
} from "../data/hazard-classes";
import type { HazardClass } from "../data/incompatibilities";
import { asElements, type MakeUp, makeUpOf } from "./make-up";

let byComposition: ReadonlyMap<string, readonly HazardClass[]> | undefined;
let byGood: ReadonlyMap<string, readonly HazardClass[]> | undefined;

function listed(part: Part): readonly HazardClass[] {
  byComposition ??= new Map(
    Object.entries(BY_COMPOSITION).map(([formula, classes]) => [compositionKey(atomsIn(formula)), classes]),
  );
  return byComposition.get(compositionKey(part.counts)) ?? [];
}

function goods(notation: Notation): readonly HazardClass[] {
  byGood ??= new Map(Object.entries(BY_GOOD).map(([formula, classes]) => [formulaKey(readNotation(formula)), classes]));
  return byGood.get(formulaKey(notation)) ?? [];
}

/** Carbon and hydrogen that burn too badly to be a fuel: urea, hydrogen cyanide, oxalic, formic, carbonic and thiocyanic acid. */
const NO_FUEL: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "C1 H4 N2 O1",
  "C1 H1 N1",
  "C2 H2 O4",
  "C1 H2 O2",
  "C1 H2 O3",
  "C1 H1 N1 S1",
]);

/** Carbon and hydrogen, no metal, no ammonium: burns with an oxidiser. */
function isOrganicFuel(part: Part, { cations, isAcid }: MakeUp): boolean {
  if (!part.counts.has("C") || !part.counts.has("H") || NO_FUEL.has(compositionKey(part.counts))) return false;
  return (cations.length === 0 || isAcid) && ![...part.counts.keys()].some(isCationElement);
}

function addAll(into: Set<HazardClass>, classes: readonly HazardClass[] | undefined): void {
  for (const one of classes ?? []) into.add(one);
}

/** Classes that follow from the cations and from what stands beside them. */
function ofCations({ cations, groups }: MakeUp, into: Set<HazardClass>): void {
  const ammonium = groups.includes("ammonium") && !groups.includes("hydroxide");
  if (ammonium) into.add("ammonium");
  if (ammonium && into.has("nitrate")) into.add("ammonium nitrate");
  if (ammonium && into.has("oxalate")) into.add("ammonium oxalate");
  if (into.has("nitrate") && cations.length > 0 && cations.every(({ symbol }) => ALKALI.has(symbol)))
    into.add("alkali nitrate");
  const oxideOnly = groups.length === 1 && groups[0] === "oxide";
  for (const { symbol, charge } of cations) {
    if (symbol === "Cr" && charge === 3) into.add("chromium(III)");
    if (oxideOnly && THERMITE_METALS.has(symbol)) into.add("metal oxide");
    if (groups.some((name) => STRONG_ACID_ANIONS.has(name)) && ACID_CATIONS.has(`${symbol}${charge}`))
      into.add("acid salt");
    if (groups.includes("chloride") && (symbol === "Cu" || (symbol === "Fe" && charge === 3)))
      into.add("pitting chloride");
  }
}

function ofPart(part: Part, into: Set<HazardClass>, charge = 0): void {
  if (charge === 0) addAll(into, listed(part));
  if (isWater(part)) return;
  const made = makeUpOf(part, charge);
  // a composition that several substances share may be any of them
  for (const reading of made.readings) for (const one of readNotation(reading).parts) ofPart(one, into);
  const compound = part.counts.size > 1;
  for (const symbol of part.counts.keys())
    if (compound || ["Pb", "Hg", "Cd", "As"].includes(symbol)) addAll(into, BY_ELEMENT[symbol]);
  if (compound && part.counts.has("Ag")) into.add("silver salt");
  if (made.cyanide === "free") into.add("cyanide");
  if (made.cyanide === "fast") into.add("cyanido complex");
  if (made.ammonia) into.add("ammonia");
  if (isOrganicFuel(part, made)) into.add("organic");
  if (made.hasOrganicAnion && !made.isAcid) into.add("organic salt");
  if (showsAcidGroup(part)) into.add("acid");
  if (made.isAcid) {
    if (!made.groups.some((name) => TOO_WEAK.has(name))) into.add("acid");
    for (const name of made.groups) addAll(into, BY_ACID[name] ?? BY_ANION[name]);
  } else for (const name of made.groups) if (name !== "cyanide") addAll(into, BY_ANION[name]);
  if (into.has("hypochlorite") && part.counts.has("Ca")) into.add("calcium hypochlorite");
  ofCations(made, into);
}

/** Classes of a material. Crystal water does not make it water, and what holds some is no longer split by water. */
export function classesOf(given: Notation): ReadonlySet<HazardClass> {
  const notation = asElements(given);
  const charge = notation.parts.length === 1 ? notation.charge : 0;
  const classes = new Set<HazardClass>(goods(notation));
  const dry = notation.parts.filter((part) => !isWater(part));
  for (const part of dry.length > 0 ? dry : notation.parts) ofPart(part, classes, charge);
  if (dry.length > 0 && dry.length < notation.parts.length) classes.delete("hydrolysing chloride");
  return classes;
}

const remembered = /* @__PURE__ */ remembering<ReadonlySet<HazardClass>>(500);

/** The same of a formula, remembered. */
export const classesOfFormula = (formula: Formula): ReadonlySet<HazardClass> =>
  remembered(formula.toString(), () => classesOf(readNotation(formula)));

/** Materials whose use in a kitchen or from food vessels poisons. */
const TOXIC_METALS = ["Pb", "Hg", "Cd", "As", "Ba", "Co", "Ni", "Cr", "Tl", "Sb", "V", "Cu"];

/** Not to be brought near food. */
export function isToxicWork(notation: Notation): boolean {
  const classes = classesOf(notation);
  if (classes.has("cyanide") || classes.has("azide") || classes.has("fluoride") || classes.has("nitrite")) return true;
  return notation.parts.some((part) => TOXIC_METALS.some((symbol) => part.counts.has(symbol)));
}

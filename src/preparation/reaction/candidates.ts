// What the product may really be: the solids a precipitation of this metal is known to give, the hydrates of the salt, and
// what the same metal would weigh as each of them.

import { type Formula, molarMass, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import { remembering } from "../../foundation/memo";
import { knownHydrates } from "../../hydrate";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { CHANGED_IN_AIR } from "../data/air";
import { BASIC_SALTS, PRECIPITATES } from "../data/ignition";
import type { Formed } from "./account";
import { changesOf } from "./change-of-solid";
import { keyed, nameOfFormula } from "./species";
import { spelledLike } from "./spelling";

/** Colder than any room that something is dried in, °C. */
const COLD_ROOM = 5;

/** The product under another formula, for the same metal. */
export interface Candidate {
  /** As printed, crystal water included. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** The formula the plan is made for. */
  readonly wanted: boolean;
  /** Mass of this formula that the same metal gives. */
  readonly theoreticalYield: Quantity<"mass">;
}

/** Elements that are not what a product is named for. */
const COMMON = new Set(["C", "H", "N", "O", "S", "P", "F", "Cl", "Br", "I", "D", "T"]);
const ALKALI = new Set(["Na", "K"]);

/** The element a product is weighed by: its only metal outside the anion, sodium and potassium only where there is no other. */
export const keyElement = (product: Formula): string | undefined =>
  rememberedKey(product.toString(), () => worked(product));

const rememberedKey = /* @__PURE__ */ remembering<string | undefined>(500);

function worked(product: Formula): string | undefined {
  const metals = product.symbols.filter((symbol) => !COMMON.has(symbol));
  const others = metals.filter((symbol) => !ALKALI.has(symbol));
  const telling = others.length > 0 ? others : metals;
  return telling.length > 1 ? onlyCation(product, telling) : telling[0];
}

/** Of several metals the one that is not a part of the anion, as the barium of a chromate. */
function onlyCation(product: Formula, metals: readonly string[]): string | undefined {
  const { anions } = constitutionOf(product);
  if (anions.length === 0) return undefined;
  const held = anions.flatMap(({ formula }) => parseFormula(formula).symbols);
  const free = metals.filter((symbol) => !held.includes(symbol));
  return free.length === 1 ? free[0] : undefined;
}

const isCarbonate = (formula: Formula): boolean => madeOf(formula).groups.has("carbonate");

/** Hydroxide and carbonate ions, metal and crystal water, nothing else. */
const isCarbonateOrHydroxide = (formula: Formula): boolean =>
  formula.symbols.every((s) => s === "C" || s === "O" || s === "H" || !COMMON.has(s)) &&
  (isCarbonate(formula) || madeOf(formula).groups.has("hydroxide"));

let solidsByMetal: Map<string, readonly Formula[]> | undefined;

/** Solids a precipitation of the metal may give; parsed once, when first asked for. */
function solidsOf(metal: string): readonly Formula[] {
  solidsByMetal ??= new Map();
  let solids = solidsByMetal.get(metal);
  if (solids === undefined) {
    const row = PRECIPITATES.find((one) => one.metal === metal);
    solids = (row?.solids ?? []).map((text) => parseFormula(text));
    solidsByMetal.set(metal, solids);
  }
  return solids;
}

const basicSalts = /* @__PURE__ */ remembering<readonly Formula[]>(50);

/** Basic sulfates, chlorides and nitrates of the metal that a hydroxide may be in part or in all. */
const basicSaltsOf = (product: Formula, metal: string): readonly Formula[] =>
  isCarbonateOrHydroxide(product) && !isCarbonate(product)
    ? basicSalts(metal, () =>
        BASIC_SALTS.flatMap((row) => (row.metal === metal ? row.solids.map((text) => parseFormula(text)) : [])),
      )
    : [];

/** Is it a formula that books write for what precipitates, and that no liquor gives? */
export const isOnBooksOnly = (name: string): boolean =>
  PRECIPITATES.some((row) => row.onBooksOnly?.some((text) => nameOfFormula(parseFormula(text)) === name));

/** Is this one of the carbonates the table knows, water of crystallization aside? */
export function isKnownCarbonate(formula: Formula): boolean {
  const key = keyElement(formula);
  return key !== undefined && isCarbonate(formula) && solidsOf(key).length > 0;
}

/** Other formulas a solid may have: for a carbonate or hydroxide what else precipitates; for a salt its known hydrates. */
export function formulasLike(product: Formula): Formula[] {
  const key = keyElement(product);
  if (key === undefined) return [];
  const solids = isCarbonateOrHydroxide(product) ? solidsOf(key) : [];
  const others = solids.length > 0 ? solids : hydratesOf(product);
  return others.filter((f) => !f.hasSameComposition(product));
}

function hydratesOf(product: Formula): Formula[] {
  if (isWater(product)) return [];
  const changes = changesOf(product);
  // What melts in its water or turns into another form before a room is that cold never lies on a balance.
  const isOfFrost = (formula: Formula): boolean =>
    changes.some(
      ({ celsius, below }) =>
        Number(celsius) < COLD_ROOM &&
        below !== undefined &&
        parseFormula(below).hasSameComposition(formula) &&
        !changes.some(({ above }) => above !== undefined && parseFormula(above).hasSameComposition(formula)),
    );
  return knownHydrates(product)
    .map((form) => form.formula)
    .filter((formula) => !isOfFrost(formula))
    .map((formula) => spelledLike(formula, product));
}

/**
 * The product and what else the same metal may have precipitated as.
 *
 * @param from - what it is made from: no candidate holds an element that nothing brings, water and given ones aside
 */
export function candidatesFor(
  product: Formula,
  formed: Formed,
  from: readonly Formula[],
  extra: readonly string[],
): Candidate[] {
  const wanted: Candidate = candidate(formed.formula, true, formed.mass);
  const element = keyElement(product);
  if (element === undefined) return [wanted];
  const metal = formed.amount
    .times(product.count(element))
    .named({ symbol: `n(${element})`, rule: `amount of ${element} = amount × atoms of ${element} in the formula` });
  return [
    wanted,
    ...othersOf(product, formed.formula, element, from, extra).map((other) => candidateOf(other, metal, element)),
  ];
}

const candidate = (formula: string, wanted: boolean, theoreticalYield: Quantity<"mass">): Candidate =>
  keyed("formula", { formula, wanted, theoreticalYield });

function candidateOf({ name, perAtom }: Other, metal: Quantity, element: string): Candidate {
  const theoreticalYield = metal
    .times(perAtom)
    .to("g")
    .named({
      symbol: `m(${name})`,
      label: `the same ${element} as ${name}`,
      rule: `mass = amount of ${element} / atoms in the formula × molar mass`,
    });
  return candidate(name, false, theoreticalYield);
}

const rememberedAir = /* @__PURE__ */ remembering<readonly Formula[]>(200);

/** What air makes of a powder that stands open. */
export const changedInAir = (product: Formula): readonly Formula[] =>
  rememberedAir(product.toString(), () => {
    const row = CHANGED_IN_AIR.find(({ formula }) => parseFormula(formula).hasSameComposition(product));
    return (row?.becomes ?? []).map((text) => parseFormula(text));
  });

/** The metal of so much product as each of these formulas. */
export function candidatesLike(formulas: readonly Formula[], product: Formula, amount: Quantity): Candidate[] {
  const key = keyElement(product);
  if (key === undefined || formulas.length === 0) return [];
  const metal = amount.times(product.count(key));
  return formulas.map((formula) =>
    candidateOf(
      { name: nameOfFormula(formula), perAtom: molarMass(formula).dividedBy(formula.count(key)) },
      metal,
      key,
    ),
  );
}

interface Other {
  readonly name: string;
  /** Molar mass for each atom of the metal. */
  readonly perAtom: Quantity;
}

const rememberedOthers = /* @__PURE__ */ remembering<readonly Other[]>(200);

function othersOf(
  product: Formula,
  productName: string,
  key: string,
  from: readonly Formula[],
  extra: readonly string[],
): readonly Other[] {
  return rememberedOthers([product, ...from, "|", ...extra].join(" "), () => {
    const brought = new Set(["H", "O", ...from.flatMap((formula) => formula.symbols)]);
    const all = [
      ...[...formulasLike(product), ...basicSaltsOf(product, key)].filter((formula) =>
        formula.symbols.every((s) => brought.has(s)),
      ),
      ...extra.map((text) => parseFormula(text)),
    ];
    const seen = new Set<string>([productName]);
    return all.flatMap((formula) => {
      const name = nameOfFormula(formula);
      const atoms = formula.count(key);
      if (seen.has(name) || atoms.n === 0n || formula.hasSameComposition(product)) return [];
      seen.add(name);
      return [{ name, perAtom: molarMass(formula).dividedBy(atoms) }];
    });
  });
}

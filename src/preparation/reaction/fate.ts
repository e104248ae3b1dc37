// Does a substance precipitate from water or stay in it? The table speaks first, then the rules; where neither does, nobody knows.

import { isNonmetal } from "../../equation/internal";
import { type Formula, molarMass } from "../../formula";
import { isWater } from "../../formula/internal";
import { attempt } from "../../foundation/error";
import { keptBeside, remembering } from "../../foundation/memo";
import type { Quantity } from "../../quantity";
import { lossToLiquor, solubilityRule, trySolubilityOf } from "../../solubility";
import { madeOf } from "../../substance/internal";
import { INSOLUBLE_NONMETALS, OILY, RING_CLOSING, SOLUBLE_CYANIDOFERRATES, SOLUBLE_OXIDES } from "../data/insoluble";
import { exact, planned } from "../planning/exact";
import { isAcid } from "./acids";
import { isKnownCarbonate } from "./candidates";
import { isMiscible } from "./fluids";
import { gelRow } from "./gel";
import { onlyInSolution } from "./only-in-solution";
import { nameOfFormula, watersOf } from "./species";

/** What becomes of a substance in water. */
interface Fate {
  /** Filtered off rather than crystallised; undefined when not known. */
  readonly precipitated: boolean | undefined;
  /** Grams of anhydrous substance in 100 g of water, where the table has it. */
  readonly perHundredGramsWater: Quantity | undefined;
  readonly why: string;
}

const isOfSolubleOxide = (symbol: string): boolean => SOLUBLE_OXIDES.some((row) => row.elements.includes(symbol));

function isOxideOfMetal({ symbols }: Formula): boolean {
  return symbols.length === 2 && symbols.includes("O") && symbols.every((s) => s === "O" || !isOfSolubleOxide(s));
}

/** Cyanidoferrates of anything but alkali and alkaline earth metals do not dissolve; iron may stand outside as well. */
function isInsolubleCyanidoferrate(formula: Formula): boolean {
  if (![...madeOf(formula).groups].some((name) => name.startsWith("hexacyanidoferrate"))) return false;
  const outside = formula.symbols.filter((symbol) => symbol !== "Fe" && !isNonmetal(symbol));
  const isIronOutside = formula.count("Fe").mul(6).compare(formula.count("C")) > 0;
  return isIronOutside || outside.some((symbol) => !SOLUBLE_CYANIDOFERRATES.some((row) => row.metals.includes(symbol)));
}

/** A ring around its metal leaves water nothing to hold. */
const isRing = (formula: Formula): boolean =>
  RING_CLOSING.some(
    ({ group, metals }) => madeOf(formula).groups.has(group) && formula.symbols.some((one) => metals.includes(one)),
  );

/** Metals, sulfur and their like. */
function isInsolubleElement({ symbols }: Formula): boolean {
  const [symbol] = symbols;
  if (symbols.length !== 1 || symbol === undefined) return false;
  return !isNonmetal(symbol) || INSOLUBLE_NONMETALS.some((row) => row.elements.includes(symbol));
}

/** Hydrocarbons, fatty acids, fats and their like; phenol and the alcohols of wine are none. */
function isOily(formula: Formula): boolean {
  const [carbon, oxygen] = ["C", "O"].map((symbol) => formula.count(symbol));
  const isOrganic = formula.count("H").n !== 0n && formula.symbols.every((s) => ["C", "H", "O"].includes(s));
  return isOrganic && carbon!.n !== 0n && carbon!.compare(oxygen!.mul(OILY.carbonsPerOxygen)) >= 0;
}

/** Ligands change what a salt does in water: the rules speak of simple ions only. */
const isComplex = (formula: Formula): boolean => madeOf(formula).complex || madeOf(formula).ammonia;

const remembered = /* @__PURE__ */ remembering<Fate>(512);

/** An exact temperature as text; undefined for one with an uncertainty, which is an input of its own and no key. */
const textOf = /* @__PURE__ */ keptBeside((temperature: Quantity): string | undefined =>
  temperature.standardUncertainty === undefined ? `${temperature.value} ${temperature.unit}` : undefined,
);

/** What holds for a formula at a temperature, remembered where the temperature is exact. */
function at<T>(
  kept: (key: string, compute: () => T) => T,
  formula: Formula,
  temperature: Quantity<"temperature">,
  compute: () => T,
): T {
  const text = textOf(temperature);
  return text === undefined ? compute() : kept(`${formula} ${text}`, compute);
}

export const fateOf = (formula: Formula, temperature: Quantity<"temperature">): Fate =>
  at(remembered, formula, temperature, () => judged(formula, temperature));

/** The same in a room of which nothing is given. */
export const fateInRoom = (formula: Formula): Fate =>
  fateOf(formula, planned("temperature") as Quantity<"temperature">);

function judged(formula: Formula, temperature: Quantity<"temperature">): Fate {
  const name = nameOfFormula(formula);
  if (isWater(formula)) return { precipitated: false, perHundredGramsWater: undefined, why: "it is the water" };
  const known = trySolubilityOf(formula, temperature);
  if (known.ok) {
    const { perHundredGramsWater } = known.value;
    const shown = perHundredGramsWater.format({ significant: 2, uncertainty: "none" });
    const sparing = perHundredGramsWater.compare(planned("precipitatesBelow")) < 0;
    const inHot = sparing ? undefined : sparinglyDissolvedHot(formula, perHundredGramsWater);
    const why = sparing
      ? `100 g of water dissolves only ${shown} of ${name}`
      : inHot !== undefined
        ? `100 g of hot water dissolves only ${inHot.format({ significant: 2, uncertainty: "none" })} of ${name}`
        : `${name} dissolves well (${shown} anhydrous in 100 g of water)`;
    return { precipitated: sparing || inHot !== undefined, perHundredGramsWater, why };
  }
  const byRule = (precipitated: boolean | undefined, why: string): Fate => ({
    precipitated,
    perHundredGramsWater: undefined,
    why,
  });
  if (formula.charge !== 0) return byRule(false, `${name} is an ion, in solution`);
  if (isInsolubleElement(formula)) return byRule(true, `${name} is an element that water does not dissolve`);
  if (gelRow(formula) !== undefined) return byRule(true, `${name} precipitates as a gel (common practice)`);
  if (isMiscible(formula)) return byRule(false, `${name} mixes with water`);
  if (isOily(formula)) return byRule(true, `${name} is an oil or a fat, which water does not dissolve`);
  if (isAcid(formula)) return byRule(false, `${name} is an acid that dissolves`);
  if (isInsolubleCyanidoferrate(formula))
    return byRule(true, `${name} is a cyanidoferrate of a heavy metal: insoluble (common practice)`);
  if (isRing(formula)) return byRule(true, `${name} closes rings around its metal: insoluble (common practice)`);
  const only = onlyInSolution(formula);
  if (only !== undefined) return byRule(false, `${name} is known as a solution only: ${only.why}`);
  if (isComplex(formula)) return byRule(undefined, `solubility of ${name}`);
  if (isKnownCarbonate(formula))
    return byRule(true, `${name} is a carbonate of a metal other than an alkali metal: insoluble by rule`);
  const rule = solubilityRule(formula);
  if (rule?.class === "insoluble") return byRule(true, `${name} is insoluble by rule: ${rule.rule}`);
  if (rule?.class === "soluble") return byRule(false, `${name} dissolves by rule: ${rule.rule}`);
  if (isOxideOfMetal(formula))
    return byRule(true, `${name} is an oxide that water does not dissolve (common practice)`);
  return byRule(undefined, `solubility of ${name}`);
}

/** Asked of a solubility that ends before it is hot. */
const LESS_HOT = "60 °C";

/** What hot water dissolves of a substance, where that is less than cold, and too little to be called dissolved: it is filtered off hot. */
function sparinglyDissolvedHot(formula: Formula, cold: Quantity): Quantity | undefined {
  if (cold.compare(planned("keptHot")) > 0) return undefined;
  for (const at of [planned("hot"), exact(LESS_HOT)] as Quantity<"temperature">[]) {
    const hot = trySolubilityOf(formula, at);
    if (!hot.ok) continue;
    const figure = hot.value.perHundredGramsWater;
    return figure.compare(cold) < 0 && figure.compare(planned("precipitatesBelow")) < 0 ? figure : undefined;
  }
  return undefined;
}

const kept = /* @__PURE__ */ remembering<Quantity | undefined>(256);
const HUNDRED = "100 g";

/** What an amount of water keeps of a substance, in its own form; undefined where nothing is known. */
export function keptByWater(
  formula: Formula,
  water: Quantity,
  temperature: Quantity<"temperature">,
): Quantity<"mass"> | undefined {
  const perHundred = at(kept, formula, temperature, () => {
    const found = attempt(() => lossToLiquor({ formula, water: HUNDRED, temperature }));
    return found.ok ? found.value.mass : undefined;
  });
  return perHundred
    ?.times(water)
    .dividedBy(exact(HUNDRED))
    .to("g")
    .named({
      symbol: `m(${nameOfFormula(formula)}, kept)`,
      label: `${nameOfFormula(formula)} that the water keeps`,
      rule: "kept = solubility for 100 g of water × water",
    });
}

/**
 * What water that is put to a substance dissolves of it, in its own form: crystal water that dissolves with it is water too.
 * All of it where it dissolves in its own water; undefined where nothing is known, or how much there is of it.
 */
export function dissolvedBy(
  formula: Formula,
  water: Quantity,
  temperature: Quantity<"temperature">,
  all?: Quantity,
): Quantity<"mass"> | undefined {
  const kept = keptByWater(formula, water, temperature);
  if (kept === undefined) return undefined;
  // x = kept for a gram of water × (water + w(crystal water) × x)
  const inForm = watersOf(formula).times(molarMass("H2O")).dividedBy(molarMass(formula));
  const left = exact("1").minus(kept.dividedBy(water).times(inForm));
  const found = left.isPositive() ? kept.dividedBy(left).to("g") : all;
  if (found === undefined || (all !== undefined && found.compare(all) > 0)) return all as Quantity<"mass"> | undefined;
  return found.named({
    symbol: `m(${nameOfFormula(formula)}, dissolved)`,
    label: `${nameOfFormula(formula)} that the water dissolves`,
    rule: "dissolved = kept by the water / (1 - kept by 1 g × crystal water in 1 g)",
  }) as Quantity<"mass">;
}

/**
 * Does less of it dissolve at the first temperature than at the second, by a share of that where one is given? Where a figure is
 * missing it does not.
 */
export function dissolvesLess(
  formula: Formula,
  at: Quantity<"temperature">,
  than: Quantity<"temperature">,
  share: Quantity = exact("1"),
): boolean {
  const [less, more] = [at, than].map((one) => fateOf(formula, one).perHundredGramsWater);
  return less !== undefined && more !== undefined && less.compare(more.times(share)) < 0;
}

// Does a substance fall out of water or stay in it? The table speaks first, then the rules; where neither does, nobody knows.
import type { TemperatureLike } from "../amount";
import type { Formula } from "../formula";
import { type Quantity, quantity } from "../quantity";
import { solubilityRule, tryResidual, trySolubilityOf } from "../solubility";
import { isKnownCarbonate } from "./candidates";
import { remembering } from "./lazy";
import { nameOfFormula } from "./material";

/** What becomes of a substance in water. */
export interface Fate {
  /** Filtered off rather than crystallised; undefined when not known. */
  readonly fallsOut: boolean | undefined;
  /** Grams of anhydrous substance in 100 g of water, where the table has it. */
  readonly perHundredGramsWater: Quantity | undefined;
  readonly why: string;
}

/** A product that dissolves to less than this in 100 g of water is filtered off, not crystallised. */
const FALLS_OUT_BELOW = "1 g";

/** Solids that no water dissolves and the salt rules do not speak of: oxides, sulfides, metals (common practice, no source). */
const SOLUBLE_OXIDES = new Set([
  "Na",
  "K",
  "Li",
  "Rb",
  "Cs",
  "Ba",
  "Sr",
  "Ca",
  "B",
  "P",
  "S",
  "N",
  "C",
  "H",
  "As",
  "Cl",
]);

function isOxideOfMetal(formula: Formula): boolean {
  const { symbols } = formula;
  return symbols.length === 2 && symbols.includes("O") && symbols.every((s) => s === "O" || !SOLUBLE_OXIDES.has(s));
}

const COMPLEX_PIGMENTS = /\[Fe\(CN\)6\]/;

/** Cyanidoferrates of anything but alkali and alkaline earth metals do not dissolve (common practice, no source). */
function isInsolubleCyanidoferrate(formula: Formula): boolean {
  const rest = formula.toString().replace(/\[Fe\(CN\)6\]/g, "");
  return COMPLEX_PIGMENTS.test(formula.toString()) && !/Na|K|Ca|Mg|NH4|H/.test(rest);
}

const remembered = /* @__PURE__ */ remembering<Fate>(512);

const keyOf = (temperature: TemperatureLike): string =>
  typeof temperature === "string" ? temperature : `${temperature.value} ${temperature.unit}`;

export const fateOf = (formula: Formula, temperature: TemperatureLike): Fate =>
  remembered(`${formula} ${keyOf(temperature)}`, () => judged(formula, temperature));

function judged(formula: Formula, temperature: TemperatureLike): Fate {
  const name = nameOfFormula(formula);
  if (formula.compositionText === "H2O")
    return { fallsOut: false, perHundredGramsWater: undefined, why: "it is the water" };
  const known = trySolubilityOf(formula, temperature as "20 °C");
  if (known.ok) {
    const { perHundredGramsWater } = known.value;
    const shown = perHundredGramsWater.format({ significant: 2, uncertainty: "none" });
    const fallsOut = perHundredGramsWater.compare(quantity(FALLS_OUT_BELOW)) < 0;
    const why = fallsOut
      ? `100 g of water holds only ${shown} of ${name}`
      : `${name} dissolves well (${shown} anhydrous in 100 g of water)`;
    return { fallsOut, perHundredGramsWater, why };
  }
  const byRule = (fallsOut: boolean | undefined, why: string): Fate => ({
    fallsOut,
    perHundredGramsWater: undefined,
    why,
  });
  if (isKnownCarbonate(formula))
    return byRule(true, `${name} is a carbonate of a metal that is no alkali: insoluble by rule`);
  const rule = solubilityRule(formula);
  if (rule?.class === "insoluble") return byRule(true, `${name} is insoluble by rule: ${rule.rule}`);
  if (rule?.class === "soluble") return byRule(false, `${name} dissolves by rule: ${rule.rule}`);
  if (isOxideOfMetal(formula))
    return byRule(true, `${name} is an oxide that water does not dissolve (common practice)`);
  if (isInsolubleCyanidoferrate(formula))
    return byRule(true, `${name} is a cyanidoferrate of a heavy metal: insoluble (common practice)`);
  return byRule(undefined, `solubility of ${name}`);
}

const kept = /* @__PURE__ */ remembering<Quantity | undefined>(256);
const HUNDRED = "100 g";

/** What an amount of water keeps of a substance, in its own form; undefined where nothing is known. */
export function keptByWater(
  formula: Formula,
  water: Quantity,
  temperature: Quantity<"temperature">,
): Quantity<"mass"> | undefined {
  const perHundred = kept(`${formula} ${temperature.value} ${temperature.unit}`, () => {
    const found = tryResidual({ formula, water: HUNDRED, temperature });
    return found.ok ? found.value.mass : undefined;
  });
  return perHundred
    ?.times(water)
    .dividedBy(quantity(HUNDRED))
    .to("g")
    .named({
      symbol: `m(${nameOfFormula(formula)}, kept)`,
      label: `${nameOfFormula(formula)} that the water keeps`,
      rule: "kept = solubility for 100 g of water × water",
    });
}

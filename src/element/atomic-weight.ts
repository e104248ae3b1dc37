// Atomic weights as quantities, one shared constant per element and convention: the same weight used twice is one input,
// so its uncertainty is counted once and correlations come out right.
// Uncertainty of a published weight or interval: a rectangle, half-width / √3 (Possolo et al., Pure Appl. Chem. 90 (2018) 395).

import { lookingIn, ownRow } from "../foundation/facts";
import { isQuantity, type Quantity, type QuantityLike, quantity } from "../quantity";
import { guard, needWeightOptions } from "./argument";
import type { AtomicWeightOptions, WeightConvention } from "./convention";
import { WEIGHTS, type WeightRow } from "./data/atomic-weights";
import { cite } from "./data/sources";
import { elementIndex } from "./element";
import { ElementError } from "./error";
import { standardWeight, symbolAt } from "./symbols";

const shared = /* @__PURE__ */ new Map<string, Quantity>();

/** Difference of two decimal texts, halved, exactly, as text over 2. */
function halfWidth(lower: string, upper: string): string {
  const places = Math.max(decimals(lower), decimals(upper));
  const difference = scaled(upper, places) - scaled(lower, places);
  return `${difference}/${2n * 10n ** BigInt(places)}`;
}

function midpoint(lower: string, upper: string): string {
  const places = Math.max(decimals(lower), decimals(upper));
  return `${scaled(upper, places) + scaled(lower, places)}/${2n * 10n ** BigInt(places)}`;
}

function decimals(text: string): number {
  return text.length - text.indexOf(".") - 1;
}

function scaled(text: string, places: number): bigint {
  const point = text.indexOf(".");
  return BigInt(text.slice(0, point) + text.slice(point + 1).padEnd(places, "0"));
}

/** Value and half-width of a row under a convention, as exact texts. */
function weightTexts(
  index: number,
  row: Exclude<WeightRow, { kind: "none" }>,
  convention: WeightConvention,
): { readonly value: string; readonly halfWidth: string } {
  if (convention === "abridged") return { value: row.abridged, halfWidth: row.abridgedUncertainty };
  if (row.kind === "value") return { value: standardWeight(index), halfWidth: row.uncertainty };
  const width = halfWidth(row.lower, row.upper);
  return {
    value: convention === "midpoint" ? midpoint(row.lower, row.upper) : standardWeight(index),
    halfWidth: width,
  };
}

/** @internal The shared constant by element index. */
export function weightConstant(index: number, convention: WeightConvention, massNumberIfNone: boolean): Quantity {
  const key = `${index}/${convention}`;
  const known = shared.get(key);
  if (known !== undefined && (massNumberIfNone || WEIGHTS()[index]!.kind !== "none")) return known;
  const made = makeConstant(index, convention, massNumberIfNone);
  shared.set(key, made);
  return made;
}

function makeConstant(index: number, convention: WeightConvention, massNumberIfNone: boolean): Quantity {
  const row = WEIGHTS()[index]!;
  const element = symbolAt(index);
  const symbol = `A(${element})`;
  if (row.kind === "none") {
    if (!massNumberIfNone) {
      throw new ElementError(
        "element.no-atomic-weight",
        `${row.name} has no standard atomic weight: its natural composition is not characteristic`,
        {
          hint: `name a nuclide (the longest-lived is [${row.longestLived}${element}]), give the weight of your own material, or pass massNumberIfNone: true`,
          details: {
            symbol: element,
            longestLived: row.longestLived,
            nuclide: `[${row.longestLived}${element}]`,
          },
        },
      );
    }
    return quantity(
      { value: row.longestLived, unit: "g/mol" },
      {
        symbol,
        label: `mass number of ${row.name}-${row.longestLived}`,
        source: cite(row.source),
        assumption: `the mass number of ${row.name}-${row.longestLived}, its longest-lived nuclide, stands in for an atomic weight`,
      },
    );
  }
  const { value, halfWidth: width } = weightTexts(index, row, convention);
  const kind = convention === "conventional" && row.kind === "value" ? "standard" : convention;
  return quantity(
    { value, unit: "g/mol", halfWidth: width, distribution: "rectangular" },
    { symbol, label: `${kind} atomic weight of ${row.name}`, source: cite(row.source) },
  );
}

function ownValue(index: number, like: QuantityLike): Quantity {
  const row = WEIGHTS()[index]!;
  const naming = { symbol: `A(${symbolAt(index)})`, label: `atomic weight of ${row.name} in this material` };
  let q = quantity(like);
  // A bare number is a relative atomic mass.
  if (q.dimension !== "molar mass") q = isQuantity(like) || q.unit !== "" ? q : bareNumber(q);
  if (q.dimension !== "molar mass" || !q.isPositive()) {
    throw new ElementError("element.not-a-weight", `the atomic weight of ${row.name} must be a positive molar mass`, {
      hint: `such as "${row.kind === "none" ? row.longestLived : row.abridged} g/mol"`,
      details: { received: q.toString() },
    });
  }
  return q.named({ symbol: q.symbol ?? naming.symbol, label: q.label ?? naming.label });
}

function bareNumber(q: Quantity): Quantity {
  const u = q.standardUncertainty;
  return quantity({
    value: q.value,
    unit: "g/mol",
    ...(u === undefined ? {} : { standardUncertainty: u }),
  });
}

/**
 * Standard atomic weight of an element, as the molar mass of its atoms. The relative atomic mass is numerically the
 * same: the molar mass constant is 1 g/mol to 3 parts in 10^10.
 *
 * The standard uncertainty takes the published plus-minus or interval as a rectangle: half-width / √3. One constant is
 * shared by all callers, so that a weight used twice counts once.
 *
 * @param symbol - symbol (case matters), IUPAC name or atomic number
 * @param options - which convention, or the value of the caller's own material
 * @returns molar mass in g/mol with standard uncertainty
 * @throws {ElementError} `element.unknown`, `element.no-atomic-weight`, `element.not-a-weight`, `element.bad-option`
 * @source CIAAW standard atomic weights 2021 with the 2024 revision; uncertainty as Pure Appl. Chem. 90 (2018) 395
 * @category Elements
 * @example
 * atomicWeight("Cu").value // => 63.546
 * atomicWeight("Pb", { convention: "midpoint" }).value // => 207.04
 */
export function atomicWeight(symbol: string | number, options: AtomicWeightOptions = {}): Quantity<"molar mass"> {
  const index = elementIndex(symbol);
  needWeightOptions(options);
  if (options.value !== undefined) return ownValue(index, options.value);
  if (options.facts !== undefined) {
    const { facts, ...others } = options;
    return lookingIn(facts, guard, () => atomicWeight(symbol, others));
  }
  const own = ownRow<Quantity>("weights", () => symbolAt(index));
  if (own !== undefined) return own;
  return weightConstant(index, options.convention ?? "conventional", options.massNumberIfNone === true);
}

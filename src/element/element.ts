// The elements: number, symbol, name, and the standard atomic weight as it is published.

import { kindOf } from "../foundation/argument";
import { readable } from "../foundation/readable";
import { ATOMIC_WEIGHTS, type AtomicWeightRow, WEIGHTS } from "./data/atomic-weights";
import type { SourceKey, YearSourceKey } from "./data/sources";
import { ElementError } from "./error";
import { elementIndexOf } from "./symbols";

/** A standard atomic weight as published: decimal texts, digit for digit. */
export type StandardAtomicWeight =
  | { readonly kind: "value"; readonly value: string; readonly uncertainty: string }
  | { readonly kind: "interval"; readonly lower: string; readonly upper: string; readonly conventional: string }
  | { readonly kind: "none"; readonly longestLived: number };

/** One chemical element. */
export interface Element {
  /** Protons in the nucleus. */
  readonly atomicNumber: number;
  /** One or two letters, as in formulas. */
  readonly symbol: string;
  /** IUPAC name: aluminium, caesium, sulfur. */
  readonly name: string;
  /** For normal terrestrial material: a value, an interval, or none. */
  readonly standardAtomicWeight: StandardAtomicWeight;
  /** Five-figure value and its plus-minus; undefined without a standard weight. */
  readonly abridged: { readonly value: string; readonly uncertainty: string } | undefined;
  /** Year of the last change of the standard weight, and the source of the year. */
  readonly year: number | undefined;
  /** Key of what the year was read in; undefined without a year. */
  readonly yearSource: YearSourceKey | undefined;
  /** Key of the table the weight was read in. */
  readonly source: SourceKey;
}

/** Accepted other spellings. */
const OTHER_NAMES = /* @__PURE__ */ new Map([
  ["aluminum", "Al"],
  ["cesium", "Cs"],
  ["sulphur", "S"],
]);

function published(row: AtomicWeightRow): StandardAtomicWeight {
  switch (row.kind) {
    case "value":
      return { kind: "value", value: row.value, uncertainty: row.uncertainty };
    case "interval":
      return { kind: "interval", lower: row.lower, upper: row.upper, conventional: row.conventional };
    case "none":
      return { kind: "none", longestLived: row.longestLived };
  }
}

/** @internal Index (atomic number - 1) behind a symbol, name or atomic number. */
export function elementIndex(which: string | number): number {
  if (typeof which === "number") {
    if (Number.isInteger(which) && which >= 1 && which <= WEIGHTS().length) return which - 1;
    throw new ElementError("element.unknown", `no element has the atomic number ${which}`, {
      hint: `atomic numbers run from 1 to ${WEIGHTS().length}`,
    });
  }
  if (typeof which !== "string") {
    throw new ElementError("element.unknown", `an element is named by text or number, not ${kindOf(which)}`);
  }
  const index = elementIndexOf(which);
  if (index >= 0) return index;
  const name = which.trim().toLowerCase();
  const other = OTHER_NAMES.get(name);
  if (other !== undefined) return elementIndexOf(other);
  // One letter or two is a symbol, and case matters in symbols.
  const byName = name.length > 2 ? WEIGHTS().findIndex((row) => row.name === name) : -1;
  if (byName >= 0) return byName;
  const respelt = name.length > 0 && name.length <= 2 ? name[0]!.toUpperCase() + name.slice(1) : "";
  throw new ElementError("element.unknown", `"${which.slice(0, 40)}" is not an element`, {
    input: which.slice(0, 200),
    position: 0,
    hint: elementIndexOf(respelt) >= 0 ? `did you mean ${respelt}?` : undefined,
  });
}

/**
 * An element by symbol, IUPAC name or atomic number.
 *
 * @param which - `"Zn"` (case matters), `"zinc"`, or `30`
 * @throws {ElementError} `element.unknown`
 * @source CIAAW standard atomic weights 2021 (Pure Appl. Chem. 94 (2022) 573) with the 2024 revision
 * @category Elements
 * @example
 * element("Zn").name // => "zinc"
 * element(82).standardAtomicWeight // => { kind: "interval", lower: "206.14", upper: "207.94", conventional: "207.2" }
 */
export function element(which: string | number): Element {
  const index = elementIndex(which);
  const row = ATOMIC_WEIGHTS()[index]!;
  return readable({
    atomicNumber: index + 1,
    symbol: row.symbol,
    name: row.name,
    standardAtomicWeight: published(row),
    abridged: row.kind === "none" ? undefined : { value: row.abridged, uncertainty: row.abridgedUncertainty },
    year: row.kind === "none" ? undefined : row.year,
    yearSource: row.kind === "none" ? undefined : row.yearSource,
    source: row.source,
  });
}

/**
 * All 118 elements in order of atomic number.
 *
 * @category Elements
 * @example
 * elements().filter((e) => e.standardAtomicWeight.kind === "none").length // => 34
 */
export function elements(): Element[] {
  return WEIGHTS().map((_, index) => element(index + 1));
}

// The fast reader for everyday formulas: one pass from right to left, so a bracket's count is known before its contents.
// It reads letters, whole counts, brackets, adduct dots, a charge and a phase at the end; at anything else (and at
// anything wrong) it gives up, cleans its scratch and returns false, and the full reader (read.ts) takes over. It must
// never read what the full reader refuses or reads otherwise; test/laws holds it to that.
import { ELEMENT_COUNT, symbolTable } from "../../element/internal";
import { gcd } from "../../foundation/gcd";
import { PHASES } from "./characters";
import { MAX_COUNT, MAX_DEPTH } from "./limits";
import { isCountable, isWaterAfterWholeCount, wholeBeforePoint, wholeOfWaterCount } from "./scan-stops";

/**
 * An element with its count in one small integer, `count << CELL_BITS | element`; 0 is no cell. A formula keeps up to
 * `CELLS` of them in its own fields: it is objects that twenty thousand formulas cost, not the reading.
 */
export const CELL_BITS = 17;
export const CELL_MASK = 0x1ffff;
export const CELLS = 6;
const MAX_CELL_COUNT = 0x3fff;

/** Counts over one denominator, for what does not fit into cells. */
export interface Lists {
  readonly elementIndices: readonly number[];
  readonly numerators: readonly number[];
  readonly denominator: number;
}

/** The cells that the last successful scan found, unless there are `lists`. */
export const foundCells: Int32Array = /* @__PURE__ */ new Int32Array(CELLS);

/** What else the last successful scan found. Read it before the next scan. */
export const found = {
  lists: undefined as Lists | undefined,
  charge: 0,
  phase: undefined as string | undefined,
};

// Scratch, clean between calls: counts by element of the part being read and of the parts after it, and who was touched.
const partCount = /* @__PURE__ */ new Float64Array(ELEMENT_COUNT);
const total = /* @__PURE__ */ new Float64Array(ELEMENT_COUNT);
const touched = /* @__PURE__ */ new Uint8Array(ELEMENT_COUNT);
const touchedInAll = /* @__PURE__ */ new Uint8Array(ELEMENT_COUNT);
const multipliers = /* @__PURE__ */ new Float64Array(MAX_DEPTH);
const closers = /* @__PURE__ */ new Uint8Array(MAX_DEPTH);

/** Leave the scratch clean for the next formula. */
function giveUp(size: number, sizeInAll: number): false {
  for (let k = 0; k < size; k += 1) partCount[touched[k]!] = 0;
  for (let k = 0; k < sizeInAll; k += 1) total[touchedInAll[k]!] = 0;
  return false;
}

/** Numbers of more digits are left to the full reader. */
const MANY = 1e9;

/** Counts are in units of 1/PLACES once a decimal subscript has been met; finer ones are left to the full reader. */
const PLACES = 10_000;

/** Value of a superscript digit, or -1. */
function superscriptDigit(code: number): number {
  if (code === 0xb9) return 1;
  if (code === 0xb2 || code === 0xb3) return code - 0xb0;
  if (code === 0x2070 || (code >= 0x2074 && code <= 0x2079)) return code - 0x2070;
  return -1;
}

/** Scan `text[start, end)`; `unit` is what a count of one is counted as. */
export function scanFormula(text: string, start: number, end: number, unit = 1): boolean {
  const symbols = symbolTable();
  const last = end - 1;
  if (last < start) return false;
  let i = last;
  let phase: string | undefined;
  let code = text.charCodeAt(i);

  if (code === 41 /* ) */ && i - start > 2) {
    // any other letter alone in brackets is a symbol, or is given up below
    const from = text.charCodeAt(i - 2) === 40 /* ( */ ? i - 1 : i - 2;
    if (text.charCodeAt(from - 1) === 40 && PHASES.has(text.slice(from, i))) {
      phase = text.slice(from, i);
      i = from - 2;
      if (i < start) return false;
      code = text.charCodeAt(i);
    }
  }

  let charge = 0;
  if (code === 43 || code === 45 /* + - */) {
    const sign = code === 43 ? 1 : -1;
    let j = i - 1;
    let magnitude = 0;
    let power = 1;
    while (j >= start) {
      code = text.charCodeAt(j);
      if (code < 48 || code > 57) break;
      if (power > 1000) return false;
      magnitude += (code - 48) * power;
      power *= 10;
      j -= 1;
    }
    if (j < start) return false;
    if (code === 94 /* ^ */ || (code === 93 /* ] */ && power > 1)) {
      if (power === 1) magnitude = 1;
      else if (text.charCodeAt(j + 1) === 48) return false;
      charge = sign * magnitude;
      i = code === 94 ? j - 1 : j;
    } else if (code === 43 || code === 45 || code === 32 || power > 10)
      return false; // SO42-
    else {
      charge = sign;
      i -= 1;
    }
    if (i < start) return false;
  } else if (code === 0x207a || code === 0x207b /* ⁺ ⁻ */) {
    const sign = code === 0x207a ? 1 : -1;
    let magnitude = 0;
    let power = 1;
    let digit = 0;
    for (i -= 1; i >= start; i -= 1) {
      digit = superscriptDigit(text.charCodeAt(i));
      if (digit < 0) break;
      if (power > 1000) return false;
      magnitude += digit * power;
      power *= 10;
    }
    if (i < start) return false;
    if (power > 1 && text.charCodeAt(i + 1) === 0x2070) return false;
    charge = power === 1 ? sign : sign * magnitude;
  }

  let depth = 0;
  let multiplier = unit;
  let count = 0; // 0: no digits read
  let divisor = 1; // of the count, for a decimal
  let several = false;
  // The last atom or bracket end of the part, to tell an empty part and water.
  let partEnd = i;
  let content = false;
  let charged = charge !== 0;
  let size = 0;
  let sizeInAll = 0;

  for (;;) {
    // A part, a bracket or the text ends to the left: what was a count is a multiplier.
    code = i < start ? 46 : text.charCodeAt(i);
    if (code >= 65 && code <= 90) {
      const element = symbols[(code - 65) << 5]!;
      if (element < 0) return giveUp(size, sizeInAll);
      content = true;
      if (partCount[element] === 0) touched[size++] = element;
      if (divisor === 1) partCount[element]! += count === 0 ? multiplier : count * multiplier;
      else {
        const share = (count * multiplier) / divisor;
        if (count * multiplier > MAX_COUNT || !Number.isInteger(share)) return giveUp(size, sizeInAll);
        partCount[element]! += share;
        divisor = 1;
      }
      count = 0;
      i -= 1;
    } else if (code >= 97 && code <= 122) {
      if (i === start) return giveUp(size, sizeInAll);
      const first = text.charCodeAt(i - 1) - 65;
      if (first < 0 || first > 25) return giveUp(size, sizeInAll);
      const element = symbols[(first << 5) + code - 96]!;
      if (element < 0) return giveUp(size, sizeInAll);
      content = true;
      if (partCount[element] === 0) touched[size++] = element;
      if (divisor === 1) partCount[element]! += count === 0 ? multiplier : count * multiplier;
      else {
        const share = (count * multiplier) / divisor;
        if (count * multiplier > MAX_COUNT || !Number.isInteger(share)) return giveUp(size, sizeInAll);
        partCount[element]! += share;
        divisor = 1;
      }
      count = 0;
      i -= 2;
    } else if (code >= 48 && code <= 57) {
      if (count !== 0) return giveUp(size, sizeInAll);
      let power = 1;
      const digitsEnd = i;
      do {
        count += (code - 48) * power;
        power *= 10;
        i -= 1;
        if (power > MANY) return giveUp(size, sizeInAll);
        code = i < start ? 0 : text.charCodeAt(i);
      } while (code >= 48 && code <= 57);
      // Digits after a dot are a multiplier, and a full stop between digits may be a decimal point.
      if (code === 46 && i > start && text.charCodeAt(i - 1) >= 48 && text.charCodeAt(i - 1) <= 57) {
        if (!isWaterAfterWholeCount(text, start, i, digitsEnd, partEnd)) {
          let from = wholeBeforePoint(text, start, end, i, digitsEnd);
          if (from < 0) from = wholeOfWaterCount(text, start, i, digitsEnd, partEnd);
          if (from < 0 || power > PLACES) return giveUp(size, sizeInAll);
          if (unit === 1) {
            giveUp(size, sizeInAll);
            return scanFormula(text, start, end, PLACES);
          }
          divisor = power;
          for (i -= 1; i >= from; i -= 1) {
            count += (text.charCodeAt(i) - 48) * power;
            power *= 10;
            if (power > MANY) return giveUp(size, sizeInAll);
          }
          if (count === 0) return giveUp(size, sizeInAll);
        } else if (text.charCodeAt(i + 1) === 48) return giveUp(size, sizeInAll);
      } else if (text.charCodeAt(i + 1) === 48) return giveUp(size, sizeInAll); // zero, or a leading zero
    } else if (code >= 0x2080 && code <= 0x2089 /* ₀ ₉ */) {
      if (count !== 0) return giveUp(size, sizeInAll);
      let power = 1;
      do {
        count += (code - 0x2080) * power;
        power *= 10;
        i -= 1;
        if (power > MANY) return giveUp(size, sizeInAll);
        code = i < start ? 0 : text.charCodeAt(i);
      } while (code >= 0x2080 && code <= 0x2089);
      if (text.charCodeAt(i + 1) === 0x2080) return giveUp(size, sizeInAll);
      if (!isCountable(code)) return giveUp(size, sizeInAll);
    } else if (code === 41 || code === 93 || code === 125 /* ) ] } */) {
      if (depth >= MAX_DEPTH) return giveUp(size, sizeInAll);
      multipliers[depth] = multiplier;
      closers[depth] = code;
      depth += 1;
      if (count !== 0) {
        multiplier *= count;
        if (multiplier > MAX_COUNT) return giveUp(size, sizeInAll);
        multiplier /= divisor;
        if (!Number.isInteger(multiplier)) return giveUp(size, sizeInAll);
        divisor = 1;
        count = 0;
      }
      i -= 1;
      // An empty bracket is an error.
      const inner = text.charCodeAt(i);
      if (inner === 40 || inner === 91 || inner === 123) return giveUp(size, sizeInAll);
      // (III) is for the full reader to judge
      if ((inner === 73 || inner === 86) && code === 41) return giveUp(size, sizeInAll);
    } else if (code === 40 || code === 91 || code === 123 /* ( [ { */) {
      if (depth === 0 || count !== 0) return giveUp(size, sizeInAll);
      depth -= 1;
      const closer = closers[depth]!;
      if (closer !== (code === 40 ? 41 : code + 2)) return giveUp(size, sizeInAll);
      multiplier = multipliers[depth]!;
      content = true;
      i -= 1;
    } else if (code === 46 || code === 0xb7 || code === 42 || code === 0x2022 || code === 0x22c5) {
      if (depth !== 0 || !content) return giveUp(size, sizeInAll);
      const number = count === 0 ? 1 : count;
      if (charged) {
        if (divisor !== 1) return giveUp(size, sizeInAll);
        charge *= number;
        charged = false;
      }
      if (i < start && !several && number === 1) break;
      // The part goes into the total with its multiplier.
      several = true;
      for (let k = 0; k < size; k += 1) {
        const element = touched[k]!;
        if (total[element] === 0) touchedInAll[sizeInAll++] = element;
        // In units of 1/PLACES a divisor of four places divides any whole count, so the quotient is exact.
        total[element]! += (partCount[element]! * number) / divisor;
        partCount[element] = 0;
      }
      size = 0;
      divisor = 1;
      if (i < start) break;
      count = 0;
      content = false;
      i -= 1;
      partEnd = i;
    } else {
      return giveUp(size, sizeInAll);
    }
  }

  const counts = several ? total : partCount;
  const elements = several ? touchedInAll : touched;
  if (several) size = sizeInAll;
  let largest = 0;
  for (let k = 0; k < size; k += 1) {
    const n = counts[elements[k]!]!;
    if (n > largest) largest = n;
  }
  // All terms are positive, so a total within the safe integers vouches for every sum on the way.
  if (largest > MAX_COUNT || charge > MAX_COUNT || charge < -MAX_COUNT) return giveUp(several ? 0 : size, sizeInAll);
  if (unit === 1 && size <= CELLS && largest <= MAX_CELL_COUNT) {
    for (let k = size; k < CELLS; k += 1) foundCells[k] = 0;
    for (let k = 0; k < size; k += 1) {
      const element = elements[k]!;
      foundCells[size - 1 - k] = (counts[element]! << CELL_BITS) | element; // back into written order
      counts[element] = 0;
    }
    found.lists = undefined;
  } else found.lists = listCounts(elements, counts, size, unit);
  found.charge = charge;
  found.phase = phase;
  return true;
}

function listCounts(elements: Uint8Array, counts: Float64Array, size: number, unit: number): Lists {
  const elementIndices = new Array<number>(size);
  const numerators = new Array<number>(size);
  let common = unit;
  for (let k = 0; k < size; k += 1) {
    const element = elements[size - 1 - k]!;
    const n = counts[element]!;
    elementIndices[k] = element;
    numerators[k] = n;
    if (common !== 1) common = gcd(common, n);
    counts[element] = 0;
  }
  if (common !== 1) for (let k = 0; k < size; k += 1) numerators[k]! /= common;
  foundCells.fill(0);
  return { elementIndices, numerators, denominator: unit / common };
}

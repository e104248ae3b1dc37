// What a full stop between two digits is, for the fast reader: decimal point or adduct dot, wherever that is beyond doubt by the
// rules in dots.ts. Everything else is left to the full reader.

/** A letter or a closing bracket: what a subscript stands behind. */
export function isCountable(code: number): boolean {
  return (code >= 65 && code <= 90) || (code >= 97 && code <= 122) || code === 41 || code === 93 || code === 125;
}

/** Where the run of digits that ends at `last` begins. */
function digitsFrom(text: string, start: number, last: number): number {
  let j = last;
  while (j >= start) {
    const code = text.charCodeAt(j);
    if (code < 48 || code > 57) break;
    j -= 1;
  }
  return j + 1;
}

/**
 * `Fe0.947O`, at the point between 0 and 9: where the whole digits begin, if the full stop is beyond doubt the decimal
 * point of a subscript, else -1. Beyond doubt, in the order of the rules in dots.ts: no second stop beside it, something
 * to count before it, and then a zero after it, or nothing that could be added, or 0 or 1 in front; or no water after it
 * and either more than two decimals or a metal in front. Everything else is for dots.ts.
 */
export function wholeBeforePoint(text: string, start: number, end: number, point: number, digitsEnd: number): number {
  const from = digitsFrom(text, start, point - 1);
  const code = text.charCodeAt(from - 1);
  if (code === 46 || !isCountable(code)) return -1;
  const zero = text.charCodeAt(from) === 48;
  if (zero && point - from > 1) return -1;
  const next = digitsEnd + 1 < end ? text.charCodeAt(digitsEnd + 1) : 0;
  if (next === 46 && digitsEnd + 2 < end) {
    const after = text.charCodeAt(digitsEnd + 2);
    if (after >= 48 && after <= 57) return -1;
  }
  if (zero || (point - from === 1 && text.charCodeAt(from) === 49)) return from;
  const isLetter = next >= 65 && next <= 90;
  const addable = isLetter || next === 40 || next === 91 || next === 123;
  if (!addable || text.charCodeAt(point + 1) === 48) return from;
  // H2O, HOH and D2O begin with these letters; brackets may hold water too.
  if (!isLetter || next === 72 || next === 68) return -1;
  return digitsEnd - point > 2 || isMetalBefore(text, from) ? from : -1;
}

/** Is the symbol that ends before `at` that of a metal (or of boron, silicon or germanium, as in dots.ts)? */
function isMetalBefore(text: string, at: number): boolean {
  const last = text.charCodeAt(at - 1);
  if (last >= 65 && last <= 90) {
    // One-letter symbols: B K U V W Y; the others are H C N O F P S I.
    return last === 66 || last === 75 || last === 85 || last === 86 || last === 87 || last === 89;
  }
  if (last < 97 || last > 122) return false;
  const symbol = text.slice(at - 2, at);
  return !TWO_LETTER_NONMETALS.has(symbol);
}

const TWO_LETTER_NONMETALS: ReadonlySet<string> = /* @__PURE__ */ new Set(["Cl", "Br", "Se", "Te", "As", "At"]);

/**
 * `ZnCl2.1.5H2O`, `K2CO3*1.5H2O`, at the point between 1 and 5: where the whole digits begin, if they are beyond doubt
 * the count of water that ends a part: one decimal that is not zero, at most two whole digits, and before them a dot that
 * is not itself in doubt. Everything else is for dots.ts.
 */
export function wholeOfWaterCount(
  text: string,
  start: number,
  point: number,
  digitsEnd: number,
  partEnd: number,
): number {
  if (!isWater(text, digitsEnd, partEnd) || digitsEnd - point !== 1 || text.charCodeAt(digitsEnd) === 48) return -1;
  const from = digitsFrom(text, start, point - 1);
  const whole = point - from;
  if (from - 2 < start || whole > 2 || (whole === 2 && text.charCodeAt(from) !== 49)) return -1;
  const dot = text.charCodeAt(from - 1);
  const before = text.charCodeAt(from - 2);
  if (dot !== 46) return (dot === 42 || dot === 0xb7) && whole === 1 ? from : -1;
  if (isCountable(before)) return from;
  if (before < 48 || before > 57) return -1;
  // a.b.5H2O: with a = 0 or 1 the first stop would be a decimal point, and beyond 12 waters too.
  const a = digitsFrom(text, start, from - 2);
  if (!isCountable(text.charCodeAt(a - 1)) || text.charCodeAt(a) === 48) return -1;
  if (from - 1 - a === 1 && text.charCodeAt(a) === 49) return -1;
  return whole === 1 || text.charCodeAt(from + 1) <= 50 ? from : -1;
}

/**
 * Is `H2O` all that stands between the digits that end at `digitsEnd` and the end of the part? A full stop after it puts
 * that in doubt.
 */
function isWater(text: string, digitsEnd: number, partEnd: number): boolean {
  return (
    partEnd - digitsEnd === 3 &&
    text.charCodeAt(partEnd + 1) !== 46 &&
    text.charCodeAt(digitsEnd + 1) === 72 &&
    text.charCodeAt(digitsEnd + 2) === 50 &&
    text.charCodeAt(partEnd) === 79
  );
}

/**
 * `CuSO4.5H2O`, at the stop between 4 and 5: is it beyond doubt an adduct dot? Only when water is all that follows in the
 * part, and the digits before are a whole count of 2 or more. Everything else is for dots.ts.
 */
export function isWaterAfterWholeCount(
  text: string,
  start: number,
  dot: number,
  digitsEnd: number,
  partEnd: number,
): boolean {
  if (!isWater(text, digitsEnd, partEnd) || text.charCodeAt(dot + 1) === 48) return false;
  const from = digitsFrom(text, start, dot - 1);
  if (!isCountable(text.charCodeAt(from - 1))) return false;
  const first = text.charCodeAt(from);
  return first !== 48 && !(first === 49 && dot - from === 1);
}

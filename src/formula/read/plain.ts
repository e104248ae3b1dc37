// The plain notation of the library's own tables, read in one pass and without their structure: symbols, whole or decimal numbers,
// brackets, adduct dots, a charge after a caret. What it cannot read with certainty it leaves to the formula reader.

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isCapital = (code: number): boolean => code >= 65 && code <= 90;
const isSmall = (code: number): boolean => code >= 97 && code <= 122;

/** The atoms of one adduct part; undefined for anything but symbols, numbers and brackets. */
function partAtoms(text: string): Map<string, number> | undefined {
  const stack: Map<string, number>[] = [];
  let inner = new Map<string, number>();
  let group: ReadonlyMap<string, number> | undefined;
  let symbol = "";
  let at = 0;
  while (at < text.length) {
    const from = at;
    const code = text.charCodeAt(at++);
    if (isCapital(code)) {
      if (isSmall(text.charCodeAt(at))) at += 1;
      symbol = text.slice(from, at);
      group = undefined;
      inner.set(symbol, (inner.get(symbol) ?? 0) + 1);
    } else if (isDigit(code)) {
      while (isDigit(text.charCodeAt(at))) at += 1;
      if (text[at] === "." && isDigit(text.charCodeAt(at + 1))) {
        at += 2;
        while (isDigit(text.charCodeAt(at))) at += 1;
      }
      const more = Number(text.slice(from, at)) - 1;
      if (group !== undefined) for (const [one, count] of group) inner.set(one, inner.get(one)! + count * more);
      else if (symbol !== "") inner.set(symbol, inner.get(symbol)! + more);
      else return undefined;
      symbol = "";
      group = undefined;
    } else if (code === 40 || code === 91 || code === 123) {
      // ( [ {
      stack.push(inner);
      inner = new Map();
      symbol = "";
      group = undefined;
    } else if ((code === 41 || code === 93 || code === 125) && stack.length > 0) {
      // ) ] }
      group = inner;
      inner = stack.pop()!;
      symbol = "";
      for (const [one, count] of group) inner.set(one, (inner.get(one) ?? 0) + count);
    } else return undefined;
  }
  return stack.length === 0 ? inner : undefined;
}

/**
 * Atoms by symbol, and the charge under `e`, of a formula in the plain notation of the tables, read at once; undefined for everything
 * else, which is left to the formula reader.
 */
export function plainAtoms(text: string): Map<string, number> | undefined {
  // in CO3.10H2O the dot is no decimal point: the formula reader knows
  if (text.includes(".") && !text.includes("·")) return undefined;
  const charge = /(?:\^(\d+))?([+-])$/.exec(text);
  const body = charge === null ? text : text.slice(0, charge.index);
  const all = new Map<string, number>();
  for (const part of body.split("·")) {
    const [multiplier = ""] = /^\d+(?:\.\d+)?/.exec(part) ?? [];
    const atoms = partAtoms(part.slice(multiplier.length));
    if (atoms === undefined || atoms.size === 0) return undefined;
    for (const [symbol, count] of atoms)
      all.set(symbol, (all.get(symbol) ?? 0) + count * (multiplier === "" ? 1 : Number(multiplier)));
  }
  if (charge !== null) all.set("e", Number(charge[1] ?? 1) * (charge[2] === "+" ? 1 : -1));
  return all;
}

// A small formula reader of the tests' own: exact counts by recursion over brackets, nothing shared with the library.
// It reads what the corpus and the worked examples hold, no more.

/** Counts by symbol, charge under "charge", as fractions over one denominator. */
export interface Composition {
  readonly counts: ReadonlyMap<string, bigint>;
  readonly denominator: bigint;
}

type Count = { n: bigint; d: bigint };

const decimal = (text: string): Count => {
  const [whole, part = ""] = text.split(".");
  return { n: BigInt(whole! + part), d: 10n ** BigInt(part.length) };
};
const times = (a: Count, b: Count): Count => ({ n: a.n * b.n, d: a.d * b.d });

/** Full stops between digits that are decimal points in these texts; every other one is an adduct dot. */
const DECIMALS = /(?<=[A-Za-z)\]])(3\.99|0\.987|0\.5|0\.95)(?=[A-Z(]|$)/g;

export function compositionOf(formula: string): Composition {
  let text = formula.replace(/\((?:s|l|g|aq|cr)\)$/, "").replace(DECIMALS, (all) => all.replace(".", ","));
  const parts: [string, Count][] = [];
  let charge = 0n;
  if (text === "e-") return { counts: new Map([["charge", -1n]]), denominator: 1n };
  const written = /\^(\d*)([+-])$/.exec(text) ?? /()([+-])$/.exec(text);
  if (written !== null) {
    charge = BigInt(written[1] || "1") * (written[2] === "+" ? 1n : -1n);
    text = text.slice(0, written.index);
  }
  const walk = (piece: string, factor: Count): void => {
    for (let at = 0; at < piece.length; ) {
      let end = at + 1;
      if ("([".includes(piece[at]!)) {
        for (let depth = 1; depth > 0; end++)
          depth += "([".includes(piece[end]!) ? 1 : ")]".includes(piece[end]!) ? -1 : 0;
      } else while (end < piece.length && /[a-z]/.test(piece[end]!)) end++;
      const unit = piece.slice(at, end);
      const number = /^\d+(?:,\d+)?/.exec(piece.slice(end))?.[0] ?? "";
      const count = times(factor, decimal((number || "1").replace(",", ".")));
      if ("([".includes(unit[0]!)) walk(unit.slice(1, -1), count);
      else parts.push([unit, count]);
      at = end + number.length;
    }
  };
  // the dot of a half hydrate: CaSO4.0.5H2O
  for (const adduct of text.replace(/\.0\.5H2O/, "*0,5H2O").split(/[.·*]/)) {
    const lead = /^\d+(?:,\d+)?/.exec(adduct)?.[0] ?? "";
    walk(adduct.slice(lead.length), decimal((lead || "1").replace(",", ".")));
  }
  let denominator = 1n;
  for (const [, { d }] of parts) denominator = denominator % d === 0n ? denominator : denominator * d;
  const counts = new Map<string, bigint>();
  for (const [symbol, { n, d }] of parts) {
    counts.set(symbol, (counts.get(symbol) ?? 0n) + (n * denominator) / d);
  }
  if (charge !== 0n) counts.set("charge", charge * denominator);
  return { counts, denominator };
}

/** The species of an equation text: reactants and products. */
export function speciesOf(equation: string): [string[], string[]] {
  const [left, right] = equation.split(" -> ");
  return [left!.split(" + "), right!.split(" + ")];
}

/** Atoms and charge right less left for given coefficients, exact; every value is zero when it balances. */
export function residue(equation: string, coefficients: readonly bigint[]): Map<string, bigint> {
  const [left, right] = speciesOf(equation);
  const all = [...left, ...right].map(compositionOf);
  const common = all.reduce((product, { denominator }) => product * denominator, 1n);
  const sums = new Map<string, bigint>();
  all.forEach(({ counts, denominator }, at) => {
    const sign = at < left.length ? -1n : 1n;
    for (const [symbol, count] of counts) {
      sums.set(symbol, (sums.get(symbol) ?? 0n) + (sign * coefficients[at]! * count * common) / denominator);
    }
  });
  return sums;
}

/** The matrix of an equation, columns scaled to whole numbers. */
export function matrixOf(equation: string): bigint[][] {
  const all = speciesOf(equation).flat().map(compositionOf);
  const symbols = [...new Set(all.flatMap(({ counts }) => [...counts.keys()]))];
  return symbols.map((symbol) => all.map(({ counts }) => counts.get(symbol) ?? 0n));
}

export function gcd(values: readonly bigint[]): bigint {
  return values.reduce((a, b) => {
    while (b !== 0n) [a, b] = [b, a % b];
    return a < 0n ? -a : a;
  }, 0n);
}

// Numbers in names: multiplicative prefixes (Red Book 2005, Table IV), hydrate prefixes, Roman numerals.

const SIMPLE = ["", "mono", "di", "tri", "tetra", "penta", "hexa", "hepta", "octa", "nona", "deca", "undeca", "dodeca"];
const UNITS = ["", "hen", "do", "tri", "tetra", "penta", "hexa", "hepta", "octa", "nona"];
const TENS = [
  "",
  "deca",
  "icosa",
  "triaconta",
  "tetraconta",
  "pentaconta",
  "hexaconta",
  "heptaconta",
  "octaconta",
  "nonaconta",
];
const MULTIPLE = ["", "", "bis", "tris"];

/** Multiplicative prefix of 1 to 99: mono, di, tri ... icosa ... */
export function simplePrefix(n: number): string | undefined {
  if (!Number.isInteger(n) || n < 1 || n > 99) return undefined;
  if (n < SIMPLE.length) return SIMPLE[n];
  const tens = Math.floor(n / 10);
  const units = n % 10;
  if (units === 0) return TENS[tens];
  const ten = tens === 2 ? (units === 1 ? "henicosa" : "docosa") : undefined;
  if (tens === 2 && units <= 2) return ten;
  if (tens === 2) return `${UNITS[units]}cosa`;
  if (tens === 1) return `${UNITS[units]}deca`;
  return `${UNITS[units]}${TENS[tens]}`;
}

/** Prefix for names that hold a prefix themselves or could be misread: bis, tris, tetrakis ... */
export function multiplePrefix(n: number): string | undefined {
  if (n === 2 || n === 3) return MULTIPLE[n];
  const simple = simplePrefix(n);
  return simple === undefined ? undefined : `${simple}kis`;
}

const FRACTION_PREFIX: readonly (readonly [number, string])[] = [
  [0.5, "hemi"],
  [1.5, "sesqui"],
  [2.5, "hemipenta"],
  [3.5, "hemihepta"],
  [4.5, "hemiennea"],
  [5.5, "hemiundeca"],
];

/** `penta` for 5, `hemi` for 0.5, `sesqui` for 1.5: what stands before "hydrate". */
export function hydratePrefix(n: number): string | undefined {
  return FRACTION_PREFIX.find(([value]) => value === n)?.[1] ?? simplePrefix(n);
}

let numbers: ReadonlyMap<string, number> | undefined;

/** All prefixes and their numbers, older spellings included. */
function prefixNumbers(): ReadonlyMap<string, number> {
  if (numbers !== undefined) return numbers;
  const map = new Map<string, number>();
  for (let n = 1; n <= 99; n += 1) map.set(simplePrefix(n)!, n);
  for (const [old, n] of [
    ["ennea", 9],
    ["hendeca", 11],
    ["eicosa", 20],
    ["heneicosa", 21],
  ] as const)
    map.set(old, n);
  numbers = map;
  return map;
}

/** Number of a simple prefix, `undefined` if it is none. */
export function simpleNumber(prefix: string): number | undefined {
  return prefixNumbers().get(prefix);
}

/** Number of bis, tris, tetrakis ... */
function multipleNumber(prefix: string): number | undefined {
  if (prefix === "bis") return 2;
  if (prefix === "tris") return 3;
  return prefix.endsWith("kis") ? simpleNumber(prefix.slice(0, -3)) : undefined;
}

/** Number of a hydrate prefix: hemi, mono, sesqui, hemipenta, penta ... or digits. */
export function hydrateNumber(prefix: string): number | undefined {
  if (/^\d+(\.\d+)?$/.test(prefix)) return Number(prefix);
  if (/^\d+\/\d+$/.test(prefix)) {
    const [over, under] = prefix.split("/").map(Number);
    return over! / under!;
  }
  return (
    FRACTION_PREFIX.find(([, name]) => name === prefix)?.[0] ??
    simpleNumber(prefix) ??
    (prefix === "hemitri" ? 1.5 : undefined)
  );
}

/** Prefixes a word begins with, longest first, each with the rest of the word. */
export function* leadingPrefixes(word: string): Generator<{ n: number; rest: string; multiple: boolean }> {
  const found: { n: number; rest: string; multiple: boolean; length: number }[] = [];
  for (const [prefix, n] of prefixNumbers()) {
    if (word.startsWith(prefix))
      found.push({ n, rest: word.slice(prefix.length), multiple: false, length: prefix.length });
    // an elided a: pentoxide, heptoxide
    const short = prefix.endsWith("a") || prefix === "mono" ? prefix.slice(0, -1) : undefined;
    if (short !== undefined && /^o/.test(word.slice(short.length)) && word.startsWith(short))
      found.push({ n, rest: word.slice(short.length), multiple: false, length: short.length });
  }
  for (const match of [/^(bis|tris|[a-z]+?kis)(.*)$/.exec(word)]) {
    const n = match === null ? undefined : multipleNumber(match[1]!);
    if (n !== undefined) found.push({ n, rest: match![2]!, multiple: true, length: match![1]!.length });
  }
  found.sort((a, b) => b.length - a.length);
  for (const { n, rest, multiple } of found) yield { n, rest, multiple };
}

const ROMAN = ["0", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX"];

/** Roman numeral of an oxidation number, minus sign in front of a negative one. */
export function roman(n: number): string {
  const numeral = ROMAN[Math.abs(n)]!;
  return n < 0 ? `-${numeral}` : numeral;
}

/** Number of a Roman numeral in any case, `undefined` if it is none. */
export function romanNumber(text: string): number | undefined {
  const negative = text.startsWith("-");
  const at = ROMAN.indexOf((negative ? text.slice(1) : text).toUpperCase());
  return at < 0 ? undefined : negative ? -at : at;
}

// Is the full stop in `a.b` a decimal point or an adduct dot? The full stop is both in practice: `CuSO4.5H2O` is five
// waters, `UO2.25` a subscript. What is typed with a middle dot is never in doubt; these rules are for the full stop
// between two digits, in order (each looks at most WINDOW characters around, so reading stays linear):
//
//   1. chain a.b.c        ZnCl2.1.5H2O -> .1.5 waters;  Fe0.95.2H2O, O16.5.10H2O -> subscript, then a dot
//   2. b is a fraction, or stands apart   CaSO4.1/2H2O, CaSO4.1½H2O, Na2SO4.10 H2O -> adduct
//   3. b begins with 0    Fe7.016S8, Mg3.00Si4 -> decimal
//   4. nothing to add     UO2.25, (UO2.25)2, UO2.25^2+ -> decimal
//   5. a is 0 or 1, 01... Fe0.947O, Cu1.75S -> decimal (a subscript 1 is not written)
//   6. water follows      CuSO4.5H2O, CaO2.8H2O, MgSO4.7(H2O) -> adduct
//   7. b is long          Si2.633Al, O2.67F (over 2 digits, or over 30) -> decimal
//   8. metal before       Na0.3Al2.3Si3.7O10, Fe2.5S4 -> decimal (a whole compound does not end in a metal)
//   9. decimals around    Fe(OH)2.7Cl0.3, Ca9.316(PO4)4.8(CO3)1.2 -> decimal
//  10. no compound beside it: one element before or after, an anion first, a metal last
//                         Ti2O2.5F, O16.5(OH), Fe2.5S, O6.5Cl2 -> decimal
//  11. otherwise          Al2O3.2SiO2, 2Na2CO3.3H2O2, PbSO4.3PbO -> adduct
import { DOTS, isDigit, isLower, isUpper, PARTNER } from "./characters";

const WINDOW = 200;
const WATER = /^(?:H2O|D2O|H₂O|\(H2O\)|\[H2O\]|HOH|OH2|H_2O|H_\{2\}O)(?![A-Za-z0-9_.(]|\.\d)/;
const CATION_GROUP = /^.(?:NH4|N2H|NH3|C\d|CH3|UO2|VO|H3O|Hg2|PH4|HN)/;
const ANION_FIRST = /^(?:O[^sr]|F[^er]|Cl(?![FO])|Br(?![FO])|I(?![nrFO])|OH)/;
const NONMETALS = /* @__PURE__ */ new Set(/* @__PURE__ */ "H C N O F P S Cl Se Br I Te As At D T".split(" "));

/** What the reader knows when it meets the full stop. */
interface DotContext {
  /** Start of the digits `a`. */
  readonly start: number;
  /** Symbol before `a`, or `)` or `]` after a group, or nothing at the start of a part. */
  readonly before: string;
  /** How many atoms and groups the part has so far. */
  readonly members: number;
  /** Did a subscript of this part hold a decimal point? */
  readonly decimals: boolean;
}

/** True if the full stop at `dot`, between two digits of a subscript, is a decimal point. */
export function isDecimalPoint(text: string, dot: number, context: DotContext): boolean {
  const a = text.slice(context.start, dot);
  let end = dot + 1;
  while (isDigit(text.charCodeAt(end))) end += 1;
  const b = text.slice(dot + 1, end);
  const next = text[end] ?? "";
  const aIsSmall = a[0] === "0" || a === "1";

  if (next === "." && isDigit(text.charCodeAt(end + 1))) return isDecimalInChain(text, end, b, aIsSmall);
  if (next === "/" || /[¼-¾⅓-⅞]/.test(next)) return false;
  if (b[0] === "0") return true;
  if (next === " " || next === "\u00a0") {
    // `Na2SO4.10 H2O`: a multiplier may stand apart from what it counts, a subscript not from what follows.
    let after = end + 1;
    while (after < text.length && after - end < 8 && /\s/.test(text[after]!)) after += 1;
    if (isUpper(text.charCodeAt(after)) || "([{".includes(text[after] ?? " ")) return aIsSmall;
  }
  const code = next.charCodeAt(0);
  const opens = next === "(" || next === "[" || next === "{";
  if (!isUpper(code) && !opens) return true;
  if (aIsSmall) return true;
  const rest = text.slice(end, end + WINDOW);
  if (WATER.test(rest)) return false;
  if (Number(b) > 30) return true;
  if (context.before !== ")" && context.before !== "]" && !NONMETALS.has(context.before)) return true;
  if (context.decimals || context.members < 2) return true;
  return !beginsCompound(rest);
}

/** `a.b.c`: a small multiplier with a short fraction is read as one number; otherwise the second stop is the dot. */
function isDecimalInChain(text: string, second: number, b: string, aIsSmall: boolean): boolean {
  let end = second + 1;
  while (isDigit(text.charCodeAt(end))) end += 1;
  const c = text.slice(second + 1, end);
  if (aIsSmall) return true;
  if (text[end] === "." && isDigit(text.charCodeAt(end + 1))) return true; // a.b . c.d
  if (b.length > 2 || Number(b) > 12 || (b.length > 1 && b[0] === "0")) return true;
  return c.length > 1 && c.endsWith("0");
}

/** Does the text read like a compound of its own: two elements or more, cation first, anion last, no decimals? */
function beginsCompound(rest: string): boolean {
  if (ANION_FIRST.test(rest)) return false;
  if (/^[([{]/.test(rest) && !CATION_GROUP.test(rest)) return false;
  const symbols = new Set<string>();
  let last = "";
  let depth = 0;
  for (let i = 0; i < rest.length; i += 1) {
    const character = rest[i]!;
    const code = rest.charCodeAt(i);
    if (isUpper(code)) {
      last = isLower(rest.charCodeAt(i + 1)) ? rest.slice(i, i + 2) : character;
      symbols.add(last);
    } else if (character === "(" || character === "[" || character === "{") depth += 1;
    else if (PARTNER[character] !== undefined) {
      depth -= 1;
      if (depth < 0) break;
      last = ")";
    } else if (character === ".") {
      // A plain decimal further on (0.3, 1.2, 2.05) marks a non-stoichiometric formula.
      let from = i;
      while (isDigit(rest.charCodeAt(from - 1))) from -= 1;
      const whole = rest.slice(from, i);
      if (whole !== "" && isDigit(rest.charCodeAt(i + 1))) {
        const chain = rest[i + 1] === "0" && rest[i + 2] === ".";
        if (whole === "1" || whole[0] === "0" || (rest[i + 1] === "0" && !chain)) return false;
      }
      break;
    } else if (DOTS.includes(character) || character === " ") break;
  }
  return symbols.size >= 2 && (last === ")" || NONMETALS.has(last));
}

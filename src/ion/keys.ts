// One text per substance for looking formulas up in tables: composition where that decides, the constitution where isomers are
// likely. Cheaper than the identity of everything, and the parts of an adduct stay apart.
import type { Formula } from "../formula";
import { constitutionOf } from "./constitution";
import { compositionKey, isWater, type Notation, type Part } from "./notation";

const MOLECULE_SYMBOLS: ReadonlySet<string> = /* @__PURE__ */ new Set(
  /* @__PURE__ */ "C H N O S P F Cl Br I".split(" "),
);

/** Is a formula one of these substances, however it is written? Crystal water counts. */
export function isOneOf(formula: Formula, ...substances: readonly string[]): boolean {
  if (formula.charge !== 0) return false;
  const { identity } = constitutionOf(formula);
  return substances.some((one) => constitutionOf(one).identity === identity);
}

/** Carbon with hydrogen and no metal: isomers are likely, so it counts what it is made of. */
function isOrganic({ counts }: Part): boolean {
  if (!counts.has("C") || !counts.has("H")) return false;
  for (const symbol of counts.keys()) if (!MOLECULE_SYMBOLS.has(symbol)) return false;
  return true;
}

/** One text per formula whatever the order of atoms and of parts: what the tables are looked up by. */
export function formulaKey(notation: Notation): string {
  const parts = notation.parts.map((part) => {
    const key = isOrganic(part) ? constitutionOf(part.text).identity : compositionKey(part.counts);
    return `${Number(part.multiplier.toFixed(6))}*${key}`;
  });
  return parts.sort().join(" . ") + (notation.charge === 0 ? "" : ` ^${notation.charge}`);
}

/** The key without crystal water, and the water per formula unit. */
export function anhydrousKey(notation: Notation): { key: string; water: number } {
  let water = 0;
  const rest: Part[] = [];
  for (const part of notation.parts) {
    if (isWater(part)) water += part.multiplier;
    else rest.push(part);
  }
  if (rest.length === 0) return { key: formulaKey(notation), water: 0 };
  return { key: formulaKey({ parts: rest, charge: notation.charge }), water };
}

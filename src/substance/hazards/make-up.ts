// What one part of a formula is made of, as far as its danger hangs on it: ions, acid, ammonia and cyanide. The ion layer reads
// it, so that no spelling hides anything.
import { parseFormula } from "../../formula";
import { type Constitution, constitutionOf } from "../../ion";
import { type Notation, type Part, readNotation, type Unit } from "../../ion/internal";
import { HOLDS_CYANIDE } from "../data/hazard-classes";

/** The ions and groups of a part. */
export interface MakeUp {
  /** Symbol of the element of a cation with its charge; `NH4` and other polyatomic ones by formula. */
  readonly cations: readonly { readonly symbol: string; readonly charge: number }[];
  /** Names of the anions, and of those after hydrogen salts; of an acid its anion. */
  readonly groups: readonly string[];
  readonly isAcid: boolean;
  /** Ammonia by itself or bound to a metal; ammonium is among the groups. */
  readonly ammonia: boolean;
  /** `free` where an acid sets hydrogen cyanide free at once, `fast` in a hexacyanidoferrate and its kin. */
  readonly cyanide: "free" | "fast" | undefined;
  /** An anion of carbon and hydrogen, or an oxalate. */
  readonly hasOrganicAnion: boolean;
  /** What it may be, where several substances share the composition that is written. */
  readonly readings: readonly string[];
}

/** Groups of atoms that stand in brackets, at any depth. */
function* bracketed(units: readonly Unit[]): Generator<string> {
  for (const { text, members } of units) {
    if (members === undefined) continue;
    yield text;
    yield* bracketed(members);
  }
}

/** Carbon with hydrogen, in the formula of an ion as the tables write it. */
const ORGANIC = /^(?=.*C(?![a-z]))(?=.*H)|^C2O4/;

/** Which cyanide it is: the number of cyanides for each atom of a metal that holds them fast. */
function cyanideIn(part: Part, groups: readonly string[]): MakeUp["cyanide"] {
  if (groups.some((name) => /cyanido/.test(name))) return "fast";
  const written = [...bracketed(part.units)].some((text) => text === "CN" || text === "NC");
  if (!groups.includes("cyanide") && !written) return undefined;
  const cyanides = Math.min(part.counts.get("C") ?? 0, part.counts.get("N") ?? 0);
  const fast = Object.entries(HOLDS_CYANIDE).some(([symbol, least]) => {
    const atoms = part.counts.get(symbol);
    return atoms !== undefined && cyanides / atoms >= least;
  });
  return fast ? "fast" : "free";
}

/** The same with every nuclide as its element: heavy hydrogen burns, and [13C] poisons, as the common atom does. */
export function asElements(notation: Notation): Notation {
  if (!notation.parts.some(({ counts }) => [...counts.keys()].some((symbol) => /^\[|^[DT]$/.test(symbol))))
    return notation;
  const texts = notation.parts.map(({ multiplier, text }) => {
    const plain = text.replace(/\[\d+([A-Z][a-z]?)\]/g, "$1").replace(/[DT](?![a-z])/g, "H");
    return multiplier === 1 ? plain : `${multiplier}${plain}`;
  });
  return { ...readNotation(texts.join("·")), charge: notation.charge };
}

/** `ClO^-`: the part with the charge of an ion. */
const charged = (text: string, charge: number): string =>
  charge === 0 ? text : `${text}^${Math.abs(charge)}${charge < 0 ? "-" : "+"}`;

/** What a part is made of, or an ion of that charge. */
export function makeUpOf(part: Part, charge = 0): MakeUp {
  const { kind, cations, anions, groups, ligands, readings }: Constitution = constitutionOf(
    parseFormula(charged(part.text, charge)),
  );
  const isHydron = kind === "ion" && cations.some(({ formula }) => formula === "H+" || formula === "H3O+");
  const isAmmonia = part.counts.size === 2 && part.counts.get("N") === 1 && part.counts.get("H") === 3;
  return {
    cations: cations.map(({ formula, element, charge }) => ({
      symbol: element ?? formula.replace(/\^\d+[+-]$|[+-]$/, ""),
      charge,
    })),
    groups,
    isAcid: kind === "acid" || isHydron,
    ammonia: isAmmonia || groups.includes("ammine") || ligands.some(({ formula }) => formula === "NH3"),
    cyanide: cyanideIn(part, groups),
    hasOrganicAnion: anions.some(({ formula }) => ORGANIC.test(formula)) && !groups.includes("hydrogencarbonate"),
    readings,
  };
}

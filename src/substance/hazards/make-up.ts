// What a formula or one part of it is made of, as far as danger, waste, drying and fire hang on it: ions, acid, ammonia, cyanide,
// carbon that burns. The ion layer reads it, so that no spelling hides anything.
import { type Formula, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { type Constitution, constitutionOf } from "../../ion";
import {
  bareIon,
  chargedText,
  countsOf,
  elementOfAtom,
  type Notation,
  type Part,
  readNotation,
  type Unit,
  unitsText,
} from "../../ion/internal";
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
  /** An anion whose carbon chars or burns. */
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

/** Anions whose carbon does not burn: carbonates, cyanides, cyanates, carbides. */
const NOT_ORGANIC: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "CO3^2-",
  "HCO3-",
  "CN-",
  "SCN-",
  "SeCN-",
  "OCN-",
  "CNO-",
  "CN2^2-",
  "C2^2-",
  "C^4-",
  "CS3^2-",
]);

/** Does the carbon of an anion char or burn? Cyanides bound to a metal have as much nitrogen as carbon. */
function isOrganicAnion(anion: string): boolean {
  if (NOT_ORGANIC.has(anion)) return false;
  const formula = parseFormula(anion);
  const carbon = formula.count("C");
  return carbon.n !== 0n && (formula.count("H").n !== 0n || !carbon.equals(formula.count("N")));
}

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
  const isElement = (symbol: string): boolean => elementOfAtom(symbol) === symbol;
  if (notation.parts.every(({ counts }) => [...counts.keys()].every(isElement))) return notation;
  const common = (units: readonly Unit[]): Unit[] =>
    units.map((unit) => {
      if (unit.members === undefined) return { ...unit, text: elementOfAtom(unit.text) };
      const members = common(unit.members);
      return { ...unit, members, text: unitsText(members) };
    });
  const parts = notation.parts.map((part) => {
    const units = common(part.units);
    return { ...part, units, counts: countsOf(units), text: unitsText(units) };
  });
  return { ...notation, parts };
}

/** What a part is made of, or an ion of that charge. */
export function makeUpOf(part: Part, charge = 0): MakeUp {
  const { kind, cations, anions, groups, ligands, readings }: Constitution = constitutionOf(
    parseFormula(chargedText(part.text, charge)),
  );
  const isHydron = kind === "ion" && cations.some(({ formula }) => formula === "H+" || formula === "H3O+");
  const isAmmonia = part.counts.size === 2 && part.counts.get("N") === 1 && part.counts.get("H") === 3;
  return {
    cations: cations.map(({ formula, element, charge }) => ({
      symbol: element ?? bareIon(formula),
      charge,
    })),
    groups,
    isAcid: kind === "acid" || isHydron,
    ammonia: isAmmonia || groups.includes("ammine") || ligands.some(({ formula }) => formula === "NH3"),
    cyanide: cyanideIn(part, groups),
    hasOrganicAnion: anions.some(({ formula }) => isOrganicAnion(formula)),
    readings,
  };
}

/** What a whole formula is made of. */
interface MadeOf {
  /** Names of its anions, and of those after hydrogen salts. */
  readonly groups: ReadonlySet<string>;
  readonly ammonium: boolean;
  /** Ammonia by itself, or bound to a metal. */
  readonly ammonia: boolean;
  readonly cyanide: MakeUp["cyanide"];
  /** Carbon beside that of carbonates and cyanides. */
  readonly organic: boolean;
  /** A metal with its ligands that stays together in water. */
  readonly complex: boolean;
}

const remembered = /* @__PURE__ */ remembering<MadeOf>(500);

/** What a formula is made of, all its parts together. */
export const madeOf = (formula: Formula): MadeOf => remembered(formula.toString(), () => addedUp(formula));

function addedUp(formula: Formula): MadeOf {
  const { kind, groups, anions, complex } = constitutionOf(formula);
  const parts = readNotation(formula).parts.map((part) => makeUpOf(part));
  const cyanides = parts.map((one) => one.cyanide);
  const isMolecule = kind === "molecule" || kind === "open";
  return {
    groups: new Set(groups),
    ammonium: groups.includes("ammonium"),
    ammonia: parts.some((one) => one.ammonia),
    cyanide: cyanides.includes("free") ? "free" : cyanides.includes("fast") ? "fast" : undefined,
    organic: isMolecule
      ? formula.count("C").n !== 0n && formula.count("H").n !== 0n
      : anions.some((anion) => isOrganicAnion(anion.formula)),
    complex: complex !== undefined || cyanides.includes("fast"),
  };
}

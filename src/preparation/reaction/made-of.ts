// What a formula is made of, as far as waste, drying and fire ask: its groups by name, ammonia, cyanide, carbon that burns.
// Constitution decides; the letters of a formula decide nothing.
import { type Formula, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { readNotation } from "../../ion/internal";
import { makeUpOf } from "../../substance/internal";

/** What a formula is made of. */
interface MadeOf {
  /** Names of its anions, and of those after hydrogen salts. */
  readonly groups: ReadonlySet<string>;
  readonly ammonium: boolean;
  /** Ammonia by itself, or bound to a metal. */
  readonly ammonia: boolean;
  /** `fast` in a hexacyanidoferrate and its kin. */
  readonly cyanide: "free" | "fast" | undefined;
  /** Carbon beside that of carbonates and cyanides. */
  readonly organic: boolean;
  /** A metal with its ligands that stays together in water. */
  readonly complex: boolean;
}

/** Compositions of anions whose carbon does not burn: carbonates, cyanides, cyanates, carbides. */
const NOT_ORGANIC: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "CO3",
  "CHO3",
  "CN",
  "CNS",
  "CNSe",
  "CNO",
  "CN2",
  "C2",
  "C",
  "CS3",
]);

/** An anion with carbon that chars or burns; cyanides bound to a metal have as much nitrogen as carbon. */
function burns(anion: Formula): boolean {
  const carbon = anion.count("C");
  return carbon.n !== 0n && !NOT_ORGANIC.has(withoutCharge(anion)) && !carbon.equals(anion.count("N"));
}

const withoutCharge = ({ compositionText }: Formula): string => compositionText.replace(/\^.*$|[+-]$/, "");

const remembered = /* @__PURE__ */ remembering<MadeOf>(500);

export const madeOf = (formula: Formula): MadeOf => remembered(formula.toString(), () => worked(formula));

function worked(formula: Formula): MadeOf {
  const { kind, groups, anions, complex } = constitutionOf(formula);
  const parts = readNotation(formula).parts.map(makeUpOf);
  const cyanides = parts.map((one) => one.cyanide);
  const isMolecule = kind === "molecule" || kind === "open";
  return {
    groups: new Set(groups),
    ammonium: groups.includes("ammonium"),
    ammonia: parts.some((one) => one.ammonia),
    cyanide: cyanides.includes("free") ? "free" : cyanides.includes("fast") ? "fast" : undefined,
    organic: isMolecule
      ? formula.count("C").n !== 0n && formula.count("H").n !== 0n
      : anions.some((anion) => burns(parseFormula(anion.formula))),
    complex: complex !== undefined || cyanides.includes("fast"),
  };
}

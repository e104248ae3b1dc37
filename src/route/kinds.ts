// Kinds of compound that routes speak of: bases, salts, sources, and the ions behind them.
import { remembering } from "../foundation/memo";
import { acidOfAnion, elementOfIon } from "../ion/internal";
import { type Compound, falls, keyOf } from "./compound";

export const ALKALI = new Set(["Na+", "K+", "NH4+", "Li+"]);
export const BASIC = new Set(["OH-", "O^2-", "CO3^2-", "HCO3-"]);
export const CARBONATES = new Set(["CO3^2-", "HCO3-"]);
export const STRONG = ["HCl", "H2SO4", "HNO3"];
export const AMMONIUM = "NH4+";
export const AMMONIA = "NH3";

export const elementOf = (cation: string): string => elementOfIon(cation) ?? "";

/** Bases dissolve where each of their anions is one. */
export const isBase = ({ made: { anions, cations, ligands } }: Compound): boolean =>
  cations.length === 1 &&
  ligands.length === 0 &&
  anions.length > 0 &&
  anions.every(({ formula }) => BASIC.has(formula));

/** A salt of plain ions; a complex that stays together as one of them is an ion like others. */
export const isSalt = ({ made }: Compound): boolean =>
  made.kind === "salt" &&
  (made.complex === undefined || made.anions.some(({ formula }) => formula === made.complex!.formula)) &&
  made.ligands.length === 0 &&
  made.molecules.length === 0;

/** The metals that acids and salts take to which ion. */
export const ION_OF_METAL: Readonly<Record<string, string>> = {
  Mg: "Mg^2+",
  Al: "Al^3+",
  Mn: "Mn^2+",
  Zn: "Zn^2+",
  Fe: "Fe^2+",
  Co: "Co^2+",
  Ni: "Ni^2+",
  Sn: "Sn^2+",
  Cu: "Cu^2+",
  Ag: "Ag+",
  Ca: "Ca^2+",
  Bi: "Bi^3+",
};
/** The ion from which peroxide makes a higher one. */
export const LOWER: Readonly<Record<string, string>> = { "Fe^3+": "Fe^2+" };
/** Oxides that take up water by themselves. */
export const SLAKES = new Set(["Ca^2+", "Sr^2+", "Ba^2+"]);
/** Metals that set a nobler one free. */
export const CEMENTS = ["Fe", "Zn", "Al", "Cu", "Mg"];

/** A salt that somebody would use as a source: soluble, neither base nor acid. */
export const isSource = (one: Compound): boolean =>
  isSalt(one) && one.made.anions.length === 1 && !BASIC.has(one.made.anions[0]!.formula) && falls(one) === false;

/** Acid that has an anion, by composition; carbon dioxide for carbonates. */
const acidsOf = /* @__PURE__ */ remembering<string | undefined>(300);

export function acidKey(anion: string): string | undefined {
  return acidsOf(anion, () => {
    if (CARBONATES.has(anion)) return keyOf("CO2");
    return keyOf(acidOfAnion(anion));
  });
}

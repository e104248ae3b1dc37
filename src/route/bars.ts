// What a family of reactions asks of its product and feeds beyond its slots, before any engine is asked; where figures tell why,
// they are worked out when somebody reads the reason.

import { saltFormula } from "../ion/internal";
import { type Compound, falls, formOf, hasCation, keyOf } from "./compound";
import { CARRIERS, type FamilyRow } from "./data/families";
import { isCongruent } from "./feeds";
import { AMMONIUM, CARBONATES, elementOf, SLAKES, STRONG } from "./kinds";
import { figure, gramsAt, hardlyDissolves, pKaOf, TABLES } from "./known-figures";
import { PAIR, pairBar } from "./salt-pair";
import type { Bar, Why } from "./why";

/** Last pKa of an acid that a strong one leaves in its precipitate. */
const STILL_PRECIPITATES = 4.5;
/** From this pKa on an acid keeps its hydron against carbonate. */
const TOO_WEAK = 11;
/** Metals whose hydroxide and carbonate air oxidises. */
const OXIDISED_BY_AIR = new Set(["Fe^2+", "Mn^2+"]);
/** Metals whose bromides and iodides give basic salts with lye, of which no constant is known. */
const BASIC_HALIDES = new Set(["Zn^2+", "Cu^2+"]);
const HALIDES = new Set(["Br-", "I-"]);

/** Salts of magnesium that take potassium or ammonium along. */
const TAKES_ALONG = new Set(["F-", "HPO4^2-", "PO4^3-"]);
/** Metals whose phosphate takes ammonium along. */
const AMMONIUM_PHOSPHATES = new Set(["Mg^2+", "Zn^2+", "Mn^2+", "Co^2+", "Ni^2+", "Fe^2+"]);
const PHOSPHATES = new Set(["PO4^3-", "HPO4^2-"]);
/** Anions of solids that turn into apatite, or into nothing. */
const INERT = new Set(["PO4^3-", "HPO4^2-", "SiO3^2-"]);
const EARTHS = new Set(["Mg^2+", "Ca^2+", "Sr^2+", "Ba^2+"]);

const isCarbonate = ({ made }: Compound): boolean =>
  made.anions.length > 0 && made.anions.every(({ formula }) => CARBONATES.has(formula));

/** Why a solid is not turned into another one. */
function notTurned(product: Compound, solid: Compound): string | undefined {
  if (OXIDISED_BY_AIR.has(product.cation!)) return "so long in an alkaline liquor, air oxidises it";
  if (EARTHS.has(product.cation!) && [product, solid].some(({ anion }) => INERT.has(anion ?? "")))
    return "what forms is apatite, or the solid does not react";
  return undefined;
}

/** Metals that come out of water clean and fast; nickel, cobalt and what is baser bring hydrogen and basic salts. */
const SET_FREE = new Set(["Ag", "Cu", "Bi", "Sn"]);
/** By metals that water and the acid of the salt leave alone for so long: not magnesium, not manganese. */
const VOLTS_APART: Readonly<Record<string, readonly string[]>> = {
  Fe: ["Ag", "Cu", "Bi"],
  Zn: ["Ag", "Cu", "Bi", "Sn"],
  Al: ["Ag", "Cu", "Bi", "Sn"],
  Cu: ["Ag"],
};

/** Does a metal set another free from its salt? Aluminium does where chloride breaks its film. */
function setsFree(metal: Compound, salt: Compound): boolean {
  const [symbol, nobler] = [metal.forms[0]!, elementOf(salt.cation ?? "")];
  if (!SET_FREE.has(nobler) || VOLTS_APART[symbol]?.includes(nobler) !== true) return false;
  return symbol !== "Al" || salt.anion === "Cl-";
}

/** Does it come out of a cold liquor, so that a filter parts it from the salt? */
const isSparing = (product: Compound): boolean => {
  const grams = gramsAt(formOf(product), "20 °C");
  return falls(product) === true || (grams !== undefined && grams <= PAIR.acid);
};

/** pH where a drop of lye falls in: 0.01 mol/L of hydroxide. */
const WHERE_LYE_FALLS = 12;

/** What of an acid has given its hydron at a pH. */
const freedAt = (pH: number, pKa: number): number => 1 / (1 + 10 ** (pKa - pH));

/** Ammonium in lye: how much of it is ammonia. */
export const ammoniaLeaves = (): Bar => {
  const pKa = pKaOf("acid", AMMONIUM)!;
  const share = freedAt(WHERE_LYE_FALLS, pKa);
  return {
    text: `lye sets the ammonia of an ammonium salt free: half of the ammonium is ammonia at pH ${pKa.toFixed(1)}, and ${(100 * share).toPrecision(3)} % of it where lye falls in, at pH ${WHERE_LYE_FALLS}; heat drives it out`,
    numbers: [
      figure(pKa, "", "pKa of ammonium"),
      figure(share, "", `share of the ammonium that is ammonia at pH ${WHERE_LYE_FALLS}`),
    ],
    source: TABLES,
  };
};

/** The last hydron of an acid, too weak for carbonate. */
const carbonateIsTooWeak =
  (anion: string): Why =>
  () => {
    const [acid, carbonate] = [pKaOf("base", anion)!, pKaOf("base", "CO3^2-")!];
    return {
      text: `carbonate is not a strong enough base for the last proton of this acid, pKa ${acid.toFixed(1)} against ${carbonate.toFixed(1)} of hydrogencarbonate: it needs a lye`,
      numbers: [figure(acid, "", "last pKa of the acid"), figure(carbonate, "", "pKa of hydrogencarbonate")],
      source: TABLES,
    };
  };

/** What a family asks beyond its slots, before any engine is asked: why it does not serve, or undefined. */
export function barOf({ code }: FamilyRow, product: Compound, feeds: readonly Compound[]): Why | undefined {
  const [a, b] = feeds;
  const unless = (serves: boolean, why: string): string | undefined => (serves ? undefined : why);
  switch (code) {
    case "neutralise":
    case "neutralise-acid-salt":
      if ([a!, b!].some(isCarbonate) && (pKaOf("base", product.anion!) ?? 0) > TOO_WEAK)
        return carbonateIsTooWeak(product.anion!);
      if (code === "neutralise-acid-salt") return undefined;
      return unless(
        b!.key !== keyOf("CO2") ||
          falls(a!) === false ||
          a!.made.kind === "molecule" ||
          (a!.anion === "OH-" && SLAKES.has(a!.cation!)),
        "carbon dioxide is absorbed by what dissolves: a lye, a soda, ammonia, milk of lime",
      );
    case "salt-pair":
      return pairBar(product, a!, b!);
    case "complex":
      return unless(
        a!.anion !== undefined && (gramsAt(saltFormula(b!.cation!, a!.anion), "20 °C") ?? 0) >= PAIR.stays,
        "the other salt crystallises with it",
      );
    case "keep-filtrate":
      if (product.cation === "Sn^2+") return "without its acid tin turns basic";
      return unless(
        a!.anion !== undefined &&
          (product.anion === "OH-" ? a!.anion === "CO3^2-" : falls(b!) === false) &&
          CARRIERS.some((row) => row.cation === b!.cation && row.takes.includes(a!.anion!)),
        "nothing precipitates that could be filtered off",
      );
    case "set-acid-free":
      return unless(isSparing(product), "the acid stays dissolved beside the salt");
    case "metal-and-acid": {
      if (b!.key === keyOf("HNO3")) return "nitric acid oxidises by its nitrogen, not by its hydrogen";
      const symbol = a!.forms[0]!;
      const isSlow =
        symbol === "Ni" ||
        (symbol === "Co" && !STRONG.some((acid) => keyOf(acid) === b!.key)) ||
        (symbol === "Sn" && b!.key !== keyOf("HCl"));
      return unless(!isSlow, "the metal dissolves in this acid so slowly that nobody waits for it");
    }
    case "precipitate-hydroxide":
      if (b!.anion === "OH-" && a!.made.cations.some(({ formula }) => formula === AMMONIUM)) return ammoniaLeaves;
      if (product.cation === "Al^3+" && b!.cation === "Li+") return "lithium goes into the hydroxide of aluminium";
      return unless(
        !(BASIC_HALIDES.has(product.cation!) && HALIDES.has(a!.anion ?? "")),
        "what basic bromide or iodide comes first is not known",
      );
    case "precipitate-by-acid":
      return unless(
        (pKaOf("base", product.anion!) ?? 0) <= STILL_PRECIPITATES,
        "the acid that is set free keeps it dissolved",
      );
    case "displace":
      return unless(
        product.cation !== "Al^3+" && setsFree(a!, b!),
        "it does not set that metal free from water, or its film keeps it",
      );
    case "cement":
      return unless(setsFree(b!, a!), "it does not set that metal free from water, or its film keeps it");
    case "double-salt":
      return unless(isCongruent(product), "no double salt of this kind crystallises from equal amounts");
    case "precipitate":
    case "precipitate-carbonate":
    case "solid-to-solid":
      if (code === "precipitate-carbonate" && product.made.cations[0]!.formula === "Mg^2+") {
        if (b!.anion === "HCO3-") return "bicarbonate keeps magnesium dissolved until its carbon dioxide has left";
        if (feeds.some((one) => hasCation(one, AMMONIUM)))
          return "ammonium keeps magnesium dissolved, or goes into the carbonate";
      }
      if (
        AMMONIUM_PHOSPHATES.has(product.cation ?? "") &&
        PHOSPHATES.has(product.anion ?? "") &&
        feeds.some((one) => hasCation(one, AMMONIUM))
      )
        return "the phosphate of ammonium and the metal settles";
      if (product.cation === "Ag+" && code === "precipitate-carbonate" && feeds.some((one) => hasCation(one, AMMONIUM)))
        return "silver with ammonia leaves what may explode";
      if (
        product.cation === "Mg^2+" &&
        TAKES_ALONG.has(product.anion ?? "") &&
        feeds.some((one) => hasCation(one, "K+", AMMONIUM))
      )
        return "potassium or ammonium goes into the solid";
      if (code === "solid-to-solid" && notTurned(product, a!) !== undefined) return notTurned(product, a!);
      if (hardlyDissolves(b!)) return "the precipitant itself hardly dissolves, and stays in the cake";
      return unless(a!.key !== b!.key && product.key !== b!.key, "it is the same salt");
    default:
      return undefined;
  }
}

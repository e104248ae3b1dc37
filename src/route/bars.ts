// What a family of reactions asks of its product and feeds beyond its slots, before any engine is asked.

import { remembering } from "../foundation/memo";
import { ACID_STEPS, saltFormula } from "../ion/internal";
import { trySolubilityOf } from "../solubility";
import { type Compound, falls, formOf, keyOf } from "./compound";
import { CARRIERS, type FamilyRow } from "./data/families";
import { isCongruent } from "./feeds";
import { AMMONIUM, elementOf, SLAKES } from "./kinds";

const solubilities = /* @__PURE__ */ remembering<number | undefined>(2000);

/** Grams in 100 g of water, where a curve tells. */
const gramsAt = (formula: string, temperature: "20 °C" | "80 °C"): number | undefined =>
  solubilities(`${formula} ${temperature}`, () => {
    const known = trySolubilityOf(formula, temperature);
    return known.ok ? known.value.perHundredGramsWater.toNumber() : undefined;
  });

/** Figures for two salts that swap ions, g in 100 g of water. */
const PAIR = { steep: 2.5, flat: 1.7, sparing: 12, stays: 15, acid: 6 } as const;

/** Does one salt of a pair come out on cooling, or for want of water, and the other stay? */
function isPair(product: Compound, other: string, feeds: readonly Compound[]): boolean {
  const form = formOf(product);
  const [own, hot] = [gramsAt(form, "20 °C"), gramsAt(form, "80 °C")];
  const [stays, hotToo] = [gramsAt(other, "20 °C"), gramsAt(other, "80 °C")];
  if (own === undefined || stays === undefined || stays < PAIR.stays) return false;
  if (feeds.some((feed) => (gramsAt(formOf(feed), "20 °C") ?? own) <= 1.5 * own && own <= PAIR.sparing)) return false;
  if (own <= PAIR.sparing && stays > 2 * own) return true;
  return hot !== undefined && hotToo !== undefined && hot / own >= PAIR.steep && hotToo / stays <= PAIR.flat;
}

/** pKa above which ammonium lets go of its ammonia. */
const AMMONIA_LEAVES = 9;

/** A salt of ammonium that loses ammonia from its solution. */
const losesAmmonia = (cation: string, anion: string): boolean =>
  cation === AMMONIUM && ACID_STEPS().some(({ base, pKa }) => base === anion && Number(pKa) > AMMONIA_LEAVES);

/** Metals that come out of water: hydrogen comes first where they are baser than tin or so. */
const SET_FREE = new Set(["Ag", "Cu", "Bi", "Sn", "Ni", "Co"]);
const VOLTS_APART: Readonly<Record<string, readonly string[]>> = {
  Fe: ["Ag", "Cu", "Bi", "Sn"],
  Zn: ["Ag", "Cu", "Bi", "Sn", "Ni", "Co"],
  Al: ["Ag", "Cu", "Bi", "Sn", "Ni", "Co"],
  Mg: ["Ag", "Cu"],
  Sn: ["Ag", "Cu"],
  Cu: ["Ag"],
  Ni: ["Ag", "Cu"],
  Co: ["Ag", "Cu"],
  Mn: ["Ag", "Cu"],
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

/** What a family asks beyond its slots, before any engine is asked: why it does not serve, or undefined. */
export function barOf({ code }: FamilyRow, product: Compound, feeds: readonly Compound[]): string | undefined {
  const [a, b] = feeds;
  const unless = (serves: boolean, why: string): string | undefined => (serves ? undefined : why);
  switch (code) {
    case "neutralise":
      return unless(
        b!.key !== keyOf("CO2") ||
          falls(a!) === false ||
          a!.made.kind === "molecule" ||
          (a!.anion === "OH-" && SLAKES.has(a!.cation!)),
        "carbon dioxide is taken by what dissolves: a lye, a soda, ammonia, milk of lime",
      );
    case "salt-pair":
      return unless(
        a!.cation !== undefined &&
          b!.cation !== a!.cation &&
          !losesAmmonia(b!.cation!, a!.anion!) &&
          !losesAmmonia(a!.cation, product.anion!) &&
          isPair(product, saltFormula(b!.cation!, a!.anion!), feeds),
        "no salt of this pair comes by itself: both dissolve too well, their curves run alike, or ammonia leaves",
      );
    case "complex":
      return unless(
        a!.anion !== undefined && (gramsAt(saltFormula(b!.cation!, a!.anion), "20 °C") ?? 0) >= PAIR.stays,
        "the other salt crystallises with it",
      );
    case "keep-filtrate":
      return unless(
        a!.anion !== undefined &&
          (product.anion === "OH-" ? a!.anion === "CO3^2-" : falls(b!) === false) &&
          CARRIERS.some((row) => row.cation === b!.cation && row.takes.includes(a!.anion!)),
        "nothing precipitates that could be filtered off",
      );
    case "set-acid-free":
      return unless(isSparing(product), "the acid stays dissolved beside the salt");
    case "metal-and-acid":
      return unless(b!.key !== keyOf("HNO3"), "nitric acid oxidises by its nitrogen, not by its hydrogen");
    case "precipitate-hydroxide":
      return unless(
        b!.anion !== "OH-" || a!.made.cations.every(({ formula }) => formula !== AMMONIUM),
        "lye sets the ammonia of an ammonium salt free",
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
      return unless(a!.key !== b!.key && product.key !== b!.key, "it is the same salt");
    default:
      return undefined;
  }
}

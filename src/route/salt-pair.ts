// Whether two salts of alkalis exchange their ions by crystals: one comes out on cooling or for want of water, the other stays.

import { anhydrousOf } from "../hydrate";
import type { Constitution } from "../ion";
import { ACID_STEPS, chargeOfIon, saltFormula } from "../ion/internal";
import { type Compound, formOf, formulaFrom, hasCation, madeOf } from "./compound";
import { AMMONIUM } from "./kinds";
import { figure, gramsAt, hardlyDissolves, pKaOf } from "./known-figures";
import type { Why } from "./why";

/** Figures for two salts that swap ions, g in 100 g of water. */
export const PAIR = {
  steep: 2.5,
  flat: 1.7,
  sparing: 12,
  apart: 3.5,
  stays: 15,
  most: 40,
  least: 0.3,
  acid: 6,
} as const;

/** Charges of the cations in a formula unit. */
const equivalentsOf = ({ cations }: Constitution): number =>
  cations.reduce((n, { charge, count }) => n + charge * count, 0);

/** Part of the product that comes where the water just keeps the other salt dissolved. */
function cropOf(form: string, own: number, other: string, stays: number): number {
  const [product, beside] = [madeOf(form), madeOf(other)];
  if (product === undefined || beside === undefined) return 1;
  const grams = (text: string): number => formulaFrom(text).gramsPerMole;
  // for one mole of the product; solubilities are of the salts without their water
  const water = (100 * (equivalentsOf(product) / equivalentsOf(beside)) * grams(other)) / stays;
  return 1 - (own * water) / 100 / grams(anhydrousOf(formulaFrom(form)).toString());
}

const shown = (formula: string): string => formulaFrom(formula).toUnicode();

/** Why a pair of salts gives no crop, with what each of them does in cold and in hot water. */
const pairWhy =
  (why: string, salts: readonly string[]): Why =>
  () => {
    const temperatures = ["20 °C", "80 °C"] as const;
    const known = [...new Set(salts)].flatMap((formula) => {
      const grams = temperatures.flatMap((at) => {
        const g = gramsAt(formula, at);
        return g === undefined ? [] : [{ g, at }];
      });
      return grams.length === 0 ? [] : [{ formula, grams }];
    });
    const told = known.map(
      ({ formula, grams }) =>
        `${shown(formula)} ${grams.map(({ g, at }) => `${Number(g.toPrecision(2))} g at ${at}`).join(", ")}`,
    );
    return {
      text: told.length === 0 ? why : `${why}; in 100 g of water dissolve ${told.join("; ")}`,
      numbers: known.flatMap(({ formula, grams }) =>
        grams.map(({ g, at }) => figure(g, "g", `${shown(formula)} in 100 g of water at ${at}`)),
      ),
      source: "solubilities of the tables, each with its source",
    };
  };

/** Why two salts of alkalis do not exchange their ions by crystals; undefined where they may. */
export function pairBar(product: Compound, a: Compound, b: Compound): Why | undefined {
  if (a.cation === undefined || b.cation === undefined || b.cation === a.cation || a.anion === undefined)
    return "it is no pair of salts with four ions";
  const other = saltFormula(b.cation, a.anion);
  const because = (why: string): Why => pairWhy(why, [formOf(product), other]);
  if (losesAmmonia(b.cation, a.anion) || losesAmmonia(a.cation, product.anion!))
    return because("ammonia leaves the liquor");
  if (product.anion === "HPO4^2-" && [a, b].some((one) => hasCation(one, AMMONIUM)))
    return because("ammonia leaves the liquor");
  if ((MIX.has(a.cation) && MIX.has(b.cation)) || product.anion === "SO4^2-")
    return because("the salts of this pair crystallise together");
  if ([a, b].some(({ anion }) => anion === "NO2-")) return "nitrite is left in the liquor";
  if ([product, a, b].some(({ anion }) => chargeOfIon(anion!) <= MANY_CHARGES))
    return because("both alkalis crystallise in one salt");
  if (hydronMoves(a.anion, product.anion!)) return "a proton is transferred from one anion to the other";
  if (hardlyDissolves(b)) return "one of the salts hardly dissolves";
  return isPair(product, other, [a, b])
    ? undefined
    : because("no salt of this pair crystallises by itself: both dissolve too well, or their curves run alike");
}

/** Does one salt of a pair come out on cooling, or for want of water, and the other stay? */
function isPair(product: Compound, other: string, feeds: readonly Compound[]): boolean {
  const form = formOf(product);
  const [own, hot] = [gramsAt(form, "20 °C"), gramsAt(form, "80 °C")];
  const [stays, hotToo] = [gramsAt(other, "20 °C"), gramsAt(other, "80 °C")];
  if (own === undefined || stays === undefined || stays < PAIR.stays) return false;
  const least = own <= PAIR.sparing ? 1.5 * own : own;
  if (feeds.some((feed) => (gramsAt(formOf(feed), "20 °C") ?? own) <= least)) return false;
  if (cropOf(form, own, other, stays) < PAIR.least) return false;
  if (own <= PAIR.sparing && stays > PAIR.apart * own) return true;
  return (
    own <= PAIR.most &&
    hot !== undefined &&
    hotToo !== undefined &&
    hot / own >= PAIR.steep &&
    hotToo / stays <= PAIR.flat
  );
}

/** pKa above which ammonium lets go of its ammonia. */
const AMMONIA_LEAVES = 9;

/** A salt of ammonium that loses ammonia from its solution. */
const losesAmmonia = (cation: string, anion: string): boolean =>
  cation === AMMONIUM && ACID_STEPS().some(({ base, pKa }) => base === anion && Number(pKa) > AMMONIA_LEAVES);

/** pKa by which an acid must be the weaker one for its hydron to stay. */
const APART = 2;

/** Does a hydron go from one anion to the other, so that neither is left what it was? */
function hydronMoves(one: string, other: string): boolean {
  const goes = (from: string, to: string): boolean => {
    const [gives, takes] = [pKaOf("acid", from), pKaOf("base", to)];
    return gives !== undefined && takes !== undefined && gives < takes + APART;
  };
  return goes(one, other) || goes(other, one);
}

/** Ammonium stands in the crystals of potassium, and potassium in those of ammonium. */
const MIX = new Set(["K+", AMMONIUM]);
/** From this charge on, two alkalis crystallise in one salt. */
const MANY_CHARGES = -4;

// How much of a precipitant is added when a solid begins to precipitate, in a mixture of which others may have fallen already.

import { crossing } from "../../aqueous/internal";
import { applyFunction, type NumberLike, type Quantity, quantity } from "../../quantity";
import { isHydroxide, sameIon, TOP_PH } from "./given-ions";
import type { DissolvedIon, SolubilityProduct } from "./product";
import { allIn, freeIn, type MixedIon, mixtureOf, productIn, Series, type Way } from "./way";

/** One solid of the question. */
export interface Asked {
  readonly product: SolubilityProduct;
  readonly added: DissolvedIon;
  readonly metal: DissolvedIon;
  readonly c: Quantity;
  /** The pH is given, and hydroxide is not what is added. */
  readonly held: boolean;
}

/** What is added, and the pH that is held meanwhile. */
interface Addition {
  readonly precipitant: string;
  readonly pH?: NumberLike;
}

/** A figure of the liquor where a solid begins: with its working, and as a plain number at any amount of the precipitant. */
interface Reading {
  readonly figure: (liquor: ReturnType<typeof mixtureOf>) => Quantity;
  readonly plain: (series: Series, place: number) => number;
}

/** Where a solid begins: what was added in all, and a figure of the liquor there with its working. */
export interface Start {
  readonly total: number;
  readonly figure: Quantity<"concentration">;
  /** Another figure of the same liquor. */
  readonly at: (read: Reading) => Quantity;
}

/** Beyond this much precipitant nothing is looked for, mol/L, not even on paper; and below this little. */
const MOST = 100;
const MOST_ON_PAPER = 1e12;
const LEAST = 1e-60;

/** Relative step of a difference. */
const SMALL = 1e-5;

/**
 * The precipitant at which a solid begins beside the metals of others, some of which have precipitated; undefined where an ion
 * of it has no place among the reactions.
 */
export function startOf(
  way: Way,
  one: Asked,
  metals: readonly Asked[],
  standing: readonly string[],
  { precipitant, pH }: Addition,
  from?: number,
): Start | "never" | undefined {
  const hydroxide = isHydroxide(precipitant);
  const litre = quantity("1 L");
  const ions: MixedIon[] = [];
  for (const { metal, c } of metals) {
    if (ions.some(({ formula }) => sameIon(formula, metal.formula))) continue;
    ions.push({ formula: metal.formula, amount: c.times(litre).to("mol") });
  }
  const liquorAt = (x: number) =>
    mixtureOf(way, {
      ions: hydroxide
        ? ions
        : [...ions, { formula: precipitant, amount: quantity({ value: x.toPrecision(15), unit: "mol" }) }],
      volume: litre,
      pH: hydroxide ? TOP_PH + Math.log10(x) : pH,
      only: standing,
    });
  const { added, metal, c, product } = one;
  // as if nothing bound anything
  const guess = from ?? 10 ** ((-product.pKsp.toNumber() - metal.count * Math.log10(c.toNumber())) / added.count);
  const series = new Series(liquorAt(guess), product, hydroxide ? "pH" : { ion: precipitant });
  if (!series.isPlaced) return undefined;
  const placeOf = (ln: number): number => (hydroxide ? TOP_PH + ln / Math.LN10 : Math.exp(ln));
  const lnIndex = (ln: number): number => series.indexAt(placeOf(ln)) * Math.LN10;
  const most = Math.log(way.reactions === undefined ? MOST : MOST_ON_PAPER);
  let ln = Math.log(guess);
  let here = lnIndex(ln);
  const up = here <= 0;
  // towards saturation from below, away from it from above, an order of magnitude at a time
  for (;;) {
    const next = up ? ln + STRIDE : ln - STRIDE;
    if (next > most || next < Math.log(LEAST)) return "never";
    const there = lnIndex(next);
    if (there > 0 === up) {
      ln = up ? crossing(lnIndex, [ln, next], [here, there]) : crossing(lnIndex, [next, ln], [there, here]);
      break;
    }
    [ln, here] = [next, there];
  }
  const total = Math.exp(ln);
  const liquor = liquorAt(total);
  const q = productIn(liquor, product.ions)!;
  const [under, above] = [placeOf(ln - SMALL), placeOf(ln + SMALL)];
  const slope = (lnIndex(ln + SMALL) - lnIndex(ln - SMALL)) / (2 * SMALL);
  const at = (read: Reading): Quantity => {
    const figure = read.figure(liquor);
    const rise = (read.plain(series, above) - read.plain(series, under)) / (2 * SMALL);
    // what is added moves so that Q = Ksp stays true
    return applyFunction(
      [figure, q, product.value],
      {
        name: "where Q = Ksp",
        unit: figure.unit,
        value: ([y]) => y!.toPrecision(15),
        partials: ([, a, k]) => [
          "1",
          (-rise / slope / a!.toNumber()).toPrecision(12),
          (rise / slope / k!.toNumber()).toPrecision(12),
        ],
      },
      { rule: "at the addition where ion product = Ksp" },
    );
  };
  const label = `${precipitant} in solution`;
  const isFree = hydroxide || (way.reactions !== undefined && !one.held);
  const figure = at({
    figure: (there) => (isFree ? freeIn(there, precipitant, label) : allIn(there, precipitant, label)!),
    plain: (there, place) => (isFree ? there.freeAt(place, precipitant) : there.allAt(place, precipitant)),
  }) as Quantity<"concentration">;
  return { total, figure, at };
}

/** Stride of the search for where a solid begins: an order of magnitude. */
const STRIDE = Math.LN10;

// The sentences of the steps, one table: plain, verb first, with the figures of the operation and no more digits than a hand
// can use.
import type { Quantity } from "../../quantity";

/** A value to so many figures, without uncertainty. */
export function about(q: Quantity, unit?: string, figures = 3): string {
  const shown = unit === undefined ? q : q.to(unit);
  const value = shown.toNumber();
  const magnitude = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  return magnitude >= figures
    ? shown.format({ decimals: figures - 1 - magnitude, uncertainty: "none" })
    : shown.format({ significant: figures, uncertainty: "none" });
}

/** A material dissolved or diluted, in words: never called as its pack is, which is another vessel. */
export const asSolution = (name: string): string =>
  /\bsolution$/i.test(name) ? `diluted ${name}` : `${name} solution`;

/** What a balance and a measuring cylinder show one step of. */
export interface Instruments {
  readonly mass: Quantity;
  readonly volume: Quantity;
}

/** Figures as the hand can use them: three at most (of a mass that is fired four), and none finer than a step of the instrument. */
export interface Hand {
  /** Grams or kilograms, whichever a person would say. */
  readonly grams: (mass: Quantity) => string;
  /** Millilitres or litres of a liquid; a millilitre of water weighs a gram. */
  readonly litres: (liquid: Quantity) => string;
  readonly water: (water: Quantity) => string;
}

const FIGURES = 3;
/** What a fire leaves is held against what went in, and decides whether it is fired again. */
const FIGURES_FIRED = 4;
/** Fewer steps than this of a cylinder, and a smaller one is taken, of a tenth of the step. */
const FEWEST_STEPS = 5;
const FINEST_MILLILITRES = 0.1;

const decimalsOf = (value: number): number => (/\.(\d+)$/.exec(String(value))?.[1] ?? "").length;

const magnitudeOf = (value: number): number =>
  value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value) * (1 + 1e-12)));

/** To a step, and to no more than so many figures, rounded once. */
function stepped(value: number, step: number, figures = FIGURES): string {
  const coarse = Math.max(step, 10 ** (magnitudeOf(value) + 1 - figures));
  // a double of exactly half a step may stand a hair below it
  const rounded = Math.round((value / coarse) * (1 + 1e-12)) * coarse;
  return rounded.toFixed(Math.max(0, Math.min(decimalsOf(step), figures - 1 - magnitudeOf(rounded))));
}

export function handOf(
  instruments: Instruments,
  isFired = false,
  lessThan = (mass: string): string => `less than ${mass}`,
): Hand {
  const gram = instruments.mass.toNumber("g");
  const cylinder = instruments.volume.toNumber("mL");
  const litres = (liquid: Quantity): string => {
    const millilitres = liquid.toNumber(liquid.dimension === "volume" ? "mL" : "g");
    let step = cylinder;
    while (millilitres < step * FEWEST_STEPS && step / 10 >= FINEST_MILLILITRES)
      step = Number((step / 10).toPrecision(6));
    if (Math.abs(millilitres) < step / 2) return lessThan(`${step} mL`);
    const shown = Number(stepped(millilitres, step));
    return shown >= 1000 ? `${Number((shown / 1000).toPrecision(FIGURES))} L` : `${shown} mL`;
  };
  return {
    grams: (mass) => {
      const value = mass.toNumber("g");
      if (Math.abs(value) < gram / 2) return lessThan(`${gram} g`);
      return value >= 10_000 ? about(mass, "kg") : `${stepped(value, gram, isFired ? FIGURES_FIRED : FIGURES)} g`;
    },
    litres,
    water: (water) => `${litres(water)} of water`,
  };
}

const qualified = (shown: string, by: string): string => shown.replace(/^(?=[\d.])/, `${by} `);

/** A mass as an upper bound, in words; under half a step of the balance they are "less than" already. */
export const atMost = (mass: Quantity, grams: Hand["grams"]): string => qualified(grams(mass), "at most");

/** What is shown of a volume or mass that is estimated; under half a step it is "less than" already. */
export const nearly = (shown: string): string => qualified(shown, "about");

/** The volume of a gas or of a vessel. */
export const litres = (q: Quantity): string => about(q, q.toNumber("L") >= 1 ? "L" : "mL");

/** The size of a vessel: no zeros after the point. */
export const vesselSize = (q: Quantity): string =>
  litres(q).replace(/(\.\d*?)0+(?= )/, (_, digits: string) => (digits === "." ? "" : digits));

export const celsius = (q: Quantity): string => q.format({ unit: "°C", decimals: 0, uncertainty: "none" });

export const percent = (q: Quantity): string => about(q, "%", 2);

/** A time in the unit a person would say. */
export function lasting(time: Quantity): string | undefined {
  const minutes = time.toNumber("min");
  if (minutes < 1) return undefined;
  // a least time is never rounded down
  return minutes < 120 ? `${Math.ceil(minutes - 0.01)} min` : about(time, "h", 2);
}

export const times = (n: number): string => ["", "once", "twice"][n] ?? `${n} times`;

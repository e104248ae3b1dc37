// The sentences of the steps, one table: plain, verb first, with the figures of the operation and no more digits than a hand
// can use.
import type { Quantity } from "../../quantity";

/** A value to so many figures, without uncertainty. */
export function about(q: Quantity, unit?: string, figures = 3): string {
  const shown = unit === undefined ? q : q.to(unit);
  const { value } = shown;
  const magnitude = value.isZero() ? 0 : Math.floor(Math.log10(Math.abs(value.toNumber())));
  return magnitude >= figures
    ? shown.format({ decimals: figures - 1 - magnitude, uncertainty: "none" })
    : shown.format({ significant: figures, uncertainty: "none" });
}

/** Grams or kilograms, whichever a person would say. */
export const grams = (q: Quantity): string => about(q, q.in("g").toNumber() >= 10_000 ? "kg" : "g");

/** Water by the jug: a millilitre weighs a gram. */
export function waterByTheJug(q: Quantity): string {
  const millilitres = (q.dimension === "volume" ? q.in("mL") : q.in("g")).toNumber();
  return millilitres >= 1000
    ? `${Number((millilitres / 1000).toPrecision(3))} L`
    : `${Number(millilitres.toPrecision(millilitres < 10 ? 2 : 3))} mL`;
}

export const water = (q: Quantity): string => `${waterByTheJug(q)} of water`;

export const litres = (q: Quantity): string => about(q, q.in("L").toNumber() >= 1 ? "L" : "mL");

/** The size of a vessel: no zeros after the point. */
export const vesselSize = (q: Quantity): string =>
  litres(q).replace(/(\.\d*?)0+(?= )/, (_, digits: string) => (digits === "." ? "" : digits));

export const celsius = (q: Quantity): string => q.format({ unit: "°C", decimals: 0, uncertainty: "none" });

export const percent = (q: Quantity): string => about(q, "%", 2);

/** A time in the unit a person would say. */
export function lasting(time: Quantity): string | undefined {
  const minutes = time.in("min").toNumber();
  if (minutes < 1) return undefined;
  return about(time, minutes < 120 ? "min" : "h", 2);
}

export const times = (n: number): string => ["", "once", "twice"][n] ?? `${n} times`;

export const list = (words: readonly string[]): string =>
  words.length < 3 ? words.join(" and ") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

// Degrees Baumé: the scales of the trade with modulus 145 above water and 140/130 below, at 60 °F against water of 60 °F.

import { type Quantity, quantity } from "../../quantity";
import { oneOf } from "../argument";
import { cite } from "../data/sources";
import { AmountError } from "../error";
import { densityOfWater } from "../jar/water";

const SCALES: readonly BaumeScale[] = ["heavier than water", "lighter than water"];

/** Which liquids a hydrometer is made for. */
export type BaumeScale = "heavier than water" | "lighter than water";

/** @internal The scale meant; heavier than water unless given. */
export const scaleOf = (stated: BaumeScale | undefined): BaumeScale =>
  oneOf(stated ?? "heavier than water", SCALES, "Baumé scale");

const words = (): { symbol: string; label: string; source: string } => ({
  symbol: "°Bé",
  label: "degrees Baumé",
  source: cite("baumeScale"),
});

const assumption = (scale: BaumeScale): string => `Baumé scale ${scale}, read at 60 °F (15.6 °C)`;

const water = (): Quantity => densityOfWater("60 °F").named({ symbol: "ρ(H₂O, 60 °F)" });

/** @internal Density at 60 °F of a liquid that reads so many degrees. */
export function densityOfBaume(reading: Quantity, scale: BaumeScale, name: string): Quantity {
  const degrees = reading.named(words());
  const light = scale === "lighter than water";
  const gravity = light
    ? quantity("140").dividedBy(quantity("130").plus(degrees))
    : quantity("145").dividedBy(onScale(quantity("145").minus(degrees)));
  return gravity
    .times(water())
    .to("g/mL")
    .named({
      symbol: `ρ(${name})`,
      rule: light ? "density = 140 / (130 + °Bé) × density of water" : "density = 145 / (145 - °Bé) × density of water",
      assumption: assumption(scale),
    });
}

/** @internal The reading of a liquid whose density at 60 °F is known. */
export function baumeOfDensity(rho: Quantity, scale: BaumeScale): Quantity {
  const gravity = rho.dividedBy(water());
  const light = scale === "lighter than water";
  const degrees = light
    ? quantity("140").dividedBy(gravity).minus("130")
    : quantity("145").minus(quantity("145").dividedBy(gravity));
  return degrees.named({
    ...words(),
    rule: light ? "°Bé = 140 / relative density - 130" : "°Bé = 145 - 145 / relative density",
    assumption: assumption(scale),
  });
}

function onScale(rest: Quantity): Quantity {
  if (rest.isPositive()) return rest;
  throw new AmountError("amount.outside-range", "the Baumé scale for heavy liquids ends below 145 degrees", {
    details: { quantity: "degrees Baumé", low: "0", high: "145" },
  });
}

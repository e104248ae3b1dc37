// Masses as the balance of a plan shows them.
import type { Plan } from "../preparation";
import { type Hand, handOf } from "../preparation/internal";
import { type Quantity, quantity } from "../quantity";

/** What balance and cylinder show, where the request does not say. */
const USUAL = { mass: "0.1 g", volume: "1 mL" } as const;

/** Writes masses as the balance of the plan shows them. */
export function gramsOn({ request: { readability = {} } }: Plan): Hand["grams"] {
  const { mass = USUAL.mass, volume = USUAL.volume } = readability;
  return handOf({ mass: quantity(mass as Quantity), volume: quantity(volume as Quantity) }).grams;
}

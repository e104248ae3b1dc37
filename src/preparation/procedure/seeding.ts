// Seed for a liquor that stays supersaturated: crystals that are on the table, or the advice to put some in, and when.

import type { Quantity } from "../../quantity";
import { staysSupersaturated } from "../../solubility/internal";
import type { Matter } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { seed } from "../operation/seed";
import { exact, planned } from "../planning/exact";
import { keptByWater } from "../reaction/fate";
import { meltsAt } from "../reaction/melting";
import { putAsides } from "./asides";
import { type Bench, POT } from "./bench";
import { useOf } from "./use";
import { celsius } from "./words";

/** Degrees between the temperatures that are tried for a seed. */
const SEED_STEP = 5;

/** As warm as the liquor already holds more than it can keep of the crystals, or a seed would dissolve; half way down where nobody knows. */
function seedingAt(
  { books }: Pot,
  { core, formula }: Matter,
  hot: Quantity<"temperature">,
  cold: Quantity<"temperature">,
): Quantity {
  const there = books.dissolved
    .find(({ matter }) => matter.key === core.key)
    ?.amount.times(core.molarMass)
    .to("g");
  const [top, bottom] = [hot, cold].map((one) => one.toNumber("°C")) as [number, number];
  const at = (celsius: number): Quantity<"temperature"> => exact(`${celsius} °C`) as Quantity<"temperature">;
  // crystals that are put in where they melt are gone
  const warmest = Math.min(top, Math.floor(meltsAt(formula) ?? top)) - SEED_STEP;
  for (let celsius = warmest; celsius > bottom; celsius -= SEED_STEP) {
    const kept = keptByWater(core.formula, books.water, at(celsius));
    if (there === undefined || kept === undefined) return at(Math.min(warmest, Math.round((top + bottom) / 2)));
    if (kept.times(planned("seededFrom")).compare(there) < 0) return at(celsius);
  }
  return cold;
}

/** Seed that is on the table goes in; without any, a few crystals where the salt is known to need them. */
export function seedLiquor(
  bench: Bench,
  crop: Matter,
  hot: Quantity<"temperature">,
  cold: Quantity<"temperature">,
): void {
  const { setting } = bench.frame;
  const { product } = setting;
  const hasSeed = setting.asides.some((one) => useOf(one, setting) === "seed");
  putAsides(bench, "seed");
  const liquor = bench.pot;
  if (hasSeed || !staysSupersaturated(product.formula)) return;
  bench.did(POT, seed(liquor), {
    atHand: ["seed crystals"],
    say: () =>
      `When it has cooled to about ${celsius(seedingAt(liquor, crop, hot, cold))} put in a few crystals of ${crop.name}, or a drop of the liquor scratched on cold glass until it crystallises: it stays supersaturated easily.`,
  });
}

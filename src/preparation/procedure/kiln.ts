// Heating a solid dry: where the table has the temperature, the plateau; the end mass as a range, since what is not the form is
// inert or goes as well.

import type { Quantity } from "../../quantity";
import { trySubstance } from "../../substance";
import { add } from "../operation/add";
import { cool } from "../operation/cool";
import { fire } from "../operation/fire";
import { hold } from "../operation/hold";
import { putTheRest } from "./asides";
import { type Bench, POT } from "./bench";
import { weighProduct } from "./finish";
import { mainReaction, weighAll } from "./prepare";
import { celsius, grams } from "./words";

/** Oxides that take up water and carbon dioxide from the air. */
const SLAKES = new Set(["CaO", "OSr", "BaO", "Na2O", "K2O", "Li2O", "MgO"]);

/** Temperature that the table gives for the step which leaves the product. */
function temperatureOf({ frame: { setting } }: Bench): Quantity<"temperature"> | undefined {
  const [material] = setting.materials;
  const known = material === undefined ? undefined : trySubstance(material.form.toString());
  if (known?.ok !== true) return undefined;
  const steps = known.value.thermalSteps;
  const wanted = setting.product.formula;
  const step = steps.find(({ remains }) =>
    remains.some(
      ({ formula }) => wanted.toHill() === setting.product.formula.toHill() && formula === wanted.toString(),
    ),
  );
  const last = step ?? steps.at(-1);
  return last?.to ?? last?.from;
}

export function kiln(bench: Bench): void {
  const { setting, theory, account } = bench.frame;
  weighAll(bench);
  setting.materials.forEach((_, i) => {
    const name = bench.name(i);
    bench.did(POT, add(bench.pot, bench.in(name), []), {
      materials: [name],
      amounts: [bench.frame.portions[i]!],
      from: name,
      say: () =>
        `Spread the ${name} in a crucible or tray, no more than half full (two thirds if it does not froth); weigh the empty vessel first.`,
    });
  });
  putTheRest(bench);
  bench.liquor = bench.pot;
  const at = temperatureOf(bench);
  const { other } = bench.pot.books;
  const done = fire(bench.pot, [mainReaction(bench)], at);
  const least = theory;
  const most = done.after.mass;
  const range =
    other.isPositive() && most.compare(least) > 0 ? `between ${grams(least)} and ${grams(most)}` : grams(least);
  const warm = at === undefined ? "as hot as the product stands (no temperature is tabulated)" : `to ${celsius(at)}`;
  bench.did(POT, done, {
    ...(at === undefined ? {} : { target: at }),
    limit: () => theory,
    care: "heating",
    blank: "ignition",
    say: () =>
      `Heat slowly ${warm} and keep it there until the mass stands still at ${range}, from ${grams(done.before.mass)}.`,
  });
  bench.did(POT, cool(bench.pot, setting.temperature), {
    target: setting.temperature,
    say: () => `Let it cool to ${celsius(setting.temperature)} in the closed vessel or a desiccator.`,
  });
  if (account.supplied.length > 1)
    bench.did(POT, hold(bench.pot), { say: () => "Crush it and look for what has not reacted." });
  weighProduct(
    bench,
    SLAKES.has(setting.product.formula.compositionText) ? "Bottle it at once: it slakes in air" : "Bottle and label it",
  );
}

// A reaction kept warm until the colours of solid and liquor tell that it is done.
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { classesOfFormula } from "../../substance/internal";
import { ENDS } from "../data/ends";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { exact } from "../planning/exact";
import { type Bench, POT } from "./bench";
import { celsius } from "./words";

/** Kept warm until the colours tell that it is done, where a row says so. */
export function keptToItsEnd(bench: Bench): void {
  const { product, materials } = bench.frame.setting;
  const row = ENDS.find(({ formula }) => isOneOf(product.formula, formula));
  if (row === undefined) return;
  const smells = materials.some(({ form }) => classesOfFormula(form).has("sulfite"));
  const hood = smells ? ", under the hood (sulfur dioxide leaves it)" : "";
  if (row.at === undefined) {
    bench.did(POT, hold(bench.pot), { say: () => `Stir until ${row.until}.` });
    return;
  }
  const at = exact(row.at) as Quantity<"temperature">;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    say: () => `Warm it to ${celsius(at)} and keep it there, covered and stirred${hood}, until ${row.until}.`,
  });
}

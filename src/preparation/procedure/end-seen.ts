// A reaction kept warm until the colours of solid and liquor tell that it is done.
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { classesOfFormula } from "../../substance/internal";
import { ENDS } from "../data/ends";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { exact } from "../planning/exact";
import { type Bench, POT } from "./bench";
import { isAgent } from "./roles";
import { celsius } from "./words";

/** Kept warm until the colours tell that it is done, where a row says so. */
export function keptToItsEnd(bench: Bench): void {
  const { setting, roles } = bench.frame;
  const { product, materials } = setting;
  const row = ENDS.find(({ formula }) => isOneOf(product.formula, formula));
  if (row === undefined) return;
  const smells = materials.some(({ form }) => classesOfFormula(form).has("sulfite"));
  const hood = smells ? ", under the hood (sulfur dioxide leaves it)" : "";
  // what is oxidised: neither the oxidiser nor what only brings acid, base or water
  const taking = materials.filter(
    ({ form }, i) =>
      roles[i] !== "oxidiser" &&
      !isAgent(form, "oxidiser") &&
      roles[i] !== "acid" &&
      roles[i] !== "base" &&
      roles[i] !== "water",
  );
  const until = `${row.until}${row.short === undefined ? "" : ` (${row.short}, a little more of the ${taking.map(({ shelf }) => shelf.name).join(" or the ")} is needed)`}`;
  if (row.at === undefined) {
    bench.did(POT, hold(bench.pot), { say: () => `Stir until ${until}.` });
    return;
  }
  const at = exact(row.at) as Quantity<"temperature">;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    say: () => `Warm it to ${celsius(at)} and keep it there, covered and stirred${hood}, until ${until}.`,
  });
}

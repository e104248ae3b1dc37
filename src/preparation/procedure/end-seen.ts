// A reaction kept warm until the colours of solid and liquor tell that it is done.
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { classesOfFormula } from "../../substance/internal";
import { ENDS, SLOW_COMPLEXES } from "../data/ends";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { exact } from "../planning/exact";
import { type Bench, POT } from "./bench";
import { isAgent } from "./roles";
import { celsius } from "./words";

/** A complex of a metal that takes its ligands slowly is kept warm: that the liquor is clear tells nothing. Was there one? */
export function keptForLigands(bench: Bench): boolean {
  const { product, materials } = bench.frame.setting;
  const { complex, cations } = constitutionOf(product.formula);
  const row = complex && SLOW_COMPLEXES.find(({ ion }) => cations.some(({ formula }) => formula === ion));
  if (row === undefined) return false;
  const at = exact(row.at) as Quantity<"temperature">;
  const isReduced = materials.some(({ form }) =>
    row.reduced?.groups.some((group) => constitutionOf(form).groups.includes(group)),
  );
  const done = isReduced ? `until ${row.reduced!.until}, and ${row.time} more` : row.time;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    say: () =>
      `Warm it to ${celsius(at)} and keep it there, covered and stirred, ${done}: ${row.called} takes its ligands slowly, and a clear liquor does not tell that the ${product.name} has formed.`,
  });
  return true;
}

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

// A reaction kept warm until the colours of solid and liquor tell that it is done.
import type { Formula } from "../../formula";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { classesOfFormula } from "../../substance/internal";
import { ENDS, type EndRow } from "../data/ends";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { exact } from "../planning/exact";
import { isLye } from "../reaction/acids";
import { type Bench, POT } from "./bench";
import { isAgent } from "./roles";
import { catalystOf, isReducedIn, slowComplexOf } from "./slow-complex";
import { celsius } from "./words";

/** A complex of a metal that takes its ligands slowly is kept warm: that the liquor is clear tells nothing. Was there one? */
export function keptForLigands(bench: Bench): boolean {
  const { setting } = bench.frame;
  const { product, materials } = setting;
  const row = slowComplexOf(product.formula);
  if (row === undefined) return false;
  const isReduced = materials.some(({ form }) => isReducedIn(row, form));
  const at = exact(row.at) as Quantity<"temperature">;
  const done = isReduced ? `until ${row.reduced!.until}, and ${row.time} more` : row.time;
  const catalyst = catalystOf(product.formula);
  const looks = catalyst === undefined ? "" : `; ${catalyst.without}`;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    say: () =>
      `Warm it to ${celsius(at)} and keep it there, covered and stirred, ${done}: ${row.called} takes its ligands slowly, and a clear liquor does not tell that the ${product.name} has formed${looks}.`,
  });
  return true;
}

/** What shows that a product is done, where its colours tell. */
export const endOf = (product: Formula): EndRow | undefined => ENDS.find(({ formula }) => isOneOf(product, formula));

/** Kept warm until the colours tell that it is done, where a row says so. */
export function keptToItsEnd(bench: Bench): void {
  const { setting, roles } = bench.frame;
  const { product, materials } = setting;
  const row = endOf(product.formula);
  if (row === undefined) return;
  const smells = materials.some(({ form }) => classesOfFormula(form).has("sulfite"));
  const hood = smells ? ", under the hood (sulfur dioxide leaves it)" : "";
  // what is oxidised: neither the oxidiser nor what only brings acid, base or water
  const taking = materials.filter(({ form }, i) =>
    row.lacks === undefined
      ? !["oxidiser", "acid", "base", "water"].includes(roles[i]!) && !isAgent(form, "oxidiser")
      : roles[i] === row.lacks,
  );
  const until = `${row.until}${row.short === undefined ? "" : ` (${row.short}, a little more of the ${taking.map(({ shelf }) => shelf.name).join(" or the ")} is needed)`}`;
  const lye = row.alkaline === undefined ? undefined : materials.find(({ form }) => isLye(form))?.shelf.name;
  if (row.at === undefined) {
    const atHand = row.atHand === undefined ? {} : { atHand: [row.atHand] };
    bench.did(POT, hold(bench.pot), { ...atHand, say: () => `Stir until ${until}.` });
    return;
  }
  const at = exact(row.at) as Quantity<"temperature">;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    ...(lye === undefined ? {} : { atHand: ["indicator paper" as const] }),
    say: () =>
      `Warm it to ${celsius(at)} and keep it there, covered and stirred${hood}, until ${until}.${lye === undefined ? "" : ` Paper shows pH ${row.alkaline!.from} or more all the time: where it does not, a little more of the ${lye} comes first, for ${row.alkaline!.else}.`}`,
  });
}

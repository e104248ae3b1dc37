// A reaction kept warm until the colours of solid and liquor tell that it is done.
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { classesOfFormula, madeOf } from "../../substance/internal";
import { ENDS, type EndRow, IRON_OXIDISED } from "../data/ends";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { exact } from "../planning/exact";
import { isLye } from "../reaction/acids";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { type Bench, POT, type Telling } from "./bench";
import { isAgent } from "./roles";
import { catalystOf, isReducedIn, slowComplexOf } from "./slow-complex";
import { celsius } from "./words";

const PAPER = "indicator paper" as const;

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
export const endOf = ({ product, materials }: Pick<Setting, "product" | "materials">): EndRow | undefined =>
  ENDS.find(
    ({ formula, by }) =>
      isOneOf(product.formula, formula) &&
      (by === undefined ||
        materials.some(
          ({ form }) => isOneOf(form, ...by.molecules) || by.groups.some((name) => madeOf(form).groups.has(name)),
        )),
  );

/** What tells that no iron(II) is left where an oxidiser makes iron(III) of it; empty elsewhere. */
export function ironOxidised({ frame: { setting, roles } }: Bench): {
  readonly test: string;
  readonly short: string;
  readonly takes: Pick<Telling, "atHand">;
} {
  const { materials, product } = setting;
  const isIron = ({ form }: Material): boolean =>
    constitutionOf(form).cations.some(({ formula }) => formula === IRON_OXIDISED.from);
  const oxidiser = materials.find((_, i) => roles[i] === "oxidiser");
  if (oxidiser === undefined || !materials.some(isIron) || product.formula.count("Fe").n === 0n)
    return { test: "", short: "", takes: {} };
  return {
    test: `, and ${IRON_OXIDISED.test}`,
    short: `; ${IRON_OXIDISED.short.replace("{oxidiser}", oxidiser.shelf.name)}`,
    takes: { atHand: [IRON_OXIDISED.atHand] },
  };
}

/** What is put in where more is needed: in counted portions where the row says so. */
function putIn({ hand, frame: { theory } }: Bench, { portion }: EndRow, names: string): string {
  if (portion === undefined) return `a little more of the ${names} is needed`;
  const of = (share: string): string => hand.grams(theory.times(exact(share)).to("g"));
  const most = portion.most === undefined ? "" : `, ${of(portion.most)} at most`;
  return `put in ${of(portion.each)} of the ${names} at a time${most}`;
}

/** Kept warm until the colours tell that it is done, where a row says so. */
export function keptToItsEnd(bench: Bench): void {
  const { setting, roles } = bench.frame;
  const { materials } = setting;
  const row = endOf(setting);
  if (row === undefined) return;
  const smells = materials.some(({ form }) => classesOfFormula(form).has("sulfite"));
  const hood = smells ? ", under the hood (sulfur dioxide leaves it)" : "";
  // what is oxidised: neither the oxidiser nor what only brings acid, base or water
  const taking = materials.filter(({ form }, i) =>
    row.lacks === undefined
      ? !["oxidiser", "acid", "base", "water"].includes(roles[i]!) && !isAgent(form, "oxidiser") && !isLye(form)
      : roles[i] === row.lacks,
  );
  const until = `${row.until}${row.short === undefined ? "" : ` (${row.short}, ${putIn(bench, row, taking.map(({ shelf }) => shelf.name).join(" or the "))})`}`;
  const lye = row.alkaline === undefined ? undefined : materials.find(({ form }) => isLye(form))?.shelf.name;
  const tools = [...(row.atHand === undefined ? [] : [row.atHand]), ...(lye === undefined ? [] : [PAPER])];
  const atHand = tools.length === 0 ? {} : { atHand: tools };
  if (row.at === undefined) {
    bench.did(POT, hold(bench.pot), { ...atHand, say: () => `Stir until ${until}.` });
    return;
  }
  const at = exact(row.at) as Quantity<"temperature">;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    ...atHand,
    say: () =>
      `Warm it to ${celsius(at)} and keep it there, covered and stirred${hood}, ${row.time === undefined ? "" : `${row.time} and `}until ${until}.${lye === undefined ? "" : ` Paper shows pH ${row.alkaline!.from} or more all the time: where it does not, a little more of the ${lye} comes first, for ${row.alkaline!.else}.`}`,
  });
}

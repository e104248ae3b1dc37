// What a precipitation is watched for: all of the metal precipitates, and no excess takes the product back.

import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { TAKES_BACK } from "../data/insoluble";
import { isLye } from "../reaction/acids";
import { keyElement } from "../reaction/candidates";
import { fateOf } from "../reaction/fate";
import { isLedIn } from "../reaction/fluids";
import { type Check, check, shown, type Watched } from "./check";
import { exact, planned } from "./exact";
import { type Feeding, feedingsOf, isOver, leftOf } from "./left-over";

/** Does any excess of this precipitant take the product back? */
export function takesBack(precipitant: Formula, metal: string | undefined): boolean {
  const { groups, ammonia } = madeOf(precipitant);
  // Lime and its like do not: only hydroxides of the alkalis are that strong.
  const isLime = groups.has("hydroxide") && !isLye(precipitant);
  return (
    metal !== undefined &&
    !isLime &&
    TAKES_BACK.some((row) => (row.group === "ammonia" ? ammonia : groups.has(row.group)) && row.metals.includes(metal))
  );
}

/** Metal salts that are over: the precipitant is short, and their metal stays in the liquor. */
const carriersOver = (
  key: string | undefined,
  feedings: readonly Feeding[],
  temperature: Quantity<"temperature">,
): Check[] =>
  feedings
    .filter((f) => key !== undefined && f.material.form.count(key).n !== 0n && isOver(f))
    .map((f) => {
      const { name, excess } = f.material.shelf;
      const need = exact("1").dividedBy(f.supplied.timesStoichiometric).to("%");
      const stays = `${shown(leftOf(f))} of that stays ${
        fateOf(f.material.form, temperature).precipitated === true ? "undissolved, with the product" : "in the liquor"
      }`;
      // what is asked for is no shortage
      return excess !== undefined && isOverBy(f.supplied)
        ? check(`${name} is ${shown(f.supplied.excess, 2)} in excess: ${stays}`, f.supplied.excess)
        : check(`the precipitant is ${shown(need)} of what the ${name} needs: ${stays}`, need);
    });

/** More by the table than counts as none. */
const isOverBy = ({ excess }: Feeding["supplied"]): boolean => excess.compare(planned("asGoodAsNone")) > 0;

/** What a precipitation is watched for. */
export function precipitation(watched: Watched): Check[] {
  const { setting, batch } = watched;
  const key = keyElement(setting.product.formula);
  const checks: Check[] = [];
  if (batch.completeness !== undefined) checks.push(check(batch.completeness.test));
  const feedings = feedingsOf(watched);
  const precipitant =
    key === undefined ? undefined : feedings.find(({ material }) => material.form.count(key).n === 0n);
  // how much of a gas is taken up its own step says
  if (precipitant === undefined || isLedIn(precipitant.material)) return checks;
  const { name } = precipitant.material.shelf;
  const short = carriersOver(key, feedings, setting.temperature);
  if (takesBack(precipitant.material.form, key))
    checks.push(
      check(
        `no more ${name} than the table says: an excess takes the product back into solution`,
        precipitant.supplied.excess,
      ),
    );
  else if (short.length > 0) checks.push(...short);
  else if (!feedings.some(isOver))
    checks.push(
      check(
        `no excess is planned: ${shown(planned("usualExcess"), 2)} excess of ${name} is usual, so that all of the ${key} precipitates`,
        planned("usualExcess"),
      ),
    );
  return checks;
}

// How warm or cold the feeds get as they are dissolved or diluted, before anything is mixed.

import { attempt, type Result } from "../../foundation/error";
import { lazily } from "../../foundation/lazy";
import { remembering } from "../../foundation/memo";
import { type Quantity, sum } from "../../quantity";
import { solutionEnthalpy, type TemperatureRise, temperatureRise } from "../../thermochemistry";
import { heatCapacityOf } from "../../thermochemistry/internal";
import { matterOf } from "../contents/matter";
import type { Feed } from "../procedure/feed";
import { isBase } from "../procedure/kind";
import type { Setting } from "../request/setting";
import type { Account } from "./account";
import { isAcid } from "./acids";
import { enthalpyOfDilution } from "./heat-of-dilution";

/** Heat of dissolving one feed in its water, or of diluting an acid or a base in it. */
export type DissolvingHeat =
  | {
      readonly material: string;
      /** Negative when the solution warms up. */
      readonly enthalpy: Quantity<"molar energy">;
      readonly rise: TemperatureRise;
    }
  | { readonly material: string; readonly missing: string };

const remembered = /* @__PURE__ */ remembering<Result<ReturnType<typeof solutionEnthalpy>>>(200);

export function dissolvingHeatOf(
  { materials, temperature }: Setting,
  account: Account,
  feeds: readonly Feed[],
): DissolvingHeat[] {
  /** All that shares one water. */
  const shared = (): Quantity =>
    sum(
      feeds.flatMap((feed, i) =>
        feed.how === "dissolve" && feed.shares === true
          ? [materials[i]!.massOf(account.supplied[i]!.portion)!, feed.dissolving.water]
          : [],
      ),
    ).to("g");
  const diluting = (i: number, water: Quantity): DissolvingHeat[] => {
    const { form, massOf, solventIn, shelf } = materials[i]!;
    if (!isAcid(form) && !isBase(form)) return [];
    const { portion, amount } = account.supplied[i]!;
    const [mass, own] = [massOf(portion), solventIn(portion)];
    const enthalpy = own === undefined ? undefined : enthalpyOfDilution(form, amount, own, own.plus(water));
    const material = shelf.name;
    if (mass === undefined || enthalpy === undefined)
      return [{ material, missing: `heat of dilution: no figure for ${form}` }];
    const whole = mass.plus(water).to("g");
    const pure = amount.times(matterOf(form).molarMass);
    const heatCapacity = heatCapacityOf(form, pure.dividedBy(whole).toNumber(""));
    const rise = temperatureRise({
      enthalpy,
      amount,
      mass: whole,
      ...(heatCapacity === undefined ? {} : { heatCapacity }),
      start: temperature,
    });
    return [{ material, enthalpy, rise }];
  };
  return feeds.flatMap((feed, i): DissolvingHeat[] => {
    const { material } = feed;
    if (feed.how === "solution") return feed.dilution === undefined ? [] : diluting(i, feed.dilution.water);
    if (feed.how !== "dissolve") return [];
    const { form, massOf } = materials[i]!;
    const enthalpy = remembered(form.toString(), () => attempt(() => solutionEnthalpy(form)));
    if (!enthalpy.ok) return [{ material, missing: `heat of dissolving: ${enthalpy.error.message.split("\n")[0]}` }];
    const { portion, amount } = account.supplied[i]!;
    return [
      lazily<Extract<DissolvingHeat, { rise: unknown }>>({
        material: () => material,
        enthalpy: () => enthalpy.value,
        rise: () => {
          const own = massOf(portion)!.plus(feed.dissolving.water).to("g");
          const mass = feed.shares === true ? shared() : own;
          return temperatureRise({ enthalpy: enthalpy.value, amount, mass, start: temperature });
        },
      }),
    ];
  });
}

// How warm or cold the feeds get as they dissolve, before anything is mixed.

import { attempt, type Result } from "../../foundation/error";
import { lazily } from "../../foundation/lazy";
import { remembering } from "../../foundation/memo";
import { type Quantity, sum } from "../../quantity";
import { solutionEnthalpy, type TemperatureRise, temperatureRise } from "../../thermochemistry";
import type { Feed } from "../procedure/feed";
import type { Setting } from "../request/setting";
import type { Account } from "./account";

/** Heat of dissolving one feed in its water. */
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
  return feeds.flatMap((feed, i): DissolvingHeat[] => {
    if (feed.how !== "dissolve") return [];
    const { material } = feed;
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

// A part of the reaction that one feed does with what is there before the last comes in: a metal in lye, a base in acid.

import { isOneOf } from "../../ion/internal";
import { WARM_IN_ACID } from "../data/firing";
import type { Reaction } from "../operation/add";
import { baseBeforeSalt, baseInAcid, dissolvedInAcid, gasOfBase } from "./base-in-acid";
import type { Frame } from "./bench";
import { lyeStage } from "./lye-stage";

/** What one feed does before the last comes in, and what is to be done when it has. */
export interface Stage {
  /** Index of the feed. */
  readonly by: number;
  readonly first: Reaction;
  /** The same taken back without its gas: what the equation has of it is there again. */
  readonly back: Reaction;
  /** Key of the gas that leaves then, and not with the last. */
  readonly gas: string | undefined;
  /** Gas and heat by which the vessel is paced are those of this feed; else those of the last. */
  readonly setsPace: boolean;
  /** A metal in lye: acid comes to it, and warms it. */
  readonly byLye: boolean;
  /** When it has ended, and what is filtered then, in words. */
  readonly after: string;
}

/** The stage before the last feed; undefined where everything reacts with that. */
export function stageOf({ setting, roles, account, kind }: Frame): Stage | undefined {
  const nameOf = (i: number): string => setting.materials[i]!.shelf.name;
  const lye = lyeStage({ setting, roles, account });
  if (lye !== undefined) {
    const by = roles.indexOf("metal");
    return {
      by,
      first: lye.first,
      back: lye.back,
      gas: lye.gas.key,
      setsPace: true,
      byLye: true,
      after: `Let it stand until no more gas rises and the ${nameOf(by)} has gone into solution, warming at the end if it has become slow; if it is not clear, filter it through glass wool or synthetic cloth, for lye eats paper, and rinse that with a little water: what the metal has beside it would dissolve in the acid. Only then comes the acid.`,
    };
  }
  const before = baseBeforeSalt(setting);
  const sour = kind === "displacement" ? baseInAcid(setting) : before;
  if (sour === undefined) return undefined;
  const gas = gasOfBase(sour);
  const gone = `Stir until the ${nameOf(sour.base)} has dissolved${gas === undefined ? "" : " and no more gas rises"}`;
  if (before !== undefined) {
    const isWarm = WARM_IN_ACID.some(({ formulas }) => isOneOf(setting.materials[before.base]!.form, ...formulas));
    return {
      by: before.base,
      ...dissolvedInAcid(setting, account, before),
      gas,
      setsPace: true,
      byLye: false,
      after: `${gone}, ${isWarm ? "still as warm as that: half an hour or more, topping the water up" : "warming it at the end if it has become slow"}; what stays after that goes on a filter, rinsed with a little hot water. Only then comes the ${nameOf(before.salt)}: before, it would leave the acid less water to dissolve in, and crystals could cover what has not reacted.`,
    };
  }
  return {
    by: sour.base,
    ...dissolvedInAcid(setting, account, sour),
    gas,
    setsPace: false,
    byLye: false,
    after: `${gone}, and filter it if it is not clear: what does not dissolve would be in the product. Only then comes the metal.`,
  };
}

/** Is it dissolved hot, and would crystallise in its jug while the stage before it takes its time? */
export function waitsForStage({ feeds, setting }: Frame, stage: Stage | undefined, i: number): boolean {
  const feed = feeds[i]!;
  return stage !== undefined && i !== stage.by && feed.how === "dissolve" && feed.at.compare(setting.temperature) > 0;
}

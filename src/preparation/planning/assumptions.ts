// What a plan took for granted because the request does not give, and where each figure comes from.

import { PLANNING, type PlanningName } from "../data/planning";
import { cite, type SourceKey } from "../data/sources";
import { settles } from "../procedure/isolation";
import { isLedIn } from "../reaction/fluids";
import { type Setting, usualLossOf } from "../request/setting";
import { type Acknowledged, inWords } from "../safety/acknowledged";
import type { Batch } from "./batch";
import { planned } from "./exact";

/** A planning value that the plan used, or a danger that the request acknowledged. */
export interface Assumption {
  /** Number, with its unit where it has one; the code of an acknowledged danger. */
  readonly value: string;
  /** What was assumed, in words. */
  readonly what: string;
  /** Key of the source; `cite` prints it. */
  readonly source: SourceKey;
  /** The source as it is printed on a sheet. */
  readonly citation: string;
}

/** Values in force: those of the frame that the request leaves open, and those of what is really done. */
function namesOf(setting: Setting, batch: Batch): PlanningName[] {
  const { isolation, vessel, additionRate, gas, feeds } = batch;
  const { request, wet, materials } = setting;
  const inPortions = additionRate !== undefined && !materials.some(isLedIn);
  const isWashed = batch.washing !== undefined && (!("plan" in batch.washing) || batch.washing.plan.washes > 0);
  const { room, readability, washing } = request;
  const isBySize = washing?.washVolume === undefined && isolation.how === "precipitate" && isWashed;
  const foam = gas.length === 0 ? "foamWithoutGas" : vessel?.intoAcid === true ? "foamIntoAcid" : "foamWithGas";
  const crystals = isolation.how === "crystallise";
  const isFree = request.waterFactor === undefined;
  const set = new Set(feeds.flatMap((feed) => (feed.how === "dissolve" ? (feed.by ?? []) : [])));
  const when: readonly (readonly [boolean, PlanningName])[] = [
    [request.temperature === undefined, "temperature"],
    [request.pressure === undefined && gas.length > 0, "pressure"],
    [readability?.mass === undefined, "massStep"],
    [readability?.volume === undefined && materials.some((m) => m.isSolution), "volumeStep"],
    [room?.volume === undefined && additionRate !== undefined, "roomVolume"],
    [room?.airChanges === undefined && additionRate !== undefined, "airChanges"],
    [isFree && set.has("feedStrength"), "feedStrength"],
    [isFree && set.has("baseStrength"), "baseStrength"],
    [isFree && set.has("coldWaterFactor"), "coldWaterFactor"],
    [isFree && (crystals || isolation.how === "unknown") && set.has("hotWaterFactor"), "hotWaterFactor"],
    [feeds.some((feed) => feed.how === "unknown"), "thinFeed"],
    [feeds.some((feed) => feed.how === "solution" && feed.dilution !== undefined) && crystals, "dilutedAcid"],
    [wet, "precipitatesBelow"],
    [request.vesselFactor === undefined && vessel !== undefined, foam],
    [inPortions, "leastPortions"],
    [inPortions, "portionLasts"],
    [additionRate !== undefined, "gasFlow"],
    [isBySize && !settles(setting), "washesOf"],
    [isBySize && settles(setting), "mostDecantations"],
    [washing?.residue === undefined && isolation.how === "precipitate", "residue"],
    [crystals, batch.crystallising?.hot.compare(planned("nearTheBoil")) === 0 ? "nearTheBoil" : "hot"],
    [request.handlingLoss === undefined, usualLossOf(setting)],
  ];
  return when.flatMap(([isInForce, name]) => (isInForce ? [name] : []));
}

export function assumptionsOf(setting: Setting, batch: Batch, acknowledged: readonly Acknowledged[]): Assumption[] {
  const water = {
    value: "H₂O",
    what: "stands in the equation although the request leaves it out: nothing else was missing",
  };
  return [
    ...(setting.lacksWater ? [{ ...water, source: "commonPractice" as const, citation: cite("commonPractice") }] : []),
    ...acknowledged.map((one) => ({
      value: one.code,
      what: inWords(one),
      source: one.source,
      citation: cite(one.source),
    })),
    ...namesOf(setting, batch).map((name) => {
      const { value, what, source } = PLANNING[name];
      return { value, what, source, citation: cite(source) };
    }),
  ];
}

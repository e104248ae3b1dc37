// Whether a route fits a room: what its plans handle, at the strength they handle it, and the heat they need.
import { quantity } from "../quantity";
import { SETTINGS, type Setting } from "./data/settings";
import { cite } from "./data/sources";
import type { Draft } from "./draft";
import { heatOf } from "./figures";
import type { RefusedRoute } from "./reason";

/** Why a route is for another room; undefined where it fits. */
export function unfitFor({ found, planned }: Draft, setting: Setting): RefusedRoute | undefined {
  const { codes, hottest, source } = SETTINGS.find((row) => row.setting === setting)!;
  const refusal = (text: string, i: number, celsius?: number): RefusedRoute => ({
    code: "setting",
    text,
    numbers: celsius === undefined ? [] : [quantity(`${celsius} °C`)],
    source: cite(source),
    equation: String(found.steps[i]!.judgement.equation),
    instead: [],
    unknown: false,
  });
  for (const [i, { step, unit }] of planned.entries()) {
    const heat = heatOf(step);
    if (heat !== undefined && hottest !== undefined && heat > hottest)
      return refusal(`${heat} °C is hotter than a place such as this has (${setting})`, i, heat);
    for (const { material, statements } of unit.cautions.substances) {
      const one = statements.find(({ code }) => codes.includes(code.slice(0, 4)));
      if (one !== undefined)
        return refusal(
          `${material}, as it is handled, is not for a place such as this (${setting}): ${one.paraphrase}`,
          i,
        );
    }
  }
  return undefined;
}

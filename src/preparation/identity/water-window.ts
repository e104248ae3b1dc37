// How hot a hydrate is heated so that all its water leaves and nothing else, and at which hydrate a cooler oven stops.

import { type Formula, molarMass, parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { anhydrousOf, stagedDehydration } from "../../hydrate";
import type { Quantity } from "../../quantity";
import { thermalStepsOf } from "../../substance/internal";
import { WATER_ALONE } from "../data/ignition";

/** A step of heating with the one solid that it leaves; undefined for none or several. */
interface Step {
  readonly from: Quantity;
  readonly to?: Quantity | undefined;
  readonly left: Formula | undefined;
}

const celsius = (one: Quantity): number => one.toNumber("°C");

/** Steps by the table of dehydration, or of heating where that has none. */
function stepsOf(formula: Formula): readonly Step[] {
  const staged = attempt(() => stagedDehydration(formula));
  return staged.ok
    ? staged.value.steps.map(({ formula: left, from, to }) => ({ from, to, left }))
    : thermalStepsOf(formula).map(({ from, to, remains: [one, another] }) => ({
        from,
        to,
        left: one === undefined || another !== undefined ? undefined : parseFormula(one.formula),
      }));
}

/** Steps in which water leaves, up to the salt without it; undefined where the table does not go so far. */
function dryingOf(formula: Formula): readonly Step[] | undefined {
  const dry = anhydrousOf(formula);
  const steps = stepsOf(formula);
  const at = steps.findIndex(({ left }) => left?.hasSameComposition(dry));
  return at < 0 ? undefined : steps.slice(0, at + 1);
}

/** By what temperature the last water has left, °C; undefined where no table tells. */
export function driedBy(formula: Formula): number | undefined {
  const last = dryingOf(formula)?.at(-1);
  return last && celsius(last.to ?? last.from);
}

/** Mass that a formula keeps of its own where it is heated to a temperature, as a share, by the steps that begin below it; undefined where no table tells. */
export function keptAt(formula: Formula, at: number): Quantity | undefined {
  const steps = dryingOf(formula)?.filter(({ from }) => celsius(from) < at);
  const left = steps === undefined ? undefined : steps.length === 0 ? formula : steps.at(-1)!.left;
  return left && molarMass(left).dividedBy(molarMass(formula)).to("%");
}

/** How it is heated so that it loses its water alone, in words. */
export function heatedDry(formula: Formula): string {
  const only = "only water is driven off";
  const steps = dryingOf(formula);
  const low = driedBy(formula);
  if (steps === undefined || low === undefined) return only;
  const [next] = thermalStepsOf(anhydrousOf(formula));
  const high = next && celsius(next.from) - WATER_ALONE.below;
  const range = high === undefined ? `${low} °C or a little more` : high > low ? `${low} to ${high} °C` : `${low} °C`;
  const [last, before] = [steps.at(-1)!, steps.at(-2)];
  const between = before?.left;
  const stops = between !== undefined && celsius(last.from) - celsius(before!.to ?? before!.from) >= WATER_ALONE.stops;
  const share = between && molarMass(between).dividedBy(molarMass(formula)).to("%");
  const cooler = stops
    ? `; cooler it stops at ${between.toUnicode()}, ${share!.format({ decimals: 1, uncertainty: "none" })}`
    : "";
  return `${range}: ${only}${cooler}`;
}

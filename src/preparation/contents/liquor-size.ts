// How much of a liquor there is, for who pours it: by its density where salts make it heavier than water.
import { densityOfSolution } from "../../amount";
import { molarMass } from "../../formula";
import { attempt } from "../../foundation/error";
import { type Quantity, sum } from "../../quantity";
import { exact, planned } from "../planning/exact";
import type { Contents } from "./contents";

/** Volume of the liquid in a vessel; undefined where its salts make it heavier than water and no table tells by how much. */
export function volumeOfLiquor({ dissolved, solids, mass, volume }: Contents): Quantity<"volume"> | undefined {
  if (volume === undefined) return undefined;
  const salts = dissolved
    .map(({ formula, amount }) => ({ formula, mass: amount.times(molarMass(formula)).to("g") }))
    .sort((one, other) => other.mass.compare(one.mass));
  const [most] = salts;
  if (most === undefined) return volume;
  const all = sum(salts.map((one) => one.mass));
  const liquid = solids.reduce<Quantity>((rest, one) => rest.minus(one.mass), mass);
  const strength = all.dividedBy(liquid);
  if (strength.compare(planned("heavyLiquor")) <= 0) return volume;
  // of several salts the one that is nearly all of it stands for them
  const isAlone = most.mass.compare(all.times(exact("90 %"))) >= 0;
  const density = isAlone
    ? attempt(() => densityOfSolution(most.formula, strength.to("%") as Quantity<"mass fraction">))
    : undefined;
  if (!density?.ok) return undefined;
  const naming = { symbol: "V", label: "volume by its density", rule: "volume = mass / density" };
  return liquid.dividedBy(density.value).to("mL").named(naming) as Quantity<"volume">;
}

// Water as the request states it: so much to a feed, or as much as makes it so strong.

import { convertStrength } from "../../amount";
import { attempt } from "../../foundation/error";
import { type Quantity, type QuantityLike, quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { PlanError } from "../error";
import { asMassOfWater, exact } from "../planning/exact";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { crystalWaterOf, type Feed } from "./feed";

/** Does the request say how much water a material gets? */
export const isStated = ({ shelf: { dissolve } }: Material): boolean =>
  dissolve?.water !== undefined || dissolve?.concentration !== undefined;

const orNone = (water: Quantity): Quantity => (water.isPositive() ? water.to("g") : exact("0 g"));

/** Water to put to a solid as the request says, its crystal water counted; undefined where it says nothing. */
export function waterForSolid(material: Material, amount: Quantity): Quantity | undefined {
  const { dissolve } = material.shelf;
  if (dissolve?.water !== undefined) return asMassOfWater(quantity(dissolve.water as Quantity));
  if (dissolve?.concentration === undefined) return undefined;
  const strength = quantity(dissolve.concentration as QuantityLike);
  const inside = amount.times(matterOf(material.form).core.molarMass).to("g");
  // by volume it is counted on a kilogram of water, as all feeds are
  const water =
    strength.dimension === "concentration"
      ? amount.dividedBy(strength.dividedBy(exact("1 kg/L"))).to("g")
      : strength.dimension === "density"
        ? inside.dividedBy(strength).times(exact("1 kg/L")).to("g")
        : inside.dividedBy(strength).minus(inside).to("g");
  return orNone(water.minus(crystalWaterOf(material, amount)));
}

/** Water to pour a solution into as the request says; undefined where it says nothing. */
export function waterForSolution(material: Material, mass: Quantity): Quantity | undefined {
  const { dissolve, name } = material.shelf;
  if (dissolve?.water !== undefined) return asMassOfWater(quantity(dissolve.water as Quantity));
  if (dissolve?.concentration === undefined) return undefined;
  const asked = quantity(dissolve.concentration as QuantityLike);
  const isByVolume = asked.dimension === "concentration" || asked.dimension === "density";
  const aim = isByVolume
    ? attempt(() => convertStrength(asked, { of: material.form, to: "% w/w", density: undefined }))
    : undefined;
  const to = aim === undefined ? asked : aim.ok ? aim.value : undefined;
  const from = material.massFraction();
  if (to === undefined || from === undefined)
    throw new PlanError("plan.strength", `how much water makes ${name} ${asked} is not known: a density is missing`, {
      hint: `give dissolve.concentration and the strength of ${name} as mass fractions, or dissolve.water`,
    });
  if (!to.isPositive() || to.compare(from) > 0)
    throw new PlanError(
      "plan.strength",
      `${name} is ${from.to("%").format({ significant: 3, uncertainty: "none" })}: water does not make it ${asked}`,
      {
        hint: "give a lower dissolve.concentration, or leave it out",
      },
    );
  return orNone(mass.times(from.dividedBy(to).minus(exact("1"))));
}

/** What the request says of dissolving is done, or refused: nothing of it is passed over. */
export function checkStated({ materials, asides }: Setting, feeds: readonly Feed[]): void {
  const refuse = (name: string, what: string, hint: string): never => {
    throw new PlanError("plan.request", `dissolve of ${name} ${what}`, { hint });
  };
  for (const { shelf } of asides)
    if (shelf.dissolve !== undefined)
      refuse(shelf.name, "has no use: it takes no part in the equation", "`portion` says how much of it goes in");
  materials.forEach(({ shelf: { name, dissolve } }, i) => {
    if (dissolve === undefined) return;
    const feed = feeds[i]!;
    if (dissolve.water !== undefined && dissolve.concentration !== undefined)
      refuse(name, "has both water and concentration", "give one of them");
    if (feed.how === "solid") refuse(name, `has no use: ${feed.why}`, "leave it out");
    if (feed.how === "solution" && dissolve.temperature !== undefined)
      refuse(name, "has a temperature, and a solution is not dissolved", "leave the temperature out");
  });
}

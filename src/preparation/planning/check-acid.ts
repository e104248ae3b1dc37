// What acids are watched for with bases and metals, and metals with the salt of another: which of the two is left, and how it
// leaves the product.

import { molarMass } from "../../formula";
import type { Quantity } from "../../quantity";
import { acidTakes } from "../procedure/acid-takes";
import { baseInAcid, metalGone } from "../procedure/base-in-acid";
import { isSaltOver, signOfMetalGone } from "../procedure/displaced";
import { isAcidSalt } from "../procedure/kind";
import { acidKeptWith } from "../procedure/protection";
import { isByLye } from "../procedure/roles";
import { isAcid, isMetal } from "../reaction/acids";
import { isVolatile } from "../reaction/fluids";
import { takesLastHydron } from "../reaction/last-hydron";
import {
  acidsIn,
  acidTakerAmong,
  bringsAcid,
  moreForAcids,
  neutralisation as reactionOf,
} from "../reaction/neutralising";
import { isInLongPieces, isInPieces, isPowder } from "../shelf/pieces";
import { type Check, check, ofWeighing, shown, type Watched } from "./check";
import { planned } from "./exact";
import { calledLeft, type Feeding, feedingsOf, isOver, leftOf } from "./left-over";

/** A salt that turns basic in a liquor without free acid. */
function acidKept({ setting: { product } }: Watched, acid: Feeding, solid: Feeding): Check {
  const why = `it keeps the ${product.name} from turning basic; what is left of it leaves as the crystals dry`;
  if (isOver(acid)) return check(`${shown(leftOf(acid))} of ${calledLeft(acid)} is left free: ${why}`, leftOf(acid));
  const usual = `${shown(planned("usualExcess"), 2)} excess of ${acid.material.shelf.name} is usual: ${why}`;
  return isOver(solid)
    ? check(
        `${shown(leftOf(solid))} of ${solid.material.shelf.name} is over, and the liquor free of acid; ${usual}`,
        leftOf(solid),
      )
    : check(`no excess is planned; ${usual}`, planned("usualExcess"));
}

/** A salt with acid hydrogen: more of a base that takes it makes another salt; of one that does not it stays what it is. */
function acidSalt({ setting: { product } }: Watched, base: Feeding): Check {
  const { name } = base.material.shelf;
  if (takesLastHydron(base.material.form, product.formula))
    return isOver(base)
      ? check(`${shown(leftOf(base))} of ${name} is in excess: it makes another salt of the product`, leftOf(base))
      : check(`no excess of ${name}: it would make another salt of the product`);
  const where = base.dissolves ? "in the liquor, as what it is" : "in the product";
  const why = `it takes no more hydrogen from the ${product.name}`;
  return isOver(base)
    ? check(`${shown(leftOf(base))} of ${name} is in excess: ${why}, and stays ${where}`, leftOf(base))
    : check(`no excess of ${name}: ${why}, and would stay ${where}`);
}

/** What a neutralisation is watched for. */
export function neutralisation(watched: Watched): Check[] {
  const feedings = feedingsOf(watched);
  const acid = feedings.find(({ material }) => isAcid(material.form));
  const solid = feedings.find((f) => f !== acid);
  if (acid === undefined || solid === undefined) return [];
  const name = solid.material.shelf.name;
  if (isAcidSalt(watched.setting.product.formula)) return [acidSalt(watched, solid)];
  const free = (one: Feeding): string => `${shown(leftOf(one))} of ${calledLeft(one)}`;
  if (acidKeptWith(watched.setting.product.formula) !== undefined) return [acidKept(watched, acid, solid)];
  if (isOver(acid) && isVolatile(acid.material.form))
    return [
      check(
        `${free(acid)} is left free; it leaves as the liquor is boiled down and the crystals are dried`,
        leftOf(acid),
      ),
    ];
  // What precipitates is washed free of acid; a solid base over the need would stay in it.
  const precipitates = watched.batch.isolation.how === "precipitate";
  if (precipitates && isOver(acid))
    return [check(`${free(acid)} is left free: the washing takes it out of the precipitate`, leftOf(acid))];
  if (precipitates && isOver(solid) && !solid.dissolves)
    return [check(`${shown(leftOf(solid))} of ${name} is in excess and stays in the precipitate`, leftOf(solid))];
  if (isOver(acid))
    return [
      check(
        `${free(acid)} is left free: the crystals contain acid; plan an excess of ${name} instead${solid.dissolves ? ", or neutralise by paper" : ""}`,
        leftOf(acid),
      ),
    ];
  // A base that is dissolved is not filtered off: ammonia leaves with the steam, soda and lye stay.
  if (isOver(solid) && solid.dissolves)
    return [
      check(
        isVolatile(solid.material.form)
          ? `${free(solid)} is left free; it leaves as the liquor is boiled down`
          : `${free(solid)} is left free: add acid until the paper shows neutral`,
        leftOf(solid),
      ),
    ];
  if (isOver(solid))
    return [
      check(`filter ${shown(leftOf(solid))} of ${name} off at the end: the liquor is then free of acid`, leftOf(solid)),
    ];
  if (solid.dissolves && !isVolatile(solid.material.form))
    return [
      check(
        `no excess is planned: keep a little of the ${name} back and bring the liquor to neutral by the paper with it; ${
          isVolatile(acid.material.form)
            ? `acid that is left leaves with the steam, ${name} would stay in the crystals`
            : "what is left of either stays in the crystals"
        }`,
      ),
    ];
  if (precipitates && !solid.dissolves)
    return [check(`no excess is planned: a little more acid is usual, so that no ${name} stays in the precipitate`)];
  return [
    check(
      `no excess is planned: ${shown(planned("usualExcess"), 2)} excess of ${name} is usual${solid.dissolves ? "" : ", filtered off at the end"}, so that no free acid is left`,
      planned("usualExcess"),
    ),
  ];
}

/** What a metal in an acid is watched for. */
export function metalAndAcid(watched: Watched): Check[] {
  const feedings = feedingsOf(watched);
  const metal = feedings.find(({ material }) => isMetal(material.form));
  const checks = watched.batch.gas
    .filter((gas) => gas.limit !== undefined || gas.hood)
    .map((gas) =>
      check(
        gas.hood
          ? `${shown(gas.volume)} of ${gas.formula}: under a hood`
          : `${shown(gas.volume)} of ${gas.formula}: no flame, open window, never a closed vessel`,
        gas.volume,
      ),
    );
  if (metal === undefined) return checks;
  const { name } = metal.material.shelf;
  const isAsked = feedings.some((one) => one !== metal && one.material.shelf.excess !== undefined);
  if (isOver(metal))
    checks.push(
      check(
        `filter ${shown(leftOf(metal))} of ${name} off at the end: it keeps the liquor reduced${acidKeptWith(watched.setting.product.formula) === undefined ? " and free of acid" : "; it uses the acid up, so the filtered liquor is given some more"}`,
        leftOf(metal),
      ),
    );
  else if (acidKeptWith(watched.setting.product.formula) !== undefined)
    checks.push(check("the metal runs out: the liquor stays acid, as this product asks for", metal.supplied.excess));
  else if (!isByLye(watched.setting, watched.roles))
    checks.push(
      check(
        isAsked
          ? "the metal runs out, and acid stays free, as asked for"
          : `the metal runs out: acid stays free; ${shown(planned("usualExcess"), 2)} excess of ${name} is usual`,
        metal.supplied.excess,
      ),
    );
  return checks;
}

/** What takes the rest of a metal out of the product. */
function whatTakes({ setting }: Watched, { material }: Feeding): string {
  const isTaken = acidTakes(setting, setting.materials.indexOf(material)) !== undefined;
  if (isPowder(material)) return isTaken ? "dilute acid takes it" : "it stays in the product";
  const powder = isTaken
    ? ", and dilute acid takes what is powder"
    : isInPieces(material)
      ? ""
      : "; what is powder stays in the product";
  return `pieces are lifted out${powder}`;
}

/** Metal that goes to the acid in which a salt of the batch is dissolved: it is weighed for that. */
function takenByAcid({ setting: { materials }, batch }: Watched, { material }: Feeding): Check[] {
  if (!bringsAcid(materials) || acidTakerAmong(materials) !== material) return [];
  const portions = batch.materialBalance.supplied.map(({ portion }) => portion);
  const taken = moreForAcids(materials, portions, material).times(molarMass(material.form)).to("g");
  const acids = materials.flatMap((one, i) =>
    acidsIn(one, portions[i]!).map(({ acid }) => ({ of: one.shelf.name, isIn: one.putOn !== undefined, acid })),
  );
  const [first] = acids;
  const brings = new Set(acids.map(({ acid }) => String(acid))).size === 1 ? first : undefined;
  const reaction = brings && reactionOf(material.form, brings.acid);
  const named =
    brings === undefined
      ? "the acid"
      : `the ${brings.acid.toUnicode()} that the ${brings.of} ${brings.isIn ? "is dissolved in" : "brings along"}`;
  const so = reaction === undefined ? "" : ` (${reaction.equation})`;
  return [
    ofWeighing(
      `${shown(taken, 2)} of ${material.shelf.name} is weighed for ${named}, which dissolves it${so} and gives hydrogen: no flame, in moving air`,
      taken,
    ),
  ];
}

/** Acid that is more than its base takes goes to the metal. */
function takenByFreeAcid({ setting, batch }: Watched, { material }: Feeding): Check[] {
  const hydrogen = batch.gas.find(({ key }) => key === "H2");
  const sour = baseInAcid(setting);
  if (hydrogen === undefined || sour === undefined) return [];
  const { form: acid, shelf } = setting.materials[sour.acid]!;
  const taken = metalGone(hydrogen.amount, material.form, acid);
  return [
    check(
      `the ${shelf.name} that is over takes as much as ${shown(taken, 2)} of the ${material.shelf.name}, and gives ${shown(hydrogen.volume)} of hydrogen: no flame, in moving air`,
      hydrogen.volume,
    ),
  ];
}

/** So much of a metal, as weighed for less, that a piece of it stays whole. */
function staysWholeFrom({ material, supplied: { portion, amount, timesStoichiometric } }: Feeding): Quantity {
  const need = amount.dividedBy(timesStoichiometric);
  const more = need.times(planned("stripOver")).plus(need).minus(amount).times(molarMass(material.form)).to("g");
  return more.plus(material.massOf(portion) ?? more);
}

/** What a metal that displaces another is watched for. */
export function displacement(watched: Watched): Check[] {
  const metal = feedingsOf(watched).find(({ material }) => isMetal(material.form));
  if (metal === undefined) return [];
  const { material, supplied } = metal;
  const { name } = material.shelf;
  const isThin = isInLongPieces(material) && supplied.excess.compare(planned("stripOver")) < 0;
  const thin = isThin
    ? [
        ofWeighing(
          `of ${name} in one piece twice the need and more stays whole, and all the rest is lifted out: of what is nearly used up crumbs are left in the product; whoever has about ${shown(staysWholeFrom(metal), 2)} takes that`,
          supplied.excess,
        ),
      ]
    : [];
  return isOver(metal)
    ? [
        check(`${shown(leftOf(metal))} of ${name} is left over: ${whatTakes(watched, metal)}`, leftOf(metal)),
        ...thin,
        ...takenByAcid(watched, metal),
        ...takenByFreeAcid(watched, metal),
      ]
    : [
        ...takenByAcid(watched, metal),
        ...takenByFreeAcid(watched, metal),
        check(
          isSaltOver(watched.setting, watched.batch.materialBalance.supplied)
            ? `it is done when ${signOfMetalGone(watched.setting, watched.setting.materials.indexOf(material))}; salt is over and stays in the liquor: add no more of the ${name}`
            : `it is done when the last of the ${name} is gone; a drop of the liquor on a bright piece of the same metal shows whether any salt is left`,
        ),
      ];
}

// The way of each material by itself: poured as it is or diluted, led in, stirred in as a solid, or dissolved.

import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { SLOW_IN_ACID } from "../data/firing";
import { PlanError } from "../error";
import { exact, planned } from "../planning/exact";
import { isAcid } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { isGas, isLedIn, isVolatile } from "../reaction/fluids";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { baseInAcid } from "./base-in-acid";
import { type Dilution, type Feed, type Feeding, waterToAdd } from "./feed";
import { dissolved } from "./feed-dissolved";
import { isPurifiedHot } from "./isolation";
import { isBase } from "./kind";
import { isPeroxide } from "./roles";
import { isStated, waterForSolution } from "./stated-water";

/** Acids whose own reduction gives the gas are used as strong as they are: nothing else that reacts brings the element of the gas. */
export function isOxidisingAcid({ form }: Material, { products, reactants, wet }: Setting): boolean {
  const gives = (gas: string, element: string): boolean =>
    products.some(({ formula }) => isGas(formula, wet) && isOneOf(formula, gas)) &&
    reactants.filter(({ formula }) => formula.count(element).n !== 0n).length === 1;
  return (
    (isOneOf(form, "HNO3") && gives("NO2", "N")) || (isAcid(form) && form.count("S").n !== 0n && gives("SO2", "S"))
  );
}

/** A metal that only warm strong acid dissolves at a pace. */
export const isSlowMetal = ({ form }: Material, { materials }: Setting): boolean =>
  isOneOf(form, ...SLOW_IN_ACID.metals) && materials.some((one) => isOneOf(one.form, SLOW_IN_ACID.acid));

/** The acid that such a metal is dissolved in. */
const isForSlowMetal = ({ form }: Material, setting: Setting): boolean =>
  isOneOf(form, SLOW_IN_ACID.acid) && setting.materials.some((one) => isSlowMetal(one, setting));

/** How strong an acid is before anything is put into it. */
const acidStrength = ({ form }: Material, setting: Setting): Quantity =>
  planned(isVolatile(form) && baseInAcid(setting) !== undefined ? "acidOnMetal" : "dilutedAcid");

/** Strong solutions are poured into water first; thin ones, ammonia for a complex and peroxide are not; and what is asked for is done. */
function dilutionOf(material: Material, i: number, feeding: Feeding): Dilution | undefined {
  const { setting, portions, account, roles, crystals } = feeding;
  const role = roles[i]!;
  if (role === "water") return undefined;
  const w = material.massFraction();
  if (isStated(material)) {
    const all = material.massOf(portions[i]!);
    const stated = all === undefined ? undefined : waterForSolution(material, all);
    if (all === undefined || w === undefined || stated === undefined)
      throw new PlanError(
        "plan.strength",
        `how strong ${material.shelf.name} is by mass is not known: it cannot be diluted as asked for`,
        {
          hint: "give its density, or its strength as a mass fraction",
        },
      );
    return stated.isPositive() ? dilutedBy(all, w, stated) : undefined;
  }
  if (w === undefined || w.compare(planned("dilute")) <= 0) return undefined;
  if (isPeroxide(material) || role === "ligand" || role === "oxidiser" || isOxidisingAcid(material, setting))
    return undefined;
  if (isForSlowMetal(material, setting)) return undefined;
  const mass = material.massOf(portions[i]!);
  if (mass === undefined) return undefined;
  const { amount } = account.supplied[i]!;
  const own = material.solventIn(portions[i]!)!;
  const isSalt = !isAcid(material.form) && !isBase(material.form);
  // A salt is diluted for its precipitation only: a ligand is to meet it strong, and what crystallises is not boiled down twice.
  if (isSalt && (crystals || roles.includes("ligand"))) return undefined;
  const water =
    !crystals && (role === "precipitant" || isSalt)
      ? amount.dividedBy(planned("feedStrength")).minus(own).to("g")
      : mass.times(w.dividedBy(acidStrength(material, setting)).minus(exact("1"))).to("g");
  return water.isPositive() ? dilutedBy(mass, w, water) : undefined;
}

/** A solution poured into water. */
export const dilutedBy = (mass: Quantity, w: Quantity, water: Quantity): Dilution => ({
  water: waterToAdd(water, "water = what thins it to the strength"),
  to: mass.times(w).dividedBy(mass.plus(water)).to("%"),
});

/** One material that water makes something else of, and not its hydrate. */
function takesTheWater({ materials, reactants, product }: Setting): boolean {
  const [only] = materials;
  if (only === undefined || materials.length > 1 || !reactants.some(({ isWater }) => isWater)) return false;
  return matterOf(only.form).core.key !== matterOf(product.formula).core.key;
}

/** How a material goes in, whatever else does. */
export function feedOf(material: Material, i: number, feeding: Feeding): Feed {
  const { setting, portions, roles } = feeding;
  const { wet, temperature } = setting;
  const { name } = material.shelf;
  const { form, formName } = material;
  const asSolid = (why: string, dissolves = false): Feed => ({ material: name, how: "solid", why, dissolves });
  if (!wet) return asSolid("it is heated dry");
  if (material.isSolution)
    return {
      material: name,
      how: "solution",
      water: material.solventIn(portions[i]!) as Quantity<"mass"> | undefined,
      dilution: dilutionOf(material, i, feeding),
    };
  if (isLedIn(material)) return asSolid(`${formName} is a gas: lead it into the liquid`);
  if (form.symbols.length === 1) return asSolid(`${formName} goes into solution only as it reacts`);
  const fate = fateOf(form, temperature);
  if (fate.precipitated === true && !isPurifiedHot(setting)) return asSolid(`${fate.why}: stir it in as a solid`);
  // hot, both go together as solutions
  if (roles[i] === "gas-giving base" && !isStated(material) && feeding.mixedHot === undefined)
    return asSolid(`${formName} gives off gas: it goes in dry, in portions`, fate.precipitated === false);
  const feed = dissolved(material, i, feeding);
  if (feed.how !== "unknown" || !takesTheWater(setting)) return feed;
  const why = `${formName} reacts with the water: it goes into it, in portions`;
  return { material: name, how: "solid", why, dissolves: false, water: feed.water, reacts: true };
}

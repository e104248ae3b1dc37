// How each material goes into the work: dissolved in water of its own, poured as it is or diluted, stirred in as a solid.
// For a precipitation feeds are made thin, for crystals hot and in little more than the least water.

import { molarMass } from "../../formula";
import { attempt } from "../../foundation/error";
import { isOneOf } from "../../ion/internal";
import { type Quantity, quantity, type StrengthDimension, sum } from "../../quantity";
import { type DissolvingWater, waterToDissolve } from "../../solubility";
import { exact, planned } from "../planning/exact";
import type { Account } from "../reaction/account";
import { isAcid } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { isGas } from "../reaction/fluids";
import { waterOfReaction } from "../reaction/water-of-reaction";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { isBase } from "./kind";
import { inOrder, isPeroxide, type Role, ranksOf } from "./roles";

/** Water that a strong solution is poured into. */
export interface Dilution {
  /** Water that the solution is poured into. */
  readonly water: Quantity<"mass">;
  /** Strength after. */
  readonly to: Quantity<StrengthDimension>;
}

/** How one material goes into the pot. */
export type Feed =
  | {
      readonly material: string;
      readonly how: "dissolve";
      readonly dissolving: DissolvingWater;
      /** Temperature it is dissolved at. */
      readonly at: Quantity<"temperature">;
      readonly why: string;
      /** It shares one hot water with the other salts of its pot; the first of them has all of it. */
      readonly shares?: true;
    }
  | {
      readonly material: string;
      readonly how: "solution";
      readonly water: Quantity<"mass"> | undefined;
      readonly dilution: Dilution | undefined;
    }
  | {
      readonly material: string;
      readonly how: "solid";
      readonly why: string;
      /** What is left of it is dissolved in the liquor. */
      readonly dissolves: boolean;
      /** Water that it is stirred into, where nothing else brings any. */
      readonly water?: Quantity<"mass"> | undefined;
    }
  /** No solubility is known: how much water is chosen, whether it is enough shows. */
  | { readonly material: string; readonly how: "unknown"; readonly missing: string; readonly water: Quantity<"mass"> };

/** What decides how the materials go in. */
interface Feeding {
  readonly setting: Setting;
  readonly portions: readonly Quantity[];
  readonly account: Account;
  readonly roles: readonly Role[];
  /** The product crystallises from the liquor. */
  readonly crystals: boolean;
  /** The product precipitates as it forms. */
  readonly precipitates: boolean;
  /** What crystallises is not warmed: feeds are made cold, and strong. */
  readonly cold: boolean;
  /** All the water the liquor should have at the end, where that is known. */
  readonly target: Quantity | undefined;
  /** For a run: the feeds of its plan, and which of them nothing changed. A run has the water that the plan prescribes. */
  readonly planned:
    | {
        readonly feeds: readonly Feed[];
        readonly same: (i: number) => boolean;
        /** Its water was measured in the run. */
        readonly isMeasured: (i: number) => boolean;
      }
    | undefined;
}

const named = (q: Quantity, rule: string): Quantity<"mass"> =>
  q.to("g").named({ symbol: "m(H2O)", label: "water to add", rule }) as Quantity<"mass">;

/** Crystal water of a portion. */
const crystalWaterOf = ({ waters }: Material, amount: Quantity): Quantity =>
  amount.times(waters).times(molarMass("H2O")).to("g");

/** Water for a solution of a strength, crystal water counted; never below zero. */
function waterFor(material: Material, amount: Quantity, strength: Quantity): Quantity {
  const water = amount.dividedBy(strength).minus(crystalWaterOf(material, amount)).to("g");
  return water.isPositive() ? water : exact("0 g");
}

/** Materials whose way of dissolving is given, as the request says. */
function asStated(
  material: Material,
  amount: Quantity,
  known: DissolvingWater,
  at: Quantity<"temperature">,
): Feed | undefined {
  const { dissolve, name } = material.shelf;
  if (dissolve?.water === undefined && dissolve?.concentration === undefined) return undefined;
  const water =
    dissolve.water === undefined
      ? waterFor(material, amount, quantity(dissolve.concentration as Quantity).dividedBy(exact("1 kg/L")))
      : quantity(dissolve.water as Quantity);
  const mass = water.dimension === "volume" ? water.times(exact("1 g/mL")).to("g") : water.to("g");
  const warm = dissolve.temperature === undefined ? warmEnough(material, amount, mass, at) : undefined;
  const dissolving = {
    ...(warm?.known ?? known),
    water: mass as Quantity<"mass">,
    totalWater: mass.plus(crystalWaterOf(material, amount)),
  };
  return {
    material: name,
    how: "dissolve",
    dissolving: dissolving as DissolvingWater,
    at: warm?.at ?? at,
    why: "as asked for",
  };
}

/** Temperatures that are tried where the water that is given is too little in the room. */
const WARMER = ["30 °C", "40 °C", "50 °C", "60 °C", "70 °C", "80 °C", "90 °C"];

/** As warm as a given water must be to dissolve a portion; undefined where the room is warm enough, or nothing is. */
function warmEnough(
  { form }: Material,
  amount: Quantity,
  water: Quantity,
  room: Quantity<"temperature">,
): { readonly at: Quantity<"temperature">; readonly known: DissolvingWater } | undefined {
  const mass = amount.times(molarMass(form)).to("g");
  const enough = (at: Quantity<"temperature">): DissolvingWater | undefined => {
    const found = attempt(() => waterToDissolve({ formula: form, mass, temperature: at, waterFactor: "1" }));
    return found.ok && found.value.water.compare(water) <= 0 ? found.value : undefined;
  };
  if (enough(room) !== undefined) return undefined;
  for (const text of WARMER) {
    const at = exact(text) as Quantity<"temperature">;
    const known = at.compare(room) > 0 ? enough(at) : undefined;
    if (known !== undefined) return { at, known };
  }
  return undefined;
}

/** Does the water of a feed dissolve it at its temperature? Undefined where no figure is known. */
export function isTooLittle(feed: Feed, material: Material, amount: Quantity): boolean {
  if (feed.how !== "dissolve" || feed.why !== "as asked for") return false;
  const mass = amount.times(molarMass(material.form)).to("g");
  const found = attempt(() =>
    waterToDissolve({ formula: material.form, mass, temperature: feed.at, waterFactor: "1" }),
  );
  return found.ok && found.value.water.compare(feed.dissolving.water) > 0;
}

function dissolved(material: Material, i: number, feeding: Feeding): Feed {
  const { setting, account, roles } = feeding;
  // A base is made thin whatever comes of it, and so is a metal salt that a ligand is to meet.
  const meetsLigand = roles[i] === "metal salt" && roles.includes("ligand");
  // An oxidiser that is to come is not put into anything hot.
  const crystals =
    feeding.crystals && !feeding.cold && roles[i] !== "base" && !meetsLigand && !roles.includes("oxidiser");
  const { shelf, form, formName } = material;
  const { name } = shelf;
  const { amount } = account.supplied[i]!;
  const { temperature, request } = setting;
  const at = (
    shelf.dissolve?.temperature === undefined
      ? crystals
        ? planned("hot")
        : temperature
      : quantity(shelf.dissolve.temperature as Quantity)
  ) as Quantity<"temperature">;
  const least = request.waterFactor ?? planned(crystals ? "hotWaterFactor" : "coldWaterFactor").value.toString();
  const found = attempt(() =>
    waterToDissolve({
      formula: form,
      mass: amount.times(molarMass(form)).to("g"),
      temperature: at,
      waterFactor: least,
    }),
  );
  if (!found.ok)
    return {
      material: name,
      how: "unknown",
      missing: `solubility of ${formName}: ${found.error.message.split("\n")[0]}`,
      water: named(waterFor(material, amount, planned("thinFeed")), "chosen: 0.5 mol in each kg of water"),
    };
  const stated = asStated(material, amount, found.value, at);
  if (stated !== undefined) return stated;
  const base = { material: name, how: "dissolve", at } as const;
  const saturated = { ...base, dissolving: found.value, why: `${least} times what just dissolves it` };
  if (crystals || feeding.cold || request.waterFactor !== undefined) return saturated;
  // A ligand of a complex that stays dissolved is strong: what is made thin has to be boiled off again.
  const isStrong = feeding.crystals || (roles[i] === "ligand" && !feeding.precipitates);
  const aim = planned(isStrong ? "baseStrength" : "feedStrength");
  const aimed = amount.dividedBy(aim).to("g");
  if (aimed.compare(found.value.totalWater) <= 0) return saturated;
  const water = named(waterFor(material, amount, aim), `water to add = amount / (${aim}) − crystal water`);
  return {
    ...base,
    dissolving: { ...found.value, water, totalWater: aimed as Quantity<"mass">, meltsInOwnWater: false },
    why: `${aim} of water`,
  };
}

/** Acids whose own reduction gives the gas are used as strong as they are: nothing else that reacts brings the element of the gas. */
function isOxidisingAcid({ form }: Material, { products, reactants, wet }: Setting): boolean {
  const gives = (gas: string, element: string): boolean =>
    products.some(({ formula }) => isGas(formula, wet) && isOneOf(formula, gas)) &&
    reactants.filter(({ formula }) => formula.count(element).n !== 0n).length === 1;
  return (
    (isOneOf(form, "HNO3") && gives("NO2", "N")) || (isAcid(form) && form.count("S").n !== 0n && gives("SO2", "S"))
  );
}

/** Strong solutions are poured into water first; thin ones, ammonia for a complex and peroxide are not. */
function dilutionOf(material: Material, i: number, feeding: Feeding): Dilution | undefined {
  const { setting, portions, account, roles, crystals } = feeding;
  const role = roles[i]!;
  const w = material.massFraction();
  if (w === undefined || w.compare(planned("dilute")) <= 0) return undefined;
  if (isPeroxide(material) || role === "ligand" || role === "oxidiser" || isOxidisingAcid(material, setting))
    return undefined;
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
      : mass.times(w.dividedBy(planned("dilutedAcid")).minus(exact("1"))).to("g");
  return water.isPositive() ? dilutedBy(mass, w, water) : undefined;
}

const dilutedBy = (mass: Quantity, w: Quantity, water: Quantity): Dilution => ({
  water: named(water, "water = what thins it to the strength"),
  to: mass.times(w).dividedBy(mass.plus(water)).to("%"),
});

/** It comes as gas, by itself and not in water. */
export const isLedIn = ({ form, isSolution }: Pick<Material, "form" | "isSolution">): boolean =>
  !isSolution && isGas(form, false);

function feedOf(material: Material, i: number, feeding: Feeding): Feed {
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
  const isStated = material.shelf.dissolve?.water !== undefined || material.shelf.dissolve?.concentration !== undefined;
  const fate = fateOf(form, temperature);
  if (fate.precipitated === true) return asSolid(`${fate.why}: stir it in as a solid`);
  if (roles[i] === "gas-giving base" && !isStated)
    return asSolid(`${formName} gives off gas: it goes in dry, in portions`, fate.precipitated === false);
  return dissolved(material, i, feeding);
}

/** Water that a feed brings beside crystal water. */
function waterOf(feed: Feed): Quantity | undefined {
  if (feed.how === "dissolve") return feed.dissolving.water;
  if (feed.how === "unknown") return feed.water;
  if (feed.how === "solid") return feed.water;
  return feed.dilution === undefined ? feed.water : feed.water?.plus(feed.dilution.water);
}

/** A feed as it was weighed, in the water that was planned. */
function withWaterOf(plan: Feed, now: Feed): Feed {
  if (plan.how === "dissolve" && now.how === "dissolve") {
    const { water } = plan.dissolving;
    const more = water.minus(now.dissolving.water);
    const totalWater = now.dissolving.totalWater.plus(more) as Quantity<"mass">;
    return { ...now, why: plan.why, at: plan.at, dissolving: { ...now.dissolving, water, totalWater } };
  }
  if (plan.how === "unknown" && now.how === "unknown") return { ...now, water: plan.water };
  if (plan.how === "solid" && now.how === "solid") return { ...now, water: plan.water };
  return plan.how === "solution" && now.how === "solution" ? { ...now, dilution: plan.dilution } : now;
}

/** Why a feed has the water of the whole pot, or none of its own. */
const SHARED = "one hot water for all that goes into the pot";

/** Water that dissolves each of the other salts that form, hot: it is clear only then. What precipitates is filtered off instead. */
const swapped = ({ products, product, temperature: cold }: Setting, { formed }: Account): Quantity[] =>
  products.flatMap(({ formula, isWater }, i) => {
    if (products[i] === product || isWater || isGas(formula, true)) return [];
    if (fateOf(formula, cold).precipitated === true) return [];
    const { mass } = formed[i]!;
    const temperature = planned("hot") as Quantity<"temperature">;
    const found = attempt(() => waterToDissolve({ formula, mass, temperature, waterFactor: "1" }));
    return found.ok ? [found.value.totalWater] : [];
  });

/** Salts that go hot into one pot share its water: as much as the one that needs most, or as what is to crystallise. */
function sharing(
  feeds: readonly Feed[],
  { setting, account, roles, crystals, cold, target }: Feeding,
): readonly Feed[] {
  if (!crystals || cold || setting.request.waterFactor !== undefined) return feeds;
  const { materials } = setting;
  const ranks = ranksOf(setting, roles);
  const order = inOrder(setting, ranks, (i) => feeds[i]!.how === "solid");
  const first = ranks[order[0]!];
  const isIn = (i: number): boolean => {
    const feed = feeds[i]!;
    const { dissolve } = materials[i]!.shelf;
    return ranks[i] === first && feed.how === "dissolve" && dissolve === undefined;
  };
  const group = order.filter(isIn);
  // Where a solution is there first, its water is not theirs alone.
  if (group.length < 2 || group[0] !== order[0]) return feeds;
  const dissolving = (i: number): DissolvingWater => (feeds[i] as Extract<Feed, { how: "dissolve" }>).dissolving;
  const needs = [
    ...group.map((i) => dissolving(i).totalWater as Quantity),
    ...swapped(setting, account),
    ...(target === undefined ? [] : [target]),
  ];
  const total = needs.reduce((most, one) => (one.compare(most) > 0 ? one : most));
  const crystal = sum(group.map((i) => crystalWaterOf(materials[i]!, account.supplied[i]!.amount)));
  const water = total.minus(crystal).to("g");
  if (!water.isPositive()) return feeds;
  return feeds.map((feed, i): Feed => {
    if (feed.how !== "dissolve" || !group.includes(i)) return feed;
    const own =
      i === group[0]
        ? named(
            water,
            "water to add = the most that a salt of the pot needs, or what is to crystallise, less crystal water",
          )
        : (exact("0 g") as Quantity<"mass">);
    const totalWater = (i === group[0] ? water.plus(crystal) : exact("0 g")) as Quantity<"mass">;
    return {
      ...feed,
      why: SHARED,
      shares: true,
      dissolving: { ...feed.dissolving, water: own, totalWater, meltsInOwnWater: false },
    };
  });
}

/** Solids alone: the first is stirred into the water that the liquor is to have at the end. */
function stirredIn(feeds: readonly Feed[], { setting, account, roles, target }: Feeding): readonly Feed[] {
  if (target === undefined) return feeds;
  const { materials, reactants, products } = setting;
  const [first] = inOrder(setting, ranksOf(setting, roles), () => true);
  const water = target.minus(waterOfReaction(materials, account, reactants, products)).to("g");
  if (!water.isPositive()) return feeds;
  return feeds.map((feed, i) =>
    i === first && feed.how === "solid"
      ? { ...feed, water: named(water, "water to add = what the liquor needs at the end less all other water") }
      : feed,
  );
}

/** The feeds, with as much more water as the liquor needs at the end. */
export function feedsOf(feeding: Feeding): readonly Feed[] {
  const { setting, account, portions, target, planned: stated } = feeding;
  const { materials, reactants, products, product } = setting;
  if (stated !== undefined)
    return materials.map((material, i) =>
      stated.same(i)
        ? stated.feeds[i]!
        : stated.isMeasured(i)
          ? feedOf(material, i, feeding)
          : withWaterOf(stated.feeds[i]!, feedOf(material, i, feeding)),
    );
  const feeds = sharing(
    materials.map((material, i) => feedOf(material, i, feeding)),
    feeding,
  );
  const waters = feeds.map(waterOf).filter((q) => q !== undefined);
  if (waters.length === 0) return setting.wet ? stirredIn(feeds, feeding) : feeds;
  const all = sum(waters);
  // A reaction that binds the water leaves some of it liquid all the same.
  const wanted = target ?? all.times(planned("staysLiquid"));
  // The target is the water before crystals come: what they will bind is still liquid then.
  const bound =
    target === undefined
      ? exact("0 g")
      : account.extent.times(product.coefficient).times(product.waters).times(molarMass("H2O")).to("g");
  const more = wanted.minus(sum([all, bound, waterOfReaction(materials, account, reactants, products)])).to("g");
  if (!more.isPositive()) return feeds;
  const isPouredIntoWater = (i: number): boolean => {
    const { isSolution } = materials[i]!;
    return isSolution && feeds[i]!.how === "solution" && "dilution" in feeds[i]! && feeds[i].dilution !== undefined;
  };
  const strong = feeds.findIndex((_, i) => isPouredIntoWater(i));
  // Of salts that share a hot water the first has all of it.
  const takes = (feed: Feed): boolean =>
    feed.how === "unknown" || (feed.how === "dissolve" && (feed.shares !== true || feed.dissolving.water.isPositive()));
  const at = strong >= 0 ? strong : feeds.findIndex(takes);
  return feeds.map((feed, i) => {
    if (i !== at) return feed;
    if (feed.how === "dissolve") {
      const { water, totalWater } = feed.dissolving;
      return {
        ...feed,
        why: "as much water as the liquor is to have at the end",
        dissolving: {
          ...feed.dissolving,
          water: named(water.plus(more), "water to add = what the liquor needs at the end less all other water"),
          totalWater: totalWater.plus(more) as Quantity<"mass">,
        },
      };
    }
    if (feed.how === "unknown") return { ...feed, water: named(feed.water.plus(more), "what the liquor needs") };
    if (feed.how !== "solution") return feed;
    const material = materials[i]!;
    const mass = material.massOf(portions[i]!)!;
    return { ...feed, dilution: dilutedBy(mass, material.massFraction()!, feed.dilution!.water.plus(more)) };
  });
}

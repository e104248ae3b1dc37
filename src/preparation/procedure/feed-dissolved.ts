// How a solid is dissolved in water of its own: in how much, how warm, and why so. For a precipitation feeds are made thin,
// for crystals hot and in little more than the least water.

import { type Formula, molarMass, parseFormula } from "../../formula";
import { attempt, type PreparativeError } from "../../foundation/error";
import { anhydrousOf } from "../../hydrate";
import { isOneOf } from "../../ion/internal";
import { type Quantity, quantity } from "../../quantity";
import { type DissolvingWater, waterToDissolve } from "../../solubility";
import { WARM_FOR_AMMINE } from "../data/firing";
import { PLANNING } from "../data/planning";
import { WITH_LYE } from "../data/with-lye";
import { exact, planned } from "../planning/exact";
import { isAcid, isLye } from "../reaction/acids";
import { keyElement } from "../reaction/candidates";
import { fateInRoom } from "../reaction/fate";
import type { Material } from "../shelf/material";
import { crystalWaterOf, type Feed, type Feeding, waterToAdd } from "./feed";
import { overHydroxide } from "./over-hydroxide";
import { keptSour, losesAmmonia, thinnedTo } from "./protection";
import { isAgent } from "./roles";
import { warmAsReducer } from "./slow-complex";
import { isStated, waterForSolid } from "./stated-water";
import { celsius } from "./words";

/** The least water that dissolves a mass at a temperature; undefined where no solubility is known. */
export function leastWater(formula: Formula, mass: Quantity, at: Quantity<"temperature">): DissolvingWater | undefined {
  const found = attempt(() => waterToDissolve({ formula, mass, temperature: at, waterFactor: "1" }));
  return found.ok ? found.value : undefined;
}

/** Water for a solution of a strength, crystal water counted; never below zero. */
function waterFor(material: Material, amount: Quantity, strength: Quantity): Quantity {
  const water = amount.dividedBy(strength).minus(crystalWaterOf(material, amount)).to("g");
  return water.isPositive() ? water : exact("0 g");
}

/** Water for what no solubility is known of. */
function thinly(material: Material, amount: Quantity, product: Formula): Quantity {
  const share = thinnedTo(material.form);
  const mass = amount.times(molarMass(material.form)).to("g");
  const sour = keptSour(material.form, product);
  if (sour !== undefined) return mass.times(exact(sour.water)).to("g");
  if (share === undefined) return waterFor(material, amount, planned("thinFeed"));
  return mass.dividedBy(exact(share)).minus(mass).to("g");
}

/** Why a feed has the water that the request says. */
const AS_ASKED = "as asked for";

/** Materials whose way of dissolving is given, as the request says. */
function asStated(
  material: Material,
  amount: Quantity,
  known: DissolvingWater,
  at: Quantity<"temperature">,
): Feed | undefined {
  const { dissolve, name } = material.shelf;
  const mass = waterForSolid(material, amount);
  if (mass === undefined) return undefined;
  const warm = dissolve?.temperature === undefined ? warmEnough(material, amount, mass, at) : undefined;
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
    why: AS_ASKED,
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
    const least = leastWater(form, mass, at);
    return least !== undefined && least.water.compare(water) <= 0 ? least : undefined;
  };
  if (enough(room) !== undefined) return undefined;
  for (const text of WARMER) {
    const at = exact(text) as Quantity<"temperature">;
    const known = at.compare(room) > 0 ? enough(at) : undefined;
    if (known !== undefined) return { at, known };
  }
  return undefined;
}

/** Is there less water with a feed than just dissolves it at its temperature? Not where no figure is known. */
export function isShort(feed: Feed, material: Material, amount: Quantity): boolean {
  if (feed.how !== "dissolve") return false;
  const mass = amount.times(molarMass(material.form)).to("g");
  const least = leastWater(material.form, mass, feed.at);
  return least !== undefined && least.water.compare(feed.dissolving.water) > 0;
}

/** Is it the water that the request gives? */
export const isTooLittle = (feed: Feed, material: Material, amount: Quantity): boolean =>
  feed.how === "dissolve" && feed.why === AS_ASKED && isShort(feed, material, amount);

/**
 * A salt whose product comes out as it forms, so that all water costs some of it, and which a lye of the plan turns into one that
 * dissolves better: warm, in what keeps it clear with the lye once it has cooled.
 */
function withLye({ form, species, shelf: { name } }: Material, i: number, feeding: Feeding): Feed | undefined {
  const { setting, account, cold } = feeding;
  const row = WITH_LYE.find(
    ({ salt, lye }) => isOneOf(anhydrousOf(form), salt) && setting.materials.some((one) => isOneOf(one.form, lye)),
  );
  if (!cold || row === undefined) return undefined;
  const { amount } = account.supplied[i]!;
  const at = exact(row.at) as Quantity<"temperature">;
  const becomes = parseFormula(row.becomes);
  const each = exact(species.formula.count("B").toString()).dividedBy(exact(becomes.count("B").toString()));
  const warm = leastWater(form, amount.times(molarMass(form)).to("g"), at);
  const after = leastWater(becomes, amount.times(each).times(molarMass(becomes)).to("g"), setting.temperature);
  if (warm === undefined || after === undefined) return undefined;
  const least = warm.totalWater.compare(after.totalWater) > 0 ? warm.totalWater : after.totalWater;
  const totalWater = least.times(planned("coldWaterFactor")).to("g") as Quantity<"mass">;
  const water = waterToAdd(
    totalWater.minus(crystalWaterOf(setting.materials[i]!, amount)),
    `water to add = ${planned("coldWaterFactor")} times what keeps it as ${row.becomes} clear with the lye − crystal water`,
  );
  return {
    material: name,
    how: "dissolve",
    at,
    dissolving: { ...warm, water, totalWater, meltsInOwnWater: false },
    why: `the lye keeps it dissolved as ${row.becomes}`,
  };
}

/** The salt of an ammine, which is never boiled down, warm in less water than keeps it dissolved cold; undefined where that saves none. */
function warmForAmmine(
  { shelf, form }: Material,
  amount: Quantity,
  aimed: Quantity,
  cold: DissolvingWater,
): Feed | undefined {
  const at = exact(WARM_FOR_AMMINE.at) as Quantity<"temperature">;
  const least = leastWater(form, amount.times(molarMass(form)).to("g"), at);
  if (least === undefined) return undefined;
  const warm = least.totalWater.times(planned("coldWaterFactor"));
  const totalWater = (warm.compare(aimed) > 0 ? warm : aimed).to("g") as Quantity<"mass">;
  const saved = cold.totalWater.minus(totalWater);
  if (!saved.isPositive()) return undefined;
  const water = waterToAdd(cold.water.minus(saved), "water to add = what keeps it clear warm − crystal water");
  return {
    material: shelf.name,
    how: "dissolve",
    at,
    cooledTo: exact(WARM_FOR_AMMINE.cooledTo) as Quantity<"temperature">,
    dissolving: { ...least, water, totalWater, meltsInOwnWater: false },
    why: "in little water, which keeps little of the product",
  };
}

/** What it cools to before its ligand comes, in words; empty where it does not wait for that. */
export const cooledFirst = ({ cooledTo }: Extract<Feed, { how: "dissolve" }>): string =>
  cooledTo === undefined ? "" : `; let it cool to ${celsius(cooledTo)}: ${WARM_FOR_AMMINE.why}`;

/** As warm as the batch is mixed, or the room where no figure is known so hot. */
function hotEnough(form: Formula, amount: Quantity, { mixedHot, setting }: Feeding): Quantity<"temperature"> {
  const mass = amount.times(molarMass(form)).to("g");
  const isKnown = mixedHot !== undefined && leastWater(form, mass, mixedHot) !== undefined;
  return isKnown ? mixedHot : setting.temperature;
}

/** Does water keep so much of a precipitate that a thin liquor would cost a good part of it? */
export function keepsMuch(product: Formula): boolean {
  const { perHundredGramsWater } = fateInRoom(product);
  return perHundredGramsWater !== undefined && perHundredGramsWater.compare(planned("keepsMuch")) >= 0;
}

/** How strong a feed is made for a precipitate: counted by the atoms of its metal, of which a formula may have several. */
function thinnedFor(product: Formula, form: Formula, strength: Quantity): Quantity {
  const key = keyElement(product);
  const atoms = key === undefined ? undefined : form.count(key);
  return atoms === undefined || atoms.compare(1) <= 0 ? strength : strength.dividedBy(exact(atoms.toFraction()));
}

/** The warmest figure below a temperature at which none is known: as warm as that it is dissolved; undefined where there is none. */
function atColderFigure(
  formula: Formula,
  mass: Quantity,
  { details }: PreparativeError,
  { setting: { temperature: room, request } }: Feeding,
  hot: Quantity<"temperature">,
): Pick<Extract<Feed, { how: "dissolve" }>, "at" | "dissolving" | "why" | "by"> | undefined {
  const nearest = (details as { nearest?: readonly { celsius: number }[] }).nearest?.[0]?.celsius;
  const at = nearest === undefined ? undefined : (exact(`${nearest} °C`) as Quantity<"temperature">);
  if (at === undefined || at.compare(room) < 0 || at.compare(hot) > 0) return undefined;
  const waterFactor = request.waterFactor ?? PLANNING.coldWaterFactor.value;
  const found = attempt(() => waterToDissolve({ formula, mass, temperature: at, waterFactor }));
  if (!found.ok) return undefined;
  const why = `${waterFactor} times what just dissolves it there: no figure is known hotter`;
  return { at, dissolving: found.value, why, by: ["coldWaterFactor"] };
}

/** A solid in water of its own, as much of it as the work asks for. */
export function dissolved(material: Material, i: number, feeding: Feeding): Feed {
  const { setting, account, roles } = feeding;
  // A base is made thin whatever comes of it, and so is a metal salt that a ligand is to meet.
  const meetsLigand = roles[i] === "metal salt" && roles.includes("ligand");
  // What is oxidised and what oxidises it do not meet hot.
  const oxidises = roles.includes("oxidiser") || roles.includes("reducer");
  const isBase = roles[i] === "base" && setting.materials.length > 1;
  const forCrystals = feeding.crystals && !feeding.cold && !isBase && !meetsLigand;
  const crystals = forCrystals && !oxidises;
  // Itself it is dissolved no warmer than it is cooled to in between: what water it does not need is not boiled off again.
  const isWarm = forCrystals && oxidises && isAgent(material.form, "oxidiser") && feeding.target !== undefined;
  const asReducer = warmAsReducer(setting, material.form);
  // Into what is heated next it goes in no more water than it needs there: that would be boiled off again.
  const joinsHot = roles[i] === "ligand" && isAcid(material.form) && overHydroxide(setting, roles) !== undefined;
  const { shelf, form, formName } = material;
  const { name } = shelf;
  const { amount } = account.supplied[i]!;
  const { request } = setting;
  const inLye = isStated(material) || request.waterFactor !== undefined ? undefined : withLye(material, i, feeding);
  if (inLye !== undefined) return inLye;
  const at = (
    shelf.dissolve?.temperature === undefined
      ? crystals
        ? (feeding.hot ?? planned("hot"))
        : asReducer !== undefined
          ? exact(asReducer)
          : isWarm
            ? planned("coolsDownTo")
            : joinsHot
              ? planned("hot")
              : hotEnough(form, amount, feeding)
      : quantity(shelf.dissolve.temperature as Quantity)
  ) as Quantity<"temperature">;
  const factor = crystals ? "hotWaterFactor" : "coldWaterFactor";
  const least = request.waterFactor ?? PLANNING[factor].value;
  const mass = amount.times(molarMass(form)).to("g");
  const found = attempt(() => waterToDissolve({ formula: form, mass, temperature: at, waterFactor: least }));
  const colder = found.ok || isStated(material) ? undefined : atColderFigure(form, mass, found.error, feeding, at);
  if (colder !== undefined) return { material: name, how: "dissolve", ...colder };
  if (!found.ok)
    return {
      material: name,
      how: "unknown",
      missing: `solubility of ${formName}: ${found.error.message.split("\n")[0]}`,
      water: waterToAdd(
        waterForSolid(material, amount) ?? thinly(material, amount, setting.product.formula),
        isStated(material)
          ? AS_ASKED
          : (keptSour(form, setting.product.formula) ?? thinnedTo(form)) === undefined
            ? "chosen: 0.5 mol in each kg of water"
            : "chosen: as thin as it is worked",
      ),
    };
  const stated = asStated(material, amount, found.value, at);
  if (stated !== undefined) return stated;
  const base = { material: name, how: "dissolve", at } as const;
  const saturated = {
    ...base,
    dissolving: found.value,
    why: `${least} times what just dissolves it`,
    by: [factor] as const,
  };
  // A lye as strong as it can be would boil as it is made.
  if (crystals || isWarm || (feeding.cold && !isLye(form)) || request.waterFactor !== undefined) return saturated;
  // A ligand of a complex that stays dissolved is strong: what is made thin has to be boiled off again.
  const isStrong = asReducer === undefined && (feeding.crystals || (roles.includes("ligand") && !feeding.precipitates));
  const isKept = feeding.precipitates && keepsMuch(setting.product.formula);
  const strength = isStrong || feeding.cold || isKept ? "baseStrength" : "feedStrength";
  const own = planned(strength);
  const aim = feeding.precipitates ? thinnedFor(setting.product.formula, form, own) : own;
  const aimed = amount.dividedBy(aim).to("g");
  if (aimed.compare(found.value.totalWater) <= 0) {
    const isForAmmine = meetsLigand && !feeding.crystals && losesAmmonia(setting.product.formula);
    return (isForAmmine ? warmForAmmine(material, amount, aimed, found.value) : undefined) ?? saturated;
  }
  const water = waterToAdd(waterFor(material, amount, aim), `water to add = amount / (${aim}) − crystal water`);
  return {
    ...base,
    dissolving: { ...found.value, water, totalWater: aimed as Quantity<"mass">, meltsInOwnWater: false },
    why: `${aim} of water`,
    // the strength, and that it is no less than what dissolves it
    by: aim.compare(own) === 0 && strength === "baseStrength" ? [strength] : ["feedStrength", factor],
  };
}

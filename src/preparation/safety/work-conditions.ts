// When a caution of the work holds, by what is handled and by the figures of the batch, and which materials it is about.

import { ALKALI_METALS } from "../../element/internal";
import { type Formula, molarMass, parseFormula } from "../../formula";
import { once } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { IN_LYE } from "../data/couples";
import { LEAVES_FINE_METAL } from "../data/products";
import {
  FEEDS_FIRE,
  SMELLS_IN_ACID,
  WORK_CAUTIONS,
  type WorkCautionRow,
  type WorkCondition,
  type WorkStep,
} from "../data/work-cautions";
import { isHeatSensitive } from "../identity/by-ignition";
import type { BatchFigures } from "../planning/batch-figures";
import { exact, planned } from "../planning/exact";
import { hangsMetal } from "../procedure/displaced";
import { dryingOf } from "../procedure/drying";
import { isSlowMetal } from "../procedure/feed-single";
import { chargeGrinding, chargeOf } from "../procedure/grinding";
import { fumesFired, isReducedInFire } from "../procedure/kiln-fume";
import { kindOf } from "../procedure/kind";
import { goesInAir } from "../procedure/not-warm";
import { isAgent } from "../procedure/roles";
import { boundBy } from "../procedure/slow-complex";
import { useOf } from "../procedure/use";
import { drivesAmmonia } from "../procedure/warmest";
import { absorbentOf } from "../reaction/absorbing";
import { isAcid, isAmmonia, isAnionOfStrongAcid, isLye, isMetal } from "../reaction/acids";
import { boilsLow, burns, isGas, isLedIn } from "../reaction/fluids";
import { puffsUp } from "../reaction/puffing";
import { meetsCyanide } from "../reaction/sour-cyanide";
import { formulaFrom, type Species } from "../reaction/species";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { isFreeHalogen } from "./waste";
import { isSourMetal, mostOf } from "./waste-metals";
import { hydronsGivenBy, SODA } from "./waste-treatment";

/** A substance that a step takes and no pack brings, with its mass in 100 of solution where it is one. */
export interface TakenBesides {
  readonly species: Species;
  readonly massPercent: number | undefined;
}

/** What is handled beside what the packs and the equation name. */
export interface Handling {
  /** The product, or the solid that stands in its place. */
  readonly product: Species;
  readonly besides: readonly TakenBesides[];
  /** Water is boiled off, or evaporated. */
  readonly isBoiledDown: boolean;
}

/** What is asked about. */
export interface Given {
  readonly setting: Setting;
  readonly batch: BatchFigures;
  readonly handling: Handling;
  /** Does the dust of the product harm for good, by its classification? */
  readonly isDustDangerous: boolean;
}

/** More than a tenth, up to which a liquid counts as dilute; a solution whose strength cannot be determined counts as strong. */
export const isMoreThanDilute = ({ massFraction }: Material): boolean =>
  (massFraction()?.compare(planned("dilute")) ?? 1) > 0;

export const isStrongAcid = (m: Material): boolean => m.isSolution && isAcid(m.form) && isMoreThanDilute(m);

const isAmmoniaWater = (m: Material): boolean => m.isSolution && isAmmonia(m.species.formula) && isMoreThanDilute(m);

function isStrongAlkali(material: Material): boolean {
  const { cations, anions } = constitutionOf(material.form);
  const isHydroxide = anions.length === 1 && anions[0]!.formula === "OH-";
  const isAlkali = isHydroxide && cations.every(({ element = "" }) => ALKALI_METALS.has(element));
  return isAlkali && isMoreThanDilute(material);
}

/** All that is taken in hand, what takes no part in the equation with it. */
const packsOf = ({ materials, asides }: Setting): readonly Material[] => [...materials, ...asides];

/** Alcohol goes into the liquor, over cake or crystals, or the steps say that it may. */
const meetsAlcohol = ({ setting, batch }: Given): boolean =>
  batch.alcohol !== undefined || setting.asides.some((one) => useOf(one, setting) === "alcohol");

const handlesAmmonia = ({ setting }: Given): boolean =>
  [...setting.reactants, ...setting.products].some((s) => isAmmonia(s.formula));

/** It is in the liquor yet when the product is taken out of it. */
const keepsAmmonia = (given: Given): boolean =>
  handlesAmmonia(given) &&
  !drivesAmmonia(given.setting) &&
  // strong acid has taken it
  boundBy(given.setting.product.formula) === undefined;

const isWarm = (rise: Quantity): boolean => rise.compare(planned("warm")) >= 0;

/** Preparations that may get hot where no figure of heat is known. */
const LIVELY: readonly string[] = ["redox", "displacement", "metal and acid"];

/** Some of the gas goes through a wash bottle, and with it all. */
const isTrapped = ({ setting }: Given): boolean =>
  setting.products.some(
    (one) => one !== setting.product && isGas(one.formula, setting.wet) && absorbentOf(one.formula) !== undefined,
  );

/** A gas comes from a cylinder or a generator. */
const isLed = ({ setting }: Given): boolean => setting.materials.some(isLedIn);

/** It may get hot, and no figure tells how. */
const isHeatUnknown = ({ setting, batch: { heat, feeds } }: Given): boolean => {
  const isThinned = (i: number): boolean => {
    const feed = feeds[i]!;
    return feed.how === "solution" && feed.dilution !== undefined && feed.dilution.to.compare(planned("dilute")) <= 0;
  };
  const meetsStrong = setting.materials.some((one, i) => isStrongAcid(one) && !isThinned(i));
  return "missing" in heat && (meetsStrong || LIVELY.includes(kindOf(setting)));
};

/** By its figure; where none is known, of a strong acid: a weak one is hardly felt. */
function dilutingWarms({ shelf, form }: Material, { dissolvingHeat }: BatchFigures): boolean {
  const found = dissolvingHeat.find(({ material }) => material === shelf.name);
  if (found !== undefined && "rise" in found) return isWarm(found.rise.rise);
  const { acid } = constitutionOf(form);
  return acid !== undefined && isAnionOfStrongAcid(acid.anion);
}

/** A metal powder, or a solid whose dust harms for good. */
const isNotGround = (given: Given): boolean =>
  (isMetal(given.setting.product.formula) || given.isDustDangerous) && !isGroundWet(given);

/** A charge of several solids is ground again between two firings. */
const isGroundWet = ({ setting }: Given): boolean =>
  !setting.wet && chargeOf(setting).length > 1 && chargeGrinding(setting) === "wet";

/** Are these elements in a charge of several solids? */
const isFiredTogether = (setting: Setting, ...symbols: readonly string[]): boolean => {
  const charge = setting.wet ? [] : chargeOf(setting);
  return charge.length > 1 && symbols.every((symbol) => charge.some(({ form }) => form.count(symbol).n !== 0n));
};

const goesIntoLye = (form: Formula): boolean =>
  isMetal(form) && IN_LYE.metals.some((symbol) => form.symbols.includes(symbol));

/** A metal that cold acid hardly takes lies in it from the first. */
const isTakenSlowly = ({ setting }: Given): boolean =>
  setting.materials.some((one) => isSlowMetal(one, setting)) || hangsMetal(setting);

/** Is soda put to a vessel that has acid, or a salt as sour as one? */
const foamsWithSoda = ({ setting: { steps }, batch: { waste } }: Given): boolean =>
  waste.vessels.some(
    ({ treatment, contents, metals }) =>
      treatment.some(
        ({ reagent, mass, most }) => reagent === SODA && ((most ?? mass)?.compare(steps.mass) ?? -1) >= 0,
      ) &&
      (metals.some((metal) => isSourMetal(metal.symbol) && mostOf(metal).compare(steps.mass) >= 0) ||
        contents.dissolved.some(
          ({ formula, amount }) =>
            hydronsGivenBy(parseFormula(formula)) > 0n && amount.times(molarMass(formula)).compare(steps.mass) >= 0,
        )),
  );

/** A metal that acid takes with hydrogen; undefined where none does. */
function metalInAcid({ setting, batch: { gas } }: Given): Material | undefined {
  const { wet, materials } = setting;
  const isByAcid = wet && materials.some(({ form }) => isAcid(form)) && !materials.some(({ form }) => isLye(form));
  return isByAcid && gas.some(({ key }) => key === "H2") ? materials.find(({ form }) => isMetal(form)) : undefined;
}

const smellsInAcid = (given: Given, of: "iron" | "technical"): boolean => {
  const metal = metalInAcid(given);
  if (metal === undefined) return false;
  const isIron = isOneOf(metal.form, ...SMELLS_IN_ACID.iron);
  if (of === "iron" || isIron) return of === "iron" && isIron;
  return isOneOf(metal.form, ...SMELLS_IN_ACID.technical) || metal.massFraction()?.compare(exact("1")) === -1;
};

const leavesFineMetal = (formula: Formula): boolean => {
  const { groups, complex } = madeOf(formula);
  return (
    !complex &&
    LEAVES_FINE_METAL.groups.some((name) => groups.has(name)) &&
    LEAVES_FINE_METAL.metals.some((symbol) => formula.symbols.includes(symbol))
  );
};

const FLUORIDES: readonly string[] = ["F-", "SiF6^2-", "BF4-"];

/** Hydrogen fluoride is in the liquor: put in, set free by an acid, or as an acid salt. */
function isSourFluoride(setting: Setting): boolean {
  const forms = [
    ...packsOf(setting).flatMap(({ form, also }) => [form, ...also.map((one) => one.form)]),
    ...setting.products.map(({ formula }) => formula),
  ];
  const holds = (form: Formula, anions: readonly string[]): boolean =>
    constitutionOf(form).anions.some(({ formula }) => anions.includes(formula));
  if (!setting.wet) return false;
  if (forms.some((form) => isOneOf(form, "HF") || holds(form, ["HF2-"]))) return true;
  return forms.some((form) => holds(form, FLUORIDES)) && packsOf(setting).some(({ form }) => isAcid(form));
}

/** When a row of the table holds. */
const HOLDS: Readonly<Record<WorkCondition, (given: Given) => boolean>> = {
  "strong acid": ({ setting }) => packsOf(setting).some(isStrongAcid),
  "strong alkali": ({ setting }) => packsOf(setting).some(isStrongAlkali),
  "fluoride in acid": ({ setting }) => isSourFluoride(setting),
  "strong ammonia": ({ setting }) => packsOf(setting).some(isAmmoniaWater),
  "dissolving warms": ({ batch }) => batch.dissolvingHeat.some((one) => "rise" in one && isWarm(one.rise.rise)),
  "mixing warms": (given) => {
    const { heat } = given.batch;
    return "rise" in heat && isWarm(heat.rise.rise) && !hangsMetal(given.setting) && !isLed(given);
  },
  "hung metal warms": ({ setting, batch: { heat } }) => "rise" in heat && isWarm(heat.rise.rise) && hangsMetal(setting),
  // a gas comes in a stream, whatever it would do at once
  boils: (given) => !isLed(given) && "rise" in given.batch.heat && given.batch.heat.rise.boils === true,
  "heat not known": (given) => !isLed(given) && !isTakenSlowly(given) && isHeatUnknown(given),
  "heat of a gas not known": (given) => isLed(given) && isHeatUnknown(given),
  "diluted acid": ({ setting, batch }) =>
    setting.materials.some((m, i) => {
      const feed = batch.feeds[i]!;
      return isStrongAcid(m) && feed.how === "solution" && feed.dilution !== undefined && dilutingWarms(m, batch);
    }),
  "gas by and by": (given) => given.batch.gas.length > 0 && isTakenSlowly(given),
  gas: (given) =>
    given.batch.gas.length > 0 && !isTakenSlowly(given) && (!given.setting.wet || !(isTrapped(given) || isLed(given))),
  "gas led in": (given) => given.setting.wet && isLed(given) && !isTrapped(given),
  "gas through a trap": (given) => given.setting.wet && isTrapped(given),
  "gas for the hood": ({ batch }) => batch.gas.some((gas) => gas.hood),
  "flammable gas": ({ batch: { gas } }) => gas.some(({ key }) => burns(formulaFrom(key))),
  "metal in lye": ({ setting: { wet, materials }, batch: { gas } }) =>
    wet &&
    gas.length > 0 &&
    materials.some(({ form }) => isLye(form)) &&
    materials.some(({ form }) => goesIntoLye(form)),
  "metal in acid": (given) => metalInAcid(given) !== undefined,
  "iron in acid": (given) => smellsInAcid(given, "iron"),
  "technical metal in acid": (given) => smellsInAcid(given, "technical"),
  "metal fume": ({ setting }) => fumesFired(setting),
  "reduced in fire": ({ setting }) => isReducedInFire(setting),
  "chromium fired": ({ setting }) => isFiredTogether(setting, "Cr"),
  "chromium and tin fired": ({ setting }) => isFiredTogether(setting, "Cr", "Sn"),
  vapour: ({ setting: { wet, products, product } }) =>
    wet && products.some((one) => one !== product && boilsLow(one.formula)),
  oxygen: ({ setting }) => setting.products.some(({ formula }) => isOneOf(formula, "O2")),
  "solid into acid": ({ setting, batch }) =>
    batch.vessel?.intoAcid === true && setting.materials.some(({ form }) => isAcid(form)),
  ammonia: handlesAmmonia,
  "goes in air": ({ setting: { wet, materials } }) => wet && materials.some(({ form }) => goesInAir(form)),
  "ammonia in a hot liquor": (given) => keepsAmmonia(given) && given.batch.crystallising?.asItForms === false,
  "ammonia in a cold liquor": (given) => keepsAmmonia(given) && given.batch.crystallising?.asItForms !== false,
  "cyanide and acid": ({ setting }) => meetsCyanide(setting),
  redox: (given) =>
    !isLed(given) &&
    kindOf(given.setting) === "redox" &&
    given.setting.materials.some(({ form }) => isAgent(form, "oxidiser")),
  antisolvent: meetsAlcohol,
  "boiled down": ({ handling }) => handling.isBoiledDown,
  "paper that burns": ({ setting: { wet, product }, batch }) =>
    wet &&
    batch.isolation.how !== "liquor" &&
    FEEDS_FIRE.groups.some((name) => madeOf(product.formula).groups.has(name)),
  "drying limit": ({ setting: { product, wet } }) => wet && dryingOf(product.formula).changesAbove,
  "heat sets it off": ({ setting }) => isHeatSensitive(setting.product.formula),
  "stands grinding": (given) =>
    !isHeatSensitive(given.setting.product.formula) && !isNotGround(given) && !isGroundWet(given),
  "is a halogen": ({ setting }) => isFreeHalogen(setting.product.formula),
  "not ground": (given) => !isHeatSensitive(given.setting.product.formula) && isNotGround(given),
  "ground wet": isGroundWet,
  "acid left": foamsWithSoda,
  "metals left": ({ setting, batch }) =>
    batch.waste.metals.some((metal) => metal.precipitate && mostOf(metal).compare(setting.steps.mass) >= 0),
  "puffs up": ({ handling }) => puffsUp(handling.product.formula),
  "leaves fine metal": ({ setting: { wet, product } }) => wet && leavesFineMetal(product.formula),
  always: () => true,
};

/** The rows of the table for each step, in its order. */
const rowsOfSteps = /* @__PURE__ */ once(() => {
  const rows = new Map<WorkStep, WorkCautionRow[]>();
  for (const row of WORK_CAUTIONS()) rows.set(row.step, [...(rows.get(row.step) ?? []), row]);
  return rows as ReadonlyMap<WorkStep, readonly WorkCautionRow[]>;
});

/** The rows of a step that hold for this work. */
export const rowsThatHold = (step: WorkStep, given: Given): readonly WorkCautionRow[] =>
  (rowsOfSteps().get(step) ?? []).filter(({ when }) => HOLDS[when](given));

/** Materials that a row is about, where it is about some of them and not the work as a whole. */
export function concerned({ step, when }: WorkCautionRow, { setting, batch }: Given): readonly Material[] | undefined {
  if (step !== "weighing" && step !== "dissolving") return undefined;
  const packs = packsOf(setting);
  if (when === "strong acid") return packs.filter(isStrongAcid);
  if (when === "strong alkali") return packs.filter(isStrongAlkali);
  if (when === "strong ammonia") return packs.filter(isAmmoniaWater);
  if (when !== "dissolving warms") return undefined;
  const warms = (name: string): boolean =>
    batch.dissolvingHeat.some((one) => one.material === name && "rise" in one && isWarm(one.rise.rise));
  return setting.materials.filter(({ shelf }) => warms(shelf.name));
}

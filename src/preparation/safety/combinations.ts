// The safety gate: what must not meet, and what is never made. A plan that does either stops, unless it is of the kind that
// whoever means it may acknowledge by code.
import { molarMass } from "../../formula";
import { frozen } from "../../foundation/frozen";
import { remembering } from "../../foundation/memo";
import { readableInside } from "../../foundation/readable";
import { constitutionOf } from "../../ion";
import { isOneOf, readNotation } from "../../ion/internal";
import { type Quantity, type QuantityLike, quantity } from "../../quantity";
import type { Cautions, FormulaOfStrength, Incompatibility } from "../../substance";
import { cautionsOfFormulas, type DangerousProduct, dangerOf, solidFormsIn } from "../../substance/internal";
import { FUSES_OXIDES } from "../data/firing";
import { exact, planned } from "../planning/exact";
import { isAcid, isMetal } from "../reaction/acids";
import { fateInRoom } from "../reaction/fate";
import { isGas, isLedIn } from "../reaction/fluids";
import { gelRow } from "../reaction/gel";
import type { Species } from "../reaction/species";
import type { PlanRequest } from "../request/request";
import type { Material } from "../shelf/material";
import { isInCylinder } from "../shelf/pieces";
import { type Acknowledged, acknowledgedCodes } from "./acknowledged";
import { type Danger, type InTheAir, refuseCombinations, refuseDangers } from "./refused";

/** What comes together in a preparation. */
interface Mix {
  readonly materials: readonly Material[];
  readonly reactants: readonly Species[];
  readonly products: readonly Species[];
  readonly product: Species;
  /** Water is there. */
  readonly wet: boolean;
  /** It is heated dry, or meets warm. */
  readonly heated: boolean;
  /** What is put in and takes no part. */
  readonly aside?: readonly (string | FormulaOfStrength)[];
}

/** What the gate finds, before anything is acknowledged. */
export interface Judged {
  readonly cautions: Cautions;
  /** Combinations that must not meet. */
  readonly combinations: readonly Incompatibility[];
  readonly dangers: readonly Danger[];
}

/** Cautions by the texts they were asked for. */
const remembered = /* @__PURE__ */ remembering<Cautions>(200);

/** Mass fraction of a solution; one by volume whose density is not known is taken to weigh as much as water. */
function fractionOf({ shelf, form, massFraction }: Material): Quantity | undefined {
  if (shelf.strength === undefined) return undefined;
  const known = massFraction();
  if (known !== undefined) return known;
  const strength = quantity(shelf.strength as QuantityLike);
  const perVolume = strength.dimension === "concentration" ? strength.times(molarMass(form)) : strength;
  return perVolume.dividedBy(exact("1 g/mL"));
}

/** A material with its strength, where it is a solution; what is no solution is as strong as it can be, and a solid in the form that its name or its note says. */
export function withStrength(material: Material): string | FormulaOfStrength {
  const formula = material.form.toString();
  const percent = fractionOf(material)?.toNumber("%");
  if (percent !== undefined) return { formula, massPercent: Number(Math.min(percent, 100).toFixed(4)) };
  const { name, note = "" } = material.shelf;
  if (isLedIn(material) && isInCylinder(material)) return { formula, inCylinder: true };
  const [state, another] = solidFormsIn(`${name} ${note}`);
  return state === undefined || another !== undefined ? formula : { formula, state };
}

/** What a reaction sets free in water is thin: the water that dissolves the feeds is more than ten times an acid's mass. */
const SET_FREE = 5;

/** Mass fraction of a product in its liquor; undefined where it is not dissolved there, or nothing is known of it. */
type StrengthInLiquor = (product: Species) => Quantity | undefined;

/** A by-product of wet work: an acid that is set free is no strong acid, and a salt that stays in the liquor is not handled dry. */
function besideInWater(species: Species): string | FormulaOfStrength {
  const { formula } = species;
  const text = formula.toString();
  if (isAcid(formula)) return { formula: text, massPercent: SET_FREE };
  if (isGas(formula, true)) return text;
  return fateInRoom(formula).precipitated === true ? asSolid(species, true) : { formula: text, dissolved: true };
}

/** A product: a metal that water work gives is a powder, a gel no crystal. */
function asSolid({ formula }: Species, wet: boolean): string | FormulaOfStrength {
  const text = formula.toString();
  if (wet && isMetal(formula)) return { formula: text, state: "powder" };
  return wet && gelRow(formula) !== undefined ? { formula: text, state: "amorphous" } : text;
}

/** A product as strong as it is in its liquor, else as it forms. */
function asFormed(species: Species, { wet, product }: Mix, strengthIn: StrengthInLiquor): string | FormulaOfStrength {
  // a gas leaves its liquor: it is as dangerous as without the water
  const percent = wet && !isGas(species.formula, false) ? strengthIn(species)?.toNumber("%") : undefined;
  if (percent !== undefined)
    return { formula: species.formula.toString(), massPercent: Number(percent.toPrecision(2)) };
  return wet && species !== product ? besideInWater(species) : asSolid(species, wet);
}

const WATER = "H2O";
/** What no material brings of it comes from the air, and is no oxidiser on the shelf. */
const AIR = "O2";
const nameIn = (m: string | FormulaOfStrength): string => (typeof m === "string" ? m : m.formula);

/** Everything that is put in: the materials, and what the equation takes without a material, water among it. */
function putIn({ materials, reactants, aside = [] }: Mix): (string | FormulaOfStrength)[] {
  const supplied = new Set(materials.map(({ species }) => species));
  return [
    ...materials.map(withStrength),
    // an acid that a salt is dissolved in meets the rest as surely as one of a pack
    ...materials.flatMap(({ putOn }) =>
      putOn === undefined ? [] : [{ formula: putOn.acid.toString(), massPercent: planned("putOnAcid").toNumber("%") }],
    ),
    ...reactants.filter((species) => !supplied.has(species)).map(({ formula }) => formula.toString()),
    ...aside,
  ];
}

const rememberedDangers = /* @__PURE__ */ remembering<DangerousProduct | undefined>(500);

/** Products that are never made, and explosives or deadly gases that something would start from. */
function dangersIn({ reactants, products, product }: Mix): Danger[] {
  const found = (species: Species, as: Danger["as"]): Danger[] => {
    const formula = species.formula.toString();
    const danger = rememberedDangers(formula, () => dangerOf(readNotation(species.formula)));
    const counts = danger !== undefined && (as === "product" || (as === "by-product" ? danger.beside : !danger.opens));
    return counts ? [{ ...danger, formula, as }] : [];
  };
  return [
    ...products.flatMap((species) => found(species, species === product ? "product" : "by-product")),
    ...reactants.flatMap((species) => found(species, "material")),
  ];
}

/** Salts of alkali metals that melt together with an oxide in fire. */
const isAlkali = (text: string): boolean => {
  const { cations, anions } = constitutionOf(text);
  return (
    cations.some(({ formula }) => FUSES_OXIDES.cations.some((one) => one === formula)) &&
    anions.some(({ formula }) => FUSES_OXIDES.anions.some((one) => one === formula))
  );
};

/** It takes alkali in a fire, which wet work has not. */
const isOfFiring = ({ conditions }: Incompatibility): boolean =>
  conditions.length > 0 && conditions.every((one) => one === "fired with alkali");

/**
 * Cautions of what is put in and made. Water is in every wet preparation, whether the equation has it or not; of water that
 * nobody asked about only what must stop the work is said: the steps tell how to dissolve. The air is not handled.
 */
function lookedUp(
  given: readonly (string | FormulaOfStrength)[],
  products: readonly (string | FormulaOfStrength)[],
  { wet, heated, materials }: Mix,
): Cautions {
  const isMaterial = materials.some(({ species }) => species.isWater);
  const isBottled = materials.some(({ form }) => isOneOf(form, AIR));
  return remembered(JSON.stringify([given, products, wet, heated, isMaterial, isBottled]), () => {
    const saysWater = given.some((one) => nameIn(one) === WATER);
    const water = wet && !saysWater ? [WATER] : [];
    const hasMelt = !wet && given.some((one) => isAlkali(nameIn(one)));
    const everything = cautionsOfFormulas([...given, ...water, ...products], [], { planned: true, heated });
    const incompatibilities = everything.incompatibilities.filter((one) => hasMelt || !isOfFiring(one));
    const all = { ...everything, incompatibilities };
    return frozen(
      {
        ...all,
        substances: all.substances.filter(
          ({ material }) => (isMaterial || material !== WATER) && (isBottled || material !== AIR),
        ),
        incompatibilities: saysWater
          ? all.incompatibilities
          : all.incompatibilities.filter((one) => one.blocking || !one.materials.includes(WATER)),
      },
      readableInside,
    );
  });
}

/** Cautions of a mix; with the strengths that products have in their liquor, where the batch is known. */
export function cautionsOfMix(
  mix: Mix,
  strengthIn: StrengthInLiquor = () => undefined,
  given: ReturnType<typeof putIn> = putIn(mix),
): Cautions {
  const names = new Set(given.map(nameIn));
  const products = mix.products
    .filter(({ isWater }) => !isWater)
    .map((species) => asFormed(species, mix, strengthIn))
    .filter((one) => !names.has(nameIn(one)));
  return lookedUp(given, products, mix);
}

/** Acids that form in the liquor. */
const acidsFormed = ({ products, wet }: Mix): string[] =>
  wet ? products.flatMap(({ formula }) => (isAcid(formula) ? [formula.toString()] : [])) : [];

/** Every danger in what comes together. */
export function judge(mix: Mix): Judged {
  const given = putIn(mix);
  const cautions = cautionsOfMix(mix, undefined, given);
  const names = new Set(given.map(nameIn));
  // an acid that the reaction itself sets free in water gives a gas as surely as one from a bottle
  const formed = new Set(acidsFormed(mix));
  const isPutIn = (one: Incompatibility): boolean =>
    one.materials.every((m) => names.has(m) || m === WATER || (one.products.length > 0 && formed.has(m)));
  return {
    cautions,
    combinations: cautions.incompatibilities.filter((one) => one.blocking && isPutIn(one)),
    dangers: dangersIn(mix),
  };
}

/** What a plan may say of its dangers. */
interface Passed {
  readonly cautions: Cautions;
  readonly acknowledged: readonly Acknowledged[];
}

/** Warm enough for what holds only "heated". */
const isWarm = (temperature: Quantity): boolean => temperature.compare(planned("gentle")) > 0;

export const mixOf = (setting: Omit<Mix, "heated"> & { readonly temperature: Quantity }): Mix => ({
  ...setting,
  heated: !setting.wet || isWarm(setting.temperature),
});

/** Cautions for materials and products; refuses what must not meet and what is never made. */
export function passGate(mix: Mix, request: PlanRequest, air?: InTheAir): Passed {
  const codes = acknowledgedCodes(request);
  const { cautions, combinations, dangers } = judge(mix);
  const meant = combinations.filter(({ code }) => codes.includes(code));
  // Whoever acknowledges a combination knows the gas it is known to give.
  const isMeant = ({ code, opens, formula }: Danger): boolean =>
    opens && (codes.includes(code) || meant.some(({ products }) => products.includes(formula)));
  const refused = dangers.filter((one) => !isMeant(one));
  const packs = mix.materials.filter(({ species }) => !species.isWater).map(({ shelf }) => shelf.name);
  refuseDangers(
    refused.filter(({ opens }) => !opens),
    packs,
    combinations,
    air,
  );
  refuseCombinations(
    combinations.filter((one) => !meant.includes(one)),
    acidsFormed(mix),
    mix.product,
    air,
  );
  refuseDangers(refused, packs, combinations, air);
  return {
    cautions,
    acknowledged: [
      ...combinations.map(({ code, materials, what, source }) => ({ code, about: materials, what, source })),
      ...dangers.map(({ code, formula, as, name, source }) => ({
        code,
        about: [formula],
        what: `${name} as ${as}`,
        source,
      })),
    ],
  };
}

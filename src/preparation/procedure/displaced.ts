// Metal that is over in a displacement: pieces are lifted out, what is powder goes with dilute acid that leaves the product.

import { balance } from "../../equation";
import { parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { temperatureRise } from "../../thermochemistry";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { type Term, termsOf } from "../contents/react";
import { MAGNETIC, METAL_GONE, SALT_GONE, STAYS_IN_NITRIC_ACID } from "../data/ends";
import { ACID_LEAVES, ACID_TAKES, type AcidTakesRow } from "../data/firing";
import { PLANNING } from "../data/planning";
import { add } from "../operation/add";
import { done } from "../operation/operation";
import { exact, isFromRounding, planned } from "../planning/exact";
import type { Supplied } from "../reaction/account";
import { isAcid, isMetal } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { enthalpyOfTerms } from "../reaction/heat";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { isInLongPieces, isInPieces, isPowder } from "../shelf/pieces";
import { acidAtHand } from "./acid-at-hand";
import type { AtHand } from "./at-hand";
import { baseInAcid } from "./base-in-acid";
import { type Bench, POT } from "./bench";
import { kindOf } from "./kind";
import { gasInRoom } from "./trap";
import { litres } from "./words";

interface Taking {
  readonly terms: readonly Term[];
  readonly metals: bigint;
  readonly acids: bigint;
}

const remembered = /* @__PURE__ */ remembering<Taking>(20);

/** Does a strip of this metal hang in the liquor whose metal it displaces? */
export const isHung = (setting: Setting, material: Material): boolean =>
  isMetal(material.form) && isInLongPieces(material) && kindOf(setting) === "displacement";

/** Is metal hung into the liquor? */
export const hangsMetal = (setting: Setting): boolean => setting.materials.some((one) => isHung(setting, one));

/** The metal into sulfuric acid: terms, and how many atoms and acids are in them. */
const takingOf = ({ metal, sulfate }: AcidTakesRow): Taking =>
  remembered(metal, () => {
    const equation = balance(`${metal} + H2SO4 -> ${sulfate} + H2`);
    const [used, acid] = equation.reactants;
    const terms = termsOf(equation, (formula) => (isOneOf(formula, "H2") ? "gas" : "dissolved"));
    return { terms, metals: used!.coefficient, acids: acid!.coefficient };
  });

/** The row of a metal over, where dilute acid takes it and leaves the product. */
export function acidTakes({ product, materials }: Setting, i: number): AcidTakesRow | undefined {
  const { symbols } = product.formula;
  const row = ACID_TAKES.find(({ metal }) => metal === materials[i]!.form.symbols[0]);
  const { metals, cold } = ACID_LEAVES;
  const left: readonly string[] = row?.warm === true ? metals : [...metals, ...cold];
  return symbols.length === 1 && left.includes(symbols[0]!) ? row : undefined;
}

/** What becomes of powder of a metal that is over; pieces are lifted out in a step of their own. */
const powderLeft = (bench: Bench, i: number): string =>
  acidTakes(bench.frame.setting, i) === undefined && !isInPieces(bench.material(i))
    ? " and lift them out; what is left as powder stays in the product"
    : "";

/** A feed of which hardly any is dissolved at a time: its liquor tells nothing of the end. */
const sparingFeed = (setting: Setting): Material | undefined =>
  baseInAcid(setting) === undefined
    ? setting.materials.find(({ form }) => !isMetal(form) && fateOf(form, setting.temperature).precipitated === true)
    : undefined;

/** Salt of the product's metal that is in excess on purpose: some stays in the liquor, and a bright piece of the other metal never stays bright. */
export const isSaltOver = ({ product, materials }: Setting, supplied: readonly Pick<Supplied, "excess">[]): boolean =>
  materials.some(
    ({ form }, i) =>
      !isMetal(form) &&
      product.metals.some(({ symbol }) => form.count(symbol).n !== 0n) &&
      !isFromRounding(supplied[i]!.excess),
  );

/** How it shows that all of the added metal is gone, where it is the last of it that counts. */
export function signOfMetalGone(setting: Setting, i: number): string {
  const { name } = matterOf(setting.product.formula);
  const test = acidTakes(setting, i) === undefined ? "" : `, and a bit of the ${name}, washed, ${METAL_GONE.test}`;
  return `lumps broken up with the rod show none of the ${setting.materials[i]!.shelf.name} inside${test}`;
}

/** The end where the salt is over: what was added of the metal is gone. */
function endOfMetal(bench: Bench): string {
  const { setting } = bench.frame;
  const metal = setting.materials.findIndex(({ form }) => isMetal(form));
  const { time } = isPowder(bench.material(metal)) ? METAL_GONE.powder : METAL_GONE.pieces;
  return `Stir now and then until none of the ${bench.name(metal)} is left, ${time}: ${signOfMetalGone(setting, metal)}. Salt is over and stays in the liquor, which dulls a bright piece of the metal to the end: add no more of the ${bench.name(metal)}.`;
}

/** How the end of a displacement shows; `over` is the metal of which some is left over, negative where there is none. */
export function endOfDisplacement(bench: Bench, over: number): string {
  const { setting } = bench.frame;
  const { name } = matterOf(setting.product.formula);
  const shake =
    over < 0 || isPowder(bench.material(over))
      ? ""
      : ` Shake or brush the ${name} off what is left ${isInPieces(bench.material(over)) ? `of the ${bench.name(over)}` : "in pieces"}${powderLeft(bench, over)}.`;
  const sparing = sparingFeed(setting);
  if (sparing !== undefined) return `${endOfSparing(bench, sparing, over)}${shake}`;
  if (over < 0 && isSaltOver(setting, bench.frame.account.supplied)) return endOfMetal(bench);
  const clouds = saltClouds(setting);
  if (over < 0)
    return `Stir until the added metal is gone; ${clouds ? SALT_GONE.test : "a bright piece of the same metal held in a drop of the clear liquor stays bright"}: where it ${clouds ? "clouds" : "does not"}, a little more of the metal is needed.`;
  const acid = clouds ? setting.materials.find(({ form }) => isAcid(form))?.shelf.name : undefined;
  const milky = acid === undefined ? "" : `; ${SALT_GONE.milky.replace("{acid}", acid)}`;
  const end = clouds
    ? `${SALT_GONE.test}: where it clouds, it takes longer`
    : `a bright piece of the same metal as the ${bench.name(over)} stays bright in a drop of the clear liquor: where it turns dull, it takes longer`;
  return `Stir until ${end}${isHung(setting, bench.material(over)) ? ", an hour or more" : ""}${milky}; more of the ${bench.name(over)} is needed only where none is left.${shake}`;
}

/** Does a drop of the liquor cloud water while salt of the product's metal is left? */
const saltClouds = ({ product }: Setting): boolean => SALT_GONE.metals.some((metal) => isOneOf(product.formula, metal));

/** What that end is tested with. */
export function atEndOfDisplacement(bench: Bench, over: number): readonly AtHand[] {
  const { setting, account } = bench.frame;
  if (sparingFeed(setting) !== undefined) return [];
  if (saltClouds(setting)) return [];
  if (over >= 0 || !isSaltOver(setting, account.supplied)) return ["bright piece of the metal"];
  const metal = setting.materials.findIndex(({ form }) => isMetal(form));
  return acidTakes(setting, metal) === undefined ? [] : ["dilute acid for a test"];
}

/** So little of such a feed is dissolved at a time that its liquor tells nothing: the solid does. */
function endOfSparing(bench: Bench, { form, shelf }: Material, over: number): string {
  const start =
    over < 0 || acidTakes(bench.frame.setting, over) === undefined
      ? ""
      : ", with a spoonful of the acid of the next step if nothing begins,";
  const row = STAYS_IN_NITRIC_ACID.find(({ formulas }) => isOneOf(form, ...formulas));
  const test =
    row === undefined
      ? ""
      : `, and a pinch of the solid, washed and warmed with dilute nitric acid under a hood, leaves nothing ${row.looks} undissolved`;
  return `Stir${start} until all of the ${shelf.name} has changed its colour through and through${test}; its liquor tells nothing, for hardly any of it is dissolved.`;
}

/** What is left of a metal; undefined where nothing is. */
export function leftInVessel({ pot, frame: { setting } }: Bench, i: number): Quantity | undefined {
  const { key } = matterOf(setting.materials[i]!.form);
  const own = pot.books.solids.filter(({ matter }) => matter.key === key).map(({ amount }) => amount);
  const all = sum([exact("0 mol"), ...own]);
  return all.isPositive() ? all : undefined;
}

/** A strip of twice the need and more leaves no crumbs. */
const staysWhole = (bench: Bench, i: number): boolean =>
  isInLongPieces(bench.material(i)) && bench.frame.account.supplied[i]!.excess.compare(planned("stripOver")) >= 0;

/** How fast the acid comes to a metal: no portion warms the vessel much, and what a minute gives leaves it without spray. */
function paceOfAcid(gas: Quantity, rise: Quantity | undefined, vessel: Quantity | undefined): string {
  const byHeat = rise === undefined ? 0 : Math.ceil(rise.dividedBy(planned("portionWarms")).toNumber(""));
  const portions = Math.max(Number(PLANNING.leastPortions.value), byHeat);
  const byHand = planned("portionLasts").times(portions);
  const byFoam = vessel === undefined ? byHand : gas.dividedBy(vessel).dividedBy(planned("gasFlow")).to("min");
  const least = byFoam.compare(byHand) > 0 ? byFoam : byHand;
  return `, in at least ${portions} portions over at least ${Math.ceil(least.toNumber("min"))} min, each when the gas of the one before has slackened, in moving air,`;
}

/** Heat of a metal in acid, and what it does to this vessel, in words. */
const inMolesAndKelvins = (enthalpy: Quantity, rise: Quantity, metal: string): string =>
  `; it gives ${Math.abs(Math.round(enthalpy.toNumber("kJ/mol")))} kJ for each mole of ${metal}, up to ${Math.max(1, Math.round(rise.toNumber("ΔK")))} K here if all came at once`;

/** Take what is left of a metal out of the product, where dilute acid does. */
export function takeOutMetal(bench: Bench, i: number): void {
  const { name, formula } = bench.frame.setting.product;
  const row = acidTakes(bench.frame.setting, i);
  const left = leftInVessel(bench, i);
  if (left === undefined) return;
  if (row === undefined || staysWhole(bench, i)) {
    if (isInPieces(bench.material(i))) liftOut(bench, i);
    return;
  }
  const { terms, metals, acids } = takingOf(row);
  const extent = left.dividedBy(exact(String(metals)));
  // Metal powder coats itself: the liquor is made sour enough to eat through, whatever the sum asks for.
  const sour = bench.pot.mass
    .times(planned("cementSour"))
    .dividedBy(matterOf(parseFormula("H2SO4")).molarMass)
    .to("mol");
  const needed = extent.times(acids).times(planned("overdose"));
  const most = needed.compare(sour) < 0 ? sour : needed;
  const acid = acidAtHand(bench.pot, parseFormula("H2SO4"), most, planned("cementAcid"));
  const done = add(bench.pot, acid, [{ terms, extent }]);
  const gas = done.left[0]?.pot.books.solids[0]?.amount;
  const volume = gas === undefined ? undefined : gasInRoom(bench, gas);
  const isMuch = volume !== undefined && volume.compare(exact("0.1 L")) >= 0;
  const heat = enthalpyOfTerms(terms);
  const rise = heat.ok
    ? temperatureRise({
        enthalpy: heat.value.enthalpy,
        amount: extent,
        mass: bench.pot.mass.plus(acid.mass),
        start: bench.pot.books.temperature,
      }).rise
    : undefined;
  const warmth =
    isMuch && heat.ok ? inMolesAndKelvins(heat.value.enthalpy.dividedBy(exact(String(metals))), rise!, row.metal) : "";
  const isDrawn = isOneOf(bench.material(i).form, ...MAGNETIC.metals) && !isOneOf(formula, ...MAGNETIC.metals);
  const magnet = isDrawn ? `, and ${MAGNETIC.test}` : "";
  bench.did(POT, done, {
    amounts: [acid.mass],
    later: true,
    ...(isDrawn ? { atHand: ["magnet" as const] } : {}),
    say: ({ vessel }) =>
      `${isPowder(bench.material(i)) ? `What is left of the ${bench.name(i)}` : `Lift out what is left of ${bench.name(i)} in pieces; what is powder`} dissolves: stir the ${name} with ${bench.hand.grams(acid.mass)} of dilute sulfuric acid (${planned("cementAcid")})${row.warm ? ", warm," : ""}${!isMuch ? "" : paceOfAcid(volume!, rise, vessel?.smallest)} until no more gas rises${magnet}${volume === undefined ? "" : ` (${isMuch ? `at most ${litres(volume)} of ` : ""}hydrogen: no flame${warmth})`}; the ${name} stays.`,
  });
  bench.liquor = bench.pot;
}

/** What is left of a metal is lifted out of the vessel. */
export function liftOut(bench: Bench, i: number): void {
  const { pot } = bench;
  const { key } = matterOf(bench.material(i).form);
  const isIt = ({ matter }: (typeof pot.books.solids)[number]): boolean => matter.key === key;
  const own = pot.books.solids.filter(isIt);
  if (own.length === 0) return;
  const rest = pot.with({ solids: pot.books.solids.filter((one) => !isIt(one)) });
  const { temperature, pressure } = pot.books;
  const lifted = own.reduce(
    (all, { matter, amount, origin }) => all.plusSolid(matter, amount, origin),
    Pot.empty(temperature, pressure),
  );
  // acid that is over takes its part only in time
  const takesLess = (mass: string): string =>
    baseInAcid(bench.frame.setting) === undefined ? `about ${mass}` : `${mass} or more`;
  bench.did(POT, done("filter", pot, rest, [], [{ what: "residue", pot: lifted }]), {
    say: () =>
      `Lift out what is left of the ${bench.name(i)}, ${
        lifted.mass.compare(bench.frame.setting.steps.mass) < 0
          ? "if any is seen"
          : takesLess(bench.hand.grams(lifted.mass))
      }, and rinse it over the vessel.`,
  });
}

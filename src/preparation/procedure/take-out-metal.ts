// Metal that is over in a displacement: pieces are lifted out, the liquor is poured off, and what is powder goes with dilute acid that
// leaves the product.

import { type Formula, parseFormula } from "../../formula";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { temperatureRise } from "../../thermochemistry";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { MAGNETIC } from "../data/ends";
import { PLANNING } from "../data/planning";
import { add } from "../operation/add";
import { filterCake } from "../operation/filter";
import { done, justWater } from "../operation/operation";
import { exact, planned } from "../planning/exact";
import { enthalpyOfTerms } from "../reaction/heat";
import { neutralisation } from "../reaction/neutralising";
import type { Material } from "../shelf/material";
import { isInLongPieces, isInPieces, isPowder } from "../shelf/pieces";
import { acidAtHand } from "./acid-at-hand";
import { acidTakes } from "./acid-takes";
import { baseInAcid } from "./base-in-acid";
import { type Bench, POT, type Telling } from "./bench";
import { liquorHeldBy } from "./isolation";
import { gasInRoom } from "./trap";
import { useOf } from "./use";
import { litres, nearly, percent } from "./words";

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

/** The dilute acid that is poured on, what its step says of it, and how it is called with its amount. */
interface Acid {
  readonly pot: Pot;
  readonly telling: Pick<Telling, "materials" | "amounts" | "from" | "more" | "adds">;
  readonly called: string;
}

/** Acid that stands on the table for this, where its strength is known. */
const acidOnTable = ({ frame: { setting } }: Bench): Material | undefined =>
  setting.asides.find((one) => useOf(one, setting) === "takes metal" && one.massFraction() !== undefined);

/**
 * So much of the pure acid, and so much that the whole is sour enough: metal powder coats itself, and thin acid does not eat through,
 * whatever the sum asks for.
 */
function acidNeeded(liquid: Quantity, formula: Formula, needed: Quantity, strength: Quantity): Quantity {
  const thinned = exact("1").minus(planned("cementSour").dividedBy(strength));
  if (!thinned.isPositive()) return needed.to("mol");
  const pure = liquid.times(planned("cementSour")).dividedBy(thinned);
  const sour = pure.dividedBy(matterOf(formula).molarMass).to("mol");
  return needed.compare(sour) < 0 ? sour : needed.to("mol");
}

/** The acid for what is left of a metal: what stands on the table for it, and more of it where that is too little; else dilute sulfuric acid. */
function acidFor(bench: Bench, own: Material | undefined, formula: Formula, needed: Quantity): Acid {
  const { pot, hand } = bench;
  const liquid = pot.with({ solids: [] }).mass;
  const usual = planned("cementAcid");
  if (own === undefined) {
    const acid = acidAtHand(pot, formula, acidNeeded(liquid, formula, needed, usual), usual);
    return {
      pot: acid,
      telling: { amounts: [acid.mass] },
      called: `${hand.grams(acid.mass)} of dilute sulfuric acid (${usual})`,
    };
  }
  const stated = own.massFraction()!;
  const { name } = own.shelf;
  const strength = stated.compare(usual) > 0 ? usual : stated;
  const most = acidNeeded(liquid, formula, needed, strength);
  const taken = own.asideTaken();
  const here = taken?.amount ?? exact("0 mol");
  const short = most.compare(here) > 0 ? most.minus(here).to("mol") : undefined;
  const put = bench.in(bench.pack(name));
  const all = short === undefined ? put : put.plusAll(acidAtHand(pot, formula, short, stated));
  const pure = most.compare(here) > 0 ? most : here;
  const water = pure.times(matterOf(formula).molarMass).dividedBy(strength).to("g").minus(all.mass).to("g");
  const isThinned = stated.compare(usual) > 0 && water.isPositive();
  const shown = (portion: Quantity): string =>
    portion.dimension === "volume" ? hand.litres(portion) : hand.grams(portion);
  const portion = taken?.portion;
  const more =
    short === undefined ? undefined : own.portionFor(short, portion?.dimension === "volume" ? "volume" : "mass");
  const amount =
    portion === undefined
      ? `${shown(more!)} of ${name}`
      : more === undefined
        ? `the ${shown(portion)} of ${name}`
        : `the ${shown(portion)} of ${name} and ${shown(more)} more of it`;
  return {
    pot: isThinned ? all.plusAll(justWater(pot, water)) : all,
    telling: {
      materials: [name],
      amounts: portion === undefined ? [] : [portion],
      from: bench.pack(name),
      adds: "liquid",
      ...(more === undefined || portion === undefined
        ? {}
        : { more: { material: name, portion: more as Quantity<"mass" | "volume"> } }),
    },
    called: isThinned ? `${amount}, poured slowly into ${hand.water(water)} first (${percent(strength)})` : amount,
  };
}

/** Pieces out, and the liquor off what has settled: the acid that comes next would be spent on all of it. Is it worth it? */
function pourOff(bench: Bench, pieces: string): boolean {
  const { pot, hand } = bench;
  const { setting } = bench.frame;
  const { name, formula } = setting.product;
  const liquid = pot.liquor.volume;
  const solids = sum(pot.books.solids.map(massOf));
  const kept = solids.times(liquorHeldBy(setting, "settled", formula)).to("mL");
  if (kept.compare(liquid.times(planned("fills"))) > 0) return false;
  const parted = filterCake(pot, kept);
  bench.did(POT, parted, {
    care: "isolating",
    target: kept,
    blank: "filtrateVolume",
    say: () =>
      `${pieces === "" ? "Let" : `${pieces}, let`} the ${name} settle and pour the clear liquor off into the waste jar, before the acid comes: ${nearly(hand.litres(kept))} stays with it.`,
  });
  bench.filtrate = parted.left[0]?.pot;
  if (bench.filtrate !== undefined) bench.caught("filtrate", bench.filtrate);
  return true;
}

/** Take what is left of a metal out of the product, where dilute acid does. */
export function takeOutMetal(bench: Bench, i: number): void {
  const { setting } = bench.frame;
  const { name, formula } = setting.product;
  const row = acidTakes(setting, i);
  const left = leftInVessel(bench, i);
  if (left === undefined) return;
  const metal = bench.material(i);
  if (row === undefined || staysWhole(bench, i)) {
    if (isInPieces(metal)) liftOut(bench, i);
    return;
  }
  const pieces = isPowder(metal) ? "" : `Lift out what is left of ${bench.name(i)} in pieces`;
  const isOff = pourOff(bench, pieces);
  const waits = acidOnTable(bench);
  const own = waits !== undefined && bench.takesAside(waits) ? waits : undefined;
  const acidFormula = own?.form ?? parseFormula("H2SO4");
  const { terms, acids } = neutralisation(metal.form, acidFormula)!;
  const metals = exact(String(-terms.find(({ matter }) => matter.core.key === matterOf(metal.form).core.key)!.count));
  const extent = left.dividedBy(metals);
  const needed = extent.times(exact(String(acids))).times(planned("overdose"));
  const acid = acidFor(bench, own, acidFormula, needed);
  const done = add(bench.pot, acid.pot, [{ terms, extent }]);
  const gas = done.left[0]?.pot.books.solids[0]?.amount;
  const volume = gas === undefined ? undefined : gasInRoom(bench, gas);
  const isMuch = volume !== undefined && volume.compare(planned("paced")) >= 0;
  const heat = enthalpyOfTerms(terms);
  const rise = heat.ok
    ? temperatureRise({
        enthalpy: heat.value.enthalpy,
        amount: extent,
        mass: bench.pot.mass.plus(acid.pot.mass),
        start: bench.pot.books.temperature,
      }).rise
    : undefined;
  const warmth = isMuch && heat.ok ? inMolesAndKelvins(heat.value.enthalpy.dividedBy(metals), rise!, row.metal) : "";
  const isDrawn = isOneOf(metal.form, ...MAGNETIC.metals) && !isOneOf(formula, ...MAGNETIC.metals);
  const magnet = isDrawn ? `, and ${MAGNETIC.test}` : "";
  const what =
    pieces === ""
      ? `What is left of the ${bench.name(i)}`
      : isOff
        ? `What is left of ${bench.name(i)} as powder`
        : `${pieces}; what is powder`;
  bench.did(POT, done, {
    ...acid.telling,
    later: true,
    ...(isDrawn ? { atHand: ["magnet" as const] } : {}),
    say: ({ vessel }) =>
      `${what} dissolves: stir the ${name} with ${acid.called}${row.warm ? ", warm," : ""}${!isMuch ? "" : paceOfAcid(volume!, rise, vessel?.smallest)} until no more gas rises${magnet}${volume === undefined ? "" : ` (${isMuch ? `at most ${litres(volume)} of ` : ""}hydrogen: no flame${warmth})`}; the ${name} stays.`,
  });
  if (!isOff) bench.liquor = bench.pot;
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

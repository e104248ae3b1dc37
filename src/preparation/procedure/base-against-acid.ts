// A base of the shelf that takes no part in the equation, where that sets an acid free which keeps the product dissolved: it goes in
// last, by paper, and brings the rest of the product out.

import { type Formula, parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { type Quantity, quantity } from "../../quantity";
import { pouredOf, waterOf } from "../contents/equilibrium";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { BASE_SEARCH } from "../data/base-for-acid";
import { componentsOf } from "../feasibility/beaker";
import { baseOfShelfFor, withBase } from "../feasibility/with-base";
import { add } from "../operation/add";
import { hold } from "../operation/hold";
import { exact } from "../planning/exact";
import { protonsOf } from "../reaction/acids";
import { hydronsTakenBy } from "../reaction/neutralising";
import { formulaFrom } from "../reaction/species";
import { type Bench, type Look, POT } from "./bench";
import { neutralised } from "./neutralised";
import { onPaper } from "./paper";
import { gasesIn, gasInRoom } from "./trap";
import { useOf } from "./use";
import { lasting, litres, percent } from "./words";

/** Acids that the equation sets free, with what of them is in the vessel. */
const freed = ({ frame: { setting }, pot }: Bench) =>
  setting.products
    .filter(({ formula }) => protonsOf(formula) > 0n)
    .map(({ formula }) => ({ formula, amount: pot.amountOf(matterOf(formula)) }))
    .filter(({ amount }) => amount.isPositive());

/** The least of a base that brings nearly all out that it can, what paper shows then and what stands; undefined where the equilibrium tells nothing. */
function bringsOut(bench: Bench, form: Formula) {
  const { pot } = bench;
  const { product } = bench.frame.setting;
  const kg = waterOf(pot);
  const of = componentsOf(product.formula);
  const each = hydronsTakenBy(form);
  if (kg === undefined || of === undefined || each === 0) return undefined;
  const hydrons = freed(bench).reduce((n, one) => n + one.amount.toNumber("mol") * Number(protonsOf(one.formula)), 0);
  const found = withBase(
    {
      pot: pouredOf(pot, kg),
      celsius: pot.books.temperature.toNumber("°C"),
      of,
      theory: pot.amountOf(matterOf(product.formula)).toNumber("mol") / kg,
    },
    matterOf(form).core.formula,
    hydrons / each / kg,
  );
  return (
    found && {
      ...found,
      amount: quantity(
        { value: (found.moles * kg).toPrecision(4), unit: "mol" },
        { label: `${form} that brings the rest of the product out, by the equilibrium` },
      ),
    }
  );
}

/** All of the product that is dissolved as the solid that it should become; what the liquor keeps of it goes back as it settles. */
function asPrecipitate({ frame: { setting } }: Bench, pot: Pot): Pot {
  const matter = matterOf(setting.product.formula);
  const dissolved = pot.books.dissolved.find((one) => one.matter.key === matter.core.key);
  return dissolved === undefined
    ? pot
    : new Pot(pot.books).minus(matter, dissolved.amount).plusSolid(matter, dissolved.amount, "precipitated");
}

/** How it is divided, in words: a base that foams in portions. */
function divided({ hand }: Bench, mass: Quantity, gas: string, { additionRate }: Look): string {
  if (gas === "") return ", slowly and stirring";
  if (additionRate === undefined)
    return `, in small portions, each once the foam of the last has subsided: ${gas} in all`;
  const { portions, leastTime } = additionRate;
  const time = lasting(leastTime);
  return `, stirring, in at least ${portions} portions (about ${hand.grams(mass.dividedBy(exact(String(portions))))} each)${time === undefined ? "" : ` over at least ${time}`}, each once the foam of the last has subsided: ${gas} in all`;
}

/** Bases that stand on the table against the acid go in by paper, and what the liquor keeps of the product is less then. */
export function putAgainstAcid(bench: Bench, settle: (pot: Pot) => Pot): void {
  if (bench.frame.isolation.how !== "precipitate") return;
  const { setting } = bench.frame;
  for (const material of bench.asidesFor("against acid")) {
    const { name } = material.shelf;
    const taken = material.asideTaken();
    const amount = taken?.amount ?? bringsOut(bench, material.form)?.amount;
    const matter = matterOf(material.form);
    const { temperature, pressure } = bench.pot.books;
    const put =
      taken !== undefined || amount === undefined
        ? bench.in(bench.pack(name))
        : Pot.empty(temperature, pressure).plusSolid(matter, amount, "put in");
    const acids = freed(bench).map(({ formula }) => matterOf(formula).name);
    const reactions =
      amount === undefined ? [] : neutralised({ formula: material.form, amount }, freed(bench)).reactions;
    const done = add(bench.pot, put, reactions, (pot) => settle(asPrecipitate(bench, pot)));
    const gases = gasesIn(done);
    for (const one of gases) bench.laterGas.add(one.matter.key);
    const gas = list(gases.map((one) => `${litres(gasInRoom(bench, one.amount))} of ${one.matter.name}`));
    const mass = put.mass;
    bench.did(POT, done, {
      materials: [name],
      amounts: taken === undefined ? [mass] : [taken.portion],
      from: bench.pack(name),
      adds: material.isSolution ? "liquid" : "solid",
      care: "mixing",
      atHand: ["indicator paper"],
      say: (look) => {
        const paper = onPaper(done.after.at(setting.temperature));
        const shows = paper === undefined ? "is no longer acid" : `shows about pH ${paper.shown}`;
        const size = taken?.portion.dimension === "volume" ? bench.hand.litres(taken.portion) : bench.hand.grams(mass);
        const what = amount === undefined ? `the ${name}` : `${size} of ${name}`;
        const drop = paper?.thinned === true ? " in a drop of it in nine drops of water" : "";
        return `Add ${what}${divided(bench, mass, gas, look)}; stop where paper ${shows}${drop}: it takes the ${list(acids)} that ${acids.length === 1 ? "keeps" : "keep"} ${setting.product.name} dissolved.`;
      },
    });
  }
}

/**
 * What is not on the table, and would bring a good part more out: offered with its mass and the pH to stop at. All figures stay those of
 * the work without it.
 */
export function offerBase(bench: Bench): void {
  const { setting, isolation } = bench.frame;
  const { product } = setting;
  if (isolation.how !== "precipitate" || setting.asides.some((one) => useOf(one, setting) === "against acid")) return;
  if (freed(bench).length === 0) return;
  const paper = onPaper(bench.pot);
  if (paper === undefined || paper.pH.compare(exact(BASE_SEARCH.soursBelow)) >= 0) return;
  const row = baseOfShelfFor(product.formula);
  const formula = parseFormula(row.formula);
  const found = bringsOut(bench, formula);
  if (found === undefined) return;
  const mass = found.amount.times(matterOf(formula).molarMass).to("g");
  const gas = gasInRoom(bench, found.amount);
  const acids = freed(bench).map((one) => matterOf(one.formula).name);
  bench.did(POT, hold(bench.pot), {
    atHand: ["indicator paper"],
    say: () =>
      `If you want more of it: stir in up to ${bench.hand.grams(mass)} of ${row.called} (${formulaFrom(row.formula).toUnicode()}) now, a little at a time, for it foams (${litres(gas)} of CO₂ in all), and stop where paper shows pH ${found.pH.toFixed(0)}: it takes the ${list(acids)} that ${acids.length === 1 ? "keeps" : "keep"} ${product.name} dissolved, and ${percent(quantity({ value: (100 * found.share).toPrecision(2), unit: "%" }))} of it precipitates. Every figure from here on is for the work without it.`,
  });
}

// Washing a cake: with water, or with the wash that a product has of its own, so often as its schedule says; and the test of the
// last wash.
import type { Formula } from "../../formula";
import { attempt, type Result } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { type WashAdvice, type WashPlan, washAdvice } from "../../solubility";
import { COLD_WATER, HOT_WATER, RESIDUE } from "../../solubility/internal";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { SLIME_SETTLES, WARM_WASH } from "../data/gels";
import { warmthOf } from "../feasibility/by-warmth";
import { testWash } from "../operation/wash";
import { exact, planned } from "../planning/exact";
import { smallestFor } from "../planning/vessel";
import { isMetal } from "../reaction/acids";
import { gelRow } from "../reaction/gel";
import { formulaFrom } from "../reaction/species";
import { againstColloid, standsAmmonium } from "./against-colloid";
import { type Bench, type Look, POT } from "./bench";
import { isGel } from "./isolation";
import type { MoreOf } from "./more-of";
import { notWarmOf } from "./not-warm";
import { colourInAir, isAirless } from "./protection";
import { sourWashOf, washes } from "./sour-wash";
import { times, vesselSize } from "./words";

/** The vessel for what is stirred up, where that of the batch is too small. */
function largerFor(liquid: Quantity, vessel: Look["vessel"]): Quantity<"volume"> | undefined {
  const size = smallestFor(liquid.times(planned("washRoom")));
  return size === undefined || vessel?.smallest === undefined || size.compare(vessel.smallest) <= 0 ? undefined : size;
}

/** The same in brackets. */
const inLarger = (size: Quantity | undefined): string =>
  size === undefined ? "" : ` (in a vessel of ${vesselSize(size)} or larger)`;

const remembered = /* @__PURE__ */ remembering<Result<WashAdvice>>(128);

const adviceFor = (product: Formula, salts: readonly string[], temperature: Quantity<"temperature">) => {
  const ask = () => attempt(() => washAdvice({ product, washedOut: salts, temperature }));
  // An uncertain temperature is an input of its own, and no key.
  return temperature.standardUncertainty === undefined
    ? remembered(`${product} ${salts.join(" ")} ${temperature}`, ask)
    : ask();
};

/** Two masses to compare: in milligrams where the balance would print both in the same words, or hardly shows the first. */
function between({ hand, frame: { setting } }: Bench, one: Quantity, other: Quantity): readonly [string, string] {
  const [a, b] = [hand.grams(one), hand.grams(other)];
  const isSmall = one.compare(setting.steps.mass.times(planned("hardlyShown"))) < 0;
  const milligrams = (mass: Quantity): string =>
    mass.isPositive() ? mass.format({ unit: "mg", significant: 2, uncertainty: "none" }) : "none";
  return a === b || isSmall ? [milligrams(one), milligrams(other)] : [a, b];
}

/** A slime that neither warm water nor air changes. */
const standsWarm = (product: Formula): boolean =>
  isGel(product) && notWarmOf(product) === undefined && warmthOf(product).below === undefined;

/** A wash made of a pack of the plan that is strong enough for it: what of the pack goes into each wash, in words, and into all of them. */
function dilutedFromPack(
  { hand, frame: { setting } }: Bench,
  wanted: WashAdvice["dilute"],
  { washVolume, washes: count }: WashPlan,
): { readonly text: string; readonly more: MoreOf } | undefined {
  if (wanted === undefined) return undefined;
  const strength = exact(wanted.strength);
  const pack = [...setting.materials, ...setting.asides].find(
    (one) => isOneOf(one.form, wanted.formula) && one.massFraction()?.compare(strength) === 1,
  );
  const share = pack?.massFraction();
  if (pack === undefined || share === undefined) return undefined;
  const all = washVolume.times(exact("1 g/mL"));
  const each = all.times(strength).dividedBy(share).to("g") as Quantity<"mass">;
  const { name } = pack.shelf;
  const hood = share.compare(planned("dilute")) > 0 ? ", under a hood" : "";
  return {
    text: `${wanted.called}: ${hand.grams(each)} of the ${name} in ${hand.water(all.minus(each).to("g"))}${hood}`,
    more: { material: name, portion: each.times(BigInt(count)).to("g") as Quantity<"mass"> },
  };
}

/** Water for what air changes, in words: what brown or green means stands beside it. */
function freeOfAir(product: Formula): string {
  if (!isAirless(product)) return "";
  const colour = colourInAir(product);
  return `, boiled and cooled${colour === undefined ? "" : ` (${colour} the cake is oxidised, by air)`}`;
}

/** Washed as its schedule says, and the last wash tested. */
export function washCake(bench: Bench, before: Pot, decants: boolean, isIced: boolean): void {
  const { washing, frame } = bench;
  const { product, temperature } = frame.setting;
  if (washing === undefined) return;
  if ("missing" in washing) {
    bench.did(POT, testWash(before), {
      say: () => `Wash with water; how often is not known: ${washing.missing}.`,
      blank: "washes",
    });
    return;
  }
  const { plan, salts } = washing;
  const advice = adviceFor(product.formula, salts, temperature);
  const isElement = product.formula.symbols.length === 1;
  const liquid = advice.ok && !isElement ? advice.value.liquid : "water";
  const sour = sourWashOf(bench, before, plan, advice.ok ? advice.value : undefined);
  const own = advice.ok && !isElement ? dilutedFromPack(bench, advice.value.dilute, plan) : undefined;
  const needs = advice.ok && !isElement && own === undefined ? advice.value.needs : undefined;
  const because = advice.ok ? advice.value.because : "";
  const special =
    sour !== undefined
      ? sour.text
      : isIced && (liquid === "water" || liquid === COLD_WATER)
        ? ", ice-cold (the product dissolves slightly)"
        : liquid === "water"
          ? freeOfAir(product.formula) || (decants && standsWarm(product.formula) ? WARM_WASH.text : "")
          : liquid === HOT_WATER
            ? ` of ${liquid} (${because})`
            : ` (better: ${own?.text ?? liquid}; ${because})`;
  const namesLiquid = sour?.isAll === true || liquid === HOT_WATER;
  const residue = plan.residueAfter.at(-1) ?? plan.residueUnwashed;
  if (plan.washes === 0) {
    bench.did(POT, testWash(before), {
      say: () =>
        `It need not be washed: ${between(bench, residue, plan.target)[0]} of ${list(salts)} ${salts.length === 1 ? "stays" : "stay"} in it, and ${between(bench, residue, plan.target)[1]} may.`,
      target: plan.target,
      blank: "washes",
    });
    return;
  }
  const lost = plan.productLost;
  const matter = matterOf(product.formula);
  const done = washes(
    before,
    plan,
    lost === undefined ? undefined : { matter, amount: lost.dividedBy(matter.molarMass).to("mol") },
    sour,
  );
  // what sets to a jelly does not go back into the water
  const isColloid =
    decants && isGel(product.formula) && gelRow(product.formula)?.sets !== true && standsAmmonium(product.formula);
  const isReturned = !decants && plan.washVolume.compare(planned("onFunnel")) > 0;
  const how = decants
    ? `stirring it up, letting it settle${isGel(product.formula) ? ` (${SLIME_SETTLES.time})` : ""} and pouring off`
    : `stirring it up ${isReturned ? "in the vessel and filtering" : "on the filter and sucking off"}${isAirless(product.formula) ? ", only until the water is gone: no air is sucked through it" : ""}`;
  const stirred = before.volume.plus(plan.washVolume);
  const larger = ({ vessel }: Look): Quantity<"volume"> | undefined =>
    decants || isReturned ? largerFor(stirred, vessel) : undefined;
  bench.did(POT, done, {
    largerVessel: larger,
    say: (look) =>
      `Wash ${times(plan.washes)} with ${namesLiquid ? bench.hand.litres(plan.washVolume) : bench.hand.water(plan.washVolume)}${plan.washes === 1 ? "" : " each"}${special}, ${how}${inLarger(larger(look))}: ${list(salts)} in it ${salts.length === 1 ? "goes" : "go"} from ${between(bench, plan.residueUnwashed, residue).join(" to ")}${decants ? `, of which the filter leaves ${between(bench, washing.leaves, plan.target)[0]}` : ""}.${isColloid ? againstColloid(product.formula, before, advice.ok ? advice.value.endTests.map(({ ion }) => ion) : []) : ""}`,
    amounts: [plan.washVolume],
    acidDiluted: sour?.taken,
    target: plan.target,
    blank: "washes",
    ...(needs === undefined ? {} : { atHand: [needs] }),
    ...(own === undefined ? {} : { more: own.more }),
  });
  if (!advice.ok) {
    bench.did(POT, testWash(bench.pot), {
      say: () => `Test the last wash: ${RESIDUE}.`,
      blank: "tests.lastWash",
    });
    return;
  }
  const { endTests, untested } = advice.value;
  if (endTests.length + untested.length === 0) return;
  const more = washesUntilTest(before, bench.pot, plan, advice.value);
  if (more > 0)
    bench.washing = {
      ...washing,
      untilTest: { washes: more, water: plan.washVolume.times(BigInt(more)).to("mL") as Quantity<"volume"> },
    };
  const share = washing.leaves.dividedBy(massOfSolids(before)).to("%");
  const left = `${between(bench, washing.leaves, plan.target)[0]} (${share.format({ significant: 1, uncertainty: "none" })} of the product)`;
  bench.did(POT, testWash(bench.pot), {
    tests: endTests,
    say: () => wordsOfTests(advice.value, plan.washes, bench.frame.setting.product.formula, { more, left }),
    ...(endTests.length > 0 ? { blank: "tests.lastWash", choices: boxesOf(endTests) } : {}),
  });
}

const massOfSolids = ({ books }: Pot): Quantity => sum(books.solids.map(massOf));

/** What is ticked of a test: its own words where there is one test. */
function boxesOf(endTests: WashAdvice["endTests"]): readonly [string, string] | undefined {
  const [first, ...rest] = endTests;
  return rest.every(({ test }) => test === first?.test) ? first?.boxes : undefined;
}

/** Amount of an ion in what is dissolved. */
function amountOf({ books }: Pot, ion: string): Quantity {
  const amounts = books.dissolved.flatMap(({ matter, amount }) => {
    const { cations, anions } = constitutionOf(matter.core.formula);
    return [...cations, ...anions]
      .filter(({ formula }) => formula === ion)
      .map(({ count }) => amount.times(exact(String(count))));
  });
  return sum([exact("0 mol"), ...amounts]);
}

/** Washes beside those of the plan until the last one is too thin for every test: each leaves the same share. */
function washesUntilTest(before: Pot, washed: Pot, plan: WashPlan, { endTests }: WashAdvice): number {
  const left = plan.leftByOneWash.toNumber("");
  const { volume } = before.liquor;
  const each = endTests.map(({ ion, showsFrom }) => {
    if (showsFrom === undefined || !volume.isPositive()) return 0;
    const strength = amountOf(washed, ion).dividedBy(volume).toNumber("mmol/L");
    const shows = exact(showsFrom).toNumber("mmol/L");
    return strength <= shows ? 0 : Math.ceil(Math.log(shows / strength) / Math.log(left));
  });
  return Math.max(0, ...each);
}

/** The tests, each once with the ions that it shows; and what none tells. */
function wordsOfTests(
  { acid, endTests, untested }: WashAdvice,
  washes: number,
  product: Formula,
  { more, left }: { readonly more: number; readonly left: string },
): string {
  const printed = (ion: string): string => formulaFrom(ion).toUnicode();
  const tests = [...new Set(endTests.map(({ test }) => test))];
  const shown = tests.map((test) => {
    const ions = endTests.filter((one) => one.test === test).map(({ ion }) => printed(ion));
    return `${list(ions)} (${test})`;
  });
  const beside = isMetal(product)
    ? ""
    : ` beside what the product ${acid === undefined ? "itself gives off" : "and the wash give off themselves"}`;
  const counted =
    untested.length === 0
      ? []
      : [
          `Use all the water of the ${washes === 1 ? "wash" : `${washes} washes`}: no test tells ${list(untested.map(printed))}${beside}.`,
        ];
  return [
    ...(shown.length === 0
      ? []
      : more === 0
        ? [`Test the last wash for ${shown.join("; ")}; wash once more for as long as it shows.`]
        : [
            `Test the last wash for ${shown.join("; ")}. The ${left} left still shows and may stay; ${times(more)} more removes it.`,
          ]),
    ...counted,
  ].join(" ");
}

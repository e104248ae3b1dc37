// Washes with a little acid in their water: all of them for a product that plain water turns, the first one of a metal whose liquor
// keeps a salt that plain water makes basic.
import { type Formula, parseFormula } from "../../formula";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import type { WashAdvice, WashPlan } from "../../solubility";
import type { Entry } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { FIRST_WASH } from "../data/protection";
import { type Done, done } from "../operation/operation";
import { wash } from "../operation/wash";
import { exact, planned } from "../planning/exact";
import { densityAt } from "../shelf/strength";
import type { AcidDiluted } from "./acid-diluted";
import { baseInAcid } from "./base-in-acid";
import type { Bench } from "./bench";
import { acidOfFirstWash } from "./protection";
import { percent } from "./words";

function measuredOut(bench: Bench, volume: Quantity): string {
  if (volume.compare(planned("leastPipetted")) < 0) return "a drop";
  const drops =
    volume.compare(planned("byDrops")) < 0
      ? `, about ${volume.dividedBy(planned("drop")).format({ decimals: 0, uncertainty: "none" })} drops,`
      : "";
  return `${bench.hand.litres(volume)}${drops}`;
}

interface SourWash {
  /** In the water of all the sour washes together. */
  readonly acid: Entry;
  readonly taken: AcidDiluted;
  /** Every wash is sour; else the first. */
  readonly isAll: boolean;
  /** After the volume of a wash. */
  readonly text: string;
}

interface Sour {
  readonly formula: string;
  readonly name: string;
  readonly strength: string;
  readonly sold: string;
}

/** The acid as it is at hand: of a pack of the plan that is more than dilute, or else as the row takes it. */
function atHand({ frame: { setting } }: Bench, { formula, sold }: Sour) {
  const pack = [...setting.materials, ...setting.asides].find(
    (one) => isOneOf(one.form, formula) && one.massFraction()?.compare(planned("dilute")) === 1,
  );
  return pack === undefined
    ? { pack: undefined, share: exact(sold), called: "acid" }
    : { pack: pack.shelf.name, share: pack.massFraction()!, called: pack.shelf.name };
}

/** What of the acid as it is taken goes into how much water. */
function diluted(bench: Bench, sour: Sour, water: Quantity) {
  const { formula, name, strength } = sour;
  const { pack, share, called } = atHand(bench, sour);
  const matter = matterOf(parseFormula(formula));
  const pure = water.times(exact("1 g/mL")).times(exact(strength)).to("g");
  const density = densityAt(matter.formula, share);
  const strong = pure.dividedBy(share).to("g");
  const volume = density === undefined ? undefined : strong.dividedBy(density).to("mL");
  const measured = volume === undefined ? bench.hand.grams(strong) : measuredOut(bench, volume);
  const portion = (volume ?? strong) as AcidDiluted["portion"];
  const shown = percent(share);
  return {
    acid: { matter, amount: pure.dividedBy(matter.molarMass).to("mol") },
    taken: { formula, pack, strength: shown, portion },
    called: `${strength} ${name}`,
    into: `${measured} of the ${called} of ${shown} into ${bench.hand.water(water)}`,
  };
}

/** The salt that acid made of the base a metal is won from: a trace of it is left in the cake. */
function saltOfBase({ frame: { setting } }: Bench): Formula[] {
  const made = baseInAcid(setting)?.reaction.terms.filter(
    ({ count, whereto }) => count > 0n && whereto === "dissolved",
  );
  return made?.map(({ matter }) => matter.formula) ?? [];
}

/** The acid in the washes of a cake; undefined for plain ones. */
export function sourWashOf(
  bench: Bench,
  before: Pot,
  { washes: n, washVolume }: Pick<WashPlan, "washes" | "washVolume">,
  advice: WashAdvice | undefined,
): SourWash | undefined {
  if (n === 0) return undefined;
  if (advice?.acid !== undefined) {
    const { acid, taken, called, into } = diluted(bench, advice.acid, washVolume.times(BigInt(n)));
    const text = ` of ${called} (${into} for ${n === 1 ? "it" : "all of them"}; ${advice.because})`;
    return { acid, taken, isAll: true, text };
  }
  const salts = [...before.books.dissolved.map(({ matter }) => matter.formula), ...saltOfBase(bench)];
  const first = acidOfFirstWash(bench.frame.setting.product.formula, salts);
  if (first === undefined) return undefined;
  const sold = planned("putOnAcid").format({ unit: "%", uncertainty: "none" });
  const row = { ...first, strength: FIRST_WASH.strength, sold };
  const { acid, taken, called, into } = diluted(bench, row, washVolume);
  const because = FIRST_WASH.because.replace("{salt}", matterOf(first.salt).name);
  const how = `${called} (${into}; ${because})`;
  return { acid, taken, isAll: n === 1, text: n === 1 ? ` of ${how}` : `, the first of ${how}` };
}

/** All washes of a plan, as one operation. */
export function washes(
  before: Pot,
  { washes: n, washVolume, leftByOneWash }: Pick<WashPlan, "washes" | "washVolume" | "leftByOneWash">,
  lost: Parameters<typeof wash>[4],
  sour: SourWash | undefined,
): Done {
  const water = washVolume.times(exact("1 g/mL"));
  if (sour === undefined || sour.isAll) return wash(before, n, water, leftByOneWash, lost, sour?.acid);
  const first = wash(before, 1, water, leftByOneWash, undefined, sour.acid);
  const rest = wash(first.after, n - 1, water, leftByOneWash, lost);
  return done("wash", before, rest.after, [...first.put, ...rest.put], [...first.left, ...rest.left]);
}

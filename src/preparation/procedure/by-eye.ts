// A liquor of whose crystals no table tells: how far it is boiled down by eye, and whether it may stand in ice, so that what is
// beside the product stays dissolved and the crystals can be stirred.

import { attempt } from "../../foundation/error";
import { type Quantity, quantity } from "../../quantity";
import { lossToLiquor, waterToDissolve } from "../../solubility";
import { type Entry, massOf } from "../contents/entry";
import { massOfWater, matterOf } from "../contents/matter";
import { asMassOfWater, exact, planned } from "../planning/exact";
import { changesOf } from "../reaction/change-of-solid";
import { isMiscible, staysInWater } from "../reaction/fluids";
import type { Bench } from "./bench";
import { timesTheWater } from "./common-ion";
import { leastWarmthOf, turningOf } from "./double-salt";

type Temperature = Quantity<"temperature">;

/** So many times the water that just dissolves an entry; undefined where no figure tells. */
export function waterFor(one: Entry, temperature: Temperature, waterFactor: string): Quantity | undefined {
  const { formula } = one.matter;
  const enough = attempt(() =>
    waterToDissolve({ formula, mass: massOf(one) as Quantity<"mass">, temperature, waterFactor }),
  );
  return enough.ok ? enough.value.water : undefined;
}

/** What is beside the product in a liquor, and the water that keeps it dissolved. */
interface Beside {
  readonly name: string;
  readonly mass: Quantity;
  /** Beside the other salts, which share its ions; undefined where no figure tells. */
  readonly least: Quantity | undefined;
  /** By itself. */
  readonly alone: Quantity | undefined;
}

function besideIn({ pot, frame: { setting } }: Bench, at: Temperature): readonly Beside[] {
  const { core } = matterOf(setting.product.formula);
  const { dissolved } = pot.books;
  const salts = dissolved.map((one) => ({ matter: one.matter, dry: massOf(one).toNumber("g") }));
  return dissolved.flatMap((one, i): Beside[] => {
    const { key, formula, name } = one.matter;
    if (key === core.key || massOf(one).compare(setting.steps.mass) < 0 || staysInWater(formula) || isMiscible(formula))
      return [];
    const alone = waterFor(one, at, "1");
    const times = timesTheWater(salts, i);
    const least = times === 1 ? alone : alone?.times(quantity(times.toPrecision(6))).to("g");
    return [{ name, mass: massOf(one), least, alone }];
  });
}

/** Water of a liquor without that which the crystals of all the product bind. */
function freeWater({ pot, frame: { setting } }: Bench): Quantity {
  const { core, waters } = matterOf(setting.product.formula);
  const own = pot.books.dissolved.find(({ matter }) => matter.key === core.key);
  return own === undefined || waters.isZero()
    ? pot.books.water
    : pot.books.water.minus(massOfWater(own.amount.times(waters)));
}

/** How far a liquor is boiled down by eye. */
export interface ByEye {
  /** Some may be boiled off, or no figure tells. */
  readonly isBoiled: boolean;
  /** Water that may go in all; undefined where hardly any may, or no figure tells. */
  readonly off: Quantity | undefined;
  /** Mass of the contents that it stops at, where that is what tells. */
  readonly to?: Quantity;
  /** In words; empty where nothing is to be said. */
  readonly text: string;
}

/**
 * Water that may go before the crystals can no longer be stirred: all of the product counts as crystals, but for what the table says
 * that the liquor keeps in ice. Of crystals C with the share f of water, salt S, water W, mass M and k of salt to one of water:
 * C = (S - k (W - x)) / (1 - f - k f) is to be no more than the share s of M - x.
 */
function offUntilStirred(bench: Bench): { readonly off: Quantity; readonly isOfTable: boolean } {
  const { pot, frame } = bench;
  const { formula } = frame.setting.product;
  const all = pot.mass.minus(frame.theory.dividedBy(planned("stirred"))).to("g");
  const { core, molarMass } = matterOf(formula);
  const own = pot.books.dissolved.find(({ matter }) => matter.key === core.key);
  const kept = attempt(() => lossToLiquor({ formula, water: "1 g", temperature: planned("iced") as Temperature }));
  if (own === undefined || !kept.ok || !mayStandInIce(bench)) return { off: all, isOfTable: false };
  const dry = core.molarMass.dividedBy(molarMass).toNumber("");
  const k = kept.value.perHundredGramsWater.toNumber("g") / 100;
  const each = dry - k * (1 - dry);
  if (each <= 0) return { off: all, isOfTable: false };
  const s = planned("stirred").toNumber("") * each;
  const [S, W, M] = [massOf(own), pot.books.water, pot.mass].map((one) => one.toNumber("g")) as [
    number,
    number,
    number,
  ];
  const off = (s * M - S + k * W) / (k + s);
  return off > all.toNumber("g")
    ? { off: quantity(`${Number(off.toPrecision(6))} g`), isOfTable: true }
    : { off: all, isOfTable: false };
}

/** Water that may go before what is beside the product crystallises with it, or the crystals can no longer be stirred. */
export function boiledByEye(bench: Bench): ByEye {
  const { pot, hand, frame } = bench;
  const { water, waterMissing } = pot.books;
  if (waterMissing.length > 0) return { isBoiled: true, off: undefined, text: "" };
  const free = freeWater(bench);
  const { off: stirred, isOfTable } = offUntilStirred(bench);
  const [first] = besideIn(bench, frame.setting.temperature)
    .flatMap(({ name, least, alone }) =>
      least === undefined || alone === undefined
        ? []
        : [{ name, least, off: free.minus(least), alone: free.minus(alone) }],
    )
    .sort((one, other) => one.off.compare(other.off));
  const worthIt = asMassOfWater(frame.setting.steps.volume).times(planned("leastMarks"));
  const isMuch = (off: Quantity): boolean => off.compare(worthIt) >= 0;
  const isByOther = first !== undefined && first.off.compare(stirred) < 0;
  const off = isByOther ? first.off : stirred;
  /** Down to a mass of the contents. */
  const downTo = (most: Quantity): ByEye => {
    const to = pot.mass.minus(most);
    return {
      isBoiled: true,
      off: most,
      to,
      text: `; ${hand.water(free)} in it is no crystal water: gently, until the contents weigh no less than ${hand.grams(to)}, cooled and seeded in between`,
    };
  };
  if (isOfTable && !isByOther && isMuch(off)) return downTo(off);
  if (isMuch(off)) {
    const why = isByOther ? `${first.name} crystallises with it` : "the crystals can no longer be stirred";
    return {
      isBoiled: true,
      off,
      text: `; no more than ${hand.water(off)} ${turningOf(frame.setting.product.formula) === undefined ? "boiled " : ""}off in all, or ${why}`,
    };
  }
  if (first === undefined || isMuch(first.off)) {
    const toMush = pot.mass.minus(frame.theory.times(planned("lastStop"))).to("g");
    const most = first === undefined || toMush.compare(first.off) < 0 ? toMush : first.off;
    if (isMuch(most)) return downTo(most);
    return {
      isBoiled: true,
      off: undefined,
      text: "; little water is left in it: no more than some drops at a time, cooled in between",
    };
  }
  return {
    isBoiled: false,
    off: undefined,
    text: isMuch(first.alone)
      ? `; ${first.name} may crystallise with it: beside the other salts, which share its ions, it takes ${hand.water(first.least)} to stay dissolved for certain, and there is ${hand.water(water)}`
      : `; ${first.name} crystallises with it`,
  };
}

/** Does what is beside the product stay dissolved in ice by figures, or hardly count beside alcohol, and is no change to another hydrate known on the way? */
export function mayStandInIce(bench: Bench, hasAlcohol = false): boolean {
  const { product, temperature: room } = bench.frame.setting;
  const ice = planned("iced") as Temperature;
  if (bench.pot.books.waterMissing.length > 0 || ice.plus(planned("coolsBy")).compare(room) > 0) return false;
  const isOnTheWay = (celsius: number): boolean => {
    const change = exact(`${celsius} °C`);
    return change.compare(ice) > 0 && change.compare(room) <= 0;
  };
  const least = leastWarmthOf(product.formula);
  if (least !== undefined && least.compare(ice) > 0) return false;
  if (changesOf(product.formula).some(({ celsius }) => isOnTheWay(celsius))) return false;
  const free = freeWater(bench);
  // with alcohol in it that brings out what comes along, and a little of that does not spoil the crystals
  const little = hasAlcohol ? exact("100 %").minus(planned("cleanCrop")).times(bench.frame.theory) : undefined;
  return besideIn(bench, ice).every(
    ({ least, mass }) =>
      (little !== undefined && mass.compare(little) < 0) || (least !== undefined && least.compare(free) <= 0),
  );
}

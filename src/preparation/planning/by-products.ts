// What else forms, where it is at the end of the work, and whether it is worth keeping.

import { list } from "../../foundation/wording";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { isPoisonInWaste } from "../contents/poisons";
import type { Pot } from "../contents/pot";
import { NEVER_KEPT } from "../data/waste";
import type { Dissolved } from "../procedure/isolation";
import { saturatedAt } from "../procedure/settling";
import { celsius } from "../procedure/words";
import type { Account, Formed } from "../reaction/account";
import { isAcid } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { boilingPoint, boilsLow, isGas } from "../reaction/fluids";
import { keptInSolution } from "../reaction/only-in-solution";
import { coreOf, type Species } from "../reaction/species";
import type { Setting } from "../request/setting";
import { holdsCyanide } from "../safety/waste";
import { isWasteMetal } from "../safety/waste-metals";
import { exact, planned } from "./exact";

/** A product beside the wanted one. */
export interface ByProduct extends Formed {
  /** Where it is at the end of the work. */
  readonly where: "in the liquor" | "with the product" | "filtered off" | "gas" | "not known";
  /** The liquor holds little else: boiled down it gives the salt. */
  readonly worthKeeping: boolean;
  /** Reason of `where`, in words. */
  readonly why: string;
}

type End = Omit<ByProduct, keyof Formed>;

/** One by-product with the liquor it may be in. */
interface Beside {
  readonly species: Species;
  readonly formed: Formed;
  readonly setting: Setting;
  readonly dissolved: readonly Dissolved[];
  /** Of the liquor; undefined where it is not known. */
  readonly water: Quantity | undefined;
  /** What runs off before any washing; undefined where nothing is filtered. */
  readonly filtrate: Pot | undefined;
}

const notKept = (where: End["where"], why: string): End => ({ where, worthKeeping: false, why });

const fateIn = ({ temperature }: Setting, { formula }: Species) => fateOf(formula, temperature);

const isCrystallised = (setting: Setting): boolean => fateIn(setting, setting.product).precipitated !== true;

const twoFigures = (share: Quantity): string => share.format({ significant: 2, uncertainty: "none" });

function asGas({ species, setting }: Beside): End | undefined {
  if (isGas(species.formula, setting.wet)) return notKept("gas", "it leaves as gas");
  const boils = boilingPoint(species.formula);
  return setting.wet && boils !== undefined && boilsLow(species.formula) && isCrystallised(setting)
    ? notKept("gas", `it boils at ${celsius(boils)}, and leaves a warm liquor as vapour`)
    : undefined;
}

function beforeTheCrystals({ species, setting }: Beside): End | undefined {
  const { precipitated, why } = fateIn(setting, species);
  return precipitated === true && isCrystallised(setting) && setting.wet
    ? notKept("filtered off", `${why}: it goes before the crystals`)
    : undefined;
}

/** Iodine beside a solid is taken out of it. */
const takenBySulfite = ({ species, setting: { wet, request } }: Beside): End | undefined =>
  wet && isOneOf(species.formula, "I2") && (request.procedure ?? "redox") === "redox"
    ? notKept("in the liquor", "sulfite reduces it to iodide")
    : undefined;

function withTheProduct({ species, setting }: Beside): End | undefined {
  const { precipitated, why } = fateIn(setting, species);
  return precipitated === true ? notKept("with the product", why) : undefined;
}

function whereNobodyKnows({ species, setting }: Beside): End | undefined {
  const { precipitated, why } = fateIn(setting, species);
  return precipitated === undefined ? notKept("not known", `${why} is not known`) : undefined;
}

/** A product that crystallises stays in its own liquor too, up to what the water holds. */
const besideTheCrystals = ({ setting }: Beside): End | undefined =>
  isCrystallised(setting)
    ? notKept(
        "in the liquor",
        `the liquor also contains what is left of ${setting.product.name}: take a second crop of that first`,
      )
    : undefined;

const asFreeAcid = ({ species }: Beside): End | undefined =>
  isAcid(species.formula) ? notKept("in the liquor", "it is a free acid in much water") : undefined;

const besideCyanide = ({ setting }: Beside): End | undefined =>
  holdsCyanide(setting)
    ? notKept("in the liquor", "the liquor contains a cyanide: it is collected as it is, never boiled down")
    : undefined;

/** Other salts of the liquor, for so much of it. */
function shareOfOthers({ species, formed, dissolved }: Beside): Quantity {
  const own = coreOf(species.formula);
  const others = dissolved.filter((one) => coreOf(one.species.formula) !== own);
  const masses = others.map(({ species: { molarMass }, amount }) => amount.times(molarMass).to("g"));
  return masses.length === 0 ? exact("0 %") : sum(masses).dividedBy(formed.mass).to("%");
}

/** Metals of the liquor, beside its own, that are precipitated before it is boiled down. */
function metalsToGo({ species, setting, dissolved }: Beside): string[] {
  const { product } = setting;
  const own = species.metals.map(({ symbol }) => symbol);
  // Of a precipitate the water keeps something worth a word only where a table has a figure for it.
  const kept = fateIn(setting, product).perHundredGramsWater === undefined ? [] : [product];
  const there = [...kept, ...dissolved.map((one) => one.species)].flatMap(({ metals }) => metals);
  return [...new Set(there.map(({ symbol }) => symbol))].filter(
    (symbol) => isWasteMetal(symbol) && !own.includes(symbol),
  );
}

/** Poisonous metals of all that was in the pot, its own left out: traces of them are in whatever its liquor gives. */
function poisonsOfThePot({ species, setting }: Beside): string[] {
  const own = species.metals.map(({ symbol }) => symbol);
  const there = [...setting.reactants, ...setting.products].flatMap(({ metals }) => metals.map(({ symbol }) => symbol));
  return [...new Set(there)].filter((symbol) => isPoisonInWaste(symbol) && !own.includes(symbol));
}

/** The salt as it crystallises in the room, where that is another form than the one of the equation. */
function crystalsOf({ species, setting }: Beside): string {
  const solid = saturatedAt(matterOf(species.formula), setting.temperature)?.solid;
  return solid === undefined || solid.waters.isZero() ? "it" : solid.name;
}

/** Part of the salt that runs off before any washing: what a thick sludge keeps goes with the washings, in much water. */
function runsOff({ species, formed: { mass }, filtrate }: Beside): Quantity {
  const core = coreOf(species.formula);
  const there = filtrate?.books.dissolved.find(({ matter }) => coreOf(matter.formula) === core);
  return there === undefined ? exact("100 %") : massOf(there).dividedBy(mass).to("%");
}

/** It is left in the liquor of a precipitate: kept where little else is in there, and the water is not too much to boil. */
function inTheLiquor(one: Beside): End {
  const share = shareOfOthers(one);
  const rest =
    share.compare(exact("100 %")) > 0
      ? "more of other salts than of it"
      : `${twoFigures(share)} of other salts with it`;
  if (share.compare(planned("cleanEnough")) > 0)
    return notKept("in the liquor", `${rest}: recrystallise it or let it go`);
  const off = runsOff(one);
  if (off.compare(planned("runsOff")) < 0)
    return notKept("in the liquor", `only ${twoFigures(off)} of it runs off, the rest is in the water of the washes`);
  const { mass } = one.formed;
  const strength = one.water === undefined ? undefined : mass.dividedBy(mass.plus(one.water)).to("%");
  if (strength !== undefined && strength.compare(planned("worthBoiling")) < 0)
    return notKept("in the liquor", `the liquor has only ${twoFigures(strength)} of it: not worth the boiling`);
  const metals = metalsToGo(one);
  const poison = poisonsOfThePot(one);
  if (poison.length > 0)
    return notKept("in the liquor", `it comes out of a pot with ${list(poison)}: nothing is boiled down from it`);
  const only = keptInSolution(one.species.formula);
  if (only !== undefined) return notKept("in the liquor", `boiled down it does not crystallise: ${only.why}`);
  if (isOneOf(one.species.formula, ...NEVER_KEPT.formulas)) return notKept("in the liquor", NEVER_KEPT.why);
  const first = metals.length === 0 ? "" : `, after all ${list(metals)} is precipitated`;
  return {
    where: "in the liquor",
    worthKeeping: true,
    why: `the liquor boiled down gives ${crystalsOf(one)}${share.compare(planned("trace")) < 0 ? "" : ` with ${rest}`}${first}`,
  };
}

/** What may become of a by-product, in the order it is asked; what none answers for is left in the liquor. */
const ENDS: readonly ((one: Beside) => End | undefined)[] = [
  asGas,
  beforeTheCrystals,
  takenBySulfite,
  withTheProduct,
  whereNobodyKnows,
  besideTheCrystals,
  asFreeAcid,
  besideCyanide,
];

function endOf(one: Beside): End {
  for (const asked of ENDS) {
    const end = asked(one);
    if (end !== undefined) return end;
  }
  return inTheLiquor(one);
}

export function byProductsOf(
  setting: Setting,
  account: Account,
  inLiquor: readonly Dissolved[],
  water: Quantity | undefined,
  filtrate: Pot | undefined,
): ByProduct[] {
  const dissolved = inLiquor.filter(({ amount }) => amount.isPositive());
  return setting.products.flatMap((species, i): ByProduct[] => {
    if (species === setting.product || species.isWater) return [];
    const formed = account.formed[i]!;
    return [{ ...formed, ...endOf({ species, formed, setting, dissolved, water, filtrate }) }];
  });
}

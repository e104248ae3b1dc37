// Bringing a product out of its liquor by cooling: how hot and how cold, how far to boil down, and what is beside it.

import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { type Quantity, quantity } from "../../quantity";
import { fractionalCrystallization } from "../../solubility";
import { type Matter, matterOf } from "../contents/matter";
import { exact, planned } from "../planning/exact";
import { type Account, massFor } from "../reaction/account";
import { changesOf } from "../reaction/change-of-solid";
import { fateOf } from "../reaction/fate";
import { isGas } from "../reaction/fluids";
import type { Setting } from "../request/setting";
import { besideProduct } from "./beside";
import { bestCooling, type Cooling, coolingOf, firstLine, inMoreWater, isFlat } from "./cooling";
import {
  cleanWay,
  type Parted,
  partedOn,
  type Start,
  stirredCold,
  type Way,
  warmerThan,
  waterToKeepLittle,
  waterToStir,
} from "./crystal-way";
import { coolingInIce } from "./iced";
import type { Isolation } from "./isolation";
import { isRecrystallised } from "./kind";
import { hotToPurify } from "./more-water";
import { notWarmOf } from "./not-warm";
import { type Salt, saturatedAt } from "./settling";

/** How a product is crystallised. */
export interface Crystallising {
  /** Temperature of the hot solution. */
  readonly hot: Quantity<"temperature">;
  /** Temperature to which it is cooled. */
  readonly cold: Quantity<"temperature">;
  /** The product by itself, from a solution just saturated hot; or why there is no such figure. */
  readonly cooling: Cooling;
  /** Water of the liquor that is cooled; undefined where it is evaporated instead. */
  readonly water: Quantity<"mass"> | undefined;
  /** That over the least water that was thought of: more where something else would crystallise. */
  readonly thinner: number;
  /** It is boiled down until its own crystals come. */
  readonly intoCrystals: boolean;
  /** Part of the product that is in the crystals, and how pure they are, where other salts with figures are beside it. */
  readonly parted: { readonly share: Quantity<"number">; readonly purity: Quantity<"number"> } | undefined;
  /** Another solid comes out of these ions in its place. */
  readonly otherComes: boolean;
  /** It is not warmed in its liquor, and comes out as it forms, in the cold. */
  readonly asItForms: boolean;
  /** It is cooled in ice, for what that brings. */
  readonly inIce: boolean;
  /** Temperature below which another hydrate would come, where the liquor is kept warm for that. */
  readonly notBelow: Quantity<"temperature"> | undefined;
}

/** What a run takes over from its plan. */
interface AsPlanned {
  readonly crystallising: Crystallising;
  /** The temperature at the filter was measured. */
  readonly measured: boolean;
}

type Temperature = Quantity<"temperature">;

/** Where a liquor is filtered. */
interface Filtered {
  readonly cold: Temperature;
  /** The change of hydrate that it is kept above. */
  readonly notBelow?: Temperature;
  /** No figure is known above that. */
  readonly isBlind?: boolean;
}

/** How cold a liquor may be made for the hydrate that was asked for: as the room, or above the change below which one with more water comes. */
function coldFor(product: Matter, room: Temperature, hot: Temperature): Filtered {
  const asked = product.waters.toNumber("");
  const own = saturatedAt(product, room)?.solid.waters.toNumber("");
  if (own === undefined || own <= asked) return { cold: room };
  const watersOf = (text: string): number => matterOf(parseFormula(text)).waters.toNumber("");
  const change = changesOf(product.formula).find(
    ({ celsius, above }) => celsius > room.toNumber("°C") && above !== undefined && watersOf(above) <= asked,
  );
  if (change === undefined) return { cold: room };
  const notBelow = exact(`${change.celsius} °C`) as Temperature;
  const cold = warmerThan(room, hot).find((at) => at.minus(notBelow).compare(planned("aboveChange")) >= 0);
  if (cold === undefined) return { cold: room };
  return { cold, notBelow, isBlind: saturatedAt(product, cold) === undefined };
}

/** Is the hydrate what stands at the boil, by the changes of the table? Evaporated it stays what it is. */
function standsHot(product: Matter): boolean {
  const above = changesOf(product.formula).at(-1)?.above;
  return above !== undefined && parseFormula(above).hasSameComposition(product.formula);
}

/** Water in which a product passes the hot filter before it is boiled down into its crystals. */
export const clearOf = ({ totalWater }: Exclude<Cooling, { missing: string }>): Quantity =>
  totalWater.times(planned("pairFilter")).to("g");

/** Where the water may begin: what just dissolves it hot, or what keeps little of it cold. */
function startsOf(
  product: Matter,
  dry: Quantity,
  { hot, cold, cooling }: Pick<Crystallising, "hot" | "cold" | "cooling">,
  { isMixed, isForPurity }: { readonly isMixed: boolean; readonly isForPurity: boolean },
): Start[] {
  const little = waterToKeepLittle(product, dry, cold);
  const noBlock = (least: Quantity): Quantity => stirredCold(product, dry, cold, least);
  const into: Start[] = little === undefined ? [] : [{ water: noBlock(little), intoCrystals: true }];
  if ("missing" in cooling) return isMixed || !(product.waters.isZero() || standsHot(product)) ? into : [];
  const { share } = cooling.crop;
  const clear: Start = { water: cooling.totalWater, intoCrystals: false };
  // for the sake of purity: what the packs have besides stays in liquor enough; where cooling brings next to nothing a part is left in it
  if (isForPurity) return isFlat(cooling) && into.length > 0 ? into : [clear];
  const asked = parseFormula(cooling.crop.formula).hasSameComposition(product.formula);
  if (isFlat(cooling) && product.waters.isZero() && asked && !isMixed) return [];
  if (share.compare(planned("poorCrop")) >= 0) return [clear];
  const [hotOne, coldOne] = [saturatedAt(product, hot)?.solid, saturatedAt(product, cold)?.solid];
  // boiled down further another hydrate would come, which turns into this one slowly or not at all
  const isSame = hotOne !== undefined && hotOne.key === coldOne?.key;
  const stirred = little && noBlock(isFlat(cooling) ? little : waterToStir(product, dry, little, hot, cold));
  const isLess = stirred !== undefined && stirred.compare(cooling.totalWater) < 0;
  if (!isLess || !(isSame || isFlat(cooling))) return [clear];
  return [{ water: stirred, intoCrystals: true, clear: clearOf(cooling) }, clear];
}

/** Times the water in which another solid comes hot: so much more keeps that dissolved, where the product still comes cold. */
const MORE_WATER = [1.25, 1.5, 2, 3];

/** A liquor with more water, in which nothing else comes and the product still does; undefined where there is none. */
function inMoreAlone(
  inWater: (times: number) => Crystallising,
  otherOf: (one: Crystallising) => string | undefined,
): Crystallising | undefined {
  for (const times of MORE_WATER) {
    const one = inWater(times);
    if ("missing" in one.cooling || one.cooling.crop.share.compare(planned("leastCrop")) < 0) return undefined;
    if (otherOf(one) === undefined) return one;
  }
  return undefined;
}

/** Do the salts of the liquor give another solid than the two that are planned for? */
function otherSolid(
  { materials, products, product, temperature }: Setting,
  account: Account,
  { hot, cold, cooling }: Pick<Crystallising, "hot" | "cold" | "cooling">,
): string | undefined {
  if ("missing" in cooling) return undefined;
  const beside = products.filter(
    (s) =>
      s !== product && !s.isWater && !isGas(s.formula, true) && fateOf(s.formula, temperature).precipitated !== true,
  );
  const [other] = beside;
  if (other === undefined || beside.length > 1) return undefined;
  const from = materials.map(({ species }, i) => {
    const { amount } = account.supplied[i]!;
    return { formula: species.formula, mass: massFor(amount, species.formula) };
  });
  const pair = attempt(() =>
    fractionalCrystallization({
      wanted: product.formula,
      other: other.formula,
      from,
      water: cooling.totalWater,
      hot,
      cold,
    }),
  );
  return !pair.ok && pair.error.code === "solubility.other-solid" ? firstLine(pair.error) : undefined;
}

/** A share in percent, to the figures that the search is worth. */
const inPercent = (share: number): Quantity<"number"> => quantity({ value: (100 * share).toPrecision(4), unit: "%" });

const inShares = ({ share, purity }: Parted): NonNullable<Crystallising["parted"]> => ({
  share: inPercent(share),
  purity: inPercent(purity),
});

/** The way of a plan, put to what was really taken. */
function wayAgain(starts: readonly Start[], { thinner, intoCrystals }: Crystallising, cold: Temperature): Way {
  const start = starts.find((one) => one.intoCrystals === intoCrystals) ?? starts[0]!;
  const water = thinner === 1 ? start.water : start.water.times(quantity(thinner.toPrecision(6))).to("g");
  return { ...start, water, factor: thinner, cold };
}

export function crystallisingOf(
  setting: Setting,
  account: Account,
  isolation: Isolation,
  theory: Quantity<"mass">,
  before?: AsPlanned,
): Crystallising | undefined {
  if (isolation.how !== "crystallise") return undefined;
  const { product, temperature: room } = setting;
  const own = matterOf(product.formula);
  const bound = notWarmOf(product.formula);
  const none = {
    water: undefined,
    thinner: 1,
    intoCrystals: false,
    parted: undefined,
    otherComes: false,
    asItForms: false,
    inIce: false,
    notBelow: undefined,
  };
  if (bound?.asItForms === true) {
    const missing = `${product.name} is not warmed in its liquor: ${bound.why}`;
    return { ...none, hot: room, cold: room, cooling: { missing }, asItForms: true };
  }
  const usual =
    bound?.upTo !== undefined
      ? (exact(bound.upTo) as Temperature)
      : isRecrystallised(setting.reactants, setting.products)
        ? hotToPurify(product.formula)
        : (planned("hot") as Temperature);
  const asMeasured = before?.measured === true;
  const {
    cold: filtered,
    notBelow,
    isBlind = false,
  }: Filtered = asMeasured ? { cold: room } : coldFor(own, room, usual);
  const best = bestCooling(product.formula, theory, usual, filtered);
  const { hot } = best;
  const inRoom = inMoreWater(setting, account, theory, best, filtered);
  const beside = besideProduct(setting, account);
  const dry = theory.dividedBy(own.molarMass).times(own.core.molarMass).to("g");
  const self: Salt = { matter: own, dry: dry.toNumber("g") };
  const little = theory.times(planned("worthAWord"));
  const solutes = beside
    .filter((one) => one.dry.compare(little) > 0)
    .map((one): Salt => ({ matter: one.matter, dry: one.dry.toNumber("g") }));
  const iced =
    asMeasured || notBelow !== undefined
      ? undefined
      : coolingInIce(self, solutes, theory, { ...inRoom, hot, cold: filtered }, before?.crystallising.inIce);
  const roomy = { ...none, hot, cold: filtered, cooling: inRoom.cooling, notBelow };
  const icy = iced === undefined ? roomy : { ...roomy, cold: iced.cold, cooling: iced.cooling, inIce: true };
  if (isBlind) return icy;
  const otherOf = (one: Crystallising): string | undefined => otherSolid(setting, account, one);
  const inWater = (times: number): Crystallising => ({
    ...roomy,
    cooling: coolingOf(product.formula, theory, hot, filtered, times * inRoom.times),
  });
  const otherInIce = otherOf(icy);
  // what comes beside it in ice may stay dissolved in the room
  const other = otherInIce === undefined || icy === roomy ? otherInIce : otherOf(roomy);
  const asItIs = otherInIce === undefined ? icy : roomy;
  const base = other === undefined ? asItIs : inMoreAlone(inWater, otherOf);
  if (base === undefined) return { ...roomy, cooling: { missing: other! }, otherComes: true };
  const { cold: coldest, cooling } = base;
  const all = beside.reduce((sum, { dry }) => sum.plus(dry), exact("0 g"));
  const starts = startsOf(own, dry, base, {
    isMixed: all.compare(theory.times(planned("littleMore"))) > 0,
    isForPurity: isRecrystallised(setting.reactants, setting.products),
  });
  if (starts.length === 0) return base;
  // where none of them has a figure there is nothing to judge; otherwise the ions of all count
  const salts = solutes.some(({ matter }) => saturatedAt(matter, coldest) !== undefined) ? solutes : [];
  const way =
    before === undefined || before.crystallising.water === undefined
      ? cleanWay(starts, self, salts, hot, [...new Set([coldest, filtered])])
      : wayAgain(starts, before.crystallising, asMeasured ? room : before.crystallising.cold);
  const { water, cold, factor, intoCrystals } = way;
  const parted = salts.length === 0 ? undefined : partedOn(way, self, salts, hot);
  return {
    ...base,
    cold,
    inIce: base.inIce && cold === coldest,
    water: water as Quantity<"mass">,
    thinner: factor,
    intoCrystals,
    parted: parted === undefined ? undefined : inShares(parted),
    cooling:
      cold === coldest || "missing" in cooling ? cooling : coolingOf(product.formula, theory, hot, cold, inRoom.times),
  };
}

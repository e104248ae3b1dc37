// How far a liquor is boiled down and how cold it is made, so that the product comes out and what is beside it stays dissolved or
// goes on the hot filter.

import { type Quantity, quantity } from "../../quantity";
import { type Matter, massOfWater } from "../contents/matter";
import { exact, planned } from "../planning/exact";
import { balanceOf, type Salt, saturatedAt } from "./settling";

type Temperature = Quantity<"temperature">;

/** A way to the crystals. */
export interface Way {
  /** Water of the liquor that is cooled, what its crystals will bind included. */
  readonly water: Quantity;
  /** The same over the least that was thought of. */
  readonly factor: number;
  /** Where it is filtered. */
  readonly cold: Temperature;
  /** It is boiled down into its own crystals: nothing can be filtered off hot after that. */
  readonly intoCrystals: boolean;
  /** Water in which the product is clear before that, and filtered hot from what comes of the others; undefined where no figure tells. */
  readonly clear?: Quantity | undefined;
}

/** How a liquor parts, by the account of the batch. */
export interface Parted {
  /** Share of all the product that is in the crystals. */
  readonly share: number;
  /** Product in the crystals, by mass. */
  readonly purity: number;
}

/** What a way begins with: how little water there may be. */
export interface Start {
  readonly water: Quantity;
  readonly intoCrystals: boolean;
  readonly clear?: Quantity | undefined;
}

/** Where a liquor may be filtered if it is too cold in the room. */
const WARMER = ["25 °C", "30 °C", "35 °C", "40 °C", "45 °C", "50 °C", "55 °C", "60 °C"];
/** How much more water is tried at a time, and how often. */
const MORE = 1.06;
const TIMES = 36;
/** The same where there is only one salt. */
const FINER = 1.03;
/** What rounding leaves in a hot liquor that is just saturated, of the product. */
const ROUNDING = 0.005;

/** Temperatures above a cold one at which a liquor may be filtered, the coldest first. */
export const warmerThan = (cold: Temperature, hot: Temperature): Temperature[] =>
  WARMER.map((text) => exact(text) as Temperature).filter(
    (at) => at.compare(cold) > 0 && at.plus(planned("coolsBy")).compare(hot) <= 0,
  );

type Figure = NonNullable<ReturnType<typeof saturatedAt>>;

/** Share that stays dissolved where there is so much liquor for each gram of crystals; no less than is planned to stay. */
function staysDissolved({ perGram, binds }: Figure, liquor: number): Quantity {
  const little = planned("staysInLiquor");
  const crystals = (1 + binds) * liquor;
  const drained = crystals / (1 + 1 / perGram + crystals);
  return drained > little.toNumber("") ? quantity(drained.toPrecision(4)) : little;
}

/** Does no more than a part of what crystallises stand in the boiling liquor? Nobody knows where no figure is. */
function isStirred(product: Salt, water: number, hot: Temperature, cold: Temperature): boolean {
  const boil = planned("waterBoils") as Temperature;
  const at100 = saturatedAt(product.matter, boil) === undefined ? hot : boil;
  if (saturatedAt(product.matter, at100) === undefined) return true;
  const [standing, coming] = [at100, cold].map((at) => balanceOf([product], product.matter, water, at)?.dry[0]);
  if (standing === undefined || coming === undefined) return false;
  return standing <= planned("inTheBoil").toNumber("") * coming;
}

/** No less water than keeps a liquor stirred as it is boiled down into its crystals. */
export function waterToStir(
  product: Matter,
  dry: Quantity,
  least: Quantity,
  hot: Temperature,
  cold: Temperature,
): Quantity {
  const salt: Salt = { matter: product, dry: dry.toNumber("g") };
  const grams = least.toNumber("g");
  for (let k = 0, factor = 1; k < TIMES; k += 1, factor *= FINER)
    if (isStirred(salt, factor * grams, hot, cold))
      return factor === 1 ? least : least.times(quantity(factor.toPrecision(6))).to("g");
  return least;
}

/** Water of a cold liquor that keeps a share of a product. */
function waterKeeping(product: Matter, dry: Quantity, figure: Figure, share: Quantity): Quantity {
  const stays = dry.times(share);
  const crystals = dry.minus(stays).dividedBy(product.core.molarMass).to("mol");
  return stays
    .times(exact("100 g"))
    .dividedBy(figure.perHundredGramsWater)
    .plus(massOfWater(crystals.times(figure.solid.waters)))
    .to("g");
}

/** Water with which the cold liquor keeps its small share of a product and can be drained; undefined where no figure is known. */
export function waterToKeepLittle(product: Matter, dry: Quantity, cold: Temperature): Quantity | undefined {
  const figure = saturatedAt(product, cold);
  return figure && waterKeeping(product, dry, figure, staysDissolved(figure, planned("leastLiquor").toNumber("")));
}

/** No less than so much water, and than with which the crystals of a cold liquor can be stirred, and set to no block. */
export function stirredCold(product: Matter, dry: Quantity, cold: Temperature, least: Quantity): Quantity {
  const figure = saturatedAt(product, cold);
  if (figure === undefined) return least;
  const liquor = 1 / planned("stirred").toNumber("") - 1;
  const water = waterKeeping(product, dry, figure, staysDissolved(figure, liquor));
  return water.compare(least) > 0 ? water : least;
}

/** A liquor as it is cooled: what of the salts beside the product is dissolved, in how much water. */
interface Cooled {
  readonly besides: readonly Salt[];
  readonly water: number;
  /** Share of the liquor that has passed the hot filter. */
  readonly passes: number;
}

/** What so much hot water keeps of a liquor; undefined where it sets as a whole, or the hot filter would take product as well. */
function keptHot(
  product: Salt,
  besides: readonly Salt[],
  water: number,
  hot: Temperature,
  { intoCrystals, clear }: Pick<Start, "intoCrystals" | "clear">,
): Cooled | undefined {
  if (intoCrystals && clear !== undefined) {
    const filtered = keptHot(product, besides, clear.toNumber("g"), hot, { intoCrystals: false });
    const through = filtered && { ...product, dry: product.dry * filtered.passes };
    const boiled = through && keptHot(through, filtered.besides, water * filtered.passes, hot, { intoCrystals });
    return boiled && { ...boiled, passes: filtered.passes };
  }
  // Boiled into its crystals the product is there as a solid: of what the hot water keeps of it only the ions count for the others.
  const dissolved = (saturatedAt(product.matter, hot)?.perGram ?? Number.POSITIVE_INFINITY) * water;
  const own = intoCrystals ? { ...product, dry: Math.min(product.dry, dissolved), stays: true } : product;
  const hotOnes = balanceOf([own, ...besides], product.matter, water, hot);
  if (hotOnes === undefined) return undefined;
  const [standing, ...out] = hotOnes.dry as [number, ...number[]];
  if (standing > ROUNDING * product.dry) return undefined;
  if (!intoCrystals) {
    const left = besides.map((salt, i) => ({ ...salt, dry: salt.dry - out[i]! }));
    if (out.every((dry) => dry <= 0)) return { besides: left, water: hotOnes.water, passes: 1 };
    // what is to pass a filter is not saturated
    const fuller = { ...product, dry: product.dry * planned("pairFilter").toNumber("") };
    const strained = balanceOf([fuller, ...besides], product.matter, water, hot);
    if (strained === undefined || strained.dry[0]! > ROUNDING * product.dry) return undefined;
    const liquor = left.reduce((all, { dry }) => all + dry, hotOnes.water + product.dry);
    const salt = hotOnes.solids.slice(1).reduce((all, mass) => all + mass, 0);
    const passes = Math.max(0, 1 - (planned("saltOnFilter").toNumber("") * salt) / liquor);
    const through = left.map((one) => ({ ...one, dry: one.dry * passes }));
    return { besides: through, water: hotOnes.water * passes, passes };
  }
  // what comes then is among the crystals, and not certain to dissolve again
  const most = (1 - planned("cleanCrop").toNumber("")) * product.dry;
  return out.reduce((all, dry) => all + dry, 0) > most ? undefined : { besides, water, passes: 1 };
}

/** How it parts in the cold, where the water is trusted to keep a share of what it can of the others; undefined where it sets as a whole. */
function partedCold(whole: Salt, { besides, water, passes }: Cooled, cold: Temperature, keeps = 1): Parted | undefined {
  const rest = keeps === 1 ? besides : besides.map((salt) => ({ ...salt, keeps }));
  const product = passes === 1 ? whole : { ...whole, dry: whole.dry * passes };
  const done = balanceOf([product, ...rest], product.matter, water, cold);
  if (done === undefined) return undefined;
  const [own, ...along] = done.solids as [number, ...number[]];
  if (own <= 0) return { share: 0, purity: 1 };
  const all = along.reduce((sum, mass) => sum + mass, own);
  return { share: done.dry[0]! / whole.dry, purity: own / all };
}

/** The best way of a search so far. */
interface Found {
  readonly start: Start;
  readonly factor: number;
  readonly at: Temperature;
  readonly worth: number;
}

/** The water of a start by a factor. */
const diluted = ({ water }: Start, factor: number): Quantity =>
  factor === 1 ? water : water.times(quantity(factor.toPrecision(6))).to("g");

/** One way as it is, with how it parts. */
export function partedOn(way: Way, product: Salt, besides: readonly Salt[], hot: Temperature): Parted | undefined {
  const kept = keptHot(product, besides, way.water.toNumber("g"), hot, way);
  return kept && partedCold(product, kept, way.cold);
}

/**
 * The way on which most of the product comes out clean, filtered at one of the temperatures that there are, the coldest first, or
 * warmer. The first start is taken as it is where that is clean; where no way is, it stays what comes with it that is to be said.
 */
export function cleanWay(
  starts: readonly Start[],
  product: Salt,
  besides: readonly Salt[],
  hot: Temperature,
  colds: readonly Temperature[],
): Way {
  const [cold] = colds as [Temperature, ...Temperature[]];
  const [first] = starts as [Start, ...Start[]];
  const asItIs: Way = { ...first, factor: 1, cold };
  const pure = planned("cleanCrop").toNumber("");
  const least = planned("leastCrop").toNumber("");
  const warmer = planned("warmFilter").toNumber("");
  const boiledOn = planned("boiledOn").toNumber("");
  if (besides.length === 0) return asItIs;
  const kept = keptHot(product, besides, first.water.toNumber("g"), hot, first);
  const asParted = (keeps: number): Parted | undefined => {
    const parted = kept && partedCold(product, kept, cold, keeps);
    return parted !== undefined && parted.purity >= pure ? parted : undefined;
  };
  // jugs and rooms are not exact: nothing beside the product is planned to the last gram of what the water keeps
  const roomy = planned("roomInLiquor").toNumber("");
  if (asParted(roomy) !== undefined) return asItIs;
  const solid = saturatedAt(product.matter, cold)?.solid.key;
  const filters = [...colds, ...warmerThan(colds.at(-1)!, hot)].filter(
    (at) => saturatedAt(product.matter, at)?.solid.key === solid,
  );
  const clean = asParted(1);
  let [plain, spacious]: [Found?, Found?] = [];
  for (const start of starts) {
    const grams = start.water.toNumber("g");
    const liquors: { readonly factor: number; readonly kept: Cooled }[] = [];
    for (let k = 0, factor = 1; k < TIMES; k += 1, factor *= MORE) {
      const kept = keptHot(product, besides, factor * grams, hot, start);
      if (kept !== undefined) liquors.push({ factor, kept });
    }
    for (const at of filters) {
      const better = (found: Parted | undefined, best: Found | undefined, factor: number): Found | undefined => {
        if (found === undefined || found.purity < pure || found.share < least) return best;
        // boiled on after the filter it must be worth that
        const gain = found.share - (start.intoCrystals && start.clear !== undefined ? boiledOn : 0);
        const worth = gain * (colds.includes(at) ? 1 : warmer);
        return worth > (best?.worth ?? 0) ? { start, factor, at, worth } : best;
      };
      for (const { factor, kept } of liquors) {
        const found = partedCold(product, kept, at);
        // what is not clean with all the room in the liquor is not with less
        if (found === undefined || found.purity < pure) continue;
        plain = better(found, plain, factor);
        spacious = better(partedCold(product, kept, at, roomy), spacious, factor);
      }
    }
  }
  // but not where that room costs more of the crop than it is wide
  const usual = clean?.share ?? plain?.worth ?? 0;
  const isAllowed = spacious !== undefined && spacious.worth >= roomy * usual;
  const best = isAllowed ? spacious : clean === undefined ? plain : undefined;
  if (best === undefined) return asItIs;
  const { start, factor, at } = best;
  return { ...start, water: diluted(start, factor), factor, cold: at };
}

// Getting the product out: does it precipitate or stay in solution, and what washing lowers the salts in the cake.

import type { Formula } from "../../formula";
import { attempt } from "../../foundation/error";
import { type Quantity, quantity, sum } from "../../quantity";
import {
  type KindOfSolid,
  lossToLiquor,
  retainedLiquor,
  type Solubility,
  type WashPlan,
  washPlan,
  waterToDissolve,
} from "../../solubility";
import { madeOf } from "../../substance/internal";
import { type Entry, massOf } from "../contents/entry";
import { SOAPS } from "../data/gels";
import { PLANNING } from "../data/planning";
import { asMassOfWater, exact, planned } from "../planning/exact";
import { dissolvesLess, fateOf, keptByWater } from "../reaction/fate";
import { gelRow } from "../reaction/gel";
import { keptInSolution } from "../reaction/only-in-solution";
import type { Species } from "../reaction/species";
import type { Setting } from "../request/setting";
import { isRecrystallised } from "./kind";

/** How the product comes out of the batch. */
export type Isolation =
  | { readonly how: "precipitate"; readonly why: string }
  /** It stays in its liquor, as asked for. */
  | {
      readonly how: "liquor";
      readonly why: string;
      /** Nobody asked for a liquor: a solid of it is not to be had here. */
      readonly inPlaceOfSolid?: true;
    }
  /** What heating a solid leaves. */
  | { readonly how: "residue"; readonly why: string }
  | {
      readonly how: "crystallise";
      /** Grams of the anhydrous product in 100 g of water at the temperature of the room. */
      readonly perHundredGramsWater: Quantity<"mass">;
      /** Water that just holds all of the product there; below it, crystals. */
      readonly waterToSaturate: Quantity<"mass">;
      /** Product that each 100 g of water left in the liquor keeps. */
      readonly retainedPer100g: Quantity<"mass">;
      /** What the table says of the product, with its source. */
      readonly solubility: Solubility | undefined;
      readonly why: string;
    }
  | { readonly how: "unknown"; readonly missing: string };

/** A species that stays in the liquor, with its amount. */
export interface Dissolved {
  readonly species: Species;
  readonly amount: Quantity;
}

/** The wash schedule, or what is missing for one. */
export type WashSchedule =
  | {
      readonly plan: WashPlan;
      readonly salts: readonly string[];
      readonly saltMass: Quantity<"mass">;
      readonly retained: Quantity<"volume">;
      /** Salts left in the dry product: of a sludge less than its last wash leaves, for the filter lets some of that liquor go. */
      readonly leaves: Quantity<"mass">;
      /** The share of its salts that stays in the dry product: a sludge is drained on a filter after its washes, a cake is one. */
      readonly drains: Quantity<"number">;
      /** Washes beside those of the plan until the tests of the last one no longer show, and their water; undefined for none, or where no test tells. */
      readonly untilTest?: { readonly washes: number; readonly water: Quantity<"volume"> };
    }
  | { readonly missing: string };

export function isolationOf(setting: Setting, theory: Quantity): Isolation {
  const { product, temperature, wet, request, keepsLiquor } = setting;
  const { name, formula } = product;
  if (!wet) return { how: "residue", why: `${name} is what heating leaves` };
  const { precipitated, perHundredGramsWater, why } = fateOf(formula, temperature);
  if (keepsLiquor && precipitated !== true) {
    const only = keptInSolution(formula);
    if (request.isolate === false) return { how: "liquor", why: `${why}: it is kept in its liquor, as asked for` };
    return {
      how: "liquor",
      why:
        only === undefined
          ? `${name} is a liquid, or a gas that stays in water: it is kept in its solution, and nothing is distilled`
          : `${name} is kept in its solution: ${only.why}`,
      ...(only === undefined ? {} : { inPlaceOfSolid: true }),
    };
  }
  if (precipitated === true && !isPurifiedHot(setting)) return { how: "precipitate", why };
  if (perHundredGramsWater === undefined) return { how: "unknown", missing: `solubility of ${name}` };
  const water = attempt(() => waterToDissolve({ formula, mass: theory, temperature }));
  const kept = attempt(() => lossToLiquor({ formula, water: "100 g", temperature }));
  if (!water.ok || !kept.ok) return { how: "unknown", missing: `water that dissolves ${name}` };
  return {
    how: "crystallise",
    perHundredGramsWater,
    waterToSaturate: water.value.water,
    retainedPer100g: kept.value.mass,
    solubility: water.value.solubility,
    why: `${why}: boil the liquor down and let it crystallise`,
  };
}

/** A sparing salt that is to be purified, and of which hot water dissolves several times what cold does: it crystallises. */
export function isPurifiedHot({ product: { formula }, reactants, products, temperature }: Setting): boolean {
  if (!isRecrystallised(reactants, products)) return false;
  const [hot, times] = [planned("hot") as Quantity<"temperature">, planned("sparingHot")];
  return dissolvesLess(formula, temperature, hot, exact("1").dividedBy(times));
}

/** How much liquor a cake of this product is likely to keep. */
export function kindOfCake(formula: Formula): KindOfSolid {
  const { groups, complex, ammonia } = madeOf(formula);
  const isCarbonate = groups.has("carbonate") || groups.has("hydrogencarbonate");
  const isHydroxide = groups.has("hydroxide");
  if (isCarbonate) return isHydroxide ? "basic carbonate" : "dense precipitate";
  // Salts of ammines come as crystals; what two metals make with cyanide is slimy.
  if (isHydroxide || (complex && !ammonia) || gelRow(formula) !== undefined) return "hydroxide gel";
  if (formula.symbols.length === 1) return "dense precipitate";
  // soaps come in flakes that keep as much
  if (SOAPS.groups.some((name) => groups.has(name))) return "basic carbonate";
  return ["sulfate", "oxalate", "phosphate", "sulfide", "chromate", "oxide"].some((name) => groups.has(name))
    ? "dense precipitate"
    : "fine crystals";
}

/** Does a precipitate hold its liquor as a jelly does? */
export const isGel = (formula: Formula): boolean => kindOfCake(formula) === "hydroxide gel";

/** Slimes are washed by decantation, before a filter is clogged by them. */
export const settles = ({ request, product }: Pick<Setting, "request" | "product">): boolean =>
  request.washing?.method === undefined ? isGel(product.formula) : request.washing.method === "decantation";

/** Liquor that a gram of a solid keeps, settled or on the filter: of the product, or of what precipitates with it. */
export function liquorHeldBy(
  setting: Pick<Setting, "request" | "product">,
  on?: "suction" | "settled",
  solid: Formula = setting.product.formula,
): Quantity {
  const stated = setting.request.washing?.retainedLiquorPerGram;
  if (stated !== undefined)
    return quantity(stated as Quantity, { symbol: "v(ret)", label: "liquor held per gram of dry solid, as stated" });
  return retainedLiquor(kindOfCake(solid), on ?? (settles(setting) ? "settled" : "suction"));
}

/** A volume in steps that a jug shows. */
function inJugs(millilitres: number, rounded: (steps: number) => number): Quantity<"volume"> {
  const step = millilitres < 100 ? 10 : millilitres < 1000 ? 50 : millilitres < 5000 ? 100 : 500;
  return quantity({ value: Math.max(1, rounded(millilitres / step)) * step, unit: "mL" });
}

/** Volume of one wash on the filter: some times what the cake retains. */
const washOnFilter = (retained: Quantity): Quantity =>
  inJugs(retained.toNumber("mL") * Number(PLANNING.washesOf.value), Math.round);

/**
 * Volume of one wash by decantation: n of them dilute what the sludge holds by ((held + wash) / held)^n. The fewest that go into the
 * vessel of the batch, which has room to stir beside its liquor; else as many as are still waited for, each as small as does.
 *
 * @param dilution - how many times the salts are to be less
 */
function washByDecantation(held: Quantity, liquid: Quantity, dilution: number): Quantity {
  const keeps = Math.min(held.toNumber("mL"), liquid.toNumber("mL"));
  const room =
    (liquid.toNumber("mL") * planned("foamWithoutGas").toNumber("")) / planned("washRoom").toNumber("") - keeps;
  const most = Math.min(room, keeps * planned("decantationsOf").toNumber(""));
  const ofSo = (times: number): Quantity => inJugs(keeps * (Math.max(dilution, 1) ** (1 / times) - 1), Math.ceil);
  const last = planned("mostDecantations").toNumber("");
  for (let times = 1; times < last; times += 1) if (ofSo(times).toNumber("mL") <= most) return ofSo(times);
  return ofSo(last);
}

/**
 * How often a cake is washed, and with how much.
 *
 * @param perGram - liquor that it keeps, or as sludge what has settled does
 * @param drained - of the liquor of a sludge the share that stays on the filter after the washes; undefined for a cake
 */
export function washingOf(
  setting: Setting,
  salts: readonly Entry[],
  liquid: Quantity,
  theory: Quantity,
  perGram: Quantity,
  drained: Quantity | undefined,
): WashSchedule | undefined {
  const { product, temperature } = setting;
  const { washVolume, residue = planned("residue") } = setting.request.washing ?? {};
  if (salts.length === 0) return undefined;
  const saltMass = sum(
    salts.map((salt) => massOf(salt).named({ symbol: `m(${salt.matter.name})`, rule: "mass = amount × molar mass" })),
    { symbol: "m(salts)", label: "salts in the liquor", rule: "by-products and excess that stay in the liquor" },
  );
  const retained = theory.times(perGram).to("mL");
  const drains = drained ?? exact("1");
  const allowed = quantity(residue as Quantity).dividedBy(drains);
  const held = retained.compare(liquid) > 0 ? liquid : retained;
  const dilution = (): number => {
    const most = allowed.dimension === "mass" ? allowed : allowed.times(theory);
    return saltMass.times(held).dividedBy(liquid).dividedBy(most).toNumber("");
  };
  const ownVolume = (): Quantity =>
    drained === undefined ? washOnFilter(retained) : washByDecantation(retained, liquid, dilution());
  const outcome = attempt(() =>
    washPlan({
      dryCakeMass: theory,
      retainedLiquorPerGram: perGram as Quantity<"specific volume">,
      saltMassInLiquor: saltMass,
      liquorVolume: liquid as Quantity<"volume">,
      washVolume: (washVolume === undefined ? ownVolume() : quantity(washVolume as Quantity)) as Quantity<"volume">,
      targetResidue: allowed,
    }),
  );
  if (!outcome.ok) return { missing: outcome.error.message.split("\n")[0]! };
  const kept = keptByWater(product.formula, asMassOfWater(outcome.value.totalWater), temperature);
  const productLost = kept !== undefined && kept.compare(theory) > 0 ? theory : kept;
  const left = outcome.value.residueAfter.at(-1) ?? outcome.value.residueUnwashed;
  return {
    drains: drains.to("") as Quantity<"number">,
    leaves: left
      .times(drains)
      .to("g")
      .named({ symbol: "m(salts, dry)", label: "salts left in the dry product" }) as Quantity<"mass">,
    plan: { ...outcome.value, productLost: productLost as Quantity<"mass"> | undefined },
    salts: salts.map(({ matter }) => matter.name),
    saltMass,
    retained: outcome.value.retainedVolume,
  };
}

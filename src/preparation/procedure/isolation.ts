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

/** Volume of one wash: some times what the cake retains, in steps a jug shows. */
function handyWash(retained: Quantity, decants: boolean): Quantity {
  const of = decants ? PLANNING.decantationsOf : PLANNING.washesOf;
  const millilitres = retained.toNumber("mL") * Number(of.value);
  const step = millilitres < 100 ? 10 : millilitres < 500 ? 50 : millilitres < 5000 ? 100 : 500;
  return quantity({ value: Math.max(1, Math.round(millilitres / step)) * step, unit: "mL" });
}

export function washingOf(
  setting: Setting,
  salts: readonly Entry[],
  liquid: Quantity,
  theory: Quantity,
  perGram: Quantity,
): WashSchedule | undefined {
  const { product, temperature } = setting;
  const { washVolume, residue = planned("residue") } = setting.request.washing ?? {};
  if (salts.length === 0) return undefined;
  const saltMass = sum(
    salts.map((salt) => massOf(salt).named({ symbol: `m(${salt.matter.name})`, rule: "mass = amount × molar mass" })),
    { symbol: "m(salts)", label: "salts in the liquor", rule: "by-products and excess that stay in the liquor" },
  );
  const retained = theory.times(perGram).to("mL");
  const outcome = attempt(() =>
    washPlan({
      dryCakeMass: theory,
      retainedLiquorPerGram: perGram as Quantity<"specific volume">,
      saltMassInLiquor: saltMass,
      liquorVolume: liquid as Quantity<"volume">,
      washVolume: washVolume === undefined ? handyWash(retained, settles(setting)) : quantity(washVolume as Quantity),
      targetResidue: residue,
    }),
  );
  if (!outcome.ok) return { missing: outcome.error.message.split("\n")[0]! };
  const kept = keptByWater(product.formula, asMassOfWater(outcome.value.totalWater), temperature);
  const productLost = kept !== undefined && kept.compare(theory) > 0 ? theory : kept;
  return {
    plan: { ...outcome.value, productLost: productLost as Quantity<"mass"> | undefined },
    salts: salts.map(({ matter }) => matter.name),
    saltMass,
    retained: outcome.value.retainedVolume,
  };
}

// Getting the product out: does it fall out or stay in solution, and what washing brings the salts in the cake down.
import type { Formula } from "../formula";
import { type Quantity, quantity, sum } from "../quantity";
import {
  type KindOfSolid,
  retainedLiquor,
  type Solubility,
  tryResidual,
  tryWashPlan,
  tryWaterToDissolve,
  type WashPlan,
} from "../solubility";
import { PLANNING } from "./data/planning";
import { asMassOfWater, planned } from "./exact";
import { fateOf, keptByWater } from "./fate";
import { madeOf } from "./made-of";
import type { Setting } from "./setting";
import type { Species } from "./species";

/** How the product comes out of the batch. */
export type Isolation =
  | { readonly how: "precipitate"; readonly why: string }
  /** What heating a solid leaves. */
  | { readonly how: "residue"; readonly why: string }
  | {
      readonly how: "crystallise";
      /** Grams of the anhydrous product in 100 g of water at the temperature of the room. */
      readonly perHundredGramsWater: Quantity;
      /** Water that just holds all of the product there; below it, crystals. */
      readonly waterToSaturate: Quantity;
      /** Product that each 100 g of water left in the liquor keeps. */
      readonly keptByHundredGrams: Quantity;
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
      readonly saltMass: Quantity;
      readonly retained: Quantity;
    }
  | { readonly missing: string };

export function isolationOf({ product, temperature, wet }: Setting, theory: Quantity): Isolation {
  const { name, formula } = product;
  if (!wet) return { how: "residue", why: `${name} is what heating leaves` };
  const { fallsOut, perHundredGramsWater, why } = fateOf(formula, temperature);
  if (fallsOut === true) return { how: "precipitate", why };
  if (perHundredGramsWater === undefined) return { how: "unknown", missing: `solubility of ${name}` };
  const water = tryWaterToDissolve({ formula, mass: theory, temperature });
  const kept = tryResidual({ formula, water: "100 g", temperature });
  if (!water.ok || !kept.ok) return { how: "unknown", missing: `water that holds ${name}` };
  return {
    how: "crystallise",
    perHundredGramsWater,
    waterToSaturate: water.value.water,
    keptByHundredGrams: kept.value.mass,
    solubility: water.value.solubility,
    why: `${why}: boil the liquor down and let it crystallise`,
  };
}

/** How much liquor a cake of this product is likely to hold. */
export function kindOfCake(formula: Formula): KindOfSolid {
  const { groups } = madeOf(formula);
  const hydroxide = groups.has("hydroxide");
  if (groups.has("carbonate")) return hydroxide ? "basic carbonate" : "dense precipitate";
  if (hydroxide) return "hydroxide gel";
  return ["sulfate", "oxalate", "phosphate"].some((name) => groups.has(name)) ? "dense precipitate" : "fine crystals";
}

/** Volume of one wash: some times what the cake holds, in steps a jug shows. */
function handyWash(retained: Quantity): Quantity {
  const millilitres = retained.in("mL").toNumber() * Number(PLANNING.washesOf.value);
  const step = millilitres < 500 ? 50 : millilitres < 5000 ? 100 : 500;
  return quantity({ value: Math.max(1, Math.round(millilitres / step)) * step, unit: "mL" });
}

export function washingOf(
  setting: Setting,
  dissolved: readonly Dissolved[],
  liquid: Quantity,
  theory: Quantity,
): WashSchedule | undefined {
  const { product, temperature } = setting;
  const { retainedLiquorPerGram, washVolume, residue = planned("residue") } = setting.request.washing ?? {};
  const salts = dissolved.filter(({ amount }) => amount.isPositive());
  if (salts.length === 0) return undefined;
  const saltMass = sum(
    salts.map(({ species, amount }) =>
      amount
        .times(species.molarMass)
        .to("g")
        .named({ symbol: `m(${species.name})`, rule: "mass = amount × molar mass" }),
    ),
    { symbol: "m(salts)", label: "salts in the liquor", rule: "by-products and excess that stay in the liquor" },
  );
  const perGram =
    retainedLiquorPerGram === undefined
      ? retainedLiquor(kindOfCake(product.formula))
      : quantity(retainedLiquorPerGram as Quantity, {
          symbol: "v(ret)",
          label: "liquor held per gram of dry solid, as stated",
        });
  const retained = theory.times(perGram).to("mL");
  const outcome = tryWashPlan({
    dryCakeMass: theory,
    retainedLiquorPerGram: perGram,
    saltMassInLiquor: saltMass,
    liquorVolume: liquid,
    washVolume: washVolume === undefined ? handyWash(retained) : quantity(washVolume as Quantity),
    targetResidue: residue,
  });
  if (!outcome.ok) return { missing: outcome.error.message.split("\n")[0]! };
  const kept = keptByWater(product.formula, asMassOfWater(outcome.value.totalWater), temperature);
  const productLost = kept !== undefined && kept.compare(theory) > 0 ? theory : kept;
  return {
    plan: { ...outcome.value, productLost },
    salts: salts.map(({ species }) => species.name),
    saltMass,
    retained,
  };
}

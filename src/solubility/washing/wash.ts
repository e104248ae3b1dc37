// Washing a precipitate: how many washes of what volume bring the salt it holds down to a target, and what that costs.
// Decantation dilutes what is retained; displacement on the filter pushes it out. What is retained is an assumption that
// the caller sees and may override: measure it as (wet mass − dry mass) / density of the liquor.

import { type DensityLike, densityOfWater, type MassLike, type TemperatureLike, type VolumeLike } from "../../amount";
import type { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { type Measured, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard, needChoice } from "../argument";
import { figureOrProduct, hundredGrams, positiveMass } from "../curves/figure";
import { massAsNamed, soluteOf } from "../curves/solute";
import { cite } from "../data/sources";
import { SolubilityError } from "../error";
import { type KindOfSolid, retainedLiquor } from "./retained";

const WASHED = { formula: true, temperature: true } as const satisfies Fields<NonNullable<WashRequest["product"]>>;

const WASH = {
  dryCakeMass: true,
  retainedLiquorPerGram: true,
  kindOfSolid: true,
  filter: true,
  saltConcentration: true,
  saltMassInLiquor: true,
  liquorVolume: true,
  washVolume: true,
  targetResidue: true,
  method: true,
  product: WASHED,
  facts: true,
} as const satisfies Fields<WashRequest>;

/** What `washPlan` needs to know. */
export interface WashRequest extends LookupOptions {
  /** Mass the cake will have when dry, > 0. */
  readonly dryCakeMass: MassLike;
  /** Liquor held per gram of dry cake; or name the `kindOfSolid` to use the planning value. */
  readonly retainedLiquorPerGram?: QuantityLike<"specific volume">;
  /** What the cake is like, for the liquor it retains. */
  readonly kindOfSolid?: KindOfSolid;
  /** How the cake is drained, for the liquor it retains. */
  readonly filter?: "suction" | "gravity";
  /** Salt to be washed out, per volume of liquor; or give `saltMassInLiquor` with `liquorVolume`. */
  readonly saltConcentration?: DensityLike;
  /** Salt to be washed out, in all the liquor. */
  readonly saltMassInLiquor?: MassLike;
  /** Volume of the liquor that this salt is in; the cake retains no more than that. */
  readonly liquorVolume?: VolumeLike;
  /** Volume of one wash, > 0. */
  readonly washVolume: VolumeLike;
  /** Salt that may stay: a share of the dry cake such as `"0.1 %"`, or a mass. */
  readonly targetResidue: QuantityLike;
  /** Stirred up and decanted (default), or poured through on the filter. */
  readonly method?: "decantation" | "displacement";
  /** The product and the temperature of the wash, to tell what each wash dissolves of it. */
  readonly product?: {
    readonly formula: string | Formula;
    readonly temperature: TemperatureLike;
  };
}

/** A wash schedule. */
export interface WashPlan {
  /** Washes needed; 0 when the target is met unwashed. */
  readonly washes: number;
  /** Volume of one wash. */
  readonly washVolume: Quantity<"volume">;
  /** All wash water, which becomes waste. */
  readonly totalWater: Quantity<"volume">;
  /** Liquor that stays in the cake each time. */
  readonly retainedVolume: Quantity<"volume">;
  /** Salt the cake would hold dried unwashed. */
  readonly residueUnwashed: Quantity<"mass">;
  /** Salt left after each wash, in order; `residueAfter.at(-1)` meets the target. */
  readonly residueAfter: readonly Quantity<"mass">[];
  /** Salt allowed to stay, as a mass. */
  readonly target: Quantity<"mass">;
  /** Share of the salt that one wash leaves. */
  readonly leftByOneWash: Quantity<"number">;
  /** Most product that all washes together can dissolve, never more than the cake; undefined if not asked or not known. */
  readonly productLost: Quantity<"mass"> | undefined;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** More washes than this is no plan. */
const MOST_WASHES = 40;
/** Liquor that a displacement wash of one retained volume leaves, lowest and highest (common practice). */
const DISPLACEMENT_LEFT = { value: "0.075", unit: "", halfWidth: "0.025", distribution: "rectangular" } as const;

function retainedVolumeOf(request: WashRequest, dryCake: Quantity): Quantity {
  const { retainedLiquorPerGram, kindOfSolid, filter } = request;
  if (retainedLiquorPerGram !== undefined && kindOfSolid !== undefined) {
    throw new SolubilityError("solubility.conflicting-options", "retainedLiquorPerGram and kindOfSolid both given");
  }
  if (retainedLiquorPerGram === undefined && kindOfSolid === undefined) {
    throw new SolubilityError("solubility.missing-option", "how much liquor does the cake retain?", {
      hint: "give retainedLiquorPerGram, or kindOfSolid for a planning value",
    });
  }
  const perGram =
    kindOfSolid === undefined
      ? guard.positive(
          expectDimension(retainedLiquorPerGram!, "specific volume", "retainedLiquorPerGram"),
          "retainedLiquorPerGram",
        )
      : retainedLiquor(kindOfSolid, filter);
  const named =
    perGram.symbol === undefined
      ? perGram.named({ symbol: "v(ret)", label: "liquor retained per gram of dry solid" })
      : perGram;
  const naming = { symbol: "V(ret)", label: "liquor retained by the cake" };
  const asMuchAsItHolds = dryCake
    .times(named)
    .to("mL")
    .named({ ...naming, rule: "retained volume = dry mass × liquor per gram" });
  if (request.liquorVolume === undefined) return asMuchAsItHolds;
  const all = guard.positive(expectDimension(request.liquorVolume, "volume", "liquorVolume"), "liquorVolume");
  return asMuchAsItHolds.compare(all) <= 0
    ? asMuchAsItHolds
    : all.to("mL").named({ ...naming, rule: "retained volume = all the liquor, which the cake could hold" });
}

function concentrationOf(request: WashRequest): Quantity {
  const { saltConcentration, saltMassInLiquor, liquorVolume } = request;
  const byMass = saltMassInLiquor !== undefined || liquorVolume !== undefined;
  if (saltConcentration !== undefined && byMass) {
    throw new SolubilityError(
      "solubility.conflicting-options",
      "saltConcentration given, and the salt by mass as well",
    );
  }
  if (saltConcentration !== undefined) {
    const given = guard.positive(
      expectDimension(saltConcentration, "density", "saltConcentration"),
      "saltConcentration",
    );
    return given.symbol === undefined ? given.named({ symbol: "c(salt)", label: "salt per volume of liquor" }) : given;
  }
  if (saltMassInLiquor === undefined || liquorVolume === undefined) {
    throw new SolubilityError("solubility.missing-option", "how much salt is in the liquor?", {
      hint: "give saltConcentration, or saltMassInLiquor with liquorVolume",
    });
  }
  const mass = positiveMass(saltMassInLiquor, "saltMassInLiquor", "m(salt)", "salt in the liquor");
  const volume = guard.positive(expectDimension(liquorVolume, "volume", "liquorVolume"), "liquorVolume");
  const named =
    volume.symbol === undefined ? volume.named({ symbol: "V(liquor)", label: "volume of the liquor" }) : volume;
  return mass
    .dividedBy(named)
    .to("g/L")
    .named({ symbol: "c(salt)", label: "salt per volume of liquor", rule: "salt concentration = mass / volume" });
}

function targetOf(given: QuantityLike, dryCake: Quantity): Quantity {
  const target = guard.positive(quantity(given as string | Quantity | Measured), "targetResidue");
  if (target.dimension === "mass") return target.named({ symbol: "m(target)", label: "salt allowed to stay" });
  const share = expectDimension(target, "mass fraction", "targetResidue");
  if (share.compare("1") >= 0) {
    throw new SolubilityError("solubility.out-of-reach", `a target of ${share} of the cake is not a residue`);
  }
  return dryCake
    .times(share.named({ symbol: "w(target)", label: "share of salt allowed" }))
    .named({ symbol: "m(target)", label: "salt allowed to stay", rule: "dry mass × allowed share" });
}

/** Share of the salt that one wash leaves in the cake. */
function leftByWash(method: WashRequest["method"], retained: Quantity, wash: Quantity): Quantity {
  if (method !== "displacement") {
    return retained
      .dividedBy(retained.plus(wash))
      .named({ symbol: "f", label: "share left by one wash", rule: "f = retained / (retained + wash), stirred up" });
  }
  if (wash.compare(retained) < 0) {
    throw new SolubilityError(
      "solubility.out-of-reach",
      `a displacement wash must at least fill the cake (${retained})`,
      {
        hint: "use a larger wash volume, or decantation",
      },
    );
  }
  return quantity(DISPLACEMENT_LEFT, {
    symbol: "f",
    label: "share left by one displacement wash",
    source: cite("commonPractice"),
    assumption: "a wash poured through an uncracked cake leaves 5 to 10 % of the salt",
  });
}

/** Most product the wash water can take: its own solubility times the water, or the whole cake. */
function productLost(
  request: WashRequest,
  total: Quantity,
  cake: Quantity,
): { lost: Quantity | undefined; warnings: string[] } {
  if (request.product === undefined || total.isZero()) return { lost: undefined, warnings: [] };
  const solute = soluteOf(request.product.formula);
  const { formula, temperature } = request.product;
  const known = attempt(() => figureOrProduct(formula, temperature, undefined));
  if (!known.ok) {
    return { lost: undefined, warnings: [`product lost to washing unknown: ${known.error.problem}`] };
  }
  const water = total.times(densityOfWater(temperature)).to("g");
  const dry = known.value.perHundredGramsWater
    .times(water)
    .dividedBy(hundredGrams())
    .named({ label: "anhydrous product in the wash water", rule: "solubility × wash water / 100 g" });
  const lost = massAsNamed(solute, dry, {
    symbol: `m(${solute.formula}, lost)`,
    label: `most ${solute.formula} that the wash water can dissolve`,
  });
  const warnings = known.value.warnings.map((warning) => `${solute.formula}: ${warning}`);
  if (lost.compare(cake) < 0) return { lost, warnings };
  warnings.push(
    `the wash water can dissolve ${lost.format({ significant: 3 })} of ${solute.formula}, the whole cake: wash with less, colder, or with another liquid`,
  );
  return { lost: cake, warnings };
}

/**
 * Washes that bring the salt held by a cake down to a target.
 *
 * @param request - dry mass of the cake, liquor it holds (mL per gram, or a kind of solid), salt in that liquor, volume
 *   of one wash, target as a share of the dry cake or a mass; `method` and `product` as wanted
 * @returns number of washes, residue after each, total water, and the most product they can dissolve
 * @throws {SolubilityError} `solubility.bad-option`, `solubility.missing-option`, `solubility.conflicting-options`,
 *   `solubility.not-positive`,
 *   `solubility.out-of-reach` (target not reached in 40 washes, displacement with less than the cake holds)
 * @source dilution of the retained liquor: residue = c V(ret) (V(ret) / (V(ret) + V))^n
 * @category Washing
 * @example
 * washPlan({ dryCakeMass: "25 g", retainedLiquorPerGram: "2 mL/g", saltConcentration: "117 g/L", washVolume: "250 mL", targetResidue: "0.2 %" }).washes // => 3
 */
export function washPlan(request: WashRequest): WashPlan {
  if (bringsFacts(request)) return withItsFacts(request, guard, washPlan);
  guard.fields(request, WASH, "request");
  needChoice(request.method, "method", ["decantation", "displacement"]);
  const dryCake = positiveMass(request.dryCakeMass, "dryCakeMass", "m(cake)", "dry mass of the cake");
  const retained = retainedVolumeOf(request, dryCake);
  const wash = guard.positive(expectDimension(request.washVolume, "volume", "washVolume"), "washVolume").named({
    symbol: "V(wash)",
    label: "volume of one wash",
  });
  const target = targetOf(request.targetResidue, dryCake);
  const residueUnwashed = concentrationOf(request)
    .times(retained)
    .to("g")
    .named({ symbol: "m0", label: "salt in the cake, dried unwashed", rule: "salt concentration × retained volume" });
  const left = leftByWash(request.method, retained, wash);
  const residueAfter: Quantity[] = [];
  let residue = residueUnwashed;
  while (residue.compare(target) > 0) {
    if (residueAfter.length >= MOST_WASHES) {
      throw new SolubilityError("solubility.out-of-reach", `the target is not met in ${MOST_WASHES} washes`, {
        hint: "wash with a larger volume, or accept more residue",
        details: { residue: String(residue), target: String(target) },
      });
    }
    const n = residueAfter.length + 1;
    residue = residue
      .times(left)
      .named({ symbol: `m${n}`, label: `salt left after wash ${n}`, rule: "salt left × share left by one wash" });
    residueAfter.push(residue);
  }
  const washes = residueAfter.length;
  const totalWater = wash
    .times(BigInt(washes))
    .named({ symbol: "V(total)", label: "wash water in all", rule: "washes × wash volume" });
  const { lost, warnings } = productLost(request, totalWater, dryCake);
  return readable({
    washes,
    washVolume: wash,
    totalWater,
    retainedVolume: retained,
    residueUnwashed,
    residueAfter,
    target,
    leftByOneWash: left,
    productLost: lost,
    warnings,
  });
}

// After mixing: does what should stay in the liquor stay dissolved? And what the liquor keeps of what should fall out.
// Each salt is held against its own solubility in all the water there is; a common ion is allowed for by the ion product.

import type { AmountLike, MassLike, TemperatureLike } from "../amount";
import { type Formula, molarMass } from "../formula";
import { attempt, type Result } from "../foundation/error";
import { expectDimension, type Quantity, sum } from "../quantity";
import { needRecord, needRecords } from "./argument";
import { SolubilityError } from "./error";
import { hundredGrams, positive, positiveMass, type SolubilityFigure } from "./figure";
import { ruleFor, type SolubilityRule } from "./rules";
import { type Solubility, trySolubilityOf } from "./solubility";
import { anhydrousMass, soluteOf } from "./solute";

/** A substance that should stay dissolved. Give the mass (of the form named) or the amount. */
export interface DissolvedSubstance {
  readonly formula: string | Formula;
  readonly mass?: MassLike;
  readonly amount?: AmountLike;
  /** Your own solubility, g anhydrous per 100 g water. */
  readonly solubility?: SolubilityFigure;
}

/** Verdict on one dissolved substance. */
export interface DissolvedVerdict {
  readonly formula: string;
  /** Anhydrous mass in the liquor. */
  readonly anhydrousMass: Quantity<"mass">;
  /** "yes" below `margin` of its capacity, "barely" between there and the capacity, "no" above, "unknown" without data. */
  readonly stays: "yes" | "barely" | "no" | "unknown";
  /** Anhydrous mass that the water can hold; undefined when unknown. */
  readonly capacity: Quantity<"mass"> | undefined;
  /** Anhydrous mass over capacity. */
  readonly saturation: Quantity | undefined;
  /** Anhydrous mass that falls out; undefined unless `stays` is "no". */
  readonly excess: Quantity<"mass"> | undefined;
  /** Solid that would fall out, where the table says. */
  readonly solidPhase: string | undefined;
  readonly solubility: Solubility | undefined;
  /** Why nothing is known, and what the rules say instead. */
  readonly missing: string | undefined;
  readonly rule: SolubilityRule | undefined;
}

/** Verdict on a whole liquor. */
export interface LiquorCheck {
  /** "yes" if every substance stays, "no" if one falls out, "unknown" if one cannot be judged and none falls out. */
  readonly staysDissolved: "yes" | "barely" | "no" | "unknown";
  readonly substances: readonly DissolvedVerdict[];
  readonly warnings: readonly string[];
}

/** Above this share of its capacity a salt stays only barely: the tables are no better than that among other salts. */
const MARGIN = "0.9";

function massOfSubstance(substance: DissolvedSubstance): Quantity {
  const { formula, mass, amount } = substance;
  const solute = soluteOf(formula);
  if ((mass === undefined) === (amount === undefined)) {
    throw new SolubilityError(
      mass === undefined ? "solubility.missing-option" : "solubility.conflicting-options",
      `give the mass or the amount of ${solute.formula}`,
      { details: { formula: solute.formula.toString() } },
    );
  }
  if (mass !== undefined) return positiveMass(mass, "mass", `m(${solute.formula})`, `${solute.formula} in the liquor`);
  const n = positive(expectDimension(amount!, "amount of substance", "amount"), "amount");
  return n
    .times(molarMass(solute.formula))
    .to("g")
    .named({
      symbol: `m(${solute.formula})`,
      label: `${solute.formula} in the liquor`,
      rule: "mass = amount × molar mass",
    });
}

function judge(substance: DissolvedSubstance, water: Quantity, temperature: TemperatureLike): DissolvedVerdict {
  const solute = soluteOf(substance.formula);
  const dry = anhydrousMass(solute, massOfSubstance(substance));
  const formula = solute.formula.toString();
  const known = substance.solubility === undefined ? trySolubilityOf(solute.formula, temperature) : undefined;
  if (known !== undefined && !known.ok) {
    const rule = ruleFor(solute);
    return {
      ...{ formula, anhydrousMass: dry, stays: "unknown", rule, missing: known.error.message.split("\n")[0]! },
      ...{
        capacity: undefined,
        saturation: undefined,
        excess: undefined,
        solidPhase: undefined,
        solubility: undefined,
      },
    };
  }
  const solubility = known?.value;
  const s = solubility?.perHundredGramsWater ?? expectDimension(substance.solubility!, "mass", "solubility");
  const capacity = positive(s, "solubility")
    .times(water)
    .dividedBy(hundredGrams())
    .named({
      symbol: `m(${solute.anhydrous}, max)`,
      label: `${solute.anhydrous} the water can hold`,
      rule: "capacity = solubility × water / 100 g",
    });
  const saturation = dry.dividedBy(capacity).named({ label: "share of the capacity", rule: "mass / capacity" });
  const stays = saturation.compare("1") > 0 ? "no" : saturation.compare(MARGIN) > 0 ? "barely" : "yes";
  const excess =
    stays === "no"
      ? dry.minus(capacity).named({ label: `anhydrous ${solute.anhydrous} that falls out`, rule: "mass − capacity" })
      : undefined;
  const solidPhase = solubility?.solidPhase;
  return {
    formula,
    anhydrousMass: dry,
    stays,
    capacity,
    saturation,
    excess,
    solidPhase,
    solubility,
    missing: undefined,
    rule: undefined,
  };
}

/**
 * Does everything stay dissolved after mixing? Each salt is held against its own solubility in all the water.
 *
 * @param request - substances by mass or amount; `water`, all the water of the liquor except the crystal water of the
 *   hydrates named, which is added; and the temperature
 * @returns a verdict for each and for all; "barely" from 90 % of the capacity, because other salts shift it
 * @throws {SolubilityError} `solubility.bad-option`, `solubility.not-positive`, `solubility.missing-option`,
 *   `solubility.conflicting-options`
 * @source water balance; each solubility names its own source; the 90 % margin is common practice, no source
 * @category Dissolving
 * @example
 * staysDissolved({ substances: [{ formula: "Na2SO4", mass: "10 g" }], water: "100 g", temperature: "20 °C" }).staysDissolved // => "yes"
 */
export function staysDissolved(request: {
  readonly substances: readonly DissolvedSubstance[];
  readonly water: MassLike;
  readonly temperature: TemperatureLike;
}): LiquorCheck {
  needRecord(request, "request");
  needRecords(request.substances, "substances");
  const added = positiveMass(request.water, "water", "m(H2O)", "water in the liquor");
  const crystal = request.substances.flatMap((substance) => {
    const solute = soluteOf(substance.formula);
    if (!solute.isHydrate) return [];
    const mass = massOfSubstance(substance);
    return [mass.minus(anhydrousMass(solute, mass))];
  });
  const water =
    crystal.length === 0
      ? added
      : sum([added, ...crystal]).named({
          symbol: "m(H2O, total)",
          label: "all water, crystal water included",
          rule: "water + crystal water of the hydrates",
        });
  const substances = request.substances.map((substance) => judge(substance, water, request.temperature));
  const worst = (["no", "unknown", "barely", "yes"] as const).find((s) => substances.some(({ stays }) => stays === s));
  const warnings = substances.flatMap(({ formula, solubility }) =>
    (solubility?.warnings ?? []).map((warning) => `${formula}: ${warning}`),
  );
  return { staysDissolved: worst ?? "yes", substances, warnings };
}

/**
 * As `staysDissolved`, but gives the refusal back as data.
 *
 * @category Dissolving
 * @example
 * tryStaysDissolved({ substances: [], water: "0 g", temperature: "20 °C" }).ok // => false
 */
export function tryStaysDissolved(request: Parameters<typeof staysDissolved>[0]): Result<LiquorCheck> {
  return attempt(() => staysDissolved(request));
}

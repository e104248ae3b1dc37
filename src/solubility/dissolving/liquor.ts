// After mixing: does what should stay in the liquor stay dissolved? And what the liquor keeps of what should precipitate.
// Each salt is held against its own solubility in all the water there is, less what the ions it shares with the other
// salts push out (ion product in mol per kilogram of water, the activities taken to stay as in its own solution). So is
// every other solid that the ions could pair to.

import type { AmountLike, MassLike, TemperatureLike } from "../../amount";
import { type Formula, molarMass } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { type Quantity, quantity, sum } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { hundredGrams, positiveMass, type SolubilityFigure } from "../curves/figure";
import { trySolubilityOf } from "../curves/solubility";
import { anhydrousMass, type Solute, soluteOf } from "../curves/solute";
import { SolubilityError } from "../error";
import { saltIons } from "../precipitating/ions";
import { solveResidue } from "../precipitating/pair-balance";
import type { Solubility } from "../record";
import { ruleFor, type SolubilityRule } from "../rules";
import { type PairingOutcome, pairingsAmong } from "./liquor-pairings";

const DISSOLVED = {
  formula: true,
  mass: true,
  amount: true,
  solubility: true,
} as const satisfies Fields<DissolvedSubstance>;

const LIQUOR_CHECK = { substances: [DISSOLVED], water: true, temperature: true, facts: true } as const satisfies Fields<
  Parameters<typeof remainsInSolution>[0]
>;

/** A substance that should stay dissolved. Give the mass (of the form named) or the amount. */
export interface DissolvedSubstance {
  /** The form that `mass` is of; crystal water counts. */
  readonly formula: string | Formula;
  /** Of the form named. */
  readonly mass?: MassLike;
  /** In formula units. */
  readonly amount?: AmountLike;
  /** Your own solubility, g anhydrous per 100 g water. */
  readonly solubility?: SolubilityFigure;
}

/** Verdict on one dissolved substance. */
export interface DissolvedVerdict {
  /** The substance that was asked about. */
  readonly formula: string;
  /** Anhydrous mass in the liquor. */
  readonly anhydrousMass: Quantity<"mass">;
  /** "yes" below `margin` of its capacity, "barely" between there and the capacity, "no" above, "unknown" without data. */
  readonly stays: "yes" | "barely" | "no" | "unknown";
  /** Anhydrous mass that the water can dissolve beside the other substances; undefined when unknown. */
  readonly capacity: Quantity<"mass"> | undefined;
  /** Anhydrous mass over capacity; the same salt named twice counts together. */
  readonly saturation: Quantity<"number"> | undefined;
  /** Anhydrous mass that precipitates if all the others stay; undefined unless `stays` is "no". */
  readonly excess: Quantity<"mass"> | undefined;
  /** Solid that would precipitate, where the table says. */
  readonly solidPhase: string | undefined;
  /** The table's answer; undefined without one. */
  readonly solubility: Solubility | undefined;
  /** Why nothing is known, and what the rules say instead. */
  readonly missing: string | undefined;
  /** Rule of thumb in place of a figure; undefined where there is a figure or no rule. */
  readonly rule: SolubilityRule | undefined;
}

/** Verdict on a whole liquor. */
export interface LiquorCheck {
  /** "yes" if every substance and pairing stays, "no" if one precipitates, "unknown" if one cannot be judged and none precipitates. */
  readonly remainsInSolution: "yes" | "barely" | "no" | "unknown";
  /** One for each substance. */
  readonly substances: readonly DissolvedVerdict[];
  /** Other pairings of the ions, double salts included, that do not clearly stay dissolved. */
  readonly pairings: readonly PairingOutcome[];
  /** What to know before relying on it. */
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
  const n = guard.positive(expectDimension(amount!, "amount of substance", "amount"), "amount");
  return n
    .times(molarMass(solute.formula))
    .to("g")
    .named({
      symbol: `m(${solute.formula})`,
      label: `${solute.formula} in the liquor`,
      rule: "mass = amount × molar mass",
    });
}

/** A substance in the liquor as it is judged: its anhydrous mass, and the mol of each of its ions. */
interface Dissolved {
  readonly substance: DissolvedSubstance;
  readonly solute: Solute;
  readonly dry: Quantity;
  readonly ions: readonly { readonly formula: string; readonly count: number; readonly moles: number }[];
}

function dissolved(substance: DissolvedSubstance): Dissolved {
  const solute = soluteOf(substance.formula);
  const dry = anhydrousMass(solute, massOfSubstance(substance));
  const moles = dry.toNumber("g") / molarMass(solute.anhydrous).toNumber();
  const ions = saltIons(solute.anhydrous) ?? [];
  return { substance, solute, dry, ions: ions.map(({ formula, count }) => ({ formula, count, moles: moles * count })) };
}

/** Least share of its own capacity a salt is left beside others: no more is known where they bring all its ions. */
const LEAST_SHARE = 1e-6;

/** Share of its own capacity (g anhydrous) that a salt keeps beside the ions of the others; 1 when it shares none. */
function shareBeside(own: Dissolved, others: readonly Dissolved[], capacity: number): number {
  const saturated = capacity / molarMass(own.solute.anhydrous).toNumber();
  const extra = own.ions.map(({ formula }) =>
    others
      .flatMap(({ ions }) => ions.filter((ion) => ion.formula === formula))
      .reduce((all, ion) => all + ion.moles, 0),
  );
  if (extra.every((moles) => moles === 0)) return 1;
  const released = own.ions.map(({ count }, i) => ({ count, over: extra[i]! / saturated, perScarce: count }));
  const lnK = own.ions.reduce((all, { count }) => all + count * Math.log(count), 0);
  return Math.max(LEAST_SHARE, Math.exp(solveResidue(released, lnK, 0)));
}

/** What is not known of a share: a third of what the others are estimated to push out (brines of the handbooks, by test). */
const UNSURE = 1 / 3;

function shareLeft(share: number): Quantity {
  return quantity(
    { value: share.toPrecision(6), unit: "", standardUncertainty: ((1 - share) * UNSURE).toPrecision(3) },
    {
      symbol: "φ",
      label: "share of its own capacity left by the ions it shares",
      assumption: "the activities are those of its own saturated solution",
    },
  );
}

function judge(
  own: Dissolved,
  all: readonly Dissolved[],
  water: Quantity,
  temperature: TemperatureLike,
): DissolvedVerdict {
  const { substance, solute, dry } = own;
  const formula = solute.formula.toString();
  const known = substance.solubility === undefined ? trySolubilityOf(solute.formula, temperature) : undefined;
  if (known !== undefined && !known.ok) {
    const rule = ruleFor(solute);
    return {
      ...{ formula, anhydrousMass: dry, stays: "unknown", rule, missing: known.error.problem },
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
  const alone = guard.positive(s, "solubility").times(water).dividedBy(hundredGrams());
  // the same salt from another feed is the same salt; every other one may push it out
  const same = all.filter((other) => other.solute.key === solute.key);
  const others = all.filter((other) => other.solute.key !== solute.key);
  const share = shareBeside(own, others, alone.toNumber("g"));
  const capacity = (share === 1 ? alone : alone.times(shareLeft(share))).named({
    symbol: `m(${solute.anhydrous}, max)`,
    label: `${solute.anhydrous} the water can dissolve`,
    rule:
      share === 1
        ? "capacity = solubility × water / 100 g"
        : "capacity = solubility × water / 100 g × share left by the ions it shares with the others",
  });
  const whole = same.length === 1 ? dry : sum(same.map((other) => other.dry));
  const saturation = whole.dividedBy(capacity).named({ label: "share of the capacity", rule: "mass / capacity" });
  const stays = saturation.compare("1") > 0 ? "no" : saturation.compare(MARGIN) > 0 ? "barely" : "yes";
  const excess =
    stays === "no"
      ? (same.length === 1 ? dry.minus(capacity) : whole.minus(capacity).times(dry.dividedBy(whole))).named({
          label: `anhydrous ${solute.anhydrous} that precipitates`,
          rule: "mass − capacity",
        })
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
 * Does everything stay dissolved after mixing? Each salt is held against its own solubility in all the water, less what
 * the ions it shares with the other salts push out; so is every other salt that their ions pair to, ions made by handing on
 * a proton and known double salts included. Where weak acids or acid salts meet a metal, the equilibrium of the liquor is asked
 * what falls.
 *
 * @param request - substances by mass or amount; `water`, all the water of the liquor except the crystal water of the
 *   hydrates named, which is added; and the temperature
 * @returns a verdict for each and for all; "barely" from 90 % of the capacity, because other salts shift it
 * @throws {SolubilityError} `solubility.bad-option`, `solubility.not-positive`, `solubility.missing-option`,
 *   `solubility.conflicting-options`
 * @source water balance and ion product, activities as in the salt's own saturated solution; each solubility names its own source; the 90 % margin is common practice, no source
 * @category Dissolving
 * @example
 * remainsInSolution({ substances: [{ formula: "Na2SO4", mass: "10 g" }], water: "100 g", temperature: "20 °C" }).remainsInSolution // => "yes"
 */
export function remainsInSolution(
  request: LookupOptions & {
    readonly substances: readonly DissolvedSubstance[];
    readonly water: MassLike;
    readonly temperature: TemperatureLike;
  },
): LiquorCheck {
  if (bringsFacts(request)) return withItsFacts(request, guard, remainsInSolution);
  guard.fields(request, LIQUOR_CHECK, "request");
  guard.list(request.substances, "substances");
  const added = positiveMass(request.water, "water", "m(H2O)", "water in the liquor");
  const all = request.substances.map(dissolved);
  const crystal = all
    .filter(({ solute }) => solute.isHydrate)
    .map(({ substance, dry }) => massOfSubstance(substance).minus(dry));
  const water =
    crystal.length === 0
      ? added
      : sum([added, ...crystal]).named({
          symbol: "m(H2O, total)",
          label: "all water, crystal water included",
          rule: "water + crystal water of the hydrates",
        });
  const substances = all.map((own) => judge(own, all, water, request.temperature));
  const pairings = pairingsAmong(all, water, request.temperature);
  const outcomes = [...substances, ...pairings].map(({ stays }) => stays);
  const worst = (["no", "unknown", "barely", "yes"] as const).find((each) => outcomes.includes(each));
  const warnings = [
    ...substances.flatMap(({ formula, solubility }) =>
      (solubility?.warnings ?? []).map((warning) => `${formula}: ${warning}`),
    ),
    ...pairings.map(({ formula, stays, solidPhase, why }) => `${PAIRING_WORDS[stays](formula, solidPhase)}: ${why}`),
  ];
  return readable({ remainsInSolution: worst ?? "yes", substances, pairings, warnings });
}

const PAIRING_WORDS: Readonly<Record<PairingOutcome["stays"], (formula: string, solid: string) => string>> = {
  no: (_, solid) => `${solid} precipitates from these ions`,
  barely: (_, solid) => `${solid} is near saturation with these ions`,
  unknown: (formula) => `${formula} may precipitate from these ions`,
};

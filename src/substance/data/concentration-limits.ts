// From which mass fraction in water a statement applies: specific limits of the harmonised entries, and the general limits
// for mixtures (Annex I) for what they leave open. All recalled, as the source key says; the bottle's own sheet decides.
import { once } from "../../foundation/memo";
import type { HazardSourceKey } from "./sources";

/** A statement and the mass fractions between which it applies. */
export interface LimitRow {
  readonly code: string;
  /** Mass % from which it applies. */
  readonly from: string;
  /** Mass % below which it applies; absent where there is no upper end. */
  readonly below?: string;
  /** In the category of the weaker signal word. */
  readonly weaker?: true;
}

/** All that is said of solutions of one substance, by strength. */
export interface SolutionLimits {
  readonly formula: string;
  readonly limits: readonly LimitRow[];
  /** Reminders that still matter where no statement about burns is left. */
  readonly weak: readonly string[];
  readonly source: HazardSourceKey;
}

export const SOLUTION_LIMITS = /* @__PURE__ */ once((): readonly SolutionLimits[] => [
  { formula: "HCl", limits: [
    { code: "H314", from: "25" },
    { code: "H315", from: "10", below: "25" },
    { code: "H319", from: "10", below: "25" },
    { code: "H335", from: "10" },
  ], weak: ["keep away from bleach, metals and sulfides"], source: "clpRecalled" },
  { formula: "H2SO4", limits: [
    { code: "H314", from: "15" },
    { code: "H315", from: "5", below: "15" },
    { code: "H319", from: "5", below: "15" },
  ], weak: ["a dried drip becomes concentrated: rinse it off cloth and bench"], source: "clpRecalled" },
  {
    // inhalation by additivity from the point estimate of the entry, 2.65 mg/L of vapour
    formula: "HNO3",
    limits: [
      { code: "H272", from: "65", weaker: true },
      { code: "H330", from: "70" },
      { code: "H331", from: "26.5", below: "70" },
      { code: "H332", from: "13.25", below: "26.5" },
      { code: "H314", from: "5" },
      { code: "H318", from: "3", below: "5" },
      { code: "H315", from: "1", below: "5" },
      { code: "H319", from: "1", below: "3" },
      { code: "EUH071", from: "26.5" },
    ],
    weak: ["stains skin yellow"],
    source: "clpRecalled",
  },
  { formula: "H3PO4", limits: [{ code: "H314", from: "25" }, { code: "H315", from: "10", below: "25" }, { code: "H319", from: "10", below: "25" }], weak: ["stings in eyes and cuts"], source: "clpRecalled" },
  {
    // flammable only where it is carried as such, above 80 %
    formula: "CH3COOH",
    limits: [
      { code: "H226", from: "80" },
      { code: "H314", from: "25" },
      { code: "H315", from: "10", below: "25" },
      { code: "H319", from: "10", below: "25" },
    ],
    weak: ["stings in eyes and cuts"],
    source: "clpRecalled",
  },
  {
    // acute toxicity by additivity from the estimates of the entry, 7.4 mg/L of vapour and 730 mg/kg by mouth; flammable only
    // where it is carried as such, above 85 %
    formula: "HCOOH",
    limits: [
      { code: "H226", from: "85" },
      { code: "H290", from: "10" },
      { code: "H331", from: "74" },
      { code: "H332", from: "37", below: "74" },
      { code: "H302", from: "36.5" },
      { code: "H314", from: "10" },
      { code: "H315", from: "2", below: "10" },
      { code: "H319", from: "2", below: "10" },
    ],
    weak: ["stings in eyes and cuts"],
    source: "clpRecalled",
  },
  { formula: "NaOH", limits: [
    { code: "H314", from: "2" },
    { code: "H315", from: "0.5", below: "2" },
    { code: "H319", from: "0.5", below: "2" },
  ], weak: ["slippery on skin: rinse it off", "eats aluminium with hydrogen"], source: "clpRecalled" },
  { formula: "KOH", limits: [
    { code: "H314", from: "2" },
    { code: "H315", from: "0.5", below: "2" },
    { code: "H319", from: "0.5", below: "2" },
    { code: "H302", from: "25" },
  ], weak: ["slippery on skin: rinse it off", "eats aluminium with hydrogen"], source: "clpRecalled" },
  { formula: "NH3", limits: [
    { code: "H314", from: "5" },
    { code: "H335", from: "5" },
    { code: "H318", from: "3", below: "5" },
    { code: "H315", from: "1", below: "5" },
    { code: "H319", from: "1", below: "3" },
    { code: "H400", from: "25" },
  ], weak: ["ventilate", "never with bleach"], source: "clpRecalled" },
  { formula: "H2O2", limits: [
    { code: "H271", from: "70" },
    { code: "H272", from: "50", below: "70" },
    { code: "H314", from: "50" },
    { code: "H315", from: "35", below: "50" },
    { code: "H318", from: "8", below: "50" },
    { code: "H319", from: "5", below: "8" },
    { code: "H335", from: "35" },
    { code: "H302", from: "25" },
    { code: "H332", from: "55" },
  ], weak: ["oxygen builds pressure: vented cap", "bleaches cloth"], source: "clpRecalled" },
  { formula: "NaClO", limits: [
    { code: "EUH031", from: "5" },
    { code: "H314", from: "5" },
    { code: "H318", from: "3", below: "5" },
    { code: "H315", from: "1", below: "5" },
    { code: "H319", from: "1", below: "3" },
    { code: "H400", from: "2.5", below: "25" },
    { code: "H410", from: "25" },
    { code: "H411", from: "2.5", below: "25" },
    { code: "H412", from: "0.25", below: "2.5" },
  ], weak: ["never with acid, ammonia, urea, alcohol, acetone"], source: "clpRecalled" },
  {
    // flash points of spirit, 24 °C at 50 and 62 °C at 5 %, against the 23 and 60 °C of a flammable liquid; where the figures
    // should be by volume these limits are still on the safe side
    formula: "C2H5OH",
    limits: [{ code: "H225", from: "45" }, { code: "H226", from: "5", below: "45" }],
    weak: ["no bleach, no permanganate, no silver/nitric"],
    source: "spiritFlashPoints",
  },
  { formula: "HClO4", limits: [
    { code: "H271", from: "50" },
    { code: "H272", from: "0", below: "50" },
    { code: "H314", from: "10" },
    { code: "H315", from: "1", below: "10" },
    { code: "H319", from: "1", below: "10" },
  ], weak: ["never let it dry in paper, wood or cloth"], source: "clpRecalled" },
]);

/** What a statement about fire holds for. */
interface FireLimitRow {
  readonly codes: readonly string[];
  /** Mass % of a salt in water from which it is said of the solution as well; left out where it is of the dry substance alone. */
  readonly from?: string;
  readonly source: HazardSourceKey;
}

/**
 * Dangers by fire of a solid that is dissolved in water. A solution is tested as a liquid, against nitric acid of 65 % (CLP,
 * Annex I, Table 2.13.1), and no list says where a salt begins to count: below a tenth the trade says nothing of a fire. What
 * burns as a solid, heats itself or gives a gas with water does none of it once it is dissolved.
 */
export const FIRE_LIMITS: readonly FireLimitRow[] = [
  { codes: ["H271", "H272"], from: "10", source: "commonPractice" },
  { codes: ["H228", "H250", "H251", "H252", "H260", "H261", "EUH014"], source: "commonPractice" },
];

/** Of an oxidiser that is dissolved: what is left of it once the water has gone. */
export const DRIES_TO_OXIDISER = "dries to an oxidiser: do not let it dry on paper or cloth";

/**
 * General limits for mixtures, by the code of the substance: what is left of it at which strength. Classes that need more
 * than the strength (acute toxicity by its figures, water life by its factor, fire by a test) are not lowered.
 */
export const GENERAL_LIMITS: Readonly<Record<string, readonly LimitRow[]>> = {
  H314: [{ code: "H314", from: "5" }, { code: "H318", from: "3", below: "5" }, { code: "H315", from: "1", below: "5" }, { code: "H319", from: "1", below: "3" }],
  H318: [{ code: "H318", from: "3" }, { code: "H319", from: "1", below: "3" }],
  H315: [{ code: "H315", from: "10" }],
  H319: [{ code: "H319", from: "10" }],
  H335: [{ code: "H335", from: "20" }],
  H336: [{ code: "H336", from: "20" }],
  H317: [{ code: "H317", from: "1" }],
  H334: [{ code: "H334", from: "1" }],
  H340: [{ code: "H340", from: "0.1" }],
  H341: [{ code: "H341", from: "1" }],
  H350: [{ code: "H350", from: "0.1" }],
  H351: [{ code: "H351", from: "1" }],
  H360: [{ code: "H360", from: "0.3" }],
  H361: [{ code: "H361", from: "3" }],
  H370: [{ code: "H370", from: "10" }, { code: "H371", from: "1", below: "10" }],
  H371: [{ code: "H371", from: "10" }],
  H372: [{ code: "H372", from: "10" }, { code: "H373", from: "1", below: "10" }],
  H373: [{ code: "H373", from: "10" }],
};

/** What the general limits rest on. */
export const GENERAL_LIMITS_SOURCE: HazardSourceKey = "clpRecalled";

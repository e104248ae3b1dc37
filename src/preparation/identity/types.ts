// A question about a solid that was heated, and the answer.
import type { MassFractionLike, MassLike } from "../../amount";
import type { Formula } from "../../formula";
import type { LookupOptions } from "../../foundation/facts";
import type { Quantity, QuantityLike } from "../../quantity";
import type { SampleMixture } from "./mixtures";

/** A solid the sample may be, and what ignition leaves of it. */
export interface IgnitionCandidate {
  /** Of the solid as it is before ignition. */
  readonly formula: string | Formula;
  /** Chosen by the table and by rule unless given. */
  readonly residue?: string | Formula | undefined;
}

/** What was weighed, and what the sample may be. */
export interface MassLossRequest extends LookupOptions {
  /** Mass of the dry sample. */
  readonly before?: MassLike | undefined;
  /** Mass after ignition to constant mass. */
  readonly after?: MassLike | undefined;
  /** What the sample may be. */
  readonly candidates?: readonly (string | Formula | IgnitionCandidate)[] | undefined;
  /** What it was meant to be; what else it may be is then looked up, and added to `candidates`. */
  readonly product?: string | Formula | undefined;
  /** What is left of all candidates that name no residue of their own. */
  readonly residue?: string | Formula | undefined;
  /** Most water the sample may hold beside its formula; 0 % unless given. A gel dried at 100 °C contains 1 to 3 %. */
  readonly adsorbedWater?: MassFractionLike | undefined;
  /** Smallest step of the balance, for masses that carry no uncertainty; their last digit unless given. */
  readonly readability?: MassLike | undefined;
  /** Acid that a gram of the sample neutralises, such as "18.1 ± 0.1 mmol/g"; 1 % uncertain unless given. */
  readonly acidPerGram?: QuantityLike<"molality"> | undefined;
}

/** How one candidate fits. */
export interface IdentityCandidate {
  /** As printed, crystal water included. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** What is taken to be left of it. */
  readonly residue: string;
  /** What is assumed of air and heat. */
  readonly condition: string | undefined;
  /** Share of the dry sample that ignition would drive off. */
  readonly expectedLoss: Quantity<"number">;
  /** Loss found less loss expected, for the dry sample. */
  readonly difference: Quantity<"number"> | undefined;
  /** Acid that a gram of it neutralises; undefined where it neutralises none that can be calculated. */
  readonly acidPerGram: Quantity<"molality"> | undefined;
  /** Water beside the formula that fits best, as a share of the sample, within what is allowed. */
  readonly water: Quantity<"number">;
  /** Standard uncertainties by which each test is off, with that water. */
  readonly off: { readonly loss: number | undefined; readonly acid: number | undefined };
  /** Every test within two standard uncertainties. */
  readonly fits: boolean;
  /** Part of the likelihood of all candidates, taken to be equally likely beforehand; 0 to 1. */
  readonly share: number;
}

/** What the sample is, as far as the tests tell. */
export interface Identity {
  /** Loss of mass on ignition as a share of the sample. */
  readonly loss: Quantity<"number"> | undefined;
  /** Best first. */
  readonly candidates: readonly IdentityCandidate[];
  /** What it may be where it is no single candidate: with something inert, half fired, two together; the likeliest first. */
  readonly mixtures: readonly SampleMixture[];
  /** Does one candidate remain, several, or none. */
  readonly verdict: "identified" | "cannot tell apart" | "none fits";
  /** The formulas that remain: one when identified, several when they cannot be told apart, none when none fits. */
  readonly remaining: readonly string[];
  /** The verdict as a sentence. */
  readonly text: string;
  /** What to do next to decide. */
  readonly next: string;
  /** What was assumed, in words. */
  readonly assumptions: readonly string[];
}

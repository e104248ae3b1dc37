// What is asked about a material and what is said of it.
import type { Notation } from "../../ion/internal";
import type { SolidForm } from "../data/hazards";
import type { HazardSourceKey } from "../data/sources";

/** A statement code and our paraphrase of it. */
export interface Statement {
  /** As on the label: `H302`, `P280`. */
  readonly code: string;
  /** What it says, in our words. */
  readonly paraphrase: string;
  /** The classification, or `memory` for a code of ordinary safety data sheets that the classification leaves out. */
  readonly source: HazardSourceKey;
}

/** What was found where the hazards of a material were looked up. */
export type HazardStatus = "classified" | "not classified" | "food" | "not listed" | "not looked up" | "not read";

/** What is known of one material. */
export interface SubstanceCautions {
  /** The text that was asked for. */
  readonly material: string;
  /** Formula, where the material has one. */
  readonly formula?: string;
  /**
   * `classified`, `not classified` (the source lists no hazard: not the same as safe), `food` (no entry, but sold as food or
   * as a food additive), `not listed` (looked up in the harmonised list: neither an entry nor a group), `not looked up` (no
   * list was read for it), or `not read` (the text is no name and no formula that is known here: nothing was looked up).
   */
  readonly status: HazardStatus;
  /** Number of a food additive, such as `E 515`. */
  readonly additive?: string;
  /** The form the entry is about: solution, gas, powder ... */
  readonly form?: string;
  /** Read for what stays dissolved, at a strength that is not known. */
  readonly dissolved?: true;
  /** Mass fraction the entry was read for, where it was given or a shop sells the good at it (its strongest). */
  readonly strength?: string;
  /** GHS pictograms by code, with what each says. */
  readonly pictograms: readonly { readonly code: string; readonly paraphrase: string }[];
  /** The stronger of the signal words of its statements. */
  readonly signalWord?: "Danger" | "Warning";
  /** Hazard statements by code. */
  readonly statements: readonly Statement[];
  /** What to mind at the bench, beyond the statements. */
  readonly cautions: readonly string[];
  /** What to do first if it goes wrong, by where it went; from the statement codes. */
  readonly firstAid: readonly string[];
  /** What protects from it, from the statement codes. */
  readonly protection: readonly string[];
  /** What becomes of what is left. */
  readonly disposal: string;
  /** Formula or group that was classified, when it is not the formula asked for. */
  readonly classifiedAs?: string;
  /** What to keep in mind about this entry. */
  readonly notes: readonly string[];
  /** What classified it: pictograms, signal word and statements. */
  readonly source?: HazardSourceKey;
  /** The source in words, with the index number where there is one. */
  readonly citation?: string;
  /** What cautions and disposal rest on: they are ours, not the classification's. */
  readonly adviceSource: HazardSourceKey;
}

/** What a text stands for, with what is known of its strength. */
export interface Asked {
  /** The text that was asked for. */
  readonly given: string;
  readonly formula: string;
  readonly notation: Notation;
  /** Mass %. */
  readonly percent?: number;
  /** It stays dissolved, at whatever strength. */
  readonly dissolved?: boolean;
  /** The form of a solid, where something says it. */
  readonly state?: SolidForm;
  readonly inCylinder: boolean;
}

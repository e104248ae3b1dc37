// The books of a vessel: what every operation reads and writes anew.
import type { Quantity } from "../../quantity";
import type { Entry, SolidEntry } from "./entry";

/** The books of a vessel. */
export interface Books {
  /** Liquid water. */
  readonly water: Quantity;
  readonly temperature: Quantity<"temperature">;
  readonly pressure: Quantity<"pressure">;
  readonly solids: readonly SolidEntry[];
  readonly dissolved: readonly Entry[];
  /** Given off so far, and no longer there. */
  readonly gas: readonly Entry[];
  /** What the packs contain beside their forms, and nobody knows what it is. */
  readonly other: Quantity;
  /** What is missing to tell how much water there is. */
  readonly waterMissing: readonly string[];
  readonly unknown: readonly string[];
}

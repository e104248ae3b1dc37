// The books of a vessel: what every operation reads and writes anew.
import type { Quantity } from "../../quantity";
import type { Entry, SolidEntry } from "./entry";

/** How a liquor that fizzed stands: carbon dioxide is in no book but that of the gas, and some of it is in the liquor. */
export interface Fizzed {
  /** Just fizzed, under one atmosphere of it; or open until no more is in it than air keeps there. */
  readonly keeping: "kept" | "leaves";
  /** What has left by the books, mol for each kilogram of water. */
  readonly left: number;
}

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
  /** Undefined where no carbonate is, or carbon dioxide is led in. */
  readonly fizzed?: Fizzed | undefined;
}

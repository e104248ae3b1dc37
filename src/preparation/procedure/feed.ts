// How one material goes into the work, and what decides it.

import { molarMass } from "../../formula";
import type { Quantity, StrengthDimension } from "../../quantity";
import type { DissolvingWater } from "../../solubility";
import type { Account } from "../reaction/account";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import type { Role } from "./roles";

/** Water that a strong solution is poured into. */
export interface Dilution {
  /** Water that the solution is poured into. */
  readonly water: Quantity<"mass">;
  /** Strength after. */
  readonly to: Quantity<StrengthDimension>;
}

/** How one material goes into the pot. */
export type Feed =
  | {
      readonly material: string;
      readonly how: "dissolve";
      readonly dissolving: DissolvingWater;
      /** Temperature it is dissolved at. */
      readonly at: Quantity<"temperature">;
      /** What it cools to before anything joins it; undefined where it does not wait for that. */
      readonly cooledTo?: Quantity<"temperature">;
      readonly why: string;
      /** Values of the planning table that set its water. */
      readonly by?: readonly ("feedStrength" | "baseStrength" | "coldWaterFactor" | "hotWaterFactor")[];
      /** It shares one hot water with the other salts of its pot; the first of them has all of it. */
      readonly shares?: true;
      /** A salt built alike, by whose solubility that water is measured: the product has no figure of its own. */
      readonly alike?: DissolvingWater;
    }
  | {
      readonly material: string;
      readonly how: "solution";
      readonly water: Quantity<"mass"> | undefined;
      readonly dilution: Dilution | undefined;
    }
  | {
      readonly material: string;
      readonly how: "solid";
      readonly why: string;
      /** What is left of it is dissolved in the liquor. */
      readonly dissolves: boolean;
      /** Water that it is stirred into, where nothing else brings any. */
      readonly water?: Quantity<"mass"> | undefined;
      /** It reacts with that water, which is there first. */
      readonly reacts?: true;
    }
  /** No solubility is known: how much water is chosen, whether it is enough shows. */
  | { readonly material: string; readonly how: "unknown"; readonly missing: string; readonly water: Quantity<"mass"> };

/** Is it a solid that needs a liquid to be stirred into? */
export const isWithoutWater = (feed: Feed): boolean => feed.how === "solid" && feed.water === undefined;

/** What decides how the materials go in. */
export interface Feeding {
  readonly setting: Setting;
  readonly portions: readonly Quantity[];
  readonly account: Account;
  readonly roles: readonly Role[];
  /** The product crystallises from the liquor. */
  readonly crystals: boolean;
  /** The product precipitates as it forms. */
  readonly precipitates: boolean;
  /** What crystallises is not warmed, or a gas is led in: feeds are made cold, and strong. */
  readonly cold: boolean;
  /** Temperature that a precipitate is mixed at where it forms only in the heat. */
  readonly mixedHot: Quantity<"temperature"> | undefined;
  /** Temperature of the hot liquor, where nothing but the product is dissolved in it. */
  readonly hot: Quantity<"temperature"> | undefined;
  /** All the water the liquor should have at the end, where that is known. */
  readonly target?: Quantity | undefined;
  /** A salt built alike that this water is measured by. */
  readonly alike?: DissolvingWater | undefined;
  /** For a run: the feeds of its plan, and which of them nothing changed. A run has the water that the plan prescribes. */
  readonly planned:
    | {
        readonly feeds: readonly Feed[];
        readonly same: (i: number) => boolean;
        /** Its water was measured in the run. */
        readonly isMeasured: (i: number) => boolean;
      }
    | undefined;
}

/** Water that is added, with its symbol and how it was found. */
export const waterToAdd = (q: Quantity, rule: string): Quantity<"mass"> =>
  q.to("g").named({ symbol: "m(H2O)", label: "water to add", rule }) as Quantity<"mass">;

/** Crystal water of a portion. */
export const crystalWaterOf = ({ waters }: Material, amount: Quantity): Quantity =>
  amount.times(waters).times(molarMass("H2O")).to("g");

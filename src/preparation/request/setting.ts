// The frame of a preparation: what a plan and its runs compute with.
import type { BalancedEquation } from "../../equation";
import type { Quantity } from "../../quantity";
import type { Species } from "../reaction/species";
import type { Material } from "../shelf/material";
import type { PlanRequest } from "./request";

/** Everything a plan and its runs compute with. */
export interface Setting {
  readonly request: PlanRequest;
  readonly equation: BalancedEquation;
  /** The request writes it without the water that it takes or sets free. */
  readonly lacksWater: boolean;
  readonly reactants: readonly Species[];
  readonly products: readonly Species[];
  /** As the water gives it: another hydrate than the request writes is what the equation and every mass are of. */
  readonly product: Species;
  /** As the request writes it. */
  readonly asked: Species;
  readonly materials: readonly Material[];
  /** Materials that take no part in the equation: alcohol, acid that keeps a salt from hydrolysing, charcoal, seed. */
  readonly asides: readonly Material[];
  /** Water is there: gases that it keeps stay in it. */
  readonly wet: boolean;
  /** The product is kept in its liquor: as asked for, or because it is a liquid, or a gas that stays in water. */
  readonly keepsLiquor: boolean;
  readonly temperature: Quantity<"temperature">;
  readonly pressure: Quantity<"pressure">;
  /** The room the work is done in. */
  readonly room: Room;
  readonly steps: { readonly mass: Quantity; readonly volume: Quantity };
}

/** What may be lost unless given: a crucible, and vessels that are rinsed out, keep less than filters do. */
export const usualLossOf = ({
  wet,
  keepsLiquor,
}: Pick<Setting, "wet" | "keepsLiquor">): "handlingLoss" | "liquorLoss" | "crucibleLoss" =>
  !wet ? "crucibleLoss" : keepsLiquor ? "liquorLoss" : "handlingLoss";

/** The room the work is done in. */
export interface Room {
  /** Of the air in the room. */
  readonly volume: Quantity<"volume">;
  /** Air changes per hour. */
  readonly changes: Quantity<"time^-1">;
}

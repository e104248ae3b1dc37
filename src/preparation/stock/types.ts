// The ledger of a store room: what came in, what was issued, what a stocktake found. Plain data, which any storage keeps.
import type { PortionLike } from "../../amount";
import type { Formula } from "../../formula";
import type { RecordHead } from "../../foundation/record";
import type {
  PriceDimension,
  Quantity,
  QuantityLike,
  QuantityRecord,
  StrengthDimension,
  UnitPriceDimension,
} from "../../quantity";

/** A quantity as the ledger keeps it: the text that was given, or its record. */
export type Kept = string | QuantityRecord;

/** A pack that comes in, or a product that was made. */
export interface Receipt {
  /** What the person calls it. */
  readonly name: string;
  /** Lot of the label; a number is given where there is none. */
  readonly lot?: string | undefined;
  /** What is really in it, crystal water included. */
  readonly form: string | Formula;
  /** Mass fraction of the form; of a solution its strength. */
  readonly assay?: QuantityLike | undefined;
  /** Of a solution, in place of the assay. */
  readonly strength?: QuantityLike | undefined;
  /** Mass or volume of the whole pack. */
  readonly amount: PortionLike;
  /** What is left of the amount, for a pack that is open when the ledger begins. */
  readonly left?: PortionLike | undefined;
  /** What the whole of it cost. */
  readonly cost?: QuantityLike | undefined;
  /** Where it comes from: a shop, a run. */
  readonly from?: string | undefined;
  /** Day it came in, in any notation; printed, never calculated with. */
  readonly day?: string | undefined;
}

/** What is taken from stock. */
export interface Issue {
  /** Name that the person gives the material. */
  readonly name: string;
  /** The oldest lot that has some, and the next, unless given. */
  readonly lot?: string | undefined;
  /** Mass or volume taken. */
  readonly amount: PortionLike;
  /** What for. */
  readonly purpose?: string | undefined;
  /** Day it was taken, in any notation; printed, never calculated with. */
  readonly day?: string | undefined;
}

/** What a stocktake found of one lot. */
export interface Count {
  /** Name that the person gives the material. */
  readonly name: string;
  /** The only lot unless given. */
  readonly lot?: string | undefined;
  /** Mass or volume that is really there. */
  readonly found: PortionLike;
  /** Day of the count, in any notation; printed, never calculated with. */
  readonly day?: string | undefined;
}

/** One line of the ledger. */
export type StockEntry =
  | {
      readonly kind: "received";
      readonly name: string;
      readonly lot: string;
      readonly form: string;
      readonly amount: Kept;
      readonly left?: Kept;
      readonly assay?: Kept;
      readonly strength?: Kept;
      readonly cost?: Kept;
      readonly from?: string;
      readonly day?: string;
    }
  | {
      readonly kind: "issued";
      readonly name: string;
      readonly lot: string;
      readonly amount: Kept;
      readonly purpose?: string;
      readonly day?: string;
    }
  | {
      readonly kind: "counted";
      readonly name: string;
      readonly lot: string;
      readonly amount: Kept;
      readonly day?: string;
    };

/** A ledger: plain data through and through, never changed, only written on. */
export interface Stock extends RecordHead<"stock"> {
  /** Everything received, issued and counted, in the order it was written down. */
  readonly entries: readonly StockEntry[];
}

/** A lot as it stands. */
export interface Lot {
  /** Name that the person gives the material. */
  readonly name: string;
  /** Lot of the label, or the number it was given. */
  readonly lot: string;
  /** What is really in it, crystal water included. */
  readonly form: string;
  /** Mass fraction of the form; undefined where none was given. */
  readonly assay: Quantity<"mass fraction" | "number"> | undefined;
  /** Of a solution; undefined where none was given. */
  readonly strength: Quantity<StrengthDimension> | undefined;
  /** Mass or volume of the whole when it came in. */
  readonly received: Quantity<"mass"> | Quantity<"volume">;
  /** By the books since the last count. */
  readonly onHand: Quantity<"mass"> | Quantity<"volume">;
  /** What counts found less than the books had, all together; below zero where more was found. */
  readonly unaccounted: Quantity<"mass"> | Quantity<"volume">;
  /** Money for one unit of it: for a gram or a millilitre. */
  readonly unitCost: Quantity<UnitPriceDimension> | undefined;
  /** What is on hand cost. */
  readonly value: Quantity<PriceDimension> | undefined;
  /** Where it came from; undefined where it was not said. */
  readonly from: string | undefined;
}

/** How far what is on hand goes. */
export interface Reach {
  /** Name that the person gives the material. */
  readonly name: string;
  /** In all lots together, another hydrate counted as the form the plans have. */
  readonly onHand: Quantity<"mass"> | Quantity<"volume">;
  /** For one round of the plans. */
  readonly needed: Quantity<"mass"> | Quantity<"volume">;
  /** Rounds that what is on hand is enough for. */
  readonly rounds: number;
}

/** What to buy. */
export interface ShoppingLine {
  /** Name that the person gives the material. */
  readonly name: string;
  /** As printed, crystal water included. */
  readonly form: string;
  /** For all the plans together. */
  readonly needed: Quantity<"mass"> | Quantity<"volume">;
  /** In all lots together. */
  readonly onHand: Quantity<"mass"> | Quantity<"volume">;
  /** Needed less on hand; always above zero. */
  readonly missing: Quantity<"mass"> | Quantity<"volume">;
  /** Packs of the size bought last; undefined where none was bought. */
  readonly packs: number | undefined;
  /** Size bought last; undefined where none was bought. */
  readonly packSize: Quantity<"mass"> | Quantity<"volume"> | undefined;
  /** Of the packs at the price paid last; undefined where none is known. */
  readonly cost: Quantity<PriceDimension> | undefined;
}

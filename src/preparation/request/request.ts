// What a plan is asked for, as the person at the shelf knows it: what the packs are, how much of what is wanted.

import type { MassFractionLike, MassLike, PortionLike, PressureLike, TemperatureLike, VolumeLike } from "../../amount";
import type { Formula } from "../../formula";
import type { Facts } from "../../foundation/facts";
import type { AmountText, ConcentrationText, DensityText, PriceText, QuantityLike } from "../../quantity";
import type { ProcedureKind } from "../procedure/kinds";

/** One material as it stands on the shelf. */
export interface ShelfMaterial {
  /** What the person calls it; also its key in scales and observations. */
  readonly name: string;
  /** What is really in the pack, crystal water included; for a solution the dissolved substance. */
  readonly form: string | Formula;
  /** Mass fraction of `form` in a solid; 100 % unless given. */
  readonly assay?: MassFractionLike | undefined;
  /** Strength of a solution: mass fraction, mass per volume, or mol/L. */
  readonly strength?:
    | MassFractionLike
    | QuantityLike<"density", DensityText>
    | QuantityLike<"concentration", ConcentrationText>
    | undefined;
  /** Density of a solution, where its strength is by mass and it is measured by volume. */
  readonly density?: QuantityLike<"density", DensityText> | undefined;
  /** What a pack holds and costs. */
  readonly pack?: { readonly size: PortionLike; readonly price: QuantityLike<string, PriceText> } | undefined;
  /** How much of it there is, for a plan that uses what is on the shelf. */
  readonly available?: PortionLike | undefined;
  /** Excess of what the equation asks for; 0 % unless given. */
  readonly excess?: QuantityLike<"number" | "mass fraction", `${number} %`> | undefined;
  /** What else is in it, by mass of the whole: the acid and the iron of spent etchant. Acid among it uses base. */
  readonly also?: readonly { readonly form: string | Formula; readonly share: MassFractionLike }[] | undefined;
  /** It takes no part in the equation: alcohol, acid against hydrolysis, charcoal, seed crystals. */
  readonly aside?: boolean | undefined;
  /** How much of what takes no part. */
  readonly portion?: PortionLike | undefined;
  /** Taken in excess on purpose: never the limiting reagent. */
  readonly inExcess?: boolean | undefined;
  /** How to dissolve it, or how to dilute a solution: in how much water or how strong, and a solid how warm; chosen and said unless given. */
  readonly dissolve?:
    | {
        readonly water?: MassLike | VolumeLike | undefined;
        readonly concentration?:
          | MassFractionLike
          | QuantityLike<"density", DensityText>
          | QuantityLike<"concentration", ConcentrationText>
          | undefined;
        readonly temperature?: TemperatureLike | undefined;
      }
    | undefined;
  /** Anything to print beside it: where it comes from, that it is invented. */
  readonly note?: string | undefined;
}

/** How big the batch is. */
export type Scale =
  | { readonly material: string; readonly portion: PortionLike | QuantityLike<"amount of substance", AmountText> }
  | { readonly product: MassLike | QuantityLike<"amount of substance", AmountText> }
  /** As much as a vessel of this size takes, foam included. */
  | { readonly vessel: VolumeLike }
  | "all";

/** What crystals are rinsed with on the filter. */
export type Rinse = "water" | "own solution" | "alcohol" | "none";

/** How the cake is washed; everything left out is chosen and said. */
export interface Washing {
  /** Liquor a gram of dry solid holds. */
  readonly retainedLiquorPerGram?: QuantityLike<"specific volume"> | undefined;
  /** Settled and poured off, or stirred up on the filter; slimes are decanted unless given. */
  readonly method?: "decantation" | "filter" | undefined;
  /** Volume of one wash. */
  readonly washVolume?: VolumeLike | undefined;
  /** Of crystals: ice-cold water (hot, of what dissolves less hot); where that takes a fifth of them alcohol, or their own saturated solution; unless given. */
  readonly rinse?: Rinse | undefined;
  /** By-products that may stay in the dry product; 0.5 % unless given. */
  readonly residue?: QuantityLike<"number" | "mass fraction", `${number} %`> | undefined;
}

/** A preparation to plan. */
export interface PlanRequest {
  /** Facts of the caller's own, looked up before the tables; what rests on one says so on the sheet. */
  readonly facts?: Facts | undefined;
  /** Title for the sheet. */
  readonly title?: string | undefined;
  /** The equation, balanced or not; or its reactants and products. */
  readonly equation: string | { readonly reactants: readonly string[]; readonly products: readonly string[] };
  /** The wanted product, a species of the equation. */
  readonly product: string;
  /** What the person calls the product. */
  readonly productName?: string | undefined;
  /** What stands on the shelf, as the packs hold it. */
  readonly materials: readonly ShelfMaterial[];
  /** How much: the product wanted, or what there is of a material. */
  readonly scale: Scale;
  /** Temperature of the room, of the solutions and of the gas; 20 °C unless given. */
  readonly temperature?: TemperatureLike | undefined;
  /** Of the room, for the volume of gas; 1 atm where nothing is said. */
  readonly pressure?: PressureLike | undefined;
  /** Smallest steps of the display of the balance and of the measuring vessel; 0.1 g and 1 mL unless given. */
  readonly readability?: { readonly mass?: MassLike | undefined; readonly volume?: VolumeLike | undefined } | undefined;
  /** `false` keeps a product that stays dissolved in its filtered liquor, for a step that takes it as a solution; `true` asks for crystals of what gives only a syrup, too; unless given, all but that is brought out and dried. */
  readonly isolate?: boolean | undefined;
  /** The kind of preparation; read from the equation unless given. */
  readonly procedure?: ProcedureKind | undefined;
  /** The room, for the pace of adding what gives off gas; 30 m3 with 2 air changes an hour unless given. */
  readonly room?:
    | { readonly volume?: VolumeLike | undefined; readonly airChanges?: QuantityLike<"time^-1"> | undefined }
    | undefined;
  /** Codes of forbidden combinations that are known and meant. */
  readonly acknowledge?: readonly string[] | undefined;
  /** Water per water that just dissolves a feed; 3 unless given. */
  readonly waterFactor?: number | undefined;
  /** Total volume of vessel per volume of liquid, against foam; chosen by what happens unless given. */
  readonly vesselFactor?: number | undefined;
  /** Washing water: how often and how much. */
  readonly washing?: Washing | undefined;
  /** Other formulas the product may turn out to have, beside the ones the library knows of. */
  readonly alternatives?: readonly string[] | undefined;
  /** Share of the theory that may stay on filters and vessels before a low yield needs a reason; 10 % unless given, 2 % in a crucible. */
  readonly handlingLoss?: QuantityLike<"number" | "mass fraction", `${number} %`> | undefined;
}

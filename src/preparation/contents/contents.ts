// What stands in a vessel between two operations, as a person may look at it.

import { lazily, withLazy } from "../../foundation/lazy";
import { PRINTING } from "../../foundation/readable";
import type { Quantity } from "../../quantity";
import { isGas } from "../reaction/fluids";
import { keyed } from "../reaction/species";
import type { Books } from "./books";
import { type Complexed, complexesOf } from "./complexes";
import { type Entry, massOf } from "./entry";
import { type Asked, phOf } from "./equilibrium";

/** A solid in a vessel. */
export interface SolidInside {
  /** As printed, crystal water included. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** In formula units. */
  readonly amount: Quantity<"amount of substance">;
  /** Dry, crystal water included. */
  readonly mass: Quantity<"mass">;
  /** How it came to be a solid in this vessel. */
  readonly origin: "put in" | "precipitated" | "crystallised" | "from the liquor" | "left by heat";
}

/** A substance dissolved in a vessel, in formula units without crystal water. */
export interface SoluteInside {
  /** As printed, without crystal water. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** In formula units. */
  readonly amount: Quantity<"amount of substance">;
}

/** The contents of a vessel. */
export interface Contents {
  /** Liquid water; crystal water of the solids is in the solids. */
  readonly water: Quantity<"mass">;
  /** Of the whole contents. */
  readonly temperature: Quantity<"temperature">;
  /** Everything that is in the vessel. */
  readonly mass: Quantity<"mass">;
  /** No more than this, since salts make a liquor denser than water; undefined where there is none, or how much is not known, and above 100 °C. */
  readonly volume: Quantity<"volume"> | undefined;
  /** At the equilibrium of the mixture; undefined where the model does not reach. */
  readonly pH: Quantity<"number"> | undefined;
  /** Solids that lie in the vessel, with their crystal water. */
  readonly solids: readonly SolidInside[];
  /** What is in solution, without crystal water. */
  readonly dissolved: readonly SoluteInside[];
  /** Metals that a ligand holds in solution, by the formula or by the equilibrium of the mixture. */
  readonly complexes: readonly Complexed[];
  /** Given off so far, and no longer there; of what comes in or leaves as gas, the gas itself. */
  readonly gas: readonly SoluteInside[];
  /** What the packs contain beside their forms, and nobody knows what it is. */
  readonly other: Quantity<"mass">;
  /** What is not known of these contents, and what is missing for it. */
  readonly unknown: readonly string[];
}

const solute = ({ matter: { name }, amount }: Entry): SoluteInside =>
  keyed("formula", { formula: name, amount: amount.to("mol") });

/** What the view is read from. */
interface Vessel {
  readonly books: Books;
  readonly asked: Asked;
  readonly mass: Quantity;
  readonly volume: Quantity;
}

const BOILS = 100;
const isLiquid = (temperature: Quantity<"temperature">): boolean => temperature.toNumber("°C") <= BOILS;

export function viewOf(pot: Vessel): Contents {
  const { water, temperature, other } = pot.books;
  return withLazy(
    { water: water as Quantity<"mass">, temperature, other: other as Quantity<"mass"> },
    {
      mass: () => pot.mass as Quantity<"mass">,
      volume: () =>
        pot.books.waterMissing.length === 0 && water.isPositive() && isLiquid(temperature)
          ? (pot.volume.named({
              symbol: "V",
              label: "volume, at most",
              assumption: "salts make the liquid denser than water, so its volume is no larger than this",
            }) as Quantity<"volume">)
          : undefined,
      pH: () => phOf(pot),
      solids: () =>
        pot.books.solids.map((one) =>
          keyed("formula", {
            formula: one.matter.name,
            amount: one.amount.to("mol"),
            mass: massOf(one) as Quantity<"mass">,
            origin: one.origin,
          }),
        ),
      dissolved: () => pot.books.dissolved.map(solute),
      complexes: () => complexesOf(pot),
      gas: () => pot.books.gas.map(solute),
      unknown: () => [...pot.books.waterMissing, ...pot.books.unknown],
    },
  );
}

/** What moves in or out of a vessel: gas on its way is booked as a thing put in, and handed out as the gas it is. */
export function movedView({ books, contents }: Vessel & { readonly contents: Contents }): Contents {
  const { solids, dissolved, water } = books;
  const isGasAlone = solids.length > 0 && dissolved.length === 0 && water.isZero();
  if (!isGasAlone || !solids.every(({ matter }) => isGas(matter.formula, true))) return contents;
  return lazily<Contents, Omit<Contents, "solids" | "gas">, object>(
    { solids: () => [], gas: () => solids.map(solute) },
    contents,
    PRINTING,
  );
}

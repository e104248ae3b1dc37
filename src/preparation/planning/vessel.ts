// The gas that is given off and the vessel that holds the batch while it foams.

import { densityOfWater, gasVolume, type PressureLike, type TemperatureLike } from "../../amount";
import type { Formula } from "../../formula";
import { type Quantity, quantity, sum } from "../../quantity";
import { PLANNING } from "../data/planning";
import { VESSELS } from "../data/vessels";
import type { Formed } from "../reaction/account";
import { gasRow } from "../reaction/fluids";
import { formulaFrom } from "../reaction/species";
import { exact } from "./exact";

/** A gas that the batch gives off. */
export interface GasEvolved {
  /** As printed, with subscripts. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** When the reaction runs to its end. */
  readonly amount: Quantity<"amount of substance">;
  /** At the temperature and pressure of the plan. */
  readonly volume: Quantity<"volume">;
  /** True for gases that need a hood at any scale. */
  readonly hood: boolean;
  /** Share of the air of the room it should stay under, from memory of national lists; undefined where none is known. */
  readonly limit: Quantity<"number"> | undefined;
}

/** The vessel that the batch asks for. */
export interface Vessel {
  /** Liquid with everything in it, before foam. */
  readonly liquid: Quantity<"volume">;
  /** Volume of vessel for each volume of liquid, against foam. */
  readonly vesselFactor: number;
  /** Room the batch needs, foam included. */
  readonly needed: Quantity<"volume">;
  /** The smallest usual vessel that gives it; undefined above the largest one listed. */
  readonly smallest: Quantity<"volume"> | undefined;
  /** Reason of the factor, in words. */
  readonly why: string;
  /** A solid goes into acid or gives off gas as it dissolves: its foam is allowed for. */
  readonly intoAcid: boolean;
}

export function gasesOf(
  products: readonly { formed: Formed; matter: Formula; gas: boolean }[],
  conditions: { temperature: TemperatureLike; pressure: PressureLike },
): GasEvolved[] {
  return products
    .filter(({ gas }) => gas)
    .map(({ formed, matter }) => {
      const row = gasRow(matter);
      return {
        formula: formed.formula,
        key: formed.key,
        amount: formed.amount,
        volume: gasVolume(formed.amount, { ...conditions, ...(row && { gas: formulaFrom(row.formula) }) }),
        hood: row?.hood === true,
        limit: row?.limit === undefined ? undefined : exact(row.limit.share),
      };
    });
}

/** What rounding to the balance puts over the brim is not over it. */
const FULL = 1.002;

/** The smallest usual vessel with so much room; undefined above the largest one listed. */
export function smallestFor(needed: Quantity): Quantity<"volume"> | undefined {
  const millilitres = needed.toNumber("mL");
  const size = VESSELS.flatMap((row) => row.sizes).find((s) => s * FULL >= millilitres);
  return size === undefined
    ? undefined
    : (quantity({ value: size, unit: "mL" }).to(size < 1000 ? "mL" : "L") as Quantity<"volume">);
}

/** The vessel for a batch of the given mass in the pot. */
export function vesselFor(
  inThePot: readonly Quantity[],
  temperature: TemperatureLike,
  gas: readonly GasEvolved[],
  intoAcid: boolean,
  vesselFactor: number | undefined,
): Vessel {
  const liquid = sum(inThePot).dividedBy(densityOfWater(temperature)).to("L").named({
    symbol: "V(liquid)",
    label: "liquid in the vessel",
    rule: "volume of liquid <= mass of everything / density of water",
    assumption: "salts make the liquid denser than water, so its volume is no larger than this",
  });
  const [factor, why] =
    vesselFactor !== undefined
      ? [vesselFactor, "as asked for"]
      : gas.length === 0
        ? [Number(PLANNING.foamWithoutGas.value), "no gas: room to stir"]
        : intoAcid
          ? [Number(PLANNING.foamIntoAcid.value), "carbonate or metal into acid: at least three times the liquid"]
          : [
              Number(PLANNING.foamWithGas.value),
              "gas with portionwise addition and stirring: at least twice the liquid",
            ];
  const needed = liquid
    .times(factor)
    .named({ symbol: "V(vessel)", label: "vessel, foam included", rule: "vessel = liquid × foam factor" });
  return {
    liquid,
    vesselFactor: factor,
    needed,
    smallest: smallestFor(needed),
    intoAcid,
    why: `${why} (common practice, no source)`,
  };
}

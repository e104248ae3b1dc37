// The gas that comes off and the vessel that holds the batch while it foams.
import { densityOfWater, gasVolume, type PressureLike, type TemperatureLike } from "../amount";
import type { BalancedEquation } from "../equation";
import { type Quantity, quantity, sum } from "../quantity";
import type { Formed } from "./account";

/** Compounds that leave a pot as gas at bench temperatures, by Hill formula. Water vapour is not counted. */
const GASES: readonly string[] = [
  "CO2",
  "H2",
  "O2",
  "N2",
  "NO",
  "NO2",
  "N2O",
  "Cl2",
  "ClH",
  "O2S",
  "H2S",
  "H3N",
  "CO",
  "CHN",
  "CH4",
  "C2H2",
  "BrH",
  "HI",
  "FH",
  "H3P",
];

/** Gases that belong under a hood whatever the quantity. */
const HOOD: readonly string[] = ["NO", "NO2", "Cl2", "ClH", "O2S", "H2S", "CO", "CHN"];

export interface GasEvolved {
  readonly formula: string;
  readonly amount: Quantity<"amount of substance">;
  readonly volume: Quantity<"volume">;
  /** True for gases that need a hood at any scale. */
  readonly hood: boolean;
}

export interface Vessel {
  /** Liquid with everything in it, before foam. */
  readonly liquid: Quantity<"volume">;
  readonly foamFactor: number;
  /** Room the batch needs, foam included. */
  readonly needed: Quantity<"volume">;
  /** The smallest usual vessel that gives it; undefined above the largest one listed. */
  readonly smallest: Quantity<"volume"> | undefined;
  readonly why: string;
}

/** Usual sizes of beakers, jars and buckets, in mL (common practice, no source). */
const SIZES = [50, 100, 250, 400, 600, 800, 1000, 2000, 3000, 5000, 10_000, 15_000, 20_000, 30_000, 50_000, 100_000];

/** Gases that water holds on to: they stay in a wet batch. */
const KEPT_BY_WATER = new Set(["ClH", "H3N", "BrH", "HI", "FH"]);

/** Does this species leave as gas? A phase written in the equation decides; else the lists above. */
export function isGas(formula: BalancedEquation["reactants"][number]["formula"], wet: boolean): boolean {
  if (formula.phase !== undefined) return formula.phase === "g";
  const hill = formula.compositionText;
  return GASES.includes(hill) && !(wet && KEPT_BY_WATER.has(hill));
}

export function gasesOf(
  products: readonly { formed: Formed; hill: string; gas: boolean }[],
  conditions: { temperature: TemperatureLike; pressure: PressureLike },
): GasEvolved[] {
  return products
    .filter(({ gas }) => gas)
    .map(({ formed, hill }) => ({
      formula: formed.formula,
      amount: formed.amount,
      volume: gasVolume(formed.amount, { ...conditions, gas: hill === "H3N" ? "NH3" : hill }),
      hood: HOOD.includes(hill),
    }));
}

/** The vessel for a batch of the given mass in the pot. */
export function vesselFor(
  inThePot: readonly Quantity[],
  temperature: TemperatureLike,
  gas: readonly GasEvolved[],
  intoAcid: boolean,
  foamFactor: number | undefined,
): Vessel {
  const liquid = sum(inThePot).dividedBy(densityOfWater(temperature)).to("L").named({
    symbol: "V(liquid)",
    label: "liquid in the vessel",
    rule: "volume of liquid <= mass of everything / density of water",
    assumption: "salts make the liquid denser than water, so its volume is no larger than this",
  });
  const [factor, why] =
    foamFactor !== undefined
      ? [foamFactor, "as asked for"]
      : gas.length === 0
        ? [1.5, "no gas: room to stir"]
        : intoAcid
          ? [3, "carbonate or metal into acid: at least three times the liquid"]
          : [2, "gas with portionwise addition and stirring: at least twice the liquid"];
  const needed = liquid
    .times(factor)
    .named({ symbol: "V(vessel)", label: "vessel, foam included", rule: "vessel = liquid × foam factor" });
  const millilitres = needed.in("mL").toNumber();
  const size = SIZES.find((s) => s >= millilitres);
  return {
    liquid,
    foamFactor: factor,
    needed,
    smallest: size === undefined ? undefined : quantity({ value: size, unit: "mL" }).to(size < 1000 ? "mL" : "L"),
    why: `${why} (common practice, no source)`,
  };
}

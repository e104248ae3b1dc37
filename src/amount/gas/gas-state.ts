// The state of a gas as given or assumed: temperature, its own pressure, the correction, and the sentence that
// says so on every result.

import type { Fields } from "../../foundation/argument";
import { ATMOSPHERE_TEXT } from "../../foundation/standards";
import { list } from "../../foundation/wording";
import { type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import {
  type FormulaLike,
  formulaOfArgument,
  grouped,
  inSymbol,
  oneOf,
  type PressureLike,
  positive,
  type TemperatureLike,
} from "../argument";
import { AmountError } from "../error";
import { vapourPressureOfWater } from "../jar/water";
import { molarGasConstant } from "./constants";
import { secondVirialCoefficient } from "./virial";
import { mustBeGas } from "./volatility";

/** Conditions of a gas that is measured, whichever it is. */
export const MEASURED_GAS = { temperature: true, pressure: true, collectedOver: true } as const satisfies Fields<
  Pick<GasConditions, "temperature" | "pressure" | "collectedOver">
>;

export const NAMED_GAS = { ...MEASURED_GAS, model: true } as const satisfies Fields<Omit<GasConditions, "gas">>;

const GAS = { ...NAMED_GAS, gas: true } as const satisfies Fields<GasConditions>;

/** What a gas is measured at. */
export interface GasConditions {
  /** Temperature of the gas; 25 °C unless given. */
  readonly temperature?: TemperatureLike | undefined;
  /** Pressure of the gas; with `collectedOver: "water"` the total pressure. 101.325 kPa unless given. */
  readonly pressure?: PressureLike | undefined;
  /** The gas stands over water and carries its vapour. */
  readonly collectedOver?: "water" | undefined;
  /** Which gas it is, for the name of the result; needed for a virial correction. */
  readonly gas?: FormulaLike | undefined;
  /** `"ideal"` unless given; `"second virial"` adds the second virial coefficient of `gas`. */
  readonly model?: "ideal" | "second virial" | undefined;
}

/** @internal */
export interface State {
  readonly T: Quantity;
  /** Pressure of the gas itself, without water vapour. */
  readonly p: Quantity;
  readonly name: string;
  readonly words: string;
  readonly B: Quantity | undefined;
}

/** Above this share of the molar volume a second coefficient alone is no longer a correction but a guess. */
const LARGEST_CORRECTION = "0.05";

/** Temperature of a gas where none is given. */
const ROOM = "25 °C";

function temperatureOf(like: TemperatureLike | undefined): Quantity {
  const given = like === undefined ? quantity(ROOM) : expectDimension(like, "temperature", "temperature");
  const T = given.to("K").named({ symbol: given.symbol ?? "T", label: given.label ?? "temperature of the gas" });
  if (T.isPositive()) return T;
  throw new AmountError("amount.not-positive", `a gas at ${given} is below absolute zero`, {
    details: { argument: "temperature", value: String(given) },
  });
}

/** @internal The conditions as given or assumed, and the sentence that says so. */
export function stateOf(conditions: GasConditions, pressureNeeded = true): State {
  const { temperature, pressure, collectedOver, gas, model = "ideal" } = grouped(conditions, GAS);
  oneOf(model, ["ideal", "second virial"], "model of a gas");
  if (collectedOver !== undefined) oneOf(collectedOver, ["water"], "liquid a gas is collected over here");
  const T = temperatureOf(temperature);
  const formula = gas === undefined ? undefined : formulaOfArgument(gas);
  const name = formula === undefined ? "" : `(${inSymbol(formula)})`;
  const total = positive(pressure ?? ATMOSPHERE_TEXT, "pressure", "pressure", {
    symbol: "p",
    label: "pressure of the gas",
  });
  const stated = [
    temperature === undefined ? "temperature" : "",
    pressure === undefined && pressureNeeded ? "pressure" : "",
  ];
  const unstated = list(stated.filter((word) => word !== ""));
  const p = collectedOver === "water" ? withoutVapour(total, T) : total;
  if (pressureNeeded) mustBeGas(formula, T, p);
  const B = model === "second virial" ? correction(formula, T, p) : undefined;
  const words = [
    `${B === undefined ? "ideal" : "real"} gas at ${T.to("°C").format({ uncertainty: "none" })}`,
    pressureNeeded ? ` and ${total.format({ uncertainty: "none" })}` : "",
    collectedOver === "water" ? ", standing over water" : "",
    unstated === "" ? "" : ` (${unstated} taken, since none was given)`,
  ].join("");
  return { T, p, name, words, B };
}

function withoutVapour(total: Quantity, T: Quantity): Quantity {
  const vapour = vapourPressureOfWater(T);
  const p = total.minus(vapour);
  if (!p.isPositive()) {
    throw new AmountError(
      "amount.not-possible",
      `water boils at ${T.to("°C")} under ${total}: no gas is left over it`,
      {
        details: { pressure: String(total), vapourPressure: String(vapour) },
      },
    );
  }
  return p.named({ symbol: "p(gas)", rule: "pressure of the gas = total pressure - vapour pressure of water" });
}

function correction(formula: ReturnType<typeof formulaOfArgument> | undefined, T: Quantity, p: Quantity): Quantity {
  if (formula === undefined) {
    throw new AmountError("amount.missing-formula", "a virial correction needs to know which gas", {
      hint: 'add gas: "CO2"',
    });
  }
  const B = secondVirialCoefficient(formula, T);
  const share = B.times(p).dividedBy(molarGasConstant().times(T));
  const size = share.isPositive() ? share : share.negated();
  if (size.compare(LARGEST_CORRECTION) > 0) {
    throw new AmountError(
      "amount.outside-range",
      `at ${p} the second virial coefficient alone no longer gives the volume`,
      {
        hint: "use a pressure near that of the air",
        details: { quantity: "pressure", correction: size.format({ significant: 2 }) },
      },
    );
  }
  return B;
}

/** @internal R T / p, with B added where asked. */
export const molarVolume = ({ T, p, B }: State): Quantity => {
  const ideal = molarGasConstant().times(T).dividedBy(p);
  return B === undefined ? ideal : ideal.plus(B);
};

// Reading back whatever the library wrote: one door for every kind of record.
import { type BalancedEquation, balancedEquationFromJSON, type Equation, equationFromJSON } from "./equation";
import { type Formula, formulaFromJSON } from "./formula";
import { attempt, PreparativeError, type Result } from "./foundation/error";
import { type Plan, planFromJSON, type Run, runFromJSON } from "./preparation";
import { type Quantity, quantityFromJSON } from "./quantity";

/** Whatever has a record of its own. */
export type Recorded = Quantity | Formula | Equation | BalancedEquation | Plan | Run;

/**
 * The value behind any record that a `toJSON` of the library wrote.
 *
 * @param data - the record, parsed
 * @returns an equal value; a quantity comes back as an input (its graph is not carried), a plan or run is made again
 * @throws {PreparativeError} `json.unknown-record`; and the codes of the reader for its type
 * @category Records
 * @example
 * String(fromJSON(JSON.parse(JSON.stringify(quantity("12.5(2) g"))))) // => "12.50 ± 0.20 g"
 * String(fromJSON(JSON.parse(JSON.stringify(balance("H2 + O2 -> H2O"))))) // => "2 H2 + O2 -> 2 H2O"
 */
export function fromJSON(data: unknown): Recorded {
  const type = typeof data === "object" && data !== null ? (data as { type?: unknown }).type : undefined;
  switch (type) {
    case "quantity":
      return quantityFromJSON(data);
    case "formula":
      return formulaFromJSON(data as Parameters<typeof formulaFromJSON>[0]);
    case "equation":
      return equationFromJSON(data as Parameters<typeof equationFromJSON>[0]);
    case "balanced equation":
      return balancedEquationFromJSON(data as Parameters<typeof balancedEquationFromJSON>[0]);
    case "plan":
      return planFromJSON(data);
    case "run":
      return runFromJSON(data);
    default:
      throw new PreparativeError(
        "json.unknown-record",
        `no record of the library has the type ${JSON.stringify(type)}`,
        {
          hint: "pass what toJSON gave, parsed",
        },
      );
  }
}

/**
 * As `fromJSON`, but gives the refusal back as data.
 *
 * @category Records
 * @example
 * tryFromJSON({ type: "poem" }).ok // => false
 */
export const tryFromJSON = (data: unknown): Result<Recorded> => attempt(() => fromJSON(data));

// Reading back whatever the library wrote: one door for every kind of record.
import {
  type BalancedEquation,
  balancedEquationFromJSON,
  type Equation,
  equationFromJSON,
  ionicEquationFromJSON,
  overallEquationFromJSON,
} from "./equation";
import { type Facts, factsFromJSON } from "./facts";
import { type Formula, formulaFromJSON } from "./formula";
import { isRecord, shown } from "./foundation/argument";
import { attempt, type ErrorWithCode, PreparativeError, type Result } from "./foundation/error";
import {
  type Chain,
  chainFromJSON,
  type Plan,
  planFromJSON,
  type Run,
  runFromJSON,
  type Stock,
  stockFromJSON,
} from "./preparation";
import { revived } from "./preparation/internal";
import { type Quantity, quantityFromJSON } from "./quantity";
import { type Route, type RouteErrorDetails, routeFromJSON } from "./route";
import type { SheetRefusal } from "./sheet";
import { type Solubility, solubilityFromJSON } from "./solubility";
import { type Substance, type SubstanceRecord, substanceFromJSON } from "./substance";

/** Whatever has a record of its own; ionic and overall equations are balanced equations. */
export type Recorded =
  | Quantity
  | Formula
  | Equation
  | BalancedEquation
  | Substance
  | Solubility
  | Plan
  | Run
  | Chain
  | Stock
  | Route
  | Facts;

/** The reader of each type of record; each checks what it is given. */
const READERS: Readonly<Record<string, (record: never) => Recorded>> = {
  quantity: quantityFromJSON,
  formula: formulaFromJSON,
  equation: equationFromJSON,
  "balanced equation": balancedEquationFromJSON,
  "ionic equation": ionicEquationFromJSON,
  "overall equation": overallEquationFromJSON,
  substance: (record: object) => substanceFromJSON(revived(record) as SubstanceRecord),
  solubility: solubilityFromJSON,
  plan: planFromJSON,
  run: runFromJSON,
  chain: chainFromJSON,
  stock: stockFromJSON,
  route: routeFromJSON,
  facts: factsFromJSON,
};

/**
 * The value behind any record that a `toJSON` of the library wrote.
 *
 * @param data - the record, parsed
 * @returns an equal value; a quantity comes back as an input (its graph is not carried), a plan, run or chain is made
 *   again: its `moved` tells which figures this release of the library computes otherwise
 * @throws {PreparativeError} `json.unknown-record`; and the codes of the reader for its type, also for a record that a
 *   newer release wrote in a layout of its own
 * @category Records
 * @example
 * String(fromJSON(JSON.parse(JSON.stringify(quantity("12.5(2) g"))))) // => "12.50 ± 0.20 g"
 * String(fromJSON(JSON.parse(JSON.stringify(balance("H2 + O2 -> H2O"))))) // => "2 H2 + O2 -> 2 H2O"
 */
export function fromJSON(data: unknown): Recorded {
  const type = isRecord(data) ? data["type"] : undefined;
  if (typeof type === "string" && Object.hasOwn(READERS, type)) return READERS[type]!(data as never);
  throw new PreparativeError("json.unknown-record", `no record of the library has the type ${shown(type)}`, {
    hint: "pass what toJSON gave, parsed",
  });
}

/**
 * Why a record was refused: it is none of the library's, or what it records cannot be read.
 *
 * @category Errors
 * @example
 * const outcome = tryFromJSON({ type: "poem" });
 * outcome.ok ? "" : outcome.error.code // => "json.unknown-record"
 */
export type RecordRefusal = ErrorWithCode<"json.unknown-record" | SheetRefusal["code"], RouteErrorDetails>;

/**
 * As `fromJSON`, but gives the refusal back as data.
 *
 * @category Records
 * @example
 * tryFromJSON({ type: "poem" }).ok // => false
 */
export const tryFromJSON = (data: unknown): Result<Recorded, RecordRefusal> => attempt(() => fromJSON(data));

// How much liquor a filter cake holds, by kind of solid: planning values with their spread, shown as the assumption they
// are. Common practice, no source.

import { shown } from "../../foundation/argument";
import { type Quantity, quantity } from "../../quantity";
import { needChoice } from "../argument";
import { cite, type SourceKey } from "../data/sources";
import { SolubilityError } from "../error";

/** Kinds of cake by how much liquor they hold. */
export type KindOfSolid =
  | "coarse crystals"
  | "fine crystals"
  | "dense precipitate"
  | "basic carbonate"
  | "hydroxide gel";

/** Liquor held per gram of dry solid, mL/g: on a suction filter, and as sludge that has settled. */
interface RetainedRow {
  readonly low: string;
  readonly high: string;
  readonly settled: readonly [low: string, high: string];
  readonly source: SourceKey;
}

const RETAINED: Readonly<Record<KindOfSolid, RetainedRow>> = {
  "coarse crystals": { low: "0.1", high: "0.3", settled: ["2", "4"], source: "commonPractice" },
  "fine crystals": { low: "0.3", high: "0.7", settled: ["3", "5"], source: "commonPractice" },
  "dense precipitate": { low: "0.5", high: "1", settled: ["3", "6"], source: "commonPractice" },
  "basic carbonate": { low: "1.5", high: "4", settled: ["5", "15"], source: "commonPractice" },
  "hydroxide gel": { low: "5", high: "15", settled: ["10", "30"], source: "commonPractice" },
};

/**
 * Liquor a gram of dry solid holds, as a planning value with its spread; a gravity filter holds about double, settled sludge more.
 *
 * @param kind - kind of solid
 * @param filter - `"suction"` (default), `"gravity"`, or `"settled"` for sludge from which the liquor is poured off
 * @returns mL of liquor per gram of dry solid, rectangular over the usual range
 * @throws {SolubilityError} `solubility.bad-option`, `solubility.missing-option` for a kind without a planning value
 * @source common practice, no source; measure (wet − dry) / density instead when it matters
 * @category Washing
 * @example
 * retainedLiquor("basic carbonate").in("mL/g").toString() // => "2.75"
 */
export function retainedLiquor(
  kind: KindOfSolid,
  filter: "suction" | "gravity" | "settled" = "suction",
): Quantity<"specific volume"> {
  const row = typeof kind === "string" && Object.hasOwn(RETAINED, kind) ? RETAINED[kind] : undefined;
  if (row === undefined) {
    throw new SolubilityError("solubility.missing-option", `no planning value for ${shown(kind)}`, {
      hint: `one of: ${Object.keys(RETAINED).join(", ")}; or give retainedLiquorPerGram`,
    });
  }
  needChoice(filter, "filter", ["suction", "gravity", "settled"]);
  const factor = filter === "gravity" ? 2 : 1;
  const [least, most] = filter === "settled" ? row.settled : [row.low, row.high];
  const [low, high] = [Number(least) * factor, Number(most) * factor];
  return quantity(
    { value: String((low + high) / 2), unit: "mL/g", halfWidth: String((high - low) / 2), distribution: "rectangular" },
    {
      symbol: "v(ret)",
      label: `liquor retained per gram of dry solid (${kind}, ${filter})`,
      source: cite(row.source),
      assumption: `a ${filter === "settled" ? "sludge" : "cake"} of ${kind} holds ${low} to ${high} mL of liquor per gram`,
    },
  );
}

// The bench sheet: one preparation on paper, so that another person can follow it safely. Every figure is the plan's or
// the run's own; this layer only chooses words, order and digits.
import type { Fields } from "../foundation/argument";
import { attempt, type Result } from "../foundation/error";
import type { Plan, Run } from "../preparation";
import { render, type SheetFormat } from "./document";
import { FORMATS, guard, SheetError } from "./error";
import { planBlocks } from "./plan-blocks";
import { runBlocks } from "./run-blocks";

/** How a sheet is written. */
export interface SheetOptions {
  /** Text of 78 columns unless given. */
  readonly format?: SheetFormat | undefined;
}

const OPTIONS = { format: true } as const satisfies Fields<SheetOptions>;

/**
 * A preparation on paper: what to weigh, do, expect and mind; for a run, what changed and what came out.
 *
 * @param of - a plan or a run
 * @param options - `format`: "text" (78 columns, the default), "markdown" or "html"
 * @returns the sheet as text in that format
 * @throws {SheetError} `sheet.format`, `sheet.unknown-option`, `sheet.subject`
 * @category Sheet
 * @example
 * const plan = planPreparation({
 *   equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
 *   product: "CaCO3",
 *   materials: [{ name: "de-icer", form: "CaCl2·2H2O" }, { name: "soda ash", form: "Na2CO3", excess: "5 %" }],
 *   scale: { product: "20 g" },
 * });
 * benchSheet(plan).split("\n")[0] // => "CaCO₃ from de-icer and soda ash"
 */
export function benchSheet(of: Plan | Run, options: SheetOptions = {}): string {
  guard.fields(options, OPTIONS);
  const { format = "text" } = options;
  guard.choice(format, "format", FORMATS);
  if (of?.kind === "plan") return render(planBlocks(of), format);
  if (of?.kind === "run") return render(runBlocks(of), format);
  throw new SheetError("sheet.subject", "a sheet is made from a plan or a run");
}

/**
 * As `benchSheet`, but gives the refusal back as data.
 *
 * @category Sheet
 * @example
 * tryBenchSheet({} as never).ok // => false
 */
export const tryBenchSheet = (of: Plan | Run, options: SheetOptions = {}): Result<string> =>
  attempt(() => benchSheet(of, options));

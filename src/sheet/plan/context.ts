// What the parts of a plan's sheet share: the plan, the words, and figures no finer than the instrument.
import type { Plan, ProcedureStep } from "../../preparation";
import { type Quantity, quantity } from "../../quantity";
import { about } from "../figures";
import type { SheetWords } from "../words";

/** A plan on its way to paper. */
export interface OnPaper {
  readonly plan: Plan;
  readonly words: SheetWords;
}

/** A mass or volume to the step of the instrument it is read on. */
export function asRead(plan: Plan, portion: Quantity): string {
  const { readability = {} } = plan.request;
  const step = portion.dimension === "mass" ? (readability.mass ?? "0.1 g") : (readability.volume ?? "1 mL");
  const { value, unit } = quantity(step as Quantity);
  return portion.format({ unit, decimals: value.decimalPlaces(), uncertainty: "none" });
}

/** A mass to three figures, and no finer than the balance. */
export function massOf(plan: Plan, mass: Quantity): string {
  const { value, unit } = quantity((plan.request.readability?.mass ?? "0.1 g") as Quantity);
  const shown = about(mass, unit);
  const decimals = /\.(\d+)/.exec(shown)?.[1]?.length ?? 0;
  return decimals <= value.decimalPlaces() ? shown : asRead(plan, mass);
}

/** Water that a step takes from the tap: what is put in that holds nothing else. */
export function waterOf({ operation, put }: ProcedureStep): Quantity | undefined {
  if (operation === "wash" || operation === "rinse") return undefined;
  const plain = put.filter(
    ({ water, solids, dissolved }) => water.isPositive() && solids.length + dissolved.length === 0,
  );
  return plain[0]?.water;
}

/** The steps as they are numbered on paper: all weighing is one. */
export function stepsOnPaper({ steps }: Plan): { readonly first: boolean; readonly rest: readonly ProcedureStep[] } {
  const rest = steps.filter(({ operation }) => operation !== "weigh");
  return { first: rest.length < steps.length, rest };
}

/** What is left of a product that handling takes its usual share of. */
export const leastExpected = ({ product, handlingLoss }: Plan): Quantity =>
  product.theoreticalYield.times(quantity("1").minus(handlingLoss));

/** What dry product to expect, as printed. */
export const rangeOf = (plan: Plan): { readonly low: string; readonly high: string } => ({
  low: massOf(plan, leastExpected(plan)),
  high: massOf(plan, plan.product.theoreticalYield),
});

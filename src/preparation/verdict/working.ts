// The working of a verdict: what was planned and found, and each finding with what speaks for it and what would decide.
import { isRecord } from "../../foundation/argument";
import type { Quantity } from "../../quantity";
import { PlanError } from "../error";
import { standsBesideInCrucible } from "../planning/in-the-crucible";
import type { Run } from "../run";
import type { Finding } from "./finding";

/** How a verdict follows. */
export interface VerdictWorking {
  /** What the run was judged by: theory, what was lost on the way, dry mass, yield. */
  readonly facts: readonly string[];
  /** Each finding, the likeliest first: what it says, the likelihood of what was measured if it is so, and the next step. */
  readonly findings: readonly string[];
  /** The first finding. */
  readonly result: string;
  /** All of it, for a board. */
  toString(): string;
}

const grams = (q: Quantity): string => q.to("g").format();

/** What speaks for a finding, in words. */
function grounds({ likelihood, weight }: Finding): string {
  if (likelihood === undefined) return `no measurement speaks for or against it; weight ${weight.toFixed(2)}`;
  return `likelihood ${likelihood.toFixed(2)} of what was measured if it is so; weight ${weight.toFixed(2)}`;
}

/** @internal Is it a run? */
export const isRun = (value: unknown): value is Run => isRecord(value) && value["kind"] === "run";

/**
 * How the verdict of a run follows: theory, losses and dry mass, and each finding with its likelihood and the next step.
 *
 * @param run - what `evaluateRun` gave
 * @returns the working as data; `.toString()` prints it
 * @throws {PlanError} `plan.request` for anything else
 * @category Yield
 * @example
 * const plan = planPreparation({
 *   equation: "CaCO3 -> CaO + CO2",
 *   product: "CaO",
 *   materials: [{ name: "whiting", form: "CaCO3" }],
 *   scale: { material: "whiting", portion: "100 g" },
 * });
 * workingOfVerdict(evaluateRun(plan, { dried: "70 g" })).facts[0] // => "theory: 56.03 g of CaO"
 */
export function workingOfVerdict(run: Run): VerdictWorking {
  if (!isRun(run)) throw new PlanError("plan.request", "expected a run", { hint: "pass what evaluateRun gave" });
  const { product, losses, expected, dryMass, percentYield, identity, dryness, verdict } = run;
  const beside = standsBesideInCrucible(run);
  const weighed = beside.isPositive() ? `(dry mass - ${grams(beside)})` : "dry mass";
  const facts = [
    `theory: ${product.theoreticalYield.to("g").format({ decimals: 2, uncertainty: "none" })} of ${product.formula}`,
    ...losses.map(({ text }) => `lost on the way: ${text}`),
    ...(losses.length > 0 ? [`expected after that: ${grams(expected)}`] : []),
    dryMass === undefined ? "no dry mass was taken" : `dry mass: ${grams(dryMass)}`,
    ...(percentYield === undefined ? [] : [`yield = ${weighed} / theory = ${String(percentYield)}`]),
    ...(dryness.constant === undefined ? [] : [`dried to constant mass: ${dryness.constant ? "yes" : "no"}`]),
    ...(identity === undefined ? [] : [`identity: ${identity.text}`]),
  ];
  const findings = verdict.map((one) => `${one.text} (${grounds(one)})${one.next === "" ? "" : `; next: ${one.next}`}`);
  const result = verdict[0]?.text ?? "nothing can be said";
  const text = (): string =>
    [
      "What was found",
      ...facts.map((line) => `  ${line}`),
      "What it may mean, the likeliest first",
      ...findings.map((line, i) => `  ${i + 1}. ${line}`),
    ].join("\n");
  return { facts, findings, result, toString: text };
}

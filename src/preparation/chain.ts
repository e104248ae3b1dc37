// Preparations one after the other: scaled back from what is wanted at the end, with one shopping list, one overall equation
// and one cost. What one step makes, the next one uses under the same name.
import { type OverallEquation, overallEquation } from "../equation";
import { type Fields, isRecord } from "../foundation/argument";
import { attempt, type Result } from "../foundation/error";
import { under } from "../foundation/facts";
import { frozen } from "../foundation/frozen";
import { recordHead } from "../foundation/record";
import { INSPECT, shownAs } from "../foundation/shown";
import { type Quantity, quantity } from "../quantity";
import { asMade, madeName, takenOf, takingAsMade } from "./chain/fitting";
import { costOfChain, inventoryOf } from "./chain/totals";
import type { Chain, ChainMaterial, ChainRecord, ChainRequest, ChainStep } from "./chain/types";
import { PlanError, type PlanRefusal } from "./error";
import { type Plan, planPreparation } from "./plan";
import { exact } from "./planning/exact";
import { type Figure, figure, type MovedFigure, movedSince, readFigures } from "./planning/figures";
import { guard } from "./request/argument";
import { inItsFacts, plain, STEP, taken } from "./request/door";
import { recordOf } from "./request/records";
import { revived } from "./request/revived";
import { shareOf } from "./shelf/strength";

const SCHEMA = 1;

type ChainParts = Pick<Chain, "request" | "plans" | "overall" | "overallMissing" | "inventory" | "cost" | "expected">;

/** A chain is small beside its plans: nothing of it waits until it is asked for. */
class ChainOfPlans implements Chain {
  /** What consoles call a chain, whatever a minifier makes of it. */
  static get name(): string {
    return "Chain";
  }

  readonly kind = "chain";
  declare readonly request: ChainRequest;
  declare readonly plans: readonly Plan[];
  declare readonly overall: OverallEquation | undefined;
  declare readonly overallMissing: string | undefined;
  declare readonly inventory: readonly ChainMaterial[];
  declare readonly cost: Chain["cost"];
  declare readonly expected: readonly Quantity<"mass">[];
  readonly moved: readonly MovedFigure[];

  constructor(parts: ChainParts, stored: readonly Figure[] | undefined) {
    Object.assign(this, frozen(parts));
    this.moved = frozen(movedSince(stored, () => this.figures()));
    Object.freeze(this);
  }

  get [Symbol.toStringTag](): string {
    return "Chain";
  }

  figures(): Figure[] {
    const { inventory, expected, plans, cost } = this;
    return [
      ...inventory.map(({ material, form, portion }) => figure(`${material} (${form}): portion`, portion)),
      ...expected.map((mass, i) => figure(`step ${i + 1}, ${plans[i]!.product.name}: expected mass`, mass)),
      ...(cost.total === undefined ? [] : [figure("cost", cost.total)]),
    ];
  }

  toString(): string {
    return `${this.expected.at(-1)} of ${this.plans.at(-1)!.product.name} in ${this.plans.length} steps`;
  }

  [INSPECT](): string {
    return shownAs("Chain", this);
  }

  toJSON(): ChainRecord {
    return { ...recordHead("chain", SCHEMA), request: plain(this.request), figures: this.figures() };
  }
}

const REQUEST = {
  steps: [{ ...STEP, expectedYield: true }],
  wanted: true,
  facts: true,
} as const satisfies Fields<ChainRequest>;

/** A request as it is kept: copied, frozen, of known fields. Each step is checked again by its plan. */
function takenChain(given: ChainRequest): ChainRequest {
  const request = taken(given);
  guard.fields(request, REQUEST);
  const { steps } = request;
  if (!Array.isArray(steps) || steps.length === 0 || steps.length > MOST_STEPS)
    throw new PlanError("plan.request", `a chain has 1 to ${MOST_STEPS} steps`);
  for (const [i, step] of steps.entries()) {
    guard.list(step.materials, `steps[${i}].materials`);
    if (step.productName !== undefined) guard.text(step.productName, `steps[${i}].productName`);
    guard.text(step.product, `steps[${i}].product`);
  }
  return request;
}

const MOST_STEPS = 20;

function yieldOf(step: ChainStep, i: number): Quantity {
  const share = shareOf(step.expectedYield ?? exact("100 %"), `expectedYield of step ${i + 1}`, "1", {
    symbol: `yield(${i + 1})`,
    label: `yield assumed in step ${i + 1}`,
  });
  if (share.isZero()) throw new PlanError("plan.not-positive", `step ${i + 1} yields nothing`);
  return share;
}

const revivedStep = (step: ChainStep): ChainStep => (isRecord(step) ? revived(step) : step);

/** The plan of one step for a mass or amount that must really come out of it. */
function planFor(step: ChainStep, wanted: Quantity, share: Quantity): Plan {
  const { expectedYield: _, ...request } = step;
  return planPreparation({ ...request, scale: { product: wanted.dividedBy(share) } });
}

/**
 * Plan a chain of preparations back from what is wanted at the end.
 *
 * @param request - steps, first to last, each a preparation without a scale; what is wanted of the last product
 * @returns a plan for each step, the shopping list, the overall equation, the cost, and the masses to expect
 * @throws {PlanError} `plan.unknown-option`; `plan.request` when a step does not use what the one before makes; and the codes of `planPreparation`
 * @category Planning
 * @example
 * const chain = planSequence({
 *   steps: [
 *     { equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl", product: "CaCO3", productName: "chalk",
 *       materials: [{ name: "de-icer", form: "CaCl2·2H2O" }, { name: "soda", form: "Na2CO3" }] },
 *     { equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }] },
 *   ],
 *   wanted: "56.077 g",
 * });
 * chain.inventory.map((line) => `${line.portion.format({ decimals: 0, uncertainty: "none" })} ${line.material}`) // => ["147 g de-icer", "106 g soda"]
 */
export function planSequence(request: ChainRequest): Chain {
  return chainOf(request);
}

const chainOf = (given: ChainRequest, stored?: readonly Figure[]): Chain =>
  inItsFacts(given, () => computed(takenChain(given), stored));

/** One plan for each step, made from the last to the first: each for as much as the one after it takes. */
function plansFor(steps: readonly ChainStep[], shares: readonly Quantity[], last: Quantity): Plan[] {
  const plans: Plan[] = [];
  let wanted = last;
  for (let i = steps.length - 1; i >= 0; i -= 1) {
    const step = steps[i]!;
    const plan = planFor(step, wanted, shares[i]!);
    plans.unshift(plan);
    const before = steps[i - 1];
    if (before !== undefined) wanted = takenOf(plan, step, before, i);
  }
  return plans;
}

function computed(request: ChainRequest, stored: readonly Figure[] | undefined): Chain {
  const steps = request.steps.map((step, i) => takingAsMade(step, request.steps[i - 1]));
  const shares = steps.map(yieldOf);
  const plans = plansFor(steps, shares, quantity(request.wanted as Quantity));
  const made = new Set(steps.slice(0, -1).map(madeName));
  const expected = plans.map((plan, i) => plan.product.theoreticalYield.times(shares[i]!).to("g"));
  const overall = attempt(() => overallEquation(plans.map((plan, i) => asMade(plan, steps[i - 1]))));
  const parts: ChainParts = {
    request,
    plans,
    overall: overall.ok ? overall.value : undefined,
    overallMissing: overall.ok ? undefined : overall.error.message.split("\n")[0],
    inventory: inventoryOf(plans, made),
    cost: costOfChain(plans, made, expected.at(-1)!),
    expected,
  };
  return new ChainOfPlans(parts, stored);
}

/**
 * As `planSequence`, but gives the refusal back as data.
 *
 * @category Planning
 * @example
 * tryPlanSequence({ steps: [], wanted: "1 g" }).ok // => false
 */
export const tryPlanSequence = (request: ChainRequest): Result<Chain, PlanRefusal> =>
  attempt(() => planSequence(request));

/**
 * A chain from the record that `toJSON` wrote.
 *
 * @throws {PlanError} `plan.json` for anything else; and the codes of `planSequence`
 * @category Planning
 * @example
 * const outcome = (() => { try { return chainFromJSON({}); } catch (error) { return isPreparativeError(error) && error.code; } })();
 * outcome // => "plan.json"
 */
export function chainFromJSON(data: unknown): Chain {
  const { request, figures } = recordOf<ChainRecord>(data, "chain", SCHEMA);
  if (request === undefined) throw new PlanError("plan.json", "not a chain record: no request");
  const steps = Array.isArray(request.steps) ? request.steps.map(revivedStep) : request.steps;
  return under(undefined, () => chainOf(revived({ ...request, steps }), readFigures(figures)));
}

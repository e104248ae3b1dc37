// Preparations one after the other: scaled back from what is wanted at the end, with one shopping list, one overall equation
// and one cost. What one step makes, the next one uses under the same name.
import { type BalancedEquation, type OverallEquation, overallEquation } from "../equation";
import type { Formula } from "../formula";
import { type Fields, isRecord } from "../foundation/argument";
import { attempt, type Result } from "../foundation/error";
import { type Facts, under } from "../foundation/facts";
import { frozen } from "../foundation/frozen";
import { type RecordHead, recordHead } from "../foundation/record";
import { INSPECT, shownAs } from "../foundation/shown";
import {
  type PriceDimension,
  type Quantity,
  type QuantityLike,
  quantity,
  sum,
  type UnitPriceDimension,
} from "../quantity";
import { PlanError, type PlanRefusal } from "./error";
import { type Plan, planPreparation } from "./plan";
import { exact } from "./planning/exact";
import { type Figure, figure, type MovedFigure, movedSince, readFigures } from "./planning/figures";
import { withForm } from "./reaction/in-form";
import { formulaFrom, sameCore } from "./reaction/species";
import { guard } from "./request/argument";
import { inItsFacts, plain, STEP, taken } from "./request/door";
import { settingOf } from "./request/read-setting";
import { recordOf } from "./request/records";
import type { PlanRequest, Scale } from "./request/request";
import { revived } from "./request/revived";
import { type CostLine, lacksPrice, ONE_CURRENCY } from "./shelf/cost";
import { shareOf } from "./shelf/strength";

/** One step: a preparation without its scale, which follows from the step after it. */
export interface ChainStep extends Omit<PlanRequest, "scale"> {
  /** Yield assumed; 100 % unless given. */
  readonly expectedYield?: QuantityLike<"number" | "mass fraction", `${number} %`> | undefined;
}

/** A chain to plan. */
export interface ChainRequest {
  /** Facts of the caller's own, for all steps that bring none. */
  readonly facts?: Facts | undefined;
  /** First to last. The product of a step is a material of the next, under its `productName` (its formula unless given). */
  readonly steps: readonly ChainStep[];
  /** Mass or amount wanted of the last product. */
  readonly wanted: Extract<Scale, { product: unknown }>["product"];
}

/** One line of the shopping list. */
export interface ChainMaterial {
  /** Name that the person gives it on the shelf. */
  readonly material: string;
  /** As printed, crystal water included. */
  readonly form: string;
  /** Over all steps. */
  readonly portion: Quantity<"mass"> | Quantity<"volume">;
  /** Steps that use it, from 1. */
  readonly steps: readonly number[];
}

/** A chain, planned. */
export interface Chain {
  /** What marks it among records. */
  readonly kind: "chain";
  /** What was asked, copied and frozen. */
  readonly request: ChainRequest;
  /** One plan for each step, first step first. */
  readonly plans: readonly Plan[];
  /** Of all steps together; or why there is none. */
  readonly overall: OverallEquation | undefined;
  /** Why there is no overall equation. */
  readonly overallMissing: string | undefined;
  /** What must be on the shelf; what one step makes for the next is not in it. */
  readonly inventory: readonly ChainMaterial[];
  /** What all steps together cost. */
  readonly cost: {
    readonly lines: readonly CostLine[];
    readonly total: Quantity<PriceDimension> | undefined;
    /** For each gram of the last product at the assumed yields. */
    readonly perGram: Quantity<UnitPriceDimension> | undefined;
    readonly missing: readonly string[];
  };
  /** Mass of each product at the assumed yields. */
  readonly expected: readonly Quantity<"mass">[];
  /** For a chain that was read back: its figures that this release of the library computes otherwise. */
  readonly moved: readonly MovedFigure[];
  /** The figures of the chain as plain data. */
  figures(): Figure[];
  /** What is made, in one line. */
  toString(): string;
  /** Plain data, as `fromJSON` reads it back. */
  toJSON(): ChainRecord;
}

/** A chain as plain data: the request it was made from, and its figures as they were then. */
export interface ChainRecord extends RecordHead<"chain"> {
  /** The request that makes the chain again. */
  readonly request: ChainRequest;
  /** As they were when the record was written. */
  readonly figures?: readonly Figure[];
}

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

const madeName = (step: ChainStep): string => step.productName ?? step.product;

function yieldOf(step: ChainStep, i: number): Quantity {
  const share = shareOf(step.expectedYield ?? exact("100 %"), `expectedYield of step ${i + 1}`, "1", {
    symbol: `yield(${i + 1})`,
    label: `yield assumed in step ${i + 1}`,
  });
  if (share.isZero()) throw new PlanError("plan.not-positive", `step ${i + 1} yields nothing`);
  return share;
}

/** What a step makes, in the form that water gives. */
const madeBy = ({ expectedYield: _, ...step }: ChainStep): Formula =>
  settingOf({ ...step, scale: { product: "1 mol" } }).product.formula;

/** A step that takes what the one before makes as that is written takes it in the form in which it is made. */
function takingAsMade(step: ChainStep, before: ChainStep | undefined): ChainStep {
  if (before === undefined) return step;
  const asked = formulaFrom(before.product);
  const made = madeBy(before);
  if (made.hasSameComposition(asked)) return step;
  const name = madeName(before);
  const materials = step.materials.map((one) =>
    one.name === name && one.strength === undefined && formulaFrom(one.form).hasSameComposition(asked)
      ? { ...one, form: made }
      : one,
  );
  return { ...step, materials };
}

/** What a step makes is what the next one takes, unless that makes a solution of it. */
function checkForm(step: ChainStep, before: ChainStep, i: number, name: string): void {
  const taken = step.materials.find((m) => m.name === name)!;
  const made = madeBy(before);
  if (taken.strength !== undefined || formulaFrom(taken.form).hasSameComposition(made)) return;
  throw new PlanError("plan.request", `step ${i + 1} takes ${name} as ${taken.form}, step ${i} makes ${made}`, {
    hint: "give the form that is made, or add what turns it into the other as a step",
  });
}

/** The equation of a plan with what the step before makes in the form in which that makes it, so that it cancels. */
function asMade({ equation }: Plan, before: ChainStep | undefined): BalancedEquation {
  if (before === undefined) return equation;
  const made = madeBy(before);
  const used = equation.reactants.find(({ formula }) => sameCore(formula, made))?.formula;
  return used === undefined || used.hasSameComposition(made) ? equation : withForm(equation, used, made);
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

function computed(request: ChainRequest, stored: readonly Figure[] | undefined): Chain {
  const steps = request.steps.map((step, i) => takingAsMade(step, request.steps[i - 1]));
  const shares = steps.map(yieldOf);
  const plans: Plan[] = [];
  let wanted: Quantity = quantity(request.wanted as Quantity);
  for (let i = steps.length - 1; i >= 0; i -= 1) {
    const plan = planFor(steps[i]!, wanted, shares[i]!);
    plans.unshift(plan);
    const before = steps[i - 1];
    if (before === undefined) break;
    const name = madeName(before);
    const used = plan.weighings.find((w) => w.material === name);
    if (used === undefined) {
      throw new PlanError("plan.request", `step ${i + 1} uses nothing that is called '${name}'`, {
        hint: `call the material that step ${i} makes '${name}', or give step ${i} another productName`,
      });
    }
    checkForm(steps[i]!, before, i, name);
    wanted = plan.materialBalance.supplied.find((s) => s.material === name)!.amount;
  }
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

function inventoryOf(plans: readonly Plan[], made: ReadonlySet<string>): ChainMaterial[] {
  const lines = new Map<string, { form: string; portions: Quantity[]; steps: number[] }>();
  plans.forEach((plan, i) => {
    for (const { material, form, portion } of plan.weighings) {
      if (made.has(material)) continue;
      const key = `${material}|${form}|${portion.dimension}`;
      const line = lines.get(key) ?? { form, portions: [], steps: [] };
      lines.set(key, line);
      line.portions.push(portion);
      line.steps.push(i + 1);
    }
  });
  return [...lines].map(([key, { form, portions, steps }]) => ({
    material: key.split("|")[0]!,
    form,
    portion: portions.length === 1 ? portions[0]! : sum(portions),
    steps,
  }));
}

function costOfChain(plans: readonly Plan[], made: ReadonlySet<string>, mass: Quantity): Chain["cost"] {
  const lines = plans.flatMap((plan) => plan.cost.lines.filter((line) => !made.has(line.material)));
  const isMade = (text: string): boolean => [...made].some((name) => text === lacksPrice(name));
  const found = new Set(plans.flatMap((plan) => plan.cost.missing.filter((text) => !isMade(text))));
  if (new Set(lines.map((l) => l.cost.dimension)).size > 1) found.add(ONE_CURRENCY);
  const missing = [...found];
  const total =
    missing.length > 0 || lines.length === 0
      ? undefined
      : sum(
          lines.map((l) => l.cost),
          { symbol: "cost", label: "cost of the chain", rule: "sum of the parts of the packs used in all steps" },
        );
  return {
    lines,
    total,
    perGram: total
      ?.dividedBy(mass)
      .named({ symbol: "cost per gram", rule: "cost of the chain / mass of the last product" }),
    missing,
  };
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

// A route with every step planned for the scale.

import type { BalancedEquation } from "../equation";
import { molarMass } from "../formula";
import { list } from "../foundation/wording";
import { type Plan, type PlanRequest, planPreparation, type ShelfMaterial } from "../preparation";
import { type DryProduct, dryProductOf } from "../preparation/internal";
import { type Quantity, quantity, sum } from "../quantity";
import { formulaFrom } from "./compound";
import { equationOf } from "./equation";
import { evidenceOf, type RouteEvidence } from "./evidence";
import { excessOf } from "./judge";
import { dissolvedForm } from "./liquor";
import type { Found, FoundStep } from "./search";
import { reactionOfCandidate } from "./trial-reaction";
import { isGoing, NO_TRIALS, type Trials, type Tried } from "./tried";

/** What a route is given. */
export interface Wish {
  readonly wanted: Quantity<"mass">;
  readonly temperature: PlanRequest["temperature"];
  /** What was run of it already. */
  readonly trials?: Trials | undefined;
}

/** What a step makes, as it is handed on: a solid in its form, or what the liquor is a solution of. */
export const productOf = ({ judgement, inLiquor }: FoundStep): string =>
  inLiquor ? dissolvedForm(judgement.product) : judgement.product;

/** The name under which the next step takes what a step makes. */
export const made = (step: FoundStep): string =>
  `${formulaFrom(productOf(step)).toUnicode()}${step.inLiquor ? " liquor" : ""}`;

const makerOf = ({ candidate }: FoundStep, i: number, all: readonly FoundStep[]): FoundStep | undefined =>
  all.find((one) => one.candidate.product.key === candidate.feeds[i]!.key && one.candidate !== candidate);

/** The equation with what is handed on as it is handed on. */
function equationIn(step: FoundStep, all: readonly FoundStep[]): BalancedEquation {
  const { candidate, judgement, materials } = step;
  const makers = materials.map((_, i) => makerOf(step, i, all));
  if (!step.inLiquor && makers.every((one) => one?.inLiquor !== true)) return judgement.equation;
  const feeds = materials.map(({ form }, i) => (makers[i] === undefined ? String(form) : productOf(makers[i])));
  return equationOf(candidate, productOf(step), feeds) ?? judgement.equation;
}

/** What a step before makes, by its plan: how much comes out, and the liquor that it is in. */
export interface Before {
  readonly plan: Plan;
  readonly yield: Quantity;
}
type BeforeOf = (step: FoundStep) => Before | undefined;

/** What was tried of a step. */
export const triedOf = (step: FoundStep, { trials = NO_TRIALS }: Pick<Wish, "trials">): Tried | undefined =>
  trials.of(reactionOfCandidate(step.candidate, productOf(step), step.inLiquor));

/** What came out of it, as it stands, and what it cost: nothing where a price is missing. */
function packOf({ plan, yield: share }: Before, dry: DryProduct | undefined): Pick<ShelfMaterial, "pack"> {
  const { cost, keptLiquor, product } = plan;
  if (cost.total === undefined) return {};
  const pure = product.theoreticalYield.times(share);
  const size = keptLiquor?.mass ?? (dry === undefined ? pure : pure.dividedBy(dry.assay)).to("g");
  return { pack: { size: textOf(size) as Quantity<"mass">, price: cost.total } };
}

/** What was titrated of a product, where it was. */
const assayOf = (tried: Tried | undefined): Quantity<"number"> | undefined =>
  isGoing(tried) ? tried.taught().assay : undefined;

/** What a step hands on dry, by the last vessel of its plan and by what was titrated of it; undefined of a liquor, and where none of it stands. */
export function dryOf(step: FoundStep, plan: Plan, tried: Tried | undefined): DryProduct | undefined {
  const after = plan.steps.at(-1)?.after;
  if (step.inLiquor || after === undefined) return undefined;
  return dryProductOf(after, formulaFrom(productOf(step)), assayOf(tried));
}

/** Part of a dry product that is known to be something else. */
export const foreignIn = (dry: DryProduct | undefined): number =>
  (dry?.also ?? []).reduce((all, { share }) => all + share.toNumber(""), 0);

const shown = (share: Quantity): string => share.format({ unit: "%", significant: 2, uncertainty: "none" });

/** What a step hands on, as a material of the next: as its plan says, and by what was titrated of it. */
function handedOn(from: FoundStep, number: number, before: BeforeOf, wish: Wish): ShelfMaterial {
  const past = before(from);
  const own = { name: made(from), form: productOf(from) };
  if (past === undefined) return { ...own, note: "from an earlier step" };
  const tried = triedOf(from, wish);
  const dry = dryOf(from, past.plan, tried);
  const said = (dry?.also ?? []).map(({ formula, share }) => `${shown(share)} of ${formula}`);
  const note = from.inLiquor
    ? `the liquor of step ${number} as it is`
    : ["from an earlier step", ...(said.length === 0 ? [] : [`it brings about ${list(said)}`])].join("; ");
  return { ...past.plan.asMaterial({ assay: assayOf(tried) }), ...own, ...packOf(past, dry), note };
}

/** A request for the plan of a step. */
export function requestOf(
  step: FoundStep,
  all: readonly FoundStep[],
  scale: PlanRequest["scale"],
  wish: Wish,
  before: BeforeOf,
): PlanRequest {
  const { candidate, materials } = step;
  const temperature = step.judgement.at ?? wish.temperature;
  const tried = triedOf(step, wish);
  const taken = materials.map((material, i): ShelfMaterial => {
    const from = makerOf(step, i, all);
    const own = from === undefined ? material : handedOn(from, all.indexOf(from) + 1, before, wish);
    const warm =
      step.judgement.at === undefined || i > 0
        ? {}
        : { note: `work at ${step.judgement.at}: in the cold another solid settles` };
    return { ...own, ...excessOf(candidate, i), ...warm };
  });
  return {
    equation: String(equationIn(step, all)),
    product: productOf(step),
    productName: made(step),
    materials: taken,
    scale,
    ...(step.inLiquor ? { isolate: false } : {}),
    ...(temperature === undefined ? {} : { temperature }),
    ...(isGoing(tried) ? { handlingLoss: tried.taught().allowance } : {}),
    ...(candidate.family.separate === "fire" ? { procedure: "thermal decomposition" as const } : {}),
  };
}

/** Part of the theory that stands dry at the end of a plan, or is in the liquor that is kept, usual losses taken off. */
function yieldOf(plan: Plan, tried: Tried | undefined): Quantity {
  const last = plan.steps.at(-1)?.after.solids.find(({ formula }) => formula === plan.product.name);
  const kept = plan.keptLiquor?.amount.dividedBy(plan.product.amount);
  const whole = kept ?? (last === undefined ? undefined : last.mass.dividedBy(plan.product.theoreticalYield));
  const share =
    whole === undefined ? (plan.feasibility.share ?? quantity("1")) : whole.toNumber() > 1 ? quantity("1") : whole;
  const naming = { symbol: "yield", label: `yield of ${plan.product.name}` };
  if (isGoing(tried)) {
    const left = share.minus(tried.taught().loss).to("");
    return (left.compare("1") > 0 ? quantity("1") : left).named({
      ...naming,
      rule: "what is solid at the end / theory, less what was lost when it was tried",
    });
  }
  return share
    .times(quantity("1").minus(plan.handlingLoss))
    .to("")
    .named({ ...naming, rule: "what is solid at the end / theory, less usual losses" });
}

/** Each step planned once for one gram: everything else is in proportion. */
interface Planned {
  readonly step: FoundStep;
  readonly unit: Plan;
  readonly yield: Quantity;
  readonly evidence: RouteEvidence;
  /** What was run of it already. */
  readonly tried: Tried | undefined;
}

/** A route before it has its place among the others. */
export interface Draft {
  readonly found: Found;
  readonly planned: readonly Planned[];
  /** Theoretical mass that each step is planned for. */
  readonly theory: readonly Quantity[];
  readonly wish: Wish;
}

/** A figure as its text: an input of its own, without the working of another plan. */
export const textOf = (q: Quantity): Quantity => quantity({ value: q.value.toPrecision(12), unit: q.unit });

/** Plan all steps of a route that was found; throws where a plan is refused. */
export function draftOf(found: Found, wish: Wish): Draft {
  const planned: Planned[] = [];
  const before: BeforeOf = (step) => {
    const one = planned.find((past) => past.step === step);
    return one === undefined ? undefined : { plan: one.unit, yield: one.yield };
  };
  for (const [i, step] of found.steps.entries()) {
    const last = i === found.steps.length - 1;
    const scale = { product: last ? wish.wanted : ("20 g" as const) };
    const unit = planPreparation(requestOf(step, found.steps, scale, wish, before));
    // how strong the liquor is nobody knows: it is brought out
    if (step.inLiquor && unit.keptLiquor === undefined && !last)
      return draftOf(
        { ...found, steps: found.steps.map((one) => (one === step ? { ...one, inLiquor: false } : one)) },
        wish,
      );
    const tried = triedOf(step, wish);
    planned.push({ step, unit, yield: yieldOf(unit, tried), evidence: evidenceOf(step.candidate, tried), tried });
  }
  // back from what is wanted: each step makes what the later ones take
  const theory: Quantity[] = [];
  for (let i = planned.length - 1; i >= 0; i -= 1) {
    const { step, yield: share } = planned[i]!;
    const name = made(step);
    const demands: Quantity[] = i === planned.length - 1 ? [wish.wanted] : [];
    for (let j = i + 1; j < planned.length; j += 1) {
      const { unit } = planned[j]!;
      const used = unit.materialBalance.supplied.find(({ material }) => material === name);
      if (used === undefined) continue;
      const mass = used.amount.times(molarMass(formulaFrom(productOf(step)))).to("g");
      demands.push(textOf(mass.times(theory[j]!).dividedBy(unit.product.theoreticalYield)));
    }
    theory[i] = textOf(sum(demands).dividedBy(share).to("g"));
  }
  return { found, planned, theory, wish };
}

// The plan: from what stands on the shelf to what to weigh, dissolve, expect and watch for. It holds no chemistry of its
// own; every figure comes from a lower layer, and every figure can be explained.

import type { BalancedEquation } from "../equation";
import { shown } from "../foundation/argument";
import { attempt, type Result } from "../foundation/error";
import { under } from "../foundation/facts";
import { keptWith, lazily, type Parts } from "../foundation/lazy";
import { once } from "../foundation/memo";
import { type RecordHead, recordHead } from "../foundation/record";
import { INSPECT, shownAs } from "../foundation/shown";
import { list } from "../foundation/wording";
import type { Quantity } from "../quantity";
import type { Cautions } from "../substance";
import { PlanError, type PlanRefusal } from "./error";
import { feasibilityOf, refuseWhatDoesNotGo } from "./feasibility/does-it-go";
import type { Feasibility } from "./feasibility/feasibility";
import { type Assumption, assumptionsOf } from "./planning/assumptions";
import { type Batch, type Before, batchOf, type Gate } from "./planning/batch";
import { materialPlanned } from "./planning/dry-product";
import { planned } from "./planning/exact";
import { type Figure, figuresOf, type MovedFigure, movedSince, readFigures } from "./planning/figures";
import { handlingOf } from "./planning/handling";
import { standsInPlace } from "./planning/in-place";
import { weigh } from "./planning/scale";
import { strengthIn } from "./planning/strength-in-liquor";
import { type Weighing, weighingsOf } from "./planning/weighings";
import { type Drying, dryingIn } from "./procedure/drying";
import { type Procedure, procedureOf } from "./procedure/kind";
import { checkRinse } from "./procedure/rinsing";
import { checkStated } from "./procedure/stated-water";
import { refuseUnparted, refuseWithoutProcedure } from "./procedure/without-procedure";
import { accountFor } from "./reaction/account";
import { plain, takenRequest } from "./request/door";
import { settingOf } from "./request/read-setting";
import { recordOf } from "./request/records";
import type { PlanRequest, ShelfMaterial } from "./request/request";
import { revived } from "./request/revived";
import { type Setting, usualLossOf } from "./request/setting";
import { cautionsOfMix, mixOf, passGate, withStrength } from "./safety/combinations";
import { type StepCautions, stepCautionsOf } from "./safety/step-cautions";
import type { Handling } from "./safety/work-conditions";
import { contradictionOf } from "./shelf/pack-name";
import { shareOf } from "./shelf/strength";

/** A preparation, planned. Every `Quantity` in it can be passed to `explain`; figures are worked out when asked for. */
export interface Plan extends Batch {
  /** What marks it among records. */
  readonly kind: "plan";
  /** As asked, else the product and its materials. */
  readonly title: string;
  /** What was asked, copied and frozen. */
  readonly request: PlanRequest;
  /** The balanced equation that everything follows from. */
  readonly equation: BalancedEquation;
  /** What to weigh of each material, in the order of the request. */
  readonly weighings: readonly Weighing[];
  /** Temperature of the liquor and of the gas. */
  readonly temperature: Quantity<"temperature">;
  /** Pressure at which the volume of gas is given. */
  readonly pressure: Quantity<"pressure">;
  /** The steps at the bench, each with its caution and what is seen. */
  readonly procedure: Procedure;
  /** How warm and how far to dry, and what tells that it is dry. */
  readonly drying: Drying;
  /** Share of the theory that may be lost before a low yield needs a reason. */
  readonly handlingLoss: Quantity<"number">;
  /** Does it go, how far, what forms in its place; a plan that does not go at all is refused. */
  readonly feasibility: Feasibility;
  /** Names that contradict the form they are given for: the wrong pack, or water forgotten. */
  readonly warnings: readonly string[];
  /** Planning values in force that the request does not give, with their sources. */
  readonly assumptions: readonly Assumption[];
  /** All substances and what must not meet, as one list; its `closing` belongs under any print of cautions. */
  readonly cautions: Cautions;
  /** The same by step of the work, in order, with what the step itself asks for; steps in which nothing is handled are left out. */
  readonly stepCautions: readonly StepCautions[];
  /** For a plan that was read back: its figures that this release of the library computes otherwise. */
  readonly moved: readonly MovedFigure[];
  /**
   * The product as a material for the next plan, with what else is in it by the contents of the last vessel: salts that the washing
   * leaves, other solids, what the packs had beside. Less than 0.01 % is left out. A liquor that is kept has its strength.
   * An `assay` that was titrated goes before the one that is computed.
   */
  asMaterial(options?: { readonly name?: string; readonly assay?: ShelfMaterial["assay"] }): ShelfMaterial;
  /** The figures of the plan as plain data. */
  figures(): Figure[];
  /** Title and theoretical yield in one line. */
  toString(): string;
  /** Plain data, as `fromJSON` reads it back. */
  toJSON(): PlanRecord;
}

/** A plan as plain data: the request it was made from, which makes it again, and its figures as they were then. */
export interface PlanRecord extends RecordHead<"plan"> {
  /** The request that makes the plan again. */
  readonly request: PlanRequest;
  /** As they were when the record was written. */
  readonly figures?: readonly Figure[];
}

const SCHEMA = 1;

/** What all plans share. */
class PlanMethods {
  /** What consoles call a plan, whatever a minifier makes of it. */
  static get name(): string {
    return "Plan";
  }

  get [Symbol.toStringTag](): string {
    return "Plan";
  }

  figures(this: Plan): Figure[] {
    return figuresOf(this);
  }

  toString(this: Plan): string {
    const instead = standsInPlace(this);
    const theory = instead === undefined ? this.product.theoreticalYield : instead.theory;
    return [
      ...(instead === undefined ? [this.title] : [`${this.title}; ${instead.formula} stands in its place`]),
      ...(theory === undefined ? [] : [`${theory} at 100 % yield`]),
    ].join(": ");
  }

  [INSPECT](this: Plan): string {
    return shownAs("Plan", this);
  }

  toJSON(this: Plan): PlanRecord {
    return { ...recordHead("plan", SCHEMA), request: plain(this.request), figures: this.figures() };
  }
}

/** A plan from a request that is the room's own; and the figures it had, where it was read back. */
function make(given: PlanRequest, stored?: readonly Figure[]): Before & { readonly plan: Plan } {
  const request = takenRequest(given);
  return under(request.facts, () => computed(request, stored));
}

/** Everything that is put into the vessel, what the packs contain besides with it. */
const mixIn = (setting: Setting) =>
  mixOf({
    ...setting,
    aside: [
      ...setting.asides.map(withStrength),
      ...setting.materials.flatMap(({ also }) => also.map(({ form }) => form.toString())),
    ],
  });

/** The mix with what steps take and no pack brings, and with what stands in place of the product. */
function mixAsDone(mix: ReturnType<typeof mixIn>, { product, besides }: Handling): ReturnType<typeof mixIn> {
  const taken = besides.map(({ species, massPercent }) => {
    const formula = species.formula.toString();
    return massPercent === undefined ? formula : { formula, massPercent };
  });
  const products = mix.products.map((one) => (one === mix.product ? product : one));
  return { ...mix, product, products, aside: [...new Set([...(mix.aside ?? []), ...taken])] };
}

/** Share of the theory that may be lost, as asked for or as usual. */
const handlingLossOf = (setting: Setting): Quantity<"number"> =>
  shareOf(setting.request.handlingLoss ?? planned(usualLossOf(setting)), "handlingLoss", "1", {
    symbol: "handling loss",
    label: "share that may stay on filters and vessels",
  });

/** Names of packs and product that contradict their forms. */
const warningsOf = ({ materials, product, request: { productName } }: Setting): string[] =>
  [
    ...materials.map(({ shelf, form }) => contradictionOf(shelf.name, form)),
    productName === undefined ? undefined : contradictionOf(productName, product.formula),
  ].filter((one) => one !== undefined);

/** Whatever a request can be refused for is refused here; what can only be unknown is worked out when asked for. */
function passed(setting: Setting, batch: Batch): Feasibility {
  const { request, materials } = setting;
  if (materials.some((m) => m.shelf.pack !== undefined)) void batch.cost;
  if (request.alternatives !== undefined) void batch.candidates;
  checkRinse(setting, batch.isolation);
  if (request.materials.some(({ dissolve }) => dissolve !== undefined)) checkStated(setting, batch.feeds);
  if (request.washing !== undefined) void batch.washing;
  const feasibility = feasibilityOf(setting, batch);
  refuseWhatDoesNotGo(feasibility, setting);
  refuseWithoutProcedure(setting, feasibility);
  refuseUnparted(setting, batch, feasibility);
  return feasibility;
}

/** What a batch would give off that the gate refuses, and in what air. */
const inTheAir = (setting: Setting): Parameters<typeof passGate>[2] => ({
  temperature: setting.temperature,
  pressure: setting.pressure,
  forms: (formula) => {
    const { materials, reactants, products } = setting;
    const account = attempt(() => accountFor(materials, weigh(setting).portions, reactants, products));
    const at = products.findIndex((one) => one.formula.hasSameComposition(formula));
    return account.ok ? account.value.formed[at]?.amount : undefined;
  },
});

/** The same, with its facts in force: whatever it works out later is worked out with them. */
function computed(request: PlanRequest, stored: readonly Figure[] | undefined): Before & { readonly plan: Plan } {
  const setting = settingOf(request);
  const mix = mixIn(setting);
  const { acknowledged } = passGate(mix, request, inTheAir(setting));
  const handlingLoss = handlingLossOf(setting);
  const weighed = weigh(setting);
  const { portions } = weighed;
  // the gate knows no batch yet; what is printed is as strong as the batch makes it
  const handling = once(() => handlingOf(setting, batch));
  const found = once(() => cautionsOfMix(mixAsDone(mix, handling()), strengthIn(setting, batch)));
  const cautionsOf: Gate = (done) => {
    const handled = done === batch ? handling() : handlingOf(setting, done);
    return stepCautionsOf({ setting, batch: done, handling: handled }, found(), acknowledged);
  };
  const own = once(() => cautionsOf(batch));
  const gate: Gate = (done) => (done === batch ? own() : cautionsOf(done));
  const batch = batchOf(setting, portions, undefined, gate);
  const feasibility = passed(setting, batch);
  const parts: Parts<Omit<Plan, keyof Batch | keyof PlanMethods>> = {
    kind: () => "plan" as const,
    title: () => request.title ?? `${batch.product.name} from ${list(setting.materials.map((m) => m.shelf.name))}`,
    request: () => request,
    equation: () => setting.equation,
    weighings: () => weighingsOf(setting, weighed, batch.materialBalance),
    temperature: () => setting.temperature,
    pressure: () => setting.pressure,
    procedure: () => procedureOf(setting),
    drying: () => dryingIn(setting.product.formula, setting.temperature),
    handlingLoss: () => handlingLoss,
    feasibility: () => feasibility,
    warnings: () => warningsOf(setting),
    assumptions: () => assumptionsOf(setting, batch, acknowledged),
    cautions: found,
    asMaterial:
      () =>
      (options = {}) =>
        materialPlanned(batch, setting.product.formula, plan.title, options),
    stepCautions: () => gate(batch) as StepCautions[],
    moved: () => movedSince(stored, () => plan.figures()),
  };
  const behind = { setting, portions, batch, gate, facts: request.facts };
  // Kept with the plan itself: a map beside it would cost the collector more than the plan.
  const plan = lazily<Plan, Batch, PlanMethods>(parts, batch, PlanMethods.prototype, behind);
  return { ...behind, plan };
}

/** Plans that are not of this copy of the library, made again. */
const remade = /* @__PURE__ */ new WeakMap<Plan, Before>();

/** The frame a plan was computed in, and its sums; a plan of another copy is made again from its request, once. */
export function behindPlan(plan: Plan): Before {
  if (typeof plan !== "object" || plan === null || plan.kind !== "plan")
    throw new PlanError("plan.request", `a run is recorded for a plan, not for ${shown(plan)}`, {
      hint: "pass what planPreparation gave",
    });
  const known = (keptWith(plan) as Before | undefined) ?? remade.get(plan);
  if (known !== undefined) return known;
  const made = make(plan.request);
  remade.set(plan, made);
  return made;
}

/**
 * Plan a preparation: what to weigh, what limits, water, gas and vessel, washing, yield, cost and cautions.
 *
 * @param request - equation, product, materials as they stand on the shelf, and the scale
 * @returns the plan; what could not be computed is listed in `unknown` with what is missing
 * @throws {PlanError} `plan.request`, `plan.unknown-option`, `plan.no-such-product`, `plan.no-such-material`, `plan.unmatched-material`,
 *   `plan.missing-material`, `plan.scale`, `plan.strength`, `plan.too-small`, `plan.not-positive`,
 *   `plan.forbidden-combination`, `plan.dangerous-product`, `plan.does-not-go`, `plan.no-procedure`, `plan.acknowledge`; and the codes of
 *   `balance`, `parseFormula`
 *   and `quantity` for what they read
 * @category Planning
 * @example
 * const plan = planPreparation({
 *   equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
 *   product: "Zn5(CO3)2(OH)6",
 *   materials: [
 *     { name: "moss killer", form: "ZnSO4·7H2O", assay: "98 %" },
 *     { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" },
 *   ],
 *   scale: { material: "moss killer", portion: "250.0 g" },
 * });
 * plan.product.theoreticalYield.format({ decimals: 1 }) // => "93.5 g"
 * plan.stepCautions.map((one) => one.step) // => ["weighing", "dissolving", "mixing", "isolating", "drying", "ignition test", "waste"]
 * plan.figures()[3]!.text // => "93.548 ± 0.017 g"
 * plan.stepCautions[2]!.cautions[0]!.text // => "gas is given off: open vessel, never stoppered, in portions, in moving air"
 */
export function planPreparation(request: PlanRequest): Plan {
  return make(request).plan;
}

/**
 * As `planPreparation`, but gives the refusal back as data.
 *
 * @category Planning
 * @example
 * tryPlanPreparation({ equation: "Zn + S -> ZnS", product: "ZnS", materials: [], scale: "all" }).ok // => false
 */
export const tryPlanPreparation = (request: PlanRequest): Result<Plan, PlanRefusal> =>
  attempt(() => planPreparation(request));

/**
 * A plan from the record that `toJSON` wrote.
 *
 * @throws {PlanError} `plan.json` for anything else; and the codes of `planPreparation`
 * @category Planning
 * @example
 * const outcome = (() => { try { return planFromJSON({}); } catch (error) { return isPreparativeError(error) && error.code; } })();
 * outcome // => "plan.json"
 */
export function planFromJSON(data: unknown): Plan {
  const { request, figures } = recordOf<PlanRecord>(data, "plan", SCHEMA);
  if (request === undefined) throw new PlanError("plan.json", "not a plan record: no request");
  return under(undefined, () => make(revived(request), readFigures(figures)).plan);
}

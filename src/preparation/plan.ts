// The plan: from what stands on the shelf to what to weigh, dissolve, expect and watch for. It holds no chemistry of its
// own; every figure comes from a lower room, and every figure can be explained.
import type { BalancedEquation } from "../equation";
import { attempt, type Result } from "../foundation/error";
import type { Quantity } from "../quantity";
import { type Cautions, cautions } from "../substance";
import { type Account, accountFor } from "./account";
import { type Candidate, candidatesFor } from "./candidates";
import { type Cost, costOf } from "./cost";
import { PlanError } from "./error";
import { type Feed, feedOf, type Liquor, liquorOf } from "./feed";
import { type Dissolved, type Isolation, isolationOf, type WashSchedule, washingOf } from "./isolation";
import { shareOf } from "./material";
import type { PlanRequest } from "./request";
import { type Setting, settingOf, weigh } from "./setting";
import { type GasEvolved, gasesOf, isGas, type Vessel, vesselFor } from "./vessel";

/** One material to weigh or measure. */
export interface Weighing {
  readonly material: string;
  readonly form: string;
  /** What the sums ask for. */
  readonly exact: Quantity;
  /** The same to the step of the balance or cylinder: what to take. */
  readonly portion: Quantity;
  /** Amount over what the limiting material uses, as it comes out after rounding. */
  readonly excess: Quantity;
  readonly limiting: boolean;
  readonly note: string | undefined;
}

/** A preparation, planned. Every `Quantity` in it can be passed to `explain`. */
export interface Plan {
  readonly kind: "plan";
  readonly title: string;
  readonly request: PlanRequest;
  readonly equation: BalancedEquation;
  readonly product: {
    readonly formula: string;
    readonly name: string;
    readonly amount: Quantity<"amount of substance">;
    readonly theoreticalYield: Quantity<"mass">;
  };
  readonly weighings: readonly Weighing[];
  readonly account: Account;
  readonly temperature: Quantity<"temperature">;
  readonly pressure: Quantity<"pressure">;
  readonly feeds: readonly Feed[];
  readonly liquor: Liquor;
  readonly gas: readonly GasEvolved[];
  readonly vessel: Vessel | undefined;
  readonly isolation: Isolation;
  readonly washing: WashSchedule | undefined;
  readonly candidates: readonly Candidate[];
  /** Share of the theory that may stay behind before a low yield needs a reason. */
  readonly handlingLoss: Quantity;
  readonly cost: Cost;
  readonly cautions: Cautions;
  /** What could not be computed, and what is missing for it. */
  readonly unknown: readonly string[];
  toJSON(): PlanRecord;
}

/** A plan as plain data: the request it was made from, which makes it again. */
export interface PlanRecord {
  readonly type: "plan";
  readonly schema: 1;
  readonly request: PlanRequest;
}

const DEFAULT_HEADROOM = 3;

/** Species that stay in the liquor: by-products that are neither gas nor water nor the product, and soluble excess. */
function dissolvedIn(setting: Setting, account: Account, feeds: readonly Feed[]): Dissolved[] {
  const { products, product, materials } = setting;
  const byProducts = products
    .map((species, i) => ({ species, amount: account.formed[i]!.amount }))
    .filter(
      ({ species }) =>
        species !== product && species.formula.toHill() !== "H2O" && !isGas(species.formula, setting.wet),
    );
  const excess = materials.flatMap(({ species }, i) => {
    const { how } = feeds[i]!;
    return how === "dissolve" || how === "solution" ? [{ species, amount: account.supplied[i]!.left }] : [];
  });
  return [...byProducts, ...excess];
}

/** Everything about a batch that follows from what is put into it. Runs use it with what was really weighed. */
export function batchOf(setting: Setting, portions: readonly Quantity[]) {
  const { request, reactants, products, product, materials, temperature, pressure } = setting;
  const account = accountFor(materials, portions, reactants, products);
  const formed = account.formed[products.indexOf(product)]!;
  const theoreticalYield = formed.mass.named({
    symbol: `m_th(${product.name})`,
    label: `theoretical yield of ${product.name}`,
    rule: "theoretical yield = amount of product × molar mass",
  });
  const { headroom = DEFAULT_HEADROOM } = request;
  const feeds = materials.map((material, i) => feedOf(material, portions[i]!, temperature, headroom));
  const dissolved = dissolvedIn(setting, account, feeds);
  const isolation = isolationOf(setting, theoreticalYield);
  const liquor = liquorOf(feeds, materials, account, reactants, products, dissolved, temperature);
  const gas = gasesOf(
    products.map((species, i) => ({
      formed: account.formed[i]!,
      hill: species.formula.toHill(),
      gas: isGas(species.formula, setting.wet),
    })),
    { temperature, pressure },
  );
  const water = feeds.flatMap((feed) => (feed.how === "dissolve" ? [feed.dissolving.water] : []));
  const unweighed: string[] = [];
  const inThePot = [...water];
  materials.forEach(({ shelf, massOf }, i) => {
    const mass = massOf(portions[i]!);
    if (mass === undefined) unweighed.push(`density of ${shelf.name}`);
    else inThePot.push(mass);
  });
  const intoAcid = feeds.some((feed) => feed.how === "solid") && gas.length > 0;
  const vessel = unweighed.length > 0 ? undefined : vesselFor(inThePot, temperature, gas, intoAcid, request.foamFactor);
  const washing =
    isolation.how === "precipitate" && vessel !== undefined
      ? washingOf(setting, dissolved, vessel.liquid, theoreticalYield)
      : undefined;
  return {
    account,
    product: {
      formula: product.name,
      name: request.productName ?? product.name,
      amount: formed.amount,
      theoreticalYield,
    },
    feeds,
    isolation,
    liquor,
    gas,
    vessel,
    washing,
    candidates: candidatesFor(product.formula, { ...formed, mass: theoreticalYield }, request.alternatives ?? []),
    cost: costOf(materials, account.supplied, theoreticalYield, formed.amount),
    unknown: [
      ...liquor.missing,
      ...unweighed,
      ...(isolation.how === "unknown" ? [isolation.missing] : []),
      ...(washing !== undefined && "missing" in washing ? [washing.missing] : []),
    ],
  };
}

function make(request: PlanRequest): { plan: Plan; setting: Setting } {
  const setting = settingOf(request);
  const { exact, portions } = weigh(setting);
  const batch = batchOf(setting, portions);
  const weighings = setting.materials.map(({ shelf, formName }, i) => ({
    material: shelf.name,
    form: formName,
    exact: exact[i]!,
    portion: portions[i]!,
    excess: batch.account.supplied[i]!.excess,
    limiting: batch.account.supplied[i]!.limiting,
    note: shelf.note,
  }));
  const things = [
    ...setting.materials.map(({ form }) => form.toString()),
    ...setting.products.filter((s) => s.formula.toHill() !== "H2O").map((s) => s.formula.toString()),
  ];
  const plan: Plan = {
    kind: "plan",
    title: request.title ?? `${batch.product.name} from ${setting.materials.map((m) => m.shelf.name).join(" and ")}`,
    request,
    equation: setting.equation,
    weighings,
    temperature: setting.temperature,
    pressure: setting.pressure,
    handlingLoss: shareOf(request.handlingLoss ?? "10 %", "handlingLoss", "1", {
      symbol: "handling loss",
      label: "share that may stay on filters and vessels",
    }),
    cautions: cautions([...new Set(things)]),
    ...batch,
    toJSON: () => ({ type: "plan", schema: 1, request }),
  };
  return { plan, setting };
}

const settings = /* @__PURE__ */ new WeakMap<Plan, Setting>();

/** The frame a plan was computed in; a plan of another copy is made again from its request. */
export function settingBehind(plan: Plan): Setting {
  return settings.get(plan) ?? settingOf(plan.request);
}

/**
 * Plan a preparation: what to weigh, what limits, water, gas and vessel, washing, yield, cost and cautions.
 *
 * @param request - equation, product, materials as they stand on the shelf, and the scale
 * @returns the plan; what could not be computed is listed in `unknown` with what is missing
 * @throws {PlanError} `plan.request`, `plan.no-such-product`, `plan.no-such-material`, `plan.unmatched-material`,
 *   `plan.missing-material`, `plan.scale`, `plan.strength`, `plan.too-small`, `plan.not-positive`; and the codes of
 *   `balance`, `parseFormula` and `quantity` for what they read
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
 */
export function planPreparation(request: PlanRequest): Plan {
  const { plan, setting } = make(request);
  settings.set(plan, setting);
  return plan;
}

/**
 * As `planPreparation`, but gives the refusal back as data.
 *
 * @category Planning
 * @example
 * tryPlanPreparation({ equation: "Zn + S -> ZnS", product: "ZnS", materials: [], scale: "all" }).ok // => false
 */
export const tryPlanPreparation = (request: PlanRequest): Result<Plan> => attempt(() => planPreparation(request));

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
  const record = data as Partial<PlanRecord> | null;
  if (
    typeof record !== "object" ||
    record === null ||
    record.type !== "plan" ||
    record.schema !== 1 ||
    record.request === undefined
  ) {
    throw new PlanError("plan.json", "not a plan record", { hint: "pass what toJSON gave, parsed" });
  }
  return planPreparation(record.request);
}

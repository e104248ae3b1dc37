// Does it go? Asked of a reaction before any procedure, answered with numbers and their sources.

import type { BalancedEquation } from "../../equation";
import { type Formula, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import { type Fields, isRecord } from "../../foundation/argument";
import { remembering } from "../../foundation/memo";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { DEADLY_FROM_WATER, FAR_UPHILL } from "../data/couples";
import { PlanError } from "../error";
import { type Batch, batchOf, reactedPot } from "../planning/batch";
import { weigh } from "../planning/scale";
import { isMetal } from "../reaction/acids";
import { nameOfFormula } from "../reaction/species";
import { guard } from "../request/argument";
import { balancedOf } from "../request/balanced";
import { inItsFacts, STEP, taken, takenRequest } from "../request/door";
import { settingOf } from "../request/read-setting";
import type { PlanRequest, Scale, ShelfMaterial } from "../request/request";
import type { Setting } from "../request/setting";
import { mixOf, passGate } from "../safety/combinations";
import { caseOf, keyOfCase } from "./case";
import { DOES_NOT_GO, type Feasibility, type Ruling } from "./feasibility";
import { whatHappens } from "./in-its-place";
import { notInWater } from "./judge-compound";
import { DIFFERENCE } from "./judge-metal";
import { rule } from "./rule";
import { stated } from "./stated";

/** What a request may leave out when only this is asked. */
export interface FeasibilityRequest extends Omit<PlanRequest, "materials" | "scale"> {
  /** As in a plan; left out or empty: each reactant by itself, in the amount the equation asks for. */
  readonly materials?: readonly ShelfMaterial[] | undefined;
  /** Default 0.1 mol of product. */
  readonly scale?: Scale | undefined;
}

const rulings = /* @__PURE__ */ remembering<Ruling>(300);

/** @internal Does a batch go? */
export function feasibilityOf(setting: Setting, batch: Batch): Feasibility {
  const c = caseOf(setting, batch.materialBalance, setting.wet ? reactedPot(batch) : undefined);
  return stated(
    rulings(keyOfCase(c), () => rule(c)),
    setting,
    batch,
  );
}

/** Reasons that tell what would bring more of it. */
const HELPS: readonly string[] = ["acid-holds-back", "redissolves", "excess", "aged", "solid-to-solid"];

/** @internal What leads a plan that does not simply go, or of which that is not known; undefined for one that goes. */
export function leadOf(
  { verdict, share, solids, reasons }: Feasibility,
  product: string,
  grams: (mass: Quantity) => string = (mass) => mass.format({ significant: 3, uncertainty: "none" }),
): string | undefined {
  const first = reasons[0]?.text;
  if (verdict === "another solid forms") {
    const named = solids.slice(0, 2).map(({ formula, mass }) => `${grams(mass)} of ${formula}`);
    return `another solid forms: ${list(named)}, for ${product} asked for: ${first}`;
  }
  if (verdict === "does not go") return `it does not go: ${first}`;
  if (verdict === "unknown") {
    const missing = reasons.filter(({ code }) => code === "missing").map(({ text }) => text);
    return `whether it goes is not known here, and the sheet takes the equation as it stands; ${missing.join("; ") || "every figure is missing"}`;
  }
  if (verdict !== "goes in part") return undefined;
  const part =
    share === undefined ? "" : ` (${share.to("%").format({ significant: 2, uncertainty: "none" })} of the theory)`;
  const helps = reasons.slice(1).filter(({ code }) => HELPS.includes(code));
  return `it goes in part${part}: ${[first, ...helps.map(({ text }) => text)].join("; ")}`;
}

/** Another way to the product, where one is known by rule; else who looks for one. */
function otherWay({ product, products, materials }: Setting): string {
  const metal = products.some(({ formula }) => isOneOf(formula, "H2"))
    ? materials.find(({ form }) => isMetal(form))
    : undefined;
  return metal === undefined
    ? `another way to ${product.name} is not known to this check: findRoutes looks for one from the jars of a shelf`
    : `another way to it: the oxide, hydroxide or carbonate of ${metal.formName} with the acid, or the metal with an oxidiser such as hydrogen peroxide beside the acid`;
}

/** Is it a compound that does not exist in water? */
function isNowhere(formula: Formula): boolean {
  const { cations, anions, complex } = constitutionOf(formula);
  return complex === undefined && notInWater(cations, anions) !== undefined;
}

/** Why no word of the request opens it: no such work or compound in water, or a deadly gas is all that comes; undefined where one does. */
function neverPlanned({ reasons }: Feasibility, { product }: Setting): string | undefined {
  const code = reasons[0]?.code;
  if (code === "only-by-fire") return "no plan includes that, whatever is acknowledged";
  if (code !== "not-in-water") return undefined;
  const { anions } = constitutionOf(product.formula);
  const row = DEADLY_FROM_WATER.find(({ anion }) => anions.some(({ formula }) => formula === anion));
  if (row !== undefined)
    return `${nameOfFormula(parseFormula(row.gas))} is given off, which is deadly: never planned, whatever is acknowledged`;
  return isNowhere(product.formula)
    ? "what does not exist is never planned; plan for what forms in its place"
    : undefined;
}

/** What happens in its place, for a hint; empty where that is not known whole. */
function instead(feasibility: Feasibility, setting: Setting): string {
  const words = whatHappens(feasibility, setting);
  return words === undefined ? "" : `${words}; `;
}

/** How the code that opens it is offered; why it is not, where the potentials are so far apart that nothing known could be meant. */
function opening({ reasons: [first] }: Feasibility): string {
  const difference = first?.code === "potentials" ? first.numbers.find(({ label }) => label === DIFFERENCE) : undefined;
  return difference !== undefined && difference.toNumber("V") < FAR_UPHILL.below
    ? FAR_UPHILL.why
    : `if this is known and meant, acknowledge it by code: acknowledge: ["${DOES_NOT_GO[0]}"]`;
}

/** @internal Refuse what does not go, unless it is known and meant. */
export function refuseWhatDoesNotGo(feasibility: Feasibility, setting: Setting): void {
  const { acknowledge = [] } = setting.request;
  if (feasibility.verdict !== "does not go") return;
  const never = neverPlanned(feasibility, setting);
  if (never === undefined && DOES_NOT_GO.some((code) => acknowledge.includes(code))) return;
  // worked out only for a refusal
  const { verdict, reasons, solids } = feasibility;
  throw new PlanError("plan.does-not-go", reasons[0]?.text ?? "it does not go", {
    hint: `${isNowhere(setting.product.formula) ? instead(feasibility, setting) : `${otherWay(setting)}; `}${never ?? opening(feasibility)}`,
    details: {
      verdict,
      solids: solids.map(({ formula, share }) => ({ formula, share: share.toNumber() })),
      reasons: reasons.map(({ code, text, source }) => ({ code, text, source })),
    },
  });
}

const FIELDS = { ...STEP, scale: true } as const satisfies Fields<FeasibilityRequest>;

const materialOf = ({ formula }: BalancedEquation["reactants"][number]): ShelfMaterial[] => {
  const text = formula.toString();
  return isWater(formula) ? [] : [{ name: text, form: text }];
};

/** A request with everything in it: each reactant by itself where no material is named. */
function whole({ materials, scale, ...rest }: FeasibilityRequest): PlanRequest {
  const isReadable = typeof rest.equation === "string" || isRecord(rest.equation);
  const named = materials?.length
    ? materials
    : (isReadable ? balancedOf(rest.equation).equation.reactants : []).flatMap(materialOf);
  return { ...rest, materials: named, scale: scale ?? { product: "0.1 mol" } };
}

/**
 * Does a reaction go, how far, and what forms in its place?
 *
 * Judged are: compounds that do not exist in water; potentials, passive metals and metals that water takes; coats and fired
 * oxides; the equilibrium of the whole mixture with carbon dioxide kept and gone; which of all the salts of a liquor
 * crystallises first; for a dry solid, the table of thermal steps. Rates are not computed.
 *
 * @param request - as for `planPreparation`; materials may be left out (each reactant by itself, exactly enough), and the
 *   scale (0.1 mol of product)
 * @returns `verdict`; `share` of the theory, with uncertainty; `solids` that stand at the end; `reasons` with their figures and
 *   sources. What is `unknown` says what is missing
 * @throws {PlanError} as `planPreparation`, but not `plan.does-not-go`
 * @source equilibrium: constants of the tables, each with its own; potentials of the table, some from memory; the rest common practice
 * @category Planning
 * @example
 * doesItGo({ equation: "Cu + HCl -> CuCl2 + H2", product: "CuCl2" }).verdict // => "does not go"
 * const basic = doesItGo({ equation: "CuSO4 + NaHCO3 -> CuCO3 + Na2SO4 + CO2 + H2O", product: "CuCO3" });
 * basic.verdict // => "another solid forms"
 * basic.solids[0]!.formula // => "Cu₂(OH)₂CO₃"
 */
export function doesItGo(request: FeasibilityRequest): Feasibility {
  return inItsFacts(request, () => judged(request));
}

function judged(request: FeasibilityRequest): Feasibility {
  const given = taken(request);
  guard.fields(given, FIELDS);
  const read = takenRequest(whole(given));
  const setting = settingOf(read);
  passGate(mixOf(setting), read);
  return feasibilityOf(setting, batchOf(setting, weigh(setting).portions));
}

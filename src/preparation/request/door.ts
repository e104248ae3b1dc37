// The door of the layer. What a caller gives is copied and frozen as it comes in, so that editing a form afterwards changes
// no plan; fields nobody knows and values that make no sense are refused here, by name. What goes out is plain data.
import { BalancedEquation, Equation } from "../../equation";
import { Formula, type FormulaRecord, formulaFromJSON } from "../../formula";
import { type Fields, isRecord } from "../../foundation/argument";
import { factsInForce, isFacts, lookingIn } from "../../foundation/facts";
import { isQuantity, type Quantity, type QuantityLike, quantity, quantityFromJSON } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { PlanError } from "../error";
import { portionOf } from "../shelf/strength";
import { guard } from "./argument";
import type { PlanRequest, Rinse, Scale, ShelfMaterial } from "./request";

/** Deepest and longest a request may be; beyond it, it is a slip or goes round in circles. */
const DEEPEST = 12;
const MOST_ENTRIES = 1000;

const isPlain = (value: object): boolean => {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || prototype === Object.prototype || Object.getPrototypeOf(prototype) === null;
};

/** A record or a value with its unit apart becomes the value it stands for; anything else is undefined. */
function standsFor(value: object): Quantity | Formula | undefined {
  const { type, unit } = value as { readonly type?: unknown; readonly unit?: unknown };
  if (type === "quantity") return quantityFromJSON(value);
  if (type === "formula") return formulaFromJSON(value as FormulaRecord);
  return typeof unit === "string" && "value" in value ? quantity(value as QuantityLike) : undefined;
}

/**
 * A copy of what a caller gave, frozen through. Quantities and formulas are immutable and stay what they are, and so that
 * a quantity that stands in two places is still one input; records become the values they were written from.
 */
export function taken<T>(given: T, depth = 0): T {
  if (typeof given !== "object" || given === null || isQuantity(given) || given instanceof Formula || isFacts(given))
    return given;
  if (given instanceof Equation || given instanceof BalancedEquation) return String(given) as T;
  if (depth > DEEPEST) throw new PlanError("plan.request", `the request is nested deeper than ${DEEPEST} fields`);
  if (Array.isArray(given)) {
    if (given.length > MOST_ENTRIES)
      throw new PlanError("plan.request", `a list of ${given.length} entries; the most is ${MOST_ENTRIES}`);
    return Object.freeze(Array.from(given, (entry: unknown) => taken(entry, depth + 1))) as T;
  }
  // Not a plain object: for the guard to refuse by its name.
  if (!isPlain(given)) return given;
  const value = standsFor(given);
  if (value !== undefined) return value as T;
  // Entries, so that a material called __proto__ is one more name.
  return Object.freeze(
    Object.fromEntries(Object.entries(given).map(([key, part]) => [key, taken(part, depth + 1)])),
  ) as T;
}

/** The same as plain data all the way down. */
export function plain<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  if (isQuantity(value) || value instanceof Formula || isFacts(value)) return value.toJSON() as T;
  if (Array.isArray(value)) return value.map(plain) as T;
  const entries = Object.entries(value).filter(([, part]) => part !== undefined);
  return Object.fromEntries(entries.map(([key, part]) => [key, plain(part)])) as T;
}

/** @internal The fields of a material on the shelf. */
export const MATERIAL = {
  name: true,
  form: true,
  assay: true,
  strength: true,
  density: true,
  pack: { size: true, price: true },
  available: true,
  excess: true,
  inExcess: true,
  aside: true,
  portion: true,
  also: [{ form: true, share: true }],
  dissolve: { water: true, concentration: true, temperature: true },
  note: true,
} as const satisfies Fields<ShelfMaterial>;

/** The fields of a preparation, whatever gives it its scale. */
export const STEP = {
  title: true,
  equation: true,
  product: true,
  productName: true,
  materials: [MATERIAL],
  temperature: true,
  pressure: true,
  readability: { mass: true, volume: true },
  isolate: true,
  procedure: true,
  room: { volume: true, airChanges: true },
  acknowledge: true,
  waterFactor: true,
  vesselFactor: true,
  washing: { method: true, retainedLiquorPerGram: true, washVolume: true, rinse: true, residue: true },
  alternatives: true,
  handlingLoss: true,
  facts: true,
} as const satisfies Fields<Omit<PlanRequest, "scale">>;

const REQUEST = { ...STEP, scale: true } as const satisfies Fields<PlanRequest>;
const SCALE = { material: true, portion: true, product: true, vessel: true } as const satisfies Fields<
  Exclude<Scale, "all">
>;

const RINSES: readonly Rinse[] = ["water", "own solution", "alcohol", "none"];

/** A quantity above zero. */
function positive(like: QuantityLike, dimension: string | undefined, argument: string): void {
  const q = dimension === undefined ? quantity(like) : expectDimension(like, dimension, argument);
  guard.positive(q, argument);
}

const textIn = (value: unknown, argument: string): void => {
  if (value !== undefined) guard.text(value, argument);
};

function textsIn(value: unknown, argument: string): void {
  if (value === undefined) return;
  guard.list(value, argument);
  for (const [i, one] of (value as readonly unknown[]).entries()) guard.text(one, `${argument}[${i}]`);
}

const formulaIn = (value: unknown, argument: string): void => {
  if (!(value instanceof Formula)) guard.text(value, argument);
};

/** What a material says beside what `readMaterial` reads. */
function checkMaterial(
  { name, form, note, inExcess, aside, portion, available, pack }: ShelfMaterial,
  place: string,
): void {
  guard.text(name, `${place}.name`);
  formulaIn(form, `${place}.form`);
  if (name.trim() === "") throw new PlanError("plan.request", `${place}.name is empty`);
  textIn(note, `note of ${name}`);
  if (inExcess !== undefined) guard.boolean(inExcess, `inExcess of ${name}`);
  if (aside !== undefined) guard.boolean(aside, `aside of ${name}`);
  if (portion !== undefined) portionOf(portion, `portion of ${name}`);
  if (available !== undefined) portionOf(available, `available of ${name}`);
  if (pack === undefined) return;
  portionOf(pack.size, `pack.size of ${name}`);
  const price = quantity(pack.price as QuantityLike);
  if (price.dimension.startsWith("price (") && !price.isPositive() && !price.isZero())
    throw new PlanError("plan.request", `pack.price of ${name} is below zero: ${price}`);
}

/** All of a preparation that is not read by what computes with it, at once. */
function checkStep(step: Omit<PlanRequest, "scale">): void {
  textIn(step.title, "title");
  formulaIn(step.product, "product");
  if (typeof step.equation !== "string" && !isRecord(step.equation))
    throw guard.refused(step.equation, "equation", "text, or { reactants, products }");
  textIn(step.productName, "productName");
  if (step.productName?.trim() === "") throw new PlanError("plan.request", "productName is empty");
  textsIn(step.alternatives, "alternatives");
  for (const [i, material] of step.materials.entries()) checkMaterial(material, `materials[${i}]`);
  if (step.isolate !== undefined) guard.boolean(step.isolate, "isolate");
  const { washing = {}, pressure } = step;
  if (pressure !== undefined) positive(pressure, "pressure", "pressure");
  if (washing.rinse !== undefined) guard.choice(washing.rinse, "washing.rinse", RINSES);
  if (washing.residue !== undefined) positive(washing.residue, "mass fraction", "washing.residue");
  if (washing.washVolume !== undefined) positive(washing.washVolume, "volume", "washing.washVolume");
  if (washing.retainedLiquorPerGram !== undefined)
    positive(washing.retainedLiquorPerGram, "specific volume", "washing.retainedLiquorPerGram");
}

/** A request as it is kept: copied, frozen, of known fields. */
export function takenRequest(given: PlanRequest): PlanRequest {
  return inItsFacts(given, () => checkedRequest(given));
}

/** Computes with the facts of a request in force: it is read with them as well. */
export const inItsFacts = <T>(given: unknown, compute: () => T): T =>
  lookingIn(isRecord(given) ? given["facts"] : undefined, guard, compute);

function checkedRequest(given: PlanRequest): PlanRequest {
  const request = taken(given);
  guard.fields(request, REQUEST);
  if (request.materials === undefined)
    throw new PlanError("plan.request", "a plan needs an equation, a product, materials and a scale");
  if (typeof request.scale === "object" && request.scale !== null) guard.fields(request.scale, SCALE, "scale");
  if (typeof request.equation === "object" && request.equation !== null)
    guard.fields(request.equation, { reactants: true, products: true }, "equation");
  checkStep(request);
  if (Array.isArray(request.materials) && request.materials.length === 0)
    throw new PlanError("plan.no-such-material", "the list of materials is empty", {
      hint: "name at least one material of the equation",
      details: { argument: "materials" },
    });
  // made inside a request with facts, such as a step of a chain: they are its own from here on
  const facts = request.facts ?? factsInForce();
  return facts === request.facts ? request : Object.freeze({ ...request, facts });
}

// The frame of a preparation read from its request: equation, species, materials, conditions.

import type { BalancedEquation } from "../../equation";
import { sealed } from "../../equation/internal";
import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import type { Quantity, QuantityLike } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { DEADLY_FROM_WATER } from "../data/couples";
import type { PlanningName } from "../data/planning";
import { PlanError } from "../error";
import { hydrateOf, OTHER_HYDRATE } from "../feasibility/form-in-water";
import { planned } from "../planning/exact";
import { isHeatedDry } from "../procedure/kind";
import { PROCEDURES } from "../procedure/kinds";
import { acidPutOn } from "../procedure/protection";
import { fateInRoom } from "../reaction/fate";
import { staysInWater } from "../reaction/fluids";
import { inWantedForm, withForm } from "../reaction/in-form";
import { keptInSolution } from "../reaction/only-in-solution";
import { formulaFrom, type Species, sameCore, speciesOf } from "../reaction/species";
import { type Material, readAside, readMaterial } from "../shelf/material";
import { guard } from "./argument";
import { balancedOf } from "./balanced";
import type { PlanRequest } from "./request";
import type { Room, Setting } from "./setting";
import { checkWarmth } from "./warmth";

/** Largest waterFactor or foam factor that is no slip of the pen. */
const MOST_TIMES = 1000;

/** An equation with its species. */
type Read = Pick<Setting, "equation" | "reactants" | "products" | "lacksWater">;

/** Equations of requests, balanced once: a plan is made again and again with other masses. */
const balancedOnce = /* @__PURE__ */ remembering<Read>(200);

function speciesIn(equation: BalancedEquation, lacksWater = false): Read {
  sealed(equation.equation);
  return { equation, reactants: speciesOf(equation.reactants), products: speciesOf(equation.products), lacksWater };
}

function read(like: PlanRequest["equation"]): Read {
  const { equation, lacksWater } = balancedOf(like);
  return speciesIn(equation, lacksWater);
}

/** The equation as read, with the product in the form that is wanted. */
function withProduct(read: Read, wanted: Formula): Read & { readonly product: Species } {
  const { equation } = read;
  const isThere = read.products.some((s) => s.formula.hasSameComposition(wanted));
  const found = isThere
    ? read
    : balancedOnce(`${equation} for ${wanted}`, () => speciesIn(inWantedForm(equation, wanted)));
  const product = found.products.find((s) => s.formula.hasSameComposition(wanted));
  if (product !== undefined) return { ...found, product };
  throw new PlanError("plan.no-such-product", `${wanted} is not a product of ${equation}`, {
    hint: `the products are ${read.products.map((s) => s.formula.toString()).join(", ")}`,
  });
}

/** Is a product kept in its solution, where the request does not ask for crystals of it? */
const isKept = (product: Formula, { isolate }: Pick<PlanRequest, "isolate">): boolean =>
  staysInWater(product) || (isolate !== true && keptInSolution(product) !== undefined);

/**
 * The equation with the product as the water gives it, where equation and request write it without crystal water. A hydrate that is
 * asked for, or one that the equation has and the request does not, is meant; so is what is acknowledged.
 */
function asFormed(
  read: Read,
  asked: ReturnType<typeof withProduct>,
  { acknowledge, isolate }: PlanRequest,
  temperature: Quantity<"temperature">,
): ReturnType<typeof withProduct> {
  const isWritten = read.products.some(({ formula }) => formula.hasSameComposition(asked.product.formula));
  // What is kept as its liquor has no crystals.
  if (
    !isWritten ||
    isolate === false ||
    isKept(asked.product.formula, { isolate }) ||
    (Array.isArray(acknowledge) && acknowledge.includes(OTHER_HYDRATE))
  )
    return asked;
  const formed = hydrateOf(asked.product, asked.reactants, temperature);
  return formed === undefined ? asked : withProduct(asked, formed);
}

/** The same with what else precipitates as the water gives it: gypsum, where sulfuric acid takes the lime of a calcium salt. */
function withSolidsAsFormed(
  read: ReturnType<typeof withProduct>,
  temperature: Quantity<"temperature">,
): ReturnType<typeof withProduct> {
  const { product, products, reactants } = read;
  const [from, to] = products
    .filter((one) => one !== product && fateInRoom(one.formula).precipitated === true)
    .flatMap((one) => {
      const formed = hydrateOf(one, reactants, temperature);
      return formed === undefined ? [] : [[one.formula, formed] as const];
    })[0] ?? [undefined, undefined];
  if (from === undefined) return read;
  const { equation } = read;
  const found = balancedOnce(`${equation} with ${to}`, () => speciesIn(withForm(equation, from, to)));
  const same = found.products.find((one) => one.formula.hasSameComposition(product.formula));
  return same === undefined ? read : withSolidsAsFormed({ ...found, product: same }, temperature);
}

export function settingOf(request: PlanRequest): Setting {
  const { procedure, waterFactor, vesselFactor } = request;
  if (procedure !== undefined && !PROCEDURES.includes(procedure))
    throw new PlanError("plan.request", `no procedure is called '${String(procedure)}'`, {
      hint: PROCEDURES.join(", "),
    });
  for (const [name, factor] of Object.entries({ waterFactor, vesselFactor })) {
    if (factor === undefined || (Number.isFinite(factor) && factor >= 1 && factor <= MOST_TIMES)) continue;
    throw new PlanError("plan.request", `${name} must be a number from 1 to ${MOST_TIMES}, not ${String(factor)}`);
  }
  const { equation: like } = request;
  const asGiven = typeof like === "string" ? balancedOnce(like, () => read(like)) : read(like);
  if ([...asGiven.reactants, ...asGiven.products].some(({ formula }) => formula.size === 0))
    throw new PlanError(
      "plan.request",
      `${asGiven.equation} has free electrons: a half-reaction is not a preparation`,
      {
        hint: "give the whole reaction, with what accepts the electrons",
      },
    );
  const wet = procedure !== "thermal decomposition" && !isHeatedDry(asGiven.reactants, asGiven.products);
  const temperature = conditionOf(request.temperature, "temperature", "temperature", "temperature", {
    symbol: "T",
    label: "temperature of room and solutions",
  });
  checkWarmth(temperature, wet);
  const asked = withProduct(asGiven, formulaFrom(request.product));
  const { equation, reactants, products, product } = wet
    ? withSolidsAsFormed(asFormed(asGiven, asked, request, temperature), temperature)
    : asked;
  const names = request.materials.map((m) => m.name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined)
    throw new PlanError("plan.request", `two materials are called '${twice}'`, { hint: "give each its own name" });
  const step = (like: Quantity): Quantity => guard.positive(like, "a readability");
  if (request.isolate === false && (!wet || fateInRoom(product.formula).precipitated === true))
    throw new PlanError("plan.request", `${product.name} does not stay dissolved: there is no liquor of it to keep`, {
      hint: "leave out isolate",
    });
  const own = request.materials
    .filter(({ aside }) => aside !== true)
    .map((material) => readMaterial(material, reactants));
  const asides = request.materials.filter(({ aside }) => aside === true).map(readAside);
  return {
    request,
    equation,
    lacksWater: asGiven.lacksWater,
    reactants,
    products,
    product,
    asked: asked.product,
    materials: wet && !isTakenByWater(own, reactants, product) ? withPutOn(own, product.formula, asides) : own,
    asides,
    wet,
    keepsLiquor: request.isolate === false || (wet && isKept(product.formula, request)),
    temperature,
    pressure: conditionOf(request.pressure, "pressure", "pressure", "pressure", { symbol: "p", label: "air pressure" }),
    room: roomOf(request),
    steps: {
      mass: step(conditionOf(request.readability?.mass, "massStep", "mass", "readability.mass")),
      volume: step(conditionOf(request.readability?.volume, "volumeStep", "volume", "readability.volume")),
    },
  };
}

/** Is a single salt to become what water makes of it? No acid keeps it from that. */
function isTakenByWater(materials: readonly Material[], reactants: readonly Species[], product: Species): boolean {
  const [only, another] = materials.filter(({ species }) => !species.isWater);
  return (
    only !== undefined &&
    another === undefined &&
    reactants.some(({ isWater }) => isWater) &&
    !sameCore(only.form, product.formula)
  );
}

/** Would acid free a deadly gas from one of the packs? */
const isDeadlySour = (packs: readonly Material[]): boolean =>
  packs.some(({ form }) =>
    constitutionOf(form).anions.some(({ formula }) => DEADLY_FROM_WATER.some(({ anion }) => anion === formula)),
  );

/** Salts with the acid that keeps them clear, where no pack is such an acid, or would give a deadly gas with it. */
function withPutOn(materials: readonly Material[], product: Formula, asides: readonly Material[]): readonly Material[] {
  const packs = [...materials, ...asides];
  if (isDeadlySour(packs)) return materials;
  return materials.map((material) => {
    const putOn = material.isSolution ? undefined : acidPutOn(material.form, product);
    return putOn === undefined || packs.some(({ form }) => form.hasSameComposition(putOn.acid))
      ? material
      : { ...material, putOn };
  });
}

function roomOf({ room }: PlanRequest): Room {
  const volume = conditionOf(room?.volume, "roomVolume", "volume", "room.volume", {
    symbol: "V(room)",
    label: "volume of the room",
  });
  const changes = conditionOf(room?.airChanges, "airChanges", "time^-1", "room.airChanges", {
    symbol: "n(air)",
    label: "air changes of the room",
  });
  return { volume: guard.positive(volume, "the room"), changes: guard.positive(changes, "the room") };
}

const usual = /* @__PURE__ */ remembering<Quantity>(10);

/** A condition of the work as it is given, else the usual one: one figure for all plans, so that what holds at it is looked up once. */
function conditionOf<D extends string>(
  given: QuantityLike | undefined,
  name: PlanningName,
  dimension: D,
  argument: string,
  naming?: { readonly symbol: string; readonly label: string },
): Quantity<D> {
  const read = (like: QuantityLike): Quantity<D> => expectDimension(like, dimension, argument, naming);
  return given === undefined ? (usual(name, () => read(planned(name))) as Quantity<D>) : read(given);
}

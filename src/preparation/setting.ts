// The frame of a preparation: equation, species, materials, conditions; the scale, and what to weigh for it.
import { type BalancedEquation, balance } from "../equation";
import { sealed } from "../equation/internal";
import type { Formula } from "../formula";
import { remembering } from "../foundation/memo";
import { minimum, type Quantity, quantity, sum } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { reading, roundedTo } from "./account";
import { batchOf } from "./batch";
import { keyElement } from "./candidates";
import { checkWarmth } from "./door";
import { PlanError } from "./error";
import { exact, planned } from "./exact";
import { inWantedForm } from "./in-form";
import { type Material, readAside, readMaterial } from "./material";
import type { Room } from "./pace";
import { isAcidSalt, isBase, isHeatedDry, PROCEDURES } from "./procedure/kind";
import { baseAmong, baseForAcids } from "./procedure/neutralising";
import type { PlanRequest, Portion } from "./request";
import { formulaFrom, type Species, speciesOf } from "./species";
import { type PortionDimension, portionOf } from "./strength";

/** Everything a plan and its runs compute with. */
export interface Setting {
  readonly request: PlanRequest;
  readonly equation: BalancedEquation;
  readonly reactants: readonly Species[];
  readonly products: readonly Species[];
  readonly product: Species;
  readonly materials: readonly Material[];
  /** Materials that take no part in the equation: alcohol, acid that keeps a salt from hydrolysing, charcoal, seed. */
  readonly asides: readonly Material[];
  /** Water is there: gases that it keeps stay in it. */
  readonly wet: boolean;
  readonly temperature: Quantity<"temperature">;
  readonly pressure: Quantity<"pressure">;
  /** The room the work is done in. */
  readonly room: Room;
  readonly steps: { readonly mass: Quantity; readonly volume: Quantity };
}

/** What may be lost unless given: a crucible keeps less than filters and vessels do. */
export const usualLossOf = ({ wet }: Pick<Setting, "wet">): "handlingLoss" | "crucibleLoss" =>
  wet ? "handlingLoss" : "crucibleLoss";

/** Largest waterFactor or foam factor that is no slip of the pen. */
const MOST_TIMES = 1000;

/** An equation with its species. */
type Read = Pick<Setting, "equation" | "reactants" | "products">;

/** Equations of requests, balanced once: a plan is made again and again with other masses. */
const balancedOnce = /* @__PURE__ */ remembering<Read>(200);

function speciesIn(equation: BalancedEquation): Read {
  sealed(equation.equation);
  return { equation, reactants: speciesOf(equation.reactants), products: speciesOf(equation.products) };
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
  const read =
    typeof request.equation === "string"
      ? balancedOnce(request.equation, () => speciesIn(balance(request.equation)))
      : speciesIn(balance(request.equation));
  if ([...read.reactants, ...read.products].some(({ formula }) => formula.symbols.length === 0))
    throw new PlanError("plan.request", `${read.equation} has free electrons: a half-reaction is no preparation`, {
      hint: "give the whole reaction, with what takes the electrons",
    });
  const { equation, reactants, products, product } = withProduct(read, formulaFrom(request.product));
  const names = request.materials.map((m) => m.name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined)
    throw new PlanError("plan.request", `two materials are called '${twice}'`, { hint: "give each its own name" });
  const step = (like: Quantity): Quantity => {
    if (!like.isPositive())
      throw new PlanError("plan.not-positive", `a readability must be above zero, not ${String(like)}`);
    return like;
  };
  const wet = procedure !== "thermal decomposition" && !isHeatedDry(reactants, products);
  const temperature = expectDimension(request.temperature ?? planned("temperature"), "temperature", "temperature", {
    symbol: "T",
    label: "temperature of room and solutions",
  });
  checkWarmth(temperature, wet, "temperature");
  return {
    request,
    equation,
    reactants,
    products,
    product,
    materials: request.materials
      .filter(({ aside }) => aside !== true)
      .map((material) => readMaterial(material, reactants)),
    asides: request.materials.filter(({ aside }) => aside === true).map(readAside),
    wet,
    temperature,
    pressure: expectDimension(request.pressure ?? planned("pressure"), "pressure", "pressure", {
      symbol: "p",
      label: "air pressure",
    }),
    room: roomOf(request),
    steps: {
      mass: step(expectDimension(request.readability?.mass ?? planned("massStep"), "mass", "readability.mass")),
      volume: step(
        expectDimension(request.readability?.volume ?? planned("volumeStep"), "volume", "readability.volume"),
      ),
    },
  };
}

function roomOf({ room }: PlanRequest): Room {
  const positive = (q: Quantity): Quantity => {
    if (!q.isPositive()) throw new PlanError("plan.not-positive", `the room must be above zero, not ${q}`);
    return q;
  };
  const volume = expectDimension(room?.volume ?? planned("roomVolume"), "volume", "room.volume", {
    symbol: "V(room)",
    label: "volume of the room",
  });
  const changes = quantity((room?.airChanges ?? planned("airChanges")) as Quantity, {
    symbol: "n(air)",
    label: "air changes of the room",
  });
  return { volume: positive(volume), changes: positive(changes) };
}

const availableOf = ({ shelf }: Material): Quantity | undefined =>
  shelf.available === undefined ? undefined : portionOf(shelf.available, `what there is of ${shelf.name}`);

function positiveAmount(amount: Quantity, what: string): Quantity {
  if (amount.isPositive()) return amount;
  throw new PlanError("plan.not-positive", `${what} must be above zero, not ${amount}`);
}

/** Part of its species' need that one of several materials brings: they are used in the ratio of what there is of each. Undefined for the only one. */
function partOf(material: Material, materials: readonly Material[]): Quantity | undefined {
  const alike = materials.filter((m) => m.species === material.species);
  if (alike.length === 1) return undefined;
  const amounts = alike.map((m) => {
    const available = availableOf(m);
    if (available !== undefined) return m.amountIn(available);
    throw new PlanError("plan.request", `${alike.map((one) => one.shelf.name).join(" and ")} bring the same reactant`, {
      hint: "give `available` for each: they are used in that ratio",
    });
  });
  return amounts[alike.indexOf(material)]!.dividedBy(sum(amounts));
}

/** Extent the scale asks for, before rounding to the balance. */
function extentFor(setting: Setting): Quantity {
  const {
    request: { scale },
    materials,
    product,
  } = setting;
  const of = (material: Material, portion: Quantity): Quantity => {
    const share = exact("1").plus(material.excess);
    const part = partOf(material, materials);
    const whole = portion.dimension === "amount of substance" ? portion : material.amountIn(portion);
    const amount = whole.dividedBy(share);
    return (part === undefined ? amount : amount.dividedBy(part)).dividedBy(material.species.coefficient);
  };
  if (scale === "all") {
    const extents = materials.flatMap((m) => {
      const available = availableOf(m);
      return available === undefined ? [] : [of(m, available)];
    });
    if (extents.length === 0)
      throw new PlanError("plan.scale", "nothing says how much there is", { hint: "give `available` for a material" });
    return minimum(extents);
  }
  if (typeof scale !== "object" || scale === null) {
    throw new PlanError("plan.scale", "a plan needs a scale", {
      hint: '{ product: "50 g" }, { material: "washing soda", portion: "250 g" } or "all"',
    });
  }
  if ("material" in scale) {
    const material = materials.find((m) => m.shelf.name === scale.material);
    if (material === undefined) {
      throw new PlanError("plan.no-such-material", `no material is called '${scale.material}'`, {
        hint: `the materials are ${materials.map((m) => m.shelf.name).join(", ")}`,
      });
    }
    const what = `portion of ${scale.material}`;
    const asked = quantity(scale.portion as Quantity);
    return of(
      material,
      asked.dimension === "amount of substance"
        ? positiveAmount(asked, what)
        : portionOf(scale.portion as Portion, what),
    );
  }
  if ("vessel" in scale) return extentForVessel(setting, expectDimension(scale.vessel, "volume", "scale.vessel"));
  const wanted = quantity(scale.product as Quantity);
  if (!wanted.isPositive())
    throw new PlanError("plan.not-positive", `the wanted product must be above zero, not ${String(wanted)}`);
  if (wanted.dimension === "amount of substance") return wanted.dividedBy(product.coefficient);
  const mass = expectDimension(wanted, "mass", "scale.product");
  return mass.dividedBy(product.molarMass).dividedBy(product.coefficient);
}

/** A portion comes back in the dimension it was asked in. */
function askedAs({ shelf }: Material, { scale }: PlanRequest): PortionDimension | undefined {
  const asked =
    typeof scale === "object" && scale !== null && "material" in scale && scale.material === shelf.name
      ? quantity(scale.portion as Quantity).dimension
      : undefined;
  return asked === "mass" || asked === "volume" ? asked : undefined;
}

/** Exact portions for an extent, excess included. */
function portionsFor({ materials, request }: Setting, extent: Quantity): Quantity[] {
  const needs = materials.map((material) => {
    const need = extent.times(material.species.coefficient).times(exact("1").plus(material.excess));
    const part = partOf(material, materials);
    return part === undefined ? need : need.times(part);
  });
  const asked = (material: Material, need: Quantity): Quantity => material.portionFor(need, askedAs(material, request));
  const portions = materials.map((material, i) => asked(material, needs[i]!));
  // Acid that a shop material brings along uses base before the product forms.
  const base = materials.some(({ also }) => also.length > 0) ? baseAmong(materials) : undefined;
  if (base === undefined) return portions;
  const more = baseForAcids(materials, portions, base);
  return materials.map((material, i) => (material === base ? asked(material, needs[i]!.plus(more)) : portions[i]!));
}

/** Volumes are proportional to the extent: one mole's batch tells how much a vessel takes. */
function extentForVessel(setting: Setting, vessel: Quantity): Quantity {
  if (!vessel.isPositive()) throw new PlanError("plan.not-positive", `the vessel must be above zero, not ${vessel}`);
  const one = exact("1 mol");
  const batch = batchOf(setting, portionsFor(setting, one));
  if (batch.vessel === undefined) {
    throw new PlanError("plan.scale", `how much a vessel of ${vessel} takes cannot be determined`, {
      hint: `missing: ${batch.unknown.join("; ")}`,
    });
  }
  return one.times(vessel.dividedBy(batch.vessel.needed)).to("mol");
}

/** Portions to weigh: exact, and to the step of the instrument. */
export function weigh(setting: Setting): { exact: Quantity[]; portions: Quantity[] } {
  const { materials, steps, request } = setting;
  const extent = extentFor(setting);
  const exactly = portionsFor(setting, extent);
  const limiting = limitingIn(setting);
  const asTaken = (i: number, portion: Quantity, up: boolean): Quantity => {
    const { name } = materials[i]!.shelf;
    const step = portion.dimension === "mass" ? steps.mass : steps.volume;
    const symbol = `${portion.dimension === "mass" ? "m" : "V"}(${name})`;
    const rounded = roundedTo(step, portion, name, up);
    const available = availableOf(materials[i]!);
    // Nobody can take more than there is.
    const isTooMuch =
      request.scale === "all" &&
      available !== undefined &&
      available.dimension === rounded.dimension &&
      rounded.compare(available) > 0;
    return reading(isTooMuch ? roundedTo(step, portion, name) : rounded, step, { symbol, label: `${name} to take` });
  };
  // What limits is rounded to the nearest step; of everything else there is then enough.
  const own = exactly.map((portion, i) =>
    materials[i]!.species === limiting ? asTaken(i, portion, false) : undefined,
  );
  const { excess } = materials.find(({ species }) => species === limiting)!;
  const over = exact("1").plus(excess);
  const taken = sum(own.flatMap((portion, i) => (portion === undefined ? [] : [materials[i]!.amountIn(portion)])));
  const needed = portionsFor(setting, exactText(taken.dividedBy(over).dividedBy(limiting.coefficient)));
  return { exact: exactly, portions: own.map((portion, i) => portion ?? asTaken(i, needed[i]!, true)) };
}

/** The figure by itself: what to take for it is read off the instrument, whatever the other portion's uncertainty. */
const exactText = (q: Quantity): Quantity => quantity({ value: q.value.toPrecision(15), unit: q.unit });

/** The species that runs out first: decided before anything is rounded. */
function limitingIn({ materials, product, request: { scale } }: Setting): Species {
  const isMeant = materials.filter(({ shelf }) => shelf.inExcess !== true);
  const base = materials.some(({ also }) => also.length > 0) ? baseAmong(materials) : undefined;
  const some = isMeant.filter((one) => one !== base);
  const all = some.length > 0 ? some : isMeant.length > 0 ? isMeant : materials;
  const least = minimum(all.map(({ excess }) => excess));
  const tied = all.filter(({ excess }) => excess.compare(least) <= 0);
  const key = keyElement(product.formula);
  const found =
    // An acid salt has no base to spare.
    (isAcidSalt(product.formula) ? tied.find(({ form }) => isBase(form)) : undefined) ??
    (typeof scale === "object" && scale !== null && "material" in scale
      ? tied.find(({ shelf }) => shelf.name === scale.material)
      : undefined) ??
    tied.find(({ form }) => key !== undefined && form.count(key).n !== 0n) ??
    tied[0]!;
  return found.species;
}

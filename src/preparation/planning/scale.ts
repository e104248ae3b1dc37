// The scale of a batch: the extent that is asked for, and what to weigh for it.

import type { PortionLike } from "../../amount";
import { list } from "../../foundation/wording";
import { minimum, type Quantity, quantity, sum } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { PlanError } from "../error";
import { isAcidSalt, isBase } from "../procedure/kind";
import { type Rounding, reading, roundedTo } from "../reaction/account";
import { keyElement } from "../reaction/candidates";
import { acidAfterLye, givingAmong } from "../reaction/neutralising";
import type { Species } from "../reaction/species";
import { guard } from "../request/argument";
import type { PlanRequest } from "../request/request";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { type PortionDimension, portionOf } from "../shelf/strength";
import { batchOf } from "./batch";
import { exact } from "./exact";

const availableOf = ({ shelf }: Material): Quantity | undefined =>
  shelf.available === undefined ? undefined : portionOf(shelf.available, `what there is of ${shelf.name}`);

/** Part of its species' need that one of several materials brings: they are used in the ratio of what there is of each. Undefined for the only one. */
function partOf(material: Material, materials: readonly Material[]): Quantity | undefined {
  const alike = materials.filter((m) => m.species === material.species);
  if (alike.length === 1) return undefined;
  const amounts = alike.map((m) => {
    const available = availableOf(m);
    if (available !== undefined) return m.amountIn(available);
    throw new PlanError("plan.request", `${list(alike.map((one) => one.shelf.name))} bring the same reactant`, {
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
    asked,
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
    const portion = quantity(scale.portion as Quantity);
    return of(
      material,
      portion.dimension === "amount of substance"
        ? guard.positive(portion, what)
        : portionOf(scale.portion as PortionLike, what),
    );
  }
  if ("vessel" in scale) return extentForVessel(setting, expectDimension(scale.vessel, "volume", "scale.vessel"));
  const wanted = quantity(scale.product as Quantity);
  guard.positive(wanted, "the wanted product");
  if (wanted.dimension === "amount of substance") return wanted.dividedBy(product.coefficient);
  const mass = expectDimension(wanted, "mass", "scale.product");
  return mass.dividedBy(asked.molarMass).dividedBy(product.coefficient);
}

/** The portion of a material that the scale asks for. */
const portionIn = ({ scale }: PlanRequest): Quantity | undefined =>
  typeof scale === "object" && scale !== null && "material" in scale ? quantity(scale.portion as Quantity) : undefined;

const isAskedPortion = ({ shelf }: Material, { scale }: PlanRequest): boolean =>
  typeof scale === "object" && scale !== null && "material" in scale && scale.material === shelf.name;

/** Less than this share is the rounding of the sums. */
const TRACE = 1e-7;

/** What comes along may ask for more of a pack than was asked for. */
function isAsAsked(portion: Quantity, request: PlanRequest): boolean {
  const asked = portionIn(request);
  if (asked === undefined || asked.dimension !== portion.dimension) return false;
  return Math.abs(portion.dividedBy(asked).minus(exact("1")).toNumber("")) <= TRACE;
}

/** A portion comes back in the dimension it was asked in. */
function askedAs(material: Material, request: PlanRequest): PortionDimension | undefined {
  const asked = isAskedPortion(material, request) ? portionIn(request)?.dimension : undefined;
  return asked === "mass" || asked === "volume" ? asked : undefined;
}

/** Exact portions for an extent, excess included. */
function portionsFor({ materials, request }: Setting, extent: Quantity): Quantity[] {
  const needs = materials.map((material) => {
    const need = extent.times(material.species.coefficient).times(exact("1").plus(material.excess));
    const part = partOf(material, materials);
    return part === undefined ? need : need.times(part);
  });
  const after = acidAfterLye(materials);
  if (after !== undefined) {
    const { lye, acid, takes } = after;
    const over = needs[lye]!.minus(extent.times(materials[lye]!.species.coefficient));
    needs[acid] = needs[acid]!.plus(over.times(takes));
  }
  const asked = (material: Material, need: Quantity): Quantity => material.portionFor(need, askedAs(material, request));
  const portions = materials.map((material, i) => asked(material, needs[i]!));
  // Acid that a shop material brings along uses base before the product forms, carbonate acid.
  const giving = givingAmong(materials);
  if (giving === undefined) return portions;
  const more = giving.used(portions);
  return materials.map((material, i) =>
    material === giving.material ? asked(material, needs[i]!.plus(more)) : portions[i]!,
  );
}

/** Volumes are proportional to the extent: one mole's batch tells how much a vessel takes. */
function extentForVessel(setting: Setting, vessel: Quantity): Quantity {
  guard.positive(vessel, "the vessel");
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
  const asTaken = (i: number, portion: Quantity, way: Rounding): Quantity => {
    const { name } = materials[i]!.shelf;
    const step = portion.dimension === "mass" ? steps.mass : steps.volume;
    const symbol = `${portion.dimension === "mass" ? "m" : "V"}(${name})`;
    const rounded = roundedTo(step, portion, name, way);
    const available = availableOf(materials[i]!);
    // Nobody can take more than there is.
    const isTooMuch =
      request.scale === "all" &&
      available !== undefined &&
      available.dimension === rounded.dimension &&
      rounded.compare(available) > 0;
    return reading(isTooMuch ? roundedTo(step, portion, name) : rounded, step, { symbol, label: `${name} to take` });
  };
  // What is asked for is taken. What limits is rounded to the nearest step; of everything else there is then enough.
  const asked = materials.findIndex((material) => isAskedPortion(material, request));
  const isFixed = asked >= 0 && materials[asked]!.species !== limiting && isAsAsked(exactly[asked]!, request);
  const fixed = isFixed ? asTaken(asked, exactly[asked]!, "nearest") : undefined;
  const limits = (i: number): boolean => materials[i]!.species === limiting;
  const ofLimiting = (way: Rounding) => exactly.map((portion, i) => (limits(i) ? asTaken(i, portion, way) : undefined));
  const amountOf = (some: readonly (Quantity | undefined)[]): Quantity =>
    sum(some.flatMap((portion, i) => (portion === undefined ? [] : [materials[i]!.amountIn(portion)])));
  const nearest = ofLimiting("nearest");
  /** A step more of what limits, and what was asked for would run out first. */
  const isOver =
    fixed !== undefined &&
    materials[asked]!.amountIn(fixed)
      .dividedBy(materials[asked]!.species.coefficient)
      .compare(amountOf(nearest).dividedBy(limiting.coefficient)) < 0;
  const own = (isOver ? ofLimiting("down") : nearest).map((portion, i) => (i === asked ? (fixed ?? portion) : portion));
  const { excess } = materials.find(({ species }) => species === limiting)!;
  const over = exact("1").plus(excess);
  const taken = amountOf(own.map((portion, i) => (limits(i) ? portion : undefined)));
  const needed = portionsFor(setting, exactText(taken.dividedBy(over).dividedBy(limiting.coefficient)));
  return { exact: exactly, portions: own.map((portion, i) => portion ?? asTaken(i, needed[i]!, "up")) };
}

/** The figure by itself: what to take for it is read off the instrument, whatever the other portion's uncertainty. */
const exactText = (q: Quantity): Quantity => quantity({ value: q.value.toPrecision(15), unit: q.unit });

/** The species that runs out first: decided before anything is rounded. */
function limitingIn({ materials, product, request: { scale } }: Setting): Species {
  const isMeant = materials.filter(({ shelf }) => shelf.inExcess !== true);
  const giving = givingAmong(materials)?.material;
  const some = isMeant.filter((one) => one !== giving);
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

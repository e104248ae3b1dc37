// The account of a batch: from what is weighed, the amounts, the limiting material, the extent, and what comes out. Plan
// and run use the same account; a run merely puts other weighings in.

import { type Formula, molarMass } from "../../formula";
import { keptBeside } from "../../foundation/memo";
import { minimum, type Quantity, quantity } from "../../quantity";
import { PlanError } from "../error";
import { exact } from "../planning/exact";
import type { Material } from "../shelf/material";
import { isMetal } from "./acids";
import { acidTakerAmong, bringsAcid, givingAmong, lessForLye } from "./neutralising";
import { keyed, nameOfFormula, type Species } from "./species";

/** What one material contributes. */
export interface Supplied {
  /** Name that the person gives it on the shelf. */
  readonly material: string;
  /** As printed, crystal water included. */
  readonly form: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** Species of the equation that the material supplies. */
  readonly species: string;
  /** Mass or volume taken. */
  readonly portion: Quantity<"mass"> | Quantity<"volume">;
  /** Of the species in the portion, at the assay or strength. */
  readonly amount: Quantity<"amount of substance">;
  /** Amount over what the extent uses, as a share of what is used. */
  readonly excess: Quantity<"number">;
  /** Amount over the amount the extent uses: 1 is exactly enough. */
  readonly timesStoichiometric: Quantity<"number">;
  /** Amount left over; below zero if it falls short although it was meant to be in excess. */
  readonly left: Quantity<"amount of substance">;
  /** Does it run out first? */
  readonly limiting: boolean;
}

/** What one species of the products comes to. */
export interface Formed {
  /** As printed, with subscripts; crystal water included. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** At the extent of the batch. */
  readonly amount: Quantity<"amount of substance">;
  /** At the extent of the batch. */
  readonly mass: Quantity<"mass">;
}

/** The sums of a batch. */
export interface Account {
  /** One for each material, in the order of the request. */
  readonly supplied: readonly Supplied[];
  /** Name of the material that runs out first. */
  readonly limiting: string;
  /** Extent of the reaction as the balanced equation is written. */
  readonly extent: Quantity<"amount of substance">;
  /** Every product of the equation when the extent is reached. */
  readonly formed: readonly Formed[];
  /** Reactants no material supplies: water from the solvent, oxygen from the air. */
  readonly taken: readonly Formed[];
}

/** Amount and mass of a species for an extent. */
export function formedBy(extent: Quantity, species: Species): Formed {
  const { name, formula, coefficient, molarMass: molar } = species;
  const multiple = coefficient === 1n ? extent : extent.times(coefficient);
  const amount = multiple.named({ symbol: `n(${name})`, rule: "amount = extent × coefficient" });
  return keyed("formula", {
    formula: name,
    amount,
    mass: massFor(amount, formula, undefined, molar),
  });
}

export function massFor(
  amount: Quantity,
  formula: Formula,
  words?: { symbol: string; label: string },
  M: Quantity = molarMass(formula),
): Quantity<"mass"> {
  const symbol = `m(${nameOfFormula(formula)})`;
  return amount
    .times(M)
    .to("g")
    .named({ symbol, rule: "mass = amount × molar mass", ...words });
}

/** The account for portions as they were planned or really taken; one for each material, in the order of `materials`. */
export function accountFor(
  materials: readonly Material[],
  portions: readonly Quantity[],
  reactants: readonly Species[],
  products: readonly Species[],
): Account {
  const amounts = materials.map((material, i) => {
    const { name } = material.shelf;
    const { symbol, dimension } = portions[i]!;
    const portion =
      symbol === undefined
        ? portions[i]!.named({ symbol: `${dimension === "volume" ? "V" : "m"}(${name})`, label: `${name} taken` })
        : portions[i]!;
    return material.amountIn(portion);
  });
  const effective = lessForLye(materials, lessForOthers(materials, portions, amounts));
  return accountOfAmounts(materials, portions, effective, reactants, products);
}

/** Amount of a metal if the acid that comes along took none of the other; undefined for other products, and where no acid takes a metal. */
export function mostFormed(
  materials: readonly Material[],
  portions: readonly Quantity[],
  product: Species,
): Quantity | undefined {
  if (!isMetal(product.formula)) return undefined;
  const taker = bringsAcid(materials) ? acidTakerAmong(materials) : undefined;
  if (taker === undefined || !isMetal(taker.form)) return undefined;
  const amounts = materials.map((material, i) => material.amountIn(portions[i]!));
  return extentOf(materials, amounts).extent.times(product.coefficient).to("mol");
}

/** Base that acid in the shop materials uses makes no product, nor acid that their carbonates use. */
function lessForOthers(
  materials: readonly Material[],
  portions: readonly Quantity[],
  amounts: readonly Quantity[],
): readonly Quantity[] {
  const giving = givingAmong(materials);
  if (giving === undefined) return amounts;
  const used = giving.used(portions);
  return amounts.map((amount, i) => (materials[i] === giving.material ? amount.minus(used) : amount));
}

/** The account for amounts of substance already known, in the order of `materials`. */
export function accountOfAmounts(
  materials: readonly Material[],
  portions: readonly Quantity[],
  amounts: readonly Quantity[],
  reactants: readonly Species[],
  products: readonly Species[],
): Account {
  const { totals, extent, limiting } = extentOf(materials, amounts);
  const supplied = materials.map((material, i) => {
    const { species } = material;
    const used = extent.times(species.coefficient);
    const total = totals.get(species)!;
    const left = total
      .minus(used)
      .named({ symbol: `n(${species.name}, left)`, rule: "amount left = amount taken - amount used" });
    return keyed("form", {
      material: material.shelf.name,
      form: material.formName,
      species: species.name,
      portion: portions[i]!,
      amount: amounts[i]!,
      left,
      timesStoichiometric: total.dividedBy(used).named({
        symbol: `times(${species.name})`,
        label: `${species.name} taken for one part that is used`,
        rule: "amount taken / amount used",
      }),
      excess: left.dividedBy(used).to("%"),
      limiting: species === limiting,
    });
  });
  const isSupplied = (species: Species): boolean => totals.has(species);
  return {
    supplied,
    limiting: supplied.find((s) => s.limiting)!.material,
    extent,
    formed: products.map((species) => formedBy(extent, species)),
    taken: reactants.filter((species) => !isSupplied(species)).map((species) => formedBy(extent, species)),
  };
}

/** How far the reaction can go, the species that stops it, and what there is of each. */
export function extentOf(
  materials: readonly Material[],
  amounts: readonly Quantity[],
): { readonly totals: ReadonlyMap<Species, Quantity>; readonly extent: Quantity; readonly limiting: Species } {
  const totals = new Map<Species, Quantity>();
  materials.forEach(({ species }, i) => {
    const before = totals.get(species);
    totals.set(species, before === undefined ? amounts[i]! : before.plus(amounts[i]!));
  });
  // A species of which any material is meant to be in excess cannot be what the batch is planned to run out of.
  const inExcess = new Set(materials.filter((m) => m.shelf.inExcess === true).map((m) => m.species));
  const counted = [...totals].filter(([species]) => !inExcess.has(species));
  const candidates = counted.map(([species, amount]) => ({
    species,
    extent: amount.dividedBy(species.coefficient).named({
      symbol: `ξ(${species.name})`,
      label: `extent that ${species.name} allows`,
      rule: "extent = amount / coefficient",
    }),
  }));
  const first = candidates[0];
  if (first === undefined)
    throw new PlanError("plan.missing-material", "no material supplies a reactant that could run out", {
      hint: "give the amount of at least one material that is not there in excess",
    });
  if (candidates.length === 1) return { totals, extent: first.extent, limiting: first.species };
  const extent = minimum(
    candidates.map((c) => c.extent),
    {
      symbol: "ξ",
      label: "extent of the reaction",
      rule: "the reaction stops when the first material is used up",
    },
  );
  return { totals, extent, limiting: candidates.find((c) => c.extent.compare(extent) === 0)!.species };
}

const textOf = /* @__PURE__ */ keptBeside((step: Quantity) => step.value.toString());

/** Smallest step of an instrument, as the reading's uncertainty: value and tare are two readings of half a step. */
export function reading(value: Quantity, step: Quantity, naming: { symbol: string; label: string }): Quantity {
  const unit = step.unit;
  // Two rectangles of half-width d/2 make a triangle of half-width d: u = d/√6 (JCGM 100:2008, 4.3.7 and 4.3.9).
  return quantity(
    { value: value.in(unit).toString(), unit, halfWidth: textOf(step), distribution: "triangular" },
    naming,
  );
}

/** More steps than any balance or cylinder has. */
const MOST_STEPS = "1000000000000";

/** Less than this share of a step over it is no reason for one more. */
const HAIR = 1e-6;

/** Which way a portion is rounded; down only where a step is left. */
export type Rounding = "nearest" | "up" | "down";

/** A portion rounded to what the instrument can show; refuses one that rounds to nothing. */
export function roundedTo(step: Quantity, portion: Quantity, name: string, way: Rounding = "nearest"): Quantity {
  const inSteps = portion.dividedBy(step);
  if (inSteps.compare(exact(MOST_STEPS)) > 0) {
    throw new PlanError(
      "plan.scale",
      `${name}: ${portion.format({ significant: 3 })} is more than any instrument shows in steps of ${String(step)}`,
      {
        hint: "plan a smaller batch, or state a coarser balance",
      },
    );
  }
  const nearest = (): string => inSteps.format({ decimals: 0 });
  const down = (): string => {
    const floor = inSteps.in("").plus(HAIR).floor();
    return floor.greaterThan(0) ? floor.toFixed(0) : nearest();
  };
  const steps = way === "up" ? inSteps.in("").minus(HAIR).ceil().toFixed(0) : way === "down" ? down() : nearest();
  if (Number(steps) <= 0) {
    throw new PlanError(
      "plan.too-small",
      `${name}: ${portion.format({ significant: 3 })} is less than half a step of ${String(step)}`,
      {
        hint: "plan a larger batch, or state a finer balance",
      },
    );
  }
  return step.times(BigInt(steps));
}

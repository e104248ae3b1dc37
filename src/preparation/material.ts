// A material read and matched to the species of the equation it supplies: by composition, else by what is left without
// crystal water. Turns what is weighed or measured into moles and back.
import type { BalancedEquation } from "../equation";
import { Formula, molarMass, parseFormula } from "../formula";
import { crystalWater } from "../hydrate";
import { expectDimension, type Quantity, type QuantityLike, quantity } from "../quantity";
import { PlanError } from "./error";
import { exact } from "./exact";
import { remembering } from "./lazy";
import type { Portion, ShelfMaterial } from "./request";

/** A species of the equation with its whole-number coefficient. */
export interface Species {
  readonly formula: Formula;
  readonly name: string;
  readonly coefficient: bigint;
  /** Water of crystallization written in the equation, per formula unit. */
  readonly waters: Quantity;
}

/** A material ready for computing. */
export interface Material {
  readonly shelf: ShelfMaterial;
  readonly form: Formula;
  readonly formName: string;
  readonly species: Species;
  /** Water of crystallization of the form as sold, per formula unit. */
  readonly waters: Quantity;
  readonly excess: Quantity;
  readonly measuredBy: "mass" | "volume";
  /** Amount of substance in a measured portion. */
  amountIn(portion: Quantity): Quantity;
  /** Portion that holds an amount of substance. */
  portionFor(amount: Quantity): Quantity;
  /** Mass of a portion, where it can be told. */
  massOf(portion: Quantity): Quantity | undefined;
  /** Water that comes with a portion beside crystal water: the water of a solution. */
  solventIn(portion: Quantity): Quantity | undefined;
}

/** The formula as it is printed and used in symbols; the phase belongs to the equation, not to the name. */
export const nameOfFormula = (formula: Formula): string => formula.toUnicode().replace(PHASE, "");

const PHASE = /\((?:s|l|g|aq|cr)\)$/;

export function speciesOf(side: BalancedEquation["reactants"]): Species[] {
  return side.map(({ formula, coefficient }) => ({
    formula,
    name: nameOfFormula(formula),
    coefficient,
    waters: watersOf(formula),
  }));
}

const isWater = (formula: Formula): boolean => formula.compositionText === "H2O";

/** A formula of a request, read once: its texts and its water are then known to every plan that names it again. */
const readOnce = /* @__PURE__ */ remembering<Formula>(500);
export const formulaFrom = (like: string | Formula): Formula =>
  like instanceof Formula
    ? like
    : typeof like === "string"
      ? readOnce(like, () => parseFormula(like))
      : parseFormula(like);

const rememberedWaters = /* @__PURE__ */ remembering<Quantity>(500);

function watersOf(formula: Formula): Quantity {
  return rememberedWaters(formula.toString(), () => {
    const waters = isWater(formula) ? "0" : crystalWater(formula).waters.toFraction();
    return quantity({ value: waters, unit: "" });
  });
}

const rememberedCores = /* @__PURE__ */ remembering<string>(500);

/** Atoms and charge without crystal water. */
export const coreOf = (formula: Formula): string =>
  rememberedCores(formula.toString(), () => crystalWater(formula).anhydrous.compositionText);

/** Are the two the same substance, or the same salt with another share of crystal water? */
export function sameCore(a: Formula, b: Formula): boolean {
  if (isWater(a) || isWater(b)) return isWater(a) && isWater(b);
  return coreOf(a) === coreOf(b);
}

function matching(form: Formula, name: string, reactants: readonly Species[]): Species {
  const same =
    reactants.find((s) => s.formula.hasSameComposition(form)) ?? reactants.find((s) => sameCore(s.formula, form));
  if (same !== undefined) return same;
  throw new PlanError(
    "plan.unmatched-material",
    `${name} (${form}) is no reactant of the equation, with or without water`,
    {
      hint: `the reactants are ${reactants.map((s) => s.formula.toString()).join(", ")}`,
      details: { material: name, form: form.toString() },
    },
  );
}

/** A share such as an excess or an assay, as a plain fraction in [0, most]. */
export function shareOf(
  like: QuantityLike,
  argument: string,
  most: string,
  naming: { symbol?: string; label: string },
): Quantity {
  const q = expectDimension(like, "mass fraction", argument, naming);
  if ((!q.isPositive() && !q.isZero()) || q.compare(exact(most)) > 0) {
    throw new PlanError("plan.request", `${argument} of ${String(q)} is outside 0 to ${Number(most) * 100} %`);
  }
  return q;
}

/** A mass or a volume, above zero. */
export function portionOf(like: Portion, what: string, naming?: { symbol: string; label: string }): Quantity {
  const q = quantity(like as QuantityLike, naming);
  if (q.dimension !== "mass" && q.dimension !== "volume") {
    throw new PlanError("plan.request", `${what} must be a mass or a volume, not a ${q.dimension} (${String(q)})`);
  }
  if (!q.isPositive()) throw new PlanError("plan.not-positive", `${what} must be above zero, not ${String(q)}`);
  return q;
}

interface Strength {
  readonly measuredBy: "mass" | "volume";
  readonly amountIn: (portion: Quantity) => Quantity;
  readonly portionFor: (amount: Quantity) => Quantity;
  readonly massOf: (portion: Quantity) => Quantity | undefined;
}

const wrongPortion = (name: string, portion: Quantity, needs: string): PlanError =>
  new PlanError("plan.strength", `${name}: a ${portion.dimension} (${String(portion)}) cannot be turned into moles`, {
    hint: needs,
  });

/** A solid, or a solution whose strength is a mass fraction: moles from mass, through the density also from volume. */
function byMassFraction(shelf: ShelfMaterial, M: Quantity, species: string): Strength {
  const { name } = shelf;
  const isSolution = shelf.strength !== undefined;
  const w = shareOf(
    shelf.strength ?? shelf.assay ?? exact("100 %"),
    `${isSolution ? "strength" : "assay"} of ${name}`,
    "1",
    {
      symbol: `w(${name})`,
      label: isSolution ? `strength of ${name}` : `assay of ${name}`,
    },
  );
  if (w.isZero())
    throw new PlanError(
      "plan.not-positive",
      `${name} holds nothing of it: its ${isSolution ? "strength" : "assay"} is 0`,
    );
  const density =
    shelf.density === undefined
      ? undefined
      : expectDimension(shelf.density, "density", `density of ${name}`, {
          symbol: `ρ(${name})`,
          label: `density of ${name}`,
        });
  const massOf = (portion: Quantity): Quantity => {
    if (portion.dimension === "mass") return portion;
    if (density === undefined) throw wrongPortion(name, portion, "give the density of the material, or weigh it");
    return portion
      .times(density)
      .to("g")
      .named({ symbol: `m(${name})`, rule: "mass = volume × density" });
  };
  return {
    measuredBy: density === undefined ? "mass" : "volume",
    massOf,
    amountIn: (portion) =>
      massOf(portion)
        .times(w)
        .dividedBy(M)
        .named({ symbol: `n(${species})`, rule: "amount = mass × mass fraction / molar mass" }),
    portionFor: (amount) => {
      const mass = amount.times(M).dividedBy(w).to("g");
      return density === undefined ? mass : mass.dividedBy(density).to("mL");
    },
  };
}

/** A solution by grams or moles in a volume. */
function byVolume(shelf: ShelfMaterial, M: Quantity, species: string, strength: Quantity): Strength {
  const { name } = shelf;
  const naming = { symbol: `c(${name})`, label: `strength of ${name}` };
  if (!strength.isPositive()) throw new PlanError("plan.not-positive", `the strength of ${name} must be above zero`);
  const c =
    strength.dimension === "concentration" ? strength.named(naming) : strength.named(naming).dividedBy(M).to("mol/L");
  const rule =
    strength.dimension === "concentration"
      ? "amount = concentration × volume"
      : "amount = mass concentration × volume / molar mass";
  const density =
    shelf.density === undefined ? undefined : expectDimension(shelf.density, "density", `density of ${name}`);
  const volumeOf = (portion: Quantity): Quantity => {
    if (portion.dimension === "volume") return portion;
    if (density === undefined)
      throw wrongPortion(name, portion, "give the density of the solution, or measure its volume");
    return portion.dividedBy(density).to("mL");
  };
  return {
    measuredBy: "volume",
    massOf: (portion) =>
      portion.dimension === "mass" ? portion : density === undefined ? undefined : portion.times(density).to("g"),
    amountIn: (portion) =>
      c
        .times(volumeOf(portion))
        .to("mol")
        .named({ symbol: `n(${species})`, rule }),
    portionFor: (amount) => amount.dividedBy(c).to("mL"),
  };
}

/** Read one material and find the reactant it supplies. */
export function readMaterial(shelf: ShelfMaterial, reactants: readonly Species[]): Material {
  const { name } = shelf;
  const form = formulaFrom(shelf.form);
  const species = matching(form, name, reactants);
  if (shelf.strength !== undefined && shelf.assay !== undefined) {
    throw new PlanError("plan.strength", `${name} has both an assay and a strength`, {
      hint: "a solid has an assay, a solution a strength",
    });
  }
  const M = molarMass(form);
  const strength = shelf.strength === undefined ? undefined : quantity(shelf.strength as QuantityLike);
  const isVolumetric = strength?.dimension === "density" || strength?.dimension === "concentration";
  const how = isVolumetric ? byVolume(shelf, M, species.name, strength) : byMassFraction(shelf, M, species.name);
  return {
    shelf,
    form,
    formName: nameOfFormula(form),
    species,
    waters: watersOf(form),
    excess: shareOf(shelf.excess ?? exact("0 %"), `excess of ${name}`, "100", { label: `excess of ${name}` }),
    measuredBy: how.measuredBy,
    amountIn: how.amountIn,
    portionFor: how.portionFor,
    massOf: how.massOf,
    solventIn: (portion) => {
      if (strength === undefined) return undefined;
      const mass = how.massOf(portion);
      return mass?.minus(how.amountIn(portion).times(M).to("g"));
    },
  };
}

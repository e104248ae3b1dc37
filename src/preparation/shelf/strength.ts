// How strong a material is: what turns its grams and millilitres into moles and back.

import { convertStrength, densityOfSolution, type PortionLike } from "../../amount";
import { type Formula, molarMass } from "../../formula";
import { attempt, type Result } from "../../foundation/error";
import { type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { PlanError } from "../error";
import { exact } from "../planning/exact";
import { isMiscible } from "../reaction/fluids";
import { guard } from "../request/argument";
import type { ShelfMaterial } from "../request/request";

/** How a portion is measured. */
export type PortionDimension = "mass" | "volume";

/** A share such as an excess or an assay, as a plain fraction in [0, most]. */
export function shareOf(
  like: QuantityLike,
  argument: string,
  most: string,
  naming?: { symbol?: string; label: string },
): Quantity {
  const q = expectDimension(like, "mass fraction", argument, naming);
  if ((!q.isPositive() && !q.isZero()) || q.compare(exact(most)) > 0) {
    throw new PlanError("plan.request", `${argument} of ${String(q)} is outside 0 to ${Number(most) * 100} %`);
  }
  return q;
}

/** A mass or a volume, above zero. */
export function portionOf(like: PortionLike, what: string, naming?: { symbol: string; label: string }): Quantity {
  const q = quantity(like as QuantityLike, naming);
  if (q.dimension !== "mass" && q.dimension !== "volume") {
    throw new PlanError("plan.request", `${what} must be a mass or a volume, not a ${q.dimension} (${String(q)})`);
  }
  return guard.positive(q, what);
}

/** A material by its strength. */
interface Strength {
  readonly M: Quantity;
  readonly massFraction: () => Quantity | undefined;
  readonly amountIn: (portion: Quantity) => Quantity;
  readonly portionFor: (amount: Quantity, as?: PortionDimension) => Quantity;
  readonly massOf: (portion: Quantity) => Quantity | undefined;
  readonly volumeOf: (portion: Quantity) => Quantity | undefined;
  readonly likeWater: () => boolean;
}

const wrongPortion = (name: string, portion: Quantity, needs: string): PlanError =>
  new PlanError("plan.strength", `${name}: a ${portion.dimension} (${String(portion)}) cannot be turned into moles`, {
    hint: needs,
  });

/** Density of a solution by the tables near 20 °C. */
export function densityAt(form: Formula, w: Quantity | undefined): Quantity | undefined {
  if (w === undefined) return undefined;
  const found = attempt(() => densityOfSolution(form, w as Quantity<"mass fraction">));
  return found.ok ? found.value : undefined;
}

/** So dilute that it weighs about as much as water: up to 15 % by weight in what is usual. */
const DILUTE = "15 %";

/** A dilute solution whose density nobody tells. */
const asWater = (name: string): Quantity =>
  quantity(
    { value: "1.03", unit: "g/mL", halfWidth: "0.05", distribution: "rectangular" },
    {
      symbol: `ρ(${name})`,
      label: `density of ${name}, near that of water`,
      assumption: "a dilute solution without a density is taken to weigh 0.98 to 1.08 g/mL",
    },
  );

/** Mass fraction of a dilute solution by volume, were it as heavy as water. */
const isDilute = (w: Quantity | undefined): boolean => w !== undefined && w.compare(exact(DILUTE)) <= 0;

/** The density that was given, else what the tables have for the solution; worked out once, when it is needed. */
function densityOf(
  shelf: ShelfMaterial,
  lookUp: () => Quantity | undefined,
  looksUp = shelf.strength !== undefined,
): () => Quantity | undefined {
  const { name, density } = shelf;
  if (density !== undefined) {
    const given = expectDimension(density, "density", `density of ${name}`, {
      symbol: `ρ(${name})`,
      label: `density of ${name}`,
    });
    return () => given;
  }
  if (!looksUp) return () => undefined;
  let found: { readonly density: Quantity | undefined } | undefined;
  return () => {
    found ??= { density: lookUp() };
    return found.density;
  };
}

/** A solid, or a solution whose strength is a mass fraction: moles from mass, through the density also from volume. */
export function byMassFraction(shelf: ShelfMaterial, form: Formula, species: string): Strength {
  const { name } = shelf;
  const M = molarMass(form);
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
      `${name} contains none of it: its ${isSolution ? "strength" : "assay"} is 0`,
    );
  const known = densityOf(shelf, () => densityAt(form, w), isSolution || isMiscible(form));
  const likeWater = (): boolean => isSolution && known() === undefined && isDilute(w);
  let taken: Quantity | undefined;
  const density = (): Quantity | undefined => {
    taken ??= known() ?? (likeWater() ? asWater(name) : undefined);
    return taken;
  };
  const volumeOf = (portion: Quantity): Quantity | undefined => {
    if (portion.dimension === "volume") return portion;
    const rho = density();
    return rho === undefined ? undefined : portion.dividedBy(rho).to("mL");
  };
  const massOf = (portion: Quantity): Quantity => {
    if (portion.dimension === "mass") return portion;
    const rho = density();
    if (rho === undefined) throw wrongPortion(name, portion, "give the density of the material, or weigh it");
    return portion
      .times(rho)
      .to("g")
      .named({ symbol: `m(${name})`, rule: "mass = volume × density" });
  };
  return {
    M,
    massFraction: () => w,
    massOf,
    amountIn: (portion) =>
      massOf(portion)
        .times(w)
        .dividedBy(M)
        .named({ symbol: `n(${species})`, rule: "amount = mass × mass fraction / molar mass" }),
    volumeOf,
    likeWater,
    portionFor: (amount, as) => {
      const mass = amount.times(M).dividedBy(w).to("g");
      // What is measured by volume has its density on the label; without one it is weighed.
      if (as === "mass" || (as === undefined && shelf.density === undefined)) return mass;
      const rho = density();
      if (rho === undefined) throw wrongPortion(name, mass, "give the density of the material, or weigh it");
      return mass.dividedBy(rho).to("mL");
    },
  };
}

/** A solution by grams or moles in a volume. */
export function byVolume(shelf: ShelfMaterial, form: Formula, species: string, strength: Quantity): Strength {
  const { name } = shelf;
  const M = molarMass(form);
  const naming = { symbol: `c(${name})`, label: `strength of ${name}` };
  if (!strength.isPositive()) throw new PlanError("plan.not-positive", `the strength of ${name} must be above zero`);
  const isMolar = strength.dimension === "concentration";
  const c = isMolar ? strength.named(naming) : strength.named(naming).dividedBy(M).to("mol/L");
  const rule = isMolar ? "amount = concentration × volume" : "amount = mass concentration × volume / molar mass";
  let looked: Result<ReturnType<typeof convertStrength>> | undefined;
  const massFraction = (): Quantity | undefined => {
    looked ??= attempt(() =>
      convertStrength(strength, {
        of: form,
        to: "% w/w",
        density: shelf.density === undefined ? undefined : (known() as Quantity<"density">),
      }),
    );
    return looked.ok ? looked.value : undefined;
  };
  const known = densityOf(shelf, () => densityAt(form, massFraction()));
  const likeWater = (): boolean => known() === undefined && isDilute(c.times(M).dividedBy(exact("1 g/mL")).to("%"));
  let taken: Quantity | undefined;
  const density = (): Quantity | undefined => {
    taken ??= known() ?? (likeWater() ? asWater(name) : undefined);
    return taken;
  };
  const volumeOf = (portion: Quantity): Quantity => {
    if (portion.dimension === "volume") return portion;
    const rho = density();
    if (rho === undefined) throw wrongPortion(name, portion, "give the density of the solution, or measure its volume");
    return portion.dividedBy(rho).to("mL");
  };
  return {
    M,
    massFraction,
    massOf: (portion) => {
      if (portion.dimension === "mass") return portion;
      const rho = density();
      return rho === undefined ? undefined : portion.times(rho).to("g");
    },
    amountIn: (portion) =>
      c
        .times(volumeOf(portion))
        .to("mol")
        .named({ symbol: `n(${species})`, rule }),
    volumeOf: (portion) => (portion.dimension === "volume" || density() !== undefined ? volumeOf(portion) : undefined),
    likeWater,
    portionFor: (amount, as) => {
      const volume = amount.dividedBy(c).to("mL");
      if (as !== "mass") return volume;
      const rho = density();
      if (rho === undefined)
        throw wrongPortion(name, volume, "give the density of the solution, or measure its volume");
      return volume.times(rho).to("g");
    },
  };
}

/** Volume of a portion; undefined where no density is known. */
export function volumeOf(
  { form, massFraction }: { readonly form: Formula; massFraction(): Quantity | undefined },
  portion: Quantity,
): Quantity | undefined {
  if (portion.dimension === "volume") return portion;
  const density = densityAt(form, massFraction() ?? exact("1"));
  return density === undefined ? undefined : portion.dividedBy(density).to("mL");
}

// A material read and matched to the species of the equation it supplies: by composition, else by what is left without
// crystal water. Turns what is weighed or measured into moles and back.

import type { Formula } from "../../formula";
import { attempt } from "../../foundation/error";
import { type Quantity, type QuantityLike, quantity } from "../../quantity";
import { PlanError } from "../error";
import { exact } from "../planning/exact";
import { protonsOf } from "../reaction/acids";
import { isGas, isMiscible } from "../reaction/fluids";
import { formulaFrom, nameOfFormula, type Species, sameCore, speciesAside, watersOf } from "../reaction/species";
import type { ShelfMaterial } from "../request/request";
import { byMassFraction, byVolume, type PortionDimension, portionOf, shareOf } from "./strength";

/** Acid that keeps a salt clear, which no pack brings. */
export interface PutOn {
  readonly acid: Formula;
  /** As it is called on the shelf. */
  readonly called: string;
  /** Mass of it, as strong as it is planned, for each mass of the salt. */
  readonly times: Quantity;
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
  /** What else is in it, by mass of the whole. */
  readonly also: readonly { readonly form: Formula; readonly share: Quantity }[];
  /** Acid it is stirred into before its water comes; undefined where it needs none, or a pack brings it. */
  readonly putOn?: PutOn | undefined;
  /** It is poured, not dissolved: a solution, or a liquid that mixes with water. */
  readonly isSolution: boolean;
  /** Mass fraction of the form, where it is stated or can be looked up. */
  massFraction(): Quantity | undefined;
  /** Amount of substance in a measured portion. */
  amountIn(portion: Quantity): Quantity;
  /** Portion that contains an amount of substance: in the dimension asked for, else as the material is measured. */
  portionFor(amount: Quantity, as?: PortionDimension): Quantity;
  /** Volume of a portion, where it can be determined. */
  volumeOf(portion: Quantity): Quantity | undefined;
  /** Portion and amount of a material that takes no part; undefined where nobody tells how much. */
  asideTaken(): { readonly portion: Quantity; readonly amount: Quantity } | undefined;
  /** Its density is taken as that of water, for want of a better one. */
  likeWater(): boolean;
  /** Mass of a portion, where it can be determined. */
  massOf(portion: Quantity): Quantity | undefined;
  /** Water that comes with a portion beside crystal water: the water of a solution. */
  solventIn(portion: Quantity): Quantity | undefined;
}

function matching(form: Formula, name: string, reactants: readonly Species[]): Species {
  const same =
    reactants.find((s) => s.formula.hasSameComposition(form)) ?? reactants.find((s) => sameCore(s.formula, form));
  if (same !== undefined) return same;
  throw new PlanError(
    "plan.unmatched-material",
    `${name} (${form}) is not a reactant of the equation, with or without water`,
    {
      hint: `the reactants are ${reactants.map((s) => s.formula.toString()).join(", ")}`,
      details: { material: name, form: form.toString() },
    },
  );
}

/** What old books write as N is read as newtons. */
const FORCE = "mass·length·time^-2";

/** A normality: moles of hydrogen ions, or of what else is exchanged, in a litre. */
function normality(name: string, form: Formula, strength: Quantity): PlanError {
  const protons = protonsOf(form);
  const molar = protons === 0n ? undefined : `${strength.value.dividedBy(protons.toString()).toString()} mol/L`;
  return new PlanError(
    "plan.strength",
    `${name}: ${strength} is a normality, which depends on what the solution is used for`,
    {
      hint: molar === undefined ? "give mol/L" : `as an acid, giving up ${protons} H+, it is ${molar}`,
    },
  );
}

/** Read one material and find the reactant it supplies. */
export const readMaterial = (shelf: ShelfMaterial, reactants: readonly Species[]): Material =>
  materialOf(shelf, (form) => matching(form, shelf.name, reactants));

/** Read a material that takes no part in the equation. */
export const readAside = (shelf: ShelfMaterial): Material => materialOf(shelf, speciesAside);

/** Below this share a gas is no gas of a cylinder: what is meant is its solution. */
const CYLINDER = "90 %";

/** A gas sold in water has a strength; as an assay the rest would be dirt, and the gas led in. */
function refuseGasBySolution({ name, assay }: ShelfMaterial, form: Formula): void {
  if (assay === undefined || !isGas(form, false)) return;
  const share = shareOf(assay, `assay of ${name}`, "1", { label: `assay of ${name}` });
  if (share.compare(exact(CYLINDER)) >= 0) return;
  throw new PlanError("plan.strength", `${name} has an assay, and ${form} is a gas`, {
    hint: `what a solution in water has of it is its strength: strength: "${share.to("%").format({ significant: 3, uncertainty: "none" })}"`,
  });
}

function materialOf(shelf: ShelfMaterial, find: (form: Formula) => Species): Material {
  const { name } = shelf;
  const form = formulaFrom(shelf.form);
  const species = find(form);
  if (shelf.strength !== undefined && shelf.assay !== undefined) {
    throw new PlanError("plan.strength", `${name} has both an assay and a strength`, {
      hint: "a solid has an assay, a solution a strength",
    });
  }
  refuseGasBySolution(shelf, form);
  const strength = shelf.strength === undefined ? undefined : quantity(shelf.strength as QuantityLike);
  if (strength?.dimension === FORCE) throw normality(name, form, strength);
  const isVolumetric = strength?.dimension === "density" || strength?.dimension === "concentration";
  const how = isVolumetric ? byVolume(shelf, form, species.name, strength) : byMassFraction(shelf, form, species.name);
  const isSolution = strength !== undefined || isMiscible(form) || species.isWater;
  return {
    shelf,
    form,
    formName: nameOfFormula(form),
    species,
    waters: watersOf(form),
    excess: shareOf(shelf.excess ?? exact("0 %"), `excess of ${name}`, "100", { label: `excess of ${name}` }),
    also: (shelf.also ?? []).map(({ form: other, share }) => ({
      form: formulaFrom(other),
      share: shareOf(share, `share of ${String(other)} in ${name}`, "1", {
        symbol: `w(${String(other)}, ${name})`,
        label: `${String(other)} in ${name}`,
      }),
    })),
    isSolution,
    massFraction: how.massFraction,
    amountIn: how.amountIn,
    portionFor: how.portionFor,
    massOf: how.massOf,
    volumeOf: how.volumeOf,
    likeWater: how.likeWater,
    asideTaken: () => {
      if (shelf.portion === undefined) return undefined;
      const portion = portionOf(shelf.portion, `portion of ${name}`);
      const amount = attempt(() => how.amountIn(portion));
      return amount.ok ? { portion, amount: amount.value } : undefined;
    },
    solventIn: (portion) => {
      if (species.isWater) return how.massOf(portion);
      return isSolution ? how.massOf(portion)?.minus(how.amountIn(portion).times(how.M).to("g")) : undefined;
    },
  };
}

// What is dosed: a formula, a solution of a stated strength, or a good of the shop by its name.

import { convertStrength } from "../../amount";
import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import type { ConcentrationText, DensityText, Quantity, QuantityLike } from "../../quantity";
import { shelfMaterialOf, shopMaterial } from "../../substance";
import { guard, positive } from "../argument";
import { AqueousError } from "../error";

/** A reagent: a solution of a strength, or the substance itself. */
export interface Reagent {
  /** Of the substance that acts: `HCl`, `NaOH`, `Na2CO3·10H2O`. */
  readonly formula: string;
  /** Left out, with `strength` as well: the substance itself, without water. */
  readonly concentration?: QuantityLike<"concentration", ConcentrationText>;
  /** In place of the concentration, any other strength: `"50 g/L"`, `"37 % w/w"`, `"5 % w/v"`. */
  readonly strength?: QuantityLike;
  /** Of the solution, for a strength by mass; looked up for common solutions where it is left out. */
  readonly density?: QuantityLike<"density", DensityText>;
  /** What a plain `%` counts. */
  readonly basis?: "w/w" | "w/v" | "v/v";
}

const REAGENT_FIELDS = { formula: true, concentration: true, strength: true, density: true, basis: true } as const;

/** A reagent, read. */
interface ReadReagent {
  readonly formula: string;
  readonly concentration: Quantity | undefined;
}

export function readReagent(like: Reagent | string, place: string): ReadReagent {
  const given: Reagent = typeof like === "string" ? { formula: like } : like;
  guard.fields(given, REAGENT_FIELDS, place);
  guard.text(given.formula, `${place}.formula`);
  const { formula, concentration, strength, density, basis } = given;
  const symbol = `c(${formula})`;
  if (strength === undefined) {
    if (density !== undefined)
      throw new AqueousError("aqueous.missing-option", `${place}.density serves a strength only: how strong is it?`);
    const read =
      concentration === undefined
        ? undefined
        : positive(concentration, "concentration", `${place}.concentration`, { symbol });
    return { formula, concentration: read };
  }
  if (concentration !== undefined)
    throw new AqueousError("aqueous.bad-option", `${place}: give its concentration or its strength, not both`);
  const converted = convertStrength(strength as never, {
    of: parseFormula(formula),
    to: "mol/L",
    ...(density === undefined ? {} : { density: density as never }),
    ...(basis === undefined ? {} : { basis }),
  });
  return { formula, concentration: positive(converted, "concentration", `${place}.strength`).named({ symbol }) };
}

/** A reagent as a person names it, and what was taken for it. */
interface NamedReagent {
  readonly reagent: Reagent;
  /** Mass fraction of the formula in a solid good. */
  readonly assay: Quantity | undefined;
  readonly assumptions: readonly string[];
}

/** A formula stays what it is; any other text is a good of the shop, in its usual form and strength. */
export function namedReagent(like: Reagent | string): NamedReagent {
  if (typeof like !== "string") return { reagent: like, assay: undefined, assumptions: [] };
  if (attempt(() => parseFormula(like)).ok) return { reagent: { formula: like }, assay: undefined, assumptions: [] };
  const [first, ...others] = shopMaterial(like).candidates;
  const { name, form, strength, density, assay } = shelfMaterialOf(first!);
  const rest = [
    ...new Set(others.map(({ soldAs, formula }) => (soldAs === name ? formula : `${soldAs} (${formula})`))),
  ];
  const usual = strength ?? assay;
  return {
    reagent: {
      formula: form,
      ...(strength === undefined ? {} : { strength, basis: "w/w" as const }),
      ...(density === undefined || strength === undefined ? {} : { density: density as Quantity<"density"> }),
    },
    assay,
    assumptions: [
      `${like} taken as ${name}, ${usual === undefined ? form : `${usual} ${form}`}: the figure on your pack takes its place`,
      ...(rest.length === 0 ? [] : [`also sold under this name: ${rest.join(", ")}`]),
    ],
  };
}

// What is weighed where none of the product stands at the end: the solid that the equilibrium has in its place.

import { parseFormula } from "../../formula";
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { type Candidate, candidatesLike, keyElement } from "../reaction/candidates";
import { keyed } from "../reaction/species";
import type { Batch } from "./batch";
import { planned } from "./exact";

/** A solid in place of the product. */
export interface InPlace {
  readonly formula: string;
  /** All of the metal in it; undefined where it shares the metal with another solid. */
  readonly theory: Quantity<"mass"> | undefined;
}

/** The solid that by the equilibrium stands in place of the product, most first; undefined where the product itself does. */
export function standsInPlace({
  isolation,
  product,
  steps,
}: Pick<Batch, "isolation" | "product" | "steps">): InPlace | undefined {
  if (isolation.how !== "precipitate") return undefined;
  const solids = steps.at(-1)?.after.solids ?? [];
  if (solids.some(({ formula }) => formula === product.formula)) return undefined;
  const asked = parseFormula(product.formula);
  const key = keyElement(asked);
  if (key === undefined) return undefined;
  const [most, next] = solids
    .filter(({ formula }) => parseFormula(formula).count(key).n !== 0n)
    .sort((one, other) => other.mass.compare(one.mass));
  if (most === undefined) return undefined;
  const isShared = next !== undefined && next.mass.compare(most.mass.times(planned("worthAWord"))) > 0;
  const [as] = isShared ? [] : candidatesLike([parseFormula(most.formula)], asked, product.amount);
  return { formula: most.formula, theory: as?.theoreticalYield };
}

/** The hydrate that crystallises in place of the one asked for, with all of the salt in it; undefined where the product itself does. */
export function hydrateInPlace({
  isolation,
  product,
  steps,
}: Pick<Batch, "isolation" | "product" | "steps">): InPlace | undefined {
  const solids = steps.at(-1)?.after.solids ?? [];
  if (isolation.how !== "crystallise" || solids.some(({ key }) => key === product.key)) return undefined;
  const { core } = matterOf(parseFormula(product.formula));
  const other = solids
    .map(({ formula }) => matterOf(parseFormula(formula)))
    .find((matter) => matter.core.key === core.key);
  if (other === undefined) return undefined;
  const theory = product.amount.times(other.molarMass).to("g") as Quantity<"mass">;
  return { formula: other.name, theory };
}

/** The batch as its dry mass is judged: by the solid that stands in place of the product, where one does and its theory is known. */
export function judgedAs(batch: Batch): Batch {
  const instead = standsInPlace(batch);
  if (instead?.theory === undefined) return batch;
  const { formula, theory: theoreticalYield } = instead;
  const made: Candidate = keyed("formula", { formula, wanted: true, theoreticalYield });
  const others = batch.candidates.filter((one) => one.formula !== formula).map((one) => ({ ...one, wanted: false }));
  return Object.create(batch, {
    product: { value: { ...batch.product, formula, key: made.key, name: formula, theoreticalYield } },
    candidates: { value: [made, ...others] },
  }) as Batch;
}

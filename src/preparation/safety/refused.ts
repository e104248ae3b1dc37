// What the gate refuses: the error with its code, and what may be done about it.
import { list } from "../../foundation/wording";
import type { Incompatibility } from "../../substance";
import type { DangerousProduct } from "../../substance/internal";
import { IF_MIXED } from "../data/if-mixed";
import { PlanError } from "../error";

/** A product, by-product or material that no plan makes or starts from. */
export interface Danger extends DangerousProduct {
  readonly formula: string;
  readonly as: "product" | "by-product" | "material";
}

/** What is done where it is there already. */
const ifMixed = (danger: Danger): string[] =>
  IF_MIXED.filter(({ code }) => code === danger.code).map(({ text }) => text);

/** The packs that must not meet, whatever is to be made of them, and what is known to come of it. */
function neverTogether(packs: readonly string[], combinations: readonly Incompatibility[]): string[] {
  if (packs.length < 2) return [];
  const [known] = combinations.filter(({ products }) => products.length > 0);
  const gives = known === undefined ? "" : ` (${known.what}: ${list(known.products)})`;
  return [`never bring ${list(packs)} together, in any proportion${gives}`];
}

/** Refuse dangers; `packs` are the materials that were to make them, by name. */
export function refuseDangers(
  dangers: readonly Danger[],
  packs: readonly string[],
  combinations: readonly Incompatibility[],
): void {
  const first = dangers[0];
  if (first === undefined) return;
  throw new PlanError("plan.dangerous-product", `${first.formula} (${first.name}) as ${first.as}`, {
    hint: first.opens
      ? `if this is known and meant, acknowledge it by code: acknowledge: ["${first.code}"]`
      : [
          "explosives and deadly gases are never planned, whatever is acknowledged",
          ...neverTogether(packs, combinations),
          ...ifMixed(first),
        ].join("; "),
    details: {
      dangers: dangers.map(({ code, formula, name, as, opens, citation }) => ({
        code,
        formula,
        name,
        as,
        opens,
        source: citation,
      })),
    },
  });
}

export function refuseCombinations(combinations: readonly Incompatibility[], formed: readonly string[]): void {
  const first = combinations[0];
  if (first === undefined) return;
  const forms = first.materials.find((one) => formed.includes(one));
  const names = first.materials.map((one) => (one === forms ? `${one} that the reaction forms` : one));
  const meant = `if this is known and meant, acknowledge it by code: acknowledge: ["${first.code}"]`;
  throw new PlanError("plan.forbidden-combination", `${list(names)}: ${first.what}`, {
    hint: forms === undefined ? meant : `take a base into the equation that binds the ${forms} as it forms; ${meant}`,
    details: {
      combinations: combinations.map(({ code, materials, what, products, condition, citation }) => ({
        code,
        materials,
        what,
        ...(condition === undefined ? {} : { condition }),
        products,
        source: citation,
      })),
    },
  });
}

// A solid that reacts only near the boil.
import { isOneOf } from "../../ion/internal";
import { SLOW_IN_THE_COLD, type SlowRow } from "../data/firing";
import type { Setting } from "../request/setting";
import type { Role } from "./roles";

/** The material, and how hot it is kept; undefined where there is none, or an acid takes it. */
export function slowSolid(
  { materials, product }: Setting,
  roles: readonly Role[],
): { readonly row: SlowRow; readonly i: number } | undefined {
  if (roles.includes("acid")) return undefined;
  for (const [i, { form }] of materials.entries()) {
    const row = SLOW_IN_THE_COLD.find(
      ({ formulas, to }) => isOneOf(form, ...formulas) && (to === undefined || isOneOf(product.formula, ...to)),
    );
    if (row !== undefined) return { row, i };
  }
  return undefined;
}

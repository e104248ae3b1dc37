// How much of a product that precipitates the liquor keeps.
import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { massFor } from "../reaction/account";
import type { Setting } from "../request/setting";

/** How much of the product the liquor keeps although it precipitates. */
export type Completeness =
  | {
      /** What the liquor keeps: at its equilibrium, or where that cannot be computed what as much pure water would keep; `limits` says which. */
      readonly dissolved: Quantity<"mass">;
      /** The same one standard uncertainty to either side, by all constants of the equilibrium; undefined where it is not that. */
      readonly range?: { readonly least: Quantity<"mass">; readonly most: Quantity<"mass"> };
      /** Temperature the figure is for. */
      readonly at: Quantity<"temperature">;
      /** Share of the theory that precipitates. */
      readonly precipitated: Quantity<"number">;
      /** What the figures leave out. */
      readonly limits: string;
      /** What shows at the bench that it is complete, or why no drop tells. */
      readonly test: string;
    }
  | { readonly missing: string; readonly test: string };

/** What tells how much the liquor keeps: its equilibrium, that of the solids that the product is made of, or pure water. */
type KeptBy = "equilibrium" | "water" | readonly string[];

/** What the liquor keeps of a product that precipitates. */
export interface Kept {
  readonly amount: Quantity;
  readonly by: KeptBy;
  /** One standard uncertainty of the constants to either side; computed when asked for. */
  readonly range: () => readonly [least: Quantity, most: Quantity] | undefined;
}

/** What the figure rests on where the whole liquor could be asked. */
const AT_EQUILIBRIUM =
  "at the equilibrium of the whole liquor, with the solid as it first precipitates and the constants of the tables";

/** Is what the liquor keeps that of its own equilibrium, and not of water or of another constant? */
export const isAtEquilibrium = (found: Completeness | undefined): boolean =>
  found !== undefined && "dissolved" in found && found.limits === AT_EQUILIBRIUM;

/** The liquor is no pure water: what the reaction makes beside the product is not in the figure. */
const LIMITS = "in pure water; acid, ammonium, CO2 and salts of this reaction may keep more or less in solution";

export function completenessOf(
  setting: Setting,
  theory: Quantity,
  test: string,
  keeps: Kept | undefined,
  elsewhere: Quantity | undefined,
): Completeness {
  const { product, temperature } = setting;
  if (keeps === undefined) return { missing: `what the liquor keeps of ${product.name}`, test };
  const { amount, by } = keeps;
  const all = massFor(amount, product.formula, {
    symbol: `m(${product.name}, kept)`,
    label: `${product.name} that the liquor keeps`,
  });
  const unformed =
    elsewhere === undefined
      ? undefined
      : massFor(elsewhere, product.formula, {
          symbol: `m(${product.name}, not formed)`,
          label: `${product.name} in place of which another solid stands`,
        });
  const formed =
    unformed === undefined ? theory : unformed.compare(theory) > 0 ? theory.minus(theory) : theory.minus(unformed);
  const kept = all.compare(formed) > 0 ? formed : all;
  const limits =
    by === "equilibrium"
      ? AT_EQUILIBRIUM
      : by === "water"
        ? LIMITS
        : `at most, at the equilibrium of the whole liquor with ${list(by)}, which it is made of: its own constant is not known`;
  const between = by === "equilibrium" ? keeps.range() : undefined;
  const [least, most] = (between ?? []).map((one) => massFor(one, product.formula));
  return {
    dissolved: kept,
    ...(least === undefined || most === undefined ? {} : { range: { least, most } }),
    at: temperature,
    precipitated: formed
      .minus(kept)
      .dividedBy(theory)
      .to("%")
      .named({
        symbol: "precipitates",
        label:
          by !== "water"
            ? "share that precipitates from this liquor"
            : "share that precipitates, were the liquor pure water",
        rule: unformed === undefined ? "1 - dissolved / theory" : "1 - (dissolved + not formed) / theory",
        assumption: limits,
      }),
    limits,
    test,
  };
}

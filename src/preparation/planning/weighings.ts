// What to weigh or measure of each material: what the sums ask for, and what to take by the step of the instrument.

import type { Quantity } from "../../quantity";
import type { Account } from "../reaction/account";
import { keyed } from "../reaction/species";
import type { Setting } from "../request/setting";

/** One material to weigh or measure. */
export interface Weighing {
  /** Name of the material, as in the request. */
  readonly material: string;
  /** Formula as the pack holds it. */
  readonly form: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** What the sums ask for. */
  readonly exact: Quantity<"mass"> | Quantity<"volume">;
  /** The same to the step of the balance or cylinder: what to take. */
  readonly portion: Quantity<"mass"> | Quantity<"volume">;
  /** Amount over what the limiting material uses, as it comes out after rounding. */
  readonly excess: Quantity<"number">;
  /** Is it the one that is used up first? */
  readonly limiting: boolean;
  /** What was said of the material in the request. */
  readonly note: string | undefined;
}

/** One for each material, in the order of the request. */
export const weighingsOf = (
  { materials }: Setting,
  { exact, portions }: { readonly exact: readonly Quantity[]; readonly portions: readonly Quantity[] },
  { supplied }: Account,
): Weighing[] =>
  materials.map(({ shelf, formName }, i) =>
    keyed("form", {
      material: shelf.name,
      form: formName,
      exact: exact[i]!,
      portion: portions[i]!,
      excess: supplied[i]!.excess,
      limiting: supplied[i]!.limiting,
      note: shelf.note,
    }),
  );

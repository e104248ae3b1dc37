// Which reaction something is of, by what it is made from and what it makes, not by name or place.

import { attempt } from "../foundation/error";
import type { Run } from "../preparation";
import type { Candidate } from "./candidates";
import { keyOf, madeOf } from "./compound";

/** Which reaction it is, however it is written. */
export interface Reaction {
  /** Equal for all forms of the product. */
  readonly any: string;
  /** The form of the product as well: its crystal water, or that it stays in its liquor. */
  readonly id: string;
}

/** The reaction that makes a product from these feeds. */
function reactionOf(product: string, inLiquor: boolean, feeds: readonly (string | undefined)[]): Reaction | undefined {
  const own = madeOf(product);
  if (own === undefined || feeds.length === 0 || feeds.includes(undefined)) return undefined;
  const any = `${own.anhydrousIdentity} < ${[...new Set(feeds as readonly string[])].sort().join(" | ")}`;
  return { any, id: `${any} : ${inLiquor ? "liquor" : own.identity}` };
}

/** The reaction of a candidate that makes a form of its product. */
export const reactionOfCandidate = ({ feeds }: Candidate, form: string, inLiquor = false): Reaction | undefined =>
  reactionOf(
    form,
    inLiquor,
    feeds.map(({ key }) => key),
  );

const isWater = (form: string): boolean => keyOf(form) === keyOf("H2O");

/** The reaction of a run; undefined where what it is made from is not known. */
export function reactionOfRun({ plan }: Run): Reaction | undefined {
  const { materials, isolate } = plan.request;
  const feeds = materials.filter(({ aside, form }) => aside !== true && !isWater(String(form)));
  const read = attempt(() =>
    reactionOf(
      plan.product.formula,
      isolate === false,
      feeds.map(({ form }) => keyOf(String(form))),
    ),
  );
  return read.ok ? read.value : undefined;
}

// An acid put to bases, or a base to acids: one after the other, each as far as either goes.

import type { Formula } from "../../formula";
import { minimum, type Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import type { Reaction } from "../operation/add";
import { exact } from "../planning/exact";
import { isAcid } from "../reaction/acids";
import { neutralisation } from "../reaction/neutralising";

/** An acid or a base, with how much of it there is. */
export interface Portion {
  readonly formula: Formula;
  readonly amount: Quantity;
}

/** What one does with the others, in their order, and what is left of these. */
export function neutralised(
  put: Portion,
  others: readonly Portion[],
): { readonly reactions: readonly Reaction[]; readonly left: readonly Portion[] } {
  const reactions: Reaction[] = [];
  let open = put.amount;
  const left = others.flatMap((other): readonly Portion[] => {
    const [base, acid] = isAcid(put.formula) ? [other.formula, put.formula] : [put.formula, other.formula];
    const found = neutralisation(base, acid);
    const { key } = matterOf(base).core;
    const bases = found?.terms.find(({ matter }) => matter.core.key === key);
    if (found === undefined || bases === undefined || !open.isPositive()) return [other];
    const [ofBase, ofAcid] = [exact(String(-bases.count)), exact(String(found.acids))];
    const [ofPut, ofOther] = isAcid(put.formula) ? [ofAcid, ofBase] : [ofBase, ofAcid];
    const extent = minimum([open.dividedBy(ofPut), other.amount.dividedBy(ofOther)]).to("mol");
    reactions.push({ terms: found.terms, extent });
    open = open.minus(extent.times(ofPut)).to("mol");
    const rest = other.amount.minus(extent.times(ofOther)).to("mol");
    return rest.isPositive() ? [{ ...other, amount: rest }] : [];
  });
  return { reactions, left };
}

// The liquor that is kept in place of a solid: how much there is, how strong, and what else is in it. The next step takes it as a
// solution of this strength.
import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { POT, type Work } from "../procedure/bench";
import { keptInSolution } from "../reaction/only-in-solution";
import { keyOfFormula } from "../reaction/species";
import type { Setting } from "../request/setting";
import { planned } from "./exact";

/** A liquor that is kept. */
export interface KeptLiquor {
  /** What it is a solution of, as printed, without crystal water. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** In formula units. */
  readonly amount: Quantity<"amount of substance">;
  /** Of the whole liquor. */
  readonly mass: Quantity<"mass">;
  /** By its density; where no table has one no more than this, as salts make a liquor denser than water. */
  readonly volume: Quantity<"volume">;
  /** Mass fraction of `formula`. */
  readonly strength: Quantity<"number">;
  /** Water takes part of it apart: no more of it than that. */
  readonly atMost?: true;
  /** What else is dissolved in it, by mass of the whole, where it is worth a word. */
  readonly also: readonly { readonly formula: string; readonly key: string; readonly share: Quantity<"number"> }[];
}

/** The liquor as the last step leaves it; undefined where its water is not known, or none of the product is in it. */
export function keptLiquorOf({ product }: Setting, { drafts }: Pick<Work, "drafts">): KeptLiquor | undefined {
  const pot = drafts.filter(({ vessel }) => vessel === POT).at(-1)?.after;
  const { core } = matterOf(product.formula);
  const own = pot?.books.dissolved.find(({ matter }) => matter.key === core.key);
  if (pot === undefined || own === undefined || pot.books.waterMissing.length > 0) return undefined;
  const share = (mass: Quantity, of: string): Quantity<"number"> =>
    mass
      .dividedBy(pot.mass)
      .to("%")
      .named({
        symbol: `w(${of})`,
        label: `share of ${of} in the liquor`,
        rule: "mass fraction = mass / mass of the liquor",
      }) as Quantity<"number">;
  return {
    formula: core.name,
    key: keyOfFormula(core.name),
    amount: own.amount.to("mol"),
    mass: pot.mass
      .to("g")
      .named({ symbol: "m(liquor)", label: "liquor that is kept", rule: "all that is in the vessel" }),
    volume: pot.liquor.volume as Quantity<"volume">,
    strength: share(massOf(own), core.name),
    ...(keptInSolution(core.formula)?.comesApart === true ? { atMost: true } : {}),
    also: pot.books.dissolved
      .filter((one) => one !== own)
      .map((one) => ({ name: one.matter.name, share: share(massOf(one), one.matter.name) }))
      .filter((one) => one.share.compare(planned("worthAWord")) > 0)
      .map(({ name, share }) => ({ formula: name, key: keyOfFormula(name), share })),
  };
}

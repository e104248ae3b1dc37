// The mean water of a material that is neither dry nor what its label says: from what is left of it, or between two forms.

import type { FormulaLike, MassFractionLike, MassLike } from "../amount";
import { assayOf, inSymbol } from "../amount/internal";
import { type Formula, molarMass } from "../formula";
import type { Fields } from "../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../foundation/facts";
import { readable } from "../foundation/readable";
import { type Quantity, quantity } from "../quantity";
import { guard } from "./argument";
import { anhydrousOf } from "./crystal-water";
import { HydrateError } from "./error";
import { knownHydrates } from "./forms";
import { plausible } from "./hydration-candidates";
import { hydrationNumber } from "./hydration-number";

const DAMP = {
  salt: true,
  assay: true,
  before: true,
  after: true,
  vessel: true,
  facts: true,
} as const satisfies Fields<Parameters<typeof meanHydration>[0]>;

/** A material whose water is not that of its label. */
export interface MeanHydration {
  /** Mean number of waters for each formula unit. */
  readonly waters: Quantity<"number">;
  /** Mass fraction of the anhydrous salt. */
  readonly anhydrousFraction: Quantity<"number">;
  /** The two known forms it lies between, what part of the salt is in the one with more water, and where they are listed. */
  readonly between:
    | {
        readonly less: Formula;
        readonly more: Formula;
        readonly shareOfMore: Quantity<"number">;
        readonly sources: readonly string[];
      }
    | undefined;
}

/**
 * How much water a partly effloresced or damp material holds on average: from its assay, or from a drying experiment.
 *
 * @param material - the salt in any form, and its `assay` as mass fraction of the anhydrous salt, or the masses `before`
 *   and `after` drying to the anhydrous salt, with that of the `vessel` if it was weighed along
 * @returns mean waters, mass fraction of anhydrous salt, and the two known forms it lies between with their shares
 * @throws {HydrateError} `hydrate.missing-input`, `hydrate.too-many-inputs`, `hydrate.water-count`, and those of
 *   {@link hydrationNumber}
 * @throws {AmountError} `amount.not-positive`, `amount.fraction-above-one`
 * @source x = M(salt) (1/w - 1) / M(H2O)
 * @category Hydrates
 * @example
 * const soda = meanHydration({ salt: "Na2CO3", assay: "50 %" });
 * soda.waters.format({ decimals: 2, uncertainty: "none" }) // => "5.88"
 * soda.between!.more.toString() // => "Na2CO3.7H2O"
 */
export function meanHydration(
  material: LookupOptions & {
    readonly salt: FormulaLike;
    readonly assay?: MassFractionLike | undefined;
    readonly before?: MassLike | undefined;
    readonly after?: MassLike | undefined;
    readonly vessel?: MassLike | undefined;
  },
): MeanHydration {
  if (bringsFacts(material)) return withItsFacts(material, guard, meanHydration);
  guard.fields(material, DAMP, "request");
  const { salt, assay, before, after, vessel } = material;
  if (assay !== undefined && (before ?? after ?? vessel) !== undefined) {
    throw new HydrateError(
      "hydrate.too-many-inputs",
      "mean water follows from an assay or from drying, not from both",
      {
        hint: "ask twice and compare the two answers",
      },
    );
  }
  const anhydrous = anhydrousOf(salt);
  const name = inSymbol(anhydrous);
  let waters: Quantity;
  let fraction: Quantity;
  if (assay !== undefined) {
    fraction = assayOf(assay, "assay", { symbol: `w(${name})`, label: `mass fraction of ${name}` }).to("% w/w");
    waters = molarMass(anhydrous)
      .times(quantity("1").dividedBy(fraction).minus("1"))
      .dividedBy(molarMass("H2O"))
      .named({ symbol: "x", rule: "mean waters = M(salt) (1/w - 1) / M(H₂O)" });
    plausible(waters, anhydrous, "an assay is the mass fraction of the anhydrous salt; check it");
  } else if (before !== undefined && after !== undefined) {
    waters = hydrationNumber({ before, after, anhydrous, vessel }).waters;
    const [empty, whole, rest] = [vessel ?? "0 g", before, after].map((m) => quantity(m)) as [
      Quantity,
      Quantity,
      Quantity,
    ];
    fraction = rest
      .minus(empty)
      .dividedBy(whole.minus(empty))
      .to("% w/w")
      .named({ symbol: `w(${name})`, rule: "mass fraction = mass after drying / mass before, less the vessel" });
  } else {
    throw new HydrateError("hydrate.missing-input", "mean water needs an assay, or masses before and after drying", {
      hint: 'give assay: "60 %", or before and after',
    });
  }
  return readable({ waters, anhydrousFraction: fraction, between: betweenForms(anhydrous, waters) });
}

function betweenForms(salt: Formula, waters: Quantity): MeanHydration["between"] {
  const forms = knownHydrates(salt);
  const x = waters.toNumber("");
  const above = forms.findIndex((form) => form.waters.valueOf() > x);
  const [less, more] = [forms[above - 1], forms[above]];
  if (less === undefined || more === undefined) return undefined;
  const width = more.waters.sub(less.waters);
  const shareOfMore = waters
    .minus(quantity({ value: less.waters, unit: "" }))
    .dividedBy(width)
    .to("%")
    .named({
      symbol: `share(${inSymbol(more.formula)})`,
      rule: "share of the salt in the form with more water, if the material is a mixture of the two",
    });
  return { less: less.formula, more: more.formula, shareOfMore, sources: [...new Set([less.source, more.source])] };
}

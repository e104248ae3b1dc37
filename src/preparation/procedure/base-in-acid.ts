// Metal from its oxide, carbonate or basic salt in acid, by another metal: the acid dissolves the base first, or it would be spent on
// the metal; what is over of the acid takes metal in the end.

import { type Formula, molarMass } from "../../formula";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import { minimum, type Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { ACID_TAKES, ACIDS_ON_METAL } from "../data/firing";
import type { Reaction } from "../operation/add";
import { exact } from "../planning/exact";
import type { Account } from "../reaction/account";
import { isAcid, isMetal } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { isGas } from "../reaction/fluids";
import { neutralisation } from "../reaction/neutralising";
import type { Setting } from "../request/setting";
import { isBase } from "./kind";

/** Where the base and the acid stand among the materials, and how they react. */
interface BaseInAcid {
  readonly base: number;
  readonly acid: number;
  readonly reaction: NonNullable<ReturnType<typeof neutralisation>>;
}

/** A base that brings the metal of the product into solution in the acid of the plan; undefined for any other displacement. */
export function baseInAcid({ materials, product, temperature }: Setting): BaseInAcid | undefined {
  const [symbol] = product.formula.symbols;
  if (!isMetal(product.formula) || !materials.some(({ form }) => isMetal(form))) return undefined;
  const acid = materials.findIndex(({ form }) => isOneOf(form, ...ACIDS_ON_METAL.acids));
  const base = materials.findIndex(({ form }) => !isMetal(form) && form.count(symbol!).n !== 0n);
  if (acid < 0 || base < 0 || base === acid) return undefined;
  const [b, a] = [materials[base]!, materials[acid]!];
  if (fateOf(b.form, temperature).precipitated !== true) return undefined;
  const reaction = neutralisation(b.form, a.form);
  const salt = reaction?.terms.find(({ count, matter }) => count > 0n && matter.formula.count(symbol!).n !== 0n);
  return reaction && salt && fateOf(salt.matter.formula, temperature).precipitated === false
    ? { base, acid, reaction }
    : undefined;
}

/** The same before another salt comes, with which what they make is a double salt; undefined for any other product. */
export function baseBeforeSalt(setting: Setting): (BaseInAcid & { readonly salt: number }) | undefined {
  const { materials, product, temperature } = setting;
  const { cations, complex } = constitutionOf(product.formula);
  if (complex !== undefined || cations.length < 2 || fateOf(product.formula, temperature).precipitated === true)
    return undefined;
  const isSparing = (form: Formula): boolean => fateOf(form, temperature).precipitated === true;
  const acid = materials.findIndex(({ form }) => isAcid(form));
  const base = materials.findIndex(({ form }) => isBase(form) && !isMetal(form) && isSparing(form));
  const salt = materials.findIndex(({ form }) => !isAcid(form) && !isBase(form) && !isMetal(form) && !isSparing(form));
  if (acid < 0 || base < 0 || salt < 0) return undefined;
  const reaction = neutralisation(materials[base]!.form, materials[acid]!.form);
  const made = reaction?.terms.find(
    ({ count, matter }) => count > 0n && !matter.isWater && !isGas(matter.formula, true),
  );
  return reaction && made && fateOf(made.matter.formula, temperature).precipitated === false
    ? { base, acid, salt, reaction }
    : undefined;
}

/** The base into the acid: all of it, and back so much as the equation takes from there. */
export function dissolvedInAcid(
  { materials }: Setting,
  { supplied, extent }: Pick<Account, "supplied" | "extent">,
  { base, acid, reaction: { terms, acids } }: BaseInAcid,
): { readonly first: Reaction; readonly back: Reaction } {
  const { core } = matterOf(materials[base]!.form);
  const size = -terms.find(({ matter }) => matter.core.key === core.key)!.count;
  const perBase = (amount: Quantity): Quantity => amount.dividedBy(exact(String(size)));
  const perAcid = supplied[acid]!.amount.dividedBy(exact(String(acids)));
  const used = perBase(extent.times(materials[base]!.species.coefficient));
  return {
    first: { terms, extent: minimum([perBase(supplied[base]!.amount), perAcid]) },
    back: {
      terms: terms.filter(({ whereto }) => whereto !== "gas").map((one) => ({ ...one, count: -one.count })),
      extent: used,
    },
  };
}

/** Free acid of a vessel on the metal that is over in it: hydrogen, until one of the two is gone. */
export function acidOnMetal({ books: { solids, dissolved } }: Pot): Reaction[] {
  const metal = solids.find(
    ({ matter, origin }) =>
      origin === "put in" && ACID_TAKES.some((row) => row.warm !== true && isOneOf(matter.formula, row.metal)),
  );
  const acid = dissolved.find(({ matter }) => isOneOf(matter.formula, ...ACIDS_ON_METAL.acids));
  const found = metal && acid && neutralisation(metal.matter.formula, acid.matter.formula);
  if (found === undefined) return [];
  const metals = -found.terms.find(({ matter }) => matter.key === metal!.matter.key)!.count;
  const extent = minimum([
    metal!.amount.dividedBy(exact(String(metals))),
    acid!.amount.dividedBy(exact(String(found.acids))),
  ]);
  return [{ terms: found.terms, extent }];
}

/** Mass of the metal that goes into an acid where so much hydrogen is given off. */
export function metalGone(hydrogen: Quantity, metal: Formula, acid: Formula): Quantity {
  const { terms } = neutralisation(metal, acid)!;
  const count = (isIt: (formula: Formula) => boolean): Quantity =>
    exact(String(terms.find(({ matter }) => isIt(matter.formula))!.count));
  const used = count(isMetal)
    .negated()
    .dividedBy(count((formula) => isOneOf(formula, "H2")));
  return hydrogen.times(used).times(molarMass(metal)).to("g");
}

/** Gas that the base gives as it dissolves. */
export const gasOfBase = ({ reaction: { terms } }: BaseInAcid): string | undefined =>
  terms.find(({ matter, whereto }) => whereto === "gas" && isGas(matter.formula, true))?.matter.key;

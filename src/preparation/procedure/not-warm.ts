// Products that warmth changes in their liquor.

import type { Formula } from "../../formula";
import { elementsIn } from "../../formula/internal";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import { GOES_IN_AIR, NOT_BOILED_DOWN, NOT_WARM, type NotWarmRow } from "../data/products";
import { isNotBoiled, losesAmmonia } from "./protection";

/** Why a product is not warmed in its liquor, and how warm that may be; undefined where it may be hot. */
export const notWarmOf = (product: Formula): NotWarmRow | undefined =>
  rememberedCold(product.toString(), () => notWarmRow(product));

const rememberedCold = /* @__PURE__ */ remembering<NotWarmRow | undefined>(200);

function notWarmRow(product: Formula): NotWarmRow | undefined {
  const { identity, anhydrousIdentity, groups: own } = constitutionOf(product);
  const elements = elementsIn(product.toString());
  const is = (text: string): boolean => {
    if (elementsIn(text) !== elements) return false;
    const row = constitutionOf(text);
    return row.waters === 0 ? row.anhydrousIdentity === anhydrousIdentity : row.identity === identity;
  };
  return NOT_WARM.find(
    ({ formulas, groups = [], ammine }) =>
      formulas.some(is) || groups.some((name) => own.includes(name)) || (ammine && losesAmmonia(product)),
  );
}

/** Why a liquor with a product is not boiled down; undefined where heat does it no harm. */
export function spoiltByBoiling(product: Formula): string | undefined {
  const { groups: own, complex: held } = constitutionOf(product);
  const row = NOT_BOILED_DOWN.find(
    ({ groups, complex }) => groups.some((name) => own.includes(name)) && (complex !== true || held !== undefined),
  );
  return notWarmOf(product)?.why ?? row?.why;
}

/** Is its liquor evaporated below the boil: heat does the product harm, or drives out the acid that it needs? */
export const isEvaporated = (product: Formula): boolean =>
  spoiltByBoiling(product) !== undefined || isNotBoiled(product);

/** Does a salt go off into the air by itself, as ammonium carbonates do? */
export const goesInAir = (form: Formula): boolean => isOneOf(form, ...GOES_IN_AIR.formulas);

// Complexes that form over a hydroxide: out of the lye of a metal, or from the hydroxide itself.

import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { OVER_HYDROXIDE, type OverHydroxideRow } from "../data/ends";
import { isAcid } from "../reaction/acids";
import type { Setting } from "../request/setting";
import { isByLye, type Role } from "./roles";

/** What is known of such a complex; undefined where no hydroxide comes, or its acid takes it in the cold. */
export function overHydroxide(setting: Setting, roles: readonly Role[]): OverHydroxideRow | undefined {
  const { product, materials } = setting;
  const { complex } = constitutionOf(product.formula);
  const bringsAnion = (form: Formula, { anions }: OverHydroxideRow): boolean => {
    const own = constitutionOf(form);
    return isAcid(form) && own.acid !== undefined && anions.includes(own.acid.anion);
  };
  const isHydroxide = (form: Formula, metal: string): boolean =>
    form.symbols.includes(metal) && constitutionOf(form).anions.every(({ formula }) => formula === "OH-");
  return complex === undefined
    ? undefined
    : OVER_HYDROXIDE.find((row) => {
        const metal = row.metals.find((one) => product.formula.symbols.includes(one));
        return (
          metal !== undefined &&
          materials.some(({ form }) => bringsAnion(form, row)) &&
          (isByLye(setting, roles) || materials.some(({ form }) => isHydroxide(form, metal)))
        );
      });
}

// Metal that dilute acid takes out of a product that it leaves, and the acid on the table that is for that.

import { molarMass } from "../../formula";
import { isOneOf } from "../../ion/internal";
import { ACID_LEAVES, ACID_TAKES, ACIDS_ON_METAL, type AcidTakesRow } from "../data/firing";
import { planned } from "../planning/exact";
import { isAcid, protonsOf } from "../reaction/acids";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { kindOf } from "./kind";

/** The row of a metal over, where dilute acid takes it and leaves the product. */
export function acidTakes({ product, materials }: Setting, i: number): AcidTakesRow | undefined {
  const { symbols } = product.formula;
  const row = ACID_TAKES.find(({ metal }) => metal === materials[i]!.form.symbols[0]);
  const { metals, cold } = ACID_LEAVES;
  const left: readonly string[] = row?.warm === true ? metals : [...metals, ...cold];
  return symbols.length === 1 && left.includes(symbols[0]!) ? row : undefined;
}

/** Does a pack bring so much acid into the liquor that no hydroxide precipitates from it? */
const isSour = ({ materials }: Setting): boolean =>
  materials.some(
    ({ form, also }) =>
      isAcid(form) ||
      also.some(
        (one) =>
          isAcid(one.form) &&
          one.share.times(protonsOf(one.form)).dividedBy(molarMass(one.form)).compare(planned("ownAcid")) >= 0,
      ),
  );

/** Is an acid beside the equation for the metal that is over? Only where the liquor has its own: else it keeps that acid. */
export const isForMetalOver = ({ form }: Material, setting: Setting): boolean =>
  isOneOf(form, ...ACIDS_ON_METAL.acids) &&
  kindOf(setting) === "displacement" &&
  isSour(setting) &&
  setting.materials.some((_, i) => acidTakes(setting, i) !== undefined);

// Does the wanted compound exist in water at all? What its ions make of each other in its place, by table.

import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { NEVER_IN_WATER, NO_TUTTON_SALT, TAKEN_APART } from "../../solubility/internal";
import type { Case } from "./case";
import type { Reason, Ruling } from "./feasibility";

const one = (formula: string): string => {
  const read = attempt(() => parseFormula(formula));
  return read.ok ? read.value.toUnicode() : formula;
};

/** Rules that the compound does not form from water; undefined for one that may. */
export function judgeCompound({ product, setting }: Case): Ruling | undefined {
  if (!setting.wet) return undefined;
  const { cations, anions, waters, complex } = product.made;
  const name = product.species.name;
  if (complex !== undefined) return undefined;
  const hydroxide = anions.some(({ formula }) => formula === "OH-" || formula === "O^2-");
  for (const row of NEVER_IN_WATER()) {
    const cation = cations.find(({ formula }) => row.cations.includes(formula));
    const anion = anions.find(({ formula }) => row.anions.includes(formula));
    if (cation === undefined || anion === undefined || hydroxide) continue;
    const solids = row.instead.map(({ formula, cations: n }) => ({
      formula: one(formula),
      moles: (cation.count * product.moles) / n,
      share: 1,
    }));
    return {
      verdict: "does not go",
      share: 0,
      solids,
      reasons: [
        {
          code: "not-in-water",
          text: `${name} does not exist in water: ${row.why}${solids.length > 0 ? `; ${solids.map((s) => s.formula).join(" and ")} forms in its place` : ""}`,
          source: row.source,
        },
      ],
    };
  }
  const sulfates = anions.length === 1 && anions[0]!.formula === "SO4^2-" && anions[0]!.count === 2;
  const small = cations.find(({ formula }) => (NO_TUTTON_SALT.cations as readonly string[]).includes(formula));
  const divalent = cations.some(({ charge }) => charge === 2);
  if (sulfates && small !== undefined && divalent && cations.length === 2 && waters === NO_TUTTON_SALT.waters)
    return {
      verdict: "does not go",
      share: 0,
      solids: [],
      reasons: [
        { code: "not-in-water", text: `${name} is not known: ${NO_TUTTON_SALT.why}`, source: NO_TUTTON_SALT.source },
      ],
    };
  return undefined;
}

/** Is the wanted salt one that water takes apart? */
export function hydrolysisOf({ product }: Case): Reason | undefined {
  const { cations, anions, complex } = product.made;
  const isIn = (list: readonly string[], ions: readonly { readonly formula: string }[]): boolean =>
    ions.some(({ formula }) => list.includes(formula));
  if (complex !== undefined || !isIn(TAKEN_APART.cations, cations) || !isIn(TAKEN_APART.anions, anions))
    return undefined;
  return { code: "hydrolysis", text: `${product.species.name}: ${TAKEN_APART.why}`, source: TAKEN_APART.source };
}

// A basic carbonate that no table has a constant of: that it is what settles is known from the trade, and how much of the metal
// the liquor keeps is bounded by the constants of the hydroxide and the carbonate that it is made of.

import { chargeOf, HYDRON } from "../../aqueous/internal";
import type { Formula } from "../../formula";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { precipitatedCarbonate } from "../../solubility";
import { canonicalFormula } from "../../substance";
import { type Beaker, componentsOf, printed } from "./beaker";

/** What stands of a solid's parts. */
export interface Parts {
  /** As printed, most first. */
  readonly names: readonly string[];
  /** Part of the metal that stands in them; of what lasts in their place no less stands. */
  readonly share: number;
}

const given = /* @__PURE__ */ remembering<string | undefined>(50);

/** The basic carbonate that the trade gets of a metal with a precipitant, in its one spelling. */
const basicCarbonateOf = (metal: string, precipitant: "soda" | "bicarbonate"): string | undefined =>
  given(`${metal} ${precipitant}`, () => {
    const found = attempt(() => precipitatedCarbonate({ metal, precipitant }));
    const [solid] = found.ok && found.value.verdict === "basic" ? found.value.expected : [];
    return solid === undefined ? undefined : canonicalFormula(solid);
  });

/** The soda or bicarbonate that is put in beside a salt of the metal; with ammonia in the liquor the trade gets other solids. */
function precipitantIn(put: readonly Formula[], metal: string): "soda" | "bicarbonate" | undefined {
  const made = put.map((one) => constitutionOf(one));
  const ions = new Set(
    made.flatMap(({ cations, anions, ligands }) => [...cations, ...anions, ...ligands].map(({ formula }) => formula)),
  );
  if (ions.has("NH4+") || ions.has("NH3")) return undefined;
  const has = (ion: string): boolean =>
    made.some(
      ({ cations, anions }) => cations.every((c) => c.formula !== metal) && anions.some((a) => a.formula === ion),
    );
  return has("CO3^2-") ? "soda" : has("HCO3-") ? "bicarbonate" : undefined;
}

/**
 * The parts of a basic carbonate that stand in a beaker which has no constant of it; undefined where another solid takes the
 * metal, or where the trade gets another one with what is put in.
 */
export function partsOf(beaker: Beaker, product: Formula, put: readonly Formula[]): Parts | undefined {
  const of = componentsOf(product);
  const { cations, anions } = constitutionOf(product);
  const [metal] = cations;
  const ions = new Set(anions.map(({ formula }) => formula));
  if (of === undefined || metal === undefined || cations.length > 1) return undefined;
  if (ions.size !== 2 || !ions.has("OH-") || !ions.has("CO3^2-")) return undefined;
  const precipitant = precipitantIn(put, metal.formula);
  if (precipitant === undefined) return undefined;
  if (basicCarbonateOf(metal.formula, precipitant) !== canonicalFormula(product)) return undefined;
  const key = [...of.keys()].find((one) => chargeOf(one) > 0 && one !== HYDRON);
  const standing = beaker.solids.filter(({ phase }) => key !== undefined && phase.of.has(key));
  const arePart = standing.every(({ phase }) => [...phase.of.keys()].every((one) => one === HYDRON || of.has(one)));
  if (key === undefined || standing.length === 0 || !arePart) return undefined;
  const moles = standing.reduce((n, { phase, moles: own }) => n + own * phase.of.get(key)!, 0);
  return { names: standing.map(({ phase }) => printed(phase)), share: Math.min(1, moles / beaker.total(key)) };
}

// What ignition of a sample may be asked for: where it tells formulas apart, and where nothing dangerous comes of it.

import { type Formula, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import type { Quantity } from "../../quantity";
import { classesOfFormula, type HazardClass, madeOf } from "../../substance/internal";
import { NEVER_IGNITED, POISON_VAPOUR } from "../data/ignition";
import { exact, planned } from "../planning/exact";
import type { Candidate } from "../reaction/candidates";
import { needsFurnace, residueOf } from "./ignition";
import { leftOnIgnition } from "./tests";

/** Products that heat alone may set off. */
const HEAT_SENSITIVE: readonly HazardClass[] = [
  "ammonium nitrate",
  "chlorate",
  "perchlorate",
  "permanganate",
  "persulfate",
];

export const isHeatSensitive = (formula: Formula): boolean => {
  const classes = classesOfFormula(formula);
  return HEAT_SENSITIVE.some((name) => classes.has(name));
};

/** A cyanide, a cyanido complex or a thiocyanate gives off poison at red heat, whatever else it does. */
export const holdsCyanide = (formula: Formula): boolean => {
  const { cyanide, groups } = madeOf(formula);
  return cyanide !== undefined || groups.has("thiocyanate");
};

const fumesWithMetal = ({ symbols }: Formula): boolean =>
  POISON_VAPOUR.some(({ metals, withOneOf }) => {
    const isThere = metals.some((one) => symbols.includes(one));
    return isThere && (withOneOf === undefined || withOneOf.some((one) => symbols.includes(one)));
  });

/** May a sample of it be ignited at a bench? */
export const mayIgnite = (formula: Formula): boolean =>
  !holdsCyanide(formula) &&
  !isHeatSensitive(formula) &&
  !fumesWithMetal(formula) &&
  !NEVER_IGNITED.groups.some((name) => madeOf(formula).groups.has(name));

/** Part of a solid that heat leaves; undefined where that is not known. */
function leftOf(formula: Formula): Quantity | undefined {
  const residue = residueOf(formula, undefined)?.residue;
  if (residue === undefined) return undefined;
  return residue.hasSameComposition(formula) ? exact("100 %") : leftOnIgnition(formula)?.share;
}

/** Does a sample lose nothing but water on ignition? Some lose oxygen, which looks like it. */
export function ignitionTellsWater(formula: Formula): boolean {
  const residue = mayIgnite(formula) ? residueOf(formula, undefined)?.residue : undefined;
  return residue !== undefined && (residue.hasSameComposition(formula) || formula.symbols.includes("H"));
}

const remembered = /* @__PURE__ */ remembering<boolean>(200);

/** Does ignition of a sample tell the product from another formula that it may be, and may it be done? */
export function ignitionDecides(product: Formula, candidates: readonly Candidate[]): boolean {
  const others = candidates.filter(({ wanted }) => !wanted).map(({ formula }) => formula);
  return remembered([product, ...others].join(" "), () => {
    const own = mayIgnite(product) && !needsFurnace(product) ? leftOf(product) : undefined;
    if (own === undefined) return false;
    const least = planned("sampleScatter").toNumber("%");
    return others.some((other) => {
      const left = leftOf(parseFormula(other));
      return left !== undefined && Math.abs(left.minus(own).toNumber("%")) > least;
    });
  });
}

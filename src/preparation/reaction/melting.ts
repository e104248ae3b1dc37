// What melts before heat does anything else to it, and where.
import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { physicalOf } from "../../substance/internal";
import { matterOf } from "../contents/matter";
import { FUSES_OXIDES } from "../data/firing";
import { MELT } from "../data/kiln";
import { exact } from "../planning/exact";
import { keyOfFormula } from "./species";

/** °C at which a solid melts; undefined where nobody says, or where it does not. */
export function meltsAt(formula: Formula): number | undefined {
  const row = physicalOf(keyOfFormula(formula.toString()));
  return row?.change === "melts" && row.celsius !== undefined ? Number(row.celsius) : undefined;
}

/** Is what heat leaves of a solid, its crystal water gone, a melt so hot? */
export function isMeltAt(formula: Formula, at: Quantity<"temperature"> | undefined): boolean {
  const melts = meltsAt(matterOf(formula).core.formula);
  return at !== undefined && melts !== undefined && melts <= at.toNumber("°C");
}

/** Alkali and what else takes the oxides of a crucible up as it melts. */
export function eatsCrucible(formula: Formula): boolean {
  const { cations, anions } = constitutionOf(formula);
  return (
    isOneOf(matterOf(formula).core.formula, ...MELT.fluxes) ||
    (cations.some((ion) => FUSES_OXIDES.cations.some((one) => one === ion.formula)) &&
      anions.some((ion) => FUSES_OXIDES.anions.some((one) => one === ion.formula)))
  );
}

/**
 * How hot a melt is kept in which something stays that melts hotter: so that no crust shuts the gas in. The temperature it forms
 * at where it is no melt, or where the other's would be far hotter or take it apart.
 */
export function keptMelted(
  feed: Formula,
  product: Formula,
  at: Quantity<"temperature">,
  below: Quantity<"temperature"> | undefined,
): Quantity<"temperature"> {
  const melts = meltsAt(product);
  if (melts === undefined || !isMeltAt(feed, at)) return at;
  const least = Math.ceil((melts + MELT.over) / 10) * 10;
  const isNear = least > at.toNumber("°C") && least - at.toNumber("°C") <= MELT.most;
  return isNear && (below === undefined || least < below.toNumber("°C"))
    ? (exact(`${least} °C`) as Quantity<"temperature">)
    : at;
}

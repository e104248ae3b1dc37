// Turning one sparingly soluble salt into another of the same cation by boiling it with a solution of the other ion.

import type { Formula } from "../formula";
import type { Fields } from "../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../foundation/facts";
import { readable } from "../foundation/readable";
import { exponential, naturalLogarithm, type Quantity } from "../quantity";
import { guard } from "./argument";
import { SolubilityError } from "./error";
import { sameIon } from "./precipitating/given-ions";
import { solubilityProduct } from "./precipitating/product";

const CONVERSION = { from: true, to: true, facts: true } as const satisfies Fields<
  Parameters<typeof saltConversion>[0]
>;

/** Whether boiling one solid with a solution turns it into another. */
export interface SaltConversion {
  /** Ion set free over ion bound at equilibrium: above this ratio in solution the conversion stops. */
  readonly equilibriumRatio: Quantity<"number">;
  /** "goes" over 100, "goes with excess" from 1 to 100, "hardly" below 1. */
  readonly verdict: "goes" | "goes with excess" | "hardly";
  /** Ion that the solid binds, with its charge. */
  readonly ionTaken: string;
  /** Ion that the solid sets free, with its charge. */
  readonly ionFreed: string;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/**
 * Can one sparingly soluble salt be turned into another of the same cation, as strontium sulfate into carbonate?
 *
 * @param request - the solid put in and the solid wanted, both with their solubility products known
 * @returns equilibrium ratio of the ions in solution, and what it means at the bench
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.no-data`,
 *   `solubility.other-solute` when they share no cation or differ in type
 * @source ratio of solubility products, its root where a formula has several of the ions that are exchanged
 * @category Precipitation
 * @example
 * saltConversion({ from: "SrSO4", to: "SrCO3" }).verdict // => "goes"
 * saltConversion({ from: "BaSO4", to: "BaCO3" }).verdict // => "hardly"
 */
export function saltConversion(
  request: LookupOptions & {
    readonly from: string | Formula;
    readonly to: string | Formula;
  },
): SaltConversion {
  if (bringsFacts(request)) return withItsFacts(request, guard, saltConversion);
  guard.fields(request, CONVERSION, "request");
  const [from, to] = [solubilityProduct(request.from), solubilityProduct(request.to)];
  const shared = from.ions.find((ion) =>
    to.ions.some((other) => sameIon(ion.formula, other.formula) && ion.count === other.count),
  );
  const freed = from.ions.find((ion) => ion !== shared);
  const taken = to.ions.find((ion) => shared !== undefined && !sameIon(ion.formula, shared.formula));
  if (shared === undefined || freed === undefined || taken === undefined || freed.count !== taken.count) {
    throw new SolubilityError(
      "solubility.other-solute",
      `${from.solid} and ${to.solid} are not two salts of one cation and one type`,
      {
        details: { from: from.solid, to: to.solid },
      },
    );
  }
  const ofProducts = from.value.dividedBy(to.value);
  const { count } = freed;
  // [M]^m [X]^n over [M]^m [Y]^n is ([X] / [Y])^n
  const ofIons = count === 1 ? ofProducts : exponential(naturalLogarithm(ofProducts).dividedBy(BigInt(count)));
  const equilibriumRatio = ofIons.named({
    symbol: "K",
    label: `${freed.formula} over ${taken.formula} at equilibrium`,
    rule: count === 1 ? "K = Ksp(from) / Ksp(to)" : `K = (Ksp(from) / Ksp(to))^(1/${count})`,
  });
  const verdict =
    equilibriumRatio.compare("100") > 0 ? "goes" : equilibriumRatio.compare("1") > 0 ? "goes with excess" : "hardly";
  return readable({
    equilibriumRatio,
    verdict,
    ionTaken: taken.formula,
    ionFreed: freed.formula,
    warnings: [...from.warnings, ...to.warnings],
  });
}

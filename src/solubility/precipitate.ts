// Does it fall out on mixing, how much stays behind, and which of several metals comes down first? Ion products against
// solubility products at 25 °C; ideal unless an ionic strength is given.

import type { VolumeLike } from "../amount";
import type { Formula } from "../formula";
import { attempt, type Result } from "../foundation/error";
import {
  apply,
  type ConcentrationText,
  expectDimension,
  type Quantity,
  type QuantityLike,
  quantity,
  sum,
} from "../quantity";
import { SolubilityError } from "./error";
import { positive } from "./figure";
import {
  activityExponent,
  type DissolvedIon,
  type IonConcentration,
  type Released,
  type SolubilityProduct,
  sameIon,
  solubilityProduct,
  solveProduct,
} from "./product";

/** A solution that is poured in: its ions and its volume. */
export interface MixedSolution {
  readonly volume: VolumeLike;
  readonly ions: readonly IonConcentration[];
}

/** What `willPrecipitate` needs to know. */
export interface PrecipitationRequest {
  readonly solid: string | Formula;
  readonly form?: string;
  /** Solutions mixed; volumes are taken as additive. */
  readonly solutions: readonly MixedSolution[];
  /** For the Davies equation, up to 0.5 mol/L. */
  readonly ionicStrength?: QuantityLike<"concentration", ConcentrationText>;
}

/** Verdict on a mixture. */
export interface PrecipitationVerdict {
  readonly precipitates: boolean;
  /** Ion product over solubility product: above 1 it may fall, above about 1e4 it falls to 99 %. */
  readonly saturation: Quantity;
  readonly volume: Quantity<"volume">;
  /** Solid that falls out, per volume of the mixture; 0 mol/L when none. */
  readonly fallsOut: Quantity<"concentration">;
  /** Each ion before and after, and the share left in the liquor. */
  readonly ions: readonly {
    readonly formula: string;
    readonly before: Quantity<"concentration">;
    readonly after: Quantity<"concentration">;
    readonly shareLeft: Quantity;
  }[];
  readonly product: SolubilityProduct;
  readonly warnings: readonly string[];
}

/** Concentration of each ion of the solid after mixing. */
function mixed(ions: readonly DissolvedIon[], solutions: readonly MixedSolution[]) {
  if (solutions.length === 0) throw new SolubilityError("solubility.missing-option", "no solution named");
  const volumes = solutions.map(({ volume }, i) =>
    positive(expectDimension(volume, "volume", "volume"), "volume").named({
      symbol: `V${i + 1}`,
      label: `volume of solution ${i + 1}`,
    }),
  );
  const total = sum(volumes, {
    symbol: "V",
    label: "volume after mixing",
    rule: "sum of the volumes",
    assumption: "volumes add up on mixing",
  });
  const before = ions.map(({ formula }) => {
    const amounts = solutions.flatMap((solution, i) => {
      const found = solution.ions.find(({ ion }) => sameIon(ion, formula));
      if (found === undefined) return [];
      const c = positive(expectDimension(found.concentration, "concentration", "concentration"), "concentration");
      return [c.times(volumes[i]!)];
    });
    if (amounts.length === 0) {
      throw new SolubilityError("solubility.missing-option", `no ${formula} in any of the solutions`, {
        details: { ion: formula },
      });
    }
    return sum(amounts)
      .dividedBy(total)
      .to("mol/L")
      .named({
        symbol: `c(${formula})`,
        label: `${formula} after mixing`,
        rule: "concentration = sum of amounts / total volume",
      });
  });
  return { total, before };
}

/**
 * Does a sparingly soluble salt fall out when solutions are mixed, and how much of each ion stays behind?
 *
 * @param request - the solid, the solutions with their ions and volumes, ionic strength if wanted
 * @returns ion product over solubility product, what falls out, and what is left of each ion
 * @throws {SolubilityError} `solubility.no-data`, `solubility.missing-option` when an ion is in none of the solutions,
 *   `solubility.not-positive`, `solubility.ionic-strength`
 * @source definition of the solubility product
 * @category Precipitation
 * @example
 * willPrecipitate({ solid: "BaSO4", solutions: [
 *   { volume: "10 mL", ions: [{ ion: "Ba^2+", concentration: "0.1 mol/L" }] },
 *   { volume: "10 mL", ions: [{ ion: "SO4^2-", concentration: "0.1 mol/L" }] },
 * ] }).precipitates // => true
 */
export function willPrecipitate(request: PrecipitationRequest): PrecipitationVerdict {
  const product = solubilityProduct(request.solid, request.form);
  const { ions } = product;
  const { total, before } = mixed(ions, request.solutions);
  const ionicStrength =
    request.ionicStrength === undefined
      ? undefined
      : expectDimension(request.ionicStrength, "concentration", "ionicStrength").in("mol/L").toNumber();
  const exponent = activityExponent(ions, ionicStrength);
  const saturation = saturationOf(product, before, exponent);
  const precipitates = saturation.compare("1") > 0;
  const fallsOut = precipitates ? fallen(product, before, exponent) : quantity("0 mol/L");
  const after = ions.map(({ count }, i) =>
    precipitates ? before[i]!.minus(fallsOut.times(String(count))) : before[i]!,
  );
  return {
    precipitates,
    saturation,
    volume: total,
    fallsOut,
    ions: ions.map(({ formula }, i) => ({
      formula,
      before: before[i]!,
      after: after[i]!.named({ label: `${formula} left in the liquor`, rule: "before − fallen out" }),
      shareLeft: after[i]!.dividedBy(before[i]!).to("%"),
    })),
    product,
    warnings: product.warnings,
  };
}

/** Ion product over the constant; one computed step, because it spans many powers of ten. */
function saturationOf(product: SolubilityProduct, c: readonly Quantity[], exponent: number): Quantity {
  const counts = product.ions.map(({ count }) => count);
  const ratio = (v: readonly { toNumber(): number }[]): number =>
    counts.reduce((all, n, i) => all * v[i + 1]!.toNumber() ** n, 1) / (v[0]!.toNumber() * 10 ** exponent);
  return apply(
    [product.value, ...c],
    {
      name: "Q/K",
      unit: "",
      value: (v) => ratio(v).toPrecision(12),
      partials: (v) => [
        (-ratio(v) / v[0]!.toNumber()).toPrecision(12),
        ...counts.map((n, i) => ((n * ratio(v)) / v[i + 1]!.toNumber()).toPrecision(12)),
      ],
    },
    { symbol: "Q/Ksp", label: "ion product over solubility product", rule: "product of concentrations^count / Ksp" },
  );
}

/** Formula units that fall out per litre. */
function fallen(product: SolubilityProduct, c: readonly Quantity[], exponent: number): Quantity {
  const released = (v: readonly { toNumber(): number }[]): Released[] =>
    product.ions.map(({ count }, i) => ({ count, start: v[i + 1]!.toNumber(), inWater: false }));
  const solve = (v: readonly { toNumber(): number }[]): number =>
    -solveProduct(released(v), Math.log(v[0]!.toNumber()) + exponent * Math.LN10);
  return apply(
    [product.value, ...c],
    {
      name: "solve for what falls out",
      unit: "mol/L",
      value: (v) => solve(v).toPrecision(15),
      partials: (v) => {
        const x = solve(v);
        const pull = released(v).map(({ count, start }) => count / (start - count * x));
        const stiffness = pull.reduce((all, p, i) => all + p * product.ions[i]!.count, 0);
        return [-1 / (stiffness * v[0]!.toNumber()), ...pull.map((p) => p / stiffness)].map((p) => p.toPrecision(12));
      },
    },
    {
      symbol: "x",
      label: `${product.solid} that falls out, per litre`,
      rule: "product of (concentration − count × x)^count = Ksp",
    },
  );
}

/**
 * As `willPrecipitate`, but gives the refusal back as data.
 *
 * @category Precipitation
 * @example
 * tryWillPrecipitate({ solid: "BaSO4", solutions: [] }).ok // => false
 */
export function tryWillPrecipitate(request: PrecipitationRequest): Result<PrecipitationVerdict> {
  return attempt(() => willPrecipitate(request));
}

/** One solid in a selective precipitation. */
export interface PrecipitationStart {
  readonly solid: string;
  readonly metal: string;
  /** Precipitant at which it begins to fall. */
  readonly startsAt: Quantity<"concentration">;
  /** Share of this metal still dissolved when the next one begins; undefined for the last. */
  readonly leftWhenNextStarts: Quantity | undefined;
}

/** What `precipitationOrder` needs to know. */
export interface PrecipitationOrderRequest {
  /** The ion that is added. */
  readonly precipitant: string;
  /** Each solid that can form, with the concentration of its metal. */
  readonly solids: readonly {
    readonly solid: string | Formula;
    readonly form?: string;
    readonly concentration: QuantityLike<"concentration", ConcentrationText>;
  }[];
}

/**
 * Which of several metals falls first as a precipitant is added, and how completely it is gone when the next begins.
 *
 * @param request - the precipitant and the solids with the concentrations of their metals
 * @returns the solids in the order in which they begin to fall
 * @throws {SolubilityError} `solubility.no-data`, `solubility.other-solute` when a solid does not hold the precipitant
 * @source definition of the solubility product
 * @category Precipitation
 * @example
 * precipitationOrder({ precipitant: "CrO4^2-", solids: [
 *   { solid: "BaCrO4", concentration: "0.01 mol/L" }, { solid: "SrCrO4", concentration: "0.01 mol/L" },
 * ] }).map(({ solid }) => solid) // => ["BaCrO4", "SrCrO4"]
 */
export function precipitationOrder(request: PrecipitationOrderRequest): readonly PrecipitationStart[] {
  const starts = request.solids.map(({ solid, form, concentration }) => {
    const product = solubilityProduct(solid, form);
    const added = product.ions.find(({ formula }) => sameIon(formula, request.precipitant));
    const metal = product.ions.find((ion) => ion !== added);
    if (added === undefined || metal === undefined || product.ions.length !== 2) {
      throw new SolubilityError(
        "solubility.other-solute",
        `${product.solid} is not one metal with ${request.precipitant}`,
        {
          details: { solid: product.solid, precipitant: request.precipitant },
        },
      );
    }
    const c = positive(expectDimension(concentration, "concentration", "concentration"), "concentration").to("mol/L");
    const startsAt = apply(
      [product.value, c],
      {
        name: "(Ksp / c^m)^(1/n)",
        unit: "mol/L",
        value: ([k, m]) => ((k!.toNumber() / m!.toNumber() ** metal.count) ** (1 / added.count)).toPrecision(12),
        partials: ([k, m]) => {
          const start = (k!.toNumber() / m!.toNumber() ** metal.count) ** (1 / added.count);
          return [start / added.count / k!.toNumber(), (-start * metal.count) / added.count / m!.toNumber()].map((p) =>
            p.toPrecision(12),
          );
        },
      },
      {
        symbol: `c(${added.formula})`,
        label: `${added.formula} at which ${product.solid} begins to fall`,
        rule: "c = (Ksp / c(metal)^m)^(1/n)",
      },
    );
    return { product, metal, added, startsAt, c };
  });
  starts.sort((a, b) => a.startsAt.compare(b.startsAt));
  return starts.map(({ product, metal, added, startsAt }, i) => {
    const next = starts[i + 1];
    // c(left)/c = (start / next start)^(n/m)
    const leftWhenNextStarts =
      next === undefined
        ? undefined
        : apply(
            [startsAt, next.startsAt],
            {
              name: "(start / next start)^(n/m)",
              unit: "%",
              value: ([a, b]) => (100 * (a!.toNumber() / b!.toNumber()) ** (added.count / metal.count)).toPrecision(12),
              partials: ([a, b]) => {
                const share = 100 * (a!.toNumber() / b!.toNumber()) ** (added.count / metal.count);
                const power = added.count / metal.count;
                return [(power * share) / a!.toNumber(), (-power * share) / b!.toNumber()].map((p) =>
                  p.toPrecision(12),
                );
              },
            },
            {
              label: `${metal.formula} left when ${next.product.solid} begins`,
              rule: "share left = (start / next start)^(n/m)",
            },
          );
    return { solid: product.solid, metal: metal.formula, startsAt, leftWhenNextStarts };
  });
}

/**
 * As `precipitationOrder`, but gives the refusal back as data.
 *
 * @category Precipitation
 * @example
 * tryPrecipitationOrder({ precipitant: "Cl-", solids: [{ solid: "BaSO4", concentration: "1 mol/L" }] }).ok // => false
 */
export function tryPrecipitationOrder(request: PrecipitationOrderRequest): Result<readonly PrecipitationStart[]> {
  return attempt(() => precipitationOrder(request));
}

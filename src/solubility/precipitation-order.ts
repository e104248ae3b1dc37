// Selective precipitation: which of several metals falls first as a precipitant is added. Ideal, 25 °C.
import type { Formula } from "../formula";
import { attempt, type Result } from "../foundation/error";
import {
  apply,
  type ConcentrationText,
  expectDimension,
  type NumberLike,
  type Quantity,
  type QuantityLike,
  quantity,
} from "../quantity";
import { needRecord, needRecords } from "./argument";
import { SolubilityError } from "./error";
import { positive } from "./figure";
import { PKW, sameIon } from "./ion-balance";
import { freshForm, type SolubilityProduct, solubilityProduct } from "./product";

/** One solid in a selective precipitation. */
export interface PrecipitationStart {
  readonly solid: string;
  /** Form the constant is for: the fresh one, which falls first, unless another was named. */
  readonly form: string | undefined;
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
  /** pH of the solution, for solids that set free hydroxide besides, such as sulfides with `"HS-"`; 0 to 14. */
  readonly pH?: NumberLike;
  /** Each solid that can form, with the concentration of its metal. */
  readonly solids: readonly {
    readonly solid: string | Formula;
    readonly form?: string;
    readonly concentration: QuantityLike<"concentration", ConcentrationText>;
  }[];
}

/** The product with the hydroxide of the pH taken out of it. */
function atPH(product: SolubilityProduct, count: number, pH: NumberLike | undefined): Quantity {
  if (pH === undefined) {
    throw new SolubilityError(
      "solubility.missing-option",
      `${product.solid} sets free hydroxide as well: at what pH?`,
      { hint: "give pH, such as 1 for sulfides from acid or 9 from ammonia", details: { solid: product.solid } },
    );
  }
  const given = quantity({ value: pH, unit: "" }, { symbol: "pH", label: "pH of the solution" });
  const plain = given.value.toNumber();
  if (!(plain >= 0 && plain <= PKW)) {
    throw new SolubilityError("solubility.out-of-reach", `a pH of 0 to ${PKW} is understood, not ${given}`);
  }
  return apply(
    [product.value, given],
    {
      name: "Ksp / [OH]^n",
      unit: "",
      value: ([k, p]) => (k!.toNumber() * 10 ** (count * (PKW - p!.toNumber()))).toPrecision(12),
      partials: ([k, p]) => {
        const factor = 10 ** (count * (PKW - p!.toNumber()));
        return [factor, -count * Math.LN10 * k!.toNumber() * factor].map((each) => each.toPrecision(12));
      },
    },
    { symbol: `K(${product.solid})`, label: `product of ${product.solid} at this pH`, rule: "Ksp / [OH]^n" },
  );
}

/**
 * Which of several metals falls first as a precipitant is added, and how completely it is gone when the next begins.
 *
 * @param request - the precipitant and the solids with the concentrations of their metals; the pH where solids set free
 *   hydroxide besides the precipitant
 * @returns the solids in the order in which they begin to fall
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.no-data`,
 *   `solubility.other-solute` when a solid does not hold the precipitant
 * @source definition of the solubility product
 * @category Precipitation
 * @example
 * precipitationOrder({ precipitant: "CrO4^2-", solids: [
 *   { solid: "BaCrO4", concentration: "0.01 mol/L" }, { solid: "SrCrO4", concentration: "0.01 mol/L" },
 * ] }).map(({ solid }) => solid) // => ["BaCrO4", "SrCrO4"]
 */
export function precipitationOrder(request: PrecipitationOrderRequest): readonly PrecipitationStart[] {
  needRecord(request, "request");
  needRecords(request.solids, "solids");
  const starts = request.solids.map(({ solid, form, concentration }) => {
    const product = solubilityProduct(solid, form ?? freshForm(solid)?.form);
    const added = product.ions.find(({ formula }) => sameIon(formula, request.precipitant));
    const others = product.ions.filter((ion) => ion !== added);
    const hydroxide = others.length === 2 ? others.find(({ formula }) => sameIon(formula, "OH-")) : undefined;
    const metal = others.find((ion) => ion !== hydroxide);
    if (added === undefined || metal === undefined || others.length !== (hydroxide === undefined ? 1 : 2)) {
      throw new SolubilityError(
        "solubility.other-solute",
        `${product.solid} is not one metal with ${request.precipitant}`,
        {
          details: { solid: product.solid, precipitant: request.precipitant },
        },
      );
    }
    const value = hydroxide === undefined ? product.value : atPH(product, hydroxide.count, request.pH);
    const c = positive(expectDimension(concentration, "concentration", "concentration"), "concentration").to("mol/L");
    const startsAt = apply(
      [value, c],
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
    return { solid: product.solid, form: product.form, metal: metal.formula, startsAt, leftWhenNextStarts };
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

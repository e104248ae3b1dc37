// Selective precipitation: which of several metals precipitates first as a precipitant is added. Ideal, 25 °C.
import type { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import {
  applyFunction,
  type ConcentrationText,
  type NumberLike,
  type Quantity,
  type QuantityLike,
} from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { positive } from "../curves/figure";
import { SolubilityError } from "../error";
import { productAtPH } from "./held-ph";
import { sameIon } from "./ion-balance";
import { freshForm, solubilityProduct } from "./product";

const SOLID = { solid: true, form: true, concentration: true } as const satisfies Fields<
  PrecipitationOrderRequest["solids"][number]
>;

const PRECIPITATION_ORDER = {
  precipitant: true,
  pH: true,
  solids: [SOLID],
} as const satisfies Fields<PrecipitationOrderRequest>;

/** One solid in a selective precipitation. */
export interface PrecipitationStart {
  readonly solid: string;
  /** Form the constant is for: the fresh one, which precipitates first, unless another was named. */
  readonly form: string | undefined;
  readonly metal: string;
  /** Precipitant at which it begins to precipitate. */
  readonly startsAt: Quantity<"concentration">;
  /** Share of this metal still dissolved when the next one begins; undefined for the last. */
  readonly leftWhenNextStarts: Quantity | undefined;
}

/** What `precipitationOrder` needs to know. */
export interface PrecipitationOrderRequest {
  /** The ion that is added. */
  readonly precipitant: string;
  /**
   * pH of the solution, 0 to 14; needed for solids that set free hydroxide besides, such as sulfides with `"HS-"`.
   * Concentrations are then those of an ion in all its forms, protonated and as hydroxide complex.
   */
  readonly pH?: NumberLike;
  /** Each solid that can form, with the concentration of its metal. */
  readonly solids: readonly {
    readonly solid: string | Formula;
    readonly form?: string;
    readonly concentration: QuantityLike<"concentration", ConcentrationText>;
  }[];
}

/**
 * Which of several metals precipitates first as a precipitant is added, and how completely it is gone when the next begins.
 *
 * @param request - the precipitant and the solids with the concentrations of their metals; the pH where solids set free
 *   hydroxide besides the precipitant
 * @returns the solids in the order in which they begin to precipitate
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
  guard.fields(request, PRECIPITATION_ORDER, "request");
  guard.list(request.solids, "solids");
  const starts = request.solids.map(({ solid, form, concentration }) => {
    const whole = solubilityProduct(solid, form ?? freshForm(solid)?.form);
    const withHydroxide = whole.ions.length === 2 && sameIon(request.precipitant, "OH-");
    const needsPH = whole.ions.length > 2 || (request.pH !== undefined && !withHydroxide);
    const product = needsPH ? productAtPH(whole, request.pH) : whole;
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
    const startsAt = applyFunction(
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
        label: `${added.formula} at which ${product.solid} begins to precipitate`,
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
        : applyFunction(
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

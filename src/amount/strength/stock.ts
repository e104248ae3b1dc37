import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import type { Quantity } from "../../quantity";
import { amountOf, massOf, PURITY, type Purity } from "../amount";
import {
  type FormulaLike,
  formulaOfArgument,
  grouped,
  guard,
  inSymbol,
  type MassLike,
  positive,
  type VolumeLike,
} from "../argument";
import { GLASS, type Glassware, measuredVolume } from "../density/glassware";
import { AmountError } from "../error";
import { contentOf } from "../jar/portion";
import type { StrengthLike, StrengthOptions } from "./strength-kind";

const STOCK_MADE = {
  ...PURITY,
  of: true,
  volume: true,
  glassware: GLASS,
  equivalents: true,
  reaction: true,
  facts: true,
} as const satisfies Fields<StockRequest>;

const STOCK = { ...STOCK_MADE, strength: true } as const satisfies Fields<Parameters<typeof stockSolution>[0]>;

/** A stock solution to make, or made. */
export interface StockRequest extends Purity, LookupOptions {
  /** What is in the jar, crystal water included. */
  readonly of: FormulaLike;
  /** Volume in all, made up to the mark. */
  readonly volume: VolumeLike;
  /** Flask or cylinder the volume is measured in; without it the volume is taken as exact. */
  readonly glassware?: Glassware | undefined;
  /** Equivalents in one mole, for a strength in N. */
  readonly equivalents?: StrengthOptions["equivalents"];
  /** The reaction those equivalents belong to; an equation tells them by itself. */
  readonly reaction?: StrengthOptions["reaction"];
}

/** A stock solution worked out. */
export interface StockSolution {
  /** Mass to weigh, or that was weighed. */
  readonly mass: Quantity<"mass">;
  /** Volume to make up to. */
  readonly volume: Quantity<"volume">;
  /** Amount concentration of the formula in the jar. */
  readonly concentration: Quantity<"concentration">;
}

function flask(request: StockRequest): Quantity<"volume"> {
  const { volume, glassware } = request;
  const words = { symbol: "V", label: "volume made up to the mark" };
  const V = positive(volume, "volume", "volume", words);
  return glassware === undefined ? V : measuredVolume(V, glassware);
}

/**
 * What to weigh for a stock solution: weigh, dissolve in less, make up to the mark (do not add that volume of water).
 *
 * @param request - `of` what the jar holds, `strength` per volume (mol/L, g/L, % w/v, N), `volume`, assay, moisture,
 *   `glassware`
 * @returns mass to weigh, volume with the tolerance of the glassware, and the concentration
 * @throws {AmountError} `amount.not-positive`, `amount.fraction-above-one`, `amount.glassware`, `amount.missing-density`
 *   for a strength per mass, and those of {@link convertStrength}
 * @throws {FormulaError} those of `parseFormula`
 * @source m = c V M / w
 * @category Solutions
 * @example
 * stockSolution({ of: "CuSO4·5H2O", strength: "0.1000 mol/L", volume: "250.0 mL" }).mass.format({ decimals: 3, uncertainty: "none" }) // => "6.242 g"
 */
export function stockSolution(request: StockRequest & { readonly strength: StrengthLike }): StockSolution {
  if (bringsFacts(request)) return withItsFacts(request, guard, stockSolution);
  const { of, strength, assay, moisture, equivalents, reaction } = grouped(request, STOCK, "request");
  const formula = formulaOfArgument(of);
  const name = inSymbol(formula);
  const volume = flask(request);
  const { content, counts } = contentOf(strength, "volume", { of: formula, equivalents, reaction });
  if (!content.isPositive())
    throw new AmountError("amount.not-positive", "a stock solution needs a strength above zero");
  const held = content.times(volume);
  const amount =
    counts === "amount"
      ? held.to("mol").named({ symbol: `n(${name})`, rule: "amount = concentration × volume" })
      : amountOf(
          held.to("g").named({ symbol: `m(pure ${name})`, rule: "mass = mass concentration × volume" }),
          formula,
        );
  const mass = massOf(amount, formula, { assay, moisture });
  const concentration = amount
    .dividedBy(volume)
    .to("mol/L")
    .named({ symbol: `c(${name})`, rule: "concentration = amount / volume" });
  return readable({ mass, volume, concentration });
}

/**
 * What strength a stock solution really has, from what was weighed and the flask it was made up in.
 *
 * @param mass - mass as weighed, > 0
 * @param request - `of` what the jar holds, `volume`, assay, moisture, `glassware`
 * @returns the mass, the volume with its tolerance, and the concentration with the uncertainty of both
 * @throws {AmountError} as for {@link stockSolution}
 * @source c = w m / (M V)
 * @category Solutions
 * @example
 * strengthPrepared("98.0 g", { of: "H3PO4", volume: "1.00 L" }).concentration.format({ decimals: 2, uncertainty: "none" }) // => "1.00 mol/L"
 */
export function strengthPrepared(mass: MassLike, request: StockRequest): StockSolution {
  if (bringsFacts(request)) return withItsFacts(request, guard, (others) => strengthPrepared(mass, others));
  const formula = formulaOfArgument(grouped(request, STOCK_MADE, "request").of);
  const name = inSymbol(formula);
  const m = positive(mass, "mass", "mass", { symbol: `m(${name})`, label: `mass of ${name} as weighed` });
  const volume = flask(request);
  const concentration = amountOf(m, formula, { assay: request.assay, moisture: request.moisture })
    .dividedBy(volume)
    .to("mol/L")
    .named({ symbol: `c(${name})`, rule: "concentration = amount / volume" });
  return readable({ mass: m, volume, concentration });
}

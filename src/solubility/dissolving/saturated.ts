// One solubility on the bases different tables use. Sources mix them, so each is named: per 100 g water, hydrate per 100 g
// of water added, mass fraction, molality, per litre of solution.

import { type DensityLike, densityOfSolution, type TemperatureLike } from "../../amount";
import { type Formula, molarMass } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { type Facts, lookingIn } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { hundredGrams } from "../curves/figure";
import { solubilityOf } from "../curves/solubility";
import { anhydrousMolarMass, type Solute, soluteOf } from "../curves/solute";
import type { Solubility } from "../record";

const SATURATED = { formula: true, temperature: true, density: true, facts: true } as const satisfies Fields<
  Parameters<typeof saturatedSolution>[0]
>;

/** A saturated solution on the bases different tables use. */
export interface SaturatedSolution {
  /** The table's figure: g anhydrous per 100 g of all water. */
  readonly perHundredGramsWater: Quantity<"mass">;
  /** Grams of the salt as named (hydrate included) per 100 g of water ADDED; undefined if any amount dissolves. */
  readonly asNamedPerHundredGramsAdded: Quantity<"mass"> | undefined;
  /** Mass of anhydrous salt over mass of solution. */
  readonly massFraction: Quantity<"number">;
  /** Amount of anhydrous salt over mass of water. */
  readonly molality: Quantity<"molality">;
  /** Density of the saturated solution, as given or from the density table; undefined where neither reaches. */
  readonly density: Quantity<"density"> | undefined;
  /** Per litre of solution; only with a density. */
  readonly concentration: Quantity<"concentration"> | undefined;
  /** Anhydrous mass per litre of solution; only with a density. */
  readonly massConcentration: Quantity<"density"> | undefined;
  /** Why there is no density; undefined when there is one. */
  readonly missing: string | undefined;
  /** The answer of the table that all bases are calculated from. */
  readonly solubility: Solubility;
}

/**
 * The solubility of a salt on every basis in use: per 100 g water, hydrate per 100 g of water added, mass fraction,
 * molality, and per litre of solution when its density is given or tabulated.
 *
 * @param request - salt (crystal water counts for the "as named" figure), temperature, and density of the saturated solution if measured
 * @returns every basis; what needs a density is undefined without one
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, the codes of `solubilityOf`
 * @source hydrate per 100 g added water: water balance h = 100 S / (100 f − S (1 − f)), f the anhydrous share
 * @category Solubility
 * @example
 * saturatedSolution({ formula: "CuSO4·5H2O", temperature: "20 °C" }).asNamedPerHundredGramsAdded?.format({ decimals: 1 }) // => "35.3 g"
 */
export function saturatedSolution(request: {
  readonly formula: string | Formula;
  readonly temperature: TemperatureLike;
  readonly density?: DensityLike;
  /** Facts of the caller's own, looked up before the tables. */
  readonly facts?: Facts | undefined;
}): SaturatedSolution {
  guard.fields(request, SATURATED, "request");
  if (request.facts !== undefined) {
    const { facts, ...others } = request;
    return lookingIn(facts, guard, () => saturatedSolution(others));
  }
  const solute = soluteOf(request.formula);
  const solubility = solubilityOf(solute.formula, request.temperature);
  const s = solubility.perHundredGramsWater;
  const hundred = hundredGrams();
  const massFraction = s
    .dividedBy(s.plus(hundred))
    .to("%")
    .named({ symbol: "w", label: "mass fraction of the saturated solution", rule: "w = S / (S + 100 g)" });
  const molality = s
    .dividedBy(molarMass(solute.anhydrous))
    .dividedBy(hundred)
    .to("mol/kg")
    .named({ symbol: "b", label: "molality of the saturated solution", rule: "b = S / (M × 100 g)" });
  const found = densityOf(request.density, solute, massFraction, request.temperature);
  const [density, missing] = typeof found === "string" ? [undefined, found] : [found, undefined];
  const massConcentration = density?.times(massFraction).to("g/L").named({
    symbol: "ρ(salt)",
    label: "anhydrous salt per litre of solution",
    rule: "mass concentration = w × density",
  });
  const concentration = massConcentration
    ?.dividedBy(molarMass(solute.anhydrous))
    .to("mol/L")
    .named({ symbol: "c", label: "concentration of the saturated solution", rule: "c = w × density / M" });
  return readable({
    perHundredGramsWater: s,
    asNamedPerHundredGramsAdded: asNamed(solute, s),
    massFraction,
    molality,
    density,
    concentration,
    massConcentration,
    missing,
    solubility,
  });
}

/** The caller's density, or the table's where it reaches the saturated solution, or why there is none. */
function densityOf(
  given: DensityLike | undefined,
  solute: Solute,
  massFraction: Quantity,
  temperature: TemperatureLike,
): Quantity | string {
  if (given !== undefined) return guard.positive(expectDimension(given, "density", "density"), "density");
  const found = attempt(() => densityOfSolution(solute.anhydrous, massFraction, { temperature }));
  return found.ok ? found.value : found.error.problem;
}

/** Hydrate that 100 g of added water dissolves; undefined when its own water is already enough. */
function asNamed(solute: Solute, s: Quantity): Quantity | undefined {
  if (!solute.isHydrate) return s;
  const share = anhydrousMolarMass(solute).dividedBy(molarMass(solute.formula));
  const crystal = quantity("1").minus(share);
  const below = hundredGrams().times(share).minus(s.times(crystal));
  if (!below.isPositive()) return undefined;
  return hundredGrams()
    .times(s)
    .dividedBy(below)
    .named({
      symbol: "h",
      label: `${solute.formula} per 100 g of water added`,
      rule: "h = 100 S / (100 f − S (1 − f)), f the anhydrous share of the hydrate",
    });
}

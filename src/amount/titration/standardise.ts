// Strength of a titrant against a primary standard: what every titration rests on.

import { molarMass } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { type Quantity, quantity } from "../../quantity";
import {
  assayOf,
  type FormulaLike,
  formulaOfArgument,
  grouped,
  guard,
  inSymbol,
  listed,
  type MassFractionLike,
  type MassLike,
  positive,
  type VolumeLike,
} from "../argument";
import { AmountError } from "../error";
import { type Replicates, replicateStatistics } from "./replicates";
import { type Proportion, ratioOf, type Titrant } from "./titration";
import { lessBlank, type Titre, volumeOfTitre } from "./titre";

const PORTION = { mass: true, titre: true } as const satisfies Fields<StandardPortion>;

const STANDARDISATION = {
  of: true,
  standard: true,
  purity: true,
  portions: [PORTION],
  blank: true,
  equation: true,
  titrantPerAnalyte: true,
  facts: true,
} as const satisfies Fields<StandardisationRequest>;

/** One weighed portion of the standard, and what it took. */
export interface StandardPortion {
  /** As weighed, impurities included. */
  readonly mass: MassLike;
  /** Volume of titrant used, or the readings of the burette. */
  readonly titre: Titre;
}

/** A standardisation as carried out. */
export interface StandardisationRequest extends Proportion, LookupOptions {
  /** Formula of the titrant. */
  readonly of: FormulaLike;
  /** Formula of the standard as weighed: `Na2CO3`, `KHC8H4O4`, `C2H2O4·2H2O`. */
  readonly standard: FormulaLike;
  /** Mass fraction of the standard in what was weighed; all of it unless given. */
  readonly purity?: MassFractionLike | undefined;
  /** One for each titration. */
  readonly portions: readonly StandardPortion[];
  /** Titre of a blank, taken off each. */
  readonly blank?: VolumeLike | undefined;
}

/** The strength found. */
export interface Standardisation {
  /** Mean of the portions, with their scatter and the doubt of weighings, volumes, purity and molar mass. */
  readonly concentration: Quantity<"concentration">;
  /** The titrant as `titrate` takes it. */
  readonly titrant: Titrant;
  /** The strength that each portion gives, summed up and judged. */
  readonly replicates: Replicates<"concentration">;
  /** What to look at: strengths too far apart, an outlier. */
  readonly warnings: readonly string[];
}

/** Strengths that lie further apart than this share of their mean are looked at again (common practice, no source). */
const AGREEMENT = "0.2 %";

/**
 * Strength of a titrant from weighed portions of a primary standard.
 *
 * @param request - formulas of titrant and standard, 1 to 1000 portions with mass and titre, `purity`, `blank`, and the
 *   equation or `titrantPerAnalyte`, moles of titrant for one mole of the standard
 * @returns the concentration in mol/L, the titrant ready for {@link titrate}, and the strengths of the portions
 * @throws {AmountError} `amount.missing-input`, `amount.not-in-equation`, `amount.not-positive`, `amount.not-possible`,
 *   `amount.readings`
 * @throws {FormulaError} those of `parseFormula`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source c(titrant) = m w ratio / (M V); JCGM 100:2008, 4.2 for the scatter
 * @category Solutions
 * @example
 * const acid = standardise({ of: "HCl", standard: "Na2CO3", equation: "Na2CO3 + HCl -> NaCl + H2O + CO2", portions: [{ mass: "0.1325 g", titre: "25.00 mL" }] });
 * acid.concentration.format({ decimals: 4 }) // => "0.1000 mol/L"
 * titrate({ titrant: acid.titrant, titre: "24.00 mL", titrantPerAnalyte: 1, sample: "25.00 mL" }).concentration!.format({ decimals: 4 }) // => "0.0960 mol/L"
 */
export function standardise(request: StandardisationRequest): Standardisation {
  if (bringsFacts(request)) return withItsFacts(request, guard, standardise);
  const { of, standard, purity, portions, blank } = grouped(request, STANDARDISATION, "request");
  const titrant = formulaOfArgument(of, "of");
  const solid = formulaOfArgument(standard, "standard");
  if (listed(portions, "portions").length === 0) {
    throw new AmountError("amount.readings", "a standardisation needs a weighed portion");
  }
  const { ratio, words } = ratioOf(request, titrant, solid);
  const M = molarMass(solid);
  const w =
    purity === undefined
      ? undefined
      : assayOf(purity, "purity", { symbol: `w(${inSymbol(solid)})`, label: `purity of ${inSymbol(solid)}` });
  const strengths = portions.map(({ mass, titre }, i) => {
    const mark = portions.length === 1 ? "" : String(i + 1);
    const m = positive(mass, "mass", "mass", { symbol: `m${mark}`, label: `weighed ${inSymbol(solid)}` });
    const V = lessBlank(volumeOfTitre(titre, `V${mark}`), blank, false);
    const n = (w === undefined ? m : m.times(w)).dividedBy(M).to("mol");
    return n
      .times({ value: ratio.toFraction(), unit: "" })
      .dividedBy(V)
      .to("mol/L")
      .named({ symbol: `c${mark}`, rule: `strength = moles of standard × ratio / titre: ${words}` });
  });
  const replicates = replicateStatistics(strengths, { label: "strengths" });
  const concentration = meanOf(strengths, replicates).named({
    symbol: `c(${inSymbol(titrant)})`,
    label: `strength of the ${inSymbol(titrant)}, standardised`,
  }) as Quantity<"concentration">;
  return readable({
    concentration,
    titrant: { strength: concentration, of: titrant },
    replicates,
    warnings: warningsOf(concentration, replicates),
  });
}

/** The mean with what the portions share, and their scatter beside it. */
function meanOf(strengths: readonly Quantity[], { standardDeviation, count }: Replicates): Quantity {
  const mean = strengths.reduce((sum, one) => sum.plus(one)).dividedBy(count);
  if (standardDeviation === undefined) return mean;
  const scatter = quantity(
    { value: 0, unit: "mol/L", standardUncertainty: standardDeviation.in("mol/L").dividedBy(Math.sqrt(count)) },
    { symbol: "δ", label: "scatter of the portions", degreesOfFreedom: count - 1 },
  );
  return mean.plus(scatter);
}

function warningsOf(mean: Quantity, { range, suspect }: Replicates): string[] {
  const warnings: string[] = [];
  const apart = range.dividedBy(mean);
  if (apart.compare(AGREEMENT) > 0) {
    const share = apart.format({ unit: "%", significant: 2 });
    warnings.push(`the strengths lie ${share} of their mean apart, more than ${AGREEMENT}: titrate another portion`);
  }
  if (suspect?.outlier === true)
    warnings.push(`${suspect.value.format({ significant: 4 })} is an outlier by Grubbs' test`);
  return warnings;
}

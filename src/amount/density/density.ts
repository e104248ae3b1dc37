// Density of a solution against its strength, both ways, from tables near 20 °C. Outside a table there is no answer.

import type { Formula } from "../../formula";
import { isWater } from "../../formula/internal";
import type { Fields } from "../../foundation/argument";
import { lookingIn } from "../../foundation/facts";
import { isQuantity, type Quantity, quantity } from "../../quantity";
import {
  assayOf,
  type DensityLike,
  type FormulaLike,
  formulaOfArgument,
  grouped,
  guard,
  inSymbol,
  liquidDensity,
  listed,
  type MassFractionLike,
  notNegative,
  positive,
} from "../argument";
import { AmountError } from "../error";
import {
  DENSITY,
  type DensityOptions,
  doubtAt,
  expansionFactor,
  outside,
  RULE,
  segmentAt,
  segmentOf,
  stated,
  steepness,
  tablesOf,
} from "./density-table";

const STRENGTH_FROM_DENSITY = { ...DENSITY, between: true } as const satisfies Fields<
  NonNullable<Parameters<typeof massFractionFromDensity>[2]>
>;

/**
 * Density of a solution of known strength.
 *
 * @param solute - what the mass fraction counts, a hydrate included: 10 % CuSO4·5H2O is 6.4 % CuSO4
 * @param massFraction - mass fraction of the solute, 0 to the last point of the table
 * @param options - `temperature`, that of the table unless given, at most 10 K away
 * @returns density in g/mL with a standard uncertainty: rounding, table, interpolation and temperature
 * @throws {AmountError} `amount.no-density-table`, `amount.outside-range`, `amount.negative`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @throws {FormulaError} those of `parseFormula`
 * @source the table named in the working; between points 1/density is taken as linear in mass fraction
 * @category Solutions
 * @example
 * densityOfSolution("HCl", "37 %").format({ decimals: 3, uncertainty: "none" }) // => "1.184 g/mL"
 * attempt(() => densityOfSolution("CuSO4", "60 %")).ok // => false
 */
export function densityOfSolution(
  solute: FormulaLike,
  massFraction: MassFractionLike,
  options: DensityOptions = {},
): Quantity<"density"> {
  grouped(options, DENSITY);
  return lookingIn(options.facts, guard, () => densityAt(solute, massFraction, options));
}

function densityAt(solute: FormulaLike, massFraction: MassFractionLike, options: DensityOptions): Quantity<"density"> {
  const formula = formulaOfArgument(solute);
  const name = inSymbol(formula);
  const w = notNegative(massFraction, "mass fraction", "mass fraction", {
    symbol: `w(${name})`,
    label: `mass fraction of ${name}`,
  });
  const { tables: all, perAsked } = tablesOf(formula);
  const counted = perAsked === undefined ? w : w.times(perAsked);
  const percent = counted.toNumber("%");
  for (const table of all) {
    const k = segmentOf(table, percent);
    if (k === undefined) continue;
    const segment = segmentAt(table, k);
    const { a, va, slope } = segment;
    // what stands in the table is cited; a strength that is itself uncertain needs the slope
    const there = table.points.find((one) => one.percent === percent);
    const point = there !== undefined && counted.standardUncertainty === undefined ? there : undefined;
    const read = point?.rho ?? quantity("1").dividedBy(va.plus(slope.times(counted.minus(a.w))));
    const doubt = doubtAt(table, segment, percent);
    const rho = doubt === undefined ? read : read.plus(doubt);
    const factor = expansionFactor(table, options.temperature);
    const rule = point === undefined ? RULE : "as the table has it";
    return (factor === undefined ? rho : rho.times(factor)).to("g/mL").named({
      symbol: `ρ(${name})`,
      rule: factor === undefined ? rule : `${rule}; then corrected to the temperature`,
      ...(options.temperature === undefined ? { assumption: stated(table) } : {}),
    });
  }
  throw outside(formula, all, `${w.to("% w/w")}`);
}

/**
 * Strength of a solution from its density, as read off a hydrometer.
 *
 * @param solute - what the mass fraction counts
 * @param density - measured density, > 0
 * @param options - `temperature` of the solution; `between`, two mass fractions, where the density alone does not tell
 *   (sulfuric acid above 97 %, acetic acid above 70 %)
 * @returns mass fraction in % w/w with a standard uncertainty
 * @throws {AmountError} `amount.no-density-table`, `amount.outside-range`, `amount.several-readings`, `amount.not-positive`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source the table named in the working
 * @category Solutions
 * @example
 * massFractionFromDensity("HCl", "1.100 g/mL").format({ decimals: 1, uncertainty: "none" }) // => "20.4 % w/w"
 */
export function massFractionFromDensity(
  solute: FormulaLike,
  density: DensityLike,
  options: DensityOptions & {
    readonly between?: readonly [low: MassFractionLike, high: MassFractionLike] | undefined;
  } = {},
): Quantity<"mass fraction"> {
  grouped(options, STRENGTH_FROM_DENSITY);
  if (options.facts !== undefined) {
    const { facts, ...others } = options;
    return lookingIn(facts, guard, () => massFractionFromDensity(solute, density, others));
  }
  const formula = formulaOfArgument(solute);
  const name = inSymbol(formula);
  const measured = positive(density, "density", "density", {
    symbol: `ρ(${name})`,
    label: `density of ${name} solution`,
  });
  const { tables: all, perAsked } = tablesOf(formula);
  const perAskedPlain = perAsked?.toNumber("") ?? 1;
  const [low, high] = stretchOf(options.between);
  for (const table of all) {
    const factor = expansionFactor(table, options.temperature);
    const rho = factor === undefined ? measured : measured.dividedBy(factor);
    const plain = rho.toNumber("g/mL");
    const found: Quantity[] = [];
    for (let k = 0; k + 1 < table.points.length; k++) {
      const [p, q] = [table.points[k]!, table.points[k + 1]!];
      if (plain < Math.min(p.plain, q.plain) || plain > Math.max(p.plain, q.plain) || p.plain === q.plain) continue;
      const segment = segmentAt(table, k);
      const { a, va, slope } = segment;
      const chord = a.w.plus(quantity("1").dividedBy(rho).minus(va).dividedBy(slope));
      const percent = chord.toNumber("%");
      const asked = percent / perAskedPlain;
      if (asked < low || asked > high || found.some((w) => Math.abs(w.toNumber("%") - percent) < 1e-9)) continue;
      const { slope: steep } = steepness(segment, percent);
      found.push(shifted(chord, doubtAt(table, segment, percent), 1 / steep));
    }
    if (found.length > 1) {
      throw new AmountError(
        "amount.several-readings",
        `${inSymbol(formula)} of density ${measured} has ${found.length} strengths`,
        {
          hint: 'say between which strengths it lies, such as between: ["0 %", "70 %"]',
          details: { readings: found.map((w) => w.to("% w/w").format({ significant: 4, uncertainty: "none" })) },
        },
      );
    }
    const w = found[0];
    if (w === undefined) continue;
    return (perAsked === undefined ? w : w.dividedBy(perAsked)).to("% w/w").named({
      symbol: `w(${name})`,
      rule: RULE,
      ...(options.temperature === undefined ? { assumption: stated(table) } : {}),
    });
  }
  throw outside(formula, all, `a density of ${measured}`);
}

/** The mass percents a strength is looked for between. */
function stretchOf(between: readonly [MassFractionLike, MassFractionLike] | undefined): readonly [number, number] {
  if (between === undefined) return [0, 100];
  const [low, high] = listed(between, "between").map((w) => notNegative(w, "mass fraction", "between").toNumber("%"));
  if (low !== undefined && high !== undefined && low < high) return [low, high];
  throw new AmountError("amount.missing-input", "between is two mass fractions, the lower first", {
    hint: 'such as between: ["0 %", "70 %"]',
    details: { argument: "between" },
  });
}

/** @internal Mass fraction of a solution from the mass of solute in a volume of it, solved on the table in closed form. */
export function massFractionFromMassConcentration(
  solute: Formula,
  gamma: Quantity,
  options: DensityOptions = {},
): Quantity {
  const { tables: all, perAsked } = tablesOf(solute);
  const name = inSymbol(solute);
  const counted = perAsked === undefined ? gamma : gamma.times(perAsked);
  for (const table of all) {
    const factor = expansionFactor(table, options.temperature);
    const g = factor === undefined ? counted : counted.dividedBy(factor);
    // w × density rises along every table, so the segment is found by its ends; exactly, or the last point would be missed.
    const k = table.points.slice(1).findIndex(({ w, rho }) => g.compare(w.times(rho)) <= 0);
    if (k < 0) continue;
    const segment = segmentAt(table, k);
    const { a, va, slope } = segment;
    // 1/ρ = va + slope (w - wa) and w ρ = g give w (1 - g slope) = g (va - slope wa).
    const chord = g.times(va.minus(slope.times(a.w))).dividedBy(quantity("1").minus(g.times(slope)));
    const percent = chord.toNumber("%");
    const { rho, slope: steep } = steepness(segment, percent);
    const w = shifted(chord, doubtAt(table, segment, percent), percent / 100 / (rho + (percent / 100) * steep));
    return (perAsked === undefined ? w : w.dividedBy(perAsked)).to("% w/w").named({
      symbol: `w(${name})`,
      rule: `mass concentration = mass fraction × density, solved on the table: ${RULE}`,
      ...(options.temperature === undefined ? { assumption: stated(table) } : {}),
    });
  }
  throw outside(solute, all, `${gamma.to("g/L")}`);
}

/** A mass fraction with the doubt of the density it was read from: `per`, mass fraction for each g/mL. */
function shifted(w: Quantity, doubt: Quantity | undefined, per: number): Quantity {
  return doubt === undefined ? w : w.minus(doubt.times(quantity({ value: per.toPrecision(12), unit: "mL/g" })));
}

/** @internal The tables are of solutions in water; nothing may be looked up for another solvent. */
export function onlyInWater(solvent: FormulaLike | undefined): void {
  if (solvent === undefined || isWater(formulaOfArgument(solvent))) return;
  throw new AmountError("amount.missing-density", "the densities that are tabulated are of solutions in water", {
    hint: "measure the density of this solution and give it",
  });
}

/** @internal A density given by the caller, or looked up. */
export function densityFor(
  solute: Formula | undefined,
  w: Quantity,
  options: DensityOptions & { readonly density?: DensityLike | undefined; readonly solvent?: FormulaLike | undefined },
): Quantity {
  if (options.density !== undefined) {
    return liquidDensity(options.density, "density", { symbol: "ρ", label: "density of the solution" });
  }
  if (solute === undefined) {
    throw new AmountError("amount.missing-density", "going from mass to volume needs the density of the solution", {
      hint: 'give density: "1.19 g/mL", or the solute as of: "HCl" to look it up',
    });
  }
  onlyInWater(options.solvent);
  return densityOfSolution(solute, isQuantity(w) ? w : assayOf(w, "mass fraction"), {
    temperature: options.temperature,
  });
}

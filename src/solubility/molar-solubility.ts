// What dissolves of a sparingly soluble salt, in water or beside a common ion. Ideal unless an ionic strength is given
// (Davies); hydrolysis and complexes are left out and the answer says so.
import { type Formula, molarMass, parseFormula } from "../formula";
import { attempt, type Result } from "../foundation/error";
import { apply, type ConcentrationText, expectDimension, type Quantity, type QuantityLike } from "../quantity";
import { needRecord, needRecords } from "./argument";
import { COMPLEXES } from "./data/complexes";
import { SolubilityError } from "./error";
import {
  activityExponent,
  concentrationAt,
  concentrationsFor,
  gain,
  type IonConcentration,
  type Released,
  sameIon,
  solveProduct,
} from "./ion-balance";
import { type DissolvedIon, findRow, ionsOf, solubilityProduct } from "./product";
import { sideReactions } from "./side-reactions";
import { soluteOf } from "./solute";

/** A ligand free in the solution. */
export interface FreeLigand {
  /** `"NH3"`, `"CN-"`, `"S2O3^2-"`. */
  readonly ligand: string;
  readonly concentration: QuantityLike<"concentration", ConcentrationText>;
}

/** What `molarSolubility` needs to know. */
export interface MolarSolubilityRequest {
  readonly solid: string | Formula;
  readonly form?: string;
  /** Your own constant instead of the table's: pKsp, or Ksp itself with `ksp`. */
  readonly ksp?: QuantityLike;
  /** Ions already in the solution. */
  readonly commonIons?: readonly IonConcentration[];
  /** Free ligands that hold the metal in solution, such as ammonia or hydroxide in excess; their own loss is neglected. */
  readonly freeLigands?: readonly FreeLigand[];
  /** Ionic strength for the Davies equation, up to 0.5 mol/L; without it, ideal. */
  readonly ionicStrength?: QuantityLike<"concentration", ConcentrationText>;
}

/** What dissolves of a sparingly soluble salt. */
export interface MolarSolubility {
  /** Formula units of the solid per litre. */
  readonly concentration: Quantity<"concentration">;
  /** Mass of the solid per litre. */
  readonly massConcentration: Quantity<"density">;
  /** Each ion in the saturated solution. */
  readonly ions: readonly { readonly formula: string; readonly concentration: Quantity<"concentration"> }[];
  readonly product: Quantity;
  /** Total over free metal, from the complexes; 1 without ligands. */
  readonly complexation: number;
  readonly model: "ideal" | "Davies";
  readonly warnings: readonly string[];
}

/** Total over free metal: 1 + sum of beta(n) [L]^n over the complexes of the table. */
function totalOverFree(ions: readonly DissolvedIon[], ligands: readonly FreeLigand[]): number {
  const metal = ions.find(({ charge }) => charge > 0);
  return ligands.reduce((all, { ligand, concentration }) => {
    parseFormula(ligand);
    const row = COMPLEXES.find(
      (candidate) =>
        metal !== undefined && sameIon(candidate.metal, metal.formula) && sameIon(candidate.ligand, ligand),
    );
    if (row === undefined) {
      throw new SolubilityError(
        "solubility.no-data",
        `no complexes of ${metal?.formula ?? "the metal"} with ${ligand}`,
        {
          hint: "leave the ligand out, or look the constants up",
          details: { metal: metal?.formula, ligand },
        },
      );
    }
    const free = expectDimension(concentration, "concentration", `concentration of ${ligand}`).in("mol/L").toNumber();
    if (free < 0)
      throw new SolubilityError("solubility.not-positive", `a concentration is not negative: ${free} mol/L`);
    return row.steps.reduce(
      (sum, { n, logBeta, protons }) => (protons === undefined ? sum + 10 ** Number(logBeta) * free ** n : sum),
      all,
    );
  }, 1);
}

const IDEAL =
  "no hydrolysis, complexes or ion pairs: for carbonates, phosphates, sulfides and hydroxides of weak bases a lower bound";

function kspOf(request: MolarSolubilityRequest) {
  const row = request.ksp === undefined ? solubilityProduct(request.solid, request.form) : undefined;
  if (row !== undefined) return { ions: row.ions, k: row.value, warnings: row.warnings };
  const known = findRow(request.solid, request.form);
  const k = expectDimension(request.ksp!, "number", "ksp").named({
    symbol: `Ksp(${known.solid})`,
    label: `solubility product of ${known.solid}, as given`,
  });
  if (!k.isPositive()) {
    throw new SolubilityError("solubility.not-positive", `a solubility product is more than zero, not ${k}`);
  }
  return { ions: ionsOf(known), k, warnings: [] };
}

/**
 * How much of a sparingly soluble salt dissolves, in water or beside a common ion.
 *
 * @param request - solid, ions already there, free ligands, ionic strength for the Davies equation (up to 0.5 mol/L),
 *   own constant
 * @returns formula units and mass per litre, and each ion; uncertainty from the constant and the concentrations
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.no-data` (also for a
 *   ligand without constants), `solubility.ionic-strength`,
 *   `solubility.not-positive`, `solubility.out-of-reach` when the solution is over-saturated already
 * @source definition of the solubility product; Davies, Ion Association (1962) for activity coefficients
 * @category Precipitation
 * @example
 * molarSolubility({ solid: "PbI2", ksp: "1.4e-8" }).concentration.format({ significant: 2 }) // => "0.0015 mol/L"
 */
export function molarSolubility(request: MolarSolubilityRequest): MolarSolubility {
  needRecord(request, "request");
  if (request.commonIons !== undefined) needRecords(request.commonIons, "commonIons");
  if (request.freeLigands !== undefined) needRecords(request.freeLigands, "freeLigands");
  const { ions, k, warnings } = kspOf(request);
  const present = concentrationsFor(ions, request.commonIons ?? []);
  const ionicStrength =
    request.ionicStrength === undefined
      ? undefined
      : expectDimension(request.ionicStrength, "concentration", "ionicStrength").in("mol/L").toNumber();
  const complexation = totalOverFree(ions, request.freeLigands ?? []);
  const metals = ions.find(({ charge }) => charge > 0)?.count ?? 0;
  const factor = activityExponent(ions, ionicStrength) + metals * Math.log10(complexation);
  const operands: Quantity[] = [k, ...present.filter((c) => c !== undefined)];
  /** The ions with their concentrations put in, from the operands. */
  const inOrder = (values: readonly { toNumber(): number }[]): Released[] => {
    let next = 1;
    return ions.map(({ count, formula }, i) => {
      const known = present[i] !== undefined;
      return { count, start: known ? values[next++]!.toNumber() : 0, inWater: !known && sameIon(formula, "OH-") };
    });
  };
  const solve = (values: readonly { toNumber(): number }[]): number =>
    solveProduct(inOrder(values), Math.log(values[0]!.toNumber()) + factor * Math.LN10);
  const concentration = apply(
    operands,
    {
      name: "solve for s",
      unit: "mol/L",
      value: (values) => {
        const s = solve(values);
        if (s <= 0) {
          throw new SolubilityError(
            "solubility.out-of-reach",
            "the solution is already over-saturated: nothing dissolves",
            {
              hint: "ask willPrecipitate instead",
            },
          );
        }
        return s.toPrecision(12);
      },
      partials: (values) => {
        const s = solve(values);
        const released = inOrder(values);
        const pull = released.map((ion) => (ion.count * gain(ion, s)) / concentrationAt(ion, s));
        const stiffness = pull.reduce((all, p, i) => all + p * released[i]!.count, 0);
        const partials = [1 / (stiffness * values[0]!.toNumber())];
        present.forEach((known, i) => {
          if (known !== undefined) partials.push(-pull[i]! / stiffness);
        });
        return partials.map((partial) => partial.toPrecision(12));
      },
    },
    {
      symbol: "s",
      label: `${String(request.solid)} that dissolves`,
      rule: "product of (ion present + ions set free)^count = Ksp / activity coefficients",
      assumption: IDEAL,
    },
  );
  const molar = molarMass(soluteOf(request.solid).formula);
  const given = (ion: DissolvedIon): number | undefined => {
    const own = present[ions.indexOf(ion)]?.value.toNumber();
    return own === undefined ? undefined : own + ion.count * concentration.value.toNumber();
  };
  const ideal = { ions, ksp: k.value.toNumber(), dissolved: concentration.value.toNumber(), given };
  // a caller who names ligands has complexes counted, and settled what the solution is
  const beside = (request.freeLigands ?? []).length > 0 ? [] : sideReactions(ideal);
  return {
    concentration,
    massConcentration: concentration
      .times(molar)
      .to("g/L")
      .named({ label: "mass that dissolves per litre", rule: "s × molar mass" }),
    ions: ions.map(({ formula, count }, i) => ({
      formula,
      concentration: ionAfter(concentration.times(String(count)), present[i], formula),
    })),
    product: k,
    complexation,
    model: ionicStrength === undefined ? "ideal" : "Davies",
    warnings: [...warnings, ...beside],
  };
}

/** What is in the saturated solution of one ion; hydroxide never falls below what water itself holds. */
function ionAfter(setFree: Quantity, present: Quantity | undefined, formula: string): Quantity {
  const words = { label: `${formula} in the saturated solution`, rule: "present + set free" };
  if (present !== undefined) return present.plus(setFree).named(words);
  if (!sameIon(formula, "OH-")) return setFree.named(words);
  const own = { count: 1, start: 0, inWater: true };
  return apply(
    [setFree],
    {
      name: "with the ions of water",
      unit: "mol/L",
      value: ([x]) => concentrationAt(own, x!.toNumber()).toPrecision(12),
      partials: ([x]) => [gain(own, x!.toNumber()).toPrecision(12)],
    },
    words,
  );
}

/**
 * As `molarSolubility`, but gives the refusal back as data.
 *
 * @category Precipitation
 * @example
 * tryMolarSolubility({ solid: "AgCl" }).ok // => true
 */
export function tryMolarSolubility(request: MolarSolubilityRequest): Result<MolarSolubility> {
  return attempt(() => molarSolubility(request));
}

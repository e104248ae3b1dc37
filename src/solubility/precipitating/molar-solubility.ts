// What dissolves of a sparingly soluble salt, in water, beside a common ion, or in a solution of ligands. Ideal unless an
// ionic strength is given (Davies); hydrolysis and complexes with what is not named are left out and the answer says so.

import { COMPLEXES, type ComplexStep } from "../../aqueous/internal";
import { type Formula, molarMass, parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { once } from "../../foundation/memo";
import { applyFunction, type ConcentrationText, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { soluteOf } from "../curves/solute";
import { SolubilityError } from "../error";
import { dissolvedAtEquilibrium, type SaturatedAtEquilibrium } from "./dissolved-at-equilibrium";
import { logBetaOf } from "./held-ph";
import type { MixedIon } from "./in-mixture";
import {
  activityExponent,
  concentrationAt,
  concentrationsFor,
  gain,
  ION,
  type IonConcentration,
  type Released,
  sameIon,
  solveProduct,
} from "./ion-balance";
import { type BoundSolution, solveBound } from "./ligand-balance";
import { checkOwn, ionsOfOwn } from "./own-product";
import { type DissolvedIon, solubilityProduct } from "./product";
import { sideReactions } from "./side-reactions";

const LIGAND = { ligand: true, concentration: true } as const satisfies Fields<FreeLigand>;

const MOLAR_SOLUBILITY = {
  solid: true,
  form: true,
  ksp: true,
  ions: true,
  commonIons: [ION],
  freeLigands: [LIGAND],
  ionicStrength: true,
} as const satisfies Fields<MolarSolubilityRequest>;

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
  /** Your own Ksp instead of the table's, below 1; for a solid that is not in the table as well. */
  readonly ksp?: QuantityLike;
  /** The ions your own Ksp is for, with their numbers: `["2 Ag+", "S^2-"]`. Needed for sulfides, printed in two ways. */
  readonly ions?: readonly string[];
  /** Ions already in the solution. */
  readonly commonIons?: readonly IonConcentration[];
  /**
   * Ligands that hold the metal in solution, such as ammonia or thiosulfate, free in the solution that the solid is put
   * into: what binds the metal is taken off. The solid's own anion may be one, and is then a common ion too.
   */
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
  /** Each free ion in the saturated solution; what complexes bind is not counted. */
  readonly ions: readonly { readonly formula: string; readonly concentration: Quantity<"concentration"> }[];
  readonly product: Quantity;
  /** Total over free metal, from the complexes; 1 without ligands. */
  readonly complexation: number;
  readonly model: "ideal" | "Davies";
  /**
   * The same question with protons, hydroxide, complexes, ion pairs and activities counted, where the figures beside it are
   * those of a calculation by hand. Undefined for your own Ksp, and where the solution is too strong or not all of it known.
   */
  readonly atEquilibrium: SaturatedAtEquilibrium | undefined;
  readonly warnings: readonly string[];
}

/** A ligand named, with its complexes with the metal of the solid. */
interface Ligand {
  readonly formula: string;
  readonly put: Quantity;
  readonly steps: readonly ComplexStep[];
}

function ligandsOf(ions: readonly DissolvedIon[], given: readonly FreeLigand[]): Ligand[] {
  const metal = ions.find(({ charge }) => charge > 0);
  return given.map(({ ligand, concentration }) => {
    parseFormula(ligand);
    const row = COMPLEXES().find(
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
    const put = expectDimension(concentration, "concentration", `concentration of ${ligand}`).to("mol/L");
    if (put.compare("0 mol/L") < 0)
      throw new SolubilityError("solubility.not-positive", `a concentration is not negative: ${put}`);
    return {
      formula: ligand,
      put: put.symbol === undefined ? put.named({ symbol: `c(${ligand})`, label: `${ligand} put in` }) : put,
      steps: row.steps.filter(({ protons }) => protons === undefined),
    };
  });
}

/** A common ion that is named as ligand as well is one and the same solution of it. */
function presentWith(
  ions: readonly DissolvedIon[],
  common: readonly (Quantity | undefined)[],
  ligands: readonly Ligand[],
): (Quantity | undefined)[] {
  return ions.map(({ formula }, i) => {
    const own = ligands.find((ligand) => sameIon(ligand.formula, formula));
    const named = common[i];
    if (own === undefined || named === undefined) return own?.put ?? named;
    if (own.put.compare(named) === 0) return named;
    throw new SolubilityError(
      "solubility.conflicting-options",
      `${formula} is ${named} among commonIons and ${own.put} among freeLigands`,
      { hint: "name it once, with all there is of it", details: { ion: formula } },
    );
  });
}

const IDEAL =
  "no hydrolysis, complexes or ion pairs: for carbonates, phosphates, sulfides and hydroxides of weak bases a lower bound";

const BALANCED = "no protons, and no complexes but those with the ligands named";

function kspOf(request: MolarSolubilityRequest) {
  if (request.ksp === undefined) {
    if (request.ions !== undefined) {
      throw new SolubilityError("solubility.bad-option", "ions are named for your own Ksp only", {
        hint: "give ksp with them, or leave them out",
      });
    }
    const row = solubilityProduct(request.solid, request.form);
    return { ions: row.ions, k: row.value, warnings: row.warnings };
  }
  const { formula } = soluteOf(request.solid);
  const k = checkOwn(
    expectDimension(request.ksp, "number", "ksp").named({
      symbol: `Ksp(${formula})`,
      label: `solubility product of ${formula}, as given`,
    }),
  );
  return { ions: ionsOfOwn(formula, request.form, request.ions), k, warnings: [] };
}

/**
 * How much of a sparingly soluble salt dissolves, in water or beside a common ion.
 *
 * @param request - solid, ions already there, free ligands, ionic strength for the Davies equation (up to 0.5 mol/L),
 *   own constant
 *   (Ksp, with the ions it is for where the table has no or two dissolutions)
 * @returns formula units and mass per litre, and each ion, by hand: Ksp and what is named; uncertainty from the constant and
 *   the concentrations; `atEquilibrium` has what dissolves with everything counted
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.no-data` (also for a
 *   ligand without constants), `solubility.ionic-strength`,
 *   `solubility.not-positive`, `solubility.conflicting-options`, `solubility.out-of-reach` when the solution is over-saturated already
 * @source definition of the solubility product; Davies, Ion Association (1962) for activity coefficients
 * @category Precipitation
 * @example
 * molarSolubility({ solid: "PbI2", ksp: "1.4e-8" }).concentration.format({ significant: 2 }) // => "0.0015 mol/L"
 * const chalk = molarSolubility({ solid: "CaCO3" });
 * chalk.concentration.format({ significant: 2, uncertainty: "none" }) // => "0.000058 mol/L"
 * chalk.atEquilibrium?.concentration.format({ significant: 2, uncertainty: "none" }) // => "0.00012 mol/L"
 */
export function molarSolubility(request: MolarSolubilityRequest): MolarSolubility {
  const byHand = solubilityByHand(request);
  const settled = once(() => (request.ksp === undefined ? everythingCounted(request, byHand) : undefined));
  return {
    ...byHand,
    get atEquilibrium() {
      return settled();
    },
  };
}

/** The saturated solution by the whole balance, beside what the caller named. */
function everythingCounted(
  request: MolarSolubilityRequest,
  { concentration }: { readonly concentration: Quantity },
): SaturatedAtEquilibrium | undefined {
  const named = [
    ...(request.commonIons ?? []).map(({ ion, concentration: c }) => [ion, c] as const),
    ...(request.freeLigands ?? []).map(({ ligand, concentration: c }) => [ligand, c] as const),
  ];
  const present: MixedIon[] = [];
  for (const [formula, like] of named) {
    if (present.some((one) => sameIon(one.formula, formula))) continue;
    const amount = expectDimension(like, "concentration", `concentration of ${formula}`)
      .times(quantity("1 L"))
      .to("mol");
    if (amount.isPositive()) present.push({ formula, amount });
  }
  const product = solubilityProduct(request.solid, request.form);
  return dissolvedAtEquilibrium(product, present, concentration.in("mol/L").toNumber());
}

/** @internal Ksp and what is named, nothing else. */
export function solubilityByHand(request: MolarSolubilityRequest): Omit<MolarSolubility, "atEquilibrium"> {
  guard.fields(request, MOLAR_SOLUBILITY, "request");
  const { ions, k, warnings } = kspOf(request);
  const ligands = ligandsOf(ions, request.freeLigands ?? []).filter(({ put }) => put.isPositive());
  const present = presentWith(ions, concentrationsFor(ions, request.commonIons ?? []), ligands);
  const ionicStrength =
    request.ionicStrength === undefined
      ? undefined
      : expectDimension(request.ionicStrength, "concentration", "ionicStrength").in("mol/L").toNumber();
  const exponent = activityExponent(ions, ionicStrength);
  const solution = { ions, k, present, exponent, label: `${String(request.solid)} that dissolves` };
  const { concentration, freeIons, complexation } = ligands.length > 0 ? beside(solution, ligands) : alone(solution);
  const molar = molarMass(soluteOf(request.solid).formula);
  const given = (ion: DissolvedIon): number | undefined => {
    const own = present[ions.indexOf(ion)]?.value.toNumber();
    return own === undefined ? undefined : own + ion.count * concentration.value.toNumber();
  };
  const ideal = { ions, ksp: k.value.toNumber(), dissolved: concentration.value.toNumber(), given };
  // a caller who names ligands has complexes counted, and settled what the solution is
  const remarks = ligands.length > 0 ? [] : sideReactions(ideal);
  return {
    concentration,
    massConcentration: concentration
      .times(molar)
      .to("g/L")
      .named({ label: "mass that dissolves per litre", rule: "s × molar mass" }),
    ions: ions.map(({ formula }, i) => ({ formula, concentration: freeIons[i]! })),
    product: k,
    complexation,
    model: ionicStrength === undefined ? "ideal" : "Davies",
    warnings: [...warnings, ...remarks],
  };
}

/** A solid in a solution of which all is named. */
interface Dissolving {
  readonly ions: readonly DissolvedIon[];
  readonly k: Quantity;
  /** What was there of each ion; undefined where none was named. */
  readonly present: readonly (Quantity | undefined)[];
  /** Power of ten on Ksp by activity coefficients. */
  readonly exponent: number;
  readonly label: string;
}

/** What dissolves, what stays free of each ion, and total over free metal. */
interface Dissolved {
  readonly concentration: Quantity;
  readonly freeIons: readonly Quantity[];
  readonly complexation: number;
}

type Plain = { toNumber(): number };

function needDissolving(s: number): number {
  if (s > 0) return s;
  throw new SolubilityError("solubility.out-of-reach", "the solution is already over-saturated: nothing dissolves", {
    hint: "ask willPrecipitate instead",
  });
}

/** Without ligands: one unknown. */
function alone({ ions, k, present, exponent, label }: Dissolving): Dissolved {
  /** The ions with their concentrations put in, from the operands. */
  const inOrder = (values: readonly Plain[]): Released[] => {
    let next = 1;
    return ions.map(({ count, formula }, i) => {
      const known = present[i] !== undefined;
      return { count, start: known ? values[next++]!.toNumber() : 0, inWater: !known && sameIon(formula, "OH-") };
    });
  };
  const solve = (values: readonly Plain[]): number =>
    solveProduct(inOrder(values), Math.log(values[0]!.toNumber()) + exponent * Math.LN10);
  const concentration = applyFunction(
    [k, ...present.filter((c) => c !== undefined)],
    {
      name: "solve for s",
      unit: "mol/L",
      value: (values) => needDissolving(solve(values)).toPrecision(12),
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
      label,
      rule: "product of (ion present + ions set free)^count = Ksp / activity coefficients",
      assumption: IDEAL,
    },
  );
  const freeIons = ions.map(({ formula, count }, i) =>
    ionAfter(concentration.times(String(count)), present[i], formula),
  );
  return { concentration, freeIons, complexation: 1 };
}

/** With ligands: all balances at once. */
function beside({ ions, k, present, exponent, label }: Dissolving, ligands: readonly Ligand[]): Dissolved {
  // the metal first, as the balance wants it
  const metal = ions.findIndex(({ charge }) => charge > 0);
  const order = [metal, ...ions.map((_, i) => i).filter((i) => i !== metal)];
  const strangers = ligands.filter(({ formula }) => !ions.some((ion) => sameIon(ion.formula, formula)));
  const nothing = quantity("0 mol/L");
  const put = [...order.map((i) => present[i] ?? nothing), ...strangers.map((ligand) => ligand.put)];
  const place = (formula: string): number => {
    const own = order.findIndex((i) => sameIon(ions[i]!.formula, formula));
    return own >= 0 ? own : order.length + strangers.findIndex((ligand) => ligand.formula === formula);
  };
  const bound = ligands.flatMap(({ formula, steps }) =>
    steps.map((step) => ({ component: place(formula), n: step.n, logBeta: logBetaOf(step) })),
  );
  const solve = (values: readonly Plain[]): BoundSolution => {
    const [ksp, ...rest] = values.map((v) => v.toNumber()) as [number, ...number[]];
    const components = put.map((_, i) => ({
      perUnit: ions[order[i] ?? -1]?.count ?? 0,
      start: rest[i]!,
      isHydroxide: sameIon(ions[order[i] ?? -1]?.formula ?? strangers[i - order.length]!.formula, "OH-"),
    }));
    const forms = bound.map(({ component, n }, i) => ({ component, n, lnBeta: rest[put.length + i]! * Math.LN10 }));
    const found = solveBound(components, forms, Math.log(ksp) + exponent * Math.LN10);
    if (found !== undefined) return found;
    throw new SolubilityError("solubility.out-of-reach", "the balance of the ligands could not be solved");
  };
  const operands = [k, ...put, ...bound.map(({ logBeta }) => logBeta)];
  const concentration = applyFunction(
    operands,
    {
      name: "solve for s",
      unit: "mol/L",
      value: (values) => needDissolving(solve(values).dissolved).toPrecision(12),
      partials: (values) => {
        const { slopes } = solve(values);
        const lnBeta = slopes.lnBeta.map((slope) => slope * Math.LN10);
        return [slopes.lnK / values[0]!.toNumber(), ...slopes.start, ...lnBeta].map((p) => p.toPrecision(12));
      },
    },
    {
      symbol: "s",
      label,
      rule: "Ksp and the balance of each ion and ligand, complexes counted",
      assumption: BALANCED,
    },
  );
  const { free, dissolved } = solve(operands.map(({ value }) => value));
  const freeIons = ions.map(({ formula }, i) =>
    quantity(
      { value: free[order.indexOf(i)]!.toPrecision(12), unit: "mol/L" },
      { label: `free ${formula} in the saturated solution`, rule: "Ksp and the balance of each ion and ligand" },
    ),
  );
  const start = present[metal]?.value.toNumber() ?? 0;
  return { concentration, freeIons, complexation: (start + ions[metal]!.count * dissolved) / free[0]! };
}

/** What is in the saturated solution of one ion; hydroxide never falls below what water itself holds. */
function ionAfter(setFree: Quantity, present: Quantity | undefined, formula: string): Quantity {
  const words = { label: `${formula} in the saturated solution`, rule: "present + set free" };
  if (present !== undefined) return present.plus(setFree).named(words);
  if (!sameIon(formula, "OH-")) return setFree.named(words);
  const own = { count: 1, start: 0, inWater: true };
  return applyFunction(
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

// What dissolves of a sparingly soluble salt, in water, beside a common ion, or in a solution of ligands. A face of the engine
// of the aqueous layer: asked with all that is known, and as a textbook calculates, with the constants named alone.

import { COMPLEXES } from "../../aqueous/internal";
import { type Formula, parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { lazily } from "../../foundation/lazy";
import { once } from "../../foundation/memo";
import { applyFunction, type ConcentrationText, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { soluteOf } from "../curves/solute";
import { SolubilityError } from "../error";
import { byHandWay } from "./by-hand";
import { type Constant, type DissolvedAmount, isOf, leading, saturated } from "./dissolved-amount";
import {
  activityExponent,
  concentrationOf,
  concentrationsFor,
  ION,
  type IonConcentration,
  sameIon,
} from "./given-ions";
import { checkOwn, ionsOfOwn } from "./own-product";
import { type DissolvedIon, solubilityProduct } from "./product";
import { type EquilibriumBasis, firstAnswer, inert, type MixedIon, SAID_OF } from "./way";

const LIGAND = { ligand: true, concentration: true } as const satisfies Fields<FreeLigand>;

const MOLAR_SOLUBILITY = {
  solid: true,
  form: true,
  ksp: true,
  ions: true,
  commonIons: [ION],
  freeLigands: [LIGAND],
  ionicStrength: true,
  facts: true,
} as const satisfies Fields<MolarSolubilityRequest>;

/** A ligand free in the solution. */
export interface FreeLigand {
  /** `"NH3"`, `"CN-"`, `"S2O3^2-"`. */
  readonly ligand: string;
  /** Of the ligand that nothing binds. */
  readonly concentration: QuantityLike<"concentration", ConcentrationText>;
}

/** What `molarSolubility` needs to know. */
export interface MolarSolubilityRequest extends LookupOptions {
  /** Formula of the sparingly soluble salt. */
  readonly solid: string | Formula;
  /** Mineral name, age or polymorph, where the table has several. */
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
  /** Ionic strength of the solution by other salts, up to 0.5 mol/L; by hand without it ideal, with it after Davies. */
  readonly ionicStrength?: QuantityLike<"concentration", ConcentrationText>;
}

/** What dissolves, counted and by hand. */
export interface MolarSolubility extends DissolvedAmount {
  /**
   * What the figures are: `"equilibrium"` with protons, hydroxide, complexes, ion pairs and activities counted; `"ideal"` without
   * activities, where the solution is too strong for their model; `"hand calculation"` for your own Ksp, and where nothing is
   * known of an ion.
   */
  readonly basis: EquilibriumBasis;
  /** Ksp used: the table's, or your own. */
  readonly product: Quantity<"number">;
  /**
   * As a textbook calculates: Ksp and what is named, nothing else, ideal unless `ionicStrength` is given. Undefined where by
   * hand the solution is over-saturated already.
   */
  readonly byHand: DissolvedAmount | undefined;
}

/** -log10 of a constant. */
const minusLog = (k: Quantity): Quantity =>
  applyFunction(
    [k],
    {
      name: "-log10",
      unit: "",
      value: ([v]) => (-Math.log10(v!.toNumber())).toPrecision(15),
      partials: ([v]) => [(-1 / (Math.LN10 * v!.toNumber())).toPrecision(12)],
    },
    { symbol: "pKsp", label: "pKsp as given", rule: "−log10 Ksp" },
  );

/** A ligand that is put in. */
interface Ligand {
  readonly formula: string;
  readonly put: Quantity;
}

function ligandsOf(ions: readonly DissolvedIon[], given: readonly FreeLigand[]): Ligand[] {
  const metal = leading(ions).formula;
  return given.map(({ ligand, concentration }) => {
    parseFormula(ligand);
    const known = COMPLEXES().some((row) => sameIon(row.metal, metal) && sameIon(row.ligand, ligand));
    if (!known) {
      throw new SolubilityError("solubility.no-data", `no complexes of ${metal} with ${ligand}`, {
        hint: "leave the ligand out, or look the constants up",
        details: { metal, ligand },
      });
    }
    const put = concentrationOf({ ion: ligand, concentration });
    return {
      formula: ligand,
      put: put.symbol === undefined ? put.named({ symbol: `c(${ligand})`, label: `${ligand} put in` }) : put,
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

function kspOf(request: MolarSolubilityRequest): Constant {
  if (request.ksp === undefined) {
    if (request.ions !== undefined) {
      throw new SolubilityError("solubility.bad-option", "ions are named for your own Ksp only", {
        hint: "give ksp with them, or leave them out",
      });
    }
    const row = solubilityProduct(request.solid, request.form);
    return { solid: row.solid, form: row.form, ions: row.ions, k: row.value, pKsp: row.pKsp, warnings: row.warnings };
  }
  const { formula } = soluteOf(request.solid);
  const k = checkOwn(
    expectDimension(request.ksp, "number", "ksp").named({
      symbol: `Ksp(${formula})`,
      label: `solubility product of ${formula}, as given`,
    }),
  );
  return {
    solid: formula.toString(),
    form: undefined,
    ions: ionsOfOwn(formula, request.form, request.ions),
    k,
    pKsp: minusLog(k),
    warnings: [],
  };
}

/**
 * How much of a sparingly soluble salt dissolves, in water or beside a common ion.
 *
 * @param request - solid, ions already there, free ligands, ionic strength by other salts (up to 0.5 mol/L),
 *   own constant
 *   (Ksp, with the ions it is for where the table has no or two dissolutions)
 * @returns formula units and mass per litre, and each ion, with protons, hydroxide, complexes and activities counted; `byHand`
 *   has the figures of a textbook calculation, which are the answer for your own Ksp
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.no-data` (also for a
 *   ligand without constants), `solubility.ionic-strength`,
 *   `solubility.not-positive`, `solubility.conflicting-options`, `solubility.out-of-reach` when the solution is over-saturated already
 * @source the equilibrium of the aqueous layer; by hand, the definition of the solubility product
 * @category Precipitation
 * @example
 * molarSolubility({ solid: "PbI2", ksp: "1.4e-8" }).concentration.format({ significant: 2 }) // => "0.0015 mol/L"
 * const chalk = molarSolubility({ solid: "CaCO3" });
 * chalk.concentration.format({ significant: 2, uncertainty: "none" }) // => "0.00012 mol/L"
 * chalk.byHand?.concentration.format({ significant: 2, uncertainty: "none" }) // => "0.000058 mol/L"
 */
export function molarSolubility(request: MolarSolubilityRequest): MolarSolubility {
  if (bringsFacts(request)) return withItsFacts(request, guard, molarSolubility);
  guard.fields(request, MOLAR_SOLUBILITY, "request");
  const constant = kspOf(request);
  const { ions } = constant;
  const ligands = ligandsOf(ions, request.freeLigands ?? []);
  const common = presentWith(ions, concentrationsFor(ions, request.commonIons ?? []), ligands);
  const ionicStrength =
    request.ionicStrength === undefined
      ? undefined
      : expectDimension(request.ionicStrength, "concentration", "ionicStrength").toNumber("mol/L");
  const exponent = activityExponent(ions, ionicStrength);
  const own: MixedIon[] = ions.flatMap(({ formula }, i) =>
    common[i] === undefined ? [] : [inLitre(formula, common[i])],
  );
  const bound = ligands.filter(({ formula }) => !isOf(own, formula)).map(({ formula, put }) => inLitre(formula, put));
  const besides = (request.commonIons ?? [])
    .filter(({ ion }) => !isOf([...own, ...bound], ion))
    .map((one) => inLitre(one.ion, concentrationOf(one)));
  const way = byHandWay(constant, { exponent, ligands: ligands.map(({ formula }) => formula) });
  const hand = once(() => saturated(way, constant, present([...own, ...bound]), exponent));
  if (request.ksp !== undefined) {
    const figures = hand();
    if (figures === undefined) throw overSaturated();
    return { ...figures, basis: "hand calculation", product: constant.k, byHand: figures };
  }
  const all = [...present([...own, ...bound, ...besides]), ...inert(ionicStrength ?? 0)];
  const { basis, found } = firstAnswer<DissolvedAmount | undefined>(
    (which) => saturated(which, constant, all, 0),
    hand,
  );
  if (found === undefined) throw overSaturated();
  return lazily<MolarSolubility>({
    concentration: () => found.concentration,
    massConcentration: () => found.massConcentration,
    ions: () => found.ions,
    complexation: () => found.complexation,
    pH: () => found.pH,
    ionicStrength: () => found.ionicStrength,
    basis: () => basis,
    product: () => constant.k,
    byHand: hand,
    warnings: () => [...SAID_OF[basis], ...found.warnings, ...farFrom(found, hand())],
  });
}

/** A figure by hand that is far off is spoken of. */
function farFrom({ concentration }: DissolvedAmount, hand: DissolvedAmount | undefined): string[] {
  if (hand === undefined) return [];
  const times = concentration.dividedBy(hand.concentration).toNumber("");
  if (times < NOTABLE && times > 1 / NOTABLE) return [];
  return [
    `a calculation by hand, without side reactions and activities, says ${hand.concentration.format({ significant: 2, uncertainty: "none" })}`,
  ];
}

/** Figures that differ by less are not spoken of. */
const NOTABLE = 1.1;

/** Those of which there is something. */
const present = (list: readonly MixedIon[]): MixedIon[] => list.filter(({ amount }) => amount.isPositive());

const inLitre = (formula: string, concentration: Quantity): MixedIon => ({
  formula,
  amount: concentration.times(quantity("1 L")).to("mol"),
});

const overSaturated = (): SolubilityError =>
  new SolubilityError("solubility.out-of-reach", "the solution is already over-saturated: nothing dissolves", {
    hint: "ask willPrecipitate instead",
  });

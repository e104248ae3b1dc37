// Solubility products at work: the constant as a quantity, what dissolves of a sparingly soluble salt with and without a
// common ion, and whether one solid can be turned into another. Ideal unless an ionic strength is given (Davies).

import { type Formula, molarMass, parseFormula } from "../formula";
import { cite, type SourceKey } from "../foundation/bibliography";
import { attempt, type Result } from "../foundation/error";
import {
  apply,
  type ConcentrationText,
  expectDimension,
  type Quantity,
  type QuantityLike,
  quantity,
} from "../quantity";
import { SOLUBILITY_PRODUCTS, type SolubilityProductRow } from "./data/products";
import { daviesExponent } from "./davies";
import { SolubilityError } from "./error";
import { soluteOf } from "./solute";

/** An ion that a solid sets free, and how many. */
export interface DissolvedIon {
  readonly formula: string;
  readonly charge: number;
  readonly count: number;
}

/** Solubility product of one solid at 25 °C and zero ionic strength. */
export interface SolubilityProduct {
  readonly solid: string;
  readonly name: string;
  /** Mineral name, age or polymorph. */
  readonly form: string | undefined;
  /** The dissolution the constant is for. */
  readonly dissolution: string;
  readonly ions: readonly DissolvedIon[];
  /** Negative decimal logarithm; its uncertainty is half the spread of the sources. */
  readonly pKsp: Quantity;
  /** The constant, concentrations in mol/L. */
  readonly value: Quantity;
  readonly source: SourceKey;
  readonly warnings: readonly string[];
}

/** Standard uncertainty of a pKsp when only one source is at hand. */
const LONE_SPREAD = 0.1;

const ION = /^(?:(\d+(?:\.\d+)?) )?(\S+)$/;

/** The ions of a dissolution, water left out. */
function ionsOf(row: SolubilityProductRow): DissolvedIon[] {
  const products = row.dissolution.slice(row.dissolution.indexOf(" = ") + 3);
  return products.split(" + ").flatMap((term) => {
    const [, count = "1", formula = term] = ION.exec(term) ?? [];
    return formula === "H2O" ? [] : [{ formula, charge: parseFormula(formula).charge, count: Number(count) }];
  });
}

let rows: Map<string, SolubilityProductRow[]> | undefined;

/** Exact notation first (hydrates differ), then composition without crystal water. */
function rowsOf(solid: string | Formula): readonly SolubilityProductRow[] {
  if (rows === undefined) {
    rows = new Map();
    for (const row of SOLUBILITY_PRODUCTS) {
      const solute = soluteOf(row.solid);
      for (const key of [solute.formula.toHill(), solute.key]) rows.set(key, [...(rows.get(key) ?? []), row]);
    }
  }
  const solute = soluteOf(solid);
  return rows.get(solute.formula.toHill()) ?? rows.get(solute.key) ?? [];
}

function findRow(solid: string | Formula, form: string | undefined): SolubilityProductRow {
  const found = rowsOf(solid).filter(({ convention }) => convention !== "free-sulfide");
  const row = form === undefined ? found[0] : found.find((candidate) => candidate.form?.includes(form) === true);
  if (row !== undefined) return row;
  const text = String(solid);
  throw new SolubilityError(
    "solubility.no-data",
    form === undefined || found.length === 0 ? `no solubility product of ${text}` : `no form '${form}' of ${text}`,
    {
      input: text,
      position: 0,
      hint: found.length === 0 ? "pass your own pKsp" : `forms: ${found.map((f) => f.form ?? "(unnamed)").join("; ")}`,
      details: { solid: text, form },
    },
  );
}

/** Constants already handed out, so that one constant used twice is one input of a budget. */
const given = /* @__PURE__ */ new WeakMap<SolubilityProductRow, SolubilityProduct>();

/** 10 to the power of minus a number. */
function powerOfTen(pK: Quantity, symbol: string, label: string): Quantity {
  const read = (value: number): string => (10 ** -value).toPrecision(12);
  return apply(
    [pK],
    {
      name: "10^-",
      unit: "",
      value: ([p]) => read(p!.toNumber()),
      partials: ([p]) => [(-Math.LN10 * 10 ** -p!.toNumber()).toPrecision(12)],
    },
    { symbol, label, rule: "Ksp = 10^(−pKsp)" },
  );
}

function productOf(row: SolubilityProductRow): SolubilityProduct {
  const before = given.get(row);
  if (before !== undefined) return before;
  const [low, high] = row.range ?? [row.pKsp, row.pKsp];
  const spread = Math.max(LONE_SPREAD, (Number(high) - Number(low)) / 2 / Math.sqrt(3));
  const pKsp = quantity(
    { value: row.pKsp, unit: "", standardUncertainty: spread.toPrecision(2) },
    {
      symbol: `pKsp(${row.solid})`,
      label: `pKsp of ${row.name}${row.form === undefined ? "" : ` (${row.form})`}, 25 °C`,
      source: cite(row.source),
    },
  );
  const warnings: string[] = [];
  if (row.doubtful === true)
    warnings.push("a doubtful constant: sources differ by powers of ten, or it rests on memory");
  if (row.soluble === true) warnings.push("a soluble salt: use its measured solubility instead");
  if (row.note !== undefined) warnings.push(row.note);
  const made: SolubilityProduct = {
    solid: row.solid,
    name: row.name,
    form: row.form,
    dissolution: row.dissolution,
    ions: ionsOf(row),
    pKsp,
    value: powerOfTen(pKsp, `Ksp(${row.solid})`, `solubility product of ${row.name}`),
    source: row.source,
    warnings,
  };
  given.set(row, made);
  return made;
}

/**
 * Solubility product of a solid at 25 °C and zero ionic strength.
 *
 * @param solid - formula; the hydrate counts (`CaSO4` and `CaSO4·2H2O` differ), and an unknown hydrate falls back on
 *   the salt
 * @param form - part of the form's name, such as `"fresh"` or `"calcite"`; default the first listed
 * @returns constant with its ions; uncertainty from the spread of the sources
 * @throws {SolubilityError} `solubility.no-data`, `solubility.not-a-salt`
 * @source each row of the table names its own
 * @category Precipitation
 * @example
 * solubilityProduct("BaSO4").pKsp.value.toString() // => "9.98"
 * solubilityProduct("Mg(OH)2", "fresh").ions.map((ion) => ion.formula) // => ["Mg+2", "OH-"]
 */
export function solubilityProduct(solid: string | Formula, form?: string): SolubilityProduct {
  return productOf(findRow(solid, form));
}

/**
 * As `solubilityProduct`, but gives the refusal back as data.
 *
 * @category Precipitation
 * @example
 * trySolubilityProduct("NaNO3").ok // => false
 */
export function trySolubilityProduct(solid: string | Formula, form?: string): Result<SolubilityProduct> {
  return attempt(() => solubilityProduct(solid, form));
}

/** An ion at a concentration. */
export interface IonConcentration {
  /** Formula with charge: `SO4^2-`, `Cu+2`. */
  readonly ion: string;
  readonly concentration: QuantityLike<"concentration", ConcentrationText>;
}

/** @internal Ions compare by composition and charge, however written. */
export function sameIon(a: string, b: string): boolean {
  return a === b || parseFormula(a).hasSameComposition(parseFormula(b));
}

/** @internal Concentration of each ion of a solid among those given; 0 where it is not named. */
export function concentrationsFor(
  ions: readonly DissolvedIon[],
  present: readonly IonConcentration[],
): (Quantity | undefined)[] {
  return ions.map(({ formula }) => {
    const found = present.find(({ ion }) => sameIon(ion, formula));
    if (found === undefined) return undefined;
    const c = expectDimension(found.concentration, "concentration", `concentration of ${found.ion}`).to("mol/L");
    return c.symbol === undefined ? c.named({ symbol: `c(${formula})`, label: `${formula} in the solution` }) : c;
  });
}

/** @internal Factor on Ksp, as power of ten, from activity coefficients. */
export function activityExponent(ions: readonly DissolvedIon[], ionicStrength: number | undefined): number {
  if (ionicStrength === undefined) return 0;
  const one = daviesExponent(ionicStrength);
  return ions.reduce((all, { charge, count }) => all + count * charge * charge * one, 0);
}

/** @internal Ionic product of water at 25 °C as the tables of this room have it. */
export const KW = 1.0e-14;

/** @internal One ion of a dissolution: how many, and its concentration when x formula units per litre have dissolved. */
export interface Released {
  readonly count: number;
  /** Present before, mol/L. */
  readonly start: number;
  /** Hydroxide in otherwise pure water: its own ions and those of the water must balance. */
  readonly inWater: boolean;
}

/** @internal */
export function concentrationAt({ count, start, inWater }: Released, x: number): number {
  const set = start + count * x;
  return inWater ? (set + Math.sqrt(set * set + 4 * KW)) / 2 : set;
}

/** d(concentration)/d(start); times count it is d/dx. */
function gain({ count, start, inWater }: Released, x: number): number {
  const set = start + count * x;
  return inWater ? (1 + set / Math.sqrt(set * set + 4 * KW)) / 2 : 1;
}

/** @internal Solve sum of count × ln(concentration at x) = ln K for x; negative x is precipitation. */
export function solveProduct(ions: readonly Released[], lnK: number): number {
  const f = (x: number): number => ions.reduce((all, ion) => all + ion.count * Math.log(concentrationAt(ion, x)), -lnK);
  // Below this some ion runs out and the function falls to minus infinity; above, it rises without bound.
  const floor = Math.max(...ions.filter((ion) => !ion.inWater).map(({ count, start }) => -start / count));
  let high = Math.max(1, 2 * Math.abs(floor));
  while (f(floor + high) < 0) high *= 2;
  // Narrowed on a logarithmic scale above the floor: solubilities span thirty powers of ten.
  let [a, b] = [Math.log(1e-300), Math.log(high)];
  for (let i = 0; i < 200 && b - a > 1e-15 * Math.abs(b); i += 1) {
    const middle = (a + b) / 2;
    if (f(floor + Math.exp(middle)) < 0) a = middle;
    else b = middle;
  }
  return floor + Math.exp((a + b) / 2);
}

/** What `molarSolubility` needs to know. */
export interface MolarSolubilityRequest {
  readonly solid: string | Formula;
  readonly form?: string;
  /** Your own constant instead of the table's: pKsp, or Ksp itself with `ksp`. */
  readonly ksp?: QuantityLike;
  /** Ions already in the solution. */
  readonly commonIons?: readonly IonConcentration[];
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
  readonly model: "ideal" | "Davies";
  readonly warnings: readonly string[];
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
 * @param request - solid, ions already there, ionic strength for the Davies equation (up to 0.5 mol/L), own constant
 * @returns formula units and mass per litre, and each ion; uncertainty from the constant and the concentrations
 * @throws {SolubilityError} `solubility.no-data`, `solubility.ionic-strength`, `solubility.not-positive`
 * @source definition of the solubility product; Davies, Ion Association (1962) for activity coefficients
 * @category Precipitation
 * @example
 * molarSolubility({ solid: "PbI2", ksp: "1.4e-8" }).concentration.format({ significant: 2 }) // => "0.0015 mol/L"
 */
export function molarSolubility(request: MolarSolubilityRequest): MolarSolubility {
  const { ions, k, warnings } = kspOf(request);
  const present = concentrationsFor(ions, request.commonIons ?? []);
  const ionicStrength =
    request.ionicStrength === undefined
      ? undefined
      : expectDimension(request.ionicStrength, "concentration", "ionicStrength").in("mol/L").toNumber();
  const factor = activityExponent(ions, ionicStrength);
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
    model: ionicStrength === undefined ? "ideal" : "Davies",
    warnings,
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

/** Whether boiling one solid with a solution turns it into another. */
export interface SolidConversion {
  /** Ion set free over ion taken up at equilibrium: above this ratio in solution the conversion stops. */
  readonly equilibriumRatio: Quantity;
  /** "goes" over 100, "goes with excess" from 1 to 100, "hardly" below 1. */
  readonly verdict: "goes" | "goes with excess" | "hardly";
  readonly ionTaken: string;
  readonly ionFreed: string;
  readonly warnings: readonly string[];
}

/**
 * Can one sparingly soluble salt be turned into another of the same cation, as strontium sulfate into carbonate?
 *
 * @param request - the solid put in and the solid wanted, both with their solubility products known
 * @returns equilibrium ratio of the ions in solution, and what it means at the bench
 * @throws {SolubilityError} `solubility.no-data`, `solubility.other-solute` when they share no cation or differ in type
 * @source ratio of solubility products
 * @category Precipitation
 * @example
 * solidConversion({ from: "SrSO4", to: "SrCO3" }).verdict // => "goes"
 * solidConversion({ from: "BaSO4", to: "BaCO3" }).verdict // => "hardly"
 */
export function solidConversion(request: {
  readonly from: string | Formula;
  readonly to: string | Formula;
}): SolidConversion {
  const [from, to] = [solubilityProduct(request.from), solubilityProduct(request.to)];
  const shared = from.ions.find((ion) =>
    to.ions.some((other) => sameIon(ion.formula, other.formula) && ion.count === other.count),
  );
  const freed = from.ions.find((ion) => ion !== shared);
  const taken = to.ions.find((ion) => shared !== undefined && !sameIon(ion.formula, shared.formula));
  if (shared === undefined || freed === undefined || taken === undefined || freed.count !== taken.count) {
    throw new SolubilityError(
      "solubility.other-solute",
      `${from.solid} and ${to.solid} are not two salts of one cation and one type`,
      {
        details: { from: from.solid, to: to.solid },
      },
    );
  }
  const equilibriumRatio = from.value.dividedBy(to.value).named({
    symbol: "K",
    label: `${freed.formula} over ${taken.formula} at equilibrium`,
    rule: "K = Ksp(from) / Ksp(to)",
  });
  const verdict =
    equilibriumRatio.compare("100") > 0 ? "goes" : equilibriumRatio.compare("1") > 0 ? "goes with excess" : "hardly";
  return {
    equilibriumRatio,
    verdict,
    ionTaken: taken.formula,
    ionFreed: freed.formula,
    warnings: [...from.warnings, ...to.warnings],
  };
}

/**
 * As `solidConversion`, but gives the refusal back as data.
 *
 * @category Precipitation
 * @example
 * trySolidConversion({ from: "SrSO4", to: "BaCO3" }).ok // => false
 */
export function trySolidConversion(request: Parameters<typeof solidConversion>[0]): Result<SolidConversion> {
  return attempt(() => solidConversion(request));
}

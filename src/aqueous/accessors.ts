// The tables of constants, one question each.

import { Formula, parseFormula } from "../formula";
import { readable } from "../foundation/readable";
import { ACID_STEPS } from "../ion/internal";
import type { Quantity } from "../quantity";
import { guard } from "./argument";
import { COMPLEXES } from "./data/complexes";
import type { SourceKey } from "./data/sources";
import { AqueousError } from "./error";
import { network } from "./mixture/given";
import { chargeOf, keyOf } from "./mixture/notation";

/** One proton step of an acid. */
export interface AcidConstant {
  /** Formula of the acid, with its charge if it has one. */
  readonly acid: string;
  /** Formula of what is left after one hydron is given up. */
  readonly base: string;
  /** Name of the acid. */
  readonly name: string;
  /** At 25 °C and zero ionic strength. */
  readonly pKa: Quantity;
  /** Key of what the constant rests on. */
  readonly source: SourceKey;
  /** What to mind about this constant, in words. */
  readonly warnings: readonly string[];
}

const text = (formula: string): string => parseFormula(formula).toString();

const compositionOf = (like: string | Formula, argument: string): string => {
  if (!(like instanceof Formula)) guard.text(like, argument);
  return keyOf(String(like instanceof Formula ? like : parseFormula(like)));
};

/** The constant a species of the network is formed with. */
function inputOf(formula: string, symbol: string): Quantity | undefined {
  const species = network().species(keyOf(formula));
  return species?.shares.find(([constant]) => constant.symbol.startsWith(symbol))?.[0].input();
}

/**
 * Acid constant of an acid, an acid anion or a metal ion in water.
 *
 * @param acid - what gives the hydron; each step is asked by its own acid: `H3PO4`, `H2PO4-`, `HPO4^2-`
 * @returns pKa at 25 °C and zero ionic strength; acids that water levels have no constant
 * @throws {AqueousError} `aqueous.no-data`, `aqueous.bad-option`
 * @source each row of the table names its own
 * @category In the beaker
 * @example
 * acidConstant("CH3COOH").pKa.value.toString() // => "4.76"
 */
export function acidConstant(acid: string | Formula): AcidConstant {
  const key = compositionOf(acid, "acid");
  const row = ACID_STEPS().find((one) => keyOf(one.acid) === key);
  const input =
    row === undefined ? undefined : (inputOf(row.acid, `pKa(${row.acid})`) ?? inputOf(row.base, `pKa(${row.acid})`));
  if (row === undefined || input === undefined) {
    throw new AqueousError("aqueous.no-data", `no acid constant of ${String(acid)}`, {
      input: String(acid),
      position: 0,
      hint:
        row === undefined
          ? "ask with the charge, such as H2PO4-; bring your own as constants"
          : chargeOf(row.acid) > 0
            ? "its hydroxide complexes stand in stabilityConstants with ligand OH-"
            : "a strong acid: water levels it",
    });
  }
  const warnings: string[] = [];
  if (row.doubtful === true)
    warnings.push("a doubtful constant: sources differ by more than 0.5, or it rests on memory");
  if (row.note !== undefined) warnings.push(row.note);
  return readable({
    acid: text(row.acid),
    base: text(row.base),
    name: row.name,
    pKa: input,
    source: row.source,
    warnings,
  });
}

/** One complex of a metal ion. */
export interface StabilityConstant {
  /** Formula of the complex, with its charge if it has one. */
  readonly complex: string;
  /** Ligands bound. */
  readonly n: number;
  /** Hydrons bound with them. */
  readonly protons: number;
  /** Cumulative, brought to zero ionic strength. */
  readonly logBeta: Quantity;
  /** Key of what the constant rests on. */
  readonly source: SourceKey;
  /** What to mind about this constant, in words. */
  readonly warnings: readonly string[];
}

/** @internal Complexes of a metal with one ligand and nothing else that the tables have, by formula. */
export const stabilityRows = (metal: string, ligand: string): readonly string[] =>
  (COMPLEXES().find((one) => keyOf(one.metal) === keyOf(metal) && keyOf(one.ligand) === keyOf(ligand))?.steps ?? [])
    .filter(({ protons }) => protons === undefined)
    .map(({ complex }) => complex);

/**
 * Stability constants of the complexes of a metal ion with a ligand.
 *
 * @param pair - `metal` and `ligand`, both with their charge
 * @returns cumulative constants at zero ionic strength (mol/L), 25 °C unless a warning says otherwise
 * @throws {AqueousError} `aqueous.no-data`, `aqueous.bad-option`
 * @source each row of the table names its own; brought to zero ionic strength with the equation of Davies
 * @category In the beaker
 * @example
 * stabilityConstants({ metal: "Ag+", ligand: "NH3" }).map((one) => one.logBeta.value.toString()) // => ["3.31", "7.22"]
 */
export function stabilityConstants(pair: {
  readonly metal: string | Formula;
  readonly ligand: string | Formula;
}): readonly StabilityConstant[] {
  guard.fields(pair, { metal: true, ligand: true }, "pair");
  const [metal, ligand] = [compositionOf(pair.metal, "metal"), compositionOf(pair.ligand, "ligand")];
  const row = COMPLEXES().find((one) => keyOf(one.metal) === metal && keyOf(one.ligand) === ligand);
  if (row === undefined) {
    const ligands = COMPLEXES()
      .filter((one) => keyOf(one.metal) === metal)
      .map((one) => text(one.ligand));
    throw new AqueousError(
      "aqueous.no-data",
      `no stability constants of ${String(pair.metal)} with ${String(pair.ligand)}`,
      {
        hint:
          ligands.length === 0 ? "write the metal ion with its charge, such as Cu^2+" : `known: ${ligands.join(", ")}`,
        details: { metal: String(pair.metal), ligand: String(pair.ligand) },
      },
    );
  }
  return row.steps.flatMap((step): StabilityConstant[] => {
    const logBeta = inputOf(step.complex, `log β(${step.complex})`);
    if (logBeta === undefined) return [];
    const warnings: string[] = [];
    if (step.doubtful === true)
      warnings.push("a doubtful constant: sources differ by more than one unit, or it rests on memory");
    if (step.ionicStrength !== undefined)
      warnings.push(`measured at an ionic strength of ${step.ionicStrength} mol/L and brought to zero`);
    if (step.celsius !== undefined) warnings.push(`measured at ${step.celsius} °C`);
    return [
      { complex: text(step.complex), n: step.n, protons: step.protons ?? 0, logBeta, source: step.source, warnings },
    ];
  });
}

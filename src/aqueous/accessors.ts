// The tables of constants, one question each.

import { Formula, parseFormula } from "../formula";
import { attempt } from "../foundation/error";
import {
  bringsFacts,
  factsInForce,
  type LookupOptions,
  lookingWith,
  OWN_FIGURE,
  withItsFacts,
} from "../foundation/facts";
import { readable } from "../foundation/readable";
import { ACID_STEPS } from "../ion/internal";
import type { Quantity } from "../quantity";
import { guard } from "./argument";
import { COMPLEXES } from "./data/complexes";
import type { SourceKey } from "./data/sources";
import { AqueousError } from "./error";
import { network, withoutHydron } from "./mixture/given";
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
  readonly pKa: Quantity<"number">;
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

/** Key of the source of a row, or what the caller said where the constant is one of the caller's own. */
const sourceOf = (constant: Quantity, key: SourceKey): SourceKey =>
  isOwn(constant) ? (constant.source as SourceKey) : key;

const isOwn = ({ source }: Quantity): boolean => source?.startsWith(OWN_FIGURE) === true;

/** The constant a species of the network is formed with. */
function inputOf(formula: string, kind: string, of: string): Quantity | undefined {
  const species = network().species(keyOf(formula));
  // one of the caller's own may be written in another spelling
  const isOf = (symbol: string): boolean =>
    symbol.startsWith(`${kind}(`) && keyOf(symbol.slice(kind.length + 1, symbol.lastIndexOf(")"))) === keyOf(of);
  return species?.shares.find(([constant]) => isOf(constant.symbol))?.[0].input();
}

/** The step of an acid that no table has and a constant of the caller's own may. */
function ownStep(acid: string): { readonly acid: string; readonly base: string; readonly name: string } | undefined {
  if (factsInForce() === undefined) return undefined;
  const base = attempt(() => withoutHydron(acid));
  return base.ok ? { acid, base: base.value, name: acid } : undefined;
}

/**
 * Acid constant of an acid, an acid anion or a metal ion in water.
 *
 * @param acid - what gives the hydron; each step is asked by its own acid: `H3PO4`, `H2PO4-`, `HPO4^2-`
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns pKa at 25 °C and zero ionic strength; acids that water levels have no constant
 * @throws {AqueousError} `aqueous.no-data`, `aqueous.bad-option`
 * @source each row of the table names its own
 * @category In the beaker
 * @example
 * acidConstant("CH3COOH").pKa.value.toString() // => "4.76"
 */
export function acidConstant(acid: string | Formula, options?: LookupOptions): AcidConstant {
  if (options !== undefined) return lookingWith(options, guard, () => acidConstant(acid));
  const key = compositionOf(acid, "acid");
  const row = ACID_STEPS().find((one) => keyOf(one.acid) === key);
  const step = row ?? ownStep(String(acid));
  const input =
    step === undefined ? undefined : (inputOf(step.acid, "pKa", step.acid) ?? inputOf(step.base, "pKa", step.acid));
  if (step === undefined || input === undefined) {
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
  if (row?.doubtful === true)
    warnings.push("a doubtful constant: sources differ by more than 0.5, or it rests on memory");
  if (row?.note !== undefined) warnings.push(row.note);
  return readable({
    acid: text(step.acid),
    base: text(step.base),
    name: step.name,
    pKa: input,
    source: row === undefined ? (input.source as SourceKey) : sourceOf(input, row.source),
    warnings: isOwn(input) ? [] : warnings,
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
  readonly logBeta: Quantity<"number">;
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
export function stabilityConstants(
  pair: LookupOptions & {
    readonly metal: string | Formula;
    readonly ligand: string | Formula;
  },
): readonly StabilityConstant[] {
  if (bringsFacts(pair)) return withItsFacts(pair, guard, stabilityConstants);
  guard.fields(pair, { metal: true, ligand: true, facts: true }, "pair");
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
    const logBeta = inputOf(step.complex, "log β", step.complex);
    if (logBeta === undefined) return [];
    const warnings: string[] = [];
    if (step.doubtful === true)
      warnings.push("a doubtful constant: sources differ by more than one unit, or it rests on memory");
    if (step.ionicStrength !== undefined)
      warnings.push(`measured at an ionic strength of ${step.ionicStrength} mol/L and brought to zero`);
    if (step.celsius !== undefined) warnings.push(`measured at ${step.celsius} °C`);
    return [
      {
        complex: text(step.complex),
        n: step.n,
        protons: step.protons ?? 0,
        logBeta,
        source: sourceOf(logBeta, step.source),
        warnings: isOwn(logBeta) ? [] : warnings,
      },
    ];
  });
}

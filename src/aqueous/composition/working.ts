// The working of a composition: what was put in, which constants decide, the balances with what is left over of each, and the
// answer.
import { isRecord } from "../../foundation/argument";
import { explain, type Given, type Quantity } from "../../quantity";
import { AqueousError } from "../error";
import type { AqueousComposition } from "./answer";

/** How a composition follows. */
export interface CompositionWorking {
  /** What was put in, and the constants that decide, each with its source. */
  readonly given: readonly Given[];
  /** The balances that hold at once, each with the relative residual of the answer. */
  readonly balances: readonly string[];
  /** What there is of each dissolved species, the most abundant first; traces are left out. */
  readonly species: readonly string[];
  /** Which solids stand, and how near the next ones are. */
  readonly solids: readonly string[];
  /** What was assumed to get the answer, in words. */
  readonly assumptions: readonly string[];
  /** Citations of the constants that were used. */
  readonly sources: readonly string[];
  /** The answer in one line. */
  readonly result: string;
  /** All of it, for a board. */
  toString(): string;
}

/** @internal Is it what `aqueousComposition` gave? By its fields, so that nobody pays for the equilibrium to ask. */
export const isComposition = (value: unknown): value is AqueousComposition =>
  isRecord(value) && ["pH", "species", "saturation", "filtrate", "balance"].every((field) => field in value);

/** Species and solids that are listed. */
const MOST = 8;
/** Part of the most abundant species below which another is a trace. */
const TRACE = 1e-6;

const brief = (q: Quantity, significant = 3): string => q.format({ significant, uncertainty: "none" });
const residual = (x: number): string => (x === 0 ? "0" : x.toExponential(0));

function speciesLines({ species }: AqueousComposition): string[] {
  const least = (species[0]?.molality.toNumber("mol/kg") ?? 0) * TRACE;
  return species
    .slice(0, MOST)
    .filter(({ molality }) => molality.toNumber("mol/kg") > least)
    .map(({ formula, molality }) => `${formula}: ${brief(molality)}`);
}

function solidLines({ solids, saturation }: AqueousComposition): string[] {
  const stands = solids.map(({ formula, amount, mass }) => `${formula} stands: ${brief(amount)}, ${brief(mass)}`);
  const near = saturation
    .filter(({ state, index }) => index !== undefined && state !== "stands")
    .slice(0, Math.max(0, 3 - stands.length))
    .map(
      ({ formula, index }) =>
        `${formula} would need more: log10(Q/K) = ${index!.format({ decimals: 1, uncertainty: "none" })}`,
    );
  return [...stands, ...near];
}

/**
 * How a composition follows: what was put in and the constants with their sources, the balances that hold at once with what
 * is left over of each, what there is of each species, which solids stand.
 *
 * @param composition - what `aqueousComposition` gave
 * @returns the working as data; `.toString()` prints it for a board
 * @throws {AqueousError} `aqueous.bad-option` for anything else
 * @category In the beaker
 * @example
 * const vinegar = aqueousComposition({ water: "1 L", dissolved: [{ formula: "CH3COOH", amount: "0.84 mol" }] });
 * workingOfComposition(vinegar).result // => "pH 2.42, ionic strength 0.00408 mol/kg"
 * workingOfComposition(vinegar).species[0] // => "CH3COOH: 0.836 mol/kg"
 */
export function workingOfComposition(composition: AqueousComposition): CompositionWorking {
  if (!isComposition(composition))
    throw new AqueousError("aqueous.bad-option", "expected what aqueousComposition gave", {
      hint: "aqueousComposition({ water, dissolved })",
    });
  const { pH, ionicStrength, balance, gas, celsius, unknown } = composition;
  const { given, assumptions, sources } = explain(pH);
  const working = {
    given,
    balances: [
      `mass: each ion or molecule is as much dissolved, solid and gone as was put in, to ${residual(balance.mass)}`,
      `charge: cations and anions cancel, to ${residual(balance.charge)}`,
      `ionic strength: half the sum of molality × charge², with the coefficients it gives, to ${residual(balance.ionicStrength)}`,
      `saturation: no solid that may form has log Q/K above ${residual(balance.saturation)}`,
    ],
    species: speciesLines(composition),
    solids: [...solidLines(composition), ...gas.map(({ formula, amount }) => `${formula} leaves: ${brief(amount)}`)],
    assumptions: [...new Set([...assumptions, ...composition.assumptions])],
    sources,
    result: `pH ${pH.format({ decimals: 2, uncertainty: "none" })}, ionic strength ${brief(ionicStrength)}`,
  };
  const part = (title: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : [title, ...lines.map((line) => `  ${line}`)];
  const text = (): string =>
    [
      ...part(
        `Given, at ${celsius} °C`,
        given.map(({ symbol, value, label, source }) =>
          [`${symbol} = ${value}`, label, source === undefined ? undefined : `[${sources.indexOf(source) + 1}]`]
            .filter((one) => one !== undefined)
            .join("   "),
        ),
      ),
      ...part("Balances that are met together", working.balances),
      ...part("Dissolved", working.species),
      ...part("Solids and gas", working.solids),
      working.result,
      ...part("Not known", unknown),
      ...part("Assumptions", working.assumptions),
      ...part(
        "Sources",
        sources.map((source, i) => `[${i + 1}] ${source}`),
      ),
    ].join("\n");
  return { ...working, toString: text };
}

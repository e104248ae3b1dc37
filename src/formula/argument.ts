// Arguments that callers without types may get wrong: refused by name, before anything reads them. Only slow paths come
// here; text that reads well, and a molar mass without options, never do.
import { CONVENTIONS, elementIndexOf } from "../element/internal";
import { ArgumentGuard, type Fields, type KnownFields, kindOf } from "../foundation/argument";
import { FormulaError } from "./error";
import type { EmpiricalOptions } from "./mass/empirical";
import type { MolarMassOptions, monoisotopicMass } from "./mass/molar-mass";
import type { massAs, oxideEquivalents } from "./mass/oxide";
import type { ReadOptions } from "./read/cursor";

/** The guard of this layer. */
export const guard = /* @__PURE__ */ new ArgumentGuard(FormulaError, {
  unknown: "formula.unknown-option",
  bad: "formula.bad-option",
});

const READ = { n: true, x: true, digitsBeforeSign: true } as const satisfies Fields<ReadOptions>;

const MASS = {
  convention: true,
  weights: true,
  massNumberIfNone: true,
  electronMass: true,
} as const satisfies Fields<MolarMassOptions>;

/** Options of the functions that build on a molar mass. */
export const OXIDES = { ...MASS, oxides: true } as const satisfies Fields<
  NonNullable<Parameters<typeof oxideEquivalents>[1]>
>;
export const MASS_AS = { ...MASS, element: true } as const satisfies Fields<NonNullable<Parameters<typeof massAs>[3]>>;

const MONOISOTOPIC = { electronMass: true } as const satisfies Fields<
  NonNullable<Parameters<typeof monoisotopicMass>[1]>
>;

const EMPIRICAL = {
  molarMass: true,
  remainder: true,
  maxMultiplier: true,
  weights: true,
} as const satisfies Fields<EmpiricalOptions>;

/** Options of reading. */
export function needReadOptions(options: ReadOptions): void {
  guard.fields(options, READ);
  const { digitsBeforeSign } = options;
  if (digitsBeforeSign !== undefined) guard.choice(digitsBeforeSign, "digitsBeforeSign", ["subscript", "charge"]);
}

/** Options of a molar mass, and those of a function that builds on it. */
export function needMassOptions(options: MolarMassOptions, known: KnownFields = MASS): void {
  guard.fields(options, known);
  const { convention, weights, massNumberIfNone, electronMass } = options;
  if (convention !== undefined) guard.choice(convention, "convention", CONVENTIONS);
  if (massNumberIfNone !== undefined) guard.boolean(massNumberIfNone, "massNumberIfNone");
  if (electronMass !== undefined) guard.boolean(electronMass, "electronMass");
  if (weights === undefined) return;
  guard.record(weights, "weights");
  for (const symbol of Object.keys(weights)) {
    if (elementIndexOf(symbol) < 0)
      throw guard.refused(symbol, "weights", "by the symbols of elements, such as { Cu: … }");
  }
}

export function needMonoisotopicOptions(options: { readonly electronMass?: boolean | undefined }): void {
  guard.fields(options, MONOISOTOPIC);
  if (options.electronMass !== undefined) guard.boolean(options.electronMass, "electronMass");
}

/** Options of an analysis. */
export function needEmpiricalOptions(options: EmpiricalOptions): void {
  guard.fields(options, EMPIRICAL);
  const { remainder, maxMultiplier, weights } = options;
  if (remainder !== undefined) guard.text(remainder, "remainder");
  if (maxMultiplier !== undefined) guard.number(maxMultiplier, "maxMultiplier");
  if (weights !== undefined) needMassOptions(weights);
}

/** Neither text nor a formula. */
export function notText(value: unknown, argument: string): FormulaError {
  return new FormulaError("formula.not-text", `${argument} must be text or a Formula, not ${kindOf(value)}`, {
    hint: 'such as "CuSO4·5H2O"',
  });
}

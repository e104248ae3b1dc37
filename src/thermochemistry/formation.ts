// Enthalpies of formation by formula and state. A dissolved salt or strong acid that the table does not hold whole is the
// sum of its ions; nothing else is put together, and nothing is estimated.

import { Formula, parseFormula } from "../formula";
import { byElements, withoutPhase } from "../formula/internal";
import type { Fields } from "../foundation/argument";
import { bringsFacts, type LookupOptions, ownRow, withItsFacts } from "../foundation/facts";
import { readable } from "../foundation/readable";
import { constitutionOf } from "../ion";
import { type Quantity, quantity, sum } from "../quantity";
import { guard, needTextOption } from "./argument";
import { ENTHALPIES, type EnthalpyRow, type SubstanceState } from "./data/enthalpies";
import { cite, type SourceKey } from "./data/sources";
import { ThermochemistryError } from "./error";

const WHICH = { state: true, form: true, facts: true } as const satisfies Fields<
  NonNullable<Parameters<typeof formationEnthalpy>[1]>
>;

/** Enthalpy of formation of a substance in one state. */
export interface FormationEnthalpy {
  /** Of the substance, as printed. */
  readonly formula: string;
  /** Solid, liquid, gas, or dissolved in water. */
  readonly state: SubstanceState;
  /** Polymorph or kind of precipitate. */
  readonly form: string | undefined;
  /** kJ/mol at 298.15 K and 1 bar; `aq` at infinite dilution. */
  readonly enthalpy: Quantity<"molar energy">;
  /** Ions it was put together from, for a dissolved salt; empty otherwise. */
  readonly fromIons: readonly string[];
  /** Key of the source; `cite` prints it. */
  readonly source: SourceKey;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** States tried in turn when none is named: the one met on the bench first. */
const ORDER: readonly SubstanceState[] = ["s", "l", "g", "aq"];

/** Most ions of one kind that are added up one by one. */
const MOST_IONS = 50;

/**
 * Standard uncertainty in units of the last digit: the tables state 8 to 80 units as the range of their uncertainty,
 * whose middle (25) is taken as two standard deviations.
 */
const UNITS_IN_LAST_DIGIT = 12.5;

const keyOf = (formula: Formula): string => formula.compositionText;

/** A row of the table, or one of the caller's own with the figure as it was given. */
export type OwnEnthalpy = EnthalpyRow & { readonly own?: Quantity };

/** The caller's own rows of a substance, in each of its states. */
function ownRowsOf(formula: Formula): readonly OwnEnthalpy[] {
  const rows = ORDER.map((state) =>
    ownRow<OwnEnthalpy>("enthalpies", () => `${constitutionOf(formula).identity} ${state}`),
  );
  return rows.filter((row) => row !== undefined);
}

const rowsByComposition = /* @__PURE__ */ byElements(
  ENTHALPIES,
  ({ formula }) => formula,
  (rows) => {
    const index = new Map<string, EnthalpyRow[]>();
    for (const row of rows) {
      const key = keyOf(parseFormula(row.formula));
      index.set(key, [...(index.get(key) ?? []), row]);
    }
    return index;
  },
);

function rowsOf(formula: Formula): readonly EnthalpyRow[] {
  const found = rowsByComposition(formula.toString()).get(keyOf(formula)) ?? [];
  const same = found.filter((row) => parseFormula(row.formula).equals(formula));
  if (same.length > 0) return same;
  // isomers: CO(NH2)2 is not NH4OCN, and CH4N2O may be either
  const { identity, kind } = constitutionOf(formula);
  if (kind === "open") return [];
  const alike = found.filter((row) => constitutionOf(row.formula).identity === identity);
  if (alike.length > 0 && alike.every((row) => row.formula === alike[0]!.formula)) return alike;
  // a molecule is no salt of the same atoms
  if (found.some((row) => constitutionOf(row.formula).kind !== kind)) return [];
  return found.length > 0 && found.every((row) => row.formula === found[0]!.formula)
    ? found
    : plausible(found, formula);
}

/** Different notations of one composition: taken when they cut the water off alike, refused when they may be isomers. */
function plausible(found: readonly EnthalpyRow[], formula: Formula): readonly EnthalpyRow[] {
  const alike = found.filter((row) => parseFormula(row.formula).hasSameParts(formula));
  return alike.every((row) => row.formula === alike[0]!.formula) ? alike : [];
}

/** Values already handed out, so that one figure used twice is one input. */
const given = /* @__PURE__ */ new WeakMap<EnthalpyRow, Quantity>();

function figureOf(row: OwnEnthalpy): Quantity {
  const before = given.get(row);
  if (before !== undefined) return before;
  const decimals = row.enthalpy.includes(".") ? row.enthalpy.length - row.enthalpy.indexOf(".") - 1 : 0;
  const exact = Number(row.enthalpy) === 0;
  const spread = exact ? {} : { standardUncertainty: (UNITS_IN_LAST_DIGIT * 10 ** -decimals).toFixed(decimals + 1) };
  const made = quantity(row.own ?? { value: row.enthalpy, unit: "kJ/mol", ...spread }, {
    symbol: `ΔfH(${row.formula},${row.state})`,
    label: `enthalpy of formation of ${row.formula}${row.form === undefined ? "" : ` (${row.form})`}, ${row.state}`,
    source: cite(row.source),
  });
  given.set(row, made);
  return made;
}

/** @internal */
export function findFormation(
  formula: Formula,
  state: SubstanceState | undefined,
  form: string | undefined,
): FormationEnthalpy | undefined {
  const bare = withoutPhase(formula);
  const rows = [...ownRowsOf(bare), ...rowsOf(bare)];
  const wanted = state ?? ORDER.find((candidate) => rows.some((row) => row.state === candidate));
  const inState: readonly OwnEnthalpy[] = rows.filter((row) => row.state === wanted);
  const row = form === undefined ? inState[0] : inState.find((candidate) => candidate.form?.includes(form) === true);
  if (row !== undefined) {
    const warnings = row.note === undefined ? [] : [`${row.formula}: ${row.note}`];
    if (form === undefined && inState.length > 1 && inState[0]!.own === undefined)
      warnings.push(`${row.formula}: taken as ${row.form ?? "the crystals"}, one of several forms`);
    return {
      formula: row.formula,
      state: row.state,
      form: row.form,
      enthalpy: figureOf(row),
      fromIons: [],
      source: row.source,
      warnings,
    };
  }
  return state === "aq" ? fromIons(bare) : undefined;
}

/** A dissolved salt or strong acid as its ions. */
function fromIons(formula: Formula): FormationEnthalpy | undefined {
  const { kind, acid, inWater, molecules, waters } = constitutionOf(formula);
  const dissolves = kind === "salt" || acid?.strong === true;
  if (!dissolves || molecules.length > 0 || waters > 0) return undefined;
  if (inWater.some(({ count }) => !Number.isInteger(count) || count > MOST_IONS)) return undefined;
  const ions = inWater.flatMap(({ formula: ion, count }) => Array.from({ length: count }, () => ion));
  const found = ions.map((ion) => findFormation(parseFormula(ion), "aq", undefined));
  if (found.some((ion) => ion === undefined)) return undefined;
  const known = found as FormationEnthalpy[];
  const total = sum(known.map(({ enthalpy }) => enthalpy));
  return {
    formula: formula.toString(),
    state: "aq",
    form: undefined,
    enthalpy: total.named({
      symbol: `ΔfH(${formula},aq)`,
      label: `enthalpy of formation of dissolved ${formula}, as its ions`,
      rule: "sum over the ions",
    }),
    fromIons: [...new Set(ions)],
    source: known[0]!.source,
    warnings: known.flatMap(({ warnings }) => warnings),
  };
}

/**
 * Standard enthalpy of formation of a substance.
 *
 * @param formula - formula, a phase at its end is read: `"CuSO4(aq)"`, `"CO2(g)"`; without one, the solid, liquid or gas
 *   the bench meets
 * @param options - `state` and `form` (part of the form's name, such as `"quartz"`), instead of the phase
 * @returns enthalpy in kJ/mol at 298.15 K and 1 bar with standard uncertainty; a dissolved salt or strong acid as its ions
 * @throws {ThermochemistryError} `thermochemistry.no-data`, `thermochemistry.bad-option`
 * @source Wagman et al., The NBS Tables of Chemical Thermodynamic Properties (1982), and as each row says
 * @category Heat
 * @example
 * formationEnthalpy("H2O").enthalpy.value.toString() // => "-285.83"
 * formationEnthalpy("NaOH(aq)").fromIons // => ["Na+", "OH-"]
 */
export function formationEnthalpy(
  formula: string | Formula,
  options: LookupOptions & { readonly state?: SubstanceState; readonly form?: string } = {},
): FormationEnthalpy {
  if (bringsFacts(options)) return withItsFacts(options, guard, (others) => formationEnthalpy(formula, others));
  guard.fields(options, WHICH);
  needTextOption(options.state, "state");
  needTextOption(options.form, "form");
  const read = formula instanceof Formula ? formula : parseFormula(formula);
  const found = findFormation(read, options.state ?? stateOf(read), options.form);
  if (found !== undefined) return readable(found);
  throw noData([read.toString()]);
}

/** @internal State named by the phase of a formula. */
export function stateOf(formula: Formula): SubstanceState | undefined {
  return formula.phase === "cr" ? "s" : (formula.phase as SubstanceState | undefined);
}

/** @internal */
export function noData(missing: readonly string[]): ThermochemistryError {
  return new ThermochemistryError("thermochemistry.no-data", `no enthalpy of formation for ${missing.join(", ")}`, {
    hint: "name the state, as in CuSO4(aq), or the hydrate that is really there",
    details: { missing },
  });
}

// How the water of a hydrate goes when it is heated, stage by stage.

import type { FormulaLike, MassLike } from "../amount";
import { formulaOfArgument, inSymbol, positive } from "../amount/internal";
import type { Formula } from "../formula";
import { byElements, splitWater } from "../formula/internal";
import { type LookupOptions, lookingWith } from "../foundation/facts";
import { readable } from "../foundation/readable";
import { constitutionOf } from "../ion";
import { type Quantity, quantity } from "../quantity";
import { guard } from "./argument";
import { DEHYDRATION } from "./data/dehydration";
import { citeHeating } from "./data/sources";
import { equivalentMass } from "./equivalent";
import { HydrateError } from "./error";

/** One stage of heating. */
export interface DehydrationStep {
  /** What is left after the stage. */
  readonly formula: Formula;
  /** Temperatures of the stage; in open air, typical, they move by tens of degrees. */
  readonly from: Quantity<"temperature">;
  /** Where the stage is complete; undefined where it is not known. */
  readonly to: Quantity<"temperature"> | undefined;
  /** Mass left, as part of the mass at the start. */
  readonly massFraction: Quantity<"number">;
  /** Mass lost so far, as part of the mass at the start. */
  readonly loss: Quantity<"number">;
  /** Mass left, where the mass at the start was given. */
  readonly mass: Quantity<"mass"> | undefined;
}

/** Heating of one form, stage by stage. */
export interface DehydrationStages {
  /** The form that is heated. */
  readonly form: Formula;
  /** In the order of heating. */
  readonly steps: readonly DehydrationStep[];
  /** What else happens on heating, in words; undefined where nothing is noted. */
  readonly note: string | undefined;
  /** What stages and temperatures rest on. */
  readonly source: string;
}

/** The rows of dehydration by the form. */
const dehydrationRows = /* @__PURE__ */ byElements(
  DEHYDRATION,
  ({ form }) => form,
  (rows) =>
    new Map(
      rows.map((row) => {
        const form = formulaOfArgument(row.form);
        return [constitutionOf(form).identity, { row, form }] as const;
      }),
    ),
);

/**
 * What is left after each stage of heating a hydrate in an open crucible.
 *
 * @param formula - the hydrate that is heated
 * @param mass - mass at the start, for the expected mass after each stage
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns the stages with formula, temperatures, mass left and loss; with a note where there is something to know
 * @throws {HydrateError} `hydrate.unknown-salt` when no stages are tabulated
 * @throws {AmountError} `amount.not-positive`
 * @throws {FormulaError} those of `parseFormula`
 * @source stages from memory of the usual handbooks; masses from the formulas
 * @category Hydrates
 * @example
 * stagedDehydration("CuSO4·5H2O").steps.map((s) => `${s.formula} ${s.loss.format({ decimals: 2, uncertainty: "none" })}`) // => ["CuSO4.3H2O 14.43 %", "CuSO4.H2O 28.86 %", "CuSO4 36.08 %", "CuO 68.14 %"]
 */
export function stagedDehydration(formula: FormulaLike, mass?: MassLike, options?: LookupOptions): DehydrationStages {
  if (options !== undefined) return lookingWith(options, guard, () => stagedDehydration(formula, mass));
  const form = formulaOfArgument(formula);
  const rows = dehydrationRows(form.toString());
  const row = rows.get(constitutionOf(form).identity)?.row;
  if (row === undefined) {
    const { dry } = splitWater(form);
    const others = [...rows.values()]
      .filter((other) => dry !== undefined && splitWater(other.form).dry?.hasSameComposition(dry) === true)
      .map((other) => other.row.form);
    throw new HydrateError("hydrate.unknown-salt", `how ${inSymbol(form)} loses its water is not tabulated`, {
      hint:
        others.length > 0
          ? `tabulated of this salt: ${others.join(", ")}`
          : "equivalentMass gives the mass of any form; weigh before and after heating for hydrationNumber",
      details: { formula: form.toString() },
    });
  }
  const start =
    mass === undefined
      ? undefined
      : positive(mass, "mass", "mass", { symbol: `m(${inSymbol(form)})`, label: `mass of ${inSymbol(form)}` });
  const unit = quantity("1 g");
  const steps = row.stages.map(({ to, from, until, per }): DehydrationStep => {
    const left = formulaOfArgument(to);
    const massFraction = equivalentMass(unit, { from: form, to: left, per })
      .dividedBy(unit)
      .to("%")
      .named({
        symbol: `left(${inSymbol(left)})`,
        rule: "part of the mass left = mass of the stage / mass at the start",
      });
    const loss = quantity("1")
      .minus(massFraction)
      .to("%")
      .named({ symbol: `loss(${inSymbol(left)})`, rule: "loss = 1 - part of the mass left" });
    return {
      formula: left,
      from: quantity({ value: from, unit: "°C" }),
      to: until === undefined ? undefined : quantity({ value: until, unit: "°C" }),
      massFraction,
      loss,
      mass: start === undefined ? undefined : equivalentMass(start, { from: form, to: left, per }),
    };
  });
  return readable({ form, steps, note: row.note, source: citeHeating(row.source) });
}

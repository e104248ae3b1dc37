// What heat does to a substance, step by step, each step starting from what the one before left.
import { type Formula, molarMass } from "../../formula";
import { byElements } from "../../formula/internal";
import { frozen } from "../../foundation/frozen";
import { lazily, type Parts } from "../../foundation/lazy";
import { remembering } from "../../foundation/memo";
import { formulaKey, type Notation, readNotation, textOf } from "../../ion/internal";
import { type Quantity, quantity, sum } from "../../quantity";
import { cite, type SourceKey } from "../data/sources";
import {
  THERMAL,
  THERMAL_STEPS,
  type ThermalAmount,
  type ThermalStepRow,
  type ThermalSteps,
} from "../data/thermal-steps";

/** One step of heating. Before it plus `takes` equals `leaves` plus `remains`, atom for atom. */
export interface ThermalStep {
  /** Temperature at which it begins, in °C. */
  readonly from: Quantity<"temperature">;
  /** Temperature at which it is complete; absent where it is not known. */
  readonly to?: Quantity<"temperature">;
  /** Are the temperatures approximate? */
  readonly approx: boolean;
  /** What the step starts from: what the one before left. */
  readonly before: readonly ThermalAmount[];
  /** What it takes from the air. */
  readonly takes: readonly ThermalAmount[];
  /** What goes off as gas or vapour. */
  readonly leaves: readonly ThermalAmount[];
  /** Solids that are left. */
  readonly remains: readonly ThermalAmount[];
  /** Mass of what remains by the mass of one formula unit of the substance. */
  readonly massLeft: Quantity<"number">;
  /** What temperatures and products rest on. */
  readonly source: SourceKey;
}

const thermal = /* @__PURE__ */ byElements(
  THERMAL_STEPS,
  ({ formula }) => formula,
  (rows): ReadonlyMap<string, ThermalSteps> => new Map(rows.map((row) => [formulaKey(readNotation(row.formula)), row])),
);

/** The row of a substance. */
export function thermalOf(notation: Notation): ThermalSteps | undefined {
  return thermal(textOf(notation)).get(formulaKey(notation));
}

/** What else happens to a substance on heating or keeping, in words. */
export const thermalNoteOf = (notation: Notation): string | undefined => {
  const row = thermalOf(notation);
  return row === undefined ? undefined : THERMAL()[THERMAL_STEPS().indexOf(row)]!.note;
};

/** Every row of the table. */
export const thermalRows = (): readonly ThermalSteps[] => THERMAL_STEPS();

/** A temperature of a table. */
export function celsius(text: string, label: string, source: SourceKey): Quantity<"temperature"> {
  return quantity({ value: text, unit: "°C" }, { label, source: cite(source) }) as Quantity<"temperature">;
}

/** Mass of some amounts per mole of the substance. */
function massOfAll(amounts: readonly ThermalAmount[]): Quantity {
  if (amounts.length === 0) return quantity({ value: 0, unit: "g/mol" });
  return sum(amounts.map(({ formula, coefficient }) => molarMass(formula).times(coefficient)));
}

function stepOf(row: ThermalStepRow, before: ThermalStep["before"], { formula, source }: ThermalSteps): ThermalStep {
  const { to } = row;
  return lazily<ThermalStep>({
    from: () => celsius(row.from, `begins for ${formula}`, source),
    ...(to === undefined ? {} : { to: () => celsius(to, `over for ${formula}`, source) }),
    approx: () => row.approx ?? false,
    before: () => before,
    takes: () => frozen(row.takes ?? []),
    leaves: () => frozen(row.leaves),
    remains: () => frozen(row.remains),
    massLeft: () =>
      massOfAll(row.remains)
        .dividedBy(molarMass(formula))
        .named({ rule: "mass left = mass of what remains / mass before heating" }),
    source: () => source,
  } as Parts<ThermalStep>);
}

/** The steps of a row, in order. */
export function stepsOf(row: ThermalSteps): ThermalStep[] {
  let before: ThermalStep["before"] = frozen([{ formula: row.formula, coefficient: "1" }]);
  return row.steps.map((step) => {
    const made = stepOf(step, before, row);
    before = made.remains;
    return made;
  });
}

const remembered = /* @__PURE__ */ remembering<readonly ThermalStep[]>(200);

/** What heat does to a formula, in order; nothing where nothing is known. */
export const thermalStepsOf = (formula: Formula): readonly ThermalStep[] =>
  remembered(formula.toString(), () => {
    const row = thermalOf(readNotation(formula));
    return row === undefined ? [] : frozen(stepsOf(row));
  });

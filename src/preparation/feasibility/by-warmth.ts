// Precipitates that form only above or below a temperature, by the table of solids.

import { network, type Phase } from "../../aqueous/internal";
import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { componentsOf } from "./beaker";
import { isOxide } from "./oxide-or-hydroxide";
import { phaseFormula } from "./standing";

/** Between which temperatures, °C, a precipitate forms; an end that is not bounded is undefined. */
interface Warmth {
  readonly from: number | undefined;
  readonly below: number | undefined;
}

const ANY: Warmth = { from: undefined, below: undefined };

const remembered = /* @__PURE__ */ remembering<Warmth>(300);

/** What of the table is a formula, with its own water. */
function rowsOf(formula: Formula): NonNullable<Phase["row"]>[] {
  const of = componentsOf(formula);
  if (of === undefined) return [];
  return network()
    .phasesWithin(of.keys())
    .filter((phase) => phase.kind === "solid" && phaseFormula(phase).hasSameComposition(formula))
    .flatMap(({ row }) => (row === undefined || row.bench === "never here" || row.soluble === true ? [] : [row]));
}

/** Where a precipitate forms. Oxides have rules of their own: water gives their hydroxides. */
export const warmthOf = (formula: Formula): Warmth =>
  remembered(formula.toString(), () => {
    const rows = isOxide(formula) ? [] : rowsOf(formula);
    if (rows.length === 0) return ANY;
    const [froms, belows] = [rows.map(({ from }) => from ?? -Infinity), rows.map(({ below }) => below ?? Infinity)];
    const [from, below] = [Math.min(...froms), Math.max(...belows)];
    return {
      from: Number.isFinite(from) ? from : undefined,
      below: Number.isFinite(below) ? below : undefined,
    };
  });

// Heat of diluting an acid that is already in some water, from the table of heats of dilution and, for sulfuric acid, from
// Thomsen's equation.

import type { Formula } from "../formula";
import { isOneOf } from "../ion/internal";
import { type Quantity, quantity } from "../quantity";
import { DILUTION, type DilutionRow } from "./data/dilution";
import { cite } from "./data/sources";
import { formationEnthalpy } from "./formation";
import { sulfuricAcidDilution } from "./reaction";

/** Between two rows, and of shop acids whose strength nobody titrated, no figure is better than this. */
const RELATIVE = 0.05;
/** End of Thomsen's equation. */
const THOMSEN_ENDS = 50;

/** Heat still to come, kJ/mol, on a straight line over the molality (the inverse of the water); undefined above the strongest row. */
function toCome({ heats }: DilutionRow, water: number): number | undefined {
  const at = heats.map(([n, kJ]) => [1 / Number(n), Number(kJ)] as const);
  const x = 1 / water;
  if (x > at[0]![0]) return undefined;
  const next = at.findIndex(([m]) => m < x);
  if (next < 0) return at.at(-1)![1];
  const [m0, q0] = at[next - 1] ?? at[0]!;
  const [m1, q1] = at[next]!;
  return m0 === m1 ? q0 : q1 + ((q0 - q1) * (x - m1)) / (m0 - m1);
}

/** kJ for a mole of acid that goes from so many moles of water to more, negative; undefined where no figure is known. */
export function heatOfDilution(acid: Formula, from: number, to: number): Quantity<"molar energy"> | undefined {
  if (isOneOf(acid, "H2SO4")) {
    const at = (n: number): number => sulfuricAcidDilution(Math.min(THOMSEN_ENDS, n).toFixed(4)).toNumber("kJ/mol");
    return stated(at(from) - at(to), "Thomsen's equation", cite("memory"));
  }
  const row = DILUTION.find((one) => isOneOf(acid, one.acid));
  if (row === undefined) return undefined;
  const [before, after] = [toCome(row, from), toCome(row, to)];
  return before === undefined || after === undefined
    ? undefined
    : stated(before - after, "heat still to come before − after", cite(row.source));
}

/** Ion that sulfuric acid ends as where both its hydrons are taken. */
const SULFATE = "SO4^2-";

/**
 * Heat that a mole of sulfuric acid in so many moles of water gives beside what figures of sulfate in much water say, negative: in
 * its own water it is hydrogensulfate for the most part.
 */
export function heatKeptBySulfuricAcid(water: number): Quantity<"molar energy"> {
  const [sulfate, acid] = [formationEnthalpy(SULFATE, { state: "aq" }), formationEnthalpy("H2SO4", { state: "l" })];
  const dilution = sulfuricAcidDilution(Math.min(THOMSEN_ENDS, water).toFixed(4));
  return sulfate.enthalpy.minus(acid.enthalpy).minus(dilution).to("kJ/mol") as Quantity<"molar energy">;
}

const stated = (kilojoules: number, rule: string, source: string): Quantity<"molar energy"> =>
  quantity(
    {
      value: (-kilojoules).toFixed(3),
      unit: "kJ/mol",
      standardUncertainty: Math.max(0.01, Math.abs(kilojoules) * RELATIVE).toFixed(3),
    },
    { symbol: "ΔdilH", label: `heat of dilution, ${rule}`, source },
  ) as Quantity<"molar energy">;

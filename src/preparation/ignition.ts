// What ignition leaves of a solid, and how much acid a gram of it takes up.
import { oxidationStates } from "../equation";
import { type Formula, molarMass, parseFormula } from "../formula";
import { attempt } from "../foundation/error";
import { anhydrousOf } from "../hydrate";
import type { Quantity } from "../quantity";
import { keyElement } from "./candidates";
import { IGNITION, OXIDES } from "./data/ignition";
import { exact } from "./exact";

/** What is left, and what is assumed of air and heat. */
export interface Residue {
  readonly residue: Formula;
  readonly condition: string | undefined;
}

/** Carbonates, hydroxides and oxalates: nothing but metal, hydrogen, oxygen and carbon. */
function leavesOxide(formula: Formula, key: string): boolean {
  return formula.symbols.every((s) => s === key || s === "C" || s === "H" || s === "O");
}

/** The residue as told, by the table, as the oxide of the metal, or as the salt without water. */
export function residueOf(formula: Formula, told: Formula | undefined): Residue | undefined {
  if (told !== undefined) return { residue: told, condition: undefined };
  const row = IGNITION.find((one) => parseFormula(one.formula).hasSameComposition(formula));
  if (row !== undefined) return { residue: parseFormula(row.residue), condition: row.condition };
  const key = keyElement(formula);
  const oxide = key === undefined ? undefined : OXIDES.find((one) => one.metal === key);
  if (key !== undefined && oxide !== undefined && leavesOxide(formula, key))
    return { residue: parseFormula(oxide.oxide), condition: oxide.condition };
  if (formula.compositionText === "H2O") return undefined;
  const salt = anhydrousOf(formula);
  return key === undefined || leavesOxide(formula, key)
    ? undefined
    : { residue: salt, condition: "only water is driven off" };
}

/** Acid that a gram of a carbonate, hydroxide or oxide takes up: the charge of its metals, one H+ for each. */
export function acidPerGramOf(formula: Formula): Quantity | undefined {
  const key = keyElement(formula);
  if (key === undefined || !leavesOxide(formula, key) || /C2O4|C2O3|COO|C2H3O2/.test(formula.toString()))
    return undefined;
  const states = attempt(() => oxidationStates(formula).of(key));
  if (!states.ok) return undefined;
  const charge = states.value;
  if (charge === undefined) return undefined;
  return exact("1")
    .times(formula.count(key))
    .times(charge)
    .dividedBy(molarMass(formula))
    .to("mmol/g")
    .named({
      symbol: `n(H⁺)/m(${formula.toUnicode()})`,
      rule: "acid per gram = atoms of metal × charge / molar mass",
    });
}

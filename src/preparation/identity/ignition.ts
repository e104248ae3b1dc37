// What ignition leaves of a solid, and how much acid a gram of it neutralises.

import { oxidationStates } from "../../equation";
import { type Formula, molarMass, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import { attempt } from "../../foundation/error";
import { anhydrousOf, crystalWater, knownHydrates } from "../../hydrate";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import { madeOf, thermalStepsOf } from "../../substance/internal";
import { CONDENSES, IGNITION, LOSES_ITS_ACID, OXIDES } from "../data/ignition";
import { exact, planned } from "../planning/exact";
import { keyElement } from "../reaction/candidates";
import { heatedDry } from "./water-window";

/** What is left, and what is assumed of air and heat. */
interface Residue {
  readonly residue: Formula;
  readonly condition: string | undefined;
}

/** Carbonates, hydroxides and oxalates: nothing but metal, hydrogen, oxygen and carbon. */
function leavesOxide(formula: Formula, key: string): boolean {
  return formula.symbols.every((s) => s === key || s === "C" || s === "H" || s === "O");
}

/** What the last step of heating leaves, where that is one solid. */
function afterLastStep(formula: Formula): Residue | undefined {
  // what only a furnace does is no ignition
  const last = thermalStepsOf(formula)
    .filter((one) => one.from.compare(planned("redHeat")) <= 0)
    .at(-1);
  const [left, another] = last?.remains ?? [];
  return last === undefined || left === undefined || another !== undefined
    ? undefined
    : { residue: parseFormula(left.formula), condition: `above ${last.from.format({ uncertainty: "none" })}` };
}

/** What the last step of heating leaves of a hydrate of the same salt, which ends where all of them do. */
function afterLastStepOfAnother(formula: Formula): Residue | undefined {
  for (const { formula: other } of knownHydrates(formula)) {
    const last = afterLastStep(other);
    if (last !== undefined && !knownHydrates(last.residue).some((one) => one.formula.hasSameComposition(formula)))
      return last;
  }
  return undefined;
}

/**
 * Phosphates with hydrogen or ammonium lose both, as water and ammonia: 2 CaHPO4 and 2 MgNH4PO4 leave Ca2P2O7 and Mg2P2O7, NaH2PO4 leaves
 * NaPO3.
 */
function condensedOf(salt: Formula): Residue | undefined {
  const of = (symbol: string): number => Number(salt.count(symbol).n);
  const ammonium = madeOf(salt).ammonium ? of("N") : 0;
  const metals = salt.symbols.filter(
    (symbol) => !["H", "P", "O"].includes(symbol) && !(symbol === "N" && ammonium > 0),
  );
  // an ammonium leaves its hydrogen ion
  const [hydrogen, phosphorus, oxygen] = [of("H") - 3 * ammonium, of("P"), of("O")];
  const isAcidSalt = hydrogen > 0 && phosphorus > 0 && oxygen === 4 * phosphorus && salt.charge === 0;
  if (!isAcidSalt || metals.length === 0 || metals.some((symbol) => ["N", "C", "S"].includes(symbol))) return undefined;
  const twice = [
    ...metals.map((symbol) => [symbol, 2 * of(symbol)] as const),
    ["P", 2 * phosphorus],
    ["O", 2 * oxygen - hydrogen],
  ] as const;
  const by = twice.every(([, count]) => count % 2 === 0) ? 2 : 1;
  const residue = parseFormula(twice.map(([symbol, count]) => `${symbol}${count / by}`).join(""));
  const melts = metals.some((symbol) => CONDENSES.alkali.some((one) => one === symbol));
  return { residue, condition: melts ? CONDENSES.withAlkali : CONDENSES.at };
}

/** The row of a hydrate whose acid leaves with its water, or of a salt that air turns to the oxide; undefined for all others. */
function withoutAcid(formula: Formula): (typeof LOSES_ITS_ACID)[number] | undefined {
  const isDry = crystalWater(formula).waters.n === 0n;
  const { cations, anions, complex } = constitutionOf(formula);
  if (complex !== undefined) return undefined;
  return LOSES_ITS_ACID.find(
    (row) =>
      !(isDry && row.oxideWhere === undefined) &&
      anions.every(({ formula: anion }) => anion === row.anion) &&
      cations.every(({ formula: cation }) => row.cations.includes(cation)),
  );
}

/** The residue as given, by the table, as the oxide of the metal, as the salt without water, or as the last step of heating. */
export function residueOf(formula: Formula, stated: Formula | undefined): Residue | undefined {
  if (stated !== undefined) return { residue: stated, condition: undefined };
  const row = IGNITION.find((one) => parseFormula(one.formula).hasSameComposition(formula));
  if (row !== undefined) return { residue: parseFormula(row.residue), condition: row.condition };
  const key = keyElement(formula);
  const oxide = key === undefined ? undefined : OXIDES.find((one) => one.metal === key);
  if (key !== undefined && oxide !== undefined && leavesOxide(formula, key))
    return { residue: parseFormula(oxide.oxide), condition: oxide.condition };
  if (isWater(formula)) return undefined;
  const condensed = condensedOf(anhydrousOf(formula));
  if (condensed !== undefined) return condensed;
  const acid = withoutAcid(formula);
  if (acid !== undefined)
    return acid.oxideWhere === undefined || oxide === undefined
      ? undefined
      : { residue: parseFormula(oxide.oxide), condition: acid.oxideWhere };
  const dry: Residue = { residue: anhydrousOf(formula), condition: heatedDry(formula) };
  // Every hydrate of a salt is heated alike, to the salt; ammonium goes with the water.
  const isOfHydrates = crystalWater(formula).waters.n !== 0n || knownHydrates(formula).length > 1;
  if (isOfHydrates && !madeOf(formula).ammonium) return dry;
  const last = afterLastStep(formula) ?? (madeOf(formula).ammonium ? afterLastStepOfAnother(formula) : undefined);
  if (last === undefined && madeOf(formula).ammonium) return undefined;
  return last ?? (key === undefined || leavesOxide(formula, key) ? undefined : dry);
}

/** Does only a furnace bring its metal to the oxide, and so no ignition at a bench tell anything? */
export function needsFurnace(formula: Formula): boolean {
  const key = keyElement(formula);
  return key !== undefined && leavesOxide(formula, key) && OXIDES.some((one) => one.metal === key && one.furnace);
}

/** Anions that acid takes: those of carbonates, hydroxides and oxides. */
const BASES: ReadonlySet<string> = /* @__PURE__ */ new Set(["carbonate", "hydrogencarbonate", "hydroxide", "oxide"]);

/** Acid that a gram of a carbonate, hydroxide or oxide neutralises: the charge of its metals, one H+ for each. */
export function acidPerGramOf(formula: Formula): Quantity | undefined {
  const key = keyElement(formula);
  if (key === undefined || !leavesOxide(formula, key) || ![...madeOf(formula).groups].every((name) => BASES.has(name)))
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

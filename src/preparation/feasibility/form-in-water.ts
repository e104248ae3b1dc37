// In which hydrate a product leaves its water: what crystallises at the temperature of the room by the solubility table, or what
// precipitates by the equilibrium. Who writes CaSO4 makes gypsum, and every mass of the plan is that of gypsum.

import { network } from "../../aqueous/internal";
import { type Formula, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import { remembering } from "../../foundation/memo";
import { knownHydrates } from "../../hydrate";
import type { Quantity } from "../../quantity";
import { solidTransitions, trySolubilityOf } from "../../solubility";
import { matterOf } from "../contents/matter";
import { SETTLES } from "../data/stands";
import { bySubstance } from "../reaction/by-substance";
import { fateOf } from "../reaction/fate";
import type { Species } from "../reaction/species";
import { componentsOf, ratio, settle } from "./beaker";
import { phaseFormula } from "./standing";

/** Acknowledged: the form written in the request is meant. */
export const OTHER_HYDRATE = "another-hydrate";

/** The same substance with more or less crystal water. */
const isHydrateOf = (one: Formula, other: Formula): boolean =>
  matterOf(one).core.key === matterOf(other).core.key && matterOf(one).key !== matterOf(other).key;

const settlesRow = /* @__PURE__ */ bySubstance(SETTLES);

const remembered = /* @__PURE__ */ remembering<Formula | undefined>(300);

/**
 * The hydrate of a formula written without crystal water, where water gives that; undefined where it gives what is written or nobody
 * knows.
 */
export function hydrateOf(
  { formula }: Species,
  reactants: readonly Species[],
  temperature: Quantity<"temperature">,
): Formula | undefined {
  if (isWater(formula) || !matterOf(formula).waters.isZero()) return undefined;
  const put = reactants.map((one) => `${one.coefficient} ${one.formula}`).join(" + ");
  return remembered(`${put} -> ${formula} ${temperature.toNumber("°C")}`, () =>
    formedAs(formula, reactants, temperature),
  );
}

/** The same, looked up: by what the bench knows, by the curve, by the only hydrate that books know, or by the equilibrium. */
function formedAs(
  formula: Formula,
  reactants: readonly Species[],
  temperature: Quantity<"temperature">,
): Formula | undefined {
  const settles = settlesRow(formula);
  if (settles !== undefined) {
    const solid = parseFormula(settles.settles);
    return isHydrateOf(solid, formula) ? solid : undefined;
  }
  const curve = trySolubilityOf(formula, temperature);
  if (curve.ok && curve.value.solidPhase !== undefined) {
    const solid = parseFormula(curve.value.solidPhase);
    return isHydrateOf(solid, formula) ? solid : undefined;
  }
  // Without a curve, where books know the salt as one hydrate only and never dry.
  const forms = curve.ok || fateOf(formula, temperature).precipitated === true ? [] : knownHydrates(formula);
  if (forms.length === 1 && !forms[0]!.waters.equals(0)) return forms[0]!.formula;
  return settledAs(formula, reactants, temperature.toNumber("°C"));
}

/** The hydrate that stands once the equation's own mixture is at rest; undefined where the written one is met at the bench. */
function settledAs(formula: Formula, reactants: readonly Species[], celsius: number): Formula | undefined {
  const of = componentsOf(formula);
  if (of === undefined) return undefined;
  const solids = network()
    .phasesWithin(of.keys())
    .filter((phase) => phase.kind === "solid" && ratio(phase.of, of) !== undefined);
  const isMet = solids.some(
    (phase) => phase.row?.bench !== "never here" && phaseFormula(phase).hasSameComposition(formula),
  );
  if (isMet || !solids.some((phase) => isHydrateOf(phaseFormula(phase), formula))) return undefined;
  const pours = reactants.map((one) => ({ formula: one.formula, moles: Number(one.coefficient) }));
  const beaker = settle(pours, undefined, celsius, { carbonDioxide: "kept", solids: "fresh" });
  const standing = beaker?.solids.find(({ phase }) => isHydrateOf(phaseFormula(phase), formula));
  return standing === undefined ? undefined : phaseFormula(standing.phase);
}

/** From which temperature on, or below which, the written form is what crystallises; undefined where the table does not say. */
export function whereItCrystallises(formula: Formula): string | undefined {
  if (!trySolubilityOf(formula, "20 °C").ok) return undefined;
  const isIt = (solid: string | undefined): boolean =>
    solid !== undefined && matterOf(parseFormula(solid)).key === matterOf(formula).key;
  const changes = solidTransitions(formula);
  const from = changes.find(({ above }) => isIt(above))?.celsius;
  const below = changes.find((change) => isIt(change.below))?.celsius;
  if (from === undefined) return below === undefined ? undefined : `below ${below} °C`;
  return below === undefined ? `from ${from} °C on` : `from ${from} to ${below} °C`;
}

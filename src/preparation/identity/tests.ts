// What an identity is determined by: the solids a sample may be with what ignition leaves of them, the loss and the acid that were
// found, and the loss that a formula asks for.

import { Formula, molarMass } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { PlanError } from "../error";
import { exact, lessThanAll, planned } from "../planning/exact";
import { formulasLike } from "../reaction/candidates";
import { formulaFrom, nameOfFormula } from "../reaction/species";
import { spelledLike } from "../reaction/spelling";
import { guard } from "../request/argument";
import { residueOf } from "./ignition";
import type { IgnitionCandidate, MassLossRequest } from "./types";

const MOST_CANDIDATES = 100;

export function candidatesOf(
  request: MassLossRequest,
): { formula: Formula; residue: Formula; condition: string | undefined }[] {
  const product =
    request.product === undefined
      ? []
      : ((): Formula[] => {
          const formula = formulaFrom(request.product);
          return [formula, ...formulasLike(formula)];
        })();
  const given = request.candidates ?? [];
  guard.list(given, "candidates");
  const all = [...product.map((formula): IgnitionCandidate => ({ formula })), ...given.map(asCandidate)];
  if (all.length === 0 || all.length > MOST_CANDIDATES) {
    throw new PlanError("plan.request", `an identity needs 1 to ${MOST_CANDIDATES} candidates, not ${all.length}`, {
      hint: "give candidates as formulas, or the product that was wanted",
    });
  }
  const read = all.map(({ formula: text, residue = request.residue }) => {
    const formula = formulaFrom(text);
    const left = residueOf(formula, residue === undefined ? undefined : formulaFrom(residue));
    if (left === undefined) {
      throw new PlanError("plan.no-residue", `what ignition leaves of ${formula} is not known`, {
        hint: 'give it: { formula: "…", residue: "…" }',
        details: { formula: formula.toString() },
      });
    }
    return { formula, ...left };
  });
  return read.filter(({ formula }, i) => read.findIndex((r) => r.formula.hasSameComposition(formula)) === i);
}

const CANDIDATE = { formula: true, residue: true } as const satisfies Fields<IgnitionCandidate>;

function asCandidate(one: string | Formula | IgnitionCandidate, index: number): IgnitionCandidate {
  if (typeof one === "string" || one instanceof Formula) return { formula: one };
  guard.fields(one, CANDIDATE, `candidates[${index}]`);
  return one;
}

/** Loss of a sample; `scatter` is what another sample of the same powder may be off. */
export function lossOf(before: Quantity, after: Quantity, scatter: Quantity): Quantity {
  if (after.compare(before) > 0) {
    throw new PlanError("plan.observation", `it weighs more after ignition: ${before} before, ${after} after`, {
      hint: "check the order of the weighings",
    });
  }
  // "Constant" mass is constant to the criterion only: a spread that no balance takes away.
  const constant = quantity(
    { value: "1", unit: "", halfWidth: planned("constantMass").in("").toString(), distribution: "rectangular" },
    {
      symbol: "k",
      label: "constancy of the mass after ignition",
      assumption: `ignited to constant mass within ${planned("constantMass")}`,
    },
  );
  const found = before.minus(after.times(constant)).dividedBy(before).to("%");
  return scatter.standardUncertainty === undefined
    ? found.named({ symbol: "loss", label: "loss on ignition", rule: "loss = (m₁ - k m₂) / m₁, k = 1" })
    : found
        .plus(scatter)
        .named({ symbol: "loss", label: "loss on ignition", rule: "loss = (m₁ - k m₂) / m₁ + s, k = 1, s = 0" });
}

export function acidOf({ acidPerGram }: MassLossRequest): Quantity | undefined {
  if (acidPerGram === undefined) return undefined;
  const given = expectDimension(acidPerGram, "molality", "acidPerGram").to("mmol/g");
  const naming = { symbol: "n(H⁺)/m", label: "acid neutralised by a gram" };
  guard.positive(given, "acidPerGram");
  if (given.standardUncertainty !== undefined) return given.named(naming);
  const value = given.value.toString();
  return quantity(
    { value, unit: "mmol/g", standardUncertainty: given.value.times(planned("titration").in("")).toString() },
    { ...naming, assumption: "a titration good to 1 %" },
  );
}

/** What heat leaves of a solid, and how much of it. */
interface LeftByHeat {
  readonly residue: string;
  readonly share: Quantity;
  /** How it is heated for that. */
  readonly condition: string | undefined;
}

const left = /* @__PURE__ */ remembering<LeftByHeat | undefined>(300);

/** What heat leaves of a solid; undefined where that is not known, or where all of it stays. */
export const leftOnIgnition = (formula: Formula): LeftByHeat | undefined =>
  left(formula.toString(), () => {
    const known = residueOf(formula, undefined);
    if (known === undefined || known.residue.hasSameComposition(formula)) return undefined;
    const { residue, condition } = known;
    const loss = attempt(() => expectedLossOf(formula, residue));
    if (!loss.ok || !loss.value.isPositive()) return undefined;
    return { residue: nameOfFormula(spelledLike(residue, formula)), share: lessThanAll(loss.value).to("%"), condition };
  });

export function expectedLossOf(formula: Formula, residue: Formula): Quantity {
  // Residue and sample share an element that does not leave: a metal, else anything but carbon, hydrogen, oxygen, nitrogen.
  const key = residue.symbols.find((s) => !["H", "C", "O", "N"].includes(s) && formula.count(s).n !== 0n);
  if (key === undefined)
    throw new PlanError("plan.no-residue", `${residue} shares no element with ${formula} that stays on ignition`);
  return exact("1")
    .minus(molarMass(residue).times(formula.count(key)).dividedBy(residue.count(key)).dividedBy(molarMass(formula)))
    .to("%")
    .named({
      symbol: `loss(${nameOfFormula(formula)})`,
      label: `loss of ${nameOfFormula(formula)} to ${nameOfFormula(residue)}`,
      rule: "loss = 1 - molar mass of the residue for each formula / molar mass",
    });
}

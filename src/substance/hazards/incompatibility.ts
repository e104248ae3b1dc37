// Which of a set of materials must not meet, and why.

import { ownRows } from "../../foundation/facts";
import { anhydrousKey, type Notation } from "../../ion/internal";
import {
  type Circumstance,
  CONDITIONS,
  type ConditionRow,
  type HazardClass,
  INCOMPATIBILITIES,
  type IncompatibilityRow,
  type MeetingCondition,
} from "../data/incompatibilities";
import { citeHazard, type HazardSourceKey } from "../data/sources";
import { classesOf, isToxicWork } from "./classes";

/** Two materials (or one, or a material and a circumstance) that do not go together. */
export interface Incompatibility {
  /** Stable code of the rule, for acknowledging it. */
  readonly code: string;
  /** `forbid`: not to be planned; `warn`: may be what is wanted. */
  readonly severity: "forbid" | "warn";
  /** `true` when it holds as it stands: forbidden, and any condition it has is met. */
  readonly blocking: boolean;
  /** The materials as they were asked for. */
  readonly materials: readonly string[];
  /** What happens, in words. */
  readonly what: string;
  /** Formulas of what forms. */
  readonly products: readonly string[];
  /** The conditions in words; absent where the rule always holds. */
  readonly condition?: string;
  /** Under one of these; empty where the rule always holds. */
  readonly conditions: readonly MeetingCondition[];
  /** `met` where it always holds or what was given meets a condition; `not stated` where nobody said. */
  readonly state: "met" | "not stated";
  /** Key of the source; `cite` prints it. */
  readonly source: HazardSourceKey;
  /** The source in words. */
  readonly citation: string;
}

/** A material with its classes, ready for the rules. */
interface ClassedMaterial {
  readonly material: string;
  readonly formula: string;
  readonly notation: Notation;
  readonly classes: ReadonlySet<HazardClass>;
  /** Mass fraction in percent, where it is stated. */
  readonly percent: number | undefined;
}

/** What is known of the way the materials meet. */
export interface Meeting {
  /** They are planned together: what nothing rules out counts as met. */
  readonly planned: boolean;
  /** They are heated, or meet warm. */
  readonly heated: boolean;
}

/** Nothing is known of it. */
const UNSTATED: Meeting = { planned: false, heated: false };

/** Gases that burst a closed vessel. */
const GASES: ReadonlySet<string> = /* @__PURE__ */ new Set(
  /* @__PURE__ */ (
    "Cl2 ClO2 Br2 NH2Cl NHCl2 NCl3 ClN3 CNCl O2 CO2 CO N2 NO NO2 NOCl SO2 H2 H2S H2Se HCN HN3 HF HCl HBr " +
    "AsH3 PH3 SiH4 NH3 C2H2 COS"
  ).split(" "),
);

/** At most a tenth by mass: vinegar, household ammonia, pharmacy peroxide. */
export const DILUTE = 10;
/** Up to this much of anything by mass, the rest is water enough to keep it from being dry. */
const WET = 50;

/** The class of just one substance, crystal water aside; rules of the caller's own may name it. */
export const classOfOne = (notation: Notation): string => `just ${anhydrousKey(notation).key}`;

/** Every rule: ours, all of them, and then the caller's own. */
export function everyRule(): readonly IncompatibilityRow[] {
  const own = ownRows<IncompatibilityRow>("incompatibilities");
  return own.length === 0 ? INCOMPATIBILITIES() : [...INCOMPATIBILITIES(), ...own];
}

/** A material with the classes of its formula. */
export function classed(
  material: string,
  formula: string,
  notation: Notation,
  percent: number | undefined,
): ClassedMaterial {
  const known = classesOf(notation);
  const classes =
    everyRule() === INCOMPATIBILITIES() ? known : new Set([...known, classOfOne(notation) as HazardClass]);
  return { material, formula, notation, classes, percent };
}

function hasAny(material: ClassedMaterial, classes: readonly string[]): boolean {
  return classes.some((one) => material.classes.has(one as HazardClass));
}

function finding(
  row: IncompatibilityRow,
  materials: readonly ClassedMaterial[],
  circumstances: readonly string[],
  state: "met" | "not stated",
): Incompatibility {
  const conditions = row.conditions ?? [];
  return {
    code: row.code,
    severity: row.severity,
    blocking: row.severity === "forbid" && state === "met",
    materials: [...materials.map((one) => one.material), ...circumstances],
    what: row.what,
    products: row.products ?? [],
    ...(conditions.length === 0 ? {} : { condition: inWords(conditions) }),
    conditions,
    state,
    source: row.source,
    citation: citeHazard(row.source),
  };
}

/** `dry, heated or ground together`. */
function inWords(conditions: readonly MeetingCondition[]): string {
  const last = conditions.at(-1)!;
  return conditions.length === 1 ? last : `${conditions.slice(0, -1).join(", ")} or ${last}`;
}

type State = "met" | "not stated" | "ruled out";

/** By the strength of those it is about: any that is dilute rules it out, and all must be strong. */
function byStrength({ of, above = DILUTE }: ConditionRow, pair: readonly ClassedMaterial[]): State {
  const about = of === undefined ? pair : pair.filter((one) => hasAny(one, of));
  if (about.some(({ percent }) => percent !== undefined && percent <= above)) return "ruled out";
  return about.every(({ percent }) => percent !== undefined) ? "met" : "not stated";
}

function stateOf(condition: MeetingCondition, pair: readonly ClassedMaterial[], { planned, heated }: Meeting): State {
  const row = CONDITIONS[condition];
  const wet = pair.some(({ percent }) => percent !== undefined && percent <= WET);
  switch (row.by) {
    case "strength": {
      const state = byStrength(row, pair);
      return state === "not stated" && planned ? "met" : state;
    }
    case "weakness":
      return byStrength(row, pair) === "ruled out" ? "met" : "ruled out";
    case "dryness":
      return wet ? "ruled out" : planned ? "met" : "not stated";
    case "heat":
      return planned && (heated || !wet) ? "met" : "not stated";
    case "work":
      return row.of !== undefined && byStrength(row, pair) === "ruled out" ? "ruled out" : "not stated";
  }
}

/** How it stands with the conditions of a rule, of which one is enough; `ruled out` only where all of them are. */
function stateOfAll({ conditions = [] }: IncompatibilityRow, pair: readonly ClassedMaterial[], how: Meeting): State {
  if (conditions.length === 0) return "met";
  const states = conditions.map((one) => stateOf(one, pair, how));
  return states.includes("met") ? "met" : states.includes("not stated") ? "not stated" : "ruled out";
}

function pairsOf(row: IncompatibilityRow, materials: readonly ClassedMaterial[], meeting: Meeting): Incompatibility[] {
  const found: Incompatibility[] = [];
  for (let i = 0; i < materials.length; i += 1)
    for (let j = i + 1; j < materials.length; j += 1) {
      const [one, two] = [materials[i]!, materials[j]!];
      // two readings of one label, or twice the same stuff, do not meet each other
      if (one.material === two.material || one.formula === two.formula) continue;
      const straight = hasAny(one, row.a) && hasAny(two, row.b!);
      if (!straight && !(hasAny(two, row.a) && hasAny(one, row.b!))) continue;
      const state = stateOfAll(row, [one, two], meeting);
      if (state === "ruled out") continue;
      if (row.unless !== undefined && hasAny(straight ? two : one, [row.unless])) continue;
      const third = row.with;
      if (third !== undefined && !materials.some((other) => other.classes.has(third))) continue;
      found.push(finding(row, straight ? [one, two] : [two, one], [], state));
    }
  return found;
}

/**
 * Every rule that a set of materials sets off, each pair once.
 *
 * @param circumstances - `closed vessel` or `kitchen`, where they apply
 * @param meeting - what is known of the way they meet
 */
export function incompatibilities(
  materials: readonly ClassedMaterial[],
  circumstances: readonly Circumstance[] = [],
  meeting: Meeting = UNSTATED,
): Incompatibility[] {
  const found = new Map<string, Incompatibility>();
  const add = (one: Incompatibility) => {
    const key = `${one.code} ${[...one.materials].sort().join("|")}`;
    if (!found.has(key)) found.set(key, one);
  };
  for (const row of everyRule()) {
    if (row.a.includes("gas") || row.a.includes("toxic")) continue;
    if (row.b === undefined) {
      for (const material of materials) if (hasAny(material, row.a)) add(finding(row, [material], [], "met"));
    } else for (const one of pairsOf(row, materials, meeting)) add(one);
  }
  for (const row of INCOMPATIBILITIES()) {
    const circumstance = circumstances.find((one) => row.b?.includes(one));
    if (circumstance === undefined) continue;
    if (row.a.includes("toxic")) {
      for (const material of materials)
        if (isToxicWork(material.notation)) add(finding(row, [material], [circumstance], "met"));
    } else {
      for (const gas of [...found.values()].filter((one) => one.products.some((formula) => GASES.has(formula))))
        add({
          ...finding(row, [], [circumstance], "met"),
          materials: [...gas.materials, circumstance],
          products: gas.products,
        });
    }
  }
  const order = (one: Incompatibility) => (one.blocking ? 0 : one.severity === "forbid" ? 1 : 2);
  return [...found.values()].sort((a, b) => order(a) - order(b));
}

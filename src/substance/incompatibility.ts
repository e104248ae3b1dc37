// Which of a set of materials must not meet, and why.
import { cite, type SourceKey } from "../foundation";
import type { Notation } from "../ion/notation";
import { classesOf, isToxicWork } from "./classes";
import {
  type Circumstance,
  type HazardClass,
  INCOMPATIBILITIES,
  type IncompatibilityRow,
} from "./data/incompatibilities";

/** Two materials (or one, or a material and a circumstance) that do not go together. */
export interface Incompatibility {
  /** Stable code of the rule, for acknowledging it. */
  readonly code: string;
  /** `forbid`: not to be planned; `warn`: may be what is wanted. */
  readonly severity: "forbid" | "warn";
  /** `true` when it holds as it stands: forbidden, and without a condition that the answer cannot see. */
  readonly blocking: boolean;
  /** The materials as they were asked for. */
  readonly materials: readonly string[];
  readonly what: string;
  /** Formulas of what forms. */
  readonly products: readonly string[];
  readonly condition?: string;
  readonly source: SourceKey;
  readonly citation: string;
}

/** A material with its classes, ready for the rules. */
export interface ClassedMaterial {
  readonly material: string;
  readonly formula: string;
  readonly notation: Notation;
  readonly classes: ReadonlySet<HazardClass>;
  /** Known to be at most a tenth by mass. */
  readonly dilute: boolean;
}

/** Gases that burst a closed vessel. */
const GASES: ReadonlySet<string> = /* @__PURE__ */ new Set([
  "Cl2",
  "ClO2",
  "NH2Cl",
  "NHCl2",
  "NCl3",
  "O2",
  "CO2",
  "CO",
  "N2",
  "NO",
  "NO2",
  "SO2",
  "H2",
  "H2S",
  "HCN",
  "HN3",
  "HF",
  "HCl",
  "HBr",
  "AsH3",
  "PH3",
  "NH3",
  "C2H2",
  "COS",
  "NOCl",
]);

/** Conditions that speak of strength alone: a dilute solution does not meet them. */
const STRENGTH_ONLY =
  /^(strong acid|concentrated acid|strong peroxide|both strong|solid lye|water poured into the strong acid)$/;

/** Classes that a strength condition is about. */
const STRENGTH_CLASSES: readonly HazardClass[] = [
  "acid",
  "sulfuric acid",
  "nitric acid",
  "hydrochloric acid",
  "peroxide",
  "lye",
  "strong base",
];

/** A material with the classes of its formula. */
export function classed(material: string, formula: string, notation: Notation, dilute: boolean): ClassedMaterial {
  return { material, formula, notation, classes: classesOf(notation), dilute };
}

function hasAny(material: ClassedMaterial, classes: readonly string[]): boolean {
  return classes.some((one) => material.classes.has(one as HazardClass));
}

function finding(
  row: IncompatibilityRow,
  materials: readonly ClassedMaterial[],
  circumstances: readonly string[],
): Incompatibility {
  return {
    code: row.code,
    severity: row.severity,
    blocking: row.severity === "forbid" && row.condition === undefined,
    materials: [...materials.map((one) => one.material), ...circumstances],
    what: row.what,
    products: row.products ?? [],
    ...(row.condition === undefined ? {} : { condition: row.condition }),
    source: row.source,
    citation: cite(row.source),
  };
}

/** Is the rule's condition one of strength that these dilute materials cannot meet? */
function tooDilute(row: IncompatibilityRow, pair: readonly ClassedMaterial[]): boolean {
  if (row.condition === undefined || !STRENGTH_ONLY.test(row.condition)) return false;
  return pair.some((one) => one.dilute && hasAny(one, STRENGTH_CLASSES));
}

function pairsOf(row: IncompatibilityRow, materials: readonly ClassedMaterial[]): Incompatibility[] {
  const found: Incompatibility[] = [];
  for (let i = 0; i < materials.length; i += 1)
    for (let j = i + 1; j < materials.length; j += 1) {
      const [one, two] = [materials[i]!, materials[j]!];
      // two readings of one label, or twice the same stuff, do not meet each other
      if (one.material === two.material || one.formula === two.formula) continue;
      const straight = hasAny(one, row.a) && hasAny(two, row.b!);
      if (!straight && !(hasAny(two, row.a) && hasAny(one, row.b!))) continue;
      if (tooDilute(row, [one, two])) continue;
      const third = row.with;
      if (third !== undefined && !materials.some((other) => other.classes.has(third))) continue;
      found.push(finding(row, straight ? [one, two] : [two, one], []));
    }
  return found;
}

/**
 * Every rule that a set of materials sets off, each pair once.
 *
 * @param circumstances - `closed vessel` or `kitchen`, where they apply
 */
export function incompatibilities(
  materials: readonly ClassedMaterial[],
  circumstances: readonly Circumstance[] = [],
): Incompatibility[] {
  const found = new Map<string, Incompatibility>();
  const add = (one: Incompatibility) => {
    const key = `${one.code} ${[...one.materials].sort().join("|")}`;
    if (!found.has(key)) found.set(key, one);
  };
  for (const row of INCOMPATIBILITIES) {
    if (row.a.includes("gas") || row.a.includes("toxic")) continue;
    if (row.b === undefined) {
      for (const material of materials) if (hasAny(material, row.a)) add(finding(row, [material], []));
    } else for (const one of pairsOf(row, materials)) add(one);
  }
  for (const row of INCOMPATIBILITIES) {
    const circumstance = circumstances.find((one) => row.b?.includes(one));
    if (circumstance === undefined) continue;
    if (row.a.includes("toxic")) {
      for (const material of materials)
        if (isToxicWork(material.notation)) add(finding(row, [material], [circumstance]));
    } else {
      for (const gas of [...found.values()].filter((one) => one.products.some((formula) => GASES.has(formula))))
        add({
          ...finding(row, [], [circumstance]),
          materials: [...gas.materials, circumstance],
          products: gas.products,
        });
    }
  }
  const order = (one: Incompatibility) => (one.blocking ? 0 : one.severity === "forbid" ? 1 : 2);
  return [...found.values()].sort((a, b) => order(a) - order(b));
}

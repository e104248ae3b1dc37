// All compounds that a route may pass: those of the registry, and what stands on the shelf. Nothing else is a node.
import { once, remembering } from "../foundation/memo";
import { registryFormulas } from "../substance/internal";
import { type Compound, compoundOf, formulaFrom, keyOf, madeOf } from "./compound";

/** Compounds by what they are made of. */
export interface Universe {
  readonly compounds: readonly Compound[];
  readonly byKey: ReadonlyMap<string, Compound>;
  /** Those that contain a cation, and those that contain an anion. */
  readonly withCation: ReadonlyMap<string, readonly Compound[]>;
  readonly withAnion: ReadonlyMap<string, readonly Compound[]>;
  readonly metals: ReadonlyMap<string, Compound>;
}

function add<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else if (!list.includes(value)) list.push(value);
}

/** Forms by the compound they belong to, in their order. */
function grouped(forms: readonly string[], into = new Map<string, string[]>()): Map<string, string[]> {
  for (const form of forms) {
    const key = keyOf(form);
    if (key !== undefined) add(into, key, form);
  }
  return into;
}

function build(groups: ReadonlyMap<string, readonly string[]>): Universe {
  const compounds: Compound[] = [];
  const [withCation, withAnion] = [new Map<string, Compound[]>(), new Map<string, Compound[]>()];
  const metals = new Map<string, Compound>();
  for (const [key, forms] of groups) {
    const made = madeOf(forms[0]!)!;
    if (made.kind === "water" || made.kind === "ion") continue;
    const compound = compoundOf(key, forms, made);
    compounds.push(compound);
    for (const { formula } of made.cations) add(withCation, formula, compound);
    for (const { formula } of made.anions) add(withAnion, formula, compound);
    if (made.kind === "element") metals.set(formulaFrom(forms[0]!).symbols[0]!, compound);
  }
  return { compounds, byKey: new Map(compounds.map((one) => [one.key, one])), withCation, withAnion, metals };
}

const ofRegistry = /* @__PURE__ */ once(() => grouped(registryFormulas()));
const plainUniverse = /* @__PURE__ */ once(() => build(ofRegistry()));
const withExtras = /* @__PURE__ */ remembering<Universe>(8);

/** The compounds of the registry, with others that a shelf has or that somebody asks for. */
export function universeWith(forms: readonly string[]): Universe {
  const known = ofRegistry();
  const extras = [...new Set(forms)].filter((form) => {
    const key = keyOf(form);
    return key !== undefined && !known.has(key);
  });
  if (extras.length === 0) return plainUniverse();
  extras.sort();
  return withExtras(extras.join(" "), () => build(grouped(extras, new Map([...known].map(([k, v]) => [k, [...v]])))));
}

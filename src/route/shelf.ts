// The shelf as a search sees it: which compounds stand there, the cheapest jar of each, and how few steps anything is away.
// Made once for a shelf and kept; made anew only when what stands there changes.

import { molarMass } from "../formula";
import { attempt } from "../foundation/error";
import { remembering } from "../foundation/memo";
import type { ShelfMaterial } from "../preparation";
import { type Quantity, quantity } from "../quantity";
import { type Candidate, candidatesFor } from "./candidates";
import { formulaFrom, keyOf } from "./compound";
import { type Universe, universeWith } from "./universe";

/** A jar that stands for its compound. */
interface Jar {
  readonly material: ShelfMaterial;
  readonly key: string;
  /** Money for a mole, as far as the pack tells. */
  readonly perMole: number | undefined;
}

/** An index of a shelf. */
export interface Index {
  readonly all: Universe;
  /** Jars of each compound, the cheapest first. */
  readonly jars: ReadonlyMap<string, readonly Jar[]>;
  /** Least number of steps and least cost to a compound, as if every reaction went; undefined where it takes more steps. */
  readonly reach: (key: string, within: number) => Reach | undefined;
  /** Materials whose form nobody can read. */
  readonly unread: readonly string[];
}

/** The farthest a search looks. */
export const MOST_STEPS = 3;

const toText = (value: unknown): string => (value === undefined ? "" : String(value));

/** Money for a mole of what is in a pack. */
function perMoleOf(material: ShelfMaterial): number | undefined {
  const { pack, assay, strength } = material;
  if (pack === undefined) return undefined;
  const read = attempt(() => {
    const size = quantity(pack.size as Quantity);
    const price = quantity(pack.price as Quantity).toNumber();
    const share = strength ?? assay;
    const part = share === undefined ? 1 : quantity(share as Quantity);
    const grams = size.dimension === "mass" ? size.toNumber("g") : size.toNumber("mL");
    const pure =
      typeof part === "number"
        ? grams
        : part.dimension === "concentration"
          ? undefined
          : grams * (part.dimension === "density" ? part.toNumber("g/mL") : part.toNumber("%") / 100);
    return pure === undefined
      ? undefined
      : price /
          (pure /
            molarMass(formulaFrom(String(material.form)))
              .in("g/mol")
              .toNumber());
  });
  return read.ok ? read.value : undefined;
}

const byPrice = (a: Jar, b: Jar): number =>
  (a.perMole ?? Number.POSITIVE_INFINITY) - (b.perMole ?? Number.POSITIVE_INFINITY) ||
  (a.material.name < b.material.name ? -1 : a.material.name > b.material.name ? 1 : 0);

/** What a step costs in the search: one, and the doubt of its kind. */
export const costOf = (c: Candidate): number => 1 + c.family.doubt;

/** A least way. */
interface Reach {
  readonly steps: number;
  readonly cost: number;
}

/** The least way to a compound within some steps, as if every reaction went; worked out for what is asked, and kept. */
function reachOf(all: Universe, jars: ReadonlyMap<string, unknown>): Index["reach"] {
  const known: Map<string, Reach | undefined>[] = Array.from({ length: MOST_STEPS + 1 }, () => new Map());
  const here: Reach = { steps: 0, cost: 0 };
  const reach = (key: string, within: number): Reach | undefined => {
    if (jars.has(key)) return here;
    const compound = all.byKey.get(key);
    if (within <= 0 || compound === undefined) return undefined;
    const kept = known[within]!;
    if (kept.has(key)) return kept.get(key);
    let best: Reach | undefined;
    for (const c of candidatesFor(compound, all)) {
      let steps = 1;
      let cost = costOf(c);
      for (const feed of c.feeds) {
        const one = reach(feed.key, within - steps);
        if (one === undefined) {
          steps = Number.POSITIVE_INFINITY;
          break;
        }
        steps += one.steps;
        cost += one.cost;
      }
      if (steps > within) continue;
      best =
        best === undefined ? { steps, cost } : { steps: Math.min(steps, best.steps), cost: Math.min(cost, best.cost) };
    }
    kept.set(key, best);
    return best;
  };
  return reach;
}

function build(shelf: readonly ShelfMaterial[], extra: readonly string[]): Index {
  const unread: string[] = [];
  const jars = new Map<string, Jar[]>();
  for (const material of shelf) {
    if (material.aside === true) continue;
    const key = attempt(() => keyOf(String(material.form)));
    if (!key.ok || key.value === undefined) {
      unread.push(material.name);
      continue;
    }
    const jar = { material, key: key.value, perMole: perMoleOf(material) };
    const list = jars.get(jar.key);
    if (list === undefined) jars.set(jar.key, [jar]);
    else list.push(jar);
  }
  for (const list of jars.values()) list.sort(byPrice);
  const forms = shelf.filter(({ name }) => !unread.includes(name)).map(({ form }) => String(form));
  const all = universeWith([...forms, ...extra]);
  return { all, jars, reach: reachOf(all, jars), unread };
}

const kept = /* @__PURE__ */ remembering<Index>(8);

/** All that a plan reads of a jar: one that differs in anything is another jar. */
const contents = (jar: ShelfMaterial): string => {
  const { dissolve, also = [] } = jar;
  const own: readonly unknown[] = [
    jar.name,
    jar.form,
    jar.assay,
    jar.strength,
    jar.density,
    jar.pack?.size,
    jar.pack?.price,
  ];
  const use: readonly unknown[] = [jar.available, jar.excess, jar.inExcess, jar.aside, jar.portion, jar.note];
  const water: unknown[] = [dissolve?.water, dissolve?.temperature];
  if (dissolve !== undefined) water.push(dissolve.concentration);
  const beside: readonly unknown[] = also.flatMap(({ form, share }): unknown[] => [form, share]);
  return [...own, ...use, ...water, ...beside].map(toText).join("\t");
};

/** The index of a shelf, kept while the same things stand on it, in whatever order. */
export function indexOf(shelf: readonly ShelfMaterial[], extra: readonly string[]): Index {
  const key = [...shelf.map(contents).sort(), "", ...extra].join("\n");
  return kept(key, () => {
    return build(shelf, extra);
  });
}

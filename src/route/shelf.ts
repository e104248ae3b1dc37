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
export interface Jar {
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
  /** Least number of steps and least cost to each compound, as if every reaction went. */
  readonly least: ReadonlyMap<string, { readonly steps: number; readonly cost: number }>;
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
    const price = quantity(pack.price as Quantity).value.toNumber();
    const share = strength ?? assay;
    const part = share === undefined ? 1 : quantity(share as Quantity);
    const grams = size.dimension === "mass" ? size.in("g").toNumber() : size.in("mL").toNumber();
    const pure =
      typeof part === "number"
        ? grams
        : part.dimension === "concentration"
          ? undefined
          : grams * (part.dimension === "density" ? part.in("g/mL").toNumber() : part.in("%").toNumber() / 100);
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

interface Reach {
  readonly steps: number;
  readonly cost: number;
}

function reachFrom(all: Universe, jars: ReadonlyMap<string, unknown>): Map<string, Reach> {
  const least = new Map<string, Reach>();
  for (const key of jars.keys()) least.set(key, { steps: 0, cost: 0 });
  // each round adds what is one step farther than the round before
  for (let round = 1; round <= MOST_STEPS; round += 1) {
    const found: [string, Reach][] = [];
    for (const compound of all.compounds) {
      const before = least.get(compound.key);
      if (before?.steps === 0) continue;
      let best = before;
      for (const c of candidatesFor(compound, all)) {
        let steps = 1;
        let cost = costOf(c);
        for (const { key } of c.feeds) {
          const one = least.get(key);
          steps += one?.steps ?? MOST_STEPS;
          cost += one?.cost ?? 0;
          if (steps > MOST_STEPS) break;
        }
        if (
          steps <= MOST_STEPS &&
          (best === undefined || steps < best.steps || (steps === best.steps && cost < best.cost))
        )
          best = { steps: Math.min(steps, best?.steps ?? steps), cost: Math.min(cost, best?.cost ?? cost) };
      }
      if (best !== undefined && best !== before) found.push([compound.key, best]);
    }
    for (const [key, reach] of found) least.set(key, reach);
    if (found.length === 0) break;
  }
  return least;
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
  return { all, jars, least: reachFrom(all, jars), unread };
}

const kept = /* @__PURE__ */ remembering<Index>(8);

/** How often an index was built, for those who watch over it. */
export let indexesBuilt = 0;

const contents = ({ name, form, assay, strength, density, pack, available, aside }: ShelfMaterial): string =>
  [name, form, assay, strength, density, pack?.size, pack?.price, available, aside].map(toText).join("\t");

/** The index of a shelf, kept while the same things stand on it, in whatever order. */
export function indexOf(shelf: readonly ShelfMaterial[], extra: readonly string[]): Index {
  const key = [...shelf.map(contents).sort(), "", ...extra].join("\n");
  return kept(key, () => {
    indexesBuilt += 1;
    return build(shelf, extra);
  });
}

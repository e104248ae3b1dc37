// The network of reactions in water: every species, solid and gas of the tables expressed in components, which are the
// metal ions, the bases of the acids and H+. A table row refers to whatever species it likes; here they are followed down.

import { elementsIn } from "../../formula/internal";
import { memoised, once } from "../../foundation/memo";
import type { SolubilityProductRow } from "../data/products";
import type { Constant } from "./constant";
import { chargeOf, HYDRON, type Key, keyOf, type Term, WATER } from "./notation";

/** A constant and how often its decimal logarithm goes into that of a formation. */
type Share = readonly [constant: Constant, count: number];

/** Something as a sum of components: `log K` of its formation is the sum of its shares. */
export interface Expression {
  readonly of: ReadonlyMap<Key, number>;
  readonly shares: readonly Share[];
}

/** A species that is made of components. */
interface Species extends Expression {
  readonly key: Key;
  readonly formula: string;
  readonly charge: number;
}

/** A solid or gas: the sum of its shares is the log of the activity product at saturation. */
export interface Phase extends Expression {
  readonly kind: "solid" | "gas";
  readonly formula: string;
  readonly name: string;
  readonly form: string | undefined;
  readonly row: SolubilityProductRow | undefined;
  /** °C between which its constant serves; undefined for all. */
  readonly serves?: readonly [from: number, to: number];
  readonly notes: readonly string[];
}

/** What a species is formed from, or a solid gives, and the constants of that. */
export type Reaction = readonly [terms: readonly Term[], shares: readonly Share[]];

/** How a species is formed from others; its row is read when it is asked for. */
interface Forming {
  readonly formula: string;
  readonly reaction: () => Reaction;
}

interface Formation extends Forming {
  /** Place among all species. */
  readonly place: number;
}

/** Species of the same elements, and the place of the first of them. */
interface Unread {
  readonly species: readonly Forming[] | (() => readonly Forming[]);
  readonly place: number;
}

/** A solid or gas as its table names it. */
type PhaseHead = Omit<Phase, "of" | "shares">;

interface PhaseRow {
  readonly phase: PhaseHead;
  readonly elements: string;
  readonly reaction: () => Reaction;
  made: Phase | undefined;
}

/** Symbols of a list of elements; there are as many lists as kinds of rows. */
const symbolsOf = /* @__PURE__ */ memoised<readonly string[]>(1000, (elements) =>
  elements === "" ? [] : elements.split(" "),
);

/** Are all of those elements among these? */
const isSuperset = (elements: string, wanted: ReadonlySet<string>): boolean => {
  const has = symbolsOf(elements);
  return [...wanted].every((symbol) => has.includes(symbol));
};

const elementsOf = (keys: Iterable<Key>): Set<string> =>
  new Set([...keys].flatMap((key) => symbolsOf(elementsIn(key))));

/** Are all these elements among those? */
const isWithin = (elements: string, all: ReadonlySet<string>): boolean =>
  symbolsOf(elements).every((symbol) => all.has(symbol));

/**
 * All that may happen in water. A reaction keeps its atoms, so that what may come of some components has none but their elements:
 * rows of other elements are not read, and expressions are made on request and kept.
 */
export class Network {
  private readonly unread = new Map<string, Unread[]>();
  private readonly read = new Map<string, Key[]>();
  private readonly formations = new Map<Key, Formation>();
  private readonly inWater = new Map<Key, readonly Term[]>();
  private readonly expressions = new Map<Key, Expression>();
  private readonly made = new Map<Key, Species>();
  private readonly formulas = new Map<Key, string>();
  private readonly serving = new Map<Key, boolean>();
  private rows: PhaseRow[] = [];
  private places = 0;

  /** @param isWaterCounted - does the water that reactions make and take change what there is of it? By hand it does not */
  constructor(readonly isWaterCounted = true) {}

  /** How a species is formed; a later row for the same species replaces an earlier one. */
  form(formula: string, reaction: () => Reaction): void {
    this.formKin(elementsIn(formula), 1, [{ formula, reaction }]);
  }

  /** How so many species of the same elements are formed. */
  formKin(elements: string, count: number, species: Unread["species"]): void {
    const rows = { species, place: this.places };
    this.places += count;
    const before = this.unread.get(elements);
    if (before === undefined) this.unread.set(elements, [rows]);
    else before.push(rows);
    this.forget();
  }

  /** What something becomes in water at once. */
  convert(given: string, becomes: readonly Term[]): void {
    this.inWater.set(keyOf(given), becomes);
    this.forget();
  }

  /**
   * Bring over species of another network, each formed as there: of those that have no elements but the components', those that
   * are asked for.
   */
  bring(
    other: Network,
    components: Iterable<Key>,
    isAskedFor: (species: Species, from: readonly Term[]) => boolean,
  ): void {
    for (const species of other.speciesWithin(components)) {
      const reaction = other.formation(species.key)!.reaction();
      if (isAskedFor(species, reaction[0])) this.form(species.formula, () => reaction);
    }
  }

  addPhase(phase: PhaseHead, reaction: () => Reaction): void {
    this.rows.push({ phase, elements: elementsIn(phase.formula), reaction, made: undefined });
    this.forget();
  }

  removePhases(which: (phase: PhaseHead) => boolean): void {
    this.rows = this.rows.filter(({ phase }) => !which(phase));
    this.forget();
  }

  private forget(): void {
    this.serving.clear();
    if (this.expressions.size === 0) return;
    this.expressions.clear();
    this.made.clear();
    for (const row of this.rows) row.made = undefined;
  }

  /** Keys of the species with just these elements. */
  private keysOf(elements: string): readonly Key[] {
    const keys = this.read.get(elements) ?? [];
    const rows = this.unread.get(elements);
    if (rows === undefined) return keys;
    this.unread.delete(elements);
    for (const { species, place } of rows)
      for (const [i, { formula, reaction }] of (typeof species === "function" ? species() : species).entries()) {
        const key = keyOf(formula);
        const before = this.formations.get(key);
        if (before === undefined) keys.push(key);
        this.formations.set(key, { formula, reaction: once(reaction), place: before?.place ?? place + i });
      }
    this.read.set(elements, keys);
    return keys;
  }

  private formation(key: Key): Formation | undefined {
    this.keysOf(elementsIn(key));
    return this.formations.get(key);
  }

  private phaseOf(row: PhaseRow): Phase {
    if (row.made === undefined) {
      const [ions, shares] = row.reaction();
      const whole = this.sum(ions);
      // a product of ion activities K is one of components K / product of the ions' own formations
      const rest = whole.shares.map(([share, count]): Share => [share, -count]);
      row.made = { ...row.phase, of: whole.of, shares: [...shares, ...rest] };
    }
    return row.made;
  }

  /** Every solid and gas that has no elements but those of the components. */
  phasesWithin(components: Iterable<Key>): readonly Phase[] {
    const all = elementsOf(components);
    return this.rows.filter(({ elements }) => isWithin(elements, all)).map((row) => this.phaseOf(row));
  }

  /** Every solid and gas that has the elements of all these components. */
  phasesWith(...components: readonly Key[]): readonly Phase[] {
    const wanted = elementsOf(components);
    return this.rows.filter(({ elements }) => isSuperset(elements, wanted)).map((row) => this.phaseOf(row));
  }

  /** Is it a species of the tables, or does it turn into some? */
  knows(key: Key): boolean {
    return this.isFormed(key) || this.inWater.has(key);
  }

  isFormed(key: Key): boolean {
    return this.formation(key) !== undefined;
  }

  /** In components; what no row forms is a component. */
  express(text: string): Expression {
    const key = keyOf(text);
    const before = this.expressions.get(key);
    if (before !== undefined) return before;
    if (!this.formulas.has(key)) this.formulas.set(key, text);
    const formation = this.formation(key);
    const turned = this.inWater.get(key);
    let made: Expression;
    if (formation !== undefined) {
      const [from, shares] = formation.reaction();
      const whole = this.sum(from);
      made = { of: whole.of, shares: [...shares, ...whole.shares] };
    } else if (turned !== undefined) {
      // complete at once: only the composition counts
      made = { of: this.sum(turned).of, shares: [] };
    } else made = { of: new Map([[key, 1]]), shares: [] };
    this.expressions.set(key, made);
    return made;
  }

  /** A sum of species in components. */
  sum(terms: readonly Term[]): Expression {
    const of = new Map<Key, number>();
    const shares: Share[] = [];
    for (const [count, species] of terms) {
      if (species === WATER) continue;
      const one = this.express(species);
      for (const [key, n] of one.of) of.set(key, (of.get(key) ?? 0) + n * count);
      for (const [share, n] of one.shares) shares.push([share, n * count]);
    }
    for (const [key, n] of of) if (Math.abs(n) < 1e-12) of.delete(key);
    return { of, shares };
  }

  /** As a table or the caller wrote it first. */
  formulaOf(key: Key): string {
    return this.formulas.get(key) ?? key;
  }

  /** A species that is formed. */
  species(key: Key): Species | undefined {
    const before = this.made.get(key);
    if (before !== undefined) return before;
    const formation = this.formation(key);
    if (formation === undefined) return undefined;
    const { formula } = formation;
    const made = { key, formula, charge: chargeOf(formula), ...this.express(formula) };
    this.made.set(key, made);
    return made;
  }

  private speciesOf(elements: string): readonly Species[] {
    return this.keysOf(elements).map((key) => this.species(key)!);
  }

  /** Elements of the species, a text for those of each. */
  private get kinds(): Iterable<string> {
    return new Set([...this.read.keys(), ...this.unread.keys()]);
  }

  /** Every species that is formed and has no elements but those of the components. */
  speciesWithin(components: Iterable<Key>): readonly Species[] {
    const all = elementsOf(components);
    const keys = [...this.kinds].filter((kind) => isWithin(kind, all)).flatMap((kind) => this.keysOf(kind));
    const place = (key: Key): number => this.formations.get(key)!.place;
    return keys.sort((a, b) => place(a) - place(b)).map((key) => this.species(key)!);
  }

  /** Is some species, solid or gas made of the component? */
  serves(component: Key): boolean {
    const known = this.serving.get(component);
    if (known !== undefined) return known;
    const has = ({ of }: Expression): boolean => of.has(component);
    const own = elementsIn(component);
    const wanted = elementsOf([component]);
    const found =
      this.speciesOf(own).some(has) ||
      this.rows.some((row) => isSuperset(row.elements, wanted) && has(this.phaseOf(row))) ||
      [...this.kinds].some((kind) => isSuperset(kind, wanted) && this.speciesOf(kind).some(has));
    this.serving.set(component, found);
    return found;
  }

  /** Is one more hydron on the ion a species? Then its acid is known step by step. */
  isAcidChain(anion: Key): boolean {
    return this.speciesOf(elementsIn(anion)).some(
      ({ of }) => of.size === 2 && of.get(anion) === 1 && of.get(HYDRON) === 1,
    );
  }
}

// The network of reactions in water: every species, solid and gas of the tables expressed in components, which are the
// metal ions, the bases of the acids and H+. A table row refers to whatever species it likes; here they are followed down.

import { elementsIn } from "../../formula/internal";
import { memoised, once } from "../../foundation/memo";
import { ACID_STEPS, isMetalCation, WATER_IONIZATION } from "../../ion/internal";
import { COMPLEXES, type ComplexRow, type ComplexStep } from "../data/complexes";
import { FORMATIONS, HENRY, IN_WATER } from "../data/formations";
import { ACID_HEATS, FORMATION_HEATS } from "../data/heats";
import { SOLUBILITY_PRODUCTS, type SolubilityProductRow } from "../data/products";
import { SOLUBLE, type SolubleRow } from "../data/soluble";
import { daviesTerm, debyeHueckelSlope } from "../solve/davies";
import { type Constant, constant, LONE_SPREAD, spreadOf } from "./constant";
import { chargeOf, HYDRON, type Key, keyOf, readReaction, type Term, WATER } from "./notation";
import { productConstant } from "./product-constant";

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
type Reaction = readonly [terms: readonly Term[], shares: readonly Share[]];

/** How a species is formed from others; its row is read when it is asked for. */
interface Formation {
  readonly formula: string;
  readonly reaction: () => Reaction;
  /** Place among all species. */
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

/** Acids that water levels: their steps carry nominal figures and are left out. */
const LEVELLED = -0.9;
/** Complexes that do not come apart in water in any time a bench cares for: components of their own. */
const INERT = new Set(["Fe(CN)6^4-", "Fe(CN)6^3-", "Co(NH3)6^3+", "Co(C2H8N2)3^3+"]);

/**
 * All that may happen in water. A reaction keeps its atoms, so that what may come of some components has none but their elements:
 * rows of other elements are not read, and expressions are made on request and kept.
 */
export class Network {
  private readonly unread = new Map<string, Formation[]>();
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
    const elements = elementsIn(formula);
    const row = { formula, reaction: once(reaction), place: this.places++ };
    const before = this.unread.get(elements);
    if (before === undefined) this.unread.set(elements, [row]);
    else before.push(row);
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
    for (const row of rows) {
      const key = keyOf(row.formula);
      const before = this.formations.get(key);
      if (before === undefined) keys.push(key);
      this.formations.set(key, before === undefined ? row : { ...row, place: before.place });
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

/** Ionic product of water as the tables use it, and how it moves with the temperature. */
export const PKW = /* @__PURE__ */ constant("pKw", "ionic product of water, 25 °C", "14.00", 0.01, {
  source: "epaEquilibria",
});

/** pKw at a temperature: that of 25 °C and the published difference. */
export function waterShift(celsius: number): number {
  const at = (t: number): number => {
    const above = WATER_IONIZATION.findIndex((row) => row.celsius >= t);
    const [a, b] = [WATER_IONIZATION[Math.max(0, above - 1)]!, WATER_IONIZATION[above]!];
    if (a.celsius === b.celsius) return Number(a.pKw);
    return Number(a.pKw) + ((Number(b.pKw) - Number(a.pKw)) * (t - a.celsius)) / (b.celsius - a.celsius);
  };
  return at(celsius) - at(25);
}

/** Does the source say at which ionic strength it was measured? */
const isTransferable = ({ ionicStrength }: ComplexStep): boolean =>
  ionicStrength === undefined || Number.isFinite(Number(ionicStrength));

/**
 * A stability constant brought to zero ionic strength with the activity model used here; undefined where the source does
 * not say at which it was measured.
 */
function atZeroIonicStrength(
  step: ComplexStep,
  metalCharge: number,
  ligandCharge: number,
  complexCharge: number,
): number | undefined {
  if (step.ionicStrength === undefined) return Number(step.logBeta);
  if (!isTransferable(step)) return undefined;
  const ionic = Number(step.ionicStrength);
  const squares = metalCharge ** 2 + step.n * ligandCharge ** 2 + (step.protons ?? 0) - complexCharge ** 2;
  return Number(step.logBeta) + (debyeHueckelSlope(25) / Math.LN10) * daviesTerm(ionic) * squares;
}

const heatOf = (heats: Readonly<Record<string, string>>, key: string): number | undefined =>
  heats[key] === undefined ? undefined : Number(heats[key]);

function addAcids(network: Network, hydrolysed: ReadonlySet<Key>): void {
  for (const row of ACID_STEPS()) {
    if (Number(row.pKa) < LEVELLED || row.acid === "H3O+") continue;
    const pKa = (): Constant =>
      constant(
        `pKa(${row.acid})`,
        `pKa of ${row.name}, step ${row.step}, 25 °C`,
        row.pKa,
        spreadOf(row.range, row.doubtful) * (row.range === undefined && row.doubtful !== true ? 0.2 : 1),
        { source: row.source, doubtful: row.doubtful ?? false, enthalpy: heatOf(ACID_HEATS, row.acid) },
      );
    if (isMetalCation(row.acid)) {
      // hydroxide complexes of the other table are the fuller account of the same thing
      if (hydrolysed.has(keyOf(row.acid))) continue;
      network.form(row.base, () => [
        [
          [1, row.acid],
          [-1, HYDRON],
        ],
        [[pKa(), -1]],
      ]);
    } else
      network.form(row.acid, () => [
        [
          [1, row.base],
          [1, HYDRON],
        ],
        [[pKa(), 1]],
      ]);
  }
}

function complexReaction({ metal, ligand }: ComplexRow, step: ComplexStep): Reaction {
  const logBeta = atZeroIonicStrength(step, chargeOf(metal), chargeOf(ligand), chargeOf(step.complex))!;
  const elsewhere = step.celsius !== undefined || step.ionicStrength !== undefined;
  const beta = constant(
    `log β(${step.complex})`,
    `stability constant of ${step.complex}, ${step.celsius ?? 25} °C${
      step.ionicStrength === undefined ? "" : `, brought from ${step.ionicStrength} mol/L to zero ionic strength`
    }`,
    logBeta.toFixed(2),
    Math.max(spreadOf(step.range, step.doubtful), elsewhere ? 0.2 : 0),
    { source: step.source, doubtful: step.doubtful ?? false, enthalpy: heatOf(FORMATION_HEATS, step.complex) },
  );
  const protons: Term[] = step.protons === undefined ? [] : [[step.protons, HYDRON]];
  return [[[1, metal], [step.n, ligand], ...protons], [[beta, 1]]];
}

function addComplexes(network: Network): Set<Key> {
  const hydrolysed = new Set<Key>();
  for (const row of COMPLEXES()) {
    if (row.ligand === "OH-") hydrolysed.add(keyOf(row.metal));
    for (const step of row.steps)
      if (!INERT.has(step.complex) && isTransferable(step))
        network.form(step.complex, () => complexReaction(row, step));
  }
  return hydrolysed;
}

function addFormations(network: Network): void {
  for (const row of FORMATIONS())
    network.form(row.species, () => {
      const { left, right } = readReaction(row.reaction);
      const key = keyOf(row.species);
      const beside = right.filter(([, species]) => keyOf(species) !== key);
      const logK = constant(
        `log K(${row.species})`,
        `formation of ${row.species}, 25 °C`,
        row.logK,
        spreadOf(undefined, row.doubtful),
        { source: row.source, doubtful: row.doubtful ?? false, enthalpy: heatOf(FORMATION_HEATS, row.species) },
      );
      return [[...left, ...beside.map(([count, species]): Term => [-count, species])], [[logK, 1]]];
    });
}

/** A solid may stand this far outside the figures of its curve, °C: another hydrate decides there. */
const BEYOND = 4.9;

/** Ions the network cannot place: BiO+ is written without its relation to Bi3+. */
const UNPLACED = "BiO+";

function solubleReaction({ solid, name, dissolution, points }: SolubleRow): Reaction {
  const values = points.map(([celsius, pKsp]) => [celsius, Number(pKsp)] as const);
  const nearest = values.reduce((a, b) => (Math.abs(b[0] - 25) < Math.abs(a[0] - 25) ? b : a));
  const product = constant(
    `pKsp(${solid})`,
    `pKsp of ${name} (${solid}), fitted to its solubility curve`,
    nearest[1].toFixed(3),
    LONE_SPREAD,
    { points: values },
  );
  return [readReaction(`${solid} -> ${dissolution}`).right, [[product, -1]]];
}

function addPhases(network: Network): void {
  for (const row of SOLUBILITY_PRODUCTS()) {
    if (row.convention === "free-sulfide" || row.dissolution.split(" ").includes(UNPLACED)) continue;
    const { solid: formula, name, form } = row;
    const notes = row.note === undefined ? [] : [row.note];
    network.addPhase({ kind: "solid", formula, name, form, row, notes }, () => {
      const { left, right } = readReaction(row.dissolution);
      const ions = [...right, ...left.slice(1).map(([count, species]): Term => [-count, species])];
      return [ions, [[productConstant(row), -1]]];
    });
  }
  for (const row of SOLUBLE()) {
    const { solid: formula, name, points } = row;
    const serves = [points[0]![0] - BEYOND, points.at(-1)![0] + BEYOND] as const;
    network.addPhase({ kind: "solid", formula, name, form: undefined, row: undefined, serves, notes: [] }, () =>
      solubleReaction(row),
    );
  }
  for (const row of HENRY)
    network.addPhase(
      { kind: "gas", formula: row.gas, name: row.gas, form: undefined, row: undefined, notes: [] },
      () => {
        const henry = constant(`log KH(${row.gas})`, `Henry constant of ${row.gas}, 25 °C`, row.logK, 0.02, {
          source: row.source,
          enthalpy: Number(row.enthalpy),
        });
        return [[[1, row.dissolved]], [[henry, 1]]];
      },
    );
}

/** Conversions that need no constant. */
export function addConversions(network: Network): void {
  for (const { given, reaction } of IN_WATER) {
    const { left, right } = readReaction(reaction);
    network.convert(given, [...right, ...left.slice(1).map(([count, species]): Term => [-count, species])]);
  }
}

/** A network of all tables. */
export function wholeNetwork(): Network {
  const made = new Network();
  made.form("OH-", () => [[[-1, HYDRON]], [[PKW, -1]]]);
  addConversions(made);
  const hydrolysed = addComplexes(made);
  addAcids(made, hydrolysed);
  addFormations(made);
  addPhases(made);
  return made;
}

let whole: Network | undefined;

/** The network of all tables, made once. */
export const network = (): Network => (whole ??= wholeNetwork());

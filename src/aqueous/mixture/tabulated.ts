// The network of all tables: acids, complexes, other formations, solids, gases, and the water itself.
import { elementsIn } from "../../formula/internal";
import { ACID_STEPS, isMetalCation, WATER_IONIZATION } from "../../ion/internal";
import { COMPLEXES, type ComplexRow, type ComplexStep } from "../data/complexes";
import { FORMATIONS, HENRY, IN_WATER } from "../data/formations";
import { ACID_HEATS, FORMATION_HEATS } from "../data/heats";
import { SOLUBILITY_PRODUCTS } from "../data/products";
import { SOLUBLE, type SolubleRow } from "../data/soluble";
import { daviesTerm, debyeHueckelSlope } from "../solve/davies";
import { type Constant, constant, LONE_SPREAD, spreadOf } from "./constant";
import { Network, type Reaction } from "./network";
import { chargeOf, dissolutionOf, HYDRON, type Key, keyOf, readReaction, type Term } from "./notation";
import { productConstant } from "./product-constant";

/** Acids that water levels: their steps carry nominal figures and are left out. */
const LEVELLED = -0.9;
/** Complexes that do not come apart in water in any time a bench cares for: components of their own. */
const INERT = new Set(["Fe(CN)6^4-", "Fe(CN)6^3-", "Co(NH3)6^3+", "Co(C2H8N2)3^3+"]);

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
    // a complex has the elements of its metal and its ligand
    network.formKin(elementsIn(row.metal + row.ligand), row.steps.length, () =>
      row.steps
        .filter((step) => !INERT.has(step.complex) && isTransferable(step))
        .map((step) => ({ formula: step.complex, reaction: () => complexReaction(row, step) })),
    );
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
      const { left, right } = readReaction(dissolutionOf(row));
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

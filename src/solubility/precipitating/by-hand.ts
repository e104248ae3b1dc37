// The reactions of a calculation by hand: the solid, the ions of water, and what the question names besides. The same engine
// solves them as everything else, with concentrations for activities; nothing here is a solver.

import { givenConstant, HYDRON, keyOf, Network, network, PKW, type Term } from "../../aqueous/internal";
import { once } from "../../foundation/memo";
import type { Quantity } from "../../quantity";
import type { DissolvedIon } from "./product";
import type { Way } from "./way";

/** A solid with its own constant alone. */
interface HandProduct {
  readonly solid: string;
  readonly form: string | undefined;
  readonly ions: readonly DissolvedIon[];
  readonly pKsp: Quantity;
}

/** What is counted besides. */
interface HandOptions {
  /** The solution is held at a pH: each ion stands beside its protonated forms and its hydroxide complexes of one metal ion. */
  readonly held?: boolean;
  /** Ligands whose complexes with the metal are counted. */
  readonly ligands?: readonly string[];
  /** Power of ten on Ksp by activity coefficients at an ionic strength the caller states. */
  readonly exponent?: number;
}

const kept = /* @__PURE__ */ new WeakMap<Quantity, Map<string, Way>>();

/** The reactions a question by hand is answered with, kept for the next question of the kind. */
export function byHandWay(product: HandProduct, options: HandOptions = {}): Way {
  const ways = kept.get(product.pKsp) ?? new Map<string, Way>();
  kept.set(product.pKsp, ways);
  const id = JSON.stringify([options.held ?? false, options.ligands ?? [], options.exponent ?? 0]);
  let way = ways.get(id);
  if (way === undefined) {
    way = { reactions: reactionsOf(product, options), activity: "ideal" };
    ways.set(id, way);
  }
  return way;
}

function reactionsOf(
  { solid, form, ions, pKsp }: HandProduct,
  { held = false, ligands = [], exponent = 0 }: HandOptions,
): Network {
  const made = new Network(false);
  made.form("OH-", () => [[[-1, HYDRON]], [[PKW, -1]]]);
  if (held) for (const { formula } of ions) if (keyOf(formula) !== keyOf("OH-")) addForms(made, formula);
  const metal = ions.find(({ charge }) => charge > 0)?.formula;
  if (metal !== undefined) for (const ligand of ligands) addComplexes(made, metal, ligand);
  const symbol = `pKsp(${solid})`;
  const constant = exponent === 0 ? pKsp : pKsp.minus(exponent.toPrecision(12)).named({ symbol: `${symbol}′` });
  made.addPhase({ kind: "solid", formula: solid, name: solid, form, row: undefined, notes: [] }, () => [
    ions.map(({ count, formula }): Term => [count, formula]),
    [[givenConstant(symbol, `pKsp of ${solid}`, constant), -1]],
  ]);
  return made;
}

/** All that one ion turns into with the hydrons and the hydroxide of water. */
function addForms(made: Network, ion: string): void {
  const tables = network();
  const own = [...tables.express(ion).of.keys()].find((key) => key !== HYDRON);
  if (own === undefined) return;
  made.bring(
    tables,
    [own],
    ({ of }) => of.get(own) === 1 && [...of.keys()].every((key) => key === own || key === HYDRON),
  );
}

/** Carbonic acid and water, nothing else. */
export const ofCarbonicAcid = /* @__PURE__ */ once(() => {
  const made = new Network(false);
  made.form("OH-", () => [[[-1, HYDRON]], [[PKW, -1]]]);
  addForms(made, "CO3^2-");
  return made;
});

/** Complexes of a metal with any number of one ligand, and nothing else in them. */
function addComplexes(made: Network, metal: string, ligand: string): void {
  made.bring(
    network(),
    [keyOf(metal), keyOf(ligand)],
    (_, from) => from.length === 2 && keyOf(from[0]![1]) === keyOf(metal) && keyOf(from[1]![1]) === keyOf(ligand),
  );
}

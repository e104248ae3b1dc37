// Random systems built like chemistry: metals with hydroxide complexes and hydroxides, ligands with their protons,
// complexes, salts and hydroxide salts. Constants are drawn; nothing is taken from a table.
import { type Composition, type ConditionRow, type SpeciesRow, systemOf } from "../../src/aqueous/solve/system";

export interface RandomSystem {
  readonly components: readonly number[];
  readonly species: readonly SpeciesRow[];
  readonly conditions: readonly ConditionRow[];
  readonly totals: readonly number[];
}

/** Numbers in [0, 1) from a seed (Numerical Recipes' linear congruence). */
export function numbersFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state * 1664525 + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

export function randomSystem(random: () => number): RandomSystem {
  const pick = (list: readonly number[]): number => list[Math.floor(random() * list.length)]!;
  const metals = 1 + Math.floor(random() * 3);
  const ligands = 1 + Math.floor(random() * 3);
  const components = [
    1,
    ...Array.from({ length: metals }, () => pick([1, 2, 2, 2, 3])),
    ...Array.from({ length: ligands }, () => pick([0, -1, -1, -2, -2, -3])),
  ];
  const species: SpeciesRow[] = [];
  const conditions: ConditionRow[] = [];
  const add = (logK: number, charge: number, nu: Composition): void => {
    species.push({ lnK: logK * Math.LN10, charge, nu });
  };
  const solid = (logK: number, nu: Composition): void => {
    conditions.push({ kind: "solid", lnK: logK * Math.LN10, nu });
  };
  add(-14, -1, [[0, -1]]);
  for (let c = 1; c <= metals; c += 1) {
    const z = components[c]!;
    let logK = -(random() * 10 + (z === 3 ? 1 : 4));
    for (let h = 1; h <= 4; h += 1) {
      add(logK, z - h, [
        [c, 1],
        [0, -h],
      ]);
      logK -= 4 + random() * 8;
    }
    solid((5 - random() * 5) * z, [
      [c, 1],
      [0, -z],
    ]);
  }
  for (let c = metals + 1; c <= metals + ligands; c += 1) {
    const z = components[c]!;
    let logK = 0;
    for (let h = 1; h <= Math.max(1, -z); h += 1) {
      logK += (random() * 12) / h;
      add(logK, z + h, [
        [c, 1],
        [0, h],
      ]);
    }
    for (let metal = 1; metal <= metals; metal += 1) {
      const charge = components[metal]!;
      let logBeta = 0;
      const steps = Math.floor(random() * 5);
      for (let n = 1; n <= steps; n += 1) {
        logBeta += random() * 6 - 1;
        add(logBeta, charge + n * z, [
          [metal, 1],
          [c, n],
        ]);
      }
      if (z >= 0 || random() > 0.7) continue;
      solid(-(random() * 15 + 1), [
        [metal, -z],
        [c, charge],
      ]);
      if (random() < 0.4) {
        solid(7 - random() * 15, [
          [metal, 1 - z],
          [c, charge],
          [0, -charge],
        ]);
      }
    }
  }
  const totals = components.map((_, j) => (j === 0 ? (random() - 0.5) * 0.4 : 10 ** (-6 + random() * 5.7)));
  return { components, species, conditions, totals };
}

export const built = (rows: RandomSystem) => systemOf(rows);

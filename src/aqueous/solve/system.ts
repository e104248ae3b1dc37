// An aqueous system as pure numbers: components, species made of them, and conditions on their activities. A condition is
// a solid that may stand (its saturation cannot be passed), a gas that may leave (its pressure cannot be passed), or
// something held (a pH, the pressure of the air). All three are one row of numbers; only the sign of the amount differs.

/** [component, how many of it]. */
export type Composition = readonly (readonly [component: number, count: number])[];

/** A dissolved species: ln activity = lnK + sum of count × ln activity of the components. */
export interface SpeciesRow {
  readonly lnK: number;
  readonly charge: number;
  readonly nu: Composition;
}

/** A condition on a product of activities. */
export interface ConditionRow {
  /** `solid` and `gas`: the product stays at or below exp(lnK). `held`: it equals exp(lnK), whatever must be added. */
  readonly kind: "solid" | "gas" | "held";
  readonly lnK: number;
  readonly nu: Composition;
}

/** The whole problem but for the totals. */
export interface SystemRows {
  /** Charges of the components; a component is itself the species of the same number, with lnK 0. */
  readonly components: readonly number[];
  /** The species beside the components. */
  readonly species: readonly SpeciesRow[];
  readonly conditions: readonly ConditionRow[];
}

/** The rows as arrays of doubles, one after the other: components, further species, conditions. */
export interface System {
  /** Components. */
  readonly n: number;
  /** Species, components included. */
  readonly m: number;
  /** Conditions. */
  readonly s: number;
  /** (m + s) × n. */
  readonly nu: Float64Array;
  /** m + s. */
  readonly lnK: Float64Array;
  /** m. */
  readonly charge: Float64Array;
  /** Is the condition an equality? */
  readonly held: Uint8Array;
  /** Can the condition bind at all? Of solids of one composition only the least soluble can. */
  readonly open: Uint8Array;
  /** Does some species hold less than none of the component, so that its total may have either sign? */
  readonly twoSided: Uint8Array;
}

/** Put the rows of a problem into arrays. */
export function systemOf({ components, species, conditions }: SystemRows): System {
  const [n, m, s] = [components.length, components.length + species.length, conditions.length];
  const nu = new Float64Array((m + s) * n);
  const lnK = new Float64Array(m + s);
  const charge = new Float64Array(m);
  const twoSided = new Uint8Array(n);
  const held = new Uint8Array(s);
  const open = new Uint8Array(s).fill(1);
  for (let j = 0; j < n; j += 1) {
    nu[j * n + j] = 1;
    charge[j] = components[j]!;
  }
  const fill = (row: number, composition: Composition, constant: number): void => {
    lnK[row] = constant;
    for (const [j, count] of composition) nu[row * n + j]! += count;
  };
  for (const [i, row] of species.entries()) {
    fill(n + i, row.nu, row.lnK);
    charge[n + i] = row.charge;
    for (const [j, count] of row.nu) if (count < 0) twoSided[j] = 1;
  }
  const least = new Map<string, number>();
  for (const [i, row] of conditions.entries()) {
    fill(m + i, row.nu, row.lnK);
    if (row.kind === "held") {
      held[i] = 1;
      for (const [j] of row.nu) twoSided[j] = 1;
      continue;
    }
    const key = nu.subarray((m + i) * n, (m + i + 1) * n).join();
    const rival = least.get(key);
    if (rival !== undefined && lnK[m + rival]! <= row.lnK) open[i] = 0;
    else {
      if (rival !== undefined) open[rival] = 0;
      least.set(key, i);
    }
  }
  return { n, m, s, nu, lnK, charge, held, open, twoSided };
}

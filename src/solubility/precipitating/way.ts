// A question of one solid put to the engine: with all that the tables know, or with the reactions of a calculation by hand.
// The readings taken off the answer are the same for both.

import { type AqueousComposition, AqueousError, type AqueousRequest, type SolidsAllowed } from "../../aqueous";
import {
  chargeOf,
  compositionBy,
  type Equilibrium,
  HYDRON,
  keyOf,
  molesOf,
  type Network,
  originOf,
  refuseTooStrong,
  solveMoles,
  waterMoles,
} from "../../aqueous/internal";
import { attempt } from "../../foundation/error";
import { type NumberLike, type Quantity, quantity } from "../../quantity";
import type { DissolvedIon, SolubilityProduct } from "./product";

/** What a mixture is solved with. */
export interface Way {
  /** Reactions of a calculation by hand; undefined for all of the tables. */
  readonly reactions: Network | undefined;
  readonly activity: "Davies" | "ideal";
}

/** What figures rest on. */
export type EquilibriumBasis = "equilibrium" | "ideal" | "hand calculation";

/** Everything counted; and the same for liquors too strong for the activity model. */
const COUNTED: Way = { reactions: undefined, activity: "Davies" };
const WITHOUT_ACTIVITIES: Way = { reactions: undefined, activity: "ideal" };

/** What is said of an answer that does not count all. */
export const SAID_OF: Readonly<Record<EquilibriumBasis, readonly string[]>> = {
  equilibrium: [],
  ideal: ["too strong for the activity model: protons and complexes are counted, activities taken as concentrations"],
  "hand calculation": ["too strong for the activity model, or not all of it known: calculated by hand only"],
};

/** The answer of the first way that has one. */
export function firstAnswer<T>(
  ask: (way: Way) => T | undefined,
  byHand: () => T,
): { readonly basis: EquilibriumBasis; found: T } {
  for (const [basis, way] of [
    ["equilibrium", COUNTED],
    ["ideal", WITHOUT_ACTIVITIES],
  ] as const) {
    const outcome = attempt(() => ask(way));
    if (outcome.ok && outcome.value !== undefined) return { basis, found: outcome.value };
    if (!outcome.ok && !(outcome.error instanceof AqueousError)) throw outcome.error;
  }
  return { basis: "hand calculation", found: byHand() };
}

/** An ion with its amount in the mixture. */
export interface MixedIon {
  readonly formula: string;
  readonly amount: Quantity;
}

/** Ions that only balance charges. */
const BYSTANDERS = { positive: "C4H12N+", negative: "ClO4-" } as const;

/** What a list of ions lacks in charge, as an ion that does nothing else; none of the other one. */
function balancing(ions: readonly MixedIon[]): MixedIon[] {
  let charge = 0;
  for (const { formula, amount } of ions) charge += chargeOf(formula) * amount.toNumber("mol");
  const moles = (n: number): Quantity => quantity({ value: n === 0 ? "0" : n.toPrecision(12), unit: "mol" });
  return [
    { formula: BYSTANDERS.negative, amount: moles(Math.max(0, charge)) },
    { formula: BYSTANDERS.positive, amount: moles(Math.max(0, -charge)) },
  ];
}

/** A salt that does nothing but make an ionic strength. */
export function inert(ionicStrength: number): MixedIon[] {
  if (ionicStrength === 0) return [];
  const amount = quantity({ value: ionicStrength.toPrecision(12), unit: "mol" });
  return [BYSTANDERS.positive, BYSTANDERS.negative].map((formula) => ({ formula, amount }));
}

/** How one form of a solid is named among the solids that may stand. */
export const nameOfForm = ({ solid, form }: { readonly solid: string; readonly form: string | undefined }): string =>
  form === undefined ? solid : `${solid} (${form})`;

/** A mixture of ions, with the solids that may stand in it; `more` is put in besides, as it is. */
export function mixtureOf(
  way: Way,
  {
    ions,
    volume,
    pH,
    only,
    solid,
  }: {
    readonly ions: readonly MixedIon[];
    readonly volume: Quantity;
    readonly pH?: NumberLike | undefined;
    readonly only: readonly string[];
    /** Formula units of a solid put in, as its ions. */
    readonly solid?: { readonly ions: readonly DissolvedIon[]; readonly moles: number } | undefined;
  },
): AqueousComposition {
  const put: MixedIon[] = (solid?.ions ?? []).map(({ formula, count }) => ({
    formula,
    amount: quantity({ value: (count * solid!.moles).toPrecision(15), unit: "mol" }),
  }));
  const solids: SolidsAllowed = { only };
  return compositionBy(
    {
      water: volume as Quantity<"volume">,
      dissolved: [...ions, ...balancing(ions), ...put] as unknown as AqueousRequest["dissolved"],
      solids,
      activity: way.activity,
      ...(pH === undefined ? {} : { pH }),
    },
    way.reactions,
  );
}

/** The ion activity product of a solid, as the ions of its row; undefined where one of them is not there. */
export function productIn(composition: AqueousComposition, ions: readonly DissolvedIon[]): Quantity | undefined {
  const { maker } = originOf(composition);
  const weights: (readonly [number, number])[] = [];
  const ln = lnProduct(composition, ions, weights);
  const value = Math.exp(ln);
  if (!(value > 0 && Number.isFinite(value))) return undefined;
  return maker.make(value, "", { lnActivity: weights }, value, {
    symbol: "Q",
    label: "ion activity product",
    rule: "product of activities^count",
  });
}

function lnProduct(
  composition: AqueousComposition,
  ions: readonly DissolvedIon[],
  weights?: (readonly [number, number])[],
): number {
  const { model, solution } = originOf(composition).solved;
  let ln = 0;
  for (const { formula, count } of ions) {
    const key = keyOf(formula);
    const i = model.species.findIndex((one) => keyOf(one.formula) === key);
    if (i < 0) return Number.NEGATIVE_INFINITY;
    weights?.push([i, count]);
    ln += count * solution.lnActivity[i]!;
  }
  return ln;
}

/**
 * Plain readings of many mixtures of one kind: another pH, or another amount of one ion (mol), and all else as in the first one.
 * Nothing is made into figures on the way.
 */
export class Series {
  private readonly read: ReturnType<typeof originOf>["read"];
  private readonly scale: number[];
  private readonly charges: readonly number[];
  private readonly bystanders: readonly [negative: number, positive: number];
  private readonly places: readonly (readonly [species: number, count: number])[];
  private readonly varied: number;
  private begun = false;

  constructor(
    readonly first: AqueousComposition,
    private readonly product: SolubilityProduct,
    varied: "pH" | { readonly ion: string },
  ) {
    const { read, solved } = originOf(first);
    this.read = read;
    this.scale = read.brought.map(({ ingredient }) => ingredient.amount.toNumber("mol"));
    this.charges = read.brought.map(({ charge }) => charge);
    const at = (formula: string): number =>
      read.brought.findIndex(({ ingredient }) => keyOf(ingredient.formula) === keyOf(formula));
    this.bystanders = [at(BYSTANDERS.negative), at(BYSTANDERS.positive)];
    this.varied = varied === "pH" ? -1 : at(varied.ion);
    this.places = product.ions.map(({ formula, count }) => [
      solved.model.species.findIndex((one) => keyOf(one.formula) === keyOf(formula)),
      count,
    ]);
  }

  /** Solve for one place; the readings are then of it. */
  private solve(x: number): Equilibrium {
    const { model, brought, water, ideal } = this.read;
    const { equilibrium, heldPH } = model;
    if (this.varied < 0) equilibrium.system.lnK[equilibrium.system.m + heldPH] = -x * Math.LN10;
    else {
      this.scale[this.varied] = x;
      const [negative, positive] = this.bystanders;
      this.scale[negative] = 0;
      this.scale[positive] = 0;
      const charge = this.scale.reduce((sum, moles, i) => sum + moles * this.charges[i]!, 0);
      this.scale[negative] = Math.max(0, charge);
      this.scale[positive] = Math.max(0, -charge);
    }
    const warm = this.begun;
    this.begun = true;
    solveMoles(model, molesOf(model, brought, this.scale), waterMoles(water, brought, this.scale), ideal, warm);
    if (!ideal) refuseTooStrong(equilibrium.tableau.ionicStrength);
    return equilibrium;
  }

  /** Has every ion of the solid a place among the reactions? */
  get isPlaced(): boolean {
    return this.places.every(([species]) => species >= 0);
  }

  /** log10(Q/K) of the solid. */
  indexAt(x: number): number {
    const equilibrium = this.solve(x);
    let ln = 0;
    for (const [species, count] of this.places) ln += count * equilibrium.lnActivityOf(species);
    return ln / Math.LN10 + this.product.pKsp.toNumber();
  }

  /** An ion in all its dissolved forms, mol/L. */
  allAt(x: number, ion: string): number {
    const { tableau } = this.solve(x);
    const key = componentOf(this.first, ion) ?? "";
    const whole = this.read.network.express(ion).of.get(key) ?? 1;
    let sum = 0;
    for (const [i, { expression }] of this.read.model.species.entries())
      sum += ((expression.of.get(key) ?? 0) / whole) * tableau.c[i]!;
    return sum;
  }

  /** The free ion, mol/L. */
  freeAt(x: number, ion: string): number {
    const { tableau } = this.solve(x);
    const i = this.read.model.species.findIndex((one) => keyOf(one.formula) === keyOf(ion));
    return i < 0 ? 0 : tableau.c[i]!;
  }
}

/** The component of the engine that an ion is counted by. */
const componentOf = (composition: AqueousComposition, ion: string): string | undefined =>
  [...originOf(composition).read.network.express(ion).of.keys()].find((key) => key !== HYDRON);

/** A free ion, mol/L at a kilogram of water a litre. */
export function freeIn(composition: AqueousComposition, ion: string, label: string): Quantity<"concentration"> {
  const { solved, maker } = originOf(composition);
  const { model, solution } = solved;
  const i = model.species.findIndex((one) => keyOf(one.formula) === keyOf(ion));
  const value = i < 0 ? 0 : solution.molality[i]!;
  return maker.make(value, "mol/L", { molality: i < 0 ? [] : [[i, 1]] }, 1, {
    symbol: `c(${ion})`,
    label,
  }) as Quantity<"concentration">;
}

/** An ion in all its dissolved forms; undefined for hydroxide, which the pH tells. */
export function allIn(
  composition: AqueousComposition,
  ion: string,
  label: string,
): Quantity<"concentration"> | undefined {
  const key = componentOf(composition, ion);
  if (key === undefined) return undefined;
  // dichromate holds two chromates
  const whole = originOf(composition).read.network.express(ion).of.get(key)!;
  const { solved, maker } = originOf(composition);
  const { model, solution } = solved;
  const weights: (readonly [number, number])[] = [];
  let sum = 0;
  for (const [i, { expression }] of model.species.entries()) {
    const count = expression.of.get(key) ?? 0;
    if (count === 0) continue;
    weights.push([i, count / whole]);
    sum += (count / whole) * solution.molality[i]!;
  }
  return maker.make(sum, "mol/L", { molality: weights }, 1, {
    symbol: `c(${ion})`,
    label,
    rule: "sum of all dissolved forms at equilibrium",
  }) as Quantity<"concentration">;
}

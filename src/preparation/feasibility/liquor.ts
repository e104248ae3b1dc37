// A liquor with several salts in it: its ions, and at how much water each of their pairings begins to precipitate.
import { molarMass, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import { trySolubilityOf } from "../../solubility";
import { type Pairing, type PooledIon, saturatedProduct } from "../../solubility/internal";
import { fateOf } from "../reaction/fate";
import { sameCore } from "../reaction/species";
import type { Case } from "./case";

export type Temperature = Quantity<"temperature">;

/** Ions below this amount for one mole of product are a trace. */
const TRACE = 0.05;

/** Ions of water, or that become such: they make no salt. */
const OF_WATER: ReadonlySet<string> = /* @__PURE__ */ new Set(["H+", "OH-", "O^2-"]);

/** Ions of the liquor after the reaction, gases and solids left out. */
export function ionsOf(c: Case): PooledIon[] {
  const pool = new Map<string, PooledIon>();
  const take = (formula: Parameters<typeof constitutionOf>[0], moles: number): void => {
    const { inWater, acid, kind } = constitutionOf(formula);
    if (kind !== "salt" && acid?.strong !== true) return;
    for (const ion of inWater) {
      if (OF_WATER.has(ion.formula)) continue;
      const before = pool.get(ion.formula)?.moles ?? 0;
      pool.set(ion.formula, {
        formula: ion.formula,
        charge: ion.charge,
        moles: before + ion.count * moles,
        from: new Set([ion.formula]),
      });
    }
  };
  for (const { species, moles, gas } of c.made)
    if (!gas && (species === c.product.species || fateOf(species.formula, c.setting.temperature).precipitated !== true))
      take(species.formula, moles);
  for (const { species, left } of c.put)
    if (left > TRACE && fateOf(species.formula, c.setting.temperature).precipitated !== true)
      take(species.formula, left);
  return [...pool.values()].filter(({ moles }) => moles > TRACE);
}

const products = /* @__PURE__ */ remembering<number | undefined>(500);

/** ln of the ion product of a saturated solution, remembered: the curves are the slow part of a liquor. */
const lnProductOf = (pairing: Pairing, at: Temperature): number | undefined =>
  products(`${pairing.formula} ${at.value} ${at.unit}`, () => saturatedProduct(pairing, at)?.lnK);

/** kg of water below which a pairing begins to precipitate; undefined without a figure. */
export function waterOf(pairing: Pairing, at: Temperature): number | undefined {
  const lnK = lnProductOf(pairing, at);
  if (lnK === undefined) return undefined;
  let [counts, logs] = [0, 0];
  for (const { ion, count } of pairing.ions) {
    counts += count;
    logs += count * Math.log(ion.moles);
  }
  return Math.exp((logs - lnK) / counts);
}

export const isOf = (pairing: Pairing, c: Case): boolean =>
  sameCore(parseFormula(pairing.formula), c.product.species.formula);

/** The product as a molecule that no pairing makes, as boric acid. */
function moleculeWater({ product }: Case, at: Temperature): number | undefined {
  if (product.made.kind === "salt") return undefined;
  const found = trySolubilityOf(product.species.formula, at);
  if (!found.ok) return undefined;
  return molarMass(product.species.formula).toNumber("g/mol") / (10 * found.value.perHundredGramsWater.toNumber("g"));
}

export interface Ranked {
  readonly formula: string;
  readonly pairing: Pairing | undefined;
  readonly water: number;
  readonly wanted: boolean;
}

export function ranked(c: Case, pairings: readonly Pairing[], at: Temperature): Ranked[] {
  const list = pairings.flatMap((pairing): Ranked[] => {
    const water = waterOf(pairing, at);
    return water === undefined ? [] : [{ formula: pairing.formula, pairing, water, wanted: isOf(pairing, c) }];
  });
  const own = moleculeWater(c, at);
  if (own !== undefined) list.push({ formula: c.product.species.name, pairing: undefined, water: own, wanted: true });
  return list.sort((a, b) => b.water - a.water);
}

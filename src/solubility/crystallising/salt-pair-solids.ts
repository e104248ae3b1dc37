// Whether a salt pair parts as it is asked to, or a third solid precipitates: the salts put in, where the swap runs back, what a
// proton handed on makes, or a double salt.

import type { MassLike, TemperatureLike } from "../../amount";
import { type Formula, molarMass } from "../../formula";
import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { type Solute, soluteOf } from "../curves/solute";
import { SolubilityError } from "../error";
import { type SaltIon, saltIons } from "../precipitating/ions";
import {
  doubtfulPairings,
  isMade,
  type Pairing,
  type PooledIon,
  pairingsOf,
  saturatedProduct,
} from "../precipitating/pairings";

/** A salt that is put in, as weighed. */
export interface PutIn {
  /** As weighed, crystal water included. */
  readonly formula: string | Formula;
  /** As weighed. */
  readonly mass: MassLike;
}

/** @internal The ions of a salt; refuses what is none. */
export function ionsOf(solute: Solute): readonly SaltIon[] {
  const ions = saltIons(solute.anhydrous);
  if (ions !== undefined) return ions;
  throw new SolubilityError("solubility.not-a-salt", `${solute.formula} is not a salt of known ions`, {
    input: solute.formula.toString(),
    position: 0,
  });
}

/** The ions put in, each with the salts that bring it. */
export function pooled(from: readonly PutIn[]): PooledIon[] {
  const ions = new Map<string, PooledIon>();
  for (const { formula, mass } of from) {
    const solute = soluteOf(formula);
    const units = Number(solute.units.n) / Number(solute.units.d);
    const moles =
      (units * expectDimension(mass, "mass", "mass").toNumber("g")) / molarMass(solute.formula).toNumber("g/mol");
    for (const { formula: ion, charge, count } of ionsOf(solute)) {
      const before = ions.get(ion);
      ions.set(ion, { formula: ion, charge, moles: (before?.moles ?? 0) + moles * count, from: new Set() });
    }
  }
  // from no salt: every pairing but the two that are planned for is judged, those that were put in as well
  return [...ions.values()];
}

/** Over-saturation, by the root of the number of ions, beyond which a salt of the unstable pair precipitates all the same. */
const FAR = 2;

/** Four ions, each uncertain by the 30 % that salts do to each other: what two pairs may differ without a verdict. */
const UNSURE = 4 * Math.log(1.3);

/** Does the swap run back at a temperature? Per equivalent, the ion products of the pair asked for exceed those of the other. */
function runsBack(own: readonly Solute[], brought: readonly PooledIon[], temperature: TemperatureLike): boolean {
  const perEquivalent = (pairing: Pairing): number => {
    const [cation] = pairing.ions;
    const product = saturatedProduct(pairing, temperature);
    return product === undefined ? Number.NaN : product.lnK / (cation!.count * cation!.ion.charge);
  };
  const simple = pairingsOf(brought).filter(
    ({ ions, doubleSalt }) => doubleSalt === undefined && !ions.some(({ ion }) => isMade(ion)),
  );
  const isOwn = ({ formula }: Pairing) => own.some(({ key }) => key === soluteOf(formula).key);
  const total = (pairings: readonly Pairing[]) => pairings.reduce((all, each) => all + perEquivalent(each), 0);
  // what cannot be compared counts as running back: nothing speaks for the swap
  return !(total(simple.filter(isOwn)) < total(simple.filter((each) => !isOwn(each))) + UNSURE);
}

/** What stands at a temperature. */
interface Stage {
  readonly solids: readonly Quantity[];
  readonly water: Quantity;
  readonly temperature: TemperatureLike;
}

/**
 * Refuse where the liquor left by the two salts is over-saturated with a third one: the salts put in, when the swap runs the
 * other way, what a proton handed on makes, or a double salt.
 */
export function needNoOther(
  own: readonly Solute[],
  brought: readonly PooledIon[],
  { solids, water, temperature }: Stage,
) {
  const gone = new Map<string, number>();
  own.forEach((solute, i) => {
    const moles = solids[i]!.toNumber("g") / molarMass(solute.anhydrous).toNumber("g/mol");
    for (const { formula, count } of ionsOf(solute)) gone.set(formula, (gone.get(formula) ?? 0) + moles * count);
  });
  const left = brought.map((ion) => ({ ...ion, moles: Math.max(0, ion.moles - (gone.get(ion.formula) ?? 0)) }));
  // the pair with the smaller product is the one that can stand together: of the salts put in only what is in large excess precipitates then
  const swap = brought.length === 4 ? runsBack(own, left, temperature) : true;
  const standing = own.filter((_, i) => !solids[i]!.isZero()).map(({ anhydrous }) => anhydrous.toString());
  const [third] = doubtfulPairings(left, water.toNumber("kg"), temperature, standing)
    .filter(({ formula, stays }) => stays !== "barely" && !own.some(({ key }) => key === soluteOf(formula).key))
    .filter(({ ions, saturation = FAR }) => swap || ions.length > 2 || ions.some(isMade) || saturation >= FAR)
    .sort((a, b) => (b.saturation ?? 0) - (a.saturation ?? 0));
  if (third === undefined) return;
  const at = expectDimension(temperature, "temperature", "temperature").to("°C").format({ uncertainty: "none" });
  throw new SolubilityError(
    "solubility.other-solid",
    `${third.stays === "no" ? "" : "perhaps "}${third.solidPhase} precipitates from these ions at ${at}, so the pair does not part as ${list(own.map(({ anhydrous }) => anhydrous.toString()))}`,
    {
      hint: third.why,
      details: {
        solid: third.solidPhase,
        stays: third.stays,
        saturation: third.saturation,
        wanted: own[0]!.formula.toString(),
      },
    },
  );
}

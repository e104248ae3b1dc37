// The other solids that the ions of a liquor may pair to, which do not clearly stay dissolved: by ion products, and by the
// equilibrium of the liquor where acids hand on their protons.

import type { TemperatureLike } from "../../amount";
import { molarMass } from "../../formula";
import { type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { type Solute, soluteOf } from "../curves/solute";
import { doubtfulPairings, ionsBrought, type PooledIon } from "../precipitating/pairings";
import { madeByProtons } from "./made-by-protons";

/** A solid that the ions of several substances pair to, and that does not clearly stay dissolved. */
export interface PairingOutcome {
  /** Without crystal water; a double salt as it precipitates. */
  readonly formula: string;
  /** "barely" within 30 % of saturation, "unknown" where no figure, product or rule speaks of it. */
  readonly stays: "barely" | "no" | "unknown";
  /** Anhydrous mass that precipitates; undefined unless it is known. */
  readonly excess: Quantity<"mass"> | undefined;
  /** Solid that would precipitate. */
  readonly solidPhase: string;
  /** Reason of the verdict, in words. */
  readonly why: string;
}

/** A salt that is in the liquor, and its anhydrous mass. */
interface PairedSalt {
  readonly solute: Solute;
  readonly dry: Quantity;
}

/** What else the ions pair to, where it does not clearly stay dissolved. */
export function pairingsAmong(
  all: readonly PairedSalt[],
  water: Quantity,
  temperature: TemperatureLike,
): PairingOutcome[] {
  const pool = new Map<string, PooledIon>();
  for (const { solute, dry } of all) {
    const moles = dry.toNumber("g") / molarMass(solute.anhydrous).toNumber();
    for (const { formula, charge, count } of ionsBrought(solute)) {
      const before = pool.get(formula);
      pool.set(formula, {
        formula,
        charge,
        moles: (before?.moles ?? 0) + moles * count,
        from: new Set([...(before?.from ?? []), solute.key]),
      });
    }
  }
  const named = new Set(all.map(({ solute }) => solute.key));
  const made = madeByProtons(
    all,
    [...pool.values()],
    water,
    expectDimension(temperature, "temperature", "temperature"),
  );
  const fallen = new Map(made.map((one) => [soluteOf(one.solid).key, one]));
  for (const key of named) fallen.delete(key);
  const byProtons = [...fallen.values()].map(({ solid, amount }): PairingOutcome => {
    const { anhydrous } = soluteOf(solid);
    return {
      formula: anhydrous.toString(),
      stays: "no",
      excess: amount
        .times(molarMass(anhydrous))
        .to("g")
        .named({
          symbol: `m(${anhydrous})`,
          label: `anhydrous ${anhydrous} that precipitates`,
          rule: "equilibrium of the liquor, acids and bases counted",
        }),
      solidPhase: solid,
      why: "the acid gives its anion up to the metal, by the equilibrium of the liquor",
    };
  });
  const others = doubtfulPairings([...pool.values()], water.toNumber("kg"), temperature).flatMap(
    ({ formula, stays, falls, solidPhase, why }): PairingOutcome[] => {
      const solute = soluteOf(formula);
      if (stays === "yes" || named.has(solute.key) || fallen.has(solute.key)) return [];
      const excess =
        falls === undefined
          ? undefined
          : quantity({ value: falls.toPrecision(6), unit: "mol" })
              .times(molarMass(solute.anhydrous))
              .to("g")
              .named({
                symbol: `m(${solute.anhydrous})`,
                label: `anhydrous ${solute.anhydrous} that precipitates`,
                rule: "ion product in mol/kg = that of its own saturated solution",
              });
      return [{ formula, stays, excess, solidPhase, why }];
    },
  );
  return [...others, ...byProtons];
}

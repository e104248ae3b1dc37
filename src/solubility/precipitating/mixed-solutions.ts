// Solutions that are poured together: what there is of each ion in the mixture, volumes taken as additive.

import type { VolumeLike } from "../../amount";
import type { Fields } from "../../foundation/argument";
import { sum } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { SolubilityError } from "../error";
import { concentrationOf, ION, type IonConcentration, isOfWater, sameIon } from "./given-ions";
import type { DissolvedIon } from "./product";
import type { MixedIon } from "./way";

export const MIXED = { volume: true, ions: [ION] } as const satisfies Fields<MixedSolution>;

/** A solution that is poured in: its ions and its volume. */
export interface MixedSolution {
  /** As poured. */
  readonly volume: VolumeLike;
  /** Concentrations in this solution, before mixing. */
  readonly ions: readonly IonConcentration[];
}

/** @internal The volume after mixing, and the concentration of each ion of the solid in it. */
export function mixed(ions: readonly DissolvedIon[], solutions: readonly MixedSolution[]) {
  if (solutions.length === 0) throw new SolubilityError("solubility.missing-option", "no solution named");
  const volumes = solutions.map(({ volume }, i) =>
    guard.positive(expectDimension(volume, "volume", "volume"), "volume").named({
      symbol: `V${i + 1}`,
      label: `volume of solution ${i + 1}`,
    }),
  );
  const total = sum(volumes, {
    symbol: "V",
    label: "volume after mixing",
    rule: "sum of the volumes",
    assumption: "volumes add up on mixing",
  });
  const before = ions.map(({ formula }) => {
    const amounts = solutions.flatMap((solution, i) =>
      solution.ions
        .filter(({ ion }) => sameIon(ion, formula))
        .map(({ concentration }) =>
          guard
            .positive(expectDimension(concentration, "concentration", "concentration"), "concentration")
            .times(volumes[i]!),
        ),
    );
    if (amounts.length === 0) {
      throw new SolubilityError("solubility.missing-option", `no ${formula} in any of the solutions`, {
        ...(isOfWater(formula) && { hint: "give the pH the mixture is held at" }),
        details: { ion: formula },
      });
    }
    return sum(amounts)
      .dividedBy(total)
      .to("mol/L")
      .named({
        symbol: `c(${formula})`,
        label: `${formula} after mixing`,
        rule: "concentration = sum of amounts / total volume",
      });
  });
  return { total, before };
}

/** @internal Every ion of the solutions with its amount in the mixture. */
export function amountsIn(solutions: readonly MixedSolution[]): MixedIon[] {
  const list: MixedIon[] = [];
  for (const { volume, ions } of solutions) {
    const v = expectDimension(volume, "volume", "volume");
    for (const one of ions) list.push({ formula: one.ion, amount: concentrationOf(one).times(v).to("mol") });
  }
  return list;
}

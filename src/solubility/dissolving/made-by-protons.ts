// Solids of anions that nobody put in: oxalic acid and acid salts such as bicarbonate give theirs up where a metal takes
// it. How much of it there is, acid and base decide, so the equilibrium of the whole liquor is asked.

import { tryAqueousComposition } from "../../aqueous";
import { parseFormula } from "../../formula";
import { type Quantity, quantity } from "../../quantity";
import type { Solute } from "../curves/solute";
import { sameIon } from "../precipitating/given-ions";
import { saltIons } from "../precipitating/ions";
import { type PooledIon, stepFrom } from "../precipitating/pairings";

/** A substance of the liquor. */
interface InLiquor {
  readonly solute: Solute;
  readonly dry: Quantity;
}

/** A solid that stands at equilibrium. */
interface MadeSolid {
  readonly solid: string;
  readonly amount: Quantity;
}

const gives = (acid: string): boolean => stepFrom(acid) !== undefined;

/** Is there an acid that keeps protons in water, or an acid ion, and a metal that could take what is left of it? */
function mayMake(all: readonly InLiquor[], pool: readonly PooledIon[]): boolean {
  const takes = pool.some(({ charge, formula }) => charge > 1 || formula === "Ag+");
  return (
    takes &&
    (pool.some(({ charge, formula }) => charge < 0 && formula !== "HSO4-" && gives(formula)) ||
      all.some(({ solute }) => saltIons(solute.anhydrous) === undefined && gives(solute.anhydrous.toString())))
  );
}

/** Warmer and colder than this the equilibrium is not asked; solids and acids change little beyond it. */
const [COLDEST, WARMEST] = [5, 60];

/** Solids that fall as salts of anions which are in no substance of the liquor as such. */
export function madeByProtons(
  all: readonly InLiquor[],
  pool: readonly PooledIon[],
  water: Quantity,
  temperature: Quantity,
): MadeSolid[] {
  if (!mayMake(all, pool)) return [];
  const celsius = Math.min(Math.max(temperature.toNumber("°C"), COLDEST), WARMEST);
  const asked = tryAqueousComposition({
    water: water as Quantity<"mass">,
    dissolved: all.map(({ solute, dry }) => ({ formula: solute.anhydrous, mass: dry as Quantity<"mass"> })),
    temperature: quantity({ value: celsius, unit: "°C" }) as Quantity<"temperature">,
  });
  if (!asked.ok) return [];
  const isMade = (anion: string): boolean => !pool.some(({ formula }) => sameIon(formula, anion));
  return asked.value.solids.flatMap(({ formula, amount }) => {
    const ions = saltIons(parseFormula(formula)) ?? [];
    return ions.some((ion) => ion.charge < 0 && isMade(ion.formula)) ? [{ solid: formula, amount }] : [];
  });
}

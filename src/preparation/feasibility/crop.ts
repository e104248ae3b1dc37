// The crop of a liquor with several salts: boiled down until the product is about to precipitate, filtered hot, cooled.
import { molarMass, parseFormula } from "../../formula";
import { judgePairing, type PooledIon, pairingsOf } from "../../solubility/internal";
import type { Case } from "./case";
import { isOf, type Ranked, type Temperature, waterOf } from "./liquor";

/** A salt of the crop; its mass is without crystal water. */
interface Crop {
  readonly formula: string;
  readonly solid: string;
  readonly moles: number;
  readonly grams: number;
  readonly share: number;
  readonly wanted: boolean;
}

/** What precipitates from some ions in some water, the most over-saturated pairing first, each taking its ions with it. */
function fall(
  c: Case,
  ions: readonly PooledIon[],
  kg: number,
  at: Temperature,
): { readonly crop: Crop[]; readonly left: PooledIon[] } {
  let left = [...ions];
  const crop = new Map<string, Crop>();
  for (let turn = 0; turn < 12; turn += 1) {
    const over = pairingsOf(left, at.toNumber("°C"))
      .filter(({ ions: of }) => of.every(({ ion }) => ion.made !== true && ion.moles > 0))
      .map((pairing) => ({ pairing, water: waterOf(pairing, at) ?? 0 }))
      .filter(({ water }) => water > 1.001 * kg)
      .sort((a, b) => b.water - a.water)[0];
    if (over === undefined) break;
    const { pairing } = over;
    const verdict = judgePairing(pairing, kg, at);
    const most = Math.min(...pairing.ions.map(({ ion, count }) => ion.moles / count));
    // `judgePairing` tells what precipitates only where it surely does: nearer than that a little is taken
    const moles = Math.min(verdict.falls ?? most * 0.1, most);
    const before = crop.get(pairing.formula);
    const whole = Math.min(
      ...pairing.ions.map(({ ion, count }) => (ions.find((o) => o.formula === ion.formula)?.moles ?? 0) / count),
    );
    const all = moles + (before?.moles ?? 0);
    crop.set(pairing.formula, {
      formula: pairing.formula,
      solid: verdict.solidPhase,
      moles: all,
      grams: all * molarMass(parseFormula(pairing.formula)).toNumber("g/mol"),
      share: whole > 0 ? Math.min(1, all / whole) : 0,
      wanted: isOf(pairing, c),
    });
    left = left.map((ion) => {
      const count = pairing.ions.find(({ ion: own }) => own.formula === ion.formula)?.count ?? 0;
      return { ...ion, moles: Math.max(0, ion.moles - count * moles) };
    });
  }
  return { crop: [...crop.values()].sort((a, b) => b.grams - a.grams), left };
}

/**
 * The crop of a liquor that is boiled down until the product is about to precipitate, filtered hot and cooled; what stays on the hot
 * filter where nothing comes after it.
 */
export function cropOf(
  c: Case,
  ions: readonly PooledIon[],
  wanted: { readonly hot: Ranked | undefined; readonly cold: Ranked },
  hot: Temperature,
  cold: Temperature,
): Crop[] {
  const own = wanted.hot;
  // no figure for the heat: boiled down as far as the cold asks
  if (own === undefined) return fall(c, ions, wanted.cold.water, cold).crop;
  const filtered = fall(c, ions, own.water, hot);
  const { crop } = fall(c, filtered.left, own.water, cold);
  return crop.length > 0 ? crop : filtered.crop;
}

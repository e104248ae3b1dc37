// Acid hydrogen: whether an anion still has some to give, and the acid that an anion is left from.
import { memoised } from "../foundation/memo";
import { ACID_STEPS } from "./data/acid-steps";
import { ACIDS } from "./data/acids";
import { HYDROGEN, type Ion, ionsAs, listedAs, without } from "./ion-index";
import { bareIon, chargeOfIon } from "./ion-text";
import { readNotation } from "./notation";

/** Does the ion still have a hydron to give? */
export function givesHydron(ion: Ion): boolean {
  if (ion.parent !== undefined || ["HS", "HSe", "HF2", "HO2"].includes(ion.row.formula)) return true;
  // what names an acid of its own has given all it has: the hydrogen of formate and of phosphite stays
  if (!ion.counts.has("H") || ion.row.acid !== undefined) return false;
  return listedAs(without(ion.counts, HYDROGEN, 1), ion.charge - 1) !== undefined;
}

/** Is it the anion of an acid salt, as in `HCO3-`? The hydrogen of formate and of phosphite is none of an acid. */
export const isHydrogenAnion: (anion: string) => boolean = /* @__PURE__ */ memoised(200, (anion: string) => {
  const charge = chargeOfIon(anion);
  const [ion] = ionsAs(readNotation(anion).parts[0]!.counts, charge);
  return ion !== undefined && givesHydron(ion);
});

/** The acid without charge that an anion is left from; by its letters where no table knows it. */
export const acidOfAnion: (anion: string) => string = /* @__PURE__ */ memoised(200, (anion: string) => {
  const listed = ACIDS().find((row) => row.anion === anion);
  if (listed !== undefined) return listed.formula;
  const step = ACID_STEPS().find((row) => row.base === anion);
  if (step !== undefined) return chargeOfIon(step.acid) < 0 ? acidOfAnion(step.acid) : step.acid;
  return acidText(bareIon(anion), -chargeOfIon(anion));
});

/** `H2SO4` from `SO4` and 2, `H3PO2` from `H2PO2` and 1, `CH3COOH` from `CH3COO` and 1. */
export function acidText(anion: string, hydrogens: number): string {
  if (anion.endsWith("COO")) return `${anion}H`;
  const [, own = "0", rest = anion] = /^H(\d*)(?=[A-Z])(.*)$/.exec(anion) ?? [];
  const total = hydrogens + Number(own === "" ? 1 : own);
  return `H${total === 1 ? "" : total}${rest}`;
}

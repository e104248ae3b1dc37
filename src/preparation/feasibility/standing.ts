// What stands in a beaker, as the judges count it.
import { chargeOf, HYDRON, type Key, type Phase } from "../../aqueous/internal";
import { type Formula, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { fateOf } from "../reaction/fate";
import { type Beaker, printed, type Standing } from "./beaker";
import type { Case } from "./case";
import type { Figure, Solid } from "./feasibility";
import { percent } from "./pot";

/** From this share of the theory on it goes; below the other it does not. */
export const GOES = 0.95;
export const NOTHING = 0.02;
export type Composition = ReadonlyMap<Key, number>;
export const isCation = (key: Key): boolean => chargeOf(key) > 0 && key !== HYDRON;

/** The metal of a solid, or whatever it is made of where it has none. */
const keyOf = (of: Composition): Key => [...of.keys()].find(isCation) ?? [...of.keys()].find((k) => k !== "H+") ?? "H+";

/** Part of its metal that is in a solid. */
function shareOf({ phase, moles }: Standing, beaker: Beaker): number {
  const metals = [...phase.of.keys()].filter(isCation);
  const keys = metals.length > 0 ? metals : [keyOf(phase.of)];
  return Math.min(1, Math.max(...keys.map((key) => (moles * phase.of.get(key)!) / beaker.total(key))));
}

export const solidsIn = (beaker: Beaker): Solid[] =>
  beaker.solids.map((one) => ({ formula: printed(one.phase), moles: one.moles, share: shareOf(one, beaker) }));

export const figure = (value: number, unit: string, label: string): Figure => ({ value, unit, label });

export const conditions = ({ pH, water }: Beaker): Figure[] => [
  figure(pH, "", "pH of the liquor"),
  figure(water * 1000, "g", "water for one mole of product"),
];

/** What stands, in words. */
export const solidsListed = (beaker: Beaker): string =>
  beaker.solids.length === 0
    ? "nothing precipitates"
    : beaker.solids
        .slice(0, 3)
        .map((one) => `${percent(shareOf(one, beaker))} as ${printed(one.phase)}`)
        .join(", ");

const formulas = /* @__PURE__ */ remembering<Formula>(300);
const parsed = (text: string): Formula => formulas(text, () => parseFormula(text));

/** The formula of a phase, read once. */
export const phaseFormula = ({ formula }: Phase): Formula => parsed(formula);

/** Does a solid dissolve well, so that more water takes it? */
export const isSoluble =
  ({ setting }: Case) =>
  (phase: Phase): boolean =>
    fateOf(phaseFormula(phase), setting.temperature).precipitated === false;

// The mother liquor of crystals as water of the next batch: its product is not lost, as long as nothing adds up in it that the
// crystals would keep.

import { type Quantity, sum } from "../../quantity";
import { type Entry, massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { isHeatSensitive } from "../identity/by-ignition";
import { type Draft, POT, type Work } from "../procedure/bench";
import type { Isolation } from "../procedure/isolation";
import { isRecrystallised } from "../procedure/kind";
import { isAirless, isKeptCovered, isKeptDark, losesAmmonia } from "../procedure/protection";
import { isAntisolvent, isVolatile } from "../reaction/fluids";
import { keyed } from "../reaction/species";
import type { Setting } from "../request/setting";
import type { NextWater } from "../safety/next-batch";
import { asMassOfWater, exact, planned } from "./exact";

/** Neither air, light, warmth nor time changes it while it waits. */
const keeps = ({ product: { formula } }: Setting): boolean =>
  !isAirless(formula) &&
  !isKeptCovered(formula) &&
  !isKeptDark(formula) &&
  !losesAmmonia(formula) &&
  !isHeatSensitive(formula);

/** Plain water that the batch takes for its liquor. */
const waterTaken = (drafts: readonly Draft[]): Quantity =>
  sum([
    exact("0 g"),
    ...drafts
      .filter(({ operation }) => operation !== "wash" && operation !== "rinse")
      .flatMap(({ put }) => put)
      .filter(({ contents: { solids, dissolved } }) => solids.length + dissolved.length === 0)
      .map(({ books }) => books.water),
  ]);

/** What it is to the next batch; undefined where it is not clean enough, or where it would not keep. */
export function nextWaterOf(
  setting: Setting,
  { drafts }: Work,
  isolation: Isolation,
  theory: Quantity,
  liquor: Pot | undefined,
): NextWater | undefined {
  const { product, reactants, products, steps } = setting;
  const takesAlcohol = drafts.some(({ alcohol, put }) => alcohol !== undefined || put.some(hasAntisolvent));
  if (isolation.how !== "crystallise" || liquor === undefined || takesAlcohol) return undefined;
  // what is made purer leaves its dirt in this liquor
  if (isRecrystallised(reactants, products) || !keeps(setting)) return undefined;
  const own = matterOf(product.formula).core.key;
  const dissolved = liquor.books.dissolved.find(({ matter }) => matter.core.key === own);
  if (dissolved === undefined || liquor.books.waterMissing.length > 0) return undefined;
  const share = dissolved.amount.times(product.molarMass).dividedBy(theory).to("") as Quantity<"number">;
  const [water, taken] = [liquor.books.water, waterTaken(drafts)];
  if (share.compare(planned("worthNextBatch")) < 0 || water.compare(taken) > 0) return undefined;
  const fed = new Set(reactants.map(({ formula }) => matterOf(formula).core.key));
  const cake = drafts.filter(({ vessel, operation }) => vessel === POT && LEAVES_CRYSTALS.includes(operation)).at(-1);
  if (cake === undefined) return undefined;
  // what a hot filter keeps goes there again
  const filteredOff = drafts.flatMap(({ left }) =>
    left
      .filter(({ what }) => what === "residue")
      .flatMap(({ pot }) => pot.books.solids.map(({ matter }) => matter.core.key)),
  );
  const isForeign = ({ matter: { core, formula } }: Entry): boolean =>
    core.key !== own && !fed.has(core.key) && !filteredOff.includes(core.key) && !isVolatile(formula);
  const { books } = cake.after;
  const foreign = sum([books.other, ...books.dissolved.filter(isForeign).map(massOf)]);
  const crystals = sum([exact("0 g"), ...books.solids.map(massOf)]);
  const allowed = crystals.times(planned("residue"));
  if (foreign.times(2n).compare(allowed) > 0) return undefined;
  const batches = foreign.isPositive() ? Math.floor(allowed.dividedBy(foreign).toNumber("")) - 1 : undefined;
  const excess = liquor.books.dissolved
    .filter(({ matter: { core } }) => fed.has(core.key) && core.key !== own)
    .map((one) => keyed("formula", { formula: one.matter.name, mass: massOf(one) as Quantity<"mass"> }))
    .filter(({ mass }) => mass.compare(steps.mass) >= 0);
  return {
    water: water
      .dividedBy(asMassOfWater(exact("1 mL")))
      .times(exact("1 mL"))
      .to("mL") as Quantity<"volume">,
    share,
    excess,
    batches: batches !== undefined && exact(String(batches)).compare(planned("nextBatches")) < 0 ? batches : undefined,
  };
}

/** Steps that leave crystals in the pot with what liquor they keep. */
const LEAVES_CRYSTALS: readonly Draft["operation"][] = ["filter", "rinse"];

const hasAntisolvent = (pot: Pot): boolean => pot.books.dissolved.some(({ matter }) => isAntisolvent(matter.formula));

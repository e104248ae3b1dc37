// What is handled in a batch beside what the packs and the equation name: the solid that stands in place of the product, and what
// steps take from elsewhere: alcohol, an acid that dissolves the rest of a metal, ammonia in a rinse.
import { type Formula, molarMass } from "../../formula";
import { once } from "../../foundation/memo";
import { matterOf } from "../contents/matter";
import { ALCOHOL } from "../procedure/alcohol";
import { chromateBeside } from "../procedure/chromate-wash";
import { glassOf } from "../procedure/fired-beside";
import { freeOxideOf } from "../procedure/free-base";
import { formulaFrom, keyOfFormula, speciesAside } from "../reaction/species";
import type { Setting } from "../request/setting";
import type { Handling, TakenBesides } from "../safety/work-conditions";
import type { Batch } from "./batch";
import { exact } from "./exact";
import { standsInPlace } from "./in-place";

/** Everything of the equation and of the packs, as it is dissolved. */
const namedBy = ({ reactants, products, materials, asides }: Setting): ReadonlySet<string> =>
  new Set(
    [
      ...[...reactants, ...products].map(({ formula }) => formula),
      ...[...materials, ...asides].flatMap(({ form, also }) => [form, ...also.map((one) => one.form)]),
    ].map((formula) => matterOf(formula).core.key),
  );

/** Work that may take something else than water from outside the packs. */
const TAKING: ReadonlySet<string> = /* @__PURE__ */ new Set(["add", "wash", "rinse"]);

/** What is taken besides, each once, as strong as where it goes in first; alcohol that may be taken among it. */
function takenBesides(setting: Setting, { steps, alcohol }: Batch): readonly TakenBesides[] {
  const named = once(() => namedBy(setting));
  const found = new Map<string, TakenBesides>();
  const take = (text: string, key: string, massPercent?: number): void => {
    found.set(key, { species: speciesAside(formulaFrom(text)), massPercent });
  };
  for (const { operation, from, put, acidDiluted } of steps) {
    if (!TAKING.has(operation) || from !== undefined) continue;
    // it is handled as strong as it is before it is diluted
    if (acidDiluted !== undefined && !named().has(matterOf(formulaFrom(acidDiluted.formula)).core.key))
      take(acidDiluted.formula, keyOfFormula(acidDiluted.formula), exact(acidDiluted.strength).toNumber("%"));
    for (const { dissolved, mass } of put)
      for (const { formula, key, amount } of dissolved) {
        const own = formulaFrom(formula);
        if (found.has(key) || named().has(matterOf(own).core.key)) continue;
        const share = amount.times(molarMass(own)).dividedBy(mass).toNumber("%");
        take(formula, key, Number(share.toPrecision(2)));
      }
  }
  const isAtHand = (): boolean => named().has(matterOf(formulaFrom(ALCOHOL)).core.key);
  if (alcohol !== undefined && !isAtHand()) take(ALCOHOL, keyOfFormula(ALCOHOL));
  return [...found.values()];
}

/** Silicates that the fire makes of alkali carbonates beside silica. */
function glassIn({ materials, asides }: Setting, { steps }: Batch): readonly Formula[] {
  const found = [...materials, ...asides].flatMap(({ form }) => glassOf(form) ?? []).map(formulaFrom);
  const left = steps.find(({ operation }) => operation === "fire")?.after.solids ?? [];
  return found.filter((one) => left.some(({ key }) => key === keyOfFormula(one.toString())));
}

/** What is handled in a batch. */
export function handlingOf(setting: Setting, batch: Batch): Handling {
  const instead = standsInPlace(batch);
  return {
    isBoiledDown: batch.steps.some(({ operation }) => operation === "concentrate"),
    product: instead === undefined ? setting.product : speciesAside(formulaFrom(instead.formula)),
    besides: setting.wet
      ? takenBesides(setting, batch)
      : [freeOxideOf(setting), chromateBeside(setting), ...glassIn(setting, batch)].flatMap((one) =>
          one === undefined ? [] : [{ species: speciesAside(one), massPercent: undefined }],
        ),
  };
}

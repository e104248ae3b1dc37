// Chromium fired in air with lime or alkali: the chromate that forms beside the product is washed out, and its water is kept.
import type { Formula } from "../../formula";
import { saltFormula } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { WET_GRINDING } from "../data/firing";
import { CHROMATE_FROM_FIRE } from "../data/kiln";
import { done, justWater } from "../operation/operation";
import { exact } from "../planning/exact";
import { formulaFrom } from "../reaction/species";
import type { Setting } from "../request/setting";
import { type Bench, POT } from "./bench";
import { standsWater } from "./grinding";
import type { ProcedureStep } from "./step";

const { metal, with: bases, wanted } = CHROMATE_FROM_FIRE;

const has = (formula: Formula, symbol: string): boolean => formula.count(symbol).n !== 0n;

/** May chromate form beside the product, and can water take it out? */
export function leavesChromate({ wet, materials, asides, product }: Setting): boolean {
  const { groups } = madeOf(product.formula);
  const forms = [...materials, ...asides].map(({ form }) => form);
  return (
    !wet &&
    forms.some((form) => has(form, metal)) &&
    forms.some((form) => bases.some(({ symbol }) => has(form, symbol))) &&
    !wanted.some((name) => groups.has(name)) &&
    standsWater(product.formula)
  );
}

/** The chromate that may form beside the product, of the first base the table has; undefined where none does. */
export function chromateBeside(setting: Setting): Formula | undefined {
  if (!leavesChromate(setting)) return undefined;
  const forms = [...setting.materials, ...setting.asides].map(({ form }) => form);
  const base = bases.find(({ symbol }) => forms.some((form) => has(form, symbol)))!;
  return formulaFrom(saltFormula(base.cation, CHROMATE_FROM_FIRE.anion));
}

/** All the chromium of a charge, were it chromate; undefined where a portion is not known. */
export function mostChromate(
  { materials, asides }: Setting,
  portions: readonly Quantity[],
): Quantity<"amount of substance"> | undefined {
  const amounts = [
    ...materials.map((one, i) => ({ form: one.form, amount: one.amountIn(portions[i]!) as Quantity | undefined })),
    ...asides.map((one) => ({ form: one.form, amount: one.asideTaken()?.amount as Quantity | undefined })),
  ].filter(({ form }) => has(form, metal));
  if (amounts.some(({ amount }) => amount === undefined)) return undefined;
  return sum(amounts.map(({ form, amount }) => amount!.times(form.count(metal)))).to(
    "mol",
  ) as Quantity<"amount of substance">;
}

/** The cake washed until its water shows no yellow. */
export function washChromateOut(bench: Bench): void {
  const { setting, theory } = bench.frame;
  if (!leavesChromate(setting)) return;
  const needed = theory.times(exact(CHROMATE_FROM_FIRE.water)).toNumber("g");
  const water = exact(`${Number(needed.toPrecision(2))} g`);
  const off = justWater(bench.pot, water).with({ unknown: [CHROMATE_FROM_FIRE.name] });
  bench.did(
    POT,
    done("wash", bench.pot, bench.pot, [justWater(bench.pot, water)], [{ what: "wash water", pot: off }]),
    {
      amounts: [water],
      atHand: ["drying oven"],
      say: () =>
        `Wash it with hot water (${bench.hand.litres(water)} or more, in portions), on a filter, or settling and pouring off, until it runs off colourless. ${CHROMATE_FROM_FIRE.yellow}. Dry it at ${WET_GRINDING.driedAt}.`,
    },
  );
}

/** Was chromate washed out of what the fire left, by the steps? */
export const isWashedOfChromate = (steps: readonly Pick<ProcedureStep, "operation" | "left">[]): boolean =>
  steps.some(
    ({ operation, left }) =>
      operation === "wash" && left.some(({ contents }) => contents.unknown.includes(CHROMATE_FROM_FIRE.name)),
  );

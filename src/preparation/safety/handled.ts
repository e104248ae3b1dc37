// What is handled in each step of the work.

import type { WorkStep } from "../data/work-cautions";
import { isGas } from "../reaction/fluids";
import { nameOfFormula, type Species } from "../reaction/species";
import type { Material } from "../shelf/material";
import { fumesOf } from "./ignition-fumes";
import { type Given, isMoreThanDilute, isStrongAcid } from "./work-conditions";

/** A substance of the plan: its text in the cautions, and as printed. */
export interface Handled {
  readonly text: string;
  readonly name: string;
}

const handledOf = ({ formula, name }: Pick<Species, "formula" | "name">): Handled => ({
  text: formula.toString(),
  name,
});

/** What is handled in each step, in the order of the bench; a step in which nothing is, is left out. */
export function handledIn({ setting, batch, handling }: Given): readonly (readonly [WorkStep, readonly Handled[]])[] {
  const { materials, products, product, wet } = setting;
  const inHand = ({ form }: Material): Handled => ({ text: form.toString(), name: nameOfFormula(form) });
  const taken = materials.map(inHand);
  const aside = setting.asides.map(inHand);
  const isFluid = (species: Species): boolean => isGas(species.formula, wet);
  const gases = products.filter(isFluid).map(handledOf);
  const beside = products.filter((s) => s !== product && !s.isWater && !isFluid(s)).map(handledOf);
  const dissolved = taken.filter((_, i) => {
    const { how } = batch.feeds[i]!;
    return how === "dissolve" || how === "unknown" || (how === "solution" && isMoreThanDilute(materials[i]!));
  });
  const over = taken.filter((_, i) => batch.materialBalance.supplied[i]!.left.isPositive());
  const own = isFluid(product) ? [] : [handledOf(handling.product)];
  const besides = handling.besides.map(({ species }) => handledOf(species));
  const isKept = batch.isolation.how === "liquor";
  const steps: [WorkStep, readonly Handled[]][] = [
    ["weighing", [...taken, ...aside]],
    ["dissolving", wet ? [...dissolved, ...setting.asides.filter(isStrongAcid).map(inHand)] : []],
    ["mixing", wet ? [...taken, ...aside, ...gases] : []],
    ["heating", wet ? [] : [...taken, ...aside, ...gases]],
    ["isolating", wet ? [...own, ...beside, ...besides] : []],
    ["drying", isKept ? [] : own],
    ["ignition test", isKept || fumesOf(product.formula) === undefined ? [] : own],
    ["waste", [...over, ...aside, ...besides, ...beside, ...(isKept ? [] : own)]],
  ];
  return steps.filter(([, handled]) => handled.length > 0);
}

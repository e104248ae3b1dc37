// An acid that takes no part in the equation, where that sets lye free and the product stays dissolved: it goes in by paper once the
// reaction is over and the liquor is clear. Any sooner it would change what reacts (acid sets halogen free of a halide).

import { list } from "../../foundation/wording";
import { matterOf } from "../contents/matter";
import { add, type Reaction } from "../operation/add";
import { isLye } from "../reaction/acids";
import type { Species } from "../reaction/species";
import type { Material } from "../shelf/material";
import { type Bench, POT } from "./bench";
import { neutralised } from "./neutralised";

/** The acid and the lyes that the equation has set free, as far as either goes. */
function reactionsWith({ pot }: Bench, { form, asideTaken }: Material, lyes: readonly Species[]): readonly Reaction[] {
  const amount = asideTaken()?.amount;
  const there = lyes.map(({ formula }) => ({ formula, amount: pot.amountOf(matterOf(formula)) }));
  return amount === undefined ? [] : neutralised({ formula: form, amount }, there).reactions;
}

/** What stands on the table against lye goes into the clear liquor. */
export function putAgainstBase(bench: Bench): void {
  for (const material of bench.asidesFor("against base")) {
    const { name } = material.shelf;
    const portion = material.asideTaken()?.portion;
    const lyes = bench.frame.setting.products.filter(({ formula }) => isLye(formula));
    bench.did(POT, add(bench.pot, bench.in(bench.pack(name)), reactionsWith(bench, material, lyes)), {
      materials: [name],
      amounts: portion === undefined ? [] : [portion],
      from: bench.pack(name),
      adds: material.isSolution ? "liquid" : "solid",
      care: "mixing",
      atHand: ["indicator paper"],
      say: () => {
        const { hand } = bench;
        const size =
          portion === undefined
            ? `the ${name}`
            : `${portion.dimension === "volume" ? hand.litres(portion) : hand.grams(portion)} of ${name}`;
        return `Add ${size} to the clear liquor, a little at a time and stirring; stop where paper shows pH 7: it takes the ${list(lyes.map((one) => one.name))} that has formed, which would cling to the crystals. Before the reaction is over acid would change it.`;
      },
    });
  }
}

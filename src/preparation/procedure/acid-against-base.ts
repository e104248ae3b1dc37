// An acid that takes no part in the equation, where that sets lye free and the product stays dissolved: it goes in by paper once the
// reaction is over and the liquor is clear. Any sooner it would change what reacts (acid sets halogen free of a halide).

import { list } from "../../foundation/wording";
import { minimum } from "../../quantity";
import { matterOf } from "../contents/matter";
import { add, type Reaction } from "../operation/add";
import { exact } from "../planning/exact";
import { isLye } from "../reaction/acids";
import { neutralisation } from "../reaction/neutralising";
import type { Material } from "../shelf/material";
import { type Bench, POT } from "./bench";

/** The acid and the lye that the equation has set free, as far as either goes. */
function reactionWith(bench: Bench, { form, asideTaken }: Material): Reaction | undefined {
  const lye = bench.frame.setting.products.find(({ formula }) => isLye(formula));
  const found = lye && neutralisation(lye.formula, form);
  const taken = asideTaken()?.amount;
  if (lye === undefined || found === undefined || taken === undefined) return undefined;
  const { key } = matterOf(lye.formula).core;
  const bases = -found.terms.find(({ matter }) => matter.core.key === key)!.count;
  const there = bench.pot.amountOf(matterOf(lye.formula));
  return {
    terms: found.terms,
    extent: minimum([there.dividedBy(exact(String(bases))), taken.dividedBy(exact(String(found.acids)))]),
  };
}

/** What stands on the table against lye goes into the clear liquor. */
export function putAgainstBase(bench: Bench): void {
  for (const material of bench.asidesFor("against base")) {
    const { name } = material.shelf;
    const portion = material.asideTaken()?.portion;
    const reaction = reactionWith(bench, material);
    const lyes = bench.frame.setting.products.filter(({ formula }) => isLye(formula));
    bench.did(POT, add(bench.pot, bench.in(bench.pack(name)), reaction === undefined ? [] : [reaction]), {
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

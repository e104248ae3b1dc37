// The liquor of a cyanido complex that acid was put to is made neutral while it is cold, before anything warms it.
import { list } from "../../foundation/wording";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { add } from "../operation/add";
import { carbonateFor, madeNeutral } from "../reaction/sour-cyanide";
import { type Bench, POT } from "./bench";

/** Carbonate goes into the vessel, where acid met a cyanido complex in it. */
export function makeNeutral(bench: Bench): void {
  const { setting } = bench.frame;
  const carbonate = carbonateFor(setting);
  if (carbonate === undefined) return;
  const { formula, called } = carbonate;
  const reactions = bench.pot.books.dissolved.flatMap(
    ({ matter, amount }) => madeNeutral(formula, matter.formula, amount) ?? [],
  );
  const matter = matterOf(formula);
  // a little more than that makes it weakly alkaline
  const least = setting.steps.mass.dividedBy(matter.molarMass).to("mol");
  const amount = reactions.reduce((all, { used }) => all.plus(used), least);
  const { temperature, pressure } = bench.pot.books;
  const put = Pot.empty(temperature, pressure).plusDissolved(matter, amount);
  const solids = reactions.flatMap(({ terms }) =>
    terms.filter(({ whereto }) => whereto === "precipitated").map((one) => one.matter.name),
  );
  const settles = solids.length === 0 ? "" : `; ${list(solids)} precipitates`;
  bench.did(POT, add(bench.pot, put, reactions), {
    amounts: [put.mass],
    apparatus: "fume hood",
    atHand: [called, "indicator paper"],
    later: true,
    say: () =>
      `Stir in ${called}, a pinch at a time and still cold, until paper shows pH 8 and nothing fizzes (about ${bench.hand.grams(put.mass)})${settles}: warmed while it is sour it gives off hydrogen cyanide.`,
  });
}

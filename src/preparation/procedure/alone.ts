// Nothing is put in: what the air or a gas that no pack holds does with what is there.

import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import type { Matter } from "../contents/matter";
import { Pot } from "../contents/pot";
import { added, type Reaction } from "../operation/add";
import { exact } from "../planning/exact";
import { isGas } from "../reaction/fluids";
import { type Bench, POT } from "./bench";
import { escapes } from "./leading";
import { withOtherSolids } from "./other-solid";
import { gasesIn, gasInRoom, trapsFor } from "./trap";
import { about, litres } from "./words";

/** Share of oxygen in air. */
const OXYGEN = "0.209";

/** What no material brings: led in as gas, or simply missing on the table. */
const bringing = (bench: Bench, matter: Matter, amount: Quantity): string =>
  isOneOf(matter.formula, "O2")
    ? `Draw air through it, or stir it in the open, until it is done: it uses ${litres(gasInRoom(bench, amount))} of oxygen, which is in ${litres(gasInRoom(bench, amount).dividedBy(exact(OXYGEN)))} of air.`
    : isGas(matter.formula, false)
      ? `Lead in ${litres(gasInRoom(bench, amount))} of ${matter.name} (${about(amount, "mol")}), until no more is absorbed${escapes(matter.formula)}.`
      : `Add ${about(amount, "mol")} of ${matter.name}, which no material of the plan brings.`;

/** Nothing else is put in: what the air or a gas brings, or only the water. */
export function alone(bench: Bench, reactions: readonly Reaction[], settle: (pot: Pot) => Pot): void {
  const { setting } = bench.frame;
  const airs = reactions.flatMap(({ terms }) => terms).filter(({ whereto, count }) => whereto === "air" && count < 0n);
  const changes = setting.reactants.some(
    ({ formula }) => !setting.products.some((other) => other.formula.hasSameComposition(formula)),
  );
  if (!changes) return;
  if (airs.length === 0 && reactions.every(({ terms }) => terms.every(({ whereto }) => whereto !== "gas"))) {
    bench.amend(settle(withOtherSolids(bench, bench.pot, reactions).pot));
    return;
  }
  const outcome = withOtherSolids(bench, bench.pot, reactions);
  const caught = trapsFor(bench, gasesIn(outcome));
  const done = added(bench.pot, Pot.empty(setting.temperature, setting.pressure), outcome, settle);
  bench.did(POT, done, {
    care: "mixing",
    say: () =>
      airs.length === 0
        ? "Stir until the reaction has ended."
        : airs.map(({ matter, count }) => bringing(bench, matter, bench.frame.account.extent.times(-count))).join(" "),
  });
  caught();
}

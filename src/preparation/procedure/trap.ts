// A wash bottle for gas that must not go into the room: what it is filled with, how much of it, and what it comes to.
import { densityOfSolution, gasVolume } from "../../amount";
import { balance } from "../../equation";
import { parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import type { Entry } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { type Term, termsOf } from "../contents/react";
import type { AbsorbentRow } from "../data/absorbents";
import { add, type Outcome } from "../operation/add";
import { exact, planned } from "../planning/exact";
import { absorbentOf, isForTheHood } from "../reaction/absorbing";
import { type Bench, TRAP } from "./bench";
import { litres } from "./words";

/** Strength of what a wash bottle is filled with, by mass. */
export const STRENGTH = "10 %";

interface Absorbing {
  readonly row: AbsorbentRow;
  readonly terms: readonly Term[];
  /** Moles of absorbent for a mole of gas. */
  readonly perGas: Quantity;
  readonly gases: bigint;
}

const remembered = /* @__PURE__ */ remembering<Absorbing | undefined>(30);

const absorbingOf = ({ matter }: Entry): Absorbing | undefined =>
  remembered(matter.key, () => {
    const row = absorbentOf(matter.formula);
    if (row === undefined) return undefined;
    const equation = balance(row.equation);
    const [gas, absorbent] = equation.reactants;
    return {
      row,
      terms: termsOf(equation),
      perGas: exact(String(absorbent!.coefficient)).dividedBy(exact(String(gas!.coefficient))),
      gases: gas!.coefficient,
    };
  });

/** What leaves as gas of a reaction that is to come. */
export const gasesIn = ({ left }: Pick<Outcome, "left">): readonly Entry[] =>
  left.flatMap(({ what, pot }) => (what === "gas" ? pot.books.solids : []));

/** Names of gases that nothing in a wash bottle takes, and that must not go into the room either. */
export const notCaught = (gases: readonly Entry[]): string[] =>
  gases
    .filter((one) => isForTheHood(one.matter.formula) && absorbingOf(one) === undefined)
    .map(({ matter }) => matter.name);

/** Volume of a gas in the room. */
export const gasInRoom = ({ frame: { setting } }: Bench, amount: Quantity): Quantity =>
  gasVolume(amount as Quantity<"amount of substance">, {
    temperature: setting.temperature,
    pressure: setting.pressure,
  });

/** Fill the wash bottles; what is returned leads the gas through them, once it is there. */
export function trapsFor(bench: Bench, gases: readonly Entry[]): () => void {
  const found = gases.flatMap((gas) => {
    const absorbing = absorbingOf(gas);
    return absorbing === undefined ? [] : [{ gas, absorbing }];
  });
  const bottles = [...new Set(found.map(({ absorbing }) => absorbing.row.absorbent))];
  const through = bottles.map((absorbent, at) => {
    const own = found.filter(({ absorbing }) => absorbing.row.absorbent === absorbent);
    const { row } = own[0]!.absorbing;
    const vessel = at === 0 ? TRAP : `${TRAP} ${at + 1}`;
    const matter = matterOf(parseFormula(absorbent));
    const amount = own
      .map(({ gas, absorbing }) => gas.amount.times(absorbing.perGas))
      .reduce((all, one) => all.plus(one))
      .times(planned("overdose"))
      .to("mol");
    const mass = amount.times(matter.molarMass).to("g");
    const whole = mass.dividedBy(exact(STRENGTH)).to("g");
    const volume = whole.dividedBy(densityOfSolution(absorbent, STRENGTH)).to("mL");
    const { temperature, pressure } = bench.frame.setting;
    const filling = Pot.empty(temperature, pressure).plusWater(whole.minus(mass)).plusDissolved(matter, amount);
    const names = list(own.map(({ gas }) => `${litres(gasInRoom(bench, gas.amount))} of ${gas.matter.name}`));
    bench.did(vessel, add(bench.in(vessel), filling, []), {
      amounts: [volume, mass],
      say: () =>
        `Have a gas trap ready for the ${names}: an empty bottle first, so that nothing is sucked back, then a wash bottle with ${bench.hand.litres(volume)} of ${STRENGTH} ${row.called} (${bench.hand.grams(mass)} of ${matter.name} in it).`,
    });
    return { vessel, own, row };
  });
  return () => {
    for (const { vessel, own, row } of through) {
      const before = bench.in(vessel);
      const gas = own.reduce(
        (pot, one) => pot.plusSolid(one.gas.matter, one.gas.amount, "put in"),
        Pot.empty(before.books.temperature, before.books.pressure),
      );
      const reactions = own.map(({ gas: one, absorbing }) => ({
        terms: absorbing.terms,
        extent: one.amount.dividedBy(exact(String(absorbing.gases))),
      }));
      bench.did(vessel, add(before, gas, reactions), {
        say: () =>
          `All gas goes through the trap. Once no more comes take the tube out of the liquid, before anything cools${row.after === undefined ? "" : `; ${row.after}`}.`,
      });
    }
  };
}

// What tests tell of the crystals of a double salt, in the table of masses.
import { list } from "../../foundation/wording";
import { lossOfDoubleSalt, STEPS_OF_SAMPLE, withoutAmmonia } from "../../preparation/internal";
import type { Quantity } from "../../quantity";
import { about, pretty } from "../figures";
import { filled } from "../words";
import { instrumentsOf, type OnPaper } from "./context";

/** What heat tells of the crystals of a double salt, from what it came from and its lower hydrate. */
function heatRows({ plan, words }: OnPaper): string[][] {
  const told = lossOfDoubleSalt(plan);
  if (told === undefined) return [];
  const { loss, condition, less, more } = told;
  const share = (one: Quantity): string => about(one, "%");
  const named = (solids: typeof less): string =>
    list(
      solids.map(({ formula, loss: own }) =>
        own.isZero() ? formula : filled(words.losing, { formula, loss: share(own) }),
      ),
      "or",
    );
  const mass = about(instrumentsOf(plan).mass.times(STEPS_OF_SAMPLE), "g", 2);
  const where = condition === undefined ? "" : ` (${condition})`;
  const tells = [
    filled(words.heatTells, { formula: plan.product.formula, mass, where }),
    less.length === 0 ? "" : filled(words.losesLess, { solids: named(less) }),
    more.length === 0 ? "" : filled(words.losesMore, { solids: named(more) }),
  ];
  return [[filled(words.heatTakes, { loss: share(loss) }), tells.join("")]];
}

/** What lye tells of an ammonium double salt. */
function ammoniaRows({ plan, words }: OnPaper): string[][] {
  const others = withoutAmmonia(plan);
  if (others === undefined || others.length === 0) return [];
  const solids = list(others.map(pretty), "or");
  return [[words.ammoniaComes, filled(words.ammoniaTells, { formula: plan.product.formula, solids })]];
}

export const doubleSaltRows = (on: OnPaper): string[][] => [...heatRows(on), ...ammoniaRows(on)];

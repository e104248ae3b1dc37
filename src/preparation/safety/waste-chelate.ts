// A liquor in which an amino acid, citrate, tartrate or EDTA holds a metal: soda precipitates none of it, and it is left as it is.

import type { Formula } from "../../formula";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { CHELATE_LEFT, type ChelateRow } from "../data/waste";
import type { Dissolved } from "../procedure/isolation";
import { isWasteMetal } from "./waste-metals";

const brings = (formula: Formula, { group, acids }: ChelateRow): boolean =>
  isOneOf(formula, ...acids) || constitutionOf(formula).groups.some((one) => one.includes(group));

/** What to do with it, in words; undefined where the ligand is less than the metal, and beside a metal that is precipitated all the same. */
export function chelateLeft(
  solutes: readonly Dissolved[],
  open: Dissolved | undefined,
  least: Quantity,
): string | undefined {
  const weighed = [...solutes, ...(open === undefined ? [] : [open])].filter(
    ({ species, amount }) => amount.times(species.molarMass).compare(least) >= 0,
  );
  const metals = weighed.flatMap(({ species, amount }) =>
    species.metals
      .filter(({ symbol }) => isWasteMetal(symbol))
      .map(({ symbol, count }) => ({ symbol, amount: amount.times(count) })),
  );
  const ligands = weighed.flatMap(({ species, amount }) =>
    CHELATE_LEFT.ligands.filter((row) => brings(species.formula, row)).map(({ name }) => ({ name, amount })),
  );
  const isHeld = ({ symbol }: { symbol: string }): boolean => CHELATE_LEFT.metals.some((one) => one === symbol);
  if (metals.length === 0 || ligands.length === 0 || !metals.every(isHeld)) return undefined;
  if (sum(ligands.map(({ amount }) => amount)).compare(sum(metals.map(({ amount }) => amount))) < 0) return undefined;
  const names = [...new Set(ligands.map(({ name }) => name))];
  return CHELATE_LEFT.note
    .replace("{ligands}", `${list(names)} ${names.length > 1 ? "keep" : "keeps"}`)
    .replace("{metals}", list([...new Set(metals.map(({ symbol }) => symbol))]));
}

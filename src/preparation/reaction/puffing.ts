// What swells up as it is heated: hydrates whose water leaves through a melt or a glass.
import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { matterOf } from "../contents/matter";
import { PUFFS_UP } from "../data/firing";
import { exact } from "../planning/exact";

type Kind = (typeof PUFFS_UP.kinds)[number];

/** Does a hydrate puff up where it is heated strongly? */
export function puffsUp(formula: Formula): boolean {
  const { waters } = matterOf(formula);
  if (!waters.isPositive()) return false;
  const { cations, anions } = constitutionOf(formula);
  const has = (ions: typeof cations | typeof anions, wanted: readonly string[]): boolean =>
    ions.some((ion) => wanted.includes(ion.formula));
  const isOf = (kind: Kind): boolean =>
    has(anions, kind.anions) && (!("cations" in kind) || has(cations, kind.cations));
  return waters.compare(exact(PUFFS_UP.waters)) >= 0 || PUFFS_UP.kinds.some(isOf);
}

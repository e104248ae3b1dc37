// Complexes of metals that take their ligands slowly, and whether the metal is reduced on the way.
import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { MONODENTATE, SLOW_COMPLEXES, type SlowComplexRow } from "../data/ends";
import type { Setting } from "../request/setting";

/** What is known of such a complex; undefined for any other product. */
export function slowComplexOf(product: Formula): SlowComplexRow | undefined {
  const { complex, cations } = constitutionOf(product);
  return complex && SLOW_COMPLEXES.find(({ ion }) => cations.some(({ formula }) => formula === ion));
}

/** What brings the last ligand in; undefined where none is needed, or something else is to keep its place. */
export function catalystOf(product: Formula): SlowComplexRow["catalyst"] {
  const row = slowComplexOf(product)?.catalyst;
  const { complex, cations, ligands } = constitutionOf(product);
  const isAlone = ligands.length === 1 && ligands[0]!.formula === row?.ligand;
  // no anion is bound to the metal
  const isWhole = cations.some(({ charge }) => charge === complex?.charge);
  return isAlone && isWhole ? row : undefined;
}

/**
 * What brings an anion of the product in beside the ligands of its metal; undefined where none is bound to it. An anion is where the
 * ligands leave a place of the metal open, however the formula is written.
 */
export function boundBy(product: Formula): SlowComplexRow["bound"] {
  const row = slowComplexOf(product)?.bound;
  const { anions, ligands } = constitutionOf(product);
  const isSimple =
    ligands.length > 0 && ligands.every(({ formula }) => MONODENTATE.some((one) => one.formula === formula));
  if (row === undefined || !isSimple || anions.some(({ formula }) => formula !== row.anion)) return undefined;
  const taken = ligands.reduce((all, { count }) => all + count, 0);
  return anions.length > 0 && taken < row.places ? row : undefined;
}

/** Is it the oxidising salt of the metal, which the ligand reduces? */
export const isReducedIn = ({ reduced }: SlowComplexRow, form: Formula): boolean =>
  reduced?.groups.some((group) => constitutionOf(form).groups.includes(group)) === true;

/** How warm a ligand is that reduces the salt of the metal as that comes to it; undefined where none does. */
export function warmAsReducer({ product, materials }: Setting, form: Formula): string | undefined {
  const row = slowComplexOf(product.formula);
  if (row === undefined || isReducedIn(row, form)) return undefined;
  return materials.some((one) => isReducedIn(row, one.form)) ? row.reduced?.ligandsAt : undefined;
}

/** How warm the vessel is kept while the salt comes to it that its ligands reduce: in the cold it piles up, and all reacts at once. */
export function warmWhileReduced({ product }: Setting, form: Formula): string | undefined {
  const row = slowComplexOf(product.formula);
  return row !== undefined && isReducedIn(row, form) ? row.reduced?.ligandsAt : undefined;
}

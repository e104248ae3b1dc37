// The ions a salt gives in water, in lowest terms: enough to see two salts share an ion, and to look a solid up among the
// solubility products. The ion layer reads them; covalent substances and acids have none here.
import type { Formula } from "../../formula";
import { gcd } from "../../foundation/gcd";
import { constitutionOf } from "../../ion";

/** One kind of ion in a salt. */
export interface SaltIon {
  /** As the tables write it: `Cu^2+`, `SO4^2-`, `[Fe(CN)6]^4-`. */
  readonly formula: string;
  readonly charge: number;
  /** How many in the smallest whole unit of the salt. */
  readonly count: number;
}

/** Ions already found, for as long as the formula lives: a plan asks for the same salts again and again. */
const found = /* @__PURE__ */ new WeakMap<Formula, { readonly ions: readonly SaltIon[] | undefined }>();

/** The ions of a salt, cations first, crystal water left aside; undefined for anything else. */
export function saltIons(formula: Formula): readonly SaltIon[] | undefined {
  let known = found.get(formula);
  if (known === undefined) {
    known = { ions: findIons(formula) };
    found.set(formula, known);
  }
  return known.ions;
}

function findIons(formula: Formula): readonly SaltIon[] | undefined {
  const { kind, inWater, molecules } = constitutionOf(formula);
  if (kind !== "salt" || molecules.length > 0 || !inWater.every(({ count }) => Number.isInteger(count)))
    return undefined;
  const common = inWater.reduce((all, { count }) => gcd(all, count), 0);
  return inWater.map(({ formula: ion, charge, count }) => ({ formula: ion, charge, count: count / common }));
}

/** The anions among them. */
export const anionsOf = (formula: Formula): readonly string[] =>
  (saltIons(formula) ?? []).filter(({ charge }) => charge < 0).map(({ formula: ion }) => ion);

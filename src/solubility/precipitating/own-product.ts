// A caller's own solubility product. The number alone does not say which dissolution it is for: the ions come from the
// table, from the formula, or from the caller; where two conventions are in use, the caller has to say.

import { SOLUBILITY_PRODUCTS } from "../../aqueous/internal";
import { parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { type Solute, soluteOf } from "../curves/solute";
import { SolubilityError } from "../error";
import { saltIons } from "./ions";
import { type DissolvedIon, findRows, ionsOf } from "./product";

const COUNTED = /^\s*(?:(\d+)\s+)?(\S+)\s*$/;

/** Elements whose number a dissolution may change, because water takes part. */
const OF_WATER = ["H", "O"];

/** The ions as the caller states them. */
function statedIons(solute: Solute, stated: readonly string[]): readonly DissolvedIon[] {
  const ions = stated.map((text): DissolvedIon => {
    const [, count = "1", formula = text] = COUNTED.exec(text) ?? [];
    return { formula, charge: parseFormula(formula).charge, count: Number(count) };
  });
  const charge = ions.reduce((all, ion) => all + ion.charge * ion.count, 0);
  const symbols = new Set([...solute.formula.symbols, ...ions.flatMap(({ formula }) => parseFormula(formula).symbols)]);
  const wrong = [...symbols].filter((symbol) => {
    if (OF_WATER.includes(symbol)) return false;
    const held = ions.reduce((all, ion) => all + ion.count * Number(parseFormula(ion.formula).count(symbol)), 0);
    return held !== Number(solute.formula.count(symbol));
  });
  if (charge === 0 && wrong.length === 0 && ions.every(({ count }) => count > 0)) return ions;
  throw new SolubilityError(
    "solubility.bad-option",
    `${stated.join(" + ")} is not what ${solute.formula} dissolves to: ${charge === 0 ? `${wrong.join(", ")} differ` : `the charges add up to ${charge}`}`,
    { hint: 'name the ions with their numbers, such as ["2 Ag+", "S^2-"]', details: { ions: stated, charge, wrong } },
  );
}

const shown = (ions: readonly DissolvedIon[]): string =>
  `[${ions.map(({ formula, count }) => `"${count === 1 ? "" : `${count} `}${formula}"`).join(", ")}]`;

/** The ions of a caller's own constant. */
export function ionsOfOwn(given: string | Parameters<typeof soluteOf>[0], form: string | undefined, stated: unknown) {
  const solute = soluteOf(given);
  if (stated !== undefined) {
    if (!Array.isArray(stated) || stated.length === 0 || stated.some((ion) => typeof ion !== "string"))
      throw new SolubilityError("solubility.bad-option", 'ions are a list of texts, such as ["2 Ag+", "S^2-"]');
    return statedIons(solute, stated as string[]);
  }
  const rows = findRows(solute.formula, form);
  const [row] = rows;
  if (row?.convention !== undefined) {
    const both = SOLUBILITY_PRODUCTS().filter(({ solid }) => soluteOf(solid).key === solute.key);
    const ways = [...new Set(both.map((each) => shown(ionsOf(each))))];
    throw new SolubilityError("solubility.missing-option", `which ions is your Ksp of ${solute.formula} for?`, {
      hint: `a sulfide's is printed for S^2- or for HS- and OH-, seven powers of ten apart and more: name ions, ${list([...new Set([...ways, freeSulfide(solute)])], "or")}`,
      details: { solid: solute.formula.toString(), ions: ways },
    });
  }
  if (row !== undefined) return ionsOf(row);
  const salt = saltIons(solute.anhydrous);
  if (salt !== undefined) return salt;
  throw new SolubilityError("solubility.missing-option", `what ions does ${solute.formula} dissolve to?`, {
    hint: 'name ions, such as ["2 Ag+", "S^2-"]',
    details: { solid: solute.formula.toString() },
  });
}

/** The convention of most textbooks, for a sulfide that the table has in the other one only: each of them reads as a salt. */
const freeSulfide = (solute: Solute): string => shown([...saltIons(solute.anhydrous)!]);

/** Refuse what is no solubility product of a sparingly soluble solid, and say what it looks like. */
export function checkOwn(k: Quantity): Quantity {
  if (!k.isPositive())
    throw new SolubilityError("solubility.not-positive", `a solubility product is more than zero, not ${k}`);
  if (k.compare("1") < 0) return k;
  throw new SolubilityError("solubility.bad-option", `a Ksp of ${k} is not that of a sparingly soluble solid`, {
    hint: `${k} looks like a pKsp: give ksp as 10^-pKsp, here "${(10 ** -k.toNumber()).toPrecision(3)}"`,
    details: { ksp: k.toString() },
  });
}

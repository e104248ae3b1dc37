// A cyanido complex in a liquor that acid was put to, and what carbonate makes of that: warm it would give off hydrogen cyanide, so it
// is made neutral first.
import { tryBalance } from "../../equation";
import { type Formula, parseFormula } from "../../formula";
import { constitutionOf } from "../../ion";
import { saltFormula } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { matterOf } from "../contents/matter";
import { type Term, termsOf } from "../contents/react";
import { MADE_NEUTRAL } from "../data/ends";
import { exact } from "../planning/exact";
import type { Setting } from "../request/setting";
import { isAcid } from "./acids";
import { neutralisation } from "./neutralising";

/** Does acid come to a cyanido complex, which stays whole in it while it is cold and dilute? */
export const meetsCyanide = ({ materials, asides, reactants, products, wet }: Setting): boolean =>
  wet &&
  [...materials, ...asides].some(({ form }) => isAcid(form)) &&
  [...reactants, ...products].some(({ formula }) => madeOf(formula).cyanide !== undefined);

/** A carbonate and what it is called. */
interface Carbonate {
  readonly formula: Formula;
  readonly called: (typeof MADE_NEUTRAL.by)[number]["called"];
}

/** The carbonate that makes such a liquor neutral: of the alkali metal outside of the product; undefined where there is none to make. */
export function carbonateFor(setting: Setting): Carbonate | undefined {
  const { formula } = setting.product;
  if (!meetsCyanide(setting) || isAcid(formula)) return undefined;
  const { inWater } = constitutionOf(formula);
  const row = MADE_NEUTRAL.by.find(({ cation }) => inWater.some((one) => one.formula === cation));
  return row && { formula: parseFormula(saltFormula(row.cation, MADE_NEUTRAL.anion)), called: row.called };
}

/** What such a carbonate does, and how much of it that uses. */
interface MadeNeutral {
  readonly terms: readonly Term[];
  readonly extent: Quantity;
  readonly used: Quantity;
}

/** What it does with a solute: acid goes, and a metal precipitates; undefined for all else. */
export function madeNeutral(carbonate: Formula, solute: Formula, amount: Quantity): MadeNeutral | undefined {
  if (isAcid(solute)) {
    const found = neutralisation(carbonate, solute);
    if (found === undefined) return undefined;
    const extent = amount.dividedBy(exact(String(found.acids)));
    return { terms: found.terms, extent, used: extent.times(-found.terms[0]!.count) };
  }
  const { cations, anions } = constitutionOf(solute);
  const [cation] = constitutionOf(carbonate).cations;
  const [anion] = anions;
  const isTaken = cations.some(({ formula }) => formula === MADE_NEUTRAL.precipitates);
  if (!isTaken || cation === undefined || anion === undefined) return undefined;
  const solid = saltFormula(MADE_NEUTRAL.precipitates, MADE_NEUTRAL.anion);
  const found = tryBalance(`${solute} + ${carbonate} -> ${solid} + ${saltFormula(cation.formula, anion.formula)}`);
  if (!found.ok) return undefined;
  const [salt, base] = found.value.reactants;
  const extent = amount.dividedBy(exact(String(salt!.coefficient)));
  const { key } = matterOf(parseFormula(solid));
  return {
    terms: termsOf(found.value, (made) => (matterOf(made).key === key ? "precipitated" : "dissolved")),
    extent,
    used: extent.times(base!.coefficient),
  };
}

// Does the wanted compound exist in water at all? What its ions make of each other in its place, by table.

import { parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { list } from "../../foundation/wording";
import { isOneOf } from "../../ion/internal";
import {
  APART_IN_LYE,
  NEVER_IN_WATER,
  NO_TUTTON_SALT,
  OXIDE_OR_HYDROXIDE,
  TAKEN_APART,
} from "../../solubility/internal";
import { DRY_ALUMINATES } from "../data/unwilling-solids";
import { isLye } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import type { Case } from "./case";
import type { Figure, Reason, Ruling } from "./feasibility";

const one = (formula: string): string => {
  const read = attempt(() => parseFormula(formula));
  return read.ok ? read.value.toUnicode() : formula;
};

/** How much of each feed 100 g of water dissolves, in words and as figures. */
function dissolving({ put, setting }: Case): { readonly text: string; readonly figures: readonly Figure[] } {
  const known = put.flatMap(({ species: { formula, name, isWater } }) => {
    const grams = isWater ? undefined : fateOf(formula, setting.temperature).perHundredGramsWater;
    return grams === undefined ? [] : [{ name, grams }];
  });
  return {
    text: list(known.map(({ name, grams }) => `${grams.format({ significant: 2, uncertainty: "none" })} of ${name}`)),
    figures: known.map(({ name, grams }) => ({
      value: grams.toNumber("g"),
      unit: "g",
      label: `${name}, anhydrous, in 100 g of water`,
    })),
  };
}

/** What is said of a compound of these ions that does not exist in water, with the cation it is said of. */
export function notInWater<Ion extends { readonly formula: string }>(
  cations: readonly Ion[],
  anions: readonly Ion[],
): { readonly row: ReturnType<typeof NEVER_IN_WATER>[number]; readonly cation: Ion } | undefined {
  const hydroxide = anions.some(({ formula }) => formula === "OH-" || formula === "O^2-");
  // a basic salt is no salt of such a pair, and of oxides and hydroxides only those of one metal are meant
  const isSimple = anions.length === 1 && cations.length === 1;
  for (const row of hydroxide ? (isSimple ? OXIDE_OR_HYDROXIDE : []) : NEVER_IN_WATER()) {
    const cation = cations.find(({ formula }) => row.cations.includes(formula));
    if (cation !== undefined && anions.some(({ formula }) => row.anions.includes(formula))) return { row, cation };
  }
  return undefined;
}

/** A halogen beside lye, formed with it or left. */
function apartInLye({ product, made, put }: Case): Ruling | undefined {
  const { formula, name } = product.species;
  if (!isOneOf(formula, ...APART_IN_LYE.formulas)) return undefined;
  const beside = [...made, ...put.filter(({ left }) => left > 0)].find(({ species }) => isLye(species.formula));
  if (beside === undefined) return undefined;
  const { why, instead, source } = APART_IN_LYE;
  const text = `${name} does not stand beside ${beside.species.name}: ${why}; ${instead}`;
  return { verdict: "does not go", share: 0, solids: [], reasons: [{ code: "not-in-water", text, source }] };
}

/** An aluminate of lime or strontia without water, which only fire makes: water gives hydrates, and takes it apart to them. */
function dryAluminate({ made }: Case): Ruling | undefined {
  for (const { species, made: of } of made) {
    const row = DRY_ALUMINATES.find(({ cation }) => of.cations.some(({ formula }) => formula === cation));
    const isAluminate =
      of.anions.some(({ formula }) => formula === "AlO2-") ||
      (of.cations.some(({ formula }) => formula === "Al^3+") && of.anions.every(({ formula }) => formula === "O^2-"));
    if (row === undefined || !isAluminate || of.waters > 0) continue;
    const text = `${species.name} does not form in water: ${row.instead}; without water it is fired, from ${row.from}`;
    return {
      verdict: "does not go",
      share: 0,
      solids: [],
      reasons: [{ code: "only-by-fire", text, source: row.source }],
    };
  }
  return undefined;
}

/** An oxide that the equation leaves beside the product, and that water takes. */
function besideInWater({ made, product }: Case): Ruling | undefined {
  for (const { species, made: of } of made) {
    if (species === product.species || of.complex !== undefined) continue;
    const row = of.anions.some(({ formula }) => formula === "O^2-")
      ? notInWater(of.cations, of.anions)?.row
      : undefined;
    if (row === undefined) continue;
    const text = `${species.name} does not exist in water: ${row.why}; write the equation with the hydroxide, and whether it still goes is another question`;
    return {
      verdict: "does not go",
      share: 0,
      solids: [],
      reasons: [{ code: "not-in-water", text, source: row.source }],
    };
  }
  return undefined;
}

/** Rules that the compound does not form from water; undefined for one that may. */
export function judgeCompound(c: Case): Ruling | undefined {
  const { product, setting } = c;
  if (!setting.wet) return undefined;
  const { cations, anions, waters, complex } = product.made;
  const name = product.species.name;
  if (complex !== undefined) return undefined;
  const apart = apartInLye(c);
  if (apart !== undefined) return apart;
  const found = notInWater(cations, anions);
  if (found !== undefined) {
    const { row, cation } = found;
    const solids = row.instead.map(({ formula, cations: n }) => ({
      formula: one(formula),
      moles: (cation.count * product.moles) / n,
      share: 1,
    }));
    return {
      verdict: "does not go",
      share: 0,
      solids,
      reasons: [
        {
          code: "not-in-water",
          text: `${name} does not exist in water: ${row.why}${solids.length > 0 ? `; ${list(solids.map((s) => s.formula))} forms in its place` : ""}`,
          source: row.source,
        },
      ],
    };
  }
  const beside = dryAluminate(c) ?? besideInWater(c);
  if (beside !== undefined) return beside;
  const sulfates = anions.length === 1 && anions[0]!.formula === "SO4^2-" && anions[0]!.count === 2;
  const small = cations.find(({ formula }) => (NO_TUTTON_SALT.cations as readonly string[]).includes(formula));
  const divalent = cations.some(({ charge }) => charge === 2);
  if (sulfates && small !== undefined && divalent && cations.length === 2 && waters === NO_TUTTON_SALT.waters) {
    const simple = dissolving(c);
    const alone =
      simple.text === "" ? "" : `; the simple salts crystallise by themselves, 100 g of water dissolves ${simple.text}`;
    return {
      verdict: "does not go",
      share: 0,
      solids: [],
      reasons: [
        {
          code: "not-in-water",
          text: `${name} is not known: ${NO_TUTTON_SALT.why}${alone}`,
          figures: simple.figures,
          source: NO_TUTTON_SALT.source,
        },
      ],
    };
  }
  return undefined;
}

/** Is the wanted salt one that water takes apart? */
export function hydrolysisOf({ product }: Case): Reason | undefined {
  const { cations, anions, complex } = product.made;
  const isIn = (list: readonly string[], ions: readonly { readonly formula: string }[]): boolean =>
    ions.some(({ formula }) => list.includes(formula));
  if (complex !== undefined || !isIn(TAKEN_APART.cations, cations) || !isIn(TAKEN_APART.anions, anions))
    return undefined;
  return { code: "hydrolysis", text: `${product.species.name}: ${TAKEN_APART.why}`, source: TAKEN_APART.source };
}

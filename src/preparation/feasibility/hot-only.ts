// What hands electrons on only in fire, or in acid far hotter than a vessel of a plan.
import { isOneOf } from "../../ion/internal";
import { COUPLES, FIRE_ONLY, HOT_SULFURIC, MELT_ONLY, SLUGGISH } from "../data/couples";
import type { Case, Put } from "./case";
import type { Reason, Ruling } from "./feasibility";

/** Is it a metal as such? */
export const isMetalPiece = ({ made, species }: Put): boolean =>
  made.kind === "element" && COUPLES().some(({ element, low }) => low === 0 && element === species.formula.symbols[0]);

/** It does not go, and why. */
export const never = (reason: Reason, share = 0): Ruling => ({
  verdict: "does not go",
  share,
  solids: [],
  reasons: [reason],
});

/** Sulfuric acid that is written to give sulfur dioxide: only what is strong and far hotter than a vessel of a plan does that. */
function hotStrongAcid({ put, made }: Case): Ruling | undefined {
  const acid = put.find(({ species }) => isOneOf(species.formula, "H2SO4"));
  const metal = put.find(isMetalPiece);
  if (acid === undefined || metal === undefined) return undefined;
  if (!made.some(({ species }) => isOneOf(species.formula, "SO2"))) return undefined;
  const { symbols } = metal.species.formula;
  if ((HOT_SULFURIC.not as readonly string[]).includes(symbols[0]!)) return undefined;
  const { strength, at, source } = HOT_SULFURIC;
  const { name } = metal.species;
  return {
    verdict: "does not go",
    share: 0,
    solids: [],
    reasons: [
      {
        code: "potentials",
        text: `only sulfuric acid of ${strength} or more at about ${at} gives SO2 with ${name}, and no step of a plan heats acid to that: with hydrogen peroxide in dilute acid, or as its oxide, ${name} dissolves below the boil`,
        source,
      },
    ],
  };
}

/** A metal and an element that no water carries to it: they meet in fire only. */
function onlyByFire({ put, product }: Case): Ruling | undefined {
  const metal = put.find(isMetalPiece);
  const other = put.find((one) => one !== metal && isOneOf(one.species.formula, ...FIRE_ONLY.elements));
  if (metal === undefined || other === undefined || put.length > 2) return undefined;
  if ((FIRE_ONLY.not as readonly string[]).includes(metal.species.formula.symbols[0]!)) return undefined;
  return never({
    code: "only-by-fire",
    text: `in water ${metal.species.name} and ${other.species.name} do not react with each other; heated dry, the mixture reacts violently, and no plan includes that: precipitate ${product.species.name} from a salt of the metal`,
    source: FIRE_ONLY.source,
  });
}

/** The row of sulfur, charcoal, or of a nitrate without acid that is reduced; undefined for all else. */
const sluggishRow = (one: Put, { redox, put }: Case): (typeof SLUGGISH)[number] | undefined =>
  SLUGGISH.find(
    ({ formulas, oxidiser }) =>
      isOneOf(one.species.formula, ...formulas) ||
      (oxidiser !== undefined &&
        one.made.acid === undefined &&
        redox?.reduced.some(({ symbol }) => symbol === oxidiser.element) &&
        hasAnion(one, oxidiser.anion) &&
        // it may be what another brings of the element that is reduced, such as nitrite
        put.every(
          (other) => hasAnion(other, oxidiser.anion) || other.species.formula.count(oxidiser.element).n === 0n,
        )),
  );

const hasAnion = ({ made }: Put, anion: string): boolean => made.anions.some(({ formula }) => formula === anion);

/** Does it react with such a one below the boil all the same? */
const takesSluggish = (
  { species, made: { anions, acid } }: Put,
  { molecules, acids, anions: ions }: (typeof SLUGGISH)[number],
): boolean =>
  isOneOf(species.formula, ...molecules) ||
  (acid !== undefined && acids.includes(acid.anion)) ||
  anions.some(({ formula }) => ions.includes(formula));

/** Sulfur, charcoal, or nitrate without acid, with what takes none of them in water. */
function sluggish(c: Case): Ruling | undefined {
  for (const one of c.put) {
    const row = sluggishRow(one, c);
    const others = c.put.filter((other) => other !== one && !other.species.isWater);
    if (row === undefined || others.length === 0 || others.some((other) => takesSluggish(other, row))) continue;
    return never({
      code: "only-by-fire",
      text: `below the boil ${one.species.name} and ${others.map(({ species }) => species.name).join(", ")} hardly react with each other in water: they do ${row.elsewhere}, which is no work of this plan`,
      source: row.source,
    });
  }
  return undefined;
}

/** An oxide that only melted alkali lets air, nitrate or chlorate oxidise. */
function inMelt({ put }: Case): Ruling | undefined {
  const oxide = put.find(({ species }) => isOneOf(species.formula, ...MELT_ONLY.oxides));
  const alkali = put.find(({ made }) => made.anions.some(({ formula }) => formula === "OH-" || formula === "CO3^2-"));
  const oxidiser = put.find(
    (one) => isOneOf(one.species.formula, ...MELT_ONLY.molecules) || MELT_ONLY.anions.some((ion) => hasAnion(one, ion)),
  );
  if (oxide === undefined || alkali === undefined || oxidiser === undefined) return undefined;
  return never({
    code: "only-by-fire",
    text: `in water ${oxidiser.species.name} leaves ${oxide.species.name} alone, with ${alkali.species.name} in it as well: it oxidises it in melted alkali, which is no work of this plan`,
    source: MELT_ONLY.source,
  });
}

/** Rules of what is too cold in water; undefined where none speaks against it. */
export const judgeHot = (c: Case): Ruling | undefined => onlyByFire(c) ?? inMelt(c) ?? sluggish(c) ?? hotStrongAcid(c);

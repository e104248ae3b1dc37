// Liquors of extreme pH: what they are taken for, and in which steps that is said. By the classification of what makes them so
// where there is one, by the pH alone where there is none.

import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { sum } from "../../quantity";
import type { FormulaOfStrength } from "../../substance";
import { cautionsOfFormulas, hasOwnLimits } from "../../substance/internal";
import { type Entry, massOf } from "../contents/entry";
import type { Pot } from "../contents/pot";
import { EXTREME_PH } from "../data/extreme-ph";
import { exact } from "../planning/exact";
import type { Draft } from "../procedure/bench";
import { isAmmonia, isAnionOfStrongAcid, isLye } from "../reaction/acids";
import { hydronsGivenBy } from "./waste-treatment";

/** What a liquor does to skin and eyes. */
type Harm = "burns" | "harms eyes" | "irritates";

/** A liquor of extreme pH. */
export interface ExtremeLiquor {
  readonly harm: Harm;
  /** As it is printed. */
  readonly pH: string;
}

/** What statements come to. */
const harmBy = (codes: readonly string[]): Harm =>
  codes.includes("H314") ? "burns" : codes.includes("H318") ? "harms eyes" : "irritates";

/**
 * What a liquor of extreme pH is taken for by one of its causes: by the limits of its own entry where there are any, else by the class of
 * the substance itself, however thin; as corrosive where nothing is known but the pH.
 */
function harmOf({ matter: { formula } }: Entry, massPercent: number): Harm {
  const text = formula.toString();
  const isLimited = hasOwnLimits(formula);
  const asked = isLimited ? { formula: text, massPercent } : text;
  const own = cautionsOfFormulas([asked], []).substances.filter(({ status }) => status === "classified");
  if (own.length === 0) return isLimited ? "irritates" : "burns";
  return harmBy(own.flatMap(({ statements }) => statements.map(({ code }) => code)));
}

/** What statements there are of these come to. */
const harmsOf = (asked: readonly (string | FormulaOfStrength)[]): Harm[] =>
  asked.length === 0
    ? []
    : cautionsOfFormulas(asked, []).substances.map(({ statements }) => harmBy(statements.map(({ code }) => code)));

const WORST: readonly Harm[] = ["burns", "harms eyes", "irritates"];

/** The worst of what is asked, the next only as long as there is worse; some of it is there. */
function worstOf(asked: readonly (() => readonly Harm[])[]): Harm {
  let rank = WORST.length - 1;
  for (const ask of asked) {
    if (rank === 0) break;
    for (const harm of ask()) rank = Math.min(rank, WORST.indexOf(harm));
  }
  return WORST[rank]!;
}

const isAcidic = ({ matter }: Entry): boolean => hydronsGivenBy(matter.formula) > 0n;

const isHydroxide = ({ matter }: Entry): boolean =>
  constitutionOf(matter.formula).anions.some(({ formula }) => formula === "OH-");

/** Ammonia, or a salt of a weak acid. */
const isBasic = ({ matter: { formula } }: Entry): boolean =>
  isAmmonia(formula) || constitutionOf(formula).anions.some((one) => !isAnionOfStrongAcid(one.formula));

/** What makes a liquor sour, or alkaline: acids, hydroxides, else the salts that water makes it of. */
function causesOf(side: "sour" | "alkaline", dissolved: readonly Entry[]): readonly Entry[] {
  const strongest = dissolved.filter(side === "sour" ? isAcidic : isHydroxide);
  if (strongest.length > 0) return strongest;
  const basic = side === "alkaline" ? dissolved.filter(isBasic) : [];
  return basic.length > 0 ? basic : dissolved;
}

/** So much of a strong acid or of lye that its pH needs no model. */
function sideWithoutModel(dissolved: readonly Entry[]): "sour" | "alkaline" | undefined {
  const isStrong = (one: Entry): boolean =>
    isAcidic(one) && constitutionOf(one.matter.formula).acid !== undefined && isStrongAcidOf(one.matter.formula);
  const [sour, alkaline] = [dissolved.some(isStrong), dissolved.some(({ matter }) => isLye(matter.formula))];
  return sour === alkaline ? undefined : sour ? "sour" : "alkaline";
}

const isStrongAcidOf = (formula: Formula): boolean => {
  const { acid } = constitutionOf(formula);
  return acid !== undefined && isAnionOfStrongAcid(acid.anion);
};

/** What its pH makes of a liquor; undefined where it is milder, or so thin that it brings too little acid or base. */
function extremeLiquor(pot: Pot): ExtremeLiquor | undefined {
  const { dissolved, solids, water } = pot.books;
  if (dissolved.length === 0 || !water.isPositive()) return undefined;
  const { pH } = pot.contents;
  const side =
    pH === undefined
      ? sideWithoutModel(dissolved)
      : pH.compare(exact(EXTREME_PH.sour)) <= 0
        ? "sour"
        : pH.compare(exact(EXTREME_PH.alkaline)) >= 0
          ? "alkaline"
          : undefined;
  if (side === undefined) return undefined;
  const causes = causesOf(side, dissolved);
  const liquor = pot.mass.minus(sum([exact("0 g"), ...solids.map(massOf)]));
  if (sum(causes.map(massOf)).compare(liquor.times(exact(EXTREME_PH.from))) < 0) return undefined;
  const percentOf = (one: Entry): number => massOf(one).dividedBy(liquor).toNumber("%");
  const harm = worstOf([
    () => causes.map((one) => harmOf(one, percentOf(one))),
    // what else is in it burns by itself, whatever the acid does
    () => harmsOf(dissolved.map((one) => ({ formula: one.matter.formula.toString(), massPercent: percentOf(one) }))),
    () => harmsOf(solids.map(({ matter }) => matter.formula.toString())),
  ]);
  const below = side === "sour" ? `less than ${EXTREME_PH.sour}` : `more than ${EXTREME_PH.alkaline}`;
  return { harm, pH: pH === undefined ? below : `about ${Math.max(0, Math.round(pH.toNumber("")))}` };
}

/** Steps that make a liquor, add to it or pour it. */
const HANDLES: readonly Draft["operation"][] = ["dissolve", "dilute", "suspend", "add", "filter"];

/** Which steps handle such a liquor: that in which each vessel first has one, and that in which it is poured through a filter. */
export function extremeLiquors(drafts: readonly Draft[]): ReadonlyMap<Draft, ExtremeLiquor> {
  const found = new Map<Draft, ExtremeLiquor>();
  const said = new Set<string>();
  for (const draft of drafts) {
    if (!HANDLES.includes(draft.operation)) continue;
    const isPoured = draft.operation === "filter";
    const own = extremeLiquor(isPoured ? draft.before : draft.after);
    const key = `${draft.vessel} ${own?.harm} ${isPoured}`;
    if (own === undefined || said.has(key)) continue;
    said.add(key);
    found.set(draft, own);
  }
  return found;
}

// Solids that do not do what their equation says: a new one coats the old, a fired oxide stays in acid.

import { keyOf } from "../../aqueous/internal";
import { ACID_STEPS } from "../../ion/internal";
import { matterOf } from "../contents/matter";
import { COATING } from "../data/unwilling-solids";
import { isLye } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { firedOxide } from "../reaction/fired-oxide";
import { coreOf } from "../reaction/species";
import type { Case, Put } from "./case";
import type { Reason, Ruling } from "./feasibility";
import { figure } from "./standing";

/** Highest pKa of an acid that counts as strong here. */
const STRONG_ACID = 1.5;

const isAcid = ({ made }: Put): boolean => made.acid !== undefined;

const falls = (one: { readonly species: Put["species"] }, { setting }: Case): boolean =>
  fateOf(one.species.formula, setting.temperature).precipitated === true;

/** A base that acid should dissolve, whose salt is a solid as well: it grows on the grains. */
export function coatOf(c: Case): Reason[] {
  const acid = c.put.find(isAcid);
  if (acid === undefined || !c.setting.wet) return [];
  const base = c.put.find(
    (one) =>
      one !== acid &&
      falls(one, c) &&
      one.made.anions.some(({ formula }) => (COATING.anionsOf as readonly string[]).includes(formula)),
  );
  const skin =
    base === undefined ? undefined : c.made.find((one) => !one.gas && falls(one, c) && sharesMetal(one, base));
  if (base === undefined || skin === undefined) return [];
  const dissolves = fateOf(skin.species.formula, c.setting.temperature).perHundredGramsWater;
  const sparing =
    dissolves === undefined
      ? ""
      : `; 100 g of water dissolves only ${dissolves.format({ significant: 2, uncertainty: "none" })} of it`;
  const reasons: Reason[] = [
    {
      code: "coats",
      text: `${skin.species.name} forms a coat on the grains of ${base.species.name}: lumps stop reacting, fine powder reacts slowly; how far depends on the grain size${sparing}`,
      ...(dissolves === undefined
        ? {}
        : { figures: [figure(dissolves.toNumber("g"), "g", `${skin.species.name}, anhydrous, in 100 g of water`)] }),
      source: COATING.source,
    },
  ];
  if (skin === c.product)
    reasons.push({
      code: "solid-excess",
      text: `${base.species.name} that is left and ${skin.species.name} are both solid: no washing separates them, so it must not be in excess`,
      source: COATING.source,
    });
  return reasons;
}

const sharesMetal = (a: { readonly made: Put["made"] }, b: Put): boolean =>
  a.made.cations.some((x) => b.made.cations.some((y) => x.formula === y.formula));

/** pKa of the strongest step of an acid; undefined where no table has one. */
function pKaOf({ species }: Put): number | undefined {
  const core = coreOf(species.formula);
  const steps = ACID_STEPS().flatMap(({ acid, pKa }) => (keyOf(acid) === core ? [Number(pKa)] : []));
  return steps.length === 0 ? undefined : Math.min(...steps);
}

/** Does an acid have a step as strong as asked? */
const isStrongAcid = (acid: Put): boolean =>
  acid.made.acid?.strong === true || (pKaOf(acid) ?? Number.POSITIVE_INFINITY) <= STRONG_ACID;

/** A carbonate of which water makes an alkaline liquor. */
const isSoda = (one: Put, c: Case): boolean =>
  one.made.anions.some(({ formula }) => formula === "CO3^2-") && !falls(one, c);

/** Sand and its like beside soda: what fire makes of them goes into water afterwards, and is a plan of its own. */
function judgeInSoda(c: Case): Ruling | undefined {
  const soda = c.put.find((one) => isSoda(one, c));
  const oxide = c.put.find(({ species }) => firedOxide(species.formula)?.inLye !== undefined);
  if (soda === undefined || oxide === undefined) return undefined;
  const { species, made } = c.product;
  const dry = matterOf(species.formula).core.name;
  const melt = `${dry} from ${soda.species.name} and ${oxide.species.name} in fire`;
  const cake = made.waters > 0 ? `, and ${species.name} from the crushed cake and water` : "";
  return {
    verdict: "does not go",
    share: 0,
    solids: [{ formula: oxide.species.name, moles: oxide.moles, share: 1 }],
    reasons: [
      {
        code: "fired-oxide",
        text: `${oxide.species.name} stays in a solution of ${soda.species.name}, and only fire brings the two together: two plans do it, ${melt} (an equation without water)${cake}`,
        source: firedOxide(oxide.species.formula)!.source,
      },
    ],
  };
}

/** The form of an oxide decides, and nobody has said which it is. */
const formMissing = (what: string, source: Reason["source"]): Ruling => ({
  verdict: "unknown",
  solids: [],
  reasons: [{ code: "missing", text: `missing: ${what}`, source }],
});

/** A fired oxide in lye that does not take it. */
function judgeInLye(c: Case): Ruling | undefined {
  if (!c.put.some(({ species }) => isLye(species.formula))) return judgeInSoda(c);
  for (const one of c.put) {
    const row = firedOxide(one.species.formula);
    if (row?.inLye === undefined) continue;
    const { name } = one.species;
    return row.inLye === "as gel"
      ? formMissing(
          `which form of ${name} it is: hot lye dissolves the gel, and leaves sand and quartz nearly as they are`,
          row.source,
        )
      : {
          verdict: "does not go",
          share: 0,
          solids: [{ formula: name, moles: one.moles, share: 1 }],
          reasons: [
            {
              code: "fired-oxide",
              text: `${name} that has been fired stays in lye; start from the hydroxide (it melts together with the solid base, which is no work of this plan)`,
              source: row.source,
            },
          ],
        };
  }
  return undefined;
}

/** A fired oxide in an acid that does not take it, or in lye. */
export function judgeFiredOxide(c: Case): Ruling | undefined {
  const acid = c.put.find(isAcid);
  if (!c.setting.wet || c.redox !== undefined) return undefined;
  if (acid === undefined) return judgeInLye(c);
  for (const one of c.put) {
    const row = firedOxide(one.species.formula);
    if (row === undefined) continue;
    // hydrofluoric acid takes silica
    if (acid.made.anions.some(({ formula }) => formula === "F-")) continue;
    const { name } = one.species;
    if (row.dissolves === "by its heat" && isStrongAcid(acid))
      return formMissing(
        `which form of ${name} it is: hot strong acid dissolves what has been heated gently, and leaves what has been calcined; start from the hydroxide`,
        row.source,
      );
    const never = row.dissolves === "not in acid" || !isStrongAcid(acid);
    const pKa = never && row.dissolves !== "not in acid" ? pKaOf(acid) : undefined;
    const tooWeak =
      pKa === undefined ? "" : `, and ${acid.species.name} has pKa ${pKa.toFixed(2)} (strong: below ${STRONG_ACID})`;
    const reason: Reason = {
      code: "fired-oxide",
      ...(pKa === undefined ? {} : { figures: [figure(pKa, "", `pKa of ${acid.species.name}`)] }),
      text: never
        ? `${name} stays in ${acid.species.name}: ${row.dissolves === "not in acid" ? "no acid but hydrofluoric dissolves it" : `only hot strong acid dissolves it once it has been fired${tooWeak}`}; start from the hydroxide or carbonate`
        : `${name} that has been fired dissolves slowly and in hot strong acid only`,
      source: row.source,
    };
    return never
      ? { verdict: "does not go", share: 0, solids: [{ formula: name, moles: one.moles, share: 1 }], reasons: [reason] }
      : { verdict: "goes", solids: [], reasons: [reason] };
  }
  return undefined;
}

// What a set of judged candidates allows to say: identified, cannot be told apart, or none fits, and what would decide.

import type { Quantity } from "../../quantity";
import { lessThanAll, planned } from "../planning/exact";
import { dryingOf } from "../procedure/drying";
import { formulaFrom } from "../reaction/species";
import type { SampleMixture } from "./mixtures";
import type { Identity, IdentityCandidate } from "./types";

/** Two candidates are told apart when the better one holds this share. */
const IDENTIFIED = 0.95;
export function verdictOf(
  candidates: readonly IdentityCandidate[],
  mixtures: readonly SampleMixture[],
  loss: Quantity | undefined,
  titrated: boolean,
): Pick<Identity, "verdict" | "remaining" | "text" | "next"> {
  const shown = loss === undefined ? "the acid neutralised" : `a loss of ${loss.format({ significant: 4 })}`;
  const fitting = candidates.filter((c) => c.fits);
  const best = candidates[0]!;
  if (fitting.length === 0) {
    const water = neededWater(candidates, loss);
    const [mixture] = mixtures;
    const readings = [
      ...(water === "" ? [] : [water]),
      ...(mixture === undefined ? [] : [`it would be ${mixture.text}`]),
    ];
    const isLight = loss !== undefined && candidates.every(({ difference }) => difference?.isPositive() !== true);
    return {
      verdict: "none fits",
      remaining: [],
      text: `${shown} fits none of the candidates alone; ${readings.length === 0 ? `the nearest is ${best.formula}` : readings.join("; or ")}`,
      next: isLight
        ? `ignite again to constant mass: what is not yet decomposed goes on losing mass${titrated ? "" : "; if nothing goes, titrate with acid, which distinguishes what is inert from what was fired already"}`
        : `${dryFirst(candidates)}, then ignite again to constant mass`,
    };
  }
  if (fitting.length === 1 || (best.fits && best.share >= IDENTIFIED)) {
    const wet = best.water.compare("0.05 %") > 0 ? ` with ${best.water.format({ significant: 2 })} of water` : "";
    return {
      verdict: "identified",
      remaining: [best.formula],
      text: `${shown} is that of ${best.formula}${wet}`,
      next:
        titrated || best.acidPerGram === undefined
          ? "nothing more is needed"
          : "a titration of a weighed sample with acid would confirm it",
    };
  }
  const names = fitting.map((c) => c.formula);
  return {
    verdict: "cannot tell apart",
    remaining: names,
    text: `${shown} cannot tell ${names.join(", ")} apart`,
    next:
      titrated || !titrationTells(fitting)
        ? `${dryFirst(fitting)}, then take a larger sample and a finer balance; or weigh the carbon dioxide that acid drives out`
        : "titrate a weighed sample with acid (mmol of H⁺ per gram), or take a larger sample and a finer balance",
  };
}

/** How to dry whatever of these it is, so that none of them is changed by it. */
function dryFirst(candidates: readonly IdentityCandidate[]): string {
  const oven = planned("oven");
  const limits = candidates.map(({ formula }) => ({ formula, upTo: dryingOf(formulaFrom(formula)).upTo }));
  const bears = (upTo: Quantity | undefined): boolean => upTo !== undefined && upTo.compare(oven) >= 0;
  if (limits.every(({ upTo }) => bears(upTo))) return "dry at 100 to 105 °C to constant mass first";
  const weak = limits.filter(({ upTo }) => !bears(upTo));
  const lowest = weak.reduce((a, b) =>
    a.upTo === undefined || (b.upTo !== undefined && a.upTo.compare(b.upTo) <= 0) ? a : b,
  );
  if (lowest.upTo === undefined)
    return `dry in air to constant mass first: how warm ${lowest.formula} may get is not known`;
  const most = lowest.upTo.format({ decimals: 0, uncertainty: "none" });
  return `dry in air, or no warmer than ${most}, to constant mass first: more would change ${lowest.formula}`;
}

/** Would a titration good to 1 % tell the candidates apart, each with the water it is taken to hold? */
function titrationTells(fitting: readonly IdentityCandidate[]): boolean {
  const acids = fitting.map((c) => c.acidPerGram?.times(lessThanAll(c.water)).toNumber("mmol/g"));
  return acids.some((a, i) =>
    acids.slice(i + 1).some((b) => a === undefined || b === undefined || Math.abs(a / b - 1) > 0.03),
  );
}

/** Water that would explain a loss that is too large, candidate by candidate. */
function neededWater(candidates: readonly IdentityCandidate[], loss: Quantity | undefined): string {
  if (loss === undefined) return "";
  const wet = candidates.flatMap(({ formula, difference, expectedLoss }) => {
    if (!difference!.isPositive()) return [];
    const water = difference!.dividedBy(lessThanAll(expectedLoss)).to("%");
    if (water.compare(planned("tooWet")) > 0) return [];
    return [`${formula} if it contained ${water.format({ significant: 2, uncertainty: "none" })} of water`];
  });
  return wet.length === 0 ? "" : `it would be ${wet.join(", or ")}`;
}

export function assumptionsOf(candidates: readonly IdentityCandidate[], allowed: Quantity): string[] {
  const residues = candidates.map(
    ({ formula, residue, condition }) =>
      `${formula} leaves ${residue}${condition === undefined ? "" : ` (${condition})`}`,
  );
  return [
    ...residues,
    `the sample contains ${allowed.isZero() ? "no water" : `at most ${allowed} of water`} beside its formula`,
    "all candidates are equally likely beforehand",
  ];
}

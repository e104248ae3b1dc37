// What a set of judged candidates allows to say: identified, cannot be told apart, or none fits, and what would decide.
import type { Quantity } from "../../quantity";
import { lessThanAll, planned } from "../exact";
import type { Identity, IdentityCandidate } from "./identity";

/** Two candidates are told apart when the better one holds this share. */
const IDENTIFIED = 0.95;
export function verdictOf(
  candidates: readonly IdentityCandidate[],
  loss: Quantity | undefined,
  titrated: boolean,
): Pick<Identity, "verdict" | "remaining" | "text" | "next"> {
  const shown = loss === undefined ? "the acid neutralised" : `a loss of ${loss.format({ significant: 4 })}`;
  const fitting = candidates.filter((c) => c.fits);
  const best = candidates[0]!;
  if (fitting.length === 0) {
    const water = neededWater(candidates, loss);
    return {
      verdict: "none fits",
      remaining: [],
      text: `${shown} fits none of the candidates; ${water === "" ? `the nearest is ${best.formula}` : water}`,
      next: "dry at 100 to 105 °C to constant mass first, then ignite again to constant mass",
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
        ? "dry to constant mass first, then take a larger sample and a finer balance; or weigh the carbon dioxide that acid drives out"
        : "titrate a weighed sample with acid (mmol of H⁺ per gram), or take a larger sample and a finer balance",
  };
}

/** Would a titration good to 1 % tell the candidates apart, each with the water it is taken to hold? */
function titrationTells(fitting: readonly IdentityCandidate[]): boolean {
  const acids = fitting.map((c) => c.acidPerGram?.times(lessThanAll(c.water)).in("mmol/g").toNumber());
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

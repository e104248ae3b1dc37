// Which of several solids a sample is: by what it loses on ignition, by the acid it neutralises, or both together, with the
// water it may hold beside its formula. Says that it cannot tell where that is the truth.

import type { MassLike } from "../../amount";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { canonicalFormula } from "../../substance";
import { PlanError } from "../error";
import { exact } from "../planning/exact";
import { reading } from "../reaction/account";
import { nameOfFormula } from "../reaction/species";
import { guard } from "../request/argument";
import { COVERAGE } from "../verdict/difference";
import { acidPerGramOf } from "./ignition";
import { mixturesOf } from "./mixtures";
import { acidOf, candidatesOf, expectedLossOf, lossOf } from "./tests";
import type { Identity, IdentityCandidate, MassLossRequest } from "./types";
import { assumptionsOf, verdictOf } from "./verdict";

interface Test {
  /** Value found. */
  readonly found: Quantity;
  /** Value of the dry candidate, and what each unit of water in the sample adds to it. */
  readonly dry: number;
  readonly perWater: number;
  readonly u: number;
  readonly value: number;
}

function massOf(like: MassLike, argument: string, request: MassLossRequest): Quantity {
  const mass = expectDimension(like, "mass", argument);
  guard.positive(mass, argument);
  const naming = { symbol: argument === "before" ? "m₁" : "m₂", label: `mass ${argument} ignition` };
  if (mass.standardUncertainty !== undefined) return mass.symbol === undefined ? mass.named(naming) : mass;
  const step =
    request.readability === undefined
      ? quantity({ value: `1e-${decimalsOf(like, mass)}`, unit: mass.unit })
      : expectDimension(request.readability, "mass", "readability");
  return reading(mass, step, naming);
}

/** Decimals as written, so that "0.2720 g" is good to 0.1 mg. */
function decimalsOf(like: MassLike, mass: Quantity): number {
  const written = typeof like === "string" ? /\.(\d+)/.exec(like)?.[1]?.length : undefined;
  return written ?? mass.value.decimalPlaces();
}

/** The share of water within [0, most] that makes the tests fit best; each test is linear in it. */
function bestWater(tests: readonly Test[], most: number): number {
  const top = tests.reduce((s, t) => s + (t.perWater * (t.value - t.dry)) / t.u ** 2, 0);
  const bottom = tests.reduce((s, t) => s + t.perWater ** 2 / t.u ** 2, 0);
  return bottom === 0 ? 0 : Math.min(most, Math.max(0, top / bottom));
}

const offBy = (test: Test | undefined, water: number): number | undefined =>
  test === undefined ? undefined : (test.value - test.dry - test.perWater * water) / test.u;

/** Smallest uncertainty assumed, so that exact inputs still rank. */
const FLOOR = 1e-6;

function testOf(found: Quantity, expected: Quantity, perWater: (dry: number) => number): Test {
  const difference = found.minus(expected);
  const dry = expected.toNumber(found.unit);
  const value = found.toNumber();
  const u = difference.standardUncertainty?.toNumber() ?? 0;
  return { found, dry, value, perWater: perWater(dry), u: Math.max(u, FLOOR * Math.max(1, Math.abs(value))) };
}

const MASS_LOSS = {
  before: true,
  after: true,
  candidates: true,
  product: true,
  residue: true,
  adsorbedWater: true,
  readability: true,
  acidPerGram: true,
  facts: true,
} as const satisfies Fields<MassLossRequest>;

/**
 * Which of several solids a sample is, from its loss on ignition, from the acid it neutralises, or from both.
 *
 * @param request - masses `before` and `after` ignition and/or `acidPerGram`; `candidates` as formulas, or the `product`
 *   that was wanted, for which the other solids of the same metal are looked up; `adsorbedWater`, the most water the
 *   sample may hold beside its formula; `readability` of the balance
 * @returns the loss with its uncertainty, candidates ranked with their residues and shares, mixtures with the share of
 *   the first part and its uncertainty, and a verdict: identified, cannot tell apart, or none fits
 * @throws {PlanError} `plan.request`, `plan.not-positive`, `plan.no-residue`, `plan.observation` when it gained mass or no
 *   test is given; codes of `quantity` and `parseFormula`
 * @source losses from the formulas; which residue forms and the criterion of two standard uncertainties: common practice
 * @category Yield
 * @example
 * const sample = identifyByMassLoss({ before: "2.000 g", after: "1.440 g", product: "Cu2(OH)2CO3" });
 * sample.remaining // => ["Cu₂(OH)₂CO₃"]
 * identifyByMassLoss({ before: "0.50 g", after: "0.35 g", candidates: ["Cu2(OH)2CO3", "Cu3(OH)2(CO3)2"] }).verdict // => "cannot tell apart"
 * const marble = identifyByMassLoss({ before: "2.0000 g", after: "1.1818 g", candidates: ["CaCO3"] });
 * marble.mixtures[0]!.text // => "93.04 ± 0.16 % of CaCO₃, the rest loses nothing and neutralises no acid"
 */
export function identifyByMassLoss(request: MassLossRequest): Identity {
  if (bringsFacts(request)) return withItsFacts(request, guard, identifyByMassLoss);
  return identified(request, exact("0 %"));
}

/**
 * The same of a sample that is to stand for more than itself.
 *
 * @param scatter - what the loss of such a sample may be off from that of the whole, 0 % with its uncertainty
 */
export function identified(request: MassLossRequest, scatter: Quantity): Identity {
  guard.fields(request, MASS_LOSS, "request");
  const { before, after } = request;
  if ((before === undefined) !== (after === undefined) || (before === undefined && request.acidPerGram === undefined)) {
    throw new PlanError("plan.observation", "an identity needs the mass before and after ignition, or acidPerGram");
  }
  const loss =
    before === undefined
      ? undefined
      : lossOf(massOf(before, "before", request), massOf(after!, "after", request), scatter);
  const acid = acidOf(request);
  const allowed = expectDimension(request.adsorbedWater ?? "0 %", "mass fraction", "adsorbedWater");
  const most = allowed.toNumber("");
  if (most < 0 || most >= 1) throw new PlanError("plan.request", `adsorbedWater of ${allowed} is outside 0 to 100 %`);
  const judged = candidatesOf(request).map(({ formula, residue, condition }) => {
    const expectedLoss = expectedLossOf(formula, residue);
    const acidPerGram = acidPerGramOf(formula);
    // Water in the sample adds to the loss what the rest of the sample would have left, and thins the base.
    const byLoss = loss === undefined ? undefined : testOf(loss, expectedLoss, (dry) => 100 - dry);
    const byAcid =
      acid === undefined || acidPerGram === undefined ? undefined : testOf(acid, acidPerGram, (dry) => -dry);
    const tests = [byLoss, byAcid].filter((t) => t !== undefined);
    const water = bestWater(tests, most);
    const off = { loss: offBy(byLoss, water), acid: offBy(byAcid, water) };
    const square = (off.loss ?? 0) ** 2 + (off.acid ?? 0) ** 2;
    const candidate = {
      formula: nameOfFormula(formula),
      key: canonicalFormula(formula),
      residue: nameOfFormula(residue),
      condition,
      expectedLoss,
      difference: loss?.minus(expectedLoss),
      acidPerGram,
      water: quantity({ value: (100 * water).toPrecision(4), unit: "%" }),
      off,
      fits: [off.loss, off.acid].every((z) => z === undefined || Math.abs(z) <= COVERAGE),
    };
    const component = { name: candidate.formula, residue, loss: expectedLoss, acid: acidPerGram };
    return { candidate, square, component, byLoss, byAcid };
  });
  const spread = (q: Quantity | undefined, tests: readonly (Test | undefined)[]) =>
    q === undefined ? undefined : { value: q, u: tests.find((t) => t !== undefined)?.u ?? FLOOR };
  const mixtures = mixturesOf(
    judged.map(({ component }) => component),
    spread(
      loss,
      judged.map(({ byLoss }) => byLoss),
    ),
    spread(
      acid,
      judged.map(({ byAcid }) => byAcid),
    ),
  );
  judged.sort((a, b) => a.square - b.square);
  const least = judged[0]!.square;
  const weights = judged.map(({ square }) => Math.exp(-(square - least) / 2));
  const total = weights.reduce((a, b) => a + b, 0);
  const candidates = judged.map(
    ({ candidate }, i): IdentityCandidate => ({ ...candidate, share: weights[i]! / total }),
  );
  return readable({
    loss,
    candidates,
    mixtures,
    ...verdictOf(candidates, mixtures, loss, acid !== undefined),
    assumptions: assumptionsOf(candidates, allowed),
  });
}

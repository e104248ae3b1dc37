// What is in the beaker at equilibrium.

import { attempt, type Result } from "../../foundation/error";
import { lazily } from "../../foundation/lazy";
import { once } from "../../foundation/memo";
import type { Quantity } from "../../quantity";
import { AqueousError, type AqueousRefusal } from "../error";
import { uncovered } from "../mixture/coverage";
import { type Solved, solveMixture } from "../mixture/mixture";
import type { Network } from "../mixture/network";
import { HYDRON } from "../mixture/notation";
import { type AqueousRequest, type Read, readRequest } from "../mixture/request";
import type { AqueousComposition, OtherAnswer } from "./answer";
import { type Move, openOnes, SURE, takenAt, withHeldPH, withMoved } from "./doubt";
import { type FigureMaker, figureMaker } from "./figures";
import { doseOf, filtrateOf, gasOf, saturationOf, speciesOf, standingOf } from "./parts";
import { assumptionsOf, balanceOf, presentOf, warningsOf } from "./remarks";

/** What the solved mixtures of a composition were made from; for the functions of this layer. */
const origins = new WeakMap<
  AqueousComposition,
  { readonly read: Read; readonly solved: Solved; readonly maker: FigureMaker }
>();

/** @internal The solved mixture behind a composition. */
export function originOf(composition: AqueousComposition) {
  const origin = origins.get(composition);
  if (origin !== undefined) return origin;
  throw new AqueousError("aqueous.bad-option", "expected what aqueousComposition gave");
}

/** Ions of one sign too many: an answer would be of another solution. */
function refuseCharge({ brought, pH }: Read): void {
  let [sum, all] = [0, 0];
  for (const { charge, ingredient } of brought) {
    const part = charge * ingredient.amount.toNumber("mol");
    sum += part;
    all += Math.abs(part);
  }
  if (pH !== undefined || Math.abs(sum) <= 1e-9 * all) return;
  throw new AqueousError(
    "aqueous.charged",
    `the ions given do not cancel: ${Math.abs(sum).toPrecision(3)} mol of ${sum > 0 ? "negative" : "positive"} charge is missing`,
    { hint: "name the ion that goes with them, give salts, or hold the pH", details: { charge: sum } },
  );
}

/**
 * What is in the beaker: pH, ions and complexes, solids that stand, gas that leaves, at equilibrium.
 *
 * Water of crystallization and of the reactions is counted. The answer is the end state; how long it takes, supersaturation,
 * co-precipitation and colloids are not computed, and oxidation states stay as put in.
 *
 * @param request - water (mass, or volume of the solution), what is dissolved or stirred in; what carbon dioxide may do;
 *   which solids may form; a pH to hold; own constants; activity model; temperature of 5 to 60 °C
 * @returns figures with uncertainty and working; `unknown` names what is missing, `balance` proves the answer
 * @throws {AqueousError} `aqueous.too-strong` above an ionic strength of 3 mol/kg, `aqueous.not-converged`,
 *   `aqueous.over-determined`, `aqueous.charged`, `aqueous.not-an-ion-maker`, `aqueous.missing-option`,
 *   `aqueous.bad-option`, `aqueous.unknown-option`, `aqueous.outside-range`, `aqueous.not-positive`
 * @source constants of the tables, each with its own; activity coefficients by Davies (1962), held beyond 0.5 mol/kg
 * @category In the beaker
 * @example
 * const liquor = aqueousComposition({
 *   water: "0.60 kg",
 *   dissolved: [{ formula: "ZnSO4·7H2O", mass: "28.7 g" }, { formula: "Na2CO3", amount: "0.105 mol" }],
 * });
 * liquor.pH.format({ decimals: 1, uncertainty: "none" }) // => "6.9"
 * liquor.solids.map((solid) => solid.formula) // => ["ZnCO3·H2O", "Zn5(OH)6(CO3)2"]
 */
export function aqueousComposition(request: AqueousRequest): AqueousComposition {
  return compositionBy(request);
}

/** @internal The same with reactions of one's own in place of the tables. */
export function compositionBy(request: AqueousRequest, reactions?: Network): AqueousComposition {
  const read = readRequest(request, reactions);
  refuseCharge(read);
  const solved = solveMixture(withHeldPH(read), read.brought, read.water, read.ideal);
  return report(read, solved);
}

/** The answer; what is not looked at is not worked out. `moved` tells which constant it is not taken at its value. */
function report(read: Read, solved: Solved, moved?: Move): AqueousComposition {
  const { model, solution, kilograms } = solved;
  const proof = model.equilibrium.proof!;
  const maker = figureMaker(solved, read.brought, read.water, read.pH, read.ideal);
  const hydron = model.components.indexOf(HYDRON);
  // another answer is not asked about its own doubt
  const doubt = once(() => (moved === undefined ? openOnes(read, solved) : SURE));
  const standing = lazily({ list: () => standingOf(solved, maker, doubt().open) });
  const composition = lazily<AqueousComposition>({
    pH: () =>
      maker.make(-solution.lnActivity[hydron]! / Math.LN10, "", { lnActivity: [[hydron, -1]] }, 1 / Math.LN10, {
        symbol: "pH",
        label: "pH",
        rule: "−log10 of the activity of H+ at equilibrium",
      }),
    ionicStrength: () => {
      const squares = model.species.map(({ charge }, i) => [i, (charge * charge) / 2] as const);
      return maker.make(
        solution.ionicStrength,
        "mol/kg",
        { molality: squares.filter(([, weight]) => weight !== 0) },
        1,
        { symbol: "I", label: "ionic strength", rule: "half the sum of molality × charge²" },
      );
    },
    species: () => speciesOf(solved, maker),
    solids: () => standing.list.filter(({ kind }) => kind === "solid").map(({ solid }) => solid!),
    gas: () => gasOf(solved, maker),
    dose: () => doseOf(read, solved, maker),
    filtrate: () => filtrateOf(read, solved, maker),
    either: () => doubt().others.map((move) => otherAnswer(read, move)),
    saturation: () => saturationOf(solved, maker, standing.list, doubt().open),
    water: () =>
      read.water.times((kilograms / read.water.toNumber("kg")).toPrecision(12)).named({
        label: "water at equilibrium",
        rule: "given, brought, made and taken by the reactions",
      }) as Quantity<"mass">,
    celsius: () => read.celsius,
    unknown: () => (read.own ? [] : uncovered(model.network, presentOf(solved))),
    assumptions: () => [...(moved === undefined ? [] : [takenAt(moved)]), ...assumptionsOf(read, solved)],
    warnings: () => warningsOf(read, solved),
    balance: () => balanceOf(solved, proof),
  });
  origins.set(composition, { read, solved, maker });
  return composition;
}

/** The whole answer with constants moved. */
function otherAnswer(read: Read, move: Move): OtherAnswer {
  const model = withHeldPH(read);
  const composition = withMoved(model, move, () =>
    report(read, solveMixture(model, read.brought, read.water, read.ideal), move),
  );
  return { solids: composition.solids.map(({ formula }) => formula), when: takenAt(move), composition };
}

/**
 * As `aqueousComposition`, but gives the refusal back as data.
 *
 * @category In the beaker
 * @example
 * tryAqueousComposition({ water: "1 kg", dissolved: [{ formula: "NaCl", amount: "9 mol" }] }).ok // => false
 */
export const tryAqueousComposition = (request: AqueousRequest): Result<AqueousComposition, AqueousRefusal> =>
  attempt(() => aqueousComposition(request));

/**
 * pH of a solution.
 *
 * @param request - as for `aqueousComposition`
 * @returns pH with its uncertainty
 * @throws {AqueousError} as `aqueousComposition`
 * @category In the beaker
 * @example
 * pHOf({ water: "1 L", dissolved: [{ formula: "CH3COOH", amount: "0.1 mol" }] }).format({ decimals: 2, uncertainty: "none" }) // => "2.88"
 */
export function pHOf(request: AqueousRequest): Quantity<"number"> {
  return aqueousComposition(request).pH;
}

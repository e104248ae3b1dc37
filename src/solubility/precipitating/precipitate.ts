// Does it precipitate on mixing, and how much stays? A face of the engine of the aqueous layer, asked once with all that is
// known, and once as a textbook calculates: with the constant of the solid alone.

import type { AqueousComposition } from "../../aqueous";
import type { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { lazily } from "../../foundation/lazy";
import { once } from "../../foundation/memo";
import { readable } from "../../foundation/readable";
import { type ConcentrationText, type NumberLike, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { byHandWay } from "./by-hand";
import { activityExponent, isOfWater, readPH, sameIon } from "./given-ions";
import { amountsIn, MIXED, type MixedSolution, mixed } from "./mixed-solutions";
import { type DissolvedIon, freshForm, type SolubilityProduct, solubilityProduct } from "./product";
import {
  allIn,
  type EquilibriumBasis,
  firstAnswer,
  freeIn,
  type MixedIon,
  mixtureOf,
  nameOfForm,
  productIn,
  SAID_OF,
  type Way,
} from "./way";

const PRECIPITATION = {
  solid: true,
  form: true,
  solutions: [MIXED],
  pH: true,
  ionicStrength: true,
  facts: true,
} as const satisfies Fields<PrecipitationRequest>;

/** What `willPrecipitate` needs to know. */
export interface PrecipitationRequest extends LookupOptions {
  /** Formula of the solid that may precipitate. */
  readonly solid: string | Formula;
  /** Mineral name, age or polymorph, where the table has several. */
  readonly form?: string;
  /** Solutions mixed; volumes are taken as additive. */
  readonly solutions: readonly MixedSolution[];
  /**
   * pH the mixture is held at, 0 to 14: hydroxide then counts from it, is not used up, and need not be among the ions; the
   * concentrations of the ions are those of all their forms, protonated and as hydroxide complex.
   */
  readonly pH?: NumberLike;
  /** For the Davies equation, up to 0.5 mol/L. */
  readonly ionicStrength?: QuantityLike<"concentration", ConcentrationText>;
}

/** What becomes of a mixture. */
export interface MixtureOutcome {
  /** Does any of the solid form? */
  readonly precipitates: boolean;
  /** Ion product over solubility product: above 1 it may fall, above about 1e4 it falls to 99 %. */
  readonly saturation: Quantity<"number">;
  /** Solid that precipitates, per volume of the mixture; 0 mol/L when none. */
  readonly precipitated: Quantity<"concentration">;
  /** Each ion before and after, and the share left in the liquor. */
  readonly ions: readonly {
    readonly formula: string;
    readonly before: Quantity<"concentration">;
    readonly after: Quantity<"concentration">;
    readonly shareLeft: Quantity<"number">;
  }[];
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** Verdict on a mixture. */
export interface PrecipitationVerdict extends MixtureOutcome {
  /**
   * What the figures are: `"equilibrium"` with protons, hydroxide, complexes and activities counted, each ion after in all its
   * forms (hydroxide is given by the pH, not here); `"ideal"` with the same reactions but without activities, where the mixture
   * is too strong for their model; `"hand calculation"` where it holds ions of which nothing is known.
   */
  readonly basis: EquilibriumBasis;
  /** Of the mixture: the sum of the volumes. */
  readonly volume: Quantity<"volume">;
  /** Solubility product of the solid, with its source. */
  readonly product: SolubilityProduct;
  /** The other outcome, where the doubt of the constants leaves open whether it precipitates; undefined where it does not. */
  readonly either: Omit<MixtureOutcome, "warnings"> | undefined;
  /**
   * As a textbook calculates: the constant of the solid alone, concentrations for activities, no side reactions but those of a
   * pH that is given.
   */
  readonly byHand: MixtureOutcome;
}

/**
 * Does a sparingly soluble salt precipitate when solutions are mixed, and how much of each ion stays in solution?
 *
 * @param request - the solid, the solutions with their ions and volumes, ionic strength if wanted
 * @returns ion product divided by solubility product, what precipitates, and what is left of each ion, at equilibrium with protons,
 *   hydroxide, complexes and activities counted; `byHand` has the figures of a textbook calculation
 * @throws {SolubilityError} `solubility.bad-option`, `solubility.no-data`, `solubility.missing-option` when an ion is
 *   in none of the solutions, `solubility.not-positive`, `solubility.ionic-strength`
 * @source the equilibrium of the aqueous layer; by hand, the definition of the solubility product
 * @category Precipitation
 * @example
 * willPrecipitate({ solid: "BaSO4", solutions: [
 *   { volume: "10 mL", ions: [{ ion: "Ba^2+", concentration: "0.1 mol/L" }] },
 *   { volume: "10 mL", ions: [{ ion: "SO4^2-", concentration: "0.1 mol/L" }] },
 * ] }).precipitates // => true
 * const gypsum = willPrecipitate({ solid: "CaSO4·2H2O", solutions: [
 *   { volume: "50 mL", ions: [{ ion: "Ca^2+", concentration: "0.02 mol/L" }] },
 *   { volume: "50 mL", ions: [{ ion: "SO4^2-", concentration: "0.02 mol/L" }] },
 * ] });
 * gypsum.precipitates // => false
 * gypsum.byHand.precipitates // => true
 */
export function willPrecipitate(request: PrecipitationRequest): PrecipitationVerdict {
  if (bringsFacts(request)) return withItsFacts(request, guard, willPrecipitate);
  guard.fields(request, PRECIPITATION, "request");
  guard.list(request.solutions, "solutions");
  for (const [i, solution] of request.solutions.entries()) guard.list(solution.ions, `solutions[${i}].ions`);
  const product = solubilityProduct(request.solid, request.form);
  const held = request.pH !== undefined;
  if (held) readPH(request.pH);
  // where the pH is held hydroxide and hydrons count from it, and are not used up
  const ions = product.ions.filter(({ formula }) => !(held && isOfWater(formula)));
  const { total, before } = mixed(ions, request.solutions);
  const amounts = amountsIn(request.solutions);
  const ionicStrength =
    request.ionicStrength === undefined
      ? undefined
      : expectDimension(request.ionicStrength, "concentration", "ionicStrength").toNumber("mol/L");
  const exponent = activityExponent(ions, ionicStrength);
  const asked: Asked = { request, product, ions, before, total, amounts };
  const byHand = once((): MixtureOutcome => {
    const { either: _, ...outcome } = outcomeBy(byHandWay(product, { held, exponent }), asked, exponent)!;
    return outcome;
  });
  const answer = once(() => firstAnswer<Outcome>((way) => outcomeBy(way, asked), byHand));
  const figures = (): MixtureOutcome => answer().found;
  return lazily<PrecipitationVerdict>({
    basis: () => answer().basis,
    precipitates: () => figures().precipitates,
    saturation: () => figures().saturation,
    volume: () => total,
    precipitated: () => figures().precipitated,
    ions: () => figures().ions,
    either: () => answer().found.either?.(),
    product: () => product,
    byHand,
    warnings: () => {
      const { basis, found } = answer();
      const hand = byHand().precipitates;
      return [
        ...SAID_OF[basis],
        ...found.warnings,
        ...(hand === found.precipitates
          ? []
          : [
              `a calculation by hand, without side reactions and activities, says that it ${hand ? "precipitates" : "stays clear"}`,
            ]),
      ];
    },
  });
}

/** An outcome, and how to ask for the other one. */
interface Outcome extends MixtureOutcome {
  readonly either?: () => PrecipitationVerdict["either"];
}

/** A question, read. */
interface Asked {
  readonly request: PrecipitationRequest;
  readonly product: SolubilityProduct;
  readonly ions: readonly DissolvedIon[];
  readonly before: readonly Quantity<"concentration">[];
  readonly total: Quantity<"volume">;
  /** Every ion of the solutions. */
  readonly amounts: readonly MixedIon[];
}

/** What becomes of the mixture with some reactions; undefined where an ion of the solid has no place among them. */
function outcomeBy(way: Way, asked: Asked, exponent = 0): Outcome | undefined {
  const { request, product, ions, before, total, amounts } = asked;
  const { solid } = product;
  // by hand strangers do nothing
  const present = way.reactions === undefined ? amounts : amounts.filter(({ formula }) => isOf(product.ions, formula));
  const ask = (only: readonly string[]) => mixtureOf(way, { ions: present, volume: total, pH: request.pH, only });
  const clear = ask([]);
  const q = productIn(clear, product.ions);
  if (q === undefined) return undefined;
  const saturation = q
    .dividedBy(exponent === 0 ? product.value : product.value.times((10 ** exponent).toPrecision(12)))
    .named({
      symbol: "Q/Ksp",
      label: "ion product divided by solubility product",
      rule: "product of activities^count / Ksp",
    });
  const settled = saturation.compare("1") > 0 ? ask([nameOfForm(product)]) : clear;
  const outcomeOf = (liquor: AqueousComposition): Omit<MixtureOutcome, "warnings"> => {
    const stands = liquor.solids[0]?.amount;
    const left = (formula: string): Quantity<"concentration"> | undefined =>
      way.reactions !== undefined && request.pH === undefined
        ? freeIn(liquor, formula, `${formula} left in the liquor`)
        : allIn(liquor, formula, `${formula} left in the liquor, in all its forms`);
    return {
      precipitates: stands !== undefined,
      saturation,
      precipitated: (stands?.dividedBy(total).to("mol/L") ?? quantity("0 mol/L")).named({
        symbol: "x",
        label: `${solid} that precipitates, per volume of the mixture`,
      }) as Quantity<"concentration">,
      ions: ions.flatMap(({ formula }, i) => {
        const after = stands === undefined ? before[i]! : left(formula);
        if (after === undefined) return [];
        return [{ formula, before: before[i]!, after, shareLeft: after.dividedBy(before[i]!).to("%") }];
      }),
    };
  };
  return {
    ...outcomeOf(settled),
    either: () => {
      const [other] = ask([nameOfForm(product)]).either;
      return other && readable(outcomeOf(other.composition));
    },
    warnings: [
      ...product.warnings,
      ...settled.warnings.filter((text) => text.startsWith("rough") || text.includes("oxidises")),
      ...agedOnly(request, product, saturation),
    ],
  };
}

const isOf = (ions: readonly DissolvedIon[], formula: string): boolean =>
  ions.some((ion) => sameIon(ion.formula, formula));

/** A mixture over-saturated only with the aged form may stay clear for long: the fresh one, which precipitates first, cannot. */
function agedOnly(request: PrecipitationRequest, product: SolubilityProduct, saturation: Quantity): string[] {
  const fresh = request.form === undefined ? freshForm(request.solid)?.form : undefined;
  if (fresh === undefined || saturation.compare("1") <= 0) return [];
  const { pKsp } = solubilityProduct(request.solid, fresh);
  const times = 10 ** product.pKsp.minus(pKsp).toNumber();
  if (saturation.toNumber() > times) return [];
  return [
    `over-saturated with the form '${product.form}' only, not with '${fresh}', which precipitates first: may stay clear`,
  ];
}

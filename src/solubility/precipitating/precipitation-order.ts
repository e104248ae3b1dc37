// Selective precipitation: which of several metals precipitates first as a precipitant is added. A face of the engine: the
// precipitant is added to the whole mixture until the next solid begins, and as a textbook calculates, to each metal alone.
import type { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import {
  applyFunction,
  type ConcentrationText,
  type NumberLike,
  type Quantity,
  type QuantityLike,
} from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { SolubilityError } from "../error";
import { byHandWay } from "./by-hand";
import { isHydroxide, readPH, sameIon } from "./given-ions";
import { freshForm, solubilityProduct } from "./product";
import { type Asked, type Start, startOf } from "./start-of-solid";
import { allIn, type EquilibriumBasis, firstAnswer, nameOfForm, type Way } from "./way";

const SOLID = { solid: true, form: true, concentration: true } as const satisfies Fields<
  PrecipitationOrderRequest["solids"][number]
>;

const PRECIPITATION_ORDER = {
  precipitant: true,
  pH: true,
  solids: [SOLID],
  facts: true,
} as const satisfies Fields<PrecipitationOrderRequest>;

/** Where one solid begins, and how far it is gone when the next one does. */
export interface StartOfSolid {
  /**
   * Precipitant in solution at which it begins to precipitate, in all its forms; hydroxide as the free ion. Undefined where it
   * never does: hydrogen sulfide leaves an acid solution before manganese sulfide precipitates.
   */
  readonly startsAt: Quantity<"concentration"> | undefined;
  /** Share of this metal still dissolved when the next one begins; undefined where none does. */
  readonly leftWhenNextStarts: Quantity<"number"> | undefined;
}

/** One solid in a selective precipitation. */
export interface PrecipitationStart extends StartOfSolid {
  /** Formula of the solid. */
  readonly solid: string;
  /** Form the constant is for: the fresh one, which precipitates first, unless another was named. */
  readonly form: string | undefined;
  /** The metal ion that the solid takes. */
  readonly metal: string;
  /**
   * What the figures are: `"equilibrium"` of the whole mixture, with protons, hydroxide, complexes and activities counted;
   * `"ideal"` without activities, `"hand calculation"` where that is not known.
   */
  readonly basis: EquilibriumBasis;
  /** As a textbook calculates: each metal alone, the constant of its solid, concentrations for activities. */
  readonly byHand: StartOfSolid;
}

/** What `precipitationOrder` needs to know. */
export interface PrecipitationOrderRequest extends LookupOptions {
  /** The ion that is added. */
  readonly precipitant: string;
  /**
   * pH of the solution, 0 to 14; needed for solids that set free hydroxide besides, such as sulfides with `"HS-"`.
   * Concentrations are then those of an ion in all its forms, protonated and as hydroxide complex.
   */
  readonly pH?: NumberLike;
  /** Each solid that can form, with the concentration of its metal. */
  readonly solids: readonly {
    readonly solid: string | Formula;
    readonly form?: string;
    readonly concentration: QuantityLike<"concentration", ConcentrationText>;
  }[];
}

/**
 * Which of several metals precipitates first as a precipitant is added, and how completely it is gone when the next begins.
 *
 * @param request - the precipitant and the solids with the concentrations of their metals; the pH where solids set free
 *   hydroxide besides the precipitant
 * @returns the solids in the order in which they begin to precipitate in the mixture; `byHand` has the figures of a textbook
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.no-data`,
 *   `solubility.other-solute` when a solid does not hold the precipitant
 * @source the equilibrium of the aqueous layer; by hand, the definition of the solubility product
 * @category Precipitation
 * @example
 * precipitationOrder({ precipitant: "CrO4^2-", solids: [
 *   { solid: "BaCrO4", concentration: "0.01 mol/L" }, { solid: "SrCrO4", concentration: "0.01 mol/L" },
 * ] }).map(({ solid }) => solid) // => ["BaCrO4", "SrCrO4"]
 */
export function precipitationOrder(request: PrecipitationOrderRequest): readonly PrecipitationStart[] {
  if (bringsFacts(request)) return withItsFacts(request, guard, precipitationOrder);
  guard.fields(request, PRECIPITATION_ORDER, "request");
  guard.list(request.solids, "solids");
  const asked = request.solids.map((one) => readSolid(request, one));
  if (request.pH !== undefined) readPH(request.pH);
  const hand = asked.map((one) => {
    const way = byHandWay(one.product, { held: one.held });
    const start = startOf(way, one, [one], [], request)!;
    return { one, figure: start === "never" ? undefined : start.figure };
  });
  const byHand = new Map<Asked, StartOfSolid>();
  hand.sort((a, b) => firstOf(a.figure, b.figure));
  hand.forEach(({ one, figure }, i) => {
    const startsAt = figure && named(figure, one);
    const next = hand[i + 1];
    const left = startsAt && next?.figure && shareLeft(one, startsAt, next.one, next.figure);
    byHand.set(one, { startsAt, leftWhenNextStarts: left });
  });
  const { basis, found } = firstAnswer(
    (way) =>
      sequence(
        way,
        hand.map(({ one }) => one),
        request,
      ),
    () => hand.map(({ one }) => ({ one, ...byHand.get(one)! })),
  );
  return found.map(({ one, startsAt, leftWhenNextStarts }) => ({
    solid: one.product.solid,
    form: one.product.form,
    metal: one.metal.formula,
    startsAt,
    leftWhenNextStarts,
    basis,
    byHand: byHand.get(one)!,
  }));
}

/** One solid of the question, read. */
function readSolid(
  { precipitant, pH }: PrecipitationOrderRequest,
  { solid, form, concentration }: PrecipitationOrderRequest["solids"][number],
): Asked {
  const product = solubilityProduct(solid, form ?? freshForm(solid)?.form);
  const besides = product.ions.length > 2 && product.ions.some(({ formula }) => isHydroxide(formula));
  if (besides && pH === undefined) {
    throw new SolubilityError(
      "solubility.missing-option",
      `${product.solid} sets free hydroxide as well: at what pH?`,
      { hint: "give pH, such as 1 for sulfides from acid or 9 from ammonia", details: { solid: product.solid } },
    );
  }
  const ions = product.ions.filter(({ formula }) => !(besides && isHydroxide(formula)));
  const added = ions.find(({ formula }) => sameIon(formula, precipitant));
  const metal = ions.find((ion) => ion !== added);
  if (added === undefined || metal === undefined || ions.length !== 2) {
    throw new SolubilityError("solubility.other-solute", `${product.solid} is not one metal with ${precipitant}`, {
      details: { solid: product.solid, precipitant },
    });
  }
  const c = guard
    .positive(expectDimension(concentration, "concentration", "concentration"), "concentration")
    .to("mol/L");
  return { product, added, metal, c, held: pH !== undefined && !isHydroxide(precipitant) };
}

const named = (figure: Quantity<"concentration">, { added, product }: Asked): Quantity<"concentration"> =>
  figure.named({
    symbol: `c(${added.formula})`,
    label: `${added.formula} at which ${product.solid} begins to precipitate`,
  });

/** What begins first; what never does comes last. */
function firstOf(a: Quantity | undefined, b: Quantity | undefined): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  return a.compare(b);
}

/** The whole mixture, solid after solid; undefined where one of them has no place among the reactions. */
function sequence(way: Way, asked: readonly Asked[], request: PrecipitationOrderRequest) {
  const alone: { readonly one: Asked; readonly start: Start }[] = [];
  const never: Asked[] = [];
  for (const one of asked) {
    const start = startOf(way, one, asked, [], request);
    if (start === undefined) return undefined;
    if (start === "never") never.push(one);
    else alone.push({ one, start });
  }
  alone.sort((a, b) => a.start.total - b.start.total);
  const starts: { one: Asked; start: Start }[] = [];
  for (const { one, start } of alone) {
    const before = starts.map((earlier) => nameOfForm(earlier.one.product));
    const last = starts.at(-1)?.start.total;
    const here = last === undefined ? start : startOf(way, one, asked, before, request, Math.max(last, start.total))!;
    if (here === "never") never.push(one);
    else starts.push({ one, start: here });
  }
  const begun = starts.map(({ one, start }, i) => {
    const next = starts[i + 1];
    const { formula } = one.metal;
    const left = next?.start.at({
      figure: (liquor) => allIn(liquor, formula, `${formula} left`)!.dividedBy(one.c).to("%"),
      plain: (series, place) => (100 * series.allAt(place, formula)) / one.c.value.toNumber(),
    });
    return {
      one,
      startsAt: named(start.figure, one),
      leftWhenNextStarts: left?.named({ label: `${formula} left when ${next!.one.product.solid} begins` }),
    };
  });
  return [...begun, ...never.map((one) => ({ one, startsAt: undefined, leftWhenNextStarts: undefined }))];
}

/** By hand: what stays follows from the two beginnings. */
function shareLeft({ added, metal }: Asked, from: Quantity, next: Asked, to: Quantity): Quantity {
  const power = added.count / metal.count;
  const share = (a: number, b: number): number => 100 * (a / b) ** power;
  return applyFunction(
    [from, to],
    {
      name: "(start / next start)^(n/m)",
      unit: "%",
      value: ([a, b]) => share(a!.toNumber(), b!.toNumber()).toPrecision(12),
      partials: ([a, b]) => {
        const [x, y] = [a!.toNumber(), b!.toNumber()];
        return [(power * share(x, y)) / x, (-power * share(x, y)) / y].map((p) => p.toPrecision(12));
      },
    },
    {
      label: `${metal.formula} left when ${next.product.solid} begins`,
      rule: "share left = (start / next start)^(n/m)",
    },
  );
}

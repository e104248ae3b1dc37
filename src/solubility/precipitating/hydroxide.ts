// The pH range in which a metal hydroxide precipitates: where it begins, where the metal is gone, and where an amphoteric
// hydroxide dissolves again as its hydroxide complexes. Every end is where a clear solution of that much metal is just
// saturated: asked of the engine with all that is known, and as a textbook calculates.

import { crossing, stabilityRows } from "../../aqueous/internal";
import { parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { lazily } from "../../foundation/lazy";
import { once } from "../../foundation/memo";
import { hasIon } from "../../ion";
import { ACID_STEPS } from "../../ion/internal";
import { applyFunction, type ConcentrationText, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard, needTextOption } from "../argument";
import { SolubilityError } from "../error";
import { byHandWay } from "./by-hand";
import { sameIon, TOP_PH } from "./given-ions";
import { everyProduct, ionsOf, type SolubilityProduct, solubilityProduct } from "./product";
import {
  allIn,
  type EquilibriumBasis,
  firstAnswer,
  mixtureOf,
  nameOfForm,
  productIn,
  SAID_OF,
  Series,
  type Way,
} from "./way";

const HYDROXIDE = {
  metal: true,
  concentration: true,
  residual: true,
  form: true,
  facts: true,
} as const satisfies Fields<HydroxideRequest>;

/** What `hydroxidePrecipitationRange` needs to know. */
export interface HydroxideRequest extends LookupOptions {
  /** The metal ion, such as `"Zn^2+"`. */
  readonly metal: string;
  /** Metal before precipitation, > 0. */
  readonly concentration: QuantityLike<"concentration", ConcentrationText>;
  /** Dissolved metal at which it counts as gone; default 1e-5 mol/L. */
  readonly residual?: QuantityLike<"concentration", ConcentrationText>;
  /** Part of the form's name, such as `"fresh"`; default the most soluble form, which precipitates first. */
  readonly form?: string;
}

/** Where a hydroxide precipitates and where it dissolves again. */
export interface HydroxideRange {
  /** pH at which it begins to precipitate; undefined if it never does at this concentration. */
  readonly startsAt: Quantity<"number"> | undefined;
  /** pH from which at most `residual` stays dissolved; undefined if it never gets that low. */
  readonly completeFrom: Quantity<"number"> | undefined;
  /** pH above which more than `residual` is dissolved again; undefined below pH 14. */
  readonly redissolvesFrom: Quantity<"number"> | undefined;
  /** pH above which the whole metal is in solution again; undefined below pH 14. */
  readonly allDissolvedFrom: Quantity<"number"> | undefined;
  /** Least dissolved metal and the pH where it is. */
  readonly least: { readonly concentration: Quantity<"concentration">; readonly pH: Quantity<"number"> };
}

/** The range, counted and by hand. */
export interface HydroxidePrecipitationRange extends HydroxideRange {
  /** The metal ion that was asked about. */
  readonly metal: string;
  /** Formula of the hydroxide. */
  readonly solid: string;
  /** Mineral name, age or polymorph of the solid; undefined where the table names none. */
  readonly form: string | undefined;
  /**
   * What the figures are: `"equilibrium"` with activities and complexes of several metal ions counted, perchlorate beside the
   * metal and no other ligand; `"ideal"` without activities, where the solution is too strong for their model.
   */
  readonly basis: EquilibriumBasis;
  /** As a textbook calculates: Ksp and hydroxide complexes of one metal ion, concentrations for activities. */
  readonly byHand: HydroxideRange;
  /** Solubility product of the solid, with its source. */
  readonly product: SolubilityProduct;
  /** Hydroxide complexes taken into account. */
  readonly complexes: readonly string[];
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** Rows of hydroxides with one metal, most soluble first. */
function hydroxidesOf(metal: string) {
  return everyProduct()
    .filter((row) => {
      const ions = ionsOf(row).map(({ formula }) => formula);
      return (
        ions.length === 2 && ions.includes("OH-") && ions.some((ion) => sameIon(ion, metal)) && hasIon(row.solid, "OH-")
      );
    })
    .sort((a, b) => Number(a.pKsp) - Number(b.pKsp));
}

/** Solids of the metal with hydroxide and another anion: at the bench the anion is there. */
function basicSaltsOf(metal: string): string[] {
  const found = everyProduct().filter((row) => {
    if (row.doubtful === true) return false;
    const ions = ionsOf(row);
    return (
      ions.length === 3 &&
      ions.some(({ formula }) => sameIon(formula, metal)) &&
      ions.some(({ formula }) => formula === "OH-") &&
      ions.some(({ formula, charge }) => charge < 0 && BESIDE.includes(formula))
    );
  });
  return [...new Set(found.map(({ solid }) => solid))];
}

/** Anions of the soluble salts a metal is used as. */
const BESIDE = ["SO4^2-", "Cl-", "NO3-"];

/**
 * pH window of a hydroxide precipitation, with redissolving as hydroxide complexes.
 *
 * @param request - metal ion and its concentration; `residual` (default 1e-5 mol/L); form of the hydroxide
 * @returns pH where it begins, where the metal is gone, where it dissolves again, and the least that stays, with activities
 *   and complexes of several metal ions counted; `byHand` has those of a textbook calculation
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.no-data` without a
 *   hydroxide of the metal, `solubility.not-positive`
 * @source solubility product and hydroxide complexes of the tables; 25 °C, no ammonia or other ligands
 * @category Precipitation
 * @example
 * hydroxidePrecipitationRange({ metal: "Al^3+", concentration: "0.1 mol/L" }).redissolvesFrom?.format({ decimals: 1, uncertainty: "none" }) // => "6.8"
 */
export function hydroxidePrecipitationRange(request: HydroxideRequest): HydroxidePrecipitationRange {
  if (bringsFacts(request)) return withItsFacts(request, guard, hydroxidePrecipitationRange);
  guard.fields(request, HYDROXIDE, "request");
  needTextOption(request.form, "form");
  const { charge } = parseFormula(request.metal);
  const rows = hydroxidesOf(request.metal);
  const row = request.form === undefined ? rows[0] : rows.find(({ form }) => form?.includes(request.form!) === true);
  if (row === undefined) {
    throw new SolubilityError("solubility.no-data", `no hydroxide of ${request.metal} in the table`, {
      input: request.metal,
      position: 0,
      hint:
        rows.length === 0
          ? charge === 0
            ? "write the ion with its charge, such as Zn^2+"
            : "some metals precipitate as another solid, an oxide or a basic salt: look for its solubility product"
          : `forms: ${rows.map((r) => r.form ?? "(unnamed)").join("; ")}`,
    });
  }
  const product = solubilityProduct(row.solid, row.form);
  const start = molarOf(request.concentration, "concentration");
  const gone = molarOf(request.residual ?? "1e-5 mol/L", "residual");
  const byHand = once(() => rangeBy(byHandWay(product, { held: true }), product, request.metal, start, gone)!);
  const answer = once(() => firstAnswer((way) => rangeBy(way, product, request.metal, start, gone), byHand));
  const species = complexesWithHydroxide(request.metal);
  const basic = basicSaltsOf(request.metal);
  return lazily<HydroxidePrecipitationRange>({
    metal: () => request.metal,
    solid: () => row.solid,
    form: () => row.form,
    basis: () => answer().basis,
    startsAt: () => answer().found.startsAt,
    completeFrom: () => answer().found.completeFrom,
    redissolvesFrom: () => answer().found.redissolvesFrom,
    allDissolvedFrom: () => answer().found.allDissolvedFrom,
    least: () => answer().found.least,
    byHand,
    product: () => product,
    complexes: () => species,
    warnings: () => [
      ...SAID_OF[answer().basis],
      ...product.warnings,
      ...(stabilityRows(request.metal, "OH-").length > 0
        ? []
        : [
            `${species.length === 0 ? "no" : "only the first"} hydroxide complex in the table: redissolving cannot be judged`,
          ]),
      ...(basic.length === 0
        ? []
        : [
            `beside the anion of a basic salt that one may precipitate earlier, which is not judged here: ${basic.join(", ")}`,
          ]),
    ],
  });
}

/** The hydroxide complexes of a metal in the tables; where there are none, the base of the aquated ion. */
function complexesWithHydroxide(metal: string): readonly string[] {
  const tabulated = stabilityRows(metal, "OH-");
  if (tabulated.length > 0) return tabulated;
  const aquated = ACID_STEPS().find(({ acid }) => sameIon(acid, metal));
  return aquated === undefined ? [] : [aquated.base];
}

/** Steps of pH in which the best one is looked for. */
const COARSE = 0.5;

/** The range with some reactions; undefined where the metal has no place among them. */
function rangeBy(
  way: Way,
  product: SolubilityProduct,
  metal: string,
  start: Quantity,
  gone: Quantity,
): HydroxideRange | undefined {
  const litre = quantity("1 L");
  const clear = (level: Quantity, pH: number) =>
    mixtureOf(way, { ions: [{ formula: metal, amount: level.times(litre).to("mol") }], volume: litre, pH, only: [] });
  if (productIn(clear(gone, TOP_PH / 2), product.ions) === undefined) return undefined;
  const endsOf = (level: Quantity, words: readonly [falling: string, rising: string]) => {
    const series = new Series(clear(level, TOP_PH / 2), product, "pH");
    const index = (pH: number): number => series.indexAt(pH);
    let [best, highest] = [0, index(0)];
    for (let pH = COARSE; pH <= TOP_PH; pH += COARSE) {
      const here = index(pH);
      if (here > highest) [best, highest] = [pH, here];
    }
    const end = (outer: number, label: string): Quantity | undefined => {
      if (highest <= 0) return undefined;
      const outside = index(outer);
      if (outside > 0) return undefined;
      const at = crossing(index, [best, outer], [highest, outside], 1e-9);
      const slope = (index(at + SMALL) - index(at - SMALL)) / (2 * SMALL);
      // pH moves against what moves the saturation
      return applyFunction(
        [productIn(clear(level, at), product.ions)!, product.value],
        {
          name: "pH at which Q = Ksp",
          unit: "",
          value: () => at.toFixed(4),
          partials: ([q, k]) => [
            (-1 / (q!.toNumber() * Math.LN10 * slope)).toPrecision(12),
            (1 / (k!.toNumber() * Math.LN10 * slope)).toPrecision(12),
          ],
        },
        { symbol: "pH", label, rule: "pH at which a clear solution is just saturated" },
      );
    };
    return [end(0, words[0]), end(TOP_PH, words[1])] as const;
  };
  const { solid } = product;
  const whole = once(() =>
    endsOf(start, [`pH at which ${solid} begins to precipitate`, `pH above which all ${metal} is dissolved again`]),
  );
  const rest = once(() => endsOf(gone, [`pH from which ${metal} is gone`, `pH above which ${solid} dissolves again`]));
  // a solution too strong for the activity model shows here
  whole();
  return lazily<HydroxideRange>({
    startsAt: () => whole()[0],
    allDissolvedFrom: () => whole()[1],
    completeFrom: () => rest()[0],
    redissolvesFrom: () => rest()[1],
    least: () => leastOf(way, product, metal),
  });
}

/** Step of a difference of pH. */
const SMALL = 1e-4;
/** Excess of the solid over which the least is looked for, mol/L; the activity of what dissolves is that of water. */
const THERE = 1e-3;

/** Least metal over the solid, and the pH of it. */
function leastOf(way: Way, product: SolubilityProduct, metal: string): HydroxideRange["least"] {
  const litre = quantity("1 L");
  const liquor = (pH: number) =>
    mixtureOf(way, {
      ions: [],
      volume: litre,
      pH,
      only: [nameOfForm(product)],
      solid: { ions: product.ions, moles: THERE },
    });
  const series = new Series(liquor(TOP_PH / 2), product, "pH");
  const plain = (pH: number): number => series.allAt(pH, metal);
  let best = 0;
  for (let pH = COARSE; pH <= TOP_PH; pH += COARSE) if (plain(pH) < plain(best)) best = pH;
  let [low, high] = [Math.max(0, best - COARSE), Math.min(TOP_PH, best + COARSE)];
  while (high - low > 0.01) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (plain(a) < plain(b)) high = b;
    else low = a;
  }
  const pH = high === TOP_PH ? TOP_PH : (low + high) / 2;
  return {
    concentration: allIn(liquor(pH), metal, `least ${metal} dissolved`)!,
    pH: quantity({ value: pH.toFixed(2), unit: "" }, { symbol: "pH", label: "pH of the least solubility" }),
  };
}

function molarOf(concentration: QuantityLike, argument: string): Quantity {
  return guard.positive(expectDimension(concentration, "concentration", argument), argument).to("mol/L");
}

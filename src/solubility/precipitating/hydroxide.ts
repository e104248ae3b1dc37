// The pH window in which a metal hydroxide precipitates: where it begins, where the metal is gone, and where an amphoteric
// hydroxide dissolves again as its hydroxide complexes. Solubility = Ksp × sum of beta(n) [OH]^(n − z), at 25 °C.

import { SOLUBILITY_PRODUCTS } from "../../aqueous/internal";
import { parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bisected } from "../../foundation/bisect";
import { once } from "../../foundation/memo";
import { hasIon } from "../../ion";
import { type ConcentrationText, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard, needTextOption } from "../argument";
import { positive } from "../curves/figure";
import { cite } from "../data/sources";
import { SolubilityError } from "../error";
import { saturationIndexAt } from "./in-mixture";
import { PKW, sameIon } from "./ion-balance";
import { ionsOf, type SolubilityProduct, solubilityProduct } from "./product";
import { type Complex, complexesOf, hydroxideComplexes } from "./side-reactions";

const HYDROXIDE = {
  metal: true,
  concentration: true,
  residual: true,
  form: true,
} as const satisfies Fields<HydroxideRequest>;

/** What `hydroxidePrecipitationRange` needs to know. */
export interface HydroxideRequest {
  /** The metal ion, such as `"Zn^2+"`. */
  readonly metal: string;
  /** Metal before precipitation, > 0. */
  readonly concentration: QuantityLike<"concentration", ConcentrationText>;
  /** Dissolved metal at which it counts as gone; default 1e-5 mol/L. */
  readonly residual?: QuantityLike<"concentration", ConcentrationText>;
  /** Part of the form's name, such as `"fresh"`; default the most soluble form, which precipitates first. */
  readonly form?: string;
}

/** Ends of the range as plain pH; undefined where there is none, or it is not known. */
export interface HydroxideEnds {
  readonly startsAt: number | undefined;
  readonly completeFrom: number | undefined;
  readonly redissolvesFrom: number | undefined;
  readonly allDissolvedFrom: number | undefined;
}

/** Where a hydroxide falls and where it dissolves again. */
export interface HydroxideWindow {
  readonly metal: string;
  readonly solid: string;
  readonly form: string | undefined;
  /** pH at which it begins to precipitate; undefined if it never does at this concentration. */
  readonly startsAt: Quantity | undefined;
  /** pH from which at most `residual` stays dissolved; undefined if it never gets that low. */
  readonly completeFrom: Quantity | undefined;
  /** pH above which more than `residual` is dissolved again; undefined below pH 14. */
  readonly redissolvesFrom: Quantity | undefined;
  /** pH above which the whole metal is in solution again; undefined below pH 14. */
  readonly allDissolvedFrom: Quantity | undefined;
  /** Least dissolved metal and the pH where it is. */
  readonly least: { readonly concentration: Quantity<"concentration">; readonly pH: Quantity };
  /**
   * The same ends with activities and complexes of several metal ions counted, where the figures beside them are those of a
   * calculation by hand: perchlorate beside the metal, no other ligand.
   */
  readonly atEquilibrium: HydroxideEnds;
  readonly product: SolubilityProduct;
  /** Hydroxide complexes taken into account. */
  readonly complexes: readonly string[];
  readonly warnings: readonly string[];
}

const STEP = 0.01;

/** Rows of hydroxides with one metal, most soluble first. */
function hydroxidesOf(metal: string) {
  return SOLUBILITY_PRODUCTS()
    .filter(({ dissolution, solid }) => {
      const right = dissolution.slice(dissolution.indexOf(" -> ") + 4).split(" + ");
      const ions = right.map((term) => term.replace(/^\d+ /, "")).filter((term) => term !== "H2O");
      return (
        ions.length === 2 && ions.includes("OH-") && ions.some((ion) => sameIon(ion, metal)) && hasIon(solid, "OH-")
      );
    })
    .sort((a, b) => Number(a.pKsp) - Number(b.pKsp));
}

/** Solids of the metal with hydroxide and another anion: at the bench the anion is there. */
function basicSaltsOf(metal: string): string[] {
  const found = SOLUBILITY_PRODUCTS().filter((row) => {
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

/** All dissolved metal over the solid at a pH, as decimal logarithm. */
function dissolved(pKsp: number, charge: number, species: readonly Complex[], pH: number): number {
  const logOH = pH - PKW;
  const logFree = -pKsp - charge * logOH;
  const total = species.reduce((all, { n, logBeta }) => all + 10 ** (logBeta + n * logOH), 1);
  return logFree + Math.log10(total);
}

/**
 * pH window of a hydroxide precipitation, with redissolving as hydroxide complexes.
 *
 * @param request - metal ion and its concentration; `residual` (default 1e-5 mol/L); form of the hydroxide
 * @returns pH where it begins, where the metal is gone, where it dissolves again, and the least that stays, by hand;
 *   `atEquilibrium` has the ends with activities and complexes of several metal ions counted
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.no-data` without a
 *   hydroxide of the metal, `solubility.not-positive`
 * @source solubility product and hydroxide complexes of the tables; ideal, 25 °C, no ammonia or other ligands
 * @category Precipitation
 * @example
 * hydroxidePrecipitationRange({ metal: "Al^3+", concentration: "0.1 mol/L" }).redissolvesFrom?.format({ decimals: 1 }) // => "6.8"
 */
export function hydroxidePrecipitationRange(request: HydroxideRequest): HydroxideWindow {
  guard.fields(request, HYDROXIDE, "request");
  needTextOption(request.form, "form");
  const charge = parseFormula(request.metal).charge;
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
  const start = logOf(request.concentration, "concentration");
  const gone = logOf(request.residual ?? "1e-5 mol/L", "residual");
  const species = hydroxideComplexes(request.metal);
  const basic = basicSaltsOf(request.metal);
  const pKsp = Number(row.pKsp);
  const at = (pH: number): number => dissolved(pKsp, charge, species, pH);
  const spread = product.pKsp.standardUncertainty!.toNumber() / charge;
  const asPH = (value: number | undefined, label: string): Quantity | undefined =>
    value === undefined
      ? undefined
      : quantity(
          { value: value.toFixed(2), unit: "", standardUncertainty: spread.toPrecision(2) },
          { symbol: "pH", label, rule: "Ksp × sum of beta(n) [OH]^(n − z) = concentration", source: cite(row.source) },
        );
  let least = 0;
  for (let pH = 0; pH <= PKW; pH += STEP) if (at(pH) < at(least)) least = pH;
  const falling = (level: number): number | undefined => crossing(at, level, 0, least);
  const rising = (level: number): number | undefined =>
    at(PKW) > level && at(least) <= level ? crossing(at, level, PKW, least) : undefined;
  const ends = once(() => endsAtEquilibrium(product, request.metal, { start: 10 ** start, gone: 10 ** gone }));
  return {
    metal: request.metal,
    solid: row.solid,
    form: row.form,
    startsAt: asPH(falling(start), `pH at which ${row.solid} begins to precipitate`),
    completeFrom: asPH(falling(gone), `pH from which ${request.metal} is gone`),
    redissolvesFrom: asPH(rising(gone), `pH above which ${row.solid} dissolves again`),
    allDissolvedFrom: asPH(rising(start), `pH above which all ${request.metal} is dissolved again`),
    least: {
      concentration: quantity(
        { value: (10 ** at(least)).toPrecision(3), unit: "mol/L" },
        { label: `least ${request.metal} dissolved` },
      ),
      pH: asPH(least, "pH of the least solubility")!,
    },
    get atEquilibrium() {
      return ends();
    },
    product,
    complexes: species.map(({ complex }) => complex),
    warnings: [
      ...product.warnings,
      ...(complexesOf(request.metal, "OH-").length > 0
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
  };
}

/** A clear solution of as much metal as a level is just saturated at the ends of the range. */
function endsAtEquilibrium(
  product: SolubilityProduct,
  metal: string,
  { start, gone }: { readonly start: number; readonly gone: number },
): HydroxideEnds {
  const litre = quantity("1 L");
  const endsOf = (level: number): readonly [falling: number | undefined, rising: number | undefined] => {
    const ions = [{ formula: metal, amount: quantity({ value: level.toPrecision(12), unit: "mol" }) }];
    const index = (pH: number): number => saturationIndexAt(product, ions, litre, pH) ?? Number.NEGATIVE_INFINITY;
    // hydroxides of several metal ions shift the best pH away from that of the least solubility by hand
    let best = 0;
    let highest = index(0);
    for (let pH = COARSE; pH <= PKW; pH += COARSE) {
      const here = index(pH);
      if (here > highest) {
        best = pH;
        highest = here;
      }
    }
    const end = (outer: number): number | undefined =>
      highest <= 0 || index(outer) > 0
        ? undefined
        : Number(bisected((pH) => index(pH) > 0, [best, outer], 40, 1e-6)[0].toFixed(3));
    return [end(0), end(PKW)];
  };
  const [startsAt, allDissolvedFrom] = endsOf(start);
  const [completeFrom, redissolvesFrom] = endsOf(gone);
  return { startsAt, completeFrom, redissolvesFrom, allDissolvedFrom };
}

/** Steps of pH in which the best one is looked for. */
const COARSE = 0.5;

/** pH where the curve crosses a level between an outer end and its minimum. */
function crossing(at: (pH: number) => number, level: number, outer: number, least: number): number | undefined {
  if (at(least) > level) return undefined;
  if (at(outer) <= level) return outer;
  return bisected((pH) => at(pH) <= level, [least, outer], 60)[0];
}

function logOf(concentration: QuantityLike, argument: string): number {
  const c = positive(expectDimension(concentration, "concentration", argument), argument);
  return Math.log10(c.in("mol/L").toNumber());
}

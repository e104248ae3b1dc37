// The guard: a yield or a mass that is off by the ratio of two molar masses is usually one form taken for another.
import type { FormulaLike } from "../amount";
import { formulaOfArgument, inSymbol } from "../amount/internal";
import type { Formula } from "../formula";
import type { Fields } from "../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../foundation/facts";
import { isQuantity, type Quantity, type QuantityLike, quantity } from "../quantity";
import { guard } from "./argument";
import { anhydrousOf, crystalWater } from "./crystal-water";
import { HYDRATE_FORMS } from "./data/forms";
import { HydrateError } from "./error";
import { knownHydrates, molarMassPerUnit } from "./forms";

const MIX_UP = {
  ratio: true,
  yield: true,
  observed: true,
  expected: true,
  of: true,
  relativeUncertainty: true,
  facts: true,
} as const satisfies Fields<HydrateMixUpRequest>;

/** One form taken for another, and the ratio that would follow. */
export interface HydrateMixUp {
  /** The salt that both are forms of. */
  readonly salt: Formula;
  /** The form with more water. */
  readonly heavier: Formula;
  /** The form with less. */
  readonly lighter: Formula;
  /** Ratio the mix-up would give: M(heavier)/M(lighter), or its inverse where too little was found. */
  readonly ratio: Quantity<"number">;
  /** Observed ratio less this one, relative to this one. */
  readonly deviation: number;
  /** The deviation in standard uncertainties. */
  readonly inUncertainties: number;
  /** Are both forms sold, so that the packs can be confused? */
  readonly bothSold: boolean;
  /** Where the two forms are listed. */
  readonly sources: readonly string[];
  /** The two ways it can have happened, in words. */
  readonly explanations: readonly string[];
}

/** What was observed. Give one of `ratio`, `yield`, or `observed` with `expected`. */
export interface HydrateMixUpRequest extends LookupOptions {
  /** Observed over expected, as a number. */
  readonly ratio?: QuantityLike | undefined;
  /** A percent yield: `"156 %"`. */
  readonly yield?: QuantityLike | undefined;
  /** Two masses, or two molar masses. */
  readonly observed?: QuantityLike | undefined;
  /** In the same kind of quantity as `observed`. */
  readonly expected?: QuantityLike | undefined;
  /** Salts that were in play, in any form; all of the table unless given. */
  readonly of?: FormulaLike | readonly FormulaLike[] | undefined;
  /** Relative standard uncertainty of the ratio; what is stated with the figure, or else at least 0.02, unless given. */
  readonly relativeUncertainty?: number | undefined;
}

const USUAL_UNCERTAINTY = 0.02;
/** Matches farther out than this many standard uncertainties are not named. */
const FARTHEST = 2;
/** A ratio this near to one says nothing. */
const NEAR_ONE = 0.02;
/** No two forms of a salt in the table differ by more than a factor of 3.1 (Na2S·9H2O); far beyond it a percent sign is missing. */
const LARGEST_RATIO = "20";

function observedRatio(question: HydrateMixUpRequest): Quantity {
  guard.fields(question, MIX_UP, "request");
  if (question.relativeUncertainty !== undefined) guard.number(question.relativeUncertainty, "relativeUncertainty");
  const { ratio, yield: percent, observed, expected } = question;
  if ([ratio, percent, observed ?? expected].filter((given) => given !== undefined).length > 1) {
    throw new HydrateError("hydrate.too-many-inputs", "give one of ratio, yield, and observed with expected");
  }
  const plain = ratio ?? percent;
  if (plain !== undefined) {
    const q = isQuantity(plain) ? plain : quantity(plain);
    return checked(q.symbol === undefined ? q.named({ symbol: "r", label: "observed / expected" }) : q);
  }
  if (observed === undefined || expected === undefined) {
    throw new HydrateError(
      "hydrate.missing-input",
      "a mix-up is looked for by ratio, yield, or observed and expected",
      {
        hint: 'give yield: "156 %", or observed and expected masses',
      },
    );
  }
  return checked(quantity(observed).dividedBy(expected).named({ symbol: "r", rule: "ratio = observed / expected" }));
}

/**
 * Relative uncertainty of the observed ratio. One that was stated with the figure counts; a computed one often holds only
 * atomic weights and the balance, and knows nothing of losses, so it counts where it is the larger.
 */
function spreadOf(r: Quantity, given: QuantityLike | undefined): number {
  const own = r.standardUncertainty?.div(r.value).toNumber() ?? 0;
  const stated = given !== undefined && !isQuantity(given) && own > 0;
  return stated ? own : Math.max(own, USUAL_UNCERTAINTY);
}

function checked(q: Quantity): Quantity {
  if (!["number", "mass fraction"].includes(q.dimension) || !q.isPositive()) {
    throw new HydrateError("hydrate.not-positive", `a ratio must be a number above zero, not ${q}`, {
      details: { ratio: String(q) },
    });
  }
  if (q.compare(LARGEST_RATIO) > 0) {
    throw new HydrateError("hydrate.outside-range", `no two forms of a salt differ by a factor of ${q.in("")}`, {
      hint: 'a percent yield is written with its sign: "156 %"',
      details: { ratio: String(q) },
    });
  }
  return q;
}

function saltsOf(of: HydrateMixUpRequest["of"]): Formula[] {
  if (of === undefined) return HYDRATE_FORMS().map((row) => formulaOfArgument(row.salt));
  const list = Array.isArray(of) ? (of as readonly FormulaLike[]) : [of as FormulaLike];
  const salts: Formula[] = [];
  for (const like of list) {
    const salt = anhydrousOf(like);
    if (!salts.some((other) => other.hasSameComposition(salt))) salts.push(salt);
  }
  return salts;
}

/** The weighable forms of a salt by rising water; the anhydrous salt belongs to them, because it is what theory starts from. */
function formsFor(salt: Formula): Form[] {
  const forms: Form[] = knownHydrates(salt).map(({ formula, sold, source }) => ({
    formula,
    sold,
    source,
    M: molarMassPerUnit(formula),
  }));
  if (forms.length === 0 || crystalWater(forms[0]!.formula).waters.equals(0)) return forms;
  return [{ formula: salt, sold: false, source: undefined, M: molarMassPerUnit(salt) }, ...forms];
}

interface Form {
  readonly formula: Formula;
  readonly sold: boolean;
  readonly source: string | undefined;
  /** Molar mass for one anhydrous unit. */
  readonly M: Quantity;
}

function explanations(heavier: string, lighter: string, tooMuch: boolean): string[] {
  return tooMuch
    ? [
        `what was weighed is ${heavier}, the expectation was calculated for ${lighter}`,
        `${lighter} was put in where the recipe counts on ${heavier}`,
      ]
    : [
        `what was weighed is ${lighter}, the expectation was calculated for ${heavier}`,
        `${heavier} was put in where the recipe counts on ${lighter}`,
      ];
}

/**
 * Which mix-up of hydrates would explain a yield, a mass or a molar mass that is off by a factor.
 *
 * Every pair of known forms of each salt is tried; pairs that are both sold come first, then the nearest.
 *
 * @param question - `ratio`, `yield`, or `observed` and `expected`; `of`, the salts in play
 * @returns mix-ups whose ratio lies within two standard uncertainties, ranked; empty when none does or the ratio is near 1
 * @throws {HydrateError} `hydrate.missing-input`, `hydrate.too-many-inputs`, `hydrate.not-positive`, `hydrate.outside-range`
 *   for a ratio above 20, `hydrate.unknown-salt` when none of `of` is known
 * @throws {QuantityError} those of reading a quantity
 * @throws {FormulaError} those of `parseFormula`
 * @category Hydrates
 * @example
 * hydrateMixUps({ yield: "156 %", of: "CuSO4" }).map((m) => `${m.heavier} for ${m.lighter}`) // => ["CuSO4.5H2O for CuSO4"]
 * hydrateMixUps({ ratio: "1.60", of: "ZnSO4" })[0]!.explanations[1] // => "ZnSO₄·H₂O was put in where the recipe counts on ZnSO₄·7H₂O"
 */
export function hydrateMixUps(question: HydrateMixUpRequest): HydrateMixUp[] {
  if (bringsFacts(question)) return withItsFacts(question, guard, hydrateMixUps);
  const r = observedRatio(question);
  const value = r.toNumber("");
  const relative = question.relativeUncertainty ?? spreadOf(r, question.ratio ?? question.yield);
  if (!(relative > 0)) {
    throw new HydrateError("hydrate.not-positive", `a relative uncertainty must be above zero, not ${relative}`);
  }
  const salts = saltsOf(question.of);
  const known = salts.map((salt) => ({ salt, forms: formsFor(salt) }));
  if (known.every(({ forms }) => forms.length === 0)) {
    throw new HydrateError("hydrate.unknown-salt", `no hydrates of ${salts.map(inSymbol).join(", ")} are tabulated`, {
      hint: "leave out of to search every salt of the table",
    });
  }
  if (Math.abs(value - 1) < NEAR_ONE) return [];
  const found: HydrateMixUp[] = [];
  for (const { salt, forms } of known) {
    for (const [i, light] of forms.entries()) {
      for (const heavy of forms.slice(i + 1)) {
        const match = matched(salt, heavy, light, value, relative);
        if (match !== undefined) found.push(match);
      }
    }
  }
  return found.sort(
    (a, b) => Number(b.bothSold) - Number(a.bothSold) || Math.abs(a.inUncertainties) - Math.abs(b.inUncertainties),
  );
}

function matched(salt: Formula, heavy: Form, light: Form, value: number, relative: number): HydrateMixUp | undefined {
  const [H, L] = [heavy.M, light.M];
  const tooMuch = value > 1;
  const [above, below] = tooMuch ? [H, L] : [L, H];
  const plain = above.in("g/mol").div(below.in("g/mol")).toNumber();
  const deviation = value / plain - 1;
  const inUncertainties = deviation / relative;
  if (Math.abs(inUncertainties) > FARTHEST) return undefined;
  const names = [inSymbol(heavy.formula), inSymbol(light.formula)] as const;
  return {
    salt,
    heavier: heavy.formula,
    lighter: light.formula,
    ratio: above.dividedBy(below).named({
      symbol: "ratio",
      rule: tooMuch ? `ratio = M(${names[0]}) / M(${names[1]})` : `ratio = M(${names[1]}) / M(${names[0]})`,
    }),
    deviation,
    inUncertainties,
    bothSold: heavy.sold && light.sold,
    sources: [...new Set([heavy.source, light.source].filter((source) => source !== undefined))],
    explanations: explanations(names[0], names[1], tooMuch),
  };
}

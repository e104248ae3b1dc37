// The same metal or the same salt in another form: how much of what is on the shelf stands for what the recipe names.

import { amountOf, type FormulaLike, type MassLike, massOf, type Purity } from "../amount";
import { formulaOfArgument, inSymbol, PURITY } from "../amount/internal";
import type { Formula } from "../formula";
import type { Fields } from "../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../foundation/facts";
import { Fraction } from "../foundation/fraction";
import { withPlainJSON } from "../foundation/plain-json";
import { list } from "../foundation/wording";
import type { Quantity } from "../quantity";
import { guard } from "./argument";
import { crystalWater } from "./crystal-water";
import { HydrateError } from "./error";

const TWO_FORMS = { from: true, to: true } as const satisfies Fields<Parameters<typeof equivalenceOptions>[0]>;

const FORMS = {
  ...TWO_FORMS,
  per: true,
  fromPurity: PURITY,
  toPurity: PURITY,
  facts: true,
} as const satisfies Fields<FormsOfOne>;

/** The two forms, and what shall be the same in both. */
export interface FormsOfOne extends LookupOptions {
  /** The form the mass is given in. */
  readonly from: FormulaLike;
  /** The form the mass is wanted in. */
  readonly to: FormulaLike;
  /** Symbol of the element to keep equal, where the formulas leave a choice. */
  readonly per?: string | undefined;
  /** Assay and moisture of the form the mass is given in. */
  readonly fromPurity?: Purity | undefined;
  /** Assay and moisture of the form the mass is wanted in. */
  readonly toPurity?: Purity | undefined;
}

/** What is kept equal between two forms, and how many moles of the second go with one of the first. */
export interface EquivalenceReading {
  /** The anhydrous salt, or the symbol of an element. */
  readonly per: string;
  /** Moles of `to` for each mole of `from`. */
  readonly ratio: Fraction;
}

/** Elements that two forms share by accident, through water and oxide. */
const NOT_TELLING = new Set(["H", "O"]);

const ONE = /* @__PURE__ */ new Fraction(1);

/** The ratio in which every element of two formulas stands, if there is one. */
function proportion(a: Formula, b: Formula): Fraction | undefined {
  if (a.hasSameComposition(b)) return ONE;
  const [x, y] = [a.composition, b.composition];
  if (x.length !== y.length || a.charge !== 0 || b.charge !== 0) return undefined;
  let ratio: Fraction | undefined;
  for (const { symbol, count } of x) {
    const other = b.count(symbol);
    if (other.equals(0)) return undefined;
    const here = count.div(other);
    if (ratio !== undefined && !ratio.equals(here)) return undefined;
    ratio = here;
  }
  return ratio;
}

/**
 * Every way in which one form can stand for another: the same anhydrous salt, or the same amount of a shared element
 * other than hydrogen and oxygen.
 *
 * @param forms - `from` and `to`
 * @returns one reading if both are the same salt with more or less water; otherwise one for each shared element
 * @throws {HydrateError} `hydrate.only-water`
 * @throws {FormulaError} those of `parseFormula`
 * @category Hydrates
 * @example
 * equivalenceOptions({ from: "Na2CO3", to: "NaHCO3" }).map((r) => `${r.ratio} per ${r.per}`) // => ["1 per C", "2 per Na"]
 */
export function equivalenceOptions(forms: Pick<FormsOfOne, "from" | "to">): EquivalenceReading[] {
  guard.fields(forms, TWO_FORMS, "request");
  const { from, to } = forms;
  const [a, b] = [formulaOfArgument(from, "from"), formulaOfArgument(to, "to")];
  const [x, y] = [crystalWater(a), crystalWater(b)];
  const same = proportion(x.anhydrous, y.anhydrous);
  if (same !== undefined)
    return [withPlainJSON({ per: x.anhydrous.toString(), ratio: same.mul(x.units).div(y.units) })];
  return a.symbols
    .filter((symbol) => !NOT_TELLING.has(symbol) && !b.count(symbol).equals(0))
    .map((symbol) => withPlainJSON({ per: symbol, ratio: a.count(symbol).div(b.count(symbol)) }));
}

/** The one reading that is meant, or a refusal that lists them. */
function chosenReading(forms: FormsOfOne): EquivalenceReading {
  const [a, b] = [formulaOfArgument(forms.from, "from"), formulaOfArgument(forms.to, "to")];
  const { per } = forms;
  const names = `${inSymbol(a)} and ${inSymbol(b)}`;
  if (per !== undefined) {
    const [here, there] = [a.count(per), b.count(per)];
    if (!here.equals(0) && !there.equals(0)) return { per, ratio: here.div(there) };
    const shared = a.symbols.filter((symbol) => !b.count(symbol).equals(0));
    throw new HydrateError("hydrate.not-in-both", `'${per}' is not an element of both ${names}`, {
      hint:
        shared.length === 0
          ? "they share none: one cannot stand for the other"
          : `give the symbol of an element they share: ${list(
              shared.map((symbol) => `"${symbol}"`),
              "or",
            )}`,
      details: { from: a.toString(), to: b.toString(), per },
    });
  }
  const readings = equivalenceOptions({ from: a, to: b });
  const first = readings[0];
  if (first === undefined) {
    throw new HydrateError("hydrate.no-common-part", `${names} share no element besides hydrogen and oxygen`, {
      hint: "check the two formulas; one cannot stand for the other",
      details: { from: a.toString(), to: b.toString() },
    });
  }
  if (readings.some((reading) => !reading.ratio.equals(first.ratio))) {
    throw new HydrateError("hydrate.several-readings", `${names} can stand for each other in ${readings.length} ways`, {
      hint: `say what shall be equal: ${list(
        readings.map((r) => `per: "${r.per}" (${r.ratio.toFraction()} : 1)`),
        "or",
      )}`,
      details: {
        from: a.toString(),
        to: b.toString(),
        readings: readings.map((r) => ({ per: r.per, ratio: r.ratio.toFraction() })),
      },
    });
  }
  return readings.length === 1 ? first : { per: list(readings.map((r) => r.per)), ratio: first.ratio };
}

/**
 * Mass of another form that holds the same salt, or the same metal: the heptahydrate for the monohydrate, the basic
 * carbonate for the oxide.
 *
 * Two forms that differ only in crystal water need no more to be said. Other pairs go by the element they share besides
 * hydrogen and oxygen; where several are shared in different proportions (Na2CO3 and NaHCO3), say which with `per`.
 *
 * @param mass - mass of the form `from`, > 0
 * @param forms - `from`, `to`, where needed `per`, and the purity of each
 * @returns mass of the form `to`, in g
 * @throws {HydrateError} `hydrate.several-readings`, `hydrate.no-common-part`, `hydrate.not-in-both`, `hydrate.only-water`
 * @throws {AmountError} `amount.not-positive`, `amount.fraction-above-one`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @throws {FormulaError} those of `parseFormula`
 * @category Hydrates
 * @example
 * equivalentMass("30.0 g", { from: "FeSO4·7H2O", to: "FeSO4·H2O" }).format({ decimals: 1, uncertainty: "none" }) // => "18.3 g"
 * equivalentMass("100 g", { from: "Zn5(OH)6(CO3)2", to: "ZnO" }).format({ decimals: 2, uncertainty: "none" }) // => "74.12 g"
 */
export function equivalentMass(mass: MassLike, forms: FormsOfOne): Quantity<"mass"> {
  if (bringsFacts(forms)) return withItsFacts(forms, guard, (others) => equivalentMass(mass, others));
  guard.fields(forms, FORMS, "request");
  if (forms.per !== undefined) guard.text(forms.per, "per");
  const [from, to] = [formulaOfArgument(forms.from, "from"), formulaOfArgument(forms.to, "to")];
  const { per, ratio } = chosenReading({ ...forms, from, to });
  const n = amountOf(mass, from, forms.fromPurity);
  const wanted = (ratio.equals(1) ? n : n.times(ratio)).named({
    symbol: `n(${inSymbol(to)})`,
    rule: `${ratio.toFraction()} mol ${inSymbol(to)} for 1 mol ${inSymbol(from)}: the same amount of ${/ and /.test(per) ? per : inSymbol(formulaOfArgument(per))}`,
  });
  return massOf(wanted, to, forms.toPurity);
}

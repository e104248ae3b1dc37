// Mass, amount and number of entities of one substance as it lies in the jar: with assay and moisture.

import { molarMass } from "../formula";
import type { Fields } from "../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../foundation/facts";
import { type Quantity, type QuantityLike, quantity } from "../quantity";
import { expectDimension } from "../quantity/internal";
import {
  type AmountLike,
  assayOf,
  type FormulaLike,
  formulaOfArgument,
  grouped,
  guard,
  inSymbol,
  type MassFractionLike,
  type MassLike,
  moistureOf,
  positive,
} from "./argument";
import { avogadroConstant } from "./gas/constants";

export const PURITY = { assay: true, moisture: true } as const satisfies Fields<Purity>;

/** How pure and how dry the material is. */
export interface Purity {
  /** Mass fraction of the formula in the dry material, in (0, 1]; the material is pure unless given. */
  readonly assay?: MassFractionLike | undefined;
  /** Mass fraction of moisture (not crystal water) in the material as weighed, in [0, 1); dry unless given. */
  readonly moisture?: MassFractionLike | undefined;
}

const JAR = { ...PURITY, facts: true } as const satisfies Fields<Purity & LookupOptions>;

/** The fraction of a weighed mass that is the substance, and how a rule says it. Undefined for pure dry material. */
function content(purity: Purity, of: string): { fraction: Quantity; words: string } | undefined {
  const { assay, moisture } = grouped(purity, JAR);
  const w =
    assay === undefined
      ? undefined
      : assayOf(assay, "assay", { symbol: `w(${of})`, label: "mass fraction of the substance in the dry material" });
  if (moisture === undefined) return w === undefined ? undefined : { fraction: w, words: "mass fraction" };
  const h = moistureOf(moisture, { symbol: "w(moisture)", label: "mass fraction of moisture as weighed" });
  const dry = quantity("1").minus(h);
  return w === undefined
    ? { fraction: dry, words: "(1 - moisture)" }
    : { fraction: w.times(dry), words: "mass fraction × (1 - moisture)" };
}

/**
 * How many moles are in a weighed mass.
 *
 * @param mass - mass as weighed, > 0
 * @param formula - what the jar holds, crystal water included
 * @param purity - `assay`, mass fraction of the formula in the dry material, and `moisture`, mass fraction of wetness;
 *   `facts` of the caller's own
 * @returns amount of substance in mol; uncertainty and working come with it
 * @throws {QuantityError} `quantity.wrong-dimension` and those of reading a quantity
 * @throws {AmountError} `amount.not-positive`, `amount.fraction-above-one`
 * @throws {FormulaError} those of `parseFormula`
 * @source IUPAC Green Book, 3rd ed. (2007), section 2.10: n = m/M (section number from memory)
 * @category Weighing
 * @example
 * amountOf("287.5 g", "ZnSO4·7H2O").format({ decimals: 3, uncertainty: "none" }) // => "1.000 mol"
 * amountOf("100 g", "Na2CO3", { assay: "98 %" }).format({ decimals: 3, uncertainty: "none" }) // => "0.925 mol"
 */
export function amountOf(
  mass: MassLike,
  formula: FormulaLike,
  purity: Purity & LookupOptions = {},
): Quantity<"amount of substance"> {
  if (bringsFacts(purity)) return withItsFacts(purity, guard, (others) => amountOf(mass, formula, others));
  const f = formulaOfArgument(formula);
  const name = inSymbol(f);
  const m = positive(mass, "mass", "mass", { symbol: `m(${name})`, label: `mass of ${name} as weighed` });
  const part = content(purity, name);
  const pure = part === undefined ? m : part.fraction.times(m);
  return pure.dividedBy(molarMass(f)).named({
    symbol: `n(${name})`,
    rule: `amount = ${part === undefined ? "" : `${part.words} × `}mass / molar mass`,
  });
}

/**
 * What mass to weigh for a wanted number of moles.
 *
 * @param amount - amount of substance, > 0
 * @param formula - what the jar holds, crystal water included
 * @param purity - `assay`, mass fraction of the formula in the dry material, and `moisture`, mass fraction of wetness;
 *   `facts` of the caller's own
 * @returns mass to weigh, in g
 * @throws {QuantityError} `quantity.wrong-dimension` and those of reading a quantity
 * @throws {AmountError} `amount.not-positive`, `amount.fraction-above-one`
 * @throws {FormulaError} those of `parseFormula`
 * @source IUPAC Green Book, 3rd ed. (2007), section 2.10: m = n M (section number from memory)
 * @category Weighing
 * @example
 * massOf("0.1 mol", "MgSO4·7H2O").format({ decimals: 2, uncertainty: "none" }) // => "24.65 g"
 * massOf("0.1 mol", "MgSO4·7H2O", { assay: "98 %" }).format({ decimals: 2, uncertainty: "none" }) // => "25.15 g"
 */
export function massOf(
  amount: AmountLike,
  formula: FormulaLike,
  purity: Purity & LookupOptions = {},
): Quantity<"mass"> {
  if (bringsFacts(purity)) return withItsFacts(purity, guard, (others) => massOf(amount, formula, others));
  const f = formulaOfArgument(formula);
  const name = inSymbol(f);
  const n = positive(amount, "amount of substance", "amount", { symbol: `n(${name})`, label: `amount of ${name}` });
  const part = content(purity, name);
  const pure = n.times(molarMass(f));
  return (part === undefined ? pure : pure.dividedBy(part.fraction)).to("g").named({
    symbol: `m(${name})`,
    rule: `mass = amount × molar mass${part === undefined ? "" : ` / (${part.words})`}`,
  });
}

/**
 * How many atoms, molecules or formula units an amount holds.
 *
 * @param amount - amount of substance, > 0
 * @returns the number of entities
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @throws {AmountError} `amount.not-positive`
 * @source SI Brochure, 9th ed. (2019): N = n N(A)
 * @category Weighing
 * @example
 * entitiesOf("2 mol").in("").toExponential(4) // => "1.2044e+24"
 */
export function entitiesOf(amount: AmountLike): Quantity<"number"> {
  const n = positive(amount, "amount of substance", "amount", { symbol: "n", label: "amount of substance" });
  return n.times(avogadroConstant()).named({ symbol: "N", rule: "number of entities = amount × Avogadro constant" });
}

/**
 * The amount of substance that a number of entities makes.
 *
 * @param entities - a count, > 0, as text, bigint or quantity
 * @returns amount of substance in mol
 * @throws {QuantityError} `quantity.wrong-dimension`, `quantity.not-a-number`
 * @throws {AmountError} `amount.not-positive`
 * @source SI Brochure, 9th ed. (2019): n = N / N(A)
 * @category Weighing
 * @example
 * amountOfEntities("3.01107038e23").toString() // => "0.5 mol"
 */
export function amountOfEntities(entities: QuantityLike<"number"> | bigint): Quantity<"amount of substance"> {
  const given = typeof entities === "bigint" ? entities.toString() : entities;
  const N = positive(expectDimension(given, "number", "entities"), "number", "entities", {
    symbol: "N",
    label: "number of entities",
  });
  return N.dividedBy(avogadroConstant())
    .to("mol")
    .named({ symbol: "n", rule: "amount = number of entities / Avogadro constant" });
}

// Oxidation states of a formula: an average for each element, and the states of its sites where the notation tells them.

import { type Formula, parseFormula } from "../../formula";
import { Fraction } from "../../foundation/fraction";
import { type Constitution, constitutionOf } from "../../ion";
import { EquationError } from "../error";
import { formulaGiven } from "../read/parse";
import { signed } from "./rules";
import { countsOf, type Item, partsOf } from "./structure";
import { type Analysis, analyse, analyseRest, analyseSalt, merged, type SiteState } from "./units";

/** One element in one state. */
export interface OxidationSite {
  /** Of the element. */
  readonly symbol: string;
  /** Exact; a fraction where only an average over the sites can be determined. */
  readonly state: Fraction;
  /** How many atoms of the formula are in it. */
  readonly count: Fraction;
  /** The ion, ligand or adduct part they sit in, where there is more than one. */
  readonly in?: string;
}

/**
 * Oxidation states in one formula. Made by `oxidationStates`.
 *
 * @category Redox
 * @example
 * oxidationStates("K2Cr2O7").toString() // => "K +1, Cr +6, O -2"
 */
export class OxidationStates {
  /** The formula that was asked about. */
  readonly formula: Formula;
  /** Every element in every state, in the order of the formula. */
  readonly states: readonly OxidationSite[];
  /** What the notation does not tell and had to be assumed, in words; mostly none. */
  readonly assumptions: readonly string[];

  /** @internal Use `oxidationStates`. */
  constructor(formula: Formula, states: readonly OxidationSite[], assumptions: readonly string[]) {
    this.formula = formula;
    this.states = states;
    this.assumptions = assumptions;
  }

  /** Elements, each once. */
  get symbols(): string[] {
    return [...new Set(this.states.map(({ symbol }) => symbol))];
  }

  /**
   * The state of an element; its average if it occurs in several. D and T count as hydrogen.
   *
   * @throws {EquationError} `equation.no-such-element`
   * @example
   * oxidationStates("Fe3O4").of("Fe").toFraction() // => "8/3"
   */
  of(symbol: string): Fraction {
    const element = (symbol === "D" || symbol === "T") && this.formula.symbols.includes(symbol) ? "H" : symbol;
    let sum = new Fraction(0);
    let atoms = new Fraction(0);
    for (const { symbol: own, state, count } of this.states) {
      if (own !== element) continue;
      sum = sum.add(state.mul(count));
      atoms = atoms.add(count);
    }
    if (atoms.n === 0n) {
      throw new EquationError("equation.no-such-element", `${symbol} is not in ${this.formula}`);
    }
    return sum.div(atoms);
  }

  /** `K +1, Mn +7, O -2`; an element in several states is listed with each. */
  toString(): string {
    return this.states
      .map(({ symbol, state, in: unit }) => {
        const several = this.states.filter((other) => other.symbol === symbol && !other.state.equals(state)).length > 0;
        return `${symbol} ${signed(state)}${several && unit !== undefined ? ` in ${unit}` : ""}`;
      })
      .filter((text, at, all) => all.indexOf(text) === at)
      .join(", ");
  }

  /** Average states by symbol, as text: `{ Fe: "8/3", O: "-2" }`. */
  toJSON(): Record<string, string> {
    return Object.fromEntries(this.symbols.map((symbol) => [symbol, this.of(symbol).toFraction()]));
  }
}

/** Does the formula state oxidation numbers, or charges inside it? Then these are taken. */
const isStated = (items: readonly Item[]): boolean =>
  items.some((item) => (item.kind === "atom" ? item.stated !== undefined : item.charge !== 0 || isStated(item.items)));

/** A salt by its ions, an acid by its composition (C2H5NO2 is glycine, no nitro compound), the rest as written. */
function analysePart(
  made: Constitution | undefined,
  items: readonly Item[],
  charge: Fraction,
  name: string | undefined,
): Analysis | undefined {
  const salt = made?.kind === "salt" && made.molecules.length === 0 ? analyseSalt(made, items, name) : undefined;
  if (salt !== undefined) return salt;
  if (made?.kind === "acid" && items.every(({ kind }) => kind === "atom")) return analyseRest(items, charge, name);
  return analyse(items, charge, name);
}

/**
 * Oxidation state of every element in a formula, exact.
 *
 * Where the notation shows ions or ligands, each is judged by itself (`NH4NO3` has nitrogen at -3 and at +5); otherwise
 * an element has one state, the average over its atoms (`Fe3O4`: 8/3, `Na2S2O3`: 2, `Na2S4O6`: 5/2, organic carbon).
 * Fluorine is -1; metals of groups 1 and 2, aluminium and zinc have their group's state; hydrogen is +1, beside metals and
 * boron -1; oxygen is -2 unless the other elements cannot give as much (peroxides -1, superoxides -1/2, OF2 +2); then the
 * more electronegative non-metal takes the charge of its simple anion. In compounds of two variable metals one may have to
 * be assumed; `assumptions` then says so.
 *
 * @param formula - formula or text, with its charge
 * @returns exact fractions; `of(symbol)` for the average, `states` for every site
 * @throws {EquationError} `equation.oxidation-state-unknown` where the rules do not settle it, `equation.not-a-formula`; all
 * codes of `parseFormula`
 * @source IUPAC Red Book 2005, IR-5.4.2.2 and table VI (electronegativity sequence; section number from memory)
 * @category Redox
 * @example
 * oxidationStates("KMnO4").of("Mn").toFraction() // => "7"
 * oxidationStates("NH4NO3").toString() // => "N -3 in NH4+, N +5 in NO3-, H +1, O -2"
 * oxidationStates("H2O2").of("O").toFraction() // => "-1"
 */
export function oxidationStates(formula: Formula | string): OxidationStates {
  const read = typeof formula === "string" ? parseFormula(formula) : formulaGiven(formula);
  // the electron holds no element
  const parts = read.elementIndices.length === 0 ? [] : partsOf(read);
  const sites: SiteState[] = [];
  const assumptions: string[] = [];
  const formulas = parts.length > 1 ? read.parts.map((part) => part.formula) : [read];
  for (const [at, { items, number, charge }] of parts.entries()) {
    const name = parts.length > 1 ? String(formulas[at]) : undefined;
    const made = charge === 0 && !isStated(items) ? constitutionOf(formulas[at]!) : undefined;
    const analysis = analysePart(made, items, new Fraction(charge), name);
    if (analysis === undefined) {
      throw new EquationError(
        "equation.oxidation-state-unknown",
        `the rules do not settle the oxidation states in ${read}`,
        {
          details: { formula: String(read) },
          hint: "write its ions in brackets, or an oxidation number such as Fe^{II}",
        },
      );
    }
    for (const site of analysis.sites) sites.push({ ...site, count: site.count.mul(number) });
    assumptions.push(...analysis.assumptions);
  }
  const written = new Map<string, Fraction>();
  for (const { items } of parts) countsOf(items, undefined, written);
  const order = [...written.keys()];
  sites.sort((one, other) => order.indexOf(one.symbol) - order.indexOf(other.symbol));
  const states = merged(sites).map(({ unit, ...site }) => (unit === undefined ? site : { ...site, in: unit }));
  return new OxidationStates(read, states, assumptions);
}

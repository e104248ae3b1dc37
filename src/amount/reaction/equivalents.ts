// Equivalents from the reaction: electrons in a redox reaction, protons between acid and base, charges in a
// precipitation. The older definition of the trade; a mole counts for as many as the equation says, never more or less.

import {
  type BalancedEquation,
  oxidationStates,
  type RedoxAnalysis,
  redoxAnalysis,
  type StateChange,
} from "../../equation";
import { inWater, signed } from "../../equation/internal";
import type { Formula } from "../../formula";
import { attempt } from "../../foundation/error";
import { Fraction } from "../../foundation/fraction";
import { withPlainJSON } from "../../foundation/plain-json";
import { readable } from "../../foundation/readable";
import { type FormulaLike, formulaOfArgument } from "../argument";
import { AmountError } from "../error";
import { exchangeOf } from "../jar/exchange";
import { findForm, type Place, placesOf, type ReactionLike, reactionOf } from "../jar/species";

/** What is counted: electrons, protons, or the charges of ions that precipitate. */
export type EquivalentKind = "redox" | "acid-base" | "precipitation";

/** The equivalents of a reactant in a reaction. */
export interface Equivalents {
  /** The reactant that the equivalents are of. */
  readonly formula: Formula;
  /** What an equivalent of it stands for in this reaction. */
  readonly kind: EquivalentKind;
  /** Equivalents that one mole counts for. */
  readonly perMole: Fraction;
  /** What was counted, in words: "takes 5 electrons: Mn +7 to +2". */
  readonly counted: string;
  /** The reaction they belong to, as balanced. */
  readonly equation: string;
  /** What had to be assumed about dissolving, in words; mostly none. */
  readonly assumptions: readonly string[];
}

type Counted = Pick<Equivalents, "kind" | "perMole" | "counted" | "assumptions">;

const ZERO = /* @__PURE__ */ new Fraction(0);

/** `5 electrons`, `1 proton`. */
const some = (count: Fraction, what: string): string => `${count.toFraction()} ${what}${count.equals(1) ? "" : "s"}`;

function severalReadings(formula: Formula, equation: unknown, why: string, readings: readonly string[]): AmountError {
  return new AmountError("amount.several-readings", `${formula} ${why} in ${String(equation)}`, {
    hint: `it counts for ${readings.join(", or for ")}; give equivalents with the reading that is meant`,
    details: { formula: formula.toString(), readings },
  });
}

const atomsIn = (formula: Formula, { symbol, from }: StateChange): Fraction =>
  oxidationStates(formula).states.reduce(
    (sum, site) => (site.symbol === symbol && site.state.equals(from) ? sum.add(site.count) : sum),
    ZERO,
  );

/** Changes that begin alike, as one: their atoms and electrons added up. */
function joined(changes: readonly StateChange[]): StateChange[] {
  const all: StateChange[] = [];
  for (const change of changes) {
    const at = all.findIndex(({ symbol, from }) => symbol === change.symbol && from.equals(change.from));
    if (at < 0) all.push(change);
    else {
      const { atoms, electrons } = all[at]!;
      all[at] = { ...all[at]!, atoms: atoms.add(change.atoms), electrons: electrons.add(change.electrons) };
    }
  }
  return all;
}

/** Electrons that a mole gives or takes; undefined where none of its atoms changes state. */
function byElectrons(analysis: RedoxAnalysis, place: Place): Counted | undefined {
  const { formula } = place;
  const { equation } = analysis;
  const own = (changes: readonly StateChange[]) => joined(changes.filter((one) => one.reactants.includes(formula)));
  const given = own(analysis.oxidised);
  const taken = own(analysis.reduced);
  const changes = [...given, ...taken];
  if (changes.length === 0) return undefined;
  const perMole = (list: readonly StateChange[]) =>
    list.reduce((sum, one) => sum.add(one.electrons.div(one.atoms).mul(atomsIn(formula, one))), ZERO);
  const words = (list: readonly StateChange[]) => {
    const states = list.map(({ symbol, from, to }) => `${symbol} ${signed(from)} to ${signed(to)}`);
    return `${some(perMole(list), "electron")} ${list === given ? "given" : "taken"} (${states.join(", ")})`;
  };
  if (given.length > 0 && taken.length > 0) {
    throw severalReadings(formula, equation, "is both oxidised and reduced", [words(given), words(taken)]);
  }
  const [list, agent] = given.length > 0 ? [given, "reductant"] : [taken, "oxidant"];
  if (list.some((change) => isPartial(change, equation))) {
    const readings = [`${words(list)} where it is the ${agent}`, otherPart(place, list)];
    throw severalReadings(formula, equation, `is only in part the ${agent}`, readings);
  }
  return { kind: "redox", perMole: perMole(list), counted: words(list), assumptions: [] };
}

/** Do some atoms keep the state that the others leave? */
function isPartial(change: StateChange, { reactants }: BalancedEquation): boolean {
  const all = reactants.reduce((sum, term) => sum.add(atomsIn(term.formula, change).mul(term.coefficient)), ZERO);
  return change.atoms.compare(all) < 0;
}

/** What a species is beside oxidant or reductant: an acid, or else part of it stays as it is. */
function otherPart({ formula, coefficient }: Place, changes: readonly StateChange[]): string {
  const hydrogens = inWater([formula], [1n], true).get("H+")?.amount;
  if (hydrogens !== undefined) return `${some(new Fraction(hydrogens), "proton")} given where it is the acid only`;
  const total = changes.reduce((sum, { electrons }) => sum.add(electrons), ZERO).div(coefficient);
  return `${some(total, "electron")} on average over all of it in the equation`;
}

/** Protons that a mole gives or takes, or charges that precipitate; refused where neither is clear. */
function byExchange(analysis: RedoxAnalysis, place: Place): Counted {
  const { formula } = place;
  const { equation } = analysis;
  const { protons, falling, hydroxideFalls, unclear, assumptions } = exchangeOf(analysis, place);
  const { cations, anions } = falling;
  const acid = protons.abs();
  const asAcid = `${some(acid, "proton")} ${protons.compare(0) > 0 ? "given" : "taken"}`;
  const words = (charges: Fraction, ion: string) => `${some(charges, "charge")} of its ${ion} falling`;
  const falls = [
    ...(cations.n === 0n ? [] : [words(cations, "cation")]),
    ...(anions.n === 0n ? [] : [words(anions, "anion")]),
  ];
  const readings = [...(acid.n === 0n ? [] : [asAcid]), ...falls];
  const charges = cations.n === 0n ? anions : cations;
  if (unclear.length > 0 || readings.length === 0) {
    throw new AmountError("amount.no-equivalents", `${equation} does not give the equivalents of ${formula}`, {
      hint: "give equivalents with the reaction in words; electrons, protons or charges that precipitate are counted",
      details: { formula: formula.toString(), equation: equation.toString(), unclear },
    });
  }
  if (falls.length > 1 || (acid.n > 0n && falls.length > 0 && !acid.equals(charges))) {
    throw severalReadings(formula, equation, "takes part in more than one way", readings);
  }
  if (acid.n > 0n) {
    const counted = hydroxideFalls ? `${some(acid, "hydroxide ion")} falling with a metal` : asAcid;
    return { kind: hydroxideFalls ? "precipitation" : "acid-base", perMole: acid, counted, assumptions };
  }
  return { kind: "precipitation", perMole: charges, counted: falls[0]!, assumptions };
}

/** The reactant that is meant, or the one ion of it that stands in an ionic equation, and how many a mole holds. */
function reactantsMeant(places: readonly Place[], formula: Formula): { place: Place; count: bigint }[] {
  const found = attempt(() => findForm(places, formula));
  if (found.ok) return [{ place: found.value.place, count: 1n }];
  const ions = [...inWater([formula], [1n], true).values()].flatMap(({ formula: ion, amount }) =>
    ion.charge === 0
      ? []
      : places.filter((place) => place.formula.hasSameComposition(ion)).map((place) => ({ place, count: amount })),
  );
  if (ions.length > 0) return ions;
  if (found.error.code !== "amount.not-in-equation") throw found.error;
  const species = places.map((place) => place.formula.toString());
  throw new AmountError("amount.not-in-equation", `${formula} is not a reactant of this reaction`, {
    hint: `reactants: ${species.join(", ")}`,
    details: { formula: formula.toString(), species },
  });
}

const byIon = ({ counted, count, ion }: { counted: string; count: bigint; ion: Formula }): string =>
  `${counted} by ${count === 1n ? "its" : `each of its ${count}`} ${ion}`;

/**
 * How many equivalents one mole of a reactant counts for in a reaction, by the older definition: the electrons it gives or
 * takes in a redox reaction, the protons it gives or takes as acid or base, or the charge of its ion that precipitates.
 *
 * In an ionic equation a salt is found by its ion; a hydrate stands for the species it is a form of. Where a species plays
 * two parts (nitric acid that dissolves copper, hydrochloric acid with permanganate) it is refused, with both readings.
 *
 * @param reaction - the equation, as text or balanced; half-reactions with `e-` count too
 * @param formula - a reactant of it
 * @returns `perMole`, exact; `kind`, what was counted in words, and the balanced equation it belongs to
 * @throws {AmountError} `amount.several-readings` with both in `details.readings`; `amount.no-equivalents`;
 *   `amount.not-in-equation`
 * @throws {EquationError} those of `balance` and `redoxAnalysis`
 * @throws {FormulaError} those of `parseFormula`
 * @source IUPAC Gold Book, equivalent entity; textbook definition of the equivalent (memory)
 * @category Solutions
 * @example
 * equivalentsIn("KMnO4 + FeSO4 + H2SO4 -> K2SO4 + MnSO4 + Fe2(SO4)3 + H2O", "KMnO4").perMole.toFraction() // => "5"
 * equivalentsIn("H3PO4 + NaOH -> Na2HPO4 + H2O", "H3PO4").counted // => "2 protons given"
 */
export function equivalentsIn(reaction: ReactionLike, formula: FormulaLike): Equivalents {
  const balanced = reactionOf(reaction);
  const wanted = formulaOfArgument(formula);
  const reactants = placesOf(balanced).filter(({ side }) => side === "reactant");
  const analysis = redoxAnalysis(balanced);
  const found = reactantsMeant(reactants, wanted).map(({ place, count }) => {
    const counted = byElectrons(analysis, place) ?? byExchange(analysis, place);
    return { ...counted, perMole: counted.perMole.mul(count), ion: place.formula, count };
  });
  const [first] = found;
  if (found.length > 1) {
    const readings = found.map(byIon);
    throw severalReadings(wanted, balanced, "brings more than one ion that takes part", readings);
  }
  const { kind, perMole, counted, assumptions, count } = first!;
  return withPlainJSON(
    readable({
      formula: wanted,
      kind,
      perMole,
      counted: count === 1n ? counted : byIon(first!),
      equation: balanced.toString(),
      assumptions,
    }),
  );
}

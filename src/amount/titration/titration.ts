// Titration: from titres to an amount. A blank is taken off; the reaction is named.

import type { Formula } from "../../formula";
import { splitWater } from "../../formula/internal";
import type { Fields } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { Fraction } from "../../foundation/fraction";
import { readable } from "../../foundation/readable";
import { isQuantity, type NumberLike, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { toRational } from "../../quantity/internal";
import { massOf } from "../amount";
import {
  type FormulaLike,
  formulaOfArgument,
  grouped,
  guard,
  inSymbol,
  type MassLike,
  positive,
  tabled,
  type VolumeLike,
} from "../argument";
import { AmountError } from "../error";
import { findForm, placesOf, type ReactionLike, reactionOf } from "../jar/species";
import { concentrationOfStrength } from "../strength/strength";
import { DETAILS, type StrengthLike, type StrengthOptions } from "../strength/strength-kind";
import type { Replicates } from "./replicates";
import { type LeftOut, lessBlank, type Titre, type Titres, titresOf, warningsOf } from "./titre";

const TITRANT = { strength: true, of: true, options: { ...DETAILS, density: true } } as const satisfies Fields<Titrant>;

const TITRES = {
  titrant: TITRANT,
  titre: true,
  leftOut: [{ titre: true, because: true }],
  blank: true,
  analyte: true,
  sample: true,
} as const;

const TITRATION = {
  ...TITRES,
  equation: true,
  titrantPerAnalyte: true,
  facts: true,
} as const satisfies Fields<TitrationRequest>;

const BACK_TITRATION = {
  ...TITRES,
  reagent: TITRANT,
  reagentVolume: true,
  titrantPerReagent: true,
  reagentPerAnalyte: true,
  facts: true,
} as const satisfies Fields<Parameters<typeof backTitrate>[0]>;

/** What stands in the burette, or was added in excess. */
export interface Titrant {
  /** As on its label or by standardisation: `"0.1012 mol/L"`, `"0.1 N"`. */
  readonly strength: StrengthLike;
  /** Formula of the titrant; needed for strengths other than mol/L, and to find it in the equation. */
  readonly of?: FormulaLike | undefined;
  /** Further details of the strength: density, equivalents, what `%` means. */
  readonly options?: Omit<StrengthOptions, "of"> | undefined;
}

/** How the titrant and the analyte go together: an equation, or moles of titrant for one of analyte. */
export interface Proportion {
  /** The reaction; titrant and analyte are found in it by formula. */
  readonly equation?: ReactionLike | undefined;
  /** Moles of titrant for one mole of analyte: 2 for NaOH on H2SO4. */
  readonly titrantPerAnalyte?: NumberLike | undefined;
}

/** A titration as carried out. */
export interface TitrationRequest extends Proportion, LookupOptions {
  /** What was used for the titration, and how strong it is. */
  readonly titrant: Titrant;
  /** One titre, or the titres of replicates. */
  readonly titre: Titre | readonly Titre[];
  /** Titres that went wrong at the bench. The test for outliers alone is no reason. */
  readonly leftOut?: readonly LeftOut[] | undefined;
  /** Titre of a blank, taken off. */
  readonly blank?: VolumeLike | undefined;
  /** What is determined. */
  readonly analyte?: FormulaLike | undefined;
  /**
   * What was titrated: the mass or the volume taken for each titration. An aliquot is its share of the whole:
   * `quantity("1.060 g").times("25.00 mL").dividedBy("250.0 mL")`.
   */
  readonly sample?: MassLike | VolumeLike | undefined;
}

/** A titration worked out. */
export interface Titration {
  /** Mean titre, less the blank. */
  readonly titre: Quantity<"volume">;
  /** Mean, spread and test of the titres. */
  readonly replicates: Replicates<"volume">;
  /** Amount of analyte in the sample taken. */
  readonly amount: Quantity<"amount of substance">;
  /** Mass of analyte, where its formula is given. */
  readonly mass: Quantity<"mass"> | undefined;
  /** Concentration of the sample, where it was taken by volume. */
  readonly concentration: Quantity<"concentration"> | undefined;
  /** Mass fraction of the analyte, where the sample was weighed and the formula is given. */
  readonly massFraction: Quantity<"number"> | undefined;
  /** What to look at: discordant titres, a suspect reading, slightly more than the whole. */
  readonly warnings: readonly string[];
}

/** Moles of one species for one mole of another, from the equation or as given. */
export function ratioOf(
  request: Proportion,
  titrant: FormulaLike | undefined,
  analyte: FormulaLike | undefined,
): { ratio: Fraction; words: string } {
  const { equation, titrantPerAnalyte } = request;
  if (titrantPerAnalyte !== undefined) {
    const ratio = exactRatio(titrantPerAnalyte);
    if (ratio.compare(0) <= 0) throw new AmountError("amount.not-positive", `a ratio of ${ratio} makes no titration`);
    return { ratio, words: `${ratio.toFraction()} mol titrant for 1 mol analyte` };
  }
  if (equation === undefined || titrant === undefined || analyte === undefined) {
    throw new AmountError("amount.missing-input", "how titrant and analyte go together is not known", {
      hint: "give equation with the formulas of titrant and analyte, or titrantPerAnalyte: 2",
    });
  }
  const balanced = reactionOf(equation);
  const reactants = placesOf(balanced).filter(({ side }) => side === "reactant");
  /** How many formula units of what is named the equation counts; a hydrate stands for the species it is a form of. */
  const numberOf = (like: FormulaLike): Fraction => {
    const formula = formulaOfArgument(like);
    const found = attempt(() => findForm(reactants, formula));
    if (!found.ok) {
      if (found.error.code !== "amount.not-in-equation") throw found.error;
      throw new AmountError("amount.not-in-equation", `${formula} is not a reactant of ${balanced}`, {
        hint: "name titrant and analyte as the equation does, or give titrantPerAnalyte instead of the equation",
        details: { formula: formula.toString() },
      });
    }
    const { place, form } = found.value;
    if (form === undefined) return place.coefficient;
    return place.coefficient.mul(splitWater(place.formula).units.div(splitWater(form).units));
  };
  return { ratio: numberOf(titrant).div(numberOf(analyte)), words: balanced.toString() };
}

/** The number as an exact fraction: text through the library's own reader, never through a double. */
function exactRatio(like: NumberLike): Fraction {
  const { n, d } = toRational(like);
  return new Fraction(n, d);
}

/** Amount that a volume of titrant carries. A normality is meant for the reaction of the titration unless given. */
function carried(titrant: Titrant, volume: Quantity, symbol: string, reaction?: ReactionLike): Quantity {
  const { strength, of, options } = titrant;
  const c = concentrationOfStrength(strength, { reaction, ...options, of });
  if (!c.isPositive()) throw new AmountError("amount.not-positive", `the titrant has a strength of ${c}`);
  const named =
    c.symbol === undefined || c.symbol === "c(solute)"
      ? c.named({ symbol: "c(titrant)", label: "strength of the titrant" })
      : c;
  return named.times(volume).to("mol").named({ symbol, rule: "amount = concentration × volume" });
}

/** The amount of analyte as mass, concentration and mass fraction, as far as the sample allows. */
function answers(
  amount: Quantity,
  formula: Formula | undefined,
  sample: MassLike | VolumeLike | undefined,
): Pick<Titration, "mass" | "concentration" | "massFraction" | "warnings"> {
  const name = formula === undefined ? "analyte" : inSymbol(formula);
  const mass = formula === undefined ? undefined : massOf(amount, formula);
  if (sample === undefined) return { mass, concentration: undefined, massFraction: undefined, warnings: [] };
  const q = isQuantity(sample) ? sample : quantity(sample as QuantityLike);
  const warnings: string[] = [];
  if (q.dimension !== "mass") {
    const V = positive(q, "volume", "sample", { symbol: "V(sample)", label: "volume of sample" });
    const concentration = amount
      .dividedBy(V)
      .to("mol/L")
      .named({ symbol: `c(${name})`, rule: "concentration = amount / volume of sample" });
    return { mass, concentration, massFraction: undefined, warnings };
  }
  const m = positive(q, "mass", "sample", { symbol: "m(sample)", label: "mass of sample" });
  const massFraction = mass
    ?.dividedBy(m)
    .to("% w/w")
    .named({ symbol: `w(${name})`, rule: "mass fraction = mass of analyte / mass of sample" });
  if (massFraction !== undefined) warnings.push(...aboveTheWhole(massFraction, name));
  return { mass, concentration: undefined, massFraction, warnings };
}

/**
 * Assays of pure materials come out at up to 102 % (what pharmacopoeias allow; from memory), and two standard uncertainties
 * may be more. Beyond both there is a mistake, not a result.
 */
const ASSAY_DOUBT = "2 %";

function aboveTheWhole(w: Quantity, name: string): string[] {
  const over = w.minus("100 %");
  if (!over.isPositive()) return [];
  const u = w.standardUncertainty;
  const doubtful = over.compare(ASSAY_DOUBT) <= 0 || (u !== undefined && over.in(w.unit).lessThanOrEqualTo(u.times(2)));
  if (doubtful)
    return [`${w} of ${name} is more than the whole: within the uncertainty of a titration, it is all ${name}`];
  throw new AmountError("amount.fraction-above-one", `${w} of ${name} in the sample is more than the whole`, {
    hint: "check the formula of the analyte, the ratio, the aliquot, and the strength of the titrant",
    details: { argument: "sample", value: String(w) },
  });
}

function titration(
  titre: Quantity,
  titres: Titres,
  amount: Quantity,
  { warnings, ...found }: ReturnType<typeof answers>,
): Titration {
  const { notes: _, ...replicates } = titres;
  return readable({ titre, replicates, amount, ...found, warnings: [...warningsOf(titres), ...warnings] });
}

/**
 * Work out a direct titration: from titre and titrant to the amount of analyte, its concentration or its mass fraction.
 *
 * @param request - titrant, titre or titres, blank, analyte, sample, and the equation or `titrantPerAnalyte`
 * @returns mean titre, judged replicates, amount, and what the sample allows; warnings for discordant or outlying titres
 * @throws {AmountError} `amount.missing-input`, `amount.not-in-equation`, `amount.not-positive`, `amount.not-possible`,
 *   `amount.readings`, `amount.fraction-above-one` for a mass fraction above the whole by more than 2 % and by more than
 *   its doubt, and those of {@link convertStrength}
 * @throws {EquationError} those of `balance`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source n(analyte) = c V(titrant) / ratio
 * @category Solutions
 * @example
 * const rain = titrate({ titrant: { strength: "0.0811 mol/L" }, titre: "1.7 mL", titrantPerAnalyte: 2, sample: "20.0 mL" });
 * rain.concentration!.format({ decimals: 4 }) // => "0.0034 mol/L"
 * titrate({ titrant: { strength: "0.1000 mol/L" }, titre: { initial: "1.20 mL", final: "25.60 mL" }, titrantPerAnalyte: 1, sample: "25.00 mL" }).titre.format() // => "24.40 mL"
 */
export function titrate(request: TitrationRequest): Titration {
  if (bringsFacts(request)) return withItsFacts(request, guard, titrate);
  const { titrant, titre, leftOut, blank, analyte, sample } = grouped(request, TITRATION, "request");
  tabled(titrant, "titrant");
  const formula = analyte === undefined ? undefined : formulaOfArgument(analyte);
  const { ratio, words } = ratioOf(request, titrant.of, analyte);
  const titres = titresOf(titre, leftOut);
  const net = lessBlank(titres.mean, blank, false);
  const used = carried(titrant, net, "n(titrant)", request.equation);
  const amount = used.dividedBy(ratio).named({
    symbol: `n(${formula === undefined ? "analyte" : inSymbol(formula)})`,
    rule: `amount of analyte = amount of titrant / ratio: ${words}`,
  });
  return titration(net, titres, amount, answers(amount, formula, sample));
}

/**
 * Work out a back titration: a known excess of reagent, of which the titrant finds what was left.
 *
 * Give the excess either as a blank titre (the same reagent without sample) or as volume and strength of the reagent.
 *
 * @param request - as for {@link titrate}, with `reagent`, its `reagentVolume` and `titrantPerReagent` where there is no
 *   blank; `reagentPerAnalyte`, moles of reagent used by one mole of analyte
 * @returns as for {@link titrate}
 * @throws {AmountError} as for {@link titrate}
 * @source n(analyte) = (n(reagent) - n(titrant)/ratio) / ratio
 * @category Solutions
 * @example
 * const chalk = backTitrate({ reagent: { strength: "1.000 mol/L" }, reagentVolume: "50.00 mL", titrant: { strength: "0.500 mol/L" }, titre: "60.0 mL", titrantPerReagent: 1, reagentPerAnalyte: 2, analyte: "CaCO3", sample: "1.100 g" });
 * chalk.massFraction!.format({ decimals: 1, uncertainty: "none" }) // => "91.0 % w/w"
 */
export function backTitrate(
  request: Omit<TitrationRequest, "equation" | "titrantPerAnalyte"> & {
    readonly reagent?: Titrant | undefined;
    readonly reagentVolume?: VolumeLike | undefined;
    readonly titrantPerReagent: NumberLike;
    readonly reagentPerAnalyte: NumberLike;
  },
): Titration {
  if (bringsFacts(request)) return withItsFacts(request, guard, backTitrate);
  const {
    titrant,
    titre,
    leftOut,
    blank,
    analyte,
    sample,
    reagent,
    reagentVolume,
    titrantPerReagent,
    reagentPerAnalyte,
  } = grouped(request, BACK_TITRATION, "request");
  tabled(titrant, "titrant");
  const formula = analyte === undefined ? undefined : formulaOfArgument(analyte);
  const titres = titresOf(titre, leftOut);
  const back = ratioOf({ titrantPerAnalyte: titrantPerReagent }, undefined, undefined).ratio;
  const forth = ratioOf({ titrantPerAnalyte: reagentPerAnalyte }, undefined, undefined).ratio;
  let consumed: Quantity;
  let net: Quantity;
  if (blank !== undefined) {
    net = lessBlank(titres.mean, blank, true);
    consumed = carried(titrant, net, "n(titrant)")
      .dividedBy(back)
      .named({ symbol: "n(reagent used)", rule: `reagent used = amount of titrant / ${back.toFraction()}` });
  } else {
    if (reagent === undefined || reagentVolume === undefined) {
      throw new AmountError("amount.missing-input", "a back titration needs the reagent added, or a blank", {
        hint: "give reagent and reagentVolume, or blank",
      });
    }
    net = lessBlank(titres.mean, undefined, true);
    const V = positive(reagentVolume, "volume", "reagent volume", {
      symbol: "V(reagent)",
      label: "volume of reagent added",
    });
    const added = carried(reagent, V, "n(reagent added)");
    const left = carried(titrant, net, "n(titrant)")
      .dividedBy(back)
      .named({ symbol: "n(reagent left)", rule: `reagent left = amount of titrant / ${back.toFraction()}` });
    consumed = added.minus(left).named({ symbol: "n(reagent used)", rule: "reagent used = added - left" });
    if (!consumed.isPositive()) {
      throw new AmountError(
        "amount.not-possible",
        `the titrant found ${left} of the ${added} of reagent: nothing was used`,
      );
    }
  }
  const amount = consumed.dividedBy(forth).named({
    symbol: `n(${formula === undefined ? "analyte" : inSymbol(formula)})`,
    rule: `amount of analyte = reagent used / ${forth.toFraction()}`,
  });
  return titration(net, titres, amount, answers(amount, formula, sample));
}

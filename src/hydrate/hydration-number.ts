// How much water a sample really holds: from a heating experiment, or from an assay; as a number of waters with its
// uncertainty, and the whole numbers it could mean.

import type { FormulaLike, MassFractionLike, MassLike } from "../amount";
import { assayOf, formulaOfArgument, inSymbol, positive } from "../amount/internal";
import { type Formula, molarMass, oxideEquivalents, parseFormula } from "../formula";
import { numberText } from "../formula/internal";
import type { Fields } from "../foundation/argument";
import { Fraction } from "../foundation/fraction";
import { withPlainJSON } from "../foundation/plain-json";
import { readable } from "../foundation/readable";
import { type Quantity, quantity, sum } from "../quantity";
import { guard } from "./argument";
import { anhydrousOf, crystalWater, hydrateOf, MOST_WATERS, waterContent } from "./crystal-water";
import { HydrateError } from "./error";
import { type HydrateForm, knownForms } from "./forms";

const HEATING = {
  before: true,
  after: true,
  anhydrous: true,
  vessel: true,
  residue: true,
} as const satisfies Fields<HeatingExperiment>;

const DAMP = {
  salt: true,
  assay: true,
  before: true,
  after: true,
  vessel: true,
} as const satisfies Fields<Parameters<typeof meanHydration>[0]>;

/** A number of waters that the measurement could mean. */
export interface HydrationCandidate {
  readonly formula: Formula;
  readonly waters: Fraction;
  /** Measured number of waters less this one. */
  readonly deviation: number;
  /** The deviation in standard uncertainties of the measurement; undefined when the weighings carry none. */
  readonly inUncertainties: number | undefined;
  /** Does the measurement allow it? Within two standard uncertainties, or within half a water when none is known. */
  readonly fits: boolean;
  /** Is it a form the table of hydrates knows? */
  readonly known: boolean;
  /** Where that form is listed; undefined for a number that is only arithmetic. */
  readonly source: string | undefined;
  /** Loss of this form on heating to `residue`. */
  readonly expectedLoss: Quantity<"mass fraction">;
  /** What was left, if this is the one: the anhydrous salt, or the oxides it goes to on ignition. */
  readonly residue: Formula;
  /** Why a number of waters is not to be believed, in words; undefined for one that is. */
  readonly improbable: string | undefined;
}

/** What a heating experiment says. */
export interface HydrationNumber {
  /** Waters for each anhydrous formula unit, with standard uncertainty. */
  readonly waters: Quantity<"number">;
  /** The first candidate's formula. */
  readonly formula: Formula;
  /**
   * Candidates, nearest first and improbable ones last; whole numbers, and known forms with fractions of water. Where no
   * believable number of waters fits, forms that fit if the salt went to its oxides.
   */
  readonly candidates: readonly HydrationCandidate[];
  /** What to doubt: a salt that went on to its oxide, a number of waters that no known form comes near. */
  readonly warnings: readonly string[];
}

/** A heating experiment. */
export interface HeatingExperiment {
  /** Mass before heating, vessel included if `vessel` is given. */
  readonly before: MassLike;
  /** Mass after heating to constant mass, vessel included if `vessel` is given. */
  readonly after: MassLike;
  /** The salt, in any of its forms. */
  readonly anhydrous: FormulaLike;
  /** Mass of the empty vessel. */
  readonly vessel?: MassLike | undefined;
  /** What is left after heating, if the water did not all go: `"CuSO4·H2O"`. */
  readonly residue?: FormulaLike | undefined;
}

/** A number of waters as a plain number, refused where no salt holds so many. */
function plausible(waters: Quantity, salt: Formula, hint: string): number {
  const x = waters.toNumber("");
  if (x <= MOST_WATERS) return x;
  throw new HydrateError(
    "hydrate.water-count",
    `${waters.format({ significant: 3 })} waters for each ${salt}: no salt contains so many`,
    { hint, details: { waters: String(waters) } },
  );
}

/** More waters than this in a salt without a known form that holds as many are not believed. */
const MOST_BELIEVED = 12;

/** Why no salt is taken to hold so many waters. */
function improbableWaters(n: Fraction, salt: Formula, known: readonly HydrateForm[]): string | undefined {
  const most = known.at(-1)?.waters;
  if (n.valueOf() <= (most?.valueOf() ?? MOST_BELIEVED)) return undefined;
  return most === undefined
    ? `hydrates of more than ${MOST_BELIEVED} waters are rare, and none of ${salt} is listed`
    : `no form of ${salt} with more than ${most.toFraction()} waters is listed`;
}

/** The candidates around a number of waters, nearest first. */
function candidatesFor(salt: Formula, waters: Quantity, weighed: boolean, left: Residue): HydrationCandidate[] {
  const x = plausible(waters, salt, "check the weighings: most of what was weighed went away on heating");
  // Without an uncertainty of the weighings only the atomic weights speak, and they say nothing about the balance.
  const u = weighed ? waters.standardUncertainty?.toNumber() : undefined;
  const known = knownForms(salt);
  const near = new Map<string, Fraction>();
  const low = Math.max(0, Math.floor(x) - 1);
  for (let n = low; n <= Math.ceil(x) + 1; n++) near.set(String(n), new Fraction(BigInt(n)));
  for (const { waters: n } of known) if (Math.abs(n.valueOf() - x) <= 1) near.set(n.toFraction(), n);
  const candidates = [...near.values()].map((n): HydrationCandidate => {
    const deviation = x - n.valueOf();
    const inUncertainties = u === undefined || u === 0 ? undefined : deviation / u;
    const formula = hydrateOf(salt, n);
    const form = known.find((k) => k.waters.equals(n));
    return withPlainJSON({
      formula,
      waters: n,
      deviation,
      inUncertainties,
      fits: inUncertainties === undefined ? Math.abs(deviation) <= 0.5 : Math.abs(inUncertainties) <= 2,
      known: form !== undefined,
      source: form?.source,
      expectedLoss: left.mass === undefined ? waterContent(formula) : lossTo(left.mass, salt, n),
      residue: left.formula,
      improbable: improbableWaters(n, salt, known),
    });
  });
  return candidates.sort(
    (a, b) =>
      Number(a.improbable !== undefined) - Number(b.improbable !== undefined) ||
      Math.abs(a.deviation) - Math.abs(b.deviation),
  );
}

/** What is left of one formula unit of the salt: itself, or oxides of this mass for each mole. */
interface Residue {
  readonly formula: Formula;
  readonly mass?: Quantity;
}

/** Loss of a hydrate on heating to a residue of `mass` for each mole of salt. */
function lossTo(mass: Quantity, salt: Formula, n: Fraction): Quantity<"mass fraction"> {
  const whole = molarMass(salt).plus(molarMass("H2O").times(n));
  return whole.minus(mass).dividedBy(whole).to("% w/w") as Quantity<"mass fraction">;
}

/** Elements that leave as gas on ignition, as oxides or with hydrogen. */
const LEAVES = new Set(["H", "C", "N", "O", "F", "Cl", "Br", "I", "S", "Se"]);
/** Metals whose salts do not go to the oxide over a burner; calcium only from carbonate, oxalate and the like. */
const STAYS = new Set(["Li", "Na", "K", "Rb", "Cs", "Sr", "Ba"]);
/** Oxides that ignition in air leaves, where the usual one is another (common practice of gravimetry). */
const IGNITED = ["Mn3O4", "Co3O4"];

/** What is left of a salt that is ignited to the oxides of its metals; undefined where it does not go to them. */
function oxidesOf(salt: Formula): Required<Residue> | undefined {
  const metals = salt.symbols.filter((symbol) => !LEAVES.has(symbol));
  if (metals.length === 0 || metals.some((m) => STAYS.has(m) || (m === "Ca" && !salt.symbols.includes("C")))) {
    return undefined;
  }
  const left = oxideEquivalents(salt, { oxides: IGNITED }).filter(({ oxide }) =>
    oxide.symbols.some((symbol) => metals.includes(symbol)),
  );
  if (left.length !== metals.length) return undefined;
  const mass = sum(left.map(({ oxide, amount }) => molarMass(oxide).times(amount)));
  const common = left.map(({ amount }) => amount).reduce((a, b) => a.gcd(b));
  const text = left.map(({ oxide, amount }) => `${numberText(amount.div(common))}${oxide}`).join("·");
  return { formula: parseFormula(text), mass };
}

/** Without an uncertainty, how near a whole number a reading by way of the oxide has to come. */
const NEAR_FOR_OXIDES = 0.1;

/** Forms that fit if the salt went on to its oxides. */
function ignited(salt: Formula, share: Quantity, weighed: boolean): HydrationCandidate[] {
  const oxides = oxidesOf(salt);
  if (oxides === undefined) return [];
  const waters = oxides.mass.dividedBy(share).minus(molarMass(salt)).dividedBy(molarMass("H2O"));
  const x = waters.toNumber("");
  if (x < -NEAR_FOR_OXIDES || x > MOST_WATERS) return [];
  const believed = candidatesFor(salt, waters, weighed, oxides).filter((c) => c.fits && c.improbable === undefined);
  return believed.filter((c) => c.inUncertainties !== undefined || Math.abs(c.deviation) <= NEAR_FOR_OXIDES);
}

/** All candidates, and what to doubt in them. */
function judged(
  salt: Formula,
  dried: readonly HydrationCandidate[],
  oxides: readonly HydrationCandidate[],
): Pick<HydrationNumber, "candidates" | "warnings"> {
  const [first] = dried;
  const [other] = oxides;
  if (other !== undefined && first!.improbable !== undefined) {
    return {
      candidates: [...oxides, ...dried],
      warnings: [
        `${first!.formula} dried to ${salt} is improbable: ${first!.improbable}; ${other.formula} ignited to ` +
          `${other.residue} fits`,
      ],
    };
  }
  const warnings = first!.improbable === undefined ? [] : [`${first!.formula} is improbable: ${first!.improbable}`];
  if (other !== undefined && !first!.known) {
    warnings.push(`${first!.formula} is not listed; ${other.formula} ignited to ${other.residue} fits as well`);
    return { candidates: [...dried, ...oxides], warnings };
  }
  return { candidates: dried, warnings };
}

/**
 * Waters of crystallization from a heating experiment.
 *
 * @param experiment - `before` and `after` heating to constant mass, the `anhydrous` salt, the empty `vessel` if it was
 *   weighed along, and the `residue` if that is not the anhydrous salt
 * @returns waters for each formula unit with standard uncertainty if the salt is what is left, the candidates it could mean,
 *   and warnings: a number of waters no known form comes near, and a known form that fits if the oxide is what is left
 * @throws {HydrateError} `hydrate.gained-mass` when it weighs more after heating, `hydrate.not-positive` when nothing is
 *   left, `hydrate.no-common-part` for a residue of another salt
 * @throws {AmountError} `amount.not-positive`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @throws {FormulaError} those of `parseFormula`
 * @source n(H2O)/n(salt) = ((m1 - m2)/M(H2O)) / (m2/M(salt))
 * @category Hydrates
 * @example
 * const x = hydrationNumber({ before: "5.000 g", after: "3.196 g", anhydrous: "CuSO4" });
 * x.waters.format({ decimals: 2, uncertainty: "none" }) // => "5.00"
 * x.formula.toString() // => "CuSO4.5H2O"
 */
export function hydrationNumber(experiment: HeatingExperiment): HydrationNumber {
  guard.fields(experiment, HEATING, "request");
  const { before, after, anhydrous, vessel, residue } = experiment;
  const salt = anhydrousOf(anhydrous);
  const name = inSymbol(salt);
  const m1 = positive(before, "mass", "before", { symbol: "m1", label: "mass before heating" });
  const m2 = positive(after, "mass", "after", { symbol: "m2", label: "mass after heating" });
  const empty =
    vessel === undefined ? undefined : positive(vessel, "mass", "vessel", { symbol: "m0", label: "empty vessel" });
  const lost = m1.minus(m2);
  if (!lost.isPositive() && !lost.isZero()) {
    throw new HydrateError("hydrate.gained-mass", `it weighs more after heating: ${m1} before, ${m2} after`, {
      hint: "check the order of the weighings; a salt that oxidises or absorbs carbon dioxide gains mass",
      details: { before: String(m1), after: String(m2) },
    });
  }
  const left = empty === undefined ? m2 : m2.minus(empty);
  if (!left.isPositive()) {
    throw new HydrateError("hydrate.not-positive", `nothing is left: ${m2} after heating in a vessel of ${empty}`, {
      details: { after: String(m2), vessel: String(empty) },
    });
  }
  const end =
    residue === undefined
      ? { anhydrous: salt, units: new Fraction(1), waters: new Fraction(0) }
      : crystalWater(residue);
  if (!end.anhydrous.hasSameComposition(salt)) {
    throw new HydrateError("hydrate.no-common-part", `${formulaOfArgument(residue!)} is not a form of ${salt}`, {
      details: { residue: String(residue), anhydrous: salt.toString() },
    });
  }
  const whole = residue === undefined ? salt : formulaOfArgument(residue);
  const rest =
    empty === undefined ? left : left.named({ symbol: "m(residue)", rule: "residue = mass after heating - vessel" });
  const perUnit = end.units.equals(1) ? molarMass(whole) : molarMass(whole).dividedBy(end.units);
  const nSalt = rest
    .dividedBy(perUnit)
    .to("mol")
    .named({ symbol: `n(${name})`, rule: "amount of salt = residue / molar mass" });
  const nWater = lost
    .named({ symbol: "m(H₂O)", rule: "water lost = mass before - mass after" })
    .dividedBy(molarMass("H2O"))
    .to("mol")
    .named({ symbol: "n(H₂O)", rule: "amount of water = water lost / molar mass" });
  const ratio = nWater.dividedBy(nSalt);
  const waters = (end.waters.equals(0) ? ratio : ratio.plus(quantity({ value: end.waters, unit: "" }))).named({
    symbol: "x",
    rule: `waters = n(H₂O) / n(${name})${end.waters.equals(0) ? "" : ` + ${end.waters.toFraction()} still in the residue`}`,
  });
  const weighed = [m1, m2, empty].some((m) => m?.standardUncertainty !== undefined);
  const dried = candidatesFor(salt, waters, weighed, { formula: whole });
  const share = left.dividedBy(empty === undefined ? m1 : m1.minus(empty));
  const oxides = residue === undefined ? ignited(salt, share, weighed) : [];
  const { candidates, warnings } = judged(salt, dried, oxides);
  return readable({ waters, formula: candidates[0]!.formula, candidates, warnings });
}

/** A material whose water is not that of its label. */
export interface MeanWater {
  /** Mean number of waters for each formula unit. */
  readonly waters: Quantity<"number">;
  /** Mass fraction of the anhydrous salt. */
  readonly anhydrousFraction: Quantity<"mass fraction">;
  /** The two known forms it lies between, what part of the salt is in the one with more water, and where they are listed. */
  readonly between:
    | {
        readonly less: Formula;
        readonly more: Formula;
        readonly shareOfMore: Quantity<"number">;
        readonly sources: readonly string[];
      }
    | undefined;
}

/**
 * How much water a partly effloresced or damp material holds on average: from its assay, or from a drying experiment.
 *
 * @param material - the salt in any form, and its `assay` as mass fraction of the anhydrous salt, or the masses `before`
 *   and `after` drying to the anhydrous salt, with that of the `vessel` if it was weighed along
 * @returns mean waters, mass fraction of anhydrous salt, and the two known forms it lies between with their shares
 * @throws {HydrateError} `hydrate.missing-input`, `hydrate.too-many-inputs`, `hydrate.water-count`, and those of
 *   {@link hydrationNumber}
 * @throws {AmountError} `amount.not-positive`, `amount.fraction-above-one`
 * @source x = M(salt) (1/w - 1) / M(H2O)
 * @category Hydrates
 * @example
 * const soda = meanHydration({ salt: "Na2CO3", assay: "50 %" });
 * soda.waters.format({ decimals: 2, uncertainty: "none" }) // => "5.88"
 * soda.between!.more.toString() // => "Na2CO3.7H2O"
 */
export function meanHydration(material: {
  readonly salt: FormulaLike;
  readonly assay?: MassFractionLike | undefined;
  readonly before?: MassLike | undefined;
  readonly after?: MassLike | undefined;
  readonly vessel?: MassLike | undefined;
}): MeanWater {
  guard.fields(material, DAMP, "request");
  const { salt, assay, before, after, vessel } = material;
  if (assay !== undefined && (before ?? after ?? vessel) !== undefined) {
    throw new HydrateError(
      "hydrate.too-many-inputs",
      "mean water follows from an assay or from drying, not from both",
      {
        hint: "ask twice and compare the two answers",
      },
    );
  }
  const anhydrous = anhydrousOf(salt);
  const name = inSymbol(anhydrous);
  let waters: Quantity;
  let fraction: Quantity;
  if (assay !== undefined) {
    fraction = assayOf(assay, "assay", { symbol: `w(${name})`, label: `mass fraction of ${name}` }).to("% w/w");
    waters = molarMass(anhydrous)
      .times(quantity("1").dividedBy(fraction).minus("1"))
      .dividedBy(molarMass("H2O"))
      .named({ symbol: "x", rule: "mean waters = M(salt) (1/w - 1) / M(H₂O)" });
    plausible(waters, anhydrous, "an assay is the mass fraction of the anhydrous salt; check it");
  } else if (before !== undefined && after !== undefined) {
    waters = hydrationNumber({ before, after, anhydrous, vessel }).waters;
    const [empty, whole, rest] = [vessel ?? "0 g", before, after].map((m) => quantity(m)) as [
      Quantity,
      Quantity,
      Quantity,
    ];
    fraction = rest
      .minus(empty)
      .dividedBy(whole.minus(empty))
      .to("% w/w")
      .named({ symbol: `w(${name})`, rule: "mass fraction = mass after drying / mass before, less the vessel" });
  } else {
    throw new HydrateError("hydrate.missing-input", "mean water needs an assay, or masses before and after drying", {
      hint: 'give assay: "60 %", or before and after',
    });
  }
  return readable({ waters, anhydrousFraction: fraction, between: betweenForms(anhydrous, waters) });
}

function betweenForms(salt: Formula, waters: Quantity): MeanWater["between"] {
  const forms = knownForms(salt);
  const x = waters.toNumber("");
  const above = forms.findIndex((form) => form.waters.valueOf() > x);
  const [less, more] = [forms[above - 1], forms[above]];
  if (less === undefined || more === undefined) return undefined;
  const width = more.waters.sub(less.waters);
  const shareOfMore = waters
    .minus(quantity({ value: less.waters, unit: "" }))
    .dividedBy(width)
    .to("%")
    .named({
      symbol: `share(${inSymbol(more.formula)})`,
      rule: "share of the salt in the form with more water, if the material is a mixture of the two",
    });
  return { less: less.formula, more: more.formula, shareOfMore, sources: [...new Set([less.source, more.source])] };
}

// From what is poured in to what it becomes in water: amounts in moles, ions and molecules, and the water it brings.

import { amountOf } from "../../amount";
import { Formula, parseFormula } from "../../formula";
import { splitWater } from "../../formula/internal";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { ACID_STEPS } from "../../ion/internal";
import type { AmountText, ConcentrationText, MassText, Quantity, QuantityLike, VolumeText } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard, positive } from "../argument";
import { AqueousError } from "../error";
import type { Network } from "./network";
import { HYDRON, type Key, keyOf, type Term, WATER } from "./notation";

/** One thing that goes into the water. Give its mass, its amount, or its concentration in the whole. */
export interface Dissolved {
  /** As it is: the hydrate counts, and its water is counted. Solids may be given too. */
  readonly formula: string | Formula;
  /** As weighed, what the assay leaves out included. */
  readonly mass?: QuantityLike<"mass", MassText>;
  /** Of formula units as named. */
  readonly amount?: QuantityLike<"amount of substance", AmountText>;
  /** Before anything reacts; of the stated volume. */
  readonly concentration?: QuantityLike<"concentration", ConcentrationText>;
  /** Volume of a solution of the stated concentration; its water is counted at a kilogram a litre. Default: the whole. */
  readonly volume?: QuantityLike<"volume", VolumeText>;
  /** Mass fraction of the formula in what is weighed; default all. */
  readonly assay?: QuantityLike;
}

/** Known fields of one material. */
const DISSOLVED_FIELDS = {
  formula: true,
  mass: true,
  amount: true,
  concentration: true,
  volume: true,
  assay: true,
} as const;

/** A material as the solver takes it. */
export interface Ingredient {
  readonly formula: string;
  readonly amount: Quantity<"amount of substance">;
  /** What one mole becomes, crystal water left out. */
  readonly terms: readonly Term[];
  /** Volume of solution it was brought in, L; its water comes on top. */
  readonly litres: Quantity<"volume"> | undefined;
}

/** Moles of a material. */
function molesOf(one: Dissolved, formula: Formula, whole: Quantity<"volume"> | undefined, place: string) {
  const given = [one.mass, one.amount, one.concentration].filter((x) => x !== undefined).length;
  if (given !== 1) {
    throw new AqueousError(
      given === 0 ? "aqueous.missing-option" : "aqueous.bad-option",
      `${place}: how much ${formula}? Give one of mass, amount, concentration`,
      { details: { argument: place } },
    );
  }
  if (one.mass !== undefined)
    return amountOf(one.mass as "1 g", formula, one.assay === undefined ? {} : { assay: one.assay as "98 %" });
  const symbol = `n(${formula.toUnicode()})`;
  if (one.amount !== undefined)
    return expectDimension(one.amount, "amount of substance", `${place}.amount`, { symbol });
  const volume = one.volume === undefined ? whole : positive(one.volume, "volume", `${place}.volume`);
  if (volume === undefined) {
    throw new AqueousError("aqueous.missing-option", `${place}: a concentration needs a volume`, {
      hint: "give volume of the solution, or the water as a volume",
      details: { argument: place },
    });
  }
  const concentration = expectDimension(one.concentration!, "concentration", `${place}.concentration`, {
    symbol: `c(${formula.toUnicode()})`,
  });
  return concentration
    .times(volume)
    .to("mol")
    .named({ symbol, rule: "amount = concentration × volume" }) as Quantity<"amount of substance">;
}

/** Read one material. */
export function ingredientOf(
  one: Dissolved,
  network: Network,
  whole: Quantity<"volume"> | undefined,
  place: string,
): Ingredient {
  guard.fields(one, DISSOLVED_FIELDS, place);
  const { formula: written } = one;
  if (!(written instanceof Formula)) guard.text(written, `${place}.formula`);
  const formula = written instanceof Formula ? written : parseFormula(written);
  const amount = molesOf(one, formula, whole, place);
  if (!amount.isPositive() && !amount.isZero()) {
    throw new AqueousError("aqueous.not-positive", `${place}: a negative amount of ${formula}`, {
      details: { argument: place },
    });
  }
  const litres = one.volume === undefined ? undefined : positive(one.volume, "volume", `${place}.volume`);
  return { formula: String(formula), amount, terms: termsOf(formula, network), litres };
}

let strongBases: ReadonlyMap<Key, Term[]> | undefined;

/** Anions that are acids stronger than about 2.5, in what water makes of them if no constant is at hand. */
function stronglyAcid(key: Key): readonly Term[] | undefined {
  strongBases ??= new Map(
    ACID_STEPS()
      .filter(({ pKa }) => Number(pKa) < 2.5)
      .map(({ acid, base }) => [
        keyOf(acid),
        [
          [1, base],
          [1, HYDRON],
        ],
      ]),
  );
  return strongBases.get(key);
}

/** Ions and molecules that one mole of a formula becomes; crystal water is left out. */
export function termsOf(formula: Formula, network: Network): readonly Term[] {
  if (formula.charge !== 0) return [[1, String(formula)]];
  const made = constitutionOf(formula);
  if (made.kind === "water") return [];
  if (made.kind === "open") {
    throw new AqueousError("aqueous.not-an-ion-maker", `what ${formula} becomes in water is not known`, {
      input: String(formula),
      position: 0,
      hint:
        made.readings.length > 0
          ? `it may be ${list(made.readings, "or")}: write it so that the structure shows`
          : "give the ions or salts it is made of",
    });
  }
  if (made.acid !== undefined && !made.acid.strong) {
    const text = String(splitWater(formula).dry ?? formula);
    const key = keyOf(text);
    if (network.isFormed(key)) return [[1, text]];
    const protonated = made.anions.length === 1 && network.isAcidChain(keyOf(made.anions[0]!.formula));
    if (!protonated && !network.knows(keyOf(made.anions[0]?.formula ?? text))) return [[1, text]];
  }
  const terms: Term[] = [];
  for (const { formula: ion, count } of [...made.cations, ...made.anions, ...made.ligands, ...made.molecules]) {
    if (keyOf(ion) === WATER) continue;
    const acid = network.knows(keyOf(ion)) ? undefined : stronglyAcid(keyOf(ion));
    if (acid !== undefined) for (const [n, species] of acid) terms.push([n * count, species]);
    else terms.push([count, ion]);
  }
  return terms;
}

// Amounts for the waste: soda for acid and metals, sulfate or chloride for the metals that those precipitate, acid for what is
// left of a base. How the work is done and where the rest goes is for the local rules.

import { type Formula, molarMass, parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { type Quantity, sum } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { ACID_ANIONS, SLOW_METALS, WASTE_METALS, type WasteMetalRow } from "../data/waste";
import { acidPerGramOf } from "../identity/ignition";
import { exact, planned } from "../planning/exact";
import type { Dissolved } from "../procedure/isolation";
import { isAcid, isAmmonia, protonsOf } from "../reaction/acids";

/** One reagent for the waste. */
export interface Treatment {
  /** Formula, anhydrous; `H+` for any dilute acid. */
  readonly reagent: string;
  /** What it is added for, in words. */
  readonly purpose: string;
  /** Of the reagent to add; 10 % excess included, except for acid. */
  readonly amount: Quantity<"amount of substance">;
  /** Undefined for `H+`. */
  readonly mass: Quantity<"mass"> | undefined;
  /** Up to so much, where it is not known how much of the product the liquor keeps: all of it counted. */
  readonly most: Quantity<"mass"> | undefined;
  /** For `H+`: vinegar of 5 % that brings as much. */
  readonly vinegar: Quantity<"volume"> | undefined;
}

export const SODA = "Na2CO3";
const ACID = "H+";

interface Share {
  readonly reagent: string;
  readonly amount: Quantity;
  readonly of: string;
}

const remembered = /* @__PURE__ */ remembering<Quantity | undefined>(200);

/** Hydrogen ions that a mole of a dissolved base neutralises; undefined for what is no base. */
const protonsTakenBy = (formula: Formula): Quantity | undefined =>
  remembered(formula.toString(), () => judged(formula));

function judged(formula: Formula): Quantity | undefined {
  // what little stays dissolved of the carbonate of a metal is the metal's, and no base that is left
  if (WASTE_METALS.some(({ metal }) => formula.count(metal).n !== 0n)) return undefined;
  if (isAmmonia(formula)) return exact("1");
  const bound = ammoniaIn(formula);
  if (bound > 0) return exact(String(bound));
  const { groups } = madeOf(formula);
  // a hydrogencarbonate is as mild as a waste is to be
  if (groups.has("hydrogencarbonate")) return undefined;
  return ["hydroxide", "carbonate"].some((name) => groups.has(name))
    ? acidPerGramOf(formula)?.times(molarMass(formula)).to("")
    : undefined;
}

/** Ammonia that a complex gives to acid; none where it comes apart too slowly. */
function ammoniaIn(formula: Formula): number {
  const { complex, ligands } = constitutionOf(formula);
  if (complex === undefined || isSlow(formula)) return 0;
  return ligands.filter(({ formula: one }) => isAmmonia(parseFormula(one))).reduce((n, { count }) => n + count, 0);
}

const isSlow = (formula: Formula): boolean =>
  SLOW_METALS.some(({ metals }) => metals.some((symbol) => formula.count(symbol).n !== 0n));

/** What of a metal no soda precipitates: a ligand holds it, and is not ammonia that acid takes away first. */
const heldFast = ({ symbol, held }: DissolvedMetal): Quantity[] =>
  held
    .filter(({ ligand }) => ligand !== "ammonia" || SLOW_METALS.some(({ metals }) => metals.includes(symbol)))
    .map(({ amount }) => amount);

/** Of a metal what stands in an oxidising anion: it is reduced before anything precipitates it. */
export const asOxidiser = (symbol: string, dissolved: readonly Dissolved[]): Quantity[] => {
  const groups = WASTE_METALS.find(({ metal }) => metal === symbol)?.oxidising?.groups ?? [];
  return dissolved
    .filter(
      ({ species, amount }) => amount.isPositive() && groups.some((one) => madeOf(species.formula).groups.has(one)),
    )
    .flatMap(({ species, amount }) =>
      species.metals.filter((one) => one.symbol === symbol).map(({ count }) => amount.times(count)),
    );
};

/** Hydrogen ions that soda takes from an acid, or from an acid salt that is as good as one. */
export function hydronsGivenBy(formula: Formula): bigint {
  if (isAcid(formula)) return protonsOf(formula);
  const own = constitutionOf(formula).anions.filter((one) => ACID_ANIONS.anions.includes(one.formula));
  return own.reduce((n, { count }) => n + BigInt(count), 0n);
}

/** Charges of a metal over those of its row, of the salts that bring it as a higher ion. */
const higherCharges = ({ metal, charge }: WasteMetalRow, dissolved: readonly Dissolved[]): Quantity[] =>
  dissolved.flatMap(({ species, amount }) => {
    const { cations, complex } = constitutionOf(species.formula);
    if (complex !== undefined || !amount.isPositive()) return [];
    return cations
      .filter((one) => one.element === metal && BigInt(one.charge) > charge)
      .map((one) => amount.times(BigInt(one.count) * (BigInt(one.charge) - charge)));
  });

function sharesOf(metals: readonly DissolvedMetal[], dissolved: readonly Dissolved[], neverSour: boolean): Share[] {
  const forMetals = metals.flatMap((metal): Share[] => {
    const { symbol, precipitate } = metal;
    const row = precipitate ? WASTE_METALS.find((one) => one.metal === symbol) : undefined;
    if (row === undefined) return [];
    const amount = [...heldFast(metal), ...asOxidiser(symbol, dissolved)].reduce(
      (left, one) => left.minus(one),
      metal.amount as Quantity,
    );
    if (!amount.isPositive()) return [];
    // One formula unit of its own precipitant for each atom; of soda half a unit for each charge.
    return row.precipitant === undefined
      ? [
          {
            reagent: SODA,
            amount: sum([amount.times(row.charge), ...higherCharges(row, dissolved)]).dividedBy(2),
            of: symbol,
          },
        ]
      : [{ reagent: row.precipitant, amount, of: symbol }];
  });
  const forSolutes = dissolved.flatMap(({ species, amount }): Share[] => {
    if (!amount.isPositive()) return [];
    const hydrons = hydronsGivenBy(species.formula);
    if (hydrons > 0n) return [{ reagent: SODA, amount: amount.times(hydrons).dividedBy(2), of: "acid" }];
    const taken = protonsTakenBy(species.formula);
    // acid is never put to a liquor that it frees a poisonous gas from
    return taken === undefined || neverSour ? [] : [{ reagent: ACID, amount: amount.times(taken), of: species.name }];
  });
  const rest = netted(forSolutes);
  // Where a base is left that is no ammonia, the metals precipitate as it is neutralised.
  const isBasic = dissolved.some(
    ({ species: { formula }, amount }) =>
      amount.isPositive() && !isAmmonia(formula) && ammoniaIn(formula) === 0 && protonsTakenBy(formula) !== undefined,
  );
  const fallsAnyway = isBasic && rest.some(({ reagent }) => reagent === ACID);
  return [...(fallsAnyway ? forMetals.filter(({ reagent }) => reagent !== SODA) : forMetals), ...rest];
}

/** Acid and base that are left in the same waste neutralise each other: only the rest needs a reagent. */
function netted(shares: readonly Share[]): Share[] {
  const of = (reagent: string) => shares.filter((share) => share.reagent === reagent);
  const [acids, bases] = [of(SODA), of(ACID)];
  if (acids.length === 0 || bases.length === 0) return [...shares];
  // Soda is counted by half a mole for each hydrogen ion.
  const hydrons = sum(acids.map((share) => share.amount)).times(2);
  const taken = sum(bases.map((share) => share.amount));
  const [more, rest] = [hydrons.compare(taken) > 0, hydrons.minus(taken)];
  const words = list([...new Set((more ? acids : bases).map((share) => share.of))]);
  if (rest.isZero()) return [];
  return [
    more
      ? { reagent: SODA, amount: rest.dividedBy(2), of: words }
      : { reagent: ACID, amount: rest.negated(), of: words },
  ];
}

/** Vinegar of 5 % by mass weighs 1.006 g/mL. */
const vinegarWith = (hydrons: Quantity): Quantity<"volume"> =>
  hydrons
    .times(molarMass("CH3COOH"))
    .dividedBy(planned("vinegarStrength"))
    .dividedBy(planned("vinegarDensity"))
    .to("mL")
    .named({
      symbol: "V(vinegar)",
      label: "vinegar for the waste",
      rule: "volume = n × M / w / density",
    }) as Quantity<"volume">;

export function treatmentOf(
  metals: readonly DissolvedMetal[],
  dissolved: readonly Dissolved[],
  neverSour: boolean,
): Treatment[] {
  const shares = sharesOf(metals, dissolved, neverSour);
  return [...new Set(shares.map((share) => share.reagent))].map((reagent) => {
    const own = shares.filter((share) => share.reagent === reagent);
    const from = list([...new Set(own.map((share) => share.of))]);
    const needed = sum(own.map((share) => share.amount));
    // Acid is added to the pH, not by 10 % excess.
    const amount = (reagent === ACID ? needed : needed.times(planned("overdose"))).to("mol").named({
      symbol: `n(${reagent})`,
      label: `${reagent} for the waste`,
      rule: "charge of metals and acid / 2 for soda, one for each atom for others, 10 % excess",
    });
    const purpose = reagent === ACID ? `neutralises what is left of ${from}` : `neutralises or precipitates ${from}`;
    if (reagent === ACID)
      return { reagent, purpose, amount, mass: undefined, most: undefined, vinegar: vinegarWith(amount) };
    const mass = amount
      .times(molarMass(reagent))
      .to("g")
      .named({ symbol: `m(${reagent})`, label: `${reagent} for the waste`, rule: "mass = amount × molar mass" });
    return { reagent, purpose, amount, mass, most: undefined, vinegar: undefined };
  });
}

const NOTHING = { amount: "0 mol", mass: "0 g" } as const;

/** The least of each reagent, and the most of it where more may be needed. */
export const upTo = (least: readonly Treatment[], most: readonly Treatment[]): Treatment[] =>
  most.map((one) => {
    const own = least.find(({ reagent }) => reagent === one.reagent);
    if (one.mass === undefined || own?.mass?.compare(one.mass) === 0) return own ?? one;
    const amount = own?.amount ?? (exact(NOTHING.amount) as Quantity<"amount of substance">);
    return { ...one, amount, mass: own?.mass ?? (exact(NOTHING.mass) as Quantity<"mass">), most: one.mass };
  });

/** A metal dissolved in the waste. */
export interface DissolvedMetal {
  /** Of the element. */
  readonly symbol: string;
  /** In moles of the element. */
  readonly amount: Quantity<"amount of substance">;
  /** As the element; no less than this where `most` is given. */
  readonly mass: Quantity<"mass">;
  /** Up to so much, where it is not known how much of the product the liquor keeps: all of it counted. */
  readonly most: Quantity<"mass"> | undefined;
  /** Must be precipitated before anything else is done with the liquor. */
  readonly precipitate: boolean;
  /** pH at which it precipitates as hydroxide or carbonate, from memory. */
  readonly pH: string | undefined;
  /** What of it a ligand holds. */
  readonly held: readonly Held[];
}

/** A metal in complexes of one ligand. */
export interface Held {
  /** Name or formula of the ligand. */
  readonly ligand: string;
  /** The complex that has most of it. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** Of the metal in such complexes. */
  readonly amount: Quantity<"amount of substance">;
}

// Acid that comes along in a shop material, or that a salt is dissolved in, and the base or metal that it uses before the product
// forms: how much more of that to take, and the reaction as the books carry it.

import { balance } from "../../equation";
import { type Formula, molarMass } from "../../formula";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { saltFormula } from "../../ion/internal";
import { minimum, type Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { matterOf } from "../contents/matter";
import { type Term, termsOf } from "../contents/react";
import { ACID_TAKES } from "../data/firing";
import { exact, planned } from "../planning/exact";
import type { Material } from "../shelf/material";
import { isAcid, isAmmonia, isLye, isMetal, protonsOf } from "./acids";
import { isGas } from "./fluids";

/** Hydrons that a formula unit of a base takes: charges of hydroxide, carbonate and ammonia. */
export function hydronsTakenBy(form: Formula): number {
  if (isAmmonia(form)) return 1;
  const { anions } = constitutionOf(form);
  const taking: Readonly<Record<string, number>> = { "OH-": 1, "CO3^2-": 2, "HCO3-": 1, "O^2-": 2 };
  return anions.reduce((n, { formula, count }) => n + (taking[formula] ?? 0) * count, 0);
}

/** The ion that dilute acid makes of a metal; undefined where it leaves it alone. */
const ionInAcid = ({ symbols }: Formula): { readonly formula: string; readonly charge: number } | undefined => {
  const row = symbols.length === 1 ? ACID_TAKES.find(({ metal }) => metal === symbols[0]) : undefined;
  return row && constitutionOf(row.sulfate).cations[0];
};

/** Hydrons that a mole of a base or of a metal takes. */
const taking = (form: Formula): number => ionInAcid(form)?.charge ?? hydronsTakenBy(form);

/** The material that consumes acid, if the plan has one: a base, else a metal. */
export const acidTakerAmong = (materials: readonly Material[]): Material | undefined =>
  materials.find(({ form }) => hydronsTakenBy(form) > 0) ?? materials.find(({ form }) => ionInAcid(form) !== undefined);

/** Does acid come along with any of them? Salts in a pack use no base. */
export const bringsAcid = (materials: readonly Material[]): boolean =>
  materials.some(({ also, putOn }) => putOn !== undefined || also.some(({ form }) => isAcid(form)));

/** Mass of the acid, as strong as it is planned, that a portion of a salt is dissolved in. */
export const massPutOn = ({ putOn, massOf }: Material, portion: Quantity): Quantity | undefined =>
  putOn && massOf(portion)?.times(putOn.times).to("g");

/** Acids that come along with a portion. */
export function acidsIn(
  material: Material,
  portion: Quantity,
): { readonly acid: Formula; readonly amount: Quantity }[] {
  const mass = material.massOf(portion);
  const onto = massPutOn(material, portion);
  const of = (acid: Formula, pure: Quantity) => ({ acid, amount: pure.dividedBy(molarMass(acid)).to("mol") });
  return [
    ...(mass === undefined
      ? []
      : material.also.filter(({ form }) => isAcid(form)).map(({ form, share }) => of(form, mass.times(share)))),
    ...(onto === undefined ? [] : [of(material.putOn!.acid, onto.times(planned("putOnAcid")))]),
  ];
}

/** More of the base or metal that the acids of the other portions use. */
export function moreForAcids(materials: readonly Material[], portions: readonly Quantity[], taker: Material): Quantity {
  const taken = taking(taker.form);
  return materials.reduce(
    (all, material, i) =>
      acidsIn(material, portions[i]!).reduce(
        (more, { acid, amount }) => more.plus(amount.times(protonsOf(acid)).dividedBy(exact(String(taken)))),
        all,
      ),
    exact("0 mol"),
  );
}

/** A carbonate or hydroxide that cold dilute acid takes at once; those of aluminium and iron(III) it leaves for long. */
const isTakenCold = (form: Formula): boolean => {
  const { cations, anions } = constitutionOf(form);
  return (
    anions.some(({ formula }) => ["OH-", "CO3^2-", "HCO3-"].includes(formula)) &&
    cations.every(({ charge }) => charge < 3)
  );
};

/** Carbonates and hydroxides that come along with a portion. */
export const basesIn = (
  { also, massOf }: Material,
  portion: Quantity,
): { readonly base: Formula; readonly amount: Quantity }[] => {
  const mass = massOf(portion);
  return mass === undefined
    ? []
    : also
        .filter(({ form }) => isTakenCold(form))
        .map(({ form, share }) => ({ base: form, amount: mass.times(share).dividedBy(molarMass(form)).to("mol") }));
};

/** What a pack of the equation gives to what the packs bring besides. */
interface Giving {
  readonly material: Material;
  readonly used: (portions: readonly Quantity[]) => Quantity;
}

/** The base or metal that takes the acids which come along; else the acid that takes carbonates and hydroxides. */
export function givingAmong(materials: readonly Material[]): Giving | undefined {
  if (bringsAcid(materials)) {
    const taker = acidTakerAmong(materials);
    return taker && { material: taker, used: (portions) => moreForAcids(materials, portions, taker) };
  }
  const hasBase = materials.some(({ also }) => also.some(({ form }) => isTakenCold(form)));
  const acid = hasBase ? materials.find(({ form }) => isAcid(form)) : undefined;
  if (acid === undefined) return undefined;
  const protons = protonsOf(acid.form);
  const used = (portions: readonly Quantity[]): Quantity =>
    materials
      .flatMap((material, i) => basesIn(material, portions[i]!))
      .reduce(
        (all, { base, amount }) => all.plus(amount.times(exact(String(hydronsTakenBy(base)))).dividedBy(protons)),
        exact("0 mol"),
      );
  return { material: acid, used };
}

/** Lye dissolves a metal, and acid comes after: what is left of the lye takes acid before that has done its own work. */
interface AfterLye {
  /** Places among the materials. */
  readonly lye: number;
  readonly acid: number;
  /** Moles of acid that a mole of lye takes. */
  readonly takes: Quantity;
}

/** Undefined where no lye comes before an acid, or several packs bring one of them. */
export function acidAfterLye(materials: readonly Material[]): AfterLye | undefined {
  const places = (of: (form: Formula) => boolean): number[] =>
    materials.flatMap(({ form }, i) => (of(form) ? [i] : []));
  const [lyes, acids] = [places(isLye), places(isAcid)];
  const isByLye = lyes.length === 1 && acids.length === 1 && places(isMetal).length > 0;
  if (!isByLye) return undefined;
  const [lye, acid] = [lyes[0]!, acids[0]!];
  const takes = exact(String(hydronsTakenBy(materials[lye]!.form))).dividedBy(protonsOf(materials[acid]!.form));
  return { lye, acid, takes };
}

/**
 * Amounts of which an account is drawn up: acid that falls short of the metal, once the lye over the need has had its own,
 * counts as what it leaves of the product. Where there is enough it counts whole, and what is left of both neutralises.
 */
export function lessForLye(materials: readonly Material[], amounts: readonly Quantity[]): readonly Quantity[] {
  const after = acidAfterLye(materials);
  if (after === undefined) return amounts;
  const { lye, acid, takes } = after;
  const needOf = (i: number): Quantity => exact(String(materials[i]!.species.coefficient));
  const [put, base] = [amounts[acid]!, amounts[lye]!];
  const without = amounts.flatMap((amount, i) => (i === acid ? [] : [amount.dividedBy(needOf(i))]));
  const most = minimum(without);
  const over = base.minus(most.times(needOf(lye)));
  if (!over.isPositive() || put.minus(over.times(takes)).compare(most.times(needOf(acid))) >= 0) return amounts;
  // the lye that the smaller batch leaves takes acid too: extent × acid + (lye - extent × need) × takes = all the acid
  const each = needOf(acid).minus(needOf(lye).times(takes));
  const rest = put.minus(base.times(takes));
  if (!each.isPositive() || !rest.isPositive()) return amounts;
  return amounts.map((amount, i) => (i === acid ? rest.dividedBy(each).times(needOf(acid)) : amount));
}

/** The neutral salt of a base or metal and an acid, as text; undefined where either is not so simple. */
function saltOf(base: Formula, acid: Formula): string | undefined {
  const cation = isAmmonia(base) ? "NH4+" : (ionInAcid(base) ?? constitutionOf(base).cations[0])?.formula;
  const anion = constitutionOf(acid).acid?.anion;
  return cation === undefined || anion === undefined ? undefined : saltFormula(cation, anion);
}

interface Neutralisation {
  readonly terms: readonly Term[];
  readonly acids: bigint;
  /** As it is printed. */
  readonly equation: string;
}

const remembered = /* @__PURE__ */ remembering<Neutralisation | undefined>(100);

/** Base or metal and acid to salt, water and gas, for each mole of the equation; `acids` moles of acid in it. */
export const neutralisation = (base: Formula, acid: Formula) =>
  remembered(`${base} ${acid}`, () => {
    const salt = saltOf(base, acid);
    if (salt === undefined) return undefined;
    const isCarbonate = ["carbonate", "hydrogencarbonate"].some((name) => madeOf(base).groups.has(name));
    const gas = isMetal(base) ? " + H2" : isCarbonate ? " + CO2" : "";
    const water = isAmmonia(base) || isMetal(base) ? "" : " + H2O";
    const dry = matterOf(base).core.formula;
    const found = attempt(() => balance(`${dry} + ${acid} -> ${salt}${water}${gas}`));
    if (!found.ok) return undefined;
    return {
      terms: termsOf(found.value, (formula) => (isGas(formula, true) ? "gas" : "dissolved")),
      equation: found.value.toUnicode(),
      acids: found.value.reactants.find(({ formula }) => formula.hasSameComposition(acid))?.coefficient ?? 1n,
    };
  });

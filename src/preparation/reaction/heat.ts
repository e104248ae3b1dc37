// How hot mixing gets, where the enthalpies are known: salts dissolved beforehand, solids and gases as they are.

import { isWater, withoutPhase } from "../../formula/internal";
import { attempt, type Result } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { anhydrousOf } from "../../hydrate";
import { type Quantity, sum } from "../../quantity";
import {
  type EnthalpyTerm,
  reactionEnthalpy,
  solutionEnthalpy,
  type TemperatureRise,
  temperatureRise,
} from "../../thermochemistry";
import type { Entry } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Term as ChangeTerm } from "../contents/react";
import type { Reaction } from "../operation/add";
import { exact, planned } from "../planning/exact";
import type { Feed } from "../procedure/feed";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import type { Account } from "./account";
import { isMetal } from "./acids";
import { fateOf } from "./fate";
import { isGas } from "./fluids";
import { heatKeptByAcids } from "./heat-of-dilution";
import { acidsIn, acidTakerAmong, bringsAcid, neutralisation } from "./neutralising";
import type { Species } from "./species";

/** Heat of the mixing. */
export type Heat =
  | {
      /** Per mole of reaction as the balanced equation is written; negative when heat is given off. */
      readonly enthalpy: Quantity<"molar energy">;
      readonly equation: string;
      readonly rise: TemperatureRise;
      readonly assumption: string;
    }
  | { readonly missing: string };

interface Term {
  readonly formula: string;
  readonly coefficient: bigint;
  readonly state: string;
}

/**
 * Text of the reaction with states: what is dissolved without its crystal water, which then counts as water. Where nobody knows
 * what water keeps of the product, `undecided` tells its state.
 */
function withStates(setting: Setting, feeds: readonly Feed[], undecided: "solid" | "dissolved"): string | undefined {
  const { reactants, products, product, materials } = setting;
  const isDissolved = (species: Species, side: "reactants" | "products"): boolean => {
    if (species.formula.phase !== undefined) return species.formula.phase === "aq";
    if (side === "reactants") {
      const feed = feeds[materials.findIndex((m) => m.species === species)];
      return feed?.how === "dissolve" || feed?.how === "solution";
    }
    const { precipitated } = fateOf(species.formula, setting.temperature);
    return setting.wet && !(precipitated ?? !(species === product && undecided === "dissolved"));
  };
  let water = 0n;
  const sideOf = (side: readonly Species[], which: "reactants" | "products"): Term[] | undefined => {
    const terms: Term[] = [];
    for (const species of side) {
      const { formula, coefficient } = species;
      const sign = which === "reactants" ? -1n : 1n;
      if (isWater(formula)) {
        water += sign * coefficient;
      } else if (isDissolved(species, which)) {
        if (!species.waters.isZero()) {
          const waters = species.waters.times(coefficient).toNumber("");
          if (!Number.isInteger(waters)) return undefined;
          water += sign * BigInt(waters);
        }
        terms.push({ formula: anhydrousOf(formula).toString(), coefficient, state: "aq" });
      } else {
        const gas = isGas(formula, setting.wet);
        terms.push({
          formula: withoutPhase(formula).toString(),
          coefficient,
          state: gas ? "g" : "s",
        });
      }
    }
    return terms;
  };
  const left = sideOf(reactants, "reactants");
  const right = sideOf(products, "products");
  if (left === undefined || right === undefined || product === undefined) return undefined;
  if (water < 0n) left.push({ formula: "H2O", coefficient: -water, state: "l" });
  if (water > 0n) right.push({ formula: "H2O", coefficient: water, state: "l" });
  const write = (terms: readonly Term[]): string =>
    terms.map((t) => `${t.coefficient} ${t.formula}(${t.state})`).join(" + ");
  return `${write(left)} -> ${write(right)}`;
}

const remembered = /* @__PURE__ */ remembering<Result<ReturnType<typeof reactionEnthalpy>>>(128);

/** As it is written; where a figure is missing for its solid, that of the same in the liquor, from which the crystals come later. */
function enthalpyOf(
  equation: string,
  inTheLiquor: () => string | undefined,
): Result<ReturnType<typeof reactionEnthalpy>> {
  const found = remembered(equation, () => attempt(() => reactionEnthalpy(equation)));
  const other = found.ok ? undefined : inTheLiquor();
  if (other === undefined || other === equation) return found;
  const dissolved = remembered(other, () => attempt(() => reactionEnthalpy(other)));
  return dissolved.ok ? dissolved : found;
}

/** Too strong for heats at great dilution, as it goes in: one that was poured into water first is as strong as it is then. */
function isTooStrongForHeats({ massFraction }: Material, feed: Feed | undefined): boolean {
  const w = feed?.how === "solution" ? (feed.dilution?.to ?? massFraction()) : massFraction();
  return (w?.compare(planned("thinEnough")) ?? 0) > 0;
}

export function heatOf(
  setting: Setting,
  account: Account,
  feeds: readonly Feed[],
  inThePot: readonly Quantity[] | undefined,
  beside: readonly Reaction[] = [],
  asItForms?: Entry,
): Heat {
  const asSolid = withStates(setting, feeds, "solid");
  if (asSolid === undefined) return { missing: "heat of the reaction: crystal water in fractions" };
  if (!setting.wet) return { missing: "heat of the reaction: nothing is mixed in water" };
  if (inThePot === undefined) return { missing: "heat of the reaction: the mass of the batch is not known" };
  const strong = setting.materials.find(
    (m, i) => m.isSolution && !m.species.isWater && isTooStrongForHeats(m, feeds[i]),
  );
  if (strong !== undefined)
    return {
      missing: `heat of the reaction: ${strong.shelf.name} is too strong for figures that apply in much water; diluting it alone gives heat`,
    };
  const enthalpy = enthalpyOf(asSolid, () => withStates(setting, feeds, "dissolved"));
  if (!enthalpy.ok) return { missing: `heat of the reaction: ${enthalpy.error.message.split("\n")[0]}` };
  const ofAcids = heatOfAcids(setting, account, beside);
  if ("missing" in ofAcids) return ofAcids;
  // Crystal water moved to another side may leave coefficients that are not the batch's: scaled by the first species.
  const scale = scaleTo(setting, enthalpy.value.terms[0]!);
  const extent = account.extent.times(scale);
  const mass = sum(inThePot).to("g");
  const rise = temperatureRise({
    enthalpy: enthalpy.value.enthalpy.plus(
      ofAcids.heat
        .plus(heatKeptByAcids(setting, account, feeds))
        .plus(heatOfCrystals(asItForms))
        .dividedBy(extent)
        .to("kJ/mol"),
    ) as Quantity<"molar energy">,
    amount: extent,
    mass,
    start: setting.temperature,
  });
  return {
    enthalpy: enthalpy.value.enthalpy,
    equation: enthalpy.value.equation,
    rise,
    assumption: "the feeds are dissolved beforehand and at the temperature of the room; much water; all at once",
  };
}

/** Heat of what crystallises in the vessel as it forms, where the equation counts it as dissolved: that of dissolving it, given back. */
function heatOfCrystals(crystals: Entry | undefined): Quantity {
  if (crystals === undefined) return exact("0 kJ");
  const dissolving = attempt(() => solutionEnthalpy(crystals.matter.formula));
  return dissolving.ok ? crystals.amount.times(dissolving.value).negated() : exact("0 kJ");
}

/**
 * Heat of the acid of a liquor on the metal that it takes beside the reaction, or why it is not known: acid that the packs of
 * the equation have besides comes before the metal forms product, acid that is free in the vessel (`beside`) after that.
 */
function heatOfAcids(
  { materials }: Setting,
  { supplied }: Account,
  beside: readonly Reaction[],
): { readonly heat: Quantity } | { readonly missing: string } {
  const taker = bringsAcid(materials) ? acidTakerAmong(materials) : undefined;
  const acids =
    taker === undefined || !isMetal(taker.form)
      ? []
      : materials.flatMap((material, i) => acidsIn(material, supplied[i]!.portion));
  const before = acids.flatMap(({ acid, amount }): Reaction[] => {
    const own = neutralisation(taker!.form, acid);
    return own === undefined ? [] : [{ terms: own.terms, extent: amount.dividedBy(exact(String(own.acids))) }];
  });
  let heat = exact("0 kJ") as Quantity;
  for (const { terms, extent } of [...before, ...beside]) {
    const found = enthalpyOfTerms(terms);
    if (!found.ok) {
      const [metal, acid] = [true, false].map(
        (is) => terms.find(({ matter, count }) => count < 0n && isMetal(matter.formula) === is)!.matter,
      );
      const name = materials.find(({ form }) => matterOf(form).key === metal!.key)?.shelf.name ?? metal!.name;
      return {
        missing: `heat of the reaction: ${acid!.formula} takes some of the ${name}: ${found.error.message.split("\n")[0]}`,
      };
    }
    heat = heat.plus(found.value.enthalpy.times(extent));
  }
  return { heat };
}

/** Of what is written as terms, for each mole of its equation: metals as they are, all else dissolved. */
export function enthalpyOfTerms(terms: readonly ChangeTerm[]): Result<ReturnType<typeof reactionEnthalpy>> {
  const side = (sign: 1n | -1n): string =>
    terms
      .filter(({ count }) => count * sign > 0n)
      .map(({ matter, count, whereto }) => {
        const state = whereto === "gas" ? "g" : isMetal(matter.formula) ? "s" : isWater(matter.formula) ? "l" : "aq";
        return `${count * sign} ${matter.formula}(${state})`;
      })
      .join(" + ");
  const equation = `${side(-1n)} -> ${side(1n)}`;
  return remembered(equation, () => attempt(() => reactionEnthalpy(equation)));
}

function scaleTo(setting: Setting, term: Pick<EnthalpyTerm, "stoichiometricNumber">): Quantity {
  const first = setting.reactants.find((s) => !isWater(s.formula))!;
  return exact("1").times(first.coefficient).dividedBy(term.stoichiometricNumber.abs());
}

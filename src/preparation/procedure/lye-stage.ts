// A metal that goes into lye before the acid comes: what reacts then, and the heat of each of the two stages.

import { tryBalance } from "../../equation";
import { anhydrousOf } from "../../hydrate";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { temperatureRise } from "../../thermochemistry";
import type { Matter } from "../contents/matter";
import { termsOf } from "../contents/react";
import { LYE_COMPLEXES } from "../data/couples";
import { ACID_INTO_LYE } from "../data/with-lye";
import type { Reaction } from "../operation/add";
import { exact, planned } from "../planning/exact";
import type { Account } from "../reaction/account";
import { isAcid, isLye } from "../reaction/acids";
import { enthalpyOfTerms, type Heat, heatOf } from "../reaction/heat";
import { neutralisation } from "../reaction/neutralising";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import type { Frame } from "./bench";
import type { Feed } from "./feed";
import { isByLye, type Role } from "./roles";
import { about } from "./words";

/** The two stages of a metal that goes through lye. */
interface LyeStage {
  /** Metal and lye to the hydroxido complex, with the gas. */
  readonly first: Reaction;
  /** The same taken back without its gas: what the equation has of them is there again. */
  readonly back: Reaction;
  readonly gas: Matter;
}

/** What a plan is asked for its stages by. */
interface Asked {
  readonly setting: Setting;
  readonly roles: readonly Role[];
  readonly account: Account;
}

/** Lye on a metal before the acid comes: the gas leaves then. */
export function lyeStage({ setting, roles, account }: Asked): LyeStage | undefined {
  if (!isByLye(setting, roles)) return undefined;
  const metal = roles.indexOf("metal");
  const lye = setting.materials.find(({ form }) => isLye(form))!;
  const symbol = setting.materials[metal]!.form.symbols[0]!;
  const row = LYE_COMPLEXES.find((one) => one.metal === symbol);
  const complex = row?.complex.replace("M", lye.form.symbols.find((s) => s !== "O" && s !== "H")!);
  if (complex === undefined) return undefined;
  const found = tryBalance(`${symbol} + ${lye.species.formula} + H2O -> ${complex} + H2`);
  if (!found.ok) return undefined;
  const size = found.value.reactants.find(({ formula }) => formula.symbols[0] === symbol)!.coefficient;
  const amount = account.extent.times(setting.materials[metal]!.species.coefficient).dividedBy(size);
  const terms = termsOf(found.value, (formula) => (isOneOf(formula, "H2") ? "gas" : "dissolved"));
  const back = terms.filter(({ whereto }) => whereto !== "gas").map((one) => ({ ...one, count: -one.count }));
  const gas = terms.find(({ whereto }) => whereto === "gas")!.matter;
  return { first: { terms, extent: amount }, back: { terms: back, extent: amount }, gas };
}

/** Heat of the metal in its lye, which has that water and no more. */
export function heatInLye({ first }: LyeStage, asked: Asked, feeds: readonly Feed[]): Heat {
  const { setting, roles, account } = asked;
  const isThere = (i: number): boolean => roles[i] === "metal" || isLye(setting.materials[i]!.form);
  const metal = setting.materials[roles.indexOf("metal")]!.shelf.name;
  const found = enthalpyOfTerms(first.terms);
  const masses = setting.materials.flatMap((material, i): (Quantity | undefined)[] => {
    if (!isThere(i)) return [];
    const feed = feeds[i]!;
    const water =
      feed.how === "dissolve" ? feed.dissolving.water : feed.how === "solution" ? feed.dilution?.water : feed.water;
    return [material.massOf(account.supplied[i]!.portion), ...(water === undefined ? [] : [water])];
  });
  const known = masses.filter((one) => one !== undefined);
  if (!found.ok) return { missing: `heat of the ${metal} in lye: no enthalpy of its hydroxido complex` };
  if (known.length < masses.length) return { missing: `heat of the ${metal} in lye: the mass of the lye is not known` };
  return {
    enthalpy: found.value.enthalpy,
    equation: found.value.equation,
    rise: temperatureRise({
      enthalpy: found.value.enthalpy,
      amount: first.extent,
      mass: sum(known).to("g"),
      start: setting.temperature,
    }),
    assumption: "the metal in its lye, before the acid comes; at the temperature of the room; all at once",
  };
}

/** By how much the acid that comes after warms all that is there, and whether that is the least of it; undefined where no figure is known. */
function riseByAcid(
  { setting, account, feeds }: Frame,
  stage: Pick<LyeStage, "first">,
  mass: Quantity,
): { readonly rise: Quantity; readonly isLeast: boolean } | undefined {
  const all = heatOf(setting, account, feeds, [mass]);
  const first = enthalpyOfTerms(stage.first.terms);
  const riseOf = (heat: Quantity): Quantity =>
    temperatureRise({ heat: heat.negated().to("kJ"), mass: mass.to("g"), start: setting.temperature }).rise;
  if ("rise" in all && first.ok) {
    const before = first.value.enthalpy.times(stage.first.extent).to("kJ").negated();
    return { rise: riseOf(all.rise.heatReleased.minus(before)), isLeast: false };
  }
  // of the hydroxide alone, which the complex gives back
  const [lye, acid] = [isLye, isAcid].map((of) => setting.materials.find(({ form }) => of(form))!) as [
    Material,
    Material,
  ];
  const own = neutralisation(lye.form, anhydrousOf(acid.form));
  const found = own && enthalpyOfTerms(own.terms);
  if (own === undefined || !found?.ok) return undefined;
  const times = account.extent.times(lye.species.coefficient).dividedBy(exact(String(-own.terms[0]!.count)));
  return { rise: riseOf(found.value.enthalpy.times(times).to("kJ").negated()), isLeast: true };
}

/** The same in words, where it is felt. */
export function warmedByAcid(frame: Frame, stage: Pick<LyeStage, "first">, mass: Quantity): string {
  const found = riseByAcid(frame, stage, mass);
  if (found === undefined || found.rise.compare(planned("warm")) < 0) return "";
  return `; it warms by about ${about(found.rise, "ΔK", 2).replace("ΔK", "K")}${found.isLeast ? " or more" : ""}${cooledBefore(found.rise)}`;
}

/** How far the lye cools first, where it may still be so warm that the acid would make it spit. */
function cooledBefore(rise: Quantity): string {
  const { mayBe, upTo, from } = ACID_INTO_LYE;
  const stays = (start: string): boolean => exact(start).plus(rise).compare(exact(upTo)) <= 0;
  if (stays(mayBe)) return "";
  const start = from.filter(stays).at(-1);
  return start === undefined
    ? `: let the lye cool below ${from[0]} first, and stand it in cold water as the acid comes, or it spits`
    : `: let the lye cool below ${start} first, or it spits`;
}

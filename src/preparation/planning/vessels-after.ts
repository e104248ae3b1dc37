// What is read off the vessels of a batch's work: what is dissolved, what is poured away, what gas leaves, how full the pot gets.

import { type Quantity, sum } from "../../quantity";
import type { Entry } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { isWetWithAlcohol } from "../procedure/alcohol";
import { type Draft, MOTHER, POT, TRAP, type Work } from "../procedure/bench";
import type { Dissolved } from "../procedure/isolation";
import { type Account, massFor } from "../reaction/account";
import { coreOf, keyed, type Species, speciesAside } from "../reaction/species";
import type { Setting } from "../request/setting";
import type { Left, Poured } from "../safety/waste";
import { exact } from "./exact";

/** What is dissolved once everything has reacted, beside what the liquor keeps of the product. */
export function dissolvedIn({ product }: Setting, { liquor }: Work): Dissolved[] {
  const own = coreOf(product.formula);
  return (liquor?.books.dissolved ?? [])
    .filter(({ matter }) => matter.key !== own)
    .map(({ matter, amount }) => ({ species: speciesAside(matter.formula), amount }));
}

/** Alcohol that the steps take beside the packs. */
export function alcoholIn({ drafts }: Work): Quantity<"volume"> | undefined {
  const taken = drafts.map(({ alcohol }) => alcohol).filter((one) => one !== undefined);
  return taken.length === 0 ? undefined : sum(taken);
}

/** Alcohol that a step may take: it is in none of its contents. */
const mayTake = ({ alcohol, put }: Draft): Quantity | undefined => (put.some(isWetWithAlcohol) ? undefined : alcohol);

/** What is poured away together; undefined where nothing is. */
export function pouredAway(work: Work, left: readonly Left[], isKept: boolean): Poured | undefined {
  const isPoured = (vessel: Left[0]): boolean =>
    vessel !== "residue" && vessel !== TRAP && !(isKept && vessel === "liquor");
  const pots = left.filter(([vessel]) => isPoured(vessel)).map(([, pot]) => pot);
  const alcohol = sum([exact("0 mL"), ...work.drafts.map(mayTake).filter((one) => one !== undefined)]);
  return pots.length === 0 ? undefined : { pots, alcohol };
}

/** What passes filters, is washed off or stays on a filter, as the steps leave it; a mother liquor as its last crop leaves it. */
export function potsLeft({ drafts }: Work): Left[] {
  const found = new Map<Left[0], Pot>();
  const plus = (vessel: Left[0], pot: Pot): void => {
    found.set(vessel, found.get(vessel)?.plusAll(pot) ?? pot);
  };
  for (const { left } of drafts)
    for (const { what, pot } of left)
      if ((what === "filtrate" || what === "wash water" || what === "residue") && !pot.isEmpty) plus(what, pot);
  const mother = drafts.filter(({ vessel }) => vessel === MOTHER).at(-1);
  if (mother !== undefined) {
    found.delete("filtrate");
    found.set("mother liquor", mother.after.with({ solids: [] }));
  }
  // Of a product that left as gas the pot itself is left.
  const last = drafts.filter(({ vessel }) => vessel === POT).at(-1);
  if (last !== undefined && last.operation !== "collect" && !last.after.isEmpty) found.set("liquor", last.after);
  for (const { vessel, after } of drafts) if (vessel.startsWith(TRAP)) found.set(TRAP, after);
  return [...found];
}

/** All gas that the steps give off: of the equation, of acid that came along, of peroxide over the need. */
export function gasFormed({ drafts }: Work, { formed }: Account) {
  const all = new Map<string, Entry>();
  for (const { left, later } of drafts)
    for (const { what, pot } of later === true ? [] : left)
      for (const entry of what === "gas" ? pot.books.solids : []) {
        const before = all.get(entry.matter.key);
        all.set(
          entry.matter.key,
          before === undefined ? entry : { ...entry, amount: before.amount.plus(entry.amount) },
        );
      }
  return [...all.values()].map(({ matter, amount }) => {
    // What the equation alone gives has its working already.
    const own = formed.find((one) => one.formula === matter.name && one.amount.compare(amount) === 0);
    const named = amount.to("mol").named({ symbol: `n(${matter.name})`, rule: "what the steps give off" });
    return {
      formed:
        own ??
        keyed("formula", {
          formula: matter.name,
          amount: named,
          mass: massFor(named, matter.formula),
        }),
      matter: matter.formula,
      gas: true,
    };
  });
}

/** The pot at its fullest: before gas leaves it and before anything is poured off; or what is missing to tell. */
export function fullest({ drafts }: Work): { readonly mass: Quantity; readonly missing: readonly string[] } {
  const inPot = drafts.filter(
    ({ vessel, operation }) => vessel === POT && operation !== "wash" && operation !== "rinse",
  );
  let mass = exact("0 g");
  let missing: readonly string[] = [];
  for (const draft of inPot) {
    const { before, put, after, operation } = draft;
    // as heavy as so much water: it is the room it takes that counts
    const more = mayTake(draft)?.times(exact("1 g/mL"));
    const poured = put.map((one) => one.mass);
    // into a filtered liquor it comes once what is on the filter has gone
    const most = before.mass.compare(after.mass) < 0 ? after.mass : before.mass;
    const together = operation === "filter" ? [most] : [before.mass, ...poured];
    const filled = sum([...together, ...(more === undefined ? [] : [more])]);
    if (filled.compare(mass) > 0) mass = filled;
    if (missing.length === 0) missing = after.books.waterMissing;
  }
  return { mass, missing };
}

/** The crystals that come in the cold vessel while the salt goes into it; undefined where none do. */
export function crystalsAsItForms({ drafts }: Work, { formula }: Species): Entry | undefined {
  const { key } = matterOf(formula);
  const standing = drafts.find(({ operation, vessel }) => operation === "cool" && vessel === POT);
  return standing?.after.books.solids.find(({ matter, origin }) => matter.key === key && origin === "crystallised");
}

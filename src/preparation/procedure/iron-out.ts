// Iron that a pack has besides, taken out of the salt of another metal: peroxide that is at hand makes it iron(III), and a base of the
// salt's own metal precipitates it hot, as what takes no part in the equation.

import { tryBalance } from "../../equation";
import { type Formula, parseFormula } from "../../formula";
import { constitutionOf } from "../../ion";
import { saltFormula } from "../../ion/internal";
import { minimum, type Quantity } from "../../quantity";
import { type Entry, massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { type Term, termsOf } from "../contents/react";
import { IRON_OUT } from "../data/ends";
import { add, type Reaction, reacted } from "../operation/add";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { done } from "../operation/operation";
import { exact, planned } from "../planning/exact";
import { keyElement } from "../reaction/candidates";
import { isGas } from "../reaction/fluids";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import { type Bench, POT } from "./bench";
import { isBase } from "./kind";
import { dropOfOwnAcid } from "./protection";
import { peroxideDecay } from "./reactions";
import { isPeroxide } from "./roles";
import { celsius } from "./words";

/** What is at hand against the iron. */
interface AgainstIron {
  readonly peroxide: Material | undefined;
  readonly base: Material;
}

/** Is it a salt of iron that these take out? */
const isTakenOut = (formula: Formula, isOxidised: boolean): boolean =>
  constitutionOf(formula).cations.some((one) => {
    const isFirstOxidised = IRON_OUT.cations[one.formula as keyof typeof IRON_OUT.cations];
    return isFirstOxidised === false || (isFirstOxidised === true && isOxidised);
  });

/** Peroxide and base of the product's own metal that are put in beside a recrystallisation, where its pack has iron besides. */
export function againstIron({ materials, asides, product }: Setting): AgainstIron | undefined {
  const metal = keyElement(product.formula);
  if (materials.length !== 1 || metal === undefined || metal === "Fe") return undefined;
  const base = asides.find(({ form }) => isBase(form) && form.count(metal).n > 0n);
  const peroxide = asides.find(isPeroxide);
  const isThere = materials[0]!.also.some(({ form }) => isTakenOut(form, peroxide !== undefined));
  return base !== undefined && isThere ? { peroxide, base } : undefined;
}

/** As many moles of it as the liquor has by its books. */
const amountIn = ({ books }: Pot, key: string): Quantity =>
  [...books.dissolved, ...books.solids].find(({ matter }) => matter.key === key)?.amount ?? exact("0 mol");

/** Salt, peroxide and base as they react, as far as what is there allows; undefined where they do not balance. */
function reactionOf(pot: Pot, iron: Entry, { peroxide, base }: AgainstIron): Reaction | undefined {
  const { cations, anions } = constitutionOf(iron.matter.formula);
  const own = constitutionOf(base.form).cations[0];
  if (own === undefined || anions.length !== 1) return undefined;
  const isOxidised = IRON_OUT.cations[cations[0]!.formula as keyof typeof IRON_OUT.cations];
  const put = [iron.matter.formula, ...(isOxidised ? [peroxide!.form] : []), base.form];
  const made = [IRON_OUT.solid, saltFormula(own.formula, anions[0]!.formula)];
  const others = [[], ["H2O"], ["CO2"], ["CO2", "H2O"]];
  for (const more of others) {
    const found = tryBalance(`${put.join(" + ")} -> ${[...made, ...more].join(" + ")}`);
    if (!found.ok) continue;
    const solid = matterOf(parseFormula(IRON_OUT.solid)).key;
    const terms = termsOf(found.value, (formula) =>
      isGas(formula, true) ? "gas" : matterOf(formula).key === solid ? "precipitated" : "dissolved",
    );
    const used = terms.filter(({ count }) => count < 0n);
    const extents = used.map(({ matter, count }: Term) => amountIn(pot, matter.key).dividedBy(exact(String(-count))));
    return { terms, extent: minimum(extents) };
  }
  return undefined;
}

/** What is left of a peroxide decomposes in the hot liquor. */
function decayed(bench: Bench): Reaction[] {
  const left = amountIn(bench.pot, matterOf(parseFormula(IRON_OUT.oxidiser)).key);
  return left.isPositive() ? [peroxideDecay(left)] : [];
}

function pourPeroxide(bench: Bench, { shelf: { name } }: Material, iron: Entry): void {
  const put = bench.in(bench.pack(name));
  bench.did(POT, add(bench.pot, put, []), {
    materials: [name],
    amounts: [put.mass],
    from: bench.pack(name),
    adds: "liquid",
    say: () =>
      `Pour in the ${bench.hand.grams(put.mass)} of ${name} in small portions, stirring, and wait until the foam of each is gone: it makes iron(III) of the ${bench.hand.grams(massOf(iron))} of ${iron.matter.name} in it.`,
  });
}

function putBase(bench: Bench, { shelf: { name } }: Material, iron: Entry, against: AgainstIron): void {
  const put = bench.in(bench.pack(name));
  const reaction = reactionOf(add(bench.pot, put, []).after, iron, against);
  if (reaction === undefined) return;
  const solid = matterOf(parseFormula(IRON_OUT.solid));
  bench.did(POT, add(bench.pot, put, [reaction]), {
    materials: [name],
    amounts: [put.mass],
    from: bench.pack(name),
    adds: "solid",
    later: true,
    atHand: ["indicator paper"],
    say: () =>
      `Add the ${bench.hand.grams(put.mass)} of ${name} a pinch at a time, stirring, no more than until a drop that has cooled shows pH ${IRON_OUT.pH}: the iron precipitates as brown ${solid.name}; with more base a basic salt of the product comes too.`,
  });
  bench.isIronOut = true;
}

/** Takes the iron out where things against it are at hand. */
export function takeIronOut(bench: Bench): void {
  const against = againstIron(bench.frame.setting);
  if (against === undefined) return;
  const { peroxide, base } = against;
  const iron = bench.pot.books.dissolved.find(({ matter }) => isTakenOut(matter.formula, peroxide !== undefined));
  if (iron === undefined) return;
  if (peroxide !== undefined && bench.takesAside(peroxide)) pourPeroxide(bench, peroxide, iron);
  if (bench.takesAside(base)) putBase(bench, base, iron, against);
  const hot = planned("hot") as Quantity<"temperature">;
  const { pot, left } = reacted(heat(bench.pot, hot).after, decayed(bench));
  bench.did(POT, done("heat", bench.pot, pot, [], left), {
    target: hot,
    say: () =>
      `Keep it at ${celsius(hot)} for ${IRON_OUT.time}, until the brown has gathered in flocks: fine, it runs through the paper.`,
  });
}

const CLEAR_AGAIN = "without it the crystals are dull with basic salt";

/** Acid again, once the iron is off: crystals from a liquor that stood over a base are dull with basic salt. */
export function sourAfterIron(bench: Bench): void {
  const acid = dropOfOwnAcid(bench.frame.setting.product.formula);
  if (!bench.isIronOut || acid === undefined) return;
  bench.isIronOut = false;
  const own = bench.asidesFor("acidify");
  for (const { shelf } of own)
    bench.did(POT, add(bench.pot, bench.in(bench.pack(shelf.name)), []), {
      materials: [shelf.name],
      from: bench.pack(shelf.name),
      say: () => `Put the ${shelf.name} into the clear liquor: ${CLEAR_AGAIN}.`,
    });
  if (own.length > 0) return;
  bench.did(POT, hold(bench.pot), {
    atHand: [acid],
    say: () =>
      `Put ${acid} in by drops, until a drop of the clear liquor that has cooled shows pH ${IRON_OUT.acidTo}: ${CLEAR_AGAIN}.`,
  });
}

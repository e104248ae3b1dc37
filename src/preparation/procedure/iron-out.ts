// Iron that a pack has besides, taken out of the salt of another metal: peroxide that is at hand makes it iron(III), and a base of the
// salt's own metal precipitates it hot, as what takes no part in the equation.

import { tryBalance } from "../../equation";
import { type Formula, parseFormula } from "../../formula";
import { constitutionOf } from "../../ion";
import { saltFormula } from "../../ion/internal";
import { minimum, type Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
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

/** What is at hand against the iron, and what they make of each other. */
interface AgainstIron {
  readonly iron: Matter;
  readonly peroxide: Material | undefined;
  readonly base: Material;
  readonly terms: readonly Term[];
}

/** Is it a salt of iron, and one that must be oxidised first? Undefined for anything else. */
function isOxidisedFirst(formula: Formula): boolean | undefined {
  const { cations } = constitutionOf(formula);
  const found = cations.find((one) => one.formula in IRON_OUT.cations);
  return found && IRON_OUT.cations[found.formula as keyof typeof IRON_OUT.cations];
}

/** Salt, peroxide and base as they react; undefined where they do not balance. */
function termsOfAll(iron: Formula, oxidiser: readonly Formula[], base: Formula): readonly Term[] | undefined {
  const { anions } = constitutionOf(iron);
  const own = constitutionOf(base).cations[0];
  if (own === undefined || anions.length !== 1) return undefined;
  const put = [iron, ...oxidiser, base].join(" + ");
  const made = [IRON_OUT.solid, saltFormula(own.formula, anions[0]!.formula)].join(" + ");
  const solid = matterOf(parseFormula(IRON_OUT.solid)).key;
  for (const more of ["", " + H2O", " + CO2", " + CO2 + H2O"]) {
    const found = tryBalance(`${put} -> ${made}${more}`);
    if (found.ok)
      return termsOf(found.value, (formula) =>
        isGas(formula, true) ? "gas" : matterOf(formula).key === solid ? "precipitated" : "dissolved",
      );
  }
  return undefined;
}

/** Peroxide and base of the product's own metal that are put in beside a recrystallisation, where its pack has iron besides. */
export function againstIron({ materials, asides, product }: Setting): AgainstIron | undefined {
  const metal = keyElement(product.formula);
  if (materials.length !== 1 || metal === undefined || metal === "Fe") return undefined;
  const measured = asides.filter((one) => one.asideTaken() !== undefined);
  const base = measured.find(({ form }) => isBase(form) && form.count(metal).n > 0n);
  const peroxide = measured.find(isPeroxide);
  const iron = materials[0]!.also
    .map(({ form }) => matterOf(form).core)
    .find(({ formula }) => {
      const isFirst = isOxidisedFirst(formula);
      return isFirst === false || (isFirst === true && peroxide !== undefined);
    });
  if (base === undefined || iron === undefined) return undefined;
  const oxidiser = isOxidisedFirst(iron.formula) ? [peroxide!.form] : [];
  const terms = termsOfAll(iron.formula, oxidiser, base.form);
  return terms && { iron, peroxide, base, terms };
}

/** As far as what is there allows. */
const asFarAs = (pot: Pot, terms: readonly Term[]): Reaction => ({
  terms,
  extent: minimum(
    terms
      .filter(({ count }) => count < 0n)
      .map(({ matter, count }) => pot.amountOf(matter).dividedBy(exact(String(-count)))),
  ),
});

/** What is left of a peroxide decomposes in the hot liquor. */
function decayed(bench: Bench): Reaction[] {
  const left = bench.pot.amountOf(matterOf(parseFormula(IRON_OUT.oxidiser)));
  return left.isPositive() ? [peroxideDecay(left)] : [];
}

function pourPeroxide(bench: Bench, { shelf: { name } }: Material, iron: Matter): void {
  const put = bench.in(bench.pack(name));
  const mass = massOf({ matter: iron, amount: bench.pot.amountOf(iron) });
  bench.did(POT, add(bench.pot, put, []), {
    materials: [name],
    amounts: [put.mass],
    from: bench.pack(name),
    adds: "liquid",
    say: () =>
      `Pour in the ${bench.hand.grams(put.mass)} of ${name} in small portions, stirring, and wait until the foam of each is gone: it makes iron(III) of the ${bench.hand.grams(mass)} of ${iron.name} in it.`,
  });
}

function putBase(bench: Bench, { shelf: { name } }: Material, terms: readonly Term[]): void {
  const put = bench.in(bench.pack(name));
  const solid = matterOf(parseFormula(IRON_OUT.solid));
  bench.did(POT, add(bench.pot, put, [asFarAs(bench.pot.plusAll(put), terms)]), {
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
export function takeIronOut(bench: Bench, against: AgainstIron | undefined): void {
  if (against === undefined) return;
  const { iron, peroxide, base, terms } = against;
  if (peroxide !== undefined && bench.takesAside(peroxide)) pourPeroxide(bench, peroxide, iron);
  if (bench.takesAside(base)) putBase(bench, base, terms);
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

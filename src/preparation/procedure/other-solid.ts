// Another solid than the one asked for, where the equilibrium of the vessel has one: its own equation, balanced from the same
// reactants and by-products, takes its share of the metal. Where it is a material that stays what it was, less reacts.

import { ALKALI_METALS } from "../../element/internal";
import { tryReactionSpace } from "../../equation";
import { isNonmetal } from "../../equation/internal";
import type { Formula } from "../../formula";
import { withoutPhase } from "../../formula/internal";
import { remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { fizzedIn } from "../contents/equilibrium";
import { type Matter, matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import type { Term } from "../contents/react";
import { solidsApart, solidsBeside, standingOf, standsNot } from "../contents/solids-standing";
import { type Outcome, type Reaction, reacted } from "../operation/add";
import { exact, planned } from "../planning/exact";
import { fateOf } from "../reaction/fate";
import { isGas } from "../reaction/fluids";
import type { Setting } from "../request/setting";
import type { Bench } from "./bench";

const remembered = /* @__PURE__ */ remembering<readonly Term[] | undefined>(100);

/** What the equation may leave out or add, for water and carbon dioxide that another solid takes or frees. */
const SIDES: readonly (readonly [left: readonly string[], right: readonly string[]])[] = [
  [[], []],
  [["H2O"], []],
  [[], ["H2O"]],
  [[], ["CO2"]],
  [["H2O"], ["CO2"]],
  [[], ["H2O", "CO2"]],
];

const FLEETING = new Set(["H2O", "CO2"]);

/** The equation of another solid as terms; undefined where what is on the left and the by-products do not make it. */
function equationOf(
  { equation, product, products }: Setting,
  left: readonly Formula[],
  solid: Matter,
  main: Reaction,
): readonly Term[] | undefined {
  const beside = products.filter((one) => one !== product).map(({ formula }) => formula);
  const goes = main.terms.map(({ whereto }) => whereto).join(" ");
  return remembered(`${equation} | ${product.formula} | ${left.join(" + ")} | ${solid.key} | ${goes}`, () =>
    balancedFrom(left, beside, solid, main),
  );
}

/** A solid made of what is on the left, beside what is on the right, with water and carbon dioxide as they are needed. */
function balancedFrom(
  left: readonly Formula[],
  beside: readonly Formula[],
  solid: Matter,
  main: Reaction,
): readonly Term[] | undefined {
  const isFleeting = (text: string): boolean => FLEETING.has(text);
  const write = (own: readonly string[], more: readonly string[]): string =>
    [...new Set([...own, ...more])].join(" + ");
  const texts = (all: readonly Formula[]): string[] => all.map((formula) => withoutPhase(formula).toString());
  for (const bare of [false, true])
    for (const [before, after] of SIDES) {
      const used = texts(left).filter((text) => !bare || !isFleeting(text));
      const made = texts(beside).filter((text) => !bare || !isFleeting(text));
      // not balanced: most of these do not balance, and why is a long question
      const space = tryReactionSpace(`${write(used, before)} -> ${write([solid.formula.toString(), ...made], after)}`);
      if (!space.ok || space.value.dimension !== 1) continue;
      const [only] = space.value.elementary;
      if (only === undefined || only.coefficients.length < space.value.equation.formulas.length) continue;
      return [
        ...only.reactants.map(({ formula, coefficient }): Term => {
          const own = main.terms.find(({ matter, count }) => count < 0n && matter.key === matterOf(formula).key);
          return { matter: matterOf(formula), count: -coefficient, whereto: own?.whereto ?? "dissolved" };
        }),
        ...only.products.map(({ formula, coefficient }): Term => {
          const matter = matterOf(formula);
          const own = main.terms.find((term) => term.count > 0n && term.matter.key === matter.key);
          const isIt = matter.key === solid.key;
          return {
            matter,
            count: coefficient,
            whereto: isIt ? "precipitated" : (own?.whereto ?? (isGas(formula, true) ? "gas" : "dissolved")),
          };
        }),
      ];
    }
  return undefined;
}

/**
 * What a shop material brings besides and precipitates with the product: cobalt with nickel, iron with zinc. Each salt that takes no
 * part in the equation reacts with what is left of those that precipitate.
 */
function withWhatComesAlong(bench: Bench, outcome: Outcome, main: Reaction): Outcome {
  const { setting } = bench.frame;
  const { reactants, products, product } = setting;
  const own = new Set([...reactants, ...products].map(({ formula }) => matterOf(formula).core.key));
  const carriers = outcome.pot.books.dissolved.filter(
    ({ matter }) => !own.has(matter.key) && metalsIn(matter).size > 0,
  );
  if (carriers.length === 0) return outcome;
  const wanted = metalsIn(matterOf(product.formula));
  const bases = reactants.map(({ formula }) => formula).filter((one) => !holdsOf(matterOf(one), wanted));
  let pot = outcome.pot;
  const reactions: Reaction[] = [];
  for (const { matter, amount } of solidsApart(fizzed(bench, pot), matterOf(product.formula))) {
    if (pot.books.solids.some((one) => one.matter.core.key === matter.core.key)) continue;
    const carrier = carriers.find((one) => holdsOf(one.matter, metalsIn(matter)));
    const terms = carrier && equationOf(setting, [carrier.matter.formula, ...bases], matter, main);
    const made = terms?.find((term) => term.count > 0n && term.matter.key === matter.key);
    if (terms === undefined || made === undefined) continue;
    const extent = terms.reduce(
      (most: Quantity, term) => {
        if (term.count >= 0n || term.matter.isWater) return most;
        const there = pot.books.dissolved.find((one) => one.matter.key === term.matter.core.key)?.amount;
        const enough = (there ?? exact("0 mol")).dividedBy(exact(String(-term.count)));
        return enough.compare(most) < 0 ? enough : most;
      },
      amount.dividedBy(exact(String(made.count))),
    );
    if (!extent.isPositive()) continue;
    reactions.push({ terms, extent });
    pot = reacted(pot, [{ terms, extent }]).pot;
  }
  const along = reacted(outcome.pot, reactions);
  return { pot: along.pot, left: [...outcome.left, ...along.left], taken: [...outcome.taken, ...along.taken] };
}

const metalsIn = ({ formula }: Matter): ReadonlySet<string> =>
  new Set(formula.symbols.filter((symbol) => !isNonmetal(symbol) && !ALKALI_METALS.has(symbol)));

const holdsOf = ({ formula }: Matter, metals: ReadonlySet<string>): boolean =>
  formula.symbols.some((symbol) => metals.has(symbol));

/** How much less of the equation leaves enough of each reactant for another one. */
function lessBy(pot: Pot, main: Reaction, terms: readonly Term[], extent: Quantity): Quantity {
  let most = exact("0 mol");
  for (const { matter, count } of terms) {
    const own = main.terms.find((term) => term.count < 0n && term.matter.core.key === matter.core.key);
    if (count >= 0n || matter.isWater || own === undefined) continue;
    const there = [...pot.books.dissolved, ...pot.books.solids].filter(
      (one) => one.matter.core.key === matter.core.key,
    );
    const left = there.reduce((all, { amount }) => all.plus(amount), exact("0 mol"));
    const needed = extent
      .times(-count)
      .minus(left)
      .dividedBy(exact(String(-own.count)));
    if (needed.compare(most) > 0) most = needed;
  }
  return most;
}

/** A pot with how it stands where carbonate is in it; a gas that is led in is kept in. */
export function fizzed({ frame: { setting, isolation } }: Bench, pot: Pot): Pot {
  const isCarbonDioxide = ({ formula }: { readonly formula: Formula }): boolean => isOneOf(formula, "CO2");
  if (setting.reactants.some(isCarbonDioxide)) return pot;
  const isWritten = setting.products.some(isCarbonDioxide);
  const found = fizzedIn(pot, matterOf(setting.product.formula), isWritten, isolation.how === "precipitate");
  return found === undefined ? pot : pot.with({ fizzed: found });
}

/** What the reactions come to, with other solids' own equations, each with what it takes of the extent. */
export function withOtherSolids(bench: Bench, start: Pot, reactions: readonly Reaction[]): Outcome {
  const { setting, isolation } = bench.frame;
  const product = matterOf(setting.product.formula);
  const main = reactions.find(isMaking(product));
  return isolation.how !== "precipitate" || main === undefined
    ? withWhatStays(bench, start, reactions)
    : withWhatComesAlong(bench, inPlace(bench, start, reactions, main), main);
}

/** Does a reaction precipitate a product? */
const isMaking =
  (product: Matter) =>
  ({ terms }: Reaction): boolean =>
    terms.some(({ matter, whereto }) => matter.key === product.key && whereto === "precipitated");

/** The same of solids of the product's own metal. */
function inPlace(bench: Bench, start: Pot, reactions: readonly Reaction[], main: Reaction): Outcome {
  const { setting } = bench.frame;
  const product = matterOf(setting.product.formula);
  const outcome = reacted(start, reactions);
  const pot = fizzed(bench, outcome.pot);
  const left = setting.reactants.map(({ formula }) => formula);
  let open = main.extent;
  const others: Reaction[] = [];
  let stayed = false;
  for (const { matter, amount } of solidsBeside(pot, product)) {
    const material = main.terms.find(({ count, matter: one }) => count < 0n && one.core.key === matter.core.key);
    if (material !== undefined) {
      const stays = amount.dividedBy(exact(String(-material.count)));
      open = stays.compare(open) > 0 ? exact("0 mol") : open.minus(stays);
      stayed = true;
      bench.others.add(material.matter.key);
      continue;
    }
    const terms = equationOf(setting, left, matter, main);
    const own = terms?.find((term) => term.matter.key === matter.key && term.count > 0n);
    if (terms === undefined || own === undefined) continue;
    let extent = amount.dividedBy(exact(String(own.count)));
    let taken = lessBy(pot, main, terms, extent);
    if (taken.compare(open) > 0) {
      extent = extent.times(open.dividedBy(taken));
      taken = open;
    }
    if (!extent.isPositive()) continue;
    open = open.minus(taken);
    bench.others.add(matter.key);
    others.push({ terms, extent });
  }
  if (others.length === 0 && !stayed) return outcome;
  const made = main.terms.find(({ matter, count }) => count > 0n && matter.key === product.key)!;
  // Where none of the product stands the others take all there is; what of them the liquor keeps goes back as they settle.
  const isLeft = !standsNot(pot, product) && open.compare(main.extent.times(exact("0.002"))) > 0;
  const taken = main.extent.minus(open);
  bench.elsewhere = (isLeft ? taken : main.extent).times(exact(String(made.count)));
  const all =
    isLeft || !taken.isPositive()
      ? others
      : others.map(({ terms, extent }) => ({ terms, extent: extent.times(main.extent).dividedBy(taken) }));
  return reacted(
    start,
    reactions.flatMap((one) => (one !== main ? [one] : [...(isLeft ? [{ ...main, extent: open }] : []), ...all])),
  );
}

/**
 * A solid that is to give something dissolved and stays what it was, by the equilibrium: less of the equation happens. What is
 * over stays anyway, and what rounding leaves is nothing.
 */
function withWhatStays(bench: Bench, start: Pot, reactions: readonly Reaction[]): Outcome {
  const { setting } = bench.frame;
  const { key } = matterOf(setting.product.formula);
  const main = reactions.find(({ terms }) => terms.some((one) => one.count > 0n && one.matter.key === key));
  const outcome = reacted(start, reactions);
  if (main === undefined) return outcome;
  const pot = fizzed(bench, outcome.pot);
  let open = main.extent;
  for (const { matter, count } of main.terms) {
    if (count >= 0n || matter.isWater || fateOf(matter.formula, setting.temperature).precipitated !== true) continue;
    const over = pot.books.solids.find((one) => one.matter.core.key === matter.core.key)?.amount;
    const stands = standingOf(pot, matter)?.minus(over ?? exact("0 mol"));
    if (stands === undefined || stands.compare(main.extent.times(-count).times(planned("worthAWord"))) <= 0) continue;
    const stays = stands.dividedBy(exact(String(-count)));
    const left = main.extent.minus(stays);
    if (left.compare(open) < 0) open = left.isPositive() ? left : exact("0 mol");
  }
  return open === main.extent
    ? outcome
    : reacted(
        start,
        reactions.map((one) => (one === main ? { ...main, extent: open } : one)),
      );
}

// What the yields, analyses and stated figures of a recipe say: the impossible, the mixed-up, the damp, and what stays in
// the liquor.

import { type Formula, molarMass, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import { anhydrousOf, hydrateOf, knownHydrates } from "../../hydrate";
import { type Quantity, sum } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { planned } from "../planning/exact";
import { fateInRoom } from "../reaction/fate";
import { nameOfFormula } from "../reaction/species";
import { analysis, massLoss, partOf } from "./analysis";
import { basisOfPercent, basisOfTheory } from "./bases";
import type { RecipeFigures } from "./figures";
import { liquorFindings } from "./liquor";
import type { Recipe, RecipeFinding } from "./types";
import { near, ratioOf, shown } from "./words";

/** Two ratios nearer than this are taken for the same. */
const SAME_RATIO = 0.02;

/** Other forms the limiting material may have had: the readings of the recipe, the salt without water, and what is sold. */
function otherForms({ read, account }: RecipeFigures): { material: string; form: Formula; other: Formula }[] {
  const m = read.materials.find((one) => one.name === account?.limiting);
  if (m === undefined || isWater(m.material.form)) return [];
  const { form } = m.material;
  const readings = m.readings.slice(1).map((r) => r.material.form);
  const all = [
    ...readings,
    anhydrousOf(form),
    ...knownHydrates(form).flatMap((known) => (known.sold ? [known.formula] : [])),
  ];
  const others = all.filter((f) => !f.hasSameComposition(form));
  return others
    .filter((f, i) => others.findIndex((g) => g.hasSameComposition(f)) === i)
    .map((other) => ({ material: m.name, form, other }));
}

/** A hydrate taken for another that would turn the ratio of found to calculated into one. */
function mixUp(figures: RecipeFigures, ratio: number, what: string): RecipeFinding[] {
  return otherForms(figures).flatMap(({ material, form, other }): RecipeFinding[] => {
    const factor = molarMass(form).dividedBy(molarMass(other));
    if (!near(ratio, ratioOf(factor), SAME_RATIO)) return [];
    return [
      {
        code: "recipe.hydrate-mix-up",
        text: `${what} is off by ${ratio.toFixed(3)}, and ${nameOfFormula(form)} over ${nameOfFormula(other)} is ${shown(factor, 4)}: one was taken for the other in ${material}`,
        material,
        figure: factor,
      },
    ];
  });
}

/** Is it above a limit by more than two of its standard uncertainties? */
function surelyAbove(q: Quantity, limit: Quantity): boolean {
  const over = q.minus(limit).to("%");
  const u = q.to("%").standardUncertainty;
  return over.isPositive() && (u === undefined || over.in("%").greaterThan(u.times(2)));
}

/** Mass of all that goes in; undefined where a reactant has no mass of its own: water at will, the air, a solution. */
function massIn({ read, account }: RecipeFigures): Quantity | undefined {
  const portions = read.materials.flatMap(({ portion }) => (portion?.dimension === "mass" ? [portion] : []));
  const all = account !== undefined && account.taken.length === 0 && portions.length === read.materials.length;
  return all && portions.length > 0 ? sum(portions) : undefined;
}

/** What a mass of product means that is more than went in. */
function beyondMassIn(figures: RecipeFigures, mass: Quantity): string {
  const whole = massIn(figures);
  return whole !== undefined && mass.compare(whole) > 0 ? `, more than the ${shown(whole.to("g"))} that go in` : "";
}

function impossible(recipe: Recipe, calculated: RecipeFigures): RecipeFinding[] {
  // a stated percentage stands for itself where no product is given that it could be held against
  const alone = calculated.yields.length === 0 ? recipe.stated?.percentYield : undefined;
  const yields = [
    ...calculated.yields.map(({ percentYield }) => percentYield),
    ...(alone === undefined ? [] : [expectDimension(alone, "mass fraction", "stated percent yield")]),
  ];
  const over = yields.filter((percent) => surelyAbove(percent, planned("impossible")));
  const first = over[0];
  if (first === undefined) return [];
  const list = over.map((percent) => shown(percent, 3)).join(", ");
  return [
    {
      code: "recipe.impossible-yield",
      text: `${list} of theory cannot be: wet, unwashed, another substance, or a wrong form in the sum`,
      material: undefined,
      figure: first,
    },
    ...mixUp(calculated, ratioOf(first), "the yield"),
  ];
}

/** A crop from a liquor that weighs what the sum says to a thousandth is the sum. */
function exactlyTheory({ read, yields }: RecipeFigures): RecipeFinding[] {
  if (!read.wet || fateInRoom(read.product.formula).precipitated !== false) return [];
  return yields
    .filter((y) => y.given === "mass" && near(ratioOf(y.percentYield), 1, 0.001))
    .map((y) => ({
      code: "recipe.yield-is-theory",
      text: `${shown(y.percentYield, 4)} of theory from a liquor that keeps some: a calculated figure, not a crop weighed`,
      material: undefined,
      figure: y.percentYield,
    }));
}

function statedYield(recipe: Recipe, figures: RecipeFigures): RecipeFinding[] {
  const text = recipe.stated?.percentYield;
  const found = figures.yields.find((y) => y.given === "mass");
  if (text === undefined || found === undefined) return [];
  const stated = expectDimension(text, "mass fraction", "stated percent yield");
  const findings: RecipeFinding[] = [];
  const ratio = ratioOf(stated.dividedBy(found.percentYield));
  if (!near(ratio, 1, 0.01)) {
    findings.push({
      code: "recipe.stated-yield-differs",
      text: `${shown(stated, 4)} is stated, ${shown(found.mass, 4)} is ${shown(found.percentYield)} of theory`,
      material: undefined,
      figure: found.percentYield,
    });
    // A percent yield is stated too low by the factor that the theory behind it is too high.
    findings.push(...mixUp(figures, 1 / ratio, "the stated yield"), ...basisOfPercent(figures, found.mass, stated));
  }
  const forms = (recipe.productForms ?? []).map((form) => parseFormula(form));
  if (forms.length > 1) {
    const M = molarMass(figures.read.product.formula);
    const list = forms.map((form) => {
      const percent = found.percentYield.times(M).dividedBy(molarMass(form)).to("%");
      return `${shown(percent)} as ${nameOfFormula(form)}`;
    });
    findings.push({
      code: "recipe.yield-basis",
      text: `what a yield of ${shown(stated, 4)} means depends on the form weighed: ${list.join(", ")}`,
      material: undefined,
      figure: found.percentYield,
    });
  }
  return findings;
}

function statedTheory(recipe: Recipe, figures: RecipeFigures): RecipeFinding[] {
  const { stated } = recipe;
  const { theoreticalYield } = figures;
  if (stated?.theory === undefined || theoreticalYield === undefined) return [];
  const theory = expectDimension(stated.theory, "mass", "stated theory");
  const ratio = ratioOf(theory.dividedBy(theoreticalYield));
  if (near(ratio, 1, 0.005)) return [];
  return [
    {
      code: "recipe.stated-yield-differs",
      text: `a theory of ${theory} is stated${beyondMassIn(figures, theory)}, it is ${shown(theoreticalYield)}`,
      material: undefined,
      figure: theoreticalYield,
    },
    ...mixUp(figures, ratio, "the stated theory"),
    ...basisOfTheory(figures, theory),
  ];
}

/** Do the figures that the recipe prints agree with each other, whatever the theory is? */
function printedFigures(recipe: Recipe, { yields }: RecipeFigures): RecipeFinding[] {
  const { percentYield, theory } = recipe.stated ?? {};
  const found = yields.find((y) => y.given === "mass")?.mass;
  if (percentYield === undefined || theory === undefined || found === undefined) return [];
  const percent = expectDimension(percentYield, "mass fraction", "stated percent yield").to("%");
  const whole = expectDimension(theory, "mass", "stated theory");
  const now = found.dividedBy(whole).to("%");
  if (near(ratioOf(now), ratioOf(percent), 0.01)) return [];
  return [
    {
      code: "recipe.figures-contradict",
      text: `the recipe contradicts itself: ${shown(found, 4)} of its own theory of ${whole} is ${shown(now)}, not the ${percent} it prints`,
      material: undefined,
      figure: now,
    },
  ];
}

/** Most waters looked for when a stated molar mass belongs to another hydrate. */
const MOST_WATERS = 24;

function molarMasses(recipe: Recipe, figures: RecipeFigures): RecipeFinding[] {
  const { read, account, theoreticalYield } = figures;
  return (recipe.stated?.molarMasses ?? []).flatMap(({ of, value }): RecipeFinding[] => {
    const formula = parseFormula(of);
    const M = molarMass(formula);
    const stated = expectDimension(value, "molar mass", `molar mass of ${of}`);
    const ratio = ratioOf(M.dividedBy(stated));
    if (near(ratio, 1, 0.005)) return [];
    const salt = anhydrousOf(formula);
    const fits = Array.from({ length: MOST_WATERS + 1 }, (_, n) => (n === 0 ? salt : hydrateOf(salt, n))).find((form) =>
      near(ratioOf(molarMass(form).dividedBy(stated)), 1, 0.005),
    );
    const isMaterial = read.materials.some((m) => anhydrousOf(m.material.form).hasSameComposition(salt));
    const belongs = fits === undefined ? "" : `, which is ${nameOfFormula(fits)}`;
    // Only what runs out sets the theory; the molar mass of what is in excess moves the excess alone.
    const setsTheory = read.materials.some(
      (m) => m.name === account?.limiting && anhydrousOf(m.material.form).hasSameComposition(salt),
    );
    const promised = setsTheory ? theoreticalYield?.times(M).dividedBy(stated).to("g") : undefined;
    const wrong =
      promised !== undefined && theoreticalYield !== undefined
        ? `: it would promise ${shown(promised)}${beyondMassIn(figures, promised)} where ${shown(theoreticalYield)} is right, and call a perfect run ${shown(stated.dividedBy(M).to("%"), 2)}`
        : "";
    return [
      {
        code: isMaterial && fits !== undefined ? "recipe.hydrate-mix-up" : "recipe.molar-mass",
        text: `${nameOfFormula(formula)} weighs ${shown(M, 5)}, not the ${stated} stated${belongs}${wrong}`,
        material: isMaterial ? of : undefined,
        figure: M,
      },
    ];
  });
}

/** A stated gravimetric factor that today's atomic weights put elsewhere in its last digit. */
function factors(recipe: Recipe, { read }: RecipeFigures): RecipeFinding[] {
  return (recipe.stated?.massFractions ?? []).flatMap(({ of, value }): RecipeFinding[] => {
    const now = partOf(of, read.product.formula).to("%");
    const stated = expectDimension(value, "mass fraction", `mass fraction of ${of}`).to("%");
    const decimals = stated.value.decimalPlaces();
    if (stated.value.toFixed(decimals) === now.value.toFixed(decimals)) return [];
    const off = stated.dividedBy(now).minus("1").to("%");
    return [
      {
        code: "recipe.factor-outdated",
        text: `${of} in ${read.product.name}: ${stated} is stated, ${shown(now, 5)} by today's atomic weights (${shown(off, 2)} apart)`,
        material: undefined,
        figure: now,
      },
    ];
  });
}

export function yieldFindings(recipe: Recipe, figures: RecipeFigures): RecipeFinding[] {
  return [
    ...liquorFindings(recipe, figures),
    ...impossible(recipe, figures),
    ...exactlyTheory(figures),
    ...statedYield(recipe, figures),
    ...statedTheory(recipe, figures),
    ...printedFigures(recipe, figures),
    ...molarMasses(recipe, figures),
    ...factors(recipe, figures),
    ...analysis(recipe, figures),
    ...massLoss(figures),
  ];
}

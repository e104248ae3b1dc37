// What the yields, analyses and stated figures of a recipe say: the impossible, the mixed-up, the damp, and what stays in
// the liquor.
import { type Formula, massFractionOf, molarMass, parseFormula } from "../formula";
import { anhydrousOf, crystalWater, knownForms, withWater } from "../hydrate";
import { expectDimension, type Quantity, quantity } from "../quantity";
import { formulasLike, keyElement } from "./candidates";
import { lessThanAll, planned } from "./exact";
import { fateOf } from "./fate";
import type { Recipe, RecipeFinding, Reckoned } from "./recipe";
import { liquorFindings } from "./recipe-liquor";
import { nameOfFormula } from "./species";

/** Over theory by more than this is more than rounding (the criterion of the trade's own yield tables). */
const IMPOSSIBLE = "100.5 %";
const ROOM = "20 °C";
/** Two ratios nearer than this are taken for the same. */
const SAME_RATIO = 0.02;

const shown = (q: Quantity, figures = 3): string => q.format({ significant: figures, uncertainty: "none" });
const ratioOf = (q: Quantity): number => q.in("").toNumber();
const near = (a: number, b: number, within: number): boolean => Math.abs(a / b - 1) <= within;

/** Other forms the limiting material may have had: the readings of the recipe, and every hydrate known of it. */
function otherForms({ read, account }: Reckoned): { material: string; form: Formula; other: Formula }[] {
  const m = read.materials.find((one) => one.name === account?.limiting);
  if (m === undefined || m.material.form.compositionText === "H2O") return [];
  const { form } = m.material;
  const readings = m.readings.slice(1).map((r) => r.material.form);
  const all = [...readings, anhydrousOf(form), ...knownForms(form).map((known) => known.formula)];
  const others = all.filter((f) => !f.hasSameComposition(form));
  return others
    .filter((f, i) => others.findIndex((g) => g.hasSameComposition(f)) === i)
    .map((other) => ({ material: m.name, form, other }));
}

/** A hydrate taken for another that would turn the ratio of found to reckoned into one. */
function mixUp(reckoned: Reckoned, ratio: number, what: string): RecipeFinding[] {
  return otherForms(reckoned).flatMap(({ material, form, other }): RecipeFinding[] => {
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

function impossible(reckoned: Reckoned): RecipeFinding[] {
  const over = reckoned.yields.filter((y) => y.percentYield.compare(IMPOSSIBLE) > 0);
  const first = over[0];
  if (first === undefined) return [];
  const list = over.map((y) => shown(y.percentYield, 3)).join(", ");
  return [
    {
      code: "recipe.impossible-yield",
      text: `${list} of theory cannot be: wet, unwashed, another substance, or a wrong form in the sum`,
      material: undefined,
      figure: first.percentYield,
    },
    ...mixUp(reckoned, ratioOf(first.percentYield), "the yield"),
  ];
}

/** A crop from a liquor that weighs what the sum says to a thousandth is the sum. */
function exactlyTheory({ read, yields }: Reckoned): RecipeFinding[] {
  if (!read.wet || fateOf(read.product.formula, ROOM).fallsOut !== false) return [];
  return yields
    .filter((y) => y.given === "mass" && near(ratioOf(y.percentYield), 1, 0.001))
    .map((y) => ({
      code: "recipe.yield-is-theory",
      text: `${shown(y.percentYield, 4)} of theory from a liquor that keeps some: a figure reckoned, not a crop weighed`,
      material: undefined,
      figure: y.percentYield,
    }));
}

function statedYield(recipe: Recipe, reckoned: Reckoned): RecipeFinding[] {
  const text = recipe.stated?.percentYield;
  const found = reckoned.yields.find((y) => y.given === "mass");
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
    findings.push(...mixUp(reckoned, 1 / ratio, "the stated yield"));
  }
  const forms = (recipe.productForms ?? []).map((form) => parseFormula(form));
  if (forms.length > 1) {
    const M = molarMass(reckoned.read.product.formula);
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

function statedTheory(recipe: Recipe, reckoned: Reckoned): RecipeFinding[] {
  const { stated } = recipe;
  const { theoreticalYield } = reckoned;
  if (stated?.theory === undefined || theoreticalYield === undefined) return [];
  const theory = expectDimension(stated.theory, "mass", "stated theory");
  const ratio = ratioOf(theory.dividedBy(theoreticalYield));
  if (near(ratio, 1, 0.005)) return [];
  return [
    {
      code: "recipe.stated-yield-differs",
      text: `a theory of ${theory} is stated, it is ${shown(theoreticalYield)}`,
      material: undefined,
      figure: theoreticalYield,
    },
    ...mixUp(reckoned, ratio, "the stated theory"),
  ];
}

/** Most waters looked for when a stated molar mass belongs to another hydrate. */
const MOST_WATERS = 24;

function molarMasses(recipe: Recipe, { read, theoreticalYield }: Reckoned): RecipeFinding[] {
  return (recipe.stated?.molarMasses ?? []).flatMap(({ of, value }): RecipeFinding[] => {
    const formula = parseFormula(of);
    const M = molarMass(formula);
    const stated = expectDimension(value, "molar mass", `molar mass of ${of}`);
    const ratio = ratioOf(M.dividedBy(stated));
    if (near(ratio, 1, 0.005)) return [];
    const salt = anhydrousOf(formula);
    const fits = Array.from({ length: MOST_WATERS + 1 }, (_, n) => (n === 0 ? salt : withWater(salt, n))).find((form) =>
      near(ratioOf(molarMass(form).dividedBy(stated)), 1, 0.005),
    );
    const isMaterial = read.materials.some((m) => anhydrousOf(m.material.form).hasSameComposition(salt));
    const belongs = fits === undefined ? "" : `, which is ${nameOfFormula(fits)}`;
    const wrong =
      isMaterial && theoreticalYield !== undefined
        ? `: it would promise ${shown(theoreticalYield.times(M).dividedBy(stated).to("g"))} where ${shown(theoreticalYield)} is right, and call a perfect run ${shown(stated.dividedBy(M).to("%"), 2)}`
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
function factors(recipe: Recipe, { read }: Reckoned): RecipeFinding[] {
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

/** Mass fraction of an element or a group of elements in a formula. */
function partOf(text: string, formula: Formula): Quantity {
  const part = parseFormula(text);
  const [first] = part.symbols;
  if (part.symbols.length === 1) return massFractionOf(first!, formula);
  // As many groups as the scarcest of its elements allows.
  const counts = part.symbols.map((s) => formula.count(s).div(part.count(s)));
  const groups = counts.reduce((a, b) => (b.compare(a) < 0 ? b : a));
  return molarMass(part)
    .times(groups)
    .dividedBy(molarMass(formula))
    .named({ symbol: `w(${text})`, rule: "mass fraction = groups × molar mass of the group / molar mass" });
}

/** Mass fractions found that differ by more than this share of themselves do not fit. */
const ANALYSIS_FITS = 0.02;

function analysis(recipe: Recipe, { read, yields }: Reckoned): RecipeFinding[] {
  const { waters, parts, ignition } = recipe.analysis ?? {};
  const { formula, name } = read.product;
  const findings: RecipeFinding[] = [];
  if (waters !== undefined) {
    const own = quantity({ value: crystalWater(formula).waters.toFraction(), unit: "" });
    const extra = quantity(waters as "3").minus(own);
    if (extra.compare("0.25") > 0) {
      const M = molarMass(formula);
      const share = M.dividedBy(M.plus(extra.times(molarMass("H2O"))));
      const first = yields[0];
      const corrected =
        first === undefined
          ? ""
          : `: ${shown(first.mass, 4)} holds ${shown(first.mass.times(share).to("g"))} of ${name}, ${shown(first.percentYield.times(share), 2)} instead of ${shown(first.percentYield, 2)}`;
      findings.push({
        code: "recipe.damp",
        text: `${waters} waters were found where ${name} has ${own}: weighed damp${corrected}`,
        material: undefined,
        figure: first === undefined ? share : first.percentYield.times(share),
      });
    }
  }
  const off = Object.entries(parts ?? {}).flatMap(([text, value]) => {
    const found = expectDimension(value as "1 %", "mass fraction", `${text} found`).to("%");
    const theory = partOf(text, formula).to("%");
    return near(ratioOf(found.dividedBy(theory)), 1, ANALYSIS_FITS)
      ? []
      : [`${text} ${found} where ${shown(theory, 4)} is due`];
  });
  if (off.length > 0) {
    const looks =
      yields[0] === undefined ? "" : `; the yield of ${shown(yields[0].percentYield)} by mass means nothing`;
    findings.push({
      code: "recipe.analysis-misfit",
      text: `the analysis is not that of ${name}: ${off.join(", ")}${looks}`,
      material: undefined,
      figure: undefined,
    });
  }
  if (ignition !== undefined) findings.push(...ignitionFindings(ignition, formula));
  return findings;
}

function ignitionFindings(
  { before, after, residue }: { readonly before: string; readonly after: string; readonly residue: string },
  product: Formula,
): RecipeFinding[] {
  const left = parseFormula(residue);
  const key = keyElement(product);
  if (key === undefined || left.count(key).n === 0n) return [];
  const [m1, m2] = [before, after].map((text) => withReadability(text));
  const found = m2!.dividedBy(m1!).to("%");
  const share = (form: Formula): Quantity =>
    molarMass(left).times(form.count(key)).dividedBy(left.count(key)).dividedBy(molarMass(form)).to("%");
  const theory = share(product);
  const u = found.standardUncertainty?.toNumber() ?? 0;
  if (Math.abs(found.minus(theory).in("%").toNumber()) <= 2 * u) return [];
  const others = formulasLike(product)
    .map((form) => `${nameOfFormula(form)} ${shown(share(form))}`)
    .join(", ");
  return [
    {
      code: "recipe.ignition-misfit",
      text: `${shown(found)} was left, ${nameOfFormula(product)} leaves ${shown(theory)} of ${residue}${others === "" ? "" : `; ${others}`}`,
      material: undefined,
      figure: found,
    },
  ];
}

/** A printed mass is good to half its last digit. */
function withReadability(text: string): Quantity {
  const q = expectDimension(text as "1 g", "mass", "mass");
  if (q.standardUncertainty !== undefined) return q;
  return quantity({ value: q.value.toString(), unit: q.unit, readability: lastDigit(text) });
}

/** One unit in the last digit written. */
function lastDigit(text: string): string {
  const decimals = /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
  return decimals === 0 ? "1" : `0.${"0".repeat(decimals - 1)}1`;
}

/** A residue that fits the formula neither dry nor pure. */
function massLoss({ read, theoreticalYield, yields }: Reckoned): RecipeFinding[] {
  const start = read.materials[0];
  if (read.reactants.length !== 1 || start?.portion === undefined || theoreticalYield === undefined) return [];
  const y = yields.find((one) => one.given === "mass");
  if (y === undefined) return [];
  // What stays in the crucible is lost in handling; what is over was not driven off.
  const share = y.percentYield.minus("100 %");
  if (share.compare("3 %") <= 0 && share.compare(planned("handlingLoss").negated()) >= 0) return [];
  const loss = (after: Quantity): Quantity => start.portion!.minus(after).dividedBy(start.portion!).to("%");
  const dry = y.mass.dividedBy(theoreticalYield);
  const wet = dry.compare("1") < 0 ? `, unless it held ${shown(lessThanAll(dry).to("%"), 2)} of water` : "";
  const written = start.given.writtenAs;
  const asWritten =
    written === undefined || keyElement(read.product.formula) === undefined
      ? ""
      : ` and ${written} ${shown(lossOf(parseFormula(written), read.product.formula))}`;
  return [
    {
      code: "recipe.mass-loss-misfit",
      text: `${shown(loss(y.mass))} was lost, ${start.material.formName} loses ${shown(loss(theoreticalYield))}${asWritten}: neither dry nor complete${wet}`,
      material: start.name,
      figure: loss(y.mass),
    },
  ];
}

/** Loss of one formula on the way to another with the same metal. */
function lossOf(from: Formula, to: Formula): Quantity {
  const key = keyElement(to)!;
  const left = molarMass(to).times(from.count(key)).dividedBy(to.count(key)).dividedBy(molarMass(from));
  return lessThanAll(left).to("%");
}

export function yieldFindings(recipe: Recipe, reckoned: Reckoned): RecipeFinding[] {
  return [
    ...liquorFindings(recipe, reckoned),
    ...impossible(reckoned),
    ...exactlyTheory(reckoned),
    ...statedYield(recipe, reckoned),
    ...statedTheory(recipe, reckoned),
    ...molarMasses(recipe, reckoned),
    ...factors(recipe, reckoned),
    ...analysis(recipe, reckoned),
    ...massLoss(reckoned),
  ];
}

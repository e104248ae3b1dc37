// What was found in a recipe's product: water, parts, what ignition left; held against the formula.

import { type Formula, massFractionOf, molarMass, parseFormula } from "../../formula";
import { crystalWater } from "../../hydrate";
import { type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { lessThanAll, planned } from "../planning/exact";
import { formulasLike, keyElement } from "../reaction/candidates";
import { nameOfFormula } from "../reaction/species";
import type { RecipeFigures } from "./figures";
import type { Recipe, RecipeFinding } from "./types";
import { near, ratioOf, shown } from "./words";

/** Mass fraction of an element or a group of elements in a formula. */
export function partOf(text: string, formula: Formula): Quantity {
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

export function analysis(recipe: Recipe, { read, yields }: RecipeFigures): RecipeFinding[] {
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
          : `: ${shown(first.mass, 4)} contains ${shown(first.mass.times(share).to("g"))} of ${name}, ${shown(first.percentYield.times(share), 2)} instead of ${shown(first.percentYield, 2)}`;
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
  if (Math.abs(found.minus(theory).toNumber("%")) <= 2 * u) return [];
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
export function massLoss({ read, theoreticalYield, yields }: RecipeFigures): RecipeFinding[] {
  const start = read.materials[0];
  if (read.reactants.length !== 1 || start?.portion === undefined || theoreticalYield === undefined) return [];
  const y = yields.find((one) => one.given === "mass");
  if (y === undefined) return [];
  // What stays in the crucible is lost in handling; what is over was not driven off.
  const share = y.percentYield.minus("100 %");
  if (share.compare(planned("notDrivenOff")) <= 0 && share.compare(planned("handlingLoss").negated()) >= 0) return [];
  const loss = (after: Quantity): Quantity => start.portion!.minus(after).dividedBy(start.portion!).to("%");
  const dry = y.mass.dividedBy(theoreticalYield);
  const wet = dry.compare("1") < 0 ? `, unless it contained ${shown(lessThanAll(dry).to("%"), 2)} of water` : "";
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

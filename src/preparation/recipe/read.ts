// Reading a recipe: equations, the product and the way to it, materials with their readings, amounts in the units of the
// book. A unit that stands for two sizes is reported and both are calculated; nothing is guessed.

import { type BalancedEquation, balance } from "../../equation";
import { type Formula, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import { isPreparativeError, shownValue } from "../../foundation/error";
import { isQuantity, type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { POUNDS, TWO_SIZED } from "../data/units";
import { PlanError } from "../error";
import { exact } from "../planning/exact";
import { isHeatedDry } from "../procedure/kind";
import { inWantedForm } from "../reaction/in-form";
import { type Species, sameCore, speciesOf } from "../reaction/species";
import { guard } from "../request/argument";
import { type Material, readMaterial } from "../shelf/material";
import { contradictionOf } from "../shelf/pack-name";
import type { Recipe, RecipeFinding, RecipeMaterial } from "./types";

/** A material of a recipe, read. */
export interface ReadMaterial {
  readonly given: RecipeMaterial;
  readonly name: string;
  readonly material: Material;
  /** Mass, volume or amount as given; undefined where the recipe gives none that can be used. */
  readonly portion: Quantity | undefined;
  readonly amount: Quantity | undefined;
  /** Every form it may be, the one calculated with first. */
  readonly readings: readonly { readonly material: Material; readonly amount: Quantity | undefined }[];
  /** Amounts other copies print. */
  readonly otherAmounts: readonly { readonly text: string; readonly amount: Quantity }[];
}

/** A step from one carrier of the product to the next. */
interface Carrier {
  readonly used: bigint;
  readonly formed: bigint;
  readonly name: string;
}

export interface ReadRecipe {
  readonly equation: BalancedEquation;
  readonly reactants: readonly Species[];
  readonly products: readonly Species[];
  readonly product: Species;
  /** Product of the first equation that goes on into the next step, where there are steps. */
  readonly firstCarrier: Species | undefined;
  readonly carriers: readonly Carrier[];
  /** The steps after the first. */
  readonly later: readonly { readonly reactants: readonly Species[]; readonly products: readonly Species[] }[];
  readonly materials: readonly ReadMaterial[];
  /** Something is dissolved or solution: gases that water keeps stay in it. */
  readonly wet: boolean;
  readonly water: readonly Quantity[];
  readonly found: readonly Quantity[];
  readonly findings: readonly RecipeFinding[];
  readonly unknown: readonly string[];
}

const listOf = <T>(one: T | readonly T[] | undefined): readonly T[] =>
  one === undefined ? [] : Array.isArray(one) ? (one as readonly T[]) : [one as T];

/** A pound without a word of which one, in a text. */
const POUND = /\d\s*(?:lbs?|pounds?)\.?\s*$/i;

/** A book that writes avoirdupois once has one pound. */
const namesPound = ({ materials, found, water }: Recipe): boolean =>
  [...materials.map(({ amount }) => amount), found, water]
    .flat()
    .some((one) => /\bav(oirdupois)?\b/i.test(shownValue(one)));

/** Which pound a book means: the question, with what each one is; the common one is calculated with. */
function poundAsked(text: string, value: Quantity, what: string): RecipeFinding | undefined {
  if (!POUND.test(text)) return undefined;
  const each = POUNDS.map(({ name, grains }) => ({ name, mass: exact(`${grains} grain`) }));
  const [first, second] = each;
  const times = value.dividedBy(first!.mass);
  const list = each.map(({ name, mass }) => `${name} ${mass.times(times).to("g").format({ significant: 4 })}`);
  return {
    code: "recipe.ambiguous-unit",
    text: `${what}: which pound is meant in '${text}'? ${list.join(", ")}; calculated as ${first!.name}`,
    material: undefined,
    figure: second!.mass.dividedBy(first!.mass),
  };
}

/** A quantity of a recipe; both readings and a finding where the unit is ambiguous. */
function amountText(
  text: string | Quantity,
  what: string,
  pounds: boolean,
): { value: Quantity | undefined; finding?: RecipeFinding } {
  if (isQuantity(text)) return { value: text };
  try {
    const value = quantity(text);
    const asked = pounds ? poundAsked(text, value, what) : undefined;
    return asked === undefined ? { value } : { value, finding: asked };
  } catch (error) {
    if (!isPreparativeError(error) || error.code !== "quantity.ambiguous-unit") throw error;
    const [, number = "", unit = ""] = /^\s*([\d./\s-]+?)\s*([a-z ]+?)\.?\s*$/i.exec(text) ?? [];
    const both = (TWO_SIZED.find((row) => row.units.includes(unit.toLowerCase()))?.readings ?? []).map((one) =>
      quantity(`${number} ${one}` as "1 L"),
    );
    const shown = both.map((q) => `${q} is ${q.to("L").format({ significant: 4, uncertainty: "none" })}`).join(", ");
    return {
      value: undefined,
      finding: {
        code: "recipe.ambiguous-unit",
        text: `${what}: '${text}' does not name one unit${shown === "" ? `; ${error.hint ?? "say which"}` : `: ${shown}`}`,
        material: undefined,
        figure: both.length === 2 ? both[1]!.dividedBy(both[0]!) : undefined,
      },
    };
  }
}

/** The product of the recipe among the products of the last equation, and the carriers that lead to it. */
function routeTo(
  equations: readonly BalancedEquation[],
  wanted: Formula,
): { product: Species; firstCarrier: Species | undefined; carriers: Carrier[] } {
  const last = speciesOf(equations.at(-1)!.products);
  const product = last.find((s) => s.formula.hasSameComposition(wanted));
  if (product === undefined) {
    throw new PlanError("plan.no-such-product", `${wanted} is not a product of ${equations.at(-1)}`, {
      hint: `the products are ${last.map((s) => s.formula.toString()).join(", ")}`,
    });
  }
  const carriers: Carrier[] = [];
  let firstCarrier: Species | undefined;
  equations.slice(1).forEach((equation, i) => {
    const before = speciesOf(equations[i]!.products);
    const pairs = speciesOf(equation.reactants).flatMap((used) => {
      const made = before.find((s) => sameCore(s.formula, used.formula) && !isWater(s.formula));
      return made === undefined ? [] : [{ used, made }];
    });
    const pair = pairs[0];
    if (pair === undefined) {
      throw new PlanError("plan.request", `step ${i + 2} (${equation}) uses nothing that step ${i + 1} makes`);
    }
    if (i === 0) firstCarrier = pair.made;
    const after = speciesOf(equation.products);
    const next = equations[i + 2];
    const target =
      next === undefined
        ? after.find((s) => s.formula.equals(product.formula))!
        : after.find((s) => next.reactants.some((r) => sameCore(r.formula, s.formula)) && !isWater(s.formula));
    if (target === undefined) {
      throw new PlanError("plan.request", `step ${i + 3} uses nothing that step ${i + 2} (${equation}) makes`);
    }
    carriers.push({ used: pair.used.coefficient, formed: target.coefficient, name: target.name });
  });
  return { product, firstCarrier, carriers };
}

interface Notes {
  /** Is a pound asked about? */
  readonly pounds: boolean;
  readonly findings: RecipeFinding[];
  readonly unknown: string[];
}

/** Amount of substance in what the recipe gives; undefined with a note where it cannot be determined. */
function amountIn(material: Material, portion: Quantity, notes: Notes): Quantity | undefined {
  const { name } = material.shelf;
  const symbol = { mass: `m(${name})`, volume: `V(${name})` }[portion.dimension as "mass"] ?? `n(${name})`;
  const named = portion.named({ symbol, label: `${name} in the recipe` });
  if (portion.dimension === "amount of substance") return named;
  const { shelf } = material;
  if (portion.dimension === "volume" && shelf.strength === undefined && shelf.density === undefined) {
    notes.unknown.push(`strength or density of ${name}, for the amount in ${portion}`);
    return undefined;
  }
  return material.amountIn(named);
}

function readOne(given: RecipeMaterial, reactants: readonly Species[], notes: Notes): ReadMaterial {
  const forms = listOf(given.form);
  const first = forms[0];
  if (first === undefined) throw new PlanError("plan.request", `${given.name ?? "a material"} has no form`);
  const name = given.name ?? first;
  const { strength, assay, density, inExcess } = given;
  const readings = forms.map((form) => readMaterial({ name, form, strength, assay, density, inExcess }, reactants));
  const against = given.name === undefined || forms.length > 1 ? undefined : contradictionOf(name, readings[0]!.form);
  if (against !== undefined)
    notes.findings.push({ code: "recipe.name-contradicts-form", text: against, material: name, figure: undefined });
  const texts = listOf(given.amount);
  const read = texts.map((text) => amountText(text, name, notes.pounds));
  for (const { finding } of read) if (finding !== undefined) notes.findings.push({ ...finding, material: name });
  const portion = read[0]?.value;
  if (portion !== undefined) guard.positive(portion, name);
  if (portion === undefined) notes.unknown.push(`amount of ${name}`);
  const stated =
    given.statedAmount === undefined
      ? undefined
      : expectDimension(given.statedAmount, "amount of substance", `stated amount of ${name}`, {
          symbol: `n(${name})`,
          label: `${name}, as stated`,
        });
  const weighed = portion === undefined ? undefined : amountIn(readings[0]!, portion, notes);
  if (stated !== undefined && weighed !== undefined) {
    const share = stated.dividedBy(weighed).to("%");
    if (share.compare("101 %") > 0) {
      const holds = weighed.format({ significant: 3, uncertainty: "none" });
      notes.findings.push({
        code: "recipe.amount-impossible",
        text: `${name}: ${portion} contains at most ${holds}, the recipe counts on ${stated}`,
        material: name,
        figure: share,
      });
    }
  }
  return {
    given,
    name,
    material: readings[0]!,
    portion,
    // What the recipe counts on is used where it says so and the two are apart: pellets hold water.
    amount: stated !== undefined && weighed !== undefined && !isNear(stated, weighed) ? stated : (weighed ?? stated),
    readings: readings.map((material) => ({
      material,
      amount:
        portion === undefined ? undefined : amountIn(material, portion, { findings: [], unknown: [], pounds: false }),
    })),
    otherAmounts: read.slice(1).flatMap(({ value }, i) => {
      const amount = value === undefined ? undefined : amountIn(readings[0]!, value, notes);
      return amount === undefined ? [] : [{ text: String(texts[i + 1]), amount }];
    }),
  };
}

/** Two amounts that a rounded recipe takes for the same. */
const isNear = (a: Quantity, b: Quantity): boolean => {
  const ratio = a.dividedBy(b);
  return ratio.compare("0.98") > 0 && ratio.compare("1.02") < 0;
};

export function readRecipe(recipe: Recipe): ReadRecipe {
  const wanted = parseFormula(recipe.product);
  const written = listOf(recipe.equation).map((text) => balance(text));
  const equations = written.map((one, i) => (i === written.length - 1 ? inWantedForm(one, wanted) : one));
  const equation = equations[0];
  if (equation === undefined) throw new PlanError("plan.request", "a recipe needs an equation");
  const reactants = speciesOf(equation.reactants);
  const { product, firstCarrier, carriers } = routeTo(equations, wanted);
  const products = speciesOf(equation.products);
  const notes: Notes = { findings: [], unknown: [], pounds: !namesPound(recipe) };
  const materials = recipe.materials.filter((m) => m.aside !== true).map((given) => readOne(given, reactants, notes));
  const water = listOf(recipe.water).flatMap((text) => {
    const { value, finding } = amountText(text, "water", notes.pounds);
    if (finding !== undefined) notes.findings.push(finding);
    return value === undefined ? [] : [value];
  });
  const found = listOf(recipe.found).flatMap((text) => {
    const { value: q, finding } = amountText(text, "product found", notes.pounds);
    if (finding !== undefined) notes.findings.push(finding);
    if (q === undefined) return [];
    if (q.dimension === "mass") return q.named({ symbol: "m(found)", label: "product found" });
    return expectDimension(q, "mass fraction", "found");
  });
  const own = carriers.length === 0 ? products.find((s) => s.formula.equals(product.formula)) : undefined;
  return {
    equation,
    reactants,
    products,
    product: own ?? product,
    firstCarrier,
    carriers,
    later: equations
      .slice(1)
      .map((one) => ({ reactants: speciesOf(one.reactants), products: speciesOf(one.products) })),
    materials,
    wet:
      recipe.water !== undefined ||
      materials.some((m) => m.given.strength !== undefined) ||
      !isHeatedDry(reactants, products),
    water,
    found,
    findings: notes.findings,
    unknown: notes.unknown,
  };
}

// What the amounts of a recipe say: what is short, what is in large excess, which form was meant, what the carbonate of the shop
// really is.

import { ALKALI_METALS } from "../../element/internal";
import { type Formula, molarMass, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import { attempt } from "../../foundation/error";
import { constitutionOf } from "../../ion";
import { type Quantity, quantity } from "../../quantity";
import { type CarbonatePrecipitant, precipitatedCarbonate } from "../../solubility";
import { tryShopMaterial } from "../../substance";
import { takesBack } from "../planning/check-precipitation";
import { planned } from "../planning/exact";
import type { Supplied } from "../reaction/account";
import { isAcid } from "../reaction/acids";
import { keyElement } from "../reaction/candidates";
import { fateInRoom } from "../reaction/fate";
import { nameOfFormula, type Species, sameCore } from "../reaction/species";
import type { RecipeFigures } from "./figures";
import type { ReadMaterial } from "./read";
import type { RecipeFinding } from "./types";
import { shown } from "./words";

function precipitantShort({ read, account }: RecipeFigures): RecipeFinding[] {
  const key = keyElement(read.product.formula);
  if (account === undefined || key === undefined) return [];
  if (fateInRoom(read.product.formula).precipitated !== true) return [];
  const speciesOf = (s: Supplied): Species => read.reactants.find((r) => r.name === s.species)!;
  const carrier = account.supplied.find((s) => speciesOf(s).formula.count(key).n !== 0n);
  const limiting = account.supplied.find((s) => s.limiting)!;
  if (carrier === undefined || carrier.limiting) return [];
  const precipitant = speciesOf(limiting).formula;
  if (precipitant.count(key).n !== 0n || speciesOf(carrier).formula.symbols.length === 1) return [];
  if (isWater(precipitant)) return [];
  if (takesBack(precipitant, key)) return [];
  const share = quantity("1").dividedBy(carrier.timesStoichiometric).to("%");
  if (quantity("100 %").minus(share).compare(planned("shortage")) <= 0) return [];
  return [
    {
      code: "recipe.precipitant-short",
      text: `${limiting.material} is ${shown(share)} of what ${carrier.material} needs: ${key} stays in the liquor, and ${limiting.material} sets the yield`,
      material: limiting.material,
      figure: share,
    },
  ];
}

/** A reagent that runs out before a dissolved carrier of the product does, where nothing precipitates: complexes and crystals. */
function dissolvedShort({ read, account, theoreticalYield }: RecipeFigures): RecipeFinding[] {
  const key = keyElement(read.product.formula);
  // an alkali metal only balances the charge of a salt: nobody counts its yield by it
  if (account === undefined || key === undefined || !read.wet || ALKALI_METALS.has(key)) return [];
  if (fateInRoom(read.product.formula).precipitated === true) return [];
  const formulaOf = (s: Supplied): Formula => read.reactants.find((r) => r.name === s.species)!.formula;
  const carrier = account.supplied.find((s) => formulaOf(s).count(key).n !== 0n);
  const limiting = account.supplied.find((s) => s.limiting)!;
  if (carrier === undefined || carrier.limiting || formulaOf(limiting).count(key).n !== 0n) return [];
  // What does not dissolve by itself is put in to excess and filtered off: oxide, carbonate or metal into acid.
  if (fateInRoom(formulaOf(carrier)).precipitated !== false || isWater(formulaOf(limiting))) return [];
  const share = quantity("1").dividedBy(carrier.timesStoichiometric).to("%");
  if (quantity("100 %").minus(share).compare(planned("crystalShortage")) <= 0) return [];
  const most = theoreticalYield === undefined ? "" : `, and no more than ${shown(theoreticalYield)} can form`;
  return [
    {
      code: "recipe.reagent-short",
      text: `${limiting.material} is ${shown(share)} of what ${carrier.material} needs: the rest of it stays in the liquor${most}`,
      material: limiting.material,
      figure: share,
    },
  ];
}

function excessOf({ read, account, theoreticalYield }: RecipeFigures): RecipeFinding[] {
  if (account === undefined) return [];
  return account.supplied.flatMap((supplied): RecipeFinding[] => {
    const { given } = read.materials.find((m) => m.name === supplied.material)!;
    const times = supplied.timesStoichiometric;
    const figure = { material: supplied.material, figure: times };
    if (times.compare("0.995") < 0) {
      const most = theoreticalYield?.times(times).to("g");
      const end = most === undefined ? "" : `: no more than ${shown(most)} of ${read.product.name} can form`;
      return [
        {
          code: "recipe.reagent-short",
          text: `${supplied.material} is only ${shown(times)} times what the rest needs, although it is meant to be in excess${end}`,
          ...figure,
        },
      ];
    }
    if (given.inExcess === true || times.compare(planned("largeExcess")) <= 0) return [];
    return [
      {
        code: "recipe.large-excess",
        text: `${supplied.material} is ${shown(times)} times the need: the excess stays in the liquor, in the product or in the air`,
        ...figure,
      },
    ];
  });
}

/** How large the excess is, for one choice of forms: 0 is exactly stoichiometric. */
function misfit(choice: ReadonlyMap<ReadMaterial, Quantity>): { worst: number; times: Map<ReadMaterial, Quantity> } {
  const extents = [...choice].map(([m, n]) => n.dividedBy(m.material.species.coefficient));
  const smallest = extents.reduce((a, b) => (b.compare(a) < 0 ? b : a));
  const times = new Map([...choice.keys()].map((m, i) => [m, extents[i]!.dividedBy(smallest)]));
  const worst = Math.max(...[...times.values()].map((t) => Math.log(t.toNumber(""))));
  return { worst, times };
}

/** Materials whose form the recipe leaves open: what each reading would make of the ratios. */
function openForms({ read, account }: RecipeFigures): RecipeFinding[] {
  const counted = read.materials.filter((m) => m.amount !== undefined && m.given.inExcess !== true);
  return read.materials.flatMap((m): RecipeFinding[] => {
    if (m.readings.length < 2) return [];
    const asRead = m.readings.map(({ material, amount }) => {
      if (amount === undefined) return { material, words: "no amount", worst: undefined, amount };
      const choice = new Map(counted.map((other) => [other, other === m ? amount : other.amount!]));
      const { worst, times } = misfit(choice);
      const partner = [...times].find(([other]) => other !== m);
      const words =
        partner === undefined
          ? `${shown(amount)}`
          : `${shown(amount)}, with ${partner[0].name} ${shown(partner[1])} and itself ${shown(times.get(m) ?? quantity("1"))} times the need`;
      return { material, words, worst: partner === undefined ? undefined : worst, amount };
    });
    const judged = asRead.filter((r) => r.worst !== undefined).sort((a, b) => a.worst! - b.worst!);
    const [best, second] = judged;
    const clear = best !== undefined && second !== undefined && second.worst! - best.worst! > CLEARLY_BETTER;
    const list = asRead.map((r) => `as ${r.material.formName} ${r.words}`).join("; ");
    const end = clear ? `: ${best!.material.formName} fits` : ": the amounts do not show which";
    return [
      {
        code: "recipe.form-not-stated",
        text: `${m.name}: the form is not stated; ${list}${end}`,
        material: m.name,
        figure: account?.supplied.find((s) => s.material === m.name)?.timesStoichiometric,
      },
    ];
  });
}

/** Logarithm of the ratio by which one reading must be nearer to stoichiometric than the next: a quarter. */
const CLEARLY_BETTER = Math.log(1.25);

function otherCopies({ read, account }: RecipeFigures): RecipeFinding[] {
  const waters = read.water.length < 2 ? [] : [...read.water];
  const ofWater: RecipeFinding[] =
    waters.length === 0
      ? []
      : [
          {
            code: "recipe.readings-differ",
            text: `copies differ in the water: ${waters.map(String).join(", ")}`,
            material: undefined,
            figure: waters[1]!.dividedBy(waters[0]!),
          },
        ];
  const ofAmounts = read.materials.flatMap((m) =>
    m.otherAmounts.map(({ text, amount }): RecipeFinding => {
      const supplied = account?.supplied.find((s) => s.material === m.name);
      const ratio = m.amount === undefined ? undefined : amount.dividedBy(m.amount);
      const now =
        supplied === undefined || ratio === undefined
          ? ""
          : `, ${shown(supplied.timesStoichiometric.times(ratio))} instead of ${shown(supplied.timesStoichiometric)} times what the rest of the recipe uses`;
      return {
        code: "recipe.readings-differ",
        text: `${m.name}: another reading is ${text}${now}`,
        material: m.name,
        figure: ratio,
      };
    }),
  );
  return [...ofWater, ...ofAmounts];
}

/** Shop goods counted as pure though the trade sells them with less. */
function assayNotCounted({ read }: RecipeFigures): RecipeFinding[] {
  return read.materials.flatMap((m): RecipeFinding[] => {
    const { name, assay, strength } = m.given;
    if (name === undefined || assay !== undefined || strength !== undefined) return [];
    const shop = tryShopMaterial(name);
    if (!shop.ok) return [];
    const match = shop.value.candidates.find((c) => sameCore(parseFormula(c.formula), m.material.form));
    const upper = match?.assay?.upper;
    const lower = match?.assay?.lower;
    if (upper === undefined || lower === undefined || quantity(upper as "97 %").compare(planned("countsAsPure")) >= 0)
      return [];
    return [
      {
        code: "recipe.assay-not-counted",
        text: `${name} is counted as pure; it usually contains ${lower} to ${upper} of ${m.material.formName}, so the true theory is lower and the yield higher`,
        material: m.name,
        figure: quantity(upper as "97 %"),
      },
    ];
  });
}

/** The metal of a plain carbonate MCO3, with its charge. */
function normalCarbonate(text: string): string | undefined {
  const formula = parseFormula(text);
  if (formula.symbols.length !== 3 || !formula.symbols.includes("C") || !formula.symbols.includes("O"))
    return undefined;
  const metal = formula.symbols.find((s) => s !== "C" && s !== "O")!;
  const one = (symbol: string, n: bigint): boolean => formula.count(symbol).equals(n);
  return one(metal, 1n) && one("C", 1n) && one("O", 3n) ? metal : undefined;
}

const verdictOf = (metal: string, precipitant: CarbonatePrecipitant) => {
  const verdict = attempt(() => precipitatedCarbonate({ metal: `${metal}^2+`, precipitant }));
  return verdict.ok ? verdict.value : undefined;
};

/** Carbonates of the shop that are written as normal ones and are basic. */
function basicInTheShop({ read, account }: RecipeFigures): RecipeFinding[] {
  return read.materials.flatMap((m): RecipeFinding[] => {
    const written = m.given.writtenAs ?? m.material.form.toString();
    const metal = normalCarbonate(written);
    const verdict = metal === undefined ? undefined : verdictOf(metal, "soda");
    if (metal === undefined || verdict?.verdict !== "basic") return [];
    const basic = parseFormula(verdict.expected[0]!);
    const start = `${metal}CO3 is not what precipitates with soda or is sold: take it as ${nameOfFormula(basic)}`;
    const supplied = account?.supplied.find((s) => s.material === m.name);
    if (supplied === undefined || m.portion?.dimension !== "mass" || m.given.writtenAs !== undefined)
      return [{ code: "recipe.carbonate-is-basic", text: start, material: m.name, figure: undefined }];
    if (!read.reactants.some((s) => isAcid(s.formula)))
      return [{ code: "recipe.carbonate-is-basic", text: start, material: m.name, figure: undefined }];
    const metals = m.portion.dividedBy(molarMass(basic)).times(basic.count(metal));
    const times = metals.dividedBy(supplied.amount).times(supplied.timesStoichiometric);
    const verb = times.compare("1") >= 0 ? "still enough" : "then too little";
    return [
      {
        code: "recipe.carbonate-is-basic",
        text: `${start}; ${m.portion} then consumes ${shown(metals.times(2n).to("mmol"))} of H⁺, ${shown(times)} times the need: ${verb}`,
        material: m.name,
        figure: times,
      },
    ];
  });
}

/** Which precipitant a reactant is: the hydrogencarbonate or the carbonate of an alkali metal or of ammonium. */
function carbonatePrecipitant(formula: Formula): CarbonatePrecipitant | undefined {
  const { kind, cations, anions } = constitutionOf(formula);
  if (kind !== "salt" || anions.length !== 1 || !cations.every((ion) => SOLUBLE_CARBONATES.has(ion.formula)))
    return undefined;
  return anions[0]!.formula === "HCO3-" ? "bicarbonate" : anions[0]!.formula === "CO3^2-" ? "soda" : undefined;
}

/** Cations whose carbonates dissolve. */
const SOLUBLE_CARBONATES: ReadonlySet<string> = /* @__PURE__ */ new Set(["Na+", "K+", "NH4+"]);

/** A normal carbonate that this precipitant gives and the other kind does not, or that this one does not give. */
function turnsBasic({ read }: RecipeFigures): RecipeFinding[] {
  const metal = normalCarbonate(read.product.formula.toString());
  const kinds = read.reactants.map((s) => carbonatePrecipitant(s.formula));
  const kind = kinds.find((one) => one === "bicarbonate") ?? kinds.find((one) => one === "soda");
  if (metal === undefined || kind === undefined) return [];
  const here = verdictOf(metal, kind);
  const there = verdictOf(metal, kind === "soda" ? "bicarbonate" : "soda");
  if (here === undefined || there === undefined || (here.verdict === "normal" && there.verdict === "normal")) return [];
  const words =
    here.verdict === "normal"
      ? `${metal}CO3 precipitates with ${kind}; with ${kind === "soda" ? "bicarbonate" : "plain soda"} the basic carbonate ${there.expected[0]} would`
      : `${kind} does not give ${metal}CO3 but ${here.expected[0]}`;
  return [{ code: "recipe.carbonate-turns-basic", text: words, material: undefined, figure: here.index }];
}

export function ratioFindings(figures: RecipeFigures): RecipeFinding[] {
  return [
    ...precipitantShort(figures),
    ...dissolvedShort(figures),
    ...excessOf(figures),
    ...openForms(figures),
    ...otherCopies(figures),
    ...assayNotCounted(figures),
    ...basicInTheShop(figures),
    ...turnsBasic(figures),
  ];
}

// Oxide equivalents, as potters and geologists state a composition: zinc carbonate as so much ZnO.

import { elementOf, symbolAt } from "../../element/internal";
import type { Fields } from "../../foundation/argument";
import { Fraction } from "../../foundation/fraction";
import { withPlainJSON } from "../../foundation/plain-json";
import type { Quantity, QuantityLike } from "../../quantity";
import { combinationOf, expectDimension, multiply, rational, toRational } from "../../quantity/internal";
import { guard } from "../argument";
import { FormulaError } from "../error";
import { asFormula, type Formula, parseFormula } from "../formula";
import { molarMass } from "./molar-mass";
import { MASS, type MolarMassOptions, needMassOptions } from "./options";

// The oxide an element is stated as (common practice in rock and glaze analysis, no source). Iron and manganese have
// other conventions too; the caller names the oxide then.
const OXIDES = { ...MASS, oxides: true } as const satisfies Fields<NonNullable<Parameters<typeof oxideEquivalents>[1]>>;

const MASS_AS = { ...MASS, element: true } as const satisfies Fields<NonNullable<Parameters<typeof massAs>[3]>>;

const USUAL_OXIDES =
  "Li2O Na2O K2O Rb2O Cs2O BeO MgO CaO SrO BaO B2O3 Al2O3 SiO2 P2O5 SO3 TiO2 V2O5 Cr2O3 MnO Fe2O3 CoO NiO CuO ZnO Ga2O3 " +
  "GeO2 As2O3 SeO2 Y2O3 ZrO2 Nb2O5 MoO3 Ag2O CdO In2O3 SnO2 Sb2O3 TeO2 La2O3 CeO2 Pr2O3 Nd2O3 Sm2O3 Eu2O3 Gd2O3 Tb2O3 " +
  "Dy2O3 Ho2O3 Er2O3 Tm2O3 Yb2O3 Lu2O3 HfO2 Ta2O5 WO3 PbO Bi2O3 ThO2 UO2 H2O CO2";

/** One oxide that a material counts as. */
export interface OxideEquivalent {
  /** Formula of the oxide, such as `K2O`. */
  readonly oxide: Formula;
  /** Moles of oxide per mole of the material, exactly. */
  readonly amount: Fraction;
  /** Mass of oxide per mass of material, as a number, with standard uncertainty. */
  readonly massFraction: Quantity<"number">;
}

/** The element that an oxide (or any other basis) stands for: the only one besides oxygen, or hydrogen in water. */
function keyElement(basis: Formula, material: Formula, wanted: string | undefined): number {
  const inMaterial = new Set(material.elementIndices);
  const candidates = basis.elementIndices.filter((index) => inMaterial.has(index));
  if (wanted !== undefined) {
    const chosen = candidates.find((index) => symbolAt(index) === wanted);
    if (chosen !== undefined) return chosen;
  } else {
    const others = candidates.filter((index) => symbolAt(index) !== "O");
    if (others.length === 1) return others[0]!;
    if (others.length === 0 && basis.size === 1 && candidates.length === 1) return candidates[0]!;
    if (others.length > 1) {
      throw new FormulaError("formula.ambiguous-basis", `${basis} and ${material} share more than one element`, {
        hint: `name the element: { element: "${symbolAt(others[0]!)}" }`,
        details: { shared: others.map(symbolAt) },
      });
    }
  }
  throw new FormulaError("formula.no-common-element", `${material} contains nothing that ${basis} could stand for`, {
    details: { basis: basis.toString(), material: material.toString() },
  });
}

function countOf(formula: Formula, index: number): { n: bigint; d: bigint } {
  const i = formula.elementIndices.indexOf(index);
  return { n: BigInt(formula.numeratorAt(i)), d: BigInt(formula.denominator) };
}

/** Moles of `basis` that hold as much of the element as one mole of `material`. */
function molesOf(basis: Formula, material: Formula, index: number): { n: bigint; d: bigint } {
  const a = countOf(material, index);
  const b = countOf(basis, index);
  return rational(a.n * b.d, a.d * b.n);
}

function fractionAs(basis: Formula, material: Formula, index: number, options: MolarMassOptions): Quantity {
  const moles = molesOf(basis, material, index);
  const mass = molarMass(basis, options);
  const source = {
    sum: () => multiply(moles, toRational(mass.in("g/mol"))),
    named: () => ({
      symbol: `m(${basis.toUnicode()})`,
      label: `${basis.toUnicode()} equivalent to one mole of ${material.toUnicode()}`,
      rule: `mass as ${basis.toUnicode()} = moles of ${symbolAt(elementOf(index))} × M(${basis.toUnicode()}) / atoms in ${basis.toUnicode()}`,
    }),
    terms: () => [{ coefficient: moles, quantity: mass }],
  };
  const portion = combinationOf(source, "g/mol");
  return portion.dividedBy(molarMass(material, options)).named({
    symbol: `w(${basis.toUnicode()})`,
    label: `mass of ${basis.toUnicode()} per mass of ${material.toUnicode()}`,
    rule: "oxide equivalent = mass of oxide / mass of material",
  });
}

/**
 * What a material counts as in oxides: for each element the mass of its usual oxide per mass of material, in the order of
 * the formula. Carbonate counts as CO2 and hydrogen as H2O, so that a simple salt of oxides adds up to one.
 *
 * @param formula - formula text or `Formula` of the material
 * @param options - `oxides` names other oxides, such as `["FeO"]`; atomic weights as in {@link molarMass}
 * @returns oxide, exact moles per mole, and mass per mass; elements that have no usual oxide are left out
 * @throws {FormulaError} all codes of {@link parseFormula}, `formula.bad-option`
 * @throws {ElementError} `element.no-atomic-weight`
 * @source which oxide is usual: common practice, no source
 * @category Formulas
 * @example
 * oxideEquivalents("ZnCO3").map((e) => `${e.oxide} ${e.massFraction.format({ decimals: 4 })}`) // => ["ZnO 0.6490", "CO2 0.3510"]
 */
export function oxideEquivalents(
  formula: string | Formula,
  options: MolarMassOptions & { readonly oxides?: readonly string[] | undefined } = {},
): OxideEquivalent[] {
  const material = asFormula(formula, "formula");
  needMassOptions(options, OXIDES);
  if (options.oxides !== undefined) guard.list(options.oxides, "oxides");
  const { oxides = [], ...weights } = options;
  const named = oxides.map((oxide) => parseFormula(oxide));
  const usual = USUAL_OXIDES.split(" ").map((oxide) => parseFormula(oxide));
  const out: OxideEquivalent[] = [];
  const done = new Set<number>();
  for (const index of material.elementIndices) {
    const element = elementOf(index);
    if (symbolAt(element) === "O" || done.has(element)) continue;
    done.add(element);
    const holds = (oxide: Formula): boolean => oxide.elementIndices.includes(index);
    const oxide = named.find(holds) ?? usual.find(holds);
    if (oxide === undefined) continue;
    const moles = molesOf(oxide, material, index);
    out.push(
      withPlainJSON({
        oxide,
        amount: new Fraction(moles.n, moles.d),
        massFraction: fractionAs(oxide, material, index, weights),
      }),
    );
  }
  return out;
}

/**
 * Mass of a material stated as something else that holds the same amount of one element: zinc carbonate as ZnO, a
 * phosphate as P2O5, a nitrate as N.
 *
 * @param mass - mass of the material
 * @param of - formula of the material
 * @param as - formula to state it as; the element meant is the only one shared besides oxygen
 * @param options - `element` names the shared element where there are several
 * @returns mass of `as`, in the unit of `mass`
 * @throws {FormulaError} `formula.ambiguous-basis`, `formula.no-common-element`, `formula.bad-option`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @category Formulas
 * @example
 * massAs("100.0 g", "ZnCO3", "ZnO").format({ decimals: 2 }) // => "64.90 g"
 */
export function massAs(
  mass: QuantityLike,
  of: string | Formula,
  as: string | Formula,
  options: MolarMassOptions & { readonly element?: string | undefined } = {},
): Quantity<"mass"> {
  const given = expectDimension(mass, "mass", "the mass of the material");
  const material = asFormula(of, "of");
  const basis = asFormula(as, "as");
  needMassOptions(options, MASS_AS);
  if (options.element !== undefined) guard.text(options.element, "element");
  const { element, ...weights } = options;
  const index = keyElement(basis, material, element);
  const fraction = fractionAs(basis, material, index, weights);
  return given
    .times(fraction)
    .to(given.unit)
    .named({
      symbol: `m(as ${basis.toUnicode()})`,
      label: `mass stated as ${basis.toUnicode()}`,
      rule: "mass of oxide = mass of material × oxide equivalent",
    });
}

/** Options of the functions that build on a molar mass. */

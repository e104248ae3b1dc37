// The saturated solution of a sparingly soluble solid: what of it dissolves beside what is there already.

import { molarMass } from "../../formula";
import { lazily } from "../../foundation/lazy";
import { type Quantity, quantity } from "../../quantity";
import { soluteOf } from "../curves/solute";
import { isHydroxide, sameIon } from "./given-ions";
import type { DissolvedIon } from "./product";
import { allIn, freeIn, type MixedIon, mixtureOf, nameOfForm, type Way } from "./way";

/** What dissolves of a sparingly soluble salt. */
export interface DissolvedAmount {
  /** Formula units of the solid per litre. */
  readonly concentration: Quantity<"concentration">;
  /** Mass of the solid per litre. */
  readonly massConcentration: Quantity<"density">;
  /** Each free ion in the saturated solution; what complexes bind is not counted. */
  readonly ions: readonly { readonly formula: string; readonly concentration: Quantity<"concentration"> }[];
  /** All dissolved metal over free metal; 1 where nothing binds it. */
  readonly complexation: number;
  /** Of the saturated solution. */
  readonly pH: Quantity<"number">;
  /** Of the saturated solution. */
  readonly ionicStrength: Quantity<"molality">;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** The solubility product a question is about. */
export interface Constant {
  readonly solid: string;
  readonly form: string | undefined;
  readonly ions: readonly DissolvedIon[];
  readonly k: Quantity;
  readonly pKsp: Quantity;
  readonly warnings: readonly string[];
}

/** The metal of a salt, or the molecule of what dissolves as one. */
export const leading = (ions: readonly DissolvedIon[]): DissolvedIon =>
  ions.find(({ charge }) => charge > 0) ?? ions[0]!;

export const isOf = (list: readonly MixedIon[], formula: string): boolean =>
  list.some((one) => sameIon(one.formula, formula));

/** No solid is looked for in more than this many moles a litre. */
const MOST = 1000;

/**
 * The saturated solution: so much of the solid is put in that some is left, and not so much more that nothing but the solid
 * counts. Undefined where nothing dissolves, or the solid has no place among the reactions.
 */
export function saturated(
  way: Way,
  constant: Constant,
  there: readonly MixedIon[],
  exponent: number,
): DissolvedAmount | undefined {
  const { ions, pKsp } = constant;
  const counts = ions.reduce((all, { count }) => all + count, 0);
  const powers = ions.reduce((all, { count }) => all + count * Math.log10(count), 0);
  const alone = 10 ** ((exponent - pKsp.toNumber() - powers) / counts);
  // the ion that nobody brought tells what dissolves without a difference
  const teller =
    ions.find(({ formula, charge }) => charge > 0 && !isOf(there, formula)) ??
    ions.find(({ formula }) => !isHydroxide(formula) && !isOf(there, formula)) ??
    leading(ions);
  const litre = quantity("1 L");
  for (let moles = 3 * alone; moles <= MOST; moles *= 10) {
    const liquor = mixtureOf(way, { ions: there, volume: litre, only: [nameOfForm(constant)], solid: { ions, moles } });
    if (liquor.solids.length === 0) continue;
    const all = allIn(liquor, teller.formula, `${teller.formula} dissolved`);
    if (all === undefined) return undefined;
    const before = there.find(({ formula }) => sameIon(formula, teller.formula));
    const setFree = before === undefined ? all : all.minus(before.amount.dividedBy(litre));
    if (!setFree.isPositive()) return undefined;
    return figuresOf(liquor, constant, setFree.dividedBy(String(teller.count)).to("mol/L"), way);
  }
  return undefined;
}

function figuresOf(
  liquor: ReturnType<typeof mixtureOf>,
  { ions, solid, warnings }: Constant,
  dissolved: Quantity,
  way: Way,
): DissolvedAmount {
  const concentration = dissolved.named({
    symbol: "s",
    label: `${solid} that dissolves`,
    rule: "ion set free in all its forms / count",
    ...(way.reactions !== undefined && { assumption: "no reactions but those named" }),
  }) as Quantity<"concentration">;
  const metal = leading(ions);
  const free = (formula: string) => freeIn(liquor, formula, `free ${formula} in the saturated solution`);
  return lazily<DissolvedAmount>({
    concentration: () => concentration,
    massConcentration: () =>
      concentration
        .times(molarMass(soluteOf(solid).formula))
        .to("g/L")
        .named({ label: "mass that dissolves per litre", rule: "s × molar mass" }) as Quantity<"density">,
    ions: () => ions.map(({ formula }) => ({ formula, concentration: free(formula) })),
    complexation: () =>
      allIn(liquor, metal.formula, "all metal")!.toNumber("mol/L") / free(metal.formula).toNumber("mol/L"),
    pH: () => liquor.pH,
    ionicStrength: () => liquor.ionicStrength,
    warnings: () => [...warnings, ...liquor.warnings.filter((text) => !warnings.some((one) => text.endsWith(one)))],
  });
}

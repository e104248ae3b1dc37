// Crystals of a double salt whose solubility no table has: how many of them are usual, and what heat tells of them.
import { parseFormula } from "../../formula";
import { anhydrousOf, crystalWater } from "../../hydrate";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import type { Plan } from "../plan";
import { exact, planned } from "../planning/exact";
import { doubleSaltOf } from "../reaction/double-salt";
import { leftOnIgnition } from "./tests";

type Grown = Pick<Plan, "isolation" | "product" | "weighings">;

const isDoubleSalt = ({ isolation, product }: Grown): boolean => {
  const { cations, complex } = constitutionOf(parseFormula(product.formula));
  return isolation.how === "unknown" && complex === undefined && cations.length > 1;
};

/** What a first crop of a double salt usually is; undefined for any other, or where its solubility is known. */
export const usualFirstCrop = (plan: Grown): Quantity | undefined =>
  isDoubleSalt(plan) ? plan.product.theoreticalYield.times(planned("firstDoubleCrop")).to("g") : undefined;

/** A sample of so many steps of the balance shows one part in a hundred. */
export const STEPS_OF_SAMPLE = 100;

/** A solid that crystals may hold, and its share of water. */
interface Held {
  readonly formula: string;
  readonly loss: Quantity;
}

/** What heat takes of a double salt, and of the solids that it may be mixed with. */
interface LossByHeat {
  readonly loss: Quantity;
  readonly condition: string | undefined;
  /** What it came from, and its lower hydrate, by what they lose. */
  readonly less: readonly Held[];
  readonly more: readonly Held[];
}

/** The water of a solid as a share of it; undefined where heat takes more, or nobody knows what is left. */
function waterOf(text: string): (Held & { readonly condition: string | undefined }) | undefined {
  const formula = parseFormula(text);
  const held = { formula: formula.toUnicode() };
  const left = leftOnIgnition(formula);
  if (left !== undefined)
    return parseFormula(left.residue).hasSameComposition(anhydrousOf(formula))
      ? { ...held, loss: exact("100 %").minus(left.share).to("%"), condition: left.condition }
      : undefined;
  return crystalWater(formula).waters.n === 0n ? { ...held, loss: exact("0 %"), condition: undefined } : undefined;
}

/** What a heated sample of a hydrated double salt tells; undefined where heat takes more than its water. */
export function lossOfDoubleSalt(plan: Grown): LossByHeat | undefined {
  const own = isDoubleSalt(plan) ? waterOf(plan.product.formula) : undefined;
  if (own === undefined || own.loss.isZero()) return undefined;
  const lower = doubleSaltOf(parseFormula(plan.product.formula))?.turns?.into;
  const others = [...(lower === undefined ? [] : [lower]), ...plan.weighings.map(({ form }) => form)].flatMap(
    (text) => waterOf(text) ?? [],
  );
  return {
    loss: own.loss,
    condition: own.condition,
    less: others.filter(({ loss }) => loss.compare(own.loss) < 0),
    more: others.filter(({ loss }) => loss.compare(own.loss) > 0),
  };
}

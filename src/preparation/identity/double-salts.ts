// Crystals of a double salt: how many of them are usual where no table has its solubility, and what heat tells of them.
import { parseFormula } from "../../formula";
import { anhydrousOf, crystalWater } from "../../hydrate";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import type { Plan } from "../plan";
import { exact, planned } from "../planning/exact";
import { doubleSaltOf } from "../reaction/double-salt";
import { usuallyBrought } from "../reaction/with-alcohol";
import { leftOnIgnition } from "./tests";
import { driedBy, keptAt } from "./water-window";

type Grown = Pick<Plan, "isolation" | "product" | "weighings">;

/** Is it a salt of two metals that grows from its two salts, one of which its crystals may hold beside it? */
const isDoubleSalt = ({ isolation: { how }, product, weighings }: Grown): boolean => {
  const { cations, complex } = constitutionOf(parseFormula(product.formula));
  const grows = how === "unknown" || (how === "crystallise" && weighings.length > 1);
  return grows && complex === undefined && cations.length > 1;
};

/** What a first crop of a double salt usually is; undefined for any other, or where its solubility is known. */
export const usualFirstCrop = (plan: Grown): Quantity | undefined =>
  plan.isolation.how === "unknown" && isDoubleSalt(plan)
    ? plan.product.theoreticalYield.times(planned("firstDoubleCrop")).to("g")
    : undefined;

/** The least that alcohol on the table usually brings out of a complex; undefined for any other product, and for too little of it. */
export const usualByAlcohol = ({ product, steps }: Pick<Plan, "product" | "steps">): Quantity | undefined =>
  usuallyBrought(parseFormula(product.formula)) === undefined
    ? undefined
    : steps.find(
        ({ operation, put, onceMoreBelow }) => onceMoreBelow !== undefined && operation === "hold" && put.length === 0,
      )?.onceMoreBelow;

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

/** The water of a solid as a share of it, heated as hot as that; undefined where heat takes more, or nobody knows what is left. */
function waterOf(text: string, at?: number): (Held & { readonly condition: string | undefined }) | undefined {
  const formula = parseFormula(text);
  const held = { formula: formula.toUnicode() };
  const kept = at === undefined ? undefined : keptAt(formula, at);
  if (kept !== undefined) return { ...held, loss: exact("100 %").minus(kept).to("%"), condition: undefined };
  const left = leftOnIgnition(formula);
  if (left !== undefined)
    return parseFormula(left.residue).hasSameComposition(anhydrousOf(formula))
      ? { ...held, loss: exact("100 %").minus(left.share).to("%"), condition: left.condition }
      : undefined;
  return crystalWater(formula).waters.n === 0n ? { ...held, loss: exact("0 %"), condition: undefined } : undefined;
}

/** Materials of an ammonium double salt without ammonium, which give no ammonia with lye as it does; undefined for any other product. */
export const withoutAmmonia = (plan: Grown): readonly string[] | undefined =>
  isDoubleSalt(plan) && madeOf(parseFormula(plan.product.formula)).ammonium
    ? plan.weighings.map(({ form }) => form).filter((form) => !madeOf(parseFormula(form)).ammonium)
    : undefined;

/** What a heated sample of a hydrated double salt tells; undefined where heat takes more than its water, as ammonia near it. */
export function lossOfDoubleSalt(plan: Grown): LossByHeat | undefined {
  const own = isDoubleSalt(plan) && withoutAmmonia(plan) === undefined ? waterOf(plan.product.formula) : undefined;
  if (own === undefined || own.loss.isZero()) return undefined;
  const formula = parseFormula(plan.product.formula);
  const lower = doubleSaltOf(formula)?.turns?.into;
  const at = driedBy(formula);
  const others = [...(lower === undefined ? [] : [lower]), ...plan.weighings.map(({ form }) => form)].flatMap(
    (text) => waterOf(text, at) ?? [],
  );
  return {
    loss: own.loss,
    condition: own.condition,
    less: others.filter(({ loss }) => loss.compare(own.loss) < 0),
    more: others.filter(({ loss }) => loss.compare(own.loss) > 0),
  };
}

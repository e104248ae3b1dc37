// What a batch makes as the next preparation takes it: how much of it is the product, and what else stands or dissolves in it, by
// the books of the vessel at the end. A titration says more than the books, and goes before them.
import type { Formula } from "../../formula";
import { frozen } from "../../foundation/frozen";
import { type Quantity, quantity } from "../../quantity";
import type { Contents } from "../contents/contents";
import { keyOfFormula } from "../reaction/species";
import { guard } from "../request/argument";
import type { ShelfMaterial } from "../request/request";
import { shareOf } from "../shelf/strength";
import type { Batch } from "./batch";
import { planned } from "./exact";

/** What a dry product is. */
export interface DryProduct {
  /** Mass fraction of the product. */
  readonly assay: Quantity<"number">;
  /** What else is known to be in it, by mass of the whole, the most first. */
  readonly also: readonly { readonly formula: string; readonly key: string; readonly share: Quantity<"number"> }[];
}

/** Figures of a share: finer than any balance it is weighed on. */
const FIGURES = 5;

const share = (percent: string, symbol: string, label: string): Quantity<"number"> =>
  quantity({ value: percent, unit: "%" }, { symbol, label }) as Quantity<"number">;

/**
 * What stands in a vessel, as a product with what comes along. Traces are left out as if they were not there; what nobody knows
 * lowers the assay and has no name. Undefined where none of the product stands.
 *
 * @param titrated - assay that was found; nothing is purer than the rest allows
 */
export function dryProductOf(
  { solids, other }: Pick<Contents, "solids" | "other">,
  product: Formula,
  titrated?: Quantity,
): DryProduct | undefined {
  const key = keyOfFormula(product.toString());
  const own = solids.find((one) => one.key === key);
  if (own === undefined || !own.mass.isPositive()) return undefined;
  const name = own.formula;
  const whole = solids.reduce((all, { mass }) => all.plus(mass), other as Quantity);
  const isTrace = (mass: Quantity): boolean => mass.compare(whole.times(planned("trace"))) < 0;
  const foreign = solids.filter((one) => one !== own && !isTrace(one.mass));
  const counted = [own, ...foreign].reduce(
    (all, { mass }) => all.plus(mass),
    isTrace(other) ? other.minus(other) : other,
  );
  const percent = (mass: Quantity): string => mass.dividedBy(counted).in("%").toSignificantDigits(FIGURES).toFixed();
  const also = foreign
    .map(({ formula, key: its, mass }) => ({
      formula,
      key: its,
      share: share(percent(mass), `w(${formula})`, `share of ${formula} in ${name}`),
    }))
    .sort((a, b) => b.share.compare(a.share) || (a.key < b.key ? -1 : 1));
  const named = also.reduce((left, one) => left.minus(one.share.in("%")), quantity("100 %").in("%"));
  const unnamed = isTrace(other) ? named : named.minus(percent(other));
  const found = titrated?.in("%");
  const value = found === undefined ? unnamed : found.lessThan(named) ? found : named;
  return { assay: share(value.toFixed(), `w(${name})`, `assay of ${name}`), also };
}

/** With every digit: an assay that is rounded up would come to more than the whole, with what stands beside it. */
const inFull = (one: Quantity): `${number} %` => `${one.in("%").toNumber()} %`;
const inShort = (one: Quantity): `${number} %` => `${Number(one.in("%").toPrecision(FIGURES))} %`;

/** What stands dry, or the liquor that is kept, as a material of the shelf. */
function handedOn(
  { steps, keptLiquor }: Pick<Batch, "steps" | "keptLiquor">,
  product: Formula,
  titrated?: Quantity,
): Pick<ShelfMaterial, "assay" | "strength" | "also"> {
  const after = steps.at(-1)?.after;
  const dry = keptLiquor === undefined && after !== undefined ? dryProductOf(after, product, titrated) : undefined;
  const also = (keptLiquor ?? dry)?.also ?? [];
  return {
    ...(keptLiquor === undefined ? {} : { strength: inShort(keptLiquor.strength) }),
    ...(dry === undefined || dry.assay.compare("100 %") >= 0 ? {} : { assay: inFull(dry.assay) }),
    ...(also.length === 0
      ? {}
      : { also: also.map(({ formula, share: part }) => ({ form: formula, share: inShort(part) })) }),
  };
}

/** What a batch makes as a material of the shelf; an assay that was titrated goes before the one that is computed. */
export function materialPlanned(
  batch: Pick<Batch, "steps" | "keptLiquor" | "product">,
  product: Formula,
  title: string,
  options: { readonly name?: string; readonly assay?: ShelfMaterial["assay"] },
): ShelfMaterial {
  guard.fields(options, { name: true, assay: true });
  const { name = batch.product.name, assay } = options;
  const titrated =
    assay === undefined ? undefined : shareOf(assay, "assay", "1", { label: `assay of ${batch.product.name}` });
  const form = product.toString();
  return frozen({ name, form, ...handedOn(batch, product, titrated), note: `from ${title}` });
}

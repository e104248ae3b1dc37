// What was lost on the way, and how much of the product went with it: its share of what was in the vessel at that step, and
// never more than that.

import type { MassLike, VolumeLike } from "../../amount";
import { parseFormula } from "../../formula";
import { type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import type { Contents } from "../contents/contents";
import { PlanError } from "../error";
import type { Operation } from "../operation/operation";
import type { Batch } from "../planning/batch";
import { exact, planned } from "../planning/exact";
import { POT } from "../procedure/bench";
import type { ProcedureStep } from "../procedure/step";
import { handOf } from "../procedure/words";
import { keyElement } from "../reaction/candidates";
import { guard } from "../request/argument";
import type { Setting } from "../request/setting";
import { precipitatedOf, yieldOfSteps } from "./crops";

/** What was lost: at a step, of a part of what was in the vessel. */
export interface Lost {
  /** Step of the work at which it happened; at the first filter unless given. */
  readonly at?: Operation | undefined;
  /** The liquid alone, the wet cake, or the dry product. Left out it is all that was in the vessel; a mass without a step is dry product. */
  readonly of?: "liquor" | "cake" | "product" | undefined;
  /** Of what was lost, where it was measured by volume. */
  readonly volume?: VolumeLike | undefined;
  /** Of what was lost, where it was weighed. */
  readonly mass?: MassLike | undefined;
}

/** A loss and what went with it. */
export interface Loss {
  /** What was lost where, for a person to read. */
  readonly text: string;
  /** As recorded. */
  readonly amount: Quantity<"mass"> | Quantity<"volume">;
  /** Product, or what would have become product, that went with it. */
  readonly product: Quantity<"mass">;
  /** What went of it at the least: less than `product` where liquor was lost that solid was stirred up in. */
  readonly atLeast: Quantity<"mass">;
  /** And at the most. */
  readonly atMost: Quantity<"mass">;
  /** More was recorded than there was. */
  readonly bounded: boolean;
}

const PARTS = ["liquor", "cake", "product"] as const;

const OPERATIONS: readonly Operation[] = [
  "weigh",
  "dissolve",
  "dilute",
  "suspend",
  "add",
  "heat",
  "hold",
  "concentrate",
  "cool",
  "seed",
  "filter",
  "wash",
  "rinse",
  "dry",
  "fire",
  "collect",
];

/** Steps at which the contents as they were before are lost: afterwards they are parted. */
const PARTING: readonly Operation[] = ["filter", "wash", "rinse", "dry", "fire", "collect"];

const refused = (problem: string, hint?: string): PlanError =>
  new PlanError("plan.observation", problem, hint === undefined ? undefined : { hint });

/** A spill is estimated; one with an uncertainty of its own keeps that. */
function estimated(like: MassLike | VolumeLike, argument: string, dimension: "mass" | "volume"): Quantity {
  const given = expectDimension(like, dimension, argument);
  guard.positive(given, argument);
  const naming = { symbol: `${dimension === "mass" ? "m" : "V"}(lost)`, label: "lost, as recorded" };
  if (given.standardUncertainty !== undefined) return given.named(naming);
  const halfWidth = given.value.times(planned("spill").in("")).toString();
  return quantity(
    { value: given.value.toString(), unit: given.unit, halfWidth, distribution: "rectangular" },
    { ...naming, assumption: "a spill is an estimate" },
  );
}

/** A recorded loss with its quantity read. */
export interface LostRead extends Pick<Lost, "at" | "of"> {
  readonly amount: Quantity;
}

export function readLosses(lost: readonly Lost[] | undefined): readonly LostRead[] {
  return (lost ?? []).map(({ at, of, volume, mass }, i) => {
    const place = `lost[${i}]`;
    if (at !== undefined && !OPERATIONS.includes(at))
      throw refused(`${place}.at: no operation is called '${String(at)}'`, OPERATIONS.join(", "));
    if (of !== undefined && !PARTS.includes(of))
      throw refused(`${place}.of must be liquor, cake or product, not '${String(of)}'`);
    if ((volume === undefined) === (mass === undefined))
      throw refused(`${place} needs a volume or a mass, one of the two`);
    if (volume !== undefined && (of === "cake" || of === "product"))
      throw refused(`${place}: ${of} that is lost is given as a mass`);
    const amount =
      mass === undefined ? estimated(volume!, `${place}.volume`, "volume") : estimated(mass, `${place}.mass`, "mass");
    return { at, of: of ?? (mass !== undefined && at === undefined ? "product" : undefined), amount };
  });
}

/** Part of the whole product that is in a vessel, or dissolved in it; undefined where no element tells. */
type Share = (contents: Contents, part: "all" | "dissolved") => Quantity | undefined;

function shareOfProduct({ product }: Setting, batch: Batch): Share {
  const key = keyElement(product.formula);
  if (key === undefined) return () => undefined;
  const whole = batch.product.amount.times(product.formula.count(key));
  return ({ solids, dissolved }, part) => {
    const inside = part === "all" ? [...solids, ...dissolved] : dissolved;
    const atoms = inside.map(({ formula, amount }) => amount.times(parseFormula(formula).count(key)));
    return atoms.reduce((all, one) => all.plus(one), exact("0 mol")).dividedBy(whole);
  };
}

const contentsAt = ({ operation, before, after }: ProcedureStep): Contents =>
  PARTING.includes(operation) ? before : after;

const firstFilter = ({ steps }: Batch): ProcedureStep | undefined =>
  steps.find(({ operation, vessel }) => operation === "filter" && vessel === POT);

/** The step a loss happened at; of several alike, the first that has something of the product in it. */
function stepOf({ at }: LostRead, batch: Batch, share: Share): ProcedureStep {
  const { steps } = batch;
  if (at === undefined) return firstFilter(batch) ?? steps.at(-1)!;
  const alike = steps.filter(({ operation }) => operation === at);
  if (alike.length === 0)
    throw refused(
      `this plan has no step '${at}' at which anything could be lost`,
      [...new Set(steps.map(({ operation }) => operation))].join(", "),
    );
  return alike.find((step) => share(contentsAt(step), "all")?.isPositive() === true) ?? alike[0]!;
}

/** Nothing to all, each as likely as the next. */
const anyPart = (): Quantity =>
  quantity(
    { value: "50", unit: "%", halfWidth: "50", distribution: "rectangular" },
    { symbol: "w(solid)", label: "of the solid in it that went with a liquor", assumption: "nothing to all of it" },
  );

const atMost = (q: Quantity, most: Quantity): Quantity => (q.compare(most) > 0 ? most : q);

const asLiquid = (mass: Quantity): Quantity => mass.dividedBy(exact("1 g/mL")).to("mL");

/** What a vessel contains, or its liquid alone, as the loss is measured: the liquid counts with the density of water. */
function thereIn({ mass, volume, solids }: Contents, { amount, of }: LostRead): Quantity {
  const liquid = solids.reduce<Quantity>((rest, one) => rest.minus(one.mass), mass);
  if (amount.dimension === "mass") return of === "liquor" ? liquid : mass;
  return of === "liquor" ? asLiquid(liquid) : (volume ?? asLiquid(mass));
}

function lossOf(lost: LostRead, setting: Setting, batch: Batch, wetCake: Quantity | undefined): Loss {
  const { amount, of } = lost;
  const theory = batch.product.theoreticalYield;
  const share = shareOfProduct(setting, batch);
  const { grams, litres } = handOf(setting.steps);
  /** No finer than the balance and the cylinder. */
  const shown = (q: Quantity): string => (q.dimension === "mass" ? grams(q) : litres(q));
  const naming = { symbol: "m(product, lost)", label: `${batch.product.name} lost on the way` };
  /** Of what there was and of the product in it, the part that went; anything up to what was stirred up with it may have gone too. */
  const made = (there: Quantity, inside: Quantity, what: string, stirred?: Quantity): Loss => {
    const bounded = amount.compare(there) > 0;
    const part = bounded || !there.isPositive() ? exact("1") : amount.dividedBy(there);
    const partOf = (whole: Quantity): Quantity => atMost(whole, theory).times(part).to("g");
    const least = partOf(inside).named(naming) as Quantity<"mass">;
    const more = stirred === undefined ? undefined : partOf(stirred);
    const most = more === undefined ? least : (least.plus(more).to("g").named(naming) as Quantity<"mass">);
    const product = more === undefined ? least : least.plus(more.times(anyPart())).to("g").named(naming);
    const bound = bounded ? `, no more than the ${shown(there)} there were` : "";
    const range = more === undefined ? shown(product) : `${grams(least)} to ${grams(most)}`;
    const solid = more === undefined ? "" : ", by how much of the solid went with it";
    return {
      text: `${shown(amount)} of ${what}${bound}${of === "product" ? "" : `: ${range} of product in it${solid}`}`,
      amount,
      product: product as Quantity<"mass">,
      atLeast: least,
      atMost: most,
      bounded,
    };
  };
  const part = (contents: Contents, which: "all" | "dissolved"): Quantity => {
    const counted = share(contents, which);
    return counted === undefined ? theory : theory.times(counted);
  };
  if (of === "product") return made(theory, theory, "dry product was lost");
  if (of === "cake") {
    const filter = firstFilter(batch);
    const cake = wetCake ?? filter?.after.mass;
    if (filter === undefined || cake === undefined)
      throw refused("this plan has no filter, and so no cake that could be lost", 'of: "product"');
    return made(cake, part(filter.after, "all"), "wet cake was lost");
  }
  const step = stepOf(lost, batch, share);
  const contents = contentsAt(step);
  const inside = part(contents, of === "liquor" ? "dissolved" : "all");
  // Before solid and liquor are parted a liquor is stirred: what is poured out of it takes solid along, or not.
  const solid =
    of === "liquor" && !PARTING.includes(step.operation)
      ? atMost(part(contents, "all"), theory).minus(atMost(inside, theory))
      : undefined;
  return made(
    thereIn(contents, lost),
    inside,
    `${of ?? "what was in the vessel"} was lost at '${step.operation}'`,
    solid?.isPositive() === true ? solid : undefined,
  );
}

/** Every recorded loss with the product that went with it. */
export const lossesOf = (
  lost: readonly LostRead[],
  setting: Setting,
  batch: Batch,
  wetCake: Quantity | undefined,
): readonly Loss[] => lost.map((one) => lossOf(one, setting, batch, wetCake));

/** Theory less all that was lost, which is no more than there was. */
export function theoryLeft({ product }: Pick<Batch, "product">, losses: readonly Loss[]): Quantity<"mass"> {
  const theory = product.theoreticalYield;
  if (losses.length === 0) return theory;
  const naming = { symbol: "m(expected)", label: "expected after losses", rule: "theory - lost" };
  const left = losses.reduce<Quantity>((rest, one) => rest.minus(one.product), theory);
  return (left.isPositive() ? left.to("g").named(naming) : quantity("0 g", naming)) as Quantity<"mass">;
}

/** What the steps bring of it: of crystals what their liquor gives, of a precipitate what its liquor does not keep. */
export function broughtOf(batch: Batch, left: Quantity<"mass">): Quantity<"mass"> {
  const brought = yieldOfSteps(batch) ?? precipitatedOf(batch);
  if (brought === undefined) return left;
  const naming = {
    symbol: "m(expected)",
    label: "what the steps bring",
    rule: "what the liquor lets go, without what a rinse leaves of another batch, less what was lost",
  };
  return brought.times(left.dividedBy(batch.product.theoreticalYield)).to("g").named(naming) as Quantity<"mass">;
}

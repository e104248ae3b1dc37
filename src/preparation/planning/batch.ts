// Everything about a batch that follows from what is put into it. Plan and run are the same sums; a run puts in what was
// really weighed, and only what is looked at is worked out again.

import type { Facts } from "../../foundation/facts";
import { keptWith, lazily, type Parts } from "../../foundation/lazy";
import { once } from "../../foundation/memo";
import { PRINTING } from "../../foundation/readable";
import type { Quantity } from "../../quantity";
import { looksOf } from "../../substance/internal";
import type { Contents } from "../contents/contents";
import type { Pot } from "../contents/pot";
import { CHROMATE_FROM_FIRE } from "../data/kiln";
import { alternativesOf } from "../feasibility/oxide-or-hydroxide";
import { waterOfDouble } from "../procedure/alike";
import type { Bench } from "../procedure/bench";
import { leavesChromate, mostChromate } from "../procedure/chromate-wash";
import { completenessOf } from "../procedure/completeness";
import { crystallisingOf } from "../procedure/crystallising";
import { mixedHotAt } from "../procedure/digestion";
import { hangsMetal } from "../procedure/displaced";
import { dropTestFor } from "../procedure/drop-test";
import { feedsOf } from "../procedure/feeds";
import { isolationOf, type WashSchedule } from "../procedure/isolation";
import { kindOf } from "../procedure/kind";
import { heatInLye, lyeStage } from "../procedure/lye-stage";
import { notWarmOf } from "../procedure/not-warm";
import { mixedOf, workOf } from "../procedure/procedures";
import { isNotBoiled } from "../procedure/protection";
import { ranksOf } from "../procedure/ranks";
import { isByLye, rolesOf } from "../procedure/roles";
import { type ProcedureStep, stepsOf } from "../procedure/step";
import { waterAtFirst } from "../procedure/water-at-first";
import { accountFor, massFor, mostFormed } from "../reaction/account";
import { isMetal } from "../reaction/acids";
import { type Candidate, candidatesFor } from "../reaction/candidates";
import { dissolvingHeatOf } from "../reaction/dissolving-heat";
import { isLedIn, staysInWater } from "../reaction/fluids";
import { heatOf } from "../reaction/heat";
import { keyed } from "../reaction/species";
import type { Setting } from "../request/setting";
import type { StepCautions } from "../safety/step-cautions";
import { isMotherLiquor, wasteOf } from "../safety/waste";
import { notSpent } from "../safety/waste-metals";
import { type Cost, costOf } from "../shelf/cost";
import { isSlowInPieces } from "../shelf/pieces";
import type { BatchFigures } from "./batch-figures";
import { type ByProduct, byProductsOf } from "./by-products";
import type { Check } from "./check";
import { checksOf } from "./checks";
import { type KeptLiquor, keptLiquorOf } from "./kept-liquor";
import { type Liquor, liquorOf } from "./liquor";
import { nextWaterOf } from "./next-water";
import { paceOf } from "./pace";
import { gasesOf, vesselFor } from "./vessel";
import { alcoholIn, crystalsAsItForms, dissolvedIn, fullest, gasFormed, potsLeft, pouredAway } from "./vessels-after";

/** What a batch comes to. */
export interface Batch extends BatchFigures {
  /** Water after mixing, and what stays dissolved in it. */
  readonly liquor: Liquor;
  /** The work, step by step, with what is in the vessel before and after each. */
  readonly steps: readonly ProcedureStep[];
  /** What passes the first filter; undefined where nothing is filtered. */
  readonly filtrate: Contents | undefined;
  /** The liquor that is kept in place of a solid; undefined where the product is isolated. */
  readonly keptLiquor: KeptLiquor | undefined;
  /** Wash schedule, or what is missing for one; undefined where there is none. */
  readonly washing: WashSchedule | undefined;
  /** What this kind of preparation is watched for, with figures; a usual excess where none was asked for. */
  readonly checks: readonly Check[];
  /** The product under other formulas, with the yield of each. */
  readonly candidates: readonly Candidate[];
  /** What else forms, and where it is at the end. */
  readonly byProducts: readonly ByProduct[];
  /** Of the materials that the batch uses. */
  readonly cost: Cost;
  /** What could not be computed, and what is missing for it. */
  readonly unknown: readonly string[];
}

/** What a displacement gives if the acid of its liquor takes none of the metal; undefined where that is no more than the theory. */
function mostYield(
  { materials, product }: Setting,
  portions: readonly Quantity[],
  theory: Quantity,
): Quantity<"mass"> | undefined {
  const amount = mostFormed(materials, portions, product);
  if (amount === undefined) return undefined;
  const most = massFor(
    amount,
    product.formula,
    { symbol: `m_max(${product.name})`, label: `${product.name}, if the acid takes none of the metal` },
    product.molarMass,
  );
  return most.compare(theory) > 0 ? most : undefined;
}

/** What the work of a batch is read from, and its cautions. */
export type Gate = (batch: Batch) => readonly StepCautions[];

/** A batch calculated before, of which whatever still holds is taken over. */
export interface Before {
  /** Cautions by part of the work. */
  readonly gate?: Gate;
  readonly setting: Setting;
  readonly portions: readonly Quantity[];
  readonly batch: Batch;
  /** The facts of the caller's own that it was planned with. */
  readonly facts?: Facts | undefined;
}

/** Everything about a batch that follows from what is put into it. */
export function batchOf(
  setting: Setting,
  portions: readonly Quantity[],
  before?: Before,
  gate: Gate = before?.gate ?? (() => []),
): Batch {
  const { request, reactants, products, product, materials, temperature, pressure, room } = setting;
  const kind = kindOf(setting);
  const asBefore = (i: number): boolean =>
    before !== undefined && before.portions[i] === portions[i] && before.setting.materials[i] === materials[i];
  // The sums know nothing of the temperature; a feed knows nothing of the other feeds.
  const sums = materials.every((_, i) => asBefore(i)) ? before?.batch : undefined;
  const account = sums?.materialBalance ?? accountFor(materials, portions, reactants, products);
  const formed = account.formed[products.indexOf(product)]!;
  const theoreticalYield = massFor(
    formed.amount,
    product.formula,
    { symbol: `m_th(${product.name})`, label: `theoretical yield of ${product.name}` },
    product.molarMass,
  );
  // The procedure goes on with this bench: it is not frozen as what is handed out.
  let together: Bench | undefined;
  const mixed = (): Bench =>
    (together ??= mixedOf({
      setting,
      kind,
      portions,
      account,
      theory: theoreticalYield,
      feeds: batch.feeds,
      roles: roles(),
      ranks: ranksOf(setting, roles()),
      isolation: batch.isolation,
      crystallising: batch.crystallising,
    }));
  // What the figures share is handed to nobody, and not frozen either.
  const roles = once(() => rolesOf(setting, kind, batch.isolation.how === "precipitate"));
  const work = once(() => workOf(mixed()));
  const full = once(() => fullest(work()));
  // all water of the liquor; undefined where it is not known
  const waterInLiquor = once(() => {
    const { liquor } = work();
    return liquor === undefined || full().missing.length > 0 || !setting.wet
      ? undefined
      : liquor.books.water.named({
          symbol: "m(H2O, liquor)",
          label: "all water in the liquor",
          rule: "water = added + from crystals and reaction",
        });
  });
  const dissolved = once(() => dissolvedIn(setting, work()));
  const cautions = once(() => gate(batch));
  const parts: Parts<Batch> = {
    materialBalance: () => account,
    product: () =>
      keyed("formula", {
        formula: product.name,
        name: request.productName ?? product.name,
        amount: formed.amount,
        theoreticalYield,
        most: mostYield(setting, portions, theoreticalYield),
        looks: looksOf(product.formula)?.appearance,
      }),
    feeds: () => {
      return feedsOf({
        setting,
        portions,
        account,
        roles: roles(),
        crystals:
          batch.isolation.how === "crystallise" ||
          batch.isolation.how === "liquor" ||
          (batch.isolation.how === "unknown" && kind !== "complex formation"),
        precipitates: batch.isolation.how === "precipitate",
        // a gas or an acid that is to stay in its water is not warmed
        // warm water takes little of a gas
        cold:
          (batch.isolation.how === "liquor" && isNotBoiled(product.formula)) ||
          (batch.isolation.how !== "precipitate" && notWarmOf(product.formula)?.asItForms === true) ||
          (setting.wet && (staysInWater(product.formula) || setting.materials.some(isLedIn))),
        mixedHot: batch.isolation.how === "precipitate" ? mixedHotAt(setting, kind) : undefined,
        hot: materials.length === 1 ? batch.crystallising?.hot : undefined,
        ...(batch.isolation.how === "crystallise"
          ? {
              target: waterAtFirst(
                setting,
                account,
                batch.crystallising,
                batch.isolation.waterToSaturate,
                theoreticalYield,
              ),
            }
          : waterOfDouble(setting, account, batch.isolation.how === "unknown")),
        planned:
          before === undefined
            ? undefined
            : {
                feeds: before.batch.feeds,
                same: (i) => asBefore(i) && before.setting.temperature === temperature,
                isMeasured: (i) => before.setting.materials[i]!.shelf.dissolve !== materials[i]!.shelf.dissolve,
              },
      });
    },
    steps: () =>
      stepsOf(
        work().drafts,
        batch,
        () => cautions(),
        (name) => [...materials, ...setting.asides].find(({ shelf }) => shelf.name === name)?.formName,
      ),
    filtrate: () => work().filtrate?.contents,
    keptLiquor: () => (batch.isolation.how === "liquor" ? keptLiquorOf(setting, work()) : undefined),
    isolation: () => isolationOf(setting, theoreticalYield),
    liquor: () => liquorOf(batch.feeds, materials, waterInLiquor(), full().missing, dissolved(), temperature),
    gas: () => gasesOf(gasFormed(work(), account), { temperature, pressure }),
    vessel: () => {
      const intoAcid =
        batch.gas.length > 0 &&
        batch.feeds.some((feed) => feed.how === "solid") &&
        roles().some((role) => role === "acid" || role === "metal") &&
        !isByLye(setting, roles());
      if (!setting.wet) return undefined;
      const { mass, missing } = full();
      // from a strip that hangs gas comes by and by, without foam
      const gas = hangsMetal(setting) ? batch.gas.filter(({ key }) => key !== "H2") : batch.gas;
      const foams = intoAcid && gas.length > 0;
      return missing.length > 0 ? undefined : vesselFor([mass], temperature, gas, foams, request.vesselFactor);
    },
    additionRate: () =>
      paceOf(
        batch.gas,
        batch.vessel,
        room,
        "rise" in batch.heat ? batch.heat.rise.rise : undefined,
        materials.some((one) => isMetal(one.form) && isSlowInPieces(one)),
      ),
    heat: () => {
      const staged = { setting, roles: roles(), account };
      const stage = lyeStage(staged);
      if (stage !== undefined) return heatInLye(stage, staged, batch.feeds);
      const all = work().mixed;
      return heatOf(
        setting,
        account,
        batch.feeds,
        all === undefined || full().missing.length > 0 ? undefined : [all],
        work().onMetal,
        batch.crystallising?.asItForms === true ? crystalsAsItForms(work(), product) : undefined,
      );
    },
    dissolvingHeat: () => dissolvingHeatOf(setting, account, batch.feeds),
    crystallising: () => {
      const planned = before?.batch.crystallising;
      const measured = before !== undefined && before.setting.temperature !== temperature;
      const asPlanned = planned === undefined ? undefined : { crystallising: planned, measured };
      return crystallisingOf(setting, account, batch.isolation, theoreticalYield, asPlanned);
    },
    completeness: () =>
      batch.isolation.how !== "precipitate"
        ? undefined
        : completenessOf(
            setting,
            theoreticalYield,
            dropTestFor(setting, roles(), account, work().kept?.amount, work().liquor).text,
            waterInLiquor() === undefined ? undefined : work().kept,
            work().elsewhere,
          ),
    washing: () => (full().missing.length > 0 ? undefined : work().washing),
    alcohol: () => alcoholIn(work()),
    checks: () => checksOf(kind, { setting, batch, work: work(), roles: roles() }),
    candidates: () =>
      sums?.candidates ??
      candidatesFor(
        product.formula,
        { ...formed, mass: theoreticalYield },
        reactants.map((s) => s.formula),
        alternativesOf(setting),
      ),
    byProducts: () => byProductsOf(setting, account, dissolved(), waterInLiquor(), work().filtrate),
    waste: () => {
      const left = leavesLiquid ? potsLeft(work()) : [];
      return wasteOf(
        setting,
        left,
        full().missing.length > 0 ? undefined : pouredAway(work(), left, batch.isolation.how === "liquor"),
        batch.alcohol,
        batch.isolation.how === "unknown" ? { species: product, amount: formed.amount } : undefined,
        leavesChromate(setting) ? [notSpent(CHROMATE_FROM_FIRE.metal, mostChromate(setting, portions))] : [],
        nextWaterOf(
          setting,
          work(),
          batch.isolation,
          theoreticalYield,
          left.find(([vessel]) => isMotherLiquor(vessel))?.[1],
        ),
      );
    },
    cost: () => sums?.cost ?? costOf(materials, account.supplied, theoreticalYield, formed.amount),
    unknown: () => [
      ...batch.feeds.flatMap((feed) => (feed.how === "unknown" ? [feed.missing] : [])),
      ...full().missing,
      ...(work().liquor?.books.unknown ?? []).filter((text) => text.startsWith("by the equilibrium")),
      ...(setting.wet ? [] : (work().drafts.at(-1)?.after.books.unknown ?? [])),
      ...(batch.isolation.how === "unknown" ? [batch.isolation.missing] : []),
      ...(batch.washing !== undefined && "missing" in batch.washing ? [batch.washing.missing] : []),
      ...("missing" in batch.heat && setting.wet ? [batch.heat.missing] : []),
      ...batch.dissolvingHeat.flatMap((one) => ("missing" in one ? [`${one.material}: ${one.missing}`] : [])),
    ],
  };
  const leavesLiquid = setting.wet || leavesChromate(setting);
  const batch: Batch = lazily(parts, {}, PRINTING, (): Pot | undefined => mixed().reacted);
  return batch;
}

/** The pot of a batch once everything has reacted and nothing has been taken out of it; undefined where no water is. */
export const reactedPot = (batch: Batch): Pot | undefined => (keptWith(batch) as () => Pot | undefined)();

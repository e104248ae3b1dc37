// What was really measured, in any order and any subset, read into quantities; and the frame it changes.

import type { MassFractionLike, MassLike, PortionLike, TemperatureLike, VolumeLike } from "../../amount";
import { type Quantity, type QuantityLike, quantity, sum } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { PlanError } from "../error";
import type { Plan } from "../plan";
import type { Batch } from "../planning/batch";
import { exact, planned as figure } from "../planning/exact";
import { reading } from "../reaction/account";
import { guard } from "../request/argument";
import type { ShelfMaterial } from "../request/request";
import type { Setting } from "../request/setting";
import { checkWarmth } from "../request/warmth";
import { readMaterial } from "../shelf/material";
import { portionOf } from "../shelf/strength";
import { type Loss, type Lost, type LostRead, lossesOf, readLosses } from "./losses";
import type { TestOutcome } from "./test-outcome";

/** A mass as it was read off; or the vessel with it and without it. */
export type Weighed = MassLike | { readonly gross: MassLike; readonly tare: MassLike };

/** What was really done; anything left out is taken as planned. */
export interface Observations {
  /** Portions really taken, by the name of the material: mass or volume. */
  readonly weighed?: Readonly<Record<string, PortionLike>> | undefined;
  /** Measured out, by the name of the material: the water a solid was dissolved in, the portion of a solution. */
  readonly measured?: Readonly<Record<string, PortionLike>> | undefined;
  /** Strengths of solutions found by titration, by the name of the material. */
  readonly strengths?: Readonly<Record<string, NonNullable<ShelfMaterial["strength"]>>> | undefined;
  /** Assays of solids found by titration or on the pack, by the name of the material. */
  readonly assays?: Readonly<Record<string, NonNullable<ShelfMaterial["assay"]>>> | undefined;
  /** Temperature at which the liquor was filtered off. */
  readonly temperature?: TemperatureLike | undefined;
  /** What was lost on the way: spilled, boiled over, dropped. */
  readonly lost?: readonly Lost[] | undefined;
  /** The cake drained and not yet dried. */
  readonly wetCake?: MassLike | undefined;
  /** Washes really done. */
  readonly washes?: number | undefined;
  /** Filtrate and washings measured. */
  readonly filtrateVolume?: VolumeLike | undefined;
  /** Mass of the product; or successive weighings while drying, the last one last. */
  readonly dried?: Weighed | readonly Weighed[] | undefined;
  /** Dry masses of crops, to be added; in place of `dried`. */
  readonly crops?: readonly Weighed[] | undefined;
  /**
   * A weighed dry sample before and after ignition; the residue where it is not the usual one. What weighs more than all of the product of a
   * kiln is the charge: its ignition is the firing itself, and no test of the product.
   */
  readonly ignition?:
    | { readonly before: MassLike; readonly after: MassLike; readonly residue?: string | undefined }
    | undefined;
  /** What a drop of reagent showed: precipitant in a little of the clear liquor; the test of the last wash. */
  readonly tests?:
    | { readonly filtrate?: TestOutcome | undefined; readonly lastWash?: TestOutcome | undefined }
    | undefined;
  /** pH of the liquor once all is mixed. */
  readonly pH?: QuantityLike<"number"> | number | undefined;
  /** Share of the product in what was weighed, by titration; above 100 % where another form has more of what is titrated. */
  readonly assay?: MassFractionLike | undefined;
  /** Acid that a gram of the product neutralises. */
  readonly acidPerGram?: QuantityLike | undefined;
  /** Anything to print with the run. */
  readonly note?: string | undefined;
}

/** Observations read. */
export interface Observed {
  /** The frame with what was found put in; the plan's own where nothing of it changed. */
  readonly setting: Setting;
  readonly portions: readonly Quantity[];
  /** Nothing that the sums of the batch depend on was observed. */
  readonly asPlanned: boolean;
  readonly wetCake: Quantity | undefined;
  readonly washes: number | undefined;
  readonly filtrateVolume: Quantity | undefined;
  /** Successive weighings of the product. */
  readonly dried: readonly Quantity[];
  /** The product as weighed: the last weighing, or all crops together. */
  readonly dry: Quantity | undefined;
  /** Crops that were recorded one by one. */
  readonly crops: number;
  readonly lost: readonly LostRead[];
  readonly tests: NonNullable<Observations["tests"]>;
  readonly pH: Quantity | undefined;
  readonly assay: Quantity | undefined;
}

function checkNames(setting: Setting, names: readonly string[]): void {
  const stranger = names.find((name) => !setting.materials.some((m) => m.shelf.name === name));
  if (stranger === undefined) return;
  throw new PlanError("plan.no-such-material", `no material of the plan is called '${stranger}'`, {
    hint: `the materials are ${setting.materials.map((m) => m.shelf.name).join(", ")}`,
  });
}

/** The frame with the strengths, assays and temperature that were found. */
function settingAsFound(
  setting: Setting,
  { strengths = {}, assays = {}, measured = {}, temperature }: Observations,
): Setting {
  checkNames(
    setting,
    [strengths, assays, measured].flatMap((table) => Object.keys(table)),
  );
  const materials = setting.materials.map((material) => {
    const { name, dissolve } = material.shelf;
    const water = material.isSolution ? undefined : measured[name];
    const found = {
      ...(strengths[name] === undefined ? {} : { strength: strengths[name] }),
      ...(assays[name] === undefined ? {} : { assay: assays[name] }),
      ...(water === undefined
        ? {}
        : { dissolve: { temperature: dissolve?.temperature, water: portionOf(water, `water of ${name}`) } }),
    };
    return Object.keys(found).length === 0
      ? material
      : readMaterial({ ...material.shelf, ...found }, setting.reactants);
  });
  const warmth =
    temperature === undefined
      ? setting.temperature
      : expectDimension(temperature, "temperature", "temperature", { symbol: "T", label: "temperature, as measured" });
  checkWarmth(warmth, setting.wet);
  const changed = materials.some((m, i) => m !== setting.materials[i]) || warmth !== setting.temperature;
  return changed ? { ...setting, materials, temperature: warmth } : setting;
}

function portionsAsTaken(plan: Plan, setting: Setting, { weighed = {}, measured = {} }: Observations): Quantity[] {
  checkNames(setting, Object.keys(weighed));
  return setting.materials.map((material, i) => {
    const { name } = material.shelf;
    const poured = material.isSolution ? measured[name] : undefined;
    if (poured !== undefined && weighed[name] !== undefined)
      throw new PlanError("plan.observation", `${name} is both weighed and measured: give one portion of it`);
    const given = weighed[name] ?? poured;
    if (given === undefined) return plan.weighings[i]!.portion;
    const portion = portionOf(given, `${name} taken`);
    const isMass = portion.dimension === "mass";
    const naming = { symbol: `${isMass ? "m" : "V"}(${name})`, label: `${name} really taken` };
    // A reading that states no uncertainty of its own has that of the instrument.
    const read =
      portion.standardUncertainty === undefined
        ? reading(portion, isMass ? setting.steps.mass : setting.steps.volume, naming)
        : portion.named(naming);
    // Taken as planned is the plan.
    const planned = plan.weighings[i]!.portion;
    return planned.dimension === read.dimension && planned.equals(read) ? planned : read;
  });
}

/** A mass above zero, with the uncertainty of the balance where it carries none. */
function weighing(
  like: MassLike,
  argument: string,
  naming: { symbol: string; label: string },
  step: Quantity,
): Quantity {
  const mass = expectDimension(like, "mass", argument);
  guard.positive(mass, argument);
  return mass.standardUncertainty === undefined ? reading(mass, step, naming) : mass.named(naming);
}

const hasVessel = (one: Weighed): one is Exclude<Weighed, MassLike> =>
  typeof one === "object" && one !== null && "gross" in one && "tare" in one;

/** Weighings of one run: a tare that stands in several of them is one reading of one vessel. */
function weighingsOf(
  list: readonly Weighed[],
  argument: string,
  naming: { readonly symbol: string; readonly label: string },
  step: Quantity,
): Quantity[] {
  const tares = new Map<string, Quantity>();
  const tareOf = (like: MassLike, place: string): Quantity => {
    const given = expectDimension(like, "mass", place);
    const key = `${given.value} ${given.unit} ${given.standardUncertainty ?? ""}`;
    const tare = tares.get(key) ?? weighing(like, place, { symbol: "m(tare)", label: "empty vessel" }, step);
    tares.set(key, tare);
    return tare;
  };
  return list.map((one, i) => {
    const place = list.length === 1 ? argument : `${argument}[${i}]`;
    const { symbol, label } = naming;
    const named = { symbol: `m(${symbol}${list.length === 1 ? "" : `, ${i + 1}`})`, label };
    if (!hasVessel(one)) return weighing(one, place, named, step);
    const gross = weighing(one.gross, `${place}.gross`, { symbol: "m(gross)", label: "vessel with product" }, step);
    const tare = tareOf(one.tare, `${place}.tare`);
    const net = gross.minus(tare).to("g");
    if (net.isPositive()) return net.named({ ...named, rule: "net = gross - tare" });
    throw new PlanError("plan.observation", `${place}: gross ${gross} is no more than tare ${tare}`, {
      hint: "gross is the vessel with the product, tare the empty vessel",
    });
  });
}

/** A pH that there can be in water, with room for the strongest acids and bases. */
const [MOST_ACID, MOST_BASIC] = ["-2", "16"] as const;

function pHAsRead(like: NonNullable<Observations["pH"]>): Quantity {
  // A pH is a bare number by nature.
  const text = typeof like === "number" ? String(like) : like;
  const pH = expectDimension(text as QuantityLike, "number", "pH", {
    symbol: "pH",
    label: "pH of the liquor, as read",
  });
  if (pH.compare(exact(MOST_ACID)) >= 0 && pH.compare(exact(MOST_BASIC)) <= 0) return pH;
  throw new PlanError("plan.observation", `pH must be from ${MOST_ACID} to ${MOST_BASIC}, not ${pH}`);
}

/** More than this of a product in what was weighed is not a titration of it. */
const MOST_ASSAY = "300 %";

function assayAsFound(like: MassFractionLike): Quantity {
  const naming = { symbol: "w(product)", label: "product in what was weighed, by titration" };
  const assay = expectDimension(like, "mass fraction", "assay", naming);
  guard.positive(assay, "assay");
  if (assay.compare(exact(MOST_ASSAY)) > 0)
    throw new PlanError("plan.observation", `assay of ${assay} is above ${MOST_ASSAY}`, {
      hint: "it is the share of the product in what was weighed",
    });
  if (assay.standardUncertainty !== undefined) return assay;
  const standardUncertainty = assay.value.times(figure("titration").in("")).toString();
  return quantity({ value: assay.value.toString(), unit: assay.unit, standardUncertainty } as QuantityLike, naming);
}

const listed = <T>(given: T | readonly T[] | undefined): readonly T[] =>
  given === undefined ? [] : Array.isArray(given) ? (given as readonly T[]) : [given as T];

export function readObservations(plan: Plan, planned: Setting, observations: Observations): Observed {
  const { washes, wetCake, filtrateVolume, tests = {}, pH, assay } = observations;
  if (washes !== undefined && !(Number.isInteger(washes) && washes >= 0 && washes <= 100))
    throw new PlanError("plan.observation", `washes must be a whole number from 0 to 100, not ${washes}`);
  const setting = settingAsFound(planned, observations);
  const portions = portionsAsTaken(plan, setting, observations);
  const { mass: step } = setting.steps;
  const dried = weighingsOf(
    listed<Weighed>(observations.dried),
    "dried",
    { symbol: "dry", label: "dry product as weighed" },
    step,
  );
  const crops = weighingsOf(observations.crops ?? [], "crops", { symbol: "crop", label: "dry crop as weighed" }, step);
  return {
    setting,
    portions,
    asPlanned: setting === planned && portions.every((p, i) => p === plan.weighings[i]!.portion),
    wetCake:
      wetCake === undefined
        ? undefined
        : weighing(wetCake, "wetCake", { symbol: "m(wet)", label: "wet cake as weighed" }, step),
    washes,
    filtrateVolume:
      filtrateVolume === undefined
        ? undefined
        : portionOf(filtrateVolume, "filtrateVolume", { symbol: "V(filtrate)", label: "filtrate and washings" }),
    dried,
    crops: crops.length,
    dry:
      crops.length === 0 ? dried.at(-1) : sum(crops, { symbol: "m(dry)", label: "all crops", rule: "crops are added" }),
    lost: readLosses(observations.lost),
    tests,
    pH: pH === undefined ? undefined : pHAsRead(pH),
    assay: assay === undefined ? undefined : assayAsFound(assay),
  };
}

/** What was lost on the way, of a batch as it was really made. */
export const lossesIn = ({ lost, setting, wetCake }: Observed, batch: Batch): readonly Loss[] =>
  lossesOf(lost, setting, batch, wetCake);

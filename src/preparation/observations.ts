// What was really measured, in any order and any subset, read into quantities; and the frame it changes.
import type { MassLike, TemperatureLike, VolumeLike } from "../amount";
import type { Quantity } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { reading } from "./account";
import { checkWarmth } from "./door";
import { PlanError } from "./error";
import { readMaterial } from "./material";
import type { Plan } from "./plan";
import type { Portion, ShelfMaterial } from "./request";
import type { Setting } from "./setting";
import { portionOf } from "./strength";

/** What was really done; anything left out is taken as planned. */
export interface Observations {
  /** Portions really taken, by the name of the material: mass or volume. */
  readonly weighed?: Readonly<Record<string, Portion>> | undefined;
  /** Strengths of solutions found by titration, by the name of the material. */
  readonly strengths?: Readonly<Record<string, NonNullable<ShelfMaterial["strength"]>>> | undefined;
  /** Assays of solids found by titration or on the pack, by the name of the material. */
  readonly assays?: Readonly<Record<string, NonNullable<ShelfMaterial["assay"]>>> | undefined;
  /** Temperature at which the liquor was filtered off. */
  readonly temperature?: TemperatureLike | undefined;
  /** The cake drained and not yet dried. */
  readonly wetCake?: MassLike | undefined;
  /** Washes really done. */
  readonly washes?: number | undefined;
  /** Filtrate and washings measured. */
  readonly filtrateVolume?: VolumeLike | undefined;
  /** Mass of the product; or successive weighings while drying, the last one last. */
  readonly dried?: MassLike | readonly MassLike[] | undefined;
  /** A weighed dry sample before and after ignition; the residue where it is not the usual one. */
  readonly ignition?:
    | { readonly before: MassLike; readonly after: MassLike; readonly residue?: string | undefined }
    | undefined;
  /** Acid that a gram of the product neutralises. */
  readonly acidPerGram?: Parameters<typeof expectDimension>[0] | undefined;
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
  readonly dried: readonly Quantity[];
}

function checkNames(setting: Setting, names: readonly string[]): void {
  const stranger = names.find((name) => !setting.materials.some((m) => m.shelf.name === name));
  if (stranger === undefined) return;
  throw new PlanError("plan.no-such-material", `no material of the plan is called '${stranger}'`, {
    hint: `the materials are ${setting.materials.map((m) => m.shelf.name).join(", ")}`,
  });
}

/** The frame with the strengths, assays and temperature that were found. */
function settingAsFound(setting: Setting, { strengths = {}, assays = {}, temperature }: Observations): Setting {
  checkNames(setting, [...Object.keys(strengths), ...Object.keys(assays)]);
  const materials = setting.materials.map((material) => {
    const { name } = material.shelf;
    const found = {
      ...(strengths[name] === undefined ? {} : { strength: strengths[name] }),
      ...(assays[name] === undefined ? {} : { assay: assays[name] }),
    };
    return Object.keys(found).length === 0
      ? material
      : readMaterial({ ...material.shelf, ...found }, setting.reactants);
  });
  const warmth =
    temperature === undefined
      ? setting.temperature
      : expectDimension(temperature, "temperature", "temperature", { symbol: "T", label: "temperature, as measured" });
  checkWarmth(warmth, setting.wet, "temperature");
  const changed = materials.some((m, i) => m !== setting.materials[i]) || warmth !== setting.temperature;
  return changed ? { ...setting, materials, temperature: warmth } : setting;
}

function portionsAsTaken(plan: Plan, setting: Setting, weighed: Readonly<Record<string, Portion>>): Quantity[] {
  checkNames(setting, Object.keys(weighed));
  return setting.materials.map((material, i) => {
    const { name } = material.shelf;
    const given = weighed[name];
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

/** A weighing of the product, with the uncertainty of the balance where it carries none. */
function weighing(
  like: MassLike,
  argument: string,
  naming: { symbol: string; label: string },
  step: Quantity,
): Quantity {
  const mass = expectDimension(like, "mass", argument);
  if (!mass.isPositive()) throw new PlanError("plan.not-positive", `${argument} must be above zero, not ${mass}`);
  return mass.standardUncertainty === undefined ? reading(mass, step, naming) : mass.named(naming);
}

export function readObservations(plan: Plan, planned: Setting, observations: Observations): Observed {
  const { dried, washes, wetCake, filtrateVolume, weighed = {} } = observations;
  if (washes !== undefined && !(Number.isInteger(washes) && washes >= 0 && washes <= 100))
    throw new PlanError("plan.observation", `washes must be a whole number from 0 to 100, not ${washes}`);
  const setting = settingAsFound(planned, observations);
  const portions = portionsAsTaken(plan, setting, weighed);
  const list = dried === undefined ? [] : Array.isArray(dried) ? (dried as readonly MassLike[]) : [dried as MassLike];
  const { mass: step } = setting.steps;
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
    dried: list.map((like, i) =>
      weighing(
        like,
        "dried",
        { symbol: list.length === 1 ? "m(dry)" : `m(dry, ${i + 1})`, label: "dry product as weighed" },
        step,
      ),
    ),
  };
}

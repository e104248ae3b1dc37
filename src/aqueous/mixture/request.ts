// A mixture as somebody describes it, read into ingredients, water and a model.

import type { TemperatureLike } from "../../amount";
import { type Facts, lookingIn } from "../../foundation/facts";
import { ATMOSPHERE } from "../../foundation/standards";
import {
  isQuantity,
  type MassText,
  type NumberLike,
  type PressureText,
  type Quantity,
  type QuantityLike,
  quantity,
  type VolumeText,
} from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard, positive } from "../argument";
import { AqueousError } from "../error";
import { GIVEN_FIELDS, type GivenConstants, networkWith } from "./given";
import { type Dissolved, type Ingredient, ingredientOf } from "./material";
import { type Brought, broughtBy, keysOf } from "./mixture";
import { type Model, modelOf } from "./model";
import type { Network, Phase } from "./network";
import { keyOf } from "./notation";

/** Which solids may form: what precipitates at once, what standing or heat brings as well, or the first with changes. */
export type SolidsAllowed =
  | "fresh"
  | "aged"
  | {
      /** Formulas (or parts of a form's name) that may stand although they do not form at once. */
      readonly allow?: readonly string[];
      /** Formulas (or parts of a form's name) that do not form. */
      readonly exclude?: readonly string[];
      /** No solids but these, whether or not they form at the bench; none for an empty list. */
      readonly only?: readonly string[];
    };

/**
 * What carbon dioxide may do: stay in solution up to one atmosphere and bubble off above (`"kept"`), leave until no more is
 * left than in contact with air (`"leaves"`: stirred open, aired, boiled), exchange with air both ways (`"open air"`), or
 * stand at a pressure.
 */
export type CarbonDioxide =
  | "kept"
  | "leaves"
  | "open air"
  | { readonly pressure: QuantityLike<"pressure", PressureText> };

/** What goes into a beaker. */
export interface AqueousRequest {
  /** Mass of the water, or volume of the solution (a litre counts as a kilogram of water). */
  readonly water: QuantityLike<"mass" | "volume", MassText | VolumeText>;
  /** Everything that is put into the water, solids included. */
  readonly dissolved: readonly Dissolved[];
  /** Default `"kept"`. */
  readonly carbonDioxide?: CarbonDioxide;
  /** Default `"fresh"`. */
  readonly solids?: SolidsAllowed;
  /** Held: `dose` then tells the hydrons or hydroxide needed. */
  readonly pH?: NumberLike | QuantityLike;
  /** Constants of your own, in place of those of the tables. */
  readonly constants?: GivenConstants;
  /** Facts of the caller's own, whose constants come before those of the tables; `constants` come before both. */
  readonly facts?: Facts | undefined;
  /** Default `"Davies"`. */
  readonly activity?: "Davies" | "ideal";
  /** 5 to 60 °C; default 25 °C. */
  readonly temperature?: TemperatureLike;
}

const REQUEST_FIELDS = {
  water: true,
  dissolved: true,
  carbonDioxide: true,
  solids: true,
  pH: true,
  constants: GIVEN_FIELDS,
  facts: true,
  activity: true,
  temperature: true,
} as const;

/** Partial pressure of carbon dioxide in air, atm: 420 parts per million. */
const AIR = 4.2e-4;

/** A request, read. */
export interface Read {
  readonly network: Network;
  readonly own: boolean;
  readonly ingredients: readonly Ingredient[];
  readonly brought: readonly Brought[];
  readonly water: Quantity<"mass">;
  readonly model: Model;
  readonly pH: Quantity | undefined;
  readonly ideal: boolean;
  readonly celsius: number;
  readonly assumptions: readonly string[];
}

/** Water as a mass; a volume counts a kilogram a litre. */
export function waterOf(like: QuantityLike, argument: string): { mass: Quantity<"mass">; volume?: Quantity<"volume"> } {
  if (like === undefined) guard.text(like, argument);
  const given = quantity(like);
  const q = given.named({ symbol: "m(H₂O)", label: given.label ?? "water" });
  if (q.dimension === "volume") {
    const volume = positive(q, "volume", argument);
    const mass = volume
      .times(quantity("1 kg/L", { symbol: "ρ", assumption: "a litre counts as a kilogram of water" }))
      .to("kg")
      .named({ symbol: "m(H₂O)", rule: "1 kg of water for each litre" });
    return { mass: mass as Quantity<"mass">, volume };
  }
  return { mass: positive(q, "mass", argument) };
}

/** Why a solid is left out of which the constant serves at other temperatures only. */
export const OF_ANOTHER_TEMPERATURE = "not the solid at this temperature";

/** Which solids may stand, as a question of each phase. */
export function admission(solids: SolidsAllowed | undefined, celsius: number): (phase: Phase) => string | undefined {
  if (solids !== undefined && typeof solids !== "object") guard.choice(solids, "solids", ["fresh", "aged"]);
  if (typeof solids === "object") {
    guard.fields(solids, { allow: true, exclude: true, only: true }, "solids");
    if (solids.allow !== undefined) guard.list(solids.allow, "solids.allow");
    if (solids.exclude !== undefined) guard.list(solids.exclude, "solids.exclude");
    if (solids.only !== undefined) guard.list(solids.only, "solids.only");
  }
  const aged = solids === "aged";
  const matches = (list: readonly string[] | undefined, { formula, form }: Phase): boolean =>
    list?.some((one) => {
      if (formula === one || `${formula} (${form})` === one || form?.includes(one) === true) return true;
      return /^[A-Z(0-9[][^ ]*$/.test(one) && keyOf(formula) === keyOf(one);
    }) ?? false;
  const changes = typeof solids === "object" ? solids : undefined;
  return (phase) => {
    if (changes?.only !== undefined) return matches(changes.only, phase) ? undefined : "not asked for";
    if (matches(changes?.exclude, phase)) return "excluded by request";
    if (matches(changes?.allow, phase)) return undefined;
    const { row, serves } = phase;
    if (serves !== undefined && (celsius < serves[0] || celsius > serves[1])) return OF_ANOTHER_TEMPERATURE;
    if (row === undefined) return undefined;
    if (row.soluble === true) return "a soluble salt: its solubility curve serves, not its product";
    if (row.from !== undefined && celsius < row.from) return `forms from ${row.from} °C on`;
    if (row.below !== undefined && celsius >= row.below) return `forms below ${row.below} °C`;
    if (row.bench === "never here") return "not met at the bench";
    if (row.bench === "hours" && !aged) return "forms by standing for hours or longer";
    return undefined;
  };
}

export function carbonDioxideOf(like: CarbonDioxide | undefined): { atm: number; held: boolean; text: string } {
  if (like === undefined || like === "kept")
    return { atm: 1, held: false, text: "carbon dioxide stays in solution up to 1 atm" };
  if (like === "leaves")
    return { atm: AIR, held: false, text: "carbon dioxide leaves until it is at the 420 ppm of air" };
  if (typeof like !== "object") guard.choice(like, "carbonDioxide", ["kept", "leaves", "open air"]);
  if (like === "open air") return { atm: AIR, held: true, text: "in exchange with air of 420 ppm carbon dioxide" };
  guard.fields(like, { pressure: true }, "carbonDioxide");
  const pressure = positive(like.pressure, "pressure", "carbonDioxide.pressure");
  return {
    atm: pressure.toNumber("kPa") / ATMOSPHERE,
    held: true,
    text: `carbon dioxide held at ${pressure}`,
  };
}

const models = new WeakMap<Network, Map<string, Model>>();
/** Models kept for each network: a shelf of a hundred preparations has about twice as many kinds of mixture. */
const MOST_MODELS = 250;

/** The model of a kind of mixture, kept from the last time. */
export function keptModel(
  network: Network,
  keys: ReadonlySet<string>,
  celsius: number,
  holding: Parameters<typeof modelOf>[3],
  solids: SolidsAllowed | undefined,
): Model {
  const kept = models.get(network) ?? new Map<string, Model>();
  models.set(network, kept);
  const id = JSON.stringify([[...keys].sort(), celsius, holding, solids ?? "fresh"]);
  let model = kept.get(id);
  if (model === undefined) {
    model = modelOf(network, [...keys].sort(), celsius, holding, admission(solids, celsius));
    if (kept.size >= MOST_MODELS) kept.delete(kept.keys().next().value!);
    kept.set(id, model);
  }
  return model;
}

/** Temperature in °C; refused outside what the constants serve. */
export function celsiusOf(like: QuantityLike | undefined): number {
  if (like === undefined) return 25;
  const celsius = expectDimension(like, "temperature", "temperature").toNumber("°C");
  if (celsius >= 5 && celsius <= 60) return celsius;
  throw new AqueousError("aqueous.outside-range", `constants serve from 5 to 60 °C, not at ${celsius} °C`, {
    details: { celsius, from: 5, to: 60 },
  });
}

/** A pH as a quantity. */
export function pHInput(like: NumberLike | QuantityLike, argument = "pH"): Quantity {
  const q = isQuantity(like)
    ? like
    : quantity(
        (typeof like === "object" && like !== null && "unit" in like
          ? like
          : { value: like as NumberLike, unit: "" }) as QuantityLike,
        { symbol: "pH", label: "pH, held" },
      );
  const plain = expectDimension(q, "number", argument).toNumber();
  if (plain >= -1 && plain <= 15) return q;
  throw new AqueousError("aqueous.outside-range", `a ${argument} of -1 to 15 is understood, not ${q}`, {
    details: { argument },
  });
}

/** Read the whole request; `reactions` in place of the tables and the caller's constants. */
export function readRequest(request: AqueousRequest, reactions?: Network): Read {
  guard.fields(request, REQUEST_FIELDS, "request");
  if (request.activity !== undefined) guard.choice(request.activity, "activity", ["Davies", "ideal"]);
  guard.list(request.dissolved, "dissolved");
  const { mass, volume } = waterOf(request.water, "water");
  const network = reactions ?? lookingIn(request.facts, guard, () => networkWith(request.constants));
  const ingredients = request.dissolved.map((one, i) => ingredientOf(one, network, volume, `dissolved[${i}]`));
  const brought = ingredients.map((one) => broughtBy(one, network));
  const celsius = celsiusOf(request.temperature);
  const carbonDioxide = carbonDioxideOf(request.carbonDioxide);
  const pH = request.pH === undefined ? undefined : pHInput(request.pH);
  const { atm, held } = carbonDioxide;
  const model = keptModel(
    network,
    keysOf(brought),
    celsius,
    { pH: pH !== undefined, carbonDioxide: { atm, held } },
    request.solids,
  );
  const assumptions: string[] = [];
  if (volume !== undefined) assumptions.push("a litre counts as a kilogram of water (0.3 % too much at 25 °C)");
  if (model.components.includes(keyOf("CO3^2-"))) assumptions.push(carbonDioxide.text);
  let water = mass;
  for (const { litres } of ingredients) {
    if (litres === undefined) continue;
    if (assumptions.length === 0) assumptions.push("a litre counts as a kilogram of water (0.3 % too much at 25 °C)");
    water = water.plus(litres.times(quantity("1 kg/L"))).to("kg") as Quantity<"mass">;
  }
  return {
    network,
    own: request.constants?.only === true || reactions !== undefined,
    ingredients,
    brought,
    water,
    model,
    pH,
    ideal: request.activity === "ideal",
    celsius,
    assumptions,
  };
}

// Everything about a batch that follows from what is put into it. Plan and run are the same sums; a run puts in what was
// really weighed, and only what is looked at is worked out again.
import { isWater } from "../formula/crystal-water";
import { lazily } from "../foundation/lazy";
import type { Quantity } from "../quantity";
import { type Account, accountFor, massFor } from "./account";
import { inBeaker } from "./beaker";
import { type Candidate, candidatesFor } from "./candidates";
import { type Check, checksOf } from "./checks";
import { type Cost, costOf } from "./cost";
import { type Crystallising, crystallisingOf } from "./crystallising";
import { PLANNING } from "./data/planning";
import { type DissolvingHeat, dissolvingHeatOf } from "./dissolving-heat";
import { exact } from "./exact";
import { fateOf, keptByWater } from "./fate";
import { type Feed, feedOf, type Liquor, liquorOf } from "./feed";
import { type Heat, heatOf } from "./heat";
import { type Dissolved, type Isolation, isolationOf, type WashSchedule, washingOf } from "./isolation";
import { type Pace, paceOf } from "./pace";
import { procedureOf } from "./procedure";
import type { Setting } from "./setting";
import { type GasEvolved, gasesOf, isGas, type Vessel, vesselFor } from "./vessel";
import { type ByProduct, byProductsOf, type Waste, wasteOf } from "./waste";

/** How much of the product the liquor keeps although it falls out. */
export type Completeness =
  | {
      /** At equilibrium of all that is in the liquor; where that is not known, what as much pure water would keep. */
      readonly dissolved: Quantity<"mass">;
      /** Temperature the figure is for. */
      readonly at: Quantity<"temperature">;
      /** Share of the theory that falls out. */
      readonly fallsOut: Quantity;
      /** What the figures rest on, and leave out. */
      readonly limits: string;
      /** pH of the liquor; undefined where the figure is for pure water. */
      readonly pH: Quantity | undefined;
      /** Solids that stand at equilibrium: the product, or what forms in its place. */
      readonly solids: readonly string[];
      /** The same once the carbon dioxide has gone, by stirring open or boiling; for liquors that hold carbonate. */
      readonly aired:
        | { readonly fallsOut: Quantity; readonly pH: Quantity; readonly solids: readonly string[] }
        | undefined;
      readonly test: string;
    }
  | { readonly missing: string; readonly test: string };

/** What a batch comes to. */
export interface Batch {
  readonly account: Account;
  readonly product: {
    readonly formula: string;
    readonly name: string;
    readonly amount: Quantity<"amount of substance">;
    readonly theoreticalYield: Quantity<"mass">;
  };
  readonly feeds: readonly Feed[];
  readonly isolation: Isolation;
  readonly liquor: Liquor;
  readonly gas: readonly GasEvolved[];
  readonly vessel: Vessel | undefined;
  /** How fast to add; undefined where no gas comes off. */
  readonly pace: Pace | undefined;
  readonly heat: Heat;
  /** Of each feed that is dissolved, before anything is mixed. */
  readonly dissolvingHeat: readonly DissolvingHeat[];
  /** For a product that stays in the liquor; undefined for others. */
  readonly crystallising: Crystallising | undefined;
  /** For a product that falls out; undefined for one that crystallises. */
  readonly completeness: Completeness | undefined;
  readonly washing: WashSchedule | undefined;
  /** What this kind of preparation is watched for, with figures; a usual excess where none was asked for. */
  readonly checks: readonly Check[];
  readonly candidates: readonly Candidate[];
  readonly byProducts: readonly ByProduct[];
  readonly waste: Waste;
  readonly cost: Cost;
  /** What could not be computed, and what is missing for it. */
  readonly unknown: readonly string[];
}

/** Species that stay in the liquor: by-products that do not leave as gas, fall out or are the product; soluble excess. */
function dissolvedIn(setting: Setting, account: Account, feeds: readonly Feed[]): Dissolved[] {
  const { products, product, materials } = setting;
  const byProducts = products
    .map((species, i) => ({ species, amount: account.formed[i]!.amount }))
    .filter(
      ({ species }) =>
        species !== product &&
        !isWater(species.formula) &&
        !isGas(species.formula, setting.wet) &&
        fateOf(species.formula, setting.temperature).fallsOut !== true,
    );
  const excess = materials.flatMap(({ species }, i) => {
    const { how } = feeds[i]!;
    const dissolves = !species.isWater && (how === "dissolve" || how === "solution");
    return dissolves ? [{ species, amount: account.supplied[i]!.left }] : [];
  });
  return [...byProducts, ...excess];
}

/** Masses of all that goes into the pot; or what is missing to tell them. */
function pot(
  setting: Setting,
  portions: readonly Quantity[],
  feeds: readonly Feed[],
): { masses: Quantity[]; missing: string[] } {
  const masses = feeds.flatMap((feed) => (feed.how === "dissolve" ? [feed.dissolving.water] : []));
  const missing: string[] = [];
  setting.materials.forEach(({ shelf, massOf }, i) => {
    const mass = massOf(portions[i]!);
    if (mass === undefined) missing.push(`density of ${shelf.name}`);
    else masses.push(mass);
  });
  const bringsWater = feeds.some(
    (feed) => feed.how === "dissolve" || feed.how === "solution" || feed.how === "unknown",
  );
  if (setting.wet && !bringsWater) missing.push("how much water the solids are stirred into");
  return { masses, missing };
}

/** The liquor is no pure water: what the reaction makes beside the product is not in such a figure. */
const LIMITS = "in pure water; acid, ammonium or CO2 of this reaction keep more in solution";

/** Share of the theory that is no longer dissolved. */
const fallsOutOf = (theory: Quantity, dissolved: Quantity, label: string, assumption: string): Quantity => {
  const share = theory.minus(dissolved).dividedBy(theory).to("%");
  // more metal than theory can stay dissolved only by rounding: none falls out then
  const shown = share.isPositive() ? share : share.times(0);
  return shown.named({ symbol: "falls out", label, rule: "1 - dissolved / theory", assumption });
};

function completenessOf(setting: Setting, batch: Batch): Completeness | undefined {
  if (batch.isolation.how !== "precipitate") return undefined;
  const { product, temperature } = setting;
  const test =
    "let a little of the clear liquor stand with a drop of the precipitant: a cloud means that more is needed";
  const { water } = batch.liquor;
  const theory = batch.product.theoreticalYield;
  const kept = inBeaker(setting, batch.account, water, "kept");
  if (kept !== undefined) {
    const aired = kept.carbonate ? inBeaker(setting, batch.account, water, "leaves") : undefined;
    const limits = `at equilibrium of the whole liquor${kept.carbonate ? ", carbon dioxide kept" : ""}${
      kept.times === 1
        ? ""
        : `, computed with ${kept.times.toPrecision(2)} times the water: the liquor is too strong for the model`
    }; ${kept.composition.assumptions.at(-1)}`;
    return {
      dissolved: kept.dissolved,
      at: temperature,
      fallsOut: fallsOutOf(theory, kept.dissolved, "share that falls out, at equilibrium", limits),
      limits,
      pH: kept.composition.pH,
      solids: kept.composition.solids.map(({ formula }) => formula),
      aired:
        aired === undefined
          ? undefined
          : {
              fallsOut: fallsOutOf(theory, aired.dissolved, "share that falls out once aired", "carbon dioxide gone"),
              pH: aired.composition.pH,
              solids: aired.composition.solids.map(({ formula }) => formula),
            },
      test,
    };
  }
  const keptAt = (T: typeof temperature) =>
    water?.isPositive() === true ? keptByWater(product.formula, water, T) : undefined;
  // Solubility products are tabulated at 25 °C: near enough for what a precipitate leaves behind, and said.
  const here = keptAt(temperature);
  const inWater = here ?? keptAt(exact("25 °C"));
  if (inWater === undefined) return { missing: `what the liquor keeps of ${product.name}`, test };
  return {
    dissolved: inWater,
    at: inWater === here ? temperature : exact("25 °C"),
    fallsOut: fallsOutOf(theory, inWater, "share that falls out, were the liquor pure water", LIMITS),
    limits: LIMITS,
    pH: undefined,
    solids: [],
    aired: undefined,
    test,
  };
}

/** A batch reckoned before, of which whatever still holds is taken over. */
export interface Before {
  readonly setting: Setting;
  readonly portions: readonly Quantity[];
  readonly batch: Batch;
}

/** Everything about a batch that follows from what is put into it. */
export function batchOf(setting: Setting, portions: readonly Quantity[], before?: Before): Batch {
  const { request, reactants, products, product, materials, temperature, pressure, room } = setting;
  const asBefore = (i: number): boolean =>
    before !== undefined && before.portions[i] === portions[i] && before.setting.materials[i] === materials[i];
  // The sums know nothing of the temperature; a feed knows nothing of the other feeds.
  const sums = materials.every((_, i) => asBefore(i)) ? before?.batch : undefined;
  const account = sums?.account ?? accountFor(materials, portions, reactants, products);
  const formed = account.formed[products.indexOf(product)]!;
  const theoreticalYield = massFor(
    formed.amount,
    product.formula,
    { symbol: `m_th(${product.name})`, label: `theoretical yield of ${product.name}` },
    product.molarMass,
  );
  const headroom = request.headroom ?? Number(PLANNING.headroom.value);
  const inner = lazily({
    pot: () => pot(setting, portions, batch.feeds),
    dissolved: () => dissolvedIn(setting, account, batch.feeds),
  });
  const batch: Batch = lazily<Batch>({
    account: () => account,
    product: () => ({
      formula: product.name,
      name: request.productName ?? product.name,
      amount: formed.amount,
      theoreticalYield,
    }),
    feeds: () =>
      materials.map((material, i) =>
        asBefore(i) && before?.setting.temperature === temperature
          ? before.batch.feeds[i]!
          : feedOf(material, portions[i]!, temperature, headroom, setting.wet),
      ),
    isolation: () => isolationOf(setting, theoreticalYield),
    liquor: () => liquorOf(batch.feeds, materials, account, reactants, products, inner.dissolved, temperature),
    gas: () =>
      gasesOf(
        products.map((species, i) => ({
          formed: account.formed[i]!,
          hill: species.formula.compositionText,
          gas: isGas(species.formula, setting.wet),
        })),
        { temperature, pressure },
      ),
    vessel: () => {
      const intoAcid = batch.feeds.some((feed) => feed.how === "solid") && batch.gas.length > 0;
      if (!setting.wet) return undefined;
      const { masses, missing } = inner.pot;
      return missing.length > 0 ? undefined : vesselFor(masses, temperature, batch.gas, intoAcid, request.foamFactor);
    },
    pace: () => paceOf(batch.gas, batch.vessel, room),
    heat: () => heatOf(setting, account, batch.feeds, inner.pot.missing.length > 0 ? undefined : inner.pot.masses),
    dissolvingHeat: () => dissolvingHeatOf(setting, account, batch.feeds),
    crystallising: () => crystallisingOf(setting, account, batch.isolation, inner.dissolved, theoreticalYield),
    completeness: () => completenessOf(setting, batch),
    washing: () =>
      batch.isolation.how === "precipitate" && batch.vessel !== undefined
        ? washingOf(setting, inner.dissolved, batch.vessel.liquid, theoreticalYield)
        : undefined,
    checks: () => checksOf(procedureOf(setting).kind, setting, batch),
    candidates: () =>
      sums?.candidates ??
      candidatesFor(
        product.formula,
        { ...formed, mass: theoreticalYield },
        reactants.map((s) => s.formula),
        request.alternatives ?? [],
      ),
    byProducts: () => byProductsOf(setting, account, inner.dissolved),
    waste: () => wasteOf(setting, inner.dissolved, batch.vessel, batch.washing, batch.liquor.water),
    cost: () => sums?.cost ?? costOf(materials, account.supplied, theoreticalYield, formed.amount),
    unknown: () => [
      ...batch.liquor.missing,
      ...inner.pot.missing,
      ...(batch.isolation.how === "unknown" ? [batch.isolation.missing] : []),
      ...(batch.washing !== undefined && "missing" in batch.washing ? [batch.washing.missing] : []),
      ...("missing" in batch.heat && setting.wet ? [batch.heat.missing] : []),
      ...batch.dissolvingHeat.flatMap((one) => ("missing" in one ? [`${one.material}: ${one.missing}`] : [])),
    ],
  });
  return batch;
}

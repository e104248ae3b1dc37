// What is left at the end: each vessel with how much is in it and what is put to it, what is worth keeping, what becomes of the packs.
import { molarMass, parseFormula } from "../../formula";
import { capital, list } from "../../foundation/wording";
import type { WasteVessel } from "../../preparation";
import { isAcid, isFromRounding, isLye, isMetal, isPoisonInWaste, isWorthTreating } from "../../preparation/internal";
import type { Quantity } from "../../quantity";
import type { Block } from "../document/blocks";
import { about, pretty, sentence } from "../figures";
import { filled, type SheetWords } from "../words";
import { handFor, instrumentsOf, type OnPaper } from "./context";
import { asksForIgnition } from "./mass-table";

/** Work that is done where somebody wants to know. */
const OPTIONAL = "ignition test";

/** Cautions of the ignition test, where the meaning of a mass asks for one. */
export const testCautions = (on: OnPaper): string[] =>
  asksForIgnition(on.plan) ? furtherCautions(on, (work) => work === OPTIONAL) : [];

/** Cautions of work that is no step of its own: the ignition test, the waste. */
function furtherCautions({ plan }: OnPaper, about: (work: string) => boolean): string[] {
  const said = new Set(plan.steps.flatMap(({ cautions }) => cautions.map(({ text }) => text)));
  return plan.stepCautions
    .filter(({ step }) => about(step))
    .flatMap(({ step, cautions }) =>
      cautions
        .filter(({ about: substance, text }) => substance === undefined && !said.has(text))
        .map(({ text }) => `${capital(step)}: ${text}.`),
    );
}

/** As many substances of a vessel are named. */
const MOST_NAMED = 4;

/** What is in a vessel that is left, heaviest first, as far as a balance shows it and a line names it. */
function heaviest({ plan }: OnPaper, { contents }: WasteVessel) {
  const step = instrumentsOf(plan).mass;
  const masses = new Map<string, Quantity>();
  for (const { formula, mass } of [
    ...contents.solids,
    ...contents.dissolved.map(({ formula, amount }) => ({ formula, mass: amount.times(molarMass(formula)).to("g") })),
  ])
    masses.set(formula, masses.get(formula)?.plus(mass) ?? mass);
  const inside = [...masses]
    .map(([formula, mass]) => ({ formula, mass }))
    .filter(({ mass }) => mass.compare(step) >= 0);
  return inside.sort((one, other) => other.mass.compare(one.mass)).slice(0, MOST_NAMED);
}

function contentsLine(on: OnPaper, vessel: WasteVessel): string {
  const { words } = on;
  const hand = handFor(on);
  const known = heaviest(on, vessel).map(({ mass, formula }) =>
    filled(words.massOf, { mass: hand.grams(mass), formula }),
  );
  // what is missing in the data stands in a list of its own
  const missing = vessel.contents.unknown
    .filter((what) => !on.plan.unknown.includes(what))
    .map((what) => `${what} (${words.unknown})`);
  const isLiquor = vessel.vessel === "mother liquor" || vessel.vessel === "filtrate";
  const offered = isLiquor
    ? on.plan.steps.find(({ operation, alcohol }) => operation === "cool" && alcohol !== undefined)
    : undefined;
  const alcohol = offered === undefined ? [] : [filled(words.upToAlcohol, { volume: hand.litres(offered.alcohol!) })];
  const all = [...known, ...missing, ...alcohol];
  return all.length === 0 ? words.hardlyAnything : all.join(", ");
}

/** What to put to one vessel, and how much of it. */
const treatments = (on: OnPaper, { treatment }: Pick<WasteVessel, "treatment">): string[] => {
  const { words } = on;
  const hand = handFor(on);
  return treatment.filter(isWorthTreating).map(({ reagent, purpose, mass, most, vinegar }) =>
    most !== undefined
      ? filled(words.reagentUpTo, {
          mass: hand.grams(mass!),
          most: hand.grams(most),
          reagent: pretty(reagent),
          purpose,
        })
      : vinegar === undefined
        ? filled(words.reagentFor, {
            mass: mass === undefined ? "" : hand.grams(mass),
            reagent: pretty(reagent),
            purpose,
          })
        : filled(words.vinegarFor, { volume: hand.litres(vinegar), purpose }),
  );
};

const nameOf = (vessel: WasteVessel["vessel"], words: SheetWords): string =>
  ({
    "mother liquor": words.motherLiquor,
    filtrate: words.filtrate,
    "wash water": words.washWater,
    residue: words.residue,
    "gas trap": words.inTrap,
    liquor: words.liquor,
  })[vessel];

/** What a clean mother liquor is kept for. */
function nextBatchOf(on: OnPaper, { nextBatch }: WasteVessel): string[] {
  if (nextBatch === undefined) return [];
  const { words } = on;
  const { grams, litres } = handFor(on);
  const { water, share, excess, batches } = nextBatch;
  return [
    filled(words.nextBatch, {
      water: litres(water),
      share: about(share, "%", 2),
      excess: excess
        .map(({ formula, mass }) => filled(words.nextExcess, { formula: pretty(formula), mass: grams(mass) }))
        .join(""),
      batches: batches === undefined ? words.nextBatchesUntold : filled(words.nextBatches, { count: String(batches) }),
    }),
  ];
}

/** One line for each vessel: what it is, how much, what is in it, and what is put to it. */
function vesselLine(on: OnPaper, one: WasteVessel): string {
  const { words } = on;
  const { contents, vessel, volume } = one;
  const isMetals = contents.solids.length > 0 && contents.solids.every(({ formula }) => isMetal(parseFormula(formula)));
  const name = vessel === "residue" && isMetals ? words.metalLeft : nameOf(vessel, words);
  const hand = handFor(on);
  const which =
    vessel === "residue" || contents.volume === undefined
      ? name
      : filled(words.ofVolume, {
          vessel: name,
          volume: volume === undefined ? hand.grams(contents.mass) : hand.litres(volume),
        });
  const step = instrumentsOf(on.plan).mass;
  const all = contentsLine(on, one);
  const isNamed = (symbol: string): boolean =>
    heaviest(on, one).some(({ formula }) => parseFormula(formula).count(symbol).n !== 0n);
  const traces = one.metals
    .filter(({ symbol, mass, most }) => isPoisonInWaste(symbol) && (most ?? mass).compare(step) < 0 && !isNamed(symbol))
    .map(({ symbol }) => symbol);
  const inside = traces.length === 0 ? all : filled(words.poisonTraces, { inside: all, metal: list(traces) });
  const next = nextBatchOf(on, one);
  const last = treatments(on, one);
  const end = next.length > 0 && last.length === 0 ? [words.asOthers] : last;
  return [`${which}: ${inside}.`, ...next, ...end].join(" ");
}

function wasteItems(on: OnPaper): string[] {
  const { plan, words } = on;
  const { waste, byProducts, cautions } = plan;
  const hand = handFor(on);
  const vessels = waste.vessels.map((one) => vesselLine(on, one));
  const step = instrumentsOf(plan).mass;
  const metals = waste.metals
    .filter(({ precipitate, mass, most }) => precipitate && (most ?? mass).compare(step) >= 0)
    .map(({ symbol, mass, most, pH }) =>
      filled(
        most === undefined
          ? words.dissolvedMetal
          : mass.compare(step) < 0
            ? words.dissolvedUpTo
            : words.dissolvedAtLeast,
        {
          metal: symbol,
          mass: hand.grams(mass),
          most: most === undefined ? "" : hand.grams(most),
          pH: pH ?? words.unknown,
        },
      ),
    );
  const kept = byProducts
    .filter(({ where, worthKeeping }) => where === "in the liquor" && worthKeeping)
    .map(({ mass, formula, why }) => filled(words.worthKeeping, { mass: hand.grams(mass), formula, why }));
  // of an acid or a lye that is used up nothing is there to be neutralised
  const isUsedUp = (form: string): boolean => {
    const formula = parseFormula(form);
    const own = plan.materialBalance.supplied.filter((one) => one.form === form);
    return (isAcid(formula) || isLye(formula)) && own.length > 0 && own.every(({ excess }) => isFromRounding(excess));
  };
  const handled = new Set(plan.weighings.map(({ form }) => form).filter((form) => !isUsedUp(form)));
  // of what is left as it is nothing else is said
  const disposal = (waste.isLeftAsItIs ? [] : cautions.substances)
    .filter(({ material, status }) => status === "classified" && handled.has(pretty(material)))
    .map(({ material, disposal: how }) =>
      filled(words.ofMaterial, { observation: pretty(material), material: how ?? "" }),
    );
  return [
    ...vessels,
    ...metals,
    ...waste.notes.map(sentence),
    ...kept,
    ...disposal,
    ...furtherCautions(on, (work) => work !== OPTIONAL),
    ...(waste.volume === undefined ? [] : [waste.closing]),
  ];
}

export const wasteBlocks = (on: OnPaper): Block[] => [
  { kind: "heading", text: on.words.wasteOf },
  { kind: "list", items: [...new Set(wasteItems(on))] },
];

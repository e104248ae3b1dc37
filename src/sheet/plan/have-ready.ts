// What stands ready: vessels, tools and small things, in the order in which they are used.
import { molarMass, parseFormula } from "../../formula";
import { constitutionOf } from "../../ion";
import type { AtHand, Plan, ProcedureStep } from "../../preparation";
import { dropsFor, isInDistilledWater, isInRoom, isLye, staysInWater } from "../../preparation/internal";
import type { Quantity } from "../../quantity";
import type { Block } from "../document/blocks";
import { about, pretty, sizeOf } from "../figures";
import { filled } from "../words";
import {
  absorbentsOf,
  asRead,
  gasesLedIn,
  handFor,
  instrumentsOf,
  mostWasteOf,
  numberOf,
  type OnPaper,
  trapOf,
  waterOf,
} from "./context";
import { isWarm, keepsFlamesOff } from "./heat";

/** Smallest usual jug that takes a volume with room to stir. */
const JUGS = [50, 100, 250, 500, 1000, 2000, 3000, 5000, 10_000, 20_000] as const;

function jugFor(on: OnPaper, volume: Quantity): string {
  const needed = volume.toNumber("mL") * 1.25;
  const size = JUGS.find((mL) => mL >= needed);
  if (size === undefined) return handFor(on).litres(volume);
  return size < 1000 ? `${size} mL` : `${size / 1000} L`;
}

/** Vessel of the work itself. */
const POT = "pot";

/** What boils down to a mass, or makes up to one what has steamed off. */
const BY_MASS: readonly ProcedureStep["operation"][] = ["concentrate", "dilute", "filter", "hold"];

/** Steps that bring the contents to a mass, or to no less than one: the empty vessel is weighed before. */
export const broughtToMass = ({ steps }: Plan): ProcedureStep[] =>
  steps.filter(({ operation, target, limit, after }) => {
    const mass = operation === "cool" ? limit : BY_MASS.includes(operation) ? target : undefined;
    return mass?.dimension === "mass" && after.water.isPositive();
  });

/** What crystals are rinsed with, where it comes from neither tap nor pack. */
function rinses(on: OnPaper): string[] {
  const { plan, words } = on;
  return plan.steps
    .filter(({ operation, materials }) => operation === "rinse" && materials.length === 0)
    .flatMap((step) => {
      const [liquid] = step.put;
      if (liquid === undefined || !liquid.water.isPositive()) return [];
      const volume = handFor(on).litres(liquid.volume ?? liquid.mass);
      const isWarm = liquid.temperature.compare(plan.temperature) > 0;
      const temperature = liquid.temperature.format({ unit: "°C", decimals: 0, uncertainty: "none" });
      return [filled(isWarm ? words.warmRinse : words.rinse, { volume, temperature, step: numberOf(plan, step) })];
    });
}

/** Washes with a little acid in their water. */
function sourWashes(on: OnPaper): string[] {
  const { plan, words } = on;
  return plan.steps.flatMap((step) => {
    const [liquid] = step.put;
    const { acidDiluted } = step;
    if (liquid === undefined || acidDiluted === undefined) return [];
    const { litres, grams } = handFor(on);
    const volume = litres(liquid.volume ?? liquid.mass);
    const { strength, portion, formula, pack } = acidDiluted;
    const taken = portion.dimension === "volume" ? litres(portion) : grams(portion);
    const all = { volume, acid: pretty(formula), pack: pack ?? "", strength, taken, step: numberOf(plan, step) };
    return [filled(pack === undefined ? words.sourWash : words.ownSourWash, all)];
  });
}

/** Dilute acid that takes the rest of a metal, and that no pack of the plan brings. */
function diluteAcids(on: OnPaper): string[] {
  const { plan, words } = on;
  return plan.steps.flatMap((step) => {
    const [liquid] = step.put;
    const [acid] = liquid?.dissolved ?? [];
    const isBrought = step.materials.length > 0 || step.from !== undefined || step.vessel !== POT;
    if (step.operation !== "add" || isBrought || liquid === undefined || acid === undefined) return [];
    if (constitutionOf(parseFormula(acid.formula)).acid === undefined) return [];
    const strength = acid.amount.times(molarMass(acid.formula)).dividedBy(liquid.mass).to("%");
    return [
      filled(words.diluteAcid, {
        mass: handFor(on).grams(liquid.mass),
        strength: about(strength, "%", 2),
        acid: pretty(acid.formula),
        step: numberOf(plan, step),
      }),
    ];
  });
}

/** Alcohol that no pack of the plan brings; up to so much where a step takes it only if nothing crystallises. */
function alcohols(on: OnPaper): string[] {
  const { plan, words } = on;
  return plan.steps.flatMap((step) => {
    if (step.alcohol === undefined) return [];
    const phrase = step.put.length === 0 ? words.alcoholUpTo : words.alcohol;
    return [filled(phrase, { volume: handFor(on).litres(step.alcohol), step: numberOf(plan, step) })];
  });
}

/** What a step takes of a pack beside what is weighed of it. */
function moreOfPacks(on: OnPaper): string[] {
  const { plan, words } = on;
  return plan.steps.flatMap((step) => {
    if (step.more === undefined) return [];
    const { material, portion } = step.more;
    const of = { material, step: numberOf(plan, step) };
    return [
      portion === undefined ? filled(words.pinch, of) : filled(words.moreOf, { ...of, portion: asRead(plan, portion) }),
    ];
  });
}

/** What fills a vessel with a solution. */
const FILLS = ["dissolve", "dilute", "suspend"] as const;

/** A jug for each solution that is made beside the vessel of the work, and whose it is. */
function jugs(on: OnPaper): string[] {
  const { plan, words } = on;
  const filling = plan.steps.filter(
    ({ operation, vessel, materials }) =>
      vessel !== POT && materials.length > 0 && FILLS.some((one) => one === operation),
  );
  return [...new Set(filling.map(({ vessel }) => vessel))].flatMap((vessel) => {
    const own = filling.filter((step) => step.vessel === vessel);
    const volume = own.at(-1)?.after.volume;
    if (volume === undefined) return [];
    const material = own.flatMap(({ materials }) => materials).join(", ");
    return [filled(words.jug, { volume: jugFor(on, volume), material })];
  });
}

/** What each of them comes from, and through; water holds on to some. */
const gasSources = ({ plan, words }: OnPaper): string[] =>
  gasesLedIn(plan).map(({ material, form }) =>
    filled(staysInWater(parseFormula(form)) ? words.solubleGasSource : words.gasSource, { material }),
  );

/** What keeps a gas that is led in, and not absorbed, from the room. */
const washBottles = ({ plan, words }: OnPaper): string[] =>
  absorbentsOf(plan).map((absorbent) => filled(words.washBottle, { absorbent }));

/** What a liquid is let into a closed flask from. */
const droppingFunnel = (on: OnPaper): string[] =>
  on.plan.steps.flatMap(({ apparatus, put }) => {
    const volume = apparatus === "dropping funnel" ? put[0]?.volume : undefined;
    return volume === undefined ? [] : [filled(on.words.droppingFunnel, { size: jugFor(on, volume) })];
  });

/** What it takes a little of that no pack brings: acid that keeps a salt from water, water that clouds nothing. */
function besides({ plan, words }: OnPaper): string[] {
  const dissolved = plan.steps.flatMap(({ operation, materials }) => (operation === "dissolve" ? materials : []));
  const forms = plan.weighings
    .filter(({ material }) => dissolved.includes(material))
    .map(({ form }) => parseFormula(form));
  const acids = [
    ...forms.map((form) => dropsFor(form, "dissolving")),
    plan.isolation.how === "crystallise" ? dropsFor(parseFormula(plan.product.formula), "crystallising") : undefined,
  ];
  return [
    ...new Set(acids.flatMap((acid) => (acid === undefined ? [] : [filled(words.little, { acid })]))),
    ...(forms.some(isInDistilledWater) ? [words.distilled] : []),
  ];
}

/** Small things at hand, each once. */
function smallThings({ plan, words }: OnPaper): string[] {
  const little = (acid: string): string => filled(words.little, { acid });
  const called: Readonly<Record<AtHand, string>> = {
    "cold-water bath": words.coldBath,
    "hot-water bath": words.hotBath,
    "drying oven": words.dryingOven,
    ice: words.ice,
    "indicator paper": words.paper,
    "baking soda": words.bakingSoda,
    "dilute sulfuric acid": little("dilute sulfuric acid"),
    "dilute hydrochloric acid": little("dilute hydrochloric acid"),
    "dilute nitric acid": little("dilute nitric acid"),
    "dilute acetic acid": little("dilute acetic acid"),
    "strong ammonia": words.strongAmmonia,
    "washing-up liquid": words.washingUp,
    "seed crystals": words.seedCrystals,
    "drops of alcohol": words.alcoholDrops,
    "activated charcoal": words.charcoal,
    "iron(III) chloride solution": words.ironChloride,
    "hexacyanidoferrate(III) solution": words.ferricyanide,
    "peroxide test strips": words.peroxideStrips,
    "iodide starch paper": words.iodideStarch,
    "magnesium sulfate solution": words.epsomSalt,
    "soda lime": words.sodaLime,
    "potassium carbonate": words.potash,
    "sodium carbonate": words.soda,
    "bright piece of the metal": words.brightPiece,
    mortar: words.mortar,
    "jar or mill that closes": words.closedMill,
    magnet: words.magnet,
    "dilute acid for a test": words.acidForTest,
  };
  return [...new Set(plan.steps.flatMap(({ atHand }) => atHand))].map((one) => called[one]);
}

/** What the waste is treated with, as its own lines ask for it, and what shows when it is enough. */
function forWaste(on: OnPaper): string[] {
  const { plan, words } = on;
  const { grams, litres } = handFor(on);
  const own = plan.waste.reagents.map(({ reagent, as, portion, upTo }) => {
    const formula = pretty(reagent);
    if (as === "vinegar of 5 %") return filled(words.vinegarForWaste, { volume: litres(portion!) });
    if (as === "dilute") return filled(words.acidForWaste, { formula });
    if (portion === undefined) return filled(words.littleForWaste, { formula });
    const phrase = isLye(parseFormula(reagent)) ? words.lyeForWaste : upTo ? words.forWasteUpTo : words.forWaste;
    return filled(phrase, { mass: grams(portion), formula });
  });
  const hasPaper = plan.steps.some(({ atHand }) => atHand.includes("indicator paper"));
  return own.length === 0 || hasPaper ? own : [...own, words.paperForWaste];
}

/** What the work is done with, in the order in which it is used. */
export function kitOf(on: OnPaper): string[] {
  const { plan, words } = on;
  const { steps, vessel, waste, weighings } = plan;
  const drying = steps.find(({ operation }) => operation === "dry");
  const upTo = drying?.limit;
  const instruments = instrumentsOf(plan);
  const does = (...operations: readonly string[]): boolean =>
    steps.some(({ operation }) => operations.includes(operation));
  const room = plan.temperature;
  const warm = isWarm(plan);
  const byMass = broughtToMass(plan);
  /** What is brought to a mass is weighed before. */
  const emptied = (item: string, isIt: (step: ProcedureStep) => boolean): string =>
    byMass.some(isIt) ? filled(words.weighedEmpty, { item }) : item;
  const isInDish = ({ apparatus }: ProcedureStep): boolean => apparatus === "wide dish";
  const measures = weighings.some(({ portion }) => portion.dimension === "volume") || steps.some(waterOf);
  const evaporates = steps.some(isInDish);
  const tests = steps.filter(({ reagents }) => reagents.length > 0);
  const trap = trapOf(plan);
  const acids = besides(on);
  return [
    filled(words.balance, { step: String(instruments.mass) }),
    ...(measures ? [filled(words.cylinder, { step: String(instruments.volume) })] : []),
    ...(vessel?.smallest === undefined
      ? []
      : [
          emptied(
            filled(
              trap !== undefined ? words.flaskOf : absorbentsOf(plan).length > 0 ? words.flaskOfTwo : words.vesselOf,
              { size: sizeOf(vessel.smallest) },
            ),
            (step) => step.vessel === POT && !isInDish(step),
          ),
        ]),
    ...droppingFunnel(on),
    ...gasSources(on),
    ...washBottles(on),
    ...acids,
    ...(trap === undefined ? [] : [filled(words.trap, { volume: handFor(on).litres(trap) })]),
    ...jugs(on),
    ...steps.flatMap((step) =>
      step.largerVessel === undefined
        ? []
        : [filled(words.largerVessel, { size: sizeOf(step.largerVessel), step: numberOf(plan, step) })],
    ),
    ...(does("dissolve", "suspend", "add") && vessel !== undefined ? [words.stirrer] : []),
    ...(warm || does("concentrate") ? [keepsFlamesOff(plan) ? words.flameless : words.hotPlate] : []),
    ...(warm || (vessel !== undefined && !("missing" in plan.heat)) ? [words.thermometer] : []),
    ...smallThings(on).filter((one) => !acids.includes(one)),
    ...(evaporates ? [emptied(words.dish, isInDish)] : []),
    ...(does("filter", "wash") ? [words.filter] : []),
    ...(byMass.some((step) => step.vessel !== POT) ? [emptied(words.motherDish, ({ vessel }) => vessel !== POT)] : []),
    ...rinses(on),
    ...sourWashes(on),
    ...diluteAcids(on),
    ...alcohols(on),
    ...moreOfPacks(on),
    ...tests.map((step) => filled(words.reagents, { step: numberOf(plan, step), reagents: step.reagents.join(", ") })),
    ...(does("dry") ? [words.tray] : []),
    ...(drying?.apparatus === "desiccator" || does("fire") ? [words.desiccator] : []),
    ...(upTo !== undefined && !isInRoom(upTo) && upTo.compare(room) > 0
      ? [filled(words.oven, { temperature: upTo.format({ unit: "°C", decimals: 0, uncertainty: "none" }) })]
      : []),
    ...(does("fire") ? [words.kiln] : []),
    ...forWaste(on),
    ...(waste.volume === undefined
      ? []
      : [filled(words.container, { volume: handFor(on).litres(mostWasteOf(plan)?.volume ?? waste.volume) })]),
  ];
}

export const readyBlocks = (on: OnPaper): Block[] => [
  { kind: "heading", text: on.words.ready },
  { kind: "ticks", items: kitOf(on) },
];

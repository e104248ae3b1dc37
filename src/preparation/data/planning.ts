// Planning values: what a plan uses where the request gives nothing else, and where it draws its lines. Rules of thumb of
// the bench, every one of them to be overridden by whoever knows better.
import type { SourceKey } from "./sources";

/** One planning value. */
interface PlanningRow {
  /** Number, with its unit where it has one. */
  readonly value: string;
  /** What it is and why it is not another figure. */
  readonly what: string;
  readonly source: SourceKey;
}

export const PLANNING = {
  // -- the frame
  temperature: { value: "20 °C", what: "a room that is heated", source: "commonPractice" },
  pressure: { value: "101.325 kPa", what: "the standard atmosphere", source: "commonPractice" },
  massStep: { value: "0.1 g", what: "display of a kitchen or school balance", source: "commonPractice" },
  volumeStep: { value: "1 mL", what: "marks of a small measuring cylinder", source: "commonPractice" },
  roomVolume: { value: "30 m3", what: "a small workroom", source: "commonPractice" },
  airChanges: { value: "2 /h", what: "air exchange, window slightly open", source: "commonPractice" },
  // -- dissolving and the vessel
  feedStrength: { value: "1 mol/kg", what: "of a feed in its water for a precipitation: at 0.5 to 1 mol/L the precipitate filters, above that it is slimy", source: "commonPractice" },
  baseStrength: { value: "4 mol/kg", what: "of a base or a metal salt in its water where the product is to crystallise: less to boil off", source: "commonPractice" },
  staysLiquid: {
    value: "25 %",
    what: "of the water put in stays liquid at least, where a reaction binds it: what is left must still be stirred",
    source: "commonPractice",
  },
  thinFeed: { value: "0.5 mol/kg", what: "of a feed in water where no solubility is known", source: "commonPractice" },
  coldWaterFactor: { value: "1.2", what: "times the water that just dissolves a feed is the least, so that it stays dissolved when something joins it", source: "commonPractice" },
  hotWaterFactor: { value: "1", what: "times the water that just dissolves a feed at 80 °C, where the product is to crystallise: little over the least near the boil", source: "commonPractice" },
  dilutedAcid: { value: "25 %", what: "by mass and less is an acid diluted to before anything is put into it", source: "commonPractice" },
  precipitatesBelow: { value: "1 g", what: "in 100 g of water: below this a feed is stirred in as a solid, and a product is filtered off; above it dissolves and crystallises", source: "commonPractice" },
  thinEnough: { value: "50 %", what: "of a liquid by mass: above it heats at great dilution say nothing", source: "commonPractice" },
  cementAcid: { value: "10 %", what: "by mass of the acid that a precipitated metal is stirred with, to dissolve the metal it was cemented by", source: "commonPractice" },
  cloudsAbove: { value: "0.5 mmol/L", what: "of a product in its clear liquor, above which any drop that shares an ion with it gives a cloud", source: "commonPractice" },
  keptWarm: { value: "0.02 g", what: "of a precipitate in 100 g of cold water and more: its liquor is not warmed, which would cost some of it", source: "commonPractice" },
  cementSour: { value: "2.5 %", what: "by mass of sulfuric acid in the liquor, at least, where it takes the powder of a metal out of the one that it precipitated", source: "commonPractice" },
  dilute: { value: "10 %", what: "of an acid, alkali or ammonia by mass and less is dilute: above it goes into water, never water into it", source: "commonPractice" },
  warm: { value: "10 ΔK", what: "and more of warming asks for adding slowly", source: "commonPractice" },
  foamWithoutGas: { value: "1.5", what: "times the liquid: room to stir", source: "commonPractice" },
  foamWithGas: { value: "2", what: "times the liquid: gas, added in portions and stirred", source: "commonPractice" },
  foamIntoAcid: { value: "3", what: "times the liquid: carbonate or metal into acid", source: "commonPractice" },
  portionWarms: { value: "10 ΔK", what: "is the most that one portion of what gives gas and heat may warm the vessel by", source: "commonPractice" },
  needsCooling: { value: "40 ΔK", what: "of warming and more: between two portions the vessel cools in a bath", source: "commonPractice" },
  coolsDownTo: { value: "40 °C", what: "is what it cools to before the next portion", source: "commonPractice" },
  portionLasts: { value: "0.5 min", what: "and more from one portion of what foams to the next: put in, stirred, and its foam gone", source: "commonPractice" },
  gasFlow: { value: "1 /min", what: "volume of the vessel is the most gas that may leave it in a minute: faster, foam and spray go over", source: "commonPractice" },
  leastPortions: { value: "5", what: "portions for anything that gives off gas, however small", source: "commonPractice" },
  // -- washing and drying
  washesOf: { value: "5", what: "times what the cake retains makes one wash: fewer, larger washes waste water", source: "commonPractice" },
  decantationsOf: { value: "3", what: "times what the settled sludge keeps makes one wash by decantation", source: "commonPractice" },
  joinedPortions: { value: "2", what: "portions of hot water, each as much as a cake of another solid keeps of a wanted liquor, are washed through it into that", source: "commonPractice" },
  lastAlcohol: { value: "2", what: "times the water that a cake keeps is the alcohol of its last wash", source: "commonPractice" },
  ice: { value: "0 °C", what: "water for rinsing crystals, from ice", source: "commonPractice" },
  residue: { value: "0.5 %", what: "of by-products may stay in the dry product", source: "commonPractice" },
  airDry: { value: "30 °C", what: "and less is drying in air, where two weighings are hours apart", source: "commonPractice" },
  constantMass: { value: "0.2 %", what: "between two weighings is constant mass, where two steps of the balance are less", source: "commonPractice" },
  belowChange: { value: "20 Δ°C", what: "kept below the temperature at which heat begins to change a product; it moves by tens", source: "commonPractice" },
  belowTurning: { value: "3 Δ°C", what: "kept below the temperature at which damp crystals turn into a solid with less water: it is sharp", source: "commonPractice" },
  oven: { value: "105 °C", what: "highest in a drying oven, however stable the product: water is gone, and more only changes it", source: "commonPractice" },
  waterBoils: { value: "100 °C", what: "and more dries everything: who stays below does so for the sake of the product", source: "commonPractice" },
  ovenIsOff: { value: "40 ΔK", what: "is what an oven may be off, its hot places counted", source: "commonPractice" },
  inAir: { value: "25 °C", what: "highest for a product that changes near room temperature: a warm day", source: "commonPractice" },
  looseDensity: { value: "0.7 g/mL", what: "of a loose powder, for the room it takes: chalk 0.5, oxides of heavy metals to 1.5", source: "commonPractice" },
  redHeat: { value: "1000 °C", what: "highest of an ignition: a burner or a small kiln gives it", source: "commonPractice" },
  kilnSlip: { value: "300 ΔK", what: "most by which a kiln or burner that was set for a firing runs too hot", source: "commonPractice" },
  gentle: { value: "40 °C", what: "highest for a hydrate or an ammine whose first loss is not tabulated", source: "commonPractice" },
  overheated: { value: "400 °C", what: "highest that a product meant to be dried meets by mistake: a hot plate, an oven for bread", source: "commonPractice" },
  hot: { value: "80 °C", what: "a solution that is to crystallise, hot but not boiling", source: "commonPractice" },
  leastMarks: { value: "5", what: "marks of the measuring cylinder and less are too little water to boil off for a second crop", source: "commonPractice" },
  lostByRinsing: { value: "20 %", what: "of the crystals and more is too much to lose by rinsing", source: "commonPractice" },
  leastSteps: { value: "20", what: "steps of the balance and less are too little water to boil off by weight", source: "commonPractice" },
  goodSecond: { value: "10 %", what: "of the theory and more is a second crop worth boiling water off by weight, where no cylinder shows so little", source: "commonPractice" },
  crystalPurity: { value: "80 %", what: "of the product and more is a second crop of it, from a pair of salts", source: "commonPractice" },
  leastLiquor: { value: "30 %", what: "of the mass of crystals is the least liquor that can be drained from them", source: "commonPractice" },
  cleanCrop: { value: "95 %", what: "of the product and more is a first crop: what is beside it stays dissolved or goes on the hot filter, where there is a way", source: "commonPractice" },
  leastCrop: { value: "20 %", what: "of the product and more is a crop that is worth a clean way", source: "commonPractice" },
  poorCrop: { value: "70 %", what: "and less of the product by cooling is a poor crop: its liquor is boiled down into its own crystals, where those are the same hot and cold", source: "commonPractice" },
  flatCooling: { value: "25 %", what: "and less of a product by cooling is evaporated, where nothing is beside it", source: "commonPractice" },
  mostly: { value: "50 %", what: "and more of the product in clean crystals is most of it", source: "commonPractice" },
  coolsBy: { value: "15 ΔK", what: "between hot and cold and less is no cooling", source: "commonPractice" },
  warmFilter: { value: "90 %", what: "is the worth of a crop that is filtered warm", source: "commonPractice" },
  aboveChange: { value: "3 ΔK", what: "above a change of hydrate is time to filter", source: "commonPractice" },
  littleMore: { value: "2 %", what: "of water or of the theory makes no difference to a crop", source: "commonPractice" },
  staysInLiquor: { value: "15 %", what: "of a product stays in the liquor it is boiled down to, where a hot saturated solution is not known or brings little by cooling", source: "commonPractice" },
  drivesOff: { value: "20 ΔK", what: "hotter than it boils by itself, a liquid is driven out of water", source: "commonPractice" },
  boilsLow: { value: "60 °C", what: "and lower is the boiling point of a by-product whose vapour is minded from the first", source: "commonPractice" },
  noLiquor: { value: "10 %", what: "of the theory and less in a liquor, the rest as another solid, is no liquor to keep", source: "commonPractice" },
  // -- excess
  usualExcess: { value: "5 %", what: "excess of the cheap reagent that washes or filters off; a plan takes it only where the request does", source: "commonPractice" },
  asGoodAsNone: { value: "1 %", what: "over comes from rounding to the balance", source: "commonPractice" },
  // -- yield
  handlingLoss: { value: "10 %", what: "of the theory may stay on filters and vessels before a low yield needs a reason", source: "commonPractice" },
  poorlyDrained: { value: "1.5", what: "times the liquor planned for crystals is what badly drained ones keep", source: "commonPractice" },
  dripping: { value: "2", what: "times the liquor planned for a cake is what one keeps that only dripped on its paper, without suction", source: "commonPractice" },
  firedThrough: { value: "90 %", what: "of the gain in a fire, and more, must show in a mass that handling made smaller for it to tell that all has reacted", source: "commonPractice" },
  crucibleLoss: { value: "2 %", what: "of the theory may stay in a crucible: nothing is filtered, and it is weighed where it was fired", source: "commonPractice" },
  liquorLoss: { value: "2 %", what: "of a liquor that is kept may stay in vessel and filter, which are rinsed into it", source: "commonPractice" },
  spill: { value: "20 %", what: "of a spill is what its estimate may be off, where no uncertainty is given", source: "commonPractice" },
  worthAWord: { value: "0.5 %", what: "of the product: less beside it, or lost of it, is not worth a word", source: "commonPractice" },
  trace: { value: "0.01 %", what: "of a dry product: less of another substance is not carried by name into the next preparation", source: "commonPractice" },
  tooCoarse: { value: "5 %", what: "of a mass is the most that twice its uncertainty may be, for the mass to say anything", source: "commonPractice" },
  farAbove: { value: "130 %", what: "of a theory is above it even where the balance is good to a few percent only", source: "commonPractice" },
  exactHit: { value: "0.5 %", what: "and less from the theory of another form is an exact hit, listed within the handling loss too", source: "commonPractice" },
  saltsShow: { value: "2 %", what: "of salts that a run itself knows of in its product need a word before any yield", source: "commonPractice" },
  impure: { value: "2 %", what: "short of pure by titration is an impure product", source: "commonPractice" },
  mostInert: { value: "40 %", what: "of a pack and more that fire leaves as it is makes it another material", source: "commonPractice" },
  smallPart: { value: "5 %", what: "of a second solid and less that ignition finds in one sample may be chance", source: "commonPractice" },
  dryHolds: { value: "3 %", what: "of water in a sample at constant mass: a gel dried at 100 °C holds 1 to 3 %", source: "commonPractice" },
  dampHolds: { value: "20 %", what: "of water in a sample nobody dried to constant mass", source: "commonPractice" },
  sampleScatter: { value: "0.2 %", what: "points are what the losses of two samples of one powder differ by: damp air, a fire that is nearly done", source: "commonPractice" },
  titration: { value: "1 %", what: "uncertainty of a bench titration that states none", source: "commonPractice" },
  sameWater: { value: "2 %", what: "points within which two ways to tell the water agree", source: "commonPractice" },
  // -- learning from runs: what is believed before the first of them
  runScatter: { value: "3 %", what: "of the theory is what yields of one preparation scatter by from run to run, weighed as two runs", source: "commonPractice" },
  statedAssay: { value: "2 %", what: "is what the assay on a pack may be off, where it states no uncertainty", source: "commonPractice" },
  liquorDoubt: { value: "50 %", what: "of the liquor that is planned to stay in a cake is what a cake may really be off", source: "commonPractice" },
  waterDoubt: { value: "10 %", what: "is what the water of a liquor may be off, where nobody measured it: jugs, rinsings, steam", source: "commonPractice" },
  // -- recipes
  largeExcess: { value: "2", what: "times the need: more than this is worth a word", source: "commonPractice" },
  shortage: { value: "1 %", what: "short of the need is rounding", source: "commonPractice" },
  crystalShortage: { value: "5 %", what: "short of the need of a salt or a complex that crystallises: its liquor keeps that much of either anyway", source: "commonPractice" },
  countsAsPure: { value: "98 %", what: "and more is taken as pure by the trade", source: "commonPractice" },
  impossible: { value: "100.5 %", what: "of the theory and less is rounding; above it no yield can be", source: "commonPractice" },
  notDrivenOff: { value: "3 %", what: "over the theory after ignition is not done yet", source: "commonPractice" },
  tooWet: { value: "30 %", what: "of water in a sample called dry explains nothing", source: "commonPractice" },
  // -- what is left
  overdose: { value: "1.1", what: "times the sum: precipitant or neutraliser for the waste", source: "commonPractice" },
  vinegarStrength: { value: "5 %", what: "by mass of acetic acid in table vinegar", source: "commonPractice" },
  vinegarDensity: { value: "1.006 g/mL", what: "density of table vinegar", source: "commonPractice" },
  runsOff: { value: "50 %", what: "of a by-product in the liquor that runs off before the washes, and more, is worth boiling down", source: "commonPractice" },
  worthBoiling: { value: "5 %", what: "by mass of a by-product in its liquor and more is worth boiling down", source: "commonPractice" },
  cleanEnough: { value: "5 %", what: "of other salts: a liquor below this gives a by-product worth keeping", source: "commonPractice" },
} as const satisfies Readonly<Record<string, PlanningRow>>;

/** Name of a planning value. */
export type PlanningName = keyof typeof PLANNING;

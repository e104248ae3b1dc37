// What is left when the product is out: litres of liquor and washings, the metals in them and what precipitates those. What
// may be poured away is never said: the local rules decide.

import { type Formula, parseFormula } from "../../formula";
import { lazily, withLazy } from "../../foundation/lazy";
import { remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { classesOfFormula, everyRule, madeOf } from "../../substance/internal";
import { complexIn } from "../contents/complexes";
import type { Contents } from "../contents/contents";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { FREE_HALOGENS, HALATES } from "../data/waste";
import { exact, planned } from "../planning/exact";
import type { Dissolved } from "../procedure/isolation";
import { fateOf } from "../reaction/fate";
import { coreOf, type Species, speciesAside } from "../reaction/species";
import type { Setting } from "../request/setting";
import { densityAt } from "../shelf/strength";
import type { NextWater } from "./next-batch";
import { burnsWithAlcohol } from "./waste-alcohol";
import { ammineLeft } from "./waste-ammine";
import { chelateLeft } from "./waste-chelate";
import { cyanidoferrateLeft } from "./waste-cyanidoferrate";
import { ammoniumNotes, freedBy, heldNotes, isWasteMetal, metalNotes, metalsIn } from "./waste-metals";
import { dry, pinches, reagentsOf, said, type WasteNote, type WasteReagent } from "./waste-note";
import { oxalateNotes } from "./waste-oxalate";
import { type DissolvedMetal, hydronsGivenBy, SODA, type Treatment, treatmentOf, upTo } from "./waste-treatment";

/** What is left in one vessel. */
export interface WasteVessel {
  /** Which of the vessels that are left. */
  readonly vessel: "mother liquor" | "filtrate" | "wash water" | "residue" | "gas trap" | "liquor";
  /** By its density where salts make it heavy, and else no more than this; undefined for a residue, for a heavy liquor whose density is not known, or where how much water there is is not known. */
  readonly volume: Quantity<"volume"> | undefined;
  /** What is in it. */
  readonly contents: Contents;
  /** Kept first, as water of the next batch of the same; undefined where it is not clean enough for that, or would not keep. */
  readonly nextBatch: NextWater | undefined;
  /** Dissolved in this vessel. */
  readonly metals: readonly DissolvedMetal[];
  /** For this vessel alone: its acid against its base first, then what is left of either, and its metals. */
  readonly treatment: readonly Treatment[];
}

/** A vessel that is left, as the steps leave it. */
export type Left = readonly [vessel: WasteVessel["vessel"], pot: Pot];

/** What is poured away together. */
export interface Poured {
  readonly pots: readonly Pot[];
  /** Alcohol that steps may take, which is in none of them. */
  readonly alcohol: Quantity;
}

/** What is left over. */
export interface Waste {
  /** Vessel by vessel, as the steps leave them. */
  readonly vessels: readonly WasteVessel[];
  /** Liquor and washings together, where the water is known: by their densities, and no more than this where one of them is not known. */
  readonly volume: Quantity<"volume"> | undefined;
  /** The same by weight. */
  readonly mass: Quantity<"mass"> | undefined;
  /** Metals that are dissolved in it, with amounts. */
  readonly metals: readonly DissolvedMetal[];
  /** What neutralises it and brings its metals down, each with 10 % excess. */
  readonly treatment: readonly Treatment[];
  /** Sodium carbonate, anhydrous, that neutralises the acid and precipitates the metals, with 10 % excess, all of the product counted where how much of it stays dissolved is not known; undefined if none is needed. */
  readonly soda: Quantity<"mass"> | undefined;
  /** What vessels and notes ask to be put to it, each with how much of it: what stands ready for it. */
  readonly reagents: readonly WasteReagent[];
  /** A note says to leave it as it is: nothing is put to it. */
  readonly isLeftAsItIs: boolean;
  /** What to know of it. */
  readonly notes: readonly string[];
  /** The sentence that sends to the rules of the place. */
  readonly closing: string;
}

const CLOSING =
  "Collect liquor and washings; what may be done with them is decided by the local rules, not by this text.";

/** A cyanide of any kind is put in or made: its liquor is never made sour and never boiled down. */
export const holdsCyanide = ({ reactants, products }: Setting): boolean =>
  [...reactants, ...products].some(({ formula }) => madeOf(formula).cyanide !== undefined);

/** Solutes of a vessel as species. */
const solutesOf = ({ books }: Pot): Dissolved[] =>
  books.dissolved.map(({ matter, amount }) => ({ species: speciesAside(matter.formula), amount }));

interface Sour {
  readonly solute: Species;
  readonly gas: string;
  readonly what: string;
}

/** Gases that an acid frees and nobody minds. */
const HARMLESS: readonly string[] = ["CO2", "H2"];

/** What acid makes a gas of, by the table of what must not meet. */
interface FreedByAcid {
  readonly classes: readonly string[];
  readonly gas: string;
  readonly what: string;
}

const rememberedFreed = /* @__PURE__ */ remembering<readonly FreedByAcid[]>(1);

/** Rows of acid by itself and one other, on whichever side it stands. */
const freedByAcid = (): readonly FreedByAcid[] =>
  rememberedFreed("", () =>
    everyRule().flatMap(({ a, b = [], products: [gas] = [], what }) => {
      const isAcidAlone = (side: readonly string[]): boolean => side.length === 1 && side[0] === "acid";
      const classes = isAcidAlone(a) ? b : isAcidAlone(b) ? a : undefined;
      return classes === undefined || gas === undefined || HARMLESS.includes(gas) ? [] : [{ classes, gas, what }];
    }),
  );

/** Solutes that acid makes a poisonous gas of, each with the gas; what no balance shows is left out. */
const gasesByAcid = (solutes: readonly Dissolved[], least: Quantity): Sour[] =>
  solutes.flatMap(({ species, amount }): Sour[] => {
    if (amount.times(species.molarMass).compare(least) < 0) return [];
    const own: ReadonlySet<string> = classesOfFormula(species.formula);
    const row = freedByAcid().find(({ classes }) => classes.some((one) => own.has(one)));
    return row === undefined ? [] : [{ solute: species, gas: row.gas, what: row.what }];
  });

/** What acid does to a liquor: it is in it already, or must not come to it. */
function sourNotes(sour: readonly Sour[], solutes: readonly Dissolved[], least: Quantity): WasteNote[] {
  const acid = solutes.find(
    ({ species, amount }) =>
      hydronsGivenBy(species.formula) > 0n && amount.times(species.molarMass).compare(least) >= 0,
  );
  return sour.map(({ solute, gas, what }) =>
    said(
      acid === undefined
        ? `acid frees ${gas} from the ${solute.name} in it (${what}): keep it alkaline and apart from acid waste`
        : `it contains ${acid.species.name} beside ${solute.name}, counted as if no ${gas} had left them yet, and gives that off (${what}): under the hood, and soda to it before it is stored`,
    ),
  );
}

/** What a liquor may hold of a product of which no figure tells; a complex is left to its ligand. */
const openMetal = (open: Dissolved | undefined): Dissolved | undefined =>
  open === undefined || complexIn(matterOf(open.species.formula)) !== undefined ? undefined : open;

/** What is put to a liquor, and up to how much where more of the product may be in it. */
function treatmentUpTo(
  pot: Pot,
  solutes: readonly Dissolved[],
  open: Dissolved | undefined,
  neverSour: boolean,
): Treatment[] {
  const least = treatmentOf(metalsIn(pot, solutes), solutes, neverSour);
  const more = openMetal(open);
  if (more === undefined) return least;
  const all = [...solutes, more];
  return upTo(least, treatmentOf(metalsIn(pot, all), all, neverSour));
}

/** Where the crystals are filtered off once, their liquor is called the filtrate. */
export const isMotherLiquor = (vessel: WasteVessel["vessel"]): boolean =>
  vessel === "mother liquor" || vessel === "filtrate";

/** Undefined where how much is not known, and where its salts make it heavier than water and no table tells by how much. */
const volumeOfLiquor = (pot: Pot): Quantity<"volume"> | undefined =>
  pot.contents.volume !== undefined && pot.liquor.isKnown ? (pot.liquor.volume as Quantity<"volume">) : undefined;

interface Handled {
  readonly nextBatch: NextWater | undefined;
  readonly cyanide: boolean;
  readonly isLeftAsItIs: boolean;
  readonly least: Quantity;
}

function vesselOf(
  [vessel, pot]: Left,
  { nextBatch, cyanide, isLeftAsItIs, least }: Handled,
  product: Dissolved | undefined,
): WasteVessel {
  const open = vessel === "mother liquor" ? product : undefined;
  // What is on a filter or in a wash bottle is kept by itself.
  const isApart = vessel === "residue" || vessel === "gas trap";
  const own: WasteVessel = lazily<WasteVessel>({
    vessel: () => vessel,
    volume: () => (isApart ? pot.contents.volume : volumeOfLiquor(pot)),
    contents: () => pot.contents,
    nextBatch: () => (isMotherLiquor(vessel) && !cyanide && !isLeftAsItIs ? nextBatch : undefined),
    metals: () => metalsIn(pot, solutesOf(pot), open, isLeftAsItIs),
    treatment: () => {
      const solutes = solutesOf(pot);
      return isApart || isLeftAsItIs
        ? []
        : treatmentUpTo(pot, solutes, open, cyanide || gasesByAcid(solutes, least).length > 0);
    },
  });
  return own;
}

/** Everything that may be poured together. */
function pooled(left: readonly Left[]): Pot | undefined {
  const liquids = left.filter(([vessel]) => vessel !== "residue" && vessel !== "gas trap").map(([, pot]) => pot);
  const [first, ...rest] = liquids;
  return first === undefined ? undefined : rest.reduce((all, pot) => all.plusAll(pot), first);
}

const CYANIDE =
  "it contains a cyanide: keep it alkaline and by itself; never acid, bleach or heat on it, poison gas is given off; dispose of it as it is, as hazardous waste";

const FLAMMABLE =
  "with the alcohol in it the liquor burns: closed, labelled as flammable, away from flames and hot plates, and never boiled down";

/** What the mother liquor of crystals keeps of a metal of the waste. */
function liquorNotes(
  { product }: Setting,
  solutes: readonly Dissolved[],
  isLeftAsItIs: boolean,
  open: Dissolved | undefined,
): WasteNote[] {
  if (!product.metals.some(({ symbol }) => isWasteMetal(symbol))) return [];
  if (solutes.some(({ species }) => coreOf(species.formula) === coreOf(product.formula)))
    return [said(`the mother liquor still contains ${product.name}`)];
  const ligand = complexIn(matterOf(product.formula))?.ligand;
  const unknown = `how much ${product.name} the mother liquor keeps is not known`;
  if (ligand === undefined || isLeftAsItIs) return [said(unknown)];
  const { text, takes } = freedBy(ligand, product, open?.amount);
  return [{ text: `${unknown}; it is a complex: ${ligand} keeps its metal in solution; ${text}`, takes }];
}

/** Is it a halogen by itself? */
export const isFreeHalogen = (formula: Formula): boolean => isOneOf(formula, ...FREE_HALOGENS.formulas);

/** Free halogen that is in what is poured away: the product itself is in its washings. */
const halogenNotes = ({ product }: Setting, solutes: readonly Dissolved[]): WasteNote[] =>
  [product, ...solutes.map(({ species }) => species)]
    .filter(({ formula }) => isFreeHalogen(formula))
    .map(({ name }) => ({
      text: FREE_HALOGENS.note.replace("{halogen}", name),
      takes: [pinches(FREE_HALOGENS.reagent)],
    }));

/** Halates in what is poured away. */
const halateNotes = (solutes: readonly Dissolved[], least: Quantity): WasteNote[] =>
  solutes
    .filter(({ species, amount }) => amount.times(species.molarMass).compare(least) >= 0)
    .flatMap(({ species, amount }) => {
      const own = HALATES.groups.find(({ name }) => madeOf(species.formula).groups.has(name));
      if (own === undefined) return [];
      const taken = dry(HALATES.reagent, amount.times(exact(own.sulfite)).times(planned("overdose")));
      const mass = taken.portion!.format({ decimals: 1, uncertainty: "none" });
      return [{ text: HALATES.note.replace("{salt}", species.name).replace("{mass}", mass), takes: [taken] }];
    });

/** How much is poured away. */
function sizeOf({ pots, alcohol }: Poured): Required<Pick<Waste, "volume" | "mass">> {
  const naming = { label: "liquor and washings", rule: "waste = filtrates + washings, less what was boiled off" };
  const volumes = pots.map((pot) => pot.liquor.volume);
  const masses = pots.map((pot) => pot.mass);
  const volume = sum([...volumes, alcohol])
    .to("L")
    .named({ symbol: "V(waste)", ...naming });
  const mass = sum([...masses, alcohol.times(densityAt(parseFormula("C2H5OH"), exact("100 %"))!)])
    .to("g")
    .named({ symbol: "m(waste)", ...naming });
  return { volume: volume as Quantity<"volume">, mass: mass as Quantity<"mass"> };
}

/** What is left at the end; `open` is the product where no figure tells how much of it stays dissolved, `own` what the steps say of it, `nextBatch` what its mother liquor is to that. */
export function wasteOf(
  setting: Setting,
  left: readonly Left[],
  poured: Poured | undefined,
  alcohol: Quantity | undefined,
  open: Dissolved | undefined,
  own: readonly WasteNote[],
  nextBatch: NextWater | undefined,
): Waste {
  const { volume, mass } = poured === undefined ? { volume: undefined, mass: undefined } : sizeOf(poured);
  const { product, wet, steps } = setting;
  const cyanide = holdsCyanide(setting);
  const all = pooled(left);
  const solutes = all === undefined ? [] : solutesOf(all);
  const asItIs =
    cyanidoferrateLeft(setting, solutes, steps.mass) ??
    ammineLeft(setting, solutes, steps.mass) ??
    chelateLeft(solutes, open, steps.mass);
  const isLeftAsItIs = asItIs !== undefined;
  const metals = all === undefined ? [] : metalsIn(all, solutes, open, isLeftAsItIs);
  const free = all === undefined ? [] : metalsIn(all, solutes, openMetal(open), isLeftAsItIs);
  // Of cyanides all is said by its own note.
  const sour = cyanide ? [] : gasesByAcid(solutes, steps.mass);
  const isLiquor = wet && all !== undefined && fateOf(product.formula, setting.temperature).precipitated !== true;
  const notes = [
    ...own,
    ...metalNotes(free, solutes, steps.mass),
    ...heldNotes(metals),
    ...(isLeftAsItIs ? [] : oxalateNotes(setting, solutes, steps.mass)),
    ...(isLeftAsItIs ? [] : ammoniumNotes(free, solutes, steps.mass)),
    ...halogenNotes(setting, solutes),
    ...halateNotes(solutes, steps.mass),
    ...(cyanide || isLeftAsItIs ? [said(asItIs ?? CYANIDE)] : []),
    ...((alcohol !== undefined && volume !== undefined && alcohol.compare(volume.times(planned("burns"))) > 0) ||
    left.some(([, pot]) => burnsWithAlcohol(pot))
      ? [said(FLAMMABLE)]
      : []),
    ...sourNotes(sour, solutes, steps.mass),
    ...(isLiquor ? liquorNotes(setting, solutes, isLeftAsItIs, open) : []),
  ];
  const treatment =
    all === undefined || isLeftAsItIs ? [] : treatmentUpTo(all, solutes, open, cyanide || sour.length > 0);
  const sodium = treatment.find((one) => one.reagent === SODA);
  const soda = sodium?.most ?? sodium?.mass;
  const handled = { nextBatch, cyanide, isLeftAsItIs, least: steps.mass };
  const vessels = left.map((one) => vesselOf(one, handled, open));
  return withLazy(
    {
      vessels,
      volume,
      mass,
      metals,
      treatment,
      soda,
      isLeftAsItIs,
      notes: [...new Set(notes.map(({ text }) => text))],
      closing: CLOSING,
    },
    {
      // by vessel as the sheet says it, and each note once
      reagents: () =>
        reagentsOf(
          vessels.flatMap((one) => one.treatment),
          notes.filter(({ text }, i) => notes.findIndex((one) => one.text === text) === i),
        ),
    },
  );
}

// What is left when the product is out: litres of liquor and washings, the metals in them and what precipitates those, and
// by-products that may be worth keeping. What may be poured away is never said: the local rules decide.

import { molarMass } from "../../formula";
import { lazily } from "../../foundation/lazy";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { classesOfFormula, everyRule, type HazardClass, HOLDS_CYANIDE, madeOf } from "../../substance/internal";
import { complexesOf, complexIn } from "../contents/complexes";
import type { Contents } from "../contents/contents";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { LEFT_IN_WASTE, WASTE_METALS, type WasteMetalRow } from "../data/waste";
import { exact, planned } from "../planning/exact";
import type { Dissolved } from "../procedure/isolation";
import type { Account, Formed } from "../reaction/account";
import { isAcid } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { isGas } from "../reaction/fluids";
import { coreOf, type Species, speciesAside } from "../reaction/species";
import type { Setting } from "../request/setting";
import { asOxidiser, type DissolvedMetal, SODA, type Treatment, treatmentOf } from "./waste-treatment";

/** What is left in one vessel. */
export interface WasteVessel {
  /** Which of the vessels that are left. */
  readonly vessel: "mother liquor" | "filtrate" | "wash water" | "residue" | "gas trap" | "liquor";
  /** No more than this; undefined for a residue, or where how much water there is is not known. */
  readonly volume: Quantity<"volume"> | undefined;
  /** What is in it. */
  readonly contents: Contents;
  /** Dissolved in this vessel. */
  readonly metals: readonly DissolvedMetal[];
  /** For this vessel alone: its acid against its base first, then what is left of either, and its metals. */
  readonly treatment: readonly Treatment[];
}

/** A vessel that is left, as the steps leave it. */
export type Left = readonly [vessel: WasteVessel["vessel"], pot: Pot];

/** What is left over. */
export interface Waste {
  /** Vessel by vessel, as the steps leave them. */
  readonly vessels: readonly WasteVessel[];
  /** Liquor and washings together, where the water is known. */
  readonly volume: Quantity<"volume"> | undefined;
  /** Metals that are dissolved in it, with amounts. */
  readonly metals: readonly DissolvedMetal[];
  /** What neutralises it and brings its metals down, each with 10 % excess. */
  readonly treatment: readonly Treatment[];
  /** Sodium carbonate, anhydrous, that neutralises the acid and precipitates the metals, with 10 % excess; undefined if none is needed. */
  readonly soda: Quantity<"mass"> | undefined;
  /** What to know of it. */
  readonly notes: readonly string[];
  /** The sentence that sends to the rules of the place. */
  readonly closing: string;
}

/** A product beside the wanted one. */
export interface ByProduct extends Formed {
  /** Where it is at the end of the work. */
  readonly where: "in the liquor" | "with the product" | "filtered off" | "gas" | "not known";
  /** The liquor holds little else: boiled down it gives the salt. */
  readonly worthKeeping: boolean;
  /** Reason of `where`, in words. */
  readonly why: string;
}

const CLOSING =
  "Collect liquor and washings; what may be done with them is decided by the local rules, not by this text.";
const rowOf = (symbol: string): WasteMetalRow | undefined => WASTE_METALS.find((row) => row.metal === symbol);
const isLeft = (symbol: string): boolean => LEFT_IN_WASTE.some((row) => row.metals.includes(symbol));

/** A cyanide of any kind is put in or made: its liquor is never made sour and never boiled down. */
const holdsCyanide = ({ reactants, products }: Setting): boolean =>
  [...reactants, ...products].some(({ formula }) => madeOf(formula).cyanide !== undefined);

/** Metals that hold cyanide are not precipitated by what precipitates their salts; those outside are. */
const isHeld = ({ formula }: Species, symbol: string): boolean =>
  madeOf(formula).cyanide === "fast" && symbol in HOLDS_CYANIDE;

/** Solutes of a vessel as species. */
const solutesOf = ({ books }: Pot): Dissolved[] =>
  books.dissolved.map(({ matter, amount }) => ({ species: speciesAside(matter.formula), amount }));

/** Metals in a vessel, those that cyanide holds left out. */
function metalsIn(pot: Pot, solutes: readonly Dissolved[]): DissolvedMetal[] {
  const amounts = new Map<string, Quantity>();
  for (const { species, amount } of solutes) {
    if (!amount.isPositive()) continue;
    for (const { symbol, count } of species.metals) {
      if (isHeld(species, symbol)) continue;
      const before = amounts.get(symbol);
      const more = amount.times(count);
      amounts.set(symbol, before === undefined ? more : before.plus(more));
    }
  }
  return [...amounts].map(([symbol, amount]): DissolvedMetal => {
    const named = amount.to("mol").named({ symbol: `n(${symbol}, waste)`, label: `${symbol} dissolved in the waste` });
    const isKept = isLeft(symbol);
    return lazily<DissolvedMetal>({
      symbol: () => symbol,
      amount: () => named as Quantity<"amount of substance">,
      mass: () =>
        named
          .times(molarMass(symbol))
          .to("g")
          .named({ symbol: `m(${symbol}, waste)`, rule: "mass = amount × molar mass" }) as Quantity<"mass">,
      precipitate: () => !isKept,
      pH: () => rowOf(symbol)?.pH,
      held: () =>
        isKept
          ? []
          : complexesOf(pot)
              .filter(({ metal }) => metal === symbol)
              .map(({ ligand, formula, key, amount: n }) => ({ ligand, formula, key, amount: n })),
    });
  });
}

interface Sour {
  readonly solute: Species;
  readonly gas: string;
  readonly what: string;
}

/** Gases that an acid frees and nobody minds. */
const HARMLESS: readonly string[] = ["CO2", "H2"];

/** Solutes that acid makes a poisonous gas of, each with the gas; what no balance shows is left out. */
function gasesByAcid(solutes: readonly Dissolved[], least: Quantity): Sour[] {
  const rules = everyRule().filter(({ a, products = [] }) => a.length === 1 && a[0] === "acid" && products.length > 0);
  return solutes.flatMap(({ species, amount }): Sour[] => {
    if (amount.times(species.molarMass).compare(least) < 0) return [];
    const classes = classesOfFormula(species.formula);
    const row = rules.find(
      ({ b = [], products = [] }) =>
        !HARMLESS.includes(products[0]!) && b.some((one) => classes.has(one as HazardClass)),
    );
    return row === undefined ? [] : [{ solute: species, gas: row.products![0]!, what: row.what }];
  });
}

/** What acid does to a liquor: it is in it already, or must not come to it. */
function sourNotes(sour: readonly Sour[], solutes: readonly Dissolved[], least: Quantity): string[] {
  const acid = solutes.find(
    ({ species, amount }) => isAcid(species.formula) && amount.times(species.molarMass).compare(least) >= 0,
  );
  return sour.map(({ solute, gas, what }) =>
    acid === undefined
      ? `acid frees ${gas} from the ${solute.name} in it (${what}): keep it alkaline and apart from acid waste`
      : `it contains ${acid.species.name} beside ${solute.name} and gives off ${gas} (${what}): under the hood, and soda to it before it is stored`,
  );
}

function vesselOf([vessel, pot]: Left, cyanide: boolean, least: Quantity): WasteVessel {
  // What is on a filter or in a wash bottle is kept by itself.
  const isApart = vessel === "residue" || vessel === "gas trap";
  const own: WasteVessel = lazily<WasteVessel>({
    vessel: () => vessel,
    volume: () => pot.contents.volume,
    contents: () => pot.contents,
    metals: () => metalsIn(pot, solutesOf(pot)),
    treatment: () => {
      const solutes = solutesOf(pot);
      return isApart ? [] : treatmentOf(own.metals, solutes, cyanide || gasesByAcid(solutes, least).length > 0);
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

/** Ligands that hold metals of the waste, and in which ions. */
function heldNote(metals: readonly DissolvedMetal[]): string[] {
  const held = metals.filter(({ precipitate }) => precipitate).flatMap((one) => one.held);
  if (held.length === 0) return [];
  const ligands = [...new Set(held.map(({ ligand }) => ligand))];
  const ions = [...new Set(held.map(({ formula }) => formula))].join(" and ");
  return [
    `${ligands.join(" and ")} ${ligands.length > 1 ? "keep" : "keeps"} ${ions} in solution: count it by the ligand; soda does not precipitate it before the ligand is gone, sulfide does`,
  ];
}

const CYANIDE =
  "it contains a cyanide: keep it alkaline and by itself; never acid, bleach or heat on it, poison gas is given off; dispose of it as it is, as hazardous waste";

export function wasteOf(setting: Setting, left: readonly Left[], liquids: Quantity | undefined): Waste {
  const volume = liquids?.to("L").named({
    symbol: "V(waste)",
    label: "liquor and washings",
    rule: "waste = filtrates + washings, less what was boiled off",
  }) as Quantity<"volume"> | undefined;
  const { product, wet, steps } = setting;
  const cyanide = holdsCyanide(setting);
  const all = pooled(left);
  const solutes = all === undefined ? [] : solutesOf(all);
  const metals = all === undefined ? [] : metalsIn(all, solutes);
  // Of cyanides all is said by its own note.
  const sour = cyanide ? [] : gasesByAcid(solutes, steps.mass);
  const isLiquor = wet && all !== undefined && fateOf(product.formula, setting.temperature).precipitated !== true;
  const ligand = complexIn(matterOf(product.formula))?.ligand;
  const isThere = solutes.some(({ species }) => coreOf(species.formula) === coreOf(product.formula));
  const notes = [
    ...metals.flatMap(({ symbol }) => {
      const row = rowOf(symbol);
      const oxidising = asOxidiser(symbol, solutes).length === 0 ? undefined : row?.oxidising?.note;
      return [row?.note, oxidising].filter((note) => note !== undefined);
    }),
    ...heldNote(metals),
    ...(cyanide ? [CYANIDE] : []),
    ...sourNotes(sour, solutes, steps.mass),
    ...(isLiquor && product.metals.some(({ symbol }) => rowOf(symbol) !== undefined)
      ? [
          isThere
            ? `the mother liquor still contains ${product.name}${left.some(([vessel]) => vessel === "mother liquor") ? "" : ": a second crop first, then what is left"}`
            : `how much ${product.name} the mother liquor keeps is not known${ligand === undefined ? "" : `; it is a complex: ${ligand} keeps its metal in solution, so count it by the ligand, and soda does not precipitate it`}`,
        ]
      : []),
  ];
  const treatment = treatmentOf(metals, solutes, cyanide || sour.length > 0);
  const soda = treatment.find((one) => one.reagent === SODA)?.mass;
  const vessels = left.map((one) => vesselOf(one, cyanide, steps.mass));
  return { vessels, volume, metals, treatment, soda, notes: [...new Set(notes)], closing: CLOSING };
}

/** Iodine beside a solid is taken out of it. */
const isTakenBySulfite = ({ formula }: Species, { wet, request }: Setting): boolean =>
  wet && isOneOf(formula, "I2") && (request.procedure ?? "redox") === "redox";

export function byProductsOf(
  setting: Setting,
  account: Account,
  dissolved: readonly Dissolved[],
  liquorWater: Quantity | undefined,
): ByProduct[] {
  const { products, product, wet, temperature } = setting;
  const mass = (d: Dissolved): Quantity => d.amount.times(d.species.molarMass).to("g");
  const inLiquor = dissolved.filter((d) => d.amount.isPositive());
  return products.flatMap((species: Species, i): ByProduct[] => {
    if (species === product || species.isWater) return [];
    const formed = account.formed[i]!;
    if (isGas(species.formula, wet)) return [{ ...formed, where: "gas", worthKeeping: false, why: "it leaves as gas" }];
    const fate = fateOf(species.formula, temperature);
    if (fate.precipitated === true && fateOf(product.formula, temperature).precipitated !== true && wet)
      return [
        { ...formed, where: "filtered off", worthKeeping: false, why: `${fate.why}: it goes before the crystals` },
      ];
    if (isTakenBySulfite(species, setting))
      return [{ ...formed, where: "in the liquor", worthKeeping: false, why: "sulfite reduces it to iodide" }];
    if (fate.precipitated === true)
      return [{ ...formed, where: "with the product", worthKeeping: false, why: fate.why }];
    if (fate.precipitated === undefined)
      return [{ ...formed, where: "not known", worthKeeping: false, why: `${fate.why} is not known` }];
    // A product that crystallises stays in its own liquor too, up to what the water holds.
    if (fateOf(product.formula, temperature).precipitated !== true)
      return [
        {
          ...formed,
          where: "in the liquor",
          worthKeeping: false,
          why: `the liquor also contains what is left of ${product.name}: take a second crop of that first`,
        },
      ];
    if (isAcid(species.formula))
      return [{ ...formed, where: "in the liquor", worthKeeping: false, why: "it is a free acid in much water" }];
    if (holdsCyanide(setting))
      return [
        {
          ...formed,
          where: "in the liquor",
          worthKeeping: false,
          why: "the liquor contains a cyanide: it is collected as it is, never boiled down",
        },
      ];
    const others = inLiquor.filter((d) => coreOf(d.species.formula) !== coreOf(species.formula)).map(mass);
    const share = others.length === 0 ? exact("0 %") : sum(others).dividedBy(formed.mass).to("%");
    const isPure = share.compare(planned("cleanEnough")) <= 0;
    const strength =
      liquorWater === undefined ? undefined : formed.mass.dividedBy(formed.mass.plus(liquorWater)).to("%");
    const isThin = strength !== undefined && strength.compare(planned("worthBoiling")) < 0;
    const clean = isPure && !isThin;
    const own = species.metals.map((metal) => metal.symbol);
    // Of a precipitate the water keeps something worth a word only where a table has a figure for it.
    const kept = fateOf(product.formula, temperature).perHundredGramsWater === undefined ? [] : [product];
    const metals = [...kept, ...inLiquor.map((d) => d.species)]
      .flatMap((s) => s.metals.map((metal) => metal.symbol))
      .filter((s, k, all) => rowOf(s) !== undefined && !own.includes(s) && all.indexOf(s) === k);
    const first = metals.length === 0 ? "" : `, after all ${metals.join(" and ")} is precipitated`;
    const rest =
      share.compare(exact("100 %")) > 0
        ? "more of other salts than of it"
        : `${share.format({ significant: 2, uncertainty: "none" })} of other salts with it`;
    return [
      {
        ...formed,
        where: "in the liquor",
        worthKeeping: clean,
        why: clean
          ? `the liquor boiled down gives it with ${rest}${first}`
          : isPure
            ? `the liquor has only ${strength!.format({ significant: 2, uncertainty: "none" })} of it: not worth the boiling`
            : `${rest}: recrystallise it or let it go`,
      },
    ];
  });
}

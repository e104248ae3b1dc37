// What is left when the product is out: litres of liquor and washings, the metals in them and what precipitates those, and
// by-products that may be worth keeping. What may be poured away is never said: the local rules decide.

import { type Formula, molarMass } from "../../formula";
import { constitutionOf } from "../../ion";
import { type Quantity, sum } from "../../quantity";
import { HOLDS_CYANIDE, madeOf } from "../../substance/internal";
import type { Contents } from "../contents/contents";
import { LEFT_IN_WASTE, WASTE_METALS, type WasteMetalRow } from "../data/waste";
import { exact, planned } from "../planning/exact";
import type { Dissolved } from "../procedure/isolation";
import type { Account, Formed } from "../reaction/account";
import { isAcid } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { isGas } from "../reaction/fluids";
import { coreOf, type Species } from "../reaction/species";
import type { Setting } from "../request/setting";
import { type DissolvedMetal, SODA, type Treatment, treatmentOf } from "./waste-treatment";

/** What is left in one vessel. */
export interface WasteVessel {
  readonly vessel: "mother liquor" | "filtrate" | "wash water" | "residue" | "gas trap";
  /** No more than this; undefined for a residue, or where how much water there is is not known. */
  readonly volume: Quantity<"volume"> | undefined;
  readonly contents: Contents;
}

/** What is left over. */
export interface Waste {
  /** Vessel by vessel, as the steps leave them. */
  readonly vessels: readonly WasteVessel[];
  readonly volume: Quantity<"volume"> | undefined;
  readonly metals: readonly DissolvedMetal[];
  /** What neutralises it and brings its metals down, each with 10 % excess. */
  readonly treatment: readonly Treatment[];
  /** Sodium carbonate, anhydrous, that neutralises the acid and precipitates the metals, with 10 % excess; undefined if none is needed. */
  readonly soda: Quantity<"mass"> | undefined;
  readonly notes: readonly string[];
  readonly closing: string;
}

/** A product beside the wanted one. */
export interface ByProduct extends Formed {
  readonly where: "in the liquor" | "with the product" | "gas" | "not known";
  /** The liquor holds little else: boiled down it gives the salt. */
  readonly worthKeeping: boolean;
  readonly why: string;
}

const CLOSING =
  "Collect liquor and washings; what may be done with them is decided by the local rules, not by this text.";
const rowOf = (symbol: string): WasteMetalRow | undefined => WASTE_METALS.find((row) => row.metal === symbol);
const isLeft = (symbol: string): boolean => LEFT_IN_WASTE.some((row) => row.metals.includes(symbol));

/** Anions that keep a metal dissolved where soda or lye should precipitate it. */
const LIGANDS = ["oxalate", "citrate", "tartrate", "ethylenediaminetetraacetate"];
const isLigand = (formula: Formula): boolean => {
  const { groups, ammonia } = madeOf(formula);
  return ammonia || LIGANDS.some((name) => groups.has(name));
};

/** A cyanide of any kind is put in or made: its liquor is never made sour and never boiled down. */
const holdsCyanide = ({ reactants, products }: Setting): boolean =>
  [...reactants, ...products].some(({ formula }) => madeOf(formula).cyanide !== undefined);

/** Metals that hold cyanide are not precipitated by what precipitates their salts; those outside are. */
const isHeld = ({ formula }: Species, symbol: string): boolean =>
  madeOf(formula).cyanide === "fast" && symbol in HOLDS_CYANIDE;

/** Names of what a complex holds its metal with; undefined for what is none. */
function ligandsOf(formula: Formula): string | undefined {
  const { complex, ligands } = constitutionOf(formula);
  return complex === undefined || ligands.length === 0
    ? undefined
    : [...new Set(ligands.map((one) => one.formula))].join(" and ");
}

export function wasteOf(
  setting: Setting,
  dissolved: readonly Dissolved[],
  liquids: Quantity | undefined,
  kept: Quantity | undefined,
  vessels: readonly WasteVessel[],
): Waste {
  const volume = liquids?.to("L").named({
    symbol: "V(waste)",
    label: "liquor and washings",
    rule: "waste = filtrates + washings, less what was boiled off",
  });
  const amounts = new Map<string, Quantity>();
  const add = (symbol: string, amount: Quantity): void => {
    const before = amounts.get(symbol);
    amounts.set(symbol, before === undefined ? amount : before.plus(amount));
  };
  for (const { species, amount } of dissolved) {
    if (!amount.isPositive()) continue;
    for (const { symbol, count } of species.metals) if (!isHeld(species, symbol)) add(symbol, amount.times(count));
  }
  // What the liquor keeps of a sparingly soluble product, where a figure is known.
  const { product } = setting;
  if (kept !== undefined) {
    for (const { symbol, count } of product.metals) if (!isHeld(product, symbol)) add(symbol, kept.times(count));
  }
  const metals = [...amounts].map(([symbol, amount]): DissolvedMetal => {
    const named = amount.to("mol").named({ symbol: `n(${symbol}, waste)`, label: `${symbol} dissolved in the waste` });
    const mass = named
      .times(molarMass(symbol))
      .to("g")
      .named({ symbol: `m(${symbol}, waste)`, rule: "mass = amount × molar mass" });
    return { symbol, amount: named, mass, precipitate: !isLeft(symbol), pH: rowOf(symbol)?.pH };
  });
  const notes: string[] = metals.flatMap(({ symbol }) => rowOf(symbol)?.note ?? []);
  if (metals.some((m) => m.precipitate) && dissolved.some((d) => d.amount.isPositive() && isLigand(d.species.formula)))
    notes.push(
      "ammonia, oxalate, citrate and tartrate keep metals dissolved: sulfide precipitates them, or the ligand goes first",
    );
  const cyanide = holdsCyanide(setting);
  if (cyanide)
    notes.push(
      "it contains a cyanide: keep it alkaline and by itself; never acid, bleach or heat on it, poison gas is given off; dispose of it as it is, as hazardous waste",
    );
  if (
    setting.wet &&
    fateOf(product.formula, setting.temperature).fallsOut === false &&
    product.metals.some(({ symbol }) => rowOf(symbol) !== undefined)
  )
    notes.push(`the mother liquor still contains ${product.name}: a second crop first, then what is left`);
  const held = ligandsOf(product.formula);
  if (setting.wet && held !== undefined && fateOf(product.formula, setting.temperature).fallsOut !== true)
    notes.push(
      `what the mother liquor keeps of ${product.name} is a complex: ${held} holds its metal, so count it by the ligand, and soda does not precipitate it${kept === undefined ? "; how much that is is not known" : ""}`,
    );
  const treatment = treatmentOf(metals, dissolved, cyanide);
  const soda = treatment.find((one) => one.reagent === SODA)?.mass;
  return { vessels, volume, metals, treatment, soda, notes: [...new Set(notes)], closing: CLOSING };
}

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
    if (fate.fallsOut === true) return [{ ...formed, where: "with the product", worthKeeping: false, why: fate.why }];
    if (fate.fallsOut === undefined)
      return [{ ...formed, where: "not known", worthKeeping: false, why: `${fate.why} is not known` }];
    // A product that crystallises stays in its own liquor too, up to what the water holds.
    if (fateOf(product.formula, temperature).fallsOut !== true)
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
    const rest = `${share.format({ significant: 2, uncertainty: "none" })} of other salts with it`;
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

// Metals dissolved in what is left: how much of each, what precipitates it, and what holds it in solution.

import { molarMass, parseFormula } from "../../formula";
import { withLazy } from "../../foundation/lazy";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { type Quantity, sum } from "../../quantity";
import { HOLDS_CYANIDE, madeOf } from "../../substance/internal";
import { complexesOf } from "../contents/complexes";
import type { Pot } from "../contents/pot";
import {
  HELD_BY_AMMONIA,
  HELD_BY_CYANIDE,
  HOLDING_LIGANDS,
  LEFT_IN_WASTE,
  SLOW_METALS,
  WASTE_METALS,
  type WasteMetalRow,
} from "../data/waste";
import { exact, planned } from "../planning/exact";
import type { Dissolved } from "../procedure/isolation";
import { fateInRoom } from "../reaction/fate";
import type { Species } from "../reaction/species";
import { dry, pinches, said, someAcid, type WasteNote, type WasteReagent } from "./waste-note";
import { asOxidiser, type DissolvedMetal, type Held, SODA } from "./waste-treatment";

const rowOf = (symbol: string): WasteMetalRow | undefined => WASTE_METALS.find((row) => row.metal === symbol);

/** A metal that is precipitated from a waste. */
export const isWasteMetal = (symbol: string): boolean => rowOf(symbol) !== undefined;

/** A metal whose salts free gas from soda as an acid does. */
export const isSourMetal = (symbol: string): boolean => rowOf(symbol)?.foams === true;

const isLeft = (symbol: string): boolean => LEFT_IN_WASTE.some((row) => row.metals.includes(symbol));

/** Metals that hold cyanide are not precipitated by what precipitates their salts; those outside are. */
const isHeld = ({ formula }: Species, symbol: string): boolean =>
  madeOf(formula).cyanide === "fast" && symbol in HOLDS_CYANIDE;

function amountsOf(solutes: readonly Dissolved[]): ReadonlyMap<string, Quantity> {
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
  return amounts;
}

const NONE = "0 mol";

/** A sparing salt as it is dissolved: the acid of the liquor keeps it so, and made neutral it precipitates. */
const isOwnSalt = (text: string): boolean => {
  const formula = parseFormula(text);
  return (
    formula.charge === 0 && constitutionOf(formula).complex === undefined && fateInRoom(formula).precipitated === true
  );
};

/** Metals in a vessel, those that cyanide holds left out; and up to how much of them, where more may be in it; nothing is precipitated of what is left as it is. */
export function metalsIn(
  pot: Pot,
  solutes: readonly Dissolved[],
  open?: Dissolved,
  isLeftAsItIs = false,
): DissolvedMetal[] {
  const known = amountsOf(solutes);
  const most = open === undefined ? known : amountsOf([...solutes, open]);
  return [...most].map(([symbol, all]): DissolvedMetal => {
    const amount = known.get(symbol) ?? exact(NONE);
    const named = amount.to("mol").named({ symbol: `n(${symbol}, waste)`, label: `${symbol} dissolved in the waste` });
    const isKept = isLeftAsItIs || isLeft(symbol);
    return withLazy(
      { symbol, amount: named as Quantity<"amount of substance">, precipitate: !isKept },
      {
        mass: () =>
          named
            .times(molarMass(symbol))
            .to("g")
            .named({ symbol: `m(${symbol}, waste)`, rule: "mass = amount × molar mass" }) as Quantity<"mass">,
        most: () =>
          all.compare(amount) > 0
            ? (all
                .times(molarMass(symbol))
                .to("g")
                .named({
                  symbol: `m_max(${symbol}, waste)`,
                  label: `${symbol} dissolved in the waste, if all of the product is`,
                  rule: "mass = amount × molar mass",
                }) as Quantity<"mass">)
            : undefined,
        pH: () => rowOf(symbol)?.pH,
        held: () =>
          isKept
            ? []
            : complexesOf(pot)
                .filter(({ metal, formula }) => metal === symbol && !isOwnSalt(formula))
                .map(({ ligand, formula, key, amount: n }) => ({ ligand, formula, key, amount: n })),
      },
    );
  });
}

/** As much of a metal as there may be. */
export const mostOf = ({ mass, most }: Pick<DissolvedMetal, "mass" | "most">): Quantity<"mass"> => most ?? mass;

/** What the table says of each metal of which there is something to precipitate, and of each that stands as an oxidiser. */
export const metalNotes = (
  metals: readonly DissolvedMetal[],
  solutes: readonly Dissolved[],
  least: Quantity,
): WasteNote[] =>
  metals.flatMap((metal) => {
    const { symbol } = metal;
    const row = rowOf(symbol);
    const own = mostOf(metal).compare(least) < 0 || row?.note === undefined ? undefined : said(row.note);
    return [own, oxidiserNote(row, asOxidiser(symbol, solutes))].filter((note) => note !== undefined);
  });

const DISULFITE = "Na2S2O5";
const MADE_SOUR = "H2SO4";

/** How much sodium disulfite takes the oxidiser away; undefined where there is none. */
function oxidiserNote(row: WasteMetalRow | undefined, amounts: readonly Quantity[]): WasteNote | undefined {
  if (row?.oxidising === undefined || amounts.length === 0) return undefined;
  const { note, disulfite, until } = row.oxidising;
  const taken = dry(DISULFITE, sum(amounts).times(exact(disulfite)));
  const isPinch = taken.portion!.compare(planned("pinch")) < 0;
  const all = isPinch
    ? "a pinch is enough for what is dissolved in it"
    : `about ${taken.portion!.format({ decimals: 0, uncertainty: "none" })} for what is dissolved in it`;
  return {
    text: `${note}; make it sour with dilute sulfuric acid (pH 2), and under a hood stir in sodium disulfite by pinches until ${until}: ${all}`,
    takes: [someAcid(MADE_SOUR), isPinch ? pinches(DISULFITE) : taken],
  };
}

/** How the chromate of a wash water is reduced, where nobody knows how much of the metal became that: no more than all of it. */
export function notSpent(symbol: string, all: Quantity | undefined): WasteNote {
  const row = rowOf(symbol)!;
  const { note, disulfite, until } = row.oxidising!;
  const taken = all === undefined ? pinches(DISULFITE) : dry(DISULFITE, all.times(exact(disulfite)), true);
  const most =
    taken.portion === undefined ? "" : ` (${taken.portion.format({ significant: 2, uncertainty: "none" })} at most)`;
  return {
    text: `${note}; make it sour with dilute sulfuric acid (pH 2 to 3), and under a hood stir in sodium disulfite by pinches until ${until}${most}, then soda to pH ${row.pH}; the solid goes to collection`,
    takes: [someAcid(MADE_SOUR), taken, pinches(SODA)],
  };
}

/** Ammonium salts give ammonia where the waste is made alkaline, and that holds metals in solution. */
export function ammoniumNotes(
  metals: readonly DissolvedMetal[],
  solutes: readonly Dissolved[],
  least: Quantity,
): WasteNote[] {
  const held = metals.filter(
    (metal) => HELD_BY_AMMONIA.metals.includes(metal.symbol) && mostOf(metal).compare(least) >= 0,
  );
  const ammonium = solutes.flatMap(({ species, amount }) =>
    constitutionOf(species.formula)
      .cations.filter(({ formula }) => formula === "NH4+")
      .map(({ count }) => amount.times(BigInt(count))),
  );
  if (held.length === 0 || ammonium.length === 0) return [];
  const lye = dry(HELD_BY_AMMONIA.reagent, sum(ammonium).times(planned("overdose")));
  const mass = lye.portion!.format({ decimals: 1, uncertainty: "none" });
  return [
    {
      text: `the ammonium in it gives ammonia once it is alkaline, which keeps ${list(held.map(({ symbol }) => symbol))} in solution: drive it out warm with caustic soda (${mass} for the ammonium), under a hood, before anything is precipitated, or dispose of it as it is, as hazardous waste`,
      takes: [lye],
    },
  ];
}

/** What must happen before soda precipitates a metal out of its complex, in words; with how much of the reagent, where all of the complex is known. */
export function freedBy(ligand: string, complex: Species | undefined, amount?: Quantity): WasteNote {
  const row = HOLDING_LIGANDS.find(({ name }) => name === ligand);
  const isSlow = SLOW_METALS.some(({ metals }) => complex?.metals.some(({ symbol }) => metals.includes(symbol)));
  if (row?.takenBy === undefined || isSlow) return said("soda does not precipitate it before the ligand is gone");
  const { reagent, called, solid } = row.takenBy;
  const taken: WasteReagent =
    complex === undefined || amount === undefined
      ? pinches(reagent)
      : dry(
          reagent,
          amount
            .times(complex.formula.count("C").toFraction())
            .dividedBy(parseFormula(row.formula).count("C").toFraction())
            .times(planned("overdose")),
          true,
        );
  const most =
    taken.portion === undefined ? "" : ` (up to ${taken.portion.format({ decimals: 0, uncertainty: "none" })})`;
  return {
    text: `stir in ${called}${most} until no more ${solid} settles, and filter; before that soda does not precipitate it`,
    takes: [taken],
  };
}

/** Ligands that hold metals of the waste, and in which ions. */
export function heldNotes(metals: readonly DissolvedMetal[]): WasteNote[] {
  const held = metals.filter(({ precipitate }) => precipitate).flatMap((one) => one.held);
  if (held.length === 0) return [];
  const isByCyanide = ({ ligand }: Held): boolean => ligand === HELD_BY_CYANIDE.ligand;
  const ionsOf = (all: readonly Held[]): string => list([...new Set(all.map(({ formula }) => formula))]);
  const [firm, others] = [held.filter(isByCyanide), held.filter((one) => !isByCyanide(one))];
  const ligands = [...new Set(others.map(({ ligand }) => ligand))];
  return [
    ...(firm.length === 0 ? [] : [said(HELD_BY_CYANIDE.note.replace("{ions}", ionsOf(firm)))]),
    ...(others.length === 0
      ? []
      : [
          said(
            `${list(ligands)} ${ligands.length > 1 ? "keep" : "keeps"} ${ionsOf(others)} in solution: count it by the ligand; soda does not precipitate it before the ligand is gone`,
          ),
        ]),
  ];
}

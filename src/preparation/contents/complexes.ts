// Metals of a vessel that a ligand holds: by the formula where that is a complex, else by the equilibrium of the mixture.
import { isNonmetal } from "../../equation/internal";
import { parseFormula } from "../../formula";
import { once, remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { type Quantity, quantity } from "../../quantity";
import { HOLDING_LIGANDS } from "../data/waste";
import { componentsOf } from "../feasibility/beaker";
import { keyOfFormula } from "../reaction/species";
import type { Books } from "./books";
import { type Asked, ownStanding } from "./equilibrium";
import type { Matter } from "./matter";

/** A metal that a ligand holds in solution. */
export interface Complexed {
  /** The ion that has most of it. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** Symbol of the element. */
  readonly metal: string;
  /** Name or formula of the ligand. */
  readonly ligand: string;
  /** Of the metal in such complexes. */
  readonly amount: Quantity<"amount of substance">;
}

/** Less than this share of a metal is not worth a word. */
const WORTH = 0.01;

interface OwnComplex {
  readonly ion: string;
  readonly ligand: string;
  readonly metals: readonly { readonly symbol: string; readonly count: bigint }[];
}

const remembered = /* @__PURE__ */ remembering<OwnComplex | undefined>(200);

/** What holds the metals of a formula that is a complex; undefined for what is none, and for hydroxido and halogenido ones. */
export const complexIn = ({ formula, key }: Pick<Matter, "formula" | "key">): OwnComplex | undefined =>
  remembered(`${key} ${formula}`, () => {
    const { complex, groups } = constitutionOf(formula);
    if (complex === undefined) return undefined;
    const row = HOLDING_LIGANDS.find(({ group }) =>
      groups.some((one) => one.includes(group) || (group === "cyanide" && one.includes("cyanid"))),
    );
    if (row === undefined) return undefined;
    const ion = parseFormula(complex.formula);
    const metals = ion.symbols
      .filter((symbol) => !isNonmetal(symbol))
      .map((symbol) => ({ symbol, count: ion.count(symbol).n * BigInt(complex.count) }));
    return { ion: ion.toUnicode(), ligand: row.name, metals };
  });

/** The metals that are held in a vessel. */
export function complexesOf(pot: { readonly books: Books; readonly asked: Asked }): Complexed[] {
  const named = (symbol: string, amount: Quantity, ligand: string): Quantity<"amount of substance"> =>
    amount.to("mol").named({ symbol: `n(${symbol}, held)`, label: `${symbol} that ${ligand} holds in solution` });
  const inFormulas = new Map<string, Complexed>();
  for (const { matter, amount } of pot.books.dissolved) {
    const found = complexIn(matter);
    if (found === undefined) continue;
    const { ion: formula, ligand } = found;
    const key = keyOfFormula(formula);
    for (const { symbol: metal, count } of found.metals) {
      const held = `${key} ${metal}`;
      const more = amount.times(count);
      const all = inFormulas.get(held)?.amount.plus(more) ?? more;
      inFormulas.set(held, { formula, key, metal, ligand, amount: named(metal, all, ligand) });
    }
  }
  const own = [...inFormulas.values()];
  const beaker = ownStanding(pot);
  if (beaker === undefined) return own;
  const isOwn = (symbol: string): boolean => own.some(({ metal }) => metal === symbol);
  const kilograms = pot.books.water.dividedBy(quantity({ value: String(beaker.water), unit: "kg" }));
  const free = ligands().flatMap(({ name, ligand }): Complexed[] => {
    if (ligand === undefined || !beaker.components.includes(ligand)) return [];
    return beaker.components.flatMap((key): Complexed[] => {
      const symbol = key === ligand ? undefined : metalIn(key);
      if (symbol === undefined || isOwn(symbol)) return [];
      const found = beaker.bound(key, ligand);
      if (found === undefined || found.moles < WORTH * beaker.dissolved(key)) return [];
      const amount = quantity({ value: found.moles.toPrecision(4), unit: "mol" }).times(kilograms);
      const formula = parseFormula(found.formula).toUnicode();
      return [
        {
          formula,
          key: keyOfFormula(formula),
          metal: symbol,
          ligand: name,
          amount: named(symbol, amount, name),
        },
      ];
    });
  });
  return [...own, ...free];
}

/** Ligands with their components in the network. */
const ligands = /* @__PURE__ */ once(() =>
  HOLDING_LIGANDS.map(({ name, formula }) => ({
    name,
    ligand: componentsOf(parseFormula(formula))?.keys().next().value,
  })),
);

const rememberedMetals = /* @__PURE__ */ remembering<string | undefined>(100);

/** The metal of a component; undefined for what is none. */
const metalIn = (key: string): string | undefined =>
  rememberedMetals(key, () => parseFormula(key).symbols.find((symbol) => !isNonmetal(symbol)));

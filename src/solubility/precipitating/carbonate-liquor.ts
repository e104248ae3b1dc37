// The liquor of a carbonate precipitation at equilibrium: as much metal as the precipitant is strong, precipitant in 5 %
// excess, once with the carbon dioxide kept and once aired. What decides in practice is whether it leaves.
import { tryAqueousComposition } from "../../aqueous";
import { parseFormula } from "../../formula";
import { type Quantity, quantity } from "../../quantity";

/** The liquor and what stands in it. */
export interface CarbonateLiquor {
  readonly pH: Quantity;
  /** Solids at equilibrium, most first. */
  readonly solids: readonly { readonly formula: string; readonly share: Quantity }[];
  /** Share of the metal that stays dissolved. */
  readonly left: Quantity;
}

/** Excess of the precipitant. */
const EXCESS = 1.05;
/** An anion that does nothing but balance charges. */
const BYSTANDER = "ClO4-";

/** The liquor with carbon dioxide kept or gone; undefined where it is too strong or not known. */
export function carbonateLiquor(
  metal: string,
  precipitant: "soda" | "bicarbonate",
  concentration: Quantity,
  carbonDioxide: "kept" | "leaves",
): CarbonateLiquor | undefined {
  const charge = parseFormula(metal).charge;
  const c = concentration.toNumber("mol/L");
  const amount = (moles: number) =>
    quantity({ value: moles.toPrecision(12), unit: "mol" }) as Quantity<"amount of substance">;
  const salts = precipitant === "soda" ? charge / 2 : charge;
  const found = tryAqueousComposition({
    water: "1 L",
    dissolved: [
      { formula: metal, amount: amount(c) },
      { formula: BYSTANDER, amount: amount(charge * c) },
      { formula: precipitant === "soda" ? "Na2CO3" : "NaHCO3", amount: amount(EXCESS * salts * c) },
    ],
    carbonDioxide,
  });
  if (!found.ok || found.value.unknown.length > 0) return undefined;
  const { pH, solids, filtrate } = found.value;
  const symbol = parseFormula(metal).symbols[0]!;
  const ion = filtrate.find(({ formula }) => parseFormula(formula).symbols.includes(symbol));
  if (ion?.share === undefined) return undefined;
  return {
    pH,
    left: ion.share.to("%"),
    solids: solids.map(({ formula, amount: standing }) => ({
      formula,
      share: standing
        .times(Number(parseFormula(formula).count(symbol)))
        .dividedBy(amount(c))
        .to("%")
        .named({ symbol: `share(${formula})`, label: `share of ${metal} in ${formula}` }),
    })),
  };
}

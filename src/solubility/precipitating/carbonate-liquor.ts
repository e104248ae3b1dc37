// The liquor of a carbonate precipitation at equilibrium: as much metal as the precipitant is strong, precipitant in 5 %
// excess, once with the carbon dioxide kept and once aired. What decides in practice is whether it leaves.
import { type AqueousComposition, tryAqueousComposition } from "../../aqueous";
import { parseFormula } from "../../formula";
import { lazily } from "../../foundation/lazy";
import { hasIon } from "../../ion";
import { type Quantity, quantity } from "../../quantity";

/** What carbonate is precipitated with. */
export type CarbonatePrecipitant = "soda" | "bicarbonate";

/** What stands in a liquor: nine tenths or more of one kind, "mixed" without such a majority, "none" under a hundredth of the metal. */
export type CarbonateOutcome = "normal" | "mixed" | "basic" | "hydroxide" | "none";

/** The liquor and what stands in it. */
export interface CarbonateLiquor {
  /** Of the liquor at equilibrium. */
  readonly pH: Quantity<"number">;
  /** What the solids are, taken together. */
  readonly outcome: CarbonateOutcome;
  /** Outcomes that the doubt of the constants leaves open as well. */
  readonly orElse: readonly CarbonateOutcome[];
  /** Solids at equilibrium, most first. */
  readonly solids: readonly { readonly formula: string; readonly share: Quantity<"number"> }[];
  /** Share of the metal that stays dissolved. */
  readonly left: Quantity<"number">;
}

/** Excess of the precipitant. */
const EXCESS = 1.05;
/** As near to boiling as the constants go. */
const HOTTEST = "60 °C";
/** An anion that does nothing but balance charges. */
const BYSTANDER = "ClO4-";

/** How a liquor is worked: at 25 °C with carbon dioxide kept or gone, or as hot as the constants serve and without it. */
export type Working = "kept" | "aired" | "boiled";

/** The liquor as it is worked; undefined where it is too strong or not known. */
export function carbonateLiquor(
  metal: string,
  precipitant: CarbonatePrecipitant,
  concentration: Quantity,
  working: Working,
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
    carbonDioxide: working === "kept" ? "kept" : "leaves",
    temperature: working === "boiled" ? HOTTEST : "25 °C",
  });
  if (!found.ok || found.value.unknown.length > 0) return undefined;
  const composition = found.value;
  const symbol = parseFormula(metal).symbols[0]!;
  const ion = composition.filtrate.find(({ formula }) => parseFormula(formula).symbols.includes(symbol));
  const left = ion?.share?.to("%");
  if (left === undefined) return undefined;
  const standingIn = ({ solids }: Pick<AqueousComposition, "solids">): CarbonateLiquor["solids"] =>
    solids.map(({ formula, amount: moles }) => ({
      formula,
      share: moles
        .times(Number(parseFormula(formula).count(symbol)))
        .dividedBy(amount(c))
        .to("%")
        .named({ symbol: `share(${formula})`, label: `share of ${metal} in ${formula}` }),
    }));
  const standing = standingIn(composition);
  const outcome = outcomeOf(standing);
  return lazily<CarbonateLiquor>({
    pH: () => composition.pH,
    outcome: () => outcome,
    orElse: () => {
      const others = composition.either.map((other) => outcomeOf(standingIn(other.composition)));
      return [...new Set(others)].filter((other) => other !== outcome);
    },
    left: () => left,
    solids: () => standing,
  });
}

/** Of all that stands, the share from which one kind gives its name to it. */
const MAJORITY = 0.9;
/** Share of the metal below which nothing stands, per cent. */
const NOTHING = 1;

/** What some solids are, taken together. */
function outcomeOf(solids: CarbonateLiquor["solids"]): CarbonateOutcome {
  const sums = { normal: 0, basic: 0, hydroxide: 0 };
  for (const { formula, share } of solids) sums[kindOf(formula)] += share.toNumber("%");
  const all = sums.normal + sums.basic + sums.hydroxide;
  if (all < NOTHING) return "none";
  if (sums.normal >= MAJORITY * all) return "normal";
  if (sums.hydroxide >= MAJORITY * all) return "hydroxide";
  return sums.basic + sums.hydroxide >= MAJORITY * all ? "basic" : "mixed";
}

function kindOf(formula: string): "normal" | "basic" | "hydroxide" {
  const has = (ion: string): boolean => hasIon(formula, ion);
  if (!has("CO3^2-")) return "hydroxide";
  return has("OH-") || has("O^2-") ? "basic" : "normal";
}

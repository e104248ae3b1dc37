// Normal or basic carbonate? What stands at equilibrium decides, with the carbon dioxide kept and gone; where the solid that the
// trade gets has no constant, or the metal none at all, the trade does. Beside the verdict an index tells what the precipitant makes
// of the first of the metal: how far its [CO3]/[OH]² lies above the ratio at which carbonate and basic solid are in balance.

import { parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { lazily } from "../../foundation/lazy";
import { once } from "../../foundation/memo";
import { type ConcentrationText, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard, needChoice } from "../argument";
import { CARBONATES, SETTLED, type SettledRow } from "../data/carbonates";
import type { SourceKey } from "../data/sources";
import { SolubilityError } from "../error";
import { carbonateIndex, carbonateRatio } from "./carbonate-index";
import {
  type CarbonateLiquor,
  type CarbonateOutcome,
  type CarbonatePrecipitant,
  carbonateLiquor,
  type Working,
} from "./carbonate-liquor";
import { sameIon } from "./given-ions";
import { type SolubilityProduct, solubilityProduct } from "./product";

const CARBONATE = { metal: true, precipitant: true, concentration: true, facts: true } as const satisfies Fields<
  Parameters<typeof precipitatedCarbonate>[0]
>;

const PRECIPITANTS: readonly CarbonatePrecipitant[] = ["soda", "bicarbonate"];

/** Verdict on a metal with a precipitant. */
export interface PrecipitatedCarbonate {
  /** The metal ion that was asked about. */
  readonly metal: string;
  /** What the metal is precipitated with. */
  readonly precipitant: CarbonatePrecipitant;
  /**
   * What stands in the end: nine tenths or more of one kind. "mixed" where both kinds stand or the carbon dioxide decides within
   * the doubt of the constants, "none" where nothing precipitates.
   */
  readonly verdict: CarbonateOutcome;
  /**
   * What the verdict rests on: the equilibrium of the liquor; or the trade's experience, where a constant is lacking (a warning
   * names it) or the liquor of this strength does not tell.
   */
  readonly basis: "equilibrium" | "trade";
  /**
   * What the precipitant makes of the first of the metal that is poured into it: above 1 the normal carbonate, below the basic
   * one. Undefined where no two constants are weighed.
   */
  readonly index: Quantity<"number"> | undefined;
  /** Solids to expect, likeliest first. */
  readonly expected: readonly string[];
  /** What the trade knows of this case. */
  readonly practice: string | undefined;
  /** Source of the solids named and of `practice`; the constants name their own. */
  readonly source: SourceKey;
  /** The constants the index rests on. */
  readonly products: readonly SolubilityProduct[];
  /**
   * The liquor at equilibrium, metal at the concentration of the precipitant (at most 0.3 mol/L) and precipitant in 5 % excess:
   * at 25 °C with carbon dioxide kept, and gone; and boiled, with the constants of 60 °C, where they end. Undefined where it is
   * not known.
   */
  readonly liquor: {
    readonly kept: CarbonateLiquor | undefined;
    readonly aired: CarbonateLiquor | undefined;
    readonly boiled: CarbonateLiquor | undefined;
  };
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** Above this the liquor is too strong for the activity model, mol/L. */
const MOST_METAL = 0.3;

/** The liquors, worked out when looked at. */
function liquors(
  metal: string,
  precipitant: CarbonatePrecipitant,
  concentration: Quantity,
): PrecipitatedCarbonate["liquor"] {
  const c = concentration.toNumber("mol/L") > MOST_METAL ? quantity(`${MOST_METAL} mol/L`) : concentration;
  const worked = (working: Working) => () => carbonateLiquor(metal, precipitant, c, working);
  return lazily<PrecipitatedCarbonate["liquor"]>({
    kept: worked("kept"),
    aired: worked("aired"),
    boiled: worked("boiled"),
  });
}

/**
 * What the equilibrium says. Where both kinds stand while the carbon dioxide is there, it goes on leaving until what is left
 * without it; one kind stays that kind if it may stand without carbon dioxide as well. Undefined where the liquor is not known.
 */
function atEquilibrium({ kept, aired }: PrecipitatedCarbonate["liquor"]): CarbonateOutcome | undefined {
  if (kept === undefined || aired === undefined) return undefined;
  if (kept.outcome === "none" || kept.outcome === "mixed") return aired.outcome;
  return [aired.outcome, ...aired.orElse].includes(kept.outcome) ? kept.outcome : "mixed";
}

/**
 * Does a metal precipitate as its normal carbonate, a basic carbonate, or a hydroxide?
 *
 * @param request - metal ion; `"soda"` (sodium carbonate) or `"bicarbonate"`; concentration of the precipitant
 *   (default 0.1 mol/L, up to 1 mol/L)
 * @returns verdict and what it rests on, solids to expect, the liquors, index, and the constants used. In this order: the trade's
 *   verdict for a basic carbonate of which no constant is known (cobalt, nickel); the equilibrium of the liquor, boiled where the
 *   trade boils it (magnesium with soda); the trade's verdict for metals whose liquor is not known
 * @throws {SolubilityError} `solubility.no-data` for a metal without constants, `solubility.not-positive`,
 *   `solubility.out-of-reach` above 1 mol/L, `solubility.missing-option`, `solubility.bad-option`
 * @source equilibrium and ratio of solubility products, constants of our tables; the solids named and the remarks are common
 *   practice, no source
 * @category Precipitation
 * @example
 * precipitatedCarbonate({ metal: "Cu^2+", precipitant: "soda" }).verdict // => "basic"
 * precipitatedCarbonate({ metal: "Ca^2+", precipitant: "soda" }).expected // => ["CaCO3"]
 */
export function precipitatedCarbonate(
  request: LookupOptions & {
    readonly metal: string;
    readonly precipitant: CarbonatePrecipitant;
    readonly concentration?: QuantityLike<"concentration", ConcentrationText>;
  },
): PrecipitatedCarbonate {
  if (bringsFacts(request)) return withItsFacts(request, guard, precipitatedCarbonate);
  guard.fields(request, CARBONATE, "request");
  const { metal, precipitant } = request;
  if (precipitant === undefined) throw new SolubilityError("solubility.missing-option", "no precipitant named");
  needChoice(precipitant, "precipitant", PRECIPITANTS);
  parseFormula(metal);
  const concentration = guard.positive(
    expectDimension(request.concentration ?? "0.1 mol/L", "concentration", "concentration"),
    "concentration",
  );
  if (concentration.compare("1 mol/L") > 0) {
    throw new SolubilityError(
      "solubility.out-of-reach",
      `a precipitant of up to 1 mol/L is judged, not one of ${concentration}`,
    );
  }
  const settled = SETTLED().find((row) => sameIon(row.metal, metal));
  if (settled !== undefined) return asSettled(metal, precipitant, settled, concentration);
  const entry = CARBONATES().find((candidate) => sameIon(candidate.metal, metal));
  if (entry === undefined) {
    throw new SolubilityError("solubility.no-data", `no carbonate constants for ${metal}`, {
      input: metal,
      position: 0,
      hint: `known: ${[...CARBONATES().map((m) => m.metal), ...SETTLED().map((m) => m.metal)].join(", ")}`,
    });
  }
  const carbonate = solubilityProduct(...entry.carbonate);
  const basic = solubilityProduct(...entry.basic);
  const ratio = carbonateRatio(precipitant, concentration);
  const { normalSolid, basicSolid } = entry;
  const liquor = liquors(metal, precipitant, concentration);
  const isTrade = entry.basicWith === precipitant;
  const isBoiled = entry.boiledWith === precipitant;
  const verdict = once((): CarbonateOutcome => {
    const found = isTrade ? "basic" : isBoiled ? liquor.boiled?.outcome : atEquilibrium(liquor);
    if (found !== undefined) return found;
    throw new SolubilityError("solubility.no-data", `the liquor of ${metal} with ${precipitant} is not known`, {
      input: metal,
      hint: "look at index and products",
    });
  });
  return lazily<PrecipitatedCarbonate>({
    metal: () => metal,
    precipitant: () => precipitant,
    verdict,
    basis: () => (isTrade ? "trade" : "equilibrium"),
    index: () => carbonateIndex(ratio, carbonate, basic, entry.metal),
    expected: () => {
      const solids = { normal: [normalSolid], basic: [basicSolid], mixed: [basicSolid, normalSolid], none: [] };
      const found = verdict();
      return found === "hydroxide" ? liquor.aired!.solids.map(({ formula }) => formula) : solids[found];
    },
    practice: () => entry.practice[precipitant],
    source: () => entry.source,
    products: () => [carbonate, basic],
    liquor: () => liquor,
    warnings: () => [
      ...(isTrade ? [lacking(basicSolid)] : []),
      ...carbonate.warnings,
      ...basic.warnings,
      ...endsOtherwise(verdict(), liquor, isBoiled),
    ],
  });
}

/** That the verdict is not the equilibrium's. */
const lacking = (solid: string): string =>
  `the solubility product of ${solid} is not known: the verdict is the trade's experience`;

/** What to say where neither liquor ends as the verdict has it, or where it depends on the carbon dioxide or the boiling. */
function endsOtherwise(
  verdict: CarbonateOutcome,
  { kept, aired }: PrecipitatedCarbonate["liquor"],
  isBoiled: boolean,
): string[] {
  if (kept === undefined || aired === undefined) return [];
  const stated = ({ outcome, solids }: CarbonateLiquor): string =>
    solids.length === 0
      ? "no solid"
      : `${outcome}: ${solids.map(({ formula, share }) => `${formula} ${share.format({ decimals: 0, uncertainty: "none" })}`).join(", ")}`;
  if (kept.outcome !== aired.outcome)
    return [`it depends on the carbon dioxide: kept, ${stated(kept)}; gone, ${stated(aired)}`];
  if (kept.outcome === verdict) return [];
  return [
    isBoiled
      ? `it is ${verdict} on boiling; at 25 °C the liquor ends otherwise (${stated(kept)})`
      : `of the constants that are known the liquor ends otherwise at equilibrium (${stated(kept)})`,
  ];
}

/** A metal of which the trade knows one outcome: the equilibrium where it says the same, else the trade. */
function asSettled(
  metal: string,
  precipitant: CarbonatePrecipitant,
  { verdict, solid, practice, source }: SettledRow,
  concentration: Quantity,
): PrecipitatedCarbonate {
  const liquor = liquors(metal, precipitant, concentration);
  const found = once(() => atEquilibrium(liquor));
  return lazily<PrecipitatedCarbonate>({
    metal: () => metal,
    precipitant: () => precipitant,
    verdict: () => verdict,
    basis: () => (found() === verdict ? "equilibrium" : "trade"),
    index: () => undefined,
    expected: () => [solid],
    practice: () => practice[precipitant],
    source: () => source,
    products: () => [],
    liquor: () => liquor,
    warnings: () => {
      if (found() === verdict) return [];
      const lacks = `the constants do not tell what ${metal} forms with carbonate: the verdict is the trade's experience`;
      return [
        found() === "none" ? `nothing precipitates from a liquor of this strength: ${practice[precipitant]}` : lacks,
      ];
    },
  });
}

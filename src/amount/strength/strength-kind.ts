// What a strength states: its kind and value, read from text or quantity. A bare percent is refused, because it has three
// readings.

import type { Fields } from "../../foundation/argument";
import { list } from "../../foundation/wording";
import {
  type ConcentrationText,
  type DensityText,
  type MassFractionText,
  type Measured,
  type MolalityText,
  type MoleFractionText,
  type Quantity,
  quantity,
  type VolumeFractionText,
} from "../../quantity";
import { readUnit } from "../../quantity/internal";
import { type DensityLike, type FormulaLike, oneOf, type TemperatureLike } from "../argument";
import { AmountError } from "../error";
import type { ReactionLike } from "../jar/species";
import type { BaumeScale } from "./baume";

/** What goes with a strength whose solute and density are given apart. */
export const DETAILS = {
  temperature: true,
  basis: true,
  equivalents: true,
  reaction: true,
  soluteDensity: true,
  solvent: true,
  baume: true,
} as const satisfies Fields<Omit<StrengthOptions, "of" | "density">>;

export const STRENGTH = { of: true, density: true, ...DETAILS } as const satisfies Fields<StrengthOptions>;

/** What a strength counts. */
export type StrengthKind =
  | "mass fraction"
  | "molality"
  | "mole fraction"
  | "mass concentration"
  | "volume fraction"
  | "concentration"
  | "normality"
  | "degrees Baumé"
  | "peroxide volumes";

/** Strengths that no SI unit carries. */
export type TradeStrengthText =
  | `${number} N`
  | `${number} eq/L`
  | `${number} °Bé`
  | `${number} volumes`
  | `${number} % vol`;

/** A strength as text, quantity, or value with unit. `"5 %"` alone needs `basis`. */
export type StrengthLike =
  | MassFractionText
  | MolalityText
  | MoleFractionText
  | DensityText
  | VolumeFractionText
  | ConcentrationText
  | TradeStrengthText
  | Quantity
  | Measured;

/** What a plain percent on a label means. */
export type PercentBasis = "w/w" | "w/v" | "v/v";

/** What has to be known to go from one strength to another. */
export interface StrengthOptions {
  /** The solute, hydrate included if that is what is counted. */
  readonly of?: FormulaLike | undefined;
  /** Density of the solution; looked up for `of` where it is not given. */
  readonly density?: DensityLike | undefined;
  /** Temperature of the solution, for the lookup. */
  readonly temperature?: TemperatureLike | undefined;
  /** What a plain `%` means. */
  readonly basis?: PercentBasis | undefined;
  /** Equivalents in one mole of the solute, for normality: 2 for sulfuric acid that gives both protons. */
  readonly equivalents?: number | bigint | string | undefined;
  /**
   * The reaction those equivalents belong to, in words or as an equation. From an equation they are stated without
   * `equivalents`, see `equivalentsIn`.
   */
  readonly reaction?: ReactionLike | undefined;
  /** Density of the pure liquid solute, for % v/v. */
  readonly soluteDensity?: DensityLike | undefined;
  /** Formula of the solvent; water unless given. */
  readonly solvent?: FormulaLike | undefined;
  /** Which Baumé scale the hydrometer has; heavier than water unless given. */
  readonly baume?: BaumeScale | undefined;
}

/** @internal A strength as read. */
export interface Strength {
  readonly kind: StrengthKind;
  readonly value: Quantity;
}

const PER_MASS: ReadonlySet<StrengthKind> = new Set(["mass fraction", "molality", "mole fraction", "degrees Baumé"]);

/** @internal Is the strength counted by mass of solution, and not by volume? */
export const isPerMass = (kind: StrengthKind): boolean => PER_MASS.has(kind);

const LONGEST = 200;
const TRADE: readonly (readonly [RegExp, StrengthKind])[] = [
  [/^(.*\S)\s*(?:N|eq\/L)$/, "normality"],
  [/^(.*[^\s°])[\s°]*(?:B[ée]|Baum[ée])\.?$/, "degrees Baumé"],
  [/^(.*[^\s-])[\s-]*vol(?:ume)?s?\.?$/, "peroxide volumes"],
];

const NAME_OF_TARGET: Readonly<Record<string, StrengthKind>> = {
  N: "normality",
  "eq/L": "normality",
  "°Bé": "degrees Baumé",
  "°Be": "degrees Baumé",
  volumes: "peroxide volumes",
};

const PERCENT = { "w/w": "% w/w", "w/v": "% w/v", "v/v": "% v/v" } as const;
const BASES = ["w/w", "w/v", "v/v"] as const satisfies readonly PercentBasis[];

/** What the labels of spirits say for millilitres in 100 mL. */
const PERCENT_BY_VOLUME = /%\s*vol\.?$/;

/** What plain parts can mean, as it is written. */
const PARTS: Readonly<Record<string, readonly string[]>> = {
  ppm: ["ppm w/w", "ppm v/v", "mg/L"],
  ppb: ["ppb w/w", "ppb v/v", "µg/L"],
};

/** The refusal a plain percent or ppm meets. */
function ambiguous(text: string, symbol: string): AmountError {
  const percent = symbol === "%";
  return new AmountError(
    "amount.ambiguous-percent",
    `${percent ? "percent" : "parts"} of what? '${text}' has several readings`,
    {
      input: text,
      position: Math.max(0, text.lastIndexOf(symbol)),
      hint: percent
        ? 'write % w/w (g in 100 g), % w/v (g in 100 mL) or % v/v (mL in 100 mL), or give basis: "w/w"'
        : `write ${list(PARTS[symbol] ?? [], "or")}`,
      details: { readings: percent ? Object.values(PERCENT) : (PARTS[symbol] ?? []) },
    },
  );
}

/** @internal What a unit counts, for units that are strengths. */
export function kindOfUnit(
  symbol: string,
  text: string,
  basis: PercentBasis | undefined,
): { kind: StrengthKind; unit: string } {
  if (typeof symbol !== "string") {
    throw new AmountError("amount.unknown-strength", `a unit of strength is text, not ${typeof symbol}`);
  }
  const trade = NAME_OF_TARGET[symbol];
  if (trade !== undefined) return { kind: trade, unit: symbol };
  if (symbol === "%") {
    if (basis === undefined) throw ambiguous(text, "%");
    const whole = PERCENT[oneOf(basis, BASES, "basis")];
    return { ...kindOfUnit(whole, text, undefined), unit: whole };
  }
  const name = readUnit(symbol, text).dimension.name;
  switch (name) {
    case "mass fraction":
    case "mole fraction":
    case "volume fraction":
    case "molality":
    case "concentration":
      return { kind: name, unit: symbol };
    case "density":
      return { kind: "mass concentration", unit: symbol };
    case "number": {
      const pair = /^(\S+)\/(?:10+ )?(\S+)$/.exec(symbol);
      const [above, below] = [pair?.[1], pair?.[2]].map((u) => (u === undefined ? "" : readUnit(u).dimension.name));
      if (above !== undefined && above === below) {
        if (above === "mass") return { kind: "mass fraction", unit: symbol };
        if (above === "volume") return { kind: "volume fraction", unit: symbol };
        if (above === "amount of substance") return { kind: "mole fraction", unit: symbol };
      }
      if (symbol !== "") throw ambiguous(text, symbol);
      break;
    }
  }
  const problem = symbol === "" ? "a strength without a unit" : `'${symbol}' is not a unit of strength`;
  throw new AmountError("amount.unknown-strength", problem, {
    input: text,
    position: symbol === "" ? text.length : Math.max(0, text.lastIndexOf(symbol)),
    hint: "strengths look like 5 % w/w, 36 g/L, 0.1 mol/L, 0.5 mol/kg, 2 N, 20 °Bé",
  });
}

/** @internal Read a strength and say what it counts. */
export function readStrength(like: StrengthLike, basis?: PercentBasis, argument = "strength"): Strength {
  if (typeof like === "string") {
    if (like.length > LONGEST) {
      throw new AmountError("amount.too-long", `a strength of ${like.length} characters; the limit is ${LONGEST}`);
    }
    const text: string = like.trim().replace(PERCENT_BY_VOLUME, PERCENT["v/v"]);
    for (const [pattern, kind] of TRADE) {
      const number = pattern.exec(text)?.[1];
      if (number === undefined) continue;
      const count = quantity(number);
      // "5 % N" on a bag is five percent of nitrogen, not a normality
      if (count.unit === "") return { kind, value: sane(count, kind, argument) };
    }
    return readUnits(quantity(text), text, basis, argument);
  }
  const q = quantity(like);
  return readUnits(q, String(q), basis, argument);
}

function readUnits(q: Quantity, text: string, basis: PercentBasis | undefined, argument: string): Strength {
  const { kind, unit } = kindOfUnit(q.unit, text, basis);
  return { kind, value: sane(unit === q.unit ? q : rebased(q, unit), kind, argument) };
}

/** A plain percent under the unit that says of what: % w/v is a density, so it is a new unit and not another view. */
function rebased(q: Quantity, unit: string): Quantity {
  return unit === PERCENT["w/v"] ? q.times("1 g/mL").to(unit) : q.to(unit);
}

const NOT_ABOVE_ONE: ReadonlySet<StrengthKind> = new Set(["mass fraction", "mole fraction", "volume fraction"]);

function sane(q: Quantity, kind: StrengthKind, argument: string): Quantity {
  if (!q.isPositive() && !q.isZero()) {
    throw new AmountError("amount.negative", `${argument} must not be negative: ${q}`, { details: { argument } });
  }
  if (NOT_ABOVE_ONE.has(kind) && q.compare("1") > 0) {
    throw new AmountError("amount.fraction-above-one", `${argument} of ${q} is more than the whole`, {
      details: { argument, value: String(q) },
    });
  }
  return q;
}

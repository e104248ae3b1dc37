// Strengths of solutions in all their dress: what a text states, and the way from any one to any other. Two families meet:
// per mass of solution (w, molality, mole fraction) and per volume (g/L, mol/L, % v/v, normality); a density joins them.

import { type Formula, molarMass } from "../formula";
import { cite } from "../foundation/bibliography";
import { attempt, type Result } from "../foundation/error";
import { type Measured, type Quantity, quantity } from "../quantity";
import type {
  ConcentrationText,
  DensityText,
  MassFractionText,
  MolalityText,
  MoleFractionText,
  VolumeFractionText,
} from "../quantity/text";
import { readUnit } from "../quantity/unit";
import {
  type DensityLike,
  type FormulaLike,
  formulaOfArgument,
  inSymbol,
  positive,
  type TemperatureLike,
} from "./argument";
import { densityFor, massFractionFromDensity, massFractionFromMassConcentration } from "./density";
import { AmountError } from "./error";
import { molarVolumeOfGas } from "./gas";
import { densityOfWater } from "./water";

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
export type TradeStrengthText = `${number} N` | `${number} °Bé` | `${number} volumes`;

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
  /** The reaction those equivalents belong to, in words or as an equation. */
  readonly reaction?: string | undefined;
  /** Density of the pure liquid solute, for % v/v. */
  readonly soluteDensity?: DensityLike | undefined;
  /** Formula of the solvent; water unless told. */
  readonly solvent?: FormulaLike | undefined;
  /** Which Baumé scale the hydrometer has; heavier than water unless told. */
  readonly baume?: "heavier than water" | "lighter than water" | undefined;
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
  [/^(.*\S)\s*N$/, "normality"],
  [/^(.*\S)\s*(?:°\s*B[ée]|° ?Baum[ée])$/, "degrees Baumé"],
  [/^(.*\S)\s*vol(?:ume)?s?$/, "peroxide volumes"],
];

const NAME_OF_TARGET: Readonly<Record<string, StrengthKind>> = {
  N: "normality",
  "eq/L": "normality",
  "°Bé": "degrees Baumé",
  "°Be": "degrees Baumé",
  volumes: "peroxide volumes",
};

const PERCENT = { "w/w": "% w/w", "w/v": "% w/v", "v/v": "% v/v" } as const;

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
        : `write ${symbol} w/w, ${symbol} v/v, or mg/L`,
      details: { readings: percent ? Object.values(PERCENT) : [`${symbol} w/w`, `${symbol} v/v`, "mg/L"] },
    },
  );
}

/** What a unit counts, for units that are strengths. */
function kindOfUnit(
  symbol: string,
  text: string,
  basis: PercentBasis | undefined,
): { kind: StrengthKind; unit: string } {
  const trade = NAME_OF_TARGET[symbol];
  if (trade !== undefined) return { kind: trade, unit: symbol };
  if (symbol === "%") {
    if (basis === undefined) throw ambiguous(text, "%");
    return { ...kindOfUnit(PERCENT[basis], text, undefined), unit: PERCENT[basis] };
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
  throw new AmountError("amount.unknown-strength", `'${symbol}' is no unit of strength`, {
    input: text,
    position: Math.max(0, text.lastIndexOf(symbol)),
    hint: "strengths look like 5 % w/w, 36 g/L, 0.1 mol/L, 0.5 mol/kg, 2 N, 20 °Bé",
  });
}

/** @internal Read a strength and say what it counts. */
export function readStrength(like: StrengthLike, basis?: PercentBasis, argument = "strength"): Strength {
  if (typeof like === "string") {
    const text: string = like;
    if (text.length > LONGEST) {
      throw new AmountError("amount.too-long", `a strength of ${text.length} characters; the limit is ${LONGEST}`);
    }
    for (const [pattern, kind] of TRADE) {
      const number = pattern.exec(text.trim())?.[1];
      if (number !== undefined) return { kind, value: sane(quantity(number), kind, argument) };
    }
  }
  const q = quantity(like);
  const { kind, unit } = kindOfUnit(q.unit, String(like), basis);
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

/** The ways between strengths for one set of options; every intermediate result is named. */
class Ways {
  readonly formula: Formula | undefined;
  readonly name: string;

  constructor(readonly options: StrengthOptions) {
    this.formula = options.of === undefined ? undefined : formulaOfArgument(options.of);
    this.name = this.formula === undefined ? "solute" : inSymbol(this.formula);
  }

  private ownMolarMass: Quantity | undefined;

  get molarMass(): Quantity {
    if (this.formula !== undefined) {
      this.ownMolarMass ??= molarMass(this.formula);
      return this.ownMolarMass;
    }
    throw new AmountError("amount.missing-formula", "going between mass and moles needs the solute", {
      hint: 'give of: "HCl"',
    });
  }

  get solventMolarMass(): Quantity {
    return molarMass(this.options.solvent ?? "H2O");
  }

  get equivalents(): Quantity {
    const { equivalents, reaction } = this.options;
    if (equivalents === undefined) {
      throw new AmountError("amount.missing-equivalents", "a normality has no meaning without its reaction", {
        hint: 'give equivalents: 2 and reaction: "both protons of H2SO4 neutralised"',
      });
    }
    return positive(String(equivalents) as `${number}`, "number", "equivalents", {
      symbol: `z(${this.name})`,
      label: "equivalents in one mole",
      ...(reaction === undefined ? {} : { assumption: `equivalents counted for: ${reaction}` }),
    });
  }

  get soluteDensity(): Quantity {
    const { soluteDensity } = this.options;
    if (soluteDensity !== undefined) {
      return positive(soluteDensity, "density", "solute density", {
        symbol: `ρ(pure ${this.name})`,
        label: "density of the pure liquid",
      });
    }
    const missing = (): AmountError =>
      new AmountError("amount.missing-density", "a percentage by volume needs the density of the pure liquid solute", {
        hint: 'give soluteDensity: "0.789 g/mL"',
      });
    if (this.formula === undefined || this.options.solvent !== undefined) throw missing();
    // Tables that run to 100 % hold the pure liquid themselves.
    const pure = attempt(() =>
      densityFor(this.formula, quantity("100 % w/w"), { temperature: this.options.temperature }),
    );
    if (!pure.ok) throw missing();
    return pure.value.named({ symbol: `ρ(pure ${this.name})` });
  }

  named(q: Quantity, symbol: string, rule: string, unit: string): Quantity {
    return q.to(unit).named({ symbol: `${symbol}(${this.name})`, rule });
  }

  /** Mass fraction from any strength per mass of solution. */
  toMassFraction({ kind, value }: Strength): Quantity {
    switch (kind) {
      case "molality": {
        const b = this.given(value, "b", "molality");
        const solute = b.times(this.molarMass);
        return this.named(solute.dividedBy(solute.plus("1")), "w", "mass fraction = b M / (1 + b M)", "% w/w");
      }
      case "mole fraction": {
        const x = this.given(value, "x", "mole fraction");
        const solute = x.times(this.molarMass);
        const solvent = quantity("1").minus(x).times(this.solventMolarMass);
        return this.named(
          solute.dividedBy(solute.plus(solvent)),
          "w",
          "mass fraction = x M / (x M + (1 - x) M(solvent))",
          "% w/w",
        );
      }
      case "degrees Baumé":
        return this.fromBaume(value);
      default:
        return this.given(value, "w", "mass fraction");
    }
  }

  /** A strength per mass of solution from the mass fraction. */
  fromMassFraction(w: Quantity, kind: StrengthKind, unit: string): Quantity {
    switch (kind) {
      case "molality": {
        const solvent = this.notPure(quantity("1").minus(w), "molality");
        return this.named(w.dividedBy(this.molarMass.times(solvent)), "b", "molality = w / (M (1 - w))", unit);
      }
      case "mole fraction": {
        const solute = w.dividedBy(this.molarMass);
        const solvent = quantity("1").minus(w).dividedBy(this.solventMolarMass);
        return this.named(
          solute.dividedBy(solute.plus(solvent)),
          "x",
          "mole fraction = (w / M) / (w / M + (1 - w) / M(solvent))",
          unit,
        );
      }
      case "degrees Baumé":
        return this.toBaume(w);
      default:
        return w.to(unit);
    }
  }

  notPure(rest: Quantity, what: string): Quantity {
    if (rest.isPositive()) return rest;
    throw new AmountError("amount.not-possible", `the pure solute has no ${what}: there is no solvent left`);
  }

  /** Mass of solute in a volume of solution from any strength per volume. */
  toMassConcentration({ kind, value }: Strength): Quantity {
    switch (kind) {
      case "mass concentration":
        return this.given(value, "γ", "mass concentration");
      case "volume fraction":
        return this.named(
          this.given(value, "φ", "volume fraction").times(this.soluteDensity),
          "γ",
          "mass concentration = volume fraction × density of the pure liquid",
          "g/L",
        );
      default:
        return this.named(
          this.toConcentration({ kind, value }).times(this.molarMass),
          "γ",
          "mass concentration = concentration × molar mass",
          "g/L",
        );
    }
  }

  /** Amount of solute in a volume of solution from any strength per volume. */
  toConcentration(strength: Strength): Quantity {
    const { kind, value } = strength;
    switch (kind) {
      case "concentration":
        return this.given(value, "c", "concentration");
      case "normality": {
        const normal = value.times("1 mol/L").named({ symbol: "N", label: "equivalents in a litre" });
        return this.named(normal.dividedBy(this.equivalents), "c", "concentration = normality / equivalents", "mol/L");
      }
      case "peroxide volumes": {
        const litres = this.given(value, "V/V", "litres of oxygen from a litre of solution");
        return this.named(
          litres.times(2).dividedBy(this.oxygenVolume()),
          "c",
          "2 H2O2 -> 2 H2O + O2: concentration = 2 × volumes / molar volume of oxygen",
          "mol/L",
        );
      }
      default:
        return this.named(
          this.toMassConcentration(strength).dividedBy(this.molarMass),
          "c",
          "concentration = mass concentration / molar mass",
          "mol/L",
        );
    }
  }

  /** A strength per volume from another strength per volume, by way of mass or amount as fits. */
  fromPerVolume(strength: Strength, kind: StrengthKind, unit: string): Quantity {
    if (kind === "mass concentration") return this.toMassConcentration(strength).to(unit);
    if (kind === "volume fraction") {
      const gamma = this.toMassConcentration(strength);
      const phi = gamma.dividedBy(this.soluteDensity);
      if (phi.compare("1") > 0) {
        throw new AmountError("amount.not-possible", `${gamma} is more than the pure liquid holds`);
      }
      return this.named(phi, "φ", "volume fraction = mass concentration / density of the pure liquid", unit);
    }
    const c = this.toConcentration(strength);
    if (kind === "normality") {
      return this.named(c.times(this.equivalents), "N", "normality = concentration × equivalents", "mol/L");
    }
    if (kind === "peroxide volumes") {
      return c.times(this.oxygenVolume()).dividedBy(2).named({
        symbol: "volumes of oxygen",
        rule: "2 H2O2 -> 2 H2O + O2: volumes = concentration × molar volume / 2",
      });
    }
    return c.to(unit);
  }

  /** Molar volume the peroxide trade counts with: 0 °C and 101.325 kPa. */
  oxygenVolume(): Quantity {
    if (this.formula === undefined || !this.formula.hasSameComposition(formulaOfArgument("H2O2"))) {
      throw new AmountError("amount.unknown-strength", "volumes of oxygen count hydrogen peroxide only", {
        hint: 'give of: "H2O2"',
      });
    }
    return molarVolumeOfGas({ temperature: "0 °C", pressure: "101.325 kPa" });
  }

  /** Per volume to per mass: by the given density, or solved on the table. */
  massFractionFromVolume(strength: Strength): Quantity {
    const gamma = this.toMassConcentration(strength);
    const { density, temperature } = this.options;
    if (density === undefined && this.formula !== undefined) {
      return massFractionFromMassConcentration(this.formula, gamma, { temperature });
    }
    const w = gamma.dividedBy(densityFor(this.formula, gamma, this.options));
    if (w.compare("1") > 0) {
      throw new AmountError("amount.not-possible", `${gamma} is more than a solution of density ${density} weighs`);
    }
    return this.named(w, "w", "mass fraction = mass concentration / density", "% w/w");
  }

  massConcentrationFromMass(w: Quantity): Strength {
    const rho = densityFor(this.formula, w, this.options);
    return {
      kind: "mass concentration",
      value: this.named(w.times(rho), "γ", "mass concentration = mass fraction × density", "g/L"),
    };
  }

  // Baumé: the scale of the trade with modulus 145 above water and 140/130 below, at 60 °F against water of 60 °F.
  private baumeWords(): { symbol: string; label: string; source: string } {
    return { symbol: "°Bé", label: "degrees Baumé", source: cite("baumeScale") };
  }

  private waterAtSixty(): Quantity {
    return densityOfWater("60 °F").named({ symbol: "ρ(H2O, 60 °F)" });
  }

  fromBaume(value: Quantity): Quantity {
    const light = this.options.baume === "lighter than water";
    const degrees = value.named(this.baumeWords());
    const gravity = light
      ? quantity("140").dividedBy(quantity("130").plus(degrees))
      : quantity("145").dividedBy(this.onScale(quantity("145").minus(degrees)));
    const rho = gravity
      .times(this.waterAtSixty())
      .to("g/mL")
      .named({
        symbol: `ρ(${this.name})`,
        rule: light
          ? "density = 140 / (130 + °Bé) × density of water"
          : "density = 145 / (145 - °Bé) × density of water",
        assumption: `Baumé scale ${this.options.baume ?? "heavier than water"}, read at 60 °F (15.6 °C)`,
      });
    if (this.formula === undefined) {
      throw new AmountError("amount.missing-formula", "a hydrometer reading needs the solute", {
        hint: 'give of: "HCl"',
      });
    }
    return massFractionFromDensity(this.formula, rho, { temperature: "60 °F" });
  }

  private onScale(rest: Quantity): Quantity {
    if (rest.isPositive()) return rest;
    throw new AmountError("amount.outside-range", "the Baumé scale for heavy liquids ends below 145 degrees", {
      details: { quantity: "degrees Baumé", low: "0", high: "145" },
    });
  }

  toBaume(w: Quantity): Quantity {
    const rho = densityFor(this.formula, w, { ...this.options, temperature: "60 °F" });
    const gravity = rho.dividedBy(this.waterAtSixty());
    const light = this.options.baume === "lighter than water";
    const degrees = light
      ? quantity("140").dividedBy(gravity).minus("130")
      : quantity("145").minus(quantity("145").dividedBy(gravity));
    return degrees.named({
      ...this.baumeWords(),
      rule: light ? "°Bé = 140 / relative density - 130" : "°Bé = 145 - 145 / relative density",
      assumption: `Baumé scale ${this.options.baume ?? "heavier than water"}, read at 60 °F (15.6 °C)`,
    });
  }

  given(value: Quantity, symbol: string, label: string): Quantity {
    return value.symbol === undefined ? value.named({ symbol: `${symbol}(${this.name})`, label }) : value;
  }
}

/**
 * A strength in another unit: % w/w, % w/v, % v/v, ppm w/w, g/L, mol/L, mol/kg, mol %, N, °Bé, volumes.
 *
 * Going from a strength per mass to one per volume needs the density of the solution: given, or looked up for the solute
 * (linear in 1/density between tabulated points, never beyond the last). A bare `%` is refused unless `basis` says of what.
 *
 * @param strength - any strength, >= 0
 * @param options - `to`, the wanted unit; `of`, the solute; `density`, `temperature`, `basis`, `equivalents` with
 *   `reaction` for normality, `soluteDensity` for % v/v, `solvent`, `baume`
 * @returns the strength in the unit `to`: normality in mol/L of equivalents, °Bé and volumes as plain numbers
 * @throws {AmountError} `amount.ambiguous-percent`, `amount.unknown-strength`, `amount.missing-formula`,
 *   `amount.missing-density`, `amount.missing-equivalents`, `amount.no-density-table`, `amount.outside-range`,
 *   `amount.several-readings`, `amount.not-possible`, `amount.negative`, `amount.fraction-above-one`, `amount.too-long`
 * @throws {QuantityError} those of reading a quantity
 * @throws {FormulaError} those of `parseFormula`
 * @source IUPAC Green Book, 3rd ed. (2007), section 2.10 (section number from memory); densities: the table in the working
 * @category Solutions
 * @example
 * convertStrength("37.2 % w/w", { of: "HCl", to: "mol/L", density: "1.19 g/mL" }).format({ decimals: 1, uncertainty: "none" }) // => "12.1 mol/L"
 * convertStrength("5 % w/w", { of: "CH3COOH", to: "mol/L" }).format({ decimals: 2, uncertainty: "none" }) // => "0.84 mol/L"
 * convertStrength("6 N", { of: "H2SO4", to: "mol/L", equivalents: 2, reaction: "both protons" }).format({ decimals: 1 }) // => "3.0 mol/L"
 */
export function convertStrength(strength: StrengthLike, options: StrengthOptions & { readonly to: string }): Quantity {
  const given = readStrength(strength, options.basis);
  const { kind, unit } = kindOfUnit(options.to, options.to, options.basis);
  return along(new Ways(options), given, kind, unit);
}

function along(ways: Ways, given: Strength, kind: StrengthKind, unit: string): Quantity {
  if (given.kind === kind && !["normality", "degrees Baumé", "peroxide volumes"].includes(kind))
    return given.value.to(unit);
  if (isPerMass(given.kind)) {
    const w = ways.toMassFraction(given);
    if (isPerMass(kind)) return ways.fromMassFraction(w, kind, unit);
    return ways.fromPerVolume(ways.massConcentrationFromMass(w), kind, unit);
  }
  if (!isPerMass(kind)) return ways.fromPerVolume(given, kind, unit);
  return ways.fromMassFraction(ways.massFractionFromVolume(given), kind, unit);
}

/** @internal Mass fraction of a strength, whatever it was given as. */
export function massFractionOfStrength(strength: StrengthLike, options: StrengthOptions): Quantity {
  return along(new Ways(options), readStrength(strength, options.basis), "mass fraction", "% w/w");
}

/** @internal Concentration of a strength, whatever it was given as. */
export function concentrationOfStrength(strength: StrengthLike, options: StrengthOptions): Quantity {
  return along(new Ways(options), readStrength(strength, options.basis), "concentration", "mol/L");
}

/** @internal Density of a solution of a strength, given or looked up. */
export function densityOfStrength(strength: StrengthLike, options: StrengthOptions): Quantity {
  const ways = new Ways(options);
  if (options.density !== undefined) return densityFor(ways.formula, quantity("0"), options);
  return densityFor(ways.formula, massFractionOfStrength(strength, options), options);
}

/**
 * {@link convertStrength}, with the outcome as data.
 *
 * @category Solutions
 * @example
 * const outcome = tryConvertStrength("5 %", { of: "CH3COOH", to: "mol/L" });
 * outcome.ok ? "" : outcome.error.code // => "amount.ambiguous-percent"
 */
export const tryConvertStrength = (...args: Parameters<typeof convertStrength>): Result<Quantity> =>
  attempt(() => convertStrength(...args));

// The ways between strengths. Two families meet: per mass of solution (w, molality, mole fraction) and per volume (g/L,
// mol/L, % v/v, normality); a density joins them.

import { type Formula, molarMass } from "../formula";
import { cite } from "../foundation/bibliography";
import { attempt } from "../foundation/error";
import { type Quantity, quantity } from "../quantity";
import { formulaOfArgument, inSymbol, liquidDensity, oneOf, positive } from "./argument";
import { densityFor, massFractionFromDensity, massFractionFromMassConcentration } from "./density";
import { AmountError } from "./error";
import { molarVolumeOfGas } from "./gas";
import type { Strength, StrengthKind, StrengthOptions } from "./strength-kind";
import { densityOfWater } from "./water";

/** @internal */
export const missingEquivalents = (): AmountError =>
  new AmountError("amount.missing-equivalents", "a normality has no meaning without its reaction", {
    hint: 'give equivalents: 2 and reaction: "both protons of H2SO4 neutralised"',
  });

const SCALES = ["heavier than water", "lighter than water"] as const;

/** @internal The ways between strengths for one set of options; every intermediate result is named. */
export class Ways {
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
    if (equivalents === undefined) throw missingEquivalents();
    return positive(String(equivalents) as `${number}`, "number", "equivalents", {
      symbol: `z(${this.name})`,
      label: "equivalents in one mole",
      ...(reaction === undefined ? {} : { assumption: `equivalents counted for: ${reaction}` }),
    });
  }

  get soluteDensity(): Quantity {
    const { soluteDensity } = this.options;
    if (soluteDensity !== undefined) {
      return liquidDensity(soluteDensity, "solute density", {
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
    return { symbol: "°Bé", label: "degrees Baumé", source: `${cite("baumeScale")} (from memory)` };
  }

  private waterAtSixty(): Quantity {
    return densityOfWater("60 °F").named({ symbol: "ρ(H₂O, 60 °F)" });
  }

  fromBaume(value: Quantity): Quantity {
    const { light } = this;
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
        assumption: this.scaleWords,
      });
    if (this.formula === undefined) {
      throw new AmountError("amount.missing-formula", "a hydrometer reading needs the solute", {
        hint: 'give of: "HCl"',
      });
    }
    const read = attempt(() => massFractionFromDensity(this.formula!, rho, { temperature: "60 °F" }));
    if (read.ok) return read.value;
    const other = new Ways({ ...this.options, baume: SCALES[light ? 0 : 1] });
    if (this.options.baume !== undefined || !attempt(() => other.fromBaume(value)).ok) throw read.error;
    throw new AmountError("amount.outside-range", `no ${this.name} solution has ${value} °Bé on this scale`, {
      hint: `it has on the other: baume: "${SCALES[1]}"`,
      details: { quantity: "density", value: String(rho) },
    });
  }

  /** Is the hydrometer one for liquids lighter than water? */
  private get light(): boolean {
    return oneOf(this.options.baume ?? SCALES[0], SCALES, "Baumé scale") === SCALES[1];
  }

  private get scaleWords(): string {
    return `Baumé scale ${this.light ? SCALES[1] : SCALES[0]}, read at 60 °F (15.6 °C)`;
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
    const { light } = this;
    const degrees = light
      ? quantity("140").dividedBy(gravity).minus("130")
      : quantity("145").minus(quantity("145").dividedBy(gravity));
    return degrees.named({
      ...this.baumeWords(),
      rule: light ? "°Bé = 140 / relative density - 130" : "°Bé = 145 - 145 / relative density",
      assumption: this.scaleWords,
    });
  }

  given(value: Quantity, symbol: string, label: string): Quantity {
    return value.symbol === undefined ? value.named({ symbol: `${symbol}(${this.name})`, label }) : value;
  }
}

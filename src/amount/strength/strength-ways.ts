// The ways between strengths. Two families meet: per mass of solution (w, molality, mole fraction) and per volume (g/L,
// mol/L, % v/v, normality); a density joins them.

import { tryParseEquation } from "../../equation";
import { type Formula, molarMass } from "../../formula";
import { isWater, splitWater } from "../../formula/internal";
import { attempt, type Result } from "../../foundation/error";
import { ATMOSPHERE_TEXT } from "../../foundation/standards";
import { type Quantity, quantity } from "../../quantity";
import { formulaOfArgument, inSymbol, liquidDensity, positive } from "../argument";
import { cite } from "../data/sources";
import {
  densityFor,
  massFractionFromDensity,
  massFractionFromMassConcentration,
  onlyInWater,
} from "../density/density";
import { AmountError } from "../error";
import { molarVolumeOfGas } from "../gas/gas";
import { type ReactionLike, reactionOf } from "../jar/species";
import { equivalentsIn } from "../reaction/equivalents";
import { type BaumeScale, baumeOfDensity, densityOfBaume, scaleOf } from "./baume";
import type { Strength, StrengthKind, StrengthOptions } from "./strength-kind";

/** @internal */
export const missingEquivalents = (): AmountError =>
  new AmountError("amount.missing-equivalents", "a normality has no meaning without its reaction", {
    hint: 'give reaction: "H2SO4 + 2 NaOH -> Na2SO4 + 2 H2O", or equivalents: 2 with the reaction in words',
  });

/** A sign that stands in equations and hardly in words; a bare `=` counts where the text reads as an equation. */
const ARROW = /[-=–—−]>|<[-=]+>|[→⟶⇒⇌⇄↔]/;

/** Is the reaction given as an equation, or in words? */
const isEquation = (reaction: ReactionLike): boolean =>
  typeof reaction !== "string" || ARROW.test(reaction) || (reaction.includes("=") && tryParseEquation(reaction).ok);

/** @internal Can a normality be turned into moles? */
export const tellsEquivalents = ({ equivalents, reaction, of }: StrengthOptions): boolean =>
  equivalents !== undefined || (reaction !== undefined && of !== undefined && isEquation(reaction));

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

  private ownWater: Quantity | undefined;

  /**
   * Crystal water in one mole of the solute, undefined for none. In solution nothing tells it from the water that was
   * poured, so that molality and mole fraction count it as solvent; in another solvent it is neither.
   */
  private get crystalWater(): Quantity | undefined {
    if (this.formula === undefined || isWater(this.formula)) return undefined;
    const { dry, waters } = splitWater(this.formula);
    if (dry === undefined || waters.equals(0)) return undefined;
    this.ownWater ??= quantity(
      { value: waters, unit: "" },
      { symbol: "z", label: `crystal water in one mole of ${this.name}` },
    );
    return this.ownWater;
  }

  private get inWater(): boolean {
    const { solvent } = this.options;
    return solvent === undefined || isWater(formulaOfArgument(solvent));
  }

  /** Crystal water that counts as solvent, in moles for each mole of solute. */
  private get waterAsSolvent(): Quantity | undefined {
    return this.inWater ? this.crystalWater : undefined;
  }

  get equivalents(): Quantity {
    const { equivalents, reaction } = this.options;
    const naming = { symbol: `z(${this.name})`, label: "equivalents in one mole" };
    if (equivalents !== undefined) {
      return positive(String(equivalents) as `${number}`, "number", "equivalents", {
        ...naming,
        ...(reaction === undefined
          ? {}
          : {
              assumption: `equivalents counted for: ${typeof reaction === "string" ? reaction : reactionOf(reaction)}`,
            }),
      });
    }
    if (reaction === undefined || !isEquation(reaction)) throw missingEquivalents();
    if (this.formula === undefined) {
      throw new AmountError("amount.missing-formula", "the equation gives the equivalents of a reactant: which?", {
        hint: 'give of: "KMnO4"',
      });
    }
    const { perMole, counted, equation, assumptions } = equivalentsIn(reaction, this.formula);
    const words = {
      symbol: naming.symbol,
      label: `${naming.label}: ${counted}`,
      source: cite("goldBookEquivalent"),
      assumption: [`equivalents counted for: ${equation}`, ...assumptions].join("; "),
    };
    return perMole.d === 1n
      ? quantity(String(perMole.n), words)
      : quantity(String(perMole.n)).dividedBy(perMole.d).named(words);
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
    if (this.formula === undefined) throw missing();
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
        const z = this.waterAsSolvent;
        const solute = b.times(this.molarMass);
        if (z === undefined) {
          return this.named(solute.dividedBy(solute.plus("1")), "w", "mass fraction = b M / (1 + b M)", "% w/w");
        }
        const dry = b.times(this.molarMass.minus(z.times(this.solventMolarMass)));
        return this.solid(
          solute.dividedBy(dry.plus("1")),
          "mass fraction = b M / (1 + b (M - z M(H₂O))), the crystal water being solvent",
        );
      }
      case "mole fraction": {
        const x = this.given(value, "x", "mole fraction");
        const z = this.crystalWater;
        const solute = x.times(this.molarMass);
        if (z !== undefined) {
          const added = this.poured(quantity("1").minus(x).minus(x.times(z)));
          return this.solid(
            solute.dividedBy(solute.plus(added.times(this.solventMolarMass))),
            "mass fraction = x M / (x M + (1 - x - x z) M(solvent)), the crystal water being counted as water",
          );
        }
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
        const z = this.waterAsSolvent;
        if (z !== undefined) {
          const water = w.times(z).times(this.solventMolarMass).dividedBy(this.molarMass);
          return this.named(
            w.dividedBy(this.molarMass.times(quantity("1").minus(w).plus(water))),
            "b",
            "molality = w / (M (1 - w) + w z M(H₂O)), the crystal water being solvent",
            unit,
          );
        }
        const solvent = this.notPure(quantity("1").minus(w), "molality");
        return this.named(w.dividedBy(this.molarMass.times(solvent)), "b", "molality = w / (M (1 - w))", unit);
      }
      case "mole fraction": {
        const solute = w.dividedBy(this.molarMass);
        const solvent = quantity("1").minus(w).dividedBy(this.solventMolarMass);
        const z = this.crystalWater;
        if (z !== undefined) {
          return this.named(
            solute.dividedBy(solute.plus(solute.times(z)).plus(solvent)),
            "x",
            "mole fraction = (w / M) / ((1 + z) w / M + (1 - w) / M(solvent)), the crystal water being counted as water",
            unit,
          );
        }
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

  /** The mass fraction of a hydrate, refused beyond its own melt. */
  private solid(w: Quantity, rule: string): Quantity {
    if (w.compare("1") <= 0) return this.named(w, "w", rule, "% w/w");
    throw this.strongerThanMelt();
  }

  /** What was poured beside the crystal water. */
  private poured(share: Quantity): Quantity {
    if (share.isPositive() || share.isZero()) return share;
    throw this.strongerThanMelt();
  }

  private strongerThanMelt(): AmountError {
    return new AmountError(
      "amount.not-possible",
      `a solution of that strength contains less water than ${this.name} itself: no mass fraction of ${this.name} says it`,
      { hint: "name the salt without its water as of" },
    );
  }

  private notPure(rest: Quantity, what: string): Quantity {
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
        throw new AmountError("amount.not-possible", `${gamma} is more than the pure liquid contains`);
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
    return molarVolumeOfGas({ temperature: "0 °C", pressure: ATMOSPHERE_TEXT });
  }

  /** Per volume to per mass: by the given density, or solved on the table. */
  massFractionFromVolume(strength: Strength): Quantity {
    const gamma = this.toMassConcentration(strength);
    const { density, temperature, solvent } = this.options;
    if (density === undefined && this.formula !== undefined) {
      onlyInWater(solvent);
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

  fromBaume(degrees: Quantity): Quantity {
    const { formula, name } = this;
    if (formula === undefined) {
      throw new AmountError("amount.missing-formula", "a hydrometer reading needs the solute", {
        hint: 'give of: "HCl"',
      });
    }
    const read = (scale: BaumeScale): Result<Quantity> =>
      attempt(() => massFractionFromDensity(formula, densityOfBaume(degrees, scale, name), { temperature: "60 °F" }));
    const { baume, solvent } = this.options;
    onlyInWater(solvent);
    const outcome = read(scaleOf(baume));
    if (outcome.ok) return outcome.value;
    if (baume !== undefined || !read("lighter than water").ok) throw outcome.error;
    throw new AmountError(
      "amount.outside-range",
      `no ${name} solution has ${degrees} °Bé on the scale for heavy liquids`,
      {
        hint: 'it has on the other: baume: "lighter than water"',
        details: { quantity: "degrees Baumé", value: String(degrees) },
      },
    );
  }

  toBaume(w: Quantity): Quantity {
    const rho = densityFor(this.formula, w, { ...this.options, temperature: "60 °F" });
    return baumeOfDensity(rho, scaleOf(this.options.baume));
  }

  given(value: Quantity, symbol: string, label: string): Quantity {
    return value.symbol === undefined ? value.named({ symbol: `${symbol}(${this.name})`, label }) : value;
  }
}

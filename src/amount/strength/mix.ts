// Mixing solutions, and aiming between two strengths. Masses add up; volumes are not taken to add up where densities are
// known, and otherwise only when the request gives it.

import { molarMass } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { type Quantity, sum } from "../../quantity";
import { type DensityLike, grouped, guard, listed } from "../argument";
import { densityFor } from "../density/density";
import { AmountError } from "../error";
import { bothWays, contentOf, type PortionLike, portionOf, sameCount, soluteOf } from "../jar/portion";
import { massFractionOfStrength } from "./strength";
import { DETAILS, STRENGTH, type StrengthLike, type StrengthOptions } from "./strength-kind";

const MIXTURE_PART = { strength: true, portion: true, density: true } as const satisfies Fields<MixturePart>;

const MIXTURE = { ...STRENGTH, additiveVolumes: true, facts: true } as const satisfies Fields<
  NonNullable<Parameters<typeof mixSolutions>[1]>
>;

const MIXTURE_AIM = {
  strong: true,
  weak: true,
  wanted: true,
  mass: true,
  of: true,
  ...DETAILS,
  facts: true,
} as const satisfies Fields<MixToStrengthRequest>;

/** One solution that goes into a mixture. */
export interface MixturePart {
  /** Its strength; water is `"0 % w/w"`. */
  readonly strength: StrengthLike;
  /** How much of it, as volume or mass. */
  readonly portion: PortionLike;
  /** Its density; looked up for `of` where it is not given. */
  readonly density?: DensityLike | undefined;
}

/** A mixture worked out. */
export interface Mixture {
  /** Mass fraction of the solute in the mixture; undefined where only volumes were known. */
  readonly massFraction: Quantity<"number"> | undefined;
  /** Sum of the masses of the parts; undefined where only volumes were known. */
  readonly mass: Quantity<"mass"> | undefined;
  /** Volume and concentration of the mixture, where its density is known or volumes were taken to add up. */
  readonly volume: Quantity<"volume"> | undefined;
  /** mol/L where the solute is known, else g/L; undefined together with the volume. */
  readonly concentration: Quantity<"concentration" | "density"> | undefined;
}

/**
 * Mix two or more solutions of one solute.
 *
 * Masses add up exactly. The volume comes from the density of the mixture. Where densities are neither tabulated nor
 * given, volumes may be taken to add up only when the caller says so, and the result then says so too.
 *
 * @param parts - each with its strength and how much; water is `{ strength: "0 % w/w", portion }`
 * @param options - `of`, the solute; `density` of the mixture; `additiveVolumes: true` to allow that assumption
 * @returns mass fraction, mass, volume and concentration of the mixture, each where it can be known
 * @throws {AmountError} `amount.missing-input` for fewer than two parts, `amount.missing-density`,
 *   `amount.no-density-table`, and those of {@link convertStrength}
 * @source conservation of mass
 * @category Solutions
 * @example
 * const half = mixSolutions([{ strength: "96 % w/w", portion: "100 g" }, { strength: "0 % w/w", portion: "100 g" }], { of: "H2SO4" });
 * half.massFraction!.format({ decimals: 1 }) // => "48.0 % w/w"
 * half.volume!.format({ decimals: 0, uncertainty: "none" }) // => "145 mL"
 */
export function mixSolutions(
  parts: readonly MixturePart[],
  options: LookupOptions & StrengthOptions & { readonly additiveVolumes?: boolean | undefined } = {},
): Mixture {
  if (bringsFacts(options)) return withItsFacts(options, guard, (others) => mixSolutions(parts, others));
  if (listed(parts, "parts").length < 2)
    throw new AmountError("amount.missing-input", "a mixture needs two solutions or more");
  const { additiveVolumes = false, ...shared } = grouped(options, MIXTURE);
  const portions = parts.map((part, i) =>
    portionOf(grouped(part, MIXTURE_PART, `parts[${i}]`).portion, `portion ${i + 1}`, String(i + 1)),
  );
  const of = (i: number): StrengthOptions => ({ ...shared, density: parts[i]!.density });
  const masses = portions.map((portion, i) => bothWays(portion, parts[i]!.strength, of(i), String(i + 1)).mass);
  if (masses.every((m) => m !== undefined)) {
    const known = masses as Quantity[];
    const fractions = parts.map(({ strength }, i) =>
      massFractionOfStrength(strength, of(i)).named({
        symbol: `w${i + 1}`,
        label: `mass fraction of solution ${i + 1}`,
      }),
    );
    const mass = sum(known, { symbol: "m(mixture)", rule: "masses add up" });
    const solute = sum(
      fractions.map((w, i) => w.times(known[i]!)),
      { symbol: "m(solute)", rule: "solute adds up" },
    );
    const w = solute.dividedBy(mass).to("% w/w").named({ symbol: "w(mixture)", rule: "mass fraction = solute / mass" });
    const rho = attempt(() => densityFor(soluteOf(shared.of), w, shared));
    if (!rho.ok) return readable({ massFraction: w, mass, volume: undefined, concentration: undefined });
    const volume = mass
      .dividedBy(rho.value)
      .to("mL")
      .named({ symbol: "V(mixture)", rule: "volume = mass / density of the mixture" });
    return readable({ massFraction: w, mass, volume, concentration: perVolume(solute, volume, shared) });
  }
  if (!additiveVolumes || portions.some((p) => p.dimension !== "volume")) {
    throw new AmountError("amount.missing-density", "without densities it is not known what volume the mixture has", {
      hint: "name the solute as of, give a density for each part, or allow additiveVolumes: true",
    });
  }
  const contents = parts.map(({ strength }, i) => contentOf(strength, "volume", of(i), true));
  const like = contents.find(({ counts }) => counts === "mass") ?? contents[0]!;
  const held = contents.map((c, i) => sameCount(c, like, shared).a.times(portions[i]!));
  const volume = sum(portions, {
    symbol: "V(mixture)",
    rule: "volumes taken to add up",
    assumption: "volumes add up on mixing, which is near the truth for dilute solutions only",
  });
  const solute = sum(held);
  const concentration =
    like.counts === "mass"
      ? perVolume(solute, volume, shared)
      : solute
          .dividedBy(volume)
          .to("mol/L")
          .named({
            symbol: `${like.counts === "equivalents" ? "N" : "c"}(mixture)`,
            rule: "strength = solute / volume",
          });
  return readable({ massFraction: undefined, mass: undefined, volume, concentration });
}

function perVolume(solute: Quantity, volume: Quantity, options: StrengthOptions): Quantity {
  const formula = soluteOf(options.of);
  if (formula === undefined)
    return solute
      .dividedBy(volume)
      .to("g/L")
      .named({ symbol: "γ(mixture)", rule: "mass concentration = solute / volume" });
  return solute
    .dividedBy(molarMass(formula).times(volume))
    .to("mol/L")
    .named({ symbol: "c(mixture)", rule: "concentration = solute / (molar mass × volume)" });
}

/** What a mixture of two strengths shall be. */
export interface MixToStrengthRequest extends Omit<StrengthOptions, "density">, LookupOptions {
  /** Strength of the stronger solution. */
  readonly strong: StrengthLike;
  /** Strength of the weaker one; water is `"0 % w/w"`. */
  readonly weak: StrengthLike;
  /** Strength of the mixture, between the two. */
  readonly wanted: StrengthLike;
  /** How much in all, as mass or volume. */
  readonly mass: PortionLike;
}

/** How much of two solutions goes together. */
export interface TwoParts {
  /** Mass of the stronger, and of the weaker. */
  readonly strong: Quantity<"mass">;
  /** Mass of the weaker. */
  readonly weak: Quantity<"mass">;
  /** Volume of each, where its density is tabulated. */
  readonly volumeOfStrong: Quantity<"volume"> | undefined;
  /** Volume of the weaker; undefined where its density is not known. */
  readonly volumeOfWeak: Quantity<"volume"> | undefined;
}

/**
 * How much of a stronger and a weaker solution (or water) make a wanted amount of a strength between them.
 *
 * @param aim - `strong` and `weak` (water is `"0 % w/w"`), the `wanted` strength, `mass` of mixture in all (or its volume,
 *   where the density of the wanted strength is tabulated), and `of` the solute where a strength is not given as % w/w
 * @returns mass of each, and the volume of each where its density is tabulated; the two volumes do not add up to that of
 *   the mixture
 * @throws {AmountError} `amount.not-possible` when the wanted strength is not between the two, and those of
 *   {@link convertStrength}
 * @source conservation of mass: m1/m2 = (w - w2)/(w1 - w)
 * @category Solutions
 * @example
 * mixToStrength({ strong: "68.0 % w/w", weak: "0 % w/w", wanted: "10.0 % w/w", mass: "400.0 g" }).strong.format({ decimals: 1 }) // => "58.8 g"
 * mixToStrength({ of: "HCl", strong: "36 % w/w", weak: "0 % w/w", wanted: "10 % w/w", mass: "1 L" }).volumeOfStrong!.format({ decimals: 0, uncertainty: "none" }) // => "247 mL"
 */
export function mixToStrength(aim: MixToStrengthRequest): TwoParts {
  if (bringsFacts(aim)) return withItsFacts(aim, guard, mixToStrength);
  const { strong, weak, wanted, mass, ...options } = grouped(aim, MIXTURE_AIM, "request");
  const total = bothWays(portionOf(mass, "mixture", "mixture"), wanted, options, "mixture").mass;
  if (total === undefined) {
    throw new AmountError(
      "amount.missing-density",
      "the mixture is calculated by mass, and its density is not tabulated",
      {
        hint: "give mass in g, or the solute as of where its densities are tabulated",
      },
    );
  }
  const [w1, w2, w] = [strong, weak, wanted].map((s, i) =>
    massFractionOfStrength(s, options).named({ symbol: ["w1", "w2", "w"][i] }),
  ) as [Quantity, Quantity, Quantity];
  if (w1.compare(w2) <= 0 || w.compare(w1) > 0 || w.compare(w2) < 0) {
    throw new AmountError("amount.not-possible", `${w} does not lie between ${w2} and ${w1}`, {
      hint:
        w1.compare(w2) < 0 ? "strong and weak are the wrong way round: swap them" : "mixing goes between the two only",
      details: { wanted: String(w), strong: String(w1), weak: String(w2) },
    });
  }
  const m1 = total
    .times(w.minus(w2))
    .dividedBy(w1.minus(w2))
    .named({ symbol: "m1", rule: "mass of the stronger = mass × (w - w2) / (w1 - w2)" });
  const m2 = total.minus(m1).named({ symbol: "m2", rule: "mass of the weaker = mass - m1" });
  const volume = (m: Quantity, strength: StrengthLike, symbol: string): Quantity | undefined =>
    m.isPositive() ? bothWays(m, strength, options, symbol).volume : undefined;
  return readable({
    strong: m1,
    weak: m2,
    volumeOfStrong: volume(m1, strong, "1"),
    volumeOfWeak: volume(m2, weak, "2"),
  });
}

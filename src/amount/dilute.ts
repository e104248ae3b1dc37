// Diluting, mixing and aiming between two strengths. Masses add up; volumes are not taken to add up where densities are known.

import { molarMass } from "../formula";
import { attempt, type Result } from "../foundation/error";
import { type Quantity, sum } from "../quantity";
import type { DensityLike } from "./argument";
import { densityFor } from "./density";
import { AmountError } from "./error";
import { bothWays, type Content, contentOf, naturalPortion, type PortionLike, portionOf, soluteOf } from "./portion";
import { massFractionOfStrength, type StrengthLike, type StrengthOptions } from "./strength";

/** Three of `take`, `to`, `makeUpTo` and `from`; the fourth is the answer. */
export interface Dilution extends Omit<StrengthOptions, "density"> {
  /** Strength of the stock. */
  readonly from?: StrengthLike | undefined;
  /** How much stock, as volume or mass. */
  readonly take?: PortionLike | undefined;
  /** Strength wanted. */
  readonly to?: StrengthLike | undefined;
  /** How much in all, as volume or mass. */
  readonly makeUpTo?: PortionLike | undefined;
  /** Density of the stock; looked up for `of` where it is not given. */
  readonly fromDensity?: DensityLike | undefined;
  /** Density of the diluted solution; looked up for `of` where it is not given. */
  readonly toDensity?: DensityLike | undefined;
}

/** A dilution worked out. */
export interface DilutionPlan {
  /** The one of the four that was asked for. */
  readonly answer: Quantity;
  readonly asked: "from" | "take" | "to" | "makeUpTo";
  readonly from: Quantity;
  readonly take: Quantity;
  readonly to: Quantity;
  readonly makeUpTo: Quantity;
  /** Mass of water to add, where both masses can be known; volumes are not subtracted. */
  readonly water: Quantity | undefined;
}

/** Grams for moles and back, when the two sides count differently. */
function sameCount(a: Content, b: Content, options: StrengthOptions): { a: Quantity; b: Quantity } {
  if (a.counts === b.counts) return { a: a.content, b: b.content };
  const formula = soluteOf(options.of);
  if (formula === undefined) {
    throw new AmountError(
      "amount.missing-formula",
      "one strength counts moles and the other grams: the solute is needed",
      {
        hint: 'give of: "HCl"',
      },
    );
  }
  const M = molarMass(formula);
  const grams = (c: Content): Quantity => (c.counts === "mass" ? c.content : c.content.times(M));
  return { a: grams(a), b: grams(b) };
}

const kindOf = (portion: Quantity): "mass" | "volume" => (portion.dimension === "mass" ? "mass" : "volume");

/**
 * Work out a dilution: of the strength and quantity of the stock and of the diluted solution, give three.
 *
 * Quantities may be volumes or masses. A strength per mass over a volume (or the reverse) needs the density, which is
 * looked up for `of` or given. "Make up to" means to that volume in all, not that volume of water.
 *
 * @param dilution - three of `from`, `take`, `to`, `makeUpTo`; `of` and densities where they are needed
 * @returns all four, which one was asked for, and the mass of water to add where the densities are known
 * @throws {AmountError} `amount.missing-input`, `amount.too-many-inputs`, `amount.not-possible` (stronger than the stock),
 *   `amount.missing-formula`, `amount.missing-density`, and those of {@link convertStrength}
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source conservation of solute: c1 V1 = c2 V2, w1 m1 = w2 m2
 * @category Solutions
 * @example
 * dilute({ from: "5.00 mol/L", take: "0.850 L", makeUpTo: "1.80 L" }).answer.format({ decimals: 2 }) // => "2.36 mol/L"
 * dilute({ of: "HCl", from: "37 % w/w", to: "1 mol/L", makeUpTo: "500 mL" }).answer.format({ decimals: 1, uncertainty: "none" }) // => "41.6 mL"
 */
export function dilute(dilution: Dilution): DilutionPlan {
  const { from, take, to, makeUpTo, fromDensity, toDensity, ...options } = dilution;
  const missing = (["from", "take", "to", "makeUpTo"] as const).filter((key) => dilution[key] === undefined);
  const asked = missing[0];
  if (asked === undefined) {
    throw new AmountError("amount.too-many-inputs", "all four of a dilution are given: there is nothing left to ask", {
      hint: "leave out the one you want to know",
    });
  }
  if (missing.length > 1) {
    throw new AmountError("amount.missing-input", `a dilution needs three of four; missing: ${missing.join(", ")}`, {
      details: { missing },
    });
  }
  const stock = { ...options, density: fromDensity };
  const thin = { ...options, density: toDensity };
  const solve = (): Omit<DilutionPlan, "water" | "answer" | "asked"> => {
    const V1 = take === undefined ? undefined : portionOf(take, "stock taken", "stock");
    const V2 = makeUpTo === undefined ? undefined : portionOf(makeUpTo, "diluted solution", "diluted");
    if (V1 !== undefined && V2 !== undefined) {
      if (V1.dimension === V2.dimension && V2.compare(V1) < 0) {
        throw new AmountError("amount.not-possible", `${V1} of stock cannot be made up to ${V2}`);
      }
      const known = (from ?? to)!;
      const forward = from !== undefined;
      const [own, other] = forward ? [V1, V2] : [V2, V1];
      const content = contentOf(known, kindOf(own), forward ? stock : thin).content;
      const found = strengthFrom(content.times(own).dividedBy(other), content, forward, options);
      return forward
        ? { from: content, take: V1, to: found, makeUpTo: V2 }
        : { from: found, take: V1, to: content, makeUpTo: V2 };
    }
    const natural = (s: StrengthLike): "mass" | "volume" => naturalPortion(s, options);
    if (V1 !== undefined) {
      const side = natural(to!) === "mass" && kindOf(V1) === "mass" ? "mass" : kindOf(V1);
      const c = sameCount(contentOf(from!, kindOf(V1), stock), contentOf(to!, side, thin), options);
      weakerThan(c.b, c.a, side === kindOf(V1));
      const whole = V1.times(c.a).dividedBy(c.b).to(V1.unit);
      return { from: c.a, take: V1, to: c.b, makeUpTo: named(whole, "diluted", "from × take / to") };
    }
    const side = kindOf(V2!);
    const c = sameCount(contentOf(from!, side, stock), contentOf(to!, side, thin), options);
    weakerThan(c.b, c.a, true);
    const portion = V2!.times(c.b).dividedBy(c.a).to(V2!.unit);
    return { from: c.a, take: named(portion, "stock", "to × make up to / from"), to: c.b, makeUpTo: V2! };
  };
  const plan = solve();
  return {
    ...plan,
    asked,
    answer: plan[asked],
    water: waterToAdd(plan, from ?? plan.from, to ?? plan.to, stock, thin),
  };
}

const named = (portion: Quantity, symbol: string, words: string): Quantity =>
  portion.named({
    symbol: `${kindOf(portion) === "mass" ? "m" : "V"}(${symbol})`,
    rule: `solute is conserved: ${words}`,
  });

/** Solute over portion, in the unit its parts suggest. */
function strengthFrom(raw: Quantity, like: Quantity, forward: boolean, options: StrengthOptions): Quantity {
  const rule = `solute is conserved: ${forward ? "from × take / make up to" : "to × make up to / take"}`;
  const name = options.of === undefined ? "" : `(${soluteOf(options.of)})`;
  const as = (q: Quantity, symbol: string, unit: string): Quantity =>
    q.to(unit).named({ symbol: `${symbol}${forward ? 2 : 1}${name}`, rule });
  switch (raw.dimension) {
    case "concentration":
      return as(raw, "c", like.dimension === "concentration" ? like.unit : "mol/L");
    case "density":
      return as(raw, "γ", like.dimension === "density" ? like.unit : "g/L");
    case "molality": // moles in a mass of solution are no molality: turn them into a mass fraction
      return possible(as(raw.times(molarMass(options.of ?? missingSolute())), "w", "% w/w"));
    default:
      return possible(as(raw, "w", "% w/w"));
  }
}

function possible(w: Quantity): Quantity {
  if (w.compare("1") <= 0) return w;
  throw new AmountError("amount.not-possible", `a mass fraction of ${w} is more than the whole`);
}

function missingSolute(): never {
  throw new AmountError("amount.missing-formula", "moles in a mass of solution need the solute", {
    hint: 'give of: "HCl"',
  });
}

function weakerThan(to: Quantity, from: Quantity, comparable: boolean): void {
  if (!from.isPositive() || !to.isPositive()) {
    throw new AmountError("amount.not-positive", "a dilution needs strengths above zero");
  }
  if (!comparable || to.compare(from) <= 0) return;
  throw new AmountError(
    "amount.not-possible",
    `water cannot make ${from} into ${to}: the wanted strength is the higher one`,
    {
      details: { from: String(from), to: String(to) },
    },
  );
}

/** Mass of water between the two portions, undefined where a density is not known. */
function waterToAdd(
  plan: Omit<DilutionPlan, "water" | "answer" | "asked">,
  from: StrengthLike,
  to: StrengthLike,
  stock: StrengthOptions,
  thin: StrengthOptions,
): Quantity | undefined {
  if (stock.of === undefined && (stock.density === undefined || thin.density === undefined)) {
    if (kindOf(plan.take) !== "mass" || kindOf(plan.makeUpTo) !== "mass") return undefined;
  }
  const before = bothWays(plan.take, from, stock, "stock").mass;
  const after = bothWays(plan.makeUpTo, to, thin, "diluted").mass;
  if (before === undefined || after === undefined) return undefined;
  return after.minus(before).to("g").named({
    symbol: "m(water to add)",
    rule: "water to add = mass of the diluted solution - mass of the stock",
  });
}

/** One solution that goes into a mixture. */
export interface MixturePart {
  readonly strength: StrengthLike;
  /** How much of it, as volume or mass. */
  readonly portion: PortionLike;
  /** Its density; looked up for `of` where it is not given. */
  readonly density?: DensityLike | undefined;
}

/** A mixture worked out. */
export interface Mixture {
  /** Mass fraction of the solute in the mixture; undefined where only volumes were known. */
  readonly massFraction: Quantity | undefined;
  readonly mass: Quantity | undefined;
  /** Volume and concentration of the mixture, where its density is known or volumes were taken to add up. */
  readonly volume: Quantity | undefined;
  readonly concentration: Quantity | undefined;
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
  options: StrengthOptions & { readonly additiveVolumes?: boolean | undefined } = {},
): Mixture {
  if (parts.length < 2) throw new AmountError("amount.missing-input", "a mixture needs two solutions or more");
  const { additiveVolumes = false, ...shared } = options;
  const portions = parts.map(({ portion }, i) => portionOf(portion, `portion ${i + 1}`, String(i + 1)));
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
    if (!rho.ok) return { massFraction: w, mass, volume: undefined, concentration: undefined };
    const volume = mass
      .dividedBy(rho.value)
      .to("mL")
      .named({ symbol: "V(mixture)", rule: "volume = mass / density of the mixture" });
    return { massFraction: w, mass, volume, concentration: perVolume(solute, volume, shared) };
  }
  if (!additiveVolumes || portions.some((p) => p.dimension !== "volume")) {
    throw new AmountError("amount.missing-density", "without densities it is not known what volume the mixture has", {
      hint: "name the solute as of, give a density for each part, or allow additiveVolumes: true",
    });
  }
  const contents = parts.map(({ strength }, i) => contentOf(strength, "volume", of(i)));
  const first = contents[0]!;
  const held = contents.map((c, i) => sameCount(c, first, shared).a.times(portions[i]!));
  const volume = sum(portions, {
    symbol: "V(mixture)",
    rule: "volumes taken to add up",
    assumption: "volumes add up on mixing, which is near the truth for dilute solutions only",
  });
  const concentration = sum(held)
    .dividedBy(volume)
    .to(first.counts === "amount" ? "mol/L" : "g/L")
    .named({ symbol: "c(mixture)", rule: "strength = solute / volume" });
  return { massFraction: undefined, mass: undefined, volume, concentration };
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

/**
 * How much of a stronger and a weaker solution (or water) make a wanted amount of a strength between them.
 *
 * @param aim - `strong` and `weak` (water is `"0 % w/w"`), the `wanted` strength, `mass` of mixture in all, and `of` the
 *   solute where a strength is not given as % w/w
 * @returns mass of each
 * @throws {AmountError} `amount.not-possible` when the wanted strength is not between the two, and those of
 *   {@link convertStrength}
 * @source conservation of mass: m1/m2 = (w - w2)/(w1 - w)
 * @category Solutions
 * @example
 * mixToStrength({ strong: "68.0 % w/w", weak: "0 % w/w", wanted: "10.0 % w/w", mass: "400.0 g" }).strong.format({ decimals: 1 }) // => "58.8 g"
 */
export function mixToStrength(
  aim: Omit<StrengthOptions, "density"> & {
    readonly strong: StrengthLike;
    readonly weak: StrengthLike;
    readonly wanted: StrengthLike;
    readonly mass: PortionLike;
  },
): { readonly strong: Quantity; readonly weak: Quantity } {
  const { strong, weak, wanted, mass, ...options } = aim;
  const total = portionOf(mass, "mass of mixture", "mixture");
  if (total.dimension !== "mass") {
    throw new AmountError("amount.missing-input", "the mixture is reckoned by mass: give mass in g");
  }
  const [w1, w2, w] = [strong, weak, wanted].map((s, i) =>
    massFractionOfStrength(s, options).named({ symbol: ["w1", "w2", "w"][i] }),
  ) as [Quantity, Quantity, Quantity];
  if (w1.compare(w2) <= 0 || w.compare(w1) > 0 || w.compare(w2) < 0) {
    throw new AmountError("amount.not-possible", `${w} does not lie between ${w2} and ${w1}`, {
      details: { wanted: String(w), strong: String(w1), weak: String(w2) },
    });
  }
  const m1 = total
    .times(w.minus(w2))
    .dividedBy(w1.minus(w2))
    .named({ symbol: "m1", rule: "mass of the stronger = mass × (w - w2) / (w1 - w2)" });
  return { strong: m1, weak: total.minus(m1).named({ symbol: "m2", rule: "mass of the weaker = mass - m1" }) };
}

/**
 * {@link dilute}, with the outcome as data.
 *
 * @category Solutions
 * @example
 * const outcome = tryDilute({ from: "1 mol/L", to: "2 mol/L", makeUpTo: "1 L" });
 * outcome.ok ? "" : outcome.error.code // => "amount.not-possible"
 */
export const tryDilute = (dilution: Dilution): Result<DilutionPlan> => attempt(() => dilute(dilution));

/**
 * {@link mixSolutions}, with the outcome as data.
 *
 * @category Solutions
 * @example
 * tryMixSolutions([]).ok // => false
 */
export const tryMixSolutions = (...args: Parameters<typeof mixSolutions>): Result<Mixture> =>
  attempt(() => mixSolutions(...args));

/**
 * {@link mixToStrength}, with the outcome as data.
 *
 * @category Solutions
 * @example
 * tryMixToStrength({ strong: "10 % w/w", weak: "5 % w/w", wanted: "20 % w/w", mass: "100 g" }).ok // => false
 */
export const tryMixToStrength = (
  aim: Parameters<typeof mixToStrength>[0],
): Result<{ readonly strong: Quantity; readonly weak: Quantity }> => attempt(() => mixToStrength(aim));

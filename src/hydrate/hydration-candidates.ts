import { type Formula, molarMass, oxideEquivalents, parseFormula } from "../formula";
import { numberText } from "../formula/internal";
import { Fraction } from "../foundation/fraction";
import { withPlainJSON } from "../foundation/plain-json";
import { type Quantity, sum } from "../quantity";
import { hydrateOf, MOST_WATERS, waterContent } from "./crystal-water";
import { HydrateError } from "./error";
import { type HydrateForm, knownHydrates } from "./forms";

/** A number of waters that the measurement could mean. */
export interface HydrationCandidate {
  /** With this number of waters. */
  readonly formula: Formula;
  /** For each anhydrous formula unit. */
  readonly waters: Fraction;
  /** Measured number of waters less this one. */
  readonly deviation: number;
  /** The deviation in standard uncertainties of the measurement; undefined when the weighings carry none. */
  readonly inUncertainties: number | undefined;
  /** Does the measurement allow it? Within two standard uncertainties, or within half a water when none is known. */
  readonly fits: boolean;
  /** Is it a form the table of hydrates knows? */
  readonly known: boolean;
  /** Where that form is listed; undefined for a number that is only arithmetic. */
  readonly source: string | undefined;
  /** Loss of this form on heating to `residue`. */
  readonly expectedLoss: Quantity<"number">;
  /** What was left, if this is the one: the anhydrous salt, or the oxides it goes to on ignition. */
  readonly residue: Formula;
  /** Why a number of waters is not to be believed, in words; undefined for one that is. */
  readonly improbable: string | undefined;
}

/** A number of waters as a plain number, refused where no salt holds so many. */
export function plausible(waters: Quantity, salt: Formula, hint: string): number {
  const x = waters.toNumber("");
  if (x <= MOST_WATERS) return x;
  throw new HydrateError(
    "hydrate.water-count",
    `${waters.format({ significant: 3 })} waters for each ${salt}: no salt contains so many`,
    { hint, details: { waters: String(waters) } },
  );
}

/** More waters than this in a salt without a known form that holds as many are not believed. */
const MOST_BELIEVED = 12;

/** Why no salt is taken to hold so many waters. */
function improbableWaters(n: Fraction, salt: Formula, known: readonly HydrateForm[]): string | undefined {
  const most = known.at(-1)?.waters;
  if (n.valueOf() <= (most?.valueOf() ?? MOST_BELIEVED)) return undefined;
  return most === undefined
    ? `hydrates of more than ${MOST_BELIEVED} waters are rare, and none of ${salt} is listed`
    : `no form of ${salt} with more than ${most.toFraction()} waters is listed`;
}

/** The candidates around a number of waters, nearest first. */
export function candidatesFor(salt: Formula, waters: Quantity, weighed: boolean, left: Residue): HydrationCandidate[] {
  const x = plausible(waters, salt, "check the weighings: most of what was weighed went away on heating");
  // Without an uncertainty of the weighings only the atomic weights speak, and they say nothing about the balance.
  const u = weighed ? waters.standardUncertainty?.toNumber() : undefined;
  const known = knownHydrates(salt);
  const near = new Map<string, Fraction>();
  const low = Math.max(0, Math.floor(x) - 1);
  for (let n = low; n <= Math.ceil(x) + 1; n++) near.set(String(n), new Fraction(BigInt(n)));
  for (const { waters: n } of known) if (Math.abs(n.valueOf() - x) <= 1) near.set(n.toFraction(), n);
  const candidates = [...near.values()].map((n): HydrationCandidate => {
    const deviation = x - n.valueOf();
    const inUncertainties = u === undefined || u === 0 ? undefined : deviation / u;
    const formula = hydrateOf(salt, n);
    const form = known.find((k) => k.waters.equals(n));
    return withPlainJSON({
      formula,
      waters: n,
      deviation,
      inUncertainties,
      fits: inUncertainties === undefined ? Math.abs(deviation) <= 0.5 : Math.abs(inUncertainties) <= 2,
      known: form !== undefined,
      source: form?.source,
      expectedLoss: left.mass === undefined ? waterContent(formula) : lossTo(left.mass, salt, n),
      residue: left.formula,
      improbable: improbableWaters(n, salt, known),
    });
  });
  return candidates.sort(
    (a, b) =>
      Number(a.improbable !== undefined) - Number(b.improbable !== undefined) ||
      Math.abs(a.deviation) - Math.abs(b.deviation),
  );
}

/** What is left of one formula unit of the salt: itself, or oxides of this mass for each mole. */
interface Residue {
  readonly formula: Formula;
  readonly mass?: Quantity;
}

/** Loss of a hydrate on heating to a residue of `mass` for each mole of salt. */
function lossTo(mass: Quantity, salt: Formula, n: Fraction): Quantity<"number"> {
  const whole = molarMass(salt).plus(molarMass("H2O").times(n));
  return whole.minus(mass).dividedBy(whole).to("% w/w") as Quantity<"number">;
}

/** Elements that leave as gas on ignition, as oxides or with hydrogen. */
const LEAVES = new Set(["H", "C", "N", "O", "F", "Cl", "Br", "I", "S", "Se"]);
/** Metals whose salts do not go to the oxide over a burner; calcium only from carbonate, oxalate and the like. */
const STAYS = new Set(["Li", "Na", "K", "Rb", "Cs", "Sr", "Ba"]);
/** Oxides that ignition in air leaves, where the usual one is another (common practice of gravimetry). */
const IGNITED = ["Mn3O4", "Co3O4"];

/** What is left of a salt that is ignited to the oxides of its metals; undefined where it does not go to them. */
function oxidesOf(salt: Formula): Required<Residue> | undefined {
  const metals = salt.symbols.filter((symbol) => !LEAVES.has(symbol));
  if (metals.length === 0 || metals.some((m) => STAYS.has(m) || (m === "Ca" && !salt.symbols.includes("C")))) {
    return undefined;
  }
  const left = oxideEquivalents(salt, { oxides: IGNITED }).filter(({ oxide }) =>
    oxide.symbols.some((symbol) => metals.includes(symbol)),
  );
  if (left.length !== metals.length) return undefined;
  const mass = sum(left.map(({ oxide, amount }) => molarMass(oxide).times(amount)));
  const common = left.map(({ amount }) => amount).reduce((a, b) => a.gcd(b));
  const text = left.map(({ oxide, amount }) => `${numberText(amount.div(common))}${oxide}`).join("·");
  return { formula: parseFormula(text), mass };
}

/** Without an uncertainty, how near a whole number a reading by way of the oxide has to come. */
const NEAR_FOR_OXIDES = 0.1;

/** Forms that fit if the salt went on to its oxides. */
export function ignited(salt: Formula, share: Quantity, weighed: boolean): HydrationCandidate[] {
  const oxides = oxidesOf(salt);
  if (oxides === undefined) return [];
  const waters = oxides.mass.dividedBy(share).minus(molarMass(salt)).dividedBy(molarMass("H2O"));
  const x = waters.toNumber("");
  if (x < -NEAR_FOR_OXIDES || x > MOST_WATERS) return [];
  const believed = candidatesFor(salt, waters, weighed, oxides).filter((c) => c.fits && c.improbable === undefined);
  return believed.filter((c) => c.inUncertainties !== undefined || Math.abs(c.deviation) <= NEAR_FOR_OXIDES);
}

/** All candidates, and what to doubt in them. */
export function judged(
  salt: Formula,
  dried: readonly HydrationCandidate[],
  oxides: readonly HydrationCandidate[],
): { readonly candidates: readonly HydrationCandidate[]; readonly warnings: readonly string[] } {
  const [first] = dried;
  const [other] = oxides;
  if (other !== undefined && first!.improbable !== undefined) {
    return {
      candidates: [...oxides, ...dried],
      warnings: [
        `${first!.formula} dried to ${salt} is improbable: ${first!.improbable}; ${other.formula} ignited to ` +
          `${other.residue} fits`,
      ],
    };
  }
  const warnings = first!.improbable === undefined ? [] : [`${first!.formula} is improbable: ${first!.improbable}`];
  if (other !== undefined && !first!.known) {
    warnings.push(`${first!.formula} is not listed; ${other.formula} ignited to ${other.residue} fits as well`);
    return { candidates: [...dried, ...oxides], warnings };
  }
  return { candidates: dried, warnings };
}

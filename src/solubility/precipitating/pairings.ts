// What else the ions of a liquor can precipitate as: every cation with every anion, ions made by handing on a proton, and double
// salts. Each is held against its own solubility, as an ion product in mol per kilogram of water with the activities of its
// own saturated solution; against its solubility product; or, without figures, against the rules.
import type { TemperatureLike } from "../../amount";
import { molarMass, parseFormula } from "../../formula";
import { gcd } from "../../foundation/gcd";
import { memoised } from "../../foundation/memo";
import { ACID_STEPS, type AcidStepRow, saltFormula } from "../../ion/internal";
import { expectDimension } from "../../quantity/internal";
import { trySolubilityOf } from "../curves/solubility";
import { type Solute, soluteOf } from "../curves/solute";
import { DOUBLE_SALTS, type DoubleSaltRow } from "../data/double-salts";
import { ruleFor } from "../rules";
import { sameIon } from "./given-ions";
import { saltIons } from "./ions";
import { solveResidue } from "./pair-balance";
import { findRows, freshForm } from "./product";

/** An ion of a liquor: how much, and which of the substances bring it. */
export interface PooledIon {
  readonly formula: string;
  readonly charge: number;
  readonly moles: number;
  readonly from: ReadonlySet<string>;
  /** Made by handing on a proton, and in no substance as such. */
  readonly made?: true;
}

/** Is an ion made by handing on a proton? */
export const isMade = ({ made }: PooledIon): boolean => made === true;

/** A solid that the ions of a liquor may precipitate as, though it was not put in. */
export interface Pairing {
  readonly formula: string;
  readonly ions: readonly { readonly ion: PooledIon; readonly count: number }[];
  readonly doubleSalt: DoubleSaltRow | undefined;
}

/** What becomes of a pairing. */
interface PairingVerdict {
  readonly formula: string;
  readonly ions: readonly PooledIon[];
  /** "barely" near saturation, where what salts do to each other decides; "unknown" without figure, product or rule. */
  readonly stays: "yes" | "barely" | "no" | "unknown";
  /** Ion product over that of its saturated solution, by the root of the number of ions; undefined without a figure. */
  readonly saturation: number | undefined;
  /** Amount that precipitates, mol; undefined unless it is known. */
  readonly falls: number | undefined;
  readonly solidPhase: string;
  readonly why: string;
}

/** Below 90 % of saturation a salt stays; salts shift each other's saturation by some 30 %, so above 130 % it precipitates. */
const STAYS = 0.9;
const FALLS = 1.3;
/** A double salt without figures is spoken of when its least soluble half is at this share of saturation. */
const HALF = 0.5;

/** @internal An acid that hands its anion to water whole, as the ion it is there. */
const STRONG = 2;

/** Ions a substance brings: those of a salt, and the anion of a strong acid. */
export function ionsBrought(
  solute: Solute,
): { readonly formula: string; readonly charge: number; readonly count: number }[] {
  const salt = saltIons(solute.anhydrous);
  if (salt !== undefined) return [...salt];
  let anion: string | undefined;
  for (let acid: string = solute.anhydrous.toString(); ; ) {
    const step = strongStepOf(acid);
    if (step === undefined) break;
    anion = step.base;
    acid = step.base;
  }
  return anion === undefined ? [] : [{ formula: anion, charge: chargeOf(anion), count: 1 }];
}

/** The step in which an ion or acid hands on a proton, and the one that makes it of its base. */
export const stepFrom = /* @__PURE__ */ memoised<AcidStepRow | undefined>(300, (acid) =>
  ACID_STEPS().find((row) => sameIon(row.acid, acid)),
);
const stepTo = /* @__PURE__ */ memoised<AcidStepRow | undefined>(300, (base) =>
  ACID_STEPS().find((row) => sameIon(row.base, base)),
);
const strongStepOf = /* @__PURE__ */ memoised<AcidStepRow | undefined>(300, (acid) =>
  ACID_STEPS().find((row) => Number(row.pKa) < STRONG && sameIon(row.acid, acid)),
);

/** Can an ion hand on a proton? Metal ions are left out: what they do with water is hydrolysis. */
const acidStep = ({ formula, charge }: PooledIon) => (charge < 0 || formula === "NH4+" ? stepFrom(formula) : undefined);

const baseStep = ({ formula, charge }: PooledIon) => (charge < 0 ? stepTo(formula) : undefined);

const chargeOf = /* @__PURE__ */ memoised<number>(300, (ion) => parseFormula(ion).charge);

/** Ions made where an acid ion meets the anion of a weaker acid, as bicarbonate from ammonium and carbonate. */
function handedOn(ions: readonly PooledIon[]): PooledIon[] {
  return ions.flatMap((base) => {
    const taken = baseStep(base);
    if (taken === undefined || chargeOf(taken.acid) === 0) return [];
    const givers = ions.filter((acid) => {
      const given = acid === base ? undefined : acidStep(acid);
      return given !== undefined && Number(given.pKa) < Number(taken.pKa);
    });
    const moles = givers.reduce((all, acid) => all + acid.moles, 0);
    if (moles === 0 || ions.some(({ formula }) => sameIon(formula, taken.acid))) return [];
    return [
      {
        formula: taken.acid,
        charge: chargeOf(taken.acid),
        moles: Math.min(moles, base.moles),
        from: new Set([...base.from, ...givers.flatMap(({ from }) => [...from])]),
        made: true,
      },
    ];
  });
}

const isSalt = (cation: PooledIon, anion: PooledIon): boolean =>
  anion.formula !== "O^2-" && !(cation.formula === "NH4+" && anion.formula === "OH-");

/** Do the ions come from more than one substance? What one salt brings is that salt. */
const isNew = (ions: readonly PooledIon[]): boolean => {
  const [first, ...rest] = ions;
  return ![...first!.from].some((substance) => rest.every(({ from }) => from.has(substance)));
};

/** Every solid the ions can pair to that no substance brings as such. */
export function pairingsOf(brought: readonly PooledIon[], celsius = Number.NaN): Pairing[] {
  const ions = [...brought, ...handedOn(brought)];
  const cations = ions.filter(({ charge }) => charge > 0);
  const anions = ions.filter(({ charge }) => charge < 0);
  const simple = cations.flatMap((cation) =>
    anions.flatMap((anion): Pairing[] => {
      if (!isSalt(cation, anion) || !isNew([cation, anion])) return [];
      const common = gcd(cation.charge, -anion.charge);
      const [a, b] = [-anion.charge / common, cation.charge / common];
      const formula = saltFormula(cation.formula, anion.formula);
      return [
        {
          formula,
          ions: [
            { ion: cation, count: a },
            { ion: anion, count: b },
          ],
          doubleSalt: undefined,
        },
      ];
    }),
  );
  const there = new Set(ions.map(({ formula }) => formula));
  const double = DOUBLE_SALTS().flatMap((row): Pairing[] => {
    if (celsius < (row.from ?? Number.NEGATIVE_INFINITY) || celsius > (row.upTo ?? Number.POSITIVE_INFINITY)) return [];
    if (!row.ions.every(([formula]) => there.has(formula))) return [];
    const own = row.ions.map(([formula, count]) => ({ ion: ions.find((ion) => ion.formula === formula)!, count }));
    return isNew(own.map(({ ion }) => ion)) ? [{ formula: row.solid, ions: own, doubleSalt: row }] : [];
  });
  return [...simple, ...double];
}

/** Products are tabulated at 25 °C and asked this many kelvin around it. */
const PRODUCT_NEAR = 10;

/** ln of the ion product of the saturated solution, mol/kg; undefined without figures. */
export function saturatedProduct({ formula, ions }: Pairing, temperature: TemperatureLike) {
  const solute = soluteOf(formula);
  const known = trySolubilityOf(formula, temperature);
  if (known.ok) {
    const { perHundredGramsWater, solidPhase } = known.value;
    const molal = (10 * perHundredGramsWater.toNumber("g")) / molarMass(solute.anhydrous).toNumber("g/mol");
    const lnK = ions.reduce((all, { count }) => all + count * Math.log(count * molal), 0);
    const why = () =>
      `100 g of water dissolves ${perHundredGramsWater.format({ significant: 2, uncertainty: "none" })} of it`;
    return { lnK, solidPhase: solidPhase ?? formula, why };
  }
  const celsius = expectDimension(temperature, "temperature", "temperature").toNumber("°C");
  const row = freshForm(formula) ?? findRows(formula, undefined)[0];
  if (row === undefined || row.soluble === true || Math.abs(celsius - 25) > PRODUCT_NEAR) return undefined;
  return { lnK: -Number(row.pKsp) * Math.LN10, solidPhase: row.solid, why: () => `its pKsp is ${row.pKsp}` };
}

/** What becomes of one pairing in an amount of water. */
export function judgePairing(pairing: Pairing, kilograms: number, temperature: TemperatureLike): PairingVerdict {
  const { formula, ions } = pairing;
  const found = saturatedProduct(pairing, temperature);
  const molal = ions.map(({ ion }) => ion.moles / kilograms);
  if (found === undefined) return pairing.doubleSalt === undefined ? byRule(pairing, kilograms) : unfigured(pairing);
  const counts = ions.reduce((all, { count }) => all + count, 0);
  const lnQ = ions.reduce((all, { count }, i) => all + count * Math.log(molal[i]!), 0);
  const saturation = Math.exp((lnQ - found.lnK) / counts);
  const stays = saturation > FALLS ? "no" : saturation > STAYS ? "barely" : "yes";
  const falls = stays === "no" ? kilograms * fallen(ions, molal, found.lnK) : undefined;
  const pooled = ions.map(({ ion }) => ion);
  return {
    formula,
    ions: pooled,
    stays,
    saturation,
    falls,
    solidPhase: found.solidPhase,
    why: stays === "yes" ? "" : found.why(),
  };
}

/** Formula units that precipitate, mol/kg. */
function fallen(ions: Pairing["ions"], molal: readonly number[], lnK: number): number {
  const units = ions.map(({ count }, i) => molal[i]! / count);
  const least = Math.min(...units);
  const scarce = units.indexOf(least);
  const perScarce = ions.map(({ count }) => count / ions[scarce]!.count);
  const remaining = ions.map(({ count }, i) => ({
    count,
    over: i === scarce ? 0 : (units[i]! - least) * count,
    perScarce: perScarce[i]!,
  }));
  const left = Math.exp(solveResidue(remaining, lnK, Math.log(molal[scarce]!)));
  return (molal[scarce]! - left) / ions[scarce]!.count;
}

const unfigured = ({ formula, ions, doubleSalt }: Pairing): PairingVerdict => ({
  formula,
  ions: ions.map(({ ion }) => ion),
  stays: "unknown",
  saturation: undefined,
  falls: undefined,
  solidPhase: formula,
  why: `the double salt ${doubleSalt!.name} precipitates from strong liquors of its ions; its solubility is not in the table`,
});

/** Bounds of the classes, g per 100 g of water. */
const SLIGHT = { from: 0.1, to: 1 };

/** Without figures: what the ions could make against the class of the rule. */
function byRule({ formula, ions }: Pairing, kilograms: number): PairingVerdict {
  const solute = soluteOf(formula);
  const most = Math.min(...ions.map(({ ion, count }) => ion.moles / count));
  const grams = (most * molarMass(solute.anhydrous).toNumber("g/mol")) / (10 * kilograms);
  const rule = ruleFor(solute);
  const plain = {
    formula,
    ions: ions.map(({ ion }) => ion),
    saturation: undefined,
    falls: undefined,
    solidPhase: formula,
  };
  if (rule === undefined) return { ...plain, stays: "unknown", why: "neither a figure nor a rule speaks of it" };
  const { from, to } = SLIGHT;
  const bound = rule.class === "insoluble" ? from : to;
  const safe = rule.class === "slightly soluble" ? from : 0;
  const stays = rule.class === "soluble" || grams < safe ? "yes" : grams > bound ? "no" : "unknown";
  return { ...plain, stays, why: `${rule.class} by rule: ${rule.rule}` };
}

/**
 * All pairings that do not clearly stay. Double salts without figures are left out where nothing of their ions comes near
 * saturation; `standing` names solids that are there already.
 */
export function doubtfulPairings(
  brought: readonly PooledIon[],
  kilograms: number,
  temperature: TemperatureLike,
  standing: readonly string[] = [],
): PairingVerdict[] {
  const celsius = expectDimension(temperature, "temperature", "temperature").toNumber("°C");
  const present = brought.filter(({ moles }) => moles > 0);
  return pairingsOf(present, celsius).flatMap((pairing) => {
    const verdict = judgePairing(pairing, kilograms, temperature);
    if (verdict.stays === "yes") return [];
    const isNamedOnly = pairing.doubleSalt !== undefined && verdict.saturation === undefined;
    if (isNamedOnly && !isNear(pairing, present, kilograms, temperature, standing)) return [];
    return [verdict];
  });
}

/** Is a simple salt of a double salt's ions near saturation, or there as a solid? */
function isNear(
  { ions }: Pairing,
  present: readonly PooledIon[],
  kilograms: number,
  temperature: TemperatureLike,
  standing: readonly string[],
): boolean {
  const own = ions.map(({ ion }) => ion);
  const made = own.map((ion) => ({ ...ion, from: new Set([ion.formula]) }));
  const solids = new Set(standing.map((solid) => soluteOf(solid).key));
  return pairingsOf(
    made.filter((ion) => present.some(({ formula }) => formula === ion.formula)),
    Number.NaN,
  ).some((half) => {
    if (half.doubleSalt !== undefined) return false;
    if (solids.has(soluteOf(half.formula).key)) return true;
    return (judgePairing(half, kilograms, temperature).saturation ?? 0) > HALF;
  });
}

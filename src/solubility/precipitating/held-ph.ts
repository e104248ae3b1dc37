// A solution held at a pH: there each ion of a solid is only a share of what was put in. Anions of weak acids stand
// beside their protonated forms, metals beside their hydroxide complexes. Both shares depend on the pH alone, so the
// product in terms of what was put in is Ksp / (shares^counts × [OH]^n): one constant for one pH.

import { COMPLEXES, type ComplexRow, type ComplexStep } from "../../aqueous/internal";
import { ACID_STEPS, type AcidStepRow } from "../../ion/internal";
import { applyFunction, type NumberLike, type Quantity, quantity } from "../../quantity";
import { cite, type SourceKey } from "../data/sources";
import { SolubilityError } from "../error";
import { PKW, sameIon } from "./ion-balance";
import type { DissolvedIon, SolubilityProduct } from "./product";

/** A constant of the tables as an input of a budget; one row is one input. */
const given = /* @__PURE__ */ new WeakMap<AcidStepRow | ComplexStep, Quantity>();

/** Standard uncertainty of a logarithm that one source alone gives. */
const LONE_SPREAD = 0.1;

/** The words of a constant and where it comes from. */
interface Named {
  readonly symbol: string;
  readonly label: string;
  readonly source: SourceKey;
  readonly range?: readonly [low: string, high: string];
}

function constantOf(row: AcidStepRow | ComplexStep, value: string, { symbol, label, source, range }: Named): Quantity {
  const before = given.get(row);
  if (before !== undefined) return before;
  const [low, high] = range ?? [value, value];
  const spread = Math.max(LONE_SPREAD, (Number(high) - Number(low)) / 2 / Math.sqrt(3));
  const made = quantity(
    { value, unit: "", standardUncertainty: spread.toPrecision(2) },
    { symbol, label, source: cite(source) },
  );
  given.set(row, made);
  return made;
}

const pKaOf = (row: AcidStepRow): Quantity =>
  constantOf(row, row.pKa, {
    symbol: `pKa(${row.acid})`,
    label: `pKa of ${row.name}, 25 °C`,
    source: row.source,
    ...(row.range !== undefined && { range: row.range }),
  });

/** @internal log beta of one complex, shared by all who ask. */
export const logBetaOf = (step: ComplexStep): Quantity =>
  constantOf(step, step.logBeta, {
    symbol: `log β(${step.complex})`,
    label: `stability constant of ${step.complex}`,
    source: step.source,
    ...(step.range !== undefined && { range: step.range }),
  });

/** Another form of an ion: log10 (form / ion) = offset + sum of sign × constant + slope × pH. */
interface OtherForm {
  readonly formula: string;
  readonly slope: number;
  readonly offset: number;
  readonly constants: readonly Quantity[];
  readonly sign: 1 | -1;
}

/** Steps from an ion to its acids, or from an acid to its bases. */
function chain(formula: string, towards: "acid" | "base"): AcidStepRow[] {
  const from = towards === "acid" ? "base" : "acid";
  const rows: AcidStepRow[] = [];
  for (let next: string | undefined = formula; next !== undefined; ) {
    const row: AcidStepRow | undefined = ACID_STEPS().find((candidate) => sameIon(candidate[from], next!));
    if (row !== undefined) rows.push(row);
    next = row?.[towards];
  }
  return rows;
}

/** @internal The complexes of a metal with hydroxide, those that accept protons besides left out. */
export function hydroxideSteps(metal: string): readonly ComplexStep[] {
  const row = COMPLEXES().find((each: ComplexRow) => each.ligand === "OH-" && sameIon(each.metal, metal));
  return (row?.steps ?? []).filter(({ protons }) => protons === undefined);
}

const forms = /* @__PURE__ */ new Map<string, readonly OtherForm[]>();

/** All that an ion turns into with the protons and the hydroxide of water. */
function otherForms({ formula }: DissolvedIon): readonly OtherForm[] {
  const before = forms.get(formula);
  if (before !== undefined) return before;
  const taken = chain(formula, "acid");
  const complexes = hydroxideSteps(formula);
  const lost = complexes.length > 0 ? [] : chain(formula, "base");
  const stepwise = (rows: readonly AcidStepRow[], towards: "acid" | "base"): OtherForm[] =>
    rows.map((row, i) => ({
      formula: row[towards],
      slope: towards === "acid" ? -(i + 1) : i + 1,
      offset: 0,
      constants: rows.slice(0, i + 1).map(pKaOf),
      sign: towards === "acid" ? 1 : -1,
    }));
  const found: OtherForm[] = [
    ...stepwise(taken, "acid"),
    ...stepwise(lost, "base"),
    ...complexes.map(
      (step): OtherForm => ({
        formula: step.complex,
        slope: step.n,
        offset: -step.n * PKW,
        constants: [logBetaOf(step)],
        sign: 1,
      }),
    ),
  ];
  forms.set(formula, found);
  return found;
}

/** Forms that hold less than this share of an ion at a pH are left out of its working. */
const NEGLIGIBLE = 1e-9;

/** @internal What became of the product in a solution held at a pH. */
export interface HeldProduct extends SolubilityProduct {
  /** Forms that hold more of an ion than it holds itself. */
  readonly prevailing: readonly string[];
}

/** pH of the solution, from 0 to that of pKw. */
function readPH(pH: NumberLike): Quantity {
  const read = quantity({ value: pH, unit: "" }, { symbol: "pH", label: "pH of the solution" });
  const plain = read.value.toNumber();
  if (plain >= 0 && plain <= PKW) return read;
  throw new SolubilityError("solubility.out-of-reach", `a pH of 0 to ${PKW} is understood, not ${read}`);
}

/**
 * @internal The product in a solution held at a pH, for concentrations of each ion in all its forms: protonated, and as
 * hydroxide complex. Hydroxide counts from the pH and is no longer among the ions.
 *
 * @throws {SolubilityError} `solubility.missing-option` without a pH for a solid that sets hydroxide free,
 *   `solubility.out-of-reach`
 */
export function productAtPH(product: SolubilityProduct, pH: NumberLike | undefined): HeldProduct {
  const hydroxide = product.ions.find(({ formula }) => sameIon(formula, "OH-"));
  if (pH === undefined) {
    if (hydroxide === undefined) return { ...product, prevailing: [] };
    throw new SolubilityError(
      "solubility.missing-option",
      `${product.solid} sets free hydroxide as well: at what pH?`,
      {
        hint: "give pH, such as 1 for sulfides from acid or 9 from ammonia",
        details: { solid: product.solid },
      },
    );
  }
  const read = readPH(pH);
  const at = read.value.toNumber();
  const ions = product.ions.filter((ion) => ion !== hydroxide);
  const beside = ions.map((ion) =>
    otherForms(ion).filter(({ slope, offset, constants, sign }) => {
      const log = constants.reduce((all, c) => all + sign * c.value.toNumber(), offset + slope * at);
      return log > Math.log10(NEGLIGIBLE);
    }),
  );
  const constants = [...new Set(beside.flatMap((each) => each.flatMap((form) => form.constants)))];
  const hydroxides = hydroxide?.count ?? 0;
  if (constants.length === 0 && hydroxides === 0) return { ...product, ions, prevailing: [] };
  /** ln of the factor on Ksp, and its slopes against the pH and each constant. */
  const factorAt = (values: readonly number[]) => {
    const [p, ...logs] = values as [number, ...number[]];
    let [log, slope] = [hydroxides * (PKW - p), -hydroxides];
    const slopes = constants.map(() => 0);
    beside.forEach((each, i) => {
      const { count } = ions[i]!;
      const terms = each.map(
        (form) =>
          10 **
          form.constants.reduce(
            (all, c) => all + form.sign * logs[constants.indexOf(c)]!,
            form.offset + form.slope * p,
          ),
      );
      const whole = terms.reduce((all, term) => all + term, 1);
      log += count * Math.log10(whole);
      terms.forEach((term, k) => {
        const share = (count * term) / whole;
        slope += share * each[k]!.slope;
        for (const c of each[k]!.constants) slopes[constants.indexOf(c)]! += share * each[k]!.sign;
      });
    });
    return { log, slopes: [slope, ...slopes] };
  };
  const value = applyFunction(
    [product.value, read, ...constants],
    {
      name: "Ksp / (shares × [OH]^n)",
      unit: "",
      value: ([k, ...rest]) => (k!.toNumber() * 10 ** factorAt(rest.map((v) => v.toNumber())).log).toPrecision(12),
      partials: ([k, ...rest]) => {
        const { log, slopes } = factorAt(rest.map((v) => v.toNumber()));
        const factor = 10 ** log;
        return [factor, ...slopes.map((s) => s * Math.LN10 * k!.toNumber() * factor)].map((p) => p.toPrecision(12));
      },
    },
    {
      symbol: `K(${product.solid})`,
      label: `product of ${product.solid} at this pH, each ion in all its forms`,
      rule: "Ksp / (share of each ion^count × [OH]^n)",
    },
  );
  const prevailing = beside.flatMap((each) =>
    each
      .filter(({ slope, offset, constants: own, sign }) => {
        return own.reduce((all, c) => all + sign * c.value.toNumber(), offset + slope * at) > 0;
      })
      .map((form) => form.formula),
  );
  return { ...product, ions, value, prevailing };
}

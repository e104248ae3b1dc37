// The ions a salt is made of, found from its composition alone: enough to name a solubility rule, to see two salts share
// an ion, and to look a solid up among the solubility products. Covalent substances and acids have no answer.
import { type Formula, parseFormula } from "../formula";
import { gcd } from "../foundation/gcd";

/** One kind of ion in a salt. */
export interface SaltIon {
  /** As the tables write it: `Cu^2+`, `SO4^2-`. */
  readonly formula: string;
  readonly charge: number;
  /** How many in the smallest whole unit of the salt. */
  readonly count: number;
}

/** The ions of a salt, crystal water left aside. */
export interface SaltIons {
  readonly cations: readonly SaltIon[];
  readonly anion: SaltIon;
}

const CATIONS =
  "Li+ Na+ K+ Rb+ Cs+ NH4+ Mg^2+ Ca^2+ Sr^2+ Ba^2+ Al^3+ Cr^3+ Mn^2+ Fe^2+ Fe^3+ Co^2+ Ni^2+ Cu+ Cu^2+ Zn^2+ Cd^2+ Hg2^2+ Hg^2+ Ag+ Pb^2+ Sn^2+ Bi^3+ Tl+ La^3+ Ce^3+ Be^2+ Sb^3+".split(
    " ",
  );
const ANIONS =
  "OH- F- Cl- Br- I- CN- SCN- NO3- NO2- ClO- ClO2- ClO3- ClO4- BrO3- IO3- IO4- HCO3- CO3^2- HSO4- SO4^2- HSO3- SO3^2- S2O3^2- S2O5^2- S2O8^2- HS- S^2- H2PO4- HPO4^2- PO4^3- H2PO2- HPO3^2- P2O7^4- CrO4^2- Cr2O7^2- MnO4- HC2O4- C2O4^2- HCO2- C2H3O2- C7H5O2- C7H5O3- C8H5O4- HC4H4O6- C4H4O6^2- C6H5O7^3- B4O7^2- BO2- SiO3^2- SiF6^2- MoO4^2- WO4^2- VO3- AsO4^3- SeO4^2- Fe(CN)6^3- Fe(CN)6^4- NH2SO3- O^2-".split(
    " ",
  );

interface Ion {
  readonly text: string;
  readonly charge: number;
  readonly counts: ReadonlyMap<string, number>;
}

function countsOf(formula: Formula): Map<string, number> {
  const { composition } = formula;
  const denominator = composition.reduce((all, { count }) => all * Number(count.d), 1);
  return new Map(composition.map(({ symbol, count }) => [symbol, (Number(count.n) * denominator) / Number(count.d)]));
}

function readIon(text: string): Ion {
  const formula = parseFormula(text);
  return { text, charge: formula.charge, counts: countsOf(formula) };
}

let cations: readonly Ion[] | undefined;
let anions: readonly Ion[] | undefined;

const within = (ion: Ion, counts: ReadonlyMap<string, number>): boolean =>
  [...ion.counts.keys()].every((symbol) => counts.has(symbol));

/** The element that tells a cation: the metal, or nitrogen for ammonium. */
const markOf = (cation: Ion): string => [...cation.counts.keys()].find((symbol) => symbol !== "H")!;

/** What is left after a number of ions is taken out; undefined when it does not suffice. */
function take(counts: ReadonlyMap<string, number>, ion: Ion, times: number): Map<string, number> | undefined {
  const left = new Map(counts);
  for (const [symbol, count] of ion.counts) {
    const rest = (left.get(symbol) ?? 0) - count * times;
    if (rest < 0 || !Number.isInteger(rest)) return undefined;
    if (rest === 0) left.delete(symbol);
    else left.set(symbol, rest);
  }
  return left;
}

/** How many anions make up exactly what is left. */
function timesExactly(counts: ReadonlyMap<string, number>, anion: Ion): number | undefined {
  const [symbol, count] = [...anion.counts][0]!;
  const times = (counts.get(symbol) ?? 0) / count;
  if (!Number.isInteger(times) || times === 0) return undefined;
  return take(counts, anion, times)?.size === 0 ? times : undefined;
}

/** Try one set of cations with one anion; nitrogen that the anion needs is left for it. */
function assemble(counts: ReadonlyMap<string, number>, chosen: readonly Ion[], anion: Ion): SaltIons | undefined {
  let left: ReadonlyMap<string, number> = counts;
  const found: SaltIon[] = [];
  for (const cation of chosen) {
    const mark = markOf(cation);
    let total = left.get(mark) ?? 0;
    if (anion.counts.has(mark)) {
      // shared element: the charges of a simple salt fix the split
      const [p, q] = [-anion.charge, cation.charge];
      total = (total * p * cation.counts.get(mark)!) / (p * cation.counts.get(mark)! + q * anion.counts.get(mark)!);
    }
    const count = total / cation.counts.get(mark)!;
    if (!Number.isInteger(count) || count === 0) return undefined;
    const rest = take(left, cation, count);
    if (rest === undefined) return undefined;
    left = rest;
    found.push({ formula: cation.text, charge: cation.charge, count });
  }
  const times = timesExactly(left, anion);
  if (times === undefined) return undefined;
  const positive = found.reduce((all, { charge, count }) => all + charge * count, 0);
  if (positive !== -anion.charge * times) return undefined;
  const common = found.reduce((all, { count }) => gcd(all, count), times);
  return {
    cations: found.map((ion) => ({ ...ion, count: ion.count / common })),
    anion: { formula: anion.text, charge: anion.charge, count: times / common },
  };
}

/** Ions already found, for as long as the formula lives: a plan asks for the same salts again and again. */
const found = /* @__PURE__ */ new WeakMap<Formula, { readonly ions: SaltIons | undefined }>();

/** The ions of an anhydrous salt with one or two cations; undefined for anything else. */
export function saltIons(formula: Formula): SaltIons | undefined {
  let known = found.get(formula);
  if (known === undefined) {
    known = { ions: findIons(formula) };
    found.set(formula, known);
  }
  return known.ions;
}

function findIons(formula: Formula): SaltIons | undefined {
  cations ??= CATIONS.map(readIon);
  anions ??= ANIONS.map(readIon);
  if (formula.charge !== 0) return undefined;
  const counts = countsOf(formula);
  const positive = cations.filter((ion) => within(ion, counts));
  const negative = anions.filter((ion) => within(ion, counts));
  for (const anion of negative) {
    for (const cation of positive) {
      const simple = assemble(counts, [cation], anion);
      if (simple !== undefined) return simple;
    }
  }
  for (const anion of negative) {
    for (const [i, first] of positive.entries()) {
      for (const second of positive.slice(i + 1)) {
        if (markOf(first) === markOf(second)) continue;
        const double = assemble(counts, [first, second], anion);
        if (double !== undefined) return double;
      }
    }
  }
  return undefined;
}

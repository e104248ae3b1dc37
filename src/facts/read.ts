// Each kind of row read into a row of the table it is looked up before, under the key it is looked up by.
import { inSymbol, type SoluteRows } from "../amount/internal";
import { atomicWeight } from "../element";
import { type FormulaPart, parseFormula } from "../formula";
import { numberText, splitWater, withoutPhase } from "../formula/internal";
import { nearestWord } from "../foundation/slips";
import { constitutionOf } from "../ion";
import { anhydrousKey, formulaKey, readNotation, tryReadNotation } from "../ion/internal";
import { type Quantity, quantity } from "../quantity";
import { expectDimension, isUnitSymbol, nodeOf, toRational } from "../quantity/internal";
import { findRows, ionsOf, type ProductRow, type SolubilityRow, saltIons, soluteOf } from "../solubility/internal";
import { type SubstanceCautions, tryNameOf } from "../substance";
import {
  type AddsHazard,
  type AddsKin,
  classOfOne,
  everyRule,
  firstAidFor,
  type HazardClass,
  type IncompatibilityRow,
  nameKey,
  type OwnName,
  type PhysicalRow,
  pictogramsOf,
  protectionFor,
  type RegistryRow,
  type ShopMaterialRow,
  signalWordOf,
  statementRow,
} from "../substance/internal";
import type { OwnEnthalpy } from "../thermochemistry/internal";
import { FactsError } from "./error";
import type {
  ConstantFact,
  DensityFact,
  EnthalpyFact,
  HazardFact,
  IncompatibilityFact,
  MaterialFact,
  NameFact,
  SolubilityFact,
  SubstanceFact,
  UnitFact,
  WeightFact,
} from "./rows";

/** One thing to look up: its table, its key, its row. */
export type Entry = readonly [table: string, key: string, row: unknown];

/** The source as it is cited: marked as the caller's own, and of the type of every table's keys. */
type Own = string & { readonly never?: never };

const bad = (problem: string, hint?: string): FactsError =>
  new FactsError("facts.bad-row", problem, hint === undefined ? {} : { hint });

const clash = (problem: string, hint: string): FactsError => new FactsError("facts.clash", problem, { hint });

/** A quantity of a dimension, above zero, in a unit. */
function inUnit(text: string, dimension: string, argument: string, unit: string): string {
  const q = expectDimension(text as "1 g", dimension, argument);
  if (dimension !== "temperature" && !q.isPositive()) throw bad(`${argument} must be above zero, not ${text}`);
  return q.in(unit as "g").toString();
}

/** The number in front of a part as the tables write it: `0.5` where the decimals end, else `8/3`. */
function numberOf({ multiplier }: FormulaPart): string {
  const decimal = multiplier.toString();
  return multiplier.equals(1) || decimal.includes("(") ? numberText(multiplier) : decimal;
}

/** A neutral formula as the tables write it, crystal water after a dot in the middle of the line. */
function substanceIn(text: string): string {
  const formula = parseFormula(text);
  if (formula.charge !== 0) throw bad(`${text} is an ion, not a substance`, "write the whole salt");
  return formula.parts.map((part) => `${numberOf(part)}${part.formula}`).join("·");
}

export function ofSubstance(fact: SubstanceFact, source: Own): Entry[] {
  const formula = substanceIn(fact.formula);
  const { name, otherNames = [], appearance, note, density } = fact;
  const row = {
    ...{ formula, name, otherNames, source, nameSource: source },
    ...(appearance === undefined ? {} : { appearance }),
    ...(note === undefined ? {} : { note }),
  } as unknown as RegistryRow;
  const meant = (one: string) => ({ name: one, formula, source, row }) as unknown as OwnName;
  const physical: PhysicalRow[] =
    density === undefined
      ? []
      : [{ formula, density: inUnit(density, "density", "density", "g/mL"), source: source as PhysicalRow["source"] }];
  const notation = readNotation(formula);
  const adds: AddsKin = (known) => [
    row,
    ...known.filter((one) => formulaKey(readNotation(one.formula)) !== formulaKey(notation)),
  ];
  return [
    ["substances", formulaKey(notation), row],
    ["kin", anhydrousKey(notation).key, adds],
    ...[name, ...otherNames].map((one): Entry => ["names", keyOfName(one), meant(one)]),
    ...physical.map((one): Entry => ["physical", formula, one]),
  ];
}

function keyOfName(name: string): string {
  const key = nameKey(name);
  if (key === "") throw bad(`'${name}' has no letter`);
  return key;
}

export function ofName({ name, formula }: NameFact, source: Own): Entry[] {
  return [["names", keyOfName(name), { name, formula: substanceIn(formula), source } as unknown as OwnName]];
}

const byFirst = (a: readonly [number, string], b: readonly [number, string]): number => a[0] - b[0];

/** Figures that rise in what they are for, each once. */
function rising(points: (readonly [number, string])[], of: string): (readonly [number, string])[] {
  const sorted = points.sort(byFirst);
  const twice = sorted.find(([at], i) => i > 0 && sorted[i - 1]![0] === at);
  if (twice !== undefined) throw bad(`two figures for a ${of} of ${twice[0]}`);
  return sorted;
}

export function ofSolubility({ formula, solid, points }: SolubilityFact, source: Own): Entry[] {
  if (points.length === 0) throw bad("points are empty", 'such as [["20 °C", "35.9 g"]]');
  const solute = soluteOf(formula);
  if (solid !== undefined && soluteOf(solid).key !== solute.key)
    throw bad(
      `${solid} is not a solid of ${solute.anhydrous}`,
      "the solid differs from the solute by crystal water only",
    );
  const named = tryNameOf(solute.anhydrous);
  const inContact = solid ?? (solute.isHydrate ? formula : undefined);
  const solidText = inContact === undefined ? undefined : substanceIn(inContact);
  const row = {
    formula: solute.anhydrous.toString(),
    name: named.ok ? named.value : solute.anhydrous.toString(),
    solids: [solidText === undefined ? {} : { solid: solidText }],
    points: rising(
      points.map(([at, mass]) => [
        Number(inUnit(at, "temperature", "temperature", "°C")),
        inUnit(mass, "mass", "solubility", "g"),
      ]),
      "temperature",
    ),
    source,
    knownAs: "measured",
  } as unknown as SolubilityRow;
  return [["solubilities", solute.key, row]];
}

export function ofDensity({ solute, temperature = "20 °C", points }: DensityFact, source: Own): Entry[] {
  const formula = parseFormula(solute);
  if (points.length < 2)
    throw bad(
      "a curve of densities needs two points or more",
      'such as [["10 %", "1.07 g/mL"], ["20 %", "1.15 g/mL"]]',
    );
  const celsius = Number(inUnit(temperature, "temperature", "temperature", "°C"));
  const read = rising(
    points.map(([w, density]) => [
      Number(inUnit(w, "mass fraction", "mass fraction", "%")),
      inUnit(density, "density", "density", "g/mL"),
    ]),
    "mass fraction",
  ).map(([w, density]) => [String(w), density.includes(".") ? density : `${density}.0`] as const);
  if (Number(read.at(-1)![0]) > 100) throw bad("a mass fraction is at most 100 %");
  const rows = [{ solute, celsius, source, knownAs: "compiled", points: read }];
  const entry = { solute: formula, rows } as unknown as SoluteRows;
  const { dry } = splitWater(formula);
  const identity = constitutionOf(formula).identity;
  if (dry === undefined) throw bad(`${inSymbol(formula)} is the solvent here, not a solute`);
  const dryIdentity = constitutionOf(dry).identity;
  return [
    ["densities", identity, entry],
    ...(dryIdentity === identity ? [] : [["densities", dryIdentity, entry] as const]),
  ];
}

export function ofMaterial(fact: MaterialFact, source: Own): Entry[] {
  const { name, assay, solution = false, density, impurities = [], trap } = fact;
  const formula = substanceIn(fact.formula);
  const percent = (text: string) => inUnit(text, "mass fraction", "assay", "%");
  const [lower, upper] = typeof assay === "string" ? [assay, assay] : (assay ?? []);
  const perVolume = density === undefined ? undefined : inUnit(density, "density", "density", "g/mL");
  const row = {
    ...{ name, formula, form: solution ? "mass fraction" : "solid", impurities, otherGoods: [], source },
    assays: lower === undefined || upper === undefined ? [] : [{ lower: percent(lower), upper: percent(upper) }],
    ...(perVolume === undefined ? {} : { density: { lower: perVolume, upper: perVolume } }),
    ...(trap === undefined ? {} : { trap }),
  } as unknown as ShopMaterialRow;
  if (row.assays.some((one) => Number(one.lower) > Number(one.upper) || Number(one.upper) > 100))
    throw bad("assay must be at most 100 %, the lowest first");
  const meant = { name, formula, source } as unknown as OwnName;
  return [
    ["materials", keyOfName(name), [row]],
    ["names", keyOfName(name), meant],
  ];
}

export function ofHazard({ formula, codes = [], cautions = [], disposal }: HazardFact, source: Own): Entry[] {
  const notation = readNotation(substanceIn(formula));
  const unknown = codes.find((code) => statementRow(code) === undefined || !/^(?:EU)?H/.test(code));
  if (unknown !== undefined)
    throw bad(`no hazard statement has the code ${unknown}`, "codes look like H314, H361d, EUH031");
  if (codes.length + cautions.length === 0 && disposal === undefined)
    throw bad("nothing is said of a hazard", "give codes, cautions or disposal");
  const adds: AddsHazard = (entry) => {
    const known = entry.statements.map(({ code }) => code);
    const more = codes.filter((code) => !known.includes(code));
    const all = [...known, ...more];
    const signalWord = entry.signalWord === "Danger" ? entry.signalWord : (signalWordOf(more) ?? entry.signalWord);
    const shown = new Set([...entry.pictograms.map(({ code }) => code), ...pictogramsOf(more)]);
    const paraphrased = (code: string) => ({ code, paraphrase: statementRow(code)!.paraphrase });
    const key = source as SubstanceCautions["adviceSource"];
    return {
      ...entry,
      status: all.length > 0 ? "classified" : entry.status,
      pictograms: [...shown].sort().map(paraphrased),
      ...(signalWord === undefined ? {} : { signalWord }),
      statements: [...entry.statements, ...more.map((code) => ({ ...paraphrased(code), source: key }))],
      cautions: [...new Set([...entry.cautions, ...cautions])],
      firstAid: firstAidFor(all),
      protection: protectionFor(all).map(({ does }) => does),
      ...(disposal === undefined ? {} : { disposal: `${entry.disposal} ${disposal}` }),
      notes: [...entry.notes, source],
      source: entry.source ?? key,
      citation: entry.citation === undefined ? source : `${entry.citation}; ${source}`,
    };
  };
  return [["hazards", anhydrousKey(notation).key, adds]];
}

/** Classes that the rules of the library know. */
const classesInUse = (): Set<string> =>
  new Set(everyRule().flatMap(({ a, b = [] }) => [...a, ...b].filter((one) => !NO_CLASS.has(one))));
const NO_CLASS: ReadonlySet<string> = /* @__PURE__ */ new Set(["gas", "toxic", "closed vessel", "kitchen"]);

function classIn(text: string): string {
  const known = classesInUse();
  if (known.has(text)) return text;
  if (tryReadNotation(text) !== undefined) return classOfOne(readNotation(substanceIn(text)));
  const nearest = nearestWord(text, [...known]);
  throw bad(
    `'${text}' is neither a formula nor a class of the rules`,
    nearest === undefined ? `classes: ${[...known].sort().join(", ")}` : `did you mean ${nearest}?`,
  );
}

export function ofIncompatibility(fact: IncompatibilityFact, source: Own): Entry[] {
  const { code, a, b, what, severity, products = [] } = fact;
  if (!/^[a-z][a-z0-9]*(?:-[a-z0-9]+)*$/.test(code))
    throw bad(`'${code}' is not a code`, "words in small letters with hyphens, such as studio-vinegar-bleach");
  if (RESERVED.has(code) || everyRule().some((rule) => rule.code === code))
    throw clash(
      `the library has a rule '${code}' of its own`,
      "give the rule another code: nothing of ours is replaced",
    );
  if (a.length === 0 || b.length === 0) throw bad("a and b name one substance or class each, or more");
  const row = {
    ...{ code, what, severity, source },
    a: a.map(classIn) as HazardClass[],
    b: b.map(classIn) as HazardClass[],
    products: products.map((one) => parseFormula(one).toString()),
  } as unknown as IncompatibilityRow;
  return [["incompatibilities", code, row]];
}
/** Codes of refusals that are not of a rule. */
const RESERVED: ReadonlySet<string> = /* @__PURE__ */ new Set(["explosive", "deadly-gas", "poison-gas"]);

const given = (text: string, source: Own): Quantity =>
  expectDimension(quantity(text as "1"), "number", "value").named({ source } as never);

export function ofConstant({ kind, of, value }: ConstantFact, source: Own): Entry[] {
  const formula = parseFormula(of).toString();
  const list = typeof value === "string" ? [value] : value;
  if (list.length === 0 || (kind !== "pKa" && list.length > 1)) throw bad(`${kind} of ${of} needs one figure`);
  const values = list.map((one) => given(one, source));
  const product = kind === "pKsp" ? productRow(substanceIn(of), values[0]!, source) : undefined;
  return [
    ["constants", `${kind} ${formula}`, { kind, of, values }],
    ...(product === undefined ? [] : [["products", formula, product] as const]),
  ];
}

/** The solubility product as the tables have it: written to the ions that the table writes it to, else to those of the salt. */
function productRow(solid: string, own: Quantity, source: Own): ProductRow | undefined {
  const solute = soluteOf(solid);
  const [known] = findRows(solute.formula, undefined);
  const ions = known === undefined || known.convention !== undefined ? saltIons(solute.anhydrous) : ionsOf(known);
  if (ions === undefined) return undefined;
  const named = tryNameOf(solute.formula);
  const freed = ions.map(({ formula, count }) => `${count === 1 ? "" : `${count} `}${formula}`);
  return {
    ...{ solid, name: named.ok ? named.value : solid, dissolution: `-> ${freed.join(" + ")}` },
    ...{ pKsp: own.value.toString(), source: source as ProductRow["source"], own },
  };
}

const STATES: readonly string[] = ["s", "l", "g", "aq"];

export function ofEnthalpy({ formula, enthalpy }: EnthalpyFact, source: Own): Entry[] {
  const read = parseFormula(formula);
  const state = read.phase === "cr" ? "s" : (read.phase ?? "");
  if (!STATES.includes(state))
    throw bad(`${formula} does not say its state`, "write it at the end, such as C6H8O7(s) or Cu^2+(aq)");
  const bare = withoutPhase(read);
  const own = expectDimension(quantity(enthalpy as "1 kJ/mol"), "molar energy", "enthalpy").to("kJ/mol");
  const row = { formula: bare.toString(), state, enthalpy: own.value.toString(), source, own };
  return [["enthalpies", `${constitutionOf(bare).identity} ${state}`, row as unknown as OwnEnthalpy]];
}

export function ofUnit({ symbol, is }: UnitFact): Entry[] {
  if (!/^[A-Za-zµ°Ω]+$/.test(symbol)) throw bad(`'${symbol}' is not a symbol of a unit`, "letters only, such as scoop");
  if (isUnitSymbol(symbol)) throw clash(`${symbol} is a unit already`, "give it another symbol, such as scoop");
  const one: Quantity = quantity(is);
  if (!one.isPositive() || one.dimension === "temperature") throw bad(`one ${symbol} cannot be ${is}`);
  if (one.standardUncertainty !== undefined && !one.standardUncertainty.isZero())
    throw bad(`one ${symbol} must be an exact figure`, "state the uncertainty with what is measured: 3 ± 0.5 scoop");
  const { unit } = nodeOf(one);
  const { n, d } = toRational(one.in(unit.symbol as "g"));
  const factor = { n: n * unit.factor.n, d: d * unit.factor.d };
  return [["units", symbol, { symbol, dimension: unit.dimension, factor, offset: { n: 0n, d: 1n } }]];
}

export function ofWeight({ element, weight }: WeightFact, source: Own): Entry[] {
  const own = atomicWeight(element, { value: quantity(weight as "1 g/mol", { source }) });
  const symbol = /^A\((.*)\)$/.exec(own.symbol ?? "")?.[1] ?? element;
  return [["weights", symbol, own]];
}

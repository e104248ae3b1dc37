// What the rules make of a name, word by word: salts, ions and crystal water, and the molecules and acids beside them.

import { allIons, chargedText, formulaKey, readNotation, tryReadNotation } from "../../ion/internal";
import { rowOf } from "../registry/registry-index";
import { neutralComplexes } from "./complex-names";
import {
  acidNamed,
  binaryNamed,
  carbonylNamed,
  countedNamed,
  elementsNamed,
  type Found,
  halogenatedNamed,
  moleculeNamed,
  numberedNonMetal,
  unprefixedNamed,
} from "./molecule-readings";
import { anionsNamed, cationsNamed } from "./name-parse";
import { elementNamed, splitWords } from "./name-words";
import { hydrateNumber, leadingPrefixes, roman } from "./prefixes";
import type { Species } from "./species";
import { balanced, saltText } from "./stoichiometry";
import { plainName } from "./words";

/** The registry's own writing of a formula, where the composition is listed. */
export function registryWriting(formula: string): string {
  const notation = tryReadNotation(formula);
  return (notation === undefined ? undefined : rowOf(notation)?.formula) ?? formula;
}

/** A salt, word by word. */
function saltsNamed(name: string): Found[] {
  const words = splitWords(name);
  if (words.length < 2 || words.length > 8) return [];
  const asCation = words.map((word) => cationsNamed(word));
  const asAnion = words.map((word) => anionsNamed(word));
  const found = new Map<string, Found>();
  for (let split = 1; split < words.length; split += 1) {
    if (
      asCation.slice(0, split).some((one) => one.length === 0) ||
      asAnion.slice(split).some((one) => one.length === 0)
    )
      continue;
    for (const choice of choices([...asCation.slice(0, split), ...asAnion.slice(split)])) {
      const cations = choice.slice(0, split);
      if (isGuessedChain(choice)) continue;
      for (const salt of balanced(cations, choice.slice(split))) {
        const formula = registryWriting(saltText(salt));
        const complex = choice.find((one) => one.open !== undefined)?.open;
        // the peroxide of a metal with several charges is its higher oxide in old books, which the tables name
        if (salt.open === "charge" && choice.some(({ ion }) => ion !== undefined && isOxygenChain(ion.counts)))
          continue;
        const number = salt.cations.find((one) => one.species.charge === undefined);
        const decides =
          salt.open === "charge" && number !== undefined
            ? `the label says ${number.species.element!.name}(${roman(number.charge)})`
            : complex !== undefined
              ? `the label says ${complex}`
              : salt.open === "proportions"
                ? "the simplest proportions; the name does not give them"
                : "";
        if (!found.has(formula) || decides === "") found.set(formula, { formula, decides });
      }
    }
  }
  // where prefixes settle the proportions, a guess at a charge has no place: tin disulfide
  const all = onePerComposition([...found.values()]);
  const settled = all.filter((one) => one.decides === "");
  return settled.length > 0 ? settled : all;
}

/** Antimony trisulfide is no salt of a chain of three sulfurs: those are only named beside a charge that is clear. */
function isGuessedChain(choice: readonly Species[]): boolean {
  const chain = choice.some(({ ion, count }) => count === undefined && /sulfide\(2-\)$/.test(ion?.row.name ?? ""));
  return chain && choice.some((one) => one.charge === undefined);
}

/** ZrO(BF4)2 by the ion's name and ZrO[BF4]2 by its ligands are one salt. */
function onePerComposition(all: readonly Found[]): Found[] {
  if (all.length < 2) return [...all];
  const kept = new Map<string, Found>();
  for (const one of all) {
    const key = formulaKey(readNotation(one.formula));
    if (!kept.has(key)) kept.set(key, one);
  }
  return [...kept.values()];
}

/** Peroxide, superoxide, ozonide. */
function isOxygenChain(counts: ReadonlyMap<string, number>): boolean {
  return counts.size === 1 && (counts.get("O") ?? 0) > 1;
}

/** Every combination of one reading per word, at most 64. */
function choices(options: readonly (readonly Species[])[]): Species[][] {
  let all: Species[][] = [[]];
  for (const option of options) all = all.flatMap((chosen) => option.map((one) => [...chosen, one])).slice(0, 64);
  return all;
}

const SIGNED = /^(.*?) ?\((\d+)([+-])\)$/;

/** A charged species by itself: sulfate ion, iron(3+), hexacyanidoferrate(II). */
function ionsNamed(name: string): Found[] {
  const bare = name.replace(/ (ion|anion|cation)$/, "");
  const stated = bare !== name || SIGNED.test(name);
  const found = new Map<string, Found>();
  if (bare === "hydron" || (stated && bare === "hydrogen")) return [{ formula: "H^+", decides: "" }];
  const counted = SIGNED.exec(bare);
  if (counted !== null) {
    // dimercury(2+), triiodide(1-): the charge is that of the whole
    for (const { n, rest } of [{ n: 1, rest: counted[1]! }, ...leadingPrefixes(counted[1]!)]) {
      const word =
        elementNamed(rest) ??
        allIons().anions.find((ion) => ion.row.name === rest && ion.element !== undefined)?.element;
      if (word === undefined) continue;
      const charge = Number(`${counted[3]}${counted[2]}`);
      return [{ formula: chargedText(`${word.symbol}${n === 1 ? "" : n}`, charge), decides: "" }];
    }
  }
  for (const species of [...anionsNamed(bare), ...cationsNamed(bare)]) {
    if (species.charge === undefined || (species.count ?? 1) !== 1 || species.charge === 0) continue;
    // "iron" alone is the metal; "sulfate" alone can only be the ion
    if (species.element !== undefined && !stated && !/\(/.test(bare)) continue;
    const formula = chargedText(species.text, species.charge);
    found.set(formula, { formula, decides: "" });
  }
  const all = [...found.values()];
  return all.length === 1 ? all : all.map((one) => ({ ...one, decides: `charge of ${one.formula}` }));
}

/** One component without water: its meanings by rule. */
export function componentReadings(name: string, literal = false): Found[] {
  const exact = moleculeNamed(name) ?? acidNamed(name);
  if (exact !== undefined) return [{ formula: registryWriting(exact), decides: "" }];
  const complex = neutralComplexes(name).map((species) => species.text);
  const simple = [
    ...complex,
    ...elementsNamed(name),
    ...numberedNonMetal(name),
    ...carbonylNamed(name),
    ...halogenatedNamed(name),
  ];
  if (simple.length > 0) return [{ formula: registryWriting(simple[0]!), decides: "" }];
  const salts = saltsNamed(name);
  if (salts.length > 0) return salts;
  const counted = countedNamed(name);
  if (counted !== undefined) return [{ formula: registryWriting(counted), decides: "" }];
  const binary = binaryNamed(name, literal);
  if (binary.length > 0) return [{ formula: registryWriting(binary[0]!), decides: "" }];
  const unprefixed = unprefixedNamed(name);
  if (unprefixed.length > 0)
    return unprefixed.map(({ formula, decides }) => ({ formula: registryWriting(formula), decides }));
  return ionsNamed(name);
}

/** A name without its hydrate ending, and the water it tells. */
export interface HydrateName {
  readonly core: string;
  /** Waters, `undefined` where the name does not say how many. */
  readonly water: number | undefined;
  /** To so many formula units; 1 but for ratios such as (3/8)-hydrate. */
  readonly units: number;
}

/** Crystal water split off the end of a name. */
export function splitHydrate(name: string): HydrateName | undefined {
  const text = name.replace(/,? anhydrous$|^anhydrous /, "");
  if (text !== name) return { core: text, water: 0, units: 1 };
  const ratio = /^(.*?),? \((\d{1,3})\/(\d{1,3})\)-?hydrate$/.exec(name);
  if (ratio !== null) return { core: ratio[1]!, water: Number(ratio[3]), units: Math.max(1, Number(ratio[2])) };
  const digits = /^(.*?),? (\d{1,3}(?:\.\d{1,3})?|\d\/\d)[- ]?hydrate$/.exec(name);
  if (digits !== null) {
    const water = hydrateNumber(digits[2]!);
    const [of, to] = digits[2]!.split("/").map(Number);
    // thirds are no decimals: 8/3 is eight to three formula units
    const isRatio = to !== undefined && water !== undefined && !Number.isInteger(water * 1000);
    return { core: digits[1]!, ...(isRatio ? { water: of, units: to } : { water, units: 1 }) };
  }
  const written = /^(.*?)[ ·•⋅.*,]+(\d{0,3}(?:\.\d{1,3})?)h2o$/.exec(name);
  if (written !== null)
    return { core: written[1]!, water: written[2] === "" ? 1 : hydrateNumber(written[2]!), units: 1 };
  const bare = /^(.*) hydrate$/.exec(name);
  if (bare !== null) return { core: bare[1]!, water: undefined, units: 1 };
  const match = /^(.*?),? ([a-z]+)-?hydrate$/.exec(name);
  const water = match === null ? undefined : hydrateNumber(match[2]!);
  return water === undefined ? undefined : { core: match![1]!, water, units: 1 };
}

/** The formula with the water of the name. */
export function withWater(formula: string, { water, units }: HydrateName): string {
  if (water === undefined || water === 0) return formula;
  return registryWriting(`${units === 1 ? "" : units}${formula}·${water === 1 ? "" : water}H2O`);
}

/** @internal What the rules alone make of a name, the registry left out: for checking the rules against the tables. */
export function ruleFormulas(name: string): string[] {
  const plain = plainName(name).name;
  const hydrate = splitHydrate(plain);
  if (hydrate?.water === undefined) return componentReadings(plain).map(({ formula }) => formula);
  return componentReadings(hydrate.core).map(({ formula }) => withWater(formula, hydrate));
}

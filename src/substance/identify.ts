// One question for whatever stands on a pack, in a book or in an input field: what may this be?
import { tryParseFormula } from "../formula";
import { LOOKUP, type LookupOptions, lookingIn } from "../foundation/facts";
import { frozen } from "../foundation/frozen";
import { printsItself } from "../foundation/readable";
import { tryReadNotation } from "../ion/internal";
import { guard } from "./argument";
import { readableText } from "./error";
import { tryFormulaOf } from "./names/formula-of";
import { goodNamed } from "./names/goods";
import { withoutLabelWords } from "./names/label-words";
import { readingsOf } from "./names/readings";
import { mayBeShortName } from "./names/resolve";
import { type Substance, substance, trySubstance } from "./registry/substance";
import { type ShopCandidate, tryShopMaterial } from "./shop/shop";
import type { TextRange } from "./shop/sold-goods";

/** One thing a text may mean. */
export interface Meaning {
  /** Formula as listed, crystal water included; of two texts for one substance always the same. */
  readonly formula: string;
  /** Systematic name. */
  readonly name: string;
  /** How the text leads there; a good of the shop may be known by its name as well. */
  readonly by: "formula" | "registry number" | "name" | "shop name";
  /** What speaks for this meaning, where there are several. */
  readonly decides?: string;
  /** Is it the usual form of the good, where the text is a word of the shop? */
  readonly usual?: boolean;
  /** Usual strength of the good: a mass fraction, or grams per litre. */
  readonly strength?: TextRange;
  /** Listed substances that differ by crystal water only. */
  readonly hydrates: readonly string[];
  /** What to know about this reading. */
  readonly remarks: readonly string[];
}

/** What a text may be; `toString()` prints it. */
export interface Identified {
  /** The text, trimmed. */
  readonly text: string;
  /** The formula, where the text leaves nothing open: every meaning is this one substance. */
  readonly formula?: string;
  /** All it may mean, likeliest first; empty where nothing reads it. */
  readonly meanings: readonly Meaning[];
  /** What the word means, where it is a good or a mixture that no formula stands for. */
  readonly what?: string;
  /** What to try, where nothing reads it or something is left open. */
  readonly hint?: string;
  /** The text and its meanings, a line for each. */
  toString(): string;
}

function meaningOf(read: Substance, by: Meaning["by"], more: Partial<Meaning> = {}): Meaning {
  const { formula, name, hydrates, note } = read;
  const remarks = [...new Set([...(more.remarks ?? []), ...read.remarks, ...(note === undefined ? [] : [note])])];
  return { formula, name, by, ...more, hydrates, remarks };
}

/** What shops sell under the word. */
function soldAs(text: string): Meaning[] {
  const shop = tryShopMaterial(text);
  const candidates: readonly ShopCandidate[] = shop.ok ? shop.value.candidates : [];
  return candidates.map((one) =>
    meaningOf(substance(one.formula), "shop name", {
      decides: one.usual ? `the usual form of ${one.soldAs}` : `another form of ${one.soldAs}`,
      usual: one.usual,
      ...(one.assay === undefined ? {} : { strength: one.assay }),
      remarks: [
        ...(one.formTrap === undefined ? [] : [one.formTrap]),
        ...(one.impurities.length === 0 ? [] : [`may contain ${one.impurities.join(", ")}`]),
      ],
    }),
  );
}

/** What the name rules and tables read. */
const named = (text: string): Meaning[] =>
  readingsOf(text).map(({ formula, decides, remarks, notes }) =>
    meaningOf(substance(formula), "name", {
      ...(decides === "" ? {} : { decides }),
      remarks: [...notes, ...remarks],
    }),
  );

/** What the text is as a formula; a word in capitals may be a name first. */
function written(text: string): Meaning[] {
  if (tryReadNotation(text) === undefined) return [];
  const read = tryParseFormula(text);
  return read.ok ? [meaningOf(substance(read.value), "formula", { remarks: read.value.remarks })] : [];
}

const NO_FORMULA = "a trade material, not a single substance: ask for what is in it";

const REGISTRY_NUMBER = /^\d{2,7}-\d{2}-\d$/;

/**
 * What a text from a label, a recipe or an input field may be: a formula in any spelling, a registry number, a systematic,
 * older or trade name, or a word of the shop. Nothing that can be read is refused; what cannot be read comes back with
 * no meanings and a hint.
 *
 * @param text - one line of at most 500 characters
 * @param options - `facts`: facts of the caller's own, looked up first
 * @returns all meanings, likeliest first, and the formula where they leave nothing open
 * @throws {SubstanceError} `substance.bad-input` for no text or an empty one, `substance.too-long`
 * @source tables of names and goods as {@link readingsOf} and {@link shopMaterial} say for each
 * @category Names
 * @example
 * identify("CuSO4 . 5 H2O").formula // => "CuSO4·5H2O"
 * identify("blue vitriol").formula // => "CuSO4·5H2O"
 * identify("washing soda").meanings.map((one) => one.formula) // => ["Na2CO3·10H2O", "Na2CO3·H2O", "Na2CO3"]
 * identify("vinegar").meanings[0]!.strength // => { lower: "40 g/L", upper: "60 g/L" }
 * identify("blue vitrol").hint // => "did you mean blue vitriol"
 * identify("lithopone").what // => "zinc sulfide precipitated with barium sulfate"
 */
export function identify(text: string, options?: LookupOptions): Identified {
  guard.options(options, LOOKUP);
  return lookingIn(options?.facts, guard, () => identified(text));
}

function identified(text: string): Identified {
  const asked = readableText(text, "a label, a name or a formula");
  if (REGISTRY_NUMBER.test(asked)) {
    const found = trySubstance(asked);
    return answer(
      asked,
      found.ok ? [meaningOf(found.value, "registry number")] : [],
      "no listed substance has this number",
    );
  }
  for (const { text: reading, remark } of spellings(asked)) {
    const meanings = meaningsOf(reading);
    if (meanings.length === 0) continue;
    const remarked =
      remark === undefined ? meanings : meanings.map((one) => ({ ...one, remarks: [remark, ...one.remarks] }));
    return answer(asked, remarked, undefined);
  }
  return answer(asked, [], hintFor(asked), goodNamed(asked)?.what);
}

/** The text, and what it may have been meant to be: water written apart, words in brackets after it. */
function* spellings(text: string): Generator<{ readonly text: string; readonly remark?: string }> {
  yield { text };
  const water = /^(\S+)\s+(\d+(?:\.\d+)?)?\s*H2O$/.exec(text);
  if (water !== null) {
    const dotted = `${water[1]}·${water[2] ?? ""}H2O`;
    yield { text: dotted, remark: `read as ${dotted}` };
  }
  const words = /^(.*\S)\s*\([^()]*\)$/.exec(text);
  if (words !== null) yield { text: words[1]!, remark: "the words in brackets were left out" };
  const label = withoutLabelWords(text);
  if (label !== undefined)
    yield { text: label.text, remark: `"${label.leftOut}" was left out: give the strength apart` };
}

function meaningsOf(text: string): Meaning[] {
  const formulas = written(text);
  if (formulas.length > 0 && !mayBeShortName(text)) return formulas;
  const names = named(text);
  // a name that says which form it is leaves no other form of the good; one that only resembles a good is no good
  const own = new Set(names.map(({ formula }) => formula));
  const goods = soldAs(text).filter(
    ({ formula }) => own.size === 0 || own.has(formula) || leavesWaterOut(names, formula),
  );
  const meanings = new Map<string, Meaning>();
  for (const one of [...goods, ...names]) {
    const known = meanings.get(one.formula);
    const remarks = [...new Set([...(known?.remarks ?? []), ...one.remarks])];
    meanings.set(one.formula, { ...(known ?? one), remarks });
  }
  return meanings.size > 0 ? [...meanings.values()] : formulas;
}

/** Is this a hydrate of the one dry salt that the words name? */
const leavesWaterOut = (names: readonly Meaning[], formula: string): boolean =>
  names.length === 1 && !names[0]!.formula.includes("·") && names[0]!.hydrates.includes(formula);

/** What the readers propose for a text that none of them reads. */
function hintFor(text: string): string | undefined {
  const name = tryFormulaOf(text);
  const formula = tryParseFormula(text);
  const shop = tryShopMaterial(text);
  const stated = [name, formula, shop].map((outcome) => (outcome.ok ? undefined : outcome.error.hint));
  // the nearest name where there is one, else what the reader of formulas knows of the text
  return (
    stated.find((hint) => hint?.startsWith("did you mean")) ?? (/\d/.test(text) ? stated[1] : undefined) ?? stated[0]
  );
}

function answer(text: string, meanings: readonly Meaning[], hint: string | undefined, what?: string): Identified {
  const [first, ...more] = meanings;
  const open = more.length > 0 ? "the pack, its price or a test decides: see distinguishMaterials" : undefined;
  const shown = first !== undefined ? open : what === undefined ? hint : NO_FORMULA;
  const found = {
    text,
    ...(first !== undefined && more.length === 0 ? { formula: first.formula } : {}),
    meanings,
    ...(what === undefined ? {} : { what }),
    ...(shown === undefined ? {} : { hint: shown }),
  };
  return frozen(printsItself(found, printed));
}

function printed({ text, meanings, what, hint }: Omit<Identified, "toString">): string {
  const lines = meanings.flatMap(({ formula, name, decides, strength, remarks }) => [
    `${formula}  ${name}${decides === undefined ? "" : ` (${decides})`}`,
    ...(strength === undefined ? [] : [`  usually ${strength.lower} to ${strength.upper}`]),
    ...remarks.map((remark) => `  ${remark}`),
  ]);
  return [
    text,
    ...(lines.length > 0 ? lines : [what ?? "not read"]),
    ...(hint === undefined ? [] : [`hint: ${hint}`]),
  ].join("\n");
}

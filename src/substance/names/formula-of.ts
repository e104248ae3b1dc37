// One formula for a name, or a refusal that says what the name leaves open and which names come near.

import { type Formula, parseFormula, tryParseFormula } from "../../formula";
import { withRemarks } from "../../formula/internal";
import { attempt, type Result } from "../../foundation/error";
import { slips } from "../../foundation/slips";
import { list } from "../../foundation/wording";
import { readNotation } from "../../ion/internal";
import { readableText, SubstanceError, type SubstanceRefusal } from "../error";
import { kinOf, registryNames } from "../registry/registry-index";
import { knownWords, splitWords } from "./name-words";
import { type ReadingOptions, readingsOf } from "./readings";
import { splitHydrate } from "./rule-readings";
import { MOST_NEAREST, nameKey, plainName } from "./words";

/** Names nearest to one that is not known: registry names, and the name with each word put right. */
export function nearestNames(name: string): string[] {
  const plain = plainName(name).name;
  const found: [number, string][] = [];
  const key = nameKey(plain);
  const limit = key.length < 5 ? 1 : 2;
  for (const [other, rows] of registryNames()) {
    const distance = slips(key, other, limit);
    if (distance <= limit) found.push([distance, rows[0]!.name]);
  }
  const mended = mendWords(plain);
  if (mended !== undefined && mended !== plain) found.push([0, mended]);
  return [...new Set(found.sort((a, b) => a[0] - b[0]).map(([, text]) => text))].slice(0, MOST_NEAREST);
}

/** The name with unknown words replaced by the nearest known ones, if that makes a name. */
export function mendWords(plain: string): string | undefined {
  const words = [...knownWords(), "hydrate", "acid", "ion"];
  const known = new Set(words);
  const mended = splitWords(plain).map((word) => {
    const bare = word.replace(/\(.*$/, "");
    if (known.has(bare) || bare.length < 4) return word;
    let best: [number, string] | undefined;
    for (const other of words) {
      const distance = slips(bare, other, 2);
      if (distance <= 2 && (best === undefined || distance < best[0])) best = [distance, other];
    }
    return best === undefined ? word : best[1] + word.slice(bare.length);
  });
  const text = mended.join(" ");
  return text !== plain && readingsOf(text).length > 0 ? text : undefined;
}

/** What the reader of formulas proposes for a text that looks like one: digits, or capitals only. */
function formulaHint(text: string): string | undefined {
  if (!/\d|^[A-Z]+$/.test(text)) return undefined;
  const read = tryParseFormula(text);
  return read.ok ? undefined : (read.error as { readonly hint?: string }).hint;
}

/** Is it written as a formula, with numbers or several capitals, and does it read as one? */
const isFormula = (text: string): boolean => /\d|[A-Z].*[A-Z]/.test(text) && tryParseFormula(text).ok;

/** What is wrong with a name that nothing reads. */
export function unknownNameError(text: string): SubstanceError {
  if (isFormula(text))
    return new SubstanceError("substance.unknown-name", `"${text}" is a formula already, not a name`, {
      input: text,
      hint: "nameOf gives its name; substance takes names and formulas",
      details: { nearest: [] },
    });
  const plain = plainName(text).name;
  const hydrate = splitHydrate(plain);
  if (hydrate !== undefined && hydrate.water === undefined) {
    const known = readingsOf(hydrate.core).flatMap(({ formula }) => kinOf(readNotation(formula)));
    const near = [...new Set(known)].filter((row) => row.formula.includes("·")).map((row) => row.name);
    return new SubstanceError("substance.unknown-name", `"${text}" does not say how much water`, {
      input: text,
      hint: near.length > 0 ? `known: ${near.join("; ")}` : "say monohydrate, dihydrate ...",
      details: { nearest: near },
    });
  }
  const near = nearestNames(text);
  return new SubstanceError("substance.unknown-name", `no rule or table reads "${text}"`, {
    input: text,
    hint:
      near.length > 0
        ? `did you mean ${list(near, "or")}`
        : (formulaHint(text) ?? "give the formula on the label, or its systematic name"),
    details: { nearest: near },
  });
}

/**
 * Formula of a name: systematic names by rule, older and trade names from the tables. A name with several meanings is
 * refused with all of them.
 *
 * @param name - such as "iron(III) sulfate nonahydrate", "cupric chloride", "blue vitriol", "sulfate ion"
 * @param options - `literal: true` takes an ambiguous trade name by the rules alone (magnesium carbonate is then MgCO3);
 * `facts`: facts of the caller's own, looked up first
 * @throws {SubstanceError} `substance.ambiguous-name` with the readings in `details`, `substance.unknown-name` with the nearest
 * names, `substance.bad-input`, `substance.too-long`
 * @source Nomenclature of Inorganic Chemistry, IUPAC Recommendations 2005; tables as {@link readingsOf}
 * @category Names
 * @example
 * formulaOf("iron(III) sulfate nonahydrate") // => Fe2(SO4)3.9H2O
 * formulaOf("dinitrogen pentoxide") // => N2O5
 * formulaOf("potassium hexacyanoferrate(II)") // => K4[Fe(CN)6]
 * formulaOf("magnesium carbonate", { literal: true }) // => MgCO3
 * formulaOf("copper sulfate").remarks // => ["a pack of this name may contain CuSO4·5H2O or CuSO4·H2O: the word leaves the water out"]
 */
export function formulaOf(name: string, options?: ReadingOptions): Formula {
  const text = readableText(name, "a name");
  const readings = readingsOf(text, options);
  if (readings.length === 1) return withRemarks(parseFormula(readings[0]!.formula), readings[0]!.remarks);
  if (readings.length === 0) throw unknownNameError(text);
  throw new SubstanceError("substance.ambiguous-name", `"${text}" stands for ${readings.length} substances`, {
    input: text,
    hint: readings.map((one) => `${one.formula} (${one.decides})`).join("; "),
    details: { readings },
  });
}

/**
 * As {@link formulaOf}, with the error returned instead of thrown.
 *
 * @category Names
 * @example
 * tryFormulaOf("soda").ok // => false
 */
export function tryFormulaOf(name: string, options?: ReadingOptions): Result<Formula, SubstanceRefusal> {
  return attempt(() => formulaOf(name, options));
}

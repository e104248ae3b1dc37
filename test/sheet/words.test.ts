// A translation is one object: with every fixed word replaced, no English is left on a sheet, a label or a run but what the
// plan and the run say themselves.
import {
  attempt,
  benchSheet,
  bottleLabel,
  type Chain,
  evaluateRun,
  identifyByMassLoss,
  type Plan,
  planPreparation,
  planSequence,
  type Run,
  type SheetWords,
} from "preparative";
import { describe, expect, it } from "vitest";
import { SHEETS } from "../../docs/examples/sheets";
import { DROPS } from "../../src/preparation/data/protection";
import { sheetWordsEnglish, WORD_KEYS } from "../../src/sheet/words";
import { labelByKin, officialPrecautions, officialText } from "../../src/substance/internal";

/** Not a language: each word turned round and each letter moved, so that one left in English shows. */
const turned = Object.fromEntries(
  WORD_KEYS.map((key) => [
    key,
    sheetWordsEnglish[key].replace(/[A-Za-z]+(?![^{]*\})/g, (word) => "ж".repeat(word.length)),
  ]),
) as SheetWords;

/** Every text that a value carries, however deep. */
function textsOf(value: unknown, found = new Set<string>(), seen = new Set<unknown>(), depth = 0): Set<string> {
  if (typeof value === "string") found.add(value);
  if (typeof value !== "object" || value === null || seen.has(value) || depth > 9) return found;
  seen.add(value);
  for (const key of Object.keys(value)) {
    const inner = (value as Record<string, unknown>)[key];
    if (typeof inner !== "function") textsOf(inner, found, seen, depth + 1);
  }
  return found;
}

const flat = (text: string): string => text.replace(/\s+/g, " ").toLowerCase();
/** Units, and the words between figures that belong to them. */
const UNITS = /\b(?:kg|mg|min|mol|ghs\d\d|doi|eur|m3|per hour|index \S+)\b/g;

/** What is left of a sheet without the texts of its subject. */
function leftOver(sheet: string, of: Plan | Run | Chain | string, more: readonly string[] = []): string[] {
  const own = typeof of === "string" ? [of] : [...textsOf(of)];
  // the longest first, or a short one leaves half of a long one
  const texts = [...own, ...more]
    .map((text) => flat(text).replace(/\.$/, ""))
    .filter((text) => /[a-z]{3}/.test(text))
    .sort((a, b) => b.length - a.length);
  let rest = flat(sheet.replace(/\\/g, ""));
  for (const text of texts) rest = rest.replaceAll(text, " ");
  return rest.replace(UNITS, " ").match(/[a-z]{3,}/g) ?? [];
}

const plans = Object.values(SHEETS).map((request) => planPreparation(request));
const own = (plan: Plan): string[] => [
  ...plan.weighings.map(({ form }) => form),
  // an acid that a step names is the plan's word
  ...DROPS.map(({ acid }) => acid),
  ...Object.values(plan.cautions).flatMap((one) => [...textsOf(one)]),
  // the statements of a label are a table of the law, not words of the sheet
  ...plan.cautions.substances.flatMap(({ statements }) => statements.map(({ code }) => officialText(code) ?? "")),
  // what an unlisted product has on its label is the first half of its caution
  labelByKin(plan.product.formula) ?? "",
  // what heat leaves of a formula is a formula, and how it is heated is known with it
  ...plan.candidates.flatMap(({ formula }) => {
    const found = attempt(() => identifyByMassLoss({ before: "2 g", after: "1 g", candidates: [formula] }));
    const [one] = found.ok ? found.value.candidates : [];
    return one === undefined ? [] : [one.residue, one.condition ?? ""];
  }),
  ...plan.cautions.substances.flatMap(({ statements }) =>
    officialPrecautions(statements.map(({ code }) => code)).map(({ text }) => text),
  ),
];

/** Sources are names of books: they stand as they are. */
const isWork = { parts: ["bench"] } as const;

describe.each(plans.map((plan) => [plan.title, plan] as const))("in other words: %s", (_, plan) => {
  it("the sheet", () => {
    expect(leftOver(benchSheet(plan, { words: turned, format: "markdown", ...isWork }), plan, own(plan))).toEqual([]);
  });

  it("the page for a class", () => {
    const sheet = benchSheet(plan, { words: turned, format: "markdown", groups: 4, ...isWork });
    expect(leftOver(sheet, plan, own(plan))).toEqual([]);
  });

  it("the sheet of a run, and its label", () => {
    const theory = plan.product.theoreticalYield.in("g").toNumber();
    const grams = (share: number): `${number} g` => `${Number((theory * share).toFixed(1))} g`;
    for (const dried of [[grams(0.95)], [grams(1.2), grams(1.1), grams(1.07)], [grams(0.9), grams(0.9)], []]) {
      const run = evaluateRun(plan, {
        dried,
        lost: dried.length === 2 ? [{ mass: "1 g" }] : [],
        tests: { lastWash: "negative" },
        pH: 7,
      });
      expect(leftOver(benchSheet(run, { words: turned, format: "markdown" }), run, own(plan))).toEqual([]);
      const label = bottleLabel(run, { words: turned, format: "markdown" });
      expect(leftOver(label, run, own(plan))).toEqual([]);
    }
    expect(leftOver(bottleLabel(plan, { words: turned, format: "markdown" }), plan, own(plan))).toEqual([]);
  });
});

describe("in other words", () => {
  it("a chain", () => {
    const chain = planSequence({
      steps: [
        {
          equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
          product: "CaCO3",
          productName: "chalk",
          materials: [
            { name: "de-icer", form: "CaCl2·2H2O", pack: { size: "1 kg", price: "3 EUR" } },
            { name: "soda ash", form: "Na2CO3", pack: { size: "1 kg", price: "2 EUR" } },
          ],
        },
        { equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }] },
      ],
      wanted: "10 g",
    });
    const sheet = benchSheet(chain, { words: turned, format: "markdown", ...isWork });
    expect(leftOver(sheet, chain, [String(chain), ...chain.plans.flatMap(own)])).toEqual([]);
  });

  it("pictures say the same", () => {
    for (const plan of plans) {
      const html = benchSheet(plan, { words: turned, format: "html" });
      const said = [...html.matchAll(/aria-label="([^"]*)"|<text[^>]*>([^<]*)</g)].map(([, a, b]) => a ?? b ?? "");
      expect(said.length).toBeGreaterThan(5);
      for (const text of said) expect(leftOver(text, plan, own(plan)), text).toEqual([]);
    }
  });
});

// No published preparation of the tables may be refused. What is said of each beyond "goes" is listed, with its reason.
import { attempt, doesItGo } from "preparative";
import { describe, expect, it } from "vitest";
import { BENCH_PREPARATIONS, requestOf } from "../../data/bench-preparations";
import { PREPARATIONS } from "../../data/preparations";

type Asked = Parameters<typeof doesItGo>[0];

/** Each step of each recipe as a question: forms, strengths, and the excess that was published. */
const questions: readonly (readonly [id: string, request: Asked])[] = [
  ...PREPARATIONS.flatMap(({ id, recipe, expected }): (readonly [string, Asked])[] => {
    const { equation, product } = recipe;
    // a chain of equations is asked step by step, for its first product
    if (Array.isArray(equation))
      return equation.map((step, i): readonly [string, Asked] => {
        const [, right] = step.split(" -> ") as [string, string];
        return [`${id} ${i + 1}`, { equation: step, product: right.split(" + ")[0]!.replace(/^\d+ /, "") }];
      });
    const used = new Set<string>();
    const materials = recipe.materials
      .filter((m) => m.aside !== true)
      .map(({ name, form, strength, density }, i) => {
        const one = (typeof form === "string" ? form : form![0]!) as string;
        const times = Number(expected.supplied[one]?.times ?? "1");
        const excess = times > 1 ? (`${((times - 1) * 100).toFixed(1)} %` as const) : undefined;
        const key = used.has(name ?? one) ? `${name ?? one} ${i}` : (name ?? one);
        used.add(key);
        return { name: key, form: one, strength, density, excess } as NonNullable<Asked["materials"]>[number];
      });
    return [[id, { equation: equation as string, product: product as string, materials }]];
  }),
  ...BENCH_PREPARATIONS.map((p): readonly [string, Asked] => [p.id, requestOf(p)]),
];

/** What is not simply "goes", and why it is right so. */
const OTHERWISE: Readonly<Record<string, readonly [verdict: string, why: string]>> = {
  "cu-basic-carbonate-soda-64g": [
    "goes in part",
    "the soda is 12 % short, and copper sulfate that is over makes a basic sulfate of a part of it",
  ],
  "cu-tetraammine-biltz-20g": [
    "goes in part",
    "just four ammonia for each copper: some hydroxide stays, more ammonia takes it",
  ],
  "cu-tetraammine-manual-5g": ["goes in part", "as above"],
  "cu-tetraammine": ["goes in part", "as above"],
  "fe-oxalate-5g": ["goes in part", "sulfuric acid is set free; the solubility product is doubtful"],
  "fe-oxalate": ["goes in part", "as above"],
  "cu-glycinate": ["goes in part", "acetic acid is set free; by the solubility of pure water it went"],
  "zn-oxide-via-carbonate-57g": [
    "another solid forms",
    "what precipitates is a carbonate: the oxide comes in the kiln",
  ],
  "mg-carbonate-light-bp-10oz": ["unknown", "no solubility product for this basic carbonate, which precipitates hot"],
  // was "unknown", and planned as work in water, in which chlorate leaves manganese dioxide alone
  "k-permanganate-1936": [
    "does not go",
    "its first half is a melt of solid lye, which no sheet of work in water can say",
  ],
  "sn-sulfide-45g": ["goes in part", "hydrochloric acid is set free: more water brings the rest down"],
  "ni-carbonate-soda": [
    "another solid forms",
    "in an open pot carbon dioxide leaves and the hydroxide is the end of it",
  ],
  "li-carbonate": ["goes in part", "hot water too keeps a fifth of it"],
  "li-carbonate-dilute": ["goes in part", "as above"],
  "nh4-chloride-swap": ["goes in part", "cooled to 20 °C sodium sulfate comes with it: stop warmer"],
  "cu-i-oxide-glucose": ["unknown", "potentials of sugars are in no table here"],
  "ni-dimethylglyoximate": ["unknown", "no constants of dimethylglyoxime"],
  "cr-trioxalate": ["unknown", "a complex that exchanges too slowly"],
  "co-hexaammine-chloride": ["unknown", "as above"],
  "co-chloropentaammine": ["unknown", "as above"],
  "co-carbonatotetraammine": ["unknown", "as above"],
  "cu-bisoxalate": [
    "goes in part",
    "with just two oxalates for each copper, copper oxalate stays beside it; they are used over",
  ],
  "pb-dioxide-minium": ["unknown", "no constants of lead(IV)"],
  "na-perborate": ["unknown", "no constants of perborate"],
};

/** Work that is known and published, and is not done in water. */
const MELTED = new Set(["k-permanganate-1936"]);

/** Forbidden combinations that their recipes need. */
const GATED = new Set(["cr-chrome-alum-1936", "cr-oxide-green-3g"]);

describe("the published preparations", () => {
  it.each(questions)("%s is not refused", (id, request) => {
    const outcome = attempt(() => doesItGo(request));
    if (!outcome.ok) {
      expect(GATED, outcome.error.message).toContain(id);
      expect(outcome.error.code).toBe("plan.forbidden-combination");
      return;
    }
    const { verdict, reasons } = outcome.value;
    if (!MELTED.has(id)) expect(verdict).not.toBe("does not go");
    else expect(reasons[0]!.text).toContain("in melted alkali, which is no work of this plan");
    expect(verdict, reasons.map(({ text }) => text).join("; ")).toBe(OTHERWISE[id]?.[0] ?? "goes");
  });

  it("are all there", () => {
    expect(questions.length).toBeGreaterThanOrEqual(140);
    const ids = new Set(questions.map(([id]) => id));
    for (const id of Object.keys(OTHERWISE)) expect(ids).toContain(id);
  });
});

// What people call their jars goes on paper as the words it is: it starts no line, heading, list, link or image, turns no
// writing round and commands no terminal.
import {
  benchSheet,
  bottleLabel,
  evaluateRun,
  type PlanRequest,
  planPreparation,
  solubilityDiagram,
} from "preparative";
import { describe, expect, it } from "vitest";

const EVIL = [
  "jar\n# heading",
  "jar\r\n\r\n1. step",
  "![p](http://tracker.invalid/p.png)",
  "[x](javascript:alert)",
  "jar ~~~ ``` > quote",
  "see www.tracker.invalid or https://tracker.invalid or me@tracker.invalid",
  "\u001B[31mred\u0007\u0000",
  "\u202Egnp.exe\u2066",
  "half \uD800 pair",
  "<img src=x onerror=alert(1)>",
  "&lt;b&gt; $x$",
  "=====",
  "- item",
];

const requestCalled = (name: string): PlanRequest => ({
  title: name,
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  productName: `p ${name}`,
  materials: [
    { name, form: "CaCl2·2H2O", note: name },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "20 g" },
});

const plain = planPreparation(requestCalled("jar"));
const linesOf = (text: string): number => text.split("\n").length;
/** Controls beside line feeds, separators, turned writing, halves of pairs. */
const UNFIT = /[\p{Cs}\u2028\u2029\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]|(?!\n)\p{Cc}/u;

describe.each(EVIL)("a jar called %j", (name) => {
  const plan = planPreparation(requestCalled(name));
  const run = evaluateRun(plan, { dried: "19 g", note: name });
  const sheets = [plan, run].flatMap((of) =>
    (["text", "markdown", "html"] as const).flatMap((format) => [
      benchSheet(of, { format }),
      bottleLabel(of, { format, owner: name, batch: name }),
    ]),
  );

  it("stays on its line, in every format", () => {
    for (const sheet of sheets) expect(UNFIT.exec(sheet)?.[0]).toBeUndefined();
    const [markdown, html] = [benchSheet(plan, { format: "markdown" }), benchSheet(plan, { format: "html" })];
    expect(linesOf(markdown)).toBe(linesOf(benchSheet(plain, { format: "markdown" })));
    expect(linesOf(html)).toBe(linesOf(benchSheet(plain, { format: "html" })));
  });

  it("is no markup", () => {
    const markdown = benchSheet(plan, { format: "markdown" }) + bottleLabel(run, { format: "markdown", owner: name });
    expect(markdown).not.toMatch(
      /(?<!\\)\](?:\(|\[)|(?<!\\)!\[|(?<!\\)<\w|(?<!\\):\/\/|(?<!\\)@|www\.|(?<!\\)\$|(?<!\\)```|(?<!\\)~~~/,
    );
    const headings = markdown.split("\n").filter((line) => /^#{1,6} /.test(line));
    expect(headings.filter((line) => line.includes("heading")).every((line) => line.includes("jar"))).toBe(true);
    expect(benchSheet(plan, { format: "html" })).not.toMatch(/<img|<b>/);
    expect(solubilityDiagram({ formulas: ["KNO3"], points: [{ celsius: 20, grams: 10, label: name }] })).not.toMatch(
      /<img|<b>|[\p{Cs}\u202A-\u202E\u2066-\u2069]|(?!\n)\p{Cc}/u,
    );
  });
});

describe("words of the sheet", () => {
  it("washes once and twice, not 1 times", () => {
    const once = planPreparation({ ...requestCalled("jar"), washing: { residue: "1 %" } });
    const wash = once.washing !== undefined && "plan" in once.washing ? once.washing.plan.washes : 0;
    expect(wash).toBe(1);
    expect(benchSheet(once)).toMatch(/Wash once with [\d.]+ mL of water, stirring/);
    expect(benchSheet(plain)).toMatch(/Wash twice with [\d.]+ mL of water each/);
  });

  it("writes one formula in one way", () => {
    const sheet = benchSheet(plain);
    expect(sheet).toContain("Na₂CO₃");
    expect(sheet).not.toMatch(/\b(?:Na2CO3|CaCl2|CaCO3)\b/);
  });
});

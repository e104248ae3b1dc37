// The sheet of a run: what was observed in the order of the work, how dry it is, and what came out, each by plain arithmetic
// on what was weighed. Chalk of 20.0 g in theory, a balance of 0.1 g.
import { benchSheet, bottleLabel, evaluateRun, type Observations, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const plan = planPreparation({
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  productName: "chalk",
  materials: [
    { name: "de-icer", form: "CaCl2·2H2O" },
    { name: "soda ash", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "20 g" },
});
const runOf = (seen: Observations) => evaluateRun(plan, seen);
const flat = (seen: Observations): string => benchSheet(runOf(seen)).replace(/\s+/g, " ");
const label = (seen: Observations): string => bottleLabel(runOf(seen)).replace(/\s+/g, " ");
/** The rows of the observations, as Markdown keeps them whole. */
const rows = (seen: Observations): string[] => {
  const lines = benchSheet(runOf(seen), { format: "markdown" }).replace(/\\/g, "").split("\n");
  const from = lines.indexOf("## Observations");
  return from < 0
    ? []
    : lines
        .slice(
          from,
          lines.findIndex((line, i) => i > from && line.startsWith("## ")),
        )
        .filter((line) => /^\| (?!Observation|---)/.test(line));
};

describe("losses on the way", () => {
  it("stand each in a row of their own, in the order of their words, whatever the order they were told in", () => {
    const floor = { mass: "2 g" } as const;
    const liquor = { at: "filter", of: "liquor", volume: "50 mL" } as const;
    const told = rows({ dried: "17 g", lost: [floor, liquor] });
    const lost = told.filter((line) => line.startsWith("| lost"));
    expect(lost).toHaveLength(2);
    expect([...lost].sort()).toEqual(lost);
    expect(lost[0]).toBe("| lost | 2.0 g of dry product was lost |");
    expect(rows({ dried: "17 g", lost: [liquor, floor] })).toEqual(told);
  });
});

describe("nothing weighed yet", () => {
  it("has neither result nor pictures, and says what to expect", () => {
    const text = flat({});
    expect(text).toContain("Verdict ------- No dry mass is recorded");
    expect(text).toContain("As weighed ---------- As planned. de-icer limits; theory 20.0 g of CaCO₃.");
    for (const heading of ["Result ---", "Observations ---", "What it is ---"]) expect(text).not.toContain(heading);
    expect(benchSheet(runOf({}), { format: "html" })).not.toContain("<svg");
    expect(label({})).toContain("mass: not weighed");
    expect(label({})).not.toMatch(/yield|assay/);
  });
});

describe("how dry it is", () => {
  it.each([
    // 19.4 - 19.0; 21.0 - 20.0 after 25.0 - 21.0 goes on by quarters: 20.0 - 1/4 / (1 - 1/4) = 19.7; 19.1 - 19.0
    [["19.0 g"], "19.0 g dry. One weighing says nothing about dryness", "19.0 g - "],
    [["19.0 g", "19.4 g"], "It gained 0.4 g: it absorbs water", "19.4 g, NOT at constant mass"],
    [
      ["25.0 g", "21.0 g", "20.0 g"],
      "the last two weighings differ by 1.0 g, more than 0.2 g. It goes to about 19.7 g.",
      "20.0 g, NOT at constant mass",
    ],
    [
      ["20.0 g", "19.0 g"],
      "the last two weighings differ by 1.0 g, more than 0.2 g. If",
      "19.0 g, NOT at constant mass",
    ],
    [
      ["19.1 g", "19.0 g"],
      "Constant mass: the last two weighings differ by 0.1 g, within 0.2 g.",
      "19.0 g, dried to constant mass",
    ],
    [
      ["19.0 g", "19.0 g"],
      "Constant mass: the last two weighings differ by less than 0.1 g",
      "19.0 g, dried to constant mass",
    ],
  ] as const)("of %j", (dried, says, onLabel) => {
    expect(flat({ dried })).toContain(says);
    expect(label({ dried })).toContain(onLabel);
  });

  it("and how wet the cake was, by what it lost in drying", () => {
    // (38.0 - 19.0) / 38.0, whatever is said of the dryness
    for (const dried of [["19.0 g"], ["19.0 g", "19.4 g"], ["19.1 g", "19.0 g"], ["20.0 g", "19.0 g"]] as const)
      expect(flat({ wetCake: "38.0 g", dried })).toMatch(/The wet cake was (?:50|49) % liquor\./);
    expect(flat({ dried: "19.0 g" })).not.toContain("liquor.");
  });
});

describe("what came out", () => {
  it("as share of the theory, in the table and on the label", () => {
    // 19.0 / 20.02
    expect(flat({ dried: "19.0 g" })).toMatch(/CaCO₃ 20\.0 g 94\.9 ± 0\.2 %/);
    expect(label({ dried: "19.0 g" })).toContain("yield 94.9 %");
  });

  it("pure, by titration of what was weighed", () => {
    // 19.0 g x 90 % = 17.1 g; / 20.02 = 85.4 %
    const seen = { dried: "19.0 g", assay: "90 %" } as const;
    expect(flat(seen)).toMatch(/By titration 17\.1(?: ± 0\.\d)? g of it is pure: 85\.4 ± [\d.]+ % of the theory\./);
    expect(label(seen)).toMatch(/pure: 17\.1(?: ± 0\.\d)? g/);
    expect(label(seen)).not.toContain("assay not measured");
    expect(label({ dried: "19.0 g" })).toContain("assay not measured, estimated");
  });

  it("after what was lost on the way", () => {
    // 20.0 - 2.0
    expect(flat({ dried: "17.0 g", lost: [{ of: "product", mass: "2.0 g" }] })).toMatch(
      /After what was lost on the way 18\.0(?: ± 0\.\d)? g was expected\./,
    );
    expect(flat({ dried: "17.0 g" })).not.toContain("lost on the way");
  });

  it("and what it is, where a test tells", () => {
    expect(flat({ dried: "19.0 g" })).not.toContain("What it is");
    // 2 mol of acid for 100.09 g: 20.0 mmol/g
    expect(flat({ dried: "19.0 g", acidPerGram: "20 mmol/g" })).toMatch(
      /What it is -+ The acid neutralised is that of CaCO₃\. Next: /,
    );
  });
});

describe("what was observed", () => {
  it("stands in the order of the work, whatever order it was recorded in", () => {
    const seen: Observations = {
      ignition: { before: "2.00 g", after: "1.12 g" },
      crops: ["10.0 g", { gross: "58.2 g", tare: "50.0 g" }],
      wetCake: "38 g",
      washes: 3,
      pH: 9,
      tests: { lastWash: "clear", filtrate: "cloudy" },
      filtrateVolume: "400 mL",
      temperature: "18 °C",
      assays: { "soda ash": "98 %", "de-icer": "97 %" },
      weighed: { "soda ash": "22.0 g", "de-icer": "29.5 g" },
      measured: { "de-icer": "150 mL" },
    };
    const expected = [
      "| weighed: de-icer | 29.5 g |",
      "| weighed: soda ash | 22.0 g |",
      "| measured: de-icer | 150 mL |",
      "| assay: de-icer | 97 % |",
      "| assay: soda ash | 98 % |",
      "| temperature at the filter | 18 °C |",
      "| test of the clear liquor | cloudy |",
      "| pH of the liquor | 9 |",
      "| volume of the filtrate | 400 mL |",
      "| washes done | 3 |",
      "| test of the last wash | clear |",
      "| wet cake | 38 g |",
      "| dry mass, crop 1 | 10.0 g |",
      "| dry mass, crop 2 | gross 58.2 g, tare 50.0 g |",
      "| ignition | 2.00 g before, 1.12 g after |",
    ];
    expect(rows(seen)).toEqual(expected);
    expect(rows(Object.fromEntries(Object.entries(seen).reverse()) as Observations)).toEqual(expected);
  });

  it("keeps weighings as they were read", () => {
    expect(rows({ dried: ["19.1 g", { gross: "69.0 g", tare: "50.0 g" }], acidPerGram: "20 mmol/g" })).toEqual([
      "| dry mass | 19.1 g; gross 69.0 g, tare 50.0 g |",
      "| acid per gram | 20 mmol/g |",
    ]);
    expect(rows({ dried: "19.1 g", assay: "95 %" })).toEqual([
      "| dry mass | 19.1 g |",
      "| assay of the product | 95 % |",
    ]);
  });

  it("moves the plan in a table of its own", () => {
    // 28.0 / 147.01 x 100.09 = 19.06 g of theory, against 29.4 g and 20.0 g as planned
    const text = benchSheet(runOf({ weighed: { "de-icer": "28.0 g" } }), { format: "markdown" });
    expect(text).toContain("| de-icer taken | 29.4 g | 28.0 g |");
    expect(text).toContain("| theoretical yield | 20.0 g | 19.1 g |");
    expect(text).not.toContain("As planned.");
  });
});

describe("the verdict", () => {
  it.each([[{ dried: "12.0 g" }], [{ dried: "26.0 g" }], [{ dried: ["26.0 g", "21.0 g"] }], [{}]] as [Observations][])(
    "of %j leads with the likeliest cause, then has each with its evidence and what is next",
    (seen) => {
      const run = runOf(seen);
      const text = flat(seen).toLowerCase();
      expect(text).toContain(`verdict ------- ${run.verdict[0]!.text.toLowerCase()}.`);
      const markdown = benchSheet(run, { format: "markdown" }).replace(/\\/g, "").toLowerCase();
      const places = run.verdict.map(({ text: evidence, next }) =>
        markdown.indexOf(`| ${evidence}. | ${next}. |`.toLowerCase()),
      );
      expect(places.every((place) => place > 0)).toBe(true);
      expect([...places].sort((a, b) => a - b)).toEqual(places);
    },
  );
});

describe("pictures of a run", () => {
  it("show each drying, what was found and what each formula would give", () => {
    const run = runOf({ dried: ["25.0 g", "21.0 g", "20.0 g"] });
    const html = benchSheet(run, { format: "html" });
    expect(html.match(/<circle/g)).toHaveLength(3);
    expect(html).toContain("Found 20.0 g; at 100 % yield CaCO₃: 20.0 g.");
    // nine tenths of the theory, as handling keeps
    expect(html).toContain("The mass should end between 18.0 g and 20.0 g.");
  });
});

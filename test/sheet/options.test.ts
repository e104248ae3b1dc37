// What a caller may ask of paper: parts, pages, a fragment, rules of its own, another language; chains, runs and labels.
import { benchSheet, bottleLabel, evaluateRun, planPreparation, planSequence, type SheetWords } from "preparative";
import { describe, expect, it } from "vitest";
import { sheetWordsEnglish, WORD_KEYS } from "../../src/sheet/words";

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
const code = (run: () => unknown): unknown => {
  try {
    return run();
  } catch (error) {
    return (error as { code?: string }).code;
  }
};

describe("parts", () => {
  it("leave the ground to a page of its own", () => {
    const bench = benchSheet(plan, { parts: ["bench"] });
    const basis = benchSheet(plan, { parts: ["basis"] });
    expect(bench).toContain("\nProcedure\n");
    expect(bench).not.toContain("\nSources\n");
    expect(basis).toContain("\nSources\n");
    expect(basis).not.toContain("\nProcedure\n");
    expect(code(() => benchSheet(plan, { parts: ["all" as "bench"] }))).toBe("sheet.bad-option");
  });
});

describe("HTML", () => {
  it("is for the paper that is asked for", () => {
    expect(benchSheet(plan, { format: "html" })).toContain("size:A4");
    expect(benchSheet(plan, { format: "html", page: "Letter" })).toContain("size:Letter");
    expect(code(() => benchSheet(plan, { page: "A5" as "A4" }))).toBe("sheet.bad-option");
  });

  it("is a fragment on request, under one class", () => {
    const fragment = benchSheet(plan, { format: "html", standalone: false });
    expect(fragment.startsWith('<article class="bench-sheet">')).toBe(true);
    expect(fragment).not.toContain("<html");
  });

  it("takes rules of the caller, which cannot end their element", () => {
    const own = ".bench-sheet h1{color:navy}</style><script>alert(1)</script>";
    for (const standalone of [true, false]) {
      const html = benchSheet(plan, { format: "html", stylesheet: own, standalone });
      expect(html).toContain(".bench-sheet h1{color:navy}");
      expect(html.match(/<\/style>/g)).toHaveLength(1);
    }
  });
});

describe("words", () => {
  it("are one object: a second language leaves no English heading", () => {
    // Not a language: each word turned round, so that one left in English shows.
    const turned = Object.fromEntries(
      WORD_KEYS.map((key) => [
        key,
        sheetWordsEnglish[key].replace(/[A-Za-z]+(?![^{]*\})/g, (word) => [...word].reverse().join("").toLowerCase()),
      ]),
    ) as SheetWords;
    const text = benchSheet(plan, { words: turned });
    for (const key of [
      "hazards",
      "ready",
      "weigh",
      "procedure",
      "drying",
      "wasteOf",
      "assumptions",
      "sources",
    ] as const) {
      expect(text).toContain(`\n${turned[key]}\n`);
      expect(text).not.toContain(`\n${sheetWordsEnglish[key]}\n`);
    }
  });

  it("are refused where nobody knows them", () => {
    expect(code(() => benchSheet(plan, { words: { hazrds: "x" } as never }))).toBe("sheet.unknown-option");
    expect(code(() => benchSheet(plan, { words: { hazards: 5 } as never }))).toBe("sheet.bad-option");
  });
});

describe("a run", () => {
  it("leads with the verdict as a sentence", () => {
    const run = evaluateRun(plan, { dried: ["19.9 g", "19.2 g", "19.2 g"] });
    const text = benchSheet(run);
    expect(text.indexOf("\nVerdict\n")).toBeLessThan(text.indexOf("\nAs weighed\n"));
    expect(benchSheet(run, { format: "html" }).match(/<circle/g)).toHaveLength(3);
  });
});

describe("a chain", () => {
  it("is a shopping list and a sheet for each preparation", () => {
    const chain = planSequence({
      steps: [
        {
          equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
          product: "CaCO3",
          productName: "chalk",
          materials: [
            { name: "de-icer", form: "CaCl2·2H2O" },
            { name: "soda ash", form: "Na2CO3" },
          ],
        },
        { equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }] },
      ],
      wanted: "10 g",
    });
    const text = benchSheet(chain, { parts: ["bench"] });
    expect(text).toContain("\nShopping list\n");
    expect(text.match(/\nProcedure\n/g)).toHaveLength(2);
    // 10 g of CaO needs 17.85 g of chalk, weighed as 17.8 g; 17.8 g / 100.086 x 147.008 = 26.15 g, to 0.1 g 26.1 g
    expect(text.replace(/\s+/g, " ")).toMatch(/de-icer CaCl₂·2H₂O 26\.1 g 1/);
  });
});

describe("a label", () => {
  it("is for any substance, by name or formula, with the signal word of its strength", () => {
    expect(bottleLabel("blue vitriol", { content: "250 g" }).split("\n")[0]).toBe("CuSO₄·5H₂O");
    expect(bottleLabel("CuSO4·5H2O")).toContain("DANGER");
    expect(bottleLabel("CuSO4·5H2O")).toContain("assay not measured");
    // Annex VI of CLP: acetic acid below 10 % carries no statement
    expect(bottleLabel("CH3COOH", { strength: "5 %" })).not.toMatch(/DANGER|WARNING/);
    expect(bottleLabel("CH3COOH", { strength: "80 %" })).toContain("DANGER");
  });

  it("is a page of its own size, with its pictograms", () => {
    const large = bottleLabel("CuSO4·5H2O", { format: "html" });
    expect(large).toContain("@page{size:100mm 62mm");
    expect(large.match(/class="pictogram"/g)).toHaveLength(3);
    expect(bottleLabel("CuSO4·5H2O", { format: "html", size: "60 x 30 mm" })).toContain("@page{size:60mm 30mm");
    expect(code(() => bottleLabel("CuSO4·5H2O", { size: "A4" as "60 x 30 mm" }))).toBe("sheet.bad-option");
    expect(code(() => bottleLabel("CuSO4·5H2O", { content: "5 °C" as "5 g" }))).toBe("quantity.wrong-dimension");
  });
});

describe("a class", () => {
  const packed = planPreparation({
    ...plan.request,
    materials: [
      { name: "de-icer", form: "CaCl2·2H2O", pack: { size: "100 g", price: "2 EUR" } },
      { name: "soda ash", form: "Na2CO3", excess: "5 %" },
    ],
  });

  it("has the amounts of one group and of all, and whole packs", () => {
    const sheet = benchSheet(packed, { groups: 8, parts: ["bench"] });
    expect(sheet.split("\n")[0]).toBe("Class of 8 groups: chalk from de-icer and soda ash");
    // 20 g of CaCO3 / 100.086 x 147.01 = 29.4 g; x 8 = 235.2 g, three packs of 100 g
    expect(sheet).toMatch(/de-icer\s+CaCl₂·2H₂O\s+29\.4 g\s+235\.2 g\s+3 of 100 g/);
    // 20 / 100.086 x 105.99 x 1.05 = 22.2 g, rounded up to 22.3 g; x 8
    expect(sheet).toMatch(/soda ash\s+Na₂CO₃\s+22\.3 g\s+178\.4 g/);
    expect(sheet).toContain("[ ] 8 x balance, 0.1 g steps");
    expect(sheet.match(/\nProcedure\n/g)).toHaveLength(1);
    expect(sheet).toContain("Group ________ Date ________");
  });

  it("has the water of one group and of all, by what the steps take", () => {
    // what is put in without anything dissolved in it, and the water of every wash of a step, which its words count
    const TIMES: Readonly<Record<string, number>> = { once: 1, twice: 2 };
    const grams = packed.steps.flatMap(({ operation, put, amounts, text }) =>
      operation === "wash" || operation === "rinse"
        ? amounts.map((one) => {
            const [, word = "", count = ""] = /^Wash (\w+)(?: times)?|(\d+) times/.exec(text) ?? [];
            return one.toNumber(one.dimension === "volume" ? "mL" : "g") * (TIMES[word] ?? Number(word || count));
          })
        : put
            .filter(({ solids, dissolved }) => solids.length + dissolved.length === 0)
            .map(({ water }) => water.toNumber("g")),
    );
    const water = grams.reduce((sum, one) => sum + one, 0);
    expect(water).toBeGreaterThan(100);
    const [, one, all] = /water, washing included\s+H₂O\s+(\d+) mL\s+([\d.]+) (?:m?L)/.exec(
      benchSheet(packed, { groups: 3, parts: ["bench"] }),
    )!;
    expect(Math.abs(Number(one) - water)).toBeLessThanOrEqual(5);
    expect(Math.abs(Number(all) * (Number(all) < 10 ? 1000 : 1) - 3 * water)).toBeLessThanOrEqual(15);
  });

  it("tells the teacher what is made and what to do with the page", () => {
    const lines = benchSheet(packed, { groups: 3 }).split("\n");
    expect(lines[2]).toBe(packed.equation.toUnicode());
    expect(lines.slice(3, 5).join(" ")).toBe(sheetWordsEnglish.classLine);
  });

  it("has a row with blanks for each group, by number or by name", () => {
    const rows = (groups: number | readonly string[]): string[] => {
      const sheet = benchSheet(packed, { groups, format: "markdown", parts: ["bench"] });
      const from = sheet.indexOf("## Results of the groups");
      return sheet
        .slice(from, sheet.indexOf("\n# ", from))
        .split("\n")
        .filter((line) => /^\| (?!Group|-)/.test(line));
    };
    expect(rows(3).map((row) => row.split(" | ")[0])).toEqual(["| 1", "| 2", "| 3"]);
    expect(rows(["red", "blue"]).map((row) => row.split(" | ")[0])).toEqual(["| red", "| blue"]);
    // a blank for each portion, the dry mass, the yield and remarks
    expect(rows(3)[0]!.match(/\\_\\_/g)!.length / 4).toBe(2 + 3);
  });

  it("is refused where there are no groups, or no plan", () => {
    for (const groups of [0, 61, 2.5, [], "8"] as never[])
      expect(code(() => benchSheet(packed, { groups }))).toBe("sheet.bad-option");
    expect(code(() => benchSheet(packed, { groups: [5] as never }))).toBe("sheet.bad-option");
    expect(code(() => benchSheet(evaluateRun(packed, {}), { groups: 3 }))).toBe("sheet.bad-option");
  });
});

describe("what the mass says", () => {
  it("of crystals is judged by the crop that cooling brings, not by all there is", () => {
    const iron = planPreparation({
      equation: "Fe + H2SO4 + H2O -> FeSO4·7H2O + H2",
      product: "FeSO4·7H2O",
      materials: [
        { name: "steel wool", form: "Fe" },
        { name: "battery acid", form: "H2SO4", strength: "37 % w/w", excess: "5 %" },
      ],
      scale: { material: "steel wool", portion: "20.0 g" },
    });
    const text = benchSheet(iron);
    // 54.4 g dry in 100.9 g of water, saturated below the change of the hydrate; in ice, at 5 °C, 17.9 g stays in 100 g of it:
    // 54.4 - 0.546 x = 0.179 (100.9 - 0.454 x), x = 78.1 g. 15.6 g of ice water dissolves y of them with their water:
    // 0.546 y = 0.157 (15.6 + 0.454 y), y = 5.2 g. Of the 2.8 g dry in the liquor that clings, 15.6 mL, and the 2.8 g of those, two portions of half
    // of it leave 1 / 1.5² = 44 %, 4.6 g with its water: 77.5 g, less a tenth on the filters
    expect(text).toMatch(/Weigh the dry FeSO₄·7H₂O: about 77\.5 g\s+expected/);
    expect(text).toMatch(/less than 69\.7 g\s+more was lost than handling explains/);
    expect(text).toMatch(/Expected dry product\s+69\.7 to 77\.5 g, blue-green \(100 % = 99\.6 g\)/);
  });

  it("of what was fired allows for what stays in it unchanged", () => {
    const lime = planPreparation({
      equation: "CaCO3 -> CaO + CO2",
      product: "CaO",
      materials: [{ name: "marble", form: "CaCO3", assay: "97 %" }],
      scale: { material: "marble", portion: "100.0 g" },
    });
    // 97 g give 54.3 g of CaO; 3 g of something else may stay with it
    expect(benchSheet(lime)).toMatch(/more than 57\.3 g\s+not heated through: heat again/);
  });
});

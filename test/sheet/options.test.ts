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

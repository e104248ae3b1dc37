import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { benchSheet, evaluateRun, type Plan, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const plan = planPreparation({
  title: "Chalk <white> & fine",
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "de-icer", form: "CaCl2·2H2O", assay: "95 %", note: "assay invented" },
    { name: "soda ash", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "20 g" },
});

describe("the bench sheet", () => {
  it("keeps to 78 columns as text", () => {
    for (const of of [plan, evaluateRun(plan, { weighed: { "soda ash": "30 g" }, dried: "25 g" })]) {
      for (const line of benchSheet(of).split("\n")) expect([...line].length).toBeLessThanOrEqual(78);
    }
  });

  it("has what a person needs, in bench order", () => {
    const text = benchSheet(plan);
    const headings = [
      "Hazards and protection",
      "Have ready",
      "Weigh and measure",
      "Procedure",
      "Drying record",
      "Result",
      "What the mass says",
      "Waste and by-products",
      "Expected yield",
      "Cost",
      "Sources",
    ];
    const at = headings.map((h) => text.indexOf(`\n${h}\n`));
    expect(at.every((x) => x > 0)).toBe(true);
    expect([...at].sort((a, b) => a - b)).toEqual(at);
    expect(text).toContain("safety data sheet");
    expect(text).toContain("assay invented");
    expect(text).toContain("The cost of the batch is unknown: price of de-icer; price of soda ash missing.");
  });

  it("says what the kind of work is watched for, what was assumed, and how the waste is treated", () => {
    const steel = planPreparation({
      equation: "Fe + H2SO4 + H2O -> FeSO4·7H2O + H2",
      product: "FeSO4·7H2O",
      materials: [
        { name: "steel wool", form: "Fe" },
        { name: "battery acid", form: "H2SO4", strength: "37 % w/w", excess: "10 %" },
      ],
      scale: { material: "steel wool", portion: "20 g" },
    });
    const text = benchSheet(steel).replace(/\s+/g, " ");
    for (const { text: check } of steel.checks) expect(text).toContain(check.slice(1));
    const ofTheWork = steel.stepCautions.flatMap((s) => s.cautions.filter((one) => one.about === undefined));
    expect(ofTheWork.length).toBeGreaterThan(3);
    for (const caution of ofTheWork) expect(text).toContain(caution.text.slice(1));
    // a table of text folds its cells; Markdown keeps them whole
    const rows = benchSheet(steel, { format: "markdown" });
    for (const { value, what } of steel.assumptions) {
      expect(rows).toContain(`| ${value.replace(" /h", " per hour")} | ${what} |`);
    }
    expect(text).toContain("solubility of FeSO₄: CRC Handbook");
    expect(steel.waste.treatment.map((t) => t.reagent)).toEqual(["Na2CO3"]);
    expect(text).toContain("of Na₂CO₃ (anhydrous) neutralises or precipitates Fe and acid");
  });

  it("tells that dissolving washing soda crystals chills the water", () => {
    const washing = planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2" },
        { name: "washing soda", form: "Na2CO3·10H2O" },
      ],
      scale: { product: "20 g" },
    });
    const text = benchSheet(washing).replace(/\s+/g, " ");
    expect(text).toMatch(/Dissolve the de-icer in .* it warms by about \d+ K/);
    expect(text).toMatch(/Dissolve the washing soda in .* it cools by about \d+ K/);
  });

  it("escapes what HTML and Markdown would swallow", () => {
    expect(benchSheet(plan, { format: "html" })).toContain("<h1>Chalk &lt;white&gt; &amp; fine</h1>");
    expect(benchSheet(plan, { format: "markdown" })).toContain("# Chalk \\<white\\> & fine");
    expect(benchSheet(plan, { format: "html" })).not.toContain("<white>");
  });

  it("writes balanced HTML", () => {
    const stack: string[] = [];
    expect(
      [...benchSheet(plan, { format: "html" }).matchAll(/<(\/?)([a-z0-9]+)[^>]*>/g)].length,
      "rows to test",
    ).toBeGreaterThan(0);
    for (const [whole, slash, tag] of benchSheet(plan, { format: "html" }).matchAll(/<(\/?)([a-z0-9]+)[^>]*>/g)) {
      if (tag === "meta" || whole.endsWith("/>")) continue;
      if (slash === "") stack.push(tag!);
      else expect(stack.pop()).toBe(tag);
    }
    expect(stack).toEqual([]);
  });

  it("refuses what is no sheet, by code", () => {
    expect(() => benchSheet(plan, { format: "pdf" as "text" })).toThrow(
      expect.objectContaining({ code: "sheet.format" }),
    );
    expect(() => benchSheet({} as Plan)).toThrow(expect.objectContaining({ code: "sheet.subject" }));
  });

  it("the demo prints one page from the public names alone, and writes the whole sheets where asked", {
    timeout: 60_000,
  }, () => {
    const root = fileURLToPath(new URL("../..", import.meta.url));
    const folder = mkdtempSync(join(tmpdir(), "preparative-demo-"));
    const text = execFileSync("npm", ["run", "--silent", "demo", "--", folder], { cwd: root, encoding: "utf8" });
    // a page of text has some 66 lines of a little over an inch for six
    expect(text.split("\n").length).toBeLessThan(80);
    for (const part of [
      "ZnSO₄·H₂O",
      "Procedure",
      "What the mass says",
      "a yield of 95.9 %",
      "zinc acetate",
      "invented",
    ])
      expect(text).toContain(part);
    expect(readFileSync(join(folder, "zinc-acetate.html"), "utf8")).toContain("Zinc acetate dihydrate");
    expect(readFileSync(join(folder, "basic-zinc-carbonate-run.html"), "utf8")).toContain("Verdict");
    expect(readFileSync(join(folder, "theoretical-yield.txt"), "utf8")).toContain(
      "m_th(Zn₅(CO₃)₂(OH)₆) = n(Zn₅(CO₃)₂(OH)₆) × M(Zn₅(CO₃)₂(OH)₆)",
    );
    rmSync(folder, { recursive: true });
  });

  // GHS, Annex 3: response statements of H314 and H318 (eyes, skin, mouth), as the cautions give them by code.
  it("says the first aid for what is handled, at the strength that is used, and none for table salt", () => {
    const salt = { equation: "NaCl -> NaCl", product: "NaCl", scale: { product: "10 g" } } as const;
    const sheet = (request: PlanRequest) =>
      benchSheet(planPreparation(request), { parts: ["bench"] }).replace(/\s+/g, " ");
    const acid = sheet({
      equation: "Zn + H2SO4 -> ZnSO4 + H2",
      product: "ZnSO4·7H2O",
      materials: [
        { name: "zinc", form: "Zn" },
        { name: "battery acid", form: "H2SO4", strength: "37 %", density: "1.28 g/mL" },
      ],
      scale: { product: "10 g" },
    });
    expect(acid).toContain("First aid: in the eyes: rinse at once with running water for 15 minutes");
    expect(acid).toContain("on the skin: take wet clothes off at once");
    expect(sheet({ ...salt, materials: [{ name: "salt", form: "NaCl" }] })).not.toContain("First aid");
  });

  // What a reader of three sheets missed: heat, rinse, empty vessels, the volume of what is weighed, how much alcohol.
  it("names what the work takes: heat, rinse, vessels weighed empty, alcohol by its portion", () => {
    const flat = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");
    const saltpetre = flat({
      equation: "KNO3 -> KNO3",
      product: "KNO3",
      materials: [{ name: "old saltpetre", form: "KNO3", assay: "94 %" }],
      scale: { material: "old saltpetre", portion: "300 g" },
    });
    for (const item of ["hot plate or water bath, no flame", "mL of rinse, cold (step 6)"])
      expect(saltpetre).toContain(`[ ] ${item}`.replace("[ ] mL", "mL"));
    expect(saltpetre).toContain("[ ] goggles");
    // saltpetre in water for its filter comes in ice, and leaves too little for a second crop
    const vitriol = flat({
      equation: "CuSO4·5H2O -> CuSO4·5H2O",
      product: "CuSO4·5H2O",
      materials: [{ name: "old blue vitriol", form: "CuSO4·5H2O", assay: "98 %" }],
      scale: { material: "old blue vitriol", portion: "50 g" },
    });
    expect(vitriol).toContain("[ ] dish for the mother liquor, weighed empty");
    expect(vitriol).toMatch(/boil the mother liquor down to [\d.]+ g .*? empty vessel ________ g/);
    const ammine = flat({
      equation: "CuSO4 + 4 NH3 + H2O -> Cu(NH3)4SO4·H2O",
      product: "Cu(NH3)4SO4·H2O",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "ammonia water", form: "NH3", strength: "25 %", excess: "20 %" },
        { name: "alcohol", form: "C2H5OH", aside: true, portion: "60 mL" },
      ],
      scale: { material: "blue vitriol", portion: "25 g" },
    });
    expect(ammine).toContain("Add the 60 mL of alcohol slowly");
    // 32.8 g of 25 % ammonia at 0.91 g/mL (handbooks) is 36 mL
    expect(ammine).toContain("ammonia water: 25 % by mass; 32.8 g is 36 mL");
  });
});

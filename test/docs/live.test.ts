// The live page of the reference: what its inputs answer, and that it asks nothing of any other place. The answers are
// those of the library; here stands that they reach the page. Seen in a browser by hand.
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { aboutEquation, aboutFormula, aboutMixture, aboutPreparation, mixtureOf } from "../../docs/live/answers";

const page = readFileSync(new URL("../../docs/live/index.html", import.meta.url), "utf8");

describe("the live page", () => {
  it("loads its own script and nothing else", () => {
    expect([...page.matchAll(/(?:src|href)="([^"]*)"/g)].map(([, to]) => to)).toEqual([
      "data:,",
      "../index.html",
      "page.js",
    ]);
    expect(page).not.toMatch(/https?:|@import|url\(/);
  });

  it("labels every input", () => {
    const ids = [...page.matchAll(/<(?:input|textarea) id="([^"]*)"/g)].map(([, id]) => id!);
    expect(ids.length).toBe(7);
    for (const id of ids) expect(page).toContain(`<label for="${id}">`);
  });

  it("tells a formula, a shop word, and where a formula goes wrong", () => {
    expect(aboutFormula("ZnSO4·7H2O")).toContain("287.541");
    expect(aboutFormula("ZnSO4·7H2O")).toContain("counted as ZnSO<sub>4</sub>");
    expect(aboutFormula("washing soda")).toContain("Na<sub>2</sub>CO<sub>3</sub>·10H<sub>2</sub>O");
    expect(aboutFormula("CaX")).toContain("<pre>CaX\n  ^</pre>");
    expect(aboutFormula("blue vitrol")).toContain("did you mean blue vitriol");
  });

  it("balances, shows how, and waits for the end of an equation", () => {
    expect(aboutEquation("Fe + O2 -> Fe2O3")).toContain("4 Fe + 3 O<sub>2</sub>");
    expect(aboutEquation("Fe + O2 -> Fe2O3")).toContain("How the coefficients follow");
    expect(aboutEquation("Fe + O2 ->")).toContain('class="unfinished"');
    expect(aboutEquation("Fe + O2 -> Fe2S3")).toContain('class="refused"');
  });

  it("reads a mixture by formula and by name", () => {
    expect(mixtureOf("600 mL water\n28.7 g ZnSO4·7H2O\n0.1 mol table salt")).toEqual({
      water: "600 mL",
      dissolved: [
        { formula: "ZnSO4·7H2O", mass: "28.7 g" },
        { formula: "NaCl", amount: "0.1 mol" },
      ],
    });
    expect(aboutMixture("1 kg water\n0.1 mol HCl")).toMatch(/pH 1\.[01]/);
    expect(aboutMixture("one spoon of salt")).toContain('class="refused"');
  });

  it("writes a whole sheet, or says why not", () => {
    const form = {
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: "moss killer; ZnSO4·7H2O; 98 %\nwashing soda; Na2CO3·10H2O",
      amount: "50 g",
    };
    expect(aboutPreparation(form).sheet).toMatch(/^<!doctype html>/);
    expect(aboutPreparation({ ...form, amount: "much" }).refused).toContain("quantity.");
  });

  it("lets no text of a visitor become markup", () => {
    for (const text of ["<img src=x>", "a <b>", '"><script>'])
      for (const about of [aboutFormula, aboutEquation, aboutMixture])
        expect(about(text)).not.toMatch(/<img|<b>|<script/);
  });
});

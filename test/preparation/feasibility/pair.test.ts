// Which of all the salts of a liquor crystallises: solubilities of the tables, g/100 g of water (KNO3 32 at 20 °C, 169 at 80;
// NaCl 36 and 38; NaNO3 88 and 148; KCl 34 and 51). Known practice beside each.
import { doesItGo } from "preparative";
import { describe, expect, it } from "vitest";

const ask = (equation: string, product: string) => doesItGo({ equation, product });

describe("a salt pair", () => {
  it("gives saltpetre in the cold whichever pair goes in", () => {
    expect(ask("NaNO3 + KCl -> KNO3 + NaCl", "KNO3").verdict).toBe("goes");
    const back = ask("KNO3 + NaCl -> NaNO3 + KCl", "NaNO3");
    expect(back.solids[0]!.formula.normalize("NFKC")).toBe("KNO3");
    expect(back.reasons[0]!.code).toBe("salt-pair");
    // what each 1 mol of begins to precipitate at: 101.1 g / 0.316 = 320 g of water alone; 1 mol of potassium and of nitrate the same
    const water = back.reasons.find(({ numbers }) => /below which KNO3/.test(numbers[0]?.label ?? ""))!.numbers[0]!;
    expect(water.in("g").toNumber()).toBeGreaterThan(300);
    expect(water.in("g").toNumber()).toBeLessThan(340);
  });

  it("gives the salt that precipitates first when it is boiled down", () => {
    expect(ask("NaNO3 + KCl -> KNO3 + NaCl", "NaCl").verdict).toBe("goes");
  });

  it("gives the double salt that is less soluble than both its halves", () => {
    for (const [equation, product] of [
      ["K2SO4 + Al2(SO4)3 + H2O -> KAl(SO4)2·12H2O", "KAl(SO4)2·12H2O"],
      ["FeSO4 + (NH4)2SO4 + H2O -> (NH4)2Fe(SO4)2·6H2O", "(NH4)2Fe(SO4)2·6H2O"],
    ] as const)
      expect(ask(equation, product).verdict, product).toBe("goes");
  });

  it("gives a molecule that is no salt: boric acid, 5 g in 100 g, before salt", () => {
    const { verdict, reasons } = ask("Na2B4O7 + HCl + H2O -> H3BO3 + NaCl", "H3BO3");
    expect(verdict).toBe("goes");
    // 61.8 g / 0.05 and, for half a mole of sodium and of chloride, 29.2 g / 0.36
    expect(reasons.some(({ text }) => /: H₃BO₃ below 1200 g, NaCl below 81 g$/.test(text))).toBe(true);
    // and by the handbook's 5.0 g of it in 100 g of water, of 6.2 g of acid all but 1.3 g comes from 25.7 g
    expect(reasons[0]!.text).toMatch(/25\.7 g of water .* cooled to 20 °C, 4\.8\d g of H₃BO₃ crystallises/);
  });

  it.each(["B2O3 + H2O -> H3BO3", "BCl3 + H2O -> H3BO3 + HCl"])(
    "is none where no salt is in the liquor: %s",
    (equation) => {
      expect(ask(equation, "H3BO3").reasons.map(({ code }) => code)).not.toContain("salt-pair");
    },
  );

  it("counts the acid that is over: two chlorides for one sodium", () => {
    const materials = [
      { name: "borax", form: "Na2B4O7·10H2O" },
      { name: "acid", form: "HCl", strength: "20 %", excess: "100 %" },
    ] as const;
    const { reasons } = doesItGo({ equation: "Na2B4O7 + HCl + H2O -> H3BO3 + NaCl", product: "H3BO3", materials });
    // 35.9 g of NaCl in 100 g of water are 6.14 mol/kg: √(0.5 × 1.0) / 6.14 = 0.115 kg
    expect(reasons.some(({ text }) => /NaCl below 120 g$/.test(text))).toBe(true);
  });

  it.each([
    ["NaOH + HCl -> NaCl + H2O", "NaCl", "HCl"],
    ["NaOH + HCl -> NaCl + H2O", "NaCl", "NaOH"],
    ["Na2O + HCl -> NaCl + H2O", "NaCl", "Na2O"],
  ])("is none with acid, lye or an oxide of the same metal over: %s, %s, excess of %s", (equation, product, over) => {
    const materials = equation
      .split(" -> ")[0]!
      .split(" + ")
      .map((form) => ({
        name: form,
        form,
        ...(form === "HCl" ? { strength: "20 %" as const } : {}),
        ...(form === over ? { excess: "100 %" as const } : {}),
      }));
    const { verdict, reasons } = doesItGo({ equation, product, materials });
    expect(verdict).toBe("goes");
    expect(reasons.map(({ code }) => code)).not.toContain("salt-pair");
  });

  it("is the soda process: of four salts sodium bicarbonate dissolves least", () => {
    expect(ask("NaCl + NH4HCO3 -> NaHCO3 + NH4Cl", "NaHCO3").verdict).toBe("goes");
  });

  it("says which double salt has no figures", () => {
    const f = ask("KCl + Na2SO4 -> K2SO4 + NaCl", "K2SO4");
    expect(f.verdict).toBe("unknown");
    expect(f.reasons[0]!.text).toMatch(/double salt .*missing: its solubility/);
  });
});

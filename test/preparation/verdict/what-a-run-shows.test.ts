// What a run says of a material that ran out, of salts that were not washed out and of salts that crystallise with the product.
// Masses by hand from molar masses (IUPAC weights): 287.54 for ZnSO4·7H2O, 105.99 for Na2CO3, 548.9 for Zn5(CO3)2(OH)6.
import { evaluateRun, type Finding, type Observations, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const found = (request: PlanRequest, observations: Observations): readonly Finding[] =>
  evaluateRun(planPreparation(request), observations).verdict;
const textsOf = (code: string, findings: readonly Finding[]): string[] =>
  findings.filter((one) => one.code === code).map(({ text }) => text);

const zinc: PlanRequest = {
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + CO2 + Na2SO4",
  product: "Zn5(CO3)2(OH)6",
  materials: [
    { name: "zinc", form: "ZnSO4·7H2O" },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { material: "zinc", portion: "50 g" },
};

describe("a mass that is too small", () => {
  // 10.0 g of soda, 0.09435 mol, one for each zinc: 0.01887 mol of product, 10.36 g. The zinc, 0.1739 mol, could give 19.09 g.
  it("names the material that ran out although it was not planned to, with the part of it that would have to be active", () => {
    const texts = textsOf("reagent-short", found(zinc, { weighed: { soda: "10.0 g" }, dried: "8.00 g" }));
    expect(texts).toEqual([
      // 8.00 / 10.36
      "it would fit if only 77 % of the soda was active: it ran out first, not as planned",
      // 8.00 / 19.09
      "it would fit if only 42 % of the zinc was active",
    ]);
  });

  it("does not say so of the one that was planned to run out", () => {
    // 8.00 / 19.09, and the soda is 5 % more
    expect(textsOf("reagent-short", found(zinc, { dried: "8.00 g" }))).toEqual([
      "it would fit if only 42 % of the zinc was active",
      "it would fit if only 40 % of the soda was active",
    ]);
    // 25 g of zinc sulfate give 9.546 g, the soda is 2.1 times the need
    expect(textsOf("reagent-short", found(zinc, { weighed: { zinc: "25.0 g" }, dried: "8.00 g" }))).toEqual([
      "it would fit if only 84 % of the zinc was active",
      "it would fit if only 40 % of the soda was active",
    ]);
  });

  it("adds what the liquor shows of it", () => {
    const [acid] = textsOf("reagent-short", found(zinc, { dried: "16.00 g", pH: "5.5" }));
    expect(acid).toBe("it would fit if only 80 % of the soda was active; the liquor is acid");
    const cloudy = found(zinc, { dried: "16.00 g", tests: { filtrate: "cloudy" } });
    expect(textsOf("reagent-short", cloudy)[0]).toMatch(/soda was active; a drop of it still clouds the filtrate$/);
    const clear = found(zinc, { dried: "16.00 g", tests: { filtrate: "clear" } });
    expect(textsOf("reagent-short", clear)).toContain(
      "it would fit if only 80 % of the soda was active; but the filtrate stays clear",
    );
  });
});

describe("a cake that was not washed", () => {
  it("contains no more salt than it weighs", () => {
    const findings = found(zinc, { dried: "2.00 g", washes: 0 });
    const unwashed = findings.find(({ code }) => code === "unwashed")!;
    expect(unwashed.mass!.in("g").toNumber()).toBe(2);
    expect(unwashed.figure!.in("%").toNumber()).toBe(100);
    expect(unwashed.text).toMatch(/without it less than 0.1 g is left, 0.00 %/);
  });

  it("contains what the liquor in it leaves: 3 washes are planned, and one leaves a part", () => {
    const [none, one] = [0, 1].map(
      (washes) => found(zinc, { dried: "19.00 g", washes }).find(({ code }) => code === "unwashed")!.mass!,
    );
    const { washing } = planPreparation(zinc);
    if (washing === undefined || !("plan" in washing)) throw new Error("no washes are planned");
    const { plan } = washing;
    expect(none!.in("g").toNumber()).toBe(plan.residueUnwashed.in("g").toNumber());
    expect(one!.in("g").toNumber()).toBe(plan.residueAfter[0]!.in("g").toNumber());
  });
});

describe("a salt that crystallises with the product by the work itself", () => {
  const saltpetre = (handlingLoss: "1 %" | "5 %"): PlanRequest => ({
    equation: "NaNO3 + KCl -> KNO3 + NaCl",
    product: "KNO3",
    materials: [
      { name: "Chile saltpetre", form: "NaNO3" },
      { name: "potash", form: "KCl" },
    ],
    scale: { material: "Chile saltpetre", portion: "85.0 g" },
    handlingLoss,
  });
  const cold = { dried: "88.0 g", temperature: "0 °C" } as const;
  const along = (request: PlanRequest, observations: Observations) =>
    found(request, observations).filter(({ code, text }) => code === "second-solid" && text.includes("by the work"));

  it("is named where it is more than handling takes: some 2 % of common salt at 0 °C", () => {
    const run = evaluateRun(planPreparation(saltpetre("1 %")), cold);
    const [own, salt] = run.steps.at(-1)!.before.solids.map(({ mass }) => mass.in("g").toNumber());
    expect([run.steps.at(-1)!.before.solids[1]!.formula, salt! / own! > 0.01]).toEqual(["NaCl", true]);
    const [finding] = along(saltpetre("1 %"), cold);
    expect(finding!.mass!.in("g").toNumber()).toBe(salt!);
    expect(finding!.figure!.in("%").toNumber()).toBeCloseTo((100 * salt!) / (own! + salt!), 6);
    expect(finding!.text).toBe(
      `${salt!.toFixed(1)} g of NaCl crystallises with the ${own!.toFixed(1)} g of KNO₃: ${(own! + salt!).toFixed(1)} g in all, by the work as it was done`,
    );
  });

  it("is not where handling takes as much, nor where the mass is another", () => {
    expect(along(saltpetre("5 %"), cold)).toEqual([]);
    expect(along(saltpetre("1 %"), { ...cold, dried: "60 g" })).toEqual([]);
    expect(along(zinc, { dried: "19.00 g" })).toEqual([]);
  });
});

// 85.0 g / 84.99 g/mol gives 101.1 g of saltpetre and 58.4 g of common salt, 1.000 mol × 58.44 g/mol, in the liquor.
describe("crystals that are heavier than they can be", () => {
  const saltpetre: PlanRequest = {
    equation: "NaNO3 + KCl -> KNO3 + NaCl",
    product: "KNO3",
    materials: [
      { name: "Chile saltpetre", form: "NaNO3" },
      { name: "potash", form: "KCl" },
    ],
    scale: { material: "Chile saltpetre", portion: "85.0 g" },
  };
  const heavy = (dried: "110 g" | "200 g", lastWash?: "cloudy" | "clear") =>
    found(saltpetre, { dried, tests: lastWash === undefined ? {} : { lastWash } });
  const salt = (findings: readonly Finding[]) => findings.find(({ code }) => code === "unwashed");

  it("may have 8.9 of the 58.4 g of salt in the liquor with them, first where the last wash shows it, last where it does not", () => {
    const [seen, open, clear] = [heavy("110 g", "cloudy"), heavy("110 g"), heavy("110 g", "clear")];
    expect(salt(seen)!.text).toBe(
      "8.9 g of NaCl with the crystals would explain it: 15 % of what the liquor contains; the last wash still shows them",
    );
    expect(salt(open)!.text).toMatch(/15 % of what the liquor contains$/);
    expect(salt(clear)!.text).toBe(salt(open)!.text);
    expect(seen[0]).toBe(salt(seen));
    expect(clear.at(-1)).toBe(salt(clear));
    expect(salt(open)!.weight).toBeGreaterThan(salt(clear)!.weight);
    expect(salt(open)!.weight).toBeLessThan(salt(seen)!.weight);
  });

  it("have too much for all of it, 98.9 g: it is named where the last wash shows it, with what it explains", () => {
    const seen = salt(heavy("200 g", "cloudy"))!;
    expect(seen.text).toBe(
      "the last wash still shows NaCl: all the liquor contained explains 58.4 g of the 98.9 g that are too much",
    );
    expect(seen.mass!.in("g").toNumber()).toBeCloseTo(58.44, 1);
    // 98.9 / 58.44
    expect(seen.figure!.in("%").toNumber()).toBeCloseTo(169.2, 0);
    expect(salt(heavy("200 g"))).toBeUndefined();
    expect(salt(heavy("200 g", "clear"))).toBeUndefined();
  });

  // 2.6 g is in the liquor that the salt on the hot filters keeps, rinsed; 101.1 g less that and 80 g is 18.5 g, of 31.9 g in 100 g of
  // water at 20 °C (handbooks: 31.6 to 31.9): 58 mL. For 60 g it is 38.5 g and 121 mL.
  it("are explained by the liquor where they are lighter, with its volume to two figures", () => {
    const liquor = (dried: "80 g" | "60 g" | "20 g") => textsOf("loss-explained", found(saltpetre, { dried }))[0];
    const kept = "2.6 g stays with what is on the hot filter, and";
    expect(liquor("80 g")).toBe(`${kept} 18.5 g is what about 58 mL of mother liquor keeps at 20 °C`);
    expect(liquor("60 g")).toBe(`${kept} 38.5 g is what about 120 mL of mother liquor keeps at 20 °C`);
    // no more than there was: 154 g of water keeps 154 × 0.319 = 49.2 g of the 78.5 g
    expect(liquor("20 g")).toContain(
      `${kept} all 150 mL of water there was keeps no more than 49.2 g at 20 °C, of 78.5 g that`,
    );
  });
});

// 22.20 g / 110.98 g/mol gives 20.02 g of chalk; 20.80 g is 0.78 g more, 3.7 % of it. Chalk leaves 56.03 %: 54.0 % of a sample with
// 1 - 0.540 / 0.5603 = 3.6 % of water.
describe("a cake that may be wet", () => {
  const chalk: PlanRequest = {
    equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
    product: "CaCO3",
    materials: [
      { name: "calcium", form: "CaCl2" },
      { name: "soda", form: "Na2CO3" },
    ],
    scale: { material: "calcium", portion: "22.20 g" },
  };
  const wet = (after?: "0.540 g" | "0.560 g" | "0.500 g") =>
    found(chalk, {
      dried: "20.80 g",
      ...(after === undefined ? {} : { ignition: { before: "1.000 g", after } }),
    });
  const water = (findings: readonly Finding[]): Finding => findings.find(({ code }) => code === "wet")!;

  it("is that where ignition finds as much water", () => {
    const findings = wet("0.540 g");
    expect(findings[0]).toBe(water(findings));
    expect(findings[0]!.text).toBe(
      "0.8 g of water left in it would explain the mass; ignition finds 3.6 % of water, as this asks for",
    );
    expect(findings[0]!.weight).toBeGreaterThan(water(wet()).weight);
  });

  it("is only perhaps that where ignition finds none, or fits no formula, or was not done", () => {
    for (const findings of [wet("0.560 g"), wet("0.500 g"), wet()]) {
      expect(water(findings).text).toBe("0.8 g of water left in it would explain the mass");
      expect(water(findings).weight).toBe(water(wet()).weight);
    }
  });
});

// An oxide in excess takes all the acid: some pH 3 to 4 of a pure copper sulfate liquor (from memory); pH 1 is a tenth of a mole of acid.
describe("acid in the liquor of crystals", () => {
  const blue = (oxide: "5 %" | "0 %", acid: "5 %" | "0 %", pH: "1.0" | "2.0" | "3.0") =>
    textsOf(
      "liquor-ph",
      found(
        {
          equation: "CuO + H2SO4 + H2O -> CuSO4·5H2O",
          product: "CuSO4·5H2O",
          materials: [
            { name: "oxide", form: "CuO", excess: oxide },
            { name: "acid", form: "H2SO4", strength: "10 %", excess: acid },
          ],
          scale: { product: "50 g" },
        },
        { dried: "40 g", pH },
      ),
    );

  it("means that a solid did not react where that was to take all of it", () => {
    const [text] = blue("5 %", "0 %", "1.0");
    expect(text).toMatch(
      /^the liquor was at pH 1.0, where pH 3\.\d is expected: acid is left that the oxide was to take/,
    );
    // less than a hundredth of a mole in a litre is no strong acid
    expect([...blue("5 %", "0 %", "2.0"), ...blue("5 %", "0 %", "3.0")]).toEqual([]);
  });

  it("means nothing where the acid was in excess", () => {
    expect(blue("0 %", "5 %", "1.0")).toEqual([]);
  });
});

// 50.0 g of blue vitriol without its water is 31.9 g (159.6 / 249.68); 30.9 g is 97 % of that.
describe("crystals that may have lost their water", () => {
  const vitriol: PlanRequest = {
    equation: "CuO + H2SO4 -> CuSO4 + H2O",
    product: "CuSO4·5H2O",
    materials: [
      { name: "oxide", form: "CuO" },
      { name: "acid", form: "H2SO4", strength: "20 %", excess: "3 %" },
    ],
    scale: { product: "50 g" },
  };
  const dry = (observations: Observations) =>
    textsOf("other-hydrate-fits", found(vitriol, observations)).filter((text) => text.includes("theory for CuSO₄"));

  it("are the anhydrous salt by a loss in drying or by ignition", () => {
    expect(dry({ dried: ["45 g", "30.9 g", "30.9 g"] })[0]).toBe("30.9 g is 96.9 % of the theory for CuSO₄");
    const byFire = dry({ dried: "30.9 g", ignition: { before: "1.000 g", after: "0.990 g" } });
    expect(byFire[0]).toMatch(/^30.6 g is 9[56]\.\d % of the theory for CuSO₄; by ignition 100 % likely/);
  });

  it("are not by their mass alone: the liquor keeps as much", () => {
    expect(dry({ dried: "30.9 g" })).toEqual([]);
    expect(found(vitriol, { dried: "30.9 g" })[0]!.code).toBe("loss-explained");
  });

  it("are never taken for what they are said to be", () => {
    const texts = textsOf("other-hydrate-fits", found(vitriol, { dried: "49 g" }));
    expect(texts.filter((text) => text.includes("CuSO₄·5H₂O"))).toEqual([]);
  });
});

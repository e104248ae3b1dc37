// What an independent reader of sixteen sheets objected to, as rules; the preparations are theirs, chosen before any sheet was printed.
// Facts of the bench are common practice, no source, unless one stands beside them.
import { type Plan, type PlanRequest, planPreparation, quantity } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const words = (request: PlanRequest): string =>
  planPreparation(request)
    .steps.map(({ text }) => text)
    .join("\n");
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

const SILVER: PlanRequest = {
  equation: "AgCl + Zn -> Ag + ZnCl2",
  product: "Ag",
  materials: [
    { name: "silver chloride", form: "AgCl" },
    { name: "zinc granules", form: "Zn", assay: "99 %", excess: "10 %" },
  ],
  scale: { material: "silver chloride", portion: "20 g" },
};

describe("a metal displaced from what hardly dissolves", () => {
  // 100 g of water keeps 0.0002 g of AgCl: a drop of the liquor leaves zinc bright from the first minute on
  it("is tested as a solid: what nitric acid leaves white is chloride", () => {
    expect(words(SILVER)).toMatch(
      /a pinch of the solid, washed and warmed with dilute nitric acid .* leaves nothing white/,
    );
    expect(words(SILVER)).toMatch(/with a spoonful of the acid that takes the rest of it in the end if nothing begins/);
    expect(words(SILVER)).not.toMatch(/bright piece/);
    const soluble = words({
      equation: "CuSO4 + Zn -> Cu + ZnSO4",
      product: "Cu",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "zinc granules", form: "Zn", excess: "10 %" },
      ],
      scale: { material: "blue vitriol", portion: "20 g" },
    });
    expect(soluble).toMatch(/bright piece/);
  });

  it("has the acid for the rest of the metal on the list, and its hydrogen keeps flames off", () => {
    // its liquor is poured off in a step of its own before
    expect(sheet(SILVER)).toMatch(/\[ \] [\d.]+ g of H₂SO₄, 10 % by mass \(step 6; goggles, gloves\)/);
    expect(sheet(SILVER)).toContain("[ ] no flame or spark near");
  });
});

const SULFITE: PlanRequest = {
  equation: "K2CO3 + SO2 -> K2S2O5 + CO2",
  product: "K2S2O5",
  materials: [
    { name: "potash", form: "K2CO3", assay: "98 %" },
    { name: "sulfur dioxide", form: "SO2" },
  ],
  scale: { material: "potash", portion: "50 g" },
};

describe("potassium disulfite", () => {
  it("is neither warmed in its liquor nor dried hot", () => {
    expect(words(SULFITE)).toMatch(/Do not warm it: warm it gives off sulfur dioxide/);
    expect(words(SULFITE)).not.toMatch(/Warm the liquor|Evaporate|boil/);
    expect(planPreparation(SULFITE).drying.upTo!.toNumber("°C")).toBe(40);
  });

  it("grows in a flask with two tubes, its gas on through lye", () => {
    expect(words(SULFITE)).toMatch(
      /goes through an empty bottle and a wash bottle with sodium hydroxide solution \(10 %\)/,
    );
    const text = sheet(SULFITE);
    expect(text).toContain("[ ] flask of 400 mL, stopper with two tubes");
    expect(text).toContain("400 mL, tubes for the gas, in and out");
    expect(text).not.toMatch(/open vessel of|never stoppered/);
  });
});

const SODA: PlanRequest = {
  equation: "Na2CO3 + H2O -> Na2CO3·10H2O",
  product: "Na2CO3·10H2O",
  materials: [{ name: "soda ash", form: "Na2CO3", assay: "98 %" }],
  scale: { material: "soda ash", portion: "50 g" },
};

describe("a hydrate that weathers in usual air (Encyclopædia Britannica, efflorescence)", () => {
  it("is bottled moist, and never dried to a constant mass, for which the sheet has no record", () => {
    const dry = planPreparation(SODA).steps.find(({ operation }) => operation === "dry")!;
    expect(dry.text).toMatch(/bottle it tightly then: in open air it loses water and turns to powder/);
    expect(dry.text).not.toMatch(/two weighings/);
    expect(dry.blank).toBeUndefined();
    expect(sheet(SODA)).not.toContain("Drying record");
    expect(sheet(SODA)).not.toContain("oven or warm place");
  });

  // 49.9 g of salt in so much water is saturated at 40 °C, where it dissolves best: 48.8 g in 100 g
  it("is dissolved warm in the water that is wanted, none of it boiled off again", () => {
    const { steps } = planPreparation(SODA);
    expect(steps.map(({ operation }) => operation)).not.toContain("concentrate");
    expect(steps.find(({ operation }) => operation === "dissolve")!.text).toMatch(/warm it to 40 °C/);
  });

  it("others dry in the air of a room, and a cake of what hardly dissolves a little warmer", () => {
    const borax = planPreparation({
      equation: "Na2B4O7·10H2O -> Na2B4O7·10H2O",
      product: "Na2B4O7·10H2O",
      materials: [{ name: "crude borax", form: "Na2B4O7·10H2O", assay: "95 %" }],
      scale: { material: "crude borax", portion: "50 g" },
    });
    expect(borax.drying.upTo!.toNumber("°C")).toBe(25);
    expect(borax.steps.map(({ text }) => text).join("\n")).toMatch(/two weighings three hours apart/);
    const struvite = planPreparation({
      equation: "MgSO4 + NH4H2PO4 + NaOH + H2O -> NH4MgPO4·6H2O + Na2SO4",
      product: "NH4MgPO4·6H2O",
      materials: [
        { name: "Epsom salt", form: "MgSO4·7H2O" },
        { name: "ammonium phosphate", form: "NH4H2PO4" },
        { name: "lye", form: "NaOH" },
      ],
      scale: { product: "20 g" },
    });
    expect(struvite.drying.upTo!.toNumber("°C")).toBe(40);
  });
});

describe("a complex of unknown solubility", () => {
  const nickel: PlanRequest = {
    equation: "NiCl2·6H2O + 6 NH3 -> [Ni(NH3)6]Cl2 + 6 H2O",
    product: "[Ni(NH3)6]Cl2",
    materials: [
      { name: "nickel chloride", form: "NiCl2·6H2O", assay: "98 %" },
      { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
    ],
    scale: { material: "nickel chloride", portion: "12 g" },
  };
  const chromium: PlanRequest = {
    equation: "K2Cr2O7 + H2C2O4·2H2O + K2C2O4·H2O -> K3[Cr(C2O4)3]·3H2O + CO2 + H2O",
    product: "K3[Cr(C2O4)3]·3H2O",
    materials: [
      { name: "dichromate", form: "K2Cr2O7" },
      { name: "oxalic acid", form: "H2C2O4·2H2O" },
      { name: "potassium oxalate", form: "K2C2O4·H2O" },
    ],
    scale: { material: "dichromate", portion: "5 g" },
  };

  it("gets alcohol for what does not crystallise by itself, whether or not something did", () => {
    expect(words(nickel)).toMatch(/once it is cold and no more crystallises, add alcohol slowly/);
    expect(words(nickel)).not.toMatch(/if nothing crystallises/);
    // violet crystals may be there before all of the green cloud is gone
    expect(words(nickel)).toMatch(/until the cloud of hydroxide has dissolved \(crystals may come already\)/);
  });

  it("is rinsed with a millilitre of alcohol a gram, which wets all of it", () => {
    const { steps, product } = planPreparation(nickel);
    const rinse = steps.find(({ operation }) => operation === "rinse")!;
    expect(rinse.amounts[0]!.toNumber("g")).toBeCloseTo(product.theoreticalYield.toNumber("g"), 0);
  });

  // 0.118 mol of oxalic acid and 0.034 mol of oxalate are 17 g of tetroxalate, of which cold water keeps some 2 %
  it("has its ligands warm for the dichromate, which foams at once then, and is boiled down before alcohol", () => {
    expect(words(chromium)).toMatch(/Dissolve the oxalic acid in \d+ mL of water at 60 °C or a little above/);
    expect(words(chromium)).toMatch(/Dissolve the potassium oxalate in the same vessel in \d+ mL of water at 60 °C/);
    const { steps, product } = planPreparation(chromium);
    const down = steps.find(({ operation }) => operation === "concentrate")!;
    expect(down.target!.toNumber("g")).toBeCloseTo(3 * product.theoreticalYield.toNumber("g"), 6);
  });
});

describe("other salts in the liquor that crystals keep", () => {
  const barium: PlanRequest = {
    equation: "BaCl2·2H2O + NaNO3 -> Ba(NO3)2 + NaCl + H2O",
    product: "Ba(NO3)2",
    materials: [
      { name: "barium chloride", form: "BaCl2·2H2O", assay: "99 %" },
      { name: "Chile saltpetre", form: "NaNO3", assay: "99 %" },
    ],
    scale: { material: "barium chloride", portion: "24.4 g" },
  };

  // some 4 mL of liquor with 0.5 g of NaCl: two portions of half of that leave 4/9 of it, three of all of it 1/8, 0.3 %
  it("go with as many portions as bring them down to half a percent", () => {
    const { steps } = planPreparation(barium);
    const rinse = steps.find(({ operation }) => operation === "rinse")!;
    expect(rinse.text).toMatch(/in three portions/);
    const salt = (contents: typeof rinse.after): number =>
      contents.dissolved.find(({ formula }) => formula === "NaCl")!.amount.toNumber("mol") * 58.44;
    expect(salt(rinse.after) / salt(rinse.before)).toBeCloseTo(1 / 8, 1);
    expect(salt(rinse.after)).toBeLessThan(0.005 * rinse.after.solids[0]!.mass.toNumber("g"));
  });

  it("cost no more than a few percent of the crystals", () => {
    const { steps } = planPreparation(barium);
    const { before, after } = steps.find(({ operation }) => operation === "rinse")!;
    const [first, last] = [before, after].map(({ solids }) => solids[0]!.mass.toNumber("g")) as [number, number];
    expect(1 - last / first).toBeLessThan(0.07);
    expect(1 - last / first).toBeGreaterThan(0.01);
  });
});

describe("small things", () => {
  it("a metal that runs out is gone at the end, and an acid that was asked for in excess is not doubted", () => {
    const silver: PlanRequest = {
      equation: "Ag + HNO3 -> AgNO3 + NO + H2O",
      product: "AgNO3",
      materials: [
        { name: "silver scrap", form: "Ag", assay: "99.9 %" },
        { name: "nitric acid", form: "HNO3", strength: "65 %", excess: "10 %" },
      ],
      scale: { material: "silver scrap", portion: "10 g" },
    };
    expect(words(silver)).toMatch(/until no more gas rises and all of the silver scrap has dissolved/);
    expect(words(silver)).toMatch(/on a porous tile, not between paper/);
    const checks = planPreparation(silver)
      .checks.map(({ text }) => text)
      .join("\n");
    expect(checks).toMatch(/as asked for/);
    expect(checks).not.toMatch(/is usual/);
  });

  it("sugar and copper are done by their colours, not by a cloud that no lye gives", () => {
    const copper: PlanRequest = {
      equation: "CuSO4·5H2O + C6H12O6 + NaOH -> Cu2O + NaC6H11O7 + Na2SO4 + H2O",
      product: "Cu2O",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "glucose", form: "C6H12O6", excess: "20 %" },
        { name: "caustic soda", form: "NaOH", excess: "10 %" },
      ],
      scale: { material: "blue vitriol", portion: "25 g" },
    };
    expect(words(copper)).toMatch(
      /no longer green or blue: where it is, it needs more time or a little more of the glucose/,
    );
    expect(words(copper)).not.toMatch(/a cloud means/);
  });

  // [Ni(NH3)6]2+ and its like: log beta 4 to 9 (any table of constants)
  it("says that ammonium holds nickel in an alkaline waste, and not where there is none", () => {
    const nickel = (salt: "NiSO4·6H2O" | "FeSO4·7H2O", product: `${string}`) =>
      planPreparation({
        equation: `${salt} + (NH4)2SO4 -> ${product}${salt === "FeSO4·7H2O" ? " + H2O" : ""}`,
        product,
        materials: [
          { name: "sulfate", form: salt },
          { name: "ammonium sulfate", form: "(NH4)2SO4" },
        ],
        scale: { material: "sulfate", portion: "26 g" },
      }).waste.notes.join("\n");
    expect(nickel("NiSO4·6H2O", "(NH4)2Ni(SO4)2·6H2O")).toMatch(/which keeps Ni in solution: drive it out warm/);
    expect(nickel("FeSO4·7H2O", "(NH4)2Fe(SO4)2·6H2O")).not.toMatch(/keeps Fe in solution/);
  });

  it("an excess that comes from rounding is in proportion", () => {
    const text = sheet({
      equation: "CH3COOH + Na2CO3 + H2O -> NaCH3COO·3H2O + CO2",
      product: "NaCH3COO·3H2O",
      materials: [
        { name: "vinegar essence", form: "CH3COOH", strength: "25 %" },
        { name: "soda ash", form: "Na2CO3", assay: "99 %" },
      ],
      scale: { material: "vinegar essence", portion: "100 g" },
    });
    expect(text).toContain("in proportion");
    expect(text).not.toMatch(/0\.\d+ % excess/);
  });
});

describe("the pace of a metal in acid", () => {
  const made = (name: string, form = "Zn"): Plan =>
    planPreparation({
      equation: `${form} + H2SO4 + 7 H2O -> ${form}SO4·7H2O + H2`,
      product: `${form}SO4·7H2O`,
      materials: [
        { name, form: form as "Zn" },
        { name: "battery acid", form: "H2SO4", strength: "37 %" },
      ],
      scale: { material: name, portion: "20 g" },
    });
  const portions = (plan: Plan): number => plan.additionRate!.portions;
  const byHeat = ({ heat }: Plan): number =>
    Math.ceil(("rise" in heat ? heat.rise.rise : quantity("0 ΔK")).toNumber("ΔK") / 10);
  const byFoam = ({ gas, additionRate }: Plan): number =>
    Math.ceil(gas[0]!.volume.toNumber("L") / additionRate!.headspace.toNumber("L"));

  // pieces give their gas off little by little: what one portion may warm the vessel by decides, 10 K
  it("is that of the heat where it lies in pieces, and that of the foam where it is a powder", () => {
    const [granules, dust] = [made("zinc granules"), made("zinc dust")];
    expect(byFoam(dust)).toBeGreaterThan(byHeat(dust));
    expect(portions(granules)).toBe(byHeat(granules));
    expect(portions(dust)).toBe(byFoam(dust));
  });

  it("of magnesium is that of the foam in pieces too", () => {
    const ribbon = made("magnesium ribbon", "Mg");
    expect(portions(ribbon)).toBe(Math.max(byFoam(ribbon), byHeat(ribbon)));
    expect(byFoam(ribbon)).toBeGreaterThan(5);
  });
});

// A substance has one spelling wherever an answer names it, so that rows of different answers can be joined.
import {
  aqueousComposition,
  canonicalFormula,
  checkRecipe,
  constitutionOf,
  evaluateRun,
  Formula,
  findRoutes,
  identify,
  identifyByMassLoss,
  isQuantity,
  type Plan,
  planPreparation,
  search,
  shopMaterial,
  solubilityOf,
  solubilityProduct,
  substance,
} from "preparative";
import { describe, expect, it } from "vitest";
import { NATURAL_PREPARATIONS } from "../data/natural-preparations";
import { PREPARATIONS } from "../data/preparations";
import { planOrCode, requestOf } from "../tools/published-plans";

/** Fields that name one substance. The `form` of a solid in the beaker is its mineral or its age, that of a weighing the formula of the pack. */
const NAMING = ["formula", "form", "target"];
/** What is asked is as the caller wrote it, and so are cautions and solubilities, which are answered without the table of names. */
const SKIPPED = ["request", "equation", "cautions", "solubility", "check"];

interface Named {
  readonly at: string;
  readonly formula: string;
  readonly key: unknown;
}

/** Every row of an answer that names a substance. */
function namedIn(answer: unknown): Named[] {
  const seen = new Set<object>();
  const found: Named[] = [];
  const walk = (value: unknown, at: string): void => {
    if (typeof value !== "object" || value === null || seen.has(value)) return;
    if (isQuantity(value) || value instanceof Formula) return;
    seen.add(value);
    const row = value as Record<string, unknown>;
    const names = Object.keys(row);
    for (const name of NAMING) {
      const text = name === "form" && !("key" in row) ? undefined : row[name];
      if (names.includes(name) && typeof text === "string") found.push({ at, formula: text, key: row["key"] ?? text });
    }
    for (const name of names) if (!SKIPPED.includes(name)) walk(row[name], `${at}.${name}`);
  };
  walk(answer, "");
  return found;
}

function joins(answer: unknown, what: string): number {
  const rows = namedIn(answer);
  for (const { at, formula, key } of rows) expect([what, at, key]).toEqual([what, at, canonicalFormula(formula)]);
  return rows.length;
}

describe("the one spelling of a substance", () => {
  it("stands in every row of a plan and of its run", () => {
    const plans = [
      ...PREPARATIONS.map(requestOf).flatMap((request) => (request === undefined ? [] : [planOrCode(request)])),
      ...NATURAL_PREPARATIONS.map(({ request }) => planOrCode(request)),
    ].filter((one): one is Plan => typeof one !== "string");
    let rows = 0;
    for (const plan of plans) {
      rows += joins(plan, plan.title);
      rows += joins(evaluateRun(plan, { dried: plan.product.theoreticalYield }).yields, plan.title);
    }
    expect(plans.length).toBeGreaterThan(100);
    expect(rows).toBeGreaterThan(5000);
  });

  it("joins a double salt asked for in another spelling with the solid that the beaker gives", () => {
    const plan = planPreparation({
      equation: "NiSO4 + (NH4)2SO4 + H2O -> NiSO4.(NH4)2SO4.6H2O",
      product: "NiSO4.(NH4)2SO4.6H2O",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·7H2O" },
        { name: "ammonium sulfate", form: "(NH4)2SO4" },
      ],
      scale: { product: "20 g" },
    });
    expect(plan.product.key).toBe("(NH4)2Ni(SO4)2·6H2O");
    expect(plan.feasibility.solids.map(({ key }) => key)).toContain(plan.product.key);
  });

  it("stands in every row of a route", () => {
    const jars = ["CuSO4·5H2O", "Na2CO3", "NaHCO3", "ZnO", "H2SO4", "NH3"].map((form) => ({ name: form, form }));
    const answer = findRoutes({ shelf: jars, target: "Cu2(OH)2CO3" });
    expect(joins(answer, "routes")).toBeGreaterThan(100);
    expect(answer.routes[0]!.key).toBe("Cu2(OH)2CO3");
    expect(answer.routes[0]!.steps.map(({ key, product }) => key === canonicalFormula(product))).not.toContain(false);
  });

  // ligands and ion pairs as the beaker names them; ammonia is NH3 (IUPAC 1990, I-4.6.1.2), not H3N
  it.each([
    { CuSO4·5H2O: "0.1 mol", NH3: "1 mol" },
    { ZnSO4: "0.1 mol", NaOH: "1 mol" },
    { AlCl3: "0.1 mol", NaOH: "0.35 mol", NaF: "0.1 mol" },
    { FeCl3: "0.01 mol", K2C2O4: "0.05 mol", NH4Cl: "0.1 mol" },
    { AgNO3: "0.01 mol", Na2S2O3: "0.1 mol" },
    { CH3COONa: "0.1 mol", H3PO4: "0.1 mol", N2H4: "0.1 mol" },
    { MgSO4: "0.1 mol", Na3C6H5O7·2H2O: "0.1 mol", CaCl2: "0.01 mol" },
  ])("stands in every row of a beaker of %o", (put) => {
    const dissolved = Object.entries(put).map(([formula, amount]) => ({ formula, amount: amount as "1 mol" }));
    const beaker = aqueousComposition({ water: "1 L", dissolved });
    expect(joins(beaker, Object.keys(put).join(" + "))).toBeGreaterThan(15);
  });

  it("stands in what names, shop goods, tables and tests answer", () => {
    for (const name of [
      "blue vitriol",
      "washing soda",
      "potassium alum",
      "slaked lime",
      "vinegar",
      "ammonia",
      "hydrazine",
    ])
      expect(joins(identify(name), name)).toBeGreaterThan(0);
    expect(
      joins(
        [
          substance("blue vitriol"),
          shopMaterial("alum"),
          search("copper"),
          solubilityOf("CuSO4", "20 °C"),
          solubilityProduct("Mg(OH)2"),
        ],
        "tables",
      ),
    ).toBeGreaterThan(10);
    const loss = identifyByMassLoss({ before: "2.000 g", after: "1.120 g", candidates: ["CaCO3", "Ca[OH]2", "MgCO3"] });
    expect(loss.candidates.map(({ key }) => key).sort()).toEqual(["Ca(OH)2", "CaCO3", "MgCO3"]);
    const recipe = checkRecipe({
      equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
      product: "Cu2(OH)2CO3",
      materials: [
        { form: "CuSO4·5H2O", amount: "64 g" },
        { form: "Na2CO3", amount: "24 g" },
      ],
    });
    expect(recipe.gases.map(({ key }) => key)).toEqual(["CO2"]);
  });

  it("is the tables' own for acids and molecules that have no row of names", () => {
    for (const [written, one] of [
      ["H3N", "NH3"],
      ["H4N2", "N2H4"],
      ["C7H6O2", "C6H5COOH"],
      ["CH3CHOHCOOH", "C3H6O3"],
      ["H2NCH2COOH", "NH2CH2COOH"],
    ])
      expect([written, canonicalFormula(written!)]).toEqual([written, one]);
    expect(constitutionOf("H6Si2").molecules.map(({ formula }) => formula)).toEqual(["Si2H6"]);
    expect(constitutionOf("NF3").molecules.map(({ formula }) => formula)).toEqual(["NF3"]);
  });
});

describe("a figure that rests on no constant", () => {
  it("has no doubt: what stays dissolved whatever it is bound to is what was put in", () => {
    const { filtrate } = aqueousComposition({
      water: "1 L",
      dissolved: [
        { formula: "CuSO4", amount: "0.1 mol" },
        { formula: "NH3", amount: "1 mol" },
      ],
    });
    const ammonia = filtrate.find(({ formula }) => formula === "NH3")!;
    expect(ammonia.share!.toString()).toBe("1");
    expect(ammonia.amount.toString()).toBe("1 mol");
    // copper stands in part as the hydroxide, and its share rests on the constants
    const copper = filtrate.find(({ formula }) => formula === "Cu^2+")!;
    expect(copper.share!.standardUncertainty!.toNumber()).toBeGreaterThan(0.001);
  });
});

// What the figures of plans and runs are worked out from, as a teacher would write it: the rule in words, the symbol before the
// equals sign, and what was given. The rules are those of any textbook of stoichiometry; the figures are tested elsewhere.
import { checkRecipe, evaluateRun, explain, planPreparation, type Quantity } from "preparative";
import { describe, expect, it } from "vitest";

const chalk = planPreparation({
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "calcium", form: "CaCl2·2H2O", pack: { size: "1 kg", price: "3 EUR" } },
    { name: "soda", form: "Na2CO3", excess: "5 %", pack: { size: "500 g", price: "2 EUR" } },
  ],
  scale: { product: "20 g" },
});
const run = evaluateRun(chalk, {
  dried: [
    { gross: "70.1 g", tare: "50.0 g" },
    { gross: "69.0 g", tare: "50.0 g" },
    { gross: "68.5 g", tare: "50.0 g" },
  ],
  wetCake: "40 g",
  ignition: { before: "1.000 g", after: "0.561 g" },
  weighed: { soda: "16 g" },
  temperature: "22 °C",
  lost: [{ of: "liquor", volume: "10 mL" }],
});
const vitriol = planPreparation({
  equation: "ZnCO3 + H2SO4 + H2O -> ZnSO4·7H2O + CO2",
  product: "ZnSO4·7H2O",
  materials: [
    { name: "carbonate", form: "ZnCO3", excess: "20 %" },
    { name: "acid", form: "H2SO4", strength: "1.0 mol/L" },
  ],
  scale: { material: "acid", portion: "250 mL" },
});
const crops = evaluateRun(vitriol, { crops: ["50 g", "5 g"] });
const recipe = checkRecipe({
  equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
  product: "Cu2(OH)2CO3",
  materials: [
    { form: "CuSO4·5H2O", amount: "50 g" },
    { form: "Na2CO3", amount: "22.3 g" },
  ],
  found: "20 g",
});

const worked = (figure: unknown): string => explain(figure as Quantity).toString();
const [calcium, soda] = chalk.materialBalance.supplied;
const { plan: wash } = chalk.washing as { plan: { residueUnwashed: Quantity; productLost: Quantity } };
const sodium = chalk.waste.vessels[0]!;
const dryness = run.dryness as unknown as Record<string, Quantity>;

describe("the working of a figure", () => {
  it.each([
    ["amount put in", calcium!.amount, "amount = mass × mass fraction / molar mass", "n(CaCl₂)"],
    ["extent", chalk.materialBalance.extent, "the reaction stops when the first material is used up", "ξ"],
    ["what is left", soda!.left, "amount left = amount taken - amount used", "n(Na₂CO₃, left)"],
    ["times the need", soda!.timesStoichiometric, "amount taken / amount used", "times(Na₂CO₃)"],
    ["theory", chalk.product.theoreticalYield, "mass = amount × molar mass", "m_th(CaCO₃)"],
    ["vessel", chalk.vessel!.needed, "vessel = liquid × foam factor", "V(vessel)"],
    ["liquid", chalk.vessel!.liquid, "volume of liquid <= mass of everything / density of water", "V(liquid)"],
    ["water of the liquor", chalk.liquor.water, "water = added + from crystals and reaction", "m(H2O, liquor)"],
    ["salts", wash.residueUnwashed, "by-products and excess that stay in the liquor", "m(salts)"],
    ["lost by washing", wash.productLost, "kept = solubility for 100 g of water × water", "m(CaCO₃, kept)"],
    ["metal in the waste", sodium.metals[0]!.mass, "mass = amount × molar mass", "m(Na, waste)"],
    ["cost of a material", chalk.cost!.lines[0]!.cost, "cost = portion × price / pack size", "cost(calcium)"],
    ["cost", chalk.cost!.total, "sum of the parts of the packs used", "cost"],
    ["cost of a gram", chalk.cost!.perGram, "cost per gram = cost / mass of product", "cost per gram"],
    ["cost of a mole", chalk.cost!.perMole, "cost per mole = cost / amount of product", "cost per mole"],
    ["headspace", vitriol.additionRate!.headspace, "air above the liquid", "V(headspace)"],
    [
      "share of the room",
      vitriol.additionRate!.atOnce[0]!.share,
      "share of the room = volume of gas / volume of the room",
      "φ(CO₂)",
    ],
    ["acid by strength", vitriol.materialBalance.supplied[1]!.amount, "amount = concentration × volume", "n(H₂SO₄)"],
    ["expected", run.expected, "theory - lost", "m(expected)"],
    ["lost product", run.losses[0]!.product, "CaCO₃ lost on the way", "m(product, lost)"],
    ["next weighing", dryness["nextExpected"], "each loss is the same share of the one before", "m(next)"],
    [
      "where drying ends",
      dryness["endsAt"],
      "last mass - last loss × q / (1 - q), q = last loss / loss before",
      "m(end)",
    ],
    ["water left", dryness["waterLeft"], "last mass - mass it comes to", "m(water)"],
    ["liquor of the cake", dryness["moistureOfCake"], "(wet - dry) / wet", "w(liquor)"],
    ["loss on ignition", run.identity!.loss, "loss = (m₁ - k m₂) / m₁ + s, k = 1, s = 0", "loss"],
    ["yield", run.yields[0]!.percentYield, "percent yield = dry mass / theoretical yield", "yield(CaCO₃)"],
    ["crops", crops.dryMass, "crops are added", "m(dry)"],
    ["yield of a recipe", recipe.yields[0]!.percentYield, "percent yield = mass found / theoretical yield", "yield"],
  ])("of %s has its rule and its symbol", (_, figure, rule, symbol) => {
    const lines = worked(figure).split("\n");
    const at = lines.findIndex((line) => line.replace(/^\d+\. /, "") === rule);
    expect(at, lines.join("\n")).toBeGreaterThanOrEqual(0);
    expect(lines[at + 1]!.trimStart().startsWith(`${symbol} = `), lines[at + 1]).toBe(true);
  });

  it.each([
    ["calcium", calcium!.portion, "m(calcium)", "calcium to take"],
    ["assay", calcium!.amount, "w(calcium)", "assay of calcium"],
    ["pack", chalk.cost!.lines[0]!.cost, "pack(calcium)", "pack of calcium"],
    ["price", chalk.cost!.lines[0]!.cost, "price(calcium)", "price of a pack of calcium"],
    ["room", vitriol.additionRate!.atOnce[0]!.share, "V(room)", "volume of the room"],
    ["strength", vitriol.materialBalance.supplied[1]!.amount, "c(acid)", "strength of acid"],
    ["soda of a run", run.materialBalance.supplied[1]!.left, "m(soda)", "soda really taken"],
    ["vessel with product", run.dryings[0], "m(gross)", "vessel with product"],
    ["empty vessel", run.dryings[0], "m(tare)", "empty vessel"],
    ["wet cake", dryness["moistureOfCake"], "m(wet)", "wet cake as weighed"],
    ["before ignition", run.identity!.loss, "m₁", "mass before ignition"],
    ["after ignition", run.identity!.loss, "m₂", "mass after ignition"],
    ["constant mass", run.identity!.loss, "k", "constancy of the mass after ignition"],
    ["scatter", run.identity!.loss, "s", "scatter of samples"],
    ["volume lost", run.losses[0]!.amount, "V(lost)", "lost, as recorded"],
    ["first crop", crops.dryMass, "m(crop, 1)", "dry crop as weighed"],
    ["second crop", crops.dryMass, "m(crop, 2)", "dry crop as weighed"],
    ["what a recipe weighs", recipe.account!.supplied[0]!.amount, "m(CuSO4·5H2O)", "CuSO4·5H2O in the recipe"],
    ["what a recipe finds", recipe.yields[0]!.mass, "m(found)", "product found"],
  ])("says what was given as %s", (_, figure, symbol, label) => {
    const given = worked(figure)
      .split("\n")
      .find((line) => line.startsWith(`  ${symbol} `));
    expect(given, worked(figure)).toMatch(new RegExp(`   ${label}$`));
  });
});

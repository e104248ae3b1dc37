// Good runs and planted faults, as a bench knows them: theory by hand from molar masses (IUPAC weights), what a cake, a
// crucible and a mother liquor keep, what the tests of filtrate and last wash mean. Figures not marked are from memory.
import {
  benchSheet,
  evaluateRun,
  fromJSON,
  type Observations,
  type Plan,
  type PlanRequest,
  planPreparation,
  type Quantity,
  type Run,
  tryEvaluateRun,
} from "preparative";
import { describe, expect, it } from "vitest";

const number = (q: Quantity, unit: string): number => q.in(unit).toNumber();
const planned = (request: PlanRequest): Plan => planPreparation(request);

/** 250.0 g of heptahydrate, 0.8694 mol: 95.46 g; as ZnCO3 109.0 g. The unwashed cake has some 27 g of salts. */
const zinc = planned({
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
  product: "Zn5(CO3)2(OH)6",
  materials: [
    { name: "zinc", form: "ZnSO4·7H2O" },
    { name: "soda", form: "Na2CO3·10H2O", excess: "5 %" },
  ],
  scale: { material: "zinc", portion: "250.0 g" },
});
/** The same with soda in plenty. */
const rich = planned({
  ...zinc.request,
  materials: [
    { name: "zinc", form: "ZnSO4·7H2O" },
    { name: "soda", form: "Na2CO3·10H2O", excess: "100 %" },
  ],
});
/** 100.0 g of chalk from two liquors of 2.27 kg together. */
const chalk = planned({
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "calcium", form: "CaCl2·2H2O" },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "100 g" },
});
/** 249.85 g in theory; cold liquor keeps about 36 g in 100 g of water, so that a first crop is some 70 % of it. */
const blue = planned({
  equation: "CuO + H2SO4 + H2O -> CuSO4·5H2O",
  product: "CuSO4·5H2O",
  materials: [
    { name: "oxide", form: "CuO" },
    { name: "acid", form: "H2SO4", strength: "96 %" },
  ],
  scale: { product: "250 g" },
});
/** 200.0 g of gypsum, 1.1617 mol: 168.61 g of plaster, 158.15 g burnt dead. */
const plaster = planned({
  equation: "CaSO4·2H2O -> CaSO4·0.5H2O + H2O",
  product: "CaSO4·0.5H2O",
  materials: [{ name: "gypsum", form: "CaSO4·2H2O" }],
  scale: { material: "gypsum", portion: "200.0 g" },
});
/** 500.0 g of chalk: 280.14 g of lime. */
const lime = planned({
  equation: "CaCO3 -> CaO + CO2",
  product: "CaO",
  materials: [{ name: "chalk", form: "CaCO3" }],
  scale: { material: "chalk", portion: "500.0 g" },
});

type Case = readonly [what: string, plan: Plan, observations: Observations, first: string];

const GOOD: readonly Case[] = [
  [
    "a washed carbonate, all tests passed",
    zinc,
    { dried: ["91.3 g", "91.2 g"], washes: 3, tests: { filtrate: "clear", lastWash: "negative" } },
    "consistent",
  ],
  ["a little light, within handling", zinc, { dried: "88 g", washes: 3 }, "consistent"],
  ["a liquor with CO2 left in it: pH 9 where carbonate alone has 11", zinc, { dried: "91 g", pH: 9 }, "consistent"],
  ["chalk, washed twice", chalk, { dried: "97.1 g", washes: 2 }, "consistent"],
  ["gross and tare", chalk, { dried: { gross: "148.4 g", tare: "51.2 g" } }, "consistent"],
  ["titrated at 99.2 %: within a titration of pure", chalk, { dried: "97 g", assay: "99.2 %" }, "consistent"],
  [
    "liquor spilled after the filter: nothing of the chalk was in it",
    chalk,
    { dried: "97 g", lost: [{ at: "filter", of: "liquor", volume: "500 mL" }] },
    "consistent",
  ],
  [
    "wash water spilled",
    chalk,
    { dried: "96 g", washes: 2, lost: [{ at: "wash", of: "liquor", volume: "200 mL" }] },
    "consistent",
  ],
  ["a first crop as cold water leaves it", blue, { dried: "171 g" }, "loss-explained"],
  ["the same, weighed wet first", blue, { dried: ["219 g", "171.5 g", "171.4 g"] }, "loss-explained"],
  ["two crops, the second smaller: no drying", blue, { crops: ["172 g", "29 g"] }, "loss-explained"],
  ["plaster", plaster, { dried: "168.3 g" }, "consistent"],
  ["plaster, a gram on the spoon", plaster, { dried: "167.2 g" }, "consistent"],
  ["lime", lime, { dried: "279.5 g" }, "consistent"],
  [
    "the soda in about the water that was planned",
    chalk,
    { dried: "96 g", measured: { soda: "1050 mL" } },
    "consistent",
  ],
];

const FAULTS: readonly Case[] = [
  ["plaster burnt dead: 200.0 g × 136.14/172.17", plaster, { dried: "158.1 g" }, "other-hydrate-fits"],
  ["the same with a spoon lost", plaster, { dried: "157.5 g" }, "other-hydrate-fits"],
  [
    "burnt dead by titration too: its calcium makes 106.6 % of plaster",
    plaster,
    { dried: "157 g", assay: "106.6 %" },
    "other-hydrate-fits",
  ],
  ["lime with a core of chalk", lime, { dried: "300 g" }, "unreacted"],
  ["a tenth of the lime gone from a crucible", lime, { dried: "252 g" }, "lighter-than-losses-explain"],
  [
    "a twentieth gone from a crucible, which a filter would explain",
    lime,
    { dried: "266 g" },
    "lighter-than-losses-explain",
  ],
  ["not washed, and the mass just right", zinc, { dried: "95.0 g", washes: 0 }, "unwashed"],
  ["chalk not washed, 92 %", chalk, { dried: "92.0 g", washes: 0 }, "unwashed"],
  ["silver nitrate still clouds the last wash", chalk, { dried: "97 g", tests: { lastWash: "cloudy" } }, "unwashed"],
  [
    "too heavy, and barium chloride clouds the last wash",
    zinc,
    { dried: "104 g", tests: { lastWash: "positive" } },
    "unwashed",
  ],
  ["too heavy, not washed", chalk, { dried: ["103.1 g", "103.0 g"], washes: 0 }, "unwashed"],
  [
    "too heavy at constant mass, washed clean: the normal carbonate",
    zinc,
    { dried: ["107.1 g", "107.0 g"], washes: 3, tests: { lastWash: "negative" } },
    "other-formula-fits",
  ],
  ["too heavy, washed clean, weighed once: damp", chalk, { dried: "108 g", tests: { lastWash: "clear" } }, "wet"],
  [
    "a sixth missing, and a drop of soda clouds the filtrate",
    zinc,
    { dried: "80 g", tests: { filtrate: "cloudy" } },
    "reagent-short",
  ],
  [
    "within the allowance, and a drop of soda clouds the filtrate",
    zinc,
    { dried: "91 g", tests: { filtrate: "positive" } },
    "reagent-short",
  ],
  ["a sixth missing from an acid liquor, soda meant in excess", zinc, { dried: "80 g", pH: "5.5" }, "reagent-short"],
  [
    "a third missing, filtrate clear: lost or never there",
    zinc,
    { dried: "60 g", tests: { filtrate: "clear" } },
    "lighter-than-losses-explain",
  ],
  ["titrated at 90 %", chalk, { dried: "97 g", assay: "90 %" }, "impure"],
  ["too heavy, titrated at 93 %, which leaves 100.4 g", chalk, { dried: "108 g", assay: "93 %" }, "impure"],
  [
    "zinc for 87.6 % of the basic carbonate: the normal one",
    zinc,
    { dried: ["107.1 g", "107.0 g"], assay: "87.6 %" },
    "other-formula-fits",
  ],
  ["20 g of dry chalk on the floor", chalk, { dried: "76 g", lost: [{ mass: "20 g" }] }, "spilled"],
  [
    "a sixth of the wet cake on the floor",
    chalk,
    { dried: "78 g", wetCake: "174 g", lost: [{ of: "cake", mass: "30 g" }] },
    "spilled",
  ],
  [
    "a fifth of the beaker boiled over while mixing",
    zinc,
    { dried: "72 g", lost: [{ at: "add", volume: "250 mL" }] },
    "spilled",
  ],
  [
    "a fifth of the hot liquor spilled before the crystals",
    blue,
    { dried: "135 g", lost: [{ at: "hold", volume: "106 mL" }] },
    "spilled",
  ],
  [
    "a twentieth spilled where six tenths are missing",
    chalk,
    { dried: "40 g", lost: [{ mass: "5 g" }] },
    "lighter-than-losses-explain",
  ],
  [
    "more weighed than the record of the spill leaves",
    chalk,
    { dried: "92 g", lost: [{ at: "wash", volume: "880 mL" }] },
    "spilled",
  ],
  ["more crystals missing than all the water keeps", blue, { dried: "60 g" }, "lighter-than-losses-explain"],
  [
    "not boiled down: 120 g missing, which 330 g of the 370 g of water keep",
    blue,
    { dried: "130 g" },
    "loss-explained",
  ],
  [
    "still losing",
    chalk,
    {
      dried: [
        { gross: "170 g", tare: "50 g" },
        { gross: "160 g", tare: "50 g" },
      ],
    },
    "still-drying",
  ],
  ["the monohydrate in the jar of heptahydrate, soda in plenty", rich, { dried: "148 g" }, "hydrate-mix-up"],
  ["crystals dried until they were white", blue, { dried: ["175 g", "112.1 g", "112.0 g"] }, "other-hydrate-fits"],
];

const first = (plan: Plan, observations: Observations): string => evaluateRun(plan, observations).verdict[0]!.code;

describe("a good run is no alarm", () => {
  it.each(GOOD)("%s", (_, plan, observations, code) => {
    const { verdict } = evaluateRun(plan, observations);
    expect(verdict[0]!.code).toBe(code);
    const codes = verdict.map((one) => one.code);
    expect(codes).toContain("consistent");
    expect(codes).not.toContain("lighter-than-losses-explain");
    expect(codes).not.toContain("too-heavy");
  });
});

describe("a planted fault comes first", () => {
  it.each(FAULTS)("%s", (_, plan, observations, code) => expect(first(plan, observations)).toBe(code));
});

describe("a weighing with its vessel", () => {
  it("is the difference, with both readings in it", () => {
    const { dryMass } = evaluateRun(chalk, { dried: { gross: "148.4 g", tare: "51.2 g" } });
    expect(number(dryMass!, "g")).toBeCloseTo(97.2, 9);
    // two readings in steps of 0.1 g, each d/√6 (JCGM 100:2008, 4.3.9): 0.1 × √2/√6 = 0.0577 g
    expect(dryMass!.standardUncertainty!.toNumber()).toBeCloseTo(0.0577, 4);
  });

  it("loses the vessel from a difference of two: one tare is one input", () => {
    const tare = "50.0 g";
    const dried = [
      { gross: "150.3 g", tare },
      { gross: "147.2 g", tare },
    ] as const;
    const { lastLoss } = evaluateRun(chalk, { dried }).dryness;
    // the two gross readings alone, as above; with two tares it would be 0.1 × √4/√6 = 0.0816 g
    expect(lastLoss!.standardUncertainty!.toNumber()).toBeCloseTo(0.0577, 4);
    expect(number(lastLoss!, "g")).toBeCloseTo(3.1, 9);
  });
});

describe("crops", () => {
  it("are added and are no dryings", () => {
    const run = evaluateRun(blue, { crops: ["172 g", { gross: "79 g", tare: "50 g" }] });
    expect(number(run.dryMass!, "g")).toBeCloseTo(201, 9);
    expect(run.dryness.state).toBe("not known");
    expect(number(run.percentYield!, "%")).toBeCloseTo((100 * 201) / 249.85, 1);
  });
});

describe("what was lost on the way", () => {
  const lost = (plan: Plan, one: NonNullable<Observations["lost"]>[number]): Quantity =>
    evaluateRun(plan, { lost: [one] }).losses[0]!.product;

  it("took its share of what was in the vessel", () => {
    // 250 of 1250 mL: a fifth
    expect(number(lost(zinc, { at: "add", volume: "250 mL" }), "g")).toBeCloseTo(95.46 / 5, 1);
    // a tenth of the wet cake as it was weighed
    const cake = evaluateRun(chalk, { wetCake: "180 g", lost: [{ of: "cake", mass: "18 g" }] });
    expect(number(cake.losses[0]!.product, "g")).toBeCloseTo(10, 1);
    expect(number(lost(chalk, { of: "product", mass: "20 g" }), "g")).toBeCloseTo(20, 6);
    // liquor above settled chalk has milligrams of it in a litre
    expect(number(lost(chalk, { at: "filter", of: "liquor", volume: "500 mL" }), "g")).toBeLessThan(0.01);
    // before anything precipitates the liquor has all the calcium: 111.2 of 1112 mL
    expect(number(lost(chalk, { at: "dissolve", of: "liquor", volume: "111.2 mL" }), "g")).toBeCloseTo(10, 1);
  });

  it("is no more than there was", () => {
    const run = evaluateRun(chalk, { dried: "50 g", lost: [{ at: "wash", volume: "880 mL" }] });
    expect(run.losses[0]!.bounded).toBe(true);
    expect(run.losses[0]!.text).toMatch(/no more than/);
    const theory = number(chalk.product.theoreticalYield, "g");
    expect(number(run.losses[0]!.product, "g")).toBeLessThanOrEqual(theory);
    expect(number(lost(chalk, { mass: "500 g" }), "g")).toBeCloseTo(theory, 6);
    const all = evaluateRun(chalk, { dried: "50 g", lost: [{ mass: "70 g" }, { mass: "80 g" }] });
    expect(number(all.expected, "g")).toBe(0);
    expect(all.verdict.map(({ code }) => code)).toEqual(["spilled"]);
    const over = evaluateRun(chalk, { dried: "92 g", lost: [{ at: "wash", volume: "880 mL" }] }).verdict;
    expect(over.map(({ code }) => code)).not.toContain("too-heavy");
  });

  it("lowers what is expected and leaves the theory", () => {
    const run = evaluateRun(chalk, { dried: "76 g", lost: [{ mass: "20 g" }] });
    expect(number(run.expected, "g")).toBeCloseTo(80, 1);
    expect(number(run.product.theoreticalYield, "g")).toBeCloseTo(100, 1);
  });

  it("is an estimate unless it says better", () => {
    // 20 % as a rectangle: 0.2 × 20 g / √3 = 2.31 g
    const { standardUncertainty } = lost(chalk, { mass: "20 g" });
    expect(standardUncertainty!.toNumber()).toBeCloseTo(2.31, 2);
    expect(lost(chalk, { mass: "20.0 ± 0.1 g" }).standardUncertainty!.toNumber()).toBeCloseTo(0.1, 6);
  });
});

describe("a mother liquor", () => {
  it("never keeps more than the water there was", () => {
    const all = number(blue.liquor.water!, "g");
    let asked = 0;
    for (let dried = 10; dried < 175; dried += 15)
      for (const { code, figure } of evaluateRun(blue, { dried: `${dried} g` }).verdict)
        if (code === "loss-explained" && figure?.dimension === "volume") {
          expect(number(figure, "mL")).toBeLessThanOrEqual(all + 1e-9);
          asked += 1;
        }
    expect(asked).toBeGreaterThan(5);
  });
});

describe("a titrated product", () => {
  it("has a mass of pure substance and a yield of it", () => {
    const run = evaluateRun(chalk, { dried: "98 g", assay: "95 %" });
    expect(number(run.pureMass!, "g")).toBeCloseTo(93.1, 6);
    expect(number(run.pureYield!, "%")).toBeCloseTo(93.1 / 1.00012, 2);
    expect(number(run.asMaterial().assay as Quantity, "%")).toBeCloseTo(95, 6);
    expect(evaluateRun(chalk, { dried: "98 g" }).pureMass).toBeUndefined();
  });
});

describe("an exact hit of another form", () => {
  it("is listed although handling would explain it", () => {
    // 0.8694 mol of zinc as Zn(OH)2, 99.42 g/mol: 86.4 g, which is 90.5 % of the basic carbonate
    const { verdict } = evaluateRun(zinc, { dried: "86.4 g" });
    expect(verdict[0]!.code).toBe("consistent");
    expect(verdict.find(({ code }) => code === "other-formula-fits")!.text).toMatch(/Zn\(OH\)₂/);
  });
});

describe("what was measured out", () => {
  it("is the water of a solid and the portion of a solution", () => {
    const thin = evaluateRun(chalk, { measured: { calcium: "2000 mL" } });
    expect(number(thin.liquor.water!, "g") - number(chalk.liquor.water!, "g")).toBeGreaterThan(500);
    expect(number(thin.product.theoreticalYield, "g")).toBeCloseTo(100, 1);
    const acid = evaluateRun(blue, { measured: { acid: "50 mL" } });
    // 50 mL × 1.835 g/mL × 96 % / 98.08 g/mol = 0.898 mol (density of the tables)
    expect(number(acid.product.amount, "mol")).toBeCloseTo(0.898, 2);
  });
});

describe("observations", () => {
  const everything: Observations = {
    weighed: { zinc: "248.6 g" },
    measured: { soda: "900 mL" },
    assays: { zinc: "99 %" },
    temperature: "19 °C",
    lost: [
      { at: "add", volume: "30 mL" },
      { of: "product", mass: "1.0 g" },
    ],
    filtrateVolume: "950 mL",
    wetCake: "260 g",
    washes: 3,
    dried: [
      { gross: "140.2 g", tare: "50.1 g" },
      { gross: "138.3 g", tare: "50.1 g" },
      { gross: "138.3 g", tare: "50.1 g" },
    ],
    tests: { filtrate: "clear", lastWash: "negative" },
    pH: "9.1",
    assay: "98.4 ± 0.5 %",
    note: "a note",
  };
  const shown = (run: Run): string =>
    JSON.stringify([
      run.verdict,
      run.figures(),
      run.losses.map(({ text }) => text).sort(),
      run.changes,
      benchSheet(run),
    ]);

  it("in any order are the same run", () => {
    const entries = Object.entries(everything);
    const straight = shown(evaluateRun(zinc, everything));
    for (let turn = 0; turn < entries.length; turn += 1) {
      const turned = Object.fromEntries([...entries.slice(turn), ...entries.slice(0, turn)].reverse());
      const lost = [...everything.lost!].reverse();
      expect(shown(evaluateRun(zinc, turned as Observations))).toBe(straight);
      expect(shown(evaluateRun(zinc, { ...turned, lost } as Observations))).toBe(straight);
    }
  });

  it("come back from JSON as the same run", () => {
    const run = evaluateRun(zinc, everything);
    const back = fromJSON(JSON.parse(JSON.stringify(run))) as Run;
    expect(shown(back)).toBe(shown(run));
    expect(back.moved).toEqual([]);
  });

  it.each([
    ["weighed", /zinc\s.*248\.6 g/],
    ["measured", /soda\s.*900 mL/],
    ["assays", /zinc\s.*99 %/],
    ["temperature", /temperature\s.*19 °C/],
    ["lost", /30(\.0)? mL of what was in the vessel/],
    ["filtrateVolume", /filtrate\s.*950 mL/],
    ["wetCake", /wet cake\s.*260 g/],
    ["washes", /washes\s.*3/],
    ["dried", /gross 140\.2 g, tare 50\.1 g/],
    ["tests", /last wash\s.*negative/],
    ["pH", /pH of the liquor\s.*9\.1/],
    ["assay", /assay of the product\s.*98\.4 ± 0\.5 %/],
    ["note", /a note/],
  ])("stand on the sheet: %s", (field, words) => {
    expect(benchSheet(evaluateRun(zinc, everything))).toMatch(words);
    const { [field as "note"]: _, ...others } = everything;
    expect(benchSheet(evaluateRun(zinc, others))).not.toMatch(words);
  });

  it.each([
    [{ lots: [] }, "plan.unknown-option", /lost/],
    [{ lost: { mass: "1 g" } }, "plan.observation", /list/],
    [{ lost: [{ at: "pour", mass: "1 g" }] }, "plan.observation", /pour/],
    [{ lost: [{ at: "fire", mass: "1 g" }] }, "plan.observation", /no step/],
    [{ lost: [{ at: "filter" }] }, "plan.observation", /volume or a mass/],
    [{ lost: [{ volume: "1 mL", mass: "1 g" }] }, "plan.observation", /volume or a mass/],
    [{ lost: [{ of: "crystals", mass: "1 g" }] }, "plan.observation", /liquor/],
    [{ lost: [{ of: "cake", volume: "1 mL" }] }, "plan.observation", /mass/],
    [{ lost: [{ mass: "0 g" }] }, "plan.not-positive", /above zero/],
    [{ lost: [{ mass: "1 g", off: "cake" }] }, "plan.unknown-option", /of/],
    [{ dried: { gross: "50 g", tare: "60 g" } }, "plan.observation", /gross/],
    [{ dried: { gross: "50 g" } }, "plan.observation", /tare/],
    [{ dried: ["90 g", { gross: "50 g" }] }, "plan.observation", /dried\[1\]\.tare/],
    [{ crops: ["90 g", { tare: "50 g" }] }, "plan.observation", /crops\[1\]\.gross/],
    [{ dried: { gros: "50 g", tare: "20 g" } }, "plan.unknown-option", /gross/],
    [{ dried: "90 g", crops: ["50 g"] }, "plan.observation", /crops/],
    [{ crops: "50 g" }, "plan.observation", /list/],
    [{ crops: [] }, "plan.observation", /crops/],
    [{ crops: ["50 mL"] }, "quantity.wrong-dimension", /mass/],
    [{ tests: { filtrate: "milky" } }, "plan.observation", /cloudy/],
    [{ tests: { filtered: "clear" } }, "plan.unknown-option", /filtrate/],
    [{ pH: 19 }, "plan.observation", /pH/],
    [{ pH: "acid" }, "quantity.not-a-number", /acid/],
    [{ assay: "0 %" }, "plan.not-positive", /assay/],
    [{ assay: "400 %" }, "plan.observation", /assay/],
    [{ measured: { sand: "1 L" } }, "plan.no-such-material", /sand/],
    [{ measured: { zinc: "20 K" } }, "plan.request", /volume/],
  ])("%j are refused with %s", (observations, code, words) => {
    const outcome = tryEvaluateRun(zinc, observations as never);
    expect(outcome.ok ? "no refusal" : outcome.error.code).toBe(code);
    if (!outcome.ok) expect(`${outcome.error.message} ${outcome.error.hint ?? ""}`).toMatch(words);
  });

  it("of one solution are weighed or measured, not both", () => {
    const both = tryEvaluateRun(blue, { weighed: { acid: "100 g" }, measured: { acid: "55 mL" } });
    expect(both.ok ? "no refusal" : both.error.code).toBe("plan.observation");
  });
});

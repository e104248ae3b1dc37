// Crystals as a bench worker brings them out: one hot water for the pot, a look through it, a rinse that is worth it, a second crop.
// Solubilities are those of our table, in g for 100 g of water; what follows from them is worked by hand beside each figure.
import { type PlanRequest, type ProcedureStep, planPreparation, tryPlanPreparation } from "preparative";
import { describe, expect, it } from "vitest";

type Steps = readonly ProcedureStep[];
const grams = (q: { in(unit: string): { toNumber(): number } } | undefined): number => q!.in("g").toNumber();
const waterPut = (steps: Steps): number[] =>
  steps.filter(({ operation }) => operation === "dissolve").map(({ put }) => grams(put[1]!.water));
const saying = (steps: Steps, words: RegExp): ProcedureStep => {
  const found = steps.find(({ text }) => words.test(text));
  if (found === undefined) throw new Error(`no ${words} in:\n${steps.map(({ text }) => text).join("\n")}`);
  return found;
};

const MOHR: PlanRequest = {
  equation: "FeSO4·7H2O + (NH4)2SO4 -> (NH4)2Fe(SO4)2·6H2O + H2O",
  product: "(NH4)2Fe(SO4)2·6H2O",
  materials: [
    { name: "copperas", form: "FeSO4·7H2O" },
    { name: "sulfate of ammonia", form: "(NH4)2SO4" },
  ],
  scale: { material: "copperas", portion: "27.8 g" },
};

const SALTPETRE: PlanRequest = {
  equation: "NaNO3 + KCl -> KNO3 + NaCl",
  product: "KNO3",
  materials: [
    { name: "Chile saltpetre", form: "NaNO3" },
    { name: "potash", form: "KCl" },
  ],
  scale: { material: "Chile saltpetre", portion: "85.0 g" },
};

describe("one hot water for all that goes into the pot", () => {
  it("of a double salt is that of the double salt: 28.4 g dry, 73 g in 100 g at 80 °C, 38.9 g less 12.6 g of crystal water", () => {
    const { steps } = planPreparation(MOHR);
    // each alone would ask for 34.8 - 12.6 g and 14.0 g, and 10 g would be boiled off again
    const [first, second] = waterPut(steps);
    expect(first!).toBeCloseTo(38.9 - 12.6, 0);
    expect(second!).toBe(0);
    expect(steps.filter(({ vessel }) => vessel === "pot").map(({ operation }) => operation)).not.toContain(
      "concentrate",
    );
    expect(saying(steps, /^Add the copperas to it/).text).toMatch(/until it is clear/);
  });

  it("of a pair holds each of the four salts: 58.4 g of NaCl, 38.0 g in 100 g at 80 °C, 154 g of water", () => {
    const { steps } = planPreparation(SALTPETRE);
    const before = steps.slice(0, steps.indexOf(saying(steps, /^Boil the liquor down/)));
    expect(waterPut(before).reduce((a, b) => a + b)).toBeCloseTo(58.44 / 0.38, 0);
    // to 1.06 × 101.1 / 1.70 = 63.0 g, less 8.6 g that rinses the salt on the filter, with 101.1 + 58.4 g of salts: 214.0 g
    expect(grams(saying(steps, /^Boil the liquor down/).target)).toBeCloseTo(214.0, 0);
  });

  it("warms nothing twice: what dissolving it all takes from the heat is told of all of it", () => {
    const { dissolvingHeat } = planPreparation(SALTPETRE);
    let tested = 0;
    for (const one of dissolvingHeat) {
      if (!("rise" in one)) throw new Error(one.missing);
      // 17 kJ and 20 kJ from 314 g: 15 K each, and no hundred
      expect(Math.abs(one.rise.rise.in("ΔK").toNumber())).toBeLessThan(25);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(2);
  });
});

describe("a liquor that is to crystallise", () => {
  it("is looked through while it is hot, and filtered if it is not clear", () => {
    const { steps } = planPreparation(MOHR);
    // saturated at 80 °C, it is made up to its mass first, and filtered near the boil where that keeps more of it
    const at = steps.findIndex(({ text }) => text.includes("look through the hot liquor"));
    expect(steps[at]!.text).toMatch(/if it is not clear, filter it at (80|90 to 95) °C through a warmed funnel/);
    expect(steps[at + 1]!.operation).toBe("cool");
  });

  it("is not looked through where a hot filter takes the dust anyway", () => {
    expect(planPreparation(SALTPETRE).steps.some(({ text }) => /look through/i.test(text))).toBe(false);
  });
});

describe("a second crop", () => {
  it("of a pair: half the liquor holds 38 g of NaCl for 100 g hot, and the rest leaves before it cools", () => {
    const { steps } = planPreparation(SALTPETRE);
    const boiled = saying(steps, /^For a second crop/);
    const water = grams(boiled.after.water);
    expect(grams(boiled.before.water)).toBeCloseTo(2 * water, 6);
    const { solids } = boiled.after;
    const before =
      boiled.before.dissolved
        .find(({ formula }) => formula === "NaCl")!
        .amount.in("mol")
        .toNumber() * 58.44;
    expect(grams(solids[0]!.mass)).toBeCloseTo(before - 0.38 * water, 0);
    const [, hot] = /\); ([\d.]+) g of NaCl crystallises hot\.$/.exec(boiled.text)!;
    expect(Number(hot)).toBeCloseTo(before - 0.38 * water, 0);
    expect(saying(steps, /^Filter the mother liquor at once, hot/).after.solids).toEqual([]);
    // of the saltpetre 31.9 g stays for each 100 g of water at 20 °C
    const there =
      boiled.before.dissolved
        .find(({ formula }) => formula === "KNO₃")!
        .amount.in("mol")
        .toNumber() * 101.1;
    const crop = steps.filter(({ operation, vessel }) => operation === "cool" && vessel === "mother liquor").at(-1)!;
    expect(grams(crop.after.solids.find(({ formula }) => formula === "KNO₃")!.mass)).toBeCloseTo(
      there - 0.319 * water,
      0,
    );
    expect(crop.text).toMatch(/9\d % pure; keep and dry it apart/);
  });
});

describe("a second crop of a pair whose other salt stays dissolved", () => {
  // NaCl: 38.0 g in 100 g of water at 80 °C
  it("has nothing to filter off hot", () => {
    const { steps } = planPreparation({
      equation: "NaBrO3 + KCl -> KBrO3 + NaCl",
      product: "KBrO3",
      materials: [
        { name: "sodium bromate", form: "NaBrO3" },
        { name: "potash", form: "KCl" },
      ],
      scale: { material: "sodium bromate", portion: "106 g" },
    });
    const boiled = saying(steps, /^For a second crop/);
    const salt =
      boiled.after.dissolved
        .find(({ formula }) => formula === "NaCl")!
        .amount.in("mol")
        .toNumber() * 58.44;
    expect(salt).toBeLessThan(0.38 * grams(boiled.after.water));
    expect(boiled.after.solids.filter(({ formula }) => formula === "NaCl")).toEqual([]);
    expect(boiled.text).toMatch(/ boiled off; less is made up with hot water\)\.$/);
    expect(steps.some(({ text }) => text.startsWith("Filter the mother liquor hot"))).toBe(false);
  });
});

describe("a rinse", () => {
  const silver = (rinse?: "water" | "own solution" | "alcohol" | "none"): PlanRequest => ({
    equation: "AgNO3 -> AgNO3",
    product: "AgNO3",
    materials: [{ name: "lunar caustic", form: "AgNO3" }],
    scale: { material: "lunar caustic", portion: "100 g" },
    ...(rinse === undefined ? {} : { washing: { rinse } }),
  });
  const rinsed = (request: PlanRequest): ProcedureStep =>
    planPreparation(request).steps.find(({ operation }) => operation === "rinse")!;

  it("with ice water where that takes little", () => {
    // of iron(II) with a drop of its acid: neutral water takes the acid out that keeps it from air
    expect(rinsed(MOHR).text).toMatch(/ice-cold water with a drop of dilute sulfuric acid, in two portions/);
  });

  it("with its own solution where water would take a fifth of it: how much, how it is made, what it leaves and what it saves", () => {
    const step = rinsed(silver());
    const [water, salt] = step.amounts;
    // its crystals come in ice: at 5 °C 145 g in 100 g of water, between 127 g at 0 °C and 165 g at 10 °C
    expect(grams(salt!) / grams(water!)).toBeCloseTo(1.45, 2);
    expect(step.text).toMatch(/own solution.*of an earlier batch, shaken with .* of water at 5 °C/s);
    expect(step.text).toMatch(/dissolves none of the crystals/);
    expect(step.text).toMatch(/as much ice water would dissolve up to/);
    // nothing of the crystals is lost, and what clings to them is saturated: 145 g in 245 g
    const own = (contents: ProcedureStep["before"]): number => grams(contents.solids[0]!.mass);
    expect(own(step.after)).toBeCloseTo(own(step.before), 6);
    const clings = grams(step.after.mass) - own(step.after);
    const within = step.after.dissolved[0]!.amount.in("mol").toNumber() * 169.87;
    expect(within / clings).toBeCloseTo(1.45 / 2.45, 2);
    // of their own liquor each of two portions, as heavy as 0.2 mL a gram, leaves as much as its share
    const poured = grams(water!) + grams(salt!);
    const left = (clings / (clings + poured / 2)) ** 2;
    const brought = ((1 - left) * grams(salt!) * clings) / poured;
    expect(grams(step.ofAnotherBatch!)).toBeCloseTo(brought, 2);
    expect(step.text).toContain(`${brought.toFixed(1)} g of what is in it stays with them`);
  });

  it("is what was asked for", () => {
    expect(rinsed({ ...MOHR, washing: { rinse: "own solution" } }).text).toMatch(/own solution/);
    expect(rinsed({ ...MOHR, washing: { rinse: "alcohol" } }).text).toMatch(/50 % alcohol/);
    expect(rinsed(silver("water")).text).toMatch(/ice-cold water/);
    const { steps } = planPreparation({ ...MOHR, washing: { rinse: "none" } });
    expect(steps.some(({ operation }) => operation === "rinse")).toBe(false);
    expect(saying(steps, /^Do not rinse/).operation).toBe("hold");
  });

  it("is refused with alcohol for an oxidiser, for a precipitate, and by a name nobody knows", () => {
    const code = (request: PlanRequest): string => {
      const made = tryPlanPreparation(request);
      return made.ok ? "made" : `${made.error.code}: ${made.error.message}`;
    };
    expect(code(silver("alcohol"))).toMatch(/^plan\.request: alcohol must not meet an oxidiser/);
    const chalk: PlanRequest = {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "calcium", form: "CaCl2" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { product: "10 g" },
      washing: { rinse: "water" },
    };
    expect(code(chalk)).toMatch(/^plan\.request: washing\.rinse is for crystals/);
    expect(code({ ...MOHR, washing: { rinse: "beer" as "water" } })).toMatch(/beer/);
  });
});

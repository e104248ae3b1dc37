// A salt crystallised again for the sake of its purity, and the share of a crop. The figures of the solubility curves are those of the
// tables (CRC Handbook where no other source is named); that a recrystallisation is not boiled down is common practice, no source.
import { type Plan, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const again = (form: string, more: Partial<PlanRequest["materials"][number]> = {}): Plan =>
  planPreparation({
    equation: `${form} -> ${form}`,
    product: form,
    materials: [{ name: "pack", form, ...more }],
    scale: { material: "pack", portion: "60 g" },
  });

const inPot = ({ steps }: Plan, of: string) =>
  steps.filter(({ operation, vessel }) => operation === of && vessel === "pot");
const checkOf = ({ checks }: Plan): string => checks.find(({ text }) => /crystallises/.test(text))!.text;

describe("a recrystallisation", () => {
  const potash = again("KCl", { assay: "95 %", also: [{ form: "NaCl", share: "3 %" }] });

  // 57.0 g of KCl: 51.2 g in 100 g of water at 80 °C are 111 g of water; that keeps 37.9 g at 20 °C (34.0 g in 100 g), 19.1 g come
  it("is not boiled down for its first crop, which is what cooling brings", () => {
    expect(inPot(potash, "concentrate")).toEqual([]);
    const [cooled] = inPot(potash, "cool");
    expect(cooled!.before.water.toNumber("g")).toBeCloseTo(111.3, 0);
    expect(cooled!.after.solids[0]!.mass.toNumber("g")).toBeCloseTo(19.1, 1);
    expect(cooled!.text).toMatch(/19\.1 g of KCl crystallises, 34 % of it/);
    expect(checkOf(potash)).toMatch(
      /^from 111 g of water at 80 °C, cooled to 20 °C, 19\.1 g of KCl crystallises, 33\.5 % of it/,
    );
  });

  it("gives a second crop from its liquor, boiled down and kept apart", () => {
    const said = potash.steps.map(({ text }) => text).join("\n");
    expect(said).toMatch(/For a second crop boil the mother liquor down/);
    expect(said).toMatch(/12\.3 g more, less pure; keep and dry it apart/);
  });

  it("is the same of an impure pack, and of one that is pure by what it says", () => {
    for (const plan of [again("KNO3", { assay: "95 %" }), again("NH4Cl"), again("H3BO3")]) {
      expect(inPot(plan, "concentrate")).toEqual([]);
      expect(plan.steps.map(({ text }) => text).join("\n")).not.toMatch(/as the water goes|until it sets/);
    }
  });
});

describe("a salt that dissolves alike hot and cold", () => {
  // 38.0 g of sodium chloride in 100 g of water at 80 °C, 35.9 g at 20 °C: cooling brings a twentieth, 3 g of 57
  it("is evaporated into its crystals, and a part of it stays in the liquor with what the pack has besides", () => {
    const salt = again("NaCl", { assay: "95 %" });
    const [evaporated] = inPot(salt, "concentrate");
    expect(evaporated!.text).toMatch(/most crystallises as the water goes; cold the liquor keeps 15 %/);
    expect(salt.steps.some(({ text }) => /^Filter the crystals off/.test(text))).toBe(true);
    expect(salt.steps.map(({ text }) => text).join("\n")).not.toMatch(/until it sets/);
  });
});

describe("a crop of which a part stayed undissolved", () => {
  const acetate = planPreparation({
    equation: "Cu2(OH)2CO3 + CH3COOH -> Cu(CH3COO)2·H2O + CO2 + H2O",
    product: "Cu(CH3COO)2·H2O",
    materials: [
      { name: "verditer", form: "Cu2(OH)2CO3" },
      { name: "acid", form: "CH3COOH", strength: "2 mol/L" },
    ],
    scale: { material: "verditer", portion: "11 g" },
  });

  // what the hot filter keeps of the basic carbonate never was in the liquor: 63.5 g of water keep 4.4 g of 19.5 g, not of 19.9 g
  it("is the same share in its step and in its check", () => {
    const { after, before, text } = inPot(acetate, "cool")[0]!;
    const there = before.dissolved.find(({ formula }) => formula.includes("Cu"))!;
    const crop = after.solids.find(({ formula }) => formula.includes("Cu"))!;
    const share = 100 * crop.amount.dividedBy(there.amount).toNumber("");
    expect(Number(/crystallises, (\d+) % of it/.exec(text)![1])).toBeCloseTo(share, 0);
    expect(Number(/crystallises, ([\d.]+) % of it/.exec(checkOf(acetate))![1])).toBeCloseTo(share, 1);
    const boiled = inPot(acetate, "concentrate")[0]!.text;
    expect(Number(/the liquor keeps (\d+) %/.exec(boiled)![1])).toBeCloseTo(100 - share, 0);
  });
});

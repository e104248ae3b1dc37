// The share of a crop. Solubility of the acetate by the table (Cooley).
import { type Plan, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const inPot = ({ steps }: Plan, of: string) =>
  steps.filter(({ operation, vessel }) => operation === of && vessel === "pot");
const checkOf = ({ checks }: Plan): string => checks.find(({ text }) => /crystallises/.test(text))!.text;

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
    expect(Number(/crystallises, (\d+) % of it/.exec(text)![1])).toBeCloseTo(share, -0.3);
    expect(Number(/crystallises, ([\d.]+) % of it/.exec(checkOf(acetate))![1])).toBeCloseTo(share, 1);
    const boiled = inPot(acetate, "concentrate")[0]!.text;
    expect(Number(/the liquor keeps (\d+) %/.exec(boiled)![1])).toBeCloseTo(100 - share, -0.3);
  });
});

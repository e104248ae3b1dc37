// Figures as a hand can use them: three at most, none finer than the instrument shows. The roundings are by hand.
import { describe, expect, it } from "vitest";
import { list } from "../../src/foundation/wording";
import {
  about,
  atMost,
  celsius,
  handOf,
  lasting,
  litres,
  nearly,
  percent,
  times,
  vesselSize,
} from "../../src/preparation/procedure/words";
import { type Quantity, quantity } from "../../src/quantity";

const q = (text: string): Quantity => quantity(text as "1 g");
const hand = handOf({ mass: q("0.1 g"), volume: q("1 mL") });

describe("figures at the bench", () => {
  it.each([
    ["12.34 g", "12.3 g"],
    ["123.4 g", "123 g"],
    ["1234 g", "1230 g"],
    ["0.05 g", "0.1 g"],
    ["0.049 g", "less than 0.1 g"],
    ["9990 g", "9990 g"],
    ["10000 g", "10.0 kg"],
    ["2 mg", "less than 0.1 g"],
  ])("%s on a balance of 0.1 g is %s", (mass, shown) => {
    expect(hand.grams(q(mass))).toBe(shown);
  });

  it("are as fine as the balance", () => {
    expect(handOf({ mass: q("0.01 g"), volume: q("1 mL") }).grams(q("1.236 g"))).toBe("1.24 g");
    expect(handOf({ mass: q("5 g"), volume: q("1 mL") }).grams(q("112 g"))).toBe("110 g");
    expect(handOf({ mass: q("1 g"), volume: q("1 mL") }, false, (mass) => `under ${mass}`).grams(q("0.4 g"))).toBe(
      "under 1 g",
    );
  });

  // five steps of the cylinder, or a smaller one
  it.each([
    ["250 mL", "250 mL"],
    ["1234 mL", "1.23 L"],
    ["999.6 mL", "1 L"],
    ["5.4 mL", "5 mL"],
    ["4.94 mL", "4.9 mL"],
    ["0.44 mL", "0.4 mL"],
    ["0.05 mL", "0.1 mL"],
    ["0.04 mL", "less than 0.1 mL"],
    ["30 g", "30 mL"],
  ])("%s in a cylinder of 1 mL is %s", (volume, shown) => {
    expect(hand.litres(q(volume))).toBe(shown);
    expect(hand.water(q(volume))).toBe(`${shown} of water`);
  });

  it("are bounds and estimates where they are figures", () => {
    expect(atMost(q("12 g"), hand.grams)).toBe("at most 12.0 g");
    expect(atMost(q("0.01 g"), hand.grams)).toBe("less than 0.1 g");
    expect([nearly("3 mL"), nearly("less than 0.1 mL")]).toEqual(["about 3 mL", "less than 0.1 mL"]);
  });

  it("have three figures, of large ones too", () => {
    expect([about(q("12345 g")), about(q("0.012345 g")), about(q("1500 g"), "kg")]).toEqual([
      "12300 g",
      "0.0123 g",
      "1.50 kg",
    ]);
    expect(percent(q("0.1234"))).toBe("12 %");
    expect(celsius(q("293.15 K"))).toBe("20 °C");
  });

  it("are litres of gas from one litre on, and vessels without zeros after the point", () => {
    expect([litres(q("999 mL")), litres(q("1 L")), litres(q("0.25 L"))]).toEqual(["999 mL", "1.00 L", "250 mL"]);
    expect([vesselSize(q("1 L")), vesselSize(q("1.5 L")), vesselSize(q("600 mL")), vesselSize(q("10 L"))]).toEqual([
      "1 L",
      "1.5 L",
      "600 mL",
      "10 L",
    ]);
  });

  it("are minutes up to two hours", () => {
    expect(lasting(q("59 s"))).toBeUndefined();
    expect([lasting(q("1 min")), lasting(q("119 min")), lasting(q("120 min")), lasting(q("36 h"))]).toEqual([
      "1 min",
      "119 min",
      "2.0 h",
      "36 h",
    ]);
  });

  it("are counted and listed in words", () => {
    expect([1, 2, 3].map(times)).toEqual(["once", "twice", "3 times"]);
    expect([["a"], ["a", "b"], ["a", "b", "c"]].map((words) => list(words))).toEqual(["a", "a and b", "a, b and c"]);
  });
});

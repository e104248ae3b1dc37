// Rochelle salt by Lange's Handbook, against the parts of water that a directory of chemicals prints for its crystals.
import { expect, it } from "vitest";
import { solubilityOf } from "../../src";

it("is as soluble as one part of crystals in 0.9 parts of cold water says", () => {
  // 111.1 g of KNaC4H4O6·4H2O hold 82.7 g of the salt (210.16/282.22) and 28.4 g of water: 82.7 in 128.4 is 64.4 in 100
  const grams = solubilityOf("KNaC4H4O6", "20 °C").perHundredGramsWater.toNumber("g");
  expect(Math.abs(grams - 64.4)).toBeLessThan(6.4);
});

// OpenStax Chemistry 2e (2019, web revision), section 1.5: worked examples 1.3 and 1.4-1.5 with their follow-ups, and
// section exercise 6. The book breaks ties to even.

import { quantity, significantFigures, withSignificantFigures } from "preparative";
import { describe, expect, it } from "vitest";

describe("figures as taught in OpenStax Chemistry 2e, 1.5", () => {
  it.each([
    ["8.1649", 3, "8.16"],
    ["0.051065", 4, "0.05106"],
    ["0.424", 2, "0.42"],
    ["421.25", 4, "421.2"],
    ["28683.5", 5, "28684"],
  ])("rounds %s to %i figures as %s", (value, significant, expected) => {
    expect(quantity(value).format({ significant })).toBe(expected);
  });

  it.each([
    ["53", 2],
    ["2.05E8", 3],
    ["0.17", 2],
    ["0.88400", 5],
  ])("counts the figures of %s as %i", (value, figures) => {
    expect(significantFigures(value)).toBe(figures);
  });

  it.each([
    ["add", ["1.0023", "4.383"], "5.385"],
    ["subtract", ["486", "421.23"], "65"],
    ["add", ["2.334", "0.31"], "2.64"],
    ["multiply", ["0.6238", "6.6"], "4.1"],
    ["divide", ["55.8752", "56.53"], "0.9884"],
  ] as const)("%s %j gives %s", (operation, values, expected) => {
    expect(withSignificantFigures(operation, values)).toBe(expected);
  });
});

// A mole of reaction counts the coefficients that were written: IUPAC Green Book, 3rd ed. (2007), section 2.11.1 (from memory).
// The coefficients are atoms counted by hand.
import { describe, expect, it } from "vitest";
import { balance } from "../../src/equation";
import { asWritten } from "../../src/equation/written";

describe("what one mole of reaction counts", () => {
  it.each([
    ["H2 + O2 -> H2O", ["2", "1", "2"], "2 H2 + O2 -> 2 H2O"],
    ["H2 + 1/2 O2 -> H2O", ["1", "1/2", "1"], "H2 + 1/2 O2 -> H2O"],
    ["1/2 N2 + 3/2 H2 -> NH3", ["1/2", "3/2", "1"], "1/2 N2 + 3/2 H2 -> NH3"],
    ["4 H2 + 2 O2 -> 4 H2O", ["4", "2", "4"], "4 H2 + 2 O2 -> 4 H2O"],
    ["0.5 O2 + H2 -> H2O", ["1/2", "1", "1"], "1/2 O2 + H2 -> H2O"],
  ])("%s: %j", (text, coefficients, printed) => {
    const balanced = balance(text);
    const written = asWritten(text, balanced);
    expect(written.coefficients.map((n) => n.toFraction())).toEqual(coefficients);
    expect(written.text).toBe(printed);
    // an equation that is balanced already has no other coefficients than its own
    const own = asWritten(balanced, balanced);
    expect(own.coefficients.map((n) => n.toFraction())).toEqual(balanced.coefficients.map(String));
    expect(own.text).toBe(balanced.toString());
  });
});

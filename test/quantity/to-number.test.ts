// The nearest double of a value, made without decimals: held against Number() of the same value by decimal.js to 700 digits. The 40
// digits of `value` are too few: 1e23 lies half-way between two doubles, and 1e23 + 1e-37 does not.
import { Decimal } from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity } from "../../src/quantity";

describe("a quantity as a number", () => {
  // up to 20 digits, so that most numerators and denominators are beyond 2^53; exponents to the edges of a double
  const decimal = fc
    .tuple(fc.bigInt({ min: 1n, max: 10n ** 20n }), fc.integer({ min: -170, max: 140 }), fc.boolean())
    .map(([digits, exponent, negative]) => `${negative ? "-" : ""}${digits}e${exponent}`);

  const Long = Decimal.clone({ precision: 700 });

  it("is the double nearest to its decimals", () => {
    fc.assert(
      fc.property(decimal, decimal, (a, b) => {
        const [x, y] = [quantity(`${a} g` as "1 g"), quantity(`${b} g` as "1 g")];
        const [m, n] = [new Long(a), new Long(b)];
        for (const [q, exact] of [
          [x, m],
          // in the square kilograms of a product without a name
          [x.times(y), m.times(n).div(1e6)],
          [x.dividedBy(y), m.div(n)],
          [x.plus(y), m.plus(n)],
        ] as const)
          expect(q.toNumber()).toBe(Number(exact.toString()));
        expect(x.toNumber("kg")).toBe(Number(m.div(1000).toString()));
      }),
      { numRuns: 300 },
    );
  });

  it("reaches below the smallest normal double, and is infinite past the largest", () => {
    const tiny = quantity("1e-160 kg");
    expect(tiny.times(tiny).toNumber()).toBe(1e-320);
    const large = quantity("1e160 kg");
    expect(large.times(large).toNumber()).toBe(Number.POSITIVE_INFINITY);
    expect(quantity("25 °C").toNumber("K")).toBe(298.15);
  });
});

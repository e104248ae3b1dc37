// The nearest double of a value, made without decimals: held against Number() of the decimal text of the same value.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity } from "../../src/quantity";

describe("a quantity as a number", () => {
  // up to 20 digits, so that most numerators and denominators are beyond 2^53; exponents to the edges of a double
  const decimal = fc
    .tuple(fc.bigInt({ min: 1n, max: 10n ** 20n }), fc.integer({ min: -170, max: 140 }), fc.boolean())
    .map(([digits, exponent, negative]) => `${negative ? "-" : ""}${digits}e${exponent}`);

  it("is the double nearest to its decimals", () => {
    fc.assert(
      fc.property(decimal, decimal, (a, b) => {
        const [x, y] = [quantity(`${a} g` as "1 g"), quantity(`${b} g` as "1 g")];
        for (const q of [x, x.times(y), x.dividedBy(y), x.plus(y)])
          expect(q.toNumber()).toBe(Number(q.value.toString()));
        expect(x.toNumber("kg")).toBe(Number(x.in("kg").toString()));
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

// When a difference of two masses counts: JCGM 100:2008, 6.3.3, coverage factor 2.
import { describe, expect, it } from "vitest";
import { clearlyAbove, EXCLUDED, isFarBelow, likelihoodWithin } from "../../../src/preparation/verdict/difference";
import { quantity } from "../../../src/quantity";

describe("a difference of masses", () => {
  it("counts above twice its standard uncertainty", () => {
    // √(0.3² + 0.4²) = 0.5 g
    const [one, other] = [quantity("11.01 ± 0.3 g"), quantity("10.0 ± 0.4 g")];
    expect(clearlyAbove(one, other)).toBe(true);
    expect(clearlyAbove(quantity("10.99 ± 0.3 g"), other)).toBe(false);
    expect(clearlyAbove(other, one)).toBe(false);
    expect(likelihoodWithin(other, quantity("10.5 ± 0.3 g"), one)).toBeCloseTo(Math.exp(-0.5), 12);
  });

  it("counts at once between exact masses", () => {
    const [one, other] = [quantity("10.001 g"), quantity("10 g")];
    expect(clearlyAbove(one, other)).toBe(true);
    expect(clearlyAbove(other, other)).toBe(false);
    expect(likelihoodWithin(other, one, one)).toBe(0);
  });

  it("is called far only where the likelihood of the whole sum excludes it, whatever the terms share", () => {
    const found = quantity("7.0 ± 0.1 g");
    let far = 0;
    for (let i = 0; i <= 60; i += 1) {
      const whole = quantity(`${(7 + i / 20).toFixed(2)} ± 0.30 g`);
      // from half of the same mass, which takes uncertainty away, to a mass of its own, which adds some
      for (const less of [
        whole.times("0.05"),
        whole.negated().times("0.1"),
        quantity("0.5 ± 0.2 g"),
        quantity("0 g"),
      ]) {
        const isExcluded = likelihoodWithin(found, whole.minus(less), quantity("20 g")) < EXCLUDED;
        if (isFarBelow(found, whole, less)) {
          far += 1;
          expect(isExcluded, `${whole} less ${less}`).toBe(true);
        }
      }
    }
    expect(far).toBeGreaterThan(100);
  });
});

import { describe, expect, it } from "vitest";
import { bisected } from "../../src/foundation/bisect";
import { memoised, once, remembering } from "../../src/foundation/memo";

describe("what is kept", () => {
  it("is made once, on first use, whatever it is", () => {
    let made = 0;
    const nothing = once(() => {
      made += 1;
    });
    expect(made).toBe(0);
    nothing();
    nothing();
    expect(made).toBe(1);
  });

  it.each(["remembering", "memoised"])("is forgotten from the oldest on: %s", (kind) => {
    const asked: string[] = [];
    const answer = (text: string) => {
      asked.push(text);
      return text === "none" ? undefined : text.length;
    };
    const keep = remembering<number | undefined>(2);
    const ask = kind === "memoised" ? memoised(2, answer) : (text: string) => keep(text, () => answer(text));
    for (const text of ["a", "none", "a", "none", "ccc", "none", "a"]) ask(text);
    expect(asked).toEqual(["a", "none", "ccc", "a"]);
    expect(ask("ccc")).toBe(3);
  });
});

describe("bisection", () => {
  it("finds where something changes, from either side", () => {
    expect(bisected((x) => x * x < 2, [0, 2], 60)[0]).toBeCloseTo(Math.SQRT2, 14);
    expect(bisected((x) => x * x > 2, [2, 0], 60)[0]).toBeCloseTo(Math.SQRT2, 14);
  });

  it("stops where the ends are near enough", () => {
    const [low, high] = bisected((x) => x < 1 / 3, [0, 1], 60, 1e-3);
    expect(high - low).toBeLessThanOrEqual(1e-3 * high);
    expect(high - low).toBeGreaterThan(1e-4 * high);
  });
});

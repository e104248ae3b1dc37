// A solubility as plain data: every field that cannot be one of a solubility is refused by its name, whatever else fits.
import { attempt, type SolubilityRecord, solubilityFromJSON, solubilityOf } from "preparative";
import { describe, expect, it } from "vitest";

const whole = (): SolubilityRecord => JSON.parse(JSON.stringify(solubilityOf("Na2CO3", "20 °C"))) as SolubilityRecord;
const refusal = (record: unknown) => {
  const outcome = attempt(() => solubilityFromJSON(record as SolubilityRecord));
  return outcome.ok ? undefined : outcome.error;
};
const part = { cause: "scatter", relative: 0.02 };
const figure = { celsius: 20, value: "21.5", source: whole().source };
const many = <T>(one: T, count: number): T[] => Array.from({ length: count }, () => one);

/** What a field may be, and what it may not. */
const FIELDS: Readonly<Record<string, { readonly fits: readonly unknown[]; readonly not: readonly unknown[] }>> = {
  formula: { fits: ["NaCl"], not: [1, "", "Nonsense", undefined] },
  name: { fits: ["", "x".repeat(1000)], not: [1, "x".repeat(1001), undefined] },
  celsius: { fits: [0, -273.1, 1000], not: [-273.15, 1000.1, Number.NaN, "20", undefined] },
  solidPhase: { fits: [undefined, "NaCl·2H2O"], not: [1, "Nonsense"] },
  solidPhaseSource: { fits: [undefined, "memory"], not: [1, "nobody"] },
  basis: { fits: ["g anhydrous per 100 g water"], not: ["g per 100 g solution", undefined] },
  kind: {
    fits: ["tabulated", "converted", "interpolated", "extrapolated", "near a single figure"],
    not: ["guessed", undefined],
  },
  knownAs: { fits: ["evaluated", "measured", "compiled", "converted", "memory"], not: ["guessed", undefined] },
  source: { fits: ["memory"], not: ["nobody", undefined] },
  competing: {
    fits: [[], [figure], many(figure, 100)],
    not: [
      undefined,
      "none",
      { length: 0 },
      many(figure, 101),
      [figure, { ...figure, celsius: -300 }],
      [figure, { ...figure, source: "nobody" }],
      [{ ...figure, value: "0" }],
      [{ ...figure, value: 3 }],
      [undefined],
    ],
  },
  weak: { fits: [true, false], not: [0, undefined] },
  uncertainty: {
    fits: [[], [part], [{ ...part, relative: 0 }], many(part, 100)],
    not: [
      undefined,
      "none",
      many(part, 101),
      [part, { ...part, relative: -0.1 }],
      [{ ...part, relative: Number.POSITIVE_INFINITY }],
      [{ ...part, cause: 1 }],
      [part, "part"],
    ],
  },
  warnings: { fits: [[], ["wet"], many("wet", 100)], not: [undefined, "wet", many("wet", 101), ["wet", 1], [1]] },
};

describe("a solubility read back", () => {
  it.each(Object.entries(FIELDS))("has a field %s as it can be, and no other", (field, { fits, not }) => {
    expect(fits.length, "rows to test").toBeGreaterThan(0);
    for (const value of fits) {
      const back = solubilityFromJSON({ ...whole(), [field]: value } as SolubilityRecord);
      expect(back[field as "name"], JSON.stringify(value)?.slice(0, 60)).toEqual(value);
    }
    for (const value of not)
      expect(refusal({ ...whole(), [field]: value }), JSON.stringify(value)?.slice(0, 60)).toMatchObject({
        code: "solubility.bad-option",
        message: expect.stringContaining(`not a solubility record: ${field}`),
        hint: "pass what toJSON gave, parsed",
      });
  });

  it("is of a mass above zero, and a record of this kind", () => {
    const { perHundredGramsWater } = whole();
    expect(refusal({ ...whole(), perHundredGramsWater: { ...perHundredGramsWater, value: "0" } })?.code).toBe(
      "solubility.bad-option",
    );
    expect(refusal({ ...whole(), perHundredGramsWater: { ...perHundredGramsWater, unit: "mL" } })?.code).toBe(
      "solubility.bad-option",
    );
    for (const record of [undefined, [], "text", { ...whole(), kind: undefined }, {}])
      expect(refusal(record)?.code).toBe("solubility.bad-option");
  });

  it("is another copy: what is done to the data does nothing to it", () => {
    const data = whole();
    const back = solubilityFromJSON(data);
    const before = JSON.stringify(back);
    (data.warnings as string[]).push("meddled");
    (data.uncertainty as unknown as { relative: number }[])[0]!.relative = 9;
    expect(JSON.stringify(back)).toBe(before);
    expect(Object.isFrozen(back.uncertainty)).toBe(true);
  });
});

// Fifty-nine published preparations, each with its source beside it in the table: every figure that follows from the
// amounts, and every oddity that follows from the numbers.
import { checkRecipe, molarMass, type Quantity } from "preparative";
import { describe, expect, it } from "vitest";
import { PREPARATIONS, type PublishedPreparation } from "../data/preparations";

/** Half a unit in the last printed digit, and what the printed molar masses (abridged to 3 decimals) allow. */
function agrees(figure: Quantity, unit: string, printed: string): void {
  const decimals = /\.(\d+)/.exec(printed)?.[1]?.length ?? 0;
  const half = 0.5 * 10 ** -decimals;
  const value = figure.in(unit).toNumber();
  expect(Math.abs(value - Number(printed)), `${value} against ${printed} ${unit}`).toBeLessThanOrEqual(
    half * 1.0001 + Number(printed) * 2e-5,
  );
}

const check = (p: PublishedPreparation) => checkRecipe(p.recipe);

describe.each(PREPARATIONS)("$id ($confidence: $source.title, $source.edition, $source.where)", (p) => {
  it("comes to the recomputed figures", () => {
    const { expected } = p;
    const found = check(p);
    agrees(molarMass(p.recipe.product), "g/mol", expected.molarMass);
    if (expected.limiting === undefined) {
      expect(found.account).toBeUndefined();
      expect(found.unknown.length).toBeGreaterThan(0);
      return;
    }
    const limiting = found.account!.supplied.find((s) => s.limiting)!;
    expect(molarMass(limiting.species.normalize("NFKC")).compare(molarMass(expected.limiting))).toBe(0);
    agrees(found.extent!, "mol", expected.extent!);
    agrees(found.theoreticalYield!, "g", expected.theoreticalYield!);
    for (const gas of expected.gases ?? []) {
      const own = found.gases.find((g) => g.formula.normalize("NFKC") === gas.formula)!;
      agrees(own.amount, "mol", gas.amount);
      agrees(own.volume, "L", gas.litres);
    }
    expect(found.gases.length).toBe((expected.gases ?? []).length);
    for (const gas of expected.consumed ?? []) {
      const own = found.gasesTaken.find((g) => g.formula.normalize("NFKC") === gas.formula)!;
      agrees(own.amount, "mol", gas.amount);
      agrees(own.volume, "L", gas.litres);
    }
    for (const by of expected.byProducts ?? []) {
      const own = found.byProducts.find((b) => b.formula.normalize("NFKC") === by.formula)!;
      agrees(own.amount, "mol", by.amount);
      agrees(own.mass, "g", by.grams);
    }
    for (const [form, { amount, times }] of Object.entries(expected.supplied)) {
      const own = found.account!.supplied.find(
        (s) => molarMass(s.form.normalize("NFKC")).compare(molarMass(form)) === 0,
      )!;
      agrees(own.amount, "mol", amount);
      if (times !== undefined) agrees(own.timesStoichiometric, "", times);
    }
    const given = (kind: string) => found.yields.filter((y) => y.given === kind);
    expected.percentYields?.forEach((printed, i) => {
      agrees(given("mass")[i]!.percentYield, "%", printed);
    });
    expected.gramsFromPercent?.forEach((printed, i) => {
      agrees(given("percent yield")[i]!.mass, "g", printed);
    });
  });

  it("shows its oddities unprompted, and no others", () => {
    const codes = new Set(check(p).findings.map((f) => f.code));
    for (const code of p.findings) expect([...codes]).toContain(code);
    if (p.clean === true) expect([...codes]).toEqual([]);
  });
});

describe("the table of published preparations", () => {
  it("is whole", () => {
    expect(PREPARATIONS.length).toBe(59);
    expect(new Set(PREPARATIONS.map((p) => p.id)).size).toBe(59);
  });
});

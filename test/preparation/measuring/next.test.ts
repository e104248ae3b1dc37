// What to measure next. The numbers are worked out by hand beside each check (JCGM 100:2008, 5.1.2: u² = Σ (c u)²).
import { evaluateRun, planPreparation, quantity, whatToMeasureNext } from "preparative";
import { describe, expect, it } from "vitest";

const plan = planPreparation({
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
  product: "Zn5(CO3)2(OH)6",
  materials: [
    { name: "zinc", form: "ZnSO4·7H2O" },
    { name: "soda", form: "Na2CO3", assay: "96 ± 4 %", excess: "5 %" },
  ],
  scale: { product: "50 g" },
});

describe("what to measure next, for a figure", () => {
  // Soda limits at 20 g: u(yield)/yield = 4/96 = 4.17 %; titrated to 0.6 % it is 0.6 % and what balances add (0.14 % and less).
  it("says to titrate the soda where its assay makes the yield uncertain", () => {
    const run = evaluateRun(plan, { weighed: { soda: "20.0 g" }, dried: "25.0 g" });
    const [first] = whatToMeasureNext(run.percentYield!);
    expect(first!.does).toBe("titrate for the assay of soda, three times");
    expect(first!.share).toBeGreaterThan(0.99);
    const relative = (u: { div(by: unknown): { toNumber(): number } }): number =>
      u.div(run.percentYield!.value).toNumber();
    expect(relative(first!.now)).toBeCloseTo(4 / 96, 3);
    expect(relative(first!.then)).toBeGreaterThan(0.006);
    expect(relative(first!.then)).toBeLessThan(0.007);
  });

  // z = x y with u(x)/x = 1 %, u(y)/y = 2 %: shares 1/5 and 4/5. The balance takes the first off but for 0.0041/10 g.
  it("weighs what a measurement takes off against its time", () => {
    const x = quantity("10.0 ± 0.1 g", { label: "portion" });
    const y = quantity("50 ± 1 %", { label: "assay" });
    const next = whatToMeasureNext(x.times(y).to("g"));
    expect(next.map(({ input, share }) => [input, Number(share.toFixed(6))])).toEqual([
      ["portion", 0.2],
      ["assay", 0.8],
    ]);
    // In 3 min 0.2 of the variance goes, in 45 min 0.73 (0.8 × (1 - 0.3²)): 0.067 against 0.016 a minute.
    expect(next[1]!.then.div(next[1]!.now).toNumber()).toBeCloseTo(Math.sqrt(1 - 0.8 * (1 - 0.3 ** 2)), 9);
    const quick = whatToMeasureNext(x.times(y).to("g"), { titration: { takes: "1 min" } });
    expect(quick[0]!.input).toBe("assay");
  });

  it("offers no measurement for a figure of a table, nor where the input is as good already", () => {
    const table = quantity("8.0 ± 0.5", { label: "pKsp", source: "a table" });
    expect(whatToMeasureNext(table.times(2))[0]).toMatchObject({ does: undefined, takes: undefined, share: 1 });
    expect(whatToMeasureNext("25.00 ± 0.01 mL")[0]!.does).toBeUndefined();
    expect(whatToMeasureNext("25 ± 1 mL")[0]!.does).toMatch(/ring mark/);
  });

  // z = x y of two tables, 1 % and 2 %: shares 1/5 and 4/5, and nothing takes any of it off
  it("names first what weighs most, of what no measurement makes better", () => {
    const small = quantity("10.0 ± 0.1", { label: "small", source: "a table" });
    const great = quantity("50 ± 1", { label: "great", source: "a table" });
    for (const figure of [small.times(great), great.times(small)])
      expect(whatToMeasureNext(figure).map(({ input, share }) => [input, Number(share.toFixed(6))])).toEqual([
        ["great", 0.8],
        ["small", 0.2],
      ]);
  });

  it("counts a thermometer in degrees of difference", () => {
    const [t] = whatToMeasureNext(quantity("21.0 ± 1.0 °C", { label: "temperature" }));
    expect(t!.then.toNumber()).toBeCloseTo(0.1, 9);
  });

  it("refuses a figure without uncertainty, and a means nobody has", () => {
    expect(() => whatToMeasureNext("5 g")).toThrow(expect.objectContaining({ code: "plan.request" }));
    expect(() => whatToMeasureNext("5 ± 1 g", { balances: {} } as never)).toThrow(
      expect.objectContaining({ code: "plan.unknown-option" }),
    );
  });

  it("never makes a figure worse", () => {
    for (const u of ["0.001", "0.01", "0.1", "1", "3"])
      for (const one of whatToMeasureNext(quantity(`10 ± ${u} g`).times(quantity("50 ± 0.2 %"))))
        expect(one.then.toNumber()).toBeLessThanOrEqual(one.now.toNumber());
  });
});

describe("what to measure next, for a verdict", () => {
  it("takes the quick test of the last wash before an oven where salts or water explain the mass", () => {
    const run = evaluateRun(plan, { dried: "54.0 g" });
    const codes = run.verdict.map(({ code }) => code);
    expect(codes).toEqual(expect.arrayContaining(["wet", "unwashed"]));
    const next = whatToMeasureNext(run.verdict);
    expect(next[0]!.does).toBe("test the last wash");
    expect(next[0]!.outcomes.find(({ shows }) => shows === "positive")!.leaves).toEqual(["unwashed"]);
  });

  it("puts a drop of precipitant into the filtrate of a product that is too light", () => {
    expect(whatToMeasureNext(evaluateRun(plan, { dried: "35.0 g" }).verdict)[0]!.does).toMatch(
      /drop of the precipitant/,
    );
  });

  it("asks for nothing where one finding stands alone", () => {
    const [only] = evaluateRun(plan, { dried: "49 g" }).verdict;
    expect(whatToMeasureNext([only!])).toEqual([]);
    expect(whatToMeasureNext([])).toEqual([]);
  });

  it("decides between findings that are at least half as likely as the first", () => {
    const finding = (code: "wet" | "unwashed" | "too-heavy", weight: number) => ({
      ...evaluateRun(plan, { dried: "54.0 g" }).verdict[0]!,
      code,
      weight,
    });
    const next = whatToMeasureNext([finding("wet", 0.8), finding("unwashed", 0.4), finding("too-heavy", 0.399)]);
    expect(next.length).toBeGreaterThan(0);
    for (const { outcomes, bits } of next) {
      expect(outcomes.flatMap(({ leaves }) => leaves).sort()).toEqual(["unwashed", "wet"]);
      // two to one: log2(3) - 2/3
      expect(bits).toBeCloseTo(Math.log2(3) - 2 / 3, 9);
    }
    expect(whatToMeasureNext([finding("wet", 0.8), finding("unwashed", 0.399)])).toEqual([]);
  });

  it("tells no more than the logarithm of how many findings there are", () => {
    const { verdict } = evaluateRun(plan, { dried: "54.0 g" });
    let tested = 0;
    for (const { bits } of whatToMeasureNext(verdict)) {
      expect(bits).toBeGreaterThan(0);
      expect(bits).toBeLessThanOrEqual(Math.log2(verdict.length));
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(7);
  });
});

// What a figure of the table is worth, over all rows: the parts of its uncertainty, its warnings, its sources, and where the
// table is silent. The planning values stand in the guide; the arithmetic is beside each check.
import { attempt, facts, solubilityOf } from "preparative";
import { describe, expect, it } from "vitest";
import { branchesOf } from "../../src/solubility/curves/branch";
import { SOLUBILITY, type SolubilityRow } from "../../src/solubility/data/curves";

const read = (row: SolubilityRow, celsius: number) => attempt(() => solubilityOf(row.formula, `${celsius} °C`));
const partOf = (row: SolubilityRow, celsius: number, cause: string): number | undefined => {
  const answer = read(row, celsius);
  return answer.ok ? answer.value.uncertainty.find((part) => part.cause === cause)?.relative : undefined;
};
const rows = () => SOLUBILITY().filter((row) => read(row, row.points[0]![0]).ok);

/** Half a unit of the last digit printed, as a rectangle. */
const halfDigit = (printed: string): number => {
  const [mantissa, exponent = "0"] = printed.split("e");
  const decimals = mantissa!.split(".")[1]?.length ?? 0;
  return (0.5 * 10 ** (Number(exponent) - decimals)) / Math.sqrt(3) / Number(printed);
};

describe("a figure of the table", () => {
  it("is what is printed, with the doubt of its kind, its last digit and a weak row", () => {
    const trust = { evaluated: 0.01, measured: 0.02, compiled: 0.03, memory: 0.05, converted: 1 } as const;
    let [figures, weak, powers] = [0, 0, 0];
    for (const row of rows())
      for (const [celsius, printed] of row.points) {
        const answer = read(row, celsius);
        expect(answer.ok, `${row.formula} at ${celsius}`).toBe(true);
        if (!answer.ok) continue;
        const { value } = answer;
        expect(value.perHundredGramsWater.toNumber("g")).toBe(Number(printed));
        expect(value.kind).toBe(row.knownAs === "converted" ? "converted" : "tabulated");
        expect(partOf(row, celsius, `kind of table: ${row.knownAs}`)).toBe(trust[row.knownAs]);
        expect(partOf(row, celsius, "last digit printed")).toBeCloseTo(halfDigit(printed), 12);
        expect(partOf(row, celsius, "weak row")).toBe(
          row.weak === true && row.knownAs !== "converted" ? 0.1 : undefined,
        );
        expect(partOf(row, celsius, "interpolation")).toBeUndefined();
        expect(partOf(row, celsius, "distance from the only figure")).toBeUndefined();
        // all of it together is the root of the squares
        const whole = Math.hypot(...value.uncertainty.map(({ relative }) => relative));
        const stated = value.perHundredGramsWater.standardUncertainty!.toNumber() / Number(printed);
        expect(stated / whole).toBeCloseTo(1, 1);
        figures += 1;
        weak += row.weak === true ? 1 : 0;
        powers += printed.includes("e") ? 1 : 0;
      }
    expect(figures).toBeGreaterThan(1000);
    expect(weak).toBeGreaterThan(20);
    expect(powers).toBeGreaterThan(5);
  });

  it("between two others is uncertain by the square of the gap: 0.3 in the middle of 100 K", () => {
    let tested = 0;
    for (const row of rows())
      for (const { knots } of branchesOf(row))
        for (const [i, b] of knots.entries()) {
          const a = knots[i - 1];
          if (a === undefined || row.changesWithin !== undefined) continue;
          for (const share of [0.25, 0.5, 0.8]) {
            const celsius = Number((a.celsius + share * (b.celsius - a.celsius)).toFixed(3));
            if (row.points.some(([at]) => at === celsius)) continue;
            const gap = b.celsius - a.celsius;
            const part = (celsius - a.celsius) / gap;
            expect(partOf(row, celsius, "interpolation"), `${row.formula} at ${celsius}`).toBeCloseTo(
              0.3 * (gap / 100) ** 2 * 4 * part * (1 - part),
              9,
            );
            expect(read(row, celsius)).toMatchObject({ value: { kind: "interpolated" } });
            const meeting = partOf(row, celsius, "change of solid, placed from both sides") ?? 0;
            expect(meeting).toBeCloseTo(a.spread * (1 - part) + b.spread * part, 9);
            const answer = read(row, celsius);
            // a part that adds nothing is not listed
            if (answer.ok)
              for (const { cause, relative } of answer.value.uncertainty) expect(relative, cause).toBeGreaterThan(0);
            tested += 1;
          }
        }
    expect(tested).toBeGreaterThan(2000);
  });

  it("is rounded to six digits, its uncertainty to three, however large both are", () => {
    // a measurement of the reader's own, of what is rather a solution of water in the salt
    const [cold, hot] = [1_234_567_890, 2_469_135_780];
    const own = facts({
      source: "measured in the studio",
      solubilities: [
        {
          formula: "LiClO3",
          points: [
            [`20 °C`, `${cold} g`],
            [`40 °C`, `${hot} g`],
          ],
        },
      ],
    });
    for (const [celsius, digits] of [
      [20, 10],
      [30, 6],
    ] as const) {
      const { value, standardUncertainty } = solubilityOf("LiClO3", `${celsius} °C`, {
        facts: own,
      }).perHundredGramsWater;
      expect(value.toNumber()).toBeGreaterThanOrEqual(cold);
      expect(value.toNumber()).toBeLessThan(hot);
      expect(value.toFixed().replace(/0+$/, "").length).toBeLessThanOrEqual(digits);
      expect(standardUncertainty!.toFixed().replace(/0+$/, "").length).toBeLessThanOrEqual(3);
      // one to fifty per cent
      expect(standardUncertainty!.toNumber() / value.toNumber()).toBeGreaterThan(0.01);
      expect(standardUncertainty!.toNumber() / value.toNumber()).toBeLessThan(0.5);
    }
  });

  it("beside a lone one drifts by 2.2 % per kelvin, 3.3 % where less than a gram dissolves, up to 6 K off (10 K converted)", () => {
    let [near, far, sparing] = [0, 0, 0];
    expect(rows().length, "rows to test").toBeGreaterThan(0);
    for (const row of rows()) {
      if (row.points.length !== 1 || row.changesWithin !== undefined) continue;
      const [celsius, printed] = row.points[0]!;
      const reach = row.knownAs === "converted" ? 10 : 6;
      const drift = Number(printed) < 1 ? 0.033 : 0.022;
      for (const off of [-reach, -2, 1, reach]) {
        const answer = read(row, celsius + off);
        expect(answer, `${row.formula} at ${celsius + off}`).toMatchObject({
          ok: true,
          value: { kind: "near a single figure" },
        });
        expect(partOf(row, celsius + off, "distance from the only figure")).toBeCloseTo(drift * Math.abs(off), 9);
        near += 1;
        sparing += Number(printed) < 1 ? 1 : 0;
      }
      for (const off of [-reach - 0.1, reach + 0.1]) {
        const answer = read(row, celsius + off);
        expect(answer.ok).toBe(false);
        if (answer.ok) continue;
        expect(answer.error).toMatchObject({
          code: "solubility.far-from-single-figure",
          message: expect.stringContaining(`the only figure for ${row.formula} is at ${celsius} °C`),
          hint: expect.stringContaining(`ask within ${reach} K of ${celsius} °C, or measure`),
          details: { formula: row.formula, from: celsius, to: celsius, nearest: [{ celsius, grams: printed }] },
        });
        far += 1;
      }
      expect(read(row, celsius)).toMatchObject({ ok: true });
      const { value } = read(row, celsius) as { value: ReturnType<typeof solubilityOf> };
      expect(value.warnings[0]).toBe(`rests on a single figure at ${celsius} °C`);
    }
    expect(near).toBeGreaterThan(200);
    expect(far).toBeGreaterThan(100);
    expect(sparing).toBeGreaterThan(40);
  });

  it("ends with the table: 6 K below the coldest figure it is run out, further and above the hottest it is refused", () => {
    let [below, refused] = [0, 0];
    expect(rows().length, "rows to test").toBeGreaterThan(0);
    for (const row of rows()) {
      if (row.points.length < 2) continue;
      const [coldest, hottest] = [row.points[0]!, row.points.at(-1)!];
      const branch = branchesOf(row)[0]!;
      const runs = branch.knots.length > 1 && branch.knots[0]!.celsius === coldest[0];
      for (const off of [0.5, 6]) {
        const celsius = coldest[0] - off;
        const answer = read(row, celsius);
        if (celsius < 0 || !runs) continue;
        if (!answer.ok) continue;
        expect(answer.value.kind).toBe("extrapolated");
        // d ln S of the run-out, 30 % of it: below the figure by what the two coldest say
        const change = Math.abs(Math.log(answer.value.perHundredGramsWater.toNumber("g") / Number(coldest[1])));
        expect(partOf(row, celsius, "extrapolated below the coldest figure")).toBeCloseTo(0.3 * change, 3);
        expect(answer.value.warnings).toContain(`extrapolated below the coldest figure, which is at ${coldest[0]} °C`);
        below += 1;
      }
      for (const celsius of [coldest[0] - 6.1, hottest[0] + 0.1]) {
        const answer = read(row, celsius);
        if (answer.ok) continue;
        expect(["solubility.outside-range", "solubility.far-from-single-figure", "solubility.solid-changes"]).toContain(
          answer.error.code,
        );
        if (answer.error.code !== "solubility.outside-range") continue;
        const nearest = celsius < coldest[0] ? coldest : hottest;
        expect(answer.error.message).toContain(`is known from ${coldest[0]} to ${hottest[0]} °C`);
        expect(answer.error.hint).toContain(`nearest: ${nearest[1]} g at ${nearest[0]} °C`);
        expect(answer.error.details).toMatchObject({ formula: row.formula, celsius });
        refused += 1;
      }
      // nothing is run out to ice
      if (coldest[0] < 6) expect(read(row, -0.1), row.formula).not.toMatchObject({ value: { kind: "extrapolated" } });
    }
    expect(below).toBeGreaterThan(20);
    expect(refused).toBeGreaterThan(100);
  });

  it("is not read where the solid changes at a place nobody has found", () => {
    let tested = 0;
    for (const row of SOLUBILITY())
      for (const [from, to] of row.changesWithin ?? []) {
        const answer = read(row, (from + to) / 2);
        expect(answer.ok, row.formula).toBe(false);
        if (!answer.ok && answer.error.code === "solubility.solid-changes")
          expect(answer.error).toMatchObject({
            hint: `ask at ${from} or ${to} °C, or measure`,
            details: { formula: row.formula, from, to },
          });
        for (const end of [from, to]) {
          const at = read(row, end);
          expect(at.ok || at.error.code !== "solubility.solid-changes", `${row.formula} at ${end}`).toBe(true);
        }
        tested += 1;
      }
    expect(tested).toBeGreaterThan(0);
  });

  it("says where other sources disagree, within 5 K of theirs and by more than 5 %", () => {
    let [spread, agreed] = [0, 0];
    for (const row of rows())
      for (const [celsius, printed] of row.points) {
        const answer = read(row, celsius);
        if (!answer.ok) continue;
        const own = (at: number): number | undefined => {
          if (at === celsius) return Number(printed);
          const there = read(row, at);
          return there.ok ? there.value.perHundredGramsWater.toNumber("g") : undefined;
        };
        const near = (row.competing ?? []).filter((one) => Math.abs(one.celsius - celsius) <= 5);
        const off = near.map((one) => Math.abs(Number(one.value) / (own(one.celsius) ?? Number(one.value)) - 1));
        const widest = Math.max(0, ...off);
        if (Math.abs(widest - 0.05) < 1e-6) continue;
        const warned = answer.value.warnings.find((warning) => warning.startsWith("sources disagree by"));
        const part = partOf(row, celsius, "sources disagree");
        if (widest > 0.05) {
          expect(warned, `${row.formula} at ${celsius}`).toBe(`sources disagree by ${Math.round(widest * 100)} % here`);
          expect(part).toBeCloseTo(widest / Math.sqrt(3), 4);
          spread += 1;
        } else {
          expect(warned, `${row.formula} at ${celsius}`).toBeUndefined();
          expect(part).toBeUndefined();
          agreed += near.length > 0 ? 1 : 0;
        }
      }
    expect(spread).toBeGreaterThan(30);
    expect(agreed).toBeGreaterThan(0);
  });

  it("warns of what it rests on: memory, a weak row, a conversion, a solid that is not told, its own note", () => {
    expect(rows().length, "rows to test").toBeGreaterThan(0);
    for (const row of rows()) {
      const { warnings } = solubilityOf(row.formula, `${row.points[0]![0]} °C`);
      const has = (text: string): boolean => warnings.some((warning) => warning.includes(text));
      expect(has("recalled from memory"), row.formula).toBe(row.knownAs === "memory");
      expect(has("a weak figure"), row.formula).toBe(
        row.weak === true && row.knownAs !== "memory" && row.knownAs !== "converted",
      );
      expect(has("converted from a solubility product"), row.formula).toBe(row.knownAs === "converted");
      const branch = branchesOf(row).find(({ to }) => row.points[0]![0] <= to) ?? branchesOf(row).at(-1)!;
      expect(has("does not say which solid"), row.formula).toBe(branch.solid === undefined);
      if (row.note !== undefined) expect(warnings.at(-1)).toBe(row.note);
    }
  });

  it("of a converted product tells by the anion how far it falls short", () => {
    const told = (anion: RegExp): string[] =>
      SOLUBILITY()
        .filter(({ knownAs, formula }) => knownAs === "converted" && anion.test(formula))
        .map((row) => solubilityOf(row.formula, `${row.points[0]![0]} °C`).warnings.join("; "));
    const carbonates = told(/CO3/);
    expect(carbonates.length).toBeGreaterThan(0);
    for (const text of carbonates) expect(text).toContain("2 (calcium) to 40 times (lead)");
    for (const text of told(/PO4|AsO4/)) expect(text).toContain("100 to 10 000 times");
    for (const text of told(/OH|S$|CN/)) expect(text).toMatch(/many powers of ten|an order of magnitude only/);
    const halides = told(/(Cl|Br|I)\d?$/);
    for (const text of halides) expect(text).toContain("an order of magnitude only");
  });

  it("names the source of the nearer figure first where two sources made the row", () => {
    let [tested, both] = [0, 0];
    for (const row of rows()) {
      if (row.alsoFrom === undefined) continue;
      const of = (celsius: number) => (row.alsoFrom!.at.includes(celsius) ? row.alsoFrom!.source : row.source);
      for (const [i, [celsius]] of row.points.entries()) {
        expect(solubilityOf(row.formula, `${celsius} °C`).source).toBe(of(celsius));
        tested += 1;
        const next = row.points[i + 1];
        if (next === undefined || of(next[0]) === of(celsius)) continue;
        for (const [share, nearer] of [
          [0.2, celsius],
          [0.8, next[0]],
        ] as const) {
          const between = read(row, Number((celsius + share * (next[0] - celsius)).toFixed(3)));
          if (!between.ok) continue;
          expect(between.value.source, `${row.formula} at ${between.value.celsius}`).toBe(of(nearer));
          expect(between.value.perHundredGramsWater.source).toContain("; ");
          both += 1;
        }
      }
    }
    expect(tested).toBeGreaterThan(10);
    expect(both).toBeGreaterThan(4);
  });
});

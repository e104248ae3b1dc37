// Titrations, doses and buffers against what they are defined by: the end point is where the curve is steepest, an indicator
// errs by the volume at its change, a buffer holds as its derivative says.
import {
  aqueousComposition,
  attempt,
  bufferCapacity,
  bufferRecipe,
  dissolvedOverExcess,
  doseToPH,
  endPoints,
  explain,
  indicatorFor,
  pHOf,
  redissolving,
  solidsAlongAddition,
  solidsOverPH,
  type TitrationCurveRequest,
  titrationCurve,
} from "preparative";
import { describe, expect, it } from "vitest";
import { INDICATORS } from "../../src/aqueous/data/indicators";

const curveOf = (acid: string, base: string, more: Partial<TitrationCurveRequest> = {}) =>
  titrationCurve({
    flask: { volume: "25 mL", dissolved: [{ formula: acid, concentration: "0.1 mol/L" }] },
    burette: { formula: base, concentration: "0.1 mol/L" },
    ...more,
  });
const refused = (ask: () => unknown) => {
  const outcome = attempt(ask);
  return outcome.ok ? undefined : outcome.error;
};
type Curve = ReturnType<typeof curveOf>;
const at = (curve: Curve, millilitres: number): number =>
  curve.at(`${millilitres.toPrecision(12)} mL` as "1 mL").toNumber();
const slopeOf = (curve: Curve, millilitres: number, step = 1e-3): number =>
  (at(curve, millilitres + step) - at(curve, millilitres - step)) / (2 * step);

describe("a curve", () => {
  it.each([
    ["acetic acid with lye", "CH3COOH", "NaOH", [25]],
    ["ammonia with acid", "NH3", "HCl", [25]],
    ["hydrochloric acid with lye", "HCl", "NaOH", [25]],
    // the third hydron of phosphoric acid (pKa 12.3) is too weak to be seen
    ["phosphoric acid with lye", "H3PO4", "NaOH", [25, 50]],
    ["soda with acid", "Na2CO3", "HCl", [25, 50]],
    ["salt with lye: nothing to find", "NaCl", "NaOH", []],
  ] as const)("%s ends where the amounts are equal", (_, acid, base, volumes) => {
    const curve = curveOf(acid, base, { to: "70 mL" });
    const ends = endPoints(curve);
    expect(ends).toHaveLength(volumes.length);
    for (const [i, { volume, pH, steepness }] of ends.entries()) {
      const here = volume.toNumber("mL");
      expect(Math.abs(here - volumes[i]!)).toBeLessThan(0.3);
      expect(pH.toNumber()).toBeCloseTo(at(curve, here), 4);
      // steepest here: less steep on both sides, and as steep as the difference says
      const width = 0.02 / steepness;
      const slope = Math.abs(slopeOf(curve, here, width));
      expect(slope / steepness).toBeCloseTo(1, 2);
      for (const side of [-5, 5]) expect(Math.abs(slopeOf(curve, here + side * width, width))).toBeLessThan(slope);
    }
  });

  it("has 201 even points unless volumes are given, and ends somewhat past the last end point", () => {
    const curve = curveOf("CH3COOH", "NaOH");
    const to = curve.to.toNumber("mL");
    expect(to).toBeGreaterThan(25 * 1.02);
    expect(to).toBeLessThan(25 * 1.5);
    expect(curve.points).toHaveLength(201);
    for (const [i, { volume, pH }] of curve.points.entries()) {
      expect(volume.toNumber("mL")).toBeCloseTo((to * i) / 200, 3);
      if (i > 0) expect(pH.toNumber()).toBeGreaterThan(curve.points[i - 1]!.pH.toNumber());
    }
    const asked = curveOf("CH3COOH", "NaOH", { at: ["30 mL", "0 mL", "12.5 mL"] });
    expect(asked.points.map(({ volume }) => volume.toNumber("mL"))).toEqual([30, 0, 12.5]);
    expect(asked.to.toNumber("mL")).toBe(30);
    for (const { volume, pH } of asked.points) expect(pH.toNumber()).toBeCloseTo(at(curve, volume.toNumber("mL")), 8);
    expect(curveOf("CH3COOH", "NaOH", { to: "7 mL" }).to.toNumber("mL")).toBe(7);
  });

  it("ends somewhere where the burette changes nothing", () => {
    const curve = curveOf("NaCl", "KCl");
    expect(curve.to.toNumber("mL")).toBeGreaterThan(1);
    expect(new Set(curve.points.map(({ volume }) => volume.toNumber("mL"))).size).toBe(201);
    expect(endPoints(curve)).toEqual([]);
  });

  it("is the pH of the same mixture made at once", () => {
    const curve = curveOf("CH3COOH", "NaOH");
    for (const millilitres of [0, 10, 24, 26]) {
      const whole = pHOf({
        water: `${(25 + millilitres) / 1000} kg` as "1 kg",
        dissolved: [
          { formula: "CH3COOH", amount: "2.5 mmol" },
          { formula: "NaOH", amount: `${millilitres / 10} mmol` as "1 mmol" },
        ],
      });
      expect(at(curve, millilitres)).toBeCloseTo(whole.toNumber(), 3);
    }
  });

  it("is refused without the strength of the burette, and before nothing is added", () => {
    expect(
      refused(() =>
        titrationCurve({
          flask: { volume: "25 mL", dissolved: [] },
          burette: { formula: "NaOH" },
        }),
      ),
    ).toMatchObject({ code: "aqueous.missing-option", details: { argument: "burette.concentration" } });
    expect(refused(() => curveOf("HCl", "NaOH", { at: ["-1 mL"] }))?.code).toBe("aqueous.not-positive");
    expect(refused(() => curveOf("HCl", "NaOH", { to: "0 mL" }))?.code).toBe("aqueous.not-positive");
    expect(refused(() => curveOf("HCl", "NaOH").at("-1 mL"))?.code).toBe("aqueous.not-positive");
    const flask = { volume: "25 mL", water: "25 g", dissolved: [] } as const;
    const burette = { formula: "NaOH", concentration: "0.1 mol/L" } as const;
    expect(refused(() => titrationCurve({ flask, burette }))).toMatchObject({
      code: "aqueous.bad-option",
      details: { argument: "flask" },
    });
    expect(refused(() => titrationCurve({ flask: { dissolved: [] }, burette }))?.code).toBe("aqueous.missing-option");
    expect(refused(() => endPoints({} as Curve))?.code).toBe("aqueous.bad-option");
  });
});

describe("indicators", () => {
  it.each([
    ["acetic acid with lye", "CH3COOH", "NaOH"],
    ["ammonia with acid", "NH3", "HCl"],
    ["hydrochloric acid with lye", "HCl", "NaOH"],
  ] as const)("for %s err by the volume at their change", (_, flask, burette) => {
    const curve = curveOf(flask, burette, { to: "40 mL" });
    const [end] = endPoints(curve);
    const volume = end!.volume.toNumber("mL");
    const choices = indicatorFor(end!);
    const rising = flask !== "NH3";
    expect(choices.length, "rows to test").toBeGreaterThan(0);
    for (const { name, from, to, colours, error, errors, fits } of choices) {
      const row = INDICATORS.find((one) => one.name === name)!;
      expect([from.toNumber(), to.toNumber()]).toEqual([Number(row.from), Number(row.to)]);
      expect(colours).toEqual([row.acid, row.base]);
      // the change begins on the side that the titration comes from
      const ends = rising ? [from, to] : [to, from];
      expect(errors.length, "rows to test").toBeGreaterThan(0);
      for (const [i, one] of errors.entries()) {
        const percent = one.toNumber("%");
        expect(at(curve, volume * (1 + percent / 100)), `${name} ${i}`).toBeCloseTo(ends[i]!.toNumber(), 1);
      }
      const [first, last] = errors.map((one) => one.toNumber("%")) as [number, number];
      expect(error.toNumber("%")).toBe(Math.abs(first) > Math.abs(last) ? first : last);
      expect(fits).toBe(Math.abs(error.toNumber("%")) <= 1);
    }
    const sizes = choices.map(({ errors }) => errors.reduce((sum, one) => sum + Math.abs(one.toNumber("%")), 0));
    expect(sizes).toEqual([...sizes].sort((a, b) => a - b));
    expect(choices.some(({ fits }) => fits)).toBe(true);
    expect(choices.some(({ fits }) => !fits)).toBe(true);
  });

  it("are those whose change lies on the curve: none above the pH of the lye, none below that of the acid", () => {
    const curve = curveOf("CH3COOH", "NaOH", { to: "26 mL" });
    const names = indicatorFor(endPoints(curve)[0]!).map(({ name }) => name);
    // 0.1 mol/L acetic acid begins at pH 2.9
    expect(names).toContain("methyl orange");
    const last = at(curve, 39);
    expect(INDICATORS.length, "rows to test").toBeGreaterThan(0);
    for (const { name, to } of INDICATORS) expect(names.includes(name), name).toBe(Number(to) < last);
    expect(indicatorFor(endPoints(curve)[0]!)[0]).not.toHaveProperty("size");
  });

  it("have an uncertainty: how the amount at the change moves against that at the end", () => {
    const [end] = endPoints(curveOf("CH3COOH", "NaOH"));
    expect(indicatorFor(end!).length, "rows to test").toBeGreaterThan(0);
    for (const { error } of indicatorFor(end!)) {
      const u = error.standardUncertainty!.toNumber();
      expect(u).toBeGreaterThan(0);
      expect(u).toBeLessThan(30);
      expect(error.symbol).toBe("δ");
      expect(String(explain(error))).toContain("volume at the colour change / volume at the end point − 1");
    }
  });
});

describe("a dose", () => {
  const soda = { volume: "1 L", dissolved: [{ formula: "Na2CO3", concentration: "0.1 mol/L" }] } as const;

  it("is nothing where the pH is there already, and out of reach on the other side", () => {
    const acid = { volume: "1 L", dissolved: [{ formula: "HCl", concentration: "0.01 mol/L" }] } as const;
    const pH = pHOf({ water: "1 L", dissolved: [{ formula: "HCl", concentration: "0.01 mol/L" }] });
    const nothing = doseToPH({ solution: acid, to: pH.toNumber(), with: "NaOH" });
    expect([nothing.amount.toNumber("mol"), nothing.mass!.toNumber("g")]).toEqual([0, 0]);
    expect(refused(() => doseToPH({ solution: acid, to: 1.5, with: "NaOH" }))).toMatchObject({
      code: "aqueous.out-of-reach",
      hint: expect.stringContaining("an acid lowers the pH"),
      details: { target: 1.5 },
    });
    expect(refused(() => doseToPH({ solution: soda, to: 13, with: "HCl" }))?.code).toBe("aqueous.out-of-reach");
    expect(refused(() => doseToPH({ solution: { ...soda, water: "1 kg" }, to: 7, with: "HCl" }))?.code).toBe(
      "aqueous.bad-option",
    );
    expect(refused(() => doseToPH({ solution: { dissolved: [] }, to: 7, with: "HCl" }))?.code).toBe(
      "aqueous.missing-option",
    );
  });

  it.each([2, 4.5, 6, 8.3, 11] as const)("brings soda to pH %d, as the mixture made at once shows", (to) => {
    const dose = doseToPH({ solution: soda, to, with: "HCl" });
    const whole = pHOf({
      water: "1 L",
      dissolved: [
        { formula: "Na2CO3", amount: "0.1 mol" },
        { formula: "HCl", amount: dose.amount },
      ],
    });
    expect(whole.toNumber()).toBeCloseTo(to, 6);
    expect(dose.pH.toNumber()).toBeCloseTo(to, 6);
    // 36.46 g/mol
    expect(dose.mass!.toNumber("g") / dose.amount.toNumber("mol")).toBeCloseTo(36.46, 1);
    expect(dose.volume).toBeUndefined();
  });

  it("brings the crystal water of what is added, and the water of a solution", () => {
    const solution = { volume: "100 mL", dissolved: [{ formula: "HCl", concentration: "1 mol/L" }] } as const;
    const dry = doseToPH({ solution, to: 7, with: "Na2CO3" });
    const crystals = doseToPH({ solution, to: 7, with: "Na2CO3·10H2O" });
    // ten waters a mole: half a decimole brings 9 g to 100 g, which moves the dose a little
    expect(crystals.amount.toNumber("mol")).not.toBe(dry.amount.toNumber("mol"));
    expect(crystals.amount.toNumber("mol") / dry.amount.toNumber("mol")).toBeCloseTo(1, 1);
    const poured = doseToPH({ solution, to: 7, with: { formula: "NaOH", concentration: "1 mol/L" } });
    expect(poured.volume!.toNumber("mL")).toBeCloseTo(100, 1);
    for (const { formula, amount, water } of [
      { formula: "Na2CO3·10H2O", amount: crystals.amount, water: 0.1 },
      { formula: "NaOH", amount: poured.amount, water: 0.1 + poured.volume!.toNumber("L") },
    ])
      expect(
        pHOf({
          water: `${water} kg` as "1 kg",
          dissolved: [
            { formula: "HCl", amount: "0.1 mol" },
            { formula, amount },
          ],
        }).toNumber(),
      ).toBeCloseTo(7, 1);
  });

  it("that dissolves a solid is the least: a thousandth less leaves some, the same leaves none", () => {
    const { needed, last, pH } = redissolving({ solid: "AgCl", amountOfSolid: "0.01 mol", with: "NH3", water: "1 kg" });
    const left = (share: string) =>
      aqueousComposition({
        water: "1 kg",
        dissolved: [
          { formula: "AgCl", amount: "0.01 mol" },
          { formula: "NH3", amount: needed.times(share) as typeof needed },
        ],
      });
    expect(left("0.999").solids.map(({ formula }) => formula)).toEqual(["AgCl"]);
    expect(left("1.000001").solids).toEqual([]);
    expect(last).toBe("AgCl");
    expect(pH.toNumber()).toBeCloseTo(left("1").pH.toNumber(), 5);
    expect(
      refused(() => redissolving({ solid: "NaCl", amountOfSolid: "0.01 mol", with: "NH3", water: "1 kg" })),
    ).toMatchObject({ code: "aqueous.out-of-reach", details: { solid: "NaCl" } });
    expect(
      refused(() => redissolving({ solid: "BaSO4", amountOfSolid: "0.1 mol", with: "NaCl", water: "1 kg" })),
    ).toMatchObject({
      code: "aqueous.out-of-reach",
      message: expect.stringContaining("BaSO4 does not dissolve in NaCl"),
      details: { solid: "BaSO4", upTo: expect.any(Number), ionicStrength: expect.any(Number) },
    });
  });
});

describe("buffers", () => {
  it("without a pair take the one whose even mixture comes nearest", () => {
    // pKa of the tables: citric acid's second and third step, formic, acetic, dihydrogenphosphate, ammonium, boric, hydrogencarbonate
    for (const [pH, acid] of [
      [3.7, "HCOOH"],
      [4.7, "CH3COOH"],
      [6.9, "KH2PO4"],
      [9.3, "NH4Cl"],
      [10.2, "NaHCO3"],
    ] as const)
      expect(bufferRecipe({ pH, concentration: "0.1 mol/L", volume: "1 L" }).pair[0], `pH ${pH}`).toBe(acid);
  });

  it("weigh shares of acid and base that give the pH, and all of them make the concentration", () => {
    const { amounts, composition, capacity } = bufferRecipe({
      pH: 4.8,
      concentration: "0.2 mol/L",
      volume: "500 mL",
      pair: ["CH3COOH", "CH3COONa"],
    });
    const [acid, base] = amounts.map(({ amount }) => amount.toNumber("mol")) as [number, number];
    expect(acid + base).toBeCloseTo(0.1, 9);
    expect(composition.pH.toNumber()).toBeCloseTo(4.8, 6);
    // 60.05 and 82.03 g/mol
    expect(amounts[0]!.mass.toNumber("g") / acid).toBeCloseTo(60.05, 1);
    expect(amounts[1]!.mass.toNumber("g") / base).toBeCloseTo(82.03, 1);
    // β = ln 10 c x (1 − x) without activities, which add a few per cent
    const x = base / 0.1;
    expect(capacity.toNumber("mol/L") / (Math.LN10 * 0.2 * x * (1 - x))).toBeCloseTo(1, 1);
  });

  it("are refused where a pair does not reach, is no pair, or the pH is held", () => {
    const wanted = { concentration: "0.1 mol/L", volume: "1 L" } as const;
    for (const pH of [2, 9])
      expect(refused(() => bufferRecipe({ ...wanted, pH, pair: ["CH3COOH", "CH3COONa"] }))).toMatchObject({
        code: "aqueous.out-of-reach",
        hint: expect.stringContaining("within one unit"),
        details: { pair: ["CH3COOH", "CH3COONa"], pH },
      });
    expect(refused(() => bufferRecipe({ ...wanted, pH: 5, pair: ["CH3COOH"] as never }))?.code).toBe(
      "aqueous.bad-option",
    );
    const held = aqueousComposition({ water: "1 kg", dissolved: [], pH: 5 });
    expect(refused(() => bufferCapacity(held))?.code).toBe("aqueous.bad-option");
    expect(refused(() => bufferCapacity({ ...held }))?.code).toBe("aqueous.bad-option");
  });

  it("hold as a little strong acid shows: two answers a thousandth apart", () => {
    for (const activity of ["Davies", "ideal"] as const) {
      const at = (acid: number) =>
        aqueousComposition({
          water: "1 kg",
          dissolved: [
            { formula: "CH3COOH", amount: "0.05 mol" },
            { formula: "CH3COONa", amount: "0.05 mol" },
            { formula: "HCl", amount: `${acid} mol` as "1 mol" },
          ],
          activity,
        });
      const difference = (at(2e-4).pH.toNumber() - at(0).pH.toNumber()) / 2e-4;
      expect(bufferCapacity(at(1e-4)).toNumber("mol/L") * -difference).toBeCloseTo(1, 3);
    }
  });
});

describe("along an addition and over a range", () => {
  const alumina = {
    water: "1 L",
    dissolved: [{ formula: "AlCl3", amount: "0.1 mol" }],
    add: "NaOH",
    amount: "0.45 mol",
  } as const;

  it("the stretches follow each other from nothing to all, a step apart, each with its pH at both ends", () => {
    const stretches = solidsAlongAddition({ ...alumina, steps: 90 } as never);
    expect(stretches[0]!.from.toNumber("mol")).toBe(0);
    expect(stretches.at(-1)!.to.toNumber("mol")).toBeCloseTo(0.45, 9);
    expect(stretches.length, "rows to test").toBeGreaterThan(0);
    for (const [i, { from, to, pH, solids }] of stretches.entries()) {
      expect(to.toNumber("mol")).toBeGreaterThan(from.toNumber("mol"));
      if (i > 0) expect(from.toNumber("mol") - stretches[i - 1]!.to.toNumber("mol")).toBeCloseTo(0.005, 9);
      expect(pH[1]).toBeGreaterThan(pH[0]);
      for (const [k, amount] of [from, to].entries()) {
        const whole = aqueousComposition({
          water: "1 L",
          dissolved: [...alumina.dissolved, { formula: "NaOH", amount }] as never,
        });
        expect(whole.pH.toNumber()).toBeCloseTo(pH[k]!, 6);
        expect(whole.solids.map(({ formula }) => formula)).toEqual(solids);
      }
    }
  });

  it.each([
    [1, false],
    [2, true],
    [2.5, false],
    [1000, true],
    [1001, false],
  ])("%d steps are served: %s", (steps, served) => {
    expect(refused(() => solidsAlongAddition({ ...alumina, steps } as never))?.code).toBe(
      served ? undefined : "aqueous.bad-option",
    );
    expect(refused(() => dissolvedOverExcess({ ...alumina, ion: "Al^3+", steps } as never))?.code).toBe(
      served ? undefined : "aqueous.bad-option",
    );
  });

  it("an addition that becomes too strong for the model ends where it does; one that begins so is refused", () => {
    const stretches = solidsAlongAddition({ ...alumina, amount: "10 mol", steps: 100 } as never);
    expect(stretches.at(-1)!.to.toNumber("mol")).toBeLessThan(4);
    expect(
      refused(() =>
        dissolvedOverExcess({
          ion: "Na+",
          water: "1 kg",
          dissolved: [{ formula: "NaCl", amount: "5 mol" }],
          add: "HCl",
          amount: "1 mol",
        }),
      )?.code,
    ).toBe("aqueous.too-strong");
  });

  it.each([
    [{ from: 3, to: 5, step: 0 }, "aqueous.bad-option"],
    [{ from: 5, to: 5 }, "aqueous.bad-option"],
    [{ from: 5, to: 3 }, "aqueous.bad-option"],
    [{ from: 0, to: 14, step: 0.0069 }, "aqueous.bad-option"],
    [{ from: -2, to: 14 }, "aqueous.outside-range"],
    [{ from: 3, to: 16 }, "aqueous.outside-range"],
  ])("a range of pH %o is refused", (range, code) => {
    expect(
      refused(() => solidsOverPH({ ions: [{ formula: "ZnSO4", concentration: "1 mmol/L" }], ...range }))?.code,
    ).toBe(code);
  });

  it("the points of a range are the whole answers at those pH", () => {
    const ions = [
      { formula: "ZnSO4", concentration: "0.01 mol/L" },
      { formula: "CuSO4", concentration: "0.002 mol/L" },
    ] as const;
    const over = solidsOverPH({ ions, from: 5, to: 11, step: 1.5 });
    expect(over.points.map(({ pH }) => pH)).toEqual([5, 6.5, 8, 9.5, 11]);
    for (const { pH, dissolved, solids } of over.points) {
      const whole = aqueousComposition({ water: "1 L", dissolved: ions, pH });
      for (const ion of ["Zn^2+", "Cu^2+"])
        expect(
          dissolved[ion]! / whole.filtrate.find(({ formula }) => formula === ion)!.amount.toNumber("mol"),
        ).toBeCloseTo(1, 2);
      expect(Object.keys(solids).sort()).toEqual(whole.solids.map(({ formula }) => formula).sort());
      for (const { formula, amount } of whole.solids)
        expect(solids[formula]! / amount.toNumber("mol")).toBeCloseTo(1, 2);
    }
    for (const { ion, pH, concentration } of over.least) {
      const least = Math.min(...over.points.map(({ dissolved }) => dissolved[ion]!));
      expect(concentration.toNumber("mol/L") / least).toBeCloseTo(1, 3);
      expect(over.points.find((point) => point.pH === pH.toNumber())!.dissolved[ion]).toBe(least);
    }
    expect(over.least.map(({ ion }) => ion).sort()).toEqual(["Cu^2+", "Zn^2+"]);
  });
});

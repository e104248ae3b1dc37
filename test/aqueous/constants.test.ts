// The tables of constants through their questions, row by row, and what a person is told where there is no answer.
import {
  type AqueousRequest,
  acidConstant,
  aqueousComposition,
  attempt,
  facts,
  parseFormula,
  stabilityConstants,
} from "preparative";
import { describe, expect, it } from "vitest";
import { stabilityRows } from "../../src/aqueous/accessors";
import { COMPLEXES } from "../../src/aqueous/data/complexes";
import { keyOf } from "../../src/aqueous/mixture/notation";
import { ACID_STEPS } from "../../src/ion/data/acid-steps";

const refusal = (ask: () => unknown) => {
  const outcome = attempt(ask);
  return outcome.ok ? undefined : outcome.error;
};

/** Davies' term √I/(1 + √I) − 0.3 I, held from 0.5 mol/L on, times the slope of decimal logarithms at 25 °C, 0.5092. */
const davies = (ionicStrength: number): number => {
  const held = Math.min(ionicStrength, 0.5);
  return 0.5092 * (Math.sqrt(held) / (1 + Math.sqrt(held)) - 0.3 * held);
};

describe("acid constants", () => {
  it("are those of their rows, with doubt and note as warnings", () => {
    let [tested, doubted, noted] = [0, 0, 0];
    for (const row of ACID_STEPS()) {
      const outcome = attempt(() => acidConstant(row.acid));
      // metal ions whose hydroxide complexes are tabulated, and acids that water levels, have none
      if (!outcome.ok) continue;
      const { acid, base, name, pKa, source, warnings } = outcome.value;
      expect(pKa.value.toNumber(), row.acid).toBe(Number(row.pKa));
      expect([keyOf(acid), keyOf(base), name, source]).toEqual([
        keyOf(row.acid),
        keyOf(row.base),
        row.name,
        row.source,
      ]);
      // half the range as a rectangle, at least 0.1, 0.3 where it is doubtful; a lone good one 0.02
      const [low, high] = row.range ?? ["0", "0"];
      const rows = Math.max(row.doubtful === true ? 0.3 : 0.1, (Number(high) - Number(low)) / 2 / Math.sqrt(3));
      const spread = row.range === undefined && row.doubtful !== true ? 0.02 : rows;
      expect(pKa.standardUncertainty!.toNumber(), row.acid).toBe(Number(spread.toPrecision(2)));
      expect(warnings.length, row.acid).toBe((row.doubtful === true ? 1 : 0) + (row.note === undefined ? 0 : 1));
      if (row.doubtful === true) expect(warnings[0]).toMatch(/^a doubtful constant/);
      if (row.note !== undefined) expect(warnings.at(-1)).toBe(row.note);
      tested += 1;
      doubted += row.doubtful === true ? 1 : 0;
      noted += row.note === undefined ? 0 : 1;
    }
    expect(tested).toBeGreaterThan(70);
    expect(doubted).toBeGreaterThan(5);
    expect(noted).toBeGreaterThan(5);
  });

  it("are asked by text or by formula, not by anything else", () => {
    expect(acidConstant(parseFormula("H2PO4-")).pKa.value.toNumber()).toBe(7.2);
    expect(acidConstant("H2PO4-").acid).toBe("H2PO4-");
    expect(acidConstant("H2PO4-").base).toBe("HPO4^2-");
    expect(refusal(() => acidConstant(7 as never))?.code).toBe("aqueous.bad-option");
    expect(refusal(() => stabilityConstants({ metal: 7 as never, ligand: "NH3" }))?.code).toBe("aqueous.bad-option");
  });

  it("are refused with what helps: a strong acid, a metal ion, a formula without its charge", () => {
    expect(refusal(() => acidConstant("HCl"))).toMatchObject({
      code: "aqueous.no-data",
      input: "HCl",
      hint: "a strong acid: water levels it",
    });
    const metal = ACID_STEPS().find(({ acid }) => acid.endsWith("^2+") && !attempt(() => acidConstant(acid)).ok)!;
    expect(refusal(() => acidConstant(metal.acid))?.hint).toContain("stabilityConstants");
    expect(refusal(() => acidConstant("NaCl"))?.hint).toContain("ask with the charge");
  });

  it("of one's own come before the tables, without their warnings, and serve an acid the tables do not have", () => {
    const own = facts({
      source: "measured in the studio, invented",
      constants: [
        { kind: "pKa", of: "H2CO3", value: "6.37" },
        { kind: "pKa", of: "C8H8O3", value: "3.40" },
      ],
    });
    const carbonic = acidConstant("H2CO3", { facts: own });
    expect(carbonic.pKa.value.toNumber()).toBe(6.37);
    expect(carbonic.warnings).toEqual([]);
    expect(acidConstant("H2CO3").pKa.value.toNumber()).toBe(6.35);
    expect(acidConstant("H2CO3").warnings).not.toEqual([]);
    const mandelic = acidConstant("C8H8O3", { facts: own });
    expect([mandelic.acid, mandelic.base, mandelic.pKa.value.toNumber()]).toEqual(["C8H8O3", "C8H7O3-", 3.4]);
    for (const { source } of [carbonic, mandelic]) expect(source).toContain("measured in the studio");
  });
});

describe("constants of one's own in a beaker", () => {
  const gas = (constants?: AqueousRequest["constants"]) =>
    aqueousComposition({
      water: "1 kg",
      dissolved: [{ formula: "NH3", amount: "0.001 mol" }],
      pH: 3,
      carbonDioxide: { pressure: "101.325 kPa" },
      ...(constants === undefined ? {} : { constants }),
      activity: "ideal",
    });
  const index = (c: ReturnType<typeof gas>, formula: string): number[] =>
    c.saturation.filter((one) => one.formula === formula).map((one) => one.index!.toNumber());

  it("take the place of the table's of the same gas, and of no other", () => {
    // Henry's law at one atmosphere: 10^-pKH
    const acid = (c: ReturnType<typeof gas>): number =>
      c.species.find(({ formula }) => formula === "H2CO3")!.molality.toNumber("mol/kg");
    expect(acid(gas({ pKH: { CO2: "1.20" } })) / 10 ** -1.2).toBeCloseTo(1, 9);
    expect(acid(gas()) / 10 ** -1.47).toBeCloseTo(1, 1);
    expect(index(gas({ pKH: { CO2: "1.20" } }), "CO2")).toHaveLength(1);
    expect(index(gas({ pKH: { CO2: "1.20" } }), "NH3")[0]).toBeCloseTo(index(gas(), "NH3")[0]!, 2);
    expect(index(gas(), "NH3")).toHaveLength(1);
  });

  it("take the place of the table's of the same solid, with nothing to warn of", () => {
    const silver = (constants?: AqueousRequest["constants"]) =>
      aqueousComposition({
        water: "1 kg",
        dissolved: [{ formula: "AgCl", amount: "0.01 mol" }],
        ...(constants === undefined ? {} : { constants }),
      });
    const own = silver({ pKsp: { AgCl: "9.00" } });
    expect(own.warnings).toEqual([]);
    expect(own.saturation.filter(({ formula }) => formula === "AgCl")).toHaveLength(1);
    const free = (c: ReturnType<typeof silver>): number =>
      c.species.find(({ formula }) => formula === "Ag+")!.molality.toNumber("mol/kg");
    // sqrt(Ksp): 9.75 in the table
    expect(free(own) / free(silver())).toBeCloseTo(10 ** (0.75 / 2), 1);
  });
});

describe("stability constants", () => {
  it("are those of their rows, brought to zero ionic strength, with what to mind of each", () => {
    let [tested, moved, warm, doubted] = [0, 0, 0, 0];
    const chargeOf = (ion: string): number => parseFormula(ion).charge;
    for (const { metal, ligand, steps } of COMPLEXES()) {
      const outcome = attempt(() => stabilityConstants({ metal, ligand }));
      if (!outcome.ok) continue;
      const told = steps.filter(({ ionicStrength }) => ionicStrength !== "unknown");
      for (const step of told) {
        const one = outcome.value.find(({ complex }) => keyOf(complex) === keyOf(step.complex));
        // a later row of the same complex may stand in its place
        if (one === undefined || one.n !== step.n || one.source !== step.source) continue;
        expect(one.protons).toBe(step.protons ?? 0);
        const squares =
          chargeOf(metal) ** 2 + step.n * chargeOf(ligand) ** 2 + (step.protons ?? 0) - chargeOf(step.complex) ** 2;
        const atZero = Number(step.logBeta) + davies(Number(step.ionicStrength ?? 0)) * squares;
        expect(one.logBeta.value.toNumber(), step.complex).toBeCloseTo(atZero, 2);
        // half the range as a rectangle, at least 0.1; 0.3 where it is doubtful, 0.2 where it was measured elsewhere
        const [low, high] = step.range ?? ["0", "0"];
        const spread = Math.max(
          step.doubtful === true ? 0.3 : 0.1,
          (Number(high) - Number(low)) / 2 / Math.sqrt(3),
          step.celsius === undefined && step.ionicStrength === undefined ? 0 : 0.2,
        );
        const stated = one.logBeta.standardUncertainty!.toNumber();
        expect(stated, step.complex).toBe(Number(spread.toPrecision(2)));
        const words = one.warnings.join("\n");
        expect(/^a doubtful constant/m.test(words), step.complex).toBe(step.doubtful === true);
        expect(words.includes("brought to zero"), step.complex).toBe(step.ionicStrength !== undefined);
        expect(words.includes("°C"), step.complex).toBe(step.celsius !== undefined);
        if (step.ionicStrength !== undefined) expect(words).toContain(`ionic strength of ${step.ionicStrength} mol/L`);
        if (step.celsius !== undefined) expect(words).toContain(`at ${step.celsius} °C`);
        tested += 1;
        moved += step.ionicStrength === undefined ? 0 : 1;
        warm += step.celsius === undefined ? 0 : 1;
        doubted += step.doubtful === true ? 1 : 0;
      }
    }
    expect(tested).toBeGreaterThan(500);
    expect(moved).toBeGreaterThan(90);
    expect(warm).toBeGreaterThan(5);
    expect(doubted).toBeGreaterThan(5);
  });

  it("leaves out a complex whose source does not say at which ionic strength it was measured", () => {
    const without = COMPLEXES().flatMap(({ metal, ligand, steps }) =>
      steps
        .filter(({ ionicStrength }) => ionicStrength === "unknown")
        .map(({ complex }) => ({ metal, ligand, complex })),
    );
    expect(without.length).toBeGreaterThan(3);
    for (const { metal, ligand, complex } of without) {
      const outcome = attempt(() => stabilityConstants({ metal, ligand }));
      expect(outcome.ok ? outcome.value.map((one) => keyOf(one.complex)) : []).not.toContain(keyOf(complex));
    }
  });

  it("names the ligands that are known of a metal, and asks for the charge of what is no ion", () => {
    expect(refusal(() => stabilityConstants({ metal: "Ag+", ligand: "MoO4^2-" }))).toMatchObject({
      code: "aqueous.no-data",
      hint: expect.stringMatching(/^known: .*NH3/),
      details: { metal: "Ag+", ligand: "MoO4^2-" },
    });
    expect(refusal(() => stabilityConstants({ metal: "Ag", ligand: "NH3" }))?.hint).toBe(
      "write the metal ion with its charge, such as Cu^2+",
    );
  });

  it("are told by formula of one metal and one ligand, mixed and protonated complexes left out", () => {
    const rows = COMPLEXES();
    for (const { metal, ligand } of rows)
      expect(stabilityRows(metal, ligand), `${metal} ${ligand}`).toEqual(
        rows
          .find((one) => one.metal === metal && one.ligand === ligand)!
          .steps.filter(({ protons }) => protons === undefined)
          .map(({ complex }) => complex),
      );
    expect(rows.some(({ steps }) => steps.some(({ protons }) => protons !== undefined))).toBe(true);
    expect(stabilityRows("Zn^2+", "OH-")).toHaveLength(4);
    expect(stabilityRows("Zn^2+", "Xe")).toEqual([]);
  });
});

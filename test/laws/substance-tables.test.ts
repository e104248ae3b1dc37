// What must hold for every row of the substance tables.
import { describe, expect, it } from "vitest";
import { type Formula, massFractionOf, molarMass, parseFormula } from "../../src/formula";
import { sourceKeys } from "../../src/foundation";
import { Fraction } from "../../src/foundation/fraction";
import { formulaOf, nameOf, readingsOf, substance } from "../../src/substance";
import { AMBIGUOUS } from "../../src/substance/data/ambiguous";
import { HAZARDS } from "../../src/substance/data/hazards";
import { INCOMPATIBILITIES } from "../../src/substance/data/incompatibilities";
import { ANIONS, CATIONS } from "../../src/substance/data/ions";
import { LIGANDS } from "../../src/substance/data/ligands";
import { PHYSICAL } from "../../src/substance/data/physical";
import { REGISTRY } from "../../src/substance/data/registry";
import { SHOP_MATERIALS } from "../../src/substance/data/shop-materials";
import {
  HAZARD_STATEMENTS,
  PICTOGRAMS,
  PRECAUTIONARY_STATEMENTS,
  SUPPLEMENTAL_STATEMENTS,
} from "../../src/substance/data/statements";
import { THERMAL, type ThermalAmount } from "../../src/substance/data/thermal-steps";
import { ruleFormulas } from "../../src/substance/rule-readings";
import { massPerStated } from "../../src/substance/tell-apart";

const keys = new Set<string>(sourceKeys());
const sameParts = (a: string | Formula, b: string): boolean =>
  (typeof a === "string" ? parseFormula(a) : a).hasSameComposition(parseFormula(b));

describe("registry", () => {
  it("holds at least 500 substances, each formula once", () => {
    expect(REGISTRY.length).toBeGreaterThanOrEqual(500);
    expect(new Set(REGISTRY.map((row) => row.formula)).size).toBe(REGISTRY.length);
  });

  // Check digit of a registry number: last digit = sum of the others, each times its place from the right, modulo 10.
  it("has valid check digits, and says where each number was found", () => {
    for (const { cas, casSource, formula } of REGISTRY) {
      expect(casSource !== undefined, formula).toBe(cas !== undefined);
      if (cas === undefined) continue;
      const digits = cas.replace(/-/g, "");
      let sum = 0;
      for (let i = 0; i < digits.length - 1; i += 1) sum += Number(digits[digits.length - 2 - i]) * (i + 1);
      expect(sum % 10, `${formula} ${cas}`).toBe(Number(digits.at(-1)));
      expect(keys.has(casSource!), casSource).toBe(true);
    }
  });

  it("writes formulas with the middle dot and names them as the rules do", () => {
    // Named from the table: no rule of ours reaches these molecules, or the formula as sold is not the true one.
    const byTable: Record<string, string> = {
      Na2SnO3·3H2O: "the table keeps the trade's formula; in truth a hexahydroxidostannate",
      "(NH4)3[Fe(C6H5O7)2]": "no definite formula, so no citrato complex is claimed",
      "Ni(C4H7N2O2)2": "a chelate, not a salt of the oxime",
    };
    for (const { formula, name } of REGISTRY) {
      expect(parseFormula(formula).toString().replace(/\./g, "").length, formula).toBeGreaterThan(0);
      expect(/[*•]|\.(?!\d)/.test(formula), formula).toBe(false);
      if (byTable[formula] === undefined) expect(nameOf(formula), formula).toBe(name);
    }
  });

  it("reads every name back to its formula", () => {
    // Names that the trade uses for something else as well: refused unless taken literally.
    const refused: Record<string, string> = {
      "magnesium carbonate": "the shop's magnesium carbonate is a basic hydrate",
      "zinc carbonate": "the shop's zinc carbonate is the basic salt",
      "ammonium carbonate": "the trade's lumps are hydrogencarbonate and carbamate",
      "sodium phosphate": "the trade sells three, acid to strongly alkaline",
      "potassium phosphate": "the trade sells three, acid to strongly alkaline",
    };
    for (const { formula, name, systematic } of REGISTRY)
      for (const one of [name, ...(systematic ?? [])]) {
        const literal = refused[one] !== undefined;
        expect(sameParts(formulaOf(one, { literal }), formula), `${one}: ${formula}`).toBe(true);
      }
  });

  it("agrees with what the rules alone make of the names", () => {
    // Not by rule: organic names, formulas as sold, names with two readings (two silicates), addition compounds.
    const notByRule =
      /silicate|stannate|triazin|carbonic diamide|sucrose|propan|hydrogendicarbonate|pentacalcium nitrate|—/;
    let checked = 0;
    for (const { formula, name, systematic } of REGISTRY)
      for (const one of [name, ...(systematic ?? [])]) {
        if (notByRule.test(one)) continue;
        const found = ruleFormulas(one);
        expect(found.length, `${one}: ${found.join(", ")}`).toBe(1);
        expect(sameParts(found[0]!, formula), `${one}: ${found[0]} for ${formula}`).toBe(true);
        checked += 1;
      }
    expect(checked).toBeGreaterThan(600);
  });
});

describe("physical data", () => {
  it("stands for registry rows, with densities in a sane range", () => {
    const listed = new Set(REGISTRY.map((row) => row.formula));
    for (const { formula, density } of PHYSICAL) {
      expect(listed.has(formula), formula).toBe(true);
      if (density === undefined) continue;
      expect(Number(density), formula).toBeGreaterThan(0.5);
      expect(Number(density), formula).toBeLessThan(20);
    }
  });

  // Molar volumes of the PHREEQC data files (U.S. Geological Survey), turned into densities.
  it("lies within 2 % of the independent molar volumes, or is flagged", () => {
    let compared = 0;
    for (const { formula, density, checked, disagrees } of PHYSICAL) {
      const other = checked ?? disagrees;
      if (other === undefined) continue;
      compared += 1;
      const off = Math.abs(Number(density) / Number(other.density) - 1);
      if (checked !== undefined) expect(off, formula).toBeLessThanOrEqual(0.02);
      else expect(off, formula).toBeGreaterThan(0.02);
    }
    expect(compared).toBeGreaterThan(50);
    expect(substance("CuO").densityCheck).toBe("disagrees");
  });
});

/** Atoms of some amounts, by symbol. */
function atoms(amounts: readonly ThermalAmount[]): Map<string, Fraction> {
  const total = new Map<string, Fraction>();
  for (const { formula, coefficient } of amounts)
    for (const { symbol, count } of parseFormula(formula).composition)
      total.set(symbol, (total.get(symbol) ?? new Fraction(0)).add(count.mul(new Fraction(coefficient))));
  return total;
}

/** Mass of some amounts in g/mol. */
function mass(amounts: readonly ThermalAmount[]): number {
  return amounts.reduce(
    (sum, { formula, coefficient }) =>
      sum + molarMass(formula).in("g/mol").toNumber() * new Fraction(coefficient).valueOf(),
    0,
  );
}

describe("thermal steps", () => {
  it.each(THERMAL.filter((row) => row.steps.length > 0).map((row) => [row.formula, row] as const))(
    "balances %s step by step",
    (formula, row) => {
      let before: readonly ThermalAmount[] = [{ formula, coefficient: "1" }];
      let last = Number.NEGATIVE_INFINITY;
      for (const step of row.steps) {
        const left = atoms([...before, ...(step.takes ?? [])]);
        const right = atoms([...step.leaves, ...step.remains]);
        expect([...right.keys()].sort()).toEqual([...left.keys()].sort());
        for (const [symbol, n] of left) expect(right.get(symbol)!.equals(n), symbol).toBe(true);
        expect(mass([...step.leaves, ...step.remains])).toBeCloseTo(mass([...before, ...(step.takes ?? [])]), 9);
        expect(Number(step.from)).toBeGreaterThanOrEqual(last);
        if (step.to !== undefined) expect(Number(step.to)).toBeGreaterThan(Number(step.from));
        last = Number(step.from);
        before = step.remains;
      }
    },
  );

  it("covers each substance once", () => {
    expect(new Set(THERMAL.map((row) => row.formula)).size).toBe(THERMAL.length);
    expect(THERMAL.length).toBeGreaterThan(200);
  });
});

describe("shop materials", () => {
  it("has formulas that can be read, ordered ranges and a source", () => {
    for (const row of SHOP_MATERIALS) {
      for (const formula of [row.formula, ...(row.alternatives ?? [])])
        expect(() => parseFormula(formula), row.name).not.toThrow();
      expect(keys.has(row.source), row.source).toBe(true);
      expect(row.assays.length, row.name).toBeGreaterThan(0);
      for (const { lower, upper } of row.assays) {
        expect(Number(lower), row.name).toBeGreaterThan(0);
        expect(Number(upper), row.name).toBeGreaterThanOrEqual(Number(lower));
        // titration limits run a little past the whole, overdried hydrates further
        expect(Number(upper), row.name).toBeLessThanOrEqual(105);
      }
      if (row.density !== undefined)
        expect(Number(row.density.upper), row.name).toBeGreaterThanOrEqual(Number(row.density.lower));
    }
    expect(new Set(SHOP_MATERIALS.map((row) => row.name)).size).toBe(SHOP_MATERIALS.length);
  });
});

describe("strengths stated in two ways", () => {
  // The same pack stated as the compound and as the metal or oxide: one must follow from the other by the formula. The
  // hydrate of aluminium sulfate floats between 14 and 18 waters, so its two figures only have to come near.
  it("agree with each other through the formula", () => {
    let compared = 0;
    for (const row of SHOP_MATERIALS) {
      const own = row.assays.find((assay) => assay.of === undefined);
      for (const stated of row.assays.filter((assay) => assay.of !== undefined)) {
        if (own === undefined) continue;
        const factor = massPerStated(row.formula, stated.of!)!.value.toNumber();
        const slack = row.formula.startsWith("Al2(SO4)3") ? 0.15 : 0.04;
        expect(Number(stated.lower) * factor, row.name).toBeLessThanOrEqual(Number(own.upper) * (1 + slack));
        expect(Number(stated.upper) * factor, row.name).toBeGreaterThanOrEqual(Number(own.lower) * (1 - slack));
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(8);
  });
});

describe("hazards", () => {
  const known = new Map([...HAZARD_STATEMENTS, ...SUPPLEMENTAL_STATEMENTS].map((row) => [row.code, row]));
  const base = (code: string) => known.get(code) ?? known.get(code.replace(/[A-Za-z]+$/, ""));

  it("knows every statement code and every pictogram", () => {
    const pictograms = new Set(PICTOGRAMS.map((row) => row.code));
    for (const row of HAZARDS) {
      for (const code of row.codes ?? []) expect(base(code), `${row.formula ?? row.group} ${code}`).toBeDefined();
      for (const code of row.pictograms ?? []) expect(pictograms.has(code), code).toBe(true);
      for (const code of row.codesFromMemory ?? []) expect(row.codes).toContain(code);
      expect(keys.has(row.source), row.source).toBe(true);
      expect(row.source === "clpAnnexVI", row.formula).toBe(row.index !== undefined);
      expect(row.formula === undefined, row.group).toBe(row.group !== undefined);
    }
  });

  // Globally Harmonized System, Annex 1: the pictogram follows from the hazard class. Gas cylinders are left out: the
  // state of the gas (H280) is not part of a harmonised entry.
  it("shows no pictogram that no statement calls for", () => {
    for (const row of HAZARDS) {
      const called = new Set((row.codes ?? []).flatMap((code) => base(code)?.pictograms ?? []));
      for (const pictogram of row.pictograms ?? [])
        if (pictogram !== "GHS04") expect(called.has(pictogram), `${row.formula ?? row.group} ${pictogram}`).toBe(true);
    }
  });

  // CLP Article 26: the skull, corrosion and health-hazard pictograms may stand in for the exclamation mark, the exploding
  // bomb for flame and flame over circle.
  it("leaves out only pictograms that a heavier one stands for", () => {
    const heavier: Record<string, readonly string[]> = {
      GHS07: ["GHS05", "GHS06", "GHS08"],
      GHS02: ["GHS01"],
      GHS03: ["GHS01"],
    };
    for (const row of HAZARDS) {
      const shown = row.pictograms ?? [];
      for (const called of (row.codes ?? []).flatMap((code) => base(code)?.pictograms ?? []))
        if (!shown.includes(called) && called !== "GHS04")
          expect(
            heavier[called]?.some((one) => shown.includes(one)),
            `${row.formula ?? row.group} ${called}`,
          ).toBe(true);
    }
  });

  it("gives a signal word wherever a code calls for a pictogram that demands one", () => {
    for (const row of HAZARDS)
      if ((row.pictograms ?? []).includes("GHS06")) expect(row.signalWord, row.formula ?? row.group).toBeDefined();
  });
});

describe("other tables", () => {
  it("has each code once", () => {
    for (const table of [PICTOGRAMS, HAZARD_STATEMENTS, SUPPLEMENTAL_STATEMENTS, PRECAUTIONARY_STATEMENTS])
      expect(new Set(table.map((row) => row.code)).size).toBe(table.length);
    expect(new Set(INCOMPATIBILITIES.map((row) => row.code)).size).toBe(INCOMPATIBILITIES.length);
  });

  it("names products of incompatible pairs by formulas that can be read", () => {
    for (const row of INCOMPATIBILITIES) {
      for (const formula of row.products ?? []) expect(() => parseFormula(formula), row.code).not.toThrow();
      expect(keys.has(row.source), row.source).toBe(true);
    }
  });

  it("has ions and ligands that can be read, charged as their sign says", () => {
    for (const row of ANIONS) expect(row.charge, row.name).toBeLessThan(0);
    for (const row of CATIONS) expect(row.charge, row.name).toBeGreaterThan(0);
    for (const row of [...ANIONS, ...CATIONS, ...LIGANDS]) {
      expect(() => parseFormula(row.formula), row.formula).not.toThrow();
      for (const way of row.written ?? [])
        if (/^[A-Z(][A-Za-z0-9()]*$/.test(way) && !/Ph|Ac|en$/.test(way))
          expect(sameParts(way, row.formula), `${way} ${row.formula}`).toBe(true);
    }
  });

  // Percentages in the words that decide, against the formulas; what packs print is left to the packs.
  it("states element contents and losses that follow from the formulas", () => {
    let checked = 0;
    for (const { formula, decides } of AMBIGUOUS.flatMap((row) => row.readings)) {
      if (/on the pack|available chlorine|active oxygen|NH3 figure| to \d/.test(decides)) continue;
      const near = (stated: string, percent: number) => {
        const step = stated.includes(".") ? 0.1 : /about/.test(decides) ? 1.5 : 1;
        expect(Math.abs(Number(stated) - percent), `${formula}: ${decides}`).toBeLessThanOrEqual(step / 2 + 1e-9);
        checked += 1;
      };
      for (const [, stated, symbol] of decides.matchAll(/([\d.]+) % (Zn|Cu|Co|Ni|Mo|Fe)\b/g))
        near(stated!, massFractionOf(symbol!, formula).in("%").toNumber());
      const loss = /loses (?:about )?([\d.]+) %/.exec(decides)?.[1];
      const left = substance(formula).thermalSteps.at(-1)?.massLeft;
      if (loss !== undefined && left !== undefined) near(loss, 100 - left.in("%").toNumber());
    }
    expect(checked).toBeGreaterThan(25);
  });

  it("gives each ambiguous name at least two readings, all of which can be named", () => {
    for (const row of AMBIGUOUS) {
      expect(row.readings.length).toBeGreaterThan(1);
      for (const name of row.names) {
        const readings = readingsOf(name);
        expect(readings.map((one) => one.formula)).toEqual(row.readings.map((one) => one.formula));
        for (const reading of readings) expect(reading.decides.length).toBeGreaterThan(0);
      }
    }
  });
});

// What must hold for every row of the substance tables.
import { describe, expect, it } from "vitest";
import { type Formula, massFractionOf, molarMass, parseFormula } from "../../src/formula";
import { Fraction } from "../../src/foundation/fraction";
import { ANIONS, CATIONS } from "../../src/ion/data/ions";
import { sourceKeys } from "../../src/sources";
import { cautions, formulaOf, nameOf, readingsOf, substance } from "../../src/substance";
import { AMBIGUOUS } from "../../src/substance/data/ambiguous";
import { SOLUTION_LIMITS } from "../../src/substance/data/concentration-limits";
import { HAZARDS } from "../../src/substance/data/hazards";
import { INCOMPATIBILITIES } from "../../src/substance/data/incompatibilities";
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
import { pictogramsOf, signalWordOf, statementRow } from "../../src/substance/names/label-elements";
import { ruleFormulas } from "../../src/substance/names/rule-readings";
import { massPerStated } from "../../src/substance/shop/shelf-material";

const keys = new Set<string>(sourceKeys());
const sameParts = (a: string | Formula, b: string): boolean =>
  (typeof a === "string" ? parseFormula(a) : a).hasSameComposition(parseFormula(b));

describe("registry", () => {
  it("holds at least 500 substances, each formula once", () => {
    expect(REGISTRY().length).toBeGreaterThanOrEqual(500);
    expect(new Set(REGISTRY().map((row) => row.formula)).size).toBe(REGISTRY().length);
  });

  // Check digit of a registry number: last digit = sum of the others, each times its place from the right, modulo 10.
  it("has valid check digits, and says where each number was found", () => {
    let tested = 0;
    for (const { cas, casSource, formula } of REGISTRY()) {
      expect(casSource !== undefined, formula).toBe(cas !== undefined);
      if (cas === undefined) continue;
      const digits = cas.replace(/-/g, "");
      let sum = 0;
      for (let i = 0; i < digits.length - 1; i += 1) sum += Number(digits[digits.length - 2 - i]) * (i + 1);
      expect(sum % 10, `${formula} ${cas}`).toBe(Number(digits.at(-1)));
      expect(keys.has(casSource!), casSource).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(450);
  });

  it("writes formulas with the middle dot and names them as the rules do", () => {
    // Named from the table: no rule of ours reaches these molecules, or the formula as sold is not the true one.
    const byTable: Record<string, string> = {
      Na2SnO3·3H2O: "the table keeps the trade's formula; in truth a hexahydroxidostannate",
      "(NH4)3[Fe(C6H5O7)2]": "no definite formula, so no citrato complex is claimed",
      "Ni(C4H7N2O2)2": "a chelate, not a salt of the oxime",
    };
    let tested = 0;
    for (const { formula, name } of REGISTRY()) {
      expect(parseFormula(formula).toString().replace(/\./g, "").length, formula).toBeGreaterThan(0);
      expect(/[*•]|\.(?!\d)/.test(formula), formula).toBe(false);
      if (byTable[formula] === undefined) expect(nameOf(formula), formula).toBe(name);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(520);
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
    let tested = 0;
    for (const { formula, name, systematic } of REGISTRY()) {
      for (const one of [name, ...(systematic ?? [])]) {
        const literal = refused[one] !== undefined;
        expect(sameParts(formulaOf(one, { literal }), formula), `${one}: ${formula}`).toBe(true);
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(580);
  });

  it("agrees with what the rules alone make of the names", () => {
    // Not by rule: organic names, formulas as sold, names with two readings (two silicates), addition compounds.
    const notByRule =
      /silicate|stannate|triazin|carbonic diamide|sucrose|propan|hydrogendicarbonate|pentacalcium nitrate|—/;
    let checked = 0;
    for (const { formula, name, systematic } of REGISTRY())
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
    const listed = new Set(REGISTRY().map((row) => row.formula));
    let tested = 0;
    for (const { formula, density } of PHYSICAL()) {
      expect(listed.has(formula), formula).toBe(true);
      if (density === undefined) continue;
      expect(Number(density), formula).toBeGreaterThan(0.5);
      expect(Number(density), formula).toBeLessThan(20);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(410);
  });

  // Molar volumes of the U.S. Geological Survey, turned into densities.
  it("lies within 2 % of the independent molar volumes, or is flagged", () => {
    let compared = 0;
    for (const { formula, density, checked, disagrees } of PHYSICAL()) {
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
  it.each(
    THERMAL()
      .filter((row) => row.steps.length > 0)
      .map((row) => [row.formula, row] as const),
  )("balances %s step by step", (formula, row) => {
    let before: readonly ThermalAmount[] = [{ formula, coefficient: "1" }];
    let last = Number.NEGATIVE_INFINITY;
    expect(row.steps.length, "rows to test").toBeGreaterThan(0);
    for (const step of row.steps) {
      const left = atoms([...before, ...(step.takes ?? [])]);
      const right = atoms([...step.leaves, ...step.remains]);
      expect([...right.keys()].sort()).toEqual([...left.keys()].sort());
      expect(left.size, "rows to test").toBeGreaterThan(0);
      for (const [symbol, n] of left) expect(right.get(symbol)!.equals(n), symbol).toBe(true);
      expect(mass([...step.leaves, ...step.remains])).toBeCloseTo(mass([...before, ...(step.takes ?? [])]), 9);
      expect(Number(step.from)).toBeGreaterThanOrEqual(last);
      if (step.to !== undefined) expect(Number(step.to)).toBeGreaterThan(Number(step.from));
      last = Number(step.from);
      before = step.remains;
    }
  });

  it("covers each substance once", () => {
    expect(new Set(THERMAL().map((row) => row.formula)).size).toBe(THERMAL().length);
    expect(THERMAL().length).toBeGreaterThan(200);
  });
});

describe("shop materials", () => {
  it("has formulas that can be read, ordered ranges and a source", () => {
    let tested = 0;
    for (const row of SHOP_MATERIALS()) {
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
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(180);
    expect(new Set(SHOP_MATERIALS().map((row) => row.name)).size).toBe(SHOP_MATERIALS().length);
  });
});

describe("strengths stated in two ways", () => {
  // The same pack stated as the compound and as the metal or oxide: one must follow from the other by the formula. The
  // hydrate of aluminium sulfate floats between 14 and 18 waters, so its two figures only have to come near.
  it("agree with each other through the formula", () => {
    let compared = 0;
    for (const row of SHOP_MATERIALS()) {
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
  const entryName = (row: ReturnType<typeof HAZARDS>[number]) => `${row.formula ?? row.group} ${row.form ?? ""}`;

  it("knows every statement code, and says where each entry was read", () => {
    let tested = 0;
    for (const row of HAZARDS()) {
      for (const code of row.codes ?? [])
        expect(code.startsWith(statementRow(code)?.code ?? "none"), `${entryName(row)} ${code}`).toBe(true);
      for (const code of row.codesFromMemory ?? []) expect(row.codes).toContain(code);
      expect(keys.has(row.source), row.source).toBe(true);
      // an index number where the harmonised list is the source, read or recalled, and nowhere else
      expect(/^clp/.test(row.source), entryName(row)).toBe(row.index !== undefined);
      expect(row.formula === undefined, entryName(row)).toBe(row.group !== undefined);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(320);
  });

  // Globally Harmonized System, Annex 3 (code tables): the signal word of each statement, in the column beside it.
  it("gives every entry the signal word that its statements call for", () => {
    const danger = /^H(20[01235]|220|22[245]|24[01]|250|251|260|27[01]|30[014]|31[0148]|33[014]|340|350|360|370|372)/;
    const warning = /^H(204|221|223|226|252|290|302|312|315|317|319|320|332|335|336|341|351|361|371|373|400|410)/;
    const either = /^H(228|261|272)$/;
    let weaker = 0;
    let tested = 0;
    for (const row of HAZARDS()) {
      const codes = row.codes ?? [];
      const strong = codes.some((code) => danger.test(code) || (either.test(code) && !row.weaker?.includes(code)));
      const word = strong
        ? "Danger"
        : codes.some((code) => warning.test(code) || either.test(code))
          ? "Warning"
          : undefined;
      expect(signalWordOf(codes, row.weaker), entryName(row)).toBe(word);
      for (const code of row.weaker ?? []) {
        expect(codes, entryName(row)).toContain(code);
        expect(either.test(code), entryName(row)).toBe(true);
        weaker += 1;
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(320);
    expect(weaker).toBeGreaterThan(5);
  });

  // Label elements as printed in the harmonised list, Annex VI, Table 3: signal word and pictograms of these entries.
  it.each([
    ["HCl", ["H314", "H335"], "Danger", "05 07"],
    ["H2O2", ["H271", "H332", "H302", "H314"], "Danger", "03 05 07"],
    ["KMnO4", ["H272", "H302", "H361d", "H410"], "Danger", "03 07 08 09"],
    ["K2S2O8", ["H272", "H302", "H319", "H335", "H315", "H334", "H317"], "Danger", "03 07 08"],
    ["NaNO2", ["H272", "H301", "H400"], "Danger", "03 06 09"],
    ["CrO3", ["H271", "H350", "H330", "H372", "H314", "H334", "H317", "H410"], "Danger", "03 05 06 08 09"],
    ["CuSO4·5H2O", ["H302", "H318", "H410"], "Danger", "05 07 09"],
    ["CuSO4", ["H302", "H319", "H315", "H410"], "Warning", "07 09"],
    ["Cu2(OH)3Cl", ["H332", "H301", "H410"], "Danger", "06 09"],
    ["CoCO3", ["H350i", "H341", "H360F", "H334", "H317", "H410"], "Danger", "08 09"],
    ["ZnO", ["H410"], "Warning", "09"],
    ["lead compounds", ["H360Df", "H332", "H302", "H373", "H410"], "Danger", "07 08 09"],
    ["Cu powder", ["H411"], undefined, "09"],
    ["C3H8O", ["H225", "H319", "H336"], "Danger", "02 07"],
    ["H3NSO3", ["H319", "H315", "H412"], "Warning", "07"],
  ] as const)("gives %s the label elements of the list", (_, codes, word, pictograms) => {
    expect(signalWordOf(codes)).toBe(word);
    expect(
      pictogramsOf(codes)
        .map((code) => code.slice(3))
        .join(" "),
    ).toBe(pictograms);
  });

  it("says in its own words only what the codes do not say", () => {
    const said: readonly (readonly [RegExp, RegExp])[] = [
      [/^H41[01]|^H400/, /water life/],
      [/^H31[48]/, /^(eye damage|burns|corrosive|caustic)$/],
      [/^H27[012]/, /^(strong |violent )?oxidi[sz]/],
      [/^H35[01]/, /carcinogen/],
      [/^H3(17|34)/, /sensiti[sz]er/],
      [/^H3[0-3][0-2]/, /^(harmful|poison(ous)?|toxic|fatal)( by swallowing| dust)?$/],
      [/^H22[0-6]/, /flammable/],
    ];
    let tested = 0;
    for (const row of HAZARDS()) {
      for (const text of row.cautions ?? [])
        for (const [code, words] of said)
          if (row.codes?.some((one) => code.test(one)))
            expect(words.test(text), `${entryName(row)}: ${text}`).toBe(false);
      if ((row.codes ?? []).length > 0) expect((row.cautions ?? []).join(), entryName(row)).not.toMatch(/low hazard/);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(320);
  });

  it("has limits in ascending strength for codes that are known", () => {
    let tested = 0;
    for (const { formula, limits, source } of SOLUTION_LIMITS()) {
      expect(keys.has(source), source).toBe(true);
      expect(
        HAZARDS().some((row) => row.formula === formula),
        formula,
      ).toBe(true);
      for (const { code, from, below } of limits) {
        expect(code.startsWith(statementRow(code)?.code ?? "none"), code).toBe(true);
        if (below !== undefined) expect(Number(below), `${formula} ${code}`).toBeGreaterThan(Number(from));
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(12);
    expect(SOLUTION_LIMITS().length).toBe(13);
  });

  // Statements only grow heavier with strength: no stronger solution has a weaker signal word.
  it("never classifies a stronger solution lower", () => {
    const rank = { none: 0, Warning: 1, Danger: 2 };
    let tested = 0;
    for (const { formula } of SOLUTION_LIMITS()) {
      let before = 0;
      for (const percent of [0.1, 0.5, 1, 2, 3, 5, 8, 10, 15, 20, 25, 35, 50, 65, 70, 80, 90, 98]) {
        const found = cautions([{ material: formula, strength: `${percent} %` }]).substances[0]!;
        const now = rank[found.signalWord ?? "none"];
        expect(now, `${formula} ${percent} %`).toBeGreaterThanOrEqual(before);
        before = now;
      }
      expect(before, formula).toBe(2);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(12);
  });
});

describe("other tables", () => {
  it("has each code once", () => {
    for (const table of [PICTOGRAMS, HAZARD_STATEMENTS(), SUPPLEMENTAL_STATEMENTS(), PRECAUTIONARY_STATEMENTS()])
      expect(new Set(table.map((row) => row.code)).size).toBe(table.length);
    expect(new Set(INCOMPATIBILITIES().map((row) => row.code)).size).toBe(INCOMPATIBILITIES().length);
  });

  it("names products of incompatible pairs by formulas that can be read", () => {
    let tested = 0;
    for (const row of INCOMPATIBILITIES()) {
      for (const formula of row.products ?? []) expect(() => parseFormula(formula), row.code).not.toThrow();
      expect(keys.has(row.source), row.source).toBe(true);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(130);
  });

  it("has ions and ligands that can be read, charged as their sign says", () => {
    let tested = 0;
    for (const row of ANIONS()) {
      expect(row.charge, row.name).toBeLessThan(0);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(180);
    let rowsTested = 0;
    for (const row of CATIONS()) {
      expect(row.charge, row.name).toBeGreaterThan(0);
      rowsTested += 1;
    }
    expect(rowsTested).toBeGreaterThanOrEqual(16);
    for (const row of [...ANIONS(), ...CATIONS(), ...LIGANDS()]) {
      expect(() => parseFormula(row.formula), row.formula).not.toThrow();
      for (const way of row.written ?? [])
        if (/^[A-Z(][A-Za-z0-9()]*$/.test(way) && !/Ph|Ac|en$/.test(way))
          expect(sameParts(way, row.formula), `${way} ${row.formula}`).toBe(true);
    }
  });

  // Percentages in the words that decide, against the formulas; what packs print is left to the packs.
  it("states element contents and losses that follow from the formulas", () => {
    let checked = 0;
    for (const { formula, decides } of AMBIGUOUS().flatMap((row) => row.readings)) {
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
    let tested = 0;
    for (const row of AMBIGUOUS()) {
      expect(row.readings.length).toBeGreaterThan(1);
      for (const name of row.names) {
        const readings = readingsOf(name);
        expect(readings.map((one) => one.formula)).toEqual(row.readings.map((one) => one.formula));
        for (const reading of readings) expect(reading.decides.length).toBeGreaterThan(0);
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(54);
  });
});

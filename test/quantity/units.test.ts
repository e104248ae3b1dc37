// A unit stands in two lists: the table the reader uses at run time, and the literal types an editor offers.
import { readFileSync } from "node:fs";
import { facts } from "preparative";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { quantity } from "../../src/quantity";
import { UNIT_ROWS } from "../../src/quantity/value/unit-table";

const path = new URL("../../src/quantity/text/text.ts", import.meta.url);
const source = ts.createSourceFile("text.ts", readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true);

/** Literals of each union of units that text.ts declares: `MassUnit` -> kg, g, ... */
const unions = new Map<string, string[]>();
for (const statement of source.statements) {
  if (!ts.isTypeAliasDeclaration(statement) || !statement.name.text.endsWith("Unit")) continue;
  const members = ts.isUnionTypeNode(statement.type) ? statement.type.types : [statement.type];
  unions.set(
    statement.name.text,
    members.map((member) => ((member as ts.LiteralTypeNode).literal as ts.StringLiteral).text),
  );
}

const DIMENSIONS: Readonly<Record<string, string>> = {
  MassUnit: "mass",
  AmountUnit: "amount of substance",
  VolumeUnit: "volume",
  LengthUnit: "length",
  TimeUnit: "time",
  TemperatureUnit: "temperature",
  TemperatureDifferenceUnit: "temperature difference",
  PressureUnit: "pressure",
  EnergyUnit: "energy",
  DensityUnit: "density",
  MolarMassUnit: "molar mass",
  ConcentrationUnit: "concentration",
  MolalityUnit: "molality",
  MassFractionUnit: "mass fraction",
  VolumeFractionUnit: "volume fraction",
  MoleFractionUnit: "mole fraction",
  HeatCapacityUnit: "heat capacity",
  SpecificHeatCapacityUnit: "specific heat capacity",
  MolarEnergyUnit: "molar energy",
};
/** Dimension of a plain number: a part in a hundred may be meant of mass, volume or amount. */
const NUMBER = quantity("1 %").dimension;

describe("units", () => {
  it("have a dimension for every list of literals", () => {
    expect([...unions.keys()].sort()).toEqual(Object.keys(DIMENSIONS).sort());
  });

  it.each([...unions])("of the literals of %s are read at run time, in their dimension", (name, units) => {
    expect(units.length, "rows to test").toBeGreaterThan(0);
    for (const unit of units) {
      const read = quantity(`1 ${unit}`).dimension;
      expect([DIMENSIONS[name], ...(name.endsWith("FractionUnit") ? [NUMBER] : [])], unit).toContain(read);
    }
  });

  it("of the table are offered as literals, alone or with a prefix", () => {
    const missing: string[] = [];
    for (const { symbol, prefixes } of UNIT_ROWS) {
      const dimension = quantity(`1 ${symbol}`).dimension;
      const name = Object.keys(DIMENSIONS).find((key) => DIMENSIONS[key] === dimension);
      if (name === undefined) continue;
      const spelled = [symbol, ...Array.from(prefixes ?? "", (prefix) => prefix + symbol)];
      if (!spelled.some((unit) => unions.get(name)!.includes(unit))) missing.push(`${symbol} in ${name}`);
    }
    expect(missing).toEqual([]);
  });

  // NIST SP 811, appendix B.8: inch of mercury, conventional, 3.386389 kPa
  it("knows a barometer in inches of mercury", () => {
    expect(quantity("29.92 inHg").in("kPa").toFixed(2)).toBe("101.32");
  });

  // NIST SP 811, appendix B.8: carat, metric, 0.2 g
  it("knows the metric carat", () => {
    expect(quantity("5 carats").in("g").toFixed()).toBe("1");
  });

  it.each(["mg%", "mg %", "mg·%", "mg * %", "µg%", "mmol%"])("does not take %s for a product", (unit) => {
    const plain = unit.replace(/ ?[·*]? ?%/, "");
    expect(() => quantity(`5 ${unit}` as "5 g")).toThrow(
      expect.objectContaining({
        code: "quantity.ambiguous-unit",
        details: { readings: [`${plain}/(100 mL)`, `${plain}/(100 g)`] },
      }),
    );
  });

  it.each(["% g", "%·g", "% * g", "%g"])("does not take %s for a product either", (unit) => {
    expect(() => quantity(`5 ${unit}` as "5 g")).toThrow(
      expect.objectContaining({
        code: "quantity.ambiguous-unit",
        hint: "a relative uncertainty is written after the unit, as in 1.5 g ± 5 %",
      }),
    );
  });

  it("reads a fraction per kelvin, and a factor to the power of nothing", () => {
    expect(
      quantity("2 % w/w/K" as never)
        .in("1/K" as never)
        .toString(),
    ).toBe("0.02");
    expect(
      quantity("1 g/mol K^0" as "1 g/mol")
        .in("g/mol")
        .toString(),
    ).toBe("1");
  });

  // 6 EUR/kg is 0.006 EUR/g
  it("writes prices with a solidus where they are of one thing alone", () => {
    const [perMass, perAmount] = [quantity("6 EUR/kg"), quantity("6 EUR/mol")];
    expect(perMass.times(quantity("2 g").dividedBy("1 mL")).dividedBy(quantity("2 g").dividedBy("1 mL")).unit).toBe(
      "EUR/g",
    );
    expect(perAmount.times("2 L").dividedBy("2 L").unit).toBe("EUR/mol");
    expect(perMass.dividedBy("2 s").toString()).toBe("0.003 EUR g^-1 s^-1");
    expect(perAmount.dividedBy("2 s").unit).toBe("EUR s^-1 mol^-1");
    expect(perMass.times("2 USD").toString()).toBe("0.012 EUR USD g^-1");
    expect(perAmount.times("2 USD").unit).toBe("EUR USD mol^-1");
    expect(quantity("2 EUR").times("3 EUR").toString()).toBe("6 EUR^2");
  });

  it("of the caller's own are read while their facts are in force, alone and in a quotient", () => {
    const own = facts({ units: [{ symbol: "scoop", is: "4.2 g", source: "measured at the studio (invented)" }] });
    const read = (text: string) => quantity(text as "1 g", { facts: own });
    expect(read("2 scoop").in("g").toString()).toBe("8.4");
    expect(read("2 scoop/L").in("g/L").toString()).toBe("8.4");
    expect(read("1 scoop ± 1 %").standardUncertainty!.toString()).toBe("0.01");
    expect(() => quantity("2 scoop" as "2 g")).toThrow(expect.objectContaining({ code: "quantity.unknown-unit" }));
  });

  it("are text and nothing else", () => {
    expect(() => quantity("1 g").in(5 as never)).toThrow(
      expect.objectContaining({
        code: "quantity.unknown-unit",
        problem: "a unit is text, not number",
        hint: 'such as "g"',
      }),
    );
  });
});

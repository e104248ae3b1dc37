// A unit stands in two lists: the table the reader uses at run time, and the literal types an editor offers.
import { readFileSync } from "node:fs";
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
      const spelled = [symbol, ...(prefixes?.split(" ") ?? []).map((prefix) => prefix + symbol)];
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
});

// What heat does to a solid all the way, step after step (tables of decompositions: handbooks).
import { parseFormula } from "preparative";
import { describe, expect, it } from "vitest";
import { heatingOf } from "../../src/preparation/reaction/heating";

const leaves = (formula: string): string[] =>
  heatingOf(parseFormula(formula)).map(({ remains }) => remains.map((one) => one.formula).join(" + "));

describe("what heat leaves of a solid", () => {
  it.each([
    ["CuSO4·5H2O", ["CuSO4·3H2O", "CuSO4·H2O", "CuSO4", "CuO", "Cu2O"]],
    ["CaC2O4·H2O", ["CaC2O4", "CaCO3", "CaO"]],
    ["Cu2(OH)2CO3", ["CuO", "Cu2O"]],
    ["H3BO3", ["HBO2", "B2O3"]],
    ["PbO2", ["Pb3O4", "PbO"]],
    ["KAl(SO4)2·12H2O", ["KAl(SO4)2·3H2O", "KAl(SO4)2", "K2SO4 + Al2O3"]],
    ["MgCO3", ["MgO"]],
    ["NH4Cl", [""]],
  ])("of %s is %j, each once", (formula, expected) => expect(leaves(formula)).toEqual(expected));

  it.each([["CuSO4·5H2O"], ["FeSO4·7H2O"], ["MgSO4·7H2O"], ["CaSO4·2H2O"], ["Na2CO3·10H2O"], ["MnO2"]])(
    "of %s comes hotter and hotter",
    (formula) => {
      const from = heatingOf(parseFormula(formula)).map((step) => step.from.in("°C").toNumber());
      expect(from.length).toBeGreaterThan(1);
      expect(from).toEqual([...new Set(from)].sort((a, b) => a - b));
    },
  );
});

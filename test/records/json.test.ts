import {
  balance,
  fromJSON,
  parseEquation,
  parseFormula,
  planPreparation,
  quantity,
  recordRun,
  tryFromJSON,
} from "preparative";
import { describe, expect, it } from "vitest";

const plan = planPreparation({
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "de-icer", form: "CaCl2·2H2O" },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "20 g" },
});

describe("records", () => {
  it.each([
    ["a quantity", quantity("12.5(2) g", { label: "jar" })],
    ["a formula", parseFormula("[Cu(NH3)4]SO4·H2O")],
    ["an equation", parseEquation("1/2 O2 + H2 -> H2O")],
    ["a balanced equation", balance("KMnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O")],
    ["a plan", plan],
    ["a run", recordRun(plan, { weighed: { soda: "21.0 g" }, dried: "19.0 g" })],
  ])("bring %s back as it was", (_, value) => {
    const text = JSON.stringify(value);
    const back = fromJSON(JSON.parse(text));
    expect(JSON.stringify(back)).toBe(text);
    expect(String(back)).toBe(String(value));
    expect(structuredClone(JSON.parse(text))).toEqual(JSON.parse(text));
  });

  it.each([[null], [undefined], [5], ["text"], [{}], [[]], [{ type: "poem" }]])("refuse %j by code", (data) => {
    const outcome = tryFromJSON(data);
    expect(outcome.ok ? "" : outcome.error.code).toBe("json.unknown-record");
  });
});

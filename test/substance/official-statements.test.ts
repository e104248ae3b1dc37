// The official statements of labels: CLP Annex III, as two public bodies print it (H200 to H319); the others from memory.
import { cautions, statementOf } from "preparative";
import { describe, expect, it } from "vitest";
import { OFFICIAL_PRECAUTIONS } from "../../src/substance/data/official-precautions";
import { OFFICIAL_STATEMENTS } from "../../src/substance/data/official-statements";
import { officialPrecautions, officialText } from "../../src/substance/internal";

describe("official statements", () => {
  it("stand once for each code, without the full stop that the sheet sets", () => {
    const all = OFFICIAL_STATEMENTS();
    expect(new Set(all.map(({ code }) => code)).size).toBe(all.length);
    for (const { code, text } of all) {
      expect(text).toMatch(/^[A-Z].*[a-z]$/);
      expect(statementOf(code).paraphrase.length, code).toBeGreaterThan(0);
    }
  });

  // European Commission, hazard and precautionary statements; University of Iceland, H-statements
  it.each([
    ["H302", "Harmful if swallowed"],
    ["H314", "Causes severe skin burns and eye damage"],
    ["H318", "Causes serious eye damage"],
    ["H220", "Extremely flammable gas"],
    ["H272", "May intensify fire; oxidiser"],
  ])("%s: %s", (code, text) => {
    expect(officialText(code)).toBe(text);
  });

  it("cover what common materials carry", () => {
    const asked = cautions([
      "CuSO4·5H2O",
      "NaOH",
      "H2SO4",
      "KMnO4",
      "K2Cr2O7",
      "Pb(NO3)2",
      "NiSO4",
      "NH3",
      "H2",
      "CO2",
    ]);
    for (const { statements } of asked.substances)
      for (const { code } of statements) expect(officialText(code), code).toMatch(/^[A-Z]/);
  });
});

describe("official precautions", () => {
  it("stand once for each code and hazard, of codes and hazards that are known", () => {
    const all = OFFICIAL_PRECAUTIONS();
    const asked = all.flatMap(({ code, hazards }) => hazards.map((hazard) => `${code} ${hazard}`));
    expect(new Set(asked).size).toBe(asked.length);
    for (const { code, text, hazards } of all) {
      expect(text, code).toMatch(/^[A-Z].*[a-z]$/);
      expect(statementOf(code).paraphrase.length, code).toBeGreaterThan(0);
      for (const hazard of hazards) expect(statementOf(hazard).paraphrase.length, hazard).toBeGreaterThan(0);
    }
  });

  // GHS Annex 3, tables of skin corrosion, acute toxicity 4 (oral), hazardous to water, flammable solids (from memory)
  it.each([
    ["H314", ["P260", "P280", "P305+P351+P338", "P301+P330+P331", "P303+P361+P353", "P304+P340", "P264", "P405"]],
    ["H302", ["P301+P312", "P270", "P264"]],
    ["H410", ["P273", "P391"]],
    ["H360FD", ["P201", "P280", "P308+P313", "P405"]],
    ["EUH031", []],
  ])("%s asks for %j", (code, asked) => {
    expect(officialPrecautions([code]).map((one) => one.code)).toEqual(asked);
  });

  // GHS Annex 3, tables of serious eye damage and eye irritation: of P280 only the eyes and the face (from memory)
  it("ask for gloves (P280) where the skin is in danger, and for the eyes alone where only they are", () => {
    const wear = (...codes: string[]) => officialPrecautions(codes).find(({ code }) => code === "P280")?.text;
    expect(wear("H319")).toBe("Wear eye protection/face protection");
    expect(wear("H318", "H302")).toBe("Wear eye protection/face protection");
    expect(wear("H315", "H319")).toContain("protective gloves");
    expect(wear("H314", "H318")).toContain("protective gloves");
  });
});

import { describe, expect, it } from "vitest";
import { ion, ions, search, substance, trySubstance } from "../../src/substance";

describe("substance", () => {
  it("is found by name, formula in any order, mineral name and registry number", () => {
    for (const text of [
      "magnesium sulfate heptahydrate",
      "MgSO4.7H2O",
      "SO4Mg·7H2O",
      "epsomite",
      "Epsom salt",
      "10034-99-8",
    ])
      expect(substance(text).formula, text).toBe("MgSO4·7H2O");
  });

  it("gives names, number, looks and figures with their source", () => {
    const found = substance("blue vitriol");
    expect(found.name).toBe("copper(II) sulfate pentahydrate");
    expect(found.otherNames.map((one) => one.name)).toContain("chalcanthite");
    expect(found.cas).toBe("7758-99-8");
    expect(found.casSource).toBe("aiic");
    expect(found.density?.toString()).toBe("2.291 g/cm3");
    expect(found.densityCheck).toBe("agrees");
    expect(found.hydrates).toEqual(["CuSO4", "CuSO4·H2O", "CuSO4·3H2O"]);
    expect(JSON.stringify(found)).toMatch(
      /^\{"type":"substance","schema":1,"library":"\d+\.\d+\.\d+","formula":"CuSO4·5H2O"\}$/,
    );
  });

  it("keeps the remark of a name that only holds loosely", () => {
    expect(substance("CaCO3").otherNames).toContainEqual({ name: "aragonite", remark: "density 2.83" });
  });

  it("answers a formula that is not listed with what the rules say", () => {
    const found = substance("LaCl3·7H2O");
    expect(found.listed).toBe(false);
    expect(found.name).toBe("lanthanum chloride heptahydrate");
    expect(found.density).toBeUndefined();
    expect(found.thermalSteps).toEqual([]);
  });

  it("refuses an ambiguous name with its readings", () => {
    const outcome = trySubstance("lime");
    expect(!outcome.ok && outcome.error.code).toBe("substance.ambiguous-name");
  });
});

describe("thermal steps", () => {
  // Calcium oxalate monohydrate, the classic thermogravimetric standard: 12.3 %, 19.2 % and 30.1 % lost in turn
  // (general knowledge, memory); here from the atomic weights.
  it("leaves 87.67, 68.50 and 38.38 % of calcium oxalate monohydrate", () => {
    const left = substance("CaC2O4·H2O").thermalSteps.map((step) => step.massLeft.in("%").toFixed(2));
    expect(left).toEqual(["87.67", "68.50", "38.38"]);
  });

  it("starts each step from what the one before left", () => {
    const steps = substance("MgSO4·7H2O").thermalSteps;
    expect(steps.map((step) => step.before[0]?.formula)).toEqual(["MgSO4·7H2O", "MgSO4·6H2O", "MgSO4·H2O"]);
    expect(steps.at(-1)?.remains).toEqual([{ formula: "MgSO4", coefficient: "1" }]);
    expect(steps[0]?.from.toString()).toBe("48 °C");
  });
});

describe("ions", () => {
  it("knows charge, colour and the kin by one hydron", () => {
    expect(ion("hydrogencarbonate")).toMatchObject({
      formula: "HCO3-",
      charge: -1,
      conjugateAcid: "H2CO3",
      conjugateBase: "CO3^2-",
      acid: { formula: "H2CO3", name: "carbonic acid" },
    });
    expect(ion("MnO4^-").colour).toBe("purple");
    expect(ion("iron(III)").formula).toBe("Fe^3+");
    expect(ion("ammonium").conjugateBase).toBe("NH3");
    expect(ion("ferrocyanide").formula).toBe("[Fe(CN)6]^4-");
  });

  it("lists more than a hundred", () => {
    expect(ions().length).toBeGreaterThan(100);
    let tested = 0;
    for (const entry of ions()) {
      expect(ion(entry.formula).charge, entry.name).toBe(entry.charge);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(210);
  });
});

describe("search", () => {
  it.each([
    ["blue vitriol", "CuSO4·5H2O"],
    ["malachite", "Cu2(OH)2CO3"],
    ["gypsm", "CaSO4·2H2O"],
    ["washnig soda", "Na2CO3·10H2O"],
    ["sodum chloride", "NaCl"],
    ["SO4Cu", "CuSO4"],
    ["7647-14-5", "NaCl"],
    ["ferric clorid", "FeCl3"],
    ["thiosulphate", "Na2S2O3"],
    ["hartshorn", "NH4HCO3"],
  ])("finds %s first", (text, formula) => expect(search(text)[0]?.formula).toBe(formula));

  // older words that no table holds are read by rule; a substance that is not listed brings its hydrates
  it.each([
    ["ferric chloride hexahydrate", "FeCl3·6H2O"],
    ["cuprous oxide", "Cu2O"],
    ["mercuric oxide", "HgO"],
    ["ferrous oxalate dihydrate", "FeC2O4·2H2O"],
    ["magnesium sulphate 7 hydrate", "MgSO4·7H2O"],
    ["stannic chloride", "SnCl4"],
    ["ferous sulfate", "FeSO4"],
    ["nickle sulfate", "NiSO4"],
    ["bue vitriol", "CuSO4·5H2O"],
    ["cuso4", "CuSO4"],
    ["potassium hydrogen phthalate", "KHC8H4O4"],
    ["silica", "SiO2"],
  ])("reads %s first", (text, formula) => expect(search(text)[0]?.formula).toBe(formula));

  it("finds by element and by ion, in formula or in older words", () => {
    expect(search("Sr", { limit: 50 }).every((hit) => hit.formula.includes("Sr"))).toBe(true);
    expect(search("bicarbonate", { limit: 50 }).map((hit) => hit.formula)).toContain("KHCO3");
    expect(search("SO3^2-", { limit: 50 }).map((hit) => hit.formula)).toContain("Na2SO3·7H2O");
  });

  it("ranks exact over partial over misspelt, and keeps the limit", () => {
    const hits = search("copper sulfate", { limit: 5 });
    expect(hits.length).toBe(5);
    for (let i = 1; i < hits.length; i += 1) expect(hits[i]!.score).toBeLessThanOrEqual(hits[i - 1]!.score);
    expect(search("xqzzj")).toEqual([]);
  });
});

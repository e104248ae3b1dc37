// What does not go is answered with figures and with the nearest way that does. Reasons: solubility products, potentials and
// curves as in the tables; the outcomes are those that practice knows (common practice, from memory).
import { findRoutes } from "preparative";
import { describe, expect, it } from "vitest";
import { jars } from "./shelves";

type Row = readonly [what: string, target: string, shelf: readonly string[], says: RegExp, figures: boolean];

// Figures asked for: gypsum 0.2 g, sodium sulfate 19 g, magnesium sulfate 34 g, potassium chloride 34 g in 100 g of water at 20 °C;
// pKa of acetic acid 4.76, of ammonium 9.2, of hydrogenphosphate 12.3; potentials of magnesium -2.37 V, zinc -0.76 V, and of hydrogen
// at pH 7 -0.41 V (the common tables, from memory).

const DEAD_ENDS: readonly Row[] = [
  [
    "chalk in sulfuric acid",
    "CaSO4·2H2O",
    ["CaCO3", "H2SO4"],
    /forms a coat on the grains.* dissolves only 0\.2\d* g of it/,
    true,
  ],
  ["copper in hydrochloric acid", "CuCl2·2H2O", ["Cu", "HCl"], /\+0\.34 V/, true],
  ["barium sulfate in soda", "BaCO3", ["BaSO4", "Na2CO3"], /\d+ % of the BaCO₃ stands/, true],
  ["saltpetre backwards", "NaNO3", ["KNO3", "NaCl"], /the crop is KNO3/, true],
  ["magnesium hydroxide by ammonia alone", "Mg(OH)2", ["MgSO4·7H2O", "NH3"], /1\d % of the Mg\(OH\)₂ stands/, true],
  ["a fired oxide in vinegar", "Ni(CH3COO)2·4H2O", ["NiO", "CH3COOH"], /fired.* pKa 4\.7\d/, true],
  [
    "an insoluble oxide as a base, for the hydroxide",
    "Mg(OH)2",
    ["NiO", "MgCl2·6H2O"],
    /^NiO is no base for Mg.* 0 % of the Mg\(OH\)₂ .* K = 0\.000\d+/,
    true,
  ],
  [
    "an insoluble oxide as a base, for its salt",
    "NiCl2·6H2O",
    ["NiO", "MgCl2·6H2O"],
    /^NiO is no base for Mg.* K = 0\.000\d+/,
    true,
  ],
  ["magnesium in zinc chloride", "Zn", ["Mg", "ZnCl2"], /hydrogen.* -2\.37 V, .* -0\.41 V .* -0\.76 V/, true],
  ["magnesium in zinc chloride, for its salt", "MgCl2·6H2O", ["Mg", "ZnCl2"], /hydrogen.* -2\.37 V/, true],
  [
    "a Tutton salt of sodium",
    "Na2Mg(SO4)2·6H2O",
    ["Na2SO4", "MgSO4·7H2O"],
    /is not known: .* potassium and ammonium.* 19 g of Na₂SO₄ and 34 g of MgSO₄/,
    true,
  ],
  ["a normal carbonate of copper", "CuCO3", ["CuSO4·5H2O", "Na2CO3"], /Cu₂\(OH\)₂CO₃/, true],
  ["a normal carbonate of cobalt by soda", "CoCO3", ["CoCl2·6H2O", "Na2CO3"], /basic carbonate/, true],
  ["silver in dilute acid", "AgCH3COO", ["Ag", "CH3COOH"], /V/, true],
  ["phosphate by its acid", "Zn3(PO4)2·4H2O", ["ZnSO4·7H2O", "H3PO4"], /acid|pH/, true],
  [
    "two salts with flat curves",
    "KCl",
    ["KBr", "NaCl"],
    /no salt of this pair crystallises by itself.* KCl 34 g at 20 °C/,
    true,
  ],
  ["lye on a salt of ammonium", "Al(OH)3", ["NH4Al(SO4)2·12H2O", "NaOH"], /ammonia .* pH 9\.2, and 99\.8 %/, true],
  [
    "ammonia from its salt and lye",
    "NH3",
    ["NH4Cl", "NaOH"],
    /is a gas that leaves the liquor.* pH 9\.2, and 99\.8 %/,
    true,
  ],
  ["ammonia from its salt and lime", "NH3", ["(NH4)2SO4", "Ca(OH)2"], /is a gas that leaves the liquor/, true],
  [
    "magnesium carbonate by bicarbonate",
    "MgCO3·3H2O",
    ["MgSO4·7H2O", "NaHCO3"],
    /until its carbon dioxide has left.* 4\d % of the MgCO₃·3H₂O/,
    true,
  ],
  [
    "the last hydron of phosphoric acid by soda",
    "Na3PO4·12H2O",
    ["Na2HPO4·12H2O", "Na2CO3"],
    /pKa 12\.\d .*needs a lye/,
    true,
  ],
  ["saltpetre of ammonium and potassium", "K2SO4", ["KCl", "(NH4)2SO4"], /crystallise together/, true],
  [
    "acetate of aluminium as crystals",
    "Al(CH3COO)3",
    ["AlCl3·6H2O", "NaCH3COO·3H2O"],
    /^unknown, lacks a kind of reaction/,
    false,
  ],
];

describe("a dead end", () => {
  it.each(DEAD_ENDS)("%s is explained", (_, target, shelf, says, figures) => {
    const { routes, refusals } = findRoutes({ target, shelf: jars(...shelf), steps: 1 });
    expect(routes).toEqual([]);
    const refusal = refusals.find(({ text }) => says.test(text));
    expect(refusals.map(({ text }) => text).join("\n")).toMatch(says);
    if (figures) expect(refusal!.numbers.length).toBeGreaterThan(0);
    expect(refusal!.source).not.toBe("");
  });

  it("names what forms in place of it", () => {
    const { refusals } = findRoutes({ target: "CuCO3", shelf: jars("CuSO4·5H2O", "Na2CO3") });
    expect(refusals.some(({ code, instead }) => code === "forms-instead" && instead.includes("Cu₂(OH)₂CO₃"))).toBe(
      true,
    );
  });

  it("names the jar that would open a way", () => {
    const { routes, refusals } = findRoutes({ target: "CuCl2·2H2O", shelf: jars("CuO", "NaCl") });
    expect(routes).toEqual([]);
    expect(refusals.some(({ code, text }) => code === "lacks-jar" && text.includes("HCl"))).toBe(true);
  });

  it("says unknown, and what is lacking, where a figure is missing", () => {
    const { routes, refusals } = findRoutes({ target: "Ni3(OH)4CO3·4H2O", shelf: jars("NiSO4·6H2O", "NH4HCO3") });
    expect(routes).toEqual([]);
    expect(refusals.some(({ unknown, text }) => unknown && /^unknown, lacks the solubility product/.test(text))).toBe(
      true,
    );
  });

  it("says unknown where the figure is missing on the way to the target", () => {
    const { routes, refusals } = findRoutes({
      target: "Co(CH3COO)2·4H2O",
      shelf: jars("CoSO4·7H2O", "(NH4)2CO3·H2O", "CH3COOH"),
    });
    expect(routes).toEqual([]);
    expect(refusals.find(({ unknown }) => unknown)!.text).toMatch(
      /^unknown, lacks the solubility product of Co₅\(OH\)₆\(CO₃\)₂/,
    );
  });

  it("says that a carbonate of aluminium does not exist in water, with how much hydroxide stands and at which pH", () => {
    const { routes, refusals } = findRoutes({ target: "Al2(CO3)3", shelf: jars("Al2(SO4)3·18H2O", "Na2CO3") });
    expect(routes).toEqual([]);
    const refusal = refusals.find(({ text }) => /does not exist in water/.test(text));
    expect(refusal!.instead).toContain("Al(OH)₃");
    // aluminium hydroxide is insoluble from pH 5 to 9 (common practice)
    const [share, pH] = refusal!.numbers.slice(0, 2).map((q) => q.toNumber(""));
    expect(share).toBeGreaterThan(0.9);
    expect(pH).toBeGreaterThan(5);
  });

  // aluminium and zinc hydroxide dissolve in lye that is over: to aluminate and zincate (common practice)
  it.each([
    ["Al(OH)3", "Al2(SO4)3·18H2O"],
    ["Zn(OH)2", "ZnSO4·7H2O"],
  ])("%s from %s: lye that is over takes it back, with how much and from which pH", (target, salt) => {
    const [route] = findRoutes({ target, shelf: jars(salt, "NaOH"), steps: 1 }).routes;
    const margins = route!.steps[0]!.margins;
    expect(margins.some(({ text }) => /^with a fifth too much of the lye \d.* % of the theory /.test(text))).toBe(true);
    const redissolves = margins.find(({ text }) => /from pH 1\d\.\d on, \d\.\d units above the liquor/.test(text));
    expect(redissolves!.figure.toNumber("")).toBeGreaterThan(0);
  });

  it("never says of what is left of a feed that it forms instead", () => {
    const { refusals } = findRoutes({ target: "Ni(CH3COO)2·4H2O", shelf: jars("NiO", "CH3COOH") });
    expect(refusals.filter(({ code }) => code === "forms-instead")).toEqual([]);
  });

  it("tells of a jar that is too hot for the kiln there is", () => {
    const shelf = jars("CaCO3");
    expect(findRoutes({ target: "CaO", shelf }).routes).toHaveLength(1);
    const { routes, refusals } = findRoutes({ target: "CaO", shelf, heat: "400 °C" });
    expect(routes).toEqual([]);
    expect(
      refusals
        .find(({ code }) => code === "too-hot")!
        .numbers[0]!.in("°C")
        .toNumber(),
    ).toBeGreaterThan(600);
  });

  it("tells what stands on the shelf already", () => {
    const { refusals } = findRoutes({ target: "ZnSO4·7H2O", shelf: jars("ZnSO4·7H2O") });
    expect(refusals[0]).toMatchObject({ code: "on-the-shelf" });
  });

  it("says so where no kind of reaction makes the target, and where a jar cannot be read", () => {
    const { routes, refusals } = findRoutes({ target: "C6H12O6", shelf: [{ name: "blue bag", form: "Zzz" }] });
    expect(routes).toEqual([]);
    expect(refusals.map(({ code, unknown }) => `${code} ${unknown}`)).toEqual(["no-kind true", "unread-jar true"]);
  });

  // common practice, from memory: aluminium and chromium are too acid for sulfide and sulfite, copper(II) and iron(III) oxidise
  // iodide, silver hydroxide is the oxide
  it.each([
    ["Al2S3", "Al(OH)3"],
    ["Al2(SO3)3", "Al(OH)3"],
    ["Al2(CO3)3", "Al(OH)3"],
    ["Cr2S3", "Cr(OH)3"],
    ["CuI2", "CuI"],
    ["AgOH", "Ag2O"],
    ["FeI3", undefined],
    ["Na2O", undefined],
  ])("says that %s does not exist in water, and what forms", (target, instead) => {
    const { routes, refusals } = findRoutes({ target, shelf: jars("Al2(SO4)3·18H2O", "CuSO4·5H2O", "NaOH", "NH3") });
    expect(routes).toEqual([]);
    expect(refusals[0]).toMatchObject({ code: "not-in-water", unknown: false });
    expect(refusals.map(({ code }) => code)).not.toContain("no-kind");
    const nearest = refusals.find(({ code }) => code === "forms-instead");
    expect(nearest?.instead).toEqual(instead === undefined ? undefined : [instead]);
    if (instead === "Al(OH)3") expect(nearest!.text).toMatch(/nearest from here: Al₂\(SO₄\)₃·18H₂O \+/);
  });
});

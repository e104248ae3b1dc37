// What a classification says of a solid in another form, and of one that is dissolved: foil is no powder, and a thin solution
// feeds no fire.
import { cautions, type MaterialOfStrength } from "preparative";
import { describe, expect, it } from "vitest";

const codes = (material: string | MaterialOfStrength): string[][] =>
  cautions([material]).substances.map(({ statements, status }) => {
    expect(status).not.toMatch(/^not (read|looked up)$/);
    return statements.map(({ code }) => code);
  });
const said = (material: string | MaterialOfStrength): string =>
  cautions([material])
    .substances.flatMap((one) => one.cautions)
    .join("; ");

describe("a metal", () => {
  it("is classified as what its name says it is", () => {
    // CLP, Annex VI, Table 3: 013-002-00-1 is aluminium powder (stabilised), 030-001-01-9 zinc powder, zinc dust (stabilised);
    // neither has an entry for the massive metal
    for (const name of ["aluminium foil", "aluminum sheet", "drinks can", "zinc granules"])
      expect(codes(name), name).toEqual([[]]);
    expect(codes("aluminium powder")).toEqual([["H228", "H261"]]);
    expect(codes("zinc dust")).toEqual([["H410"]]);
    expect(codes("zinc filings")).toEqual([["H410"]]);
    // 082-013-00-1 is lead powder, 082-014-00-7 lead massive (particle diameter of 1 mm and more)
    expect(cautions(["lead shot"]).substances.map((one) => one.citation?.slice(-12))).toEqual(["082-014-00-7"]);
    expect(cautions(["lead powder"]).substances.map((one) => one.citation?.slice(-12))).toEqual(["082-013-00-1"]);
  });

  it("is each of its forms where nothing says which, and none is left out for a word that no entry is about", () => {
    expect(codes("aluminium")).toEqual([["H228", "H261"], []]);
    // 012-002-00-9 is magnesium, powder or turnings: nothing is known here of any other form
    for (const name of ["magnesium turnings", "magnesium ribbon", "magnesium powder"])
      expect(codes(name), name).toEqual([["H228", "H261", "H252"]]);
  });

  it("is in the form that is stated, whatever it is called, and no form is made up", () => {
    expect(codes({ material: "Al", state: "massive" })).toEqual([[]]);
    expect(codes({ material: "aluminium foil", state: "powder" })).toEqual([["H228", "H261"]]);
    expect(() => cautions([{ material: "Al", state: "molten" as never }])).toThrow(
      /massive, powder, crystalline, amorphous/,
    );
  });

  it("stays what it is in water: a strength makes no solution of it", () => {
    expect(codes({ material: "Na", strength: "50 %" })[0]).toContain("H260");
  });
});

describe("silica", () => {
  it("is a danger as dust of quartz, not as what water gives", () => {
    // carcinogenic is crystalline silica inhaled as quartz or cristobalite; amorphous silica is not classifiable (IARC 68 and 100C, from memory)
    expect(codes("SiO2")).toEqual([["H350i", "H372"], []]);
    expect(codes("quartz")).toEqual([["H350i", "H372"]]);
    expect(codes({ material: "SiO2", state: "amorphous" })).toEqual([[]]);
  });
});

describe("an oxidising salt in water", () => {
  const DRIES = "dries to an oxidiser: do not let it dry on paper or cloth";

  it("is an oxidiser from a tenth on, and below it what it dries to", () => {
    // silver nitrate of 0.1 mol/L, 1.7 %: bottles of it carry no flame over a circle (common practice, no source)
    expect(codes({ material: "AgNO3", strength: "1.68 %" })).toEqual([["H315", "H319", "H410"]]);
    expect(said({ material: "AgNO3", strength: "1.68 %" })).toContain(DRIES);
    expect(codes({ material: "AgNO3", strength: "9.9 %" })[0]).not.toContain("H272");
    expect(codes({ material: "AgNO3", strength: "10 %" })[0]).toContain("H272");
    expect(said({ material: "AgNO3", strength: "10 %" })).not.toContain(DRIES);
    expect(codes("AgNO3")[0]).toContain("H272");
    expect(said("AgNO3")).not.toContain(DRIES);
  });

  it("keeps what its poison says by strength", () => {
    // general limits of mixtures (CLP, Annex I, from memory): H314 from 5 %, H318 from 3 %, H319 from 1 %
    expect(codes({ material: "AgNO3", strength: "6 %" })).toEqual([["H314", "H410"]]);
    // entries with limits of their own that are not stored keep all but the fire
    const dichromate = codes("K2Cr2O7")[0]!;
    expect(codes({ material: "K2Cr2O7", strength: "2 %" })).toEqual([dichromate.filter((code) => code !== "H272")]);
  });

  it("is in a liquor what it poisons, and no fire, at whatever strength", () => {
    expect(codes({ material: "NaNO3", dissolved: true })).toEqual([["H319"]]);
    expect(said({ material: "NaNO3", dissolved: true })).toBe(DRIES);
    expect(said("NaNO3")).toBe("no organics, no heating with fuels");
    expect(codes({ material: "KNO3", dissolved: true })).toEqual([[]]);
    expect(codes({ material: "NaCl", dissolved: true })).toEqual(codes("NaCl"));
    // peroxide and the acids have limits of their own
    expect(codes({ material: "H2O2", dissolved: true })).toEqual(codes("H2O2"));
    // peroxide: Ox. Liq. 1 from 70 %, 2 from 50 % (CLP, Annex VI, 008-003-00-9); nitric acid: Ox. Liq. 3 from 65 % (007-004-00-1)
    expect(codes({ material: "H2O2", strength: "30 %" })[0]).not.toContain("H272");
    expect(codes({ material: "H2O2", strength: "50 %" })[0]).toContain("H272");
    expect(codes({ material: "HNO3", strength: "64 %" })[0]).not.toContain("H272");
    expect(codes({ material: "HNO3", strength: "65 %" })[0]).toContain("H272");
  });
});

describe("spirit", () => {
  it("is a flammable liquid by the flash point of its strength", () => {
    // The Engineering ToolBox, ethanol and water: flash point 62 °C at 5 %, 49 °C at 10 %, 26 °C at 40 %, 24 °C at 50 %, 22 °C at 60 %;
    // CLP, Annex I, Table 2.6.1 (from memory): below 23 °C highly flammable, to 60 °C flammable
    const at = (strength: string) => codes({ material: "C2H5OH", strength });
    expect(at("96 %")).toEqual([["H225"]]);
    expect(at("60 %")).toEqual([["H225"]]);
    expect(at("40 %")).toEqual([["H226"]]);
    expect(at("10 %")).toEqual([["H226"]]);
    expect(at("4 %")).toEqual([[]]);
  });
});

describe("gloves", () => {
  it("are asked for wherever the label asks for them (P280), and for what poisons", () => {
    // GHS, Annex 3: P280 for carcinogens, mutagens and what harms the unborn, H340 to H361
    const gloves = (text: string): boolean =>
      cautions([text]).substances.some(({ protection }) => protection.some((one) => one.startsWith("gloves")));
    for (const text of ["PbI2", "lead shot", "BaCl2·2H2O", "AgNO3", "CuSO4·5H2O", "ZnSO4·7H2O"])
      expect(gloves(text), text).toBe(true);
    expect(gloves("NaCl")).toBe(false);
    const lines = cautions(["K2Cr2O7"]).substances[0]!.protection.filter((one) => one.startsWith("gloves"));
    expect(lines).toHaveLength(1);
  });
});

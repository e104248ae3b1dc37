// Problems on crystal water, basic salts and oxides, composed here by somebody who had not seen the other tests, and
// calculated by hand beside each on abridged atomic weights. Tolerance 2 in 10 000, which is what five-figure weights are
// good to; a difference of two weighings has that of its last digit, as the row says.
import { describe, expect, test } from "vitest";
import { titrate } from "../../src/amount";
import { parseFormula } from "../../src/formula";
import {
  crystalWaterIn,
  equivalentMass,
  hydrateMixUps,
  hydrationNumber,
  meanHydration,
  stagedDehydration,
  waterContent,
} from "../../src/hydrate";
import { uncertaintyBudget } from "../../src/quantity";
import { check, M } from "./hand";

const WATER = M("H2 O");

describe("one form for another", () => {
  check([
    [
      "plaster set to gypsum",
      (100 * M("Ca S O4", 2)) / M("Ca S O4", 0.5),
      "g",
      () => equivalentMass("100 g", { from: "CaSO4·0.5H2O", to: "CaSO4·2H2O" }),
    ],
    [
      "calcium chloride that drank its fill",
      (100 * M("Ca Cl2", 6)) / M("Ca Cl2", 2),
      "g",
      () => equivalentMass("100 g", { from: "CaCl2·2H2O", to: "CaCl2·6H2O" }),
    ],
    [
      "blue vitriol for a gram of copper",
      M("Cu S O4", 5) / M("Cu"),
      "g",
      () => equivalentMass("1.000 g", { from: "Cu", to: "CuSO4·5H2O" }),
    ],
    [
      "blue vitriol for malachite",
      (22.1 * 2 * M("Cu S O4", 5)) / M("Cu2 C O5 H2"),
      "g",
      () => equivalentMass("22.1 g", { from: "Cu2CO3(OH)2", to: "CuSO4·5H2O" }),
    ],
    [
      "zinc oxide in basic zinc carbonate",
      (10 * 5 * M("Zn O")) / M("Zn5 C2 O12 H6"),
      "g",
      () => equivalentMass("10 g", { from: "Zn5(CO3)2(OH)6", to: "ZnO" }),
    ],
    [
      "lead in white lead",
      (100 * 3 * M("Pb")) / M("Pb3 C2 O8 H2"),
      "g",
      () => equivalentMass("100 g", { from: "2PbCO3·Pb(OH)2", to: "Pb" }),
    ],
    [
      "magnesia in magnesia alba",
      (100 * 5 * M("Mg O")) / M("Mg5 C4 O14 H2", 5),
      "g",
      () => equivalentMass("100 g", { from: "4MgCO3·Mg(OH)2·5H2O", to: "MgO" }),
    ],
    [
      "basic nickel carbonate to its oxide",
      (100 * 3 * M("Ni O")) / M("Ni3 O7 H4 C", 4),
      "g",
      () => equivalentMass("100 g", { from: "Ni3(OH)4CO3·4H2O", to: "NiO" }),
    ],
    [
      "magnetite as red oxide",
      (100 * 1.5 * M("Fe2 O3")) / M("Fe3 O4"),
      "g",
      () => equivalentMass("100 g", { from: "Fe3O4", to: "Fe2O3" }),
    ],
    [
      "phosphate as phosphorus pentoxide",
      (100 * M("P2 O5")) / M("Ca3 P2 O8"),
      "g",
      () => equivalentMass("100 g", { from: "Ca3(PO4)2", to: "P2O5", per: "P" }),
    ],
    [
      "alumina from alum",
      (10 * M("Al2 O3")) / 2 / M("K Al S2 O8", 12),
      "g",
      () => equivalentMass("10 g", { from: "KAl(SO4)2·12H2O", to: "Al2O3" }),
    ],
    [
      "magnesium in pyrophosphate",
      (0.35 * 2 * M("Mg")) / M("Mg2 P2 O7"),
      "g",
      () => equivalentMass("0.3500 g", { from: "Mg2P2O7", to: "Mg" }),
    ],
    [
      "nickel in its glyoxime",
      (0.2889 * M("Ni")) / M("Ni C8 H14 N4 O4"),
      "g",
      () => equivalentMass("0.2889 g", { from: "Ni(C4H7N2O2)2", to: "Ni" }),
    ],
    [
      "iron alum's iron for green vitriol",
      M("Fe S O4", 7) / M("N2 H8 Fe S2 O8", 6),
      "g",
      () => equivalentMass("1 g", { from: "(NH4)2Fe(SO4)2·6H2O", to: "FeSO4·7H2O", per: "Fe" }),
    ],
    [
      "cadmium sulfate from eight thirds to one",
      (100 * 3 * M("Cd S O4", 1)) / M("Cd3 S3 O12", 8),
      "g",
      () => equivalentMass("100 g", { from: "3CdSO4·8H2O", to: "CdSO4·H2O" }),
    ],
    [
      "water in 143 g of soda crystals",
      (143 * 10 * WATER) / M("Na2 C O3", 10),
      "g",
      () => crystalWaterIn("143 g", "Na2CO3·10H2O"),
    ],
    ["water in citric acid crystals", (100 * WATER) / M("C6 H8 O7", 1), "%", () => waterContent("C6H8O7·H2O")],
    [
      "a salt of 98 % for one of 96 % and 2 % damp",
      ((100 * 0.98) / 0.96 / 0.98) * (M("Mg S O4") / M("Mg S O4", 7)),
      "g",
      () =>
        equivalentMass("100 g", {
          from: "MgSO4·7H2O",
          to: "MgSO4",
          fromPurity: { assay: "98 %" },
          toPurity: { assay: "96 %", moisture: "2 %" },
        }),
    ],
  ]);
});

describe("heating", () => {
  check([
    [
      "barium chloride in a crucible",
      0.145 / WATER / (0.8382 / M("Ba Cl2")),
      "",
      () =>
        hydrationNumber({ before: "21.3450 g", after: "21.2000 g", vessel: "20.3618 g", anhydrous: "BaCl2" }).waters,
    ],
    [
      "Epsom salt, 5.00 g to 2.44 g",
      2.56 / WATER / (2.44 / M("Mg S O4")),
      "",
      () => hydrationNumber({ before: "5.00 g", after: "2.44 g", anhydrous: "MgSO4" }).waters,
    ],
    [
      "nickel sulfate, 2.63 g to 1.55 g",
      1.08 / WATER / (1.55 / M("Ni S O4")),
      "",
      () => hydrationNumber({ before: "2.63 g", after: "1.55 g", anhydrous: "NiSO4" }).waters,
    ],
    [
      "blue vitriol stopped at the monohydrate",
      1 + 0.721 / WATER / (1.776 / M("Cu S O4", 1)),
      "",
      () => hydrationNumber({ before: "2.497 g", after: "1.776 g", anhydrous: "CuSO4", residue: "CuSO4·H2O" }).waters,
    ],
    [
      "gypsum to plaster",
      (100 * 1.5 * WATER) / M("Ca S O4", 2),
      "%",
      () => stagedDehydration("CaSO4·2H2O").steps[0]!.loss,
    ],
    [
      "gypsum burnt dead",
      (100 * 2 * WATER) / M("Ca S O4", 2),
      "%",
      () => stagedDehydration("CaSO4·2H2O").steps[1]!.loss,
    ],
    [
      "Epsom salt at the monohydrate",
      (10 * M("Mg S O4", 1)) / M("Mg S O4", 7),
      "g",
      () => stagedDehydration("MgSO4·7H2O", "10 g").steps[1]!.mass!,
    ],
    [
      "blue vitriol at the trihydrate",
      (5 * M("Cu S O4", 3)) / M("Cu S O4", 5),
      "g",
      () => stagedDehydration("CuSO4·5H2O", "5 g").steps[0]!.mass!,
    ],
    [
      "calcium oxalate down to lime",
      (100 * M("Ca O")) / M("Ca C2 O4", 1),
      "%",
      () => stagedDehydration("CaC2O4·H2O").steps[2]!.massFraction,
    ],
    [
      "zinc vitriol at the monohydrate",
      (100 * 6 * WATER) / M("Zn S O4", 7),
      "%",
      () => stagedDehydration("ZnSO4·7H2O").steps[1]!.loss,
    ],
  ]);

  // x = k (m1 - m2)/(m2 - m0): the partial derivatives are k/(m2 - m0), -k (m1 - m0)/(m2 - m0)^2 and k (m1 - m2)/(m2 - m0)^2.
  test("carries the readability of three weighings, two of them twice, into the number of waters", () => {
    const g = (value: string) => ({ value, unit: "g", readability: "0.001" }) as const;
    const [m0, m1, m2] = [22.932, 25.482, 24.56];
    const found = hydrationNumber({ before: g("25.482"), after: g("24.560"), vessel: g("22.932"), anhydrous: "CuSO4" });
    const k = M("Cu S O4") / WATER;
    const [rest, u] = [m2 - m0, 0.001 / Math.sqrt(12)];
    const hand = k * u * Math.hypot(1 / rest, (m1 - m0) / rest ** 2, (m1 - m2) / rest ** 2);
    // the atomic weights add 1.5e-4 to 3.05e-3 in squares: 0.1 %
    expect(found.waters.standardUncertainty!.toNumber() / hand).toBeCloseTo(1, 2);
  });

  // The weights of copper, sulfur and oxygen stand in both forms, so that only the share of water is uncertain:
  // r = 1 + 5 M(H2O)/M(salt), dr/dM(salt) = -5 M(H2O)/M(salt)^2.
  test("lets the atomic weights that stand in both forms cancel", () => {
    const pair = equivalentMass("1 g", { from: "CuSO4", to: "CuSO4·5H2O" });
    const sulfur = uncertaintyBudget(pair).find(({ input }) => input.includes("sulfur"))!;
    const hand = (5 * WATER) / M("Cu S O4") ** 2;
    expect(Math.abs(sulfur.sensitivity.toNumber()) / hand).toBeCloseTo(1, 3);
  });
});

describe("effloresced soda", () => {
  const soda = M("Na2 C O3");
  check([
    [
      "assay of 63.0 %",
      ((1 / 0.63 - 1) * soda) / WATER,
      "",
      () => meanHydration({ salt: "Na2CO3·10H2O", assay: "63.0 %" }).waters,
    ],
    [
      "5.00 g dried to 2.90 g",
      2.1 / WATER / (2.9 / soda),
      "",
      () => meanHydration({ salt: "Na2CO3", before: "5.00 g", after: "2.90 g" }).waters,
    ],
    [
      "the same in a dish of 20.00 g",
      2.1 / WATER / (2.9 / soda),
      "",
      () => meanHydration({ salt: "Na2CO3", before: "25.00 g", after: "22.90 g", vessel: "20.00 g" }).waters,
    ],
    [
      "and its mass fraction",
      58,
      "%",
      () => meanHydration({ salt: "Na2CO3", before: "25.00 g", after: "22.90 g", vessel: "20.00 g" }).anhydrousFraction,
    ],
    [
      "0.3550 g that take 24.80 mL of decimolar acid",
      ((0.355 / (0.00124 * soda) - 1) * soda) / WATER,
      "",
      () =>
        meanHydration({
          salt: "Na2CO3",
          assay: titrate({
            titrant: { strength: "0.1000 mol/L", of: "HCl" },
            titre: "24.80 mL",
            analyte: "Na2CO3",
            equation: "Na2CO3 + HCl -> NaCl + CO2 + H2O",
            sample: "0.3550 g",
          }).massFraction!,
        }).waters,
    ],
  ]);
});

// Ratio of the molar masses, calculated by hand and rounded to three figures, as a bench worker would have it.
describe("one hydrate taken for another", () => {
  test.each([
    ["CuSO4", 5, 0, M("Cu S O4")],
    ["ZnSO4", 7, 1, M("Zn S O4")],
    ["MgSO4", 7, 0, M("Mg S O4")],
    ["MgSO4", 7, 1, M("Mg S O4")],
    ["FeSO4", 7, 0, M("Fe S O4")],
    ["FeSO4", 7, 1, M("Fe S O4")],
    ["Na2CO3", 10, 0, M("Na2 C O3")],
    ["Na2CO3", 10, 1, M("Na2 C O3")],
    ["Na2SO4", 10, 0, M("Na2 S O4")],
    ["Na2S2O3", 5, 0, M("Na2 S2 O3")],
    ["NaCH3COO", 3, 0, M("Na C2 H3 O2")],
    ["CaCl2", 2, 0, M("Ca Cl2")],
    ["CaSO4", 2, 0.5, M("Ca S O4")],
    ["KAl(SO4)2", 12, 0, M("K Al S2 O8")],
    ["H2C2O4", 2, 0, M("H2 C2 O4")],
    ["C6H8O7", 1, 0, M("C6 H8 O7")],
    ["Na3PO4", 12, 0, M("Na3 P O4")],
    ["NiSO4", 6, 0, M("Ni S O4")],
    ["CoCl2", 6, 0, M("Co Cl2")],
    ["CuCl2", 2, 0, M("Cu Cl2")],
    ["BaCl2", 2, 0, M("Ba Cl2")],
    ["FeCl3", 6, 0, M("Fe Cl3")],
    ["SnCl2", 2, 0, M("Sn Cl2")],
    ["Al2(SO4)3", 18, 0, M("Al2 S3 O12")],
  ])("%s with %d waters for %d, either way round", (salt, more, less, dry) => {
    const ratio = (dry + more * WATER) / (dry + less * WATER);
    const named = (text: string): boolean =>
      hydrateMixUps({ ratio: text, of: salt }).some(({ heavier, lighter }) => {
        const count = (n: number): string => (n === 0 ? salt : `${salt}.${n === 1 ? "" : n}H2O`);
        return (
          heavier.hasSameComposition(parseFormula(count(more))) && lighter.hasSameComposition(parseFormula(count(less)))
        );
      });
    expect(named(ratio.toPrecision(3))).toBe(true);
    expect(named((1 / ratio).toPrecision(3))).toBe(true);
  });
});

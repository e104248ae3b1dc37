// Of every pair of ions that the rules of the trade call insoluble there is a solubility product, or it stands here and every
// answer that depends on it names it. No row may be added to this list: it becomes shorter as constants are found.
import { describe, expect, it } from "vitest";
import { aqueousComposition } from "../../src";
import { INSOLUBLE, uncovered } from "../../src/aqueous/mixture/coverage";
import { chargeOf, keyOf } from "../../src/aqueous/mixture/notation";
import { network } from "../../src/aqueous/mixture/tabulated";

/**
 * Pairs without a constant. All were looked for, and not found: in the handbook tables of solubility products, in the data of EPA,
 * BRGM, ANDRA and Livermore, among the free energies of formation of NBS (which know fired silicates only, and a cobalt borate that
 * would dissolve), and in abstracts of the journals; a second time in abstracts and in tables in six languages. The constant of a
 * hydroxyaluminosilicate (Schneider 2004, 10^-40.6) counts two aluminium ions of the solid as one and is left out.
 */
const WITHOUT: Readonly<Record<string, string>> = {
  "CO3^2-": "Hg^2+ Bi^3+",
  "PO4^3-": "Hg^2+ Sn^2+ Be^2+ Sc^3+ Ga^3+",
  "AsO4^3-": "Fe^2+ Hg^2+ Hg2^2+ Ce^3+ Pr^3+ Y^3+ Tl+ Be^2+ Ga^3+",
  "SO3^2-": "Pb^2+ Mn^2+ Cd^2+",
  "C2O4^2-": "Sn^2+ Bi^3+ Nd^3+ Pr^3+ Sc^3+ Eu^3+",
  "S^2-": "Fe^3+ Hg2^2+ Be^2+ Ga^3+",
  "CrO4^2-": "Hg^2+ Bi^3+",
  "H2SiO4^2-":
    "Mg^2+ Ca^2+ Sr^2+ Ba^2+ Mn^2+ Fe^2+ Fe^3+ Co^2+ Ni^2+ Cu^2+ Zn^2+ Cd^2+ Hg^2+ Hg2^2+ Ag+ Pb^2+ Sn^2+ Bi^3+ Al^3+ Cr^3+ La^3+ Ce^3+ Nd^3+ Pr^3+ Y^3+ Tl+ Be^2+ Sc^3+ Eu^3+ Ga^3+",
  "B(OH)4-": "Ca^2+ Mg^2+ Ba^2+ Pb^2+ Ag+ Mn^2+ Co^2+ Cu^2+",
  "C6H5O7^3-": "Ba^2+ Sr^2+ Pb^2+ Ag+ Zn^2+",
  "C4H4O6^2-": "Ba^2+ Sr^2+ Ag+",
  "Fe(CN)6^4-": "Fe^2+ Hg^2+ Sn^2+ Bi^3+ Al^3+ Cr^3+ Be^2+",
  "IO3-": "Fe^3+ Sn^2+ Bi^3+ Nd^3+ Pr^3+ Be^2+ Sc^3+ Ga^3+",
  "MoO4^2-":
    "Mn^2+ Fe^3+ Co^2+ Ni^2+ Cu^2+ Zn^2+ Cd^2+ Hg^2+ Hg2^2+ Sn^2+ Bi^3+ Al^3+ Cr^3+ Ce^3+ Nd^3+ Pr^3+ Y^3+ Tl+ Be^2+ Sc^3+ Eu^3+ Ga^3+",
  "WO4^2-":
    "Ba^2+ Mn^2+ Fe^2+ Fe^3+ Ni^2+ Cu^2+ Zn^2+ Hg^2+ Pb^2+ Sn^2+ Bi^3+ Al^3+ Cr^3+ La^3+ Ce^3+ Nd^3+ Pr^3+ Y^3+ Tl+ Be^2+ Sc^3+ Eu^3+ Ga^3+",
};

/** As many as there were when the list was made; never more. */
const MOST = 137;

const pairs = INSOLUBLE.flatMap(([anions, cations]) =>
  anions.flatMap((anion) => cations.map((cation): [cation: string, anion: string] => [cation, anion])),
);
const without = Object.entries(WITHOUT).flatMap(([anion, cations]) =>
  cations.split(" ").map((cation): [cation: string, anion: string] => [cation, anion]),
);
const isSolid = (text: string): boolean => text.includes("a solid is expected");

describe("pairs that the rules call insoluble", () => {
  it("have a solubility product, but for those listed", () => {
    const found = pairs.filter(([cation, anion]) =>
      uncovered(network(), [keyOf(cation), keyOf(anion), "H+"]).some(isSolid),
    );
    expect(found.sort().join("; ")).toBe([...without].sort().join("; "));
    expect(pairs.length).toBeGreaterThanOrEqual(330);
    expect(without.length).toBeLessThanOrEqual(MOST);
  });

  it("that have none are named as unknown in every answer that holds both ions", () => {
    expect(without.length, "rows to test").toBeGreaterThan(0);
    for (const [cation, anion] of without) {
      const [up, down] = [chargeOf(cation), -chargeOf(anion)];
      const { unknown } = aqueousComposition({
        water: "1 kg",
        dissolved: [
          { formula: cation, amount: "0.001 mol" },
          { formula: "ClO4-", amount: `${0.001 * up} mol` },
          { formula: anion, amount: "0.001 mol" },
          { formula: "Na+", amount: `${0.001 * down} mol` },
        ],
      });
      expect(unknown.some(isSolid), `${cation} ${anion}`).toBe(true);
    }
  });

  it("are not taken for known by a mineral that no beaker makes", () => {
    // magnesium carbonate is not judged by magnesite, but by the hydrates that precipitate
    const magnesium = network().phasesWith(keyOf("Mg^2+"), keyOf("CO3^2-"));
    expect(magnesium.some(({ row }) => row?.bench === "never here")).toBe(true);
    expect(uncovered(network(), [keyOf("Mg^2+"), keyOf("CO3^2-"), "H+"])).toEqual([]);
  });
});

// However a dangerous pair is spelt, it is stopped: by formula in any order, with brackets, with crystal water, by systematic,
// older and shop names, one part in solution, or as something another step makes. Which pairs are dangerous is textbook
// knowledge (Prudent Practices, Bretherick's Handbook; from memory); the spellings are made by rule.

import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { attempt } from "../../src/foundation/error";
import { constitutionOf } from "../../src/ion/constitution";
import { namesOf } from "../../src/substance";
import { SHOP_MATERIALS } from "../../src/substance/data/shop-materials";
import { cautionsWhere } from "../../src/substance/hazards/cautions";

/** Strong enough to be dangerous, and still a solution. */
const PAIRS: readonly (readonly [string, string])[] = [
  ["NaClO", "HCl"],
  ["NaClO", "CH3COOH"],
  ["NaClO", "NaHSO4"],
  ["NaClO", "NH3"],
  ["NaClO", "NH4Cl"],
  ["NaClO", "(NH4)2SO4"],
  ["NaClO", "CO(NH2)2"],
  ["NaClO", "CH3COCH3"],
  ["NaClO", "C2H5OH"],
  ["NaClO", "NaCN"],
  ["NaClO", "Al2(SO4)3"],
  ["Ca(ClO)2", "HCl"],
  ["Ca(ClO)2", "C3H8O3"],
  ["Ca(ClO)2", "S"],
  ["HClO", "NH3"],
  ["HClO", "HCl"],
  ["NaClO2", "H2SO4"],
  ["KClO3", "S"],
  ["KClO3", "C12H22O11"],
  ["KClO3", "Al"],
  ["KClO3", "H2SO4"],
  ["NaClO3", "NH4Cl"],
  ["KClO4", "S"],
  ["NH4ClO4", "Al"],
  ["KBrO3", "S"],
  ["KBrO3", "HBr"],
  ["KMnO4", "H2SO4"],
  ["KMnO4", "HCl"],
  ["KMnO4", "C3H8O3"],
  ["KMnO4", "S"],
  ["KCN", "HCl"],
  ["KCN", "C6H8O7"],
  ["NaCN", "CH3COOH"],
  ["Ca(CN)2", "HCl"],
  ["Zn(CN)2", "H2SO4"],
  ["CuCN", "HCl"],
  ["K4[Fe(CN)6]", "H2SO4"],
  ["K3[Fe(CN)6]", "HCl"],
  ["Na2S", "HCl"],
  ["FeS", "H2SO4"],
  ["ZnS", "HCl"],
  ["NaN3", "HCl"],
  ["NaN3", "Pb(NO3)2"],
  ["NaN3", "CuSO4"],
  ["NaN3", "HgCl2"],
  ["NaF", "H2SO4"],
  ["CaF2", "H2SO4"],
  ["CaC2", "AgNO3"],
  ["Ca3P2", "HCl"],
  ["AgNO3", "NH3"],
  ["AgNO3", "NH4OH"],
  ["Ag2O", "NH3"],
  ["AgNO3", "Na2C2O4"],
  ["I2", "NH3"],
  ["I2", "NH4OH"],
  ["Cl2", "NH3"],
  ["Cl2", "NH4Cl"],
  ["Br2", "Al"],
  ["HNO3", "C2H5OH"],
  ["HNO3", "CH3COCH3"],
  ["HNO3", "C3H8O3"],
  ["HNO3", "CO(NH2)2"],
  ["HNO3", "Na2S"],
  ["H2O2", "CH3COCH3"],
  ["H2O2", "H2SO4"],
  ["H2O2", "HCOOH"],
  ["H2O2", "C6H12N4"],
  ["K2Cr2O7", "C2H5OH"],
  ["K2Cr2O7", "HCl"],
  ["CrO3", "CH3COOH"],
  ["MnO2", "HCl"],
  ["KHSO5", "HCl"],
  ["KNO3", "S"],
  ["KNO3", "C12H22O11"],
  ["KNO3", "Al"],
  ["NH4NO3", "Zn"],
  ["NaNO2", "NH4Cl"],
  ["Fe2O3", "Al"],
  ["CuO", "Mg"],
  ["KNO3", "Zn"],
  ["KClO3", "NaC7H5O2"],
  ["KCN", "AlCl3"],
  ["KClO3", "NaBH4"],
  ["Na", "H2O"],
  ["K", "H2O"],
  ["NaH", "H2O"],
  ["Na", "C2H5OH"],
  ["Na", "CHCl3"],
  ["P4", "NaOH"],
];

/** The ions of a salt, each in brackets: K(CN), (NH4)2(SO4). */
function bracketed(text: string): string[] {
  const { kind, cations, anions } = constitutionOf(text);
  if (kind !== "salt") return [];
  const group = ({ formula, count }: { formula: string; count: number }): string => {
    const bare = formula.replace(/\^\d+[+-]$|[+-]$/, "");
    const times = count === 1 ? "" : String(count);
    return /^[A-Z][a-z]?$/.test(bare) ? bare + times : `(${bare.replace(/^\[(.*)\]$/, "$1")})${times}`;
  };
  return [[...cations, ...anions].map(group).join("")];
}

const holdsMetal = (text: string): boolean =>
  constitutionOf(text).cations.some(({ element }) => (element ?? "H") !== "H");

/** Ways of spelling a substance. */
function spellings(text: string): string[] {
  const formula = parseFormula(text);
  const named = attempt(() => namesOf(text));
  const names = named.ok ? named.value : [];
  const shops = SHOP_MATERIALS()
    .filter((row) => row.formula === text)
    .flatMap((row) => [row.name]);
  // elements, oxides and hydrides take no crystal water
  const hydrates = holdsMetal(text) && !/^(Na|Li|K)H$|O\d?$/.test(text) ? [`${text}·2H2O`, `${text}.H2O`] : [];
  return [
    ...new Set([
      text,
      formula.toHill(),
      formula.toUnicode(),
      `${text}(s)`,
      ...bracketed(text),
      ...hydrates,
      ...names,
      ...shops,
    ]),
  ];
}

/** Is it the name of goods of which none holds more than a tenth? */
function isSoldDilute(name: string): boolean {
  const entries = cautionsWhere([name], []).substances;
  return entries.every(({ strength }) => strength !== undefined && Number.parseFloat(strength) <= 10);
}

const isStopped = (pair: readonly (string | { material: string; strength: string })[]): boolean =>
  cautionsWhere(pair, [], { planned: true, heated: false }).incompatibilities.some((one) => one.blocking);

describe("a dangerous pair", () => {
  it("is one of at least sixty", () => {
    expect(PAIRS.length).toBeGreaterThanOrEqual(60);
  });

  it.each(PAIRS)("%s and %s is stopped in every spelling", (a, b) => {
    const [ofA, ofB] = [spellings(a), spellings(b)];
    const all = [...ofA.map((one) => [one, b] as const), ...ofB.map((one) => [a, one] as const)];
    expect(all.length).toBeGreaterThanOrEqual(5);
    // a good that is only sold dilute, as pharmacy peroxide, is no spelling but a solution of at most a tenth
    const told = all.map((pair) => pair.map((one) => (isSoldDilute(one) ? { material: one, strength: "10 %" } : one)));
    const leaks = all.filter((pair, i) => !isStopped(pair) && isStopped(told[i]!)).map((pair) => pair.join(" + "));
    // either way round
    const turned = all
      .filter(([one, other], i) => !isStopped([other, one]) && isStopped(told[i]!))
      .map((pair) => pair.join(" + "));
    const plain = all.filter((pair) => !pair.some(isSoldDilute) && !isStopped(pair));
    expect(plain).toEqual([]);
    expect(leaks).toEqual([]);
    expect(turned).toEqual([]);
  });

  it("is stopped with either part in a strong solution", () => {
    const wet = PAIRS.filter(([a, b]) => isStopped([{ material: a, strength: "60 %" }, b]));
    // what is left needs no water to be dangerous: solids that burn, and water itself
    expect(wet.length).toBeGreaterThanOrEqual(60);
    for (const [a, b] of wet) expect(isStopped([a, { material: b, strength: "60 %" }]), `${a} ${b}`).toBe(true);
  });
});

// How far a solid is from not standing: powers of ten of its solubility product, and the pH from which lye takes it.
import { doesItGo } from "preparative";
import { describe, expect, it } from "vitest";
import { roomOf } from "../../../src/preparation/internal";

const ask = (equation: string, product: string, strength?: "0.2 mol/L" | "0.02 mol/L") => {
  const [one, other] = equation.split(" -> ")[0]!.split(" + ") as [string, string];
  const materials = [one, other].map((form) => ({ name: form, form, strength }));
  return doesItGo({ equation, product, ...(strength === undefined ? {} : { materials }) });
};
const silver = (strength: "0.2 mol/L" | "0.02 mol/L") => ask("AgNO3 + NaCl -> AgCl + NaNO3", "AgCl", strength);

describe("the room of a solid", () => {
  // Equal volumes: 0.1 mol/L of either. pKsp 9.75; AgCl by itself has 10^3.3 times the product of its ions (handbooks). With half
  // of it dissolved, 0.05 mol/L, of which 0.043 as AgCl: product 0.043 / 10^3.3 = 10^-4.67, 9.75 - 4.67 = 5.1.
  it("is the powers of ten that the solubility product of silver chloride may grow before half of it is dissolved", () => {
    const room = roomOf(silver("0.2 mol/L"), 0.5)!;
    expect(Math.abs(room.logarithm - 5.1)).toBeLessThan(0.35);
    expect(room.more).toBe(false);
    // neither of its ions is an acid or a base to speak of
    expect(Math.abs(room.pH - 7)).toBeLessThan(0.5);
    expect(room.redissolvesFrom).toBeUndefined();
  });

  // Half instead of a tenth may dissolve, nearly all of it as AgCl: log10(5) = 0.7; a tenth of the strength: 1, and a little more.
  it("is less where more of it should stand, and in thinner solutions", () => {
    const half = roomOf(silver("0.2 mol/L"), 0.5)!.logarithm;
    expect(Math.abs(half - roomOf(silver("0.2 mol/L"), 0.9)!.logarithm - 0.7)).toBeLessThan(0.3);
    const thinner = half - roomOf(silver("0.02 mol/L"), 0.5)!.logarithm;
    expect(thinner).toBeGreaterThan(0.9);
    expect(thinner).toBeLessThan(1.6);
  });

  // pKsp 16.1 (handbooks), 7 more than silver chloride: more than the 8 powers that are looked at
  it("is as far as was looked for silver iodide", () => {
    expect(roomOf(ask("AgNO3 + KI -> AgI + KNO3", "AgI", "0.2 mol/L"), 0.5)).toMatchObject({
      logarithm: 8,
      more: true,
    });
  });

  // Textbooks: fresh aluminium hydroxide dissolves in lye from pH 10 on, zinc hydroxide from 13 on, magnesium hydroxide in none.
  it("ends in lye for amphoteric hydroxides, the earlier the more of it should stand", () => {
    const taken = (equation: string, product: string) =>
      [0.9, 0.5].map((least) => roomOf(ask(equation, product), least)!.redissolvesFrom);
    const [early, late] = taken("AlCl3 + NaOH -> Al(OH)3 + NaCl", "Al(OH)3");
    expect(early).toBeGreaterThan(9.5);
    expect(late).toBeGreaterThan(early!);
    expect(late).toBeLessThan(11.5);
    const [zinc, half] = taken("ZnSO4 + NaOH -> Zn(OH)2 + Na2SO4", "Zn(OH)2");
    expect(zinc).toBeGreaterThan(12.5);
    expect(half).toBeGreaterThan(zinc!);
    expect(half).toBeLessThan(14);
    expect(taken("MgSO4 + NaOH -> Mg(OH)2 + Na2SO4", "Mg(OH)2")).toEqual([undefined, undefined]);
  });

  // A litre of water keeps 2 to 2.6 g of gypsum, some 15 mmol: of thin solutions a large part.
  it("is none where no solid stands, or less than is asked", () => {
    expect(roomOf(ask("NaOH + HCl -> NaCl + H2O", "NaCl"), 0.5)).toBeUndefined();
    const gypsum = ask("CaCl2 + Na2SO4 -> CaSO4 + NaCl", "CaSO4·2H2O");
    expect(roomOf(gypsum, 0.999)).toBeUndefined();
    expect(roomOf(gypsum, 0.5)!.logarithm).toBeLessThan(2);
  });
});

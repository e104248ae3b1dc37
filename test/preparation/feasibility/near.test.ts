// A beaker that begins from a neighbour's answer comes to the same rest as one that begins from nothing: the equilibrium is that
// of a convex function, and has one answer.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../../src/formula";
import { type Beaker, type Keeping, settle } from "../../../src/preparation/feasibility/beaker";

const POURS: readonly (readonly [string, number])[][] = [
  [
    ["ZnSO4", 1],
    ["Na2CO3", 1.05],
  ],
  [
    ["CaCl2", 1],
    ["NaHCO3", 2],
  ],
  [
    ["CuSO4", 0.5],
    ["NH3", 3],
  ],
  [
    ["MgSO4", 1],
    ["NH4Cl", 1],
    ["NH3", 3],
  ],
  [
    ["AlCl3", 0.3],
    ["NaOH", 1.1],
  ],
  [
    ["FeCl3", 0.3],
    ["Na2CO3", 0.45],
  ],
];

const rest = (pours: readonly (readonly [string, number])[], how: Keeping): Beaker => {
  const found = settle(
    pours.map(([formula, moles]) => ({ formula: parseFormula(formula), moles })),
    2,
    25,
    how,
  );
  if (found === undefined) throw new Error("no rest");
  return found;
};

const told = ({ pH, ionicStrength, solids }: Beaker): unknown => ({
  pH: pH.toFixed(8),
  ionicStrength: ionicStrength.toPrecision(9),
  solids: solids.filter(({ moles }) => moles > 1e-12).map(({ phase, moles }) => [phase.formula, moles.toPrecision(9)]),
});

describe("a beaker beside another", () => {
  it.each(POURS.map((pours) => [pours.map(([formula]) => formula).join(" + "), pours] as const))(
    "%s: begun near comes to the same rest as begun from nothing",
    (_, pours) => {
      const kept = rest(pours, { carbonDioxide: "kept", solids: "fresh" });
      const more = pours.map(([formula, moles], i) => [formula, i === 0 ? moles : moles * 1.3] as const);
      for (const how of [
        { carbonDioxide: "leaves", solids: "fresh" },
        { carbonDioxide: "kept", solids: "aged" },
        { carbonDioxide: "kept", solids: "fresh", lower: { by: 1, which: () => true } },
        { carbonDioxide: "kept", solids: "fresh", lower: { by: -3, which: () => true } },
      ] as const) {
        expect(told(rest(pours, { ...how, near: kept }))).toEqual(told(rest(pours, how)));
        expect(told(rest(more, { ...how, near: kept }))).toEqual(told(rest(more, how)));
      }
    },
  );

  it("is not moved by a constant that is off by less than its solid is from standing", () => {
    const pours = POURS[0]!;
    const plain = rest(pours, { carbonDioxide: "leaves", solids: "fresh" });
    const carbonate = plain.conditions.find(({ formula }) => formula === "ZnCO3·H2O")!.phase!;
    const short = -plain.saturation(carbonate) / Math.LN10;
    expect(short).toBeGreaterThan(0);
    for (const by of [-0.9 * short, 0.9 * short]) {
      const lower = { by, which: ({ formula }: { readonly formula: string }) => formula === "ZnCO3·H2O" };
      expect(told(rest(pours, { carbonDioxide: "leaves", solids: "fresh", lower }))).toEqual(told(plain));
    }
    const lower = { by: 1.5 * short, which: ({ formula }: { readonly formula: string }) => formula === "ZnCO3·H2O" };
    const moved = rest(pours, { carbonDioxide: "leaves", solids: "fresh", lower });
    expect(moved.solids.some(({ phase, moles }) => phase === carbonate && moles > 1e-6)).toBe(true);
  });
});

// Conservation over the whole solubility table: what goes in comes out, no crop is more than what was dissolved, and a
// solution whose crystals would bind all its water is refused, not calculated. Law: conservation of mass.

import { describe, expect, it } from "vitest";
import { molarMass } from "../../src/formula";
import { attempt } from "../../src/foundation/error";
import { crystalWater } from "../../src/hydrate";
import type { Quantity } from "../../src/quantity";
import { type Crystallisation, crystallise } from "../../src/solubility/crystallising/crystallise";
import { fractionalCrystallization } from "../../src/solubility/crystallising/salt-pair";
import { SOLUBILITY } from "../../src/solubility/data/curves";
import { waterToDissolve } from "../../src/solubility/dissolving/dissolve";
import { washPlan } from "../../src/solubility/washing/wash";

const g = (q: Quantity) => q.in("g").toNumber();
const at = (celsius: number) => ({ value: celsius, unit: "°C" as const });
/** Grams out of 100 g that the check itself, on plain doubles, may lose. */
const TINY = 1e-9;
const molar = (formula: string) => molarMass(formula).value.toNumber();

/** Water per gram of a form, calculated apart from the library's own balance. */
const waters = new Map<string, number>();
function waterIn(formula: string): number {
  const known = waters.get(formula);
  if (known !== undefined) return known;
  const { waters: n, units } = crystalWater(formula);
  const share = (n.mul(units).valueOf() * molar("H2O")) / molar(formula);
  waters.set(formula, share);
  return share;
}

const celsiusOf = (row: ReturnType<typeof SOLUBILITY>[number]) => row.points.map(([celsius]) => celsius);
const formsOf = (row: ReturnType<typeof SOLUBILITY>[number]) => [
  ...new Set([row.formula, ...row.solids.flatMap(({ solid }) => (solid === undefined ? [] : [solid]))]),
];

/** What does not balance in a crystallisation of 100 g of a form. */
function faults(form: string, run: Crystallisation): string[] {
  const found: string[] = [];
  const own = waterIn(run.crop.formula);
  const [dryIn, dryOut] = [100 * (1 - waterIn(form)), (g(run.crop.mass) + g(run.leftInLiquor)) * (1 - own)];
  if (Math.abs(dryIn - dryOut) > TINY) found.push(`salt ${dryIn} in, ${dryOut} out`);
  const waterOut = g(run.liquorWater) + g(run.crop.mass) * own;
  if (Math.abs(g(run.totalWater) - waterOut) > TINY * g(run.totalWater)) found.push("water");
  if (Math.abs(g(run.totalWater) - g(run.water) - 100 * waterIn(form)) > TINY * g(run.totalWater)) found.push("added");
  const share = run.crop.share.in("%").toNumber();
  if (!(share > 0 && share < 100)) found.push(`crop ${share} %`);
  if (!(g(run.liquorWater) > 0 && g(run.leftInLiquor) > 0)) found.push("no liquor");
  const again = run.secondCrop;
  if (again === undefined) {
    if (!run.warnings.some((warning) => warning.startsWith("no second crop"))) found.push("second crop lost unsaid");
    return found;
  }
  if (!(g(again.mass) > 0 && g(again.leftInLiquor) > 0)) found.push("second crop");
  if (Math.abs(g(again.mass) + g(again.leftInLiquor) - g(run.leftInLiquor)) > TINY) found.push("salt, second crop");
  const waterLeft = g(run.liquorWater) - g(again.waterToEvaporate) - g(again.mass) * own;
  // the liquor after the second crop is as strong as after the first
  const strength = g(run.leftInLiquor) / g(run.liquorWater);
  if (!(Math.abs(g(again.leftInLiquor) / waterLeft / strength - 1) < 1e-6)) found.push("water, second crop");
  return found;
}

describe("mass in and mass out", () => {
  it("balance in every crystallisation between two figures of the table, second crop included", () => {
    const wrong: string[] = [];
    const outcomes: Record<string, number> = {};
    for (const row of SOLUBILITY()) {
      const hottest = Math.max(...celsiusOf(row));
      for (const form of formsOf(row)) {
        for (const hot of form === row.formula ? celsiusOf(row) : [hottest]) {
          for (const cold of celsiusOf(row).filter((celsius) => celsius < hot)) {
            const request = { formula: form, mass: "100 g", hot: at(hot), cold: at(cold), evaporateTo: "0.6" } as const;
            const outcome = attempt(() => crystallise(request));
            const what = outcome.ok ? "crop" : outcome.error.code;
            outcomes[what] = (outcomes[what] ?? 0) + 1;
            const found = outcome.ok ? faults(form, outcome.value) : [];
            if (found.length > 0) wrong.push(`${form} ${hot} to ${cold} °C: ${found.join(", ")}`);
          }
        }
      }
    }
    expect(wrong).toEqual([]);
    expect(Object.keys(outcomes).sort()).toEqual(["crop", "solubility.no-crop", "solubility.no-liquor"]);
    expect(outcomes["crop"]).toBeGreaterThan(10_000);
  });

  it("balance in the water that dissolves a salt, at every figure and for every form", () => {
    const wrong: string[] = [];
    for (const row of SOLUBILITY()) {
      for (const form of formsOf(row)) {
        for (const celsius of celsiusOf(row)) {
          const need = waterToDissolve({ formula: form, mass: "100 g", temperature: at(celsius) });
          const [water, total, own] = [g(need.water), g(need.totalWater), 100 * waterIn(form)];
          const just = need.meltsInOwnWater
            ? water === 0 && total <= own
            : Math.abs(water + own - total) < TINY * total;
          const strength = (100 * g(need.anhydrousMass)) / total / g(need.perHundredGramsWater);
          if (!(water >= 0 && just && Math.abs(strength - 1) < TINY)) wrong.push(`${form} at ${celsius} °C`);
        }
      }
    }
    expect(wrong).toEqual([]);
  });

  it("hold the copper nitrate that once promised 148 %", () => {
    // crystal water by formula: the hexahydrate holds 187.56 g anhydrous to 6 × 18.015 g water, 173.5 g to 100 g; the
    // table has 208 g per 100 g water at 80 °C
    const request = { formula: "Cu(NO3)2·3H2O", mass: "100 g", hot: "80 °C", cold: "20 °C" } as const;
    const refused = attempt(() => crystallise(request));
    expect(refused.ok ? undefined : refused.error.code).toBe("solubility.no-liquor");
    // 77.63 g anhydrous bind 44.74 g of water as hexahydrate; 22.37 g come with the trihydrate
    const enough = crystallise({ ...request, water: "25 g" });
    expect(enough.crop.share.in("%").toNumber()).toBeLessThan(100);
    expect(enough.liquorWater.isPositive()).toBe(true);
    const short = attempt(() => crystallise({ ...request, water: "22.3 g" }));
    expect(short.ok ? undefined : short.error.code).toBe("solubility.no-liquor");
  });

  it("leave out of the crop what too little water did not dissolve hot", () => {
    // KNO3: 170 g per 100 g water at 80 °C, 21.4 g at 10 °C (crcSolubility98, as in the table): 20 g take 34 g, keep 4.28 g
    const run = crystallise({ formula: "KNO3", mass: "100 g", hot: "80 °C", cold: "10 °C", water: "20 g" });
    expect(g(run.undissolvedHot!.mass)).toBeCloseTo(66, 9);
    expect(g(run.crop.mass)).toBeCloseTo(29.72, 9);
    expect(g(run.undissolvedHot!.mass) + g(run.crop.mass) + g(run.leftInLiquor)).toBeCloseTo(100, 9);
    expect(run.warnings.join()).toContain("not all dissolves hot");
  });

  it("balance when a salt pair parts, whatever hydrate precipitates", () => {
    // cation and anion of each: every swap A X + B Y to A Y + B X of the table's salts among these ions
    const cations = { Na: "Na", K: "K", NH4: "NH4" };
    const salt = (cation: string, anion: string) =>
      anion === "SO4" ? (cation === "NH4" ? "(NH4)2SO4" : `${cation}2SO4`) : `${cation}${anion}`;
    const wrong: string[] = [];
    let parted = 0;
    for (const a of Object.keys(cations)) {
      for (const b of Object.keys(cations).filter((cation) => cation !== a)) {
        for (const [x, y] of ["Cl", "NO3", "SO4", "Br"].flatMap((x) => ["Cl", "NO3", "SO4", "Br"].map((y) => [x, y]))) {
          if (x === y) continue;
          for (const [water, hot, cold] of [
            [30, 100, 0],
            [60, 80, 20],
            [150, 80, 0],
            [400, 60, 10],
          ] as const) {
            const [wanted, other] = [salt(a, y!), salt(b, x!)];
            const from = [salt(a, x!), salt(b, y!)].map((formula) => ({ formula, mass: "100 g" as const }));
            const name = `${wanted}/${other} in ${water} g, ${hot} to ${cold} °C`;
            const outcome = attempt(() =>
              fractionalCrystallization({
                wanted,
                other,
                from,
                water: { value: water, unit: "g" },
                hot: at(hot),
                cold: at(cold),
              }),
            );
            if (!outcome.ok) {
              if (
                ![
                  "solubility.no-crop",
                  "solubility.outside-range",
                  "solubility.no-liquor",
                  "solubility.other-solid",
                ].includes(outcome.error.code)
              )
                wrong.push(`${name}: ${outcome.error.code}`);
              continue;
            }
            parted += 1;
            const plan = outcome.value;
            const kept = [plan.filteredHot, plan.wantedFilteredHot, plan.contamination, plan.crop].map(g);
            if (!kept.every((mass) => mass >= 0)) wrong.push(`${name}: below nothing`);
            if (kept[1]! + kept[3]! > g(plan.wantedMass)) wrong.push(`${name}: more than there is`);
            if (g(plan.wantedMass) + kept[0]! + kept[2]! > 200) wrong.push(`${name}: more than was put in`);
            for (const percent of [plan.purity, plan.yield].map((q) => q.in("%").toNumber()))
              if (!(percent > 0 && percent <= 100)) wrong.push(`${name}: ${percent} %`);
          }
        }
      }
    }
    expect(wrong).toEqual([]);
    // each pair is asked for in both directions, of which one at most parts, and the sulfates form double salts
    expect(parted).toBeGreaterThan(40);
  });

  it("calculate the water that mirabilite takes from a salt pair", () => {
    // 100 g each of NaCl and (NH4)2SO4 in 200 g water, 90 to 0 °C. Na2SO4: 4.5 g per 100 g water at 0 °C in the table, so
    // that nearly all of what is dissolved precipitates with 180.15 / 142.04 = 1.268 times its mass of water.
    const request = {
      wanted: "NH4Cl",
      other: "Na2SO4",
      water: "200 g",
      hot: "90 °C",
      cold: "0 °C",
      from: [
        { formula: "NaCl", mass: "100 g" },
        { formula: "(NH4)2SO4", mass: "100 g" },
      ],
    } as const;
    const outcome = attempt(() => fractionalCrystallization(request));
    if (!outcome.ok) throw outcome.error;
    const plan = outcome.value;
    const left = 200 - g(plan.contamination) * ((10 * molar("H2O")) / molar("Na2SO4"));
    const dissolved = g(plan.wantedMass) - g(plan.wantedFilteredHot);
    expect(g(plan.crop)).toBeCloseTo(dissolved - 0.2974 * left, 6); // NH4Cl 29.74 g at 0 °C (crcSolubility98)
    expect(plan.warnings.join()).toContain("precipitates as Na2SO4·10H2O");
    const both = attempt(() => fractionalCrystallization({ ...request, wanted: "NaCl" }));
    expect(both.ok ? undefined : both.error.code).toBe("solubility.other-solute");
  });

  it("lose no more product to washing than the cake holds", () => {
    let tested = 0;
    for (const { formula, points } of SOLUBILITY()) {
      const plan = washPlan({
        ...{ dryCakeMass: "10 g", retainedLiquorPerGram: "1 mL/g", saltConcentration: "100 g/L", washVolume: "50 mL" },
        ...{ targetResidue: "0.5 %", product: { formula, temperature: at(points[0]![0]) } },
      });
      expect(g(plan.productLost!), formula).toBeGreaterThan(0);
      expect(g(plan.productLost!), formula).toBeLessThanOrEqual(10);
      if (g(plan.productLost!) === 10) expect(plan.warnings.join(), formula).toContain("the whole cake");
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(360);
  });
});

// Laws of plans and runs over everything in the drawer: mass in is mass out, scaling by k, order of observations, a run as
// planned. Bounds: portions of 5 to 500 g, so that rounding to the balance stays below a hundredth.
import fc from "fast-check";
import {
  evaluateRun,
  molarMass,
  type Observations,
  type Plan,
  type PlanRequest,
  planFromJSON,
  planPreparation,
  type Quantity,
} from "preparative";
import { describe, expect, it } from "vitest";

type Frame = Omit<PlanRequest, "scale"> & { readonly first: string };

const FRAMES: readonly Frame[] = [
  {
    equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
    product: "Zn5(CO3)2(OH)6",
    materials: [
      { name: "zinc", form: "ZnSO4·7H2O", assay: "98 %" },
      { name: "soda", form: "Na2CO3·10H2O", excess: "5 %" },
    ],
    first: "zinc",
  },
  {
    equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
    product: "CaCO3",
    materials: [
      { name: "calcium", form: "CaCl2·6H2O" },
      { name: "soda", form: "Na2CO3", excess: "10 %" },
    ],
    first: "calcium",
  },
  {
    equation: "ZnCO3 + H2SO4 + H2O -> ZnSO4·7H2O + CO2",
    product: "ZnSO4·7H2O",
    materials: [
      { name: "carbonate", form: "ZnCO3", excess: "12 %" },
      { name: "acid", form: "H2SO4", strength: "10 % w/w", density: "1.066 g/mL" },
    ],
    first: "carbonate",
  },
  {
    equation: "FeSO4·7H2O + (NH4)2SO4 -> (NH4)2Fe(SO4)2·6H2O + H2O",
    product: "(NH4)2Fe(SO4)2·6H2O",
    materials: [
      { name: "iron", form: "FeSO4·7H2O" },
      { name: "ammonium", form: "(NH4)2SO4", excess: "4 %" },
    ],
    first: "iron",
  },
  {
    equation: "KAl(SO4)2·12H2O -> KAl(SO4)2 + H2O",
    product: "KAl(SO4)2",
    materials: [{ name: "alum", form: "KAl(SO4)2·12H2O" }],
    first: "alum",
  },
];

const grams = (n: number): `${number} g` => `${n} g`;
const planOf = ({ first, ...frame }: Frame, mass: number, step = 0.01): Plan =>
  planPreparation({
    ...frame,
    readability: { mass: grams(step), volume: "0.01 mL" },
    scale: { material: first, portion: grams(mass) },
  });
const number = (q: Quantity, unit: string): number => q.in(unit).toNumber();
const frames = fc.constantFrom(...FRAMES);
const masses = fc.integer({ min: 500, max: 50_000 }).map((n) => n / 100);

describe("a plan", () => {
  it("has as much mass in its products and leftovers as in what is put in", () => {
    fc.assert(
      fc.property(frames, masses, (frame, mass) => {
        const plan = planOf(frame, mass);
        const { supplied, formed, taken } = plan.materialBalance;
        // The substance itself, as written in the equation: crystal water of the shop form and impurities apart.
        const M = (species: string): Quantity => molarMass(species.normalize("NFKC"));
        const used = supplied.map((s) => number(s.amount.minus(s.left).times(M(s.species)), "g"));
        const fromOutside = taken.map((t) => number(t.mass, "g"));
        const made = formed.map((f) => number(f.mass, "g"));
        const sum = (xs: number[]): number => xs.reduce((a, b) => a + b, 0);
        expect(sum(made)).toBeCloseTo(sum(used) + sum(fromOutside), 8);
      }),
      { numRuns: 60 },
    );
  });

  it("scales every mass by k", () => {
    fc.assert(
      fc.property(frames, masses, fc.integer({ min: 2, max: 9 }), (frame, mass, k) => {
        const [one, many] = [planOf(frame, mass), planOf(frame, Number((mass * k).toFixed(2)))];
        one.weighings.forEach((w, i) => {
          expect(many.weighings[i]!.exact.minus(w.exact.times(BigInt(k))).isZero()).toBe(true);
        });
        const ratio = number(many.product.theoreticalYield.dividedBy(one.product.theoreticalYield), "");
        expect(Math.abs(ratio / k - 1)).toBeLessThan(0.01);
      }),
      { numRuns: 60 },
    );
  });

  it("comes back from JSON with the same figures", () => {
    fc.assert(
      fc.property(frames, masses, (frame, mass) => {
        const plan = planOf(frame, mass);
        const back = planFromJSON(JSON.parse(JSON.stringify(plan)));
        expect(back.product.theoreticalYield.equals(plan.product.theoreticalYield)).toBe(true);
        expect(back.weighings.map((w) => String(w.portion))).toEqual(plan.weighings.map((w) => String(w.portion)));
      }),
      { numRuns: 20 },
    );
  });
});

describe("a run", () => {
  it("with exactly the planned weighings equals the plan", () => {
    fc.assert(
      fc.property(frames, masses, (frame, mass) => {
        const plan = planOf(frame, mass);
        const weighed = Object.fromEntries(plan.weighings.map((w) => [w.material, w.portion]));
        const run = evaluateRun(plan, { weighed });
        expect(run.changes).toEqual([]);
        expect(run.product.theoreticalYield.equals(plan.product.theoreticalYield)).toBe(true);
        expect(run.materialBalance.limiting).toBe(plan.materialBalance.limiting);
        expect(run.unknown).toEqual(plan.unknown);
        run.materialBalance.supplied.forEach((s, i) => {
          expect(s.left.equals(plan.materialBalance.supplied[i]!.left)).toBe(true);
        });
      }),
      { numRuns: 40 },
    );
  });

  it("does not mind the order of its observations", () => {
    const plan = planOf(FRAMES[0]!, 250, 0.1);
    const all: Observations = {
      weighed: { zinc: "248.6 g", soda: "260.0 g" },
      wetCake: "300 g",
      washes: 2,
      filtrateVolume: "4.5 L",
      temperature: "22 °C",
      assays: { zinc: "97 %" },
      dried: ["101.0 g", "95.0 g", "93.0 g"],
      ignition: { before: "1.000 g", after: "0.740 g" },
      lost: [{ at: "add", volume: "20 mL" }],
      tests: { filtrate: "clear", lastWash: "cloudy" },
      pH: 8.7,
      assay: "97 %",
      note: "any order",
    };
    const keys = Object.keys(all) as (keyof Observations)[];
    const told = (order: readonly (keyof Observations)[]): string => {
      const run = evaluateRun(plan, Object.fromEntries(order.map((k) => [k, all[k]])));
      return JSON.stringify([run.verdict.map((f) => f.text), String(run.percentYield), run.changes.map((c) => c.what)]);
    };
    const expected = told(keys);
    fc.assert(
      fc.property(fc.shuffledSubarray(keys, { minLength: keys.length }), (order) => {
        expect(told(order)).toBe(expected);
      }),
      { numRuns: 15 },
    );
  });

  it("loses no more than there was, and the same share from a batch k times as large", () => {
    const litres = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(frames, litres, fc.constantFrom(undefined, "liquor" as const), fc.nat(), (frame, size, of, pick) => {
        const small = planOf(frame, 20);
        const steps = small.steps.map(({ operation }) => operation);
        const at = steps[pick % steps.length]!;
        const lost = (k: number) => [{ at, of, volume: `${k * size} mL` } as const];
        const one = evaluateRun(small, { lost: lost(1) });
        const ten = evaluateRun(planOf(frame, 200), { lost: lost(10) });
        const theory = number(one.product.theoreticalYield, "g");
        const gone = number(one.losses[0]!.product, "g");
        expect(gone).toBeGreaterThanOrEqual(0);
        expect(gone).toBeLessThanOrEqual(theory);
        // what the steps bring when nothing is lost, theory or crops, less by the share that is gone
        const whole = number(evaluateRun(small, {}).expected, "g");
        expect(whole).toBeLessThanOrEqual(theory + 1e-9);
        expect(number(one.expected, "g")).toBeCloseTo(whole * (1 - gone / theory), 6);
        const share = number(ten.losses[0]!.product, "g") / number(ten.product.theoreticalYield, "g");
        expect(Math.abs(share - gone / theory)).toBeLessThan(0.01);
      }),
      { numRuns: 60 },
    );
  });

  it("takes any subset of observations", () => {
    const plan = planOf(FRAMES[0]!, 250, 0.1);
    const all: Observations = {
      weighed: { zinc: "248.6 g" },
      wetCake: "300 g",
      washes: 2,
      filtrateVolume: "4.5 L",
      temperature: "22 °C",
      assays: { zinc: "97 %" },
      dried: "93.0 g",
      ignition: { before: "1.000 g", after: "0.740 g" },
      measured: { soda: "800 mL" },
      lost: [{ mass: "2 g" }],
      tests: { filtrate: "positive" },
      pH: "6.5",
      assay: "99 %",
    };
    const keys = Object.keys(all) as (keyof Observations)[];
    fc.assert(
      fc.property(fc.subarray(keys), (some) => {
        const run = evaluateRun(plan, Object.fromEntries(some.map((k) => [k, all[k]])));
        expect(run.verdict.length).toBeGreaterThan(0);
        expect(run.verdict[0]!.code === "not-weighed").toBe(!some.includes("dried"));
        expect(run.identity !== undefined).toBe(some.includes("ignition"));
        const weights = run.verdict.map((f) => f.weight);
        expect(weights).toEqual([...weights].sort((a, b) => b - a));
      }),
      { numRuns: 40 },
    );
  });
});

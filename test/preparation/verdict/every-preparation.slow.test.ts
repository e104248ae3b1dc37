// The same good runs and faults in each preparation of the blind runs: what the hand does is the same, whatever is made. The parts of the
// theory are chosen here; the theory itself is held by the hand calculations of the other tests.
import {
  anhydrousOf,
  attempt,
  crystalWater,
  evaluateRun,
  type FindingCode,
  identifyByMassLoss,
  knownHydrates,
  molarMass,
  type Observations,
  type Plan,
  parseFormula,
  planPreparation,
} from "preparative";
import { describe, expect, it } from "vitest";
import { BLIND_RUNS } from "../../data/blind-runs";
import { NATURAL_PREPARATIONS } from "../../data/natural-preparations";

const PLANS: readonly Plan[] = [
  ...new Map(BLIND_RUNS.map(({ request }) => [`${request.equation} ${request.product}`, request])).values(),
].map((request) => planPreparation(request));

// Of a precipitation that goes in part by its equilibrium (manganese oxalate from oxalic acid, 69 %) what its liquor lets go.
const theoryOf = (plan: Plan): number =>
  (plan.isolation.how === "precipitate" ? evaluateRun(plan, {}).expected : plan.product.theoreticalYield).toNumber("g");
const made = (how: string): Plan[] => PLANS.filter((plan) => plan.isolation.how === how);
const [filtered, fired, crystals] = [made("precipitate"), made("residue"), made("crystallise")];

type Mass = "1 g";
/** Grams as a balance of 10 mg shows them. */
const g = (grams: number): Mass => `${grams.toFixed(2)} g` as Mass;
const constant = (grams: number): Mass[] => [g(grams + 0.01), g(grams), g(grams)];
const clean = { washes: 6, tests: { filtrate: "clear", lastWash: "clear" } } as const;
const washed = (plan: Plan): Observations => (plan.isolation.how === "precipitate" ? clean : {});

/** Those whose first finding is none of the codes. */
function others(
  plans: readonly Plan[],
  codes: readonly FindingCode[],
  of: (plan: Plan, theory: number) => Observations | undefined,
): string[] {
  return plans.flatMap((plan) => {
    const observations = of(plan, theoryOf(plan));
    if (observations === undefined) return [];
    const { code } = evaluateRun(plan, observations).verdict[0]!;
    return codes.includes(code) ? [] : [`${plan.product.formula}: ${code}`];
  });
}

const GOOD = ["consistent", "loss-explained"] as const;

/** What the sheet says to weigh: basic copper carbonate stands in place of CuCO3, and the run is judged by it. */
const weighedOf = (plan: Plan): { readonly formula: string; readonly theory: number } => ({
  formula: evaluateRun(plan, { dried: "1 g" }).yields.find((one) => one.wanted)!.formula,
  theory: theoryOf(plan),
});

describe("in every preparation", () => {
  it("there are enough of each kind", () => {
    expect([filtered.length, fired.length, crystals.length].map((n) => n >= 8)).toEqual([true, true, true]);
    expect(PLANS.length).toBeGreaterThan(65);
  });

  it("what filters, vessels and crucibles may keep is no alarm", () => {
    for (const part of [0.98, 0.95, 0.92])
      expect(others(filtered, GOOD, (_, T) => ({ dried: constant(part * T), ...clean }))).toEqual([]);
    for (const part of [0.995, 0.985])
      expect(others(fired, GOOD, (_, T) => ({ dried: constant(part * T) }))).toEqual([]);
    expect(
      others(crystals, GOOD, (plan, T) => {
        const crop = plan.steps.at(-1)!.after.solids.find(({ formula }) => formula === plan.product.formula);
        return { dried: constant(0.97 * (crop?.mass.in("g").toNumber() ?? T)) };
      }),
    ).toEqual([]);
  });

  it("a mass that still falls is that first", () => {
    expect(others(PLANS, ["still-drying"], (_, T) => ({ dried: [g(1.5 * T), g(1.3 * T), g(1.15 * T)] }))).toEqual([]);
  });

  it("a dish that was not taken off is too heavy for all formulas", () => {
    const dish = (plan: Plan, T: number): Observations => ({ dried: constant(2.6 * T + 20), ...washed(plan) });
    expect(others([...filtered, ...fired], ["too-heavy"], dish)).toEqual([]);
  });

  it("a fifth that was spilled by the record is that", () => {
    const spilled = (part: number) => (plan: Plan, T: number) => ({
      dried: constant(0.8 * part * T),
      lost: [{ of: "product" as const, mass: g(0.2 * T) }],
      ...washed(plan),
    });
    expect(others(filtered, ["spilled"], spilled(0.95))).toEqual([]);
    expect(others(fired, ["spilled"], spilled(0.99))).toEqual([]);
  });

  // By the curve the liquor and the rinse keep 55 of 85 g of sodium nitrate; 3.6 g is an eighth of the crop that is left, and 4 % of the theory.
  it("an eighth of a crop that was spilled by the record is that, whatever the liquor keeps", () => {
    const { request } = NATURAL_PREPARATIONS.find(({ id }) => id.startsWith("Chile saltpetre from soda"))!;
    const run = evaluateRun(planPreparation(request), {
      // of 61.7 g by its steps
      dried: "54.0 g",
      lost: [{ of: "product", mass: "7.7 g" }],
    });
    expect(run.verdict[0]!.code).toBe("spilled");
  });

  // Manganese sulfate is sold with four waters too, 76 % of the theory: the numbers cannot decide.
  it("28 % that nobody saw go is unexplained, and no other formula by accident", () => {
    const missing = (plan: Plan, T: number): Observations => ({ dried: constant(0.72 * T), ...washed(plan) });
    const codes = ["lighter-than-losses-explain", "loss-explained"] as const;
    expect(others(fired, codes, missing)).toEqual([]);
    expect(others(filtered, codes, missing)).toEqual(["MnCO₃: hydrate-mix-up"]);
  });

  it("salts of the liquor that a cake was weighed with, dried in it, are found", () => {
    expect(
      others(filtered, ["unwashed"], ({ washing }, T) => {
        if (washing === undefined || !("plan" in washing)) return undefined;
        const { residueUnwashed, retainedVolume } = washing.plan;
        // grams for each gram of water, of which the cake keeps what it weighs beyond product and salt
        const perGram = residueUnwashed.in("g").toNumber() / retainedVolume.in("mL").toNumber();
        const salt = ((3 - 0.97) * T * perGram) / (1 + perGram);
        // what is less than handling is not seen in the mass
        return salt < 0.06 * T ? undefined : { washes: 0, wetCake: g(3 * T), dried: constant(0.97 * T + salt) };
      }),
    ).toEqual([]);
  });

  it("feed that the fire did not reach is that, from a tenth on", () => {
    for (const part of [0.1, 0.3, 0.6])
      expect(
        others(fired, ["unreacted"], ({ weighings: [feed] }, T) => {
          const put = feed!.portion.in("g").toNumber();
          return put < 1.02 * T ? undefined : { dried: g(part * put + (1 - part) * 0.998 * T) };
        }),
      ).toEqual([]);
  });

  // A gram that fire leaves as it is stands for a gram of feed, of which less would be left: dry = put - (put - inert) × what goes.
  it("what a pack contains that fire leaves as it is, where a sample loses no more", () => {
    let tried = 0;
    for (const part of [0.08, 0.2, 0.3])
      expect(
        others(fired, ["impure"], (plan, T) => {
          const [feed, another] = plan.weighings;
          const put = feed!.portion.in("g").toNumber();
          if (another !== undefined || put < 1.3 * T) return undefined;
          tried += 1;
          const ignition = { before: "1.000 g", after: "0.999 g", residue: plan.product.formula } as const;
          return { dried: constant(part * put + (1 - part) * T), ignition };
        }),
      ).toEqual([]);
    expect(tried).toBeGreaterThan(30);
  });

  // Jars of hydrates that shops sell: so many times the feed is in each gram.
  it("a jar for a kiln that contained another hydrate is that, by the mass alone", () => {
    let tried = 0;
    expect(
      others(fired, ["hydrate-mix-up"], (plan, T) => {
        const [material, another] = plan.request.materials;
        if (another !== undefined || material?.form === undefined) return undefined;
        const own = parseFormula(String(material.form));
        const sold = knownHydrates(own).find((one) => one.sold && !one.formula.hasSameComposition(own));
        if (sold === undefined) return undefined;
        tried += 1;
        const times = molarMass(own).dividedBy(molarMass(sold.formula)).toNumber("");
        return { dried: constant(0.99 * times * T) };
      }),
    ).toEqual([]);
    expect(tried).toBeGreaterThanOrEqual(3);
  });

  it("less of every material, as recorded, is a smaller batch and no shortage", () => {
    const smaller = (plan: Plan, T: number): Observations | undefined => {
      const portions = plan.weighings.map(({ material, portion }) => [material, portion] as const);
      if (portions.some(([, portion]) => portion.dimension !== "mass")) return undefined;
      const weighed = portions.map(([name, portion]) => [name, `${0.9 * portion.toNumber("g")} g`]);
      return { weighed: Object.fromEntries(weighed), dried: constant(0.9 * 0.96 * T), ...clean };
    };
    expect(others(filtered, GOOD, smaller)).toEqual([]);
  });

  it("0.4 points more or less of a loss are another sample, and no second solid", () => {
    let tried = 0;
    expect(filtered.length, "rows to test").toBeGreaterThan(0);
    for (const plan of filtered) {
      const { formula, theory: T } = weighedOf(plan);
      const own = attempt(() => identifyByMassLoss({ before: "10 g", after: "9 g", candidates: [formula] }));
      if (!own.ok || own.value.candidates[0]!.expectedLoss.toNumber("") < 0.01) continue;
      const [{ expectedLoss, residue }] = own.value.candidates as [(typeof own.value.candidates)[number]];
      for (const off of [-0.004, 0.004]) {
        const after = `${(1 - expectedLoss.toNumber("") + off).toFixed(4)} g` as Mass;
        const { verdict } = evaluateRun(plan, {
          dried: constant(0.96 * T),
          ignition: { before: "1.0000 g", after, residue },
          ...clean,
        });
        expect([formula, GOOD.some((code) => code === verdict[0]!.code)]).toEqual([formula, true]);
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(40);
  });

  it("ignition says which formula it is, whatever the mass allows; half of one and half of another are a mixture", () => {
    let tried = 0;
    expect(filtered.length, "rows to test").toBeGreaterThan(0);
    for (const plan of filtered) {
      const { formula, theory: T } = weighedOf(plan);
      const dried = crystalWater(formula).waters.n === 0n ? [] : [String(anhydrousOf(formula))];
      const names = [...plan.candidates.map((one) => one.formula).filter((one) => one !== formula), ...dried];
      for (const other of names) {
        const { candidates } = identifyByMassLoss({ before: "10 g", after: "9 g", candidates: [formula, other] });
        const own = candidates.find((one) => one.formula === formula)!;
        const its = candidates.find((one) => parseFormula(one.formula).hasSameComposition(parseFormula(other)))!;
        const [mine, theirs] = [own, its].map(({ expectedLoss }) => expectedLoss.toNumber("")) as [number, number];
        if (own.residue !== its.residue || Math.abs(mine - theirs) < 0.03) continue;
        const ignited = (loss: number) =>
          ({ before: "1.000 g", after: `${(1 - loss).toFixed(3)} g` as Mass, residue: own.residue }) as const;
        const whole = (T * (1 - mine)) / (1 - theirs);
        const half = 2 / (1 / T + 1 / whole);
        const cases = [
          [GOOD, T, mine],
          [["other-formula-fits", "other-hydrate-fits"], whole, theirs],
          [["mixture-fits", "other-formula-fits", "other-hydrate-fits"], half, (mine + theirs) / 2],
        ] as const;
        for (const [codes, theory, loss] of cases)
          expect(
            others([plan], codes, () => ({ dried: constant(0.95 * theory), ignition: ignited(loss), ...clean })),
            `${other} for ${formula}`,
          ).toEqual([]);
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(40);
  });
});

describe("a run with too little base", () => {
  // 4.0 g of lye for 24.1 g of AlCl3·6H2O, 0.100 to 0.0998 mol: basic chlorides stay dissolved, and the run said "the sum of an empty list has no unit"
  it("is calculated although no solid stands in its liquor", () => {
    const plan = planPreparation({
      equation: "AlCl3 + NaOH -> Al(OH)3 + NaCl",
      product: "Al(OH)3",
      materials: [
        { name: "aluminium chloride", form: "AlCl3·6H2O" },
        { name: "caustic soda", form: "NaOH" },
      ],
      scale: { material: "aluminium chloride", portion: "24.1 g" },
    });
    const run = evaluateRun(plan, { weighed: { "caustic soda": "4.0 g" }, dried: "2.5 g" });
    expect(run.verdict[0]!.code).toBe("reagent-short");
    expect(run.steps.some(({ text }) => text.includes("all of it stays dissolved"))).toBe(true);
  });
});

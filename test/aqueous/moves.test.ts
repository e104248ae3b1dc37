// Every figure of an answer moves with what was put in as its budget says: the sensitivity of each line against the difference
// of two whole answers, the input a little more and a little less (JCGM 100:2008, 5.1.3: c = df/dx).
import {
  type AqueousComposition,
  aqueousComposition,
  bufferCapacity,
  dissolvedOverExcess,
  doseToPH,
  type Quantity,
  quantity,
  redissolving,
  titrationCurve,
  uncertaintyBudget,
} from "preparative";
import { describe, expect, it } from "vitest";

type Figures = Readonly<Record<string, Quantity>>;
type Inputs = Readonly<Record<string, readonly [value: number, unit: string]>>;
type Given<I extends Inputs> = { readonly [K in keyof I]: never };

/** Relative step of an input, and how far its two ways may stand apart, as a share of the movement. */
const STEP = 1e-4;
const NEAR = 0.01;
/** The same as a share of the figure: the water that reactions make and take is no input. */
const WATER = 0.012;

/** What of the budgets does not agree with the differences; `counted` tells how many pairs of figure and input were compared. */
function disagreements<I extends Inputs>(inputs: I, answer: (given: Given<I>) => Figures) {
  const given = (moved?: string, by = 0): Given<I> =>
    Object.fromEntries(
      Object.entries(inputs).map(([label, [value, unit]]) => {
        const here = value * (label === moved ? 1 + by : 1);
        return [
          label,
          quantity({ value: here.toPrecision(15), unit, standardUncertainty: (value / 100).toPrecision(3) }, { label }),
        ];
      }),
    ) as Given<I>;
  const figures = answer(given());
  const off: string[] = [];
  let counted = 0;
  for (const [label, [value, unit]] of Object.entries(inputs)) {
    const [up, down] = [answer(given(label, STEP)), answer(given(label, -STEP))];
    for (const [name, figure] of Object.entries(figures)) {
      const lines = uncertaintyBudget(figure).filter(
        ({ quantity: q }) => q.unit === unit && q.toNumber() === value && q.source === undefined,
      );
      const stated = lines.reduce((sum, line) => sum + line.sensitivity.toNumber(), 0) * value;
      const at = (one: Figures): number => one[name]!.toNumber(figure.unit);
      const found = (at(up) - at(down)) / (2 * STEP);
      counted += 1;
      if (!(Math.abs(stated - found) <= NEAR * Math.abs(found) + WATER * Math.abs(figure.toNumber())))
        off.push(`${name} with ${label}: ${stated} against ${found}`);
    }
  }
  return { off, counted };
}

/** All figures of a composition; of species those that are no traces. */
function figuresOf(c: AqueousComposition): Figures {
  const list: [string, Quantity][] = [
    ["pH", c.pH],
    ["I", c.ionicStrength],
  ];
  for (const { formula, molality, amount } of c.species.slice(0, 12))
    list.push([`b(${formula})`, molality], [`n(${formula})`, amount]);
  for (const { formula, amount, mass } of c.solids) list.push([`n(${formula}, s)`, amount], [`m(${formula})`, mass]);
  for (const { formula, amount } of c.gas) list.push([`n(${formula}, g)`, amount]);
  for (const [formula, amount] of Object.entries(c.dose)) list.push([`dose ${formula}`, amount]);
  for (const { formula, concentration, amount, share } of c.filtrate) {
    list.push([`c(${formula})`, concentration], [`filtrate ${formula}`, amount]);
    if (share !== undefined) list.push([`share ${formula}`, share]);
  }
  for (const [i, { formula, index }] of c.saturation.slice(0, 12).entries())
    if (index !== undefined) list.push([`index ${i} ${formula}`, index]);
  return Object.fromEntries(list);
}

describe("the figures of a composition move as their budgets say", () => {
  it("zinc sulfate and soda: two solids stand", () => {
    const { off, counted } = disagreements(
      { salt: [0.1, "mol"], soda: [15, "g"], water: [800, "g"] } as const,
      (given) =>
        figuresOf(
          aqueousComposition({
            water: given.water,
            dissolved: [
              { formula: "ZnSO4", amount: given.salt },
              { formula: "Na2CO3", mass: given.soda },
            ],
          }),
        ),
    );
    expect(off).toEqual([]);
    expect(counted).toBeGreaterThan(100);
  });

  it("soda in vinegar: gas leaves, at 40 °C", () => {
    const { off, counted } = disagreements(
      { acid: [0.5, "mol"], soda: [0.2, "mol"], water: [1, "kg"] } as const,
      (given) =>
        figuresOf(
          aqueousComposition({
            water: given.water,
            dissolved: [
              { formula: "CH3COOH", amount: given.acid },
              { formula: "Na2CO3", amount: given.soda },
            ],
            carbonDioxide: "leaves",
            temperature: "40 °C",
          }),
        ),
    );
    expect(off).toEqual([]);
    expect(counted).toBeGreaterThan(60);
  });

  it.each([
    ["base is given", 10.5],
    ["acid is given", 3.5],
  ])("copper and ammonia at a held pH: %s", (_, pH) => {
    const { off, counted } = disagreements(
      { salt: [0.02, "mol"], ammonia: [0.3, "mol"], pH: [pH, ""] } as const,
      (given) => {
        const c = aqueousComposition({
          water: "1 kg",
          dissolved: [
            { formula: "CuSO4", amount: given.salt },
            { formula: "NH3", amount: given.ammonia },
          ],
          pH: given.pH,
        });
        expect(Object.keys(c.dose)).toEqual([pH > 9 ? "OH-" : "H+"]);
        return figuresOf(c);
      },
    );
    expect(off).toEqual([]);
    expect(counted).toBeGreaterThan(60);
  });

  it("constants of one's own: an acid of two steps, a chloride with a complex, a gas at a pressure; ideal", () => {
    const { off, counted } = disagreements(
      {
        first: [6.35, ""],
        second: [10.33, ""],
        product: [9.75, ""],
        complex: [5.04, ""],
        henry: [1.47, ""],
        salt: [0.01, "mol"],
      } as const,
      (given) =>
        figuresOf(
          aqueousComposition({
            water: "1 kg",
            dissolved: [
              { formula: "AgNO3", amount: given.salt },
              { formula: "NaCl", amount: "0.05 mol" },
              { formula: "NaHCO3", amount: "0.1 mol" },
            ],
            carbonDioxide: { pressure: "20 kPa" },
            constants: {
              only: true,
              pKw: 14,
              pKa: { H2CO3: [given.first, given.second] },
              pKsp: { AgCl: given.product },
              logBeta: { "[AgCl2]^-": given.complex },
              pKH: { CO2: given.henry },
            },
            activity: "ideal",
          }),
        ),
    );
    expect(off).toEqual([]);
    expect(counted).toBeGreaterThan(100);
  });
});

describe("what is found by adding moves as its budget says", () => {
  it("a dose to a pH, as amount and as volume", () => {
    const { off } = disagreements({ soda: [0.1, "mol"], acid: [1, "mol/L"], water: [1, "kg"] } as const, (given) => {
      const { amount, volume } = doseToPH({
        solution: { water: given.water, dissolved: [{ formula: "Na2CO3", amount: given.soda }] },
        to: 7,
        with: { formula: "HCl", concentration: given.acid },
      });
      return { amount, volume: volume! };
    });
    expect(off).toEqual([]);
  });

  it("the pH along a titration", () => {
    const { off } = disagreements({ acid: [2.5, "mmol"], base: [0.1, "mol/L"], pKa: [4.76, ""] } as const, (given) => {
      const curve = titrationCurve({
        flask: { water: "25 g", dissolved: [{ formula: "CH3COOH", amount: given.acid }] },
        burette: { formula: "NaOH", concentration: given.base },
        constants: { pKa: { CH3COOH: given.pKa } },
      });
      return { start: curve.at("0 mL"), middle: curve.at("12 mL"), after: curve.at("30 mL") };
    });
    expect(off).toEqual([]);
  });

  it("the least that an excess leaves: at a least the dose itself does not count", () => {
    const { off } = disagreements({ salt: [0.01, "mol"], water: [1, "kg"] } as const, (given) => {
      const { least } = dissolvedOverExcess({
        ion: "Ag+",
        water: given.water,
        dissolved: [{ formula: "AgNO3", amount: given.salt }],
        add: "NaCl",
        amount: "0.2 mol",
        steps: 40,
      });
      return { share: least!.share, concentration: least!.concentration };
    });
    expect(off).toEqual([]);
  });

  it("what dissolves a solid again", () => {
    const { off } = disagreements(
      { solid: [0.01, "mol"], water: [1, "kg"], ammonia: [13, "mol/L"] } as const,
      (given) => {
        const { needed, volume } = redissolving({
          solid: "AgCl",
          amountOfSolid: given.solid,
          with: { formula: "NH3", concentration: given.ammonia },
          water: given.water,
        });
        return { needed, volume: volume! };
      },
    );
    expect(off).toEqual([]);
  });

  it.each(["Davies", "ideal"] as const)("a buffer capacity (%s)", (activity) => {
    const inputs = { acid: [0.05, "mol"], salt: [0.03, "mol"], water: [1, "kg"], pKa: [4.76, ""] } as const;
    const { off } = disagreements(inputs, (given) => ({
      capacity: bufferCapacity(
        aqueousComposition({
          water: given.water,
          dissolved: [
            { formula: "CH3COOH", amount: given.acid },
            { formula: "CH3COONa", amount: given.salt },
          ],
          activity,
          constants: { pKa: { CH3COOH: given.pKa } },
        }),
      ),
    }));
    expect(off).toEqual([]);
  });
});

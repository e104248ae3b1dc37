// Eighty-one preparations on paper: what is printed is a figure of the plan or of a step, no finer than the instrument that
// reads it; each caution stands in its step; each blank is an observation that the run takes.
import {
  attempt,
  benchSheet,
  crystalWater,
  evaluateRun,
  identifyByMassLoss,
  isPreparativeError,
  molarMass,
  type Observations,
  type Plan,
  planPreparation,
  type Quantity,
  quantity,
} from "preparative";
import { describe, expect, it } from "vitest";
import { splitByAcid } from "../../src/preparation/internal";
import { officialText } from "../../src/substance/internal";
import { BENCH_PREPARATIONS, requestOf } from "../data/bench-preparations";

const plans: (readonly [name: string, plan: Plan])[] = BENCH_PREPARATIONS.flatMap((one) => {
  const plan = planPreparation(requestOf(one));
  return [[plan.title, plan] as const];
});

const bench = (plan: Plan): string => benchSheet(plan, { parts: ["bench"], format: "markdown" }).replace(/\\/g, "");

/** Words that carry figures of their own: what the person wrote, the steps, the cautions. */
const ownTexts = (plan: Plan): string[] =>
  [
    plan.title,
    plan.equation.toUnicode(),
    plan.product.name,
    plan.product.formula,
    ...plan.steps.flatMap(({ text, cautions }) => [text, ...cautions.map((one) => one.text.slice(1))]),
    ...plan.stepCautions.flatMap(({ cautions }) => cautions.map((one) => one.text.slice(1))),
    ...plan.weighings.flatMap(({ material, form, note }) => [material, form, note ?? ""]),
    ...plan.request.materials.flatMap(({ assay, strength }) => [String(assay ?? ""), String(strength ?? "")]),
    ...plan.candidates.flatMap(({ formula }) => [formula, ...heated(formula).map(({ condition }) => condition ?? "")]),
    ...plan.byProducts.flatMap(({ formula, why }) => [formula, why]),
    ...plan.waste.notes.map((text) => text.slice(1)),
    ...plan.waste.metals.map(({ pH }) => pH ?? ""),
    ...plan.waste.vessels.flatMap(({ treatment, contents }) => [
      ...treatment.map(({ purpose }) => purpose),
      ...contents.dissolved.map(({ formula }) => formula),
      ...contents.unknown,
    ]),
    ...plan.warnings.map((text) => text.slice(1)),
    ...plan.feasibility.reasons.map(({ text }) => text.slice(1)),
    ...plan.cautions.substances.flatMap((one) => [
      ...one.cautions,
      one.disposal,
      one.material,
      String(one.strength ?? ""),
      one.form ?? "",
      ...one.statements.flatMap(({ code, paraphrase }) => [code ?? "", officialText(code) ?? "", paraphrase]),
    ]),
    ...plan.cautions.incompatibilities.flatMap(({ what, condition, materials }) => [
      what,
      condition ?? "",
      ...materials,
    ]),
    ...(plan.request.acknowledge ?? []),
  ].sort((a, b) => b.length - a.length);

/** What heat does to a formula, as the identity of a heated sample has it. */
const heated = (formula: string) => {
  const found = attempt(() => identifyByMassLoss({ before: "2 g", after: "1 g", candidates: [formula] }));
  return found.ok ? found.value.candidates.slice(0, 1) : [];
};

/** What it leaves. */
const leftByHeat = (formula: string): Quantity[] =>
  heated(formula).map(({ expectedLoss }) => quantity("100 %").minus(expectedLoss));

/** Half of the theory, a sample of a hundred steps of 0.1 g, and the water in 100 g of the crystals and of what they came from. */
function ofDoubleSalt({ product, weighings }: Plan): Quantity[] {
  const water = (formula: string): Quantity =>
    crystalWater(formula).waters.n === 0n
      ? quantity("0 %")
      : molarMass("H2O").times(crystalWater(formula).waters).dividedBy(molarMass(formula)).to("%");
  return [
    product.theoreticalYield.dividedBy(2),
    quantity("10 g"),
    ...[product.formula, ...weighings.map(({ form }) => form)].map(water),
  ];
}

/** The figures of a plan that a sheet has a place for. */
function figuresOf(plan: Plan): Quantity[] {
  const kept = quantity("1").minus(plan.handlingLoss);
  const theory = plan.product.theoreticalYield;
  const last = plan.steps.at(-1)!;
  const weighed = last.target?.dimension === "mass" ? last.target : theory;
  const seconds = plan.steps.flatMap(({ vessel, after }) =>
    vessel === "mother liquor" ? after.solids.map(({ mass }) => mass) : [],
  );
  // of both crops handling takes its share as well
  const again = seconds.flatMap((mass) => [
    mass.plus(weighed),
    mass.plus(weighed).times(kept),
    mass.plus(last.after.mass),
  ]);
  const some = (...list: readonly (Quantity | undefined)[]): Quantity[] => list.filter((one) => one !== undefined);
  return [
    theory,
    theory.times(kept),
    ...some(splitByAcid(plan)?.left),
    // a gel at constant mass, a fifth of it water
    theory.dividedBy("0.8"),
    weighed.dividedBy("0.8"),
    weighed,
    weighed.times(kept),
    ...ofDoubt(plan, weighed, kept),
    last.after.mass,
    ...again,
    ...plan.steps.flatMap(({ ofAnotherBatch }) => ofAnotherBatch ?? []),
    // ions that another salt shares may bring more
    ...plan.steps.flatMap(({ mayBring }) => (mayBring === undefined ? [] : [mayBring, weighed.plus(mayBring)])),
    ...plan.weighings.flatMap(({ portion, excess }) => [portion, excess.to("%")]),
    ...plan.steps.flatMap(({ put, amounts, largerVessel, limit, alcohol, onceMoreBelow, acidDiluted, more }) => [
      ...put.map(({ water }) => water),
      ...amounts,
      ...some(largerVessel, limit, alcohol, onceMoreBelow, acidDiluted?.portion, more?.portion),
    ]),
    ...plan.gas.map(({ volume }) => volume),
    // steam of a firing
    ...plan.steps.flatMap(({ operation, left }) =>
      operation === "fire" ? left.map(({ contents }) => contents.water) : [],
    ),
    ...some(
      plan.vessel?.smallest,
      plan.vessel?.needed,
      plan.vessel?.liquid,
      plan.waste.volume,
      plan.waste.mass,
      plan.drying.upTo,
    ),
    ...some(
      plan.washing !== undefined && "plan" in plan.washing && plan.washing.untilTest !== undefined
        ? plan.waste.volume?.plus(plan.washing.untilTest.water)
        : undefined,
      // a millilitre of wash water weighs a gram
      plan.washing !== undefined && "plan" in plan.washing && plan.washing.untilTest !== undefined
        ? plan.waste.mass?.plus(plan.washing.untilTest.water.times(quantity("1 g/mL")).to("g"))
        : undefined,
    ),
    ...("rise" in plan.heat ? [plan.heat.rise.rise, plan.heat.rise.rise.negated()] : []),
    ...plan.dissolvingHeat.flatMap((one) => ("rise" in one ? [one.rise.rise] : [])),
    ...plan.candidates.map(({ theoreticalYield }) => theoreticalYield),
    // of crystals another hydrate weighs what is in the crop of it, not its theory
    ...plan.candidates.flatMap(({ theoreticalYield }) =>
      last.after.solids.map(({ mass }) => {
        const foreign = plan.steps.flatMap(({ ofAnotherBatch }) => ofAnotherBatch ?? []);
        const own = foreign.reduce<Quantity>((all, one) => all.minus(one), mass);
        return theoreticalYield.times(own.dividedBy(theory)).to("g");
      }),
    ),
    // and of both crops what is in both of them
    ...plan.candidates.flatMap(({ theoreticalYield }) =>
      seconds.map((mass) => theoreticalYield.times(mass.plus(last.after.mass).dividedBy(theory)).to("g")),
    ),
    ...plan.candidates.flatMap(({ formula }) => leftByHeat(formula)),
    ...(plan.isolation.how === "unknown" && plan.procedure.kind === "double salt" ? ofDoubleSalt(plan) : []),
    ...plan.waste.metals.flatMap(({ mass, most }) => [mass, ...some(most)]),
    // what all vessels take together stands ready
    ...plan.waste.reagents.flatMap(({ portion }) => some(portion)),
    ...plan.waste.vessels.flatMap(({ nextBatch }) =>
      nextBatch === undefined ? [] : [nextBatch.water, nextBatch.share, ...nextBatch.excess.map(({ mass }) => mass)],
    ),
    ...plan.waste.vessels.flatMap(({ volume, contents, treatment }) => [
      contents.mass,
      ...some(volume, ...treatment.flatMap(({ mass, most, vinegar }) => [mass, most, vinegar])),
      ...contents.solids.map(({ mass }) => mass),
      ...contents.dissolved.map(({ formula, amount }) => amount.times(molarMass(formula)).to("g")),
      // what is there solid and dissolved stands once, as all of it
      ...contents.dissolved.flatMap(({ formula, amount }) =>
        contents.solids
          .filter((solid) => solid.formula === formula)
          .map(({ mass }) => mass.plus(amount.times(molarMass(formula)))),
      ),
    ]),
    ...plan.byProducts.map(({ mass }) => mass),
    plan.temperature,
  ];
}

/** What is weighed of a precipitate where the constants of its liquor are off by their uncertainty either way. */
function ofDoubt({ completeness }: Plan, weighed: Quantity, kept: Quantity): Quantity[] {
  if (completeness === undefined || !("range" in completeness) || completeness.range === undefined) return [];
  const { dissolved, range } = completeness;
  return [weighed.plus(dissolved).minus(range.most).times(kept), weighed.plus(dissolved).minus(range.least)];
}

const UNIT_OF: Readonly<Record<string, readonly string[]>> = {
  g: ["mass"],
  kg: ["mass"],
  mL: ["volume", "mass"],
  L: ["volume", "mass"],
  "%": ["number", "mass fraction"],
  "°C": ["temperature"],
  K: ["temperature difference"],
};
/** Millilitres of water as grams. */
const WEIGHT: Readonly<Record<string, string>> = { mL: "g", L: "kg" };

/** Is a printed figure this quantity, to the digits that it shows or to a step of 1 mL and 0.1 g? */
function isFigure(text: string, unit: string, q: Quantity): boolean {
  if (!(UNIT_OF[unit] ?? []).includes(q.dimension)) return false;
  const value = q.in(unit === "K" ? "ΔK" : q.dimension === "mass" ? (WEIGHT[unit] ?? unit) : unit).toNumber();
  const printed = Number(text);
  const decimals = /\.(\d+)$/.exec(text)?.[1]?.length ?? 0;
  // three figures, or whole tens and hundreds above them
  const half = 0.5 * 10 ** -decimals + Math.abs(value) * 0.005;
  return Math.abs(value - printed) <= half;
}

const FIGURE = /(?<![\w.,(₀-₉])(\d+(?:\.\d+)?)(?: to \d+(?:\.\d+)?)? (g|kg|mL|L|%|°C|K)(?![\w/])/g;

describe.each(plans)("on paper: %s", (_, plan) => {
  const sheet = bench(plan);

  it("every figure is one of the plan, or stands in what a step says", () => {
    let rest = sheet;
    for (const text of ownTexts(plan)) if (text.length > 2) rest = rest.replaceAll(text, " ");
    const known = figuresOf(plan);
    // sizes of jugs and vessels, steps of the instruments, the strength of vinegar and the excess of what treats the waste
    const fixed =
      /\b(?:jug for|waste container,|balance,|cylinder,)[^[\n]*|5 % vinegar|10 % excess|100 % =|less than 0\.1 g/g;
    for (const [whole, figure, unit] of rest.replace(fixed, " ").matchAll(FIGURE))
      expect(
        known.some((q) => isFigure(figure!, unit!, q)),
        `${whole} in ${rest}`,
      ).toBe(true);
  });

  it("no figure is finer than a balance of 0.1 g and a cylinder of 1 mL show", () => {
    const steps = plan.steps.map(({ text }) => text).join("\n");
    // strengths and densities, and gas, are not read on either
    const read = `${steps}\n${sheet}`.replace(
      /\d[\d.]* (?:g|mL)\/\w+|[\d.]+ (?:m?L)(?: of)? (?:CO₂|H₂|O₂|NO|NO₂|N₂|NH₃|H₂S|SO₂|Cl₂)/g,
      "",
    );
    const gas = plan.gas.length > 0 ? /[\d.]+ mL from one portion/g : /(?!)/g;
    for (const [whole, figure, unit] of read.replace(gas, "").matchAll(/(?<![\d.])(\d+\.\d+) (g|mL)\b/g)) {
      const decimals = figure!.split(".")[1]!.length;
      // fewer than five millilitres are measured in a smaller cylinder
      expect(decimals, whole).toBeLessThanOrEqual(unit === "mL" && Number(figure) >= 5 ? 0 : 1);
    }
  });

  it("each caution of the work stands in its step, and nothing is said twice", () => {
    const procedure = sheet.slice(sheet.indexOf("\n## Procedure\n"), sheet.indexOf("\n## Drying record\n"));
    const lines = procedure.split("\n").filter((line) => /^\d+\. \[ \]/.test(line));
    const steps = plan.steps.filter(({ operation }) => operation !== "weigh");
    expect(lines).toHaveLength(steps.length + (steps.length < plan.steps.length ? 1 : 0));
    const parts = procedure.split(/^\d+\. \[ \] /m).slice(1 + (steps.length < plan.steps.length ? 1 : 0));
    steps.forEach((step, i) => {
      expect(parts[i]).toContain(step.text);
      for (const { about, text } of step.cautions)
        if (about === undefined) expect(parts[i], text).toContain(text.slice(1));
    });
  });

  it("each blank is an observation that the run takes", () => {
    const theory = plan.product.theoreticalYield.in("g").toNumber();
    const mass = `${(theory * 0.9).toFixed(3)} g` as "1 g";
    const seen: Record<string, Observations> = {
      dried: { dried: mass },
      wetCake: { wetCake: `${(theory * 2).toFixed(3)} g` as "1 g", dried: mass },
      filtrateVolume: { filtrateVolume: "100 mL" },
      washes: { washes: 2, dried: mass },
      "tests.filtrate": { tests: { filtrate: "clear" } },
      "tests.lastWash": { tests: { lastWash: "clear" } },
      temperature: { temperature: "18 °C" },
      pH: { pH: 7 },
      ignition: { ignition: { before: mass, after: `${(theory * 0.8).toFixed(3)} g` as "1 g" } },
    };
    for (const { blank, materials } of plan.steps) {
      if (blank === undefined) continue;
      const [material] = materials;
      if (blank.startsWith("weighed.")) {
        const portion = plan.weighings.find((one) => one.material === material)?.portion;
        if (portion !== undefined)
          expect(evaluateRun(plan, { weighed: { [material!]: portion as never } }).verdict.length).toBeGreaterThan(0);
        continue;
      }
      expect(Object.keys(seen), blank).toContain(blank);
      const run = attempt(() => evaluateRun(plan, seen[blank]!).verdict.length);
      // of some oxides nothing says what ignition leaves: the run asks for it
      expect(run.ok ? run.value > 0 : run.error.code === "plan.no-residue").toBe(true);
      expect(sheet).not.toMatch(/tests\.|wetCake|filtrateVolume/);
    }
  });
});

describe("instruments", () => {
  it("a coarser balance and cylinder print coarser figures everywhere", () => {
    const plan = planPreparation({
      equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc", form: "ZnSO4·7H2O" },
        { name: "soda", form: "Na2CO3·10H2O", excess: "5 %" },
      ],
      scale: { material: "zinc", portion: "250 g" },
      readability: { mass: "1 g", volume: "50 mL" },
    });
    const sheet = bench(plan);
    for (const [whole] of sheet.matchAll(/\d+\.\d+ (?:g|mL)\b(?! of CO₂)/g)) expect(whole).toBe("");
    // by tens at least: below five marks of 50 mL a cylinder with marks of 5 mL is taken
    for (const [, figure] of sheet.matchAll(/(?<![\d.])(\d+) mL of water/g)) expect(Number(figure) % 5).toBe(0);
  });

  it("codes of plans that are refused stay codes", () => {
    try {
      benchSheet(planPreparation({ ...requestOf(BENCH_PREPARATIONS[0]!), product: "nonsense" }));
      expect.unreachable();
    } catch (error) {
      expect(isPreparativeError(error)).toBe(true);
    }
  });
});

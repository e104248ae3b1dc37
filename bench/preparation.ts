// Plans and runs: one preparation with a hundred masses, as under a slider; eighty-one different ones in turn, which is what
// "warm" means; and each of those the first time it is asked for, when equation and substances have to be looked up.
// Weighings and theory, the plan with every figure looked at, a run with its verdict, beside JSON.parse of the same requests.
// Checked in the same pass: theory and yield against bare arithmetic.
import { fileURLToPath } from "node:url";
import { evaluateRun, type Plan, type PlanRequest, planPreparation } from "../src/preparation";
import { benchSheet } from "../src/sheet";
import { BENCH_PREPARATIONS, requestOf } from "../test/data/bench-preparations";
import { heading, inFreshProcesses, interleaved, line, median } from "./harness";

const N = 100;

const request = (i: number): PlanRequest => ({
  equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
  product: "Zn5(CO3)2(OH)6",
  materials: [
    { name: "zinc", form: "ZnSO4·7H2O", assay: "98 %", pack: { size: "1 kg", price: "8.90 EUR" } },
    { name: "soda", form: "Na2CO3·10H2O", excess: "5 %", pack: { size: "1 kg", price: "2.40 EUR" } },
  ],
  scale: { material: "zinc", portion: `${(200 + ((i * 7919) % 1000) / 10).toFixed(1)} g` as "200.0 g" },
});

/** Looks at every figure of a plan. */
function whole(plan: Plan): number {
  const rises = plan.dissolvingHeat.filter((one) => "rise" in one && one.rise !== undefined).length;
  return rises + (Object.keys(plan) as (keyof Plan)[]).filter((key) => plan[key] !== undefined).length;
}

/** The same, and what every step says and leaves in its vessel, pH included. */
function withStates(plan: Plan): number {
  const told = plan.steps.reduce(
    (n, { text, cautions, after }) => n + text.length + cautions.length + (after.pH === undefined ? 0 : 1),
    0,
  );
  return told + whole(plan);
}

function measure(): Record<string, number> {
  const requests = Array.from({ length: N }, (_, i) => request(i));
  const texts = requests.map((r) => JSON.stringify(r));
  const plans = requests.map((r) => planPreparation(r));
  const M = { zinc: 287.541, basic: 548.96 };
  const dried = (i: number): `${number} g` => `${60 + (i % 500) / 10} g`;
  plans.forEach((plan, i) => {
    const mass = plan.weighings[0]!.portion.in("g").toNumber();
    const theory = (mass * 0.98 * M.basic) / M.zinc / 5;
    const own = plan.product.theoreticalYield.in("g").toNumber();
    if (Math.abs(own / theory - 1) > 1e-4) throw new Error(`theory differs at ${i}: ${own} and ${theory}`);
    const percent = evaluateRun(plan, { dried: dried(i) })
      .percentYield!.in("%")
      .toNumber();
    const expected = (100 * (60 + (i % 500) / 10)) / own;
    if (Math.abs(percent / expected - 1) > 1e-9) throw new Error(`yield differs at ${i}: ${percent} and ${expected}`);
  });
  const each = (f: (i: number) => unknown) => () => {
    for (let i = 0; i < N; i++) f(i);
  };
  const slider = interleaved(
    {
      "JSON.parse of the request": each((i) => JSON.parse(texts[i]!)),
      "plan: weighings and theory": each((i) => planPreparation(requests[i]!).product.theoreticalYield.value),
      [WHOLE]: each((i) => whole(planPreparation(requests[i]!))),
      "run as weighed, verdict": each(
        (i) =>
          evaluateRun(plans[i]!, { weighed: { zinc: `${200 + (i % 97) / 10} g` }, dried: dried(i) }).verdict.length,
      ),
      "run with another dry mass only, verdict": each(
        (i) => evaluateRun(plans[i]!, { dried: dried(i) }).verdict.length,
      ),
      [SHEET_TEXT]: each((i) => benchSheet(plans[i]!)),
      [SHEET_HTML]: each((i) => benchSheet(plans[i]!, { format: "html" })),
      [BENCH_HTML]: each((i) => benchSheet(plans[i]!, { format: "html", parts: ["bench"] })),
    },
    N,
    15,
  );
  const others = BENCH_PREPARATIONS.map(requestOf);
  // The code is warm by now, the tables are not: nobody has asked for these before.
  const firsts = others.map((one) => {
    const start = process.hrtime.bigint();
    whole(planPreparation(one));
    return Number(process.hrtime.bigint() - start);
  });
  const inTurn = interleaved(
    {
      [IN_TURN]: () => {
        for (const one of others) whole(planPreparation(one));
      },
      [STATES_IN_TURN]: () => {
        for (const one of others) withStates(planPreparation(one));
      },
      [RUN_IN_TURN]: () => {
        for (const one of others) void evaluateRun(planPreparation(one), { dried: "10 g" }).verdict.length;
      },
    },
    others.length,
    15,
  );
  return { ...slider, ...inTurn, [FIRST]: median(firsts) };
}

const SHEET_TEXT = "sheet of a plan already looked at, text";
const SHEET_HTML = "sheet of a plan already looked at, HTML with pictures";
const BENCH_HTML = "its two pages for the bench alone, HTML";
const WHOLE = "plan, every figure looked at";
const IN_TURN = "different preparations in turn, every figure looked at";
const STATES_IN_TURN = "different preparations in turn, every step written, every vessel with its pH";
const RUN_IN_TURN = "different preparations in turn, plan, run and verdict";
const FIRST = "a preparation asked for the first time";

const result = inFreshProcesses(fileURLToPath(import.meta.url), measure, 3);
if (result !== undefined) {
  heading(`preparation: ${N} distinct requests, median of 3 processes, milliseconds each`);
  const limits: Readonly<Record<string, number>> = {
    // the goal is 1.5 ms with the equilibrium, which every feasibility asks for
    [WHOLE]: 1.5,
    [SHEET_TEXT]: 1,
    [SHEET_HTML]: 3,
    [IN_TURN]: 1.5,
    [STATES_IN_TURN]: 1.5,
    [RUN_IN_TURN]: 2,
    "run as weighed, verdict": 2,
    "run with another dry mass only, verdict": 2,
  };
  for (const [name, nanoseconds] of Object.entries(result)) line(name, nanoseconds / 1e6, "ms", limits[name]);
  line("sheet as text over the plan, every figure looked at", result[SHEET_TEXT]! / result[WHOLE]!, "x");
  line("sheet as HTML over the same as text", result[SHEET_HTML]! / result[SHEET_TEXT]!, "x");
  line("whole plan over JSON.parse", result[WHOLE]! / result["JSON.parse of the request"]!, "x");
}

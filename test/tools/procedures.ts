// What the library says today of each preparation of the bench list: steps, cautions, waste, and what it makes of runs that bring too
// little, what is expected, and too much. `npm run procedures` writes it to test/data/procedures.txt, so that a change of one rule
// shows in review in every procedure that it touches. Nothing in it is a check of chemistry: those stand elsewhere.
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { evaluateRun, type Observations, type Plan, planPreparation, type Quantity } from "preparative";
import { BENCH_PREPARATIONS, requestOf } from "../data/bench-preparations";

export const PROCEDURES = fileURLToPath(new URL("../data/procedures.txt", import.meta.url));

/** Runs by the share of what the steps should bring. */
const SHARES = [0.5, 0.8, 1, 1.2] as const;

const grams = (mass: Quantity, share: number): `${number} g` =>
  `${Number((mass.toNumber("g") * share).toPrecision(3))} g`;

/** On the other side of neutral than the plan's liquor. */
function otherSide({ steps }: Plan): number | undefined {
  const pH = steps.find(({ blank }) => blank === "pH")?.after.pH?.toNumber("");
  return pH === undefined ? undefined : pH < 7 ? 9 : 4;
}

function runOf(plan: Plan, name: string, seen: Observations): string[] {
  const { verdict } = evaluateRun(plan, seen);
  return [`run, ${name}:`, ...verdict.map(({ code, text, next }) => `  ${code}: ${text} -> ${next}`)];
}

function told(plan: Plan): string[] {
  const { expected } = evaluateRun(plan, {});
  const pH = otherSide(plan);
  return [
    ...plan.steps.flatMap(({ text, cautions }, i) => [
      `${i + 1}. ${text}`,
      // what a substance is classified as stands in its own tests
      ...cautions.flatMap(({ about, text: care }) => (about === undefined ? [`   ! ${care}`] : [])),
    ]),
    ...(plan.completeness === undefined ? [] : [`complete: ${plan.completeness.test}`]),
    ...plan.checks.map(({ text }) => `check: ${text}`),
    ...plan.waste.notes.map((note) => `waste: ${note}`),
    ...plan.candidates.map(({ formula, theoreticalYield }) => `candidate: ${formula} ${grams(theoreticalYield, 1)}`),
    ...SHARES.flatMap((share) => runOf(plan, `${100 * share} %`, { dried: grams(expected, share) })),
    ...(pH === undefined ? [] : runOf(plan, `pH ${pH}`, { dried: grams(expected, 0.7), pH })),
  ];
}

/** A preparation as text, by its name. */
export const proceduresByName: Readonly<Record<string, () => string>> = Object.fromEntries(
  BENCH_PREPARATIONS.map((one) => [one.id, () => told(planPreparation(requestOf(one))).join("\n")]),
);

/** The file by the names in it. */
export const sectionsOf = (text: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    text
      .split(/^## /m)
      .slice(1)
      .map((section) => {
        const end = section.indexOf("\n");
        return [section.slice(0, end), section.slice(end + 1).trimEnd()];
      }),
  );

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(
    PROCEDURES,
    Object.entries(proceduresByName)
      .map(([name, text]) => `## ${name}\n${text()}\n`)
      .join("\n"),
  );

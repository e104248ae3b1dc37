// The sheet of a run: what differs from the plan, what came out, and the verdict.
import type { Observations, Run, Weighed } from "../preparation";
import type { Quantity } from "../quantity";
import type { Block } from "./document";
import { movedBlocks } from "./plan-blocks";
import { about, withUncertainty } from "./words";

function weighedBlocks(run: Run): Block[] {
  const shown = (x: Quantity | string): string => (typeof x === "string" ? x : about(x, undefined, 4));
  const { product, materialBalance } = run;
  return [
    { kind: "heading", level: 2, text: "As weighed" },
    run.changes.length === 0
      ? { kind: "paragraph", text: "As planned." }
      : {
          kind: "table",
          head: ["", "planned", "as weighed"],
          rows: run.changes.map((c) => [c.what, shown(c.planned), shown(c.now)]),
        },
    {
      kind: "paragraph",
      text: `${materialBalance.limiting} limits; theory ${withUncertainty(product.theoreticalYield)} of ${product.formula}.`,
    },
  ];
}

function drynessOf({ dryness }: Run): string {
  const cake =
    dryness.moistureOfCake === undefined ? "" : ` The wet cake was ${about(dryness.moistureOfCake, "%", 2)} liquor.`;
  if (dryness.constant === undefined) return `One weighing says nothing about dryness: dry on and weigh again.${cake}`;
  const [loss, criterion] = [about(dryness.lastLoss!, "g", 2), about(dryness.criterion!, "g", 2)];
  if (dryness.state === "gaining")
    return `It gained ${about(dryness.lastLoss!.negated(), "g", 2)}: it absorbs water, or was weighed warm.${cake}`;
  const goes = dryness.endsAt === undefined ? "" : ` It goes to about ${about(dryness.endsAt, "g", 3)}.`;
  return dryness.constant
    ? `Constant mass: the last two weighings differ by ${loss}, within ${criterion}.${cake}`
    : `Still drying: the last two weighings differ by ${loss}, more than ${criterion}.${goes}${cake}`;
}

/** As the person wrote it. */
const written = (like: unknown): string =>
  typeof like === "object" || typeof like === "string" ? String(like) : `${like}`;

const weighedAs = (one: Weighed): string =>
  typeof one === "object" && "gross" in one ? `gross ${written(one.gross)}, tare ${written(one.tare)}` : written(one);

const tableOf = (what: string, table: Readonly<Record<string, unknown>> | undefined): string[][] =>
  Object.entries(table ?? {})
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, one]) => [`${what}: ${name}`, written(one)]);

/** Every observation in the order of the work, whatever order it was recorded in. */
function observedRows(run: Run): string[][] {
  const seen: Observations = run.observations;
  const { ignition, tests } = seen;
  const dried = seen.dried === undefined ? [] : Array.isArray(seen.dried) ? seen.dried : [seen.dried];
  const one = (what: string, like: unknown): string[][] => (like === undefined ? [] : [[what, written(like)]]);
  return [
    ...tableOf("weighed", seen.weighed),
    ...tableOf("measured", seen.measured),
    ...tableOf("strength", seen.strengths),
    ...tableOf("assay", seen.assays),
    ...one("temperature", seen.temperature),
    ...run.losses.map(({ text }) => ["lost", text]).sort(([, a], [, b]) => (a! < b! ? -1 : 1)),
    ...one("test of the filtrate", tests?.filtrate),
    ...one("pH of the liquor", seen.pH),
    ...one("filtrate", seen.filtrateVolume),
    ...one("washes", seen.washes),
    ...one("test of the last wash", tests?.lastWash),
    ...one("wet cake", seen.wetCake),
    ...(dried as readonly Weighed[]).map((like) => ["dry", weighedAs(like)]),
    ...(seen.crops ?? []).map((like, i) => [`crop ${i + 1}`, weighedAs(like)]),
    ...(ignition === undefined
      ? []
      : [["ignition", `${written(ignition.before)} before, ${written(ignition.after)} after`]]),
    ...one("acid per gram", seen.acidPerGram),
    ...one("assay of the product", seen.assay),
  ];
}

function observedBlocks(run: Run): Block[] {
  const rows = observedRows(run);
  if (rows.length === 0) return [];
  return [
    { kind: "heading", level: 2, text: "Observations" },
    { kind: "table", head: ["what", "as recorded"], rows },
  ];
}

/** Yield of what was lost to, and of pure product. */
function afterwards({ losses, expected, pureMass, pureYield }: Run): string {
  const lost = losses.length === 0 ? "" : ` After what was lost on the way ${withUncertainty(expected)} was expected.`;
  return pureMass === undefined || pureYield === undefined
    ? lost
    : `${lost} By titration ${withUncertainty(pureMass)} of it is pure: ${withUncertainty(pureYield)} of the theory.`;
}

export function runBlocks(run: Run): Block[] {
  const { dryMass, observations } = run;
  const blocks: Block[] = [
    { kind: "heading", level: 1, text: `Run: ${run.plan.title}` },
    ...(observations.note === undefined ? [] : [{ kind: "paragraph", text: observations.note } as const]),
    ...movedBlocks(run.moved),
    ...weighedBlocks(run),
    ...observedBlocks(run),
  ];
  if (dryMass === undefined) return blocks;
  return [
    ...blocks,
    { kind: "heading", level: 2, text: "Result" },
    { kind: "paragraph", text: `${withUncertainty(dryMass)} dry. ${drynessOf(run)}${afterwards(run)}` },
    {
      kind: "table",
      head: ["if the product is", "theory", "yield"],
      rows: run.yields.map((y) => [y.formula, withUncertainty(y.theoreticalYield), withUncertainty(y.percentYield)]),
    },
    ...(run.identity === undefined
      ? []
      : ([
          { kind: "heading", level: 2, text: "What it is" },
          { kind: "paragraph", text: `${run.identity.text}. Next: ${run.identity.next}.` },
        ] as const)),
    { kind: "heading", level: 2, text: "Verdict" },
    { kind: "list", items: run.verdict.map((f) => `${f.code.replace(/-/g, " ")}: ${f.text}. Next: ${f.next}.`) },
  ];
}

// The sheet of a run: what differs from the plan, what came out, and the verdict.
import type { Observations, Run, Weighed } from "../../preparation";
import type { Quantity } from "../../quantity";
import type { Block, Picture } from "../document/blocks";
import { about, sentence, withUncertainty } from "../figures";
import { bars, dryingChart } from "../pictures/charts";
import { movedBlocks } from "../plan/basis";
import { leastExpected } from "../plan/context";
import { filled, type SheetWords } from "../words";

function weighedBlocks(run: Run, words: SheetWords): Block[] {
  const shown = (x: Quantity | string): string => (typeof x === "string" ? x : about(x, undefined, 4));
  const { product, materialBalance } = run;
  return [
    { kind: "heading", text: words.asWeighed },
    run.changes.length === 0
      ? { kind: "paragraph", text: words.asPlanned }
      : {
          kind: "table",
          head: ["", words.planned, words.weighedNow],
          rows: run.changes.map(({ what, planned, now }) => [what, shown(planned), shown(now)]),
          figures: [1, 2],
        },
    {
      kind: "paragraph",
      text: filled(words.limits, {
        material: materialBalance.limiting,
        theory: withUncertainty(product.theoreticalYield),
        product: product.formula,
      }),
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

function observedBlocks(run: Run, words: SheetWords): Block[] {
  const rows = observedRows(run);
  if (rows.length === 0) return [];
  return [
    { kind: "heading", text: words.observations },
    { kind: "table", head: [words.observed, words.recorded], rows },
  ];
}

/** Yield of what was lost to, and of pure product. */
function afterwards({ losses, expected, pureMass, pureYield }: Run): string {
  const lost = losses.length === 0 ? "" : ` After what was lost on the way ${withUncertainty(expected)} was expected.`;
  return pureMass === undefined || pureYield === undefined
    ? lost
    : `${lost} By titration ${withUncertainty(pureMass)} of it is pure: ${withUncertainty(pureYield)} of the theory.`;
}

/** The causes that fit, the likeliest first, with what to do next. */
function verdictBlocks({ verdict }: Run, words: SheetWords): Block[] {
  const first = verdict[0];
  const rows = verdict.map(({ code, text, next }) => [code.replace(/-/g, " "), sentence(text), sentence(next)]);
  return [
    { kind: "heading", text: words.verdict },
    ...(first === undefined ? [] : [{ kind: "paragraph", text: sentence(first.text) } as const]),
    { kind: "table", head: [words.cause, words.evidence, words.next], rows },
  ];
}

const grams = (q: Quantity): number => q.in("g").toNumber();

function picturesOf(run: Run, dry: Quantity, words: SheetWords): Picture[] {
  const { theoreticalYield } = run.product;
  const bar = (label: string, mass: Quantity) => ({ label, value: grams(mass), shown: about(mass, "g") });
  return [
    {
      svg: dryingChart(
        words.drying,
        words.weighing,
        grams(leastExpected(run.plan)),
        grams(theoreticalYield),
        run.dryings.map(grams),
      ),
      text: "",
    },
    {
      svg: bars(words.yield, [
        bar(words.found, dry),
        ...run.yields.map(({ formula, theoreticalYield: theory }) => bar(formula, theory)),
      ]),
      text: "",
    },
  ];
}

export function runBlocks(run: Run, words: SheetWords): Block[] {
  const { dryMass, observations, plan } = run;
  return [
    {
      kind: "title",
      text: filled(words.run, { title: plan.title }),
      lines: observations.note === undefined ? [] : [observations.note],
      blanks: [words.batch, words.date, words.worker],
    },
    ...verdictBlocks(run, words),
    ...weighedBlocks(run, words),
    ...observedBlocks(run, words),
    ...(dryMass === undefined
      ? []
      : ([
          { kind: "heading", text: words.result },
          { kind: "paragraph", text: `${withUncertainty(dryMass)} dry. ${drynessOf(run)}${afterwards(run)}` },
          {
            kind: "table",
            head: [words.ifProductIs, words.at100, words.yieldIs],
            rows: run.yields.map((y) => [
              y.formula,
              withUncertainty(y.theoreticalYield),
              withUncertainty(y.percentYield),
            ]),
            figures: [1, 2],
          },
          { kind: "pictures", pictures: picturesOf(run, dryMass, words) },
        ] as const)),
    ...(run.identity === undefined
      ? []
      : ([
          { kind: "heading", text: words.identity },
          { kind: "paragraph", text: `${sentence(run.identity.text)} ${words.next}: ${sentence(run.identity.next)}` },
        ] as const)),
    ...movedBlocks(run.moved, words),
  ];
}

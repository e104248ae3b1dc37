// The sheet of a run: what differs from the plan, what came out, and the verdict.
import type { FindingCode, Observations, Run, TestOutcome, Weighed } from "../../preparation";
import { ofOtherBatches, restInCrucible, staysInCrucible } from "../../preparation/internal";
import type { Quantity } from "../../quantity";
import type { Block, Picture } from "../document/blocks";
import { about, sentence, shareWithUncertainty } from "../figures";
import { bars, dryingChart } from "../pictures/charts";
import { movedBlocks } from "../plan/basis";
import { asRead, expectedOf, handFor, massWithUncertainty } from "../plan/context";
import { type Observed, observationName } from "../plan/observation";
import { filled, type SheetWords } from "../words";

function weighedBlocks(run: Run, words: SheetWords): Block[] {
  const shown = (x: Quantity | string): string =>
    typeof x === "string" ? x : x.dimension === "mass" ? asRead(run.plan, x) : about(x, undefined, 3);
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
        theory: massWithUncertainty(run.plan, product.theoreticalYield),
        product: product.formula,
      }),
    },
  ];
}

function drynessOf({ dryness, plan }: Run, words: SheetWords): string[] {
  const { grams: shown } = handFor({ plan, words });
  const { constant, lastLoss, criterion, endsAt, moistureOfCake, state } = dryness;
  const cake = moistureOfCake === undefined ? [] : [filled(words.cakeWas, { share: about(moistureOfCake, "%", 2) })];
  if (constant === undefined || lastLoss === undefined || criterion === undefined) return [words.oneWeighing, ...cake];
  const figures = { mass: shown(lastLoss), criterion: shown(criterion) };
  if (state === "gaining") return [filled(words.gaining, { mass: shown(lastLoss.negated()) }), ...cake];
  if (constant) return [filled(words.constantMass, figures), ...cake];
  const goes = endsAt === undefined ? [] : [filled(words.endsAt, { mass: shown(endsAt) })];
  return [filled(words.stillDrying, figures), ...goes, ...cake];
}

/** As the person wrote it. */
const written = (like: unknown): string =>
  typeof like === "object" || typeof like === "string" ? String(like) : `${like}`;

const weighedAs = (one: Weighed, words: SheetWords): string =>
  typeof one === "object" && "gross" in one
    ? filled(words.asGrossAndTare, { gross: written(one.gross), tare: written(one.tare) })
    : written(one);

/** Every observation in the order of the work, whatever order it was recorded in. */
function observedRows(run: Run, words: SheetWords): string[][] {
  const seen: Observations = run.observations;
  const { ignition, tests } = seen;
  const dried = seen.dried === undefined ? [] : Array.isArray(seen.dried) ? seen.dried : [seen.dried];
  const named = (observed: Observed): string => observationName(observed, words);
  const one = (observed: Observed, like: unknown): string[][] =>
    like === undefined ? [] : [[named(observed), written(like)]];
  const table = (observed: Observed, of: Readonly<Record<string, unknown>> | undefined): string[][] =>
    Object.entries(of ?? {})
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([material, like]) => [filled(words.ofMaterial, { observation: named(observed), material }), written(like)]);
  const test = (observed: Observed, outcome: TestOutcome | undefined): string[][] =>
    outcome === undefined ? [] : [[named(observed), words[outcome]]];
  return [
    ...table("weighed", seen.weighed),
    ...table("measured", seen.measured),
    ...table("strengths", seen.strengths),
    ...table("assays", seen.assays),
    ...one("temperature", seen.temperature),
    ...run.losses.map(({ text }) => [named("lost"), text]).sort(([, a], [, b]) => (a! < b! ? -1 : 1)),
    ...test("tests.filtrate", tests?.filtrate),
    ...one("pH", seen.pH),
    ...one("filtrateVolume", seen.filtrateVolume),
    ...one("washes", seen.washes),
    ...test("tests.lastWash", tests?.lastWash),
    ...one("wetCake", seen.wetCake),
    ...(dried.length === 0
      ? []
      : [[named("dried"), (dried as readonly Weighed[]).map((like) => weighedAs(like, words)).join("; ")]]),
    ...(seen.crops ?? []).map((like, i) => [filled(words.obsCrop, { number: String(i + 1) }), weighedAs(like, words)]),
    ...(ignition === undefined
      ? []
      : [
          [
            named("ignition"),
            filled(words.asBeforeAndAfter, { before: written(ignition.before), after: written(ignition.after) }),
          ],
        ]),
    ...one("acidPerGram", seen.acidPerGram),
    ...one("assay", seen.assay),
  ];
}

function observedBlocks(run: Run, words: SheetWords): Block[] {
  const rows = observedRows(run, words);
  if (rows.length === 0) return [];
  return [
    { kind: "heading", text: words.observations },
    { kind: "table", head: [words.observed, words.recorded], rows },
  ];
}

/** Yield of what was lost to, and of pure product. */
function afterwards(run: Run, words: SheetWords): string[] {
  const { losses, expected, pureMass, pureYield, plan, dryMass, product } = run;
  const rest = restInCrucible(run);
  const foreign = ofOtherBatches(run);
  return [
    ...(losses.length === 0 ? [] : [filled(words.afterLosses, { mass: massWithUncertainty(plan, expected) })]),
    ...(dryMass === undefined || !rest.isPositive()
      ? []
      : [
          filled(words.withoutRest, {
            stays: massWithUncertainty(plan, rest),
            share: shareWithUncertainty(dryMass.minus(staysInCrucible(run)).dividedBy(product.theoreticalYield)),
          }),
        ]),
    ...(dryMass === undefined || !foreign.isPositive()
      ? []
      : [
          filled(words.withoutRinse, {
            rest: massWithUncertainty(plan, foreign),
            share: shareWithUncertainty(dryMass.minus(foreign).dividedBy(product.theoreticalYield)),
          }),
        ]),
    ...(pureMass === undefined || pureYield === undefined
      ? []
      : [
          filled(words.purePart, { mass: massWithUncertainty(plan, pureMass), share: shareWithUncertainty(pureYield) }),
        ]),
  ];
}

/** What each finding is called. */
const CAUSES = {
  consistent: "causeConsistent",
  "still-drying": "causeStillDrying",
  wet: "causeWet",
  unwashed: "causeUnwashed",
  unreacted: "causeUnreacted",
  "second-solid": "causeSecondSolid",
  "other-hydrate-fits": "causeOtherHydrate",
  "other-formula-fits": "causeOtherFormula",
  "mixture-fits": "causeMixture",
  "hydrate-mix-up": "causeMixUp",
  "not-weighed": "causeNotWeighed",
  "reagent-short": "causeReagentShort",
  "too-heavy": "causeTooHeavy",
  "loss-explained": "causeLossExplained",
  "lighter-than-losses-explain": "causeLighter",
  "boiled-further": "causeBoiledFurther",
  "balance-too-coarse": "causeCoarse",
  spilled: "causeSpilled",
  impure: "causeImpure",
  "liquor-ph": "causeLiquorPH",
} as const satisfies Readonly<Record<FindingCode, keyof SheetWords>>;

/** The causes that fit, the likeliest first, with what to do next. */
function verdictBlocks({ verdict }: Run, words: SheetWords): Block[] {
  const first = verdict[0];
  const rows = verdict.map(({ code, text, next }) => [words[CAUSES[code]], sentence(text), sentence(next)]);
  return [
    { kind: "heading", text: words.verdict },
    ...(first === undefined ? [] : [{ kind: "paragraph", text: sentence(first.text) } as const]),
    { kind: "table", head: [words.cause, words.evidence, words.next], rows },
  ];
}

const grams = (q: Quantity): number => q.toNumber("g");

/** What was weighed should be: the crops together where they were weighed so, else one or both of them. */
function expectedIn({ plan, observations }: Run): { readonly low: Quantity; readonly high: Quantity } {
  const { together, ...first } = expectedOf(plan);
  if (together === undefined) return first;
  return (observations.crops?.length ?? 1) > 1 ? together : { low: first.low, high: together.high };
}

function picturesOf(run: Run, dry: Quantity, words: SheetWords): Picture[] {
  const { grams: shown } = handFor({ plan: run.plan, words });
  const { low, high } = expectedIn(run);
  const bar = (label: string, mass: Quantity) => ({
    label,
    value: grams(mass),
    shown: massWithUncertainty(run.plan, mass),
    ...(mass.standardUncertainty === undefined
      ? {}
      : { uncertainty: mass.to("g").standardUncertainty?.toNumber() ?? 0 }),
  });
  const theories = run.yields.map(({ formula, theoreticalYield }) => `${formula}: ${shown(theoreticalYield)}`);
  return [
    {
      svg: dryingChart({
        title: words.drying,
        text: filled(words.dryingText, { low: shown(low), high: shown(high) }),
        across: words.number,
        band: words.bandDry,
        low: grams(low),
        high: grams(high),
        masses: run.dryings.map(grams),
      }),
      text: words.drying,
    },
    {
      svg: bars({
        title: words.yieldIs,
        text: filled(words.yieldText, { found: shown(dry), theories: theories.join(", ") }),
        all: [
          bar(words.found, dry),
          ...run.yields.map(({ formula, theoreticalYield }) => bar(formula, theoreticalYield)),
        ],
      }),
      text: words.yieldIs,
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
      blanks: [words.batch, words.date, words.worker].map((name) => ({ name })),
    },
    ...verdictBlocks(run, words),
    { kind: "columns", columns: [weighedBlocks(run, words), observedBlocks(run, words)] },
    ...(dryMass === undefined
      ? []
      : ([
          { kind: "heading", text: words.result },
          {
            kind: "paragraph",
            text: [
              filled(words.dryIs, { mass: massWithUncertainty(plan, dryMass) }),
              ...drynessOf(run, words),
              ...afterwards(run, words),
            ].join(" "),
          },
          {
            kind: "table",
            head: [words.ifProductIs, words.at100, words.yieldIs],
            rows: run.yields.map((y) => [
              y.formula,
              massWithUncertainty(plan, y.theoreticalYield),
              shareWithUncertainty(y.percentYield),
            ]),
            figures: [1, 2],
          },
          { kind: "pictures", pictures: () => picturesOf(run, dryMass, words) },
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

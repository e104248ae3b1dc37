// The ground the sheet stands on: what was assumed, what else it could be, what it costs, what is not known, and sources.
import { parseFormula } from "../../formula";
import type { MovedFigure } from "../../preparation";
import type { Quantity } from "../../quantity";
import { sourcesOf } from "../../quantity/internal";
import type { Solubility } from "../../solubility";
import { cite } from "../../solubility/internal";
import { cite as citeLabel, looksOf } from "../../substance/internal";
import type { Block, Picture } from "../document/blocks";
import { about, handy, pretty, sentence } from "../figures";
import { bars } from "../pictures/charts";
import { coolingPicture } from "../pictures/cooling";
import { titrationPicture } from "../pictures/titration";
import { filled, type SheetWords } from "../words";
import { handFor, massWithUncertainty, type OnPaper } from "./context";
import { precautionsOf } from "./hazards";
import { testCautions } from "./waste";

function checkBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  // The test for complete precipitation is a step of its own.
  // what is said of the purity is read before anything is weighed, in the head, and what decides how much at the weighing
  const checks = plan.checks
    .filter(({ text, about }) => text !== plan.completeness?.test && about !== "purity" && about !== "weighing")
    .map(({ text }) => sentence(text));
  const items = [...checks, ...testCautions(on)];
  return items.length === 0
    ? []
    : [
        { kind: "heading", text: words.checks },
        { kind: "list", items },
      ];
}

/** Precautionary statements in their official words, each with what asks for it. */
function precautionBlocks(on: OnPaper): Block[] {
  const items = precautionsOf(on).map(({ code, text, materials }) => `${text} (${code}): ${materials.join(", ")}`);
  return items.length === 0
    ? []
    : [
        { kind: "heading", text: on.words.precautions },
        { kind: "list", items },
      ];
}

function yieldBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  const rows = plan.candidates.map(({ formula, theoreticalYield, wanted }) => [
    formula,
    massWithUncertainty(plan, theoreticalYield),
    !wanted ? "" : plan.isolation.how === "liquor" ? words.inItsLiquor : words.wanted,
  ]);
  const beside = plan.byProducts
    .filter(({ where }) => where === "with the product")
    .map(
      ({ mass, formula }) =>
        ({ kind: "paragraph", text: filled(words.withIt, { mass: handFor(on).grams(mass), formula }) }) as const,
    );
  const where = plan.isolation.how === "residue" ? words.inCrucible : words.onFilters;
  return [
    { kind: "heading", text: words.yield },
    { kind: "table", head: [words.ifProductIs, words.at100, ""], rows, figures: [1] },
    ...beside,
    { kind: "paragraph", text: filled(words.mayStay, { share: about(plan.handlingLoss, "%", 2), where }) },
  ];
}

function costBlocks({ plan, words }: OnPaper): Block[] {
  const { cost } = plan;
  const money = (q: Quantity): string => q.format({ decimals: 2, uncertainty: "none" });
  const rows = cost.lines.map((line) => [line.material, money(line.cost), money(line.unused)]);
  const total =
    cost.total === undefined
      ? filled(words.costUnknown, { missing: cost.missing.join("; ") })
      : filled(words.costLine, {
          total: money(cost.total),
          perGram: about(cost.perGram!),
          perMole: about(cost.perMole!),
        });
  return [
    { kind: "heading", text: words.cost },
    ...(rows.length === 0
      ? []
      : [{ kind: "table", head: [words.material, words.used, words.ofExcess], rows, figures: [1, 2] } as const]),
    { kind: "paragraph", text: total },
  ];
}

function assumptionBlocks({ plan, words }: OnPaper): Block[] {
  const rows = plan.assumptions.map(({ value, what, citation }) => [value.replace(" /h", " per hour"), what, citation]);
  const [source, ...others] = new Set(plan.assumptions.map(({ citation }) => citation));
  // One source for all of them is said once.
  const isOne = source !== undefined && others.length === 0;
  const head = [words.value, words.reason, words.source];
  return [
    { kind: "heading", text: words.assumptions },
    isOne
      ? { kind: "table", head: head.slice(0, 2), rows: rows.map((row) => row.slice(0, 2)) }
      : { kind: "table", head, rows },
    ...(isOne ? [{ kind: "paragraph", text: `${words.source}: ${source}.` } as const] : []),
  ];
}

/** Figures that were other ones when the plan or run was saved. */
export function movedBlocks(moved: readonly MovedFigure[], words: SheetWords): Block[] {
  if (moved.length === 0) return [];
  const items = moved.map(({ what, was = words.notGiven, now = words.notGiven }) =>
    filled(words.movedLine, { what, was, now }),
  );
  return [
    { kind: "heading", text: words.moved },
    { kind: "list", items },
  ];
}

/** The published ground the sheet stands on, each source once. */
function sourceBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  const dissolving = plan.feeds.flatMap((feed) => (feed.how === "dissolve" ? [feed] : []));
  const liquor = (plan.liquor.check?.substances ?? []).map((one) => one.solubility);
  const product = plan.isolation.how === "crystallise" ? [plan.isolation.solubility] : [];
  const named = (one: Solubility | undefined): string[] =>
    one === undefined ? [] : [filled(words.solubilityOf, { formula: pretty(one.formula), source: cite(one.source) })];
  const taken = dissolving.flatMap(({ dissolving, alike, at }) =>
    [dissolving, ...(alike ? [alike] : [])].map((one) => ({ ...one, at })),
  );
  const figures = taken.flatMap(({ solubility, perHundredGramsWater, at }) =>
    solubility === undefined
      ? []
      : [
          filled(words.dissolves, {
            mass: about(perHundredGramsWater),
            formula: pretty(solubility.formula),
            temperature: at.format({ unit: "°C", decimals: 0, uncertainty: "none" }),
            source: cite(solubility.source),
          }),
        ],
  );
  const others = [...liquor, ...product].filter(
    (one) => !dissolving.some(({ dissolving: { solubility } }) => solubility?.formula === one?.formula),
  );
  const cautions = plan.cautions.substances.flatMap(({ citation, source: own, statements }) =>
    [
      ...(citation === undefined ? [] : [citation.replace(/, index .*$/, "")]),
      ...statements
        .filter(({ source }) => source !== own && source !== "memory")
        .map(({ source }) => citeLabel(source)),
    ].map((source) => filled(words.cautionsFrom, { source })),
  );
  const weights = sourcesOf(plan.product.theoreticalYield).map((source) => filled(words.weightsFrom, { source }));
  const official = precautionsOf(on).map(({ source }) => filled(words.precautionsFrom, { source: citeLabel(source) }));
  const { formula } = plan.product;
  const looks = looksOf(parseFormula(formula));
  const seen = looks === undefined ? [] : [filled(words.looksFrom, { formula, source: citeLabel(looks.source) })];
  const items = [...new Set([...weights, ...figures, ...others.flatMap(named), ...seen, ...cautions, ...official])];
  return [
    { kind: "heading", text: words.sources },
    { kind: "list", items },
  ];
}

/** Gas of a portion against the free space, the cooling, and what each wash leaves. */
function picturesOf(on: OnPaper): Picture[] {
  const { plan, words } = on;
  const pictures: Picture[] = [];
  const { additionRate, washing } = plan;
  const hand = handFor(on);
  if (additionRate !== undefined) {
    const { gasPerPortion, headspace } = additionRate;
    const bar = (label: string, volume: Quantity) => ({
      label,
      value: volume.toNumber("L"),
      shown: handy(volume, 2),
    });
    const text = filled(words.perPortionText, { gas: handy(gasPerPortion, 2), space: handy(headspace, 2) });
    pictures.push({
      svg: bars({ title: words.perPortion, text, all: [bar(words.gas, gasPerPortion), bar(words.space, headspace)] }),
      text: words.perPortion,
    });
  }
  const cooling = coolingPicture(on);
  if (cooling !== undefined) pictures.push({ svg: cooling, text: words.cooling });
  const titration = titrationPicture(on);
  if (titration !== undefined) pictures.push({ svg: titration, text: words.titration });
  if (washing !== undefined && "plan" in washing && washing.plan.washes > 0) {
    const { residueUnwashed, residueAfter, washes, target } = washing.plan;
    const left = [residueUnwashed, ...residueAfter.slice(0, washes)].slice(0, MOST_WASHES).map((mass, i) => ({
      label: String(i),
      value: mass.toNumber("g"),
      shown: hand.grams(mass),
    }));
    const text = filled(words.solidsText, {
      left: left.map(({ label, shown }) => `${label}: ${shown}`).join(", "),
      target: hand.grams(target),
    });
    const limit = { label: filled(words.mostAllowed, { mass: hand.grams(target) }), value: target.toNumber("g") };
    pictures.push({ svg: bars({ title: words.solids, text, all: left, limit }), text: words.solids });
  }
  return pictures;
}

/** As many washes as a picture has room for. */
const MOST_WASHES = 7;

export function basisBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  return [
    ...checkBlocks(on),
    ...precautionBlocks(on),
    ...yieldBlocks(on),
    { kind: "pictures", pictures: () => picturesOf(on) },
    ...costBlocks(on),
    ...assumptionBlocks(on),
    ...movedBlocks(plan.moved, words),
    ...(plan.unknown.length === 0
      ? []
      : ([
          { kind: "heading", text: words.missing },
          { kind: "list", items: plan.unknown },
        ] as const)),
    ...sourceBlocks(on),
  ];
}

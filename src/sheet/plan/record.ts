// What is written down at the end: drying, result, what the mass says, waste, label, deviations.
import type { Quantity } from "../../quantity";
import { BLANK, type Block, type Picture } from "../document/blocks";
import { about, capital, handy, pretty, sentence } from "../figures";
import { dryingChart } from "../pictures/charts";
import { filled } from "../words";
import { asRead, leastExpected, massOf, type OnPaper, rangeOf } from "./context";

const grams = (q: Quantity): number => q.in("g").toNumber();

const chartOf = ({ plan, words }: OnPaper): Picture => ({
  svg: dryingChart(words.drying, words.weighing, grams(leastExpected(plan)), grams(plan.product.theoreticalYield)),
  text: "",
});

/** What the mass found says, before any candidate is looked at. */
function keyRows({ plan, words }: OnPaper): string[][] {
  const { low, high } = rangeOf(plan);
  const others = plan.candidates.filter(({ wanted }) => !wanted);
  return [
    [filled(words.above, { mass: high }), words.wet],
    [filled(words.within, { low: low.replace(" g", ""), high }), words.consistent],
    [filled(words.below, { mass: low }), words.lost],
    ...others.map(({ formula, theoreticalYield }) => [
      filled(words.ifItIs, { mass: massOf(plan, theoreticalYield) }),
      formula,
    ]),
  ];
}

export function recordBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  const rows = [1, 2, 3, 4].map((i) => [String(i), BLANK, BLANK, BLANK]);
  return [
    {
      kind: "columns",
      columns: [
        [
          { kind: "heading", text: words.drying },
          { kind: "table", head: ["", words.time, words.gross, words.net], rows },
        ],
        [{ kind: "pictures", pictures: [chartOf(on)] }],
      ],
    },
    {
      kind: "columns",
      columns: [
        [
          { kind: "heading", text: words.result },
          {
            kind: "blanks",
            items: [
              `${words.dryMass} (dried)`,
              filled(words.yieldLine, { theory: asRead(plan, plan.product.theoreticalYield) }),
            ],
          },
          ...labelBlocks(on),
        ],
        [
          { kind: "heading", text: words.key },
          { kind: "table", head: [words.found, words.means], rows: keyRows(on) },
        ],
      ],
    },
  ];
}

/** Cautions of work that is no step of its own: the ignition test, the waste. */
function furtherCautions({ plan }: OnPaper): string[] {
  const said = new Set(plan.steps.flatMap(({ cautions }) => cautions.map(({ text }) => text)));
  return plan.stepCautions.flatMap(({ step, cautions }) =>
    cautions
      .filter(({ about: substance, text }) => substance === undefined && !said.has(text))
      .map(({ text }) => `${capital(step)}: ${text}.`),
  );
}

/** Less than this a drop of anything settles. */
const WORTH_TREATING = "1 mmol";
function wasteItems(on: OnPaper): string[] {
  const { plan } = on;
  const { waste, byProducts, cautions } = plan;
  const metals = waste.metals
    .filter(({ precipitate, mass }) => precipitate && mass.compare("0.1 mg") > 0)
    .map(
      ({ symbol, mass, pH }) => `${symbol} dissolved: ${about(mass, "g", 2)}; precipitates at pH ${pH ?? "not known"}.`,
    );
  const treatment = waste.treatment
    .filter(({ amount }) => amount.compare(WORTH_TREATING) > 0)
    .map(({ reagent, purpose, amount, mass }) =>
      mass === undefined
        ? `Acid with ${about(amount, "mol", 2)} of ${pretty(reagent)} ${purpose}.`
        : `${about(mass, "g", 2)} of ${pretty(reagent)} (anhydrous) ${purpose}, 10 % excess.`,
    );
  const kept = byProducts
    .filter(({ where, worthKeeping }) => where === "in the liquor" && worthKeeping)
    .map(({ mass, formula, why }) => `${handy(mass)} of ${formula} may be worth keeping: ${why}.`);
  const handled = new Set(plan.weighings.map(({ form }) => form));
  const disposal = cautions.substances
    .filter(({ material, status }) => status === "classified" && handled.has(pretty(material)))
    .map(({ material, disposal: how }) => `${pretty(material)}: ${how}`);
  return [
    ...metals,
    ...treatment,
    ...waste.notes.map(sentence),
    ...kept,
    ...disposal,
    ...furtherCautions(on),
    waste.closing,
  ];
}

function labelBlocks({ plan, words }: OnPaper): Block[] {
  const { upTo } = plan.drying;
  const limit = upTo === undefined ? "" : filled(words.notAbove, { temperature: about(upTo, "°C", 3) });
  return [
    { kind: "heading", text: words.label },
    {
      kind: "paragraph",
      text: filled(words.labelLine, { product: plan.product.formula, limit }).replace(/, $/, ""),
    },
    { kind: "blanks", items: [words.deviations] },
  ];
}

export const wasteBlocks = (on: OnPaper): Block[] => [
  { kind: "heading", text: on.words.wasteOf },
  { kind: "list", items: [...new Set(wasteItems(on))] },
];

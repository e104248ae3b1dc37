// The sheet of a plan, block by block in bench order: cautions first, then weigh, do, expect, cost, and what is not known.

import type { MovedFigure, Plan } from "../preparation";
import { leadOf } from "../preparation/internal";
import { explain, type Quantity, quantity } from "../quantity";
import { cite } from "../solubility/internal";
import type { Block } from "./document";
import { doingBlocks } from "./doing-blocks";
import { about, capital, handy, pretty, sentence, withUncertainty } from "./words";

/** A portion to the step of the instrument: as it will be read. */
function asRead(plan: Plan, portion: Quantity): string {
  const { readability = {} } = plan.request;
  const step = portion.dimension === "mass" ? (readability.mass ?? "0.1 g") : (readability.volume ?? "1 mL");
  const { value, unit } = quantity(step as Quantity);
  return portion.format({ unit, decimals: value.decimalPlaces(), uncertainty: "none" });
}

export function weighingBlocks(plan: Plan): Block[] {
  const rows = plan.weighings.map((w) => [
    w.material,
    w.form,
    asRead(plan, w.portion),
    "__________",
    w.limiting ? "limiting reagent" : `${about(w.excess, "%", 2)} excess`,
  ]);
  const notes = plan.weighings.flatMap((w) => (w.note === undefined ? [] : [`${w.material}: ${w.note}`]));
  return [
    { kind: "heading", level: 2, text: "Weigh and measure" },
    { kind: "table", head: ["material", "formula as sold", "planned", "actual", ""], rows },
    ...(plan.warnings.length === 0
      ? []
      : [{ kind: "list", items: plan.warnings.map((one) => `CHECK: ${one}.`) } as const]),
    ...(notes.length === 0 ? [] : [{ kind: "list", items: notes } as const]),
  ];
}

export function expectationBlocks(plan: Plan): Block[] {
  const rows = plan.candidates.map((c) => [
    c.formula,
    withUncertainty(c.theoreticalYield),
    c.wanted ? "wanted" : "if it came out as this",
  ]);
  const lead = leadOf(plan.feasibility, plan.product.formula);
  return [
    { kind: "heading", level: 2, text: "Expected yield" },
    ...(lead === undefined ? [] : [{ kind: "list", items: [`CHECK: ${sentence(lead)}`] } as const]),
    { kind: "table", head: ["dry product", "at 100 % yield", ""], rows },
    ...plan.byProducts
      .filter(({ where }) => where === "with the product")
      .map(
        ({ formula, mass }) =>
          ({
            kind: "paragraph",
            text: `With it precipitates ${handy(mass)} of ${formula}, which no washing takes out.`,
          }) as const,
      ),
    {
      kind: "paragraph",
      text: `Assumed: up to ${about(plan.handlingLoss, "%", 2)} may stay ${plan.isolation.how === "residue" ? "in the crucible" : "on filters and vessels"}.`,
    },
  ];
}

/** Less than this a drop of anything settles. */
const WORTH_TREATING = "1 mmol";

export function leftoverBlocks(plan: Plan): Block[] {
  const { waste, byProducts } = plan;
  const items: string[] = [];
  if (waste.volume !== undefined) items.push(`${handy(waste.volume)} of liquor and washings in all.`);
  const bad = waste.metals.filter((m) => m.precipitate && m.mass.compare("0.1 mg") > 0);
  for (const { symbol, amount, mass, pH } of bad)
    items.push(
      `${symbol} dissolved in it: ${about(mass, "g", 2)} (${about(amount, "mol", 2)}); precipitates at pH ${pH ?? "not known"} (from memory).`,
    );
  for (const { reagent, purpose, amount, mass } of waste.treatment.filter((t) => t.amount.compare(WORTH_TREATING) > 0))
    items.push(
      mass === undefined
        ? `Acid with ${about(amount, "mol", 2)} of ${pretty(reagent)} ${purpose}.`
        : `${about(mass, "g", 2)} of ${pretty(reagent)} (anhydrous) ${purpose}, 10 % excess.`,
    );
  items.push(...waste.notes.map(sentence));
  for (const b of byProducts.filter((one) => one.where === "in the liquor"))
    items.push(`${handy(b.mass)} of ${b.formula}${b.worthKeeping ? " may be worth keeping" : ""}: ${b.why}.`);
  return [
    { kind: "heading", level: 2, text: "Waste and by-products" },
    { kind: "list", items: [...items, waste.closing] },
  ];
}

export function costBlocks({ cost }: Plan): Block[] {
  const money = (q: Quantity): string => q.format({ decimals: 2, uncertainty: "none" });
  const rows = cost.lines.map((l) => [l.material, money(l.cost), money(l.unused)]);
  const total =
    cost.total === undefined
      ? `The cost of the batch is unknown: ${cost.missing.join("; ")} missing.`
      : `${money(cost.total)} for the batch: ${about(cost.perGram!)} and ${about(cost.perMole!)} of product at 100 % yield.`;
  return [
    { kind: "heading", level: 2, text: "Cost" },
    ...(rows.length === 0 ? [] : [{ kind: "table", head: ["material", "used", "of which excess"], rows } as const]),
    { kind: "paragraph", text: total },
  ];
}

/** What stands in place of statements: nothing in the list, or too dilute for any. */
const unclassified = ({ strength }: Plan["cautions"]["substances"][number]): string =>
  `${strength === undefined ? "no hazard listed in the source" : "too dilute for any statement of its class"}, which is not the same as safe`;

export function cautionBlocks({ cautions, stepCautions }: Plan): Block[] {
  const items = cautions.substances.map((s) => {
    const at = s.strength === undefined ? "" : ` at ${s.strength}`;
    const form = s.form === undefined || at !== "" ? "" : ` [${s.form}]`;
    const name = `${pretty(s.material)}${at}${form}`;
    if (s.status === "no entry") return `${name}: no entry: read the safety data sheet. Waste: ${s.disposal}`;
    const statements = s.statements.map((x) => `${x.paraphrase} (${x.code})`).join("; ");
    const signal = s.signalWord === undefined ? "" : `${s.signalWord.toUpperCase()}: `;
    const said = s.status === "classified" ? signal + statements : unclassified(s);
    const own = s.cautions.length === 0 ? "" : ` ${s.cautions.join("; ")}.`;
    return `${name}: ${said}.${own} Waste: ${s.disposal}`;
  });
  const apart = cautions.incompatibilities.map(
    (one) =>
      `${one.materials.map(pretty).join(" and ")}: ${one.what}${one.condition === undefined ? "" : ` (${one.condition})`}.`,
  );
  // What the work itself asks for; the substances have their lines above.
  const ofTheWork = stepCautions.flatMap(({ step, cautions: all }) => {
    const own = all.filter((one) => one.about === undefined);
    return own.length === 0 ? [] : [{ step, own }];
  });
  const grounds = [...new Set(ofTheWork.flatMap(({ own }) => own.map((one) => one.citation)))];
  return [
    { kind: "heading", level: 2, text: "Cautions" },
    { kind: "list", items },
    ...(apart.length === 0
      ? []
      : ([
          { kind: "paragraph", text: "Together:" },
          { kind: "list", items: [...new Set(apart)] },
        ] as const)),
    ...(ofTheWork.length === 0
      ? []
      : ([
          { kind: "paragraph", text: `Step by step (${grounds.join("; ")}):` },
          {
            kind: "list",
            items: ofTheWork.map(({ step, own }) => `${capital(step)}: ${own.map((one) => one.text).join("; ")}.`),
          },
        ] as const)),
    { kind: "paragraph", text: cautions.closing },
  ];
}

/** Planning values that the request does not give, by where they come from. */
export function assumptionBlocks({ assumptions }: Plan): Block[] {
  const citations = [...new Set(assumptions.map((one) => one.citation))];
  return [
    { kind: "heading", level: 2, text: "Assumptions" },
    {
      kind: "list",
      items: citations.map((citation) => {
        const values = assumptions.filter((one) => one.citation === citation);
        return `${values.map(({ value, what }) => `${value.replace(" /h", " per hour")} (${what})`).join("; ")}: ${citation}.`;
      }),
    },
  ];
}

/** The published ground the sheet stands on, each source once. */
export function sourceBlocks(plan: Plan): Block[] {
  const dissolving = plan.feeds.flatMap((feed) => (feed.how === "dissolve" ? [feed.dissolving.solubility] : []));
  const liquor = (plan.liquor.check?.substances ?? []).map((s) => s.solubility);
  const product = plan.isolation.how === "crystallise" ? [plan.isolation.solubility] : [];
  const solubilities = [...dissolving, ...liquor, ...product].flatMap((s) =>
    s === undefined ? [] : [`solubility of ${pretty(s.formula)}: ${cite(s.source)}`],
  );
  const cautions = plan.cautions.substances.flatMap((s) =>
    s.citation === undefined ? [] : [`cautions: ${s.citation.replace(/, index \S+$/, "")}`],
  );
  const weights = explain(plan.product.theoreticalYield).sources.map((text) => `atomic weights: ${text}`);
  return [
    { kind: "heading", level: 2, text: "Sources" },
    { kind: "list", items: [...new Set([...weights, ...solubilities, ...cautions])] },
  ];
}

/** Figures that were other ones when the plan or run was saved. */
export function movedBlocks(moved: readonly MovedFigure[]): Block[] {
  if (moved.length === 0) return [];
  const items = moved.map(
    ({ what, was, now }) => `${what}: ${was ?? "not given"} then, ${now ?? "no longer given"} now.`,
  );
  return [
    { kind: "heading", level: 2, text: "Moved since it was saved" },
    { kind: "list", items },
  ];
}

export function planBlocks(plan: Plan): Block[] {
  return [
    { kind: "heading", level: 1, text: plan.title },
    { kind: "paragraph", text: plan.equation.toUnicode() },
    { kind: "paragraph", text: "Date ______________   By ______________   Batch ______________" },
    ...cautionBlocks(plan),
    ...weighingBlocks(plan),
    ...doingBlocks(plan),
    ...expectationBlocks(plan),
    ...leftoverBlocks(plan),
    ...costBlocks(plan),
    ...assumptionBlocks(plan),
    ...movedBlocks(plan.moved),
    ...(plan.unknown.length === 0
      ? []
      : ([
          { kind: "heading", level: 2, text: "Data missing" },
          { kind: "list", items: plan.unknown },
        ] as const)),
    ...sourceBlocks(plan),
  ];
}

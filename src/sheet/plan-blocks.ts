// The sheet of a plan, block by block in bench order: cautions first, then weigh, do, expect, cost, and what is not known.
import { tryParseFormula } from "../formula";
import { cite } from "../foundation";
import type { Plan } from "../preparation";
import { explain, type Quantity, quantity } from "../quantity";
import type { Block } from "./document";
import { about, handy, withUncertainty } from "./words";

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
    w.limiting ? "limits the yield" : `${about(w.excess, "%", 2)} over`,
  ]);
  const notes = plan.weighings.flatMap((w) => (w.note === undefined ? [] : [`${w.material}: ${w.note}`]));
  return [
    { kind: "heading", level: 2, text: "Weigh and measure" },
    { kind: "table", head: ["material", "true form", "take", "taken", ""], rows },
    ...(notes.length === 0 ? [] : [{ kind: "list", items: notes } as const]),
  ];
}

const celsius = (plan: Plan): string => about(plan.temperature, "°C", 2);

function dissolving(plan: Plan): string[] {
  const { headroom = 3 } = plan.request;
  return plan.feeds.map((feed) => {
    if (feed.how === "solution") return `Measure the ${feed.material}; it is a solution already.`;
    if (feed.how === "solid") return `Have the ${feed.material} ready: ${feed.why}.`;
    if (feed.how === "unknown") return `${feed.material}: the water to dissolve it is unknown (${feed.missing}).`;
    const { water, perHundredGramsWater } = feed.dissolving;
    const holds = `100 g of water holds ${about(perHundredGramsWater)} of the anhydrous salt at ${celsius(plan)}`;
    return water.isPositive()
      ? `Dissolve the ${feed.material} in ${handy(water)} of water: ${headroom} times what just dissolves it, crystal water counted (${holds}).`
      : `The ${feed.material} needs no water: its crystal water is enough (${holds}).`;
  });
}

function mixing(plan: Plan): string[] {
  const { gas, vessel, feeds, account, liquor } = plan;
  const other = account.supplied.find((s) => s.material !== account.limiting)?.material;
  const solid = feeds.find((feed) => feed.how === "solid")?.material;
  const [what, into] =
    solid === undefined ? [other, account.limiting] : [solid, feeds.find((f) => f.material !== solid)?.material];
  const steps: string[] = [];
  const room =
    vessel === undefined
      ? ""
      : ` Vessel: ${vessel.smallest === undefined ? `at least ${handy(vessel.needed)}` : `${handy(vessel.smallest, 1)} or larger`} (${handy(vessel.liquid)} of liquid at most; ${vessel.why}).`;
  if (what !== undefined && into !== undefined)
    steps.push(`Add the ${what} to the ${into} in small portions, stirring.${room}`);
  for (const g of gas) {
    const care = g.hood ? "under a hood only" : "keep the air moving";
    steps.push(
      `${handy(g.volume)} of ${g.formula} come off in all (${about(g.amount)}, at ${celsius(plan)} and ${about(plan.pressure, "kPa", 6)}): let the froth fall before the next portion; ${care}.`,
    );
  }
  if (liquor.water === undefined) return steps;
  const words = {
    yes: "stays dissolved",
    barely: "only just stays dissolved",
    no: "FALLS OUT",
    unknown: "may fall out",
  };
  const verdicts = (liquor.check?.substances ?? []).map((s) => {
    const share =
      s.saturation === undefined
        ? (s.missing ?? "no solubility known")
        : `${about(s.saturation, "%", 2)} of what the water can hold`;
    return `${s.formula} ${words[s.stays]} (${share})`;
  });
  if (verdicts.length > 0) steps.push(`The liquor then holds ${handy(liquor.water)} of water: ${verdicts.join("; ")}.`);
  return steps;
}

function isolating(plan: Plan): string[] {
  const { isolation, washing, product, liquor } = plan;
  if (isolation.how === "unknown") return [`How the product comes out is unknown: ${isolation.missing}.`];
  if (isolation.how === "crystallise") {
    const off = liquor.water?.minus(isolation.waterToSaturate);
    const saturated = `${handy(isolation.waterToSaturate)} of added water just holds all of the product at ${celsius(plan)}`;
    return [
      `${isolation.why}. Filter hot if anything is left undissolved.`,
      off?.isPositive()
        ? `Boil off more than ${handy(off)} of the ${handy(liquor.water!)} of water: ${saturated}, and crystals come only below that.`
        : `${saturated}.`,
      `Each 100 g of water left in the liquor keeps ${handy(isolation.keptByHundredGrams)} of ${product.formula}; it is not lost: boil down again for a second crop.`,
      "Dry at room temperature to constant mass: two weighings that differ by less than 0.2 % or two steps of the balance.",
    ];
  }
  const dry =
    "Dry to constant mass: two weighings half an hour apart that differ by less than 0.2 % or two steps of the balance.";
  if (washing === undefined) return ["Let it settle and filter; no salts to wash out are known.", dry];
  if ("missing" in washing) return [`Let it settle and filter. The wash schedule is unknown: ${washing.missing}.`, dry];
  const { plan: wash, salts } = washing;
  const perGram = about(wash.retainedVolume.dividedBy(product.theoreticalYield), "mL/g", 2);
  const residue = wash.residueAfter.at(-1) ?? wash.residueUnwashed;
  return [
    "Let it settle, pour off the clear liquor into the waste jar.",
    wash.washes === 0
      ? `No wash is needed: the cake holds ${about(residue, "g", 2)} of salts, the target is ${about(wash.target, "g", 2)}.`
      : `Wash ${wash.washes} times with ${handy(wash.washVolume)} of water each, stirring up and letting settle: ${salts.join(" and ")} in the cake go from ${about(wash.residueUnwashed, "g", 2)} to ${about(residue, "g", 2)} (target: at most ${about(wash.target, "g", 2)}).`,
    `Assumed: the cake holds ${handy(wash.retainedVolume, 2)} of liquor each time, ${perGram} of product. To check, weigh the wet cake. Wash water in all: ${handy(wash.totalWater, 2)}.`,
    dry,
  ];
}

export function doingBlocks(plan: Plan): Block[] {
  return [
    { kind: "heading", level: 2, text: "Do" },
    { kind: "list", ordered: true, items: [...dissolving(plan), ...mixing(plan), ...isolating(plan)] },
  ];
}

export function expectationBlocks(plan: Plan): Block[] {
  const rows = plan.candidates.map((c) => [
    c.formula,
    withUncertainty(c.theoreticalYield),
    c.wanted ? "wanted" : "if it came out as this",
  ]);
  return [
    { kind: "heading", level: 2, text: "Expect" },
    { kind: "table", head: ["dry product", "at 100 % yield", ""], rows },
    { kind: "paragraph", text: `Assumed: up to ${about(plan.handlingLoss, "%", 2)} may stay on filters and vessels.` },
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

/** A formula as printed, where the text is one. */
function pretty(material: string): string {
  const formula = tryParseFormula(material);
  return formula.ok ? formula.value.toUnicode() : material;
}

export function cautionBlocks({ cautions }: Plan): Block[] {
  const items = cautions.substances.map((s) => {
    const name = pretty(s.material);
    if (s.status === "no entry") return `${name}: no entry: read the safety data sheet. Waste: ${s.disposal}`;
    const statements = s.statements.map((x) => `${x.paraphrase} (${x.code})`).join("; ");
    const signal = s.signalWord === undefined ? "" : `${s.signalWord.toUpperCase()}: `;
    const said =
      s.status === "classified" ? signal + statements : "no hazard listed in the source, which is not the same as safe";
    const own = s.cautions.length === 0 ? "" : ` ${s.cautions.join("; ")}.`;
    return `${name}: ${said}.${own} Waste: ${s.disposal}`;
  });
  return [
    { kind: "heading", level: 2, text: "Cautions" },
    { kind: "list", items },
    { kind: "paragraph", text: cautions.closing },
  ];
}

/** The published ground the sheet stands on, each source once. */
export function sourceBlocks(plan: Plan): Block[] {
  const dissolving = plan.feeds.flatMap((feed) => (feed.how === "dissolve" ? [feed.dissolving.solubility] : []));
  const liquor = (plan.liquor.check?.substances ?? []).map((s) => s.solubility);
  const solubilities = [...dissolving, ...liquor].flatMap((s) =>
    s === undefined ? [] : [`solubility of ${s.formula}: ${cite(s.source)}`],
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

export function planBlocks(plan: Plan): Block[] {
  return [
    { kind: "heading", level: 1, text: plan.title },
    { kind: "paragraph", text: plan.equation.toUnicode() },
    { kind: "paragraph", text: "Date ______________   By ______________   Batch ______________" },
    ...cautionBlocks(plan),
    ...weighingBlocks(plan),
    ...doingBlocks(plan),
    ...expectationBlocks(plan),
    ...costBlocks(plan),
    ...(plan.unknown.length === 0
      ? []
      : ([
          { kind: "heading", level: 2, text: "Not known" },
          { kind: "list", items: plan.unknown },
        ] as const)),
    ...sourceBlocks(plan),
  ];
}

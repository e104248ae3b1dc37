// The work itself, step by step: dissolve, mix, keep the pace, let it age, filter, wash, dry.
import type { Plan } from "../preparation";
import type { Quantity } from "../quantity";
import type { Block } from "./document";
import { about, handy, lasting, pretty, sentence, times } from "./words";

const celsius = (plan: Plan): string => about(plan.temperature, "°C", 2);

function dissolving(plan: Plan): string[] {
  const { headroom = 3 } = plan.request;
  return plan.feeds.map((feed) => {
    if (feed.how === "solution") return `Measure the ${feed.material}; it needs no water of its own.`;
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
  const { order } = plan.procedure;
  if (what !== undefined && into !== undefined)
    steps.push(`Add the ${what} to the ${into} in small portions, stirring: ${order}.${room}`);
  else steps.push(`${sentence(order)}${room}`);
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
    return `${pretty(s.formula)} ${words[s.stays]} (${share})`;
  });
  if (verdicts.length > 0) steps.push(`The liquor then holds ${handy(liquor.water)} of water: ${verdicts.join("; ")}.`);
  return steps;
}

/** Below this nobody feels it. */
const NOTICEABLE = 2;

/** "warms by 13 K" or "cools by 13 K"; undefined when nobody would notice. */
function warming(rise: Quantity): string | undefined {
  const kelvin = rise.in("ΔK").toNumber();
  if (Math.abs(kelvin) < NOTICEABLE) return undefined;
  const size = about(kelvin > 0 ? rise : rise.negated(), "ΔK", 2).replace("ΔK", "K");
  return `${kelvin > 0 ? "warms" : "cools"} by at most ${size}`;
}

/** How warm or cold the solutions get as the feeds dissolve. */
const dissolvingHeat = (plan: Plan): string[] =>
  plan.dissolvingHeat.flatMap((one) => {
    const words = "missing" in one ? undefined : warming(one.rise.rise);
    return words === undefined ? [] : [`The water ${words} as the ${one.material} dissolves.`];
  });

/** How fast to add, and how warm it gets. */
function pacing(plan: Plan): string[] {
  const { pace, heat } = plan;
  const steps: string[] = [];
  if (pace !== undefined) {
    const share = pace.atOnce
      .map(
        (g) =>
          `${g.formula} ${about(g.share, "%", 2)}${g.limit === undefined ? "" : ` (keep under ${about(g.limit, "%", 2)})`}`,
      )
      .join(", ");
    const least = pace.leastTime && lasting(pace.leastTime);
    const time = least === undefined ? "" : ` Take at least ${least}.`;
    steps.push(
      `At least ${pace.portions} portions: one gives ${handy(pace.gasPerPortion)} of gas, the headspace is ${handy(pace.headspace)}. All at once it would make up this share of the air of the room: ${share}.${time}`,
    );
  }
  if ("rise" in heat) {
    const words = warming(heat.rise.rise);
    if (words !== undefined)
      steps.push(
        `It ${words} if mixed all at once.${heat.rise.warnings.length === 0 ? "" : ` It ${heat.rise.warnings.join("; ")}.`}`,
      );
  }
  return steps;
}

/** What the liquor keeps, and what airing changes. */
function staysText({
  dissolved,
  fallsOut,
  pH,
  aired,
}: Extract<NonNullable<Plan["completeness"]>, { dissolved: unknown }>): string {
  if (pH === undefined)
    return ` As much pure water keeps ${about(dissolved, "g", 2)} of product; acid, ammonium or CO2 of this reaction keep more in solution.`;
  const percent = (q: Quantity): string => q.format({ significant: 3, uncertainty: "none" });
  const changes =
    aired !== undefined && Math.abs(aired.fallsOut.minus(fallsOut).in("%").toNumber()) > 2
      ? ` Stirred open or warmed until the carbon dioxide has gone: ${percent(aired.fallsOut)}.`
      : "";
  return ` At equilibrium (pH about ${pH.format({ decimals: 1, uncertainty: "none" })}) ${percent(fallsOut)} of the product falls out; ${about(dissolved, "g", 2)} stays in the liquor.${changes}`;
}

/** What to do before filtering: digestion, and the test for complete precipitation. */
function ageing({ procedure, completeness }: Plan): string[] {
  const steps: string[] = [];
  if (procedure.digestion !== undefined) steps.push(sentence(procedure.digestion));
  if (completeness !== undefined) {
    const share =
      "dissolved" in completeness ? staysText(completeness) : ` ${sentence(`${completeness.missing} is not known`)}`;
    steps.push(`${sentence(completeness.test)}${share}`);
  }
  return steps;
}

/** How warm the product may get, with the criterion of constant mass. */
function dryingLine({ drying }: Plan): string {
  const limit =
    drying.upTo === undefined
      ? `Dry at room temperature: the ${drying.missing} is not known.`
      : `Dry at no more than ${about(drying.upTo, "°C", 3)} (${drying.why}; from memory).`;
  const runs = drying.deliquescent ? " It runs in moist air: desiccator, and bottle it warm." : "";
  return `${limit}${runs} Constant mass: two weighings half an hour apart that differ by less than 0.2 % or two steps of the balance.`;
}

function isolating(plan: Plan): string[] {
  const { isolation, washing, product, liquor } = plan;
  if (isolation.how === "residue") return [`${isolation.why}.`, dryingLine(plan)];
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
      dryingLine(plan),
    ];
  }
  const dry = dryingLine(plan);
  if (washing === undefined) return ["Let it settle and filter; no salts to wash out are known.", dry];
  if ("missing" in washing) return [`Let it settle and filter. The wash schedule is unknown: ${washing.missing}.`, dry];
  const { plan: wash, salts } = washing;
  const perGram = about(wash.retainedVolume.dividedBy(product.theoreticalYield), "mL/g", 2);
  const residue = wash.residueAfter.at(-1) ?? wash.residueUnwashed;
  return [
    "Let it settle, pour off the clear liquor into the waste jar.",
    wash.washes === 0
      ? `No wash is needed: the cake holds ${about(residue, "g", 2)} of salts, the target is ${about(wash.target, "g", 2)}.`
      : `Wash ${times(wash.washes)} with ${handy(wash.washVolume)} of water${wash.washes === 1 ? "" : " each"}, stirring up and letting settle: ${salts.join(" and ")} in the cake go from ${about(wash.residueUnwashed, "g", 2)} to ${about(residue, "g", 2)} (target: at most ${about(wash.target, "g", 2)}).`,
    `Assumed: the cake holds ${handy(wash.retainedVolume, 2)} of liquor each time, ${perGram} of product. To check, weigh the wet cake. Wash water in all: ${handy(wash.totalWater, 2)}.`,
    dry,
  ];
}

/** What else this kind of preparation is watched for; the test for complete precipitation is a step of its own. */
function watching({ checks, completeness }: Plan): Block[] {
  const items = checks.filter((one) => one.text !== completeness?.test).map(({ text }) => sentence(text));
  return items.length === 0
    ? []
    : [
        { kind: "heading", level: 2, text: "Watch" },
        { kind: "list", items },
      ];
}

export function doingBlocks(plan: Plan): Block[] {
  return [
    { kind: "heading", level: 2, text: "Do" },
    {
      kind: "list",
      ordered: true,
      items: [
        ...dissolving(plan),
        ...dissolvingHeat(plan),
        ...mixing(plan),
        ...pacing(plan),
        ...ageing(plan),
        ...isolating(plan),
      ],
    },
    ...watching(plan),
  ];
}

// The label of a bottle: what is in it, how much, from what, how sure, how to keep it, and what to mind.

import type { Fields } from "../foundation/argument";
import { attempt, type Result } from "../foundation/error";
import type { Plan, Run } from "../preparation";
import type { Quantity } from "../quantity";
import { cautions } from "../substance";
import { type Block, render, type SheetFormat } from "./document";
import { FORMATS, guard, SheetError } from "./error";
import { about, handy, withUncertainty } from "./words";

/** What only the person at the bench knows. */
export interface LabelOptions {
  readonly format?: SheetFormat | undefined;
  readonly date?: string | undefined;
  readonly batch?: string | undefined;
  readonly owner?: string | undefined;
}

const OPTIONS = { format: true, date: true, batch: true, owner: true } as const satisfies Fields<LabelOptions>;

const LINE = "__________";

/** Mass and purity as far as they are known. */
function contentOf(of: Plan | Run): string[] {
  if (of.kind === "plan") return [`planned: ${handy(of.product.theoreticalYield)} at 100 % yield`];
  const { dryMass, percentYield, dryness } = of;
  if (dryMass === undefined) return ["mass: not weighed"];
  const dry =
    dryness.constant === true ? ", dried to constant mass" : dryness.constant === false ? ", NOT at constant mass" : "";
  const { assay } = of.asMaterial();
  return [
    `${withUncertainty(dryMass)}${dry}`,
    ...(assay === undefined ? [] : [`assay, estimated: ${withUncertainty(assay as Quantity)}`]),
    ...(percentYield === undefined ? [] : [`yield ${about(percentYield, "%", 3)}`]),
  ];
}

/**
 * A label for the bottle of what was made: formula with its water, mass, origin, assay, drying, hazards.
 *
 * @param of - a run, or a plan for a label written beforehand
 * @param options - `date`, `batch`, `owner`; lines to fill in where they are left out; `format` as for `benchSheet`
 * @returns the label as text in that format
 * @throws {SheetError} `sheet.format`, `sheet.unknown-option`, `sheet.subject`
 * @category Sheet
 * @example
 * const plan = planPreparation({
 *   equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
 *   product: "CaCO3",
 *   materials: [{ name: "de-icer", form: "CaCl2·2H2O" }, { name: "soda ash", form: "Na2CO3", excess: "5 %" }],
 *   scale: { product: "20 g" },
 * });
 * bottleLabel(evaluateRun(plan, { dried: "19.0 g" }), { date: "1 May" }).split("\n")[0] // => "CaCO₃"
 */
export function bottleLabel(of: Plan | Run, options: LabelOptions = {}): string {
  guard.fields(options, OPTIONS);
  const { format = "text", date = LINE, batch = LINE, owner = LINE } = options;
  guard.choice(format, "format", FORMATS);
  for (const [argument, value] of Object.entries({ date, batch, owner })) guard.text(value, argument);
  if (of?.kind !== "plan" && of?.kind !== "run")
    throw new SheetError("sheet.subject", "a label is made from a plan or a run");
  const plan = of.kind === "plan" ? of : of.plan;
  const { product } = of;
  const known = cautions([product.formula.normalize("NFKC")]);
  const said = known.substances.flatMap((s) => {
    if (s.status === "no entry") return ["hazards: no entry; read the safety data sheets of what it is made from"];
    const signal = s.signalWord === undefined ? "" : `${s.signalWord.toUpperCase()}: `;
    const statements = s.statements.map((x) => `${x.paraphrase} (${x.code})`).join("; ");
    return [
      s.status === "classified" ? signal + statements : "no hazard listed in the source, which is not the same as safe",
    ];
  });
  const { upTo, deliquescent } = plan.drying;
  const keep = deliquescent ? ["keep tightly closed: deliquescent"] : [];
  const warm = upTo === undefined ? [] : [`do not warm above ${about(upTo, "°C", 3)}`];
  const name = product.name === product.formula ? [] : [product.name];
  const from = plan.materialBalance.supplied.map((s) => s.material).join(", ");
  const blocks: Block[] = [
    { kind: "heading", level: 1, text: product.formula },
    {
      kind: "list",
      items: [...name, ...contentOf(of), `from ${from}`, ...warm, ...keep, ...new Set(said)],
    },
    { kind: "paragraph", text: `Date ${date}   Batch ${batch}   ${owner}` },
    { kind: "paragraph", text: known.closing },
  ];
  return render(blocks, format);
}

/**
 * As `bottleLabel`, but gives the refusal back as data.
 *
 * @category Sheet
 * @example
 * tryBottleLabel({} as never).ok // => false
 */
export const tryBottleLabel = (of: Plan | Run, options: LabelOptions = {}): Result<string> =>
  attempt(() => bottleLabel(of, options));

// The label of a bottle: what is in it, how much, from what, how sure, how to keep it, and what to mind.

import { parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { attempt, type Result } from "../../foundation/error";
import { type Facts, lookingIn } from "../../foundation/facts";
import type { Plan, Run } from "../../preparation";
import { isAirless, isKeptDark } from "../../preparation/internal";
import { type MassText, type Quantity, type QuantityLike, quantity, type VolumeText } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { type Cautions, cautions, type MaterialOfStrength, type SubstanceCautions, substance } from "../../substance";
import { officialPrecautions } from "../../substance/internal";
import type { SheetFormat } from "../document/blocks";
import { FORMATS, formatGuard, guard, SheetError, type SheetRefusal } from "../error";
import { about, handy, pretty } from "../figures";
import {
  besideOnLabel,
  drawsFromAir,
  expectedOf,
  handFor,
  massWithUncertainty,
  warmestOf,
  weighedAs,
} from "../plan/context";
import { ownCautions, statementsOf } from "../plan/hazards";
import { filled, type SheetWords } from "../words";
import { wordsInUse } from "../words-in-use";
import { type Label, type LabelSize, labelHTML, labelText } from "./label";
import { liquorOnLabel } from "./liquor-label";

/** What a label may be for: what a plan or run makes, or any substance by name or formula. */
export type LabelSubject = Plan | Run | string;

/** What only the person at the bench knows. */
export interface LabelOptions {
  /** Kind of text that the label is written in. */
  readonly format?: SheetFormat | undefined;
  /** Of HTML; "100 x 62 mm" unless given. */
  readonly size?: LabelSize | undefined;
  /** Printed as given; a blank to fill in where left out. */
  readonly date?: string | undefined;
  /** Printed as given; a blank to fill in where left out. */
  readonly batch?: string | undefined;
  /** Printed as given; a blank to fill in where left out. */
  readonly owner?: string | undefined;
  /** What is in the bottle, for a substance that no plan or run knows. */
  readonly content?: QuantityLike<"mass" | "volume", MassText | VolumeText> | undefined;
  /** Mass fraction of a solution, such as "5 %". */
  readonly strength?: string | undefined;
  /** Facts of the caller's own; those of a plan or run are its own already. */
  readonly facts?: Facts | undefined;
  /** Fixed words in another language, in place of the English ones. */
  readonly words?: Partial<SheetWords> | undefined;
}

const OPTIONS = {
  format: true,
  size: true,
  date: true,
  batch: true,
  owner: true,
  content: true,
  strength: true,
  facts: true,
  words: true,
} as const satisfies Fields<LabelOptions>;

const SIZES = ["100 x 62 mm", "60 x 30 mm"] as const;
const LINE = "__________";

type Texts = Pick<Label, "title" | "name" | "lines">;

/** Mass and purity as far as they are known. */
function contentOf(of: Plan | Run, words: SheetWords): string[] {
  const { isolation, keptLiquor } = of;
  if (isolation.how === "liquor")
    return [
      liquorOnLabel(of, words),
      ...(keptLiquor === undefined
        ? []
        : [
            filled(words.plannedLiquor, {
              mass: handFor({ plan: of.kind === "plan" ? of : of.plan, words }).grams(keptLiquor.mass),
            }),
          ]),
    ];
  if (of.kind === "plan") {
    const mass = weighedAs(of).theory ?? expectedOf(of).high;
    return [filled(words.plannedMass, { mass: handFor({ plan: of, words }).grams(mass) })];
  }
  const { dryMass, dryness, pureMass, plan } = of;
  const { formula, inPlace } = weighedAs(plan);
  const percentYield = inPlace ? of.yields.find((one) => one.formula === formula)?.percentYield : of.percentYield;
  if (dryMass === undefined) return [words.massNotWeighed];
  const dry = dryness.constant === undefined ? "{mass}" : dryness.constant ? words.driedConstant : words.notConstant;
  const assay = inPlace ? undefined : of.asMaterial().assay;
  return [
    filled(dry, { mass: massWithUncertainty(plan, dryMass) }),
    pureMass !== undefined
      ? filled(words.pure, { mass: massWithUncertainty(plan, pureMass) })
      : assay === undefined
        ? words.notAssayed
        : filled(words.assayEstimated, { assay: about(assay as Quantity, "%", 3) }),
    ...(percentYield === undefined ? [] : [filled(words.yieldOf, { share: about(percentYield, "%", 3) })]),
  ];
}

/** Of what was made. */
function ofProduct(of: Plan | Run, words: SheetWords): Texts {
  const plan = of.kind === "plan" ? of : of.plan;
  const { formula, inPlace } = weighedAs(plan);
  const name = inPlace ? formula : of.product.name;
  const isLiquor = plan.isolation.how === "liquor";
  const deliquescent = !isLiquor && plan.drying.deliquescent;
  const upTo = isLiquor ? undefined : warmestOf(plan);
  const from = plan.materialBalance.supplied.map(({ material }) => material).join(", ");
  return {
    title: formula,
    name: name === formula ? "" : name,
    lines: [
      ...contentOf(of, words),
      filled(words.madeFrom, { materials: from }),
      ...besideOnLabel({ plan, words }),
      ...(upTo === undefined
        ? []
        : [filled(words.notAbove, { temperature: upTo.format({ unit: "°C", decimals: 0, uncertainty: "none" }) })]),
      ...(isKeptDark(parseFormula(formula)) ? [words.keepDark] : []),
      ...(deliquescent ? [words.closeTightly] : drawsFromAir(plan) ? [words.keepClosed] : []),
      ...(!isLiquor && isAirless(parseFormula(formula)) ? [words.keepAirOut] : []),
    ],
  };
}

function massOrVolume(content: NonNullable<LabelOptions["content"]>): Quantity {
  const q = quantity(content as Quantity);
  return q.dimension === "volume" ? q : expectDimension(q, "mass", "content");
}

const isSolution = ({ remark }: { readonly remark?: string }): boolean => remark === "solution";

/** Of a substance by name or formula. */
function ofSubstance(text: string, { content, strength }: LabelOptions, words: SheetWords): Texts {
  const found = attempt(() => substance(text));
  const title = found.ok ? pretty(found.value.formula) : pretty(text);
  // in water hydrogen chloride is hydrochloric acid
  const dissolved = strength === undefined || !found.ok ? undefined : found.value.otherNames.find(isSolution)?.name;
  const name = dissolved ?? (found.ok ? (found.value.name ?? "") : "");
  const amount = content === undefined ? [] : [handy(massOrVolume(content))];
  return {
    title,
    name: name === title ? "" : name,
    lines: [...(strength === undefined ? [] : [strength]), ...amount, words.notAssayed],
  };
}

/** Signal word and statements in one sentence each. */
function saidOf(one: SubstanceCautions, words: SheetWords): string {
  if (one.status === "food")
    return one.additive === undefined ? words.food : filled(words.additive, { number: one.additive });
  if (one.status === "not listed") return words.notListed;
  if (one.status === "not looked up" || one.status === "not read") return words.notLookedUp;
  if (one.status === "not classified") return one.strength === undefined ? words.noClass : words.dilute;
  return statementsOf(one);
}

/** More than this nobody reads on a bottle. */
const MOST_PRECAUTIONS = 3;

/** Precautionary statements in their official words where a classification asks for any; else what is known here. */
function carefulOf(substances: readonly SubstanceCautions[]): string[] {
  const codes = substances.flatMap(({ statements }) => statements.map(({ code }) => code));
  const official = officialPrecautions(codes).map(({ code, text }) => `${text} (${code}).`);
  return (official.length > 0 ? official : [...new Set(substances.flatMap(ownCautions))]).slice(0, MOST_PRECAUTIONS);
}

/** The hazard part of a label, from what is known of what is in the bottle. */
function hazardsOf({ substances, closing }: Cautions, words: SheetWords): Omit<Label, keyof Texts | "foot"> {
  const seen = new Map(substances.flatMap(({ pictograms }) => pictograms.map((one) => [one.code, one.paraphrase])));
  const danger = substances.some(({ signalWord }) => signalWord === "Danger");
  const warning = substances.some(({ signalWord }) => signalWord === "Warning");
  return {
    signal: danger ? words.dangerWord : warning ? words.warningWord : "",
    pictograms: [...seen].map(([code, name]) => ({ code: code!, name: name! })),
    said: [...new Set(substances.map((one) => saidOf(one, words)))],
    careful: carefulOf(substances),
    closing,
  };
}

/**
 * A label for the bottle of what was made, or of any substance: formula with its water, mass, origin, assay, hazards.
 *
 * @param of - a run, a plan for a label written beforehand, or the name or formula of a substance
 * @param options - `date`, `batch`, `owner` (lines to fill in where they are left out), `content` and `strength` of a substance,
 *   `size` of a label in HTML, `format` as for `benchSheet`
 * @returns the label as text in that format; HTML is a whole document of one label with its pictograms
 * @throws {SheetError} `sheet.format`, `sheet.bad-option`, `sheet.unknown-option`, `sheet.subject`
 * @category Sheet
 * @example
 * const plan = planPreparation({
 *   equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
 *   product: "CaCO3",
 *   materials: [{ name: "de-icer", form: "CaCl2·2H2O" }, { name: "soda ash", form: "Na2CO3", excess: "5 %" }],
 *   scale: { product: "20 g" },
 * });
 * bottleLabel(evaluateRun(plan, { dried: "19.0 g" }), { date: "1 May" }).split("\n")[0] // => "CaCO₃"
 * bottleLabel("blue vitriol", { content: "250 g" }).split("\n")[0] // => "CuSO₄·5H₂O"
 */
export function bottleLabel(of: LabelSubject, options: LabelOptions = {}): string {
  guard.fields(options, OPTIONS);
  const { format = "text", size = "100 x 62 mm", date = LINE, batch = LINE, owner = LINE } = options;
  formatGuard.choice(format, "format", FORMATS);
  guard.choice(size, "size", SIZES);
  for (const [argument, value] of Object.entries({ date, batch, owner })) guard.text(value, argument);
  if (options.strength !== undefined) guard.text(options.strength, "strength");
  const words = wordsInUse(options.words);
  const facts =
    options.facts ?? (typeof of === "string" ? undefined : (of?.kind === "run" ? of.plan : of)?.request?.facts);
  return lookingIn(facts, guard, () => written());

  function written(): string {
    const foot = [`${words.date} ${date}`, `${words.batch} ${batch}`, `${words.by} ${owner}`];
    const label: Label =
      typeof of === "string"
        ? {
            ...ofSubstance(of, options, words),
            ...hazardsOf(
              cautions([options.strength === undefined ? of : { material: of, strength: options.strength }]),
              words,
            ),
            foot,
          }
        : {
            ...ofProduct(made(of), words),
            ...hazardsOf(cautions(insideOf(of)), words),
            foot,
          };
    return format === "html" ? labelHTML(label, size, words.language) : labelText(label, format);
  }
}

/** What the hazards of a bottle come from: the product, or each solute of a liquor at its strength. */
function insideOf(of: Plan | Run): (string | MaterialOfStrength)[] {
  const { keptLiquor } = of;
  if (keptLiquor === undefined) return [weighedAs(of.kind === "plan" ? of : of.plan).formula.normalize("NFKC")];
  const { key, strength, also } = keptLiquor;
  return [{ key, share: strength }, ...also].map((one) => ({
    material: one.key,
    strength: `${one.share.in("%").toNumber()} %`,
  }));
}

function made(of: Plan | Run): Plan | Run {
  if (of?.kind === "plan" || of?.kind === "run") return of;
  throw new SheetError("sheet.subject", "a label is made from a plan, a run, or the name or formula of a substance");
}

/**
 * As `bottleLabel`, but gives the refusal back as data.
 *
 * @category Sheet
 * @example
 * tryBottleLabel({} as never).ok // => false
 */
export const tryBottleLabel = (of: LabelSubject, options: LabelOptions = {}): Result<string, SheetRefusal> =>
  attempt(() => bottleLabel(of, options));

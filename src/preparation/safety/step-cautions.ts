// Cautions where they are needed: step by step of the work, from what is handled in each and from what the step does.

import { parseFormula } from "../../formula";
import { frozen } from "../../foundation/frozen";
import { withLazy } from "../../foundation/lazy";
import { readableInside } from "../../foundation/readable";
import { list } from "../../foundation/wording";
import type { Cautions, SubstanceCautions } from "../../substance";
import { protectionFor } from "../../substance/internal";
import { matterOf } from "../contents/matter";
import { EXTREME_PH } from "../data/extreme-ph";
import { cite, type SourceKey } from "../data/sources";
import type { WorkCautionRow, WorkCondition, WorkStep } from "../data/work-cautions";
import type { BatchFigures } from "../planning/batch-figures";
import { isAntisolvent } from "../reaction/fluids";
import { acidAfterLye } from "../reaction/neutralising";
import { nameOfFormula } from "../reaction/species";
import type { Setting } from "../request/setting";
import { type Acknowledged, asTheStepsSay } from "./acknowledged";
import type { ExtremeLiquor } from "./extreme-ph";
import { gasesThatMayCome } from "./gases-that-may-come";
import { type Handled, handledIn } from "./handled";
import { fumesOf } from "./ignition-fumes";
import { concerned, type Given, rowsThatHold } from "./work-conditions";

/** One caution with its ground. */
export interface StepCaution {
  /** Formula, or formulas that must not meet, as printed; undefined where the work itself asks for care. */
  readonly about: string | undefined;
  /** The caution itself, for a person to read. */
  readonly text: string;
  /** Key of the source; `cite` prints it. */
  readonly source: SourceKey;
  /** The source in words, with the index number of a classification. */
  readonly citation: string;
  /** Which adding it belongs to: where diluted acid is met, a solid goes into acid, gas leaves, or alcohol goes in; or to the first boiling down; undefined for each that reacts. */
  readonly adding?: "acid" | "solid" | "gas" | "alcohol" | "boiling";
  /** Where a pack beside the equation is put to what is in the vessel: the packs, and keys of what they must not meet. */
  readonly meets?: { readonly packs: readonly string[]; readonly keys: readonly string[] };
  /** What the step is done in, or worn, for it; undefined where it asks for none of that. */
  readonly asks?: "fume hood" | "vented kiln" | "gloves and apron" | "gloves";
}

/** A step of the work and what to mind in it. */
export interface StepCautions {
  /** Which part of the work. */
  readonly step: WorkStep;
  /** Formulas of what is handled, as printed. */
  readonly handled: readonly string[];
  /** Those of the work first, then of the substances that are handled in this step; under `waste` how to get rid of each. */
  readonly cautions: readonly StepCaution[];
}

const caution = (about: string | undefined, text: string, source: SourceKey, citation = cite(source)): StepCaution => ({
  about,
  text,
  source,
  citation,
});

/** Cautions of mixing that do not belong to every adding that reacts. */
const ADDING: Partial<Record<WorkCondition, StepCaution["adding"]>> = {
  "diluted acid": "acid",
  "solid into acid": "solid",
  gas: "gas",
  "gas led in": "gas",
  "gas through a trap": "gas",
  "gas for the hood": "gas",
  "flammable gas": "gas",
  "metal in lye": "gas",
  oxygen: "gas",
};

/** Cautions of isolating that belong to the step in which that is done, and not to the first. */
const ISOLATING: Partial<Record<WorkCondition, StepCaution["adding"]>> = {
  antisolvent: "alcohol",
  "boiled down": "boiling",
};

/** What the metal does in its lye, and not the acid that comes after. */
const isOfLye = ({ when }: WorkCautionRow, { setting }: Given): boolean =>
  when === "boils" && acidAfterLye(setting.materials) !== undefined;

/** The cautions of a row that holds: one for each material that it is about, or one for the work. */
function ofWork(row: WorkCautionRow, given: Given): StepCaution[] {
  const about = concerned(row, given)?.map(({ form }) => nameOfFormula(form)) ?? [undefined];
  const adding =
    row.step === "mixing"
      ? (ADDING[row.when] ?? (isOfLye(row, given) ? "gas" : undefined))
      : row.step === "isolating"
        ? ISOLATING[row.when]
        : undefined;
  return about.map((name) => ({
    ...caution(name, row.text, row.source),
    ...(adding === undefined ? {} : { adding }),
    ...(row.asks === undefined ? {} : { asks: row.asks }),
  }));
}

/** What the pH of a liquor makes of it. */
export function ofExtremePh({ harm, pH }: ExtremeLiquor): StepCaution {
  const { burns, harmsEyes, irritates, source } = EXTREME_PH;
  const [text, asks] =
    harm === "burns"
      ? ([burns, "gloves and apron"] as const)
      : harm === "harms eyes"
        ? ([harmsEyes, "gloves"] as const)
        : ([irritates, "gloves"] as const);
  return { ...caution(undefined, text.replace("{pH}", pH), source), asks };
}

/** What a test is done with that does harm. */
export function ofReagents(tests: readonly { readonly harm: string | undefined }[]): StepCaution[] {
  const harms = [...new Set(tests.flatMap(({ harm }) => (harm === undefined ? [] : [harm])))];
  return harms.length === 0 ? [] : [caution(undefined, `${list(harms)}; what was tested is waste`, "commonPractice")];
}

const saidOf = /* @__PURE__ */ new WeakMap<
  SubstanceCautions,
  { readonly name: string; readonly said: StepCaution[] }
>();

/** What the classification says and our own reminders, each with its own source; kept with the entry, which plans share. */
function ofSubstance(name: string, entry: SubstanceCautions): readonly StepCaution[] {
  const before = saidOf.get(entry);
  if (before?.name === name) return before.said;
  const said = frozen(wordsFor(name, entry), readableInside);
  saidOf.set(entry, { name, said });
  return said;
}

function wordsFor(name: string, entry: SubstanceCautions): StepCaution[] {
  const own = entry.cautions.map((text) => caution(name, text, entry.adviceSource));
  if (entry.source === undefined) return own;
  const signal = entry.signalWord === undefined ? "" : `${entry.signalWord}: `;
  const codes = entry.statements.map((one) => `${one.paraphrase} (${one.code})`).join("; ");
  const none =
    entry.strength === undefined && entry.dissolved !== true
      ? "no hazard listed in the source"
      : "too dilute for any statement of its class";
  const said = codes === "" ? `${none}, which is not the same as safe` : `${signal}${codes}`;
  const which = entry.strength ?? entry.form;
  const form = which === undefined ? "" : ` [${which}]`;
  return [caution(name, `${said}${form}`, entry.source, entry.citation), ...own];
}

/** Which step it is where materials and products come together. */
const meetsIn = ({ wet }: Setting): WorkStep => (wet ? "mixing" : "heating");

/** What an ignition test of the product gives off. */
const ofIgnition = ({ product: { formula, name } }: Setting): StepCaution[] =>
  // about the work, so that it stands where the test is offered
  (fumesOf(formula) ?? []).map((row) => caution(undefined, `${row.text} (${name})`, row.source));

/** Gases for the hood that no equation has and that may come all the same. */
function ofGasesThatMayCome(known: Cautions, { gas }: BatchFigures, { reactants }: Setting): StepCaution[] {
  const gases = gas.some(({ hood }) => hood) ? [] : gasesThatMayCome(known, reactants);
  if (gases.length === 0) return [];
  const text = `${list(gases)} may be given off, which is poisonous: under a hood that works, or not at all`;
  return [caution(undefined, text, "commonPractice")];
}

/** What materials and products do where they come together: what the caller has acknowledged first. */
function ofMeeting(
  { incompatibilities }: Cautions,
  acknowledged: readonly Acknowledged[],
  { asides, materials, products }: Setting,
  printed: (text: string) => string,
): StepCaution[] {
  const ofEquation = new Set([...materials.map(({ form }) => form.toString()), ...products.map(({ name }) => name)]);
  // what alcohol must not meet it meets where it goes in
  const last = new Set(asides.flatMap(({ form }) => (isAntisolvent(form) ? [form.toString()] : [])));
  const where = (about: readonly string[]): Pick<StepCaution, "adding" | "meets"> => {
    if (about.some((text) => last.has(text))) return { adding: "alcohol" };
    const own = asides.filter(({ form }) => about.includes(form.toString()) && !ofEquation.has(form.toString()));
    if (own.length === 0) return {};
    const others = about.filter((text) => own.every(({ form }) => form.toString() !== text));
    return {
      meets: {
        packs: own.map(({ shelf }) => shelf.name),
        keys: others.map((text) => matterOf(parseFormula(text)).core.key),
      },
    };
  };
  const meant = acknowledged.map((one) => ({
    ...caution(undefined, asTheStepsSay({ ...one, about: one.about.map(printed) }), one.source),
    ...where(one.about),
  }));
  const together = incompatibilities.map(({ materials, what, condition, source, citation }) => {
    const text = condition === undefined ? what : `${what} (${condition})`;
    return { ...caution(list(materials.map(printed)), text, source, citation), ...where(materials) };
  });
  return [...meant, ...together];
}

/** The cautions of a step are put together when they are looked at: some ask for heats that nothing else needs. */
export function stepCautionsOf(
  work: Omit<Given, "isDustDangerous">,
  known: Cautions,
  acknowledged: readonly Acknowledged[],
): StepCautions[] {
  const { setting, batch, handling } = work;
  const product = handling.product.formula.toString();
  const codes = known.substances
    .filter(({ material }) => material === product)
    .flatMap(({ statements }) => statements.map(({ code }) => code));
  const given: Given = { ...work, isDustDangerous: protectionFor(codes).some(({ kind }) => kind === "dust") };
  const steps = handledIn(given);
  // where each is handled first, and what it is called there
  const first = new Map<string, { readonly at: number; readonly name: string }>();
  steps.forEach(([, list], at) => {
    for (const { text, name } of list) if (!first.has(text)) first.set(text, { at, name });
  });
  const entriesFor = ({ text }: Handled): readonly SubstanceCautions[] =>
    known.substances.filter((entry) => entry.material === text);
  const printed = (text: string): string => first.get(text)?.name ?? text;
  return steps.map(([step, list], at) =>
    withLazy(
      { step },
      {
        handled: () => [...new Set(list.map((one) => one.name))],
        cautions: () =>
          unique([
            ...rowsThatHold(step, given).flatMap((row) => ofWork(row, given)),
            ...(step === "ignition test" ? ofIgnition(setting) : []),
            ...(step === meetsIn(setting)
              ? [...ofMeeting(known, acknowledged, setting, printed), ...ofGasesThatMayCome(known, batch, setting)]
              : []),
            ...list
              .filter(({ text }) => first.get(text)!.at === at)
              .flatMap((one) => entriesFor(one).flatMap((entry) => ofSubstance(one.name, entry))),
            ...(step === "waste" ? list : []).flatMap((one) =>
              entriesFor(one).map((entry) => caution(one.name, entry.disposal, entry.adviceSource)),
            ),
          ]),
      },
    ),
  );
}

/** The same words about the same thing once. */
function unique(cautions: readonly StepCaution[]): StepCaution[] {
  const seen = new Set<string>();
  return cautions.filter(({ about, text }) => {
    const key = `${about} ${text}`;
    return !seen.has(key) && seen.add(key) !== undefined;
  });
}

// The steps as they are handed out: one action each, with what is in the vessel before and after.

import { withLazy } from "../../foundation/lazy";
import { once } from "../../foundation/memo";
import type { Quantity, StrengthDimension } from "../../quantity";
import { type Contents, movedView } from "../contents/contents";
import type { Pot } from "../contents/pot";
import type { Operation } from "../operation/operation";
import { isAcid } from "../reaction/acids";
import { extremeLiquors } from "../safety/extreme-ph";
import { ofExtremePh, ofReagents, type StepCaution, type StepCautions } from "../safety/step-cautions";
import type { AcidDiluted } from "./acid-diluted";
import { isWetWithAlcohol } from "./alcohol";
import type { AtHand } from "./at-hand";
import { type Apparatus, type Care, type Draft, type Look, MOTHER, POT } from "./bench";
import type { MoreOf } from "./more-of";

/** What left a vessel in a step. */
export interface LeftContents {
  /** Which part of the contents left. */
  readonly what: "vapour" | "gas" | "filtrate" | "wash water" | "residue" | "dust";
  /** What was in that part. */
  readonly contents: Contents;
}

/** One step of the work. */
export interface ProcedureStep {
  /** What kind of work the step is. */
  readonly operation: Operation;
  /** One plain sentence, figures in it. */
  readonly text: string;
  /** The vessel worked on. */
  readonly vessel: string;
  /** The smallest usual vessel for the step, where that of the batch is too small for it. */
  readonly largerVessel: Quantity<"volume"> | undefined;
  /** The vessel that is emptied into it. */
  readonly from: string | undefined;
  /** Materials that are used in it, by their names in the request. */
  readonly materials: readonly string[];
  /** What to take for it. */
  readonly amounts: readonly (Quantity<"mass"> | Quantity<"volume">)[];
  /** Alcohol that it takes, or may take, and that no pack of the plan brings. */
  readonly alcohol: Quantity<"volume"> | undefined;
  /** Strong acid that is diluted for it, and that no pack of the plan brings. */
  readonly acidDiluted: AcidDiluted | undefined;
  /** Apparatus that it takes beside vessel, filter and oven. */
  readonly apparatus: Apparatus | undefined;
  /** Small things to have at hand for it, of which no pack of the plan brings any. */
  readonly atHand: readonly AtHand[];
  /** What a test is done with, of which no pack of the plan brings any. */
  readonly reagents: readonly string[];
  /** Product of another batch that it leaves with this one, as a rinse with its own solution does: weighed with it, and no yield. */
  readonly ofAnotherBatch: Quantity<"mass"> | undefined;
  /** Crystals that may come at most beside those of its contents, by ions that other salts share with the product; undefined for none. */
  readonly mayBring: Quantity<"mass"> | undefined;
  /** Dry crystals, below which the liquor that it keeps gives a second crop, where how much crystallises is not known. */
  readonly onceMoreBelow: Quantity<"mass"> | undefined;
  /** What it should come to: a temperature, a mass, a strength, a pH. */
  readonly target: Quantity<"temperature" | "mass" | "volume" | "number" | StrengthDimension> | undefined;
  /** What not to pass: the warmest, the shortest time. */
  readonly limit: Quantity<"temperature" | "time" | "mass" | "volume"> | undefined;
  /** What to mind in this step. */
  readonly cautions: readonly StepCaution[];
  /** The observation of a run that it takes. */
  readonly blank: string | undefined;
  /** What a test is answered with where it has words of its own: what the end looks like, and what is before it; undefined for clear and cloudy. */
  readonly choices: readonly [done: string, shows: string] | undefined;
  /** What it takes of a pack of the plan that nobody weighs with the batch: to test with, to wash with. */
  readonly more: MoreOf | undefined;
  /** In the vessel when the step begins. */
  readonly before: Contents;
  /** In the vessel when the step ends. */
  readonly after: Contents;
  /** What came into the vessel: from another one, from the pack, from the tap or from the air. */
  readonly put: readonly Contents[];
  /** What left the vessel in the step; empty where nothing did. */
  readonly left: readonly LeftContents[];
}

type Adding = NonNullable<StepCaution["adding"]>;

const holdsAcid = ({ books }: Pot): boolean => books.dissolved.some(({ matter }) => isAcid(matter.formula));

/** The drafts in which each kind of adding is done; a kind that is in none has its cautions with every one that reacts. */
function addingsOf(drafts: readonly Draft[]): ReadonlyMap<Adding, readonly Draft[]> {
  const addings = drafts.filter(({ adds }) => adds !== undefined);
  const acid = addings.find(({ before, put }) => holdsAcid(before) || put.some(holdsAcid)) ?? addings[0];
  const solid = addings.find(({ adds, before }) => adds === "solid" && holdsAcid(before));
  const gas = drafts.filter(({ care, left }) => care === "mixing" && left.some(({ what }) => what === "gas"));
  const found = new Map<Adding, readonly Draft[]>([["solid", solid === undefined ? [] : [solid]]]);
  found.set("boiling", drafts.filter(({ operation }) => operation === "concentrate").slice(0, 1));
  if (acid !== undefined) found.set("acid", [acid]);
  if (gas.length > 0) found.set("gas", gas);
  return found;
}

/** What to mind in each part of the work. */
type PartCautions = ReadonlyMap<Care | StepCautions["step"], StepCautions>;

/** Alcohol or acetone goes in, or may. */
const takesAlcohol = ({ alcohol, operation, put }: Draft): boolean =>
  alcohol !== undefined || (operation !== "weigh" && put.some(isWetWithAlcohol));

const WATER_KEY = "H2O";

/** Is a pack beside the equation put to what it must not meet? */
const bringsTogether = (
  { operation, vessel, before, put, materials = [] }: Draft,
  meets: StepCaution["meets"],
): boolean =>
  meets !== undefined &&
  vessel === POT &&
  operation !== "weigh" &&
  materials.some((name) => meets.packs.includes(name)) &&
  [before, ...put].some(
    ({ books }) =>
      [...books.solids, ...books.dissolved].some(({ matter }) => meets.keys.includes(matter.core.key)) ||
      (books.water.isPositive() && meets.keys.includes(WATER_KEY)),
  );

/** Cautions that go where alcohol or another pack beside the equation is put in, or to the first boiling down, whatever part of the work that is. */
const isPlaced = ({ adding, meets }: StepCaution): boolean =>
  adding === "alcohol" || adding === "boiling" || meets !== undefined;

/** Cautions of a step: what alcohol asks for where it goes in, and the first boiling down, then those of its part of the work. */
function cautionsOf(
  draft: Draft,
  isFirst: boolean,
  parts: PartCautions,
  formulaOf: (material: string) => string | undefined,
  addings: ReadonlyMap<Adding, readonly Draft[]>,
): StepCaution[] {
  const isHere = ({ adding, meets }: StepCaution): boolean =>
    bringsTogether(draft, meets) ||
    (adding === "alcohol" && takesAlcohol(draft)) ||
    (adding === "boiling" && addings.get("boiling")?.includes(draft) === true);
  const own = [...parts.values()].flatMap(({ cautions }) => cautions.filter(isHere));
  return [...own, ...ofPart(draft, isFirst, parts, formulaOf, addings).filter((one) => !isPlaced(one))];
}

/** Cautions of a part of the work: those of a step's own materials, or all where the step is the first of its part or mixes. */
function ofPart(
  draft: Draft,
  isFirst: boolean,
  parts: PartCautions,
  formulaOf: (material: string) => string | undefined,
  addings: ReadonlyMap<Adding, readonly Draft[]>,
): StepCaution[] {
  const { care, materials = [] } = draft;
  const mixing = parts.get("mixing")?.cautions ?? [];
  const isHere = (adding: Adding): boolean => addings.get(adding)?.includes(draft) ?? false;
  const here = mixing.filter(({ adding }) => adding !== undefined && isHere(adding));
  if (here.length > 0 && care !== "mixing") return here;
  const part = parts.get(care);
  if (part === undefined) return [];
  if (care === "mixing")
    return part.cautions.filter(({ adding }) => adding === undefined || isHere(adding) || !addings.has(adding));
  if (care !== "weighing" && care !== "dissolving") return isFirst ? [...part.cautions] : [];
  const formulas = materials.map(formulaOf);
  return part.cautions.filter(({ about }) => (about === undefined ? isFirst : formulas.includes(about)));
}

/** What of a step is worked out when it is looked at. */
type WorkedOut = "text" | "largerVessel" | "atHand" | "limit" | "cautions" | "before" | "after" | "put" | "left";

export function stepsOf(
  drafts: readonly Draft[],
  look: Look,
  cautions: () => readonly StepCautions[],
  formulaOf: (material: string) => string | undefined,
): readonly ProcedureStep[] {
  const seen = new Set<Care>();
  const addings = once(() => addingsOf(drafts));
  const extremes = once(() => extremeLiquors(drafts));
  const parts = once((): PartCautions => new Map(cautions().map((part) => [part.step, part])));
  return drafts.map((draft) => {
    const isFirst = draft.care !== undefined && !seen.has(draft.care);
    seen.add(draft.care);
    const { operation, vessel, from, materials = [], amounts = [], alcohol, acidDiluted, apparatus } = draft;
    const { ofAnotherBatch, mayBring, onceMoreBelow, target, blank, choices, more, tests = [] } = draft;
    return withLazy<Omit<ProcedureStep, WorkedOut>, Pick<ProcedureStep, WorkedOut>>(
      {
        operation,
        vessel,
        from,
        materials: [...materials],
        amounts: [...amounts],
        alcohol,
        acidDiluted,
        apparatus,
        reagents: [...new Set(tests.flatMap(({ takes }) => takes))],
        ofAnotherBatch,
        mayBring,
        onceMoreBelow,
        target,
        blank,
        choices,
        more,
      },
      {
        text: () => draft.say(look),
        largerVessel: () => draft.largerVessel?.(look),
        atHand: () => [...((typeof draft.atHand === "function" ? draft.atHand(look) : draft.atHand) ?? [])],
        limit: () => draft.limit?.(look),
        cautions: () => {
          const extreme = extremes().get(draft);
          const own = cautionsOf(draft, isFirst, parts(), formulaOf, addings());
          return [...own, ...ofReagents(tests), ...(extreme === undefined ? [] : [ofExtremePh(extreme)])];
        },
        before: () => draft.before.contents,
        after: () => draft.after.contents,
        put: () => draft.put.map(movedView),
        left: () => draft.left.map(({ what, pot }) => ({ what, contents: movedView(pot) })),
      },
    );
  });
}

/** Crystals that the mother liquor gives, once it is boiled down and cooled. */
export const isSecondCrop = ({ operation, vessel }: Pick<ProcedureStep, "operation" | "vessel">): boolean =>
  operation === "cool" && vessel === MOTHER;

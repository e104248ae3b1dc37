// The bench sheet: one preparation on paper, so that another person can follow it safely. Every figure is the plan's or
// the run's own; this layer only chooses words, order and digits.
import type { Fields } from "../foundation/argument";
import { attempt, type Result } from "../foundation/error";
import { type Facts, under } from "../foundation/facts";
import type { Chain, Plan, Run } from "../preparation";
import type { Route } from "../route";
import { chainBlocks } from "./chain/chain";
import { classBlocks, type Groups } from "./class/class";
import type { Block, SheetFormat } from "./document/blocks";
import { render } from "./document/render";
import type { Page } from "./document/style";
import { FORMATS, formatGuard, guard, SheetError, type SheetRefusal } from "./error";
import { planBlocks, type SheetPart } from "./plan/plan";
import { routeBlocks } from "./route/route";
import { runBlocks } from "./run/run";
import type { SheetWords } from "./words";
import { wordsInUse } from "./words-in-use";

/** How a sheet is written. */
export interface SheetOptions {
  /** Text of 78 columns unless given. */
  readonly format?: SheetFormat | undefined;
  /** Paper of a whole document in HTML: "A4" unless given. */
  readonly page?: Page | undefined;
  /** Of a plan: "bench" for the work, "basis" for assumptions, cost and sources; both unless given. */
  readonly parts?: readonly SheetPart[] | undefined;
  /** Of a plan: a class that works it in groups. Their number or their names; the first page is the teacher's. */
  readonly groups?: Groups | undefined;
  /** HTML as a whole document (true unless given), or as a fragment whose rules hang on the class `bench-sheet`. */
  readonly standalone?: boolean | undefined;
  /** CSS rules that come after those of the sheet. */
  readonly stylesheet?: string | undefined;
  /** Fixed words in another language, in place of the English ones. */
  readonly words?: Partial<SheetWords> | undefined;
}

const OPTIONS = {
  format: true,
  page: true,
  parts: true,
  groups: true,
  standalone: true,
  stylesheet: true,
  words: true,
} as const satisfies Fields<SheetOptions>;

/** What there is a sheet of. */
export type SheetSubject = Plan | Run | Chain | Route;

/** What is asked of the blocks. */
interface Asked {
  readonly parts: readonly SheetPart[];
  readonly groups: Groups | undefined;
  readonly words: SheetWords;
}

const PAGES = ["A4", "Letter"] as const;
const PARTS = ["bench", "basis"] as const;

function checkedParts(parts: readonly SheetPart[]): readonly SheetPart[] {
  guard.list(parts, "parts");
  for (const part of parts) guard.choice(part, "parts", PARTS);
  return parts;
}

const MOST_GROUPS = 60;

function checkedGroups(groups: Groups | undefined, of: SheetSubject): Groups | undefined {
  if (groups === undefined) return undefined;
  if (typeof groups !== "number") {
    guard.list(groups, "groups");
    for (const [i, name] of groups.entries()) guard.text(name, `groups[${i}]`);
  }
  const count = typeof groups === "number" ? groups : groups.length;
  if (!(Number.isInteger(count) && count >= 1 && count <= MOST_GROUPS))
    throw new SheetError("sheet.bad-option", `groups must be 1 to ${MOST_GROUPS}, not ${count}`);
  if (of.kind !== "plan") throw new SheetError("sheet.bad-option", "groups work a plan, not a run or a chain");
  return groups;
}

/** The blocks of a sheet, by what it is of: a further kind of paper is one more line. */
function blocksOf(of: SheetSubject, { parts, groups, words }: Asked): Block[] {
  switch (of.kind) {
    case "plan":
      return groups === undefined ? planBlocks(of, parts, words) : classBlocks(of, groups, parts, words);
    case "run":
      return runBlocks(of, words);
    case "chain":
      return chainBlocks(of, parts, words);
    case "route":
      return routeBlocks(of, parts, words);
  }
}

const KINDS = ["plan", "run", "chain", "route"] as const satisfies readonly SheetSubject["kind"][];

/**
 * A preparation on paper: what is handled, what to have ready, weigh and do, what to write down, and what the mass says; for a
 * run the verdict first, what changed and what was observed; for a chain a shopping list and a sheet for each preparation;
 * for a route the trial of two grams first and a sheet for each step; for a class, with `groups`, a page for the teacher and the sheet of a group.
 *
 * @param of - a plan, a run, a chain or a route
 * @param options - `format`: "text" (78 columns, the default), "markdown" or "html"; `page`, `parts`, `groups`,
 *   `standalone`, `stylesheet` and `words`
 * @returns the sheet as text in that format; HTML is a whole document that prints, without scripts and without requests
 * @throws {SheetError} `sheet.format`, `sheet.bad-option`, `sheet.unknown-option`, `sheet.subject`
 * @category Sheet
 * @example
 * const plan = planPreparation({
 *   equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
 *   product: "CaCO3",
 *   materials: [{ name: "de-icer", form: "CaCl2·2H2O" }, { name: "soda ash", form: "Na2CO3", excess: "5 %" }],
 *   scale: { product: "20 g" },
 * });
 * benchSheet(plan).split("\n")[0] // => "CaCO₃ from de-icer and soda ash"
 * benchSheet(plan, { format: "html", parts: ["bench"] }).startsWith("<!doctype html>") // => true
 * benchSheet(plan, { groups: 8 }).split("\n")[0] // => "Class of 8 groups: CaCO₃ from de-icer and soda ash"
 */
export function benchSheet(of: SheetSubject, options: SheetOptions = {}): string {
  guard.fields(options, OPTIONS);
  const { format = "text", page = "A4", parts = PARTS, standalone = true, stylesheet } = options;
  formatGuard.choice(format, "format", FORMATS);
  guard.choice(page, "page", PAGES);
  guard.boolean(standalone, "standalone");
  if (stylesheet !== undefined) guard.text(stylesheet, "stylesheet");
  const words = wordsInUse(options.words);
  if (!KINDS.some((kind) => kind === of?.kind))
    throw new SheetError("sheet.subject", "a sheet is made from a plan, a run, a chain or a route");
  const groups = checkedGroups(options.groups, of);
  return under(factsBehind(of), () => written());

  function written(): string {
    const blocks = blocksOf(of, { parts: checkedParts(parts), groups, words });
    return render(blocks, format, {
      page,
      standalone,
      stylesheet,
      language: words.language,
      foot: { batch: words.batch, pages: words.pageOf },
      steps: { done: words.done, action: words.action, note: words.write },
    });
  }
}

/** The facts of the caller's own that a preparation was planned with. */
function factsBehind(of: SheetSubject): Facts | undefined {
  switch (of.kind) {
    case "plan":
      return of.request.facts;
    case "run":
      return of.plan.request.facts;
    case "chain":
      return of.request.facts;
    case "route":
      return of.steps[0]?.plan.request.facts;
  }
}

/**
 * As `benchSheet`, but gives the refusal back as data.
 *
 * @category Sheet
 * @example
 * tryBenchSheet({} as never).ok // => false
 */
export const tryBenchSheet = (of: SheetSubject, options: SheetOptions = {}): Result<string, SheetRefusal> =>
  attempt(() => benchSheet(of, options));

// What a request acknowledges as known and meant: the codes that open something, and what a plan says of them.
import { slips } from "../../foundation/slips";
import { list } from "../../foundation/wording";
import { everyRule } from "../../substance/internal";
import type { SourceKey } from "../data/sources";
import { PlanError } from "../error";
import { DOES_NOT_GO } from "../feasibility/feasibility";
import { OTHER_HYDRATE } from "../feasibility/form-in-water";
import type { PlanRequest } from "../request/request";

/** A danger that was known and meant. */
export interface Acknowledged {
  readonly code: string;
  /** Formulas as they were asked for. */
  readonly about: readonly string[];
  readonly what: string;
  readonly source: SourceKey;
}

/** Codes that may be acknowledged. */
const acknowledgeable = (): Set<string> =>
  new Set([
    ...everyRule()
      .filter((row) => row.severity === "forbid")
      .map((row) => row.code),
    "poison-gas",
    ...DOES_NOT_GO,
    OTHER_HYDRATE,
  ]);

/** The codes of a request, or an error: only a list of known codes opens anything. */
export function acknowledgedCodes({ acknowledge }: PlanRequest): readonly string[] {
  if (acknowledge === undefined) return [];
  if (!Array.isArray(acknowledge) || !acknowledge.every((code) => typeof code === "string"))
    throw new PlanError("plan.acknowledge", "acknowledge must be a list of codes", {
      hint: 'give the codes of what is known and meant: acknowledge: ["lead-acid"]',
    });
  const known = acknowledgeable();
  const unknown = acknowledge.find((code) => !known.has(code));
  if (unknown === undefined) return acknowledge;
  const near = [...known].filter((code) => slips(code, unknown.slice(0, 100), 3) <= 3);
  throw new PlanError("plan.acknowledge", `'${unknown.slice(0, 100)}' is not a code that can be acknowledged`, {
    hint:
      near.length > 0
        ? `did you mean ${list(near, "or")}?`
        : unknown === "explosive" || unknown === "deadly-gas"
          ? "explosives and deadly gases are never planned"
          : "the error that stopped the plan names the code",
  });
}

/** What was acknowledged, in words for plan and sheet. */
export const inWords = ({ about, what }: Acknowledged): string =>
  `acknowledged as known and meant: ${list(about)}, ${what}`;

/** The same in the step where they meet: that the danger is known makes it no aim. */
export const asTheStepsSay = ({ about, what }: Acknowledged): string =>
  `${list(about)}: ${what}; acknowledged, and only as the steps say`;

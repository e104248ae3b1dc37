// A route read back from the data it was written to: its reactions are looked up and judged again, so that its plans are those
// of the tables as they are now.
import { attempt } from "../foundation/error";
import { under } from "../foundation/facts";
import { headProblem } from "../foundation/record";
import { inItsFacts, revived, SHELF_MATERIAL, taken } from "../preparation/internal";
import type { Quantity } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { guard } from "./argument";
import { type Candidate, candidatesFor, changeOfWater } from "./candidates";
import { keyOf, madeOf } from "./compound";
import { draftOf } from "./draft";
import { RouteError } from "./error";
import { judge } from "./judge";
import { routeOf, SCHEMA } from "./route";
import { refuseTarget } from "./safety";
import type { Found, FoundStep } from "./search";
import { indexOf } from "./shelf";
import { readTrials } from "./tried";
import type { Route, RouteRecord, RouteStepRecord } from "./types";

const MOST_STEPS = 3;

const refuse = (problem: string): RouteError =>
  new RouteError("route.json", `not a route record: ${problem}`, { hint: "pass what toJSON gave, parsed" });

/** The reaction of a step: the one of its kind that makes its product from its materials. */
function candidateOf({ family, product, materials }: RouteStepRecord): Candidate {
  const forms = materials.map(({ form }) => String(form));
  const keys = forms.map(keyOf);
  const key = keyOf(product);
  const { all } = indexOf(materials, [product]);
  const compound = key === undefined ? undefined : all.byKey.get(key);
  if (compound === undefined) throw refuse(`what ${product.slice(0, 40)} is made of is not known`);
  if (family === "drive-water-off" || (family === "recrystallise" && keys[0] === key))
    return changeOfWater(compound, (madeOf(product)?.waters ?? 0) > (madeOf(forms[0]!)?.waters ?? 0));
  const found = candidatesFor(compound, all).find(
    (one) =>
      one.family.code === family &&
      one.feeds.length === keys.length &&
      one.feeds.every((feed, i) => feed.key === keys[i]),
  );
  if (found === undefined)
    throw refuse(`no reaction of the kind '${family.slice(0, 40)}' makes ${product.slice(0, 40)}`);
  return found;
}

function stepOf(record: RouteStepRecord, i: number): FoundStep {
  const place = `steps[${i}]`;
  guard.record(record, place);
  guard.text(record.family, `${place}.family`);
  guard.text(record.product, `${place}.product`);
  guard.listOf(record.materials, SHELF_MATERIAL, `${place}.materials`);
  const { materials } = record;
  const product = attempt(() => keyOf(record.product));
  if (!product.ok) throw refuse(`${place}.product cannot be read`);
  const candidate = candidateOf(record);
  const judgement = judge(candidate, record.product, materials);
  if (!judgement.ok)
    throw new RouteError("route.no-longer", `step ${i + 1} of the route is no longer one: ${judgement.text}`, {
      hint: "look for routes again",
    });
  return { candidate, judgement, materials, inLiquor: record.kept === "liquor" };
}

/**
 * A route from the record that `toJSON` wrote. Its plans, margins and evidence are computed again; its place in the ranking and
 * its swaps are those of the shelf it was found on.
 *
 * @param data - what `toJSON` gave, parsed
 * @throws {RouteError} `route.json` for anything else; `route.no-longer` where a step that went by the tables of another release
 *   does not go by these; `route.refused-target`; and the codes of `planPreparation`
 * @category Planning
 * @example
 * const [route] = findRoutes({ target: "CaO", shelf: [{ name: "chalk", form: "CaCO3" }] }).routes;
 * const again = routeFromJSON(JSON.parse(JSON.stringify(route)));
 * String(again) // => "CaO from chalk: one step"
 */
export function routeFromJSON(data: unknown): Route {
  const problem = headProblem(data, "route", SCHEMA);
  if (problem !== undefined) throw refuse(problem);
  return under(undefined, () => inItsFacts(revived(data as object), () => readBack(data)));
}

function readBack(data: unknown): Route {
  // the records of trials are read by those who wrote them
  const { trials: runs, ...others } = data as Partial<RouteRecord>;
  const { steps, wanted, temperature, rank, swaps } = taken(others);
  if (!Array.isArray(steps) || steps.length === 0 || steps.length > MOST_STEPS) throw refuse("no steps");
  if (wanted === undefined || rank === undefined || !Array.isArray(swaps))
    throw refuse("no wanted mass, rank or swaps");
  for (const { product } of steps as readonly RouteStepRecord[]) if (typeof product === "string") refuseTarget(product);
  const found: Found = { steps: steps.map(stepOf), kind: "", cost: 0 };
  const wish = {
    wanted: expectDimension(wanted as Quantity, "mass", "wanted") as Quantity<"mass">,
    temperature: temperature as Quantity<"temperature"> | undefined,
    trials: readTrials(runs),
  };
  const draft = draftOf(found, wish);
  const over = draft.planned.findIndex(({ tried }) => tried?.isOver === true);
  if (over >= 0)
    throw new RouteError("route.no-longer", `step ${over + 1} of the route is excluded by its own trials`, {
      hint: "look for routes again",
    });
  return routeOf(draft, rank, () => swaps);
}

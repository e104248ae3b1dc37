// What a product may hold beside itself. What packs that are stirred in as solids have besides may not dissolve either, and is then
// filtered off with it; the liquor that crystals keep dries into them.
import { parseFormula } from "../../formula";
import { type Quantity, sum } from "../../quantity";
import { matterOf } from "../contents/matter";
import { POT } from "../procedure/bench";
import { isVolatile } from "../reaction/fluids";
import type { Batch } from "./batch";
import { exact, isWorthAWord } from "./exact";

/** The most of it that a cake may hold; nothing where nothing precipitates, or where it is not worth a word. */
export function mayStayInCake({
  isolation,
  feeds,
  steps,
  product,
}: Pick<Batch, "isolation" | "feeds" | "steps" | "product">): Quantity {
  const nothing = exact("0 g");
  if (isolation.how !== "precipitate") return nothing;
  const stirredIn = feeds.filter((feed) => feed.how === "solid" && !feed.dissolves).map(({ material }) => material);
  const packs = steps.filter(
    ({ operation, materials }) => operation === "weigh" && materials.some((name) => stirredIn.includes(name)),
  );
  const rest = sum([nothing, ...packs.map(({ before, after }) => after.other.minus(before.other))]);
  return isWorthAWord(rest, product.theoreticalYield) ? rest : nothing;
}

/** Is there in the liquor that crystals keep on the filter, before any rinse, so much beside the product that it is worth a word? */
export function keepsSaltOfLiquor({
  isolation,
  steps,
  product,
}: Pick<Batch, "isolation" | "steps" | "product">): boolean {
  const cake = steps.find(
    ({ operation, vessel, blank }) => operation === "filter" && vessel === POT && blank === "wetCake",
  )?.after;
  if (isolation.how !== "crystallise" || cake === undefined) return false;
  const { core } = matterOf(parseFormula(product.formula));
  const salts = cake.dissolved
    .map(({ formula, amount }) => ({ matter: matterOf(parseFormula(formula)), amount }))
    .filter(({ matter }) => matter.key !== core.key && !isVolatile(matter.formula))
    .map(({ matter, amount }) => amount.times(matter.molarMass).to("g"));
  return isWorthAWord(sum([cake.other, ...salts]), sum([exact("0 g"), ...cake.solids.map(({ mass }) => mass)]));
}

// What packs that are stirred in as solids have besides: it may not dissolve either, and is then filtered off with the product.
import { type Quantity, sum } from "../../quantity";
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

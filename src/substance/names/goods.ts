// Goods that are no single substance, by name.
import { once } from "../../foundation/memo";
import { GOODS } from "../data/goods";
import { nameKey } from "./words";

const byName = /* @__PURE__ */ once(
  () => new Map(GOODS().flatMap((row) => row.names.map((name) => [nameKey(name), row] as const))),
);

export const goodNamed = (text: string): ReturnType<typeof GOODS>[number] | undefined => byName().get(nameKey(text));

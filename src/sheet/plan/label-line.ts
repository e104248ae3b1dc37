// What the label of the bottle is to say, in one line.
import { parseFormula } from "../../formula";
import { isAirless, isKeptDark } from "../../preparation/internal";
import type { Block } from "../document/blocks";
import { liquorOnLabel } from "../label/liquor-label";
import { filled } from "../words";
import { drawsFromAir, type OnPaper, warmestOf, weighedAs } from "./context";

export function labelBlocks({ plan, words }: OnPaper): Block[] {
  const upTo = warmestOf(plan);
  const { formula } = weighedAs(plan);
  const limit = [
    ...(upTo === undefined
      ? []
      : [filled(words.notAbove, { temperature: upTo.format({ unit: "°C", decimals: 0, uncertainty: "none" }) })]),
    ...(isKeptDark(parseFormula(formula)) ? [words.keepDark] : []),
    ...(plan.drying.deliquescent || drawsFromAir(plan) ? [words.keepClosed] : []),
    ...(isAirless(parseFormula(formula)) ? [words.keepAirOut] : []),
  ].join(", ");
  return [
    { kind: "heading", text: words.label },
    {
      kind: "paragraph",
      text: filled(words.labelLine, {
        product: plan.isolation.how === "liquor" ? liquorOnLabel(plan, words) : formula,
        limit,
      }).replace(/, $/, ""),
    },
    { kind: "blanks", items: [{ name: words.deviations }] },
  ];
}

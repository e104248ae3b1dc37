// What the label of the bottle is to say, in one line.
import { parseFormula } from "../../formula";
import { isAirless, isKeptDark } from "../../preparation/internal";
import { labelByKin, signalWordOf } from "../../substance/internal";
import type { Block } from "../document/blocks";
import { pretty } from "../figures";
import { liquorOnLabel } from "../label/liquor-label";
import { filled } from "../words";
import { besideOnLabel, drawsFromAir, type OnPaper, warmestOf, weighedAs } from "./context";

/** More than this nobody reads in one line. */
const MOST_STATEMENTS = 4;

/** Signal word and the first statements, those of danger before those of warning, of what is in the bottle; nothing where none are known. */
function hazardIn({ plan, words }: OnPaper, formula: string): string[] {
  const found = plan.cautions.substances.filter(({ material }) => pretty(material) === formula);
  const own = found.filter(({ signalWord }) => signalWord);
  const kin = found.some(({ status }) => status === "not listed" || status === "not looked up")
    ? labelByKin(formula)
    : undefined;
  if (own.length === 0 && kin !== undefined) return [kin];
  const all = own.flatMap(({ statements }) => statements);
  const isGrave = ({ code }: (typeof all)[number]): boolean => signalWordOf([code]) === "Danger";
  const said = [...new Set([...all.filter(isGrave), ...all].map(({ paraphrase }) => paraphrase))];
  if (said.length === 0) return [];
  const signal = own.some(({ signalWord }) => signalWord === "Danger") ? words.dangerWord : words.warningWord;
  return [`${signal}: ${said.slice(0, MOST_STATEMENTS).join("; ")}`];
}

export function labelBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  const upTo = warmestOf(plan);
  const { formula } = weighedAs(plan);
  const limit = [
    ...besideOnLabel(on),
    ...(upTo === undefined
      ? []
      : [filled(words.notAbove, { temperature: upTo.format({ unit: "°C", decimals: 0, uncertainty: "none" }) })]),
    ...(isKeptDark(parseFormula(formula)) ? [words.keepDark] : []),
    ...(plan.drying.deliquescent || drawsFromAir(plan) ? [words.keepClosed] : []),
    ...(isAirless(parseFormula(formula)) ? [words.keepAirOut] : []),
    ...hazardIn(on, formula),
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

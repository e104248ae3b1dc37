// The path of a crystallisation on its solubility curve: hot and clear, cooled to where it is filtered, and the drop to the
// curve, which is the crop.
import { parseFormula } from "../../formula";
import { drawnCurve } from "../../solubility/internal";
import { handFor, type OnPaper } from "../plan/context";
import { filled } from "../words";
import { marksBetween, picture, px, word } from "./svg";

const SIZE = { width: 420, height: 320, left: 50, right: 18, top: 16, bottom: 100 };

/** The picture of a plan that crystallises by cooling; undefined for any other. */
export function coolingPicture(on: OnPaper): string | undefined {
  const { plan, words } = on;
  const { crystallising } = plan;
  if (crystallising === undefined || "missing" in crystallising.cooling) return undefined;
  // the curve of one salt says nothing of a liquor that others thin, or that is boiled down beyond it
  const { water, intoCrystals, thinner, parted } = crystallising;
  if (water === undefined || intoCrystals || thinner !== 1 || parted !== undefined) return undefined;
  const { path, crop } = crystallising.cooling;
  const [hot, cooled, liquor] = [path[0], path[1], path.at(-1)];
  const branches = drawnCurve(crop.formula);
  if (hot === undefined || cooled === undefined || liquor === undefined || branches.length === 0) return undefined;
  const { width, height, left, right, top, bottom } = SIZE;
  const points = branches.flat();
  const [from, to] = [
    Math.min(0, ...points.map(({ celsius }) => celsius)),
    Math.max(hot.celsius + 5, ...points.map(({ celsius }) => celsius)),
  ];
  const most = Math.max(hot.grams * 1.25, ...points.filter((p) => p.celsius <= hot.celsius + 8).map((p) => p.grams));
  const [foot, edge] = [height - bottom, width - right];
  const x = (celsius: number): number => left + ((celsius - from) / (to - from)) * (edge - left);
  const y = (grams: number): number => top + (1 - grams / most) * (foot - top);
  // What rises above the grid is cut where it leaves it.
  const lines = branches
    .map((branch) => branch.filter((p) => p.grams <= most).map((p) => `${px(x(p.celsius))} ${px(y(p.grams))}`))
    .filter((line) => line.length > 1);
  const middle = (y(cooled.grams) + y(liquor.grams)) / 2;
  // Numbers stand where no line passes; what they mean stands under the axis.
  const numbers = [
    { text: "1", at: { x: x(hot.celsius) + 9, y: y(hot.grams) - 8 }, side: "start" },
    { text: "2", at: { x: x(cooled.celsius) - 9, y: middle + 4 }, side: "end" },
    { text: "3", at: { x: x(liquor.celsius) + 9, y: y(liquor.grams) + 17 }, side: "start" },
  ] as const;
  const mass = handFor(on).grams(crop.mass);
  const text = filled(words.coolingText, {
    formula: parseFormula(crop.formula).toUnicode(),
    hot: `${shown(hot.grams)} g`,
    hotAt: `${shown(hot.celsius)} °C`,
    cold: `${shown(liquor.grams)} g`,
    coldAt: `${shown(liquor.celsius)} °C`,
  });
  const parts = [
    ...marksBetween(0, most).flatMap((mark) => [
      `<path d="M${left} ${px(y(mark.at))}H${edge}" stroke="#ccc" stroke-width=".7"/>`,
      word(mark.text, { x: left - 6, y: y(mark.at) + 4, anchor: "end" }),
    ]),
    ...marksBetween(from, to).flatMap((mark) => [
      `<path d="M${px(x(mark.at))} ${foot}v5" stroke="#000"/>`,
      word(mark.text, { x: x(mark.at), y: foot + 18, anchor: "middle" }),
    ]),
    `<path d="M${left} ${top}V${foot}H${edge}" fill="none" stroke="#000" stroke-width="1.5"/>`,
    ...lines.map(
      (line) => `<path d="M${line.join("L")}" fill="none" stroke="#000" stroke-width="2" stroke-linejoin="round"/>`,
    ),
    `<path d="M${px(x(hot.celsius))} ${px(y(hot.grams))}L${px(x(cooled.celsius))} ${px(y(cooled.grams))}" stroke="#000" stroke-dasharray="6 4"/>`,
    `<path d="M${px(x(cooled.celsius))} ${px(y(cooled.grams))}V${px(y(liquor.grams))}" stroke="#777" stroke-width="7"/>`,
    `<circle cx="${px(x(hot.celsius))}" cy="${px(y(hot.grams))}" r="5" fill="#fff" stroke="#000" stroke-width="2"/>`,
    `<circle cx="${px(x(liquor.celsius))}" cy="${px(y(liquor.grams))}" r="5"/>`,
    ...numbers.map(({ text, at, side }) => word(text, { ...at, anchor: side, bold: true, halo: true })),
    word(words.temperatureAxis, { x: (left + edge) / 2, y: foot + 36, anchor: "middle" }),
    `<g transform="translate(14 ${px((top + foot) / 2)}) rotate(-90)">${word(words.solubilityAxis, { x: 0, y: 0, anchor: "middle" })}</g>`,
    `<path d="M${left} ${height - 38}h22" stroke="#000" stroke-width="2"/>`,
    word(words.solubility, { x: left + 28, y: height - 34 }),
    word(words.stageHot, { x: (left + edge) / 2, y: height - 34 }),
    word(filled(words.stageCrop, { mass }), { x: left, y: height - 14 }),
    word(words.stageLiquor, { x: (left + edge) / 2, y: height - 14 }),
  ];
  return picture(width, height, { title: words.cooling, text }, parts);
}

/** A figure of the curve as a person reads it off. */
const shown = (value: number): string => String(Number(value.toPrecision(3)));

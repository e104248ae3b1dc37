// The pH over what is added, where a plan neutralises to one: the vessel of the adding step with every part of what goes in,
// at equilibrium, and a little beyond.
import { type Dissolved, pHOf } from "../../aqueous";
import { attempt } from "../../foundation/error";
import type { Contents, Plan, ProcedureStep } from "../../preparation";
import type { OnPaper } from "../plan/context";
import { filled } from "../words";
import { marksBetween, picture, px, word } from "./svg";

const SIZE = { width: 420, height: 280, left: 46, right: 18, top: 16, bottom: 62 };

/** Parts of the portion, closer where the pH jumps. */
const PARTS = [
  0, 0.01, 0.03, 0.06, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.85, 0.9, 0.93, 0.96, 0.98, 1, 1.02, 1.04, 1.07, 1.1,
  1.2,
] as const;

/** All of it. */
const WHOLE = 1;

interface Curve {
  readonly points: readonly { readonly part: number; readonly pH: number }[];
  readonly added: string;
  readonly end: number;
}

const known = new WeakMap<Plan, { readonly curve: Curve | undefined }>();

/** What is in a vessel, as the equilibrium takes it, or a part of it. */
const poured = ({ solids, dissolved }: Contents, part: number): Dissolved[] =>
  [...solids, ...dissolved].map(({ formula, amount }) => ({
    formula,
    amount: amount.times(String(part)) as typeof amount,
  }));

/** pH with so much of what goes in; undefined where the equilibrium does not reach. */
function pHWith({ before, put }: ProcedureStep, part: number): number | undefined {
  const [added] = put;
  if (added === undefined) return undefined;
  const water = before.water.plus(added.water.times(String(part))).to("g");
  const found = attempt(() =>
    pHOf({
      water: water as typeof before.water,
      dissolved: [...poured(before, WHOLE), ...poured(added, part)],
      carbonDioxide: "leaves",
      temperature: before.temperature,
    }),
  );
  return found.ok ? found.value.toNumber("") : undefined;
}

function curveOf(plan: Plan): Curve | undefined {
  const asked = plan.steps.findIndex(({ blank }) => blank === "pH");
  const step = plan.steps
    .slice(0, Math.max(0, asked))
    .filter(({ operation }) => operation === "add")
    .at(-1);
  if (asked < 0 || step === undefined || step.put.length !== 1 || step.before.unknown.length > 0) return undefined;
  const points = PARTS.flatMap((part) => {
    const pH = pHWith(step, part);
    return pH === undefined ? [] : [{ part, pH }];
  });
  const end = points.find(({ part }) => part === WHOLE);
  return end === undefined || points.length < PARTS.length
    ? undefined
    : { points, added: step.materials.join(", "), end: end.pH };
}

function remembered(plan: Plan): Curve | undefined {
  const found = known.get(plan) ?? { curve: curveOf(plan) };
  known.set(plan, found);
  return found.curve;
}

/** The picture of a plan that neutralises to a pH; undefined for any other. */
export function titrationPicture({ plan, words }: OnPaper): string | undefined {
  const curve = remembered(plan);
  if (curve === undefined) return undefined;
  const { width, height, left, right, top, bottom } = SIZE;
  const [foot, edge] = [height - bottom, width - right];
  const pHs = curve.points.map(({ pH }) => pH);
  const [low, high] = [Math.floor(Math.min(...pHs)), Math.ceil(Math.max(...pHs))];
  const most = PARTS.at(-1)!;
  const x = (part: number): number => left + (part / most) * (edge - left);
  const y = (pH: number): number => top + ((high - pH) / (high - low)) * (foot - top);
  const line = curve.points.map(({ part, pH }) => `${px(x(part))} ${px(y(pH))}`).join("L");
  const end = curve.end.toFixed(1);
  const text = filled(words.titrationText, { material: curve.added, start: pHs[0]!.toFixed(1), end });
  const parts = [
    ...marksBetween(low, high).flatMap((mark) => [
      `<path d="M${left} ${px(y(mark.at))}H${edge}" stroke="#ccc" stroke-width=".7"/>`,
      word(mark.text, { x: left - 6, y: y(mark.at) + 4, anchor: "end" }),
    ]),
    ...marksBetween(0, 100 * most).flatMap((mark) => [
      `<path d="M${px(x(mark.at / 100))} ${foot}v5" stroke="#000"/>`,
      word(mark.text, { x: x(mark.at / 100), y: foot + 18, anchor: "middle" }),
    ]),
    `<path d="M${left} ${top}V${foot}H${edge}" fill="none" stroke="#000" stroke-width="1.5"/>`,
    `<path d="M${line}" fill="none" stroke="#000" stroke-width="2" stroke-linejoin="round"/>`,
    `<circle cx="${px(x(WHOLE))}" cy="${px(y(curve.end))}" r="5" fill="#fff" stroke="#000" stroke-width="2"/>`,
    word(`pH ${end}`, { x: x(WHOLE) - 10, y: y(curve.end) - 8, anchor: "end", bold: true, halo: true }),
    word(filled(words.addedAxis, { material: curve.added }), { x: (left + edge) / 2, y: foot + 40, anchor: "middle" }),
    `<g transform="translate(14 ${px((top + foot) / 2)}) rotate(-90)">${word("pH", { x: 0, y: 0, anchor: "middle" })}</g>`,
  ];
  return picture(width, height, { title: words.titration, text }, parts);
}

// Solubility drawn as plain SVG text: the curve branch by branch, with the points of a plan and the path of a
// crystallisation. Readable in greyscale (branches differ by dashes, points by shape) and to a screen reader.

import { type Formula, parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import {
  type Axis,
  axesOf,
  curve,
  type Frame,
  frameOf,
  HALO,
  joined,
  markText,
  type Place,
  picture as pictureOf,
  px,
  roundStep,
  type Size,
} from "../../foundation/drawing";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { inMarkup } from "../../foundation/printed";
import { guard, needTextOption } from "../argument";
import type { SolubilityRow } from "../data/curves";
import { SolubilityError } from "../error";
import { type Branch, branchesOf, onBranch } from "./branch";
import { solubilityOf } from "./solubility";
import { rowOf, soluteOf } from "./solute";

const POINT = { celsius: true, grams: true, label: true } as const satisfies Fields<WorkingPoint>;

const PICTURE = {
  formulas: true,
  points: [POINT],
  path: true,
  width: true,
  height: true,
  facts: true,
} as const satisfies Fields<SolubilityPicture>;

/** A point to mark: what is in the solution at a temperature. */
export interface WorkingPoint {
  /** Temperature in °C. */
  readonly celsius: number;
  /** Grams of anhydrous salt per 100 g of all water. */
  readonly grams: number;
  /** Text beside the point. */
  readonly label: string;
}

/** What `solubilityDiagram` draws. */
export interface SolubilityPicture extends LookupOptions {
  /** One to four salts. */
  readonly formulas: readonly (string | Formula)[];
  /** Points to mark, in the order they are joined when `path` is set. */
  readonly points?: readonly WorkingPoint[];
  /** Join the points with an arrow: the path of a crystallisation. */
  readonly path?: boolean;
  /** Size in CSS pixels, 200 to 4000; default 640 by 420. */
  readonly width?: number;
  /** In CSS pixels, 200 to 4000; default 420. */
  readonly height?: number;
}

const MOST = 4;
const MOST_POINTS = 1000;
/** Parts of an axis, at most. */
const PARTS = 6;
/** Above the axes is room for the names of the solids. */
const MARGIN = { left: 62, right: 24, top: 34, bottom: 48 };

function sizeOf(name: "width" | "height", given: number | undefined, usual: number): number {
  const size = given ?? usual;
  guard.number(size, name);
  if (size >= 200 && size <= 4000) return size;
  throw new SolubilityError("solubility.out-of-reach", `${name} must be 200 to 4000 pixels, not ${size}`);
}

/** The axes of a picture that hold curves and points. */
function axesFor(picture: SolubilityPicture, rows: readonly SolubilityRow[]): readonly [across: Axis, up: Axis] {
  const points = picture.points ?? [];
  const temperatures = [...rows.flatMap((row) => row.points.map(([t]) => t)), ...points.map((p) => p.celsius)];
  const grams = [...rows.flatMap((row) => row.points.map(([, text]) => Number(text))), ...points.map((p) => p.grams)];
  if (![...temperatures, ...grams].every(Number.isFinite)) {
    throw new SolubilityError("solubility.out-of-reach", "a point to draw must be a finite number");
  }
  const [low, high] = [Math.min(...temperatures), Math.max(...temperatures)];
  const [from, to] = low === high ? [low - 10, high + 10] : [low, high];
  const step = roundStep(Math.max(...grams), PARTS);
  const top = Math.ceil((Math.max(...grams) * 1.02) / step) * step;
  return [
    { from, to, step: roundStep(to - from, PARTS), name: "temperature / °C" },
    { from: 0, to: top, step: roundStep(top, PARTS), name: "g anhydrous per 100 g water" },
  ];
}

/** Where a branch runs, in pixels. */
function trackOf(branch: Branch, frame: Frame): readonly Place[] {
  const [first, last] = [branch.knots[0], branch.knots.at(-1)];
  if (first === undefined || last === undefined) return [];
  if (first === last) return [[frame.x(first.celsius), frame.y(first.grams)]];
  return Array.from({ length: 25 }, (_, i) => {
    const t = first.celsius + ((last.celsius - first.celsius) * i) / 24;
    return [frame.x(t), frame.y(onBranch(branch, t).value)];
  });
}

/** What is written beside a line: the corner its box begins at, and how wide it is. */
interface Label {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

/** Height of a line of text, and about the width of a letter, in pixels. */
const LETTER = { height: 12, width: 6.6 };
/** From the line to what is written beside it. */
const GAP = 6;

const covers = ({ x, y, width }: Label, [px0, py0]: Place): boolean =>
  px0 > x - 3 && px0 < x + width + 3 && py0 > y - LETTER.height - 1 && py0 < y + 4;

const meet = (a: Label, b: Label): boolean =>
  a.x < b.x + b.width + 3 && b.x < a.x + a.width + 3 && Math.abs(a.y - b.y) < LETTER.height + 2;

/** Points along lines, close enough that no line slips through a label. */
const filled = (track: readonly Place[]): Place[] =>
  track.flatMap(([x, y], i) => {
    const [x0, y0] = track[i - 1] ?? [x, y];
    const parts = Math.max(1, Math.ceil(Math.hypot(x - x0, y - y0) / 5));
    return Array.from({ length: parts }, (_, k): Place => [x - ((x - x0) * k) / parts, y - ((y - y0) * k) / parts]);
  });

/** A place beside the line, from its middle outwards, that covers no line and no other label; else that which covers least. */
function labelFor(
  text: string,
  track: readonly Place[],
  taken: readonly Place[],
  labels: readonly Label[],
  frame: Frame,
): Label {
  const width = text.length * LETTER.width;
  const middle = (track.length - 1) / 2;
  const inside = ({ x, y }: Label): boolean =>
    x >= frame.x(frame.across.from) + 2 &&
    x + width <= frame.size[0] - 2 &&
    y - LETTER.height >= 2 &&
    y <= frame.y(0) - 3;
  let best: { readonly label: Label; readonly covered: number } | undefined;
  for (const [x, y] of [...track].sort(
    (a, b) => Math.abs(track.indexOf(a) - middle) - Math.abs(track.indexOf(b) - middle),
  ))
    for (const label of [
      { x: x - GAP - width, y: y - GAP, width },
      { x: x + GAP, y: y - GAP, width },
      { x: x + GAP, y: y + GAP + LETTER.height, width },
      { x: x - GAP - width, y: y + GAP + LETTER.height, width },
      { x: x - width / 2, y: y - 2 * GAP, width },
      { x: x - width / 2, y: y + 2 * GAP + LETTER.height, width },
    ]) {
      if (!inside(label)) continue;
      const covered =
        taken.filter((place) => covers(label, place)).length + 20 * labels.filter((other) => meet(label, other)).length;
      if (covered < (best?.covered ?? Number.POSITIVE_INFINITY)) best = { label, covered };
      if (covered === 0) return label;
    }
  const [x, y] = track[Math.round(middle)]!;
  return best?.label ?? { x: x + GAP, y: y - GAP, width };
}

/** The curves, each branch with the name of its solid beside it, clear of all lines. */
function curvesOf(rows: readonly SolubilityRow[], points: readonly WorkingPoint[], frame: Frame): string[] {
  const branches = rows.flatMap((row) =>
    branchesOf(row).map((branch) => ({ name: branch.solid ?? row.formula, track: trackOf(branch, frame) })),
  );
  const taken = [
    ...branches.flatMap(({ track }) => filled(track)),
    ...points.map(({ celsius, grams }): Place => [frame.x(celsius), frame.y(grams)]),
  ];
  // the names of the working points stand to the right of them
  const labels: Label[] = points.map(({ celsius, grams, label }) => ({
    x: frame.x(celsius) + 9,
    y: frame.y(grams) + 4,
    width: label.length * LETTER.width,
  }));
  const lines: string[] = [];
  branches.forEach(({ track }, i) => {
    if (track.length >= 2) lines.push(curve(track, i));
  });
  for (const row of rows)
    for (const [celsius, text] of row.points)
      lines.push(`<circle cx="${px(frame.x(celsius))}" cy="${px(frame.y(Number(text)))}" r="2.2"/>`);
  for (const { name, track } of branches) {
    if (track.length === 0) continue;
    const text = parseFormula(name).toUnicode();
    const label = labelFor(text, track, taken, labels, frame);
    labels.push(label);
    lines.push(`<text x="${px(label.x)}" y="${px(label.y)}" font-style="italic" ${HALO}>${inMarkup(text)}</text>`);
  }
  return lines;
}

/** A name made from what is drawn (FNV-1a), so that several pictures may stand in one page. */
function idOf(content: string): string {
  let hash = 0x811c9dc5;
  for (let i = 0; i < content.length; i += 1) hash = Math.imul(hash ^ content.charCodeAt(i), 0x01000193) >>> 0;
  return `solubility-${hash.toString(36)}`;
}

function workingPoints(points: readonly WorkingPoint[], frame: Frame, arrow: string | undefined): string[] {
  const lines = points.map(({ celsius, grams, label }) => {
    const [cx, cy] = [frame.x(celsius), frame.y(grams)];
    return (
      `<path d="M${px(cx)} ${px(cy - 6)}l6 6l-6 6l-6 -6z" fill="#fff" stroke="#000" stroke-width="1.5"/>` +
      `<text x="${px(cx + 9)}" y="${px(cy + 4)}" ${HALO}>${inMarkup(label)}</text>`
    );
  });
  if (arrow === undefined || points.length < 2) return lines;
  const d = joined(points.map(({ celsius, grams }): Place => [frame.x(celsius), frame.y(grams)]));
  lines.unshift(
    `<path d="${d}" fill="none" stroke="#555" stroke-width="1.5" stroke-dasharray="4 3" marker-end="url(#${arrow})"/>`,
  );
  return lines;
}

/**
 * A solubility diagram as SVG text.
 *
 * @param picture - one to four salts of the table; points of a plan, joined as a path if wanted; size in pixels
 * @returns a complete `<svg>` with title and description, without scripts, styles or outside references
 * @throws {SolubilityError} `solubility.bad-option`, `solubility.no-data`, `solubility.too-many` for more than four
 *   salts or 1000 points, `solubility.missing-option` for none, `solubility.out-of-reach` for a size or point that
 *   cannot be drawn
 * @category Pictures
 * @example
 * solubilityDiagram({ formulas: ["KNO3", "NaCl"] }).startsWith("<svg ") // => true
 */
export function solubilityDiagram(picture: SolubilityPicture): string {
  if (bringsFacts(picture)) return withItsFacts(picture, guard, solubilityDiagram);
  guard.fields(picture, PICTURE, "request");
  const { formulas, points = [], path = false } = picture;
  guard.list(formulas, "formulas");
  if (points.length > MOST_POINTS) {
    throw new SolubilityError("solubility.too-many", `${points.length} points in one picture; at most ${MOST_POINTS}`);
  }
  for (const [i, { label }] of points.entries()) {
    if (label === undefined) throw new SolubilityError("solubility.missing-option", `points[${i}] has no label`);
    needTextOption(label, `points[${i}].label`);
  }
  if (formulas.length === 0) throw new SolubilityError("solubility.missing-option", "no salt to draw");
  if (formulas.length > MOST) {
    throw new SolubilityError(
      "solubility.too-many",
      `${formulas.length} salts in one picture; at most ${MOST} stay readable`,
    );
  }
  const rows = formulas.map((formula) => rowOf(soluteOf(formula)) ?? missing(formula));
  const size: Size = [sizeOf("width", picture.width, 640), sizeOf("height", picture.height, 420)];
  const frame = frameOf(size, MARGIN, ...axesFor(picture, rows));
  const names = rows.map(({ formula }) => parseFormula(formula).toUnicode()).join(", ");
  const stated = rows
    .map((row) => describe(row))
    .concat(points.map((p) => `${p.label}: ${markText(p.grams)} g at ${markText(p.celsius)} °C.`));
  const id = idOf(`${size.join(" ")} ${Boolean(path)} ${stated.join(" ")}`);
  const parts = [
    `<defs><marker id="${id}-arrow" viewBox="0 0 8 8" refX="7" refY="4" markerWidth="8" markerHeight="8" orient="auto"><path d="M0 0L8 4L0 8z"/></marker></defs>`,
    ...axesOf(frame),
    ...curvesOf(rows, points, frame),
    ...workingPoints(points, frame, path ? `${id}-arrow` : undefined),
  ];
  return pictureOf(size, `Solubility of ${names} in water`, stated.join(" "), parts, id);
}

/** The table's own refusal, with its hint. */
function missing(formula: string | Formula): never {
  solubilityOf(formula, "20 °C");
  throw new SolubilityError("solubility.no-data", `no solubility of ${formula}`);
}

function describe(row: SolubilityRow): string {
  const [[from, low], [to, high]] = [row.points[0]!, row.points.at(-1)!];
  const changes = row.solids.slice(0, -1).map(({ upTo }) => `${upTo} °C`);
  const name = parseFormula(row.formula).toUnicode();
  return (
    `${name}: ${low} g per 100 g water at ${from} °C, ${high} g at ${to} °C` +
    (changes.length === 0 ? "." : `; the solid changes at ${changes.join(", ")}.`)
  );
}

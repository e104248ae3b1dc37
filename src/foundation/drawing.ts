// Plain pictures as SVG text: sizes, axes with round marks, lines told apart by dashes. Readable in greyscale and to a screen reader.

import { inMarkup } from "./printed";

/** Lines in the order of their dashes; the first is whole. */
const DASHES = ["", "8 4", "2 3", "10 3 2 3", "5 2 1 2", "12 4"];

/** A white edge that keeps a label readable over a line. */
export const HALO = 'paint-order="stroke" stroke="#fff" stroke-width="3"';

/** A place in a picture, in pixels. */
export type Place = readonly [x: number, y: number];

/** Plain figure with at most two decimals; never exponential, never `-0`. */
export const px = (value: number): string => String(Math.round(value * 100) / 100 || 0);

/** A mark of an axis in the digits its step needs. */
export const markText = (value: number): string => String(Number(value.toPrecision(6)));

/** One axis: where it begins and ends, its round step and what it shows. */
export interface Axis {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly name: string;
  /** How a mark is written; plain figures unless given. */
  readonly mark?: (value: number) => string;
}

/** Width and height in pixels. */
export type Size = readonly [width: number, height: number];

/** Where values stand in a picture. */
export interface Frame {
  readonly size: Size;
  readonly across: Axis;
  readonly up: Axis;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

/** A round step, 1, 2 or 5 of a power of ten, that divides a length into about so many parts, or fewer. */
export function roundStep(length: number, parts: number): number {
  const rough = length / parts;
  const power = 10 ** Math.floor(Math.log10(rough));
  return ([1, 2, 5, 10].find((m) => m * power >= rough) ?? 10) * power;
}

/** Pixels between the edges of a picture and its axes. */
interface Margin {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A frame of two axes in a picture. */
export function frameOf(size: Size, margin: Margin, across: Axis, up: Axis): Frame {
  const [w, h] = [size[0] - margin.left - margin.right, size[1] - margin.top - margin.bottom];
  return {
    size,
    across,
    up,
    x: (value) => margin.left + ((value - across.from) / (across.to - across.from)) * w,
    y: (value) => margin.top + (1 - (value - up.from) / (up.to - up.from)) * h,
  };
}

function marksOf({ from, to, step }: Axis): number[] {
  const first = Math.ceil(from / step - 1e-9);
  return Array.from({ length: Math.floor(to / step + 1e-9) - first + 1 }, (_, i) => (first + i) * step);
}

/** Both axes with their marks and names. */
export function axesOf({ size: [, height], across, up, x, y }: Frame): string[] {
  const [left, right, bottom, top] = [x(across.from), x(across.to), y(up.from), y(up.to)];
  const shown = ({ mark = markText }: Axis, value: number): string => inMarkup(mark(value));
  return [
    `<path d="M${px(left)} ${px(top)}V${px(bottom)}H${px(right)}" fill="none" stroke="#000"/>`,
    ...marksOf(across).flatMap((value) => [
      `<path d="M${px(x(value))} ${px(bottom)}v5" stroke="#000"/>`,
      `<text x="${px(x(value))}" y="${px(bottom + 18)}" text-anchor="middle">${shown(across, value)}</text>`,
    ]),
    ...marksOf(up).flatMap((value) => [
      `<path d="M${px(left)} ${px(y(value))}H${px(right)}" stroke="#ddd"/>`,
      `<text x="${px(left - 8)}" y="${px(y(value) + 4)}" text-anchor="end">${shown(up, value)}</text>`,
    ]),
    `<text x="${px((left + right) / 2)}" y="${px(height - 8)}" text-anchor="middle">${inMarkup(across.name)}</text>`,
    `<text transform="translate(16 ${px((top + bottom) / 2)}) rotate(-90)" text-anchor="middle">${inMarkup(up.name)}</text>`,
  ];
}

/** Places joined. */
export const joined = (places: readonly Place[]): string =>
  places.map(([x, y], i) => `${i === 0 ? "M" : "L"}${px(x)} ${px(y)}`).join("");

/** The line of a curve, told apart by its dashes from those before it. */
export function curve(places: readonly Place[], index: number): string {
  const dash = DASHES[index % DASHES.length]!;
  return `<path d="${joined(places)}" fill="none" stroke="#000" stroke-width="2"${dash === "" ? "" : ` stroke-dasharray="${dash}"`}/>`;
}

/** A whole picture: `parts` on white, with a title and a description in words; `id` for the names of these two. */
export function picture(size: Size, title: string, stated: string, parts: readonly string[], id?: string): string {
  const [width, height] = size.map(px);
  const [named, ofTitle, ofStated] =
    id === undefined
      ? ["", "", ""]
      : [` aria-labelledby="${id}-title ${id}-desc"`, ` id="${id}-title"`, ` id="${id}-desc"`];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img"${named} font-family="sans-serif" font-size="12">`,
    `<title${ofTitle}>${inMarkup(title)}</title>`,
    `<desc${ofStated}>${inMarkup(stated)}</desc>`,
    `<rect width="100%" height="100%" fill="#fff"/>`,
    ...parts,
    "</svg>",
  ].join("\n");
}

// What every picture is made of: black and grey on white, 80 to 120 mm wide, readable on a phone and by ear.
import { inMarkup } from "../../foundation/printed";

/** A coordinate with one decimal. */
export const px = (x: number): string => String(Math.round(x * 10) / 10 || 0);

/** A white edge that keeps words readable where a line passes. */
const HALO = 'paint-order="stroke" stroke="#fff" stroke-width="4" stroke-linejoin="round"';

/** A whole picture: what it is and what it says stand in it for those who do not see it. */
export const picture = (
  width: number,
  height: number,
  { title, text }: { readonly title: string; readonly text: string },
  parts: readonly string[],
): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${px(width)} ${px(height)}" width="${px(width)}" height="${px(height)}" role="img" aria-label="${inMarkup(`${title}. ${text}`)}" font-family="Liberation Sans,Arial,sans-serif" font-size="13"><rect width="100%" height="100%" fill="#fff"/>${parts.join("")}</svg>`;

interface Word {
  readonly x: number;
  readonly y: number;
  readonly anchor?: "start" | "middle" | "end";
  readonly bold?: boolean;
  readonly halo?: boolean;
}

/** Words at a place. */
export const word = (text: string, { x, y, anchor = "start", bold = false, halo = false }: Word): string =>
  `<text x="${px(x)}" y="${px(y)}"${anchor === "start" ? "" : ` text-anchor="${anchor}"`}${bold ? ' font-weight="700"' : ""}${halo ? ` ${HALO}` : ""}>${inMarkup(text)}</text>`;

/** Marks of an axis, about. */
const MARKS = 6;

/** A step of 1, 2 or 5 times a power of ten that gives about so many marks. */
function stepFor(span: number): number {
  const rough = span / MARKS;
  const power = 10 ** Math.floor(Math.log10(rough));
  return ([1, 2, 5, 10].find((m) => m * power >= rough) ?? 10) * power;
}

/** Marks of an axis, in the digits that their step needs. */
export function marksBetween(from: number, to: number): { readonly at: number; readonly text: string }[] {
  const step = stepFor(to - from);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  return Array.from({ length: count }, (_, i) => ({
    at: (first + i) * step,
    text: ((first + i) * step).toFixed(decimals),
  }));
}

/** Width that words take, near enough to keep them apart. */
export const widthOf = (text: string): number => [...text].length * 7;

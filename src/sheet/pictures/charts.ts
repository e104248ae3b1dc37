// Bars beside each other on one scale, and a grid to fill weighings in.
import { marksBetween, picture, px, widthOf, word } from "./svg";

/** One bar. */
interface Bar {
  readonly label: string;
  readonly value: number;
  /** The figure as it is printed. */
  readonly shown: string;
  /** Standard uncertainty, drawn as a line to both sides. */
  readonly uncertainty?: number;
}

/** Bars and what is said of them. */
interface Bars {
  readonly title: string;
  readonly text: string;
  readonly all: readonly Bar[];
  /** A line across all bars, with its words. */
  readonly limit?: { readonly label: string; readonly value: number };
}

const BAR = { width: 400, row: 26, top: 8, thick: 16 };

export function bars({ title, text, all, limit }: Bars): string {
  const left = Math.min(150, 16 + Math.max(24, ...all.map(({ label }) => widthOf(label))));
  const right = 12 + Math.max(...all.map(({ shown }) => widthOf(shown)));
  const reach = (bar: Bar): number => bar.value + (bar.uncertainty ?? 0);
  const most = Math.max(...all.map(reach), limit?.value ?? 0);
  const scale = most > 0 ? (BAR.width - left - right) / most : 0;
  const bottom = BAR.top + all.length * BAR.row;
  const parts = all.flatMap((bar, i) => {
    const y = BAR.top + i * BAR.row;
    const middle = y + BAR.thick / 2;
    const end = left + Math.max(1, bar.value * scale);
    const half = (bar.uncertainty ?? 0) * scale;
    return [
      word(bar.label, { x: left - 8, y: y + 13, anchor: "end" }),
      `<rect x="${px(left)}" y="${px(y)}" width="${px(end - left)}" height="${BAR.thick}" fill="${i === 0 ? "#555" : "#aaa"}"/>`,
      ...(half > 0.5
        ? [
            `<path d="M${px(end - half)} ${px(middle)}H${px(end + half)}M${px(end - half)} ${px(middle - 5)}v10M${px(end + half)} ${px(middle - 5)}v10" stroke="#000" stroke-width="1.5"/>`,
          ]
        : []),
      word(bar.shown, { x: end + half + 6, y: y + 13, halo: true }),
    ];
  });
  parts.push(`<path d="M${px(left)} 2V${px(bottom)}" stroke="#000" stroke-width="1.5"/>`);
  if (limit !== undefined) {
    const x = left + limit.value * scale;
    const half = widthOf(limit.label) / 2;
    const middle = Math.max(half + 2, Math.min(x, BAR.width - half - 2));
    parts.unshift(`<path d="M${px(x)} 2V${px(bottom + 3)}" stroke="#000" stroke-width="1.5" stroke-dasharray="5 3"/>`);
    parts.push(word(limit.label, { x: middle, y: bottom + 16, anchor: "middle" }));
  }
  return picture(BAR.width, bottom + (limit === undefined ? 4 : 22), { title, text }, parts);
}

/** A grid for weighings. */
interface DryingChart {
  readonly title: string;
  readonly text: string;
  /** Words under the grid. */
  readonly across: string;
  /** Words for the band in which the mass should end. */
  readonly band: string;
  readonly low: number;
  readonly high: number;
  /** Weighings so far. */
  readonly masses?: readonly number[];
}

const GRID = { width: 400, height: 150, left: 52, right: 10, top: 24, bottom: 40, weighings: 8 };

export function dryingChart({ title, text, across, band, low, high, masses = [] }: DryingChart): string {
  const { width, height, left, right, top, bottom } = GRID;
  const from = Math.min(low * 0.96, ...masses.map((mass) => mass * 0.99));
  const to = Math.max(high * 1.3, ...masses.map((mass) => mass * 1.03));
  const y = (mass: number): number => top + (1 - (mass - from) / (to - from)) * (height - top - bottom);
  const count = Math.max(GRID.weighings, masses.length);
  const x = (i: number): number => left + ((i + 0.5) * (width - left - right)) / count;
  const [foot, edge] = [height - bottom, width - right];
  const parts = [
    `<rect x="${left}" y="${px(y(high))}" width="${px(edge - left)}" height="${px(Math.max(2, y(low) - y(high)))}" fill="#d4d4d4"/>`,
    ...marksBetween(from, to).flatMap((mark) => [
      `<path d="M${left} ${px(y(mark.at))}H${px(edge)}" stroke="#aaa" stroke-width=".7"/>`,
      word(mark.text, { x: left - 6, y: y(mark.at) + 4, anchor: "end" }),
    ]),
    ...Array.from(
      { length: count },
      (_, i) => `<path d="M${px(x(i))} ${top}V${foot}" stroke="#ccc" stroke-width=".7"/>`,
    ),
    ...Array.from({ length: count }, (_, i) => word(String(i + 1), { x: x(i), y: foot + 15, anchor: "middle" })),
    `<path d="M${left} ${top}V${foot}H${px(edge)}" fill="none" stroke="#000" stroke-width="1.5"/>`,
    word(across, { x: (left + edge) / 2, y: height - 7, anchor: "middle" }),
    word("g", { x: left - 6, y: 14, anchor: "end" }),
    word(band, { x: edge, y: 14, anchor: "end" }),
  ];
  const dots = masses.map((mass, i) => `${px(x(i))} ${px(y(mass))}`);
  if (dots.length > 1) parts.push(`<path d="M${dots.join("L")}" fill="none" stroke="#000" stroke-width="1.5"/>`);
  for (const dot of dots) {
    const [cx, cy] = dot.split(" ");
    parts.push(`<circle cx="${cx}" cy="${cy}" r="4"/>`);
  }
  return picture(width, height, { title, text }, parts);
}

// Small charts in black and grey, 80 to 120 mm wide, readable on a phone: bars beside each other, and a grid to fill in.
import { inMarkup } from "../../foundation/printed";

const px = (x: number): string => String(Number(x.toFixed(1)));

const svg = (width: number, height: number, title: string, parts: readonly string[]): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" font-family="Arial,sans-serif" font-size="12"><title>${inMarkup(title)}</title>${parts.join("")}</svg>`;

/** One bar. */
export interface Bar {
  readonly label: string;
  readonly value: number;
  /** The figure as it is printed. */
  readonly shown: string;
}

/** Bars below each other on one scale, with a line where a limit is. */
export function bars(title: string, all: readonly Bar[], limit?: Bar): string {
  const [width, left, row] = [400, 120, 26];
  const most = Math.max(...all.map((bar) => bar.value), limit?.value ?? 0);
  const scale = most > 0 ? (width - left - 90) / most : 0;
  const parts = all.flatMap(({ label, value, shown }, i) => {
    const y = 8 + i * row;
    return [
      `<text x="${left - 8}" y="${y + 14}" text-anchor="end">${inMarkup(label)}</text>`,
      `<rect x="${left}" y="${y}" width="${px(Math.max(1, value * scale))}" height="18" fill="#777"/>`,
      `<text x="${px(left + Math.max(1, value * scale) + 6)}" y="${y + 14}">${inMarkup(shown)}</text>`,
    ];
  });
  const bottom = 8 + all.length * row;
  parts.push(`<path d="M${left} 2V${bottom}" stroke="#000" stroke-width="1.5"/>`);
  if (limit !== undefined) {
    const x = left + limit.value * scale;
    parts.push(`<path d="M${px(x)} 2V${bottom}" stroke="#000" stroke-width="1.5" stroke-dasharray="5 3"/>`);
    parts.push(
      `<text x="${px(Math.min(x, width - 60))}" y="${bottom + 14}" text-anchor="middle">${inMarkup(`${limit.label} ${limit.shown}`)}</text>`,
    );
  }
  return svg(width, bottom + 22, title, parts);
}

/** A grid to draw weighings in, with the band in which the mass should end; weighings so far as dots. */
export function dryingChart(
  title: string,
  across: string,
  low: number,
  high: number,
  masses: readonly number[] = [],
): string {
  const [width, height, left, bottom] = [400, 190, 56, 30];
  const from = Math.floor(Math.min(low * 0.97, ...masses.map((m) => m * 0.99)));
  const to = Math.ceil(Math.max(high * 1.25, ...masses.map((m) => m * 1.02)));
  const y = (mass: number): number => 8 + (1 - (mass - from) / (to - from)) * (height - bottom - 8);
  const x = (i: number): number => left + 30 + i * 50;
  const rough = (to - from) / 5;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((m) => m * power >= rough) ?? 10) * power;
  const parts: string[] = [
    `<rect x="${left}" y="${px(y(high))}" width="${width - left - 8}" height="${px(y(low) - y(high))}" fill="#ddd"/>`,
  ];
  for (let mass = Math.ceil(from / step) * step; mass <= to; mass += step) {
    parts.push(`<path d="M${left} ${px(y(mass))}H${width - 8}" stroke="#bbb"/>`);
    parts.push(`<text x="${left - 6}" y="${px(y(mass) + 4)}" text-anchor="end">${Number(mass.toPrecision(6))}</text>`);
  }
  for (let i = 0; i < 7; i += 1) parts.push(`<path d="M${x(i)} 8V${height - bottom}" stroke="#bbb"/>`);
  parts.push(`<path d="M${left} 8V${height - bottom}H${width - 8}" fill="none" stroke="#000" stroke-width="1.5"/>`);
  parts.push(`<text x="${left + 4}" y="${height - 10}">${inMarkup(across)}</text><text x="4" y="16">g</text>`);
  const dots = masses.slice(0, 7).map((mass, i) => `${px(x(i))} ${px(y(mass))}`);
  if (dots.length > 1) parts.push(`<path d="M${dots.join("L")}" fill="none" stroke="#000"/>`);
  for (const dot of dots) parts.push(`<circle cx="${dot.split(" ")[0]}" cy="${dot.split(" ")[1]}" r="4"/>`);
  return svg(width, height, title, parts);
}

// What a drawn picture says, read back from its SVG: the scale from the figures beside the axes, then every line and spot in
// the units of the axes.

/** A place in the units of the axes. */
export type Point = readonly [x: number, y: number];

interface Mark {
  readonly at: number;
  readonly says: number;
}

const attribute = (tag: string, name: string): string => new RegExp(` ${name}="([^"]*)"`).exec(tag)?.[1] ?? "";
const tagsOf = (svg: string, name: string): string[] =>
  svg.match(new RegExp(`<${name} [^>]*>([^<]*</${name}>)?`, "g")) ?? [];

/** Unit per pixel and the unit at pixel 0, from the first and the last mark of an axis. */
function scaleOf(marks: readonly Mark[]): (at: number) => number {
  const [first, last] = [marks[0]!, marks.at(-1)!];
  const slope = (last.says - first.says) / (last.at - first.at);
  return (at) => first.says + (at - first.at) * slope;
}

export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** Figures beside the axes. */
  readonly across: readonly number[];
  readonly up: readonly number[];
  /** Half a pixel in the units of each axis. */
  readonly half: Point;
  /** Where the axes run: left to right, bottom to top. */
  readonly frame: { readonly x: readonly [number, number]; readonly y: readonly [number, number] };
  readonly lines: readonly { readonly points: readonly Point[]; readonly dash: string }[];
  readonly spots: readonly Point[];
  /** Texts inside the frame, with the place they begin at. */
  readonly labels: readonly { readonly text: string; readonly at: Point }[];
}

/** Read a picture of the beaker's kind: axes in black, grid lines in grey, curves two pixels wide. */
export function drawingOf(svg: string): Drawing {
  const texts = tagsOf(svg, "text").map((tag) => ({
    text: />([^<]*)<\/text>/.exec(tag)![1]!,
    x: Number(attribute(tag, "x")),
    y: Number(attribute(tag, "y")),
    anchor: attribute(tag, "text-anchor"),
    turned: tag.includes("transform"),
    halo: tag.includes("paint-order"),
  }));
  const height = Number(attribute(tagsOf(svg, "svg")[0]!, "height"));
  // powers of ten stand for their exponents on a logarithmic axis
  const number = (text: string): number => Number(text.replace(/^1e/, ""));
  const beneath = texts.filter(({ anchor, turned, text }) => anchor === "middle" && !turned && /^[-\d.]+$/.test(text));
  const beside = texts.filter(({ anchor }) => anchor === "end");
  const across: Mark[] = beneath.map(({ x, text }) => ({ at: x, says: number(text) }));
  const up: Mark[] = beside.map(({ y, text }) => ({ at: y - 4, says: number(text) }));
  const [xOf, yOf] = [scaleOf(across), scaleOf(up)];
  const pathOf = (tag: string): [number, number][] =>
    [...attribute(tag, "d").matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
  const paths = tagsOf(svg, "path");
  const axes = /^M([\d.]+) ([\d.]+)V([\d.]+)H([\d.]+)$/.exec(
    attribute(paths.find((tag) => /V[\d.]+H/.test(tag))!, "d"),
  )!;
  const [, left, top, bottom, right] = axes.map(Number) as [number, number, number, number, number];
  return {
    width: Number(attribute(tagsOf(svg, "svg")[0]!, "width")),
    height,
    across: across.map(({ says }) => says),
    up: up.map(({ says }) => says),
    half: [Math.abs(xOf(0.5) - xOf(0)), Math.abs(yOf(0.5) - yOf(0))],
    frame: { x: [xOf(left), xOf(right)], y: [yOf(bottom), yOf(top)] },
    lines: paths
      .filter((tag) => attribute(tag, "stroke-width") === "2")
      .map((tag) => ({
        points: pathOf(tag).map(([x, y]) => [xOf(x), yOf(y)] as const),
        dash: attribute(tag, "stroke-dasharray"),
      })),
    spots: tagsOf(svg, "circle").map((tag) => [xOf(Number(attribute(tag, "cx"))), yOf(Number(attribute(tag, "cy")))]),
    labels: texts.filter(({ halo }) => halo).map(({ text, x, y }) => ({ text, at: [xOf(x), yOf(y)] })),
  };
}

// Curves of the beaker as plain SVG text: a titration, a mixture over pH, what dissolves over an excess. Readable in greyscale, and
// in words to a screen reader.

import {
  type Axis,
  axesOf,
  curve,
  frameOf,
  HALO,
  type Place,
  picture as pictureOf,
  px,
  roundStep,
} from "../../foundation/drawing";
import { inMarkup } from "../../foundation/printed";
import type { Quantity } from "../../quantity";
import { guard } from "../argument";
import { isOverExcess, type OverExcess } from "../dose/excess";
import { endPoints, type TitrationCurve } from "../dose/titration";
import { AqueousError } from "../error";
import { isOverPH, type OverPH } from "./over-ph";

/** Size of a picture in pixels. */
export interface PictureSize {
  /** In pixels; 640 unless given. */
  readonly width?: number;
  /** In pixels; 420 unless given. */
  readonly height?: number;
}

/** `Zn^2+` with its charge raised. */
const raised = (ion: string): string =>
  inMarkup(
    ion.replace(/\^?(\d*)([+-])$/, (_, n: string, sign: string) =>
      [...n, sign === "+" ? "⁺" : "⁻"].map((c) => (c >= "0" && c <= "9" ? "⁰¹²³⁴⁵⁶⁷⁸⁹"[Number(c)]! : c)).join(""),
    ),
  );

function sizeOf({ width = 640, height = 420 }: PictureSize): readonly [number, number] {
  for (const [name, size] of [
    ["width", width],
    ["height", height],
  ] as const) {
    guard.number(size, name);
    if (!(size >= 200 && size <= 4000))
      throw new AqueousError("aqueous.out-of-reach", `${name} must be 200 to 4000 pixels, not ${size}`);
  }
  return [width, height];
}

interface Line {
  readonly points: readonly (readonly [x: number, y: number])[];
  readonly label: string;
  /** Which point the label stands beside; spread over the lines where that is not said. */
  readonly labelAt?: number;
}

/** Parts of an axis, at most. */
const PARTS = 8;
const MARGIN = { left: 64, right: 20, top: 16, bottom: 48 };

function draw(
  size: PictureSize,
  title: string,
  stated: string,
  across: Axis,
  up: Axis,
  lines: readonly Line[],
  spots: readonly (readonly [x: number, y: number, label: string])[],
): string {
  const frame = frameOf(sizeOf(size), MARGIN, across, up);
  const { x, y } = frame;
  const parts = axesOf(frame);
  for (const [i, { points, label, labelAt }] of lines.entries()) {
    const inside = points.map(([a, b]): Place => [x(a), y(Math.min(up.to, Math.max(up.from, b)))]);
    parts.push(curve(inside, i));
    if (label === "" || inside.length === 0) continue;
    const [a, b] = inside[labelAt ?? Math.floor(((i + 1) * inside.length) / (lines.length + 1))]!;
    parts.push(`<text x="${px(a + 4)}" y="${px(b - 6)}" font-style="italic" ${HALO}>${raised(label)}</text>`);
  }
  for (const [a, b, label] of spots) {
    parts.push(`<circle cx="${px(x(a))}" cy="${px(y(b))}" r="4" fill="#fff" stroke="#000" stroke-width="1.5"/>`);
    parts.push(`<text x="${px(x(a) + 8)}" y="${px(y(b) + 4)}" ${HALO}>${inMarkup(label)}</text>`);
  }
  return pictureOf(frame.size, title, stated, parts);
}

/**
 * A titration curve as SVG text, end points marked.
 *
 * @param curve - from `titrationCurve`
 * @param size - pixels, 200 to 4000; default 640 × 420
 * @returns a complete `<svg>` with title and description, without scripts, styles or outside references
 * @throws {AqueousError} `aqueous.bad-option`, `aqueous.out-of-reach` for a size
 * @category Pictures
 * @example
 * const curve = titrationCurve({
 *   flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
 *   burette: { formula: "NaOH", concentration: "0.1 mol/L" },
 * });
 * titrationDiagram(curve).startsWith("<svg ") // => true
 */
export function titrationDiagram(curve: TitrationCurve, size: PictureSize = {}): string {
  guard.fields(size, { width: true, height: true }, "size");
  const ends = endPoints(curve);
  const points = curve.points
    .map(({ volume, pH }) => [volume.toNumber("mL"), pH.toNumber()] as const)
    .sort(([a], [b]) => a - b);
  const to = points.at(-1)?.[0] ?? 0;
  if (points.length < 2 || to === 0)
    throw new AqueousError("aqueous.out-of-reach", "a curve of fewer than two points is not a picture");
  const pHs = points.map(([, pH]) => pH);
  const spots = ends.map(({ volume, pH }) => {
    const [v, p] = [volume.toNumber("mL"), pH.toNumber()];
    return [v, p, `${v.toFixed(2)} mL, pH ${p.toFixed(2)}`] as const;
  });
  const stated = `pH ${pHs[0]!.toFixed(2)} at the start, ${pHs.at(-1)!.toFixed(2)} at ${to.toFixed(1)} mL; ${
    spots.length === 0 ? "no end point" : `end points at ${spots.map(([, , label]) => label).join("; ")}`
  }.`;
  const [low, high] = [Math.floor(Math.min(...pHs)), Math.ceil(Math.max(...pHs))];
  return draw(
    size,
    "Titration curve",
    stated,
    { from: 0, to, step: roundStep(to, PARTS), name: "volume from the burette / mL" },
    { from: low, to: high, step: high - low > 8 ? 2 : 1, name: "pH" },
    [{ points, label: "" }],
    spots.filter(([v]) => v <= to),
  );
}

/** What of a mixture over pH is drawn. */
export interface OverPHPicture extends PictureSize {
  /** What stays dissolved (the default), or how much of each solid stands. */
  readonly show?: "dissolved" | "solids";
}

/** Least concentration drawn, as decimal logarithm. */
const FLOOR = -8;

/**
 * A mixture over pH as SVG text: what stays dissolved, on a logarithmic scale, of the ions that a solid takes; or how much of
 * each solid stands.
 *
 * @param over - from `solidsOverPH`
 * @param picture - pixels, 200 to 4000, default 640 × 420; `show: "solids"` for the solids
 * @returns a complete `<svg>` with title and description, without scripts, styles or outside references
 * @throws {AqueousError} `aqueous.bad-option`, `aqueous.out-of-reach` for a size or where no solid forms
 * @category Pictures
 * @example
 * const over = solidsOverPH({ ions: [{ formula: "ZnSO4", concentration: "0.01 mol/L" }], from: 6, to: 14 });
 * overPHDiagram(over).startsWith("<svg ") // => true
 * overPHDiagram(over, { show: "solids" }).includes("Zn(OH)2") // => true
 */
export function overPHDiagram(over: OverPH, picture: OverPHPicture = {}): string {
  guard.fields(picture, { width: true, height: true, show: true }, "picture");
  if (picture.show !== undefined) guard.choice(picture.show, "show", ["dissolved", "solids"]);
  if (!isOverPH(over)) throw new AqueousError("aqueous.bad-option", "expected what solidsOverPH gave");
  if (over.least.length === 0)
    throw new AqueousError("aqueous.out-of-reach", "no solid forms in this range: nothing to draw");
  const [first, last] = [over.points[0]!.pH, over.points.at(-1)!.pH];
  const across: Axis = {
    from: first,
    to: last,
    step: last - first > 4 ? 1 : roundStep(last - first, PARTS),
    name: "pH",
  };
  const title = `over pH: ${over.least.map(({ ion }) => ion).join(", ")}; solids: ${over.solids.join(", ")}`;
  if (picture.show === "solids") {
    const amounts = over.solids.map((solid) => over.points.map(({ solids }) => solids[solid] ?? 0));
    const most = Math.max(...amounts.flat());
    const stated = over.solids.map((solid, i) => {
      const here = over.points.filter((_, k) => amounts[i]![k]! > 0).map(({ pH }) => pH);
      return `${solid} stands from pH ${here[0]} to ${here.at(-1)}, at most ${Math.max(...amounts[i]!).toPrecision(2)} mol/L.`;
    });
    return draw(
      picture,
      `Solids ${title}`,
      stated.join(" "),
      across,
      { from: 0, to: 1.08 * most, step: roundStep(most, PARTS), name: "solid / (mol/L)" },
      over.solids.map((label, i) =>
        lineOf(
          label,
          over.points.map(({ pH }, k) => [pH, amounts[i]![k]!] as const),
          (i + 1) / (over.solids.length + 1),
        ),
      ),
      [],
    );
  }
  const stated = over.least.map(({ ion, pH, concentration }) => leastStated(ion, concentration, `pH ${pH}`));
  return drawDissolved(
    picture,
    `Dissolved ${title}`,
    stated.join(" "),
    across,
    over.least.map(({ ion }) => ({
      label: ion,
      points: over.points.map(({ pH, dissolved }) => [pH, dissolved[ion]!] as const),
    })),
    [],
  );
}

/** The line of a solid, only where it stands, its label on its height; `share` keeps labels of one height apart. */
function lineOf(label: string, all: Line["points"], share: number): Line {
  const points = all.filter((_, k) => [all[k - 1], all[k], all[k + 1]].some((one) => one !== undefined && one[1] > 0));
  const most = Math.max(...points.map(([, y]) => y));
  const high = points.flatMap(([, y], k) => (y > 0.97 * most ? [k] : []));
  return { label, points, labelAt: high[Math.floor(high.length * share)]! };
}

const leastStated = (ion: string, concentration: Quantity, where: string): string =>
  `Least ${ion} dissolved: ${concentration.format({ significant: 2, uncertainty: "none" })} at ${where}.`;

/** Concentrations on a logarithmic scale. */
function drawDissolved(
  size: PictureSize,
  title: string,
  stated: string,
  across: Axis,
  lines: readonly Line[],
  spots: readonly (readonly [x: number, y: number, label: string])[],
): string {
  const logs = lines.map(({ label, points }) => ({
    label,
    points: points.map(([x, c]) => [x, Math.log10(Math.max(c, 1e-30))] as const),
  }));
  const highest = Math.max(...logs.flatMap(({ points }) => points.map(([, c]) => c)));
  return draw(
    size,
    title,
    stated,
    across,
    { from: FLOOR, to: Math.ceil(highest), step: 1, name: "dissolved / (mol/L)", mark: (value) => `1e${value}` },
    logs,
    spots.map(([x, c, label]) => [x, Math.max(FLOOR, Math.log10(c)), label] as const),
  );
}

/**
 * What stays dissolved over an excess of the precipitant, as SVG text, the least marked: over the excess in per cent where
 * that is known, else over the amount that was added.
 *
 * @param over - from `dissolvedOverExcess`
 * @param size - pixels, 200 to 4000; default 640 × 420
 * @returns a complete `<svg>` with title and description, without scripts, styles or outside references
 * @throws {AqueousError} `aqueous.bad-option`, `aqueous.out-of-reach` for a size or where no solid contains the ion
 * @category Pictures
 * @example
 * overExcessDiagram(dissolvedOverExcess({
 *   ion: "Al^3+",
 *   water: "0.6 kg",
 *   dissolved: [{ formula: "AlCl3", amount: "0.1 mol" }],
 *   add: "NaOH",
 *   needed: "0.3 mol",
 *   amount: "0.45 mol",
 * })).startsWith("<svg ") // => true
 */
export function overExcessDiagram(over: OverExcess, size: PictureSize = {}): string {
  guard.fields(size, { width: true, height: true }, "size");
  if (!isOverExcess(over)) throw new AqueousError("aqueous.bad-option", "expected what dissolvedOverExcess gave");
  const { ion, precipitant, least, points, solids } = over;
  if (least === undefined || points.length < 2)
    throw new AqueousError("aqueous.out-of-reach", `no solid contains ${ion} here: nothing to draw`);
  const known = least.excess !== undefined;
  const place = ({ added, excess }: { added: number; excess: number | undefined }): number =>
    known ? 100 * excess! : added;
  const best = known ? least.excess.toNumber("%") : least.added.toNumber("mol");
  const lowest = least.concentration.toNumber("mol/L");
  const where = known
    ? `${least.excess.format({ decimals: 1, uncertainty: "none" })} over`
    : least.added.format({ significant: 3, uncertainty: "none" });
  const [first, last] = [place(points[0]!), place(points.at(-1)!)];
  return drawDissolved(
    size,
    `${ion} dissolved over ${precipitant}; solids: ${solids.join(", ")}`,
    `${leastStated(ion, least.concentration, where)} At the end ${(100 * points.at(-1)!.share).toPrecision(3)} % is dissolved.`,
    {
      from: first,
      to: last,
      step: roundStep(last - first, PARTS),
      name: known ? `${precipitant} in excess of what the equation needs / %` : `${precipitant} / mol`,
    },
    [
      {
        label: "",
        points: [...points.map((point) => [place(point), point.dissolved] as const), [best, lowest] as const].sort(
          ([a], [b]) => a - b,
        ),
      },
    ],
    [[best, lowest, where]],
  );
}

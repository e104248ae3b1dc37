// A label as it is printed: text and Markdown as a short document, HTML as one page of its own size.
import { inMarkup, onOneLine } from "../../foundation/printed";
import type { Block, SheetFormat } from "../document/blocks";
import { render } from "../document/render";
import { pictogram } from "../pictures/pictogram";

/** Sizes of a label as printed. */
export type LabelSize = "100 x 62 mm" | "60 x 30 mm";

/** What stands on a label. */
export interface Label {
  readonly title: string;
  /** What it is called, where that is not the title. */
  readonly name: string;
  readonly lines: readonly string[];
  readonly signal: string;
  readonly pictograms: readonly { readonly code: string; readonly name: string }[];
  readonly said: readonly string[];
  readonly careful: readonly string[];
  readonly closing: string;
  readonly foot: readonly string[];
}

const WORDLESS = {
  page: "A4",
  standalone: false,
  stylesheet: undefined,
  language: "en",
  foot: { batch: "", pages: "" },
  steps: { done: "", action: "", note: "" },
} as const;

export function labelText(label: Label, format: Exclude<SheetFormat, "html">): string {
  const { title, name, lines, signal, pictograms, said, careful, closing, foot } = label;
  const hazards = said.map((text) => (signal === "" ? text : `${signal}: ${text}`));
  const signs = pictograms.map(({ code }) => code).join(" ");
  const blocks: Block[] = [
    { kind: "title", text: title, lines: [], blanks: [] },
    {
      kind: "list",
      items: [...(name === "" ? [] : [name]), ...lines, ...hazards, ...(signs === "" ? [] : [signs]), ...careful],
    },
    { kind: "paragraph", text: foot.join("   ") },
    { kind: "paragraph", text: closing },
  ];
  return render(blocks, format, WORDLESS);
}

/** Millimetres, and points of words, title and pictograms. */
interface Measures {
  readonly width: number;
  readonly height: number;
  readonly points: number;
  readonly title: number;
  readonly sign: number;
}

const SIZES: Readonly<Record<LabelSize, Measures>> = {
  "100 x 62 mm": { width: 100, height: 62, points: 8.5, title: 15, sign: 14 },
  "60 x 30 mm": { width: 60, height: 30, points: 5.6, title: 8.5, sign: 7.5 },
};

/** A blank that the small label has room for. */
const SHORT = "______";

/** A figure and its unit stay on one line. */
const UNIT_AFTER = /(\d) (?=%|°C|m?L\b|k?g\b)/g;

const text = (words: string): string =>
  inMarkup(onOneLine(words).replace(UNIT_AFTER, "$1\u00A0")).replace(
    /[₀-₉]+/g,
    (digits) => `<sub>${digits.replace(/./g, (one) => String(one.charCodeAt(0) - 0x2080))}</sub>`,
  );

export function labelHTML(label: Label, size: LabelSize, language: string): string {
  const { width, height, points, title: large, sign } = SIZES[size];
  const { title, name, lines, signal, pictograms, said, careful, closing, foot } = label;
  const small = size === "60 x 30 mm";
  const signs = pictograms.map((one) => pictogram(one.code, one.name)).join("");
  const body = [
    signs === "" ? "" : `<div class="signs">${signs}</div>`,
    `<h1>${text(name === "" ? title : name)}</h1>`,
    name === "" ? "" : `<p class="formula">${text(title)}</p>`,
    signal === "" ? "" : `<p class="signal">${signal}</p>`,
    ...said.map((one) => `<p>${text(one)}</p>`),
    ...(small ? [] : careful.map((one) => `<p>${text(one)}</p>`)),
    `<p>${lines
      .slice(0, small ? 2 : undefined)
      .map(text)
      .join("; ")}</p>`,
    `<p class="foot">${foot.map((one) => text(small ? one.replace(/_+$/, SHORT) : one)).join(" &nbsp; ")}</p>`,
    small ? "" : `<p class="closing">${text(closing)}</p>`,
  ];
  return `<!doctype html>
<html lang="${inMarkup(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${inMarkup(title)}</title>
<style>@page{size:${width}mm ${height}mm;margin:0}body{margin:0}
.bottle-label{box-sizing:border-box;width:${width}mm;min-height:${height}mm;padding:${small ? 1.2 : 2}mm;border:.5pt solid #000;font:${points}pt/1.15 "Liberation Sans",Arial,sans-serif;color:#000;background:#fff;overflow:hidden}
.bottle-label h1{font-size:${large}pt;line-height:1.1;margin:0}
.bottle-label h1::first-letter{text-transform:uppercase}
.bottle-label .formula{font-size:${Math.round(large * 0.75)}pt}
.bottle-label sub{font-size:.75em;line-height:0}
.bottle-label p{margin:${small ? 0.2 : 0.5}mm 0}
.bottle-label .signs{float:right;display:flex;flex-direction:column;margin:0 0 1mm 2mm}
.bottle-label .pictogram{width:${sign}mm;height:${sign}mm}
.bottle-label .signal{font-weight:700;font-size:1.2em}
.bottle-label .closing{font-size:.85em}</style>
</head>
<body>
<main class="bottle-label">${body.filter((part) => part !== "").join("\n")}</main>
</body>
</html>
`;
}

// A sheet as HTML: a whole document that prints, or a fragment for a page of somebody else. No script, nothing fetched.
import { inMarkup as escaped } from "../../foundation/printed";
import { BEFORE_UNIT, type Blank, type Block, type Cell, type Picture, type StepBlock, wordsOf } from "./blocks";
import { type Page, paperOf, STYLE } from "./style";

/** How a document in HTML is made. */
export interface Document {
  readonly page: Page;
  /** A whole document; else the fragment alone. */
  readonly standalone: boolean;
  /** Rules of the caller, after those of the sheet. */
  readonly stylesheet: string | undefined;
  readonly language: string;
  /** Words at the foot of each page. */
  readonly foot: { readonly batch: string; readonly pages: string };
  /** Heads of the columns of the steps. */
  readonly steps: { readonly done: string; readonly action: string; readonly note: string };
}

const FILL = '<span class="fill"></span>';
const BOX = '<span class="box"></span>';
const fill = ({ name, unit, choices }: Blank): string => {
  const field =
    choices === undefined
      ? FILL
      : choices.map((word) => `<span class="choice">${BOX}${inMarkup(word)}</span>`).join(" ");
  return `<span>${inMarkup(name)}</span> ${field}${unit === undefined ? "" : ` ${inMarkup(unit)}`}`;
};

/** Figures with their units in bold: what is looked for in a sentence. */
const FIGURES =
  /(?<![\w.,^])\d[\d.,]*(?: (?:to|x) \d[\d.,]*)?(?:\u00a0| )?(?:(?:g|kg|mg|mL|L|K|min|h|s|mol|mol\/L|kJ|portions|times)\b|°C|%)/g;

/** Digits of formulas as they are set: low in the fonts that have them, and in those that have not. */
const LOW = /[₀-₉]+/g;
const HIGH = /[⁰¹²³⁴-⁹⁺⁻]+/g;
const PLAIN: Readonly<Record<string, string>> = { "¹": "1", "²": "2", "³": "3", "⁺": "+", "⁻": "−" };
const lowered = (digits: string): string =>
  `<sub>${digits.replace(/./g, (one) => String(one.charCodeAt(0) - 0x2080))}</sub>`;
const raised = (digits: string): string =>
  `<sup>${digits.replace(/./g, (one) => PLAIN[one] ?? String(one.charCodeAt(0) - 0x2070))}</sup>`;

/** Words of others as words, with the digits of formulas set low and high. */
const inMarkup = (text: string): string =>
  escaped(text).replace(LOW, lowered).replace(HIGH, raised).replace(BEFORE_UNIT, "\u00a0");

const withFigures = (text: string): string => inMarkup(text).replace(FIGURES, (figure) => `<strong>${figure}</strong>`);

const cellOf = (cell: Cell): string =>
  typeof cell === "string" ? inMarkup(cell) : cell.svg === "" ? inMarkup(cell.text) : cell.svg;

/** More key figures than this stand in two rows. */
const MOST_IN_A_ROW = 5;

/** A table of this many columns is read on a phone row by row, each cell under its head. */
const MANY_COLUMNS = 4;

function table(head: readonly string[], rows: readonly (readonly Cell[])[], figures: readonly number[]): string {
  const mark = (c: number): string => (figures.includes(c) ? ' class="figure"' : "");
  const isCards = head.length >= MANY_COLUMNS && head[0] !== "";
  const labels = head.map((text) => (isCards ? ` data-label="${escaped(text)}"` : ""));
  const cell = (one: Cell, c: number): string => {
    const kind =
      typeof one === "string" || one.svg === ""
        ? mark(c)
        : ` class="${one.svg.startsWith("<svg") ? "signs" : "blank"}"`;
    return `<td${kind}${labels[c] ?? ""}>${cellOf(one)}</td>`;
  };
  const heads = head.map((text, c) => `<th scope="col"${mark(c)}>${inMarkup(text)}</th>`).join("");
  const body = rows.map((row) => `<tr>${row.map(cell).join("")}</tr>`).join("");
  const titles = head.some((text) => text !== "") ? `<thead><tr>${heads}</tr></thead>` : "";
  return `<table${isCards ? ' class="cards"' : ""}>${titles}<tbody>${body}</tbody></table>`;
}

function steps(all: readonly StepBlock[], { done, action, note }: Document["steps"]): string {
  const rows = all.map(({ text, cautions, blanks }, i) => {
    const bars = cautions.length === 0 ? "" : `<div class="caution">${cautions.map(inMarkup).join(" ")}</div>`;
    const lines = blanks.map((one) => `<div>${fill(one)}</div>`).join("");
    return `<tr><td class="number">${i + 1}</td><td class="done">${BOX}</td><td class="action">${withFigures(text)}${bars}</td><td class="note">${lines}</td></tr>`;
  });
  const heads = ["", done, action, note].map((text) => `<th scope="col">${inMarkup(text)}</th>`).join("");
  return `<table class="steps"><thead><tr>${heads}</tr></thead><tbody>${rows.join("")}</tbody></table>`;
}

const figure = ({ svg, text }: Picture): string =>
  `<figure>${svg}${text === "" ? "" : `<figcaption>${inMarkup(text)}</figcaption>`}</figure>`;

function htmlOf(block: Block, words: Document["steps"]): string {
  switch (block.kind) {
    case "title": {
      const lines = block.lines.map((line) => `<p>${inMarkup(line)}</p>`).join("");
      const fills = block.blanks.map((one) => `<div>${fill(one)}</div>`).join("");
      return `<div class="head"><div><h1>${inMarkup(block.text)}</h1>${lines}</div><div class="fills">${fills}</div></div>`;
    }
    case "heading":
      return `<h2>${inMarkup(block.text)}</h2>`;
    case "paragraph":
      return `<p${block.small === true ? ' class="small"' : ""}>${inMarkup(block.text)}</p>`;
    case "list": {
      const tag = block.ordered === true ? "ol" : "ul";
      return `<${tag}>${block.items.map((item) => `<li>${inMarkup(item)}</li>`).join("")}</${tag}>`;
    }
    case "strip": {
      const cells = block.cells.map(
        ({ label, value, note }) => `<div>${inMarkup(label)}<strong>${inMarkup(value)}</strong>${inMarkup(note)}</div>`,
      );
      return `<div class="strip${cells.length > MOST_IN_A_ROW ? " long" : ""}">${cells.join("")}</div>`;
    }
    case "ticks":
      return `<p>${block.items.map((item) => `<span class="tick">${BOX}${inMarkup(item)}</span>`).join("")}</p>`;
    case "steps":
      return steps(block.steps, words);
    case "table":
      return table(block.head, block.rows, block.figures ?? []);
    case "pictures": {
      const pictures = block.pictures().map(figure).join("");
      return pictures === "" ? "" : `<div class="pictures">${pictures}</div>`;
    }
    case "blanks":
      return block.items.map((item) => `<p class="line">${fill(item)}</p>`).join("");
    case "columns": {
      const columns = block.columns.map((column) => `<div>${column.map((one) => htmlOf(one, words)).join("\n")}</div>`);
      return `<div class="columns">${columns.join("")}</div>`;
    }
    case "page":
      return '<div class="page"></div>';
  }
}

/** What stands in the bar of a browser: the first title, on one line. */
const titleOf = (blocks: readonly Block[]): string => {
  const first = blocks.find((block) => block.kind === "title" || block.kind === "heading");
  return first === undefined ? "" : wordsOf((first as { readonly text: string }).text);
};

/** Rules of the caller must not end the element they stand in. */
const inStyle = (css: string): string => css.replace(/<\/(?=style)/gi, "<\\/");

export function toHTML(blocks: readonly Block[], document: Document): string {
  const { page, standalone, stylesheet, language, foot, steps: words } = document;
  const parts = blocks.map((block) => htmlOf(block, words)).filter((part) => part !== "");
  const body = `<article class="bench-sheet">\n${parts.join("\n")}\n</article>\n`;
  const rules = stylesheet === undefined ? "" : `\n${inStyle(stylesheet)}`;
  if (!standalone) return rules === "" ? body : `<style>${rules}</style>\n${body}`;
  return `<!doctype html>
<html lang="${escaped(language)}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(titleOf(blocks))}</title>
<style>${paperOf(page, `${titleOf(blocks)} · ${foot.batch} ________`, foot.pages)}
${STYLE}${rules}</style>
</head>
<body>
${body}</body>
</html>
`;
}

// A sheet as a small document - headings, paragraphs, lists, tables - rendered as plain text, Markdown or HTML. The text
// form is for a printer: 78 columns, nothing but characters. Names and notes are other people's text: in no format do they
// become more than the words on one line that they are.
import { inMarkup, onOneLine } from "../foundation/printed";

/** One block of a sheet. */
export type Block =
  | { readonly kind: "heading"; readonly text: string; readonly level: 1 | 2 }
  | { readonly kind: "paragraph"; readonly text: string }
  | { readonly kind: "list"; readonly items: readonly string[]; readonly ordered?: boolean; readonly boxes?: boolean }
  | { readonly kind: "table"; readonly head: readonly string[]; readonly rows: readonly (readonly string[])[] };

/** How a sheet is written. */
export type SheetFormat = "text" | "markdown" | "html";

const WIDTH = 78;

/** Length as printed: surrogate pairs count once. */
const columns = (text: string): number => [...text.normalize("NFC")].length;

function wrap(text: string, first: string, next: string): string[] {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(/ +/)) {
    if (!empty && columns(line) + 1 + columns(word) > WIDTH) {
      lines.push(line);
      line = next;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  lines.push(line);
  return lines;
}

function textTable(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const all = [head, ...rows];
  const widths = head.map((_, c) => Math.max(...all.map((row) => columns(row[c] ?? ""))));
  const total = widths.reduce((a, b) => a + b, 0) + 2 * widths.length;
  if (total <= WIDTH) {
    const pad = (row: readonly string[]): string =>
      `  ${row.map((cell, c) => cell + " ".repeat(widths[c]! - columns(cell))).join("  ")}`.trimEnd();
    return [pad(head), `  ${widths.map((w) => "-".repeat(w)).join("  ")}`, ...rows.map(pad)];
  }
  // Too wide for the page: one block a row, each cell under its head.
  return rows.flatMap((row) => [
    ...wrap(row[0] ?? "", "  ", "  "),
    ...row.slice(1).flatMap((cell, c) => (cell === "" ? [] : wrap(`${head[c + 1]}: ${cell}`, "    ", "      "))),
  ]);
}

function toText(blocks: readonly Block[]): string {
  const parts = blocks.map((block) => {
    if (block.kind === "heading") {
      const line = (block.level === 1 ? "=" : "-").repeat(Math.min(WIDTH, columns(block.text)));
      return [...wrap(block.text, "", ""), line];
    }
    if (block.kind === "paragraph") return wrap(block.text, "", "");
    if (block.kind === "table") return textTable(block.head, block.rows);
    return block.items.flatMap((item, i) => {
      const mark = block.ordered ? `${i + 1}. ` : block.boxes ? "[ ] " : "- ";
      return wrap(item, `  ${mark}`, `  ${" ".repeat(mark.length)}`);
    });
  });
  return `${parts.map((lines, i) => (blocks[i]!.kind === "heading" && i > 0 ? ["", ...lines] : lines).join("\n")).join("\n")}\n`;
}

/** Signs that mark something up in Markdown, formulas between dollars among them. Brackets make no link without the square ones. */
const MARKS = /[\\|*_`<>[\]!#~$]|&(?=#?\w+;)/g;
/** Addresses that some readers turn into links by themselves. */
const ADDRESSES = /:(?=\/\/)|(?<=\bwww)\.|@/gi;
/** What begins a list, a rule or a heading at the start of a line. */
const BEGINNINGS = /^(\s*)([-+=]|\d+(?=[.)](?:\s|$)))/;

const markdownText = (text: string): string =>
  text
    .replace(MARKS, (c) => `\\${c}`)
    .replace(ADDRESSES, (c) => `\\${c}`)
    .replace(BEGINNINGS, (_, space: string, mark: string) =>
      /\d/.test(mark) ? `${space}${mark}\\` : `${space}\\${mark}`,
    )
    .trimStart();

function toMarkdown(blocks: readonly Block[]): string {
  const parts = blocks.map((block) => {
    if (block.kind === "heading") return `${"#".repeat(block.level)} ${markdownText(block.text)}`;
    if (block.kind === "paragraph") return markdownText(block.text);
    if (block.kind === "list") {
      const mark = (i: number): string => (block.ordered ? `${i + 1}.` : block.boxes ? "- [ ]" : "-");
      return block.items.map((item, i) => `${mark(i)} ${markdownText(item)}`).join("\n");
    }
    const line = (cells: readonly string[]): string => `| ${cells.map(markdownText).join(" | ")} |`;
    return [line(block.head), `|${" --- |".repeat(block.head.length)}`, ...block.rows.map(line)].join("\n");
  });
  return `${parts.join("\n\n")}\n`;
}

function toHTML(blocks: readonly Block[]): string {
  const cells = (row: readonly string[], tag: string): string =>
    `<tr>${row.map((cell) => `<${tag}>${inMarkup(cell)}</${tag}>`).join("")}</tr>`;
  const parts = blocks.map((block) => {
    if (block.kind === "heading") return `<h${block.level}>${inMarkup(block.text)}</h${block.level}>`;
    if (block.kind === "paragraph") return `<p>${inMarkup(block.text)}</p>`;
    if (block.kind === "table") {
      const body = block.rows.map((row) => cells(row, "td")).join("");
      return `<table><thead>${cells(block.head, "th")}</thead><tbody>${body}</tbody></table>`;
    }
    const tag = block.ordered ? "ol" : "ul";
    const box = block.boxes ? '<input type="checkbox"> ' : "";
    return `<${tag}>${block.items.map((item) => `<li>${box}${inMarkup(item)}</li>`).join("")}</${tag}>`;
  });
  return `<article>\n${parts.join("\n")}\n</article>\n`;
}

/** The block with every text on one line. */
function tidied(block: Block): Block {
  if (block.kind === "list") return { ...block, items: block.items.map(onOneLine) };
  if (block.kind !== "table") return { ...block, text: onOneLine(block.text) };
  return { ...block, head: block.head.map(onOneLine), rows: block.rows.map((row) => row.map(onOneLine)) };
}

export function render(blocks: readonly Block[], format: SheetFormat): string {
  return { text: toText, markdown: toMarkdown, html: toHTML }[format](blocks.map(tidied));
}

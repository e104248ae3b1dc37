// A document in the form that is asked for. Texts of other people stay the words on one line that they are.
import { onOneLine } from "../../foundation/printed";
import type { Blank, Block, Cell, SheetFormat } from "./blocks";
import { type Document, toHTML } from "./html";
import { toMarkdown } from "./markdown";
import { toText } from "./text";

const cell = (one: Cell): Cell => (typeof one === "string" ? onOneLine(one) : { ...one, text: onOneLine(one.text) });
const all = (texts: readonly string[]): string[] => texts.map(onOneLine);
const blanks = (some: readonly Blank[]): Blank[] => some.map((one) => ({ ...one, name: onOneLine(one.name) }));

/** The block with every text on one line. */
function tidied(block: Block): Block {
  switch (block.kind) {
    case "title":
      return { ...block, text: onOneLine(block.text), lines: all(block.lines), blanks: blanks(block.blanks) };
    case "heading":
    case "paragraph":
      return { ...block, text: onOneLine(block.text) };
    case "list":
    case "ticks":
      return { ...block, items: all(block.items) };
    case "blanks":
      return { ...block, items: blanks(block.items) };
    case "strip":
      return {
        ...block,
        cells: block.cells.map(({ label, value, note }) => ({
          label: onOneLine(label),
          value: onOneLine(value),
          note: onOneLine(note),
        })),
      };
    case "steps":
      return {
        ...block,
        steps: block.steps.map((step) => ({
          text: onOneLine(step.text),
          cautions: all(step.cautions),
          blanks: blanks(step.blanks),
        })),
      };
    case "table":
      return { ...block, head: all(block.head), rows: block.rows.map((row) => row.map(cell)) };
    case "pictures":
      return {
        ...block,
        pictures: () => block.pictures().map(({ svg, text }) => ({ svg, text: onOneLine(text) })),
      };
    case "columns":
      return { ...block, columns: block.columns.map((column) => column.map(tidied)) };
    case "page":
      return block;
  }
}

export function render(blocks: readonly Block[], format: SheetFormat, document: Document): string {
  const clean = blocks.map(tidied);
  if (format === "text") return toText(clean);
  return format === "markdown" ? toMarkdown(clean) : toHTML(clean, document);
}

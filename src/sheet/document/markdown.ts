// A sheet as Markdown. Names and notes are other people's text: nothing of them marks anything up.
import { type Blank, type Block, type Cell, narrow, wordsOf } from "./blocks";

/** Signs that mark something up, formulas between dollars among them. Brackets make no link without the square ones. */
const MARKS = /[\\|*_`<>[\]!#~$]|&(?=#?\w+;)/g;
/** Addresses that some readers turn into links by themselves. */
const ADDRESSES = /:(?=\/\/)|(?<=\bwww)\.|@/gi;
/** What begins a list, a rule or a heading at the start of a line. */
const BEGINNINGS = /^(\s*)([-+=]|\d+(?=[.)](?:\s|$)))/;

const escaped = (text: string): string =>
  text
    .replace(MARKS, (c) => `\\${c}`)
    .replace(ADDRESSES, (c) => `\\${c}`)
    .replace(BEGINNINGS, (_, space: string, mark: string) =>
      /\d/.test(mark) ? `${space}${mark}\\` : `${space}\\${mark}`,
    )
    .trimStart();

const LINE = "\\_\\_\\_\\_\\_\\_\\_\\_";
const blank = ({ name, unit = "", choices }: Blank): string =>
  [
    escaped(name),
    ...(choices === undefined ? [LINE] : choices.map((word) => `\\[ \\] ${escaped(word)}`)),
    escaped(unit),
  ]
    .filter((part) => part !== "")
    .join(" ");

function table(head: readonly string[], rows: readonly (readonly Cell[])[], figures: readonly number[]): string {
  const line = (cells: readonly Cell[]): string => `| ${cells.map((cell) => escaped(wordsOf(cell))).join(" | ")} |`;
  const rule = head.map((_, c) => (figures.includes(c) ? " ---: " : " --- ")).join("|");
  return [line(head), `|${rule}|`, ...rows.map(line)].join("\n");
}

function textOf(block: Block): string {
  switch (block.kind) {
    case "title":
      return [`# ${escaped(block.text)}`, ...block.lines.map(escaped), block.blanks.map(blank).join(" ")].join("\n\n");
    case "heading":
      return `## ${escaped(block.text)}`;
    case "paragraph":
      return escaped(block.text);
    case "list":
      return block.items.map((item, i) => `${block.ordered === true ? `${i + 1}.` : "-"} ${escaped(item)}`).join("\n");
    case "strip":
      return block.cells
        .map(
          ({ label, value, note }) =>
            `- ${escaped(label)}: **${escaped(value)}**${note === "" ? "" : `, ${escaped(note)}`}`,
        )
        .join("\n");
    case "ticks":
      return block.items.map((item) => `- [ ] ${escaped(item)}`).join("\n");
    case "steps":
      return block.steps
        .map(({ text, cautions, blanks }, i) =>
          [
            `${i + 1}. [ ] ${escaped(text)}`,
            ...cautions.map((caution) => `   **${escaped(caution)}**`),
            ...(blanks.length === 0 ? [] : [`   ${blanks.map(blank).join(" ")}`]),
          ].join("\n"),
        )
        .join("\n");
    case "table": {
      const { head, rows, figures } = narrow(block);
      return table(head, rows, figures);
    }
    case "pictures":
      return "";
    case "blanks":
      return block.items.map((item) => `- ${blank(item)}`).join("\n");
    case "columns":
      return joined(block.columns.flat());
    case "page":
      return "";
  }
}

const joined = (blocks: readonly Block[]): string =>
  blocks
    .map(textOf)
    .filter((text) => text !== "")
    .join("\n\n");

export const toMarkdown = (blocks: readonly Block[]): string => `${joined(blocks)}\n`;

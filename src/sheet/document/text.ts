// A sheet as plain text for a printer: 78 columns, nothing but characters.
import { type Block, type Cell, narrow, type StepBlock, wordsOf } from "./blocks";

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

const under = (text: string, sign: string): string => sign.repeat(Math.min(WIDTH, columns(text)));

function table(head: readonly string[], body: readonly (readonly Cell[])[], figures: readonly number[]): string[] {
  const rows = body.map((row) => row.map(wordsOf));
  const widths = head.map((_, c) => Math.max(...[head, ...rows].map((row) => columns(row[c] ?? ""))));
  const total = widths.reduce((a, b) => a + b, 0) + 2 * widths.length;
  if (total <= WIDTH) {
    const pad = (row: readonly string[]): string => {
      const cells = row.map((cell, c) => {
        const space = " ".repeat(widths[c]! - columns(cell));
        return figures.includes(c) ? space + cell : cell + space;
      });
      return `  ${cells.join("  ")}`.trimEnd();
    };
    return [pad(head), `  ${widths.map((w) => "-".repeat(w)).join("  ")}`, ...rows.map(pad)];
  }
  // Too wide for the page: one block a row, each cell under its head.
  return rows.flatMap((row) => [
    ...wrap(row[0] ?? "", "  ", "  "),
    ...row.slice(1).flatMap((cell, c) => (cell === "" ? [] : wrap(`${head[c + 1]}: ${cell}`, "    ", "      "))),
  ]);
}

const LINE = "________";

const blank = (name: string): string => `${name} ${LINE}`;

function step({ text, cautions, blanks }: StepBlock, i: number): string[] {
  const mark = `  ${i + 1}. [ ] `;
  const indent = " ".repeat(mark.length);
  return [
    ...wrap(text, mark, indent),
    ...cautions.flatMap((caution) => wrap(caution, `${indent}! `, `${indent}  `)),
    ...(blanks.length === 0 ? [] : wrap(blanks.map(blank).join("   "), indent, indent)),
  ];
}

function linesOf(block: Block): string[] {
  switch (block.kind) {
    case "title":
      return [
        ...wrap(block.text, "", ""),
        under(block.text, "="),
        ...block.lines.flatMap((line) => wrap(line, "", "")),
        ...wrap(block.blanks.map(blank).join("   "), "", ""),
      ];
    case "heading":
      return [...wrap(block.text, "", ""), under(block.text, "-")];
    case "paragraph":
      return wrap(block.text, "", "");
    case "list":
      return block.items.flatMap((item, i) => {
        const mark = block.ordered === true ? `${i + 1}. ` : "- ";
        return wrap(item, `  ${mark}`, `  ${" ".repeat(mark.length)}`);
      });
    case "strip":
      return table(
        ["", "", ""],
        block.cells.map(({ label, value, note }) => [label, value, note]),
        [],
      ).slice(2);
    case "ticks": {
      // No item is broken over two lines.
      const joined = block.items.map((item) => `[ ] ${item}`.replace(/ /g, "\u00a0")).join(" ");
      return wrap(joined, "  ", "  ").map((line) => line.replace(/\u00a0/g, " "));
    }
    case "steps":
      return block.steps.flatMap(step);
    case "table": {
      const { head, rows, figures } = narrow(block);
      return table(head, rows, figures);
    }
    case "pictures":
      return [];
    case "blanks":
      return block.items.flatMap((item) => wrap(blank(item), "  ", "  "));
    case "columns":
      return block.columns
        .flat()
        .flatMap((one, i) => (one.kind === "heading" && i > 0 ? ["", ...linesOf(one)] : linesOf(one)));
    case "page":
      return [];
  }
}

export function toText(blocks: readonly Block[]): string {
  const parts = blocks.flatMap((block, i) => {
    const lines = linesOf(block);
    if (lines.length === 0) return [];
    const opens = block.kind === "heading" || (block.kind === "columns" && block.columns[0]?.[0]?.kind === "heading");
    return [(opens && i > 0 ? ["", ...lines] : lines).join("\n")];
  });
  return `${parts.join("\n")}\n`;
}

// A sheet as plain text for a printer: 78 columns, nothing but characters.
import { BEFORE_UNIT, type Blank, type Block, type Cell, narrow, type StepBlock, wordsOf } from "./blocks";

const WIDTH = 78;

/** Halves of pairs, and signs that join the letter before them. */
const JOINED = /[\p{Cs}\p{M}]/u;

/** Length as printed: surrogate pairs count once. */
const columns = (text: string): number => (JOINED.test(text) ? [...text.normalize("NFC")].length : text.length);

/** Length of the words of a text: most have no sign that asks for counting. */
const measureOf = (text: string): ((word: string) => number) => (JOINED.test(text) ? columns : (word) => word.length);

/** A space that no line ends at. */
const HARD = "\u00a0";
const soft = (line: string): string => line.replaceAll(HARD, " ");

/** The words between spaces; a figure and its unit are one. */
const wordsIn = (text: string): string[] => {
  const words = text.replace(BEFORE_UNIT, HARD).split(" ");
  return text.includes("  ") ? words.filter((word, i) => word !== "" || i === 0) : words;
};

function wrap(text: string, first: string, next: string): string[] {
  const measure = measureOf(text);
  const lines: string[] = [];
  let line = first;
  let filled = columns(first);
  let empty = true;
  for (const word of wordsIn(text)) {
    const length = measure(word);
    if (!empty && filled + 1 + length > WIDTH) {
      lines.push(line);
      line = next;
      filled = columns(next);
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    filled += empty ? length : length + 1;
    empty = false;
  }
  lines.push(line);
  return lines.map(soft);
}

const under = (text: string, sign: string): string => sign.repeat(Math.min(WIDTH, columns(text)));

/** A column that is narrower than this is not read but spelled. */
const NARROWEST = 24;

/** Columns as they fit the page: the widest one wrapped where that leaves it room to be read; undefined where it does not. */
function fitted(widths: readonly number[]): number[] | undefined {
  const over = widths.reduce((a, b) => a + b, 0) + 2 * widths.length - WIDTH;
  if (over <= 0) return [...widths];
  const widest = widths.indexOf(Math.max(...widths));
  const left = widths[widest]! - over;
  return left < NARROWEST ? undefined : widths.map((width, c) => (c === widest ? left : width));
}

/** Words in lines of a width; a word that is longer stands alone. */
function folded(text: string, width: number): string[] {
  if (columns(text) <= width) return [text];
  const measure = measureOf(text);
  const lines: string[] = [];
  let line = "";
  let filled = 0;
  for (const word of wordsIn(text)) {
    const length = measure(word);
    if (line !== "" && filled + 1 + length > width) {
      lines.push(line);
      line = word;
      filled = length;
    } else {
      line = line === "" ? word : `${line} ${word}`;
      filled = line === word ? length : filled + 1 + length;
    }
  }
  return [...lines, line].map(soft);
}

function table(head: readonly string[], body: readonly (readonly Cell[])[], figures: readonly number[]): string[] {
  const rows = body.map((row) => row.map(wordsOf));
  const needed = head.map((_, c) => Math.max(...[head, ...rows].map((row) => columns(row[c] ?? ""))));
  const widths = fitted(needed);
  if (widths !== undefined) {
    const pad = (row: readonly string[]): string => {
      const cells = row.map((cell, c) => {
        const space = " ".repeat(Math.max(0, widths[c]! - columns(cell)));
        return figures.includes(c) ? space + cell : cell + space;
      });
      return `  ${cells.join("  ")}`.trimEnd();
    };
    const lines = rows.flatMap((row) => {
      const cells = row.map((cell, c) => folded(cell, widths[c]!));
      const most = Math.max(...cells.map((cell) => cell.length));
      return Array.from({ length: most }, (_, i) => pad(cells.map((cell) => cell[i] ?? "")));
    });
    const fits = lines.every((line) => columns(line) <= WIDTH);
    if (fits) return [pad(head), `  ${widths.map((w) => "-".repeat(w)).join("  ")}`, ...lines];
  }
  // Too wide for the page: one block a row, each cell under its head.
  return rows.flatMap((row) => [
    ...wrap(row[0] ?? "", "  ", "  "),
    ...row.slice(1).flatMap((cell, c) => (cell === "" ? [] : wrap(`${head[c + 1]}: ${cell}`, "    ", "      "))),
  ]);
}

const LINE = "________";

/** A blank, which is not broken over two lines. */
const blank = ({ name, unit, choices }: Blank): string =>
  [
    name,
    ...(choices === undefined ? [LINE] : choices.map((word) => `[ ] ${word}`)),
    ...(unit === undefined ? [] : [unit]),
  ]
    .join(" ")
    .replace(/ /g, HARD);

/** Blanks beside each other, as many as a line takes. */
const blanksOn = (blanks: readonly Blank[], indent: string): string[] =>
  wrap(blanks.map(blank).join("  "), indent, indent);

function step({ text, cautions, blanks }: StepBlock, i: number): string[] {
  const mark = `  ${i + 1}. [ ] `;
  const indent = " ".repeat(mark.length);
  return [
    ...wrap(text, mark, indent),
    ...cautions.flatMap((caution) => wrap(caution, `${indent}! `, `${indent}  `)),
    ...(blanks.length === 0 ? [] : blanksOn(blanks, indent)),
  ];
}

function strip(cells: Extract<Block, { readonly kind: "strip" }>["cells"]): string[] {
  const width = Math.max(...cells.map(({ label }) => columns(label)));
  return cells.flatMap(({ label, value, note }) =>
    wrap(
      note === "" ? value : `${value} (${note})`,
      `  ${label}${" ".repeat(width - columns(label))}  `,
      " ".repeat(width + 4),
    ),
  );
}

/** Things to tick, as many as a line holds: none is broken over two lines but one that is longer than a line, which stands by itself. */
function ticks(items: readonly string[]): string[] {
  const [mark, indent] = ["  [ ] ", "      "];
  const isLong = (item: string): boolean => columns(mark + item) > WIDTH;
  const lines: string[] = [];
  let short: string[] = [];
  const close = (): void => {
    if (short.length > 0) lines.push(...wrap(short.join(" "), "  ", "  "));
    short = [];
  };
  for (const item of items) {
    if (isLong(item)) {
      close();
      lines.push(...wrap(item, mark, indent));
    } else short.push(`[ ] ${item}`.replace(/ /g, HARD));
  }
  close();
  return lines;
}

function linesOf(block: Block): string[] {
  switch (block.kind) {
    case "title":
      return [
        ...wrap(block.text, "", ""),
        under(block.text, "="),
        ...block.lines.flatMap((line) => wrap(line, "", "")),
        ...blanksOn(block.blanks, ""),
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
      return strip(block.cells);
    case "ticks":
      return ticks(block.items);
    case "steps":
      return block.steps.flatMap(step);
    case "table": {
      const { head, rows, figures } = narrow(block);
      return table(head, rows, figures);
    }
    case "pictures":
      return [];
    case "blanks":
      return block.items.flatMap((item) => blanksOn([item], "  "));
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

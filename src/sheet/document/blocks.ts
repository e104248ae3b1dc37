// What a sheet is made of: a small document of blocks that text, Markdown and HTML render in the same order.

/** A picture that only HTML shows; the other forms print its words. */
export interface Picture {
  readonly svg: string;
  readonly text: string;
}

/** A cell of a table: words, and for HTML a picture in their place. */
export type Cell = string | Picture;

/** Something to fill in: a line with its unit, or what is ticked of a few words. */
export interface Blank {
  readonly name: string;
  readonly unit?: string;
  readonly choices?: readonly string[];
}

/** One action of the work. */
export interface StepBlock {
  readonly text: string;
  /** What this step itself asks for. */
  readonly cautions: readonly string[];
  /** The observations it takes. */
  readonly blanks: readonly Blank[];
}

/** One block of a sheet. */
export type Block =
  | {
      readonly kind: "title";
      readonly text: string;
      /** Lines under the title: formula, equation, where it is from. */
      readonly lines: readonly string[];
      /** What is filled in by hand beside it. */
      readonly blanks: readonly Blank[];
    }
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "paragraph"; readonly text: string; readonly small?: boolean }
  | { readonly kind: "list"; readonly items: readonly string[]; readonly ordered?: boolean }
  /** Figures that are looked for first. */
  | {
      readonly kind: "strip";
      readonly cells: readonly { readonly label: string; readonly value: string; readonly note: string }[];
    }
  /** Things to tick off. */
  | { readonly kind: "ticks"; readonly items: readonly string[] }
  | { readonly kind: "steps"; readonly steps: readonly StepBlock[] }
  | {
      readonly kind: "table";
      readonly head: readonly string[];
      readonly rows: readonly (readonly Cell[])[];
      /** Columns of figures, set to the right. */
      readonly figures?: readonly number[];
      /** Columns that only the wide page has room for. */
      readonly wide?: readonly number[];
    }
  /** Drawn only where they are shown. */
  | { readonly kind: "pictures"; readonly pictures: () => readonly Picture[] }
  /** Lines to fill in. */
  | { readonly kind: "blanks"; readonly items: readonly Blank[] }
  /** Blocks beside each other where there is room. */
  | { readonly kind: "columns"; readonly columns: readonly (readonly Block[])[] }
  | { readonly kind: "page" };

/** How a sheet is written. */
export type SheetFormat = "text" | "markdown" | "html";

/** A cell to write in, with the unit behind the line. */
export const blankCell = (unit = ""): Picture => ({
  svg: unit === "" ? "&nbsp;" : unit,
  text: unit === "" ? "________" : `______ ${unit}`,
});

/** A cell to write in. */
export const BLANK: Picture = /* @__PURE__ */ blankCell();

/** The table without the columns that only the wide page has room for. */
export function narrow({ head, rows, figures = [], wide = [] }: Extract<Block, { readonly kind: "table" }>): {
  readonly head: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  readonly figures: readonly number[];
} {
  const kept = head.map((_, c) => c).filter((c) => !wide.includes(c));
  return {
    head: kept.map((c) => head[c]!),
    rows: rows.map((row) => kept.map((c) => row[c] ?? "")),
    figures: kept.flatMap((c, i) => (figures.includes(c) ? [i] : [])),
  };
}

/** Words of a cell. */
export const wordsOf = (cell: Cell): string => (typeof cell === "string" ? cell : cell.text);

/** A figure and its unit stand on one line. */
export const BEFORE_UNIT = /(?<=\d) (?=(?:%|°C|(?:g|kg|mL|L|K|min|mol)\b))/g;

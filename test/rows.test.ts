// A changed figure is a one-line diff: a row of a table, and a row inside a row, stands on a line of its own.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../src", import.meta.url));
const tables = readdirSync(root, { recursive: true, encoding: "utf8" }).filter((file) =>
  /[\\/]data[\\/][^\\/]+\.ts$/.test(file),
);

/** Whether a row has rows of its own: a list of two objects or more, each of which has its line. */
const hasRows = (node: ts.Node): boolean =>
  (ts.isArrayLiteralExpression(node) &&
    node.elements.length > 1 &&
    node.elements.every(ts.isObjectLiteralExpression)) ||
  (ts.forEachChild(node, (child) => hasRows(child) || undefined) ?? false);

/** Rows of one table file that take several lines though they hold neither rows of their own nor a comment. */
const spread = (file: string): string[] => {
  const text = readFileSync(`${root}/${file}`, "utf8");
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isObjectLiteralExpression(node) && ts.isArrayLiteralExpression(node.parent)) {
      const row = node.getText(source);
      if (row.includes("\n") && !/\/[*/] /.test(row) && !hasRows(node)) {
        found.push(`${file}:${source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1}`);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};

describe("tables", () => {
  it("are looked for in the right place", () => {
    expect(tables.length).toBeGreaterThan(60);
  });

  it("have one row a line", () => {
    expect(tables.flatMap(spread)).toEqual([]);
  });
});

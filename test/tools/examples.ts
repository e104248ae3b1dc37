// Finds every code example of the project - docstrings, README, guides - and turns it into a module that checks its own
// `// =>` lines, so that what is documented is what runs.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

export interface Example {
  /** File and line it stands at. */
  readonly where: string;
  readonly code: string;
  /** What it prints, where a block of plain text follows it. */
  readonly prints: string | undefined;
  /** Docstring examples have every export in scope. */
  readonly bare: boolean;
}

const list = (folder: string, ending: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(ending) && !file.startsWith("reference"))
    .sort()
    .map((file) => join(folder, file));

const lineOf = (text: string, index: number): number => text.slice(0, index).split("\n").length;

function docstringExamples(root: string): Example[] {
  return list(join(root, "src"), ".ts").flatMap((file) => {
    const text = readFileSync(file, "utf8");
    return [...text.matchAll(/\/\*\*([\s\S]*?)\*\//g)].flatMap((comment) =>
      [...comment[1]!.matchAll(/@example\s*\n([\s\S]*?)(?=\n\s*\*\s*@|$)/g)].map((match) => ({
        where: `${file.slice(root.length + 1)}:${lineOf(text, comment.index! + 3 + match.index!)}`,
        code: match[1]!
          .replace(/^\s*\* ?/gm, "")
          .replace(/^```\w*$/gm, "")
          .trimEnd(),
        prints: undefined,
        bare: true,
      })),
    );
  });
}

function guideExamples(root: string): Example[] {
  return [join(root, "README.md"), join(root, "DEVELOPERS.md"), ...list(join(root, "docs"), ".md")].flatMap((file) => {
    const text = readFileSync(file, "utf8");
    return [...text.matchAll(/```ts\n([\s\S]*?)```(?:\n+```text\n([\s\S]*?)```)?/g)].map((match) => ({
      where: `${file.slice(root.length + 1)}:${lineOf(text, match.index!)}`,
      code: match[1]!,
      prints: match[2],
      bare: false,
    }));
  });
}

export const examplesOf = (root: string): Example[] => [...docstringExamples(root), ...guideExamples(root)];

/** The example as a module with one function, its expected values turned into checks. */
export function toModule({ code, bare }: Example, names: readonly string[]): string {
  const source = ts.createSourceFile("example.ts", code, ts.ScriptTarget.ES2022, true);
  const imports: string[] = [];
  const edits: { at: number; end: number; text: string }[] = [];
  const expectedAfter = (node: ts.Node): { value: string; end: number } | undefined => {
    const rest = /^[ \t;]*\/\/ => (.*)/.exec(code.slice(node.end));
    return rest === null ? undefined : { value: rest[1]!.trim(), end: node.end + rest[0].length };
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) {
      imports.push(node.getText());
      edits.push({ at: node.getStart(), end: node.end, text: "" });
      return;
    }
    const expected = ts.isExpressionStatement(node) || ts.isVariableStatement(node) ? expectedAfter(node) : undefined;
    if (expected !== undefined && ts.isExpressionStatement(node)) {
      const text = `$check(${node.expression.getText()}, ${JSON.stringify(expected.value)});`;
      edits.push({ at: node.getStart(), end: expected.end, text });
      return;
    }
    if (expected !== undefined && ts.isVariableStatement(node)) {
      const name = node.declarationList.declarations[0]!.name.getText();
      edits.push({ at: node.end, end: expected.end, text: `; $check(${name}, ${JSON.stringify(expected.value)});` });
      return;
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  let body = code;
  for (const { at, end, text } of edits.sort((a, b) => b.at - a.at)) body = body.slice(0, at) + text + body.slice(end);
  const used = names.filter((name) => new RegExp(`(?<![\\w.$])${name}(?![\\w$])`).test(code));
  const head = bare && used.length > 0 ? `import { ${used.join(", ")} } from "preparative";` : imports.join("\n");
  return `${head}\nexport default async function ($check: (value: unknown, expected: string) => void): Promise<void> {\n${body}\n}\n`;
}

/** A value as the examples write it. */
export function show(value: unknown): string {
  if (typeof value === "string") return JSON.stringify(value);
  if (typeof value === "bigint") return `${value}n`;
  if (Array.isArray(value)) return `[${value.map(show).join(", ")}]`;
  if (typeof value !== "object" || value === null) return String(value);
  if (value.toString !== Object.prototype.toString) return String(value);
  const fields = Object.entries(value).map(
    ([key, field]) => `${/^\w+$/.test(key) ? key : JSON.stringify(key)}: ${show(field)}`,
  );
  return fields.length === 0 ? "{}" : `{ ${fields.join(", ")} }`;
}

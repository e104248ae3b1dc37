// After the build: takes out of the declarations what is marked as internal, which the bundler of declarations leaves in.
// Members of classes and interfaces go, and then what nothing leads to any more.
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

/** Is it marked in the comment right before it? */
function isMarked(node: ts.Node, text: string): boolean {
  const last = ts.getLeadingCommentRanges(text, node.pos)?.at(-1);
  return last !== undefined && /@internal\b/.test(text.slice(last.pos, last.end));
}

function without(text: string, pieces: readonly ts.Node[]): string {
  let left = text;
  for (const { pos, end } of [...pieces].sort((a, b) => b.pos - a.pos)) left = left.slice(0, pos) + left.slice(end);
  return left;
}

const fileOf = (text: string): ts.SourceFile => ts.createSourceFile("types.d.ts", text, ts.ScriptTarget.Latest, true);

function namesIn(node: ts.Node, names = new Set<string>()): Set<string> {
  if (ts.isIdentifier(node)) names.add(node.text);
  ts.forEachChild(node, (child) => void namesIn(child, names));
  return names;
}

/** What a statement declares; nothing for those that only bring in or hand out. */
function declaredBy(statement: ts.Statement): readonly string[] {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.map(({ name }) => name.getText());
  return (ts.isFunctionDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isClassDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement)) &&
    statement.name !== undefined
    ? [statement.name.text]
    : [];
}

const isHandedOut = (statement: ts.Statement): boolean =>
  ts.isExportDeclaration(statement) ||
  (ts.canHaveModifiers(statement) &&
    (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword));

/** The declarations without the members that are marked as internal, and without what then nothing leads to. */
export function withoutInternals(text: string): string {
  const members = fileOf(text).statements.flatMap((statement) =>
    ts.isClassDeclaration(statement) || ts.isInterfaceDeclaration(statement)
      ? [...statement.members].filter((member) => isMarked(member, text))
      : [],
  );
  const left = without(text, members);
  const { statements } = fileOf(left);
  const reached = new Set(statements.filter(isHandedOut));
  for (const statement of reached) {
    const names = namesIn(statement);
    for (const other of statements) if (declaredBy(other).some((name) => names.has(name))) reached.add(other);
  }
  return without(
    left,
    statements.filter((statement) => declaredBy(statement).length > 0 && !reached.has(statement)),
  );
}

const dist = fileURLToPath(new URL("../../dist/", import.meta.url));
if (process.argv[1] === fileURLToPath(import.meta.url))
  for (const file of readdirSync(dist, { recursive: true, encoding: "utf8" }))
    if (/\.d\.c?ts$/.test(file)) {
      const text = readFileSync(join(dist, file), "utf8");
      writeFileSync(join(dist, file), withoutInternals(text));
    }

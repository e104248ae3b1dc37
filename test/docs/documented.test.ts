// Every public name and every member that a caller sees has a docstring: what an editor shows while somebody writes.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";
import { commented, found, isInternal, publicOf } from "../tools/api";

const hasDoc = (node: ts.Node): boolean => ts.getJSDocCommentsAndTags(node).length > 0;

/** An interface and all that it extends: its members are theirs too. */
function withExtended(node: ts.Declaration): ts.Declaration[] {
  if (!ts.isInterfaceDeclaration(node)) return [node];
  // `Omit<Plan, "steps">` and the like extend what stands in them
  const names = (node.heritageClauses ?? []).flatMap(({ types }) =>
    types.map(({ expression, typeArguments }) =>
      ["Omit", "Pick", "Partial", "Readonly"].includes(expression.getText())
        ? typeArguments![0]!.getText()
        : expression.getText(),
    ),
  );
  const { fileName } = node.getSourceFile();
  const extended = names.filter((name) => name !== "Iterable").flatMap((name) => found(fileName, name).declarations);
  return [node, ...extended.flatMap(withExtended)];
}

/** What an editor shows: of several overloads each one, and not what stands at their body. */
const seenOf = (declarations: readonly ts.Declaration[]): readonly ts.Declaration[] =>
  declarations.filter((one) => declarations.length === 1 || !ts.isFunctionDeclaration(one) || one.body === undefined);

/** Names and members without a docstring, those that are extended too; pairs of accessors count once. */
function undocumented(path?: string): string[] {
  return publicOf(path).flatMap(({ name, declarations }) => {
    const seen = seenOf(declarations);
    const said = (one: ts.Declaration): boolean => hasDoc(commented(one));
    const missing = (seen.every(ts.isFunctionDeclaration) ? seen.every(said) : seen.some(said)) ? [] : [name];
    for (const one of seen.flatMap(withExtended)) {
      if (!ts.isInterfaceDeclaration(one) && !ts.isClassDeclaration(one)) continue;
      const members = new Map<string, boolean>();
      for (const member of one.members) {
        if (isInternal(member) || ts.isConstructorDeclaration(member) || ts.isClassStaticBlockDeclaration(member))
          continue;
        const key = member.name?.getText() ?? "[index]";
        members.set(key, members.get(key) === true || hasDoc(member));
      }
      for (const [key, documented] of members) if (!documented) missing.push(`${name}.${key}`);
    }
    return missing;
  });
}

it("finds what has no docstring", () => {
  const folder = mkdtempSync(join(tmpdir(), "documented-"));
  try {
    const path = join(folder, "index.ts");
    writeFileSync(
      path,
      [
        "export type Bare = string;",
        "interface Base {",
        "  readonly below: string;",
        "}",
        "/** Said. */",
        "export function twice(text: string): string;",
        "export function twice(text: number): string;",
        "/** Said where nobody sees it. */",
        "export function twice(text: string | number): string { return String(text); }",
        "/** Said. */",
        "export interface Half extends Base {",
        "  /** Said. */",
        "  readonly one: string;",
        "  readonly two: string;",
        "}",
        "/** Said. */",
        "export class Whole {",
        "  #own = 1;",
        "  private other = 2;",
        "  /** @internal */",
        "  inner = 3;",
        "  /** Said once. */",
        "  of(text: string): string;",
        "  of(text: number): string;",
        "  of(text: string | number): string { return String(text); }",
        "}",
      ].join("\n"),
    );
    expect(undocumented(path)).toEqual(["Bare", "Half.two", "Half.below", "twice"]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

it("every public name and member has a docstring", () => {
  expect(undocumented()).toEqual([]);
});

// Every public name and every member that a caller sees has a docstring: what an editor shows while somebody writes.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import ts from "typescript";
import { expect, it } from "vitest";
import { commented, isInternal, publicOf } from "../tools/api";

const hasDoc = (node: ts.Node): boolean => ts.getJSDocCommentsAndTags(node).length > 0;

/** Names and members without a docstring; overloads and pairs of accessors count once. */
function undocumented(path?: string): string[] {
  return publicOf(path).flatMap(({ name, declarations }) => {
    const missing = declarations.some((one) => hasDoc(commented(one))) ? [] : [name];
    for (const one of declarations) {
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
        "/** Said. */",
        "export interface Half {",
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
    expect(undocumented(path)).toEqual(["Bare", "Half.two"]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

it("every public name and member has a docstring", () => {
  expect(undocumented()).toEqual([]);
});

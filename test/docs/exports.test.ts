// Every public name tells what it answers: a docstring with a category, an example for what can be called, and a `try…`
// twin for every function that says it throws.
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const entry = `${root}src/index.ts`;
const program = ts.createProgram([entry], {
  target: ts.ScriptTarget.ES2022,
  moduleResolution: ts.ModuleResolutionKind.Bundler,
  module: ts.ModuleKind.ESNext,
});
const checker = program.getTypeChecker();
const names = checker.getExportsOfModule(checker.getSymbolAtLocation(program.getSourceFile(entry)!)!).map((symbol) => {
  const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  const tags = target.getJsDocTags(checker);
  const declaration = target.valueDeclaration ?? target.declarations?.[0];
  const type =
    target.valueDeclaration === undefined
      ? undefined
      : checker.getTypeOfSymbolAtLocation(target, target.valueDeclaration);
  return {
    name: symbol.name,
    where: declaration?.getSourceFile().fileName.slice(root.length) ?? "",
    says: ts.displayPartsToString(target.getDocumentationComment(checker)),
    tags: tags.map((tag) => tag.name),
    callable: type !== undefined && type.getCallSignatures().length > 0,
    isClass: (target.flags & ts.SymbolFlags.Class) !== 0,
    isValue: target.valueDeclaration !== undefined,
  };
});
const exported = new Set(names.map((n) => n.name));

describe("public names", () => {
  it("are many", () => expect(names.length).toBeGreaterThan(100));

  it("each have a docstring", () => {
    expect(names.filter((n) => n.isValue && n.says === "").map((n) => `${n.where} ${n.name}`)).toEqual([]);
  });

  it("each have a category and an example, where they can be called or constructed", () => {
    const wanting = names.filter(
      (n) =>
        (n.callable || n.isClass) &&
        !n.tags.includes("internal") &&
        !(n.tags.includes("category") && n.tags.includes("example")),
    );
    expect(wanting.map((n) => `${n.where} ${n.name}`)).toEqual([]);
  });

  it("each have a twin, where they say that they throw", () => {
    const wanting = names.filter((n) => n.callable && n.tags.includes("throws") && !n.name.startsWith("try"));
    const missing = wanting.filter((n) => !exported.has(`try${n.name[0]!.toUpperCase()}${n.name.slice(1)}`));
    expect(missing.map((n) => `${n.where} ${n.name}`)).toEqual([]);
  });
});

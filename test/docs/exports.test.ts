// Every public name tells what it answers: a docstring with a category, an example for what can be called, and a `try…`
// twin where a text is read that a person typed.
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { isInternal, publicOf } from "../tools/api";

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
/** Everything else is wrapped by `attempt`. */
const TWINS =
  "tryQuantity tryParseFormula tryMolarMass tryParseEquation tryBalance tryReactionSpace tryConstitutionOf tryFormulaOf " +
  "tryNameOf trySubstance tryShopMaterial tryCautions trySolubilityOf tryAqueousComposition tryPlanPreparation " +
  "tryEvaluateRun tryPlanSequence tryCheckRecipe tryFindRoutes tryBenchSheet tryBottleLabel tryFromJSON";
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

  it("have a twin where they read what a person typed, and only there", () => {
    const twins = names.filter((n) => n.callable && /^try[A-Z]/.test(n.name)).map((n) => n.name);
    expect(twins.sort()).toEqual(TWINS.split(" ").sort());
    expect(twins.length, "rows to test").toBeGreaterThan(0);
    for (const twin of twins) expect(exported.has(twin[3]!.toLowerCase() + twin.slice(4)), twin).toBe(true);
  });

  it("have members that each tell what they are", () => {
    const wanting: string[] = [];
    let members = 0;
    for (const { name, declarations } of publicOf())
      for (const one of declarations) {
        if (!(ts.isInterfaceDeclaration(one) || ts.isClassDeclaration(one))) continue;
        for (const member of one.members) {
          if (isInternal(member) || ts.isConstructorDeclaration(member)) continue;
          if (member.name === undefined || ts.isComputedPropertyName(member.name)) continue;
          members += 1;
          if (ts.getJSDocCommentsAndTags(member).length === 0) wanting.push(`${name}.${member.name.getText()}`);
        }
      }
    expect(wanting).toEqual([]);
    expect(members).toBeGreaterThan(1500);
  });
});

// The layers in order, lowest first: a layer may use those before it, never those after it.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const LAYERS = [
  "foundation",
  "quantity",
  "element",
  "formula",
  "ion",
  "equation",
  "amount",
  "hydrate",
  "substance",
  "aqueous",
  "solubility",
  "thermochemistry",
  "facts",
  "preparation",
  "route",
  "sheet",
];

const src = fileURLToPath(new URL("../src", import.meta.url));
const files = readdirSync(src, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts"))
  .map((file) => file.replaceAll("\\", "/"));

/** Layer of a file, by its folder; a file of the root has none. */
const layerOf = (file: string): string | undefined => (file.includes("/") ? file.split("/")[0] : undefined);

const specifiersOf = (file: string): string[] =>
  ts.preProcessFile(readFileSync(join(src, file), "utf8")).importedFiles.map((imported) => imported.fileName);

/** File of src that a relative specifier names. */
const targetOf = (file: string, specifier: string): string => {
  const path = relative(src, resolve(dirname(join(src, file)), specifier)).replaceAll("\\", "/");
  return existsSync(join(src, `${path}.ts`)) ? `${path}.ts` : `${path}/index.ts`;
};

/** Files each file of src imports or re-exports, types included. */
const imports = new Map(
  files.map((file) => [
    file,
    specifiersOf(file)
      .filter((specifier) => specifier.startsWith("."))
      .map((specifier) => targetOf(file, specifier)),
  ]),
);

/** Files that reach each other by their imports, in knots of two or more (Tarjan 1972). */
function knots(): string[][] {
  const order = new Map<string, number>();
  const low = new Map<string, number>();
  const open: string[] = [];
  const found: string[][] = [];
  const visit = (file: string): void => {
    order.set(file, order.size);
    low.set(file, order.get(file)!);
    open.push(file);
    for (const target of imports.get(file) ?? []) {
      if (!order.has(target)) visit(target);
      if (open.includes(target)) low.set(file, Math.min(low.get(file)!, low.get(target)!));
    }
    if (low.get(file) !== order.get(file)) return;
    const knot = open.splice(open.indexOf(file));
    if (knot.length > 1) found.push(knot);
  };
  for (const file of files) if (!order.has(file)) visit(file);
  return found;
}

/** Names a file exports by a declaration of its own. */
const exportsOf = (source: ts.SourceFile): string[] =>
  source.statements.flatMap((statement) => {
    const modifiers = ts.canHaveModifiers(statement) ? (ts.getModifiers(statement) ?? []) : [];
    if (!modifiers.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword)) return [];
    if (ts.isVariableStatement(statement))
      return statement.declarationList.declarations.map(({ name }) => name.getText(source));
    const { name } = statement as { readonly name?: ts.Identifier };
    return name === undefined ? [] : [name.text];
  });

/** What one file names of others: from which specifier, which names; no names where it takes all of them. */
function namedIn(source: ts.SourceFile): { readonly from: string; readonly names: readonly string[] | undefined }[] {
  const found: { readonly from: string; readonly names: readonly string[] | undefined }[] = [];
  const visit = (node: ts.Node): void => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier !== undefined) {
      const list = ts.isImportDeclaration(node) ? node.importClause?.namedBindings : node.exportClause;
      const names =
        list !== undefined && "elements" in list
          ? list.elements.map(({ name, propertyName }) => (propertyName ?? name).text)
          : undefined;
      found.push({ from: (node.moduleSpecifier as ts.StringLiteral).text, names });
    } else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) {
      const names = node.qualifier === undefined ? undefined : [node.qualifier.getText(source).split(".")[0]!];
      found.push({ from: (node.argument.literal as ts.StringLiteral).text, names });
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [argument] = node.arguments;
      if (argument !== undefined && ts.isStringLiteral(argument)) found.push({ from: argument.text, names: undefined });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Types that no file names and the compiler writes into the declarations of others. */
const WRITTEN_OUT = ["foundation/error.ts: ErrorClass"];

describe("files", () => {
  it("import each other in no circle, types included", () => {
    expect(knots()).toEqual([]);
  });

  it("export nothing that no other file names", () => {
    const root = dirname(src);
    const all = ["src", "test", "bench", "docs"].flatMap((top) =>
      readdirSync(join(root, top), { recursive: true, encoding: "utf8" })
        // what other tests write into hidden folders comes and goes while this one reads
        .filter((file) => /\.m?ts$/.test(file) && !/(^|[\\/])\./.test(file))
        .map((file) => join(root, top, file)),
    );
    const named = new Map<string, Set<string> | "all">();
    const exported = new Map<string, string[]>();
    for (const path of all) {
      const source = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true);
      if (path.startsWith(src)) exported.set(relative(src, path).replaceAll("\\", "/"), exportsOf(source));
      for (const { from, names } of namedIn(source)) {
        if (!from.startsWith(".")) continue;
        const target = targetOf(relative(src, path), from);
        const before = named.get(target) ?? new Set();
        if (before === "all" || names === undefined) named.set(target, "all");
        else named.set(target, new Set([...before, ...names]));
      }
    }
    const lonely = [...exported].flatMap(([file, names]) => {
      const used = named.get(file) ?? new Set();
      return used === "all" ? [] : names.filter((name) => !used.has(name)).map((name) => `${file}: ${name}`);
    });
    expect(lonely.sort()).toEqual(WRITTEN_OUT);
  });
});

describe("layers", () => {
  it("know every folder of src", () => {
    const folders = readdirSync(src, { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(folders.map((folder) => folder.name).filter((name) => !LAYERS.includes(name))).toEqual([]);
  });

  it("import nothing but each other and the two run-time dependencies", () => {
    const foreign = files.flatMap((file) =>
      specifiersOf(file)
        .filter((specifier) => !specifier.startsWith(".") && specifier !== "decimal.js" && specifier !== "fraction.js")
        .map((specifier) => `${file} imports ${specifier}`),
    );
    expect(foreign).toEqual([]);
  });

  it("import only from lower layers", () => {
    const upward: string[] = [];
    for (const [file, targets] of imports) {
      const own = layerOf(file);
      if (own === undefined) continue;
      for (const target of targets) {
        const used = layerOf(target);
        if (used === undefined) upward.push(`layer ${own} may not use the root (${file} imports ${target})`);
        else if (LAYERS.indexOf(used) > LAYERS.indexOf(own)) {
          upward.push(`layer ${own} may not use the higher layer ${used} (${file} imports ${target})`);
        }
      }
    }
    expect(upward).toEqual([]);
  });

  // a file of the foundation is one tool and its own entry; any other layer has a front door and a back door
  it("use of another layer only its index or its internal.ts", () => {
    const deep: string[] = [];
    for (const [file, targets] of imports) {
      const own = layerOf(file);
      for (const target of targets) {
        const used = layerOf(target);
        if (own === undefined || used === undefined || used === own || used === "foundation") continue;
        if (target !== `${used}/index.ts` && target !== `${used}/internal.ts`) {
          deep.push(`${file} imports ${target}: export it through ${used}/internal.ts`);
        }
      }
    }
    expect(deep).toEqual([]);
  });

  it("leave the index and the internal.ts of a layer to the layers above", () => {
    const inward: string[] = [];
    for (const [file, targets] of imports) {
      const own = layerOf(file);
      if (own === undefined || own === "foundation") continue;
      for (const target of targets) {
        if (target === `${own}/index.ts` || target === `${own}/internal.ts`) inward.push(`${file} imports ${target}`);
      }
    }
    expect(inward).toEqual([]);
  });

  it("use nothing that only one runtime has", () => {
    expect(files.length, "rows to test").toBeGreaterThan(0);
    for (const file of files) {
      const text = readFileSync(join(src, file), "utf8").replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "");
      expect(text.match(/\b(?:process|Buffer|document|window|require)\s*[.(]|["']node:/g), file).toBeNull();
    }
  });
});

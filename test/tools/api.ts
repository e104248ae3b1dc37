// The public declarations of the library, read out of the sources: what each layer's index exports, followed to where it stands.
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

const root = fileURLToPath(new URL("../../src/", import.meta.url));

/** One public name. */
export interface Public {
  readonly name: string;
  readonly file: string;
  readonly declarations: readonly ts.Declaration[];
}

const files = new Map<string, ts.SourceFile>();

function fileAt(path: string): ts.SourceFile {
  const known = files.get(path);
  if (known !== undefined) return known;
  const file = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.ES2022, true);
  files.set(path, file);
  return file;
}

/** The file that a relative path names. */
function resolved(from: string, path: string): string {
  const base = join(dirname(from), path);
  for (const candidate of [`${base}.ts`, join(base, "index.ts")]) if (ts.sys.fileExists(candidate)) return candidate;
  throw new Error(`${path} of ${from} is no file`);
}

const hasExport = (node: ts.Node): boolean =>
  ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);

const pathOf = (node: ts.ExportDeclaration | ts.ImportDeclaration): string | undefined =>
  node.moduleSpecifier !== undefined && ts.isStringLiteral(node.moduleSpecifier)
    ? node.moduleSpecifier.text
    : undefined;

/** What a file exports by a name. */
export function found(path: string, name: string): { readonly file: string; readonly declarations: ts.Declaration[] } {
  const file = fileAt(path);
  const own: ts.Declaration[] = [];
  for (const statement of file.statements) {
    if (ts.isVariableStatement(statement)) {
      own.push(...statement.declarationList.declarations.filter((one) => one.name.getText(file) === name));
    } else if (
      (ts.isFunctionDeclaration(statement) ||
        ts.isClassDeclaration(statement) ||
        ts.isInterfaceDeclaration(statement) ||
        ts.isTypeAliasDeclaration(statement)) &&
      statement.name?.text === name
    )
      own.push(statement);
  }
  if (own.length > 0) return { file: path, declarations: own };
  for (const statement of file.statements) {
    const from = ts.isExportDeclaration(statement) || ts.isImportDeclaration(statement) ? pathOf(statement) : undefined;
    if (from === undefined || !from.startsWith(".")) continue;
    const bindings = ts.isExportDeclaration(statement)
      ? statement.exportClause
      : (statement as ts.ImportDeclaration).importClause?.namedBindings;
    if (bindings === undefined || !(ts.isNamedExports(bindings) || ts.isNamedImports(bindings))) continue;
    for (const one of bindings.elements)
      if (one.name.text === name) return found(resolved(path, from), (one.propertyName ?? one.name).text);
  }
  throw new Error(`${name} of ${path} was not found`);
}

/** Every name that a file exports, with its declarations. */
export function publicOf(path = join(root, "index.ts")): Public[] {
  const file = fileAt(path);
  const names = new Map<string, Public>();
  for (const statement of file.statements) {
    if (ts.isExportDeclaration(statement)) {
      const from = pathOf(statement);
      const target = from === undefined ? path : resolved(path, from);
      if (statement.exportClause === undefined) for (const one of publicOf(target)) names.set(one.name, one);
      else if (ts.isNamedExports(statement.exportClause))
        for (const { name, propertyName } of statement.exportClause.elements)
          names.set(name.text, { name: name.text, ...found(target, (propertyName ?? name).text) });
    } else if (hasExport(statement) && "name" in statement) {
      const name = (statement.name as ts.Identifier).text;
      names.set(name, { name, ...found(path, name) });
    } else if (hasExport(statement) && ts.isVariableStatement(statement))
      for (const { name } of statement.declarationList.declarations)
        names.set(name.getText(file), { name: name.getText(file), ...found(path, name.getText(file)) });
  }
  return [...names.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Is it marked as not for callers, or private by the language? */
export const isInternal = (node: ts.Node): boolean =>
  ts.getJSDocTags(node).some(({ tagName }) => tagName.text === "internal") ||
  (ts.canHaveModifiers(node) &&
    (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.PrivateKeyword)) ||
  ("name" in node && node.name !== undefined && ts.isPrivateIdentifier(node.name as ts.Node));

/** What stands after the statement that a variable belongs to counts as its own comment. */
export const commented = (node: ts.Node): ts.Node => (ts.isVariableDeclaration(node) ? node.parent.parent : node);

const printer = ts.createPrinter({ removeComments: true, omitTrailingSemicolon: true });

const bare = (node: ts.Node, file: ts.SourceFile): string =>
  printer.printNode(ts.EmitHint.Unspecified, node, file).replace(/\s+/g, " ").trim();

/** Parameters and result of a function, without its body. */
function signature(node: ts.SignatureDeclaration, file: ts.SourceFile): string {
  const generics =
    node.typeParameters === undefined ? "" : `<${node.typeParameters.map((one) => bare(one, file)).join(", ")}>`;
  const parameters = node.parameters
    .map((one) => {
      const optional = one.questionToken !== undefined || one.initializer !== undefined ? "?" : "";
      const rest = one.dotDotDotToken === undefined ? "" : "...";
      const name = ts.isIdentifier(one.name) ? one.name.text : "options";
      return `${rest}${name}${optional}: ${one.type === undefined ? "inferred" : bare(one.type, file)}`;
    })
    .join(", ");
  return `${generics}(${parameters})${node.type === undefined ? "" : `: ${bare(node.type, file)}`}`;
}

function member(node: ts.ClassElement | ts.TypeElement, file: ts.SourceFile): string | undefined {
  if (isInternal(node)) return undefined;
  const name = node.name === undefined ? "" : node.name.getText(file);
  const modifiers = ts.canHaveModifiers(node)
    ? (ts.getModifiers(node) ?? [])
        .map((one) => `${one.getText(file)} `)
        .filter((text) => !/^(public|override) /.test(text))
    : [];
  if (ts.isConstructorDeclaration(node)) return `constructor${signature(node, file)}`;
  if (ts.isMethodDeclaration(node) || ts.isMethodSignature(node))
    return `${modifiers.join("")}${name}${node.questionToken === undefined ? "" : "?"}${signature(node, file)}`;
  if (ts.isGetAccessor(node))
    return `${modifiers.join("")}get ${name}: ${node.type === undefined ? "inferred" : bare(node.type, file)}`;
  if (ts.isSetAccessor(node) || ts.isClassStaticBlockDeclaration(node)) return undefined;
  if (ts.isPropertyDeclaration(node) || ts.isPropertySignature(node))
    return `${modifiers.join("")}${name}${node.questionToken === undefined ? "" : "?"}: ${node.type === undefined ? "inferred" : bare(node.type, file)}`;
  return bare(node, file);
}

function lineOf(name: string, node: ts.Declaration): string {
  const file = node.getSourceFile();
  if (ts.isFunctionDeclaration(node)) return `function ${name}${signature(node, file)}`;
  if (ts.isTypeAliasDeclaration(node)) {
    const generics =
      node.typeParameters === undefined ? "" : `<${node.typeParameters.map((one) => bare(one, file)).join(", ")}>`;
    return `type ${name}${generics} = ${bare(node.type, file)}`;
  }
  if (ts.isClassDeclaration(node) || ts.isInterfaceDeclaration(node)) {
    const kind = ts.isClassDeclaration(node) ? "class" : "interface";
    const generics =
      node.typeParameters === undefined ? "" : `<${node.typeParameters.map((one) => bare(one, file)).join(", ")}>`;
    const heritage = (node.heritageClauses ?? []).map((one) => ` ${bare(one, file)}`).join("");
    const members = [...node.members].map((one) => member(one, file)).filter((one) => one !== undefined);
    return [`${kind} ${name}${generics}${heritage}`, ...members.map((one) => `  ${one}`)].join("\n");
  }
  if (ts.isVariableDeclaration(node)) {
    const value = node.initializer;
    if (node.type !== undefined) return `const ${name}: ${bare(node.type, file)}`;
    if (value !== undefined && ts.isArrowFunction(value)) return `const ${name}: ${signature(value, file)}`;
    return `const ${name}: inferred`;
  }
  return bare(node, file);
}

/** The report: each public name with its signature, in the order of the alphabet. */
export const report = (): string =>
  `${publicOf()
    .flatMap(({ name, declarations }) => {
      // of overloads those that callers see
      const seen = declarations.filter(
        (one) => declarations.length === 1 || !ts.isFunctionDeclaration(one) || one.body === undefined,
      );
      return seen.map((one) => lineOf(name, one));
    })
    .join("\n")}\n`;

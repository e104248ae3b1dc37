// The words of messages, sheets and guides: those a chemist, a teacher and an engineer use, in plain international English.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** What is not said, and the word that is. */
const UNWANTED: readonly (readonly [pattern: RegExp, instead: string])[] = [
  [/\breckon/i, "calculate"],
  [/\bfall(?:s|ing)? out\b|\bfell out\b/i, "precipitate"],
  [/\bcom(?:es?|ing) down\b|\bthrown? down\b|\bbrought down\b/i, "precipitate"],
  [/\bcom(?:es?|ing) off\b/i, "is given off"],
  [/\bfroth/i, "foam"],
  [/\bhand in\b/i, "give to the collection"],
  [/\bt(?:akes?|aking|ook) up (?:acid|water|lye|base|oxygen|carbon dioxide)\b/i, "consume, absorb"],
  [/\bis no (?:reactant|product|list|object|number|text|unit|formula|mass|volume)\b/i, "is not a"],
  [/\btold\b(?! apart)/i, "given, known"],
  [/% over\b/i, "% excess"],
  [/\btaken for granted\b/i, "assumptions"],
];

function sourceFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => join(folder, file));
}

/** Texts of a source file: literals and the fixed parts of templates; keys, imports and unions of types are left out. */
function textsOf(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(join(root, file), "utf8"), ts.ScriptTarget.Latest, true);
  const texts: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isLiteralTypeNode(node)) return;
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) texts.push(node.text);
    else if (ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node)) texts.push(node.text);
    ts.forEachChild(node, visit);
  };
  visit(source);
  // One word is a code or a key, not a sentence.
  return texts.filter((text) => text.includes(" "));
}

const unwantedIn = (text: string): string[] =>
  UNWANTED.flatMap(([pattern, instead]) => {
    const found = pattern.exec(text);
    return found === null
      ? []
      : [`${found[0]} -> ${instead}: ${text.slice(Math.max(0, found.index - 40), found.index + 60)}`];
  });

describe("words", () => {
  it("in messages, sheets and tables are plain", () => {
    const files = sourceFiles("src");
    expect(files.length).toBeGreaterThan(300);
    expect(
      files.flatMap((file) =>
        textsOf(file)
          .flatMap(unwantedIn)
          .map((one) => `${file}: ${one}`),
      ),
    ).toEqual([]);
  });

  it("in the guides are plain", () => {
    const pages = readdirSync(join(root, "docs/guide")).filter((page) => page.endsWith(".md"));
    expect(pages.length).toBeGreaterThan(10);
    const read = (page: string): string[] => readFileSync(join(root, page), "utf8").split("\n");
    const all = ["README.md", ...pages.map((page) => `docs/guide/${page}`)];
    expect(
      all.flatMap((page) =>
        read(page)
          .flatMap(unwantedIn)
          .map((one) => `${page}: ${one}`),
      ),
    ).toEqual([]);
  });
});

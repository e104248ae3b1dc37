// What a formula is made of is asked of the ion layer. Nothing above it reads the letters of a formula: a new test on them
// answers differently for CH3COOH and C2H4O2, and for Sr and S.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const src = fileURLToPath(new URL("../../src", import.meta.url));

/** Layers that read formulas, or know none. */
const READERS = /^(?:foundation|quantity|element|formula|ion|sheet)\//;

/** Where letters are read on purpose, and why. */
const READS: Readonly<Record<string, string>> = {
  "equation/read/": "an equation as people write it",
  "equation/oxidation/structure.ts": "the sign of an oxidation number that the formula states",
  "substance/names/": "the names of substances, as people write them",
  "substance/identify.ts": "a name, formula or number that somebody typed",
  "substance/hazards/gravest.ts": "codes of hazard statements",
  "substance/hazards/solution-limits.ts": "codes of hazard statements",
  "substance/registry/canonical.ts": "parts that are put together again, each written by this file",
  "facts/read.ts": "codes of hazard statements",
  "aqueous/composition/picture.ts": "an ion as a picture prints it",
};

/** Where two compositions are compared, and why constitution is not asked. */
const COMPOSITIONS: Readonly<Record<string, string>> = {
  "preparation/contents/matter.ts": "the books of a vessel are kept by atoms, as the equation is balanced",
  "preparation/reaction/species.ts": "a material is matched to its species by atoms, as the equation is balanced",
  "preparation/procedure/bench.ts": "the keys of the books",
  "preparation/procedure/roles.ts": "species of one equation",
  "thermochemistry/formation.ts": "rows that may be it; the constitution chooses among them",
  "solubility/precipitating/product.ts": "rows that may be it; the constitution chooses among them",
};

const isAllowed = (list: Readonly<Record<string, string>>, file: string): boolean =>
  Object.keys(list).some((path) => file.startsWith(path));

/** A pattern that only a formula or an ion has: a symbol, a charge at the end, a phase. */
function looksAtFormulas(pattern: string): boolean {
  const plain = pattern.replace(/\[A-Za-z[^\]]*\]|\[a-zA-Z[^\]]*\]/g, "");
  return (
    /\[A-Z\]/.test(plain) ||
    /[A-Z](?:[A-Z]|[a-z]?\\?\d|[a-z]?\\d|[a-z]?\$)/.test(plain) ||
    /\\\^|\[-?\+?-?\]\$|\\\+\$/.test(plain) ||
    /\|l\||\|aq/.test(plain)
  );
}

/** A text that only a formula or an ion has, or a part of one. */
const isFormulaText = (text: string): boolean =>
  /^(?:[A-Z][a-z]?\d*|[()[\]]\d*)+(?:\^?\d*[+-])?$/.test(text) || /^(?:\[|\^|[+-])$/.test(text);

interface Found {
  readonly letters: string[];
  readonly compositions: string[];
}

function lookThrough(file: string, text: string): Found {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Found = { letters: [], compositions: [] };
  const note = (list: string[], node: ts.Node): void => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    list.push(`${file}:${line + 1} ${node.getText().slice(0, 80)}`);
  };
  const visit = (node: ts.Node): void => {
    if (ts.isRegularExpressionLiteral(node) && looksAtFormulas(node.text)) note(found.letters, node);
    if (ts.isPropertyAccessExpression(node) && ["compositionText", "toHill"].includes(node.name.text))
      note(found.compositions, node);
    if (ts.isBindingElement(node) && (node.propertyName ?? node.name).getText() === "compositionText")
      note(found.compositions, node);
    if (ts.isCallExpression(node) && ts.isPropertyAccessExpression(node.expression)) {
      const { name, expression } = node.expression;
      const [first] = node.arguments;
      const literal = first !== undefined && ts.isStringLiteral(first) && isFormulaText(first.text);
      const ofText = /(?:\.text|String\(\w+\)|toString\(\)|toUnicode\(\))$/.test(expression.getText());
      if (literal && (["startsWith", "endsWith"].includes(name.text) || (name.text === "includes" && ofText)))
        note(found.letters, node);
    }
    if (
      ts.isBinaryExpression(node) &&
      [ts.SyntaxKind.EqualsEqualsEqualsToken, ts.SyntaxKind.ExclamationEqualsEqualsToken].includes(
        node.operatorToken.kind,
      ) &&
      /(?:\.text|String\(\w+\)|toString\(\)|toUnicode\(\))$/.test(node.left.getText()) &&
      ts.isStringLiteral(node.right) &&
      isFormulaText(node.right.text)
    )
      note(found.letters, node);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const files = readdirSync(src, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => file.endsWith(".ts") && file.includes("/") && !file.includes("/data/") && !READERS.test(file));

describe("above the ion layer", () => {
  const all = files.map((file) => [file, lookThrough(file, readFileSync(join(src, file), "utf8"))] as const);

  it("nothing reads the letters of a formula", () => {
    expect(all.filter(([file]) => !isAllowed(READS, file)).flatMap(([, { letters }]) => letters)).toEqual([]);
  });

  it("nothing compares compositions but where it says why", () => {
    const found = all.filter(([file]) => !isAllowed(COMPOSITIONS, file));
    expect(found.flatMap(([, { compositions }]) => compositions)).toEqual([]);
  });

  it("every exception is one", () => {
    const read = Object.keys(READS).filter(
      (path) => !all.some(([file, { letters }]) => file.startsWith(path) && letters.length > 0),
    );
    const compared = Object.keys(COMPOSITIONS).filter(
      (path) => !all.some(([file, { compositions }]) => file.startsWith(path) && compositions.length > 0),
    );
    expect([...read, ...compared]).toEqual([]);
  });

  it("each of the ways to read letters that stood here once is seen", () => {
    const seen = (code: string): boolean => {
      const { letters, compositions } = lookThrough("x/y.ts", code);
      return letters.length + compositions.length > 0;
    };
    const once = [
      "const is = /CO3/.test(feed);",
      "const acid = /^H|COOH/.test(feed);",
      "const carbonates = /^(Na|K|\\(?NH4\\)?)2CO3$/;",
      "const bare = text.replace(/\\((?:s|l|g|aq|cr)\\)$/, '');",
      "const element = /^[A-Z][a-z]?/.exec(cation)?.[0];",
      "const ion = text.replace(/\\^\\d+[+-]$|[+-]$/, '');",
      "const isAcidSalt = /^H\\d?[A-Z]/.test(anion);",
      "const double = /\\(SO4\\)2$/.test(product);",
      'const ammonia = form.compositionText === "H3N";',
      'const leaves = ["H3N", "ClH"].includes(formula.compositionText);',
      "const same = own.toHill() !== wanted;",
      'const carbonate = key.startsWith("CO3");',
      'const cation = key.endsWith("+");',
      'const ammonium = part.text.includes("NH4");',
      'const water = String(formula) === "H2O";',
    ];
    expect(once.filter((code) => !seen(code))).toEqual([]);
  });
});

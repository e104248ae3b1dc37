// The page of error codes against the code: every code that src can give is on docs/guide/errors.md with its cause and
// cure, and no other. Both lists are read out of the sources, so a room that grows only has to write its rows.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const guides = join(root, "docs/guide");
const page = readFileSync(join(guides, "errors.md"), "utf8");

interface Found {
  readonly code: string;
  readonly file: string;
  /** Class that is constructed with it, or whose union of codes declares it; none where it goes through a helper. */
  readonly owner: string | undefined;
}

const texts = new Map(
  readdirSync(join(root, "src"), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => [file, readFileSync(join(root, "src", file), "utf8")]),
);

const declared: Found[] = [];
const constructed: Found[] = [];
const compared: Found[] = [];
const otherwise: Found[] = [];

/** Every string in a part of the tree. */
function strings(node: ts.Node, each: (text: string) => void): void {
  if (ts.isStringLiteralLike(node)) each(node.text);
  ts.forEachChild(node, (child) => strings(child, each));
}

const EQUALITY = new Set([
  ts.SyntaxKind.EqualsEqualsEqualsToken,
  ts.SyntaxKind.ExclamationEqualsEqualsToken,
  ts.SyntaxKind.EqualsEqualsToken,
  ts.SyntaxKind.ExclamationEqualsToken,
]);

function collect(file: string, node: ts.Node): void {
  const put = (list: Found[], owner?: string) => (code: string) => list.push({ code, file, owner });
  if (ts.isTypeAliasDeclaration(node)) {
    const owner = /^(\w+Error)Code$/.exec(node.name.text)?.[1];
    if (owner !== undefined) strings(node, put(declared, owner));
    return;
  }
  if (ts.isNewExpression(node) && /Error$/.test(node.expression.getText())) {
    const owner = node.expression.getText();
    const [first, ...rest] = node.arguments ?? [];
    // The built-in errors take a message first: they mark bugs, and carry no code.
    if (first !== undefined && !/^(?:Type|Range|Syntax)?Error$/.test(owner)) strings(first, put(constructed, owner));
    for (const argument of rest) collect(file, argument);
    return;
  }
  if (ts.isStringLiteralLike(node)) {
    const { parent } = node;
    const tested =
      (ts.isBinaryExpression(parent) && EQUALITY.has(parent.operatorToken.kind)) || ts.isCaseClause(parent);
    put(tested ? compared : otherwise)(node.text);
    return;
  }
  ts.forEachChild(node, (child) => collect(file, child));
}

for (const [file, text] of texts) {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  collect(file, source);
}

const areaOf = (code: string): string => code.slice(0, code.indexOf("."));
const areas = new Set([...declared, ...constructed].map(({ code }) => areaOf(code)));
// A bare "formula." is a prefix to look for, not a code.
const inArea = ({ code }: Found): boolean => /^\w+\.\S+$/.test(code) && areas.has(areaOf(code));
const sorted = (list: Iterable<string>): string[] => [...new Set(list)].sort();

/** Given by a constructor, or handed to a helper that calls one. */
const thrown = new Set([...constructed, ...otherwise.filter(inArea)].map(({ code }) => code));
const all = new Set([...declared.map(({ code }) => code), ...thrown]);

/** The rows of the page, with the area their heading names. */
const rows: { readonly code: string; readonly cause: string; readonly cure: string; readonly area: string }[] = [];
const headings: string[] = [];
for (const line of page.split("\n")) {
  const heading = /^## .*`([a-z]+)\.…`/.exec(line);
  if (heading !== null) headings.push(heading[1]!);
  const row = /^\| `([^`]+)` \| (.*?) \| (.*?) \|$/.exec(line);
  if (row !== null) rows.push({ code: row[1]!, cause: row[2]!, cure: row[3]!, area: headings.at(-1) ?? "" });
}

describe("error codes", () => {
  it("are found in the sources", () => {
    expect(constructed.length).toBeGreaterThan(100);
    expect(sorted(areas).length).toBeGreaterThan(8);
  });

  it("look like area.what-went-wrong", () => {
    expect([...all].filter((code) => !/^[a-z]+\.[a-z-]+$/.test(code))).toEqual([]);
  });

  it("belong to one class each, and one area to each class", () => {
    const ownersOf = new Map<string, Set<string>>();
    for (const { code, owner } of [...declared, ...constructed]) {
      const owners = ownersOf.get(areaOf(code)) ?? new Set();
      ownersOf.set(areaOf(code), owners.add(owner!));
    }
    const shared = [...ownersOf].filter(([, owners]) => owners.size > 1).map(([area, owners]) => [area, ...owners]);
    expect(shared).toEqual([]);
    const owners = [...ownersOf.values()].flatMap((set) => [...set]);
    expect(owners.filter((owner, at) => owners.indexOf(owner) !== at)).toEqual([]);
  });

  it("are declared once, and given only where their union declares them", () => {
    const codes = declared.map(({ code }) => code);
    expect(codes.filter((code, at) => codes.indexOf(code) !== at)).toEqual([]);
    const listed = new Set(declared.map(({ code }) => areaOf(code)));
    const undeclared = [...thrown].filter((code) => listed.has(areaOf(code)) && !codes.includes(code));
    expect(undeclared).toEqual([]);
  });

  it("are never waited for where nothing gives them", () => {
    expect(compared.filter(inArea).filter(({ code }) => !thrown.has(code))).toEqual([]);
  });

  it("named in docstrings and guides exist", () => {
    const pattern = new RegExp(`[\`"]((?:${[...areas].join("|")})\\.[a-z]+(?:-[a-z]+)*)[\`"]`, "g");
    const pages = readdirSync(guides).filter((file) => file.endsWith(".md"));
    const named = [...texts, ...pages.map((file) => [file, readFileSync(join(guides, file), "utf8")] as const)].flatMap(
      ([file, text]) => [...text.matchAll(pattern)].map((match) => ({ file, code: match[1]! })),
    );
    expect(named.filter(({ code }) => !all.has(code))).toEqual([]);
  });
});

describe("the page of error codes", () => {
  it("lists every code, and no other", () => {
    const listed = rows.map(({ code }) => code);
    expect({
      missing: sorted(all).filter((code) => !listed.includes(code)),
      stale: listed.filter((code) => !all.has(code)),
      twice: listed.filter((code, at) => listed.indexOf(code) !== at),
    }).toEqual({ missing: [], stale: [], twice: [] });
  });

  it("has one section for each area, with the codes of that area", () => {
    expect(sorted(headings)).toEqual(sorted(areas));
    expect(headings.length).toBe(areas.size);
    expect(rows.filter(({ code, area }) => areaOf(code) !== area)).toEqual([]);
  });

  it("tells a cause and a cure in each row", () => {
    expect(rows.filter(({ cause, cure }) => cause.trim() === "" || cure.trim() === "")).toEqual([]);
  });

  it("says of a code that nothing gives yet that it is reserved", () => {
    const reserved = rows.filter(({ cause }) => cause.startsWith("reserved")).map(({ code }) => code);
    expect(sorted(reserved)).toEqual(sorted([...all].filter((code) => !thrown.has(code))));
  });
});

// What a result measures is part of its type: `Quantity<"mass">`. Two laws over the public declarations: no quantity is
// handed out without its dimension, but for a short list of those that only a run can tell; and each quantity that an example
// of the reference, the README or a guide hands out measures what its type says.
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import * as preparative from "preparative";
import ts from "typescript";
import { expect, it, vi } from "vitest";
import { report } from "../tools/api";
import { examplesOf, toModule } from "../tools/examples";

/** What carries no dimension in its type, by the line of the report, and why. */
const ONLY_THE_RUN_TELLS: Readonly<Record<string, string>> = {
  "BudgetLine.quantity": "an input of any kind",
  "Change.planned": "a figure of the plan, whichever it is",
  "Change.now": "a figure of the run, whichever it is",
  "Check.figure": "goes with the text of the check",
  "FeasibilityReason.numbers": "go with the text of the reason",
  "Finding.figure": "goes with the text of the finding",
  "RouteReason.numbers": "go with the text of the reason",
  "RecipeFinding.figure": "goes with the text of the finding",
  "Quantity.minus": "of two temperatures a difference, of a temperature and a difference a temperature",
  "Quantity.times": "a product has the dimension of neither",
  "Quantity.dividedBy": "a quotient has the dimension of neither",
  "Quantity.toThePower": "a power has a dimension of its own",
  isQuantity: "asks nothing of the dimension",
  quantityFromJSON: "the record says it",
  Recorded: "a record of any kind",
};

/** Inputs may be of any dimension where one argument takes them all; only what is handed out is looked at. */
const GIVEN: readonly string[] = ["Recipe.found", "RecipeMaterial.amount", "StrengthLike", "sulfuricAcidDilution"];

it("hands out no quantity without its dimension, but for those that only a run can tell", () => {
  let owner = "";
  const bare = report()
    .split("\n")
    .flatMap((line) => {
      const inside = line.startsWith("  ");
      const name =
        /^(?:readonly |get )?(\w+)/.exec(line.trim().replace(/^(?:function|const|type|interface|class) /, ""))?.[1] ??
        "";
      if (!inside) owner = name;
      return /\bQuantity\b(?!<|Error)/.test(line) && !/^(?:interface|class) /.test(line)
        ? [inside ? `${owner}.${name}` : name]
        : [];
    });
  expect([...new Set(bare)].filter((name) => !GIVEN.includes(name)).sort()).toEqual(
    Object.keys(ONLY_THE_RUN_TELLS).sort(),
  );
});

const root = fileURLToPath(new URL("../..", import.meta.url)).replace(/[\\/]$/, "");
const folder = join(root, "test", ".dimensions");

/** Does the dimension of a run fit what a type says of it? */
function fits(dimension: string, type: ts.Type): boolean {
  if (type.isUnion()) return type.types.some((one) => fits(dimension, one));
  if (type.isStringLiteral()) return type.value === dimension;
  if ((type.flags & ts.TypeFlags.TemplateLiteral) !== 0) {
    const { texts } = type as ts.TemplateLiteralType;
    return dimension.startsWith(texts[0]!) && dimension.endsWith(texts.at(-1)!);
  }
  return (type.flags & (ts.TypeFlags.Any | ts.TypeFlags.String)) !== 0;
}

it("gives in every example the dimension that the type names", { timeout: 300_000 }, async () => {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const names = Object.keys(preparative);
  const examples = examplesOf(root);
  const modules = examples.map((example) => toModule(example, names));
  const fileOf = (i: number): string => join(folder, `example-${i}.ts`);
  for (const [i, text] of modules.entries()) writeFileSync(fileOf(i), text);
  const { config } = ts.readConfigFile(join(root, "test/tsconfig.json"), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(
    { ...config, include: [], files: ["layers.test.ts"] },
    ts.sys,
    join(root, "test"),
  );
  const program = ts.createProgram(
    modules.map((_, i) => fileOf(i)),
    options,
  );
  const checker = program.getTypeChecker();

  // every call of a public function hands its result on, with the place it was called at
  const calls: ts.CallExpression[] = [];
  for (const i of modules.keys()) {
    const file = program.getSourceFile(fileOf(i))!;
    const edits: { readonly at: number; readonly text: string }[] = [];
    const visit = (node: ts.Node): void => {
      if (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && names.includes(node.expression.text)) {
        edits.push({ at: node.getStart(), text: `$seen(${calls.push(node) - 1}, ` }, { at: node.end, text: ")" });
      }
      ts.forEachChild(node, visit);
    };
    visit(file);
    let text = file.text;
    for (const { at, text: added } of edits.sort((a, b) => b.at - a.at))
      text = text.slice(0, at) + added + text.slice(at);
    writeFileSync(fileOf(i), text.replace("async function ($check:", "async function ($seen: any, $check:"));
  }

  const wrong = new Set<string>();
  const looked = new Set<string>();
  const done = new WeakMap<object, Set<ts.Type>>();
  const look = (value: unknown, type: ts.Type, path: string, depth: number): void => {
    if (typeof value !== "object" || value === null || depth > 7) return;
    const before = done.get(value) ?? new Set();
    if (before.has(type)) return;
    done.set(value, before.add(type));
    const kinds = (type.isUnion() ? type.types : [type]).map((one) => checker.getApparentType(one));
    if (preparative.isQuantity(value)) {
      const said = kinds.flatMap((one) => {
        const dimension = one.getProperty("dimension");
        return dimension === undefined ? [] : [checker.getTypeOfSymbol(dimension)];
      });
      looked.add(path);
      if (said.length > 0 && !said.some((one) => fits(value.dimension, one)))
        wrong.add(`${path} is ${value.dimension}, not ${said.map((one) => checker.typeToString(one)).join(" | ")}`);
      return;
    }
    if (Array.isArray(value)) {
      for (const kind of kinds) {
        const element = checker.getIndexTypeOfType(kind, ts.IndexKind.Number);
        if (element !== undefined) for (const one of value.slice(0, 40)) look(one, element, path, depth + 1);
      }
      return;
    }
    for (const kind of kinds)
      for (const property of checker.getPropertiesOfType(kind)) {
        if (
          (property.flags & (ts.SymbolFlags.Method | ts.SymbolFlags.Function)) !== 0 ||
          property.name.startsWith("__")
        )
          continue;
        const of = kind.aliasSymbol?.name ?? kind.symbol?.name ?? "";
        const held = preparative.attempt(() => (value as Record<string, unknown>)[property.name]);
        if (held.ok && held.value !== undefined)
          look(
            held.value,
            checker.getTypeOfSymbol(property),
            `${of.startsWith("__") ? path : of}.${property.name}`,
            depth + 1,
          );
      }
  };
  const seen = <T>(call: number, value: T): T => {
    const node = calls[call]!;
    look(value, checker.getTypeAtLocation(node), node.expression.getText(), 0);
    return value;
  };
  const log = vi.spyOn(console, "log").mockImplementation(() => undefined);
  try {
    for (const i of modules.keys()) {
      const { default: run } = (await import(/* @vite-ignore */ fileOf(i))) as {
        default: (seen: unknown, check: unknown) => Promise<void>;
      };
      await run(seen, () => undefined);
    }
  } finally {
    log.mockRestore();
    rmSync(folder, { recursive: true, force: true });
  }
  expect([...wrong].sort()).toEqual([]);
  expect(looked.size).toBeGreaterThan(200);
});

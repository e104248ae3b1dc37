// Objects that are made again and again have one shape. A getter of a literal is new each time: the
// engine keeps such a shape, and all that its function sees, until it next collects everything (V8 keeps maps in its old space). A
// plan with ten of them held 200 kB of itself that long. Getters stand on classes and on `lazily`, which shares them.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const src = fileURLToPath(new URL("../../src", import.meta.url));

/** Getters of object literals. */
function ownShapes(path: string, text: string): string[] {
  const source = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isAccessor(node) && ts.isObjectLiteralExpression(node.parent))
      found.push(`${path}:${source.getLineAndCharacterOfPosition(node.getStart()).line + 1}`);
    ts.forEachChild(node, look);
  };
  look(source);
  return found;
}

describe("objects of one kind have one shape", () => {
  it("finds a getter of a literal", () => {
    expect(ownShapes("a.ts", "const f = (x: number) => ({\n  get y() {\n    return x;\n  },\n});")).toEqual(["a.ts:2"]);
    expect(ownShapes("a.ts", "class A { get y() { return 1; } }")).toEqual([]);
  });

  it("no literal of the library has one", () => {
    const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((path) => path.endsWith(".ts"));
    expect(files.length).toBeGreaterThan(500);
    expect(files.flatMap((path) => ownShapes(path, readFileSync(join(src, path), "utf8")))).toEqual([]);
  });
});

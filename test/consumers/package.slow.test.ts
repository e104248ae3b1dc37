// The package as a stranger gets it: built, packed, installed from the tarball into an empty folder, used from both
// module systems and from TypeScript. Slow (a build and an install), so it has a file of its own.
import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "preparative-consumer-"));
const run = (command: string, args: readonly string[], cwd = folder): string =>
  execFileSync(command, args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
const manifest = JSON.parse(readFileSync(join(root, "package.json"), "utf8")) as { exports: Record<string, unknown> };
const subpaths = Object.keys(manifest.exports).filter((path) => path !== "./package.json");

const USE = `
  const n = p.quantity("250.0 g").dividedBy("287.54 g/mol");
  console.log(n.format({ significant: 4 }), p.isQuantity(q.quantity("1 g").plus(p.quantity("1 g"))));
`;

beforeAll(() => {
  run("npm", ["run", "--silent", "build"], root);
  run("npm", ["pack", "--ignore-scripts", "--pack-destination", folder], root);
  const tarball = readdirSync(folder).find((file) => file.endsWith(".tgz"))!;
  writeFileSync(join(folder, "package.json"), JSON.stringify({ name: "consumer", private: true }));
  run("npm", ["install", "--no-audit", "--no-fund", "--prefer-offline", `./${tarball}`]);
}, 300_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the packed package", () => {
  it("holds the build, and neither sources nor tests", () => {
    const files = readdirSync(join(folder, "node_modules/preparative"));
    expect(files.sort()).toEqual(["CHANGELOG.md", "LICENSE", "README.md", "dist", "docs", "package.json"]);
  });

  it("holds of the build for each layer its module in both systems with its types, and what they share, nothing else", () => {
    const dist = join(folder, "node_modules/preparative/dist");
    const files = readdirSync(dist, { recursive: true, encoding: "utf8" }).map((file) => file.replaceAll("\\", "/"));
    const entries = subpaths.map((path) => (path === "." ? "index" : `${path.slice(2)}/index`));
    const expected = entries.flatMap((entry) => ["js", "cjs", "d.ts", "d.cts"].map((ending) => `${entry}.${ending}`));
    expect(expected.length, "rows to test").toBeGreaterThan(0);
    for (const file of expected) expect(files).toContain(file);
    const shared = files.filter((file) => file.includes(".") && !expected.includes(file));
    expect(shared.filter((file) => !/^(quantity\/value\/)?[\w-]+(\.d)?\.c?[jt]s$/.test(file))).toEqual([]);
  });

  it("shows callers nothing that is marked as internal", () => {
    const dist = join(folder, "node_modules/preparative/dist");
    const types = readdirSync(dist, { recursive: true, encoding: "utf8" }).filter((file) => /\.d\.c?ts$/.test(file));
    expect(types.length).toBeGreaterThan(20);
    expect(types.filter((file) => /@internal/.test(readFileSync(join(dist, file), "utf8")))).toEqual([]);
  });

  it("works from an ES module", () => {
    writeFileSync(
      join(folder, "use.mjs"),
      `import * as p from "preparative"; import * as q from "preparative/quantity";${USE}`,
    );
    expect(run("node", ["use.mjs"])).toBe("0.8694 mol true\n");
  });

  // a ratio of least CPU times in one run, and twice what the bench measures: it holds against work at import, not against load
  it("imports in no more than 20 times the CPU of decimal.js, a layer of its own in 10", () => {
    const least = new Map<string, number>();
    const modules = ["decimal.js", "preparative", "preparative/formula", "preparative/equation"];
    for (let round = 0; round < 5; round += 1)
      for (const name of modules) {
        const script = `const a = process.cpuUsage(); await import("${name}"); const { user, system } = process.cpuUsage(a); console.log(user + system);`;
        const time = Number(run("node", ["--input-type=module", "-e", script]));
        least.set(name, Math.min(time, least.get(name) ?? Infinity));
      }
    const ratio = (name: string): number => least.get(name)! / least.get("decimal.js")!;
    expect(ratio("preparative")).toBeLessThan(20);
    expect(ratio("preparative/equation")).toBeLessThan(10);
    expect(ratio("preparative/formula")).toBeLessThan(10);
    expect(ratio("preparative")).toBeGreaterThan(1);
  });

  it("works from CommonJS", () => {
    writeFileSync(
      join(folder, "use.cjs"),
      `const p = require("preparative"); const q = require("preparative/quantity");${USE}`,
    );
    expect(run("node", ["use.cjs"])).toBe("0.8694 mol true\n");
  });

  it("offers every layer as a subpath of both module systems", () => {
    const names = subpaths.map((path) => path.replace(/^\./, "preparative"));
    writeFileSync(
      join(folder, "all.mjs"),
      `for (const n of ${JSON.stringify(names)}) if (Object.keys(await import(n)).length === 0) throw n;`,
    );
    writeFileSync(
      join(folder, "all.cjs"),
      `for (const n of ${JSON.stringify(names)}) if (Object.keys(require(n)).length === 0) throw n;`,
    );
    run("node", ["all.mjs"]);
    run("node", ["all.cjs"]);
    expect(names.length).toBeGreaterThan(3);
  });

  it("shares its values between the two module systems", () => {
    const code = `import * as p from "preparative"; import { createRequire } from "node:module";
      const c = createRequire(import.meta.url)("preparative");
      const x = p.quantity("2.0(1) g"); console.log(c.quantity(x).minus(x).toString(), c.isQuantity(x));
      console.log(String(c.molarMass(p.parseFormula("H2O")).value), p.parseFormula("H2O") instanceof c.Formula);
      console.log(c.massOf("2 mol", p.parseFormula("H2O")).unit, String(c.balance(p.balance("H2 + O2 -> H2O"))));`;
    writeFileSync(join(folder, "both.mjs"), code);
    expect(run("node", ["both.mjs"])).toBe("0 ± 0 g true\n18.015 true\ng 2 H2 + O2 -> 2 H2O\n");
  });

  it("type-checks under strict settings for both module systems", () => {
    const text = `import { parseFormula, quantity, type Quantity } from "preparative"; import { sum } from "preparative/quantity";
      const m: Quantity<"mass"> = quantity("1 g"); sum([m]);
      // @ts-expect-error what layers read of each other is not for callers
      parseFormula("H2O").nano;
      // @ts-expect-error a volume is no mass
      const v: Quantity<"mass"> = quantity("1 mL"); void v;`;
    writeFileSync(join(folder, "use.mts"), text);
    writeFileSync(join(folder, "use.cts"), text);
    const tsc = join(root, "node_modules/typescript/bin/tsc");
    const options = ["--noEmit", "--strict", "--skipLibCheck", "false", "--module", "nodenext", "--target", "es2022"];
    run("node", [tsc, ...options, "use.mts", "use.cts"]);
  });
});

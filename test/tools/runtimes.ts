// The packed package in the runtimes and bundlers that programs use: `npm run test:runtimes`. Each runs the same small program
// and must print the same. Runtimes and bundlers are fetched by npm into a temporary folder; what cannot be fetched or is not
// on the machine is named, and fails the run. For the page and the worker a Chromium must be on the path (or in CHROMIUM).
import { execFileSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

/** `npm run test:runtimes -- quick`: the Node lines and TypeScript alone, with what was built last. */
const quick = process.argv.includes("quick");
const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "preparative-runtimes-"));
const run = (command: string, args: readonly string[], cwd = folder): string =>
  execFileSync(command, args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "pipe"], timeout: 300_000 });

/** What every runtime prints: a mass, an equation, a name, a pH, a refusal, a sheet. */
const BODY = `
const lines = [
  p.molarMass("CuSO4·5H2O").format({ decimals: 3 }),
  p.balance("Fe + O2 -> Fe2O3").toUnicode(),
  p.identify("blue vitriol").formula,
  p.pHOf({ water: "1 kg", dissolved: [{ formula: "CH3COOH", amount: "0.1 mol" }] }).format({ decimals: 2 }),
  p.tryQuantity("12,5 g").error.code,
  p.benchSheet(p.planPreparation({
    equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
    product: "CaCO3",
    materials: [{ name: "de-icer", form: "CaCl2·2H2O" }, { name: "soda", form: "Na2CO3" }],
    scale: { product: "20 g" },
  })).length,
];
const said = lines.join("\\n");
`;

const TYPED = `
import { balance, type Quantity, quantity } from "preparative";
import { benchSheet } from "preparative/sheet";
const mass: Quantity<"mass"> = quantity("12.5 g");
export const coefficients: bigint[] = balance("H2 + O2 -> H2O").coefficients;
export const text: string = mass.format({ decimals: 1 }) + benchSheet.name;
`;

const results: { readonly what: string; readonly outcome: string }[] = [];
let failed = 0;

async function check(what: string, expected: string | undefined, ask: () => string | Promise<string>): Promise<string> {
  let said = "";
  let outcome = "ok";
  try {
    said = (await ask()).trim();
    if (expected !== undefined && said !== expected) outcome = `differs: ${said.slice(0, 300)}`;
  } catch (error) {
    outcome = `failed: ${String(error).slice(0, 600)}`;
  }
  if (outcome !== "ok") failed++;
  results.push({ what, outcome });
  console.log(`${outcome === "ok" ? "ok  " : "FAIL"} ${what}${outcome === "ok" ? "" : `: ${outcome}`}`);
  return said;
}

/** A package of npm, in a folder of its own beside the program; its own programs are in `.bin`. */
function fetched(...packages: readonly string[]): string {
  const home = join(folder, "tools", packages.join("+").replace(/\W/g, "_"));
  if (!existsSync(home)) {
    mkdirSync(home, { recursive: true });
    writeFileSync(join(home, "package.json"), '{ "private": true }');
    run("npm", ["install", "--no-audit", "--no-fund", ...packages], home);
  }
  return join(home, "node_modules", ".bin");
}

if (!quick) run("npm", ["run", "--silent", "build"], root);
run("npm", ["pack", "--ignore-scripts", "--pack-destination", folder], root);
const tarball = readdirSync(folder).find((file) => file.endsWith(".tgz"))!;
writeFileSync(join(folder, "package.json"), JSON.stringify({ name: "runtimes", private: true }));
run("npm", ["install", "--no-audit", "--no-fund", `./${tarball}`]);
writeFileSync(join(folder, "use.mjs"), `import * as p from "preparative";${BODY}console.log(said);`);
writeFileSync(join(folder, "use.cjs"), `const p = require("preparative");${BODY}console.log(said);`);

const expected = await check(`node ${process.version}, ES module`, undefined, () => run("node", ["use.mjs"]));
await check(`node ${process.version}, CommonJS`, expected, () => run("node", ["use.cjs"]));
for (const version of ["22", "24"]) {
  const node = (): string => join(fetched(`node@${version}`), "node");
  await check(`node ${version}, ES module`, expected, () => run(node(), ["use.mjs"]));
  await check(`node ${version}, CommonJS`, expected, () => run(node(), ["use.cjs"]));
}
if (!quick) {
  await check("bun", expected, () => run(join(fetched("bun"), "bun"), ["use.mjs"]));
  await check("deno, without any permission", expected, () => run(join(fetched("deno"), "deno"), ["run", "use.mjs"]));
}

for (const [resolution, module] of [
  ["nodenext", "nodenext"],
  ["bundler", "esnext"],
] as const) {
  await check(`TypeScript, ${resolution}, strict with exact optional properties`, "", () => {
    writeFileSync(join(folder, "typed.mts"), TYPED);
    const compilerOptions = {
      noEmit: true,
      strict: true,
      exactOptionalPropertyTypes: true,
      noUncheckedIndexedAccess: true,
      skipLibCheck: false,
      target: "es2022",
      lib: ["es2022"],
      types: [],
      module,
      moduleResolution: resolution,
    };
    const config = `tsconfig.${resolution}.json`;
    writeFileSync(join(folder, config), JSON.stringify({ compilerOptions, files: ["typed.mts"] }));
    return run(process.execPath, [join(root, "node_modules/typescript/bin/tsc"), "-p", config]);
  });
}

/** A page and a module worker made by a bundler, asked in Chromium. */
const BUNDLERS: Readonly<Record<string, (out: string) => void>> = {
  esbuild: (out) => {
    run(join(root, "node_modules/.bin/esbuild"), [
      "page.js",
      "worker.js",
      "--bundle",
      "--format=esm",
      "--minify",
      `--outdir=${out}`,
    ]);
  },
  rollup: (out) => {
    const bin = fetched("rollup", "@rollup/plugin-node-resolve", "@rollup/plugin-commonjs");
    for (const entry of ["page", "worker"]) {
      run(join(bin, "rollup"), [
        `${entry}.js`,
        "-f",
        "es",
        "-o",
        join(out, `${entry}.js`),
        "-p",
        join(bin, "../@rollup/plugin-node-resolve"),
        "-p",
        join(bin, "../@rollup/plugin-commonjs"),
      ]);
    }
  },
  webpack: (out) => {
    const bin = fetched("webpack", "webpack-cli");
    for (const entry of ["page", "worker"]) {
      run(join(bin, "webpack"), [
        "--mode",
        "production",
        "--entry",
        `./${entry}.js`,
        "-o",
        out,
        "--output-filename",
        `${entry}.js`,
      ]);
    }
  },
};

writeFileSync(join(folder, "page.js"), `import * as p from "preparative";${BODY}globalThis.said = said;`);
writeFileSync(join(folder, "worker.js"), `import * as p from "preparative";${BODY}globalThis.postMessage(said);`);

const TYPES: Readonly<Record<string, string>> = { ".html": "text/html", ".js": "text/javascript" };
const server = createServer((request, response) => {
  const file = join(folder, decodeURIComponent(request.url ?? "").split("?")[0]!);
  response.setHeader("content-type", TYPES[extname(file)] ?? "text/plain");
  if (existsSync(file)) response.end(readFileSync(file));
  else response.writeHead(404).end();
}).listen(0);
const { port } = server.address() as { port: number };
const executablePath = process.env["CHROMIUM"] ?? "/usr/bin/chromium";
const browser =
  !quick && existsSync(executablePath) ? await chromium.launch({ executablePath, args: ["--no-sandbox"] }) : undefined;

for (const [name, bundle] of quick ? [] : Object.entries(BUNDLERS)) {
  await check(`Chromium, page and module worker, bundled by ${name}`, `${expected}\n${expected}`, async () => {
    if (browser === undefined) throw new Error(`no Chromium at ${executablePath}`);
    const out = join(folder, `out-${name}`);
    mkdirSync(out, { recursive: true });
    bundle(out);
    writeFileSync(
      join(out, "index.html"),
      '<!doctype html><meta charset="utf-8"><script type="module" src="page.js"></script>' +
        '<script type="module">const w = new Worker("worker.js", { type: "module" }); w.onmessage = (e) => { globalThis.fromWorker = e.data; };</script>',
    );
    const page = await browser.newPage();
    const errors: string[] = [];
    page.on("pageerror", (error) => errors.push(String(error)));
    await page.goto(`http://localhost:${port}/out-${name}/index.html`);
    await page.waitForFunction("globalThis.said !== undefined && globalThis.fromWorker !== undefined", undefined, {
      timeout: 60_000,
    });
    if (errors.length > 0) throw new Error(errors.join("; "));
    return page.evaluate<string>('globalThis.said + "\\n" + globalThis.fromWorker');
  });
}

await browser?.close();
server.close();
if (failed === 0) rmSync(folder, { recursive: true, force: true });
else cpSync(join(folder, "package.json"), join(folder, "kept.json"));
console.log(`${results.length - failed} of ${results.length} ok${failed === 0 ? "" : `; kept: ${folder}`}`);
process.exitCode = failed === 0 ? 0 : 1;

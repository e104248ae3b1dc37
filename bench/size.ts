// What a program pays for: bytes of small programs, bundled, minified and compressed, and the time an import takes above
// that of an empty module. Run after `npm run build`.
import { execFileSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { heading, line, median } from "./harness";

const root = fileURLToPath(new URL("..", import.meta.url));
const programs: Readonly<Record<string, string>> = {
  "parse a formula": 'import { parseFormula } from "preparative/formula"; console.log(parseFormula("H2O").charge);',
  "molar mass": 'import { molarMass } from "preparative/formula"; console.log(String(molarMass("H2O")));',
  "balance an equation":
    'import { balance } from "preparative/equation"; console.log(String(balance("H2 + O2 -> H2O")));',
  "a quantity": 'import { quantity } from "preparative/quantity"; console.log(String(quantity("1 g")));',
  "water to dissolve": 'import { waterToDissolve } from "preparative/solubility"; console.log(waterToDissolve);',
  "cautions of a set": 'import { cautions } from "preparative/substance"; console.log(cautions);',
  "cautions for formulas":
    'import { cautionsForFormulas } from "preparative/substance"; console.log(cautionsForFormulas);',
  "names both ways": 'import { nameOf, formulaOf } from "preparative/substance"; console.log(nameOf, formulaOf);',
  "plan and sheet":
    'import { planPreparation, benchSheet } from "preparative"; console.log(planPreparation, benchSheet);',
};

async function bundled(code: string): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: root, loader: "js" },
    alias: Object.fromEntries(
      ["", "/quantity", "/formula", "/equation", "/solubility", "/substance"].map((path) => [
        `preparative${path}`,
        join(root, "dist", path, "index.js"),
      ]),
    ),
    bundle: true,
    minify: true,
    format: "esm",
    write: false,
    logLevel: "silent",
  });
  return outputFiles[0]!.text;
}

/** Milliseconds a fresh process takes to load a module, median of 15. */
function loadTime(file: string): number {
  const script = `const t = performance.now(); await import(${JSON.stringify(file)}); console.log("LOAD " + (performance.now() - t));`;
  const once = (): number =>
    Number(
      /LOAD ([\d.]+)/.exec(
        execFileSync(process.execPath, ["--input-type=module", "-e", script], { encoding: "utf8" }),
      )![1],
    );
  return median(Array.from({ length: 15 }, once));
}

/** CPU milliseconds of each step in a fresh process: import of a module, then what is done with it. */
function cpuTimes(file: string, then = ""): number[] {
  const script = `const at = () => { const { user, system } = process.cpuUsage(); return (user + system) / 1000; };
    const times = [at()]; const p = await import(${JSON.stringify(file)}); times.push(at()); ${then}
    console.log("CPU " + times.slice(1).map((t, i) => t - times[i]).join(" "));`;
  const out = execFileSync(process.execPath, ["--input-type=module", "-e", script], { encoding: "utf8", cwd: root });
  return /CPU (.+)/.exec(out)![1]!.split(" ").map(Number);
}

const PLAN = `const plan = p.planPreparation({
    title: "basic zinc carbonate for the glaze shelf",
    equation: "ZnSO4 + Na2CO3 -> ZnCO3 + Na2SO4",
    materials: [{ name: "moss killer", form: "ZnSO4·7H2O" }, { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" }],
    product: "ZnCO3", scale: { material: "moss killer", portion: "50.0 g" } });
  p.benchSheet(plan, { format: "text" }).length; times.push(at());`;

/** Least of several fresh processes, interleaved: the rest is what else the machine did. */
function startTimes(): { anchor: number; load: number; first: number } {
  const rounds = Array.from({ length: 12 }, () => ({
    anchor: cpuTimes("decimal.js")[0]!,
    own: cpuTimes(join(root, "dist/index.js"), PLAN),
  }));
  const least = (of: (round: (typeof rounds)[number]) => number): number => Math.min(...rounds.map(of));
  return { anchor: least((r) => r.anchor), load: least((r) => r.own[0]!), first: least((r) => r.own[1]!) };
}

heading("size and import time of small programs");
const folder = mkdtempSync(join(tmpdir(), "preparative-size-"));
const empty = join(folder, "empty.mjs");
writeFileSync(empty, "export {};");
const base = loadTime(empty);
line("empty module, load", base, "ms");
for (const [name, code] of Object.entries(programs)) {
  const text = await bundled(code);
  const file = join(folder, `${name.replace(/ /g, "-")}.mjs`);
  writeFileSync(file, text.replace(/console\.log\([^;]*\);?\s*$/, ""));
  line(`${name}, minified`, text.length / 1000, "kB");
  line(`${name}, minified and compressed`, gzipSync(text).length / 1000, "kB");
  line(`${name}, load above the empty module`, loadTime(file) - base, "ms");
}

const { anchor, load, first } = startTimes();
line("import of decimal.js, CPU", anchor, "ms");
line("import of the whole library, CPU", load, "ms");
// goal 6: what is left is the text of the code itself, which the engine reads before it runs any of it
line("import of the whole library in those of decimal.js", load / anchor, "", 10);
line("first plan and sheet of a fresh process in imports", first / load, "", 3);

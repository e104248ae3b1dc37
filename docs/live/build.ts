// Puts the live page into the reference: the library is built as the package is, bundled into one module beside the page.
// Runs after typedoc, as part of `npm run docs`; a link to the page is put on every page of the reference.
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { asBuilt } from "../../tsup.config";

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, "../..");
const reference = join(root, "docs/reference");
const folder = join(reference, "live");

mkdirSync(folder, { recursive: true });
cpSync(join(here, "index.html"), join(folder, "index.html"));
await build({
  entryPoints: [join(here, "page.ts")],
  outfile: join(folder, "page.js"),
  bundle: true,
  format: "esm",
  target: "es2022",
  minify: true,
  logLevel: "error",
  alias: { preparative: join(root, "src/index.ts") },
  plugins: [asBuilt],
});

const LINKS = '<div id="tsd-toolbar-links">';
let linked = 0;
for (const file of readdirSync(reference, { recursive: true, encoding: "utf8" })) {
  if (!file.endsWith(".html") || file.startsWith("live")) continue;
  const path = join(reference, file);
  const page = readFileSync(path, "utf8");
  if (!page.includes(LINKS)) continue;
  const to = relative(dirname(path), join(folder, "index.html")).replaceAll("\\", "/");
  writeFileSync(path, page.replace(LINKS, `${LINKS}<a href="${to}">Try it</a>`));
  linked++;
}
if (linked === 0) throw new Error("no page of the reference has a place for the link");
console.log(`live page written to ${relative(root, folder)}, linked from ${linked} pages`);

// Puts the live page into the reference: the library is built as the package is, bundled into one module beside the page.
// Runs after typedoc, as part of `npm run docs`; a link to the page is put on every page of the reference.
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { deflateSync, inflateSync } from "node:zlib";
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
/** Within the line that opens a part of a page no other thing can be pressed. */
const PERMALINK = /<a href="#[^"]*" aria-label="Permalink"[^>]*>.*?<\/a>/gs;
let linked = 0;
for (const file of readdirSync(reference, { recursive: true, encoding: "utf8" })) {
  if (!file.endsWith(".html") || file.startsWith("live")) continue;
  const path = join(reference, file);
  const page = readFileSync(path, "utf8");
  if (!page.includes(LINKS)) continue;
  const to = relative(dirname(path), join(folder, "index.html")).replaceAll("\\", "/");
  const link = `<a href="${to}">Try it</a>`;
  const mended = page
    .replace(`${LINKS}${link}`, LINKS)
    .replace(LINKS, `${LINKS}${link}`)
    .replace(/<summary.*?<\/summary>/gs, (summary) => summary.replace(PERMALINK, ""));
  // the README brings the title
  writeFileSync(path, file === "index.html" ? mended.replace(/<div class="tsd-page-title">.*?<\/div>/s, "") : mended);
  linked++;
}
if (linked === 0) throw new Error("no page of the reference has a place for the link");

/** An entry of the side bar, as the reference packs them. */
interface Entry {
  readonly text: string;
  readonly children?: readonly Entry[];
}

// the categories stand beside the guides, not under the name of the one module
const navigation = join(reference, "assets/navigation.js");
const packed = /"([^"]*)"/.exec(readFileSync(navigation, "utf8"))![1]!;
const entries = JSON.parse(inflateSync(Buffer.from(packed, "base64")).toString()) as Entry[];
const flat = entries.flatMap((entry) => (entry.text === "index" ? (entry.children ?? []) : [entry]));
writeFileSync(navigation, `window.navigationData = "${deflateSync(JSON.stringify(flat)).toString("base64")}"`);
console.log(`live page written to ${relative(root, folder)}, linked from ${linked} pages`);

// The reference and its live page as a browser shows them: `npm run site` after `npm run docs` (not part of the tests). Serves the
// folder, types a formula, an equation, a mixture and a preparation into the live page and a word into the search, at the
// widths of a desk and of a phone. Fails where an answer is missing, an error shows no caret, anything is asked of another
// place, something is wider than the window, or axe-core finds a barrier that is serious. Pictures go to the folder named on
// the command line, else to the folder for temporary files.
import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { extname, join, normalize } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, chromium, type Page } from "playwright-core";

const site = fileURLToPath(new URL("../../docs/reference/", import.meta.url));
if (!existsSync(join(site, "live/page.js"))) throw new Error("no reference: npm run docs writes it");
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const CHROMIUM = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
const folder = process.argv[2] ?? join(tmpdir(), "preparative-site");
const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
};

const faults: string[] = [];
let checks = 0;

function check(where: string, what: string, holds: boolean): void {
  checks += 1;
  if (!holds) faults.push(`${where}: ${what}`);
}

const server = createServer((request, response) => {
  const path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
  const file = join(site, normalize(path).replace(/\/$/, "/index.html"));
  if (!existsSync(file)) response.writeHead(404).end();
  else
    response
      .writeHead(200, { "content-type": TYPES[extname(file)] ?? "application/octet-stream" })
      .end(readFileSync(file));
});
await new Promise<void>((done) => server.listen(0, "127.0.0.1", done));
const origin = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;

/** What holds on every page: it fits the window, and nobody is kept out. */
async function inspect(page: Page, where: string): Promise<void> {
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  check(where, `${wide} px wider than the window`, wide <= 1);
  await page.evaluate(AXE);
  const found = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run: () => Promise<{ violations: { id: string; impact: string; nodes: { html: string }[] }[] }> };
    };
    return (await axe.run()).violations
      .filter(({ impact }) => impact === "serious" || impact === "critical")
      .map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`);
  });
  check(where, `axe: ${found.join("; ")}`, found.length === 0);
}

/** What each input of the live page is asked, and what its answer must show. */
const ASKED: readonly (readonly [field: string, text: string, answer: string])[] = [
  ["formula", "blue vitriol", "CuSO4·5H2O"],
  ["formula", "CaX", "CaX\n  ^"],
  ["equation", "KMnO4 + HCl -> KCl + MnCl2 + Cl2 + H2O", "16 HCl"],
  ["equation", "Fe + O2 -> Fe2S3", "S"],
  ["equation", "CaX + O2", "CaX + O2\n  ^"],
  ["mixture", "1 kg water\n0.1 mol CH3COOH", "pH 2.9"],
  ["mixture", "one spoon of salt", "one spoon of salt\n^"],
];

async function tryLivePage(page: Page, where: string): Promise<void> {
  await page.goto(`${origin}/live/index.html`);
  await page.waitForSelector('html[data-ready="yes"]');
  await inspect(page, `live page, ${where}`);
  await page.screenshot({ path: join(folder, `live-${where}.png`), fullPage: true });
  for (const [field, text, answer] of ASKED) {
    await page.fill(`#${field}`, "");
    await page.locator(`#${field}`).pressSequentially(text);
    const said = (await page.locator(`#${field}-answer`).textContent()) ?? "";
    check(`live page, ${where}`, `"${text}" answers ${JSON.stringify(said.slice(0, 200))}`, said.includes(answer));
  }
  await page.fill("#amount", "much");
  await page.click("#preparation button[type=submit]");
  const refused = (await page.locator("#preparation-answer").textContent()) ?? "";
  check(`live page, ${where}`, `an amount of "much" answers ${JSON.stringify(refused)}`, refused.includes("much"));
  await page.screenshot({ path: join(folder, `live-errors-${where}.png`), fullPage: true });
  await page.fill("#amount", "20 g");
  await page.click("#preparation button[type=submit]");
  const sheet = page.frameLocator("#sheet");
  await sheet.locator("h1").first().waitFor();
  const written = (await sheet.locator("body").textContent()) ?? "";
  check(`live page, ${where}`, "the sheet names no material", written.includes("moss killer"));
  check(`live page, ${where}`, "the sheet has no picture", (await sheet.locator("svg").count()) > 0);
  await inspect(page, `live page with answers, ${where}`);
  await page.screenshot({ path: join(folder, `live-sheet-${where}.png`), fullPage: true });
}

async function tryReference(page: Page, where: string): Promise<void> {
  for (const path of ["index.html", "functions/index.planPreparation.html", "interfaces/index.Quantity.html"]) {
    await page.goto(`${origin}/${path}`);
    await inspect(page, `${path}, ${where}`);
    await page.screenshot({ path: join(folder, `${path.replace(/\W/g, "-")}-${where}.png`) });
  }
  for (const [word, name] of [
    ["titrate", "titrate"],
    ["vinegar", "vinegar"],
  ] as const) {
    await page.goto(`${origin}/index.html`);
    await page.click("#tsd-search-trigger");
    await page.locator("#tsd-search-input").pressSequentially(word);
    const first = page.locator("#tsd-search-results li").first();
    const found = await first.waitFor({ timeout: 10_000 }).then(
      () => page.locator("#tsd-search-results").textContent(),
      () => "",
    );
    check(`search, ${where}`, `"${word}" finds ${JSON.stringify(found)}`, (found ?? "").toLowerCase().includes(name));
  }
  await page.screenshot({ path: join(folder, `search-${where}.png`) });
}

async function look(browser: Browser, width: number): Promise<void> {
  const where = `${width} px`;
  const page = await browser.newPage({ viewport: { width, height: 900 } });
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !/^(?:about|data|blob):/.test(url)) faults.push(`${where}: asks ${url}`);
  });
  page.on("pageerror", (error) => faults.push(`${where}: ${error.message}`));
  // The loader that runs this file names functions by a helper that the page does not have.
  await page.addInitScript("globalThis.__name = (one) => one");
  await tryLivePage(page, where);
  await tryReference(page, where);
  await page.close();
}

const executablePath = process.env["CHROMIUM"] ?? CHROMIUM.find((path) => existsSync(path));
if (executablePath === undefined) throw new Error("no Chromium: install it, or name it in CHROMIUM");
mkdirSync(folder, { recursive: true });
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
for (const width of [1280, 390]) await look(browser, width);
await browser.close();
server.close();
for (const fault of faults) console.log(fault);
console.log(`${checks} checks, ${faults.length} faults; pictures in ${folder}`);
process.exitCode = faults.length === 0 ? 0 : 1;
